"""Laws of a verdict over generated designs: nothing is met that is not known, and every result can be written."""

import json
import random

import numpy as np
import pytest
from attrs import evolve

from linter.checks.shared.base import Result
from linter.model.stations import stations_from_rows
from linter.model.vocabulary import vocabulary
from linter.report.result_json import result_text
from linter.review import assess as module
from linter.review.assess import MET, NOT_ASSESSED, assess
from linter.review.records import assessments, review_reading
from linter.rulebook.load import load
from tests.designs.complete import complete_design

BOOK = load("current")
#: Values that no designer means, and that a table states all the same.
ODD = (0.0, -1.0, 1e-12, 1e9, 1e300, 1e308, 1.7976931348623157e308, -1e308, 13_500.0)
NUMBERS = [e for e in vocabulary().values() if e.kind in ("number", "toleranced")]


class Read:
    """What the reading of a file gives, for stations that are made here."""

    file, sha256, layout, unused, notes, understood = "made.csv", "0" * 64, "made", (), (), ()

    def __init__(self, stations):
        self.stations = stations

    def cells(self, rows=None):
        return iter(())


def spoilt(seed: int):
    """A complete design with up to three values put out of all bounds, or taken away."""
    rng = random.Random(seed)
    rows = [dict(row) for row in complete_design(seed).rows]
    for _ in range(rng.randint(1, 3)):
        entry, row = rng.choice(NUMBERS), rng.choice(rows)
        value = rng.choice((*ODD, None))
        for each in rows if entry.level == "machine" else [row]:
            each[entry.name] = value
    return stations_from_rows(rows)


@pytest.mark.parametrize("start", [0, *(pytest.param(k, marks=pytest.mark.slow) for k in range(40, 240, 40))])
def test_nothing_is_met_that_is_not_known_and_every_result_is_written(start):
    for seed in range(start, start + 40):
        result = review_reading(Read(spoilt(seed)), BOOK, full=True)
        assert result.failures == (), seed
        for record in result.assessments:
            if record.outcome == "met":
                assert "not known" not in record.message, (seed, record.clause, record.message)
                assert "nan" not in record.message.split(), (seed, record.clause, record.message)
        content = json.loads(result_text(result))
        assert content["summary"]["gate"] in ("open", "closed", "undecided")


@pytest.mark.parametrize("outcome", [NOT_ASSESSED, MET])
def test_a_measure_that_is_not_a_number_is_not_assessed(outcome, monkeypatch):
    """Whatever a check leaves out: a row without a measure is never met."""
    measure = np.array([0.0 if outcome == MET else np.nan])
    monkeypatch.setattr(module, "check_function", lambda name: lambda view, limits: Result(measure=measure))
    clause = evolve(BOOK.clauses["speed.factor"], needs=())
    stations = stations_from_rows([{"bore_diameter": 8.0}])
    review = assess(stations, evolve(BOOK, clauses={clause.id: clause})).reviews[clause.id]
    assert review.outcome.tolist() == [outcome]


def test_a_complete_design_is_decided():
    """None of 40 complete designs is undecided, and an open one is open for every gate from its gravest finding up."""
    gates = [review_reading(Read(complete_design(seed).stations()), BOOK).gate for seed in range(40)]
    assert gates.count("undecided") == 0 and gates.count("open") > 0


@pytest.mark.parametrize("start", [0, *(pytest.param(k, marks=pytest.mark.slow) for k in (20, 40))])
def test_a_value_taken_from_a_closed_design_never_opens_its_gate(start):
    """Every value that stands for itself, one at a time: with a documented default or not, the gate does not open."""
    for seed in range(start, start + 20):
        rng = random.Random(seed)
        design = complete_design(seed)
        rows = [dict(row) for row in design.rows]
        rows[0]["shaft_seat_diameter"] = [rows[0]["bore_diameter"] + 0.5, "h6"]  # the nominal of another bearing
        assert review_reading(Read(stations_from_rows(rows)), BOOK).gate == "closed"
        names = sorted(name for name in rows[0] if name not in ("machine", "station"))
        for name in rng.sample(names, 6):
            lost = [{key: value for key, value in row.items() if key != name} for row in rows]
            result = review_reading(Read(stations_from_rows(lost)), BOOK)
            assert result.gate != "open", (seed, name)


def test_assumed_values_of_a_check_that_are_no_numbers_are_left_out():
    from linter.checks.shared.base import Assumes

    stations = stations_from_rows([{"bore_diameter": 8.0}])
    clause = evolve(BOOK.clauses["speed.factor"], needs=(), uses=())
    assessed = assess(stations, evolve(BOOK, clauses={clause.id: clause}))
    found = assessed.reviews[clause.id]
    assert found.result is not None
    every = np.array([True])
    assumed = [Assumes("cage", np.array([v]), "mm", "because", every) for v in (np.nan, np.inf, 2.0)]
    changed = evolve(found, result=evolve(found.result, assumed=assumed))
    (record,) = assessments(evolve(assessed, reviews={clause.id: changed}))
    assert [a.value for a in record.assumed] == [2.0]
