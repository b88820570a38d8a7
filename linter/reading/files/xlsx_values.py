"""The values of one sheet of a workbook as an array of raw cells.

A sheet whose cells are all spelt plainly is read by calamine, which takes a tenth of the time that openpyxl takes, and
what it does not tell (styles, errors) is taken from the text of the sheet. Any other sheet is read by openpyxl in
streaming mode. Both give the same cells.
"""

import datetime
from io import BytesIO
from typing import Any

import numpy as np
from attrs import define, field
from numpy.typing import NDArray

from linter.reading.files.grids import LONGEST_CELL, Bad, bounded
from linter.reading.files.intake import Source
from linter.reading.files.xlsx_scan import MOST_COLUMNS, MOST_ROWS, Extent, error_cells, styled_cells
from linter.reading.files.xlsx_styles import Style, Styles

#: Cells of a sheet, blank ones counted, beyond which calamine is not used: it keeps them all.
_MOST_DENSE = 4_000_000
_TEXT, _NUMBER, _TRUTH, _OTHER = range(4)
_KINDS: dict[type, int] = {str: _TEXT, float: _NUMBER, int: _NUMBER, bool: _TRUTH}
_kinds = np.frompyfunc(lambda cell: _KINDS.get(type(cell), _OTHER), 1, 1)


@define(eq=False)
class Values:
    """Raw cells of a sheet from its first row and column on.

    Attributes
    ----------
    cells : object array, shape (rows, columns)
        The cells; None or an empty text where blank.
    formats : dict of (row, column) to str
        Percent signs and units of number formats, by row and column counted from 1.
    """

    cells: NDArray[Any]
    formats: dict[tuple[int, int], str] = field(factory=dict)

    def style(self, row: int, column: int, value: Any, style: Style, styles: Styles) -> Any:
        """A value as its style has it: struck out, a date, in percent; what it shows and hides is remembered."""
        number = isinstance(value, (int, float)) and not isinstance(value, bool)
        if style.date and number:
            value, number = date_cell(str(value)), False
        if style.struck and not isinstance(value, Bad):
            value = Bad("struck-out", str(value), "a value that is not struck out")
        elif style.meaning and not isinstance(value, str):
            self.formats[row, column] = style.meaning
            if style.meaning == "%" and number:
                value = float(f"{value * 100:.12g}")  # 0.05 is shown, and meant, as 5 %
        if style.decimals >= 0 and type(value) is float:
            styles.compare(row, column, value, style)
        if style.filled and number:
            styles.fill(row, column)
        return value


def date_cell(read: str) -> Bad:
    """A cell that is a date, which is never taken for a size."""
    return Bad("date-cell", read, "a value; the cell is a date (sizes such as 3-8 turn into dates on typing)")


class Book:
    """The workbook as calamine reads it, opened when it is first asked for."""

    def __init__(self, source: Source, texts: bytes) -> None:
        # signs that the two libraries spell differently in texts are left to one of them
        self._usable = b"_x" not in texts and b"<rPh" not in texts
        self._source = source
        self._book: Any = None

    def rows(self, sheet: str, extent: Extent, xml: bytes) -> list[list[Any]] | None:
        """Rows of a sheet from its first row and column on; None where it is to be read by openpyxl."""
        dense = extent.last_row * extent.last_column
        if not (self._usable and extent.plain and dense <= _MOST_DENSE) or b"_x" in xml:
            return None
        try:
            if self._book is None:
                from python_calamine import CalamineWorkbook

                self._book = CalamineWorkbook.from_filelike(BytesIO(self._source.data))
            rows: list[list[Any]] = self._book.get_sheet_by_name(sheet).to_python(skip_empty_area=False)
        except Exception:  # whatever it finds wrong, the other reader says it in its own words
            return None
        except BaseException as panic:
            if type(panic).__name__ != "PanicException":
                raise
            return None
        width = max(map(len, rows), default=0)
        fits = len(rows) <= extent.last_row and width <= extent.last_column and all(len(row) == width for row in rows)
        return rows if rows and fits else None


