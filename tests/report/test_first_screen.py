"""The first finding stands within the first screen of a desk, measured in headless Chromium."""

import re
import shutil
import subprocess
from pathlib import Path

import pytest

from linter.model.packaged import data_folder
from linter.reading import read_table
from linter.report.html import html_text
from linter.review.plan.planned import with_plan
from linter.review.records import review_reading
from linter.rulebook.load import CURRENT, load

MEASURE = (
    "<script>addEventListener('load', () => {"
    "const line = document.querySelector('.plan tbody tr').getBoundingClientRect();"
    "document.title = `${line.bottom} ${document.documentElement.scrollWidth - innerWidth}`;"
    "})</script></body>"
)


@pytest.mark.skipif(shutil.which("chromium") is None, reason="chromium is not installed")
@pytest.mark.parametrize("planned", [False, True])
@pytest.mark.parametrize(("width", "height"), [(1400, 900), (500, 1100)])
def test_the_first_line_of_plan_or_findings_is_on_the_first_screen_and_nothing_runs_out_of_it(
    tmp_path: Path, width, height, planned
):
    book = load(CURRENT)
    table = data_folder("ruleset").parent / "sample_exports" / "respirator-blower.xlsx"
    reading = read_table(table)
    result = review_reading(reading, book)
    if planned:
        result = with_plan(result, reading.stations, book)
        assert result.plan
    text = html_text(result, book)
    page = tmp_path / "page.html"
    without_policy = re.sub(r'<meta http-equiv="Content-Security-Policy"[^>]*>', "", text)
    page.write_text(without_policy.replace("</body>", MEASURE), encoding="utf-8")
    call = ["chromium", "--headless", "--no-sandbox", "--disable-gpu", f"--window-size={width},{height}", "--dump-dom"]
    dom = subprocess.run([*call, page.as_uri()], capture_output=True, text=True, check=True, timeout=120).stdout
    (title,) = re.findall(r"<title>([-\d.]+ [-\d.]+)</title>", dom)
    bottom, beyond = map(float, title.split())
    assert 200 < bottom <= height and beyond <= 0
