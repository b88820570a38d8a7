"""Laws that every clause of the rulebook obeys, whatever it is about."""

import re
from itertools import pairwise

import numpy as np
import pytest
from attrs import evolve

from linter.model.stations import stations_from_rows
from linter.model.vocabulary import vocabulary
from linter.review.assess import assess
from linter.review.cases import case_stations, worked_cases
from linter.review.records import assessments
from tests.laws import (
    ABSURD,
    BOOK,
    EVERY,
    REMOVALS,
    arrange,
    complete,
    moved_rows,
    moving,
    ranks,
    varied,
)

#: Clauses about what the reading left behind: there is always an answer, so that no row is ever not assessed.
ALWAYS_ASSESSED = {
    "table.identity",
    "table.agreement",
    "table.read",
    "table.interpretation",
    "table.class-agrees",
    "table.possible",
    "table.positions",
    "table.unused",
}
#: Clauses that are about every position or machine: no row of theirs is ever not applicable.
ABOUT_EVERY_POSITION = {
    "alignment.process",
    "table.identity",
    "table.agreement",
    "table.read",
    "table.interpretation",
    "table.unused",
    "table.nominals-agree",
    "table.plausible",
    "table.possible",
    "table.positions",
    "speed.factor",
    "speed.cage",
    "speed.maker-limit",
    "speed.lubricant-reaches",
    "fit.load-rotation",
    "fit.grade",
    "fit.arrangement",
    "fit.inner-stress",
    "fit.mounting",
    "alignment.stated",
    "alignment.cylindricity",
    "alignment.seat-runout",
    "alignment.shoulder-runout",
    "alignment.form-within-size",
    "alignment.roughness",
    "shoulder.stated",
    "shoulder.fillet",
    "shoulder.other-ring",
    "shoulder.pressure",
    "life.rating",
    "life.static",
    "rotor.unbalance",
    "rotor.balance-grade",
    "rotor.critical-speed",
}
MET, FINDING, NOT_ASSESSED, NOT_APPLICABLE = range(4)


@pytest.mark.parametrize("clause", EVERY)
def test_every_outcome_has_a_worked_case(clause):
    alone = evolve(BOOK, clauses={clause: BOOK.clauses[clause]})
    seen = set()
    for case in worked_cases(BOOK, clause):
        told = f"{case['title']}: state what the report says (message) in ruleset/current/cases/*.toml"
        assert case.get("message"), told
        assessed = assess(case_stations(case), alone)
        assert assessed.reviews[clause].failure is None
        records = [r for r in assessments(assessed) if r.station in (None, case.get("station", "A"))]
        seen |= {record.outcome for record in records}
    wanted = f"a worked case of {clause} in ruleset/current/cases/*.toml that is"
    assert {"finding", "met"} <= seen, f"{wanted} met, and one that is a finding"
    assert ("not assessed" in seen) != (clause in ALWAYS_ASSESSED), f"{wanted} not assessed (or ALWAYS_ASSESSED here)"
    asks = f"{wanted} not applicable (or ABOUT_EVERY_POSITION here)"
    assert ("not applicable" in seen) != (clause in ABOUT_EVERY_POSITION), asks


def test_clauses_about_every_position_apply_to_every_position():
    assessed = assess(complete(500), BOOK)
    for clause in ABOUT_EVERY_POSITION:
        assert not (assessed.reviews[clause].outcome == NOT_APPLICABLE).any(), clause
    for clause in ALWAYS_ASSESSED:
        assert not (assessed.reviews[clause].outcome == NOT_ASSESSED).any(), clause


def never_falls_again(found):
    """Severity may fall towards a good range and rise beyond it; it may not rise and then fall."""
    graded = found[found >= 0]
    steps = [int(np.sign(b - a)) for a, b in pairwise(graded) if a != b]
    return steps == sorted(steps)


#: Values that are looked up in a table, so that one of them is the row of the table and every other is none.
#: EP additives count from an e_C on that falls with the film, so that life has a step in between (ISO 281, 9.3.3).
LOOKED_UP = {
    ("table.boundary-dimensions", "ring_width"), ("life.rating", "speed_operating"), ("life.rating", "speed_max"),
    ("speed.factor", "contact_angle"),  # beyond 40 degrees it is no spindle bearing
    # where the bearings stand on a described shaft
    ("alignment.tilt", "bearing_span"),
}  # fmt: skip


@pytest.mark.parametrize("clause", EVERY)
def test_severity_never_drops_as_a_value_gets_worse(clause):
    entry = BOOK.clauses[clause]
    alone = evolve(BOOK, clauses={clause: entry})
    for case, index, name, way, values in moving(entry):
        if (clause, name) in LOOKED_UP or clause == "rotor.orders":  # two orders meet, or they do not
            continue
        rows = moved_rows(case, index, name, values)
        if clause == "rotor.critical-speed" and not any("first_critical_speed" in row for row in rows):
            continue  # a described rotor goes past two criticals, from either side
        assessed = assess(stations_from_rows(rows), alone)
        review = assessed.reviews[clause]
        assert review.failure is None
        found = ranks(review)
        if entry.level == "station":
            found = found[assessed.stations.text("station") == case.get("station", "A")]
        assert len(found) == len(values)
        told = f"{case['title']}: {name} {way}: {found}"
        sides = [np.full(len(found), True)]
        if clause == "rotor.critical-speed":  # the worst lies in the middle, and both ways lead off it
            s, starts = assessed.stations, assessed.view.starts
            above = (s.number("speed_max") > s.number("first_critical_speed"))[starts]
            sides = [above, ~above]
        for side in sides:
            assert never_falls_again(found[side]), told
        inside = np.flatnonzero(found >= 0)
        if len(inside):
            assert (found[inside[0] : inside[-1] + 1] >= 0).all(), told


