"""What is known of the trade and what a machine's values are, before anything is written.

Rings and what follows from designations are those of practice/bearings.py, deviations those of ISO 286-1. Loads and
ratings are of a usual order for the size; machines, drawings and their numbers are invented.
"""

import random
from dataclasses import dataclass, field

from practice.bearings import basic, follows
from practice.grammar import Size, Value

from linter.mechanics.limits import deviations_or_nan

#: Parameter and quantity of a key.
OWN = {
    "name": ("machine", ""), "dwg": ("drawing_number", ""), "rev": ("drawing_revision", ""),
    "nmax": ("speed_max", "speed"), "nop": ("speed_operating", "speed"), "life": ("required_life", "life"),
    "mass": ("rotor_mass", "mass"), "span": ("bearing_span", "length"), "tamb": ("ambient_temperature", "temp"),
    "tsh": ("shaft_temperature", "temp"), "tho": ("housing_temperature", "temp"), "smat": ("shaft_material", ""),
    "hmat": ("housing_material", ""), "pf": ("preload_force", "newton"), "orient": ("shaft_orientation", ""),
    "bal": ("balance_grade", ""), "station": ("station", ""), "des": ("bearing_designation", ""),
    "d": ("bore_diameter", "length"), "D": ("outside_diameter", "length"), "B": ("ring_width", "length"),
    "rs": ("ring_chamfer", "length"), "Fr": ("radial_load", "force"), "Fa": ("axial_load", "force"),
    "C": ("dynamic_rating", "rating"), "C0": ("static_rating", "rating"), "clr": ("clearance_class", ""),
    "lub": ("lubrication", ""), "role": ("axial_role", ""), "temp": ("operating_temperature", "temp"),
    "nut": ("nut_torque", "torque"), "regr": ("regreasing_interval", "life"), "nu40": ("base_oil_viscosity_40", "visc"),
    "nlim": ("limiting_speed", "speed"), "ask.ra": ("shaft_seat_roughness|housing_seat_roughness", "rough"),
    "ask.temp": (
        "operating_temperature|ambient_temperature|shaft_temperature|housing_temperature|temperature_max", "temp",
    ),
}  # fmt: skip
#: Features that a shaft and a housing have both, and their quantity.
SIDED = {
    "seat": ("_seat_diameter", "length"), "ra": ("_seat_roughness", "rough"), "cyl": ("_seat_cylindricity", "fine"),
    "run": ("_seat_runout", "fine"), "sh": ("_shoulder_diameter", "length"), "shr": ("_shoulder_runout", "fine"),
    "fil": ("_fillet_radius", "length"),
}  # fmt: skip
SHAFT_CLASSES = ("k5", "k6", "js5", "h5", "h6", "g6", "j6", "m5", "js6", "j5")
HOUSING_CLASSES = ("H6", "H7", "J7", "JS7", "G7", "K6", "J6", "H8", "K7", "N6")
BALL = (
    "608", "609", "6000", "6001", "6002", "6003", "6004", "6005", "6006", "6200", "6201", "6202", "6203", "6204",
    "6205", "6206", "6207", "6300", "6301", "6302", "6303", "6304", "6305", "6306", "6904", "6905", "6208", "6308",
)  # fmt: skip
ANGULAR = ("71904", "71905", "71906", "71907", "7002", "7003", "7004", "7005", "7006", "7202", "7203", "7204", "7206")
ROLLER = ("NU204", "NU205", "NU206", "NJ207", "NU208")
MACHINES = {
    "en": "Air knife blower K-22|Sump pump SP-12|Planer spindle PS-30|Belt grinder BG-7|Cooling fan CF-250|"
    "Test rig drive TD-4|Dosing mixer DM-3|Winder roll WR-90|Hydraulic motor HM-16|Flywheel unit FU-5",
    "de": "Absauggebläse AG 12|Förderpumpe FP 40|Hobelspindel HS 28|Prüfstandsantrieb PA 6|Lüfter LF 220|"
    "Dosiermischer DM 2|Wickelwalze WW 80|Schwungradeinheit SE 4",
    "fr": "Soufflante SF 12|Pompe de relevage PR 20|Broche de rabotage BR 30|Mélangeur doseur MD 2",
    "it": "Aspiratore AS 14|Pompa dosatrice PD 6|Mandrino piallatrice MP 30|Volano VO 4",
    "es": "Aspirador industrial AI 9|Bomba dosificadora BD 6|Husillo cepillador HC 30|Volante VO 4",
    "ru": "Дымосос ДС-12|Насос дозировочный НД-6|Шпиндель строгальный ШП-30|Маховик МХ-4",
    "zh": "引风机 YF-12|计量泵 JL-6|刨床主轴 PZ-30|飞轮单元 FL-4",
    "ja": "排風機 HF-12|定量ポンプ TP-6|かんな主軸 KS-30|フライホイール FW-4",
}
POSITIONS = {
    "en": "DE,NDE|A,B|Drive side,Opposite side|Front bearing,Rear bearing|Left,Right|Pulley end,Fan end",
    "de": "A,B|Antriebsseite,Gegenseite|AS,BS|Lager links,Lager rechts|Lager 1,Lager 2|vorne,hinten",
    "fr": "Palier A,Palier B|Côté entraînement,Côté libre|avant,arrière",
    "it": "Lato accoppiamento,Lato opposto|Cuscinetto A,Cuscinetto B|anteriore,posteriore",
    "es": "Lado accionamiento,Lado opuesto|A,B|delantero,trasero",
    "ru": "А,Б|Сторона привода,Свободная сторона|Передняя опора,Задняя опора",
    "zh": "驱动侧,自由侧|左端,右端|前轴承,后轴承",
    "ja": "駆動側,自由側|左側,右側|前部,後部",
}


