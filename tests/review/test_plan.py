"""Laws of the plan: applied and reviewed whole it is what it says, nothing gets worse, nothing in it is idle."""

from collections import Counter
from functools import cache
from pathlib import Path

import numpy as np
import pytest
from attrs import evolve

import linter
from linter.model.findings import SEVERITIES, ReviewResult
from linter.model.plan import SizeValue
from linter.model.stations import Stations, stations_from_rows
from linter.model.vocabulary import parameter
from linter.reading import read_table
from linter.review.plan import planned
from linter.review.plan.cells import Cell, Movable, is_decision
from linter.review.plan.domains import domain
from linter.review.plan.planned import with_plan
from linter.review.plan.trials import machine_block, try_out, value_at, with_values
from linter.review.records import review_reading
from linter.rulebook.load import load
from linter.rulebook.repairs import repairs
from tests.designs.faulty import faulty_machines
from tests.designs.sweep import result_of

BOOK = load()
SEEDS = 77


def applied(stations: Stations, result: ReviewResult, *, but: int = 0) -> Stations:
    """The stations with the lines of a plan, one of them left out."""
    names = stations.text("station")
    changes = []
    for line in result.plan:
        if line.line != but:
            block = machine_block(stations, stations.machines.index(line.machine))
            row = next((int(r) for r in block if str(names[r]) == line.station), None)
            value = line.value
            if isinstance(value, SizeValue):
                bounds = [np.nan if v is None else v for v in (value.lower, value.upper)]
                value = (value.nominal, *bounds, value.tolerance_class)
            elif parameter(line.parameter).kind == "choice":
                value = parameter(line.parameter).choices.index(value)
            at = slice(int(block[0]), int(block[-1]) + 1) if row is None else row
            changes.append((line.parameter, at, value))
    return with_values(stations, changes)


def reviewed(stations: Stations, **how) -> ReviewResult:
    from linter.reading import Reading
    from linter.review.records import review_reading

    return review_reading(Reading("", "", "", stations, (), (), understand=list), BOOK, **how)


@cache
def machines(drawing: bool) -> tuple[tuple[Stations, ReviewResult, ReviewResult], ...]:
    """Faulty machines, each reviewed, planned, and reviewed again with its plan."""
    found = []
    for design in faulty_machines(16, SEEDS, BOOK, drawing=drawing):
        stations = design.stations()
        before = with_plan(result_of(list(design.rows), BOOK), stations, BOOK)
        found.append((stations, before, reviewed(applied(stations, before))))
    return tuple(found)


EVERY = [(drawing, k) for drawing in (True, False) for k in range(16)]


def grades(result: ReviewResult) -> dict[tuple[str, str | None], int]:
    """Grade by clause and station: 4 critical to 1 remark, 0 met, -1 not assessed, -2 not applicable."""
    outcomes = {"not assessed": -1, "not applicable": -2}
    return {
        (a.clause, a.station): outcomes.get(a.outcome, len(SEVERITIES) - SEVERITIES.index(a.severity or "critical"))
        if a.outcome != "met"
        else 0
        for a in result.assessments
    }


@pytest.mark.parametrize(("drawing", "k"), EVERY)
def test_the_plan_reviewed_is_what_it_says(drawing, k):
    _, before, after = machines(drawing)[k]
    assert before.plan_result is not None
    assert after.gate == before.plan_result.gate
    assert after.severities == dict(before.plan_result.severities)
    told = {(left.clause, left.station, left.severity) for m in before.plan_result.machines for left in m.left}
    assert told == {(a.clause, a.station, a.severity) for a in after.closing}


@pytest.mark.parametrize(("drawing", "k"), EVERY)
def test_no_clause_gets_worse_and_none_goes_unjudged(drawing, k):
    _, before, after = machines(drawing)[k]
    was, now = grades(before), grades(after)
    worse = {at: (was[at], now[at]) for at in was if (was[at] >= 0 and now[at] > was[at])}
    lost = {at for at in was if was[at] != -1 and now[at] == -1}
    assert (worse, lost) == ({}, set())


@pytest.mark.parametrize(("drawing", "k"), EVERY)
def test_no_two_lines_touch_one_cell_and_none_is_a_decision(drawing, k):
    _, before, _ = machines(drawing)[k]
    assert set(Counter((line.machine, line.station, line.parameter) for line in before.plan).values()) <= {1}
    assert not [line.parameter for line in before.plan if is_decision(line.parameter)]
    assert [line.line for line in before.plan] == list(range(1, len(before.plan) + 1))


