"""Laws of the gate, over designs made from seeds: it opens on what was judged and on nothing else.

Each law stands beside a test that takes its defence out of the rulebook or the program and sees the law broken, so that
a law that holds by accident shows. The wide runs are marked slow; ``python -m tests.designs.sweep`` runs wider ones.
"""

import csv
import random
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from attrs import evolve

from linter.model.findings import SEVERITIES
from linter.model.stations import stations_from_rows
from linter.reading import read_table
from linter.review.assess import FINDING, MET, NOT_ASSESSED, assess
from linter.review.defaults import with_defaults
from linter.review.records import assessments, review_reading
from linter.rulebook.load import CURRENT, load
from linter.rulebook.model import Rulebook
from tests.designs import gone, sweep
from tests.designs.complete import complete_design
from tests.designs.directions import worsenings
from tests.designs.faults import FAULTS, faults_for
from tests.designs.spoil import STATION_WAYS, VALUE_WAYS, without_station
from tests.designs.sweep import Outcome, batched, blanked, carried, read_gate

BOOK = load(CURRENT)
ROOT = Path(__file__).parents[1]


def without_musts() -> Rulebook:
    """The rulebook in which no clause about a seat has to be judged."""
    clauses = {name: evolve(clause, gate="may", must_when=()) for name, clause in BOOK.clauses.items()}
    return evolve(BOOK, clauses=clauses)


def without(*names: str) -> Rulebook:
    """The rulebook without some clauses."""
    return evolve(BOOK, clauses={name: clause for name, clause in BOOK.clauses.items() if name not in names})


def none_open(found: Outcome) -> None:
    assert found.counts["open"] == 0, found.text(5)


# ------------------------------------------------------------------------------------------------ values that are gone


def test_a_value_taken_away_opens_no_gate():
    none_open(sweep.sweep_blank(300, 5, BOOK))


@pytest.mark.slow
def test_a_value_taken_away_opens_no_gate_of_many():
    none_open(sweep.sweep_blank(6000, 6, BOOK))


def test_it_would_open_if_nothing_had_to_be_judged():
    assert sweep.sweep_blank(300, 5, without_musts()).counts["open"] > 5


def test_a_value_spoilt_in_the_table_opens_no_gate():
    none_open(sweep.sweep_spoil(2 * len(VALUE_WAYS), 5, BOOK))


@pytest.mark.slow
def test_a_value_spoilt_in_the_table_opens_no_gate_of_many():
    none_open(sweep.sweep_spoil(10 * len(VALUE_WAYS), 6, BOOK))


@pytest.mark.slow
def test_spoilt_values_would_open_it_if_nothing_had_to_be_judged():
    assert sweep.sweep_spoil(10 * len(VALUE_WAYS), 6, without_musts()).counts["open"] > 0


#: Gates that opened once: the design, its fault, the value that was taken away, and at which positions.
OPENED = [
    (41000042, "shaft shoulder not square", "shaft_shoulder_runout", 1),
    (51001862, "shaft shoulder reaches the outer ring", "shaft_shoulder_diameter", 1),
    (52000240, "shaft shoulder not square", "shaft_shoulder_runout", 1),
    (61005042, "unbalance outweighs the load on a loose outer ring", "rotor_mass", None),
    (61005350, "unbalance outweighs the load on a loose outer ring", "rotor_mass", 0),
]


@pytest.mark.parametrize(("seed", "name", "gone", "station"), OPENED)
def test_a_gate_that_opened_once_stays_shut(seed, name, gone, station):
    design = complete_design(seed)
    for position in range(2):
        rows = [dict(row) for row in design.rows]
        if gone == "shaft_shoulder_runout":
            rows[position][gone] = 0.08  # also beside a ring that is free
        else:
            FAULTS[name].change(rows, random.Random(1), position)
        faulty = design.with_rows(rows)
        before, after = (sweep.result_of(own, BOOK).gate for own in (rows, blanked(faulty, gone, station)))
        assert after != "open" or before == "open"


def test_what_passes_more_easily_without_a_value_is_told_or_undecided():
    found = gone.sweep_milder(8, 5, BOOK, gone.TABLES[1:2])
    assert found.counts["milder and untold"] == 0, found.text(5)


@pytest.mark.slow
def test_what_passes_more_easily_without_a_value_is_told_or_undecided_in_many():
    found = gone.sweep_milder(20, 6, BOOK)
    assert found.counts["milder and untold"] == 0, found.text(5)


def test_it_is_seen_when_what_stands_in_is_not_told(monkeypatch):
    monkeypatch.setattr(gone.Seen, "_told", lambda self, review, judged: None)
    assert gone.sweep_milder(2, 5, BOOK, ()).counts["milder and untold"] > 5


