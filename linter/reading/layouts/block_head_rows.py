"""Heads of blocks that say more than their position: ``Bearing A | 6204``, ``2 | Drive end``, ``Bearing A | Value``.

They become heads that say the position alone, above a row for what else they say, at its true place.
"""

import re
from collections.abc import Mapping, Sequence
from itertools import pairwise
from typing import Any

from attrs import frozen

from linter.reading.cells.choices import read_choice
from linter.reading.cells.signs import fold
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.layouts.long_table import are_symbols
from linter.reading.layouts.sides import Side, side_of, within
from linter.reading.words.designations import read_designation
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said

_MOST_COLUMNS, _LONGEST, _LONGEST_WORD = 24, 60, 20
_NUMBER = re.compile(r"\(?(?:\d{1,2}(?:\.\d{1,2})*|[IVX]{1,4}|[A-Z])[.)]?")
_APART = re.compile(r"\s+[-–—/]\s+|\s*[,:;、，：]\s*")
#: Names that must stand below a head, and rows in which they do.
_ENOUGH, _NEXT = 3, 8
_PARTS = "Component"
_OF_VALUES = {"VALUE", "UNIT", "NOTE", "UPPER", "LOWER", "CLASS", "MAX", "MIN", "DATUM"}


@frozen
class _Head:
    """A head of a block: its position, what it becomes, and the cells of the row below it, by their columns."""

    position: str
    text: str
    below: Mapping[int, Any]


def plain_block_heads(grid: Grid, words: Words) -> Grid:
    """A grid whose heads of blocks say their positions alone; as it is where they do, or where there are no blocks.

    Blocks may stand side by side. Two heads or more are such heads, each of another position and above names.
    """
    if grid.height > LONGEST_MIXED or not 2 <= grid.width <= _MOST_COLUMNS:
        return grid
    found: dict[int, dict[int, _Head]] = {}
    blank = _spans(grid)
    ends: dict[tuple[int, int], int] = {}
    for row in range(grid.height - _ENOUGH):
        for left, right in _blocks(grid, row, blank, words):
            head = _head(grid, row, left, right, words)
            if head is not None and _stands_above_names(grid, row, _of_names(head, left, words), right, words):
                found.setdefault(row, {})[left] = head
                ends[row, left] = right
    positions = [head.position for heads in found.values() for head in heads.values()]
    if len(positions) < 2 or len(set(positions)) < len(positions):
        return grid
    rows: list[tuple[int, dict[int, Any] | None]] = []
    for row in range(grid.height):
        heads = found.get(row)
        if heads is None:
            rows.append((row, None))
            continue
        inside = {c for left in heads for c in range(left, ends[row, left])}
        others = {c: grid.columns[c][row] for c in range(grid.width) if c not in inside}
        rows.append((row, {**others, **{left: head.text for left, head in heads.items()}}))
        if below := {c: cell for head in heads.values() for c, cell in head.below.items()}:
            rows.append((row, below))
    return of_rows(grid, rows)


def _spans(grid: Grid) -> list[tuple[int, int]]:
    """Columns between blank ones, each with the column behind its last."""
    blank = [c for c in range(grid.width) if all(is_blank(cell) for cell in grid.columns[c].tolist())]
    edges = pairwise([-1, *blank, grid.width])
    return [(left + 1, right) for left, right in edges if right > left + 2]


def _blocks(grid: Grid, row: int, spans: Sequence[tuple[int, int]], words: Words) -> list[tuple[int, int]]:
    """The spans, taken apart where a row says another position above the same names again."""
    blocks = []
    for left, right in spans if grid.filled[row] else ():
        below = [grid.text(r, left) for r in range(row + 1, row + 1 + _ENOUGH)]
        starts = [left]
        for column in range(left + 2, right - 1) if all(below) else ():
            again = [grid.text(r, column) for r in range(row + 1, row + 1 + _ENOUGH)] == below
            if again and words.station_said(grid.text(row, column)):
                starts.append(column)
        blocks += list(pairwise([*starts, right]))
    return blocks


def _head(grid: Grid, row: int, left: int, right: int, words: Words) -> _Head | None:
    """The head of a block that a row is, where it says more than its position; else None."""
    cells = [(c, text) for c in range(left, right) if (text := grid.text(row, c))]
    if not cells or cells[0][0] != left or len(cells[0][1]) > _LONGEST:
        return None
    text, rest = cells[0][1], cells[1:]
    if rest and _NUMBER.fullmatch(text) and words.station_said(rest[0][1]) and not words.groups(rest[0][1]):
        text, rest = rest[0][1], rest[1:]
        if not rest:
            return _Head(words.station_said(text), text, {})
    elif len(rest) == 1 and _says_place(text, words) and words.station_said(rest[0][1]):
        # units below the position hide it, and a heading of names and values begins a list without it
        place, both = words.station_said(rest[0][1]), f"{text.strip(' :')} {rest[0][1]}"
        if _heads_values(grid, row + 1, left, right, words):
            return _Head(place, both if fold(words.station_said(both)) == fold(place) else rest[0][1], {})
        return _Head(place, rest[0][1], {}) if _holds_units(grid, row, rest[0][0]) else None
    if not rest:
        return _with_role(grid, row, (left, right), text, words)
    said = {c: grid.columns[c][row] for c, _ in rest}
    return _with_others(grid, row, text, left, said, words)


