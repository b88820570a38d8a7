"""Where a table with its names down a column begins that no heading of names and values stands above."""

import re
from collections.abc import Mapping, Sequence
from typing import Any

from linter.reading.cells.signs import missing_state
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.layouts.designed_columns import put_found_aside
from linter.reading.layouts.header_roles import header_roles
from linter.reading.layouts.heads import heads_a_list, heads_another
from linter.reading.layouts.heads_above import header_above, machines_above
from linter.reading.layouts.heads_of_positions import beside_positions
from linter.reading.layouts.long_table import ASPECTS, LongTable, sample, says_parts_of_size
from linter.reading.layouts.placed import part_said
from linter.reading.layouts.sections import heads_machine, numbers_rows, section_label, sections
from linter.reading.layouts.sides import Side, part_column, parts_below, side_of, within
from linter.reading.layouts.title import heads_rows, is_label, names_value
from linter.reading.words.columns import heading_of
from linter.reading.words.headings import Heading, Words
from linter.reading.words.machine_words import can_name_machine

#: A tolerance class alone (k5, H6) states a size of which only the tolerance is said.
_CLASS = re.compile(r"\s*[A-Za-z]{1,2}\d{1,2}\s*(?:\(.*\)\s*)?$")
#: Two deviations or half the band, without a size.
_DEVIATIONS = re.compile(
    r"\(?(?:[±]\s?\d[\d.,]*|(?:[+\-−]\s?\d[\d.,]*|0)\s?[/;|\s]\s?(?:[+\-−]\s?\d[\d.,]*|0))\)?(?: ?[µu]m| ?mm)?"
)
_PLAIN = re.compile(r"[\d.,]+")

#: Begins like a value, maybe with the sign of a diameter, a radius or a roughness before it.
_LIKE_SIZE = re.compile(r"(?!R-\d)[\W_]*(?:[ØøφΦϕФ]|Ra?|max\.?|min\.?)?[\W_]*\d", re.IGNORECASE)
#: The symbol of a quantity (F_r, n max, d1), and how many of them at least show a column of symbols.
_LETTER = r"[A-Za-z\u0370-\u03ff\u00b5]"
_SYMBOL = re.compile(rf"{_LETTER}{{1,3}}[\d_.,' ]*{_LETTER}{{0,5}}[\d_ ]*{_LETTER}{{0,3}}")
_FEW_SYMBOLS = 3
#: Values of one position in one column that others beside them deny, at least.
_FEW_DIFFERENT = 3


def without_header(
    grid: Grid, words: Words, name: int, score: int, parts: Mapping[int, Side] | None = None, header: int = -1
) -> LongTable | None:
    """Roles of columns by their content, where no header names a value column; ``header`` may name positions."""
    parts = parts or sections(grid, name, 0, words)
    named = [_named_by_row(grid, words, name, r, parts.get(r)) for r in range(grid.height)]
    named[max(header, 0) : header + 1] = [None] * (header + 1 - max(header, 0))  # it names positions
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
    header = header if header >= 0 else _header_above(grid, words, name, first, values)
    if header >= 0:
        values = _by_header(grid, words, header, roles, _with_positions(grid, words, header, roles, values))
        values = _without_beside(grid, words, header, roles, named, values)
    of_sizes = sum(words.group(grid.text(header, c)) in ASPECTS for c in values) if header >= 0 else 0
    if of_sizes > 1 and header_roles(grid, header, words):
        return None  # the heads of deviations or limits are no stations
    if not values:
        return None
    roles.update(_roles_of_values(grid, words, header, named, values))
    roles.update({c: "CHAR-ID" for c in range(name) if numbers_rows(grid, c, header + 1)})
    table = LongTable(grid, header, name, roles, score, header + 1)
    if table.transposed and header >= 0:
        table.machines = machines_above(grid, words, header, name, values) if header else -1
        _take_parts(table)
        put_found_aside(table, words)
    if header < 0:
        table.start = _first_row(table, words)
    return table


def _header_above(grid: Grid, words: Words, name: int, first: int, values: Sequence[int]) -> int:
    """The row that heads the values, or -1; one that names the machine beside a single column of them does not."""
    above = header_above(grid, words, name, first, values)
    of_machine = above >= 0 and len(values) == 1
    named = of_machine and can_name_machine(grid.text(above, name), grid.text(above, values[0]), words)
    return -1 if named else above


def _take_parts(table: LongTable) -> None:
    """Keep the part of each row where a column left of the names says it over groups of rows (``Shaft``)."""
    part = part_column(table.grid, table.start)
    if part is not None and part < table.name:
        table.parts = parts_below(table.grid, part, table.start)
        table.roles[part] = "SIDE"


