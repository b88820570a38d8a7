"""A seeded grammar of tables of bearing seats as different offices export them.

:func:`make` writes down what a table means first (:class:`Meaning`: machines, positions, values), then renders it:
layout, language, units, form of the tolerances, headings, title block, encoding. Every rendered cell knows the values
it carries, so that what a reader makes of the file can be held against what was meant, value by value, and a value
that was not used can be looked for among the cells that the reader names.

Seeds 1 to 60 are the measuring set. Seeds from 1001 are for development. The same seed gives the same bytes.

Expectations. ``read``: an engineer reads the cell so. ``either``: it can be read so, or asked about (no unit is stated
anywhere, deviations such as +6/+1 whose unit follows only from their size, grouped thousands). ``ask``: it cannot be
told what is meant; a value in use is a guess.
"""

import datetime
import io
import json
import random
import re
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from typing import Any

import xlsxwriter

from . import terms

LAYOUTS = (
    "row per station",
    "transposed",
    "row per parameter",
    "groups in two heading rows",
    "blocks per part",
    "row per seat",
    "stacked tables",
    "side by side",
    "inspection list",
    "names with station",
    "json seats",
    "json attributes",
    "json records",
    "melted",
)
TOLERANCES = (
    "class in cell",
    "class column",
    "deviations in cell",
    "deviations in um in cell",
    "deviation columns",
    "deviation columns um",
    "limit columns",
    "plus-minus column",
    "class and deviations um",
    "limits in cell",
    "class and deviations mm",
    "fit pair column",
)
#: Forms that need more than one column.
COLUMNED = (
    "class column",
    "deviation columns",
    "deviation columns um",
    "limit columns",
    "plus-minus column",
    "fit pair column",
)
#: Forms whose cells are text that does not hold the unit of the size.
TEXT_FORMS = (
    "class in cell",
    "deviations in cell",
    "deviations in um in cell",
    "class and deviations um",
    "class and deviations mm",
    "limits in cell",
)
BEARINGS = ("designation", "sizes", "both", "size text")
UNIT_PLACES = ("heading", "row", "title", "cell", "foot", "none", "number format")
NOT_TABLES = ("bill of fasteners", "price list", "measuring log", "contacts")

Key = tuple[int, int, str]  # machine, station (-1: all of the machine), parameter


@dataclass(frozen=True)
class Size:
    """A size in mm: deviations are None where only a class (or nothing) is stated; ``bare``: only limits are stated."""

    nominal: float
    lower: float | None = None
    upper: float | None = None
    tolerance_class: str = ""
    bare: bool = False


Value = float | str | Size


@dataclass(frozen=True)
class Expected:
    """One value that a table states, or a cell that has to be asked about.

    Attributes
    ----------
    machine, station : int
        Index of the machine and of the position in it; station -1 for a value of the whole machine.
    parameter : str
        Name of the vocabulary; several, separated by ``|``, where it cannot be told which is meant (``ask``).
    value : float, str or Size
        In canonical units.
    verdict : str
        ``read``, ``either`` or ``ask``.
    form : str
        How it is written, for the counts.
    cells, words : tuple of str
        Addresses (or JSON Pointers) of its cells and of their headings, and the headings' words.
    own : tuple of str
        The addresses of its own cells, without headings.
    """

    machine: int
    station: int
    parameter: str
    value: Value
    verdict: str
    form: str
    cells: tuple[str, ...]
    words: tuple[str, ...]
    own: tuple[str, ...]


@dataclass(frozen=True)
class Table:
    """A file and what it means.

    ``implied`` holds values that follow from a designation: right where the reader states them marked, wrong where it
    states others. ``kinds`` are the choices of the grammar, for the counts.
    """

    seed: int
    suffix: str
    content: bytes
    machines: tuple[str, ...]
    stations: tuple[tuple[str, ...], ...]
    expected: tuple[Expected, ...]
    implied: dict[Key, Value]
    kinds: dict[str, str]
    is_table: bool = True

    @property
    def name(self) -> str:
        return f"practice-{self.seed:04}"


# ---------------------------------------------------------------- the trade

#: Designation, d, D, B, r_s min in mm (ISO 15, ISO 582), C and C0 in kN (about, from memory of makers' catalogues).
METRIC = (
    ("624", 4, 13, 5, 0.2, 1.3, 0.49), ("625", 5, 16, 5, 0.3, 1.75, 0.67), ("626", 6, 19, 6, 0.3, 2.6, 1.05),
    ("607", 7, 19, 6, 0.3, 2.25, 0.91), ("608", 8, 22, 7, 0.3, 3.3, 1.37), ("609", 9, 24, 7, 0.3, 3.7, 1.7),
    ("6000", 10, 26, 8, 0.3, 4.6, 1.96), ("6001", 12, 28, 8, 0.3, 5.1, 2.37), ("6002", 15, 32, 9, 0.3, 5.6, 2.84),
    ("6003", 17, 35, 10, 0.3, 6.0, 3.25), ("6004", 20, 42, 12, 0.6, 9.4, 5.05), ("6005", 25, 47, 12, 0.6, 10.1, 5.85),
    ("6200", 10, 30, 9, 0.6, 5.1, 2.39), ("6201", 12, 32, 10, 0.6, 6.8, 3.05), ("6202", 15, 35, 11, 0.6, 7.7, 3.75),
    ("6203", 17, 40, 12, 0.6, 9.6, 4.8), ("6204", 20, 47, 14, 1.0, 12.8, 6.6), ("6205", 25, 52, 15, 1.0, 14.0, 7.85),
)  # fmt: skip
#: Inch bearings of the R series in inches (from memory of makers' catalogues).
INCH = (
    ("R4", 0.25, 0.625, 0.196, 0.012, 1.5, 0.6), ("R6", 0.375, 0.875, 0.2812, 0.016, 3.3, 1.4),
    ("R8", 0.5, 1.125, 0.3125, 0.016, 5.1, 2.4), ("R10", 0.625, 1.375, 0.3438, 0.031, 6.0, 3.25),
)  # fmt: skip
#: Lower and upper deviation in um for sizes to 3, 6, 10, 18, 30 mm (shafts), 18, 30, 50, 80 (holes) (ISO 286-1).
SHAFT_STEPS = (3, 6, 10, 18, 30)
SHAFT = {
    "g5": ((-6, -2), (-9, -4), (-11, -5), (-14, -6), (-16, -7)),
    "g6": ((-8, -2), (-12, -4), (-14, -5), (-17, -6), (-20, -7)),
    "h5": ((-4, 0), (-5, 0), (-6, 0), (-8, 0), (-9, 0)),
    "h6": ((-6, 0), (-8, 0), (-9, 0), (-11, 0), (-13, 0)),
    "js6": ((-3, 3), (-4, 4), (-4.5, 4.5), (-5.5, 5.5), (-6.5, 6.5)),
    "j5": ((-2, 2), (-2, 3), (-2, 4), (-3, 5), (-4, 5)),
    "j6": ((-2, 4), (-2, 6), (-2, 7), (-3, 8), (-4, 9)),
    "k5": ((0, 4), (1, 6), (1, 7), (1, 9), (2, 11)),
    "k6": ((0, 6), (1, 9), (1, 10), (1, 12), (2, 15)),
    "m5": ((2, 6), (4, 9), (6, 12), (7, 15), (8, 17)),
    "m6": ((2, 8), (4, 12), (6, 15), (7, 18), (8, 21)),
}
HOUSING_STEPS = (18, 30, 50, 80)
HOUSING = {
    "G6": ((6, 17), (7, 20), (9, 25), (10, 29)),
    "G7": ((6, 24), (7, 28), (9, 34), (10, 40)),
    "H6": ((0, 11), (0, 13), (0, 16), (0, 19)),
    "H7": ((0, 18), (0, 21), (0, 25), (0, 30)),
    "J6": ((-5, 6), (-5, 8), (-6, 10), (-6, 13)),
    "JS6": ((-5.5, 5.5), (-6.5, 6.5), (-8, 8), (-9.5, 9.5)),
    "K6": ((-9, 2), (-11, 2), (-13, 3), (-15, 4)),
    "M7": ((-18, 0), (-21, 0), (-25, 0), (-30, 0)),
}


def deviations(tolerance_class: str, nominal: float) -> tuple[float, float]:
    """Lower and upper deviation in mm of a class at a size."""
    steps, table = (SHAFT_STEPS, SHAFT) if tolerance_class in SHAFT else (HOUSING_STEPS, HOUSING)
    lower, upper = table[tolerance_class][next(k for k, step in enumerate(steps) if nominal <= step)]
    return lower / 1000, upper / 1000


# ---------------------------------------------------------------- the meaning

