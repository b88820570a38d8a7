"""What matters most: a step of each parameter against a review of the table that is moved by hand."""

import json
from pathlib import Path

import numpy as np
import pytest
from attrs import evolve
from jsonschema import Draft202012Validator

from linter.model.packaged import data_folder
from linter.reading import read_table
from linter.report.drawings.steps import step_bars
from linter.report.html import html_text
from linter.report.result_json import result_text
from linter.review.defaults import with_defaults
from linter.review.matters import margins, what_matters
from linter.review.records import review_reading
from linter.rulebook.load import load

TABLE = Path(__file__).parents[1] / "golden" / "small_fast.csv"
BOOK = load("current")


@pytest.fixture(scope="module")
def matters():
    return what_matters(with_defaults(read_table(TABLE).stations, BOOK), BOOK)


def test_margins():
    nothing = np.nan
    seen = np.array([8.0, 8.0, 8.0, 8.0, 12.0, 1.0, 1.0])
    low = np.array([nothing, 4.0, 0.0, -2.0, 2.0, nothing, nothing])
    high = np.array([10.0, nothing, 10.0, nothing, 10.0, 0.0, nothing])
    # 2 of 10; 4 of 4; 2 of a band of 10; 10 of 2; 2 beyond a band of 8; no share of 0; no limit
    assert margins(seen, low, high) == pytest.approx([0.2, 1.0, 0.2, 5.0, -0.25, nothing, nothing], nan_ok=True)


@pytest.mark.parametrize(
    ("parameter", "stated", "less", "more"),
    [
        ("housing_seat_runout", "0.002", "0.001", "0.003"),  # 1 um
        ("speed_max", "110000", "99000", "121000"),  # 10 %
        ("shaft_temperature", "75", "65", "85"),  # 10 K
        ("radial_clearance", "8-13", "3-8", "13-18"),  # its tolerance
        ("tolerance_class", "P5", "P6", "P4"),
        ("shaft_seat_diameter", "2.7 +0.001/-0.002", "2.7 -0.002/-0.005", "2.7 +0.004/+0.001"),
    ],
)
def test_a_step_is_what_a_review_of_the_moved_table_says(matters, tmp_path, parameter, stated, less, more):
    found = next(m for m in matters[0].matters if m.parameter == parameter)
    head, *rows = TABLE.read_text(encoding="utf-8").splitlines()
    names = [word.split(" ")[0] for word in head.split(",")]
    column, machine = names.index(parameter), names.index("machine")
    smallest = [matters[0].nearest.margin]
    for text, margin in ((less, found.less), (more, found.more)):
        lines = [head]
        for row in rows:
            cells = row.split(",")
            if cells[machine].endswith("110"):
                assert cells[column] == stated
                cells[column] = text
                lines.append(",".join(cells))
        moved = tmp_path / "moved.csv"
        moved.write_text("\n".join(lines), encoding="utf-8")
        reviewed = {}
        for a in review_reading(read_table(moved), BOOK).assessments:
            limits = [np.nan if q is None else q.value for q in (a.observed, a.lower, a.upper)]
            value = float(margins(*(np.array(v) for v in limits)))
            if not a.clause.startswith("table.") and not np.isnan(value) and (a.must or a.outcome == "finding"):
                reviewed[a.clause, a.station] = value
        smallest.append(min(reviewed.values()))
        assert reviewed.get((found.limit.clause, found.limit.station)) == pytest.approx(margin, rel=1e-6, abs=1e-9)
    assert found.moves == pytest.approx(max(np.subtract(smallest[1:], smallest[0]), key=abs), abs=1e-3)


def test_order_and_what_is_bought_has_no_step(matters):
    for machine in matters:
        order = [(-round(abs(m.moves), 6), round(m.worst, 6)) for m in machine.matters]
        assert order == sorted(order) and order[0][0] < 0
        assert not {"bore_diameter", "ball_diameter", "spacer_stack"} & {m.parameter for m in machine.matters}
        assert all(m.limit.margin >= machine.nearest.margin for m in machine.matters)


def test_page_and_result_file_tell_it_where_it_was_asked_for(matters):
    result = review_reading(read_table(TABLE), BOOK)
    assert "What matters most" not in html_text(result, BOOK) and "what_matters" not in result.as_dict()
    asked = evolve(result, what_matters=matters)
    page = html_text(asked, BOOK)
    for machine in matters:
        assert str(step_bars(machine)) in page
        for matter in machine.matters[:12]:
            assert matter.limit.title in str(step_bars(machine)).split("</desc>")[0]
    schema = json.loads((data_folder("schemas") / "result.schema.json").read_text(encoding="utf-8"))
    content = json.loads(result_text(asked))
    Draft202012Validator(schema).validate(content)
    assert [m["machine"] for m in content["what_matters"]] == [m.machine for m in matters]
