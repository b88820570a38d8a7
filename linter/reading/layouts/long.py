"""Tables with the parameter names down a column: one row per parameter, or one column per station (transposed)."""

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Grid
from linter.reading.layouts import part_heads
from linter.reading.layouts.candidate import Candidate, Outside
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
    """Cut from a table what stands below it beside its column of names: labels and values of the machine; or None."""
    grid = table.grid
    below = foot_of(grid, words, table.name) if table.header >= 0 and not table.transposed else grid.height
    named = [text for row in range(below, grid.height) if (text := grid.text(row, table.name))]
    if not table.start < below < grid.height or not all(known_unit(text) is not None for text in named):
        return None
    table.grid = grid.cut(slice(0, below))
    return grid.cut(slice(below, None))


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
        if table.spans:
            return read_spans(table, words, found, outside)
        by_row = ByItem if table.items else ByRow
        foot = _foot(table, words)
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