SIDE_FEATURES = ("roughness", "cylindricity", "runout", "shoulder_diameter", "shoulder_runout", "fillet_radius")
VOCABULARY = {
    **{f: "{side}_seat_" + f for f in ("roughness", "cylindricity", "runout")},
    **{f: "{side}_" + f for f in ("shoulder_diameter", "shoulder_runout", "fillet_radius")},
    "seat": "{side}_seat_diameter",
}
QUANTITY = {
    "bore_diameter": "length", "outside_diameter": "length", "ring_width": "length", "ring_chamfer": "length",
    "shoulder_diameter": "length", "fillet_radius": "length", "bearing_span": "length", "roughness": "rough",
    "cylindricity": "form", "runout": "form", "shoulder_runout": "form", "speed_max": "speed", "required_life": "life",
    "rotor_mass": "mass", "radial_load": "load", "axial_load": "load", "dynamic_rating": "rating",
    "static_rating": "rating",
}  # fmt: skip
#: Rounding of a shown number by unit.
DECIMALS = {"mm": 4, "um": 1, "in": 4, "uin": 0, "rpm": 0, "N": 0, "kN": 2, "lbf": 1, "h": 0, "kg": 2, "lb": 2}
#: One unit in canonical units (mm, um for roughness, r/min, N, h, kg).
FACTOR = {
    ("length", "mm"): 1.0, ("length", "in"): 25.4, ("form", "mm"): 1.0, ("form", "um"): 0.001, ("form", "in"): 25.4,
    ("rough", "um"): 1.0, ("rough", "uin"): 0.0254, ("speed", "rpm"): 1.0, ("life", "h"): 1.0, ("mass", "kg"): 1.0,
    ("mass", "lb"): 0.45359237, ("load", "N"): 1.0, ("load", "kN"): 1000.0, ("load", "lbf"): 4.4482216152605,
    ("rating", "N"): 1.0, ("rating", "kN"): 1000.0, ("rating", "lbf"): 4.4482216152605,
}  # fmt: skip


@dataclass
class Meaning:
    """What the table says, before anything is rendered; numbers in the units they will be shown in."""

    machines: list[str]
    stations: list[list[str]]
    shown: dict[Key, Value] = field(default_factory=dict)
    implied: dict[Key, Value] = field(default_factory=dict)


def _unit_system(rng: random.Random, inch: bool) -> dict[str, str]:
    if inch:
        return {
            "length": "in", "form": "in", "rough": "uin", "speed": "rpm", "life": "h", "mass": "lb", "load": "lbf",
            "rating": "lbf",
        }  # fmt: skip
    return {
        "length": "mm", "form": rng.choice(["mm", "um"]), "rough": "um", "speed": "rpm", "life": "h", "mass": "kg",
        "load": "N", "rating": rng.choice(["N", "kN"]),
    }  # fmt: skip


def _round(value: float, places: int) -> float:
    return float(round(value, places))


def _mean(rng: random.Random, language: str, units: dict[str, str], machines: int, stations: int, form: str) -> Meaning:
    """Physically sensible values: seats of the bearing's own sizes, tolerances of common classes, loads below C."""
    inch = units["length"] == "in"
    names = list(terms.MACHINES[language])
    rng.shuffle(names)
    pair = rng.choice(terms.STATIONS[language])
    meaning = Meaning(names[:machines], [list(pair[:stations])] * machines)
    scale = 25.4 if inch else 1.0

    for m in range(machines):
        row = rng.choice(INCH if inch else METRIC)
        for key, value in (
            ("speed_max", float(rng.choice([1450, 2900, 6000, 8500, 12000, 18000]))),
            ("required_life", float(rng.choice([5000, 8000, 20000]))),
            ("rotor_mass", rng.choice([0.35, 0.8, 1.25, 2.4])),
            ("bearing_span", rng.choice([1.75, 2.5, 3.125]) if inch else float(rng.choice([42, 58, 75, 96.5]))),
            ("shaft_material", rng.choice(["steel", "stainless steel"])),
            ("housing_material", rng.choice(["aluminium", "cast iron"])),
            ("drawing_number", f"{rng.choice(['SB', 'DW', 'P'])}-{rng.randint(1000, 9999)}"),
            ("drawing_revision", rng.choice("ABCD")),
            ("lubrication", rng.choice(["grease", "grease", "oil bath"])),
        ):
            meaning.shown[m, -1, key] = value
        shaft_class = rng.choice(["js6"] if form == "plus-minus column" else ["g6", "h5", "h6", "j5", "k5", "k6", "m5"])
        housing_class = rng.choice(["JS6"] if form == "plus-minus column" else ["H6", "H7", "J6", "G7", "K6"])
        suffix = rng.choice(["", "-2Z", "-2RS", "-2Z/C3", "/C3"]) if not inch else ""
        own_class = rng.choice(["P5", "P6", "Normal"])
        for s in range(stations):
            if s and rng.random() < 0.3:
                row = rng.choice(INCH if inch else METRIC)
            name, d, big, width, chamfer, c, c0 = row
            say: dict[str, Value] = {
                "bearing_designation": name + suffix, "bore_diameter": float(d), "outside_diameter": float(big),
                "ring_width": float(width), "ring_chamfer": float(chamfer), "tolerance_class": own_class,
                "clearance_class": "C3" if "C3" in suffix else "CN",
                "axial_role": ("locating", "floating")[s % 2],
            }  # fmt: skip
            load = rng.choice([0.01, 0.02, 0.04])
            in_unit = FACTOR["rating", units["rating"]]
            places = {"N": -1, "kN": 2, "lbf": 0}[units["rating"]]
            numbers = {
                "dynamic_rating": _round(c * 1000 / in_unit, places),
                "static_rating": _round(c0 * 1000 / in_unit, places),
                "radial_load": _round(c * 1000 * load / FACTOR["load", units["load"]], 0),
                "axial_load": _round(c * 1000 * load / 3 / FACTOR["load", units["load"]], 0),
            }
            for side, size, cls in (("shaft", d, shaft_class), ("housing", big, housing_class)):
                low, up = (value / scale for value in deviations(cls, size * scale))
                if inch:
                    low, up = _round(low, 4), _round(up, 4)
                numbers[f"{side}_seat"] = 0.0
                say[f"{side}_seat"] = Size(float(size), low, up, cls)
                grade = (0.0001 if side == "shaft" else 0.0002) if inch else (0.002 if side == "shaft" else 0.003)
                for feature, factor in (("cylindricity", 1), ("runout", 2), ("shoulder_runout", 2)):
                    value = grade * factor
                    numbers[f"{side}_{feature}"] = value * 1000 if units["form"] == "um" else value
                rough = rng.choice([0.4, 0.8]) if side == "shaft" else rng.choice([0.8, 1.6])
                numbers[f"{side}_roughness"] = float(round(rough * 40)) if inch else rough
                height = 3.4 * chamfer if d * scale < 10 else 2.2 * chamfer + 0.06 * (big - d)
                step = 0.01 if inch else 0.1
                shoulder = d + 2 * height if side == "shaft" else big - 2 * height
                numbers[f"{side}_shoulder_diameter"] = _round(round(shoulder / step) * step, 3)
                numbers[f"{side}_fillet_radius"] = _round(chamfer * (0.75 if inch else 2 / 3), 3 if inch else 1)
            stated: dict[str, Value] = {**numbers, **say}
            meaning.shown.update({(m, s, key): amount for key, amount in stated.items()})
    return meaning


# ---------------------------------------------------------------- the page


@dataclass(frozen=True)
class Cell:
    """Text or a number with its number format; ``keys`` are the values it carries, ``head`` says it is a heading."""

    value: str | float = ""
    keys: tuple[Key, ...] = ()
    head: bool = False
    number_format: str = ""
    merge: int = 0  # further columns that this cell is merged over


EMPTY = Cell()
Grid = list[list[Cell]]


@dataclass
class Column:
    """One column of values: words of its heading, its unit, and the text of each cell."""

    parts: tuple[str, ...]  # parameters it carries
    words: str
    bare: str
    group: str  # shaft, housing, bearing, machine, frame
    unit: str
    render: Callable[[int, int], Cell]
    form: str = ""


