"""The rows below a heading row: which of them hold data, and whose they are."""

from collections.abc import Sequence

import numpy as np
from attrs import define, evolve, field
from numpy.typing import NDArray

from linter.model.stations import Problem, Unused
from linter.model.vocabulary import parameter
from linter.reading.files.grids import Bad, TextColumn, cell_text, is_blank, object_column
from linter.reading.files.intake import visible
from linter.reading.layouts.bill import of_bearings
from linter.reading.layouts.candidate import Outside
from linter.reading.layouts.lost import ENOUGH, cut_off, not_read, packed_values, row_text, values_in_row, values_of
from linter.reading.layouts.positions import judged_by_position, tell_taken
from linter.reading.layouts.row_keys import name_rows
from linter.reading.layouts.row_names import ROWS_ARE_STATIONS, row_name, states_stations
from linter.reading.layouts.strips import Block, Found, filled_down, unreadable_key
from linter.reading.layouts.title import units_said
from linter.reading.layouts.title_rows import is_title_row
from linter.reading.layouts.units_row import is_units_row, unit_below
from linter.reading.layouts.wide_cells import drop_unstated, inherited, merged_down, strips_of
from linter.reading.layouts.wide_heading import WideTable, aspect_behind
from linter.reading.layouts.wide_kinds import RowKinds, behind
from linter.reading.words.columns import judge_columns
from linter.reading.words.headings import Heading, Words

_MOST_TOLD = 50
#: Rows below a heading whose cells help to tell what a column is.
_LOOKED_AT = 50
#: Rows among which columns that tell them apart are looked for.
_ROWS_APART = 2000


def read_wide(table: WideTable, words: Words, found: Found, outside: Outside) -> Block:
    """Rows below a heading as a block."""
    grid = table.grid
    first = table.bottom + 1
    units: list[str] = [""] * grid.width
    if first < grid.height and is_units_row(grid, first):
        units = [unit_below(grid, first, column, table.headings[column]) for column in range(grid.width)]
        found.say(f"units row at {grid.place(first, 0).short()}")
        first += 1
    table = of_bearings(table, first)
    rows = range(first, grid.height) if table.only is None else np.asarray(table.only).ravel().tolist()
    headings = name_rows(table, _headings(table, words, units, first), rows[:_ROWS_APART], words, found)
    tell_taken(table, headings, found)
    return _Rows(table, words, found, outside, first, headings).read()


def _headings(table: WideTable, words: Words, units: Sequence[str], first: int) -> list[Heading | None]:
    """Headings with units from the units row; tolerance columns joined to the size on their left; then cells judge."""
    result: list[Heading | None] = []
    size: Heading | None = None
    for column, heading in enumerate(table.headings):
        label = table.labels[column]
        if heading is None and label and size is not None:
            if aspect := aspect_behind(size, label, words):
                heading = evolve(size, unit=words.unit_of(label) or size.unit, aspect=aspect)
            elif not words.groups(label):
                size = None  # the size of what follows may be this one, which is not understood
        elif heading is not None:
            size = heading if parameter(heading.parameter).kind == "toleranced" else None
        if heading is None and label and units[column] and not words.groups(label):
            heading = words.heading(f"{label} [{units[column]}]")
        if heading is not None and units[column] and not heading.unit:
            heading = evolve(heading, unit=units[column])
        result.append(heading)

    def cells(column: int) -> list[str]:
        rows = slice(first, first + _LOOKED_AT) if table.only is None else table.only[:_LOOKED_AT]
        below = table.grid.columns[column][rows].tolist()
        return [cell_text(cell) for cell in below if not is_blank(cell) and not isinstance(cell, Bad)]

    if not table.positions:
        return judge_columns(table.labels, result, cells, words)
    return judged_by_position(table, result, cells, words)


