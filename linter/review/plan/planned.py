"""The plan of a review: the searches of all machines whose gate is closed, and what it comes to, reviewed whole."""

from collections.abc import Generator, Iterator, Mapping, Sequence
from typing import Any

import numpy as np
from attrs import evolve
from numpy.typing import NDArray

from linter.model.findings import SEVERITIES, Assessment, ReviewResult
from linter.model.many import ManyAssessments
from linter.model.stations import Stations
from linter.review.assess import assess
from linter.review.plan.alternatives import Looking
from linter.review.plan.bench import Bench
from linter.review.plan.cells import Cell, Movable
from linter.review.plan.lines import Planned, Recorder
from linter.review.plan.search import Search
from linter.review.plan.standing import baseline
from linter.review.plan.trials import Grades, Trial, machine_block, with_values
from linter.rulebook.gates import must_rows
from linter.rulebook.model import Rulebook

#: Rows of the machines whose searches share their batches; memory does not grow with the table.
TOGETHER = 256
#: Machines of one table that a plan is searched for; a search takes less than a tenth of a second where there are many.
MOST_MACHINES = 1000
#: Texts that tell machines and positions apart; nothing is worked out from them.
NAMES = ("machine", "drawing_number", "drawing_revision", "station")

#: Grades as reviewed, shape (clauses, rows); what must be judged; what is conceded.
Standing = tuple[NDArray[np.int8], NDArray[np.bool_], NDArray[np.bool_]]
Searching = Generator[Sequence[Trial], Grades, Planned]


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
    wanted = [index[name] for name in searched if name in index]
    if left := len(names) - len(searched):
        said = f"A plan was searched for the {most} machines with the most severe findings"
        more = f"{left} more {'has' if left == 1 else 'have'} findings that close the gate."
        result = evolve(result, notes=(*result.notes, f"{said}; {more}"))
    recorder = Recorder(result, stations)
    for planned in _planned(wanted, stations, rulebook, result, movable or Movable()):
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


def _planned(
    wanted: Sequence[int],
    stations: Stations,
    rulebook: Rulebook,
    result: ReviewResult,
    movable: Movable,
) -> Iterator[Planned]:
    """Plans of machines in their order; what is alike in all that matters is searched once."""
    blocks = [machine_block(stations, machine) for machine in wanted]
    reviewed = list(standing_of(result, stations, rulebook, wanted))
    alike: dict[Any, int] = {}
    like = [alike.setdefault(_sameness(stations, blocks[n], reviewed[n]), n) for n in range(len(wanted))]
    firsts = list(alike.values())
    searches = [_search(wanted[n], blocks[n], reviewed[n], stations, rulebook, result, movable) for n in firsts]
    found = dict[int, Planned]()
    ready = _side_by_side(searches, Bench(stations, [blocks[n] for n in firsts], rulebook))
    for n, first in enumerate(like):
        while first not in found:
            k, planned = next(ready)
            found[firsts[k]] = planned
        yield evolve(found[first], machine=wanted[n], block=blocks[n])


def _side_by_side(searches: Sequence[Searching], bench: Bench) -> Iterator[tuple[int, Planned]]:
    """Searches with their numbers as they end: what those under way ask for in one round is judged in one batch."""
    waiting = list(range(len(searches)))[::-1]
    asked: dict[int, Sequence[Trial]] = {}
    while waiting or asked:
        rows = sum(len(bench.blocks[k]) for k in asked)
        while waiting and (not asked or rows < TOGETHER):
            k = waiting.pop()
            asked[k] = next(searches[k])
            rows += len(bench.blocks[k])
        following: dict[int, Sequence[Trial]] = {}
        ended: list[tuple[int, Planned]] = []
        for k, grades in bench.try_out(asked).items():
            try:
                following[k] = searches[k].send(grades)
            except StopIteration as end:
                ended.append((k, end.value))
                bench.forget(k)
        asked = following
        yield from ended


def _sameness(stations: Stations, block: NDArray[np.intp], reviewed: Sequence[NDArray[Any]]) -> Any:
    """What a search depends on: every value of a machine but its names, of which it matters whether they are stated."""
    texts = {
        name: tuple(bool(str(v).strip()) if name in NAMES else str(v) for v in values[block])
        for name, values in stations.texts.items()
    }
    sizes = [(s.nominal[block], s.lower[block], s.upper[block]) for s in stations.toleranced.values()]
    columns = [
        *(values[block] for values in stations.numbers.values()),
        *(part for size in sizes for part in size),
        *(choice.codes[block] for choice in stations.choices.values()),
        *(assumed.rows[block] for assumed in stations.assumed.values()),
        *(derived.rows[block] for derived in stations.derived.values()),
        *reviewed,
    ]
    words = [tuple(map(str, size.tolerance_class[block])) for size in stations.toleranced.values()]
    return len(block), tuple(texts.items()), tuple(words), *(np.ascontiguousarray(c).tobytes() for c in columns)


def _search(
    machine: int,
    block: NDArray[np.intp],
    reviewed: Standing,
    stations: Stations,
    rulebook: Rulebook,
    result: ReviewResult,
    movable: Movable,
) -> Searching:
    """The search for one machine: yields trials, is sent their grades, returns its plan and what stands outside it."""
    copy = yield [{}]
    base = baseline(stations, block, rulebook, copy, *reviewed, result.gate_severity)
    found = yield from Search(stations, block, rulebook, base, movable).run()
    outside = yield from Looking(stations, block, rulebook, base, movable).run(found)
    return Planned(machine, block, base, found, outside)


def standing_of(
    result: ReviewResult, stations: Stations, rulebook: Rulebook, machines: Sequence[int]
) -> Iterator[Standing]:
    """Grades of some machines as reviewed, shape (clauses, rows); what must be judged; what is conceded.

    Of a large table what is met or does not apply is judged again without its records.
    """
    clauses = [clause for clause in rulebook.clauses.values() if clause.off is None]
    index = {clause.id: k for k, clause in enumerate(clauses)}
    blocks = [machine_block(stations, machine) for machine in machines]
    grades = np.zeros((len(clauses), sum(map(len, blocks))), np.int8)
    must = np.zeros(grades.shape, bool)
    large = isinstance(result.assessments, ManyAssessments)
    if large:
        assessed = assess(stations.take(np.concatenate(blocks)), rulebook, keep="verdicts")
        grades, view = assessed.grades(), assessed.view
        for row, clause in zip(must, clauses, strict=True):
            rows = must_rows(clause, view, result.gate_severity)
            row[:] = view.to_stations(rows) if clause.level == "machine" else rows
    records: dict[str, list[Assessment]] = {stations.machines[machine]: [] for machine in machines}
    for item in result.to_act_on if large else result.assessments:
        if item.machine in records:
            records[item.machine].append(item)
    start = 0
    for machine, block in zip(machines, blocks, strict=True):
        own = slice(start, start := start + len(block))
        found = grades[:, own].copy(), must[:, own].copy(), np.zeros((len(clauses), len(block)), bool)
        names = [str(name) for name in stations.text("station")[block]]
        for record in records[stations.machines[machine]]:
            at = index[record.clause], [i for i, name in enumerate(names) if record.station in (None, name)]
            grade = {"not assessed": -1, "not applicable": -2}.get(record.outcome, 0)
            if record.severity is not None:
                grade = len(SEVERITIES) - SEVERITIES.index(record.severity)
            for values, value in zip(found, (grade, record.must, record.outcome == "conceded"), strict=True):
                values[at] = value
        yield found


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
