"""The fourth set itself: the same each time, every value in a cell of its own, deviations those of the class."""

import numpy as np
import pytest
from practice.grammar import Size
from practice.of_a_set import digest

from linter.mechanics.limits import deviations_or_nan
from practice_fourth import shapes

#: SHA-256 over the tables (workbooks by what they mean: their bytes hold the day they were written) and their meaning.
SET = "3253ed4aa6321dae7240115df3a5d1950a4cabe7fa72d2028b30f20b0f5c80ba"
TABLES = [shapes.make(number) for number in range(1, 61)]


def test_the_set_is_the_one_that_was_measured_first() -> None:
    """A change of it is made knowingly: figures of different days compare only while the set is the same."""
    assert digest(TABLES) == SET


def test_the_set_covers_what_it_is_for() -> None:
    assert len(TABLES) == 60
    assert sum(len(t.expected) for t in TABLES) >= 1500
    assert len({t.kinds["layout"] for t in TABLES}) >= 20
    assert len({t.kinds["language"] for t in TABLES}) == 8
    assert len({t.kinds["tolerance"] for t in TABLES}) >= 10
    assert {"utf-16", "cp1252", "cp1251", "shift_jis", "gb18030", "xlsx", "json"} <= {
        t.kinds["encoding"] for t in TABLES
    }
    assert sum(e.verdict == "ask" for t in TABLES for e in t.expected) >= 15
    assert sum(t.kinds["length unit"] == "in" for t in TABLES) >= 2


def test_every_value_stands_in_a_cell_of_its_own() -> None:
    """Only the class of a shaft and of its housing may share one; sheets of one workbook share addresses."""
    for table in TABLES:
        taken: dict[str, str] = {}
        told = [(e.machine, e.station, e.parameter) for e in table.expected]
        assert len(told) == len(set(told)), table.name
        for expected in table.expected:
            assert expected.own and set(expected.own) <= set(expected.cells), (table.name, expected)
            if expected.form == "fit pair column":
                continue
            for address in expected.own:
                assert taken.setdefault(address, expected.parameter) == expected.parameter, (table.name, address)


def test_deviations_are_those_of_their_class() -> None:
    checked = 0
    for number in range(1, 121):
        for expected in shapes.make(number).expected:
            size = expected.value
            if isinstance(size, Size) and size.tolerance_class and size.lower is not None and size.upper is not None:
                lower, upper = deviations_or_nan(np.array([size.tolerance_class]), np.array([size.nominal]))
                assert (size.lower, size.upper) == pytest.approx((lower[0] / 1000, upper[0] / 1000), abs=1e-4)
                checked += 1
    assert checked >= 60


def test_rings_stand_on_their_shoulders() -> None:
    """A shaft shoulder above its seat, a housing shoulder below its bore, by no more than a third of the section."""
    for table in TABLES:
        sizes = {(e.machine, e.station, e.parameter): e.value for e in table.expected}
        for (m, s, name), seat in sizes.items():
            part = name.removesuffix("_seat_diameter")
            shoulder = sizes.get((m, s, f"{part}_shoulder_diameter"))
            if part == name or shoulder is None or not isinstance(seat, Size):
                continue
            height = (shoulder.nominal if isinstance(shoulder, Size) else float(shoulder)) - seat.nominal
            assert 1 < (height if part == "shaft" else -height) < 9, (table.name, m, s)
