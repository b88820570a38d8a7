import numpy as np
import pytest
from scipy.optimize import fsolve

from linter.mechanics import ball_bearing as bb
from linter.mechanics import hertz, kinematics

D, D_PW, ANGLE, F = 11.906, 90.0, 15.0, 0.52
E_PRIME = hertz.effective_modulus(208_000.0, 0.3, 208_000.0, 0.3)
K_I, K_O = (
    float(hertz.contact_constant(*hertz.race_curvatures(D, D_PW, ANGLE, F, race), E_PRIME))
    for race in ("inner", "outer")
)


def split(load, force, angle=ANGLE):
    return kinematics.split_contact_angles(load, force, 20, D, F, F, angle, K_I, K_O)


@pytest.mark.parametrize(("load", "force"), [(500.0, 30.0), (500.0, 200.0), (3000.0, 5.0), (50.0, 60.0)])
def test_split_angles_against_four_equations(load, force):
    """Force balance and geometry of the ball as four equations in α_i, α_o, δ_i, δ_o, solved by a general solver."""
    q, free = load / 20, (F - 0.5) * D
    distance = 2 * free * np.cos(np.deg2rad(ANGLE))

    def equations(x):
        a_i, a_o, d_i, d_o = x
        q_i, q_o = K_I * abs(d_i) ** 1.5, K_O * abs(d_o) ** 1.5
        return (
            q_i * np.sin(a_i) / q - 1,
            q_o * np.sin(a_o) / q - 1,
            (q_o * np.cos(a_o) - q_i * np.cos(a_i) - force) / q,
            ((free + d_i) * np.cos(a_i) + (free + d_o) * np.cos(a_o)) / distance - 1,
        )

    s = split(load, force)
    guess = (
        np.deg2rad(s.inner_angle) * 1.05,
        np.deg2rad(s.outer_angle) * 0.95,
        (s.inner_load / K_I) ** (2 / 3) * 1.1,
        (s.outer_load / K_O) ** (2 / 3) * 0.9,
    )
    a_i, a_o, d_i, d_o = fsolve(equations, guess, xtol=1e-13)
    assert (s.inner_angle, s.outer_angle) == pytest.approx((np.rad2deg(a_i), np.rad2deg(a_o)), rel=1e-8)
    assert s.inner_load == pytest.approx(K_I * d_i**1.5, rel=1e-7)
    assert s.outer_load == pytest.approx(K_O * d_o**1.5, rel=1e-7)
    axial = (free + d_i) * np.sin(a_i) + (free + d_o) * np.sin(a_o) - 2 * free * np.sin(np.deg2rad(ANGLE))
    assert s.axial_deflection == pytest.approx(axial, rel=1e-6, abs=1e-9)


def test_split_angles_at_rest_are_the_static_angle():
    load = np.geomspace(1, 2e4, 40)
    k_n = (K_I ** (-2 / 3) + K_O ** (-2 / 3)) ** -1.5
    static = bb.axial_load(load, bb.AxialBearing(20, bb.groove_distance(D, F, F), ANGLE, k_n))
    s = split(load, 0.0)
    assert s.inner_angle == pytest.approx(static.contact_angle, rel=1e-9)
    assert s.outer_angle == pytest.approx(static.contact_angle, rel=1e-9)
    assert s.axial_deflection == pytest.approx(static.deflection, rel=1e-7, abs=1e-12)
    assert split(load, 0.0, 0.0).inner_angle == pytest.approx(
        bb.axial_load(load, bb.AxialBearing(20, bb.groove_distance(D, F, F), 0.0, k_n)).contact_angle, rel=1e-7
    )


def test_speed_opens_the_angles_steadily():
    s = split(500.0, np.linspace(0.0, 400.0, 200))
    assert np.all(np.diff(s.inner_angle) > 0) and np.all(np.diff(s.outer_angle) < 0)
    assert np.all(np.diff(s.inner_load) < 0) and np.all(np.diff(s.outer_load) > 0)
    assert np.all(np.diff(s.axial_deflection) < 0)


def test_speeds_depend_on_the_difference_of_the_rings():
    inner = kinematics.speeds(3000.0, 9, 8.0, 40.0, 15.0)
    outer = kinematics.speeds(0.0, 9, 8.0, 40.0, 15.0, 3000.0)
    both = kinematics.speeds(3000.0, 9, 8.0, 40.0, 15.0, 3000.0)
    assert inner.cage + outer.cage == pytest.approx(3000.0)
    assert both.cage == pytest.approx(3000.0) and both.ball_spin == both.outer_pass == 0.0
    assert inner.outer_pass + inner.inner_pass == pytest.approx(9 * 3000)
    assert inner.ball_spin == outer.ball_spin


def test_rolling_without_slip_at_both_races():
    """Surface speeds of ball and ring agree at either contact."""
    gamma = kinematics.diameter_ratio(8.0, 40.0)
    s = kinematics.speeds(3000.0, 9, 8.0, 40.0)
    assert (3000.0 - s.cage) * (40.0 - 8.0) == pytest.approx(s.ball_spin * 8.0)
    assert s.cage * (40.0 + 8.0) == pytest.approx(s.ball_spin * 8.0)
    assert gamma == pytest.approx(0.2)


def test_forces_scale():
    n, rho, d = 7800.0, 3230.0, np.array([4.0, 8.0])
    force = kinematics.centrifugal_force(d, 40.0, 5000.0, n)
    assert force[1] == pytest.approx(8 * force[0])
    assert kinematics.centrifugal_force(d, 40.0, 5000.0, rho) == pytest.approx(force * rho / n)
    moment = kinematics.gyroscopic_moment(d, 30_000.0, 5000.0, 15.0, n)
    assert moment[1] == pytest.approx(32 * moment[0])
    assert kinematics.gyroscopic_moment(4.0, 30_000.0, 5000.0, 0.0, n) == 0.0


def test_pitch_angle_lies_below_the_contact_angle():
    beta = kinematics.pitch_angle(11.906, 90.0, np.array([0.0, 15.0, 40.0]))
    assert beta[0] == 0.0 and np.all(beta[1:] < [15.0, 40.0]) and np.all(beta[1:] > [12.0, 34.0])


def test_preload_against_skidding():
    s = 20 * 30.0 * np.sin(np.deg2rad(15))
    assert kinematics.preload_against_skidding(30.0, 20, 15.0) == pytest.approx(s)


def test_nan_passes():
    s = split([500.0, np.nan], 30.0)
    assert np.isfinite(s.inner_angle[0]) and np.isnan(s.inner_angle[1])


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: split(0.0, 1.0), "axial load must be greater than 0"),
        (lambda: split(1.0, -1.0), "centrifugal force must not be negative"),
        (lambda: split(1.0, 1.0, 90.0), "below 90 deg"),
        (lambda: split(1.0, 1e6, 80.0), "centrifugal force too large"),
        (lambda: kinematics.speeds(1, 9, 40, 40), "smaller than the pitch diameter"),
        (lambda: kinematics.speeds(1, 0, 8, 40), "number of balls"),
        (lambda: kinematics.ball_mass(0.0, 7800.0), "ball diameter must be greater than 0"),
        (lambda: kinematics.gyroscopic_slip_ratio(1, 1, 1, 0), "friction coefficient"),
        (lambda: kinematics.preload_against_gyroscopic_slip(-1, 9, 8, 15, 0.02), "moment must not be negative"),
    ],
)
def test_bad_input_is_refused(call, message):
    with pytest.raises(ValueError, match=message):
        call()
