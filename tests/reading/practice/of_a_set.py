"""What the test of any set of tables asks: each stated value stands in its cell, the truth agrees with itself.

A set's own test derives from :class:`OfASet` and states its figures alone.
"""

import csv
import hashlib
import io
import json
import math
import re
from collections import Counter
from collections.abc import Sequence
from typing import ClassVar

import pytest
from openpyxl import load_workbook
from openpyxl.utils import get_column_letter

from linter.mechanics.limits import deviations_or_nan
from practice.grammar import Expected, Size, Table

#: What one of the shown unit is in canonical units: prefixes, inches, pounds, pounds an inch.
FACTORS = (1.0, 1e3, 10.0, 1e-3, 25.4, 0.0254, 4.4482216152605, 0.45359237, 4.4482216152605 / 25.4)


def cells(table: Table) -> dict[str, str]:
    """Every cell of the bytes by its address, of several sheets what stands at it on any; of JSON every leaf."""
    if table.suffix == ".xlsx":
        held: dict[str, str] = {}
        for sheet in load_workbook(io.BytesIO(table.content)).worksheets:
            for cell in (c for row in sheet.iter_rows() for c in row if c.value is not None):
                held[cell.coordinate] = f"{held.get(cell.coordinate, '')} {cell.value}".strip()
        return held
    text = table.content.decode(table.kinds["encoding"])
    if table.suffix == ".json":
        return dict(leaves(json.loads(text), ""))
    first = next(line for line in text.splitlines() if ";" in line or "," in line or "\t" in line)
    rows = csv.reader(io.StringIO(text), delimiter=table.kinds.get("separator") or max(";,\t", key=first.count))
    at = [(r, c, cell) for r, row in enumerate(rows, 1) for c, cell in enumerate(row, 1) if cell.strip()]
    return {f"{get_column_letter(c)}{r}": cell for r, c, cell in at}


def leaves(tree: object, path: str) -> list[tuple[str, str]]:
    """Pointer and text of every leaf."""
    if isinstance(tree, dict | list):
        several = tree.items() if isinstance(tree, dict) else enumerate(tree)
        keys = ((str(key).replace("~", "~0").replace("/", "~1"), value) for key, value in several)
        return [(path, str(tree)), *(leaf for key, value in keys for leaf in leaves(value, f"{path}/{key}"))]
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


def _one_mu(text: str) -> str:
    """A text with one sign for micro: Shift JIS has the Greek letter alone."""
    return text.replace("\N{MICRO SIGN}", "\N{GREEK SMALL LETTER MU}")


def every_value_stands_in_its_cell(table: Table) -> None:
    """The cells of each value hold its figures, its class, its text."""
    held = cells(table)
    for e in table.expected:
        assert e.own and set(e.own) <= set(e.cells) and set(e.cells) <= set(held), (e, sorted(held))
        around = held if table.suffix == ".json" else {address: held[address] for address in e.cells}
        said = _one_mu("\n".join([*around.keys(), *around.values()]))
        assert all(word in said or word.replace("/", "~1") in said for word in map(_one_mu, e.words)), e
        if e.form == "left open" or (e.verdict == "ask" and isinstance(e.value, float)):
            continue
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
        if e.parameter in ("station", "machine", "drawing_number", "drawing_revision", "bearing_designation"):
            assert all(str(e.value).lstrip("0") in held[address] for address in e.own), (e, text)


def every_nominal_stands_in_its_cell(table: Table) -> None:
    """A size's nominal too: a fit in a row of its own takes it from another row."""
    held = cells(table)
    for e in table.expected:
        if isinstance(e.value, Size) and not e.value.bare:
            text = " ".join(held[address] for address in e.own)
            shown = [n * factor for n in numbers(text) for factor in FACTORS]
            assert any(math.isclose(n, e.value.nominal, rel_tol=1e-9) for n in shown), (e, text)


def the_truth_agrees_with_itself(table: Table) -> None:
    """A class has its deviations, a seat the size of its ring, a shoulder lies between the rings."""
    assert len({(e.machine, e.station, e.parameter) for e in table.expected}) == len(table.expected)
    for m, names in enumerate(table.stations):
        assert len(names) == len(set(names))
        for s in range(len(names)):
            known = {name: value for (a, b, name), value in table.implied.items() if (a, b) == (m, s)}
            stated = {e.parameter: e.value for e in table.expected if e.machine == m and e.station in (s, -1)}
            rings = ("bore_diameter", "outside_diameter", "ring_width")
            assert all(v == pytest.approx(known[k], rel=1e-3) for k, v in stated.items() if k in rings and k in known)
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


def digest(tables: Sequence[Table], *, books: bool = False) -> str:
    """SHA-256 over tables and their meaning; workbooks by their cells, or not: their bytes hold the day of writing."""

    def content(table: Table) -> object:
        if table.suffix != ".xlsx":
            return table.content
        return sorted(cells(table).items()) if books else b""

    return hashlib.sha256(repr([(t.name, t.suffix, content(t), t.expected) for t in tables]).encode()).hexdigest()


def counted(text: str) -> dict[str, int]:
    """``en 13, de 8`` as a dictionary."""
    return {word: int(count) for word, count in (part.split() for part in text.split(", "))}


class OfASet:
    """The tests of one set; what is not stated is not asked. Counts are written as ``en 13, de 8``."""

    tables: ClassVar[Sequence[Table]]
    digest: ClassVar[str] = ""
    books: ClassVar[bool] = False
    first: ClassVar[int] = 0
    languages: ClassVar[str]
    suffixes: ClassVar[str] = ""
    least: ClassVar[int] = 12

    def pytest_generate_tests(self, metafunc: pytest.Metafunc) -> None:
        """Whatever asks for a table is asked of each."""
        if "table" in metafunc.fixturenames:
            metafunc.parametrize("table", self.tables, ids=lambda table: table.name)

    def test_every_value_stands_in_its_cell(self, table: Table) -> None:
        every_value_stands_in_its_cell(table)

    def test_the_truth_agrees_with_itself(self, table: Table) -> None:
        the_truth_agrees_with_itself(table)

    def test_the_set_is_the_one_that_was_measured_first(self) -> None:
        """A change of it is made knowingly: figures of different days compare only while the set is the same."""
        assert self.digest in ("", digest(self.tables, books=self.books))

    def test_the_set_is_what_it_is_for(self) -> None:
        count = len(self.tables)
        if self.first:
            assert [t.name for t in self.tables] == [f"practice-{self.first + n}" for n in range(count)]
        assert len({t.content for t in self.tables}) == count
        personas = {t.kinds["persona"] for t in self.tables if "persona" in t.kinds}
        assert len(personas) in (0, count)
        assert Counter(t.kinds["language"] for t in self.tables) == counted(self.languages)
        assert not self.suffixes or Counter(t.suffix for t in self.tables) == counted(self.suffixes)
        assert all(len(t.expected) >= self.least for t in self.tables)
