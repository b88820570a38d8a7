"""Axial preload: spring force under tolerance, thermal change, unloading of a pair, and the window it must stay in.

Lengths in mm, forces in N, rates in N/mm, stresses in MPa, load ratings in N, speeds in r/min, angles in degrees.
Every function broadcasts; NaN in, NaN out. Limit numbers (shares, N per mm, factors) are arguments: they belong to
the rulebook.

Sources
-------
[SKF254] SKF Rolling bearings catalogue p. 254 (deep groove: minimum load, axial load caps). [SKF398] the same p. 398,
399 (angular contact, four-point contact). [SKF-SPRING] SKF, preloading with springs. [SKF-MIN] SKF, requisite minimum
load. [ISO 76] ISO 76:2006, 4200 MPa and Q_max = 5 F_r/(Z cos alpha).
"""

from collections.abc import Callable, Mapping
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain
from linter.mechanics.tolerance_chain import SIGMA_PER_HALF_TOLERANCE, Chain, monte_carlo

Array = NDArray[np.float64]
ForceOfLength = Callable[[Array], Array]

STATIC_CONTACT_STRESS = 4200.0
"""Largest Hertz pressure at the basic static load rating of a radial ball bearing, MPa [ISO 76]."""

_SAMPLES = 65  # lengths at which a force curve is evaluated between two ends
_BLOCK_VALUES = 4_000_000


def _sine(contact_angle: ArrayLike) -> Array:
    alpha = np.asarray(contact_angle, dtype=np.float64)
    bad = (alpha <= 0.0) | (alpha >= 90.0)
    if np.any(bad):
        raise ValueError(f"contact_angle = {alpha[bad].flat[0]:g}: expected between 0 and 90 degrees")
    return np.sin(np.radians(alpha))


# ------------------------------------------------------------------------------------------------- spring force


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


# ----------------------------------------------------------------------------------------------- thermal change


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


# --------------------------------------------------------------------------------------------------- axial play


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
    s = _sine(contact_angle)
    return np.asarray(raceway_radius_growth, dtype=np.float64) * np.sqrt(1.0 - s * s) / s


# --------------------------------------------------------------------------------------------- minimum criteria


def minimum_by_rating(dynamic_rating: ArrayLike, share: ArrayLike) -> Array:
    """Least load as a share of C, N (0.01 C for ball bearings) [SKF-MIN]."""
    return domain.positive("share", share) * domain.positive("dynamic_rating", dynamic_rating)


def minimum_by_bore(bore_diameter: ArrayLike, force_per_bore: ArrayLike) -> Array:
    """Spring preload of small motors k d, N; k in N per mm of bore (5 to 10; 20 at standstill) [SKF-SPRING]."""
    return domain.positive("force_per_bore", force_per_bore) * domain.positive("bore_diameter", bore_diameter)


def minimum_radial_load(
    load_factor: ArrayLike, viscosity: ArrayLike, speed: ArrayLike, mean_diameter: ArrayLike
) -> Array:
    """Least radial load of deep groove bearings and angular contact pairs, N [SKF254, SKF398].

    1000 k_r (nu n/1000)^(2/3) (d_m/100)^2 with k_r from the product table, nu in mm2/s at working temperature, n in
    r/min, d_m = (d + D)/2 in mm.
    """
    flow = domain.positive("viscosity", viscosity, True) * domain.positive("speed", speed, True) / 1000.0
    k_r = domain.positive("load_factor", load_factor, True)
    return 1000.0 * k_r * flow ** (2.0 / 3.0) * (domain.positive("mean_diameter", mean_diameter) / 100.0) ** 2


def minimum_axial_load(load_factor: ArrayLike, speed: ArrayLike) -> Array:
    """Least axial load of single angular contact, four-point and thrust ball bearings, N: 1000 A (n/1000)^2 [SKF398].

    A (kN) from the product table, n in r/min.
    """
    return (
        1000.0 * domain.positive("load_factor", load_factor, True) * (np.asarray(speed, dtype=np.float64) / 1000.0) ** 2
    )


def minimum_axial_load_by_rating(
    load_factor: ArrayLike, static_rating: ArrayLike, speed: ArrayLike, mean_diameter: ArrayLike
) -> Array:
    """Older form of the least axial load, N: k_a (C_0/1000) (n d_m/100 000)^2, taken in kN with C_0 in N.

    From memory of the SKF General Catalogue: k_a 0.9 to 1.9 for angular contact series.
    """
    c_0 = domain.positive("static_rating", static_rating) / 1000.0
    n_dm = np.asarray(speed, dtype=np.float64) * domain.positive("mean_diameter", mean_diameter)
    return 1000.0 * domain.positive("load_factor", load_factor, True) * (c_0 / 1000.0) * (n_dm / 1e5) ** 2


