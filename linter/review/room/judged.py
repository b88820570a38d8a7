"""Trials of one machine with one value changed each, judged in batches by the whole rulebook."""

from collections.abc import Iterable, Mapping, Sequence
from functools import cached_property
from typing import Any

import numpy as np
from attrs import evolve, field, frozen
from numpy.typing import NDArray

from linter.checks.shared.base import View
from linter.model.findings import SEVERITIES
from linter.model.possible import only_possible
from linter.model.stations import Assumption, Stations, apply_defaults
from linter.model.vocabulary import parameter
from linter.review.assess import POSSIBLE, assess
from linter.review.defaults import with_defaults
from linter.review.plan.trials import put, replicate
from linter.review.room.domains import Cell
from linter.rulebook.gates import must_rows
from linter.rulebook.model import Clause, Rulebook

#: Rows assessed at once.
BATCH_ROWS = 24_000
#: What a trial changes.
Changes = Mapping[Cell, Any]


@frozen(eq=False)
class Judge:
    """One machine that is tried with other values.

    Attributes
    ----------
    stations : Stations
        The table, with the defaults of the rulebook.
    block : int array
        Rows of the machine.
    rulebook : Rulebook
        All of its clauses are run.
    severity : str
        The gravest severity that is allowed.
    """

    stations: Stations
    block: NDArray[np.intp]
    rulebook: Rulebook
    severity: str
    _own: tuple[Clause, ...] = field(init=False)
    clauses: tuple[str, ...] = field(init=False)
    allowed: int = field(init=False)

    def __attrs_post_init__(self) -> None:
        own = tuple(clause for clause in self.rulebook.clauses.values() if clause.off is None)
        set_ = object.__setattr__
        set_(self, "_own", own)
        set_(self, "clauses", tuple(clause.id for clause in own))
        set_(self, "allowed", len(SEVERITIES) - SEVERITIES.index(self.severity))

    @cached_property
    def base(self) -> NDArray[np.int8]:
        """Grades of the machine as it stands, shape (clauses, rows)."""
        return assess(replicate(self.stations, [self.block]), self.rulebook, keep="verdicts").grades()

    @cached_property
    def must(self) -> NDArray[np.bool_]:
        """Where a clause must be judged, the same shape."""
        machine = replicate(self.stations, [self.block])
        view = View(only_possible(machine) if POSSIBLE in self.rulebook.clauses else machine)
        found = [(clause, must_rows(clause, view)) for clause in self._own]
        return np.array([view.to_stations(rows) if clause.level == "machine" else rows for clause, rows in found])

    def blocked(self, trials: Sequence[Changes]) -> NDArray[np.bool_]:
        """The clauses that forbid each trial, shape (trials, clauses).

        A clause forbids it with a finding graver than allowed, or by going unjudged where it must be judged and is.
        """
        most = max(1, BATCH_ROWS // len(self.block))
        found = [self._batch(trials[start : start + most]) for start in range(0, len(trials), most)]
        return np.concatenate(found) if found else np.zeros((0, len(self.clauses)), bool)

    def grades(self, trials: Sequence[Changes]) -> NDArray[np.int8]:
        """Grades of each trial, shape (trials, clauses, rows), as :meth:`linter.review.assess.Assessed.grades`."""
        copies = changed_copies(self.stations, self.block, trials, self.rulebook)
        grades = assess(copies, self.rulebook, keep="verdicts").grades()
        return grades.reshape(len(self.clauses), len(trials), len(self.block)).transpose(1, 0, 2)

    def _batch(self, trials: Sequence[Changes]) -> NDArray[np.bool_]:
        grades = self.grades(trials)
        lost = (grades == -1) & (self.base >= 0) & self.must
        return np.asarray(((grades > self.allowed) | lost).any(axis=2))


def changed_copies(
    stations: Stations, block: NDArray[np.intp], trials: Sequence[Changes], rulebook: Rulebook
) -> Stations:
    """One copy of a block of rows for each trial, with what it changes and what was assumed assumed anew."""
    copies = replicate(stations, [block] * len(trials))
    names: set[str] = set()
    size = len(block)
    for k, trial in enumerate(trials):
        for cell, value in trial.items():
            at: int | slice = slice(k * size, (k + 1) * size) if cell.whole else k * size + cell.row
            put(copies, cell.name, at, value)
            names.add(cell.name)
    return anew(copies, rulebook, names)


def anew(stations: Stations, rulebook: Rulebook, changed: Iterable[str]) -> Stations:
    """Copies with what was assumed in them assumed anew, after values of these parameters were changed."""
    names = set(changed)
    numbers = dict(stations.numbers)
    assumed = {}
    for name, assumption in stations.assumed.items():
        if parameter(name).default and name in numbers and assumption.rows.any():
            numbers[name] = np.where(assumption.rows, np.nan, numbers[name])
            assumed[name] = Assumption(np.zeros(len(stations), bool), assumption.reason)
        else:
            assumed[name] = assumption
    made = apply_defaults(evolve(stations, numbers=numbers, assumed=assumed))
    sizes = {"bore_diameter", "outside_diameter", "ring_width"}
    moved = {
        d.parameter
        for d in rulebook.defaults
        if d.unless in names or (d.by_size and names & sizes) or any(names & c.keys() for c in (d.when, *d.not_when))
    }
    if not moved:
        return made
    choices = dict(made.choices)
    for name in moved & made.assumed.keys() & choices.keys():
        rows = made.assumed[name].rows
        choices[name] = evolve(choices[name], codes=np.where(rows, -1, choices[name].codes).astype(np.int8))
    kept = {name: a for name, a in made.assumed.items() if name not in moved or name in numbers}
    return with_defaults(evolve(made, choices=choices, assumed=kept), rulebook)
