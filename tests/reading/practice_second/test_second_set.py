# ruff: noqa: E501
"""The second set itself: the same again each time, every value in a cell, sizes and deviations as their sources have them."""

import numpy as np
import pytest
from practice import grammar
from practice.of_a_set import digest

from linter.mechanics.limits import deviations_or_nan
from practice_second import measure, shapes, written

#: SHA-256 over the tables of both halves and what they mean.
SET = "b1c6eac9dc4c595eed20c28c70b0b8816a5ec9d7eac5eb7a0c4bb5a84ff30058"
TABLES = measure.half("all")


def test_the_set_is_the_one_that_was_measured_first() -> None:
    """A change of it is made knowingly: figures of different days compare only while the set is the same."""
    assert digest(TABLES) == SET


def test_the_set_is_large_enough_and_in_two_halves() -> None:
    opened, unseen = measure.half("open"), measure.half("unseen")
    assert len(TABLES) == len(opened) + len(unseen) >= 40
    assert sum(len(t.expected) for t in TABLES) >= 1200


@pytest.mark.parametrize("seed", range(1, 37))
def test_a_seed_gives_the_same_meaning_again(seed: int) -> None:
    assert shapes.make(seed).expected == shapes.make(seed).expected


@pytest.mark.parametrize("table", TABLES, ids=lambda t: t.name)
def test_every_value_stands_in_a_cell(table: grammar.Table) -> None:
    for expected in table.expected:
        assert expected.own and set(expected.own) <= set(expected.cells), expected


@pytest.mark.parametrize("table", written.tables(), ids=lambda t: t.name)
def test_written_deviations_are_those_of_their_class(table: grammar.Table) -> None:
    for expected in table.expected:
        size = expected.value
        if (
            isinstance(size, grammar.Size)
            and size.lower is not None
            and size.upper is not None
            and size.tolerance_class
        ):
            lower, upper = deviations_or_nan(np.array([size.tolerance_class]), np.array([size.nominal]))
            assert (size.lower, size.upper) == pytest.approx((lower[0] / 1000, upper[0] / 1000))
