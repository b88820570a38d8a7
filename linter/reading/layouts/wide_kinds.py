"""What the rows below a heading are: rows of data, comments, sections, or the foot of the table."""

import re
from collections.abc import Sequence
from itertools import pairwise
from typing import Any

import numpy as np
from attrs import define

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import TextColumn, cell_text, is_blank
from linter.reading.layouts.lost import ENOUGH, values_of
from linter.reading.layouts.title import MOST_IN_TITLE, begins_with_label, is_label, units_said
from linter.reading.layouts.wide_heading import WideTable
from linter.reading.words.headings import Heading, Words

_COMMENT = re.compile(r"\s*(?:#(?!\d)|//|!|;|--|''|==)")
_FIRST_SIGNS = frozenset("#/!;-'= \t\n\xa0epstEPST")
_FOOTER = re.compile(r"\s*(?:end of (?:table|file|list)|page \d+|seite \d+|sheet \d+ of|total\b|sum\b)", re.IGNORECASE)
#: Rows at the end of a table among which its foot is looked for.
_FOOT = 20
_SENTENCE = re.compile(r".*\S:\s+\S|.*[^\W\d]{3}\.\s*$|(?:\S+\s+){4}\S")
#: The two halves of a number that a decimal comma cuts.
_WHOLE, _REST = re.compile(r"[Ø⌀øφΦϕ∅Ф]?\s*[+\-−]?\d{1,4}"), re.compile(r"\d{1,6}(?!\d|[.:/])")
_COMMENT_ROW, _OTHER_ROW = "a comment row", "a section or footer row"


def behind(table: WideTable) -> int:
    """The first column behind the heading."""
    return max((c for c, label in enumerate(table.labels) if label), default=-1) + 1


