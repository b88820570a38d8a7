"""Values stated again, alike, where other values of the same position are stated twice and differ.

Two positions that a table's layout did not keep apart look like one: what differs is asked about, and what happens to
be alike (one size of bearing at both ends) would be taken once and lost for the other. It is listed.
"""

from collections import Counter
from collections.abc import Callable, Iterable, Iterator

from linter.model.stations import Problem, Unused
from linter.model.vocabulary import Parameter
from linter.reading.files.grids import cell_text
from linter.reading.files.intake import visible
from linter.reading.settling.one_value import Stated

#: So many parameters at odds make two positions of one likely.
AT_ODDS = 2
AGAIN = "stated again, alike, where other values differ: it may be another position's"
_AT_MOST = 100


def said_again(
    file: str,
    used: Iterable[tuple[Parameter, list[Stated]]],
    row_of: Callable[[Parameter, int], int],
    problems: Iterable[Problem],
) -> Iterator[Unused]:
    """Cells that state a value again of a position of which at least :data:`AT_ODDS` values differ."""
    twice = [p for p in problems if p.code == "stated-twice" and p.row is not None]
    at_odds = Counter(p.row for p in twice)
    told = {(p.place.sheet, p.place.cell or p.place.pointer) for p in twice if p.place is not None}
    rows = {row for row, count in at_odds.items() if count >= AT_ODDS}
    count = 0
    for entry, stated in used if rows else ():
        if entry.name in ("machine", "station"):
            continue
        first: dict[int, tuple[str | None, str]] = {}
        for one in (one for one in stated if one.strip.aspect == "value"):
            for group, cell in zip(one.group.tolist(), one.cell.tolist(), strict=True):
                text = cell_text(one.strip.cells[cell])
                if not text or row_of(entry, group) not in rows or count >= _AT_MOST:
                    continue
                at = (one.strip.sheet, one.strip.at(cell))
                if first.setdefault(group, at) != at and at not in told:
                    count += 1
                    yield Unused(visible(one.strip.label, 60), visible(text, 40), one.strip.place(file, cell), AGAIN)
