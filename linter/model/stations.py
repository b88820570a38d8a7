"""Stations as columns: one row per bearing position, canonical units, NaN or empty where the table states nothing.

The reading room makes one :class:`Stations`; the checks only look at it. A machine-level value stands in every row of
its machine.
"""

import re
from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import TYPE_CHECKING, Any, Literal

import numpy as np
from attrs import evolve, field, frozen
from numpy.typing import NDArray

from linter.model.columns import Assumption, Bools, Choice, Derivation, Floats, Rows, Toleranced, size_parts
from linter.model.frames import by_machine, from_columns, to_columns
from linter.model.places import JoinedPlaces, Place, PlaceColumn
from linter.model.vocabulary import parameter, vocabulary

if TYPE_CHECKING:
    import pandas as pd

ProblemKind = Literal["unreadable", "disagreement", "unused", "assumption", "impossible"]


@frozen
class Problem:
    """A cell that could not be used as it stands, or two cells that disagree.

    Attributes
    ----------
    kind : {"unreadable", "disagreement", "unused", "assumption", "impossible"}
        ``unreadable``: not understood, the value is not used. ``disagreement``: stated twice with different values.
        ``unused``: looks like data of a seat and names no parameter that is known; nothing that is needed is missing.
        ``assumption``: used, with an interpretation that the report must show. ``impossible``: set aside because no
        machine has such a value.
    row : int or None
        Row of the stations it belongs to; None where it belongs to the file as a whole.
    parameter : str or None
        Parameter it concerns, where that is known.
    place : Place or None
        Where it stands.
    read : str
        What was read.
    expected : str
        What was expected.
    message : str
        One sentence: place, what was read, what was expected, what happened with the value.
    code : str
        A short stable word for the sort of problem, for example ``ambiguous-number``.
    """

    kind: ProblemKind
    row: int | None
    parameter: str | None
    place: Place | None
    read: str
    expected: str
    message: str
    code: str


@frozen
class Unused:
    """A cell that stood in the table and was not used."""

    name: str
    value: str
    place: Place
    reason: str


@frozen
class Understood:
    """One cell used: as read and as understood."""

    parameter: str
    row: int
    place: Place
    read: str
    value: str


