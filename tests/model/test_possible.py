"""Values that cannot be: every number has its range, what lies outside is used by no clause and is told."""

import json
import math

import numpy as np
import pytest

from linter.model.possible import IMPOSSIBLE, only_possible, outside, set_aside
from linter.model.stations import stations_from_rows
from linter.model.vocabulary import parameter, vocabulary
from linter.reading import read_table
from linter.review.assess import assess
from linter.review.records import review_reading
from linter.rulebook.load import load

BOOK = load("current")
NUMBERS = [entry.name for entry in vocabulary().values() if entry.kind in ("number", "toleranced")]


def told(stations):
    return [(p.parameter, p.row) for p in only_possible(stations).problems if p.kind == IMPOSSIBLE]


def of_station(clause, stations):
    """Severity of a clause at the first position."""
    review = assess(stations, BOOK).reviews[clause]
    return ("critical", "major", "minor", "remark", "met")[review.severity[0]]


@pytest.mark.parametrize("name", NUMBERS)
def test_every_number_has_a_range(name):
    entry = parameter(name)
    assert entry.sign in ("positive", "not negative", "any")
    assert math.isfinite(entry.least) and math.isfinite(entry.most) and entry.least < entry.most
    assert entry.sign == "any" or entry.least >= 0
    assert entry.sign != "positive" or entry.least > 0
    assert entry.least == 0 or entry.sign != "not negative"


@pytest.mark.parametrize("name", [name for name, entry in vocabulary().items() if name not in NUMBERS])
def test_words_have_none(name):
    assert (parameter(name).sign, parameter(name).least, parameter(name).most) == ("", -math.inf, math.inf)


@pytest.mark.parametrize("name", NUMBERS)
def test_the_least_can_be_and_the_most_cannot(name):
    entry = parameter(name)
    inside = [entry.least, np.nextafter(entry.most, 0), 0.5 * (entry.least + entry.most), np.nan]
    beyond = [np.nextafter(entry.least, -np.inf), entry.most, np.inf, -np.inf, 1e308, -1e308]
    if entry.sign == "positive":
        beyond += [0.0, -1.0, -entry.least]
    assert not outside(entry, np.array(inside)).any()
    assert outside(entry, np.array(beyond)).all()


@pytest.mark.parametrize("name", NUMBERS)
def test_what_is_implausible_is_not_yet_impossible(name):
    rows = {row[0]: row for row in BOOK.clauses["table.plausible"].tables["ranges"].rows}
    if name in rows:
        low, high = float(rows[name][1]), float(rows[name][2])
        assert not outside(parameter(name), np.array([low, high])).any()


def test_where_everything_can_be_nothing_is_touched():
    stations = stations_from_rows([{"bore_diameter": 8, "shaft_seat_diameter": [8, "k5"]}])
    assert only_possible(stations) is stations


def test_a_value_that_cannot_be_is_absent_and_told():
    stations = stations_from_rows(
        [
            {"bore_diameter": 8, "static_rating": 1e12, "rotor_mass": 1e-12},
            {"bore_diameter": 8, "static_rating": 1300, "rotor_mass": 1e-12},
        ]
    )
    found = only_possible(stations)
    assert np.isnan(found.number("static_rating")[0]) and found.number("static_rating")[1] == 1300
    assert np.isnan(found.number("rotor_mass")).all()
    assert sorted(told(stations)) == [("rotor_mass", 0), ("static_rating", 0)]  # a value of the machine is told once
    assert only_possible(found) is found


@pytest.mark.parametrize("size", [[-8, -0.005, 0.005], [8, -9, 0.005], [4, 0.0, 1e9]])
def test_a_size_is_judged_by_its_limits_too(size):
    stations = stations_from_rows([{"shaft_seat_diameter": size}])
    assert told(stations) == [("shaft_seat_diameter", 0)]
    column = only_possible(stations).size("shaft_seat_diameter")
    assert np.isnan([column.nominal[0], column.lower[0], column.upper[0]]).all() and column.tolerance_class[0] == ""


