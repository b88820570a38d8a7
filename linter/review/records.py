"""Plain records of an assessment, made for what a report shows."""

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping
from functools import partial
from typing import Any

import numpy as np

from linter.checks.shared.base import View
from linter.model.findings import (
    OUTCOMES,
    TO_ACT_ON,
    Assessment,
    Failure,
    InputRecord,
    MachineRecord,
    Needed,
    ReadCell,
    ReviewResult,
    StationRecord,
    Unrecognised,
)
from linter.model.many import HELD_ROWS, RECORD_ROWS, Anew, Placed
from linter.model.stations import Bools, Stations
from linter.model.version import __version__
from linter.model.vocabulary import parameter, vocabulary
from linter.model.wording import rounded
from linter.review.assess import Assessed, assess
from linter.review.making import Maker
from linter.review.many import Again, Passed, by_name, in_order
from linter.review.needed import needed
from linter.rulebook.gates import must_rows
from linter.rulebook.model import Rulebook


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
    names = assessed.stations.machines
    wanted = range(len(names)) if machines is None else machines
    maker = Maker(assessed, tuple(outcomes), full, must)
    return [record for k in sorted(wanted, key=lambda m: (names[m], m)) for record in maker.machine(k)]


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
    large = len(stations) > HELD_ROWS
    passed = Passed()
    found: list[Assessment] = []
    wanted: list[Needed] = []
    failures: dict[Failure, None] = {}
    for part in in_order(stations):
        told(part.machines[0] if part.machines else "")
        assessed = assess(part, rulebook)
        failures.update(
            dict.fromkeys(Failure(name, r.failure) for name, r in assessed.reviews.items() if r.failure is not None)
        )
        must = {name: must_rows(r.clause, assessed.view, gate) for name, r in assessed.reviews.items()}
        maker = Maker(assessed, TO_ACT_ON if large else OUTCOMES, full, must)
        made = [record for k in by_name(part) for record in maker.machine(k)]
        wanted += needed(part, made)
        found += made
        if large:
            passed.add(assessed, maker, must)
    again = Again(stations, rulebook, gate, full, assessed if len(stations) <= RECORD_ROWS else None)
    cells = Anew(partial(_read_cells, reading), partial(_placed, reading))
    records_of = Anew(partial(_station_records, stations))
    return ReviewResult(
        tool="ringseat",
        tool_version=__version__,
        rulebook=rulebook.record(),
        input=InputRecord(reading.file, reading.sha256, reading.layout),
        machines=tuple(sorted(records, key=lambda r: r.machine)),
        assessments=passed.result(tuple(found), again) if large else tuple(found),
        unrecognised=tuple(Unrecognised(u.name, u.value, u.place, u.reason) for u in reading.unused),
        gate_severity=gate,
        complete_wanted=complete,
        notes=tuple(reading.notes),
        understood=cells if large else tuple(cells),
        failures=tuple(failures),
        undecided_passes=undecided_passes,
        needed=tuple(wanted),
        stations=records_of if large else tuple(records_of),
    )


def _rows_of(stations: Stations, machines: Collection[str] | None) -> Bools | None:
    """Which rows are of some machines; None for all of them."""
    if machines is None:
        return None
    return np.array([name in machines for name in stations.machines], dtype=bool)[stations.machine_row]


def _read_cells(reading: Any, machines: Collection[str] | None) -> Iterator[ReadCell]:
    """Every cell that was used, by parameter."""
    stations: Stations = reading.stations
    names = stations.text("station")
    for u in reading.cells(_rows_of(stations, machines)):
        machine = stations.machines[int(stations.machine_row[u.row])]
        station = str(names[u.row]) if parameter(u.parameter).level == "station" else None
        yield ReadCell(machine, station, u.parameter, u.place, u.read, u.value)


def _placed(reading: Any) -> Iterator[Placed]:
    """The place of every cell that was used, by parameter."""
    stations: Stations = reading.stations
    machines = [stations.machines[k] for k in stations.machine_row.tolist()]
    names = [str(name) for name in stations.text("station")]
    for name, row, *at in reading.placed():
        yield (machines[row], names[row] if parameter(name).level == "station" else None, name, reading.file, *at)


def _station_records(stations: Stations, of: Collection[str] | None) -> Iterator[StationRecord]:
    """Every position with its values, by machine and name."""
    names = stations.text("station")
    machines = [stations.machines[k] for k in stations.machine_row.tolist()]
    wanted = _rows_of(stations, of)
    rows = range(len(stations)) if wanted is None else np.flatnonzero(wanted).tolist()
    for row in sorted(rows, key=lambda r: (machines[r], names[r], r)):
        values = station_values(stations, row)
        derived = {
            name: {"value": values[name], "basis": str(derivation.basis[row])}
            for name, derivation in stations.derived.items()
            if derivation.rows[row]
        }
        yield StationRecord(machines[row], str(names[row]), values, derived)


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
