"""Delimited text to raw cells."""

import csv
import gc
import re
from io import BytesIO, StringIO
from typing import Any

import numpy as np

from linter.reading.grids import Bad, Grid
from linter.reading.intake import Source, to_utf8

MOST_CELLS = 8_000_000
MOST_COLUMNS = 4000
LONGEST_CELL = 32_767
_FAST_ABOVE = 2**20
_DELIMITERS = {";": "semicolon", ",": "comma", "\t": "tab", "|": "vertical bar"}
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
        cells_of, line_of = _aligned(source, data.decode("utf-8"))
        grid = Grid(source.file, None, cells_of, line_of.astype(np.int32))
        return grid, (f"encoding {encoding}", "columns set apart by two or more blanks")
    notes = (f"encoding {encoding}", f"columns separated by {_DELIMITERS[delimiter]}" + (" (sep= line)" * bool(hint)))
    cells = data.count(delimiter.encode()) + data.count(b"\n") + 1
    if cells > MOST_CELLS:
        raise source.refuse("too-many-cells", f"about {cells} cells", f"at most {MOST_CELLS}")
    columns, lines = _fast(data, delimiter) if len(data) > _FAST_ABOVE and b'"' not in data else (None, None)
    if columns is None or lines is None:
        columns, lines = _plain(source, data, delimiter)
    return Grid(source.file, None, columns, (lines + skipped).astype(np.int32)), notes


def choose_delimiter(data: bytes) -> str:
    """The delimiter that splits most lines into the same number of cells; ``ALIGNED`` for columns padded with blanks.

    The whole file votes (its first and last megabyte, where it is larger). A tie goes to the one that makes more
    columns; semicolon goes before comma, since a comma may be a decimal sign.
    """
    sample = data if len(data) <= 2**21 else data[: 2**20] + b"\n" + data[-(2**20) :]
    sample = re.sub(rb'"[^"]*"', b'""', sample)
    lines = [line for line in sample.split(b"\n") if line.strip()]
    best, best_score = ",", (0, 0.0)
    for delimiter in (*_DELIMITERS, *([ALIGNED] if b"  " in sample else [])):
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


def _aligned(source: Source, text: str) -> tuple[list[Any], Any]:
    """Text whose cells are set apart by two or more blanks.

    A line with the usual number of cells is taken in order. A line with fewer has blank cells: each of its cells goes
    to the column that it stands below; a line where that is not clear stays one cell.
    """
    lines = text.replace("\t", "    ").split("\n")
    pieces = [[(m.start(), m.end(), m.group()) for m in _PIECE.finditer(line)] for line in lines]
    counts = np.bincount([len(line) for line in pieces if len(line) > 1] or [0])
    width = int(counts.argmax())
    if width > MOST_ALIGNED_COLUMNS or width * len(lines) > MOST_ALIGNED_CELLS:
        limits = f"at most {MOST_ALIGNED_COLUMNS} columns and {MOST_ALIGNED_CELLS} cells set apart by blanks"
        raise source.refuse("too-many-cells", f"{width} columns x {len(lines)} lines", limits)
    full = [line for line in pieces if len(line) == width]
    spans = [(min(line[c][0] for line in full), max(line[c][1] for line in full)) for c in range(width)]
    rows = []
    for line, plain in zip(pieces, lines, strict=True):
        row = [""] * width
        if len(line) == width:
            row = [cell for _, _, cell in line]
        elif len(line) > width:
            row[:1] = [plain.strip()]
        else:
            for start, end, cell in line:
                below = [c for c, (left, right) in enumerate(spans) if start < right and end > left]
                if len(below) != 1 or row[below[0]]:
                    row = [plain.strip(), *[""] * (width - 1)]
                    break
                row[below[0]] = cell
        rows.append([_bounded(cell) for cell in row])
    columns = []
    for cells in zip(*rows, strict=True):
        column = np.empty(len(cells), dtype=object)
        column[:] = cells
        columns.append(column)
    return columns, np.arange(1, len(lines) + 1)


def _fast(data: bytes, delimiter: str) -> tuple[list[Any], Any] | tuple[None, None]:
    """Large text without quotes, tokenised in C; nothing is converted, every cell stays the text it was.

    Returns (None, None) where rows differ in length, which the plain reader handles.
    """
    import pandas as pd

    try:
        frame = pd.read_csv(
            BytesIO(data),
            sep=delimiter,
            header=None,
            dtype=object,
            na_filter=False,
            skip_blank_lines=False,
            quoting=csv.QUOTE_NONE,
            encoding="utf-8",
        )
    except (pd.errors.ParserError, pd.errors.EmptyDataError, UnicodeDecodeError, ValueError):
        return None, None
    columns = [frame[name].to_numpy() for name in frame.columns]
    if any(len(text) > LONGEST_CELL for text in data.split(b"\n")):
        return None, None
    for column in columns[-1:]:
        if any(type(cell) is not str for cell in column):
            return None, None
    return columns, np.arange(1, len(frame) + 1)


def _plain(source: Source, data: bytes, delimiter: str) -> tuple[list[Any], Any]:
    """Any delimited text, with quoted cells, quoted line ends and rows of unequal length."""
    text = data.decode("utf-8")
    csv.field_size_limit(max(csv.field_size_limit(), 16 * 2**20))
    reader = csv.reader(StringIO(text, newline=""), delimiter=delimiter, strict=False)
    rows: list[list[Any]] = []
    lines: list[int] = []
    start = 1
    collecting = gc.isenabled()
    gc.disable()
    try:
        for row in reader:
            rows.append(row)
            lines.append(start)
            start = reader.line_num + 1
    except csv.Error as error:
        raise source.refuse(
            "csv", f"text that is not delimited text ({error})", "one row per line", cell=f"line {start}"
        ) from None
    finally:
        if collecting:
            gc.enable()
    if rows and text.count('"') % 2 and any("\n" in cell for cell in rows[-1]):
        raise source.refuse(
            "open-quote", "a quotation mark that is never closed", "a closing quotation mark", cell=f"line {lines[-1]}"
        )
    width = max(map(len, rows), default=0)
    if width > MOST_COLUMNS:
        raise source.refuse("too-many-columns", f"{width} columns", f"at most {MOST_COLUMNS}")
    if width * len(rows) > MOST_CELLS:
        raise source.refuse("too-many-cells", f"{width} columns x {len(rows)} lines", f"at most {MOST_CELLS} cells")
    long = len(text) > LONGEST_CELL
    for row in rows:
        if long and max(map(len, row), default=0) > LONGEST_CELL:
            row[:] = [_bounded(cell) for cell in row]
        row.extend([""] * (width - len(row)))
    columns = []
    for cells in zip(*rows, strict=True):
        column = np.empty(len(cells), dtype=object)
        column[:] = cells
        columns.append(column)
    return columns, np.array(lines, dtype=np.int64)


def _bounded(cell: str) -> Any:
    """A cell, or why it is not read."""
    if len(cell) <= LONGEST_CELL:
        return cell
    return Bad("too-long", f"{cell[:40]}… ({len(cell)} characters)", f"at most {LONGEST_CELL} characters")
