"""Which tables a sheet holds, where each begins, and which layout it has."""

from collections.abc import Sequence
from itertools import pairwise

from attrs import define, field

from linter.model.places import Place
from linter.model.stations import Unused
from linter.model.vocabulary import parameter
from linter.reading.files.grids import LONGEST_MIXED, Grid, cell_text, is_blank
from linter.reading.files.intake import InputError, visible
from linter.reading.layouts import long, part_heads, per_seat, wide
from linter.reading.layouts.by_context import complete_by_context
from linter.reading.layouts.candidate import Candidate, Find, Outside
from linter.reading.layouts.captions import Captioned, caption_above, caption_at, name_by_captions
from linter.reading.layouts.commented_rows import without_commented
from linter.reading.layouts.find_long import find_long
from linter.reading.layouts.foot import foot_of, lone_foot, strips_for_all, take_below, take_foot
from linter.reading.layouts.form import unfolded
from linter.reading.layouts.header_roles import header_roles, heads_positions
from linter.reading.layouts.heading_cells import told_by_cells
from linter.reading.layouts.kind_units import give_kind_units
from linter.reading.layouts.labels_in_cell import with_labels_apart
from linter.reading.layouts.lists_beside import lists_beside
from linter.reading.layouts.lone import machine_heading
from linter.reading.layouts.lost import ENOUGH, is_value, not_read, row_text
from linter.reading.layouts.named_positions import tell_parts, with_positions
from linter.reading.layouts.pair_cells import with_pairs_apart
from linter.reading.layouts.plain_sheet import plain_sheet
from linter.reading.layouts.remark_columns import take_remarks
from linter.reading.layouts.repeated_heads import plain_heads
from linter.reading.layouts.revision_list import without_revision_list
from linter.reading.layouts.sheet_words import candidate_words
from linter.reading.layouts.sides import side_above, side_of
from linter.reading.layouts.strips import Block, Found, Strip, grid_strip
from linter.reading.layouts.title import (
    MOST_IN_TITLE,
    Title,
    TitleCell,
    cells_of_machine,
    read_title,
    units_said,
)
from linter.reading.layouts.title_rows import is_title_row, label_said
from linter.reading.layouts.wide_heading import holds_values, named_below, names_a_table
from linter.reading.words.columns import heading_of
from linter.reading.words.designations import looks_like_designation
from linter.reading.words.headings import Heading, Words

#: The layouts of a sheet or a text table: each finds its best reading of a grid, or None.
LAYOUTS: tuple[Find, ...] = (wide.find, long.find, per_seat.find)


def lay_out_grid(grid: Grid, words: Words, found: Found) -> None:
    """Add the tables of one sheet or text table to what was found."""
    grid, words = with_pairs_apart(with_labels_apart(without_revision_list(grid, words, found), words), words)
    words = with_positions(grid := plain_sheet(grid, words, found), words)
    tell_parts(grid, words, found)
    before, tables = sum(len(block.strips) for block in found.blocks), len(found.blocks)
    _Sheet(grid, words, found, before=tables).read()
    complete_by_context(grid, words, found, tables)
    give_kind_units(grid, found.blocks[tables:], found)
    take_remarks(grid, found.blocks[tables:], words, found)
    if sum(len(block.strips) for block in found.blocks) == before:
        found.without_table.append(grid)
        found.words.extend(candidate_words(grid, words))
        where = f"sheet {visible(grid.sheet)}" if grid.sheet else "the text"
        found.say(f"{where}: no table is recognised; not read")
        found.seen.extend(t for r in range(min(grid.height, 3)) for c in range(grid.width) if (t := grid.text(r, c)))


def tell_unheaded_rows(found: Found) -> None:
    """Findings about rows of sheets without a table that begin as the rows of the tables do: with a machine of them."""
    machines = {machine for block in found.blocks for machine in block.machines if machine}
    for grid in found.without_table:
        for row in range(min(grid.height, LONGEST_MIXED)):
            if not machines.intersection(text for column, text in grid.texts(row).items() if column < 3):
                continue
            numbers = sum(is_value(cell, parameter("bore_diameter")) for cell in grid.row(row))
            if numbers >= ENOUGH:
                place = grid.place(row, 0)
                found.problems.append(not_read(place, "a row without a heading", row_text(grid, row), numbers))
                break