@dataclass
class Page:
    """The choices of one table."""

    rng: random.Random
    language: str
    units: dict[str, str]
    comma: bool
    spreadsheet: bool
    unit_place: str
    tolerance: str
    brackets: str
    meaning: Meaning
    verdicts: dict[Key, str] = field(default_factory=dict)
    forms: dict[Key, str] = field(default_factory=dict)
    unit_words: dict[str, str] = field(default_factory=dict)
    values: dict[Key, Value] = field(default_factory=dict)  # canonical, of what is rendered
    fixed: bool = False  # lengths with all their decimals: 8.000
    upper: bool = False  # headings in capitals
    grouped: bool = False  # thousands of a speed are grouped
    alone: bool = False  # every name has to say its part itself, as no column stands beside another

    def pick(self, words: list[str]) -> str:
        return self.rng.choice(words)

    def unit_word(self, unit: str) -> str:
        if unit and unit not in self.unit_words:
            known = terms.UNITS[unit]
            self.unit_words[unit] = self.pick(known.get(self.language, known[""]))
        return self.unit_words.get(unit, "")

    def number(self, value: float, unit: str = "", signed: bool = False) -> str:
        text = f"{value:.{DECIMALS.get(unit, 3)}f}"
        if self.fixed and unit in ("mm", "in"):
            text = text[:-1] if unit == "mm" and text.endswith("0") else text
        elif "." in text:
            text = text.rstrip("0").rstrip(".")
        if float(text) == 0:
            text = "0" if not self.fixed else text.lstrip("-")
        elif signed and value > 0:
            text = "+" + text
        text = text.replace(".", ",") if self.comma else text
        if unit == "rpm" and self.grouped and value >= 10000:
            mark = "." if self.comma and self.language not in ("fr", "ru") else "," if self.language == "en" else " "
            text = f"{text[:-3]}{mark}{text[-3:]}"
        return text

    def heading(self, words: str, unit: str) -> str:
        if self.upper and not re.search(r"(?<!\w)(?:Ra|L10h|[A-Za-z]\d?|[A-Z][a-z]|rs|[A-Za-z]_\w+)(?!\w)", words):
            words = words.upper()
        shown = self.unit_word(unit)
        stays = self.unit_place == "heading" or (self.unit_place in ("title", "foot") and unit not in ("mm", "in"))
        return words + self.brackets.format(shown) if shown and stays else words


def _word(rng: random.Random, language: str, side: str, feature: str) -> str:
    template = rng.choice(terms.FEATURES[language][feature])
    text = template.format(**terms.PARTS[language][side])
    return text[:1].upper() + text[1:]


def _spelt_choice(page: Page, parameter: str, value: str) -> str:
    by_language = terms.CHOICES[parameter][value]
    return page.pick([*by_language.get("", []), *by_language.get(page.language, [])])


def _canonical(page: Page, feature: str, value: Value) -> Value:
    if isinstance(value, str) or feature not in QUANTITY:
        return value
    if isinstance(value, Size):
        return value
    kind = QUANTITY[feature]
    return value * FACTOR[kind, page.units[kind]]


def _pattern(value: float) -> str:
    """Number format that shows all of a value: none, or one, three or four decimals."""
    places = next((n for n in (0, 1, 3) if abs(value - round(value, n)) < 1e-9), 4)
    return "0." + "0" * places if places else "0"


def _with_unit(page: Page, text: str, unit: str) -> str:
    return f"{text} {page.unit_word(unit)}" if page.unit_place == "cell" and unit else text


def _value_column(page: Page, key: str, feature: str, side: str, name: str) -> Column:
    """A column of one plain parameter; ``key`` is its key in the meaning, ``name`` its name in the vocabulary."""
    unit = page.units[QUANTITY[feature]] if feature in QUANTITY else ""
    if side in terms.SIDES:
        words, bare = _word(page.rng, page.language, side, feature), page.pick(terms.BARE[page.language][feature])
    else:
        words = page.pick(terms.PLAIN[page.language][name])
        bare = words
    spelt: dict[str, str] = {}

    def render(m: int, s: int) -> Cell:
        where = (m, s) if (m, s, key) in page.meaning.shown else (m, -1)
        value = page.meaning.shown[*where, key]
        full = (*where, name)
        page.values[full] = _canonical(page, feature, value)
        page.forms[full] = "number" if not isinstance(value, str) else "word" if name in terms.CHOICES else "text"
        if unit and page.unit_place == "none":
            page.verdicts[full] = "either"
        if unit == "rpm" and page.grouped:
            page.verdicts[full] = "either"
        if isinstance(value, str):
            if name in terms.CHOICES:
                value = spelt.setdefault(value, _spelt_choice(page, name, value))
            return Cell(value, (full,))
        assert not isinstance(value, Size)
        if page.spreadsheet and page.unit_place != "cell":
            pattern = _pattern(value)
            if page.unit_place == "number format" and unit:
                pattern += f'" {page.unit_word(unit)}"'
            return Cell(value, (full,), number_format=pattern)
        return Cell(_with_unit(page, page.number(value, unit), unit), (full,))

    group = side if side in terms.SIDES else "machine" if (0, -1, key) in page.meaning.shown else "bearing"
    if name == "axial_role":
        group = "frame"
    return Column((name,), words, bare, group, unit, render)


def _seat_columns(page: Page, side: str, form: str) -> list[Column]:
    """The columns of a seat diameter in one form of the tolerance."""
    language, rng = page.language, page.rng
    name, unit = f"{side}_seat_diameter", page.units["length"]
    scale = FACTOR["length", unit]
    small = "um" if unit == "mm" else "in"
    words, bare = page.pick(terms.SEATS[language][side]), page.pick(terms.BARE[language]["seat"])

    def own(feature: str) -> tuple[str, str]:
        short = page.pick(terms.BARE[language][feature])
        return _word(rng, language, side, feature), f"Ø {short}" if feature in ("max", "min") else short

    diameter = rng.choice(["", "", "Ø", "⌀"]) if form in ("class in cell", "deviations in cell") else ""

    def stated(m: int, s: int) -> Size:
        """What is written, as it will be expected: in mm, without what the form does not say."""
        size = page.meaning.shown[m, s, f"{side}_seat"]
        assert isinstance(size, Size)
        in_mm = Size(size.nominal * scale, (size.lower or 0) * scale, (size.upper or 0) * scale, size.tolerance_class)
        if form in ("class in cell", "class column", "fit pair column"):
            in_mm = replace(in_mm, lower=None, upper=None)
        elif form not in ("class and deviations um", "class and deviations mm"):
            in_mm = replace(in_mm, tolerance_class="", bare=form in ("limit columns", "limits in cell"))
        full = (m, s, name)
        page.values[full] = in_mm
        page.forms[full] = form
        bare_text = form in TEXT_FORMS and page.unit_place in ("cell", "number format")
        if page.unit_place == "none" or bare_text or form == "deviations in um in cell":
            page.verdicts[full] = "either"
        return size

    def text(m: int, s: int, write: Callable[[Size], str], with_unit: str = unit) -> Cell:
        return Cell(diameter + _with_unit(page, write(stated(m, s)), with_unit), ((m, s, name),))

    def plain(m: int, s: int, value: Callable[[Size], float], shown: str, factor: float, signed: bool) -> Cell:
        amount = value(stated(m, s)) * factor
        if page.spreadsheet and page.unit_place != "cell":
            pattern = _pattern(amount)
            if signed:
                pattern = f"+{pattern};-{pattern};0"
            return Cell(round(amount, 6), ((m, s, name),), number_format=pattern)
        return Cell(_with_unit(page, page.number(amount, shown, signed), shown), ((m, s, name),))

    n = page.number
    if form == "class in cell":
        return [
            Column(
                (name,),
                words,
                bare,
                side,
                unit,
                lambda m, s: text(m, s, lambda z: f"{n(z.nominal, unit)} {z.tolerance_class}", ""),
            )
        ]
    if form == "class and deviations um":
        gap = rng.choice([" ({}/{})", " {}/{} µm"])

        def both(z: Size) -> str:
            up, low = (n((v or 0) * scale * 1000, "um", signed=True) for v in (z.upper, z.lower))
            return f"{n(z.nominal, unit)} {z.tolerance_class}{gap.format(up, low)}"

        return [Column((name,), words, bare, side, unit, lambda m, s: text(m, s, both, ""))]
    if form in ("deviations in cell", "deviations in um in cell", "class and deviations mm"):
        style = rng.choice([" {}/{}", " ({}/{})", " {} / {}"])
        micro = form == "deviations in um in cell"

        def write(z: Size) -> str:
            factor, shown = (scale * 1000, "um") if micro else (1, unit)
            up, low = (n((v or 0) * factor, shown, signed=True) for v in (z.upper, z.lower))
            middle = f" {z.tolerance_class}" if form == "class and deviations mm" else ""
            return f"{n(z.nominal, unit)}{middle}{style.format(up, low)}"

        return [Column((name,), words, bare, side, unit, lambda m, s: text(m, s, write, ""))]
    if form == "limits in cell":
        dash = rng.choice(["-", " - ", "–", "...", " / "])

        def limits(z: Size) -> str:
            low, up = (f"{z.nominal + (v or 0):.{4 if unit == 'in' else 3}f}" for v in (z.lower, z.upper))
            low, up = (v.replace(".", ",") if page.comma else v for v in (low, up))
            return f"{up}{dash}{low}" if dash == " / " else f"{low}{dash}{up}"

        return [Column((name,), words, bare, side, unit, lambda m, s: text(m, s, limits))]

    def nominal(m: int, s: int) -> Cell:
        return plain(m, s, lambda z: z.nominal, unit, 1, False)

    first = Column((name,), words, bare, side, unit, nominal)
    if form in ("class column", "fit pair column"):
        return [
            first,
            Column((name,), *own("class"), side, "", lambda m, s: text(m, s, lambda z: z.tolerance_class, "")),
        ]
    if form in ("deviation columns", "deviation columns um"):
        shown, factor = (small, scale * 1000 if small == "um" else 1) if form.endswith("um") else (unit, 1)
        heads = [own("upper"), own("lower")]
        if not page.alone and rng.random() < 0.3:  # the short words alone: they belong to the column before them
            heads = [(terms.BARE[language][k][0],) * 2 for k in ("upper", "lower")]
        elif not page.alone and rng.random() < 0.2:
            heads = [("es",) * 2, ("ei",) * 2] if side == "shaft" else [("ES",) * 2, ("EI",) * 2]
        return [
            first,
            Column(
                (name,), *heads[0], side, shown, lambda m, s: plain(m, s, lambda z: z.upper or 0, shown, factor, True)
            ),
            Column(
                (name,), *heads[1], side, shown, lambda m, s: plain(m, s, lambda z: z.lower or 0, shown, factor, True)
            ),
        ]
    if form == "limit columns":
        return [
            Column(
                (name,),
                *own("max"),
                side,
                unit,
                lambda m, s: plain(m, s, lambda z: z.nominal + (z.upper or 0), unit, 1, False),
            ),
            Column(
                (name,),
                *own("min"),
                side,
                unit,
                lambda m, s: plain(m, s, lambda z: z.nominal + (z.lower or 0), unit, 1, False),
            ),
        ]
    if form == "plus-minus column":
        return [
            first,
            Column((name,), *own("pm"), side, unit, lambda m, s: plain(m, s, lambda z: z.upper or 0, unit, 1, False)),
        ]
    raise ValueError(form)


