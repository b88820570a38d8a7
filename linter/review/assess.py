"""Runs a rulebook over stations: which clauses apply, which inputs are missing, how grave each finding is.

Everything is done for all rows at once. What a report shows needs the results of the checks with their working
(``keep="results"``); who asks for the verdicts of many stations lets each part of the table go when it is assessed.
"""

from collections.abc import Iterator, Mapping
from typing import Any, Literal

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.checks.lookup import check_function
from linter.checks.shared.base import Result, View
from linter.model.findings import SEVERITIES
from linter.model.possible import only_possible, set_aside
from linter.model.stations import Bools, Floats, Stations
from linter.rulebook.model import Clause, Limits, Rulebook

#: The clause about values that cannot be; where a rulebook has it, no other clause uses such a value or lets another
#: one stand in, and a mild finding does not hide that something graver could not be judged.
POSSIBLE = "table.possible"
MET, FINDING, NOT_ASSESSED, NOT_APPLICABLE = range(4)

#: What is kept of an assessment: the checks' results with their working; the observed values and limits; the measures
#: that the severities are read off; or outcomes and severities alone.
Keep = Literal["results", "figures", "measures", "verdicts"]
FIGURES = ("observed", "lower", "upper")
#: Rows assessed at once where no results are kept: few enough for the processor's caches, many enough for numpy.
CHUNK_ROWS = 16_000


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
        Rows that want a parameter; empty where results are not kept.
    result : Result or None
        What the check found; None where it could not be run or is not kept.
    figures : dict of str to float array
        ``observed``, ``lower`` and ``upper`` of the rows that are met or have a finding, NaN elsewhere; a name that no
        row has a value for is absent. Empty where only verdicts are kept.
    unit : str
        Their unit.
    failure : str or None
        What went wrong inside the check, where it could not be run.
    measure : float array or None
        What the severity steps are compared with; None where it is not kept.
    """

    clause: Clause
    outcome: NDArray[np.int8]
    severity: NDArray[np.int8]
    missing: Mapping[str, Bools] = field(factory=dict)
    result: Result | None = None
    figures: Mapping[str, Floats] = field(factory=dict)
    unit: str = "1"
    failure: str | None = None
    measure: Floats | None = None


@frozen(eq=False)
class Assessed:
    """A whole rulebook over all rows; ``view`` says which rows make up a machine."""

    stations: Stations
    rulebook: Rulebook
    reviews: Mapping[str, ClauseReview]
    view: View

    def cause(self, clause: Clause, row: int, station_row: int) -> Clause | None:
        """The clause whose finding explains the finding of ``clause`` in a row, at least as grave; None without one.

        ``row`` counts what the clause is about; ``station_row`` is (the first of) its rows of the stations.
        """
        own = self.reviews[clause.id]
        for name in clause.follows:
            leading = self.reviews.get(name)
            if leading is None or own.outcome[row] != FINDING:
                continue
            whole = leading.clause.level == "machine"
            at = int(self.stations.machine_row[station_row]) if whole else station_row
            if leading.outcome[at] == FINDING and leading.severity[at] <= own.severity[row]:
                return leading.clause
        return None

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

    def measures(self) -> NDArray[np.float32]:
        """Measure by clause and station, shape (clauses, rows), where they are kept; NaN where nothing was judged."""
        rows = []
        for review in self.reviews.values():
            machine = review.clause.level == "machine"
            values = np.full(len(review.outcome), np.nan) if review.measure is None else review.measure
            values = np.where(review.outcome <= FINDING, values, np.nan)
            rows.append(self.view.to_stations(values) if machine else values)
        return np.array(rows, dtype=np.float32).reshape(len(self.reviews), len(self.stations))

    def table(self) -> dict[str, NDArray[Any]]:
        """Every assessment as columns of equal length, clause after clause.

        Returns
        -------
        dict of str to array
            ``clause`` (int16, index into the keys of ``reviews``), ``machine`` (int32, index into the machines),
            ``row`` (int32, row of the stations; -1 for a clause about the machine), ``outcome`` and ``severity`` (int8,
            as in :class:`ClauseReview`), ``observed``, ``lower``, ``upper`` (float64 in the unit of the clause, NaN
            where there is none or figures are not kept).
        """
        rows = np.arange(len(self.stations), dtype=np.int32)
        machine_of = self.stations.machine_row.astype(np.int32)
        machines = np.arange(len(self.stations.machines), dtype=np.int32)
        columns: dict[str, list[NDArray[Any]]] = {
            name: [] for name in ("clause", "machine", "row", "outcome", "severity")
        }
        columns |= {name: [] for name in FIGURES}
        for index, review in enumerate(self.reviews.values()):
            whole = review.clause.level == "machine"
            count = len(machines if whole else rows)
            columns["clause"].append(np.full(count, index, np.int16))
            columns["machine"].append(machines if whole else machine_of)
            columns["row"].append(np.full(count, -1, np.int32) if whole else rows)
            columns["outcome"].append(review.outcome)
            columns["severity"].append(review.severity)
            for name in FIGURES:
                columns[name].append(review.figures[name] if name in review.figures else np.full(count, np.nan))
        return {name: np.concatenate(parts) if parts else np.zeros(0) for name, parts in columns.items()}


def assess(stations: Stations, rulebook: Rulebook, *, keep: Keep = "results") -> Assessed:
    """Run every clause that is switched on.

    Parameters
    ----------
    stations : Stations
        At least one row.
    rulebook : Rulebook
        As loaded.
    keep : {"results", "figures", "measures", "verdicts"}
        ``results`` keeps everything that records are made from. The others assess some 16 000 rows at a time, never
        cutting a machine, and keep of each part only the figures and verdicts, the measures and verdicts, or the
        verdicts: memory grows by at most 26, 10 or 2 bytes for a clause and row.

    Returns
    -------
    Assessed
        Outcomes and severities as arrays. A check that fails makes its clause ``not assessed`` and says so; the others
        run all the same.
    """
    clauses = [clause for clause in rulebook.clauses.values() if clause.off is None]
    strict = POSSIBLE in rulebook.clauses
    if strict:
        stations = only_possible(stations)
    if keep == "results":
        view = View(stations)
        aside = set_aside(stations) if strict else {}
        reviews = {clause.id: _review_clause(view, clause, keep, aside, strict) for clause in clauses}
        return Assessed(stations, rulebook, reviews, view)
    parts: dict[str, list[ClauseReview]] = {clause.id: [] for clause in clauses}
    for part in in_parts(stations):
        view = View(part)
        aside = set_aside(part) if strict else {}
        for clause in clauses:
            parts[clause.id].append(_review_clause(view, clause, keep, aside, strict))
    return Assessed(stations, rulebook, {name: _joined(parts.pop(name)) for name in list(parts)}, View(stations))


def measured(view: View, clause: Clause, aside: Mapping[str, Bools], *, strict: bool) -> ClauseReview:
    """One clause over all rows with its measure and nothing that only a report shows.

    Parameters
    ----------
    view : View
        Stations without values that cannot be.
    clause : Clause
        Of any rulebook.
    aside : dict of str to bool array
        Rows whose value of a parameter was set aside, from :func:`linter.model.possible.set_aside`.
    strict : bool
        Whether the rulebook has the clause about values that cannot be.

    Returns
    -------
    ClauseReview
    """
    return _review_clause(view, clause, "measures", aside, strict)


def in_parts(stations: Stations, most: int = CHUNK_ROWS) -> Iterator[Stations]:
    """The stations in parts of about ``most`` rows, in their order, no machine cut; all of them where they are few."""
    count = len(stations)
    if count <= most:
        yield stations
        return
    starts = np.append(stations.first_rows, count)
    start = 0
    while start < count:
        stop = int(starts[np.searchsorted(starts, start + most, side="right") - 1])
        if stop <= start:  # one machine is larger than a part
            stop = int(starts[np.searchsorted(starts, start, side="right")])
        yield stations.take(slice(start, stop))
        start = stop


def _joined(parts: list[ClauseReview]) -> ClauseReview:
    """Reviews of one clause over parts of a table as one."""
    if len(parts) == 1:
        return parts[0]
    figures = {}
    for name in FIGURES:
        if any(name in part.figures for part in parts):
            figures[name] = np.concatenate(
                [part.figures[name] if name in part.figures else np.full(len(part.outcome), np.nan) for part in parts]
            )
    return ClauseReview(
        parts[0].clause,
        np.concatenate([part.outcome for part in parts]),
        np.concatenate([part.severity for part in parts]),
        figures=figures,
        unit=parts[0].unit,
        failure=next((part.failure for part in parts if part.failure), None),
        measure=_joined_measure(parts),
    )


def _joined_measure(parts: list[ClauseReview]) -> Floats | None:
    """Measures of one clause over parts of a table; NaN where it failed in one of them, None where none are kept."""
    if all(part.measure is None for part in parts):
        return None
    return np.concatenate([np.full(len(p.outcome), np.nan) if p.measure is None else p.measure for p in parts])


def _review_clause(view: View, clause: Clause, keep: Keep, aside: Mapping[str, Bools], strict: bool) -> ClauseReview:
    """One clause over all rows; ``strict`` lets nothing stand in for what was set aside or hides something graver."""
    machine = clause.level == "machine"
    count = view.machine_count if machine else view.count
    missing: dict[str, Bools] = {}
    for name in clause.needs:
        if (absent := _absent(view, name, machine)) is not None:
            missing[name] = absent
    if clause.id != POSSIBLE:
        for name, rows in aside.items():
            if name in clause.needs or name in clause.uses:
                missing[name] = view.to_machines(rows, "any") if machine else rows
    try:
        with np.errstate(all="ignore"):
            result = check_function(clause.check)(view, Limits(clause))
            result = result.told() if keep == "results" else result
        if result.measure.shape != (count,):
            raise ValueError(f"the measure has shape {result.measure.shape}, expected ({count},)")
    except Exception as error:
        nothing = np.full(count, NOT_ASSESSED, np.int8)
        failure = f"{clause.id} could not be run ({type(error).__name__}: {error})"
        return ClauseReview(clause, nothing, np.full(count, -1, np.int8), missing, failure=failure)
    for name, rows in result.missing.items():
        missing[name] = missing[name] | rows if name in missing else rows
    outcome = np.full(count, MET, np.int8)
    severity = np.full(count, -1, np.int8)
    for step in clause.steps:
        beyond = result.measure > step.above + 1e-9 * abs(step.above)
        np.copyto(severity, SEVERITIES.index(step.severity), where=beyond)
    np.copyto(outcome, FINDING, where=severity >= 0)
    for name, rows in result.withheld.items() if strict else ():
        milder = rows & ((severity < 0) | (severity > SEVERITIES.index("major")))
        missing[name] = missing[name] | milder if name in missing else milder
    open_rows = np.isnan(result.measure)
    for rows in missing.values():
        open_rows |= rows
    np.copyto(outcome, NOT_ASSESSED, where=open_rows)
    if result.applies is not None:
        np.copyto(outcome, NOT_APPLICABLE, where=~result.applies)
    np.copyto(severity, -1, where=outcome != FINDING)
    if keep == "measures":
        return ClauseReview(clause, outcome, severity, measure=result.measure)
    figures = {} if keep == "verdicts" else _figures(result, outcome)
    if keep == "results":
        return ClauseReview(clause, outcome, severity, missing, result, figures, result.unit)
    return ClauseReview(clause, outcome, severity, figures=figures, unit=result.unit)


def _absent(view: View, name: str, machine: bool) -> Bools | None:
    """Rows (or machines) that do not state a parameter, found once for a view; None where all do."""
    key = ("absent", name, machine)
    if key not in view.cache:
        known = view.stations.known(name)
        absent = ~(view.to_machines(known, "all") if machine else known)
        view.cache[key] = absent if absent.any() else None
    found: Bools | None = view.cache[key]
    return found


def _figures(result: Result, outcome: NDArray[np.int8]) -> dict[str, Floats]:
    """Observed values and limits as they are shown; no limit where a row is met on other grounds although beyond it."""
    shown = outcome <= FINDING
    figures = {}
    for name in FIGURES:
        values = getattr(result, name)
        if values is not None:
            figures[name] = np.where(shown & np.isfinite(values), values, np.nan)
    if "observed" in figures:
        for name, sign in (("lower", -1.0), ("upper", 1.0)):
            if name in figures:
                limit = figures[name]
                beyond = sign * (figures["observed"] - limit) > 1e-9 * np.abs(limit)
                limit[beyond & (outcome == MET)] = np.nan
    return figures
