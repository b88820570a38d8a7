"""What clauses look at: noted while they are reviewed, so that a trial reviews only the clauses that it touches.

A clause whose columns and shared quantities are those of the machine as it stands comes to the same result again. Which
ones it looked at is noted, not declared: a check is a pure function of what it reads.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence, Set
from typing import Any, NamedTuple

import attrs
import numpy as np
from attrs import evolve
from numpy.typing import NDArray

from linter.checks.shared.base import View
from linter.model.stations import Stations

#: Noted where all columns were gone through, whichever there are.
EVERY = "every column"
COLUMNS = ("numbers", "toleranced", "choices", "texts", "assumed", "derived")


class Kept(NamedTuple):
    """A shared quantity by the key that the view keeps it under."""

    key: Any


class Reads:
    """Notes what is looked at, by who looks: a clause by its name, a shared quantity by its :class:`Kept`.

    Whoever looks at one thing more than before is noted with it from then on; ``grown`` counts how often that was.
    """

    def __init__(self) -> None:
        self.of: dict[Any, set[Any]] = {}
        #: What is looked at, a column by its name: by the clause under review, and by each quantity being worked out.
        self.open: list[set[Any]] = [set()]
        self.grown = 0
        self.columns_at, self.columns_of = 0, dict[Any, set[str]]()

    def close(self, clause: str) -> None:
        """A clause was reviewed; what a quantity that failed had looked at counts as its own."""
        self.learn(clause, set().union(*self.open))
        self.open = [set()]

    def learn(self, who: Any, looked_at: set[Any]) -> None:
        """A clause or quantity looked at something."""
        known = self.of.setdefault(who, set())
        if not looked_at <= known:
            known |= looked_at
            self.grown += 1

    def columns(self, who: Any) -> Set[str]:
        """Names of the columns that a clause or quantity rests on, by way of other quantities too."""
        if self.columns_at != self.grown:
            self.columns_at, self.columns_of = self.grown, {}
        if who not in self.columns_of:
            looked_at = self.of.get(who, set())
            own = {what for what in looked_at if not isinstance(what, Kept)}
            self.columns_of[who] = own.union(*(self.columns(what) for what in looked_at if isinstance(what, Kept)))
        return self.columns_of[who]

    def watched(self, stations: Stations) -> View:
        """A view that notes here what is looked at."""
        columns: dict[str, Any] = {name: _Columns(getattr(stations, name), self) for name in COLUMNS}
        view = View(evolve(stations, **columns))
        view.cache = _Quantities(self)
        return view


class _Columns(dict[str, Any]):
    """Columns that note which of them are looked at."""

    def __init__(self, columns: Mapping[str, Any], reads: Reads) -> None:
        super().__init__(columns)
        self.reads = reads

    def __contains__(self, name: object) -> bool:
        self.reads.open[-1].add(name)
        return super().__contains__(name)

    def __getitem__(self, name: str) -> Any:
        self.reads.open[-1].add(name)
        return super().__getitem__(name)

    def get(self, name: str, default: Any = None) -> Any:
        self.reads.open[-1].add(name)
        return super().get(name, default)

    def __iter__(self) -> Iterator[str]:
        self._note_all()
        return super().__iter__()

    def keys(self) -> Any:
        self._note_all()
        return super().keys()

    def items(self) -> Any:
        self._note_all()
        return super().items()

    def values(self) -> Any:
        self._note_all()
        return super().values()

    def _note_all(self) -> None:
        self.reads.open[-1].update((*super().keys(), EVERY))


class _Quantities(dict[Any, Any]):
    """Shared quantities; one that is not there yet is being worked out until it is set."""

    def __init__(self, reads: Reads) -> None:
        super().__init__()
        self.reads = reads

    def __contains__(self, key: object) -> bool:
        self.reads.open[-1].add(Kept(key))
        there = super().__contains__(key)
        if not there:
            self.reads.open.append(set())
        return there

    def __setitem__(self, key: Any, value: Any) -> None:
        self.reads.learn(Kept(key), self.reads.open.pop())
        super().__setitem__(key, value)


class Touched:
    """Which clauses some trials touch.

    Parameters
    ----------
    reads : Reads
        Of the machines as they stand.
    before, view : View
        The machines as they stand, and the trials.
    rows, machines : int array
        By row and by machine of the trials the row and machine that it is a copy of.
    names : set of str
        Parameters that the trials change; :data:`EVERY` where one of them has no column yet.
    """

    def __init__(
        self,
        reads: Reads,
        before: View,
        view: View,
        rows: NDArray[np.intp],
        machines: NDArray[np.intp],
        names: Set[str],
    ) -> None:
        self.reads, self.before, self.view, self.names = reads, before, view, names
        self.copied = ((len(rows), before.count, rows), (len(machines), before.machine_count, machines))
        self.found: dict[Kept, bool] = {}

    def clause(self, name: str) -> bool:
        """Whether a clause looks at something that the trials change."""
        return any(self.changed(what) for what in self.reads.of[name])

    def changed(self, what: Any) -> bool:
        """Whether a column or quantity is another one in some trial."""
        if not isinstance(what, Kept):
            return what in self.names
        if what not in self.found:
            self.found[what] = self._quantity(what)
        return self.found[what]

    def _quantity(self, what: Kept) -> bool:
        """Whether a quantity is another one: it is worked out anew where anything that it rests on is."""
        looked_at = self.reads.of.get(what)
        if looked_at is None:
            return True
        if not any(self.changed(other) for other in looked_at):
            return False
        function: Callable[[View], Any] = what.key
        if not callable(function):
            return True
        if function not in self.view.cache:
            with np.errstate(all="ignore"):
                try:
                    self.view.cache[function] = function(self.view)
                except Exception:  # the clause that wants it says so
                    return True
        return not self._same(self.view.cache[function], dict.get(self.before.cache, function))

    def _same(self, now: Any, before: Any) -> bool:
        """Whether a value of the trials is that of the machines as they stand, row by row."""
        return same(now, before, self.copied)


def same(now: Any, before: Any, copied: Sequence[tuple[int, int, NDArray[np.intp]]]) -> bool:
    """Whether a value of copies of machines is that of the machines themselves, row by row.

    Parameters
    ----------
    now, before : any
        Arrays, and what is made of them.
    copied : sequence of (int, int, int array)
        How many rows (and machines) there are of copies and of the machines, and which one each is a copy of.

    Returns
    -------
    bool
        False also where it cannot be told.
    """
    if type(now) is not type(before):
        return False
    if isinstance(now, np.ndarray):
        return _same_array(now, before, copied)
    if attrs.has(type(now)):
        return all(same(getattr(now, a.name), getattr(before, a.name), copied) for a in attrs.fields(type(now)))
    if isinstance(now, (tuple, list)):
        return len(now) == len(before) and all(same(*pair, copied) for pair in zip(now, before, strict=True))
    if isinstance(now, dict):
        return now.keys() == before.keys() and all(same(now[key], before[key], copied) for key in now)
    return isinstance(now, (str, int, float, type(None))) and bool(now == before)


def _same_array(now: NDArray[Any], before: NDArray[Any], copied: Sequence[tuple[int, int, NDArray[np.intp]]]) -> bool:
    if now.ndim != before.ndim or now.dtype != before.dtype:
        return False
    for axis in range(now.ndim):
        for count, own, index in copied:
            if now.shape[axis] == count and before.shape[axis] == own:
                before = before.take(index, axis)
                break
    return np.array_equal(now, before, equal_nan=now.dtype.kind == "f")
