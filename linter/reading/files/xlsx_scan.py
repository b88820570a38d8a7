"""One sheet of a workbook as plain XML text: what a reader of cells does not tell.

Extent, formulas without a calculated value, merged ranges, hidden rows and columns, error values, and which cells have
a style that matters. No pattern here looks beyond the next tag, so that none is slow on any text.
"""

import re
from collections.abc import Iterable, Iterator

from attrs import frozen

from linter.reading.files.intake import InputError, Source, visible

MOST_ROWS = 30_000
MOST_COLUMNS = 500
MOST_CELLS = 1_500_000
MOST_MERGED = 20_000
MOST_SHOWN = 5

_PREFIX = rb"(?:[A-Za-z_][\w.-]*:)?"
_CELL_START = re.compile(rb"<" + _PREFIX + rb"c(?=[\s/>])")
_REFERENCE = re.compile(rb"<" + _PREFIX + rb"c\s[^<>]*?\br=[\"']([A-Za-z]{1,4})(\d{1,8})[\"']")
_ROW = re.compile(rb"<" + _PREFIX + rb"row\s([^<>]*)>")
_ROW_NUMBER = re.compile(rb"\br=[\"'](\d{1,9})[\"']")
_HIDDEN = re.compile(rb"\bhidden=[\"'](?:1|true)[\"']")
# the parts of cells that hold a formula
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
# a merged range with a corner that no sheet has
_NO_RANGE = re.compile(rb"<" + _PREFIX + rb"mergeCell\s[^<>]*?\bref=[\"'](?:\w{1,12}:)?(?:[A-Z]{5}|[A-Z]{1,4}\d{9})")
_COLUMN = re.compile(rb"<" + _PREFIX + rb"col\s([^<>]*)>")
_SPAN = re.compile(rb"\b(min|max)=[\"'](\d{1,8})[\"']")
_ESCAPED_TAG = re.compile(rb"<[^<>]*&[^<>]*>")
_OTHER_TYPE = re.compile(rb"<" + _PREFIX + rb"c\s[^<>]*?\bt=[\"']d[\"']")
_ERROR = re.compile(rb"<" + _PREFIX + rb"c\s([^<>]*?\bt=[\"']e[\"'][^<>]*)>")
_ERROR_TEXT = re.compile(rb"<" + _PREFIX + rb"v>([^<]{1,40})<")
_STYLE = re.compile(rb"\bs=[\"'](\d{1,6})[\"']")


@frozen(eq=False)
class Extent:
    """What the XML text of one sheet tells.

    Attributes
    ----------
    cells : int
        Number of cells.
    not_calculated : frozenset of (row, column)
        Cells that hold a formula and no value of it.
    merged : tuple of (top, left, bottom, right)
        Merged ranges.
    hidden_rows, hidden_columns : frozenset of int
        Numbers of hidden rows and columns.
    filtered : bool
        Whether rows are hidden by a filter.
    linked : tuple of str
        Cells whose formula refers to another workbook.
    last_row, last_column : int
        The last ones that hold a cell.
    plain : bool
        Whether every cell says where it stands, in the plain spelling that this scan understands.
    """

    cells: int
    not_calculated: frozenset[tuple[int, int]]
    merged: tuple[tuple[int, int, int, int], ...]
    hidden_rows: frozenset[int]
    hidden_columns: frozenset[int]
    filtered: bool = False
    linked: tuple[str, ...] = ()
    last_row: int = 0
    last_column: int = 0
    plain: bool = False


def linked_note(sheet: str, cells: tuple[str, ...]) -> str:
    """Note on cells whose stored value comes from another workbook."""
    shown = ", ".join(cells[:MOST_SHOWN]) + (", …" if len(cells) > MOST_SHOWN else "")
    return (
        f"sheet {visible(sheet)}: {shown} refer{'s' * (len(cells) == 1)} to another workbook, which is not opened; "
        "the stored value is read and may be out of date"
    )


def column_number(letters: bytes | str) -> int:
    """Number of a column by its letters, counted from 1."""
    number = 0
    for letter in letters.upper():
        number = number * 26 + (letter if isinstance(letter, int) else ord(letter)) - 64
    return number


