"""Reading large tables: as a ratio to what the bare libraries need for the same file.

Run with ``pytest benchmarks/test_reading.py --benchmark-only``. The two ratios that are aimed at: delimited text of
100 000 rows and 60 columns within 2.5 times ``pandas.read_csv(dtype=str)``, a workbook of 2 000 rows within 2 times
plain openpyxl iteration; a workbook of 20 000 rows is read.
"""

import csv
from collections.abc import Callable
from pathlib import Path

import pytest

from benchmarks.tables import write_wide_text, write_wide_workbook
from linter.reading import read_table

Sized = Callable[[int], int]


@pytest.fixture(scope="module")
def large_text(tmp_path_factory: pytest.TempPathFactory, sized: Sized) -> Path:
    return write_wide_text(tmp_path_factory.mktemp("reading") / "large.csv", sized(100_000))


@pytest.fixture(scope="module")
def workbook(tmp_path_factory: pytest.TempPathFactory, sized: Sized) -> Path:
    return write_wide_workbook(tmp_path_factory.mktemp("reading") / "seats.xlsx", sized(2_000))


@pytest.fixture(scope="module")
def large_workbook(tmp_path_factory: pytest.TempPathFactory, sized: Sized) -> Path:
    return write_wide_workbook(tmp_path_factory.mktemp("reading") / "seats.xlsx", sized(20_000))


def test_text_100000_rows(benchmark, large_text, sized):
    reading = benchmark.pedantic(read_table, args=(large_text,), rounds=3, iterations=1)
    assert len(reading.stations) == sized(100_000)


def test_quoted_text_100000_rows(benchmark, large_text, sized, tmp_path):
    path = tmp_path / "quoted.csv"
    with large_text.open(encoding="utf-8", newline="") as lines, path.open("w", encoding="utf-8", newline="") as stream:
        csv.writer(stream, delimiter=";", quoting=csv.QUOTE_ALL).writerows(csv.reader(lines))
    reading = benchmark.pedantic(read_table, args=(path,), rounds=3, iterations=1)
    assert len(reading.stations) == sized(100_000)


def test_text_100000_rows_pandas(benchmark, large_text, sized):
    import pandas as pd

    frame = benchmark.pedantic(pd.read_csv, args=(large_text,), kwargs={"dtype": str}, rounds=3, iterations=1)
    assert len(frame) == sized(100_000)


def test_workbook_2000_rows(benchmark, workbook, sized):
    reading = benchmark.pedantic(read_table, args=(workbook,), rounds=3, iterations=1)
    assert len(reading.stations) == sized(2_000)


def test_workbook_20000_rows(benchmark, large_workbook, sized):
    reading = benchmark.pedantic(read_table, args=(large_workbook,), rounds=1, iterations=1)
    assert len(reading.stations) == sized(20_000)


def test_workbook_2000_rows_openpyxl(benchmark, workbook, sized):
    import openpyxl

    def iterate() -> int:
        book = openpyxl.load_workbook(workbook, read_only=True)
        return sum(
            1 for sheet in book.worksheets for row in sheet.iter_rows() for cell in row if cell.value is not None
        )

    assert benchmark.pedantic(iterate, rounds=3, iterations=1) > sized(100_000)
