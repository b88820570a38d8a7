"""Layouts with a heading row or a heading column: wide, transposed, long, family, two tables, inspection list."""

from dataclasses import dataclass, field

from practice.grammar import Value

from .pen import SIZES, Book, Cell, Piece, Place, Sheet, Style
from .trade import Machine, Position


@dataclass
class Job:
    """What a table is to say and in which manner."""

    style: Style
    machines: list[Machine]
    common: list[str]
    own: list[str]
    title: str
    book: Book = field(init=False)
    titled: bool = field(init=False)

    def __post_init__(self) -> None:
        self.book = Book(self.style)
        self.titled = self.style.rng.random() < 0.5

    def positions(self) -> list[tuple[int, int, Position]]:
        return [(m, s, p) for m, machine in enumerate(self.machines) for s, p in enumerate(machine.positions)]

    def pieces(self, parameters: list[str], feature: bool = False) -> list[Piece]:
        """The columns of several parameters, with the one of both fits where the form has it."""
        found = [piece for name in parameters for piece in self.style.pieces(name, feature)]
        if self.style.tolerance == "fit pair column" and set(SIZES) <= set(parameters):
            found.append(self.style.fit_piece())
        return found


@dataclass
class Marks:
    """Which cells of a sheet carry which value."""

    job: Job
    sheet: Sheet
    found: dict[tuple[int, int, str], tuple[list[Place], list[Place]]] = field(default_factory=dict)

    def add(self, where: tuple[int, int], parameters: tuple[str, ...], own: Place, heads: list[Place]) -> None:
        for name in parameters:
            cells, words = self.found.setdefault((*where, name), ([], []))
            cells.append(own)
            words += heads

    def flush(self) -> None:
        for (m, s, name), (own, heads) in self.found.items():
            self.job.book.state(self.sheet, (m, s), name, value_of(self.job.machines[m], s, name), own, heads)
        self.found = {}


def value_of(machine: Machine, station: int, parameter: str) -> Value:
    if parameter == "station":
        return machine.positions[station].name
    return machine.values[parameter] if station < 0 else machine.positions[station].values[parameter]


def with_unit(style: Style, parameter: str, value: Value) -> str:
    """A value and its unit in one text."""
    text = style.cell(parameter, value)
    if isinstance(text, str):
        return text
    return f"{style.number(text)} {style.unit(parameter)}".strip()


def title_block(marks: Marks, row: int, m: int, note: bool = True) -> int:
    """Machine, drawing and values of the whole machine above a table; the next free row."""
    job, sheet, style = marks.job, marks.sheet, marks.job.style
    if job.titled:
        sheet.put(row, 0, style.frame("title"))
        row += 1
    for name in ("machine", *job.common):
        if name not in job.machines[m].values:
            continue
        label, value = style.word(name), job.machines[m].values[name]
        unit = style.unit(name)
        if job.title == "colon":
            own = sheet.put(row, 0, f"{label}: {with_unit(style, name, value)}")
            marks.add((m, -1), (name,), own, [])
        elif job.title == "value with unit":
            head = sheet.put(row, 0, label)
            marks.add((m, -1), (name,), sheet.put(row, 1, with_unit(style, name, value)), [head])
        else:
            text: Cell = style.cell(name, value)
            beside = job.title == "unit beside" and unit and not isinstance(text, str)
            label = label if beside or isinstance(text, str) or not unit else style.bracket.format(label, unit)
            head = sheet.put(row, 0, label)
            marks.add((m, -1), (name,), sheet.put(row, 1, text), [head])
            if beside:
                sheet.put(row, 2, unit)
        row += 1
    if style.unit_place == "title" and note:
        sheet.put(row, 0, style.note())
        row += 1
    return row + 1


def foot(marks: Marks) -> None:
    if marks.job.style.unit_place == "foot":
        marks.sheet.put(marks.sheet.height + 1, 0, marks.job.style.note())


def heading(style: Style, piece: Piece) -> str:
    return style.headed(piece.heading, piece.unit, piece.parameters[0])


def table(marks: Marks, row: int, machines: list[int], column: int = 0, common: bool = False) -> int:
    """A wide table, one row a position; the next free row."""
    job, sheet, style = marks.job, marks.sheet, marks.job.style
    pieces = job.pieces(job.own)
    leading = (["machine", *job.common] if common else []) + ["station"]
    heads = {}
    at = column
    for name in leading:
        heads[name] = sheet.put(row, at, style.headed(style.word(name), style.unit(name), name))
        if style.unit_place == "row" and style.unit(name):
            sheet.put(row + 1, at, style.unit(name))
        at += 1
    first = at
    tops = []
    for piece in pieces:
        tops.append(sheet.put(row, at, heading(style, piece)))
        if style.unit_place == "row" and piece.unit:
            sheet.put(row + 1, at, piece.unit)
        at += 1
    row += 2 if style.unit_place == "row" else 1
    for m, s, position in job.positions():
        if m not in machines:
            continue
        for name, head in heads.items():
            if name not in job.machines[m].values and name != "station":
                continue
            value = value_of(job.machines[m], -1 if name != "station" else s, name)
            where = (m, s if name == "station" else -1)
            marks.add(where, (name,), sheet.put(row, head[1], style.cell(name, value)), [head])
        for offset, (piece, top) in enumerate(zip(pieces, tops, strict=True)):
            marks.add((m, s), piece.parameters, sheet.put(row, first + offset, piece.text(position.values)), [top])
        row += 1
    return row


