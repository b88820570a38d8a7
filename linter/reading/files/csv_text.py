"""Delimited text to raw cells.

The csv module of the standard library decides what a text means. Reading a large file through it costs a Python string
for every cell, most of which are numbers that nobody needs as strings. So the ends of all cells are first looked for at
once (:func:`_cut`), and the csv module reads whatever is not plainly well-formed.
"""

import csv
import re
from array import array
from collections.abc import Iterator
from io import BytesIO, TextIOWrapper
from itertools import islice
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.reading.files.grids import (
    CELL_END,
    LONGEST_CELL,
    LONGEST_MIXED,
    MARGIN,
    Column,
    Grid,
    TextColumn,
    bounded,
    object_column,
)
from linter.reading.files.intake import Source, to_utf8

MOST_CELLS = 8_000_000
MOST_COLUMNS = 4000
MOST_ROWS = 300_000
_DELIMITERS = {";": "semicolon", ",": "comma", "\t": "tab", "|": "vertical bar", "=": "equals sign"}
ALIGNED = "  "
MOST_ALIGNED_COLUMNS = 200
MOST_ALIGNED_CELLS = 200_000
_GAP = re.compile(rb"(?<=\S) {2,}(?=\S)")
_PIECE = re.compile(r"[^ ]+(?: [^ ]+)*")
_HINT = re.compile(rb"\Asep=([;,\t|])[ \t]*(?:\n|\Z)", re.IGNORECASE)


def read_grid(source: Source, declared_encoding: str = "") -> tuple[Grid, tuple[str, ...]]:
    """Read delimited text.

    Parameters
    ----------
    source : Source
        The file.
    declared_encoding : str
        Code page that the name mapping declares, empty for none.

    Returns
    -------
    Grid
        Its cells, each a text.
    tuple of str
        Notes: encoding and delimiter.

    Raises
    ------
    InputError
        If the text is not valid in its encoding, a quote is never closed, or it is too large.
    """
    data, encoding = to_utf8(source, declared_encoding)
    skipped = 0
    hint = _HINT.match(data)
    if hint:
        data, skipped = data[hint.end() :], 1
    delimiter = hint.group(1).decode() if hint else choose_delimiter(data)
    if delimiter == ALIGNED:
        cells_of, line_of = _aligned(source, data)
        grid = Grid(source.file, None, cells_of, line_of.astype(np.int32))
        return grid, (f"encoding {encoding}", "columns set apart by two or more blanks")
    notes = (f"encoding {encoding}", f"columns separated by {_DELIMITERS[delimiter]}" + (" (sep= line)" * bool(hint)))
    cells = data.count(delimiter.encode()) + data.count(b"\n") + 1
    if cells > MOST_CELLS:
        raise source.refuse("too-many-cells", f"about {cells} cells", f"at most {MOST_CELLS}")
    quotes = data.count(b'"')
    if quotes > 2 * MOST_CELLS:
        raise source.refuse("too-many-cells", f"{quotes} quotation marks", f"at most {2 * MOST_CELLS}")
    cut = (_cut(source, data, delimiter) if data else None) or _by_the_book(source, data, delimiter)
    return (
        Grid(
            source.file,
            None,
            cut.columns,
            (cut.lines + skipped).astype(np.int32),
            unended=_cells_in(data[data.rfind(b"\n") + 1 :], delimiter),
            packed=cut.cells < cells - data.endswith(b"\n"),
        ),
        notes,
    )


def _cells_in(line: bytes, delimiter: str) -> int:
    """Number of cells of one line; delimiters inside quotation marks do not count."""
    if not line or len(line) > LONGEST_CELL * MOST_ALIGNED_COLUMNS:
        return 0
    return re.sub(rb'"[^"]*+"', b"", line).count(delimiter.encode()) + 1


@frozen(eq=False)
class _Cells:
    """Columns of cells, the line that each row begins in, and the number of cells that the text was cut into."""

    columns: list[Column]
    lines: NDArray[np.int32]
    cells: int


