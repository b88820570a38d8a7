"""Layouts of blocks: sections by part, blocks by position, side by side, parts lists, sheets, equations."""

import re

from .pen import Piece, Sheet
from .rows import (
    GROUPS,
    Job,
    Marks,
    foot,
    group_of,
    heading,
    split,
    title_block,
    with_unit,
)
from .vocabulary import SEAT


def sections(job: Job) -> None:
    """A section for each part; a column for each position."""
    marks, style = Marks(job, job.book.sheet()), job.style
    sheet = marks.sheet
    row = title_block(marks, 0, 0)
    first = 2 if style.unit_place in ("row", "column") else 1
    head = sheet.put(row, 0, style.word("station"))
    if first == 2:
        sheet.put(row, 1, style.frame("unit"))
    places = list(enumerate(job.positions(), first))
    for column, (m, s, position) in places:
        marks.add((m, s), ("station",), sheet.put(row, column, position.name), [head])
    for group in GROUPS:
        pieces = job.pieces([name for name in job.own if group_of(name) == group], True)
        if not pieces:
            continue
        row += 1
        over = sheet.put(row, 0, style.frame(group))
        for piece in pieces:
            row += 1
            label = sheet.put(row, 0, heading(style, piece))
            if first == 2 and piece.unit:
                sheet.put(row, 1, piece.unit)
            for column, (m, s, position) in places:
                own = sheet.put(row, column, piece.text(position.values))
                marks.add((m, s), piece.parameters, own, [over, label])
    foot(marks)
    marks.flush()


def _pairs(marks: Marks, row: int, column: int, m: int, s: int, with_parts: bool) -> int:
    """Name and value (and unit) of one position, downwards; the next free row."""
    job, sheet, style = marks.job, marks.sheet, marks.job.style
    position = job.machines[m].positions[s]
    beside = style.unit_place in ("row", "column")
    groups = [[n for n in job.own if group_of(n) == g] for g in GROUPS] if with_parts else [job.own]
    for number, names in enumerate(groups):
        pieces = job.pieces(names, with_parts)
        if not pieces:
            continue
        above = []
        if with_parts:
            above = [sheet.put(row, column, style.frame(GROUPS[number]))]
            row += 1
        for piece in pieces:
            label = sheet.put(row, column, heading(style, piece))
            own = sheet.put(row, column + 1, piece.text(position.values))
            if beside and piece.unit:
                sheet.put(row, column + 2, piece.unit)
            marks.add((m, s), piece.parameters, own, [*above, label])
            row += 1
    return row


def stacked(job: Job) -> None:
    """A block for each position, one under the other."""
    marks, style = Marks(job, job.book.sheet()), job.style
    row = 0
    colon = style.rng.random() < 0.4
    for m, machine in enumerate(job.machines):
        row = title_block(marks, row, m)
        for s, position in enumerate(machine.positions):
            if colon:
                head = marks.sheet.put(row, 0, f"{style.word('station')}: {position.name}")
                marks.add((m, s), ("station",), head, [])
            else:
                head = marks.sheet.put(row, 0, style.word("station"))
                marks.add((m, s), ("station",), marks.sheet.put(row, 1, position.name), [head])
            row = _pairs(marks, row + 1, 0, m, s, False) + 1
    foot(marks)
    marks.flush()


def side_by_side(job: Job) -> None:
    """A block for each position, one beside the other."""
    marks, style = Marks(job, job.book.sheet()), job.style
    top = title_block(marks, 0, 0)
    step = 4 if style.unit_place in ("row", "column") else 3
    for m, s, position in job.positions():
        head = marks.sheet.put(top, s * step, style.word("station"))
        marks.add((m, s), ("station",), marks.sheet.put(top, s * step + 1, position.name), [head])
        _pairs(marks, top + 1, s * step, m, s, False)
    foot(marks)
    marks.flush()


def _features(job: Job) -> list[str]:
    """The features that a table of seats has a column for."""
    return [f for f in SEAT if f"shaft_{f}" in job.own or f"housing_{f}" in job.own]


def parts_list(job: Job) -> None:
    """One row a seat: the part and the position are named in the first cells, features have a column each."""
    marks, style = Marks(job, job.book.sheet()), job.style
    sheet = marks.sheet
    row = title_block(marks, 0, 0)
    titles = [style.frame("item"), style.frame("part"), style.word("station"), style.word("bearing_designation")]
    heads = [sheet.put(row, column, text) for column, text in enumerate(titles)]
    tops: dict[str, list[tuple[Piece, Piece]]] = {}
    column = len(titles)
    places: dict[str, list[tuple[int, int]]] = {}
    for feature in _features(job):
        both = [style.pieces(f"{part}_{feature}", True) for part in ("shaft", "housing")]
        tops[feature] = list(zip(*both, strict=True))
        for shaft, hole in tops[feature]:
            name = shaft.heading
            if feature == "seat_diameter":
                name = name.replace(style.word("shaft_seat_diameter", True), style.frame("seat"))
            text = style.headed(name, shaft.unit, hole.parameters[0])
            places.setdefault(feature, []).append(sheet.put(row, column, text))
            if style.unit_place == "row" and shaft.unit:
                sheet.put(row + 1, column, shaft.unit)
            column += 1
    row += 2 if style.unit_place == "row" else 1
    number = 0
    for part_number, part in enumerate(("shaft", "housing")):
        for m, s, position in job.positions():
            number += 1
            sheet.put(row, 0, float(number))
            label = sheet.put(row, 1, style.frame(part))
            marks.add((m, s), ("station",), sheet.put(row, 2, position.name), [heads[2]])
            designation = sheet.put(row, 3, str(position.values["bearing_designation"]))
            marks.add((m, s), ("bearing_designation",), designation, [heads[3]])
            for feature, pairs in tops.items():
                for pair, top in zip(pairs, places[feature], strict=True):
                    piece = pair[part_number]
                    own = sheet.put(row, top[1], piece.text(position.values))
                    marks.add((m, s), piece.parameters, own, [label, top])
            row += 1
    foot(marks)
    marks.flush()


