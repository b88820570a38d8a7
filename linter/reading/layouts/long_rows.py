"""Tables with one row per parameter."""

import re

from attrs import define, evolve, field

from linter.model.vocabulary import parameter
from linter.reading.cells.fit_classes import CLASS
from linter.reading.cells.units import conversion
from linter.reading.files.grids import Bad, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.beside import bearing_of_station, feature_beside
from linter.reading.layouts.lone import SHARED
from linter.reading.layouts.long_table import ASPECTS
from linter.reading.layouts.lost import ENOUGH, is_value, not_read, row_text
from linter.reading.layouts.names_down import NamesDown
from linter.reading.layouts.pair_alone import pair_alone
from linter.reading.layouts.part_rows import part_with_material
from linter.reading.layouts.placed import placed
from linter.reading.layouts.remarks import said_beside, says_both, speed_remarked
from linter.reading.layouts.requirement_columns import requirements_beside
from linter.reading.layouts.sections import heads_machine, part_stations, section_below, section_label
from linter.reading.layouts.sides import Side, judged_within, of_part_remarked, side_of, side_of_sheet, why, within
from linter.reading.layouts.single_values import ZERO, of_all_positions, single_values, upper_limits
from linter.reading.layouts.station_columns import are_groups, may_be_of_station, word_for_all
from linter.reading.layouts.strips import Block, filled_down, unreadable_key
from linter.reading.layouts.title import units_said
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Heading
from linter.reading.words.in_brackets import bearing_said
from linter.reading.words.limits import IS_LARGEST
from linter.reading.words.machine_words import can_name_machine
from linter.reading.words.pairs import PAIR
from linter.reading.words.part_evidence import RING_OF_SEAT
from linter.reading.words.parts import concepts_said, is_bearing

_DASH = re.compile(r"\s+[-–—−]\s+")
_COMMENT_SIGN = re.compile(r"\s*(?:#+(?!\d)|//+|!+|;+|--+|'')\s*")


def _fits(unit: str, heading: Heading) -> bool:
    """Whether a unit is one of the kind that a parameter is stated in."""
    return heading.entry.unit not in ("", "1") and conversion(unit, heading.entry.unit) is not None


def _beside_bearing(text: str) -> str:
    """The word for above or below beside the one for a bearing, which has no deviations (``Palier supérieur``)."""
    rest = [piece for piece in text.strip(" :").split() if not is_bearing(piece)]
    said = concepts_said(rest[0]) if len(rest) == 1 and rest[0] != text.strip(" :") else frozenset()
    return rest[0] if said and said <= {"upper", "lower", "largest", "smallest"} else ""


