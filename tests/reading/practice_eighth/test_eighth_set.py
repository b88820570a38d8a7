"""The eighth set itself: each value stands in its cell of the bytes, and the values of a table go together."""

import csv
import io
import json
import math
import re
from collections import Counter

import numpy as np
import pytest
from openpyxl import load_workbook
from practice.grammar import Expected, Size, Table

from linter.mechanics.limits import deviations_or_nan
from practice_eighth import measure
from practice_eighth.bearings import SIZES, follows
from practice_eighth.page import VOCABULARY, leaves

TABLES = measure.tables()
#: Factors between a written number and its value in canonical units.
FACTORS = (1, 1000, 0.001, 25.4, 0.0254, 4.4482216152605, 0.45359237)
BY_SIZE = {"bore_diameter": 0, "outside_diameter": 1, "ring_width": 2}


def opened(table: Table) -> dict[str, str]:
    """The text of every cell by address, from the bytes alone."""
    if table.suffix == ".json":
        return {path: json.dumps(value, ensure_ascii=False) for path, value in leaves(json.loads(table.content))}
    if table.suffix == ".xlsx":
        book = load_workbook(io.BytesIO(table.content))
        return {c.coordinate: str(c.value) for row in book.active for c in row if c.value is not None}
    lines = table.content.decode(table.kinds["encoding"]).splitlines()
    separator = "\t" if table.suffix == ".txt" else max(";,", key=lines[2].count)
    rows = csv.reader(lines, delimiter=separator)
    return {f"{chr(64 + c)}{r}": text for r, row in enumerate(rows, 1) for c, text in enumerate(row, 1) if text}


def numbers(text: str) -> list[float]:
    """The numbers of a text, without their signs."""
    return [float(found.replace(",", ".")) for found in re.findall(r"\d*[.,]?\d+", text)]


def stands(value: float, text: str) -> bool:
    """Whether a value is one of the numbers of a text, in some unit."""
    fahrenheit = [(n - 32) / 1.8 for n in (s * m for m in numbers(text) for s in (1, -1))]
    scaled = [n * f for n in numbers(text) for f in FACTORS]
    return any(math.isclose(abs(value), abs(n), rel_tol=1e-9, abs_tol=1e-12) for n in [*scaled, *fahrenheit])


def beside(expected: Expected, cells: dict[str, str]) -> str:
    """The text of a value's row, or of the JSON object it is in."""
    place = expected.own[-1]
    if "/" in place:
        return " ".join(text for path, text in cells.items() if path.startswith(place.rsplit("/", 1)[0]))
    row = re.sub("[A-Z]", "", place)
    return " ".join(text for address, text in cells.items() if re.sub("[A-Z]", "", address) == row)


def test_fifty_tables_of_their_own() -> None:
    assert len({t.name for t in TABLES}) == len({t.content for t in TABLES}) == len(TABLES) == 50
    assert len({t.kinds["persona"] for t in TABLES}) == 50
    languages = Counter(t.kinds["language"] for t in TABLES)
    assert languages == {"en": 15, "de": 10, "zh": 6, "ja": 5, "fr": 4, "it": 4, "es": 3, "ru": 3}
    assert Counter(t.suffix for t in TABLES)[".xlsx"] == 8
    assert Counter(t.suffix for t in TABLES)[".json"] == 6
    assert sum(len(t.expected) for t in TABLES) >= 1000


@pytest.mark.parametrize("table", TABLES, ids=lambda t: t.name)
def test_every_value_stands_in_its_cell(table: Table) -> None:
    cells = opened(table)
    for e in table.expected:
        assert set(e.own) <= set(e.cells) and set(e.cells) <= set(cells), e
        text = " ".join(cells[address] for address in e.own)
        if isinstance(e.value, str):
            assert VOCABULARY[e.parameter.split("|")[0]]["kind"] == "choice" or e.value in text, (e, text)
        elif isinstance(e.value, Size):
            sizes = [] if e.value.bare else [e.value.nominal]
            around = f"{text} {beside(e, cells)}" if e.value.lower is None else text
            assert all(stands(v, around) for v in sizes), (e, around)
            shift = e.value.nominal if e.value.bare else 0.0
            for part in (e.value.lower, e.value.upper):
                assert part is None or stands(part + shift, text), (e, text)
            assert e.value.tolerance_class in text, (e, text)
        elif e.verdict != "ask":
            assert stands(e.value, text), (e, text)


@pytest.mark.parametrize("table", TABLES, ids=lambda t: t.name)
def test_values_go_together(table: Table) -> None:
    seen = Counter((e.machine, e.station, e.parameter) for e in table.expected)
    assert set(seen.values()) == {1}, [key for key, count in seen.items() if count > 1]
    for m, names in enumerate(table.stations):
        assert len(names) == len(set(names)) == 2
        for s in range(len(names)):
            own = {e.parameter: e.value for e in table.expected if e.machine == m and e.station in (s, -1)}
            designation = str(own.get("bearing_designation", ""))
            assert not designation or "bore_diameter" in follows(designation), designation
            sizes = {n: own.get(n, table.implied.get((m, s, n))) for n in BY_SIZE}
            for name, value in sizes.items():
                implied = table.implied.get((m, s, name), value)
                assert value is None or math.isclose(value, implied, rel_tol=1e-3), (table.name, name)  # type: ignore[arg-type]
            seats = {"shaft_seat_diameter": "bore_diameter", "housing_seat_diameter": "outside_diameter"}
            for seat, ring in seats.items():
                size = own.get(seat)
                if isinstance(size, Size) and isinstance(sizes[ring], float | int):
                    assert math.isclose(size.nominal, sizes[ring], rel_tol=1e-3), (table.name, s, seat)  # type: ignore[arg-type]
            low, high = sizes["bore_diameter"], sizes["outside_diameter"]
            for shoulder in ("shaft_shoulder_diameter", "housing_shoulder_diameter"):
                size = own.get(shoulder)
                size = size.nominal if isinstance(size, Size) else size
                assert size is None or low is None or float(low) < float(size) < float(high)  # type: ignore[arg-type]


@pytest.mark.parametrize("table", TABLES, ids=lambda t: t.name)
def test_deviations_are_those_of_their_class(table: Table) -> None:
    for e in table.expected:
        if isinstance(e.value, Size) and e.value.tolerance_class:
            lower, upper = deviations_or_nan(np.array([e.value.tolerance_class]), np.array([e.value.nominal]))
            assert np.isfinite(lower[0]), e
            if e.value.lower is not None:
                assert (e.value.lower, e.value.upper) == pytest.approx((lower[0] / 1000, upper[0] / 1000)), e


def test_designations_say_what_catalogues_say() -> None:
    assert follows("7004C P4") | {"closure": "open"} == follows("7004C P4")
    assert follows("6205-2Z/C3")["closure"] == "shield" and follows("6205-2Z/C3")["clearance_class"] == "C3"
    assert all(d < outside and width < outside - d + 20 for d, outside, width, _ in SIZES.values())
