"""Preload springs: helical compression, wave and disc springs, and stacks of them.

Lengths and deflections in mm, forces in N, rates in N/mm, stresses and moduli in MPa. Every function broadcasts;
NaN in, NaN out.

Sources
-------
[EN 13906-1] helical springs, and Shigley, Mechanical Engineering Design, 10th ed. chapter 10. [WS] single-turn wave
spring symbols and K table, wavesprings.vip/spring-design/single-turn.html; its two equations from memory of the
trade's published form. [WW] wave-washer stress, engineersedge.com/calculators/wave_washer_design_16107.htm.
[DIN 2092] disc springs, now DIN EN 16984 (Almen and László), from memory; symbols as published by Mubea.
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain

Array = NDArray[np.float64]

BUCKLING_CONSTANT_STEEL = 2.63
"""Absolute-stability constant of steel helical springs (Shigley 10th ed. eq 10-13)."""

WAVE_FACTORS = ((2.0, 3.88), (4.5, 2.90), (7.0, 2.30), (10.0, 2.13))
"""Multiple-wave factor K from so many waves on [WS]: 2-4, 4.5-6.5, 7-9.5, 10 and more."""


def _spring_index(mean_coil_diameter: ArrayLike, wire_diameter: ArrayLike) -> Array:
    big_d, d = (
        domain.positive("mean_coil_diameter", mean_coil_diameter),
        domain.positive("wire_diameter", wire_diameter),
    )
    c = big_d / d
    if np.any(c <= 1.0):
        raise ValueError(f"mean_coil_diameter/wire_diameter = {c[c <= 1.0].flat[0]:g}: expected more than 1")
    return c


# ---------------------------------------------------------------------------------------------- helical springs


def helical_rate(
    wire_diameter: ArrayLike, mean_coil_diameter: ArrayLike, active_coils: ArrayLike, shear_modulus: ArrayLike
) -> Array:
    """Rate of a helical compression spring of round wire, N/mm: G d^4/(8 D^3 n) [EN 13906-1; Shigley eq 10-9].

    Diameters in mm (D > d), active coils > 0, shear modulus in MPa.
    """
    _spring_index(mean_coil_diameter, wire_diameter)
    d, big_d = np.asarray(wire_diameter, dtype=np.float64), np.asarray(mean_coil_diameter, dtype=np.float64)
    return (
        domain.positive("shear_modulus", shear_modulus)
        * d**4
        / (8.0 * big_d**3 * domain.positive("active_coils", active_coils))
    )


def helical_solid_length(wire_diameter: ArrayLike, total_coils: ArrayLike, end_allowance: ArrayLike = 0.0) -> Array:
    """Length of a helical spring pressed solid, mm: (n_t + allowance) d.

    ``end_allowance`` in coils: 0 for ground ends, 1.5 for closed ends left unground (from memory of EN 13906-1).
    """
    coils = domain.positive("total_coils", total_coils) + domain.positive(
        "end_allowance", end_allowance, zero_allowed=True
    )
    return coils * domain.positive("wire_diameter", wire_diameter)


def wahl_factor(mean_coil_diameter: ArrayLike, wire_diameter: ArrayLike) -> Array:
    """Stress correction (4 c - 1)/(4 c - 4) + 0.615/c with c = D/d (Wahl; Shigley eq 10-4)."""
    c = _spring_index(mean_coil_diameter, wire_diameter)
    return (4.0 * c - 1.0) / (4.0 * c - 4.0) + 0.615 / c


def bergstraesser_factor(mean_coil_diameter: ArrayLike, wire_diameter: ArrayLike) -> Array:
    """Stress correction (4 c + 2)/(4 c - 3) with c = D/d (Bergsträsser; Shigley eq 10-5)."""
    c = _spring_index(mean_coil_diameter, wire_diameter)
    return (4.0 * c + 2.0) / (4.0 * c - 3.0)


def helical_stress(
    force: ArrayLike, wire_diameter: ArrayLike, mean_coil_diameter: ArrayLike, correction: ArrayLike
) -> Array:
    """Shear stress of the wire, MPa: k 8 F D/(pi d^3), with k from one of the two correction factors."""
    _spring_index(mean_coil_diameter, wire_diameter)
    d, big_d = np.asarray(wire_diameter, dtype=np.float64), np.asarray(mean_coil_diameter, dtype=np.float64)
    k = np.asarray(correction, dtype=np.float64)
    return k * 8.0 * np.asarray(force, dtype=np.float64) * big_d / (np.pi * d**3)


def helical_force_at_stress(
    stress: ArrayLike, wire_diameter: ArrayLike, mean_coil_diameter: ArrayLike, correction: ArrayLike
) -> Array:
    """Force at which the wire reaches a shear stress, N (inverse of ``helical_stress``)."""
    return np.asarray(stress, dtype=np.float64) / helical_stress(1.0, wire_diameter, mean_coil_diameter, correction)


def wire_strength(wire_diameter: ArrayLike, strength_constant: ArrayLike, strength_exponent: ArrayLike) -> Array:
    """Tensile strength of drawn wire A/d^m, MPa (Shigley eq 10-14); A in MPa mm^m, both from the wire's table."""
    d, a = domain.positive("wire_diameter", wire_diameter), domain.positive("strength_constant", strength_constant)
    return a / d ** np.asarray(strength_exponent, dtype=np.float64)


