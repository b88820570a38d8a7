"""Findings of one cause are told once, and none is lost."""

import re
from itertools import permutations

import pytest
from attrs import evolve

from linter.model.findings import SEVERITIES, Cause, Change, Quantity, Used
from linter.model.places import Place
from linter.report.cells import same_change
from linter.report.entries import entries_of, same_observed
from linter.report.html import html_text, limits_text
from linter.report.pages import report_of


def pick(sample, clause, station="A"):
    return next(a for a in sample.assessments if (a.clause, a.machine, a.station) == (clause, "blower", station))


def found(sample):
    return [a for a in sample.assessments if a.outcome in ("finding", "conceded")]


def test_numbers_run_by_gravity_and_concessions_come_last(sample):
    entries = entries_of(found(sample))
    grades = [(e.item.outcome == "conceded", SEVERITIES.index(e.item.severity)) for e in entries]
    assert grades == sorted(grades) and len(set(grades)) > 3
    assert [e.number for e in entries] == list(range(1, len(entries) + 1))


def test_equal_findings_of_two_stations_are_one_entry_and_of_two_machines_are_not(sample):
    entries = [e for e in entries_of(found(sample)) if e.item.clause == "shoulder.fillet"]
    assert [(e.item.machine, [i.station for i in e.items]) for e in entries] == [
        ("blower", ["A", "B"]), ("fan", ["A", "B"]),
    ]  # fmt: skip


def test_figures_and_names_may_differ_words_and_severity_may_not(sample):
    a = evolve(pick(sample, "shoulder.fillet"), message="At A the fillet of 0.3 mm is beside Seats D20")
    for b, count in (
        (evolve(a, station="B", message="At B the fillet of −0.25 mm is beside Seats E20"), 1),
        (evolve(a, station="B", message="At B the fillet of 0.3 mm is under Seats D20"), 2),
        (evolve(a, station="B", severity="major"), 2),
        (evolve(a, station="B", outcome="conceded"), 2),
        (evolve(a, station="B", clause="speed.factor"), 2),
    ):
        assert len(entries_of([a, b])) == count


def test_what_follows_is_under_its_cause_in_any_order(sample):
    cause = pick(sample, "fit.shaft-class")
    first = evolve(pick(sample, "fit.running-clearance"), follows=Cause("fit.shaft-class", "A"))
    second = evolve(pick(sample, "speed.factor"), follows=Cause("fit.running-clearance", "A"))
    for order in permutations((cause, first, second)):
        (entry,) = entries_of(order)
        assert entry.item is cause and [e.item for e in entry.following] == [first, second]
        assert {e.number for e in entry.following} == {1}


def test_a_machine_follows_a_station_that_is_not_named(sample):
    cause = evolve(pick(sample, "fit.shaft-class"), severity="major")
    below = evolve(pick(sample, "preload.minimum", None), follows=Cause("fit.shaft-class", None))
    (entry,) = entries_of([below, cause])
    assert entry.item is cause and [e.item for e in entry.following] == [below]


def test_a_conceded_a_milder_and_an_absent_cause_explain_nothing_and_a_circle_ends(sample):
    cause = pick(sample, "fit.shaft-class")
    below = evolve(pick(sample, "shoulder.fillet"), severity="major", follows=Cause("fit.shaft-class", "A"))
    assert len(entries_of([cause, below])) == 1
    assert len(entries_of([evolve(cause, outcome="conceded"), below])) == 2
    assert len(entries_of([evolve(cause, severity="minor"), below])) == 2
    assert len(entries_of([evolve(cause, machine="fan"), below])) == 2
    assert len(entries_of([below])) == 1
    circle = [evolve(cause, follows=Cause("shoulder.fillet", "A")), below]
    assert sorted(i.clause for e in entries_of(circle) for i in e.everything) == ["fit.shaft-class", "shoulder.fillet"]


