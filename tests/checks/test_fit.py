"""Chapter fit: load rotation, classes, grade and split housings."""

import numpy as np
import pytest
from attrs import evolve

from linter.checks.shared import seat_tables
from linter.checks.shared.base import View
from linter.checks.shared.seat_classes import recommended
from linter.checks.shared.seat_fits import (
    housing_fit,
    inner_load_rotation,
    outer_load_rotation,
    shaft_fit,
    unbalance_force,
    unbalance_ratio,
)
from linter.model.findings import SEVERITIES
from linter.model.stations import Stations, stations_from_rows
from linter.review.assess import assess
from linter.review.records import assessments
from linter.rulebook.load import load
from linter.rulebook.model import Limits
from tests.designs.complete import complete_design

BOOK = load("2026.1")
FIT = [c for c in BOOK.clauses if c.startswith("fit.")]
BASE = {
    "bearing_type": "deep groove ball",
    "bore_diameter": 25.0,
    "outside_diameter": 52.0,
    "ring_width": 15.0,
    "tolerance_class": "Normal",
    "clearance_class": "CN",
    "rotating_ring": "inner",
    "load_direction": "stationary",
    "shaft_material": "steel",
    "housing_material": "steel",
    "speed_max": 6000.0,
    "radial_load": 300.0,
    "shaft_temperature": 60.0,
    "housing_temperature": 50.0,
    "temperature_min": 0.0,
    "temperature_max": 80.0,
    "axial_role": "floating",
    "free_ring": "outer",
    "housing_split": "no",
    "shaft_seat_diameter": [25.0, "k5"],
    "housing_seat_diameter": [52.0, "H7"],
}


def record(clause, rows, station="A", book=BOOK):
    if isinstance(rows, dict):
        rows = [{**BASE, **rows}]
    assessed = assess(stations_from_rows(rows), evolve(book, clauses={clause: book.clauses[clause]}))
    (found,) = [a for a in assessments(assessed) if a.station in (None, station)]
    return found


def grade_of(found):
    assert found.outcome in ("met", "finding"), found.message
    return 0 if found.severity is None else len(SEVERITIES) - SEVERITIES.index(found.severity)


def view(*rows):
    return View(stations_from_rows([{**BASE, **row, "machine": str(i)} for i, row in enumerate(rows)]))


def rotation_limits():
    return Limits(BOOK.clauses["fit.load-rotation"])


def test_fits_of_both_seats():
    v = view({}, {"bore_diameter": 4.0, "tolerance_class": "P5", "shaft_seat_diameter": [4.0, "h5"]})
    shaft, housing = shaft_fit(v), housing_fit(v)
    assert (shaft.smallest[0], shaft.largest[0]) == (2, 21)
    assert (housing.smallest[0], housing.largest[0]) == (-43, 0)
    assert (shaft.smallest[1], shaft.mean[1], shaft.largest[1]) == (-5, 0, 5)


def test_a_seat_by_limits_of_another_nominal_gives_the_same_fit():
    v = view({"shaft_seat_diameter": [25.002, 0.0, 0.009]}, {"shaft_seat_diameter": [25.0, 0.002, 0.011]})
    assert shaft_fit(v).smallest.tolist() == [2, 2]
    assert shaft_fit(v).largest.tolist() == [21, 21]


@pytest.mark.parametrize(
    ("row", "inner", "outer"),
    [
        ({"rotating_ring": "inner", "load_direction": "stationary"}, "rotating", "stationary"),
        ({"rotating_ring": "outer", "load_direction": "stationary"}, "stationary", "rotating"),
        ({"rotating_ring": "inner", "load_direction": "rotating"}, "stationary", "rotating"),
        ({"rotating_ring": "outer", "load_direction": "rotating"}, "rotating", "stationary"),
        ({"rotating_ring": "inner", "load_direction": "oscillating"}, "indeterminate", "indeterminate"),
        ({"residual_unbalance": 0.38}, "rotating", "stationary"),  # U/F = 0.5
        ({"residual_unbalance": 0.77}, "indeterminate", "indeterminate"),
        ({"residual_unbalance": 1.2}, "stationary", "rotating"),
        ({"load_direction": None, "radial_load": None}, "", ""),
    ],
)
def test_which_ring_the_load_turns_about(row, inner, outer):
    row = {"radial_load": 150.0 if "residual_unbalance" in row else 300.0, **row}
    row["speed_max"] = 134_000.0
    v = view(row)
    limits = rotation_limits()
    assert inner_load_rotation(v, limits).texts()[0] == inner
    assert outer_load_rotation(v, limits).texts()[0] == outer


