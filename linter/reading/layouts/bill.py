"""Bills of material with columns for the seats: the rows of bearings are read, those of other parts are not."""

import re

import numpy as np
from attrs import evolve

from linter.reading.cells.fit_classes import SIZE_AND_CLASS
from linter.reading.cells.signs import is_figure
from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.layouts.wide_heading import WideTable
from linter.reading.words.columns import judge_columns
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Words
from linter.reading.words.parts import is_bearing

#: Rows in which the heading is looked for, and rows below it.
_HEAD, _MOST = 30, 2000
_WORD = re.compile(r"[^\W\d_]{2,}")
_OF_SEAT = re.compile("_seat_|_shoulder_|_fillet_")
_OF_ITEMS = ("drawing_number", "drawing_revision", "machine")


def find_bill(grid: Grid, words: Words) -> WideTable | None:
    """A heading row whose columns only their cells explain: designations in one of them, seats in others."""
    for row in range(min(grid.height - 1, _HEAD)):
        cells = grid.stated(row)
        if len(cells) < 3 or any(type(cell) is not str or any(map(str.isdigit, cell)) for cell in cells):
            continue
        if (table := _headed(grid, row, words)) is not None:
            return table
    return None


def _headed(grid: Grid, row: int, words: Words) -> WideTable | None:
    """The table below a row, where a column names bearings in some of its rows and another one is of their seats."""
    bearings = _rows_of_bearings(grid, row) or _rows_of_seats(grid, row)
    if not bearings:
        return None
    labels = [grid.text(row, column) for column in range(grid.width)]

    def below(column: int) -> list[str]:
        return [text for r in bearings if (text := cell_text(grid.columns[column][r]))]

    alone = [words.heading(label) if label else None for label in labels]
    for column, heading in enumerate(alone):
        if heading is not None and heading.parameter in _OF_ITEMS and len(set(below(column))) > 1:
            alone[column] = None  # the number of each item, not of the drawing
    headings = judge_columns(labels, alone, below, words)
    named = {(h.parameter, h.aspect) for h in headings if h is not None and h.entry.level == "station"}
    seats = {name for name, _ in named if "_seat_" in name}
    if not seats or (("bearing_designation", "value") not in named and len(seats) < 2):
        return None
    return WideTable(grid, row, row, labels, alone, len(named), only=np.array(bearings, dtype=np.intp))


def of_bearings(table: WideTable, first: int) -> WideTable:
    """A table whose rows without a bearing are of other parts (screws, a seal, the shaft) with its rows of bearings.

    A column names a bearing in some rows and something else in others; these fill no column of a seat, or another
    column says bearing in the rows of bearings alone. ``first`` is the first row below the heading.
    """
    grid = table.grid
    seats = [c for c, h in enumerate(table.headings) if h is not None and _OF_SEAT.search(h.parameter)]
    if table.only is not None or table.positions or not seats or grid.height - first > _MOST:
        return table
    filled = [row for row in range(first, grid.height) if grid.filled[row] > 2]
    for column in range(grid.width):
        rows = [row for row in filled if _names_bearing(grid.text(row, column))]
        if rows and len(rows) < len(filled):  # a bare number beside them is a bearing too
            rows = [row for row in filled if row in rows or _is_bare_number(grid.text(row, column))]
        if rows and len(rows) < len(filled) and _of_other_parts(grid, column, rows, filled, seats):
            return evolve(table, only=np.array(rows, dtype=np.intp))
    return table


def _of_other_parts(grid: Grid, column: int, rows: list[int], filled: list[int], seats: list[int]) -> bool:
    """Whether all rows but those of bearings are of other parts, which the column names."""
    others = [row for row in filled if row not in rows]
    if not all(grid.text(row, column) for row in others):
        return False
    of_seats = [row for row in others if any(not is_blank(grid.columns[c][row]) for c in seats)]
    return not of_seats or any(_says_bearing(grid, c, rows, of_seats) for c in range(grid.width))


def _says_bearing(grid: Grid, column: int, rows: list[int], others: list[int]) -> bool:
    """Whether a column says bearing in some rows and other things in others."""
    said = [any(map(is_bearing, _WORD.findall(grid.text(row, column)))) for row in rows]
    named = [_WORD.findall(grid.text(row, column)) for row in others]
    return all(said) and all(named) and not any(is_bearing(word) for words in named for word in words)


def _rows_of_bearings(grid: Grid, row: int) -> list[int]:
    """Rows below a heading that name a bearing in the column that names most of them."""
    best: list[int] = []
    for column in range(grid.width):
        cells = grid.columns[column][row + 1 : row + 1 + _MOST].tolist()
        found = [row + 1 + k for k, cell in enumerate(cells) if type(cell) is str and _names_bearing(cell)]
        if len(found) > len(best):
            best = found
    return best


def _rows_of_seats(grid: Grid, row: int) -> list[int]:
    """Rows below a heading with two sizes and their classes or more (``17k6``, ``40H7``)."""
    rows = range(row + 1, min(row + 1 + _MOST, grid.height))
    return [r for r in rows if sum(type(c) is str and SIZE_AND_CLASS.fullmatch(c) is not None for c in grid.row(r)) > 1]


def _is_bare_number(text: str) -> bool:
    """Whether a text is the number of a bearing and nothing else (``6004``), which may be another quantity."""
    return is_figure(text) and designation_strength(text) != "no"


def _names_bearing(text: str) -> bool:
    """Whether a text is beyond doubt a designation, or the words for a bearing with a number (no bare number)."""
    strength = "no" if is_figure(text) else designation_strength(text)
    return strength == "certain" or (strength == "possible" and any(map(str.isalpha, text)) and " " in text.strip())