def test_a_default_takes_no_place_and_what_was_assumed_from_it_goes_with_it():
    stations = stations_from_rows([{"bore_diameter": -8, "outside_diameter": 22, "required_reliability": 100}])
    assert stations.number("pitch_diameter")[0] == 7
    found = only_possible(stations)
    for name in ("bore_diameter", "pitch_diameter", "required_reliability"):
        assert np.isnan(found.number(name)[0]), name
    assert not found.assumed["pitch_diameter"].rows[0]
    assert sorted(told(stations)) == [("bore_diameter", 0), ("required_reliability", 0)]


NEVER = [
    ("limiting_speed", 1e12), ("spring_rate", -1), ("static_rating", 1e12), ("balance_grade", -1),
    ("rotor_mass", 1e-12), ("shaft_seat_runout", 5e-6),
    ("housing_seat_runout", 1e-9), ("shaft_seat_cylindricity", -0.002),
    ("bearing_span", -60), ("ring_width", -7), ("ring_chamfer", 0), ("ring_chamfer", -1), ("ring_chamfer", 1e9),
    ("shaft_seat_roughness", 0), ("shaft_seat_roughness", -1), ("coaxiality_of_bores", 0), ("coaxiality_of_bores", -1),
    ("spring_load_tolerance", 100), ("spring_load_tolerance", -10), ("outer_groove_ratio", 52), ("speed_max", 1e308),
    ("operating_temperature", -300), ("required_reliability", 100), ("contact_angle", 90), ("ball_count", 1),
]  # fmt: skip


@pytest.mark.parametrize(("name", "value"), NEVER)
def test_it_closes_the_gate(name, value):
    row = {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 14000}
    assert of_station("table.possible", stations_from_rows([row])) == "met"
    stations = stations_from_rows([{**row, name: value}])
    assert of_station("table.possible", stations) == "major"
    assert told(stations)[0][0] == name


@pytest.mark.parametrize(("name", "value"), NEVER)
def test_no_other_clause_sees_it(name, value):
    row = {"bore_diameter": 8, "outside_diameter": 22, "ring_width": 7, "bearing_type": "deep groove ball"}
    row |= {"speed_max": 14000, "preload_method": "spring", "shaft_seat_diameter": [8, "k5"], "duty": "continuous"}
    without = assess(stations_from_rows([{k: v for k, v in row.items() if k != name}]), BOOK)
    stated = assess(stations_from_rows([{**row, name: value}]), BOOK)
    defaulted = parameter(name).default
    for clause, review in stated.reviews.items():
        if clause != "table.possible" and not defaulted and name != "speed_max":
            # as if it were not stated; where that leaves another road, it is not taken
            uses = name in (*review.clause.needs, *review.clause.uses)
            assert review.outcome[0] in (without.reviews[clause].outcome[0], 2 if uses else -1), clause


def test_the_gate_of_a_table_says_cell_and_range(tmp_path):
    path = tmp_path / "t.json"
    stations = [{"station": "A", "bore_diameter": 8, "outside_diameter": 22, "static_rating": 1e12}]
    path.write_text(json.dumps({"machines": [{"machine": "M", "speed_max": 14000, "stations": stations}]}))
    result = review_reading(read_table(path), BOOK)
    (record,) = [a for a in result.assessments if a.clause == "table.possible"]
    assert record.severity == "major" and result.gate == "closed"
    assert "cannot be 1 000 000 000 000 N" in record.message.replace("\u00a0", " ")
    assert record.places[0].parameter == "static_rating"


