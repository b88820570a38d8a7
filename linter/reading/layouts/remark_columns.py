"""Columns of remarks whose texts say what has no column of its own: a class, a role, a spring, what balls are made of.

A remark speaks of what its row states: a class of the seat whose size stands there (``k6`` behind size and deviations),
the other words of the bearing or the spring that the row names. What a table states itself goes first, and remarks that
contradict each other say nothing.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from functools import cache

import numpy as np
from attrs import define, evolve, field, frozen

from linter.mechanics.limits import classes_for
from linter.model.stations import Unused
from linter.model.vocabulary import parameter
from linter.reading.cells.choices import choice_texts, read_choice
from linter.reading.cells.several import fill_said, free_ring_said, is_free
from linter.reading.cells.signs import EASTERN, ReadError, caseless
from linter.reading.files.grids import LONGEST_MIXED, Grid, cell_text, is_blank, object_column
from linter.reading.files.intake import visible
from linter.reading.layouts.remarks import class_remarked
from linter.reading.layouts.strips import Block, Found, Strip, grid_strip
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said

_HEADS = 60  # rows that may hold the heading of a table
_CLASS = re.compile(r"(?P<word>[^\d(（]{2,20}?)?[ :：=]*[(（]?(?P<name>(?:js|JS|[a-zA-Z])\d{1,2})(?![\w/])(?P<rest>.*)")
_OTHER_CLASS = re.compile(r"(?<![^\W\d_])(?:js|JS|[d-hjkmnprsD-HJKMNPRS])(?:[3-9]|1[01])(?![^\W_])")
_HAS_CLASS = re.compile(r"(?:^|[\d\s(/])(?:js|JS|[a-hj-zA-HJ-Z])\d{1,2}(?!\d|[.,]\d)")
_THREAD = re.compile(r"M\d{1,2}")
_APART = re.compile(
    r"\s*[,;，；、：:/()（）+]\s*|\s+[-–—]\s+|\s+(?:und|and|et|y|e|и|mit|with|avec|con|с|со)\s+", re.IGNORECASE
)
_BEFORE = re.compile(
    r"(?:mit|with|w/|con|avec|inkl\.?|incl\.?|mit einer|con una|avec une|с|со|带|帶|用)\s*(?=\S)", re.IGNORECASE
)
_SIZES = {"shaft": "shaft_seat_diameter", "housing": "housing_seat_diameter"}
_OF_BEARING = frozenset(
    ("bearing_designation", "bearing_type", "bore_diameter", "outside_diameter", "ring_width", "axial_role")
)
_OF_SPRING = frozenset(
    ("preload_force", "preload_method", "spring_rate", "spring_free_length", "spring_installed_length")
)
_FIT = frozenset(("fit", "tolerance", "class"))
_SHORTEST = 4  # letters of a word for a role
_SPRING = "spring"
_SHORTEST_SPRING = 8  # letters of a word for a kind of spring: coil, disc and wave may be of other things
_AMBIGUOUS = "ambiguous-choice"


@frozen
class _Cell:
    """A cell that a table reads, in a row with a remark."""

    block: Block
    strip: Strip
    index: int

    @property
    def row(self) -> int:
        """Its row of the block."""
        return int(self.strip.rows[self.index])

    @property
    def key(self) -> tuple[int, int]:
        """Block and row."""
        return id(self.block), self.row


@frozen(eq=False)
class _Remark:
    """A remark: its text, where it stands among what is read (line of a grid, object of a document), how it is kept.

    ``strip`` gives from parameter, text, row of the block and aspect the strip with the place of the remark.
    """

    text: str
    where: int | str
    at: str
    strip: Callable[[str, str, int, str], Strip]


@frozen
class _Said:
    """What a remark states of the block's row of a cell: a parameter, the text that says it and what that means."""

    parameter: str
    text: str
    meaning: str
    cell: _Cell

    @property
    def key(self) -> tuple[str, str, str]:
        """Machine, station and parameter; no station for what is of a machine."""
        block, of_machine = self.cell.block, parameter(self.parameter).level == "machine"
        return block.machines[self.cell.row], "" if of_machine else block.stations[self.cell.row], self.parameter


