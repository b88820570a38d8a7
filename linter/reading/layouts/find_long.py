"""Where a table with its names down a column begins, and what its other columns hold."""

import re
from collections.abc import Sequence
from itertools import islice
from typing import Any

from attrs import define, field

from linter.reading.cells.signs import missing_state
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.layouts.beside import feature_beside
from linter.reading.layouts.heads import heads_a_list, heads_another
from linter.reading.layouts.heads_above import LIKE_VALUE, header_above, machines_above
from linter.reading.layouts.placed import Placed, placed_column
from linter.reading.layouts.sections import heads_machine, named_by_part, numbers_rows, section_label, sections
from linter.reading.layouts.sides import Side, part_column, parts_below, side_of
from linter.reading.layouts.station_columns import judge_numbers, numbered_stations, stations_of_objects
from linter.reading.layouts.title import heads_rows, is_label, names_value
from linter.reading.words.columns import heading_of
from linter.reading.words.headings import Heading, Words

ASPECTS = {"UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min", "CLASS": "tolerance"}
_MOST_NAMES = 2000  # rows whose names are counted
_SAMPLE = 300  # cells that tell what a column holds
#: A tolerance class alone (k5, H6) states a size of which only the tolerance is said.
_CLASS = re.compile(r"\s*[A-Za-z]{1,2}\d{1,2}\s*(?:\(.*\)\s*)?$")
_SIGNS = ("+", "-", "−", "±")
_NUMBERED = re.compile(r"(.*[^\W\d])[ _.#-]*\d{1,3}")  # Actual 1, Actual 2, ...


@define(eq=False)
class LongTable:
    """A table whose parameter names stand in one column.

    Attributes
    ----------
    grid : Grid
        The region.
    header : int
        Header row, or -1 for none.
    name : int
        Column of the names.
    roles : dict of int to str
        What the other columns hold: ``VALUE``, ``UNIT``, ``EXPR``, ``UPPER``, ``LOWER``, ``MAX``, ``MIN``, ``CLASS``,
        ``STATION``, ``MACHINE``, ``KIND`` (of a characteristic), ``RESULT`` (measured values and verdicts), ``NOTE``,
        ``PART`` (says of each row which part of a size it states: Max, Min), ``SIDE`` (shaft, housing or bearing),
        ``UNNAMED`` (values that no heading names), or ``COLUMN`` for a station of a transposed table.
    score : int
        Number of names that are recognised.
    start : int
        First row below the header or the title.
    parts : dict of int to Side
        Shaft, housing or bearing of each row, where a column (``SIDE``) says it.
    objects : dict of int to str
        Station of each row, where a column of objects (``Rotor``, ``Bearing A``, ``Bearing B``) says it.
    machines : int
        Row that names the machines above stations side by side, or -1 for none.
    """

    grid: Grid
    header: int
    name: int
    roles: dict[int, str]
    score: int
    start: int = 0
    parts: dict[int, Side] = field(factory=dict)
    objects: dict[int, str] = field(factory=dict)
    machines: int = -1

    @property
    def transposed(self) -> bool:
        """Whether stations stand side by side."""
        return "COLUMN" in self.roles.values()


