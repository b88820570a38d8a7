"""A station that is lost in the reading is found: what is not read and looks like one is a problem that shows it."""

import json
import os

import openpyxl
import pytest

from linter.reading import InputError, read_table
from linter.reading.layouts.lost import packed_values
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

HEAD = "machine;station;bore_diameter;outside_diameter;ring_width;shaft_seat_diameter;lubrication\n"
ROW_A = "M1;A;10;26;8;10 k5;grease\n"
ROW_B = "M1;B;12;28;8;12 k5;grease\n"


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


def lost(reading) -> list[str]:
    codes = {p.code for p in reading.stations.problems if p.kind == "unreadable" and p.parameter in ("station", None)}
    assert codes <= {"values-not-read", "cut-off", "station-twice"}, codes
    return [p.message for p in reading.stations.problems if p.kind == "unreadable" and p.parameter in ("station", None)]


def test_a_table_with_both_stations_has_no_such_problem(read):
    reading = read(HEAD + ROW_A + ROW_B)
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert reading.stations.problems == ()


@pytest.mark.parametrize(
    "row",
    [
        "# " + ROW_B, "#;" + ROW_B, "// " + ROW_B, "; " + ROW_B, "-- " + ROW_B, "! " + ROW_B,
        '"' + ROW_B.rstrip("\n") + '"\n', '"' + ROW_B.replace(";", ",").rstrip("\n") + '";;;;;;\n',
        "Total;B;12;28;8;12 k5;grease\n", "End of table;B;12;28;8;;\n", "Page 2;B;12;28;8;;\n",
    ],
)  # fmt: skip
def test_a_row_taken_out_is_shown(read, row):
    messages = lost(read(HEAD + ROW_A + row + ";;;;;;\n"))
    assert len(messages) == 1
    assert "12" in messages[0] and "28" in messages[0]


def test_a_station_in_a_block_of_quotation_marks_is_shown(read):
    # a stray quotation mark opens in a cell of text and closes a line further down
    text = HEAD.replace("lubrication", "bearing_designation") + 'M1;A;10;26;8;10 k5;"6000\n' + ROW_B.strip() + '"\n'
    messages = lost(read(text))
    assert len(messages) == 1
    assert "M1;B;12;28" in messages[0]


def test_rows_that_say_little_are_no_problem(read):
    reading = read(
        "# exported;;;;;;\n"
        + HEAD
        + ROW_A
        + "# checked 2 of 3;;;;;;\n"
        + ROW_B
        + "Total;2;;;;;\nPrepared by;K. M.;;;;;\n"
        "Note: values as built;not final;;;;;\nAll dimensions in mm;;;;;;\n"
    )
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert lost(reading) == []
    assert "lengths are stated in mm" in reading.notes


def test_a_remark_behind_the_heading_shifts_no_row(read):
    reading = read(HEAD + ROW_A + ";B;12;28;8;12 k5;grease;see note\n")  # the machine stands in the row above
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert reading.stations.number("bore_diameter").tolist() == [10, 12]
    assert [p.code for p in reading.stations.problems] == ["filled-down"]


def test_rows_above_the_heading_that_hold_values_are_shown(read):
    messages = lost(read(ROW_B + HEAD + ROW_A))
    assert len(messages) == 1 and "12 k5" in messages[0]


@pytest.mark.parametrize("cut", ["M1;B;12;28;8", "M1;B;12", "M1;B"])
def test_a_last_row_cut_short_is_told(read, cut):
    (problem,) = [p for p in read(HEAD + ROW_A + cut).stations.problems if p.code == "cut-off"]
    assert "no line end" in problem.message
    assert problem.place.cell == "A3"
    assert [p for p in read(HEAD + ROW_A + cut + "\n").stations.problems if p.code == "cut-off"] == []


def test_a_whole_last_row_without_a_line_end_is_no_problem(read):
    assert read(HEAD + ROW_A + ROW_B.rstrip("\n")).stations.problems == ()


def test_a_long_table_cut_short_is_told(read):
    reading = read("name;value;unit\nmachine;M;\nstation;A;\nbore_diameter;10;mm\noutside_diameter;26")
    assert "cut-off" in [p.code for p in reading.stations.problems]


def test_a_station_named_twice_is_told(read):
    # the second row is of B and carries the name of A; bearings of one size hide it
    reading = read(HEAD + ROW_A + ROW_A)
    assert [p.code for p in reading.stations.problems] == ["station-twice"]


def test_parts_of_a_station_in_two_rows_are_no_problem(read):
    reading = read(HEAD + "M1;A;10;26;8;;\nM1;A;;;;10 k5;grease\n")
    assert reading.stations.problems == ()


