import base64
import hashlib
import re
from pathlib import Path

import pytest

from linter.model.vocabulary import vocabulary
from linter.report.handbook_html import handbook_html
from linter.report.handbook_text import clause_text, list_text, template_text
from linter.review.cases import run_cases
from linter.rulebook.load import load, released_versions

RAW = {"script", "iframe", "object", "embed", "base", "form", "link", "img", "input", "button"}
EXAMPLE = Path(__file__).parents[2] / "docs" / "company-rulebook"


@pytest.fixture(scope="module")
def pages():
    return {name: (load(name), handbook_html(load(name))) for name in (released_versions()[-1], str(EXAMPLE))}


@pytest.fixture(params=[released_versions()[-1], str(EXAMPLE)], ids=["newest version", "layer"])
def book_and_page(request, pages):
    return pages[request.param]


def _plain(text):
    """Text without spaces and underscores: subscripts and line breaks do not matter."""
    return re.sub(r"[\s_]+", "", text)


def test_policy_names_the_one_style_sheet(book_and_page):
    _, page = book_and_page
    (inside,) = re.findall(r"<style>(.*?)</style>", page, re.DOTALL)
    digest = base64.b64encode(hashlib.sha256(inside.encode("utf-8")).digest()).decode()
    (content,) = re.findall(r'<meta http-equiv="Content-Security-Policy" content="([^"]*)">', page)
    assert content.replace("&#39;", "'") == (
        f"default-src 'none'; style-src 'sha256-{digest}'; base-uri 'none'; form-action 'none'"
    )


def test_nothing_active_and_nothing_from_outside(book_and_page, strict):
    _, page = book_and_page
    seen = strict(page)
    assert not seen.tags & RAW
    assert not [a for a in seen.attributes if a.startswith("on") or a in ("style", "src", "srcset", "action")]
    assert all(link.startswith("#") for link in seen.links)
    style = page[page.index("<style>") : page.index("</style>")]
    assert not re.search(r"@import|url\((?!#)|https?:", style)


def test_tags_ids_links_and_headings(book_and_page, strict):
    seen = strict(book_and_page[1])
    assert len(seen.ids) == len(set(seen.ids))
    assert all(re.fullmatch(r"[a-z][a-z0-9-]*", name) for name in seen.ids)
    for target in [link[1:] for link in seen.links] + seen.labels:
        assert target in seen.ids
    assert seen.headings[0] == 1 and seen.headings.count(1) == 1
    for before, after in zip(seen.headings, seen.headings[1:], strict=False):
        assert after <= before + 1


def test_everything_of_every_clause_is_there(book_and_page, strict):
    book, page = book_and_page
    text = _plain(" ".join(strict(page).text))
    for clause in book.clauses.values():
        for part in (clause.title, clause.question, clause.arithmetic, clause.consequence, clause.measure):
            assert _plain(part).rstrip(".") in text, (clause.id, part)
        assert f"<code>{clause.id}</code>" in page
        for limit in clause.limits.values():
            assert _plain(limit.note) in text
        for case in run_cases(book, clause.id):
            assert _plain(case.record.message) in text
        for table in clause.tables.values():
            assert f"({table.file})" in page
    for source in book.sources.values():
        assert _plain(source.title) in text
    for name, parameter in vocabulary().items():
        assert f"<code>{name}</code>" in page and _plain(parameter.meaning).rstrip(".") in text
    assert book.sha256 in text and _plain("A table that meets every clause is not approved by it") in text


def test_each_table_stands_once_in_full(book_and_page):
    book, page = book_and_page
    distinct = {(t.file, t.rows) for c in book.clauses.values() for t in c.tables.values()}
    assert len(re.findall(r'id="t\d+"', page)) == len(distinct)


def test_a_picture_word_gives_a_drawing(book_and_page):
    book, page = book_and_page
    for clause in book.clauses.values():
        cases = run_cases(book, clause.id)
        article = page[page.index(f'id="c-{clause.id.replace(".", "-")}"') :].split("</article>")[0]
        assert ("<figure>" in article) == bool(clause.picture and cases), clause.id


def test_a_layer_says_what_it_loosens_and_why(pages, strict):
    book, page = pages[str(EXAMPLE)]
    text = _plain(" ".join(strict(page).text))
    assert _plain("Loosened or switched off") in text
    for entry in book.loosened:
        assert _plain(entry.what) in text and _plain(entry.reason) in text
    assert "Loosened or switched off" not in pages[released_versions()[-1]][1]


@pytest.mark.slow
def test_same_text_for_the_same_rulebook(pages):
    book, page = pages[str(EXAMPLE)]
    assert handbook_html(book) == page


@pytest.mark.slow
def test_the_terminal_says_the_same(book_and_page):
    book, _ = book_and_page
    listed = list_text(book)
    for clause in book.clauses.values():
        assert clause.id in listed and _plain(clause.title) in _plain(listed)
        text = _plain(clause_text(book, clause.id))
        for part in (
            clause.question,
            clause.arithmetic,
            clause.measure,
            clause.consequence,
            template_text(clause.remedy),
        ):
            assert _plain(part) in text
        for key in clause.limits:
            assert f"{_plain(key)}=" in text
        for case in run_cases(book, clause.id):
            assert _plain(case.record.message) in text
        for name in clause.needs:
            assert _plain(name) in text and name in listed


def test_show_of_one_clause():
    text = clause_text(load("2026.1"), "speed.seal").replace("\u00a0", " ")
    for lines in (
        """\
speed.seal: Rubbing speed of the seal lip
rulebook ringseat 2026.1, Speed; about each station

Question: Can the lip of a contact seal rub at this speed?
""",
        """
Severity: above 1: minor; above 2: major; above 3: critical
Must be judged: yes
Needs: speed_max [r/min], closure
Also uses: seal_lip_diameter [mm], inner_ring_shoulder_diameter [mm]
""",
        """
Limits
  lip_speed_low = 10 m/s (common practice) grease-lubricated nitrile lip of a sealed bearing
""",
        """
  beyond: twice the far end: finding (critical). The seal lip rubs at 28.27 m/s on 12 mm, above
      10 m/s (nitrile lips end at 14 m/s)
        closure contact seal, speed_max 45 000 r/min, seal_lip_diameter 12 mm
""",
    ):
        assert lines in text


def test_list_counts_wanted_parameters():
    text = list_text(load("2026.1"))
    assert "  speed.cage " in text and "      wants: speed_max, bore_diameter, cage\n" in text
    assert "Parameters, by the number of clauses that need them" in text
