"""Lists of measured values: first-article and inspection lists, read for what was measured and not for what is drawn.

A list is read as the table it would be if the measured column held the design values: the same words, units and
layouts, with every column of nominals, limits and verdicts put aside.
"""

import os
import re
from collections.abc import Sequence
from typing import Any

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from linter.model.places import Place
from linter.model.stations import Problem, Stations
from linter.model.vocabulary import parameter, vocabulary
from linter.reading.cells.numbers import read_number, vote_decimal
from linter.reading.cells.signs import ReadError, caseless
from linter.reading.cells.units import conversion
from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.files.intake import Source, load, visible
from linter.reading.layouts.header_roles import header_roles
from linter.reading.layouts.sheet import lay_out_grid
from linter.reading.layouts.strips import Found
from linter.reading.layouts.together import take_apart
from linter.reading.settling.stations import Resolver
from linter.reading.table import choose_decimal
from linter.reading.words.headings import Words
from linter.reading.words.measured_words import BY_WORD, MEASURED, PART, UNCERTAINTY, UNITS
from linter.reading.words.names import Names

_NUMBERED = re.compile(r"(.*[^\W\d])[ _.#-]*\(?(\d{1,4})\)?")
_LOOKED_AT = 60
#: Roles of columns that state the drawing.
_DRAWN = ("VALUE", "EXPR", "UPPER", "LOWER", "MAX", "MIN", "CLASS", "RESULT")


@frozen
class Measured:
    """One measured value.

    Attributes
    ----------
    parameter : str
        Parameter of the vocabulary, or a key of :data:`~linter.reading.words.measured_words.OF_PARTS`.
    machine, station, part : str
        Whose it is; empty where the list does not say it.
    value : float
        In the canonical unit of its parameter (mm for rings, N for the spring).
    uncertainty : float or None
        Expanded uncertainty in the same unit, where the list states it.
    place : Place or None
        Where it stands.
    read : str
        As written.
    """

    parameter: str
    machine: str
    station: str
    part: str
    value: float
    uncertainty: float | None
    place: Place | None
    read: str


@frozen
class MeasuredList:
    """A list as understood: its values, the drawing it says it belongs to, and what could not be understood."""

    file: str
    sha256: str
    values: tuple[Measured, ...]
    drawing_number: str
    drawing_revision: str
    problems: tuple[Problem, ...]
    unknown: tuple[tuple[str, Place], ...]


def read_measured(
    path: str | os.PathLike[str], names: Names | None = None, *, shown_as: str | None = None
) -> MeasuredList:
    """Read a list of measured values (workbook or delimited text, a characteristic a row).

    Parameters
    ----------
    path, names, shown_as
        As for :func:`linter.reading.read_table`.

    Returns
    -------
    MeasuredList
        Several columns of measured values (``Actual 1``, ``Actual 2``) and a column of parts give one part each.

    Raises
    ------
    InputError
        If the file cannot be read, or no column of it holds measured values.
    """
    source = load(path, shown_as)
    words = Words(names or Names.built_in())
    values: list[Measured] = []
    problems: list[Problem] = []
    unknown: list[tuple[str, Place]] = []
    drawing: dict[str, str] = {}
    heads = 0
    grids, pointers = _grids(source, words)
    for grid in grids:
        head = _head(grid, words)
        if head is None:
            continue
        heads += 1
        decimal = words.names.mapping.decimal or _decimal(grid, head)
        _Listed(grid, head, words, source, values, problems, unknown, drawing, decimal).read()
    if not heads:
        raise source.refuse(
            "no-measured-values", "no column of measured values beside names of characteristics",
            "a list with a row for each characteristic and a column Measured, Actual, Ist, 実測値 or the like",
        )  # fmt: skip
    return MeasuredList(
        source.file, source.sha256, tuple(_pointed(v, pointers) for v in values), drawing.get("drawing_number", ""),
        drawing.get("drawing_revision", ""), tuple(problems), tuple(unknown),
    )  # fmt: skip


def _pointed(item: Measured, pointers: dict[int, str]) -> Measured:
    """A value of a document with its pointer in the place of a cell."""
    digits = re.search(r"\d+$", item.place.cell or "") if item.place is not None else None
    pointer = pointers.get(int(digits[0])) if digits else None
    return (
        item if item.place is None or pointer is None else evolve(item, place=Place(item.place.file, pointer=pointer))
    )


def _grids(source: Source, words: Words) -> tuple[list[Grid], dict[int, str]]:
    if source.kind == "workbook":
        from linter.reading.files.xlsx import read_grids

        return read_grids(source)[0], {}
    if source.kind == "text":
        from linter.reading.files.csv_text import read_grid

        return [read_grid(source, words.names.mapping.encoding or "")[0]], {}
    if source.kind == "xml":
        from linter.reading.layouts.qif_results import results_grid

        grid, pointers = results_grid(source)
        return [grid], pointers
    raise source.refuse("wrong-kind", f"a file of the kind {source.kind}", "a workbook (.xlsx), CSV or QIF results")


