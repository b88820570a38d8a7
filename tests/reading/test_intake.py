"""Files that are broken, hostile or of the wrong kind: each is refused with one line, and within bounded memory.

What is feared, and where it is tested:

===================================  ===================================================================================
formulas written into a report       tests/report: ``test_nothing_becomes_a_formula_or_a_link``
formulas in the input                ``test_formula_text_in_delimited_text_is_never_evaluated``; test_xlsx:
                                     ``test_calculated_formula_gives_its_stored_value``
entities, document types             ``test_document_type_in_a_workbook_part``, ``test_entities_in_qif``,
                                     ``test_guard_against_entities_is_asserted``
archive bombs                        ``test_bomb_of_one_cell``, ``test_bomb_below_the_ratio``,
                                     ``test_declared_size_that_lies``, ``test_archives_that_are_no_workbook``
odd archive members                  ``test_archive_with_two_members_of_one_name``,
                                     ``test_encrypted_member_and_unknown_compression``
sparse corner cell                   ``test_sparse_corner_cell``
false dimension                      ``test_false_dimension_is_not_believed``
huge dense sheet                     ``test_dense_sheet_of_a_million_rows``
error, date and uncalculated cells   test_xlsx: ``test_formula_without_value_error_date_and_truth``
merged cells, hidden content         test_xlsx: ``test_merged_hidden_and_empty``
endless or damaged cell notes        test_xlsx: ``test_damaged_or_endless_cell_notes_do_not_stop_the_reading``
type coercion                        test_csv: ``test_nothing_is_coerced``
long lines and cells                 ``test_text_within_its_memory``, ``test_long_cell_and_repetitive_text_end_quickly``
open quote, mixed line ends, NUL     test_csv: ``test_quote_that_is_never_closed``; ``test_mixed_line_ends``,
                                     ``test_one_line_for_each_kind_of_refusal``
JSON keys, literals, depth, size     ``test_json_that_is_refused``, ``test_json_within_its_memory``,
                                     ``test_json_numbers_of_thirty_digits``
patterns that run away               ``test_long_cell_and_repetitive_text_end_quickly``,
                                     ``test_blanks_without_end_are_read_in_time``; test_tolerance:
                                     ``test_a_hostile_text_of_full_length_is_refused_like_any_other``
paths in names                       ``test_names_that_look_like_paths_are_only_names``; tests/report/test_index:
                                     ``test_names_cannot_leave_the_folder_or_the_page``
control and direction signs          ``test_control_and_bidirectional_signs_are_spelt_out``; tests/report/test_junit
privacy                              ``test_metadata_stays_out_of_the_reading``; test_xlsx:
                                     ``test_cell_notes_are_listed_with_their_cells``; tests/report/test_sarif
HTML injection                       tests/report/test_html: ``test_hostile_text_stays_text``
file kind and size before opening    ``test_file_is_known_by_content_not_name``, ``test_file_beyond_the_size_cap``
time and memory of one file          tests/reading/test_bounds: all
very many rows, marks, tags          ``test_text_within_its_memory``, ``test_workbook_within_its_memory``,
                                     ``test_json_within_its_memory``
every word in every report           tests/test_hostile_words: all
===================================  ===================================================================================
"""

import io
import json
import os
import struct
import subprocess
import sys
import zipfile
import zlib
from pathlib import Path

import openpyxl
import pytest

from linter.reading import InputError, read_names, read_table
from linter.reading.files import intake
from linter.reading.layouts import title

_HEAD = "machine,station,bore_diameter,shaft_seat_diameter\n"
_GOOD = _HEAD + "M,A,4,4 k5\nM,B,4,4 k5\n"
_MEMORY_LIMIT = 500  # MB, of the whole process that reads one hostile file

_TYPES = (
    '<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">'
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>'
    '<Default Extension="xml" ContentType="application/xml"/>'
    '<Override PartName="/xl/workbook.xml" '
    'ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>'
    '<Override PartName="/xl/worksheets/sheet1.xml" '
    'ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>'
)
_RELS = (
    '<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">'
    '<Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/{0}" '
    'Target="{1}"/></Relationships>'
)
_BOOK = (
    '<?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" '
    'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">'
    '<sheets><sheet name="Seats" sheetId="1" r:id="rId1"/></sheets></workbook>'
)
_SHEET = '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">{0}<sheetData>{1}</sheetData></worksheet>'


def _inline(reference: str, text: str) -> str:
    return f'<c r="{reference}" t="inlineStr"><is><t>{text}</t></is></c>'


