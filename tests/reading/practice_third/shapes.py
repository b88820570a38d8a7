"""The third set: layouts that offices export, each table drawn from a fixed seed with every value noted in its cell."""

import dataclasses
import random
import re
from collections.abc import Callable
from typing import Any

from practice.grammar import Key, Table, Value
from practice_second.pages import Merges, book, column_letters, document, page

from . import words
from .machines import SEATS_OF, draw
from .pen import IN_CELL, IN_COLUMNS, SEATS, Cell, Column, Pen, part_of

Rows = list[list[str]]
BEARING = (
    "bearing_designation", "bore_diameter", "outside_diameter", "ring_width", "ring_chamfer", "tolerance_class",
    "clearance_class", "dynamic_rating", "static_rating", "ball_count", "ball_diameter", "axial_role", "cage",
    "closure", "lubrication", "base_oil_viscosity_40", "radial_load", "axial_load", "operating_temperature",
)  # fmt: skip
SHAFT, HOUSING = SEATS_OF["shaft"], SEATS_OF["housing"]
GENERAL = (
    "required_life", "rotor_mass", "bearing_span", "balance_grade", "shaft_material", "housing_material",
    "preload_force", "shaft_temperature", "housing_temperature", "temperature_min", "temperature_max",
)  # fmt: skip
#: Windows code pages and others by language; what an office of that country writes beside UTF.
ENCODINGS = {
    "en": ("utf-8", "utf-8-sig", "cp1252"), "de": ("cp1252", "utf-8-sig", "cp1252"),
    "fr": ("cp1252", "utf-8", "utf-16"),
    "it": ("cp1252", "cp1252", "utf-8-sig"), "es": ("utf-8-sig", "cp1252"),
    "ja": ("shift_jis", "shift_jis", "utf-8-sig", "utf-16"),
    "zh": ("gb18030", "gb18030", "utf-8", "utf-8-sig"), "ru": ("cp1251", "cp1251", "utf-8-sig", "utf-16"),
}  # fmt: skip
#: Letters that an old code page has not, and what offices write instead.
REPLACED = {
    "shift_jis": {"Ø": "φ", "µ": "μ", "−": "-"}, "cp1251": {"Ø": "Ф", "−": "-"}, "cp1252": {"−": "-"},
    "gb18030": {"Ø": "φ"},
}  # fmt: skip


