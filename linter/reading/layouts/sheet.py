"""Which tables a sheet holds, where each begins, and which layout it has."""

from itertools import pairwise
from typing import Any

import numpy as np
from attrs import define, field

from linter.model.stations import Unused
from linter.reading.files.grids import LONGEST_MIXED, Grid, cell_text, is_blank
from linter.reading.files.intake import InputError, visible
from linter.reading.layouts.long import LongTable, find_long, header_roles, read_long
from linter.reading.layouts.strips import Block, Found, Strip, TableWord, grid_strip
from linter.reading.layouts.title import Title, read_title
from linter.reading.layouts.wide import WideTable, find_wide, is_title_row, names_a_table, read_wide
from linter.reading.words.headings import Words


def lay_out_grid(grid: Grid, words: Words, found: Found) -> None:
    """Add the tables of one sheet or text table to what was found."""
    before = sum(len(block.strips) for block in found.blocks)
    _Sheet(grid, words, found).read()
    if sum(len(block.strips) for block in found.blocks) == before:
        found.words.extend(candidate_words(grid, words))
        where = f"sheet {visible(grid.sheet)}" if grid.sheet else "the text"
        found.say(f"{where}: no table is recognised; not read")
        for row in range(min(grid.height, 3)):
            found.seen.extend(text for column in range(grid.width) if (text := grid.text(row, column)))


@define(eq=False)
class _Sheet:
    """Works down one sheet; what a title block states holds for the tables below it."""

    grid: Grid
    words: Words
    found: Found
    title: Title = field(factory=Title)

    def read(self) -> None:
        """All tables of the sheet."""
        grid = self.grid
        if grid.height > LONGEST_MIXED:
            self._region(grid)
            return
        for top, bottom in self._stacks():
            part = grid.cut(slice(top, bottom))
            for block in self._side_by_side(part):
                self._region(block)

    def _stacks(self) -> list[tuple[int, int]]:
        """Runs of rows that each begin with a heading of their own."""
        grid = self.grid
        starts = [0]
        previous_blank = True
        kinds = [self._kind(row) for row in range(grid.height)]
        for row in range(1, grid.height):
            blank = all(is_blank(column[row - 1]) for column in grid.columns)
            previous_blank = blank
            if (
                kinds[row]
                and (previous_blank or self._repeats(row, starts[-1], kinds))
                and any(kinds[starts[-1] : row])
            ):
                start = row
                while previous_blank is False and start - 1 > starts[-1] and kinds[start - 1]:
                    start -= 1
                starts.append(start)
        starts.append(grid.height)
        return [(top, bottom) for top, bottom in pairwise(starts) if bottom > top]

    def _kind(self, row: int) -> str:
        """``wide`` or ``long`` for a row that can head a table, else empty."""
        cells = [cell for cell in self.grid.row(row) if not is_blank(cell)]
        if len(cells) < 2 or any(type(cell) is not str for cell in cells):
            return ""
        roles = set(header_roles(self.grid, row, self.words).values())
        if "VALUE" in roles and roles & {"NAME", "CHAR-ID"}:
            return "long"
        named = [cell.strip() for cell in cells if self.words.heading(cell) is not None]
        if not names_a_table(named) or len(named) < 0.5 * len(cells) or is_title_row(self.grid, row, self.words):
            return ""
        return "wide"

    def _repeats(self, row: int, start: int, kinds: list[str]) -> bool:
        """Whether a row heads a new table without a blank row above it: the same sort of heading further down."""
        heads = [r for r in range(start, row) if kinds[r]]
        return bool(heads) and row > heads[-1] + 1 and kinds[row] == kinds[heads[0]]

    def _side_by_side(self, grid: Grid) -> list[Grid]:
        """Blocks that blank columns set apart, where the right one names its own stations or parameters."""
        blank = [c for c in range(grid.width) if all(is_blank(cell) for cell in grid.columns[c].tolist())]
        if not blank:
            return [grid]
        edges = [-1, *blank, grid.width]
        spans = [(left + 1, right) for left, right in pairwise(edges) if right > left + 1]
        parts = [grid.cut(slice(None), slice(left, right)) for left, right in spans]
        if len(parts) < 2 or not all(self._stands_alone(part) for part in parts):
            return [grid]
        self.found.say("blocks side by side are read one after the other")
        return parts

    def _stands_alone(self, grid: Grid) -> bool:
        long = find_long(grid, self.words)
        if long is not None and long.score >= 2:
            return True
        wide = find_wide(grid, self.words)
        return wide is not None and any(h and h.parameter == "station" for h in wide.headings)

    def _region(self, grid: Grid) -> None:
        """One table with what stands above it."""
        wide, long = find_wide(grid, self.words), find_long(grid, self.words) if grid.height <= LONGEST_MIXED else None
        table = _better(wide, long)
        if table is None and grid.height > LONGEST_MIXED and find_long(grid.cut(slice(0, 2000)), self.words):
            read = f"{grid.height} rows of one parameter each"
            limit = f"one row per station with a heading row; one row per parameter up to {LONGEST_MIXED} rows"
            raise InputError("too-many-rows", grid.file, read, limit, sheet=grid.sheet)
        if table is None:
            self._only_title(grid)
            return
        if isinstance(table, WideTable):
            head = table.top
        else:
            head = table.header if table.header >= 0 else table.start
        if head > 0:
            self._take_title(grid.cut(slice(0, head)))
        where = f"sheet {visible(grid.sheet)}: " if grid.sheet else ""
        self.found.seen.extend(
            [label for label in table.labels if label] if isinstance(table, WideTable)
            else [text for row in range(min(grid.height, 12)) if (text := grid.text(row, table.name))]
        )  # fmt: skip
        if isinstance(table, WideTable):
            block = read_wide(table, self.words, self.found, self.title.length_unit, self.title.machine)
            layout = "one row per station" if any(block.stations) else "one row per machine"
        else:
            block = read_long(table, self.words, self.found, self.title.length_unit, self.title.machine)
            layout = "one column per station (transposed)" if table.transposed else "one row per parameter"
        if wide is not None and long is not None and min(wide.score, long.score) > 1:
            self.found.say(
                f"{where}read as {layout}: {wide.score} names stand in one row and {long.score} in one column"
            )
        if layout not in self.found.layouts:
            self.found.layouts.append(layout)
        block.strips.extend(self._title_strips(block))
        self.found.blocks.append(block)

    def _take_title(self, grid: Grid) -> None:
        title = read_title(grid, self.words, self.found.unused)
        title.length_unit = title.length_unit or self.title.length_unit
        title.machine = title.machine or self.title.machine
        title.cells = [*self.title.cells, *title.cells]
        self.title = title
        if title.length_unit:
            self.found.say(f"lengths are stated in {title.length_unit}")

    def _title_strips(self, block: Block) -> list[Strip]:
        """What the title block states, once for every machine of a table."""
        first: dict[str, int] = {}
        for row, machine in enumerate(block.machines):
            first.setdefault(machine, row)
        rows = np.array(list(first.values()), dtype=np.intp)
        strips = []
        for heading, label, grid, row, column in self.title.cells:
            if heading.parameter == "machine" and any(machine != self.title.machine for machine in first):
                place = grid.place(row, column)
                if all(unused.place != place for unused in self.found.unused):
                    self.found.leave(
                        Unused(label, grid.text(row, column), place, "the table names its machines itself")
                    )
            elif len(rows):
                at = np.full((len(rows), 2), (row, column))
                strips.append(grid_strip(grid, heading.parameter, at, rows, **heading.traits(label)))
        return strips

    def _only_title(self, grid: Grid) -> None:
        """A region without a table: a title block for what follows, or nothing that is used."""
        unused: list[Unused] = []
        title = read_title(grid, self.words, unused)
        if title.cells or title.length_unit or title.machine:
            self._take_title(grid)
        else:
            self.found.unused.extend(unused)


