"""Workbooks to raw cells.

Each sheet is scanned as plain XML text for what no reader of cells tells (formulas without a calculated value, merged
ranges, hidden rows and columns, the true extent), and then its values are read. Formulas are never evaluated; their
stored result is read.
"""

import posixpath
import zipfile
from io import BytesIO
from typing import Any

import numpy as np

from linter.model.places import column_letters
from linter.model.stations import Unused
from linter.reading.files.bounds import without_collecting
from linter.reading.files.cell_notes import read_cell_notes
from linter.reading.files.grids import Bad, Grid, is_blank
from linter.reading.files.intake import InputError, Source, visible
from linter.reading.files.xlsx_book import Sheet, looks_of, plain_book
from linter.reading.files.xlsx_scan import MOST_SHOWN, Extent, linked_note, scan_sheet
from linter.reading.files.xlsx_styles import Styles
from linter.reading.files.xlsx_values import Book, Values, read_fast, read_streaming

MOST_CELLS_IN_ALL = 2_000_000
MOST_SHEETS = 250
_TEXTS = "xl/sharedStrings.xml"


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
    with without_collecting():
        try:
            grids, notes, remarks = _read(source)
        except (InputError, MemoryError):
            raise
        except RecursionError:
            raise source.refuse("broken-workbook", "parts nested too deeply", "an undamaged workbook") from None
        except Exception as error:  # the parsers' own errors are of every kind: KeyError, ParseError, zlib.error
            read = f"a workbook that does not parse ({type(error).__name__}: {visible(str(error), 150)})"
            raise source.refuse("broken-workbook", read, "an undamaged workbook") from None
    if not grids:
        raise source.refuse("empty", "a workbook without one filled cell", "a table of parameters")
    return grids, tuple(notes), remarks


def _read(source: Source) -> tuple[list[Grid], list[str], list[Unused]]:
    """Grids, notes and cell notes of a workbook."""
    notes: list[str] = []
    grids: list[Grid] = []
    archive = zipfile.ZipFile(BytesIO(source.data))
    names = set(archive.namelist())
    parts = _sheet_parts(archive)
    count = archive.read("xl/workbook.xml").count(b"sheetId=")
    if count > MOST_SHEETS:  # before a parser opens each
        raise source.refuse("sheet-too-large", f"{count} sheets", f"at most {MOST_SHEETS} sheets")
    if len(set(parts.values())) < len(parts):
        raise source.refuse("broken-workbook", "two sheets that show one part", "a part for each sheet")
    book: Any = None
    if (plain := plain_book(archive)) is not None:
        sheets, looks = plain
    else:
        book = _opened(source)
        sheets = [Sheet(one.title, one.sheet_state, parts.get(one.title, "")) for one in book.worksheets]
        looks = looks_of(book)
    if len(sheets) > MOST_SHEETS:
        raise source.refuse("sheet-too-large", f"{len(sheets)} sheets", f"at most {MOST_SHEETS} sheets")
    remarks, said = read_cell_notes(source, {sheet.title: sheet.part for sheet in sheets})
    notes.extend(said)
    if remarks:
        notes.append(f"the workbook holds {len(remarks)} cell note{'s' * (len(remarks) > 1)}; listed as unused")
    if any(name.startswith("xl/externalLinks/") for name in names):
        notes.append("the workbook has links to other workbooks; they are not followed")
    fast = Book(source, archive.read(_TEXTS) if _TEXTS in names else b"")
    styles, cells = Styles(looks), 0
    for number, sheet in enumerate(sheets):
        xml = archive.read(sheet.part) if sheet.part in names else b""
        extent = scan_sheet(source, sheet.title, xml)
        cells += extent.cells
        if cells > MOST_CELLS_IN_ALL:
            limits = f"at most {MOST_CELLS_IN_ALL} cells in all sheets"
            raise source.refuse("sheet-too-large", f"more than {MOST_CELLS_IN_ALL} cells", limits)
        if sheet.state != "visible":
            notes.append(f"sheet {visible(sheet.title)} is hidden ({sheet.state})")
        rows = fast.rows(sheet.title, extent, xml)
        if not rows and (extent.cells or b"<sheetData" not in xml):
            book = book or _opened(source)
            values = read_streaming(source, book.worksheets[number], styles)
        else:
            values = read_fast(rows, xml, styles) if rows else Values(np.empty((0, 0), dtype=object))
        del xml, rows
        grid = _grid(source, sheet.title, extent, values)
        notes.extend(styles.rounded(sheet.title))
        notes.extend(_notes(sheet.title, extent) if grid else [f"sheet {visible(sheet.title)} is empty"])
        notes.extend(styles.coloured(sheet.title))
        grids.extend([grid] if grid else [])
    if book is not None:
        book.close()
    return grids, notes, remarks


