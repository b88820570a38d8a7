"""What the trials of one machine came to, remembered clause by clause: a clause sees only the cells that it reads."""

from collections.abc import Sequence
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.review.plan.cells import Cell
from linter.review.plan.domains import impossible
from linter.review.plan.reads import Reads
from linter.review.plan.trials import Grades, Trial

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
                    self.impossible.append(set())
                if value not in self.numbers[column]:
                    self.numbers[column][value] = len(self.numbers[column]) + 1
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
        self.groups = [Group(np.array(ks), np.array(cells, np.intp), {}) for cells, ks in members.items()]
        for group in self.groups:
            keys = group.keys(self.values)
            group.trials.update(zip(reversed(keys), range(len(keys) - 1, -1, -1), strict=True))

    def add(self, values: Numbers, grades: Grades) -> None:
        """Take in trials that every clause has judged."""
        before = len(self.values)
        self.values = np.concatenate([self.values, values])
        self.grade = np.concatenate([self.grade, grades.grade])
        self.measure = np.concatenate([self.measure, grades.measure])
        for group in self.groups:
            for n, key in enumerate(group.keys(values), before):
                group.trials.setdefault(key, n)


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
            group = Group(np.arange(shape[1]) if asked is None else np.array(asked), np.zeros(0, np.intp), {})
            self.open.append((group, list(range(len(trials))), []))
            return
        for group in memory.groups:
            keys = group.keys(values)
            sources = [group.trials.get(key, -1) for key in keys]
            at = (np.maximum(sources, 0)[:, None], group.clauses)
            self.grades.grade[:, group.clauses] = memory.grade[at]
            self.grades.measure[:, group.clauses] = memory.measure[at]
            if -1 in sources:
                first: dict[bytes, int] = {}
                alike = []
                for n, (key, source) in enumerate(zip(keys, sources, strict=True)):
                    if source < 0 and first.setdefault(key, n) != n:
                        alike.append((n, first[key]))
                self.open.append((group, list(first.values()), alike))

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
            self.memory.regroup(reads, clauses)
            self.memory.add(self.values[new], Grades(self.grades.grade[new], self.grades.measure[new]))
        return self.grades


def any_impossible(trials: Sequence[Trial]) -> bool:
    """Whether some trial has a value that its parameter cannot have."""
    values: dict[str, list[Any]] = {}
    for trial in trials:
        for cell, value in trial.items():
            values.setdefault(cell.name, []).append(value)
    return any(impossible(name, own).any() for name, own in values.items())
