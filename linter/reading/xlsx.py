"""Workbooks to raw cells.

Each sheet is scanned twice: once as plain XML text for what a streaming reader does not tell (formulas without a
calculated value, merged ranges, hidden rows and columns, the true extent), and once by openpyxl in streaming mode for
the values. Formulas are never evaluated; their stored result is read.
"""

import datetime
import posixpath
import re
import zipfile
from io import BytesIO
from typing import Any

import numpy as np
import openpyxl
from attrs import frozen
from openpyxl.styles.numbers import is_date_format

from linter.reading.grids import Bad, Grid
from linter.reading.intake import InputError, Source, visible

MOST_ROWS = 20_000
MOST_COLUMNS = 500
MOST_CELLS = 500_000
LONGEST_CELL = 32_767

_PREFIX = rb"(?:[A-Za-z_][\w.-]*:)?"
_CELL_START = re.compile(rb"<" + _PREFIX + rb"c(?=[\s/>])")
_REFERENCE = re.compile(rb"<" + _PREFIX + rb"c\s[^>]*?\br=[\"']([A-Za-z]{1,4})(\d{1,8})[\"']")
_ROW = re.compile(rb"<" + _PREFIX + rb"row\s([^>]*)>")
_ROW_NUMBER = re.compile(rb"\br=[\"'](\d{1,9})[\"']")
_HIDDEN = re.compile(rb"\bhidden=[\"'](?:1|true)[\"']")
_FORMULA_CELL = re.compile(
    rb"<" + _PREFIX + rb"c\s([^>]*?)(?<!/)>((?:(?!</" + _PREFIX + rb"c>).)*?)</" + _PREFIX + rb"c>", re.DOTALL
)
_VALUE = re.compile(rb"<" + _PREFIX + rb"v(?:\s[^>]*)?>[^<]")
_FORMULA = re.compile(rb"<" + _PREFIX + rb"f[\s/>]")
_MERGE = re.compile(rb"<" + _PREFIX + rb"mergeCell\s[^>]*?\bref=[\"']([A-Z]+)(\d+):([A-Z]+)(\d+)[\"']")
_COLUMN = re.compile(rb"<" + _PREFIX + rb"col\s([^>]*)>")
_SPAN = re.compile(rb"\b(min|max)=[\"'](\d+)[\"']")
_UNIT_FORMAT = re.compile(r'"\s*([^"]{1,12}?)\s*"')


@frozen(eq=False)
class _Extent:
    """What the XML text of one sheet tells."""

    not_calculated: frozenset[tuple[int, int]]
    merged: tuple[tuple[int, int, int, int], ...]
    hidden_rows: frozenset[int]
    hidden_columns: frozenset[int]


def _column_number(letters: bytes | str) -> int:
    number = 0
    for letter in letters.upper():
        number = number * 26 + (letter if isinstance(letter, int) else ord(letter)) - 64
    return number


def _scan(source: Source, sheet: str, xml: bytes) -> _Extent:
    """Extent and traits of one sheet from its XML; raises where it is too large."""

    def too_large(read: str) -> InputError:
        limits = f"at most {MOST_ROWS} rows, {MOST_COLUMNS} columns and {MOST_CELLS} cells"
        return source.refuse("sheet-too-large", read, limits, sheet=sheet)

    cells = len(_CELL_START.findall(xml))
    if cells > MOST_CELLS:
        raise too_large(f"{cells} cells")
    letters: dict[bytes, None] = {}
    last_row = 0
    for column, row in set(_REFERENCE.findall(xml)):
        letters[column] = None
        last_row = max(last_row, int(row))
    hidden_rows: set[int] = set()
    previous = 0
    for attributes in _ROW.findall(xml):
        number = _ROW_NUMBER.search(attributes)
        previous = int(number.group(1)) if number else previous + 1
        last_row = max(last_row, previous)
        if b"hidden" in attributes and _HIDDEN.search(attributes):
            hidden_rows.add(previous)
    last_column = max(map(_column_number, letters), default=0)
    if last_row > MOST_ROWS:
        raise too_large(f"a cell in row {last_row}")
    if last_column > MOST_COLUMNS:
        raise too_large(f"a cell in column {last_column}")
    not_calculated = set()
    if _FORMULA.search(xml):
        for attributes, body in _FORMULA_CELL.findall(xml):
            if _FORMULA.search(body) and not _VALUE.search(body):
                reference = re.search(rb"\br=[\"']([A-Z]+)(\d+)[\"']", attributes)
                if reference:
                    not_calculated.add((int(reference.group(2)), _column_number(reference.group(1))))
    merged = tuple(
        (int(top), _column_number(left), min(int(bottom), last_row), min(_column_number(right), last_column))
        for left, top, right, bottom in _MERGE.findall(xml)
    )
    hidden_columns: set[int] = set()
    for attributes in _COLUMN.findall(xml):
        if b"hidden" in attributes and _HIDDEN.search(attributes):
            span = {key: int(value) for key, value in _SPAN.findall(attributes)}
            hidden_columns.update(range(span.get(b"min", 1), min(span.get(b"max", 1), last_column) + 1))
    return _Extent(frozenset(not_calculated), merged, frozenset(hidden_rows), frozenset(hidden_columns))


