"""Sheets and cell styles of a workbook, read without openpyxl: the same as by openpyxl, or left to it."""

import io
import zipfile
from pathlib import Path

import openpyxl
import pytest
import xlsxwriter
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl.styles import Font, PatternFill
from openpyxl.styles.numbers import BUILTIN_FORMATS, is_date_format

import linter
from linter.reading import read_table
from linter.reading.files.xlsx_book import BUILT_IN_FORMATS, is_date, looks_of, plain_book

ROOT = Path(linter.__file__).parents[1]
_SIGNS = st.sampled_from([*'0#?.,;:/-+ %@E_*"\\[]()$dmyhsDMYHS', "General", "[Red]", '"mm"', "[h]", "[$EUR]", "[ss]"])


def _styled(path, formats):
    """A workbook of two sheets, one hidden, whose cells have these number formats, some struck out, some filled."""
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Seats & more"
    sheet.append(["machine", "station", "bore_diameter"])
    for row, shape in enumerate(formats, 2):
        sheet.cell(row, 1, "M"), sheet.cell(row, 2, f"S{row}")
        cell = sheet.cell(row, 3, 10.0)
        cell.number_format = shape
        if row % 2:
            cell.font = Font(strike=True)
        if row % 3 == 0:
            cell.fill = PatternFill("solid", fgColor="FFFF00")
    book.create_sheet("Old").sheet_state = "hidden"
    book.save(path)
    return path


def _both(data):
    """What is read here and what openpyxl reads."""
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        own = plain_book(archive)
    book = openpyxl.load_workbook(io.BytesIO(data), read_only=True)
    return own, ([(s.title, s.sheet_state) for s in book.worksheets], looks_of(book))


def test_sheets_and_styles_are_those_that_openpyxl_reads(tmp_path):
    formats = [*BUILTIN_FORMATS.values(), '0.00" mm"', "0.0##", "yyyy\\-mm", '[Red]0.0;-0" µm"']
    own, (sheets, looks) = _both(_styled(tmp_path / "a.xlsx", formats).read_bytes())
    assert own is not None
    assert [(s.title, s.state) for s in own[0]] == sheets
    assert own[1] == looks
    assert {look.struck for look in looks} == {look.filled for look in looks} == {True, False}


def test_the_demo_workbook_and_one_of_another_writer_are_plain(tmp_path):
    book = xlsxwriter.Workbook(str(tmp_path / "b.xlsx"))
    book.add_worksheet("One").write(0, 0, 5.0, book.add_format({"num_format": "0.000", "font_strikeout": True}))
    book.close()
    for path in (*sorted((ROOT / "sample_exports").glob("*.xlsx")), tmp_path / "b.xlsx"):
        own, (sheets, looks) = _both(path.read_bytes())
        assert own is not None, path
        assert [(s.title, s.state) for s in own[0]] == sheets
        assert own[1] == looks


def test_formats_that_no_workbook_states():
    assert BUILT_IN_FORMATS == BUILTIN_FORMATS


@settings(max_examples=400)
@given(st.lists(_SIGNS, max_size=14).map("".join))
def test_a_date_is_told_from_a_number(shape):
    assert is_date(shape) == is_date_format(shape)


def _changed(path, part, old, new):
    """The workbook with one part of it spelt otherwise."""
    found = io.BytesIO()
    with zipfile.ZipFile(path) as source, zipfile.ZipFile(found, "w") as target:
        for name in source.namelist():
            data = source.read(name)
            if name == part:
                assert old in data
                data = data.replace(old, new)
            target.writestr(name, data)
    return found.getvalue()


@pytest.mark.parametrize(
    ("part", "old", "new"),
    [
        ("xl/workbook.xml", b'state="hidden"', b'state="veiled"'),
        ("xl/workbook.xml", b'name="Old"', b'name="SEATS &amp; MORE"'),
        ("xl/workbook.xml", b"spreadsheetml/2006/main", b"spreadsheetml/2006/other"),
        ("xl/workbook.xml", b"<sheets>", b"<sheets"),
        ("xl/_rels/workbook.xml.rels", b"relationships/worksheet", b"relationships/chartsheet"),
        ("xl/_rels/workbook.xml.rels", b"sheet2.xml", b"sheet9.xml"),
        ("xl/_rels/workbook.xml.rels", b'Id="rId2"', b'Id="rId22"'),
        ("xl/styles.xml", b'<numFmt numFmtId="164"', b'<numFmt numFmtId="199"'),
        ("xl/styles.xml", b'fontId="1"', b'fontId="11"'),
        ("xl/styles.xml", b"<strike val=", b"<strike val='maybe' was="),
        ("xl/styles.xml", b"<styleSheet", b'<!DOCTYPE q [<!ENTITY a "aa">]><styleSheet'),
    ],
)
def test_what_is_out_of_the_ordinary_is_left_to_openpyxl(tmp_path, part, old, new):
    data = _changed(_styled(tmp_path / "a.xlsx", ['0" mm"', "0.0"]), part, old, new)
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        assert plain_book(archive) is None


def test_both_ways_read_the_same_table(tmp_path, monkeypatch):
    path = _styled(tmp_path / "a.xlsx", ["0.0", '0" mm"', '0.00" µm"', "0%", "yyyy"])
    here = read_table(path)
    monkeypatch.setattr("linter.reading.files.xlsx.plain_book", lambda _: None)
    there = read_table(path)
    assert here.notes == there.notes
    assert here.stations.problems == there.stations.problems
    assert repr(here.stations.number("bore_diameter")) == repr(there.stations.number("bore_diameter"))
