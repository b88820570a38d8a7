"""How an office shows a value: unit, decimal mark, form of the tolerance; and what the shown cells then mean."""

import re
import unicodedata
from dataclasses import dataclass, field
from random import Random

from practice.grammar import Expected, Size, Value

from .trade import Values, deviations
from .words import Words

Text = str | float
#: Canonical unit of the parameters that have one; ``fine`` lengths are tolerances of form and position.
CANONICAL = {
    "speed": "r/min",
    "life": "h",
    "temperature": "degC",
    "mass": "kg",
    "force": "N",
    "load": "N",
    "rating": "N",
    "rate": "N/mm",
    "roughness": "um",
    "cylindricity": "fine",
    "runout": "fine",
    "coaxiality": "fine",
    "viscosity": "mm2/s",
    "fill": "%",
    "diameter": "mm",
    "width": "mm",
    "chamfer": "mm",
    "radius": "mm",
    "length": "mm",
    "span": "mm",
}
INCH = {
    "mm": ("in", 25.4, 4),
    "fine": ("in", 25.4, 4),
    "um": ("µin", 0.0254, 0),
    "N": ("lbf", 4.4482216152605, 1),
    "degC": ("°F", 1.8, 0),
    "kg": ("lb", 0.45359237, 2),
    "N/mm": ("lbf/in", 4.4482216152605 / 25.4, 1),
}
SPEEDS = {
    "de": ["1/min", "min-1", "U/min"],
    "fr": ["tr/min"],
    "ru": ["об/мин"],
    "it": ["giri/min", "rpm"],
    "en": ["rpm", "r/min"],
    "es": ["rpm", "min-1"],
    "zh": ["r/min", "rpm"],
    "ja": ["min-1", "rpm"],
}
RUSSIAN = {
    "mm": "мм",
    "um": "мкм",
    "µm": "мкм",
    "N": "Н",
    "kN": "кН",
    "kg": "кг",
    "g": "г",
    "h": "ч",
    "mm2/s": "мм2/с",
    "N/mm": "Н/мм",
}
#: Words of the total run-out; without one a run-out may be the circular one.
TOTAL = ("total", "gesamt", "totale", "полное", "全跳动", "全振れ")
#: What a form of the seats is called in the counts.
FORMS = {
    "class": "class in cell",
    "class column": "class in columns",
    "dev columns": "deviations in columns",
    "um columns": "deviations in columns",
    "dev cell": "deviations in cell",
    "um cell": "deviations in cell",
    "limit columns": "limit columns",
    "limit cell": "limits in cell",
    "class+dev cell": "class and deviations in cell",
    "class+dev columns": "class and deviations in columns",
    "pm": "deviations in cell",
}


@dataclass(eq=False)
class Item:
    """One cell to come: what it shows, of which machine and position, and where it ended up."""

    m: int
    s: int
    parameter: str
    aspect: str
    text: Text
    unit: str = ""
    own: list[str] = field(default_factory=list)
    heads: list[str] = field(default_factory=list)
    words: list[str] = field(default_factory=list)


@dataclass
class Fact:
    """A value of the truth and the cells that carry it."""

    m: int
    s: int
    parameter: str
    value: Value
    form: str
    items: list[Item]
    verdict: str = "read"

    def expected(self) -> Expected:
        own = tuple(dict.fromkeys(a for i in self.items for a in i.own))
        heads = tuple(dict.fromkeys(a for i in self.items for a in i.heads))
        words = tuple(dict.fromkeys(w for i in self.items for w in i.words))
        if self.parameter.endswith("seat_runout") and not any(t in w.lower() for t in TOTAL for w in words):
            self.verdict = "either"  # a run-out that is not called total may be asked about
        return Expected(self.m, self.s, self.parameter, self.value, self.verdict, self.form, own + heads, words, own)


