"""Transposed tables: names down a column, one column per station."""

import re

from attrs import define, evolve

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import is_blank
from linter.reading.layouts.beside import is_bearing_number
from linter.reading.layouts.lone import SHARED, lone_speed, machine_heading
from linter.reading.layouts.lost import row_text
from linter.reading.layouts.names_down import NamesDown
from linter.reading.layouts.remarks import said_beside, speed_remarked
from linter.reading.layouts.sections import part_over, section_below, section_label
from linter.reading.layouts.sides import Side, judged_within, side_of, why, within
from linter.reading.layouts.strips import Block, filled_down
from linter.reading.layouts.title import units_said
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Heading
from linter.reading.words.machine_words import can_name_machine

#: A deviation in mm or inches, or none.
_SMALL = re.compile(r"[+\-−]0?[.,]\d+|[+\-−]?0(?:[.,]0+)?")


@define(eq=False)
class ByColumn(NamesDown):
    """Reads a table whose every column states one station."""

    def read(self) -> Block:
        """The block."""
        columns = self.columns_of("COLUMN")
        named = self._named_rows()
        machines = dict.fromkeys(columns, self.outside.machine)
        if "machine" in named:
            machines = self._across(named["machine"][0], columns)
        stations = self._stations(columns, named.get("station"))
        for key, (row, label, heading) in named.items():
            for column in columns:
                station = "" if key == "machine" else stations[column]
                self.pieces.add(heading, label, row, column, machines[column], station)
        self._designated_heads(machines, stations)
        section = part_over(self.table.grid, self.table.header, self.table.name)
        between = range(self.table.machines + 1, self.table.header) if self.table.machines >= 0 else ()
        for row in (*between, *range(self.table.start, self.table.grid.height)):
            section = self._row(row, section, machines, stations)
        self.tell_twice()
        self.leave_columns()
        return self.pieces.block(self.length_unit)

    def _named_rows(self) -> dict[str, tuple[int, str, Heading]]:
        """The first row that names machines, and the first that names stations."""
        named: dict[str, tuple[int, str, Heading]] = {}
        if (above := self.table.machines) >= 0:
            named["machine"] = above, self.table.grid.text(above, self.table.name), Heading("machine")
        for row in range(self.table.start, self.table.grid.height):
            label = self.table.grid.text(row, self.table.name)
            if side_of(section_label(self.table.grid, row, self.table.name)):
                continue  # "Bearing" above a block of rows is no row of stations
            heading = self._judged(row, label, self.with_its_unit(row, label, None, self.words.heading(label)))
            heading = heading or self._machine_of_kind(row, label)
            if heading is not None and heading.parameter == "station" and self._is_of_all(row):
                continue  # Supporto | ghisa, diviso |: no row of stations
            if heading is not None and heading.parameter in ("machine", "station"):
                named.setdefault(heading.parameter, (row, label, heading))
        return named

    def _is_of_all(self, row: int) -> bool:
        """Whether a row states one value below a heading row that names every station."""
        columns = self.columns_of("COLUMN")
        filled = sum(1 for column in columns if self.table.grid.text(row, column))
        return self.table.header >= 0 and len(columns) > 1 and filled < len(columns)

    def _machine_of_kind(self, row: int, label: str) -> Heading | None:
        """The machine, in a row of one value below a word for its sort (``Model``), where nothing else names it."""
        filled = [text for column in self.columns_of("COLUMN") if (text := self.table.grid.text(row, column))]
        named = len(filled) == 1 and not self.outside.machine and can_name_machine(label, filled[0], self.words)
        return Heading("machine") if named else None

    def _judged(self, row: int, label: str, heading: Heading | None, section: Side | None = None) -> Heading | None:
        """What a row is by its name and its cells: a row of designations names no stations."""
        cells = [self.table.grid.text(row, column) for column in self.columns_of("COLUMN")]
        judged = judged_within(self.words, section, label, heading, cells) if label else heading
        if judged is None or judged.parameter != "station" or not self._heads_tell_apart():
            return judged
        numbers = [cell for cell in cells if cell]
        of_bearing = all(is_bearing_number(self.words, label, cell) for cell in numbers)
        return Heading("bearing_designation") if numbers and of_bearing else judged

    def _heads_tell_apart(self) -> bool:
        """Whether every column has a heading of its own, in words."""
        heads = [
            self.table.grid.text(self.table.header, c) for c in self.columns_of("COLUMN") if self.table.header >= 0
        ]
        return len(heads) > 1 and len(set(heads)) == len(heads) and all(any(map(str.isalpha, head)) for head in heads)

    def _stations(self, columns: list[int], named: tuple[int, str, Heading] | None) -> dict[int, str]:
        """Station of each column, from the row that names stations, or else from the heading row."""
        grid, header = self.table.grid, self.table.header
        if named is not None:
            return {c: self.words.station(grid.text(named[0], c)) for c in columns}
        if header >= 0:
            self.found.say(f"stations are named by the heading row {grid.lines[header]}")
            heads = {c: self.table.heads.get(c, grid.text(header, c)) for c in columns}
            return {c: self.named_by_head(text) for c, text in heads.items()}
        return dict.fromkeys(columns, "")

    def _designated_heads(self, machines: dict[int, str], stations: dict[int, str]) -> None:
        """Take bearings that head the columns (``6206 C3 | 6205``); positions above them name the stations."""
        grid, header = self.table.grid, self.table.header
        if header < 0 or not all(designation_strength(grid.text(header, c)) == "certain" for c in stations):
            return
        above = {c: self.words.station_said(grid.text(header - 1, c)) if header else "" for c in stations}
        if all(above.values()) and len({*above.values()}) == len(above):
            stations.update(above)
        label = grid.text(header, self.table.name)
        for column, station in stations.items():
            heading = Heading("bearing_designation")
            self.pieces.add(heading, label, header, column, machines[column], station)

    def _row(self, row: int, section: Side | None, machines: dict[int, str], stations: dict[int, str]) -> Side | None:
        """One row: what it names, in every column; returns the section that holds below it."""
        grid, at = self.table.grid, self.table.name
        if side := side_of(section_label(grid, row, at)):
            self.found.say(f"{grid.place(row, at).short()}: the rows below are of the {side.side}")
            return side
        section = section_below(grid, row, at, section, self.words)
        section = self.table.parts.get(row) if self.table.parts else section
        label = self.label(row)
        if self._heads_again(row, label, stations):
            return side_of(label) or section
        heading = self._meant(row, label, section)
        if heading is not None and heading.parameter in ("machine", "station"):
            return section
        if self._beside_unit(row, label):
            return section
        filled = [column for column in machines if not is_blank(grid.columns[column][row])]
        if heading is None and len(filled) == 1 and label:
            heading = lone_speed(label, grid.text(row, filled[0]), self.unit_at(row), self.words)
        if heading is None:
            if unit := units_said(row_text(grid, row)):
                self.length_unit = self.found.one_length_unit(self.length_unit, unit, grid.place(row, at))
            if any(not is_blank(grid.columns[c][row]) for c in range(grid.width)):
                reason = why(self.words, section, label) if label else "no name stands beside it"
                self.leave(row, label or "a row without a name", reason)
            return section
        if (heading := self.part(row, label, heading)) is not None:
            heading = self._deviation(row, heading, filled)
            of_all = self._of_all_stations(heading, filled, machines)
            for column, machine in machines.items():
                shape = self.with_unit(row, column, heading)
                station = "" if of_all else heading.station or stations[column]
                self.pieces.add(shape, label, row, column, machine, station)
                beside = said_beside(self.table, row, column, shape, self.words) if column in filled else ()
                for found, at_remark, said in beside:
                    self.pieces.add(found, label, row, at_remark, machine, station, said)
        return section

    def _heads_again(self, row: int, label: str, stations: dict[int, str]) -> bool:
        """Whether a row names the stations again, as over each block; they hold below it as it has them, in any order.

        A row of letters that says what it is (``Datum``) names none, nor does one that names others.
        """
        texts = {column: self.table.grid.text(row, column) for column in stations}
        if len(texts) < 2 or not all(texts.values()) or self.table.header < 0:
            return False
        here = {column: self.words.station(text) for column, text in texts.items()}
        if {*here.values()} != {*stations.values()} or len({*here.values()}) < len(here):
            return False
        if label and side_of(label) is None and not self._names_places(row, label):
            return False
        stations.update(here)
        return True

    def _names_places(self, row: int, label: str) -> bool:
        """Whether the label of a row says that it names stations."""
        heading = self._judged(row, label, self.words.heading(label))
        return "NAME" in self.words.groups(label) or (heading is not None and heading.parameter == "station")

    def _beside_unit(self, row: int, label: str) -> bool:
        """Take the value of the machine that stands in the column of units, its unit in the first one of values."""
        grid, at, columns = self.table.grid, self.one("UNIT"), self.columns_of("COLUMN")
        texts = {c: text for c in columns if (text := grid.text(row, c))}
        unit = texts.get(columns[0], "")
        if at is None or not grid.text(row, at) or {*texts} - {columns[0]}:
            return False
        if known_unit(grid.text(row, at)) is not None or (unit and known_unit(unit) is None):
            return False
        heading = machine_heading(label, grid.text(row, at), unit, self.words)
        if heading is None:
            return False
        if not unit and heading.entry.unit and not heading.unit:
            self.leave_cell(label, row, at, "no unit stands beside it")
            return True
        shape = evolve(heading, unit=unit) if unit else heading
        self.pieces.add(shape, label, row, at, self.outside.machine, "")
        return True

    def _meant(self, row: int, label: str, section: Side | None) -> Heading | None:
        """What a row states, by its name, its cells and its remarks; a row of one value names no stations."""
        named = self.of_ring_or_part(row, label, within(self.words, section, label))
        named = self.with_its_unit(row, label, section, named)
        heading = self.of_size_above(row, label, self._judged(row, label, named, section), section)
        heading = speed_remarked(self.table, row, label, heading, self.words) or self._machine_of_kind(row, label)
        return None if heading is not None and heading.parameter == "station" and self._is_of_all(row) else heading

    def _deviation(self, row: int, heading: Heading, filled: list[int]) -> Heading:
        """A row of limits (``Upper limit``) as one of deviations where its numbers are small and have signs."""
        aspect = {"max": "upper", "min": "lower"}.get(heading.aspect, "")
        texts = [self.table.grid.text(row, column) for column in filled]
        return evolve(heading, aspect=aspect) if aspect and all(map(_SMALL.fullmatch, texts)) else heading

    def _of_all_stations(self, heading: Heading, filled: list[int], machines: dict[int, str]) -> bool:
        """Whether the one value of a row, in the first column, is of all stations: those of the machine stand there."""
        first = next(iter(machines))
        if heading.parameter not in SHARED or heading.station or filled != [first] or len({*machines.values()}) > 1:
            return False
        grid, others = self.table.grid, [column for column in machines if column != first]
        for other in range(self.table.start, grid.height):
            if is_blank(grid.columns[first][other]) or any(not is_blank(grid.columns[c][other]) for c in others):
                continue
            label = self.label(other)
            named = self.with_its_unit(other, label, None, self.words.heading(label))
            if named is not None and named.entry.level == "machine":
                return len(machines) > 1
        return False

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
