"""Files as offices really send them: what is certain is read, and every doubt names its cell."""

import json
import math
from pathlib import Path

import openpyxl
import pytest
import xlsxwriter

from linter.reading import InputError, Reading, read_table


def read(tmp_path: Path, content: str | list[list[object]] | dict[str, object], suffix: str = ".csv") -> Reading:
    """A table as read: a list of rows is written as a workbook, a dict as JSON."""
    path = tmp_path / f"table{suffix if isinstance(content, str) else '.file'}"
    if isinstance(content, list):
        book = openpyxl.Workbook()
        for row in content:
            book.active.append(row)
        book.save(path)
    else:
        path.write_text(content if isinstance(content, str) else json.dumps(content), encoding="utf-8", newline="")
    return read_table(path, shown_as="table")


def problems(reading: Reading) -> set[tuple[str, str]]:
    """Codes of all problems with their cells."""
    return {(p.code, p.place.short() if p.place else "") for p in reading.stations.problems}


def cell(tmp_path: Path, parameter: str, text: str) -> tuple[Reading, set[str]]:
    """One text below the name of a parameter, in a file whose decimal point is proved, and the codes it raises."""
    quoted = text.replace('"', '""')
    reading = read(tmp_path, f'machine,station,{parameter},ring_width\nFan,A,"{quoted}",6.25\nFan,B,9.25,6.25\n')
    return reading, {p.code for p in reading.stations.problems if p.place and p.place.cell == "C2"}


# --- long tables


def test_remarks_beside_values_are_no_station(tmp_path: Path) -> None:
    reading = read(
        tmp_path,
        "machine,Blower 7,\nstation,A,rotor side\nbore_diameter,7.5,inner\nshaft_seat_diameter,7.5 k5,seat\n"
        "station,B,\nbore_diameter,8.5,second\n",
    )
    stations = reading.stations
    assert list(stations.text("station")) == ["A", "B"]
    assert stations.number("bore_diameter").tolist() == [7.5, 8.5]
    assert [u.reason for u in reading.unused] == ["a column of notes"]


def test_first_row_of_data_is_not_eaten_as_a_heading(tmp_path: Path) -> None:
    reading = read(tmp_path, "flange_count,4,holes\nstation,A,\nbore_diameter,7.5,inner\n")
    assert list(reading.stations.text("station")) == ["A"]
    assert next((u.name, u.value) for u in reading.unused) == ("flange_count", "4")


@pytest.mark.parametrize("unit", ["", "-", "ul"])
def test_unit_hidden_in_an_expression(tmp_path: Path, unit: str) -> None:
    reading = read(
        tmp_path, f"name;unit;expression;value\nstation;;A;A\nbore_diameter;{unit};( 2 in ) / in;2\n", ".txt"
    )
    assert reading.stations.number("bore_diameter").tolist() == [50.8]
    assert problems(reading) == {("hidden-unit", "D3")}


def test_length_that_is_stated_to_have_no_unit(tmp_path: Path) -> None:
    reading = read(tmp_path, "name;unit;value\nstation;-;A\nbore_diameter;-;7.5\n")
    assert math.isnan(reading.stations.number("bore_diameter")[0])
    assert problems(reading) == {("unknown-unit", "C3")}


def test_limits_named_in_a_column_beside_the_names(tmp_path: Path) -> None:
    rows: list[list[object]] = [
        ["parameter", "limit", "A", "B"],
        ["shaft_seat_diameter", "Max", 7.506, 8.506],
        [None, "Min", 7.501, 8.501],
        ["bore_diameter", None, 7.5, 8.5],
    ]
    size = read(tmp_path, rows).stations.size("shaft_seat_diameter")
    assert size.upper.tolist() == pytest.approx([0.006, 0.006])
    assert size.lower.tolist() == pytest.approx([0.001, 0.001])


def test_heading_of_a_revision_table_is_no_revision(tmp_path: Path) -> None:
    path = tmp_path / "book.xlsx"
    book = openpyxl.Workbook()
    for row in (["machine", "station", "bore_diameter"], ["Fan", "A", 7.5]):
        book.active.append(row)
    history = book.create_sheet("Revisions")
    for row in (["Rev", "Date", "By", "What"], ["C", "May", "N. N.", "first issue"]):
        history.append(row)
    book.save(path)
    reading = read_table(path)
    assert "drawing_revision" not in reading.stations.texts
    assert {u.value for u in reading.unused} >= {"Rev", "Date", "C"}


# --- equation files


