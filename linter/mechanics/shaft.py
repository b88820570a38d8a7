"""Shaft on two bearings: deflection, slope at the bearings, and the first bending critical speed.

Lengths in mm, forces in N, couples in N.mm, moduli in MPa, stiffnesses in N/mm, masses in kg, densities in kg/m3,
speeds in r/min, angles in radians. Positions are measured along the shaft from its left end. A shaft is described by
its sections on the last axis (shorter shafts are padded with sections of zero length); rows of a batch are the axes
before it. NaN in, NaN out.

Method: a shaft on two bearings is statically determinate, so displacements follow from products of moment diagrams
(principle of virtual work, Shigley, Mechanical Engineering Design, 8th ed. section 4-8), integrated exactly between
the places where anything changes. Shear is added where a shear modulus is given (Timoshenko). Stress concentration at
steps and the stiffness of fitted rings are neglected.
"""

from collections.abc import Iterator
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain

Array = NDArray[np.float64]

STANDARD_GRAVITY = 9.80665
"""m/s2 (ISO 80000-3)."""
SHEAR_COEFFICIENT_ROUND = 0.886
"""Shear coefficient of a solid round, 6 (1 + nu)/(7 + 6 nu) at nu = 0.3 (Cowper 1966)."""

_BLOCK_ROWS = 512


class Shaft(NamedTuple):
    """Shaft, its bearings and its material; arrays with sections on the last axis, the others one value per row."""

    section_length: Array
    section_diameter: Array
    section_bore: Array
    bearing_a: Array
    bearing_b: Array
    elastic_modulus: Array
    stiffness_a: Array
    stiffness_b: Array
    shear_modulus: Array


def shaft(
    section_length: ArrayLike,
    section_diameter: ArrayLike,
    bearing_a: ArrayLike,
    bearing_b: ArrayLike,
    elastic_modulus: ArrayLike,
    section_bore: ArrayLike = 0.0,
    stiffness_a: ArrayLike = np.inf,
    stiffness_b: ArrayLike = np.inf,
    shear_modulus: ArrayLike = np.inf,
) -> Shaft:
    """Checked shaft on two bearings.

    Parameters
    ----------
    section_length, section_diameter, section_bore : array_like, shape (..., sections)
        mm, from the left end; length >= 0, diameter > bore >= 0.
    bearing_a, bearing_b : array_like, shape (...)
        Positions of the two bearings, mm from the left end, a left of b, both on the shaft.
    elastic_modulus, shear_modulus : array_like, shape (...)
        MPa; an infinite shear modulus leaves shear out.
    stiffness_a, stiffness_b : array_like, shape (...)
        Radial stiffness of each bearing with its seat, N/mm; infinite for a rigid support.

    Raises
    ------
    ValueError
        Outside the ranges above.
    """
    length = np.atleast_1d(domain.positive("section_length", section_length, zero_allowed=True))
    diameter, bore = (
        domain.positive("section_diameter", section_diameter),
        domain.positive("section_bore", section_bore, True),
    )
    length, diameter, bore = np.broadcast_arrays(length, diameter, bore)
    if np.any(bore >= diameter):
        raise ValueError(f"section_bore = {bore[bore >= diameter].flat[0]:g}: expected less than the section diameter")
    rest = np.broadcast_arrays(
        np.asarray(bearing_a, dtype=np.float64),
        np.asarray(bearing_b, dtype=np.float64),
        domain.positive("elastic_modulus", elastic_modulus),
        domain.positive("stiffness_a", stiffness_a),
        domain.positive("stiffness_b", stiffness_b),
        domain.positive("shear_modulus", shear_modulus),
        length.sum(axis=-1),
    )
    a, b, end = rest[0], rest[1], rest[-1]
    if np.any(a < 0.0) or np.any(b > end * (1.0 + 1e-12)) or np.any(a >= b):
        raise ValueError("bearing positions: expected 0 <= bearing_a < bearing_b <= length of the shaft")
    sections = (np.broadcast_to(x, (*a.shape, x.shape[-1])) for x in (length, diameter, bore))
    return Shaft(*sections, *rest[:-1])


