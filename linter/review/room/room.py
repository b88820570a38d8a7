"""The room of the values of one machine: samples of each range, ends by halving, gaps, and what bounds it."""

from collections.abc import Callable, Sequence
from itertools import pairwise
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.model.columns import Floats
from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.review.room.domains import MOST_COUNTED, Cell, between, cells_of, classes_of, kind_of, samples
from linter.review.room.judged import Changes, Judge
from linter.rulebook.model import Rulebook

#: An end is known to this share of its value.
PRECISION = 1e-7
#: Places between samples that are looked at again for gaps narrower than the samples are apart.
LOOKED_AGAIN = (0.31, 0.73)


@frozen
class End:
    """One end of a stretch of values.

    Attributes
    ----------
    value : float
        The last value that is allowed.
    beyond : float or None
        The next value that was tried and is not; None where the parameter can be no further.
    clauses : tuple of str
        What forbids it, in the order of the rulebook; empty where nothing does.
    """

    value: float
    beyond: float | None
    clauses: tuple[str, ...]


@frozen
class Room:
    """The room of one value.

    Attributes
    ----------
    cell : Cell
        Which value.
    kind : str
        ``number``, ``count``, ``class`` or ``choice``.
    unit : str
        Unit of the ends.
    present : float, str or None
        Present value; of a size its nominal.
    stretches : tuple of (End, End)
        Allowed values of a number, ascending; more than one where there are gaps.
    allowed : tuple of str
        Allowed words or classes.
    forbidden : dict of str to tuple of str
        The other words or classes with the clauses that forbid them.
    standing : tuple of str
        Clauses that forbid every value, so that it has no room while they stand; the rest is told without them.
    conflict : tuple of str
        Where even without those no value is allowed: a smallest set of clauses that leaves none.
    """

    cell: Cell
    kind: str
    unit: str
    present: float | str | None
    stretches: tuple[tuple[End, End], ...] = ()
    allowed: tuple[str, ...] = ()
    forbidden: dict[str, tuple[str, ...]] = field(factory=dict)
    standing: tuple[str, ...] = ()
    conflict: tuple[str, ...] = ()

    @property
    def empty(self) -> bool:
        """Whether no value is allowed while all else stands."""
        return bool(self.standing) or not (self.stretches or self.allowed)

    @property
    def unbounded(self) -> bool:
        """Whether no clause forbids any value that was tried."""
        return not self.standing and not self.forbidden and all(
            not end.clauses for stretch in self.stretches for end in stretch
        ) and len(self.stretches) <= 1 and not self.conflict  # fmt: skip

    @property
    def inside(self) -> bool | None:
        """Whether the present value lies in it (the clauses that stand whatever it is left out); None without one."""
        if self.present is None:
            return None
        if isinstance(self.present, str):
            return self.present in self.allowed
        return any(low.value <= self.present <= high.value for low, high in self.stretches)

    @property
    def distances(self) -> tuple[float | None, float | None]:
        """From the present value down and up to where it is not allowed any more; where it lies outside, to the room.

        None where there is no such end. Outside the room the first is negative where a smaller value is allowed, the
        second where a larger one is.
        """
        now = self.present
        if now is None or isinstance(now, str):
            return None, None
        for low, high in self.stretches:
            if low.value <= now <= high.value:
                down = now - low.value if low.clauses else None
                return down, (high.value - now if high.clauses else None)
        below = [now - high.value for _, high in self.stretches if high.value < now]
        above = [low.value - now for low, _ in self.stretches if low.value > now]
        return (-min(below) if below else None), (-min(above) if above else None)


def rooms(
    stations: Stations, machine: int, rulebook: Rulebook, *, severity: str = "minor", names: tuple[str, ...] = ()
) -> list[Room]:
    """The room of every stated value of one machine.

    Parameters
    ----------
    stations : Stations
        The table, with the defaults of the rulebook.
    machine : int
        Index of the machine.
    rulebook : Rulebook
        All of its clauses are run on every trial.
    severity : str
        The gravest severity that a value may lead to.
    names : tuple of str
        Parameters wanted, blank ones too; every stated one where there are none.

    Returns
    -------
    list of Room
        In the order of the vocabulary.
    """
    block = np.flatnonzero(stations.machine_row == machine)
    judge = Judge(stations, block, rulebook, severity)
    return searched(judge, [(cell, {}) for cell in cells_of(stations, block, names)])


def searched(judge: Judge, wanted: Sequence[tuple[Cell, Changes]]) -> list[Room]:
    """The room of some cells of one machine, each beside changes that go with it; those without values are left out."""
    searches = [_Search(judge, cell, beside) for cell, beside in wanted]
    searches = [search for search in searches if len(search.values)]
    for step in (_Search.begin, _Search.between_samples, *[_Search.ends] * 12):
        _together(judge, searches, step)
    return [search.room() for search in searches]


def _together(judge: Judge, searches: "Sequence[_Search]", step: "Callable[[_Search], Sequence[Any]]") -> None:
    """One step of every search, all its trials in one batch."""
    wanted = [(search, value) for search in searches for value in step(search)]
    found = judge.blocked([search.trial(value) for search, value in wanted])
    for (search, value), blocked in zip(wanted, found, strict=True):
        search.known[value] = blocked


