"""A row of symbols below the words of a heading (``Seat diameter`` over ``d``), which says nothing that they do not."""

import re
from collections.abc import Mapping, Sequence

from attrs import evolve

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.words.headings import Words

#: Rows among which such a row is looked for, and symbols of it that are needed.
_ROWS, _FEWEST = 60, 4
_SYMBOL = re.compile(r"[A-Za-zα-ωΑ-ΩØ]{1,2}[_ ]?[a-z0-9]{0,3}(?:[ ,._]?(?:max|min)\.?)?")
_DASHES = "-–—/ "
_LETTERS = frozenset(("Ra", "Rz", "t", "t1", "t2", "t3", "t4", "n", "m", "T", "Lh", "b", "h"))


def without_symbols(grid: Grid, words: Words) -> Grid:
    """The grid without its rows of symbols below words; the grid as it is where it has none."""
    if grid.height > LONGEST_MIXED:
        return grid
    found = [row for row in range(1, min(grid.height - 1, _ROWS)) if _is_row_of_symbols(grid, row, words)]
    for row in reversed(found):
        rows = [(r, None) for r in range(grid.height) if r != row]
        grid = of_rows(evolve(grid, merged=_without(grid.merged, row)), rows)
    return grid


def _is_row_of_symbols(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row holds the symbols of what the words over them name, and nothing else."""
    cells = {column: cell for column, cell in enumerate(grid.row(row)) if not is_blank(cell)}
    if len(cells) < _FEWEST or any(type(cell) is not str or len(cell) > 8 for cell in cells.values()):
        return False
    symbols = {column: text for column in cells if (text := grid.text(row, column).strip(_DASHES))}
    if len(symbols) < _FEWEST or not all(map(_SYMBOL.fullmatch, symbols.values())):
        return False
    if any(len(text) > 1 and known_unit(text) is not None for text in symbols.values()):
        return False
    known = [text for text in symbols.values() if len(text) > 1 and _is_known(text, words)]
    if len(known) < 2 or 4 * len({*known}) < len(symbols):
        return False
    over = {column: grid.text(row - 1, column) for column in symbols}
    named = all(any(map(str.isalpha, text)) and _SYMBOL.fullmatch(text) is None for text in over.values())
    return named and _are_apart(grid, row, over) and not _are_positions([*over.values()], words)


def _is_known(text: str, words: Words) -> bool:
    return text in _LETTERS or (words.heading(text) is not None and not words.station_said(text))


def _are_apart(grid: Grid, row: int, over: Mapping[int, str]) -> bool:
    """Whether words over symbols differ, each with that over it: they need no symbols to be told from each other."""
    outer, said = "", []
    for column in range(grid.width):
        outer = (grid.text(row - 2, column) if row > 1 else "") or outer
        said += [(outer, over[column])] if column in over else []
    return len({*said}) == len(said)


def _are_positions(over: Sequence[str], words: Words) -> bool:
    """Whether words over symbols are positions, for which the symbols are the headings."""
    return 2 * sum(bool(words.station_said(text)) for text in over) >= len(over)


def _without(merged: Sequence[tuple[int, int, int, int]], row: int) -> tuple[tuple[int, int, int, int], ...]:
    """Merged cells without a row."""
    kept = (((top + (top == row)), left, bottom - (bottom == row), right) for top, left, bottom, right in merged)
    return tuple(area for area in kept if area[0] <= area[2])
