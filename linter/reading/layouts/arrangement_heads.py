"""A word for the machine over cells that say how bearings are located (``Arrangement`` over ``floating``)."""

from linter.reading.files.grids import LONGEST_MIXED, Grid, TextColumn
from linter.reading.words.headings import Heading, Words
from linter.reading.words.other_cells import are_roles

#: Rows among which headings are looked for, and cells of a column or row that are looked at.
_ROWS, _SAMPLE = 60, 200
_ROLE = "axial role"


def with_roles_named(grid: Grid, words: Words) -> Grid:
    """The grid where such a word says what the cells below it, or behind it, are; as it is where there is none."""
    if grid.height > LONGEST_MIXED or any(isinstance(column, TextColumn) for column in grid.columns):
        return grid
    for row in range(min(grid.height, _ROWS)):
        for column, cell in enumerate(grid.row(row)):
            if type(cell) is not str or len(cell) > len(_ROLE) + 10 or words.heading(cell) != Heading("machine"):
                continue
            named = f"{cell.strip()} ({_ROLE})"
            if _over_roles(grid, row, column) and words.heading(named) == Heading("axial_role"):
                grid = grid.with_cells({(row, column): named})
    return grid


def _over_roles(grid: Grid, row: int, column: int) -> bool:
    """Whether the cells below a cell, or those behind it, all say how bearings are located, and differ."""
    below = (grid.text(r, column) for r in range(row + 1, min(grid.height, row + 1 + _SAMPLE)))
    behind = (grid.text(row, c) for c in range(column + 1, min(grid.width, column + 1 + _SAMPLE)))
    return any(are_roles([text for text in texts if text]) for texts in (below, behind))
