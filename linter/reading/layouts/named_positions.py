"""The names of a grid, down its first columns and along its first rows, and the positions that they show."""

from itertools import chain

from linter.reading.files.grids import LONGEST_MIXED, Grid, TextColumn, is_blank
from linter.reading.words.headings import Words
from linter.reading.words.inside import positions_inside

#: Columns and rows that may hold names, and rows of a column that are looked at.
_COLUMNS, _ROWS, _LONGEST = 4, 30, 1000
_FEWEST = 4


def with_positions(grid: Grid, words: Words) -> Words:
    """The words, with what each name of a grid says without its position; as they are where none shows one."""
    told = {}
    for texts in chain(_columns(grid), _rows(grid)):
        if len(texts) >= _FEWEST:
            told.update(positions_inside(texts, words))
    return Words(words.names, {**words.told, **told}) if told else words


def _columns(grid: Grid) -> list[list[str]]:
    if grid.height > LONGEST_MIXED:
        return []
    columns = [c for c in grid.columns[:_COLUMNS] if not isinstance(c, TextColumn)]
    return [[cell.strip() for cell in c[:_LONGEST].tolist() if type(cell) is str] for c in columns]


def _rows(grid: Grid) -> list[list[str]]:
    rows = (grid.row(row) for row in range(min(grid.height, _ROWS)))
    texts = [[cell for cell in row if not is_blank(cell)] for row in rows]
    return [[cell.strip() for cell in row] for row in texts if all(type(cell) is str for cell in row)]