def take_remarks(grid: Grid, blocks: Sequence[Block], words: Words, found: Found) -> None:
    """Read what the columns of remarks of a grid say beside the values of its tables."""
    heads = {}
    if blocks and grid.height <= LONGEST_MIXED:
        heads = {c: row for c in range(grid.width) if (row := _heading_row(grid, c, words)) is not None}
    remarks = {
        (row, column): _in_grid(grid, row, column, header)
        for column, header in heads.items()
        for row in range(header + 1, grid.height)
        if type(grid.columns[column][row]) is str and not is_blank(grid.columns[column][row])
    }
    taken = _Remarks(blocks, words, lambda strip, k: _line_of(strip, k, grid.sheet)).read(remarks) if remarks else set()
    for column, header in heads.items() if taken else ():
        _list_the_rest(grid, column, header, {row for row, of in taken if of == column}, found)


def take_remarks_of_objects(blocks: Sequence[Block], words: Words, found: Found) -> None:
    """Read what the remarks of a JSON document say beside the values of the objects that they stand in."""
    remarks = {
        (index, 0): _in_object(unused)
        for index, unused in enumerate(found.unused)
        if unused.place.pointer and "NOTE" in words.groups(unused.place.pointer.rpartition("/")[2])
    }
    taken = _Remarks(blocks, words, _object_of).read(remarks) if remarks else set()
    gone = {index for index, _ in taken}
    found.unused[:] = [unused for index, unused in enumerate(found.unused) if index not in gone]


def _heading_row(grid: Grid, column: int, words: Words) -> int | None:
    """The row of a column that heads remarks."""
    rows = range(min(grid.height, _HEADS))
    return next((row for row in rows if (text := grid.text(row, column)) and "NOTE" in words.groups(text)), None)


def _in_grid(grid: Grid, row: int, column: int, header: int) -> _Remark:
    """The remark in a cell of a grid."""
    whole, label = grid.text(row, column), grid.text(header, column)

    def strip(name: str, text: str, at: int, aspect: str) -> Strip:
        made = grid_strip(grid, name, [(row, column)], [at], aspect=aspect, label=label)
        made.whole[0], made.cells[0] = whole, text  # type: ignore[index]
        return made

    return _Remark(whole, int(grid.lines[row]), grid.place(row, column).cell or "", strip)


def _in_object(unused: Unused) -> _Remark:
    """The remark in an object of a document."""
    pointer = unused.place.pointer or ""

    def strip(name: str, text: str, at: int, aspect: str) -> Strip:
        rows, cells = np.array([at], dtype=np.intp), object_column([text])
        return Strip(name, cells, rows, aspect, label=unused.name, pointers=[pointer], whole={0: unused.value})

    return _Remark(unused.value, pointer.rpartition("/")[0], pointer, strip)


def _line_of(strip: Strip, index: int, sheet: str | None) -> int | None:
    """The line of a cell of this sheet."""
    return None if strip.lines is None or strip.sheet != sheet else int(strip.lines[index])


def _object_of(strip: Strip, index: int) -> str | None:
    """The object of a document that a cell stands in."""
    return None if strip.pointers is None else strip.pointers[index].rpartition("/")[0]


def _list_the_rest(grid: Grid, column: int, header: int, taken: set[int], found: Found) -> None:
    """The column of remarks among what is not used: what of it is not taken."""
    label, letters = grid.text(header, column), _letters(grid.place(header, column).cell)
    rest = [row for row in range(header + 1, grid.height) if grid.text(row, column) and row not in taken]
    for index, unused in enumerate(found.unused):
        if unused.name == label and _letters(unused.place.cell) == letters and unused.place.sheet == grid.sheet:
            samples = list(dict.fromkeys(visible(grid.text(row, column), 40) for row in rest))
            shown = ", ".join(samples[:3]) + (f", … ({len(rest)} cells)" if len(samples) > 3 else "")
            place = grid.place(rest[0], column) if rest else unused.place
            found.unused[index : index + 1] = [evolve(unused, value=shown, place=place)] if rest else []
            return


def _letters(cell: str | None) -> str:
    return (cell or "").rstrip("0123456789")


