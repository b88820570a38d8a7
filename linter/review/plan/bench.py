"""The bench that machines stand on while changes are tried: nothing is reviewed twice that comes to the same.

A clause comes to the same result wherever everything that it reads has the same value: as the machine stands, or in a
trial made before. What it reads is noted (:mod:`linter.review.plan.reads`).
"""

from collections.abc import Iterator, Mapping, Sequence

import numpy as np
from numpy.typing import NDArray

from linter.checks.shared.base import View
from linter.model.findings import SEVERITIES
from linter.model.possible import only_possible
from linter.model.stations import Stations
from linter.review.assess import FINDING, MET, NOT_APPLICABLE, NOT_ASSESSED, POSSIBLE, ClauseReview, measured
from linter.review.plan.reads import EVERY, Reads, Touched
from linter.review.plan.remembered import Asked, Remembered, any_impossible
from linter.review.plan.trials import BATCH_ROWS, Grades, Once, Trial, replicate, try_out
from linter.rulebook.model import Rulebook

#: Reviews of one clause in one trial that a batch of its own saves at least.
WORTHWHILE = 2000


class Bench:
    """Some machines of a table that trials are made of.

    Parameters
    ----------
    stations : Stations
        The table.
    blocks : sequence of int array
        Rows of each machine.
    rulebook : Rulebook
        What trials are judged by.
    """

    def __init__(self, stations: Stations, blocks: Sequence[NDArray[np.intp]], rulebook: Rulebook) -> None:
        self.stations, self.blocks, self.rulebook = stations, blocks, rulebook
        self.clauses = [clause for clause in rulebook.clauses.values() if clause.off is None]
        self.ids = [clause.id for clause in self.clauses]
        self.strict = POSSIBLE in rulebook.clauses
        self.reads = Reads()
        copies = replicate(stations, blocks)
        can = only_possible(copies) if self.strict else copies
        #: Machines that state what cannot be: every trial of them has problems then, and is reviewed whole.
        self.whole = {int(copies.machine_row[p.row]) for p in can.problems if p.row is not None}
        self.before = self.reads.watched(can)
        grade, measure = self._reviewed(self.before, range(len(self.clauses)))
        self.memory: dict[int, Remembered] = {}
        for k, start in enumerate(self.before.starts):
            rows = slice(start, start + len(blocks[k]))
            self.memory[k] = Remembered(grade[:, rows], measure[:, rows])

    def try_out(self, wanted: Mapping[int, Sequence[Trial]]) -> dict[int, Grades]:
        """Grades of trials by the number of their machine, each set of trials in its order."""
        asked, rest, found = [], {}, dict[int, Grades]()
        for k, trials in wanted.items():
            if k in self.whole:
                found[k] = try_out(self.stations, self.blocks[k], trials, self.rulebook)
                continue
            memory = self.memory[k]
            if isinstance(trials, Once) and not (self.strict and any_impossible(trials)):
                asked.append(Asked(k, trials, None, memory))
                continue
            values = memory.numbered(trials)
            possible = memory.possible(values) if self.strict else np.ones(len(trials), dtype=bool)
            memory.regroup(self.reads, self.ids)
            asked.append(Asked(k, [t for t, ok in zip(trials, possible, strict=True) if ok], values[possible], memory))
            if not possible.all():
                rest[k] = possible
        self._review(asked)
        found |= {own.machine: own.close(self.reads, self.ids) for own in asked}
        for k, possible in rest.items():
            problematic = [t for t, ok in zip(wanted[k], possible, strict=True) if not ok]
            found[k] = _merged(possible, found[k], try_out(self.stations, self.blocks[k], problematic, self.rulebook))
        return found

    def forget(self, machine: int) -> None:
        """Let go of what the trials of a machine came to."""
        self.memory.pop(machine, None)

    def _review(self, asked: Sequence[Asked]) -> None:
        """Review what is not known of trials, and enter it."""
        every = [(own, n) for own in asked for n in range(len(own.trials))]
        wanted = [0] * len(self.clauses)
        offset = 0
        for own in asked:
            for group, trials, _ in own.open:
                bits = np.zeros(len(own.trials), dtype=bool)
                bits[trials] = True
                mask = int.from_bytes(np.packbits(bits, bitorder="little").tobytes(), "little") << offset
                for k in group.clauses.tolist():
                    wanted[k] |= mask
            offset += len(own.trials)
        for clauses, mask in _batches(wanted):
            bits = np.frombuffer(mask.to_bytes(len(every) // 8 + 1, "little"), np.uint8)
            chosen = [every[n] for n in np.flatnonzero(np.unpackbits(bits, bitorder="little")).tolist()]
            for part in self._parts(chosen):
                self._enter(part, clauses)

    def _parts(self, chosen: Sequence[tuple[Asked, int]]) -> Iterator[Sequence[tuple[Asked, int]]]:
        """Trials in parts of so many rows."""
        start = rows = 0
        for n, (own, _) in enumerate(chosen):
            more = len(self.blocks[own.machine])
            if rows and rows + more > BATCH_ROWS:
                yield chosen[start:n]
                start, rows = n, 0
            rows += more
        yield chosen[start:]

    def _enter(self, chosen: Sequence[tuple[Asked, int]], clauses: Sequence[int]) -> None:
        """Review some clauses of trials and enter what they come to; what no trial touches is as the machine stands."""
        copies = replicate(self.stations, [self.blocks[own.machine] for own, _ in chosen])
        first = copies.first_rows
        runs: list[tuple[Asked, slice, NDArray[np.intp]]] = []
        while not runs or runs[-1][1].stop < len(chosen):
            start = stop = runs[-1][1].stop if runs else 0
            while stop < len(chosen) and chosen[stop][0] is chosen[start][0]:
                stop += 1
            runs.append((chosen[start][0], slice(start, stop), np.array([n for _, n in chosen[start:stop]])))
        names: set[str] = set()
        for own, run, numbers in runs:
            names |= own.put(copies, first[run], len(self.blocks[own.machine]), numbers)
        view = self.reads.watched(copies)
        if not names <= {*self.stations.numbers, *self.stations.toleranced, *self.stations.choices}:
            names.add(EVERY)
        machines = np.array([own.machine for own, _ in chosen], dtype=np.intp)
        rows = np.arange(view.count) - view.to_stations(view.starts) + view.to_stations(self.before.starts[machines])
        touched = Touched(self.reads, self.before, view, rows, machines, names)
        some = np.array([k for k in clauses if touched.clause(self.ids[k])], dtype=np.intp)
        same = np.array(sorted({int(k) for k in clauses} - set(some.tolist())), dtype=np.intp)
        grade, measure = self._reviewed(view, some.tolist())
        row = 0
        for own, _, numbers in runs:
            at = numbers[:, None]
            shape = (len(some), len(numbers), len(self.blocks[own.machine]))
            end = row + shape[1] * shape[2]
            own.grades.grade[at, some] = grade[:, row:end].reshape(shape).swapaxes(0, 1)
            own.grades.measure[at, some] = measure[:, row:end].reshape(shape).swapaxes(0, 1)
            own.grades.grade[at, same] = own.memory.grade[0, same]
            own.grades.measure[at, same] = own.memory.measure[0, same]
            row = end

    def _reviewed(self, view: View, clauses: Sequence[int]) -> tuple[NDArray[np.int8], NDArray[np.float32]]:
        """Grades and measures of some clauses, shape (clauses, rows); what they read is noted."""
        shape = (len(clauses), view.count)
        grade, measure = np.empty(shape, np.int8), np.empty(shape, np.float32)
        for n, k in enumerate(clauses):
            grade[n], measure[n] = by_station(view, measured(view, self.clauses[k], {}, strict=self.strict))
            self.reads.close(self.ids[k])
        return grade, measure


def _batches(wanted: Sequence[int]) -> list[tuple[list[int], int]]:
    """Clauses that are reviewed together, with their trials: each clause wants some, told by the bits of a number.

    Clauses that want the same stay together. They join others where it costs less to review some trials more than to
    begin a batch of their own.
    """
    alike: dict[int, list[int]] = {}
    for k, mask in enumerate(wanted):
        if mask:
            alike.setdefault(mask, []).append(k)
    found: list[tuple[list[int], int]] = []
    for mask, own in sorted(alike.items(), key=lambda entry: (-entry[0].bit_count() * len(entry[1]), entry[1])):
        more = []
        for clauses, others in found:
            both = (mask | others).bit_count()
            more.append((both - others.bit_count()) * len(clauses) + (both - mask.bit_count()) * len(own))
        if more and min(more) < WORTHWHILE:
            at = more.index(min(more))
            found[at] = ([*found[at][0], *own], found[at][1] | mask)
        else:
            found.append((own, mask))
    return [(sorted(clauses), mask) for clauses, mask in found]


def _merged(first: NDArray[np.bool_], one: Grades, other: Grades) -> Grades:
    """Grades of trials in their order, some of them from one and the rest from another."""
    grade = np.empty((len(first), *one.grade.shape[1:]), np.int8)
    measure = np.empty(grade.shape, np.float32)
    grade[first], grade[~first] = one.grade, other.grade
    measure[first], measure[~first] = one.measure, other.measure
    return Grades(grade, measure)


#: Grade by outcome and severity, the last column for none.
_GRADES = np.zeros((4, len(SEVERITIES) + 1), np.int8)
_GRADES[FINDING, :-1] = range(len(SEVERITIES), 0, -1)
_GRADES[NOT_ASSESSED], _GRADES[NOT_APPLICABLE] = -1, -2


def by_station(view: View, review: ClauseReview) -> tuple[NDArray[np.int8], NDArray[np.float64]]:
    """Grade and measure of one clause for each row of the stations.

    Parameters
    ----------
    view : View
        What was reviewed.
    review : ClauseReview
        With its measure.

    Returns
    -------
    tuple of int8 array and float array
        Grades as :meth:`linter.review.assess.Assessed.grades`.
    """
    grade = _GRADES[review.outcome, review.severity]
    judged = (review.outcome == MET) | (review.outcome == FINDING)
    measure = np.where(judged, np.nan if review.measure is None else review.measure, np.nan)
    whole = review.clause.level == "machine"
    return (view.to_stations(grade), view.to_stations(measure)) if whole else (grade, measure)
