"""What is left of interference and clearance in use: published losses, tolerance bands, mounting temperature.

Lengths in mm throughout, so the makers' formulas printed in micrometres are divided by 1000; forces in N,
temperatures in degC, differences in K. All functions broadcast; NaN in, NaN out.

Sources
-------
[NSK] NSK CAT E1102m section 9.1.2 and eq 9.1, 9.4, 9.5, 9.6. [NTN] NTN technical section 7, eq 7.1, 7.3, 7.4 and
Table 17.4.2 (factors from memory). [JTEKT] JTEKT technical data Table 10-1. [SKF] SKF hollow shafts page.
"""

from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain
from linter.mechanics.normal import normal_cdf

Array = NDArray[np.float64]

FINISHES = ("ground", "turned")
SMOOTHING_RATIO_ALLOWANCE = {"ground": 2.0, "turned": 3.0}
"""k in d/(d + k), mm, by finish of the shaft [NSK eq 9.4, 9.5]."""
SMOOTHING_FIXED_LOSS = {"ground": (0.001, 0.0025), "turned": (0.005, 0.007)}
"""Least and largest fixed loss, mm [NTN eq 7.4]."""
ROUGHNESS_SHARE = 0.8
"""Share of both roughness depths lost, from memory of DIN 7190-1."""


def _by_finish(finish: ArrayLike, ground: float, turned: float) -> Array:
    words = np.asarray(finish)
    known = np.isin(words.astype(str), FINISHES)
    if not np.all(known):
        raise ValueError(f"finish = {words[~known].flat[0]!r}: expected one of {', '.join(FINISHES)}")
    return np.where(words == "turned", turned, ground)


def smoothing_factor(diameter: ArrayLike, finish: ArrayLike) -> Array:
    """Share of the apparent interference that stays after the seat is smoothed, d/(d + k).

    ``diameter`` in mm (> 0), ``finish`` "ground" (k = 2) or "turned" (k = 3) [NSK eq 9.4, 9.5].
    """
    d = domain.positive("diameter", diameter)
    k = _by_finish(finish, SMOOTHING_RATIO_ALLOWANCE["ground"], SMOOTHING_RATIO_ALLOWANCE["turned"])
    return d / (d + k)


def smoothing_fixed_loss(finish: ArrayLike) -> tuple[Array, Array]:
    """Least and largest interference lost by smoothing in the form that ignores the diameter, mm [NTN eq 7.4]."""
    ground, turned = SMOOTHING_FIXED_LOSS["ground"], SMOOTHING_FIXED_LOSS["turned"]
    return _by_finish(finish, ground[0], turned[0]), _by_finish(finish, ground[1], turned[1])


def smoothing_roughness_loss(shaft_roughness_rz: ArrayLike, bore_roughness_rz: ArrayLike) -> Array:
    """Interference lost by smoothing, mm, from the roughness depths Rz in um (from memory of DIN 7190-1)."""
    shaft = domain.positive("shaft_roughness_rz", shaft_roughness_rz, zero_allowed=True)
    bore = domain.positive("bore_roughness_rz", bore_roughness_rz, zero_allowed=True)
    return 1e-3 * ROUGHNESS_SHARE * (shaft + bore)


def load_loosening_light(bore_diameter: ArrayLike, width: ArrayLike, radial_load: ArrayLike) -> Array:
    """Interference an inner ring loses under radial load, mm: 0.08 sqrt(d F_r/B) um [NSK eq 9.1; NTN eq 7.1]."""
    d, b = domain.positive("bore_diameter", bore_diameter), domain.positive("width", width)
    return 0.08e-3 * np.sqrt(d / b * domain.positive("radial_load", radial_load, zero_allowed=True))


def load_loosening_heavy(width: ArrayLike, radial_load: ArrayLike) -> Array:
    """Interference an inner ring needs under heavy radial load, mm: 0.02 F_r/B um [NSK section 9.1.2]."""
    return 0.02e-3 * domain.positive("radial_load", radial_load, zero_allowed=True) / domain.positive("width", width)


def load_loosening(bore_diameter: ArrayLike, width: ArrayLike, radial_load: ArrayLike) -> Array:
    """Larger of the light and the heavy form, mm.

    Makers switch forms at 0.2 to 0.3 C_0r, where the heavy form may ask for less than the light one (they cross at
    F_r = 16 d B, derived); the larger of the two is always safe.
    """
    light = load_loosening_light(bore_diameter, width, radial_load)
    return np.maximum(light, load_loosening_heavy(width, radial_load))


