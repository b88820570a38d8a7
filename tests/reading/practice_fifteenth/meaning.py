"""The machines of an office: what its table means, before anything is written."""

from dataclasses import dataclass, field
from typing import Any

from practice.grammar import Size, Value

from practice_fifteenth.style import Field, Style, fields
from practice_fifteenth.trade import ANGULAR, BALL, INCH, ROLES, ROLLER, deviations

SHAFT_CLASSES = ("k5", "k6", "js5", "js6", "h5", "h6", "g6", "j5", "j6", "m5", "m6")
HOUSING_CLASSES = ("H6", "H7", "J6", "J7", "JS6", "K6", "G6", "G7", "H5", "K7")
ALL = "seat ra cyl run sh shr fil"


@dataclass
class Machine:
    """A rotor in its bearings: values by scope, key and position (-1: the machine), and words of choices."""

    name: str
    positions: tuple[str, ...]
    values: dict[tuple[str, str, int], Value] = field(default_factory=dict)
    words: dict[tuple[str, str, int], str] = field(default_factory=dict)
    implied: dict[tuple[int, str], Value] = field(default_factory=dict)


def _suffixed(name: str, suffix: str) -> dict[str, Any]:
    """What a designation says beyond its sizes."""
    kind = "angular contact ball" if name.startswith("7") else "cylindrical roller" if name[0] == "N" else ""
    angle = {"B": 40.0, "A": 25.0, "C": 15.0}.get(suffix.lstrip(" -")[:1], 30.0) if name.startswith("7") else 0.0
    closed = (
        "shield"
        if "ZZ" in suffix or "2Z" in suffix
        else "contact seal"
        if "RS" in suffix or "DDU" in suffix
        else "open"
    )
    return {
        "bearing_type": kind or "deep groove ball", "contact_angle": angle, "closure": closed,
        "clearance_class": "C3" if "C3" in suffix else "CN",
        "tolerance_class": next((p for p in ("P4", "P5", "P6") if p in suffix), "Normal"),
    }  # fmt: skip


def _size(style: Style, side: str, nominal: float, tolerance_class: str) -> Size:
    low, high = deviations(tolerance_class, nominal)
    if style.inch:
        low, high = (round(v / 25.4, 4) * 25.4 for v in (low, high))
    return Size(nominal, low, high, tolerance_class)


def stated(form: str, size: Size, inch: bool) -> Size:
    """What of a seat the form of its tolerance states."""
    if size.lower is None or size.upper is None:
        raise ValueError("no deviations")
    if form in ("class", "class column", "fit only", "pair"):
        return Size(size.nominal, None, None, size.tolerance_class)
    if form in ("limits", "limits cell"):
        low, high = size.nominal + size.lower, size.nominal + size.upper
        if inch:
            low, high = (round(v / 25.4, 4) * 25.4 for v in (low, high))
        return Size(low, 0.0, high - low, bare=True)
    if form.startswith("class and"):
        return size
    return Size(size.nominal, size.lower, size.upper)


def machine(style: Style, name: str, positions: tuple[str, ...], kind: str = "ball", suffix: str = "") -> Machine:
    """Draw a machine: seats of its bearings' sizes, usual classes, loads far below the ratings."""
    rng = style.rng
    m = Machine(name, positions)
    rows = {"ball": BALL, "angular": ANGULAR, "roller": BALL[9:], "inch": INCH}[kind]
    row: tuple[Any, ...] = rng.choice(rows if kind != "roller" else rows[3:8])
    plus_minus = style.form.startswith("plus-minus")
    shaft_class = rng.choice(["js5", "js6"] if plus_minus else SHAFT_CLASSES)
    housing_class = "JS6" if plus_minus else rng.choice(HOUSING_CLASSES)
    oiled = rng.choice(["oil bath", "oil-air"]) if kind == "roller" or rng.random() < 0.25 else "grease"
    if any(sign in suffix for sign in ("Z", "RS", "DDU")):
        oiled = "grease"
    scale = 25.4 if kind == "inch" else 1.0

    def put(scope: str, key: str, s: int, value: float) -> None:
        m.values[scope, key, s] = style.snap(fields(scope, key, "class")[0], value)

    for s, position in enumerate(positions):
        if s and (rng.random() < 0.5 or kind == "roller"):
            row = rng.choice([r for r in (ROLLER if kind == "roller" else rows) if abs(r[1] - row[1]) <= 10])
        if s and rng.random() < 0.3 and not plus_minus:
            housing_class = rng.choice(HOUSING_CLASSES)
        base, d, big, width, rs, c, c0 = row
        d, big, width, rs = (v * scale for v in (d, big, width, rs))
        own = suffix if not (base[0] == "N" or kind == "inch") else suffix if kind == "inch" else ""
        m.values["bearing", "des", s] = base + own
        told = _suffixed(base, own) | {
            "bore_diameter": d, "outside_diameter": big, "ring_width": width, "ring_chamfer": rs,
        }  # fmt: skip
        if kind == "inch":  # makers print 0.016 in beside 0.4 mm and 0.031 in beside 0.8 mm, from memory
            told["ring_chamfer"] = 0.4 if base in ("R6", "R8") else 0.8
        m.implied.update({(s, parameter): value for parameter, value in told.items()})
        for key, value in (("d", d), ("D", big), ("B", width), ("rs", rs)):
            put("bearing", key, s, value)
        for key, value in (("C", c), ("C0", c0)):
            put("bearing", key, s, value * 1000)
        put("bearing", "Fr", s, round(c * 1000 * rng.choice([0.02, 0.035, 0.05]), -1))
        put("bearing", "Fa", s, round(c * 1000 * rng.choice([0.008, 0.012, 0.02]), -1))
        put("bearing", "temp", s, rng.choice([55, 60, 65, 70, 75]))
        put("bearing", "grease", s, rng.choice([2000, 4000, 6000, 8000]))
        choice(style, m, "bearing", "lub", s, oiled)
        choice(style, m, "bearing", "role", s, ROLES.get(position, "locating" if s == 0 else "floating"))
        if position in ROLES:
            m.implied[s, "axial_role"] = ROLES[position]
        for key, parameter in (("clr", "clearance_class"), ("tol", "tolerance_class")):
            m.values["bearing", key, s] = told[parameter]
            normal = {"zh": "P0", "ja": "P0", "ru": "нормальный"}.get(style.language, "Normal")
            m.words["bearing", key, s] = normal if told[parameter] == "Normal" else told[parameter]
        grade = rng.choice([0.002, 0.003])
        for side, at, cls in (("shaft", d, shaft_class), ("housing", big, housing_class)):
            m.values[side, "seat", s] = _size(style, side, at, cls)
            add = 0.001 if side == "housing" else 0
            for key, value in (("cyl", grade + add), ("run", 2 * grade + add), ("shr", 2 * grade + 2 * add)):
                put(side, key, s, value)
            rough = [0.4, 0.8, 1.6] if kind != "inch" else [16 * 0.0254, 32 * 0.0254, 63 * 0.0254]
            put(side, "ra", s, rng.choice(rough[:2] if side == "shaft" else rough[1:]))
            height = min(2 * rs + 0.05 * (big - d), 0.3 * (big - d))
            step = 0.01 * 25.4 if kind == "inch" else 0.5
            put(side, "sh", s, round((at + 2 * height if side == "shaft" else at - 2 * height) / step) * step)
            put(side, "fil", s, round(rs * (0.8 if rs >= 1 else 1.0), 1) if kind != "inch" else rs)
    _whole(style, m)
    return m