def _bearing_columns(page: Page, form: str) -> list[Column]:
    columns = []
    if form in ("designation", "both"):
        columns.append(_value_column(page, "bearing_designation", "", "", "bearing_designation"))
    sizes = ("bore_diameter", "outside_diameter", "ring_width")
    if form in ("sizes", "both"):
        columns += [_value_column(page, name, name, "", name) for name in sizes]
    if form == "size text":
        unit = page.units["length"]
        mark = page.rng.choice(["x", "×", " x ", "*"])

        def render(m: int, s: int) -> Cell:
            keys = []
            numbers = []
            for name in sizes:
                value = page.meaning.shown[m, s, name]
                assert isinstance(value, float)
                keys.append((m, s, name))
                page.values[keys[-1]] = value * FACTOR["length", unit]
                page.forms[keys[-1]] = "d x D x B in one cell"
                if page.unit_place in ("none", "number format"):
                    page.verdicts[keys[-1]] = "either"
                numbers.append(page.number(value, unit))
            return Cell(_with_unit(page, mark.join(numbers), unit), tuple(keys))

        words = page.pick(terms.PLAIN[page.language]["SIZE"])
        columns.append(Column(sizes, words, words, "bearing", unit, render))
    return columns


def _pair_column(page: Page) -> Column:
    """One column with the classes of both seats, shaft first as its heading says."""
    heads = {
        "en": "Fits shaft / housing", "de": "Passung Welle / Gehäuse", "fr": "Ajustements arbre / logement",
        "es": "Ajustes eje / alojamiento", "it": "Accoppiamenti albero / alloggiamento", "ja": "はめあい 軸/ハウジング",
        "zh": "配合 轴/座孔", "ru": "Поля допусков вала / корпуса",
    }  # fmt: skip

    def render(m: int, s: int) -> Cell:
        classes = [page.meaning.shown[m, s, f"{side}_seat"] for side in terms.SIDES]
        text = " / ".join(c.tolerance_class for c in classes if isinstance(c, Size))
        return Cell(text, tuple((m, s, f"{side}_seat_diameter") for side in terms.SIDES))

    words = heads[page.language]
    return Column(("shaft_seat_diameter", "housing_seat_diameter"), words, words, "frame", "", render)


def _partless_column(page: Page, feature: str) -> Column:
    """A feature of a seat without a word of which seat: it has to be asked about."""
    words = page.pick(terms.BARE[page.language][feature])
    unit = page.units[QUANTITY[feature]]
    name = "|".join(VOCABULARY[feature].format(side=side) for side in terms.SIDES)

    def render(m: int, s: int) -> Cell:
        value = page.meaning.shown[m, s, f"shaft_{feature}"]
        assert isinstance(value, float)
        if page.spreadsheet and page.unit_place != "cell":
            cell = Cell(value, ((m, s, name),), number_format=_pattern(value))
        else:
            cell = Cell(_with_unit(page, page.number(value, unit), unit), ((m, s, name),))
        key = (m, s, name)
        page.values[key] = value * FACTOR[QUANTITY[feature], unit]
        page.verdicts[key], page.forms[key] = "ask", "feature without its part"
        return cell

    return Column((name,), words, words, "frame", unit, render)


def _columns(page: Page, bearing: str, pairs_allowed: bool, asks: bool) -> list[Column]:
    """All columns of the table, in the order of the groups shaft, housing, bearing, frame, machine."""
    rng = page.rng
    columns: list[Column] = []
    features = rng.sample(SIDE_FEATURES, rng.randint(1, 3 if asks else 4))
    if asks:
        features = [f for f in features if f != "fillet_radius"]
    for side in terms.SIDES:
        seats = _seat_columns(page, side, page.tolerance)
        if page.tolerance == "fit pair column" and pairs_allowed:
            seats = seats[:1]
        columns += seats
        columns += [
            _value_column(page, f"{side}_{f}", f, side, VOCABULARY[f].format(side=side))
            for f in SIDE_FEATURES
            if f in features
        ]
    if page.tolerance == "fit pair column" and pairs_allowed:
        columns.append(_pair_column(page))
    if asks:
        columns.append(
            _partless_column(page, rng.choice([f for f in SIDE_FEATURES[:3] if f not in features] or ["fillet_radius"]))
        )
    columns += _bearing_columns(page, bearing)
    for name in (
        "ring_chamfer",
        "tolerance_class",
        "clearance_class",
        "dynamic_rating",
        "static_rating",
        "radial_load",
        "axial_load",
        "axial_role",
    ):
        if rng.random() < 0.3:
            columns.append(_value_column(page, name, name, "", name))
    return columns


def _machine_columns(page: Page) -> list[Column]:
    names = (
        "speed_max",
        "required_life",
        "rotor_mass",
        "bearing_span",
        "shaft_material",
        "housing_material",
        "lubrication",
    )
    chosen = [name for name in names if page.rng.random() < 0.35]
    return [_value_column(page, name, name, "", name) for name in chosen]


# ---------------------------------------------------------------- layouts of cells


def _once(column: Column) -> bool:
    """Whether a value of the machine may stand at its first position only; lubrication is one of each position."""
    return column.group == "machine" and column.parts != ("lubrication",)


def _head(column: Column, text: str, keys: list[Key]) -> Cell:
    return Cell(text, tuple(keys), head=True)


def _frame(page: Page, word: str) -> Cell:
    keys: list[Key] = []
    if word == "machine":
        keys = [(m, -1, word) for m in range(len(page.meaning.machines))]
    elif word == "station":
        keys = [(m, s, word) for m, s in _stations(page)]
    return Cell(page.pick(terms.PLAIN[page.language][word]), tuple(keys), head=True)


def _stations(page: Page) -> list[tuple[int, int]]:
    return [(m, s) for m, names in enumerate(page.meaning.stations) for s in range(len(names))]


def _station_cell(page: Page, m: int, s: int) -> Cell:
    key = (m, s, "station")
    page.values[key] = page.meaning.stations[m][s]
    page.forms[key] = "name of station"
    return Cell(page.meaning.stations[m][s], (key,))


def _machine_cell(page: Page, m: int) -> Cell:
    key = (m, -1, "machine")
    page.values[key] = page.meaning.machines[m]
    page.forms[key] = "name of machine"
    return Cell(page.meaning.machines[m], (key,))