def uniform_shaft(
    span: ArrayLike,
    diameter: ArrayLike,
    elastic_modulus: ArrayLike,
    bore: ArrayLike = 0.0,
    overhang_a: ArrayLike = 0.0,
    overhang_b: ArrayLike = 0.0,
    stiffness_a: ArrayLike = np.inf,
    stiffness_b: ArrayLike = np.inf,
    shear_modulus: ArrayLike = np.inf,
) -> Shaft:
    """Shaft of one diameter with a bearing span and overhangs outside bearings A and B, mm (see ``shaft``)."""
    left, right = domain.positive("overhang_a", overhang_a, True), domain.positive("overhang_b", overhang_b, True)
    between = domain.positive("span", span)
    total = (left + between + right)[..., np.newaxis]
    d, d_0 = (
        np.asarray(diameter, dtype=np.float64)[..., np.newaxis],
        np.asarray(bore, dtype=np.float64)[..., np.newaxis],
    )
    b = left + between
    return shaft(total, d, left, b, elastic_modulus, d_0, stiffness_a, stiffness_b, shear_modulus)


def _blocks(rows: int) -> Iterator[slice]:
    for start in range(0, rows, _BLOCK_ROWS):
        yield slice(start, start + _BLOCK_ROWS)


def _flexibility(s: Shaft, position: Array, couple: NDArray[np.bool_]) -> Array:
    """Displacements by unit actions for flat rows: (rows, actions) -> (rows, actions, actions)."""
    ends = np.cumsum(s.section_length, axis=-1)
    total = ends[:, -1:]
    if np.any(position < 0.0) or np.any(position > total * (1.0 + 1e-12)):
        raise ValueError("position on the shaft: expected from 0 to the length of the shaft")
    a, b = s.bearing_a[:, np.newaxis], s.bearing_b[:, np.newaxis]
    nodes = np.sort(np.concatenate([np.zeros_like(total), ends, a, b, position], axis=-1), axis=-1)
    left, h = nodes[:, :-1], np.diff(nodes, axis=-1)
    mid = left + h / 2.0
    index = np.minimum((ends[:, np.newaxis, :] < mid[:, :, np.newaxis]).sum(axis=-1), ends.shape[-1] - 1)
    d = np.take_along_axis(s.section_diameter, index, axis=-1)
    d_0 = np.take_along_axis(s.section_bore, index, axis=-1)
    bending = h * 64.0 / (np.pi * (d**4 - d_0**4) * s.elastic_modulus[:, np.newaxis])
    shearing = h * 4.0 / (np.pi * (d**2 - d_0**2) * SHEAR_COEFFICIENT_ROUND * s.shear_modulus[:, np.newaxis])

    span = b - a
    at_a = np.where(couple, 1.0 / span, -(b - position) / span)  # reactions on the shaft, in the direction of y
    at_b = np.where(couple, -1.0 / span, -(position - a) / span)
    x, m = left[:, np.newaxis, :], mid[:, np.newaxis, :]
    p, r_a, r_b = position[:, :, np.newaxis], at_a[:, :, np.newaxis], at_b[:, :, np.newaxis]
    past_a, past_b, past_p = m > a[:, :, np.newaxis], m > b[:, :, np.newaxis], m > p
    force = ~couple[..., np.newaxis]
    shear = r_a * past_a + r_b * past_b + (past_p & force)
    arm_a, arm_b = x - a[:, :, np.newaxis], x - b[:, :, np.newaxis]
    start = r_a * arm_a * past_a + r_b * arm_b * past_b + np.where(force, x - p, -1.0) * past_p
    middle, half = start + shear * h[:, np.newaxis, :] / 2.0, shear * h[:, np.newaxis, :] / 2.0

    # integral of two linear diagrams over an interval: product of the middles plus a third of that of the half rises
    result = (middle * bending[:, np.newaxis, :]) @ middle.swapaxes(-1, -2)
    result += (half * bending[:, np.newaxis, :] / 3.0) @ half.swapaxes(-1, -2)
    result += (shear * shearing[:, np.newaxis, :]) @ shear.swapaxes(-1, -2)
    for reaction, stiffness in ((at_a, s.stiffness_a), (at_b, s.stiffness_b)):
        result += reaction[:, :, np.newaxis] * reaction[:, np.newaxis, :] / stiffness[:, np.newaxis, np.newaxis]
    return result


def _flat(s: Shaft, *tables: Array) -> tuple[tuple[int, ...], Shaft, list[Array]]:
    """Rows flattened to one axis: common shape, shaft, and tables with their last axis kept."""
    rows = np.broadcast_shapes(s.bearing_a.shape, *(t.shape[:-1] for t in tables))
    count = int(np.prod(rows, dtype=int))

    def spread(x: Array) -> Array:
        return np.broadcast_to(x, (*rows, x.shape[-1])).reshape(count, x.shape[-1])

    sections = [spread(x) for x in s[:3]]
    singles = [np.broadcast_to(x, rows).reshape(count) for x in s[3:]]
    return rows, Shaft(*sections, *singles), [spread(t) for t in tables]