@frozen(eq=False)
class Stations:
    """All stations of one review as columns of equal length.

    Attributes
    ----------
    machines : tuple of str
        Names, in the order of the table.
    machine_row : int array, shape (rows,)
        Machine of each row, an index into ``machines``; rows of one machine stand together, ascending.
    numbers : dict of str to float array
        Number parameters, canonical units, NaN where absent.
    toleranced : dict of str to Toleranced
        Toleranced parameters.
    choices : dict of str to Choice
        Choice parameters.
    texts : dict of str to object array of str
        Text parameters, empty where absent.
    places : dict of str to PlaceColumn or JoinedPlaces
        Where each value stood.
    assumed : dict of str to Assumption
        Documented defaults that were applied.
    derived : dict of str to Derivation
        Values that the table does not state itself, with what they come from.
    measured : dict of str to pair of float arrays
        Deviations [um] of the ring in hand (``ring_bore``, ``ring_outside``) in place of its class's; from no table.
    problems : tuple of Problem
        What could not be understood or disagrees.
    """

    machines: tuple[str, ...]
    machine_row: NDArray[np.intp]
    numbers: dict[str, Floats] = field(factory=dict)
    toleranced: dict[str, Toleranced] = field(factory=dict)
    choices: dict[str, Choice] = field(factory=dict)
    texts: dict[str, NDArray[Any]] = field(factory=dict)
    places: Mapping[str, PlaceColumn | JoinedPlaces] = field(factory=dict)
    assumed: dict[str, Assumption] = field(factory=dict)
    problems: tuple[Problem, ...] = ()
    derived: dict[str, Derivation] = field(factory=dict)
    measured: dict[str, tuple[Floats, Floats]] = field(factory=dict)

    def __len__(self) -> int:
        """Number of rows."""
        return len(self.machine_row)

    @property
    def first_rows(self) -> NDArray[np.intp]:
        """First row of each machine, shape (machines,)."""
        return np.searchsorted(self.machine_row, np.arange(len(self.machines)))

    def number(self, name: str) -> Floats:
        """A number column in its canonical unit, shape (rows,); NaN where absent."""
        if name in self.numbers:
            return self.numbers[name]
        if parameter(name).kind != "number":
            raise KeyError(f"{name!r} is not a number parameter")
        return np.full(len(self), np.nan)

    def size(self, name: str) -> Toleranced:
        """A toleranced column; NaN where absent."""
        if name in self.toleranced:
            return self.toleranced[name]
        if parameter(name).kind != "toleranced":
            raise KeyError(f"{name!r} is not a toleranced parameter")
        absent = np.full(len(self), np.nan)
        return Toleranced(absent, absent, absent, np.full(len(self), "", dtype=object))

    def choice(self, name: str) -> Choice:
        """A choice column; code -1 where absent."""
        if name in self.choices:
            return self.choices[name]
        if parameter(name).kind != "choice":
            raise KeyError(f"{name!r} is not a choice parameter")
        return Choice(parameter(name).choices, np.full(len(self), -1, dtype=np.int8))

    def text(self, name: str) -> NDArray[Any]:
        """A text column as an object array; empty where absent."""
        if name in self.texts:
            return self.texts[name]
        if parameter(name).kind != "text":
            raise KeyError(f"{name!r} is not a text parameter")
        return np.full(len(self), "", dtype=object)

    def known(self, name: str) -> Bools:
        """Rows that state the parameter (a toleranced one: its nominal), defaults included."""
        kind = parameter(name).kind
        if kind == "number":
            return ~np.isnan(self.number(name))
        if kind == "toleranced":
            return ~np.isnan(self.size(name).nominal)
        if kind == "choice":
            return self.choice(name).known
        return self.text(name) != ""

    def place(self, name: str, row: int) -> Place | None:
        """Where the table states the parameter for that row, or None."""
        return self.places[name].at(row) if name in self.places else None

    def take(self, rows: Rows) -> "Stations":
        """A choice of rows, with what the reading says of them.

        Parameters
        ----------
        rows : int array or slice
            Rows of one machine must stay together.

        Returns
        -------
        Stations
            Problems of the rows taken have their new rows; one about a whole machine stays with it, one about the file
            with every part of it.

        Raises
        ------
        ValueError
            If the rows of a machine would stand apart.
        """
        origin = np.arange(len(self))[rows]
        old = self.machine_row[rows]
        starts = np.flatnonzero(np.diff(old, prepend=-1))
        if len(set(old[starts].tolist())) != len(starts):
            raise ValueError("rows of one machine must stand together")
        return Stations(
            machines=tuple(self.machines[i] for i in old[starts]),
            machine_row=(np.cumsum(np.diff(old, prepend=-1) != 0) - 1).astype(np.intp),
            numbers={name: column[rows] for name, column in self.numbers.items()},
            toleranced={name: column.take(rows) for name, column in self.toleranced.items()},
            choices={name: Choice(c.words, c.codes[rows]) for name, c in self.choices.items()},
            texts={name: column[rows] for name, column in self.texts.items()},
            places={name: column.take(rows) for name, column in self.places.items()},
            assumed={name: Assumption(a.rows[rows], a.reason) for name, a in self.assumed.items()},
            derived={name: column.take(rows) for name, column in self.derived.items()},
            measured={name: (low[rows], high[rows]) for name, (low, high) in self.measured.items()},
            problems=tuple(self._problems_of(origin, old)) if self.problems else (),
        )

    def _problems_of(self, origin: NDArray[np.intp], machines: NDArray[np.intp]) -> "Iterable[Problem]":
        """Problems that belong to these rows, with their new rows; ``machines`` are the machines of the rows."""
        new_row = {int(row): k for k, row in reversed(list(enumerate(origin)))}
        first_row = {int(machine): k for k, machine in reversed(list(enumerate(machines)))}
        for problem in self.problems:
            if problem.row is None:
                yield problem
                continue
            row = new_row.get(problem.row)
            if row is None and (problem.parameter is None or parameter(problem.parameter).level == "machine"):
                row = first_row.get(int(self.machine_row[problem.row]))
            if row is not None:
                yield evolve(problem, row=row)

    @classmethod
    def concat(cls, tables: "Sequence[Stations]") -> "Stations":
        """Several tables as one.

        Parameters
        ----------
        tables : sequence of Stations
            At least one.

        Returns
        -------
        Stations
            Machines of different tables stay apart; a problem of a whole file becomes one of each machine in it.
        """
        counts = [len(table) for table in tables]
        before = np.cumsum([0, *counts])
        machines_before = np.cumsum([0, *(len(table.machines) for table in tables)])

        def joined(kind: str, join: Callable[[str], Any]) -> dict[str, Any]:
            return {name: join(name) for name in dict.fromkeys(name for t in tables for name in getattr(t, kind))}

        def choice(name: str) -> Choice:
            return Choice(parameter(name).choices, np.concatenate([t.choice(name).codes for t in tables]))

        return cls(
            machines=tuple(machine for table in tables for machine in table.machines),
            machine_row=np.concatenate([t.machine_row + k for t, k in zip(tables, machines_before, strict=False)]),
            numbers=joined("numbers", lambda name: np.concatenate([t.number(name) for t in tables])),
            toleranced=joined("toleranced", lambda name: Toleranced.concat([t.size(name) for t in tables])),
            choices=joined("choices", choice),
            texts=joined("texts", lambda name: np.concatenate([t.text(name) for t in tables])),
            places=joined("places", lambda name: JoinedPlaces.of([t.places.get(name) for t in tables], counts)),
            assumed=joined("assumed", lambda name: Assumption.concat([t.assumed.get(name) for t in tables], counts)),
            derived=joined("derived", lambda name: Derivation.concat([t.derived.get(name) for t in tables], counts)),
            problems=tuple(p for table, k in zip(tables, before, strict=False) for p in table._problems_from(int(k))),
        )

    def _problems_from(self, start: int) -> "Iterable[Problem]":
        """The problems as those of rows that begin at ``start``; one of the file becomes one of each machine."""
        for problem in self.problems:
            for row in self.first_rows if problem.row is None else [problem.row]:
                yield evolve(problem, row=int(row) + start)

    def to_frame(self) -> "pd.DataFrame":
        """The stated values as a pandas frame, one row per station, in canonical units.

        A toleranced parameter has its nominal under its own name and three columns more, ``NAME_lower``,
        ``NAME_upper`` (deviations) and ``NAME_class``. Columns without a value are left out, and so are values that
        were assumed: :meth:`from_frame` assumes them again. Places and problems stay behind.
        """
        import pandas as pd

        columns: dict[str, NDArray[Any]] = {"machine": np.array(self.machines, dtype=object)[self.machine_row]}
        stated: dict[str, Any] = {**self.numbers, **self.toleranced, **self.choices, **self.texts}
        for name, assumption in self.assumed.items():
            if not parameter(name).default:
                continue
            stated[name] = np.where(assumption.rows, np.nan, self.numbers[name])
        for name in vocabulary():
            if name in stated and name != "machine":
                columns |= to_columns(name, stated[name])
        frame = pd.DataFrame(columns)
        return frame[[name for name in frame if name in ("machine", "station") or frame[name].notna().any()]]

    @classmethod
    def from_frame(cls, frame: "pd.DataFrame") -> "Stations":
        """Stations from a pandas frame as :meth:`to_frame` gives it, with documented defaults applied.

        Rows of one machine need not stand together; their order within it is kept. Deviations that are absent are those
        of the class, where one is stated. Without the column ``machine`` all rows are one machine.

        Raises
        ------
        ValueError
            For a column that is no parameter, a value that is no number or word of its choice, or a station twice.
        """
        frame, codes, machines = by_machine(frame)
        found = {e: from_columns(e, frame) for e in vocabulary().values() if e.name in frame.columns}

        def of(kind: str) -> dict[str, Any]:
            return {entry.name: column for entry, column in found.items() if entry.kind == kind}

        return apply_defaults(cls(machines, codes, of("number"), of("toleranced"), of("choice"), of("text")))


