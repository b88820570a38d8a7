"""What follows from a described rotor: criticals, loads of the bearings, slope, and what stands in for radial_load."""

import numpy as np
import pytest

from linter.checks.shared.base import View
from linter.checks.shared.line_loads import line_loads
from linter.checks.shared.shaft_line import bearing_stiffness, shaft_line
from linter.mechanics.balance import STANDARD_GRAVITY
from linter.mechanics.shaft import loaded_shaft, shaft
from linter.model.stations import stations_from_rows
from linter.review.assess import assess
from linter.review.defaults import with_defaults
from linter.review.records import assessments
from linter.rulebook.load import load

ROTOR = {
    "shaft_sections": "12 x 8 + 60 x 12/4 + 18 x 8", "first_bearing_position": 8, "bearing_span": 72,
    "rotor_discs": "wheel 40 g @ -3 (8 x 40/8) + magnet 60 g @ 42 (30 x 24/12)", "shaft_material": "steel",
    "shaft_orientation": "horizontal",
}  # fmt: skip
BALLS = {
    "bearing_type": "angular contact ball", "contact_angle": 15, "bore_diameter": 8, "outside_diameter": 22,
    "ring_width": 7, "ball_count": 9, "ball_diameter": 3.969, "pitch_diameter": 15, "ball_material": "steel",
    "preload_method": "spring", "preload_force": 20,
}  # fmt: skip


def stations(**more):
    return stations_from_rows([{"machine": "m", "station": name, **ROTOR, **more} for name in "AB"])


def of(clause, table):
    return [a for a in assessments(assess(table, load("current"))) if a.clause == clause]


def test_the_bearings_carry_weight_and_forces_in_balance():
    found = line_loads(View(stations(shaft_forces="belt 40 N @ 86")))
    mass = shaft_line(View(stations())).mass[0]
    assert found.weight.sum() == pytest.approx(mass * STANDARD_GRAVITY)
    assert found.forces == pytest.approx([40 * 6 / 72, 40 * 78 / 72])  # magnitudes: the belt lifts the far bearing
    vertical = line_loads(View(stations(shaft_orientation="vertical", shaft_forces="none")))
    assert vertical.weight == pytest.approx([0, 0])
    assert np.isnan(line_loads(View(stations(shaft_orientation=None))).weight).all()


def test_more_mass_than_is_described_weighs_too():
    view = View(stations(rotor_mass=1.0, shaft_forces="none", residual_unbalance=2.0, speed_max=30000))
    found = line_loads(view)
    assert found.weight.sum() == pytest.approx(STANDARD_GRAVITY)
    assert found.unbalance.sum() == pytest.approx(2e-6 * (30000 * np.pi / 30) ** 2)


def test_slope_is_that_of_the_real_shaft():
    table = stations(shaft_sections="90 x 8", rotor_discs="0.001 g @ 40", shaft_orientation="vertical",
                     shaft_forces="10 N @ 44 + 5 N @ 95")  # fmt: skip
    found = line_loads(View(table)).slope
    one = shaft([95], 8, 8, 80, 210000, shear_modulus=210000 / 2.6)
    mid, end = (loaded_shaft(one, [place], [force]) for place, force in ((44, 10), (95, 5)))
    assert found[0] == pytest.approx(abs(mid.slope_a) + abs(end.slope_a), rel=1e-9)
    assert found[1] == pytest.approx(abs(mid.slope_b) + abs(end.slope_b), rel=1e-9)
    inertia = np.pi * 8**4 / 64
    assert abs(mid.slope_a) == pytest.approx(10 * 72**2 / (16 * 210000 * inertia), rel=1e-9)


def test_stiffness_follows_from_preload_and_contact():
    view = View(stations(**BALLS))
    found = bearing_stiffness(view)
    assert found.computed.all()
    # Palmgren: delta_a = 0.00044/sin(a) (Q²/D_w)^(1/3), k_a = 1.5 F_a/delta_a, k_r = k_a cos² a/(2 sin² a) (from
    # memory); it holds the contact angle, which opens under load and takes stiffness from the radial direction
    sine = np.sin(np.deg2rad(15))
    ball = 20 / (9 * sine)
    axial = 1.5 * 20 / (0.00044 / sine * (ball**2 / 3.969) ** (1 / 3))
    assert found.least == pytest.approx(axial * (1 - sine**2) / (2 * sine**2), rel=0.15)
    assert bearing_stiffness(View(stations(**BALLS, radial_stiffness=12345))).least == pytest.approx(12345)
    more = bearing_stiffness(View(stations(**{**BALLS, "preload_force": [20, -5, 5]})))
    assert (more.least < found.least).all() and (more.largest > found.largest).all()


def test_what_is_computed_stands_in_for_the_load_only_where_the_forces_are_stated():
    book = load("current")
    derived = with_defaults(stations(shaft_forces="belt 40 N @ 86"), book)
    assert derived.number("radial_load") == pytest.approx(
        np.add(*[line_loads(View(derived)).weight, [10 / 3, 130 / 3]])
    )
    assert "rotor.bearing-loads" in derived.assumed["radial_load"].reason
    assert derived.assumed["radial_load"].rows.all()
    assert not with_defaults(stations(), book).known("radial_load").any()
    stated = with_defaults(stations(shaft_forces="none", radial_load=7), book)
    assert (stated.number("radial_load") == 7).all() and "radial_load" not in stated.assumed
    released = with_defaults(stations(shaft_forces="none"), load("2026.4"))
    assert not released.known("radial_load").any()
    (first, _) = of("rotor.bearing-loads", derived)
    assert first.outcome == "met" and "stands in" in first.message
    assert "radial_load" in {entry.parameter for entry in first.assumed}


def test_a_released_rulebook_takes_the_stated_critical_speed_only():
    table = stations(speed_max=60000, radial_stiffness=20000)
    (found,) = [a for a in assessments(assess(table, load("2026.4"))) if a.clause == "rotor.critical-speed"]
    assert (found.outcome, found.missing) == ("not assessed", ("first_critical_speed",))


@pytest.mark.parametrize(
    ("more", "missing", "said"),
    [
        ({"first_bearing_position": None}, {"first_bearing_position"}, ""),
        ({"bearing_span": None}, {"bearing_span"}, ""),
        ({"bearing_span": 100}, {"shaft_sections"}, "do not both lie on the shaft of 90 mm"),
        ({"rotor_discs": "wheel"}, {"rotor_discs"}, "rotor_discs cannot be read: position 1"),
        ({"rotor_discs": None}, {"rotor_discs"}, ""),
        ({"rotating_ring": "outer"}, {"first_critical_speed"}, "the shaft stands still"),
        ({"radial_stiffness": None}, {"radial_stiffness"}, ""),
    ],
)
def test_what_is_wanted(more, missing, said):
    (found,) = of("rotor.critical-speed", stations(**{"speed_max": 60000, "radial_stiffness": 20000, **more}))
    assert found.outcome == "not assessed"
    assert set(found.missing) == missing
    assert said in found.message


def test_stiffness_from_the_preload_never_closes_the_gate_as_critical():
    for speed in np.linspace(20000, 300000, 29):
        (found,) = of("rotor.critical-speed", stations(speed_max=speed, **BALLS))
        assert found.severity != "critical"
        assert "radial_stiffness" in {entry.parameter for entry in found.assumed}
