"""Columns that tell the rows of a table apart and have no heading that says so: the machine, the position.

Their cells show it. Where two rows name the same position, a column of texts that keeps them apart is the machine's
(the shafts of a gear unit, the sizes of a series); else one of them would be taken for the other, or both be lost.
"""

from collections import defaultdict
from collections.abc import Sequence
from itertools import pairwise

from linter.model.stations import Problem
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Found
from linter.reading.layouts.wide_heading import WideTable
from linter.reading.words.column_words import KEYS
from linter.reading.words.columns import key_of
from linter.reading.words.designations import looks_like_designation
from linter.reading.words.headings import Heading, Words
from linter.reading.words.machine_words import names_machine
from linter.reading.words.parts import concepts_said, tells_feature

_LONGEST = 60


def name_rows(
    table: WideTable, headings: list[Heading | None], rows: Sequence[int], words: Words, found: Found
) -> list[Heading | None]:
    """The headings with the columns that name machine and position where no heading does.

    ``headings`` is what the columns are so far, ``rows`` are those below the heading.
    """
    if table.positions or any(h is not None and h.station for h in headings):
        return _rows_of_machines(table, headings, rows)
    of_stations = [c for c, h in enumerate(headings) if h is not None and h.entry.level == "station"]
    stated = [c for c in of_stations if headings[c] != Heading("station")]
    rows = [row for row in rows if any(table.grid.text(row, c) for c in stated)]
    if len(rows) < 2:
        return headings
    headings = _beside_count(table, headings, rows, words)
    named = {h.parameter: c for c, h in reversed([*enumerate(headings)]) if h is not None}
    station = named.get("station")
    if station is None:
        station = _place(table, headings, rows, words)
    if station is None or "machine" in named:
        return _with(headings, station, None)
    places = [table.grid.text(row, station) for row in rows]
    machine = None
    if "" not in places and len(set(places)) < len(places):
        machine = _apart(table, headings, rows, places, words)
    if machine is not None:
        found.problems.append(machine_by_rows(table.grid, table.labels[machine], rows[0], machine))
    elif len(set(places)) < len(places) and "station" not in named:
        return headings  # what tells the rows apart is not known
    return _with(headings, station, machine)


def _beside_count(
    table: WideTable, headings: list[Heading | None], rows: Sequence[int], words: Words
) -> list[Heading | None]:
    """The headings with the column of positions that come again, where the one that says position counts the rows."""
    station = next((c for c, h in enumerate(headings) if h is not None and h.parameter == "station"), None)
    if station is None or len(rows) < 3 or any(h is not None and h.parameter == "machine" for h in headings):
        return headings
    if any(table.grid.text(row, station) != f"{k}" for k, row in enumerate(rows, 1)):
        return headings
    without = [None if column == station else heading for column, heading in enumerate(headings)]
    place = _place(table, without, rows, words)
    places = [table.grid.text(row, place) for row in rows] if place is not None else []
    without = _with(without, place, None)
    apart = len(set(places)) < len(places) and _apart(table, without, rows, places, words) is not None
    return without if apart else headings


def _rows_of_machines(table: WideTable, headings: list[Heading | None], rows: Sequence[int]) -> list[Heading | None]:
    """Headings that say positions, the same parameters for several: each row is a machine, which a column names.

    It is the one headed by a word for the sort or size of a machine, else the first one of different texts.
    """
    if any(h is not None and (h.parameter == "machine" or h == Heading("station")) for h in headings):
        return headings
    filled = [row for row in rows if any(table.grid.text(row, c) for c, h in enumerate(headings) if h is not None)]
    if not filled or not (table.positions or _of_positions(headings)):
        return headings
    texts = _columns_of_texts(table, headings, filled) if len(filled) > 1 else {}
    named = next((c for c in range(len(headings)) if _heads_machines(table, headings, c, filled)), None)
    apart = next((c for c, cells in texts.items() if len(set(cells)) == len(cells)), None)
    return _with(headings, None, apart if named is None else named)


def _of_positions(headings: Sequence[Heading | None]) -> bool:
    """Whether headings state one parameter for several positions."""
    stated: dict[tuple[str, str], set[str]] = defaultdict(set)
    for h in headings:
        if h is not None and h.station and h.entry.level == "station":
            stated[h.parameter, h.aspect].add(h.station)
    return any(len(stations) > 1 for stations in stated.values())


def _heads_machines(table: WideTable, headings: Sequence[Heading | None], column: int, rows: Sequence[int]) -> bool:
    """Whether a column that is not read is headed by a word for the sort of a machine, and tells all rows apart."""
    if headings[column] is not None or not names_machine(table.labels[column]):
        return False
    cells = [table.grid.text(row, column) for row in rows]
    return len({*cells}) == len(cells) and all(cells) and not any(map(looks_like_designation, cells))