@define(eq=False)
class ByRow(NamesDown):
    """Reads a table whose every row states one parameter."""

    machine: str = field(init=False)
    station: str = field(init=False, default="")
    named_by: str = field(init=False, default="")
    section: Side | None = field(init=False, default=None)
    outer: str = field(init=False, default="")
    several: bool = field(init=False, default=False)
    of_machine: bool = field(init=False, default=False)
    groups: bool = field(init=False, default=False)
    of_group: str = field(init=False, default="")
    of_all: str = field(init=False, default="")
    below: list[int] = field(init=False, factory=list)
    singles: dict[int, int] | None = field(init=False, default=None)
    nameless: list[int] = field(init=False, factory=list)
    commented: list[int] = field(init=False, factory=list)

    def read(self) -> Block:
        """The block."""
        grid, table = self.table.grid, self.table
        machine_at = self.one("MACHINE")
        self.machine, self.station = self.outside.machine, self.outside.station
        self.of_all = word_for_all(grid, self.one("STATION"), table.name, table.start, self.words)
        self.groups = are_groups(grid, self.one("STATION"), table.name, table.start, self.words)
        carried: list[int] = []
        for row in range(table.start, grid.height):
            label = self.label(row)
            self._note_group(row, label)
            if not label:
                self.leave(row, "a row without a name", "no name stands beside it")
                self.nameless.append(row)
                continue
            bad = [
                c for c in (machine_at, self.one("STATION")) if c is not None and isinstance(grid.columns[c][row], Bad)
            ]
            if bad:
                self.found.problems.append(unreadable_key(grid, row, bad[0]))
                self.leave(row, label, "the machine or station of its row cannot be read")
                continue
            if machine_at is not None:
                stated = grid.text(row, machine_at)
                if not stated and self.machine:
                    carried.append(row)
                self.machine = stated or self.machine
            self._named_row(row, label)
        if carried and machine_at is not None:
            self.found.problems.append(filled_down(grid.place(carried[0], machine_at), len(carried), "row"))
        if self.below and (at := self.one("STATION")) is not None:
            self.found.problems.append(filled_down(grid.place(self.below[0], at), len(self.below), "row", "station"))
        self._tell_lost()
        self.leave_columns()
        return self.pieces.block(self.length_unit)

    def _note_group(self, row: int, label: str) -> None:
        """The group that a row begins, whether its name is known or not; a row of the machine ends the one above."""
        text = self.table.grid.text(row, at) if self.groups and (at := self.one("STATION")) is not None else ""
        if text and (label not in ("", text) or self.words.station_said(text)):  # a line of remarks begins none
            self.of_group = self.words.station(text) if may_be_of_station(label, self.words) else ""

    def _stated_station(self, row: int, station_at: int | None, level: str) -> str:
        """The station of a row by its column, or by the row that begins its group."""
        if station_at is None:
            return ""
        text = self.table.grid.text(row, station_at)
        stated = self.words.station(text) if text != self.of_all else ""
        if not self.groups:
            return stated
        if level != "station":
            return ""
        if self.of_group and not stated:
            self.below.append(row)
        return self.of_group

    def _states_station(self, row: int) -> bool:
        """Whether a column says the station of a row, in the row itself or where its group begins."""
        at = self.one("STATION")
        stated = at is not None and self.words.station(self.table.grid.text(row, at))
        return bool(stated or (self.groups and self.of_group) or row in self.table.objects)

    def _named_row(self, row: int, label: str) -> None:
        """One row with a name: a parameter, a section, or nothing that is known."""
        grid = self.table.grid
        if self._heads_rows(row) or self._pair_in_one_cell(row, label):
            return
        self.section = section_below(grid, row, self.table.name, self.section, self.words)
        value_at = self._value_column(row)
        heading = self._meant(row, label, value_at)
        if heading is None or (heading.parameter in ("machine", "station") and heading.station):
            self._other_row(row, label)
            return
        if (heading := self.part(row, label, heading)) is None:
            return
        if heading.parameter in ("machine", "station") and heading.aspect == "value" and value_at is not None:
            text = grid.text(row, value_at)
            if heading.parameter == "machine":
                self.machine, self.station = text, ""
            else:
                self._begin("station")
                self.station, self.named_by = self.words.station(text), label
            self.pieces.add(heading, label, row, value_at, self.machine, self.station)
            return
        self._row(row, label, heading, value_at, self._place_of(row, heading))

    def _meant(self, row: int, label: str, value_at: int | None) -> Heading | None:
        """What a row states, by its name, its cells, its remarks and what the rows above it say."""
        grid, side = self.table.grid, self._side(row)
        heading = within(self.words, side, label)
        if side is not None and side.is_thing:
            return heading
        heading = self.of_size_above(row, label, self.of_ring_or_part(row, label, heading), side)
        if heading is None and self.of_machine and "NAME" in self.words.groups(label):
            heading = None if value_at is not None and grid.text(row, value_at).isdigit() else Heading("machine")
        heading = self.with_its_unit(row, label, side, heading)
        if value_at is not None:
            cells = (self._with_class(row, value_at) if heading is None else grid.text(row, value_at),)
            heading = judged_within(self.words, side, label, heading, cells)
            if self.station or self._states_station(row):
                heading = bearing_of_station(self.words, label, heading, grid.text(row, value_at), self.named_by)
        if heading is None and value_at is not None:
            heading = of_part_remarked(self.words, label, [grid.text(row, c) for c in range(grid.width)], value_at)
        if value_at is not None and self._is_position_of_bearing(side, label, grid.text(row, value_at)):
            heading = Heading("bearing_designation", self.words.station_said(label))
        heading = speed_remarked(self.table, row, label, heading, self.words)
        if heading is None and value_at is not None and self._names_machine(row, label, grid.text(row, value_at)):
            heading = Heading("machine")
        return heading

    def _place_of(self, row: int, heading: Heading) -> str:
        """The station that a row is of, or none where it is of the machine or of all its stations."""
        level = parameter(heading.parameter).level
        stated = self.table.objects.get(row, self._stated_station(row, self.one("STATION"), level))
        if stated or heading.station:
            return stated or heading.station
        of_all = heading.parameter in SHARED and of_all_positions(self.table, row, self.words, self.label)
        return "" if level == "machine" or of_all else self.station

    def _with_class(self, row: int, value_at: int) -> str:
        """The value of a row, with the class of its size where a column of classes states it (``52 H6``)."""
        text = self.table.grid.text
        value, classes = text(row, value_at), [text(row, c) for c in self.columns_of("CLASS")]
        classes = [said for said in classes if CLASS.fullmatch(said)]
        return f"{value} {classes[0]}" if len(classes) == 1 and value[:1].isdigit() else value

    def _is_position_of_bearing(self, side: Side | None, label: str, value: str) -> bool:
        """Whether a row, below a word that heads the bearings, is a position and the designation there."""
        below = side is not None and side.side == "bearing"
        return below and bool(self.words.station_said(label)) and designation_strength(value) != "no"

    def _names_machine(self, row: int, label: str, value: str) -> bool:
        """Whether a row names the machine by a word for its sort: none is named yet, and no part or position begun."""
        whole = self.table.grid.merged_text(row, at) if (at := self.one("SIDE")) is not None else ""
        return self._is_unnamed() and can_name_machine(label, value, self.words, whole)

    def _is_unnamed(self) -> bool:
        return not (self.machine or self.station or self.section or self.one("MACHINE") is not None)

    def _heads_rows(self, row: int) -> bool:
        """Take a line that says whose the rows below it are: a part, a station, both, or the machine."""
        grid, at = self.table.grid, self.table.name
        section = section_label(grid, row, at)
        if (of_part := part_with_material(self.table, row)) is not None:
            section = of_part[0].word
            material = Heading(f"{of_part[0].side}_material")
            self.pieces.add(material, section, row, of_part[1], self.machine, "", of_part[2])
        both = placed(section, self.words) if section else None
        station = self._section_station(section) if section else ""
        if both is not None and (both.side.side != "bearing" or self._is_other_place(both.station, station)):
            self.section, self.station, self.of_machine = both.side, both.station, False
            said = f"the {both.side.side} of {visible(both.station)}"
        elif not station and (side := side_of(section)):
            self._begin("side")
            self.section, said = side, f"the {side.side}"
        elif station:
            self._begin("station")
            self.station, self.of_machine, said = station, False, visible(station)
        else:
            if whole := heads_machine(grid, row, at, self.words):
                self.section, self.station, self.of_machine = None, self.outside.station, True
            return whole
        self.found.say(f"{grid.place(row, at).short()}: the rows below are of {said}")
        return True

    def _pair_in_one_cell(self, row: int, text: str) -> bool:
        """Take a value of the machine that stands behind a colon in the cell of its name, alone in its row."""
        if sum(1 for cell in self.table.grid.row(row) if not is_blank(cell)) > 1:
            return False
        if (pair := pair_alone(text, self.words, unnamed=self._is_unnamed())) is None:
            return False
        heading, label, value = pair
        if heading.parameter == "machine":
            self.machine, self.station = value, ""
        self.pieces.add(heading, label, row, self.table.name, self.machine, "", value)
        return True

    def _value_column(self, row: int) -> int | None:
        """Value cell of a row: of the value column, or of the expression where no value stands."""
        grid = self.table.grid
        value, expression = self.value_at(row), self.one("EXPR")
        if value is not None and not is_blank(grid.columns[value][row]):
            return value
        if expression is not None and not is_blank(grid.columns[expression][row]):
            return expression
        return self._lone_limit(row) if value is None else None

    def _lone_limit(self, row: int) -> int | None:
        """The first of two columns of limits where it holds the only value of a row, as all single values do."""
        if self.singles is None:
            self.singles = single_values(self.table, self.words, self.label)
        return self.singles.get(row)

    def _row(self, row: int, label: str, heading: Heading, value_at: int | None, station: str) -> None:
        """The value and the tolerance cells of one parameter."""
        grid = self.table.grid
        part, named = "", heading
        limits = upper_limits(self.table, row, named)
        at = value_at if value_at is not None else next(iter(limits), None)
        if at is not None:
            heading = self.with_unit(row, at, heading)
        if (
            at is not None
            and not heading.aspect.startswith(("dimensions", "fits", PAIR))
            and parameter(heading.parameter).kind in ("number", "toleranced")
        ):
            meant = self.characteristics.meant(row, at, heading)
            if meant.heading is None:
                self.leave(row, label, meant.reason, (at,) if meant.told else ())
                return
            heading, part = meant.heading, meant.part
            named = evolve(named, parameter=heading.parameter, own_unit=heading.own_unit)
            if parameter(heading.parameter).level == "machine" and not heading.station:
                station = ""
            if limits and heading.parameter.endswith(IS_LARGEST) and ZERO.fullmatch(grid.text(row, at)):
                self.leave_cell(label, row, at, "the limit beside it is the largest value")
                value_at = limits[0]
        if value_at is not None:
            self.pieces.add(heading, label, row, value_at, self.machine, station, part)
        self._tolerance(row, label, named, value_at, station)
        self._beside(row, label, named, station)
        self._bearing_in_brackets(row, label, named, station)
        beside = said_beside(self.table, row, value_at, heading, self.words) if value_at is not None else ()
        for found, c, said in (*beside, *requirements_beside(self.table, row, named)):
            self.pieces.add(found, label, row, c, self.machine, station * (not says_both(grid.text(row, c))), said)
        if all(is_blank(grid.columns[c][row]) for c in self.table.roles):
            self.found.seen.append(label)

    def _bearing_in_brackets(self, row: int, label: str, named: Heading, station: str) -> None:
        """Keep the bearing that the name of a seat says in brackets, of which the cell of the name is the place."""
        said = bearing_said(label) if station else None
        name = "bearing_designation" if said is not None and said.designation else RING_OF_SEAT.get(named.parameter, "")
        if said is not None and name:
            at = Heading(name, unit="" if said.designation else "mm")
            self.pieces.add(at, label, row, self.table.name, self.machine, station, said.designation or said.size)

    def _tolerance(self, row: int, label: str, named: Heading, value_at: int | None, station: str) -> None:
        """The cells of a row that state deviations, limits or a class."""
        grid = self.table.grid
        toleranced = named.entry.kind == "toleranced"
        for role, aspect in ASPECTS.items():
            for column in self.columns_of(role):
                if is_blank(grid.columns[column][row]) or column == value_at:
                    continue
                if role == "CLASS" and (unit := self.unit_at(row)) and unit == grid.text(row, column):
                    continue  # the unit of the value
                shape = self.with_unit(row, column, named)
                if toleranced:
                    minus = role == "LOWER" and self.table.header >= 0  # its heading may hold the sign of the column
                    plain = _DASH.sub(" ", label) if minus else label  # a dash between words is no sign
                    told = f"{plain} {grid.text(self.table.header, column)}" if minus else label
                    self.pieces.add(evolve(shape, aspect=aspect), told, row, column, self.machine, station)
                elif value_at is None and column in upper_limits(self.table, row, named):
                    self.pieces.add(shape, label, row, column, self.machine, station)
                else:
                    self.leave_cell(label, row, column, f"{named.parameter} carries no tolerance")

    def _beside(self, row: int, label: str, named: Heading, station: str) -> None:
        """Other features of the seat that a row names, each in a column of its own."""
        grid, unit = self.table.grid, self.unit_at(row)
        for column in self.columns_of("BESIDE"):
            head = grid.text(self.table.header, column)
            found = feature_beside(self.words, label, head, self._side(row))
            if found is None or is_blank(grid.columns[column][row]):
                continue
            if unit and not found.unit and not found.parameter.endswith("_roughness") and _fits(unit, found):
                found = evolve(found, unit=unit)  # a roughness is stated in its own unit, whatever that of the row
            self.pieces.add(evolve(found, station=named.station), f"{label} {head}", row, column, self.machine, station)

    def _other_row(self, row: int, label: str) -> None:
        """A row without a known name: a section, a remark, or nothing that is used."""
        grid, at = self.table.grid, self.table.name
        if unit := units_said(row_text(grid, row)):
            self.length_unit = self.found.one_length_unit(self.length_unit, unit, grid.place(row, at))
        if (sign := _COMMENT_SIGN.match(label)) and self.words.heading(label[sign.end() :]):
            self.commented.append(row)
        self.leave(row, label, why(self.words, self._side(row), label))

    def _section_station(self, section: str) -> str:
        """The station that a row with nothing but its label says; free words for one count where several rows do."""
        if station := self.words.names.station(section):
            return station
        if not self.several:
            rows = range(self.table.start, self.table.grid.height)
            sections = {section_label(self.table.grid, row, self.table.name) for row in rows} - {""}
            self.several = len({self.words.station_said(t) or _beside_bearing(t) for t in sections} - {""}) > 1
        said, first = self.words.station_said(section), section.partition(" ")[0]
        own = self.named_by_head(section) if said and is_bearing(first) else said or _beside_bearing(section)
        return own if self.several else ""

    def _is_other_place(self, place: str, station: str) -> bool:
        """Whether a line for the bearing of a place (``Bearing data DE``) says no other station, or one of a part."""
        named = part_stations(self.table.grid, self.table.name, self.table.start, self.words) if station else ()
        return place != station and (not station or place in named)

    def _begin(self, level: str) -> None:
        """A row that heads the rows below it: of the outer sort, those of the inner sort before it hold no more."""
        self.outer = self.outer or level
        if self.outer == level == "station":
            self.section = None
        elif self.outer == level and self.station and not self.outside.station:
            self.station = ""

    def _side(self, row: int) -> Side | None:
        """The part that a row is of: as its own column says, or the heading of its block."""
        return self.table.parts.get(row, None if self.table.parts else self.section or side_of_sheet(self.table.grid))

    def _tell_lost(self) -> None:
        """Rows that are not read and hold values, and rows that state again what stands above them."""
        grid = self.table.grid
        for rows, what in ((self.commented, "a run of comment rows"), (self.nameless, "a run of rows without a name")):
            values = [r for r in rows if (at := self._value_column(r)) is not None and self._holds_value(r, at)]
            if len(values) >= ENOUGH:
                place, read = grid.place(values[0], self.table.name), "; ".join(row_text(grid, r) for r in values[:5])
                self.found.problems.append(not_read(place, what, read, len(values)))
        self.tell_twice()

    def _holds_value(self, row: int, at: int) -> bool:
        """Whether a row that is not read holds a value of what its name would mean, or any number beside no name."""
        cell, label = self.table.grid.columns[at][row], self.table.grid.text(row, self.table.name)
        heading = self.words.heading(_COMMENT_SIGN.sub("", label, count=1)) if label else Heading("bore_diameter")
        return heading is not None and is_value(cell, heading.entry)
