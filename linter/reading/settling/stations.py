"""Strips of raw cells to stations: which row each cell belongs to, one value per parameter and row.

Nothing is guessed and nothing is lost: a cell is used, or it is a :class:`~linter.model.stations.Problem`, or
it is listed as unused.
"""

from collections.abc import Callable, Iterator
from typing import Any

import numpy as np
from attrs import define, evolve, field
from numpy.typing import NDArray

from linter.model.places import PlaceColumn
from linter.model.stations import Bools, Choice, Problem, Stations, Toleranced, Unused
from linter.model.vocabulary import Parameter, parameter, vocabulary
from linter.reading.cells.numbers import Decimal
from linter.reading.cells.units import conversion
from linter.reading.files.grids import cell_text
from linter.reading.files.intake import InputError, visible
from linter.reading.layouts.strips import Found, Strip
from linter.reading.settling.absurd import doubted_figures
from linter.reading.settling.bearing_list import BearingList
from linter.reading.settling.columns import read_values
from linter.reading.settling.derive import DESIGNATION, derive, known_designation
from linter.reading.settling.doubted import doubted_units, without
from linter.reading.settling.keys import EVERY, MOST_ALIKE, NONE, Keys, index_keys, more_alike, name_only_station
from linter.reading.settling.measure import classes_beside, stated_in_inches, unit_of_size
from linter.reading.settling.missing import Missing, tell_missing, unused
from linter.reading.settling.one_value import Stated, settle_numbers, settle_words
from linter.reading.settling.sizes import settle_sizes
from linter.reading.settling.understood import Used, used_cells
from linter.reading.settling.unused_data import tell_unused
from linter.reading.settling.values import Terms
from linter.reading.settling.versions import judge_versions
from linter.reading.words.mapping import Mapping
from linter.reading.words.part_evidence import RING_OF_SEAT

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]


@define
class _Alike:
    """How often a parameter has one sort of trouble, and which problem was the last one told."""

    count: int = 0
    last: int = 0


@define(eq=False)
class Columns:
    """Columns of the stations while they are filled."""

    numbers: dict[str, Floats] = field(factory=dict)
    toleranced: dict[str, Toleranced] = field(factory=dict)
    choices: dict[str, Choice] = field(factory=dict)
    texts: dict[str, NDArray[Any]] = field(factory=dict)
    places: dict[str, PlaceColumn] = field(factory=dict)

    def stations(self, keys: Keys) -> Stations:
        """The columns as stations, without problems."""
        return Stations(
            tuple(keys.machines), keys.machine_row, self.numbers, self.toleranced, self.choices, self.texts, self.places
        )


