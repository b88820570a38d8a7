"""Plans as records: the lines, what each clears and lowers, what the plan comes to, decisions and conflicts."""

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from linter.model.findings import SEVERITIES, TABLE_CHAPTER, Assessment, Change, ReviewResult, at_least
from linter.model.plan import (
    Alternative,
    Conflict,
    Decision,
    Fact,
    Left,
    MachinePlan,
    PlanLine,
    PlanResult,
    SizeValue,
)
from linter.model.stations import Stations
from linter.model.vocabulary import parameter, vocabulary
from linter.model.wording import rounded, value_text
from linter.review.needed import Cells
from linter.review.plan.alternatives import Outside
from linter.review.plan.cells import Cell
from linter.review.plan.standing import Baseline
from linter.review.plan.states import Found
from linter.review.plan.trials import put, replicate
from linter.rulebook.model import Clause


@frozen(eq=False)
class Planned:
    """What was found for one machine: its number and rows, as it stood, the plan, what stands outside."""

    machine: int
    block: NDArray[np.intp]
    base: Baseline
    found: Found
    outside: Outside


class Recorder:
    """Makes records of plans, machine by machine, so that no search is held longer than its machine.

    Parameters
    ----------
    result : ReviewResult
        The review that the plans belong to.
    stations : Stations
        What was reviewed.
    """

    def __init__(self, result: ReviewResult, stations: Stations) -> None:
        self.result, self.stations, self.cells = result, stations, Cells(stations)
        self.lines: list[PlanLine] = []
        self.machines: list[MachinePlan] = []
        self.decisions: list[Decision] = []
        self.changes: dict[tuple[str, str, str | None], list[Change]] = {}

    def add(self, planned: Planned) -> None:
        """Take in what was found for one machine; machines come in the order of their names."""
        teller = _Teller(self.stations, planned, self.cells)
        own = teller.lines(len(self.lines))
        self.lines += own
        self.machines.append(teller.outcome(self.result))
        self.decisions += teller.decisions(self.result)
        for line in own:
            for clause, station in teller.served[line.line]:
                self.changes.setdefault((line.machine, clause, station), []).append(_change(line, station))

    def recorded(self) -> ReviewResult:
        """The result with plan, its outcome and the decisions; each finding points at the lines that serve it."""
        return evolve(
            self.result.changed(self._with_changes),
            plan=tuple(self.lines),
            plan_result=_whole(self.result, self.machines),
            decisions=tuple(self.decisions),
        )

    def _with_changes(self, item: Assessment) -> Assessment:
        changes = self.changes.get((item.machine, item.clause, item.station))
        return evolve(item, clears_with=tuple(changes)) if changes and item.outcome == "finding" else item


def _change(line: PlanLine, station: str | None) -> Change:
    """A line as one of the changes of a finding at a station."""
    value = line.value
    if isinstance(value, SizeValue):
        value = value.tolerance_class or value.nominal
    at = f" at {line.station}" if line.station and line.station != station else ""
    return Change(line.parameter, value, line.unit, f"{line.before} \u2192 {line.after}{at}", True, line.line)


