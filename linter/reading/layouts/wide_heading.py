"""Where the heading row of a table stands, alone or joined with the rows below it, and what its columns are."""

import re
from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from attrs import define, evolve, field
from numpy.typing import NDArray

from linter.reading.cells.fit_classes import SIZE_AND_CLASS
from linter.reading.cells.several import without_role
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.below_parts import JOINABLE, below_part, of_others, size_below
from linter.reading.layouts.heading_cells import beside_found, over_parts, told_by_cells
from linter.reading.layouts.placed import part_said
from linter.reading.layouts.positions_under import positions_under
from linter.reading.layouts.sides import Side, side_above, side_of, within
from linter.reading.layouts.title import names_value
from linter.reading.layouts.title_rows import is_title_row
from linter.reading.layouts.units_row import is_units_row, unit_text
from linter.reading.words.column_words import KEYS
from linter.reading.words.columns import key_of
from linter.reading.words.headings import Heading, Words
from linter.reading.words.limits import says_greater
from linter.reading.words.other_cells import is_role
from linter.reading.words.part_columns import limits_of_parts, side_behind

_NUMBER = re.compile(r"[+\-−]?\d+(?:[.,]\d+)?")
_LIKE_NUMBER = re.compile(r"[+\-−±Ø⌀øφΦϕ∅Ф]?\s*[\d.,]+\s*(?:[A-Za-z]{1,2}\d+)?$")
_NO_UNIT = ("-", "–", "—", "/", "1")  # below a name: it has no unit


def aspect_behind(size: Heading, label: str, words: Words) -> str:
    """The part of a size that a heading behind the name of the size states, or empty."""
    greater = "max" if size.aspect == "min" and says_greater(label) else ""
    return JOINABLE.get(words.group(label), greater or side_behind(words.names.split_unit(label)[0]))


@define(eq=False)
class WideTable:
    """A heading row found in a grid.

    Attributes
    ----------
    grid : Grid
        The whole region; rows above ``top`` are its title block.
    top, bottom : int
        First and last row of the heading.
    labels : list of str
        Heading of each column, rows joined.
    headings : list of Heading or None
        What each names.
    score : int
        Number of different names.
    positions : list of (str, int, int)
        Station, first column and column behind the last of each position that stands over headings of its own.
    only : int array or None
        The rows that are read, where the others are of other things (a bill of material).
    """

    grid: Grid
    top: int
    bottom: int
    labels: list[str]
    headings: list[Heading | None]
    score: int = field(default=0)
    positions: list[tuple[str, int, int]] = field(factory=list)
    only: NDArray[np.intp] | None = None


def heading_labels(grid: Grid, rows: Sequence[int]) -> list[str]:
    """Texts of heading rows joined column by column, merged cells counted in each of their columns."""
    parts: list[list[str]] = [[] for _ in range(grid.width)]
    for row in rows:
        texts = [grid.text(row, column) for column in range(grid.width)]
        for top, left, bottom, right in grid.merged:
            if top <= row <= bottom:
                origin = grid.text(max(top, 0), max(left, 0))
                for column in range(max(left, 0), min(right, grid.width - 1) + 1):
                    texts[column] = origin
        for column, text in enumerate(texts):
            if text and text not in parts[column] and not (parts[column] and text.strip("[]() ") in _NO_UNIT):
                parts[column].append(text)
    return [" ".join(part) for part in parts]


def find_wide(grid: Grid, words: Words) -> WideTable | None:
    """The best heading row of a grid: the one whose cells name most parameters, alone or joined with the next."""
    best: WideTable | None = None
    for row in range(min(grid.height, 50)):
        best = _better_heading(grid, words, row, best)
        if best is not None and best.score >= max(4, 0.5 * grid.width) and row > best.bottom:
            break  # what stands below a full heading is data
    return best


def _better_heading(grid: Grid, words: Words, row: int, best: WideTable | None) -> WideTable | None:
    """The best heading so far, or a better one that begins in a row: of this row alone, or joined with those below."""
    single = _candidate(grid, words, (row,))
    better = single is not None and (best is None or single.score > best.score or _explains_more(single, best))
    if better and not _loses_parts(grid, single, best, words):
        best = single
    beaten = max(table.score if table else 0 for table in (best, single))
    if grid.merged and row + 2 < grid.height and _spans_rows(grid, row):
        three = _candidate(grid, words, (row, row + 1, row + 2))
        if three is not None and _is_second_heading(grid, row + 2, words) and three.score > beaten:
            return three
    if (placed := _with_positions(grid, words, row)) is not None and placed.score > beaten:
        return placed
    below = row + 1 < grid.height and (single is None or single.score < grid.width)
    if below and not (single is not None and (is_units_row(grid, row + 1) or _holds_values(grid, single, row + 1))):
        pair = _candidate(grid, words, (row, row + 1))
        if pair is not None and pair.score + _is_second_heading(grid, row + 1, words) > beaten:
            return _with_parts_below(grid, words, pair)
    return best


