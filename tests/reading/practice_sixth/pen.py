"""How values are written: language, units, decimals, tolerances; and the sheets that are written on."""

import csv
import io
from dataclasses import dataclass, field
from random import Random

from openpyxl import Workbook
from openpyxl.styles import Font
from openpyxl.utils import get_column_letter
from practice.grammar import Expected, Size, Value

from practice_sixth import words_east, words_west
from practice_sixth.trade import INCH_MM, QUANTITIES, SEATS, SIDES, Meaning, group_of
from practice_sixth.words_values import CHOICES, GROUPS, LANGUAGES, UNITS

#: Signs that an encoding may lack, and what is written instead.
PLAIN = {
    "µ": ("μ", "u"), "μ": ("µ", "u"), "Ø": ("φ", "D="), "⁻¹": ("-1",), "°": ("",), "℃": ("°C",), "×": ("x",),
    "−": ("-",), "–": ("-",), "²": ("2",), "α": ("alpha",), "é": ("e",), "№": ("N",), "ё": ("е",), "º": ("o",),
}  # fmt: skip
TOLERANCES = (
    "class in cell", "class column", "deviations in cell", "deviation columns mm", "deviation columns µm",
    "limit columns", "plus-minus", "class plus deviations", "limits in cell", "fit pair",
)  # fmt: skip
SYMMETRIC = ("js5", "js6", "JS6")
#: Decimals of form tolerances, sizes and others in mm and inches are the shortest that state the value.


def _catalogue(language: str) -> dict[str, tuple[list[str], list[str]]]:
    module = words_west if language in words_west.FEATURES else words_east
    found: dict[str, tuple[list[str], list[str]]] = {}

    def split(text: str) -> list[str]:
        return [word.strip() for word in text.split(" ; ") if word.strip()]

    for line in module.OTHERS[language].strip().splitlines():
        name, full, sub = (part.strip() for part in line.split(" | "))
        found[name] = (split(full), split(sub))
    for line in module.FEATURES[language].strip().splitlines():
        name, full, sub = (part.strip() for part in line.split(" | "))
        for side in SIDES:
            s, b, p = module.SIDES[language][side]
            words = [text.replace("{s}", s).replace("{b}", b).replace("{p}", p) for text in split(full)]
            found[f"{side}_{name}"] = ([word[0].upper() + word[1:] for word in words], split(sub))
    return found


CATALOGUE = {language: _catalogue(language) for language in LANGUAGES}


def seat_word(language: str, side: str) -> str:
    """What a seat is called in a heading."""
    module = words_west if language in words_west.SIDES else words_east
    return module.SIDES[language][side][0]


@dataclass
class Column:
    """A column (or row, or attribute): what it states and how it is headed."""

    parameter: str
    aspect: str
    full: str
    group: str
    sub: str
    unit: str
    quantity: str


@dataclass
class Style:
    """Choices of one table."""

    rng: Random
    language: str
    inch: bool
    encoding: str
    suffix: str
    decimal: str
    thousands: str
    unit_place: str
    tolerance: str
    short: bool
    variant: int
    bracket: str
    units: dict[str, tuple[str, float]] = field(default_factory=dict)
    padded: bool = False

    def fits(self, text: str) -> str:
        """The text in signs that the encoding has."""
        if self.suffix != ".csv" and self.suffix != ".txt":
            return text
        for sign in PLAIN:
            if sign in text:
                for other in (sign, *PLAIN[sign]):
                    try:
                        other.encode(self.encoding)
                    except UnicodeEncodeError:
                        continue
                    text = text.replace(sign, other)
                    break
        text.encode(self.encoding)
        return text

    def number(self, value: float, places: int | None = None, signed: bool = False) -> str:
        """A number as this office writes it."""
        text = f"{round(value, 8):.6f}".rstrip("0").rstrip(".") if places is None else f"{value:.{places}f}"
        if text in ("-0", ""):
            text = "0"
        whole, _, rest = text.partition(".")
        if self.thousands and abs(value) >= 10000:
            whole = f"{int(whole):,}".replace(",", self.thousands)
        text = whole + (self.decimal + rest if rest else "")
        return f"+{text}" if signed and value > 0 else text

    def words(self, parameter: str) -> tuple[str, str]:
        """Full heading and heading under a group."""
        full, sub = CATALOGUE[self.language][parameter]
        return self.fits(full[self.variant % len(full)]), self.fits(sub[self.variant % len(sub)])

    def group(self, key: str) -> str:
        """What a group of headings is called."""
        return self.fits(GROUPS[self.language][key])

    def choice(self, parameter: str, word: str) -> str:
        """How this office says a choice of the vocabulary."""
        if parameter == "tolerance_class":
            normal = {"ja": "0級", "zh": "P0", "ru": "0", "de": "PN"}.get(self.language, "P0")
            return normal if word == "Normal" else word
        options = (
            CHOICES[parameter][word][LANGUAGES.index(self.language)].split("/") if parameter in CHOICES else [word]
        )
        if parameter == "axial_role" or word in ("Si3N4",):
            options = options[:1] if self.variant % 2 else options
        return self.fits(options[self.variant % len(options)])

    def headed(self, text: str, unit: str) -> str:
        """A heading with its unit, where units stand in headings."""
        return self.fits(text + self.bracket.format(unit)) if unit else text


