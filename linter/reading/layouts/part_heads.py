"""Tables with names down a column whose other columns are each a part of a position: ``Shaft DE``, ``Housing DE``.

The head of a column says part and position together, or one of them stands above the other (``Shaft`` over ``DE`` and
``NDE``). What a name means follows from the part of its column: a diameter is that of the shaft's seat in one and of
the housing's in the next.
"""

import re

from attrs import define, evolve, field

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank
from linter.reading.layouts.candidate import Candidate, Outside
from linter.reading.layouts.long_table import LongTable
from linter.reading.layouts.names_down import NamesDown
from linter.reading.layouts.placed import Placed, placed
from linter.reading.layouts.sides import judged_within, side_of, why, within
from linter.reading.layouts.strips import Block, Found
from linter.reading.words.headings import Heading, Words

#: Rows among which the heads are looked for, and names that are to be known below them.
_ROWS, _ENOUGH = 50, 2
#: Columns of seats that are needed beside a column of something else.
_FEWEST = 3
_BESIDE = ("UNIT", "NOTE", "CHAR-ID")
_LONGEST = 60
_NUMBER = re.compile(r"\d{2,}|\d+[.,]\d+")


def find(grid: Grid, words: Words) -> Candidate | None:
    """The best reading of a grid whose columns are parts of positions, or None."""
    rows = range(min(grid.height - 2, _ROWS)) if grid.height <= LONGEST_MIXED else ()
    for row in rows:
        if (found := _names_and_heads(grid, row, words)) is not None:
            return _candidate(grid, row, *found, words)
    return None


def rows_of_heads(grid: Grid, row: int, words: Words) -> int:
    """How many rows the heading of such a table has whose last one is ``row``; none where it heads no such table."""
    texts = [text for column, text in grid.texts(row).items() if column and len(text) <= _LONGEST]
    if len(texts) < _FEWEST or any(map(_NUMBER.match, texts)) or row + 2 >= grid.height:
        return 0  # a row of values
    told = sum(side_of(t) is not None or bool(words.station_said(t)) or placed(t, words) is not None for t in texts)
    found = _names_and_heads(grid, row, words) if told >= _FEWEST else None
    if found is None:
        return 0
    return 1 if all(placed(grid.text(row, column), words) is not None for column in found[1]) else 2


def _names_and_heads(grid: Grid, row: int, words: Words) -> tuple[int, dict[int, Placed]] | None:
    """The column of names and the columns of parts below a row that heads such a table, or None."""
    heads = _heads(grid, row, words)
    below = sum(within(words, s.side, grid.text(row + 1, column)) is not None for column, s in heads.items())
    if not {"shaft", "housing"} <= {said.side.side for said in heads.values()} or 2 * below > len(heads):
        return None  # names below the parts: the rows are machines or positions
    named = {column: _names(grid, column, row, heads, words) for column in range(min(heads))}
    name = max(named, key=lambda column: (named[column], column), default=-1)  # symbols beside names are fewer
    distinct = len({(said.side.side, said.station) for said in heads.values()}) == len(heads)
    return (name, heads) if name >= 0 and named[name] >= _ENOUGH and distinct else None


def _heads(grid: Grid, row: int, words: Words) -> dict[int, Placed]:
    """Part and position of the columns by a row, or by that row and the one above it; few are none beside others.

    Nor are they any beside as many headings of other values: those are the columns of a table with one row a machine.
    """
    found: dict[int, Placed] = {}
    above, others, named = "", False, 0
    for column in range(1, grid.width):
        text = grid.text(row, column)
        above = (grid.text(row - 1, column) if row else "") or above
        if not text or words.group(text) in _BESIDE:
            continue
        fits = len(text) <= _LONGEST and not _NUMBER.fullmatch(text)  # a size below a part is no position
        if (said := (placed(text, words) or _from_two(text, above, words)) if fits else None) is None:
            others, named = True, named + (words.heading(text) is not None)
        else:
            found[column] = said
    return found if not others or (len(found) >= _FEWEST and named < len(found)) else {}


def _from_two(text: str, above: str, words: Words) -> Placed | None:
    """Part and position of a column that stand above each other, in any order."""
    for part, place in ((text, above), (above, text)):
        if (side := side_of(part)) is not None and place and (station := words.station_said(place)):
            return Placed(side, station)
    return None


def _names(grid: Grid, column: int, header: int, heads: dict[int, Placed], words: Words) -> int:
    """Number of names below a heading row that mean something of the parts of the columns."""
    sides = {said.side.side: said.side for said in heads.values()}.values()
    texts = {text for row in range(header + 1, grid.height) if (text := grid.text(row, column))}
    return sum(
        any((h := within(words, s, t)) is not None and h.parameter.startswith(s.side) for s in sides) for t in texts
    )