def minimum_against_lift_off(axial_force: ArrayLike, unbalance_force: ArrayLike, factor: ArrayLike) -> Array:
    """Preload that keeps a spring-loaded ring in touch, N: factor times the larger disturbing force.

    ``axial_force`` pulling the ring off its spring (external force, rotor weight on a vertical shaft) and
    ``unbalance_force`` at the bearing, N, both as magnitudes; factor 1.5 is common practice.
    """
    axial = np.abs(np.asarray(axial_force, dtype=np.float64))
    unbalance = np.abs(np.asarray(unbalance_force, dtype=np.float64))
    return domain.positive("factor", factor) * np.maximum(axial, unbalance)


def minimum_for_full_contact(radial_load: ArrayLike, contact_angle: ArrayLike) -> Array:
    """Axial load at which all balls of a bearing just carry under a radial load, N: 5/3 F_r tan(alpha).

    From the load integrals at a load zone of the full circumference, J_r/J_a = 0.6 exactly for F = K delta^1.5
    (derived; Sjövall's integrals). ``contact_angle`` between 0 and 90 degrees.
    """
    s = _sine(contact_angle)
    return domain.positive("radial_load", radial_load, True) * s / np.sqrt(1.0 - s * s) / 0.6


# --------------------------------------------------------------------------------------------- maximum criteria


def maximum_by_static_rating(static_rating: ArrayLike, share: ArrayLike) -> Array:
    """Axial load cap as a share of C_0, N (0.5, or 0.25 for small bores and light series) [SKF254]."""
    return domain.positive("share", share) * domain.positive("static_rating", static_rating)


def contact_stress_estimate(axial_load: ArrayLike, static_rating: ArrayLike, contact_angle: ArrayLike) -> Array:
    """Mean contact stress at the inner ring under pure axial load, from catalogue values only, MPa.

    2/3 of 4200 (F_a/(5 C_0 sin alpha))^(1/3) (derived from [ISO 76]; within 1 % of the full Hertz solution for grooves
    as ISO 76 assumes them, low for wider grooves and for ceramic balls). Loads in N, angle between 0 and 90 degrees.
    """
    ratio = domain.positive("axial_load", axial_load, True) / (
        5.0 * domain.positive("static_rating", static_rating) * _sine(contact_angle)
    )
    return STATIC_CONTACT_STRESS / 1.5 * np.cbrt(ratio)


def maximum_by_contact_stress(mean_stress: ArrayLike, static_rating: ArrayLike, contact_angle: ArrayLike) -> Array:
    """Axial load that brings the mean contact stress to a limit, N (inverse of ``contact_stress_estimate``)."""
    share = (1.5 * domain.positive("mean_stress", mean_stress, True) / STATIC_CONTACT_STRESS) ** 3
    return 5.0 * domain.positive("static_rating", static_rating) * _sine(contact_angle) * share


class Window(NamedTuple):
    """Largest minimum and smallest maximum (N), the name of the criterion behind each, and whether nothing is left."""

    minimum: Array
    minimum_by: NDArray[np.str_]
    maximum: Array
    maximum_by: NDArray[np.str_]
    empty: NDArray[np.bool_]


def window(minima: Mapping[str, ArrayLike], maxima: Mapping[str, ArrayLike]) -> Window:
    """Window of admissible preload from named criteria.

    Parameters
    ----------
    minima, maxima : mapping of str to array_like
        Criteria, N; they broadcast together. NaN means the criterion does not apply to that row.

    Returns
    -------
    Window
        NaN and an empty name on a side without any criterion; ``empty`` where the minimum exceeds the maximum.
    """
    shape = np.broadcast_shapes(*(np.shape(x) for x in (*minima.values(), *maxima.values())))
    low, low_by = _governing(minima, shape, -np.inf, np.argmax)
    high, high_by = _governing(maxima, shape, np.inf, np.argmin)
    return Window(low, low_by, high, high_by, low > high)


def _governing(
    criteria: Mapping[str, ArrayLike], shape: tuple[int, ...], absent: float, pick: Callable[..., NDArray[np.intp]]
) -> tuple[Array, NDArray[np.str_]]:
    names = np.array([*criteria, ""])
    values = [np.broadcast_to(np.asarray(x, dtype=np.float64), shape) for x in criteria.values()]
    table = np.stack([*values, np.full(shape, np.nan)])
    index = pick(np.where(np.isnan(table), absent, table), axis=0)
    none = np.all(np.isnan(table), axis=0)
    value = np.take_along_axis(table, index[np.newaxis], axis=0)[0]
    return np.where(none, np.nan, value), np.where(none, "", names[index])
