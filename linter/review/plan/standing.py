"""How a trial stands against the machine as it is: what still closes the gate, what got worse, what was handed over.

A finding counts as cleared where its own clause is met. One that goes quiet because nothing is judged any more, or
because a seat moved the wrong way and another clause took over, stays on the list.
"""

from collections.abc import Iterable, Sequence
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.model.findings import SEVERITIES
from linter.model.stations import Stations
from linter.review.plan.cells import Cell
from linter.review.plan.trials import Grades, Trial, value_at
from linter.rulebook.model import Clause, Rulebook
from linter.rulebook.repairs import repairs

#: Weight of a finding that closes the gate, by grade, and of what a trial makes worse without closing it.
WEIGHTS = np.array([0.0, 30.0, 100.0, 300.0, 1000.0])
RISE, LOST = 20.0, 60.0
#: mm; a limit of size that moves by less has not moved.
CLOSE = 5e-7


def grade_of(severity: str) -> int:
    """4 for critical to 1 for remark."""
    return len(SEVERITIES) - SEVERITIES.index(severity)


@frozen
class Guard:
    """A finding that one way of moving a seat clears and the other way only hands over."""

    clause: int
    row: int
    cell: Cell
    tighter: bool
    size: tuple[float, float]


@frozen(eq=False)
class Judged:
    """What is left to do in each of some trials.

    Attributes
    ----------
    grade : int8 array, shape (trials, clauses, rows)
    bad : bool array, the same shape
        What closes the gate, what got worse, what was lost or only handed over; a clause about the machine counts once.
    score : float array, shape (trials,)
        Weighted sum of ``bad``, with how far each finding lies beyond its limit; 0 where the gate is open and nothing
        is worse.
    weight : float array, shape (trials,)
        The same by severities alone.
    wanting : int array, shape (trials,)
        How many clauses that must be judged were not.
    handed : bool array, shape (trials, clauses, rows)
        Findings that got milder only because a seat moved the way that does not help them.
    measure : float32 array, shape (trials, clauses, rows)
    """

    grade: NDArray[np.int8]
    bad: NDArray[np.bool_]
    score: NDArray[np.float64]
    weight: NDArray[np.float64]
    wanting: NDArray[np.intp]
    handed: NDArray[np.bool_]
    measure: NDArray[np.float32]


@frozen(eq=False)
class Baseline:
    """A machine as it stands before any trial.

    Attributes
    ----------
    clauses : tuple of Clause
        Those switched on, in the order of the grades.
    grade, measure : arrays, shape (clauses, rows)
        As reviewed.
    held : bool array, shape (clauses, rows)
        Grades that rest on what the reading says of cells: no trial changes them.
    must : bool array, shape (clauses, rows)
        What must be judged before the gate opens.
    excused : bool array, shape (clauses, rows)
        Findings that are conceded and so do not close the gate.
    closes : int
        Lowest grade that closes the gate.
    guards : list of Guard
        Findings that one way of moving a seat hands over; the search drops one whose finding that seat does not touch.
    """

    clauses: tuple[Clause, ...]
    grade: NDArray[np.int8]
    measure: NDArray[np.float32]
    held: NDArray[np.bool_]
    must: NDArray[np.bool_]
    excused: NDArray[np.bool_]
    closes: int
    guards: list[Guard] = field(factory=list)
    once: NDArray[np.bool_] = field(init=False)
    marks: NDArray[np.float64] = field(init=False)

    @once.default
    def _once(self) -> NDArray[np.bool_]:
        machine = np.array([clause.level == "machine" for clause in self.clauses])
        mask = np.ones(self.grade.shape, dtype=bool)
        mask[machine, 1:] = False
        return mask

    @marks.default
    def _marks(self) -> NDArray[np.float64]:
        """By clause the measure from which its finding closes the gate."""
        found = [[s.above for s in c.steps if grade_of(s.severity) >= self.closes] for c in self.clauses]
        return np.array([steps[0] if steps else np.inf for steps in found])[:, None]

    @property
    def closing(self) -> NDArray[np.bool_]:
        """Findings that close the gate, shape (clauses, rows); one about the machine at its first row."""
        return (self.grade >= self.closes) & ~self.excused & self.once

    def judge(self, trials: Sequence[Trial], grades: Grades) -> Judged:
        """What is left to do in each trial.

        Parameters
        ----------
        trials : sequence of dict
            What was changed.
        grades : Grades
            From :func:`linter.review.plan.trials.try_out`, in the same order.

        Returns
        -------
        Judged
        """
        after = np.where(self.held, self.grade, grades.grade)
        before = self.grade
        closing = (after >= self.closes) & ~self.excused
        risen = (after > before) & (before >= 0)
        # a concession reaches as far as it was given: what is conceded must not get worse at all
        risen |= self.excused & (grades.measure > self.measure * (1 + 1e-6))
        lost = (after == -1) & (before != -1)
        bad = closing | risen | lost
        weight, fine = np.zeros(after.shape), np.zeros(after.shape)
        weight[closing] = WEIGHTS[after[closing]]
        mild = risen & ~closing
        weight[mild] = RISE * (1 + after[mild])
        weight[lost] = LOST + np.broadcast_to(WEIGHTS[np.maximum(before, 0)], after.shape)[lost]
        handed = self._handed_over(trials, after, grades.measure) & ~self.held
        bad |= handed
        weight = np.where(handed, np.maximum(weight, WEIGHTS[np.maximum(before, 0)]), weight)
        bad &= self.once
        wanting = ((after == -1) & self.must & self.once).sum(axis=(1, 2))
        weight[~bad] = 0.0
        at = np.nonzero(closing & bad)
        marks = self.marks[at[1], 0]
        excess = np.clip(grades.measure[at] / np.where(marks > 0, marks, 1.0) - 1.0, 0.0, 1e6)
        fine[at] = weight[at] * 0.5 * np.nan_to_num(excess / (1.0 + excess), nan=1.0)
        total = weight.sum(axis=(1, 2))
        return Judged(after, bad, total + fine.sum(axis=(1, 2)), total, wanting, handed, grades.measure)

    def _handed_over(
        self, trials: Sequence[Trial], after: NDArray[np.int8], measure: NDArray[np.float32]
    ) -> NDArray[np.bool_]:
        """Findings that got milder although their seat moved the way that does not help, and none the way that does."""
        found = np.zeros(after.shape, dtype=bool)
        by_finding: dict[tuple[int, int], list[Guard]] = {}
        for guard in self.guards:
            by_finding.setdefault((guard.clause, guard.row), []).append(guard)
        for (clause, row), guards in by_finding.items():
            milder = after[:, clause, row] < self.grade[clause, row]
            milder |= measure[:, clause, row] < self.measure[clause, row] * (1 - 1e-6)
            for k in np.flatnonzero(milder).tolist():
                ways = [way_of(guard, trials[k].get(guard.cell)) for guard in guards]
                found[k, clause, row] = -1 in ways and 1 not in ways
        return found


