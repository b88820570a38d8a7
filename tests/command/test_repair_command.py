"""``ringseat repair``: the table with its plan, in its own layout, judged as the plan says."""

import json
import random
import shutil
from pathlib import Path

import openpyxl
import pytest
from click.testing import CliRunner
from jsonschema import Draft4Validator

from linter.command.cli import main
from linter.model.places import Place
from linter.model.plan import SizeValue
from linter.reading import read_table
from linter.report.repaired.files import MARK, Edit, NotWritten, edited, replaced
from linter.report.repaired.texts import variants
from linter.rulebook.load import load
from tests.designs.complete import complete_design
from tests.designs.faults import FAULTS
from tests.designs.spoil import LAYOUTS, sheet, sheet_text
from tests.designs.sweep import result_of

BOOK = load()
PLANTED = ("shaft seat loose under a rotating load", "fillet larger than the ring chamfer", "shaft seat runs out")


@pytest.fixture(scope="module")
def schema() -> Draft4Validator:
    path = Path(__file__).parents[1] / "report/data/sarif-schema-2.1.0.json"
    return Draft4Validator(json.loads(path.read_text(encoding="utf-8")))


@pytest.fixture(scope="module")
def faulty():
    design = next(
        d
        for d in map(complete_design, range(60))
        if d.rows[0]["rotating_ring"] == "inner" and result_of(list(d.rows), BOOK).gate == "open"
    )
    rng = random.Random(3)
    for name in PLANTED:
        design = FAULTS[name].plant(design, rng)
    return design


def call(*arguments: object, code: int = 0):
    result = CliRunner().invoke(main, ["repair", *map(str, arguments)])
    assert result.exit_code == code, result.output
    assert "Traceback" not in result.output
    return result


@pytest.mark.parametrize("layout", LAYOUTS)
def test_a_repaired_table_has_its_own_layout_and_an_open_gate(faulty, layout, tmp_path):
    suffix, content = sheet_text(sheet(faulty), layout)
    table = tmp_path / f"fan{suffix}"
    table.write_bytes(content)
    result = call(table, "--out", tmp_path / "out")
    assert "gate closed -> open" in result.output and "template" not in result.output
    assert table.read_bytes() == content
    repaired = tmp_path / "out" / f"fan.repaired{suffix}"
    assert read_table(repaired).layout == read_table(table).layout
    plan = json.loads((tmp_path / "out" / "fan.plan.json").read_text(encoding="utf-8"))
    assert plan["layout"] == "own" and plan["plan_result"]["gate"] == "open"
    places = {json.dumps(cell["place"], sort_keys=True) for cell in plan["cells"]}
    assert len(places) == len(plan["cells"]) >= len(plan["plan"]) == 3
    again = json.loads((tmp_path / "out" / "fan.repaired.result.json").read_text(encoding="utf-8"))
    assert again["summary"]["gate"] == "open"
    assert again["summary"]["severities"] == plan["plan_result"]["severities"]
    assert "The gate is open" in (tmp_path / "out" / "fan.repaired.html").read_text(encoding="utf-8")


def test_in_text_only_the_cells_of_the_plan_differ(faulty, tmp_path):
    suffix, content = sheet_text(sheet(faulty), "wide")
    table = tmp_path / f"fan{suffix}"
    table.write_bytes(content)
    call(table, "--out", tmp_path)
    before, after = (
        content.decode().split(","),
        (tmp_path / "fan.repaired.csv").read_text(encoding="utf-8").split(","),
    )
    plan = json.loads((tmp_path / "fan.plan.json").read_text(encoding="utf-8"))
    assert len(before) == len(after)
    assert sum(a != b for a, b in zip(before, after, strict=True)) == len(plan["cells"])


def test_in_a_workbook_changed_cells_are_marked_and_say_what_they_were(faulty, tmp_path):
    suffix, content = sheet_text(sheet(faulty), "xlsx")
    table = tmp_path / f"fan{suffix}"
    table.write_bytes(content)
    call(table, "--out", tmp_path)
    plan = json.loads((tmp_path / "fan.plan.json").read_text(encoding="utf-8"))
    book = openpyxl.load_workbook(tmp_path / "fan.repaired.xlsx")
    marked = {
        (sheet.title, cell.coordinate): cell.comment.text
        for sheet in book
        for line in sheet.iter_rows()
        for cell in line
        if cell.fill.fgColor.rgb == MARK
    }
    assert set(marked) == {(cell["place"]["sheet"], cell["place"]["cell"]) for cell in plan["cells"]}
    for cell in plan["cells"]:
        assert f"was {cell['from']}" in marked[(cell["place"]["sheet"], cell["place"]["cell"])]


