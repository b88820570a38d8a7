"""Chapter table: what cannot be is found, what can be is not, and reading problems reach the report whole."""

import numpy as np
import pytest
from attrs import evolve

from linter.model.places import Place
from linter.model.stations import Problem, Toleranced, stations_from_rows
from linter.review.assess import assess
from linter.review.cases import worked_cases
from linter.review.records import assessments
from linter.rulebook.load import load
from tests.checks.support import VERSION, case_stations, only, ranks, review, same_alone, with_cells, with_limit

SIZE = {
    "bore_diameter": 8, "outside_diameter": 22, "ring_width": 7, "ring_chamfer": 0.3, "speed_max": 30000,
    "bearing_type": "deep groove ball", "ball_count": 7, "ball_diameter": 3.969, "dynamic_rating": 3300,
    "static_rating": 1370, "shaft_seat_diameter": [8, "k5"], "housing_seat_diameter": [22, "H6"],
    "inner_ring_shoulder_diameter": 12.1, "outer_ring_shoulder_diameter": 18.2, "base_oil_viscosity_40": 32,
    "base_oil_viscosity_100": 5.4, "temperature_min": -20, "temperature_max": 90, "operating_temperature": 70,
    "drawing_number": "B-1042", "drawing_revision": "C", "spring_free_length": 12, "spring_installed_length": 9,
    "spring_solid_length": 5, "shaft_bore": 0, "housing_outer_diameter": 30, "shaft_seat_roughness": 0.4,
}  # fmt: skip
ALL = [c for c in load(VERSION).clauses if c.startswith("table.")]
CASES = [
    pytest.param(case, id=f"{clause}: {case['title']}")
    for clause in ALL
    for case in worked_cases(load(VERSION), clause)
]


def problem(kind, row, cell, text):
    place = Place("blower.csv", None, cell)
    return Problem(
        kind, row, "speed_max", place, text, "a number", f"{place}: “{text}” is no number; expected a number.", "x"
    )


@pytest.mark.parametrize("case", CASES)
def test_worked_case_with_its_reading_problems(case):
    records = assessments(assess(case_stations(case), only(case["clause"])))
    (record,) = records
    assert (record.outcome, record.severity) == (case["outcome"], case.get("severity"))
    assert record.message.replace("\u00a0", " ") == case["message"]


@pytest.mark.parametrize("clause", ALL)
def test_a_sound_position_meets_the_chapter(clause):
    assert ranks(clause, [{**SIZE, "station": "A"}, {**SIZE, "station": "B"}])[0] == 0


@pytest.mark.parametrize("clause", ALL)
def test_rows_do_not_see_each_other(clause):
    same_alone(
        clause,
        [
            SIZE,
            {"bore_diameter": 22, "outside_diameter": 8, "speed_max": 1},
            {**SIZE, "ball_count": 30, "ring_width": 1},
        ],
    )


@pytest.mark.parametrize(
    "wrong",
    [
        {"bore_diameter": 22}, {"ball_diameter": 8}, {"ball_count": 12}, {"ball_count": 7.5}, {"ball_count": 1},
        {"ring_chamfer": 4}, {"pitch_diameter": 11}, {"inner_ring_shoulder_diameter": 7.9},
        {"outer_ring_shoulder_diameter": 22.1}, {"inner_ring_shoulder_diameter": 19}, {"base_oil_viscosity_100": 40},
        {"temperature_min": 95}, {"speed_operating": 31000}, {"shaft_bore": 8}, {"housing_outer_diameter": 22},
        {"spring_installed_length": 13}, {"spring_solid_length": 12}, {"inner_groove_ratio": 0.5},
        {"fatigue_load_limit": 2000}, {"shaft_seat_diameter": [8, 0.01, 0.0]}, {"ring_width": -7},
        {"shaft_seat_runout": -0.001}, {"speed_max": 0},
    ],
)  # fmt: skip
def test_what_cannot_be_is_critical_and_names_the_parameter(wrong):
    found = review("table.plausible", [{**SIZE, **wrong}])
    assert ranks("table.plausible", [{**SIZE, **wrong}])[0] == 4
    assert next(iter(wrong)) in found.result.facts["told"](0)
    assert next(iter(wrong)) in found.result.facts["cells"](0)


@pytest.mark.parametrize(
    "odd",
    [
        {"speed_max": 9}, {"shaft_seat_cylindricity": 3}, {"operating_temperature": 353}, {"dynamic_rating": 3.3},
        {"static_rating": 13700}, {"pitch_diameter": 17}, {"speed_max": 290000}, {"operating_temperature": 95},
    ],
)  # fmt: skip
def test_what_hardly_can_be_is_minor(odd):
    assert ranks("table.plausible", [{**SIZE, **odd}])[0] == 2


def test_defaults_are_not_doubted():
    found = review("table.plausible", [{"bore_diameter": 8, "outside_diameter": 22, "speed_max": 30000}])
    assert found.outcome[0] == 0


