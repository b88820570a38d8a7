"""What every check shares: the view it looks at, the shape of its result, and shared quantities."""

from collections.abc import Callable, Mapping, Sequence
from functools import wraps
from typing import Any, Literal, Protocol, TypeVar

import numpy as np
from attrs import evolve, field, frozen
from numpy.typing import NDArray

from linter.model.places import Place
from linter.model.stations import Bools, Floats, Stations

T = TypeVar("T")
Reduction = Literal["first", "sum", "min", "max", "any", "all", "count"]
#: Text that is composed row by row is a function of the row.
Facts = Mapping[str, NDArray[Any] | tuple[Floats, str] | Callable[[int], str]]


class Limits(Protocol):
    """The limits of one clause as a check sees them (see :class:`linter.rulebook.model.Limits`)."""

    def __getitem__(self, name: str) -> Any:
        """The value of a limit."""

    def get(self, name: str, default: Any = None) -> Any:
        """The value of a limit that older rulebooks lack; the default without it."""

    def has_table(self, name: str) -> bool:
        """Whether there is a limit table that older rulebooks lack."""

    def table(self, name: str) -> Mapping[str, NDArray[Any]]:
        """A limit table: column name to array (float where every filled cell is a number, else object text)."""


@frozen(eq=False)
class Working:
    """One line of the working, for all rows at once.

    Attributes
    ----------
    key : str
        Name that a message may use in braces.
    symbol, meaning, unit, formula : str
        Symbol of the standards; words; unit (``"1"`` for a pure number); how it comes about (empty for an input).
    values : array
        Float array of shape (rows,), or an object array of str for a word.
    """

    key: str
    symbol: str
    meaning: str
    values: NDArray[Any]
    unit: str = "1"
    formula: str = ""


@frozen(eq=False)
class Assumes:
    """A value that the check let stand in for one the table does not state; the report shows it as assumed."""

    parameter: str
    values: NDArray[Any]
    unit: str
    reason: str
    rows: Bools


@frozen(eq=False)
class Result:
    """What a check found, for all rows (stations or machines) at once.

    What only a report shows (``reason``, ``variant``, ``facts``, ``assumed``, ``working``) may be given as a function
    without arguments, so that it costs nothing where the verdicts alone are wanted.

    Attributes
    ----------
    measure : float array, shape (rows,)
        How far the row stands from its limit, compared with the clause's steps: the severity is that of the highest
        step that ``measure`` lies above; a row above none is met. It must rise as the row gets worse. NaN where it
        could not be computed, which needs a cause in ``missing``.
    unit : str
        Unit of observed, lower and upper.
    observed, lower, upper : float array or None
        The observed value against its limits; NaN where there is none.
    applies : bool array or None
        Rows that the clause is about; None for all.
    reason : str or object array of str
        Why a row is not applicable.
    missing : dict of str to bool array
        Parameters wanted besides the clause's ``needs``, and by which rows.
    withheld : dict of str to bool array
        Parameters wanted besides, of rows whose verdict was made without them: they could make it graver.
    working : sequence of Working
        From inputs to result.
    variant : object array of str or None
        Which of the clause's messages a row takes; empty for the plain one.
    facts : dict of str to array, (array, unit) or function
        Further values for messages: float arrays with their unit, object arrays of text, or a function from a row to
        its text. Text that is composed row by row takes the function, so that only the rows a report shows are
        composed. The fact ``not_assessed`` is added to the message of a row that could not be assessed.
    assumed : sequence of Assumes
        Values that stood in for absent ones, besides the vocabulary's own defaults.
    cells : function or None
        Cells that a row rests on besides those of its parameters: what it concerns, place, text as read.
    """

    measure: Floats
    unit: str = "1"
    observed: Floats | None = None
    lower: Floats | None = None
    upper: Floats | None = None
    applies: Bools | None = None
    _reason: str | NDArray[Any] | Callable[[], str | NDArray[Any]] = "the clause is not about this position"
    missing: Mapping[str, Bools] = field(factory=dict)
    withheld: Mapping[str, Bools] = field(factory=dict)
    _working: Sequence[Working] | Callable[[], Sequence[Working]] = ()
    _variant: NDArray[Any] | Callable[[], NDArray[Any]] | None = None
    _facts: Facts | Callable[[], Facts] = field(factory=dict)
    _assumed: Sequence[Assumes] | Callable[[], Sequence[Assumes]] = ()
    cells: Callable[[int], Sequence[tuple[str, Place, str]]] | None = None

    @property
    def reason(self) -> str | NDArray[Any]:
        """Why a row is not applicable."""
        return self._reason() if callable(self._reason) else self._reason

    @property
    def working(self) -> Sequence[Working]:
        """From inputs to result."""
        return _now(self._working)

    @property
    def variant(self) -> NDArray[Any] | None:
        """Which of the clause's messages a row takes."""
        return _now(self._variant)

    @property
    def facts(self) -> Facts:
        """Further values for messages."""
        return _now(self._facts)

    @property
    def assumed(self) -> Sequence[Assumes]:
        """Values that stood in for absent ones."""
        return _now(self._assumed)

    def told(self) -> "Result":
        """The same with all that a report shows computed."""
        return evolve(
            self, reason=self.reason, working=self.working, variant=self.variant, facts=self.facts,
            assumed=self.assumed,
        )  # fmt: skip


