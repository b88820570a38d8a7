"""A sheet as a tree: every value below all words that stand for it, above it, left of it and over its rows.

No layout is looked for. What a word says tells where it stands in the tree: the machine and the position outermost,
then the part, the name, and what of a value it states.
"""

from collections import Counter
from itertools import pairwise
from typing import Any

from attrs import define, evolve, field

from linter.reading.cells.fit_classes import CLASS_ONLY
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid
from linter.reading.layouts.context_rows import Cell, Kind, Region, Rows, Said
from linter.reading.words.designations import looks_like_designation
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said

_BRACKETS = "[]() "
#: Between the words of one cell that names a value by its path.
_PATH = " / "
#: Words of a layout for the one value of a row.
_ITS_VALUE = {"VALUE", "EXPR"}


@define(eq=False)
class Tree:
    """The values of one sheet below the words that stand for them.

    Attributes
    ----------
    document : dict
        The tree, of objects as a JSON document has them.
    where : dict of str to (row, column)
        The cell of each value, by its JSON Pointer.
    machines, positions : set of str
        Machines and positions that are named.
    below : list of (row, column)
        Blank cells of positions that stand for the one above them.
    by_rows : list of (row, column, label)
        Columns that are taken for those of the machines, as they keep rows apart: their first cell and their word.
    """

    document: dict[str, Any] = field(factory=dict)
    where: dict[str, tuple[int, int]] = field(factory=dict)
    machines: set[str] = field(factory=set)
    positions: set[str] = field(factory=set)
    below: list[tuple[int, int]] = field(factory=list)
    by_rows: list[tuple[int, int, str]] = field(factory=list)
    _leaves: dict[tuple[str, ...], str] = field(factory=dict)

    def put(self, keys: tuple[str, ...], value: Any, unit: str, where: tuple[int, int]) -> None:
        """Put one value below its words; one that stands there already says that the words do not tell them apart."""
        node = self.document
        for key in keys[:-1]:
            inner = node.setdefault(key, {})
            if not isinstance(inner, dict):
                return
            node = inner
        if keys[-1] in node:
            self.where.pop(self._leaves.get(keys, ""), None)
            return
        pointer = "".join("/" + key.replace("~", "~0").replace("/", "~1") for key in keys)
        node[keys[-1]] = {"value": value, "unit": unit} if unit else value
        self._leaves[keys] = pointer = f"{pointer}/value" if unit else pointer
        self.where[pointer] = where


def tree_of(grid: Grid, words: Words) -> Tree:
    """The tree of a sheet.

    Parameters
    ----------
    grid : Grid
        The sheet.
    words : Words
        The words that are known.

    Returns
    -------
    Tree
        Its values and where they stand.
    """
    rows, tree = Rows(grid, words), Tree()
    for region in rows.find():
        _Region(rows, region, tree).read()
    return tree


