"""What the chapters about seats and abutments share: two sides of one clause, abutments wanted, sizes, chamfers."""

from collections.abc import Callable, Mapping, Sequence
from itertools import pairwise
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, View, shared, within
from linter.checks.shared.quantities import speed_factor
from linter.mechanics import boundary, tables
from linter.model.stations import Bools, Choice, Floats
from linter.model.wording import quantity_text

Columns = Mapping[str, NDArray[Any]]
Sides = Mapping[str, Bools]
"""Rows by side."""

SIDES = ("shaft", "housing")
BASIC = {"shaft": "bore_diameter", "housing": "outside_diameter"}
"""Parameter of the ring diameter at the seat of each side."""
CLOSE = 1e-9
"""mm; a size this near to a row of a table is that row."""


@frozen(eq=False)
class TwoSides:
    """The two seats of a position brought to one measure.

    Attributes
    ----------
    measure, observed, upper : float array
        Of the side that stands worse; the measure is NaN where a side that is wanted is not known and the other one is
        no finding.
    variant : function
        To the words by row: ``both`` where both sides are findings, else the side that stands worse; empty where both
        are met.
    missing : dict of str to bool array
        Parameters wanted of a side that could not be judged while the other one is no finding.
    withheld : dict of str to bool array
        The same while the other one is a finding, which the unknown side could make graver.
    applies : bool array
        Rows with at least one side that the clause is about.
    """

    measure: Floats
    observed: Floats
    upper: Floats
    variant: Callable[[], NDArray[Any]]
    missing: Mapping[str, Bools]
    withheld: Mapping[str, Bools]
    applies: Bools


def two_sides(
    measure: Mapping[str, Floats],
    observed: Mapping[str, Floats],
    upper: Mapping[str, Floats],
    wanted: Sides,
    needed: Mapping[str, Mapping[str, Bools]],
    grave: float | None = None,
) -> TwoSides:
    """Bring shaft and housing to one measure without letting an unknown side hide a finding of the other.

    Parameters
    ----------
    measure, observed, upper : dict of side to float array
        Per side; NaN where not known.
    wanted : dict of side to bool array
        Rows where the side is to be judged.
    needed : dict of side to (parameter to bool array)
        What the side needs, and the rows where it is known.
    grave : float, optional
        Measure above which a side is named alone where the other one stays below it; otherwise every side above 1, from
        where a side is a finding, is named.

    Returns
    -------
    TwoSides
        What a result of both sides takes over, by row.
    """
    shaft, housing = (np.where(wanted[side], measure[side], np.nan) for side in SIDES)
    worst = np.fmax(shaft, housing)
    mark = np.full(worst.shape, 1.0 + CLOSE)
    if grave is not None:
        mark = np.where(worst > grave * (1 + CLOSE), grave * (1 + CLOSE), mark)
    found = worst > 1.0 + CLOSE
    by_housing = np.where(np.isnan(shaft), True, housing > shaft)
    unknown = (wanted["shaft"] & np.isnan(shaft)) | (wanted["housing"] & np.isnan(housing))
    missing: dict[str, Bools] = {}
    withheld: dict[str, Bools] = {}
    for name in SIDES:
        for parameter, known in needed[name].items():
            for rows, where in ((missing, ~found), (withheld, found)):
                lacking = wanted[name] & ~known & where
                rows[parameter] = rows[parameter] | lacking if parameter in rows else lacking

    def variant() -> NDArray[Any]:
        both = (shaft > mark) & (housing > mark)
        met_both = ~found & wanted["shaft"] & wanted["housing"]
        return np.where(both, "both", np.where(met_both, "", np.where(by_housing, "housing", "shaft"))).astype(object)

    return TwoSides(
        measure=np.where(unknown & ~found, np.nan, worst),
        observed=np.where(by_housing, observed["housing"], observed["shaft"]),
        upper=np.where(by_housing, upper["housing"], upper["shaft"]),
        variant=variant,
        missing=missing,
        withheld=withheld,
        applies=wanted["shaft"] | wanted["housing"],
    )


