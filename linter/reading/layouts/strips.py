"""What a layout hands on: strips of raw cells that belong to one parameter, with their rows and places."""

from collections.abc import Sequence
from typing import Any

import numpy as np
from attrs import define, field, frozen
from numpy.typing import NDArray

from linter.model.places import Place, column_letters
from linter.model.stations import Problem, Unused
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Bad, Column, Grid, object_column
from linter.reading.files.intake import visible

MOST_UNUSED = 10_000


@frozen(eq=False)
class Strip:
    """Raw cells of one parameter.

    Attributes
    ----------
    parameter : str
        Name in the vocabulary.
    cells : object array or TextColumn, shape (cells,)
        The raw cells.
    rows : int array, shape (cells,)
        Row of the block each cell belongs to.
    aspect : str
        What the cells state: the ``value`` (its nominal, or all of it), its ``upper`` or ``lower`` deviation, its
        ``min`` or ``max`` limit, its ``tolerance`` (a class, or deviations in one cell), or ``dimensions`` of a bearing
        and ``fits`` of both seats in one cell until they are taken apart.
    unit : str
        Unit text that goes with the cells, empty where none is stated.
    own_unit : bool
        True where the name was the vocabulary's own, so that its canonical unit is agreed.
    label : str
        The table's word for it.
    version : str
        ``newer`` or ``older`` where the word says so (``(new)``, ``old``, ``proposed``); empty otherwise.
    sheet : str or None
        Sheet of the cells.
    lines, columns : int array, shape (cells,)
        Row or line number and spreadsheet column of each cell, counted from 1.
    pointers : list of str or None
        JSON Pointers instead.
    whole : dict of int to str
        Whole texts of the cells of which only a part states the value, for showing.
    """

    parameter: str
    cells: Column = field(repr=False)
    rows: NDArray[np.intp] = field(repr=False)
    aspect: str = "value"
    unit: str = ""
    own_unit: bool = False
    label: str = ""
    version: str = ""
    sheet: str | None = None
    lines: NDArray[np.int32] | None = field(default=None, repr=False)
    columns: NDArray[np.int32] | None = field(default=None, repr=False)
    pointers: list[str] | None = field(default=None, repr=False)
    whole: dict[int, str] = field(factory=dict, repr=False)

    def place(self, file: str, index: int) -> Place:
        """Place of one cell."""
        if self.pointers is not None:
            return Place(file, pointer=self.pointers[index])
        return Place(file, self.sheet, self.at(index))

    def at(self, index: int) -> str:
        """Cell or JSON Pointer of one cell."""
        if self.pointers is not None:
            return self.pointers[index]
        assert self.lines is not None and self.columns is not None
        return f"{column_letters(int(self.columns[index]))}{self.lines[index]}"


@define(eq=False)
class Block:
    """One table: rows that belong to a machine and, mostly, a station.

    Attributes
    ----------
    machines, stations : list of str, length rows
        Keys of each row. No station: the row is about the whole machine. No machine: about the only one, or every one.
    strips : list of Strip
        Its cells.
    length_unit : str
        Unit that the table states for all its lengths (title block, file-level field), empty where it states none.
    """

    machines: list[str]
    stations: list[str]
    strips: list[Strip] = field(factory=list)
    length_unit: str = ""


@frozen
class TableWord:
    """A heading, row label or key of a table that names no parameter that is known.

    Attributes
    ----------
    text : str
        The word as it stands.
    samples : tuple of str
        Some of the values that stand with it.
    place : Place
        Where it stands.
    reason : str
        Why it is not understood.
    """

    text: str
    samples: tuple[str, ...]
    place: Place
    reason: str


