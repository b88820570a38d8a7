"""The rows of a sheet by what stands in them: sections, headings, rows of units and rows of values."""

import re
from collections import Counter
from itertools import pairwise
from typing import Any, Literal

from attrs import define, field, frozen

from linter.reading.cells.choices import read_choice
from linter.reading.cells.fit_classes import CLASS_ONLY
from linter.reading.cells.signs import ReadError
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Bad, Grid, cell_text, is_blank
from linter.reading.layouts.placed import placed
from linter.reading.layouts.sides import side_of
from linter.reading.words.columns import heading_of
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said, tells_feature

#: What a cell is: a word that is known, a value, a unit, or a text that is neither.
Kind = Literal["label", "value", "unit", "text"]
_PLAIN = re.compile(r"[+\-−±]?[\d.,]*\d[\d.,]*")
_NUMBER = re.compile(r"\s*[Ø⌀øφΦϕ∅Ф(RC≤≥<>~≈]?\s*[+\-−±]?\s*[.,]?\d")
_ROUGH = re.compile(r"R[az] ?\d[\d.,]*(?: ?[µμu]m)?")  # Ra 0.8 µm
_NUMBERED = re.compile(r"\d{1,2}(?:\.\d{1,2})*[.)]\s*(\D.*)")  # 2. Bearings
_DASH = re.compile(r"[-–—/.\s]+|n/?a", re.IGNORECASE)
_BRACKETS = "[]() "
_LONGEST_LABEL = 60
#: Words of a layout for what of a value a column states.
OF_VALUES = frozenset(("VALUE", "EXPR", "UPPER", "LOWER", "CLASS", "MAX", "MIN"))
#: Words of a layout that stand in the heading of a list.
_OF_LISTS = OF_VALUES | {"NAME", "UNIT", "NOTE"}
_OF_A_SEAT = {"seat", "shoulder", "fillet", "form"}


@frozen
class Cell:
    """A cell that holds something: its column, its kind, its text and itself."""

    column: int
    kind: Kind
    text: str
    raw: Any


@frozen
class Said:
    """What a word says: a position, a part, a name, what of a value it is, or the whole machine."""

    position: str = ""
    part: str = ""
    name: str = ""
    aspect: str = ""
    whole: bool = False


@define
class Region:
    """Rows of values below one heading or below none, each with the sections it stands in.

    Attributes
    ----------
    head : dict of int to tuple of str
        Words over each column, the outermost first.
    units : dict of int to str
        Units below the words.
    rows : list of (row, cells, sections)
        The rows.
    """

    head: dict[int, tuple[str, ...]] = field(factory=dict)
    units: dict[int, str] = field(factory=dict)
    rows: list[tuple[int, list[Cell], tuple[Said, ...]]] = field(factory=list)