class _Teller:
    """Tells the plan of one machine."""

    def __init__(self, stations: Stations, planned: Planned, cells: Cells) -> None:
        self.stations, self.planned, self.cells = stations, planned, cells
        self.machine = stations.machines[planned.machine]
        self.names = [str(name) for name in stations.text("station")[planned.block]]
        self.clauses: tuple[Clause, ...] = planned.base.clauses
        #: By line the findings that it serves.
        self.served: dict[int, list[tuple[str, str | None]]] = {}

    def station(self, name: str, row: int) -> str | None:
        return None if parameter(name).level == "machine" else self.names[row]

    def lines(self, before: int) -> list[PlanLine]:
        """The lines of the plan, numbered on from those before, in the order of the vocabulary's stations and names."""
        planned = self.planned
        after = self.after
        found = []
        for number, (cell, option) in enumerate(sorted(planned.found.state.items(), key=self.place_of), before + 1):
            clears, lowers = self.serves(cell, after)
            self.served[number] = clears + lowers
            row = int(planned.block[cell.row])
            place = self.stations.place(cell.name, row) or self.cells.to_fill(cell.name, row)
            text = self.text(cell, option.value)
            found.append(
                PlanLine(
                    line=number,
                    machine=self.machine,
                    station=self.station(cell.name, cell.row),
                    parameter=cell.name,
                    place=place,
                    before=value_text(self.stations, cell.name, row),
                    after=text,
                    value=_plain(cell.name, option.value),
                    unit=parameter(cell.name).unit,
                    clears=_unique(clears),
                    lowers=_unique(lowers),
                    reason=self.reason(clears, lowers),
                )
            )
        return found

    def place_of(self, item: tuple[Cell, Any]) -> tuple[Any, ...]:
        order = list(vocabulary())
        return (item[0].row, order.index(item[0].name))

    @property
    def after(self) -> NDArray[np.int8]:
        return self.planned.found.grade

    def serves(
        self, cell: Cell, after: NDArray[np.int8]
    ) -> tuple[list[tuple[str, str | None]], list[tuple[str, str | None]]]:
        """Findings that a line clears, and those it lowers: those that come back without it."""
        base = self.planned.base
        better = (base.grade > 0) & (after < base.grade) & base.once
        without = self.planned.found.without.get(cell)
        mine = better if without is None else better & (without > after)
        clears: list[tuple[str, str | None]] = []
        lowers: list[tuple[str, str | None]] = []
        for k, i in np.argwhere(mine):
            clause = self.clauses[k]
            at = (clause.id, None if clause.level == "machine" else self.names[i])
            (lowers if after[k, i] > 0 else clears).append(at)
        return clears, lowers

    def reason(self, clears: Sequence[tuple[str, str | None]], lowers: Sequence[tuple[str, str | None]]) -> str:
        titles = {clause.id: clause.title for clause in self.clauses}
        parts = []
        for word, found in (("clears", clears), ("lowers", lowers)):
            names = _unique(found)
            if names:
                parts.append(f"{word} {', '.join(titles[name] for name in names)}")
        return "; ".join(parts) or "lets more clauses be judged"

    def text(self, cell: Cell, value: Any) -> str:
        """A value as a report shows it."""
        single = replicate(self.stations, [np.array([self.planned.block[cell.row]])])
        put(single, cell.name, 0, value)
        return value_text(single, cell.name, 0)

    # --- what it comes to --------------------------------------------------------------------------------------------

    def severities(self, grade: NDArray[np.int8]) -> dict[str, int]:
        """Findings by severity, those conceded left out."""
        base = self.planned.base
        shown = grade[base.once & ~base.excused]
        return {severity: int((shown == len(SEVERITIES) - k).sum()) for k, severity in enumerate(SEVERITIES)}

    def gate(self, grade: NDArray[np.int8], result: ReviewResult) -> str:
        base = self.planned.base
        if ((grade >= base.closes) & ~base.excused).any() or (result.complete_wanted and (grade == -1).any()):
            return "closed"
        return "undecided" if (base.must & (grade == -1)).any() else "open"

    def outcome(self, result: ReviewResult) -> MachinePlan:
        """What the plan comes to on this machine."""
        after, base = self.after, self.planned.base
        left = [
            Left(
                self.clauses[k].id,
                None if self.clauses[k].level == "machine" else self.names[i],
                SEVERITIES[len(SEVERITIES) - int(after[k, i])],
            )
            for k, i in np.argwhere((after >= base.closes) & ~base.excused & base.once)
        ]
        conflicts = tuple(self.conflict(clash) for clash in self.planned.outside.clashes)
        return MachinePlan(self.machine, self.gate(after, result), self.severities(after), tuple(left), conflicts)

    def conflict(self, clash: Any) -> Conflict:
        titles = [self.clauses[k].title for k in clash.clauses]
        facts = tuple(
            Fact(
                cell.name,
                self.station(cell.name, cell.row),
                value_text(self.stations, cell.name, int(self.planned.block[cell.row])),
            )
            for cell in clash.cells
        )
        named = ", ".join(f"{f.parameter} {f.value}" + (f" at {f.station}" if f.station else "") for f in facts)
        if self.clauses[clash.clauses[0]].chapter == TABLE_CHAPTER and not facts:
            text = f"{titles[0]}: the table itself has to be corrected; no plan does that"
        elif len(titles) == 1:
            text = f"No change that a plan may make brings {titles[0]} below the gate"
        else:
            text = f"{titles[0]} cannot be brought below the gate without making worse: {', '.join(titles[1:])}"
        text += f"; prevented by: {named}." if named else "."
        return Conflict(tuple(self.clauses[k].id for k in clash.clauses), facts, text)

    def decisions(self, result: ReviewResult) -> list[Decision]:
        """The alternatives outside the plan."""
        base = self.planned.base
        found = []
        for other in self.planned.outside.others:
            before, after = base.grade, other.grade
            clears, lowers, worsens = (
                self.ids(mask & base.once)
                for mask in (
                    (before > 0) & (after <= 0) & (after != -1),
                    (before > 0) & (after > 0) & (after < before),
                    (after > np.maximum(before, 0)) | ((after == -1) & (before >= 0)),
                )
            )
            found.append(
                Decision(
                    machine=self.machine,
                    changes=tuple(
                        Alternative(
                            self.station(cell.name, cell.row),
                            cell.name,
                            value_text(self.stations, cell.name, int(self.planned.block[cell.row])),
                            parameter(cell.name).choices[code],
                        )
                        for cell, code in sorted(other.words.items())
                    ),
                    with_plan=other.with_plan,
                    further=tuple(
                        f"{cell.name}{f' at {self.names[cell.row]}' if not cell.whole else ''}: "
                        f"{self.text(cell, option.value)}"
                        for cell, option in sorted(other.further.items(), key=self.place_of)
                    ),
                    clears=clears,
                    lowers=lowers,
                    worsens=worsens,
                    gate=self.gate(after, result),
                    severities=self.severities(after),
                )
            )
        return found

    def ids(self, mask: NDArray[np.bool_]) -> tuple[str, ...]:
        return tuple(self.clauses[k].id for k in np.flatnonzero(mask.any(axis=1)))