@define(eq=False)
class _Remarks:
    """What tables state, by where it stands, and what remarks say beside it."""

    blocks: Sequence[Block]
    words: Words
    where: Callable[[Strip, int], int | str | None]
    cells: dict[int | str, list[_Cell]] = field(factory=dict)
    stated: set[tuple[str, str, str]] = field(factory=set)
    classed: set[tuple[int, int, str]] = field(factory=set)

    def read(self, remarks: Mapping[tuple[int, int], _Remark]) -> set[tuple[int, int]]:
        """Add a strip for each thing that remarks state and nothing else does; the remarks that are taken."""
        self._look_at_tables()
        said: dict[tuple[str, str, str], list[tuple[_Said, tuple[int, int]]]] = {}
        for key, remark in remarks.items():
            cells = self.cells.get(remark.where, [])
            if cells and not any(cell.strip.at(cell.index) == remark.at for cell in cells):
                for one in self._says(remark.text.strip(), cells):
                    said.setdefault(one.key, []).append((one, key))
        taken: set[tuple[int, int]] = set()
        for several in said.values():
            if len({one.meaning for one, _ in several}) == 1:
                self._add(several[0][0], remarks[several[0][1]])
                taken.update(key for _, key in several)
        return taken

    def _look_at_tables(self) -> None:
        """What is read, by where it stands, and what is stated of whom."""
        for block in self.blocks:
            for strip in block.strips:
                for index, cell in enumerate(strip.cells.tolist()):
                    if is_blank(cell) or (where := self.where(strip, index)) is None:
                        continue
                    row = int(strip.rows[index])
                    self.cells.setdefault(where, []).append(_Cell(block, strip, index))
                    station = "" if parameter(strip.parameter).level == "machine" else block.stations[row]
                    self.stated.add((block.machines[row], station, strip.parameter))
                    if strip.aspect == "tolerance" and _HAS_CLASS.search(cell_text(cell)):
                        self.classed.add((id(block), row, strip.parameter))

    def _says(self, text: str, cells: Sequence[_Cell]) -> Iterator[_Said]:
        """What a remark states of the cells that are read beside it."""
        yield from self._class(text, cells)
        yield from _of_value(text, cells)
        named = {cell.strip.parameter for cell in cells}
        of_one = len({cell.key for cell in cells if cell.block.stations[cell.row]}) == 1
        of_station = [cell for cell in cells if cell.block.stations[cell.row]]
        if named & _OF_BEARING and of_one:
            said = _of_bearing(text)
        elif named & _OF_SPRING or (named & _OF_BEARING and of_station):
            said = {name: text for name, text in _of_bearing(text).items() if parameter(name).level == "machine"}
        else:
            return
        for name, words in said.items():
            meaning = read_choice(name, words)
            one = _Said(name, words, meaning if isinstance(meaning, str) else words, (of_station or [*cells])[0])
            if one.key not in self.stated:
                yield one

    def _class(self, text: str, cells: Sequence[_Cell]) -> Iterator[_Said]:
        """The class that a remark is or begins with, for the seats of its row that carry none."""
        match = _CLASS.match(text)
        if match is None or _OTHER_CLASS.search(match["rest"]) or (_THREAD.fullmatch(match["name"]) and match["rest"]):
            return
        name, word = match["name"], (match["word"] or "").strip()
        kind = "housing" if name[0].isupper() else "shaft"
        if name not in classes_for("hole" if kind == "housing" else "shaft"):
            return
        if word and not (concepts_said(word) & _FIT or "CLASS" in self.words.groups(word)):
            return
        seats = [cell for cell in cells if cell.strip.parameter == _SIZES[kind] and cell.strip.aspect == "value"]
        for cell in seats if len({cell.strip.parameter for cell in cells} & set(_SIZES.values())) == 1 else ():
            text = cell_text(cell.strip.cells[cell.index])
            if (*cell.key, cell.strip.parameter) not in self.classed and not _HAS_CLASS.search(text):
                yield _Said(cell.strip.parameter, name, name, cell)

    @staticmethod
    def _add(one: _Said, remark: _Remark) -> None:
        """One strip for what a remark states."""
        block, at, entry = one.cell.block, one.cell.row, parameter(one.parameter)
        if entry.level == "machine" and block.stations[at]:
            block.machines.append(block.machines[at])
            block.stations.append("")
            at = len(block.machines) - 1
        aspect = "tolerance" if entry.kind == "toleranced" else "value"
        block.strips.append(remark.strip(one.parameter, one.text, at, aspect))


