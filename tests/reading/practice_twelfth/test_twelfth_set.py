"""The twelfth set itself: each stated value stands in its cell, the truth agrees with itself."""

import csv
import hashlib
import io
import json
import math
import re
from collections import Counter
from collections.abc import Iterator
from typing import Any

import pytest
from openpyxl import load_workbook
from practice.grammar import Size, Table
from practice_ninth import test_ninth_set as ninth

from practice_twelfth import trade, written

#: SHA-256 over the tables (workbooks by what they mean: their bytes hold the day they were written) and their meaning.
SET = "029095062cad851fc4d70f313c101a6f180ea033a90ca4200a46a6d776a203b3"
TABLES = [written.make(number) for number in range(written.FIRST, written.LAST + 1)]
FACTORS = (1.0, 1000.0, 0.001, 25.4, 0.0254, 4.4482216152605, 0.45359237, 4.4482216152605 / 25.4)


def leaves(tree: Any, at: str) -> Iterator[tuple[str, str]]:
    if isinstance(tree, dict | list):
        for key, value in tree.items() if isinstance(tree, dict) else enumerate(tree):
            yield from leaves(value, f"{at}/{str(key).replace('~', '~0').replace('/', '~1')}")
    elif tree is not None:
        yield at, str(tree)


def cells(table: Table) -> dict[str, str]:
    """What stands at each address; of several sheets whatever stands at it on one of them."""
    if table.suffix == ".xlsx":
        held: dict[str, str] = {}
        for sheet in load_workbook(io.BytesIO(table.content)).worksheets:
            for cell in (c for row in sheet.iter_rows() for c in row if c.value is not None):
                held[cell.coordinate] = f"{held.get(cell.coordinate, '')} {cell.value}".strip()
        return held
    text = table.content.decode(table.kinds["encoding"])
    if table.suffix == ".json":
        return dict(leaves(json.loads(text), ""))
    rows = csv.reader(io.StringIO(text), delimiter=table.kinds["separator"])
    at = [(r, c, cell) for r, row in enumerate(rows, 1) for c, cell in enumerate(row) if cell.strip()]
    return {f"{chr(64 + c // 26) if c >= 26 else ''}{chr(65 + c % 26)}{r}": cell for r, c, cell in at}


def figures(text: str) -> list[float]:
    found = [float(n) for n in re.findall(r"[+-]?\d+(?:\.\d+)?", text.replace(",", ".").replace("±", " -"))]
    return [n * factor for n in found for factor in FACTORS] + [(n - 32) / 1.8 for n in found]


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.name)
def test_every_value_stands_in_its_cell(table: Table) -> None:
    held = cells(table)
    for e in table.expected:
        assert e.own and set(e.cells) <= set(held), (e, sorted(held))
        text = " ".join(held[address] for address in e.own)
        assert all(any(w == held[a] or w in held[a] or w.replace("/", "~1") in a for a in e.cells) for w in e.words), e
        shown = [abs(n) for n in figures(text)]
        wanted = [e.value] if isinstance(e.value, float) else []
        if isinstance(e.value, Size):
            wanted = (
                [e.value.nominal] if not e.value.bare else [e.value.nominal, e.value.nominal + (e.value.upper or 0.0)]
            )
            wanted += [] if e.value.bare or e.value.upper is None else [e.value.upper, e.value.lower]  # type: ignore[list-item]
            assert e.value.tolerance_class in text
        assert all(any(math.isclose(n, abs(w), rel_tol=1e-9, abs_tol=2e-9) for n in shown) for w in wanted), (e, text)
        if e.parameter in ("station", "machine", "drawing_number", "drawing_revision", "bearing_designation"):
            assert all(str(e.value) in held[a] for a in e.own), (e, text)


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.name)
def test_the_truth_agrees_with_itself(table: Table) -> None:
    ninth.test_the_truth_agrees_with_itself(table)
    assert len(table.expected) >= 12


def test_deviations_are_those_of_the_standard() -> None:
    """The table from memory against figures of ISO 286-2 that everybody knows."""
    assert trade.deviations("k5", 25) == (2, 11) and trade.deviations("H7", 52) == (0, 30)
    assert trade.deviations("J7", 62) == (-12, 18) and trade.deviations("js5", 20) == (-4.5, 4.5)


def test_the_set_is_the_one_that_was_measured_first() -> None:
    """A change of it is made knowingly: figures of different days compare only while the set is the same."""
    told = repr([(t.name, t.suffix, t.content if t.suffix != ".xlsx" else b"", t.expected) for t in TABLES])
    assert hashlib.sha256(told.encode()).hexdigest() == SET


def test_the_set_is_what_it_is_for() -> None:
    assert [t.name for t in TABLES] == [f"practice-{n}" for n in range(12001, 12061)]
    assert len({t.content for t in TABLES}) == 60
    languages = Counter(t.kinds["language"] for t in TABLES)
    assert languages == {"en": 14, "de": 12, "zh": 6, "ja": 6, "fr": 6, "it": 6, "es": 5, "ru": 5}, languages
    headings = [tuple(w for e in t.expected for w in e.words) for t in TABLES]
    assert len(set(headings)) == 60
