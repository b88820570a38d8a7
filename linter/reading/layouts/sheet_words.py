"""Words that may be the names of a sheet in which none is known."""

from typing import Any

from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.layouts.strips import TableWord
from linter.reading.words.headings import Words


def candidate_words(grid: Grid, words: Words) -> list[TableWord]:
    """Words that may be names in a sheet without one known name: its fullest row of texts, and its first column."""
    return [*words_across(grid, words), *_words_down(grid, words)]


def words_across(grid: Grid, words: Words) -> list[TableWord]:
    """Words of the fullest row of texts near the top of a sheet, with samples of what stands below them."""
    rows = range(min(grid.height, 50))
    head = max(rows, key=lambda r: _texts(grid.row(r)), default=0)
    if not grid.height or _texts(grid.row(head)) < 2:
        return []
    result = []
    for column in range(grid.width):
        if text := grid.text(head, column):
            below = [cell_text(c) for c in grid.columns[column][head + 1 : head + 50].tolist() if not is_blank(c)]
            samples = tuple(dict.fromkeys(below))[:3]
            result.append(TableWord(text, samples, grid.place(head, column), words.why(text)))
    return result


def _words_down(grid: Grid, words: Words) -> list[TableWord]:
    """Words of the first column, with samples of what stands beside them."""
    result = []
    if grid.width > 1 and _texts(grid.columns[0].tolist()[:500]) >= 2:
        for row in range(min(grid.height, 500)):
            text = grid.text(row, 0)
            right = [cell_text(cell) for cell in grid.row(row)[1:] if not is_blank(cell)]
            if text and right:
                result.append(TableWord(text, tuple(right[:3]), grid.place(row, 0), words.why(text)))
    return result


def _texts(cells: list[Any]) -> int:
    """Number of cells that hold a word."""
    return sum(1 for cell in cells if type(cell) is str and any(sign.isalpha() for sign in cell))