def find_long(grid: Grid, words: Words) -> LongTable | None:
    """The best reading of a grid with names down a column, or None."""
    for row in range(min(grid.height - 1, 50)):
        roles = header_roles(grid, row, words)
        found = set(roles.values())
        stated = found & {"EXPR", "UPPER", "LOWER", "MAX", "MIN"} and "NAME" in found
        if "VALUE" in found or stated or ("RESULT" in found and found & {"NAME", "CHAR-ID"}):
            candidates = [c for c, role in roles.items() if role in ("NAME", "NOTE", "CHAR-ID")]
            both = _placed_column(grid, row, roles, words)
            part = part_column(grid, row + 1) if both is None else both[0]
            parts = parts_below(grid, part, row + 1) if part is not None and both is None else {}
            if both is not None:
                parts = {r: said.side for r, said in both[1].items()}
            counts = {
                c: _names_below(grid, c, row + 1, words)
                + named_by_part(grid, c, parts or sections(grid, c, row + 1, words), words)
                for c in candidates
                if c != part
            }
            own = _names_below(grid, part, row + 1, words) if part in candidates else 0
            if part is not None and own > max(counts.values(), default=0):
                counts, part, parts = {part: own}, None, {}  # “Shaft seat” and “Housing seat” are the names themselves
            best = max(counts, key=lambda c: counts[c], default=-1)
            if best >= 0 and counts[best]:
                roles.pop(best)
                judge_numbers(grid, roles, row + 1)
                if part is not None:
                    roles[part] = "SIDE"
                for column in set(range(grid.width)) - {best}:
                    if roles.get(column, "NOTE") == "NOTE" and _says_parts(_sample(grid, column, row + 1), words):
                        roles[column] = "PART"
                _beside(grid, row, best, roles, parts, words)
                numbered_stations(grid, best, part, roles, row + 1)
                if both is not None and part is not None:
                    objects = {r: said.station for r, said in both[1].items()}
                else:
                    objects = stations_of_objects(grid, best, roles, row + 1, words)
                return LongTable(grid, row, best, roles, counts[best], row + 1, parts, objects)
    counts = {c: _names_below(grid, c, 0, words) for c in range(min(grid.width, 30))}
    best = max(counts, key=lambda c: counts[c], default=-1)
    if best < 0 or not counts[best]:
        return None
    return _without_header(grid, words, best, counts[best])


def _placed_column(
    grid: Grid, header: int, roles: dict[int, str], words: Words
) -> tuple[int, dict[int, Placed]] | None:
    """A column that says part and position of each row, where no other one names stations."""
    if "STATION" in roles.values():
        return None
    columns = [c for c in range(grid.width) if roles.get(c, "NOTE") in ("NOTE", "NAME", "CHAR-ID", "KIND")]
    return placed_column(grid, columns, header + 1, words)


def header_roles(grid: Grid, row: int, words: Words) -> dict[int, str]:
    """Role of each column by the words of a header row; empty where a cell of it is no text, or they name positions."""
    roles = _roles_by_words(grid, row, words)
    return {} if _name_positions(grid, row, roles, words) else roles


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
    return roles


def _name_positions(grid: Grid, header: int, roles: dict[int, str], words: Words) -> bool:
    """Whether words that may head deviations (``oben``, ``unten``) name positions: designations stand below both.

    No other column states values or tolerances then, and no cell below the words begins with a sign.
    """
    columns = [column for column, role in roles.items() if role in ASPECTS]
    if sorted(roles[column] for column in columns) != ["LOWER", "UPPER"] or {"VALUE", "EXPR"} & set(roles.values()):
        return False
    rows = range(header + 1, min(grid.height, header + 1 + _SAMPLE))
    below = {row: [text for column in columns if (text := grid.text(row, column))] for row in rows}
    designated = any(
        len(texts) == len(columns) and (h := heading_of(label, words.heading(label), texts, words)) is not None
        and h.parameter == "bearing_designation"
        for row, texts in below.items() if (label := grid.text(row, 0))
    )  # fmt: skip
    return designated and not any(text[0] in _SIGNS for texts in below.values() for text in texts)


def _beside(grid: Grid, header: int, name: int, roles: dict[int, str], parts: dict[int, Side], words: Words) -> None:
    """Columns whose heading says another feature of what each row names (``Shaft seat`` in the column ``Ra``)."""
    rows = range(header + 1, min(grid.height, header + 1 + _SAMPLE))
    texts = {(text, parts.get(row)) for row in rows if (text := grid.text(row, name))}
    for column in range(grid.width):
        label = grid.text(header, column)
        if column == name or not label or roles.get(column) or words.heading(label) is not None:
            continue
        if any(feature_beside(words, text, label, side) is not None for text, side in texts):
            roles[column] = "BESIDE"


