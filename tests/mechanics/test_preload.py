"""Preload: spring band, thermal change, unloading of a pair, and the window."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq

from linter.mechanics import preload as pl
from linter.mechanics import springs
from linter.mechanics.tolerance_chain import chain, normal_share_outside, root_sum_square

positive_k = st.floats(1e4, 1e8)


def test_band_of_a_disc_whose_force_falls_again():
    """h_0/t 1.6: the largest force lies inside the band of lengths, at neither end."""
    disc = (25.0, 12.0, 0.5, 0.8, 206000.0, 0.3)

    def force(length):
        return springs.disc_force(1.3 - length, *disc)

    low, high = pl.force_band(force, 0.52, 1.0, 0.0, 0.0)
    ends = force(np.array([0.52, 1.0]))
    curve = force(np.linspace(0.52, 1.0, 20001))
    assert high > ends.max()
    assert (low, high) == (pytest.approx(curve.min(), rel=1e-3), pytest.approx(curve.max(), rel=1e-3))
    with pytest.raises(ValueError, match="at most the longest"):
        pl.force_band(force, 1.0, 0.52, 0.0, 0.0)


def test_share_outside_of_a_linear_spring():
    """Without a force tolerance the force limits are length limits, so the normal law of the chain holds."""
    members = chain([1.0, -1.0], [[20.0, 12.0], [20.0, 12.1]], [[-0.3, -0.2], [-0.1, -0.2]], [[0.3, 0.2], [0.1, 0.2]])
    rate, free, low, high = np.array([1.0, 2.0]), 14.0, np.array([5.8, 11.6]), np.array([6.1, 11.95])
    share = pl.spring_share_outside(rate, free, members, 0.0, low, high, 200_000, 7)
    normal = normal_share_outside(members, free - high / rate, free - low / rate)
    assert share == pytest.approx(normal, abs=5e-3)
    # with it, the root sum square of both relative spreads (linear for small parts)
    wide = pl.spring_share_outside(1.0, free, members, 0.1, 5.6, 6.4, 200_000, 7)
    mean, half = root_sum_square(members)
    sigma = np.hypot(half / 3, (free - mean) * 0.1 / 3)
    f = free - mean
    z = np.random.default_rng(0).standard_normal(400_000)
    expected = [np.mean((m + s * z < 5.6) | (m + s * z > 6.4)) for m, s in zip(f, sigma, strict=True)]
    assert wide == pytest.approx(expected, abs=0.01)
    assert np.array_equal(wide, pl.spring_share_outside(1.0, free, members, 0.1, 5.6, 6.4, 200_000, 7))
    with pytest.raises(ValueError, match="rate must be greater than 0"):
        pl.spring_share_outside(0.0, free, members, 0.1, 5.6, 6.4, 10, 7)


@settings(max_examples=80)
@given(st.floats(0.0, 500.0), positive_k, positive_k, st.floats(-3000.0, 3000.0))
def test_pair_in_balance(f_0, k_a, k_b, ext):
    pair = pl.pair_under_axial_force(f_0, k_a, k_b, ext)
    assert pair.load_a - pair.load_b == pytest.approx(ext, rel=1e-8, abs=1e-6)
    assert pair.load_a >= 0
    assert pair.load_b >= 0
    mirrored = pl.pair_under_axial_force(f_0, k_b, k_a, -ext)
    assert mirrored.load_b == pytest.approx(pair.load_a, rel=1e-6, abs=1e-6)
    assert mirrored.shift == pytest.approx(-pair.shift, rel=1e-6, abs=1e-9)


def test_pair_against_a_root_finder():
    f_0, k_a, k_b = 60.0, 4e5, 7e5
    d_a, d_b = (f_0 / k_a) ** (2 / 3), (f_0 / k_b) ** (2 / 3)
    for ext in (-200.0, -50.0, 0.0, 30.0, 120.0, 500.0):
        x = brentq(
            lambda s, ext=ext: k_a * max(d_a + s, 0) ** 1.5 - k_b * max(d_b - s, 0) ** 1.5 - ext, -1.0, 1.0, xtol=1e-14
        )
        assert pl.pair_under_axial_force(f_0, k_a, k_b, ext).shift == pytest.approx(x, rel=1e-7, abs=1e-12)


def test_lift_off():
    assert pl.lift_off_force(50.0, 3e5, 3e5) == pytest.approx(50.0 * 2**1.5)
    f = pl.lift_off_force(50.0, 3e5, 9e5)
    assert pl.pair_under_axial_force(50.0, 3e5, 9e5, f * 1.0001).load_b == 0.0
    assert pl.pair_under_axial_force(50.0, 3e5, 9e5, f * 0.999).load_b > 0.0


def test_growth_of_a_rigid_pair():
    k_a, k_b, f_0 = 3e5, 8e5, 40.0
    c = pl.pair_stiffness(f_0, k_a, k_b)
    small = 1e-8
    assert (pl.rigid_preload_after_growth(f_0, k_a, k_b, small) - f_0) / small == pytest.approx(c, rel=1e-3)
    # stiffness in series of the two tangents
    tangents = [1.5 * k ** (2 / 3) * f_0 ** (1 / 3) for k in (k_a, k_b)]
    assert 1 / c == pytest.approx(sum(1 / t for t in tangents))
    assert pl.rigid_preload_after_growth(f_0, k_a, k_b, -1.0) == 0.0
    assert pl.rigid_preload_after_growth(f_0, k_a, k_b, 0.0) == pytest.approx(f_0)


def test_axial_play_grows_with_clearance_and_with_the_groove():
    g = np.linspace(0.0, 0.03, 40)
    assert np.all(np.diff(pl.axial_play(g, 0.2)) > 0)
    assert np.all(pl.axial_play(g[1:], 0.3) > pl.axial_play(g[1:], 0.2))
    alpha = np.arccos(1 - 0.01 / 0.4)
    assert pl.axial_play(0.01, 0.2) == pytest.approx(0.4 * np.sin(alpha))
    with pytest.raises(ValueError, match="twice the groove distance"):
        pl.axial_play(0.5, 0.2)