def _wide(
    page: Page, columns: list[Column], machine_column: bool, groups: bool = False, numbers: bool | None = None
) -> Grid:
    """One row per station; with ``groups`` a row of group headings (merged in a workbook) above the bare words."""
    rng = page.rng
    rows = _stations(page)
    station = _frame(page, "station")
    machine = _frame(page, "machine") if machine_column else None
    number = _frame(page, "NUMBER") if (rng.random() < 0.4 if numbers is None else numbers) else None
    remark = _frame(page, "REMARK") if rng.random() < 0.25 else None
    left = [cell for cell in (number, machine, station) if cell is not None]
    heads, above, units = list(left), [EMPTY] * len(left), [EMPTY] * len(left)
    body: Grid = []
    for index, (m, s) in enumerate(rows):
        line = (
            [Cell(float(index + 1), number_format="0") if page.spreadsheet else Cell(str(index + 1))] if number else []
        )
        if machine:
            line.append(_machine_cell(page, m))
        body.append([*line, _station_cell(page, m, s)])
    last = ""
    group_words = {side: terms.PARTS[page.language][side]["g"] for side in terms.SIDES} | {
        "bearing": terms.BEARING[page.language]
    }
    for at, column in enumerate(columns):
        cells = [column.render(m, s) for m, s in rows]
        keys = [key for cell in cells for key in cell.keys]
        for line, cell, (_, s) in zip(body, cells, rows, strict=True):
            line.append(EMPTY if _once(column) and s and rng.random() < 0.5 else cell)
        grouped = groups and column.group in group_words
        heads.append(_head(column, page.heading(column.bare if grouped else column.words, column.unit), keys))
        units.append(
            _head(column, page.brackets.strip(" ,/").format(page.unit_word(column.unit)) if column.unit else "", keys)
        )
        if grouped and column.group != last:
            width = 1
            while at + width < len(columns) and columns[at + width].group == column.group:
                width += 1
            above.append(Cell(group_words[column.group], tuple(keys), head=True, merge=width - 1))
        else:
            above.append(EMPTY)
        last = column.group
    if remark:
        heads.append(remark)
        above.append(EMPTY)
        units.append(EMPTY)
        for line in body:
            line.append(Cell(page.pick(terms.REMARKS[page.language])))
    grid = [heads, *body]
    if page.unit_place == "row":
        grid.insert(1, units)
    if groups:
        grid.insert(0, above)
    return grid


def _transposed(page: Page, columns: list[Column], bare: bool = False, top: bool = True) -> Grid:
    """Parameters down, stations across; a column of units where the units stand in a row of their own."""
    rows = _stations(page)
    unit_column = page.unit_place == "row"
    head = [
        _frame(page, "NAME"),
        *([_frame(page, "UNIT")] if unit_column else []),
        *(_station_cell(page, m, s) for m, s in rows),
    ]
    grid = [head] if top else []
    for column in columns:
        cells = [column.render(m, s) for m, s in rows]
        keys = [key for cell in cells for key in cell.keys]
        if _once(column) and len(page.meaning.machines) == 1 and page.rng.random() < 0.4:
            cells = [cells[0], *[EMPTY] * (len(cells) - 1)]
        words = page.heading(column.bare if bare else column.words, column.unit)
        unit = [Cell(page.unit_word(column.unit), tuple(keys), head=True)] if unit_column else []
        grid.append([_head(column, words, keys), *unit, *cells])
    return grid


def _blocks(page: Page, columns: list[Column]) -> Grid:
    """Transposed, in blocks with the part as a heading row and the bare words under it."""
    grid = _transposed(page, [c for c in columns if c.group in ("machine", "frame")])
    words = {side: terms.PARTS[page.language][side]["g"] for side in terms.SIDES} | {
        "bearing": terms.BEARING[page.language]
    }
    space = page.rng.random() < 0.5
    for group, word in words.items():
        own = [c for c in columns if c.group == group]
        if not own:
            continue
        below = _transposed(page, own, bare=True, top=False)
        keys = tuple(key for line in below for cell in line for key in cell.keys)
        grid += [[EMPTY]] if space else []
        grid += [[Cell(word, keys, head=True)], *below]
    return grid


def _long(page: Page, columns: list[Column], machine_column: bool) -> Grid:
    """One row per parameter and station."""
    rng = page.rng
    unit_column = page.unit_place in ("row", "heading")
    number = rng.random() < 0.4
    head = [_frame(page, "NUMBER")] if number else []
    head += [_frame(page, "machine")] if machine_column else []
    head += [_frame(page, "station"), _frame(page, "NAME"), _frame(page, "VALUE")]
    head += [_frame(page, "UNIT")] if unit_column else []
    grid = [head]
    by_station = rng.random() < 0.5
    pairs = (
        [(where, c) for where in _stations(page) for c in columns]
        if by_station
        else [(where, c) for c in columns for where in _stations(page)]
    )
    blank_rows = by_station and rng.random() < 0.3
    before = (0, 0)
    for (m, s), column in pairs:
        if column.group == "machine" and s:
            continue
        cell = column.render(m, s)
        if blank_rows and (m, s) != before:
            grid.append([EMPTY])
        before = (m, s)
        line = [Cell(str(len(grid)))] if number else []
        line += [_machine_cell(page, m)] if machine_column else []
        line += [EMPTY if column.group == "machine" else _station_cell(page, m, s)]
        line += [_head(column, column.words, list(cell.keys)), cell]
        line += [Cell(page.unit_word(column.unit), cell.keys, head=True)] if unit_column else []
        grid.append(line)
    return grid


def _inspection(page: Page, columns: list[Column]) -> Grid:
    """Characteristics with nominal, upper and lower deviation, class and unit in columns of their own."""
    language = page.language
    micro = page.tolerance in ("deviation columns um", "class and deviations um") and page.units["length"] == "mm"
    bare = page.rng.random() < 0.5  # the part has a column of its own
    words = [terms.BARE[language][k][0] for k in ("upper", "lower", "class")]
    deviation = page.unit_word("um" if micro else page.units["length"])
    head = [
        _frame(page, "NUMBER"),
        *([_frame(page, "PART")] if bare else []),
        _frame(page, "NAME"),
        _frame(page, "station"),
    ]
    head += [_frame(page, "NOMINAL"), *(Cell(f"{w} [{deviation}]", head=True) for w in words[:2])]
    head += [Cell(words[2], head=True), _frame(page, "UNIT")]
    grid = [head]
    scale = FACTOR["length", page.units["length"]]
    parts = {side: terms.PARTS[language][side]["g"] for side in terms.SIDES} | {"bearing": terms.BEARING[language]}
    done: set[str] = set()
    seat_words = {side: page.pick(terms.SEATS[language][side]) for side in terms.SIDES}
    for column in columns:
        name = column.parts[0]
        if name.endswith("_seat_diameter"):
            if name in done or column.group == "frame":
                continue
            done.add(name)
        for m, s in _stations(page):
            if column.group == "machine" and s:
                continue
            cell = column.render(m, s)
            line = [Cell(str(len(grid)))]
            line += [Cell(parts.get(column.group, ""), cell.keys, head=True)] if bare else []
            own = column.bare if bare and column.group in terms.SIDES else column.words
            line += [
                _head(column, own, list(cell.keys)),
                EMPTY if column.group == "machine" else _station_cell(page, m, s),
            ]
            if name.endswith("_seat_diameter"):
                line[-2] = _head(
                    column, terms.BARE[language]["seat"][0] if bare else seat_words[column.group], list(cell.keys)
                )
                size = page.meaning.shown[m, s, f"{column.group}_seat"]
                assert isinstance(size, Size)
                key = (m, s, name)
                factor = scale * 1000 if micro else 1.0
                shown = "um" if micro else page.units["length"]
                with_class = page.tolerance in ("class in cell", "class column", "fit pair column")
                both = page.tolerance.startswith("class and")
                up, low = (page.number((v or 0) * factor, shown, signed=True) for v in (size.upper, size.lower))
                page.values[key] = Size(
                    size.nominal * scale,
                    None if with_class else (size.lower or 0) * scale,
                    None if with_class else (size.upper or 0) * scale,
                    size.tolerance_class if with_class or both else "",
                )
                page.verdicts.pop(key, None)
                page.forms[key] = (
                    "list: class" if with_class else "list: class and deviations" if both else "list: deviations"
                )
                nominal = page.number(size.nominal, page.units["length"])
                texts = [
                    nominal,
                    "" if with_class else up,
                    "" if with_class else low,
                    size.tolerance_class if with_class or both else "",
                ]
                line += [Cell(text, (key,)) if text else EMPTY for text in texts]
            else:
                line += [cell, EMPTY, EMPTY, EMPTY]
            line.append(Cell(page.unit_word(column.unit), cell.keys, head=True) if column.unit else EMPTY)
            for key in cell.keys:
                page.verdicts.pop(key, None)
            grid.append(line)
    return grid


