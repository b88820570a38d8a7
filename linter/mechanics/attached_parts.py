"""Parts around a bearing: retaining rings and their grooves, locknuts, O-rings, faces out of parallel, bonded rings.

Lengths in mm, forces in N, torques in N m, stresses in MPa, speeds in r/min, angles in mrad. All functions broadcast;
NaN passes. The table of retaining rings is ``data/retaining_rings.csv``, with a source per row; DIN 471 of 52 mm and
DIN 472 of 100 mm are left out, because the open tables have them out of line with their neighbours.
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain, tables

Array = NDArray[np.float64]

#: Groove: factor S q of the printed load at an edge distance of three groove depths (from memory of DIN 471).
GROOVE_FACTOR = 1.2
#: Locknut with dry threads: F = T/(K d); 0.188 to 0.200 over the printed table of 10 to 50 mm bore.
NUT_FACTOR = 0.192


def groove_load(
    seat_diameter: ArrayLike, groove_diameter: ArrayLike, yield_strength: ArrayLike, factor: float = GROOVE_FACTOR
) -> Array:
    """Load of the groove of a retaining ring, F_N = R_e A_N/(S q) with A_N = π/4 |d_1² − d_2²| [N].

    Diameters of seat and groove in mm and yield strength in MPa > 0 (ValueError); for shafts and bores alike. Source:
    DIN 471 and DIN 472 (tables read, formula from memory; it agrees with every read row within 3 %).
    """
    d_1, d_2 = domain.positive("seat diameter", seat_diameter), domain.positive("groove diameter", groove_diameter)
    area = 0.25 * np.pi * np.abs(d_1**2 - d_2**2)
    return np.asarray(domain.positive("yield strength", yield_strength) * area / factor)


def lift_off_speed(groove_diameter: ArrayLike, free_diameter: ArrayLike, radial_width: ArrayLike) -> Array:
    """Speed at which a shaft retaining ring leaves its groove, 37.2·10⁶ b/(d_2 + b)² √((d_2 − d_3)/(d_3 + b)) [r/min].

    Groove diameter d_2, free inside diameter d_3 and radial width b of the ring in mm > 0 (ValueError); 0 where the
    ring has no tension. Source: from memory of DIN 471; −1.3 to +7.8 % off the printed speeds.
    """
    d_2, d_3 = domain.positive("groove diameter", groove_diameter), domain.positive("free diameter", free_diameter)
    b = domain.positive("radial width", radial_width)
    return np.asarray(37.2e6 * b / (d_2 + b) ** 2 * np.sqrt(np.maximum(d_2 - d_3, 0.0) / (d_3 + b)))


class RetainingRing(NamedTuple):
    """A standard retaining ring, arrays of one shape; NaN where the size is not in the table.

    Attributes
    ----------
    groove_diameter, groove_depth, edge_distance : ndarray
        d_2, t and the least distance n from groove to edge [mm].
    ring_load : ndarray
        F_R with a sharp abutting edge [N].
    lift_off : ndarray
        Printed, else computed speed at which a shaft ring lifts off [r/min].
    thickness, groove_width : ndarray
        Thickness s of the ring and the least width m of its groove [mm].
    """

    groove_diameter: Array
    groove_depth: Array
    edge_distance: Array
    ring_load: Array
    lift_off: Array
    thickness: Array
    groove_width: Array


def retaining_ring(diameter: ArrayLike, side: str) -> RetainingRing:
    """The ring of DIN 471 (``shaft``) or DIN 472 (``housing``) for a seat diameter.

    Parameters
    ----------
    diameter
        Of the seat, mm.
    side : str
        ``shaft`` or ``housing``.

    Returns
    -------
    RetainingRing
        NaN for sizes that the table lacks.

    Raises
    ------
    ValueError
        Another side.

    Notes
    -----
    Source: ``data/retaining_rings.csv``.

    """
    if side not in ("shaft", "housing"):
        raise ValueError(f"side must be 'shaft' or 'housing', got {side!r}")
    standard = {"shaft": "DIN 471", "housing": "DIN 472"}[side]
    rows = [row for row in tables.rows("retaining_rings") if row["standard"] == standard]
    sizes = np.array([float(row["d1_mm"]) for row in rows])
    at = np.asarray(diameter, np.float64)
    index = np.minimum(np.searchsorted(sizes, at - 1e-9), len(sizes) - 1)
    hit = np.abs(sizes[index] - at) < 1e-6

    def column(name: str, per: float = 1.0) -> Array:
        values = np.array([tables.number(row[name]) for row in rows]) * per
        return np.where(hit, values[index], np.nan)

    return RetainingRing(
        column("d2_groove_mm"), column("t_mm"), column("n_min_mm"), column("F_R_kN", 1e3), column("n_liftoff_rpm"),
        column("s_mm"), column("m_min_mm"),
    )  # fmt: skip


def nut_force(torque: ArrayLike, bore_diameter: ArrayLike, factor: float = NUT_FACTOR) -> Array:
    """Axial force of a locknut with dry threads, F = T/(K d) [N].

    Torque in N m >= 0, thread diameter in mm > 0 (ValueError). Source: Timken, super precision catalogue, locknut
    torque table after MIL-B-17931 (K = 0.192 keeps every row within 5 %).
    """
    return np.asarray(
        1e3 * domain.not_negative("torque", torque) / (factor * domain.positive("bore diameter", bore_diameter))
    )


def face_tilt(parallelism: ArrayLike, diameter: ArrayLike) -> Array:
    """Tilt of a ring clamped against a face out of parallel, p/D [mrad].

    Parallelism in µm >= 0, diameter of the face in mm > 0 (ValueError); derived.
    """
    return np.asarray(domain.not_negative("parallelism", parallelism) / domain.positive("diameter", diameter))


class ORing(NamedTuple):
    """An O-ring in its groove: squeeze of the cord, fill of the groove, stretch of its inside diameter, all in %."""

    squeeze: Array
    fill: Array
    stretch: Array


def o_ring(
    cord: ArrayLike, gland_depth: ArrayLike, groove_width: ArrayLike, ring_inside: ArrayLike, groove_floor: ArrayLike
) -> ORing:
    """State of an O-ring in a groove, radial and at rest.

    Parameters
    ----------
    cord, gland_depth, groove_width
        Diameter of the cord, radial room and axial room, mm, > 0.
    ring_inside, groove_floor
        Free inside diameter of the O-ring and the diameter that it lies on, mm, > 0.

    Returns
    -------
    ORing
        Of the broadcast shape; NaN passes for each part alone.

    Raises
    ------
    ValueError
        An argument out of range.

    Notes
    -----
    (d_2 − t)/d_2; π d_2²/4 over t b; floor over inside diameter less 1 (derived).

    """
    d_2, t = domain.positive("cord", cord), domain.positive("gland depth", gland_depth)
    b = domain.positive("groove width", groove_width)
    inside, floor = domain.positive("ring inside", ring_inside), domain.positive("groove floor", groove_floor)
    return ORing(100.0 * (d_2 - t) / d_2, 100.0 * 0.25 * np.pi * d_2**2 / (t * b), 100.0 * (floor / inside - 1.0))


def bonded_force(diameter: ArrayLike, length: ArrayLike, shear_strength: ArrayLike, share: ArrayLike = 1.0) -> Array:
    """Axial force of a bonded ring, π d l τ f [N]; f for temperature, ageing and finish. All >= 0 (ValueError)."""
    return np.asarray(
        np.pi
        * domain.not_negative("diameter", diameter)
        * domain.not_negative("length", length)
        * domain.not_negative("shear strength", shear_strength)
        * domain.not_negative("share", share)
    )
