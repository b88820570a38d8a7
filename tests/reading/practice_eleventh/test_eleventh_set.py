"""The eleventh set itself: each stated value stands in its cell, the truth agrees with itself."""

import hashlib
import math
from collections import Counter
from collections.abc import Callable

import pytest
from practice.grammar import Size, Table
from practice_ninth import test_ninth_set as ninth

from practice_eleventh import written


def every_nominal_stands_in_its_cell(table: Table) -> None:
    """A size's nominal too: a fit in a row of its own takes it from another row."""
    held = ninth.cells(table)
    for e in table.expected:
        if isinstance(e.value, Size) and not e.value.bare:
            text = " ".join(held[address] for address in e.own)
            shown = [n * factor for n in ninth.numbers(text) for factor in ninth.FACTORS]
            assert any(math.isclose(n, e.value.nominal, rel_tol=1e-9) for n in shown), (e, text)


CHECKS = {
    "cells": ninth.test_every_value_stands_in_its_cell,
    "truth": ninth.test_the_truth_agrees_with_itself,
    "nominals": every_nominal_stands_in_its_cell,
}
#: SHA-256 over the tables (workbooks by what they mean: their bytes hold the day they were written) and their meaning.
SET = "4c66067c98f3dc2d7be225d1f43cb5ec5ce6fca9f47df9d4d24c41b7f1e4ab51"
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
    assert [t.name for t in TABLES] == [f"practice-{n}" for n in range(11001, 11031)]
    assert len({t.content for t in TABLES}) == len({t.kinds["persona"] for t in TABLES}) == 30
    languages = {"en": 10, "de": 6, "zh": 4, "ja": 3, "fr": 2, "it": 2, "es": 2, "ru": 1}
    assert Counter(t.kinds["language"] for t in TABLES) == languages
    suffixes = Counter(t.suffix for t in TABLES)
    assert suffixes[".csv"] + suffixes[".txt"] == 16 and suffixes[".xlsx"] == 8 and suffixes[".json"] == 6
    assert all(12 <= len(t.expected) <= 30 for t in TABLES)
