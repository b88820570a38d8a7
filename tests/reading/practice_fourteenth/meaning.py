"""What a table means before it is written: machines, positions, values, and how each is shown in cells.

Sizes and chamfers come from :mod:`practice.bearings` (ISO 15, ISO 582, from memory); deviations are those of
ISO 286-1, from memory. Machines, drawings and codes are invented.
"""

import random
import re
from dataclasses import dataclass, field
from typing import Any

from practice.bearings import follows
from practice.grammar import Size, Value

from practice_fourteenth.phrases import ways
from practice_fourteenth.trade import (
    CODES,
    FACTOR,
    FEATURES,
    GOST,
    HOUSING,
    HOUSING_STEPS,
    INCH,
    KINDS,
    MARKS,
    PLACES,
    QUANTITY,
    SHAFT,
    SHAFT_STEPS,
    SMALL,
    SPINDLE,
    SUFFIXES,
)


@dataclass
class Style:
    """How one office writes: language, units, forms; the headings it has settled on."""

    language: str
    form: str
    unit_place: str
    rng: random.Random
    inch: bool = False
    fine: str = "mm"  # unit of deviations
    small: str = "mm"  # unit of form tolerances
    groups: str = ""  # between the thousands of speeds and hours
    said: dict[str, str] = field(default_factory=dict)

    def __post_init__(self) -> None:
        ru, pick = self.language == "ru", self.rng.choice
        self.ways = ways(self.language)
        self.comma = self.language in ("de", "fr", "it", "es", "ru")
        speeds = {"de": ("1/min", "min-1", "U/min"), "fr": ("tr/min",), "it": ("giri/min", "rpm"), "ru": ("об/мин",)}
        self.units = {
            "length": "in" if self.inch else "мм" if ru else "mm",
            "rough": "µin" if self.inch else "мкм" if ru else "µm",
            "speed": pick(speeds.get(self.language, ("rpm", "r/min", "min-1", "1/min"))), "life": "ч" if ru else "h",
            "form": "in" if self.inch else {"mm": "мм", "µm": "мкм"}[self.small] if ru else self.small,
            "mass": "lb" if self.inch else "кг" if ru else pick(("kg", "kg", "g")), "grade": "",
            "load": "lbf" if self.inch else "Н" if ru else "N", "heat": "°F" if self.inch else "°C",
        }  # fmt: skip
        if self.unit_place == "title":
            self.units["speed"] = {"de": "1/min", "fr": "tr/min", "it": "giri/min", "zh": "r/min", "ja": "min-1"}.get(
                self.language, self.units["speed"] if ru else "rpm"
            )
            self.units["form"], self.fine = self.units["length"], "mm"
        self.joint = pick((" [{}]", " ({})", " in {}" if self.language == "de" else ", {}"))
        self.sides = {"shaft": self.way("shaft"), "housing": self.way("housing")}

    def way(self, key: str) -> str:
        """The one way this office says a thing."""
        return self.said.setdefault(key, self.rng.choice(self.ways[key]))

    def number(self, value: float, places: int, sign: bool = False) -> str:
        text = f"{value:+.{places}f}" if sign and value else f"{value:.{places}f}"
        text = text.rstrip("0").rstrip(".") if "." in text else text
        return text.replace(".", ",") if self.comma else text


@dataclass
class Piece:
    """One cell of a value: what of the value it holds (``main``, ``class``, ``upper`` ...), text, unit."""

    what: str
    text: str
    unit: str = ""
    number: bool = False


@dataclass
class Entry:
    """What the cells of one heading say of one position (station -1: of the machine)."""

    station: int
    code: str
    side: str
    pieces: list[Piece]
    says: list[tuple[str, Value, str]]  # parameter, value, verdict
    form: str


@dataclass
class Machine:
    name: str
    stations: tuple[str, ...]
    general: list[Entry]
    positions: list[list[Entry]]
    implied: list[dict[str, Value]]


def deviations(sign: str, nominal: float) -> tuple[float, float]:
    """Lower and upper deviation in mm."""
    steps, table = (SHAFT_STEPS, SHAFT) if sign in SHAFT else (HOUSING_STEPS, HOUSING)
    upper, lower = table[sign][next(k for k, step in enumerate(steps) if nominal <= step)]
    return lower / 1000, upper / 1000


