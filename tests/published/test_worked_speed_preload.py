"""Worked figures of speed, preload and lubrication: published inputs and formulas, arithmetic derived.

Sources stand with each test; internal geometry and ratings of the sizes used are from memory of makers' tables.
"""

import numpy as np
import pytest

from linter.mechanics import ball_bearing as bb
from linter.mechanics import hertz, kinematics, lubricant, rating_life, speed_rating, static_rating


def test_viscosity_and_ratio():
    """ASTM D341 worksheet; ISO 281 reference viscosity (memory); 6203 at 12 000 r/min."""
    nu = lubricant.viscosity_at(80, 32, 40, 5.4, 100)
    assert nu == pytest.approx(8.53, abs=0.005)
    assert lubricant.reference_viscosity([12_000, 500], 28.5) == pytest.approx([7.695, 48.5], rel=1e-3)
    assert lubricant.viscosity_ratio(nu, [12_000, 500], 28.5) == pytest.approx([1.11, 0.176], abs=0.005)
    joint = lubricant.reference_viscosity([999.9999999, 1000.0], 28.5)
    assert joint == pytest.approx([27.28, 26.66], abs=0.006)
    assert lubricant.reference_viscosity(500, 380) == pytest.approx(13.3, abs=0.05)


def test_ball_kinematics():
    """6205 at 25 Hz, standard formulas: cage, outer pass, inner pass, ball spin in Hz."""
    s = kinematics.speeds(25 * 60, 9, 7.94, 38.5)
    figures = np.array([s.cage, s.outer_pass, s.inner_pass, s.ball_spin]) / 60
    assert figures == pytest.approx([9.922, 89.30, 135.70, 58.03], rel=1e-4)


def test_centrifugal_force_and_gyroscopic_moment():
    """Harris formulas (memory), ball 3.969 mm at 40 000 r/min, steel and silicon nitride."""
    rho = np.array([7800, 3230])
    s = kinematics.speeds(40_000, 7, 3.969, 15, 15)
    assert kinematics.diameter_ratio(3.969, 15, 15) == pytest.approx(0.25558, abs=1e-5)
    assert (s.cage, s.ball_spin) == (pytest.approx(14_888, abs=1), pytest.approx(70_648, abs=1))
    assert 1000 * kinematics.ball_mass(3.969, rho) == pytest.approx([0.2554, 0.1057], abs=1e-4)
    assert kinematics.centrifugal_force(3.969, 15, s.cage, rho) == pytest.approx([4.66, 1.93], abs=0.005)
    moment = kinematics.gyroscopic_moment(3.969, s.ball_spin, s.cage, 15, rho)
    assert moment == pytest.approx([1.20, 0.50], abs=0.005)


def test_gyroscopic_minimum_preload():
    """Derived with Palmgren's friction limits; 7000C size at 60 000 r/min, steel and silicon nitride."""
    rho = np.array([7800, 3230])
    s = kinematics.speeds(60_000, 9, 4.7625, 18, 15)
    assert s.cage == pytest.approx(22_333, abs=1)
    assert kinematics.centrifugal_force(4.7625, 18, s.cage, rho) == pytest.approx([21.7, 8.99], abs=0.05)
    moment = kinematics.gyroscopic_moment(4.7625, s.ball_spin, s.cage, 15, rho)
    assert moment == pytest.approx([6.72, 2.78], abs=0.01)
    preload = kinematics.preload_against_gyroscopic_slip(moment, 9, 4.7625, 15, np.array([[0.02], [0.05]]))
    assert preload == pytest.approx(np.array([[164, 68], [66, 27]]), abs=0.6)
    ball_load = preload[0] / (9 * np.sin(np.deg2rad(15)))
    assert ball_load == pytest.approx([70.6, 29.2], abs=0.1)
    assert kinematics.gyroscopic_slip_ratio(moment, ball_load, 4.7625, 0.02) == pytest.approx(1.0)


def test_contact_angle_and_axial_play():
    """608 with grooves 0.52 and 0.53: Ball-bearing geometry cos α0 = 1 − G_r/(2A)."""
    a = bb.groove_distance(3.969, 0.52, 0.53)
    clearance = np.array([0.005, 0.010, 0.013])
    alpha = bb.free_contact_angle(clearance, a)
    assert a == pytest.approx(0.19845)
    assert alpha == pytest.approx([9.10, 12.89, 14.70], abs=0.005)
    assert bb.free_endplay(alpha, a) / clearance == pytest.approx([12.6, 8.85, 7.7], abs=0.08)


AXIAL = np.array([
    # F_a, α, δ um, k N/um, Q, peak, mean, peak by catalogue estimate
    [10, 13.98, 3.91, 4.2, 5.9, 761, 507, 765],
    [20, 14.55, 5.93, 5.7, 11.4, 946, 631, 951],
    [40, 15.35, 8.83, 8.1, 21.6, 1171, 781, 1178],
    [80, 16.46, 12.90, 11.7, 40.3, 1441, 961, 1451],
    [160, 17.96, 18.43, 17.4, 74.1, 1763, 1175, 1777],
])  # fmt: skip


