"""A table that names its bearings by designation alone: what is assumed, and that it is not kinder than the truth."""

import csv
from pathlib import Path

import numpy as np
import pytest
from attrs import evolve

from linter.model.stations import Problem, stations_from_rows
from linter.reading import read_table
from linter.review.assess import MET, NOT_ASSESSED, assess
from linter.review.defaults import with_defaults
from linter.review.records import review_reading
from linter.rulebook.load import load

BOOK = load("current")
ROOT = Path(__file__).parents[2]
#: What a designation stands for in a firm's table.
OF_THE_BEARING = (
    "bearing_type", "bore_diameter", "outside_diameter", "ring_width", "ring_chamfer", "inner_ring_shoulder_diameter",
    "outer_ring_shoulder_diameter", "tolerance_class", "clearance_class", "ball_count", "ball_diameter",
    "pitch_diameter", "ball_material", "ring_material", "cage", "closure", "dynamic_rating", "static_rating",
    "limiting_speed",
)  # fmt: skip
SLOW = {"bearing_type": "deep groove ball", "bore_diameter": 10, "outside_diameter": 26, "ring_width": 8}


def reviewed(path):
    reading = read_table(path, shown_as=path.name)
    return review_reading(evolve(reading, stations=with_defaults(reading.stations, BOOK)), BOOK)


def taken(name, *rows, problems=()):
    stations = evolve(stations_from_rows(list(rows)), problems=tuple(problems))
    return with_defaults(stations, BOOK).choice(name).texts().tolist()


def test_a_bare_table_is_judged_as_far_as_it_goes_and_no_seat_is_invented(tmp_path):
    path = tmp_path / "bare.csv"
    path.write_text(
        "Machine,Station,Bearing designation,Speed [r/min],shaft_seat_roughness [um],housing_seat_roughness [um]\n"
        "M,A (locating),6000-2Z/C3,8000,0.4,0.8\nM,B,6000-2Z/C3,8000,0.4,0.8\n",
        encoding="utf-8",
    )
    result = reviewed(path)
    assert result.gate == "undecided" and result.carried > 0
    assert result.outcomes["not assessed"] <= 70
    outcomes = {a.clause: a.outcome for a in result.assessments}
    for clause in ("fit.shaft-class", "fit.housing-class", "fit.load-rotation", "fit.running-clearance",
                   "shoulder.shaft-height", "shoulder.fillet", "alignment.cylindricity", "life.rating"):  # fmt: skip
        assert outcomes[clause] == "not assessed", clause
    for clause in ("speed.factor", "speed.cage", "speed.maker-limit", "speed.lubricant-reaches", "heat.balance"):
        assert outcomes[clause] == "met", clause


def test_a_firms_table_with_the_designation_in_place_of_the_bearing_is_judged_whole(tmp_path):
    text = (ROOT / "sample_exports" / "coolant-pump.csv").read_text(encoding="utf-8")
    lines = list(csv.reader(text.splitlines()))
    kept = [k for k, heading in enumerate(lines[0]) if heading.split(" ")[0] not in OF_THE_BEARING]
    at = lines[0].index("bearing_designation")
    for line in lines[1:]:
        line[at] = "6000-2Z/P5 C3"
    path = tmp_path / "pump.csv"
    with path.open("w", encoding="utf-8", newline="") as stream:
        csv.writer(stream).writerows([line[k] for k in kept] for line in lines)
    result = reviewed(path)
    assert (result.gate, result.outcomes["not assessed"]) == ("open", 0)
    counted = {a.assumed.parameter for a in result.assumed if a.carries}
    assert {"cage", "limiting_speed", "inner_ring_shoulder_diameter", "outer_ring_shoulder_diameter"} <= counted
    assert result.carried >= 2 * 4


@pytest.mark.parametrize(
    "stated",
    [
        {"spring_rate": 10}, {"preload_force": 30}, {"rigid_preload_class": "light"}, {"axial_role": "spring-loaded"},
        {"axial_role": "cross-located"}, {"axial_demand": "stiffness"}, {"bearing_type": "angular contact ball"},
        {"bearing_type": None},
    ],
)  # fmt: skip
def test_no_preload_is_assumed_only_where_nothing_speaks_of_one(stated):
    assert taken("preload_method", SLOW, SLOW) == ["none", "none"]
    assert taken("preload_method", SLOW, {**SLOW, **stated}) == ["", ""]


@pytest.mark.parametrize(
    ("parameter", "code"), [("spring_rate", "not-usable"), ("preload_method", "x"), ("bearing_designation", "pair")]
)
def test_no_preload_is_not_assumed_beside_a_cell_that_may_speak_of_one(parameter, code):
    problem = Problem("unreadable", 1, parameter, None, "?", "a value", "a cell", code)
    assert taken("preload_method", SLOW, SLOW, problems=[problem]) == ["", ""]


def test_the_usual_cage_needs_a_designation_that_is_read_whole():
    named = [{**SLOW, "bearing_designation": text} for text in ("6000-2Z/C3", "6000 XQ7", "", "pump bearing")]
    assert taken("cage", *named) == ["pressed steel", "", "", ""]


def test_a_closed_bearing_is_taken_to_be_greased():
    assert taken("lubrication", *({"closure": c} for c in ("shield", "contact seal", "open"))) == ["grease"] * 2 + [""]


@pytest.mark.parametrize(("hot", "cold", "outcome"), [(110, -20, "n/a"), (130, -20, "open"), (60, -50, "open")])
def test_an_assumed_cage_is_asked_for_where_not_every_kind_withstands(hot, cold, outcome):
    row = {**SLOW, "bearing_designation": "6000", "temperature_max": hot, "temperature_min": cold}
    stations = with_defaults(stations_from_rows([{**row, "operating_temperature": 50}]), BOOK)
    found = assess(stations, BOOK).reviews["speed.cage-temperature"].outcome[0]
    assert (found == NOT_ASSESSED) == (outcome == "open")


def test_what_is_met_by_usual_lands_is_met_by_every_usual_one():
    """Shoulders of all heights: with the lands left open, and with lands from one usual end to the other."""
    base = {**SLOW, "ring_chamfer": 0.3, "ball_diameter": 4.762, "pitch_diameter": 18}
    shoulders = [
        {"shaft_shoulder_diameter": [float(a), -0.05, 0.05], "housing_shoulder_diameter": [float(b), -0.05, 0.05]}
        for a in np.arange(11.5, 23.0, 0.5)
        for b in np.arange(13.0, 25.0, 0.5)
    ]
    names = ("shoulder.shaft-height", "shoulder.housing-height", "shoulder.other-ring")

    def met(**lands):
        reviews = assess(stations_from_rows([{**base, **s, **lands} for s in shoulders]), BOOK).reviews
        return {name: reviews[name].outcome == MET for name in names}

    left_open = met()
    for inner, outer in [(k, j) for k in (0.5, 0.7, 0.9) for j in (0.5, 0.7, 0.9)]:
        stated = met(
            inner_ring_shoulder_diameter=18 - inner * 4.762, outer_ring_shoulder_diameter=18 + outer * 4.762
        )  # fmt: skip
        for name in names:
            assert left_open[name].any() and not (left_open[name] & ~stated[name]).any(), name


def test_released_rulebooks_take_no_usual_value_in():
    row = {**SLOW, "bearing_designation": "6000-2Z", "closure": "shield", "speed_max": 8000}
    found = with_defaults(stations_from_rows([row, row]), load("2026.6"))
    assert not any(found.choice(name).known.any() for name in ("preload_method", "cage", "lubrication"))
