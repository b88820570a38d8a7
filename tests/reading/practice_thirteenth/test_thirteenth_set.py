"""The thirteenth set itself: each stated value stands in its cell, the truth agrees with itself."""

import hashlib
from collections import Counter
from collections.abc import Callable

import pytest
from practice.grammar import Table
from practice_ninth import test_ninth_set as ninth

from practice_thirteenth import written

CHECKS = {
    "cells": ninth.test_every_value_stands_in_its_cell,
    "truth": ninth.test_the_truth_agrees_with_itself,
}
#: SHA-256 over the tables (workbooks by what they mean: their bytes hold the day they were written) and their meaning.
SET = "482b525504ebeeb790fcdfbcaa3905c8cbd7dfeb92977bff1ad4a4640ae4f8c3"
TABLES = [written.make(number) for number in range(written.FIRST, written.LAST + 1)]


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.name)
@pytest.mark.parametrize("check", CHECKS.values(), ids=CHECKS.keys())
def test_a_table_holds_what_its_truth_says(check: Callable[[Table], None], table: Table) -> None:
    check(table)


def test_the_set_is_the_one_that_was_measured_first() -> None:
    """A change of it is made knowingly: figures of different days compare only while the set is the same."""
    told = repr([(t.name, t.suffix, t.content if t.suffix != ".xlsx" else b"", t.expected) for t in TABLES])
    assert hashlib.sha256(told.encode()).hexdigest() == SET


def test_the_set_is_what_it_is_for() -> None:
    assert [t.name for t in TABLES] == [f"practice-{n}" for n in range(13001, 13041)]
    assert len({t.content for t in TABLES}) == len({t.kinds["persona"] for t in TABLES}) == 40
    languages = {"en": 13, "de": 8, "zh": 4, "ja": 4, "fr": 3, "it": 3, "ru": 3, "es": 2}
    assert Counter(t.kinds["language"] for t in TABLES) == languages
    suffixes = Counter(t.suffix for t in TABLES)
    assert suffixes[".csv"] + suffixes[".txt"] == 20 and suffixes[".xlsx"] == 12 and suffixes[".json"] == 8
    assert all(len(t.expected) >= 12 for t in TABLES)
