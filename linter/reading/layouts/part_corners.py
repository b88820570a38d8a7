"""Small tables one below another, each headed by its part in the corner: ``Shaft | Dia. mm | Ra µm`` over positions."""

from typing import Any

from attrs import evolve

from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank, object_column
from linter.reading.layouts.sides import Side, side_of, within
from linter.reading.words.headings import Words

_MOST_COLUMNS, _LONGEST = 16, 40


def with_corners_apart(grid: Grid, words: Words) -> Grid:
    """A grid where a word for shaft or housing in the corner of a small table stands before each of its headings.

    Below the corner stand two positions or more and nothing else, up to a blank row; two such tables or more make the
    sheet one of that kind. Another grid is given back as it stands.
    """
    if grid.height > LONGEST_MIXED or not 3 <= grid.width <= _MOST_COLUMNS or grid.merged:
        return grid
    found = {row: side for row in range(grid.height) if (side := _corner(grid, row, words)) is not None}
    if len(found) < 2:
        return grid
    columns: list[list[Any]] = [list(column.tolist()) for column in grid.columns]
    for row, side in found.items():
        columns[0][row] = "station"
        for column in range(1, grid.width):
            if label := grid.text(row, column):
                columns[column][row] = _joined(words, side, label)
    return evolve(grid, columns=[object_column(cells) for cells in columns])


def _corner(grid: Grid, row: int, words: Words) -> Side | None:
    """The part that the first cell of a row of headings says, above positions and nothing else."""
    label = grid.text(row, 0)
    side = side_of(label) if 0 < len(label) <= _LONGEST else None
    if side is None or side.side == "bearing" or (row and any(not is_blank(c[row - 1]) for c in grid.columns)):
        return None
    heads = [grid.text(row, column) for column in range(1, grid.width)]
    heads = [text for text in heads if text]
    if len(heads) < 2 or any(text[0].isdigit() or words.station_said(text) for text in heads):
        return None
    below: list[str] = []
    for r in range(row + 1, grid.height):
        if all(is_blank(column[r]) for column in grid.columns):
            break
        below.append(grid.text(r, 0))
    said = all(text and words.station_said(text) for text in below)
    positions = said and len(below) == len({*below}) > 1
    return side if positions and any(within(words, side, text) is not None for text in heads) else None


def _joined(words: Words, side: Side, label: str) -> str:
    """A heading with the part before it, where both say a parameter of the part; else as it stands."""
    wanted = within(words, side, label)
    if wanted is None or words.groups(label):
        return label
    for text in (label, f"{side.word} {label}", f"{side.side} {label}", f"{side.side} seat {label}"):
        said = words.heading(text)
        if said is not None and said.parameter == wanted.parameter:
            return text
    return label