@define(eq=False)
class Found:
    """All that the layouts made of one file."""

    blocks: list[Block] = field(factory=list)
    unused: list[Unused] = field(factory=list)
    notes: list[str] = field(factory=list)
    problems: list[Problem] = field(factory=list)
    layouts: list[str] = field(factory=list)
    seen: list[str] = field(factory=list)
    words: list[TableWord] = field(factory=list)
    without_table: list[Grid] = field(factory=list)
    uncounted: int = 1

    def take(self, other: "Found") -> None:
        """Add all that was found of another part of the file."""
        self.blocks += other.blocks
        self.notes += other.notes
        self.problems += other.problems
        self.layouts += other.layouts
        self.seen += other.seen
        self.words += other.words
        self.without_table += other.without_table
        for unused in other.unused:
            self.leave(unused)

    def leave(self, unused: Unused) -> None:
        """List a cell as unused; beyond very many the rest is only counted."""
        if len(self.unused) < MOST_UNUSED:
            self.unused.append(unused)
            return
        self.uncounted += 1
        more = f"{self.uncounted} more cells"
        self.unused[MOST_UNUSED - 1 :] = [Unused("", more, unused.place, "not used, for reasons like those above")]

    def one_length_unit(self, before: str, stated: str, place: Place) -> str:
        """The unit of lengths that a table states, where it states it once or each time alike; else it is asked for."""
        one, other = known_unit(before), known_unit(stated)
        if one is None or other is None or one.name == other.name:
            self.say(f"lengths are stated in {stated}")
            return stated
        expected = "one unit of lengths for a table, or a unit beside each value"
        message = f"{place}: lengths are stated in {visible(stated, 20)} here and in {visible(before, 20)} before; " + (
            f"expected {expected}; neither is taken."
        )
        self.problems.append(Problem("unreadable", None, None, place, stated, expected, message, "two-units"))
        return ""

    def say(self, note: str) -> None:
        """Add a note once."""
        if note not in self.notes:
            self.notes.append(note)


def grid_strip(
    grid: Grid,
    parameter: str,
    at: Sequence[tuple[int, int]] | NDArray[Any],
    rows: Sequence[int] | NDArray[Any],
    **traits: Any,
) -> Strip:
    """A strip from cells of a grid by their (row, column) indices."""
    where = np.asarray(at, dtype=np.intp).reshape(-1, 2)
    cells = object_column([grid.columns[c][r] for r, c in where.tolist()])
    shifts = 0 if grid.shifts is None else grid.shifts[where[:, 0]]
    return Strip(
        parameter,
        cells,
        np.asarray(rows, dtype=np.intp),
        sheet=grid.sheet,
        lines=grid.lines[where[:, 0]],
        columns=((where[:, 1] + shifts) * (not grid.whole_lines) + grid.first_column).astype(np.int32),
        **traits,
    )


def filled_down(place: Place, count: int, what: str, level: str = "machine") -> Problem:
    """The assumption that blank cells of machines or stations belong to the one named before them."""
    many = f"{count} {what}{'s' * (count > 1)}"
    expected = f"the {level} in every {what}"
    message = f"{place}: the {level} is blank in {many}; the one named before is taken; expected {expected}."
    return Problem("assumption", None, level, place, "", expected, message, "filled-down")


def part_taken(place: Place, name: str, told: str) -> Problem:
    """The assumption that a size of no named part is of the one that its table tells."""
    part, expected = told.split("_")[0], "a name that says shaft or housing"
    message = (
        f"{place}: {visible(name, 60)} names no part; it is taken for the {part}, as its table tells; "
        f"expected {expected}."
    )
    return Problem("assumption", None, told, place, visible(name, 60), expected, message, "part-told")


def unreadable_key(grid: Grid, row: int, column: int) -> Problem:
    """A row whose machine or station is an error, a date or struck out: it belongs to none."""
    place, read = grid.place(row, column), visible(grid.text(row, column))
    expected = "the name of a machine or station"
    bad = grid.columns[column][row]
    why = bad.expected if isinstance(bad, Bad) else expected
    message = f"{place}: the row is named by {read}; expected {why}; the row is not used."
    return Problem("unreadable", None, "station", place, read, expected, message, "unreadable-key")
