import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from linter.mechanics import ball_bearing as bb

A = bb.groove_distance(7.938, 0.52, 0.53)
STEEL = (208_000.0, 0.3)
K = bb.stiffness_constant(7.938, 39.04, 15.0, 0.52, 0.53, *STEEL, *STEEL)
ANGULAR = bb.AxialBearing(9, A, 15.0, K)


@pytest.mark.parametrize("angle", [0.0, 1.0, 15.0, 40.0, 60.0])
@pytest.mark.parametrize("force", [1e-3, 1.0, 300.0, 2e5])
def test_axial_load_against_a_bracketed_root(angle, force):
    """The equation in the contact angle as printed, solved by a bracketing root finder."""
    t = force / (9 * K * A**1.5)
    cos_0 = np.cos(np.deg2rad(angle))

    def residual(alpha):
        return np.sin(alpha) * max(cos_0 / np.cos(alpha) - 1.0, 0.0) ** 1.5 / t - 1.0

    alpha = brentq(residual, np.deg2rad(angle) + 1e-15, np.pi / 2 - 1e-9, xtol=1e-15, rtol=1e-14)
    state = bb.axial_load(force, bb.AxialBearing(9, A, angle, K))
    assert state.contact_angle == pytest.approx(np.rad2deg(alpha), rel=1e-6)
    assert 9 * state.ball_load * np.sin(np.deg2rad(state.contact_angle)) == pytest.approx(force, rel=1e-9)
    assert bb.axial_force(state.deflection, bb.AxialBearing(9, A, angle, K))[0] == pytest.approx(force, rel=1e-11)


def test_stiffness_is_the_slope_of_the_curve():
    delta = np.geomspace(1e-4, 0.1, 30)
    h = 1e-6 * delta
    slope = (bb.axial_force(delta + h, ANGULAR)[0] - bb.axial_force(delta - h, ANGULAR)[0]) / (2 * h)
    assert bb.axial_force(delta, ANGULAR)[1] == pytest.approx(slope, rel=1e-7)
    assert bb.axial_load(bb.axial_force(delta, ANGULAR)[0], ANGULAR).stiffness == pytest.approx(slope, rel=1e-7)


def test_axial_state_grows_with_load_from_rest():
    state = bb.axial_load(np.concatenate([[0.0], np.geomspace(1e-6, 1e5, 200)]), ANGULAR)
    for column in state:
        assert np.all(np.isfinite(column)) and np.all(np.diff(column) > 0)
    assert state.contact_angle[0] == pytest.approx(15.0) and state.deflection[0] == 0.0


@given(st.floats(0.0, 0.3))
def test_free_angle_and_clearance_are_inverse(clearance):
    angle = bb.free_contact_angle(clearance, A)
    assert bb.clearance_of_angle(angle, A) == pytest.approx(clearance, rel=1e-9, abs=1e-300)
    # cos α0 = 1 − P_d/(2A) as printed
    assert np.cos(np.deg2rad(angle)) == pytest.approx(1 - clearance / (2 * A), abs=1e-12)


@given(st.floats(1.0, 5000.0), st.floats(0.0, 20000.0))
def test_pair_balances_the_external_load(preload, external):
    other = bb.AxialBearing(11, A, 25.0, 1.2 * K)
    pair = bb.preloaded_pair(preload, external, ANGULAR, other)
    assert pair.loaded_force - pair.unloaded_force == pytest.approx(external, rel=1e-8, abs=1e-8 * preload)
    assert (pair.unloaded_force == 0.0) == (external >= pair.unloading_limit)
    # Both bearings are displaced by the same shift.
    second = bb.axial_load(preload, other).deflection
    assert bb.axial_force(pair.preload_deflection + pair.shift, ANGULAR)[0] == pytest.approx(
        pair.loaded_force, rel=1e-7
    )
    assert bb.axial_force(second - pair.shift, other)[0] == pytest.approx(pair.unloaded_force, rel=1e-7, abs=1e-7)


def test_pair_without_external_load_and_at_its_limit():
    rest = bb.preloaded_pair(500.0, 0.0, ANGULAR, ANGULAR)
    assert rest.shift == pytest.approx(0.0, abs=1e-12)
    assert rest.loaded_force == rest.unloaded_force == pytest.approx(500.0)
    near = bb.preloaded_pair(500.0, rest.unloading_limit * np.array([1 - 1e-9, 1 + 1e-9]), ANGULAR, ANGULAR)
    assert near.shift[1] == pytest.approx(near.shift[0], rel=1e-5)
    assert near.unloaded_force == pytest.approx([0.0, 0.0], abs=1e-3)
    # A linear pair would unload at twice the preload, the 1.5 power law with a fixed angle at 2^1.5.
    assert 2.0 < rest.unloading_limit / 500.0 < 4.0
    steep = bb.AxialBearing(9, A, 80.0, K)
    assert bb.preloaded_pair(1.0, 0.0, steep, steep).unloading_limit == pytest.approx(2**1.5, rel=1e-2)


def test_two_contacts_in_series():
    one = bb.stiffness_constant(10.0, 1e9, 0.0, 0.52, 0.52, *STEEL, *STEEL)
    # Without ring curvature both contacts are alike: twice the approach, 2^(−1.5) of one contact's constant.
    from linter.mechanics import hertz

    e_prime = hertz.effective_modulus(*STEEL, *STEEL)
    single = hertz.contact_constant(*hertz.race_curvatures(10.0, 1e9, 0.0, 0.52, "inner"), e_prime)
    assert one == pytest.approx(single * 2**-1.5, rel=1e-6)


def test_nan_passes():
    state = bb.axial_load([100.0, np.nan], ANGULAR)
    assert np.isfinite(state.deflection[0]) and all(np.isnan(x[1]) for x in state)
    pair = bb.preloaded_pair([100.0, np.nan], 50.0, ANGULAR, ANGULAR)
    assert np.isfinite(pair.shift[0]) and np.isnan(pair.shift[1])


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: bb.axial_load(-1.0, ANGULAR), "axial load must not be negative, got -1.0"),
        (lambda: bb.axial_load(1.0, bb.AxialBearing(9.5, A, 15, K)), "whole number from 2 to 200"),
        (lambda: bb.axial_load(1.0, bb.AxialBearing(9, 0.0, 15, K)), "groove centres must be greater than 0"),
        (lambda: bb.axial_load(1.0, bb.AxialBearing(9, A, 91, K)), "between 0 and 90 deg"),
        (lambda: bb.axial_load(1.0, bb.AxialBearing(9, A, 15, 0)), "load-deflection constant must be"),
        (lambda: bb.free_contact_angle(-0.01, A), "between 0 and twice"),
        (lambda: bb.free_contact_angle(3 * A, A), "between 0 and twice"),
        (lambda: bb.groove_distance(8, 0.5, 0.53), "greater than 0.5"),
        (lambda: bb.preloaded_pair(0.0, 1.0, ANGULAR, ANGULAR), "preload must be greater than 0"),
        (lambda: bb.preloaded_pair(1.0, -1.0, ANGULAR, ANGULAR), "external axial load must not be negative"),
        (lambda: bb.chord_stiffness(1, 2, 0.1, 0.1), "different deflections"),
    ],
)
def test_bad_input_is_refused(call, message):
    with pytest.raises(ValueError, match=message):
        call()
