"""Which clauses must be judged before the gate may open, under any rulebook."""

import numpy as np
import pytest
from attrs import evolve

from linter.checks.shared.base import View
from linter.model.stations import Problem, stations_from_rows
from linter.rulebook.differences import gravest
from linter.rulebook.gates import gate_text, is_milder, must_be_judged, must_rows
from linter.rulebook.load import load, released_versions

BOOK = load("current")
CLAUSE = BOOK.clauses["speed.spin"]
#: What no gate may ever do without, whatever severities a later rulebook gives it.
AT_LEAST = {
    "speed.factor", "fit.load-rotation", "fit.shaft-class", "fit.housing-class", "fit.running-clearance",
    "fit.free-ring", "fit.arrangement", "shoulder.shaft-height", "shoulder.housing-height", "shoulder.fillet",
    "alignment.stated", "preload.window", "life.rating", *(name for name in BOOK.clauses if name.startswith("table.")),
}  # fmt: skip


def _view(*rows):
    return View(stations_from_rows(list(rows)))


PAIR = ({"machine": "M", "station": "A"}, {"machine": "M", "station": "B"})
ALONE = {"machine": "N", "station": "A"}


@pytest.mark.parametrize("name", [*released_versions(), "current"])
def test_what_can_close_the_gate_must_be_judged(name):
    book = load(name)
    view = _view(*PAIR)
    for clause in book.clauses.values():
        rows = must_rows(clause, view)
        assert rows.shape == ((1,) if clause.level == "machine" else (2,))
        assert rows.dtype == bool
        if any(set(condition) != {"positions"} for condition in clause.must_when):
            assert not rows.any() and must_be_judged(clause)  # only where the table states what it is about
            continue
        wanted = gravest(clause) in ("major", "critical") or clause.chapter == "table"
        assert rows.all() == rows.any() == wanted == must_be_judged(clause), clause.id
    held = AT_LEAST & set(book.clauses)
    lacking = {"table.possible", "table.positions", "table.unused"}  # clauses that the releases before 2026.4 lack
    assert held >= AT_LEAST - lacking
    assert all(must_rows(book.clauses[name], view).all() for name in held)


@pytest.mark.parametrize("closes", ["critical", "major", "minor", "remark"])
def test_a_lower_gate_asks_for_more_and_a_higher_one_for_no_less(closes):
    judged = {name for name, clause in BOOK.clauses.items() if must_be_judged(clause, closes)}
    assert judged >= {name for name, clause in BOOK.clauses.items() if must_be_judged(clause)}
    if closes in ("minor", "remark"):
        assert "speed.spin" in judged
    if closes == "remark":
        assert judged == set(BOOK.clauses)


def test_clauses_of_a_pair_do_not_hold_up_a_position_alone():
    view = _view(*PAIR, ALONE)
    assert must_rows(BOOK.clauses["fit.axial-float"], view).tolist() == [True, False]
    assert must_rows(BOOK.clauses["alignment.tilt"], view).tolist() == [True, True, False]
    assert must_rows(BOOK.clauses["speed.factor"], view).tolist() == [True, True, True]


def test_heat_is_judged_where_the_table_states_a_cooling_or_a_cycle():
    cooled = _view(PAIR[0], {**PAIR[1], "cooling_factor": 0.1})
    assert must_rows(BOOK.clauses["heat.reference-speed"], cooled).tolist() == [False, True]
    assert must_rows(BOOK.clauses["heat.balance"], cooled).tolist() == [False, False]
    warm = _view(PAIR[0], {**PAIR[1], "cooling_factor": 0.1, "operating_temperature": 60})
    assert must_rows(BOOK.clauses["heat.balance"], warm).tolist() == [False, True]
    cycle = {"on_time": 60, "off_time": 60, "heat_capacity": 40}
    for duty, judged in (("intermittent", True), ("continuous", False)):
        rows = [{**row, **cycle, "duty": duty} for row in PAIR]
        assert must_rows(BOOK.clauses["heat.cycle"], _view(*rows)).tolist() == [judged]


def test_a_clause_says_otherwise():
    view = _view(*PAIR)
    assert not must_rows(CLAUSE, view).any()
    assert must_rows(evolve(CLAUSE, gate="must"), view).all()
    assert not must_rows(evolve(BOOK.clauses["speed.seal"], gate="may"), view, "remark").any()
    assert must_rows(evolve(BOOK.clauses["table.read"], gate="may"), view).all()


def test_a_condition_on_what_is_stated():
    one = evolve(CLAUSE, must_when=({"speed_max": "stated"},))
    view = _view({**PAIR[0], "speed_max": 3000}, PAIR[1], ALONE)
    assert must_rows(one, view).tolist() == [True, False, False]
    machine = evolve(one, level="machine")
    assert must_rows(machine, view).tolist() == [True, False]


def test_a_condition_on_words_and_conditions_together():
    seal = evolve(CLAUSE, must_when=({"closure": ["contact seal", "shield"], "positions": 2}, {"duty": ["continuous"]}))
    view = _view(
        {**PAIR[0], "closure": "shield"}, {**PAIR[1], "closure": "open"}, {**ALONE, "closure": "contact seal"},
        {"machine": "O", "station": "A", "duty": "continuous"},
    )  # fmt: skip
    assert must_rows(seal, view).tolist() == [True, False, False, True]
    assert gate_text(seal) == (
        "closure contact seal or shield and of a machine with 2 or more positions; or duty continuous"
    )


@pytest.mark.parametrize("wanted", ["stated", ["shield"]])
def test_a_cell_that_cannot_be_used_may_state_what_the_condition_asks(wanted):
    clause = evolve(CLAUSE, must_when=({"closure": wanted},))
    stations = stations_from_rows([{**PAIR[0], "closure": "open"}, PAIR[1], ALONE])
    at = {"open": wanted == "stated"}
    assert must_rows(clause, View(stations)).tolist() == [at["open"], False, False]
    spoilt = Problem("unreadable", 1, "closure", None, "???", "a word", "not understood", "unknown-word")
    assert must_rows(clause, View(evolve(stations, problems=(spoilt,)))).tolist() == [at["open"], True, False]
    whole = evolve(spoilt, row=None)
    assert must_rows(clause, View(evolve(stations, problems=(whole,)))).tolist() == [at["open"], True, True]


def test_a_spoilt_value_of_the_machine_counts_at_each_of_its_positions():
    clause = evolve(CLAUSE, must_when=({"preload_method": ["spring"]},))
    spoilt = Problem("unreadable", 1, "preload_method", None, "???", "a word", "not understood", "unknown-word")
    stations = evolve(stations_from_rows([*PAIR, ALONE]), problems=(spoilt,))
    assert must_rows(clause, View(stations)).tolist() == [True, True, False]


MUST, MAY = evolve(CLAUSE, gate="must"), evolve(CLAUSE, gate="may")
IF = evolve(CLAUSE, must_when=({"duty": "stated"},))
OR = evolve(CLAUSE, must_when=({"duty": "stated"}, {"positions": 2}))


def test_which_change_is_milder():
    order = [MAY, IF, OR, MUST]
    milder = np.array([[is_milder(before, after) for after in order] for before in order])
    assert (milder == np.tril(np.ones((4, 4), bool), -1)).all()