def _with_positions(grid: Grid, words: Words, row: int) -> WideTable | None:
    """A heading whose rows are positions over the same headings each, or headings over the same positions each."""
    if (below := _below_positions(grid, words, row)) is not None:
        return below
    over = positions_under(grid, words, row)
    return WideTable(grid, row, row + 1, *over) if over is not None else None


def _with_parts_below(grid: Grid, words: Words, pair: WideTable) -> WideTable:
    """A heading of two rows, or of three where the row below them says which part of a size a column states."""
    row = pair.bottom + 1
    if row + 1 >= grid.height or not _is_second_heading(grid, row, words):
        return pair
    three = _candidate(grid, words, (pair.top, pair.top + 1, row))
    return three if three is not None and 4 * three.score >= 3 * pair.score else pair


def _loses_parts(grid: Grid, single: WideTable | None, joined: WideTable | None, words: Words) -> bool:
    """Whether a row names fewer columns by its words than it does joined with the row above, which says two parts.

    What cells tell of a heading (``Ra``, ``Passung``) is not counted: they do not say whose it is.
    """
    if single is None or joined is None or (joined.top, joined.bottom) != (single.top - 1, single.bottom):
        return False
    said = {part.side.side for text in grid.texts(joined.top).values() if (part := part_said(text, words)) is not None}
    named = [sum(h is not None for h in table.headings) for table in (single, joined)]
    return {"shaft", "housing"} <= said and named[0] < named[1]


def _explains_more(single: WideTable, joined: WideTable) -> bool:
    """Whether a row names more columns by itself than it does joined with the row above it."""
    same = single.score == joined.score and (joined.top, joined.bottom) == (single.top - 1, single.bottom)
    return same and sum(h is not None for h in single.headings) > sum(h is not None for h in joined.headings)


def _below_positions(grid: Grid, words: Words, row: int) -> WideTable | None:
    """A heading below a row of positions: the same headings come again below each of two texts or more.

    Other texts of the row of positions head their own column where nothing stands below them.
    """
    spans = _spans_below(grid, words, row)
    best: WideTable | None = None
    for deep in (2, 1) if len(spans) > 1 else ():
        below = range(row + 1, row + 1 + deep)
        table = _candidate(grid, words, tuple(below)) if below.stop < grid.height else None
        if table is None:
            continue
        said = [{(h.parameter, h.aspect) for h in table.headings[a:b] if h is not None} for a, b in spans]
        heads = [_heads_below(grid, words, row, table, span) for span in spans]
        alike = [
            span
            for span, own, texts in zip(spans, said, heads, strict=True)
            if any(len(own & other) >= 2 for other in said if other is not own)
            or any(len(texts & other) >= 3 for other in heads if other is not texts)
        ]
        if len(alike) > 1:
            texts = [without_role(grid.text(row, column)) for column in range(grid.width)]
            positions = [(words.station_said(texts[start]) or texts[start], start, end) for start, end in alike]
            inside = {column for start, end in alike for column in range(start, end)}
            labels, headings = _beside_positions(texts, table, inside, words)
            score = table.score * len(alike)
            if best is None or score > best.score:
                best = WideTable(grid, row, below.stop - 1, labels, headings, score, positions)
    return best


def _heads_below(grid: Grid, words: Words, row: int, table: WideTable, span: tuple[int, int]) -> set[str]:
    """The headings below a text of a row; none below a word for a part, which states the same as other parts do."""
    part = part_said(without_role(grid.text(row, span[0])), words)
    if part is not None and not part.station:
        return set()
    return {text for text in table.labels[slice(*span)] if text}


def _spans_below(grid: Grid, words: Words, row: int) -> list[tuple[int, int]]:
    """First column and column behind the last of each text of a row that names no parameter."""
    if any(type(cell) is not str for cell in grid.row(row) if not is_blank(cell)):
        return []
    texts = [without_role(grid.text(row, column)) for column in range(grid.width)]
    edges = [*(column for column, text in enumerate(texts) if text), grid.width]
    spans = pairwise(edges)
    return [(a, b) for a, b in spans if is_role(texts[a]) or not (len(texts[a]) > 1 and names_value(words, texts[a]))]