def _per_seat(page: Page, columns: list[Column]) -> Grid:
    """A list of parts: one row per seat, its features in columns that serve both sides."""
    language = page.language
    shaft = [c for c in columns if c.group == "shaft"]
    housing = [c for c in columns if c.group == "housing"]
    head = [_frame(page, "NUMBER"), _frame(page, "PART"), _frame(page, "station")]
    keys: list[list[Key]] = [[] for _ in shaft]
    body: Grid = []
    for m, s in _stations(page):
        for side, own in zip(terms.SIDES, (shaft, housing), strict=True):
            cells = [c.render(m, s) for c in own]
            for mine, cell in zip(keys, cells, strict=True):
                mine += cell.keys
            word = Cell(terms.PARTS[language][side]["g"], tuple(k for c in cells for k in c.keys), head=True)
            body.append([Cell(str(len(body) + 1)), word, _station_cell(page, m, s), *cells])
    bearing = next((c for c in columns if c.parts == ("bearing_designation",)), None)
    head += [_head(c, page.heading(c.bare, c.unit), own) for c, own in zip(shaft, keys, strict=True)]
    if bearing:
        designations = [(m, s, bearing.render(m, s)) for m, s in _stations(page)]
        head.append(_head(bearing, bearing.words, [k for *_, cell in designations for k in cell.keys]))
        for m, s, cell in designations:
            word = Cell(terms.BEARING[language], cell.keys, head=True)
            body.append([Cell(str(len(body) + 1)), word, _station_cell(page, m, s), *[EMPTY] * len(shaft), cell])
    units = [EMPTY] * 3 + [
        _head(c, f"[{page.unit_word(c.unit)}]" if c.unit else "", own) for c, own in zip(shaft, keys, strict=True)
    ]
    return [head, *([units] if page.unit_place == "row" else []), *body]


def _named(page: Page, columns: list[Column]) -> Grid:
    """A list of CAD parameters whose names hold the station: NAME_A = value, unit."""
    grid: Grid = []
    if page.rng.random() < 0.5:
        grid.append([_frame(page, "NAME"), _frame(page, "VALUE"), _frame(page, "UNIT")])
    snake = {
        "bearing_designation": "BRG_TYPE", "bore_diameter": "BRG_BORE", "outside_diameter": "BRG_OD",
        "ring_width": "BRG_WIDTH",
        "ring_chamfer": "BRG_CHAMFER", "tolerance_class": "BRG_TOLERANCE_CLASS", "clearance_class": "BRG_CLEARANCE",
        "dynamic_rating": "BRG_C_DYN", "static_rating": "BRG_C0_STAT", "radial_load": "RADIAL_LOAD",
        "axial_load": "AXIAL_LOAD",
        "axial_role": "AXIAL_LOCATION", "speed_max": "SPEED_MAX", "required_life": "REQUIRED_LIFE",
        "rotor_mass": "ROTOR_MASS",
        "bearing_span": "BEARING_SPAN", "shaft_material": "SHAFT_MATERIAL", "housing_material": "HOUSING_MATERIAL",
        "lubrication": "LUBRICATION", "shaft_seat_diameter": "SHAFT_SEAT_DIA", "housing_seat_diameter": "HSG_BORE_DIA",
        "shaft_seat_roughness": "SHAFT_SEAT_RA", "housing_seat_roughness": "HSG_BORE_RA",
        "shaft_seat_runout": "SHAFT_TOTAL_RUNOUT",
        "housing_seat_runout": "HSG_TOTAL_RUNOUT", "shaft_seat_cylindricity": "SHAFT_CYLINDRICITY",
        "housing_seat_cylindricity": "HSG_CYLINDRICITY", "shaft_shoulder_diameter": "SHAFT_SHOULDER_DIA",
        "housing_shoulder_diameter": "HSG_SHOULDER_DIA", "shaft_shoulder_runout": "SHAFT_SHOULDER_AXIAL_RUNOUT",
        "housing_shoulder_runout": "HSG_SHOULDER_AXIAL_RUNOUT", "shaft_fillet_radius": "SHAFT_FILLET_R",
        "housing_fillet_radius": "HSG_FILLET_R",
    }  # fmt: skip
    extra = {0: "", 1: "_UPPER", 2: "_LOWER"}
    for m, s in _stations(page):
        seen: dict[str, int] = {}
        for column in columns:
            name = column.parts[0]
            index = seen.get(name, 0)
            seen[name] = index + 1
            if column.group == "machine" and s:
                continue
            cell = column.render(m, s)
            tail = extra[index]
            if page.tolerance in ("class column", "fit pair column") and index:
                tail = "_FIT"
            elif page.tolerance == "plus-minus column" and index:
                tail = "_TOL_PLUS_MINUS"
            elif page.tolerance == "limit columns" and name.endswith("_seat_diameter"):
                tail = ("_MAX", "_MIN")[index]
            label = snake[name] + tail + ("" if column.group == "machine" else f"_{'AB'[s]}")
            grid.append(
                [_head(column, label, list(cell.keys)), cell, Cell(page.unit_word(column.unit), cell.keys, head=True)]
            )
    return grid


# ---------------------------------------------------------------- files


def _address(row: int, column: int) -> str:
    letters = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, 26)
        letters = chr(65 + rest) + letters
    return f"{letters}{row + 1}"


def _places(grid: Grid) -> tuple[dict[Key, list[str]], dict[Key, list[str]], dict[Key, list[str]]]:
    cells: dict[Key, list[str]] = {}
    words: dict[Key, list[str]] = {}
    own: dict[Key, list[str]] = {}
    for r, line in enumerate(grid):
        for c, cell in enumerate(line):
            for key in dict.fromkeys(cell.keys):
                cells.setdefault(key, []).append(_address(r, c))
                if cell.head:
                    words.setdefault(key, []).append(str(cell.value))
                else:
                    own.setdefault(key, []).append(_address(r, c))
    return cells, words, own


def _delimited(page: Page, grid: Grid, delimiter: str) -> str:
    width = max(len(line) for line in grid)

    def cell_text(cell: Cell) -> str:
        text = cell.value if isinstance(cell.value, str) else f"{cell.value:.7g}"
        return '"' + text.replace('"', '""') + '"' if any(mark in text for mark in (delimiter, '"', "\n")) else text

    return "".join(
        delimiter.join([*(cell_text(c) for c in line), *[""] * (width - len(line))]) + "\r\n" for line in grid
    )


def _workbook(grid: Grid, cover: list[str]) -> bytes:
    stream = io.BytesIO()
    book = xlsxwriter.Workbook(stream, {"in_memory": True})
    book.set_properties({"created": datetime.datetime(2024, 3, 12)})
    if cover:
        front = book.add_worksheet("Info")
        for r, text in enumerate(cover):
            front.write_string(r, 0, text)
    sheet = book.add_worksheet("Data")
    formats: dict[str, Any] = {}
    for r, line in enumerate(grid):
        for c, cell in enumerate(line):
            if cell.value == "":
                continue
            style = None
            if cell.number_format:
                style = formats.setdefault(cell.number_format, None) or book.add_format(
                    {"num_format": cell.number_format}
                )
                formats[cell.number_format] = style
            if cell.merge:
                sheet.merge_range(r, c, r, c + cell.merge, str(cell.value), book.add_format({"align": "center"}))
            elif not isinstance(cell.value, str):
                sheet.write_number(r, c, cell.value, style)
            else:
                sheet.write_string(r, c, cell.value)
    book.close()
    return stream.getvalue()


def _title(page: Page, machine_in_title: bool, place: str) -> Grid:
    """Lines of a title block: pairs of cells, or one cell with a colon."""
    rng, language = page.rng, page.language
    joined = rng.random() < 0.25
    lines: Grid = []

    def pair(label: str, cell: Cell) -> list[Cell]:
        if joined and isinstance(cell.value, str):
            return [Cell(f"{label}: {cell.value}", cell.keys)]
        return [Cell(label, cell.keys, head=True), cell]

    for name in ("drawing_number", "drawing_revision"):
        if rng.random() < 0.85:
            key = (0, -1, name)
            value = page.meaning.shown[key]
            assert isinstance(value, str)
            page.values[key], page.forms[key] = value, "title block"
            for other in range(1, len(page.meaning.machines)):
                page.values[other, -1, name], page.forms[other, -1, name] = value, "title block"
            keys = tuple((m, -1, name) for m in range(len(page.meaning.machines)))
            lines.append(pair(page.pick(terms.PLAIN[language][name]), Cell(value, keys)))
    if machine_in_title:
        lines.insert(
            rng.randint(0, len(lines)), pair(page.pick(terms.PLAIN[language]["machine"]), _machine_cell(page, 0))
        )
    noise = list(terms.NOISE_TITLE[language])
    rng.shuffle(noise)
    lines += [pair(label, Cell(text)) for label, text in noise[: rng.randint(0, 2)]]
    if place == "title":
        lines.append(
            [Cell(page.pick(terms.INCH_LINES if page.units["length"] == "in" else terms.UNIT_LINES[language]))]
        )
    if rng.random() < 0.6:
        lines.insert(0, [Cell(terms.TITLES[language])])
    return lines