class _Search:
    """What is known of one cell: for each value that was tried the clauses that forbid it."""

    def __init__(self, judge: Judge, cell: Cell, beside: Changes) -> None:
        self.judge, self.cell, self.kind, self.beside = judge, cell, kind_of(cell), beside
        self.row = int(judge.block[cell.row])
        self.known: dict[Any, NDArray[np.bool_]] = {}
        self.values: Sequence[Any] = self._values()

    def _values(self) -> Sequence[Any]:
        """Values to begin with."""
        stations, name = self.judge.stations, self.cell.name
        if self.kind == "choice":
            return range(len(parameter(name).choices))
        if self.kind == "class":
            self.classes = classes_of(stations, name, self.row)
            return list(self.classes)
        if self.kind == "count":
            return range(3, MOST_COUNTED + 1)
        return samples(parameter(name), self.present, self._others()).tolist()

    @property
    def present(self) -> float:
        """Present value, of a size its nominal; NaN for none."""
        stations, name = self.judge.stations, self.cell.name
        if parameter(name).kind == "toleranced":
            return float(stations.size(name).nominal[self.row])
        return float(stations.number(name)[self.row])

    def _others(self) -> Floats:
        """Values of the same unit in the machine."""
        stations, block = self.judge.stations, self.judge.block
        unit = parameter(self.cell.name).unit
        parts = [column[block] for name, column in stations.numbers.items() if parameter(name).unit == unit]
        for name, size in stations.toleranced.items():
            if parameter(name).unit == unit:
                parts += [size.nominal[block], size.smallest[block], size.largest[block]]
        return np.unique(np.concatenate([np.zeros(0), *parts]))

    def trial(self, value: Any) -> Changes:
        """The change that puts a value there."""
        if self.kind == "class":
            return {**self.beside, self.cell: self.classes[value]}
        if parameter(self.cell.name).kind == "toleranced":
            size = self.judge.stations.size(self.cell.name)
            return {**self.beside, self.cell: (value, float(size.lower[self.row]), float(size.upper[self.row]), "")}
        return {**self.beside, self.cell: value}

    def begin(self) -> Sequence[Any]:
        """Every value to begin with."""
        return self.values

    def between_samples(self) -> Sequence[float]:
        """Two places between neighbouring samples."""
        if self.kind != "number":
            return ()
        found = sorted(self.known)
        return [
            float(v)
            for low, high in pairwise(found)
            if high - low > PRECISION * max(abs(low), abs(high))
            for v in between(low, high, np.array(LOOKED_AGAIN))
        ]

    def standing(self) -> NDArray[np.bool_]:
        """Clauses that forbid every value that was tried."""
        return np.logical_and.reduce(list(self.known.values()))

    def ends(self) -> Sequence[float]:
        """Three places between neighbours of which one is allowed and the other is not."""
        if self.kind != "number":
            return ()
        standing, found = self.standing(), sorted(self.known)
        open_ = [not (self.known[v] & ~standing).any() for v in found]
        return [
            float(v)
            for k in range(len(found) - 1)
            if open_[k] != open_[k + 1] and found[k + 1] - found[k] > PRECISION * max(map(abs, found[k : k + 2]))
            for v in between(found[k], found[k + 1], np.array([0.25, 0.5, 0.75]))
            if found[k] < v < found[k + 1]
        ]

    def clauses(self, blocked: NDArray[np.bool_]) -> tuple[str, ...]:
        """Ids of clauses, in the order of the rulebook."""
        return tuple(self.judge.clauses[k] for k in np.flatnonzero(blocked))

    def room(self) -> Room:
        """What was found."""
        standing = self.standing()
        blocked = {value: clauses & ~standing for value, clauses in self.known.items()}
        entry = parameter(self.cell.name)
        stands = self.clauses(standing)
        conflict = () if any(not b.any() for b in blocked.values()) else self.clauses(_cover(list(blocked.values())))
        if self.kind in ("number", "count"):
            now = None if np.isnan(self.present) else self.present
            ends = self._stretches(blocked)
            return Room(self.cell, self.kind, entry.unit, now, ends, standing=stands, conflict=conflict)
        words = {value: entry.choices[value] if self.kind == "choice" else value for value in self.values}
        return Room(
            self.cell, self.kind, "", self._word(),
            allowed=tuple(words[v] for v in self.values if not blocked[v].any()),
            forbidden={words[v]: self.clauses(blocked[v]) for v in self.values if blocked[v].any()},
            standing=stands, conflict=conflict,
        )  # fmt: skip

    def _word(self) -> str | None:
        stations, name = self.judge.stations, self.cell.name
        if self.kind == "choice":
            code = int(stations.choice(name).codes[self.row])
            return parameter(name).choices[code] if code >= 0 else None
        return str(stations.size(name).tolerance_class[self.row]) or None

    def _stretches(self, blocked: dict[Any, NDArray[np.bool_]]) -> tuple[tuple[End, End], ...]:
        found = sorted(blocked)
        allowed = [not blocked[v].any() for v in found]
        stretches, start = [], None
        for k, inside in enumerate(allowed):
            if inside and start is None:
                start = k
            if start is not None and (not inside or k == len(found) - 1):
                last = k if inside else k - 1
                low = found[start - 1] if start else None
                high = found[last + 1] if last + 1 < len(found) else None
                below = self.clauses(blocked[low]) if low is not None else ()
                above = self.clauses(blocked[high]) if high is not None else ()
                stretches.append((End(found[start], low, below), End(found[last], high, above)))
                start = None
        return tuple(stretches)


def _cover(blocked: Sequence[NDArray[np.bool_]]) -> NDArray[np.bool_]:
    """A smallest set of clauses, by deletion, of which at least one forbids each value."""
    table = np.array(blocked)
    keep: NDArray[np.bool_] = np.asarray(table.any(axis=0))
    for clause in np.flatnonzero(keep)[np.argsort(table[:, keep].sum(axis=0), kind="stable")]:
        without = keep.copy()
        without[clause] = False
        if table[:, without].any(axis=1).all():
            keep = without
    return keep
