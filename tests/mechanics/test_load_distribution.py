import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from linter.mechanics import ball_bearing as bb
from linter.mechanics import load_distribution as ld

A = float(bb.groove_distance(7.938, 0.52, 0.53))
K = float(bb.stiffness_constant(7.938, 39.04, 0.0, 0.52, 0.53, 208_000.0, 0.3, 208_000.0, 0.3))


def forces(u, d, count, clearance):
    """Ball loads and ring loads straight from the geometry, every ball of the full circle on its own."""
    psi = 2 * np.pi * np.arange(count) / count
    radial = A - clearance / 2 + d * np.cos(psi)
    q = K * np.maximum(np.hypot(u, radial) - A, 0.0) ** 1.5
    alpha = np.arctan2(u, radial)
    return q, np.sum(q * np.cos(alpha) * np.cos(psi)), np.sum(q * np.sin(alpha)), alpha


@pytest.mark.parametrize("eps", [0.05, 0.3, 0.5, 0.8, 1.0, 1.7, 5.0])
def test_sjovall_integral_against_adaptive_quadrature(eps):
    edge = np.arccos(max(1 - 2 * eps, -1))
    value, _ = quad(lambda x: max(1 - (1 - np.cos(x)) / (2 * eps), 0) ** 1.5 * np.cos(x), 0, edge, epsabs=1e-13)
    assert ld.sjovall_integral(eps) == pytest.approx(value / np.pi, rel=1e-8)


def test_sjovall_integral_of_the_handbook():
    """Harris, Rolling Bearing Analysis, point contact: J_r(0.5) = 0.2288, J_r(1) = 0.2546 (memory)."""
    assert ld.sjovall_integral([0.5, 1.0]) == pytest.approx([0.2288, 0.2546], abs=5e-5)


@pytest.mark.parametrize("clearance", [-0.02, -0.003, 0.0, 0.015, 0.05])
@pytest.mark.parametrize("count", [7, 8, 9, 20])
def test_radial_load_against_a_bracketed_root(count, clearance):
    psi = 2 * np.pi * np.arange(count) / count

    def residual(d):
        return np.sum(K * np.maximum(d * np.cos(psi) - clearance / 2, 0) ** 1.5 * np.cos(psi)) - 800.0

    d = brentq(residual, 0.0, 1.0, xtol=1e-15)
    state = ld.radial_load(800.0, count, K, clearance)
    assert state.displacement == pytest.approx(d, rel=1e-9)
    assert state.max_ball_load == pytest.approx(K * (d - clearance / 2) ** 1.5, rel=1e-8)
    assert state.stiffness == pytest.approx((residual(d + 1e-7) - residual(d - 1e-7)) / 2e-7, rel=1e-5)


def test_radial_load_tends_to_the_integral_for_many_balls():
    state = ld.radial_load(3000.0, 200, K, [0.0, 0.02, -0.02])
    expected = 3000.0 / (200 * ld.sjovall_integral(state.load_zone))
    assert state.max_ball_load == pytest.approx(expected, rel=2e-3)


def test_five_times_the_mean_load():
    """Stribeck: Q_max is close to 4.37 F_r/Z without clearance, 5 F_r/Z with the usual one (Harris, memory)."""
    state = ld.radial_load(1000.0, 9, K, [0.0, 0.01])
    assert state.max_ball_load[0] * 9 / 1000.0 == pytest.approx(4.37, rel=0.02)
    assert 4.37 < state.max_ball_load[1] * 9 / 1000.0 < 5.5


loads = st.floats(0.1, 20_000.0)


@given(loads, loads, st.integers(5, 24), st.floats(-0.02, 0.08))
def test_combined_load_against_direct_balance(radial, axial, count, clearance):
    state = ld.combined_load(radial, axial, count, A, clearance, K)
    q, f_r, f_a, alpha = forces(state.axial_displacement, state.radial_displacement, count, clearance)
    assert f_r == pytest.approx(radial, rel=1e-6)
    assert f_a == pytest.approx(axial, rel=1e-6)
    assert state.max_ball_load == pytest.approx(q.max(), rel=1e-9)
    assert state.min_ball_load == pytest.approx(q.min(), rel=1e-9, abs=1e-12)
    assert state.loaded_balls == np.count_nonzero(q)
    assert state.contact_angle == pytest.approx(np.rad2deg(alpha[q.argmax()]), rel=1e-9)


def test_combined_stiffness_is_the_slope():
    s = ld.combined_load(900.0, 400.0, 9, A, 0.012, K)
    u, d, h = s.axial_displacement, s.radial_displacement, 1e-6
    along_u = [(forces(u + h, d, 9, 0.012)[i] - forces(u - h, d, 9, 0.012)[i]) / (2 * h) for i in (1, 2)]
    along_d = [(forces(u, d + h, 9, 0.012)[i] - forces(u, d - h, 9, 0.012)[i]) / (2 * h) for i in (1, 2)]
    assert (s.coupling_stiffness, s.axial_stiffness) == pytest.approx(tuple(along_u), rel=1e-4)
    assert (s.radial_stiffness, s.coupling_stiffness) == pytest.approx(tuple(along_d), rel=1e-4)