_ROWS = (
    f'<row r="1">{_inline("A1", "machine")}{_inline("B1", "station")}{_inline("C1", "bore_diameter")}</row>'
    f'<row r="2">{_inline("A2", "M")}{_inline("B2", "A")}<c r="C2"><v>4</v></c></row>'
)


def workbook(path: Path, sheet: str | bytes, extra: dict[str, bytes] | None = None, *, stored: bool = False) -> Path:
    """A workbook of one sheet from its XML; ``stored`` leaves it unpacked, so that no ratio gives it away."""
    parts: dict[str, str | bytes] = {
        "[Content_Types].xml": _TYPES,
        "_rels/.rels": _RELS.format("officeDocument", "xl/workbook.xml"),
        "xl/workbook.xml": _BOOK,
        "xl/_rels/workbook.xml.rels": _RELS.format("worksheet", "worksheets/sheet1.xml"),
        "xl/worksheets/sheet1.xml": sheet,
        **(extra or {}),
    }
    with zipfile.ZipFile(path, "w", zipfile.ZIP_STORED if stored else zipfile.ZIP_DEFLATED) as archive:
        for name, data in parts.items():
            archive.writestr(name, data)
    return path


def refused(path: Path) -> InputError:
    with pytest.raises(InputError) as caught:
        read_table(path)
    error = caught.value
    assert "\n" not in str(error)
    assert error.read
    assert error.expected
    assert error.code in str(error)
    assert path.name in str(error)
    return error


def write(tmp_path: Path, data: bytes | str, name: str = "table.csv") -> Path:
    path = tmp_path / name
    path.write_bytes(data if isinstance(data, bytes) else data.encode())
    return path


def read_in_child(path: Path) -> tuple[str, float]:
    """Outcome and peak memory (MB) of reading one file in a process of its own."""
    code = (
        "import pathlib, resource, sys\n"
        "from linter.reading import InputError, read_table\n"
        "try:\n    print('read', len(read_table(sys.argv[1]).stations))\n"
        "except InputError as error:\n    print(error.code)\n"
        "status = pathlib.Path('/proc/self/status')\n"
        "peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss\n"
        # the figure of getrusage also counts what the parent held before the program was loaded
        "if status.exists():\n    peak = int(status.read_text().split('VmHWM:')[1].split()[0])\n"
        "print(peak / 1024)\n"
    )
    root = Path(__file__).resolve().parents[2]
    done = subprocess.run(
        [sys.executable, "-c", code, str(path)], capture_output=True, text=True, check=True, cwd=root,
        env={**os.environ, "PYTHONPATH": str(root)},
    )  # fmt: skip
    outcome, memory = done.stdout.splitlines()
    return outcome, float(memory)


def test_file_is_known_by_content_not_name(tmp_path):
    book = openpyxl.Workbook()
    for row in (["machine", "station", "bore_diameter"], ["M", "A", 4]):
        book.active.append(row)
    book.save(tmp_path / "table.xlsx")
    os.rename(tmp_path / "table.xlsx", tmp_path / "table.csv")
    assert len(read_table(tmp_path / "table.csv").stations) == 1
    assert len(read_table(write(tmp_path, _GOOD, "text.xlsx")).stations) == 2
    assert (
        len(read_table(write(tmp_path, '[{"machine": "M", "station": "A", "bore_diameter": 4}]', "j.txt")).stations)
        == 1
    )


def test_hash_and_name_of_the_file(tmp_path):
    path = write(tmp_path, _GOOD)
    reading = read_table(path, shown_as="seats.csv")
    assert reading.file == "seats.csv"
    assert len(reading.sha256) == 64
    assert str(reading.stations.place("bore_diameter", 0)) == "seats.csv C2"


@pytest.mark.parametrize(
    ("data", "code"),
    [
        (b"", "empty"),
        (b"  \r\n \n", "empty"),
        (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(600), "old-workbook"),
        (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(60) + "EncryptedPackage".encode("utf-16-le"), "encrypted"),
        (b"%PDF-1.7\n", "wrong-kind"),
        (b"\x1f\x8b\x08\x00abc", "wrong-kind"),
        (b"ISO-10303-21;\nHEADER;\n", "step"),
        (b"<!DOCTYPE html><html></html>", "wrong-kind"),
        (b"<part><a/></part>", "unknown-xml"),
        (b"<QIFDocument><a></QIFDocument>", "broken-xml"),
        (b"PK\x03\x04broken", "broken-archive"),
        (b"machine,station\x00,bore\nM,A,4\n", "binary"),
        ("m,s\nM,A\n".encode("utf-16-le"), "binary"),
        (_GOOD.encode() + b"M,\xfc,4,4\n", "encoding"),
        (b"\xff\xfe" + "machine\ud800".encode("utf-16-le", "surrogatepass"), "encoding"),
        (b"what,ever\n1,2\n", "nothing-recognised"),
        (b"speed_max,drawing_number\n100,D\n", "no-station"),
        (b"x" * 100_000, "nothing-recognised"),
    ],
)  # fmt: skip
def test_one_line_for_each_kind_of_refusal(tmp_path, data, code):
    assert refused(write(tmp_path, data)).code == code


