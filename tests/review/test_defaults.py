"""Documented defaults of a rulebook: each is an assumption, and what is stated stays."""

import numpy as np
import pytest
from attrs import evolve

from linter.model.stations import stations_from_rows
from linter.review.defaults import with_defaults
from linter.rulebook.load import load
from linter.rulebook.model import Default, Rulebook


@pytest.fixture(scope="module")
def book() -> Rulebook:
    return load("ruleset/current")


def test_open_choices_are_assumed_and_stated_ones_stay(book):
    stations = stations_from_rows([{"bore_diameter": 8, "tolerance_class": "P5"}, {"bore_diameter": 8}])
    found = with_defaults(stations, book)
    assert found.choice("duty").texts().tolist() == ["continuous", "continuous"]
    assert found.choice("tolerance_class").texts().tolist() == ["P5", "Normal"]
    assert found.assumed["tolerance_class"].rows.tolist() == [False, True]
    assert "Normal is taken" in found.assumed["tolerance_class"].reason
    assert stations.choice("duty").texts().tolist() == ["", ""]


def test_clearance_group_is_not_assumed_where_the_clearance_is_stated(book):
    found = with_defaults(stations_from_rows([{"radial_clearance": [10, -2, 3]}, {"bore_diameter": 8}]), book)
    assert found.choice("clearance_class").texts().tolist() == ["", "CN"]


def test_type_is_assumed_only_for_a_size_of_one_type(book):
    sizes = [(8, 22, 7), (3.5, 99, 1), (1.5, 4, 1.2)]
    rows = [{"bore_diameter": d, "outside_diameter": D, "ring_width": B} for d, D, B in sizes]
    default = Default("bearing_type", "deep groove ball", "one type", by_size=True)
    found = with_defaults(stations_from_rows(rows), evolve(book, defaults=(default,)))
    assert found.choice("bearing_type").texts().tolist() == ["", "", "deep groove ball"]


@pytest.mark.parametrize("version", ["2026.1", "2026.2", "2026.3"])
def test_released_rulebooks_assume_nothing(version):
    stations = stations_from_rows([{"bore_diameter": 8}])
    found = with_defaults(stations, load(version))
    assert found.choices.keys() == stations.choices.keys()
    assert np.array_equal(list(found.assumed), list(stations.assumed))