LONG_A = "station;A;\nbore_diameter;10;mm\noutside_diameter;26;mm\nring_width;8;mm\n"


@pytest.mark.parametrize(
    "second",
    [
        "".join("# " + line + "\n" for line in LONG_A.replace("A", "B").strip().split("\n")),
        "-- far end of it --;;\n" + LONG_A.partition("\n")[2],
        LONG_A,
        ";12;mm\n;28;mm\n;8;mm\n",
    ],
)
def test_a_station_lost_in_a_long_table_is_told(read, second):
    assert len(lost(read("name;value;unit\nmachine;M;\n" + LONG_A + second))) == 1


def test_a_column_without_a_heading_in_a_transposed_table_is_shown(read):
    reading = read("Parameter;A;\nbore_diameter;10;12\noutside_diameter;26;28\nring_width;8;9\n")
    messages = lost(reading)
    assert len(messages) == 1 and "12, 28, 9" in messages[0]


def test_a_column_of_running_numbers_or_notes_is_no_problem(read):
    reading = read(
        "No;name;value;unit;remark\n1;machine;M;;\n2;station;A;;\n3;bore_diameter;10;mm;checked\n"
        "4;outside_diameter;26;mm;2 places\n5;ring_width;8;mm;\n"
    )
    assert lost(reading) == []


def test_two_columns_of_one_station_are_told(read):
    reading = read("Parameter;A;A\nbore_diameter;10;10\noutside_diameter;26;26\nring_width;8;8\n")
    assert [p.code for p in reading.stations.problems] == ["station-twice"]


def test_a_sheet_without_headings_that_names_the_machine_is_shown(tmp_path):
    book = openpyxl.Workbook()
    book.active.append(HEAD.strip().split(";"))
    book.active.append(["M1", "A", 10, 26, 8, "10 k5", "grease"])
    book.create_sheet("more").append(["M1", "B", 12, 28, 8, "12 k5", "grease"])
    book.create_sheet("prices").append(["6000", "supplier", 12, 28, 8])
    book.save(tmp_path / "t.xlsx")
    messages = lost(read_table(tmp_path / "t.xlsx"))
    assert len(messages) == 1 and "more" in messages[0] and "28" in messages[0]


def json_lost(tmp_path, document) -> list[str]:
    path = tmp_path / "t.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    return lost(read_table(path))


STATION = {"bore_diameter": 10, "outside_diameter": 26, "ring_width": 8}


@pytest.mark.parametrize(
    "second",
    [
        {"stations": {"A": STATION, "B": [12, 28, 8]}},
        {"stations": {"A": STATION, "B": "12; 28; 8"}},
        {"stations": [{"station": "A", **STATION}, {"station": "A", **STATION}]},
        {"stations": {"A": STATION}, "results": {"station": "B", **STATION}},
    ],
)
def test_a_station_lost_in_json_is_told(tmp_path, second):
    assert len(json_lost(tmp_path, {"machine": "M", **second})) == 1


def test_stations_of_json_that_are_read_are_no_problem(tmp_path):
    document = {"machine": "M", "stations": {"A": STATION, "B": STATION}, "results": {"stiffness": 12, "mass": 3}}
    assert json_lost(tmp_path, document) == []


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no pipes here")
def test_a_pipe_and_a_device_are_refused_at_once(tmp_path):
    os.mkfifo(tmp_path / "pipe")
    for path, what in ((tmp_path / "pipe", "a pipe"), (tmp_path, "a folder"), ("/dev/null", "a device")):
        with pytest.raises(InputError) as caught:
            read_table(path)
        assert caught.value.code == "not-a-file"
        assert what in str(caught.value)


@pytest.mark.parametrize(
    ("cell", "column", "values"),
    [
        ("12,28,8", 0, 3), ("12;28;8", 0, 3), ("12\t28\t8", 0, 3), ("12,28", 0, 0), ("x\n12,28,8\ny", 0, 3),
        ("grease,12,28,8", 0, 2), ("12,28,8,grease", 0, 4), ("8,grease,x", 2, 2), ("8,grease", 2, 0),
        (12.28, 0, 0), (None, 0, 0), ("1,2,8", 0, 0), ("1,2,18", 0, 3),
    ],
)  # fmt: skip
def test_values_packed_into_one_cell_are_counted_from_three_on(cell, column, values):
    words = Words(Names.built_in())
    headings = [words.heading(n) for n in ("bore_diameter", "outside_diameter", "ring_width", "lubrication")]
    assert packed_values(cell, headings, column) == values