@dataclass
class Machine:
    """A rotor in its bearings: values by scope, key and position (-1: the machine), and what designations say."""

    name: str
    positions: tuple[str, ...]
    values: dict[tuple[str, str, int], Value] = field(default_factory=dict)
    implied: dict[tuple[int, str], Value] = field(default_factory=dict)


def parameter(scope: str, key: str) -> str:
    """The parameter of the vocabulary, or several of which it cannot be told which."""
    return {"s": "shaft", "h": "housing"}[scope] + SIDED[key][0] if key in SIDED else OWN[key][0]


def size(nominal: float, tolerance_class: str) -> Size:
    """A seat with the deviations of its class, in mm."""
    low, high = (float(d) for d in deviations_or_nan(tolerance_class, nominal))
    return Size(nominal, round(low / 1000, 6), round(high / 1000, 6), tolerance_class)


def machine(rng: random.Random, name: str, positions: tuple[str, ...], kind: str, form: str) -> Machine:
    """Draw a machine.

    Parameters
    ----------
    rng : random.Random
        Of the firm.
    name, positions : str and tuple
        As the firm calls them.
    kind : str
        ``ball``, ``angular`` or ``roller``, and after a blank what follows the basic designation.
    form : str
        Form of the tolerances; ``plus-minus`` wants symmetrical classes.
    """
    m = Machine(name, positions)
    what, _, suffix = kind.partition(" ")
    symmetrical = form.startswith("plus-minus")
    first = rng.choice({"ball": BALL, "angular": ANGULAR, "roller": ROLLER}[what])
    fit = rng.choice(("js5", "js6") if symmetrical else SHAFT_CLASSES)
    bore_fit = rng.choice(("JS6", "JS7") if symmetrical else HOUSING_CLASSES)
    oil = what == "roller"
    for s in range(len(positions)):
        base = first
        if s and rng.random() < 0.6:
            base = rng.choice(BALL[9:17] if what == "roller" else {"ball": BALL, "angular": ANGULAR}[what])
        if s and rng.random() < 0.4 and not symmetrical:
            bore_fit = rng.choice(HOUSING_CLASSES)
        name_of = base + (suffix if what != "roller" else "")
        known = basic(name_of)
        if known is None:
            raise ValueError(name_of)
        d, outside, width, rs = known[2]
        m.implied |= {(s, key): value for key, value in follows(name_of).items()}
        put: dict[tuple[str, str], Value] = {
            ("b", "des"): name_of, ("b", "d"): d, ("b", "D"): outside, ("b", "B"): width, ("b", "rs"): rs,
        }  # fmt: skip
        rating = round(2.2 * (outside - d) ** 1.25 * width**0.35) * 50.0
        put |= {
            ("b", "C"): rating, ("b", "C0"): round(rating * 0.011) * 50.0,
            ("b", "Fr"): max(20.0, round(rating * rng.choice((0.02, 0.03, 0.05)) / 10) * 10.0),
            ("b", "Fa"): max(10.0, round(rating * rng.choice((0.008, 0.012)) / 10) * 10.0),
            ("b", "temp"): float(rng.choice((55, 60, 70, 75, 80))), ("b", "clr"): m.implied[s, "clearance_class"],
            ("b", "lub"): "oil bath" if oil else "grease", ("b", "role"): ("locating", "floating")[s],
            ("b", "nut"): float(rng.choice((12, 18, 25, 40))), ("b", "regr"): float(rng.choice((1500, 3000, 5000))),
            ("b", "nu40"): float(rng.choice((22, 32, 68, 100))), ("b", "nlim"): round(9600 / (d + outside)) * 100.0,
            ("b", "ask.ra"): rng.choice((0.4, 0.8)),
        }  # fmt: skip
        grade = rng.choice((0.002, 0.003, 0.004))
        height = max(1.0, min(2.2 * rs, 0.28 * (outside - d)))
        for side, at, cls, sign in (("s", float(d), fit, 1), ("h", float(outside), bore_fit, -1)):
            more = 0.001 if side == "h" else 0.0
            put |= {
                (side, "seat"): size(at, cls), (side, "ra"): rng.choice((0.4, 0.8) if side == "s" else (0.8, 1.6)),
                (side, "cyl"): round(grade + more, 4), (side, "run"): round(2 * grade + more, 4),
                (side, "shr"): round(2 * grade + 2 * more, 4), (side, "fil"): rs if rs < 1 else round(rs - 0.2, 2),
                (side, "sh"): round((at + sign * 2 * height) * 2) / 2,
            }  # fmt: skip
        m.values |= {(scope, key, s): value if isinstance(value, str | Size) else float(value)
                     for (scope, key), value in put.items()}  # fmt: skip
    _whole(rng, m)
    return m


