"""Plain records of an assessment, made for what a report shows."""

import re
from collections.abc import Callable, Iterable, Sequence
from typing import Any, TypeVar

import numpy as np

from linter.checks.shared.base import Result, View
from linter.model.findings import (
    OUTCOMES,
    SEVERITIES,
    Assessment,
    Assumed,
    Cause,
    InputRecord,
    MachineRecord,
    Quantity,
    ReadCell,
    ReviewResult,
    StationRecord,
    Unrecognised,
    Used,
    WorkingLine,
)
from linter.model.stations import Stations
from linter.model.version import __version__
from linter.model.vocabulary import parameter, vocabulary
from linter.model.wording import quantity_text, rounded, value_text, words_of
from linter.review.assess import (
    FINDING,
    MET,
    NOT_APPLICABLE,
    NOT_ASSESSED,
    Assessed,
    ClauseReview,
    assess,
    in_parts,
)
from linter.rulebook.model import Rulebook

T = TypeVar("T")
#: Rows whose results are held at once while records are made of them.
RECORD_ROWS = 4000

_PLACEHOLDER = re.compile(r"\{([A-Za-z_0-9]+)\}")


class _Teller:
    """Fills the message of one clause for one row."""

    def __init__(self, assessed: Assessed, review: ClauseReview, row: int, station_row: int) -> None:
        self.assessed, self.review, self.row, self.station_row = assessed, review, row, station_row
        self.result = review.result

    @property
    def missing(self) -> tuple[str, ...]:
        """Parameters that the row wants."""
        return tuple(name for name, rows in self.review.missing.items() if rows[self.row])

    def template(self, key: str) -> str:
        """The text of the row's variant (``met``, ``finding``, ``remedy``), the plain one where it has none."""
        clause, result = self.review.clause, self.result
        assert result is not None
        variant = "" if result.variant is None else str(result.variant[self.row])
        plain = clause.remedy if key == "remedy" else clause.messages[key]
        return (clause.messages.get(f"{key}_{variant}") if variant else None) or plain

    def word(self, name: str) -> str:
        result, row = self.result, self.row
        assert result is not None
        if name in ("observed", "lower", "upper"):
            values = getattr(result, name)
            return quantity_text(float("nan") if values is None else float(values[row]), result.unit)
        if name in result.facts:
            fact = result.facts[name]
            if callable(fact):
                return str(fact(row))
            if isinstance(fact, tuple):
                return quantity_text(float(fact[0][row]), fact[1])
            return str(fact[row])
        for line in result.working:
            if line.key == name:
                return _line_text(line.values[row], line.unit)
        if name == "machine":
            return self.assessed.stations.machines[int(self.assessed.stations.machine_row[self.station_row])]
        return value_text(self.assessed.stations, name, self.station_row)

    def fill(self, template: str) -> str:
        text = _PLACEHOLDER.sub(lambda match: self.word(match[1]), template)
        return text[:1].upper() + text[1:]


def _line_text(value: Any, unit: str) -> str:
    return value if isinstance(value, str) else quantity_text(float(value), unit)


def assessments(
    assessed: Assessed,
    machines: Iterable[int] | None = None,
    *,
    outcomes: Iterable[str] = OUTCOMES,
    full: bool = True,
) -> list[Assessment]:
    """Plain records of the rows that a report shows.

    Parameters
    ----------
    assessed : Assessed
        From :func:`assess`, with its results kept.
    machines : iterable of int, optional
        Indices of machines; all where absent.
    outcomes : iterable of str
        Outcomes wanted.
    full : bool
        Whether what is met has its working too.

    Returns
    -------
    list of Assessment
        Ordered by machine, station (the clauses about the machine first) and clause.
    """
    stations, view = assessed.stations, assessed.view
    wanted_machines = range(view.machine_count) if machines is None else machines
    codes = {OUTCOMES.index(o) for o in outcomes if o in OUTCOMES[:4]}
    found: list[Assessment] = []
    station_names = stations.text("station")
    reviews = [assessed.reviews[clause_id] for clause_id in sorted(assessed.reviews)]
    for machine in sorted(wanted_machines, key=lambda m: (stations.machines[m], m)):
        start = int(view.starts[machine])
        every = range(start, start + int(view.station_count[machine]))
        inputs = _Inputs(stations, every)
        for review in reviews:
            if review.clause.level == "machine" and int(review.outcome[machine]) in codes:
                teller = _Teller(assessed, review, machine, start)
                found.append(_record(teller, inputs, list(every), stations.machines[machine], None, full))
        for row in sorted(every, key=lambda r: (str(station_names[r]), r)):
            for review in reviews:
                if review.clause.level == "station" and int(review.outcome[row]) in codes:
                    teller = _Teller(assessed, review, row, row)
                    name = str(station_names[row])
                    found.append(_record(teller, inputs, [row], stations.machines[machine], name, full))
    return found


