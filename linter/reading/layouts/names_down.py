"""Tables with the parameter names down a column: what reading by rows and reading by columns have in common."""

import re
from collections.abc import Sequence
from functools import cached_property

from attrs import define, evolve, field

from linter.model.stations import Problem, Unused
from linter.model.vocabulary import vocabulary
from linter.reading.cells.signs import caseless
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.candidate import Outside
from linter.reading.layouts.characteristics import Characteristics
from linter.reading.layouts.long_table import ASPECTS, LongTable
from linter.reading.layouts.lost import ENOUGH, cut_off, is_value, not_read, row_text
from linter.reading.layouts.ring_or_part import of_part
from linter.reading.layouts.sections import head_left
from linter.reading.layouts.sides import Side, within
from linter.reading.layouts.strips import Block, Found, grid_strip
from linter.reading.layouts.units_row import NO_UNIT
from linter.reading.words.headings import Heading, Words
from linter.reading.words.limits import IS_LARGEST, IS_SMALLEST
from linter.reading.words.measured_words import UNCHANGED
from linter.reading.words.parts import concepts_said
from linter.reading.words.positions_said import without_wanted

_OVER_UNIT = re.compile(r"=?\s*\(.*\)\s*/\s*([^\W\d_]{1,4}|[\"″'])")  # ( 2 in ) / in
_ROUGHNESS = re.compile(r"R_?a\b[.,:]?\s*")
_PLAIN_NUMBER = re.compile(r"[Ø⌀øφΦϕ∅Ф]?\s*[+\-−±]?\s*\d*[.,]?\d+(?:\s*[^\d\s]{1,8})?")
#: What states a unit among remarks (a lone letter may mean anything).
_UNIT = re.compile(r"\[?(?:mm|[µμ]m|um|k?N|rpm|r/min|min-1|min⁻¹|1/min|U/min|tr/min|об/мин|мм|мкм|к?Н|kg|кг|°C|h)\]?")
_NO_VALUES = (
    "UNIT", "NOTE", "CHAR-ID", "STATION", "STATION-OF", "MACHINE", "RESULT", "KIND", "PART", "SIDE", "ELSEWHERE",
    "OLDER",
)  # fmt: skip
#: What the columns that are not read are, by their role.
_UNREAD = {
    "NOTE": "a column of notes",
    "EXPR": "expressions; the value beside them is read",
    "RESULT": "measured values or verdicts; the design states what is reviewed",
    "CHAR-ID": "numbers of characteristics",
    "DATUM": "datums",
    "OLDER": "values before a change; the new ones are read",
    "UNNAMED": "no heading says whose values these are",
}


@define(eq=False)
class Pieces:
    """Cells of a grid by what they state, as they are met."""

    grid: Grid
    rows: dict[tuple[str, str], int] = field(factory=dict)
    piles: dict[tuple[Heading, str], tuple[list[tuple[int, int]], list[int]]] = field(factory=dict)
    taken: set[tuple[int, int]] = field(factory=set)
    parts: dict[tuple[Heading, int, int], str] = field(factory=dict)
    stated: dict[tuple[Heading, str, str], tuple[int, int]] = field(factory=dict)
    again: dict[tuple[str, str], list[tuple[tuple[int, int], tuple[int, int]]]] = field(factory=dict)

    def add(
        self, heading: Heading, label: str, row: int, column: int, machine: str, station: str, part: str = ""
    ) -> None:
        """Keep one cell, or the part of its text that states the value."""
        if is_blank(self.grid.columns[column][row]):
            return
        key = self.rows.setdefault((machine, station), len(self.rows))
        shape = self.grid.formats.get((row, column), "")
        if shape and not heading.unit:
            heading = evolve(heading, unit=shape)
        if part:
            self.parts[heading, row, column] = part
        self.taken.add((row, column))
        first = self.stated.setdefault((heading, machine, station), (row, column))
        if station and first != (row, column) and self.grid.text(*first) == self.grid.text(row, column):
            self.again.setdefault((machine, station), []).append((first, (row, column)))
        at, rows = self.piles.setdefault((heading, label), ([], []))
        at.append((row, column))
        rows.append(key)

    def block(self, length_unit: str) -> Block:
        """The cells as a block."""
        block = Block([m for m, _ in self.rows], [s for _, s in self.rows], [], length_unit)
        for (heading, label), (at, rows) in self.piles.items():
            strip = grid_strip(self.grid, heading.parameter, at, rows, **heading.traits(label))
            for index, (row, column) in enumerate(at):
                if (part := self.parts.get((heading, row, column))) is not None:
                    strip.whole[index] = cell_text(strip.cells[index])
                    strip.cells[index] = part  # type: ignore[index]
            block.strips.append(strip)
        return block