def choose_delimiter(data: bytes) -> str:
    """The delimiter that splits most lines into the same number of cells; ``ALIGNED`` for columns padded with blanks.

    The whole file votes (its first and last megabyte, where it is larger). A tie goes to the one that makes more
    columns; semicolon goes before comma, since a comma may be a decimal sign.
    """
    sample = data if len(data) <= 2**21 else data[: 2**20] + b"\n" + data[-(2**20) :]
    sample = re.sub(rb'"[^"]*"', b'""', sample)
    lines = [line for line in sample.split(b"\n") if line.strip()]
    best, best_score = ",", (0, 0.0)
    for delimiter in (*(d for d in _DELIMITERS if d.encode() in sample), *([ALIGNED] if b"  " in sample else [])):
        if delimiter == ALIGNED:
            counts = np.array([len(_GAP.findall(line)) for line in lines], dtype=int)
        else:
            counts = np.array([line.count(delimiter.encode()) for line in lines], dtype=int)
        if not counts.any():
            continue
        used = counts[counts > 0]
        usual = int(np.bincount(np.minimum(used, MOST_COLUMNS)).argmax())
        alike = float((counts == usual).mean())
        # a decimal comma also repeats, but never holds a cell of its own: a comma between two digits counts half
        weight = 1.0
        if delimiter == ",":
            commas = sample.count(b",")
            weight = 1.0 - 0.5 * len(re.findall(rb"\d,\d", sample)) / max(commas, 1)
        score = (1 if used.size >= 0.5 * len(lines) else 0, alike * weight * (1 - 0.5 ** (usual + 1)))
        if score > best_score:
            best, best_score = delimiter, score
    return best


#: What stands for a blank cell where blanks set the cells apart (common practice).
_FILLERS = ("-", "--", "–", "—")


def _aligned(source: Source, data: bytes) -> tuple[list[Any], Any]:
    """Text whose cells are set apart by two or more blanks.

    A line with the usual number of cells is taken in order. A line with fewer has blank cells: each of its cells goes
    to the column that it stands below; a line where that is not clear stays one cell. A dash fills a blank cell.
    """
    limits = f"at most {MOST_ALIGNED_COLUMNS} columns and {MOST_ALIGNED_CELLS} cells set apart by blanks"
    # counted before a cell is made of any
    if data.count(b"\n") + data.count(b"\t") + _runs_of_blanks(data, MOST_ALIGNED_CELLS) > MOST_ALIGNED_CELLS:
        raise source.refuse("too-many-cells", f"more than {MOST_ALIGNED_CELLS} lines, tabs and gaps", limits)
    lines = data.decode("utf-8").replace("\t", "    ").split("\n")
    pieces = [[(m.start(), m.end(), m.group()) for m in _PIECE.finditer(line)] for line in lines]
    counts = np.bincount([len(line) for line in pieces if len(line) > 1] or [0])
    width = int(counts.argmax())
    if width > MOST_ALIGNED_COLUMNS or width * len(lines) > MOST_ALIGNED_CELLS:
        raise source.refuse("too-many-cells", f"{width} columns x {len(lines)} lines", limits)
    full = [line for line in pieces if len(line) == width]
    spans = [(min(line[c][0] for line in full), max(line[c][1] for line in full)) for c in range(width)]
    rows = []
    for line, plain in zip(pieces, lines, strict=True):
        row = [""] * width
        if len(line) == width:
            row = ["" if cell in _FILLERS else cell for _, _, cell in line]
        elif len(line) > width:
            row[:1] = [plain.strip()]
        else:
            row = _below(line, spans) or [plain.strip(), *[""] * (width - 1)]
        rows.append([bounded(cell) for cell in row])
    return [object_column(cells) for cells in zip(*rows, strict=True)], np.arange(1, len(lines) + 1)


