"""A small table of other things beside a list, set apart by a blank column: gauges, tools, drawings that go with it."""

from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.words.headings import Words

_MOST_COLUMNS, _MOST_ROWS, _LEAST = 16, 12, 2


def with_other_tables_below(grid: Grid, words: Words) -> Grid:
    """The grid with such a table below all others, at its own place; as it is where there is none.

    It begins below the first row of what stands left of the blank column, its rows follow each other, and it names no
    position and no parameter of one: what stands beside a line for a part would hide that the line is one.
    """
    if grid.height > LONGEST_MIXED or not 4 <= grid.width <= _MOST_COLUMNS:
        return grid
    blank = [c for c in range(2, grid.width - _LEAST) if all(is_blank(cell) for cell in grid.columns[c].tolist())]
    for column in blank:
        right = range(column + 1, grid.width)
        rows = [row for row in range(grid.height) if any(not is_blank(grid.columns[c][row]) for c in right)]
        if rows and _is_other(grid, rows, right, words):
            own = [
                (r, {c: grid.columns[c][r] for c in range(column)} if r in rows else None) for r in range(grid.height)
            ]
            apart = [(r, {c: grid.columns[c][r] for c in right}) for r in rows]
            return of_rows(grid, [*own, (rows[0], {}), *apart])
    return grid


def _is_other(grid: Grid, rows: list[int], columns: range, words: Words) -> bool:
    """Whether a block is a small table that heads nothing of a bearing."""
    together = _LEAST <= len(rows) == rows[-1] - rows[0] + 1 <= _MOST_ROWS
    first = next(row for row in range(grid.height) if not all(is_blank(cell) for cell in grid.row(row)))
    if not together or rows[0] <= first + 1:
        return False
    heads = [grid.columns[c][rows[0]] for c in columns if not is_blank(grid.columns[c][rows[0]])]
    if len(heads) < _LEAST or any(type(cell) is not str or any(map(str.isdigit, cell)) for cell in heads):
        return False
    texts = [text for row in rows for c in columns if (text := grid.text(row, c))]
    named = [heading for text in texts if (heading := words.heading(text)) is not None]
    of_position = any(heading.entry.level == "station" or heading.parameter == "station" for heading in named)
    return not of_position and not any(words.station_said(text) for text in texts)
