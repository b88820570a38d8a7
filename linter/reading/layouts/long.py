"""Tables with the parameter names down a column: one row per parameter, or one column per station (transposed)."""

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Grid
from linter.reading.layouts import part_heads
from linter.reading.layouts.candidate import Candidate, Outside
from linter.reading.layouts.filled_objects import tell_filled
from linter.reading.layouts.find_long import find_long
from linter.reading.layouts.foot import foot_of, take_foot
from linter.reading.layouts.item_rows import ByItem
from linter.reading.layouts.long_rows import ByRow
from linter.reading.layouts.long_table import LongTable
from linter.reading.layouts.position_spans import read_spans
from linter.reading.layouts.prefixes import without_prefix
from linter.reading.layouts.station_columns import tell_machines
from linter.reading.layouts.strips import Block, Found
from linter.reading.layouts.transposed import ByColumn
from linter.reading.words.headings import Words


def _foot(table: LongTable, words: Words) -> Grid | None:
    """Cut from a table what stands below it beside its columns: labels and values of the machine; or None."""
    grid = table.grid
    below = grid.height
    if not table.transposed and not table.spans and table.header >= 0:
        below = foot_of(grid, words, table.name)
        named = [text for row in range(below, grid.height) if (text := grid.text(row, table.name))]
        below = below if all(known_unit(text) is not None for text in named) else grid.height
    if not table.transposed and below == grid.height:
        below = _before_units(table)
    if table.transposed and table.header >= 0:
        below = _title_below(table, words)
    if not table.start < below < grid.height:
        return None
    table.grid = grid.cut(slice(0, below))
    return grid.cut(slice(below, None))


def _title_below(table: LongTable, words: Words) -> int:
    """First row below a blank one where labels and values of the machine stand that are no rows of the table.

    Their values stand where the table has its units, or labels stand below its positions.
    """
    grid = table.grid
    blank = [row for row in range(table.start, grid.height) if not grid.filled[row]]
    start = next((row for row in reversed(blank) if any(grid.filled[row:])), grid.height)
    of_machine, others, apart = 0, 0, False
    for row in range(start, grid.height):
        cells = [*grid.texts(row).items()]
        if len(cells) == 3 and known_unit(cells[2][1]) is not None:
            del cells[2]
        if len(cells) % 2 or [column for column, _ in cells[:2]] not in ([], [table.name, table.name + 1]):
            return grid.height
        values = [text for _, text in cells[1::2] if len(text) > 1]  # the letter of a revision may be a unit too
        if any(_of_machine(text, words) or known_unit(text) is not None for text in values):
            return grid.height
        labels = [text for _, text in cells[::2]]
        machine = sum(_of_machine(text, words) for text in labels)
        of_machine, others = of_machine + machine, others + len(labels) - machine
        apart |= bool(cells) and (len(cells) > 2 or table.roles.get(table.name + 1) == "UNIT")
    return start if apart and of_machine > 1 and of_machine >= others else grid.height


def _of_machine(text: str, words: Words) -> bool:
    heading = words.heading(text)
    return heading is not None and heading.entry.level == "machine"


def _before_units(table: LongTable) -> int:
    """First row of the last ones that state name, value and unit, where the table states the unit before the value."""
    grid, units = table.grid, [c for c, role in table.roles.items() if role == "UNIT"]
    start = grid.height
    if len(units) != 1 or units[0] != table.name + 1 or units[0] + 1 >= grid.width:
        return start
    for row in range(grid.height - 1, table.start, -1):
        if grid.filled[row] < 2:
            continue  # blank, or a note
        name, value, unit = (grid.text(row, table.name + k) for k in range(3))
        swapped = name and value and known_unit(value) is None and (not unit or known_unit(unit) is not None)
        if not swapped or grid.filled[row] > 3:
            break
        start = row
    return start if start < grid.height and not grid.filled[start - 1] else grid.height


def find(grid: Grid, words: Words) -> Candidate | None:
    """The best reading of a grid with names down a column, or None."""
    if (of_parts := part_heads.find(grid, words)) is not None:
        return of_parts
    table = find_long(without_prefix(grid, words), words) if grid.height <= LONGEST_MIXED else None
    if table is None:
        return None
    layout = "one column per station (transposed)" if table.transposed else "one row per parameter"

    def read(found: Found, outside: Outside) -> Block:
        tell_machines(table, words, found)
        tell_filled(table, found)
        foot = _foot(table, words)
        if table.spans:
            block = read_spans(table, words, found, outside)
        else:
            by_row = ByItem if table.items else ByRow
            block = (ByColumn if table.transposed else by_row)(table, words, found, outside).read()
        if foot is not None:
            take_foot(foot, block, words, found)
        return block

    return Candidate(
        score=table.score,
        where="in one column",
        start=next((row for row in (table.machines, table.header) if row >= 0), table.start),
        heading=range(table.header, table.header + 1),
        headed=table.header >= 0 and (bool({"VALUE", "EXPR"} & {*table.roles.values()}) or bool(table.spans)),
        alone=table.score >= 2,
        words=[text for row in range(min(grid.height, 12)) if (text := grid.text(row, table.name))],
        layout_of=lambda block: layout,
        read=read,
    )
