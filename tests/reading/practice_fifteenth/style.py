"""How an office writes: its words, units, figures and the form of its tolerances."""

import random
import re
from dataclasses import dataclass, field, replace

from practice.grammar import Size

from practice_fifteenth.lexicon import CHOICES, NAMES, UNITS

#: What one of a unit is in canonical units, by quantity.
FACTORS = {
    "length": {"mm": 1.0, "in": 25.4},
    "small": {"mm": 1.0, "um": 0.001, "in": 25.4},
    "rough": {"um": 1.0, "uin": 0.0254},
    "speed": {"rpm": 1.0, "krpm": 1000.0},
    "force": {"N": 1.0, "kN": 1000.0, "lbf": 4.4482216152605},
    "mass": {"kg": 1.0, "g": 0.001, "lb": 0.45359237},
    "temp": {"C": 1.0, "F": 1.0},
    "hours": {"h": 1.0},
}
PLACES = {
    "mm": 3, "in": 4, "um": 1, "uin": 0, "rpm": 0, "krpm": 1, "N": 0, "kN": 3, "lbf": 0, "C": 0, "F": 0, "kg": 3,
    "g": 0, "lb": 2, "h": 0,
}  # fmt: skip
QUANTITY = {
    "length": "seat sh fil d D B rs span x0", "small": "cyl run shr coax", "rough": "ra ask.ra", "speed": "nmax nop",
    "force": "Fr Fa pforce C C0", "mass": "mass", "temp": "temp tmin tamb tsh tho ask.temp", "hours": "life grease",
}  # fmt: skip
OF = {key: quantity for quantity, keys in QUANTITY.items() for key in keys.split()}
PARAMETERS = {
    "des": "bearing_designation", "d": "bore_diameter", "D": "outside_diameter", "B": "ring_width",
    "rs": "ring_chamfer", "clr": "clearance_class", "tol": "tolerance_class", "lub": "lubrication",
    "role": "axial_role", "Fr": "radial_load", "Fa": "axial_load", "temp": "operating_temperature",
    "C": "dynamic_rating", "C0": "static_rating", "grease": "regreasing_interval", "name": "machine",
    "dwg": "drawing_number", "rev": "drawing_revision", "nmax": "speed_max", "nop": "speed_operating",
    "life": "required_life", "span": "bearing_span", "mass": "rotor_mass", "bal": "balance_grade",
    "smat": "shaft_material", "hmat": "housing_material", "tmin": "temperature_min", "tamb": "ambient_temperature",
    "tsh": "shaft_temperature", "tho": "housing_temperature", "preload": "preload_method",
    "pforce": "preload_force", "orient": "shaft_orientation", "coax": "coaxiality_of_bores", "station": "station",
    "ask.temp": "operating_temperature|shaft_temperature|housing_temperature|ambient_temperature|temperature_max"
    "|temperature_min",
    "ask.ra": "shaft_seat_roughness|housing_seat_roughness", "ask.clr": "radial_clearance|axial_float",
}  # fmt: skip
SIDES = {"seat": "_seat_diameter", "ra": "_seat_roughness", "cyl": "_seat_cylindricity", "run": "_seat_runout",
         "sh": "_shoulder_diameter", "shr": "_shoulder_runout", "fil": "_fillet_radius"}  # fmt: skip
#: The cells that a seat takes in each form of its tolerance.
PARTS = {
    "class": ("",), "class column": ("", "cls"), "deviations": ("",), "deviation columns": ("", "up", "lo"),
    "limits": ("max", "min"), "limits with nominal": ("", "max", "min"), "limits cell": ("",), "plus-minus": ("",),
    "plus-minus column": ("", "pm"), "class and deviations": ("",), "class and deviation columns":
    ("", "cls", "up", "lo"), "fit only": ("cls",), "pair": (),
}  # fmt: skip


@dataclass(frozen=True)
class Field:
    """A thing that a table tells: of the shaft, housing, bearing or machine; ``part``: of a seat's tolerance."""

    scope: str
    key: str
    part: str = ""
    quantity: str = ""

    @property
    def parameter(self) -> str:
        return self.scope + SIDES[self.key] if self.key in SIDES else PARAMETERS[self.key]


def fields(scope: str, keys: str, form: str) -> list[Field]:
    """The fields of a scope in an office's order."""
    found: list[Field] = []
    for key in keys.split():
        if key == "seat":
            length = {"": "length", "cls": "", "up": "fine", "lo": "fine", "max": "length", "min": "length"}
            found += [Field(scope, key, part, length.get(part, "fine")) for part in PARTS[form]]
        else:
            found.append(Field(scope, key, "", OF.get(key, "")))
    return found


