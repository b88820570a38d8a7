"""Which layout a file has, and its cells by parameter, row and place."""

from typing import Any

from linter.reading.blocks import Found
from linter.reading.grids import Grid
from linter.reading.headings import Words
from linter.reading.intake import visible
from linter.reading.wide import find_wide, read_wide


def lay_out_grid(grid: Grid, words: Words, found: Found) -> None:
    """Add the tables of one sheet or text table to what was found."""
    table = find_wide(grid, words)
    if table is None:
        found.say(
            f"sheet {visible(grid.sheet)}: no table is recognised; not read" if grid.sheet else "no table is recognised"
        )
        for column in range(grid.width):
            for row in range(min(grid.height, 3)):
                if text := grid.text(row, column):
                    found.seen.append(text)
        return
    found.seen.extend(label for label in table.labels if label)
    found.layouts.append("one row per station")
    found.blocks.append(read_wide(table, words, found, ""))