def test_unbalance_force_is_shared_and_weight_counts_on_a_horizontal_shaft():
    rotor = {"rotor_mass": 0.1, "balance_grade": 2.5, "speed_max": 110_000.0}
    rows = [
        {**rotor, "station": n, "shaft_orientation": o, "machine": o}
        for o in ("horizontal", "vertical") for n in "AB"
    ]  # fmt: skip
    v = View(stations_from_rows(rows))
    omega = 110_000 * np.pi / 30
    assert unbalance_force(v) == pytest.approx(0.5 * 0.0025 * omega * 0.1)
    assert unbalance_ratio(v)[:2] == pytest.approx(0.0025 * omega / 9.80665)
    assert np.isinf(unbalance_ratio(v)[2:]).all()


def test_an_axial_preload_gives_the_load_no_direction():
    row = {"load_direction": None, "radial_load": None, "preload_method": "spring", "preload_force": 50.0}
    assert record("fit.load-rotation", row).missing == ("load_direction",)


def test_stating_stationary_does_not_hide_an_unbalance_that_outgrows_the_load():
    row = {"radial_load": 1.0, "residual_unbalance": 5.0, "speed_max": 20_000.0}
    found = record("fit.load-rotation", row)
    assert found.severity == "critical"
    assert "stated as stationary" in found.message
    quiet = record("fit.load-rotation", {**row, "radial_load": 100.0})
    assert quiet.outcome == "met"


@pytest.mark.parametrize(
    ("clause", "name", "worse"),
    [
        ("fit.load-rotation", "shaft_seat_diameter", -1),
        ("fit.shaft-class", "shaft_seat_diameter", -1),
        ("fit.shaft-class", "shaft_seat_diameter", 1),
        ("fit.housing-class", "housing_seat_diameter", -1),
        ("fit.housing-class", "housing_seat_diameter", 1),
        ("fit.one-ring-free", "housing_seat_diameter", -1),
        ("fit.inner-stress", "shaft_seat_diameter", 1),
        ("fit.running-clearance", "shaft_seat_diameter", 1),
        ("fit.outer-slides", "housing_seat_diameter", -1),
        ("fit.outer-looseness", "housing_seat_diameter", 1),
    ],
)
def test_severity_never_drops_as_a_seat_moves_from_good_to_bad(clause, name, worse):
    nominal, (low, high) = {"shaft_seat_diameter": (25.0, (2, 11)), "housing_seat_diameter": (52.0, (0, 30))}[name]
    shift = worse * np.arange(0.0, 90.0, 0.5)
    rows = [
        {**BASE, name: [nominal, (low + x) / 1000, (high + x) / 1000], "machine": f"{i:03d}"}
        for i, x in enumerate(shift)
    ]
    assessed = assess(stations_from_rows(rows), evolve(BOOK, clauses={clause: BOOK.clauses[clause]}))
    review = assessed.reviews[clause]
    assert review.failure is None
    grades = np.where(review.severity < 0, 0, len(SEVERITIES) - review.severity)
    assert (np.diff(grades) >= 0).all()
    assert grades[-1] >= 2


