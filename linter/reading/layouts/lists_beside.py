"""Lists of names and values side by side: one heading row in which the same headings come again, or pairs in turn."""

from linter.reading.files.grids import LONGEST_MIXED, Grid
from linter.reading.layouts.header_roles import header_roles
from linter.reading.words.headings import Words

#: Rows in which the heading is looked for, and columns of a list at least.
_HEAD, _LEAST = 30, 2
#: Rows of a block of labels and values in turn, at most.
_FEW_ROWS = 12
_STATES = {"VALUE", "EXPR", "UPPER", "LOWER", "MAX", "MIN"}


def lists_beside(grid: Grid, words: Words) -> tuple[int, list[tuple[int, int]]] | None:
    """First row and columns of lists side by side, or None.

    Words above the first column of each (``Shaft``, ``Housing``) go with their lists.
    """
    if grid.height > LONGEST_MIXED:
        return None
    if grid.height <= _FEW_ROWS and (spans := _pairs_beside(grid, words)):
        return 0, spans
    for row in range(min(grid.height - 1, _HEAD)):
        labels = [grid.text(row, column) for column in range(grid.width)]
        first = next((column for column, label in enumerate(labels) if label), grid.width)
        starts = [column for column in range(first, grid.width) if labels[column] and labels[column] == labels[first]]
        if len(starts) < 2 or not _same(labels, starts):
            continue
        roles = header_roles(grid.cut(slice(row, None), slice(starts[0], starts[1])), 0, words)
        if roles.get(0) not in ("NAME", "STATION") or not _STATES & {*roles.values()}:
            continue
        above = {column for column in range(grid.width) if grid.text(row - 1, column)} if row else set()
        top = row - 1 if len(above) > 1 and above <= {*starts} else row
        return top, list(zip(starts, [*starts[1:], grid.width], strict=True))
    return None


def _pairs_beside(grid: Grid, words: Words) -> list[tuple[int, int]]:
    """Columns of labels and values side by side, where all rows are such pairs and each pair tells of a position.

    ``Radial load front | 900 | Radial load rear | 700``: what stands in the first row heads nothing.
    """
    rows = [[*grid.texts(row)] for row in range(grid.height) if grid.filled[row]]
    most = max(rows, key=len, default=[])
    if len(most) < 4 or len(most) % 2 or any(row != most[: len(row)] or len(row) % 2 for row in rows):
        return []
    starts = most[::2]
    named = [words.heading(grid.text(row, c)) for row in range(grid.height) for c in starts[1:] if grid.text(row, c)]
    figures = all(text[0].isdigit() for row in range(grid.height) for c in most[3::2] if (text := grid.text(row, c)))
    told = len(named) > 1 and all(heading is not None and heading.station for heading in named)
    return list(zip(starts, [*starts[1:], grid.width], strict=True)) if told and figures else []


def _same(labels: list[str], starts: list[int]) -> bool:
    """Whether the headings behind each start are the same, blank columns put aside."""
    pieces = [
        [label for label in labels[a:b] if label] for a, b in zip(starts, [*starts[1:], len(labels)], strict=True)
    ]
    return len(pieces[0]) >= _LEAST and all(piece == pieces[0] for piece in pieces)