def plain(style: Style, station: int, code: str, side: str, value: float) -> Entry:
    """A number in the office's unit."""
    quantity = QUANTITY[code]
    unit = style.units[quantity]
    name = (FEATURES[code].format(side)) if side else CODES[code]
    verdict = "read"
    places = PLACES[quantity] + (0 if unit == "in" and quantity == "form" else 2 if unit in ("in", "lb") else 0)
    if quantity == "heat":
        text = style.number(value * 1.8 + 32 if unit == "°F" else value, 0)
        value = (float(text) - 32) / 1.8 if unit == "°F" else float(text)
    else:
        factor = FACTOR.get(unit, 1.0) * (1000.0 if quantity == "rough" and unit in ("µm", "мкм") else 1.0)
        places = {"µin": 0, "g": 0, "µm": 2, "мкм": 2}.get(unit, places)
        text = style.number(value / factor, places)
        value = round(float(text.replace(",", ".")) * factor, 10)
        if style.groups and quantity in ("speed", "life") and value >= 10000:
            text = f"{value:,.0f}".replace(",", style.groups)
            verdict = "either" if style.groups in (",", ".") else "read"
    if code == "bal":
        return Entry(
            station,
            code,
            side,
            [Piece("main", "G" + style.rng.choice(("", " ")) + text)],
            [(name, value, "read")],
            "number",
        )
    if code in (".ra", ".fil") and not style.inch:
        dress = {".ra": ("Ra ", "Ra", "", "", "", "", "", ""), ".fil": ("R", "R ", "max. ", "", "", "", "", "")}[code]
        if before := style.said.setdefault("dress" + code, style.rng.choice(dress)):
            piece = Piece("main", before + text + (f" {unit}" if style.unit_place == "cell" else ""), unit)
            return Entry(station, code, side, [piece], [(name, value, verdict)], "number")
    return Entry(station, code, side, [Piece("main", text, unit, True)], [(name, value, verdict)], "number")


def seat(style: Style, station: int, side: str, nominal: float, sign: str) -> Entry:
    """A seat in the office's form of tolerances."""
    name, form, number = f"{side}_seat_diameter", style.form, style.number
    lower, upper = deviations(sign, nominal)
    base, length = number(nominal, 3), style.units["length"]
    factor, places, fine = (1000, 1, "µm") if style.fine == "µm" else (1, 4, "mm")
    low, high = (number(x * factor, places, sign=True) for x in (lower, upper))
    shown_fine = {"mm": "мм", "µm": "мкм"}[fine] if style.language == "ru" else fine
    size = Size(nominal, lower, upper)
    both = Size(nominal, lower, upper, sign)
    main = Piece("main", base, length, True)
    if form == "limits":
        factor = 25.4 if style.inch else 1.0
        places = 5 if style.inch else 4
        texts = [f"{(nominal + x) / factor:.{places}f}" for x in (lower, upper)]
        least, most = (float(t) for t in texts)
        bare = Size(least * factor, 0.0, round(most - least, 6) * factor, "", True)
        texts = [t.replace(".", ",") if style.comma else t for t in texts]
        pieces = [Piece(w, t, length, True) for w, t in zip(("min", "max"), texts, strict=True)]
        return Entry(station, ".seat", side, pieces, [(name, bare, "read")], "size")
    if form == "class column":
        return Entry(
            station,
            ".seat",
            side,
            [main, Piece("class", sign)],
            [(name, Size(nominal, tolerance_class=sign), "read")],
            "size",
        )
    if form in ("deviation columns", "class and deviation columns"):
        pieces = [main, Piece("upper", high, shown_fine, True), Piece("lower", low, shown_fine, True)]
        if form.startswith("class"):
            pieces.insert(1, Piece("class", sign))
        return Entry(
            station, ".seat", side, pieces, [(name, both if form.startswith("class") else size, "read")], "size"
        )
    if form == "fit only":
        return Entry(
            station,
            ".fit",
            side,
            [Piece("main", sign)],
            [(name, Size(nominal, tolerance_class=sign), "either")],
            "size",
        )
    mark = style.said.setdefault("mark", style.rng.choice(MARKS.get(style.language, ("Ø", "", "ø", ""))))
    if form == "class":
        gap = style.said.setdefault("gap", style.rng.choice((" ", "", " ")))
        return Entry(
            station,
            ".seat",
            side,
            [Piece("main", f"{mark}{base}{gap}{sign}", length)],
            [(name, Size(nominal, tolerance_class=sign), "read")],
            "size",
        )
    if form == "plus-minus" and upper == -lower:
        text = f"{mark}{base} ±{number(upper, 4)}"
        return Entry(station, ".seat", side, [Piece("main", text, length)], [(name, size, "read")], "size")
    stated = fine == "µm" and form != "deviations bare"
    pair = f"{high}/{low}" if form != "plus-minus" else f"{high} {low}"
    pair += f" {shown_fine}" if stated else ""
    if form == "class and deviations":
        return Entry(
            station,
            ".seat",
            side,
            [Piece("main", f"{mark}{base} {sign} ({pair})", length)],
            [(name, both, "read")],
            "size",
        )
    verdict = "either" if form == "deviations bare" else "read"
    return Entry(
        station, ".seat", side, [Piece("main", f"{mark}{base} {pair}", length)], [(name, size, verdict)], "size"
    )


