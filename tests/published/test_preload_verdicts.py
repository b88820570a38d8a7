"""Worked figures of preload, life and rotor, and the verdicts that the rulebook draws from them.

Inputs and formulas are published, each source with its test; the arithmetic is derived. Ratings of 608 and 6203 are
makers' tables, from memory.
"""

import numpy as np
import pytest

from linter.checks.shared import contacts, preload_band
from linter.checks.shared.base import View
from linter.checks.shared.preload_criteria import minima
from linter.model.stations import stations_from_rows
from linter.review.assess import assess
from linter.review.records import assessments
from linter.rulebook.load import load
from linter.rulebook.model import Limits

B608 = {
    "bearing_type": "deep groove ball", "bore_diameter": 8, "outside_diameter": 22, "ring_width": 7, "ball_count": 7,
    "ball_diameter": 3.969, "pitch_diameter": 15, "inner_groove_ratio": 0.52, "outer_groove_ratio": 0.53,
    "radial_clearance": [10, 0, 0], "dynamic_rating": 3300, "static_rating": 1370, "ball_material": "steel",
    "speed_max": 40000,
}  # fmt: skip
B6203 = {
    "bearing_type": "deep groove ball", "bore_diameter": 17, "outside_diameter": 40, "ring_width": 12,
    "dynamic_rating": 9550, "static_rating": 4800, "speed_max": 12000,
}  # fmt: skip
COIL = {
    "preload_method": "spring", "spring_rate": 1.043, "spring_free_length": 14, "spring_solid_length": 4.8,
    "spring_installed_length": 8, "spring_load_tolerance": 10, "spacer_stack": "+28±0.05 -14±0.06 -5±0.05 -1±0.03",
}  # fmt: skip


def record(clause, *rows):
    """Record of one clause at the first station."""
    return next(a for a in assessments(assess(stations_from_rows(list(rows)), load("2026.1"))) if a.clause == clause)


def figures(found):
    return {line.key: line.value for line in found.working}


def limits_of(clause):
    return Limits(load("2026.1").clauses[clause])


def test_spring_window_over_the_chain_passes():
    """Commercial load tolerance of 10 %; chain of four parts, 5.45 to 7.10 N worst case, 5.54 to 7.00 N likely."""
    found = record("preload.force", {**COIL, "preload_force": [6.25, -1.25, 1.25]})
    value = figures(found)
    assert value["force_nominal"] == pytest.approx(6.26, abs=0.005)
    assert (value["force_smallest"], value["force_largest"]) == pytest.approx((5.45, 7.10), abs=0.005)
    assert (value["likely_smallest"], value["likely_largest"]) == pytest.approx((5.54, 7.00), abs=0.006)
    assert value["half"] == pytest.approx(0.097, abs=0.001)
    assert found.outcome == "met"
    travel = record("preload.spring-travel", COIL)
    assert figures(travel)["shortest"] - 4.8 == pytest.approx(3.0, abs=0.02)
    assert travel.outcome == "met"


@pytest.mark.parametrize(("force", "mean"), [(10, 507), (20, 631), (40, 781), (80, 961), (160, 1175)])
def test_contact_stress_of_a_608(force, mean):
    """Exact Hertz at the inner race (ISO 76 definition reproduced); the ladder 800/1000/1500 MPa decides.

    The figures rest on a modulus of 207 GPa; the materials table has 208 GPa (NTN), and pressure goes with E^(2/3).
    The rest, below 0.2 %, is the angle: the softer exact contact opens it further than the catalogue constant does.
    """
    found = record("preload.maximum", {**B608, "preload_method": "rigid", "preload_force": [force, 0, 0]})
    assert figures(found)["stress"] == pytest.approx(mean * (208 / 207) ** (2 / 3), rel=0.002)
    assert figures(found)["free_angle"] == pytest.approx(12.89, abs=0.005)
    assert found.severity == ("minor" if mean > 1000 else "remark" if mean > 800 else None)


@pytest.mark.parametrize(("force", "mean"), [(85, 702), (170, 884), (340, 1114)])
def test_contact_stress_of_a_6203_from_its_static_rating(force, mean):
    """2/3 · 4200 (F/(5 C_0 sin α))^(1/3) at 13 degrees."""
    row = {"bearing_type": "angular contact ball", "contact_angle": 13, "static_rating": 4800, "ball_material": "steel",
           "preload_method": "rigid", "preload_force": [force, 0, 0]}  # fmt: skip
    found = record("preload.maximum", row)
    assert figures(found)["stress"] == pytest.approx(mean, abs=0.5)
    assert found.severity == ("minor" if mean > 1000 else "remark" if mean > 800 else None)


