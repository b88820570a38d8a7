"""Verdicts on fits that handbooks and makers' examples state, through the rulebook."""

import pytest
from attrs import evolve

from linter.model.stations import stations_from_rows
from linter.review.assess import assess
from linter.review.records import assessments
from linter.rulebook.load import load

BOOK = load("2026.1")
BALL = {"bearing_type": "deep groove ball", "tolerance_class": "Normal", "rotating_ring": "inner"}
FIXED = {**BALL, "load_direction": "stationary"}
N6310 = {
    **FIXED,
    "bore_diameter": 50.0,
    "outside_diameter": 110.0,
    "ring_width": 27.0,
    "shaft_material": "steel",
    "housing_material": "steel",
    "shaft_seat_roughness": 0.8,
    "housing_seat_diameter": [110.0, "H7"],
    "speed_max": 10.0,
}


def verdict(clause, *rows):
    stations = stations_from_rows(list(rows))
    assessed = assess(stations, evolve(BOOK, clauses={clause: BOOK.clauses[clause]}))
    found = assessments(assessed)[0]
    assert found.outcome in ("met", "finding"), found.message
    return found, {line.key: line.value for line in found.working}


def test_75_j5_may_be_loose():
    """NKE General Catalogue 2011 p. 298: 75 j5 with a Normal bore, 21 um tight to 7 um loose."""
    found, w = verdict(
        "fit.load-rotation",
        {**FIXED, "bore_diameter": 75.0, "outside_diameter": 130.0, "shaft_seat_diameter": [75.0, "j5"],
         "housing_seat_diameter": [130.0, "H7"]},
    )  # fmt: skip
    assert (w["inner_smallest"], w["inner_largest"]) == (-7, 21)
    assert found.severity == "remark"


def test_40_k5_holds():
    """SKF shaft tolerances and resultant fits, 30 to 50 mm: 40 k5, 2 to 25 um."""
    found, w = verdict(
        "fit.load-rotation",
        {**FIXED, "bore_diameter": 40.0, "outside_diameter": 80.0, "shaft_seat_diameter": [40.0, "k5"],
         "housing_seat_diameter": [80.0, "H7"]},
    )  # fmt: skip
    assert (w["inner_smallest"], w["inner_largest"]) == (2, 25)
    assert found.outcome == "met"


@pytest.mark.parametrize(("seat", "hole", "variant"), [("m6", 32.0, "met"), ("m6", 0.0, "finding")])
def test_hollow_shaft_40_takes_m6(seat, hole, variant):
    """SKF hollow shafts page: 6208 on 40/32 mm goes from k5 to m6; the same m6 is tight on a solid shaft."""
    found, _ = verdict(
        "fit.shaft-class",
        {**FIXED, "bore_diameter": 40.0, "outside_diameter": 80.0, "shaft_bore": hole,
         "shaft_seat_diameter": [40.0, seat]},
    )  # fmt: skip
    assert found.outcome == variant


def test_miniature_bearing_loses_its_play():
    """NHBB recommended fits: play 5.08 um, interference 7.62 um, 80 % of it lost: -1.02 um left."""
    found, w = verdict(
        "fit.miniature-play",
        {"bore_diameter": 6.35, "outside_diameter": 15.875, "tolerance_class": "P5", "radial_clearance": 5.08,
         "shaft_seat_diameter": [6.35, 0.00262, 0.00262], "housing_seat_diameter": [15.875, 0.0, 0.005]},
    )  # fmt: skip
    assert w["play_left"] == pytest.approx(-1.016)
    assert found.outcome == "finding"


def test_outer_ring_42_in_hub_n7():
    """Examination question: 42 N7 with a Normal outer ring, 3 um loose to 33 um tight."""
    found, w = verdict(
        "fit.load-rotation",
        {**FIXED, "rotating_ring": "outer", "bore_diameter": 20.0, "outside_diameter": 42.0,
         "shaft_seat_diameter": [20.0, "h6"], "housing_seat_diameter": [42.0, "N7"]},
    )  # fmt: skip
    assert (w["outer_smallest"], w["outer_largest"]) == (-3, 33)
    assert found.severity == "remark"


def test_6310_outer_ring_in_h6_end_shield():
    """EASA AR100-2020 Table 2-13 and SKF: 110 H6 gives 0 to 37 um of clearance; the class of motors."""
    found, w = verdict("fit.housing-class", {**N6310, "housing_seat_diameter": [110.0, "H6"]})
    assert (w["fit_smallest"], w["fit_largest"]) == (-37, 0)
    assert found.outcome == "met"


