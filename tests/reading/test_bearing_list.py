"""A firm's list of bearings: read like a table, used behind the table's own values and before printed ones."""

import json
from pathlib import Path

import openpyxl
import pytest
from click.testing import CliRunner

from linter.command.cli import main
from linter.reading import InputError, Reading, read_bearings, read_table

HEAD = "bearing_designation,ball_count,ball_diameter [mm],pitch_diameter [mm],dynamic_rating [N],cage,Supplier"
ROWS = ("608-2Z,7,3.969,15.1,3450,pressed steel,North", "6203/C3,8,6.747,28.7,9950,polyamide,North")
TABLE = "machine,station,bearing_designation,speed_max [r/min],dynamic_rating [N]\nM,A,{},20000,{}\nM,B,6203 C3,,\n"


def csv_list(folder: Path, *rows: str) -> Path:
    path = folder / "list.csv"
    path.write_text("\n".join((HEAD, *(rows or ROWS))) + "\n", encoding="utf-8")
    return path


def json_list(folder: Path) -> Path:
    path = folder / "list.json"
    names = [name.split(" [")[0] for name in HEAD.split(",")]
    bearings = [dict(zip(names, row.split(","), strict=True)) for row in ROWS]
    path.write_text(json.dumps({"bearings": bearings}), encoding="utf-8")
    return path


def workbook_list(folder: Path) -> Path:
    book = openpyxl.Workbook()
    for row in (HEAD, *ROWS):
        book.active.append(
            [float(c) if c.replace(".", "").isdigit() and i else c for i, c in enumerate(row.split(","))]
        )
    book.save(folder / "list.xlsx")
    return folder / "list.xlsx"


def read(folder: Path, listed: Path, designation: str = "608 2z", rating: str = "") -> Reading:
    path = folder / "t.csv"
    path.write_text(TABLE.format(designation, rating), encoding="utf-8")
    return read_table(path, bearings=read_bearings(listed))


@pytest.mark.parametrize("make", [csv_list, json_list, workbook_list])
def test_list_fills_what_the_table_leaves_open(tmp_path, make):
    s = read(tmp_path, make(tmp_path)).stations
    assert s.number("ball_count").tolist() == [7, 8]
    assert s.number("ball_diameter").tolist() == [3.969, 6.747]
    assert s.number("dynamic_rating").tolist() == [3450, 9950]
    assert s.choice("cage").texts().tolist() == ["pressed steel", "polyamide"]
    assert s.number("bore_diameter").tolist() == [8, 17]
    assert "list of bearings" in s.derived["ball_count"].basis[0]
    assert "bearing_designation" in s.derived["bore_diameter"].basis[0]
    assert "ball_count" not in s.assumed
    assert s.problems == ()


def test_value_of_the_table_wins_and_the_difference_is_told(tmp_path):
    reading = read(tmp_path, csv_list(tmp_path), rating="3300")
    assert reading.stations.number("dynamic_rating").tolist() == [3300, 9950]
    assert [(p.kind, p.code) for p in reading.stations.problems] == [("assumption", "designation-contradicts")]


def test_list_that_contradicts_the_designation_is_told(tmp_path):
    path = tmp_path / "list.csv"
    path.write_text("bearing_designation,bore_diameter [mm]\n608-2Z,9\n6203/C3,17\n", encoding="utf-8")
    reading = read(tmp_path, path)
    assert reading.stations.number("bore_diameter").tolist() == [9, 17]
    assert [(p.kind, p.row) for p in reading.stations.problems] == [("disagreement", 0)]


def test_designation_that_is_not_listed_is_said(tmp_path):
    reading = read(tmp_path, csv_list(tmp_path), designation="609")
    assert any("609 is not in the list" in note for note in reading.notes)
    assert any("taken from the list of bearings" in note for note in reading.notes)


@pytest.mark.parametrize(
    ("rows", "said"),
    [
        (("608,7,3.969,15.1,about 3450,pressed steel,North",), "about 3450"),
        (("608,7,3.969,15.1,3450,pressed steel,North", "608,8,3.969,15.1,3450,pressed steel,South"), "twice"),
        ((",7,3.969,15.1,3450,pressed steel,North", ROWS[0]), "names no bearing"),
    ],
)
def test_list_that_cannot_be_read_whole_is_refused(tmp_path, rows, said):
    with pytest.raises(InputError, match=said):
        read_bearings(csv_list(tmp_path, *rows))


def test_command_takes_the_list_and_refuses_one_that_is_not_there(tmp_path):
    table, out = tmp_path / "t.csv", tmp_path / "out"
    table.write_text(TABLE.format("608-2Z", ""), encoding="utf-8")
    asked = ["review", str(table), "--out", str(out), "--write", "json"]
    runner = CliRunner()
    assert runner.invoke(main, [*asked, "--bearings", str(csv_list(tmp_path))]).exit_code in (1, 3)
    (result,) = out.glob("*.result.json")
    station = json.loads(result.read_text(encoding="utf-8"))["stations"][0]
    assert station["derived"]["ball_count"]["value"] == 7
    assert runner.invoke(main, [*asked, "--bearings", str(tmp_path / "none.csv")]).exit_code == 2


def test_template_of_a_list_is_read_when_filled(tmp_path):
    out = tmp_path / "bearings.csv"
    assert CliRunner().invoke(main, ["template", "--bearings", "--out", str(out)]).exit_code == 0
    heading = out.read_text(encoding="utf-8-sig").strip()
    out.write_text(heading + "\n608,deep groove ball" + "," * (heading.count(",") - 1) + "\n", encoding="utf-8")
    assert set(read_bearings(out).bearings) == {"608"}


def test_usual_answers_are_given_in_the_call(tmp_path):
    table, out = tmp_path / "t.csv", tmp_path / "out"
    table.write_text("machine;station;Bore;Outside diameter\nM;A;0,315;0,866\nM;B;0,315;0,866\n", encoding="utf-8")
    asked = ["review", str(table), "--out", str(out), "--write", "json"]
    runner = CliRunner()
    runner.invoke(main, [*asked, "--unit", "inch", "--decimal", ",", "--encoding", "utf-8"])
    (result,) = out.glob("*.result.json")
    values = json.loads(result.read_text(encoding="utf-8"))["stations"][0]["values"]
    assert values["bore_diameter"] == pytest.approx(8.001)
    assert runner.invoke(main, [*asked, "--unit", "kg"]).exit_code == 2
    assert runner.invoke(main, [*asked, "--encoding", "no-such"]).exit_code == 2


def test_call_prints_the_command_that_proposes_names(tmp_path):
    table = tmp_path / "t.csv"
    table.write_text("station,Bore,OD\nA,8,22\nB,8,22\n", encoding="utf-8")
    asked = ["review", str(table), "--out", str(tmp_path / "out"), "--write", "json"]
    assert f"ringseat names {table}" in CliRunner().invoke(main, asked).output
    assert "ringseat names" not in CliRunner().invoke(main, [*asked, "--unit", "mm"]).output
