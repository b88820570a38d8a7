"""The list of revisions of a drawing (``Rev. | Date | Change``), above or below a table: nothing of a seat."""

import re
from typing import Any

from attrs import evolve

from linter.model.stations import Unused
from linter.reading.files.grids import LONGEST_MIXED, Grid, object_column
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Found
from linter.reading.layouts.title import is_label
from linter.reading.words.headings import Words

_FEWEST, _MOST = 2, 6
#: A revision, and a day or a month of one: in figures, or with the name of the month.
_CODE = re.compile(r"[A-Z]{1,2}|[a-z]|[A-Z]?\d{1,3}|\d{1,2}\.\d{1,2}|[-–—]|00[0-9]", re.ASCII)
_DATE = re.compile(
    r"\d{1,4}\s?[./年-]\s?\d{1,2}(?:\s?[./月-]\s?\d{0,4}日?)?(?:[ T].*)?|\d{1,2}\.?[ -][^\W\d]{3,9}\.?,?[ -]\d{2,4}"
)


def without_revision_list(grid: Grid, words: Words, found: Found) -> Grid:
    """A grid without its list of revisions, whose rows are listed as unused; another grid as it stands."""
    if grid.height > LONGEST_MIXED:
        return grid
    rows: list[int] = []
    for row in range(grid.height - 1):
        column = _revisions_below(grid, row, words) if row not in rows else None
        below = row + 1
        while column is not None and below < grid.height and _is_revision(grid, below, column):
            below += 1
        if below > row + 1 and any(_has_date(grid, r) for r in range(row + 1, below)):
            rows += range(row, below)
    if not rows:
        return grid
    columns: list[list[Any]] = [list(column.tolist()) for column in grid.columns]
    for row in rows:
        filled = [*grid.texts(row)]
        text = visible(" | ".join(grid.text(row, c) for c in filled))
        found.leave(Unused("a list of revisions", text, grid.place(row, filled[0]), "not a row of values"))
        for column in filled:
            columns[column][row] = None
    return evolve(grid, columns=[object_column(cells) for cells in columns])


def _revisions_below(grid: Grid, row: int, words: Words) -> int | None:
    """The column of revisions below a row of labels of such a list; None for another row."""
    texts = grid.texts(row)
    if not _FEWEST <= len(texts) <= _MOST or not any(map(is_label, texts.values())):
        return None
    said = [c for c, text in texts.items() if words.says_revision(text) and _is_revision(grid, row + 1, c)]
    labels = [c for c, text in texts.items() if is_label(text) and c not in said[:1]]
    others = [text for c, text in texts.items() if c not in (*labels, *said[:1])]
    known = any(words.heading(text) is not None for text in others)
    return said[0] if said and labels and not known and len(others) < len(labels) else None


def _is_revision(grid: Grid, row: int, column: int) -> bool:
    """Whether a row is a revision with more texts and nothing that is a value."""
    others = [text for c in range(grid.width) if c != column and (text := grid.text(row, c))]
    return bool(others) and len(others) < _MOST and _CODE.fullmatch(grid.text(row, column)) is not None


def _has_date(grid: Grid, row: int) -> bool:
    return any(_DATE.fullmatch(text) for c in range(grid.width) if (text := grid.text(row, c)))