def test_a_value_that_no_cell_holds_goes_into_the_layout_of_the_template(tmp_path):
    design = next(
        d
        for d in map(complete_design, range(200))
        if FAULTS["form and run-out not stated at one station"].needed(d)
        and result_of(list(d.rows), BOOK).gate == "open"
    )
    rows = [dict(row) for row in design.rows]
    for row in rows:
        for part in ("seat_cylindricity", "seat_runout", "shoulder_runout"):
            for side in ("shaft", "housing"):
                row.pop(f"{side}_{part}", None)
    table = tmp_path / "fan.csv"
    table.write_bytes(sheet_text(sheet(design.with_rows(rows)), "wide")[1])
    result = call(table, "--out", tmp_path / "out", code=0)
    assert "written in the layout of the template, because" in result.output
    plan = json.loads((tmp_path / "out" / "fan.plan.json").read_text(encoding="utf-8"))
    assert plan["layout"] == "template" and plan["not_written"] and plan["plan_result"]["gate"] == "open"
    assert read_table(tmp_path / "out" / "fan.repaired.csv").stations.problems == ()


def test_a_table_that_passes_is_written_as_it_is(tmp_path):
    table = tmp_path / "pump.csv"
    shutil.copy(Path(__file__).parents[2] / "sample_exports" / "coolant-pump.csv", table)
    result = call(table, "--out", tmp_path / "out")
    assert "0 changes; gate open -> open" in result.output
    assert (tmp_path / "out" / "pump.repaired.csv").read_bytes() == table.read_bytes()


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["none.csv"], "none.csv"),
        (["fan.csv", "--keep", "shaft_seat_diametre"], "--keep shaft_seat_diametre: no parameter of that name"),
        (["fan.csv", "--free", "nothing"], "--free nothing: no parameter of that name"),
        (["prose.csv"], "prose.csv"),
    ],
)
def test_what_cannot_be_repaired_is_one_line_and_nothing_is_written(arguments, said, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("prose.csv").write_text("dear all,\nhere is the drawing\n", encoding="utf-8")
    shutil.copy(Path(__file__).parents[2] / "sample_exports" / "coolant-pump.csv", "fan.csv")
    result = CliRunner().invoke(main, ["repair", *arguments, "--out", "out"])
    assert result.exit_code == 2
    lines = result.stderr.strip().splitlines()
    assert len(lines) == 1 and said in lines[0]
    assert not Path("out").exists()


def test_keep_is_held_by_the_review_too(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    shutil.copy(Path(__file__).parents[2] / "sample_exports" / "coolant-pump.csv", "fan.csv")
    result = CliRunner().invoke(main, ["review", "fan.csv", "--keep", "nothing"])
    assert result.exit_code == 2 and "--keep nothing: no parameter of that name" in result.stderr


OLD, NEW = SizeValue(25.0, 0.002, 0.011, "k5"), SizeValue(25.0, 0.008, 0.017, "m5")


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("25 k5", "25 m5"),
        ("25k5", "25m5"),
        ("25 k5 (+0.011/+0.002)", "25 m5 (+0.017/+0.008)"),
        ("25 +0,011/+0,002", "25 +0,017/+0,008"),
        ("\u230025 k5 mm", "\u230025 m5 mm"),
        ("25.002-25.011", "25.008-25.017"),
        ("25 +11/+2", None),
    ],
)
def test_a_size_is_written_as_it_was(text, wanted):
    found = list(variants(text, OLD, NEW, "," in text))
    assert found[0] == wanted if wanted else found[0] == "25 m5"


@pytest.mark.parametrize(
    ("text", "old", "new", "wanted"),
    [
        ("4", 0.004, 0.0025, "2.5"),
        ("0,004 mm", 0.004, 0.0025, "0,0025 mm"),
        ("0.5 in", 12.7, 25.4, "1 in"),
        ("grease", "grease", "oil-air", "oil-air"),
    ],
)
def test_a_number_keeps_its_unit_and_decimal_mark(text, old, new, wanted):
    assert next(iter(variants(text, old, new, False))) == wanted