@define(eq=False)
class _Region:
    """Reads the rows below one heading."""

    rows: Rows
    region: Region
    tree: Tree
    roles: dict[int, str] = field(factory=dict)
    several: bool = False

    def read(self) -> None:
        """All its values."""
        kinds: dict[int, Counter[Kind]] = {}
        for _, cells, _ in self.region.rows:
            for c in cells:
                unit = c.kind == "label" and known_unit(c.text.strip(_BRACKETS)) is not None
                kinds.setdefault(c.column, Counter())["unit" if unit else c.kind] += 1
        for column in sorted(kinds):
            self.roles[column] = self._role(column, kinds[column])
        for column in [c for c, role in self.roles.items() if role == "label"]:
            if self._is_choice(column):
                self.roles[column] = "value"
        values = [c for c, role in self.roles.items() if role == "value"]
        figures = [c for c in values if kinds[c]["value"]]
        if figures and "machine" not in self.roles.values():
            self._find_machines(min(figures))
        self._find_positions()
        self.several = sum(bool(self.rows.said(self._own(c)).aspect) for c in values) > 1
        carried: dict[int, str] = {}
        for row, cells, sections in self.region.rows:
            self._row(row, cells, sections, carried)

    def _find_machines(self, first: int) -> None:
        """Take the first column of no use left of all values that keeps rows apart for that of the machines."""
        for column in [c for c, role in self.roles.items() if c < first and role in ("", "value")]:
            texts = [c.text for _, cells, _ in self.region.rows for c in cells if c.column == column]
            runs = 1 + sum(one != two for one, two in pairwise(texts))
            named = all(any(map(str.isalpha, text)) and not looks_like_designation(text) for text in texts)
            if named and len(texts) == len(self.region.rows) and 1 < runs == len({*texts}) < len(texts):
                self.roles[column] = "machine"
                self.tree.by_rows.append((self.region.rows[0][0], column, self._own(column)))
                return

    def _find_positions(self) -> None:
        """Positions by their likeness to those that are known (``Lager DS``: ``Lager NS``), in columns of words."""
        for column in [c for c, role in self.roles.items() if role == "label"]:
            texts = {c.text: c.text.split() for _, cells, _ in self.region.rows for c in cells if c.column == column}
            known = [(words, said) for text, words in texts.items() if (said := self.rows.said(text)).position]
            for text, words in texts.items():
                if self.rows.said(text) == Said(name=text) and self.rows.words.heading(text) is None:
                    alike = (one for own, said in known if (one := _alike(own, said, words)) is not None)
                    self.rows.know(text, next(alike, Said(name=text)))

    def _own(self, column: int) -> str:
        """The word right over a column, or empty."""
        return self.region.head.get(column, ("",))[-1]

    def _role(self, column: int, kinds: Counter[Kind]) -> str:
        """``label``, ``value``, ``unit``, ``position`` or ``machine`` for a column, or empty for one of no use."""
        head, words = self._own(column), self.rows.words
        groups, heading = set(words.groups(head)), words.heading(head)
        labels = 2 * kinds["label"] >= kinds.total()
        if "UNIT" in groups or (2 * kinds["unit"] > kinds.total() and not kinds["value"]):
            return "unit"
        if self._says_nothing(groups, kinds):
            return "label" if "NOTE" in groups and labels and self._are_names(column) else ""
        if heading is not None and heading.parameter == "machine" and not heading.station:
            return "label" if self._are_parts(column, or_places=True) else "machine"
        if heading is not None and heading.parameter == "station" and not heading.station:
            return self._of_places(column)
        if "NAME" in groups or labels:
            return "value" if self.rows.names_text(head, "" if groups else self._first(column)) else "label"
        unknown = heading is None and not groups and self.rows.said(head) == Said(name=head)
        over = " ".join(self.region.head.get(column, ()))
        return "" if head and unknown and not concepts_said(over) else "value"

    def _first(self, column: int) -> str:
        """The first text of a column."""
        return next((c.text for _, cells, _ in self.region.rows for c in cells if c.column == column), "")

    def _says_nothing(self, groups: set[str], kinds: Counter[Kind]) -> bool:
        """Whether a column is one of remarks, of kinds or of numbers."""
        kind = "KIND" in groups and not kinds["value"]
        return "NOTE" in groups or kind or ("CHAR-ID" in groups and not kinds["label"])

    def _are_names(self, column: int) -> bool:
        """Whether a column below a word for remarks (``Description``) holds the names, as no other column does."""
        words, head = self.rows.words, self.region.head
        if any("NAME" in words.groups(texts[-1]) for c, texts in head.items() if c != column):
            return False
        texts = [c.text for _, cells, _ in self.region.rows for c in cells if c.column == column]
        return 2 * sum(words.heading(text) is not None or bool(concepts_said(text)) for text in texts) > len(texts)

    def _of_places(self, column: int) -> str:
        """The role of a column whose word is one for positions: its cells may be parts, or the bearings there."""
        texts = [c.text for _, cells, _ in self.region.rows for c in cells if c.column == column]
        if 2 * sum(looks_like_designation(text) for text in texts) > len(texts):
            return "value"
        return "label" if self._are_parts(column) else "position"

    def _is_choice(self, column: int) -> bool:
        """Whether a column of words right of values holds a choice, and begins no block of names anew."""
        head = self._own(column)
        left = [role for c, role in self.roles.items() if c < column]
        names = [self._own(c) for c, role in self.roles.items() if c < column and role == "label"]
        anew = not head or head in names or "NAME" in self.rows.words.groups(head)
        return "value" in left and not anew and not self._are_parts(column, or_places=True)

    def _are_parts(self, column: int, *, or_places: bool = False) -> bool:
        """Whether most cells of a column are words for a part, or for a position."""
        said = [self.rows.said(c.text) for _, cells, _ in self.region.rows for c in cells if c.column == column]
        return 2 * sum(bool(one.part or (or_places and one.position)) for one in said) > len(said)

    def _row(self, row: int, cells: list[Cell], sections: tuple[Said, ...], carried: dict[int, str]) -> None:
        """The values of one row; ``carried`` are the words that hold for blank cells below them."""
        units = (c.text.strip(_BRACKETS) for c in cells if self.roles[c.column] == "unit")
        unit = next((u for u in units if known_unit(u) is not None), "")
        said, machine, behind = self._carried(row, cells, carried), "", False
        texts = [two for one, two in pairwise(cells) if self._is_text_of(one, two)]
        for c in cells:
            role = "value" if c in texts else self.roles[c.column]
            if role == "machine":
                machine = c.text
            elif role == "position":
                station = "" if self.rows.said(c.text).whole else self.rows.words.station_said(c.text)
                station = station or self.rows.words.station(c.text)
                said.append(Said(station) if station else Said(whole=True))
                carried[c.column] = station
            elif role == "label" and c.kind != "value":
                if behind:  # another name beside the value of the first
                    said, behind = [s for s in said if s.position], False
                said += self._labelled(c, said, carried)
            elif role in ("value", "label"):
                behind = True
                self._value(row, c, machine, [*sections, *said], unit)

    def _labelled(self, c: Cell, said: list[Said], carried: dict[int, str]) -> list[Said]:
        """What a word before the values of its row says, and the word for a position or part over its column."""
        for column in [k for k in carried if k >= c.column and self.roles[k] == "label"]:
            del carried[column]
        carried[c.column] = c.text
        over = self.rows.said(self._own(c.column))
        of_column = [over] if (over.position or over.part) and over not in said else []
        return [*of_column, *map(self.rows.said, c.text.split(_PATH))]

    def _is_text_of(self, one: Cell, two: Cell) -> bool:
        """Whether a cell in a row below no heading is the text that the word right before it names."""
        beside = one.column + 1 == two.column and one.kind == "label" and not self.region.head
        return beside and self.rows.names_text(one.text)

    def _carried(self, row: int, cells: list[Cell], carried: dict[int, str]) -> list[Said]:
        """What words above say of a row whose cells below them are blank."""
        at = {c.column for c in cells}
        first = min((c for c in at if self.roles[c] == "label"), default=-1)
        said: list[Said] = []
        for column, text in sorted(carried.items()):
            if column in at:
                continue
            if self.roles[column] == "position" and text:
                said.append(Said(text))
                self.tree.below.append((row, column))
            elif self.roles[column] == "label" and column < first:
                said += map(self.rows.said, text.split(_PATH))
        return said

    def _value(self, row: int, c: Cell, machine: str, beside: list[Said], unit: str) -> None:
        """Put one value below the words for it."""
        words, said = self.rows.words, [*beside, *self._over(c.column, any(one.name for one in beside))]
        of_whole = max((k for k, one in enumerate(said) if one.whole), default=-1)
        position = next((one.position for one in reversed(said[of_whole + 1 :]) if one.position), "")
        parts, names, aspects = (
            [text for one in said if (text := getattr(one, sort))] for sort in ("part", "name", "aspect")
        )
        if parts and aspects and not names and "VALUE" in words.groups(aspects[-1]):
            names, aspects, unit = ["diameter"], aspects[:-1], unit or words.unit_of(aspects[-1])  # of the seat there
        inner = [*dict.fromkeys(parts), *names, *aspects]
        if inner and (c.kind == "value" or (c.kind != "unit" and names and self.rows.names_text(names[-1], c.text))):
            unit = unit or self.region.units.get(c.column, "").strip(_BRACKETS)
            self._put((row, c.column), c, (machine, position), inner, aspects[-1:], unit)

    def _put(
        self, at: tuple[int, int], c: Cell, of: tuple[str, str], inner: list[str], aspects: list[str], unit: str
    ) -> None:
        """Put one value below its keys, with its unit where its own word has none."""
        unit = unit if c.kind == "value" and not CLASS_ONLY.fullmatch(c.text) else ""
        if aspects and unit and not self.rows.words.unit_of(aspects[0]):
            inner[-1] = f"{inner[-1]} [{unit}]"
        machine, position = of
        self.tree.machines |= {machine} - {""}
        self.tree.positions |= {position} - {""}
        outer = [*(["machines", machine] if machine else []), *(["stations", position] if position else [])]
        value = c.raw.strip() if isinstance(c.raw, str) else c.raw
        self.tree.put((*outer, *inner), value, "" if aspects else unit, at)

    def _over(self, column: int, named: bool) -> list[Said]:
        """What the words over a column say; the word for the one value of a row that is named says nothing."""
        said = [self.rows.said(text) for text in self._heads(column)]
        last = said[-1].aspect if said else ""
        plain = named and last and not self.several and _ITS_VALUE.intersection(self.rows.words.groups(last))
        return said[:-1] if plain else said

    def _heads(self, column: int) -> tuple[str, ...]:
        """The words over a column; over one without any those of a position or part further left, which span it."""
        head = self.region.head
        if column in head:
            return head[column]
        left = max((c for c in head if c < column), default=None)
        over = head[left] if left is not None else ()
        return over if all((said := self.rows.said(text)).position or said.part for text in over) else ()


def _alike(own: list[str], said: Said, words: list[str]) -> Said | None:
    """What words say that are those of a position but for one, which is of the position; or None."""
    differ = [(one, two) for one, two in zip(own, words, strict=False) if one != two]
    if len(own) != len(words) or len(own) < 2 or len(differ) != 1 or differ[0][0] not in said.position.split():
        return None
    position = [differ[0][1] if word == differ[0][0] else word for word in said.position.split()]
    return evolve(said, position=" ".join(position))