def _plain(name: str, value: Any) -> float | str | SizeValue:
    """A value as the result file holds it."""
    entry = parameter(name)
    if entry.kind == "choice":
        return entry.choices[value]
    if not isinstance(value, tuple):
        return rounded(value)
    lower, upper = (None if np.isnan(v) else rounded(v) for v in value[1:3])
    return SizeValue(rounded(value[0]), lower, upper, value[3])


def _unique(found: Iterable[tuple[str, str | None]]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(clause for clause, _ in found))


def _whole(result: ReviewResult, machines: Sequence[MachinePlan]) -> PlanResult:
    """Gate and counts of the whole table with the plan applied."""
    planned: Mapping[str, MachinePlan] = {entry.machine: entry for entry in machines}
    severities = dict.fromkeys(SEVERITIES, 0)
    closed, wanting = bool(result.failures) or result.nothing_assessed, False
    for item in result.to_act_on:
        if item.machine in planned:
            continue
        if item.outcome == "finding" and item.severity is not None:
            severities[item.severity] += 1
            closed |= at_least(item.severity, result.gate_severity)
        if item.outcome == "not assessed":
            closed |= result.complete_wanted
            wanting |= item.must
    for entry in machines:
        for severity, count in entry.severities.items():
            severities[severity] += count
        closed |= entry.gate == "closed"
        wanting |= entry.gate == "undecided"
    return PlanResult("closed" if closed else "undecided" if wanting else "open", severities, tuple(machines))
