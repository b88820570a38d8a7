"""Axial preload: spring force under tolerance, thermal change, unloading of a pair, and axial play.

Lengths in mm, forces in N, rates in N/mm, angles in degrees. Every function broadcasts; NaN in, NaN out. What a preload
must exceed and stay below is in :mod:`linter.mechanics.preload_bounds`.
"""

from collections.abc import Callable
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain
from linter.mechanics.tolerance_chain import SIGMA_PER_HALF_TOLERANCE, Chain, monte_carlo

Array = NDArray[np.float64]
ForceOfLength = Callable[[Array], Array]

_SAMPLES = 65  # lengths at which a force curve is evaluated between two ends
_BLOCK_VALUES = 4_000_000


def linear_spring_force(length: ArrayLike, rate: ArrayLike, free_length: ArrayLike) -> Array:
    """Force of a linear spring at a length, N: rate (L_0 - L), zero once the spring is free."""
    stroke = np.asarray(free_length, dtype=np.float64) - np.asarray(length, dtype=np.float64)
    return domain.positive("rate", rate) * np.maximum(stroke, 0.0)


def force_band(
    force_of_length: ForceOfLength,
    shortest: ArrayLike,
    longest: ArrayLike,
    tolerance_low: ArrayLike,
    tolerance_high: ArrayLike,
) -> tuple[Array, Array]:
    """Least and largest spring force over a band of installed lengths and the maker's force tolerance, N.

    Parameters
    ----------
    force_of_length : callable
        Nominal force at a length; called once with an array of shape (65, ...) running from shortest to longest, so
        that a disc spring whose force falls again is covered.
    shortest, longest : array_like
        Installed length, mm: the worst case or the root-sum-square band of the chain.
    tolerance_low, tolerance_high : array_like
        Shares taken off and added by the maker's tolerance (0.1 for 10 %), both >= 0.

    Returns
    -------
    least, largest : ndarray
        N. The force tolerance counts in full: all springs of a delivery may lie on the same side.

    Raises
    ------
    ValueError
        If shortest > longest or a tolerance is negative.
    """
    low, high = np.broadcast_arrays(np.asarray(shortest, dtype=np.float64), np.asarray(longest, dtype=np.float64))
    if np.any(low > high):
        raise ValueError(f"shortest = {low[low > high].flat[0]:g}: expected at most the longest length")
    forces = force_of_length(np.linspace(low, high, _SAMPLES))
    less, more = (
        domain.positive("tolerance_low", tolerance_low, True),
        domain.positive("tolerance_high", tolerance_high, True),
    )
    return forces.min(axis=0) * (1.0 - less), forces.max(axis=0) * (1.0 + more)