def _sheet_parts(archive: zipfile.ZipFile) -> dict[str, str]:
    """Archive member of each sheet by its name, from the workbook's relations."""
    from defusedxml.ElementTree import fromstring

    main = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
    office = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}"
    strict = "{http://purl.oclc.org/ooxml/officeDocument/relationships}"
    relations = {
        node.get("Id"): node.get("Target", "")
        for node in fromstring(archive.read("xl/_rels/workbook.xml.rels"), forbid_dtd=True)
    }
    parts = {}
    for node in fromstring(archive.read("xl/workbook.xml"), forbid_dtd=True).iter():
        if node.tag == f"{main}sheet" or node.tag.endswith("}sheet"):
            target = relations.get(node.get(f"{office}id") or node.get(f"{strict}id"), "")
            member = target.lstrip("/") if target.startswith("/") else posixpath.normpath(f"xl/{target}")
            parts[node.get("name", "")] = member
    return parts


def read_grids(source: Source) -> tuple[list[Grid], tuple[str, ...]]:
    """Every sheet of a workbook as raw cells, hidden ones included.

    Returns
    -------
    list of Grid
        One per sheet that holds a cell. Dates, error values, formulas without a calculated value and struck-out cells
        are :class:`~linter.reading.grids.Bad`.
    tuple of str
        Notes: hidden sheets, rows and columns, empty sheets, cell notes.

    Raises
    ------
    InputError
        If the workbook is damaged or a sheet is too large.
    """
    if openpyxl.DEFUSEDXML is not True:
        raise source.refuse(
            "unguarded",
            "a workbook, while the guard against expanding entities is off",
            "defusedxml in use by openpyxl",
        )
    grids: list[Grid] = []
    notes: list[str] = []
    try:
        archive = zipfile.ZipFile(BytesIO(source.data))
        parts = _sheet_parts(archive)
        book = openpyxl.load_workbook(BytesIO(source.data), read_only=True, data_only=True, keep_links=False)
        traits = _Styles(book)
        if any("comments" in name for name in archive.namelist()):
            notes.append("the workbook holds cell notes; they are not read")
        for sheet in book.worksheets:
            member = parts.get(sheet.title, "")
            xml = archive.read(member) if member in archive.namelist() else b""
            extent = _scan(source, sheet.title, xml)
            del xml
            if sheet.sheet_state != "visible":
                notes.append(f"sheet {visible(sheet.title)} is hidden ({sheet.sheet_state})")
            grid = _read_sheet(source, sheet, extent, traits)
            if grid is None:
                notes.append(f"sheet {visible(sheet.title)} is empty")
                continue
            for what, hidden in (("row", extent.hidden_rows), ("column", extent.hidden_columns)):
                if hidden:
                    many = "s" * (len(hidden) > 1)
                    notes.append(f"sheet {visible(sheet.title)} has {len(hidden)} hidden {what}{many}; read too")
            grids.append(grid)
        book.close()
    except InputError:
        raise
    except RecursionError:
        raise source.refuse("broken-workbook", "parts nested too deeply", "an undamaged workbook") from None
    except (
        Exception
    ) as error:  # the parser's own errors are of every kind: KeyError, ValueError, ParseError, zlib.error
        raise source.refuse(
            "broken-workbook",
            f"a workbook that does not parse ({type(error).__name__}: {visible(str(error), 150)})",
            "an undamaged workbook",
        ) from None
    if not grids:
        raise source.refuse("empty", "a workbook without one filled cell", "a table of parameters")
    return grids, tuple(notes)


