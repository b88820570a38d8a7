"""A row that heads names on the left and positions side by side right of them, whatever word stands over the names."""

import re
from collections.abc import Sequence

from attrs import frozen

from linter.reading.files.grids import Grid
from linter.reading.layouts.heads_above import LIKE_VALUE
from linter.reading.layouts.long_table import SAMPLE, names_below
from linter.reading.layouts.sections import named_by_part, sections
from linter.reading.layouts.sides import Side, part_column, parts_below, side_of
from linter.reading.words.designations import read_designation
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said

#: A number as of a page or a line, or a date: no size of a seat and no bearing where positions state these.
_OF_PAGES = re.compile(
    r"\d{1,2}|\d{4}-\d\d-\d\d(?:[T ].*)?|\d{1,2}([./])\d{1,2}\1(?:\d\d)?\d\d|\d{4}([./])\d{1,2}\2\d{1,2}"
)
#: Names that stand below a word that may head values or nothing of ours.
_ENOUGH = 3
#: Rows below a head in which its positions may come again.
_FARTHEST = 200
#: What a word over letters may say of which they are codes (``Material code | A | B``), and no positions.
_OF_OTHERS = frozenset(("material", "class", "grade", "quality", "revision", "drawing", "tolerance", "duty"))
#: What a column of names may be headed as, if at all.
_OVER_NAMES = ("NAME", "VALUE", "NOTE", "KIND")


@frozen
class Named:
    """A column of names, the part of each of its rows as far as it is said, and how many names are known."""

    column: int
    parts: dict[int, Side]
    score: int


def columns_of_positions(grid: Grid, row: int, roles: dict[int, str], words: Words) -> list[int]:
    """Columns of a heading row that are positions (``DE | NDE | Measured``); fewer than two are none.

    Numbers are where they count neighbouring columns beside a word for names, and bearings stand below all of them.
    """
    texts = {c: text for c in range(grid.width) if roles.get(c, "STATION") == "STATION" and (text := grid.text(row, c))}
    found = [column for column, text in texts.items() if not LIKE_VALUE.match(text) and words.station_said(text)]
    if not found and {"NAME", "NOTE"} & set(roles.values()):
        found = [c for c, text in texts.items() if text.isdigit()]
        counted = [(c - found[0], int(texts[c])) for c in found] == [(k, k + 1) for k in range(len(found))]
        found = found if counted and _stand_over_bearings(grid, row, found) else []
    return found if len(found) > 1 else []


def counts_positions(grid: Grid, row: int) -> bool:
    """Whether the numbers of a row of a workbook count neighbouring columns from one, as positions may be."""
    found = [
        (c, text) for c in range(grid.width) if type(grid.columns[c][row]) is not str and (text := grid.text(row, c))
    ]
    return len(found) > 1 and [(c, text) for c, text in found] == [
        (found[0][0] + k, f"{k + 1}") for k in range(len(found))
    ]


def _stand_over_bearings(grid: Grid, header: int, columns: Sequence[int]) -> bool:
    rows = range(header + 1, min(grid.height, header + 1 + SAMPLE))
    return any(all(read_designation(grid.text(row, c)).derived for c in columns) for row in rows)


def beside_positions(
    grid: Grid, words: Words, header: int, named: Sequence[Heading | None], columns: Sequence[int]
) -> list[int]:
    """Columns beside two positions or more that are none: their heads say no position, their cells no size or bearing.

    ``Page`` over 4, 4, 5 stands beside 6210 and 50 k5, as does a date.
    """
    placed = [c for c in columns if words.station_said(grid.text(header, c))]
    if not 1 < len(placed) < len(columns):
        return []
    rows = [r for r, h in enumerate(named) if r > header and h is not None and _is_telling(h)]

    def counts(column: int) -> bool:
        texts = [text for row in rows if (text := grid.text(row, column))]
        return bool(texts) and all(map(_OF_PAGES.fullmatch, texts))

    return [] if any(map(counts, placed)) else [c for c in columns if c not in placed and counts(c)]