def wide(job: Job) -> None:
    """One row a position."""
    marks = Marks(job, job.book.sheet())
    single = len(job.machines) == 1
    row = title_block(marks, 0, 0) if single else 0
    if not single and job.style.unit_place == "title":
        marks.sheet.put(0, 0, f"{job.style.frame('title')} ({job.style.note()})")
        row = 2
    table(marks, row, list(range(len(job.machines))), common=not single)
    foot(marks)
    marks.flush()


def stacked_machines(job: Job) -> None:
    """A title block and a wide table for each machine, one under the other."""
    marks = Marks(job, job.book.sheet())
    row = 0
    for m in range(len(job.machines)):
        row = table(marks, title_block(marks, row, m), [m]) + 1
    foot(marks)
    marks.flush()


GROUPS = ("bearing", "shaft", "housing", "operation")


def group_of(parameter: str) -> str:
    """The part under which a value of a position stands."""
    for part in ("shaft", "housing"):
        if parameter.startswith(part):
            return part
    if parameter in ("lubrication", "base_oil_viscosity_40", "radial_load", "axial_load", "axial_role"):
        return "operation"
    return "bearing"


def two_heading_rows(job: Job) -> None:
    """The part over the feature; the part's cell is merged in a workbook."""
    marks, style = Marks(job, job.book.sheet()), job.style
    row = title_block(marks, 0, 0)
    sheet = marks.sheet
    station = sheet.put(row, 0, style.word("station"))
    at, tops = 1, []
    for group in GROUPS:
        pieces = job.pieces([name for name in job.own if group_of(name) == group], True)
        if not pieces:
            continue
        over = sheet.put(row, at, style.frame(group))
        if len(pieces) > 1:
            sheet.merges.append((row, at, row, at + len(pieces) - 1))
        for piece in pieces:
            tops.append((piece, [over, sheet.put(row + 1, at, heading(style, piece))]))
            if style.unit_place == "row" and piece.unit:
                sheet.put(row + 2, at, piece.unit)
            at += 1
    row += 3 if style.unit_place == "row" else 2
    for m, s, position in job.positions():
        marks.add((m, s), ("station",), sheet.put(row, 0, position.name), [station])
        for column, (piece, heads) in enumerate(tops, 1):
            marks.add((m, s), piece.parameters, sheet.put(row, column, piece.text(position.values)), heads)
        row += 1
    foot(marks)
    marks.flush()


def transposed(job: Job) -> None:
    """One column a position, with or without a column of units."""
    marks, style = Marks(job, job.book.sheet()), job.style
    sheet = marks.sheet
    single = len(job.machines) == 1
    row = title_block(marks, 0, 0) if single else 0
    if not single and style.unit_place == "title":
        sheet.put(0, 0, f"{style.frame('title')} ({style.note()})")
        row = 2
    first = 2 if style.unit_place in ("row", "column") else 1
    places = list(enumerate(job.positions(), first))
    if not single:
        for name in ("machine", *job.common):
            head = sheet.put(row, 0, style.headed(style.word(name), style.unit(name), name))
            if first == 2 and style.unit(name):
                sheet.put(row, 1, style.unit(name))
            for column, (m, _, _) in places:
                if name in job.machines[m].values:
                    text = style.cell(name, job.machines[m].values[name])
                    marks.add((m, -1), (name,), sheet.put(row, column, text), [head])
            row += 1
    head = sheet.put(row, 0, style.word("station") if not single else style.frame("parameter"))
    if first == 2:
        sheet.put(row, 1, style.frame("unit"))
    for column, (m, s, position) in places:
        marks.add((m, s), ("station",), sheet.put(row, column, position.name), [head])
    for piece in job.pieces(job.own):
        row += 1
        head = sheet.put(row, 0, heading(style, piece))
        if first == 2 and piece.unit:
            sheet.put(row, 1, piece.unit)
        for column, (m, s, position) in places:
            marks.add((m, s), piece.parameters, sheet.put(row, column, piece.text(position.values)), [head])
    foot(marks)
    marks.flush()


