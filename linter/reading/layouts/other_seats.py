"""Rows of seats that are no bearing's (of a seal, a coupling, a wheel): they are told and not read."""

from linter.model.stations import Unused
from linter.reading.cells.signs import is_figure
from linter.reading.files.grids import LONGEST_MIXED, Grid
from linter.reading.files.intake import visible
from linter.reading.layouts.sides import side_of
from linter.reading.layouts.strips import Found
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said, is_bearing_seat
from linter.reading.words.seats_of_others import is_other_seat

_REASON = "of a seat that is no bearing's"
#: Columns among which one may name the seats.
_NAMING = 8


def without_other_seats(grid: Grid, words: Words, found: Found) -> Grid:
    """The grid without the names and values of such rows; the position that a row may name for those below it stays."""
    if grid.height > LONGEST_MIXED:
        return grid
    blank: dict[tuple[int, int], None] = {}
    for row in range(1, grid.height):
        texts = grid.texts(row)
        at = next((c for c, text in texts.items() if c < _NAMING and is_other_seat(text)), None)
        if at is None or not any(_is_value(text) for column, text in texts.items() if column > at):
            continue
        before = [column for column in texts if column < at]
        kept = {c for c in before if row + 1 < grid.height and grid.filled[row + 1] and not grid.text(row + 1, c)}
        if kept and not any(c in kept and words.station_said(texts[c]) for c in before):
            continue  # a part may be named once for several rows
        for column, text in texts.items():
            if column not in kept:
                blank[row, column] = None
                found.leave(Unused(texts[at], visible(text), grid.place(row, column), _REASON))
    return _without_seats_alike(grid.with_cells(blank) if blank else grid)


def _without_seats_alike(grid: Grid) -> Grid:
    """The grid without a column that says of every row beside a shaft and a housing that it is a bearing's seat."""
    columns = [[grid.text(row, column) for row in range(grid.height)] for column in range(min(grid.width, _NAMING))]
    parts = [{row for row, text in enumerate(texts) if side_of(text) is not None} for texts in columns]
    for column, texts in enumerate(columns):
        at = {row for row, text in enumerate(texts) if _is_bearing_seat(text)}
        said = len({texts[row] for row in at})
        if said == 1 and len(at) > 1 and any(at == rows for c, rows in enumerate(parts) if c != column):
            return grid.with_cells(dict.fromkeys((row, column) for row in at))
    return grid


def _is_bearing_seat(text: str) -> bool:
    return is_bearing_seat(text) or concepts_said(text) == {"bearing", "fit"}


def _is_value(text: str) -> bool:
    return is_figure(text) or text[0].isdigit() or text[0] in "ØøΦφ⌀+-−"
