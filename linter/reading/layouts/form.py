"""Forms: pairs of name and value beside each other, made one pair in a row so that they read as any other table."""

import re
from collections.abc import Mapping, Sequence
from itertools import pairwise

import numpy as np
from attrs import evolve

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Column, Grid, is_blank, object_column
from linter.reading.layouts.blocks_beside import blocks_beside
from linter.reading.layouts.header_roles import header_roles
from linter.reading.layouts.sides import Side, judged_within, side_of, within
from linter.reading.layouts.title import names_value
from linter.reading.layouts.title_rows import is_title_row
from linter.reading.words.headings import Heading, Words
from linter.reading.words.machine_words import names_machine

#: Rows with two pairs of different names that make a form, and columns that are looked at.
_LEAST, _MOST_COLUMNS = 2, 24
#: Cells of a row that a list of names and values has not.
_BROAD = 9
#: The revision of a drawing behind its number.
_LETTERS = re.compile("[A-Z]{1,2}")


def unfolded(grid: Grid, words: Words) -> Grid:
    """A form with one pair of name and value in a row, each with its true place; another grid as it stands.

    Two or more columns hold names, each with a column of values behind it, and the names in a row differ. Blocks of
    positions side by side repeat them; they are put below each other. Below words for parts in one row (``Shaft``,
    ``Housing``) each part keeps its own rows together.
    """
    if grid.height > LONGEST_MIXED or not 4 <= grid.width <= _MOST_COLUMNS:
        return grid
    if grid.whole_lines or any(top != bottom for top, _, bottom, _ in grid.merged):
        return grid
    starts = _columns_of_names(grid, words)
    if len(starts) < 2 or any(_heads_a_list(grid, row, words) for row in range(grid.height)):
        grid = _titles_apart(grid, words)
        blocks = blocks_beside(grid, words)
        return of_pieces(grid, blocks, grid.width) if blocks else grid
    spans = list(zip(starts, [*starts[1:], grid.width], strict=True))
    pieces = _pieces(grid, spans, words)
    return of_pieces(grid, pieces, max(b - a for _, a, b in pieces))


def _titles_apart(grid: Grid, words: Words) -> Grid:
    """The grid with a row for each pair of a row of two names of the machine and their values; as it is without any.

    Above a broad table such rows are read as they stand.
    """
    if max(grid.filled, default=0) > _BROAD:
        return grid
    pairs = {row: names for row in range(grid.height) if len(names := _names_in_turn(grid, row)) > 1}
    known = {row: names for row, names in pairs.items() if _are_of_machine(grid, row, names, words)}
    for row in (*sorted(pairs), *sorted(pairs, reverse=True)):
        beside = pairs[row] in (known.get(row - 1), known.get(row + 1))
        if beside and row not in known and _are_unknown(grid, row, pairs[row], words):
            known[row] = pairs[row]
    pairs = dict(sorted(known.items()))
    if not pairs or any(pairs.keys() & set(range(top, bottom + 1)) for top, _, bottom, _ in grid.merged):
        return grid
    pieces = [
        (row, a, b)
        for row in range(grid.height)
        for names in [pairs.get(row, [0])]
        for a, b in pairwise([0, *names[1:], grid.width])
    ]
    whole = {row: k for k, (row, a, b) in enumerate(pieces) if b - a == grid.width}
    merged = tuple((whole[max(top, 0)], left, whole[bottom], right) for top, left, bottom, right in grid.merged)
    return evolve(of_pieces(grid, pieces, grid.width), merged=merged)


def _are_unknown(grid: Grid, row: int, names: Sequence[int], words: Words) -> bool:
    """Whether cells beside labels of the machine above or below them name nothing of a position."""
    labels = [grid.text(row, column) for column in names]
    headings = [*map(words.heading, labels)]
    stations = any(h is not None and (h.station or h.entry.level == "station") for h in headings)
    return not stations and len({*labels}) == len(labels) and not any(map(words.station_said, labels))


