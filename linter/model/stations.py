"""Stations as columns: one row per bearing position, canonical units, NaN or empty where the table states nothing.

The reading room makes one :class:`Stations`; the checks only look at it. A machine-level value stands in every row of
its machine.
"""

import re
from collections.abc import Mapping
from typing import Any, Literal

import numpy as np
from attrs import evolve, field, frozen
from numpy.typing import NDArray

from linter.model.places import Place, PlaceColumn
from linter.model.vocabulary import parameter, vocabulary

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]

ProblemKind = Literal["unreadable", "disagreement", "assumption"]


@frozen(eq=False)
class Toleranced:
    """A toleranced column: nominal, deviations and class, each of shape (rows,).

    Attributes
    ----------
    nominal : float array
        Nominal size in the canonical unit of its parameter; NaN where absent.
    lower, upper : float array
        Deviations from the nominal in the same unit; NaN where no tolerance is stated.
    tolerance_class : object array of str
        ISO 286 class such as ``k5`` as stated, empty where none is.
    """

    nominal: Floats
    lower: Floats
    upper: Floats
    tolerance_class: NDArray[Any]

    @property
    def smallest(self) -> Floats:
        """Lower limit of size; NaN where no tolerance is stated."""
        return self.nominal + self.lower

    @property
    def largest(self) -> Floats:
        """Upper limit of size; NaN where no tolerance is stated."""
        return self.nominal + self.upper

    def take(self, rows: NDArray[np.intp]) -> "Toleranced":
        """The same for a choice of rows."""
        return Toleranced(self.nominal[rows], self.lower[rows], self.upper[rows], self.tolerance_class[rows])


@frozen(eq=False)
class Choice:
    """A choice column as codes into its words; -1 where absent."""

    words: tuple[str, ...]
    codes: NDArray[np.int8]

    @property
    def known(self) -> Bools:
        """Rows that state a word."""
        return self.codes >= 0

    def is_in(self, *words: str) -> Bools:
        """Rows whose word is one of these; every word must exist in the vocabulary."""
        wanted = np.zeros(len(self.words) + 1, dtype=bool)
        for word in words:
            wanted[self.words.index(word)] = True
        return wanted[self.codes]

    def map(self, values: Mapping[str, float], default: float = np.nan) -> Floats:
        """A number per row from a number per word; ``default`` where the word is absent or has no number."""
        table = np.full(len(self.words) + 1, default, dtype=float)
        for word, value in values.items():
            table[self.words.index(word)] = value
        table[-1] = default
        return table[self.codes]

    def texts(self) -> NDArray[Any]:
        """The word of each row as an object array, empty where absent."""
        return np.array([*self.words, ""], dtype=object)[self.codes]


@frozen(eq=False)
class Assumption:
    """A documented default that stands in for an absent value."""

    rows: Bools
    reason: str


@frozen
class Problem:
    """A cell that could not be used as it stands, or two cells that disagree.

    Attributes
    ----------
    kind : {"unreadable", "disagreement", "assumption"}
        ``unreadable``: not understood, the value is not used. ``disagreement``: stated twice with different values.
        ``assumption``: used, with an interpretation that the report must show.
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
        Names of the machines, in the order of the table.
    machine_row : int array, shape (rows,)
        Machine of each row, an index into ``machines``; rows of one machine stand together, in ascending order.
    numbers : dict of str to float array
        Number parameters, canonical units, NaN where absent.
    toleranced : dict of str to Toleranced
        Toleranced parameters.
    choices : dict of str to Choice
        Choice parameters.
    texts : dict of str to object array of str
        Text parameters, empty where absent.
    places : dict of str to PlaceColumn
        Where each value stood.
    assumed : dict of str to Assumption
        Documented defaults that were applied.
    problems : tuple of Problem
        What could not be understood or disagrees.
    """

    machines: tuple[str, ...]
    machine_row: NDArray[np.intp]
    numbers: dict[str, Floats] = field(factory=dict)
    toleranced: dict[str, Toleranced] = field(factory=dict)
    choices: dict[str, Choice] = field(factory=dict)
    texts: dict[str, NDArray[Any]] = field(factory=dict)
    places: dict[str, PlaceColumn] = field(factory=dict)
    assumed: dict[str, Assumption] = field(factory=dict)
    problems: tuple[Problem, ...] = ()

    def __len__(self) -> int:
        """Number of rows."""
        return len(self.machine_row)

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

    def take(self, rows: NDArray[np.intp]) -> "Stations":
        """A choice of rows (rows of one machine must stay together); problems of the file are left behind."""
        machine_index, machine_row = np.unique(self.machine_row[rows], return_inverse=True)
        return Stations(
            machines=tuple(self.machines[i] for i in machine_index),
            machine_row=machine_row.astype(np.intp),
            numbers={name: column[rows] for name, column in self.numbers.items()},
            toleranced={name: column.take(rows) for name, column in self.toleranced.items()},
            choices={name: Choice(c.words, c.codes[rows]) for name, c in self.choices.items()},
            texts={name: column[rows] for name, column in self.texts.items()},
            places={name: column.take(rows) for name, column in self.places.items()},
            assumed={name: Assumption(a.rows[rows], a.reason) for name, a in self.assumed.items()},
        )


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
    from linter.mechanics.limits import deviations

    names = {name for row in rows for name in row}
    order = sorted(
        range(len(rows)),
        key=lambda i: list(dict.fromkeys(r.get("machine", "M") for r in rows)).index(rows[i].get("machine", "M")),
    )
    rows = [rows[i] for i in order]
    machines = tuple(dict.fromkeys(row.get("machine", "M") for row in rows))
    machine_row = np.array([machines.index(row.get("machine", "M")) for row in rows], dtype=np.intp)
    texts: dict[str, NDArray[Any]] = {
        "machine": np.array([machines[i] for i in machine_row], dtype=object),
        "station": np.array([row.get("station", chr(65 + k % 26)) for k, row in enumerate(rows)], dtype=object),
    }
    numbers: dict[str, Floats] = {}
    choices: dict[str, Choice] = {}
    sizes: dict[str, Toleranced] = {}
    for name in sorted(names - {"machine", "station"}):
        entry = parameter(name)
        values = [row.get(name) for row in rows]
        if entry.kind == "text":
            texts[name] = np.array(["" if v is None else str(v) for v in values], dtype=object)
        elif entry.kind == "number":
            numbers[name] = np.array([np.nan if v is None else float(v) for v in values])
        elif entry.kind == "choice":
            choices[name] = Choice(
                entry.choices, np.array([-1 if v is None else entry.choices.index(v) for v in values], dtype=np.int8)
            )
        else:
            parts = []
            for v in values:
                if v is None:
                    parts.append((np.nan, np.nan, np.nan, ""))
                elif isinstance(v, (int, float)):
                    parts.append((float(v), np.nan, np.nan, ""))
                elif isinstance(v[1], str):
                    lower, upper = deviations(v[1], v[0])
                    parts.append((float(v[0]), float(lower) / 1000, float(upper) / 1000, v[1]))
                else:
                    parts.append((float(v[0]), float(v[1]), float(v[2]), str(v[3]) if len(v) > 3 else ""))
            nominal, lower, upper = (np.array([part[k] for part in parts], dtype=float) for k in range(3))
            sizes[name] = Toleranced(nominal, lower, upper, np.array([part[3] for part in parts], dtype=object))
    return apply_defaults(Stations(machines, machine_row, numbers, sizes, choices, texts))
