"""Columns of objects that name each only above the rows of it (``Front bearing``, blank, blank, ``Rear bearing``)."""

from collections.abc import Mapping

from attrs import evolve

from linter.reading.files.grids import Grid, object_column
from linter.reading.layouts.long_table import LongTable
from linter.reading.layouts.sides import THING, Side, part_or_rotor
from linter.reading.layouts.strips import Found, filled_down
from linter.reading.words.boundary import DIMENSIONS
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said

#: Columns and rows that are looked at, and rows of an object at least, on the average.
_COLUMNS, _MOST_ROWS, _ROWS_EACH = 4, 2000, 2


def objects_filled(grid: Grid, header: int, roles: Mapping[int, str], words: Words) -> tuple[Grid, dict[int, int]]:
    """The grid with such a column filled down below a heading, and the column of each row that was blank there.

    Two of the objects at least are bearing positions, with the same names beside them.
    """
    values = next((c for c, role in roles.items() if role in ("VALUE", "EXPR")), grid.width)
    rows = range(header + 1, min(grid.height, header + 1 + _MOST_ROWS))
    for column in range(min(values, _COLUMNS)):
        if roles.get(column, "NOTE") in ("NOTE", "NAME", "KIND", "MACHINE") and _names_objects(
            grid, column, rows, words
        ):
            return _filled(grid, column, rows)
    return grid, {}


def _names_objects(grid: Grid, column: int, rows: range, words: Words) -> bool:
    stated = [row for row in rows if grid.filled[row] > 1]
    texts = [text for row in stated if (text := grid.text(row, column))]
    grouped = len(texts) > 1 and len({*texts}) == len(texts) and _ROWS_EACH * len(texts) <= len(stated)
    if not grouped or not grid.text(stated[0], column):
        return False
    places = {text for text in texts if len(text) > 1 and words.station_said(text)}
    if len(places) < 2:
        return False
    beside: dict[str, set[str]] = {}
    current = ""
    for row in stated:
        current = grid.text(row, column) or current
        label = next((text for c in range(column + 1, grid.width) if (text := grid.text(row, c))), "")
        beside.setdefault(current, set()).add(label)
    first, *others = (beside[text] for text in places)
    return all(first & other for other in others)


def things_of_rows(
    grid: Grid, name: int, roles: Mapping[int, str], objects: Mapping[int, str], start: int, words: Words
) -> dict[int, Side]:
    """The part or thing of rows that are of no position, in a column of objects (``Rotor``, ``Housing``, ``Impeller``).

    Sizes of what is no part of a position (``Impeller``: *bore*) are of none.
    """
    column = next((c for c, role in roles.items() if role == "STATION-OF"), None)
    found: dict[int, Side] = {}
    for row in range(start, grid.height if column is not None else start):
        text, label = grid.text(row, column or 0), grid.text(row, name)
        if row in objects or not text:
            continue
        if (side := part_or_rotor(text)) is not None:
            found[row] = side
        elif not words.of_whole(text) and _is_size(label, words):
            found[row] = Side(THING, text)
    return found


def _is_size(label: str, words: Words) -> bool:
    heading = words.heading(label) if label else None
    if heading is None:
        return bool(concepts_said(label) & {"bore", "diameter", "seat", "shoulder"})
    of_part = heading.parameter.startswith(("shaft_", "housing_"))
    return heading.entry.level == "station" and (of_part or heading.parameter in DIMENSIONS)


def _filled(grid: Grid, column: int, rows: range) -> tuple[Grid, dict[int, int]]:
    cells, filled = grid.columns[column].tolist(), dict[int, int]()
    current = None
    for row in rows:
        if not grid.filled[row]:
            current = None
        elif grid.text(row, column):
            current = cells[row]
        elif current is not None and grid.filled[row] > 1:
            cells[row], filled[row] = current, column
    columns = [*grid.columns]
    columns[column] = object_column(cells)
    return evolve(grid, columns=columns), filled


def tell_filled(table: LongTable, found: Found) -> None:
    """The assumption that the rows below an object are of it."""
    if table.filled:
        row, column = next(iter(table.filled.items()))
        found.problems.append(filled_down(table.grid.place(row, column), len(table.filled), "row", "station"))