def influence(s: Shaft, position: ArrayLike, couple: ArrayLike = False) -> Array:
    """Influence coefficients of a shaft.

    Parameters
    ----------
    s : Shaft
        From ``shaft`` or ``uniform_shaft``.
    position : array_like, shape (..., actions)
        Places of unit forces, mm from the left end.
    couple : array_like of bool, shape (..., actions)
        True where the action is a couple (N.mm) and its displacement the slope dy/dx, False for a force.

    Returns
    -------
    ndarray, shape (..., actions, actions)
        Displacement at the first index by a unit action at the second; mm/N, rad/N and rad/(N.mm), symmetric.

    Raises
    ------
    ValueError
        If a place lies off the shaft.
    """
    x = np.atleast_1d(np.asarray(position, dtype=np.float64))
    c = np.asarray(couple, dtype=np.float64)
    x, c = np.broadcast_arrays(x, np.atleast_1d(c))
    rows, one, (x, c) = _flat(s, x, c)
    result = np.empty((*x.shape, x.shape[-1]))
    for block in _blocks(len(x)):
        result[block] = _flexibility(Shaft(*(v[block] for v in one)), x[block], c[block] != 0.0)
    return result.reshape(*rows, *result.shape[1:])


class ShaftState(NamedTuple):
    """Loaded shaft: deflection at the loads (mm), slope at the bearings (rad), reactions on the bearings (N)."""

    deflection: Array
    slope_a: Array
    slope_b: Array
    reaction_a: Array
    reaction_b: Array


def loaded_shaft(s: Shaft, load_position: ArrayLike, load: ArrayLike) -> ShaftState:
    """Deflection and slope of a shaft under point loads in one plane.

    Parameters
    ----------
    s : Shaft
        From ``shaft`` or ``uniform_shaft``.
    load_position, load : array_like, shape (..., loads)
        Places (mm from the left end, also outside the bearings) and forces (N).

    Returns
    -------
    ShaftState
        Deflections have shape (..., loads), the others (...). Deflection and reactions count in the direction of
        positive load, slopes are dy/dx and include the tilt from elastic bearings.

    Raises
    ------
    ValueError
        If a place lies off the shaft.
    """
    x, f = np.broadcast_arrays(np.asarray(load_position, dtype=np.float64), np.asarray(load, dtype=np.float64))
    a, b = s.bearing_a[..., np.newaxis], s.bearing_b[..., np.newaxis]
    rows = np.broadcast_shapes(a.shape[:-1], x.shape[:-1])
    loads = x.shape[-1]
    places = np.concatenate([np.broadcast_to(v, (*rows, v.shape[-1])) for v in (x, a, b)], axis=-1)
    couples = np.arange(loads + 2) >= loads
    matrix = influence(s, places, np.broadcast_to(couples, places.shape))
    moved = (matrix[..., :loads] * f[..., np.newaxis, :]).sum(axis=-1)
    at_b = f * (x - a) / (b - a)
    return ShaftState(
        moved[..., :loads], moved[..., loads], moved[..., loads + 1], (f - at_b).sum(axis=-1), at_b.sum(axis=-1)
    )


# ----------------------------------------------------------------------------------------------- critical speeds


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
    rows, one, (x, m, rho) = _flat(s, x, m, rho)
    result = np.empty(len(x))
    for block in _blocks(len(x)):
        part = Shaft(*(v[block] for v in one))
        own_x, own_m = _own_masses(part, rho[block], points)
        place, mass = np.concatenate([own_x, x[block]], -1), np.concatenate([own_m, m[block]], -1)
        if np.any(mass.sum(axis=-1) <= 0.0):
            raise ValueError("rotor without mass: expected a density or a disc mass more than zero")
        root = np.sqrt(mass)
        matrix = _flexibility(part, place, np.zeros(place.shape, bool)) * root[:, :, np.newaxis] * root[:, np.newaxis]
        known = ~np.isnan(matrix).any(axis=(-2, -1))
        largest = np.linalg.eigvalsh(np.where(known[:, np.newaxis, np.newaxis], matrix, 0.0))[:, -1]
        with np.errstate(divide="ignore"):  # nothing yields: infinite
            result[block] = _speed(1000.0 / np.where(known, np.maximum(largest, 0.0), np.nan))
    return result.reshape(rows)


def _own_masses(s: Shaft, rho: Array, points: int) -> tuple[Array, Array]:
    """Places and masses (kg) that stand for the shaft: Gauss-Legendre points of each section."""
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