def test_missing_file_folder_and_device(tmp_path):
    assert refused(tmp_path / "absent.csv").code == "not-opened"
    assert refused(tmp_path).code in ("not-opened", "not-a-file")
    with pytest.raises(InputError, match="not-a-file"):
        read_table("/dev/null")
    with pytest.raises(InputError, match="not-opened"):
        read_table("nul\0byte.csv")


def test_file_beyond_the_size_cap(tmp_path):
    path = tmp_path / "large.csv"
    with path.open("wb") as stream:
        stream.truncate(65 * 2**20)
    assert refused(path).code == "file-too-large"


@pytest.mark.parametrize(
    ("members", "code"),
    [
        ({"xl/workbook.bin": b"x"}, "binary-workbook"),
        ({"mimetype": b"application/vnd.oasis.opendocument.spreadsheet", "content.xml": b"<a/>"}, "open-document"),
        ({"word/document.xml": b"<a/>"}, "wrong-kind"),
        ({"a.txt": b"x"}, "wrong-kind"),
        ({"xl/workbook.xml": b"<a/>", "../evil.xml": b"<a/>"}, "archive"),
        ({"xl/workbook.xml": b"<a/>", "/etc/evil": b"<a/>"}, "archive"),
        ({"xl/workbook.xml": b"<a/>", "a\\b": b"<a/>"}, "archive"),
        ({"xl/workbook.xml": b"<a/>", "C:evil": b"<a/>"}, "archive"),
        ({"xl/workbook.xml": b"\xff\xfe<\x00a\x00/\x00>\x00"}, "archive"),
        ({f"m{i}": b"" for i in range(1001)}, "archive"),
        ({"xl/workbook.xml": b"<a/>"}, "broken-workbook"),
    ],
)
def test_archives_that_are_no_workbook(tmp_path, members, code):
    path = tmp_path / "a.xlsx"
    with zipfile.ZipFile(path, "w") as archive:
        for name, data in members.items():
            info = zipfile.ZipInfo("placeholder")
            info.filename = name
            archive.writestr(info, data)
    assert refused(path).code == code


def test_archive_with_two_members_of_one_name(tmp_path):
    path = tmp_path / "a.xlsx"
    with zipfile.ZipFile(path, "w") as archive, pytest.warns(UserWarning, match="Duplicate name"):
        archive.writestr("xl/workbook.xml", "<a/>")
        archive.writestr("xl/workbook.xml", "<b/>")
    assert refused(path).code == "archive"


def test_encrypted_member_and_unknown_compression(tmp_path):
    path = workbook(tmp_path / "a.xlsx", _SHEET.format("", _ROWS))
    plain = path.read_bytes()
    at = plain.index(b"PK\x01\x02")
    encrypted = bytearray(plain)
    struct.pack_into("<H", encrypted, at + 8, 1)
    assert refused(write(tmp_path, bytes(encrypted), "e.xlsx")).code == "encrypted"
    squeezed = bytearray(plain)
    struct.pack_into("<H", squeezed, at + 10, 97)
    assert refused(write(tmp_path, bytes(squeezed), "m.xlsx")).code == "archive"


def test_declared_size_that_lies(tmp_path):
    path = workbook(tmp_path / "a.xlsx", _SHEET.format("", _ROWS))
    data = bytearray(path.read_bytes())
    at = data.rindex(b"xl/worksheets/sheet1.xml") - 46
    assert data[at : at + 4] == b"PK\x01\x02"
    struct.pack_into("<I", data, at + 24, 10)
    assert refused(write(tmp_path, bytes(data), "lie.xlsx")).code == "broken-archive"


