"""Workbooks to raw cells.

Each sheet is scanned twice: once as plain XML text for what a streaming reader does not tell (formulas without a
calculated value, merged ranges, hidden rows and columns, the true extent), and once by openpyxl in streaming mode for
the values. Formulas are never evaluated; their stored result is read.
"""

import datetime
import gc
import posixpath
import re
import zipfile
from io import BytesIO
from typing import Any

import numpy as np
import openpyxl
from attrs import frozen
from openpyxl.styles.numbers import is_date_format

from linter.model.places import column_letters
from linter.model.stations import Unused
from linter.reading.files.cell_notes import read_cell_notes
from linter.reading.files.grids import LONGEST_CELL, Bad, Grid, bounded
from linter.reading.files.intake import InputError, Source, visible

MOST_ROWS = 20_000
MOST_COLUMNS = 500
MOST_CELLS = 500_000
MOST_CELLS_IN_ALL = 1_000_000
MOST_MERGED = 20_000
MOST_SHEETS = 250
_MOST_SHOWN = 5

_PREFIX = rb"(?:[A-Za-z_][\w.-]*:)?"
_CELL_START = re.compile(rb"<" + _PREFIX + rb"c(?=[\s/>])")
_REFERENCE = re.compile(rb"<" + _PREFIX + rb"c\s[^<>]*?\br=[\"']([A-Za-z]{1,4})(\d{1,8})[\"']")
_ROW = re.compile(rb"<" + _PREFIX + rb"row\s([^<>]*)>")
_ROW_NUMBER = re.compile(rb"\br=[\"'](\d{1,9})[\"']")
_HIDDEN = re.compile(rb"\bhidden=[\"'](?:1|true)[\"']")
# the parts of cells that hold a formula; no pattern here looks beyond the next tag, so that none is slow on any text
_OF_CELL = re.compile(
    rb"<" + _PREFIX + rb"(?:(?P<cell>c)\s(?P<attributes>[^<>]*)>|(?P<formula>f)[\s/>]|(?P<value>v)(?:\s[^<>]*)?>[^<])"
    rb"|</" + _PREFIX + rb"(?P<end>c)>"
)
_AT = re.compile(rb"\br=[\"']([A-Z]{1,4})(\d{1,8})[\"']")
_FORMULA = re.compile(rb"<" + _PREFIX + rb"f[\s/>]")
_FORMULA_TEXT = re.compile(rb"<" + _PREFIX + rb"f(?:\s[^<>]*)?>([^<]*)<")
_OTHER_BOOK = re.compile(rb"\[[^\[\]]{1,100}\][^!\[\]]{0,60}!")
_FILTER = re.compile(rb"<" + _PREFIX + rb"filterColumn[\s/>]")
_MERGE = re.compile(rb"<" + _PREFIX + rb"mergeCell\s[^<>]*?\bref=[\"']([A-Z]{1,4})(\d{1,8}):([A-Z]{1,4})(\d{1,8})[\"']")
_COLUMN = re.compile(rb"<" + _PREFIX + rb"col\s([^<>]*)>")
_SPAN = re.compile(rb"\b(min|max)=[\"'](\d{1,8})[\"']")
_LITERAL = re.compile(r'"([^"]*)"|((?:\\.)+)|\[\$([^\]-]*)[^\]]*\]')
_FIXED = re.compile(r"[#0,]*0(?:\.(0*)#*)?(,*)")


@frozen(eq=False)
class _Extent:
    """What the XML text of one sheet tells."""

    cells: int
    not_calculated: frozenset[tuple[int, int]]
    merged: tuple[tuple[int, int, int, int], ...]
    hidden_rows: frozenset[int]
    hidden_columns: frozenset[int]
    filtered: bool = False
    linked: tuple[str, ...] = ()