def _whole(rng: random.Random, m: Machine) -> None:
    """The values of the whole machine."""
    fast = float(rng.choice((2900, 4500, 7200, 9500, 14000)))
    values: dict[str, Value] = {
        "name": m.name, "dwg": f"{rng.choice(('ZB', 'K', 'PX', 'T'))}{rng.choice('-.')}{rng.randint(1000, 9999)}-"
        f"{rng.randint(10, 99)}", "rev": rng.choice("ABCDE"), "nmax": fast, "nop": round(fast * 0.8, -2),
        "life": float(rng.choice((10000, 16000, 30000, 50000))), "mass": rng.choice((0.85, 1.6, 3.2, 5.75)),
        "span": float(rng.choice((62, 95, 128, 164.5))), "tamb": float(rng.choice((20, 30, 35, 45))),
        "tsh": float(rng.choice((60, 70, 85))), "tho": float(rng.choice((48, 52, 58))),
        "pf": float(rng.choice((35, 60, 120, 180))), "bal": rng.choice((1.0, 2.5, 6.3)), "ask.temp": 65.0,
        "smat": rng.choice(("steel", "steel", "stainless steel")),
        "hmat": rng.choice(("cast iron", "aluminium", "steel")), "orient": rng.choice(("horizontal", "vertical")),
    }  # fmt: skip
    m.values |= {("m", key, -1): value for key, value in values.items()}