def scan_sheet(source: Source, sheet: str, xml: bytes) -> Extent:
    """Extent and traits of one sheet from its XML; raises where it is too large."""

    def too_large(read: str) -> InputError:
        limits = f"at most {MOST_ROWS} rows, {MOST_COLUMNS} columns and {MOST_CELLS} cells"
        return source.refuse("sheet-too-large", read, limits, sheet=sheet)

    cells = len(_CELL_START.findall(xml))
    if cells > MOST_CELLS:
        raise too_large(f"{cells} cells")
    letters: dict[bytes, None] = {}
    last_row = 0
    references = _REFERENCE.findall(xml)
    for column, row in set(references):
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
    last_column = max(map(column_number, letters), default=0)
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
    return Extent(
        cells,
        frozenset(not_calculated),
        merged,
        frozenset(hidden_rows),
        frozenset(hidden_columns),
        _FILTER.search(xml) is not None,
        _linked_cells(xml) if b"[" in xml else (),
        last_row,
        last_column,
        len(references) == cells and not _is_odd(xml),
    )


def _is_odd(xml: bytes) -> bool:
    """Whether a tag holds an escaped sign, or a cell says of itself that it is a date."""
    dates = (b't="d"' in xml or b"t='d'" in xml) and _OTHER_TYPE.search(xml) is not None
    return dates or (b"&" in xml and _ESCAPED_TAG.search(xml) is not None)


def _linked_cells(xml: bytes) -> tuple[str, ...]:
    """Cells whose formula refers to another workbook, by their names; at most one more than is shown."""
    found: list[str] = []
    for formula in _FORMULA_TEXT.finditer(xml):
        if _OTHER_BOOK.search(formula[1]):
            start = max(formula.start() - 500, 0)
            cell = _AT.search(xml[max(xml.rfind(b"<c ", start, formula.start()), start) : formula.start()])
            if cell:
                found.append((cell[1] + cell[2]).decode())
        if len(found) > MOST_SHOWN:
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
                found.add((int(reference[2]), column_number(reference[1])))
            reference = None
    return found


def _merged(
    source: Source, sheet: str, xml: bytes, last_row: int, last_column: int
) -> tuple[tuple[int, int, int, int], ...]:
    """Merged ranges as far as they hold cells; raises where they lie in no sheet, on one another, or are too many."""
    if _NO_RANGE.search(xml):
        read = "a merged range with a corner that no sheet has"
        raise source.refuse("broken-workbook", read, "an undamaged workbook", sheet=sheet)
    ranges = [
        (int(top), column_number(left), min(int(bottom), last_row), min(column_number(right), last_column))
        for left, top, right, bottom in _MERGE.findall(xml)
    ]
    ranges = [(top, left, bottom, right) for top, left, bottom, right in ranges if top <= bottom and left <= right]
    cells = sum((bottom - top + 1) * (right - left + 1) for top, left, bottom, right in ranges)
    if len(ranges) > MOST_MERGED or cells > last_row * last_column:
        read = f"{len(ranges)} merged ranges over {cells} cells"
        expected = f"at most {MOST_MERGED} ranges, no two of them over one cell"
        raise source.refuse("sheet-too-large", read, expected, sheet=sheet)
    return tuple(ranges)


def error_cells(xml: bytes) -> dict[tuple[int, int], str]:
    """Row and column of each cell that shows an error of the spreadsheet, with its text."""
    found: dict[tuple[int, int], str] = {}
    if b't="e"' not in xml and b"t='e'" not in xml:
        return found
    for cell in _ERROR.finditer(xml):
        text = _ERROR_TEXT.search(xml, cell.end(), cell.end() + 400_000)
        if at := _AT.search(cell[1]):
            found[int(at[2]), column_number(at[1])] = text[1].decode("utf-8", "replace") if text else "#ERROR"
    return found


def styled_cells(xml: bytes, styles: Iterable[int]) -> Iterator[tuple[int, int, int]]:
    """Row, column and style of each cell of one of some styles."""
    wanted = b"|".join(str(style).encode() for style in sorted(styles))
    if not wanted:
        return
    pattern = re.compile(rb"<" + _PREFIX + rb"c\s([^<>]*?\bs=[\"'](?:" + wanted + rb")[\"'][^<>]*)>")
    numbers: dict[bytes, int] = {}
    for cell in pattern.finditer(xml):
        at, style = _AT.search(cell[1]), _STYLE.search(cell[1])
        if at and style:
            letters = at[1]
            column = numbers.get(letters) or numbers.setdefault(letters, column_number(letters))
            yield int(at[2]), column, int(style[1])
