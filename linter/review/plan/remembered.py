"""What the trials of one machine came to, remembered clause by clause: a clause sees only the cells that it reads."""

from collections.abc import Sequence
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.model.stations import Stations
from linter.review.plan.cells import Cell
from linter.review.plan.domains import impossible
from linter.review.plan.reads import Reads
from linter.review.plan.trials import Grades, Trial, put, put_trials

Numbers = NDArray[np.int16]


@frozen(eq=False)
class Group:
    """Clauses that read the same of the cells that were moved.

    Attributes
    ----------
    clauses, columns : int array
        Indices of the clauses, and of the cells.
    trials : dict of bytes to int
        By the values of those cells the first trial that had them.
    """

    clauses: NDArray[np.intp]
    columns: NDArray[np.intp]
    trials: dict[bytes, int]

    def keys(self, values: Numbers) -> list[bytes]:
        """The values of its cells in some trials, each as the bytes of their numbers."""
        if not len(self.columns):
            return [b""] * len(values)
        own = np.ascontiguousarray(values[:, self.columns])
        keys: list[bytes] = own.view(f"V{own.itemsize * len(self.columns)}").ravel().tolist()
        return keys


class Remembered:
    """The trials of one machine; the first one is the machine as it stands.

    Parameters
    ----------
    grade : int8 array, shape (clauses, rows)
        Of the machine as it stands.
    measure : float32 array, the same shape
    """

    def __init__(self, grade: NDArray[np.int8], measure: NDArray[np.float32]) -> None:
        self.grade, self.measure = grade[None], measure[None]
        #: Cells that were moved; the values of each by number, 0 for the present one; numbers of those that cannot be.
        self.columns: dict[Cell, int] = {}
        self.numbers: list[dict[Any, int]] = []
        self.given: list[list[Any]] = []
        self.impossible: list[set[int]] = []
        self.values: Numbers = np.zeros((1, 0), np.int16)
        self.groups: list[Group] = []
        self.grouped = (-1, -1)

    def numbered(self, trials: Sequence[Trial]) -> Numbers:
        """Values of trials by their numbers, shape (trials, cells)."""
        new: dict[int, list[Any]] = {}
        for trial in trials:
            for cell, value in trial.items():
                column = self.columns.get(cell)
                if column is None:
                    column = self.columns[cell] = len(self.numbers)
                    self.numbers.append({})
                    self.given.append([None])
                    self.impossible.append(set())
                if value not in self.numbers[column]:
                    self.numbers[column][value] = len(self.given[column])
                    self.given[column].append(value)
                    new.setdefault(column, []).append(value)
        names = list(self.columns)
        for column, values in new.items():
            cannot = impossible(names[column].name, values)
            self.impossible[column].update(self.numbers[column][v] for v, no in zip(values, cannot, strict=True) if no)
        found = np.zeros((len(trials), len(self.numbers)), np.int16)
        for row, trial in enumerate(trials):
            for cell, value in trial.items():
                column = self.columns[cell]
                found[row, column] = self.numbers[column][value]
        return found

    def possible(self, values: Numbers) -> NDArray[np.bool_]:
        """Trials whose values all can be."""
        found = np.ones(len(values), dtype=bool)
        for column, cannot in enumerate(self.impossible):
            if cannot:
                found &= ~np.isin(values[:, column], sorted(cannot))
        return found

    def regroup(self, reads: Reads, clauses: Sequence[str]) -> None:
        """Group the clauses anew where a cell is new, or a clause was seen to read more than before."""
        if self.grouped == (len(self.columns), reads.grown):
            return
        self.grouped = (len(self.columns), reads.grown)
        self.values = np.pad(self.values, ((0, 0), (0, len(self.columns) - self.values.shape[1])))
        members: dict[tuple[int, ...], list[int]] = {}
        for k, clause in enumerate(clauses):
            looked_at = reads.columns(clause)
            members.setdefault(tuple(n for c, n in self.columns.items() if c.name in looked_at), []).append(k)
        known = {(tuple(g.clauses.tolist()), tuple(g.columns.tolist())): g for g in self.groups}
        self.groups = []
        for cells, own in members.items():
            group = known.get((tuple(own), cells))
            if group is None:
                group = Group(np.array(own), np.array(cells, np.intp), {})
                keys = group.keys(self.values)
                group.trials.update(zip(reversed(keys), range(len(keys) - 1, -1, -1), strict=True))
            self.groups.append(group)

    def add(self, values: Numbers, grades: Grades) -> None:
        """Take in trials that every clause has judged."""
        self.values = np.concatenate([self.values, values])
        self.grade = np.concatenate([self.grade, grades.grade])
        self.measure = np.concatenate([self.measure, grades.measure])

    def put(self, copies: Stations, rows: NDArray[np.intp], count: int, values: Numbers) -> None:
        """Set the values of trials in copies of the machine, each from its first row on; the machine has so many."""
        for cell, column in self.columns.items():
            moved = np.flatnonzero(values[:, column])
            if len(moved):
                own = [self.given[column][n] for n in values[moved, column].tolist()]
                at = rows[moved] + cell.row
                if cell.whole:
                    at, own = (rows[moved][:, None] + np.arange(count)).ravel(), [v for v in own for _ in range(count)]
                put(copies, cell.name, at, tuple(zip(*own, strict=True)) if isinstance(own[0], tuple) else own)


