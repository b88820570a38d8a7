"""The sixth set itself: the same again each time, every value in a cell of its own, deviations those of their class."""

import numpy as np
import pytest
from practice.grammar import Size
from practice.of_a_set import digest

from linter.mechanics.limits import deviations_or_nan
from practice_sixth import shapes, trade

#: SHA-256 over the tables (workbooks by what they mean: their bytes hold the day they were written) and their meaning.
SET = "f0463c2d28e4dd51351224e37535999552523746ed6767bc42447a7d831aba8c"
TABLES = [shapes.make(number) for number in range(1, 61)]
#: Forms in which one cell states several values.
SHARED = ("d x D x B in one cell", "fit pair column")


def test_the_set_is_the_one_that_was_measured_first() -> None:
    """A change of it is made knowingly: figures of different days compare only while the set is the same."""
    assert digest(TABLES) == SET


def test_the_set_covers_what_it_is_for() -> None:
    """Layouts, languages, encodings, forms, inches and questions in their shares."""
    assert len(TABLES) == 60
    assert sum(len(t.expected) for t in TABLES) >= 1500
    assert len({t.kinds["layout"] for t in TABLES}) >= 16
    assert len({t.kinds["language"] for t in TABLES}) == 8
    assert {"utf-16", "cp1252", "cp1251", "shift_jis", "gb18030", "xlsx"} <= {t.kinds["encoding"] for t in TABLES}
    assert {t.kinds["tolerance"] for t in TABLES} == {form for form, _ in shapes.TOLERANCE_SHARES}
    assert sum(t.kinds["length unit"] != "mm" for t in TABLES) == 4
    share = sum(e.verdict == "ask" for t in TABLES for e in t.expected) / sum(len(t.expected) for t in TABLES)
    assert 0.02 <= share <= 0.04


def test_every_value_stands_in_a_cell_of_its_own() -> None:
    """Only sizes in one cell and pairs of a fit share a cell."""
    for table in TABLES:
        taken: dict[str, str] = {}
        for expected in table.expected:
            assert expected.own and set(expected.own) <= set(expected.cells), (table.name, expected)
            if expected.form in SHARED:
                continue
            for address in expected.own:
                assert taken.setdefault(address, expected.parameter) == expected.parameter, (table.name, address)


def test_no_value_is_stated_twice() -> None:
    """A position has one expectation for each parameter."""
    for table in TABLES:
        keys = [(e.machine, e.station, e.parameter) for e in table.expected]
        assert len(keys) == len(set(keys)), table.name


def test_deviations_are_those_of_their_class() -> None:
    """Class and deviations in one cell agree with ISO 286-1."""
    checked = 0
    for table in TABLES:
        for expected in table.expected:
            size = expected.value
            if isinstance(size, Size) and size.tolerance_class and size.lower is not None and size.upper is not None:
                lower, upper = deviations_or_nan(np.array([size.tolerance_class]), np.array([size.nominal]))
                assert (size.lower, size.upper) == pytest.approx((lower[0] / 1000, upper[0] / 1000), abs=1e-4)
                checked += 1
    assert checked >= 15


def test_classes_beside_those_of_the_first_set_are_right() -> None:
    """The deviations that the grammar adds hold for every size that its bearings have."""
    for name in (*trade.SHAFT_CLASSES, *trade.HOUSING_CLASSES):
        place = 1 if name[0].islower() else 2
        for bearing in trade.METRIC:
            nominal = float(bearing[place])
            lower, upper = deviations_or_nan(np.array([name]), np.array([nominal]))
            assert trade.limits_of(name, nominal) == pytest.approx((lower[0] / 1000, upper[0] / 1000), abs=1e-6), name