def unit_text(style: Style, unit: str) -> str:
    """How this office writes a unit."""
    options = UNITS.get(unit, {}).get(style.language, (unit,))
    return style.fits(options[style.variant % len(options)])


def choose_units(style: Style) -> None:
    """Unit text and factor (canonical = written × factor) of each quantity of the table."""
    rng = style.rng

    def pick(*options: tuple[str, float]) -> tuple[str, float]:
        unit, factor = rng.choice(options)
        return unit_text(style, unit), factor

    style.units = {
        "length": pick(("mm", 1.0)), "form": pick(("mm", 1.0), ("µm", 0.001)), "ra": pick(("µm", 1.0)),
        "speed": pick(("r/min", 1.0)), "temperature": pick(("°C", 1.0)), "load": pick(("N", 1.0)),
        "rating": pick(("N", 1.0), ("kN", 1000.0)), "life": pick(("h", 1.0)), "mass": pick(("kg", 1.0), ("g", 0.001)),
        "viscosity": pick(("mm²/s", 1.0)), "rate": pick(("N/mm", 1.0)), "angle": ("°" if style.fits("°") else "", 1.0),
        "percent": ("%", 1.0),
    }  # fmt: skip
    if style.unit_place == "none":
        style.units["form"] = (unit_text(style, "mm"), 1.0)
    if style.inch:
        inch = rng.choice(("in", "inch"))
        style.units |= {
            "length": (inch, INCH_MM), "form": (inch, INCH_MM), "ra": ("µin", 0.0254), "load": ("lbf", 4.4482216152605),
            "rating": ("lbf", 4.4482216152605), "temperature": ("°F", 5 / 9),
            "rate": ("lbf/in", 4.4482216152605 / 25.4), "mass": ("lb", 0.45359237),
        }  # fmt: skip
        for key in ("ra",):
            style.units[key] = (style.fits(style.units[key][0]), style.units[key][1])


def written(style: Style, parameter: str, value: float) -> tuple[str, float]:
    """Text of a number in the table's unit and the canonical value that this text states."""
    quantity = QUANTITIES.get(parameter, "")
    _, factor = style.units.get(quantity, ("", 1.0))
    offset = 32.0 if style.inch and quantity == "temperature" else 0.0
    shown = value / factor + offset
    if style.inch and quantity in ("load", "rating", "rate", "mass", "temperature", "life", "speed"):
        shown = float(f"{shown:.3g}") if quantity != "temperature" else round(shown)
    shown = round(shown, 6)
    places = None
    if style.padded and not style.inch and quantity in ("length", "form") and factor == 1.0:
        places = max(2 if quantity == "length" else 3, len(f"{shown:g}".partition(".")[2]))
    text = style.number(shown, places)
    if quantity == "speed" and abs(shown) < 10000:
        text = style.number(shown)
    return text, round((shown - offset) * factor, 10)


