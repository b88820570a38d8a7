"""Arbitrary bytes and texts: a reader gives a reading or an input error, never another exception."""

import io
import json
import zipfile

import openpyxl
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from linter.reading import InputError, read_names, read_table

_settings = settings(max_examples=120, deadline=None, suppress_health_check=list(HealthCheck), derandomize=True)

_WORDS = """
machine|station|Machine:|bore_diameter|Bore [mm]|shaft_seat_diameter|shaft_seat_diameter upper|Name|Value|Unit|speed_max
lubrication|d|D|M1|A|B|4|4 k5|4 +0.006/+0.001
1.234|1,234|7,5|*|-|TBD|mm|in|%|grease|yes|#REF!|=1+1|"|'||-- A --
# x|Units: mm|1e400|-1e-400|4 µm|Ø4 H7/g6|(4)|3-8|4/0|\u202e|max 4|4…5|H7
NaN|inf|0x10|1_000|nan|ISO 2768-mK|\x1b[0m|null
true|±0.01|@|A@B|a:b|//
"""
_words = st.sampled_from(
    [word for line in _WORDS.strip().split("\n") for word in line.split("|")] + ["9" * 50, "", " "]
)
_cell = _words | st.text(max_size=12) | st.integers(-(10**30), 10**30).map(str) | st.floats().map(str)


def survives(path) -> None:
    for read in (read_table, read_names):
        try:
            reading = read(path)
        except InputError as error:
            assert "\n" not in str(error)
            continue
        if read is read_table:
            assert all("\n" not in p.message for p in reading.stations.problems)
            assert len(reading.understood) >= 0
            assert len(reading.stations) > 0
            for name in reading.stations.places:
                reading.stations.place(name, 0)


def put(tmp_path, data: bytes):
    path = tmp_path / "t"
    path.write_bytes(data)
    return path


@_settings
@given(st.binary(max_size=400))
def test_bytes(tmp_path, data):
    survives(put(tmp_path, data))


@_settings
@given(
    st.lists(st.lists(_cell, max_size=6), max_size=8),
    st.sampled_from(",;\t|="),
    st.sampled_from(["utf-8", "utf-16", "utf-8-sig"]),
)
def test_delimited_cells(tmp_path, rows, delimiter, encoding):
    text = "\n".join(delimiter.join(row) for row in rows)
    survives(put(tmp_path, text.encode(encoding, "surrogatepass")))


@_settings
@given(st.lists(st.tuples(_words, _cell, _cell), min_size=1, max_size=8))
def test_headings_with_any_cells(tmp_path, columns):
    lines = [[f'"{cell}"'.replace('""', '"') for cell in row] for row in zip(*columns, strict=True)]
    head = "machine,station,bore_diameter,"
    text = "\n".join(("M,A,4," if i else head) + ",".join(line) for i, line in enumerate(lines))
    survives(put(tmp_path, text.encode("utf-8", "surrogatepass")))


@_settings
@given(st.lists(st.tuples(_words, _cell), max_size=8))
def test_equations(tmp_path, pairs):
    text = "\n".join(f'"{name}"={value}' for name, value in pairs)
    survives(put(tmp_path, text.encode("utf-8", "surrogatepass")))


_json = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats(allow_nan=False, allow_infinity=False) | _cell,
    lambda inner: (
        st.lists(inner, max_size=4)
        | st.dictionaries(
            _words | st.sampled_from(["stations", "machines", "name", "value", "unit", "units", "upper"]),
            inner,
            max_size=5,
        )
    ),
    max_leaves=25,
)


@_settings
@given(_json)
def test_json_documents(tmp_path, document):
    survives(put(tmp_path, json.dumps(document).encode("utf-8", "surrogatepass")))


@_settings
@given(st.text(alphabet='{}[]",:0123456789.eE-+ \\untrfalsemhi', max_size=60))
def test_json_like_text(tmp_path, text):
    survives(put(tmp_path, ("{" + text).encode()))


@settings(_settings, max_examples=40)
@given(
    st.lists(
        st.lists(_cell | st.none() | st.booleans() | st.floats() | st.integers() | st.dates(), max_size=6), max_size=6
    )
)
def test_workbook_cells(tmp_path, rows):
    book = openpyxl.Workbook()
    for index, row in enumerate(rows):
        for column, cell in enumerate(row):
            try:
                book.active.cell(index + 1, column + 1, cell)
            except (ValueError, openpyxl.utils.exceptions.IllegalCharacterError):
                continue
    stream = io.BytesIO()
    book.save(stream)
    survives(put(tmp_path, stream.getvalue()))


@pytest.fixture(scope="module")
def good_workbook() -> dict[str, bytes]:
    book = openpyxl.Workbook()
    for row in (["machine", "station", "bore_diameter"], ["M", "A", 4], ["M", "B", "=1+1"]):
        book.active.append(row)
    book.active.merge_cells("A2:A3")
    stream = io.BytesIO()
    book.save(stream)
    with zipfile.ZipFile(stream) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


@settings(_settings, max_examples=80)
@given(data=st.data())
def test_workbook_parts_with_changed_bytes(tmp_path, good_workbook, data):
    members = dict(good_workbook)
    name = data.draw(st.sampled_from(sorted(members)))
    part = bytearray(members[name])
    for _ in range(data.draw(st.integers(1, 4))):
        at = data.draw(st.integers(0, len(part) - 1))
        part[at : at + data.draw(st.integers(0, 3))] = data.draw(
            st.binary(max_size=4) | st.sampled_from([b'"', b"<", b"999999", b"r="])
        )
    members[name] = bytes(part)
    if data.draw(st.booleans()):
        members.pop(data.draw(st.sampled_from(sorted(members))))
    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w", zipfile.ZIP_DEFLATED) as archive:
        for member, content in members.items():
            archive.writestr(member, content)
    survives(put(tmp_path, stream.getvalue()))


@_settings
@given(st.text(alphabet="<>/=\"'abid 01.&;![]-", max_size=80))
def test_qif_like_text(tmp_path, text):
    survives(put(tmp_path, f"<QIFDocument>{text}</QIFDocument>".encode()))
