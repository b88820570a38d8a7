"""Limits and fits after ISO 286-1:2010: tolerance grades, fundamental deviations, deviations of classes, fits.

The tables are ``data/standard_tolerances.csv`` (ISO 286-1 Table 1), ``data/fundamental_deviations.csv`` (Tables 2 to 5)
and ``data/hole_delta.csv`` (the Delta columns of Tables 4 and 5), with a source per row. Sizes are nominal sizes in mm,
deviations are in um. Small letters are shafts and capital letters are holes: case is meaning.
"""

import re
from functools import cache
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import tables

GRADES = ("01", "0", *(str(n) for n in range(1, 19)))
_SHAFT_LETTERS = (
    *("a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "js", "j", "k", "m", "n", "p", "r", "s", "t"),
    *("u", "v", "x", "y", "z", "za", "zb", "zc"),
)
LETTERS = {"shaft": _SHAFT_LETTERS, "hole": tuple(letter.upper() for letter in _SHAFT_LETTERS)}

# Letters and grades in use for bearing seats: the columns of NSK Rolling Bearings E1102, Appendix Tables 9 and 10,
# with the f and p classes of the other makers' seat tables.
_SEAT_CLASSES = {
    "shaft": "f5 f6 f7 g4 g5 g6 g7 h4 h5 h6 h7 js4 js5 js6 js7 j5 j6 j7 k4 k5 k6 k7 m4 m5 m6 m7 "
    "n4 n5 n6 n7 p5 p6 p7 r6 r7",
    "hole": "F6 F7 F8 G5 G6 G7 H5 H6 H7 H8 JS4 JS5 JS6 JS7 J6 J7 J8 K4 K5 K6 K7 M5 M6 M7 N5 N6 N7 P6 P7 R6 R7",
}

_CLASS = re.compile(r"([A-Za-z]{1,2})(0?[0-9]|1[0-8])")


class ToleranceClass(NamedTuple):
    """Tolerance class of ISO 286-1, for example k5 or H7.

    Attributes
    ----------
    kind : str
        ``"shaft"`` or ``"hole"``.
    letter : str
        Letter of the fundamental deviation, small for shafts and capital for holes.
    grade : str
        Tolerance grade without ``IT``: ``"01"``, ``"0"``, ``"1"`` to ``"18"``.
    """

    kind: str
    letter: str
    grade: str

    def __str__(self) -> str:
        return self.letter + self.grade


class Fit(NamedTuple):
    """Interference of a fit in um; a negative value is a clearance."""

    smallest: NDArray[np.float64]
    mean: NDArray[np.float64]
    largest: NDArray[np.float64]


@cache
def _grade_table() -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
    """Lower and upper bound of the cells of all tables (mm), and IT values (um) by grade and cell."""
    it = tables.rows("standard_tolerances")
    divided = tables.rows("hole_delta")  # has all the divided ranges of Tables 2 to 5
    upper = np.array(sorted({float(row["incl_mm"]) for row in it + divided} | {1.0}))
    lower = np.concatenate([[0.0], upper[:-1]])
    values = np.full((len(GRADES), upper.size), np.nan)
    for row in it:
        cells = (lower >= float(row["over_mm"])) & (upper <= float(row["incl_mm"]))
        values[GRADES.index(row["grade"]), cells] = float(row["value_um"])
    return lower, upper, values


def size_cell(nominal: NDArray[np.float64]) -> tuple[NDArray[np.intp], NDArray[np.bool_]]:
    """Index of the size cell, and whether the size lies within the tables."""
    _, upper, _ = _grade_table()
    at = np.minimum(np.searchsorted(upper, nominal, side="left"), upper.size - 1)
    return at, (nominal > 0) & (nominal <= upper[-1])


def cell_ends() -> NDArray[np.float64]:
    """Upper ends of the size cells [mm], ascending; the first one begins at 0."""
    return _grade_table()[1]


@cache
def _grade_index(text: str) -> int:
    """Index of a grade word in ``GRADES``; -1 where the word is empty or no grade."""
    word = text.strip().upper().removeprefix("IT")
    word = word.removesuffix(".0") if word.replace(".", "", 1).isdigit() else word
    return GRADES.index(word) if word in GRADES else -1


def it_value_or_nan(grade: ArrayLike | tables.Coded, nominal: ArrayLike) -> NDArray[np.float64]:
    """Standard tolerance as in :func:`it_value`, NaN where it is not defined."""
    known, code = tables.coded(grade)
    index = np.array([_grade_index(word) for word in known], dtype=np.intp)[code]
    at, inside = size_cell(np.asarray(nominal, dtype=np.float64))
    return np.where((index >= 0) & inside, _grade_table()[2][index, at], np.nan)


def it_value(grade: ArrayLike, nominal: ArrayLike) -> NDArray[np.float64]:
    """Standard tolerance IT of a grade at a nominal size.

    Parameters
    ----------
    grade : array_like of str or int
        ``"IT6"``, ``"6"`` or ``6``; ``"01"`` and ``"0"`` for the two finest grades.
    nominal : array_like
        Nominal size in mm, over 0 up to 3150.

    Returns
    -------
    ndarray
        Tolerance in um, broadcast over the arguments; NaN where one of them is missing.

    Raises
    ------
    ValueError
        If a grade or a size is outside ISO 286-1 Table 1: IT01 and IT0 end at 500 mm, IT14 to IT18 begin above 1 mm.

    Notes
    -----
    ISO 286-1:2010 Table 1, with the sources named in ``data/standard_tolerances.csv``.

    Examples
    --------
    >>> it_value(["IT5", "IT6", "IT7"], 25.0).tolist()
    [9.0, 13.0, 21.0]
    """
    value = it_value_or_nan(grade, nominal)
    given = (tables.words(grade) != "") & ~np.isnan(np.asarray(nominal, dtype=np.float64))
    tables.refuse(
        np.isnan(value) & given,
        "expected a grade IT01, IT0, IT1 to IT18 and a size over 0 up to 3150 mm "
        "(IT01 and IT0 up to 500 mm, IT14 to IT18 over 1 mm)",
        grade=grade,
        nominal_size=nominal,
    )
    return value


@cache
def parse_class(text: str) -> ToleranceClass:
    """Tolerance class from its text.

    Parameters
    ----------
    text : str
        For example ``"k5"`` or ``"JS6"``; surrounding blanks are ignored, case is meaning.

    Returns
    -------
    ToleranceClass

    Raises
    ------
    ValueError
        If the text is not a letter of ISO 286-1, small throughout for a shaft or capital throughout for a hole,
        followed by a grade from 01 to 18.
    """
    match = _CLASS.fullmatch(text.strip())
    if match:
        letter, grade = match.groups()
        for kind, letters in LETTERS.items():
            if letter in letters and grade in GRADES:
                return ToleranceClass(kind, letter, grade)
    raise ValueError(
        f"{text!r} is not a tolerance class of ISO 286-1: expected a letter from a to zc for a shaft or A to ZC for a "
        "hole, all small or all capital, and a grade 01, 0, 1 to 18, for example k5 or H7"
    )


@cache
def _fundamental() -> dict[str, list[tuple[int, int, float, float, str, float, bool]]]:
    """Rows of the fundamental deviation table by letter: grade indices, range, side, value, whether Delta is added."""
    by_letter: dict[str, list[tuple[int, int, float, float, str, float, bool]]] = {}
    for row in tables.rows("fundamental_deviations"):
        by_letter.setdefault(row["letter"], []).append(
            (
                GRADES.index(row["grade_from"]),
                GRADES.index(row["grade_to"]),
                float(row["over_mm"]),
                float(row["incl_mm"]),
                row["deviation"],
                float(row["value_um"]),
                row["plus_delta"] == "yes",
            )
        )
    return by_letter


@cache
def _delta() -> NDArray[np.float64]:
    """Delta of the hole tables by grade and size cell (um); NaN where the standard has none."""
    lower, upper, _ = _grade_table()
    values = np.full((len(GRADES), upper.size), np.nan)
    values[:, upper <= 3.0] = 0.0
    for row in tables.rows("hole_delta"):
        cells = (lower >= float(row["over_mm"])) & (upper <= float(row["incl_mm"]))
        values[GRADES.index(row["grade"]), cells] = float(row["value_um"])
    return values


@cache
def class_limits(text: str) -> NDArray[np.float64]:
    """Lower and upper deviation of one class in all size cells, shape (2, cells), um; NaN where not defined."""
    lower, upper, it = _grade_table()
    limits = np.full((2, upper.size), np.nan)
    try:
        _, letter, grade_word = parse_class(text)
    except ValueError:
        return limits
    grade = GRADES.index(grade_word)
    tolerance = it[grade]
    if letter in ("js", "JS"):
        return np.stack([-tolerance / 2.0, tolerance / 2.0])
    for first, last, over, incl, side, value, plus_delta in _fundamental()[letter]:
        if not first <= grade <= last:
            continue
        cells = (lower >= over) & (upper <= incl)
        deviation = value + (_delta()[grade, cells] if plus_delta else 0.0)
        if side in ("es", "ES"):
            limits[1, cells] = deviation
            limits[0, cells] = deviation - tolerance[cells]
        else:
            limits[0, cells] = deviation
            limits[1, cells] = deviation + tolerance[cells]
    limits[:, np.isnan(limits).any(axis=0)] = np.nan
    return limits + 0.0  # no negative zeros in reports


def deviations_or_nan(
    tolerance_class: ArrayLike | tables.Coded, nominal: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Limit deviations as in :func:`deviations`, NaN where text and size do not make a class of the standard."""
    known, code = tables.coded(tolerance_class)
    at, inside = size_cell(np.asarray(nominal, dtype=np.float64))
    if not code.ndim:
        lower, upper = np.where(inside, class_limits(known[int(code)])[:, at], np.nan)
        return lower, upper
    limits = np.stack([class_limits(word) for word in known]) if known else np.empty((0, 2, 1))
    lower = np.where(inside, limits[code, 0, at], np.nan)
    upper = np.where(inside, limits[code, 1, at], np.nan)
    return lower, upper


def deviations(tolerance_class: ArrayLike, nominal: ArrayLike) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Limit deviations of a tolerance class at a nominal size.

    Parameters
    ----------
    tolerance_class : array_like of str
        Classes such as ``"k5"`` or ``"H7"``.
    nominal : array_like
        Nominal size in mm: over 0 up to 500, for h, js, H and JS up to 3150.

    Returns
    -------
    lower, upper : ndarray
        Deviations in um (ei and es, EI and ES), broadcast over the arguments; NaN where one of them is missing.

    Raises
    ------
    ValueError
        If an element is no tolerance class, or if the standard does not define the class at the size: a, b, A, B and
        holes N above IT8 begin above 1 mm, t and T above 24 mm, v and V above 14 mm, y and Y above 18 mm; cd, ef, fg
        and their holes end at 10 mm; j is IT5 to IT7 (j8 up to 3 mm), J is IT6 to IT8; K above IT8 ends at 3 mm; holes
        K to ZC finer than IT3 have no Delta and end at 3 mm.

    Notes
    -----
    ISO 286-1:2010 Tables 1 to 5, with the sources named in the data tables. Holes K, M, N up to IT8 and P to ZC up to
    IT7 take Delta = IT(n) - IT(n-1). The half tolerance of js and JS is not rounded.

    Examples
    --------
    >>> lower, upper = deviations(["k5", "H7"], [25.0, 52.0])
    >>> lower.tolist(), upper.tolist()
    ([2.0, 0.0], [11.0, 30.0])
    """
    lower, upper = deviations_or_nan(tolerance_class, nominal)
    text = tables.words(tolerance_class)
    given = (text != "") & ~np.isnan(np.asarray(nominal, dtype=np.float64))
    undefined = np.isnan(lower) & given
    if undefined.any():
        parse_class(str(np.broadcast_to(text, undefined.shape)[undefined][0]))
    tables.refuse(
        undefined,
        "ISO 286-1 does not define this class at this size (most letters end at 500 mm, some begin above 1, 14, 18 or "
        "24 mm, and K to ZC need IT3 or coarser)",
        tolerance_class=tolerance_class,
        nominal_size=nominal,
    )
    return lower, upper


def fit(hole_lower: ArrayLike, hole_upper: ArrayLike, shaft_lower: ArrayLike, shaft_upper: ArrayLike) -> Fit:
    """Interference of a hole and a shaft of the same nominal size at their limits.

    Parameters
    ----------
    hole_lower, hole_upper : array_like
        Deviations of the hole (bearing bore or housing bore) in um.
    shaft_lower, shaft_upper : array_like
        Deviations of the shaft (shaft seat or outside diameter of the ring) in um.

    Returns
    -------
    Fit
        Smallest, mean and largest interference in um; negative is clearance; NaN where a deviation is NaN.

    Raises
    ------
    ValueError
        If an upper deviation is below its lower deviation.

    Notes
    -----
    ISO 286-1:2010, 3.3: shaft minus hole.

    Examples
    --------
    A bore of class Normal, 0/-10 um at 25 mm (ISO 492), on a shaft k5:

    >>> found = fit(-10.0, 0.0, 2.0, 11.0)
    >>> float(found.smallest), float(found.mean), float(found.largest)
    (2.0, 11.5, 21.0)
    """
    low_h, high_h, low_s, high_s = (np.asarray(a, float) for a in (hole_lower, hole_upper, shaft_lower, shaft_upper))
    for name, low, high in (("hole", low_h, high_h), ("shaft", low_s, high_s)):
        if np.any(high < low):
            raise ValueError(f"the upper deviation of the {name} is below its lower deviation: {high} um, {low} um")
    smallest, largest = low_s - high_h, high_s - low_h
    return Fit(smallest, (smallest + largest) / 2.0, largest)


def probable_fit(hole_lower: ArrayLike, hole_upper: ArrayLike, shaft_lower: ArrayLike, shaft_upper: ArrayLike) -> Fit:
    """Interference that nearly all pairs have: root-sum-square of the two tolerances about the mean.

    Parameters
    ----------
    hole_lower, hole_upper, shaft_lower, shaft_upper : array_like
        Deviations in um, as in :func:`fit`.

    Returns
    -------
    Fit
        Mean interference, and the mean less and plus half of sqrt(T_hole^2 + T_shaft^2), in um.

    Raises
    ------
    ValueError
        If an upper deviation is below its lower deviation.

    Notes
    -----
    Common practice; meets the probable fits of SKF's seat tables within 1 um (40 k5: 5 to 22 um printed).
    """
    mean = fit(hole_lower, hole_upper, shaft_lower, shaft_upper).mean
    tolerances = (np.asarray(hole_upper, float) - hole_lower, np.asarray(shaft_upper, float) - shaft_lower)
    half = np.hypot(*tolerances) / 2.0
    return Fit(mean - half, mean, mean + half)


def classes_for(kind: str) -> tuple[str, ...]:
    """Tolerance classes in use for bearing seats, from the loosest letter to the tightest.

    Parameters
    ----------
    kind : str
        ``"shaft"`` or ``"hole"``.

    Returns
    -------
    tuple of str

    Raises
    ------
    ValueError
        If the kind is neither.
    """
    if kind not in _SEAT_CLASSES:
        raise ValueError(f"{kind!r} is not a kind of seat: expected shaft or hole")
    return tuple(_SEAT_CLASSES[kind].split())