@define(eq=False)
class _Sheet:
    """Works down one sheet; what a title block states holds for the tables below it."""

    grid: Grid
    words: Words
    found: Found
    title: Title = field(factory=Title)
    of_machine: list[TitleCell] = field(factory=list)
    length_unit: str = ""
    captioned: list[Captioned] = field(factory=list)
    seats: list[tuple[Block, Place]] = field(factory=list)
    before: int = 0
    below: Grid | None = None

    def read(self) -> None:
        """All tables of the sheet."""
        if self.grid.height > LONGEST_MIXED:
            self._region(self.grid)
            return
        grid = unfolded(whole := plain_heads(self.grid, self.words), self.words)
        self.words, self.grid = self.words if grid is whole else with_positions(grid, self.words), grid
        for top, bottom in self._stacks():
            part = grid.cut(slice(top, bottom))
            for block in self._side_by_side(part):
                self._region(block)
        if self.below is not None and (blocks := self.found.blocks[self.before :]):
            take_below(self.below, blocks, self.words, self.found)
        name_by_captions(self.captioned, self.words, self.found)
        self._nobodys_seats()

    def _nobodys_seats(self) -> None:
        """Tables of one shaft and one housing each beside others, of which nothing says whose: they are not read."""
        if len(self.seats) < 2 and len({s for block in self.found.blocks for s in block.stations if s}) < 2:
            return
        for block, place in self.seats:
            if any(block.stations):
                continue
            count = sum(len(strip.cells) for strip in block.strips)
            self.found.problems.append(not_read(place, "a table of seats that names no station", "", count))
            block.strips[:] = [s for s in block.strips if parameter(s.parameter).level == "machine"]

    def _stacks(self) -> list[tuple[int, int]]:
        """Runs of rows that each begin with a heading of their own."""
        grid = self.grid
        starts, below = [0], 0  # where each run begins, and the first row below the last heading
        blank = [not filled for filled in grid.filled]
        kinds = without_commented(grid, [self._kind(row) for row in range(grid.height)], self.words)
        for row in range(grid.height):
            if not kinds[row]:
                continue
            heads = self._heads(row, below, kinds)
            stands_apart = heads > 0 and blank[heads - 1]
            if any(kind in ("wide", "seats") for kind in kinds[starts[-1] : row]):
                titled = self._title_above(heads, row, below, blank)
                heads, stands_apart = titled, stands_apart or titled < heads
            if kinds[row] == "seats" and starts[-1] < heads < row:
                if any(kinds[starts[-1] : row]):
                    starts.append(heads)
            elif any(kinds[starts[-1] : row]) and (
                stands_apart or (kinds[row] != "positions" and self._repeats(row, starts[-1], kinds))
            ):
                captioned = heads == row - 1 and self._names_next(heads)
                start = heads if stands_apart or captioned else row
                if start > starts[-1]:
                    starts.append(start)
            below = row + 1
        starts.append(grid.height)
        return [(top, bottom) for top, bottom in pairwise(starts) if bottom > top]

    def _heads(self, row: int, below: int, kinds: Sequence[str]) -> int:
        """The first row of a heading: of those above it that head it too, or name its machine or station."""
        if kinds[row] == "crossed":
            return max(row + 1 - part_heads.rows_of_heads(self.grid, row, self.words), below)
        heads = row
        while heads > below and (kinds[heads - 1] or self._is_title(heads - 1)):
            heads -= 1
        return self._station_above(row, below) if kinds[row] == "seats" and heads == row else heads

    def _title_above(self, heads: int, row: int, below: int, blank: Sequence[bool]) -> int:
        """Where the title block of a further table begins: labels of a machine and values, above its heading.

        Blank rows may stand between block and heading, and one must stand above the block, or its first row must name
        the machine: what stands right below the rows of the table before may be of them. Above a table that is itself
        as narrow as a block only the machine tells one from the other.
        """
        top = row if heads < row else heads
        while top > below and blank[top - 1]:
            top -= 1
        end = top
        broad = self.grid.filled[row] > MOST_IN_TITLE
        while top > below and not blank[top - 1] and self._can_be_title(top - 1):
            top -= 1
        said = [label_said(self.grid, r, self.words) for r in range(top, end)]
        if top == below or not blank[top - 1]:
            first = next((k for k, name in enumerate(said) if name == "machine"), len(said))
            top, said = top + first, said[first:]
        return min(top, heads) if "machine" in said or (broad and any(said)) else heads

    def _can_be_title(self, row: int) -> bool:
        """Whether a row has few cells, as the rows of a title block have, or is label and value in turn."""
        count = self.grid.filled[row]
        return count <= MOST_IN_TITLE or is_title_row(self.grid, row, self.words)

    def _kind(self, row: int) -> str:
        """``wide``, ``long``, ``positions``, ``crossed`` or ``seats`` for a row that can head a table, else empty."""
        cells = self.grid.stated(row)
        if len(cells) < 2 or any(type(cell) is not str for cell in cells):
            return ""
        roles = set(header_roles(self.grid, row, self.words).values())
        if ("VALUE" in roles or {"MAX", "MIN"} <= roles) and roles & {"NAME", "CHAR-ID"}:
            return "" if any(map(looks_like_designation, cells)) else "long"
        if part_heads.rows_of_heads(self.grid, row, self.words):
            return "crossed"
        if heads_positions(self.grid, row, self.words):
            return "positions"
        if per_seat.heads_seats(self.grid, row, self.words):
            return "seats"
        side = side_above(self.grid, row)
        texts = [cell.strip() for cell in cells]
        labels = [self.grid.text(row, column) for column in range(self.grid.width)]
        told = told_by_cells(self.grid, (row,), labels, named_below(self.words, side, labels), self.words)
        headings = [heading for heading, label in zip(told, labels, strict=True) if label]
        named = [text for text, heading in zip(texts, headings, strict=True) if heading is not None]
        if not names_a_table(named) or len(named) < 0.5 * len(cells) or is_title_row(self.grid, row, self.words):
            return ""
        # the same name again beside its value, of blocks side by side, or a row of data with names in it
        return "" if _say_one_thing(headings) or holds_values(texts, len(named), self.words) else "wide"

    def _is_title(self, row: int) -> bool:
        """Whether a row can be of the title block above a heading: label and value, or one text alone."""
        cells = self.grid.stated(row)
        return type(cells[0]) is str if len(cells) == 1 else bool(cells) and is_title_row(self.grid, row, self.words)

    def _station_above(self, row: int, below: int) -> int:
        """The row that states the station of a table of seats, above other labels and values; else the row itself."""
        for above in range(row - 1, below - 1, -1):
            texts = [*self.grid.texts(above).values()]
            pairs = len(texts) > 0 and len(texts) % 2 == 0
            known = self.words.heading(texts[0]) if pairs else None
            heading = heading_of(texts[0], known, texts[1:2], self.words) if pairs else None
            if heading is not None and heading.parameter == "station" and not heading.station:
                return above
            if len(texts) == 1 and self.words.station_said(texts[0]):
                return above
            if not texts or len(texts) % 2:
                return row
        return row

    def _names_next(self, row: int) -> bool:
        """Whether a row above a heading is one text that names the table below it, its part or its station."""
        texts = [*self.grid.texts(row).values()]
        said = len(texts) == 1 and (self.words.station_said(texts[0]) or side_of(texts[0]) is not None)
        return bool(said) or caption_at(self.grid, row, self.words) is not None

    def _repeats(self, row: int, start: int, kinds: list[str]) -> bool:
        """Whether a row heads a new table without a blank row above it: the same sort of heading further down."""
        heads = [r for r in range(start, row) if kinds[r]]
        return bool(heads) and row > heads[-1] + 1 and kinds[row] == kinds[heads[0]]

    def _side_by_side(self, grid: Grid) -> list[Grid]:
        """Blocks that blank columns set apart, where the right one names its own stations or parameters."""
        if (lists := lists_beside(grid, self.words)) is not None:
            return self._apart(grid, lists)
        blank = [c for c in range(grid.width) if all(is_blank(cell) for cell in grid.columns[c].tolist())]
        if not blank:
            return [grid]
        edges = [-1, *blank, grid.width]
        spans = [(left + 1, right) for left, right in pairwise(edges) if right > left + 1]
        if len(spans) < 2:
            return [grid]
        # what stands above all blocks but the first is their common title
        top = min(row for row in range(grid.height) if any(not is_blank(c[row]) for c in grid.columns[spans[-1][0] :]))
        parts = [grid.cut(slice(top, None), slice(left, right)) for left, right in spans]
        candidates = ([layout(part, self.words) for layout in LAYOUTS] for part in parts)
        if not all(any(c is not None and c.alone for c in of_part) for of_part in candidates):
            return [grid]
        return self._apart(grid, (top, spans))

    def _apart(self, grid: Grid, blocks: tuple[int, Sequence[tuple[int, int]]]) -> list[Grid]:
        """Blocks beside each other by their first row and columns; what stands above them is their common title."""
        top, spans = blocks
        self.found.say("blocks side by side are read one after the other")
        if top:
            self._take_title(grid.cut(slice(0, top)))
        said = {unit for row in range(grid.height) for cell in grid.row(row) if (unit := units_said(cell_text(cell)))}
        self.length_unit = self.length_unit or (said.pop() if len(said) == 1 else "")
        return [grid.cut(slice(top, None), slice(left, right)) for left, right in spans]

    def _region(self, grid: Grid) -> None:
        """One table with what stands above it."""
        if end := per_seat.end_of_seats(grid, self.words):
            for part in (grid.cut(slice(0, end)), *self._side_by_side(grid.cut(slice(end, None)))):
                self._region(part)
            return
        whole, grid = grid, grid.cut(slice(0, lone_foot(grid, self.words)))
        found, candidates = self.found, self._candidates(grid)
        if not candidates:
            self._only_title(whole)
            return
        table = self._below_a_list(grid, candidates, best(candidates))
        if (below := foot_of(grid, self.words)) < grid.height:
            above = self._candidates(grid.cut(slice(0, below)))
            if above and (own := best(above)).where in (wide.WHERE, per_seat.WHERE) and own.heading.stop < below:
                grid, candidates, table = grid.cut(slice(0, below)), above, own
        if not table.headed and (seats := per_seat.headed_seats(grid, candidates, self.words)) is not None:
            table = seats
        self.title.station = ""  # a station is named above its own table only
        if table.start > 0:
            self._take_title(grid.cut(slice(0, table.start)), one_station=table.one_station)
        found.seen.extend(table.words)
        block = table.read(found, Outside(self.length_unit, self.title.machine, self.title.station))
        layout = table.layout_of(block)
        if len(candidates) > 1 and min(c.score for c in candidates) > 1:
            where = f"sheet {visible(grid.sheet)}: " if grid.sheet else ""
            counts = [f"{c.score} {'' if k else 'names stand '}{c.where}" for k, c in enumerate(candidates)]
            found.say(f"{where}read as {layout}: {' and '.join(counts)}")
        if layout not in found.layouts:
            found.layouts.append(layout)
        if grid.height < whole.height:
            take_foot(whole.cut(slice(grid.height, None)), block, self.words, found)
        block.strips.extend(self._title_strips(block))
        found.blocks.append(block)
        self.below = None
        if table.one_station:
            self.seats.append((block, grid.place(table.start, 0)))
        if (captioned := caption_above(grid, table.start, self.words, block)) is not None:
            self.captioned.append(captioned)

    def _below_a_list(self, grid: Grid, candidates: Sequence[Candidate], table: Candidate) -> Candidate:
        """The broad table below a list of the machine's names and values, however many of those there are."""
        below = next((c for c in candidates if c.where == wide.WHERE and c.start > 0), None)
        if below in (None, table) or table.headed or table.settled or grid.height > LONGEST_MIXED:
            return table
        texts = [[*grid.texts(row).values()] for row in range(grid.height)]
        above, heads = texts[: below.start], texts[below.heading.start : below.heading.stop]
        if max(map(len, above)) > MOST_IN_TITLE or max(map(len, heads)) <= MOST_IN_TITLE:
            return table
        if not all(self._is_of_machine(*row[:MOST_IN_TITLE]) for row in above if len(row) > 1):
            return table
        alone = self._candidates(grid.cut(slice(below.start, None)))
        return below if alone and best(alone).where == wide.WHERE else table

    def _is_of_machine(self, label: str, value: str, unit: str = "") -> bool:
        """Whether a label, if it is known, names what a machine has or all its stations have."""
        heading = self.words.heading(label)
        of_machine = heading is not None and heading.entry.level == "machine" and not heading.station
        return heading is None or of_machine or machine_heading(label, value, unit, self.words) is not None

    def _candidates(self, grid: Grid) -> list[Candidate]:
        return [c for layout in LAYOUTS if (c := layout(grid, self.words)) is not None]

    def _take_title(self, grid: Grid, *, one_station: bool = False) -> None:
        title = read_title(grid, self.words, self.found.unused, own=one_station)
        own = ""
        for unit, place in title.units:
            own = self.found.one_length_unit(own, unit, place)
        self.length_unit = own if title.units else self.length_unit
        another = bool(title.machine and self.title.machine and title.machine != self.title.machine)
        mine = cells_of_machine(title.cells)
        title.machine = title.machine or self.title.machine
        anew = {cell.heading.parameter for cell in title.cells}
        before = [c for c in self.title.cells if c.heading.parameter not in anew and not c.heading.station]
        before = [c for c in before if not another or all(c is not own for own in self.of_machine)]
        self.of_machine = mine if another else [*self.of_machine, *mine]
        title.cells = [*before, *title.cells]
        self.title = title

    def _title_strips(self, block: Block) -> list[Strip]:
        """What the title block states, once for every machine of a table."""
        machines = {*block.machines}
        strips = []
        for cell in self.title.cells:
            if cell.heading.parameter == "machine" and any(machine != self.title.machine for machine in machines):
                place = cell.grid.place(cell.row, cell.column)
                if all(unused.place != place for unused in self.found.unused):
                    text = cell.grid.text(cell.row, cell.column)
                    self.found.leave(Unused(cell.label, text, place, "the table names its machines itself"))
            elif cell.heading.station:
                mine = [row for row, station in enumerate(block.stations) if station == cell.heading.station][:1]
                traits = cell.heading.traits(cell.label)
                if mine:
                    places = [(cell.row, cell.column)]
                    strips.append(grid_strip(cell.grid, cell.heading.parameter, places, mine, **traits))
            else:
                strips += strips_for_all([cell], block, self.found)
        return strips

    def _only_title(self, grid: Grid) -> None:
        """A region without a table: a title block for what follows, or nothing that is used."""
        if grid.height > LONGEST_MIXED and find_long(grid.cut(slice(0, 2000)), self.words):
            read = f"{grid.height} rows of one parameter each"
            limit = f"one row per station with a heading row; one row per parameter up to {LONGEST_MIXED} rows"
            raise InputError("too-many-rows", grid.file, read, limit, sheet=grid.sheet)
        unused: list[Unused] = []
        title = read_title(grid, self.words, unused)
        if title.cells or title.units or title.machine:
            self._take_title(grid)
            self.below = grid
        else:
            self.found.unused.extend(unused)


def _say_one_thing(headings: Sequence[Heading | None]) -> bool:
    """Whether headings name one thing at most: a name and its symbol say the same."""
    return len({(h.parameter, h.station, h.aspect) for h in headings if h is not None}) < 2


def best(candidates: Sequence[Candidate]) -> Candidate:
    """The candidate that explains most names; of equal ones the first; a heading of names and values settles it."""
    first = max(candidates, key=lambda candidate: candidate.score)
    settled = (c for c in candidates if c.settled and c.start <= first.start)
    headed = (c for c in candidates if c.headed and c.heading.start in first.heading)
    return next(settled, next(headed, first))