@dataclass
class Office:
    """The habits of one office."""

    rng: Random
    words: Words
    suffix: str
    seat: str
    place: str = "heading"
    comma: bool = False
    inch: bool = False
    joined: bool = False
    case: str = "free"
    micro: bool = False
    kilo: bool = False
    typed: bool = True
    shoulder: str = "plain"

    def __post_init__(self) -> None:
        self.language = self.words.language
        self.unit_form = self.rng.choice(["{n} [{u}]", "{n} ({u})", "{n}, {u}", "{n} in {u}", "{n} / {u}", "{n} {u}"])
        if self.unit_form == "{n} in {u}" and self.language not in ("en", "de"):
            self.unit_form = "{n}, {u}"
        self.speed = self.rng.choice(SPEEDS[self.language])
        self.aspect_form = self.rng.choice(["{n} {a}", "{n}, {a}", "{n} ({a})", "{n} - {a}"])
        self.position_form = self.rng.choice(["{p} {n}", "{n} {p}", "{n} ({p})", "{p}: {n}", "{n} - {p}", "{p} - {n}"])
        self.sign = {"ru": "", "zh": "φ", "ja": "φ"}.get(self.language, "Ø") if self.rng.random() < 0.6 else ""
        self.prefix = (
            self.rng.choice(["", "p_", "BRG_"]) if self.case != "free" and self.suffix in ("csv", "txt") else ""
        )
        self.integers = self.suffix == "json" and self.rng.random() < 0.6
        self.gap = self.rng.choice([" ", " ", ""])

    # -- units

    def unit(self, parameter: str) -> tuple[str, str, float, int]:
        """Canonical unit, label, factor to the canonical unit, places after the point."""
        part = next((w for w in reversed(parameter.split("_")) if w in CANONICAL), "")
        part = next((w for w in parameter.split("_") if w in ("viscosity", "speed", "temperature", "coaxiality")), part)
        kind = CANONICAL.get(part, "")
        if self.inch and kind in INCH:
            label, factor, places = INCH[kind]
        elif kind == "fine":
            label, factor, places = ("µm", 0.001, 1) if self.micro else ("mm", 1.0, 4)
        elif kind == "kg" and self.micro:
            label, factor, places = "g", 0.001, 0
        elif kind == "N" and self.kilo and "force" not in parameter:
            label, factor, places = "kN", 1000.0, 3
        else:
            label = {"r/min": self.speed, "degC": "°C", "um": "µm"}.get(kind, kind)
            factor, places = 1.0, 4
        if self.language == "ru":
            label = RUSSIAN.get(label, label)
        if self.language in ("zh", "ja") or self.case != "free":
            label = label.replace("µ", "u" if self.case != "free" else "μ")
        return kind, label, factor, places

    def number(self, value: float, places: int, fixed: bool = False, text: bool = False) -> Text:
        rounded = round(value, places) + 0.0
        if self.typed and not text:
            return int(rounded) if self.integers and rounded.is_integer() else rounded
        shown = f"{rounded:.{places}f}"
        if not fixed and "." in shown:
            shown = shown.rstrip("0").rstrip(".")
        return shown.replace(".", ",") if self.comma else shown

    def signed(self, value: float, places: int) -> str:
        return ("+" if value > 0 else "") + str(self.number(value, places, text=True))

    # -- names

    def name(self, parameter: str, aspect: str = "value", position: str = "", bare: bool = False) -> str:
        """The heading without its unit."""
        if parameter.startswith("noise:"):
            base = parameter[6:]
        elif parameter in ("shaft_seat", "housing_seat"):
            base = self.words.name(parameter + "_diameter", self.joined)
        else:
            base = self.words.name(parameter, self.joined)
        return self.finish(base, aspect, position, bare)

    def finish(self, base: str, aspect: str, position: str, bare: bool = False) -> str:
        if aspect not in ("value", "nominal"):
            word = self.words(f"aspect.{aspect}")
            base = word if bare else self.aspect_form.format(n=base, a=word)
        if position:
            base = self.position_form.format(n=base, p=position)
        return self.cased(base)

    def cased(self, text: str) -> str:
        if self.case == "free":
            return text
        for old, new in (
            ("ä", "ae"),
            ("ö", "oe"),
            ("ü", "ue"),
            ("ß", "ss"),
            ("Ø", "dia "),
            ("Ä", "Ae"),
            ("Ö", "Oe"),
            ("°", " "),
        ):
            text = text.replace(old, new)
        for old, new in (("ES/es", "ES"), ("EI/ei", "EI"), ("+ tol", "plus tol"), ("- tol", "minus tol")):
            text = text.replace(old, new)
        text = unicodedata.normalize("NFKD", text).encode("ascii", "ignore").decode()
        parts = re.findall(r"[A-Za-z0-9]+", text)
        if self.case == "camel":
            return "".join(p[0].upper() + p[1:] for p in parts)
        return "_".join(p.lower() for p in parts)

    def with_unit(self, name: str, unit: str) -> str:
        if self.place != "heading" or not unit:
            return name
        if self.case == "free":
            return self.unit_form.format(n=name, u=unit)
        plain = {
            "1/min": "rpm",
            "min-1": "rpm",
            "r/min": "rpm",
            "U/min": "rpm",
            "°C": "degC",
            "°F": "degF",
            "%": "pct",
            "N/mm": "N_per_mm",
            "tr/min": "rpm",
            "giri/min": "rpm",
            "lbf/in": "lbf_per_in",
        }.get(unit, unit)
        return f"{name}_{plain.replace('/', '_')}"

    def title_unit(self, unit: str) -> str:
        """The unit where lengths are told by the title alone: headings name the others."""
        return "" if unit in ("mm", "мм", "in") else unit

    # -- values

    def cell(self, value: Text, unit: str) -> Text:
        return f"{value} {unit}" if self.place == "cell" and unit else value

    def facts(self, values: Values, m: int, s: int, parameter: str) -> list[Fact]:
        """The facts that the cells of one parameter carry; where no unit is told anywhere they may be asked about."""
        found = self._facts(values, m, s, parameter)
        if self.place == "none":
            for fact in found:
                if fact.verdict == "read" and any(i.unit for i in fact.items):
                    fact.verdict = "either"
            for item in (i for fact in found for i in fact.items):
                item.unit = ""
        return found

    def _facts(self, values: Values, m: int, s: int, parameter: str) -> list[Fact]:
        if parameter in ("shaft_seat", "housing_seat"):
            return [self.seat_fact(values, m, s, parameter)]
        if parameter == "seat_roughness":
            value = values[m, s, "housing_seat_roughness"]
            _, label, _, places = self.unit(parameter)
            item = Item(m, s, parameter, "value", self.cell(self.number(float(value), places), label), label)  # type: ignore[arg-type]
            return [Fact(m, s, "shaft_seat_roughness|housing_seat_roughness", value, "number", [item], "ask")]
        value = values[m, s, parameter]
        if parameter == "preload":
            return self.preload(m, str(value))
        if isinstance(value, str):
            word = self.words.any(f"={value}") if f"={value}" in self.words.known else value
            return [Fact(m, s, parameter, value, "text", [Item(m, s, parameter, "value", word)])]
        assert isinstance(value, float), parameter
        kind, label, factor, places = self.unit(parameter)
        if kind == "degC" and self.inch:
            shown, value = value * 1.8 + 32, (round(value * 1.8 + 32) - 32) / 1.8
        else:
            shown = value / factor
            value = round(round(shown, places) * factor, 9)
        if "shoulder_diameter" in parameter and self.shoulder != "plain":
            return [self.abutment(m, s, parameter, float(value), label)]
        if kind == "" or parameter == "balance_grade":
            label = ""
        text = self.number(shown, places, text=self.place == "cell" and bool(label))
        fact = Fact(m, s, parameter, value, "number", [Item(m, s, parameter, "value", self.cell(text, label), label)])
        if parameter == "preload_force" and (m, -1, "spring_rate") in values:
            words = self.words(parameter).lower()
            if any(w in words for w in ("spring", "feder", "ressort", "molla", "muelle", "пружин", "弹簧", "ばね")):
                return [fact, Fact(m, s, "preload_method", "spring", "text", fact.items, "either")]
        return [fact]

    def preload(self, m: int, kind: str) -> list[Fact]:
        item = Item(m, -1, "preload", "value", self.words.any(f"={kind}"))
        if kind == "rigid":
            return [Fact(m, -1, "preload_method", "rigid", "text", [item])]
        return [
            Fact(m, -1, "preload_method", "spring", "text", [item]),
            Fact(m, -1, "spring_kind", kind, "text", [item]),
        ]

    def abutment(self, m: int, s: int, parameter: str, value: float, label: str) -> Fact:
        shaft = parameter.startswith("shaft")
        lower, upper = (-0.1, 0.1) if self.shoulder == "pm" else (-0.1, 0.0) if shaft else (0.0, 0.1)
        tail = (
            f"±{self.number(0.1, 2, text=True)}"
            if self.shoulder == "pm"
            else f"{self.signed(upper, 2)}/{self.signed(lower, 2)}"
        )
        text = self.cell(f"{self.number(value, 1, text=True)} {tail}", label)
        return Fact(
            m,
            s,
            parameter,
            Size(value, lower, upper),
            "deviations in cell",
            [Item(m, s, parameter, "value", text, label)],
        )

    def seat_fact(self, values: Values, m: int, s: int, parameter: str) -> Fact:
        nominal = float(values[m, s, "bore_diameter" if parameter == "shaft_seat" else "outside_diameter"])  # type: ignore[arg-type]
        name = str(values[m, s, parameter + "_class"])
        low, high = (d / 1000 for d in deviations(name, nominal))
        unit = self.unit("seat_diameter")[1]
        scale, places = (25.4, 5) if self.inch else (1.0, 4)
        size, lower, upper = (round(v / scale, places) for v in (nominal, low, high))
        form = self.seat if self.seat != "pm" or name[:2].lower() == "js" else "dev cell"
        pieces: list[tuple[str, Text, str]]
        shown = self.number(size, places)
        plain = f"{self.sign}{self.number(size, places, text=True)}"
        both = f"{self.signed(upper, places)}/{self.signed(lower, places)}"
        micro = self.unit("seat_roughness")[1]
        value = Size(nominal, None, None, name)
        if form == "class":
            pieces = [("value", plain + self.gap + name, unit)]
        elif form == "class column":
            pieces = [("nominal", self.cell(shown, unit), unit), ("class", name, "")]
        elif form in ("limit columns", "limit cell"):
            at = [round(nominal / scale + d / scale, places) for d in (low, high)]
            value = Size(round(at[0] * scale, 9), 0.0, round((at[1] - at[0]) * scale, 9), "", True)
            if form == "limit columns":
                pieces = [
                    (a, self.cell(self.number(x, places, True), unit), unit)
                    for a, x in (("max", at[1]), ("min", at[0]))
                ]
            else:
                text = self.rng.choice(["{0}-{1}", "{1}/{0}", "{0} - {1}", "{1} / {0}"])
                if not hasattr(self, "limit_form"):
                    self.limit_form = text
                texts = [
                    self.number(x, 3 if not self.inch and name[:2].lower() != "js" else places, True, True) for x in at
                ]
                pieces = [("value", self.cell(self.sign + self.limit_form.format(*texts), unit), unit)]
        else:
            stated = name if form.startswith("class") else ""
            value = Size(round(size * scale, 9), round(lower * scale, 9), round(upper * scale, 9), stated)
            in_micro = f"{self.signed(high * 1000, 1)}/{self.signed(low * 1000, 1)}"
            pieces = {
                "dev columns": [
                    ("nominal", shown, unit),
                    ("upper", self.number(upper, places), unit),
                    ("lower", self.number(lower, places), unit),
                ],
                "um columns": [
                    ("nominal", shown, unit),
                    ("upper", self.number(high * 1000, 1), micro),
                    ("lower", self.number(low * 1000, 1), micro),
                ],
                "um cell": [("nominal", shown, unit), ("dev", in_micro, micro)],
                "dev cell": [("value", self.cell(f"{plain} {both}", unit), unit)],
                "pm": [("value", self.cell(f"{plain} ±{self.number(upper, places, text=True)}", unit), unit)],
                "class+dev cell": [("value", self.cell(f"{plain} {name} ({both})", unit), unit)],
                "class+dev columns": [
                    ("nominal", shown, unit),
                    ("class", name, ""),
                    ("upper", self.number(upper, places), unit),
                    ("lower", self.number(lower, places), unit),
                ],
            }[form]
            if self.place == "cell" and form in ("dev columns", "um columns", "um cell", "class+dev columns"):
                pieces = [(a, f"{t} {u}" if u else t, u) for a, t, u in pieces]
        items = [Item(m, s, parameter, aspect, text, u) for aspect, text, u in pieces]
        return Fact(m, s, parameter + "_diameter", value, FORMS[form], items)
