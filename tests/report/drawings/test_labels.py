"""No label of a drawing overlaps another or is cut off, over the demos and generated tables, wide and narrow."""

import itertools
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from markupsafe import Markup

from linter.model.findings import ReviewResult
from linter.model.packaged import data_folder
from linter.reading import Reading, read_table
from linter.report.drawings.half_section import FEATURES, half_section
from linter.report.drawings.machine_sheet import Position
from linter.report.pages import report_of
from linter.report.pictures import machine_pictures, marked, picture
from linter.review.records import review_reading
from linter.rulebook.load import CURRENT, load
from linter.rulebook.model import Rulebook
from tests.designs.complete import complete_design
from tests.designs.faults import faulty_design
from tests.report.drawings.looked_at import CHROMIUM, faults

DEMOS = sorted((data_folder("ruleset").parent / "sample_exports").iterdir())


def of_result(name: str, result: ReviewResult, book: Rulebook) -> Iterator[tuple[str, Markup]]:
    report = report_of(result, book, "full")
    for part in report.machines:
        positions = [Position(s.station or "", s.values, marked(s.here)) for s in part.sections if s.values is not None]
        for kind, drawn in machine_pictures(positions, [1, 2], book).items():
            yield f"{name} {kind}", drawn
        for section in part.sections:
            if section.values is not None and (drawn := half_section(section.values, marked(section.here))):
                yield f"{name} {section.station} half section", drawn
    for item in result.assessments:
        if item.working and (drawn := picture(item, book)):
            yield f"{name} {item.station} {item.clause}", drawn


def every_drawing(designs: range) -> Iterator[tuple[str, Markup]]:
    book = load(CURRENT)
    for path in DEMOS:
        yield from of_result(path.stem, review_reading(read_table(path), book, full=True), book)
    for seed in designs:
        for kind, design in (("sound", complete_design(seed)), ("faulty", faulty_design(seed)[0])):
            reading = Reading("", "", "", design.stations(), (), (), understand=list)
            yield from of_result(f"{kind} {seed}", review_reading(reading, book, full=True), book)


@pytest.mark.skipif(CHROMIUM is None, reason="chromium is not installed")
@pytest.mark.parametrize("width", [1400, 390])
def test_no_label_overlaps_or_is_cut_off(tmp_path: Path, width):
    drawn = list(every_drawing(range(6)))
    assert len(drawn) > 200
    assert faults(drawn, tmp_path, width) == []


def test_leaders_do_not_cross():
    def side(p, q, r) -> float:
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])

    crossings, leaders = [], 0
    everything = {name: (k,) for k, name in enumerate(FEATURES)}
    full = [
        (f"{section.station} {keep}", half_section(section.values, dict(list(everything.items())[::keep])))
        for path in DEMOS
        for section in review_reading(read_table(path), load(CURRENT)).stations
        for keep in (1, 2, 3)
    ]
    for name, svg in [*every_drawing(range(3)), *full]:
        found = re.findall(r'class="leader" d="M ([-\d.]+) ([-\d.]+) L ([-\d.]+) ([-\d.]+) ', str(svg))
        lines = [((float(a), float(b)), (float(c), float(d))) for a, b, c, d in found]
        leaders += len(lines)
        for (a, b), (c, d) in itertools.combinations(lines, 2):
            apart = min(abs(v) for v in (side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)))
            if apart > 1 and side(a, b, c) * side(a, b, d) < 0 and side(c, d, a) * side(c, d, b) < 0:
                crossings.append((name, a, c))
    assert leaders > 400 and crossings == []


@pytest.mark.skipif(CHROMIUM is None, reason="chromium is not installed")
def test_the_measure_itself(tmp_path: Path):
    from linter.report.drawings.svg import drawing, words

    parts = [words(10, 20, "one label"), words(20, 22, "another"), words(95, 60, "cut off here")]
    found = faults([("tried", drawing("x", 100, 80, "t", "d", parts))], tmp_path)
    assert [(kind, text) for _, kind, text, _, _ in found] == [("overlap", "one label"), ("cut", "cut off here")]
