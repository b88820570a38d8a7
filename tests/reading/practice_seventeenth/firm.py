"""A firm: its language, its words, its units, and how it writes a value."""

import random
import re
from dataclasses import dataclass, field, replace

from practice.grammar import Size, Value

from practice_seventeenth import words_east, words_roman, words_west
from practice_seventeenth.trade import OWN, SIDED, Machine

WORDS = {
    language: {key: words.split("|") for key, words in (line.split(" = ", 1) for line in text.strip().splitlines())}
    for language, text in (
        ("en", words_west.EN), ("de", words_west.DE), ("fr", words_roman.FR), ("it", words_roman.IT),
        ("es", words_roman.ES), ("ru", words_east.RU), ("zh", words_east.ZH), ("ja", words_east.JA),
    )
}  # fmt: skip
#: Words of choices in the order of LANGUAGES; several of one language are of different machines.
LANGUAGES = ("en", "de", "fr", "it", "es", "ru", "zh", "ja")
CHOICES = {
    "grease": "Grease/Grease lubricated|Fett/Fettschmierung|Graisse|Grasso|Grasa|Пластичная смазка|脂润滑|グリース潤滑",
    "oil bath": "Oil bath|Ölbad/Tauchschmierung|Bain d'huile|Bagno d'olio|Baño de aceite|Масляная ванна|油浴|油浴潤滑",
    "locating": "Locating/Fixed|Festlager|Fixe|Fisso|Fijo|Фиксирующая|固定|固定側",
    "floating": "Non-locating/Floating|Loslager|Libre|Libero|Libre|Плавающая|游动|自由側",
    "horizontal": "horizontal|waagrecht/horizontal|horizontale|orizzontale|horizontal|горизонтально|水平|水平",
    "vertical": "vertical|senkrecht/vertikal|verticale|verticale|vertical|вертикально|垂直|垂直",
    "steel": "Steel/42CrMo4|Stahl/42CrMo4/C45|Acier/Acier C45|Acciaio/C45|Acero/Acero C45|Сталь 45/Сталь 40Х|"
    "45钢/40Cr|S45C",
    "stainless steel": "Stainless steel|nichtrostender Stahl|Acier inoxydable|Acciaio inossidabile|Acero inoxidable|"
    "Нержавеющая сталь|不锈钢|ステンレス鋼",
    "cast iron": "Grey cast iron/EN-GJL-250|Grauguss/EN-GJL-200|Fonte grise|Ghisa|Fundición gris|Чугун СЧ20|"
    "HT200|FC200",
    "aluminium": "Aluminium|Aluminium/AlSi10Mg|Aluminium|Alluminio|Aluminio|Алюминий|铝合金|アルミニウム合金",
}  # fmt: skip
#: Word of a unit, and what one of it is in canonical units.
UNITS = {
    "mm": 1.0, "µm": 0.001, "in": 25.4, "µin": 0.0254, "rpm": 1.0, "N": 1.0, "kN": 1000.0, "lbf": 4.4482216152605,
    "h": 1.0, "kg": 1.0, "lb": 0.45359237, "°C": 1.0, "N·m": 1.0, "Nm": 1.0, "mm²/s": 1.0, "": 1.0, "Ra": 1.0,
}  # fmt: skip
FOREIGN = {
    "ru": {"mm": "мм", "µm": "мкм", "rpm": "об/мин", "N": "Н", "kN": "кН", "h": "ч", "kg": "кг", "N·m": "Н·м",
           "Nm": "Н·м", "mm²/s": "мм²/с"},
    "de": {"rpm": "1/min"}, "fr": {"rpm": "tr/min"}, "it": {"rpm": "giri/min"}, "es": {"rpm": "r/min"},
    "zh": {"rpm": "r/min"}, "ja": {"rpm": "min-1"},
}  # fmt: skip
#: The parts of a seat that a form of tolerances has.
FORMS = {
    "class": ("",), "class column": ("", "cls"), "class and deviations": ("",), "deviations": ("",),
    "deviation columns": ("", "up", "lo"), "class and columns": ("", "cls", "up", "lo"),
    "limit columns": ("max", "min"), "limits": ("",), "plus-minus": ("",), "tolerance column": ("", "tol"),
    "fit": ("cls",),
}  # fmt: skip


@dataclass(frozen=True)
class Field:
    """What a column or a line holds: scope (b, s, h, m), key, part of a seat."""

    scope: str
    key: str
    part: str = ""

    @property
    def quantity(self) -> str:
        """Length, fine, rough, ...; none of what has no unit."""
        if self.part == "cls":
            return ""
        if self.part in ("up", "lo", "tol"):
            return "dev"
        return SIDED[self.key][1] if self.key in SIDED else OWN[self.key][1]