def size_texts(style: Style, parameter: str, size: Size) -> tuple[dict[str, str], Size]:
    """Text of each aspect of a seat in the tolerance form of the table, and the size that they state."""
    factor = style.units["length"][1]
    nominal, low, high = size.nominal / factor, (size.lower or 0) / factor, (size.upper or 0) / factor
    form = style.tolerance
    decimals = 4 if style.inch else 3
    if size.tolerance_class in SYMMETRIC and abs(low * 1000 - round(low * 1000)) > 1e-9 and not style.inch:
        decimals = 4
    base = style.number(nominal, 4) if style.inch else style.number(nominal)
    sign = style.fits("Ø") if parameter and style.variant % 3 == 0 and not style.inch else ""
    sign = sign if sign in ("Ø", "φ") else ""
    cls = size.tolerance_class
    lo, hi = style.number(low, decimals, signed=True), style.number(high, decimals, signed=True)
    lo, hi = (style.number(0) if abs(x) < 1e-9 else t for x, t in ((low, lo), (high, hi)))
    exact = Size(round(nominal * factor, 8), round(low * factor, 8), round(high * factor, 8), cls)
    loose = Size(exact.nominal, exact.lower, exact.upper)
    if form == "class in cell":
        return {"value": f"{sign}{base}{' ' if style.variant % 2 else ''}{cls}"}, Size(
            exact.nominal, tolerance_class=cls
        )
    if form in ("class column", "fit pair"):
        return {"nominal": base, "class": cls}, Size(exact.nominal, tolerance_class=cls)
    if form == "deviations in cell":
        text = (f"{sign}{base} {hi}/{lo}", f"{sign}{base} ({hi} / {lo})", f"{sign}{base} {hi} {lo}")[style.variant % 3]
        return {"value": text}, loose
    if form == "class plus deviations":
        return {"value": f"{sign}{base} {cls} ({hi}/{lo})"}, exact
    if form == "deviation columns mm":
        return {"nominal": base, "upper": hi, "lower": lo}, loose
    if form == "deviation columns µm":
        upper, lower = (style.number(x * 1000, signed=True) for x in (high, low))
        return {"nominal": base, "upper": upper, "lower": lower}, loose
    bare = Size(exact.nominal, exact.lower, exact.upper, bare=True)
    top, bottom = style.number(nominal + high, decimals), style.number(nominal + low, decimals)
    if form == "limit columns":
        return {"max": top, "min": bottom}, bare
    if form == "limits in cell":
        text = f"{top}/{bottom}" if style.variant % 2 else f"{bottom} - {top}"
        return {"value": text}, bare
    middle, half = (low + high) / 2, (high - low) / 2
    middle_text = style.number(nominal + middle, None if abs(middle) < 1e-9 else decimals + 1)
    half_text = style.number(half, None)
    value = Size(round((nominal + middle) * factor, 8), round(-half * factor, 8), round(half * factor, 8))
    return {"value": f"{sign}{middle_text} {style.fits('±')}{half_text}"}, value


ASPECTS = {
    "class column": ("nominal", "class"), "fit pair": ("nominal",),
    "deviation columns mm": ("nominal", "upper", "lower"),
    "deviation columns µm": ("nominal", "upper", "lower"), "limit columns": ("max", "min"),
}  # fmt: skip


def columns_of(style: Style, meaning: Meaning, names: list[str]) -> list[Column]:
    """The columns that the parameters take in this table."""
    found = []
    for name in names:
        key = group_of(name)
        if name == "size_text":
            key = "bearing"
        group = style.group(key)
        full, sub = style.words(name)
        quantity = QUANTITIES.get(name, "")
        unit = style.units.get(quantity, ("", 1.0))[0]
        if style.variant == 4 and name in ("shaft_shoulder_diameter", "housing_shoulder_diameter"):
            sub = "da" if name[0] == "s" else "Da"
        if name not in SEATS:
            found.append(Column(name, "value", full, group, sub, unit, quantity))
            continue
        side = name.split("_")[0]
        for aspect in ASPECTS.get(style.tolerance, ("value",)):
            if aspect in ("value", "nominal"):
                found.append(Column(name, aspect, full, group, sub, unit, quantity))
                continue
            word, short = style.words({"class": "tol_class"}.get(aspect, aspect))
            if aspect in ("max", "min"):
                head = f"{full} {word}"
                short = f"{sub} {short}"
            else:
                seat = seat_word(style.language, side)
                head = f"{seat} {word}" if style.language in ("en", "ja", "zh") else f"{word} {seat}"
                head = head[0] + head[1:].replace("Upper", "upper").replace("Lower", "lower")
                head = head.replace(" ", "", 1) if style.language in ("ja", "zh") else head
            own = unit_text(style, "µm") if style.tolerance.endswith("µm") and aspect != "class" else unit
            own_quantity = "deviation µm" if style.tolerance.endswith("µm") else quantity
            found.append(
                Column(
                    name, aspect, style.fits(head), group, style.fits(short), "" if aspect == "class" else own,
                    "" if aspect == "class" else own_quantity,
                )
            )  # fmt: skip
    if style.tolerance == "fit pair" and SEATS[1] in names:
        full, sub = style.words("fit_pair")
        at = 1 + max(k for k, c in enumerate(found) if c.parameter == "housing_seat_diameter")
        found.insert(at, Column("fit_pair", "class", full, style.group("housing"), sub, "", ""))
    return found