class Sheet:
    """One table in the making: a machine, the office that writes it, and what was chosen for it."""

    def __init__(self, seed: int, shape: str, language: str, write: str) -> None:
        self.seed, self.shape, self.language, self.write = seed, shape, language, write
        self.rng = rng = random.Random(f"third {seed}")
        office = write in ("xlsx", "json") and rng.random() < 0.75
        inch = rng.random() < {"en": 0.85, "de": 0.2, "es": 0.15}.get(language, 0.0)
        forms = IN_CELL + IN_COLUMNS
        if shape in FORMS_OF:
            forms = FORMS_OF[shape]
        if inch:
            forms = tuple(f for f in forms if "class" not in f)
        if ASKS.get(seed % 100) == "two classes":
            forms = ("class in cell", "class column")
        form = rng.choice(forms)
        units = rng.choice(UNITS_OF.get(shape, ("heading", "heading", "row", "title", "cell")))
        if units == "cell" and form in ("class column", "class in cell", "class and deviations"):
            units = "heading"
        mark = "." if language in ("en", "ja", "zh") or write in (",", "json") or rng.random() < 0.15 else ","
        if office and units == "cell":
            office = False
        self.pen = Pen(rng, language, system="in" if inch else "mm", units=units, form=form, mark=mark, office=office)
        if office:
            self.pen.leading = True
        if write == "json":
            self.pen.symbols = self.pen.bilingual = False
        self.pen.frames = write == "xlsx" and not self.pen.micro and not inch and rng.random() < 0.3
        self.pen.frames = self.pen.frames and ASKS.get(seed % 100) != "no unit"
        self.pen.capitals = language in ("en", "de", "fr", "it", "es") and write != "json" and rng.random() < 0.2
        self.pen.minus = "−" if not office and rng.random() < 0.4 else "-"
        if write == "xlsx" and rng.random() < 0.25:
            self.pen.bracket = "{h}\n[{u}]"
        count = {7: 1, 23: 4, 41: 4, 52: 1}.get(seed % 100, 2)
        if shape == "family rows":
            count = 2
        self.machine = draw(rng, language, count, inch=inch, symmetric="plus-minus" in form)
        self.parameters = self._choose()
        self.ask = ASKS.get(seed % 100, "")
        self.others = rng.sample(list(words.OTHER), rng.choice([1, 2, 2, 3]))
        self.dashes = rng.random() < 0.4
        self.key_style = rng.choice(["camel", "snake", "words"])

    def _choose(self) -> list[str]:
        rng = self.rng
        few = len(self.machine.stations) > 2
        bearing = [p for p in BEARING[1:] if p != "bearing_designation"]
        chosen = ["bearing_designation"] if rng.random() < 0.8 else []
        if rng.random() < 0.6 or not chosen:
            chosen += ["bore_diameter", "outside_diameter", "ring_width"]
        chosen += rng.sample(
            [p for p in bearing if p not in chosen and p != "bore_diameter"], 1 if few else rng.choice([1, 2, 3])
        )
        shaft = [*SHAFT[:1], *rng.sample(SHAFT[1:], 1 if few else rng.choice([2, 3, 4]))]
        housing = [*HOUSING[:1], *rng.sample(HOUSING[1:], 1 if few else rng.choice([1, 2, 3]))]
        order = [*BEARING, *SHAFT, *HOUSING]
        return sorted(dict.fromkeys([*chosen, *shaft, *housing]), key=order.index)

    @property
    def whose(self) -> tuple[tuple[tuple[str, ...], ...], tuple[str, ...]]:
        """The positions of the machine and its name, as a table holds them."""
        return (self.machine.stations,), (self.machine.name,)

    # ------------------------------------------------------------ what stands in cells

    def cell(self, cell: Cell, letter: str = "") -> str:
        """A cell with its meanings behind it, as a page wants it."""
        notes = ";".join(f"{letter}{s + 1 if s >= 0 else ''}.{name}={value}" for s, name, value in cell.meanings)
        text = f"#{cell.text}" if cell.number and self.pen.office else cell.text
        if text.startswith("#") and self.write == "json":
            text = "#" + text[1:].replace(self.pen.mark, ".").removeprefix("+")
        return f"{text} «{notes}»" if notes else text

    def station(self, s: int) -> str:
        """The name of a position in a cell of its own."""
        return f"{self.machine.stations[s]} «{s + 1}.st={self.machine.stations[s]}»"

    def columns(self) -> list[Column]:
        """The columns of all positions, with what is asked about and what is no seat's among them."""
        pen, columns = self.pen, []
        for name in self.parameters:
            columns += pen.column(name, self.machine)
        columns = self._asked(columns)
        for name in self.others:
            column = self.other(name)
            at = len(columns) if pen.short else self.rng.randrange(len(columns) + 1)
            while 0 < at < len(columns) and columns[at].piece:
                at += 1
            columns.insert(at, column)
        if self.rng.random() < 0.15 and self.write != "json" and self.shape != "named parameters":
            seat = next(c for c in columns if c.parameter == "shaft_seat_diameter")
            seat.head += " 1)"
        return columns

    def other(self, name: str) -> Column:
        """A column of something that is no seat: its cells mean nothing."""
        table, unit, value = words.OTHER[name]
        pen, texts, number = self.pen, {}, isinstance(value, float)
        for s in range(len(self.machine.stations)):
            if unit == "length" and isinstance(value, float):
                text, spelled, _ = pen.length(value)
            elif unit == "speed" and isinstance(value, float):
                text, spelled, _ = pen.quantity("balancing speed", value)
            elif isinstance(value, float):
                text, spelled = pen.number(value, 3)[0], pen.unit_word("um" if unit == "µm" else unit)
            else:
                text, spelled = str(value), ""
            if pen.units == "cell" and spelled:
                text, number = f"{text} {spelled}", False
            texts[s] = Cell(text, [], number)
        return Column(f"other {name}", pen.word(table), spelled, texts)

    def _asked(self, columns: list[Column]) -> list[Column]:
        """One doubt put into the columns, where this table has one."""
        pen, ask = self.pen, self.ask
        last = len(self.machine.stations) - 1
        if ask in words.BOTH_SEATS and not pen.short:
            pair = (f"shaft_{ask}", f"housing_{ask}")
            columns = [c for c in columns if c.parameter not in pair]
            made = pen.column(pair[0], self.machine)[0]
            cells = {s: Cell(c.text, [(s, "|".join(pair), "?")], c.number) for s, c in made.cells.items()}
            columns.append(
                dataclasses.replace(made, parameter="|".join(pair), head=pen.word(words.BOTH_SEATS[ask]), cells=cells)
            )
        elif ask == "two classes":
            for column in columns:
                if column.parameter == "housing_seat_diameter" and pen.form in ("class column", "class in cell"):
                    cell = column.cells[last]
                    nominal, stated = cell.meanings[0][2].split("///")
                    other = "J6" if "H" in stated else "H6"
                    if pen.form == "class in cell" or column.piece == "class":
                        cell.text += f" / {other}"
                    # the nominal may be used; which of the classes is meant has to be asked
                    cell.meanings = [(last, column.parameter, f"?{nominal}///{stated} or {other}")]
        elif ask == "fillet range":
            if not any(c.parameter == "shaft_fillet_radius" for c in columns):
                columns += pen.column("shaft_fillet_radius", self.machine)
            cell = next(c for c in columns if c.parameter == "shaft_fillet_radius").cells[last]
            low, high = pen.length(0.1)[0], pen.length(0.3)[0]
            tail = cell.text.split(" ", 1)[1] if " " in cell.text else ""
            cells = Cell(f"{low} … {high} {tail}".strip(), [(last, "shaft_fillet_radius", "?")])
            next(c for c in columns if c.parameter == "shaft_fillet_radius").cells[last] = cells
        elif ask == "not yet":
            seen = [c for c in columns if not c.piece and c.parameter not in (*SEATS, "bearing_designation")]
            word = self.rng.choice(["TBD", "?", "…", "n/a", "-"])
            self.rng.choice(seen).cells[last] = Cell(word)
        elif ask == "no unit":
            for column in columns:
                if column.parameter.endswith(("cylindricity", "runout")):
                    column.unit = ""
                    for s, cell in column.cells.items():
                        text = cell.text.split(" ")[0]
                        value = cell.meanings[0][2].removeprefix("?")
                        said = "?" if pen.micro else f"?{value}"
                        column.cells[s] = Cell(text, [(s, column.parameter, said)], cell.number)
        return columns

    def general(self, count: int) -> list[Column]:
        """Some values of the whole machine, the speed first."""
        chosen = ["speed_max", *self.rng.sample(GENERAL, count)]
        return [self.pen.column(name, self.machine)[0] for name in chosen]

    def whole(self, column: Column) -> str:
        """A value of the whole machine with its unit behind it, as titles have it."""
        cell = column.cells[-1]
        if column.unit and not cell.text.endswith(column.unit):
            cell = Cell(f"{cell.text} {column.unit}", cell.meanings)
        return self.cell(cell)

    def title(self, *, general: int = 1) -> Rows:
        """Rows above a table: title, drawing, what holds for the whole machine, the unit of lengths."""
        pen, rng, machine = self.pen, self.rng, self.machine
        if rng.random() < 0.12 and self.ask != "two speeds":
            return self._lengths()
        colon = rng.choice([":", "", ":"])
        number = [
            pen.term("drawing_number") + colon,
            f"{machine.values['drawing_number']} «.dn={machine.values['drawing_number']}»",
        ]
        revision = [
            pen.term("drawing_revision") + colon,
            f"{machine.values['drawing_revision']} «.dr={machine.values['drawing_revision']}»",
        ]
        name = [pen.term("machine") + colon, f"{machine.name} «.ma={machine.name}»"]
        values = [[c.head + colon, self.whole(c)] for c in self.general(general)]
        if self.ask == "two speeds":
            speed = next(row for row in values if ".speed_max" in row[1])
            speed[1] = re.sub(r"«.*»", "«.speed_max=?»", speed[1])
            text = pen.number(float(machine.values["speed_max"]) * 1.5, 0)[0]
            values.append([speed[0], f"{text} {pen.unit_word('speed')} «.speed_max=?»"])
        rows: Rows = [[rng.choice(words.TITLES[self.language])]]
        style = rng.randrange(4)
        if style == 0:
            rows += [name, number, revision, *values]
        elif style == 1:
            rows.append([*name, "", *number, "", *revision])
            flat = [cell for pair in values for cell in (*pair, "")]
            rows += [flat[:-1]] if flat else []
        elif style == 2:
            # label and value in one cell
            stop = "：" if self.language in ("ja", "zh") else ": "
            rows += [
                [f"{label.removesuffix(':')}{stop}{value.removeprefix('#')}"]
                for label, value in (name, number, revision, *values)
            ]
        else:
            rows += [number + revision, name, *values]
        return rows + self._lengths() + [[]]

    def _lengths(self) -> Rows:
        return [[self.pen.word(words.LENGTHS_IN[self.pen.system])]] if self.pen.units == "title" else []

    def foot(self) -> Rows:
        """Rows under a table."""
        if self.rng.random() < 0.4:
            return []
        return [[], *([line] for line in self.rng.sample(words.FOOTERS[self.language], self.rng.choice([1, 2])))]

    # ------------------------------------------------------------ as a file

    def file(self, rows: Rows, merges: Merges = ()) -> Table:
        """Rows as the file that this table is."""
        width = max(len(row) for row in rows)
        if self.rng.random() < 0.6:
            rows = [row + [""] * (width - len(row)) for row in rows]
        encoding = "utf-8"
        if self.write != "xlsx":
            encoding = self.rng.choice(ENCODINGS[self.language])
            for old, new in REPLACED.get(encoding, {}).items():
                rows = [[cell.replace(old, new) for cell in row] for row in rows]
        table = page(
            self.seed, rows, *self.whose, write=self.write, encoding=encoding,
            merges=merges, shape=self.shape, language=self.language,
        )  # fmt: skip
        return self.finish(_with_letters(table, rows), encoding)

    def finish(self, table: Table, encoding: str = "") -> Table:
        """The table with what follows from designations, and what was chosen for it."""
        implied: dict[Key, Value] = {}
        for e in table.expected:
            if e.parameter == "bearing_designation" and e.station >= 0:
                implied |= {(e.machine, e.station, k): v for k, v in self.machine.implied[e.station].items()}
        kinds = table.kinds | {
            "tolerance": self.pen.form, "units": self.pen.units, "length unit": self.pen.system,
            "encoding": "xlsx" if self.write == "xlsx" else encoding or self.write,
        }  # fmt: skip
        return dataclasses.replace(table, implied=implied, kinds=kinds)


