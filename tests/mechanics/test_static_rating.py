import numpy as np
import pytest

from linter.mechanics import hertz, load_distribution, static_rating


def test_rating_brings_the_heaviest_ball_to_4200_mpa():
    """Full circle: C_0 of a real bearing on the load distribution model and Hertz contact."""
    z, d_w, d_pw = 9, 7.938, 39.04
    c_0 = float(static_rating.geometry_factor(d_w / d_pw)) * z * d_w**2
    e_prime = hertz.effective_modulus(*static_rating.STANDARD_STEEL, *static_rating.STANDARD_STEEL)
    inner = hertz.race_curvatures(d_w, d_pw, 0.0, 0.52, "inner")
    assert hertz.point_contact(5 * c_0 / z, *inner, e_prime).peak_pressure == pytest.approx(4200.0, rel=1e-9)
    distribution = load_distribution.radial_load(c_0, z, 3.5e5, 0.01)
    assert distribution.max_ball_load == pytest.approx(5 * c_0 / z, rel=0.13)  # 5 is rounded up from 4.37


def test_table_and_formula_agree_between_the_entries():
    gamma = np.linspace(0.0, 0.40, 401)
    formula = static_rating.geometry_factor(gamma)
    assert static_rating.tabulated_geometry_factor(gamma) == pytest.approx(formula, rel=0.008)


def test_rating_laws():
    assert static_rating.static_rating(9, 8.0, 40.0, 0.0, [1, 2]) == pytest.approx(
        static_rating.static_rating(9, 8.0, 40.0) * np.array([1, 2])
    )
    x_1, y_1 = static_rating.load_factors([15.0, 25.0, 40.0])
    x_2, y_2 = static_rating.load_factors([15.0, 25.0, 40.0], 2)
    assert x_2 == pytest.approx(2 * x_1) and y_2 == pytest.approx(2 * y_1)


def test_equivalent_load_never_below_the_radial_load():
    p_0 = static_rating.equivalent_load(100.0, [0.0, 50.0, 200.0], 0.6, 0.5)
    assert p_0 == pytest.approx([100.0, 100.0, 160.0])


def test_pressure_estimate():
    """At F_a = 5 C_0 sin α the estimate is the static pressure; force to the 1/3."""
    alpha = np.array([10.0, 20.0])
    load = 5 * 1370 * np.sin(np.deg2rad(alpha))
    assert static_rating.peak_pressure_estimate(load, 1370.0, alpha) == pytest.approx([4200.0, 4200.0])
    assert static_rating.peak_pressure_estimate(load / 8, 1370.0, alpha) == pytest.approx([2100.0, 2100.0])


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: static_rating.geometry_factor(1.0), "from 0 to below 1"),
        (lambda: static_rating.tabulated_geometry_factor(0.41), "from 0 to 0.4"),
        (lambda: static_rating.static_rating(9, 8.0, 40.0, 50.0), "contact angle must lie from 0 to 45"),
        (lambda: static_rating.load_factors(0.0, 3), "number of rows must be 1 or 2"),
        (lambda: static_rating.equivalent_load(1.0, -1.0, 0.6, 0.5), "must not be negative"),
        (lambda: static_rating.safety_factor(1.0, 0.0), "equivalent load must be greater than 0"),
        (lambda: static_rating.peak_pressure_estimate(1.0, 1.0, 0.0), "above 0 and up to 90"),
    ],
)
def test_bad_input_is_refused(call, message):
    with pytest.raises(ValueError, match=message):
        call()
