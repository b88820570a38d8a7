"""Positions that a table says again in the heading of each of its parts: ``Shaft | front | rear``."""

from collections.abc import Sequence
from typing import Any

from attrs import evolve

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank, object_column
from linter.reading.layouts.block_head_rows import plain_block_heads
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.layouts.part_corners import with_corners_apart
from linter.reading.layouts.parts_beside import parts_below_each_other
from linter.reading.layouts.placed import placed
from linter.reading.layouts.sections import section_label
from linter.reading.layouts.sides import side_of
from linter.reading.layouts.statement_heads import statements_apart
from linter.reading.layouts.two_row_heads import positions_beside_names
from linter.reading.words.cuts import station_cuts
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said

_MOST_COLUMNS = 12
_TWO_PARTS = ({"shaft", "bore"}, {"shaft", "housing"})
_SEATS = {"shaft_seat_diameter": "shaft", "housing_seat_diameter": "housing"}


def plain_heads(grid: Grid, words: Words) -> Grid:
    """A grid with its positions said once, and with the parts in the corners of its tables before their headings."""
    grid = plain_block_heads(positions_beside_names(grid, words), words)
    grid = parts_below_each_other(statements_apart(grid, words), words)
    grid = parts_over_equal_heads(with_corners_apart(grid, words), words)
    return positions_once(parts_over_positions(grid, words), words)


def parts_over_equal_heads(grid: Grid, words: Words) -> Grid:
    """A grid whose equal tables of shaft and housing say their part alone above them, a bore the housing.

    ``Alésage`` alone is no part, and may be of a bearing; above the heading, or the first names, that stand below a
    word for the shaft too, it is the other seat.
    """
    if grid.height > LONGEST_MIXED or grid.width < 3:
        return grid
    tables: dict[tuple[str, ...], dict[int, str]] = {}
    bores: dict[int, str] = {}
    for row in range(grid.height - 2):
        part, said = _part_of_table(label, words) if (label := section_label(grid, row, 0)) else ("", "")
        if not part:
            continue
        heading, names = _texts(grid, row + 1), (grid.text(row + 1, 0), grid.text(row + 2, 0))
        if heading[0] and sum(map(bool, heading)) > 2:
            tables.setdefault(tuple(heading), {})[row] = part
        if all(names):
            tables.setdefault(names, {})[row] = part
        bores |= {row: said} if said else {}
    both = {row for parts in tables.values() if {*parts.values()} in _TWO_PARTS for row in parts}
    if not both & bores.keys():
        return grid
    cells = list(grid.columns[0].tolist())
    for row in both & bores.keys():
        cells[row] = bores[row]
    return evolve(grid, columns=[object_column(cells), *grid.columns[1:]])


def _part_of_table(label: str, words: Words) -> tuple[str, str]:
    """``shaft``, ``housing`` or ``bore`` where a word above a table says that, and what it is called if none is known.

    A position may stand with the word.
    """
    if (whole := placed(label, words)) is not None:
        return whole.side.side, ""
    for rest, place, _ in ((label, "", False), *station_cuts(label)):
        pieces = rest.strip(" :.").split()
        if not all(concepts_said(piece) or (len(piece) <= 3 and piece.islower()) for piece in pieces):
            continue  # a word more may be a position
        said, side = concepts_said(rest), side_of(rest)
        parts = {side.side} if side is not None else said & {"shaft", "housing"}
        part = next(iter(parts)) if len(parts) == 1 else "bore" if said == {"bore"} else ""
        if part and (not place or words.station_said(place)):
            called = f"{part.replace('bore', 'housing')} {words.station_said(place)}".strip()
            return part, called if side is None else ""
    return "", ""


def parts_over_positions(grid: Grid, words: Words) -> Grid:
    """A grid whose words for a seat or its fit (``Fit on shaft``) alone over a row of positions say the part."""
    if grid.height > LONGEST_MIXED or not 3 <= grid.width <= _MOST_COLUMNS:
        return grid
    parts = {row: part for row in range(grid.height - 1) if (part := _part_over_positions(grid, row, words))}
    if not parts:
        return grid
    names = list(grid.columns[0].tolist())
    for row, part in parts.items():
        names[row] = part
    return evolve(grid, columns=[object_column(names), *grid.columns[1:]])


def _part_over_positions(grid: Grid, row: int, words: Words) -> str:
    """``shaft`` or ``housing`` where the seat's name stands alone over a row of positions without a name."""
    below = [text for text in _texts(grid, row + 1)[1:] if text]
    if grid.text(row + 1, 0) or len(below) < 2 or not (label := section_label(grid, row, 0)) or side_of(label):
        return ""
    heading = words.heading(label)
    places = {words.station_said(text) for text in below if not words.groups(text)}
    if heading is None or heading.station or len(places) < 2 or "" in places:
        return ""
    return _SEATS.get(heading.parameter, "")


def positions_once(grid: Grid, words: Words) -> Grid:
    """A grid whose positions stand in its first heading only, with the words of the parts left alone in their rows.

    A row of positions is one whose cells behind the first all say different positions; only equal rows below it are
    changed. Another grid is given back as it stands.
    """
    if grid.height > LONGEST_MIXED or not 3 <= grid.width <= _MOST_COLUMNS or grid.merged:
        return grid
    heads = [row for row in range(grid.height) if _says_positions(grid, row, words)]
    again = [row for row in heads[1:] if _texts(grid, row)[1:] == _texts(grid, heads[0])[1:]]
    if len(again) < 2 and not _is_title(heads):
        return grid
    again = [row for row in again if grid.text(row, 0)]
    columns = [grid.columns[0]]
    for column in grid.columns[1:]:
        cells: list[Any] = list(column.tolist())
        for row in again:
            cells[row] = None
        columns.append(object_column(cells))
    return _part_apart(evolve(grid, columns=columns), heads[0]) if again else grid


def _part_apart(grid: Grid, head: int) -> Grid:
    """The grid with the part before its first positions in a row of its own over them, at its true place."""
    if not head or grid.filled[head - 1] or grid.text(head, 1) or side_of(grid.text(head, 0)) is None:
        return grid
    rows: list[tuple[int, dict[int, Any] | None]] = [(row, None) for row in range(grid.height)]
    cells = dict(enumerate(grid.row(head)))
    rows[head : head + 1] = [(head, {0: cells[0]}), (head, {**cells, 0: None})]
    return of_rows(grid, rows)


def _texts(grid: Grid, row: int) -> list[str]:
    return [grid.text(row, column) for column in range(grid.width)]


def _says_positions(grid: Grid, row: int, words: Words) -> bool:
    """Whether the cells of a row behind its first say positions, two or more and all different."""
    texts: Sequence[str] = [text for text in _texts(grid, row)[1:] if text]
    if len(texts) < 2 or len({*texts}) < len(texts):
        return False
    if is_blank(grid.columns[1][row]) and not _holds_units(grid):
        return False
    return all(len(text) > 1 and words.station_said(text) for text in texts)


def _holds_units(grid: Grid) -> bool:
    """Whether the second column holds units, and at most one other text."""
    texts = [text for row in range(grid.height) if (text := grid.text(row, 1))]
    return len(texts) > 1 and sum(known_unit(text) is None for text in texts) < 2


def _is_title(heads: Sequence[int]) -> bool:
    """Whether the first row of positions is the first of the table and comes again once."""
    return len(heads) == 2 and heads[0] == 0
