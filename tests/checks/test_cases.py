"""Every worked case of the rulebook: they are its documentation and its tests."""

import tomllib

import pytest

from linter.packaged import data_folder
from linter.review import assess, assessments
from linter.rulebook import load
from linter.stations import stations_from_rows

VERSION = "2026.1"
CASES = [
    pytest.param(case, id=f"{case['clause']}: {case['title']}")
    for path in sorted((data_folder("ruleset") / VERSION / "cases").glob("*.toml"))
    for case in tomllib.loads(path.read_text(encoding="utf-8"))["cases"]
]


@pytest.mark.parametrize("case", CASES)
def test_worked_case(case):
    assessed = assess(stations_from_rows(case["stations"]), load(VERSION))
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


@pytest.mark.parametrize("clause", load(VERSION).clauses)
def test_every_clause_has_worked_cases(clause):
    kinds = {case.values[0]["kind"] for case in CASES if case.values[0]["clause"] == clause}
    assert {"clear", "limit", "beyond"} <= kinds