def _below(line: list[tuple[int, int, str]], spans: list[tuple[int, int]]) -> list[str]:
    """The pieces of a line (start, end, text) in the columns that they stand below; empty where that is not clear."""
    row = [""] * len(spans)
    for start, end, cell in line:
        below = [c for c, (left, right) in enumerate(spans) if start < right and end > left]
        if len(below) != 1 or row[below[0]]:
            return []
        row[below[0]] = cell
    return row


def _runs_of_blanks(data: bytes, most: int) -> int:
    """Runs of two or more blanks that something follows in their line, counted up to one more than ``most``."""
    return sum(1 for _ in islice(re.finditer(rb"(?<! ) {2,}+[^ \n]", data), most + 1))


def _cut(source: Source, data: bytes, delimiter: str) -> _Cells | None:
    """Cells by the places of the signs that end them, for the whole text at once.

    A cell is well-formed (RFC 4180) where it holds no quotation mark, or begins and ends with one and has only doubled
    ones inside. Returns None where a cell is not; what such a text means is for the csv module to say.
    """
    ended = data.endswith(b"\n")
    # an array of its own, since numpy asks for large pages of memory, on which scattered signs are found sooner
    whole = np.zeros(len(data) + (not ended) + MARGIN, dtype=np.uint8)
    whole[: len(data)] = np.frombuffer(data, dtype=np.uint8)
    signs = whole[:-MARGIN]
    if not ended:
        signs[-1] = ord("\n")
    ends_line = signs == ord("\n")
    ends_cell = ends_line | (signs == ord(delimiter))
    quotes = np.flatnonzero(signs == ord('"')).astype(np.int32) if b'"' in data else np.zeros(0, np.int32)
    if len(quotes):
        inside = np.zeros(len(signs), np.uint8)
        inside[quotes] = 1
        ends_cell &= np.bitwise_xor.accumulate(inside, out=inside) == 0
    ends = np.flatnonzero(ends_cell).astype(np.int32)
    if not len(ends) or ends[-1] != len(signs) - 1:
        return None
    starts = _after(ends)
    last = np.flatnonzero(ends_line[ends]).astype(np.int32)  # cells that end a row
    lines = np.arange(1, len(last) + 1, dtype=np.int32)
    odd = np.zeros(len(ends), dtype=bool)
    if len(quotes):
        line_ends = np.flatnonzero(ends_line).astype(np.int32)
        lines = (np.searchsorted(line_ends, starts[_after(last)]) + 1).astype(np.int32)
        quoted = (signs[starts] == ord('"')) & (ends > starts)
        if (signs[ends[quoted] - 1] != ord('"')).any() or (ends - starts < 2)[quoted].any():
            return None
        outer = np.zeros(len(signs), dtype=bool)
        outer[starts[quoted]] = outer[ends[quoted] - 1] = True
        inner = quotes[~outer[quotes]]
        owner = np.searchsorted(ends, inner)
        if len(inner) % 2 or (inner[1::2] != inner[::2] + 1).any() or not quoted[owner].all():
            return None
        odd[owner] = True
        starts, ends = starts + quoted, ends - quoted
    odd |= ends - starts > LONGEST_CELL
    return _Cells(_laid_out(source, whole, starts, ends, odd, last, doubled=True), lines, len(ends))


def _laid_out(
    source: Source,
    whole: NDArray[np.uint8],
    starts: NDArray[np.int32],
    ends: NDArray[np.int32],
    odd: NDArray[np.bool_],
    last: NDArray[np.int32],
    *,
    doubled: bool,
) -> list[Column]:
    """Cells row by row as columns of a grid.

    ``odd`` marks cells that are looked at one by one; ``doubled`` says that their quotation marks are still doubled.
    """
    first = _after(last)
    _check_size(source, int((last - first).max()) + 1, len(last))
    columns: list[Column] = []
    for column, unlike in _columns(whole, starts, ends, odd, first, last):
        if len(last) > LONGEST_MIXED and not unlike.any():
            columns.append(column)
            continue
        cells = object_column(column.tolist())
        for row in np.flatnonzero(unlike).tolist():
            cells[row] = bounded(cells[row].replace('""', '"') if doubled else cells[row])
        columns.append(cells)
    return columns


