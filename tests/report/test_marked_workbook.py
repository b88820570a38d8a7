import hashlib
import zipfile
from io import BytesIO

import openpyxl
import pytest
from attrs import evolve

from linter.model.findings import InputRecord, Used
from linter.model.places import Place
from linter.report.marked_workbook import FILLS, marked_workbook
from linter.report.writing import WriteRefused

ROWS = {4: "speed_max", 12: "clearance_class", 14: "shaft_seat_diameter", 20: "shaft_fillet_radius"}


@pytest.fixture
def table(tmp_path):
    """The workbook that the sample was reviewed from, with texts that must stay texts."""
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Seats"
    for row, name in ROWS.items():
        sheet.cell(row, 3, name)
        for column in (4, 5):
            sheet.cell(row, column, 0.3 if row == 20 else "4h5")
    sheet["A1"] = "+0.012"
    for cell, text in (("A2", "=1+1"), ("A3", "@SUM(A1)"), ("A5", "-cmd"), ("A6", "\t=2")):
        sheet[cell].value = text
        sheet[cell].data_type = "s"
    sheet["B1"] = True
    sheet["B2"] = "a_x001b_[31m"
    sheet["B3"].value = "https://example.org"
    sheet["B4"].value = '=HYPERLINK("https://example.org",1)'
    other = book.create_sheet("findings list")
    other["A1"] = "mine"
    other.sheet_state = "hidden"
    book.properties.creator = "A. Designer"
    path = tmp_path / "dust_extractor.xlsx"
    book.save(path)
    return path


@pytest.fixture
def reviewed(sample, table):
    digest = hashlib.sha256(table.read_bytes()).hexdigest()
    return evolve(sample, input=InputRecord(sample.input.file, digest, sample.input.layout))


def open_book(content: bytes) -> openpyxl.Workbook:
    return openpyxl.load_workbook(BytesIO(content))


def rows_below(sheet, head: str) -> list[tuple]:
    rows = list(sheet.iter_rows(values_only=True))
    start = next(k for k, row in enumerate(rows) if row[0] == head)
    return rows[start + 1 :]


def test_values_are_copied_and_the_input_is_left_alone(reviewed, table):
    before = table.read_bytes()
    book = open_book(marked_workbook(reviewed, table))
    assert table.read_bytes() == before
    assert book.sheetnames == ["Findings", "Not assessed", "Seats", "findings list"]
    seats = book["Seats"]
    assert seats["D20"].value == 0.3 and seats["D14"].value == "4h5" and seats["B1"].value is True
    assert book["findings list"]["A1"].value == "mine"


def test_nothing_becomes_a_formula_or_a_link(reviewed, table):
    content = marked_workbook(reviewed, table)
    book = open_book(content)
    for cell, text in (("A1", "+0.012"), ("A2", "=1+1"), ("A3", "@SUM(A1)"), ("A5", "-cmd"), ("A6", "␉=2")):
        assert (book["Seats"][cell].data_type, book["Seats"][cell].value) == ("s", text)
        assert book["Seats"][cell].quotePrefix is (cell != "A6")
    assert book["Seats"]["B3"].hyperlink is None
    assert "formula" in book["Seats"]["B4"].value and book["Seats"]["B4"].data_type == "s"
    with zipfile.ZipFile(BytesIO(content)) as archive:
        for name in archive.namelist():
            text = archive.read(name)
            assert b"<f>" not in text and b"A. Designer" not in text
            assert b"externalLink" not in text and b'TargetMode="External"' not in text


def test_hostile_text_stays_text(hostile, table):
    digest = hashlib.sha256(table.read_bytes()).hexdigest()
    book = open_book(marked_workbook(evolve(hostile, input=InputRecord("x", digest, "y")), table))
    for sheet in book:
        for row in sheet.iter_rows():
            for cell in row:
                assert cell.data_type in ("s", "n", "b")
                assert not isinstance(cell.value, str) or not set("\u202e\x00\x1b\u200b") & set(cell.value)
    assert any("=HYPERLINK(1)" in row for row in book["Findings"].iter_rows(values_only=True))


def test_cells_to_change_are_filled_and_commented(reviewed, table):
    seats = open_book(marked_workbook(reviewed, table))["Seats"]
    for cell, severity, text in (
        ("D20", "critical", "Make shaft_fillet_radius 0.2 mm or less"),
        ("D14", "major", "In the plan: line 1, shaft seat diameter: h5 -> k5."),
        ("D12", "minor", "Choose clearance group C3"),
        ("D4", "remark", "speed factor"),
    ):
        assert seats[cell].fill.fgColor.rgb == "FF" + FILLS[severity][0][1:]
        assert seats[cell].font.b
        comment = seats[cell].comment.text
        assert comment.startswith(severity.capitalize() + ",") and text in comment
        assert seats[cell].comment.author == "ringseat"
    assert seats["E4"].comment.text.startswith("Conceded (remark)") or "Conceded (remark)" in seats["E4"].comment.text
    assert seats["C14"].comment is None and seats["C14"].fill.fill_type is None


def test_only_the_cell_to_change_is_marked(reviewed, table):
    item = next(i for i in reviewed.assessments if i.clause == "fit.shaft-class")
    looked = Used("speed_max", Place(reviewed.input.file, "Seats", "D4"), "82 000 r/min")
    result = evolve(reviewed, assessments=(evolve(item, places=(looked, *item.places)),))
    seats = open_book(marked_workbook(result, table))["Seats"]
    assert seats["D14"].fill.fill_type == "solid" and seats["D14"].comment is not None
    assert seats["D4"].fill.fill_type is None and seats["D4"].comment is None