@define(eq=False)
class Rows:
    """Goes down the rows of a sheet.

    Attributes
    ----------
    grid : Grid
        The sheet.
    words : Words
        The words that are known.
    regions : list of Region
        What was found, from the top down.
    """

    grid: Grid
    words: Words
    regions: list[Region] = field(factory=list)
    _known: dict[str, Said] = field(factory=dict)

    def find(self) -> list[Region]:
        """The regions that hold values."""
        sections: list[Said] = []
        region, last = Region(), ""
        for row in range(self.grid.height):
            cells = [c for column in range(self.grid.width) if (c := self._cell(row, column)) is not None]
            kind = self._kind_of_row(row, cells, region, last) if cells else ""
            if kind == "section":
                sections = self._below(sections, self.said(cells[0].text))
            elif kind == "head":
                region = self._headed(cells, region if last == "head" else None)
                self.regions.append(region)
            elif kind == "units":
                region.units.update({c.column: c.text for c in cells})
            elif kind == "values":
                if region not in self.regions[-1:]:
                    self.regions.append(region)
                region.rows.append((row, cells, tuple(sections)))
            last = kind
        return [region for region in self.regions if region.rows]

    def said(self, text: str) -> Said:
        """What a word says."""
        if text not in self._known:
            self._known[text] = self._said(text)
        return self._known[text]

    def know(self, text: str, said: Said) -> None:
        """Keep what other words of its column tell of a word."""
        self._known[text] = said

    def _said(self, text: str) -> Said:
        if (numbered := _NUMBERED.fullmatch(text)) is not None:
            return self.said(numbered[1])
        if self.words.of_whole(text):
            return Said(whole=True)
        if (both := placed(text, self.words)) is not None:
            return Said(both.station, "" if both.side.side == "bearing" else both.side.side)
        side, station = side_of(text), self.words.station_said(text)
        if side is not None and side.side in ("shaft", "housing") and station in ("", text):
            return Said(part=text)  # 軸側
        if station:
            return Said(station)
        if OF_VALUES.intersection(self.words.groups(text)):
            return Said(aspect=text)
        return Said(part=text) if side is not None else Said(name=text)

    def _cell(self, row: int, column: int) -> Cell | None:
        raw = self.grid.columns[column][row]
        if is_blank(raw) or isinstance(raw, Bad) or _DASH.fullmatch(text := cell_text(raw)):
            return None
        return Cell(column, self._kind(raw, text), text, raw)

    def _kind(self, raw: Any, text: str) -> Kind:
        if type(raw) is not str or any(known.fullmatch(text) for known in (_PLAIN, CLASS_ONLY, _ROUGH)):
            return "value"
        station = self.words.station_said(text)
        if known_unit(text.strip(_BRACKETS)) is not None and not station:
            return "unit"
        if station or self.words.heading(text) is not None or self.words.groups(text):
            return "label"
        if side_of(text) is not None or placed(text, self.words) is not None:
            return "label"
        if _NUMBER.match(text) or designation_strength(text) == "certain":
            return "value"
        named = self.words.unit_of(text) or (len(text) < _LONGEST_LABEL and concepts_said(text))
        return "label" if named else "text"

    def _kind_of_row(self, row: int, cells: list[Cell], region: Region, last: str) -> str:
        """``section``, ``units``, ``head`` or ``values``."""
        kinds = Counter(c.kind for c in cells)
        if len({c.text for c in cells}) == 1 and not kinds["unit"]:
            return "values" if kinds["value"] else "section"
        if all(c.kind == "unit" or known_unit(c.text.strip(_BRACKETS)) is not None for c in cells if c.kind != "value"):
            return "values" if kinds["value"] else "units"
        if kinds["value"] or kinds["label"] < 2 or 2 * kinds["label"] < len(cells):
            return "values"
        of_layout = sum(bool(_OF_LISTS.intersection(self.words.groups(c.text))) for c in cells)
        stated = self._states_choice(cells) or self._states_texts(cells, second=last == "head")
        if of_layout < 2 and stated and not self._names_numbers(cells):
            return "values"
        if last == "values" and not self._heads_again(cells):
            return "values" if region.head or not self._heads_values(row, cells) else "head"
        return "head"

    def _names_numbers(self, cells: list[Cell]) -> bool:
        """Whether words of a row without values name two numbers, or one and its unit: their values stand below."""
        headings = [heading for c in cells if (heading := self.words.heading(c.text)) is not None]
        numbers = [heading for heading in headings if heading.entry.kind in ("number", "toleranced")]
        return len(numbers) > 1 or any(heading.unit for heading in numbers)

    def _states_choice(self, cells: list[Cell]) -> bool:
        """Whether a word of a row is the name of a choice, and the next one of the choices."""
        for one, two in pairwise(cells):
            heading = self.words.heading(one.text) if two.kind in ("label", "text") else None
            named = heading.parameter if heading is not None and heading.entry.kind == "choice" else ""
            if named and not isinstance(read_choice(named, two.text), ReadError):
                return True
        return False

    def _states_texts(self, cells: list[Cell], *, second: bool) -> bool:
        """Whether words of a row are names of texts with those behind them (``Machine | Blower``), and no heading.

        In a ``second`` row of headings one of them tells.
        """
        texts = [c for c in cells if self._is_unnamed(c)]
        named = [two for one, two in pairwise(cells) if self._is_unnamed(two) and self.names_text(one.text)]
        return bool(named) and (second or 2 * len(named) >= len(texts))

    def names_text(self, text: str, value: str = "") -> bool:
        """Whether a word names what words state: a choice or a text; by one that it states, too (``Function``)."""
        heading = self.words.heading(text)
        if heading is None and value:
            heading = heading_of(text, None, (value,), self.words)
        return heading is not None and not heading.station and heading.entry.kind in ("choice", "text")

    def _is_unnamed(self, cell: Cell) -> bool:
        """Whether a cell holds words that name nothing."""
        plain = cell.kind == "label" and self.words.heading(cell.text) is None and not self.words.groups(cell.text)
        return cell.kind == "text" or (plain and self.said(cell.text).name != "")

    def _heads_again(self, cells: list[Cell]) -> bool:
        """Whether words below rows of values are those of a heading before."""
        own = {c.text for c in cells}
        before = ({text for texts in region.head.values() for text in texts} for region in self.regions)
        return any(2 * len(own & texts) > len(own) for texts in before)

    def _heads_values(self, row: int, cells: list[Cell]) -> bool:
        """Whether one of the two rows below words holds values below most of them."""
        below = [
            sum((cell := self._cell(r, c.column)) is not None and cell.kind == "value" for c in cells)
            for r in range(row + 1, min(row + 3, self.grid.height))
        ]
        return len(cells) > 3 and 2 * max(below, default=0) > len(cells)

    def _below(self, sections: list[Said], said: Said) -> list[Said]:
        """The sections from a row on that heads the rows below it; a title is none."""
        if said.whole:
            return []
        if said.aspect or (said.name and not self._is_feature(said.name)):
            return sections
        for k, before in enumerate(sections):
            if before.position if said.position else (before.part or before.name):
                return [*sections[:k], said]
        return [*sections, said]

    def _is_feature(self, text: str) -> bool:
        """Whether words over rows say a feature of a seat (``Shoulder``, ``Fillet``)."""
        words = [word for word in re.split(r"[\W_]+", text) if word]
        return 0 < len(words) < 4 and bool(concepts_said(text) & _OF_A_SEAT) and all(map(tells_feature, words))

    def _headed(self, cells: list[Cell], above: Region | None) -> Region:
        """The region below a heading; what stands over blank cells left of it in a heading above spans them."""
        own = {c.column: c.text for c in cells}
        if above is None or not above.head:
            return Region({column: (text,) for column, text in own.items()})
        head: dict[int, tuple[str, ...]] = {}
        for column in sorted({*own, *above.head}):
            left = max((c for c in above.head if c <= column), default=None)
            over = above.head[left] if left is not None else ()
            head[column] = (*over, own[column]) if column in own else over
        return Region(head)
