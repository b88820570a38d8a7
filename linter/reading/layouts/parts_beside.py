"""Blocks of parts side by side, each with all positions: ``Shaft | DE | NDE | | Housing | DE | NDE``."""

from itertools import pairwise

from attrs import evolve

from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank, object_column
from linter.reading.layouts.form import of_pieces
from linter.reading.layouts.sides import side_of
from linter.reading.words.headings import Words

#: Columns that are looked at, and parts beside each other.
_MOST_COLUMNS, _FEWEST = 24, 2


def parts_below_each_other(grid: Grid, words: Words) -> Grid:
    """A grid whose parts stand below each other, each with its own rows; another grid as it stands."""
    if grid.height > LONGEST_MIXED or not 6 <= grid.width <= _MOST_COLUMNS or grid.whole_lines or grid.merged:
        return grid
    pieces: list[tuple[int, int, int]] = []
    places: list[int] = []  # rows that keep the positions alone, and those that keep the word for the part
    heads: list[int] = []
    row = 0
    while row < grid.height:
        spans = _parts(grid, row, words)
        end = row + 1
        while spans and end < grid.height and _filled(grid, end, 0, grid.width) and not _parts(grid, end, words):
            end += 1
        if not spans or end == row + 1 or not all(grid.text(row + 1, a) for a, _ in spans):
            pieces.append((row, 0, grid.width))
            row += 1
            continue
        places.append(len(pieces))
        pieces.append((row, *spans[0]))
        for a, b in spans:
            heads.append(len(pieces))
            pieces += [(r, a, b) for r in range(row, end) if r == row or _filled(grid, r, a, b)]
        row = end
    if not places:
        return grid
    stacked = of_pieces(grid, pieces, grid.width)
    columns = [list(column.tolist()) for column in stacked.columns]
    for at, column in enumerate(columns):
        for k in heads if at else places:
            column[k] = None
    return evolve(stacked, columns=[object_column(cells) for cells in columns])


def _parts(grid: Grid, row: int, words: Words) -> list[tuple[int, int]]:
    """First column and column behind the last of each part of a row, all with the same positions behind them."""
    texts = [grid.text(row, column) for column in range(grid.width)]
    starts = [c for c, text in enumerate(texts) if text and side_of(text) is not None and not words.station_said(text)]
    if len(starts) < _FEWEST or starts[0] != next(c for c, text in enumerate(texts) if text):
        return []
    spans = list(pairwise([*starts, grid.width]))
    places = [[text for text in texts[a + 1 : b] if text] for a, b in spans]
    sides = {side.side for c in starts if (side := side_of(texts[c])) is not None}
    same = len(places[0]) > 1 and all(own == places[0] for own in places) and len(sides) == len(starts)
    return spans if same and all(words.station_said(place) for place in places[0]) else []


def _filled(grid: Grid, row: int, first: int, last: int) -> bool:
    return any(not is_blank(grid.columns[column][row]) for column in range(first, last))