@define(eq=False)
class _Rows:
    table: WideTable
    words: Words
    found: Found
    outside: Outside
    first: int
    headings: list[Heading | None]
    machine_at: int | None = field(init=False)
    station_at: int | None = field(init=False)
    rows: NDArray[np.intp] = field(init=False)
    length_unit: str = field(init=False)

    def __attrs_post_init__(self) -> None:
        named = {h.parameter: c for c, h in reversed([*enumerate(self.headings)]) if h}
        self.machine_at, self.station_at = named.get("machine"), named.get("station")
        self.length_unit = self.outside.length_unit
        self.rows = self._data_rows()

    def read(self) -> Block:
        """The block."""
        self._values_above()
        self._packed_cells()
        stations = self._stations(machines := self._machines())
        homeless = self._without_station(machines, stations)
        keys = list(zip(machines, stations, strict=True))
        self._named_twice(keys)
        block = Block(list(machines), list(stations), [], self.length_unit)
        extra: dict[str, int] = {}
        count = len(self.rows)
        for column, heading in enumerate(self.headings):
            if heading is None:
                self._unused(column)
                continue
            base = np.arange(count)
            if heading.station and self.station_at is None:
                if heading.station not in extra:
                    extra[heading.station] = len(block.machines)
                    block.machines.extend(machines)
                    block.stations.extend([heading.station] * count)
                base = base + extra[heading.station]
            if heading.aspect != "unit":
                self._add(block, column, heading, base, keys, homeless)
        for start in extra.values():
            drop_unstated(block, start, count)
        return block

    # whose a row is

    def _machines(self) -> list[str]:
        if self.machine_at is None:
            return [self.outside.machine] * len(self.rows)
        return self._fill_machines(self._keys(self.machine_at), self.machine_at)

    def _stations(self, machines: Sequence[str]) -> list[str]:
        if self.station_at is not None:
            texts = self._keys(self.station_at)
            known = {text: self.words.station(text) for text in dict.fromkeys(texts)}
            return [known[text] for text in texts]
        others = [h for h in self.headings if h and h.parameter not in ("machine", "station")]
        if len(self.rows) and not any(h.station for h in others) and states_stations(others, machines):
            self.found.say(ROWS_ARE_STATIONS)
            return [row_name(self.table.grid.lines[r]) for r in self.rows.tolist()]
        return [""] * len(self.rows)

    def _keys(self, column: int) -> list[str]:
        cells = self.table.grid.columns[column][self.rows]
        if self.table.grid.merged:
            cells = merged_down(self.table.grid, cells, self.rows, column)
        texts = cells.tolist()
        if set(map(type, texts)) == {str}:
            return list(map(str.strip, texts))
        return ["" if isinstance(cell, Bad) else cell_text(cell) for cell in texts]

    def _fill_machines(self, machines: list[str], column: int) -> list[str]:
        """Blank machine cells below a named machine belong to it, and that is said; a merged cell says it itself."""
        if "" not in machines:
            return machines
        grid = self.table.grid
        merged = {
            row for top, left, bottom, right in grid.merged if left <= column <= right for row in range(top, bottom + 1)
        }
        filled, current = [], ""
        carried: list[int] = []
        for row, machine in zip(self.rows.tolist(), machines, strict=True):
            if not machine and current and row not in merged:
                carried.append(row)
            current = machine or current
            filled.append(current)
        if carried:
            self.found.problems.append(filled_down(grid.place(carried[0], column), len(carried), "row"))
        return filled

    def _without_station(self, machines: Sequence[str], stations: Sequence[str]) -> list[int]:
        """Rows with a blank station among rows of their machine that name one: no station is filled in for them."""
        column = self.station_at
        if column is None or "" not in stations:
            return []
        named = {machine for machine, station in zip(machines, stations, strict=True) if station}
        blank = [i for i, station in enumerate(stations) if not station and machines[i] in named]
        grid = self.table.grid
        of_stations = [c for c, h in enumerate(self.table.headings) if h and h.entry.level == "station" and c != column]
        result = []
        for index in blank:
            row = int(self.rows[index])
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

    def _named_twice(self, keys: Sequence[tuple[str, str]]) -> None:
        """Two rows of one table that name the same station and both state values of it: one of the names is wrong."""
        if self.station_at is None or len(set(keys)) == len(keys):
            return
        first: dict[tuple[str, str], int] = {}
        told = 0
        for index, key in enumerate(keys):
            other = first.setdefault(key, index)
            if other == index or not key[1] or told >= _MOST_TOLD:
                continue
            one, two = ([*self._values(int(self.rows[at]))] for at in (other, index))
            both = sum(a and b for a, b in zip(one, two, strict=True))
            if both >= ENOUGH:
                told += 1
                place = self.table.grid.place(int(self.rows[index]), self.station_at)
                before = self.table.grid.lines[self.rows[other]]
                name = visible(" ".join(filter(None, key)), 60)
                expected = "one row for each station"
                message = (
                    f"{place}: {name} is named again, and {both} values of it stand in row {before} too; "
                    f"expected {expected}; a station may carry the wrong name."
                )
                self.found.problems.append(
                    Problem("unreadable", None, "station", place, name, expected, message, "station-twice")
                )

    def _values(self, row: int) -> list[bool]:
        """For each column whether the row states a value of a station in it."""
        return [
            h is not None and h.entry.level == "station" and bool(values_of([self.table.grid.columns[c][row]], [h]))
            for c, h in enumerate(self.headings)
        ]

    # which rows hold data

    def _data_rows(self) -> NDArray[np.intp]:
        """Rows that hold data; comment, section and footer rows go to the unused cells."""
        grid = self.table.grid
        keep = np.ones(grid.height - self.first, dtype=bool)
        for column in (c for c in (self.machine_at, self.station_at) if c is not None):
            keys = grid.columns[column]
            for index, cell in enumerate([] if isinstance(keys, TextColumn) else keys[self.first :].tolist()):
                if isinstance(cell, Bad) and keep[index]:
                    keep[index] = False
                    self._bad_key(self.first + index, column)
        kinds = RowKinds(self.table, self.words, self.first, self.headings, self.machine_at, self.station_at)
        lost: list[tuple[int, str, int]] = []
        for index in kinds.suspects():
            row = self.first + index
            filled = [*grid.texts(row)]
            if keep[index] and (not filled or (what := kinds.no_data(row, filled))):
                keep[index] = False
                if filled:
                    self._leave_row(row, filled, what, lost)
        self._of_other_things(keep, lost)
        self._tell_lost(lost)
        self._cut_commas(keep, kinds)
        self._cut_off(keep)
        return np.flatnonzero(keep) + self.first

    def _of_other_things(self, keep: NDArray[np.bool_], lost: list[tuple[int, str, int]]) -> None:
        """Rows of a bill of material that name no bearing."""
        if self.table.only is None:
            return
        kept = (np.flatnonzero(keep) + self.first).tolist()
        for row in sorted({*kept}.difference(np.asarray(self.table.only).ravel().tolist())):
            keep[row - self.first] = False
            filled = [c for c in range(self.table.grid.width) if not is_blank(self.table.grid.columns[c][row])]
            self._leave_row(row, filled, "a row that names no bearing", lost)

    def _leave_row(self, row: int, filled: Sequence[int], what: str, lost: list[tuple[int, str, int]]) -> None:
        """List the cells of a row that holds no data; what it says of units is taken."""
        grid = self.table.grid
        for column in filled:
            text = grid.text(row, column)
            if unit := units_said(text):
                self.length_unit = self.found.one_length_unit(self.length_unit, unit, grid.place(row, column))
            self.found.leave(Unused(what, text, grid.place(row, column), "not a row of values"))
        if (count := values_in_row(grid, row, self.headings)) >= ENOUGH:
            lost.append((row, what, count))

    def _tell_lost(self, lost: Sequence[tuple[int, str, int]]) -> None:
        """Findings about rows that are not read and hold values."""
        grid = self.table.grid
        for row, what, count in lost[:_MOST_TOLD]:
            more = len(lost) - _MOST_TOLD if row == lost[min(len(lost), _MOST_TOLD) - 1][0] else 0
            what = what.replace("a ", "the ", 1)
            place = grid.place(row, next(c for c in range(grid.width) if not is_blank(grid.columns[c][row])))
            self.found.problems.append(not_read(place, what, row_text(grid, row), count, max(more, 0)))

    def _cut_commas(self, keep: NDArray[np.bool_], kinds: RowKinds) -> None:
        """Rows of a text with more cells than the heading, where a decimal comma stood for the sign between cells."""
        grid = self.table.grid
        for row in kinds.longer() if grid.sheet is None else ():
            if not keep[row - self.first] or (column := kinds.cut_by_comma(row)) is None:
                continue
            keep[row - self.first] = False
            place, read = grid.place(row, column), f"{grid.text(row, column)},{grid.text(row, column + 1)}"
            expected = "one cell for each heading; a number with a decimal comma in quotes"
            message = (
                f"{place}: a row with more cells than the heading holds {visible(read, 60)}, which the comma between "
                f"cells may have cut; expected {expected}; the row is not used."
            )
            self.found.problems.append(
                Problem("unreadable", None, None, place, visible(read), expected, message, "row-too-long")
            )

    def _cut_off(self, keep: NDArray[np.bool_]) -> None:
        """A last row that is shorter than the heading and has no line end: the file may have been cut off."""
        grid = self.table.grid
        last = grid.height - 1
        wanted = behind(self.table)
        if 0 < grid.unended < wanted and last >= self.first and keep[last - self.first]:
            self.found.problems.append(cut_off(grid.place(last, 0), row_text(grid, last), grid.unended, wanted))

    def _bad_key(self, row: int, key: int) -> None:
        """A row whose machine or station cannot be read speaks for none; its cells are listed."""
        grid = self.table.grid
        self.found.problems.append(unreadable_key(grid, row, key))
        for column in range(grid.width):
            if column != key and not is_blank(grid.columns[column][row]):
                reason = "the machine or station of its row cannot be read"
                label = self.table.labels[column]
                self.found.leave(Unused(label, visible(grid.text(row, column)), grid.place(row, column), reason))

    # columns

    def _values_above(self) -> None:
        """Rows above the heading that hold values of a station."""
        grid = self.table.grid
        for row in range(min(self.table.top, _MOST_TOLD)):
            if (count := values_in_row(grid, row, self.headings)) >= ENOUGH and not is_title_row(grid, row, self.words):
                self.found.problems.append(not_read(grid.place(row, 0), "a row above", row_text(grid, row), count))

    def _packed_cells(self) -> None:
        """Whole lines in one cell of a column of texts or of one that is not read: a quoted block."""
        grid = self.table.grid
        if not grid.packed:
            return
        for column, heading in enumerate(self.headings):
            if heading is not None and heading.entry.kind in ("number", "toleranced"):
                continue  # what stands there is read as a value, and told
            cells = grid.columns[column][self.rows].tolist()
            for row, cell in zip(self.rows.tolist(), cells, strict=True):
                if (
                    type(cell) is str
                    and len(cell) > 7
                    and (count := packed_values(cell, self.headings, column)) >= ENOUGH
                ):
                    self.found.problems.append(not_read(grid.place(row, column), "the cell", str(cell), count))

    def _unused(self, column: int) -> None:
        """One entry for a column whose heading is not recognised."""
        grid, table, rows = self.table.grid, self.table, self.rows
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
        self,
        block: Block,
        column: int,
        heading: Heading,
        base: NDArray[np.intp],
        keys: Sequence[tuple[str, str]],
        homeless: Sequence[int],
    ) -> None:
        """The strips of one column."""
        grid, rows = self.table.grid, self.rows
        label = self.table.labels[column]
        whole = len(rows) == grid.height - self.first
        cells = grid.columns[column][self.first :] if whole else grid.columns[column][rows]
        cells = inherited(grid, cells, rows, column, heading, keys, self.found)
        if homeless and heading.entry.level == "station":
            cells = object_column(cells.tolist())
            for index in homeless:
                if not is_blank(cells[index]):
                    place, read = grid.place(int(rows[index]), column), visible(cell_text(cells[index]))
                    self.found.leave(Unused(label, read, place, "the row names no station"))
                    cells[index] = None
        if len(rows) and grid.merged:
            cells = merged_down(grid, cells, rows, column)
        units = self._units_of(heading, column)
        block.strips.extend(strips_of(grid, heading, label, column, cells, rows, base, units))

    def _units_of(self, heading: Heading, column: int) -> dict[int, str]:
        """Units that stand with single cells: in a column of their own, or in number formats."""
        grid = self.table.grid
        like = (heading.parameter, heading.station)
        units = (c for c, h in enumerate(self.headings) if h is not None and h.aspect == "unit")
        at = next((c for c in units if (h := self.headings[c]) and (h.parameter, h.station) == like), None)
        if at is not None and not heading.unit:
            return {row: text for row in self.rows.tolist() if (text := grid.text(row, at))}
        return {r: f for (r, c), f in grid.formats.items() if c == column} if grid.formats else {}