def _with_letters(table: Table, rows: Rows) -> Table:
    """The table with headings of one letter (d, D, B, C) among the cells that a finding may name."""
    where = {f"{column_letters(c)}{r + 1}": (r, c) for r, row in enumerate(rows) for c in range(len(row))}
    expected = []
    for e in table.expected:
        found = []
        for r, c in (where[address] for address in e.own if address in where):
            above = [(k, c) for k in range(r - 1, -1, -1)]
            blank = next((n for n, (k, _) in enumerate(above) if not any(rows[k])), len(above))
            around = [*((r, k) for k in range(c)), *above[:blank]]
            found += [f"{column_letters(k)}{q + 1}" for q, k in around if k < len(rows[q]) and _is_letter(rows[q][k])]
        expected.append(dataclasses.replace(e, cells=tuple(dict.fromkeys((*e.cells, *found)))))
    return dataclasses.replace(table, expected=tuple(expected))


def _is_letter(text: str) -> bool:
    return len(text) == 1 and text.isalpha()


def _wide_rows(sheet: Sheet, columns: list[Column], *, first: str = "") -> Rows:
    """Heading row (and a row of units) with a row for each position."""
    pen = sheet.pen
    rows = [[first or pen.term("station"), *(pen.heading(c) for c in columns)]]
    if pen.units == "row":
        rows.append(["", *(c.unit for c in columns)])
    return [
        *rows,
        *([sheet.station(s), *(sheet.cell(c.cells[s]) for c in columns)] for s in range(len(sheet.machine.stations))),
    ]


def wide(sheet: Sheet) -> Table:
    """A row for each position under a title block."""
    rows = sheet.title(general=sheet.rng.choice([0, 1, 2]))
    body = _wide_rows(sheet, sheet.columns())
    if sheet.rng.random() < 0.4:
        item = sheet.pen.word(words.COLUMNS["item"])
        steps = 10 if sheet.rng.random() < 0.5 else 1
        k = len(body) - len(sheet.machine.stations)
        body = [[item if r == 0 else "" if r < k else str((r - k + 1) * steps), *row] for r, row in enumerate(body)]
    return sheet.file(rows + body + sheet.foot())