@frozen
class _Head:
    """A heading row: what each column that matters is."""

    row: int
    roles: dict[int, str]
    measured: tuple[int, ...]
    uncertainty: int | None
    part: int | None
    name: int


def _head(grid: Grid, words: Words) -> _Head | None:
    for row in range(min(grid.height - 1, _LOOKED_AT)):
        texts = {c: caseless(cell_text(grid.columns[c][row])) for c in range(grid.width)}
        measured = tuple(c for c, text in texts.items() if text and _is(text, MEASURED))
        if not measured:
            continue
        roles = header_roles(grid, row, words)
        found = [c for c, role in roles.items() if role == "NAME"] or [
            c for c, role in roles.items() if role in ("CHAR-ID", "NOTE") and c not in measured
        ]
        if found:
            uncertainty = next((c for c, text in texts.items() if text in UNCERTAINTY), None)
            part = next((c for c, text in texts.items() if text in PART and c not in found), None)
            roles = {c: role for c, role in roles.items() if c not in (uncertainty, part)}
            return _Head(row, roles, measured, uncertainty, part, _most_names(grid, row, found, words))
    return None


def _decimal(grid: Grid, head: _Head) -> Any:
    """The decimal mark that the numbers of a list prove, those of the drawing among them."""
    columns = [*head.measured, *(c for c, role in head.roles.items() if role in _DRAWN and role != "EXPR")]
    cells = (grid.columns[c][row] for c in columns for row in range(head.row + 1, grid.height))
    return vote_decimal([cell for cell in cells if isinstance(cell, str) and ("," in cell or "." in cell)])


def _is(text: str, known: frozenset[str]) -> bool:
    return text in known or bool((numbered := _NUMBERED.fullmatch(text)) and numbered[1].strip() in known)


def _most_names(grid: Grid, row: int, columns: Sequence[int], words: Words) -> int:
    def names(column: int) -> int:
        cells = [grid.text(r, column) for r in range(row + 1, min(grid.height, row + 1 + _LOOKED_AT))]
        return sum(bool(c) and (caseless(c) in BY_WORD or words.heading(c) is not None) for c in cells)

    return max(columns, key=names)