def test_document_type_in_a_workbook_part(tmp_path):
    bomb = '<?xml version="1.0"?><!DOCTYPE a [<!ENTITY b "bbbb"><!ENTITY c "&b;&b;&b;">]>' + _SHEET.format("", _ROWS)
    assert refused(workbook(tmp_path / "a.xlsx", bomb)).code == "document-type"
    external = '<!DOCTYPE a SYSTEM "file:///etc/passwd">' + _SHEET.format("", _ROWS)
    assert refused(workbook(tmp_path / "b.xlsx", external)).code == "document-type"


def test_entities_in_qif(tmp_path):
    bomb = '<?xml version="1.0"?><!DOCTYPE q [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><QIFDocument>&b;</QIFDocument>'
    assert refused(write(tmp_path, bomb, "a.qif")).code == "document-type"
    late = (
        '<?xml version="1.0"?><!--'
        + "x" * 70_000
        + '--><!DOCTYPE q [<!ENTITY a "aaaa">]><QIFDocument>&a;</QIFDocument>'
    )
    assert refused(write(tmp_path, late, "b.qif")).code == "broken-xml"
    deep = "<QIFDocument>" + "<a>" * 20_000 + "</a>" * 20_000 + "</QIFDocument>"
    assert refused(write(tmp_path, deep, "c.qif")).code == "too-deep"


def test_guard_against_entities_is_asserted(tmp_path, monkeypatch):
    path = workbook(
        tmp_path / "a.xlsx", _SHEET.format("", _ROWS.replace("</row>", _inline("D1", "_x0041_") + "</row>", 1))
    )
    assert len(read_table(path).stations) == 1  # a sign that is spelt in hexadecimal: openpyxl reads the sheet
    monkeypatch.setattr(openpyxl, "DEFUSEDXML", False)
    assert refused(path).code == "unguarded"


@pytest.mark.parametrize(
    ("cap", "most", "read"),
    [
        ("LARGEST_MEMBER", 2**19, "a member of 1 MiB unpacked"),
        ("LARGEST_ARCHIVE", 2**19, "an archive of 1 MiB unpacked"),
        ("LARGEST_RATIO", 2, "a member packed"),
        ("LARGEST_FILE", 2000, "a file of 0 MiB"),
    ],
)
def test_each_cap_of_an_archive_by_itself(tmp_path, monkeypatch, cap, most, read):
    rows = "".join(f'<row r="{i}"><c r="A{i}"><v>{i * 7919 % 9973}</v></c></row>' for i in range(4, 19_000))
    path = workbook(tmp_path / "a.xlsx", _SHEET.format("", _ROWS + rows))
    assert len(read_table(path).stations) == 1
    monkeypatch.setattr(intake, cap, most)
    monkeypatch.setattr(intake, "RATIO_APPLIES_ABOVE", 2**10)
    if cap != "LARGEST_RATIO":
        monkeypatch.setattr(intake, "LARGEST_RATIO", 10**6)
    assert refused(path).read.startswith(read)


def test_title_of_very_many_rows(tmp_path, monkeypatch):
    monkeypatch.setattr(title, "MOST_ROWS", 10)
    path = write(tmp_path, "Machine: M;\n" + "Remark;x\n" * 30 + "\nstation;bore_diameter\nA;4\n")
    left = read_table(path).unused
    assert len(left) < 25
    entries = [unused for unused in left if unused.reason == "a title block is not as long"]
    assert [(unused.value, str(unused.place.cell)) for unused in entries] == [("22 more rows", "A11")]


def test_bomb_of_one_cell(tmp_path):
    huge = "<row r='1'><c r='A1' t='inlineStr'><is><t>" + "x" * (200 * 2**20) + "</t></is></c></row>"
    path = workbook(tmp_path / "bomb.xlsx", _SHEET.format("", huge))
    assert path.stat().st_size < 2**20
    outcome, memory = read_in_child(path)
    assert outcome == "archive"
    assert memory < _MEMORY_LIMIT


@pytest.mark.slow
def test_bomb_below_the_ratio(tmp_path):
    # 49 MiB in one cell, with noise so that it packs less than 200:1
    noise = os.urandom(2**18).hex()
    huge = "<row r='1'><c r='A1' t='inlineStr'><is><t>" + (noise * 200)[: 49 * 2**20] + "</t></is></c></row>"
    path = workbook(tmp_path / "bomb.xlsx", _SHEET.format("", huge))
    outcome, memory = read_in_child(path)
    assert outcome in ("nothing-recognised", "empty", "archive")
    assert memory < _MEMORY_LIMIT