@define(eq=False)
class Resolver:
    """Works through the parameters of one file; ``lists`` where it is a list of bearings and no table of seats."""

    file: str
    found: Found
    decimal: Decimal | None
    mapping: Mapping
    bearings: BearingList | None = None
    lists: bool = False
    keys: Keys = field(factory=Keys)
    problems: list[Problem] = field(factory=list)
    unused: list[Unused] = field(factory=list)
    missing: list[Missing] = field(factory=list)
    used: list[tuple[Parameter, list[Stated]]] = field(factory=list)
    columns: Columns = field(factory=Columns)
    in_inches: bool = False
    _alike: dict[tuple[str, str], "_Alike"] = field(factory=dict)

    def resolve(self) -> Stations:
        """All parameters of the file as stations.

        Raises
        ------
        InputError
            If the file names no station.
        """
        name_only_station(self.found)
        self.keys = index_keys(self.file, self.found)
        self.problems.extend(self.found.problems)
        self.unused.extend(self.found.unused)
        rows = len(self.keys.machine_row)
        if rows == 0:
            seen = ", ".join(visible(word, 30) for word in self.found.seen[:8]) or "no station"
            raise InputError(
                "no-station", self.file, f"{seen}, but no bearing position", "at least one station (A, B, ...)"
            )
        strips: dict[str, list[tuple[int, Strip]]] = {}
        for index, block in enumerate(self.found.blocks):
            for strip in block.strips:
                strips.setdefault(strip.parameter, []).append((index, strip))
        self.in_inches = stated_in_inches(strip for several in strips.values() for _, strip in several)
        for name in vocabulary():
            if name in strips:
                self._one_parameter(parameter(name), strips[name])
        self._keys_as_texts()
        stations = self.columns.stations(self.keys)
        stations, doubts = doubted_figures(stations, self.file)
        self.problems.extend(doubts)
        stations = self._without_doubted(stations)
        self._tell_missing(stations)
        self._close_alike()
        if not self.lists:
            stations = self._filled(stations)
        order = {code: index for index, code in enumerate(("unreadable", "disagreement", "unused", "assumption"))}
        problems = sorted(self.problems, key=lambda p: (p.row is not None, p.row or 0, order[p.kind]))
        return evolve(stations, problems=tuple(problems))

    def _one_parameter(self, entry: Parameter, strips: list[tuple[int, Strip]]) -> None:
        stated = []
        of_size = unit_of_size(entry, [strip for _, strip in strips])
        if classed := entry.unit == "mm" and entry.kind == "toleranced" and classes_beside(s for _, s in strips):
            self.found.say("sizes with an ISO 286 class beside them are taken in mm where no unit is stated")
        for block_index, strip in strips:
            length_unit = self.found.blocks[block_index].length_unit or self.mapping.default_unit or ""
            if classed and strip.aspect == "value" and not self.in_inches:
                length_unit = length_unit or "mm"
            if strip.aspect != "value" and of_size:
                length_unit = of_size  # deviations and limits are in the unit of their size (ISO 129-1)
            terms = Terms(self.decimal, length_unit, self.mapping, not self.in_inches)
            values = read_values(strip, entry, terms)
            group, cell = self._groups(entry, block_index, strip)
            stated.append(Stated(strip, values, group, cell))
        judge_versions(stated)
        for one in stated:
            self._tell(entry, one)
        self.used.append((entry, stated))
        if entry.kind == "toleranced":
            count = self._groups_of(entry)
            column, source, middle = settle_sizes(
                entry, stated, count, self._disagree, self._problem_at, self._diameter_of(entry.name)
            )
            if entry.name in RING_OF_SEAT and middle.any():
                column = self._basic_size(entry.name, column, middle)
            spread = self._spread(entry)
            self.columns.toleranced[entry.name] = column.take(spread) if spread is not None else column
            self._place(entry, stated, source)
            return
        if entry.kind == "text":
            words, source = settle_words(entry, stated, self._groups_of(entry), self._disagree)
            spread = self._spread(entry)
            self.columns.texts[entry.name] = words if spread is None else words[spread]
        else:
            numbers, source = settle_numbers(entry, stated, self._groups_of(entry), self._disagree)
            spread = self._spread(entry)
            numbers = numbers if spread is None else numbers[spread]
            if entry.kind == "choice":
                codes = np.where(np.isnan(numbers), -1, numbers).astype(np.int8)
                self.columns.choices[entry.name] = Choice(entry.choices, codes)
            else:
                self.columns.numbers[entry.name] = numbers
        self._place(entry, stated, source)

    def _diameter_of(self, seat: str) -> Floats | None:
        """Diameter of the bearing on a seat: as stated, else as its designation says; None for another size."""
        if seat not in RING_OF_SEAT:
            return None
        name, rows = RING_OF_SEAT[seat], len(self.keys.machine_row)
        diameter = self.columns.numbers.get(name, np.full(rows, np.nan)).copy()
        texts = self.columns.texts.get(DESIGNATION, np.full(rows, "", dtype=object))
        for row in np.flatnonzero(np.isnan(diameter)).tolist():
            found = known_designation(texts[row]).derived.get(name) if texts[row] else None
            if found is not None:
                diameter[row] = float(found.value)
        return diameter

    def _basic_size(self, name: str, column: Toleranced, middle: NDArray[np.bool_]) -> Toleranced:
        """Deviations from the bearing's own size, for a seat that states only its two limits."""
        basic = self.columns.numbers.get(RING_OF_SEAT[name], np.full(len(column.nominal), np.nan))
        with np.errstate(invalid="ignore"):
            near = middle & (np.abs(column.nominal - basic) < 0.02 * basic)
        if not near.any():
            return column
        self.found.say(f"{name}: where only limits are stated, deviations are counted from {RING_OF_SEAT[name]}")
        shift = np.where(near, basic - column.nominal, 0.0)
        lower, upper = np.round(column.lower - shift, 9), np.round(column.upper - shift, 9)
        return Toleranced(np.where(near, basic, column.nominal), lower, upper, column.tolerance_class)

    def _groups_of(self, entry: Parameter) -> int:
        return len(self.keys.machines) if entry.level == "machine" else len(self.keys.machine_row)

    def _spread(self, entry: Parameter) -> Ints | None:
        return self.keys.machine_row if entry.level == "machine" else None

    def _groups(self, entry: Parameter, block_index: int, strip: Strip) -> tuple[Ints, Ints]:
        """Group of each cell; cells that speak for several groups are repeated."""
        keys = self.keys
        cell = np.arange(len(strip.cells))
        machines = keys.block_machines[block_index][strip.rows]
        if entry.level == "machine":
            everyone = np.flatnonzero(machines == EVERY)
            some = np.flatnonzero(machines >= 0)
            if not len(everyone):
                return machines[some], cell[some]
            count = len(keys.machines)
            return (
                np.concatenate([machines[some], np.tile(np.arange(count), len(everyone))]),
                np.concatenate([cell[some], np.repeat(everyone, count)]),
            )
        rows = keys.block_rows[block_index][strip.rows]
        general = np.flatnonzero((rows < 0) & (machines != NONE))
        if not len(general) and not (rows < 0).any():
            return rows, cell
        own = rows >= 0
        group, cells = [rows[own]], [cell[own]]
        assumed: list[int] = []
        for index in general.tolist():
            if not cell_text(strip.cells[index]):
                continue
            machine = int(machines[index])
            if machine < 0:
                speaks_for = np.arange(len(keys.machine_row))
            else:
                speaks_for = np.arange(keys.first[machine], keys.first[machine] + keys.size[machine])
            if len(speaks_for) > 1:
                assumed.append(index)
            group.append(speaks_for)
            cells.append(np.full(len(speaks_for), index))
        for index in assumed:
            self._problem(
                "assumption", None, entry.name, strip, index, "every-station", cell_text(strip.cells[index]),
                "a station with the value", f"{visible(strip.label)} names no station; it is taken for every station",
            )  # fmt: skip
        return np.concatenate(group).astype(np.intp), np.concatenate(cells).astype(np.intp)

    def row_of(self, entry: Parameter, group: int) -> int:
        """Row of a group: of a machine's values the first of its stations."""
        return int(self.keys.first[group]) if entry.level == "machine" else group

    def _tell(self, entry: Parameter, stated: Stated) -> None:
        """Problems from the troubles of a strip; what its cells say to be missing is judged when all is read."""
        if not stated.values.troubles:
            return
        group_of: dict[int, int] = {}
        for g, c in zip(stated.group.tolist(), stated.cell.tolist(), strict=True):
            group_of.setdefault(c, g)
        for trouble in stated.values.troubles:
            row = self.row_of(entry, group_of[trouble.index]) if trouble.index in group_of else None
            if trouble.kind == "missing":
                self.missing.append(Missing(entry, stated, trouble, row))
            else:
                self._problem(
                    trouble.kind, row, entry.name, stated.strip, trouble.index, trouble.code, trouble.read,
                    trouble.expected, trouble.sentence,
                )  # fmt: skip

    def _filled(self, stations: Stations) -> Stations:
        """The stations with what designations and the list of bearings say; unused data is told against them."""
        derived = derive(stations, self.bearings)
        self.problems.extend(derived.problems)
        for note in derived.notes:
            self.found.say(note)
        self.problems.extend(tell_unused(self.unused, derived.stations))
        return derived.stations

    def _without_doubted(self, stations: Stations) -> Stations:
        """The stations without loads and masses that stand without a unit and that the usual one makes absurd."""
        units = (self.mapping.default_unit or "", *(block.length_unit for block in self.found.blocks))
        inches = self.in_inches or any(conversion(unit, "in") == 1 for unit in units)
        doubts = doubted_units(stations, self.used, self.row_of, inches=inches)
        taken = {doubt.strip.place(self.file, doubt.first) for doubt in doubts}
        self.problems = [p for p in self.problems if p.code != "unit-assumed" or p.place not in taken]
        for doubt in doubts:
            self._problem("unreadable", doubt.row, doubt.parameter, doubt.strip, doubt.index, *doubt.said)
        return without(stations, doubts)

    def _tell_missing(self, stations: Stations) -> None:
        """Cells that say that there is no value: problems, or unused where a design may lack the parameter."""

        def tell(cell: Missing, sentence: str) -> None:
            t = cell.trouble
            strip = cell.stated.strip
            self._problem("unreadable", cell.row, cell.entry.name, strip, t.index, t.code, t.read, t.expected, sentence)

        tell_missing(
            self.missing, stations, lambda cell, reason: self.unused.append(unused(cell, self.file, reason)), tell
        )

    def _problem(
        self,
        kind: Any,
        row: int | None,
        name: str,
        strip: Strip,
        index: int,
        code: str,
        read: str,
        expected: str,
        sentence: str,
    ) -> None:
        """One problem, or a count of it where very many are alike."""
        alike = self._alike.setdefault((name, code), _Alike())
        alike.count += 1
        if alike.count > MOST_ALIKE:
            return
        alike.last = len(self.problems)
        place = strip.place(self.file, index)
        kind, _, partly = kind.partition("-")
        if kind == "partly":
            kind, partly = "unreadable", "partly"
        end = "." if partly or kind == "assumption" else "; the value is not used."
        message = f"{place}: {visible(sentence, 300)}; expected {expected}{end}"
        self.problems.append(Problem(kind, row, name, place, visible(read), expected, message, code))

    def _close_alike(self) -> None:
        """Say how many problems were only counted."""
        for alike in self._alike.values():
            if (more := alike.count - MOST_ALIKE) > 0:
                self.problems.append(more_alike(self.problems[alike.last], self.file, more))

    def _problem_at(
        self,
        kind: str,
        entry: Parameter,
        group: int,
        stated: Stated,
        position: int,
        code: str,
        expected: str,
        sentence: str,
    ) -> None:
        index = int(stated.cell[position])
        read = cell_text(stated.strip.cells[index])
        self._problem(kind, self.row_of(entry, group), entry.name, stated.strip, index, code, read, expected, sentence)

    def _disagree(self, entry: Parameter, group: int, one: tuple[Stated, int], other: tuple[Stated, int]) -> None:
        """Two cells that state different values for the same parameter and row."""
        (first, i), (second, j) = one, other
        a, b = int(first.cell[i]), int(second.cell[j])
        reads = [visible(cell_text(s.strip.cells[k]), 40) for s, k in ((first, a), (second, b))]
        row = self.row_of(entry, group)
        owner = visible(self.keys.machines[int(self.keys.machine_row[row])], 40)
        if entry.level == "station":
            owner += " " + visible(self.keys.stations[row], 40)
        there = first.strip.place(self.file, a).short()
        self._problem(
            "disagreement", row, entry.name, second.strip, b, "stated-twice", f"{reads[0]} and {reads[1]}",
            "one value", f"{entry.name} of {owner} is {reads[1]} here and {reads[0]} at {there}",
        )  # fmt: skip

    def _place(self, entry: Parameter, stated: list[Stated], source: Ints) -> None:
        """Places per row from the position (over all strips) of the cell that gave the value."""
        spread = self._spread(entry)
        if spread is not None:
            source = source[spread]
        if stated[0].strip.pointers is not None:
            pointers = [s.strip.pointers[c] for s in stated for c in s.cell.tolist()]  # type: ignore[index]
            self.columns.places[entry.name] = PlaceColumn(
                self.file, pointers=[None if i < 0 else pointers[i] for i in source.tolist()]
            )
            return
        sheets = tuple(dict.fromkeys(s.strip.sheet for s in stated))
        absent = source < 0

        def gather(pick: Callable[[Stated], NDArray[Any]]) -> NDArray[np.int32]:
            parts = [pick(s) for s in stated]
            column = parts[0] if len(parts) == 1 else np.concatenate(parts)
            if not len(column):  # a heading may stand above no cell at all
                return np.zeros(len(source), dtype=np.int32)
            column = column[source].astype(np.int32, copy=False)
            column[absent] = 0
            return column

        self.columns.places[entry.name] = PlaceColumn(
            self.file,
            sheets,
            gather(lambda s: np.full(len(s.cell), sheets.index(s.strip.sheet), np.int32)),
            gather(lambda s: s.strip.lines[s.cell]),  # type: ignore[index]
            gather(lambda s: s.strip.columns[s.cell]),  # type: ignore[index]
        )

    def _keys_as_texts(self) -> None:
        """Names of machines and stations, also where the table gives no cell for them."""
        self.columns.texts["machine"] = np.array(self.keys.machines, dtype=object)[self.keys.machine_row]
        self.columns.texts["station"] = np.array(self.keys.stations, dtype=object)

    def cells(self, rows: Bools | None = None) -> Iterator[Used]:
        """Every cell that was used (for some rows), in the order of the vocabulary."""
        return used_cells(self.used, self.row_of, rows)
