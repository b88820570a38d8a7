"""The names of a grid, down its first columns and along its first rows, and the positions that they show."""

import re
from collections import Counter
from collections.abc import Iterable, Iterator

from attrs import evolve, frozen

from linter.reading.files.grids import LONGEST_MIXED, Grid, TextColumn, is_blank
from linter.reading.layouts.block_heads import with_block_heads
from linter.reading.layouts.sides import side_of
from linter.reading.layouts.strips import Found, part_taken
from linter.reading.words.codes import codes_told
from linter.reading.words.deviation_names import deviation_names
from linter.reading.words.headings import Deviation, Told, Words
from linter.reading.words.in_brackets import bearing_said
from linter.reading.words.inside import positions_inside
from linter.reading.words.part_evidence import PARTS
from linter.reading.words.part_words import part_words
from linter.reading.words.short_parts import short_parts
from linter.reading.words.told_parts import parts_of_names

#: Columns and rows that may hold names, and rows of a column that are looked at.
_COLUMNS, _ROWS, _LONGEST = 4, 30, 1000
_FEWEST = 4
_ZONE = re.compile(r"[A-L][ -]?\d{1,2}")
_FEWEST_HEADS = 3
#: Cells beside a name, and below one, that may tell whose size it is.
_BESIDE, _BELOW = 4, 2


def with_positions(grid: Grid, words: Words) -> Words:
    """The words, with what each name of a grid says without its position; as they are where none shows one."""
    words = with_block_heads(grid, words)
    told: dict[str, Told] = {}
    deviations: dict[str, Deviation] = {}
    lists = [beside.of_design(words) for beside in (*_columns(grid), *_rows(grid)) if len(beside.cells) >= _FEWEST]
    for beside in lists:
        deviations.update(deviation_names(beside.cells))
        told.update(positions_inside(beside.cells, words, beside.cells))
    heads = _heads_of_parts(grid, words) if lists else []
    for beside in lists:
        if not any(beside.is_below(row, column, alone) for row, column, alone in heads):
            once = {n: c for n, c in beside.cells.items() if n not in beside.again and not beside.heads_names(c, words)}
            told.update(parts_of_names(once, words, once, told))
        told.update(part_words(beside.cells, words, told))
        told.update(short_parts(beside.cells, words))
    if not told and not deviations and not lists:
        return words
    words = Words(words.names, {**words.told, **told}, {**words.deviations, **deviations})
    codes = _codes(grid, words)
    return Words(words.names, {**words.told, **codes}, words.deviations) if codes else words


def _codes(grid: Grid, words: Words) -> dict[str, Told]:
    """What the codes of a list mean by its comments: below a heading of names, and one of comments behind it."""
    for row in range(min(grid.height, _ROWS) if grid.height <= LONGEST_MIXED else 0):
        heads = {column: words.groups(text) for column in range(grid.width) if (text := grid.text(row, column))}
        names = [column for column, groups in heads.items() if "NAME" in groups]
        notes = [column for column, groups in heads.items() if groups and groups[0] == "NOTE"]
        if len(heads) < _FEWEST_HEADS or not names or not notes or notes[0] < names[0]:
            continue
        others = [column for column in range(names[0] + 1, grid.width) if column != notes[0]]
        listed = [
            (name, tuple(filter(None, (grid.text(r, c) for c in others))), grid.text(r, notes[0]))
            for r in range(row + 1, grid.height)
            if (name := grid.text(r, names[0]))
        ]
        return codes_told(listed, words)
    return {}


@frozen
class _Beside:
    """Names down a column or along a row, with the cells beside each; names that come again there."""

    row: int
    column: int
    cells: dict[str, tuple[str, ...]]
    again: frozenset[str]

    def of_design(self, words: Words) -> "_Beside":
        """The names without those of measured values, which nothing beside them makes those of the design."""
        return evolve(self, cells={n: c for n, c in self.cells.items() if words.of_design(n, "found") is None})

    def is_below(self, row: int, column: int, alone: bool) -> bool:
        """Whether a word for a part may say of these names which part they are of."""
        return row < self.row if self.row >= 0 else column != self.column or alone

    def heads_names(self, cells: tuple[str, ...], words: Words) -> bool:
        """Whether a name along a row stands over another name, which says more than it."""
        return self.row >= 0 and any(words.heading(cell) is not None for cell in cells[:1])


