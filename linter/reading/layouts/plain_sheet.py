"""A sheet before its layout is looked for: what firms put among its words and values and what says nothing of them."""

from linter.reading.files.grids import Grid
from linter.reading.layouts.arrangement_heads import with_roles_named
from linter.reading.layouts.machine_paths import with_machines_of_paths
from linter.reading.layouts.machines_over import with_machines_over
from linter.reading.layouts.numbered_heads import with_numbered_heads
from linter.reading.layouts.numbers_before import without_numbers
from linter.reading.layouts.other_seats import without_other_seats
from linter.reading.layouts.other_tables import with_other_tables_below
from linter.reading.layouts.parts_before_heads import with_parts_above
from linter.reading.layouts.parts_by_sizes import with_parts_told
from linter.reading.layouts.remarked_sections import with_remarks_apart
from linter.reading.layouts.strips import Found
from linter.reading.layouts.symbol_rows import without_symbols
from linter.reading.words.headings import Words


def plain_sheet(grid: Grid, words: Words, found: Found) -> Grid:
    """The grid without numbers before names and rows of symbols, with its parts above their heads; or as it is."""
    grid = without_other_seats(grid, words, found)
    grid = with_numbered_heads(with_remarks_apart(with_other_tables_below(grid, words), words), words)
    grid = with_roles_named(without_numbers(grid, words), words)
    grid = with_parts_told(with_parts_above(without_symbols(grid, words), words), words, found)
    return with_machines_over(with_machines_of_paths(grid, words), words, found)
