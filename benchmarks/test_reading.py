"""Reading large tables: as a ratio to what the bare libraries need for the same file.

Run with ``pytest benchmarks/test_reading.py --benchmark-only``. The two ratios that are aimed at: delimited text of
100 000 rows and 60 columns within 2.5 times ``pandas.read_csv(dtype=str)``, a workbook of 2 000 rows within 2 times
plain openpyxl iteration; a workbook of 20 000 rows is read.
"""

import csv
import random
from pathlib import Path

import pytest

from linter.model.vocabulary import vocabulary
from linter.reading import read_table

_SKIPPED = {"machine", "station", "spacer_stack", "drawing_number", "drawing_revision"}


def table(rows: int, columns: int) -> list[list[str]]:
    """A plausible wide table with many distinct numbers."""
    chosen = [p for p in vocabulary().values() if p.name not in _SKIPPED]
    chosen = ([p for p in chosen if p.level == "station"] + [p for p in chosen if p.level == "machine"])[: columns - 2]
    random.seed(7)
    lines = [["machine", "station", *(p.name for p in chosen)]]
    machine_values: list[str] = []
    for row in range(rows):
        if row % 2 == 0:
            machine_values = [_value(p) for p in chosen]
        lines.append(
            [
                f"M{row // 2:06d}",
                "AB"[row % 2],
                *(machine_values[i] if p.level == "machine" else _value(p) for i, p in enumerate(chosen)),
            ]
        )
    return lines


def _value(entry) -> str:
    if entry.kind == "choice":
        return random.choice(entry.choices)
    if entry.kind == "text":
        return f"text {random.randrange(500)}"
    if entry.kind == "toleranced" and entry.unit != "mm":
        return f"{random.randrange(3, 60)} ±1"
    if entry.kind == "toleranced":
        return f"{random.randrange(3, 60)} {random.choice(('k5', 'h6', '+0.006/+0.001', '±0.01'))}"
    return f"{random.uniform(0.1, 500):.4f}"


@pytest.fixture(scope="module")
def large_text(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("reading") / "large.csv"
    with path.open("w", encoding="utf-8", newline="") as stream:
        csv.writer(stream).writerows(table(100_000, 60))
    return path


@pytest.fixture(scope="module")
def workbook(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return _workbook(tmp_path_factory, 2_000)


@pytest.fixture(scope="module")
def large_workbook(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return _workbook(tmp_path_factory, 20_000)


def _workbook(tmp_path_factory: pytest.TempPathFactory, rows: int) -> Path:
    import xlsxwriter

    path = tmp_path_factory.mktemp("reading") / f"seats{rows}.xlsx"
    book = xlsxwriter.Workbook(str(path), {"strings_to_numbers": True})
    sheet = book.add_worksheet("Seats")
    for index, line in enumerate(table(rows, 60)):
        sheet.write_row(index, 0, line)
    book.close()
    return path


def test_text_100000_rows(benchmark, large_text):
    reading = benchmark.pedantic(read_table, args=(large_text,), rounds=3, iterations=1)
    assert len(reading.stations) == 100_000


def test_quoted_text_100000_rows(benchmark, large_text, tmp_path):
    path = tmp_path / "quoted.csv"
    with large_text.open(encoding="utf-8", newline="") as lines, path.open("w", encoding="utf-8", newline="") as stream:
        csv.writer(stream, delimiter=";", quoting=csv.QUOTE_ALL).writerows(csv.reader(lines))
    reading = benchmark.pedantic(read_table, args=(path,), rounds=3, iterations=1)
    assert len(reading.stations) == 100_000


def test_text_100000_rows_pandas(benchmark, large_text):
    import pandas as pd

    frame = benchmark.pedantic(pd.read_csv, args=(large_text,), kwargs={"dtype": str}, rounds=3, iterations=1)
    assert len(frame) == 100_000


def test_workbook_2000_rows(benchmark, workbook):
    reading = benchmark.pedantic(read_table, args=(workbook,), rounds=3, iterations=1)
    assert len(reading.stations) == 2_000


def test_workbook_20000_rows(benchmark, large_workbook):
    reading = benchmark.pedantic(read_table, args=(large_workbook,), rounds=1, iterations=1)
    assert len(reading.stations) == 20_000


def test_workbook_2000_rows_openpyxl(benchmark, workbook):
    import openpyxl

    def iterate() -> int:
        book = openpyxl.load_workbook(workbook, read_only=True)
        return sum(
            1 for sheet in book.worksheets for row in sheet.iter_rows() for cell in row if cell.value is not None
        )

    assert benchmark.pedantic(iterate, rounds=3, iterations=1) > 100_000
