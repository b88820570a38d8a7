"""Changes that clear: each one offered really clears, and makes nothing else worse."""

import numpy as np
import pytest

from linter.model.findings import InputRecord, ReviewResult
from linter.model.stations import stations_from_rows
from linter.model.vocabulary import parameter
from linter.review.assess import assess
from linter.review.changes import candidates, put, replicate, with_changes
from linter.review.records import assessments
from linter.rulebook.load import load

SEAT = {
    "bore_diameter": 10, "outside_diameter": 26, "ring_width": 8, "ring_chamfer": 0.3,
    "bearing_type": "deep groove ball", "tolerance_class": "Normal", "clearance_class": "C3",
    "speed_max": 8000, "duty": "continuous",
    "lubrication": "grease", "ball_material": "steel", "rotating_ring": "inner", "load_direction": "stationary",
    "radial_load": 60, "axial_load": 15, "preload_force": [60, -5, 5], "dynamic_rating": 4620, "static_rating": 1960,
    "shaft_material": "steel", "housing_material": "steel", "shaft_seat_diameter": [10, "j5"],
    "housing_seat_diameter": [26, "H6"], "shaft_fillet_radius": 0.2, "housing_fillet_radius": 0.2,
}  # fmt: skip


def review(rows):
    stations, book = stations_from_rows(rows), load("2026.1")
    assessed = assess(stations, book)
    result = ReviewResult(
        "ringseat", "0", book.record(), InputRecord("t", "0", "rows"), (), tuple(assessments(assessed)), (), "major"
    )
    return stations, book, with_changes(result, stations, book)


def finding(result, clause):
    (found,) = [a for a in result.assessments if a.clause == clause and a.station in ("A", None)]
    assert found.outcome == "finding"
    return found


def test_the_nearest_radius_clears_a_fillet():
    _, _, result = review([{**SEAT, "shaft_fillet_radius": 0.8}])
    (change,) = finding(result, "shoulder.fillet").clears_with
    assert (change.parameter, change.value, change.unit, change.verified) == ("shaft_fillet_radius", 0.3, "mm", True)
    assert change.text.replace("\u00a0", " ") == "0.8 mm → 0.3 mm"


def test_a_class_clears_a_loose_seat():
    _, book, result = review([{**SEAT, "shaft_seat_diameter": [10, "f6"]}])
    changes = {c.parameter: c for c in finding(result, "fit.shaft-class").clears_with}
    change = changes["shaft_seat_diameter"]
    again = assess(stations_from_rows([{**SEAT, "shaft_seat_diameter": [10, str(change.value)]}]), book).reviews[
        "fit.shaft-class"
    ]
    assert again.outcome[0] == 0


def worse(before, after):
    return (after > np.maximum(before, 0)) | ((after == -1) & (before >= 0))


def test_every_change_offered_is_verified_by_a_run_of_its_own():
    row = {**SEAT, "shaft_seat_diameter": [10, "f6"], "shaft_fillet_radius": 0.8, "speed_max": 45000}
    stations, book, result = review([row])
    before = assess(stations, book).grades()
    clauses = [c.id for c in book.clauses.values()]
    offered = {True: 0, False: 0}
    for item in result.assessments:
        groups = [[c] for c in item.clears_with if not c.together]
        groups += [[c for c in item.clears_with if c.together]] if any(c.together for c in item.clears_with) else []
        for group in groups:
            copy = replicate(stations, [np.array([0])])
            for change in group:
                words = parameter(change.parameter).choices
                (candidate,) = [
                    c for c in candidates(stations, change.parameter, 0)
                    if change.value in (words[c.value] if words else c.value,) or (
                        isinstance(c.value, tuple) and change.value == (c.value[3] or c.value[0]))
                ]  # fmt: skip
                put(copy, change.parameter, 0, candidate.value)
            after = assess(copy, book).grades()
            assert after[clauses.index(item.clause), 0] <= 0
            bad = worse(before, after)
            assert bad.any() != group[0].verified
            assert (after[bad] == 1).all()
            offered[group[0].verified] += 1
            if not group[0].verified:
                for k in np.flatnonzero(bad.any(axis=1)):
                    assert book.clauses[clauses[k]].title in group[0].text
    assert offered[True] >= 3


def test_nothing_is_offered_for_a_requirement():
    _, _, result = review([{**SEAT, "speed_max": 60000, "outside_diameter": 30, "housing_seat_diameter": [30, "H6"]}])
    names = {c.parameter for a in result.assessments for c in a.clears_with}
    assert not names & {"speed_max", "bore_diameter", "outside_diameter", "radial_load", "required_life"}


@pytest.mark.parametrize("name", ["lubrication", "shaft_seat_diameter", "shaft_shoulder_diameter", "shaft_seat_runout"])
def test_candidates_leave_the_present_value_out(name):
    rows = [{**SEAT, "shaft_shoulder_diameter": [13, -0.1, 0], "shaft_seat_runout": 0.003}]
    stations = stations_from_rows(rows)
    found = list(candidates(stations, name, 0))
    assert found
    assert all(c.distance > 0 or name == "shaft_seat_diameter" for c in found)


@pytest.mark.parametrize(
    ("row", "clause", "seat"),
    [
        ({"load_direction": "rotating"}, "fit.load-rotation", "housing_seat_diameter"),
        (
            {"shaft_seat_diameter": [10, "f6"], "housing_seat_diameter": [26, "N7"]},
            "fit.shaft-class",
            "shaft_seat_diameter",
        ),
    ],
)
def test_a_change_that_costs_a_minor_finding_elsewhere_is_not_offered(row, clause, seat):
    """A tighter class would clear the finding, and bring one of another clause that is graver than a remark."""
    stations, book, result = review([{**SEAT, **row}])
    assert seat not in {c.parameter for c in finding(result, clause).clears_with if not c.together}
    before, at = assess(stations, book).grades(), list(book.clauses).index(clause)
    costs = []
    for candidate in candidates(stations, seat, 0):
        copy = replicate(stations, [np.array([0])])
        put(copy, seat, 0, candidate.value)
        after = assess(copy, book).grades()
        if after[at, 0] in (0, -2) and not ((after == -1) & (before >= 0)).any():
            costs.append(int((np.where(after > np.maximum(before, 0), after, 0)).max()))
    assert 2 in costs  # without the rule one of these would be the answer
    assert min(costs) >= 2
