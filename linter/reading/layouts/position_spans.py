"""Lists whose values stand below positions, each with the same heads of its own: ``A: nominal, tolerance; B: ...``."""

import re
from collections.abc import Sequence
from itertools import pairwise

from attrs import evolve

from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.candidate import Outside
from linter.reading.layouts.long_rows import ByRow
from linter.reading.layouts.long_table import ASPECTS, LongTable, are_symbols, limit_said, names_below
from linter.reading.layouts.sections import named_by_part, sections
from linter.reading.layouts.sides import Side, part_column, parts_below
from linter.reading.layouts.strips import Block, Found
from linter.reading.layouts.title import names_value
from linter.reading.words.headings import Words
from linter.reading.words.measured_words import is_found

#: Role of the columns of the other positions while one of them is read.
_ELSEWHERE = "ELSEWHERE"
#: Columns that may stand beside those of the positions.
_BESIDE = ("UNIT", "NOTE", "CHAR-ID", "EXPR")
_PIECES = re.compile(r"[ _/:,.()\[\]–-]+")


def find_spans(grid: Grid, row: int, words: Words) -> LongTable | None:
    """The list whose row of positions is ``row``, with the heads of values repeated below each; or None."""
    if row + 2 >= grid.height or any(
        type(c) is not str for r in (row, row + 1) for c in grid.row(r) if not is_blank(c)
    ):
        return None
    spans = _positions(grid, row, words)
    if not spans:
        return None
    name, score, parts, of_parts = _names(grid, row + 2, spans[0][0], words)
    if not score:
        return None
    around = {c: role for c in range(grid.width) if c != name and (role := _around(grid, row, c, words))}
    found = [
        (
            words.station_said(grid.text(row, a)) or grid.text(row, a),
            {c: _role(words, grid.text(row + 1, c)) for c in range(a, b)},
        )
        for a, b in spans
    ]
    inside = {c: _ELSEWHERE for _, own in found for c in own}
    roles = {**around, **inside, **of_parts}
    return LongTable(grid, row + 1, name, roles, score, row + 2, parts, machines=row, spans=found)


def _names(grid: Grid, start: int, end: int, words: Words) -> tuple[int, int, dict[int, Side], dict[int, str]]:
    """The column of names left of positions, how many are known, the part of each row and the role of its column."""
    part = part_column(grid, start)
    parts = parts_below(grid, part, start) if part is not None and part < end else {}
    counts = {
        c: names_below(grid, c, start, words) + named_by_part(grid, c, parts or sections(grid, c, start, words), words)
        for c in range(end)
        if not parts or c != part
    }
    full = {c: count for c, count in counts.items() if count and not are_symbols(grid, c, start)}
    name = max(full or counts, key=lambda c: counts[c], default=-1)
    return name, counts.get(name, 0), parts, {part: "SIDE"} if part is not None and parts else {}


def find_joined(grid: Grid, row: int, words: Words) -> LongTable | None:
    """The list whose heads say position and part of a size together (``A min | A max | B min | B max``); or None."""
    if row + 1 >= grid.height or any(type(c) is not str for c in grid.row(row) if not is_blank(c)):
        return None
    spans: dict[str, dict[int, str]] = {}
    for column in range(1, grid.width):
        place, role = _place_and_role(grid.text(row, column), words)
        if role:
            spans.setdefault(place, {})[column] = role
    roles = [[*own.values()] for own in spans.values()]
    if len(spans) < 2 or any(own != roles[0] or len({*own}) < max(len(own), 2) for own in roles):
        return None
    first = min(column for own in spans.values() for column in own)
    name, score, parts, of_parts = _names(grid, row + 1, first, words)
    if not score:
        return None
    inside = {c: _ELSEWHERE for own in spans.values() for c in own}
    heads = {c: words.group(grid.text(row, c)) for c in range(grid.width) if c != name and c not in inside}
    around = {c: group for c, group in heads.items() if group in _BESIDE}
    all_roles = {**around, **inside, **of_parts}
    return LongTable(grid, row, name, all_roles, score, row + 1, parts, machines=row, spans=[*spans.items()])


def _place_and_role(text: str, words: Words) -> tuple[str, str]:
    """The position and the part of a size that a head says together, in any order; or empty."""
    pieces = [piece for piece in _PIECES.split(text.strip(" )]")) if piece]
    for head, rest in ((pieces[-1:], pieces[:-1]), (pieces[:1], pieces[1:])):
        role, place = _role(words, "".join(head)), " ".join(rest)
        if role and place and not words.groups(place) and (said := words.station_said(place)):
            return said, role
    return "", ""


def _positions(grid: Grid, row: int, words: Words) -> list[tuple[int, int]]:
    """First column and column behind the last of each position of a row; none where it is not a row of positions."""
    below = [_role(words, grid.text(row + 1, column)) for column in range(grid.width)]
    values = [column for column, role in enumerate(below) if role]
    if len(values) < 4 or {*below} <= {"", "RESULT"}:
        return []
    starts = [column for column in range(values[0], values[-1] + 1) if grid.text(row, column)]
    spans = [(a, b) for a, b in pairwise([*starts, values[-1] + 1]) if any(below[a:b])]
    roles = [below[a:b] for a, b in spans]
    texts = [grid.text(row, a) for a, _ in spans]
    distinct = len(spans) > 1 and len(set(texts)) == len(texts) and not any(map(words.groups, texts))
    alike = distinct and all(own == roles[0] for own in roles) and len(set(roles[0])) == len(roles[0]) > 1
    named = any(len(text) > 1 and names_value(words, text) and not words.station_said(text) for text in texts)
    return spans if alike and not named else []


def _role(words: Words, text: str) -> str:
    groups = words.groups(text) if text else ()
    if "RESULT" in groups or is_found(text):
        return "RESULT"  # measured on a part, beside what the drawing states
    return next((g for g in groups if g == "VALUE" or g in ASPECTS), "") or limit_said(text)


def _around(grid: Grid, row: int, column: int, words: Words) -> str:
    """Role of a column beside the positions, by either row of the heading."""
    groups = [words.group(grid.text(r, column)) for r in (row, row + 1)]
    return next((group for group in groups if group in _BESIDE), "")


def read_spans(table: LongTable, words: Words, found: Found, outside: Outside) -> Block:
    """The values of every position, one after the other, as one block."""
    blocks = []
    for station, own in table.spans:
        alone = evolve(table, roles={**table.roles, **own})
        blocks.append(ByRow(alone, words, found, evolve(outside, station=station)).read())
    return _joined(blocks)


def _joined(blocks: Sequence[Block]) -> Block:
    result = Block([], [], [], blocks[0].length_unit)
    for block in blocks:
        before = len(result.machines)
        result.machines += block.machines
        result.stations += block.stations
        result.strips += [evolve(strip, rows=strip.rows + before) for strip in block.strips]
    return result
