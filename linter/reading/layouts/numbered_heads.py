"""Positions that a workbook holds as numbers in a heading row (``Characteristic | 1 | | 2 | | Unit``)."""

from itertools import pairwise

from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank
from linter.reading.words.headings import Words

#: Rows among which such a row is looked for, and positions of it at most.
_ROWS, _MOST = 60, 8


def with_numbered_heads(grid: Grid, words: Words) -> Grid:
    """The grid where such numbers are words, as in a text; as it is where there are none.

    They count from one, and a word for names or positions stands before them.
    """
    if grid.height > LONGEST_MIXED or grid.sheet is None:
        return grid
    found = ((row, c) for row in range(min(grid.height, _ROWS)) for c in _numbers(grid, row, words))
    cells = {(row, column): str(int(grid.columns[column][row])) for row, column in found}
    return grid.with_cells(cells) if cells else grid


def _numbers(grid: Grid, row: int, words: Words) -> list[int]:
    """The columns of the numbers of a row that count its positions and are all its numbers."""
    cells = {column: cell for column, cell in enumerate(grid.row(row)) if not is_blank(cell)}
    numbers = [column for column, cell in cells.items() if type(cell) in (int, float)]
    if not 2 <= len(numbers) <= _MOST or [cells[c] for c in numbers] != [*range(1, len(numbers) + 1)]:
        return []
    before = [grid.text(row, c) for c in cells if c < numbers[0]]
    others = [cell for c, cell in cells.items() if c not in numbers]
    apart = {two - one for one, two in pairwise(numbers)}
    if len(apart) > 1 or any(type(cell) is not str for cell in others):
        return []
    return numbers if any(_heads_names(text, words) for text in before) else []


def _heads_names(text: str, words: Words) -> bool:
    """Whether a word heads names or positions."""
    heading = words.heading(text)
    place = heading is not None and heading.parameter == "station" and not heading.station
    return place or "NAME" in words.groups(text)
