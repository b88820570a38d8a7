import base64
import hashlib
import re

import pytest
from attrs import evolve

from linter.model.visible import visible
from linter.report import pages
from linter.report.entries import entries_of
from linter.report.html import formula, html_text
from linter.report.pages import IN_FULL

RAW = {"script", "iframe", "object", "embed", "base", "form", "link", "img", "input", "button"}


@pytest.fixture(params=["sample", "hostile", "nothing", "lean", "gravest"])
def page(request, sample, hostile, wide, rulebook):
    result = {
        "sample": sample,
        "hostile": hostile,
        "nothing": evolve(
            sample, assessments=(), understood=(), unrecognised=(), stations=(), concessions=(), notes=()
        ),
        "lean": wide(30),
        "gravest": wide(140),
    }[request.param]
    return html_text(result, rulebook)


def test_policy_names_the_one_style_sheet(page):
    (inside,) = re.findall(r"<style>(.*?)</style>", page, re.DOTALL)
    digest = base64.b64encode(hashlib.sha256(inside.encode("utf-8")).digest()).decode()
    (content,) = re.findall(r'<meta http-equiv="Content-Security-Policy" content="([^"]*)">', page)
    assert content.replace("&#39;", "'") == (
        f"default-src 'none'; style-src 'sha256-{digest}'; base-uri 'none'; form-action 'none'"
    )
    assert page.index("<style>") > page.index("Content-Security-Policy")
    assert page.index('<meta charset="utf-8">') < 200


def test_nothing_active_and_nothing_from_outside(page, strict):
    seen = strict(page)
    assert not seen.tags & RAW
    assert not [a for a in seen.attributes if a.startswith("on") or a in ("style", "src", "srcset", "action")]
    assert all(link.startswith("#") for link in seen.links)
    style = page[page.index("<style>") : page.index("</style>")]
    assert not re.search(r"@import|url\((?!#)|https?:", style)


def test_tags_ids_links_and_headings(page, strict):
    seen = strict(page)
    assert len(seen.ids) == len(set(seen.ids))
    assert all(re.fullmatch(r"[a-z][a-z0-9-]*", name) for name in seen.ids)
    for target in [link[1:] for link in seen.links] + seen.labels:
        assert target in seen.ids
    assert seen.headings[0] == 1 and seen.headings.count(1) == 1
    for before, after in zip(seen.headings, seen.headings[1:], strict=False):
        assert after <= before + 1


def test_hidden_characters_are_shown(page, strict):
    text = "".join(strict(page).text)
    assert not re.search(
        "[\x00-\x08\x0b-\x1f\x7f-\x9f\u200b-\u200f\u2028-\u202e\u2066-\u2069\ufeff\ud800-\udfff]", text
    )
    page.encode("utf-8")


def test_hostile_text_stays_text(hostile, rulebook, strict):
    seen = strict(html_text(hostile, rulebook))
    text = "".join(seen.text)
    for shown in (
        "<img src=x onerror=alert(1)>",
        '"><svg/onload=alert(1)>',
        "</style><script>alert(1)</script>",
        "{{7*7}}",
        "[U+202E]gnp.exe[U+2066]",
        "a␀b␛[31mred␇",
        "half [U+D800] pair [U+DC00]",
        "(cut here; 100000 characters)",
        "&#x3C;script&#x3E;",
    ):
        assert shown in text


def test_visible_leaves_plain_text_alone():
    assert visible("4 k5 (+0.006/+0.001) mm, ⌀ µm – größer") == "4 k5 (+0.006/+0.001) mm, ⌀ µm – größer"


def test_same_bytes_and_a_date_only_where_given(sample, rulebook):
    assert html_text(sample, rulebook) == html_text(sample, rulebook)
    assert "2026-11-25" not in html_text(sample, rulebook)
    assert "2026-11-25" in html_text(sample, rulebook, date="2026-11-25")


