"""Thermal speed rating after ISO 15312 and the minimum load of a deep groove bearing.

Lengths in mm, loads in N, viscosities in mm²/s, speeds in r/min. All functions broadcast.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain


def heat_flow(bore_diameter: ArrayLike, outside_diameter: ArrayLike, width: ArrayLike) -> NDArray[np.float64]:
    """Heat a radial bearing gives off at the reference condition of ISO 15312 (50 K above its surroundings) [W].

    q_r A_r with A_r = π B (D + d) and q_r = 0.016 W/mm² up to 50 000 mm², falling with A_r^(−0.34) above (from memory
    of ISO 15312). Sizes in mm, > 0 and bore below outside diameter (ValueError).
    """
    d, big_d = domain.positive("bore diameter", bore_diameter), domain.positive("outside diameter", outside_diameter)
    if np.any(d >= big_d):
        raise ValueError("the bore diameter must be smaller than the outside diameter")
    area = np.pi * domain.positive("width", width) * (d + big_d)
    return np.asarray(0.016 * np.maximum(area / 50_000.0, 1.0) ** -0.34 * area)


def thermal_reference_speed(
    bore_diameter: ArrayLike,
    outside_diameter: ArrayLike,
    width: ArrayLike,
    static_rating: ArrayLike,
    viscous_factor: ArrayLike = 2.0,
    load_factor: ArrayLike = 0.0002,
    viscosity: ArrayLike = 12.0,
) -> NDArray[np.float64]:
    """Speed at which the friction of a radial bearing equals the heat it gives off [r/min].

    Parameters
    ----------
    bore_diameter, outside_diameter, width
        mm, > 0.
    static_rating
        C_0r, N, > 0; the reference load is 0.05 C_0r.
    viscous_factor, load_factor
        f_0r and f_1r, > 0; the defaults hold for deep groove bearings of the light series 62 (from memory of ISO
        15312).
    viscosity
        At 70 degC, mm²/s, > 0; reference 12.

    Returns
    -------
    ndarray
        r/min, of the broadcast shape.

    Raises
    ------
    ValueError
        An argument out of range.

    Notes
    -----
    (π n/30) [1e-7 f_0r (ν n)^(2/3) d_m³ + f_1r P_1r d_m] = 1000 q_r A_r, solved by Newton's method in ln n.
    Source: ISO 15312 (from memory).

    """
    heat = heat_flow(bore_diameter, outside_diameter, width)
    d_m = 0.5 * (np.asarray(bore_diameter, dtype=np.float64) + np.asarray(outside_diameter, dtype=np.float64))
    nu = domain.positive("viscosity", viscosity)
    viscous = 1e-7 * domain.positive("viscous friction factor", viscous_factor) * nu ** (2.0 / 3.0) * d_m**3
    load = (
        domain.positive("load friction factor", load_factor)
        * 0.05
        * domain.positive("static rating", static_rating)
        * d_m
    )
    power = 1000.0 * heat * 30.0 / np.pi
    x = np.log(np.minimum((power / viscous) ** 0.6, power / load))  # from above the root
    for _ in range(50):
        a, b = viscous * np.exp(5.0 / 3.0 * x), load * np.exp(x)
        step = np.log((a + b) / power) * (a + b) / (5.0 / 3.0 * a + b)
        x = x - step
        if not np.any(np.abs(step) > 1e-13):
            break
    return np.asarray(np.exp(x))


def minimum_radial_load(
    factor: ArrayLike, viscosity: ArrayLike, speed: ArrayLike, mean_diameter: ArrayLike
) -> NDArray[np.float64]:
    """Minimum radial load of a deep groove ball bearing, 1000 k_r (ν n/1000)^(2/3) (d_m/100)² [N].

    k_r of the catalogue (0.025 for series 62, from memory), ν in mm²/s at operating temperature, n in r/min, d_m in
    mm; all > 0 (ValueError). Source: SKF Rolling bearings catalogue p. 254.
    """
    nu_n = domain.positive("viscosity", viscosity) * domain.positive("speed", speed) / 1000.0
    size = (domain.positive("mean diameter", mean_diameter) / 100.0) ** 2
    return np.asarray(1000.0 * domain.positive("minimum load factor", factor) * nu_n ** (2.0 / 3.0) * size)
