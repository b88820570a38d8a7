import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.mechanics import rating_life as rl


def test_rating_is_nearly_continuous_at_one_inch():
    """The two powers of the ball diameter meet at 25.4 mm (the standard rounds the factor)."""
    low, high = rl.dynamic_rating(8, [25.4, 25.4000001], 120.0)
    assert high == pytest.approx(low, rel=1e-3)


@given(st.floats(0.02, 0.40))
def test_table_and_formula_agree_between_the_entries(gamma):
    """From 0.02 on; between 0.01 and 0.02 the chord of the table lies up to 1.4 % below the curve."""
    assert rl.tabulated_geometry_factor(gamma) == pytest.approx(float(rl.geometry_factor(gamma)), rel=0.01)


def test_rating_laws():
    z = np.array([8.0, 16.0])
    assert rl.dynamic_rating(z, 8.0, 40.0)[1] / rl.dynamic_rating(z, 8.0, 40.0)[0] == pytest.approx(2 ** (2 / 3))
    rows = rl.dynamic_rating(8, 8.0, 40.0, 15.0, [1, 2], "angular-contact")
    assert rows[1] / rows[0] == pytest.approx(2**0.7)
    assert rl.geometry_factor(0.2, "double-row") / rl.geometry_factor(0.2) == pytest.approx(0.90 / 0.95)
    assert rl.geometry_factor(0.2, "single-row", 0.53, 0.53) < rl.geometry_factor(0.2)


@pytest.mark.parametrize("rows", [1, 2])
def test_table_identity(rows):
    """Both branches of P meet at F_a/F_r = e: e = (1 − X)/(Y − Y1) within the rounding of the table."""
    for angle in (0, 5, 10, 15, 20, 25, 30, 35, 40, 45):
        f = rl.load_factors(angle, np.linspace(0.172, 7.0, 60), rows)
        assert (1 - f.radial) / (f.axial - f.axial_below) == pytest.approx(f.limit, rel=0.05), angle


def test_load_factors_are_linear_between_and_held_at_the_ends():
    f = rl.load_factors(0.0, [0.0, 0.172, (0.172 + 0.345) / 2, 6.89, 50.0])
    assert f.axial == pytest.approx([2.30, 2.30, 2.145, 1.00, 1.00])
    assert f.limit == pytest.approx([0.19, 0.19, 0.205, 0.44, 0.44])
    f = rl.load_factors([12.5, 22.5, 45.0], 3.5)
    assert f.radial == pytest.approx([0.45, 0.42, 0.33])
    assert f.limit == pytest.approx([(0.49 + np.interp(3.5, [2.14, 3.57], [0.50, 0.55])) / 2, 0.625, 1.34])


@given(st.floats(0, 45), st.floats(0, 8), st.floats(1.0, 1e4), st.floats(0.0, 1e4), st.sampled_from([1, 2]))
def test_equivalent_load(angle, relative, radial, axial, rows):
    f = rl.load_factors(angle, relative, rows)
    p = rl.equivalent_load(radial, axial, f)
    assert p >= min(radial, f.radial * radial + f.axial * axial) and np.isfinite(p)
    assert rl.equivalent_load(2 * radial, 2 * axial, f) == pytest.approx(2 * p, rel=1e-12)
    assert rl.equivalent_load(radial, 0.0, f) == radial


def test_life_and_its_inverse():
    life = rl.basic_life(10_000.0, [1000.0, 500.0])
    assert life == pytest.approx([1000.0, 8000.0])
    assert rl.required_rating([1000.0, 500.0], life) == pytest.approx([10_000.0, 10_000.0])
    assert rl.life_hours(60.0, 1000.0) == pytest.approx(1000.0)


def test_one_load_is_its_own_mean_and_one_bearing_its_own_system():
    assert rl.mean_equivalent_load([[3.0], [5.0]], [[1.0], [2.0]]) == pytest.approx([3.0, 5.0])
    assert rl.combined_life([[500.0]]) == pytest.approx([500.0])
    assert rl.combined_life([500.0, 1e9]) == pytest.approx(500.0, rel=1e-4)
    assert rl.combined_life([500.0, 500.0]) == pytest.approx(500.0 * 2 ** (-0.9))


def test_reliability():
    s = np.linspace(90, 99.95, 400)
    for method in ("table", "formula"):
        a_1 = rl.reliability_factor(s, method)
        assert a_1[0] == pytest.approx(1.0) and np.all(np.diff(a_1) < 0)
    # The table rounds to two digits.
    assert rl.reliability_factor(s) == pytest.approx(rl.reliability_factor(s, "formula"), abs=0.006)
    assert rl.weibull_reliability(rl.weibull_life_ratio([0.5, 0.9, 0.99])) == pytest.approx([0.5, 0.9, 0.99])
    assert rl.weibull_reliability([0.0, 0.02]) == pytest.approx([1.0, 1.0])


def test_nan_passes():
    assert np.isnan(rl.dynamic_rating(np.nan, 8.0, 40.0))
    f = rl.load_factors([0.0, np.nan], [np.nan, 1.0])
    assert np.isnan(f.axial).all() and np.isnan(rl.basic_life(np.nan, 1.0))


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: rl.geometry_factor(0.0), "must be greater than 0"),
        (lambda: rl.geometry_factor(1.0), "smaller than the pitch diameter"),
        (lambda: rl.geometry_factor(0.2, "thrust"), "single-row, angular-contact, double-row, got 'thrust'"),
        (lambda: rl.tabulated_geometry_factor(0.5), "from 0.01 to 0.4"),
        (lambda: rl.dynamic_rating(9, 8, 40, 46), "from 0 to 45"),
        (lambda: rl.load_factors(50.0), "contact angle must lie from 0 to 45"),
        (lambda: rl.load_factors(0.0, -1.0), "relative axial load must not be negative"),
        (lambda: rl.load_factors(0.0, 1.0, 3), "number of rows must be 1 or 2, got 3"),
        (lambda: rl.equivalent_load(-1, 0, rl.load_factors(0)), "must not be negative"),
        (lambda: rl.basic_life(1.0, 0.0), "equivalent load must be greater than 0"),
        (lambda: rl.reliability_factor(89.0), "from 90 to 99.95"),
        (lambda: rl.reliability_factor(95.0, "guess"), "'table' or 'formula', got 'guess'"),
        (lambda: rl.mean_equivalent_load([1.0], [0.0]), "must not sum to 0"),
        (lambda: rl.weibull_life_ratio(0.0), "reliability must lie above 0"),
    ],
)
def test_bad_input_is_refused(call, message):
    with pytest.raises(ValueError, match=message):
        call()