@pytest.mark.parametrize(
    ("name", "values"), [("radial_load", np.geomspace(10.0, 30_000.0, 60)), ("speed_max", np.linspace(1e3, 9e4, 60))]
)
def test_the_inner_ring_never_holds_better_under_more_load_or_speed(name, values):
    rows = [{**BASE, name: float(x), "machine": f"{i:03d}"} for i, x in enumerate(values)]
    review = assess(
        stations_from_rows(rows), evolve(BOOK, clauses={"fit.inner-hold": BOOK.clauses["fit.inner-hold"]})
    ).reviews["fit.inner-hold"]
    grades = np.where(review.severity < 0, 0, len(SEVERITIES) - review.severity)
    assert (np.diff(grades) >= 0).all()
    assert grades[-1] >= 2


def test_what_is_loose_as_drawn_is_told_once():
    row = {"shaft_seat_diameter": [25.0, -0.040, -0.030]}
    assert record("fit.load-rotation", row).severity == "critical"
    assert record("fit.inner-hold", row).outcome == "not applicable"


def test_a_class_that_tables_print_is_a_remark_at_most():
    printed = {
        "bore_diameter": 4.0,
        "outside_diameter": 9.0,
        "ring_width": 4.0,
        "radial_load": 1.0,
        "tolerance_class": "P5",
        "shaft_seat_diameter": [4.0, "h5"],
        "housing_seat_diameter": [9.0, "H6"],
    }
    for clause in ("fit.load-rotation", "fit.inner-stress"):
        assert record(clause, printed).severity in (None, "remark")
    looser = {**printed, "shaft_seat_diameter": [4.0, "g5"]}
    assert record("fit.load-rotation", looser).severity in ("major", "critical")


@pytest.mark.parametrize("clause", FIT)
def test_many_rows_give_what_single_rows_give(clause):
    variations = [
        {},
        {"shaft_seat_diameter": [25.0, "g6"]},
        {"housing_seat_diameter": [52.0, "N7"], "rotating_ring": "outer"},
        {"tolerance_class": "P4", "bearing_type": "angular contact ball"},
        {"load_direction": "indeterminate", "housing_material": "aluminium"},
        {"shaft_bore": 18.0, "shaft_material": "titanium", "speed_max": 60_000.0},
        {"inner_ring_retention": "adhesive", "outer_ring_retention": "o-ring", "bore_diameter": 4.0},
        {"shaft_seat_diameter": 25.0, "axial_role": "spring-loaded", "free_ring": "inner"},
        {"housing_split": "yes", "axial_float": 0.1, "bearing_span": 300.0},
    ]
    rows = [{**BASE, **row, "machine": f"{i:02d}"} for i, row in enumerate(variations)]
    only = evolve(BOOK, clauses={clause: BOOK.clauses[clause]})
    together = assess(stations_from_rows(rows), only).reviews[clause]
    assert together.failure is None
    for i, row in enumerate(rows):
        alone = assess(stations_from_rows([row]), only).reviews[clause]
        assert alone.outcome[0] == together.outcome[i]
        assert alone.severity[0] == together.severity[i]
        assert alone.result.measure[0] == pytest.approx(together.result.measure[i], nan_ok=True)


@pytest.mark.parametrize("clause", FIT)
def test_a_bare_row_says_what_is_wanted(clause):
    found = record(clause, [{"bore_diameter": 25.0, "outside_diameter": 52.0, "speed_max": 10_000.0}])
    if found.outcome == "not assessed":
        assert found.missing
    else:
        assert found.outcome == "not applicable"


@pytest.mark.parametrize("clause", FIT)
def test_senseless_values_are_no_failure(clause):
    values = (0.0, -1.0, 1e-9, 1e9, float("inf"))
    rows = []
    for name in ("bore_diameter", "outside_diameter", "speed_max", "radial_load", "ring_width", "shaft_bore"):
        rows += [{**BASE, name: value} for value in values]
    rows += [{**BASE, "shaft_seat_diameter": [25.0, 0.02, -0.02]}, {**BASE, "housing_seat_diameter": [-3.0, 0.0, 0.0]}]
    rows += [{**BASE, "radial_clearance": [10.0, 5.0, -5.0]}, {**BASE, "housing_outer_diameter": 10.0}]
    rows = [{**row, "machine": f"{i:02d}"} for i, row in enumerate(rows)]
    only = evolve(BOOK, clauses={clause: BOOK.clauses[clause]})
    assert assess(stations_from_rows(rows), only).reviews[clause].failure is None