@pytest.mark.slow
def test_a_value_of_a_demo_table_that_is_gone_opens_no_gate():
    none_open(gone.sweep_tables(80, 6, BOOK))


def test_an_open_gate_counts_what_was_assumed():
    rested = 0
    for design, v, k in batched(
        [(d, blanked(d, "coaxiality_of_bores", None)) for d in map(complete_design, range(40))], BOOK
    ):
        if v.gates[k] == "open":
            result = sweep.result_of(blanked(design, "coaxiality_of_bores", None), BOOK)
            assert carried(result, "coaxiality_of_bores") and result.carried >= 1
            rested += 1
    assert rested > 10


# --------------------------------------------------------------------------------------------- positions that are gone


def test_a_lost_station_opens_no_gate():
    none_open(sweep.sweep_station(2 * len(STATION_WAYS), 5, BOOK))


@pytest.mark.slow
def test_a_lost_station_opens_no_gate_of_many():
    none_open(sweep.sweep_station(10 * len(STATION_WAYS), 6, BOOK))


def test_a_lost_row_would_open_it_if_nobody_asked_for_the_position(tmp_path):
    def gates(book):
        for seed in range(12):
            suffix, content = without_station(complete_design(seed), 1, "row deleted")
            yield read_gate(suffix, content, book, tmp_path)

    assert set(gates(BOOK)) == {"closed"}
    assert "open" in set(gates(without("table.positions")))


# ------------------------------------------------------------------------------------------------ met


def met_rows(rows):
    """Every clause that is met somewhere, with the rows."""
    assessed = assess(stations_from_rows(rows), BOOK)
    return assessed, [(name, review, review.outcome == MET) for name, review in assessed.reviews.items()]


def test_what_is_met_was_measured_and_is_told():
    rng = random.Random(4)
    rows = []
    for seed in range(120):
        design = complete_design(seed)
        if seed % 2:
            design = rng.choice(faults_for(design)).plant(design, rng)
        own = blanked(design, rng.choice(design.stated[2:]), rng.choice((0, 1, None))) if seed % 3 else design.rows
        rows += [{**row, "machine": f"{seed}"} for row in own]
    assessed, reviews = met_rows(rows)
    for name, review, met in reviews:
        assert not np.isnan(review.result.measure[met]).any(), name
    for record in assessments(assessed, outcomes=["met"]):
        assert "not known" not in record.message, (record.clause, record.message)
        assert "not stated" not in record.message, (record.clause, record.message)


@pytest.mark.parametrize("clause", ["shoulder.other-ring", "shoulder.pressure", "alignment.roughness", "fit.mounting"])
def test_a_side_that_cannot_be_judged_is_not_met(clause):
    """Bores beyond every limit table and values of nothing: never met by the side that is left."""
    beyond = {"bore_diameter": 3500, "outside_diameter": 4500, "shaft_shoulder_diameter": 3700}
    beyond |= {"housing_shoulder_diameter": 4300, "shaft_seat_diameter": [3500, -0.01, 0.01]}
    beyond |= {"housing_seat_diameter": [4500, 0.0, 0.05]}
    for change in (beyond, {"ring_width": None}, {"ring_chamfer": 0}, {"shaft_seat_roughness": 0}):
        rows = [{**row, **change} for row in complete_design(3).rows]
        review = assess(stations_from_rows(rows), BOOK).reviews[clause]
        met = review.outcome == MET
        assert review.failure is None
        for record in assessments(assess(stations_from_rows(rows), BOOK), outcomes=["met"]):
            assert record.clause != clause or "not known" not in record.message
        assert not np.isnan(review.result.measure[met]).any()


# ------------------------------------------------------------------------------------------------ worse is not better


def no_milder(found: Outcome) -> None:
    assert found.counts["milder"] == found.counts["gate opened"] == found.counts["no design"] == 0, found.text(5)


def test_a_worse_value_never_turns_a_clause_milder():
    no_milder(sweep.sweep_metamorphic(4 * len(worsenings()), 5, BOOK))


@pytest.mark.slow
def test_a_worse_value_never_turns_a_clause_milder_in_many():
    no_milder(sweep.sweep_metamorphic(200 * len(worsenings()), 6, BOOK))


def test_a_direction_turned_round_is_seen(monkeypatch):
    other = {"higher": "lower", "lower": "higher"}
    turned = tuple(replace(e, direction=other[e.direction]) for e in worsenings() if e.direction in other)
    monkeypatch.setattr(sweep, "worsenings", lambda: turned)
    assert sweep.sweep_metamorphic(4 * len(turned), 5, BOOK).counts["milder"] > 0


