"""Tables with a heading row: one row per station (or per machine), one column per parameter."""

import re
from collections.abc import Sequence
from typing import Any

import numpy as np
from attrs import define, field
from numpy.typing import NDArray

from linter.model.stations import Problem, Unused
from linter.model.vocabulary import parameter
from linter.reading.cells.units import known_unit, split_heading_unit
from linter.reading.files.grids import Bad, Column, Grid, TextColumn, cell_text, is_blank, object_column
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Block, Found, Strip, filled_down, unreadable_key
from linter.reading.words.headings import Heading, Words

_NUMBER = re.compile(r"[+\-−]?\d+(?:[.,]\d+)?")
_COMMENT = re.compile(r"\s*(?:#(?!\d)|//|!|;|--|''|==)")
_FIRST_SIGNS = frozenset("#/!;-'= \t\n\xa0epstEPST")
_FOOTER = re.compile(r"\s*(?:end of (?:table|file|list)|page \d+|seite \d+|sheet \d+ of|total\b|sum\b)", re.IGNORECASE)
_MOST_TOLD = 50
JOINABLE = {"UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min", "CLASS": "tolerance", "UNIT": "unit"}


@define(eq=False)
class WideTable:
    """A heading row found in a grid.

    Attributes
    ----------
    grid : Grid
        The whole region; rows above ``top`` are its title block.
    top, bottom : int
        First and last row of the heading.
    labels : list of str
        Heading of each column, rows joined.
    headings : list of Heading or None
        What each names.
    """

    grid: Grid
    top: int
    bottom: int
    labels: list[str]
    headings: list[Heading | None]
    score: int = field(default=0)


def heading_labels(grid: Grid, rows: Sequence[int]) -> list[str]:
    """Texts of heading rows joined column by column, merged cells counted in each of their columns."""
    parts: list[list[str]] = [[] for _ in range(grid.width)]
    for row in rows:
        texts = [grid.text(row, column) for column in range(grid.width)]
        for top, left, bottom, right in grid.merged:
            if top <= row <= bottom:
                origin = grid.text(max(top, 0), max(left, 0))
                for column in range(max(left, 0), min(right, grid.width - 1) + 1):
                    texts[column] = origin
        for column, text in enumerate(texts):
            if text and text not in parts[column]:
                parts[column].append(text)
    return [" ".join(part) for part in parts]


def find_wide(grid: Grid, words: Words) -> WideTable | None:
    """The best heading row of a grid: the one whose cells name most parameters, alone or joined with the next."""
    best: WideTable | None = None
    for row in range(min(grid.height, 50)):
        single = _candidate(grid, words, (row,))
        if single is not None and (best is None or single.score > best.score):
            best = single
        if grid.merged and row + 2 < grid.height and _spans_rows(grid, row):
            three = _candidate(grid, words, (row, row + 1, row + 2))
            beaten = max(best.score if best else 0, single.score if single else 0)
            if three is not None and _is_second_heading(grid, row + 2, words) and three.score > beaten:
                best = three
                continue
        below = row + 1 < grid.height and (single is None or single.score < grid.width)
        if below and not (single is not None and _holds_values(grid, single, row + 1)):
            pair = _candidate(grid, words, (row, row + 1))
            beaten = max(best.score if best else 0, single.score if single else 0)
            if pair is not None and pair.score + _is_second_heading(grid, row + 1, words) > beaten:
                best = pair
        if best is not None and best.score >= max(4, 0.5 * grid.width) and row > best.bottom:
            break  # what stands below a full heading is data
    return best


def _spans_rows(grid: Grid, row: int) -> bool:
    """Whether a cell of a row is merged over this row and the two below: the row begins a heading of three."""
    return any(top == row and bottom == row + 2 for top, _, bottom, _ in grid.merged)


def _candidate(grid: Grid, words: Words, rows: tuple[int, ...]) -> WideTable | None:
    for row in rows:
        if any(not (cell is None or type(cell) is str) for cell in grid.row(row)):
            return None
    labels = heading_labels(grid, rows)
    headings = [words.heading(label) if label else None for label in labels]
    named = [h for h in headings if h is not None]
    if not names_a_table([label.strip() for label, h in zip(labels, headings, strict=True) if h is not None]):
        return None
    if len(rows) > 1 and not any(grid.text(rows[0], c) for c in range(grid.width)):
        return None
    if any(is_title_row(grid, row, words) for row in rows):
        return None
    return WideTable(
        grid, rows[0], rows[-1], labels, headings, len({(h.parameter, h.aspect, h.station) for h in named})
    )


