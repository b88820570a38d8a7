"""A heading of two rows, one of which says nothing but the positions: ``Parameter | Unit | Value`` over ``A | B``."""

from collections.abc import Sequence

from attrs import evolve

from linter.reading.files.grids import LONGEST_MIXED, Grid
from linter.reading.layouts.heads_above import LIKE_VALUE
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.layouts.sides import side_of
from linter.reading.words.column_words import KEYS
from linter.reading.words.columns import key_of
from linter.reading.words.headings import Words

#: Rows above a table's first one that may be a title, and columns of a table at most.
_ROWS, _MOST_COLUMNS = 50, 16


def positions_beside_names(grid: Grid, words: Words) -> Grid:
    """A grid whose positions stand in the row that heads its names; as it is where they do already.

    They may stand a row lower, below one word for all of them (``Value``, ``Position``) or none, or a row higher, over
    the word for values that comes again below each. The words of the other row are taken to that of the positions.
    """
    if grid.height > LONGEST_MIXED or not 3 <= grid.width <= _MOST_COLUMNS:
        return grid
    for row in range(min(grid.height - 2, _ROWS)):
        if not _are_texts(grid, row) or not _are_texts(grid, row + 1):
            continue
        for positions, names in ((row + 1, row), (row, row + 1)):
            columns = _positions(grid, positions, names, words)
            if columns:
                return _joined(grid, positions, names, columns)
    return grid


def _are_texts(grid: Grid, row: int) -> bool:
    filled = grid.stated(row)
    return len(filled) > 1 and all(type(cell) is str for cell in filled)


def _positions(grid: Grid, row: int, names: int, words: Words) -> list[int]:
    """The columns of the positions that a row says beside the heading of the names; none where it does not."""
    columns = [*grid.texts(row)]
    heads = [grid.text(row, column) for column in columns]
    if len(heads) > 2 and _over_positions(heads[0], words) and row < names:
        columns, heads = columns[1:], heads[1:]  # Position | A | B
    if len(columns) < 2 or len(set(heads)) < len(heads) or columns[-1] - columns[0] >= len(columns):
        return []
    if not any("NAME" in words.groups(grid.text(names, column)) for column in range(columns[0])):
        return []
    beside = [grid.text(names, column) for column in columns]
    if row < names:
        return columns if _all_positions(heads, words) and set(map(words.group, beside)) == {"VALUE"} else []
    return columns if _below_one_word(heads, beside, words) else []


def _below_one_word(heads: Sequence[str], above: Sequence[str], words: Words) -> bool:
    """Whether texts are positions below one word for all of them, or below none."""
    if any(text and text != above[0] for text in above) or (above[0] and not _over_positions(above[0], words)):
        return False
    others = any(LIKE_VALUE.match(text) or words.groups(text) or side_of(text) for text in heads)
    return _all_positions(heads, words) or (above[0] != "" and not others)


def _over_positions(text: str, words: Words) -> bool:
    """Whether a word may stand over positions: one for values, for places or for bearings."""
    heading = words.heading(text)
    place = heading is not None and heading.parameter == "station" and not heading.station
    return place or words.group(text) == "VALUE" or key_of(text, words).strip(" .") in KEYS["place"] | KEYS["bearing"]


def _all_positions(heads: Sequence[str], words: Words) -> bool:
    return all(words.station_said(text) for text in heads)


def _joined(grid: Grid, row: int, names: int, columns: Sequence[int]) -> Grid:
    """The grid with one heading in the row of the positions, at its true place."""
    heads = {c: grid.columns[c][row] if c in columns else grid.columns[c][names] for c in range(grid.width)}
    rows = [(r, heads if r == row else None) for r in range(grid.height) if r != names]
    merged = tuple(m for m in grid.merged if not m[0] <= names <= m[2] and not m[0] <= row <= m[2])
    return of_rows(evolve(grid, merged=merged), rows)
