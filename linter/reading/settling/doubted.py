"""Loads and masses without any unit that the usual one makes absurd for the bearing: their unit is asked for.

``0.28`` of a radial load is taken in N by custom, and ``650`` of a rotor's mass in kg. A ball bearing needs about
C/100 to roll (common practice), so that a tenth of that is hardly a load stated for it, and the same figure in kN may
well be one; a rotor whose weight alone loads its bearings by C/50 is rare in the machines of such tables, and in g its
figure may be a usual one. Where the figures of a column can only be in the usual unit it is taken as ever.
"""

from collections.abc import Callable, Iterable

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from linter.model.stations import Stations
from linter.model.vocabulary import Parameter, parameter
from linter.reading.files.grids import cell_text
from linter.reading.layouts.strips import Strip
from linter.reading.settling.derive import DESIGNATION, known_designation
from linter.reading.settling.one_value import Stated
from linter.reading.words.bearing_geometry import printed_ratings

LOADS = ("radial_load", "axial_load")
MASS = "rotor_mass"
DOUBTED = (*LOADS, MASS)
#: A load below this share of C is hardly one (a tenth of the least load of ball bearings), and one above this share in
#: kN is none that a bearing bears for long (common practice).
_LEAST, _MOST = 0.001, 0.5
#: Weight on a bearing above this share of C is rare, and below the other one the figure in g is a mass of a rotor too.
_HEAVY, _LIGHT = 0.02, 1e-7
_GRAVITY = 9.81
#: C [N] per bore [mm] of light series (common practice, from makers' dimension tables), and the bore of no bearing.
_PER_BORE, _SMALL_BORE = 150.0, 3.0


@frozen(eq=False)
class Doubt:
    """A cell whose figure stands without a unit and is absurd in the usual one.

    Attributes
    ----------
    parameter : str
        What it states.
    row : int
        First station that it is of.
    rows : int array
        All stations that it is of.
    strip, index, first : Strip, int, int
        Its strip, its cell there, and the first cell of that strip whose unit was taken.
    said : tuple of str
        For the problem about it: its code, what was read, what was expected, and what is wrong.
    """

    parameter: str
    row: int
    rows: NDArray[np.intp]
    strip: Strip
    index: int
    first: int
    said: tuple[str, str, str, str]


def doubted_units(
    stations: Stations,
    used: Iterable[tuple[Parameter, list[Stated]]],
    row_of: Callable[[Parameter, int], int],
    *,
    inches: bool = False,
) -> list[Doubt]:
    """Cells of loads and masses without a unit that the usual unit makes absurd, column by column.

    Parameters
    ----------
    stations : Stations
        As the table states them.
    used : iterable of (Parameter, list of Stated)
        The cells of each parameter.
    row_of : callable
        First row of a station or machine by parameter and group.
    inches : bool, optional
        Whether the lengths are in inches: a load may be in pounds-force then, and every one without a unit is doubted.

    Returns
    -------
    list of Doubt
        Every cell without a unit of a column of which one is doubted; none where the other unit is not possible and
        lengths are not in inches.
    """
    doubts: list[Doubt] = []
    capacity = None
    for entry, several in used:
        for one in several if entry.name in DOUBTED else ():
            if one.values.bare is None or not one.values.bare.any():
                continue
            if capacity is None:
                capacity = _capacity(stations)
            doubts += _of_column(stations, entry, one, row_of, capacity, inches=inches)
    return doubts


def without(stations: Stations, doubts: Iterable[Doubt]) -> Stations:
    """The stations without the values of the cells that are doubted."""
    numbers = dict(stations.numbers)
    for doubt in doubts:
        if numbers[doubt.parameter] is stations.numbers[doubt.parameter]:
            numbers[doubt.parameter] = numbers[doubt.parameter].copy()
        numbers[doubt.parameter][doubt.rows] = np.nan
    return evolve(stations, numbers=numbers)


def _of_column(
    stations: Stations,
    entry: Parameter,
    one: Stated,
    row_of: Callable[[Parameter, int], int],
    capacity: NDArray[np.float64],
    *,
    inches: bool,
) -> list[Doubt]:
    bare, number = one.values.bare, np.abs(one.values.number)
    assert bare is not None
    pairs = [(g, c) for g, c in zip(one.group.tolist(), one.cell.tolist(), strict=True) if bare[c] and number[c] > 0]
    if not pairs:
        return []
    rows = [_rows(stations, entry, row_of(entry, g)) for g, _ in pairs]
    values = np.array([number[c] for _, c in pairs])
    if entry.name == MASS:
        weight = values * _GRAVITY / np.array([len(of) for of in rows])
        bears = np.array([capacity[of].min() for of in rows])
        absurd, other = weight > _HEAVY * bears, weight / 1000 > _LIGHT * bears
        usual, instead, pounds, what = "kg", "g", "lb", "too much for the bearings"
    else:
        bears = np.array([capacity[of].max() for of in rows])
        absurd, other = values < _LEAST * bears, values * 1000 < _MOST * bears
        usual, instead, pounds, what = "N", "kN", "lbf", "next to nothing for the bearing"
    wrong = absurd.any() and other.all()
    if not wrong and not inches:
        return []
    first = int(np.flatnonzero(bare)[0])
    expected = f"a {'mass' if entry.name == MASS else 'load'} with its unit (canonical: {entry.unit})"
    found: dict[int, Doubt] = {}
    for (_, c), of in zip(pairs, rows, strict=True):
        read = cell_text(one.strip.cells[c])
        said = (
            f"“{read}” stands without a unit: in {usual} {what}, in {instead} usual"
            if wrong
            else f"“{read}” stands without a unit where lengths are in inches: {usual} or {pounds} may be meant"
        )
        if c in found:
            found[c] = evolve(found[c], rows=np.concatenate([found[c].rows, of]))
        else:
            found[c] = Doubt(entry.name, int(of[0]), of, one.strip, c, first, ("unit-doubtful", read, expected, said))
    return list(found.values())


def _rows(stations: Stations, entry: Parameter, row: int) -> NDArray[np.intp]:
    """The stations that a value of a station, or of the machine whose first row is given, is of."""
    if parameter(entry.name).level == "station":
        return np.array([row], dtype=np.intp)
    return np.flatnonzero(stations.machine_row == stations.machine_row[row])


def _capacity(stations: Stations) -> NDArray[np.float64]:
    """Dynamic rating [N] of each bearing: stated, else printed for its designation, else by its bore."""
    rating, bore = stations.number("dynamic_rating").copy(), stations.number("bore_diameter").copy()
    for row, text in enumerate(stations.text(DESIGNATION).tolist()):
        if not text or not np.isnan(rating[row]):
            continue
        said = known_designation(text)
        rating[row] = dict(printed_ratings(said)).get("dynamic_rating", np.nan) if said.derived else np.nan
        if np.isnan(bore[row]) and "bore_diameter" in said.derived:
            bore[row] = float(said.derived["bore_diameter"].value)
    by_bore = _PER_BORE * np.minimum(np.where(np.isnan(bore), _SMALL_BORE, bore), 1e6)
    return np.where(np.isnan(rating), by_bore, rating)
