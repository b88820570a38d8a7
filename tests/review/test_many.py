"""A large table gone through part by part says what one held whole says."""

import json
import random
import re

import pytest
from attrs import evolve

from linter.model.many import ManyAssessments
from linter.reading import read_table
from linter.report.html import html_text
from linter.report.pages import report_of
from linter.report.result_json import result_text
from linter.review import many, records
from linter.review.defaults import with_defaults
from linter.review.records import review_reading
from linter.rulebook.load import load
from tests.designs.complete import complete_design
from tests.designs.faults import faulty_design

BOOK = load("2026.5")


@pytest.fixture(scope="module")
def reading(tmp_path_factory):
    """Twelve machines of two positions, half of them faulty, out of order, with a blank here and there."""
    rng = random.Random(5)
    rows = []
    for seed in range(12):
        design = faulty_design(seed)[0] if seed % 2 else complete_design(seed)
        for row in design.rows:
            kept = {name: _text(value) for name, value in row.items() if rng.random() > 0.02}
            rows.append({**kept, "machine": f"M{(7 * seed) % 12:02d}", "station": row["station"]})
    names = list(dict.fromkeys(name for row in rows for name in row))
    path = tmp_path_factory.mktemp("many") / "table.csv"
    lines = [";".join(names), *(";".join(row.get(name, "") for name in names) for row in rows)]
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    read = read_table(path, shown_as="table.csv")
    return evolve(read, stations=with_defaults(read.stations, BOOK))


def _text(value):
    if isinstance(value, list | tuple):
        nominal, *rest = value
        return f"{nominal} {rest[0]}" if isinstance(rest[0], str) else f"{nominal} {rest[1]:+g}/{rest[0]:+g}"
    return "" if value is None else str(value)


@pytest.fixture(scope="module")
def both(reading):
    """The review held whole, and the same gone through by parts of two machines."""
    whole = review_reading(reading, BOOK)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(many, "RECORD_ROWS", 4)
        patch.setattr(records, "RECORD_ROWS", 4)
        patch.setattr(records, "HELD_ROWS", 4)
        parts = review_reading(reading, BOOK)
        yield whole, parts


def test_same_records_counts_and_verdict(both):
    whole, parts = both
    assert isinstance(parts.assessments, ManyAssessments) and not isinstance(whole.assessments, ManyAssessments)
    assert tuple(parts.assessments) == whole.assessments
    assert parts.to_act_on == whole.to_act_on and len(whole.to_act_on) > 10
    assert {a.outcome for a in whole.to_act_on} == {"finding", "not assessed"}
    for name in ("outcomes", "severities", "gate", "nothing_assessed", "closing", "unjudged", "carried"):
        assert getattr(parts, name) == getattr(whole, name), name
    assert set(parts.sources) == set(whole.sources)
    assert {(e.assumed, e.machine, e.station) for e in parts.assumed} == {
        (e.assumed, e.machine, e.station) for e in whole.assumed
    }
    assert tuple(parts.of_machines({"M03", "M05"})) == tuple(whole.of_machines({"M03", "M05"}))


def test_same_result_file(both):
    texts = [result_text(result) for result in both]
    whole, parts = map(json.loads, texts)
    assert whole.pop("needed") and parts.pop("needed")  # each part finds the cells to fill among its own rows
    assert parts == whole
    of_whole, of_parts = (re.findall(r'^  \{"assumed".*$', text, re.M) for text in texts)
    assert of_parts == of_whole and len(of_whole) > 1000


@pytest.mark.parametrize("full", [False, True])
def test_same_bytes_of_a_table_that_is_one_part(both, reading, monkeypatch, full):
    whole = review_reading(reading, BOOK, full=True) if full else both[0]
    monkeypatch.setattr(records, "HELD_ROWS", 4)
    one = review_reading(reading, BOOK, full=full)
    assert isinstance(one.assessments, ManyAssessments)
    assert result_text(one) == result_text(whole)
    assert full or html_text(one, BOOK) == html_text(whole, BOOK)


def test_changed_records_are_told_again(both):
    def conceded(item):
        named = item.outcome == "finding" and item.machine == "M07"
        return evolve(item, outcome="conceded", concession="C-1") if named else item

    whole, parts = (result.changed(conceded) for result in both)
    assert whole.outcomes["conceded"] > 0 and whole.outcomes == parts.outcomes
    assert tuple(parts.assessments) == whole.assessments


def test_the_page_shows_the_gravest_and_says_so(both, monkeypatch):
    monkeypatch.setattr("linter.report.pages.IN_FULL", 3)
    monkeypatch.setattr("linter.report.html.POSITIONS", 10)
    whole, parts = both
    page = html_text(parts, BOOK)
    assert "the 3 most severe are shown in full" in page and "have no finding among those in full" in page
    shown = report_of(parts, BOOK, "gravest")
    assert {part.record.machine for part in shown.machines} == {e.item.machine for e in shown.entries[:3]}
    assert [e.number for e in shown.others] == list(range(4, len(shown.entries) + 1))
    assert {c.machine for c in shown.cells.values()} == {part.record.machine for part in shown.machines}
    of_whole = report_of(whole, BOOK, "gravest")
    assert (shown.machines, shown.entries, shown.understood) == (
        of_whole.machines,
        of_whole.entries,
        of_whole.understood,
    )
