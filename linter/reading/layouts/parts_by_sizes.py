"""A word for a part that no list holds, in a column of parts: the sizes beside it tell which part it is.

``Shaft | Cover | Shaft | Cover`` with the bearing of each row: what is as large as the outside diameters, in the column
in which the shaft is as large as the bores, is the housing there, whatever it is called (``Tapa``, ``墙板``).
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence

from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.sides import side_of
from linter.reading.layouts.strips import Found, part_taken
from linter.reading.words.designations import looks_like_designation
from linter.reading.words.headings import Words
from linter.reading.words.part_evidence import PARTS, number_of, rings_of, same_size
from linter.reading.words.parts import concepts_said

#: Rows and columns that are looked at, the longest word, and cells of a row of a seat at least.
_ROWS, _COLUMNS, _LONGEST, _FEWEST = 400, 12, 30, 4
#: What a word for a housing or a shaft may say beside that: a cover closes, a rotor turns.
_ALSO = frozenset((*PARTS, "closure", "wall", "rotor", "mounting", "side", "axial"))
_Rings = tuple[float, float]


def with_parts_told(grid: Grid, words: Words, found: Found) -> Grid:
    """The grid with the word for the part in place of one that only sizes tell; the grid as it is where there is none.

    Parameters
    ----------
    grid : Grid
        A sheet or a text table.
    words : Words
        The words that are known.
    found : Found
        Takes the assumption.

    Returns
    -------
    Grid
        The sheet with words that are known.
    """
    if grid.height > _ROWS or grid.width < _FEWEST:
        return grid
    for column in range(min(grid.width, _COLUMNS)):
        if (told := _told(grid, column, words)) is not None:
            part, text, row = told
            found.problems.append(part_taken(grid.place(row, column), text, f"{part}_seat_diameter"))
            return grid.with_cells({(r, column): part for r in range(grid.height) if grid.text(r, column) == text})
    return grid


def _told(grid: Grid, column: int, words: Words) -> tuple[str, str, int] | None:
    """The part, the word of a column for it and the first row of that, where sizes tell it; or None."""
    rows = [row for row in range(grid.height) if grid.filled[row] >= _FEWEST and grid.text(row, column)]
    said = {text: side_of(text) for text in dict.fromkeys(grid.text(row, column) for row in rows)}
    known = {side.side for side in said.values() if side is not None} & {*PARTS}
    others = [text for text, side in said.items() if side is None and _may_be_part(text, words)]
    if len(known) != 1 or not others or not (rings := _rings(grid)):
        return None
    of_part = [row for row in rows if (side := said[grid.text(row, column)]) is not None and side.side in known]
    part = next(part for part in PARTS if part not in known)
    for text in others:
        below = [row for row in rows if grid.text(row, column) == text]
        if any(_tell(grid, part, *pair, rings) for pair in _named_alike(grid, column, below, of_part)):
            return part, text, below[0]
    return None


def _named_alike(
    grid: Grid, column: int, rows: Sequence[int], of_part: Sequence[int]
) -> Iterator[tuple[list[int], list[int]]]:
    """Rows of a word and as many of the known part: all of them, or those of one name (``Diameter``) in a list."""
    if len(rows) == len(of_part):
        yield [*rows], [*of_part]
    for beside in (c for c in range(min(grid.width, _COLUMNS)) if c != column):
        named = {text for row in rows if (text := grid.text(row, beside)) and text[0].isalpha()}
        for text in sorted(named & {grid.text(row, beside) for row in of_part}):
            one, other = ([row for row in of if grid.text(row, beside) == text] for of in (rows, of_part))
            if len(one) == len(other) < len(rows):
                yield one, other


def _may_be_part(text: str, words: Words) -> bool:
    """Whether a word may be one for a part: it is no position, no figure and no other part or size."""
    letters = 0 < len(text) <= _LONGEST and not any(map(str.isdigit, text)) and any(map(str.isalpha, text))
    return letters and not (words.station_said(text) or words.of_whole(text) or concepts_said(text) - _ALSO)


def _rings(grid: Grid) -> dict[int, _Rings]:
    """Bore and outside diameter of the bearing of each row that designates one."""
    found: dict[int, _Rings] = {}
    for column in range(grid.width):
        texts = {row: text for row in range(grid.height) if (text := grid.text(row, column))}
        named = any("bearing" in concepts_said(text) for text in texts.values() if not looks_like_designation(text))
        for row, text in texts.items():
            beside = named or any(
                (side := side_of(grid.text(row, c))) and side.side == "bearing" for c in range(column)
            )
            if (rings := rings_of(text, beside)) is not None:
                found.setdefault(row, rings)
    return found


def _tell(grid: Grid, part: str, rows: Iterable[int], of_other: Iterable[int], rings: Mapping[int, _Rings]) -> bool:
    """Whether in one column all rows of a word are as large as one ring, and those of the known part as the other."""
    which = PARTS.index(part)
    for column in range(grid.width):
        one, other = (
            [_fits(grid, row, column, ring, rings) for row in of] for of, ring in ((rows, which), (of_other, 1 - which))
        )
        if one and other and all(one) and all(other):
            return True
    return False


def _fits(grid: Grid, row: int, column: int, ring: int, rings: Mapping[int, _Rings]) -> bool:
    """Whether a cell is as large as a ring of the bearing of its row, or of one of the table where it has none."""
    if is_blank(grid.columns[column][row]) or not (size := number_of(grid.text(row, column))):
        return False
    own = [rings[row]] if row in rings else [*rings.values()]
    return any(same_size(size, one[ring]) for one in own)
