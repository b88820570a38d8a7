"""What checks name is there: parameters that are wanted or stood in for, keys and units of the workings, texts."""

import re
from functools import cache

import numpy as np
import pytest
from attrs import evolve

from linter.checks.shared.base import Result, ladder
from linter.model.stations import stations_from_rows
from linter.model.vocabulary import vocabulary
from linter.review.assess import assess
from linter.review.cases import case_stations, worked_cases
from linter.rulebook.load import CURRENT, load

BOOK = load(CURRENT)
UNITS = {
    "", "1", "%", "mm", "um", "mm2", "mm2/s", "N", "MPa", "N/mm", "N/mm^1.5", "N.mm", "N.m", "deg", "arcmin", "degC",
    "K", "W", "W/K", "J/K", "s", "h", "kg", "kg/m3", "g.mm", "r/min", "Hz", "mm.r/min", "mm/s", "m/s",
    "1e6 revolutions",
}  # fmt: skip


@cache
def results(clause: str):
    alone = evolve(BOOK, clauses={clause: BOOK.clauses[clause]})
    found = [assess(case_stations(case), alone).reviews[clause] for case in worked_cases(BOOK, clause)]
    assert all(review.failure is None for review in found)
    return [review.result for review in found]


WORKED = [clause for clause in BOOK.clauses if worked_cases(BOOK, clause)]


@pytest.mark.parametrize("clause", WORKED)
def test_parameters_that_are_named_exist_and_belong_to_the_clause(clause):
    own = {*BOOK.clauses[clause].needs, *BOOK.clauses[clause].uses}
    for result in results(clause):
        assert set(result.missing) <= own
        for entry in result.assumed:
            assert entry.parameter in vocabulary()
            assert entry.reason.strip() == entry.reason != ""


@pytest.mark.parametrize("clause", WORKED)
def test_lines_of_a_working_have_a_key_a_meaning_and_a_known_unit(clause):
    for result in results(clause):
        keys = [line.key for line in result.working]
        assert len(keys) == len(set(keys))
        assert [key for key in keys if not re.fullmatch("[a-z][a-z0-9_]*", key)] == []
        assert result.unit in UNITS
        for line in result.working:
            assert line.unit in UNITS
            for text in (line.meaning, line.symbol, line.formula):
                assert text == text.strip()
                assert "XX" not in text
            assert line.meaning
            assert line.meaning[0] == line.meaning[0].lower() or not line.meaning[1].islower()


@pytest.mark.parametrize("clause", WORKED)
def test_reasons_and_variants_are_words(clause):
    for result in results(clause):
        reasons = [result.reason] if isinstance(result.reason, str) else list(result.reason)
        assert all(not reason or (reason[0].islower() and not reason.endswith(".")) for reason in map(str, reasons))
        known = {key.partition("_")[2] for key in BOOK.clauses[clause].messages} | {""}
        variants = [] if result.variant is None else [str(v) for v in result.variant]
        judged = np.broadcast_to(~np.isnan(np.asarray(result.measure, float)), len(variants)) if variants else ()
        unknown = {v for v, used in zip(variants, judged, strict=True) if used and v not in known}
        assert unknown <= UNTOLD.get(clause, set())


#: Variants that take the usual message.
UNTOLD = {"speed.precision": {"remark"}}


def test_what_a_report_shows_is_computed_once_and_for_reports_alone(monkeypatch):
    asked: list[str] = []
    found = Result(np.zeros(1), working=lambda: asked.append("working") or [], reason=lambda: "told")
    told = found.told()
    assert (told.working, told.working, told.reason, asked) == ([], [], "told", ["working"])
    stations, book = stations_from_rows([{"bore_diameter": 8.0}]), BOOK
    monkeypatch.setattr(Result, "told", lambda result: asked.append("told") or result)
    assess(stations, book, keep="verdicts")
    assert "told" not in asked
    assess(stations, book)
    assert asked.count("told") > 50


def test_a_ladder_rises_by_one_from_mark_to_mark():
    nan, inf = np.nan, np.inf
    value = np.array([0.0, 1.0, 2.0, 3.0, 4.0, 8.0, nan, inf])
    assert ladder(value, 2.0, 4.0) == pytest.approx([0, 0.5, 1, 1.5, 2, 3, nan, inf], nan_ok=True)
    assert ladder(value, np.full(8, 2.0), 4.0) == pytest.approx(ladder(value, 2.0, 4.0), nan_ok=True)
    assert ladder(value, nan, 4.0) == pytest.approx(ladder(value, 4.0, 4.0), nan_ok=True)
    assert ladder(value, 0.0) == pytest.approx([0, inf, inf, inf, inf, inf, nan, inf], nan_ok=True)
    assert ladder(value[:6], 2.0, inf) == pytest.approx([0, 0.5, 1, 1, 1, 1])
    assert np.isnan(ladder(value, 2.0, nan)).all()