def _of_value(text: str, cells: Sequence[_Cell]) -> Iterator[_Said]:
    """What a remark says of the one value beside it: how far grease fills the bearing, that a ring may move."""
    names = {cell.strip.parameter for cell in cells}
    if names == {"lubrication"} and (fill := fill_said(text)):
        yield _Said("grease_fill", fill, fill, cells[0])
    for ring, seat in (("inner", "shaft_seat_diameter"), ("outer", "housing_seat_diameter")):
        if names == {seat} and (is_free(text) or free_ring_said(text) == ring):
            yield _Said("free_ring", ring, ring, cells[0])


def take_springs_of_names(blocks: Sequence[Block]) -> None:
    """Read the kind of spring that the name of its force, rate or length says (``Wellfederkraft``, ``皿ばね荷重``)."""
    of_springs = [(b, s) for b in blocks for s in b.strips if s.parameter in _OF_SPRING and s.aspect == "value"]
    kinds = {strip.label: kind for _, strip in of_springs if (kind := _kind_said(strip.label))}
    if not kinds:
        return
    stated = {name: {b.machines[r] for b in blocks for s in b.strips if s.parameter == name for r in s.rows}
              for name in ("spring_kind", "preload_method")}  # fmt: skip
    for block, strip in of_springs:
        machines = {block.machines[row] for row in strip.rows.tolist()}
        for name in stated if strip.label in kinds else ():
            text = kinds[strip.label] if name == "spring_kind" else _SPRING
            said = object_column([None if is_blank(cell) else text for cell in strip.cells.tolist()])
            if machines.isdisjoint(stated[name]):
                whole = dict.fromkeys(range(len(said)), strip.label)
                block.strips.append(evolve(strip, parameter=name, cells=said, unit="", own_unit=False, whole=whole))
                stated[name] |= machines


@cache
def _kind_said(label: str) -> str:
    """The kind of spring that a name holds; empty for none, and for two."""
    text = f" {caseless(label)}"
    said = {
        kinds[0] for word, kinds in choice_texts("spring_kind").items()
        if len(kinds) == 1 and (EASTERN.search(word) or f" {caseless(word)}" in text) and caseless(word) in text
        and len(word) >= (2 if EASTERN.search(word) else _SHORTEST_SPRING)
    }  # fmt: skip
    return said.pop() if len(said) == 1 else ""


def _of_bearing(text: str) -> dict[str, str]:
    """Words of a remark about a bearing, by the parameter that each states."""
    roles: dict[str, str] = {}
    found: dict[str, str] = {}
    for piece in _pieces(text):
        for name in ("clearance_class", "tolerance_class"):
            if code := class_remarked(name, piece):
                found.setdefault(name, code)
        if (role := _read("axial_role", piece)) not in ("", "?"):
            roles.setdefault(role, piece)
        if _read("spring_kind", piece):
            found.setdefault("spring_kind", piece)
        if _read("preload_method", piece) == "spring" or "spring_kind" in found:
            found.setdefault("preload_method", piece)
        if _read("ball_material", piece) not in ("", "steel"):
            found.setdefault("ball_material", piece)
    if "preload_method" in found and set(roles) <= {"floating", "spring-loaded"}:
        roles = {"spring-loaded": roles.get("spring-loaded", "spring-loaded")}
    if len(roles) == 1:
        found["axial_role"] = next(iter(roles.values()))
    return found


def _pieces(text: str) -> Iterable[str]:
    """A remark whole, then its parts, each with and without the word before it (``mit``)."""
    pieces = dict.fromkeys((text, *_APART.split(text)))
    return dict.fromkeys(p for piece in pieces for p in (piece, _BEFORE.sub("", piece, count=1)) if p)


def _is_word(piece: str) -> bool:
    """Whether a piece is long enough to be a word of the trade; signs of the east say more than letters."""
    return len(piece) >= (_SHORTEST if piece[:1] < "\u3000" else 2) and not piece.isdigit()


def _read(name: str, piece: str) -> str:
    """The choice that a piece states, ``?`` where it leaves open which; empty for none."""
    choice = read_choice(name, piece) if _is_word(piece) else ""
    if isinstance(choice, ReadError):
        return "?" if choice.code == _AMBIGUOUS else ""
    return choice