def _candidate(grid: Grid, row: int, name: int, heads: dict[int, Placed], words: Words) -> Candidate:
    alone = all(placed(grid.text(row, column), words) is not None for column in heads)
    above = range(row if alone else row - 1, row + 1)
    beside = {(r, c): words.group(grid.text(r, c)) for r in above for c in range(grid.width) if c != name}
    roles = {c: group for (_, c), group in beside.items() if group in _BESIDE} | dict.fromkeys(heads, "COLUMN")
    score = 2 * _names(grid, name, row, heads, words)
    table = LongTable(grid, row, name, roles, score, row + 1)

    def read(found: Found, outside: Outside) -> Block:
        return _ByPart(table, words, found, outside, heads=heads).read()

    return Candidate(
        score=score,
        where="in one column",
        start=above.start,
        heading=above,
        headed=False,
        alone=True,
        words=[text for r in range(row, min(grid.height, row + 12)) if (text := grid.text(r, name))],
        layout_of=lambda block: "one column per seat",
        read=read,
        settled=True,
    )


@define(eq=False)
class _ByPart(NamesDown):
    """Reads a table whose every column states one seat."""

    heads: dict[int, Placed] = field(factory=dict, kw_only=True)
    sizes: dict[int, Heading | None] = field(factory=dict, init=False)

    def read(self) -> Block:
        """The block."""
        self.found.say("each column is of one part of one position, as its head says")
        for row in range(self.table.start, self.table.grid.height):
            label, filled = self.label(row), self._filled(row)
            if not label and filled:
                self.leave(row, "a row without a name", "no name stands beside it")
                continue
            units = [text for column in filled if known_unit(text := self.table.grid.text(row, column)) is not None]
            behind = units[0] if len(units) == 1 and len(filled) == 2 else ""  # 4500 | 1/min
            filled = filled[:1] if behind else filled
            if label and not self._of_machine(row, label, filled, behind):
                self._of_parts(row, label, filled)
        self.tell_twice()
        self.leave_columns()
        return self.pieces.block(self.length_unit)

    def _filled(self, row: int) -> list[int]:
        return [column for column in self.heads if not is_blank(self.table.grid.columns[column][row])]

    def _of_machine(self, row: int, label: str, filled: list[int], behind: str) -> bool:
        """Take a row whose one value is the machine's, maybe before its unit, or of a position that its name says."""
        heading = self.with_its_unit(row, label, None, self.words.heading(label))
        cells = [self.table.grid.text(row, column) for column in filled]
        heading = judged_within(self.words, None, label, heading, cells) if len(cells) == 1 else heading
        if heading is not None and heading.parameter == "bearing_designation" and not heading.station:
            heading = evolve(heading, station=self.words.station_said(label))
        if heading is None or heading.parameter in ("machine", "station"):
            return False
        if heading.entry.level == "station" and not heading.station:
            return False
        shape = self.with_unit(row, filled[0], heading) if filled else heading
        shape = evolve(shape, unit=behind) if behind and not shape.unit else shape
        for column in filled[:1]:
            self.pieces.add(shape, label, row, column, self.outside.machine, heading.station)
        for column in filled[1:]:
            self.leave_cell(label, row, column, "the value beside it is of the whole machine")
        return True

    def _of_parts(self, row: int, label: str, filled: list[int]) -> None:
        """The values of one row, each of the part and position of its column."""
        for column, said in self.heads.items():
            heading = self._meant(row, label, column, said)
            if column not in filled:
                continue
            if heading is None or heading.parameter in ("machine", "station") or heading.station:
                self.leave_cell(label, row, column, why(self.words, said.side, label))
                continue
            shape = self.with_unit(row, column, heading)
            self.pieces.add(shape, f"{said.side.word} {label}", row, column, self.outside.machine, said.station)

    def _meant(self, row: int, label: str, column: int, said: Placed) -> Heading | None:
        """What the name of a row means in a column; a nominal alone is the size of the seat."""
        heading = self.with_its_unit(row, label, said.side, within(self.words, said.side, label))
        if heading is None and self.words.group(label) == "VALUE":
            heading = Heading(f"{said.side.side}_seat_diameter", unit=self.words.unit_of(label))
        if heading is None or heading.aspect == "value":
            self.size, self.size_of = self.sizes.get(column), self._whose(row, said.side)
            heading = self.of_size_above(row, label, heading, said.side)
            self.sizes[column] = self.size
        cells = [self.table.grid.text(row, c) for c, one in self.heads.items() if one.side.side == said.side.side]
        heading = judged_within(self.words, said.side, label, heading, [cell for cell in cells if cell])
        return None if heading is None else evolve(heading, station="") if heading.station == said.station else heading