@shared
def abutment_wanted(view: View) -> Sides:
    """Rows where the ring of each side bears on a shoulder.

    The free ring of a floating or spring-loaded position has none (it slides, or a spring stands in its place), where
    the table says which ring is free.
    """
    s = view.stations
    slides = s.choice("axial_role").is_in("floating", "spring-loaded")
    free = s.choice("free_ring")
    return {"shaft": ~(slides & free.is_in("inner")), "housing": ~(slides & free.is_in("outer"))}


@shared
def shoulder_there(view: View) -> Sides:
    """Rows with a shoulder on each side.

    A ring bears on it, or the table states its diameter, its fillet or its run-out: what a free ring has beside it must
    be known as a whole, so that no gap in the table makes a shoulder vanish.
    """
    s = view.stations
    parts = ("shoulder_diameter", "fillet_radius", "shoulder_runout")
    return {
        side: np.logical_or.reduce([abutment_wanted(view)[side], *(s.known(f"{side}_{part}") for part in parts)])
        for side in SIDES
    }


@frozen(eq=False)
class Chamfer:
    """Smallest ring chamfer r_s min [mm] and the stand-in for it where it is not stated."""

    value: Floats
    assumed: Assumes


@shared
def chamfer(view: View) -> Chamfer:
    """Smallest ring chamfer r_s min: as stated, else that of the ISO 15 size."""
    s = view.stations
    stated = within(s.number("ring_chamfer"))
    standard = boundary.boundary_chamfer(
        s.number("bore_diameter"), s.number("outside_diameter"), s.number("ring_width")
    )
    stands_in = ~s.known("ring_chamfer") & ~np.isnan(standard)
    value = np.where(stands_in, standard, stated)
    reason = "not stated; the smallest chamfer of this ISO 15 size stands in"
    return Chamfer(value, Assumes("ring_chamfer", value, "mm", reason, stands_in))


def at_or_below(table: Columns, column: str, key: str, value: Floats, rows: Bools | None = None) -> Floats:
    """Value of a table column in the row with the largest key at or below each value; NaN outside the table."""
    keys, values = _sorted(table, column, key, rows)
    at = np.searchsorted(keys, value + CLOSE, side="right") - 1
    inside = (value >= keys[0] - CLOSE) & (value <= keys[-1] + CLOSE)
    return np.where(inside, values[np.maximum(at, 0)], np.nan)


def at_or_above(table: Columns, column: str, key: str, value: Floats, rows: Bools | None = None) -> Floats:
    """Value of a table column in the row with the smallest key at or above each value; NaN outside the table."""
    keys, values = _sorted(table, column, key, rows)
    at = np.searchsorted(keys, value - CLOSE, side="left")
    inside = (value >= keys[0] - CLOSE) & (value <= keys[-1] + CLOSE)
    return np.where(inside, values[np.minimum(at, len(keys) - 1)], np.nan)


def _sorted(table: Columns, column: str, key: str, rows: Bools | None) -> tuple[Floats, Floats]:
    chosen = np.arange(len(table[key])) if rows is None else np.flatnonzero(rows)
    order = chosen[np.argsort(table[key][chosen])]
    return table[key][order].astype(float), table[column][order].astype(float)


def by_choice(table: Columns, column: str, key: str, choice: Choice) -> Floats:
    """Value of a table column in the row whose key column holds the word of each row; NaN where there is none."""
    return choice.map(dict(zip(table[key], table[column].astype(float), strict=True)))


def in_range_by_choice(table: Columns, column: str, size: Floats, key: str, choice: Choice, element: str) -> Floats:
    """As :func:`by_choice`, for one element, in rows with a range ``over`` / ``incl`` of the size (blank: open)."""
    found = np.full(len(size), np.nan)
    for index in np.flatnonzero(table["element"] == element):
        code = choice.words.index(table[key][index])
        hit = (choice.codes == code) & (size > table["over"][index]) & ~(size > table["incl"][index])
        found[hit] = table[column][index]
    return found


def of_material(choice: Choice, function: Callable[[Any], Any]) -> Floats:
    """A material constant per row, looked up once per word; NaN where the word is absent."""
    return choice.map({word: float(function(word)) for word in choice.words})


