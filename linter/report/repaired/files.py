"""Cells of a file changed and everything else left as it is: delimited text, JSON, workbook."""

import io
import json
import re
from collections.abc import Sequence
from itertools import accumulate
from typing import Any

from attrs import frozen

from linter.model.places import Place

#: Fill of a changed cell of a workbook.
MARK = "FFFFE699"
_DELIMITERS = (",", ";", "\t", "|")
_DECODER = json.JSONDecoder()


@frozen
class Edit:
    """One cell: what it says and what it is to say; ``note`` stands beside it where the file can hold one."""

    place: Place
    before: str
    after: str
    note: str


@frozen
class Replaced:
    """One piece of a text file and what comes in its place; lines and columns count characters from 1.

    Attributes
    ----------
    line, column : int
        Its first character; a byte order mark is not counted.
    end_line, end_column : int
        The character behind its last one.
    text : str
        What comes in its place.
    """

    line: int
    column: int
    end_line: int
    end_column: int
    text: str


class NotWritten(Exception):
    """A cell that cannot be changed in this file; the text says why."""


def edited(content: bytes, edits: Sequence[Edit]) -> bytes:
    """A file with some cells changed.

    Parameters
    ----------
    content : bytes
        A workbook (xlsx), JSON, or delimited text.
    edits : sequence of Edit
        One for each cell.

    Returns
    -------
    bytes
        The same kind of file; in text and JSON every other byte is as it was.

    Raises
    ------
    NotWritten
        If a cell is not found as it was read.
    """
    if content[:2] == b"PK":
        return _workbook(content, edits)
    text, encoding, spans = _spans(content, edits)
    for start, stop, new in sorted(spans, reverse=True):
        text = text[:start] + new + text[stop:]
    try:
        return text.encode(encoding)
    except UnicodeEncodeError as error:
        raise NotWritten(f"the encoding of the file ({encoding}) has no {error.object[error.start]!r}") from None


def replaced(content: bytes, edits: Sequence[Edit]) -> tuple[Replaced, ...]:
    """Where each edit stands in a text file, in the order of the edits.

    Parameters
    ----------
    content : bytes
        JSON or delimited text; a workbook is compressed and has no text that could be replaced.
    edits : sequence of Edit
        One for each cell.

    Returns
    -------
    tuple of Replaced

    Raises
    ------
    NotWritten
        If a cell is not found as it was read, or the file is a workbook.
    """
    if content[:2] == b"PK":
        raise NotWritten("a workbook has no lines")
    text, _, spans = _spans(content, edits)
    mark = text[:1] == "\ufeff"

    def place(at: int) -> tuple[int, int]:
        line = text.count("\n", 0, at) + 1
        return line, at - text.rfind("\n", 0, at) - (mark and line == 1)

    return tuple(Replaced(*place(start), *place(stop), new) for start, stop, new in spans)


def _spans(content: bytes, edits: Sequence[Edit]) -> tuple[str, str, list[tuple[int, int, str]]]:
    """The text, its encoding, and for each edit where it begins and ends there and what comes in its place."""
    for number, edit in enumerate(edits):
        if any(edit.place == other.place for other in edits[:number]):
            raise NotWritten(f"{edit.place}: two lines of the plan change this cell")
    if any(edit.place.pointer is not None for edit in edits):
        return _json_spans(content, edits)
    return _text_spans(content, edits)


# --- delimited text ---------------------------------------------------------------------------------------------------


def _coded(content: bytes) -> tuple[str, str]:
    """The text with an encoding that gives the same bytes back; what is put in is plain ASCII, or a ± that is there."""
    if content[:2] in (b"\xff\xfe", b"\xfe\xff"):
        return content.decode("utf-16"), "utf-16"
    try:
        return content.decode("utf-8"), "utf-8"
    except UnicodeDecodeError:
        return content.decode("latin-1"), "latin-1"


def _text_spans(content: bytes, edits: Sequence[Edit]) -> tuple[str, str, list[tuple[int, int, str]]]:
    text, encoding = _coded(content)
    lines = text.splitlines(keepends=True)
    starts = [0, *accumulate(map(len, lines))]
    delimiter = _delimiter(lines, edits)
    spans = []
    for edit in edits:
        row, column = _cell(edit.place)
        if row > len(lines):
            raise NotWritten(f"{edit.place}: no such line in the file")
        body = lines[row - 1].rstrip("\r\n")
        fields = _fields(body, delimiter)
        if column > len(fields):
            raise NotWritten(f"{edit.place}: the line has {len(fields)} fields")
        if _bare(fields[column - 1]) != edit.before.strip():
            raise NotWritten(f"{edit.place}: read was {edit.before!r}, the field says {_bare(fields[column - 1])!r}")
        quoted = fields[column - 1].strip()[:1] == '"' or delimiter in edit.after
        start = starts[row - 1] + sum(len(field) + 1 for field in fields[: column - 1])
        stop = start + len(fields[column - 1])
        start += fields[column - 1][:1] == "\ufeff"  # the mark of byte order stays
        spans.append((start, stop, f'"{edit.after}"' if quoted else edit.after))
    return text, encoding, spans