def test_preload_by_stress_as_a_share_of_the_static_rating():
    """0.117, 0.228 and 0.769 of C_0 sin α at 800, 1000 and 1500 MPa (derived from ISO 76)."""
    row = {"bearing_type": "angular contact ball", "contact_angle": 15, "static_rating": 1000, "ball_material": "steel"}
    view = View(stations_from_rows([row]))
    share = [contacts.force_at_stress(view, p)[0] / 1000 / np.sin(np.deg2rad(15)) for p in (800, 1000, 1500)]
    assert share == pytest.approx([0.117, 0.228, 0.769], abs=5e-4)


@pytest.mark.parametrize(("bearing", "rating", "bore"), [(B608, 33.0, 40.0), (B6203, 95.5, 85.0)], ids=["608", "6203"])
def test_least_load_and_spring_force_by_bore(bearing, rating, bore):
    """0.01 C (SKF, requisite minimum load) and 5 N per mm of bore (SKF, preloading with springs)."""
    view = View(stations_from_rows([{**bearing, "preload_method": "spring", "preload_force": 100}]))
    criteria = minima(view, limits_of("preload.minimum"))
    assert criteria.firm["min_rating"][2][0] == pytest.approx(rating)
    assert criteria.advice["min_bore"][2][0] == pytest.approx(bore)


def test_least_load_of_a_6203_by_speed_and_viscosity():
    """SKF 2018 p. 254 with k_r 0.025 (memory): 44.3 N at 8.5 mm2/s; 0.01 C governs with 95.5 N."""
    oil = {"base_oil_viscosity_40": 32, "base_oil_viscosity_100": 5.4, "operating_temperature": 80}
    row = {**B6203, **oil, "preload_method": "spring", "preload_force": [90, -4, 4]}
    found = record("preload.minimum", row)
    assert figures(found)["min_formula"] == pytest.approx(44.4, abs=0.15)
    assert found.lower.value == pytest.approx(95.5)
    assert found.severity == "minor"


@pytest.mark.parametrize(
    ("balls", "friction", "met"),
    [
        ("steel", 0.02, []),
        ("steel", 0.05, [100]),
        ("silicon nitride", 0.02, [100]),
        ("silicon nitride", 0.05, [50, 100]),
    ],
)
def test_gyroscopic_minimum_of_a_spindle_bearing(balls, friction, met):
    """7000C size at 60 000 r/min against Koyo's preload classes 6, 20, 50 and 100 N (memory of Palmgren's friction).

    The density of the balls is that of the materials table, so the force agrees within 1 %.
    """
    row = {"bearing_type": "angular contact ball", "contact_angle": 15, "ball_count": 9, "ball_diameter": 4.7625,
           "pitch_diameter": 18, "ball_material": balls, "speed_max": 60000, "rotating_ring": "inner"}  # fmt: skip
    view = View(stations_from_rows([row]))
    clause = load("2026.1").clauses["preload.minimum"]
    limits = Limits(clause)
    at_high = minima(view, limits).advice["min_gyroscopic"][2][0]
    force = at_high * limits["friction_high"] / friction
    expected = {("steel", 0.02): 164, ("steel", 0.05): 66, ("silicon nitride", 0.02): 68, ("silicon nitride", 0.05): 27}
    assert force == pytest.approx(expected[balls, friction], rel=0.015)
    assert [f for f in (6, 20, 50, 100) if f >= force] == met


def test_steel_balls_close_the_window_only_as_advice():
    """Gyroscopic slip exceeds the contact stress of general use: advice, no stop."""
    row = {"bearing_type": "angular contact ball", "contact_angle": 15, "ball_count": 9, "ball_diameter": 4.7625,
           "pitch_diameter": 18, "bore_diameter": 10, "outside_diameter": 26, "ball_material": "steel",
           "dynamic_rating": 5300, "preload_method": "rigid", "preload_force": 50,
           "rotating_ring": "inner"}  # fmt: skip
    assert record("preload.window", {**row, "speed_max": 60000}).outcome == "met"
    fast = record("preload.window", {**row, "speed_max": 120000})
    assert fast.severity == "remark"
    assert "gyroscopic slip" in fast.message
    assert "contact stress in general use" in fast.message