_MEAN = re.compile(r"mean\((\w+), (\w+)\)")


def apply_defaults(stations: Stations) -> Stations:
    """Fill absent numbers with the documented defaults of the vocabulary and mark them as assumed.

    Only number parameters have defaults. A default that needs values the table lacks stays NaN.
    """
    numbers = dict(stations.numbers)
    assumed = dict(stations.assumed)
    for entry in vocabulary().values():
        if not entry.default:
            continue
        current = stations.number(entry.name)
        if mean := _MEAN.fullmatch(entry.default):
            first, second = mean.groups()
            value = 0.5 * (stations.number(first) + stations.number(second))
            reason = f"not stated; the mean of {first} and {second} stands in"
        elif entry.default in vocabulary():
            value = stations.number(entry.default)
            reason = f"not stated; {entry.default} stands in"
        else:
            value = np.full(len(stations), float(entry.default))
            reason = f"not stated; the vocabulary's default {entry.default} stands in"
        rows = np.isnan(current) & ~np.isnan(value)
        if rows.any():
            numbers[entry.name] = np.where(rows, value, current)
            if (before := assumed.get(entry.name)) is not None:
                rows, reason = rows | before.rows, f"{before.reason}; or {reason}"
            assumed[entry.name] = Assumption(rows, reason)
    return evolve(stations, numbers=numbers, assumed=assumed)


