"""The fifth set itself: the same again each time, every value in a cell of its own, deviations those of their class."""

import numpy as np
import pytest
from practice.grammar import Size
from practice.of_a_set import digest

from linter.mechanics.limits import deviations_or_nan
from practice_fifth import shapes, trade

#: SHA-256 over the tables (workbooks by what they mean: their bytes hold the day they were written) and their meaning.
SET = "db3171d7888ffe16e4e4dc0fe0cbad465cb7463b773ee4d68be27a8cbe5e843a"
TABLES = [shapes.make(number) for number in range(1, 61)]
#: Forms in which one cell states values of several parameters.
SHARED = ("d x D x B in one cell", "fit pair column")


def test_the_set_is_the_one_that_was_measured_first() -> None:
    """A change of it is made knowingly: figures of different days compare only while the set is the same."""
    assert digest(TABLES) == SET


def test_the_set_covers_what_it_is_for() -> None:
    assert len(TABLES) == 60
    assert sum(len(t.expected) for t in TABLES) >= 1500
    assert len({t.kinds["layout"] for t in TABLES}) >= 20
    assert len({t.kinds["language"] for t in TABLES}) == 8
    assert {"utf-16", "cp1252", "cp1251", "shift_jis", "gb18030"} <= {t.kinds["encoding"] for t in TABLES}
    assert sum(e.verdict == "ask" for t in TABLES for e in t.expected) >= 30


def test_every_value_stands_in_a_cell_of_its_own() -> None:
    for table in TABLES:
        taken: dict[str, str] = {}
        for expected in table.expected:
            assert expected.own and set(expected.own) <= set(expected.cells), (table.name, expected)
            for address in expected.own if expected.form not in SHARED else ():
                assert taken.setdefault(address, expected.parameter) == expected.parameter, (table.name, address)


def test_deviations_are_those_of_their_class() -> None:
    checked = 0
    for name, rows in {**trade.SHAFT, **trade.HOUSING}.items():
        for step, pair in zip(trade.STEPS, rows, strict=True):
            low, up = deviations_or_nan(np.array([name]), np.array([float(step)]))
            if not np.isnan(low[0]):
                assert pair == pytest.approx((low[0], up[0]), abs=0.51), (name, step)
                checked += 1
    for table in TABLES:
        for expected in table.expected:
            size = expected.value
            if isinstance(size, Size) and size.tolerance_class and size.lower is not None and size.upper is not None:
                lower, upper = deviations_or_nan(np.array([size.tolerance_class]), np.array([size.nominal]))
                rough = 1.3e-3 if table.kinds["length unit"] == "in" else 1e-4  # inches are rounded to 0.0001
                assert (size.lower, size.upper) == pytest.approx((lower[0] / 1000, upper[0] / 1000), abs=rough)
                checked += 1
    assert checked >= 100


def test_a_number_gives_the_same_table_again() -> None:
    assert shapes.make(13).content == TABLES[12].content