def _better(wide: WideTable | None, long: LongTable | None) -> WideTable | LongTable | None:
    """The orientation that explains more names; a header with a value column settles it."""
    if wide is None or long is None:
        return wide or long
    if long.header >= 0 and "VALUE" in long.roles.values() and wide.top <= long.header <= wide.bottom:
        return long
    if wide.score >= long.score and (wide.score > 1 or long.score == 1):
        return wide
    return long


def candidate_words(grid: Grid, words: Words) -> list[TableWord]:
    """Words that may be names in a sheet without one known name: its fullest row of texts, and its first column."""
    result = []

    def texts_of(cells: list[Any]) -> int:
        return sum(1 for cell in cells if type(cell) is str and any(sign.isalpha() for sign in cell))

    rows = range(min(grid.height, 50))
    head = max(rows, key=lambda r: texts_of(grid.row(r)), default=0)
    if grid.height and texts_of(grid.row(head)) >= 2:
        for column in range(grid.width):
            if text := grid.text(head, column):
                below = [
                    cell_text(cell)
                    for cell in grid.columns[column][head + 1 : head + 50].tolist()
                    if not is_blank(cell)
                ]
                samples = tuple(dict.fromkeys(below))[:3]
                result.append(TableWord(text, samples, grid.place(head, column), words.why(text)))
    if grid.width > 1 and texts_of(grid.columns[0].tolist()[:500]) >= 2:
        for row in range(min(grid.height, 500)):
            text = grid.text(row, 0)
            right = [cell_text(cell) for cell in grid.row(row)[1:] if not is_blank(cell)]
            if text and right:
                result.append(TableWord(text, tuple(right[:3]), grid.place(row, 0), words.why(text)))
    return result
