"""Headings of two rows, the lower of what is required and what was measured: ``Shaft seat`` over ``Soll | Ist``."""

from typing import Any

from attrs import evolve

from linter.reading.files.grids import LONGEST_MIXED, Grid, object_column
from linter.reading.words.headings import Words
from linter.reading.words.measured_words import is_found, is_statement

#: Rows among which the heading is looked for.
_MOST_ROWS = 50


def statements_apart(grid: Grid, words: Words) -> Grid:
    """A grid whose heading is one row: the size over what is required, and over what was measured that word alone.

    Another grid is given back as it stands.
    """
    if grid.height > LONGEST_MIXED:
        return grid
    for row in range(min(grid.height - 2, _MOST_ROWS)):
        if _says_statements(grid, row + 1, words):
            return _joined(grid, row, words)
    return grid


def _says_statements(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row holds words for what is required or measured and no more, both of them below wider words."""
    texts = {c: words.names.split_unit(text)[0] for c in range(grid.width) if (text := grid.text(row, c))}
    found = [c for c, text in texts.items() if is_found(text)]
    designed = [c for c, text in texts.items() if is_statement(text) and c not in found]
    others = [c for c in texts if c not in found and c not in designed and "RESULT" not in words.groups(texts[c])]
    above = [*grid.texts(row - 1)]
    return bool(found and designed and above) and not others and above[0] <= min(texts) and len(above) > 1


def _joined(grid: Grid, row: int, words: Words) -> Grid:
    """The grid with its heading in the lower of two rows."""
    columns: list[list[Any]] = [list(column.tolist()) for column in grid.columns]
    label = ""
    for c in range(grid.width):
        label = grid.text(row, c) or label
        core, unit = words.names.split_unit(grid.text(row + 1, c))
        if not core:
            columns[c][row + 1] = grid.text(row, c) or None
        elif not is_found(core) and is_statement(core):
            columns[c][row + 1] = f"{label} [{unit}]" if unit and not words.station_said(label) else label
        elif words.station_said(label):
            columns[c][row + 1] = f"{label} {core}"
        columns[c][row] = None
    merged = [span for span in grid.merged if span[2] < row or span[0] > row + 1]
    return evolve(grid, columns=[object_column(cells) for cells in columns], merged=type(grid.merged)(merged))
