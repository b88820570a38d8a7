"""How a firm writes: its language, units, decimal sign, form of tolerances, and the sheet that it fills."""

import csv
import io
import random
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

import xlsxwriter
from practice.grammar import Expected, Size, Value

from . import trade, vocabulary
from .vocabulary import CHOICE_WORDS, CHOSEN, FEATURE_WORDS, FRAME_WORDS, HEADINGS, UNIT_KIND

Cell = str | float
Values = dict[str, Value]
SIZES = ("shaft_seat_diameter", "housing_seat_diameter")
SHOULDER_SIZES = ("shaft_shoulder_diameter", "housing_shoulder_diameter")
#: Signs that a code page lacks.
PLAIN = {"Ø": "φ", "µ": "μ", "²": "2", "⁻": "-", "¹": "1", "–": "-", "ё": "е"}
#: Separate columns of a size.
COLUMNED = (
    "class column", "deviation columns", "deviation columns um", "limit columns", "plus-minus column",
    "class and deviation columns", "fit pair column",
)  # fmt: skip
IN_CELL = (
    "class in cell",
    "deviations in cell",
    "class and deviations mm",
    "class and deviations um",
    "limits in cell",
)
INCH_FORMS = ("deviations in cell", "limits in cell", "limit columns", "plus-minus column", "deviation columns")


@dataclass(frozen=True)
class Piece:
    """A column (or row, or key) of a table: what it is headed by and which values it carries."""

    heading: str
    unit: str
    parameters: tuple[str, ...]
    text: Callable[[Values], Cell]


