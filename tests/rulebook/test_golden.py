"""What the rulebooks say of the tables in ``tests/golden``: a release says for ever what it said when it was released.

``python -m linter.refresh`` writes the table of the rulebook in the making; those of releases are never written again.
Tables are only added: a release is held to the machines that its own golden table names.
"""

import csv
from collections import Counter
from functools import cache
from pathlib import Path

import pytest

from linter.model.packaged import data_folder
from linter.reading import read_table
from linter.refresh import CASE, COLUMNS, case_rows, golden_rows
from linter.rulebook.load import load, released_versions, stated_cases

TABLES = sorted((Path(__file__).parents[1] / "golden").glob("*.csv"))
VERSIONS = released_versions()
FILES = {
    "current": data_folder("ruleset") / "current" / "golden.csv",
    **{version: data_folder("ruleset") / "released" / f"{version}.golden.csv" for version in VERSIONS},
}


@cache
def _stored(name: str) -> list[dict[str, str]]:
    with FILES[name].open(encoding="utf-8", newline="") as stream:
        rows = csv.DictReader(stream)
        assert tuple(rows.fieldnames or ()) == COLUMNS
        return list(rows)


def _found(name: str) -> list[dict[str, str]]:
    """What the rulebook says of the machines and worked cases that its golden table names."""
    machines = {row["machine"] for row in _stored(name)}
    rows = [row for row in golden_rows(load(name), TABLES) if row["machine"] in machines]
    shown = {(row["clause"], row["machine"]) for row in _stored(name)}
    cases = [case for case in stated_cases(name) if (case["clause"], f"{CASE}{case['title']}") in shown]
    return rows + case_rows(load(name), cases)


def _same(one: str, other: str) -> bool:
    if one == other:
        return True
    (value, *unit), (other_value, *other_unit) = one.split(" "), other.split(" ")
    return unit == other_unit and float(value) == pytest.approx(float(other_value), rel=1e-6)


def _differences(stored: list[dict[str, str]], found: list[dict[str, str]]) -> list[tuple[dict[str, str], ...]]:
    return [
        (old, new)
        for old, new in zip(stored, found, strict=True)
        if any(old[c] != new[c] for c in COLUMNS[:-1]) or not _same(old["observed"], new["observed"])
    ]


@pytest.mark.parametrize("name", FILES)
def test_verdicts_are_the_golden_ones(name):
    told = "`python -m linter.refresh` writes it anew" if name == "current" else "a release never changes its verdicts"
    stored, found = _stored(name), _found(name)
    assert len(stored) == len(found), told
    assert _differences(stored, found) == [], told


@pytest.mark.parametrize("name", FILES)
def test_every_clause_has_a_golden_verdict(name):
    judged = {row["clause"] for row in _stored(name) if row["outcome"] in ("met", "finding")}
    assert judged == set(load(name).clauses), "add worked cases of it, met and not, or a table to tests/golden"


def test_each_machine_stands_in_one_table():
    machines = Counter(m for path in TABLES for m in set(read_table(path).stations.machines))
    assert {name for name, count in machines.items() if count > 1} == set()


def test_the_first_two_releases_disagree_about_ceramic_balls_and_nothing_else():
    both = zip(_stored("2026.1"), _stored("2026.2"), strict=True)
    different = [(old, new) for old, new in both if old != new]
    assert {old["clause"] for old, _ in different} == {"speed.factor"}
    assert ("remark", "minor") in {(old["severity"], new["severity"]) for old, new in different}
