"""Plain records of an assessment, made for what a report shows."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import cache
from typing import Any, TypeVar

import numpy as np

from linter.checks.shared.base import Result, View
from linter.model.findings import (
    OUTCOMES,
    SEVERITIES,
    Assessment,
    Assumed,
    Cause,
    Failure,
    InputRecord,
    MachineRecord,
    Needed,
    Quantity,
    ReadCell,
    ReviewResult,
    StationRecord,
    Unrecognised,
    Used,
    WorkingLine,
)
from linter.model.stations import Bools, Stations
from linter.model.version import __version__
from linter.model.vocabulary import parameter, vocabulary
from linter.model.wording import rounded, value_text
from linter.review.assess import (
    FINDING,
    MET,
    NOT_ASSESSED,
    Assessed,
    ClauseReview,
    assess,
    in_parts,
)
from linter.review.messages import TOLD, Teller
from linter.review.needed import needed
from linter.rulebook.gates import must_rows
from linter.rulebook.model import Rulebook

T = TypeVar("T")
#: Rows whose results are held at once while records are made of them.
RECORD_ROWS = 4000


def assessments(
    assessed: Assessed,
    machines: Iterable[int] | None = None,
    *,
    outcomes: Iterable[str] = OUTCOMES,
    full: bool = True,
    must: Mapping[str, Bools] | None = None,
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
    must : dict of str to bool array, optional
        By clause the rows that must be judged before the gate may open.

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
    held = must or {}
    for machine in sorted(wanted_machines, key=lambda m: (stations.machines[m], m)):
        start = int(view.starts[machine])
        every = range(start, start + int(view.station_count[machine]))
        inputs = _Inputs(stations, every)
        for review in reviews:
            if review.clause.level == "machine" and int(review.outcome[machine]) in codes:
                teller = Teller(assessed, review, machine, start, held.get(review.clause.id))
                found.append(_record(teller, inputs, list(every), stations.machines[machine], None, full))
        for row in sorted(every, key=lambda r: (str(station_names[r]), r)):
            for review in reviews:
                if review.clause.level == "station" and int(review.outcome[row]) in codes:
                    teller = Teller(assessed, review, row, row, held.get(review.clause.id))
                    name = str(station_names[row])
                    found.append(_record(teller, inputs, [row], stations.machines[machine], name, full))
    return found


class _Inputs:
    """Inputs of one machine as records, each made once: clauses that share one share its record."""

    def __init__(self, stations: Stations, rows: Iterable[int]) -> None:
        self.stations = stations
        self.used = {row: _Made(self._used, row) for row in rows}
        self.assumed = {row: _Made(self._assumed, row) for row in rows}

    def used_at(self, names: Iterable[str], rows: Sequence[int]) -> tuple[Used, ...]:
        """Where the parameters stand that a clause looks at."""
        return self._each(self.used, names, rows)

    def assumed_at(self, names: Iterable[str], rows: Sequence[int]) -> tuple[Assumed, ...]:
        """Documented defaults among the parameters that a clause looks at."""
        assumed = self.stations.assumed
        return self._each(self.assumed, [name for name in names if name in assumed], rows)

    @staticmethod
    def _each(made: Mapping[int, "_Made[T]"], names: Iterable[str], rows: Sequence[int]) -> tuple[T, ...]:
        if len(rows) == 1:
            at = made[rows[0]]
            return tuple([entry for name in names if (entry := at[name]) is not None])
        wanted = ((name, row) for name in names for row in (rows[:1] if parameter(name).level == "machine" else rows))
        return tuple([entry for name, row in wanted if (entry := made[row][name]) is not None])

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


class _Made(dict[str, T | None]):
    """Records of one row by parameter, each made when it is first asked for."""

    def __init__(self, make: Callable[[str, int], T | None], row: int) -> None:
        super().__init__()
        self.make, self.row = make, row

    def __missing__(self, name: str) -> T | None:
        made = self[name] = self.make(name, self.row)
        return made


@cache
def _looked_at(needs: tuple[str, ...], uses: tuple[str, ...]) -> tuple[str, ...]:
    """Parameters that a clause looks at, each once."""
    return tuple(dict.fromkeys((*needs, *uses)))


def _record(
    teller: Teller, inputs: _Inputs, rows: list[int], machine: str, station: str | None, full: bool
) -> Assessment:
    clause, result, review, row = teller.review.clause, teller.result, teller.review, teller.row
    outcome = int(review.outcome[row])
    message, remedy = TOLD[outcome](teller)
    names = _looked_at(clause.needs, clause.uses)
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
        must=teller.must,
        quantity=teller.quantity if outcome == FINDING else "",
    )


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


def review_reading(
    reading: Any,
    rulebook: Rulebook,
    *,
    gate: str = "major",
    complete: bool = False,
    undecided_passes: bool = False,
    full: bool = False,
    told: Callable[[str], None] = lambda machine: None,
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
    undecided_passes : bool
        Whether the caller goes on with an undecided gate; the result says so.
    full : bool
        Whether what is met has its working too.
    told : callable
        Is called with the name of the first machine of each part of a large table.

    Returns
    -------
    ReviewResult
        Without changes and concessions.
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
    wanted: list[Needed] = []
    failures: dict[Failure, None] = {}
    for part in in_parts(stations, RECORD_ROWS):
        told(part.machines[0] if part.machines else "")
        assessed = assess(part, rulebook)
        failures.update(
            dict.fromkeys(Failure(name, r.failure) for name, r in assessed.reviews.items() if r.failure is not None)
        )
        must = {name: must_rows(r.clause, assessed.view, gate) for name, r in assessed.reviews.items()}
        made = [(machine, assessments(assessed, [k], full=full, must=must)) for k, machine in enumerate(part.machines)]
        wanted += needed(part, (record for _, records_of in made for record in records_of))
        found += made
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
        undecided_passes=undecided_passes,
        needed=tuple(wanted),
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
