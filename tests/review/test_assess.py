"""Verdicts of a large table: the same in parts, as columns and as records."""

import pickle
from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path

import numpy as np
import pytest
from attrs import evolve

import linter
from linter.checks.shared.base import Result, View
from linter.model.findings import OUTCOMES, SEVERITIES
from linter.model.places import Place
from linter.model.stations import Problem, stations_from_rows
from linter.model.vocabulary import vocabulary
from linter.review import assess as module
from linter.review.assess import assess, in_parts
from linter.review.records import assessments, station_values
from linter.rulebook.load import CURRENT, load


def make_stations(count: int):
    path = Path(linter.__file__).parents[1] / "benchmarks" / "conftest.py"
    spec = spec_from_file_location("benchmark_stations", path)
    made = module_from_spec(spec)
    spec.loader.exec_module(made)
    return made.make_stations(count)


@pytest.fixture(scope="module")
def stations():
    made = make_stations(61)
    place = Place("t.csv", None, "B9")
    problems = tuple(Problem("unreadable", row, "bore_diameter", place, "x", "a number", "x", "c") for row in (5, 60))
    return evolve(made, problems=problems)


@pytest.fixture(scope="module")
def whole(stations):
    return assess(stations, load())


@pytest.mark.parametrize("most", [1, 2, 7, 61])
def test_parts_give_the_verdicts_of_the_whole(stations, whole, most, monkeypatch):
    monkeypatch.setattr(module, "in_parts", lambda s: in_parts(s, most))
    for keep in ("figures", "verdicts"):
        parted = assess(stations, load(), keep=keep)
        np.testing.assert_array_equal(parted.grades(), whole.grades())
        assert all(review.result is None for review in parted.reviews.values())
    found, wanted = assess(stations, load(), keep="figures").table(), whole.table()
    for name in wanted:
        np.testing.assert_allclose(found[name], wanted[name], rtol=1e-12, err_msg=name)
    assert np.isnan(assess(stations, load(), keep="verdicts").table()["observed"]).all()


@pytest.mark.parametrize("most", [1, 2, 7, 100])
def test_no_machine_is_cut(stations, most):
    parts = list(in_parts(stations, most))
    assert [m for part in parts for m in part.machines] == list(stations.machines)
    assert sum(len(part) for part in parts) == len(stations)
    assert all(len(part) <= max(most, 2) for part in parts)
    assert sum(len(part.problems) for part in parts) == 2


def test_a_machine_larger_than_a_part_stays_whole():
    stations = stations_from_rows([{"machine": m, "station": str(k)} for m in "ab" for k in range(5)])
    assert [len(part) for part in in_parts(stations, 3)] == [5, 5]


def test_columns_say_what_the_records_say(stations, whole):
    table = whole.table()
    names = list(whole.reviews)
    stated = stations.text("station")
    found = {}
    for k in range(len(table["clause"])):
        row = int(table["row"][k])
        key = (names[table["clause"][k]], stations.machines[table["machine"][k]], None if row < 0 else stated[row])
        severity = int(table["severity"][k])
        figures = [None if np.isnan(table[n][k]) else float(table[n][k]) for n in ("observed", "lower", "upper")]
        found[key] = (OUTCOMES[table["outcome"][k]], SEVERITIES[severity] if severity >= 0 else None, *figures)
    records = assessments(whole)
    assert len(records) == len(found)
    for record in records:
        outcome, severity, *figures = found[(record.clause, record.machine, record.station)]
        assert (record.outcome, record.severity) == (outcome, severity)
        for value, quantity in zip(figures, (record.observed, record.lower, record.upper), strict=True):
            assert (value is None) == (quantity is None)
            assert quantity is None or quantity.value == pytest.approx(value, rel=1e-9)


GRADES = {"met": 0, "not assessed": -1, "not applicable": -2, "remark": 1, "minor": 2, "major": 3, "critical": 4}


def test_grades_say_what_the_records_say(stations, whole):
    grades = whole.grades()
    names, texts, machines = list(whole.reviews), stations.text("station"), np.array(stations.machines)
    seen = set()
    for record in assessments(whole):
        rows = machines[stations.machine_row] == record.machine
        rows &= True if record.station is None else texts == record.station
        wanted = GRADES[record.severity or record.outcome]
        assert (grades[names.index(record.clause), rows] == wanted).all(), record
        seen.add(wanted)
    assert seen == set(GRADES.values())