def with_limit(clause, name, value):
    old = BOOK.clauses[clause]
    return evolve(
        BOOK,
        clauses={clause: evolve(old, limits={**old.limits, name: evolve(old.limits[name], value=value)})},
    )


def with_cell(clause, table, where, column, value):
    old = BOOK.clauses[clause]
    t = old.tables[table]
    at = t.columns.index(column)
    rows = tuple(
        (*row[:at], value, *row[at + 1 :]) if all(row[t.columns.index(k)] == v for k, v in where.items()) else row
        for row in t.rows
    )
    assert rows != t.rows
    return evolve(BOOK, clauses={clause: evolve(old, tables={**old.tables, table: evolve(t, rows=rows)})})


def test_the_rulebook_holds_the_numbers():
    row = {"radial_load": 1.0, "residual_unbalance": 0.5, "speed_max": 10_000.0}  # U/F = 0.55
    assert record("fit.load-rotation", row).outcome == "finding"
    assert record("fit.load-rotation", row, book=with_limit("fit.load-rotation", "fixed_up_to", 0.6)).outcome == "met"
    book = with_cell("fit.grade", "grades", {"seat": "housing", "bearing_class": "Normal"}, "near", "IT6")
    assert record("fit.grade", {}).outcome == "met"
    assert record("fit.grade", {}, book=book).severity == "remark"
    book = with_cell("fit.housing-class", "housing", {"ring_load": "stationary"}, "ring_load", "rotating")
    assert record("fit.housing-class", {}, book=book).outcome == "not applicable"
    book = with_limit("fit.inner-stress", "published", 1.0)
    assert record("fit.inner-stress", {}).severity == "remark"
    assert record("fit.inner-stress", {}, book=book).outcome == "met"


def test_a_ring_material_without_a_stress_limit_is_not_judged_by_another_one():
    clause = BOOK.clauses["fit.inner-stress"]
    hoop = clause.tables["hoop"]
    rows = tuple(row for row in hoop.rows if "high-nitrogen steel" not in row)
    book = evolve(BOOK, clauses={clause.id: evolve(clause, tables={**clause.tables, "hoop": evolve(hoop, rows=rows)})})
    assert record(clause.id, {"ring_material": "high-nitrogen steel"}).outcome == "finding"
    found = record(clause.id, {"ring_material": "high-nitrogen steel"}, book=book)
    assert found.outcome == "not assessed"
    assert "no hoop stress limit for this ring material" in found.message
    assert record(clause.id, {}, book=book).outcome == "finding"  # nothing stated: bearing steel stands in
    turned = evolve(hoop, rows=tuple(reversed(hoop.rows)))
    book = evolve(BOOK, clauses={clause.id: evolve(clause, tables={**clause.tables, "hoop": turned})})
    assert record(clause.id, {}, book=book) == record(clause.id, {})


@pytest.mark.parametrize(
    ("row", "accepted"),
    [
        ({"bore_diameter": 10.0}, {"js5", "j5", "h5"}),
        ({"bore_diameter": 25.0}, {"k5", "j6", "js6"}),
        ({"bore_diameter": 25.0, "rotating_ring": "outer"}, {"g6", "h6"}),
        ({"bearing_type": "cylindrical roller", "bore_diameter": 50.0, "outside_diameter": 90.0}, {"k6", "m5", "m6"}),
    ],
)
def test_published_shaft_classes_are_accepted(row, accepted):
    advice = recommended(view(row), Limits(BOOK.clauses["fit.shaft-class"]), "shaft")
    assert accepted <= set(advice.accepted[0].split(", "))


def test_a_load_between_the_makers_edges_accepts_both_recommendations():
    def accepted(share):
        row = {"bearing_type": "cylindrical roller", "bore_diameter": 60.0, "outside_diameter": 110.0,
               "radial_load": share * 1e5, "dynamic_rating": 1e5}  # fmt: skip
        return set(recommended(view(row), Limits(BOOK.clauses["fit.shaft-class"]), "shaft").accepted[0].split(", "))

    light, edge, normal, heavy = accepted(0.03), accepted(0.055), accepted(0.08), accepted(0.2)
    assert edge == light | normal
    assert "k6" in light - normal
    assert "n6" in heavy


