"""Trials: one machine copied many times, each copy with some cells changed, judged by the rulebook in one batch."""

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from linter.model.stations import Assumption, Choice, Floats, Stations, Toleranced
from linter.model.vocabulary import parameter
from linter.review.assess import assess
from linter.review.plan.cells import Cell
from linter.rulebook.model import Rulebook

#: What a trial changes: a value for each cell, as :func:`put` takes it.
Trial = Mapping[Cell, Any]
#: Rows assessed at once.
BATCH_ROWS = 16_000


class Once(list[Trial]):
    """Trials whose like is not tried again: nothing is remembered of them.

    Parameters
    ----------
    trials : sequence of dict
        What they change.
    clauses : sequence of int, optional
        Indices of the clauses that are asked for; the others are told as the machine stands.
    """

    def __init__(self, trials: Iterable[Trial], clauses: Sequence[int] | None = None) -> None:
        super().__init__(trials)
        self.clauses = clauses


@frozen(eq=False)
class Grades:
    """What the rulebook says of some trials of one machine.

    Attributes
    ----------
    grade : int8 array, shape (trials, clauses, rows)
        4 critical to 1 remark, 0 met, -1 not assessed, -2 not applicable; a clause about the machine counts at each of
        its stations. Clauses in the order of the rulebook, those switched off left out.
    measure : float32 array, the same shape
        What the severity steps are compared with; NaN where nothing was judged.
    """

    grade: NDArray[np.int8]
    measure: NDArray[np.float32]


def clauses_of(rulebook: Rulebook) -> tuple[str, ...]:
    """Ids of the clauses that are switched on, in the order of :class:`Grades`."""
    return tuple(clause.id for clause in rulebook.clauses.values() if clause.off is None)


def machine_block(stations: Stations, machine: int) -> NDArray[np.intp]:
    """Rows of one machine."""
    start = int(np.searchsorted(stations.machine_row, machine))
    stop = int(np.searchsorted(stations.machine_row, machine, side="right"))
    return np.arange(start, stop, dtype=np.intp)


def try_out(stations: Stations, block: NDArray[np.intp], trials: Sequence[Trial], rulebook: Rulebook) -> Grades:
    """Grades of trials of one machine, by the whole rulebook.

    Parameters
    ----------
    stations : Stations
        The table.
    block : int array
        Rows of the machine, from :func:`machine_block`.
    trials : sequence of dict
        For each trial the cells to change; an empty one leaves the machine as it is.
    rulebook : Rulebook
        All of its clauses are run, on some 16 000 rows at a time.

    Returns
    -------
    Grades
        In the order of the trials. What the reading says of cells (not understood, in disagreement) stays behind: those
        clauses are the same for every trial.
    """
    parts = []
    most = max(BATCH_ROWS // len(block), 1)
    for start in range(0, len(trials), most):
        some = trials[start : start + most]
        assessed = assess(copies_of(stations, block, some), rulebook, keep="measures")
        shape = (-1, len(some), len(block))
        parts.append([part.reshape(shape).swapaxes(0, 1) for part in (assessed.grades(), assessed.measures())])
    return Grades(np.concatenate([p[0] for p in parts]), np.concatenate([p[1] for p in parts]))


def copies_of(stations: Stations, block: NDArray[np.intp], trials: Sequence[Trial]) -> Stations:
    """One copy of a block of rows for each trial, with what it changes."""
    copies = replicate(stations, [block] * len(trials))
    put_trials(copies, 0, len(block), trials)
    return copies


def put_trials(copies: Stations, start: int, count: int, trials: Sequence[Trial]) -> None:
    """Set what trials change in copies of a machine of so many rows, from a row on."""
    changes: dict[str, tuple[list[int], list[Any]]] = {}
    for at, trial in zip(range(start, start + count * len(trials), count), trials, strict=True):
        for (name, row), value in trial.items():
            rows, values = changes.setdefault(name, ([], []))
            if parameter(name).level == "machine":
                rows.extend(range(at, at + count))
                values.extend([value] * count)
            else:
                rows.append(at + row)
                values.append(value)
    for name, (rows, values) in changes.items():
        put(copies, name, rows, tuple(zip(*values, strict=True)) if isinstance(values[0], tuple) else values)


def replicate(stations: Stations, blocks: Sequence[NDArray[np.intp]]) -> Stations:
    """Copies of rows, each block a machine of its own; problems and places are left behind."""
    rows = np.concatenate(blocks)
    return Stations(
        machines=tuple(str(k) for k in range(len(blocks))),
        machine_row=np.repeat(np.arange(len(blocks)), [len(b) for b in blocks]).astype(np.intp),
        numbers={k: v[rows] for k, v in stations.numbers.items()},
        toleranced={k: v.take(rows) for k, v in stations.toleranced.items()},
        choices={k: Choice(v.words, v.codes[rows]) for k, v in stations.choices.items()},
        texts={k: v[rows] for k, v in stations.texts.items()},
        assumed={k: Assumption(v.rows[rows], v.reason) for k, v in stations.assumed.items()},
        derived={k: v.take(rows) for k, v in stations.derived.items()},
        problems=(),
    )


def with_values(stations: Stations, changes: Iterable[tuple[str, int | slice, Any]]) -> Stations:
    """The same stations with values changed, problems and places kept; the given ones are left as they are.

    Each change is a parameter, the row or rows of the table, and the value as :func:`put` takes it.
    """
    made = evolve(
        stations,
        numbers={k: v.copy() for k, v in stations.numbers.items()},
        toleranced={
            k: Toleranced(v.nominal.copy(), v.lower.copy(), v.upper.copy(), v.tolerance_class.copy())
            for k, v in stations.toleranced.items()
        },
        choices={k: Choice(v.words, v.codes.copy()) for k, v in stations.choices.items()},
        assumed={k: Assumption(v.rows.copy(), v.reason) for k, v in stations.assumed.items()},
    )
    for name, at, value in changes:
        put(made, name, at, value)
    return made


def put(stations: Stations, name: str, at: int | slice | Sequence[int] | NDArray[np.intp], value: Any) -> None:
    """Set one value in copies made by :func:`replicate` or :func:`with_values`; of several rows each its own.

    A number is a float, a choice the index of its word, a size a tuple (nominal, lower, upper, class) with deviations
    in the unit of the parameter, NaN for none. A value that was assumed is stated from then on.
    """
    kind = parameter(name).kind
    if name in stations.assumed:
        stations.assumed[name].rows[at] = False
    if kind == "number":
        stations.numbers.setdefault(name, _blank(stations))[at] = value
    elif kind == "choice":
        if name not in stations.choices:
            stations.choices[name] = stations.choice(name)
        stations.choices[name].codes[at] = value
    else:
        if name not in stations.toleranced:
            words = np.full(len(stations), "", dtype=object)
            stations.toleranced[name] = Toleranced(_blank(stations), _blank(stations), _blank(stations), words)
        size = stations.toleranced[name]
        size.nominal[at], size.lower[at], size.upper[at], size.tolerance_class[at] = value


def _blank(stations: Stations) -> Floats:
    return np.full(len(stations), np.nan)


def value_at(stations: Stations, name: str, row: int) -> Any:
    """The present value as :func:`put` takes it: NaN, -1 or a size of NaN where nothing is stated."""
    kind = parameter(name).kind
    if kind == "number":
        return float(stations.number(name)[row])
    if kind == "choice":
        return int(stations.choice(name).codes[row])
    size = stations.size(name)
    return float(size.nominal[row]), float(size.lower[row]), float(size.upper[row]), str(size.tolerance_class[row])