#: Values beyond where a formula or a table ends, on the bad side: a complete design, what is changed, who must say so.
BEYOND = [
    ("life.film", {"operating_temperature": 250, "base_oil_viscosity_40": 5, "base_oil_viscosity_100": 1.5}),
    ("life.film", {"operating_temperature": 340}),
    ("life.grease", {"speed_max": 400_000, "speed_operating": 400_000}),
    ("fit.inner-stress", {"speed_max": 1_500_000}),
    ("fit.inner-hold", {"speed_max": 1_500_000}),
    ("shoulder.pressure", {"ring_chamfer": 8.0}),
    ("speed.factor", {"speed_max": 2_900_000}),
    ("preload.force", {"spring_rate": 0.001}),
]


@pytest.mark.parametrize(("clause", "change"), BEYOND)
def test_beyond_the_end_of_a_formula_closes_the_gate(clause, change):
    """Beyond its formulas and tables on the bad side a clause says the worst, never that it could not be assessed."""
    designs = [complete_design(seed) for seed in range(60)]
    designs = [
        d for d in designs if all(row["rotating_ring"] == "inner" and row.keys() >= set(change) for row in d.rows)
    ]
    rows = [{**row, "machine": str(k)} for k, design in enumerate(designs) for row in design.rows]
    before, after = (
        assess(stations_from_rows([{**row, **own} for row in rows]), BOOK).reviews[clause] for own in ({}, change)
    )
    judged = before.outcome <= FINDING
    assert judged.sum() > 3
    assert not (after.outcome[judged] == NOT_ASSESSED).any()
    worst = np.flatnonzero(judged & (after.outcome == FINDING))
    assert len(worst) > 0
    assert (after.severity[worst] <= SEVERITIES.index("major")).all()


# ------------------------------------------------------------------------------------------------ and it still opens


def test_complete_designs_are_decided():
    found = sweep.sweep_complete(80, 5, BOOK)
    assert found.counts["undecided"] == 0, found.text(5)
    assert found.counts["open"] > 0.9 * 80, found.text(5)


@pytest.mark.slow
def test_complete_designs_open():
    found = sweep.sweep_complete(300, 0, BOOK)
    assert found.counts["undecided"] == 0, found.text(5)
    assert found.counts["open"] >= 0.95 * 300, found.text(5)


def test_a_retention_taken_away_from_a_ring_that_moves_is_counted(tmp_path):
    """A clamp on the free ring closes the gate; without the cell it opens only as one more assumption, told by name."""

    def review(word: str | None):
        text = (ROOT / "sample_exports" / "coolant-pump.csv").read_text(encoding="utf-8")
        rows = list(csv.reader(text.splitlines()))
        if word is not None:
            rows[2][rows[0].index("outer_ring_retention")] = word
        path = tmp_path / "pump.csv"
        with path.open("w", encoding="utf-8", newline="") as stream:
            csv.writer(stream).writerows(rows)
        reading = read_table(path)
        return review_reading(evolve(reading, stations=with_defaults(reading.stations, BOOK)), BOOK)

    stated, clamped, blank = review(None), review("clamped"), review("")
    assert (stated.gate, clamped.gate) == ("open", "closed")
    assert blank.gate != "open" or blank.carried == stated.carried + 1
    (slides,) = [a for a in blank.assessments if a.clause == "fit.outer-slides" and a.station == "B"]
    assert [a.value for a in slides.assumed if a.parameter == "outer_ring_retention"] == ["none"]


@pytest.mark.parametrize(
    ("name", "far", "gate"),
    [
        ("washer_parallelism", "0.2", "open"), ("washer_flatness", "0.15", "open"),
        ("washer_inside_diameter", "1.22", "undecided"), ("washer_outside_diameter", "37", "undecided"),
    ],
)  # fmt: skip
def test_a_size_taken_away_from_a_washer_is_counted_or_asked_for(tmp_path, name, far, gate):
    """What a stated part lacks is wanted; where another value of it stands in, that is told and counted."""

    def review(word: str | None):
        text = (ROOT / "tests" / "golden" / "described_rotor.csv").read_text(encoding="utf-8")
        rows = list(csv.reader(text.splitlines()))
        if word is not None:
            rows[2][next(k for k, head in enumerate(rows[0]) if head.startswith(name))] = word
        path = tmp_path / "rotor.csv"
        with path.open("w", encoding="utf-8", newline="") as stream:
            csv.writer(stream).writerows(rows)
        reading = read_table(path)
        return review_reading(evolve(reading, stations=with_defaults(reading.stations, BOOK)), BOOK)

    stated, faulty, blank = review(None), review(far), review("")
    assert (stated.gate, faulty.gate, blank.gate) == ("open", "closed", gate)
    assert gate == "undecided" or blank.carried == stated.carried + 1
