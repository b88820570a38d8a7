"""Rows of words that say too little alone to head a table (``Bearing``, ``Shaft``): what the cells below them tell."""

import re
from collections.abc import Sequence
from typing import Any

from linter.reading.files.grids import Grid
from linter.reading.layouts.sides import side_of
from linter.reading.layouts.units_row import is_units_row
from linter.reading.words.columns import judge_columns
from linter.reading.words.headings import Heading, Words

_FIGURE = re.compile(r"\d")
_VALUE = re.compile(r"[Ø⌀øφΦϕ∅Ф±+\-]?\s*(?:\d{2,}|\d*[.,]\d+)(?: ?(?:JS|js|[A-Za-z])\d{1,2})?")
_LONGEST_LABEL = 80
_MOST_BELOW = 20  # rows below a heading whose cells help to tell that it is one


def told_by_cells(
    grid: Grid, rows: Sequence[int], labels: Sequence[str], headings: Sequence[Heading | None], words: Words
) -> list[Heading | None]:
    """What the headings of a row mean, those that say too little alone (``Bearing``, ``Shaft``) by the cells below.

    Columns are asked beside each other, as they are when the table is read: a size beside its bearing heads one, too.
    A table ends at the first blank row; a label with a figure is no heading of that kind.
    """
    if any(len(text) > _LONGEST_LABEL for text in labels) or 2 * sum(map(bool, map(_FIGURE.search, labels))) > len(
        labels
    ):
        return list(headings)  # a row of data or of sentences
    open_ones = [c for c, text in enumerate(labels) if headings[c] is None and text and not _FIGURE.search(text)]
    start = rows[-1] + 1
    of_list = any({"VALUE", "UNIT", "EXPR"} & {*words.groups(text)} for text in labels if text)
    if len(open_ones) < 2 or start >= grid.height or len(rows) > 1 or of_list:
        return list(headings)
    start += is_units_row(grid, start)
    end = start
    while end < min(grid.height, start + _MOST_BELOW) and grid.filled[end]:
        end += 1

    def cells(column: int) -> list[str]:
        return [text for row in range(start, end) if (text := grid.text(row, column))]

    judged = judge_columns(labels, list(headings), cells, words)
    return [judged[c] if c in open_ones else h for c, h in enumerate(headings)]


def beside_found(labels: Sequence[str], headings: Sequence[Heading | None], words: Words) -> list[Heading | None]:
    """Headings with those that say the drawing, where another column holds what was found (``図面 | 実測``)."""
    found = [
        words.of_design(label, "found") if label and not h else None for label, h in zip(labels, headings, strict=True)
    ]
    if not any(found):
        return list(headings)
    drawn = [
        None if h or not label else words.of_design(label, "drawn") for label, h in zip(labels, headings, strict=True)
    ]
    of = {(h.parameter, h.station) for h in found if h is not None}
    pairs = zip(headings, drawn, strict=True)
    return [d if d is not None and (d.parameter, d.station) in of else h for h, d in pairs]


def over_parts(grid: Grid, rows: Sequence[int], labels: Sequence[str], words: Words) -> list[str]:
    """Labels where a word that stands over shaft and housing, once and not merged, is that of each of them.

    ``Shoulder |`` over ``shaft | housing`` heads the shoulder of both.
    """
    spread = list(labels)
    for column in range(grid.width - 1):
        above, beside = grid.text(rows[0], column), grid.text(rows[0], column + 1)
        sides = [side_of(grid.text(rows[1], c)) for c in (column, column + 1)]
        if not above or beside or side_of(above) is not None or None in sides:
            continue
        both = [f"{above} {grid.text(rows[1], c)}" for c in (column, column + 1)]
        named = [heading.parameter for text in both if (heading := words.heading(text)) is not None]
        if [name.partition("_")[0] for name in named] in (["shaft", "housing"], ["housing", "shaft"]):
            spread[column + 1] = both[1]
    return spread


def states_figures(labels: Sequence[str]) -> bool:
    """Whether a label is a figure of more than one sign, as a value is and the number of a position is not."""
    return any(_VALUE.fullmatch(label) for label in labels)


def may_head(cells: Sequence[Any]) -> bool:
    """Whether cells are texts, most of them no numbers."""
    return all(type(cell) is str for cell in cells) and 2 * sum(c.strip().isdigit() for c in cells) < len(cells)