@pytest.mark.slow
def test_dense_sheet_of_a_million_rows(tmp_path):
    rows = "".join(f'<row r="{i}"><c r="A{i}"><v>{i * 7919 % 9973}</v></c></row>' for i in range(1, 900_001))
    assert len(rows) > 40 * 2**20
    path = workbook(tmp_path / "dense.xlsx", _SHEET.format("", rows))
    outcome, memory = read_in_child(path)
    assert outcome == "archive"
    assert memory < _MEMORY_LIMIT
    few = "".join(f'<row r="{i}"><c r="A{i}"><v>4</v></c></row>' for i in range(1, 30_002))
    assert refused(workbook(tmp_path / "rows.xlsx", _SHEET.format("", few))).code == "sheet-too-large"


@pytest.mark.parametrize("corner", ["XFD1048576", "A1048576", "XFD1", "ZZZZ99999999"])
def test_sparse_corner_cell(tmp_path, corner):
    row = corner.lstrip("ABCDEFGHIJKLMNOPQRSTUVWXYZ")
    rows = _ROWS + f'<row r="{row}"><c r="{corner}"><v>1</v></c></row>'
    path = workbook(tmp_path / "sparse.xlsx", _SHEET.format("", rows))
    error = refused(path)
    assert error.code == "sheet-too-large"
    # told by the scan, before a parser makes rows of it
    assert error.read.startswith("a cell in column" if row == "1" else "a cell in row")
    assert read_in_child(path)[1] < _MEMORY_LIMIT


@pytest.mark.parametrize("way", ["entities", "blanks", "another attribute first", "rows in any order"])
def test_reference_that_only_a_parser_can_read(tmp_path, way):
    row, cell = {
        "entities": ('r="&#49;048576"', 'r="&#88;FD1048576"'),
        "blanks": ('r = "1048576"', 'r = "XFD1048576"'),
        "another attribute first": ('a=">" r="1048576"', 'a=">" r="XFD1048576"'),
        "rows in any order": ('r="19999"', 'r="A3"'),
    }[way]
    rows = _ROWS + f'<row {row}><c {cell}><v>1</v></c></row><row r="3"><c r="C3"><v>1</v></c></row>'
    path = workbook(tmp_path / "a.xlsx", _SHEET.format("", rows))
    outcome, memory = read_in_child(path)
    assert outcome == ("read 1" if way == "rows in any order" else "sheet-too-large")
    assert memory < _MEMORY_LIMIT


def test_false_dimension_is_not_believed(tmp_path):
    path = workbook(tmp_path / "a.xlsx", _SHEET.format('<dimension ref="A1:XFD1048576"/>', _ROWS))
    reading = read_table(path)
    assert reading.stations.number("bore_diameter").tolist() == [4.0]


def test_metadata_stays_out_of_the_reading(tmp_path):
    extra = {"docProps/core.xml": b"<a>Secret Author</a>", "docProps/app.xml": b"<a>C:\\secret\\path</a>"}
    reading = read_table(workbook(tmp_path / "a.xlsx", _SHEET.format("", _ROWS), extra))
    assert "ecret" not in repr(reading) + repr(reading.notes) + repr(reading.understood)


def test_control_and_bidirectional_signs_are_spelt_out(tmp_path):
    bad = "\u202eevil\u2066\x1b[31m"
    path = write(tmp_path, f'machine,station,bore_diameter\nM,A,"{bad}"\n')
    (problem,) = read_table(path).stations.problems
    assert not {"\u202e", "\u2066", "\x1b"} & set(problem.message + problem.read)
    assert "\\u202e" in problem.message
    error = refused(write(tmp_path, f"{bad},x\n1,2\n", "b.csv"))
    assert not {"\u202e", "\u2066", "\x1b"} & set(str(error))


def test_names_that_look_like_paths_are_only_names(tmp_path):
    path = write(tmp_path, "machine,station,bore_diameter\n../../etc/passwd,C:\\con,4\n")
    stations = read_table(path).stations
    assert stations.machines == ("../../etc/passwd",)
    assert list(stations.texts["station"]) == ["C:\\con"]


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ('{"machine": "M", "machine": "N"}', "duplicate-key"),
        ('[{"machine": "M", "station": "A", "bore_diameter": NaN}]', "not-a-number"),
        ('[{"machine": "M", "station": "A", "bore_diameter": -Infinity}]', "not-a-number"),
        ('[{"machine": "M", "station": "A", "bore_diameter": 1e400}]', "number-out-of-range"),
        ('[{"machine": "M", "station": "A", "bore_diameter": 1' + "0" * 5000 + "}]", "number-out-of-range"),
        ("[" * 100_000 + "]" * 100_000, "too-deep"),
        ('{"a":' * 60 + "1" + "}" * 60, "too-deep"),
        ('{"machine": ', "not-json"),
        ('{"machine": "M"} trailing', "not-json"),
        ("[" + "[]," * 600_000 + "[]]", "too-many-cells"),
        ("{" + ",".join(f'"k{i}":1' for i in range(50_001)) + "}", "too-many-cells"),
        ('{"machine": "M\\ud800"}', "nothing-recognised"),
    ],
)
def test_json_that_is_refused(tmp_path, text, code):
    if code == "nothing-recognised":
        text = '{"other": "M\\ud800"}'
    assert refused(write(tmp_path, text, "t.json")).code == code