def test_combined_load_has_the_pure_loads_as_limits():
    clearance, axial = 0.012, np.array([10.0, 500.0, 8000.0])
    pure = bb.axial_load(axial, bb.AxialBearing(9, A, bb.free_contact_angle(clearance, A), K))
    both = ld.combined_load(0.0, axial, 9, A, clearance, K)
    assert both.contact_angle == pytest.approx(pure.contact_angle, rel=1e-9)
    assert both.max_ball_load == pytest.approx(pure.ball_load, rel=1e-9)
    assert both.axial_stiffness == pytest.approx(pure.stiffness, rel=1e-8)
    assert both.radial_displacement == pytest.approx(0.0, abs=1e-15)
    radial = ld.combined_load(axial, 0.0, 9, A, clearance, K)
    assert radial.max_ball_load == pytest.approx(ld.radial_load(axial, 9, K, clearance).max_ball_load, rel=1e-9)
    assert radial.contact_angle == pytest.approx(0.0)


def test_light_loads_keep_their_digits():
    """Loads down to a billionth of K A^1.5, with little, no or negative clearance, balanced in extended precision."""
    rng = np.random.default_rng(11)
    n = 400
    radial, axial = np.maximum(K * A**1.5 * 10 ** rng.uniform(-10, -3, (2, n)), 1e-6)
    count = rng.integers(3, 30, n)
    clearance = A * rng.choice([-1.0, 0.0, 1.0], n) * 10 ** rng.uniform(-8, -0.5, n)
    clearance = np.maximum(clearance, -0.01 * A)
    radial[::9], axial[1::9] = 0.0, 0.0
    s = ld.combined_load(radial, axial, count, A, clearance, K)
    for i in range(n):
        psi = 2 * np.pi * np.arange(count[i], dtype=np.longdouble) / count[i]
        w = np.longdouble(A) - np.longdouble(clearance[i]) / 2 + s.radial_displacement[i] * np.cos(psi)
        u = np.longdouble(s.axial_displacement[i])
        length = np.sqrt(u * u + w * w)
        q = K * np.maximum(length - np.longdouble(A), 0) ** 1.5
        scale = max(radial[i], axial[i], float(q.sum()))
        assert float(np.sum(q * w / length * np.cos(psi))) == pytest.approx(radial[i], rel=1e-5, abs=1e-7 * scale)
        assert float(np.sum(q * u / length)) == pytest.approx(axial[i], rel=1e-5, abs=1e-7 * scale)


def test_a_row_that_is_not_known_has_no_count_of_loaded_balls():
    s = ld.combined_load([100.0, np.nan, 100.0], 50.0, 9, A, [0.0, 0.0, np.nan], K)
    assert np.isnan(s.loaded_balls).tolist() == [False, True, True]
    assert s.loaded_balls[0] == 9


def test_a_preload_from_interference_needs_no_load():
    s = ld.combined_load(0.0, 0.0, 9, A, -0.01, K)
    assert s.max_ball_load == s.min_ball_load == pytest.approx(K * 0.005**1.5)


def test_rows_of_many_blocks_and_counts_agree_with_single_rows():
    rng = np.random.default_rng(5)
    n = 5000
    radial, axial = 10 ** rng.uniform(0, 4, (2, n))
    count, clearance = rng.integers(6, 25, n), rng.uniform(-0.01, 0.05, n)
    together = ld.combined_load(radial, axial, count, A, clearance, K)
    for i in (0, 17, 4095, 4096, 4999):
        alone = ld.combined_load(radial[i], axial[i], count[i], A, clearance[i], K)
        assert [x[i] for x in together] == pytest.approx([float(x) for x in alone], rel=1e-7)
    for column in together:
        assert np.all(np.isfinite(column))


def test_more_load_never_lightens_the_heaviest_ball():
    radial = np.geomspace(1, 2e4, 300)
    s = ld.combined_load(radial, 300.0, 9, A, 0.012, K)
    assert np.all(np.diff(s.max_ball_load) > 0) and np.all(np.diff(s.radial_displacement) > 0)


def test_nan_passes():
    s = ld.combined_load([100.0, np.nan, 100.0], [10.0, 10.0, np.nan], [9, 9, 8], A, 0.01, K)
    assert np.isfinite(s.max_ball_load[0]) and np.isnan(s.max_ball_load[1:]).all()
    r = ld.radial_load([100.0, np.nan], 9, K)
    assert np.isfinite(r.max_ball_load[0]) and np.isnan(r.max_ball_load[1])


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: ld.radial_load(0.0, 9, K), "radial load must be greater than 0"),
        (lambda: ld.radial_load(1.0, 1, K), "whole number from 2 to 200"),
        (lambda: ld.radial_load(1.0, 9, K, contact_angle=-1), "contact angle must lie between"),
        (lambda: ld.combined_load(0.0, 0.0, 9, A, 0.01, K), "needs a radial or an axial load"),
        (lambda: ld.combined_load(1.0, 0.0, 9, A, 2 * A, K), "smaller than twice"),
        (lambda: ld.combined_load(-1.0, 0.0, 9, A, 0.01, K), "radial load must not be negative"),
        (lambda: ld.combined_load(1.0, -2.0, 9, A, 0.01, K), "axial load must not be negative"),
        (lambda: ld.sjovall_integral(0.0), "load zone must be greater than 0"),
    ],
)
def test_bad_input_is_refused(call, message):
    with pytest.raises(ValueError, match=message):
        call()
