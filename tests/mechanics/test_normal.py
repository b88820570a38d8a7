"""The two roads of the normal distribution function agree, with each other and with the table."""

import numpy as np
import pytest
from scipy.special import ndtr

from linter.mechanics.normal import FEW, normal_cdf


def test_few_and_many_agree():
    x = np.linspace(-12, 12, FEW)
    assert normal_cdf(x) == pytest.approx(ndtr(x), rel=1e-13, abs=1e-300)
    many = np.concatenate((x, x))
    assert normal_cdf(many) == pytest.approx(np.concatenate((normal_cdf(x), normal_cdf(x))), rel=1e-13, abs=1e-300)


@pytest.mark.parametrize(("x", "share"), [(0.0, 0.5), (1.0, 0.841345), (1.96, 0.975002), (-3.0, 0.001350)])
def test_table(x, share):
    """Abramowitz and Stegun, Handbook of mathematical functions, table 26.1 (from memory)."""
    assert float(normal_cdf(x)) == pytest.approx(share, abs=5e-7)


def test_edges():
    assert normal_cdf([np.inf, -np.inf]).tolist() == [1.0, 0.0]
    assert np.isnan(normal_cdf(np.nan))
    assert normal_cdf(np.zeros((2, 3))).shape == (2, 3)