class _Inputs:
    """Inputs of one machine as records, each made once: clauses that share one share its record."""

    def __init__(self, stations: Stations, rows: Iterable[int]) -> None:
        self.stations, self.rows = stations, rows
        self.used: dict[tuple[str, int], Used | None] = {}
        self.assumed: dict[tuple[str, int], Assumed | None] = {}

    def used_at(self, names: Iterable[str], rows: Sequence[int]) -> tuple[Used, ...]:
        """Where the parameters stand that a clause looks at."""
        return self._each(self.used, self._used, names, rows)

    def assumed_at(self, names: Iterable[str], rows: Sequence[int]) -> tuple[Assumed, ...]:
        """Documented defaults among the parameters that a clause looks at."""
        return self._each(self.assumed, self._assumed, names, rows)

    def _each(
        self, made: dict[tuple[str, int], T | None], make: Callable[[str, int], T | None], names: Iterable[str],
        rows: Sequence[int],
    ) -> tuple[T, ...]:  # fmt: skip
        found = []
        for name in names:
            for row in rows[:1] if parameter(name).level == "machine" else rows:
                key = (name, row)
                if key not in made:
                    made[key] = make(name, row)
                entry = made[key]
                if entry is not None:
                    found.append(entry)
        return tuple(found)

    def _used(self, name: str, row: int) -> Used | None:
        place = self.stations.place(name, row)
        return None if place is None else Used(name, place, value_text(self.stations, name, row))

    def _assumed(self, name: str, row: int) -> Assumed | None:
        assumption = self.stations.assumed.get(name)
        if assumption is None or not assumption.rows[row]:
            return None
        if parameter(name).kind == "choice":
            return Assumed(name, value_text(self.stations, name, row), "", assumption.reason)
        value = rounded(float(self.stations.number(name)[row]))
        return Assumed(name, value, parameter(name).unit, assumption.reason)


def _record(
    teller: _Teller, inputs: _Inputs, rows: list[int], machine: str, station: str | None, full: bool
) -> Assessment:
    clause, result, review, row = teller.review.clause, teller.result, teller.review, teller.row
    outcome = int(review.outcome[row])
    message, remedy = _TOLD[outcome](teller)
    names = tuple(dict.fromkeys((*clause.needs, *clause.uses)))
    cause = teller.assessed.cause(clause, row, teller.station_row)
    with_working = outcome in (FINDING, NOT_ASSESSED) or (full and outcome == MET)
    return Assessment(
        clause=clause.id,
        title=clause.title,
        machine=machine,
        station=station,
        outcome=OUTCOMES[outcome],
        severity=SEVERITIES[review.severity[row]] if outcome == FINDING else None,
        observed=_quantity(review, "observed", row),
        lower=_quantity(review, "lower", row),
        upper=_quantity(review, "upper", row),
        message=message,
        working=_working(result, row) if with_working else (),
        missing=teller.missing if outcome == NOT_ASSESSED else (),
        assumed=_check_assumed(result, row) + inputs.assumed_at(names, rows),
        places=_cells(result, row) + inputs.used_at(names, rows),
        sources=clause.sources,
        remedy=remedy,
        follows=None if cause is None else Cause(cause.id, station if cause.level == "station" else None),
    )


def _told_met(teller: _Teller) -> tuple[str, str]:
    return teller.fill(teller.template("met")), ""


def _told_finding(teller: _Teller) -> tuple[str, str]:
    return teller.fill(teller.template("finding")), teller.fill(teller.template("remedy"))


def _told_not_applicable(teller: _Teller) -> tuple[str, str]:
    assert teller.result is not None
    reason = teller.result.reason
    return f"Not applicable: {reason if isinstance(reason, str) else reason[teller.row]}.", ""


def _told_not_assessed(teller: _Teller) -> tuple[str, str]:
    remedy = ""
    if teller.review.failure:
        message = f"Not assessed: {teller.review.failure}. Please report this; it is not a fault of the table."
    elif teller.missing:
        words = _listed([words_of(name) for name in teller.missing])
        message = f"Not assessed: the table does not state {words}."
        remedy = f"State {_listed(teller.missing)}."
    else:
        kind = value_text(teller.assessed.stations, "bearing_type", teller.station_row)
        about = f" (a {kind} bearing)" if kind.endswith("roller") else ""
        message = f"Not assessed: the values given{about} lie outside the tables and formulas of this clause."
    if teller.result is not None and "not_assessed" in teller.result.facts and (why := teller.word("not_assessed")):
        message = f"{message[:-1]} ({why})."
    return message, remedy


#: What is said of a row, and what to do about it, by its outcome.
_TOLD: dict[int, Callable[[_Teller], tuple[str, str]]] = {
    MET: _told_met,
    FINDING: _told_finding,
    NOT_ASSESSED: _told_not_assessed,
    NOT_APPLICABLE: _told_not_applicable,
}


def _check_assumed(result: Result | None, row: int) -> tuple[Assumed, ...]:
    found = []
    for entry in () if result is None else result.assumed:
        value = entry.values[row]
        if entry.rows[row] and (isinstance(value, str) or np.isfinite(value)):
            shown = value if isinstance(value, str) else rounded(value)
            found.append(Assumed(entry.parameter, shown, entry.unit, entry.reason))
    return tuple(found)