@define(eq=False)
class NamesDown:
    """Reads a table with the names down a column; what stands in a row is for the two ways of reading to say."""

    table: LongTable
    words: Words
    found: Found
    outside: Outside
    pieces: Pieces = field(init=False)
    characteristics: Characteristics = field(init=False)
    length_unit: str = field(init=False)
    size: Heading | None = field(init=False, default=None)
    size_of: tuple[str, ...] = field(default=(), init=False)

    def __attrs_post_init__(self) -> None:
        self.pieces = Pieces(self.table.grid)
        self.length_unit = self.outside.length_unit
        self.characteristics = Characteristics(self.table.grid, self.found, self.length_unit)
        self.characteristics.look_for_kinds(self.one("KIND"))

    def columns_of(self, role: str) -> list[int]:
        """Columns with a role."""
        return [c for c, r in self.table.roles.items() if r == role]

    def one(self, role: str) -> int | None:
        """The first column with a role."""
        return next(iter(self.columns_of(role)), None)

    def leave_cell(self, name: str, row: int, column: int, reason: str) -> None:
        """List one cell as unused."""
        grid = self.table.grid
        if not is_blank(grid.columns[column][row]):
            self.found.seen.append(name)
            text, unit = grid.text(row, column), known_unit(self.unit_at(row))
            if unit is not None and unit.dimension not in ("length", "ratio") and column in self.columns_of("VALUE"):
                text = f"{text} {self.unit_at(row)}"  # -10 °C is no deviation
            self.found.leave(Unused(name, visible(text), grid.place(row, column), reason))

    def leave(self, row: int, name: str, reason: str, but: Sequence[int] = ()) -> None:
        """List the value cells of a row as unused."""
        grid = self.table.grid
        columns = [c for c, role in self.table.roles.items() if role not in _NO_VALUES]
        filled = [c for c in columns if not is_blank(grid.columns[c][row]) and c not in but]
        for column in filled or ([] if but else [self.table.name]):
            self.leave_cell(name, row, column, reason)

    def value_at(self, row: int) -> int | None:
        """The column of values; that of the values before a change where a row says that nothing changes."""
        at, older = self.one("VALUE"), self.one("OLDER")
        unchanged = at is not None and older is not None and caseless(self.table.grid.text(row, at)) in UNCHANGED
        return older if unchanged else at

    def unit_at(self, row: int) -> str:
        """The unit that stands in a row, without the sign of the roughness before it (``Ra``, ``Ra µm``).

        Where no column of units states one, it may stand beside deviations of other rows, or as a remark.
        """
        at, text = self.one("UNIT"), self.table.grid.text
        stated = text(row, at).strip("[] ") if at is not None else ""
        if at is None or (stated not in NO_UNIT and known_unit(_ROUGHNESS.sub("", stated)) is None):
            columns = (*self.columns_of("CLASS"), *self._units_remarked)
            beside = (said for c in columns if known_unit(said := text(row, c).strip("[] ")) is not None)
            stated = next(beside, stated)
        return _ROUGHNESS.sub("", stated)

    @cached_property
    def _units_remarked(self) -> list[int]:
        """Columns of remarks where two rows or more state a unit and nothing else."""
        grid, rows = self.table.grid, range(self.table.start, self.table.grid.height)
        notes = [c for c in self.columns_of("NOTE") if c > self.table.name]
        units = {c: sum(_UNIT.fullmatch(text) is not None for r in rows if (text := grid.text(r, c))) for c in notes}
        return [c for c, count in units.items() if count > 1]

    def with_unit(self, row: int, column: int, heading: Heading) -> Heading:
        """The heading with the unit of its row or of the column's header."""
        grid = self.table.grid
        unit = self.unit_at(row)
        no_unit = unit in NO_UNIT or known_unit(unit) is None
        unit = "" if no_unit and heading.aspect == "tolerance" else unit  # a class has none
        if self.table.header >= 0 and not (self.table.roles.get(column) == "COLUMN" and self._without_units(unit)):
            said = self.words.unit_of(grid.text(self.table.header, column))
            unit = unit if said == "min" and self.table.roles.get(column) == "MIN" else said or unit  # A min
        entry = heading.entry
        if entry.unit in ("", "1"):
            return evolve(heading, unit=unit) if unit and known_unit(unit) else heading
        stated = known_unit(unit) if unit else None
        if not heading.unit and (not unit or (stated is not None and stated.dimension == "ratio")):
            unit = self._hidden_unit(row, column, heading) or unit
        return evolve(heading, unit=unit) if unit else heading

    def _without_units(self, of_row: str) -> bool:
        """Whether what looks like a unit in the head of a station (``Bottom (foot)``) is of its name."""
        heads = [self.table.grid.text(self.table.header, column) for column in self.columns_of("COLUMN")]
        return known_unit(of_row) is not None or not all(map(self.words.unit_of, heads))

    def _hidden_unit(self, row: int, column: int, heading: Heading) -> str:
        """The unit that an expression divides by (``( 2 in ) / in``): a number without unit counts that unit."""
        grid, at = self.table.grid, self.one("EXPR")
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

    def named_by_head(self, text: str) -> str:
        """The station that a head over values says: behind a colon or as a letter alone (``Lagerstelle A``).

        Other words with that for a bearing or a position are part of the name (``Palier avant``), ``Soll`` is not.
        """
        text = rest if (rest := without_wanted(text)) and self.words.station_said(rest) else text
        said = self.words.station_said(text)
        whole = text[-1:] in (")", "）")  # Brg 1 (pump end)
        behind_colon = text.removesuffix(said).rstrip()[-1:] in (":", "：")
        told = said and not whole and (said.isupper() or len(said) < 3 or behind_colon)
        return said if told else self.words.station(text)

    def label(self, row: int) -> str:
        """Name of a row; a row that says which part of a size it states (``Min``) may have it from the row above."""
        grid, part_at = self.table.grid, self.one("PART")
        label = grid.text(row, self.table.name) or head_left(grid, row, self.table.name)
        if label or part_at is None or not grid.text(row, part_at):
            return label or self._before_names(row)
        above = row - 1
        while above >= self.table.start and not grid.text(above, self.table.name) and grid.text(above, part_at):
            above -= 1
        if above < self.table.start or not grid.text(above, part_at):
            return ""
        self.found.say("a row that states another part of a size (Max, Min) takes the name that stands above it")
        return grid.text(above, self.table.name)

    def _before_names(self, row: int) -> str:
        """The name of a row that stands below the head of the numbers, as one of the whole machine may; else empty."""
        grid, column = self.table.grid, self.table.name - 1
        text = grid.text(row, column) if column >= 0 else ""
        if not text or self.table.roles.get(column, "CHAR-ID") != "CHAR-ID" or self.words.heading(text) is None:
            return ""
        numbers = sum(grid.text(r, column).rstrip(".").isdigit() for r in range(self.table.start, grid.height))
        return text if numbers > 2 else ""

    def part(self, row: int, label: str, heading: Heading) -> Heading | None:
        """The heading with the part of the size that the row states; None where that is not clear."""
        part_at = self.one("PART")
        word = self.table.grid.text(row, part_at) if part_at is not None else ""
        if part_at is None or not word or self.words.group(word) == "VALUE":
            return heading
        aspect = ASPECTS.get(self.words.group(word), "")
        always = {"max": IS_LARGEST, "min": IS_SMALLEST}.get(aspect, ())
        remark = self.table.header >= 0 and self.words.group(self.table.grid.text(self.table.header, part_at)) == "NOTE"
        if heading.parameter.endswith(always) or (remark and not aspect):
            return heading  # a fillet radius is a largest one
        if not aspect:
            self.leave(row, label, f"what {visible(word, 40)} says of it is not known")
        elif heading.entry.kind != "toleranced":
            self.leave(row, label, f"{heading.parameter} carries no tolerance")
        else:
            return evolve(heading, aspect=aspect)
        return None

    def of_ring_or_part(self, row: int, label: str, heading: Heading | None) -> Heading | None:
        """The heading of a row; a bore or a shoulder is that of the part where its row or those below it say so."""
        return heading and of_part(self.table, row, label, heading, self.words, self.label)

    def of_size_above(self, row: int, label: str, heading: Heading | None, side: Side | None) -> Heading | None:
        """The heading of a row; a row that says a part of a size only (``es``, ``Upper dev.``) is of the size above.

        Rows of sizes and of their parts follow each other; any other row ends that, as another part or position does. A
        nominal size alone below the word
        for a shaft or a housing, with its tolerance in the rows below it, is that of the seat.
        """
        if heading is None and side is not None and self._is_nominal(row, label, side):
            heading = Heading(f"{side.side}_seat_diameter", unit=self.words.unit_of(label))
        if self.size_of != (of := self._whose(row, side)):
            self.size, self.size_of = None, of
        if heading is None and self.size is None and side is not None and self._is_limit(row, label, side):
            return Heading(f"{side.side}_seat_diameter", aspect=ASPECTS[self.words.group(label)])
        if heading is None and self.size is not None and (aspect := ASPECTS.get(self.words.group(label), "")):
            return evolve(self.size, aspect=aspect, unit=self.words.unit_of(label) or self.size.unit)
        if label or any(not is_blank(cell) for cell in self.table.grid.row(row)):
            toleranced = heading is not None and heading.entry.kind == "toleranced" and heading.aspect == "value"
            self.size = heading if toleranced else None
        return heading

    def _is_limit(self, row: int, label: str, side: Side) -> bool:
        """Whether a row states a limit of a seat: the largest or the least size of a part, beside the other one."""
        if not _may_hold_seat(side):
            return False
        rows = (r for r in (row - 1, row + 1) if self.table.start <= r < self.table.grid.height)
        beside = {self.words.group(self.label(r)) for r in rows if self._whose(r, side) == self._whose(row, side)}
        other = {"MAX": "MIN", "MIN": "MAX"}.get(self.words.group(label), "")
        return other != "" and other in beside

    def _whose(self, row: int, side: Side | None) -> tuple[str, ...]:
        """The part of a row, and the position and machine that it states in columns of their own, or those above it."""
        columns = [c for c, role in sorted(self.table.roles.items()) if role in ("STATION", "STATION-OF", "MACHINE")]
        above = self.size_of[1:] or ("",) * len(columns)
        stated = (self.table.grid.text(row, c) or before for c, before in zip(columns, above, strict=True))
        return (side.side if side is not None else "", *stated)

    def _is_nominal(self, row: int, label: str, side: Side) -> bool:
        """Whether a row states the nominal size of a seat: it says so, and a class or a deviation stands below it."""
        if not _may_hold_seat(side):
            return False
        below = next((text for r in range(row + 1, self.table.grid.height) if (text := self.label(r))), "")
        return self.words.group(label) == "VALUE" and self.words.group(below) in {*ASPECTS} - {"MAX", "MIN"}

    def with_its_unit(self, row: int, label: str, side: Side | None, heading: Heading | None) -> Heading | None:
        """What a name says together with the unit of its row, where it says nothing alone (``Speed``, ``1/min``)."""
        names_machine = heading is not None and heading.parameter == "machine" and not heading.own_unit
        unit = self.unit_at(row) if (heading is None or names_machine) and label else ""
        stands = unit not in NO_UNIT and known_unit(unit) is not None
        said = within(self.words, side, f"{label} [{unit}]") if unit and stands else None
        return said or heading  # Rotor, kg: its mass

    def leave_columns(self) -> None:
        """One entry for each column that is not read: comments, numbers of characteristics, measured values."""
        grid, table = self.table.grid, self.table
        used = {"VALUE", "UNIT", "PART", "SIDE", "STATION", "STATION-OF", "MACHINE", "COLUMN", "ELSEWHERE", *ASPECTS}
        for column in range(grid.width):
            role = table.roles.get(column, "")
            if (
                column in (table.name, self.characteristics.kinds)
                or role in used
                or (role == "EXPR" and self.one("VALUE") is None)
            ):
                continue
            rows = [r for r in range(table.start, grid.height) if not is_blank(grid.columns[column][r])]
            units = [r for r in rows if column in self._units_remarked and _UNIT.fullmatch(grid.text(r, column))]
            rows = [r for r in rows if (r, column) not in self.pieces.taken and r not in units]
            if not rows:
                continue
            label = grid.text(table.header, column) if table.header >= 0 else ""
            if self._is_meanings(rows, column):
                continue
            samples = list(dict.fromkeys(visible(grid.text(r, column), 40) for r in rows[:200]))
            shown = ", ".join(samples[:3]) + (f", … ({len(rows)} cells)" if len(samples) > 3 else "")
            reason = _UNREAD.get(role, "a column that says nothing about the values")
            if role in ("", "NOTE", "UNNAMED"):
                self._tell_lost_column(rows, column, shown, plain=role != "UNNAMED")
            self.found.leave(Unused(label, shown, grid.place(rows[0], column), reason))

    def _is_meanings(self, rows: Sequence[int], column: int) -> bool:
        """Whether a column is that of the template which tells what each parameter means."""
        grid, entries = self.table.grid, vocabulary()
        told = [entries.get(grid.text(row, self.table.name)) for row in rows]
        return all(
            e is not None and grid.text(r, column).startswith(e.meaning) for r, e in zip(rows, told, strict=True)
        )

    def _tell_lost_column(self, rows: Sequence[int], column: int, shown: str, *, plain: bool) -> None:
        """A column that is not read and holds values of the names on its left may be a station."""
        grid, table = self.table.grid, self.table
        values = []
        stated = self.one("VALUE")
        if stated is not None and all(grid.text(row, column) == grid.text(row, stated) for row in rows):
            return  # the value once more
        for row in rows:
            heading, text = self.words.heading(grid.text(row, table.name)), grid.text(row, column)
            if plain and not _PLAIN_NUMBER.fullmatch(text):
                continue
            if heading is not None and len(text) < 40 and is_value(text, heading.entry):
                values.append(text)
        signed = [text for text in values if text[0] in "+-−±"]  # deviations, of which two are enough
        counted = [int(text) for text in values if text.isdigit()]
        running = len(counted) == len(values) and (counted == sorted(set(counted)) or len(set(counted)) == 1)
        if (len(values) >= ENOUGH and not running) or len(signed) > 1:
            self.found.problems.append(not_read(grid.place(rows[0], column), "a column", shown, len(values)))

    def tell_twice(self) -> None:
        """A station whose values are stated twice, and alike: another station may carry its name."""
        self._tell_cut_off()
        grid = self.table.grid
        for key, pairs in self.pieces.again.items():
            if len(pairs) >= ENOUGH:
                before, here = (grid.place(*at) for at in pairs[0])
                name, expected = visible(" ".join(filter(None, key)), 60), "every value of a station once"
                message = (
                    f"{here}: {len(pairs)} values of {name} are stated again, alike, the first at {before.short()}; "
                    f"expected {expected}; a station may carry the wrong name, or none."
                )
                self.found.problems.append(
                    Problem("unreadable", None, "station", here, name, expected, message, "station-twice")
                )

    def _tell_cut_off(self) -> None:
        """A last row that is shorter than the heading and has no line end: the file may have been cut off."""
        grid, last = self.table.grid, self.table.grid.height - 1
        if self.table.header >= 0 and last > self.table.header:
            filled = [c for c in range(grid.width) if grid.text(self.table.header, c)]
            wanted = max(filled, default=-1) + 1
            if 0 < grid.unended < wanted:
                self.found.problems.append(cut_off(grid.place(last, 0), row_text(grid, last), grid.unended, wanted))


def _may_hold_seat(side: Side) -> bool:
    """Whether the word for a part may stand over the size of its seat, and says none of its shoulder or fillet."""
    return side.side in ("shaft", "housing") and not concepts_said(side.word) & {"shoulder", "fillet"}