def _part_table(marks: Marks, row: int, names: list[str], over: list[tuple[int, int]]) -> int:
    """A wide table of one part; the next free row."""
    job, sheet, style = marks.job, marks.sheet, marks.job.style
    station = sheet.put(row, 0, style.word("station"))
    tops = []
    for column, piece in enumerate(job.pieces(names, True), 1):
        tops.append((piece, sheet.put(row, column, heading(style, piece))))
        if style.unit_place == "row" and piece.unit:
            sheet.put(row + 1, column, piece.unit)
    row += 2 if style.unit_place == "row" else 1
    for m, s, position in job.positions():
        marks.add((m, s), ("station",), sheet.put(row, 0, position.name), [station])
        for column, (piece, top) in enumerate(tops, 1):
            own = sheet.put(row, column, piece.text(position.values))
            marks.add((m, s), piece.parameters, own, [*over, top])
        row += 1
    return row


def part_tables(job: Job) -> None:
    """A table of the bearings, one of the shaft and one of the holes, one under the other on one sheet."""
    marks = Marks(job, job.book.sheet())
    row = title_block(marks, 0, 0)
    shaft, housing, other = split(job)
    for name, names in (("bearing", other), ("shaft", shaft), ("housing", housing)):
        if names:
            over = marks.sheet.put(row, 0, job.style.frame(name))
            row = _part_table(marks, row + 1, names, [over]) + 1
    foot(marks)
    marks.flush()


def sheet_of_part(job: Job) -> None:
    """A sheet for the bearings, one for the shaft, one for the housing."""
    shaft, housing, other = split(job)
    row = 0
    for name, names in (("bearing", other), ("shaft", shaft), ("housing", housing)):
        marks = Marks(job, job.book.sheet(job.style.frame(name)))
        if not row:
            row = title_block(marks, 0, 0)
        else:
            marks.sheet.put(0, 0, f"{job.style.frame('title')}: {job.style.frame(name)}")
            if job.style.unit_place == "title":
                marks.sheet.put(1, 0, job.style.note())
        row = _part_table(marks, row, names, []) + 1
        foot(marks)
        if len(job.book.sheets) > 1:  # positions are stated once, on the first sheet
            marks.found = {key: told for key, told in marks.found.items() if key[2] != "station"}
        marks.flush()


def sheet_of_position(job: Job) -> None:
    """A sheet for each position, named by it, parts as sections."""
    for m, s, position in job.positions():
        marks = Marks(job, Sheet(position.name, job.style))
        job.book.sheets.append(marks.sheet)
        row = title_block(marks, 0, m)
        head = marks.sheet.put(row, 0, job.style.word("station"))
        marks.add((m, s), ("station",), marks.sheet.put(row, 1, position.name), [head])
        _pairs(marks, row + 1, 0, m, s, True)
        foot(marks)
        if s:
            marks.found = {key: told for key, told in marks.found.items() if key[1] >= 0}
        marks.flush()


def code(text: str) -> str:
    """A heading as a name of a CAD parameter."""
    plain = text.replace("Ø", "d").replace("'", " ")
    return re.sub(r"[^\w]+", "_", plain).strip("_")


def equations(job: Job) -> None:
    """Lines of ``name = value unit``, the position at the end of the name."""
    marks, style = Marks(job, job.book.sheet()), job.style
    sheet = marks.sheet
    equals = style.rng.choice((" = ", "=", " := "))
    row = 0
    machine = job.machines[0]
    for name in ("machine", *job.common):
        if name in machine.values:
            line = f"{code(style.word(name))}{equals}{with_unit(style, name, machine.values[name])}"
            marks.add((0, -1), (name,), sheet.put(row, 0, line), [])
            row += 1
    for m, s, position in job.positions():
        for name in job.own:
            for piece in style.pieces(name, single=True):
                text = piece.text(position.values)
                value = text if isinstance(text, str) else style.number(text)
                line = f"{code(piece.heading)}_{code(position.name)}{equals}{value}"
                marks.add((m, s), piece.parameters, sheet.put(row, 0, line), [])
                row += 1
    marks.flush()


def form_sheet(job: Job) -> None:
    """A data sheet of four columns, name and value twice in a row, a block for each position."""
    marks, style = Marks(job, job.book.sheet()), job.style
    sheet = marks.sheet
    row = title_block(marks, 0, 0)
    for m, s, position in job.positions():
        head = sheet.put(row, 0, style.word("station"))
        marks.add((m, s), ("station",), sheet.put(row, 1, position.name), [head])
        row += 1
        for number, piece in enumerate(job.pieces(job.own)):
            at = row + number // 2
            column = 0 if number % 2 == 0 else 2
            label = sheet.put(at, column, heading(style, piece))
            marks.add((m, s), piece.parameters, sheet.put(at, column + 1, piece.text(position.values)), [label])
        row = sheet.height + 1
    foot(marks)
    marks.flush()
