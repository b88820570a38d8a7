"""Cells that hold several labelled things (``Drawing: MX-4371, Issue: B``): each becomes a row of its own.

Only what drawing frames state is taken apart: a cell in a row of few cells that names, between signs that set things
apart, a machine, a drawing or its revision and one more label. The new rows keep the number of the line they stood in.
"""

import re
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

import numpy as np
from attrs import evolve, frozen

from linter.reading.cells.signs import LONGEST_TEXT
from linter.reading.files.grids import LONGEST_MIXED, Column, Grid, is_blank, object_column
from linter.reading.layouts.title import MOST_IN_TITLE, is_label
from linter.reading.words.headings import Words
from linter.reading.words.titled_machines import machine_in_title

_DRAWING, _REVISION = "drawing_number", "drawing_revision"
_OF_FRAMES = frozenset(("machine", _DRAWING, _REVISION))
#: What sets a labelled thing apart from that before it; a lone blank does only behind another one.
_SIGN = re.compile(r"\s*[,;|/、，；・•·(（]\s*|\s+[–—-]+\s+|\s{2,}|\t")
#: A lone blank, and nothing behind the dot of a short word before a code (``Rev.B``).
_BLANK = re.compile(r"\s+|(?<=[^\W\d_]\.)(?=[A-Z0-9]{1,2}(?!\w))")
_COLON = re.compile(r"\s*[:：=]\s*")
#: A revision behind its word without a colon, and a drawing's number: both hold a figure or are short.
_CODE = re.compile(r"[A-Z]{1,2}|[A-Z]?\d{1,3}[a-zA-Z]?|[a-z]")
_NUMBER = re.compile(
    r"(?:\d{1,3}(?: \d{3})+(?!\d)|[A-ZА-Я]{1,3} \d[^\s,;|/、，；()（）:：]*"
    r"|(?=[^\s]*\d)[^\s,;|/、，；()（）:：]{3,})(?: [\d][\d.]*)*"
)
_MOST_LABELS, _MOST_WORDS, _LONGEST_REVISION = 6, 4, 12
_OR = re.compile(r"\s*[/+&,、|／]\s*")
_BOTH = (re.compile(r"[/|／]"), re.compile(r"[,;、，；]"), re.compile(r"\s+[–—-]\s+"), re.compile(r"\s+"))
_EDGES = " \t,;|/、，；・•·(（–—-"


@frozen
class _Label:
    """A label in a text: what it names, where it begins, where its value begins, and where that must end."""

    name: str
    start: int
    value: int
    end: int | None = None


@frozen
class Labelled:
    """A labelled thing of a cell; without a label what stands before the first one."""

    label: str
    value: str


def with_labels_apart(grid: Grid, words: Words) -> Grid:
    """The grid with one row for each labelled thing of its title cells, each with its true place."""
    if grid.height > LONGEST_MIXED or grid.whole_lines:
        return grid
    spanned = {row for top, _, bottom, _ in grid.merged if bottom > top for row in range(top, bottom + 1)}
    rows: list[tuple[int, dict[int, str] | None]] = []
    broad = (r for r in range(grid.height) if sum(not is_blank(c[r]) for c in grid.columns) > MOST_IN_TITLE)
    table = next(broad, grid.height)
    for row in range(grid.height):
        more = [] if row in spanned else list(_rows_of(grid, row, words, above=row < table))
        rows += [(row, cells) for cells in more] or [(row, None)]
    return grid if len(rows) == grid.height else of_rows(grid, rows)