def _grouped(sheet: Sheet, columns: list[Column]) -> list[tuple[str, list[Column]]]:
    """Columns by part under the part's word; others under a group of their own."""
    groups = [(part, [c for c in columns if c.part == part and not c.parameter.startswith("other")]) for part in
              ("bearing", "shaft", "housing")]  # fmt: skip
    rest = [c for c in columns if c.parameter.startswith("other")]
    named = [(sheet.pen.word(words.PARTS[part]), cs) for part, cs in groups if cs]
    return [*named, (sheet.pen.word(words.COLUMNS["remark"]), rest)] if rest else named


def group_headings(sheet: Sheet) -> Table:
    """Two heading rows: the part over its columns, merged in a workbook, written once otherwise."""
    pen = sheet.pen
    pen.short = True
    rows = sheet.title(general=sheet.rng.choice([0, 1]))
    groups = _grouped(sheet, sheet.columns())
    top, merges = [""], []
    for name, columns in groups:
        if len(columns) > 1:
            merges.append((len(rows), len(top), len(top) + len(columns) - 1))
        top += [name, *[""] * (len(columns) - 1)]
    body = _wide_rows(sheet, [c for _, columns in groups for c in columns])
    if sheet.write == "xlsx" and len(rows) > 1:
        merges.append((0, 0, len(top) - 1))
    return sheet.file([*rows, top, *body, *sheet.foot()], tuple(merges))


def transposed(sheet: Sheet) -> Table:
    """A row for each parameter, a column for each position."""
    pen, n = sheet.pen, len(sheet.machine.stations)
    with_unit = pen.units == "row"
    rows = sheet.title(general=0)
    general = [] if sheet.rng.random() < 0.5 else sheet.general(2)[1:]
    rows.append([pen.word(words.COLUMNS["parameter"]), *([pen.word(words.COLUMNS["unit"])] if with_unit else []),
                 *(sheet.station(s) for s in range(n))])  # fmt: skip
    merges: list[tuple[int, ...]] = []
    for column in [*sheet.columns(), *general]:
        whole = -1 in column.cells
        cells = [sheet.cell(column.cells[-1 if whole else s]) for s in range(n)]
        if whole and sheet.write == "xlsx" and n > 1:
            cells = [cells[0], *[""] * (n - 1)]
            merges.append((len(rows), 1 + with_unit, n + with_unit))
        rows.append([pen.heading(column), *([column.unit] if with_unit else []), *cells])
    return sheet.file(rows + sheet.foot(), tuple(merges))


def sections(sheet: Sheet) -> Table:
    """As transposed, with the part in a row of its own above its parameters."""
    pen, n = sheet.pen, len(sheet.machine.stations)
    pen.short = True
    with_unit = pen.units == "row"
    rows = sheet.title(general=1)
    blank = [""] if with_unit else []
    rows.append([pen.word(words.COLUMNS["parameter"]), *([pen.word(words.COLUMNS["unit"])] if with_unit else []),
                 *(sheet.station(s) for s in range(n))])  # fmt: skip
    for name, columns in _grouped(sheet, sheet.columns()):
        rows.append([f"— {name} —" if sheet.dashes else name, *blank, *[""] * n])
        for column in columns:
            cells = [sheet.cell(column.cells[s]) for s in range(n)]
            rows.append([pen.heading(column), *([column.unit] if with_unit else []), *cells])
    return sheet.file(rows + sheet.foot())


def _pieces(columns: list[Column]) -> list[list[Column]]:
    """Columns of one parameter together."""
    found: list[list[Column]] = []
    for column in columns:
        if found and column.piece and found[-1][0].parameter == column.parameter:
            found[-1].append(column)
        else:
            found.append([column])
    return found


def _extra(sheet: Sheet, columns: list[Column]) -> dict[str, str]:
    """Tolerance columns of a list: piece and heading."""
    pen, extra = sheet.pen, {}
    for column in columns:
        if column.piece and column.piece not in extra:
            word, unit = pen.word(words.TOLERANCE[column.piece]), pen.piece_unit(column.piece)
            other = unit and unit != pen.unit_word(pen.system)
            extra[column.piece] = pen.bracket.format(h=word, u=unit) if other else word
    return extra


def _doubted(cell: str) -> str:
    """A cell with meanings that may be asked about."""
    text, mark, notes = cell.partition("«")
    return text + mark + re.sub(r"=(?!\?)", "=?", notes)


def long(sheet: Sheet) -> Table:
    """A row for each value: position, parameter, value, unit, tolerance."""
    pen, col = sheet.pen, words.COLUMNS
    rows = sheet.title(general=0)
    columns = sheet.columns()
    extra = _extra(sheet, columns)
    rows.append(
        [
            pen.term("station"),
            pen.word(col["parameter"]),
            pen.word(col["value"]),
            *extra.values(),
            pen.word(col["unit"]),
        ]
    )
    once, merges = sheet.rng.random() < 0.5, []
    for s in range(len(sheet.machine.stations)):
        top = len(rows)
        for pieces in _pieces(columns):
            main = pieces[0]
            tail = {c.piece: sheet.cell(c.cells[s]) for c in pieces[1:]}
            row = [sheet.station(s), main.head, sheet.cell(main.cells[s]), *(tail.get(k, "") for k in extra), main.unit]
            if once and len(rows) > top:
                # a blank below a name may be asked about where no merged cell says that it goes on
                row = ["", *(cell if sheet.write == "xlsx" else _doubted(cell) for cell in row[1:])]
            rows.append(row)
        if once and sheet.write == "xlsx":
            merges.append((top, 0, 0, len(rows) - 1))
    word = pen.word(words.PARTS["general"])
    for column in sheet.general(2)[1:]:
        rows.append([word, column.head, sheet.cell(column.cells[-1]), *[""] * len(extra), column.unit])
    return sheet.file(rows + sheet.foot(), tuple(merges))


