"""What the columns of a list hold, by the words of its heading row."""

import re

from linter.reading.cells.signs import caseless, is_figure
from linter.reading.files.grids import Grid
from linter.reading.layouts.heads_of_positions import counts_positions, values_are_names
from linter.reading.layouts.list_columns import complete
from linter.reading.layouts.long_table import ASPECTS, SAMPLE, counts_with_letters
from linter.reading.words.columns import heading_of
from linter.reading.words.cuts import version_cuts
from linter.reading.words.headings import Words
from linter.reading.words.joined_names import designation_or_size
from linter.reading.words.measured_words import DRAWN
from linter.reading.words.no_names import versions_said

_LONGEST, _FIRST = 40, 16
_SIGNS = ("+", "-", "−", "±")
_NUMBERED = re.compile(r"(.*[^\W\d])[ _.#-]*\d{1,3}")  # Actual 1, Actual 2, ...


def header_roles(grid: Grid, row: int, words: Words) -> dict[int, str]:
    """Role of each column by the words of a header row; empty where a cell of it is no text, or they name positions."""
    roles = _roles_by_words(grid, row, words)
    values_are_names(grid, row, roles, words)
    complete(grid, row, roles, words)
    return {} if _name_positions(grid, row, roles, words) else roles


def heads_places(grid: Grid, row: int, words: Words) -> bool:
    """Whether words of a row that may head deviations (``oben``, ``unten``) are positions side by side."""
    roles = _roles_by_words(grid, row, words)
    return bool(roles) and _name_positions(grid, row, roles, words)


def heads_positions(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row is a word for a position or for names, and then positions alone: names stand below it."""
    first, *others = grid.texts(row).values()
    heading = words.heading(first)
    heads = "NAME" in words.groups(first)
    heads |= heading is not None and heading.parameter == "station" and not heading.station
    said = len(others) > 1 and all(_says_station(text, words) for text in others)
    return heads and (said or heads_places(grid, row, words))


def _says_station(text: str, words: Words) -> bool:
    heading = words.heading(text)
    own = heading is not None and heading.parameter == "station" and bool(heading.station)
    return own or bool(words.station_said(text))


def _roles_by_words(grid: Grid, row: int, words: Words) -> dict[int, str]:
    roles: dict[int, str] = {}
    values = 0
    measured: list[int] = []
    for column in grid.texts(row):
        cell = grid.columns[column][row]
        if type(cell) is not str:
            if not counts_positions(grid, row):
                return {}
            continue
        heading = words.heading(cell)
        if heading is not None and heading.parameter in ("machine", "station"):
            roles[column] = heading.parameter.upper()
            continue
        groups = _groups(grid, row, column, words)
        if "RESULT" in groups:
            roles[column] = "RESULT"
            measured += [column] if "VALUE" in groups else []
        elif "VALUE" in groups and "NAME" not in groups:
            values += 1
            roles[column] = "VALUE" if values == 1 else "NOTE"
        elif groups:
            roles[column] = groups[0]
    if not values:
        roles |= _changed(grid, row, words)
    if len(measured) == 1 and not values and not set(roles.values()) & {"EXPR", *ASPECTS}:
        roles[measured[0]] = "VALUE"  # the only value there is: the actual one of the model, not a measurement
    if "RESULT" in roles.values() and not values:
        said = [c for c in range(grid.width) if c not in roles and caseless(grid.text(row, c)) in DRAWN]
        roles |= dict.fromkeys(said if len(said) == 1 else (), "VALUE")  # Drawing | Measured
    return roles


def _changed(grid: Grid, row: int, words: Words) -> dict[int, str]:
    """The columns of values before and after a change (``old value | new value``): the new ones are read."""
    texts = {column: text for column, text in grid.texts(row).items() if not is_figure(text)}
    said: dict[int, str] = dict(zip(texts, versions_said([*texts.values()]), strict=True))
    for column, text in texts.items():
        cuts = version_cuts(text) if 1 < len(text) <= _LONGEST else []
        said[column] = said[column] or next((v for rest, v in cuts if "VALUE" in words.groups(rest)), "")
    newer = [column for column, version in said.items() if version == "newer"]
    older = [column for column, version in said.items() if version == "older"]
    return {newer[0]: "VALUE", **dict.fromkeys(older, "OLDER")} if len(newer) == 1 and older else {}


def _groups(grid: Grid, row: int, column: int, words: Words) -> tuple[str, ...]:
    """Groups of a heading; of numbered ones (``Actual 2``) as of results, of one over numbers of rows as of these."""
    text = grid.text(row, column)
    groups = words.groups(text)
    if "VALUE" in groups and counts_with_letters(
        [code for below in range(row + 1, grid.height) if (code := grid.text(below, column))]
    ):
        return ("CHAR-ID",)
    if "VALUE" in groups and any("VALUE" in words.groups(t) for c, t in grid.texts(row).items() if c != column):
        if designation_or_size(text):  # Cote / désignation: names, where values stand beside them
            return ()
        if _holds_names(grid, column, row + 1, words):  # Requirement | Value
            return ("NAME",)
    if not groups and (numbered := _NUMBERED.fullmatch(text.strip())):
        return tuple(group for group in words.groups(numbered[1]) if group == "RESULT")
    return groups


def _holds_names(grid: Grid, column: int, start: int, words: Words) -> bool:
    """Whether most of the first cells below a word for values are known names."""
    texts = [text for row in range(start, min(grid.height, start + _FIRST)) if (text := grid.text(row, column))]
    known = sum(any(map(str.isalpha, text)) and words.heading(text) is not None for text in texts)
    return known > 2 and 2 * known > len(texts)


def _name_positions(grid: Grid, header: int, roles: dict[int, str], words: Words) -> bool:
    """Whether words that may head deviations (``oben``, ``unten``) name positions: designations stand below both.

    No other column states values or tolerances then, and no cell below the words begins with a sign.
    """
    columns = [column for column, role in roles.items() if role in ASPECTS]
    if sorted(roles[column] for column in columns) != ["LOWER", "UPPER"] or {"VALUE", "EXPR"} & set(roles.values()):
        return False
    rows = range(header + 1, min(grid.height, header + 1 + SAMPLE))
    below = {row: [text for column in columns if (text := grid.text(row, column))] for row in rows}
    designated = any(
        len(texts) == len(columns) and (h := heading_of(label, words.heading(label), texts, words)) is not None
        and h.parameter == "bearing_designation"
        for row, texts in below.items() if (label := grid.text(row, 0))
    )  # fmt: skip
    return designated and not any(text[0] in _SIGNS for texts in below.values() for text in texts)
