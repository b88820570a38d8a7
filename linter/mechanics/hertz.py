"""Hertz contact of a ball with a ring, and of any two bodies with parallel principal axes.

Lengths in mm, loads in N, moduli and pressures in MPa, angles in degrees. All functions broadcast.

The ellipse is found from the ratio of the two relative curvatures. With q = 1/k² for the ellipticity k = a/b the
relation ρx/ρy = (k² E − K)/(K − E) between the curvatures and the complete elliptic integrals turns into
ρx/ρy = B/(q D) with B = (E − qK)/m and D = (K − E)/m, which do not lose digits near the circle (derived).
"""

from functools import cache
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain
from linter.mechanics.elliptic import complete


class Ellipse(NamedTuple):
    """Shape of a contact: ellipticity k = a/b (>= 1) and the complete integrals of modulus² 1 − 1/k²."""

    ellipticity: NDArray[np.float64]
    first_integral: NDArray[np.float64]
    second_integral: NDArray[np.float64]


class PointContact(NamedTuple):
    """Loaded contact: semi-axes and approach in mm, pressures in MPa; all of the broadcast shape."""

    semi_major: NDArray[np.float64]
    semi_minor: NDArray[np.float64]
    peak_pressure: NDArray[np.float64]
    mean_pressure: NDArray[np.float64]
    approach: NDArray[np.float64]


def effective_modulus(
    modulus_1: ArrayLike, poisson_1: ArrayLike, modulus_2: ArrayLike, poisson_2: ArrayLike
) -> NDArray[np.float64]:
    """Effective modulus E' of two bodies in contact, 2/E' = (1 − ν1²)/E1 + (1 − ν2²)/E2 [MPa].

    Parameters
    ----------
    modulus_1, modulus_2
        Young's modulus of each body, MPa, > 0; shapes broadcast.
    poisson_1, poisson_2
        Poisson's ratio of each body, −1 < ν <= 0.5.

    Returns
    -------
    Effective modulus, MPa; E/(1 − ν²) for two bodies of one material.

    Raises
    ------
    ValueError
        Modulus not positive or Poisson's ratio outside (−1, 0.5].

    Notes
    -----
    Source: convention of Hamrock, Fundamentals of Fluid Film Lubrication (NASA RP-1255).

    """
    e_1, e_2 = domain.positive("Young's modulus", modulus_1), domain.positive("Young's modulus", modulus_2)
    nu_1, nu_2 = np.asarray(poisson_1, dtype=np.float64), np.asarray(poisson_2, dtype=np.float64)
    for nu in (nu_1, nu_2):
        if np.any((nu <= -1.0) | (nu > 0.5)):
            raise ValueError(f"Poisson's ratio must lie in (-1, 0.5], got {nu.tolist()!r}")
    return np.asarray(2.0 / ((1.0 - nu_1**2) / e_1 + (1.0 - nu_2**2) / e_2))