@frozen(eq=False)
class Limited:
    """Limits of size [mm] of a toleranced parameter, with the general tolerance where none is stated."""

    smallest: Floats
    largest: Floats
    assumed: Assumes


def limited(view: View, name: str, general: Columns) -> Limited:
    """Limits of size of a parameter; a nominal without tolerance takes the general tolerance of its range.

    Parameters
    ----------
    view : View
        The stations.
    name : str
        Toleranced parameter in mm.
    general : table
        Columns ``over``, ``incl`` and ``deviation``, all mm.

    Returns
    -------
    Limited
        Limits of size by row [mm], and the assumption where the general tolerance stood in.
    """
    key = (name, *(general[column].tobytes() for column in ("over", "incl", "deviation")))
    if key not in view.cache:
        view.cache[key] = _limited(view, name, general)
    found: Limited = view.cache[key]
    return found


def _limited(view: View, name: str, general: Columns) -> Limited:
    size = view.stations.size(name)
    deviation = tables.in_ranges(general["over"], general["incl"], general["deviation"], size.nominal)
    stands_in = ~np.isnan(size.nominal) & (np.isnan(size.lower) | np.isnan(size.upper)) & ~np.isnan(deviation)
    reason = "stated without tolerance; the general tolerance ISO 2768-m stands in, plus or minus"
    return Limited(
        smallest=np.where(stands_in, size.nominal - deviation, size.smallest),
        largest=np.where(stands_in, size.nominal + deviation, size.largest),
        assumed=Assumes(name, deviation, "mm", reason, stands_in),
    )


def sinking(value: Floats, *marks: Floats) -> Floats:
    """A measure that rises by one from mark to mark as a value sinks: 1 at the first mark, 2 at the second, and so on.

    Above the first mark it is the ratio of that mark to the value; below the last one it goes on in proportion to the
    first mark. NaN where the value or a mark is.

    Parameters
    ----------
    value : float array, shape (rows,)
        The smaller the worse.
    *marks : float array
        Descending; the first one above 0.

    Returns
    -------
    float array, shape (rows,)
    """
    first, last = marks[0], marks[-1]
    measure = np.where(value >= first, first / np.maximum(value, first), 1.0)
    for above, below in pairwise(marks):
        width = above - below
        share = np.divide(above - value, width, out=np.where(value < below, 1.0, 0.0), where=width > 0)
        measure = measure + np.clip(share, 0.0, 1.0)
    measure = measure + np.maximum(last - value, 0.0) / first
    return np.where(np.logical_or.reduce([np.isnan(value), *(np.isnan(mark) for mark in marks)]), np.nan, measure)


@frozen(eq=False)
class Feature:
    """A feature that the drawing should state.

    Attributes
    ----------
    name : str
        Parameter.
    absent : bool array
        Rows that should state it and do not.
    advice : str
        How the value is to be put, for example ``at most``.
    value : float array
        The value to put there, NaN where it cannot be told; lengths in mm are rounded down to 0.0001 mm.
    unit : str
        Unit of the value.
    """

    name: str
    absent: Bools
    advice: str
    value: Floats
    unit: str


def unstated(features: Sequence[Feature]) -> Callable[[int], str]:
    """The absent features in words, each with the value to put there: a function from a row to its text."""

    def make(row: int) -> str:
        parts = []
        for feature in features:
            if feature.absent[row]:
                value = float(feature.value[row])
                text = feature.name
                if not np.isnan(value):
                    text += f" ({feature.advice} {quantity_text(value, feature.unit)})"
                parts.append(text)
        return ", ".join(parts[:-1]) + (" and " if len(parts) > 1 else "") + parts[-1] if parts else "nothing"

    return make


@shared
def demand(view: View) -> Floats:
    """Speed factor [mm r/min] of the position, 0 where it is not known: what unstated features are weighed by."""
    return np.nan_to_num(speed_factor(view), nan=0.0)


def down(value: Floats) -> Floats:
    """Lengths [mm] rounded down to 0.0001 mm, so that a value put on a drawing does not exceed its limit."""
    return np.floor(value * 1e4 + 1e-6) / 1e4
