"""What a cell or a size tells of the part that it is of."""

import pytest

from linter.reading.words.part_evidence import (
    number_of,
    numbers_of,
    part_of_class,
    part_of_shoulder,
    rings_of,
    same_sizes,
)


@pytest.mark.parametrize(
    ("cell", "number"),
    [
        ("25", 25), ("Ø25 k5", 25), ("⌀ 25", 25), ("φ25", 25), ("d=25", 25), ("Ra 0,8", 0.8), (".9843", 0.9843),
        ("62,5 mm", 62.5), ("(25)", 25), ("k6", None), ("H7 (+0.03/0)", None), ("1:12", None), ("-0.1", None),
        ("", None),
    ],
)  # fmt: skip
def test_the_number_that_a_cell_begins_with(cell, number):
    assert number_of(cell) == number


def test_numbers_of_cells_are_all_or_none():
    assert numbers_of(("25", "Ø20 k5")) == [25, 20]
    assert numbers_of(("25", "k5")) == numbers_of(("25", "0")) == numbers_of(()) == []


@pytest.mark.parametrize(
    ("cell", "part"),
    [
        ("k5", "shaft"), ("25 js6", "shaft"), ("Ø52 H6", "housing"), ("JS7", "housing"), ("Js7", "housing"),
        ("J7 (-0.012/+0.018)", "housing"), ("C3", ""), ("6205", ""), ("25", ""), ("G2.5", ""),
    ],
)  # fmt: skip
def test_a_class_says_shaft_or_housing(cell, part):
    assert part_of_class(cell) == part


@pytest.mark.parametrize(
    ("cell", "named", "rings"),
    [
        ("6205-2Z", False, (25, 52)),
        ("6205", True, (25, 52)),
        ("6205", False, None),
        ("25", True, None),
        ("", True, None),
    ],
)
def test_rings_of_a_designation(cell, named, rings):
    assert rings_of(cell, named) == rings


def test_seats_are_as_large_as_rings_in_mm_or_inches():
    assert same_sizes([25.01, 20], [25, 20]) and same_sizes([0.9843, 0.7874], [25, 20])
    assert not same_sizes([25, 0.7874], [25, 20])  # one of each
    assert not same_sizes([28, 20], [25, 20])
    assert not same_sizes([25], [25, 20])
    assert not same_sizes([], [])


@pytest.mark.parametrize(
    ("size", "part"), [(31, "shaft"), (46, "housing"), (1.22, "shaft"), (38.5, ""), (25, ""), (60, ""), (0, "")]
)
def test_a_shoulder_lies_nearer_to_the_ring_of_its_part(size, part):
    assert part_of_shoulder(size, 25, 52) == part
