"""Complete elliptic integrals against mpmath and scipy, and their limits."""

import mpmath
import numpy as np
import pytest
from scipy.special import ellipe, ellipkm1, elliprd

from linter.mechanics.elliptic import complete

Q = np.concatenate((np.geomspace(1e-14, 1.0, 200), 1.0 - np.geomspace(1e-15, 0.5, 50)))


def test_against_scipy():
    found = complete(Q)
    assert found.first == pytest.approx(ellipkm1(Q), rel=3e-15)
    assert found.second == pytest.approx(ellipe(1.0 - Q), rel=2e-14)
    assert found.minor == pytest.approx(elliprd(0.0, Q, 1.0) / 3.0, rel=1e-14)
    assert found.major == pytest.approx(Q * elliprd(0.0, 1.0, Q) / 3.0, rel=1e-14)


@pytest.mark.parametrize("q", [1e-14, 1e-6, 0.04, 0.5, 0.999999])
def test_against_mpmath(q):
    with mpmath.workdps(40):
        m = 1 - mpmath.mpf(q)
        first, second = mpmath.ellipk(m), mpmath.ellipe(m)
        expected = [first, second, (second - (1 - m) * first) / m, (first - second) / m]
    assert [float(x) for x in complete(q)] == pytest.approx([float(x) for x in expected], rel=1e-13)


def test_circle():
    assert [float(x) for x in complete(1.0)] == pytest.approx([np.pi / 2, np.pi / 2, np.pi / 4, np.pi / 4], rel=1e-15)


def test_legendre_relation():
    q = np.linspace(0.01, 0.99, 99)
    a, b = complete(q), complete(1.0 - q)
    left = a.second * b.first + b.second * a.first - a.first * b.first
    assert left == pytest.approx(np.full(99, np.pi / 2), rel=1e-14)


@pytest.mark.parametrize("q", [0.0, -0.1, 1.1])
def test_out_of_range(q):
    with pytest.raises(ValueError, match="above 0 and up to 1"):
        complete(q)


def test_nan_passes():
    assert all(np.isnan(x) for x in complete(np.nan))