class _Styles:
    """What a cell style says that matters, looked up once per style."""

    def __init__(self, book: Any) -> None:
        self._book = book
        self._known: dict[int, tuple[str, bool]] = {0: ("", False)}

    def __call__(self, cell: Any) -> tuple[str, bool]:
        """Meaningful number format (``%`` or a unit, else empty) and whether the text is struck out."""
        style = cell._style_id
        if style not in self._known:
            shape = cell.number_format or ""
            meaning = ""
            if "%" in re.sub(r'"[^"]*"|\\.', "", shape):
                meaning = "%"
            elif not is_date_format(shape) and (unit := _UNIT_FORMAT.search(shape)):
                meaning = unit.group(1)
            self._known[style] = (meaning, bool(cell.font is not None and cell.font.strike))
        return self._known[style]


def _read_sheet(source: Source, sheet: Any, extent: _Extent, traits: _Styles) -> Grid | None:
    """One sheet as a grid that begins at its first filled row and column; None for an empty sheet."""
    sheet.reset_dimensions()
    formats: dict[tuple[int, int], str] = {}
    top, left, bottom, right = 2**31, 2**31, 0, 0
    rows: list[tuple[int, list[tuple[int, Any]]]] = []
    for row in sheet.iter_rows():
        kept = []
        number = 0
        for cell in row:
            value = cell.value
            if value is None:
                continue
            number = cell.row
            column = cell.column
            kind = cell.data_type
            if kind == "n":
                if type(value) is float and value - value != 0.0:
                    value = Bad("not-a-number", str(value), "a finite number")
            elif kind == "s" or kind == "inlineStr" or kind == "str":
                if len(value) > LONGEST_CELL:
                    value = Bad(
                        "too-long", f"{value[:40]}… ({len(value)} characters)", f"at most {LONGEST_CELL} characters"
                    )
                elif not value.strip():
                    continue
            elif kind == "e":
                value = Bad("error-cell", str(value), "a value; the cell shows a spreadsheet error")
            elif kind == "d" or isinstance(value, (datetime.date, datetime.time, datetime.timedelta)):
                value = Bad(
                    "date-cell", str(value), "a value; the cell is a date (sizes such as 3-8 turn into dates on typing)"
                )
            if cell._style_id:
                meaning, struck = traits(cell)
                if struck and not isinstance(value, Bad):
                    value = Bad("struck-out", str(value), "a value that is not struck out")
                elif meaning and not isinstance(value, str):
                    formats[number, column] = meaning
                    if meaning == "%" and isinstance(value, (int, float)) and not isinstance(value, bool):
                        value = float(f"{value * 100:.12g}")  # 0.05 is shown, and meant, as 5 %
            kept.append((column, value))
        if kept:
            top, bottom = min(top, number), number
            left, right = min(left, kept[0][0]), max(right, kept[-1][0])
            rows.append((number, kept))
    for number, column in extent.not_calculated:
        top, bottom = min(top, number), max(bottom, number)
        left, right = min(left, column), max(right, column)
    if not bottom:
        return None
    columns = [np.full(bottom - top + 1, None, dtype=object) for _ in range(right - left + 1)]
    for number, kept in rows:
        for column, value in kept:
            columns[column - left][number - top] = value
    for number, column in extent.not_calculated:
        columns[column - left][number - top] = Bad(
            "not-calculated", "a formula without a calculated value", "a value; open the workbook and save it once"
        )
    return Grid(
        source.file,
        sheet.title,
        columns,
        np.arange(top, bottom + 1, dtype=np.int32),
        left,
        tuple((t - top, c - left, b - top, r - left) for t, c, b, r in extent.merged if t >= top and c >= left),
        {(r - top, c - left): f for (r, c), f in formats.items()},
        frozenset(r - top for r in extent.hidden_rows if top <= r <= bottom),
        frozenset(c - left for c in extent.hidden_columns if left <= c <= right),
    )