def _is_telling(heading: Heading) -> bool:
    return heading.parameter == "bearing_designation" or heading.entry.kind == "toleranced"


def values_are_names(grid: Grid, row: int, roles: dict[int, str], words: Words) -> None:
    """A word for values or places (``Angabe``, ``Stelle``) heads names that stand below it, beside positions."""
    columns = [c for c, role in roles.items() if role == "VALUE" or _heads_places(grid, row, c, words)]
    places = columns_of_positions(grid, row, roles, words) if columns and "NAME" not in roles.values() else []
    of_columns = bool(places) and row > 0 and sum(grid.text(row - 1, c) != "" for c in places) > 1
    if of_columns and roles.get(columns[0]) != "VALUE":
        return  # the row above states something of each position: the machine it is of
    if places and columns[0] < places[0] and _are_names(grid, columns[0], row + 1, words):
        roles[columns[0]] = "NAME"


def _heads_places(grid: Grid, row: int, column: int, words: Words) -> bool:
    """Whether a heading is a word for positions (``Stelle``), none itself (``Position A``) and not said again below."""
    text = grid.text(row, column)
    heading = words.heading(text)
    of_places = heading is not None and heading.parameter == "station" and not heading.station
    return of_places and all(grid.text(below, column) != text for below in range(row + 1, grid.height))


def _are_names(grid: Grid, column: int, start: int, words: Words) -> bool:
    """Whether a column holds names of ours and hardly anything that begins like a value."""
    texts = [text for row in range(start, min(grid.height, start + SAMPLE)) if (text := grid.text(row, column))]
    values = sum(LIKE_VALUE.match(text) is not None for text in texts)
    return 3 * values < len(texts) and _count(grid, column, start, _parts(grid, column, start, words), words) >= _ENOUGH


def _parts(grid: Grid, name: int, start: int, words: Words) -> dict[int, Side]:
    """The part of each row by a column of its own left of the names, or by lines over groups of rows."""
    part = part_column(grid, start)
    parts = parts_below(grid, part, start) if part is not None and part < name else {}
    return parts or sections(grid, name, start, words)


def _count(grid: Grid, column: int, start: int, parts: dict[int, Side], words: Words) -> int:
    return names_below(grid, column, start, words) + named_by_part(grid, column, parts, words)


def _is_part(grid: Grid, row: int, column: int, first: int, words: Words) -> bool:
    """Whether a text heads the rows of one part; ``Palier`` and ``Supporto`` over names are words for positions too.

    They are not where the positions beside them come again over the rows of another part.
    """
    text = grid.text(row, column)
    if side_of(text) is None or "STATION" not in words.groups(text):
        return side_of(text) is not None
    place = grid.text(row, first)
    return any(grid.text(below, first) == place for below in range(row + 1, min(grid.height, row + _FARTHEST)))


def names_of_positions(grid: Grid, row: int, first: int, roles: dict[int, str], words: Words) -> Named | None:
    """The names left of the first position of a heading row: in the column headed so, or the one with most of them.

    A word for a part over them heads one block of several, a name (``Revision | A | F``) a row of letters.
    """
    headed = [c for c, role in roles.items() if role == "NAME" and c < first]
    found = []
    for column in headed or range(first):
        text = grid.text(row, column)
        other = _is_part(grid, row, column, first, words) or (column not in headed and words.heading(text) is not None)
        other = other or (column not in headed and bool(concepts_said(text) & _OF_OTHERS))
        if text and roles.get(column, "NAME") in _OVER_NAMES and not other:
            parts = _parts(grid, column, row + 1, words)
            found.append(Named(column, parts, _count(grid, column, row + 1, parts, words)))
    best = max(found, key=lambda named: named.score, default=None)
    return best if best is not None and (headed or best.score >= _ENOUGH) else None
