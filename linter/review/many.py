"""A large table part by part: what is held of it, and its records made anew when a report goes through them."""

from collections.abc import Collection, Iterator, Mapping

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.model.findings import TABLE_CHAPTER, Assessment, Assumed
from linter.model.many import RECORD_ROWS, AssumedAt, ManyAssessments, Part
from linter.model.stations import Bools, Stations
from linter.model.vocabulary import parameter
from linter.review.assess import MET, NOT_APPLICABLE, Assessed, ClauseReview, assess
from linter.review.making import Maker, check_assumed
from linter.rulebook.gates import must_rows
from linter.rulebook.model import Rulebook


def in_order(stations: Stations, names: Collection[str] | None = None) -> Iterator[Stations]:
    """Machines by name, some at a time and none cut; a table of :data:`RECORD_ROWS` rows or fewer as it is.

    Parameters
    ----------
    stations : Stations
        The whole table.
    names : collection of str, optional
        Machines wanted; all where absent.

    Yields
    ------
    Stations
        Of a large table or of some machines the machines stand by name.
    """
    if len(stations) <= RECORD_ROWS and names is None:
        yield stations
        return
    starts = np.append(stations.first_rows, len(stations))
    wanted = [k for k, name in enumerate(stations.machines) if names is None or name in names]
    rows: list[NDArray[np.intp]] = []
    count = 0
    for k in sorted(wanted, key=lambda m: (stations.machines[m], m)):
        of_machine = np.arange(starts[k], starts[k + 1])
        if rows and count + len(of_machine) > RECORD_ROWS:
            yield stations.take(np.concatenate(rows))
            rows, count = [], 0
        rows.append(of_machine)
        count += len(of_machine)
    if rows:
        yield stations.take(np.concatenate(rows))


@frozen
class Again:
    """Makes the records of a large table again.

    Attributes
    ----------
    stations, rulebook : Stations, Rulebook
        What was reviewed, and by what.
    gate : str
        Lowest severity that closes the gate.
    full : bool
        Whether what is met has its working too.
    assessed : Assessed or None
        Of all stations, where they are one part.
    """

    stations: Stations
    rulebook: Rulebook
    gate: str
    full: bool
    assessed: Assessed | None = None

    def __call__(self, held: Iterator[Assessment], names: Collection[str] | None) -> Iterator[Assessment]:
        """The assessments of some machines, of all for None, in order; those to act on come from ``held``."""
        for maker in self._makers(names):
            for k in by_name(maker.assessed.stations):
                yield from maker.machine(k, held)

    def parts(self) -> Iterator[Part]:
        """What is met or does not apply, column by column."""
        for maker in self._makers(None):
            yield maker.part(by_name(maker.assessed.stations))

    def _makers(self, names: Collection[str] | None) -> Iterator[Maker]:
        for part in in_order(self.stations, names):
            assessed = self.assessed if self.assessed is not None and names is None else assess(part, self.rulebook)
            must = {name: must_rows(r.clause, assessed.view, self.gate) for name, r in assessed.reviews.items()}
            yield Maker(assessed, full=self.full, must=must)


def by_name(stations: Stations) -> list[int]:
    """Indices of the machines in the order of their names."""
    return sorted(range(len(stations.machines)), key=lambda k: (stations.machines[k], k))


class Passed:
    """Counts what is met or does not apply while the parts of a large table are gone through."""

    def __init__(self) -> None:
        self.passed: dict[tuple[str, str | None], tuple[int, int]] = {}
        self.assumed: dict[tuple[str, str | None, Assumed], bool] = {}
        self.sources: set[str] = set()
        self.judged = False

    def add(self, assessed: Assessed, maker: Maker, must: Mapping[str, Bools]) -> None:
        """Take in one part."""
        stations = assessed.stations
        names = [str(name) for name in stations.text("station")]
        machine_of = [stations.machines[k] for k in stations.machine_row.tolist()]
        positions: dict[str, list[tuple[str, str | None]]] = {
            "machine": [(name, None) for name in stations.machines],
            "station": list(zip(machine_of, names, strict=True)),
        }
        counts = {level: np.zeros((2, len(at)), dtype=np.int64) for level, at in positions.items()}
        for review in assessed.reviews.values():
            level = review.clause.level
            counts[level] += np.array([review.outcome == MET, review.outcome == NOT_APPLICABLE])
            self.sources.update(review.clause.sources)
            self.judged |= review.clause.chapter != TABLE_CHAPTER and bool((review.outcome == MET).any())
        for level, at in positions.items():
            for position, met, not_applicable in zip(at, *counts[level].tolist(), strict=True):
                before = self.passed.get(position, (0, 0))
                self.passed[position] = (before[0] + met, before[1] + not_applicable)
        self._assumed(assessed, maker, must, positions)

    def _assumed(
        self, assessed: Assessed, maker: Maker, must: Mapping[str, Bools],
        positions: Mapping[str, list[tuple[str, str | None]]],
    ) -> None:  # fmt: skip
        """Assumed values of what is met or does not apply: each once for a position, whichever clauses use it."""
        stations = assessed.stations
        used: dict[tuple[str, str], NDArray[np.int8]] = {}
        for name, review in assessed.reviews.items():
            level = review.clause.level
            passed = (review.outcome == MET) | (review.outcome == NOT_APPLICABLE)
            grade = np.where(passed, 1 + (must[name] & (review.outcome == MET)), 0).astype(np.int8)
            self._of_check(review, grade, positions[level])
            for wanted in {*review.clause.needs, *review.clause.uses} & stations.assumed.keys():
                key = (level, wanted)
                used[key] = np.maximum(used[key], grade) if key in used else grade
        first = np.zeros(len(stations), dtype=bool)
        first[stations.first_rows] = True
        for (level, wanted), grade in sorted(used.items()):
            rows = stations.assumed[wanted].rows
            of_row = grade
            if level == "machine":
                of_row = grade[stations.machine_row]
                rows = rows & first if parameter(wanted).level == "machine" else rows
            for row in np.flatnonzero(rows & (of_row > 0)).tolist():
                found = maker.inputs.assumed_of(wanted, row)
                at = positions[level][int(stations.machine_row[row]) if level == "machine" else row]
                if found is not None:
                    self._note(at, found, bool(of_row[row] == 2))
        maker.inputs.forget()

    def _of_check(self, review: ClauseReview, grade: NDArray[np.int8], at: list[tuple[str, str | None]]) -> None:
        """What the check itself put in the place of absent values."""
        assumed = () if review.result is None else review.result.assumed
        if not assumed:
            return
        rows = np.logical_or.reduce([entry.rows for entry in assumed]) & (grade > 0)
        for row in np.flatnonzero(rows).tolist():
            for found in check_assumed(review.result, row):
                self._note(at[row], found, bool(grade[row] == 2))

    def _note(self, at: tuple[str, str | None], found: Assumed, carries: bool) -> None:
        key = (*at, found)
        self.assumed[key] = self.assumed.get(key, False) or carries

    def result(self, to_act_on: tuple[Assessment, ...], again: Again) -> ManyAssessments:
        """All of it, with the records that are held."""
        return ManyAssessments(
            to_act_on=to_act_on,
            passed=self.passed,
            judged=self.judged,
            assumed=tuple(
                AssumedAt(found, machine, station, carries)
                for (machine, station, found), carries in self.assumed.items()
            ),
            sources=frozenset(self.sources),
            make=again,
            parts=None if again.full else again.parts,
        )
