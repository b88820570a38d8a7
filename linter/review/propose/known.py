"""A machine of which every clause is judged: of a change only those are reviewed again that look at what it moves.

What they look at is noted (:mod:`linter.review.plan.reads`); a form or a fillet is looked at by a few clauses of a
hundred.
"""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from linter.checks.shared.base import View
from linter.model.possible import only_possible
from linter.model.stations import Assumption, Stations
from linter.review.assess import POSSIBLE, assess, measured
from linter.review.plan.bench import by_station
from linter.review.plan.reads import COLUMNS, EVERY, Kept, Reads, Touched, same
from linter.review.room.judged import Changes, changed_copies
from linter.rulebook.gates import must_rows
from linter.rulebook.model import Rulebook


class Known:
    """One machine as far as it is drawn, with what every clause says of it.

    Parameters
    ----------
    stations : Stations
        The rows of the machine, with the defaults of the rulebook; problems are left behind.
    rulebook : Rulebook
        All of its clauses.
    """

    def __init__(self, stations: Stations, rulebook: Rulebook) -> None:
        self.rulebook = rulebook
        self._clauses = [clause for clause in rulebook.clauses.values() if clause.off is None]
        self.clauses = tuple(clause.id for clause in self._clauses)
        self._begin(stations)

    def _begin(self, stations: Stations) -> None:
        """Judge all of it; where it states what cannot be, every trial of it is judged whole."""
        self.stations, self._rows = stations, np.arange(len(stations), dtype=np.intp)
        self._reads = Reads()
        self._view = self._reads.watched(stations)
        self._whole = not self._can(stations)
        if not self._whole:
            self._grade = np.empty((len(self.clauses), len(stations)), np.int8)
            self._review(self._view, range(len(self.clauses)), self._grade)

    def _can(self, stations: Stations) -> bool:
        """Whether all that is stated can be."""
        return POSSIBLE not in self.rulebook.clauses or only_possible(stations) is stations

    def must(self) -> NDArray[np.bool_]:
        """Where a clause must be judged, shape (clauses, rows)."""
        view = View(self.stations if self._can(self.stations) else only_possible(self.stations))
        found = [(clause, must_rows(clause, view)) for clause in self._clauses]
        return np.array([view.to_stations(rows) if clause.level == "machine" else rows for clause, rows in found])

    def grades(self, trials: Sequence[Changes]) -> NDArray[np.int8]:
        """Grades of each trial, shape (trials, clauses, rows), as :meth:`linter.review.room.judged.Judge.grades`."""
        if not trials:
            return np.zeros((0, len(self.clauses), len(self._rows)), np.int8)
        copies = changed_copies(self.stations, self._rows, trials, self.rulebook)
        if self._whole or not self._can(copies):
            found = assess(copies, self.rulebook, keep="verdicts").grades()
        else:
            found = self._moved(copies)[1]
        return found.reshape(len(self.clauses), len(trials), len(self._rows)).transpose(1, 0, 2)

    def change(self, changes: Changes) -> None:
        """Put values in; the machine stands with them from then on."""
        copy = changed_copies(self.stations, self._rows, [changes], self.rulebook)
        if self._whole or not self._can(copy):
            self._begin(copy)
            return
        touched, self._grade = self._moved(copy)
        now, before = touched.view.cache, self._view.cache
        for key in [key for key in before if not dict.__contains__(now, key)]:
            if not touched.changed(Kept(key)):
                dict.__setitem__(now, key, before[key])
        self._reads.open = [set()]
        self.stations, self._view = copy, touched.view

    def _moved(self, copies: Stations) -> tuple[Touched, NDArray[np.int8]]:
        """Grades of copies, shape (clauses, rows): those that look at something else are reviewed, the others kept."""
        count = len(copies.machines)
        rows, machines = np.tile(self._rows, count), np.zeros(count, np.intp)
        view = self._reads.watched(copies)
        touched = Touched(self._reads, self._view, view, rows, machines, self._others(copies, rows))
        some = [k for k, clause in enumerate(self.clauses) if touched.clause(clause)]
        self._reads.open = [set()]
        grade = self._grade[:, rows]
        self._review(view, some, grade)
        return touched, grade

    def _others(self, copies: Stations, rows: NDArray[np.intp]) -> set[str]:
        """Names of the columns that copies state otherwise."""
        copied = ((len(rows), len(self._rows), rows),)
        names: set[str] = set()
        for kind in COLUMNS:
            before, now = dict(getattr(self.stations, kind)), dict(getattr(copies, kind))
            if before.keys() != now.keys():
                names |= {EVERY, *(before.keys() ^ now.keys())}
            for name in before.keys() & now.keys():
                one, other = now[name], before[name]
                if isinstance(one, Assumption):  # its words are told and never looked at
                    one, other = one.rows, other.rows
                if not same(one, other, copied):
                    names.add(name)
        return names

    def _review(self, view: View, clauses: Sequence[int], grade: NDArray[np.int8]) -> None:
        """Enter the grades of some clauses; what they look at is noted."""
        for k in clauses:
            review = measured(view, self._clauses[k], {}, strict=POSSIBLE in self.rulebook.clauses)
            grade[k] = by_station(view, review)[0]
            self._reads.close(self.clauses[k])
