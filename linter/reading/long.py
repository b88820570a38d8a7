"""Tables with the parameter names down a column: one row per parameter, or one column per station (transposed)."""

import re
from collections.abc import Sequence

from attrs import define, evolve, field

from linter.reading.blocks import Block, Found, filled_down, grid_strip
from linter.reading.grids import Grid, cell_text, is_blank
from linter.reading.headings import Heading, Words
from linter.reading.intake import visible
from linter.reading.units import known_unit, split_heading_unit
from linter.stations import Unused
from linter.vocabulary import parameter

_ASPECTS = {"UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min", "CLASS": "tolerance"}
_SAMPLE = 300  # cells that tell what a column holds
_SECTION = re.compile(r"[\s\-=*#:\[\]]*(.*?)[\s\-=*#:\[\]]*")
_MEASURED = re.compile(r"actual|measured|result|istwert|ist\b|mesur|medid|misurat|実測|实测|измер", re.IGNORECASE)


@define(eq=False)
class Pieces:
    """Cells of a grid by what they state, as they are met."""

    grid: Grid
    rows: dict[tuple[str, str], int] = field(factory=dict)
    piles: dict[tuple[Heading, str], tuple[list[tuple[int, int]], list[int]]] = field(factory=dict)
    taken: set[tuple[int, int]] = field(factory=set)

    def add(self, heading: Heading, label: str, row: int, column: int, machine: str, station: str) -> None:
        """Keep one cell."""
        if is_blank(self.grid.columns[column][row]):
            return
        key = self.rows.setdefault((machine, station), len(self.rows))
        shape = self.grid.formats.get((row, column), "")
        if shape and not heading.unit:
            heading = evolve(heading, unit=shape)
        self.taken.add((row, column))
        at, rows = self.piles.setdefault((heading, label), ([], []))
        at.append((row, column))
        rows.append(key)

    def block(self, length_unit: str) -> Block:
        """The cells as a block."""
        block = Block([m for m, _ in self.rows], [s for _, s in self.rows], [], length_unit)
        for (heading, label), (at, rows) in self.piles.items():
            block.strips.append(grid_strip(self.grid, heading.parameter, at, rows, **heading.traits(label)))
        return block


@define(eq=False)
class LongTable:
    """A table whose parameter names stand in one column.

    Attributes
    ----------
    grid : Grid
        The region.
    header : int
        Header row, or -1 for none.
    name : int
        Column of the names.
    roles : dict of int to str
        What the other columns hold: ``VALUE``, ``UNIT``, ``EXPR``, ``UPPER``, ``LOWER``, ``MAX``, ``MIN``, ``CLASS``,
        ``STATION``, ``MACHINE``, ``NOTE``, or ``COLUMN`` for a station of a transposed table.
    score : int
        Number of names that are recognised.
    """

    grid: Grid
    header: int
    name: int
    roles: dict[int, str]
    score: int

    @property
    def transposed(self) -> bool:
        """Whether stations stand side by side."""
        return "COLUMN" in self.roles.values()


def find_long(grid: Grid, words: Words) -> LongTable | None:
    """The best reading of a grid with names down a column, or None."""
    for row in range(min(grid.height - 1, 50)):
        roles = header_roles(grid, row, words)
        found = set(roles.values())
        if "VALUE" in found or (found & {"EXPR", "UPPER", "LOWER", "MAX", "MIN"} and "NAME" in found):
            candidates = [c for c, role in roles.items() if role in ("NAME", "NOTE", "CHAR-ID")]
            counts = {c: _names_below(grid, c, row + 1, words) for c in candidates}
            best = max(counts, key=lambda c: counts[c], default=-1)
            if best >= 0 and counts[best]:
                roles.pop(best)
                return LongTable(grid, row, best, roles, counts[best])
    counts = {c: _names_below(grid, c, 0, words) for c in range(min(grid.width, 30))}
    best = max(counts, key=lambda c: counts[c], default=-1)
    if best < 0 or not counts[best]:
        return None
    return _without_header(grid, words, best, counts[best])


