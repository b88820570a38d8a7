"""Shaft on two bearings: influence coefficients, deflection and slope at the bearings.

Lengths in mm, forces in N, couples in N.mm, moduli in MPa, stiffnesses in N/mm, angles in radians.
Positions are measured along the shaft from its left end. A shaft is described by
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

    Returns
    -------
    Shaft
        The arguments as arrays of one common shape of rows.

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


def blocks(rows: int) -> Iterator[slice]:
    """Rows in pieces whose matrices fit into memory."""
    for start in range(0, rows, _BLOCK_ROWS):
        yield slice(start, start + _BLOCK_ROWS)


def flexibility(s: Shaft, position: Array, couple: NDArray[np.bool_]) -> Array:
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


def flat(s: Shaft, *tables: Array) -> tuple[tuple[int, ...], Shaft, list[Array]]:
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
    rows, one, (x, c) = flat(s, x, c)
    result = np.empty((*x.shape, x.shape[-1]))
    for block in blocks(len(x)):
        result[block] = flexibility(Shaft(*(v[block] for v in one)), x[block], c[block] != 0.0)
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
