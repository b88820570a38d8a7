"""The seventh set itself: the same again each time, its truth in its bytes, deviations those of their class."""

import csv
import hashlib
import io
import json
import re
from functools import cache

import numpy as np
import openpyxl
import pytest
from openpyxl.utils import coordinate_to_tuple
from practice.grammar import Expected, Size, Table

from linter.mechanics.limits import deviations_or_nan
from practice_seventh import shapes, trade
from practice_seventh.pen import DIVIDERS

#: SHA-256 over the tables (workbooks by what they mean: a writer of another version packs them otherwise).
SET = "9d1c8ae9cc39785da6fa324d5832622ac251ac28ce0c448f0827708a101c32f6"
TABLES = [shapes.make(number) for number in range(1, 61)]


def test_the_set_is_the_one_that_was_measured_first() -> None:
    told = repr([(t.suffix, t.content if t.suffix != ".xlsx" else b"", t.expected) for t in TABLES])
    assert hashlib.sha256(told.encode()).hexdigest() == SET


def test_bytes_are_the_same_again_and_all_tables_differ() -> None:
    assert len({t.content for t in TABLES}) == len(TABLES) == 60
    for number in (2, 16, 39, 49):
        assert shapes.make(number).content == TABLES[number - 1].content


def test_the_set_covers_what_it_is_for() -> None:
    count = {x: sum(t.kinds["language"] == x for t in TABLES) for x in ("en", "de", "zh", "ja", "fr", "it", "es", "ru")}
    assert count == {"en": 18, "de": 11, "zh": 7, "ja": 6, "fr": 5, "it": 5, "es": 4, "ru": 4}
    assert sum(t.kinds["length unit"] == "in" for t in TABLES) >= 6
    assert {"utf-16", "cp1252", "cp1251", "shift_jis", "gb18030"} <= {t.kinds["encoding"] for t in TABLES}
    assert all(len(t.expected) >= 12 for t in TABLES)
    assert sum(e.verdict == "ask" for t in TABLES for e in t.expected) >= 15


@cache
def _cells(content: bytes, encoding: str, tab: str) -> dict[str, set[str]]:
    """Texts of a sheet (or, of a workbook, of all its sheets) by address."""
    found: dict[str, set[str]] = {}
    if encoding == "xlsx":
        for sheet in openpyxl.load_workbook(io.BytesIO(content)):
            for row in sheet.iter_rows():
                for cell in row:
                    if cell.value is not None:
                        found.setdefault(cell.coordinate, set()).add(str(cell.value))
        return found
    for r, line in enumerate(csv.reader(io.StringIO(content.decode(encoding), newline=""), delimiter=tab)):
        for c, text in enumerate(line):
            found.setdefault(f"{openpyxl.utils.get_column_letter(c + 1)}{r + 1}", set()).add(text)
    return found


def _texts(table: Table, address: str) -> set[str]:
    if table.suffix == ".json":
        node = json.loads(table.content)
        for part in address.split("/")[1:]:
            node = node[int(part)] if isinstance(node, list) else node[part]
        return {str(node)}
    assert coordinate_to_tuple(address)
    tab = DIVIDERS.get(shapes.PLANS[table.seed - 1].file, "")
    return _cells(table.content, table.kinds["encoding"], tab).get(address, set())


FACTORS = (1, 0.001, 1000, 25.4, 0.0254, 4.4482216152605, 0.45359237)


def _told(table: Table, expected: Expected, text: str) -> bool:
    """Whether a cell says a number in some unit."""
    text = re.sub(r"(?<=\d)[ .,](?=\d{3}\b)(?!\d{4})", "", text) if re.fullmatch(r"\d{2}[ .,]\d{3}", text) else text
    numbers = [float(x.replace(",", ".")) for x in re.findall(r"[-+]?\d*[.,]?\d+", text)]
    value = expected.value
    assert not isinstance(value, str)
    wanted = [value.nominal, value.nominal + (value.lower or 0)] if isinstance(value, Size) else [value]
    canonical = [n * f for n in numbers for f in FACTORS] + [(n - 32) * 5 / 9 for n in numbers]
    return any(abs(c - w) < 1e-6 * max(1, abs(w)) for c in canonical for w in wanted)


def test_every_value_stands_in_its_cells() -> None:
    checked = 0
    for table in TABLES:
        for e in table.expected:
            texts = [t for address in e.own for t in _texts(table, address)]
            assert texts and set(e.own) <= set(e.cells), (table.name, e)
            if e.form == "left open" or e.form == "choice":
                continue
            if isinstance(e.value, str):
                assert e.value in texts, (table.name, e)
            elif e.form == "class only":
                assert isinstance(e.value, Size) and e.value.tolerance_class in texts
            else:
                assert any(_told(table, e, t) for t in texts), (table.name, e, texts)
            if isinstance(e.value, Size) and e.value.tolerance_class:
                assert any(e.value.tolerance_class in t for t in texts), (table.name, e)
            checked += 1
            words = {t for address in e.cells for t in _texts(table, address)}
            assert table.suffix == ".json" or set(e.words) <= words, (table.name, e)
    assert checked > 1500


def test_deviations_are_those_of_their_class() -> None:
    for side in range(2):
        for name in trade.CLASSES[side]:
            for nominal in trade.STEPS[side]:
                lower, upper = deviations_or_nan(np.array([name]), np.array([float(nominal)]))
                told = trade.deviations(side, name, nominal)
                assert told == pytest.approx((lower[0] / 1000, upper[0] / 1000), abs=1e-6), (name, nominal)
