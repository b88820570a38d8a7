"""Tables with one column per seat: part and position in the heading, what is stated of the seat down the first column.

``Feature | Shaft DE | Shaft NDE | Housing DE | Housing NDE | Unit``; the part may stand in a row above the positions.
"""

import re

from attrs import define, evolve, field

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank
from linter.reading.layouts.candidate import Candidate, Outside
from linter.reading.layouts.long_table import ASPECTS, LongTable
from linter.reading.layouts.names_down import NamesDown
from linter.reading.layouts.placed import Placed, placed
from linter.reading.layouts.sides import judged_within, side_of, why, within
from linter.reading.layouts.strips import Block, Found
from linter.reading.words.columns import heading_of
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said

_MOST_ROWS, _LONGEST = 30, 60
_NUMBER = re.compile(r"\d{2,}|\d+[.,]\d+")
_FEWEST = 3  # columns of seats


def find(grid: Grid, words: Words) -> Candidate | None:
    """The best reading of a grid with one column per seat, or None."""
    for row in range(min(grid.height - 1, _MOST_ROWS) if grid.height <= LONGEST_MIXED else 0):
        seats = _seats(grid, row, words)
        if len(seats) >= _FEWEST and len({seat.side.side for seat in seats.values()} & {"shaft", "housing"}) == 2:
            return _candidate(grid, row, seats, words)
    return None


def _seats(grid: Grid, row: int, words: Words) -> dict[int, Placed]:
    """The columns of a row whose headings say part and position, the part maybe in the row above: each seat once."""
    found: dict[int, Placed] = {}
    part = ""
    for column in range(grid.width):
        text = grid.text(row, column)
        above = grid.merged_text(row - 1, column) if row else ""
        part = above if above and side_of(above) else part if not above else ""
        if not text or len(text) > _LONGEST:
            continue
        both = placed(text, words)
        number = _NUMBER.fullmatch(text) is not None  # a size below a part is no position
        station = words.station_said(text) if both is None and part and not number else ""
        if station and (side := side_of(part)) is not None:
            both = Placed(side, station)
        if both is not None:
            found[column] = both
    once = {(seat.side.side, seat.station) for seat in found.values()}
    return found if len(once) == len(found) else {}


def _candidate(grid: Grid, header: int, seats: dict[int, Placed], words: Words) -> Candidate | None:
    name = 0
    if min(seats) == name:
        return None
    above = bool(header) and any(side_of(grid.text(header - 1, c)) for c in range(grid.width))
    others = [c for c in range(1, grid.width) if c not in seats]
    heads = {c: grid.text(header, c) or (grid.text(header - 1, c) if above else "") for c in others}
    roles = {c: group for c, head in heads.items() if (group := words.group(head))}
    roles |= dict.fromkeys(seats, "COLUMN")
    table = LongTable(grid, header, name, roles, 0, header + 1)
    reader = _BySeat(table, words, Found(), Outside(), seats)
    rows = range(header + 1, grid.height)
    told = [row for row in rows if (label := grid.text(row, name)) and (words.groups(label) or concepts_said(label))]
    known = sum(1 for row in told if any(reader.heading(row, column) is not None for column in seats))
    if known < 2:
        return None

    def read(found: Found, outside: Outside) -> Block:
        return _BySeat(table, words, found, outside, seats).read()

    return Candidate(
        score=known + len(seats),
        where="in one column",
        start=header - above,
        heading=range(header - above, header + 1),
        headed=True,
        alone=True,
        words=[text for row in range(min(grid.height, 12)) if (text := grid.text(row, name))],
        layout_of=lambda block: "one column per seat",
        read=read,
    )


@define(eq=False)
class _BySeat(NamesDown):
    """Reads a table whose every column states one seat."""

    seats: dict[int, Placed] = field(factory=dict)
    sizes: dict[int, Heading] = field(init=False, factory=dict)

    def read(self) -> Block:
        """The block."""
        for row in range(self.table.start, self.table.grid.height):
            self._row(row)
        self.leave_columns()
        return self.pieces.block(self.length_unit)

    def heading(self, row: int, column: int) -> Heading | None:
        """What a row states of the seat of a column."""
        grid, seat = self.table.grid, self.seats[column]
        label, text = grid.text(row, self.table.name), grid.text(row, column)
        if not label or not text:
            return None
        if aspect := ASPECTS.get(self.words.group(label), ""):
            size = self.sizes.get(column, Heading(f"{seat.side.side}_seat_diameter"))
            return evolve(size, aspect=aspect, unit=self.words.unit_of(label) or size.unit)
        found = judged_within(self.words, seat.side, label, within(self.words, seat.side, label), [text])
        if found is None and self.words.group(label) == "VALUE":
            found = Heading(f"{seat.side.side}_seat_diameter", unit=self.words.unit_of(label))
        return found

    def _row(self, row: int) -> None:
        grid, label = self.table.grid, self.table.grid.text(row, self.table.name)
        filled = [c for c in self.seats if not is_blank(grid.columns[c][row])]
        units = [text for c in filled if known_unit(text := grid.text(row, c)) is not None]
        filled = [c for c in filled if grid.text(row, c) not in units]
        if not label or not filled:
            if any(not is_blank(cell) for cell in grid.row(row)):
                self.leave(row, label or "a row without a name", why(self.words, None, label))
            return
        if (own := self._of_none(row, label, filled)) is not None:
            own = self.with_unit(row, filled[0], own)
            own = evolve(own, unit=units[0]) if len(units) == 1 and not own.unit else own  # behind the one value
            self.pieces.add(own, label, row, filled[0], self.outside.machine, own.station)
            return
        for column in filled:
            self._seat(row, label, column)

    def _of_none(self, row: int, label: str, filled: list[int]) -> Heading | None:
        """What a row of one value states of the machine, or of a position that its name says."""
        if len(filled) != 1:
            return None
        named = self.words.heading(label)
        named = heading_of(label, named, [self.table.grid.text(row, filled[0])], self.words)
        named = self.with_its_unit(row, label, None, named)
        of_none = (
            named is not None and (named.entry.level == "machine" or named.station) and named.parameter != "station"
        )
        return named if of_none else None

    def _seat(self, row: int, label: str, column: int) -> None:
        seat = self.seats[column]
        heading = self.heading(row, column)
        if heading is not None and heading.parameter in ("machine", "station"):
            heading = None
        if heading is None:
            self.leave_cell(label, row, column, why(self.words, seat.side, label))
            return
        toleranced = heading.entry.kind == "toleranced"
        if heading.aspect == "value":
            self.sizes.pop(column, None)
            if toleranced:
                self.sizes[column] = heading
        heading = self.with_unit(row, column, heading)
        station = "" if heading.entry.level == "machine" else seat.station
        self.pieces.add(heading, label, row, column, self.outside.machine, station)