def _now(value: T | Callable[[], T]) -> T:
    """The value, computed where it is given as a function."""
    return value() if callable(value) else value


class View:
    """What a check looks at: the stations, the machines they make up, and quantities computed once.

    Parameters
    ----------
    stations : Stations
        Rows of one machine stand together.
    """

    def __init__(self, stations: Stations) -> None:
        self.stations = stations
        self.count = len(stations)
        self.machine_count = len(stations.machines)
        self.starts = stations.first_rows
        self.station_count = np.diff(np.append(self.starts, self.count))
        self.cache: dict[Any, Any] = {}

    def to_stations(self, values: NDArray[Any]) -> NDArray[Any]:
        """A value per machine, repeated for each of its stations."""
        return values[self.stations.machine_row]

    def to_machines(self, values: NDArray[Any], how: Reduction = "first", *, known: bool = False) -> NDArray[Any]:
        """A value per station, brought to one per machine.

        ``first`` takes the machine's first row (right for machine-level parameters); ``sum``, ``min``, ``max`` pass NaN
        on, or with ``known`` pass over it (NaN only where no station has a value); ``any``, ``all`` and ``count`` take
        booleans.
        """
        if how == "first":
            return values[self.starts]
        if how == "count":
            return np.add.reduceat(values.astype(np.int64), self.starts)
        if known and how == "sum":
            total = np.add.reduceat(np.nan_to_num(values, nan=0.0), self.starts)
            return np.where(np.logical_and.reduceat(np.isnan(values), self.starts), np.nan, total)
        operation: np.ufunc = {
            "sum": np.add,
            "min": np.fmin if known else np.minimum,
            "max": np.fmax if known else np.maximum,
            "any": np.logical_or,
            "all": np.logical_and,
        }[how]
        return operation.reduceat(values, self.starts)

    def pair(self, values: NDArray[Any]) -> tuple[NDArray[Any], NDArray[Any]]:
        """The values of the first and the last station of each machine (the same one where there is only one)."""
        return values[self.starts], values[self.starts + self.station_count - 1]

    def other(self, values: NDArray[Any]) -> NDArray[Any]:
        """For each station the value of the other station of its machine; its own where there are not two."""
        index = np.arange(self.count)
        start = self.to_stations(self.starts)
        two = self.to_stations(self.station_count) == 2
        return values[np.where(two, 2 * start + 1 - index, index)]


def shared(function: Callable[[View], T]) -> Callable[[View], T]:
    """Compute a quantity once per view, whichever checks ask for it."""

    @wraps(function)
    def once(view: View) -> T:
        if function not in view.cache:
            view.cache[function] = function(view)
        value: T = view.cache[function]
        return value

    return once


def either(*masks: Bools) -> Bools:
    """Rows where any of the masks holds."""
    return np.logical_or.reduce(masks)


def ladder(value: Floats, *marks: Floats | float) -> Floats:
    """A measure that rises by one from mark to mark: 0 at zero, 1 at the first mark, 2 at the second, and so on.

    Beyond the last mark it goes on in proportion (without end where that mark is 0). A NaN mark takes the place of the
    next one (the way up to it counts at once). NaN where the value or the last mark is.

    Parameters
    ----------
    value : float array, shape (rows,)
        Zero or more; the larger the worse.
    *marks : float array or float
        Ascending.

    Returns
    -------
    float array, shape (rows,)
    """
    levels = [np.asarray(mark, dtype=float) for mark in marks]
    for index in range(len(levels) - 2, -1, -1):
        if (gaps := np.isnan(levels[index])).any():
            levels[index] = np.where(gaps, levels[index + 1], levels[index])
    measure = np.zeros_like(value)
    below = np.zeros(())
    with np.errstate(divide="ignore", invalid="ignore"):
        for level in levels:
            measure += _share(value, below, level - below, above=level)
            below = level
        beyond = _share(value, below, below, above=below, most=np.inf)
    np.copyto(beyond, 0.0, where=~(value > below))  # as much where the last mark is infinite
    measure += beyond
    measure[np.isnan(value) | np.isnan(below)] = np.nan
    return measure


def _share(value: Floats, below: Floats, width: Floats, *, above: Floats, most: float = 1.0) -> Floats:
    """How far a value has come through an interval, 0 to ``most``; all of it above where the interval is empty."""
    share = (value - below) / width
    np.maximum(share, 0.0, out=share)
    np.minimum(share, most, out=share)
    if (empty := ~(width > 0)).any():
        np.copyto(share, np.where(value > above, most, 0.0), where=empty)
    return share


def within(values: Floats, low: float = 0.0, high: float = np.inf, *, closed: bool = False) -> Floats:
    """The values where they lie inside the domain of a formula, NaN elsewhere.

    Parameters
    ----------
    values : float array
        Any shape.
    low, high : float
        The domain.
    closed : bool
        Whether ``low`` itself belongs to it.

    Returns
    -------
    float array
        The shape of ``values``.
    """
    inside = (values >= low if closed else values > low) & (values <= high)
    return np.where(inside, values, np.nan)