def _not_a_table(seed: int, rng: random.Random) -> Table:
    kind = NOT_TABLES[rng.randrange(len(NOT_TABLES))]
    rows = {
        "bill of fasteners": [["Item", "Description", "Qty", "Material"], ["1", "Hex bolt M6x20", "8", "8.8"],
            ["2", "Washer 6.4", "8", "A2"]],
        "price list": [["Article", "Unit price", "Currency", "Lead time"], ["K-100", "4,20", "EUR", "3 weeks"],
            ["K-200", "7,90", "EUR", "2 weeks"]],
        "measuring log": [["Time", "Temperature", "Humidity"], ["08:00", "21.4", "45"], ["09:00", "21.9", "44"]],
        "contacts": [["Department", "Phone", "Room"], ["Design", "118", "2.14"], ["Quality", "131", "1.02"]],
    }[kind]  # fmt: skip
    text = "".join(";".join(row) + "\r\n" for row in rows)
    return Table(seed, ".csv", text.encode(), (), (), (), {}, {"layout": "no table", "kind": kind}, is_table=False)


_ENCODINGS = {
    "de": ["utf-8", "cp1252", "utf-8-sig"], "fr": ["utf-8", "cp1252"], "es": ["utf-8", "cp1252"],
    "it": ["utf-8", "cp1252"],
    "en": ["utf-8", "utf-8-sig", "utf-16"], "ja": ["utf-8", "shift_jis", "utf-8-sig"], "zh": ["utf-8", "gb18030"],
    "ru": ["utf-8", "cp1251", "utf-16"],
}  # fmt: skip


def _leaf_path(path: str, name: str | int) -> str:
    return f"{path}/{str(name).replace('~', '~0').replace('/', '~1')}"


@dataclass
class Leaf:
    """A value of a JSON document with the values it carries; ``head``: it is a label that stands as a value."""

    value: Any
    keys: tuple[Key, ...] = ()
    head: bool = False


#: Keys of attribute lists and melted frames: they name no value.
_FRAME_KEYS = {"name", "value", "attr", "val", "key", "label", "content", "variable", "param", "pos"}


@dataclass
class Pointers:
    """Where the values of a JSON document stand: all their pointers, those of the values alone, and their words."""

    cells: dict[Key, list[str]] = field(default_factory=dict)
    words: dict[Key, list[str]] = field(default_factory=dict)
    own: dict[Key, list[str]] = field(default_factory=dict)


def _strip(node: Any, path: str, found: Pointers, last: str) -> Any:
    """The plain document; notes the JSON Pointer of every leaf that carries a value."""
    if isinstance(node, Leaf):
        for key in node.keys:
            found.cells.setdefault(key, []).append(path)
            if node.head:
                found.words.setdefault(key, []).append(str(node.value))
            else:
                found.own.setdefault(key, []).append(path)
                if last not in _FRAME_KEYS:
                    found.words.setdefault(key, []).append(last)
        return node.value
    if isinstance(node, dict):
        return {k: _strip(v, _leaf_path(path, k), found, k) for k, v in node.items()}
    if isinstance(node, list):
        return [_strip(v, _leaf_path(path, k), found, last) for k, v in enumerate(node)]
    return node


def _json_document(page: Page, layout: str, columns: list[Column]) -> Any:
    """A document: seat objects, attribute arrays, or flat records."""
    rng = page.rng

    def leaf(cell: Cell) -> Leaf:
        whole = isinstance(cell.value, float) and cell.value == int(cell.value)
        return Leaf(int(cell.value) if whole else cell.value, cell.keys)

    def place(holder: dict[str, Any], column: Column, bare: bool, value: Leaf) -> None:
        words = page.heading(column.bare if bare else column.words, column.unit)
        if words in holder:
            raise ValueError(f"two values under {words}")
        holder[words] = value

    machines = []
    attribute = rng.choice(
        [("name", "value", "unit"), ("attr", "val", "uom"), ("key", "value", "units"), ("label", "content", "uom")]
    )
    groups = {side: terms.PARTS[page.language][side]["g"] for side in terms.SIDES} | {
        "bearing": terms.BEARING[page.language]
    }
    for m in range(len(page.meaning.machines)):
        top: dict[str, Any] = {terms.PLAIN[page.language]["machine"][0]: leaf(_machine_cell(page, m))}
        if layout == "json attributes":
            top = {rng.choice(["assembly", "product", "machine"]): leaf(_machine_cell(page, m)), "attributes": []}
        stations = []
        for s, _station in enumerate(page.meaning.stations[m]):
            record: dict[str, Any] = {terms.PLAIN[page.language]["station"][0]: leaf(_station_cell(page, m, s))}
            listed: list[dict[str, Any]] = []
            for column in columns:
                cell = column.render(m, s)
                if column.group == "machine" and s and not (layout == "json records" and not _once(column)):
                    continue
                unit = {attribute[2]: page.unit_word(column.unit)} if column.unit and page.unit_place != "cell" else {}
                if layout == "json attributes":
                    entry = {attribute[0]: Leaf(column.words, cell.keys, head=True), attribute[1]: leaf(cell), **unit}
                    (top["attributes"] if column.group == "machine" else listed).append(entry)
                    continue
                in_record = column.group != "machine" or (layout == "json records" and not _once(column))
                holder = record if in_record else top
                nested = layout == "json seats" and column.group in groups
                if nested:
                    holder = holder.setdefault(groups[column.group], {})
                place(holder, column, nested, leaf(cell))
            if layout == "json attributes":
                record = {"position": leaf(_station_cell(page, m, s)), "attributes": listed}
            stations.append(record)
        if layout == "json records":
            inherited = dict(top)
            machines += [
                {**(inherited if k == 0 else {next(iter(top)): top[next(iter(top))]}), **record}
                for k, record in enumerate(stations)
            ]
        else:
            top["children" if layout == "json attributes" else "positions"] = stations
            machines.append(top)
    return machines if layout == "json records" or len(machines) > 1 else machines[0]