def header_roles(grid: Grid, row: int, words: Words) -> dict[int, str]:
    """Role of each column by the words of a header row; empty where a cell of the row is no text."""
    roles: dict[int, str] = {}
    values = 0
    measured: list[int] = []
    for column in range(grid.width):
        cell = grid.columns[column][row]
        if is_blank(cell):
            continue
        if type(cell) is not str:
            return {}
        heading = words.heading(cell)
        if heading is not None and heading.parameter in ("machine", "station"):
            roles[column] = heading.parameter.upper()
            continue
        groups = words.groups(cell)
        if "VALUE" in groups and _MEASURED.search(cell):
            roles[column] = "NOTE"
            measured.append(column)
        elif "VALUE" in groups and "NAME" not in groups:
            values += 1
            roles[column] = "VALUE" if values == 1 else "NOTE"
        elif groups:
            roles[column] = groups[0]
    if len(measured) == 1 and not values and not set(roles.values()) & {"EXPR", *_ASPECTS}:
        roles[measured[0]] = "VALUE"  # the only value there is: the actual one of the model, not a measurement
    return roles


def _names_below(grid: Grid, column: int, start: int, words: Words) -> int:
    """Number of distinct names that a column states."""
    texts = {cell for cell in grid.columns[column][start : start + 2000].tolist() if type(cell) is str}
    named = {words.heading(text) for text in texts if len(text.strip()) > 1 or len(texts) < 4}
    return len(named - {None})


def _without_header(grid: Grid, words: Words, name: int, score: int) -> LongTable | None:
    """Roles of columns by their content, where no header names a value column."""
    first = next(r for r in range(grid.height) if words.heading(grid.text(r, name)) is not None)
    roles: dict[int, str] = {}
    values: list[int] = []
    for column in range(name + 1, grid.width):
        cells = [cell for cell in grid.columns[column][first:].tolist() if not is_blank(cell)][:_SAMPLE]
        if not cells:
            continue
        units = sum(1 for cell in cells if type(cell) is str and known_unit(cell.strip("[]() ")) is not None)
        if units and units >= 0.5 * sum(1 for cell in cells if cell_text(cell) not in ("-", "–", "1")):
            roles[column] = "UNIT"
        else:
            values.append(column)
    keyed = any(
        (h := words.heading(grid.text(r, name))) is not None and h.parameter == "station" for r in range(grid.height)
    )
    header = -1
    if first > 0 and values and grid.text(first - 1, values[0]):
        header = first - 1
        for column in [*values, *roles]:
            role = words.group(grid.text(header, column))
            if role in ("NOTE", "UNIT", "EXPR", "DATUM", "CHAR-ID"):
                roles[column] = role
        values = [c for c in values if c not in roles]
    if not values:
        return None
    if header >= 0 or (keyed and len(values) > 1):
        titled = [c for c in values if header < 0 or grid.text(header, c)]
        roles.update({c: "COLUMN" if c in titled else "NOTE" for c in values})
    else:
        roles[values[0]] = "VALUE"
        roles.update(dict.fromkeys(values[1:], "NOTE"))
    return LongTable(grid, header, name, roles, score)


def read_long(table: LongTable, words: Words, found: Found, length_unit: str, machine: str) -> Block:
    """Rows of a long or transposed table as a block; ``machine`` is what the title block names."""
    reader = _Rows(table, words, found, machine)
    if table.transposed:
        reader.columns()
    else:
        reader.rows()
    reader.leave_columns()
    return reader.pieces.block(length_unit)