def test_what_the_table_does_not_state_is_marked_at_the_name_of_the_station(reviewed, table):
    item = next(i for i in reviewed.assessments if i.clause == "fit.shaft-class")
    absent = evolve(item, clears_with=(), remedy="State housing_seat_runout.")
    cell = reviewed.understood[0]
    name = evolve(
        cell, machine="blower", station="A", parameter="station", place=Place(reviewed.input.file, "Seats", "C12")
    )
    result = evolve(reviewed, assessments=(absent,), understood=(*reviewed.understood, name))
    book = open_book(marked_workbook(result, table))
    assert book["Seats"]["C12"].comment.text.startswith("Major, blower A: ")
    assert book["Seats"]["D14"].comment is None
    assert any(c.hyperlink and c.hyperlink.location == "'Seats'!C12" for row in book["Findings"] for c in row)


def test_findings_sheet_lists_every_finding_gravest_first_with_a_link(reviewed, table):
    sheet = open_book(marked_workbook(reviewed, table))["Findings"]
    rows = rows_below(sheet, "Severity")
    wanted = [a for a in reviewed.assessments if a.outcome in ("finding", "conceded")]
    assert len(rows) == len(wanted)
    words = [row[0].split(" ")[0] for row in rows]
    assert words == sorted(words, key=("critical", "major", "minor", "remark", "conceded").index)
    assert {(r[6], r[5], r[4] or None) for r in rows} == {(a.clause, a.machine, a.station) for a in wanted}
    linked = {cell.hyperlink.location for row in sheet.iter_rows() for cell in row if cell.hyperlink}
    assert "'Seats'!D20" in linked and "'Seats'!E14" in linked
    assert f"The gate is {reviewed.gate}" in sheet["A1"].value
    assert any("K-3, expired" in str(row[0]) for row in sheet.iter_rows(values_only=True))


def test_not_assessed_sheet_lists_what_is_missing(reviewed, table):
    sheet = open_book(marked_workbook(reviewed, table))["Not assessed"]
    rows = rows_below(sheet, "Clause")
    assert [(r[0], r[1], r[3]) for r in rows] == [
        ("life.rating", m.machine, "required_life") for m in reviewed.machines
    ]
    complete = evolve(
        reviewed, assessments=tuple(a for a in reviewed.assessments if a.outcome not in ("not assessed", "finding"))
    )
    book = open_book(marked_workbook(complete, table))
    assert rows_below(book["Not assessed"], "Clause")[0][0].startswith("None")


def test_other_tables_give_the_cells_used(sample, tmp_path):
    table = tmp_path / "fan.csv"
    table.write_text("machine,station\nblower,A\n", encoding="utf-8")
    digest = hashlib.sha256(table.read_bytes()).hexdigest()

    def moved(place: Place) -> Place:
        return Place("fan.csv", None, place.cell)

    result = evolve(
        sample,
        input=InputRecord("fan.csv", digest, "one row per station"),
        assessments=tuple(
            evolve(a, places=tuple(evolve(u, place=moved(u.place)) for u in a.places)) for a in sample.assessments
        ),
        understood=tuple(evolve(c, place=moved(c.place), read="=4h5") for c in sample.understood),
    )
    book = open_book(marked_workbook(result, table))
    assert book.sheetnames == ["Findings", "Not assessed", "Cells used"]
    sheet = book["Cells used"]
    rows: dict = {}
    for row in sheet.iter_rows(min_row=2):
        rows.setdefault(row[0].value, row)
    assert rows["D14"][4].value == "=4h5" and rows["D14"][4].data_type == "s"
    assert rows["D14"][4].comment.text.startswith("Major")
    assert rows["D20"][3].value == "shaft_fillet_radius"
    assert rows["D15"][4].comment is None
    linked = {c.hyperlink.location for row in book["Findings"].iter_rows() for c in row if c.hyperlink}
    assert f"'Cells used'!E{rows['D14'][4].row}" in linked


def test_sheet_names_that_collide_get_a_number(reviewed, table):
    book = openpyxl.load_workbook(table)
    book["findings list"].title = "FINDINGS"
    book.save(table)
    digest = hashlib.sha256(table.read_bytes()).hexdigest()
    made = open_book(marked_workbook(evolve(reviewed, input=InputRecord("x", digest, "y")), table))
    assert made.sheetnames == ["Findings", "Not assessed", "Seats", "FINDINGS (2)"]


def test_a_table_that_changed_meanwhile_is_refused(reviewed, table):
    table.write_bytes(table.read_bytes() + b" ")
    with pytest.raises(WriteRefused, match="changed while it was reviewed"):
        marked_workbook(reviewed, table)
    table.unlink()
    with pytest.raises(WriteRefused, match="not written"):
        marked_workbook(reviewed, table)


def test_same_bytes(reviewed, table):
    assert marked_workbook(reviewed, table) == marked_workbook(reviewed, table)


def test_rows_are_as_high_as_their_texts_and_the_sheet_as_wide_as_a_page(reviewed, table):
    sheet = open_book(marked_workbook(reviewed, table))["Findings"]
    assert sheet.page_setup.orientation == "landscape" and sheet.sheet_properties.pageSetUpPr.fitToPage
    first = next(row for row in range(1, sheet.max_row + 1) if sheet.cell(row, 1).value == "Severity")
    for row in range(first + 1, sheet.max_row + 1):
        for column, letter in ((3, "C"), (4, "D")):
            text = str(sheet.cell(row, column).value or "")
            wide = sheet.column_dimensions[letter].width
            assert sheet.row_dimensions[row].height >= 14 * (len(text) / wide), text
            assert "shaft_seat_diameter" not in text