def test_a_row_of_three_values_gets_no_verdict_that_needed_more():
    bare = stations_from_rows([{"bore_diameter": 25.0, "outside_diameter": 52.0, "speed_max": 10_000.0}])
    assessed = assess(bare, BOOK)
    _check_wants(assessed)
    verdicts = {k for k, r in assessed.reviews.items() if r.outcome[0] in (MET, FINDING)}
    # what the three values, or their being all there is, decide by themselves
    assert verdicts == {
        "table.identity", "table.agreement", "table.read", "table.interpretation", "table.plausible",
        "table.possible", "table.positions", "table.unused", "alignment.stated", "shoulder.stated",
    }  # fmt: skip
    for record in assessments(assessed, outcomes=["not assessed"]):
        assert record.missing, record.clause
        assert not {"bore_diameter", "outside_diameter", "speed_max"} & set(record.missing)
        assert record.remedy == "State " + _listed(record.missing) + "."


def _listed(names):
    return names[0] if len(names) == 1 else ", ".join(names[:-1]) + " and " + names[-1]


def _check_wants(assessed):
    """No check failed; wants name parameters; a verdict had all its needs; every row without one says what it lacks."""
    stations, view = assessed.stations, assessed.view
    for name, review in assessed.reviews.items():
        assert review.failure is None
        assert set(review.missing) <= set(vocabulary())
        judged = np.isin(review.outcome, (MET, FINDING))
        for need in review.clause.needs:
            known = stations.known(need)
            known = view.to_machines(known, "all") if review.clause.level == "machine" else known
            assert known[judged].all(), (name, need)
        assert not np.isnan(review.result.measure[judged]).any(), name
        for absent in review.missing.values():
            assert not absent[judged].any(), name


@pytest.mark.parametrize("machine", [0, 1, 2])
def test_any_one_value_may_be_missing(machine):
    assessed = assess(varied(machine, REMOVALS), BOOK)
    _check_wants(assessed)
    whole = assess(arrange(complete(40), [machine]), BOOK)
    for name, review in assessed.reviews.items():
        at_station = review.clause.level == "station"
        places = assessed.stations.machine_row if at_station else np.arange(len(REMOVALS))
        lacking = np.logical_or.reduce([*review.missing.values(), np.zeros(len(review.outcome), bool)])
        before = np.tile(whole.reviews[name].outcome, len(REMOVALS))
        # what had a verdict, or was not asked for, loses it only with the wants named
        lost = (review.outcome == NOT_ASSESSED) & (before != NOT_ASSESSED)
        assert lacking[lost].all(), (name, {REMOVALS[place][0] for place in places[lost & ~lacking]})


@pytest.mark.slow
@pytest.mark.parametrize("machine", [0, 1, 2])
def test_any_one_value_may_be_absurd(machine):
    assessed = assess(varied(machine, ABSURD), BOOK)
    _check_wants(assessed)
    for record in assessments(assessed):
        assert not re.search(r"[{}]|\bnan\b", record.message + record.remedy), record


def test_a_machine_alone_gets_the_verdict_that_it_gets_among_others():
    stations = complete(500)
    order = np.random.default_rng(7).permutation(len(stations.machines))
    together = assess(arrange(stations, list(order)), BOOK)
    for place in range(0, len(order), 25):
        alone = assess(arrange(stations, [order[place]]), BOOK)
        for name, review in together.reviews.items():
            machine = review.clause.level == "machine"
            rows = [place] if machine else np.flatnonzero(together.stations.machine_row == place)
            other = alone.reviews[name]
            np.testing.assert_array_equal(review.outcome[rows], other.outcome, err_msg=name)
            np.testing.assert_array_equal(review.severity[rows], other.severity, err_msg=name)
            np.testing.assert_allclose(review.result.measure[rows], other.result.measure, rtol=1e-9, err_msg=name)


_VALUE = r"(?<![\w.,/−±+\u00a0])([−±+]?\d[\d\u00a0.]*(?:\u00a0[^\W\d]\S*)?)"
FAULTS = {
    "a placeholder that was not filled": r"[{}]",
    "a value that is not there": r"\bnan\b|\bNone\b(?! of)|not known|\binf\b|unlimited",
    "two spaces": r"[ \u00a0]{2}",
    "a before a vowel": r"\b[Aa] (?=[aeioAEIO])|\b[Aa] u(?!ni|se)",
    "an before a consonant": r"\b[Aa]n (?=[b-df-gj-np-tv-z])",
    "a range of one value": _VALUE + r" to \1(?![\d\u00a0.])",
    "stray punctuation": r" [.,;:]|\.\.|,,|\( | \)|\(\)|;;|,\.",
    "a word twice": r"\b([A-Za-z]+) \1\b",
    "a negative length": r"length (?:of |to )?−",
}


def test_messages_and_remedies_read_as_sentences():
    records = assessments(assess(complete(400), BOOK))
    told = [(r.clause, text) for r in records for text in (r.message, r.remedy) if text]
    for fault, pattern in FAULTS.items():
        wrong = [(clause, text) for clause, text in told if re.search(pattern, text)]
        assert not wrong, (fault, wrong[:3])
    for record in records:
        assert record.message[0].isupper() or not record.message[0].isalpha(), record.message
        assert bool(record.remedy) == (record.outcome in ("finding", "not assessed")) or not record.missing, record
        assert not record.remedy or record.remedy.endswith("."), record.remedy