def _rows_of(grid: Grid, row: int, words: Words, *, above: bool) -> Iterator[dict[int, str]]:
    """Column and text of the cells of each row that a row of few cells becomes; nothing where it stays one.

    What stands before the first label, a machine, is a title ``above`` the first broad row only.
    """
    filled = [*grid.texts(row)]
    if apart := _values_of_both(grid, row, filled, words):
        yield from apart
        return
    if not filled or len(filled) > MOST_IN_TITLE or any(type(grid.columns[c][row]) is not str for c in filled):
        return
    for at, column in enumerate(filled):
        before = grid.text(row, filled[at - 1]) if at else ""
        label = before.rstrip(" :：") if at == 1 and _parameter(before.rstrip(" :："), words) else ""
        things = labelled_things(grid.text(row, column), words, label)
        if len(things) < 2 or not (above or label or things[0].label):
            continue
        first, *others = things
        own = first.value if label or not first.label else f"{first.label}: {first.value}"
        yield {
            c: own
            if c == column
            else first.label
            if label and first.label and c == filled[at - 1]
            else grid.text(row, c)
            for c in filled
        }
        for thing in others:
            if label:
                yield {filled[at - 1]: thing.label, column: thing.value}
            else:
                yield {column: f"{thing.label}: {thing.value}"}
        return


def _values_of_both(grid: Grid, row: int, filled: Sequence[int], words: Words) -> list[dict[int, Any]]:
    """A row each for drawing and revision, where one label names both before a cell of each (``Drawing / Rev.``)."""
    if len(filled) != MOST_IN_TITLE:
        return []
    labels = [piece.strip(" :：") for piece in _OR.split(grid.text(row, filled[0]))]
    named = [_parameter(piece, words) for piece in labels]
    values = [grid.text(row, c) for c in filled[1:]]
    if sorted(named) != [_DRAWING, _REVISION] or not all(map(_can_stand, values, named)):
        return []
    if not _CODE.fullmatch(values[named.index(_REVISION)]):
        return []
    return [{filled[0]: label, c: grid.columns[c][row]} for label, c in zip(labels, filled[1:], strict=True)]


def labelled_things(text: str, words: Words, label: str = "") -> Sequence[Labelled]:
    """The labelled things that a text holds, the first maybe without its label; one or none where it is not several.

    Parameters
    ----------
    text : str
        Text of a cell.
    words : Words
        The names that are understood.
    label : str
        Label of a frame that stands before the text, if any.

    Returns
    -------
    sequence of Labelled
        In the order of the text.
    """
    if not 4 < len(text) <= LONGEST_TEXT:
        return ()
    if several := _one_sign_for_both(text, label, words):
        return several
    labels = list(_labels(text, words, bool(label)))
    names = [found.name for found in labels] + ([_parameter(label, words)] if label else [])
    if not labels or len(labels) > _MOST_LABELS or len(set(names)) < len(names) or not _OF_FRAMES.intersection(names):
        return ()
    head = text[: labels[0].start].strip(_EDGES)
    told = _DRAWING in names and machine_in_title(head)
    if head and not label and not told and all(found.end is not None for found in labels):
        return ()  # ``See report 5, Rev. B``: nothing says what has the revision
    if label and not _can_stand(head, _parameter(label, words)):
        return ()
    ends = [
        found.end or behind for found, behind in zip(labels, [*(b.start for b in labels[1:]), len(text)], strict=True)
    ]
    values = [_closed(text[found.value : end].strip(_EDGES)) for found, end in zip(labels, ends, strict=True)]
    if not all(_can_stand(value, found.name) for value, found in zip(values, labels, strict=True)):
        return ()
    said = [_COLON.sub("", text[found.start : found.value]).strip() for found in labels]
    return [*([Labelled("", head)] if head else []), *map(Labelled, said, values)]


def _can_stand(value: str, name: str) -> bool:
    """Whether a value can be of a label: the number of a drawing holds a figure, and a revision is short."""
    if name == _DRAWING:
        return any(map(str.isdigit, value))
    return 0 < len(value) <= (_LONGEST_REVISION if name == _REVISION else LONGEST_TEXT)


def _one_sign_for_both(text: str, label: str, words: Words) -> Sequence[Labelled]:
    """Labels and values that the same sign parts: ``Drawing / Rev.: MX-4371 / B``."""
    colon = None if label else _COLON.search(text)
    names, values = (label, text) if label else (text[: colon.start()], text[colon.end() :]) if colon else ("", "")
    labels = [piece.strip() for piece in _OR.split(names)]
    if len(labels) != 2 or {_parameter(piece, words) for piece in labels} != {_DRAWING, _REVISION}:
        return ()
    pieces = next((p for sign in _BOTH if len(p := [v.strip() for v in sign.split(values)]) == 2 and all(p)), [])
    if not pieces or not _CODE.fullmatch(pieces[_parameter(labels[0], words) == _DRAWING]):
        return ()
    return [Labelled(name, value) for name, value in zip(labels, pieces, strict=True)]


