"""Radial internal clearance after ISO 5753-1, groups C2, CN, C3, C4 and C5.

The table is ``data/internal_clearance.csv``: deep groove ball bearings to a bore of 500 mm, cylindrical roller bearings
with cylindrical bore to 250 mm. Where makers differ (200 to 250 mm) the row keeps the other figure in its note.
"""

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import tables

GROUPS = ("C2", "CN", "C3", "C4", "C5")


@cache
def _ranges() -> dict[tuple[str, str], NDArray[np.float64]]:
    """Bounds, smallest and largest clearance by bearing type and group, shape (4, ranges)."""
    found: dict[tuple[str, str], list[list[float]]] = {}
    for row in tables.rows("internal_clearance"):
        cells = [float(row[name]) for name in ("over_mm", "incl_mm", "min_um", "max_um")]
        found.setdefault((row["bearing_type"], row["group"]), []).append(cells)
    return {key: np.array(rows).T for key, rows in found.items()}


def radial_clearance_or_nan(
    group: ArrayLike | tables.Coded,
    bore_diameter: ArrayLike,
    bearing_type: ArrayLike | tables.Coded = "deep groove ball",
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Radial clearance as in :func:`radial_clearance`, NaN where the table has none."""
    word, kind = tables.coded(group), tables.coded(bearing_type)
    groups, kinds, bore = np.broadcast_arrays(word.code, kind.code, np.asarray(bore_diameter, dtype=np.float64))
    found = np.full((2, *bore.shape), np.nan)
    for (known_type, known_group), (over, incl, *ends) in _ranges().items():
        if known_type in kind.known and known_group in word.known:
            chosen = (groups == word.known.index(known_group)) & (kinds == kind.known.index(known_type))
            if chosen.any():
                found[:, chosen] = tables.in_ranges(over, incl, ends, bore[chosen])
    return found[0], found[1]


def radial_clearance(
    group: ArrayLike, bore_diameter: ArrayLike, bearing_type: ArrayLike = "deep groove ball"
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Radial internal clearance of the bearing before mounting.

    Parameters
    ----------
    group : array_like of str
        ``"C2"``, ``"CN"``, ``"C3"``, ``"C4"`` or ``"C5"``.
    bore_diameter : array_like
        Nominal bore d in mm. C4 and C5 of deep groove ball bearings begin above 6 mm.
    bearing_type : array_like of str, optional
        ``"deep groove ball"`` or ``"cylindrical roller"``; other types have no group here.

    Returns
    -------
    smallest, largest : ndarray
        Clearance in um, broadcast over the arguments; NaN where one of them is missing.

    Raises
    ------
    ValueError
        If group, bore and type are not in the table.

    Notes
    -----
    ISO 5753-1:2009, by way of the sources named in the data table; C5 of cylindrical roller
    bearings is from memory of the standard.

    Examples
    --------
    >>> smallest, largest = radial_clearance(["CN", "C3"], 25.0)
    >>> smallest.tolist(), largest.tolist()
    ([5.0, 13.0], [20.0, 28.0])
    """
    smallest, largest = radial_clearance_or_nan(group, bore_diameter, bearing_type)
    given = (
        (tables.words(group) != "")
        & (tables.words(bearing_type) != "")
        & ~np.isnan(np.asarray(bore_diameter, dtype=np.float64))
    )
    tables.refuse(
        np.isnan(smallest) & given,
        "expected C2, CN, C3, C4 or C5 and a bore over 0 up to 500 mm for a deep groove ball bearing "
        "(C4 and C5 over 6 mm), up to 250 mm for a cylindrical roller bearing",
        group=group,
        bore_diameter=bore_diameter,
        bearing_type=bearing_type,
    )
    return smallest, largest
