"""Every worked case of the rulebook in the making: they are its documentation and its tests."""

from collections import Counter

import pytest

from linter.review.assess import assess
from linter.review.cases import case_stations, worked_cases
from linter.review.records import assessments
from linter.rulebook.load import load, stated_cases
from linter.rulebook.model import RulebookError

BOOK = load("current")
CASES = [pytest.param(case, id=f"{case['clause']}: {case['title']}") for case in stated_cases("current")]


@pytest.mark.parametrize("case", CASES)
def test_worked_case(case):
    found = [
        a for a in assessments(assess(case_stations(case), BOOK))
        if a.clause == case["clause"] and (a.station is None or a.station == case.get("station", "A"))
    ]  # fmt: skip
    assert len(found) == 1
    (record,) = found
    told = "the case states one thing (ruleset/current/cases/*.toml), the program says another: who is right?"
    assert (record.outcome, record.severity) == (case["outcome"], case.get("severity")), told
    if "observed" in case:
        assert record.observed.value == pytest.approx(case["observed"], rel=1e-6), told
    if "message" in case:
        said, stated = (text.replace("\u00a0", " ") for text in (record.message, case["message"]))
        assert said == stated, f"{told}\nsaid:   {said}\nstated: {stated}"
    assert "{" not in record.message + record.remedy


@pytest.mark.parametrize(
    ("stated", "told"),
    [
        ({"shaft_seat_diameter": "8k5"}, "'8k5' is not a size as a case states it"),
        ({"shaft_seat": 8}, "schemas/vocabulary.csv"),
    ],
)
def test_a_case_that_cannot_be_read_is_named(stated, told):
    named = r"^cases/\*\.toml: clause fit\.grade: stations of the case 'sharp'"
    with pytest.raises(RulebookError, match=named) as caught:
        case_stations({"clause": "fit.grade", "title": "sharp", "stations": [stated]})
    assert told in str(caught.value)


@pytest.mark.parametrize("clause", list(BOOK.clauses))
def test_every_clause_has_worked_cases(clause):
    kinds = {case["kind"] for case in worked_cases(BOOK, clause)}
    wanted = {"clear", "limit", "beyond"} - kinds
    assert wanted == set(), f"add cases of these kinds for {clause} to ruleset/current/cases/*.toml"


def test_every_case_is_of_a_clause_has_a_title_of_its_own_and_says_what_is_reported():
    titles = Counter((case["clause"], case["title"]) for case in stated_cases("current"))
    assert {clause for clause, _ in titles} == set(BOOK.clauses)
    assert [title for title, count in titles.items() if count > 1] == []
    silent = [(case["clause"], case["title"]) for case in stated_cases("current") if not case.get("message")]
    assert silent == [], "state what the report says (message) in ruleset/current/cases/*.toml"