def test_says_what_was_reviewed_and_why_the_gate_stands(sample, rulebook, strict):
    text = " ".join(" ".join(strict(html_text(sample, rulebook)).text).split())
    for wanted in (
        "The gate is closed",
        "10 findings are major or more severe.",
        sample.input.sha256,
        sample.rulebook.sha256,
        "DE-210, C",
        "No contact seals are used here.",
        "K-3, expired.",
        "Sheet Old is hidden",
        "required_life",
        "RAL 7035",
        "h5 → k5",
        "(line 1 of the plan)",
        "Where this is not so (fillet clears the ring chamfer)",
    ):
        assert wanted in text


def test_open_gate_is_not_called_an_approval(sample, rulebook, strict):
    met = tuple(
        evolve(a, clause="speed.factor") if a.outcome == "met" else a
        for a in sample.assessments
        if a.outcome in ("met", "not assessed")
    )
    text = " ".join(" ".join(strict(html_text(evolve(sample, assessments=met), rulebook)).text).split())
    assert "The gate is open" in text and "No finding is major or more severe." in text
    assert "A review that finds nothing is not an approval" in text


def test_two_hundred_stations_stay_below_5_mb_and_lose_no_finding(wide, rulebook, strict):
    result = wide(100)
    text = html_text(result, rulebook)
    assert len(text.encode("utf-8")) < 5_000_000
    found = result.outcomes["finding"] + result.outcomes["conceded"]
    entries = entries_of(a for a in result.assessments if a.outcome in ("finding", "conceded"))
    assert sorted(id(a) for e in entries for a in e.everything) == sorted(
        id(a) for a in result.assessments if a.outcome in ("finding", "conceded")
    )
    shown = sorted(int(i[1:]) for i in strict(text).ids if re.fullmatch(r"f\d+", i))
    assert shown == list(range(1, len(entries) + 1)) and found > len(entries)
    assert "make this a long report" in text


def test_a_long_report_keeps_each_finding_with_its_change(wide, rulebook, strict):
    result = wide(140)
    text = "".join(strict(html_text(result, rulebook)).text)
    entries = entries_of(a for a in result.assessments if a.outcome in ("finding", "conceded"))
    assert f"the {IN_FULL} most severe are shown in full and the next {len(entries) - IN_FULL} as a table" in text
    assert text.count("h5 → k5") == sum(entry.item.clause == "fit.shaft-class" for entry in entries) == 140


def test_a_report_of_very_many_findings_counts_the_last_ones(wide, rulebook, strict, monkeypatch):
    monkeypatch.setattr(pages, "IN_TABLE", 300)
    result = wide(140)
    page = strict(html_text(result, rulebook))
    entries = entries_of(a for a in result.assessments if a.outcome in ("finding", "conceded"))
    text = "".join(page.text)
    assert f"the next {300 - IN_FULL} as a table" in text
    assert text.count(f"{len(entries) - 300} more are in the result file") == 2
    assert {link[1:] for link in page.links} <= set(page.ids)
    assert "f300" in page.ids and "f301" not in page.ids


def test_a_remedy_names_the_cell_and_what_stands_there(sample, rulebook, strict):
    text = " ".join("".join(strict(html_text(sample, rulebook)).text).split())
    assert "Make shaft fillet radius 0.2 mm or less, or give the shoulder an undercut." in text
    assert "Seats D20 shaft fillet radius ra, now 0.3 mm" in text
    assert "required life Lreq" in text


def test_the_index_names_the_cell_of_a_remedy_without_a_plan(sample, rulebook):
    bare = evolve(sample, assessments=tuple(evolve(item, clears_with=()) for item in sample.assessments), plan=())
    text = html_text(bare, rulebook)
    index = text[text.index('id="h-index"') :].partition("</table>")[0]
    cells = '<span class="cell">Seats D20</span>, <span class="cell">Seats E20</span>: '
    assert f"{cells}Make shaft fillet radius 0.2" in index.replace("\u00a0", " ")


def test_subscripts():
    assert formula("n·d_m = n (d + D)/2, r_s min, D_pw") == (
        "n·d<sub>m</sub> = n (d + D)/2, r<sub>s min</sub>, D<sub>pw</sub>"
    )
    assert formula("shaft_fillet_radius <b> U_res/F") == "shaft_fillet_radius &lt;b&gt; U<sub>res</sub>/F"