def spring_share_outside(
    rate: ArrayLike,
    free_length: ArrayLike,
    members: Chain,
    force_tolerance: ArrayLike,
    lowest: ArrayLike,
    highest: ArrayLike,
    draws: int,
    seed: int,
) -> Array:
    """Share of simulated assemblies whose linear spring force lies outside ``lowest..highest``, 0 to 1.

    Parameters
    ----------
    rate, free_length : array_like
        N/mm and mm, one per row or common.
    members : Chain
        Chain(s) of the installed length, members on the last axis.
    force_tolerance : array_like
        Plus-minus share of the force, taken as three standard deviations of a normal factor.
    lowest, highest : array_like
        Limits, N, one per row or common.
    draws, seed : int
        As in ``tolerance_chain.monte_carlo``; the same draws serve every row.

    Returns
    -------
    ndarray
        One share per chain; NaN where force or limits are not known.

    Raises
    ------
    ValueError
        If the rate is not positive, the tolerance negative, or there are no draws.
    """
    rows = members.nominal.shape[:-1]
    tolerance = domain.positive("force_tolerance", force_tolerance, zero_allowed=True)
    given = (domain.positive("rate", rate), free_length, tolerance, lowest, highest)
    columns = [np.broadcast_to(np.asarray(x, dtype=np.float64), rows).reshape(-1, 1) for x in given]
    flat = [part.reshape(-1, part.shape[-1]) for part in members]
    z = np.random.default_rng([seed, 1]).standard_normal(max(draws, 0))
    share = np.empty(len(flat[0]))
    step = max(1, _BLOCK_VALUES // max(draws, 1))
    for start in range(0, len(share), step):
        block = slice(start, start + step)
        k, free, spread, low, high = (column[block] for column in columns)
        length = monte_carlo(Chain(*(part[block] for part in flat)), draws, seed)
        force = linear_spring_force(length, k, free) * (1.0 + spread / SIGMA_PER_HALF_TOLERANCE * z)
        outside = np.mean((force < low) | (force > high), axis=-1)
        share[block] = np.where(np.isnan(force[:, 0] + low[:, 0] + high[:, 0]), np.nan, outside)
    return share.reshape(rows)


def relative_growth(
    span: ArrayLike,
    housing_expansion: ArrayLike,
    housing_rise: ArrayLike,
    shaft_expansion: ArrayLike,
    shaft_rise: ArrayLike,
) -> Array:
    """Growth of the housing over that of the shaft between the two bearings, mm; negative when the shaft wins.

    ``span`` in mm (> 0), expansions in 1/K, rises over the assembly temperature in K.
    """
    housing = np.asarray(housing_expansion, dtype=np.float64) * np.asarray(housing_rise, dtype=np.float64)
    shaft = np.asarray(shaft_expansion, dtype=np.float64) * np.asarray(shaft_rise, dtype=np.float64)
    return domain.positive("span", span) * (housing - shaft)


def pair_stiffness(preload: ArrayLike, stiffness_a: ArrayLike, stiffness_b: ArrayLike) -> Array:
    """Axial stiffness in series of a preloaded pair seen by a growth between its rings, N/mm.

    ``stiffness_a`` and ``stiffness_b`` are K in F = K delta^1.5, N/mm^1.5 (contact angle held). 1.5 F/(delta_a +
    delta_b), derived.
    """
    f = domain.positive("preload", preload)
    return 1.5 * f ** (1.0 / 3.0) / _compliance_sum(stiffness_a, stiffness_b)


def _compliance_sum(stiffness_a: ArrayLike, stiffness_b: ArrayLike) -> Array:
    a, b = domain.positive("stiffness_a", stiffness_a), domain.positive("stiffness_b", stiffness_b)
    return a ** (-2.0 / 3.0) + b ** (-2.0 / 3.0)


def rigid_preload_after_growth(
    preload: ArrayLike, stiffness_a: ArrayLike, stiffness_b: ArrayLike, closing: ArrayLike
) -> Array:
    """Preload of a rigid pair after its rings are pressed together further, N.

    Parameters
    ----------
    preload : array_like
        At assembly, N, >= 0.
    stiffness_a, stiffness_b : array_like
        K of each bearing in F = K delta^1.5, N/mm^1.5.
    closing : array_like
        Change of the offset, mm, positive when it adds preload (the housing outgrowing the shaft of a back-to-back
        pair takes preload away there and adds it face to face: the sign is the caller's).

    Returns
    -------
    ndarray
        N; zero once the pair is loose. Both bearings carry one force: F^(2/3) sum(K^(-2/3)) + closing (derived).
    """
    total = domain.positive("preload", preload, zero_allowed=True) ** (2.0 / 3.0)
    closed = total + np.asarray(closing, dtype=np.float64) / _compliance_sum(stiffness_a, stiffness_b)
    return np.maximum(closed, 0.0) ** 1.5


class LoadedPair(NamedTuple):
    """A preloaded pair under an external axial force: load on each bearing (N) and axial shift (mm)."""

    load_a: Array
    load_b: Array
    shift: Array


def lift_off_force(preload: ArrayLike, stiffness_a: ArrayLike, stiffness_b: ArrayLike) -> Array:
    """External axial force towards bearing a at which bearing b of a rigid pair is unloaded, N.

    K_a (delta_a + delta_b)^1.5 with F = K delta^1.5: 2^1.5 times the preload for equal bearings (derived; the 2.8 of
    the bearing handbooks).
    """
    a, b = domain.positive("stiffness_a", stiffness_a), domain.positive("stiffness_b", stiffness_b)
    return domain.positive("preload", preload, zero_allowed=True) * (1.0 + (a / b) ** (2.0 / 3.0)) ** 1.5


def pair_under_axial_force(
    preload: ArrayLike, stiffness_a: ArrayLike, stiffness_b: ArrayLike, external_force: ArrayLike
) -> LoadedPair:
    """Loads in a rigidly preloaded pair under an external axial force towards bearing a.

    Parameters
    ----------
    preload : array_like
        N, >= 0.
    stiffness_a, stiffness_b : array_like
        K of each bearing in F = K delta^1.5, N/mm^1.5, > 0.
    external_force : array_like
        N; negative pushes towards bearing b.

    Returns
    -------
    LoadedPair
        F_a - F_b = external force, both on their own curves; an unloaded bearing carries zero.

    Raises
    ------
    ValueError
        If the preload is negative or a stiffness is not positive.

    Notes
    -----
    The difference of the two curves rises steadily with the shift, so bisection inside the span where both carry is
    safe; the last steps are Newton's.
    """
    f_0 = domain.positive("preload", preload, zero_allowed=True)
    k_a, k_b = domain.positive("stiffness_a", stiffness_a), domain.positive("stiffness_b", stiffness_b)
    f_0, k_a, k_b, ext = np.broadcast_arrays(f_0, k_a, k_b, np.asarray(external_force, dtype=np.float64))
    d_a, d_b = (f_0 / k_a) ** (2.0 / 3.0), (f_0 / k_b) ** (2.0 / 3.0)
    low, high = -d_a, d_b.copy()
    for _ in range(30):
        x = (low + high) / 2.0
        above = k_a * np.maximum(d_a + x, 0.0) ** 1.5 - k_b * np.maximum(d_b - x, 0.0) ** 1.5 > ext
        high, low = np.where(above, x, high), np.where(above, low, x)
    x = (low + high) / 2.0
    for _ in range(3):
        u, v = np.maximum(d_a + x, 0.0), np.maximum(d_b - x, 0.0)
        slope = 1.5 * (k_a * np.sqrt(u) + k_b * np.sqrt(v))
        step = (k_a * u**1.5 - k_b * v**1.5 - ext) / np.where(slope > 0.0, slope, 1.0)
        x = np.clip(x - step, -d_a, d_b)
    beyond_a = ext >= k_a * (d_a + d_b) ** 1.5
    beyond_b = -ext >= k_b * (d_a + d_b) ** 1.5
    x = np.where(beyond_a, (np.maximum(ext, 0.0) / k_a) ** (2.0 / 3.0) - d_a, x)
    x = np.where(beyond_b, d_b - (np.maximum(-ext, 0.0) / k_b) ** (2.0 / 3.0), x)
    load_a = k_a * np.maximum(d_a + x, 0.0) ** 1.5
    load_b = k_b * np.maximum(d_b - x, 0.0) ** 1.5
    return LoadedPair(load_a, load_b, x)


def axial_play(radial_clearance: ArrayLike, groove_distance: ArrayLike) -> Array:
    """Axial play of a deep groove bearing, mm: 2 A sin(alpha_0) with cos(alpha_0) = 1 - G_r/(2 A).

    ``radial_clearance`` after fitting, mm, 0 to 2 A; ``groove_distance`` A = r_i + r_e - D_w, mm (> 0). Geometry as
    in Harris, Rolling Bearing Analysis, chapter on clearance (from memory).
    """
    a, g = (
        domain.positive("groove_distance", groove_distance),
        domain.positive("radial_clearance", radial_clearance, True),
    )
    if np.any(g > 2.0 * a):
        raise ValueError("radial_clearance: expected at most twice the groove distance")
    return 2.0 * a * np.sqrt(1.0 - (1.0 - g / (2.0 * a)) ** 2)


def axial_play_from_growth(raceway_radius_growth: ArrayLike, contact_angle: ArrayLike) -> Array:
    """Axial movement set free when a raceway grows by a radius change, in the same unit: growth/tan(alpha)."""
    s = domain.contact_sine(contact_angle)
    return np.asarray(raceway_radius_growth, dtype=np.float64) * np.sqrt(1.0 - s * s) / s