def long(job: Job) -> None:
    """Position, parameter, value, unit in each row."""
    marks, style = Marks(job, job.book.sheet()), job.style
    sheet = marks.sheet
    single = len(job.machines) == 1
    row = title_block(marks, 0, 0, False) if single else 0
    names = ([] if single else [style.word("machine")]) + [style.word("station")]
    names += [style.frame(n) for n in ("parameter", "value", "unit")]
    heads = [sheet.put(row, column, text) for column, text in enumerate(names)]
    first = len(names) - 3
    for m, machine in enumerate(job.machines):
        for name in () if single else job.common:
            if name not in machine.values:
                continue
            row += 1
            marks.add((m, -1), ("machine",), sheet.put(row, 0, machine.name), [heads[0]])
            label = sheet.put(row, first, style.word(name))
            marks.add((m, -1), (name,), sheet.put(row, first + 1, style.cell(name, machine.values[name])), [label])
            sheet.put(row, first + 2, style.unit(name))
        for s, position in enumerate(machine.positions):
            for piece in job.pieces(job.own):
                row += 1
                if not single:
                    marks.add((m, -1), ("machine",), sheet.put(row, 0, machine.name), [heads[0]])
                marks.add((m, s), ("station",), sheet.put(row, first - 1, position.name), [heads[first - 1]])
                label = sheet.put(row, first, piece.heading)
                marks.add((m, s), piece.parameters, sheet.put(row, first + 1, piece.text(position.values)), [label])
                sheet.put(row, first + 2, piece.unit)
    marks.flush()


def attributes(job: Job) -> None:
    """An export of attributes: object, attribute, value, unit; the object names position and part."""
    marks, style = Marks(job, job.book.sheet()), job.style
    sheet = marks.sheet
    row = title_block(marks, 0, 0, False)
    names = (style.word("station"), style.frame("part"), style.frame("characteristic"), style.frame("value"))
    heads = [sheet.put(row, column, text) for column, text in enumerate((*names, style.frame("unit")))]
    for m, s, position in job.positions():
        for group in GROUPS:
            for piece in job.pieces([name for name in job.own if group_of(name) == group], True):
                row += 1
                marks.add((m, s), ("station",), sheet.put(row, 0, position.name), [heads[0]])
                part = sheet.put(row, 1, style.frame(group))
                label = sheet.put(row, 2, piece.heading)
                own = sheet.put(row, 3, piece.text(position.values))
                marks.add((m, s), piece.parameters, own, [part, label])
                sheet.put(row, 4, piece.unit)
    marks.flush()


def inspection(job: Job) -> None:
    """Characteristics with balloon numbers, requirement and an empty column for the result."""
    marks, style = Marks(job, job.book.sheet()), job.style
    sheet = marks.sheet
    row = title_block(marks, 0, 0, False)
    names = ("item", "part", "characteristic", "requirement", "unit", "remark")
    titles = [style.frame(n) for n in names]
    titles.insert(2, style.word("station"))
    heads = [sheet.put(row, column, text) for column, text in enumerate(titles)]
    number = 0
    for group in GROUPS:
        for m, s, position in job.positions():
            for piece in job.pieces([name for name in job.own if group_of(name) == group], True):
                row += 1
                number += 1
                sheet.put(row, 0, float(number))
                part = sheet.put(row, 1, style.frame(group))
                marks.add((m, s), ("station",), sheet.put(row, 2, position.name), [heads[2]])
                label = sheet.put(row, 3, piece.heading)
                own = sheet.put(row, 4, piece.text(position.values))
                marks.add((m, s), piece.parameters, own, [part, label])
                sheet.put(row, 5, piece.unit)
    marks.flush()


def family(job: Job) -> None:
    """One row a machine, the position before or after each name."""
    marks, style = Marks(job, job.book.sheet()), job.style
    sheet = marks.sheet
    if style.unit_place == "title":
        sheet.put(0, 0, f"{style.frame('title')} ({style.note()})")
    row = 2 if style.unit_place == "title" else 0
    form = style.rng.choice(("{p}_{w}", "{w}_{p}", "{p} {w}", "{w} {p}", "{w} ({p})"))
    heads: dict[str, Place] = {}
    for column, name in enumerate(("machine", *job.common)):
        heads[name] = sheet.put(row, column, style.headed(style.word(name), style.unit(name), name))
        if style.unit_place == "row" and style.unit(name):
            sheet.put(row + 1, column, style.unit(name))
    column = len(heads)
    tops: list[tuple[int, Piece, Place]] = []
    for s, position in enumerate(job.machines[0].positions):
        for piece in job.pieces(job.own):
            name = form.format(p=position.name, w=piece.heading)
            text = style.headed(name, piece.unit, piece.parameters[0])
            tops.append((s, piece, sheet.put(row, column, text)))
            if style.unit_place == "row" and piece.unit:
                sheet.put(row + 1, column, piece.unit)
            column += 1
    row += 2 if style.unit_place == "row" else 1
    for m, machine in enumerate(job.machines):
        for name, head in heads.items():
            if name in machine.values:
                marks.add((m, -1), (name,), sheet.put(row, head[1], style.cell(name, machine.values[name])), [head])
        for s, piece, top in tops:
            own = sheet.put(row, top[1], piece.text(machine.positions[s].values))
            marks.add((m, s), piece.parameters, own, [top])
        row += 1
    foot(marks)
    marks.flush()


def split(job: Job) -> tuple[list[str], list[str], list[str]]:
    """Parameters of the shaft, of the housing, and the others."""
    shaft, housing = ([n for n in job.own if group_of(n) == part] for part in ("shaft", "housing"))
    return shaft, housing, [n for n in job.own if n not in shaft and n not in housing]