def _named_by_row(grid: Grid, words: Words, name: int, row: int, part: Side | None) -> Heading | None:
    """What the name of a row means, by its cells too and by the part that a line above it says.

    A row of designations names no stations.
    """
    label = grid.text(row, name)
    if part is not None and label and words.heading(label) is None and (own := within(words, part, label)) is not None:
        return own
    heading = words.heading(label) if names_value(words, label) and not heads_a_list(grid, row, words) else None
    if heading is not None and side_of(section_label(grid, row, name)):
        return None  # the heading of a block of rows
    if heading is not None and heading.parameter != "station":
        return heading
    if heading is None and (not label or names_value(words, label) or heads_a_list(grid, row, words)):
        return None
    cells = [grid.text(row, c) for c in range(name + 1, grid.width)]
    judged = heading_of(label, heading, [cell for cell in cells if cell], words)
    named = judged is not None and judged.parameter in ("station", "bearing_designation")
    return judged if heading is not None or named else None


def _roles_of_values(
    grid: Grid, words: Words, header: int, named: Sequence[Heading | None], values: Sequence[int]
) -> dict[int, str]:
    """Roles of the columns of values: stations side by side, or one column of values and others nobody names."""
    keys = [heading for heading in named if heading is not None and heading.parameter == "station"]
    of_values = header >= 0 and not keys and words.group(grid.text(header, values[0])) in ("VALUE", "EXPR")
    if (header >= 0 and not of_values) or (len(keys) == 1 and len(values) > 1):
        heads = {c: grid.text(header, c) if header >= 0 else "" for c in values}
        several = sum(bool(words.station_said(head)) for head in heads.values()) > 1
        others = {c for c, head in heads.items() if several and _is_no_position(grid, header, c, head, words)}
        return {c: "COLUMN" if header < 0 or (heads[c] and c not in others) else "UNNAMED" for c in values}
    if header < 0 and len(values) > 1 and _differ(grid, named, values[:2]):
        return dict.fromkeys(values, "COLUMN")  # of two positions that nothing names, or one of them is no value
    return {c: "VALUE" if c == values[0] else "UNNAMED" for c in values}


def _differ(grid: Grid, named: Sequence[Heading | None], values: Sequence[int]) -> bool:
    """Whether two columns state different values of one position beside three names of such or more."""
    beside = [
        (grid.text(r, values[0]), grid.text(r, values[1]))
        for r, h in enumerate(named)
        if h and h.entry.level == "station"
    ]
    return sum(bool(a and b) and a != b for a, b in beside) >= _FEW_DIFFERENT


def _is_no_position(grid: Grid, header: int, column: int, head: str, words: Words) -> bool:
    """Whether a column beside two positions is none: it is headed by a word for values, or counts (``Page``)."""
    if words.station_said(head):
        return False
    cells = [cell_text(cell) for cell in sample(grid, column, header + 1)]
    pages = [int(text) for text in cells if text.isdigit()]
    return words.group(head) == "VALUE" or (len(pages) == len(cells) > 3 and pages == sorted(pages))


def _is_letter(grid: Grid, words: Words, name: int, named: Sequence[Heading | None]) -> bool:
    """Whether all that a column names is one or two signs long, and no mapping names it."""
    labels = [grid.text(r, name) for r, heading in enumerate(named) if heading is not None]
    return all(len(label) < 3 and not words.mapped(label) for label in labels)


def _by_header(grid: Grid, words: Words, header: int, roles: dict[int, str], values: list[int]) -> list[int]:
    """The columns of values that are left where a header names the others; their roles are added.

    Expressions are the values where nothing else is; beside a column headed as units no symbols (``d``) are units.
    """
    said = {column: words.group(grid.text(header, column)) for column in [*values, *roles]}
    others = [column for column in values if said[column] not in ("NOTE", "UNIT", "EXPR", "DATUM", "CHAR-ID", "RESULT")]
    heads = ("NOTE", "UNIT", "DATUM", "CHAR-ID", *(["RESULT"] if others else []), *(["EXPR"] if others else []))
    units = [column for column, role in said.items() if role == "UNIT"]
    roles |= {column: "NOTE" for column, role in roles.items() if units and role == "UNIT"}
    roles |= {column: role for column, role in said.items() if role in heads}
    symbols = [c for c in others if said[c] == "NAME" and c not in roles and _are_short_words(grid, c, header + 1)]
    roles |= dict.fromkeys(symbols, "NOTE")
    return [c for c in values if c not in roles]


