"""Rows above a table with names down a column that head its columns of values."""

import re
from collections.abc import Sequence

from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.sections import heads_machine
from linter.reading.layouts.title import names_value
from linter.reading.layouts.title_rows import is_title_row
from linter.reading.words.column_words import KEYS
from linter.reading.words.columns import key_of
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Words

#: Rows of machines above a heading row, with their own row counted.
_MACHINES_ABOVE = 4
#: What a label beside positions may be a word for, if it is one for columns.
_OF_NAMES = {"NAME", "NOTE", "CHAR-ID", "VALUE", "STATION"}
#: Words for a place of a bearing (common practice).
_ENDS = "end, seat, bearing seat, sitz, lagersitz, siège, portée, asiento, sede, extrémité, extremo, estremità, конец"
_PLACES = KEYS["place"] | KEYS["bearing"] | {word_key(word) for word in _ENDS.split(", ")}
#: Begins like a value, the sign of a diameter, a radius or a roughness before it.
LIKE_VALUE = re.compile(r"[\W_]*(?:(?:[ØøφΦR]|R_?a|SR) ?)?[\W_]*\d")


def header_above(grid: Grid, words: Words, name: int, first: int, values: Sequence[int]) -> int:
    """The row that heads the columns of values above the first name, with blank rows between them or none; or -1.

    A row that heads the names (``Parameter``) and every column of values stands above all of them.
    """
    label = words.heading(grid.text(first, name))
    if label is not None and label.parameter == "machine":  # the machines stand above the row that heads all others
        for row in range(first + 1, min(first + _MACHINES_ABOVE, grid.height)):
            if _all_stations(grid, row, values, words) and _may_head(grid, row, name, values, words):
                return row
    for row in range(first - 1, -1, -1):
        heads = [grid.text(row, c) for c in values]
        if "NAME" not in words.groups(grid.text(row, name)) or is_title_row(grid, row, words):
            continue
        if _are_heads(heads) and not (len(values) == 1 and row and heads_machine(grid, row - 1, name, words)):
            return row
    row = first - 1
    while row >= 0 and all(is_blank(cell) for cell in grid.row(row)):
        row -= 1
    if row >= 0 and values and _heads_columns(grid, row, name, values, words):
        return row
    rows = (r for r in range(row, -1, -1) if len(values) > 1 and _all_stations(grid, r, values, words))
    return next(rows, -1)


def _may_head(grid: Grid, row: int, name: int, values: Sequence[int], words: Words) -> bool:
    """Whether a row of positions is one by its label; letters may be of another thing that it names (``Datum``)."""
    label = grid.text(row, name)
    if key_of(label, words).strip(" .") in _PLACES:
        return True
    if words.heading(label) is not None or not set(words.groups(label)) <= _OF_NAMES:
        return False
    return not label or bool(words.groups(label)) or all(len(grid.text(row, c)) > 1 for c in values)


def _all_stations(grid: Grid, row: int, values: Sequence[int], words: Words) -> bool:
    """Whether a row says a station in every column of values, whatever stands beside them."""
    heads = [grid.text(row, c) for c in values]
    return all(heads) and len(set(heads)) > 1 and all(_says_station(words, head) for head in heads)


def _says_station(words: Words, text: str) -> bool:
    heading = words.heading(text)
    return bool(words.station_said(text)) or bool(heading and heading.parameter == "station" and heading.station)


def machines_above(grid: Grid, words: Words, header: int, name: int, values: Sequence[int]) -> int:
    """The row of machines right above a heading that names the same stations again below each; or -1."""
    above = range(header - 1, max(header - _MACHINES_ABOVE, -1), -1)
    named = {row: words.heading(grid.text(row, name)) for row in above}
    row = next((r for r, label in named.items() if label is not None and label.parameter == "machine"), header - 1)
    if (label := named.get(row)) is not None and label.parameter != "machine":
        return -1
    machine, keys = "", []
    for column in values:
        machine = grid.text(row, column) or machine
        keys.append((machine, grid.text(header, column)))
    machines, stations = {m for m, _ in keys}, {s for _, s in keys}
    again = len(set(keys)) == len(keys) > len(stations) and "" not in machines and len(machines) > 1
    return row if again and not any(_says_station(words, text) or names_value(words, text) for text in machines) else -1


def _are_heads(heads: Sequence[str]) -> bool:
    """Whether texts can stand above columns of values: none is blank, a number or a second time there."""
    return 0 < len(heads) == len(set(heads)) and all(head and not LIKE_VALUE.match(head) for head in heads)


def _heads_columns(grid: Grid, row: int, name: int, values: Sequence[int], words: Words) -> bool:
    """Whether a row above the first name heads the columns of values; a row of data is not eaten as a heading."""
    heads = [grid.text(row, c) for c in values]
    if not heads[0] or is_title_row(grid, row, words):
        return False
    label = grid.text(row, name)
    if not label or words.groups(label):
        return True
    if any(LIKE_VALUE.match(head) for head in heads):
        return False
    several = sum(map(bool, heads)) > 1  # Drawing | M-12 | | is a label and its value
    return several or words.names.station(heads[0]) is not None or words.group(heads[0]) == "VALUE"
