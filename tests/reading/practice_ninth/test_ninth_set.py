"""The ninth set itself: each stated value stands in its cell, the truth agrees with itself."""

import csv
import hashlib
import io
import json
import math
import re
from collections import Counter

import pytest
from openpyxl import load_workbook
from practice.grammar import Expected, Size, Table

from linter.mechanics.limits import deviations_or_nan
from practice_ninth import written

#: SHA-256 over the tables (workbooks by what they mean: their bytes hold the day they were written) and their meaning.
SET = "15f40b98436bed9040d7b6d3c0619bff9ea9fbec2f5d28c60be1fb370fb40ced"
TABLES = [written.make(number) for number in range(written.FIRST, written.LAST + 1)]
#: What one of the shown unit is in canonical units: prefixes, inches, pounds.
FACTORS = (1.0, 1e3, 10.0, 1e-3, 25.4, 0.0254, 4.4482216152605, 0.45359237)


def cells(table: Table) -> dict[str, str]:
    """Every cell of the bytes by its address; of JSON every leaf by its pointer."""
    if table.suffix == ".xlsx":
        sheet = load_workbook(io.BytesIO(table.content)).worksheets[0]
        return {c.coordinate: str(c.value) for row in sheet.iter_rows() for c in row if c.value is not None}
    text = table.content.decode(table.kinds["encoding"])
    if table.suffix == ".json":
        return dict(leaves(json.loads(text), ""))
    first = next(line for line in text.splitlines() if ";" in line or "," in line or "\t" in line)
    sep = max(";,\t", key=first.count)
    rows = csv.reader(io.StringIO(text), delimiter=sep)
    return {f"{chr(65 + c)}{r}": cell for r, row in enumerate(rows, 1) for c, cell in enumerate(row) if cell.strip()}


def leaves(tree: object, path: str) -> list[tuple[str, str]]:
    """Pointer and text of every leaf."""
    if isinstance(tree, dict):
        return [leaf for key, value in tree.items() for leaf in leaves(value, f"{path}/{key.replace('/', '~1')}")]
    if isinstance(tree, list):
        return [leaf for k, value in enumerate(tree) for leaf in leaves(value, f"{path}/{k}")]
    return [(path, str(tree))]


def numbers(text: str) -> list[float]:
    """Every number that a text can hold, a comma or a blank between digits read both ways."""
    text = text.replace("'", "").replace("±", " -")
    ways = (text, text.replace(",", "."), re.sub(r"(?<=\d)[ ,](?=\d{3}\b)", "", text))
    found = [float(n) for way in ways for n in re.findall(r"[+-]?(?:\d+\.?\d*|\.\d+)", way)]
    return [*found, *(-n for n in found), *((n - 32) / 1.8 for n in found), 0.0]


def wanted(e: Expected) -> list[float]:
    """The figures that the cells of a value hold."""
    if isinstance(e.value, str):
        return []
    if not isinstance(e.value, Size):
        return [e.value]
    lower, upper = e.value.lower, e.value.upper
    if lower is None or upper is None:
        return []
    return [e.value.nominal + d if e.value.bare else d for d in (lower, upper)]


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.name)
def test_every_value_stands_in_its_cell(table: Table) -> None:
    held = cells(table)
    for e in table.expected:
        assert e.own and set(e.own) <= set(held), (e, sorted(held))
        text = " ".join(held[address] for address in e.own)
        shown = [n * factor for n in numbers(text) for factor in FACTORS]
        if e.form == "number" and "N5" in text:
            continue
        limits = isinstance(e.value, Size) and any(e.value.nominal + w in shown for w in wanted(e))
        for value in wanted(e):
            near = [value, e.value.nominal + value] if limits and isinstance(e.value, Size) else [value]
            assert any(math.isclose(n, v, rel_tol=1e-9, abs_tol=1e-9) for n in shown for v in near), (e, text)
        if isinstance(e.value, Size) and e.value.tolerance_class:
            assert e.value.tolerance_class in text, (e, text)
        if e.form == "text" and e.parameter in ("station", "machine", "drawing_number", "bearing_designation"):
            assert e.value == text, (e, text)


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.name)
def test_the_truth_agrees_with_itself(table: Table) -> None:
    """A class has its deviations, a seat the size of its ring, a shoulder lies between the rings."""
    assert len({(e.machine, e.station, e.parameter) for e in table.expected}) == len(table.expected)
    for m, names in enumerate(table.stations):
        assert len(names) == len(set(names))
        for s in range(len(names)):
            known = {name: value for (a, b, name), value in table.implied.items() if (a, b) == (m, s)}
            stated = {e.parameter: e.value for e in table.expected if e.machine == m and e.station in (s, -1)}
            assert all(v == known[k] for k, v in stated.items() if k in ("bore_diameter", "ring_width") and k in known)
            values = known | stated
            for seat, ring in (("shaft", "bore_diameter"), ("housing", "outside_diameter")):
                size = values.get(f"{seat}_seat_diameter")
                if not isinstance(size, Size):
                    continue
                if ring in values:
                    assert size.nominal == pytest.approx(values[ring], abs=0.06), (table.name, seat)
                if size.tolerance_class and size.lower is not None:
                    own = [float(d) / 1000 for d in deviations_or_nan(size.tolerance_class, size.nominal)]
                    assert [size.lower, size.upper] == pytest.approx(own, abs=1e-9), (table.name, size)
            for shoulder in ("shaft_shoulder_diameter", "housing_shoulder_diameter"):
                at = values.get(shoulder)
                at = at.nominal if isinstance(at, Size) else at
                if at is not None and "bore_diameter" in values:
                    assert values["bore_diameter"] < at < values["outside_diameter"], (table.name, shoulder)  # type: ignore[operator]


def test_the_set_is_the_one_that_was_measured_first() -> None:
    """A change of it is made knowingly: figures of different days compare only while the set is the same."""
    told = repr([(t.name, t.suffix, t.content if t.suffix != ".xlsx" else b"", t.expected) for t in TABLES])
    assert hashlib.sha256(told.encode()).hexdigest() == SET


def test_the_set_is_what_it_is_for() -> None:
    assert [t.name for t in TABLES] == [f"practice-{n}" for n in range(9001, 9041)]
    assert len({t.content for t in TABLES}) == len({t.kinds["persona"] for t in TABLES}) == 40
    languages = {"en": 13, "de": 8, "zh": 5, "ja": 4, "fr": 3, "it": 3, "es": 2, "ru": 2}
    assert Counter(t.kinds["language"] for t in TABLES) == languages
    assert Counter(t.suffix for t in TABLES)[".xlsx"] == 7
    assert Counter(t.suffix for t in TABLES)[".json"] == 6
    assert all(len(t.expected) >= 10 for t in TABLES)