def way_of(guard: Guard, value: Any) -> int:
    """1 where the seat moves the way that helps, -1 the other way, 0 where it stays."""
    if value is None:
        return 0
    low, high = value[0] + value[1], value[0] + value[2]
    old_low, old_high = guard.size
    shaft = guard.cell.name.startswith("shaft")
    # the loosest pair decides what has to hold, the tightest what has to slide
    change = (low - old_low if shaft else old_high - high) if guard.tighter else (
        old_high - high if shaft else low - old_low
    )  # fmt: skip
    return 0 if abs(change) < CLOSE or np.isnan(change) else 1 if change > 0 else -1


def guards_of(
    stations: Stations, block: NDArray[np.intp], clauses: Iterable[Clause], grade: NDArray[np.int8]
) -> list[Guard]:
    """The findings of a machine that only one way of moving a seat clears."""
    found = []
    for k, clause in enumerate(clauses):
        rows = np.flatnonzero(grade[k] > 0)
        for repair in repairs(clause) if len(rows) else ():
            for row in rows if repair.way else ():
                nominal, lower, upper, _ = value_at(stations, repair.name, int(block[row]))
                size = (nominal + lower, nominal + upper)
                found.append(Guard(k, int(row), Cell(repair.name, int(row)), repair.way == "tighter", size))
    return found


def baseline(
    stations: Stations,
    block: NDArray[np.intp],
    rulebook: Rulebook,
    copy: Grades,
    reviewed: NDArray[np.int8],
    must: NDArray[np.bool_],
    conceded: NDArray[np.bool_],
    closes: str,
) -> Baseline:
    """A machine before any trial.

    Parameters
    ----------
    stations, block, rulebook
        The table, rows of the machine, and what it is reviewed under.
    copy : Grades
        Of one trial that changes nothing.
    reviewed : int8 array, shape (clauses, rows)
        Grades as the review gave them, with what the reading says of cells.
    must : bool array, the same shape
        What must be judged before the gate opens.
    conceded : bool array, the same shape
        Findings that are accepted.
    closes : str
        Lowest severity that closes the gate.

    Returns
    -------
    Baseline
    """
    clauses = tuple(clause for clause in rulebook.clauses.values() if clause.off is None)
    held = (copy.grade[0] != reviewed) & ~conceded
    return Baseline(
        clauses,
        reviewed,
        copy.measure[0],
        held,
        must,
        conceded,
        grade_of(closes),
        guards_of(stations, block, clauses, np.where(held, 0, reviewed)),
    )