@dataclass
class Style:
    """The ways of one firm."""

    language: str
    rng: random.Random
    tolerance: str
    units: dict[str, tuple[str, float]]
    unit_place: str
    decimal: str
    encoding: str
    suffix: str
    inches: bool
    bracket: str
    marks: bool
    loose_shoulders: bool
    bare_load: bool
    diameter_sign: str
    noted: bool
    coded: bool
    between: str
    chosen: dict[str, str] = field(default_factory=dict)

    def frame(self, name: str) -> str:
        return FRAME_WORDS[self.language][name]

    def word(self, parameter: str, feature: bool = False) -> str:
        """The heading of a parameter, the same throughout a table."""
        if parameter.startswith("?"):
            return FEATURE_WORDS[self.language][parameter[1:]]
        if feature and parameter in FEATURE_WORDS[self.language]:
            return FEATURE_WORDS[self.language][parameter]
        if self.coded and parameter in vocabulary.CODES:
            name = vocabulary.CODES[parameter]
            return name.replace("_", "") if self.between == " / " else name
        if parameter not in self.chosen:
            self.chosen[parameter] = self.rng.choice(HEADINGS[self.language][parameter])
        return self.chosen[parameter]

    def kind(self, parameter: str) -> str:
        return UNIT_KIND.get(parameter.lstrip("?"), "")

    def unit(self, parameter: str) -> str:
        """The unit as written, empty for none."""
        kind = self.kind(parameter)
        if not kind or (self.bare_load and parameter in ("radial_load", "axial_load")):
            return ""
        symbol = self.units[kind][0]
        if self.language == "ru":
            return vocabulary.RUSSIAN.get(symbol, symbol)
        return symbol

    def shown(self, parameter: str, value: float) -> float:
        """A canonical number in the unit of the table."""
        kind = self.kind(parameter)
        if not kind:
            return value
        symbol, factor = self.units[kind]
        if symbol == "°F":
            return round(value * 1.8 + 32, 6)
        return round(value / factor, 6)

    def number(self, value: float, places: int | None = None) -> str:
        text = f"{value:.6f}".rstrip("0").rstrip(".") if places is None else f"{value:.{places}f}"
        return text.replace(".", self.decimal)

    def signed(self, value: float) -> str:
        return "0" if abs(value) < 1e-9 else ("+" if value > 0 else "-") + self.number(abs(value))

    def cell(self, parameter: str, value: Value) -> Cell:
        """A value that is no seat as it stands in its cell."""
        name = parameter.lstrip("?")
        if isinstance(value, str):
            return CHOICE_WORDS[self.language][value] if name in CHOSEN else value
        if isinstance(value, Size):
            text = f"{self.number(self.shown(name, value.nominal))} ±{self.number(self.shown(name, value.upper or 0))}"
            return f"{text} {self.unit(name)}" if self.unit_place == "cell" else text
        shown = self.shown(parameter, value)
        if self.unit_place == "cell" and self.unit(parameter):
            return f"{self.number(shown)} {self.unit(parameter)}"
        if self.marks and name.endswith("fillet_radius"):
            return f"R{self.number(shown)}"
        if self.marks and name.endswith("roughness"):
            return f"Ra {self.number(shown)}"
        return shown

    def headed(self, text: str, unit: str, parameter: str) -> str:
        """A heading with its unit, where units stand in headings."""
        if not unit or self.unit_place in ("row", "column", "cell"):
            return text
        noted = self.kind(parameter) in ("length", "form", "rough") and unit == self.unit(parameter)
        if self.unit_place in ("title", "foot") and noted:
            return text
        return self.bracket.format(text, unit)

    def note(self) -> str:
        """The line that states the units of all dimensions."""
        spell = vocabulary.RUSSIAN if self.language == "ru" else {}
        spell = {**spell, "in": "inch"}
        length, form = (spell.get(self.units[k][0], self.units[k][0]) for k in ("length", "form"))
        rough = self.frame("rough").replace("µm", self.units["rough"][0])
        return "; ".join((self.frame("lengths").format(l=length), self.frame("forms").format(f=form), rough))

    def meant(self, parameter: str, value: Value) -> tuple[str, Value, str, str]:
        """Parameter, value, verdict and form that are expected of a value written this way."""
        if parameter.startswith("?"):
            other = parameter[1:].replace("shaft", "housing")
            return f"{parameter[1:]}|{other}", value, "ask", "part not told"
        if self.bare_load and parameter in ("radial_load", "axial_load"):
            return parameter, value, "either", "force without unit"
        if parameter in SIZES and isinstance(value, Size):
            form, verdict = self.tolerance, "read"
            if form in ("class in cell", "class column", "fit pair column"):
                return parameter, Size(value.nominal, None, None, value.tolerance_class), verdict, form
            if form.startswith("class and"):
                if form == "class and deviations um" and not self.noted and self.unit_place != "cell":
                    verdict = "either"
                return parameter, value, verdict, form
            bare = form.startswith("limit")
            return parameter, Size(value.nominal, value.lower, value.upper, "", bare), verdict, form
        if isinstance(value, Size):
            return parameter, value, "read", "plus-minus in cell"
        return parameter, value, "read", "word" if isinstance(value, str) else "number"

    def size_text(self, size: Size, form: str) -> str:
        """A seat in one cell."""
        lower, upper = size.lower or 0.0, size.upper or 0.0
        factor = self.units["length"][1]
        nominal = self.diameter_sign + self.number(round(size.nominal / factor, 6))
        deviations = f"{self.signed(round(upper / factor, 6))}/{self.signed(round(lower / factor, 6))}"
        if lower == -upper:
            deviations = f"±{self.number(round(upper / factor, 6))}"
        tail = f" {self.unit('shaft_seat_diameter')}" if self.unit_place == "cell" else ""
        if form == "class in cell":
            return f"{nominal}{tail} {size.tolerance_class}"
        if form == "deviations in cell":
            return f"{nominal} {deviations}{tail}"
        if form == "class and deviations mm":
            return f"{nominal} {size.tolerance_class} ({deviations}){tail}"
        if form == "class and deviations um":
            um = f"{self.signed(round(upper * 1000, 3))}/{self.signed(round(lower * 1000, 3))}"
            micro = "" if not tail else f" {vocabulary.RUSSIAN['µm'] if self.language == 'ru' else 'µm'}"
            return f"{nominal}{tail} {size.tolerance_class} ({um}{micro})"
        limits = [self.number(round((size.nominal + x) / factor, 6), 4) for x in (upper, lower)]
        if self.between != " / ":
            limits.reverse()
        return self.between.join(limits) + tail

    def pieces(self, parameter: str, feature: bool = False, single: bool = False) -> list[Piece]:
        """The columns of a parameter.

        Parameters
        ----------
        parameter : str
            Name of the vocabulary; led by ``?`` where the part is not told.
        feature : bool
            Whether the part is told elsewhere.
        single : bool
            Whether there is room for one cell only.

        Returns
        -------
        list of Piece
            One, or several for a size in columns.
        """
        head = self.word(parameter, feature)
        if parameter not in SIZES:
            return [Piece(head, self.unit(parameter), (parameter,), lambda v: self.cell(parameter, v[parameter]))]
        form, unit, factor = self.tolerance, self.unit(parameter), self.units["length"][1]
        micro = vocabulary.RUSSIAN["µm"] if self.language == "ru" else "µm"

        def size(values: Values) -> Size:
            found = values[parameter]
            assert isinstance(found, Size)
            return found

        def piece(name: str, own: str, text: Callable[[Size], Cell]) -> Piece:
            joined = f"{head} {self.frame(name)}" if name else head
            if name and self.coded:
                joined = head + vocabulary.CODE_ENDS[name]
            return Piece(joined, own, (parameter,), lambda v: text(size(v)))

        def shown(number: float, by: float = factor) -> float:
            return round(number / by, 6)

        if form in IN_CELL or single:
            if form == "class and deviations um" and self.noted:
                head = f"{head} ({self.frame('deviations')})"
            return [piece("", unit, lambda s: self.size_text(s, form))]
        nominal = piece("", unit, lambda s: self._with_unit(shown(s.nominal), unit))
        upper = piece("upper", unit, lambda s: self._with_unit(shown(s.upper or 0), unit))
        lower = piece("lower", unit, lambda s: self._with_unit(shown(s.lower or 0), unit))
        if form == "fit pair column":
            return [nominal]
        if form == "class column":
            return [nominal, piece("class", "", lambda s: s.tolerance_class)]
        if form == "deviation columns":
            return [nominal, upper, lower]
        if form == "class and deviation columns":
            return [nominal, piece("class", "", lambda s: s.tolerance_class), upper, lower]
        if form == "deviation columns um":
            return [
                nominal,
                piece("upper", micro, lambda s: self._with_unit(shown(s.upper or 0, 0.001), micro)),
                piece("lower", micro, lambda s: self._with_unit(shown(s.lower or 0, 0.001), micro)),
            ]
        if form == "limit columns":
            return [
                piece("max", unit, lambda s: self._with_unit(shown(s.nominal + (s.upper or 0)), unit)),
                piece("min", unit, lambda s: self._with_unit(shown(s.nominal + (s.lower or 0)), unit)),
            ]
        return [nominal, piece("plusminus", unit, lambda s: self._with_unit(shown(s.upper or 0), unit))]

    def _with_unit(self, value: float, unit: str) -> Cell:
        return f"{self.number(value)} {unit}" if self.unit_place == "cell" else value

    def fit_piece(self) -> Piece:
        """The column with both classes."""

        def text(values: Values) -> str:
            shaft, hole = values["shaft_seat_diameter"], values["housing_seat_diameter"]
            assert isinstance(shaft, Size) and isinstance(hole, Size)
            return f"{shaft.tolerance_class} / {hole.tolerance_class}"

        return Piece(self.frame("fit"), "", SIZES, text)