def _beside_positions(
    texts: Sequence[str], table: WideTable, inside: set[int], words: Words
) -> tuple[list[str], list[Heading | None]]:
    """Labels and headings with those of columns that only the row of positions names; a unit may stand below it."""
    labels, headings = [*table.labels], [*table.headings]
    for column, text in enumerate(texts):
        if text and column not in inside and headings[column] is None:
            unit, below = unit_text(labels[column]), labels[column]
            of_unit = f"{text} [{unit}]" if known_unit(unit) is not None else f"{text} {below}" if below else text
            headings[column], labels[column] = words.heading(of_unit) or words.heading(text), text
            if below and of_unit == f"{text} {below}":  # Rotor above mass: its mass, and no machine
                headings[column], labels[column] = words.heading(of_unit), of_unit
    return labels, headings


def _spans_rows(grid: Grid, row: int) -> bool:
    """Whether a cell of a row is merged over this row and the two below: the row begins a heading of three."""
    return any(top == row and bottom == row + 2 for top, _, bottom, _ in grid.merged)


def _candidate(grid: Grid, words: Words, rows: tuple[int, ...]) -> WideTable | None:
    for row in rows:
        if any(not (cell is None or type(cell) is str) for cell in grid.row(row)):
            return None
    labels = heading_labels(grid, rows)
    if len(rows) == 2:
        labels = over_parts(grid, rows, labels, words)
    side = side_above(grid, rows[0])
    headings = named_below(words, side, labels)
    if len(rows) > 1:
        labels, headings = _below_groups(grid, words, rows, labels, headings)
    told = told_by_cells(grid, rows, labels, headings, words)
    named = [h for h in told if h is not None]
    if holds_values(labels, len(named), words):
        return None  # a row of data with a name in it
    said = [label.strip() for label, h in zip(labels, told, strict=True) if h is not None]
    if not names_a_table(said) and not _one_size(labels, headings, words):
        return None
    if len(rows) > 1 and _is_text_above(grid, rows, headings, words):
        return None
    if len(rows) > 1 and not any(grid.text(rows[0], c) for c in range(grid.width)):
        return None
    if any(is_title_row(grid, row, words) for row in rows):
        return None
    return WideTable(
        grid, rows[0], rows[-1], labels, headings, len({(h.parameter, h.aspect, h.station) for h in named})
    )


def holds_values(labels: Sequence[str], named: int, words: Words) -> bool:
    """Whether a row that names some parameters holds values: more numbers than names, or half as many with units.

    So does one with a number and its unit beside it, in any order, a line of a list. A size with its class (``50 k5``)
    is a number with its unit. As many numbers as names behind all of them are values of one (``da | 25 | 37``), and so
    is a number that counts no position behind a part and one name (``Roulement | Charge radiale Fr [N] | 340``).
    """
    beside = [pair for a, b in pairwise(labels) for pair in ((a.strip(), b.strip()), (b.strip(), a.strip()))]
    if any(_NUMBER.fullmatch(number) and known_unit(unit) is not None for number, unit in beside):
        return True
    numbers = [label.strip() for label in labels if _NUMBER.match(label.strip()) and not words.mapped(label)]
    plain = sum(_NUMBER.fullmatch(text) is not None for text in numbers)
    with_unit = sum(known_unit(_NUMBER.sub("", text, count=1).strip()) is not None for text in numbers)
    with_unit += sum(SIZE_AND_CLASS.fullmatch(label.strip()) is not None for label in labels)
    behind = labels[-plain:] if 1 < plain == named else ()
    last = bool(behind) and all(_NUMBER.fullmatch(label.strip()) for label in behind)
    of_one = named <= 2 and plain == 1 and any(_NUMBER.fullmatch(t) and len(t) > 1 for t in numbers)
    return last or of_one or plain + with_unit > named or 2 * with_unit >= max(named, 1)


def _one_size(labels: Sequence[str], headings: Sequence[Heading | None], words: Words) -> bool:
    """Whether a row heads one size of a seat with its place or the parts of its tolerance, and holds no numbers."""
    named = [(label.strip(), h) for label, h in zip(labels, headings, strict=True) if h is not None]
    if len(named) != 1 or len(named[0][0]) < 2 or named[0][1].entry.kind != "toleranced":
        return False
    if named[0][1].entry.level != "station" or any(_LIKE_NUMBER.match(label) for label in labels):
        return False
    others = [label for label, h in zip(labels, headings, strict=True) if label and h is None]
    joined = [label for label in others if words.group(label) in JOINABLE]
    placed = (
        others and others[0] == next(filter(None, labels)) and key_of(others[0], words).strip(" .") in KEYS["place"]
    )
    return bool(placed) or len(joined) > 1