def test_rigid_and_spring_preload_in_a_warm_aluminium_housing():
    """Span 60 mm, rise 60 K: a spring changes by less than 1 %, a rigid 608 pair by several times its 40 N."""
    warm = {"bearing_span": 60, "shaft_material": "steel", "housing_material": "aluminium", "shaft_temperature": 80,
            "housing_temperature": 80}  # fmt: skip
    spring = record("preload.thermal", {**B608, **COIL, **warm})
    assert spring.outcome == "met"
    assert spring.observed.value < 1.0
    rigid = {**B608, **warm, "preload_method": "rigid", "preload_force": 40}
    found = record("preload.thermal", rigid, rigid)
    assert found.severity in ("major", "critical")
    assert found.observed.value > 400


def test_lift_off_of_a_rigid_pair_is_about_2_8_times_its_preload():
    """2.83 for equal bearings whose angle holds; the opening angle of a real pair takes it higher."""
    row = {**B608, "preload_method": "rigid", "preload_force": 40, "axial_load": 30}
    lift = figures(record("preload.unload", row, row))["lift_off"]
    assert 2.83 * 40 < lift < 2.83 * 40 * 2.0
    steep = {**row, "bearing_type": "angular contact ball", "contact_angle": 40}
    assert figures(record("preload.unload", steep, steep))["lift_off"] == pytest.approx(2.83 * 40, rel=0.02)


@pytest.mark.parametrize(
    ("force", "load", "hours"), [(0, 200, 151_200), (85, 298, 45_500), (170, 434, 14_800), (340, 655, 4300)]
)
def test_life_of_a_6203_with_preload(force, load, hours):
    """ISO 281 with X and Y from memory; the factor f_0 of the bearing's own geometry moves P by less than 0.5 %."""
    method = {"preload_method": "none"} if force == 0 else {"preload_method": "spring", "preload_force": [force, 0, 0]}
    found = record("life.rating", {**B6203, **method, "radial_load": 200, "axial_load": 0, "required_life": 10_000})
    assert figures(found)["load"] == pytest.approx(load, rel=0.005)
    assert found.observed.value == pytest.approx(hours, rel=0.015)
    assert found.severity == ("major" if hours < 10_000 else None)


def test_viscosity_ratio_of_a_6203():
    """ASTM D341 worksheet, ISO 281 reference viscosity: 1.11 at 12 000 r/min, 0.176 at 500 r/min."""
    oil = {"base_oil_viscosity_40": 32, "base_oil_viscosity_100": 5.4, "operating_temperature": 80}
    fast = record("life.film", {**B6203, **oil})
    slow = record("life.film", {**B6203, **oil, "speed_operating": 500})
    assert (fast.observed.value, slow.observed.value) == pytest.approx((1.11, 0.176), abs=0.005)
    assert (fast.outcome, slow.severity) == ("met", "major")


@pytest.mark.parametrize(
    ("temperature", "by_limit", "by_factor"), [(70, 3530, 3600), (85, 1990, 2160), (100, 1130, 1290)]
)
def test_grease_life_of_a_6203(temperature, by_limit, by_factor):
    """NSK and JTEKT formulas (coefficients from memory) agree within 15 %."""
    row = {**B6203, "limiting_speed": 17000, "operating_temperature": temperature, "lubrication": "grease",
           "required_life": 1500}  # fmt: skip
    found = record("life.grease", row)
    value = figures(found)
    assert (value["by_limit"], value["by_factor"]) == pytest.approx((by_limit, by_factor), rel=0.005)
    assert found.severity == {70: None, 85: None, 100: "minor"}[temperature]


@pytest.mark.parametrize(("grade", "force"), [(2.5, 2.36), (6.3, 5.94), (1.0, 0.94)])
def test_unbalance_force(grade, force):
    """ISO 21940-11: 0.15 kg at 60 000 r/min; half of it on each of two bearings."""
    row = {**B608, "speed_max": 60000, "rotor_mass": 0.15, "balance_grade": grade, "preload_method": "spring",
           "preload_force": [5, 0, 0]}  # fmt: skip
    found = record("rotor.unbalance", row, row)
    assert 2 * found.observed.value == pytest.approx(force, abs=0.005)
    assert figures(found)["residual"] == pytest.approx(0.0597 * grade / 2.5, rel=0.001)
    assert found.severity == ("remark" if force / 2 > 0.5 * 5 else None)


def test_pair_constants_agree_with_the_table_of_a_608():
    """8.09 N/um of one bearing at 40 N with the catalogue constant; exact Hertz is 5 % softer."""
    row = {**B608, "preload_method": "rigid", "preload_force": 40}
    view = View(stations_from_rows([row, row]))
    state = contacts.under_load(view, preload_band.station_band(view).nominal)
    assert state.stiffness / 1000 == pytest.approx([8.09] * 2, rel=0.06)
