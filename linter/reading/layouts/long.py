"""Tables with the parameter names down a column: one row per parameter, or one column per station (transposed)."""

import re
from collections.abc import Sequence

from attrs import define, evolve, field

from linter.model.stations import Problem, Unused
from linter.model.vocabulary import parameter
from linter.reading.cells.units import known_unit, split_heading_unit
from linter.reading.files.grids import Bad, Grid, cell_text, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.characteristics import Characteristics
from linter.reading.layouts.find_long import ASPECTS, LongTable, find_long, header_roles, section_station
from linter.reading.layouts.strips import Block, Found, filled_down, grid_strip, unreadable_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.names import IS_LARGEST

__all__ = ["LongTable", "find_long", "header_roles", "read_long"]

_OVER_UNIT = re.compile(r"=?\s*\(.*\)\s*/\s*([^\W\d_]{1,4}|[\"″'])")  # ( 2 in ) / in
_ZERO = re.compile(r"[+-]?0+(?:[.,]0*)?|[.,]0+")


@define(eq=False)
class Pieces:
    """Cells of a grid by what they state, as they are met."""

    grid: Grid
    rows: dict[tuple[str, str], int] = field(factory=dict)
    piles: dict[tuple[Heading, str], tuple[list[tuple[int, int]], list[int]]] = field(factory=dict)
    taken: set[tuple[int, int]] = field(factory=set)
    parts: dict[tuple[int, int], str] = field(factory=dict)

    def add(
        self, heading: Heading, label: str, row: int, column: int, machine: str, station: str, part: str = ""
    ) -> None:
        """Keep one cell, or the part of its text that states the value."""
        if is_blank(self.grid.columns[column][row]):
            return
        if part:
            self.parts[row, column] = part
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
            strip = grid_strip(self.grid, heading.parameter, at, rows, **heading.traits(label))
            for index, cell in enumerate(at):
                if cell in self.parts:
                    strip.whole[index] = cell_text(strip.cells[index])
                    strip.cells[index] = self.parts[cell]  # type: ignore[index]
            block.strips.append(strip)
        return block


