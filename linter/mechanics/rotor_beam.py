"""Bending critical speeds of a rotor with the gyroscopic effect, by beam elements.

Lengths in mm, masses in kg, moments of inertia in kg.mm2, moduli in MPa, stiffnesses in N/mm, densities in kg/m3,
speeds in r/min. Shafts are those of :mod:`linter.mechanics.shaft`; discs stand on the last axis, rows of a batch are
the axes before it. NaN in, NaN out.

Method: two-node Timoshenko elements with consistent mass and rotary inertia, the gyroscopic matrix being twice the
rotary one; discs as points with their moments of inertia (Friswell, Penny, Garvey and Lees, Dynamics of Rotating
Machines, 2010, chapter 5, from memory; elements of Przemieniecki, from memory). Bearings are equal in all directions
and undamped, so that one bending plane tells all of a whirl whose spin is a fixed multiple of it.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain
from linter.mechanics.rotor_text import Discs
from linter.mechanics.shaft import Shaft, blocks, flat

Array = NDArray[np.float64]

_MOST_PARTS = 8  # elements between two places where anything changes
_NONE = 1e-12  # share of the largest eigenvalue below which there is none


def shear_coefficient(bore_ratio: ArrayLike, poisson_ratio: ArrayLike) -> Array:
    """Shear coefficient of a round section, solid or hollow (Cowper 1966, from memory).

    6 (1 + nu) (1 + m²)²/[(7 + 6 nu)(1 + m²)² + (20 + 12 nu) m²] with m the inside over the outside diameter.
    """
    m2, nu = np.asarray(bore_ratio, dtype=np.float64) ** 2, np.asarray(poisson_ratio, dtype=np.float64)
    whole = (1.0 + m2) ** 2
    found: Array = 6.0 * (1.0 + nu) * whole / ((7.0 + 6.0 * nu) * whole + (20.0 + 12.0 * nu) * m2)
    return found


def rotor_mass(s: Shaft, density: ArrayLike, discs: Discs) -> Array:
    """Mass of shaft and discs together [kg], shape of the rows."""
    area = np.pi / 4.0 * (s.section_diameter**2 - s.section_bore**2)
    own = 1e-9 * np.asarray(density, dtype=np.float64) * (area * s.section_length).sum(axis=-1)
    return own + discs.mass.sum(axis=-1)


def critical_speeds(s: Shaft, density: ArrayLike, discs: Discs, spin_ratio: ArrayLike = 1.0, count: int = 2) -> Array:
    """Speeds of whirl of a rotor whose spin is a fixed multiple of its whirl, lowest first.

    Parameters
    ----------
    s : Shaft
        With finite bearing stiffnesses.
    density : array_like, shape (...)
        Of the shaft, kg/m3.
    discs : Discs
        Arrays of shape (..., discs), mass 0 pads; a place off the shaft is joined to its end rigidly.
    spin_ratio : array_like, shape (...)
        Spin over whirl: 1 for the forward critical speeds that unbalance excites, -1 for the backward ones, 0 for the
        rotor at rest.
    count : int
        How many.

    Returns
    -------
    ndarray, shape (..., count)
        r/min; infinite where there is none (a thin disc may have no further forward one).

    Raises
    ------
    ValueError
        If a stiffness is infinite, or a mass or density negative.
    """
    if np.any(np.isinf(s.stiffness_a) | np.isinf(s.stiffness_b)):
        raise ValueError("bearing stiffness: expected a finite one")
    rho = domain.positive("density", density, zero_allowed=True)[..., np.newaxis]
    domain.positive("mass of a disc", discs.mass, zero_allowed=True)
    spin = np.asarray(spin_ratio, dtype=np.float64)[..., np.newaxis]
    rows, one, tables = flat(s, rho, spin, *(np.atleast_1d(np.asarray(t, dtype=np.float64)) for t in discs))
    found = np.full((len(tables[0]), count), np.nan)
    every = np.concatenate([*one[:3], np.stack(one[3:], axis=-1), *tables], axis=-1)
    known = np.flatnonzero(~np.isnan(every).any(axis=-1))
    if not known.size:
        return found.reshape(*rows, count)
    _, first, same = np.unique(every[known], axis=0, return_index=True, return_inverse=True)  # each rotor once
    each = np.empty((len(first), count))
    for block in blocks(len(first)):
        at = known[first[block]]
        each[block] = _block(Shaft(*(v[at] for v in one)), [t[at] for t in tables], count)
    found[known] = each[same.reshape(-1)]
    return found.reshape(*rows, count)


def _nodes(s: Shaft, row: int, places: Array) -> tuple[Array, Array, Array]:
    """Nodes of one row, outside and inside diameter between them: elements no longer than they are thick, if few."""
    ends = np.cumsum(s.section_length[row])
    total = ends[-1]
    stops = np.concatenate([[0.0], ends, np.minimum([s.bearing_a[row], s.bearing_b[row]], total),
                            np.clip(places, 0.0, total)])  # fmt: skip
    stops = np.sort(stops)
    stops = stops[np.concatenate([[True], np.diff(stops) > 1e-9 * total])]
    section = np.minimum(np.searchsorted(ends, 0.5 * (stops[1:] + stops[:-1])), ends.size - 1)
    outside, inside = s.section_diameter[row][section], s.section_bore[row][section]
    parts = np.clip(np.ceil(np.diff(stops) / outside), 1, _MOST_PARTS).astype(int)
    steps = [np.linspace(a, b, n, endpoint=False) for a, b, n in zip(stops[:-1], stops[1:], parts, strict=True)]
    return np.concatenate([*steps, stops[-1:]]), np.repeat(outside, parts), np.repeat(inside, parts)


def _block(s: Shaft, tables: list[Array], count: int) -> Array:
    """Critical speeds of rows whose matrices fit into memory."""
    rho, spin, position, mass, polar, transverse = tables
    meshes = [_nodes(s, row, position[row]) for row in range(len(rho))]
    most = max(nodes.size for nodes, _, _ in meshes)
    x = np.array([np.pad(nodes, (0, most - nodes.size), mode="edge") for nodes, _, _ in meshes])
    outside, inside = (
        np.array([np.pad(mesh[k], (0, most - 1 - mesh[k].size), mode="edge") for mesh in meshes]) for k in (1, 2)
    )
    stiff, heavy = _elements(x, outside, inside, s, rho, spin)
    rows, freedoms = np.arange(len(x)), 2 * most
    k, m = np.zeros((len(x), freedoms, freedoms)), np.zeros((len(x), freedoms, freedoms))
    for e in range(most - 1):
        k[:, 2 * e : 2 * e + 4, 2 * e : 2 * e + 4] += stiff[:, e]
        m[:, 2 * e : 2 * e + 4, 2 * e : 2 * e + 4] += heavy[:, e]
    used = np.array([nodes.size for nodes, _, _ in meshes])
    spare = np.arange(freedoms) >= 2 * used[:, np.newaxis]
    k[:, np.arange(freedoms), np.arange(freedoms)] += spare

    def node(place: Array) -> NDArray[np.intp]:
        far = np.where(spare[:, ::2], np.inf, np.abs(x - place[:, np.newaxis]))
        return np.asarray(np.argmin(far, axis=-1))

    for bearing, stiffness in ((s.bearing_a, s.stiffness_a), (s.bearing_b, s.stiffness_b)):
        at = 2 * node(bearing)
        k[rows, at, at] += stiffness
    for disc in range(position.shape[-1]):
        near = node(position[:, disc])
        at, arm = 2 * near, position[:, disc] - x[rows, near]
        tons = mass[:, disc] / 1000.0  # N s2/mm
        m[rows, at, at] += tons
        m[rows, at, at + 1] += tons * arm
        m[rows, at + 1, at] += tons * arm
        m[rows, at + 1, at + 1] += tons * arm**2 + (transverse - spin * polar)[:, disc] / 1000.0
    scale = 1.0 / np.sqrt(np.diagonal(k, axis1=-2, axis2=-1))
    both = scale[:, :, np.newaxis] * scale[:, np.newaxis, :]
    pliant = _pliant(k * both, m * both, count)
    with np.errstate(divide="ignore"):
        return 30.0 / np.pi / np.sqrt(np.where(pliant <= _NONE * np.abs(pliant[:, :1]), 0.0, pliant))


def _pliant(k: Array, m: Array, count: int) -> Array:
    """1/omega² of each row, largest first; NaN where the stiffness is too uneven to be told apart from none."""
    try:
        inverse = np.linalg.inv(np.linalg.cholesky(k))
        rising = np.linalg.eigvalsh(inverse @ m @ inverse.swapaxes(-1, -2))
        return np.asarray(rising[:, ::-1][:, :count], dtype=np.float64)
    except np.linalg.LinAlgError:
        if len(k) == 1:
            return np.full((1, count), np.nan)
        return np.concatenate([_pliant(k[row : row + 1], m[row : row + 1], count) for row in range(len(k))])


def _elements(x: Array, outside: Array, inside: Array, s: Shaft, rho: Array, spin: Array) -> tuple[Array, Array]:
    """Stiffness and whirling mass of each element, (rows, elements, 4, 4); those without length are nothing."""
    h = np.diff(x, axis=-1)
    there = h > 0.0
    h = np.where(there, h, 1.0)
    area, moment = np.pi / 4.0 * (outside**2 - inside**2), np.pi / 64.0 * (outside**4 - inside**4)
    modulus, shear = s.elastic_modulus[:, np.newaxis], s.shear_modulus[:, np.newaxis]
    nu = np.where(np.isinf(shear), 0.3, modulus / (2.0 * shear) - 1.0)
    p = 12.0 * modulus * moment / (shear_coefficient(inside / outside, nu) * shear * area * h**2)
    one = np.ones_like(p)
    bend = _symmetric(12.0 * one, 6.0 * h, -12.0 * one, 6.0 * h, (4.0 + p) * h**2, (2.0 - p) * h**2)
    moved = _symmetric(
        312.0 + 588.0 * p + 280.0 * p**2, (44.0 + 77.0 * p + 35.0 * p**2) * h,
        108.0 + 252.0 * p + 140.0 * p**2, -(26.0 + 63.0 * p + 35.0 * p**2) * h,
        (8.0 + 14.0 * p + 7.0 * p**2) * h**2, -(6.0 + 14.0 * p + 7.0 * p**2) * h**2,
    )  # fmt: skip
    turned = _symmetric(
        36.0 * one, (3.0 - 15.0 * p) * h, -36.0 * one, (3.0 - 15.0 * p) * h,
        (4.0 + 5.0 * p + 10.0 * p**2) * h**2, (-1.0 - 5.0 * p + 5.0 * p**2) * h**2,
    )  # fmt: skip
    dense = np.where(there, 1e-12 * rho, 0.0)  # t/mm3
    by_bending = np.where(there, modulus * moment / ((1.0 + p) * h**3), 0.0)
    by_moving, by_turning = dense * area * h / (840.0 * (1.0 + p) ** 2), dense * moment / (30.0 * (1.0 + p) ** 2 * h)
    by_turning = by_turning * (1.0 - 2.0 * spin)
    wide = (..., np.newaxis, np.newaxis)
    return bend * by_bending[wide], moved * by_moving[wide] + turned * by_turning[wide]


def _symmetric(a: Array, b: Array, c: Array, d: Array, e: Array, f: Array) -> Array:
    """[[a, b, c, d], [b, e, -d, f], [c, -d, a, -b], [d, f, -b, e]] on two new last axes."""
    rows = ((a, b, c, d), (b, e, -d, f), (c, -d, a, -b), (d, f, -b, e))
    return np.stack([np.stack(row, axis=-1) for row in rows], axis=-2)
