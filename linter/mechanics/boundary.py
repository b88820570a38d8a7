"""Boundary dimensions of radial ball bearings after ISO 15: bore, outside diameter, width, chamfer.

The table is ``data/boundary_dimensions.csv``: the dimension series 618, 619, 60, 62, 63 to a bore of 100 mm, and a part
of 160, 64, 622, 623, 628, 630 and 638 from memory of the standard. A size that is not in it may still be standard.
"""

from functools import cache
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import tables


class _Table(NamedTuple):
    key: NDArray[np.int64]
    chamfer: NDArray[np.float64]
    series: NDArray[np.intp]
    names: tuple[str, ...]


def size_key(bore: ArrayLike, outside: ArrayLike, width: ArrayLike) -> NDArray[np.int64]:
    """One whole number per triple of sizes, in um; negative where a size is missing or not below 1000 mm."""
    sizes = np.broadcast_arrays(*(np.asarray(size, dtype=np.float64) for size in (bore, outside, width)))
    usable = np.logical_and.reduce([(size > 0) & (size < 1000) for size in sizes])
    d, outer, b = (np.rint(np.where(usable, size, 0.0) * 1000.0).astype(np.int64) for size in sizes)
    return np.where(usable, (d * 1_000_000 + outer) * 1_000_000 + b, -1)


@cache
def _table() -> _Table:
    """Sorted keys with the smallest chamfer that the sources print and the series, an index of its names."""
    chamfer: dict[int, float] = {}
    series: dict[int, str] = {}
    for row in tables.rows("boundary_dimensions"):
        key = int(size_key(float(row["bore_mm"]), float(row["outside_diameter_mm"]), float(row["width_mm"])))
        chamfer[key] = min(float(row["rs_min_mm"]), chamfer.get(key, np.inf))
        series.setdefault(key, row["series"])
    keys, names = sorted(chamfer), sorted(set(series.values()))
    places = np.array([names.index(series[k]) for k in keys])
    return _Table(np.array(keys), np.array([chamfer[k] for k in keys]), places, (*names, ""))


def _find(bore: ArrayLike, outside: ArrayLike, width: ArrayLike) -> tuple[NDArray[np.intp], NDArray[np.bool_]]:
    """Index in the table, and whether it is a hit."""
    key = size_key(bore, outside, width)
    at = np.minimum(np.searchsorted(_table().key, key), _table().key.size - 1)
    return at, _table().key[at] == key


def boundary_match(bore_diameter: ArrayLike, outside_diameter: ArrayLike, ring_width: ArrayLike) -> NDArray[np.bool_]:
    """Whether bore, outside diameter and width together are a standard size in the table.

    Parameters
    ----------
    bore_diameter, outside_diameter, ring_width : array_like
        Nominal d, D and B in mm; compared to the nearest 0.001 mm.

    Returns
    -------
    ndarray of bool
        Broadcast over the arguments; False where one of them is NaN.

    Notes
    -----
    ISO 15:2017, by way of the sources named in ``data/boundary_dimensions.csv``.
    """
    return _find(bore_diameter, outside_diameter, ring_width)[1]


def boundary_chamfer(
    bore_diameter: ArrayLike, outside_diameter: ArrayLike, ring_width: ArrayLike
) -> NDArray[np.float64]:
    """Smallest single chamfer r_s min of a standard size.

    Parameters
    ----------
    bore_diameter, outside_diameter, ring_width : array_like
        Nominal d, D and B in mm.

    Returns
    -------
    ndarray
        r_s min in mm, broadcast over the arguments; the smallest that a source prints; NaN where the size is not in the
        table.

    Notes
    -----
    As :func:`boundary_match`.
    """
    at, hit = _find(bore_diameter, outside_diameter, ring_width)
    return np.where(hit, _table().chamfer[at], np.nan)


def dimension_series(bore_diameter: ArrayLike, outside_diameter: ArrayLike, ring_width: ArrayLike) -> NDArray[np.str_]:
    """Dimension series of a standard size, for example ``"62"``; empty where the size is not in the table.

    Parameters
    ----------
    bore_diameter, outside_diameter, ring_width : array_like
        Nominal d, D and B in mm.

    Returns
    -------
    ndarray of str
        Broadcast over the arguments.

    Notes
    -----
    As :func:`boundary_match`; the series is written as in the makers' designations.
    """
    return coded_series(bore_diameter, outside_diameter, ring_width).texts()


def coded_series(bore_diameter: ArrayLike, outside_diameter: ArrayLike, ring_width: ArrayLike) -> tables.Coded:
    """Dimension series as in :func:`dimension_series`, as codes."""
    at, hit = _find(bore_diameter, outside_diameter, ring_width)
    return tables.Coded(_table().names, np.where(hit, _table().series[at], -1))
