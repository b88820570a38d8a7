"""Workbooks: what a cell holds decides, not what it looks like; nothing that has no value passes as one."""

import datetime
import io
import re
import zipfile

import openpyxl
import pytest
import xlsxwriter
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl.comments import Comment
from openpyxl.styles import Font

from linter.reading import InputError, read_table
from linter.reading.files import cell_notes
from linter.reading.files.grids import Bad, cell_text
from linter.reading.files.intake import Source
from linter.reading.files.xlsx import read_grids

_HEAD = ["machine", "station", "bore_diameter", "shaft_seat_diameter", "lubrication"]


def save(tmp_path, *rows, name="t.xlsx", head=True):
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Seats"
    for row in ([_HEAD] if head else []) + list(rows):
        sheet.append(row)
    path = tmp_path / name
    book.save(path)
    return path, book, sheet


def problems(reading):
    return {p.place.cell: p.code for p in reading.stations.problems if p.place}


def test_values_and_places(tmp_path):
    path, _, _ = save(tmp_path, ["M", "A", 4, "4 k5", "grease"], ["M", "B", 4.5, 5, None])
    reading = read_table(path)
    stations = reading.stations
    assert reading.layout == "one row per station"
    assert stations.number("bore_diameter").tolist() == [4.0, 4.5]
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", ""]
    assert stations.choice("lubrication").texts().tolist() == ["grease", ""]
    place = stations.place("shaft_seat_diameter", 1)
    assert (place.sheet, place.cell) == ("Seats", "D3")
    assert stations.place("lubrication", 1) is None
    assert stations.problems == ()


def test_numbers_in_number_cells_are_never_ambiguous(tmp_path):
    path, _, _ = save(tmp_path, ["M", "A", 1.234, 1.234, None])
    stations = read_table(path).stations
    assert stations.number("bore_diameter").tolist() == [1.234]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [1.234]


def test_text_that_looks_like_a_number_keeps_its_own_rules(tmp_path):
    path, _, _ = save(tmp_path, ["M", "A", "1.234", "7,5 k5", None])
    reading = read_table(path)
    assert reading.stations.number("bore_diameter").tolist() == [1234.0] or problems(reading)


def test_formula_without_value_error_date_and_truth(tmp_path):
    path, book, sheet = save(tmp_path, *(["M", s, 4, "4 k5", "grease"] for s in "ABCDE"))
    sheet["C2"] = "=2+2"
    sheet["C3"] = "#REF!"
    sheet["C3"].data_type = "e"
    sheet["C4"] = datetime.date(2026, 8, 3)
    sheet["C5"] = True
    sheet["D6"] = datetime.datetime(2026, 8, 3)
    book.save(path)
    reading = read_table(path)
    assert problems(reading) == {
        "C2": "not-calculated", "C3": "error-cell", "C4": "date-cell", "C5": "not-a-number", "D6": "date-cell",
    }  # fmt: skip
    assert reading.stations.number("bore_diameter")[4] == 4.0
    message = next(p.message for p in reading.stations.problems if p.place.cell == "C3")
    assert "Seats C3" in message
    assert "#REF!" in message
    assert "not used" in message


def test_calculated_formula_gives_its_stored_value(tmp_path):
    path, book, sheet = save(tmp_path, ["M", "A", 4, "4 k5", None])
    sheet["C2"] = "=2+2"
    book.save(path)
    members = {}
    with zipfile.ZipFile(path) as archive:
        members = {name: archive.read(name) for name in archive.namelist()}
    xml = members["xl/worksheets/sheet1.xml"]
    assert b"<f>2+2</f>" in xml
    stored, count = re.subn(rb"<f>2\+2</f><v\s*(?:/>|></v>)", b"<f>2+2</f><v>4</v>", xml)
    assert count == 1
    members["xl/worksheets/sheet1.xml"] = stored
    with zipfile.ZipFile(path, "w") as archive:
        for name, data in members.items():
            archive.writestr(name, data)
    assert read_table(path).stations.number("bore_diameter").tolist() == [4.0]