def _delimiter(lines: Sequence[str], edits: Sequence[Edit]) -> str:
    """The delimiter under which most of the cells say what was read."""

    def fitting(delimiter: str) -> int:
        count = 0
        for edit in edits:
            row, column = _cell(edit.place)
            fields = _fields(lines[row - 1].rstrip("\r\n"), delimiter) if row <= len(lines) else []
            count += column <= len(fields) and _bare(fields[column - 1]) == edit.before.strip()
        return count

    return max(_DELIMITERS, key=fitting)


def _fields(line: str, delimiter: str) -> list[str]:
    """The fields of a line as they stand, quotes included."""
    found, start, quoted = [], 0, False
    for k, sign in enumerate(line):
        if sign == '"':
            quoted = not quoted
        elif sign == delimiter and not quoted:
            found.append(line[start:k])
            start = k + 1
    return [*found, line[start:]]


def _bare(field: str) -> str:
    field = field.strip().lstrip("\ufeff")
    return (
        field[1:-1].replace('""', '"').strip() if field[:1] == '"' and field[-1:] == '"' and len(field) > 1 else field
    )


def _cell(place: Place) -> tuple[int, int]:
    match = re.fullmatch(r"([A-Z]+)([0-9]+)", place.cell or "")
    if match is None:
        raise NotWritten(f"{place}: is not a cell of a table")
    column = 0
    for letter in match[1]:
        column = column * 26 + ord(letter) - ord("A") + 1
    return int(match[2]), column


# --- JSON -------------------------------------------------------------------------------------------------------------


def _json_spans(content: bytes, edits: Sequence[Edit]) -> tuple[str, str, list[tuple[int, int, str]]]:
    encoding = "utf-16" if content[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8"
    text = content.decode(encoding)
    spans = []
    for edit in edits:
        start, stop = _span(text, edit.place.pointer or "", edit.place)
        was = json.loads(text[start:stop])
        number = isinstance(was, int | float) and not isinstance(was, bool)
        is_number = re.fullmatch(r"-?\d+(\.\d+)?", edit.after) is not None
        new = edit.after if is_number and (number or was is None) else json.dumps(edit.after, ensure_ascii=False)
        spans.append((start, stop, new))
    return text, encoding, spans


def _span(text: str, pointer: str, place: Place) -> tuple[int, int]:
    """Where the value of a JSON Pointer begins and ends."""
    at = _skip(text, 1 if text[:1] == "\ufeff" else 0)
    for part in pointer.split("/")[1:]:
        key = part.replace("~1", "/").replace("~0", "~")
        at = _member(text, at, key, place)
    _, stop = _DECODER.raw_decode(text, at)
    return at, stop


def _member(text: str, at: int, key: str, place: Place) -> int:
    """Where the value of a key or index of the object or list at a position begins."""
    opened, number = text[at], 0
    at = _skip(text, at + 1)
    while at < len(text) and text[at] not in "]}":
        name = str(number)
        if opened == "{":
            name, at = _DECODER.raw_decode(text, at)
            at = _skip(text, _skip(text, at) + 1)
        if name == key:
            return at
        _, at = _DECODER.raw_decode(text, at)
        at = _skip(text, at)
        if at < len(text) and text[at] == ",":
            at = _skip(text, at + 1)
        number += 1
    raise NotWritten(f"{place}: no such value in the file")


def _skip(text: str, at: int) -> int:
    while at < len(text) and text[at] in " \t\r\n":
        at += 1
    return at


# --- workbook ---------------------------------------------------------------------------------------------------------


def _workbook(content: bytes, edits: Sequence[Edit]) -> bytes:
    import openpyxl
    from openpyxl.comments import Comment
    from openpyxl.styles import PatternFill

    book = openpyxl.load_workbook(io.BytesIO(content))
    fill = PatternFill("solid", fgColor=MARK)
    for edit in edits:
        if edit.place.sheet not in book.sheetnames or edit.place.cell is None:
            raise NotWritten(f"{edit.place}: no such cell in the sheet")
        cell: Any = book[edit.place.sheet][edit.place.cell]
        if isinstance(cell.value, str) and cell.value.startswith("="):
            raise NotWritten(f"{edit.place}: the cell holds a formula")
        number = re.fullmatch(r"-?\d+(\.\d+)?", edit.after) is not None
        cell.value = float(edit.after) if number and not isinstance(cell.value, str) else edit.after
        cell.fill = fill
        said = f"{cell.comment.text}\n{edit.note}" if cell.comment is not None else edit.note
        cell.comment = Comment(said, "ringseat")
    stream = io.BytesIO()
    book.save(stream)
    return stream.getvalue()
