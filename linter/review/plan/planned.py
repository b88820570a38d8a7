"""The plan of a review: the searches of all machines whose gate is closed, and what it comes to, reviewed whole."""

from collections.abc import Generator, Mapping, Sequence
from typing import Any

import numpy as np
from attrs import evolve
from numpy.typing import NDArray

from linter.model.findings import SEVERITIES, Assessment, ReviewResult
from linter.model.stations import Stations
from linter.review.plan.alternatives import Looking
from linter.review.plan.bench import Bench
from linter.review.plan.cells import Cell, Movable
from linter.review.plan.lines import Planned, Recorder
from linter.review.plan.search import Search
from linter.review.plan.standing import baseline
from linter.review.plan.trials import Grades, Trial, machine_block, with_values
from linter.rulebook.model import Rulebook

#: Machines whose searches share their batches; memory does not grow with the table.
TOGETHER = 16
#: Machines of one table that a plan is searched for; a search takes less than a tenth of a second where there are many.
MOST_MACHINES = 1000


def with_plan(
    result: ReviewResult,
    stations: Stations,
    rulebook: Rulebook,
    movable: Movable | None = None,
    *,
    most: int | None = MOST_MACHINES,
) -> ReviewResult:
    """The same result with its plan, what the plan comes to, and the decisions outside it.

    Parameters
    ----------
    result : ReviewResult
        With its concessions; what is conceded closes no gate.
    stations : Stations
        What was reviewed.
    rulebook : Rulebook
        What it was reviewed under.
    movable : Movable, optional
        Parameters kept or freed by the caller.
    most : int or None
        Machines that a plan is searched for; None for all.

    Returns
    -------
    ReviewResult
        The given one where no finding closes the gate: nothing is searched then. Of more machines than ``most`` those
        with the most severe findings have a plan; a note says how many have none.
    """
    by_machine = _closing_machines(result)
    if not by_machine:
        return result
    index = {name: k for k, name in enumerate(stations.machines)}
    names = sorted(sorted(by_machine), key=lambda name: _gravity(by_machine[name]))
    searched = sorted(names[:most])
    records: dict[str, list[Assessment]] = {}
    for item in result.of_machines(set(searched)):
        records.setdefault(item.machine, []).append(item)
    wanted = [(index[name], records[name]) for name in searched if name in index]
    if left := len(names) - len(searched):
        said = f"A plan was searched for the {most} machines with the most severe findings"
        more = f"{left} more {'has' if left == 1 else 'have'} findings that close the gate."
        result = evolve(result, notes=(*result.notes, f"{said}; {more}"))
    recorder = Recorder(result, stations)
    for start in range(0, len(wanted), TOGETHER):
        for planned in _group(wanted[start : start + TOGETHER], stations, rulebook, result, movable or Movable()):
            recorder.add(planned)
    return recorder.recorded()


def _gravity(records: Sequence[Assessment]) -> tuple[int, ...]:
    """What machines are put in order by: most critical findings first, then most major ones, and so on."""
    return tuple(-sum(r.severity == severity and r.outcome == "finding" for r in records) for severity in SEVERITIES)


def _closing_machines(result: ReviewResult) -> dict[str, list[Assessment]]:
    """What somebody acts on at the machines that have a finding which closes the gate."""
    closing = {a.machine for a in result.closing}
    found: dict[str, list[Assessment]] = {}
    for item in result.to_act_on:
        if item.machine in closing:
            found.setdefault(item.machine, []).append(item)
    return found


def _group(
    wanted: Sequence[tuple[int, Sequence[Assessment]]],
    stations: Stations,
    rulebook: Rulebook,
    result: ReviewResult,
    movable: Movable,
) -> list[Planned]:
    """Plans of machines searched side by side: what all of them ask for in one round is judged in one batch."""
    blocks = [machine_block(stations, machine) for machine, _ in wanted]
    bench = Bench(stations, blocks, rulebook)
    searches = [
        _search(machine, block, grades_of(records, stations, block, rulebook), stations, rulebook, result, movable)
        for (machine, records), block in zip(wanted, blocks, strict=True)
    ]
    found: list[Planned | None] = [None] * len(searches)
    asked = {k: next(search) for k, search in enumerate(searches)}
    while asked:
        following: dict[int, Sequence[Trial]] = {}
        for k, grades in bench.try_out(asked).items():
            try:
                following[k] = searches[k].send(grades)
            except StopIteration as end:
                found[k] = end.value
                bench.forget(k)
        asked = following
    return [planned for planned in found if planned is not None]


def _search(
    machine: int,
    block: NDArray[np.intp],
    reviewed: tuple[NDArray[np.int8], NDArray[np.bool_], NDArray[np.bool_]],
    stations: Stations,
    rulebook: Rulebook,
    result: ReviewResult,
    movable: Movable,
) -> Generator[Sequence[Trial], Grades, Planned]:
    """The search for one machine: yields trials, is sent their grades, returns its plan and what stands outside it."""
    copy = yield [{}]
    base = baseline(stations, block, rulebook, copy, *reviewed, result.gate_severity)
    found = yield from Search(stations, block, rulebook, base, movable).run()
    outside = yield from Looking(stations, block, rulebook, base, movable).run(found)
    return Planned(machine, block, base, found, outside)


def grades_of(
    records: Sequence[Assessment], stations: Stations, block: NDArray[np.intp], rulebook: Rulebook
) -> tuple[NDArray[np.int8], NDArray[np.bool_], NDArray[np.bool_]]:
    """Grades of one machine as its records tell them, shape (clauses, rows); what must be judged; what is conceded."""
    index = {c.id: k for k, c in enumerate(c for c in rulebook.clauses.values() if c.off is None)}
    names = [str(name) for name in stations.text("station")[block]]
    grades = np.zeros((len(index), len(block)), dtype=np.int8)
    must, conceded = np.zeros(grades.shape, dtype=bool), np.zeros(grades.shape, dtype=bool)
    for record in records:
        rows = [i for i, name in enumerate(names) if record.station is None or name == record.station]
        grade = {"not assessed": -1, "not applicable": -2}.get(record.outcome, 0)
        if record.severity is not None:
            grade = len(SEVERITIES) - SEVERITIES.index(record.severity)
        grades[index[record.clause], rows] = grade
        must[index[record.clause], rows] = record.must
        conceded[index[record.clause], rows] = record.outcome == "conceded"
    return grades, must, conceded


def applied(stations: Stations, changes: Sequence[tuple[NDArray[np.intp], Mapping[Cell, Any]]]) -> Stations:
    """The table with the values of some machines changed; the given one is left as it is."""
    return with_values(
        stations,
        (
            (cell.name, slice(int(block[0]), int(block[-1]) + 1) if cell.whole else int(block[cell.row]), value)
            for block, values in changes
            for cell, value in values.items()
        ),
    )