def helical_buckling_length(
    mean_coil_diameter: ArrayLike, end_condition: ArrayLike, stability_constant: ArrayLike = BUCKLING_CONSTANT_STEEL
) -> Array:
    """Free length below which a helical spring cannot buckle, mm: constant D/alpha (Shigley eq 10-12, 10-13).

    ``end_condition`` alpha is 0.5 between parallel plates, 2 with one end free.
    """
    alpha = domain.positive("end_condition", end_condition)
    return (
        np.asarray(stability_constant, dtype=np.float64)
        * domain.positive("mean_coil_diameter", mean_coil_diameter)
        / alpha
    )


# ------------------------------------------------------------------------------------------------- wave springs


def wave_factor(waves: ArrayLike) -> Array:
    """Multiple-wave factor K by number of waves per turn, in steps of a half, 2 or more [WS]."""
    n = np.asarray(waves, dtype=np.float64)
    bad = (n < 2.0) | (n * 2.0 != np.round(n * 2.0))
    if np.any(bad & ~np.isnan(n)):
        raise ValueError(f"waves = {n[bad & ~np.isnan(n)].flat[0]:g}: expected 2 or more in steps of one half")
    starts, factors = np.array(WAVE_FACTORS).T
    return np.where(np.isnan(n), np.nan, factors[np.maximum(np.searchsorted(starts, n, side="right") - 1, 0) % 4])


def _wave(
    outside: ArrayLike, inside: ArrayLike, thickness: ArrayLike, waves: ArrayLike
) -> tuple[Array, Array, Array, Array]:
    """Mean diameter, radial wall, thickness and waves, checked."""
    od, bore = np.broadcast_arrays(np.asarray(outside, dtype=np.float64), domain.positive("inside_diameter", inside))
    if np.any(od <= bore):
        raise ValueError(f"outside_diameter = {od[od <= bore].flat[0]:g}: expected more than the inside diameter")
    return (
        (od + bore) / 2.0,
        (od - bore) / 2.0,
        domain.positive("thickness", thickness),
        np.asarray(waves, dtype=np.float64),
    )


def wave_rate(
    outside_diameter: ArrayLike,
    inside_diameter: ArrayLike,
    thickness: ArrayLike,
    waves: ArrayLike,
    elastic_modulus: ArrayLike,
    turns: ArrayLike = 1.0,
) -> Array:
    """Rate of a wave spring of flat wire, N/mm, E b t^3 N^4/(K D_m^3 Z) OD/ID [WS].

    Parameters
    ----------
    outside_diameter, inside_diameter : array_like
        mm, free.
    thickness : array_like
        mm.
    waves : array_like
        Waves per turn N, 2 or more.
    elastic_modulus : array_like
        MPa.
    turns : array_like
        Turns Z crest to crest.

    Returns
    -------
    ndarray
        N/mm, with b the radial wall and D_m the mean diameter.

    Raises
    ------
    ValueError
        If the ring has no wall, a size is not positive, or there are fewer than two waves.
    """
    k = wave_factor(waves)
    d_m, b, t, n = _wave(outside_diameter, inside_diameter, thickness, waves)
    ratio = np.asarray(outside_diameter, dtype=np.float64) / np.asarray(inside_diameter, dtype=np.float64)
    return (
        domain.positive("elastic_modulus", elastic_modulus)
        * b
        * t**3
        * n**4
        * ratio
        / (k * d_m**3 * domain.positive("turns", turns))
    )


