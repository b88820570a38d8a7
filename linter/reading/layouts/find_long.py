"""Where a table with its names down a column begins, and what its other columns hold."""

from linter.reading.files.grids import Grid
from linter.reading.layouts.beside import feature_beside
from linter.reading.layouts.filled_objects import objects_filled, things_of_rows
from linter.reading.layouts.header_roles import header_roles
from linter.reading.layouts.heads_of_positions import columns_of_positions, names_of_positions
from linter.reading.layouts.long_table import SAMPLE, LongTable, are_symbols, names_below, sample, says_parts_of_size
from linter.reading.layouts.long_unheaded import without_header
from linter.reading.layouts.parts_list import find_parts_list
from linter.reading.layouts.placed import Placed, placed_column
from linter.reading.layouts.position_spans import find_joined, find_spans
from linter.reading.layouts.requirement_columns import kinds_below, requirements_below
from linter.reading.layouts.sections import named_by_part, section_label, sections
from linter.reading.layouts.sides import THING, Side, part_column, parts_below, says_parts, side_above, side_of
from linter.reading.layouts.station_columns import (
    drop_groups,
    judge_numbers,
    machines_of_rows,
    numbered_stations,
    positions_in_machines,
    stations_by_cells,
    stations_of_objects,
)
from linter.reading.words.headings import Words

_MOST_COLUMNS = 30
#: Rows of a title above groups of parts, and rows that such groups have together at least.
_MOST_ABOVE, _ENOUGH = 20, 4


def find_long(grid: Grid, words: Words) -> LongTable | None:
    """The best reading of a grid with names down a column, or None."""
    positioned = False
    for row in range(min(grid.height - 1, 50)):
        if (table := find_spans(grid, row, words) or find_joined(grid, row, words)) is not None:
            return table
        if (table := find_parts_list(grid, row, words)) is not None:
            return table
        roles = header_roles(grid, row, words)
        found = set(roles.values())
        stated = found & {"EXPR", "UPPER", "LOWER", "MAX", "MIN"} and "NAME" in found
        measured = (
            "RESULT" in found and found & {"NAME", "CHAR-ID"} and not columns_of_positions(grid, row, roles, words)
        )
        heads = "VALUE" in found or stated or measured
        if heads and (table := _headed(grid, row, roles, words)) is not None:
            return table
        if not positioned and (columns := columns_of_positions(grid, row, roles, words)):
            positioned = True  # the first such row alone: others may head blocks below it
            if (named := names_of_positions(grid, row, columns[0], roles, words)) is not None:
                return without_header(grid, words, named.column, named.score, named.parts, row)
    part, parts = _groups(grid, words)
    counts = {
        c: names_below(grid, c, 0, words) + named_by_part(grid, c, parts or sections(grid, c, 0, words), words)
        for c in range(min(grid.width, _MOST_COLUMNS))
        if c != part
    }
    full = {c: count for c, count in counts.items() if count > 2 and not are_symbols(grid, c, 0)}
    best = max(full or counts, key=lambda c: counts[c], default=-1)
    return without_header(grid, words, best, counts[best], parts) if best >= 0 and counts[best] else None


def _groups(grid: Grid, words: Words) -> tuple[int, dict[int, Side]]:
    """The first column where it says the part of the names beside it, below some heading; -1 and nothing else."""
    for start in range(1, min(grid.height - 2, _MOST_ABOVE)) if grid.width > 2 and says_parts(grid, 0) else ():
        if part_column(grid, start) == 0 and len(parts := parts_below(grid, 0, start)) >= _ENOUGH:
            named = named_by_part(grid, 1, parts, words) + names_below(grid, 1, start, words)
            return (0, parts) if named > max(names_below(grid, 0, start, words), 2) else (-1, {})
    return -1, {}