def part_and_feature(sheet: Sheet) -> Table:
    """A row for each value: part, feature, position, then as a list."""
    pen, col = sheet.pen, words.COLUMNS
    pen.short = True
    rows = sheet.title(general=1)
    columns = [c for c in sheet.columns() if not c.parameter.startswith("other")]
    extra = _extra(sheet, columns)
    rows.append([pen.word(col["part"]), pen.term("station"), pen.word(col["feature"]),
                 pen.word(words.TOLERANCE["nominal"]), *extra.values(), pen.word(col["unit"])])  # fmt: skip
    for part in ("bearing", "shaft", "housing"):
        for s in range(len(sheet.machine.stations)):
            for pieces in _pieces([c for c in columns if c.part == part]):
                main = pieces[0]
                tail = {c.piece: sheet.cell(c.cells[s]) for c in pieces[1:]}
                rows.append([pen.word(words.PARTS[part]), sheet.station(s), main.head, sheet.cell(main.cells[s]),
                             *(tail.get(k, "") for k in extra), main.unit])  # fmt: skip
    return sheet.file(rows + sheet.foot())


def inspection(sheet: Sheet) -> Table:
    """Characteristics with nominal, limits or deviations, and what was measured on the first part."""
    pen, col, rng = sheet.pen, words.COLUMNS, sheet.rng
    rows = sheet.title(general=0)
    columns = sheet.columns()
    extra = _extra(sheet, columns)
    rows.append([pen.word(col["item"]), pen.term("station"), pen.word(col["feature"]),
                 pen.word(words.TOLERANCE["nominal"]), *extra.values(), pen.word(col["unit"]),
                 pen.word(words.TOLERANCE["measured"])])  # fmt: skip
    k = 0
    for s in range(len(sheet.machine.stations)):
        for pieces in _pieces(columns):
            k += 1
            main = pieces[0]
            tail = {c.piece: sheet.cell(c.cells[s]) for c in pieces[1:]}
            measured = ""
            if main.parameter in SEATS:
                seat = sheet.machine.positions[s][main.parameter]
                measured = pen._limit(seat.nominal + rng.uniform(seat.lower, seat.upper) / 1000)[0]  # type: ignore[union-attr]
            rows.append([str(k), sheet.station(s), main.head, sheet.cell(main.cells[s]),
                         *(tail.get(e, "") for e in extra), main.unit, measured])  # fmt: skip
    return sheet.file(rows + sheet.foot())


def _name(head: str) -> str:
    """A heading as the name of a parameter in a model."""
    return re.sub(r"[^\w]+", "_", head).strip("_")


def named_parameters(sheet: Sheet) -> Table:
    """Parameters of a model: the position in the name, value and unit beside it."""
    pen, col, rng = sheet.pen, words.COLUMNS, sheet.rng
    front, sep = rng.random() < 0.5, rng.choice(["_", ".", "_"])
    rows: Rows = [] if rng.random() < 0.5 else sheet.title(general=0)
    header = ("name", "value", "unit", "remark") if rng.random() < 0.5 else ("name", "unit", "value", "remark")
    order = [header.index(k) for k in ("name", "value", "unit", "remark")]
    rows.append([pen.word(col["parameter" if k == "name" else k]) for k in header])

    def row(*cells: str) -> list[str]:
        line = [""] * 4
        for k, cell in zip(order, cells, strict=True):
            line[k] = cell
        return line

    columns = sheet.columns()
    for s, station in enumerate(sheet.machine.stations):
        for column in columns:
            pair = (_name(station), _name(column.head))
            name = sep.join(pair if front else pair[::-1])
            rows.append(row(name, sheet.cell(column.cells[s]), column.unit, ""))
    for column in sheet.general(3):
        rows.append(row(_name(column.head), sheet.cell(column.cells[-1]), column.unit, ""))
    return sheet.file(rows)


def _pairs(sheet: Sheet, columns: list[Column], s: int) -> Rows:
    """Name and value (and unit) of one position below its own heading line."""
    pen = sheet.pen
    with_unit = pen.units == "row"
    return [
        [pen.term("station"), sheet.station(s), *([""] if with_unit else [])],
        *([pen.heading(c), sheet.cell(c.cells[s]), *([c.unit] if with_unit else [])] for c in columns),
    ]


def blocks(sheet: Sheet) -> Table:
    """A block of names and values for each position, one below the other."""
    rows = sheet.title(general=2)
    columns = sheet.columns()
    for s in range(len(sheet.machine.stations)):
        rows += [*_pairs(sheet, columns, s), []]
    return sheet.file(rows + sheet.foot()[1:])


def side_by_side(sheet: Sheet) -> Table:
    """The blocks of the positions beside one another."""
    rows = sheet.title(general=1)
    columns = sheet.columns()
    sets = [_pairs(sheet, columns, s) for s in range(len(sheet.machine.stations))]
    for line in zip(*sets, strict=True):
        row: list[str] = []
        for part in line:
            row += [*part, ""]
        rows.append(row[:-1])
    return sheet.file(rows + sheet.foot())


def stacked_parts(sheet: Sheet) -> Table:
    """A table for the bearings, one for the shaft, one for the housing, below one another."""
    sheet.pen.short = True
    rows = sheet.title(general=1)
    for name, columns in _grouped(sheet, [c for c in sheet.columns() if not c.parameter.startswith("other")]):
        rows += [[name], *_wide_rows(sheet, columns), []]
    return sheet.file(rows + sheet.foot()[1:])