@pytest.mark.parametrize(
    ("other", "value", "speed", "severity"),
    [
        ("limiting_speed", 48000, 481, "met"),
        ("limiting_speed", 48000, 480, "minor"),
        ("limiting_speed", 48000, 48.1, "minor"),
        ("limiting_speed", 48000, 48, "major"),
        ("reference_speed", 48000, 14, "major"),
        ("first_critical_speed", 60000, 14, "major"),
        ("speed_operating", 13000, 13, "major"),
        ("limiting_speed", 140, 13999, "met"),
        ("limiting_speed", 140, 14000, "major"),
        ("first_critical_speed", 140, 14000, "major"),
        ("speed_operating", 140, 14000, "major"),
    ],
)
def test_speeds_that_contradict_each_other(other, value, speed, severity):
    row = {"bore_diameter": 8, "outside_diameter": 22, "speed_max": speed, other: value}
    assert of_station("table.possible", stations_from_rows([row])) == severity


def test_an_impossible_value_of_a_machine_is_told_once_and_of_stations_each_time():
    rows = [
        {"machine": m, "station": name, "bore_diameter": 8, "speed_max": 1e12, "static_rating": 1e12}
        for m in "PQ"
        for name in "AB"
    ]
    rows[2]["speed_max"] = rows[3]["speed_max"] = 9000
    stations = only_possible(stations_from_rows(rows))
    found = sorted((p.parameter, p.row) for p in stations.problems)
    assert found == [("speed_max", 0), *(("static_rating", k) for k in range(4))]
    aside = {name: rows.tolist() for name, rows in set_aside(stations).items()}
    assert aside == {"speed_max": [True, True, False, False], "static_rating": [True] * 4}


def test_two_witnesses_against_a_speed_weigh_more():
    row = {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 400, "limiting_speed": 48000}
    assert of_station("table.possible", stations_from_rows([row])) == "minor"
    assert of_station("table.possible", stations_from_rows([{**row, "first_critical_speed": 60000}])) == "major"


@pytest.mark.parametrize(
    ("values", "severity"),
    [
        ({"inner_ring_shoulder_diameter": 11.04}, "met"),
        ({"inner_ring_shoulder_diameter": 11.02}, "major"),
        ({"outer_ring_shoulder_diameter": 18.96}, "met"),
        ({"outer_ring_shoulder_diameter": 18.98}, "major"),
        ({"inner_ring_shoulder_diameter": 11.02, "bearing_type": "cylindrical roller"}, "met"),
        ({"inner_ring_shoulder_diameter": 11.02, "pitch_diameter": None}, "met"),
        ({"inner_ring_shoulder_diameter": 10.5, "pitch_diameter": None}, "major"),
    ],
)
def test_a_land_lies_beside_its_own_raceway(values, severity):
    row = {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 14000, "bearing_type": "deep groove ball"}
    balls = {"ball_diameter": 3.969, "pitch_diameter": 15}
    assert of_station("table.possible", stations_from_rows([{**row, **balls, **values}])) == severity


@pytest.mark.parametrize("version", ["2026.1", "2026.2", "2026.3"])
def test_a_release_from_before_uses_every_value_as_ever(version):
    row = {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 14000, "limiting_speed": 1e12}
    assessed = assess(stations_from_rows([row]), load(version))
    assert assessed.stations.number("limiting_speed")[0] == 1e12


@pytest.mark.parametrize("version", ["2026.3", "current"])
@pytest.mark.parametrize("share", [100, 250, -5])
def test_a_spring_tolerance_that_cannot_be_is_not_taken_as_exact(version, share):
    row = {"preload_method": "spring", "spring_rate": [10, -0.5, 0.5], "spring_free_length": [12, -0.1, 0.1]}
    row |= {"spring_installed_length": [9, -0.1, 0.1], "preload_force": 30, "bore_diameter": 8}
    book = load(version)
    for given, outcome in (({}, 0), ({"spring_load_tolerance": 99.9}, 1), ({"spring_load_tolerance": share}, 2)):
        found = assess(stations_from_rows([{**row, **given}] * 2), book).reviews["preload.force"]
        assert found.failure is None and found.outcome[0] == outcome
