"""Every worked case of every version: they are the rulebook's documentation and its tests."""

import pytest

from linter.review.assess import assess
from linter.review.cases import case_stations, worked_cases
from linter.review.records import assessments
from linter.rulebook.load import load, released_versions

CASES = [
    pytest.param(version, case, id=f"{version} {name}: {case['title']}")
    for version in released_versions()
    for name in load(version).clauses
    for case in worked_cases(load(version), name)
]
CLAUSES = [(version, clause) for version in released_versions() for clause in load(version).clauses]


@pytest.mark.parametrize(("version", "case"), CASES)
def test_worked_case(version, case):
    assessed = assess(case_stations(case), load(version))
    found = [
        a for a in assessments(assessed)
        if a.clause == case["clause"] and (a.station is None or a.station == case.get("station", "A"))
    ]  # fmt: skip
    assert len(found) == 1
    (record,) = found
    assert (record.outcome, record.severity) == (case["outcome"], case.get("severity"))
    if "observed" in case:
        assert record.observed.value == pytest.approx(case["observed"], rel=1e-6)
    if "message" in case:
        assert record.message.replace("\u00a0", " ") == case["message"].replace("\u00a0", " ")
    assert "{" not in record.message + record.remedy


@pytest.mark.parametrize(("version", "clause"), CLAUSES)
def test_every_clause_has_worked_cases(version, clause):
    kinds = {case["kind"] for case in worked_cases(load(version), clause)}
    assert {"clear", "limit", "beyond"} <= kinds
