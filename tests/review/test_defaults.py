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


CYCLE = {"on_time": 120, "off_time": 180, "heat_capacity": 420, "cooling_factor": 0.6, "bore_diameter": 8}


def test_the_duty_of_a_stated_cycle_is_derived_and_a_stated_duty_stays(book):
    rows = [{**CYCLE, "machine": "M"}, {**CYCLE, "machine": "N", "duty": "continuous"}, {"machine": "O"}]
    found = with_defaults(stations_from_rows(rows), book)
    assert found.choice("duty").texts().tolist() == ["intermittent", "continuous", "continuous"]
    assert found.derived["duty"].rows.tolist() == [True, False, False]
    assert "heat.cycle" in found.derived["duty"].basis[0]
    assert found.assumed["duty"].rows.tolist() == [False, False, True]


def test_a_temperature_stands_in_only_where_the_cooling_is_stated(book):
    row = {"power_loss": 3, "speed_max": 30000, "ambient_temperature": 20}
    rows = [
        {**row, "machine": "M", "cooling_factor": 0.1},
        {**row, "machine": "N"},
        {**row, "machine": "O", "cooling_factor": 0.1, "operating_temperature": 45},
        {**row, "machine": "P", "cooling_factor": 0.001},
    ]
    found = with_defaults(stations_from_rows(rows), book)
    temperature = found.number("operating_temperature")
    assert temperature[0] == pytest.approx(50.0) and temperature[2] == 45.0
    assert np.isnan(temperature[[1, 3]]).all()
    assert found.assumed["operating_temperature"].rows.tolist() == [True, False, False, False]
    assert "heat.balance" in found.assumed["operating_temperature"].reason