@define(eq=False)
class _Rows:
    table: LongTable
    words: Words
    found: Found
    machine: str
    pieces: Pieces = field(init=False)

    def __attrs_post_init__(self) -> None:
        self.pieces = Pieces(self.table.grid)

    def _columns(self, role: str) -> list[int]:
        return [c for c, r in self.table.roles.items() if r == role]

    def _one(self, role: str) -> int | None:
        return next(iter(self._columns(role)), None)

    def _unused(self, name: str, row: int, column: int, reason: str) -> None:
        grid = self.table.grid
        if not is_blank(grid.columns[column][row]):
            self.found.seen.append(name)
            self.found.leave(Unused(name, visible(grid.text(row, column)), grid.place(row, column), reason))

    def _leave(self, row: int, name: str, reason: str, but: Sequence[int] = ()) -> None:
        """List the value cells of a row as unused."""
        grid = self.table.grid
        columns = [
            c for c, role in self.table.roles.items() if role not in ("UNIT", "NOTE", "CHAR-ID", "STATION", "MACHINE")
        ]
        filled = [c for c in columns if not is_blank(grid.columns[c][row]) and c not in but]
        for column in filled or [self.table.name]:
            self._unused(name, row, column, reason)

    def _unit(self, row: int, column: int, heading: Heading) -> Heading:
        """The heading with the unit of its row or of the column's header."""
        grid = self.table.grid
        at = self._one("UNIT")
        unit = grid.text(row, at).strip("[] ") if at is not None else ""
        if unit in ("-", "--", "–", "—"):
            unit = ""
        if self.table.header >= 0:
            unit = split_heading_unit(grid.text(self.table.header, column))[1] or unit
        return evolve(heading, unit=unit) if unit else heading

    def rows(self) -> None:
        """One row per parameter."""
        grid, table = self.table.grid, self.table
        machine_at, station_at = self._one("MACHINE"), self._one("STATION")
        machine, station = self.machine, ""
        carried: list[int] = []
        for row in range(table.header + 1, grid.height):
            cell = grid.columns[table.name][row]
            if is_blank(cell):
                self._leave(row, "a row without a name", "no name stands beside it")
                continue
            label = cell_text(cell)
            if machine_at is not None:
                stated = grid.text(row, machine_at)
                if not stated and machine:
                    carried.append(row)
                machine = stated or machine
            heading = self.words.heading(label) if type(cell) is str else None
            if heading is None:
                station = self._section(row, label, station)
                continue
            value_at = self._value_column(row)
            if heading.parameter in ("machine", "station") and heading.aspect == "value" and value_at is not None:
                text = grid.text(row, value_at)
                if heading.parameter == "machine":
                    machine, station = text, ""
                else:
                    station = self.words.station(text)
                self.pieces.add(heading, label, row, value_at, machine, station)
                continue
            stated_station = self.words.station(grid.text(row, station_at)) if station_at is not None else ""
            where = stated_station or heading.station or station
            if parameter(heading.parameter).level == "machine" and not stated_station and not heading.station:
                where = ""
            self._row(row, label, heading, value_at, machine, where)
        if carried and machine_at is not None:
            place = grid.place(carried[0], machine_at)
            self.found.problems.append(filled_down(place, len(carried), "row"))

    def _value_column(self, row: int) -> int | None:
        """Value cell of a row: of the value column, or of the expression where no value stands."""
        grid = self.table.grid
        value, expression = self._one("VALUE"), self._one("EXPR")
        if value is not None and not is_blank(grid.columns[value][row]):
            return value
        if expression is not None and not is_blank(grid.columns[expression][row]):
            return expression
        return None

    def _row(self, row: int, label: str, heading: Heading, value_at: int | None, machine: str, station: str) -> None:
        """The value and the tolerance cells of one parameter."""
        grid = self.table.grid
        toleranced = parameter(heading.parameter).kind == "toleranced"
        if value_at is not None:
            self.pieces.add(self._unit(row, value_at, heading), label, row, value_at, machine, station)
        for role, aspect in _ASPECTS.items():
            for column in self._columns(role):
                if is_blank(grid.columns[column][row]):
                    continue
                if toleranced:
                    part = evolve(self._unit(row, column, heading), aspect=aspect)
                    self.pieces.add(part, label, row, column, machine, station)
                elif value_at is None and role in ("UPPER", "MAX"):
                    self.pieces.add(self._unit(row, column, heading), label, row, column, machine, station)
                else:
                    self._unused(label, row, column, f"{heading.parameter} carries no tolerance")
        stated = [c for c in self.table.roles if not is_blank(grid.columns[c][row])]
        if not stated:
            self.found.seen.append(label)

    def _section(self, row: int, label: str, station: str) -> str:
        """A row without a known name: a section that names a station, or nothing that is used."""
        grid = self.table.grid
        others = [c for c in range(grid.width) if c != self.table.name and not is_blank(grid.columns[c][row])]
        inner = _SECTION.fullmatch(label)
        named = self.words.names.station(inner.group(1)) if inner and not others and len(label) < 60 else None
        if named:
            self.found.say(
                f"{grid.place(row, self.table.name).short()}: the rows below belong to station {visible(named)}"
            )
            return named
        self._leave(row, label, self.words.why(label))
        return station

    def columns(self) -> None:
        """One column per station."""
        grid, table = self.table.grid, self.table
        columns = self._columns("COLUMN")
        machines: dict[int, str] = dict.fromkeys(columns, self.machine)
        stations: dict[int, str] = dict.fromkeys(columns, "")
        named: dict[str, tuple[int, str, Heading]] = {}
        start = table.header + 1
        for row in range(start, grid.height):
            heading = self.words.heading(grid.text(row, table.name))
            if heading is not None and heading.parameter in ("machine", "station"):
                named.setdefault(heading.parameter, (row, grid.text(row, table.name), heading))
        if "machine" in named:
            machines = self._across(named["machine"][0], columns)
        if "station" in named:
            stations = {c: self.words.station(grid.text(named["station"][0], c)) for c in columns}
        elif table.header >= 0:
            stations = {c: self.words.station(grid.text(table.header, c)) for c in columns}
            self.found.say(f"stations are named by the heading row {grid.lines[table.header]}")
        for key, (row, label, heading) in named.items():
            for column in columns:
                self.pieces.add(
                    heading, label, row, column, machines[column], "" if key == "machine" else stations[column]
                )
        for row in range(start, grid.height):
            label = grid.text(row, table.name)
            heading = self.words.heading(label)
            if heading is not None and heading.parameter in ("machine", "station"):
                continue
            if heading is None:
                if any(not is_blank(grid.columns[c][row]) for c in range(grid.width)):
                    self._leave(
                        row,
                        label or "a row without a name",
                        self.words.why(label) if label else "no name stands beside it",
                    )
                continue
            for column in columns:
                self.pieces.add(
                    self._unit(row, column, heading),
                    label,
                    row,
                    column,
                    machines[column],
                    heading.station or stations[column],
                )

    def leave_columns(self) -> None:
        """One entry for each column that is not read: comments, numbers of characteristics, measured values."""
        grid, table = self.table.grid, self.table
        used = {"VALUE", "UNIT", "STATION", "MACHINE", "COLUMN", *_ASPECTS}
        for column in range(grid.width):
            role = table.roles.get(column, "")
            if column == table.name or role in used or (role == "EXPR" and self._one("VALUE") is None):
                continue
            rows = [r for r in range(table.header + 1, grid.height) if not is_blank(grid.columns[column][r])]
            rows = [r for r in rows if (r, column) not in self.pieces.taken]
            if not rows:
                continue
            label = grid.text(table.header, column) if table.header >= 0 else ""
            samples = list(dict.fromkeys(visible(grid.text(r, column), 40) for r in rows[:200]))
            shown = ", ".join(samples[:3]) + (f", … ({len(rows)} cells)" if len(samples) > 3 else "")
            what = {"NOTE": "a column of notes or results", "EXPR": "expressions; the value beside them is read"}
            reason = what.get(role, "a column that says nothing about the values")
            self.found.leave(Unused(label, shown, grid.place(rows[0], column), reason))

    def _across(self, row: int, columns: list[int]) -> dict[int, str]:
        """Machine of each column; a blank right of a named one belongs to it, which is said unless they are merged."""
        grid = self.table.grid
        merged = {
            c for top, left, bottom, right in grid.merged if top <= row <= bottom for c in range(left + 1, right + 1)
        }
        result, current, carried = {}, "", []
        for column in columns:
            text = grid.text(row, column)
            if not text and current and column not in merged:
                carried.append(column)
            current = text or current
            result[column] = current
        if carried:
            self.found.problems.append(filled_down(grid.place(row, carried[0]), len(carried), "column"))
        return result