@dataclass
class Sheet:
    """Cells by row and column, from 0."""

    name: str
    style: Style
    cells: dict[tuple[int, int], Cell] = field(default_factory=dict)
    merges: list[tuple[int, int, int, int]] = field(default_factory=list)

    def put(self, row: int, column: int, content: Cell) -> tuple[int, int]:
        """Write a cell and give its place back."""
        self.cells[row, column] = self.fit(content)
        return row, column

    def fit(self, content: Cell) -> Cell:
        """The content in the signs that the encoding has."""
        encoding = self.style.encoding
        if isinstance(content, float | int) or encoding in ("xlsx", "json"):
            return content
        found = ""
        for sign in content:
            try:
                sign.encode(encoding)
            except UnicodeEncodeError:
                sign = PLAIN.get(sign, "")
                try:
                    sign.encode(encoding)
                except UnicodeEncodeError:
                    sign = "диаметр" if sign == "φ" else ""
            found += sign
        return found

    @property
    def height(self) -> int:
        return max((row for row, _ in self.cells), default=-1) + 1


def address(row: int, column: int) -> str:
    letters, number = "", column + 1
    while number:
        number, rest = divmod(number - 1, 26)
        letters = chr(65 + rest) + letters
    return f"{letters}{row + 1}"


Place = tuple[int, int]