def test_a_finding_that_follows_names_a_finding_at_least_as_grave(whole):
    found = [record for record in assessments(whole) if record.outcome == "finding"]
    by_key = {(record.clause, record.machine, record.station): record for record in found}
    followers = [record for record in found if record.follows is not None]
    assert followers
    for record in found:
        leading = whole.reviews[record.clause].clause.follows
        graver = [
            (name, station)
            for name in leading
            for station in dict.fromkeys((record.station, None))
            if (cause := by_key.get((name, record.machine, station))) is not None
            and GRADES[cause.severity] >= GRADES[record.severity]
        ]
        if record.station is not None:
            named = record.follows and (record.follows.clause, record.follows.station)
            assert named == (graver[0] if graver else None), record


def test_an_assumption_is_told_where_it_was_taken_and_nowhere_else():
    """Two machines, one with a stated coaxiality: the run-out stands in for it in the other alone."""
    rows = [
        {"machine": machine, "station": station, "shaft_seat_runout": 0.002, "bore_diameter": 8, "outside_diameter": 22}
        for machine in "PQ" for station in "AB"
    ]  # fmt: skip
    for row in rows[:2]:
        row["coaxiality_of_shaft_seats"] = 0.004
    told = {
        record.machine: [(a.parameter, a.value) for a in record.assumed if a.parameter.startswith("coax")]
        for record in assessments(assess(stations_from_rows(rows), load(CURRENT)))
        if record.clause == "alignment.coaxiality"
    }
    assert told == {"P": [], "Q": [("coaxiality_of_shaft_seats", 0.002)]}


def test_a_limit_is_shown_unless_what_is_met_lies_beyond_it():
    limits = {"lower": np.array([1.0, 1.0, 1.0, np.inf]), "upper": np.array([5.0, 5.0, 5.0, 5.0])}
    result = Result(np.zeros(4), observed=np.array([3.0, 0.5, 6.0, 6.0]), **limits)
    outcome = np.array([OUTCOMES.index(word) for word in ("met", "met", "met", "finding")], np.int8)
    shown = module._figures(result, outcome)
    np.testing.assert_array_equal(shown["lower"], [1.0, np.nan, 1.0, np.nan])
    np.testing.assert_array_equal(shown["upper"], [5.0, 5.0, np.nan, 5.0])
    outcome[:] = OUTCOMES.index("not assessed")
    assert np.isnan(module._figures(result, outcome)["observed"]).all()


def test_values_of_a_station_are_those_of_the_vocabulary_without_its_name(stations):
    values = station_values(stations, 0)
    assert values and not {"machine", "station"} & set(values)
    assert list(values) == [name for name in vocabulary() if name in values]
    assert set(values) == {name for name in vocabulary() if stations.known(name)[0]} - {"machine", "station"}


def test_what_is_kept_of_an_assessment_is_what_was_asked_for(stations):
    kept = {keep: assess(stations, load(CURRENT), keep=keep) for keep in ("measures", "verdicts", "results")}
    for name, review in kept["measures"].reviews.items():
        np.testing.assert_array_equal(review.measure, kept["results"].reviews[name].result.measure)
        assert review.outcome.tolist() == kept["verdicts"].reviews[name].outcome.tolist()
        assert kept["verdicts"].reviews[name].result is None


def test_records_leave_out_the_working_of_what_is_met_where_that_is_wanted(whole):
    for record, lean in zip(assessments(whole, [0]), assessments(whole, [0], full=False), strict=True):
        assert evolve(record, working=()) == evolve(lean, working=())
        assert lean.working == (() if record.outcome == "met" else record.working)


def test_reductions_pass_over_what_is_not_known():
    view = View(stations_from_rows([{"machine": m} for m in "aabbc"]))
    values = np.array([1.0, np.nan, np.nan, np.nan, 4.0])
    for how in ("min", "max", "sum"):
        np.testing.assert_array_equal(view.to_machines(values, how, known=True), [1.0, np.nan, 4.0])
        np.testing.assert_array_equal(view.to_machines(values, how), [np.nan, np.nan, 4.0])
    both = np.array([1.0, 3.0, -2.0, np.nan, 4.0])
    assert view.to_machines(both, "sum", known=True).tolist() == [4.0, -2.0, 4.0]
    assert view.to_machines(both, "max", known=True).tolist() == [3.0, -2.0, 4.0]


def test_what_goes_between_processes_can_be_packed(stations):
    part = pickle.loads(pickle.dumps(stations.take(slice(0, 4))))
    found = pickle.loads(pickle.dumps(assess(part, load(), keep="figures")))
    np.testing.assert_array_equal(found.grades(), assess(stations, load()).grades()[:, :4])
    assert part.problems == () and stations.take(slice(4, 6)).problems[0].row == 1