def test_a_cell_that_says_something_else_is_not_overwritten():
    edit = Edit(Place("t.csv", None, "B2"), "25 k5", "25 m5", "")
    with pytest.raises(NotWritten, match="the field says '26 k5'"):
        edited(b"a,b\n1,26 k5\n", [edit])
    assert edited(b"a;b\r\n1;25 k5\r\n", [edit]) == b"a;b\r\n1;25 m5\r\n"
    assert edited('a,b\n1,"25 k5"\n'.encode("utf-16"), [edit]).decode("utf-16") == 'a,b\n1,"25 m5"\n'
    node = Edit(Place("t.json", None, None, "/s/1/x~1y"), "3", "4", "")
    assert edited(b'{"s": [1, {"x/y": 3.0 , "z": [1]}]}', [node]) == b'{"s": [1, {"x/y": 4 , "z": [1]}]}'
    with pytest.raises(NotWritten, match="no such value"):
        edited(b'{"s": []}', [node])


@pytest.mark.parametrize("layout", ["wide", "json"])
def test_the_fixes_of_a_log_make_the_repaired_table(faulty, layout, tmp_path, schema):
    suffix, content = sheet_text(sheet(faulty), layout)
    table = tmp_path / f"fan{suffix}"
    table.write_bytes(content)
    call(table, "--out", tmp_path)
    arguments = ["review", str(table), "--write", "sarif", "--out", str(tmp_path)]
    assert CliRunner().invoke(main, arguments).exit_code == 1
    log = json.loads((tmp_path / "fan.sarif").read_text(encoding="utf-8"))
    schema.validate(log)
    (run,) = log["runs"]
    assert run["columnKind"] == "unicodeCodePoints"
    pieces = {}
    for result in run["results"]:
        lines = {change["line"] for change in result["properties"].get("clearsWith", ())}
        assert ("fixes" in result) == bool(lines)
        for fix in result.get("fixes", ()):
            assert fix["description"]["text"].startswith("Line ")
            (change,) = fix["artifactChanges"]
            assert change["artifactLocation"] == run["artifacts"][0]["location"] | {"index": 0}
            for piece in change["replacements"]:
                region = piece["deletedRegion"]
                key = (region["startLine"], region["startColumn"], region["endLine"], region["endColumn"])
                assert pieces.setdefault(key, piece["insertedContent"]["text"]) == piece["insertedContent"]["text"]
    rows = content.decode().splitlines(keepends=True)
    for (line, start, last, stop), text in sorted(pieces.items(), reverse=True):
        assert line == last
        rows[line - 1] = rows[line - 1][: start - 1] + text + rows[line - 1][stop - 1 :]
    assert "".join(rows) == (tmp_path / f"fan.repaired{suffix}").read_text(encoding="utf-8")


def test_a_workbook_has_no_fixes_and_names_its_cells(faulty, tmp_path):
    suffix, content = sheet_text(sheet(faulty), "xlsx")
    table = tmp_path / f"fan{suffix}"
    table.write_bytes(content)
    CliRunner().invoke(main, ["review", str(table), "--write", "sarif", "--out", str(tmp_path)])
    (run,) = json.loads((tmp_path / "fan.sarif").read_text(encoding="utf-8"))["runs"]
    served = [result for result in run["results"] if result["properties"].get("clearsWith")]
    assert served and not any("fixes" in result for result in run["results"])
    assert all("In the plan: line " in result["properties"]["remedy"] for result in served)


def test_a_mark_of_byte_order_is_no_column_and_one_cell_has_one_change():
    edit = Edit(Place("t.csv", None, "A1"), "4 k5", "4 m5", "")
    (piece,) = replaced(b"\xef\xbb\xbf4 k5;8\r\n", [edit])
    assert (piece.line, piece.column, piece.end_line, piece.end_column, piece.text) == (1, 1, 1, 5, "4 m5")
    with pytest.raises(NotWritten, match="two lines of the plan"):
        edited(b"4 k5;8\n", [edit, edit])
    with pytest.raises(NotWritten, match="no lines"):
        replaced(b"PK\x03\x04", [edit])