def stacked_positions(sheet: Sheet) -> Table:
    """For each position a small table of its own: shaft and housing as rows, features as columns."""
    pen = sheet.pen
    pen.short = True
    rows = sheet.title(general=1)
    columns = sheet.columns()
    features = (
        "seat_diameter",
        "seat_roughness",
        "seat_cylindricity",
        "seat_runout",
        "shoulder_diameter",
        "fillet_radius",
    )
    for s in range(len(sheet.machine.stations)):
        rows.append([pen.term("station"), sheet.station(s)])
        bearing = [c for c in columns if c.part == "bearing" and not c.parameter.startswith("other")]
        for column in bearing:
            rows.append([pen.heading(column), sheet.cell(column.cells[s])])
        used = [f for f in features if any(c.parameter.endswith(f) for c in columns if c.part != "bearing")]
        header, lines = [pen.word(words.COLUMNS["part"])], {p: [pen.word(words.PARTS[p])] for p in ("shaft", "housing")}
        for feature in used:
            pair = {p: [c for c in columns if c.parameter == f"{p}_{feature}"] for p in lines}
            longest = max(pair.values(), key=len)
            header += [pen.heading(c) for c in longest]
            for p, own in pair.items():
                lines[p] += [sheet.cell(c.cells[s]) for c in own] or [""] * len(longest)
        rows += [header, *lines.values(), []]
    return sheet.file(rows + sheet.foot()[1:])


def parts_list(sheet: Sheet) -> Table:
    """A parts list with the bearings among other parts, and the seats in a table below it."""
    pen, col = sheet.pen, words.COLUMNS
    rows = sheet.title(general=1)
    if "bearing_designation" in sheet.parameters:
        sheet.parameters.remove("bearing_designation")
    rows.append([pen.word(col[k]) for k in ("item", "quantity", "name", "standard", "weight", "remark")])
    rows.append(["1", "1", pen.word(words.PARTS["shaft"]), "", pen.number(0.31, 3)[0], ""])
    rows.append(["2", "1", pen.word(words.PARTS["housing"]), "", pen.number(0.84, 3)[0], ""])
    for s, position in enumerate(sheet.machine.positions):
        code = str(position["bearing_designation"])
        rows.append([str(s + 3), "1", pen.word(words.PARTS["bearing"]), f"{code} «{s + 1}.bd=?{code}»",
                     pen.number(0.032, 3)[0], sheet.machine.stations[s]])  # fmt: skip
    rows.append([str(len(sheet.machine.stations) + 3), "4", "ISO 4762", "M4x12", pen.number(0.003, 3)[0], ""])
    rows.append([])
    sheet.others = []
    return sheet.file(rows + _wide_rows(sheet, sheet.columns()) + sheet.foot())


def _book(sheet: Sheet, sheets: list[tuple[str, Rows, Merges]]) -> Table:
    table = book(sheet.seed, sheets, *sheet.whose, shape=sheet.shape, language=sheet.language)
    for _, rows, _ in sheets:
        table = _with_letters(table, rows)
    return sheet.finish(table)


def sheets_of_parts(sheet: Sheet) -> Table:
    """A workbook with a cover and a sheet for bearings, shaft and housing each."""
    pen = sheet.pen
    pen.short = True
    pen.units = "heading" if pen.units == "title" else pen.units
    cover = sheet.title(general=2)
    sheets: list[tuple[str, Rows, Merges]] = [(pen.word(words.PARTS["general"]), cover, ())]
    top = len(cover) + 1
    for name, columns in _grouped(sheet, [c for c in sheet.columns() if not c.parameter.startswith("other")]):
        rows: Rows = [[name], *([] for _ in range(top))]
        body = _wide_rows(sheet, columns)
        sheets.append((name, rows + body, ()))
        top += len(body)
    history: Rows = [
        [pen.term("drawing_revision"), pen.word(words.OTHER["checked"][0]), pen.word(words.COLUMNS["remark"])]
    ]
    now = str(sheet.machine.values["drawing_revision"])
    before = chr(ord(now) - 1) if now.isalpha() else f"{int(now) - 1:02}"
    history += [[before.replace("@", "-"), "2024-05-17", "Ra 1.6 → 0.8"], [now, "2025-02-28", "k6 → k5"]]
    sheets.append((f"{pen.term('drawing_revision').strip('.')} 2", [*([] for _ in range(top + 2)), *history], ()))
    return _book(sheet, sheets)


def sheets_of_positions(sheet: Sheet) -> Table:
    """A workbook with a sheet of names and values for each position."""
    pen = sheet.pen
    pen.units = "heading" if pen.units == "title" else pen.units
    cover = sheet.title(general=2)
    columns = sheet.columns()
    sheets: list[tuple[str, Rows, Merges]] = [(pen.word(words.PARTS["general"]), cover, ())]
    top = len(cover)
    for s, name in enumerate(sheet.machine.stations):
        body = _pairs(sheet, columns, s)
        sheets.append((name, [*([] for _ in range(top)), *body], ()))
        top += len(body)
    return _book(sheet, sheets)


