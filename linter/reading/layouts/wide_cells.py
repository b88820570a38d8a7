"""The cells of one column of a table with a heading row: units of single rows, merged cells, inherited values."""

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray

from linter.model.stations import Problem
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Column, Grid, TextColumn, cell_text, is_blank, object_column
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Block, Found, Strip
from linter.reading.words.headings import Heading

Rows = NDArray[np.intp]


def strips_of(
    grid: Grid,
    heading: Heading,
    label: str,
    column: int,
    cells: Column,
    rows: Rows,
    base: Rows,
    unit_of: dict[int, str],
) -> list[Strip]:
    """The strips of one column: one, and one more for each unit that stands in a row of its own.

    Parameters
    ----------
    grid : Grid
        The table.
    heading, label : Heading, str
        What the column is, and its words.
    column : int
        Its index in the grid.
    cells : Column, shape (rows,)
        Its cells.
    rows, base : int array, shape (rows,)
        Row of the grid and row of the block of each cell.
    unit_of : dict of int to str
        Unit that stands with a cell, by its row of the grid.

    Returns
    -------
    list of Strip
        In the order of the rows.
    """
    by_unit: dict[str, list[int]] = {}
    for index, row in enumerate(rows.tolist()) if unit_of else ():
        if row in unit_of and (not heading.unit or _other_unit(unit_of[row], heading.unit)):
            by_unit.setdefault(unit_of[row], []).append(index)

    def strip(at: Any, unit: str) -> Strip:
        return Strip(
            heading.parameter,
            cells[at],
            base[at],
            sheet=grid.sheet,
            lines=grid.lines[rows[at]],
            columns=np.full(len(rows[at]), grid.first_column + column, dtype=np.int32)
            + (0 if grid.shifts is None else grid.shifts[rows[at]]),
            **{**heading.traits(label), "unit": unit},
        )

    if not by_unit:
        return [strip(slice(None), heading.unit)] if len(cells) else []
    strips = [strip(np.array(some), unit) for unit, some in by_unit.items()]
    alone = np.ones(len(rows), dtype=bool)
    alone[[i for some in by_unit.values() for i in some]] = False
    rest = np.flatnonzero(alone)
    return [*strips, strip(rest, heading.unit)] if len(rest) else strips


def _other_unit(shown: str, stated: str) -> bool:
    """Whether a cell shows a unit of its own that is not the one of its heading; what stands nearest counts."""
    one, other = known_unit(shown), known_unit(stated)
    return one is not None and other is not None and one.name != other.name


def merged_down(grid: Grid, cells: Column, rows: Rows, column: int) -> Column:
    """Cells merged downwards count in each of their rows."""
    index = {row: i for i, row in enumerate(rows.tolist())}
    copy: NDArray[Any] | None = None
    for top, left, bottom, right in grid.merged:
        if left <= column <= right and bottom > top and top in index:
            copy = object_column(cells.tolist()) if copy is None else copy
            for row in range(top + 1, bottom + 1):
                if row in index:
                    copy[index[row]] = grid.columns[left][top]
    return cells if copy is None else copy


def inherited(
    grid: Grid,
    cells: Column,
    rows: Rows,
    column: int,
    heading: Heading,
    keys: Sequence[tuple[str, str]],
    found: Found,
) -> Column:
    """An asterisk stands for the value of the generic (first) machine at the same station; ``keys`` are of the rows."""
    if len(rows) < 2 or heading.parameter in ("machine", "station"):
        return cells
    stars = cells.equal("*") if isinstance(cells, TextColumn) else np.flatnonzero([c == "*" for c in cells.tolist()])
    if not len(stars):
        return cells
    first = keys[0][0]
    generic = {station: i for i, (machine, station) in enumerate(keys) if machine == first}
    cells = object_column(cells.tolist())
    stars_of: dict[int, list[int]] = {}
    for star in stars.tolist():
        machine, station = keys[star]
        source = generic.get(station, -1)
        if source in (-1, star) and (machine == first or len(generic) == 1):
            source = 0
        if source not in (-1, star) and not is_blank(cells[source]) and cells[source] != "*":
            stars_of.setdefault(source, []).append(star)
            cells[star] = cells[source]
    for source, taken in stars_of.items():
        place = grid.place(int(rows[taken[0]]), column)
        many = f"* in {len(taken)} cell{'s' * (len(taken) > 1)} of this column"
        message = (
            f"{place}: {many}; the value {visible(cell_text(cells[source]), 40)} of row "
            f"{grid.lines[rows[source]]} is taken; expected a value."
        )
        found.problems.append(
            Problem("assumption", None, heading.parameter, place, "*", "a value", message, "inherited")
        )
    return cells


def drop_unstated(block: Block, start: int, count: int) -> None:
    """A station that only headings name is none of a machine whose cells for it are all blank."""
    stated = np.zeros(len(block.machines), dtype=bool)
    for strip in block.strips:
        inside = (strip.rows >= start) & (strip.rows < start + count)
        if inside.any():
            filled = [not is_blank(cell) for cell in strip.cells[inside].tolist()]
            stated[strip.rows[inside][filled]] = True
    for row in range(start, start + count):
        if not stated[row]:
            block.stations[row] = ""