@pytest.mark.parametrize(("drawing", "k"), EVERY)
def test_no_line_is_idle(drawing, k):
    stations, before, after = machines(drawing)[k]
    for line in before.plan:
        without = reviewed(applied(stations, before, but=line.line))
        was, now = grades(without), grades(after)
        assert any(now[at] < was[at] or (was[at] == -1 != now[at]) for at in now), line
        assert line.clears or line.lowers, line


@pytest.mark.parametrize(("drawing", "k"), EVERY)
def test_a_finding_names_the_lines_that_serve_it(drawing, k):
    _, before, after = machines(drawing)[k]
    now = grades(after)
    named = {line.line: (*line.clears, *line.lowers) for line in before.plan}
    for item in before.assessments:
        for change in item.clears_with:
            assert item.clause in named[change.line]
            assert change.verified and now[(item.clause, item.station)] < grades(before)[(item.clause, item.station)]
    assert {n for n, clauses in named.items() if clauses} == {c.line for a in before.assessments for c in a.clears_with}


def limits(stations: Stations, name: str, row: int) -> tuple[float, float]:
    nominal, lower, upper, _ = value_at(stations, name, row)
    return nominal + lower, nominal + upper


@pytest.mark.parametrize(("drawing", "k"), EVERY)
def test_what_has_to_hold_is_cleared_by_more_hold_and_what_slides_by_more_play(drawing, k):
    stations, before, after = machines(drawing)[k]
    moved = applied(stations, before)
    names = [str(n) for n in stations.text("station")]
    lines = {(line.parameter, line.station) for line in before.plan}
    now = grades(after)
    for item in before.assessments:
        ways = [r for r in repairs(BOOK.clauses[item.clause]) if r.way]
        if item.outcome != "finding" or now[(item.clause, item.station)] >= grades(before)[(item.clause, item.station)]:
            continue
        mine = [
            r for r in ways if (r.name, item.station) in lines and any(c.parameter == r.name for c in item.clears_with)
        ]
        helped = []
        for repair in mine:
            row = names.index(str(item.station))
            (low, high), (new_low, new_high) = (limits(s, repair.name, row) for s in (stations, moved))
            shaft = repair.name.startswith("shaft")
            loose, tight = (new_low - low, new_high - high) if shaft else (high - new_high, low - new_low)
            helped.append(loose > 0 if repair.way == "tighter" else tight < 0)
        assert not helped or any(helped), (item.clause, item.station, before.plan)


@pytest.mark.parametrize("k", range(16))
def test_no_nearer_value_does_as_much(k):
    """Each value of a plan is the nearest of its domain: with any nearer one something is graver than the plan says."""
    stations, before, _ = machines(True)[k]
    block = machine_block(stations, 0)
    names = [str(n) for n in stations.text("station")]
    moved = applied(stations, before)
    plan = {}
    for line in before.plan:
        cell = Cell(line.parameter, 0 if line.station is None else names.index(line.station))
        plan[cell] = value_at(moved, cell.name, cell.row)
    trials, whose = [plan], []
    for cell, value in plan.items():
        for option in domain(stations, block, cell, BOOK):
            if str(option.value) == str(value):
                break
            if not isinstance(value, tuple) or parameter(cell.name).change == "class":
                trials.append({**plan, cell: option.value})
                whose.append((cell, option.value))
    found = try_out(stations, block, trials, BOOK).grade
    for n, entry in enumerate(whose, 1):
        lost = (found[n] == -1) & (found[0] != -1)
        assert ((found[n] > np.maximum(found[0], 0)) | lost).any(), entry


def test_a_machine_that_passes_is_not_searched():
    from tests.designs.complete import complete_design

    design = next(d for d in map(complete_design, range(40)) if result_of(list(d.rows), BOOK).gate == "open")
    result = result_of(list(design.rows), BOOK)
    assert with_plan(result, design.stations(), BOOK) is result
    assert result.plan == () and result.plan_result is None


def test_the_same_machine_gets_the_same_plan_alone_and_among_others():
    designs = list(faulty_machines(5, SEEDS, BOOK, drawing=True))
    rows = [dict(row) for design in designs for row in design.rows]
    together = with_plan(result_of(rows, BOOK), stations_from_rows(rows), BOOK)
    for design in designs:
        alone = with_plan(result_of(list(design.rows), BOOK), design.stations(), BOOK)
        mine = [line for line in together.plan if line.machine == design.rows[0]["machine"]]
        assert [(x.station, x.parameter, x.after) for x in alone.plan] == [
            (x.station, x.parameter, x.after) for x in mine
        ]


