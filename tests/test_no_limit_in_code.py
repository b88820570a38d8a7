"""The program holds no limit: another number in the rulebook gives another verdict, and the checks hold no figures."""

import ast
from functools import cache
from pathlib import Path

import numpy as np
import pytest
from attrs import evolve

import linter.checks
from linter.model.stations import Stations, stations_from_rows
from linter.review.assess import assess
from linter.review.cases import worked_cases
from linter.rulebook.load import load
from linter.rulebook.model import Clause, Table

VERSION = "current"
FACTORS = (0.0, 1e-3, 0.1, 0.5, 0.8, 1.25, 2.0, 10.0, 1e3, -1.0)


def _numbers(value):
    parts = value if isinstance(value, list) else [value]
    return all(isinstance(part, (int, float)) for part in parts)


def _scaled(value, factor):
    return [part * factor for part in value] if isinstance(value, list) else value * factor


def _cell(cell: str, factor: float) -> str:
    try:
        return repr(float(cell) * factor)
    except ValueError:
        return cell


def _moved_table(table: Table, column: int, factor: float) -> Table:
    rows = (tuple(_cell(c, factor) if i == column else c for i, c in enumerate(row)) for row in table.rows)
    return evolve(table, rows=tuple(rows))


def _moved(clause: Clause):
    """The clause with one number after the other taken far away; tables by column."""
    for factor in FACTORS:
        for key, limit in clause.limits.items():
            if _numbers(limit.value):
                yield evolve(clause, limits={**clause.limits, key: evolve(limit, value=_scaled(limit.value, factor))})
        for key, table in clause.tables.items():
            for column, values in enumerate(table.arrays.values()):
                if values.dtype != object:
                    moved = _moved_table(table, column, factor)
                    yield evolve(clause, tables={**clause.tables, key: moved})


def _has_numbers(clause: Clause) -> bool:
    return any(_numbers(limit.value) for limit in clause.limits.values()) or any(
        values.dtype != object and not np.isnan(values).all()
        for table in clause.tables.values()
        for values in table.arrays.values()
    )


@cache
def _chapter_rows(chapter: str) -> Stations:
    """The stations of every worked case of a chapter, each case with machines of its own."""
    rows = []
    for clause in load(VERSION).clauses.values():
        for number, case in enumerate(worked_cases(load(VERSION), clause.id) if clause.chapter == chapter else ()):
            rows += [
                {"station": chr(65 + k), **row, "machine": f"{clause.id} {number} {row.get('machine', '')}"}
                for k, row in enumerate(case["stations"])
            ]
    return stations_from_rows(rows)


def _verdicts(clause: Clause) -> list | None:
    """Outcomes and severities of the clause; None where its check cannot run with such numbers."""
    book = evolve(load(VERSION), clauses={clause.id: clause})
    review = assess(_chapter_rows(clause.chapter), book).reviews[clause.id]
    return None if review.failure else [review.outcome.tolist(), review.severity.tolist()]


NUMERIC = [c for c in load(VERSION).clauses.values() if _has_numbers(c) and worked_cases(load(VERSION), c.id)]


@pytest.mark.parametrize("clause", NUMERIC, ids=lambda c: c.id)
def test_another_number_gives_another_verdict(clause):
    as_is = _verdicts(clause)
    assert as_is is not None
    assert any(found is not None and found != as_is for found in map(_verdicts, _moved(clause)))


# Numbers that a check may hold, each with what it is. Anything else belongs in the rulebook.
EVERYWHERE = {
    0: "nothing; start of a domain",
    1: "a whole; the first mark of a measure",
    2: "both sides, a diameter's two radii, the second mark of a measure",
    3: "a cube, a third mark of a measure, counting",
    4: "counting",
    0.5: "half: a radius, a middle, half a mark of a measure",
    1.5: "Hertz exponent 3/2, half a mark of a measure",
    60: "seconds in a minute",
    100: "per cent",
    1000: "µm in a mm, N·mm in a N·m",
    60000: "mm/min in m/s",
    1e-3: "mm in a µm",
    1e-6: "room for rounding; m² in a mm²",
    1e-9: "room for rounding",
    6: "decimals that are rounded to; room for rounding",
    1e-12: "room for rounding",
}
BY_MODULE = {
    "alignment": {180: "degrees in half a turn"},
    "seat_forms": {19: "IT0 to IT18 of ISO 286"},
    "arrangement": {10: "rounding up to a tenth of a millimetre for a message"},
    "contacts": {
        5: "counting",
        12: "degrees, start of an iteration for the working contact angle",
        200: "largest ball count of the arithmetic's domain",
        89: "degrees, end of the domain of the contact angle",
        2.5: "exponent of the load deflection of a ball set, 5/2",
    },
    "bodies": {1e5: "mm, end of the domain of a diameter", 1e7: "r/min, end of the domain of a speed"},
    "seat_tables": {64: "rows, from where alike ones are counted once"},
    "heat_balance": {
        400: "°C, end of what is looked for",
        200: "°C, end of the domain of surroundings",
        40: "°C, of the stated viscosity",
        0.3: "mm²/s, end of the viscosity law's domain",
        1e6: "mm²/s, thickest oil that is computed with",
    },
    "inertia": {200: "largest ball count of the arithmetic's domain"},
    "life": {
        10: "exponent 10/3 of roller bearings (ISO 281)",
        99.95: "end of the reliability table (ISO 281)",
        90: "reliability of the basic rating life (ISO 281)",
        45: "degrees, end of the domain of radial ball bearings (ISO 281)",
        -60: "°C, start of the domain of the grease life formulas",
        110: "°C, end of the domain of the grease life formula by limiting speed, general grease",
        130: "°C, the same, wide range grease",
        120: "°C, end of the domain of the grease life formula by speed factor",
        0.16: "P/C, end of the domain of that formula",
        500_000: "n·d_m, end of the domain of that formula",
    },
    "life_grease": {0.16: "end of the range of a grease life formula, P/C"},
    "lubrication": {
        -273.15: "absolute zero in °C",
        0.3: "mm²/s, end of the viscosity law's domain",
        40: "°C, of the stated viscosity",
        400: "°C, end of the viscosity law's domain",
    },
    "possible": {10: "one decimal more, from what is doubtful to what cannot be"},
    "preload_band": {5: "counting", 2.5: "exponent of stiffness over deflection, 5/2"},
    "preload_criteria": {89: "degrees, end of the domain of the contact angle"},
    "quantities": {
        0.3: "ball diameter over section where it is not stated; shown as assumed",
        45: "degrees, end of the domain of radial ball bearings (ISO 281)",
        0.4: "end of the geometry table (ISO 76)",
    },
    "rotor": {30: "π n/30, revolutions per minute to radians per second"},
    "two_sides": {1e4: "decimals that a factor is cut to"},
    "shoulder": {0.25: "π/4 of a ring face", 2.6: "place of the measure between its steps", 0.4: "as before"},
    "table": {2.5: "place of the measure between its steps"},
}


def _figures(path: Path):
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        negative = isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.USub)
        value = node.operand if negative else node
        if isinstance(value, ast.Constant) and type(value.value) in (int, float):
            yield abs(value.value), node.lineno


MODULES = sorted(Path(linter.checks.__file__).parent.rglob("*.py"))


@pytest.mark.parametrize("path", MODULES, ids=lambda p: p.stem)
def test_checks_hold_no_figures_of_their_own(path):
    allowed = {*EVERYWHERE, *(abs(value) for value in BY_MODULE.get(path.stem, ()))}
    assert sorted({(value, line) for value, line in _figures(path) if value not in allowed}) == []