def test_struck_out_cell_is_not_used(tmp_path):
    path, book, sheet = save(tmp_path, ["M", "A", 4, "4 k5", "grease"])
    sheet["D2"].font = Font(strike=True)
    book.save(path)
    assert problems(read_table(path)) == {"D2": "struck-out"}


def test_unit_and_percent_in_the_number_format(tmp_path):
    path, book, sheet = save(tmp_path, head=False)
    sheet.append(["machine", "station", "Bore", "required_reliability"])
    sheet.append(["M", "A", 0.1575, 0.95])
    sheet["C2"].number_format = '0.0000" in"'
    sheet["D2"].number_format = "0%"
    book.save(path)
    stations = read_table(path).stations
    assert stations.number("bore_diameter").tolist() == pytest.approx([4.0005])
    assert stations.number("required_reliability").tolist() == [95.0]


def test_merged_hidden_and_empty(tmp_path):
    path, book, sheet = save(tmp_path, ["M", "A", 4, "4 k5", "grease"], [None, "B", 4, "4 k5", None])
    sheet.merge_cells("A2:A3")
    sheet.merge_cells("E2:E3")
    sheet.row_dimensions[3].hidden = True
    sheet.column_dimensions["D"].hidden = True
    book.create_sheet("Cover")
    notes = book.create_sheet("History")
    notes["A1"] = "revision history"
    notes.sheet_state = "veryHidden"
    book.save(path)
    reading = read_table(path)
    assert reading.stations.machines == ("M",)
    assert reading.stations.choice("lubrication").texts().tolist() == ["grease", "grease"]
    text = " | ".join(reading.notes)
    for words in (
        "1 hidden row",
        "1 hidden column",
        "Cover is empty",
        "History is hidden (veryHidden)",
        "History: no table",
    ):
        assert words in text
    assert reading.stations.problems == ()


def test_two_row_heading_with_merged_cells(tmp_path):
    path, book, sheet = save(tmp_path, head=False)
    sheet["B2"], sheet["C2"], sheet["D2"], sheet["E2"] = "machine", "station", "shaft_seat_diameter", None
    sheet["D3"], sheet["E3"] = "min", "max"
    sheet["B4"], sheet["C4"], sheet["D4"], sheet["E4"] = "M", "A", 3.995, 4.0
    sheet.merge_cells("D2:E2")
    sheet.merge_cells("B2:B3")
    sheet.merge_cells("C2:C3")
    book.save(path)
    stations = read_table(path).stations
    size = stations.size("shaft_seat_diameter")
    assert (size.smallest[0], size.largest[0]) == pytest.approx((3.995, 4.0))
    assert stations.place("shaft_seat_diameter", 0).cell == "E4"


def test_machine_sheet_and_station_sheet(tmp_path):
    book = openpyxl.Workbook()
    machines = book.active
    machines.title = "Machines"
    for row in (["machine", "drawing_number", "speed_max"], ["M1", "D-1", 1000], ["M2", "D-2", 2000]):
        machines.append(row)
    stations = book.create_sheet("Stations")
    for row in (["machine", "station", "bore_diameter"], ["M1", "A", 4], ["M1", "B", 4], ["M2", "A", 5]):
        stations.append(row)
    book.save(tmp_path / "t.xlsx")
    read = read_table(tmp_path / "t.xlsx").stations
    assert read.machines == ("M1", "M2")
    assert read.number("speed_max").tolist() == [1000, 1000, 2000]
    assert read.place("speed_max", 1).sheet == "Machines"
    assert read.place("bore_diameter", 2).cell == "C4"


def test_workbook_without_a_known_name(tmp_path):
    path, _, _ = save(tmp_path, ["what", "ever"], [1, 2], head=False)
    with pytest.raises(InputError, match="nothing-recognised") as caught:
        read_table(path)
    assert "what" in str(caught.value)


def test_empty_workbook(tmp_path):
    path, _, _ = save(tmp_path, head=False)
    with pytest.raises(InputError, match="empty"):
        read_table(path)


