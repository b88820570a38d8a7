"""A drawing office: its language, its words, its units, its marks, and what it writes into a cell."""

import random
import re
from dataclasses import dataclass, field
from typing import Any

from practice.grammar import Size, Value

from practice_eighteenth.trade import OWN, SIDED, Item, Rotor

LANGUAGES = ("en", "de", "fr", "it", "es", "ru", "zh", "ja")
#: Words of choices in the order of LANGUAGES; of several an office has its own.
CHOICES = {
    "grease": "Grease packed/Grease|Fettfüllung/Fett|Graisse|Grasso|Grasa|Консистентная смазка|润滑脂|グリース",
    "locating": "Locating/Fixed|Festlager/fest|Fixe|Bloccato|Fijo|Фиксирующая|固定端|固定側",
    "floating": "Non-locating/Free|Loslager/lose|Libre|Libero|Libre|Плавающая|游动端|自由側",
    "horizontal": "Horizontal|horizontal/waagerecht|Horizontal|Orizzontale|Horizontal|Горизонтальная|卧式|横型",
    "vertical": "Vertical|vertikal/senkrecht|Vertical|Verticale|Vertical|Вертикальная|立式|縦型",
    "steel": "42CrMo4/Steel AISI 4140|42CrMo4/C45E|Acier 42CrMo4/Acier|Acciaio C45/Acciaio|Acero F-114/Acero|"
    "Сталь 40Х/Сталь|40Cr/45钢|SCM440/S45C",
    "cast iron": "Cast iron GG25/Cast iron|EN-GJL-250/Grauguss|Fonte EN-GJL-250/Fonte|Ghisa G25/Ghisa|"
    "Fundición gris/Fundición|Чугун СЧ25/Чугун|HT250/灰铸铁|FC250/鋳鉄",
    "aluminium": "Aluminium alloy/Aluminum|AlMgSi1/Aluminium|Alliage d'aluminium/Aluminium|Lega di alluminio/Alluminio|"
    "Aleación de aluminio/Aluminio|Алюминиевый сплав/Алюминий|铸铝/铝合金|アルミ合金/アルミニウム",
    "continuous": "Continuous|Dauerbetrieb|Continu|Continuo|Continuo|Непрерывный|连续|連続",
    "intermittent": "Intermittent|Aussetzbetrieb|Intermittent|Intermittente|Intermitente|"
    "Повторно-кратковременный|间歇|間欠",
    "inner": "Inner ring|Innenring|Bague intérieure|Anello interno|Anillo interior|Внутреннее кольцо|内圈|内輪",
    "open": "Open|offen|Ouvert|Aperto|Abierto|Открытый|开式|開放形",
    "shield": "Shields/Shielded|Deckscheiben|Flasques|Schermi metallici|Tapas metálicas|"
    "Металлические шайбы|防尘盖|シールド",
    "contact seal": "Contact seals|berührende Dichtscheiben|Joints frottants|Tenute striscianti|Obturaciones rozantes|"
    "Контактные уплотнения|接触式密封圈|接触シール",
    "deep groove ball": "Deep groove ball bearing|Rillenkugellager|Roulement rigide à billes|"
    "Cuscinetto radiale rigido a sfere|Rodamiento rígido de bolas|Радиальный шариковый|深沟球轴承|深溝玉軸受",
    "angular contact ball": "Angular contact ball bearing|Schrägkugellager|Roulement à billes à contact oblique|"
    "Cuscinetto obliquo a sfere|Rodamiento de bolas de contacto angular|Радиально-упорный шариковый|角接触球轴承|"
    "アンギュラ玉軸受",
    "cylindrical roller": "Cylindrical roller bearing|Zylinderrollenlager|Roulement à rouleaux cylindriques|"
    "Cuscinetto a rulli cilindrici|Rodamiento de rodillos cilíndricos|Роликовый цилиндрический|圆柱滚子轴承|"
    "円筒ころ軸受",
}  # fmt: skip
#: What one of a unit is in canonical units.
FACTORS = {
    "mm": 1.0, "µm": 0.001, "in": 25.4, "µin": 0.0254, "rpm": 1.0, "N": 1.0, "kN": 1000.0, "lbf": 4.4482216152605,
    "h": 1.0, "kg": 1.0, "lb": 0.45359237, "°C": 1.0, "°F": 1.0, "N·m": 1.0, "mm²/s": 1.0, "%": 1.0, "°": 1.0,
}  # fmt: skip
FOREIGN = {
    "de": {"rpm": "U/min", "N·m": "Nm"}, "fr": {"rpm": "tr/min"}, "it": {"rpm": "giri/min"}, "es": {"rpm": "rpm"},
    "ru": {"mm": "мм", "µm": "мкм", "rpm": "об/мин", "N": "Н", "kN": "кН", "h": "ч", "kg": "кг", "N·m": "Н·м",
           "mm²/s": "мм²/с"},
    "zh": {"rpm": "r/min"}, "ja": {"rpm": "min-1", "N·m": "Nm"}, "en": {},
}  # fmt: skip
#: Which parts of a seat have cells of their own, by the form of the tolerance.
FORMS = {
    "class": ("",), "class column": ("", "cls"), "fit": ("cls",), "class with deviations": ("",), "deviations": ("",),
    "deviation columns": ("", "up", "lo"), "class and deviation columns": ("", "cls", "up", "lo"),
    "lower first": ("", "lo", "up"), "limit columns": ("min", "max"),
    "max min columns": ("max", "min"), "limits": ("",), "plus minus": ("",),
}  # fmt: skip