def read_long(table: LongTable, words: Words, found: Found, length_unit: str, machine: str) -> Block:
    """Rows of a long or transposed table as a block; ``machine`` is what the title block names."""
    reader = _Rows(table, words, found, machine, length_unit)
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
    length_unit: str
    pieces: Pieces = field(init=False)
    characteristics: Characteristics = field(init=False)

    def __attrs_post_init__(self) -> None:
        self.pieces = Pieces(self.table.grid)
        self.characteristics = Characteristics(self.table.grid, self.found, self.length_unit)
        self.characteristics.look_for_kinds(self._one("KIND"))

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
            c
            for c, role in self.table.roles.items()
            if role not in ("UNIT", "NOTE", "CHAR-ID", "STATION", "MACHINE", "RESULT", "KIND", "PART")
        ]
        filled = [c for c in columns if not is_blank(grid.columns[c][row]) and c not in but]
        for column in filled or ([] if but else [self.table.name]):
            self._unused(name, row, column, reason)

    def _unit(self, row: int, column: int, heading: Heading) -> Heading:
        """The heading with the unit of its row or of the column's header."""
        grid = self.table.grid
        at = self._one("UNIT")
        unit = grid.text(row, at).strip("[] ") if at is not None else ""
        if self.table.header >= 0:
            unit = split_heading_unit(grid.text(self.table.header, column))[1] or unit
        entry = heading.entry
        if entry.unit in ("", "1"):
            return evolve(heading, unit=unit) if unit and known_unit(unit) else heading
        stated = known_unit(unit) if unit else None
        if not heading.unit and (not unit or (stated is not None and stated.dimension == "ratio")):
            unit = self._hidden_unit(row, column, heading) or unit
        return evolve(heading, unit=unit) if unit else heading

    def _hidden_unit(self, row: int, column: int, heading: Heading) -> str:
        """The unit that an expression divides by (``( 2 in ) / in``): a number without unit counts that unit."""
        grid, at = self.table.grid, self._one("EXPR")
        if at is None or at == column:
            return ""
        match = _OVER_UNIT.fullmatch(grid.text(row, at))
        if match is None or known_unit(match[1]) is None:
            return ""
        unit, place, read = match[1], grid.place(row, column), grid.text(row, column)
        expected = "a value with its unit"
        message = f"{place}: no unit stands beside {visible(read, 40)}, and its expression divides by {unit}; " + (
            f"{unit} is taken; expected {expected}."
        )
        self.found.problems.append(
            Problem("assumption", None, heading.parameter, place, visible(read), expected, message, "hidden-unit")
        )
        return unit

    def rows(self) -> None:
        """One row per parameter."""
        grid, table = self.table.grid, self.table
        machine_at, station_at = self._one("MACHINE"), self._one("STATION")
        machine, station = self.machine, ""
        carried: list[int] = []
        for row in range(table.start, grid.height):
            label = self._label(row)
            if not label:
                self._leave(row, "a row without a name", "no name stands beside it")
                continue
            bad = [c for c in (machine_at, station_at) if c is not None and isinstance(grid.columns[c][row], Bad)]
            if bad:
                self._bad_key(row, bad[0], label)
                continue
            if machine_at is not None:
                stated = grid.text(row, machine_at)
                if not stated and machine:
                    carried.append(row)
                machine = stated or machine
            heading = self.words.heading(label)
            if heading is None:
                station = self._section(row, label, station)
                continue
            if (heading := self._part(row, label, heading)) is None:
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

    def _label(self, row: int) -> str:
        """Name of a row; a row that says which part of a size it states (``Min``) may have it from the row above."""
        grid, part_at = self.table.grid, self._one("PART")
        label = grid.text(row, self.table.name)
        if label or part_at is None or not grid.text(row, part_at):
            return label
        above = row - 1
        while above >= self.table.start and not grid.text(above, self.table.name) and grid.text(above, part_at):
            above -= 1
        if above < self.table.start or not grid.text(above, part_at):
            return ""
        self.found.say("a row that states another part of a size (Max, Min) takes the name that stands above it")
        return grid.text(above, self.table.name)

    def _part(self, row: int, label: str, heading: Heading) -> Heading | None:
        """The heading with the part of the size that the row states; None where that is not clear."""
        part_at = self._one("PART")
        word = self.table.grid.text(row, part_at) if part_at is not None else ""
        if not word or self.words.group(word) == "VALUE":
            return heading
        aspect = ASPECTS.get(self.words.group(word), "")
        if not aspect:
            self._leave(row, label, f"what {visible(word, 40)} says of it is not known")
        elif heading.entry.kind != "toleranced":
            self._leave(row, label, f"{heading.parameter} carries no tolerance")
        else:
            return evolve(heading, aspect=aspect)
        return None

    def _bad_key(self, row: int, column: int, label: str) -> None:
        """A row whose machine or station cannot be read speaks for none."""
        grid = self.table.grid
        self.found.problems.append(unreadable_key(grid, row, column))
        self._leave(row, label, "the machine or station of its row cannot be read")

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
        part, named = "", heading
        limits = [c for role in ("UPPER", "MAX") for c in self._columns(role) if grid.text(row, c)]
        at = value_at if value_at is not None else next(iter(limits), None)
        if at is not None:
            heading = self._unit(row, at, heading)
        if at is not None and parameter(heading.parameter).kind in ("number", "toleranced"):
            meant = self.characteristics.meant(row, at, heading)
            if meant.heading is None:
                self._leave(row, label, meant.reason, (at,) if meant.told else ())
                return
            heading, part = meant.heading, meant.part
            named = evolve(named, parameter=heading.parameter, own_unit=heading.own_unit)
            if parameter(heading.parameter).level == "machine" and not heading.station:
                station = ""
            if limits and heading.parameter.endswith(IS_LARGEST) and _ZERO.fullmatch(grid.text(row, at)):
                self._unused(label, row, at, "the limit beside it is the largest value")
                value_at = limits[0]
        toleranced = parameter(heading.parameter).kind == "toleranced"
        if value_at is not None:
            self.pieces.add(heading, label, row, value_at, machine, station, part)
        for role, aspect in ASPECTS.items():
            for column in self._columns(role):
                if is_blank(grid.columns[column][row]) or column == value_at:
                    continue
                if toleranced:
                    shape = evolve(self._unit(row, column, named), aspect=aspect)
                    minus = role == "LOWER" and self.table.header >= 0  # its heading may hold the sign of the column
                    told = f"{label} {grid.text(self.table.header, column)}" if minus else label
                    self.pieces.add(shape, told, row, column, machine, station)
                elif value_at is None and role in ("UPPER", "MAX"):
                    self.pieces.add(self._unit(row, column, named), label, row, column, machine, station)
                else:
                    self._unused(label, row, column, f"{heading.parameter} carries no tolerance")
        stated = [c for c in self.table.roles if not is_blank(grid.columns[c][row])]
        if not stated:
            self.found.seen.append(label)

    def _section(self, row: int, label: str, station: str) -> str:
        """A row without a known name: a section that names a station, or nothing that is used."""
        grid = self.table.grid
        named = section_station(grid, row, self.table.name, self.words)
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
        start = table.start
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
            label = self._label(row)
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
            if (heading := self._part(row, label, heading)) is None:
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
        used = {"VALUE", "UNIT", "PART", "STATION", "MACHINE", "COLUMN", *ASPECTS}
        for column in range(grid.width):
            role = table.roles.get(column, "")
            if (
                column in (table.name, self.characteristics.kinds)
                or role in used
                or (role == "EXPR" and self._one("VALUE") is None)
            ):
                continue
            rows = [r for r in range(table.start, grid.height) if not is_blank(grid.columns[column][r])]
            rows = [r for r in rows if (r, column) not in self.pieces.taken]
            if not rows:
                continue
            label = grid.text(table.header, column) if table.header >= 0 else ""
            samples = list(dict.fromkeys(visible(grid.text(r, column), 40) for r in rows[:200]))
            shown = ", ".join(samples[:3]) + (f", … ({len(rows)} cells)" if len(samples) > 3 else "")
            what = {
                "NOTE": "a column of notes",
                "EXPR": "expressions; the value beside them is read",
                "RESULT": "measured values or verdicts; the design states what is reviewed",
                "CHAR-ID": "numbers of characteristics",
                "DATUM": "datums",
                "UNNAMED": "no heading says whose values these are",
            }
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