def _holds_values(grid: Grid, heading: WideTable, row: int) -> bool:
    """Whether a number stands right below a heading that names its parameter alone: then the row is data."""
    merged = [m for m in grid.merged if m[0] <= heading.top <= m[2]]
    return any(
        h is not None
        and not any(left <= column <= right for _, left, _, right in merged)
        and _NUMBER.fullmatch(grid.text(row, column).strip()) is not None
        for column, h in enumerate(heading.headings)
    )


def _is_second_heading(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row below a heading says of each size which part of it a column states (and maybe units)."""
    parts = 0
    for cell in grid.row(row):
        if is_blank(cell):
            continue
        if type(cell) is not str:
            return False
        if words.group(cell) in JOINABLE:
            parts += 1
        elif known_unit(cell.strip("[]() ")) is None and words.group(cell) != "VALUE":
            return False
    return parts > 0


def _no_data(cell: Any) -> bool:
    """Whether a cell can begin a row that holds no data."""
    if type(cell) is not str or cell[0] not in _FIRST_SIGNS:
        return False
    return not cell.strip() or _COMMENT.match(cell) is not None or _FOOTER.match(cell) is not None


def is_title_row(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row is of a title block: label and value in turn, and all labels that are known are of the machine."""
    texts = [text for column in range(grid.width) if (text := grid.text(row, column))]
    meant = [words.heading(text) for text in texts]
    values = [h for h, text in zip(meant[1::2], texts[1::2], strict=True) if h is not None and len(text) > 1]
    labels = [h for h in meant[::2] if h is not None]
    machine = all(h.entry.level == "machine" and h.parameter != "station" for h in labels)
    return len(texts) % 2 == 0 and len(labels) > 0 and machine and not values


def names_a_table(named: Sequence[str]) -> bool:
    """Whether the words of a row that name parameters make it a heading; lone letters may be values (station B)."""
    return len(named) >= 2 and (len(named) >= 3 or all(len(word) > 1 for word in named))


def _other_unit(shown: str, stated: str) -> bool:
    """Whether a cell shows a unit of its own that is not the one of its heading; what stands nearest counts."""
    one, other = known_unit(shown), known_unit(stated)
    return one is not None and other is not None and one.name != other.name


def is_units_row(grid: Grid, row: int) -> bool:
    """Whether every filled cell of a row is a unit or a dash, and one at least is a unit."""
    units = 0
    for cell in grid.row(row):
        if is_blank(cell):
            continue
        text = cell_text(cell).strip("[]() ")
        if type(cell) is not str:
            return False
        if known_unit(text) is not None:
            units += 1
        elif text not in ("-", "--", "–", "—", "1"):
            return False
    return units > 0


def read_wide(table: WideTable, words: Words, found: Found, length_unit: str, machine: str = "") -> Block:
    """Rows below a heading as a block; ``machine`` is what the title block names, where no column names machines."""
    grid = table.grid
    first = table.bottom + 1
    units: list[str] = [""] * grid.width
    if first < grid.height and is_units_row(grid, first):
        units = [grid.text(first, column).strip("[]() ") for column in range(grid.width)]
        units = ["" if known_unit(unit) is None else unit for unit in units]
        found.say(f"units row at {grid.place(first, 0).short()}")
        first += 1
    return _Rows(table, words, found, length_unit, machine, first, units).read()


@define(eq=False)
class _Rows:
    table: WideTable
    words: Words
    found: Found
    length_unit: str
    machine: str
    first: int
    units: list[str]
    _units_of: list[Heading | None] = field(factory=list, init=False)
    _keys_of: list[tuple[str, str]] = field(factory=list, init=False)
    _homeless: list[int] = field(factory=list, init=False)

    def read(self) -> Block:
        grid, table = self.table.grid, self.table
        headings = self._headings()
        self._units_of = [h if h is not None and h.aspect == "unit" else None for h in headings]
        machine_at = next((c for c, h in enumerate(headings) if h and h.parameter == "machine"), None)
        station_at = next((c for c, h in enumerate(headings) if h and h.parameter == "station"), None)
        rows = self._data_rows(machine_at, station_at)
        machines = self._keys(rows, machine_at) if machine_at is not None else [self.machine] * len(rows)
        machines = self._fill_machines(rows, machines, machine_at)
        stations = self._keys(rows, station_at)
        known = {text: self.words.station(text) for text in dict.fromkeys(stations)}
        stations = [known[text] for text in stations]
        by_heading = [h.station for h in headings if h and h.station]
        levels = {parameter(h.parameter).level for h in headings if h and h.parameter not in ("machine", "station")}
        if station_at is None and not by_heading and "station" in levels and len(rows):
            stations = [f"row {grid.lines[r]}" for r in rows.tolist()]
            self.found.say("no station is named; every row is a station of its own, named after its row")
        self._homeless = self._without_station(rows, machines, stations, station_at)
        self._keys_of = list(zip(machines, stations, strict=True))
        block = Block(list(machines), list(stations), [], self.length_unit)
        extra: dict[str, int] = {}
        count = len(rows)
        for column, heading in enumerate(headings):
            label = table.labels[column]
            if heading is None:
                self._unused(column, rows)
                continue
            base = np.arange(count)
            if heading.station and station_at is None:
                if heading.station not in extra:
                    extra[heading.station] = len(block.machines)
                    block.machines.extend(machines)
                    block.stations.extend([heading.station] * count)
                base = base + extra[heading.station]
            if heading.aspect == "unit":
                continue
            self._add(block, column, heading, label, rows, base)
        for start in extra.values():
            self._drop_unstated(block, start, count)
        return block

    def _without_station(
        self, rows: NDArray[np.intp], machines: Sequence[str], stations: Sequence[str], column: int | None
    ) -> list[int]:
        """Rows with a blank station among rows of their machine that name one: no station is filled in for them."""
        if column is None or "" not in stations:
            return []
        named = {machine for machine, station in zip(machines, stations, strict=True) if station}
        blank = [i for i, station in enumerate(stations) if not station and machines[i] in named]
        grid = self.table.grid
        of_stations = [c for c, h in enumerate(self.table.headings) if h and h.entry.level == "station" and c != column]
        result = []
        for index in blank:
            row = int(rows[index])
            if all(is_blank(grid.columns[c][row]) for c in of_stations):
                continue
            result.append(index)
            if len(result) <= _MOST_TOLD:
                place, expected = grid.place(row, column), "a station in every row that states something of one"
                message = (
                    f"{place}: the row names no station; its values of a station are not used; expected {expected}."
                )
                self.found.problems.append(
                    Problem("unreadable", None, "station", place, "", expected, message, "no-station-in-row")
                )
        return result

    def _drop_unstated(self, block: Block, start: int, count: int) -> None:
        """A station that only headings name is none of a machine whose cells for it are all blank."""
        stated = np.zeros(len(block.machines), dtype=bool)
        for strip in block.strips:
            inside = (strip.rows >= start) & (strip.rows < start + count)
            if inside.any():
                filled = [not is_blank(cell) for cell in strip.cells[inside].tolist()]
                stated[strip.rows[inside][filled]] = True
        for row in range(start, start + count):
            if not stated[row]:
                block.stations[row] = ""

    def _unit_column(self, heading: Heading) -> int | None:
        """Column that states the unit of each row for a parameter."""
        for column, other in enumerate(self._units_of):
            if other is not None and (other.parameter, other.station) == (heading.parameter, heading.station):
                return column
        return None

    def _headings(self) -> list[Heading | None]:
        """Headings with units from the units row; tolerance columns joined to the size on their left."""
        result: list[Heading | None] = []
        size: Heading | None = None
        for column, heading in enumerate(self.table.headings):
            label = self.table.labels[column]
            if heading is None and label and size is not None:
                aspect = JOINABLE.get(self.words.group(label), "")
                if aspect:
                    unit = split_heading_unit(label)[1] or size.unit
                    heading = Heading(size.parameter, size.station, unit, aspect, size.own_unit)
            elif heading is not None:
                size = heading if parameter(heading.parameter).kind == "toleranced" else None
            if heading is not None and self.units[column] and not heading.unit:
                heading = Heading(
                    heading.parameter, heading.station, self.units[column], heading.aspect, heading.own_unit
                )
            result.append(heading)
        return result

    def _data_rows(self, machine_at: int | None, station_at: int | None) -> NDArray[np.intp]:
        """Rows that hold data; comment, section and footer rows go to the unused cells."""
        grid = self.table.grid
        keep = np.ones(grid.height - self.first, dtype=bool)
        key = station_at if station_at is not None else machine_at if machine_at is not None else 0
        suspects: set[int] = set()
        for column in (c for c in (machine_at, station_at) if c is not None):
            keys = grid.columns[column]
            for index, cell in enumerate([] if isinstance(keys, TextColumn) else keys[self.first :].tolist()):
                if isinstance(cell, Bad) and keep[index]:
                    keep[index] = False
                    self._bad_key(self.first + index, column)
        for column in {key, 0}:
            cells = grid.columns[column][self.first :].tolist()
            suspects.update(index for index, cell in enumerate(cells) if not cell or _no_data(cell))
        for index in suspects:
            if not keep[index]:
                continue
            row = self.first + index
            filled = [c for c in range(grid.width) if not is_blank(grid.columns[c][row])]
            if not filled:
                keep[index] = False
                continue
            text = grid.text(row, filled[0])
            remark = bool(_COMMENT.match(text)) and text not in ("--",)
            lonely = len(filled) == 1 and grid.width > 2
            if lonely and not _FOOTER.match(text):
                if filled[0] == station_at:
                    lonely = False
                elif filled[0] == machine_at:
                    lonely = station_at is not None and not self._opens_machine(row, machine_at, station_at)
            if lonely and not remark and self.table.headings[filled[0]] is not None and filled[0] != 0:
                lonely = False
            if remark or lonely:
                keep[index] = False
                for column in filled:
                    what = "a comment row" if remark else "a section or footer row"
                    self.found.leave(
                        Unused(what, grid.text(row, column), grid.place(row, column), "not a row of values")
                    )
        return np.flatnonzero(keep) + self.first

    def _bad_key(self, row: int, key: int) -> None:
        """A row whose machine or station cannot be read speaks for none; its cells are listed."""
        grid = self.table.grid
        self.found.problems.append(unreadable_key(grid, row, key))
        for column in range(grid.width):
            if column != key and not is_blank(grid.columns[column][row]):
                reason = "the machine or station of its row cannot be read"
                label = self.table.labels[column]
                self.found.leave(Unused(label, visible(grid.text(row, column)), grid.place(row, column), reason))

    def _opens_machine(self, row: int, machine_at: int, station_at: int) -> bool:
        """Whether a row with a machine alone stands above stations whose machine cell is blank."""
        grid = self.table.grid
        below = row + 1
        return below < grid.height and not grid.text(below, machine_at) and bool(grid.text(below, station_at))

    def _keys(self, rows: NDArray[np.intp], column: int | None) -> list[str]:
        if column is None:
            return [""] * len(rows)
        column_cells = self.table.grid.columns[column][rows]
        if self.table.grid.merged:
            column_cells = self._down(column_cells, rows, column)
        cells = column_cells.tolist()
        if set(map(type, cells)) == {str}:
            return list(map(str.strip, cells))
        return ["" if isinstance(cell, Bad) else cell_text(cell) for cell in cells]

    def _fill_machines(self, rows: NDArray[np.intp], machines: list[str], column: int | None) -> list[str]:
        """Blank machine cells below a named machine belong to it, and that is said; a merged cell says it itself."""
        if column is None or "" not in machines:
            return machines
        grid = self.table.grid
        merged = {
            row for top, left, bottom, right in grid.merged if left <= column <= right for row in range(top, bottom + 1)
        }
        filled, current = [], ""
        carried: list[int] = []
        for row, machine in zip(rows.tolist(), machines, strict=True):
            if not machine and current and row not in merged:
                carried.append(row)
            current = machine or current
            filled.append(current)
        if carried:
            self.found.problems.append(filled_down(grid.place(carried[0], column), len(carried), "row"))
        return filled

    def _unused(self, column: int, rows: NDArray[np.intp]) -> None:
        """One entry for a column whose heading is not recognised."""
        grid, table = self.table.grid, self.table
        cells = grid.columns[column][rows].tolist()
        samples = list(dict.fromkeys(cell_text(cell) for cell in cells[:1000] if not is_blank(cell)))
        count = sum(1 for cell in cells if not is_blank(cell))
        label = table.labels[column]
        if not count and not label:
            return
        shown = ", ".join(visible(text, 40) for text in samples[:3]) + (f", … ({count} cells)" if count > 3 else "")
        at = table.bottom if label else int(rows[0]) if len(rows) else table.bottom
        reason = self.words.why(label) if label else "the column has no heading"
        self.found.leave(Unused(label, shown, grid.place(at, column), reason))

    def _add(
        self, block: Block, column: int, heading: Heading, label: str, rows: NDArray[np.intp], base: NDArray[np.intp]
    ) -> None:
        """The strips of one column: one, or one for each unit that number formats add."""
        grid = self.table.grid
        whole = len(rows) == grid.height - self.first
        cells = grid.columns[column][self.first :] if whole else grid.columns[column][rows]
        cells = self._inherit(cells, rows, column, heading)
        if self._homeless and heading.entry.level == "station":
            cells = object_column(cells.tolist())
            for index in self._homeless:
                if not is_blank(cells[index]):
                    place, read = grid.place(int(rows[index]), column), visible(cell_text(cells[index]))
                    self.found.leave(Unused(label, read, place, "the row names no station"))
                    cells[index] = None
        if len(rows) and grid.merged:
            cells = self._down(cells, rows, column)
        lines = grid.lines[rows]
        columns = np.full(len(rows), grid.first_column + column, dtype=np.int32)
        formats = {r: f for (r, c), f in grid.formats.items() if c == column} if grid.formats else {}
        by_unit: dict[str, list[int]] = {}
        unit_at = self._unit_column(heading)
        if unit_at is not None and not heading.unit:
            formats = {row: grid.text(row, unit_at) for row in rows.tolist() if grid.text(row, unit_at)}
        for index, row in enumerate(rows.tolist()) if formats else ():
            if row in formats and (not heading.unit or _other_unit(formats[row], heading.unit)):
                by_unit.setdefault(formats[row], []).append(index)
        for unit, some in by_unit.items():
            at = np.array(some)
            block.strips.append(
                Strip(heading.parameter, cells[at], base[at], sheet=grid.sheet, lines=lines[at], columns=columns[at],
                      **{**heading.traits(label), "unit": unit})
            )  # fmt: skip
        if by_unit:
            rest = np.setdiff1d(np.arange(len(rows)), [i for some in by_unit.values() for i in some])
            cells, base, lines, columns = cells[rest], base[rest], lines[rest], columns[rest]
        if len(cells):
            block.strips.append(
                Strip(
                    heading.parameter,
                    cells,
                    base,
                    sheet=grid.sheet,
                    lines=lines,
                    columns=columns,
                    **heading.traits(label),
                )
            )

    def _down(self, cells: Column, rows: NDArray[np.intp], column: int) -> Column:
        """Cells merged downwards count in each of their rows."""
        grid = self.table.grid
        index = {row: i for i, row in enumerate(rows.tolist())}
        copy: NDArray[Any] | None = None
        for top, left, bottom, right in grid.merged:
            if left <= column <= right and bottom > top and top in index:
                copy = object_column(cells.tolist()) if copy is None else copy
                for row in range(top + 1, bottom + 1):
                    if row in index:
                        copy[index[row]] = grid.columns[left][top]
        return cells if copy is None else copy

    def _inherit(self, cells: Column, rows: NDArray[np.intp], column: int, heading: Heading) -> Column:
        """An asterisk stands for the value of the generic (first) machine, at the same station."""
        if len(rows) < 2 or heading.parameter in ("machine", "station"):
            return cells
        stars = (
            cells.equal("*") if isinstance(cells, TextColumn) else np.flatnonzero([c == "*" for c in cells.tolist()])
        )
        if not len(stars):
            return cells
        first = self._keys_of[0][0]
        generic = {station: i for i, (machine, station) in enumerate(self._keys_of) if machine == first}
        cells = object_column(cells.tolist())
        told: dict[int, int] = {}
        source_of: dict[int, int] = {}
        for star in stars.tolist():
            machine, station = self._keys_of[star]
            source = generic.get(station, -1)
            if source in (-1, star) and (machine == first or len(generic) == 1):
                source = 0
            if source not in (-1, star) and not is_blank(cells[source]) and cells[source] != "*":
                source_of[star] = source
                told[source] = told.get(source, 0) + 1
                cells[star] = cells[source]
        for source, count in told.items():
            at = next(star for star, own in source_of.items() if own == source)
            place = self.table.grid.place(int(rows[at]), column)
            many = f"* in {count} cell{'s' * (count > 1)} of this column"
            message = (
                f"{place}: {many}; the value {visible(cell_text(cells[source]), 40)} of row "
                f"{self.table.grid.lines[rows[source]]} is taken; expected a value."
            )
            self.found.problems.append(
                Problem("assumption", None, heading.parameter, place, "*", "a value", message, "inherited")
            )
        return cells