class Asked:
    """Trials of one machine of which some clauses are known and others are to be reviewed.

    Parameters
    ----------
    machine : int
        Its number on the bench.
    trials : sequence of dict
        All of their values can be.
    values : int array, shape (trials, cells), or None
        By their numbers; None for trials of which nothing is remembered.
    memory : Remembered
        Of that machine, its clauses grouped.
    """

    def __init__(self, machine: int, trials: Sequence[Trial], values: Numbers | None, memory: Remembered) -> None:
        self.machine, self.trials, self.values, self.memory = machine, trials, values, memory
        shape = (len(trials), *memory.grade.shape[1:])
        self.grades = Grades(np.empty(shape, np.int8), np.empty(shape, np.float32))
        #: For each group that does not know all trials: the trials to review, and those alike with the one reviewed.
        self.open: list[tuple[Group, list[int], list[tuple[int, int]]]] = []
        if values is None:
            self.grades.grade[:], self.grades.measure[:] = memory.grade[0], memory.measure[0]
            asked = getattr(trials, "clauses", None)
            clauses = np.arange(shape[1]) if asked is None else np.array(asked)
            self.open.append((Group(clauses, np.zeros(0, np.intp), {}), list(range(len(trials))), []))
            return
        sources = np.empty(shape[:2], np.intp)
        for group in memory.groups:
            keys = group.keys(values)
            found = np.array([group.trials.get(key, -1) for key in keys], np.intp)
            sources[:, group.clauses] = np.maximum(found, 0)[:, None]
            unknown = np.flatnonzero(found < 0).tolist()
            if unknown:
                first: dict[bytes, int] = {}
                alike = [(n, at) for n in unknown if (at := first.setdefault(keys[n], n)) != n]
                self.open.append((group, list(first.values()), alike))
        every = np.arange(shape[1])
        self.grades.grade[:], self.grades.measure[:] = memory.grade[sources, every], memory.measure[sources, every]

    def put(self, copies: Stations, first: NDArray[np.intp], count: int, numbers: NDArray[np.intp]) -> set[str]:
        """Set what some of the trials change in copies of the machine; the parameters that this changes."""
        if self.values is None:
            trials = [self.trials[n] for n in numbers.tolist()]
            put_trials(copies, int(first[0]), count, trials)
            return {cell.name for trial in trials for cell in trial}
        values = self.values[numbers]
        self.memory.put(copies, first, count, values)
        return {cell.name for cell, column in self.memory.columns.items() if values[:, column].any()}

    def close(self, reads: Reads, clauses: Sequence[str]) -> Grades:
        """What all trials came to, when those to review have been entered; they are remembered."""
        reviewed: set[int] = set()
        for group, trials, alike in self.open:
            reviewed.update(trials)
            if alike:
                to, by = np.array(alike).T
                into, of = (to[:, None], group.clauses), (by[:, None], group.clauses)
                self.grades.grade[into] = self.grades.grade[of]
                self.grades.measure[into] = self.grades.measure[of]
        if reviewed and self.values is not None:
            new = sorted(reviewed)
            places = {n: place for place, n in enumerate(new, len(self.memory.values))}
            self.memory.add(self.values[new], Grades(self.grades.grade[new], self.grades.measure[new]))
            for group, trials, _ in self.open:
                keys = group.keys(self.values[trials])
                group.trials.update((key, places[n]) for key, n in zip(keys, trials, strict=True))
            self.memory.regroup(reads, clauses)
        return self.grades


def any_impossible(trials: Sequence[Trial]) -> bool:
    """Whether some trial has a value that its parameter cannot have."""
    values: dict[str, list[Any]] = {}
    for trial in trials:
        for cell, value in trial.items():
            values.setdefault(cell.name, []).append(value)
    return any(impossible(name, own).any() for name, own in values.items())