def choice(style: Style, station: int, code: str, value: str, said: str = "") -> Entry:
    text = said or style.way("=" + value)
    return Entry(station, code, "", [Piece("main", text)], [(CODES[code], value, "read")], "choice")


def text(station: int, code: str, value: str) -> Entry:
    return Entry(station, code, "", [Piece("main", value)], [(CODES[code], value, "read")], "text")


def like(style: Style, spindle: bool, before: dict[str, Value] | None, made: str) -> Any:
    """A bearing for the next position: that of the one before, or (not of a spindle) one about as large."""
    if before is None:
        return designation(style, spindle)
    found = designation(style, spindle)
    for _ in range(60):
        if spindle and found[0] == made:
            break
        if not spindle and abs(float(found[1]["bore_diameter"]) - float(before["bore_diameter"])) <= 5:  # type: ignore[arg-type]
            break
        found = designation(style, spindle)
    return found


def designation(style: Style, spindle: bool) -> tuple[str, dict[str, Value], tuple[float, float, float, float]]:
    """Designation, what follows from it, its sizes."""
    rng = style.rng
    if style.inch and rng.random() < 0.4:
        base = rng.choice(sorted(INCH))
        d, outside, width, chamfer = INCH[base]
        known: dict[str, Value] = {
            "bearing_type": "deep groove ball", "bore_diameter": d, "outside_diameter": outside, "ring_width": width,
            "ring_chamfer": chamfer, "closure": "shield", "clearance_class": "CN", "tolerance_class": "Normal",
            "contact_angle": 0.0,
        }  # fmt: skip
        return base + "ZZ", known, INCH[base]
    if style.language == "ru" and rng.random() < 0.5:
        name = rng.choice(sorted(GOST))
        known = follows(GOST[name])
    else:
        name = (
            rng.choice(SPINDLE)
            if spindle
            else rng.choice(SMALL) + style.said.setdefault("suffix", rng.choice(SUFFIXES))
        )
        known = follows(name)
    sizes = tuple(float(known[k]) for k in ("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer"))
    return name, known, sizes  # type: ignore[return-value]


def position(
    style: Style, k: int, name: str, plan: dict[str, bool], spindle: bool, last: tuple[str, dict[str, Value]] | None
) -> tuple[list[Entry], dict[str, Value]]:
    """The entries of one position."""
    rng, named = style.rng, re.search(r"Festlager|Loslager", name)
    said, known, (d, outside, width, chamfer) = like(style, spindle, last[1] if last else None, last[0] if last else "")
    at = text(k, "st", name)
    locates = k == 0
    if named:
        at.says.append(("axial_role", "locating" if locates else "floating", "either"))
    out = [at, text(k, "des", said)]
    if plan["sizes"]:
        out += [plain(style, k, code, "", x) for code, x in (("d", d), ("D", outside), ("B", width))]
    if plan["role"] and not named:
        other = "spring-loaded" if plan["spring role"] or spindle else "floating"
        out.append(choice(style, k, "role", "locating" if locates else other))
    shaft = rng.choice(("k5", "k5", "j5", "k6", "js6", "h5", "m5"))
    housing = rng.choice(("H6", "H7", "J6", "JS6", "K6") if locates else ("H6", "H7", "G6", "H5"))
    if style.form == "plus-minus":
        shaft, housing = "js6", "JS6"
    wall = max(round((outside - d) * 0.16 * 2) / 2, 1.0)
    if style.form == "fit pair":
        pair = [
            (f"{s}_seat_diameter", Size(n, tolerance_class=c), "either")
            for s, n, c in (("shaft", d, shaft), ("housing", outside, housing))
        ]
        out.append(Entry(k, "fit pair", "", [Piece("main", f"{shaft} / {housing}")], pair, "size"))  # type: ignore[arg-type]
    for side, nominal, sign in (("shaft", d, shaft), ("housing", outside, housing)):
        if style.form != "fit pair":
            out.append(seat(style, k, side, nominal, sign))
        ideal = {
            ".ra": rng.choice((0.2, 0.4, 0.8) if side == "shaft" else (0.4, 0.8, 1.6)),
            ".cyl": rng.choice((0.002, 0.003, 0.004)),
            ".run": rng.choice((0.003, 0.004, 0.005, 0.006)),
            ".sh": d + 2 * wall if side == "shaft" else outside - 2 * wall,
            ".shr": rng.choice((0.004, 0.005, 0.006, 0.008)), ".fil": chamfer,
        }  # fmt: skip
        out += [plain(style, k, code, side, x) for code, x in ideal.items() if plan[side + code]]
    for code, value in (("Fr", rng.choice((12, 18.5, 35, 60, 85, 140))), ("Fa", rng.choice((5, 8, 15, 22.5, 40)))):
        if plan[code]:
            out.append(plain(style, k, code, "", value))
    if plan["lub"]:
        kind = rng.choice(
            ("grease for high speed", "oil-air", "grease") if spindle else ("grease", "grease", "grease for high speed")
        )
        out.append(choice(style, k, "lub", style.said.setdefault("greased", kind)))
    if plan["top"]:
        out.append(plain(style, k, "top", "", rng.choice((55, 60, 70, 75))))
    for e in out[2:]:
        if rng.random() < 0.03 and e.code not in (".seat", "fit pair", ".fit"):
            e.pieces, e.says = [Piece("main", rng.choice(("", "-", "-" if style.language == "ja" else "–")))], []
    return out, known