def test_equation_file_loses_no_line(tmp_path: Path) -> None:
    reading = read(
        tmp_path,
        '\'pump 3\n"shaft_seat_diameter@A"= 7.5mm \'first\n"bore_diameter@A"=\n"ring_width@A"\nlone\n'
        '"D1@Seat A"="shaft_seat_diameter@A"\n"outside_diameter@A"= "bore_diameter@A" * 3\n',
        ".txt",
    )
    assert problems(reading) == {("no-value", "B3"), ("no-value", "B4"), ("expression", "B7")}
    listed = [(u.name, u.value, u.place.cell if u.place else "") for u in reading.unused]
    assert any("pump 3" in note for note in reading.notes)  # the title names the machine
    assert listed == [
        ("lone", "a name without a value", "B5"),
        ("D1@Seat A", '"shaft_seat_diameter@A"', "B6"),
        ("", "first", "C2"),
    ]


# --- deviation columns


@pytest.mark.parametrize("heading", ["-Tol", "shaft_seat_diameter_tol-", "shaft_seat_diameter tol -"])
@pytest.mark.parametrize(("text", "lower"), [("0.004", math.nan), ("-0.004", -0.004), ("+0.004", 0.004), ("0", 0.0)])
def test_number_without_a_sign_below_a_minus(tmp_path: Path, heading: str, text: str, lower: float) -> None:
    reading = read(tmp_path, f"machine,station,shaft_seat_diameter,+Tol,{heading}\nPump,A,10.5,0.006,{text}\n")
    assert reading.stations.size("shaft_seat_diameter").lower.tolist() == pytest.approx([lower], nan_ok=True)
    assert (("unsigned-deviation", "E2") in problems(reading)) == math.isnan(lower)


def test_number_without_a_sign_below_a_minus_in_other_layouts(tmp_path: Path) -> None:
    long = read(tmp_path, "name,value,+Tol,-Tol\nstation,A,,\nshaft_seat_diameter,10.5,0.006,0.004\n")
    assert ("unsigned-deviation", "D3") in problems(long)
    nested = read(tmp_path, {"station": "A", "shaft_seat_diameter": {"nominal": 7.5, "plus": 0.007, "minus": 0.004}})
    assert ("unsigned-deviation", "/shaft_seat_diameter/minus") in problems(nested)


def test_equal_deviations_lack_a_sign(tmp_path: Path) -> None:
    reading = read(tmp_path, "machine,station,shaft_seat_diameter,Upper Tol,Lower Tol\nPump,A,10.5,0.005,0.005\n")
    assert ("unsigned-deviations", "D2") in problems(reading)
    assert math.isnan(reading.stations.size("shaft_seat_diameter").upper[0])


# --- wide tables


def test_asterisk_takes_the_generic_row_of_its_station(tmp_path: Path) -> None:
    reading = read(
        tmp_path,
        "machine,station,bore_diameter\nGeneric,A,10.5\nGeneric,B,11.5\nV1,A,*\nV1,B,*\nV1,C,*\n",
    )
    assert reading.stations.number("bore_diameter").tolist() == pytest.approx(
        [10.5, 11.5, 10.5, 11.5, math.nan], nan_ok=True
    )
    assert problems(reading) == {("inherited", "C4"), ("inherited", "C5"), ("see-above", "C6")}


def test_row_of_a_struck_out_machine_is_not_used(tmp_path: Path) -> None:
    path = tmp_path / "book.xlsx"
    book = openpyxl.Workbook()
    for row in (["machine", "station", "bore_diameter"], ["Fan", "A", 7.5], ["Fan", "B", 8.5]):
        book.active.append(row)
    book.active["A3"].font = openpyxl.styles.Font(strike=True)
    book.save(path)
    reading = read_table(path)
    assert list(reading.stations.text("station")) == ["A"]
    assert problems(reading) == {("unreadable-key", "Sheet A3")}
    assert {u.value for u in reading.unused} == {"B", "8.5"}


def test_heading_of_three_rows(tmp_path: Path) -> None:
    path = tmp_path / "book.xlsx"
    book = openpyxl.Workbook()
    for row in (
        ["Units", "mm", None, None],
        ["machine", "station", "Shaft seat", None],
        [None, None, "diameter", None],
        [None, None, "Min", "Max"],
        ["Fan", "A", 7.501, 7.506],
    ):
        book.active.append(row)
    for merged in ("A2:A4", "B2:B4", "C2:D2", "C3:D3"):
        book.active.merge_cells(merged)
    book.save(path)
    size = read_table(path).stations.size("shaft_seat_diameter")
    assert size.upper.tolist() == pytest.approx([0.0025])


def test_cell_that_shows_another_unit_than_its_heading(tmp_path: Path) -> None:
    path = tmp_path / "book.xlsx"
    book = openpyxl.Workbook()
    for row in (["machine", "station", "bore_diameter [mm]"], ["Fan", "A", 7.5], ["Fan", "B", 0.5]):
        book.active.append(row)
    book.active["C3"].number_format = '0.000" in"'
    book.save(path)
    assert read_table(path).stations.number("bore_diameter").tolist() == [7.5, 12.7]


