"""Equation text files: ``"name"= value unit 'comment``, one per line; and lists of ``name := value unit``."""

import re
from collections import Counter

import numpy as np

from linter.reading.files.grids import LONGEST_CELL, Bad, Column, Grid, bounded, object_column
from linter.reading.files.intake import Source, to_utf8, visible

MOST_LINES = 100_000
_NO_VALUE = Bad("no-value", "a name without a value", "a name, an equals sign and a value with its unit")
_WORD = re.compile(r"[^\W\d]\w*(?:@[\w ]+)?")
_START = re.compile(rb'\s*"(?:[^"\n]|"")*"\s*=')
#: A line of a list without quotes: a name, the sign of an assignment or a colon with a blank, and one value.
_PLAIN = re.compile(r"(?P<name>[^\W\d][^\n;|\t\"=:{}<>]{0,120}?)\s*(?P<sign>:=|=|:(?=\s))\s*(?P<value>[^\n;|\t=]*)")
_SECTION = re.compile(r"[\[<*=\-#/ ]*([^\W_][^\n;|\t=:\[\]]{0,80}?)[\]>*=\-#/: ]*")
#: Share of the lines that are such ones, how many there are at least, and the largest text that is looked at.
_MOSTLY, _ENOUGH, _LARGEST_LIST = 0.75, 4, 2**18


def is_equations(source: Source, declared_encoding: str = "") -> bool:
    """Whether most lines of a text are a quoted name and an equals sign."""
    if b'"' not in source.data[: 2**18]:
        return False
    data, _ = to_utf8(source, declared_encoding)
    lines = [line for line in data[: 2**18].split(b"\n") if line.strip()]
    return bool(lines) and 2 * sum(1 for line in lines if _START.match(line)) >= len(lines)


def is_list(source: Source, declared_encoding: str = "") -> bool:
    """Whether most lines of a text are a name and its value, always with the same sign between them."""
    start = source.data[:1000].replace(b"\x00", b"")
    if len(source.data) > _LARGEST_LIST or start.count(b";") + start.count(b"\t") > start.count(b"\n"):
        return False
    if b"=" not in start and b": " not in start:
        return False
    data, _ = to_utf8(source, declared_encoding)
    lines = [line for line in data.decode("utf-8").split("\n") if line.strip()]
    found = [_PLAIN.fullmatch(line.rstrip()) for line in lines]
    signs = Counter(match["sign"] for match in found if match is not None and not _are_cells(match["value"]))
    return bool(signs) and signs.most_common(1)[0][1] >= max(_ENOUGH, _MOSTLY * len(lines))


def _are_cells(value: str) -> bool:
    """Whether commas rather part cells of a row than stand in one value."""
    return len(re.findall(r",(?!\d)|,(?=\d+,)", value)) > 1


def read_equations(source: Source, declared_encoding: str = "") -> tuple[Grid, tuple[str, ...]]:
    """Names, values and comments of an equation file as three columns without a header.

    A line is cut at the first equals sign outside quotes; what stands behind an apostrophe is its comment,
    unless it groups digits or stands inside a word. Expressions are kept as text and never evaluated.

    Raises
    ------
    InputError
        If the text is not valid in its encoding or has too many lines.
    """
    data, encoding = to_utf8(source, declared_encoding)
    count = data.count(b"\n") + 1
    if count > MOST_LINES:
        raise source.refuse("too-many-cells", f"{count} lines of equations", f"at most {MOST_LINES}")
    lines = data.decode("utf-8").split("\n")
    cut = [cut_line(line) for line in lines]
    columns: list[Column] = [object_column([bounded(parts[index]) for parts in cut]) for index in range(3)]
    for row, (name, value, _) in enumerate(cut):
        if name and not value:
            columns[1][row] = _NO_VALUE  # type: ignore[index]
        elif value.count('"') > 1:
            said = visible(value, 60)
            columns[1][row] = Bad("expression", said, "a value; expressions are never evaluated")  # type: ignore[index]
    return Grid(source.file, None, columns, np.arange(1, len(lines) + 1, dtype=np.int32)), (f"encoding {encoding}",)


def _inside(line: str, index: int, equals: int) -> bool:
    """Whether an apostrophe belongs to the value: it groups digits (``1'234``) or stands in a word."""
    before, behind = line[max(index - 1, 0) : index], line[index + 1 : index + 4]
    if before.isdigit() and behind.isdigit():
        return True
    value = line[equals + 1 : min(index, equals + 41)].strip()  # a part of fixed length: lines may be long
    return before.isalpha() and behind[:1].isalpha() and value[:1].isalpha()


def cut_line(line: str) -> tuple[str, str, str]:
    """Name, value and comment of one line.

    A line without an equals sign is a name without a value where it begins with a quotation mark or is one word, and a
    comment otherwise. A line beyond any cell is cut at its first equals sign, unread.
    """
    if len(line) > 4 * LONGEST_CELL:
        name, _, value = line.partition("=")
        return name.strip().strip('"'), value.strip(), ""
    quoted = False
    equals = comment = -1
    for index, sign in enumerate(line):
        if sign == '"':
            # behind the equals sign a quotation mark after a digit is an inch sign
            if not (equals >= 0 and not quoted and line[index - 1].isdigit()):
                quoted = not quoted
        elif quoted:
            continue
        elif sign == "=" and equals < 0:
            equals = index
        elif sign == "'" and not _inside(line, index, equals):
            comment = index
            break
    end = comment if comment >= 0 else len(line)
    note = line[end + 1 :].strip() if comment >= 0 else ""
    if equals < 0 or equals > end:
        lone = line[:end].strip()
        if not lone or (lone[0] != '"' and not _WORD.fullmatch(lone)):
            return "", "", line.strip()
        equals = end
    name = line[:equals].strip()
    if len(name) >= 2 and name[0] == name[-1] == '"':
        name = name[1:-1].replace('""', '"')
    return name.strip(), line[equals + 1 : end].strip(), note


def read_list(source: Source, declared_encoding: str = "") -> tuple[Grid, tuple[str, ...]]:
    """Names and values of a list without quotes as two columns; a line without a value is a heading of those below.

    A line is one cell of the text: the places of name and value are both in its first column.
    """
    data, encoding = to_utf8(source, declared_encoding)
    lines = data.decode("utf-8").split("\n")
    names, values = [], []
    for line in lines:
        match, heading = _PLAIN.fullmatch(line.rstrip()), _SECTION.fullmatch(line.strip())
        name, value = (match["name"], match["value"]) if match else (heading[1] if heading else line.strip(), "")
        names.append(bounded(name.strip()))
        values.append(bounded(value.strip()))
    columns: list[Column] = [object_column(names), object_column(values)]
    grid = Grid(source.file, None, columns, np.arange(1, len(lines) + 1, dtype=np.int32), whole_lines=True)
    return grid, (f"encoding {encoding}", "one name and its value in each line")