def machine(style: Style, names: tuple[str, ...], number: int, plan: dict[str, bool]) -> Machine:
    """One machine with its positions."""
    rng = style.rng
    kind = rng.choice(KINDS[style.language])
    called = f"{kind} {rng.choice('ABGKLMRST')}{rng.choice('BDFHPVX')}-{rng.randint(12, 96)}"
    spindle = kind == KINDS[style.language][1]
    general = [
        text(-1, "machine", called),
        text(-1, "dwg", f"{rng.randint(10, 99)}-{rng.randint(1000, 9999)}-{number:02}"),
    ]
    general.append(text(-1, "rev", rng.choice("ABCDEF")))
    fast, slow = (18000, 24000, 32000), (3000, 6000, 9000, 12000, 15000, 18000)
    numbers = {
        "n": rng.choice(fast if spindle else slow), "life": rng.choice((8000, 10000, 20000, 30000)),
        "span": rng.choice((38, 46.5, 62, 84, 110, 126.5)), "mass": rng.choice((0.18, 0.42, 0.65, 1.2, 2.4)),
        "bal": rng.choice((0.4, 1.0, 2.5, 6.3)), "tmax": rng.choice((80, 90, 110)),
        "tmin": rng.choice((-30, -20, -10, 5)),
        "tamb": rng.choice((20, 25, 35, 40)), "coax": rng.choice((0.005, 0.008, 0.01, 0.012)),
    }  # fmt: skip
    general += [plain(style, -1, code, "", x) for code, x in numbers.items() if plan[code]]
    for code, kinds in (
        ("shm", ("steel", "steel", "stainless steel")),
        ("hom", ("aluminium", "aluminium", "cast iron")),
    ):
        if plan[code]:
            general.append(choice(style, -1, code, rng.choice(kinds)))
    if plan["orient"]:
        general.append(choice(style, -1, "orient", rng.choice(("horizontal", "vertical"))))
    if plan["temp"] and not plan["tmax"] and not plan["tamb"]:
        which = "temperature_max|operating_temperature|housing_temperature|ambient_temperature"
        warm = rng.choice((60, 70, 80))
        general.append(
            Entry(-1, "temp", "", [Piece("main", str(warm), "°C", True)], [(which, float(warm), "ask")], "number")
        )
    force = rng.choice((12, 25, 40, 65, 90, 120))
    if plan["prel"]:
        spring = rng.choice(("wave", "helical", "disc"))
        said = rng.choice(style.ways["=" + spring])
        says: list[tuple[str, Value, str]] = [("preload_method", "spring", "read"), ("spring_kind", spring, "read")]
        if plan["prel force"] and not style.inch:
            said += f" {force} {style.units['load']}"
            says.append(("preload_force", float(force), "read"))
        general.append(Entry(-1, "prel", "", [Piece("main", said)], says, "choice"))
    elif plan["pf"]:
        entry = plain(style, -1, "pf", "", force)
        if re.search("Spring|Feder|molla|muelle|弹簧|ばね", style.way("pf")):
            entry.says.append(("preload_method", "spring", "either"))
        general.append(entry)
    made: list[tuple[list[Entry], dict[str, Value]]] = []
    for k, name in enumerate(names):
        last = (made[-1][0][1].pieces[0].text, made[-1][1]) if made else None
        made.append(position(style, k, name, plan, spindle, last))
    return Machine(called, names, general, [m[0] for m in made], [m[1] for m in made])
