"""Rows that are positions of their own, as their layout names none: the words above them may say whose they are."""

from collections.abc import Iterable, Sequence

from linter.reading.files.grids import Grid
from linter.reading.layouts.lone import SHARED
from linter.reading.layouts.strips import Block, Found
from linter.reading.words.headings import Heading

#: What is told of a table in which nothing names a position.
ROWS_ARE_STATIONS = "no station is named; every row is a station of its own, named after its row"
#: Parameter, machine and station that a cell states, by its place.
_Stated = dict[str, list[tuple[str, tuple[str, str]]]]


def states_stations(headings: Iterable[Heading], machines: Sequence[str]) -> bool:
    """Whether rows state something of a position each; one row of each machine may say what all of its share."""
    one_each = "" not in machines or len(machines) == 1
    shared = SHARED if one_each and len({*machines}) == len(machines) else frozenset()
    return any(heading.entry.level == "station" and heading.parameter not in shared for heading in headings)


def row_name(line: int) -> str:
    """The name of a position of which only its row is known."""
    return f"row {line}"


def row_names(grid: Grid) -> set[str]:
    """All names that rows of a sheet may have."""
    return set(map(row_name, grid.lines.tolist()))


def without_row_names(stated: _Stated, grid: Grid) -> _Stated:
    """What the layouts read, of no position where each is but a row."""
    if not {station for one in stated.values() for _, (_, station) in one} <= row_names(grid) | {""}:
        return stated
    return {at: list(dict.fromkeys((name, (machine, "")) for name, (machine, _) in one)) for at, one in stated.items()}


def name_rows(grid: Grid, own: list[Block], told: _Stated, found: Found) -> bool:
    """Give rows that are positions of their own the one position that the words tell for all their cells.

    Parameters
    ----------
    grid : Grid
        The sheet.
    own : list of Block
        What the layouts read of it; rows of it are named.
    told : dict of str to list of (parameter, (machine, station))
        What the words tell of each cell.
    found : Found
        What was found; what is told of rows without a name goes where all have one now.

    Returns
    -------
    bool
        Whether a row was named.
    """
    of_rows = row_names(grid)
    if not {station for block in own for station in block.stations} <= of_rows | {""}:
        return False
    named = False
    for block in own:
        said: dict[int, set[str]] = {row: set() for row, station in enumerate(block.stations) if station}
        for strip in block.strips:
            for index, row in enumerate(strip.rows.tolist()):
                stations = {s for name, (_, s) in told.get(strip.at(index), []) if s or name == strip.parameter}
                agreed = not stations or any(name == strip.parameter for name, _ in told[strip.at(index)])
                if row in said:
                    said[row] |= (stations - {""}) if agreed else of_rows
        for row, stations in said.items():
            if len(stations) == 1:
                block.stations[row], named = stations.pop(), True
    if named and not of_rows & {station for block in own for station in block.stations}:
        found.notes[:] = [note for note in found.notes if note != ROWS_ARE_STATIONS]
    return named
