"""Rows that are not read and hold values: a station must not be lost without a finding.

A comment row, a footer, a line in one quoted cell or a column without a heading may be a remark. Where it holds three
or more values that could be read under the headings of its table it may as well be a station that somebody took out,
and that is told.
"""

import re
from collections.abc import Sequence
from typing import Any

from linter.model.places import Place
from linter.model.stations import Problem
from linter.model.vocabulary import Parameter
from linter.reading.cells.choices import read_choice
from linter.reading.cells.signs import ReadError
from linter.reading.files.grids import Bad, Grid, cell_text, is_blank
from linter.reading.files.intake import visible
from linter.reading.words.headings import Heading

#: So many values make a row that is not read a finding.
ENOUGH = 3
_LIKE_NUMBER = re.compile(r"\s*[Ø⌀øφΦϕ∅Ф(]?\s*[+\-−±~]?\s*[.,]?\d")
_DELIMITERS = ";\t|,"


def is_value(cell: Any, entry: Parameter) -> bool:
    """Whether a cell looks like a value of a parameter: a number where numbers belong, a word of its choices."""
    if is_blank(cell) or isinstance(cell, Bad | bool):
        return False
    if entry.kind == "choice":
        return not isinstance(read_choice(entry.name, cell_text(cell)), ReadError)
    if entry.kind == "text":
        return False
    return type(cell) is not str or _LIKE_NUMBER.match(cell) is not None


def values_of(cells: Sequence[Any], headings: Sequence[Heading | None]) -> int:
    """Number of cells that could be read under the headings above them."""
    return sum(
        heading is not None and is_value(cell, heading.entry) for cell, heading in zip(cells, headings, strict=False)
    )


def packed_values(cell: Any, headings: Sequence[Heading | None], column: int) -> int:
    """Most values in one line of a cell that holds whole lines of a table (a quoted block, a comment in one cell)."""
    if type(cell) is not str or len(cell) < 2 * ENOUGH:
        return 0
    most = 0
    for line in cell.split("\n"):
        for delimiter in _DELIMITERS:
            if line.count(delimiter) >= ENOUGH - 1:
                pieces = [piece.strip(' "') for piece in line.split(delimiter)]
                most = max(most, *(values_of(pieces, headings[start:]) for start in {0, column}))
    return most


def values_in_row(grid: Grid, row: int, headings: Sequence[Heading | None]) -> int:
    """Values of a row of cells under the headings, shifted by one cell too, or packed into one of its cells."""
    cells = grid.row(row)
    return max(
        values_of(cells, headings),
        values_of(cells[1:], headings),
        max((packed_values(cell, headings, column) for column, cell in enumerate(cells)), default=0),
    )


def not_read(place: Place, what: str, read: str, count: int, more: int = 0) -> Problem:
    """The finding about something that is not read and holds values.

    Parameters
    ----------
    place : Place
        Where it begins.
    what : str
        What it is: ``the comment row``.
    read : str
        What stands there.
    count : int
        Values in it.
    more : int
        Further ones like it.

    Returns
    -------
    Problem
        An unreadable one, about no parameter.
    """
    expected = "a station as a row of its own, or nothing that looks like one"
    like = f" (and {more} more like it)" if more else ""
    message = (
        f"{place}: {what} holds {count} values that could be read under the headings of the table{like}: "
        f"{visible(read, 120)}; expected {expected}; it is not read."
    )
    return Problem("unreadable", None, "station", place, visible(read), expected, message, "values-not-read")


def cut_off(place: Place, read: str, cells: int, wanted: int) -> Problem:
    """The finding about a last row that is shorter than the heading and has no line end."""
    expected = f"{wanted} cells as in the heading, and a line end"
    message = (
        f"{place}: the last row has {cells} cell{'s' * (cells > 1)} and no line end: {visible(read, 120)}; "
        f"expected {expected}; the file may have been cut off."
    )
    return Problem("unreadable", None, None, place, visible(read), expected, message, "cut-off")


def row_text(grid: Grid, row: int) -> str:
    """The filled cells of a row, for showing."""
    return " | ".join(text for column in range(grid.width) if (text := grid.text(row, column)))
