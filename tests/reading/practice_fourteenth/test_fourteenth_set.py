"""The fourteenth set itself: each stated value stands in its cell, the truth agrees with itself."""

import hashlib
from collections import Counter
from collections.abc import Callable

import pytest
from practice.grammar import Table
from practice_ninth import test_ninth_set as ninth

from practice_fourteenth import written

CHECKS = {
    "cells": ninth.test_every_value_stands_in_its_cell,
    "truth": ninth.test_the_truth_agrees_with_itself,
}
#: SHA-256 over the tables (workbooks by what they mean: their bytes hold the day they were written) and their meaning.
SET = "56cc70ce6505f66e487131238bfc433ac3defa649573e599ce35659bf040a4e9"
TABLES = [written.make(number) for number in range(written.FIRST, written.LAST + 1)]


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.name)
@pytest.mark.parametrize("check", CHECKS.values(), ids=CHECKS.keys())
def test_a_table_holds_what_its_truth_says(check: Callable[[Table], None], table: Table) -> None:
    check(table)


def test_the_set_is_the_one_that_was_measured_first() -> None:
    """A change of it is made knowingly: figures of different days compare only while the set is the same."""
    told = repr(
        [
            (t.name, t.suffix, t.content if t.suffix != ".xlsx" else sorted(ninth.cells(t).items()), t.expected)
            for t in TABLES
        ]
    )
    assert hashlib.sha256(told.encode()).hexdigest() == SET


def test_the_set_is_what_it_is_for() -> None:
    assert [t.name for t in TABLES] == [f"practice-{n}" for n in range(14001, 14041)]
    assert len({t.content for t in TABLES}) == len({t.kinds["persona"] for t in TABLES}) == 40
    languages = {"en": 10, "de": 8, "fr": 4, "it": 4, "es": 4, "ru": 3, "zh": 4, "ja": 3}
    assert Counter(t.kinds["language"] for t in TABLES) == languages
    assert Counter(t.suffix for t in TABLES) == {".csv": 26, ".xlsx": 10, ".json": 4}
    assert sum(t.kinds["inch"] == "True" for t in TABLES) == 3
    assert all(len(t.expected) >= 12 for t in TABLES)