def heat_loosening(
    bore_diameter: ArrayLike, temperature_difference: ArrayLike, share: ArrayLike, expansion: ArrayLike
) -> Array:
    """Interference an inner ring loses by being warmer than its shaft, mm, when only one difference is known.

    Parameters
    ----------
    bore_diameter : array_like
        mm.
    temperature_difference : array_like
        Bearing minus surroundings of the housing, K.
    share : array_like
        Part of that difference found at the seat; 0.10 to 0.15 published, 0.12 behind the printed 0.0015 d dT.
    expansion : array_like
        1/K; 12.5e-6 behind the printed form.

    Returns
    -------
    ndarray
        share * expansion * d * dT [NTN eq 7.3].

    Raises
    ------
    ValueError
        If the diameter is not positive or the share lies outside 0 to 1.
    """
    s = domain.positive("share", share, zero_allowed=True)
    if np.any(s > 1.0):
        raise ValueError(f"share = {s[s > 1.0].flat[0]:g}: expected 0 to 1")
    difference = np.asarray(temperature_difference, dtype=np.float64)
    return s * np.asarray(expansion, dtype=np.float64) * domain.positive("bore_diameter", bore_diameter) * difference


def required_interference(
    bore_diameter: ArrayLike, load_loss: ArrayLike, heat_loss: ArrayLike, finish: ArrayLike
) -> Array:
    """Apparent interference that leaves nothing to spare after smoothing, load and heat, mm (from [NSK] 9.1 to 9.5)."""
    total = np.asarray(load_loss, dtype=np.float64) + np.asarray(heat_loss, dtype=np.float64)
    return total / smoothing_factor(bore_diameter, finish)


def mean_raceway_diameters(
    bore_diameter: ArrayLike, outside_diameter: ArrayLike, rule: Literal["plain", "groove"]
) -> tuple[Array, Array]:
    """Mean groove diameters of the inner and the outer ring of a ball bearing from its boundary dimensions.

    Parameters
    ----------
    bore_diameter, outside_diameter : array_like
        d and D, mm, D > d > 0.
    rule : {"plain", "groove"}
        "plain": 0.2 (4 d + D) and 0.2 (d + 4 D) (from memory of NSK, used with its eq 9.6). "groove": the same with
        1.05 and 0.95 (from memory of NTN Table 17.4.2), about 5 % nearer to the balls.

    Returns
    -------
    inner, outer : ndarray
        mm.

    Raises
    ------
    ValueError
        Unknown rule, or D not larger than d.
    """
    factors = {"plain": (0.2, 0.2), "groove": (1.05 / 5.0, 0.95 / 5.0)}
    if rule not in factors:
        raise ValueError(f"rule = {rule!r}: expected one of {', '.join(factors)}")
    d, big_d = np.broadcast_arrays(domain.positive("bore_diameter", bore_diameter), np.asarray(outside_diameter, float))
    if np.any(big_d <= d):
        at = big_d <= d
        raise ValueError(f"outside_diameter = {big_d[at].flat[0]:g}: expected more than the bore {d[at].flat[0]:g}")
    inner, outer = factors[rule]
    return inner * (4.0 * d + big_d), outer * (d + 4.0 * big_d)


def inner_ring_outside_diameter(bore_diameter: ArrayLike, outside_diameter: ArrayLike, share: ArrayLike) -> Array:
    """Equivalent outside diameter of an inner ring d + k (D - d), mm; k 0.3, or 0.25 for cylindrical roller [SKF]."""
    d = domain.positive("bore_diameter", bore_diameter)
    return d + np.asarray(share, dtype=np.float64) * (np.asarray(outside_diameter, dtype=np.float64) - d)


def hollow_shaft_factor(shaft_bore: ArrayLike, bore_diameter: ArrayLike, ring_outside_diameter: ArrayLike) -> Array:
    """How much more interference a hollow shaft needs for the pressure of a solid one of the same modulus.

    (1 - (d_0/D_i)^2)/(1 - (d_0/d)^2) with 0 <= d_0 < d < D_i, mm (derived from the hollow-shaft pressure of NTN
    Table 17.4.1).
    """
    d_0 = domain.positive("shaft_bore", shaft_bore, zero_allowed=True)
    d, d_i = np.asarray(bore_diameter, dtype=np.float64), np.asarray(ring_outside_diameter, dtype=np.float64)
    if np.any(d_0 >= d) or np.any(d >= d_i):
        raise ValueError("hollow_shaft_factor: expected shaft_bore < bore_diameter < ring_outside_diameter")
    return (1.0 - (d_0 / d_i) ** 2) / (1.0 - (d_0 / d) ** 2)