@define(eq=False)
class RowKinds:
    """Tells rows of data from others; ``first`` is the first row below the heading."""

    table: WideTable
    words: Words
    first: int
    headings: list[Heading | None]
    machine_at: int | None
    station_at: int | None

    def suspects(self) -> list[int]:
        """Rows, counted from the first below the heading, that may hold no data."""
        grid = self.table.grid
        key = next((c for c in (self.station_at, self.machine_at) if c is not None), 0)
        suspects = set(range(max(grid.height - self.first - _FOOT, 0), grid.height - self.first))
        for column in {key, 0}:
            cells = grid.columns[column][self.first :]
            rows = cells.beginning(_FIRST_SIGNS) if isinstance(cells, TextColumn) else np.arange(len(cells))
            odd = zip(rows.tolist(), cells[rows].tolist(), strict=True)
            suspects.update(row for row, cell in odd if not cell or _is_odd(cell))
        return sorted(suspects)

    def no_data(self, row: int, filled: Sequence[int]) -> str:
        """What a row is that holds no data, in words; empty for a row of data."""
        named = filled[0] == self.station_at and self._is_name_with_unit(self.table.grid.text(row, filled[0]))
        return self._other(row, filled) or (_OTHER_ROW if named or self._is_in_turn(row, filled) else "")

    def _other(self, row: int, filled: Sequence[int]) -> str:
        """What a row is by its first cell, by its length, or as one that states nothing; empty for another."""
        grid = self.table.grid
        text = grid.text(row, filled[0])
        if _COMMENT.match(text) and text != "--":
            return _COMMENT_ROW
        keys = {c for c in (0, self.machine_at, self.station_at) if c is not None}
        if _FOOTER.match(text) and (len(filled) == 1 or filled[0] in keys):
            return _OTHER_ROW
        if filled[0] == 1 and filled[-1] == behind(self.table) and self._is_shifted(row):
            return _COMMENT_ROW  # where a semicolon separates cells, one that begins a comment makes a blank cell
        if len(filled) == 1 and grid.width > 2:
            return _OTHER_ROW if self._is_lonely(row, filled[0], text) else ""
        values = sum(values_of([grid.columns[c][row]], [self.headings[c]]) for c in filled)
        if filled[0] in keys and is_label(text) and values < ENOUGH:
            return _OTHER_ROW
        if len(filled) <= MOST_IN_TITLE < behind(self.table) - 1 and filled[0] in keys and self._states_machine(text):
            return _OTHER_ROW
        if not values and any(self._is_foot(grid.text(row, c)) for c in keys if c in filled):
            return _OTHER_ROW
        return ""

    def _is_name_with_unit(self, text: str) -> bool:
        """Whether a text in the place of a station ends in a unit, as names of values do (``Mass kg``)."""
        core, unit = self.words.names.split_unit(text)
        sure = len(unit) > 1 and unit != "in" and known_unit(unit) is not None
        return sure and any(map(str.isalpha, core)) and not self.words.station_said(core)

    def _is_in_turn(self, row: int, filled: Sequence[int]) -> bool:
        """Whether a row is word and value in turn, with words below headings of numbers (``Winding | star | Wire``)."""
        words = [(c, self.table.grid.text(row, c)) for c in filled[::2]]
        plain = all(text[0].isalpha() and not any(map(str.isdigit, text)) for _, text in words)
        headings = [h for c, _ in words if c < len(self.headings) and (h := self.headings[c]) is not None]
        below_numbers = sum(h.entry.kind in ("number", "toleranced") for h in headings)
        return len(filled) % 2 == 0 and len(words) > 2 and plain and below_numbers > 0

    def _states_machine(self, text: str) -> bool:
        """Whether a text in the place of a station is the name of a value of the machine (``Rotor mass``)."""
        heading = self.words.heading(text)
        named = heading is not None and heading.parameter not in ("machine", "station")
        return named and heading is not None and heading.entry.level == "machine"

    def longer(self) -> list[int]:
        """Rows with a cell behind the last heading."""
        grid = self.table.grid
        columns = grid.columns[behind(self.table) :]
        found = {row for c in columns for row, text in enumerate(c.tolist()) if not is_blank(text)}
        return sorted(row for row in found if row >= self.first)

    def cut_by_comma(self, row: int) -> int | None:
        """The column of a number that a decimal comma cut, where its halves as one make the row fit the headings."""
        texts = self.table.grid.row(row)
        said = values_of(texts, self.headings)
        for column, (whole, rest) in enumerate(pairwise(map(cell_text, texts))):
            if _WHOLE.fullmatch(whole) and _REST.match(rest):
                joined = [*texts[:column], f"{whole}.{rest}", *texts[column + 2 :], ""]
                fits = not any(not is_blank(cell) for cell in joined[behind(self.table) :])
                if fits and values_of(joined, self.headings) >= said:
                    return column
        return None

    def _is_shifted(self, row: int) -> bool:
        """Whether the cells of a row are rather values of the headings one column before them."""
        cells = self.table.grid.row(row)
        return values_of(cells[1:], self.headings) > values_of(cells, self.headings)

    def _is_lonely(self, row: int, column: int, text: str) -> bool:
        """Whether the only text of a row is none of a machine or station."""
        if column == self.station_at:
            return self._is_foot(text)
        if column == self.machine_at:
            of_positions = self.station_at is None and bool(self.table.positions)  # no row below it goes on with it
            return bool(units_said(text)) or of_positions or not (self.station_at is None or self._opens_machine(row))
        return self.table.headings[column] is None or column == 0

    def _is_foot(self, text: str) -> bool:
        """Whether the key of a row is none of a machine or station: a label of a drawing frame, or a sentence."""
        starred = text[0] in "*†‡" and len(text) > 1
        framed = is_label(text) or begins_with_label(text)
        return starred or framed or bool(units_said(text)) or _SENTENCE.match(text) is not None

    def _opens_machine(self, row: int) -> bool:
        """Whether a row with a machine alone stands above stations whose machine cell is blank."""
        grid = self.table.grid
        below = row + 1
        assert self.machine_at is not None and self.station_at is not None
        return below < grid.height and not grid.text(below, self.machine_at) and bool(grid.text(below, self.station_at))


def _is_odd(cell: Any) -> bool:
    """Whether a cell can begin a row that holds no data."""
    if type(cell) is not str or cell[0] not in _FIRST_SIGNS:
        return False
    return not cell.strip() or _COMMENT.match(cell) is not None or _FOOTER.match(cell) is not None
