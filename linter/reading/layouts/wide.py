"""Tables with a heading row: one row per station (or per machine), one column per parameter."""

from linter.reading.files.grids import LONGEST_MIXED, Grid
from linter.reading.layouts.bill import find_bill
from linter.reading.layouts.candidate import Candidate, Outside
from linter.reading.layouts.strips import Block, Found
from linter.reading.layouts.wide_heading import WideTable, find_wide
from linter.reading.layouts.wide_rows import read_wide
from linter.reading.words.column_words import KEYS
from linter.reading.words.columns import key_of
from linter.reading.words.headings import Words

#: Where the names of this layout stand.
WHERE = "in one row"


def _names_stations(table: WideTable, words: Words) -> bool:
    """Whether a column is of the stations, or headed by a word for a place."""
    named = any(h is not None and h.parameter == "station" for h in table.headings)
    return named or any(label and key_of(label, words).strip(" .") in KEYS["place"] for label in table.labels)


def find(grid: Grid, words: Words) -> Candidate | None:
    """The best heading row of a grid with what stands below it, or None."""
    table = find_wide(grid, words)
    if grid.height <= LONGEST_MIXED and (table is None or sum(h is not None for h in table.headings) < 2):
        table = find_bill(grid, words) or table
    if table is None:
        return None

    def read(found: Found, outside: Outside) -> Block:
        return read_wide(table, words, found, outside)

    def layout(block: Block) -> str:
        return "one row per station" if any(block.stations) else "one row per machine"

    return Candidate(
        score=table.score,
        where=WHERE,
        start=table.top,
        heading=range(table.top, table.bottom + 1),
        headed=False,
        alone=_names_stations(table, words),
        words=[label for label in table.labels if label],
        layout_of=layout,
        read=read,
    )