def make(seed: int) -> Table:  # noqa: C901 - one table, layout by layout
    """The table of a seed: its bytes and what they mean.

    Parameters
    ----------
    seed : int
        1 to 60 for the measuring set, from 1001 for development.

    Returns
    -------
    Table
        The same for the same seed.
    """
    rng = random.Random(f"practice {seed}")
    if seed % 20 == 13:
        return _not_a_table(seed, rng)
    layout = LAYOUTS[(seed - 1) % len(LAYOUTS)]
    language = terms.LANGUAGES[(seed - 1 + (seed - 1) // len(LAYOUTS)) % len(terms.LANGUAGES)]
    inch = language == "en" and rng.random() < 0.4
    is_json = layout.startswith("json")
    tolerance = rng.choice(TOLERANCES)
    if layout == "row per parameter" or layout == "melted":  # columns of a tolerance belong to a list with such columns
        tolerance = rng.choice([t for t in TOLERANCES if t not in COLUMNED])
    if (
        layout in ("names with station", "json seats", "json attributes", "json records", "row per seat")
        and tolerance == "fit pair column"
    ):
        tolerance = "class column"
    if inch and tolerance in (
        "deviation columns um",
        "deviations in um in cell",
        "class and deviations um",
        "plus-minus column",
        "class and deviations mm",
    ):
        tolerance = rng.choice(
            ["class in cell", "limit columns", "limits in cell", "deviations in cell", "class column"]
        )
    if layout == "groups in two heading rows" and tolerance == "fit pair column":
        tolerance = "class column"
    typed = (is_json or layout == "melted") and rng.random() < 0.75
    spreadsheet = not is_json and layout != "melted" and rng.random() < 0.45
    comma = not is_json and language in ("de", "fr", "es", "it", "ru") and rng.random() < 0.75
    place = rng.choice(UNIT_PLACES)
    if place == "number format" and not spreadsheet:
        place = "heading"
    if place == "none" and (inch or rng.random() < 0.5):
        place = "heading"
    if layout == "names with station":
        place = "row"
    if layout == "melted" and place in ("row", "number format", "title", "foot"):
        place = "heading"
    if layout == "inspection list":
        place = "row"
    if is_json and place in ("row", "title", "foot", "number format"):
        place = "heading"
    if layout == "json attributes" and place == "none":  # an attribute has a unit of its own
        place = "heading"
    if layout == "row per parameter" and place in ("title", "foot", "none", "number format"):
        place = "row"
    if layout == "side by side" and place == "row":
        place = "heading"
    brackets = rng.choice(
        [" [{}]", " ({})", " in {}" if language == "de" else " [{}]", "（{}）" if language in ("ja", "zh") else ", {}"]
    )
    if layout in ("groups in two heading rows", "transposed", "row per station") and place == "row":
        brackets = rng.choice(["[{}]", "({})", "{}"])
    units = _unit_system(rng, inch)
    count = 2 if layout in ("row per station", "row per parameter") and rng.random() < 0.35 else 1
    meaning = _mean(rng, language, units, count, 2, tolerance)
    page = Page(rng, language, units, comma, spreadsheet or typed, place, tolerance, brackets, meaning)
    page.grouped = not (spreadsheet or typed or is_json) and rng.random() < 0.3
    page.fixed = not (spreadsheet or typed) and rng.random() < 0.25
    page.upper = language in ("en", "fr", "es", "it") and rng.random() < 0.25
    if spreadsheet and place == "heading" and rng.random() < 0.3:
        page.brackets = rng.choice(["\n[{}]", "\n({})"])
    page.alone = is_json or layout in ("melted", "names with station")
    bearing = rng.choice(BEARINGS)
    if layout == "names with station" and bearing == "size text":
        bearing = "both"
    if layout == "names with station":
        meaning.stations[:] = [["A", "B"]] * count
        page.language = language = "en" if rng.random() < 0.7 else language
    asks = layout in ("row per station", "transposed", "json records") and rng.random() < 0.35
    columns = _columns(
        page,
        bearing,
        asks=asks,
        pairs_allowed=layout in ("row per station", "transposed", "stacked tables", "side by side"),
    )
    kinds = {
        "layout": layout, "language": language, "tolerance": tolerance, "units": place, "bearing": bearing,
        "length unit": units["length"],
    }  # fmt: skip

    if is_json or layout == "melted":
        return _as_json(seed, page, layout, columns, kinds)

    machine_column = count > 1 or rng.random() < 0.3
    machine_in_title = not machine_column and rng.random() < 0.6
    if layout in (
        "transposed",
        "blocks per part",
        "stacked tables",
        "side by side",
        "inspection list",
        "names with station",
        "row per seat",
    ):
        machine_in_title, machine_column = (machine_column or machine_in_title), False
    extra = [] if layout in ("stacked tables", "side by side", "row per seat") else _machine_columns(page)
    if layout == "row per station":
        grid = _wide(page, columns + extra, machine_column)
    elif layout == "transposed":
        grid = _transposed(page, columns + extra)
    elif layout == "row per parameter":
        grid = _long(page, columns + extra, machine_column)
    elif layout == "groups in two heading rows":
        ordered = [c for g in ("frame", "shaft", "housing", "bearing") for c in columns if c.group == g]
        grid = _wide(page, ordered + extra, machine_column, groups=True)
    elif layout == "blocks per part":
        grid = _blocks(page, columns + extra)
    elif layout == "row per seat":
        grid = _per_seat(page, columns)
    elif layout in ("stacked tables", "side by side"):
        seats = [c for c in columns if c.group in terms.SIDES]
        first, second = (
            _wide(page, seats, False, numbers=False),
            _wide(page, [c for c in columns if c not in seats], False, numbers=False),
        )
        if layout == "stacked tables":
            grid = [*first, [EMPTY], *second]
        else:
            width = max(map(len, first))
            grid = [[*a, *[EMPTY] * (width + 1 - len(a)), *b] for a, b in zip(first, second, strict=True)]
    elif layout == "inspection list":
        grid = _inspection(page, columns + extra)
    else:
        grid = _named(page, columns + extra)
    comment = rng.random() < 0.1 and not spreadsheet
    titled = rng.random() < 0.75 or place == "title" or machine_in_title
    if titled:
        block = _title(page, machine_in_title, place)
        grid = [*block, *([[EMPTY]] if rng.random() < 0.6 else []), *grid]
    if place == "foot":
        line = page.pick(terms.INCH_LINES if inch else terms.UNIT_LINES[language])
        grid += [*([[EMPTY]] if rng.random() < 0.5 else []), [Cell(line)]]
    if rng.random() < 0.4:
        grid += [*([[EMPTY]] if rng.random() < 0.5 else []), [Cell(page.pick(terms.FOOTERS[language]))]]
    if comment:
        grid.insert(0, [Cell("# export of parameters")])
    cells, words, own = _places(grid)
    if spreadsheet:
        noise = [f"{label}: {text}" for label, text in terms.NOISE_TITLE[language]]
        cover = [terms.TITLES[language], *noise] if rng.random() < 0.25 else []
        suffix, content, encoding = ".xlsx", _workbook(grid, cover), "xlsx"
    else:
        delimiter = ";" if comma else rng.choice([",", ";", "\t", "|"] if rng.random() < 0.5 else [",", ";"])
        encoding = rng.choice(_ENCODINGS[language])
        text = _delimited(page, grid, delimiter)
        try:
            content = text.encode(encoding)
        except UnicodeEncodeError:
            encoding = "utf-8"
            content = text.encode(encoding)
        suffix = ".csv" if delimiter in ",;" else ".txt"
    kinds["encoding"] = encoding
    return _table(seed, page, suffix, content, cells, words, own, kinds)


def _as_json(seed: int, page: Page, layout: str, columns: list[Column], kinds: dict[str, str]) -> Table:
    columns = columns + _machine_columns(page)
    document: Any
    if layout == "melted":
        rows = []
        key = page.rng.choice([("station", "variable", "value"), ("pos", "param", "val")])
        for m, s in _stations(page):
            for column in columns:
                if _once(column) and s:
                    continue
                cell = column.render(m, s)
                rows.append({
                    key[0]: Leaf(page.meaning.stations[m][s], ((m, s, "station"),)),
                    key[1]: Leaf(page.heading(column.words, column.unit), cell.keys, head=True),
                    key[2]: Leaf(cell.value, cell.keys),
                })  # fmt: skip
                _station_cell(page, m, s)
        document = rows
        if page.rng.random() < 0.5:
            grid = [[Cell(name, head=True) for name in key]]
            grid += [[Cell(leaf.value, leaf.keys, head=k == 1) for k, leaf in enumerate(row.values())] for row in rows]
            kinds["encoding"] = "utf-8"
            delimiter = ";" if page.comma else ","
            return _table(seed, page, ".csv", _delimited(page, grid, delimiter).encode(), *_places(grid), kinds)
    else:
        document = _json_document(page, layout, columns)
    found = Pointers()
    plain = _strip(document, "", found, "")
    if page.rng.random() < 0.5 and isinstance(plain, dict):
        number, revision = (page.meaning.shown[0, -1, k] for k in ("drawing_number", "drawing_revision"))
        for name, value in (("drawing_number", number), ("drawing_revision", revision)):
            full = (0, -1, name)
            page.values[full], page.forms[full] = value, "title block"
            word = page.pick(terms.PLAIN[page.language][name])
            plain[word] = value
            found.words[full] = [word]
            found.cells[full] = found.own[full] = [_leaf_path("", word)]
    kinds["encoding"] = "json"
    content = json.dumps(plain, ensure_ascii=False, indent=1).encode()
    return _table(seed, page, ".json", content, found.cells, found.words, found.own, kinds)


def _table(
    seed: int,
    page: Page,
    suffix: str,
    content: bytes,
    cells: dict[Key, list[str]],
    words: dict[Key, list[str]],
    own: dict[Key, list[str]],
    kinds: dict[str, str],
) -> Table:
    expected = []
    for key, value in page.values.items():
        if key not in own:
            continue
        m, s, name = key
        expected.append(
            Expected(
                m, s, name, value, page.verdicts.get(key, "read"), page.forms.get(key, ""), tuple(cells[key]),
                tuple(dict.fromkeys(words.get(key, ()))), tuple(own.get(key, ())),
            )
        )  # fmt: skip
    implied: dict[Key, Value] = {}
    scale = FACTOR["length", page.units["length"]]
    for m, s in _stations(page):
        designation = page.meaning.shown[m, s, "bearing_designation"]
        assert isinstance(designation, str)
        if (m, s, "bearing_designation") not in page.values:
            continue
        for name in ("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer"):
            size = page.meaning.shown[m, s, name]
            assert isinstance(size, float)
            implied[m, s, name] = size * scale
            if name == "ring_chamfer" and scale != 1:
                implied[m, s, name] = round(size * scale, 1)  # as makers print it in millimetres
        implied[m, s, "bearing_type"] = "deep groove ball"
        implied[m, s, "contact_angle"] = 0.0
        implied[m, s, "closure"] = (
            "shield" if "2Z" in designation else "contact seal" if "2RS" in designation else "open"
        )
        implied[m, s, "clearance_class"] = "C3" if "C3" in designation else "CN"
    return Table(
        seed, suffix, content, tuple(page.meaning.machines), tuple(map(tuple, page.meaning.stations)),
        tuple(sorted(expected, key=lambda e: (e.machine, e.station, e.parameter))), implied, kinds,
    )  # fmt: skip