class Sheet:
    """Cells of one sheet."""

    def __init__(self, name: str = "") -> None:
        self.name = name
        self.cells: dict[tuple[int, int], tuple[str | float, str]] = {}
        self.merged: list[tuple[int, int, int, int]] = []

    def put(self, row: int, column: int, text: str | float, number_format: str = "") -> str:
        """Write a cell (counted from 1); its address."""
        assert (row, column) not in self.cells, (row, column, text)
        self.cells[row, column] = (text, number_format)
        return f"{get_column_letter(column)}{row}"

    def merge(self, row: int, first: int, last: int) -> None:
        """Merge cells of a row."""
        if last > first:
            self.merged.append((row, first, row, last))


@dataclass
class Book:
    """Sheets and what they state."""

    style: Style
    meaning: Meaning
    sheets: list[Sheet] = field(default_factory=list)
    expected: list[Expected] = field(default_factory=list)

    def state(
        self, key: tuple[int, int, str], value: Value, form: str, own: list[str], heads: list[str], words: list[str],
        verdict: str = "read",
    ) -> None:  # fmt: skip
        """Note down a value that the cells state."""
        quantity = QUANTITIES.get(key[2].split("|")[0], "")
        if verdict == "read" and self.style.unit_place == "none" and quantity in ("length", "form"):
            verdict = "either"
        entry = Expected(*key, value, verdict, form, (*own, *heads), tuple(words), tuple(own))
        self.expected.append(entry)


def number_cell(style: Style, text: str) -> str | float:
    """A cell of a workbook: a number where the text is one."""
    plain = text.replace(style.thousands, "") if style.thousands and style.thousands != style.decimal else text
    plain = plain.replace(style.decimal, ".")
    try:
        return float(plain) if "." in plain else int(plain)
    except ValueError:
        return text


def save(book: Book) -> bytes:
    """The file."""
    style = book.style
    if style.suffix == ".xlsx":
        workbook = Workbook()
        workbook.remove(workbook.active)
        for sheet in book.sheets:
            page = workbook.create_sheet(sheet.name or "Sheet1")
            for (row, column), (text, number_format) in sheet.cells.items():
                cell = page.cell(row, column, number_cell(style, text) if isinstance(text, str) else text)
                if number_format:
                    cell.number_format = number_format
            for top, first, bottom, last in sheet.merged:
                page.merge_cells(start_row=top, start_column=first, end_row=bottom, end_column=last)
            page.cell(1, 1).font = Font(bold=True)
        out = io.BytesIO()
        workbook.save(out)
        return out.getvalue()
    (sheet,) = book.sheets
    height = max(row for row, _ in sheet.cells)
    width = max(column for _, column in sheet.cells)
    lines = io.StringIO()
    mark = "\t" if style.suffix == ".txt" or style.encoding == "utf-16" else (";" if style.decimal == "," else ",")
    writer = csv.writer(lines, delimiter=mark, lineterminator="\r\n")
    for row in range(1, height + 1):
        writer.writerow([str(sheet.cells.get((row, column), ("", ""))[0]) for column in range(1, width + 1)])
    return lines.getvalue().encode(style.encoding)