def fit_interval(
    inner_lower: ArrayLike, inner_upper: ArrayLike, outer_lower: ArrayLike, outer_upper: ArrayLike
) -> tuple[Array, Array]:
    """Least and largest interference from the limits of the inner part (shaft, ring outside) and the outer part's bore.

    Limits or deviations in one unit, lower <= upper; the result is in the same unit, clearance negative (ISO 286-1).
    """
    i_l, i_u = np.asarray(inner_lower, dtype=np.float64), np.asarray(inner_upper, dtype=np.float64)
    o_l, o_u = np.asarray(outer_lower, dtype=np.float64), np.asarray(outer_upper, dtype=np.float64)
    if np.any(i_l > i_u) or np.any(o_l > o_u):
        raise ValueError("fit limits: expected lower <= upper")
    return i_l - o_u, i_u - o_l


def fit_statistical(
    inner_lower: ArrayLike, inner_upper: ArrayLike, outer_lower: ArrayLike, outer_upper: ArrayLike
) -> tuple[Array, Array]:
    """Mean interference and half width of its band by root sum square of the two tolerances (arguments as above)."""
    low, high = fit_interval(inner_lower, inner_upper, outer_lower, outer_upper)
    t_i = np.asarray(inner_upper, dtype=np.float64) - np.asarray(inner_lower, dtype=np.float64)
    t_o = np.asarray(outer_upper, dtype=np.float64) - np.asarray(outer_lower, dtype=np.float64)
    return (low + high) / 2.0, np.hypot(t_i, t_o) / 2.0


def clearance_heat_loss(
    ring_expansion: ArrayLike, inner_hotter_by: ArrayLike, outer_raceway_diameter: ArrayLike
) -> Array:
    """Radial clearance lost because the inner ring and balls are hotter, mm: alpha dT D_e [NSK eq 9.6; NTN eq 8.3]."""
    d_e = domain.positive("outer_raceway_diameter", outer_raceway_diameter)
    return np.asarray(ring_expansion, dtype=np.float64) * np.asarray(inner_hotter_by, dtype=np.float64) * d_e


def clearance_heat_loss_by_part(
    inner_raceway_diameter: ArrayLike,
    outer_raceway_diameter: ArrayLike,
    ball_diameter: ArrayLike,
    ring_expansion: ArrayLike,
    ball_expansion: ArrayLike,
    inner_rise: ArrayLike,
    outer_rise: ArrayLike,
    ball_rise: ArrayLike,
) -> Array:
    """Radial clearance lost by the rise of each part over the drawing temperature, mm [JTEKT Table 10-1].

    alpha (D_i t_i - D_e t_e) + 2 alpha_w D_w t_w, with the balls' own expansion so that ceramic balls are covered.
    """
    d_i, d_e = np.asarray(inner_raceway_diameter, float), np.asarray(outer_raceway_diameter, float)
    t_i, t_e = np.asarray(inner_rise, float), np.asarray(outer_rise, float)
    balls = 2.0 * np.asarray(ball_expansion, float) * np.asarray(ball_diameter, float) * np.asarray(ball_rise, float)
    return np.asarray(ring_expansion, float) * (d_i * t_i - d_e * t_e) + balls


def clearance_in_use(
    initial_clearance: ArrayLike,
    inner_interference: ArrayLike,
    inner_growth_factor: ArrayLike,
    outer_interference: ArrayLike,
    outer_shrink_factor: ArrayLike,
    heat_loss: ArrayLike,
) -> Array:
    """Radial internal clearance left after fitting and warming up, mm; negative is preload [NSK p. A90; JTEKT 10-1000].

    Parameters
    ----------
    initial_clearance : array_like
        mm.
    inner_interference, outer_interference : array_like
        Effective interferences, mm; a loose ring (negative) leaves the clearance alone.
    inner_growth_factor, outer_shrink_factor : array_like
        Raceway change per unit of effective interference (>= 0), from ``press_fit`` or a handbook share.
    heat_loss : array_like
        mm.

    Returns
    -------
    ndarray
        mm, of the broadcast shape.
    """
    f_i = domain.positive("inner_growth_factor", inner_growth_factor, zero_allowed=True)
    f_o = domain.positive("outer_shrink_factor", outer_shrink_factor, zero_allowed=True)
    inner = f_i * np.maximum(np.asarray(inner_interference, dtype=np.float64), 0.0)
    outer = f_o * np.maximum(np.asarray(outer_interference, dtype=np.float64), 0.0)
    return np.asarray(initial_clearance, dtype=np.float64) - inner - outer - np.asarray(heat_loss, dtype=np.float64)