def _names_below(grid: Grid, column: int, start: int, words: Words) -> int:
    """Number of distinct names that a column states."""
    cells = grid.columns[column][start : start + _MOST_NAMES].tolist()
    texts = {cell for cell in cells if type(cell) is str}
    named = {words.heading(text) for text in texts if len(text.strip()) > 1 or words.mapped(text)}
    if len(texts) < 4:  # a lone letter among other words is rather a station than a symbol
        letters = {words.heading(text) for text in texts if len(text.strip()) == 1} - {None}
        named |= letters if len(letters) > 1 or named - {None} or len(texts) == 1 else set()
    # numbers are names only where the name mapping says so: of the characteristics on a drawing
    named |= {words.heading(text) for cell in cells if type(cell) is not str and words.mapped(text := cell_text(cell))}
    return len(named - {None})


def _without_header(grid: Grid, words: Words, name: int, score: int) -> LongTable | None:
    """Roles of columns by their content, where no header names a value column."""
    named = [_named_by_row(grid, words, name, r) for r in range(grid.height)]
    if not any(named) or (score < 2 and _is_letter(grid, words, name, named)):
        return None  # one symbol alone (B) is rather the name of a station than a heading
    roles, values = _roles_by_content(grid, words, name, named, 0)
    if heads_another(grid, words, name):
        return None
    first = _first_named(grid, words, named, values)
    roles, values = _roles_by_content(grid, words, name, named, first)  # a title above it says nothing of the columns
    heads_others = values and heads_rows(grid, words, first, name, values[0])
    if heads_others or (values and score < 3 and is_label(grid.text(first, values[0]))):
        return None  # "Rev | Date": the heading row of another table
    header = header_above(grid, words, name, first, values)
    values = _by_header(grid, words, header, roles, values) if header >= 0 else values
    of_sizes = sum(words.group(grid.text(header, c)) in ASPECTS for c in values) if header >= 0 else 0
    if of_sizes > 1 and header_roles(grid, header, words):
        return None  # the heads of deviations or limits are no stations
    if not values:
        return None
    roles.update(_roles_of_values(grid, words, header, named, values))
    roles.update({c: "CHAR-ID" for c in range(name) if numbers_rows(grid, c, header + 1)})
    table = LongTable(grid, header, name, roles, score, header + 1)
    if table.transposed and header > 0:
        table.machines = machines_above(grid, words, header, name, values)
    if header < 0:
        table.start = _first_row(table, words)
    return table


def _named_by_row(grid: Grid, words: Words, name: int, row: int) -> Heading | None:
    """What the name of a row means, by its cells too: a row of designations names no stations."""
    label = grid.text(row, name)
    heading = words.heading(label) if names_value(words, label) and not heads_a_list(grid, row, words) else None
    if heading is not None and side_of(section_label(grid, row, name)):
        return None  # the heading of a block of rows
    if heading is not None and heading.parameter != "station":
        return heading
    if heading is None and (not label or names_value(words, label) or heads_a_list(grid, row, words)):
        return None
    cells = [grid.text(row, c) for c in range(name + 1, grid.width)]
    judged = heading_of(label, heading, [cell for cell in cells if cell], words)
    return judged if heading is not None or (judged is not None and judged.parameter == "station") else None


def _roles_of_values(
    grid: Grid, words: Words, header: int, named: Sequence[Heading | None], values: Sequence[int]
) -> dict[int, str]:
    """Roles of the columns of values: stations side by side, or one column of values and others nobody names."""
    keys = [heading for heading in named if heading is not None and heading.parameter == "station"]
    of_values = header >= 0 and not keys and words.group(grid.text(header, values[0])) == "VALUE"
    if (header >= 0 and not of_values) or (len(keys) == 1 and len(values) > 1):
        return {c: "COLUMN" if header < 0 or grid.text(header, c) else "UNNAMED" for c in values}
    return {c: "VALUE" if c == values[0] else "UNNAMED" for c in values}


def _is_letter(grid: Grid, words: Words, name: int, named: Sequence[Heading | None]) -> bool:
    """Whether all that a column names is one or two signs long, and no mapping names it."""
    labels = [grid.text(r, name) for r, heading in enumerate(named) if heading is not None]
    return all(len(label) < 3 and not words.mapped(label) for label in labels)