def _opened(source: Source) -> Any:
    """The workbook by openpyxl."""
    import openpyxl  # takes longer than all the rest of a small table, and few workbooks need it

    if openpyxl.DEFUSEDXML is not True:
        raise source.refuse(
            "unguarded",
            "a workbook, while the guard against expanding entities is off",
            "defusedxml in use by openpyxl",
        )
    return openpyxl.load_workbook(BytesIO(source.data), read_only=True, data_only=True, keep_links=False)


def _notes(sheet: str, extent: Extent) -> list[str]:
    """What is to be said of a sheet: what is hidden or filtered and read all the same, and links."""
    notes = []
    for what, hidden in (("row", extent.hidden_rows), ("column", extent.hidden_columns)):
        if hidden:
            many = "s" * (len(hidden) > 1)
            which = [column_letters(at) if what == "column" else str(at) for at in sorted(hidden)[:MOST_SHOWN]]
            more = ", …" if len(hidden) > MOST_SHOWN else ""
            notes.append(
                f"sheet {visible(sheet)} has {len(hidden)} hidden {what}{many} ({', '.join(which)}{more}); read too"
            )
    if extent.filtered:
        notes.append(f"sheet {visible(sheet)} is filtered; rows that the filter hides are read too")
    if extent.linked:
        notes.append(linked_note(sheet, extent.linked))
    return notes


def _grid(source: Source, sheet: str, extent: Extent, values: Values) -> Grid | None:
    """One sheet as a grid that begins at its first filled row and column; None for an empty sheet."""
    cells = values.cells
    rows = [row + 1 for row in _ends(cells)]
    columns = [column + 1 for column in _ends(cells.T)]
    rows += [row for row, _ in extent.not_calculated]
    columns += [column for _, column in extent.not_calculated]
    if not rows:
        return None
    top, bottom, left, right = min(rows), max(rows), min(columns), max(columns)
    kept = np.full((bottom - top + 1, right - left + 1), None, dtype=object)
    own = cells[top - 1 : bottom, left - 1 : right]
    kept[: own.shape[0], : own.shape[1]] = own
    for row, column in extent.not_calculated:
        kept[row - top, column - left] = Bad(
            "not-calculated", "a formula without a calculated value", "a value; open the workbook and save it once"
        )
    return Grid(
        source.file,
        sheet,
        [column.copy() for column in kept.T],
        np.arange(top, bottom + 1, dtype=np.int32),
        left,
        tuple((t - top, c - left, b - top, r - left) for t, c, b, r in extent.merged if t >= top and c >= left),
        {(r - top, c - left): f for (r, c), f in values.formats.items()},
        frozenset(r - top for r in extent.hidden_rows if top <= r <= bottom),
        frozenset(c - left for c in extent.hidden_columns if left <= c <= right),
        packed=True,
    )


def _ends(cells: Any) -> list[int]:
    """First and last line of an array that holds anything; empty where none does."""

    def filled(lines: Any) -> int | None:
        return next((line for line in lines if not all(map(is_blank, cells[line].tolist()))), None)

    first, last = filled(range(len(cells))), filled(reversed(range(len(cells))))
    return [] if first is None or last is None else [first, last]
