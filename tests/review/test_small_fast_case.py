"""A bearing of 2.7 x 7.5 mm at 110 000 r/min with spring, washer and wheel: every chapter judges it."""

from pathlib import Path

import pytest

from linter.reading import read_table
from linter.report.html import html_text
from linter.review.records import review_reading
from linter.rulebook.load import load

TABLE = Path(__file__).parents[1] / "golden" / "small_fast.csv"
BOOK = load("current")


@pytest.fixture(scope="module")
def result():
    return review_reading(read_table(TABLE), BOOK)


def test_every_chapter_judges_it(result):
    for machine in result.machines:
        judged = {
            a.clause.split(".")[0]
            for a in result.assessments
            if a.machine == machine.machine and a.outcome in ("met", "finding")
        }
        assert judged == {chapter.key for chapter in BOOK.chapters}
    assert not result.failures and not [a for a in result.assessments if a.outcome == "not assessed"]


def test_the_draft_is_closed_by_preload_and_run_out_and_the_amended_one_has_remarks_only(result):
    found = {
        name: {a.clause for a in result.assessments if a.machine.endswith(name) and a.severity in ("major", "critical")}
        for name in ("110", "111")
    }
    assert found == {"110": {"preload.minimum", "alignment.seat-runout"}, "111": set()}


def test_the_report_answers_what_a_designer_asks(result):
    text = html_text(result, BOOK)
    assert "Steel against ceramic balls, A, B (stated: steel)" in text
    assert "Steel against ceramic balls, A, B (stated: silicon nitride)" in text
    observed = {a.clause: a for a in result.assessments if a.machine.endswith("110") and a.station == "A"}
    assert "its friction of 1.3\u00a0W to 2.53\u00a0W brings it to 54" in observed["heat.balance"].message
    assert "is thermally permissible" in observed["heat.reference-speed"].message
