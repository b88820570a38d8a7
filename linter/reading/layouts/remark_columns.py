"""Columns of remarks whose texts say what has no column of its own: a class, a role, a spring, what balls are made of.

A remark speaks of what its row states: a class of the seat whose size stands there (``k6`` behind size and deviations),
the other words of the bearing or the spring that the row names. What a table states itself goes first, and remarks that
contradict each other say nothing.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence

import numpy as np
from attrs import define, evolve, field, frozen

from linter.mechanics.limits import classes_for
from linter.model.stations import Unused
from linter.model.vocabulary import parameter
from linter.reading.cells.choices import read_choice
from linter.reading.cells.several import fill_said, is_free
from linter.reading.cells.signs import ReadError, caseless
from linter.reading.cells.springs import of_oil
from linter.reading.files.grids import LONGEST_MIXED, Grid, cell_text, is_blank, object_column
from linter.reading.files.intake import visible
from linter.reading.layouts.in_passing import may_say, names_position, positions_in, said_in_passing, without
from linter.reading.layouts.remarks import class_remarked, heads_remarks, preload_remarked, says_both
from linter.reading.layouts.springs_of_names import OF_SPRING
from linter.reading.layouts.strips import Block, Found, Strip, grid_strip
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said

_HEADS = 60  # rows that may hold the heading of a table
_CLASS = re.compile(r"(?P<word>[^\d(（]{2,20}?)?[ :：=]*[(（]?(?P<name>(?:js|JS|[a-zA-Z])\d{1,2})(?![\w/])(?P<rest>.*)")
_ALONE = re.compile(r"\s*(?:js|JS|[a-zA-Z])\d{1,2}\s*")  # the last piece of a remark
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
_OF_OIL = ("lubrication", "base_oil_viscosity_40")
#: Headings over what the names mean, not over what is remarked on their values.
_OF_NAMES = frozenset(
    ("meaning", "bedeutung", "signification", "significado", "significato", "意味", "含义", "значение")
)
_FIT = frozenset(("fit", "tolerance", "class"))
_SHORTEST = 4  # letters of a word for a role
#: Words for a bearing with rings of steel and balls of silicon nitride (ISO 26602), from memory.
_HYBRID = re.compile(
    r"hybrid(?:lager|[ -]?bearings?)?|(?:roulement |rodamiento |cuscinetto )?(?:hybride|híbrido|ibrido)"
    r"|гибридный(?: подшипник)?|ハイブリッド(?:軸受)?|混合陶瓷(?:轴承)?|混合轴承"
)
_MAY_SAY = "a remark that may say how a bearing is located or preloaded"
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
    read = (
        {strip.at(k) for block in blocks for strip in block.strips for k in range(len(strip.cells))} if remarks else ()
    )
    for column, header in heads.items() if taken else ():
        own = {row for row in range(header + 1, grid.height) if grid.place(row, column).cell in read}
        _list_the_rest(grid, column, header, own, found)
    named = {unused.place.cell for unused in found.unused if unused.place.sheet == grid.sheet}
    for key, remark in remarks.items():
        of_name = caseless(grid.text(heads[key[1]], key[1])) in _OF_NAMES
        if not of_name and remark.at not in read and remark.at not in named and may_say(remark.text):
            found.leave(Unused(grid.text(heads[key[1]], key[1]), visible(remark.text), grid.place(*key), _MAY_SAY))


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
    return next((row for row in rows if (text := grid.text(row, column)) and heads_remarks(text, words)), None)


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
        yield from _method_of_oil(text, cells)
        yield from (
            one for one in (*_of_value(text, cells), *self._in_passing(text, cells)) if one.key not in self.stated
        )
        named = {cell.strip.parameter for cell in cells}
        of_one = len({cell.key for cell in cells if cell.block.stations[cell.row]}) == 1
        of_station = [cell for cell in cells if cell.block.stations[cell.row]]
        if named & _OF_BEARING and of_one:
            said = _of_bearing(text)
        elif named & OF_SPRING or (named & _OF_BEARING and of_station):
            said = {name: text for name, text in _of_bearing(text).items() if parameter(name).level == "machine"}
        else:
            return
        if force := preload_remarked(text, self.words):
            said["preload_force"] = force
        for name, words in said.items():
            meaning = read_choice(name, words) if parameter(name).kind == "choice" else words
            for at in self._whose(text, name, (of_station or [*cells])[0]):
                one = _Said(name, words, meaning if isinstance(meaning, str) else words, at)
                if one.key not in self.stated:
                    yield one

    @staticmethod
    def _whose(text: str, name: str, beside: _Cell) -> Sequence[_Cell]:
        """The cells of whose positions a remark says something: of the one beside it, of both for a class of both."""
        block, machine = beside.block, beside.block.machines[beside.row]
        both = name.endswith("_class") and says_both(text)
        rows = zip(block.machines, block.stations, strict=True)
        places = dict.fromkeys(place for of, place in rows if both and of == machine and place)
        return [at for place in places if (at := _cell_of(block, place, beside)) is not None] or [beside]

    def _in_passing(self, text: str, cells: Sequence[_Cell]) -> Iterator[_Said]:
        """What a remark says in passing of the bearing at the position that it names, or else at that of its row."""
        named = {cell.strip.parameter for cell in cells}
        if not named & {*_OF_BEARING, *OF_SPRING, *_SIZES.values()}:
            return
        block = cells[0].block
        there = list(positions_in(text, {*block.stations} - {""}))
        own = {cell.block.stations[cell.row] for cell in cells} - {""}
        rest = without(text, there)
        position = there if there else [] if names_position(rest, self.words) else [*own]
        by_pieces = _of_bearing(text) if named & {*_OF_BEARING, *OF_SPRING} and not there else {}
        for name, word in said_in_passing(rest, of_spring=bool(named & OF_SPRING)).items():
            if name in by_pieces:
                continue
            if parameter(name).level == "machine":
                if named & {*_OF_BEARING, *OF_SPRING}:
                    yield _Said(name, word, word, cells[0])
            elif len(position) == 1 and (at := _cell_of(block, position[0], cells[0])) is not None:
                yield _Said(name, word, word, at)

    def _class(self, text: str, cells: Sequence[_Cell]) -> Iterator[_Said]:
        """The class that a remark is, begins with or ends in, for the seats of its row that carry none."""
        before, _, last = text.replace(";", ",").rpartition(",")
        match = _CLASS.match(text if _OTHER_CLASS.search(before) or not _ALONE.fullmatch(last) else last.strip())
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
        aspect = "tolerance" if one.parameter in _SIZES.values() else "value"
        block.strips.append(remark.strip(one.parameter, one.text, at, aspect))


def _cell_of(block: Block, station: str, beside: _Cell) -> _Cell | None:
    """Some cell that is read of a station of the machine of another cell."""
    for strip in block.strips:
        for index, row in enumerate(strip.rows.tolist()):
            if block.stations[row] == station and block.machines[row] == block.machines[beside.row]:
                return _Cell(block, strip, index)
    return None


def _method_of_oil(text: str, cells: Sequence[_Cell]) -> Iterator[_Said]:
    """How an oil lubricates, where the value beside the remark states the class of its viscosity and no more."""
    values = [cell_text(cell.strip.cells[cell.index]) for cell in cells if cell.strip.parameter in _OF_OIL]
    if len(values) != len(cells) or any(set(of_oil("lubrication", value)) != {_OF_OIL[1]} for value in values):
        return
    methods = {word: piece for piece in _pieces(text) if (word := _read("lubrication", piece)).startswith("oil")}
    for word, piece in methods.items() if len(methods) == 1 else ():
        yield _Said("lubrication", piece, word, cells[0])


def _of_value(text: str, cells: Sequence[_Cell]) -> Iterator[_Said]:
    """What a remark says of the one value beside it: how far grease fills the bearing, that a ring may move."""
    names = {cell.strip.parameter for cell in cells}
    if names == {"lubrication"} and (fill := fill_said(text)):
        yield _Said("grease_fill", fill, fill, cells[0])
    for ring, seat in (("inner", "shaft_seat_diameter"), ("outer", "housing_seat_diameter")):
        if names == {seat} and len({cell.key for cell in cells}) == 1 and is_free(text):
            yield _Said("free_ring", ring, ring, cells[0])


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
        if _HYBRID.fullmatch(caseless(piece)):
            found.setdefault("ball_material", "silicon nitride")
        elif _read("ball_material", piece) not in ("", "steel"):
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
