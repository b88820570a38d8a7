"""Blocks of names and values side by side below nothing but their positions (``Lager links | | Lager rechts``)."""

from collections.abc import Sequence
from itertools import pairwise

from linter.reading.files.grids import Grid
from linter.reading.words.headings import Words

#: Rows in which the positions are looked for, rows of a block at least, and columns of a block at least.
_HEAD, _ROWS, _LEAST = 30, 3, 2
Piece = tuple[int, int, int]


def blocks_beside(grid: Grid, words: Words) -> list[Piece]:
    """Row, first column and column behind the last of each piece of the grid, block after block; empty for another.

    Below each position stand the same names with values behind them; what stands above and below all blocks keeps its
    place.
    """
    for row in range(min(grid.height - _ROWS, _HEAD)):
        starts = [*grid.texts(row)]
        texts = [grid.text(row, column) for column in starts]
        if len(starts) < 2 or len({*texts}) < len(texts) or not all(map(words.station_said, texts)):
            continue
        spans = list(pairwise([*starts, grid.width]))
        if any(b - a < _LEAST for a, b in spans) or not _say_the_same(grid, row, starts, words):
            continue
        end = next((r for r in range(row + 1, grid.height) if not grid.filled[r]), grid.height)
        whole = 0, grid.width
        above, below = ((r, *whole) for r in range(row)), ((r, *whole) for r in range(end, grid.height))
        return [*above, *((r, a, b) for a, b in spans for r in range(row, end)), *below]
    return []


def _say_the_same(grid: Grid, row: int, starts: Sequence[int], words: Words) -> bool:
    """Whether most names below each of some cells stand below all of them, and some are known."""
    names = [_names_below(grid, row, column) for column in starts]
    alike = set.intersection(*names)
    known = sum(words.heading(name) is not None for name in alike)
    return 2 * len(alike) > max(map(len, names)) and known >= _ROWS


def _names_below(grid: Grid, row: int, column: int) -> set[str]:
    """The texts of a column below a row, up to a blank row, that have another text behind them."""
    found: set[str] = set()
    for below in range(row + 1, grid.height):
        if not grid.filled[below]:
            break
        if (name := grid.text(below, column)) and grid.text(below, column + 1):
            found.add(name)
    return found