def test_what_is_kept_stays_and_what_is_freed_may_move():
    (design,) = faulty_machines(1, SEEDS, BOOK, drawing=True)
    stations, result = design.stations(), result_of(list(design.rows), BOOK)
    moved = {line.parameter for line in with_plan(result, stations, BOOK).plan}
    kept = with_plan(result, stations, BOOK, Movable.of(keep=sorted(moved)))
    assert not moved & {line.parameter for line in kept.plan}


@pytest.mark.parametrize(
    ("keep", "free", "said"),
    [
        (["shaft_seat_diametre"], [], "--keep shaft_seat_diametre: no parameter of that name; is shaft_seat_diameter"),
        ([], ["nothing_like_it"], "--free nothing_like_it: no parameter of that name"),
        ([], ["spacer_stack"], "--free spacer_stack: a text"),
        (["closure"], ["closure"], "--free names it too"),
    ],
)
def test_unknown_names_are_refused(keep, free, said):
    with pytest.raises(ValueError, match=said):
        Movable.of(keep, free)


def test_a_freed_decision_is_part_of_the_plan():
    import random

    from tests.designs.complete import complete_design
    from tests.designs.faults import FAULTS

    fault = FAULTS["solid film in a fast bearing"]
    for seed in range(200):
        design = complete_design(seed)
        if fault.needed(design) and result_of(list(design.rows), BOOK).gate == "open":
            break
    design = fault.plant(design, random.Random(1))
    stations, result = design.stations(), result_of(list(design.rows), BOOK)
    bound = with_plan(result, stations, BOOK)
    assert bound.plan_result is not None and bound.plan_result.gate == "closed"
    assert any(c.parameter == "lubrication" for d in bound.decisions if d.gate == "open" for c in d.changes)
    (machine,) = bound.plan_result.machines
    assert any(f.parameter == "lubrication" for conflict in machine.conflicts for f in conflict.facts)
    freed = with_plan(result, stations, BOOK, Movable.of(free=["lubrication"]))
    assert freed.plan_result is not None and freed.plan_result.gate == "open"
    assert [line.parameter for line in freed.plan] == ["lubrication"]


def test_a_concession_closes_no_gate_and_is_not_exceeded():
    (design,) = faulty_machines(1, SEEDS, BOOK, drawing=True)
    result = result_of(list(design.rows), BOOK)
    from attrs import evolve

    given = evolve(
        result,
        assessments=tuple(
            evolve(a, outcome="conceded", concession="C-1") if a in result.closing else a for a in result.assessments
        ),
    )
    assert with_plan(given, design.stations(), BOOK) is given


def test_trials_are_judged_as_a_review_judges_them():
    (design,) = faulty_machines(1, SEEDS, BOOK, drawing=True)
    stations = design.stations()
    found = try_out(stations, machine_block(stations, 0), [{}], BOOK)
    names = [str(n) for n in stations.text("station")]
    clauses = [c.id for c in BOOK.clauses.values() if c.off is None]
    for (clause, station), grade in grades(result_of(list(design.rows), BOOK)).items():
        row = 0 if station is None else names.index(station)
        assert found.grade[0, clauses.index(clause), row] == grade


def test_of_many_machines_the_gravest_have_a_plan_and_a_note_says_so():
    folder = Path(linter.__file__).parents[1] / "sample_exports"
    readings = [read_table(folder / name) for name in ("respirator-blower.xlsx", "conveyor-idler.json")]
    whole = evolve(readings[0], stations=Stations.concat([reading.stations for reading in readings]))
    book = load("2026.3")
    result = review_reading(whole, book)
    assert len({item.machine for item in result.closing}) == 2
    found = planned.with_plan(result, whole.stations, book, most=1)
    gravest = max(
        {item.machine for item in result.closing},
        key=lambda name: [
            sum(item.machine == name and item.severity == severity for item in result.assessments)
            for severity in ("critical", "major", "minor")
        ],
    )
    assert {line.machine for line in found.plan} == {gravest}
    assert found.notes[-1].endswith("; 1 more has findings that close the gate.")
    assert found.plan_result is not None and found.plan_result.gate == "closed"
    both = planned.with_plan(result, whole.stations, book, most=None)
    assert both.notes == result.notes
    assert [line for line in both.plan if line.machine == gravest] != []