@dataclass
class Firm:
    """How a firm writes."""

    language: str
    layout: str
    form: str
    plan: str
    file: str
    units: str = "heading"  # heading, column, row, title, foot, cell
    voice: int = 0
    kind: str = "ball"
    machines: int = 1
    pair: int = 0
    positions: str = ""
    holes: str = ""  # keys of the second position that the firm leaves out, and what stands there: "Fa -"
    group: str = ""
    more: dict[str, object] = field(default_factory=dict)
    fine: str = "mm"
    dev: str = "mm"
    force: str = "N"
    torque: str = "Nm"
    inch: bool = False
    comma: bool = False
    fixed: bool = False
    brackets: str = " [{}]"
    join: str = " "
    dia: str = ""
    devs: str = "{up}/{lo}"
    limits: str = "{max} / {min}"
    own: dict[str, str] = field(default_factory=dict)
    rng: random.Random = field(default_factory=random.Random)

    def word(self, key: str) -> str:
        """The firm's word for a key."""
        if key in self.own:
            return self.own[key]
        words = WORDS[self.language][key]
        return words[self.voice % len(words)]

    def unit(self, f: Field) -> str:
        """Unit of a field; empty of what has none."""
        inch = self.inch
        return {
            "length": "in" if inch else "mm", "fine": "in" if inch else self.fine, "dev": "in" if inch else self.dev,
            "rough": "µin" if inch else "µm", "speed": "rpm", "life": "h", "mass": "lb" if inch else "kg",
            "temp": "°C", "force": "lbf" if inch else self.force, "rating": "lbf" if inch else "kN",
            "newton": "lbf" if inch else "N", "torque": self.torque, "visc": "mm²/s", "": "",
        }[f.quantity]  # fmt: skip

    def unit_word(self, f: Field) -> str:
        """The unit as the firm's language writes it."""
        return FOREIGN.get(self.language, {}).get(self.unit(f), self.unit(f))

    def snap(self, f: Field, value: float) -> float:
        """A value as it is after being rounded to what the firm shows."""
        unit = self.unit(f)
        if unit == "µin":
            return min((16, 32, 63), key=lambda n: abs(n * 0.0254 - value)) * 0.0254
        places = {"µm": 2, "in": 4, "lbf": 0, "lb": 2}.get(unit, 6)
        return round(value / self.factor(f), places) * self.factor(f)

    def factor(self, f: Field) -> float:
        """What one of the shown unit is in canonical units."""
        unit = self.unit(f)
        if f.quantity == "rough":
            return 0.0254 if unit == "µin" else 1.0
        return UNITS[unit]

    def plain(self, value: float, least: int = 0, most: int = 4) -> str:
        """A number with the firm's decimal sign."""
        text = f"{value:.{most}f}"
        while "." in text and len(text.partition(".")[2]) > least and text.endswith("0"):
            text = text[:-1]
        text = text.rstrip(".")
        if text in ("-0", ""):
            text = "0"
        return text.replace(".", ",") if self.comma else text

    def number(self, f: Field, value: float) -> str:
        """A value in the unit of its field."""
        unit = self.unit(f)
        least = {"in": 4, "mm": 3 if f.quantity in ("fine", "dev") else 0}.get(unit, 0)
        if self.fixed and f.quantity == "length" and unit == "mm":
            least = 2
        text = self.plain(self.snap(f, value) / self.factor(f), least, 5 if unit == "mm" else 4)
        if self.group and f.quantity in ("speed", "life") and re.fullmatch(r"\d{4,}", text):
            text = text[:-3] + self.group + text[-3:]
        return text

    def signed(self, value: float, part: str = "up") -> str:
        """A deviation with its sign; of a zero none."""
        text = self.number(Field("s", "seat", part), value)
        return text if text.lstrip("0.,") == "" and value == 0 else text if value < 0 else "+" + text

    def seat(self, f: Field, size: Size) -> str:
        """The text of a seat, or of a part of it."""
        low, high = size.lower or 0.0, size.upper or 0.0
        if f.part == "cls":
            return size.tolerance_class
        if f.part in ("up", "lo"):
            return self.signed(high if f.part == "up" else low)
        if f.part in ("max", "min"):
            return self.number(Field("s", "seat"), size.nominal + (high if f.part == "max" else low))
        nominal = self.dia + self.number(Field("s", "seat"), size.nominal)
        unit = " " + self.unit_word(Field("s", "seat", "up")) if self.dev == "µm" else ""
        if f.part == "tol":
            return self.devs.format(up=self.signed(high), lo=self.signed(low))
        if self.form == "class":
            return nominal + self.join + size.tolerance_class
        if self.form == "class and deviations":
            both = self.devs.format(up=self.signed(high), lo=self.signed(low))
            return f"{nominal}{self.join}{size.tolerance_class} ({both}{unit})"
        if self.form == "deviations":
            return f"{nominal} {self.devs.format(up=self.signed(high), lo=self.signed(low))}{unit}"
        if self.form == "plus-minus":
            return f"{nominal} ±{self.number(Field('s', 'seat', 'up'), high)}{unit}"
        if self.form == "limits":
            top, bottom = (self.number(Field("s", "seat"), size.nominal + v) for v in (high, low))
            return self.dia + self.limits.format(max=top, min=bottom)
        return nominal

    def stated(self, size: Size) -> Size:
        """What of a seat the firm's form states."""
        low, high = size.lower or 0.0, size.upper or 0.0
        if self.form in ("class", "class column", "fit"):
            return Size(size.nominal, None, None, size.tolerance_class)
        if self.form in ("limits", "limit columns"):
            f = Field("s", "seat")
            low, high = (self.snap(f, size.nominal + v) if self.inch else size.nominal + v for v in (low, high))
            return Size(low, 0.0, high - low, bare=True)
        if self.form.startswith("class and"):
            return size
        return Size(size.nominal, low, high)

    def meant(self, machine: Machine, f: Field, s: int) -> Value:
        """What the table states of a field, in canonical units."""
        value = machine.values[f.scope, f.key, s]
        if isinstance(value, Size):
            return self.stated(value)
        return value if isinstance(value, str) else self.snap(replace(f, part=""), value)

    def text(self, machine: Machine, f: Field, s: int) -> str:
        """The text of a field's cell."""
        value = machine.values[f.scope, f.key, s]
        if isinstance(value, Size):
            text = self.seat(f, value)
        elif isinstance(value, str):
            return self.choice(value, machine.name)
        elif f.key == "bal":
            return "G" + self.plain(value, 0) if self.voice % 2 == 0 else "G " + self.plain(value, 1)
        else:
            text = self.number(f, value)
        alone = f.key != "seat" or f.part not in ("", "tol", "cls") or len(FORMS[self.form]) > 1
        unit = self.unit_word(f)
        return f"{text} {unit}" if self.units == "cell" and unit and alone else text

    def hole(self, f: Field, s: int) -> str:
        """What stands where the firm states no value; empty where it states one."""
        keys = self.holes.split()
        return keys[-1] if s == 1 and f.key in keys[:-1] else ""

    def choice(self, value: str, name: str) -> str:
        """The firm's word of a choice; of names and designations the text itself."""
        if value not in CHOICES:
            return {"ru": "нормальная", "zh": "CN", "ja": "CN"}.get(self.language, "CN") if value == "CN" else value
        words = CHOICES[value].split("|")[LANGUAGES.index(self.language)].split("/")
        return words[len(name) % len(words)]

    # ------------------------------------------------------------ headings

    def short(self, f: Field) -> str:
        """A name under the heading of its part."""
        return self.word(f.part or f.key)

    def full(self, f: Field) -> str:
        """A name that says its part itself."""
        if f.key not in SIDED:
            return self.word(f.key)
        side = f.scope.upper() + "."
        key = side + (f.part or f.key)
        if key in self.own or key in WORDS[self.language]:
            return self.word(key)
        feature = self.word(f.part or f.key)
        pattern = self.word("full")
        return pattern.format(f=feature, p=self.word(side + "p"))

    def headed(self, name: str, f: Field, always: bool = False) -> str:
        """A name with its unit, where the firm writes units in headings (or nowhere else can tell this one)."""
        unit = self.unit_word(f)
        told = f.quantity in ("length", "fine", "dev", "rough")
        if unit and (self.units == "heading" or always or (self.units in ("title", "foot") and not told)):
            return name + self.brackets.format(unit)
        return name

    def sentence(self) -> str:
        """The sentence of units of a title or a foot."""
        which = "in" if self.inch else "um" if "µm" in (self.fine, self.dev) else "mm"
        if which == "um" and self.fine != self.dev:
            raise ValueError("the sentence of units speaks of deviations and geometrical tolerances")
        return self.word("units." + which)


def planned(firm: Firm, scope: str) -> list[Field]:
    """The fields of a scope in the firm's plan: ``b: des d s: seat ra m: name nmax``; ``h: =`` as the shaft."""
    found = dict(re.findall(r"\b([bshm]): ((?:(?! [bshm]: ).)*)", firm.plan))
    keys = found.get(scope, "").split()
    if keys == ["="]:
        keys = found["s"].split()
    return [Field(scope, k, part) for k in keys for part in (FORMS[firm.form] if k == "seat" else ("",))]