def test_every_problem_is_listed_with_its_cell_for_its_machine_and_the_file_s_for_all():
    rows = [{**SIZE, "machine": name, "station": s} for name in ("M1", "M2") for s in "AB"]
    problems = (
        problem("unreadable", 0, "E2", "abc"),
        problem("unreadable", 1, "E3", "1,2,3"),
        problem("unreadable", None, "A1", "??"),
        problem("disagreement", 3, "C5", "8 and 9"),
    )
    stations = evolve(stations_from_rows(rows), problems=problems)
    found = {
        (a.clause, a.machine): a
        for clause in ("table.read", "table.agreement")
        for a in assessments(assess(stations, only(clause)))
    }
    first = found["table.read", "M1"]
    assert first.observed.value == 3
    for cell, text in (("E2", "abc"), ("E3", "1,2,3"), ("A1", "??")):
        assert f"{cell}: “{text}” is no number; expected a number" in first.message
        assert cell in first.remedy
    assert found["table.read", "M2"].observed.value == 1
    assert "E2" not in found["table.read", "M2"].message
    assert found["table.agreement", "M1"].outcome == "met"
    assert "C5: “8 and 9”" in found["table.agreement", "M2"].message


@pytest.mark.parametrize(("shift", "rank"), [(0.0, 0), (0.0005, 0), (0.0006, 3), (0.005, 3)])
def test_deviations_that_are_not_those_of_the_class(shift, rank):
    """ISO 286-1: 8 k5 is +0.007/+0.001; differences up to half a micrometre are rounding."""
    stations = stations_from_rows([SIZE])
    size = stations.size("shaft_seat_diameter")
    moved = Toleranced(size.nominal, size.lower + shift, size.upper, size.tolerance_class)
    stations = evolve(stations, toleranced={**stations.toleranced, "shaft_seat_diameter": moved})
    assert ranks("table.class-agrees", stations)[0] == rank


@pytest.mark.parametrize(
    ("shaft", "housing", "rank"),
    [("k5", "H6", 0), ("k5", None, 0), (None, "H6", 0), (None, None, -2), ("k5", "h6", 3), ("K5", "H6", 3)],
)
def test_classes_are_judged_wherever_one_is_stated(shaft, housing, rank):
    row = {"bore_diameter": 8, "outside_diameter": 22}
    row |= {"shaft_seat_diameter": [8, shaft]} if shaft else {"shaft_seat_diameter": [8, 0.001, 0.007]}
    row |= {"housing_seat_diameter": [22, housing]} if housing else {"housing_seat_diameter": [22, 0.0, 0.013]}
    assert ranks("table.class-agrees", [row])[0] == rank


def test_a_larger_difference_is_never_milder():
    shifts = np.geomspace(1e-4, 20, 60)
    found = ranks(
        "table.nominals-agree",
        [{**SIZE, "machine": f"M{k}", "shaft_seat_diameter": [8 + s, 0, 0.006]} for k, s in enumerate(shifts)],
    )
    assert (np.diff(found) >= 0).all()
    assert set(found) == {0, 2, 4}


def test_the_numbers_of_the_rulebook_decide():
    slow = with_cells("table.plausible", "ranges", "high", "20000", parameter="speed_max")
    assert ranks("table.plausible", [SIZE], slow)[0] == 2
    assert ranks("table.plausible", [SIZE], with_limit("table.plausible", "speed_factor_most", 400_000))[0] == 2
    shifted = [{**SIZE, "shaft_seat_diameter": [8.004, -0.003, 0.003]}]
    assert ranks("table.nominals-agree", shifted)[0] == 2
    assert ranks("table.nominals-agree", shifted, with_limit("table.nominals-agree", "exact", 5.0))[0] == 0
    small = with_limit("table.boundary-dimensions", "largest_bore", 5)
    assert ranks("table.boundary-dimensions", [SIZE], small)[0] == -2


@pytest.mark.parametrize(
    ("name", "word", "nominal", "asked"),
    [
        ("shaft_seat_diameter", "J5", 8.0, "did you mean j5? Small letters"),
        ("housing_seat_diameter", "k2", 22.0, ""),
        ("housing_seat_diameter", "zb19", 22.0, ""),
        ("shaft_seat_diameter", "Q77", 8.0, ""),
    ],
)
def test_a_class_of_the_other_letter_is_asked_back(name, word, nominal, asked):
    place = Place("blower.csv", None, "F2")
    told = Problem("unreadable", 0, name, place, f"{nominal:g} {word}", "a class", "F2: no class.", "unknown-class")
    stations = evolve(case_stations({"stations": [SIZE], "clause": "table.read"}), problems=(told,))
    (record,) = assessments(assess(stations, only("table.read")))
    assert record.outcome == "finding" and record.remedy.startswith("Correct F2 as expected")
    assert (asked in record.remedy) if asked else ("did you mean" not in record.remedy)
