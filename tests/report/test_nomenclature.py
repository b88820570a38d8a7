"""The page of symbols is that of the newest release, and holds every symbol that a report of the demo shows."""

from pathlib import Path

import pytest

from linter.model.packaged import data_folder
from linter.reading import read_table
from linter.report.nomenclature import nomenclature_text
from linter.review.records import review_reading
from linter.rulebook.load import load

PAGE = data_folder("ruleset").parent / "docs" / "nomenclature.md"
SAMPLES = sorted(path for path in (Path(__file__).parents[2] / "sample_exports").iterdir() if path.is_file())


def test_the_page_is_not_stale():
    assert PAGE.read_text(encoding="utf-8") == nomenclature_text(load()), "python -m linter.refresh writes it"


def test_lines_are_sorted_and_whole():
    rows = [line.split(" | ") for line in PAGE.read_text(encoding="utf-8").splitlines() if line.startswith("| ")][1:]
    rows = [row for row in rows if set(row[0]) != set("| -")]
    assert len(rows) > 100
    assert all(len(row) == 5 and row[1] and row[4].startswith("`") for row in rows)
    symbols = [row[0].casefold() for row in rows]
    assert symbols == sorted(symbols)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_every_symbol_of_a_report_stands_there(path):
    text = PAGE.read_text(encoding="utf-8")
    shown = {
        (line.symbol, line.meaning)
        for item in review_reading(read_table(path), load(), full=True).assessments
        for line in item.working
        if line.symbol
    }
    assert len(shown) > 20
    assert [entry for entry in sorted(shown) if f"| {entry[0]} | {entry[1]} |" not in text] == []