_JSON = {
    "strings": (lambda: '{"a": [' + ",".join(f'"{i:x}"' for i in range(1_400_000)) + "]}", "nothing-recognised"),
    "keys": (lambda: "{" + ",".join(f'"k{i}":1' for i in range(1_400_000)) + "}", "too-many-cells"),
    "numbers": (lambda: "[" + "1," * 11_000_000 + "1]", "too-many-cells"),
}


@pytest.mark.slow
@pytest.mark.parametrize("what", _JSON)
def test_json_within_its_memory(tmp_path, what):
    text, code = _JSON[what]
    outcome, memory = read_in_child(write(tmp_path, text(), "t.json"))
    assert outcome == code
    assert memory < _MEMORY_LIMIT


_TEXTS = {
    "short rows": (lambda: _HEAD + ("," * 1500 + "\n") * 30_000, "too-many-cells"),
    "one line": (lambda: _HEAD + "M," + "x" * 30_000_000 + ",4,4\n", "nothing-recognised"),
    "one quoted cell": (lambda: _HEAD + 'M,"' + "x" * 30_000_000 + '",4,4\n', "nothing-recognised"),
    "blank cells": (lambda: _HEAD + ",,,\n" * 290_000, "nothing-recognised"),
    "one-cell lines": (lambda: "machine\n" + "4\n" * 290_000, "nothing-recognised"),
    "more rows": (lambda: "machine\n" + "4\n" * 1_900_000, "too-many-cells"),
    "blank lines": (lambda: "a" + "\n" * 7_900_000, "too-many-cells"),
    "delimiters": (lambda: "," * 7_900_000, "too-many-columns"),
    "quotation marks": (lambda: '"' * 10_000_000, "nothing-recognised"),
    "more quotation marks": (lambda: '"' * 60_000_000, "too-many-cells"),
    "odd quotation marks": (lambda: _HEAD + 'M,A,4,3/8"\n' * 290_000, "read 1"),
    "open at the end": (lambda: _HEAD + 'M,A,"4",4 k5\n' * 290_000 + 'M,"A,4,4\n', "open-quote"),
    "a wide row": (lambda: ",".join(f"h{i}" for i in range(4000)) + "\n" + "1,2\n" * 1_900, "nothing-recognised"),
    "gaps": (lambda: "a  " * 20_000_000, "too-many-cells"),
    "tabs": (lambda: "station  d\n" * 9 + "\t" * 100 + "x" + "\t" * 15_000_000, "too-many-cells"),
    "equations": (lambda: '"bore_diameter@A"= 4' + "\n" * 60_000_000, "too-many-cells"),
    "apostrophes": (lambda: '"bore_diameter@A"= b' + "a'" * 25_000_000 + "\n", "read 1"),
}


@pytest.mark.slow
@pytest.mark.parametrize("what", _TEXTS)
def test_text_within_its_memory(tmp_path, what):
    text, code = _TEXTS[what]
    outcome, memory = read_in_child(write(tmp_path, text()))
    assert outcome in (code, "no-station" if code == "nothing-recognised" else code)
    assert memory < _MEMORY_LIMIT


_MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"'
_TABLE = _ROWS + "".join(
    f'<row r="{i}">{_inline(f"A{i}", "M")}{_inline(f"B{i}", f"S{i}")}<c r="C{i}"><v>4</v></c></row>'
    for i in range(3, 3000)
)
_BESIDE = f"<worksheet {_MAIN}><sheetData>{{0}}</sheetData>{{1}}</worksheet>"


def _merges(*ranges: str) -> str:
    return "<mergeCells>" + "".join(f'<mergeCell ref="{each}"/>' for each in ranges) + "</mergeCells>"