@pytest.mark.parametrize(
    ("seat", "share"), [("k5", (0.35, 0.5)), ("m5", (0.0, 0.2))]
)  # the mean of k5 covers 5000 N and 40 K, its low end does not; m5 covers it on the probable band
def test_interference_needed_by_6310(seat, share):
    """NSK eq 9.1, 9.4, 9.5 and NTN eq 7.1, 7.3: 7.70 um by load, 3.00 um by heat (rounded by hand)."""
    found, w = verdict(
        "fit.inner-hold",
        {**N6310, "radial_load": 5000.0, "operating_temperature": 60.0, "shaft_seat_diameter": [50.0, seat]},
    )
    assert w["load_loss"] == pytest.approx(7.70, abs=0.005)
    assert w["heat_loss"] == pytest.approx(3.00, abs=0.001)
    assert w["smoothing"] == pytest.approx(50 / 52)
    loose = -w["fit_in_use_smallest"] / (w["fit_in_use_largest"] - w["fit_in_use_smallest"])
    assert share[0] < loose < share[1]
    assert w["fit_in_use_mean"] > 0
    assert found.severity == ("minor" if seat == "k5" else "remark")


@pytest.mark.parametrize(("seat", "pressure", "hoop"), [("k5", 20.5, 79.5), ("m6", 30.3, 117.7)])
def test_hoop_stress_of_6310(seat, pressure, hoop):
    """NTN Table 17.4.1 with E 208 GPa on both sides; here the shaft has 210 GPa, hence 0.5 %."""
    found, w = verdict("fit.inner-stress", {**N6310, "shaft_seat_diameter": [50.0, seat]})
    assert w["pressure"] == pytest.approx(pressure, rel=0.006)
    assert w["at_rest"] == pytest.approx(hoop, rel=0.005)
    assert found.outcome == "met"


@pytest.mark.parametrize(
    ("group", "mean", "tightest", "severity"), [("CN", -2.1, -19.5, "minor"), ("C3", 10.4, -7.5, "remark")]
)
def test_clearance_left_in_6310(group, mean, tightest, severity):
    """NSK eq 9.6: k5, H7, inner ring 5 K hotter; CN is used up on average, C3 is not.

    NSK Table 9.2 prints k5 with group CN and asks for more only from tighter classes on: minor, not major.
    """
    found, w = verdict(
        "fit.running-clearance",
        {**N6310, "clearance_class": group, "shaft_seat_diameter": [50.0, "k5"], "shaft_temperature": 25.0,
         "housing_temperature": 20.0},
    )  # fmt: skip
    assert w["clearance_running_mean"] == pytest.approx(mean, abs=0.2)
    assert w["clearance_running_min"] == pytest.approx(tightest, abs=0.2)
    assert w["loss_temperature"] == pytest.approx(6.1, abs=0.05)
    assert found.severity == severity


def test_80_n7_lets_go_in_warm_aluminium():
    """Expansion of 6061 against bearing steel: 40 K cost 35.5 um at 23.6e-6/K; here 33.6 um at 23.0e-6/K."""
    found, w = verdict(
        "fit.outer-hold",
        {**FIXED, "rotating_ring": "outer", "outside_diameter": 80.0, "housing_material": "aluminium",
         "housing_seat_diameter": [80.0, "N7"], "temperature_max": 60.0},
    )  # fmt: skip
    assert (w["fit_smallest"], w["fit_largest"]) == (-4, 39)
    assert w["change"] == pytest.approx(-33.6)
    assert found.severity == "critical"


@pytest.mark.parametrize(
    ("grade", "speed", "ratio", "inner"),
    [
        (2.5, 10_000, 0.27, "rotating"),
        (6.3, 3000, 0.20, "rotating"),
        (1.0, 60_000, 0.64, "indeterminate"),
        (0.4, 100_000, 0.43, "rotating"),
        (2.5, 37_400, 1.0, "indeterminate"),
        (6.3, 14_900, 1.0, "indeterminate"),
        (2.5, 110_000, 2.94, "stationary"),
    ],
)
def test_unbalance_against_weight(grade, speed, ratio, inner):
    """ISO 21940-11: unbalance over weight is G Omega/g."""
    rows = [
        {**BALL, "station": n, "shaft_orientation": "horizontal", "balance_grade": grade, "speed_max": float(speed),
         "bore_diameter": 8.0, "outside_diameter": 22.0, "shaft_seat_diameter": [8.0, "js5"],
         "housing_seat_diameter": [22.0, "J6"]}
        for n in "AB"
    ]  # fmt: skip
    _, w = verdict("fit.load-rotation", *rows)
    assert w["ratio"] == pytest.approx(ratio, abs=0.006)
    assert w["inner_sees"] == inner
