"""Plain records of an assessment, made for what a report shows."""

import re
from collections.abc import Iterable
from typing import Any

import numpy as np
from attrs import evolve

from linter.checks.shared.base import Result
from linter.model.findings import (
    OUTCOMES,
    SEVERITIES,
    Assessment,
    Assumed,
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
from linter.review.assess import FINDING, MET, NOT_APPLICABLE, NOT_ASSESSED, Assessed, ClauseReview, assess
from linter.rulebook.model import Rulebook

_PLACEHOLDER = re.compile(r"\{([A-Za-z_0-9]+)\}")


class _Teller:
    """Fills the message of one clause for one row."""

    def __init__(self, assessed: Assessed, review: ClauseReview, row: int) -> None:
        self.assessed, self.review, self.row = assessed, review, row
        self.result = review.result
        machine = review.clause.level == "machine"
        self.station_row = int(assessed.view.starts[row]) if machine else row

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
    assessed: Assessed, machines: Iterable[int] | None = None, *, outcomes: Iterable[str] = OUTCOMES
) -> list[Assessment]:
    """Plain records of the rows that a report shows.

    Parameters
    ----------
    assessed : Assessed
        From :func:`assess`.
    machines : iterable of int, optional
        Indices of machines; all where absent.
    outcomes : iterable of str
        Outcomes wanted.

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
    for machine in sorted(wanted_machines, key=lambda m: (stations.machines[m], m)):
        start = int(view.starts[machine])
        rows = sorted(range(start, start + int(view.station_count[machine])), key=lambda r: (str(station_names[r]), r))
        for clause_id in sorted(assessed.reviews):
            review = assessed.reviews[clause_id]
            if review.clause.level == "machine" and int(review.outcome[machine]) in codes:
                found.append(_record(assessed, review, machine, stations.machines[machine], None))
        for row in rows:
            for clause_id in sorted(assessed.reviews):
                review = assessed.reviews[clause_id]
                if review.clause.level == "station" and int(review.outcome[row]) in codes:
                    found.append(_record(assessed, review, row, stations.machines[machine], str(station_names[row])))
    return found


def _record(assessed: Assessed, review: ClauseReview, row: int, machine: str, station: str | None) -> Assessment:
    clause, result, stations, view = review.clause, review.result, assessed.stations, assessed.view
    outcome = int(review.outcome[row])
    severity = SEVERITIES[review.severity[row]] if outcome == FINDING else None
    if station is None:
        rows = [int(view.starts[row]) + k for k in range(int(view.station_count[row]))]
    else:
        rows = [row]
    names = [*dict.fromkeys((*clause.needs, *clause.uses))]
    missing = tuple(name for name, mask in review.missing.items() if mask[row]) if outcome == NOT_ASSESSED else ()
    teller = _Teller(assessed, review, row)
    remedy = ""
    if outcome == NOT_APPLICABLE:
        assert result is not None
        reason = result.reason if isinstance(result.reason, str) else str(result.reason[row])
        message = f"Not applicable: {reason}."
    elif outcome == NOT_ASSESSED:
        if review.failure:
            message = f"Not assessed: {review.failure}. Please report this; it is not a fault of the table."
        elif missing:
            message = f"Not assessed: the table does not state {_listed([words_of(name) for name in missing])}."
            remedy = f"State {_listed(list(missing))}."
        else:
            kind = value_text(stations, "bearing_type", rows[0])
            about = f" (a {kind} bearing)" if kind.endswith("roller") else ""
            message = f"Not assessed: the values given{about} lie outside the tables and formulas of this clause."
        if result is not None and "not_assessed" in result.facts and (why := teller.word("not_assessed")):
            message = f"{message[:-1]} ({why})."
    else:
        assert result is not None
        variant = "" if result.variant is None else str(result.variant[row])
        key = "finding" if outcome == FINDING else "met"
        template = clause.messages.get(f"{key}_{variant}") if variant else None
        message = teller.fill(template or clause.messages[key])
        if outcome == FINDING:
            template = clause.messages.get(f"remedy_{variant}") if variant else None
            remedy = teller.fill(template or clause.remedy)
    shown = outcome in (MET, FINDING)
    return Assessment(
        clause=clause.id,
        title=clause.title,
        machine=machine,
        station=station,
        outcome=OUTCOMES[outcome],
        severity=severity,
        observed=_quantity(result, "observed", row) if shown else None,
        lower=_limit(result, "lower", row, outcome) if shown else None,
        upper=_limit(result, "upper", row, outcome) if shown else None,
        message=message,
        working=_working(result, row) if shown or outcome == NOT_ASSESSED else (),
        missing=missing,
        assumed=_check_assumed(result, row) + tuple(
            _assumed(stations, name, r) for name in names if name in stations.assumed
            for r in rows[: 1 if parameter(name).level == "machine" else None] if stations.assumed[name].rows[r]
        ),
        places=_cells(result, row) + tuple(
            Used(name, place, value_text(stations, name, r)) for name in names if name in stations.places
            for r in rows[: 1 if parameter(name).level == "machine" else None]
            if (place := stations.place(name, r)) is not None
        ),
        sources=clause.sources,
        remedy=remedy,
    )  # fmt: skip


def _assumed(stations: Stations, name: str, row: int) -> Assumed:
    return Assumed(
        name, rounded(float(stations.number(name)[row])), parameter(name).unit, stations.assumed[name].reason
    )


def _check_assumed(result: Result | None, row: int) -> tuple[Assumed, ...]:
    found = []
    for entry in () if result is None else result.assumed:
        if entry.rows[row]:
            value = entry.values[row]
            found.append(
                Assumed(entry.parameter, value if isinstance(value, str) else rounded(value), entry.unit, entry.reason)
            )
    return tuple(found)


def _cells(result: Result | None, row: int) -> tuple[Used, ...]:
    named = () if result is None or result.cells is None else result.cells(row)
    return tuple(Used(name, place, text) for name, place, text in named)


def _quantity(result: Result | None, name: str, row: int) -> Quantity | None:
    values = None if result is None else getattr(result, name)
    if values is None or not np.isfinite(values[row]):
        return None
    assert result is not None
    return Quantity(rounded(values[row]), result.unit)


def _limit(result: Result | None, name: str, row: int, outcome: int) -> Quantity | None:
    """A limit; None where the row is met on other grounds although the observed value lies beyond it."""
    limit, observed = _quantity(result, name, row), _quantity(result, "observed", row)
    if outcome == MET and limit is not None and observed is not None:
        beyond = observed.value - limit.value if name == "upper" else limit.value - observed.value
        if beyond > 1e-9 * abs(limit.value):
            return None
    return limit


def _working(result: Result | None, row: int) -> tuple[WorkingLine, ...]:
    lines = []
    for line in () if result is None else result.working:
        value: Any = line.values[row]
        if not isinstance(value, str):
            value = rounded(value) if np.isfinite(value) else None
        if value is not None and value != "":
            lines.append(WorkingLine(line.key, line.symbol, line.meaning, value, line.unit, line.formula))
    return tuple(lines)


def _listed(words: list[str]) -> str:
    return words[0] if len(words) == 1 else ", ".join(words[:-1]) + " and " + words[-1]


def review_reading(reading: Any, rulebook: Rulebook, *, gate: str = "major", complete: bool = False) -> ReviewResult:
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
    """
    assessed = assess(reading.stations, rulebook)
    stations, view = reading.stations, assessed.view
    station_names = stations.text("station")
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
    return ReviewResult(
        tool="ringseat",
        tool_version=__version__,
        rulebook=rulebook.record(),
        input=InputRecord(reading.file, reading.sha256, reading.layout),
        machines=tuple(sorted(records, key=lambda r: r.machine)),
        assessments=tuple(assessments(assessed)),
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
        failures=tuple(r.failure for r in assessed.reviews.values() if r.failure),
        stations=tuple(
            StationRecord(
                stations.machines[int(stations.machine_row[row])],
                str(station_names[row]),
                station_values(stations, row),
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


def with_assessments(result: ReviewResult, changed: Iterable[Assessment]) -> ReviewResult:
    """The same result with other assessments, for concessions and for changes that clear."""
    return evolve(result, assessments=tuple(changed))
