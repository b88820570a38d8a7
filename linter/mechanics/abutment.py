"""Ring chamfers after ISO 582 and what the parts beside the ring owe them: fillets, shoulders, undercuts, roughness.

Every function takes r_s min, the smallest single chamfer dimension of the ring in mm, and gives NaN outside its table;
none of them raises for a size. An r_s min between two standard values is read on the safe side: limits that must stay
below the chamfer (fillet, undercut) at the next smaller standard chamfer, limits that must clear the chamfer (largest
chamfer, shoulder height) at the next larger one. Where published sources differ, the ``..._range`` functions give both
ends, (strict, loose): beyond the loose end every source objects, between the two ends one of them does.
"""

from functools import cache
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain, tables

# Column of data/shoulder_heights.csv by bearing type: the heading of NSK Table 11.2; NTN's general column is for all.
_SHOULDER_COLUMN = {
    "deep groove ball": "deep groove",
    "cylindrical roller": "deep groove",
    "needle roller": "deep groove",
    "angular contact ball": "angular contact",
    "tapered roller": "angular contact",
    "spherical roller": "angular contact",
}
SHOULDER_COLUMNS = ("general", "small axial load", "deep groove", "angular contact")
_CLOSE = 1e-9  # mm; a chamfer this near to a standard value is that value


class Undercut(NamedTuple):
    """Width along the seat, depth below it and corner radius of an undercut, mm."""

    width: NDArray[np.float64]
    depth: NDArray[np.float64]
    radius: NDArray[np.float64]


def _next_smaller(standard: NDArray[np.float64], rs_min: ArrayLike) -> tuple[NDArray[np.intp], NDArray[np.bool_]]:
    """Index of the standard chamfer at or below r_s min, and whether r_s min lies within the table."""
    value = np.asarray(rs_min, dtype=np.float64)
    at = np.searchsorted(standard, value + _CLOSE, side="right") - 1
    return np.maximum(at, 0), (value >= standard[0] - _CLOSE) & (value <= standard[-1] + _CLOSE)


def _next_larger(standard: NDArray[np.float64], rs_min: ArrayLike) -> tuple[NDArray[np.intp], NDArray[np.bool_]]:
    """Index of the standard chamfer at or above r_s min, and whether r_s min lies within the table."""
    value = np.asarray(rs_min, dtype=np.float64)
    at = np.searchsorted(standard, value - _CLOSE, side="left")
    return np.minimum(at, standard.size - 1), (value >= standard[0] - _CLOSE) & (value <= standard[-1] + _CLOSE)


def _by_chamfer(table: str, column: str, where: str = "") -> tuple[NDArray[np.float64], ...]:
    """Standard chamfers with the smallest, the first-listed and the largest value that the sources print for each."""
    values: dict[float, list[tuple[int, float]]] = {}
    for row in tables.rows(table):
        if not where or row["column"] == where:
            weight = len(row["source"].split("; "))
            values.setdefault(float(row["rs_min_mm"]), []).append((weight, float(row[column])))
    standard = np.array(sorted(values))
    low = np.array([min(v for _, v in values[rs]) for rs in standard])
    usual = np.array([max(values[rs], key=lambda pair: pair[0])[1] for rs in standard])
    high = np.array([max(v for _, v in values[rs]) for rs in standard])
    return standard, low, usual, high


@cache
def _chamfers() -> tuple[NDArray[np.float64], tuple[NDArray[np.float64], ...]]:
    """Values of r_s min, and for each the ranges of bore with the largest chamfers."""
    found: dict[float, list[list[float]]] = {}
    for row in tables.rows("chamfer_limits"):
        incl = tables.number(row["incl_mm"], np.inf)
        cells = [float(row["over_mm"]), incl, float(row["radial_max_mm"]), float(row["axial_max_mm"])]
        found.setdefault(float(row["rs_min_mm"]), []).append(cells)
    return np.array(sorted(found)), tuple(np.array(cells).T for _, cells in sorted(found.items()))


def chamfer_max(rs_min: ArrayLike, bore_diameter: ArrayLike) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Largest single chamfer of a ring in the radial and in the axial direction.

    Parameters
    ----------
    rs_min : array_like
        Smallest single chamfer r_s min in mm, 0.05 to 7.5; between standard values the next larger one is read.
    bore_diameter : array_like
        Nominal bore d in mm.

    Returns
    -------
    radial, axial : ndarray
        r_s max in mm, broadcast over the arguments; NaN outside the table.

    Notes
    -----
    ISO 582, by way of the sources named in ``data/chamfer_limits.csv``.
    """
    standard, ranges = _chamfers()
    at, inside, bore = np.broadcast_arrays(*_next_larger(standard, rs_min), np.asarray(bore_diameter, dtype=np.float64))
    found = np.full((2, *bore.shape), np.nan)
    for index in np.flatnonzero(np.bincount(at[inside].ravel())):
        over, incl, *ends = ranges[index]
        chosen = inside & (at == index)
        found[:, chosen] = tables.in_ranges(over, incl, ends, bore[chosen])
    return found[0], found[1]


@cache
def _fillets() -> tuple[NDArray[np.float64], ...]:
    return _by_chamfer("fillet_limits", "fillet_max_mm")


def fillet_range(rs_min: ArrayLike) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Largest fillet as in :func:`fillet_max`, from the strictest and from the loosest source (strict, loose), mm."""
    standard, low, _, high = _fillets()
    at, inside = _next_smaller(standard, rs_min)
    return np.where(inside, low[at], np.nan), np.where(inside, high[at], np.nan)