def family_rows(sheet: Sheet) -> Table:
    """A row for each machine of a family; the position stands in the heading."""
    pen, rng = sheet.pen, sheet.rng
    others = [m for m in words.MACHINES[sheet.language] if m != sheet.machine.name]
    inch = pen.system == "in"
    second = draw(rng, sheet.language, 2, inch=inch, symmetric="plus-minus" in pen.form)
    second.name = rng.choice(others)
    second.stations = sheet.machine.stations
    machines = (sheet.machine, second)
    sheet.ask = ""
    lines: list[list[str]] = []
    header: list[str] = []
    units: list[str] = []
    sheet.parameters = [p for p in sheet.parameters if p in SEATS or part_of(p) == "bearing"][:6]
    sheet.parameters = list(dict.fromkeys([*sheet.parameters, *SEATS]))
    for letter, machine in zip("ab", machines, strict=True):
        header, units, line = [pen.term("machine")], [""], [f"{machine.name} «{letter}.ma={machine.name}»"]
        for name in ("drawing_number", "speed_max", "rotor_mass"):
            column = pen.column(name, machine)[0]
            header.append(pen.heading(column))
            units.append(column.unit)
            line.append(sheet.cell(column.cells[-1], letter))
        for s, station in enumerate(machine.stations):
            for name in sheet.parameters:
                for column in pen.column(name, machine):
                    header.append(pen.headed(f"{station} {column.head}", column.unit))
                    units.append(column.unit)
                    line.append(sheet.cell(column.cells[s], letter))
        lines.append(line)
    rows = [*([[rng.choice(words.TITLES[sheet.language])], *sheet._lengths(), []]), header]
    if pen.units == "row":
        rows.append(units)
    rows += lines
    if sheet.write == "xlsx":
        encoding = "utf-8"
    else:
        encoding = rng.choice(ENCODINGS[sheet.language])
        for old, new in REPLACED.get(encoding, {}).items():
            rows = [[cell.replace(old, new) for cell in row] for row in rows]
    table = page(sheet.seed, rows, tuple(m.stations for m in machines), tuple(m.name for m in machines),
                 write=sheet.write, encoding=encoding, shape=sheet.shape, language=sheet.language)  # fmt: skip
    table = sheet.finish(table, encoding)
    implied = {(m, s, k): v for m, machine in enumerate(machines) for s in range(2)
               for k, v in machine.implied[s].items() if "bearing_designation" in sheet.parameters}  # fmt: skip
    return dataclasses.replace(table, implied=implied)


# ---------------------------------------------------------------- JSON


def _key(sheet: Sheet, head: str, unit: str = "") -> str:
    """A heading as a key: words joined as this document does it."""
    parts = [p for p in re.split(r"[^\w]+", head) if p]
    if sheet.key_style == "camel":
        parts = [parts[0].lower(), *(p[:1].upper() + p[1:] for p in parts[1:])]
        key = "".join(parts)
    elif sheet.key_style == "snake":
        key = "_".join(parts).lower()
    else:
        key = head
    if not unit or sheet.pen.units not in ("heading", "title"):
        return key
    return f"{key} [{unit}]" if sheet.key_style == "words" else f"{key}_{_name(unit)}"


def _leaf(sheet: Sheet, column: Column, s: int) -> Any:
    """A value: with its unit beside it where units have a key of their own."""
    text = sheet.cell(column.cells[s])
    if sheet.pen.units == "row" and column.unit:
        value, unit = {"en": ("value", "unit"), "de": ("wert", "einheit")}.get(sheet.language, ("val", "uom"))
        return {value: text, unit: column.unit}
    return text


def _head_json(sheet: Sheet, general: int) -> dict[str, Any]:
    pen, machine = sheet.pen, sheet.machine
    found: dict[str, Any] = {
        _key(sheet, pen.term("machine")): f"{machine.name} «.ma»",
        _key(sheet, pen.term("drawing_number")): f"{machine.values['drawing_number']} «.dn»",
    }
    for column in sheet.general(general):
        found[_key(sheet, column.head, column.unit)] = _leaf(sheet, column, -1)
    return found


def _document(sheet: Sheet, tree: Any) -> Table:
    table = document(sheet.seed, tree, *sheet.whose, shape=sheet.shape, language=sheet.language)
    return sheet.finish(table)


def json_records(sheet: Sheet) -> Table:
    """A list of records with the headings of a table as keys."""
    pen = sheet.pen
    columns = sheet.columns()
    whole = sheet.general(1)
    records = []
    for s in range(len(sheet.machine.stations)):
        record = {_key(sheet, pen.term("station")): sheet.station(s)}
        record |= {_key(sheet, c.head, c.unit): _leaf(sheet, c, s) for c in columns}
        record |= {_key(sheet, c.head, c.unit): _leaf(sheet, c, -1) for c in whole}
        records.append(record)
    return _document(sheet, records if sheet.rng.random() < 0.5 else {"rows": records})


def json_positions(sheet: Sheet) -> Table:
    """Nested by position, then by part."""
    pen = sheet.pen
    pen.short = True
    columns = [c for c in sheet.columns() if not c.parameter.startswith("other")]
    tree: dict[str, Any] = _head_json(sheet, 2)
    positions: Any = {} if sheet.rng.random() < 0.5 else []
    for s, station in enumerate(sheet.machine.stations):
        node: dict[str, Any] = {}
        for part in ("bearing", "shaft", "housing"):
            own = {_key(sheet, c.head, c.unit): _leaf(sheet, c, s) for c in columns if c.part == part}
            node[_key(sheet, pen.word(words.PARTS[part]))] = own
        if isinstance(positions, dict):
            positions[station] = node
        else:
            positions.append({_key(sheet, pen.term("station")): sheet.station(s), **node})
    tree[_key(sheet, pen.term("station"))] = positions
    return _document(sheet, tree)


def json_parts(sheet: Sheet) -> Table:
    """Nested by part, then a list of its seats with the position in each."""
    pen = sheet.pen
    pen.short = True
    columns = [c for c in sheet.columns() if not c.parameter.startswith("other")]
    tree: dict[str, Any] = {"header": _head_json(sheet, 2)}
    for part in ("bearing", "shaft", "housing"):
        tree[_key(sheet, pen.word(words.PARTS[part]))] = [
            {_key(sheet, pen.term("station")): sheet.station(s)}
            | {_key(sheet, c.head, c.unit): _leaf(sheet, c, s) for c in columns if c.part == part}
            for s in range(len(sheet.machine.stations))
        ]
    return _document(sheet, tree)