def _linked(sheet: str, cells: tuple[str, ...]) -> str:
    """Note on cells whose stored value comes from another workbook."""
    shown = ", ".join(cells[:_MOST_SHOWN]) + (", …" if len(cells) > _MOST_SHOWN else "")
    return (
        f"sheet {visible(sheet)}: {shown} refer{'s' * (len(cells) == 1)} to another workbook, which is not opened; "
        "the stored value is read and may be out of date"
    )


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
    not_calculated = _not_calculated(xml) if _FORMULA.search(xml) else set()
    merged = _merged(source, sheet, xml, last_row, last_column)
    hidden_columns: set[int] = set()
    for attributes in _COLUMN.findall(xml):
        if b"hidden" in attributes and _HIDDEN.search(attributes):
            span = {key: int(value) for key, value in _SPAN.findall(attributes)}
            hidden_columns.update(range(span.get(b"min", 1), min(span.get(b"max", 1), last_column) + 1))
    return _Extent(
        cells,
        frozenset(not_calculated),
        merged,
        frozenset(hidden_rows),
        frozenset(hidden_columns),
        _FILTER.search(xml) is not None,
        _linked_cells(xml) if b"[" in xml else (),
    )


def _linked_cells(xml: bytes) -> tuple[str, ...]:
    """Cells whose formula refers to another workbook, by their names; at most one more than is shown."""
    found: list[str] = []
    for formula in _FORMULA_TEXT.finditer(xml):
        if _OTHER_BOOK.search(formula[1]):
            start = max(formula.start() - 500, 0)
            cell = _AT.search(xml[max(xml.rfind(b"<c ", start, formula.start()), start) : formula.start()])
            if cell:
                found.append((cell[1] + cell[2]).decode())
        if len(found) > _MOST_SHOWN:
            break
    return tuple(found)


def _not_calculated(xml: bytes) -> set[tuple[int, int]]:
    """Row and column of each cell that holds a formula and no value of it."""
    found = set()
    reference: re.Match[bytes] | None = None
    formula = value = False
    for part in _OF_CELL.finditer(xml):
        kind = part.lastgroup
        if part["cell"]:
            reference = None if part["attributes"].endswith(b"/") else _AT.search(part["attributes"])
            formula = value = False
        elif kind == "formula":
            formula = True
        elif kind == "value":
            value = True
        else:
            if reference is not None and formula and not value:
                found.add((int(reference[2]), _column_number(reference[1])))
            reference = None
    return found


def _merged(
    source: Source, sheet: str, xml: bytes, last_row: int, last_column: int
) -> tuple[tuple[int, int, int, int], ...]:
    """Merged ranges as far as they hold cells; raises where they are more than a sheet has, or lie on one another."""
    ranges = [
        (int(top), _column_number(left), min(int(bottom), last_row), min(_column_number(right), last_column))
        for left, top, right, bottom in _MERGE.findall(xml)
    ]
    ranges = [(top, left, bottom, right) for top, left, bottom, right in ranges if top <= bottom and left <= right]
    cells = sum((bottom - top + 1) * (right - left + 1) for top, left, bottom, right in ranges)
    if len(ranges) > MOST_MERGED or cells > last_row * last_column:
        read = f"{len(ranges)} merged ranges over {cells} cells"
        expected = f"at most {MOST_MERGED} ranges, no two of them over one cell"
        raise source.refuse("sheet-too-large", read, expected, sheet=sheet)
    return tuple(ranges)


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


