"""The names of a grid, down its first columns and along its first rows, and the positions that they show."""

from collections.abc import Iterator
from itertools import chain

from linter.reading.files.grids import LONGEST_MIXED, Grid, TextColumn, is_blank
from linter.reading.words.headings import Words
from linter.reading.words.inside import positions_inside

#: Columns and rows that may hold names, and rows of a column that are looked at.
_COLUMNS, _ROWS, _LONGEST = 4, 30, 1000
_FEWEST = 4
#: Cells beside a name, and below one, that may tell whose size it is.
_BESIDE, _BELOW = 4, 2


def with_positions(grid: Grid, words: Words) -> Words:
    """The words, with what each name of a grid says without its position; as they are where none shows one."""
    told = {}
    for beside in chain(_columns(grid), _rows(grid)):
        if len(beside) >= _FEWEST:
            told.update(positions_inside(beside, words, beside))
    return Words(words.names, {**words.told, **told}) if told else words


def _columns(grid: Grid) -> Iterator[dict[str, tuple[str, ...]]]:
    """The texts of the first columns with the cells on their right."""
    for column in range(min(grid.width, _COLUMNS) if grid.height <= LONGEST_MIXED else 0):
        if isinstance(cells := grid.columns[column], TextColumn):
            continue
        beside = range(column + 1, min(column + 1 + _BESIDE, grid.width))
        texts = {cell.strip(): row for row, cell in enumerate(cells[:_LONGEST].tolist()) if type(cell) is str}
        yield {text: tuple(filter(None, (grid.text(row, c) for c in beside))) for text, row in texts.items()}


def _rows(grid: Grid) -> Iterator[dict[str, tuple[str, ...]]]:
    """The texts of the first rows that hold nothing else, with the cells below them."""
    for row in range(min(grid.height, _ROWS)):
        cells = grid.row(row)
        if all(type(cell) is str for cell in cells if not is_blank(cell)):
            below = range(row + 1, min(row + 1 + _BELOW, grid.height))
            texts = {cell.strip(): column for column, cell in enumerate(cells) if not is_blank(cell)}
            yield {text: tuple(filter(None, (grid.text(r, c) for r in below))) for text, c in texts.items()}