def _cells(result: Result | None, row: int) -> tuple[Used, ...]:
    named = () if result is None or result.cells is None else result.cells(row)
    return tuple(Used(name, place, text) for name, place, text in named)


def _quantity(review: ClauseReview, name: str, row: int) -> Quantity | None:
    values = review.figures.get(name)
    return None if values is None or np.isnan(values[row]) else Quantity(rounded(values[row]), review.unit)


def _working(result: Result | None, row: int) -> tuple[WorkingLine, ...]:
    lines = []
    for line in () if result is None else result.working:
        value: Any = line.values[row]
        if not isinstance(value, str):
            value = rounded(value) if np.isfinite(value) else None
        if value is not None and value != "":
            lines.append(WorkingLine(line.key, line.symbol, line.meaning, value, line.unit, line.formula))
    return tuple(lines)


def _listed(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else ", ".join(words[:-1]) + " and " + words[-1]


def review_reading(
    reading: Any, rulebook: Rulebook, *, gate: str = "major", complete: bool = False, full: bool = False
) -> ReviewResult:
    """Review one table that was read.

    Parameters
    ----------
    reading : linter.reading.Reading
        From :func:`linter.reading.read_table`.
    rulebook : Rulebook
        As loaded.
    gate : str
        Lowest severity that closes the gate.
    complete : bool
        Whether a clause that could not be assessed closes the gate too.
    full : bool
        Whether what is met has its working too.
    """
    stations = reading.stations
    station_names = stations.text("station")
    view = View(stations)
    records = []
    for index, machine in enumerate(stations.machines):
        start = int(view.starts[index])
        count = int(view.station_count[index])
        records.append(
            MachineRecord(
                machine=machine,
                drawing_number=str(stations.text("drawing_number")[start]) or None,
                drawing_revision=str(stations.text("drawing_revision")[start]) or None,
                stations=tuple(sorted(str(name) for name in station_names[start : start + count])),
            )
        )
    found: list[tuple[str, list[Assessment]]] = []
    failures: dict[str, None] = {}
    for part in in_parts(stations, RECORD_ROWS):
        assessed = assess(part, rulebook)
        failures.update(dict.fromkeys(r.failure for r in assessed.reviews.values() if r.failure))
        found += [(machine, assessments(assessed, [k], full=full)) for k, machine in enumerate(part.machines)]
    found.sort(key=lambda entry: entry[0])
    return ReviewResult(
        tool="ringseat",
        tool_version=__version__,
        rulebook=rulebook.record(),
        input=InputRecord(reading.file, reading.sha256, reading.layout),
        machines=tuple(sorted(records, key=lambda r: r.machine)),
        assessments=tuple(record for _, of_machine in found for record in of_machine),
        unrecognised=tuple(Unrecognised(u.name, u.value, u.place, u.reason) for u in reading.unused),
        gate_severity=gate,
        complete_wanted=complete,
        notes=tuple(reading.notes),
        understood=tuple(
            ReadCell(
                machine=stations.machines[int(stations.machine_row[u.row])],
                station=str(station_names[u.row]) if parameter(u.parameter).level == "station" else None,
                parameter=u.parameter,
                place=u.place,
                read=u.read,
                value=u.value,
            )
            for u in reading.understood
        ),
        failures=tuple(failures),
        stations=tuple(
            StationRecord(
                stations.machines[int(stations.machine_row[row])],
                str(station_names[row]),
                values := station_values(stations, row),
                {
                    name: {"value": values[name], "basis": str(derivation.basis[row])}
                    for name, derivation in stations.derived.items()
                    if derivation.rows[row]
                },
            )
            for row in sorted(
                range(len(stations)),
                key=lambda r: (stations.machines[int(stations.machine_row[r])], station_names[r], r),
            )
        ),
    )


def station_values(stations: Stations, row: int) -> dict[str, Any]:
    """Every stated or assumed value of one row, as :class:`linter.model.findings.StationRecord` holds them."""
    values: dict[str, Any] = {}
    for name, number in stations.numbers.items():
        if not np.isnan(number[row]):
            values[name] = rounded(float(number[row]))
    for name, size in stations.toleranced.items():
        if not np.isnan(size.nominal[row]):
            lower, upper = (None if np.isnan(v[row]) else rounded(float(v[row])) for v in (size.lower, size.upper))
            values[name] = {
                "nominal": rounded(float(size.nominal[row])),
                "lower": lower,
                "upper": upper,
                "class": str(size.tolerance_class[row]) or None,
            }
    for name, choice in stations.choices.items():
        if choice.codes[row] >= 0:
            values[name] = choice.words[int(choice.codes[row])]
    for name, text in stations.texts.items():
        if text[row] and name not in ("machine", "station"):
            values[name] = str(text[row])
    return {name: values[name] for name in vocabulary() if name in values}