def _may_head(text: str) -> bool:
    """Whether a text without a known meaning may head a column beside those of values: words alone."""
    return len(text) <= _LONGEST_WORD and text[0].isalpha() and not any(map(str.isdigit, text))


def _of_names(head: _Head, left: int, words: Words) -> int:
    """The column of the names below a head of a block: that of the head, or one beside it whose word says so."""
    return next((c for c, text in head.below.items() if c > left and head.below[left] == _PARTS), left)


def _with_others(grid: Grid, row: int, text: str, left: int, said: Mapping[int, Any], words: Words) -> _Head | None:
    """A head of a position with words for columns beside it, its bearing or its role; else None."""
    others = [grid.text(row, column) for column in said]
    position = words.station_said(text)
    of_part = concepts_said(text) & {"shaft", "housing", "shoulder", "fillet"}
    if not position or (of_part and not _names_position(text, words)):
        return None
    groups = [set(words.groups(other)) for other in others]
    names = [column for column, group in zip(said, groups, strict=True) if group == {"NAME"}]
    known = [bool(group & {*_OF_VALUES, "NAME"}) or _may_head(o) for group, o in zip(groups, others, strict=True)]
    if any("VALUE" in group for group in groups) and all(known) and len(others) < 2 * sum(map(bool, groups)):
        of_parts = names[:1] == [left + 1] and not are_symbols(grid, left + 1, row + 1)
        return _Head(position, text, {left: _PARTS if of_parts else "Parameter", **said})
    if len(others) == 1 and read_designation(others[0]).derived:
        return _Head(position, text, {left: "bearing_designation", **said})
    if len(others) == 1 and isinstance(read_choice("axial_role", others[0]), str):
        return _Head(position, text, {left: "axial_role", **said})
    return None


def _names_position(text: str, words: Words) -> bool:
    """Whether a text is a word for a place with a position, be it one for a housing too (``Supporto A``)."""
    heading = words.heading(text)
    return heading is not None and heading.parameter == "station" and bool(heading.station)


def _says_place(text: str, words: Words) -> bool:
    heading = words.heading(text)
    return heading is not None and heading.parameter == "station" and not heading.station


def _with_role(grid: Grid, row: int, span: tuple[int, int], text: str, words: Words) -> _Head | None:
    """A head that says the role behind its position (``Drive end - fixed``), which goes to the column of values."""
    for cut in _APART.finditer(text):
        place, role = text[: cut.start()], text[cut.end() :]
        position = words.station_said(place)
        if position and isinstance(read_choice("axial_role", role), str):
            below = range(row + 1, min(row + 1 + _NEXT, grid.height))
            columns = {c: [text for r in below if (text := grid.text(r, c))] for c in range(span[0] + 1, span[1])}
            values = {c: sum(known_unit(text) is None for text in texts) for c, texts in columns.items()}
            return _Head(position, place, {span[0]: "axial_role", max(values, key=lambda c: values[c]): role})
    return None


def _heads_values(grid: Grid, row: int, left: int, right: int, words: Words) -> bool:
    """Whether a row heads names and beside them values with their tolerance or unit."""
    groups = [words.groups(text) for c in range(left, right) if (text := grid.text(row, c))]
    said = {group for others in groups[1:] for group in others}
    names = bool(groups) and (not groups[0] or bool({"NAME", "NOTE"} & {*groups[0]}))
    return len(groups) > 2 and names and "VALUE" in said and bool(said & (_OF_VALUES - {"VALUE"}))


def _holds_units(grid: Grid, row: int, column: int) -> bool:
    """Whether a column holds units below a row."""
    texts: Sequence[str] = [
        text for r in range(row + 1, min(row + 1 + _NEXT, grid.height)) if (text := grid.text(r, column))
    ]
    return len(texts) > 1 and all(known_unit(text.strip("[]() ")) is not None for text in texts)


def _stands_above_names(grid: Grid, row: int, left: int, right: int, words: Words) -> bool:
    """Whether names with something beside them stand in the rows below a head, one known by itself or of its part."""
    rows = range(row + 1, min(row + 1 + _NEXT, grid.height))
    labels: list[str] = []
    known = 0
    side: Side | None = None
    for r in rows:
        label = grid.text(r, left)
        if label and any(grid.text(r, c) for c in range(left + 1, right)):
            heading = within(words, side, label)
            known += heading is not None and heading.parameter not in ("machine", "station")
            labels.append(label)
        else:
            side = side_of(label)
    return known > 0 and len(labels) >= _ENOUGH and not any(words.station_said(text) for text in labels[:2])