_SHEETS = {
    "formula of 40 MB": (
        lambda: _SHEET.format("", _ROWS + '<row r="3"><c r="C3"><f>' + "1+" * 20_000_000 + "1</f></c></row>"),
        "archive",
    ),
    "formula in pieces": (
        lambda: _SHEET.format(
            "", _ROWS + '<row r="3"><c r="C3"><f>' + ("1+" * 60_000 + "<a/>") * 300 + "</f></c></row>"
        ),
        "read 1",
    ),
    "rows without cells": (lambda: _SHEET.format("", "<row/>" * 8_000_000), "archive"),
    "foreign tags": (lambda: _SHEET.format("", "<a>" * 3_000_000 + "</a>" * 3_000_000 + _ROWS), "archive"),
    "attributes": (
        lambda: _SHEET.format("", "<row " + " ".join(f'a{i}="1"' for i in range(3_000_000)) + "/>"),
        "archive",
    ),
    "runs of one text": (
        lambda: _SHEET.format(
            "", '<row r="1"><c t="inlineStr"><is>' + "<r><t>x</t></r>" * 3_000_000 + "</is></c></row>"
        ),
        "archive",
    ),
    "endless tag": (lambda: _SHEET.format("", _ROWS + "<" + "a" * 48_000_000 + "/>"), "archive"),
    "endless comment": (lambda: _SHEET.format("", _ROWS + "<!--" + "<a " * 16_000_000 + "-->"), "archive"),
    "nested cells": (lambda: _SHEET.format("", "<row>" + "<c>" * 499_000 + "</c>" * 499_000 + "</row>"), "empty"),
    "merged ranges": (lambda: _BESIDE.format(_TABLE, _merges(*(f"A{i}:B{i}" for i in range(1, 100_001)))), "read 2998"),
    "merged ranges on one another": (
        lambda: _BESIDE.format(_TABLE, _merges(*["A1:C2999"] * 100_000)),
        "sheet-too-large",
    ),
    "cell that names a huge column": (
        lambda: _BESIDE.format(_ROWS, _merges("A1:" + "A" * 200_000 + "1")),
        "broken-workbook",
    ),
}


@pytest.mark.slow
@pytest.mark.parametrize("what", _SHEETS)
def test_workbook_within_its_memory(tmp_path, what):
    sheet, code = _SHEETS[what]
    path = tmp_path / "a.xlsx"
    workbook(path, sheet(), stored=True)
    outcome, memory = read_in_child(path)
    assert outcome == code
    assert memory < _MEMORY_LIMIT


_NAMES = "<definedNames>{0}</definedNames></workbook>"
_PARTS = {
    "styles": (
        {"xl/styles.xml": lambda: f"<styleSheet {_MAIN}><fonts>" + "<font/>" * 2_000_000 + "</fonts></styleSheet>"},
        "archive",
    ),
    "fewer styles": (
        {"xl/styles.xml": lambda: f"<styleSheet {_MAIN}><fonts>" + "<font/>" * 240_000 + "</fonts></styleSheet>"},
        "read 1",
    ),
    "shared strings": (
        {"xl/sharedStrings.xml": lambda: f"<sst {_MAIN}>" + "<si><t>x</t></si>" * 2_900_000 + "</sst>"},
        "archive",
    ),
    "defined names": (
        {
            "xl/workbook.xml": lambda: _BOOK.replace(
                "</workbook>",
                _NAMES.format("".join(f'<definedName name="n{i}">Seats!$A$1</definedName>' for i in range(100_000))),
            )
        },
        "read 1",
    ),
    "sheets": (
        {
            "xl/workbook.xml": lambda: _BOOK.replace(
                "</sheets>",
                "".join(f'<sheet name="S{i}" sheetId="{i}" r:id="rId1"/>' for i in range(2, 5001)) + "</sheets>",
            )
        },
        "sheet-too-large",
    ),
    "drawings": ({"xl/drawings/drawing1.xml": lambda: "<wsDr>" + "<a/>" * 2_000_000 + "</wsDr>"}, "read 1"),
    "comments": (
        {
            "xl/worksheets/_rels/sheet1.xml.rels": lambda: _RELS.format("comments", "../comments1.xml"),
            "xl/comments1.xml": lambda: (
                f"<comments {_MAIN}><commentList>"
                + "".join(f'<comment ref="A{i}"><text><t>n</t></text></comment>' for i in range(100_000))
                + "</commentList></comments>"
            ),
        },
        "archive",
    ),
}