def read_fast(rows: list[list[Any]], xml: bytes, styles: Styles) -> Values:
    """Values that calamine read, with what the text of the sheet tells of them."""
    cells = np.empty((len(rows), len(rows[0])), dtype=object)
    cells[:] = rows
    kinds = _kinds(cells).astype(np.int8)
    styles.numbers += int((kinds == _NUMBER).sum())
    for row, column in np.argwhere(kinds == _OTHER).tolist():
        value = cells[row, column]
        if value is not None:
            cells[row, column] = date_cell(str(value))
    numbers = cells[kinds == _NUMBER].astype(float)
    if not np.isfinite(numbers).all():
        for row, column in np.argwhere(kinds == _NUMBER)[~np.isfinite(numbers)].tolist():
            cells[row, column] = Bad("not-a-number", str(cells[row, column]), "a finite number")
    for row, column in np.argwhere(kinds == _TEXT).tolist() if _holds_long(cells, kinds) else ():
        cells[row, column] = bounded(cells[row, column])
    values = Values(cells)
    height, width = cells.shape
    for (row, column), text in error_cells(xml).items():
        if row <= height and column <= width:
            cells[row - 1, column - 1] = error_cell(text)
    for row, column, number in styled_cells(xml, styles.that_matter()):
        if row <= height and column <= width and (value := cells[row - 1, column - 1]) not in (None, ""):
            cells[row - 1, column - 1] = values.style(row, column, value, styles.of(number), styles)
    return values


def _holds_long(cells: NDArray[Any], kinds: NDArray[np.int8]) -> bool:
    """Whether a text is longer than a cell may be."""
    return max(map(len, cells[kinds == _TEXT].tolist()), default=0) > LONGEST_CELL


def error_cell(text: str) -> Bad:
    """A cell that shows an error of the spreadsheet."""
    return Bad("error-cell", text, "a value; the cell shows a spreadsheet error")


def read_streaming(source: Source, sheet: Any, styles: Styles) -> Values:
    """Values of a sheet by openpyxl in streaming mode.

    Raises
    ------
    InputError
        For a cell beyond the rows and columns that are read.
    """
    sheet.reset_dimensions()
    values = Values(np.empty((0, 0), dtype=object))
    rows: list[tuple[int, list[tuple[int, Any]]]] = []
    height = width = 0
    for count, row in enumerate(sheet.iter_rows()):
        if count >= MOST_ROWS or len(row) > MOST_COLUMNS:
            # a reference that only a parser of XML can read escapes the scan of the text
            limits = f"at most {MOST_ROWS} rows and {MOST_COLUMNS} columns"
            raise source.refuse("sheet-too-large", "a cell beyond them", limits, sheet=sheet.title)
        kept, number = [], 0
        for cell in row:
            value = _value(cell) if cell.value is not None else None
            if value is None:
                continue
            styles.numbers += cell.data_type == "n"
            if cell._style_id:
                value = values.style(cell.row, cell.column, value, styles.of(cell._style_id), styles)
            kept.append((cell.column, value))
            number = cell.row
        if kept:
            height, width = max(height, number), max(width, kept[-1][0])
            rows.append((number, kept))
    values.cells = np.full((height, width), None, dtype=object)
    for number, kept in rows:
        for column, value in kept:
            values.cells[number - 1, column - 1] = value
    return values


def _value(cell: Any) -> Any:
    """The value of a cell that openpyxl read, or why it is none; None for a text of blanks."""
    value, kind = cell.value, cell.data_type
    if kind == "e":
        return error_cell(str(value))
    if kind == "d" or isinstance(value, (datetime.date, datetime.time, datetime.timedelta)):
        return date_cell(str(value))
    if type(value) is float and value - value != 0.0:
        return Bad("not-a-number", str(value), "a finite number")
    if isinstance(value, str):
        return bounded(value) if value.strip() else None
    return value