def _by_header(grid: Grid, words: Words, header: int, roles: dict[int, str], values: list[int]) -> list[int]:
    """The columns of values that are left where a header names the others; their roles are added."""
    for column in [*values, *roles]:
        role = words.group(grid.text(header, column))
        if role in ("NOTE", "UNIT", "EXPR", "DATUM", "CHAR-ID"):
            roles[column] = role
    return [c for c in values if c not in roles]


def _roles_by_content(
    grid: Grid, words: Words, name: int, named: Sequence[Heading | None], start: int
) -> tuple[dict[int, str], list[int]]:
    """Roles of the columns of units, parts and notes, and the columns that hold values."""
    first = next(r for r, heading in enumerate(named) if heading is not None and r >= start)
    roles: dict[int, str] = {}
    values: list[int] = []
    for column in range(name + 1, grid.width):
        cells = _sample(grid, column, first)
        if not cells:
            continue
        units = sum(1 for cell in cells if type(cell) is str and known_unit(cell.strip("[]() ")) is not None)
        if units and units >= 0.5 * sum(1 for cell in cells if cell_text(cell) not in ("-", "–", "1")):
            roles[column] = "UNIT"
        elif _says_parts(cells, words):
            roles[column] = "PART"
        elif values and not _holds_values(grid, column, named, first):
            roles[column] = "NOTE"
        else:
            values.append(column)
    return roles, values


def _first_named(grid: Grid, words: Words, named: Sequence[Heading | None], values: Sequence[int]) -> int:
    """First row of the table itself: labels of a title block above it name one value each, its own rows several."""
    rows = [r for r, heading in enumerate(named) if heading is not None]

    def is_broad(row: int) -> bool:
        texts = [text for c in values if (text := grid.text(row, c)) and known_unit(text) is None]
        labels = [t for t in texts if is_label(t) or t.endswith(":") or (len(t) > 1 and names_value(words, t))]
        return len(texts) > 1 and not labels

    broad = [row for row in rows if is_broad(row)]
    of_stations = [row for row in rows if (h := named[row]) is not None and h.entry.level == "station"]
    several = len(broad) > 1 and 2 * sum(1 for row in of_stations if row in set(broad)) >= len(of_stations)
    return broad[0] if several and of_stations else rows[0]


def _sample(grid: Grid, column: int, start: int) -> list[Any]:
    """Filled cells that tell what a column holds."""
    return list(islice((cell for cell in grid.columns[column][start:].tolist() if not is_blank(cell)), _SAMPLE))


def _says_parts(cells: Sequence[Any], words: Words) -> bool:
    """Whether the cells of a column say which part of a size each row states (``Max``, ``Min``)."""
    parts = sum(1 for cell in cells if type(cell) is str and words.group(cell) in ASPECTS)
    return parts >= 2 and parts >= 0.5 * len(cells)


def _holds_values(grid: Grid, column: int, named: Sequence[Heading | None], start: int) -> bool:
    """Whether a column holds values rather than remarks, as far as rows of numbers tell."""
    tell, like = 0, 0
    for row, heading in enumerate(named):
        if row < start or heading is None or heading.entry.kind not in ("number", "toleranced"):
            continue
        cell = grid.columns[column][row]
        if not is_blank(cell):
            tell += 1
            of_class = heading.entry.kind == "toleranced" and _CLASS.match(str(cell)) is not None
            like += type(cell) is not str or of_class or bool(LIKE_VALUE.match(cell)) or missing_state(cell) is not None
    return 2 * like >= tell


def _first_row(table: LongTable, words: Words) -> int:
    """First row of a table without a header: rows above its first value or section are its title."""
    grid = table.grid
    values = [c for c, role in table.roles.items() if role in ("VALUE", "COLUMN")]
    for row in range(grid.height):
        if is_blank(grid.columns[table.name][row]):
            continue
        section = section_label(grid, row, table.name)
        names_part = bool(section) and (
            bool(words.station_said(section))
            or side_of(section) is not None
            or heads_machine(grid, row, table.name, words)
        )
        if names_part or any(not is_blank(grid.columns[c][row]) for c in values):
            return row
    return 0