def _headed(grid: Grid, row: int, roles: dict[int, str], words: Words) -> LongTable | None:
    """The table below a heading of names and values."""
    grid, filled = objects_filled(grid, row, roles, words)
    candidates = _candidates(grid, row, roles, words)
    both = _placed_column(grid, row, roles, words)
    part = part_column(grid, row + 1) if both is None else both[0]
    if both is not None:
        parts = {r: said.side for r, said in both[1].items()}
    else:
        parts = parts_below(grid, part, row + 1) if part is not None else _below_part(grid, row, words)
    counts = {
        c: names_below(grid, c, row + 1, words)
        + named_by_part(grid, c, parts or sections(grid, c, row + 1, words), words)
        for c in candidates
        if c != part
    }
    if len(full := {c: count for c, count in counts.items() if count and not are_symbols(grid, c, row + 1)}) > 0:
        counts = full  # symbols stand beside the names
    own = names_below(grid, part, row + 1, words) if part in candidates else 0
    most = max(counts.values(), default=0)
    if part is not None and own > (3 * most if both is not None and most > 2 else most):
        counts, part, parts, both = {part: own}, None, {}, None  # "Shaft seat", "Housing seat" are the names themselves
    best = max(counts, key=lambda c: counts[c], default=-1)
    if best < 0 or not counts[best]:
        return None
    roles.pop(best, None)
    judge_numbers(grid, roles, row + 1)
    if part is not None:
        roles[part] = "SIDE"
    for column in set(range(grid.width)) - {best}:
        if roles.get(column, "NOTE") == "NOTE" and says_parts_of_size(sample(grid, column, row + 1), words):
            roles[column] = "PART"
    stations_by_cells(grid, best, part, roles, row + 1, words)
    kinds_below(grid, best, roles, row + 1)
    requirements_below(grid, best, roles, row + 1)
    _beside(grid, row, best, roles, parts, words)
    drop_groups(grid, best, roles, row + 1, words)
    positions_in_machines(grid, best, roles, row + 1, words)
    numbered_stations(grid, best, part, roles, row + 1, words)
    machines_of_rows(grid, best, roles, row + 1, words)
    if both is not None:
        objects = {r: said.station for r, said in both[1].items()}
    else:
        objects = stations_of_objects(grid, best, roles, row + 1, words)
        parts |= things_of_rows(grid, best, roles, objects, row + 1, words)
    return LongTable(grid, row, best, roles, counts[best], row + 1, parts, objects, filled=filled)


def _candidates(grid: Grid, header: int, roles: dict[int, str], words: Words) -> list[int]:
    """Columns that may hold the names; where remarks alone do, any below a text that is no name itself, too."""
    named = [c for c, role in roles.items() if role in ("NAME", "NOTE", "CHAR-ID")]
    remarks = "NAME" not in roles.values() and any(names_below(grid, c, header + 1, words) for c in named)
    symbols = [c for c, role in roles.items() if role == "NAME"]
    remarks |= bool(symbols) and all(are_symbols(grid, c, header + 1) for c in symbols)
    others = range(min(grid.width, _MOST_COLUMNS) if remarks else 0)
    heads = {c: text for c in others if c not in roles and (text := grid.text(header, c))}
    return named + [c for c, text in heads.items() if words.heading(text) is None]


def _below_part(grid: Grid, header: int, words: Words) -> dict[int, Side]:
    """The part of every row, where the word for it stands right above the heading and none below (``Shaft``).

    A word for a housing that is one for a place too names a position with a letter behind it (``Supporto A``).
    """
    side = side_above(grid, header) if header else None
    heading = words.heading(side.word) if side is not None else None
    side = None if heading is not None and heading.parameter == "station" and heading.station else side
    rows = range(header + 1, grid.height)
    if side is None or any(side_of(section_label(grid, r, c)) for r in rows for c in range(min(grid.width, 2))):
        return {}
    return dict.fromkeys(rows, side)


def _placed_column(
    grid: Grid, header: int, roles: dict[int, str], words: Words
) -> tuple[int, dict[int, Placed]] | None:
    """A column that says part and position of each row, where no other one names stations.

    One headed by a word for a place does where its texts say a part of each position (``軸 A``, ``軸受 A``).
    """
    if places := [column for column, role in roles.items() if role == "STATION"]:
        both = placed_column(grid, places, header + 1, words)
        several = both is not None and len({said.side.side for said in both[1].values()} - {THING}) > 2
        return both if several else None
    columns = [c for c in range(grid.width) if roles.get(c, "NOTE") in ("NOTE", "NAME", "CHAR-ID", "KIND", "MACHINE")]
    return placed_column(grid, columns, header + 1, words)


def _beside(grid: Grid, header: int, name: int, roles: dict[int, str], parts: dict[int, Side], words: Words) -> None:
    """Columns whose heading says another feature of what each row names (``Shaft seat`` in the column ``Ra``)."""
    rows = range(header + 1, min(grid.height, header + 1 + SAMPLE))
    texts = {(text, parts.get(row)) for row in rows if (text := grid.text(row, name))}
    for column in range(grid.width):
        label = grid.text(header, column)
        if column == name or not label or roles.get(column) or words.heading(label) is not None:
            continue
        if any(feature_beside(words, text, label, side) is not None for text, side in texts):
            roles[column] = "BESIDE"
