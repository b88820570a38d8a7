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
    said = [(block, row, stations) for block in own for row, stations in _told_of_rows(block, told, of_rows).items()]
    called: dict[str, set[str]] = {}
    for block, row, stations in said:
        if block.stations[row] not in of_rows:
            for station in stations:
                called.setdefault(station, set()).add(block.stations[row])
    names = [name for several in called.values() for name in several]
    if len({*names}) < len(names) or any(len(several) > 1 for several in called.values()):
        return False
    named = [(block, row, {*stations}) for block, row, stations in said if block.stations[row] in of_rows]
    machines = {machine for block in own for machine in block.machines}
    if any(len(stations) != 1 or stations & (of_rows | machines) for _, _, stations in named):
        return False  # each row has a position, and none is the machine of the rows
    for block, row, stations in named:
        station = stations.pop()
        block.stations[row] = next(iter(called.get(station, {station})))
    if named and not of_rows & {station for block in own for station in block.stations}:
        found.notes[:] = [note for note in found.notes if note != ROWS_ARE_STATIONS]
    return bool(named)


def _told_of_rows(block: Block, told: _Stated, of_rows: set[str]) -> dict[int, set[str]]:
    """The positions that the words tell for the cells of each row of a block; that of a row where they disagree."""
    said: dict[int, set[str]] = {row: set() for row, station in enumerate(block.stations) if station}
    for strip in block.strips:
        for index, row in enumerate(strip.rows.tolist()):
            if row in said and (one := told.get(strip.at(index))):
                agreed = any(name == strip.parameter for name, _ in one)
                said[row] |= {station for _, (_, station) in one} - {""} if agreed else of_rows
    return said
