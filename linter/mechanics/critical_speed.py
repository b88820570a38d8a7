"""First bending critical speed of a rotor on two bearings.

Lengths in mm, masses in kg, moduli in MPa, stiffnesses in N/mm, densities in kg/m3, speeds in r/min. Shafts are those
of :mod:`linter.mechanics.shaft`; discs stand on the last axis, rows of a batch are the axes before it. NaN in, NaN out.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain
from linter.mechanics.balance import STANDARD_GRAVITY
from linter.mechanics.shaft import SHEAR_COEFFICIENT_ROUND, Shaft, blocks, flat, flexibility, influence

Array = NDArray[np.float64]


def _speed(omega_squared: Array) -> Array:
    """r/min from (rad/s)^2; infinite where nothing yields."""
    return np.sqrt(omega_squared) * (30.0 / np.pi)


def rigid_disc_speed(stiffness: ArrayLike, mass: ArrayLike) -> Array:
    """Critical speed of one mass on a massless spring, r/min (Jeffcott rotor); stiffness in N/mm, mass in kg."""
    return _speed(1000.0 * domain.positive("stiffness", stiffness) / domain.positive("mass", mass))


def disc_critical_speed(s: Shaft, position: ArrayLike, mass: ArrayLike, inertia_difference: ArrayLike = 0.0) -> Array:
    """First forward critical speed of one disc on a massless shaft, between the bearings or overhung, r/min.

    Parameters
    ----------
    s : Shaft
        With bearing stiffnesses if they matter.
    position : array_like, shape (...)
        Centre of mass, mm from the left end.
    mass : array_like, shape (...)
        kg.
    inertia_difference : array_like, shape (...)
        Polar less diametral moment of inertia, kg.mm2; 0 leaves the gyroscopic stiffening of a thin disc out, which is
        on the safe side; negative for a long body.

    Returns
    -------
    ndarray
        Synchronous whirl: y = alpha F + beta M, theta = beta F + gamma M, F = m w^2 y, M = -(I_p - I_t) w^2 theta
        (standard rotor dynamics, derived).

    Raises
    ------
    ValueError
        If the mass is not positive or the place lies off the shaft.
    """
    x = np.asarray(position, dtype=np.float64)[..., np.newaxis]
    matrix = influence(s, np.concatenate([x, x], axis=-1), [False, True])
    m = domain.positive("mass", mass) / 1000.0  # N s2/mm
    j = np.asarray(inertia_difference, dtype=np.float64) / 1000.0
    alpha, beta, gamma = matrix[..., 0, 0], matrix[..., 0, 1], matrix[..., 1, 1]
    # (alpha gamma - beta^2) m j w^2 + (alpha m - gamma j) w - 1 = 0 with w = omega^2, smallest positive root
    q = (alpha * gamma - beta**2) * m * j
    p = alpha * m - gamma * j
    root = np.sqrt(np.maximum(p**2 + 4.0 * q, 0.0))
    with np.errstate(divide="ignore"):  # a disc in the plane of a rigid bearing does not whirl: infinite
        return _speed(np.where(j > 0.0, _stable_root(p, q, root), 2.0 / np.maximum(p + root, 0.0)))


def _stable_root(p: Array, q: Array, root: Array) -> Array:
    """Positive root of q w^2 + p w - 1 = 0 for q > 0 without cancellation."""
    down = np.where(p < 0.0, 1.0, p + root)
    safe = np.where(q > 0.0, q, 1.0)
    return np.where(p < 0.0, (root - p) / (2.0 * safe), 2.0 / down)


def rotor_critical_speed(
    s: Shaft,
    density: ArrayLike,
    disc_position: ArrayLike,
    disc_mass: ArrayLike,
    points: int = 6,
) -> Array:
    """First bending critical speed of a shaft with its own mass and discs as points, r/min.

    Parameters
    ----------
    s : Shaft
        With bearing stiffnesses if they matter.
    density : array_like, shape (...)
        Of the shaft, kg/m3; 0 leaves its mass out.
    disc_position, disc_mass : array_like, shape (..., discs)
        mm from the left end and kg; mass 0 pads.
    points : int
        Points per section at which the shaft's mass is gathered (Gauss-Legendre), 1 or more.

    Returns
    -------
    ndarray
        From the largest eigenvalue of flexibility times mass. Six points hold 3e-4 for a shaft of one section, more
        sections hold better. Rotary inertia and gyroscopic stiffening are left out.

    Raises
    ------
    ValueError
        If a density or mass is negative, nothing has mass, or a place lies off the shaft.
    """
    if points < 1:
        raise ValueError(f"points = {points}: expected 1 or more")
    x, m = np.broadcast_arrays(
        np.atleast_1d(np.asarray(disc_position, dtype=np.float64)), domain.positive("disc_mass", disc_mass, True)
    )
    rho = domain.positive("density", density, zero_allowed=True)[..., np.newaxis]
    rows, one, (x, m, rho) = flat(s, x, m, rho)
    result = np.empty(len(x))
    for block in blocks(len(x)):
        part = Shaft(*(v[block] for v in one))
        own_x, own_m = own_masses(part, rho[block], points)
        place, mass = np.concatenate([own_x, x[block]], -1), np.concatenate([own_m, m[block]], -1)
        if np.any(mass.sum(axis=-1) <= 0.0):
            raise ValueError("rotor without mass: expected a density or a disc mass more than zero")
        root = np.sqrt(mass)
        matrix = flexibility(part, place, np.zeros(place.shape, bool)) * root[:, :, np.newaxis] * root[:, np.newaxis]
        known = ~np.isnan(matrix).any(axis=(-2, -1))
        largest = np.linalg.eigvalsh(np.where(known[:, np.newaxis, np.newaxis], matrix, 0.0))[:, -1]
        with np.errstate(divide="ignore"):  # nothing yields: infinite
            result[block] = _speed(1000.0 / np.where(known, np.maximum(largest, 0.0), np.nan))
    return result.reshape(rows)


def own_masses(s: Shaft, rho: Array, points: int) -> tuple[Array, Array]:
    """Places [mm] and masses [kg] that stand for the shaft, (rows, sections times points): Gauss-Legendre points."""
    place, weight = np.polynomial.legendre.leggauss(points)
    begin = np.cumsum(s.section_length, axis=-1) - s.section_length
    x = begin[..., np.newaxis] + s.section_length[..., np.newaxis] * (1.0 + place) / 2.0
    area = np.pi / 4.0 * (s.section_diameter**2 - s.section_bore**2)
    mass = (1e-9 * rho * area * s.section_length)[..., np.newaxis] * weight / 2.0
    return x.reshape(len(x), -1), mass.reshape(len(x), -1)


def uniform_shaft_critical_speed(
    span: ArrayLike,
    diameter: ArrayLike,
    elastic_modulus: ArrayLike,
    density: ArrayLike,
    bore: ArrayLike = 0.0,
    shear_modulus: ArrayLike = np.inf,
    rotary_inertia: bool = False,
) -> Array:
    """First bending frequency of a uniform shaft on two rigid bearings at its ends, r/min.

    Parameters
    ----------
    span, diameter, bore : array_like
        mm.
    elastic_modulus, shear_modulus : array_like
        MPa; an infinite shear modulus leaves shear out (Euler-Bernoulli).
    density : array_like
        kg/m3.
    rotary_inertia : bool
        With the rotary inertia of the cross-section (Timoshenko), as a beam that does not turn.

    Returns
    -------
    ndarray
        Smaller root of w^4 rho r^2/(kappa G) - w^2 [1 + b^2 r^2 (1 + E/(kappa G))] + b^4 E I/(rho A) = 0, b = pi/L,
        r^2 = I/A (Timoshenko); for a hollow section the shear coefficient of the solid round is kept.

    Raises
    ------
    ValueError
        If a size, modulus or the density is not positive, or the bore is not smaller than the diameter.
    """
    d, d_0 = domain.positive("diameter", diameter), domain.positive("bore", bore, zero_allowed=True)
    if np.any(d_0 >= d):
        raise ValueError("bore: expected less than the diameter")
    e, rho = domain.positive("elastic_modulus", elastic_modulus), domain.positive("density", density) * 1e-12
    kg = SHEAR_COEFFICIENT_ROUND * domain.positive("shear_modulus", shear_modulus)
    r2, b2 = (d**2 + d_0**2) / 16.0, (np.pi / domain.positive("span", span)) ** 2
    inertia = 1.0 if rotary_inertia else 0.0
    quadratic = inertia * rho * r2 / kg
    linear = 1.0 + b2 * r2 * (inertia + e / kg)
    constant = b2**2 * e * r2 / rho
    # smaller root of q w^2 - l w + c = 0, written so that q = 0 is no special case
    return _speed(2.0 * constant / (linear + np.sqrt(linear**2 - 4.0 * quadratic * constant)))


def rayleigh_critical_speed(weight: ArrayLike, deflection: ArrayLike) -> Array:
    """Rayleigh estimate from weights and the deflections they cause together, r/min; masses on the last axis.

    sqrt(g sum(w y)/sum(w y^2)); weights in any unit, deflections in mm, both in the same direction. Never below the
    true first critical speed of the same masses (Shigley 9th ed. eq 7-23).
    """
    w, y = domain.positive("weight", weight, zero_allowed=True), np.abs(np.asarray(deflection, dtype=np.float64))
    return _speed(1000.0 * STANDARD_GRAVITY * (w * y).sum(axis=-1) / (w * y * y).sum(axis=-1))


def dunkerley_critical_speed(partial_speed: ArrayLike) -> Array:
    """Dunkerley estimate from the critical speeds of each mass or the shaft alone, r/min; parts on the last axis.

    1/n^2 = sum 1/n_i^2; never above the true first critical speed (Shigley 9th ed. eq 7-32). An infinite part adds
    nothing.
    """
    return 1.0 / np.sqrt((1.0 / domain.positive("partial_speed", partial_speed) ** 2).sum(axis=-1))