def test_workbook_says_what_its_numbers_do_not(tmp_path: Path) -> None:
    path = tmp_path / "book.xlsx"
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.append(["machine", "station", "bore_diameter", "ring_width", "outside_diameter"])
    for station in "ABC":
        sheet.append(["Fan", station, 7.5, 7.25, 22.5])
    sheet["C3"].fill = openpyxl.styles.PatternFill("solid", fgColor="FFFF0000")
    sheet.row_dimensions[4].hidden = True
    sheet.column_dimensions["D"].hidden = True
    sheet.auto_filter.ref = "A1:E4"
    sheet.auto_filter.add_filter_column(1, ["A"])
    book.save(path)
    reading = read_table(path)
    assert reading.stations.number("bore_diameter").tolist() == [7.5, 7.5, 7.5]
    assert reading.notes[:4] == (
        "sheet Sheet has 1 hidden row (4); read too",
        "sheet Sheet has 1 hidden column (D); read too",
        "sheet Sheet is filtered; rows that the filter hides are read too",
        "sheet Sheet: colours are not read; these numbers stand on a colour of their own: C3",
    )


def test_value_of_another_workbook_may_be_out_of_date(tmp_path: Path) -> None:
    path = tmp_path / "book.xlsx"
    book = xlsxwriter.Workbook(path)
    sheet = book.add_worksheet("Seats")
    sheet.write_row(0, 0, ["machine", "station", "bore_diameter"])
    sheet.write_row(1, 0, ["Fan", "A"])
    sheet.write_formula("C2", "='[Master.xlsx]Sizes'!$A$1", None, 7.5)
    sheet.write_row(2, 0, ["Fan", "B"])
    sheet.write_formula("C3", "=[1]Sizes!A1*2", None, 8.5)
    book.close()
    reading = read_table(path)
    assert reading.stations.number("bore_diameter").tolist() == [7.5, 8.5]
    assert reading.notes[0] == (
        "sheet Seats: C2, C3 refer to another workbook, which is not opened; the stored value is read and may be out "
        "of date"
    )


# --- single cells


@pytest.mark.parametrize(
    ("parameter", "text", "code"),
    [
        ("bore_diameter", "3/8", "ambiguous-unit"),
        ("bore_diameter", "1 1/4", "ambiguous-unit"),
        ("shaft_seat_diameter", "1½", "ambiguous-unit"),
        ("bore_diameter", "7.5 m", "ambiguous-unit"),
        ("bore_diameter", "2026-03-08", "date-text"),
        ("shaft_seat_diameter", "2026-03-08", "date-text"),
        ("shaft_seat_diameter", "08.03.2026", "date-text"),
        ("bore_diameter", "□7.5", "wrong-feature"),
        ("bore_diameter", "SR 7.5", "wrong-feature"),
        ("shaft_seat_diameter", "7.506/7.501 (7.5 k5)", "not-a-size"),
        ("shaft_seat_diameter", "0 h5", "not-a-size"),
        ("bore_diameter", "O.5", "not-a-number"),
        ("shaft_seat_diameter", "7.5 hl5", "not-a-size"),
        ("shaft_seat_roughness", "Rz 1.6", "not-a-requirement"),
    ],
)
def test_cell_that_is_refused(tmp_path: Path, parameter: str, text: str, code: str) -> None:
    reading, codes = cell(tmp_path, parameter, text)
    assert codes == {code}
    stations = reading.stations
    column = stations.toleranced[parameter].nominal if parameter in stations.toleranced else stations.number(parameter)
    assert math.isnan(column[0])


@pytest.mark.parametrize(
    ("parameter", "text", "value"),
    [
        ("bore_diameter", "'7.5", 7.5),
        ("shaft_seat_diameter", "'7.5 k5", 7.5),
        ("bore_diameter", '3/8"', 9.525),
        ("bore_diameter", "1 1/4 in", 31.75),
        ("shaft_seat_roughness", "Ra 0.4", 0.4),
        ("shaft_seat_roughness", "Ra 16 µin", 0.4064),
        ("shaft_seat_diameter", "7.5 Н6", 7.5),
    ],
)
def test_cell_that_is_read(tmp_path: Path, parameter: str, text: str, value: float) -> None:
    reading, codes = cell(tmp_path, parameter, text)
    stations = reading.stations
    column = stations.toleranced[parameter].nominal if parameter in stations.toleranced else stations.number(parameter)
    assert column[0] == pytest.approx(value)
    assert codes == set()