def fillet_max(rs_min: ArrayLike) -> NDArray[np.float64]:
    """Largest fillet radius r_as max of shaft or housing beside a ring.

    Parameters
    ----------
    rs_min : array_like
        Smallest single chamfer r_s min in mm, 0.05 to 19; between standard values the next smaller one is read.

    Returns
    -------
    ndarray
        Fillet radius in mm in the shape of ``rs_min``, the value that most sources print; NaN outside the table.

    Notes
    -----
    NTN CAT. 2202-IX/E Table 14.3, NSK E1102 Table 11.2, TPI CAT 2260/TE Table 3.7; they agree. SKF prints 0.1 in place
    of 0.15 for r_s min 0.15.
    """
    standard, _, usual, _ = _fillets()
    at, inside = _next_smaller(standard, rs_min)
    return np.where(inside, usual[at], np.nan)


@cache
def _heights(column: str) -> tuple[NDArray[np.float64], ...]:
    return _by_chamfer("shoulder_heights", "height_min_mm", column)


def shoulder_height_min(rs_min: ArrayLike, column: str = "general") -> NDArray[np.float64]:
    """Smallest radial height h of a shoulder in one column of the makers' tables.

    Parameters
    ----------
    rs_min : array_like
        Smallest single chamfer r_s min in mm, 0.05 to 19; between standard values the next larger one is read.
    column : str, optional
        ``"general"`` (NTN, JIS B 1566), ``"small axial load"`` (NTN, JIS B 1566), ``"deep groove"`` (NSK, also
        cylindrical and needle roller bearings), ``"angular contact"`` (NSK, also tapered and spherical roller
        bearings).

    Returns
    -------
    ndarray
        Height in mm in the shape of ``rs_min``; NaN outside the table. Under heavy axial load a higher one is wanted.

    Raises
    ------
    ValueError
        If the column is not one of these.

    Notes
    -----
    NTN CAT. 2202-IX/E Table 14.3; NSK E1102 Table 11.2; JIS B 1566.
    """
    if column not in SHOULDER_COLUMNS:
        raise ValueError(f"{column!r} is not a column of shoulder heights: expected {', '.join(SHOULDER_COLUMNS)}")
    standard, _, usual, _ = _heights(column)
    at, inside = _next_larger(standard, rs_min)
    return np.where(inside, usual[at], np.nan)


