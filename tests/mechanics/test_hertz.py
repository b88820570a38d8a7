import mpmath as mp
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.mechanics import hertz

STEEL = hertz.effective_modulus(208_000.0, 0.3, 208_000.0, 0.3)
curvature = st.floats(1e-4, 10.0)
load = st.floats(1e-3, 1e5)


@pytest.mark.parametrize("ratio", [1.0000001, 1.001, 1.2, 3.0, 12.5, 42.0, 500.0, 1e5])
def test_ellipse_against_thirty_digits(ratio):
    """The relation between curvature difference and elliptic integrals as printed, with quadrature by mpmath."""
    mp.mp.dps = 30

    def integrals(k):
        m = 1 - 1 / k**2
        first = mp.quad(lambda t: 1 / mp.sqrt(1 - m * mp.sin(t) ** 2), [0, mp.pi / 2])
        return first, mp.quad(lambda t: mp.sqrt(1 - m * mp.sin(t) ** 2), [0, mp.pi / 2])

    difference = (mp.mpf(ratio) - 1) / (mp.mpf(ratio) + 1)

    def residual(k):
        first, second = integrals(k)
        return ((k**2 + 1) * second - 2 * first) / ((k**2 - 1) * second) - difference

    guess = mp.mpf(ratio) ** (2 / mp.pi)
    k = mp.findroot(residual, (guess, guess * mp.mpf("1.0001") + mp.mpf("1e-9")), tol=1e-22)
    first, second = integrals(k)
    ellipse = hertz.contact_ellipse(ratio)
    assert ellipse.ellipticity == pytest.approx(float(k), rel=1e-11)
    assert ellipse.first_integral == pytest.approx(float(first), rel=1e-11)
    assert ellipse.second_integral == pytest.approx(float(second), rel=1e-11)


def test_pressure_carries_the_load():
    """The half-ellipsoid of pressure integrates to the load."""
    c = hertz.point_contact(321.0, 0.3, 0.02, STEEL)
    assert 2 / 3 * np.pi * c.semi_major * c.semi_minor * c.peak_pressure == pytest.approx(321.0, rel=1e-12)
    assert c.mean_pressure * np.pi * c.semi_major * c.semi_minor == pytest.approx(321.0, rel=1e-12)


def test_sphere_on_plane_closed_form():
    """a³ = 3QR/(2E'), δ = a²/R, p = 1.5 Q/(π a²) for a sphere of radius 5 mm (E' = 2E/(1 − ν²)/2)."""
    c = hertz.point_contact(100.0, 0.2, 0.2, STEEL)
    a = (3 * 100.0 * 5.0 / (2 * STEEL)) ** (1 / 3)
    assert c.semi_major == pytest.approx(a, rel=1e-12)
    assert c.semi_minor == pytest.approx(a, rel=1e-12)
    assert c.approach == pytest.approx(a**2 / 5.0, rel=1e-12)
    assert c.peak_pressure == pytest.approx(1.5 * 100 / (np.pi * a**2), rel=1e-12)


@given(load, curvature, curvature, st.floats(0.01, 100.0))
def test_scale_laws(q, r_1, r_2, factor):
    """Force to the 1/3 for pressure and axes, to the 2/3 for the approach; similar bodies at equal pressure."""
    one, more = (hertz.point_contact(f, r_1, r_2, STEEL) for f in (q, factor * q))
    assert more.peak_pressure == pytest.approx(one.peak_pressure * factor ** (1 / 3), rel=1e-9)
    assert more.semi_major == pytest.approx(one.semi_major * factor ** (1 / 3), rel=1e-9)
    assert more.approach == pytest.approx(one.approach * factor ** (2 / 3), rel=1e-9)
    similar = hertz.point_contact(factor**2 * q, r_1 / factor, r_2 / factor, STEEL)
    assert similar.peak_pressure == pytest.approx(one.peak_pressure, rel=1e-9)


@given(load, curvature, curvature)
def test_symmetry_and_inverse(q, r_1, r_2):
    one, other = hertz.point_contact(q, r_1, r_2, STEEL), hertz.point_contact(q, r_2, r_1, STEEL)
    assert one == pytest.approx(other)
    assert one.semi_major >= one.semi_minor > 0
    assert hertz.contact_load(one.peak_pressure, r_1, r_2, STEEL) == pytest.approx(q, rel=1e-9)
    assert hertz.contact_constant(r_1, r_2, STEEL) * one.approach**1.5 == pytest.approx(q, rel=1e-9)


def test_ellipticity_grows_with_the_ratio_without_gaps():
    ratio = np.geomspace(1, 1e12, 2001)
    ellipse = hertz.contact_ellipse(ratio)
    assert np.all(np.isfinite(ellipse)) and np.all(np.diff(ellipse.ellipticity) > 0)
    assert ellipse.ellipticity[0] == 1.0


def test_ceramic_ball_is_stiffer_and_stressed_higher():
    mixed = hertz.effective_modulus(310_000.0, 0.27, 208_000.0, 0.3)
    inner = hertz.race_curvatures(12.7, 65.0, 0.0, 0.52, "inner")
    steel, ceramic = (hertz.point_contact(1000.0, *inner, e) for e in (STEEL, mixed))
    # The ratio of the moduli to the 2/3.
    assert ceramic.peak_pressure / steel.peak_pressure == pytest.approx((mixed / STEEL) ** (2 / 3), rel=1e-12)
    assert ceramic.approach < steel.approach


def test_nan_passes_and_shapes_broadcast():
    c = hertz.point_contact([[10.0], [np.nan]], [0.1, 0.2, np.nan], 0.01, STEEL)
    assert c.peak_pressure.shape == (2, 3)
    assert np.isfinite(c.peak_pressure[0, :2]).all() and np.isnan(c.peak_pressure[1]).all()
    assert hertz.point_contact(0.0, 0.1, 0.2, STEEL).peak_pressure == 0.0


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: hertz.point_contact(-1.0, 0.1, 0.1, STEEL), "load must not be negative, got -1.0"),
        (lambda: hertz.point_contact(1.0, 0.0, 0.1, STEEL), "relative curvature must be greater than 0"),
        (lambda: hertz.point_contact(1.0, 0.1, 0.1, -1.0), "effective modulus must be greater than 0"),
        (lambda: hertz.contact_ellipse(0.5), "between 1 and 1e12"),
        (lambda: hertz.contact_ellipse(2.0, "chart"), "'exact', 'regression' or 'power', got 'chart'"),
        (lambda: hertz.race_curvatures(5, 20, 0, 0.5, "inner"), "greater than 0.5, got 0.5"),
        (lambda: hertz.race_curvatures(5, 20, 0, 0.52, "middle"), "'inner' or 'outer', got 'middle'"),
        (lambda: hertz.race_curvatures(20, 20, 0, 0.52, "inner"), "smaller than the pitch diameter"),
        (lambda: hertz.effective_modulus(2e5, 0.6, 2e5, 0.3), "Poisson's ratio"),
        (lambda: hertz.contact_load(-1.0, 0.1, 0.1, STEEL), "peak pressure must not be negative"),
        (lambda: hertz.axis_shear_ratio(0.0, 0.3), "depth over contact radius"),
    ],
)
def test_bad_input_is_refused(call, message):
    with pytest.raises(ValueError, match=message):
        call()