# --- JSON


def test_records_with_units_in_their_keys(tmp_path: Path) -> None:
    records = [
        {"name": "shaft_seat_diameter", "nominal_mm": 7.5, "upper_um": 7, "lower_um": 1, "station": "A"},
        {"name": "bore_diameter", "nominal_in": 0.25, "station": "A"},
        {"name": "housing_seat_diameter", "nominal_mm": 22, "tolerance_mm": 0.01, "station": "A"},
    ]
    reading = read(tmp_path, {"components": records, "results": {"bore_diameter": 9.9}})
    size = reading.stations.size("shaft_seat_diameter")
    assert (size.nominal[0], size.upper[0], size.lower[0]) == (7.5, 0.007, 0.001)
    assert reading.stations.number("bore_diameter").tolist() == [6.35]
    assert problems(reading) == {("half-or-full-band", "/components/2/tolerance_mm")}
    assert [u.reason for u in reading.unused] == ["results of a calculation are no input"]


def test_group_that_is_named_like_a_station(tmp_path: Path) -> None:
    reading = read(tmp_path, {"station": "A", "bearing": {"bore_diameter": 7.5}, "shaft": {"shaft_seat_diameter": 7.5}})
    assert reading.stations.number("bore_diameter").tolist() == [7.5]
    assert reading.unused == ()


def test_machines_and_stations_called_by_name(tmp_path: Path) -> None:
    stations = [{"name": "front", "bore_diameter": 7.5}, {"name": "rear", "bore_diameter": 8.5}]
    reading = read(tmp_path, {"machines": [{"name": "Fan 1", "stations": stations}]})
    assert reading.stations.machines == ("Fan 1",)
    assert list(reading.stations.text("station")) == ["front", "rear"]
    assert reading.unused == ()


# --- text files


def test_stacked_deviations_among_decimal_commas(tmp_path: Path) -> None:
    reading = read(tmp_path, 'machine;station;shaft_seat_diameter\nFan;A;"7,5\n+0,012\n+0,004"\nFan;B;8,5\n')
    size = reading.stations.size("shaft_seat_diameter")
    assert (size.nominal[0], size.upper[0], size.lower[0]) == (7.5, 0.012, 0.004)


@pytest.mark.parametrize("sign", ["=", " = "])
def test_names_and_values_set_apart_by_an_equals_sign(tmp_path: Path, sign: str) -> None:
    lines = [("machine", "Fan"), ("station", "A"), ("bore_diameter", "7,5 mm"), ("speed_max", "60000")]
    reading = read(tmp_path, "".join(f"{name}{sign}{value}\n" for name, value in lines))
    assert reading.stations.number("bore_diameter").tolist() == [7.5]
    assert reading.stations.machines == ("Fan",)


@pytest.mark.parametrize(
    "content",
    ["bore_diameter,7.5\nring_width,7.25\n", '"bore_diameter"= 7.5mm\n"ring_width"= 7.25mm\n', {"bore_diameter": 7.5}],
)
def test_file_that_names_no_station(tmp_path: Path, content: str | dict[str, object]) -> None:
    reading = read(tmp_path, content)
    assert list(reading.stations.text("station")) == ["1"]
    assert reading.stations.number("bore_diameter").tolist() == [7.5]
    assert any(note.startswith("no station is named") for note in reading.notes)


def test_row_without_a_station_changes_no_other(tmp_path: Path) -> None:
    reading = read(tmp_path, "machine,station,bore_diameter,speed_max\nFan,,7.5,60000\nFan,B,,\n")
    assert math.isnan(reading.stations.number("bore_diameter")[0])
    assert reading.stations.number("speed_max").tolist() == [60000]
    assert problems(reading) == {("no-station-in-row", "B2")}
    assert [(u.value, u.place.cell) for u in reading.unused if u.place] == [("7.5", "C2")]


def test_stations_merged_over_rows(tmp_path: Path) -> None:
    path = tmp_path / "book.xlsx"
    book = openpyxl.Workbook()
    for row in (["machine", "station", "bore_diameter", "ring_width"], ["Fan", "A", 7.5, None], ["Fan", None, None, 7]):
        book.active.append(row)
    book.active.merge_cells("B2:B3")
    book.save(path)
    reading = read_table(path)
    assert reading.stations.number("ring_width").tolist() == [7]
    assert reading.stations.problems == ()


def test_very_long_list_of_parameters_is_refused_with_its_reason(tmp_path: Path) -> None:
    text = "name,value,unit,station\n" + "".join(f"bore_diameter,7.5,mm,S{i}\n" for i in range(20_001))
    with pytest.raises(InputError) as refused:
        read(tmp_path, text)
    assert refused.value.code == "too-many-rows"
