from attrs import evolve

from linter.model.findings import InputRecord
from linter.report.index import Listed, Unread, index_text


def test_same_page_in_any_order(sample, strict):
    other = evolve(sample, input=InputRecord("b.csv", "11" * 32, "one row per station"), assessments=())
    listed = [Listed.of(sample, "dust_extractor.report.html"), Listed.of(other, "b.report.html")]
    unread = [Unread("z.xlsx", "not a workbook"), Unread("a.xlsx", "encrypted")]
    page = index_text(listed, unread)
    assert page == index_text(listed[::-1], unread[::-1])
    seen = strict(page)
    text = " ".join(" ".join(seen.text).split())
    assert "4 tables" in text and "closed for 2 of 2 tables" in text and "2 tables could not be read" in text
    assert "./b.report.html" in seen.links and page.index("b.csv") < page.index("dust_extractor.xlsx")
    assert "encrypted" in text and "not a workbook" in text


def test_names_cannot_leave_the_folder_or_the_page(hostile, strict):
    page = index_text([Listed.of(hostile, '../x"><script>.html')], [Unread("<b>", "</style><script>")])
    seen = strict(page)
    assert "script" not in seen.tags and "b" in seen.tags
    (link,) = [link for link in seen.links if not link.startswith("#")]
    assert link == "./..%2Fx%22%3E%3Cscript%3E.html"
    page.encode("utf-8")


def test_nothing_reviewed_is_not_open(strict):
    text = " ".join(strict(index_text([])).text)
    assert "Nothing was reviewed" in text and "gate is open" not in text