def read_grids(source: Source) -> tuple[list[Grid], tuple[str, ...], list[Unused]]:
    """Every sheet of a workbook as raw cells, hidden ones included.

    Returns
    -------
    list of Grid
        One per sheet that holds a cell. Dates, error values, formulas without a calculated value and struck-out cells
        are :class:`~linter.reading.files.grids.Bad`.
    tuple of str
        Notes: hidden sheets, rows and columns, empty sheets, cells that show another number than they hold.
    list of Unused
        Cell notes, which are no values.

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
    cells = 0
    collecting = gc.isenabled()
    gc.disable()  # very many cells are made and none of them in circles
    try:
        archive = zipfile.ZipFile(BytesIO(source.data))
        parts = _sheet_parts(archive)
        sheets = archive.read("xl/workbook.xml").count(b"sheetId=")
        if sheets > MOST_SHEETS:  # before a parser opens each
            raise source.refuse("sheet-too-large", f"{sheets} sheets", f"at most {MOST_SHEETS} sheets")
        if len(set(parts.values())) < len(parts):
            raise source.refuse("broken-workbook", "two sheets that show one part", "a part for each sheet")
        book = openpyxl.load_workbook(BytesIO(source.data), read_only=True, data_only=True, keep_links=False)
        if len(book.worksheets) > MOST_SHEETS:
            raise source.refuse("sheet-too-large", f"{len(book.worksheets)} sheets", f"at most {MOST_SHEETS} sheets")
        traits = _Styles(book)
        remarks, said = read_cell_notes(source, {sheet.title: parts.get(sheet.title, "") for sheet in book.worksheets})
        notes.extend(said)
        if remarks:
            notes.append(f"the workbook holds {len(remarks)} cell note{'s' * (len(remarks) > 1)}; listed as unused")
        if any(name.startswith("xl/externalLinks/") for name in archive.namelist()):
            notes.append("the workbook has links to other workbooks; they are not followed")
        for sheet in book.worksheets:
            member = parts.get(sheet.title, "")
            xml = archive.read(member) if member in archive.namelist() else b""
            extent = _scan(source, sheet.title, xml)
            del xml
            cells += extent.cells
            if cells > MOST_CELLS_IN_ALL:
                limits = f"at most {MOST_CELLS_IN_ALL} cells in all sheets"
                raise source.refuse("sheet-too-large", f"more than {MOST_CELLS_IN_ALL} cells", limits)
            if sheet.sheet_state != "visible":
                notes.append(f"sheet {visible(sheet.title)} is hidden ({sheet.sheet_state})")
            grid = _read_sheet(source, sheet, extent, traits)
            notes.extend(traits.rounded(sheet.title))
            if grid is None:
                notes.append(f"sheet {visible(sheet.title)} is empty")
                continue
            for what, hidden in (("row", extent.hidden_rows), ("column", extent.hidden_columns)):
                if hidden:
                    many = "s" * (len(hidden) > 1)
                    which = [column_letters(at) if what == "column" else str(at) for at in sorted(hidden)[:_MOST_SHOWN]]
                    more = ", …" if len(hidden) > _MOST_SHOWN else ""
                    notes.append(
                        f"sheet {visible(sheet.title)} has {len(hidden)} hidden {what}{many} "
                        f"({', '.join(which)}{more}); read too"
                    )
            if extent.filtered:
                notes.append(f"sheet {visible(sheet.title)} is filtered; rows that the filter hides are read too")
            if extent.linked:
                notes.append(_linked(sheet.title, extent.linked))
            notes.extend(traits.coloured(sheet.title))
            grids.append(grid)
        book.close()
    except (InputError, MemoryError):
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
    finally:
        if collecting:
            gc.enable()
    if not grids:
        raise source.refuse("empty", "a workbook without one filled cell", "a table of parameters")
    return grids, tuple(notes), remarks


@frozen
class _Style:
    """What one cell style says: ``%`` or a unit (else empty), decimals shown (-1: all), struck out."""

    meaning: str = ""
    decimals: int = -1
    struck: bool = False
    filled: bool = False


class _Styles:
    """What a cell style says that matters, looked up once per style; remembers cells that show other digits."""

    def __init__(self, book: Any) -> None:
        self._book = book
        self._known: dict[int, _Style] = {0: _Style()}
        self._rounded: list[str] = []
        self._count = 0
        self.numbers = 0
        self._filled: list[str] = []
        self._filled_count = 0

    def __call__(self, cell: Any) -> _Style:
        """Style of a cell."""
        style = cell._style_id
        if style not in self._known:
            struck = bool(cell.font is not None and cell.font.strike)
            filled = bool(cell.fill is not None and cell.fill.fill_type == "solid")
            self._known[style] = _Style(*_meaning_of(cell.number_format or ""), struck, filled)
        return self._known[style]

    def compare(self, row: int, column: int, value: float, style: _Style) -> None:
        """Remember a number whose format hides digits that are more than the noise of a float."""
        shown = round(value, style.decimals)
        if abs(shown - value) > 1e-9 * abs(value):
            self._count += 1
            if len(self._rounded) < _MOST_SHOWN:
                text = f"{shown:.{style.decimals}f}"
                self._rounded.append(f"{column_letters(column)}{row} shows {text} and holds {value:.15g}")

    def fill(self, row: int, column: int) -> None:
        """Remember a number that stands on a colour."""
        self._filled_count += 1
        if len(self._filled) <= _MOST_SHOWN:
            self._filled.append(f"{column_letters(column)}{row}")

    def coloured(self, sheet: str) -> list[str]:
        """Note on numbers that a colour sets apart from the others of the sheet; forgets them."""
        cells, few = self._filled, 5 * self._filled_count <= self.numbers
        self._filled, self._filled_count, self.numbers = [], 0, 0
        if not cells or not few:
            return []  # most are coloured, as in banded rows
        shown = ", ".join(cells[:_MOST_SHOWN]) + (", …" if len(cells) > _MOST_SHOWN else "")
        return [f"sheet {visible(sheet)}: colours are not read; these numbers stand on a colour of their own: {shown}"]

    def rounded(self, sheet: str) -> list[str]:
        """What was remembered, as one note; forgets it."""
        cells, more = self._rounded, self._count - len(self._rounded)
        self._rounded, self._count = [], 0
        if not cells:
            return []
        rest = f", and so in {more} more cell{'s' * (more > 1)}" if more else ""
        return [f"sheet {visible(sheet)}: the number in a cell is read, not the rounded one shown: "
                f"{'; '.join(cells)}{rest}"]  # fmt: skip


def _meaning_of(shape: str) -> tuple[str, int]:
    """``%`` or the unit that a number format adds behind the number, and the decimals it shows (-1: all of them)."""
    if len(shape) > 255 or is_date_format(shape):  # 255: the longest format that a spreadsheet writes
        return "", -1
    first = shape.split(";")[0] if '"' not in shape else re.split(r';(?=(?:[^"]*"[^"]*")*[^"]*$)', shape)[0]
    bare = _LITERAL.sub("", re.sub(r"_.|\*.", "", first))
    number = _FIXED.search(bare)
    decimals = len(number[1] or "") if number and not number[2] and not re.search(r"[E/?@%#]", bare) else -1
    if "%" in bare:
        return "%", -1
    start = re.search(r"[#0?]", first)
    for literal in _LITERAL.finditer(first, start.end() if start else len(first)):
        text = (literal[1] or literal[3] or re.sub(r"\\(.)", r"\1", literal[2] or "")).strip()
        if text and len(text) <= 12:
            return text, decimals
    return "", decimals


def _read_sheet(source: Source, sheet: Any, extent: _Extent, traits: _Styles) -> Grid | None:
    """One sheet as a grid that begins at its first filled row and column; None for an empty sheet."""
    sheet.reset_dimensions()
    formats: dict[tuple[int, int], str] = {}
    top, left, bottom, right = 2**31, 2**31, 0, 0
    rows: list[tuple[int, list[tuple[int, Any]]]] = []
    for count, row in enumerate(sheet.iter_rows()):
        if count >= MOST_ROWS or len(row) > MOST_COLUMNS:
            # a reference that only a parser of XML can read escapes the scan of the text
            limits = f"at most {MOST_ROWS} rows and {MOST_COLUMNS} columns"
            raise source.refuse("sheet-too-large", "a cell beyond them", limits, sheet=sheet.title)
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
                    value = bounded(value)
                elif not value.strip():
                    continue
            elif kind == "e":
                value = Bad("error-cell", str(value), "a value; the cell shows a spreadsheet error")
            elif kind == "d" or isinstance(value, (datetime.date, datetime.time, datetime.timedelta)):
                value = Bad(
                    "date-cell", str(value), "a value; the cell is a date (sizes such as 3-8 turn into dates on typing)"
                )
            if cell._style_id:
                style = traits(cell)
                if style.struck and not isinstance(value, Bad):
                    value = Bad("struck-out", str(value), "a value that is not struck out")
                elif style.meaning and not isinstance(value, str):
                    formats[number, column] = style.meaning
                    if style.meaning == "%" and isinstance(value, (int, float)) and not isinstance(value, bool):
                        value = float(f"{value * 100:.12g}")  # 0.05 is shown, and meant, as 5 %
                if style.decimals >= 0 and type(value) is float:
                    traits.compare(number, column, value, style)
                if style.filled and kind == "n":
                    traits.fill(number, column)
            traits.numbers += kind == "n"
            kept.append((column, value))
        if kept:
            top, bottom = min(top, number), max(bottom, number)
            left, right = min(left, kept[0][0]), max(right, kept[-1][0])
            rows.append((number, kept))
    for number, column in extent.not_calculated:
        top, bottom = min(top, number), max(bottom, number)
        left, right = min(left, column), max(right, column)
    if not bottom:
        return None
    columns: list[Any] = [np.full(bottom - top + 1, None, dtype=object) for _ in range(right - left + 1)]
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
        packed=True,
    )