def _closed(text: str) -> str:
    """A value without the bracket that closes behind it alone."""
    for opening, closing in ("()", "（）"):
        if text.endswith(closing) and opening not in text:
            text = text.removesuffix(closing).rstrip()
    return text


def _labels(text: str, words: Words, behind_label: bool) -> Iterator[_Label]:
    """The labels of a text, from left to right."""
    at, known = 0, behind_label
    starts = [0, *(match.end() for match in _SIGN.finditer(text))]
    blanks = [match.end() for match in _BLANK.finditer(text)]
    for colon in _COLON.finditer(text):
        able = [start for start in reversed(starts) if at <= start < colon.start() and (start or not behind_label)]
        able += [start for start in blanks if at <= start < colon.start()] if known else []
        for start in able:
            name = _label(text[start : colon.start()].strip(), words)
            if name:
                yield from _bare_labels(text, at, start, starts, blanks, words, known)
                yield _Label(name, start, colon.end())
                at, known = colon.end(), True
                break
    yield from _bare_labels(text, at, len(text), starts, blanks, words, known)


def _bare_labels(
    text: str, begin: int, end: int, starts: Sequence[int], blanks: Sequence[int], words: Words, known: bool
) -> Iterator[_Label]:
    """Labels without a colon between two places: ``Drawing no. MX-4371``, ``Rev. B``."""
    at = begin
    for start in sorted({*starts, *blanks}):
        if not at <= start < end:
            continue
        pieces = [match.end() for match in _BLANK.finditer(text, start, end)] or [end]
        for value in sorted(pieces, reverse=True)[-_MOST_WORDS:]:
            name = _parameter(text[start:value].strip(), words)
            rest = text[value:end]
            if name == _REVISION and (code := _CODE.match(rest)) and not rest[code.end() : code.end() + 1].isalnum():
                yield _Label(name, start, value, value + code.end())
                at = value + code.end()
                break
            if name == _DRAWING and start in starts and not known and (number := _NUMBER.match(rest)):
                yield _Label(name, start, value, value + number.end())
                at = value + number.end()
                break


def _parameter(label: str, words: Words) -> str:
    """What a label of a frame names; empty for another one."""
    heading = words.heading(label) if 0 < len(label) <= LONGEST_TEXT else None
    return heading.parameter if heading is not None and heading.parameter in _OF_FRAMES and not heading.station else ""


def _label(label: str, words: Words) -> str:
    """What a label before a colon names: a parameter of the machine, the unit, or a word of drawing frames."""
    if not label or len(label) > LONGEST_TEXT:
        return ""
    if is_label(label):
        return f"frame {label}"
    if words.group(label) == "UNIT":
        return "unit"
    heading = words.heading(label)
    of_machine = heading is not None and heading.entry.level == "machine" and not heading.station
    return heading.parameter if of_machine and heading is not None and heading.parameter != "station" else ""


def of_rows(grid: Grid, rows: Sequence[tuple[int, Mapping[int, Any] | None]]) -> Grid:
    """The grid that rows of another make, some of them with other cells."""
    origin = np.array([row for row, _ in rows], dtype=np.intp)
    columns: list[Column] = []
    for c, column in enumerate(grid.columns):
        cells = column.tolist()
        columns.append(object_column([cells[r] if new is None else new.get(c) for r, new in rows]))
    first = {int(row): k for k, row in reversed([*enumerate(origin.tolist())])}
    return evolve(
        grid,
        columns=columns,
        lines=grid.lines[origin],
        formats={(first[r], c): form for (r, c), form in grid.formats.items()},
        hidden_rows=frozenset(k for k, row in enumerate(origin.tolist()) if row in grid.hidden_rows),
        merged=tuple((first[t], left, first[b], right) for t, left, b, right in grid.merged),
        shifts=None if grid.shifts is None else grid.shifts[origin],
    )