def _after(ends: NDArray[np.int32]) -> NDArray[np.int32]:
    """Where each thing begins, by where the one before it ended; int32 throughout, since there may be very many."""
    starts = np.zeros_like(ends)
    np.add(ends[:-1], 1, out=starts[1:])
    return starts


def _columns(
    whole: NDArray[np.uint8],
    starts: NDArray[np.int32],
    ends: NDArray[np.int32],
    odd: NDArray[np.bool_],
    first: NDArray[np.int32],
    last: NDArray[np.int32],
) -> Iterator[tuple[TextColumn, NDArray[np.bool_]]]:
    """Cells row by row as columns, with the mark of each cell; where a row is shorter its missing cells are blank."""
    width = int((last - first).max()) + 1
    even = bool((last - first == width - 1).all())
    for index in range(width):
        if even:
            at = np.s_[index::width]
            yield TextColumn(whole, starts[at].copy(), ends[at].copy()), odd[at]
            continue
        row_at = first + np.int32(index)
        missing = row_at > last
        row_at[missing] = 0
        begin, end, unlike = starts[row_at], ends[row_at], odd[row_at]
        begin[missing] = end[missing] = 0
        unlike[missing] = False
        yield TextColumn(whole, begin, end), unlike


def _check_size(source: Source, width: int, height: int) -> None:
    if width > MOST_COLUMNS:
        raise source.refuse("too-many-columns", f"{width} columns", f"at most {MOST_COLUMNS}")
    if height > MOST_ROWS:
        raise source.refuse("too-many-cells", f"{height} rows", f"at most {MOST_ROWS} rows")
    if width * height > MOST_CELLS:
        raise source.refuse("too-many-cells", f"{width} columns x {height} lines", f"at most {MOST_CELLS} cells")


def _by_the_book(source: Source, data: bytes, delimiter: str) -> _Cells:
    """Any delimited text, cell by cell: quotation marks in odd places too.

    A row is kept as bytes, its cells ended as those of a :class:`TextColumn` are, since objects of their own would take
    many times the memory.
    """
    csv.field_size_limit(max(csv.field_size_limit(), 16 * 2**20))
    text = TextIOWrapper(BytesIO(data), encoding="utf-8", newline="")
    reader = csv.reader(text, delimiter=delimiter, strict=False)
    end = chr(CELL_END)
    rows: list[bytes] = []
    counts, lines = array("i"), array("i")
    start = 1
    row: list[str] = []
    try:
        for row in reader:
            rows.append(end.join(row).encode())
            counts.append(max(len(row), 1))
            lines.append(start)
            start = reader.line_num + 1
    except csv.Error as error:
        raise source.refuse(
            "csv", f"text that is not delimited text ({error})", "one row per line", cell=f"line {start}"
        ) from None
    if data.count(b'"') % 2 and any("\n" in cell for cell in row):
        raise source.refuse(
            "open-quote", "a quotation mark that is never closed", "a closing quotation mark", cell=f"line {lines[-1]}"
        )
    if not rows:
        return _Cells([], np.zeros(0, np.int32), 0)
    joined = bytes([CELL_END]).join([*rows, bytes(MARGIN)])
    del rows
    whole = np.frombuffer(joined, dtype=np.uint8)
    ends = np.flatnonzero(whole[: len(whole) - MARGIN] == CELL_END).astype(np.int32)
    starts = _after(ends)
    last = np.cumsum(np.array(counts, dtype=np.int32), dtype=np.int32) - 1
    odd = ends - starts > LONGEST_CELL
    columns = _laid_out(source, whole, starts, ends, odd, last, doubled=False)
    return _Cells(columns, np.array(lines, dtype=np.int32), len(ends))