def _heads_of_parts(grid: Grid, words: Words) -> list[tuple[int, int, bool]]:
    """Where a word for shaft or housing stands that is no name of a value, and whether it stands alone in its row."""
    found = []
    for row in range(min(grid.height, _LONGEST)):
        for column in range(grid.width if row < _ROWS else min(grid.width, _COLUMNS)):
            side = side_of(text) if (text := grid.text(row, column)) and any(map(str.isalpha, text)) else None
            if side is not None and side.side in PARTS and words.heading(text) is None:
                found.append((row, column, grid.filled[row] == 1))
    return found


def tell_parts(grid: Grid, words: Words, found: Found) -> None:
    """One assumption for each name whose part its table tells (``Rugosité Ra portée``)."""
    told = {name: one for name, one in words.told.items() if not one.by_comment}
    left = {name: one.rest for name, one in told.items() if not one.station or one.by_sizes}
    for row in range(min(grid.height, _LONGEST) if left else 0):
        for column in range(grid.width if row < _ROWS else min(grid.width, _COLUMNS)):
            rest = left.pop(grid.text(row, column), "") if left else ""
            if rest and (heading := words.heading(rest)) is not None:
                found.problems.append(part_taken(grid.place(row, column), grid.text(row, column), heading.parameter))


def _columns(grid: Grid) -> Iterator[_Beside]:
    """The texts of the first columns with the cells on their right."""
    for column in range(min(grid.width, _COLUMNS) if grid.height <= LONGEST_MIXED else 0):
        if isinstance(cells := grid.columns[column], TextColumn):
            continue
        right = [c for c in range(column + 1, min(column + 1 + _BESIDE, grid.width)) if not _are_zones(grid, c)]
        listed = [(cell.strip(), row) for row, cell in enumerate(cells[:_LONGEST].tolist()) if type(cell) is str]
        beside = dict(_with_bearing(text, [grid.text(row, c) for c in right]) for text, row in reversed(listed))
        yield _Beside(-1, column, beside, _again(text for text, _ in listed))


def _are_zones(grid: Grid, column: int) -> bool:
    """Whether a column says where on a drawing things stand (``B4``, ``E5``), which looks like classes of holes."""
    texts = [text for row in range(min(grid.height, _ROWS)) if (text := grid.text(row, column))]
    zones = [text for text in texts if _ZONE.fullmatch(text)]
    return len(zones) > 2 and len(zones) + 1 >= len(texts) and any(text[0] in "ABC" for text in zones)


def _with_bearing(name: str, cells: list[str]) -> tuple[str, tuple[str, ...]]:
    """A name without the bearing in brackets, and its cells with that bearing as the last of them."""
    said = bearing_said(name)
    return (said.name if said else name), tuple(filter(None, (*cells, said.designation if said else "")))


def _rows(grid: Grid) -> Iterator[_Beside]:
    """The texts of the first rows that hold nothing else, with the cells below them."""
    for row in range(min(grid.height, _ROWS)):
        cells = grid.row(row)
        if all(type(cell) is str for cell in cells if not is_blank(cell)):
            below = range(row + 1, min(row + 1 + _BELOW, grid.height))
            listed = [(cell.strip(), column) for column, cell in enumerate(cells) if not is_blank(cell)]
            beside = {text: tuple(filter(None, (grid.text(r, c) for r in below))) for text, c in listed}
            yield _Beside(row, -1, beside, _again(text for text, _ in listed))


def _again(texts: Iterable[str]) -> frozenset[str]:
    return frozenset(text for text, count in Counter(texts).items() if count > 1)