def choice(style: Style, m: Machine, scope: str, key: str, s: int, value: str) -> None:
    m.values[scope, key, s], m.words[scope, key, s] = value, style.choice(key, value)


def _whole(style: Style, m: Machine) -> None:
    """The values of the whole machine."""
    rng = style.rng
    numbers = {
        "nmax": rng.choice([3600, 6000, 9000, 12500, 18000]), "life": rng.choice([8000, 20000, 25000, 40000]),
        "mass": rng.choice([1.2, 2.4, 3.65, 7.8]), "span": rng.choice([84, 112, 146.5, 180]),
        "tmin": rng.choice([-30, -20, -10]), "tamb": rng.choice([20, 25, 40]), "tsh": rng.choice([65, 75, 80]),
        "tho": rng.choice([50, 55, 60]), "pforce": rng.choice([40, 80, 150, 220]),
        "coax": rng.choice([0.008, 0.01, 0.015]), "ask.temp": 70,
    }  # fmt: skip
    numbers["nop"] = numbers["nmax"] * rng.choice([0.8, 0.9])
    if style.inch:
        numbers["span"] = rng.choice([3.5, 4.25, 6.125]) * 25.4
    for key, value in numbers.items():
        f = fields("machine", key, "class")[0]
        m.values["machine", key, -1] = style.snap(f, value)
    m.values["machine", "bal", -1] = rng.choice([1.0, 2.5, 6.3])
    m.words["machine", "bal", -1] = "G" + style.plain(float(str(m.values["machine", "bal", -1])), 1)
    m.values["machine", "name", -1] = m.name
    m.values["machine", "dwg", -1] = f"{rng.choice(['LW', 'RB', 'DR', 'M'])}-{rng.randint(10000, 99999)}"
    m.values["machine", "rev", -1] = rng.choice("ABCD")
    choice(style, m, "machine", "smat", -1, rng.choice(["steel", "steel", "stainless steel"]))
    choice(style, m, "machine", "hmat", -1, rng.choice(["cast iron", "aluminium", "steel"]))
    choice(
        style, m, "machine", "preload", -1, rng.choice(["spring", "rigid"]) if m.positions[0] not in ROLES else "none"
    )
    choice(style, m, "machine", "orient", -1, rng.choice(["horizontal", "vertical"]))
    for s in range(len(m.positions)):
        m.words["shaft", "x0", s] = style.plain(rng.choice([12, 14, 18.5, 22]), 1)
        m.words["housing", "x0", s] = style.plain(rng.choice([10, 12, 16, 20]), 1)
        m.words["shaft", "x1", s] = rng.choice(["M17x1", "M20x1", "M25x1.5"])
        m.words["shaft", "x2", s] = rng.choice(["58 HRC", "60 HRC", "28 HRC"])
        m.values["bearing", "ask.ra", s] = style.snap(Field("bearing", "ra", "", "rough"), rng.choice([0.4, 0.8]))
        m.values["bearing", "ask.clr", s] = float(rng.choice([8, 12, 15]))