def stations_from_rows(rows: list[dict[str, Any]]) -> Stations:
    """Stations from plain values, for worked cases and tests.

    Parameters
    ----------
    rows : list of dict
        One dict per station: parameter name to value. A number parameter takes a number in its canonical unit, a choice
        or text its word, a toleranced one ``nominal``, ``[nominal, lower, upper]`` (same unit), ``[nominal, "k5"]``
        (an ISO 286 class; sizes in mm) or ``[nominal, lower, upper, "k5"]``. ``machine`` and ``station`` default to
        ``"M"`` and ``"A"``, ``"B"``, ...

    Returns
    -------
    Stations
        With defaults applied and without places.

    Raises
    ------
    KeyError
        For a name outside the vocabulary.
    ValueError
        For a word outside the choices.
    """
    machines = tuple(dict.fromkeys(row.get("machine", "M") for row in rows))
    rows = sorted(rows, key=lambda row: machines.index(row.get("machine", "M")))
    machine_row = np.array([machines.index(row.get("machine", "M")) for row in rows], dtype=np.intp)
    texts: dict[str, NDArray[Any]] = {
        "machine": np.array([machines[i] for i in machine_row], dtype=object),
        "station": np.array([row.get("station", chr(65 + k % 26)) for k, row in enumerate(rows)], dtype=object),
    }
    numbers: dict[str, Floats] = {}
    choices: dict[str, Choice] = {}
    sizes: dict[str, Toleranced] = {}
    for name in sorted({name for row in rows for name in row} - {"machine", "station"}):
        entry = parameter(name)
        values = [row.get(name) for row in rows]
        if entry.kind == "text":
            texts[name] = np.array(["" if v is None else str(v) for v in values], dtype=object)
        elif entry.kind == "number":
            numbers[name] = np.array([np.nan if v is None else float(v) for v in values])
        elif entry.kind == "choice":
            codes = [-1 if v is None else entry.choices.index(v) for v in values]
            choices[name] = Choice(entry.choices, np.array(codes, dtype=np.int8))
        else:
            parts = [size_parts(value) for value in values]
            nominal, lower, upper = (np.array([part[k] for part in parts], dtype=float) for k in range(3))
            sizes[name] = Toleranced(nominal, lower, upper, np.array([part[3] for part in parts], dtype=object))
    return apply_defaults(Stations(machines, machine_row, numbers, sizes, choices, texts))