@dataclass
class Style:
    """The habits of an office."""

    language: str
    form: str
    rng: random.Random
    voice: int = 0
    units: str = "heading"
    brackets: str = " [{}]"
    comma: bool = False
    inch: bool = False
    fine: str = "mm"
    small: str = "mm"
    speed: str = "rpm"
    force: str = "N"
    rating: str = "kN"
    temp: str = "C"
    mass: str = "kg"
    group: str = ""
    dia: str = ""
    join: str = " "
    dev: str = "{up}/{lo}"
    limits: str = "{max}/{min}"
    ra: str = ""
    rad: str = ""
    envelope: str = ""
    fixed: bool = False
    relative: bool = False
    mixed: str = ""
    own: dict[str, str] = field(default_factory=dict)
    workbook: bool = False

    def word(self, key: str) -> str:
        """What the office calls a thing."""
        if key in self.own:
            return self.own[key]
        if re.fullmatch(r"x\d", key):
            return NAMES[self.language]["extra"][int(key[1])]
        names = NAMES["en" if key in self.mixed.split() else self.language][key]
        return names[self.voice % len(names)]

    def choice(self, key: str, value: str) -> str:
        words = CHOICES[key, value, self.language]
        return words[self.voice % len(words)]

    def unit(self, f: Field) -> str:
        """The unit a field is shown in."""
        length = "in" if self.inch else "mm"
        if f.key in ("C", "C0"):
            return self.rating
        return {
            "length": length, "fine": "in" if self.inch else self.fine, "small": "in" if self.inch else self.small,
            "rough": "uin" if self.inch else "um", "speed": self.speed, "force": self.force, "temp": self.temp,
            "mass": self.mass, "hours": "h",
        }.get(f.quantity, "")  # fmt: skip

    def unit_word(self, f: Field) -> str:
        unit = self.unit(f)
        if not unit:
            return ""
        known = UNITS[unit]
        words = known.get(self.language, known[""]).split("|")
        return words[self.voice % len(words)]

    def snap(self, f: Field, value: float) -> float:
        """A canonical value that the office can show."""
        unit = self.unit(f)
        if not unit:
            return value
        if unit == "F":
            return (round(value * 1.8 + 32) - 32) / 1.8
        factor = FACTORS[f.quantity if f.quantity != "fine" else "small"][unit]
        shown = round(value / factor, PLACES[unit])
        return (max(shown, 0.0001) if f.quantity == "small" and unit == "in" else shown) * factor

    def plain(self, value: float, places: int = 4, least: int = 0) -> str:
        text = f"{value:.{places}f}"
        if "." in text:
            whole, rest = text.split(".")
            rest = rest.rstrip("0").ljust(least, "0")
            text = f"{whole}.{rest}" if rest else whole
        if re.fullmatch(r"-0(\.0*)?", text):
            text = text[1:]
        if self.group and value >= 1000 and "." not in text:
            text = f"{int(text):,}".replace(",", self.group)
        return text.replace(".", ",") if self.comma and not (self.group == "." and value >= 1000) else text

    def number(self, f: Field, value: float) -> str:
        """A canonical number as the office writes it, without unit."""
        unit = self.unit(f)
        if unit == "F":
            return self.plain(value * 1.8 + 32, 0)
        if not unit:
            return self.plain(value, 3)
        factor = FACTORS[f.quantity if f.quantity != "fine" else "small"][unit]
        least = 3 if self.fixed and f.quantity == "length" and unit == "mm" and f.key == "seat" else 0
        least = 4 if f.quantity == "length" and unit == "in" else least
        return self.plain(value / factor, 5 if unit == "in" else 4, least)

    def signed(self, f: Field, value: float) -> str:
        text = self.number(replace(f, quantity="fine", key="dev"), value)
        return text if text.startswith("-") or float(text.replace(",", ".")) == 0 else "+" + text

    def seat(self, f: Field, size: Size) -> str:
        """The text of a part of a seat."""
        low, high = size.lower or 0.0, size.upper or 0.0
        nominal = self.number(f, size.nominal)
        if f.part == "cls":
            return size.tolerance_class
        if f.part in ("up", "lo"):
            return self.signed(f, high if f.part == "up" else low)
        if f.part in ("max", "min"):
            return self.limit(size.nominal + (high if f.part == "max" else low))
        if f.part == "pm":
            return self.number(replace(f, quantity="fine", key="dev"), high)
        size_text = f"{self.dia}{nominal}"
        unit = f" {self.fine_word()}" if self.fine == "um" and not self.inch else ""
        both = self.dev.format(up=self.signed(f, high), lo=self.signed(f, low)) + unit
        if self.form == "class":
            return f"{size_text}{self.join}{size.tolerance_class}{self.envelope}"
        if self.form == "deviations":
            return f"{size_text} {both}"
        if self.form == "class and deviations":
            return f"{size_text}{self.join}{size.tolerance_class} ({both})"
        if self.form == "plus-minus":
            return f"{size_text} ±{self.number(replace(f, quantity='fine', key='dev'), high)}{unit}"
        if self.form == "limits cell":
            top, bottom = self.limit(size.nominal + high), self.limit(size.nominal + low)
            return self.dia + self.limits.format(max=top, min=bottom)
        return size_text

    def limit(self, value: float) -> str:
        return self.plain(value / 25.4, 4, 4) if self.inch else self.plain(value, 4, 3)

    def fine_word(self) -> str:
        return self.unit_word(Field("", "", "", "fine"))

    # ------------------------------------------------------------ headings

    def glue(self, *words: str) -> str:
        return ("" if self.language in ("zh", "ja") else " ").join(w for w in words if w)

    def full(self, f: Field) -> str:
        """A name that says its part itself."""
        if f.key not in SIDES:
            where = f.scope == "shaft" and f.key == "x0"
            return self.glue(self.word(f.key), self.word("shaft")) if where else self.word(f.key)
        side = "S." if f.scope == "shaft" else "H."
        if f.part == "cls" and not self.relative:
            return self.word(side + "fit")
        if f.part in ("cls", "up", "lo", "pm") and self.relative:
            return self.word(f.part)
        return self.glue(self.word(side + f.key), self.word(f.part) if f.part else "")

    def short(self, f: Field) -> str:
        """A name under the heading of its part."""
        if f.key not in SIDES:
            return self.word(f.key)
        if f.part in ("max", "min"):
            return self.glue(self.word("seat"), self.word(f.part))
        return self.word(f.part or f.key)

    def heading(self, name: str, f: Field, always: bool = False) -> str:
        """A name with its unit where the office writes units in headings."""
        unit = self.unit_word(f)
        told = f.quantity in ("length", "fine", "small", "rough")
        stays = self.units == "heading" or always or (self.units in ("title", "foot") and not told)
        return name + self.brackets.format(unit) if unit and stays else name