@pytest.mark.slow
@pytest.mark.parametrize("what", _PARTS)
def test_parts_of_a_workbook_within_their_memory(tmp_path, what):
    parts, code = _PARTS[what]
    path = workbook(
        tmp_path / "a.xlsx",
        _SHEET.format("", _ROWS),
        {name: make().encode() for name, make in parts.items()},
        stored=True,
    )
    outcome, memory = read_in_child(path)
    assert outcome == code
    assert memory < _MEMORY_LIMIT


def test_many_sheets_of_one_part(tmp_path):
    cells = "".join("<row>" + "<c><v>4</v></c>" * 450 + "</row>" for _ in range(600))
    sheets = "".join(f'<sheet name="S{i}" sheetId="{i}" r:id="rId1"/>' for i in range(2, 100)) + "</sheets>"
    extra = {"xl/workbook.xml": _BOOK.replace("</sheets>", sheets).encode()}
    outcome, memory = read_in_child(workbook(tmp_path / "a.xlsx", _SHEET.format("", cells), extra, stored=True))
    assert outcome == "broken-workbook"
    assert memory < _MEMORY_LIMIT


def test_long_cell_and_repetitive_text_end_quickly(tmp_path):
    cells = ["4" * 40_000, "4 +" * 60, "((((" * 45, "4" + " " * 190 + "k5", "+0." * 66]
    rows = "".join(f'M,S{i},4,"{cell}"\n' for i, cell in enumerate(cells))
    reading = read_table(write(tmp_path, _HEAD + rows))
    codes = {problem.row: problem.code for problem in reading.stations.problems}
    assert codes[0] == "too-long"
    assert set(codes) >= {0, 1, 2, 4}


def test_mixed_line_ends(tmp_path):
    reading = read_table(write(tmp_path, _HEAD + "M,A,4,4 k5\r\nM,B,5,5 k5\rM,C,6,6 k5\r\r\nM,D,7,7 k5\n"))
    assert reading.stations.number("bore_diameter").tolist() == [4, 5, 6, 7]
    assert reading.stations.place("bore_diameter", 3).cell == "C5"


def test_blanks_without_end_are_read_in_time(tmp_path):
    text = "machine  station  bore_diameter\nM  A  4\n" + "x" + " " * 2_000_000 + "\n" + "a  " * 100_000 + "\n"
    reading = read_table(write(tmp_path, text))
    assert reading.stations.number("bore_diameter")[0] == 4
    wide = ("a  " * 300 + "\n") * 20 + "machine  station  bore_diameter\n"
    assert refused(write(tmp_path, wide, "wide.txt")).code == "too-many-cells"


def test_number_format_of_any_length(tmp_path):
    book = openpyxl.Workbook()
    for row in (["machine", "station", "bore_diameter"], ["M", "A", 4.25]):
        book.active.append(row)
    book.active["C2"].number_format = '";' * 20_000 + "0.0"
    path = tmp_path / "t.xlsx"
    book.save(path)
    assert read_table(path).stations.number("bore_diameter").tolist() == [4.25]


def test_formula_text_in_delimited_text_is_never_evaluated(tmp_path):
    reading = read_table(write(tmp_path, _HEAD + 'M,A,=1+3,"=HYPERLINK(""x"")"\nM,B,@SUM(1),-0.008\n'))
    assert all(value != value for value in reading.stations.number("bore_diameter"))
    assert {p.read for p in reading.stations.problems if p.parameter == "bore_diameter"} == {"=1+3", "@SUM(1)"}


def test_names_are_listed_even_where_nothing_is_recognised(tmp_path):
    words = read_names(write(tmp_path, "wellendings,lochding\n4,11\n5,12\n"))
    assert [(word.text, word.samples) for word in words] == [("wellendings", ("4", "5")), ("lochding", ("11", "12"))]


def test_truncated_workbook(tmp_path):
    path = workbook(tmp_path / "a.xlsx", _SHEET.format("", _ROWS))
    data = path.read_bytes()
    for length in (30, len(data) // 3, len(data) // 2, len(data) - 10):
        refused(write(tmp_path, data[:length], "cut.xlsx"))
    sheet = zlib.compress(b"x")
    broken = io.BytesIO()
    with zipfile.ZipFile(broken, "w") as archive:
        archive.writestr("xl/workbook.xml", sheet)
    refused(write(tmp_path, broken.getvalue(), "odd.xlsx"))


def test_json_numbers_of_thirty_digits(tmp_path):
    record = [{"machine": "M", "station": "A", "bore_diameter": 10**29}]
    reading = read_table(write(tmp_path, json.dumps(record), "t.json"))
    assert reading.stations.number("bore_diameter").tolist() == [1e29]