def race_curvatures(
    ball_diameter: ArrayLike,
    pitch_diameter: ArrayLike,
    contact_angle: ArrayLike,
    groove_ratio: ArrayLike,
    race: str,
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Relative curvatures of a ball in the groove of a ring, along and across the rolling direction [1/mm].

    Parameters
    ----------
    ball_diameter, pitch_diameter
        mm, > 0, ball_diameter·cos(contact_angle) < pitch_diameter; shapes broadcast.
    contact_angle
        deg, −90..90.
    groove_ratio
        Groove radius over ball diameter, > 0.5.
    race
        ``"inner"`` or ``"outer"``.

    Returns
    -------
    (rolling, transverse)
        Sums of the two bodies' curvatures in each principal plane, 1/mm.

    Raises
    ------
    ValueError
        A size out of range, or an unknown race.

    Notes
    -----
    Source: Harris, Rolling Bearing Analysis, chapter on bearing macrogeometry (from memory).

    """
    d_w, d_pw = domain.positive("ball diameter", ball_diameter), domain.positive("pitch diameter", pitch_diameter)
    f = np.asarray(groove_ratio, dtype=np.float64)
    if np.any(f <= 0.5):
        raise ValueError(f"groove radius over ball diameter must be greater than 0.5, got {float(np.nanmin(f))!r}")
    gamma = d_w * np.cos(np.deg2rad(contact_angle)) / d_pw
    if np.any(gamma >= 1.0):
        raise ValueError("ball diameter x cos(contact angle) must be smaller than the pitch diameter")
    if race == "inner":
        ring = gamma / (1.0 - gamma)
    elif race == "outer":
        ring = -gamma / (1.0 + gamma)
    else:
        raise ValueError(f"race must be 'inner' or 'outer', got {race!r}")
    return 2.0 / d_w * (1.0 + ring), np.asarray((2.0 - 1.0 / f) / d_w + 0.0 * ring)


def curvature_difference(curvature_1: ArrayLike, curvature_2: ArrayLike) -> NDArray[np.float64]:
    """Curvature difference F(ρ) = |ρ1 − ρ2| / (ρ1 + ρ2) of two relative curvatures; 0 circle .. 1 line.

    Raises ValueError unless both curvatures are positive. Source: Harris, Rolling Bearing Analysis (from memory).
    """
    r_1, r_2 = domain.positive("relative curvature", curvature_1), domain.positive("relative curvature", curvature_2)
    return np.asarray(np.abs(r_1 - r_2) / (r_1 + r_2))


@cache
def _ellipse_table() -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Logarithms of curvature ratio and ellipticity, close enough to start Newton's method one step from the end."""
    log_k = np.linspace(0.0, 15.5, 4001)
    found = complete(np.exp(-2.0 * log_k))
    return np.log(found.major / found.minor) + 2.0 * log_k, log_k


def contact_ellipse(curvature_ratio: ArrayLike, form: str = "exact") -> Ellipse:
    """Ellipse of contact from the ratio of the larger to the smaller relative curvature.

    Parameters
    ----------
    curvature_ratio
        ρx/ρy = Ry/Rx, 1 <= ratio <= 1e12; any shape.
    form
        ``"exact"`` solves the elliptic integrals (Newton over the array, relative error below 1e-12);
        ``"regression"`` k = 1.0339 r^0.636, E = 1.0003 + 0.5968/r, K = 1.5277 + 0.6023 ln r (Brewe & Hamrock 1977, as
        printed in Stachowiak & Batchelor, Engineering Tribology);
        ``"power"`` k = r^(2/π), E = 1 + (π/2 − 1)/r, K = π/2 + (π/2 − 1) ln r (Hamrock, NASA RP-1255).

    Returns
    -------
    Ellipse
        k, K (first kind) and E (second kind), shape of the argument.

    Raises
    ------
    ValueError
        Ratio out of range, or an unknown form.

    """
    r = np.asarray(curvature_ratio, dtype=np.float64)
    if np.any((r < 1.0) | (r > 1e12)):
        raise ValueError("ratio of the relative curvatures must lie between 1 and 1e12 (larger over smaller)")
    q_half = np.pi / 2.0 - 1.0
    if form == "regression":
        return Ellipse(1.0339 * r**0.636, 1.5277 + 0.6023 * np.log(r), 1.0003 + 0.5968 / r)
    if form == "power":
        return Ellipse(r ** (2.0 / np.pi), np.pi / 2.0 + q_half * np.log(r), 1.0 + q_half / r)
    if form != "exact":
        raise ValueError(f"form must be 'exact', 'regression' or 'power', got {form!r}")

    log_r = np.log(r)
    log_k = np.interp(log_r, *_ellipse_table())
    for _ in range(20):
        q = np.exp(-2.0 * log_k)
        found = complete(q)
        # ρx/ρy = (k² E − K)/(K − E) = (E − qK)/(q (K − E)) = B/(q D)
        residual = np.log(found.major / found.minor) + 2.0 * log_k - log_r
        # d ln r / d ln k = q K/(E − qK) − E/(K − E) + 2
        m = 1.0 - q
        safe = m > 1e-5
        m_safe = np.where(safe, m, 1.0)
        slope = (q * found.first / found.major - found.second / found.minor) / m_safe + 2.0
        step = residual / np.where(safe, slope, 1.5)
        log_k = np.maximum(log_k - step, 0.0)
        if not np.any(np.abs(step) > 3e-6):  # the error after this step is of the order of its square
            break
    q = np.exp(-2.0 * log_k)
    found = complete(q)
    return Ellipse(np.exp(log_k), found.first, found.second)


def point_contact(
    load: ArrayLike,
    curvature_1: ArrayLike,
    curvature_2: ArrayLike,
    modulus: ArrayLike,
    form: str = "exact",
) -> PointContact:
    """Hertz contact under a normal load.

    Parameters
    ----------
    load
        Normal load, N, >= 0; shapes broadcast.
    curvature_1, curvature_2
        Relative curvatures in the two principal planes, 1/mm, > 0, in either order (see `race_curvatures`; for two
        spheres both are 2/d1 + 2/d2, for a plane d = inf).
    modulus
        Effective modulus E', MPa (`effective_modulus`).
    form
        See `contact_ellipse`.

    Returns
    -------
    PointContact
        Semi-axes [mm], peak and mean pressure [MPa], approach [mm].

    Raises
    ------
    ValueError
        Negative load, curvature or modulus not positive.

    Notes
    -----
    a = (6 k² E Q /(π S E'))^(1/3), b = a/k, p = 3Q/(2πab), δ = K [4.5/(E R) (Q/(π k E'))²]^(1/3) with R = 1/S.
    Source: Harris, Rolling Bearing Analysis; Hamrock, NASA RP-1255.

    """
    q = np.asarray(load, dtype=np.float64)
    if np.any(q < 0.0):
        raise ValueError(f"contact load must not be negative, got {float(np.nanmin(q))!r}")
    r_1, r_2 = domain.positive("relative curvature", curvature_1), domain.positive("relative curvature", curvature_2)
    e_prime = domain.positive("effective modulus", modulus)
    k, first, second = contact_ellipse(np.maximum(r_1, r_2) / np.minimum(r_1, r_2), form)
    s = r_1 + r_2
    cube_root = np.cbrt(q / (s * e_prime))
    a = np.cbrt(6.0 * k**2 * second / np.pi) * cube_root
    b = a / k
    peak = 1.5 * np.cbrt(q * (s * e_prime) ** 2) * k / (np.pi * np.cbrt(6.0 * k**2 * second / np.pi) ** 2)
    approach = first * np.cbrt(4.5 * s / second * (q / (np.pi * k * e_prime)) ** 2)
    return PointContact(a, b, peak, 2.0 / 3.0 * peak, approach)


def contact_constant(curvature_1: ArrayLike, curvature_2: ArrayLike, modulus: ArrayLike) -> NDArray[np.float64]:
    """Constant K of the load-deflection law Q = K δ^1.5 of one contact [N/mm^1.5].

    Arguments and errors as `point_contact`; the exact ellipse is used.
    """
    return np.asarray(point_contact(1.0, curvature_1, curvature_2, modulus).approach ** -1.5)


def contact_load(
    peak_pressure: ArrayLike, curvature_1: ArrayLike, curvature_2: ArrayLike, modulus: ArrayLike
) -> NDArray[np.float64]:
    """Load that brings a contact to a given peak pressure [N]; the inverse of `point_contact`.

    ``peak_pressure`` in MPa, >= 0. Other arguments and errors as `point_contact`.
    """
    p = np.asarray(peak_pressure, dtype=np.float64)
    if np.any(p < 0.0):
        raise ValueError(f"peak pressure must not be negative, got {float(np.nanmin(p))!r}")
    return np.asarray((p / point_contact(1.0, curvature_1, curvature_2, modulus).peak_pressure) ** 3)


def axis_shear_ratio(depth_ratio: ArrayLike, poisson: ArrayLike) -> NDArray[np.float64]:
    """Largest shear stress on the axis of a circular contact over the peak pressure.

    Parameters
    ----------
    depth_ratio
        Depth below the surface over the contact radius, z/a > 0.
    poisson
        Poisson's ratio of the body looked at.

    Returns
    -------
    ndarray
        Share of the peak pressure, of the broadcast shape.

    Raises
    ------
    ValueError
        Depth not positive.

    Notes
    -----
    Source: Shigley, Mechanical Engineering Design, contact of spheres (from memory; the classical axis solution).

    """
    z = domain.positive("depth over contact radius", depth_ratio)
    nu = np.asarray(poisson, dtype=np.float64)
    inside = 1.0 / (1.0 + z**2)
    hoop = -((1.0 - z * np.arctan(1.0 / z)) * (1.0 + nu) - 0.5 * inside)
    return np.asarray(0.5 * np.abs(hoop + inside))
