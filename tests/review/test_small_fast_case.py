"""A 2.7 x 7.5 mm bearing at 110 000 r/min with spring, washer, overhung wheel and magnet: every chapter judges it."""

from pathlib import Path

import pytest

from linter.reading import read_table
from linter.report.answers import answers, questions
from linter.report.html import html_text
from linter.report.pages import report_of
from linter.review.records import review_reading
from linter.rulebook.load import load

GOLDEN = Path(__file__).parents[1] / "golden"
TABLE = GOLDEN / "small_fast.csv"
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


@pytest.fixture(scope="module")
def described():
    return review_reading(read_table(GOLDEN / "described_rotor.csv"), BOOK)


def test_every_chapter_judges_the_machine_whose_rotor_is_described(described):
    judged = {a.clause.split(".")[0] for a in described.assessments if a.outcome in ("met", "finding")}
    assert judged == {chapter.key for chapter in BOOK.chapters} and described.gate == "open"
    said = {a.clause: a.message for a in described.assessments if a.clause.startswith("rotor.")}
    assert "computed as" in said["rotor.critical-speed"] and "blades 9" in said["rotor.orders"]
    assert "that weight and shaft_forces of the described rotor put on the bearing" in said["rotor.bearing-loads"]
    assert not [a for a in described.assessments if a.outcome == "not assessed"]


def test_the_page_of_the_machine_answers_the_questions_of_a_designer(result, described):
    for reviewed in (result, described):
        text = html_text(reviewed, BOOK)
        for part in report_of(reviewed, BOOK, "full").machines:
            page = text[text.index(f'id="{part.anchor}h"') :].split("</section>")[0]
            asked = answers(part)
            assert [question for question, _ in asked] == list(questions())
            assert "What changes with ceramic balls?" in page
            for question, lines in asked:
                assert question in page
                for line in lines:
                    found = [a for a in reviewed.assessments if a.message == line.text and a.title == line.title]
                    assert {a.station for a in found if a.machine == part.record.machine} >= set(line.places)
                    assert (line.number is None) == (found[0].outcome == "met")
                    assert f"Finding {line.number}</a>" in page or line.number is None


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
