"""Unbalance and the way the load turns relative to the rings."""

import numpy as np
import pytest

from linter.mechanics import balance


def test_force_of_a_graded_rotor_has_two_forms():
    """U omega^2 and G m omega are the same force."""
    n, g, m = np.array([3e3, 6e4, 1.2e5]), 2.5, 0.15
    force = balance.unbalance_force(balance.permissible_unbalance(g, m, n), n)
    assert force == pytest.approx(g * 1e-3 * m * n * np.pi / 30)
    assert force / (m * balance.STANDARD_GRAVITY) == pytest.approx(balance.unbalance_to_weight(g, n))
    assert balance.unbalance_to_weight(g, balance.speed_of_equal_weight(g)) == pytest.approx(1.0)


@pytest.mark.parametrize("x", [-15.0, 0.0, 12.0, 40.0, 55.0])
def test_shares_keep_force_and_moment(x):
    a, b = balance.share_to_bearings(10.0, x, 40.0)
    assert a + b == pytest.approx(10.0)
    assert b * 40.0 == pytest.approx(10.0 * x)
    if x > 40.0:
        assert a < 0 < 10.0 < b


def test_load_turning_with_the_rotor_swaps_the_rings():
    r = balance.load_rotation([100.0, 100.0, 100.0, 0.0], [20.0, 100.0, 300.0, 5.0], True, 0.5, 1.5)
    assert r.inner.tolist() == ["rotating", "indeterminate", "stationary", "stationary"]
    assert r.outer.tolist() == ["stationary", "indeterminate", "rotating", "rotating"]
    assert r.swing == pytest.approx([np.degrees(np.arcsin(0.2)), 180.0, 180.0, 180.0])
    assert r.ratio.tolist() == [0.2, 1.0, 3.0, np.inf]
    hub = balance.load_rotation([100.0, 100.0], [20.0, 300.0], False, 0.5, 1.5)
    assert hub.inner.tolist() == ["stationary", "rotating"]
    assert hub.outer.tolist() == ["rotating", "stationary"]


def test_edges_of_the_undecided_band():
    r = balance.load_rotation(100.0, [49.9, 50.0, 50.1, 149.9, 150.0], True, 0.5, 1.5)
    assert r.inner.tolist() == ["rotating", "rotating", "indeterminate", "indeterminate", "stationary"]


def test_swing_against_the_vector_sum():
    angle = np.linspace(0, 2 * np.pi, 20001)
    direction = np.degrees(np.arctan2(0.6 * np.sin(angle), 1 + 0.6 * np.cos(angle)))
    assert balance.load_rotation(1.0, 0.6, True, 0.5, 1.5).swing == pytest.approx(direction.max(), abs=1e-4)


def test_no_load_and_missing_load():
    r = balance.load_rotation([0.0, np.nan], [0.0, 5.0], True, 0.5, 1.5)
    assert np.all(np.isnan(r.ratio))
    assert np.all(np.isnan(r.swing))
    assert r.inner.tolist() == ["indeterminate", "indeterminate"]


def test_bad_values():
    with pytest.raises(ValueError, match="speed must be greater than 0"):
        balance.permissible_eccentricity(2.5, 0.0)
    with pytest.raises(ValueError, match="grade must be greater than 0, got -1"):
        balance.permissible_eccentricity(-1.0, 100.0)
    with pytest.raises(ValueError, match="bearing_span must be greater than 0"):
        balance.share_to_bearings(1.0, 1.0, 0.0)
    with pytest.raises(ValueError, match="at most the upper ratio"):
        balance.load_rotation(1.0, 1.0, True, 1.5, 0.5)
    assert np.isnan(balance.permissible_eccentricity(2.5, np.nan))
