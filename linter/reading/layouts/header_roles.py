"""What the columns of a list hold, by the words of its heading row."""

import re

from linter.reading.cells.signs import caseless
from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.list_columns import complete
from linter.reading.layouts.long_table import ASPECTS, SAMPLE
from linter.reading.words.columns import heading_of
from linter.reading.words.headings import Words
from linter.reading.words.measured_words import DRAWN

_SIGNS = ("+", "-", "−", "±")
_NUMBERED = re.compile(r"(.*[^\W\d])[ _.#-]*\d{1,3}")  # Actual 1, Actual 2, ...


def header_roles(grid: Grid, row: int, words: Words) -> dict[int, str]:
    """Role of each column by the words of a header row; empty where a cell of it is no text, or they name positions."""
    roles = _roles_by_words(grid, row, words)
    complete(grid, row, roles, words)
    return {} if _name_positions(grid, row, roles, words) else roles


def heads_places(grid: Grid, row: int, words: Words) -> bool:
    """Whether words of a row that may head deviations (``oben``, ``unten``) are positions side by side."""
    roles = _roles_by_words(grid, row, words)
    return bool(roles) and _name_positions(grid, row, roles, words)


def _roles_by_words(grid: Grid, row: int, words: Words) -> dict[int, str]:
    roles: dict[int, str] = {}
    values = 0
    measured: list[int] = []
    for column in range(grid.width):
        cell = grid.columns[column][row]
        if is_blank(cell):
            continue
        if type(cell) is not str:
            return {}
        heading = words.heading(cell)
        if heading is not None and heading.parameter in ("machine", "station"):
            roles[column] = heading.parameter.upper()
            continue
        groups = words.groups(cell)
        if not groups and (numbered := _NUMBERED.fullmatch(cell.strip())):
            groups = tuple(group for group in words.groups(numbered[1]) if group == "RESULT")
        if "RESULT" in groups:
            roles[column] = "RESULT"
            measured += [column] if "VALUE" in groups else []
        elif "VALUE" in groups and "NAME" not in groups:
            values += 1
            roles[column] = "VALUE" if values == 1 else "NOTE"
        elif groups:
            roles[column] = groups[0]
    if len(measured) == 1 and not values and not set(roles.values()) & {"EXPR", *ASPECTS}:
        roles[measured[0]] = "VALUE"  # the only value there is: the actual one of the model, not a measurement
    if "RESULT" in roles.values() and not values:
        said = [c for c in range(grid.width) if c not in roles and caseless(grid.text(row, c)) in DRAWN]
        roles |= dict.fromkeys(said if len(said) == 1 else (), "VALUE")  # Drawing | Measured
    return roles


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
