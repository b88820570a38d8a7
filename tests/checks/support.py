"""What the tests of the chapters share: one clause over plain rows, and a rulebook with other numbers."""

from typing import Any

import numpy as np
from attrs import evolve

from linter.model.places import Place
from linter.model.stations import Problem, Stations, stations_from_rows
from linter.review.assess import ClauseReview, assess
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook, Table

VERSION = "current"
SEVERITY_RANK = {"critical": 4, "major": 3, "minor": 2, "remark": 1}


def only(clause: str, rulebook: Rulebook | None = None) -> Rulebook:
    """The rulebook with one clause."""
    book = rulebook or load(VERSION)
    return evolve(book, clauses={clause: book.clauses[clause]})


def review(clause: str, rows: list[dict[str, Any]] | Stations, rulebook: Rulebook | None = None) -> ClauseReview:
    """One clause over rows."""
    stations = rows if isinstance(rows, Stations) else stations_from_rows(rows)
    return assess(stations, only(clause, rulebook)).reviews[clause]


def ranks(clause: str, rows: list[dict[str, Any]], rulebook: Rulebook | None = None) -> np.ndarray:
    """Severity rank per row: 0 met to 4 critical, -1 not assessed, -2 not applicable."""
    found = review(clause, rows, rulebook)
    assert found.failure is None
    rank = np.where(found.outcome == 1, 4 - found.severity, 0)
    rank = np.where(found.outcome == 2, -1, rank)
    return np.where(found.outcome == 3, -2, rank)


def with_limit(clause: str, name: str, value: Any) -> Rulebook:
    """The rulebook with one limit changed."""
    book = load(VERSION)
    old = book.clauses[clause]
    changed = evolve(old, limits={**old.limits, name: evolve(old.limits[name], value=value)})
    return evolve(book, clauses={**book.clauses, clause: changed})


def with_cells(clause: str, table: str, column: str, value: str, **where: str) -> Rulebook:
    """The rulebook with one column of a limit table changed, in the rows with these cells."""
    book = load(VERSION)
    old = book.clauses[clause]
    sheet = old.tables[table]
    rows, hits = [], 0
    for row in sheet.rows:
        cells = dict(zip(sheet.columns, row, strict=True))
        if all(cells[k] == v for k, v in where.items()):
            cells[column] = value
            hits += 1
        rows.append(tuple(cells[c] for c in sheet.columns))
    assert hits, f"no row of {table} has {where}"
    changed = evolve(old, tables={**old.tables, table: Table(sheet.file, sheet.columns, tuple(rows), sheet.looser)})
    return evolve(book, clauses={**book.clauses, clause: changed})


def same_alone(clause: str, rows: list[dict[str, Any]]) -> None:
    """Every row alone gets the verdict that it gets among the others (each row its own machine)."""
    rows = [{**row, "machine": f"M{k}"} for k, row in enumerate(rows)]
    together = ranks(clause, rows)
    alone = np.concatenate([ranks(clause, [row]) for row in rows])
    np.testing.assert_array_equal(together, alone)


def never_milder(clause: str, rows: list[dict[str, Any]]) -> np.ndarray:
    """Rows ordered from good to bad, each its own machine: no verdict may be milder than the one before."""
    found = ranks(clause, [{**row, "machine": f"M{k}"} for k, row in enumerate(rows)])
    assert (np.diff(found) >= 0).all(), found
    return found


def case_stations(case: dict[str, Any]) -> Stations:
    """Stations of a worked case with the reading problems it states (``problems``: fields of Problem, file, cell)."""
    problems = tuple(
        Problem(
            p["kind"], p["row"], p["parameter"], Place(p["file"], None, p["cell"]), p["read"], p["expected"],
            p["message"], p["code"],
        )
        for p in case.get("problems", ())
    )  # fmt: skip
    return evolve(stations_from_rows(case["stations"]), problems=problems)