@pytest.mark.parametrize("name", ["fit_shaft.csv", "fit_housing.csv"])
def test_tables_of_classes_have_no_gap_in_size(name):
    """For ball bearings of every tolerance class some row covers every bore to 250 mm, and every housing to 500 mm."""
    shaft = name == "fit_shaft.csv"
    sizes = np.geomspace(1.0, 250.0, 60)
    for kind in ("Normal", "P6", "P5", "P4", "P2"):
        rows = [
            {"bore_diameter": float(d), "outside_diameter": float(2 * d), "tolerance_class": kind,
             "bearing_type": "angular contact ball", "axial_role": "locating"}
            for d in sizes if 2 * d <= 250 and d >= 10
        ]  # fmt: skip
        side = "shaft" if shaft else "housing"
        advice = recommended(view(*rows), Limits(BOOK.clauses[f"fit.{side}-class"]), side)
        assert not np.isnan(advice.lower).any(), kind
        assert (advice.upper > advice.lower).all()


def test_the_first_class_of_a_machine_does_not_depend_on_the_other_machines_of_the_table():
    """Of classes that sources print equally often the one that the table has first is taken, whoever else is there."""
    book = load()
    alone = complete_design(5014).stations()
    alone.numbers["outside_diameter"][1] = 32.0055
    other = complete_design(5014).stations()
    other.choices["tolerance_class"].codes[:] = other.choices["tolerance_class"].words.index("P5")
    measures = [
        assess(stations, book).reviews["fit.housing-class"].result.measure[-2:]
        for stations in (alone, Stations.concat([other, alone]))
    ]
    assert measures[0].tolist() == measures[1].tolist()
    assert measures[0][1] > 1


@pytest.mark.parametrize("side", ["shaft", "housing"])
def test_many_rows_are_told_what_each_is_told_alone(side, monkeypatch):
    """Rows that ask the same are counted once; none may take over what another one is told."""
    rng = np.random.default_rng(3)
    words = {
        "bearing_type": ["deep groove ball", "angular contact ball", "cylindrical roller", "tapered roller", None],
        "tolerance_class": ["Normal", "P6", "P5", "P4", None], "axial_role": ["locating", "floating", None],
        "rotating_ring": ["inner", "outer", None], "load_direction": ["stationary", "rotating", "indeterminate"],
        "free_ring": ["inner", "outer", None], "housing_material": ["steel", "aluminium", None],
        "radial_load": [None, 30.0, 600.0, 3000.0], "bore_diameter": [None, 3.0, 10.0, 25.0, 25.001, 3200.0],
    }  # fmt: skip
    rows = [
        {"machine": f"M{k}", "outside_diameter": float(rng.choice([19.0, 52.0, 120.0, 500.0])), "axial_load": 0.0,
         "preload_method": "none", "dynamic_rating": 9000.0, "static_rating": 6000.0}
        | {name: value for name, choices in words.items() if (value := choices[rng.integers(len(choices))]) is not None}
        for k in range(150)
    ]  # fmt: skip
    limits = Limits(BOOK.clauses[f"fit.{side}-class"])
    together = recommended(view(*rows), limits, side)
    monkeypatch.setattr(seat_tables, "_FEW", len(rows))
    apart = recommended(view(*rows), limits, side)
    for name in ("lower", "upper", "first_lower", "first_upper", "fit_smallest", "fit_largest"):
        assert np.array_equal(getattr(together, name), getattr(apart, name), equal_nan=True), name
    for row in range(len(rows)):
        assert (together.first[row], together.accepted[row]) == (apart.first[row], apart.accepted[row])
        assert together.votes(row) == apart.votes(row)
    assert len({together.accepted[row] for row in range(len(rows))}) > 10
