"""Cells that state one value for each of two sides (``6305 / 6304`` behind ``Bearings (DE/FE)``): a row for each side.

The name of the row says the two sides, or a heading of the names or of the values does, or the title above. Parts of a
cell stand in the order of the name. A cell that nothing says the sides of stays whole. Both rows keep the number of the
line they stood in.
"""

import re
from collections.abc import Iterator, Mapping
from typing import Any

from attrs import define, evolve, field, frozen

from linter.reading.files.grids import Grid, TextColumn, cell_text, is_blank, object_column
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.layouts.sides import are_classed
from linter.reading.words.bearing_words import names_bearing
from linter.reading.words.headings import Told, Words
from linter.reading.words.pairs import PAIR
from linter.reading.words.parts import concepts_said
from linter.reading.words.sides_said import Sides, part_of, sides_said, two_parts

#: Rows and columns that are looked at; rows that may hold a heading; columns that may hold names.
_MOST_ROWS, _MOST_COLUMNS, _HEADINGS, _COLUMNS = 400, 40, 30, 3
_STROKES = re.compile(r"[/／|｜;；\n]")
_Row = tuple[int, dict[int, Any] | None]


def with_pairs_apart(grid: Grid, words: Words) -> tuple[Grid, Words]:
    """The grid with a row for each side of its pair cells, and the words with what the names of these rows say."""
    if grid.height > _MOST_ROWS or grid.whole_lines or any(isinstance(column, TextColumn) for column in grid.columns):
        return grid, words
    said = dict(_sides_of_cells(grid, words))
    if not said:
        return grid, words
    if (apart := _in_columns(grid, said, words)) is not None:
        return apart, words
    lists = _Lists(grid, words, said)
    rows = lists.rows()
    if all(cells is None for _, cells in rows):
        return grid, words
    return of_rows(grid, rows), Words(words.names, {**words.told, **lists.told}, words.deviations)


def _sides_of_cells(grid: Grid, words: Words) -> Iterator[tuple[tuple[int, int], Sides]]:
    """Row and column of the cells that may be names of two sides, and these."""
    for row in range(grid.height):
        for column in range(min(grid.width, _MOST_COLUMNS) if row < _HEADINGS else min(grid.width, _COLUMNS)):
            cell = grid.columns[column][row]
            if type(cell) is str and not cell[:1].isdigit() and (sides := sides_said(cell.strip(), words)) is not None:
                yield (row, column), sides


def _in_columns(grid: Grid, said: Mapping[tuple[int, int], Sides], words: Words) -> Grid | None:
    """A table whose headings say two positions each, with a row for each of them and a column that names them."""
    for row in sorted({row for row, _ in said}):
        heads = _heads(grid, row, said, words)
        if not heads:
            continue
        below = range(row + 1, grid.height)
        end = next((r for r in below if all(is_blank(cell) for cell in grid.row(r))), grid.height)
        filled = [(r, c) for r in range(row + 1, end) for c in heads if grid.text(r, c)]
        pairs = {at: pair for at in filled if (pair := two_parts(grid.text(*at), in_words=True))}
        if not filled or len(pairs) < len(filled):
            continue
        rows: list[_Row] = []
        for r in range(grid.height):
            own = dict(enumerate(grid.row(r)))
            parts = {c: pairs[r, c] for c in heads if (r, c) in pairs}
            sides = next(iter(heads.values())).both if parts else ()
            for k, name in enumerate(sides):
                rows.append((r, {**own, **{c: pair[k] for c, pair in parts.items()}, grid.width: name}))
            if r == row:
                own |= {c: sides.rest for c, sides in heads.items()}
                rows.append((r, {**own, grid.width: "Position"}))
            elif not parts:
                rows.append((r, None))
        return of_rows(evolve(grid, columns=[*grid.columns, object_column([None] * grid.height)]), rows)
    return None


def _heads(grid: Grid, row: int, said: Mapping[tuple[int, int], Sides], words: Words) -> dict[int, Sides]:
    """The headings of a row that say the same two positions each, by their columns; none where it names positions."""
    heads = {c: sides for (r, c), sides in said.items() if r == row and sides.rest and not sides.parts}
    heads = {c: sides for c, sides in heads.items() if _is_name(sides.rest, words)}
    others = [words.heading(grid.text(row, c)) for c in range(grid.width) if c not in heads]
    known = {other.parameter for other in others if other is not None}
    alike = len({sides.both for sides in heads.values()}) == 1
    return heads if alike and known and "station" not in known else {}


def _is_name(text: str, words: Words) -> bool:
    """Whether a name without its sides is one of what a position has."""
    heading = words.heading(text)
    return names_bearing(text) or (heading is not None and heading.entry.level == "station")


@frozen
class _Over:
    """Two sides that a heading or a title says for the rows below it, and the columns of names and of values."""

    sides: Sides
    name: int
    value: int | None = None