def shoulder_height_range(
    rs_min: ArrayLike, bearing_type: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Smallest shoulder height for a type of bearing, from the strictest and from the loosest source.

    Parameters
    ----------
    rs_min : array_like
        Smallest single chamfer r_s min in mm, 0.05 to 19; between standard values the next larger one is read.
    bearing_type : array_like of str
        Type of bearing in the words of the vocabulary, for example ``"deep groove ball"``.

    Returns
    -------
    strict, loose : ndarray
        Heights in mm, broadcast over the arguments; NaN outside the table and for an empty type.

    Raises
    ------
    ValueError
        If a type is not known.

    Notes
    -----
    NTN's general column and NSK's column for the type, as in :func:`shoulder_height_min`.
    """
    kind = tables.words(bearing_type)
    unknown = sorted(set(kind.ravel().tolist()) - {"", *_SHOULDER_COLUMN})
    if unknown:
        raise ValueError(f"{unknown[0]!r} is not a type of bearing: expected {', '.join(_SHOULDER_COLUMN)}")
    value = np.asarray(rs_min, dtype=np.float64)
    strict = np.full(np.broadcast_shapes(kind.shape, value.shape), np.nan)
    loose = strict.copy()
    for name, column in _SHOULDER_COLUMN.items():
        chosen = kind == name
        if not chosen.any():
            continue
        standard, low, _, high = _heights("general")
        at, inside = _next_larger(standard, value)
        ends = [np.where(inside, low[at], np.nan), np.where(inside, high[at], np.nan)]
        own_standard, low, _, high = _heights(column)
        own, own_inside = _next_larger(own_standard, value)
        own_inside &= own_standard[own] == standard[at]  # NSK has no deep groove height for r_s min 2.5
        ends += [np.where(own_inside, low[own], np.nan), np.where(own_inside, high[own], np.nan)]
        strict = np.where(chosen, np.fmax.reduce(ends), strict)
        loose = np.where(chosen, np.fmin.reduce(ends), loose)
    return strict, loose


@cache
def _undercuts() -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Standard chamfers, and width, depth and radius of the undercut with the smallest radius for each."""
    best: dict[float, tuple[float, float, float]] = {}
    for row in tables.rows("undercuts"):
        rs = float(row["rs_min_mm"])
        cells = (float(row["width_mm"]), float(row["depth_mm"]), float(row["radius_mm"]))
        if rs not in best or cells[2] < best[rs][2]:
            best[rs] = cells
    standard = sorted(best)
    return np.array(standard), np.array([best[rs] for rs in standard])


def undercut(rs_min: ArrayLike) -> Undercut:
    """Undercut of a ground seat in place of a fillet.

    Parameters
    ----------
    rs_min : array_like
        Smallest single chamfer r_s min in mm, 1 to 7.5; between standard values the next smaller one is read.

    Returns
    -------
    Undercut
        Width, depth and radius in mm in the shape of ``rs_min``; NaN outside the table. Where sources differ (r_s min
        5) the one with the smaller radius.

    Notes
    -----
    TPI CAT 2260/TE Table 3.8; SKF Spherical plain bearings, Table 5.
    """
    standard, cells = _undercuts()
    at, inside = _next_smaller(standard, rs_min)
    return Undercut(*(np.where(inside, cells[at, column], np.nan) for column in range(3)))


def chamfer_cleared(
    undercut_radius: ArrayLike, undercut_depth: ArrayLike, face_depth: ArrayLike = 0.0
) -> NDArray[np.float64]:
    """Smallest ring chamfer that stands clear of the corner of an undercut.

    Parameters
    ----------
    undercut_radius, undercut_depth : array_like
        Corner radius r and depth h below the seat in mm, not negative.
    face_depth : array_like
        Depth t of the relief behind the face of the shoulder in mm; 0 where the undercut relieves the seat only.

    Returns
    -------
    ndarray
        r - h - t - sqrt(2 h t) in mm, not below 0, broadcast over the arguments; NaN passes.

    Raises
    ------
    ValueError
        If a value is negative.

    Notes
    -----
    Derived. The corner is an arc of radius r about (r - t, r - h), measured from seat and face; the ring corner is the
    arc of radius r_s about (r_s, r_s) that ISO 582 takes for the smallest chamfer. The ring is clear while the distance
    of the centres is at most r - r_s, a quadratic in r - r_s. Without depth it is r itself, the rule for a fillet.
    """
    r, h, t = (
        domain.not_negative(name, value)
        for name, value in (
            ("undercut radius", undercut_radius),
            ("undercut depth", undercut_depth),
            ("face depth", face_depth),
        )
    )
    return np.asarray(np.maximum(r - h - t - np.sqrt(2.0 * h * t), 0.0))


@cache
def _roughness() -> dict[tuple[str, str], tuple[list[float], list[float], list[float]]]:
    """Bounds and Ra by tolerance class and element."""
    found: dict[tuple[str, str], tuple[list[float], list[float], list[float]]] = {}
    for row in tables.rows("seat_roughness"):
        over, incl, value = found.setdefault((row["tolerance_class"], row["element"]), ([], [], []))
        over.append(float(row["over_mm"]))
        incl.append(tables.number(row["incl_mm"], np.inf))
        value.append(float(row["Ra_max_um"]))
    return found


def roughness_max(diameter: ArrayLike, tolerance_class: ArrayLike, element: str) -> NDArray[np.float64]:
    """Largest roughness Ra of a seat.

    Parameters
    ----------
    diameter : array_like
        Seat diameter in mm, over 0.
    tolerance_class : array_like of str
        ISO 492 class of the bearing: ``"Normal"``, ``"P6"``, ``"P5"``, ``"P4"`` or ``"P2"``.
    element : str
        ``"shaft"`` or ``"housing"``.

    Returns
    -------
    ndarray
        Ra in um, broadcast over the arguments; NaN outside the table.

    Raises
    ------
    ValueError
        If the element is neither.

    Notes
    -----
    URB General Catalogue v14 (2017), Tables 4.5 to 4.7.
    """
    if element not in ("shaft", "housing"):
        raise ValueError(f"{element!r} is not a seat: expected shaft or housing")
    text = tables.coded(tolerance_class)
    code, size = np.broadcast_arrays(text.code, np.asarray(diameter, dtype=np.float64))
    value = np.full(size.shape, np.nan)
    for index, name in enumerate(text.known):
        ranges = _roughness().get((name, element))
        if ranges is not None and (chosen := code == index).any():
            value[chosen] = tables.in_ranges(*ranges, size[chosen])
    return value


def roughness_range(
    diameter: ArrayLike, tolerance_class: ArrayLike, element: str
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Largest roughness as in :func:`roughness_max` from the strictest and the loosest source (strict, loose), um.

    A turned housing bore may be one step rougher than the ground seat (SKF, Surface texture of bearing seats); the
    steps of Ra double (from memory of ISO 1302).
    """
    strict = roughness_max(diameter, tolerance_class, element)
    return strict, strict * (2.0 if element == "housing" else 1.0)