def _with(headings: list[Heading | None], station: int | None, machine: int | None) -> list[Heading | None]:
    result = [*headings]
    if station is not None and result[station] is None:
        result[station] = Heading("station")
    if machine is not None:
        result[machine] = Heading("machine")
    return result


def _place(table: WideTable, headings: Sequence[Heading | None], rows: Sequence[int], words: Words) -> int | None:
    """The column of the positions: below a word for a place, or the only one whose cells all are positions."""
    texts = _columns_of_texts(table, headings, rows)
    for column, cells in texts.items():
        if key_of(table.labels[column], words).strip(" .") in KEYS["place"] and len(set(cells)) > 1:
            return column
    like = [c for c, cells in texts.items() if len(set(cells)) > 1 and all(words.names.station(cell) for cell in cells)]
    return like[0] if len(like) == 1 and not words.groups(table.labels[like[0]]) else None


def _columns_of_texts(
    table: WideTable, headings: Sequence[Heading | None], rows: Sequence[int]
) -> dict[int, list[str]]:
    """Columns that are not read and hold a short text of letters in every row."""
    found = {}
    for column, heading in enumerate(headings):
        cells = [table.grid.text(row, column) for row in rows] if heading is None else []
        if cells and all(len(cell) <= _LONGEST and any(map(str.isalpha, cell)) for cell in cells):
            found[column] = cells
    return found


def _apart(
    table: WideTable, headings: Sequence[Heading | None], rows: Sequence[int], places: Sequence[str], words: Words
) -> int | None:
    """The first column that keeps rows of one position apart: each text of it stands in neighbouring rows."""
    for column, cells in _merged_down(table, headings, rows).items():
        kind = names_machine(table.labels[column]) != ""
        of_units = words.group(table.labels[column]) == "UNIT" and any(map(known_unit, cells))
        if not kind and (of_units or {*words.groups(table.labels[column])} - {"UNIT"}):
            continue  # Unit: FCC-5, FCC-12 are no units
        if any(looks_like_designation(cell) == "certain" for cell in cells):
            continue
        if all(tells_feature(cell) for cell in dict.fromkeys(cells)):
            continue  # shaft, housing: parts of one machine
        if kind and any(concepts_said(cell) & {"bearing", "ball", "roller", "ring"} for cell in dict.fromkeys(cells)):
            continue  # the sort of a bearing
        several = 1 < len(set(cells)) < len(cells)
        runs = 1 + sum(a != b for a, b in pairwise(cells))
        if several and runs == len(set(cells)) and len({*zip(cells, places, strict=True)}) == len(cells):
            return column
    return None


def _merged_down(table: WideTable, headings: Sequence[Heading | None], rows: Sequence[int]) -> dict[int, list[str]]:
    """Columns that are not read, blanks taken for the text above them.

    They stand left of everything read but the position and hold names; one that is headed by a word for the sort or
    size of a machine (``Baureihe``) may stand anywhere and hold numbers.
    """
    read = [c for c, h in enumerate(headings) if h is not None and h.parameter != "station"]
    first = min(read, default=0)
    found = {}
    for column, heading in enumerate(headings):
        kind = heading is None and names_machine(table.labels[column]) in ("kind", "both")
        if heading is not None or not (column < first or kind):
            continue
        cells: list[str] = []
        for row in rows:
            cells.append(table.grid.text(row, column) or (cells[-1] if cells else ""))
        if all(0 < len(cell) <= _LONGEST for cell in cells) and (kind or _no_numbers(cells)):
            found[column] = cells
    return found


def _no_numbers(cells: Sequence[str]) -> bool:
    """Whether texts are names: letters in each, or numbers that only count."""
    return all(any(map(str.isalpha, cell)) for cell in cells) or all(cell.isdigit() and len(cell) < 3 for cell in cells)


def machine_by_rows(grid: Grid, label: str, row: int, column: int, *, of_row: bool = False) -> Problem:
    """The assumption that a column or a row names the machines, since it keeps those of the same position apart."""
    label, place, read = (
        visible(label or "no heading", 40),
        grid.place(row, column),
        visible(grid.text(row, column), 40),
    )
    expected = "a row headed machine" if of_row else "a column headed machine"
    message = (
        f"{place}: the positions come again and {label} keeps them apart; it is taken for the machine; "
        f"expected {expected}."
    )
    return Problem("assumption", None, "machine", place, read, expected, message, "machine-by-rows")