def _is_text_above(grid: Grid, rows: Sequence[int], headings: Sequence[Heading | None], words: Words) -> bool:
    """Whether the upper row of a heading is one text alone that helps to name nothing: a title, no part of it."""
    row = rows[0]
    filled = [*grid.texts(row)]
    if len(filled) != 1 or any(top <= row <= bottom and right > left for top, left, bottom, right in grid.merged):
        return False
    lower = " ".join(filter(None, (grid.text(r, filled[0]) for r in rows[1:])))
    helps = headings[filled[0]] not in (None, words.heading(lower) if lower else None)
    return not helps and side_of(grid.text(row, filled[0])) is None


def named_below(words: Words, side: Side | None, labels: Sequence[str]) -> list[Heading | None]:
    """What headings name, below a heading of the whole table that says shaft or housing with that before them.

    Bore and outside diameter beside each other are those of the bearing, whatever stands above them.
    """
    alone = [words.heading(label) if names_value(words, label) else None for label in labels]
    alone = beside_found(labels, limits_of_parts(labels, alone, words), words)
    if {"bore_diameter", "outside_diameter"} <= {h.parameter for h in alone if h is not None}:
        return alone
    return [
        (within(words, side, label) or h) if label and (h is not None or words.heading(label) is None) else None
        for label, h in zip(labels, alone, strict=True)
    ]


def _below_groups(
    grid: Grid, words: Words, rows: tuple[int, ...], labels: list[str], headings: list[Heading | None]
) -> tuple[list[str], list[Heading | None]]:
    """Headings below groups (Bearing, Shaft, Housing) whose word stands over their first column only."""
    texts = [grid.text(rows[0], column) for column in range(grid.width)]
    groups = [part_said(text, words) for text in texts]
    if sum(group is not None for group in groups) < 2:
        return labels, headings
    labels, headings, current, above = [*labels], [*headings], None, ""
    spans: dict[tuple[str, str, int], list[tuple[int, str]]] = {}
    start = 0
    for column, (upper, group) in enumerate(zip(texts, groups, strict=True)):
        lower = " ".join(filter(None, (grid.text(r, column) for r in rows[1:])))
        if upper:
            start = start if column and texts[column - 1] == upper else column  # one group
            current, above = group, upper
        if current is None:
            headings[column], labels[column] = of_others(words, above, lower, headings[column], labels[column])
        elif lower and not (upper and known_unit(unit_text(lower)) is not None):
            found, labels[column] = below_part(words, current.side, above, lower, headings[column])
            of_station = found is not None and current.station and found.entry.level == "station"
            if of_station and found is not None and found.parameter != "station":
                found = evolve(found, station=current.station) if found.station in ("", current.station) else None
            headings[column] = found
            spans.setdefault((current.side.side, current.station, start), []).append((column, lower))
    for (side, station, _), columns in spans.items():
        size_below(words, Heading(f"{side}_seat_diameter", station), columns if side != "bearing" else (), headings)
    return labels, headings


def _holds_values(grid: Grid, heading: WideTable, row: int) -> bool:
    """Whether a number stands right below a heading that names its parameter alone: then the row is data."""
    merged = [m for m in grid.merged if m[0] <= heading.top <= m[2]]
    return any(
        h is not None
        and not any(left <= column <= right for _, left, _, right in merged)
        and _NUMBER.fullmatch(grid.text(row, column).strip()) is not None
        for column, h in enumerate(heading.headings)
    )


def _is_second_heading(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row below a heading says of each size which part of it a column states (and maybe units)."""
    parts = 0
    for cell in grid.row(row):
        if is_blank(cell):
            continue
        if type(cell) is not str:
            return False
        if words.group(cell) in JOINABLE:
            parts += 1
        elif known_unit(cell.strip("[]() ")) is None and words.group(cell) != "VALUE":
            return False
    return parts > 0


def names_a_table(named: Sequence[str]) -> bool:
    """Whether the words of a row that name parameters make it a heading; lone letters may be values (station B)."""
    return len(named) >= 2 and (len(named) >= 3 or all(len(word) > 1 for word in named))