@dataclass(frozen=True)
class Export:
    """One of an office's tables: how it is laid out, into which file, with what of its style changed."""

    layout: str
    file: str
    at: str
    more: dict[str, Any]


@dataclass
class Office:
    """How an office writes."""

    language: str
    words: dict[str, str]
    form: str
    exports: tuple[Export, ...]
    units: str = "head"  # head, row, column, cell, title, foot
    fine: str = "mm"
    dev: str = "mm"
    force: str = "N"
    rating: str = "kN"
    inch: bool = False
    ring_mm: bool = False
    comma: bool = False
    fixed: bool = False
    group: str = ""
    brackets: str = " [{}]"
    dia: str = ""
    join: str = " "
    devs: str = "{up}/{lo}"
    limits: str = "{max}/{min}"
    choice: int = 0
    block: str = "pairs"
    skip: str = ""
    spelt: dict[str, str] = field(default_factory=dict)
    rng: random.Random = field(default_factory=random.Random)

    def items(self, scope: str) -> list[Item]:
        """What the office states of a machine, a bearing, a shaft or a housing, in its order."""
        found = []
        for key in self.words:
            one = key in OWN and OWN[key][0] == scope and key != "station"
            if key in self.skip.split() or not (one or (key in SIDED and scope in "sh")):
                continue
            found += [Item(scope, key, part) for part in (FORMS[self.form] if key == "seat" else ("",))]
        return found

    def unit(self, item: Item) -> str:
        """The unit of an item; empty of what has none."""
        inch = self.inch
        length = "in" if inch else "mm"
        return {
            "seat": length, "length": length, "ring": "mm" if self.ring_mm else length,
            "fine": "in" if inch else self.fine, "dev": "in" if inch else self.dev, "rough": "µin" if inch else "µm",
            "speed": "rpm", "life": "h", "mass": "lb" if inch else "kg", "temp": "°F" if inch else "°C",
            "force": "lbf" if inch else self.force, "rating": "lbf" if inch else self.rating,
            "newton": "lbf" if inch else "N", "torque": "N·m", "visc": "mm²/s", "percent": "%", "deg": "°", "": "",
        }[item.quantity]  # fmt: skip

    def unit_word(self, item: Item) -> str:
        """The unit as the office spells it."""
        unit = self.unit(item)
        return self.spelt.get(unit, FOREIGN[self.language].get(unit, unit))

    def shown(self, item: Item, value: float) -> float:
        """A value in the office's unit, rounded to what it shows."""
        unit = self.unit(item)
        if unit == "µin":
            return float(min((16, 32, 63), key=lambda n: abs(n * 0.0254 - value)))
        if unit == "°F":
            return float(round(value * 1.8 + 32))
        if item.quantity == "rough":
            return value
        places = {"µm": 2, "in": 4, "lbf": 0, "lb": 1}.get(unit, 6)
        return round(value / (FACTORS[unit] if unit else 1.0), places)

    def snap(self, item: Item, value: float) -> float:
        """A value in canonical units as the office shows it."""
        unit, shown = self.unit(item), self.shown(item, value)
        if unit == "°F":
            return (shown - 32) / 1.8
        if item.quantity == "rough":
            return shown * (0.0254 if unit == "µin" else 1.0)
        return shown * (FACTORS[unit] if unit else 1.0)

    def number(self, item: Item, value: float) -> str:
        """A value as text, without its unit."""
        unit = self.unit(item)
        least = {"in": 4, "mm": 3 if item.quantity in ("fine", "dev") else 0}.get(unit, 0)
        if self.fixed and unit == "mm" and item.quantity in ("seat", "ring"):
            least = 3 if item.quantity == "seat" else 1
        text = f"{self.shown(item, value):.6f}"
        while text.endswith("0") and len(text.partition(".")[2]) > least:
            text = text[:-1]
        text = text.rstrip(".")
        text = text.lstrip("-") if not float(text) else text
        if self.group and item.quantity in ("speed", "life") and re.fullmatch(r"\d{4,}", text):
            return text[:-3] + self.group + text[-3:]
        return text.replace(".", ",") if self.comma else text

    def signed(self, value: float, part: str = "up") -> str:
        """A deviation with its sign; of a zero none."""
        text = self.number(Item("s", "seat", part), value)
        return text if text.startswith("-") or not text.strip("0.,") else "+" + text

    def seat(self, item: Item, size: Size) -> str:
        """The text of a seat, or of a part of it."""
        low, high = size.lower or 0.0, size.upper or 0.0
        whole, dev = Item("s", "seat"), Item("s", "seat", "up")
        if item.part == "cls":
            return size.tolerance_class
        if item.part in ("up", "lo"):
            return self.signed(high if item.part == "up" else low)
        if item.part in ("max", "min"):
            return self.number(whole, size.nominal + (high if item.part == "max" else low))
        both = self.devs.format(up=self.signed(high), lo=self.signed(low))
        if self.form.startswith("plus minus"):
            both = "±" + self.number(dev, high)
        nominal = self.dia + self.number(whole, size.nominal)
        unit = " " + self.unit_word(dev) if self.dev == "µm" or (self.units == "cell" and not self.inch) else ""
        top, bottom = (self.number(whole, size.nominal + v) for v in (high, low))
        return {
            "class": nominal + self.join + size.tolerance_class, "deviations": f"{nominal} {both}{unit}",
            "class with deviations": f"{nominal}{self.join}{size.tolerance_class} ({both}{unit})",
            "plus minus": f"{nominal} {both}{unit}", "limits": self.dia + self.limits.format(max=top, min=bottom),
        }.get(self.form, nominal)  # fmt: skip

    def meant(self, rotor: Rotor, item: Item, s: int) -> Value:
        """What the table states of an item, in canonical units."""
        value = rotor.values[item.scope, item.key, s]
        if isinstance(value, str):
            return value
        if not isinstance(value, Size):
            return self.snap(item, value)
        whole, dev = Item("s", "seat"), Item("s", "seat", "up")
        nominal = self.snap(whole, value.nominal) if self.form != "fit" else value.nominal
        low, high = value.lower or 0.0, value.upper or 0.0
        if self.form in ("class", "class column", "fit"):
            return Size(nominal, None, None, value.tolerance_class)
        if self.form in ("limits", "limit columns", "max min columns"):
            bottom, top = (self.snap(whole, value.nominal + v) for v in (low, high))
            return Size(bottom, 0.0, top - bottom, bare=True)
        known = value.tolerance_class if self.form.startswith("class") else ""
        return Size(nominal, self.snap(dev, low), self.snap(dev, high), known)

    def text(self, rotor: Rotor, item: Item, s: int) -> str:
        """The text of an item's cell."""
        value = rotor.values[item.scope, item.key, s]
        if isinstance(value, Size):
            text, alone = self.seat(item, value), len(FORMS[self.form]) > 1
        elif isinstance(value, str):
            return self.chosen(value)
        elif item.key == "bal":
            return f"G{' ' * (self.choice % 2)}" + f"{value:g}".replace(".", "," if self.comma else ".")
        else:
            text, alone = self.number(item, value), True
        unit = self.unit_word(item)
        if self.units != "cell" or not unit or not alone:
            return text
        return text + ("" if unit in "°%" and self.language not in ("de", "fr") else " ") + unit

    def chosen(self, value: str) -> str:
        """The office's word of a choice; names and designations as they are."""
        if value not in CHOICES:
            return value
        words = CHOICES[value].split("|")[LANGUAGES.index(self.language)].split("/")
        return words[self.choice % len(words)]

    # ------------------------------------------------------------ headings

    def short(self, item: Item) -> str:
        """A name under the heading of its part."""
        return self.words[item.part or item.key]

    def full(self, item: Item) -> str:
        """A name that says its part itself."""
        if item.key not in SIDED:
            return self.words[item.key]
        own = f"{item.scope}.{item.part or item.key}"
        if own in self.words:
            return self.words[own]
        return self.words["full"].format(f=self.short(item), p=self.words[item.scope + ".p"])

    def headed(self, name: str, item: Item, always: bool = False) -> str:
        """A name with its unit, where the office writes it there or says it nowhere else."""
        unit = self.unit_word(item)
        told = item.quantity in ("length", "fine", "dev", "rough", "seat", "ring")
        if unit and (self.units == "head" or always or (self.units in ("title", "foot") and not told)):
            return name + self.brackets.format(unit)
        return name


def office(language: str, form: str, words: str, *exports: Export, **style: Any) -> Office:
    """An office; its words are written as ``key=heading; key=heading``, in its order."""
    pairs = (part.split("=", 1) for part in re.split(r";\s*", words.strip()) if part.strip())
    known = {key.strip(): " ".join(text.split()) for key, text in pairs}
    side = {"s.p": known.get("shaft", ""), "h.p": known.get("housing", ""), "full": "{p} {f}"}
    return Office(language, side | known, form, exports, **style)


def export(layout: str, file: str, at: str = "", **more: Any) -> Export:
    """A table of an office: ``at`` names the positions, ``A,B``."""
    return Export(layout, file, at, more)