def wave_stress(
    force: ArrayLike, outside_diameter: ArrayLike, inside_diameter: ArrayLike, thickness: ArrayLike, waves: ArrayLike
) -> Array:
    """Bending stress of a wave spring under load, MPa: 3 pi P D_m/(4 b t^2 N^2) [WS]; arguments as ``wave_rate``."""
    wave_factor(waves)
    d_m, b, t, n = _wave(outside_diameter, inside_diameter, thickness, waves)
    return 3.0 * np.pi * np.asarray(force, dtype=np.float64) * d_m / (4.0 * b * t**2 * n**2)


def wave_washer_stress(
    deflection: ArrayLike,
    outside_diameter: ArrayLike,
    inside_diameter: ArrayLike,
    thickness: ArrayLike,
    waves: ArrayLike,
    elastic_modulus: ArrayLike,
) -> Array:
    """Bending stress of a wave washer from its deflection, MPa: 0.3 pi E f t N^2/D_m^2 [WW]."""
    wave_factor(waves)
    d_m, _, t, n = _wave(outside_diameter, inside_diameter, thickness, waves)
    f = np.asarray(deflection, dtype=np.float64)
    return 0.3 * np.pi * domain.positive("elastic_modulus", elastic_modulus) * f * t * n**2 / d_m**2


# ------------------------------------------------------------------------------------------------- disc springs


class DiscStress(NamedTuple):
    """Stresses of a disc spring, MPa, tension positive, at the points of DIN 2092."""

    at_om: Array
    at_i: Array
    at_ii: Array
    at_iii: Array
    at_iv: Array


def _disc_factors(outside: ArrayLike, inside: ArrayLike) -> tuple[Array, Array, Array, Array]:
    """Diameter ratio and K1, K2, K3."""
    d_e, d_i = np.broadcast_arrays(np.asarray(outside, dtype=np.float64), domain.positive("inside_diameter", inside))
    if np.any(d_e <= d_i):
        raise ValueError(f"outside_diameter = {d_e[d_e <= d_i].flat[0]:g}: expected more than the inside diameter")
    delta = d_e / d_i
    log = np.log(delta)
    k_1 = ((delta - 1.0) / delta) ** 2 / ((delta + 1.0) / (delta - 1.0) - 2.0 / log) / np.pi
    k_2 = 6.0 / np.pi * ((delta - 1.0) / log - 1.0) / log
    k_3 = 3.0 / np.pi * (delta - 1.0) / log
    return delta, k_1, k_2, k_3


def _disc_state(deflection: ArrayLike, thickness: ArrayLike, cone_height: ArrayLike) -> tuple[Array, Array, Array]:
    """Deflection over thickness, cone height over thickness, thickness; the disc works from free to flat."""
    t, h = domain.positive("thickness", thickness), domain.positive("cone_height", cone_height)
    s = domain.positive("deflection", deflection, zero_allowed=True)
    s, h = np.broadcast_arrays(s, h)
    over = s > h * (1.0 + 1e-12)
    if np.any(over):
        raise ValueError(f"deflection = {s[over].flat[0]:g}: expected at most the cone height {h[over].flat[0]:g}")
    return s / t, h / t, t


def _disc_modulus(elastic_modulus: ArrayLike, poisson_ratio: ArrayLike) -> Array:
    nu = domain.positive("poisson_ratio", poisson_ratio, zero_allowed=True)
    if np.any(nu > 0.5):
        raise ValueError(f"poisson_ratio = {nu[nu > 0.5].flat[0]:g}: expected 0 to 0.5")
    return 4.0 * domain.positive("elastic_modulus", elastic_modulus) / (1.0 - nu**2)


