"""Runs a rulebook over stations: which clauses apply, which inputs are missing, how grave each finding is.

Everything is done for all rows at once; plain records are made only for the rows that a report shows.
"""

from collections.abc import Mapping

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.checks.lookup import check_function
from linter.checks.shared.base import Result, View
from linter.model.findings import SEVERITIES
from linter.model.stations import Bools, Stations
from linter.rulebook.model import Clause, Limits, Rulebook

MET, FINDING, NOT_ASSESSED, NOT_APPLICABLE = range(4)


@frozen(eq=False)
class ClauseReview:
    """One clause over all rows (stations, or machines where its level says so).

    Attributes
    ----------
    outcome : int8 array
        Index into :data:`linter.model.findings.OUTCOMES`.
    severity : int8 array
        Index into :data:`linter.model.findings.SEVERITIES`, -1 for none.
    missing : dict of str to bool array
        Rows that want a parameter.
    failure : str or None
        What went wrong inside the check, where it could not be run.
    """

    clause: Clause
    result: Result | None
    outcome: NDArray[np.int8]
    severity: NDArray[np.int8]
    missing: Mapping[str, Bools]
    failure: str | None = None


@frozen(eq=False)
class Assessed:
    """A whole rulebook over all rows."""

    stations: Stations
    view: View
    rulebook: Rulebook
    reviews: Mapping[str, ClauseReview] = field(factory=dict)

    def grades(self) -> NDArray[np.int8]:
        """Grade by clause and station, shape (clauses, rows).

        1 for a remark to 4 for critical, 0 for met, -1 for not assessed, -2 for not applicable. A clause about the
        machine counts for each of its stations.
        """
        rows = []
        for review in self.reviews.values():
            grade = np.where(review.outcome == FINDING, len(SEVERITIES) - review.severity, 0)
            grade = np.where(review.outcome == NOT_ASSESSED, -1, grade)
            grade = np.where(review.outcome == NOT_APPLICABLE, -2, grade).astype(np.int8)
            rows.append(self.view.to_stations(grade) if review.clause.level == "machine" else grade)
        return np.array(rows, dtype=np.int8).reshape(len(self.reviews), len(self.stations))


def assess(stations: Stations, rulebook: Rulebook) -> Assessed:
    """Run every clause that is switched on.

    Parameters
    ----------
    stations : Stations
        At least one row.
    rulebook : Rulebook
        As loaded.

    Returns
    -------
    Assessed
        Outcomes and severities as arrays. A check that fails makes its clause ``not assessed`` and says so; the others
        run all the same.
    """
    view = View(stations)
    reviews = {}
    for clause in rulebook.clauses.values():
        if clause.off is None:
            with np.errstate(all="ignore"):
                reviews[clause.id] = _review_clause(view, clause)
    return Assessed(stations, view, rulebook, reviews)


def _review_clause(view: View, clause: Clause) -> ClauseReview:
    machine = clause.level == "machine"
    count = view.machine_count if machine else view.count
    missing: dict[str, Bools] = {}
    for name in clause.needs:
        known = view.stations.known(name)
        absent = ~(view.to_machines(known, "all") if machine else known)
        if absent.any():
            missing[name] = absent
    try:
        result = check_function(clause.check)(view, Limits(clause))
        if result.measure.shape != (count,):
            raise ValueError(f"the measure has shape {result.measure.shape}, expected ({count},)")
    except Exception as error:
        nothing = np.full(count, NOT_ASSESSED, np.int8)
        failure = f"{clause.id} could not be run ({type(error).__name__}: {error})"
        return ClauseReview(clause, None, nothing, np.full(count, -1, np.int8), missing, failure)
    for name, rows in result.missing.items():
        missing[name] = missing[name] | rows if name in missing else rows
    wanted = np.logical_or.reduce(list(missing.values())) if missing else np.zeros(count, bool)
    outcome = np.full(count, MET, np.int8)
    severity = np.full(count, -1, np.int8)
    for step in clause.steps:
        severity[result.measure > step.above + 1e-9 * abs(step.above)] = SEVERITIES.index(step.severity)
    outcome[severity >= 0] = FINDING
    outcome[np.isnan(result.measure) | wanted] = NOT_ASSESSED
    if result.applies is not None:
        outcome[~result.applies] = NOT_APPLICABLE
    severity[outcome != FINDING] = -1
    return ClauseReview(clause, result, outcome, severity, missing)