def _are_of_machine(grid: Grid, row: int, names: Sequence[int], words: Words) -> bool:
    """Whether cells name values of the machine that stand right behind them; the machine may be called by its sort."""
    known = 0
    for column in names:
        label, value = grid.text(row, column), grid.text(row, column + 1)
        heading = words.heading(label)
        if not value or (len(value) > 1 and (names_value(words, value) or words.groups(value))):
            return False
        if heading is None and not names_machine(label):
            return False
        if heading is not None and (heading.entry.level != "machine" or heading.station):
            return False
        known += heading is not None
    return known > 0


def _heads_a_list(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row heads one list of names and values with the station or machine of each behind them."""
    roles = list(header_roles(grid, row, words).values())
    return roles.count("NAME") == roles.count("VALUE") == 1 and bool({"STATION", "MACHINE"}.intersection(roles))


def _pieces(grid: Grid, spans: Sequence[tuple[int, int]], words: Words) -> list[tuple[int, int, int]]:
    """Row, first column and column behind the last of each pair, in the order in which they are read.

    Pairs below positions or parts side by side are of the whole machine, where their names differ from side to side:
    they are read before those.
    """
    pieces: list[tuple[int, int, int]] = []
    below: list[tuple[int, int, int]] = []
    first, row = -1, 0
    while row < grid.height:
        end = _end_of_parts(grid, row, spans, words)
        if end > row:
            first = len(pieces) if first < 0 else first
            pieces += [(r, a, b) for a, b in spans for r in range(row, end) if _filled(grid, r, a, b)]
            row = end
            continue
        own = _title_pairs(grid, row, [a for a, _ in spans], words) or _with_units(grid, row, spans)
        filled = [(row, a, b) for a, b in own if _filled(grid, row, a, b)]
        filled.sort(key=lambda piece: not _names_station(grid, piece[0], piece[1], words))
        (below if first >= 0 and _all_differ(grid, row, spans) else pieces).extend(filled or [(row, *spans[0])])
        row += 1
    headed = any(_heads_one(grid, r, a, words) for r, a, _ in pieces[:first]) if first > 0 else False
    at = len(pieces) if first < 0 or headed else first
    return [*pieces[:at], *below, *pieces[at:]]


def _all_differ(grid: Grid, row: int, spans: Sequence[tuple[int, int]]) -> bool:
    """Whether the rows from one on have other names in each span, up to a blank row; the first may head them."""
    pairs = 0
    while row < grid.height and any(_filled(grid, row, a, b) for a, b in spans):
        names = [text for a, _ in spans if (text := grid.text(row, a))]
        if len({*names}) < len(names):
            return False
        pairs += len(names) > 1
        row += 1
    return pairs > 0


def _heads_one(grid: Grid, row: int, column: int, words: Words) -> bool:
    """Whether a row holds one text alone that says a part or a position of the rows below it."""
    text = grid.text(row, column)
    return grid.filled[row] == 1 and (side_of(text) is not None or bool(words.station_said(text)))


def _title_pairs(grid: Grid, row: int, starts: Sequence[int], words: Words) -> list[tuple[int, int]]:
    """The pairs of a row of a title whose names stand elsewhere than those of the form; none for another row.

    A row of unknown words (``Motor | EM 90 | Order | 24-118``) is one beside another with its names in the same places.
    """
    names = _names_in_turn(grid, row)
    if len(names) < 2 or set(names) <= set(starts):
        return []
    beside = (r for r in (row - 1, row + 1) if 0 <= r < grid.height and _names_in_turn(grid, r) == names)
    if not is_title_row(grid, row, words) and not any(is_title_row(grid, r, words) for r in beside):
        return []
    return list(zip(names, [*names[1:], grid.width], strict=True))


def _names_in_turn(grid: Grid, row: int) -> list[int]:
    """The columns of names of a row that is name and value in turn, maybe with a unit behind; none for another.

    A title may stand before them, with nothing behind it.
    """
    filled = [*grid.texts(row)]
    at = int(len(filled) > 4 and len(filled) % 2 == 1 and filled[1] > filled[0] + 1)
    names = filled[:at]
    while at + 1 < len(filled):
        names.append(filled[at])
        behind = filled[at + 2] if at + 2 < len(filled) else 0
        beside = grid.text(row, behind) if behind == filled[at + 1] + 1 else ""
        at += 3 if _is_unit(beside) or (behind == filled[-1] and _LETTERS.fullmatch(beside)) else 2
    return names if at == len(filled) else []


def _with_units(grid: Grid, row: int, spans: Sequence[tuple[int, int]]) -> list[tuple[int, int]]:
    """The spans of a row, where a unit stands in the place of the next name those of its pair one cell wider."""
    result: list[tuple[int, int]] = []
    for a, b in spans:
        lone = _is_unit(grid.text(row, a)) and not _filled(grid, row, a + 1, b)
        if result and lone and not is_blank(grid.columns[a - 1][row]):
            result[-1] = (result[-1][0], a + 1)
        else:
            result.append((a, b))
    return result


def _is_unit(text: str) -> bool:
    return bool(text) and known_unit(text.strip("[]() ")) is not None


def of_pieces(grid: Grid, pieces: Sequence[tuple[int, int, int]], width: int) -> Grid:
    """A grid of a row for each pair, with their places."""
    columns: list[Column] = [
        object_column([grid.columns[a + k][r] if a + k < b else None for r, a, b in pieces]) for k in range(width)
    ]
    formats = {
        (k, c - a): shape
        for k, (r, a, b) in enumerate(pieces)
        for c in range(a, b)
        if (shape := grid.formats.get((r, c)))
    }
    return Grid(
        grid.file,
        grid.sheet,
        columns,
        grid.lines[np.array([r for r, _, _ in pieces], dtype=np.intp)],
        grid.first_column,
        formats=formats,
        hidden_rows=frozenset(k for k, (r, _, _) in enumerate(pieces) if r in grid.hidden_rows),
        shifts=np.array([a + (0 if grid.shifts is None else grid.shifts[r]) for r, a, _ in pieces], dtype=np.int32),
    )


def _columns_of_names(grid: Grid, words: Words) -> list[int]:
    """Columns of names with values behind them, where the rows of the table pair them; nothing for another table."""
    named = _named(grid, words)
    starts = [column for column, known in named.items() if _are_names(grid, column, known)]
    if len(starts) < 2 or starts[0] or any(b - a < 2 for a, b in zip(starts, [*starts[1:], grid.width], strict=True)):
        return []
    rows = [row for row in range(grid.height) if sum(named[c].get(row) is not None for c in starts) > 1]
    rows = [row for row in rows if not _title_pairs(grid, row, starts, words)]
    headed = _below_positions(grid, list(zip(starts, [*starts[1:], grid.width], strict=True)), words)
    alike = [row for row in rows if row not in headed and len({named[c].get(row) for c in starts} - {None}) < 2]
    paired = sum(_pairs(grid, row, starts, words) for row in rows)  # a value may be a name: grease is one
    form = len(rows) >= _LEAST and 3 * len(alike) <= len(rows) and paired >= _LEAST and 5 * paired >= 4 * len(rows)
    return starts if form and not _more_than_pairs(grid, starts, words) else []


def _are_names(grid: Grid, column: int, known: Mapping[int, Heading | None]) -> bool:
    """Whether half of the texts of a column and two at least are names, or all are labels and one of them is."""
    told = set(known.values()) - {None}
    labels = sum(grid.text(row, column)[-1:] in (":", "：") for row in known)
    several = len(told) >= _LEAST and 2 * sum(h is not None for h in known.values()) >= len(known)
    return several or (bool(told) and len(known) > _LEAST and labels + 1 >= len(known))


def _below_positions(grid: Grid, spans: Sequence[tuple[int, int]], words: Words) -> set[int]:
    """Rows below words for parts or positions side by side: the names of one come again beside it."""
    found: set[int] = set()
    for row in range(grid.height):
        found.update(range(row, _end_of_parts(grid, row, spans, words)))
    return found


def _named(grid: Grid, words: Words) -> dict[int, dict[int, Heading | None]]:
    """What the texts of each column name, row by row, below the words for parts that stand above them."""
    named: dict[int, dict[int, Heading | None]] = {column: {} for column in range(grid.width - 1)}
    sides: dict[int, Side | None] = {}
    for row in range(grid.height):
        texts = grid.texts(row)
        parts = {column: side_of(text) for column, text in texts.items() if column + 1 not in texts}
        if parts and all(parts.values()) and len(parts) == len(texts):
            sides = parts if len(parts) > 1 else dict.fromkeys(named, next(iter(parts.values())))
            continue
        for column, text in texts.items():
            if column in named and not _is_unit(text):
                heading = _meaning(words, sides.get(column), text, grid.text(row, column + 1))
                own = heading is not None and heading.parameter in ("machine", "station") and heading.station
                named[column][row] = None if own else heading
    return named


def _meaning(words: Words, side: Side | None, text: str, value: str) -> Heading | None:
    """What a name means below the word for a part; a nominal by its value."""
    heading = within(words, side, text)
    return judged_within(words, side, text, None, (value,)) if heading is None and words.groups(text) else heading


def _more_than_pairs(grid: Grid, starts: Sequence[int], words: Words) -> bool:
    """Whether anything but units stands behind the values."""
    for a, b in zip(starts, [*starts[1:], grid.width], strict=True):
        rows = [row for row in range(grid.height) if not _title_pairs(grid, row, starts, words)]
        behind = {text for c in range(a + 2, b) for row in rows if (text := grid.text(row, c))}
        if any(not _is_unit(text) and words.group(text) != "UNIT" for text in behind):
            return True
    return False


def _pairs(grid: Grid, row: int, starts: Sequence[int], words: Words) -> bool:
    """Whether a value that is no name stands behind each name of a row, in the column right behind it."""
    filled = [column for column in starts if grid.text(row, column)]
    values = [grid.text(row, column + 1) for column in filled]
    return all(values) and not any(len(v) > 2 and names_value(words, v) for v in values)


def _filled(grid: Grid, row: int, first: int, last: int) -> bool:
    return any(not is_blank(grid.columns[column][row]) for column in range(first, last))


def _names_station(grid: Grid, row: int, column: int, words: Words) -> bool:
    heading = words.heading(grid.text(row, column))
    return heading is not None and heading.parameter == "station" and not heading.station


def _end_of_parts(grid: Grid, row: int, spans: Sequence[tuple[int, int]], words: Words) -> int:
    """Row behind the rows of parts or positions side by side that a row heads: up to a blank row, or the next such."""

    def heads(at: int) -> bool:
        texts = [grid.text(at, a) for a, b in spans if not _filled(grid, at, a + 1, b)]
        texts = [text for text in texts if text]
        if len(texts) < 2 or any(_filled(grid, at, a, b) and not grid.text(at, a) for a, b in spans):
            return False
        parts = [side.side for text in texts if (side := side_of(text))]
        stations = [station for text in texts if (station := words.station_said(text))]
        return len(set(parts)) == len(texts) or len(set(stations)) == len(texts)

    if not heads(row):
        return row
    end = row + 1
    while end < grid.height and any(_filled(grid, end, a, b) for a, b in spans) and not heads(end):
        if grid.filled[end] == 1 and _all_differ(grid, end + 1, spans):
            break  # the heading of what the machine has
        end += 1
    return end