def clearance_interval(
    initial_clearance: tuple[ArrayLike, ArrayLike],
    inner_interference: tuple[ArrayLike, ArrayLike],
    inner_growth_factor: ArrayLike,
    outer_interference: tuple[ArrayLike, ArrayLike],
    outer_shrink_factor: ArrayLike,
    heat_loss: ArrayLike,
) -> tuple[Array, Array]:
    """Tightest and loosest clearance in use, mm, from (least, largest) pairs (see ``clearance_in_use``)."""
    f_i, f_o = inner_growth_factor, outer_shrink_factor
    tight = clearance_in_use(initial_clearance[0], inner_interference[1], f_i, outer_interference[1], f_o, heat_loss)
    loose = clearance_in_use(initial_clearance[1], inner_interference[0], f_i, outer_interference[0], f_o, heat_loss)
    return tight, loose


def _clipped_moments(mean: Array, sigma: Array) -> tuple[Array, Array]:
    """Mean and variance of max(x, 0) for normal x (derived)."""
    safe = np.where(sigma > 0.0, sigma, 1.0)
    z = mean / safe
    density = np.exp(-0.5 * z * z) / np.sqrt(2.0 * np.pi)
    below = normal_cdf(z)
    first = mean * below + safe * density
    second = (mean**2 + safe**2) * below + mean * safe * density
    fixed = np.maximum(mean, 0.0)
    spread = sigma > 0.0
    return np.where(spread, first, fixed), np.where(spread, np.maximum(second - first**2, 0.0), 0.0 * mean)


def clearance_statistical(
    initial_clearance: tuple[ArrayLike, ArrayLike],
    inner_interference: tuple[ArrayLike, ArrayLike],
    inner_growth_factor: ArrayLike,
    outer_interference: tuple[ArrayLike, ArrayLike],
    outer_shrink_factor: ArrayLike,
    heat_loss: ArrayLike,
) -> tuple[Array, Array]:
    """Mean and half width of the statistical band of the clearance in use, mm.

    Parameters
    ----------
    initial_clearance, inner_interference, outer_interference : tuple of array_like
        (mean, half width) each, the half width taken as three standard deviations of a normal value, mm.
    inner_growth_factor, outer_shrink_factor, heat_loss : array_like
        As in ``clearance_in_use``.

    Returns
    -------
    mean, half_width : ndarray
        Half width is again three standard deviations. Where both rings stay tight this is the root sum square of the
        contributions; where a ring is loose in part of the batch the exact moments of the clipped normal are used
        (derived).

    Raises
    ------
    ValueError
        If a half width or a factor is negative.
    """
    f_i = domain.positive("inner_growth_factor", inner_growth_factor, zero_allowed=True)
    f_o = domain.positive("outer_shrink_factor", outer_shrink_factor, zero_allowed=True)
    means: list[Array] = []
    variances: list[Array] = []
    for name, (centre, half), factor in (
        ("inner_interference", inner_interference, f_i),
        ("outer_interference", outer_interference, f_o),
    ):
        m = np.asarray(centre, dtype=np.float64)
        m, s = np.broadcast_arrays(m, domain.positive(f"half width of {name}", half, zero_allowed=True) / 3.0)
        first, variance = _clipped_moments(m, s)
        means.append(factor * first)
        variances.append(factor**2 * variance)
    own = domain.positive("half width of initial_clearance", initial_clearance[1], zero_allowed=True) / 3.0
    start = np.asarray(initial_clearance[0], dtype=np.float64) - np.asarray(heat_loss, dtype=np.float64)
    return start - means[0] - means[1], 3.0 * np.sqrt(own**2 + variances[0] + variances[1])


def mounting_temperature(
    interference: ArrayLike,
    mounting_clearance: ArrayLike,
    diameter: ArrayLike,
    expansion: ArrayLike,
    cold_temperature: ArrayLike,
) -> Array:
    """Temperature to which the outer body is warmed so that it slips over the inner one, degC.

    t + (interference + mounting_clearance)/(alpha d): lengths in mm, ``expansion`` of the warmed body in 1/K,
    ``cold_temperature`` of the other body in degC. A fit that is loose by more than the mounting clearance needs no
    heat (standard expansion).
    """
    d = domain.positive("diameter", diameter)
    need = np.asarray(interference, dtype=np.float64) + domain.positive("mounting_clearance", mounting_clearance, True)
    rise = np.maximum(need, 0.0) / (domain.positive("expansion", expansion) * d)
    return np.asarray(cold_temperature, dtype=np.float64) + rise