@define
class _Lists:
    """Works down the lists of names and values of a grid."""

    grid: Grid
    words: Words
    said: Mapping[tuple[int, int], Sides]
    told: dict[str, Told] = field(factory=dict)

    def rows(self) -> list[_Row]:
        """All rows, those of pairs as a row for each side."""
        rows: list[_Row] = []
        over: _Over | None = None
        for row in range(self.grid.height):
            own = next((c for c in range(self.grid.width) if (row, c) in self.said), None)
            if own is not None and (apart := self._apart(row, own, self.said[row, own])):
                rows += [(row, cells) for cells in apart]
                continue
            if own is not None and (heading := self._heading(row, own)) is not None:
                over, plain = heading
                rows.append((row, plain))
                continue
            apart = []
            label = self.grid.text(row, over.name) if over is not None and own is None else ""
            if over is not None and label and not _STROKES.search(label):
                apart = self._apart(row, over.name, evolve(over.sides, rest=label), over.value)
            rows += [(row, cells) for cells in apart] or [(row, None)]
        return rows

    def _heading(self, row: int, column: int) -> tuple[_Over, dict[int, Any] | None] | None:
        """What a heading or a title says for the rows below it, and its row without the sides; None for another."""
        sides, cells = self.said[row, column], dict(enumerate(self.grid.row(row)))
        filled = [c for c, cell in cells.items() if not is_blank(cell)]
        if len(filled) == 1:
            return None if sides.parts or _is_name(sides.rest, self.words) else (_Over(sides, column), None)
        if self.words.heading(self.grid.text(row, column)) is not None or any(
            cell_text(cells[c])[:1].isdigit() for c in filled
        ):
            return None
        groups = self.words.groups(sides.rest) if sides.rest else ()
        if column == filled[0]:
            if sides.rest and not groups and self.words.heading(sides.rest) is not None:
                return None
            return _Over(sides, column), {**cells, column: sides.rest or "Name"}
        if sides.rest and "VALUE" not in groups:
            return None
        names = [c for c in filled if c < column and "NAME" in self.words.groups(self.grid.text(row, c))]
        return _Over(sides, (names or filled)[0], column), {**cells, column: sides.rest or "Value"}

    def _apart(self, row: int, column: int, sides: Sides, value: int | None = None) -> list[dict[int, Any]]:
        """The cells of the row of each side; nothing where the row states no two values that may be of them."""
        heading = self.words.heading(sides.rest) if sides.rest else None
        own = self.words.heading(self.grid.text(row, column))
        paired = own is not None and own.aspect.startswith(PAIR)
        if paired or (heading is not None and heading.entry.level == "machine" and not sides.parts):
            return []
        cells = dict(enumerate(self.grid.row(row)))
        behind = [c for c in cells if c > column and not is_blank(cells[c])] if value is None else [value]
        pairs = {c: pair for c in behind if type(cells[c]) is str and (pair := two_parts(cells[c]))}
        in_words = heading is not None and heading.entry.kind in ("text", "choice")
        if in_words and not pairs and behind and type(text := cells[behind[0]]) is str:
            pairs = {behind[0]: pair} if (pair := two_parts(text, in_words=True)) else {}
        told = self._told(row, column, sides, [*pairs.values()]) if pairs else None
        if told is None:
            return []
        self.told.update(told)
        return [
            {**cells, column: label, **{c: pair[side] for c, pair in pairs.items()}} for side, label in enumerate(told)
        ]

    def _told(self, row: int, column: int, sides: Sides, pairs: list[tuple[str, str]]) -> dict[str, Told] | None:
        """The name of each side's row, and what it says; None where it is not known what it would say."""
        rest, both = sides.rest, sides.both
        if sides.parts:
            means = [self._of_part(rest, side, [pair[k] for pair in pairs]) for k, side in enumerate(both)]
            told = zip(both, means, strict=True)
            label = rest or self.grid.text(row, column)
            named = {f"{label} ({side})": Told(name, "", by_comment=True) for side, name in told}
            return named if all(means) else None
        if not rest:
            if any("bearing" not in concepts_said(side) for side in both):
                return None
            rest = "bearing"
        return {f"{rest} {side}": Told(rest, self.words.station_said(side) or side) for side in both}

    def _of_part(self, rest: str, side: str, cells: list[str]) -> str:
        """A name that says what a rest means of shaft or housing; empty where none does."""
        part = part_of(side)
        if not rest:
            return f"{part} seat diameter" if are_classed(part, cells) else ""
        tries = (
            f"{rest} {side}", f"{side} {rest}", f"{rest} ({side})", f"{side}{rest}", f"{part} {rest}",
            f"{part} seat {rest}",
        )  # fmt: skip
        known = ((name, self.words.heading(name)) for name in tries)
        return next((name for name, h in known if h is not None and h.parameter.startswith(part) and not h.station), "")