def test_number_that_shows_less_than_it_holds(tmp_path):
    path, book, sheet = save(tmp_path, ["M", "A", 7.4996, "4 k5", "grease"], ["M", "B", 7.5, "4 k5", "grease"])
    sheet["C2"].number_format = "0.0"
    sheet["C3"].number_format = "0.0"
    book.save(path)
    reading = read_table(path)
    assert reading.stations.number("bore_diameter").tolist() == [7.4996, 7.5]
    shown = [note for note in reading.notes if "rounded" in note]
    assert len(shown) == 1
    assert "C2 shows 7.5 and holds 7.4996" in shown[0]
    assert "C3" not in shown[0]


@pytest.mark.parametrize(
    "shape", ['0.00" mm"', "0.00\\ \\m\\m", "0.00 [$mm]", '"Ø"0.00" mm"', '0.00" mm";[Red]-0.00" mm"', '#,##0.00_ "mm"']
)
def test_unit_that_stands_in_the_number_format_alone(tmp_path, shape):
    path, book, sheet = save(tmp_path, head=False)
    sheet.append(["machine", "station", "Bore"])
    sheet.append(["M", "A", 4.25])
    sheet["C2"].number_format = shape
    book.save(path)
    reading = read_table(path)
    assert reading.stations.number("bore_diameter").tolist() == [4.25]
    assert reading.stations.problems == ()
    assert not [note for note in reading.notes if "rounded" in note]


def test_cell_notes_are_listed_with_their_cells(tmp_path):
    path, book, sheet = save(tmp_path, ["M", "A", 4, "4 k5", "grease"])
    sheet["D2"].comment = Comment("real tolerance:\n+0.004/0 \u202e<b>", "someone")
    sheet["A1"].comment = Comment("   ", "someone")
    book.save(path)
    reading = read_table(path)
    assert [(u.name, u.value, u.place.cell) for u in reading.unused] == [
        ("cell note", "real tolerance: +0.004/0 \\u202e<b>", "D2")
    ]
    assert any("1 cell note" in note for note in reading.notes)
    assert reading.stations.problems == ()
    assert "someone" not in f"{reading.notes}{reading.unused}"


def test_damaged_or_endless_cell_notes_do_not_stop_the_reading(tmp_path, monkeypatch):
    path, book, sheet = save(tmp_path, ["M", "A", 4, "4 k5", "grease"])
    for cell in ("A2", "B2", "C2"):
        sheet[cell].comment = Comment("a note", "x")
    book.save(path)
    monkeypatch.setattr(cell_notes, "MOST_NOTES", 2)
    reading = read_table(path)
    assert len(reading.unused) == 2
    assert any("1 more cell notes" in note for note in reading.notes)
    monkeypatch.setattr(cell_notes, "LARGEST_PART", 200)
    assert read_table(path).stations.number("bore_diameter").tolist() == [4]
    with zipfile.ZipFile(path) as archive:
        members = {name: archive.read(name) for name in archive.namelist()}
    with zipfile.ZipFile(path, "w") as archive:
        for name, content in members.items():
            archive.writestr(name, b"<comments><comment" if "comments/" in name and name.endswith("xml") else content)
    monkeypatch.undo()
    reading = read_table(path)
    assert any("damaged" in note for note in reading.notes)
    assert reading.stations.number("bore_diameter").tolist() == [4]


_values = st.one_of(
    st.integers(-(10**6), 10**6), st.floats(-1e6, 1e6), st.booleans(),
    st.sampled_from(("", " ", "7,5", "10 k5", "_x0041_")),
    st.text(alphabet='ab<&>"Ø½ \n軸', max_size=6), st.just(datetime.date(2024, 3, 8)), st.just("=1/0"), st.none(),
)  # fmt: skip
_shapes = st.sampled_from(("General", "0.00", "0%", '0.00" mm"', "dd.mm.yyyy", "@"))


