import numpy as np
import pytest
from scipy.optimize import brentq

from linter.mechanics import speed_rating


@pytest.mark.parametrize("size", [(8, 22, 7, 1370), (17, 40, 12, 4800), (100, 180, 34, 93_000), (500, 720, 100, 8e5)])
def test_reference_speed_balances_heat_and_friction(size):
    """The heat balance as printed, solved by a bracketing root finder."""
    d, big_d, b, c_0 = size
    d_m, area = (d + big_d) / 2, np.pi * b * (d + big_d)
    flow = 0.016 * (1 if area <= 50_000 else (area / 50_000) ** -0.34)

    def residual(n):
        viscous = 1e-7 * 2 * (12 * n) ** (2 / 3) * d_m**3
        return np.pi * n / 30 * (viscous + 0.0002 * 0.05 * c_0 * d_m) - 1000 * flow * area

    n = brentq(residual, 1.0, 1e6, xtol=1e-9)
    assert speed_rating.thermal_reference_speed(*size) == pytest.approx(n, rel=1e-9)
    assert speed_rating.heat_flow(d, big_d, b) == pytest.approx(flow * area)


def test_reference_speed_falls_with_friction():
    n = speed_rating.thermal_reference_speed(17, 40, 12, 4800, [1.7, 2.0, 2.3], 0.0002, 12.0)
    assert np.all(np.diff(n) < 0)
    assert np.isnan(speed_rating.thermal_reference_speed(17, 40, 12, np.nan))


def test_minimum_load_powers():
    f = speed_rating.minimum_radial_load(0.025, 10.0, [1000.0, 8000.0], 100.0)
    assert f[1] / f[0] == pytest.approx(4.0) and f[0] == pytest.approx(25 * 10 ** (2 / 3))


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: speed_rating.heat_flow(40, 40, 12), "bore diameter must be smaller"),
        (lambda: speed_rating.thermal_reference_speed(17, 40, 0, 4800), "width must be greater than 0"),
        (lambda: speed_rating.minimum_radial_load(0.0, 1, 1, 1), "minimum load factor"),
    ],
)
def test_bad_input_is_refused(call, message):
    with pytest.raises(ValueError, match=message):
        call()