@frozen
class _Listed:
    """The rows of one list, read part by part."""

    grid: Grid
    head: _Head
    words: Words
    source: Source
    values: list[Measured]
    problems: list[Problem]
    unknown: list[tuple[str, Place]]
    drawing: dict[str, str]
    decimal: Any

    def _of_parts(self, row: int) -> tuple[str, str] | None:
        """What a row measures that is no parameter, and the station that its name ends with; None for any other row."""
        text = self._text(row, self.head.name)
        if name := BY_WORD.get(caseless(text)):
            return name, ""
        front, _, last = text.rpartition(" ")
        name = BY_WORD.get(caseless(front))
        return (name, last) if name else None

    def read(self) -> None:
        head = self.head
        rows = np.arange(head.row + 1, self.grid.height)
        parts = np.array([self._part(int(row)) for row in rows], dtype=object)
        several = len(head.measured) > 1
        for column in head.measured:
            label = cell_text(self.grid.columns[column][head.row])
            for part in dict.fromkeys(parts.tolist()):
                at = rows[parts == part]
                self._of_part(f"{part} {label}".strip() if several else part, column, at)

    def _part(self, row: int) -> str:
        return "" if self.head.part is None else cell_text(self.grid.columns[self.head.part][row])

    def _of_part(self, part: str, column: int, rows: NDArray[np.intp]) -> None:
        special = [int(r) for r in rows if self._of_parts(int(r)) is not None]
        filled = [int(r) for r in rows if not is_blank(self.grid.columns[column][int(r)]) and int(r) not in special]
        for row in special:
            self._special(part, row, column)
        if filled:
            self._plain(part, column, filled)

    def _special(self, part: str, row: int, column: int) -> None:
        cell = self.grid.columns[column][row]
        if is_blank(cell):
            return
        name, station = self._of_parts(row) or ("", "")
        place = self.grid.place(row, column)
        unit = next((self._text(row, c) for c, role in self.head.roles.items() if role == "UNIT"), "")
        text = cell_text(cell)
        number = read_number(text, self.decimal)
        factor = conversion(unit, UNITS[name]) if unit else 1.0
        if isinstance(number, ReadError) or factor is None:
            expected = f"a number in {UNITS[name]}" + ("" if factor else f", not in {visible(unit)}")
            self._tell(place, text, expected)
            return
        value = float(number.value) * factor
        self.values.append(
            Measured(name, self._word(row, "MACHINE"), self._word(row, "STATION") or station, part, value,
                     self._uncertainty(row, factor), place, text)
        )  # fmt: skip

    def _plain(self, part: str, column: int, rows: list[int]) -> None:
        """Rows of parameters, read as a table whose values are the measured ones."""
        found = Found()
        grid = self._as_designed(column, rows)
        lay_out_grid(grid, self.words, found)
        take_apart(found, self.source.file)
        if not any(block.strips for block in found.blocks):
            self._tell_unknown(rows, column, set())
            return
        resolver = Resolver(
            self.source.file, found, choose_decimal(found, self.decimal), self.words.names.mapping, lists=True
        )
        stations = resolver.resolve()
        self.problems.extend(p for p in stations.problems if p.kind in ("unreadable", "disagreement"))
        used = {(place.sheet, place.cell) for place in self._add(part, stations, column)}
        told = {(p.place.sheet, p.place.cell) for p in stations.problems if p.place is not None}
        self._tell_unknown(rows, column, used | told)

    def _add(self, part: str, stations: Stations, column: int) -> list[Place]:
        places = []
        for key in ("drawing_number", "drawing_revision"):
            if key in stations.texts and (text := str(stations.texts[key][0])):
                self.drawing.setdefault(key, text)
        for entry in vocabulary().values():
            if entry.kind not in ("number", "toleranced"):
                continue
            values = stations.size(entry.name).nominal if entry.kind == "toleranced" else stations.number(entry.name)
            for row in np.flatnonzero(np.isfinite(values)).tolist():
                place = stations.place(entry.name, row)
                if place is None or (entry.level == "machine" and row not in stations.first_rows):
                    continue
                at = self._row(place)
                station = "" if entry.level == "machine" else str(stations.text("station")[row])
                machine = stations.machines[int(stations.machine_row[row])]
                stated = at is not None and self._word(at, "MACHINE")
                unit = (
                    next((self._text(at, c) for c, role in self.head.roles.items() if role == "UNIT"), "")
                    if (at is not None)
                    else ""
                )
                factor = (conversion(unit, entry.unit) if unit and entry.unit else None) or 1.0
                self.values.append(
                    Measured(entry.name, machine if stated else "", station, part, float(values[row]),
                             None if at is None else self._uncertainty(at, factor), place,
                             "" if at is None else self._text(at, column))
                )  # fmt: skip
                places.append(place)
        return places

    def _as_designed(self, column: int, rows: list[int]) -> Grid:
        """The list as a table: the measured column is the value, what states the drawing is blank."""
        keep = np.array([*range(self.head.row + 1), *rows], dtype=np.intp)
        blank = {
            c for c, role in self.head.roles.items() if role in _DRAWN and c != self.head.name
        } | {*self.head.measured, self.head.uncertainty, self.head.part}  # fmt: skip
        columns: list[Any] = []
        for c in range(self.grid.width):
            cells = np.array([self.grid.columns[c][int(r)] for r in keep] + [None], dtype=object)[:-1]
            if c == column:
                cells[self.head.row] = "Value"
            elif c in blank:
                cells[self.head.row :] = None
            columns.append(cells)
        return evolve(
            self.grid, columns=columns, lines=self.grid.lines[keep], merged=(), formats={}, hidden_rows=frozenset(),
            unended=0, packed=False,
        )  # fmt: skip

    def _row(self, place: Place) -> int | None:
        digits = re.search(r"\d+$", place.cell or "")
        rows = np.flatnonzero(self.grid.lines == int(digits[0] if digits else -1))
        return int(rows[0]) if len(rows) else None

    def _text(self, row: int, column: int) -> str:
        return cell_text(self.grid.columns[column][row])

    def _word(self, row: int, role: str) -> str:
        return next((self._text(row, c) for c, found in self.head.roles.items() if found == role), "")

    def _uncertainty(self, row: int, factor: float) -> float | None:
        if self.head.uncertainty is None or not (text := self._text(row, self.head.uncertainty)):
            return None
        number = read_number(text.lstrip("±+ "), "," if "," in text else ".")
        if isinstance(number, ReadError) or number.value < 0:
            place = self.grid.place(row, self.head.uncertainty)
            self._tell(place, text, "an expanded uncertainty of 0 or more in the unit of its row")
            return None
        return float(number.value) * factor

    def _tell(self, place: Place, read: str, expected: str) -> None:
        message = f"{place}: read {visible(read, 60)!r}; expected {expected}; the value is not used."
        self.problems.append(Problem("unreadable", None, None, place, read, expected, message, "measured-value"))

    def _tell_unknown(self, rows: list[int], column: int, used: set[tuple[str | None, str | None]]) -> None:
        for row in rows:
            place = self.grid.place(row, column)
            if (place.sheet, place.cell) not in used:
                self.unknown.append((self._text(row, self.head.name) or "a row without a name", place))


def unit_of(name: str) -> str:
    """Unit of a measured value in :class:`Measured`."""
    return UNITS.get(name) or parameter(name).unit