@settings(max_examples=40, deadline=None, derandomize=True)
@given(
    st.lists(st.tuples(st.integers(0, 9), st.integers(0, 5), _values, _shapes, st.booleans()), min_size=1, max_size=15)
)
def test_both_ways_of_reading_a_sheet_give_the_same_cells(cells):
    stream = io.BytesIO()
    book = xlsxwriter.Workbook(stream, {"in_memory": True})
    sheet = book.add_worksheet()
    for row, column, value, shape, struck in cells:
        style = book.add_format(
            {"num_format": shape, "font_strikeout": struck, **({"bg_color": "red"} if struck else {})}
        )
        if value == "=1/0":
            sheet.write_formula(row, column, value, style, "#DIV/0!")
        elif isinstance(value, datetime.date):
            sheet.write_datetime(row, column, value, style)
        else:
            sheet.write(row, column, value, style)
    book.close()
    source = Source("t.xlsx", stream.getvalue(), "", "workbook")
    with pytest.MonkeyPatch.context() as patch:
        try:
            fast, notes, _ = read_grids(source)
        except InputError:
            fast, notes = [], ()
        patch.setattr("linter.reading.files.xlsx_values.Book.rows", lambda *_: None)
        try:
            slow, said, _ = read_grids(source)
        except InputError:
            slow, said = [], ()

    def shown(cell):
        return cell.code if isinstance(cell, Bad) else (type(cell) is bool, cell_text(cell))

    def cells_of(grids):
        return [
            [g.lines.tolist(), g.first_column, g.formats, [[*map(shown, c.tolist())] for c in g.columns]] for g in grids
        ]

    assert cells_of(fast) == cells_of(slow)
    assert notes == said


def test_the_quick_reader_is_used_for_an_ordinary_sheet(tmp_path, monkeypatch):
    path = tmp_path / "t.xlsx"
    book = openpyxl.Workbook()
    book.active.append(["machine", "station", "bore_diameter"])
    book.active.append(["M", "A", 10])
    book.save(path)
    monkeypatch.setattr("linter.reading.files.xlsx.read_streaming", None)
    assert read_table(path).stations.number("bore_diameter").tolist() == [10.0]


def test_a_workbook_of_20000_stations_is_read(tmp_path):
    path = tmp_path / "t.xlsx"
    book = xlsxwriter.Workbook(str(path), {"constant_memory": True})
    sheet = book.add_worksheet()
    sheet.write_row(0, 0, ["machine", "station", "bore_diameter"])
    for row in range(1, 20_001):
        sheet.write_row(row, 0, [f"M{row // 2}", "AB"[row % 2], 10.5])
    book.close()
    assert len(read_table(path).stations) == 20_000


def test_sheets_named_by_their_part(tmp_path):
    book = openpyxl.Workbook()
    rows = {
        "Welle": [["Lagerposition", "Sitzdurchmesser Höchstmaß", "Sitzdurchmesser Mindestmaß", "Schulterdurchmesser"],
                  [None, "mm", "mm", "mm"], ["A", 8.006, 8.001, 10], ["B", 8.006, 8.001, 11]],
        "Seite 3": [["Daten der Lagersitze: Gehäuse"], [],
                    ["Lagerposition", "Bohrungsdurchmesser", "Zylinderform", "Schulterdurchmesser"],
                    [None, "mm", "µm", "mm"], ["A", "22 H6", 4, 19], ["B", "22 H6", 5, 19]],
    }  # fmt: skip
    for name, lines in rows.items():
        sheet = book.create_sheet(name)
        for line in lines:
            sheet.append(line)
    del book["Sheet"]
    path = tmp_path / "t.xlsx"
    book.save(path)
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["A", "B"]
    shaft = stations.size("shaft_seat_diameter")
    assert (shaft.nominal + shaft.upper).tolist() == pytest.approx([8.006, 8.006])
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [10, 11]
    assert stations.number("housing_seat_cylindricity").tolist() == pytest.approx([0.004, 0.005])
    assert stations.size("housing_seat_diameter").nominal.tolist() == [22, 22]