def json_attributes(sheet: Sheet) -> Table:
    """Objects with an array of attributes: name, value, unit."""
    pen, rng = sheet.pen, sheet.rng
    name, value, unit = rng.choice(
        [("attr", "val", "uom"), ("label", "content", "unit"), ("name", "value", "unitOfMeasure")]
    )
    columns = sheet.columns()

    def attribute(column: Column, s: int) -> dict[str, Any]:
        found = {name: column.head, value: sheet.cell(column.cells[s])}
        return found | ({unit: column.unit} if column.unit else {})

    items = [
        {
            "objectType": "Position",
            "name" if name != "name" else "title": sheet.station(s),
            "attributes": [attribute(c, s) for c in columns],
        }
        for s in range(len(sheet.machine.stations))
    ]
    head = [attribute(c, -1) for c in sheet.general(2)]
    head.append({name: pen.term("drawing_number"), value: f"{sheet.machine.values['drawing_number']} «.dn»"})
    return _document(sheet, {"product": f"{sheet.machine.name} «.ma»", "attributes": head, "children": items})


def json_dotted(sheet: Sheet) -> Table:
    """One flat object, the path of each value in its key."""
    pen, rng = sheet.pen, sheet.rng
    pen.short = rng.random() < 0.5
    columns = [c for c in sheet.columns() if not c.parameter.startswith("other")]
    dot = rng.choice([".", "/", "."])
    tree: dict[str, Any] = {k: v for k, v in _head_json(sheet, 2).items() if isinstance(v, str)}
    for s, station in enumerate(sheet.machine.stations):
        for column in columns:
            path = [station, *([_key(sheet, pen.word(words.PARTS[column.part]))] if pen.short else []),
                    _key(sheet, column.head, column.unit)]  # fmt: skip
            tree[dot.join(path)] = sheet.cell(column.cells[s])
    return _document(sheet, tree)


MAKERS: dict[str, Callable[[Sheet], Table]] = {
    "wide": wide, "group headings": group_headings, "transposed": transposed, "sections": sections, "long": long,
    "part and feature": part_and_feature, "inspection": inspection, "named parameters": named_parameters,
    "blocks": blocks, "side by side": side_by_side, "stacked parts": stacked_parts,
    "stacked positions": stacked_positions, "parts list": parts_list, "sheets of parts": sheets_of_parts,
    "sheets of positions": sheets_of_positions, "family rows": family_rows, "json records": json_records,
    "json positions": json_positions, "json parts": json_parts, "json attributes": json_attributes,
    "json dotted": json_dotted,
}  # fmt: skip
_LISTED = ("class in cell", "class column", "deviation columns", "tolerance column", "nominal and limits",
           "class and deviation columns", "deviations in cell", "class and deviations")  # fmt: skip
FORMS_OF = {
    "long": _LISTED, "part and feature": _LISTED,
    "inspection": ("deviation columns", "nominal and limits", "class and deviation columns", "tolerance column"),
    "stacked positions": ("class in cell", "class column", "deviation columns", "deviations in cell",
                          "class and deviations"),
    "family rows": ("class in cell", "class column", "deviations in cell", "limit columns"),
    "json parts": ("class in cell", "class column", "deviation columns", "class and deviations", "nominal and limits"),
}  # fmt: skip
UNITS_OF = {
    "long": ("row",), "part and feature": ("row",), "inspection": ("row",), "named parameters": ("row", "row", "cell"),
    "json attributes": ("row",), "json dotted": ("heading", "cell"), "json records": ("heading", "row", "cell"),
    "json positions": ("heading", "row", "cell"), "json parts": ("heading", "row", "cell"),
    "stacked positions": ("heading", "title"), "blocks": ("heading", "row", "cell", "title"),
    "sheets of parts": ("heading", "row"), "sheets of positions": ("heading", "row", "cell"),
}  # fmt: skip
#: How many tables of each layout; together 60.
COUNTS = {
    "wide": 6, "group headings": 5, "transposed": 5, "sections": 3, "long": 4, "part and feature": 3, "inspection": 3,
    "named parameters": 3, "blocks": 3, "side by side": 2, "stacked parts": 3, "stacked positions": 2, "parts list": 2,
    "sheets of parts": 3, "sheets of positions": 2, "family rows": 2, "json records": 2, "json positions": 2,
    "json parts": 2, "json attributes": 2, "json dotted": 1,
}  # fmt: skip
#: Tables (from 1) that carry a doubt.
ASKS = {
    2: "seat_roughness", 4: "two speeds", 5: "fillet range", 8: "not yet", 9: "two classes",
    13: "two classes", 12: "seat_cylindricity",
    14: "no unit", 16: "not yet", 19: "fillet_radius", 21: "two speeds", 22: "fillet range", 26: "not yet",
    24: "two classes", 31: "seat_roughness", 33: "no unit", 34: "not yet", 37: "two speeds", 40: "fillet range",
    43: "not yet", 45: "two speeds", 47: "not yet", 50: "seat_roughness", 53: "no unit", 55: "not yet",
    57: "fillet range", 58: "not yet",
}  # fmt: skip


def make(number: int) -> Table:
    """Table 1 to 60 of the set."""
    shapes = [shape for shape, count in COUNTS.items() for _ in range(count)]
    shape = shapes[number - 1]
    language = words.LANGUAGES[(number * 5 + number // 8) % 8]
    rng = random.Random(f"file {number}")
    if shape.startswith("json"):
        write = "json"
    elif shape.startswith("sheets"):
        write = "xlsx"
    elif shape == "group headings":
        write = rng.choice(["xlsx", "xlsx", ";"])
    else:
        point = language in ("en", "ja", "zh")
        write = rng.choice(["xlsx", "xlsx", ",", ",", "\t"] if point else ["xlsx", "xlsx", ";", ";", ";", "\t"])
    sheet = Sheet(3000 + number, shape, language, write)
    return MAKERS[shape](sheet)