@dataclass
class Book:
    """The sheets of a file and what they state."""

    style: Style
    sheets: list[Sheet] = field(default_factory=list)
    expected: list[Expected] = field(default_factory=list)

    def sheet(self, name: str = "") -> Sheet:
        self.sheets.append(Sheet(name, self.style))
        return self.sheets[-1]

    def state(
        self,
        sheet: Sheet,
        where: tuple[int, int],
        parameter: str,
        value: Value,
        own: Sequence[Place],
        heads: Sequence[Place],
    ) -> None:
        """Record what cells state."""
        name, meant, verdict, form = self.style.meant(parameter, value)
        words = tuple(str(sheet.cells[h]) for h in heads if h in sheet.cells)
        if isinstance(meant, str) and name not in CHOSEN:
            meant = str(sheet.fit(meant))
        mine = tuple(dict.fromkeys(address(*p) for p in own))
        cells = tuple(dict.fromkeys((*mine, *(address(*h) for h in heads))))
        self.expected.append(Expected(*where, name, meant, verdict, form, cells, words, mine))

    def content(self) -> bytes:
        """The file."""
        if self.style.encoding == "xlsx":
            return self._workbook()
        sheet, style = self.sheets[0], self.style
        width = max(column for _, column in sheet.cells) + 1
        text = io.StringIO()
        delimiter = "\t" if style.suffix == ".tsv" else ";" if style.decimal == "," else ","
        writer = csv.writer(text, delimiter=delimiter, lineterminator="\r\n")
        for row in range(sheet.height):
            cells = [sheet.cells.get((row, c), "") for c in range(width)]
            writer.writerow([style.number(c) if isinstance(c, float | int) else c for c in cells])
        return text.getvalue().encode(style.encoding)

    def _workbook(self) -> bytes:
        file = io.BytesIO()
        book = xlsxwriter.Workbook(file, {"in_memory": True})
        for number, sheet in enumerate(self.sheets):
            page = book.add_worksheet(sheet.name[:31] or f"Sheet{number + 1}")
            for (row, column), content in sorted(sheet.cells.items()):
                if isinstance(content, float | int):
                    page.write_number(row, column, content)
                else:
                    page.write_string(row, column, content)
            for first, left, last, right in sheet.merges:
                page.merge_range(first, left, last, right, str(sheet.cells[first, left]))
        book.close()
        return file.getvalue()


#: Symbols and factors to canonical units.
UNITS: dict[str, tuple[tuple[str, float], ...]] = {
    "speed": (("r/min", 1.0), ("rpm", 1.0), ("1/min", 1.0), ("min-1", 1.0)),
    "hours": (("h", 1.0),),
    "temperature": (("°C", 1.0),),
    "rating": (("N", 1.0), ("kN", 1000.0), ("kN", 1000.0)),
    "load": (("N", 1.0), ("N", 1.0), ("kN", 1000.0)),
    "mass": (("kg", 1.0), ("g", 0.001)),
    "rate": (("N/mm", 1.0),),
    "viscosity": (("mm²/s", 1.0), ("cSt", 1.0)),
    "form": (("mm", 1.0), ("µm", 0.001)),
    "rough": (("µm", 1.0),),
    "length": (("mm", 1.0),),
}
INCH_UNITS = {
    "speed": ("rpm", 1.0), "temperature": ("°F", 1.0), "rating": ("lbf", trade.POUND), "load": ("lbf", trade.POUND),
    "mass": ("lb", 0.45359237), "form": ("in", 25.4), "rough": ("µin", 0.0254), "length": ("in", 25.4),
}  # fmt: skip