def test_the_page_tells_both_figures_and_what_follows(sample, rulebook, strict):
    cause = pick(sample, "fit.shaft-class")
    other = evolve(
        cause,
        station="B",
        message=cause.message.replace("is 5 µm", "is 7 µm"),
        observed=Quantity(-7.0, "um"),
        places=(Used("shaft_seat_diameter", Place("x.xlsx", "Seats", "E14"), "4 h5"),),
    )
    below = evolve(pick(sample, "fit.running-clearance"), follows=Cause("fit.shaft-class", "A"))
    result = evolve(sample, assessments=(cause, other, below), machines=sample.machines[:1])
    report = report_of(result, rulebook, "full")
    assert report.counted == "2 findings (3 with each position counted), of which 1 follows from others."
    seen = strict(html_text(result, rulebook))
    text = " ".join("".join(seen.text).split())
    assert [i for i in seen.ids if re.fullmatch(r"f\d+", i)] == ["f1"]
    for part in ("A and B", "The smallest fit is 5 µm", "The smallest fit is 7 µm", "−5 µm", "−7 µm", below.message):
        assert part in text
    assert "Seats D14, Seats E14 shaft seat diameter h5 → k5" in text
    assert len(same_observed((cause, other))) == 2 and len(same_observed((cause, evolve(other, observed=None)))) == 2


def test_answers_come_before_hashes_workings_and_signature(sample, rulebook):
    page = html_text(sample, rulebook, date="2026-11-25")
    order = [
        "The gate is closed",
        "What to change",
        'href="#f1"',
        "What is not known",
        'id="f1"',
        "SHA-256 of the table",
    ]
    order += ["Signatures", "Cautions", 'class="appendix"', 'class="working"', "The table as understood"]
    at = [page.index(part, page.index("<main")) for part in order]
    assert at == sorted(at)


def test_figures_have_three_digits_while_they_tell_value_and_limit_apart(sample):
    item = pick(sample, "fit.shaft-class")
    assert limits_text(evolve(item, observed=Quantity(-19.483, "um"))) == ("−19.5\u00a0µm", "at least 0\u00a0µm")
    near = evolve(item, observed=Quantity(5.004, "um"), lower=Quantity(5.003, "um"))
    assert limits_text(near)[0] == "5\u00a0µm" or limits_text(near)[0] not in limits_text(near)[1]
    close = evolve(item, observed=Quantity(12.94, "N"), lower=None, upper=Quantity(12.91, "N"))
    assert limits_text(close) == ("12.94\u00a0N", "at most 12.91\u00a0N")
    count = evolve(item, observed=Quantity(2.0, "1"), lower=None, upper=Quantity(0.0, "1"))
    assert limits_text(count) == ("", "") == limits_text(evolve(item, observed=None))
    assert limits_text(evolve(item, observed=Quantity(0.2125, "mm")))[0] == "0.2125\u00a0mm"


def test_findings_with_the_same_changes_or_remedy_stand_together(sample):
    item = evolve(pick(sample, "fit.shaft-class"), clears_with=(Change("a", 1, "", "one", True, 1),))
    other_line = evolve(item, station="B", clears_with=(Change("a", 1, "", "one", True, 2),))
    assert same_change([item, other_line, evolve(item, clears_with=())]) == (
        (item, other_line),
        (evolve(item, clears_with=()),),
    )


@pytest.mark.parametrize(
    ("quantity", "observed", "lower", "upper", "said"),
    [
        ("smallest interference", -7.0, 0.0, None, ("7 µm clearance", "no clearance")),
        ("smallest clearance", -7.0, 0.0, None, ("7 µm interference", "no interference")),
        ("narrowest gap", -27.0, 10.2, None, ("27 µm interference", "at least 10.2 µm clearance")),
        ("narrowest gap", 3.0, 10.2, None, ("narrowest gap 3 µm", "at least 10.2 µm")),
    ],
)
def test_a_limit_says_of_what_it_is_where_the_value_is_of_the_other_kind(
    sample, quantity, observed, lower, upper, said
):
    def of(value):
        return None if value is None else Quantity(value, "um")

    item = evolve(
        sample.assessments[0], observed=of(observed), lower=of(lower), upper=of(upper), quantity=quantity, places=()
    )
    assert tuple(text.replace("\u00a0", " ") for text in limits_text(item)) == said