def test_axial_load_of_a_608():
    """608, Z = 7, catalogue constant 0.00044 (NSK technical pages); pressure by exact Hertz, estimate after ISO 76."""
    a = bb.groove_distance(3.969, 0.52, 0.53)
    bearing = bb.AxialBearing(7, a, bb.free_contact_angle(0.010, a), bb.catalogue_stiffness_constant(3.969))
    load, angle, deflection, stiffness, ball_load, peak, mean, estimate = AXIAL.T
    state = bb.axial_load(load, bearing)
    assert state.contact_angle == pytest.approx(angle, abs=0.006)
    assert 1000 * state.deflection == pytest.approx(deflection, abs=0.006)
    assert state.stiffness / 1000 == pytest.approx(stiffness, abs=0.06)
    assert state.ball_load == pytest.approx(ball_load, abs=0.06)
    fixed_angle = (state.ball_load / bearing.stiffness_constant) ** (2 / 3) / np.sin(np.deg2rad(state.contact_angle))
    assert 1000 * fixed_angle[2] == pytest.approx(8.14, abs=0.006)
    e_prime = hertz.effective_modulus(207_000.0, 0.3, 207_000.0, 0.3)
    inner = hertz.race_curvatures(3.969, 15, state.contact_angle, 0.52, "inner")
    contact = hertz.point_contact(state.ball_load, *inner, e_prime)
    assert contact.peak_pressure == pytest.approx(peak, rel=0.001)
    assert contact.mean_pressure == pytest.approx(mean, rel=0.001)
    shortcut = static_rating.peak_pressure_estimate(load, 1370, state.contact_angle)
    assert shortcut == pytest.approx(estimate, rel=0.001)
    at_rating = hertz.point_contact(5 * 1370 / 7, *hertz.race_curvatures(3.969, 15, 0, 0.52, "inner"), e_prime)
    assert at_rating.peak_pressure == pytest.approx(4199, rel=0.0005)


def test_stress_of_a_spring_preload():
    """5, 10 and 20 N per mm of bore; 6203 at 13 deg by the catalogue estimate after ISO 76."""
    mean = static_rating.peak_pressure_estimate(np.array([85, 170, 340]), 4800, 13) * 2 / 3
    assert mean == pytest.approx([702, 884, 1114], abs=0.6)


def test_minimum_load_of_a_deep_groove_bearing():
    """SKF, deep groove ball bearings, minimum load; k_r = 0.025 (memory); 6203."""
    assert speed_rating.minimum_radial_load(0.025, 8.5, 12_000, 28.5) == pytest.approx(44.3, abs=0.05)


def test_life_with_preload():
    """6203, C = 9550, C_0 = 4800, f_0 = 13.1, 200 N, 12 000 r/min; X and Y of ISO 281 (memory)."""
    axial = np.array([0, 85, 170, 340])
    relative = 13.1 * axial / 4800
    factors = rating_life.load_factors(0, relative)
    assert relative[1:] == pytest.approx([0.232, 0.464, 0.928], abs=0.0005)
    assert factors.axial[1:] == pytest.approx([2.19, 1.89, 1.60], abs=0.006)
    p = rating_life.equivalent_load(200, axial, factors)
    assert p == pytest.approx([200, 298, 434, 655], abs=0.6)
    hours = rating_life.life_hours(rating_life.basic_life(9550, p), 12_000)
    assert hours == pytest.approx([151_200, 45_500, 14_800, 4300], rel=0.005)


def test_grease_life_of_a_sealed_bearing():
    """6203, NSK E1102 and JTEKT forms (coefficients memory)."""
    ratio, t = 12_000 / 17_000, [70, 85, 100]
    assert lubricant.grease_life_by_limit(ratio, t) == pytest.approx([3530, 1990, 1130], rel=0.005)
    wide = lubricant.grease_life_by_limit(ratio, [*t, 120], "wide range")
    assert wide == pytest.approx([14_700, 9160, 5690, 3020], rel=0.005)
    by_factor = lubricant.grease_life_by_speed_factor(28.5 * 12_000, 0.05, t)
    assert by_factor == pytest.approx([3600, 2160, 1290], rel=0.005)


def test_thermal_speed_rating():
    """ISO 15312 form (memory): 6203 and 608."""
    assert speed_rating.heat_flow(17, 40, 12) == pytest.approx(34.4, abs=0.05)
    assert speed_rating.thermal_reference_speed(17, 40, 12, 4800) == pytest.approx(18_100, abs=50)
    miniature = speed_rating.thermal_reference_speed(8, 22, 7, 1370, 1.7, 0.00015)
    assert miniature == pytest.approx(31_800, abs=50)