def disc_force(
    deflection: ArrayLike,
    outside_diameter: ArrayLike,
    inside_diameter: ArrayLike,
    thickness: ArrayLike,
    cone_height: ArrayLike,
    elastic_modulus: ArrayLike,
    poisson_ratio: ArrayLike,
    loaded_diameter: ArrayLike | None = None,
) -> Array:
    """Force of one disc spring without contact flats [DIN 2092; Almen and László].

    Parameters
    ----------
    deflection : array_like
        s, mm, from 0 to the cone height.
    outside_diameter, inside_diameter, thickness, cone_height : array_like
        D_e, D_i, t and h_0 = l_0 - t, mm.
    elastic_modulus, poisson_ratio : array_like
        MPa; 0 to 0.5.
    loaded_diameter : array_like, optional
        Diameter of the outer line of load, mm, where it is smaller than the outside diameter (as Machinery's Handbook
        31st ed. p. 362 works it); the outside diameter by default.

    Returns
    -------
    ndarray
        N.

    Raises
    ------
    ValueError
        If the deflection goes beyond flat, the disc has no width, or a size is not positive.
    """
    _, k_1, _, _ = _disc_factors(outside_diameter, inside_diameter)
    s, h, t = _disc_state(deflection, thickness, cone_height)
    d_e = domain.positive("loaded_diameter", outside_diameter if loaded_diameter is None else loaded_diameter)
    c = _disc_modulus(elastic_modulus, poisson_ratio) * t**4 / (k_1 * d_e**2)
    return c * s * ((h - s) * (h - s / 2.0) + 1.0)


def disc_rate(
    deflection: ArrayLike,
    outside_diameter: ArrayLike,
    inside_diameter: ArrayLike,
    thickness: ArrayLike,
    cone_height: ArrayLike,
    elastic_modulus: ArrayLike,
    poisson_ratio: ArrayLike,
) -> Array:
    """Slope of the force of one disc, N/mm (derivative of ``disc_force``); negative where the force falls again."""
    _, k_1, _, _ = _disc_factors(outside_diameter, inside_diameter)
    s, h, t = _disc_state(deflection, thickness, cone_height)
    d_e = np.asarray(outside_diameter, dtype=np.float64)
    c = _disc_modulus(elastic_modulus, poisson_ratio) * t**3 / (k_1 * d_e**2)
    return c * (h**2 - 3.0 * h * s + 1.5 * s**2 + 1.0)


def disc_stress(
    deflection: ArrayLike,
    outside_diameter: ArrayLike,
    inside_diameter: ArrayLike,
    thickness: ArrayLike,
    cone_height: ArrayLike,
    elastic_modulus: ArrayLike,
    poisson_ratio: ArrayLike,
) -> DiscStress:
    """Stresses of one disc without contact flats at OM, I, II, III, IV [DIN 2092]; arguments as ``disc_force``."""
    delta, k_1, k_2, k_3 = _disc_factors(outside_diameter, inside_diameter)
    s, h, t = _disc_state(deflection, thickness, cone_height)
    d_e = np.asarray(outside_diameter, dtype=np.float64)
    c = -_disc_modulus(elastic_modulus, poisson_ratio) * t**2 / (k_1 * d_e**2) * s
    mean = h - s / 2.0
    return DiscStress(
        c * 3.0 / np.pi,
        c * (k_2 * mean + k_3),
        c * (k_2 * mean - k_3),
        c * ((k_2 - 2.0 * k_3) * mean - k_3) / delta,
        c * ((k_2 - 2.0 * k_3) * mean + k_3) / delta,
    )


def stack(force: ArrayLike, deflection: ArrayLike, parallel: ArrayLike, series: ArrayLike) -> tuple[Array, Array]:
    """Force (N) and deflection (mm) of a stack of equal springs, friction neglected [DIN 2092].

    ``force`` and ``deflection`` of one spring; ``parallel`` springs nested the same way, ``series`` such packets set
    against each other, both 1 or more.
    """
    n, i = np.asarray(parallel, dtype=np.float64), np.asarray(series, dtype=np.float64)
    for name, count in (("parallel", n), ("series", i)):
        if np.any(count < 1.0):
            raise ValueError(f"{name} = {count[count < 1.0].flat[0]:g}: expected 1 or more")
    return n * np.asarray(force, dtype=np.float64), i * np.asarray(deflection, dtype=np.float64)


def stack_rate(rate: ArrayLike, parallel: ArrayLike, series: ArrayLike) -> Array:
    """Rate of a stack of equal springs from the rate of one, N/mm."""
    force, deflection = stack(rate, 1.0, parallel, series)
    return force / deflection