def _without_beside(
    grid: Grid, words: Words, header: int, roles: dict[int, str], named: Sequence[Heading | None], values: list[int]
) -> list[int]:
    """The columns of values without those that number pages or lines beside positions."""
    beside = beside_positions(grid, words, header, named, values)
    roles |= dict.fromkeys(beside, "NOTE")
    return [column for column in values if column not in beside]


def _with_positions(grid: Grid, words: Words, header: int, roles: dict[int, str], values: Sequence[int]) -> list[int]:
    """The columns of values with those that their cells show as another sort, headed by a position beside ``Unit``."""
    headed = [column for column in range(grid.width) if words.group(grid.text(header, column)) == "UNIT"]
    others = [column for column, role in roles.items() if role in ("UNIT", "NOTE")] if headed else []
    placed = [column for column in others if words.names.station(grid.text(header, column))]
    for column in placed:
        del roles[column]
    return sorted([*values, *placed])


def _roles_by_content(
    grid: Grid, words: Words, name: int, named: Sequence[Heading | None], start: int
) -> tuple[dict[int, str], list[int]]:
    """Roles of the columns of units, parts and notes, and the columns that hold values."""
    first = next(r for r, heading in enumerate(named) if heading is not None and r >= start)
    roles: dict[int, str] = {}
    values: list[int] = []
    for column in range(name + 1, grid.width):
        cells = sample(grid, column, first)
        if not cells:
            continue
        units = sum(1 for cell in cells if type(cell) is str and known_unit(cell.strip("[]() ")) is not None)
        if (
            values
            and "CLASS" not in roles.values()
            and (_are_classes(cells) or _hold_deviations(grid, column, named, first))
        ):
            roles[column] = "CLASS"
        elif says_parts_of_size(cells, words):  # max, min: the latter is a unit too
            roles[column] = "PART"
        elif units and units >= 0.5 * sum(1 for cell in cells if cell_text(cell) not in ("-", "–", "1")):
            roles[column] = "UNIT"
        elif (values and not _holds_values(grid, column, named, first)) or _holds_symbols(grid, column, named, first):
            roles[column] = "NOTE"
        else:
            values.append(column)
    return roles, values


def _are_classes(cells: Sequence[Any]) -> bool:
    """Whether cells, two of them or more, are tolerance classes and nothing else."""
    return len(cells) > 1 and all(type(cell) is str and _CLASS.fullmatch(cell) is not None for cell in cells)


def _hold_deviations(grid: Grid, column: int, named: Sequence[Heading | None], start: int) -> bool:
    """Whether a column states deviations beside each size that it says more of, two or more; units beside the others.

    ``30 | +0,002/-0,004``, ``12000 | U/min``, ``30 | ±0.01``.
    """
    sizes = [h is not None and h.entry.kind == "toleranced" for h in named]
    texts = [(of_size, text) for r, of_size in enumerate(sizes) if r >= start and (text := grid.text(r, column))]
    beside = [text for of_size, text in texts if of_size and known_unit(text) is None]
    others = [text for of_size, text in texts if not of_size and text[0].isdigit() and known_unit(text) is None]
    return len(beside) > 1 and all(map(_DEVIATIONS.fullmatch, beside)) and not any(map(_PLAIN.fullmatch, others))


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
            like += type(cell) is not str or of_class or bool(_LIKE_SIZE.match(cell)) or missing_state(cell) is not None
    return 2 * like >= tell


def _holds_symbols(grid: Grid, column: int, named: Sequence[Heading | None], start: int) -> bool:
    """Whether a column holds a short word beside each name of a number and no value: the symbols of the names."""
    found = [(h, grid.text(r, column)) for r, h in enumerate(named) if r >= start and h is not None]
    told = [(h.entry.kind, text) for h, text in found if h.entry.kind in ("number", "toleranced") and text]
    classed = any(kind == "toleranced" and _CLASS.match(text) for kind, text in told)
    symbols = all(_SYMBOL.fullmatch(text) and not missing_state(text) for _, text in told)
    return len(told) >= _FEW_SYMBOLS and symbols and not classed


def _are_short_words(grid: Grid, column: int, start: int) -> bool:
    """Whether all cells of a column that is headed as one of names are short words, as symbols of quantities are."""
    cells = sample(grid, column, start)
    return bool(cells) and all(type(cell) is str and _SYMBOL.fullmatch(cell.strip()) for cell in cells)


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
            or part_said(section, words) is not None
            or heads_machine(grid, row, table.name, words)
        )
        if names_part or any(not is_blank(grid.columns[c][row]) for c in values):
            return row
    return 0
