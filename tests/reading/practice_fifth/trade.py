"""Bearings, tolerance classes and cases: what a table means before it is written down.

Boundary dimensions by ISO 15, chamfers by ISO 582, ratings about those of makers' catalogues (from memory), deviations
by ISO 286-2 (from memory; the test holds them against the tables of the rulebook).
"""

import random
from dataclasses import dataclass, field
from typing import Any

#: Designation, kind, d, D, B, rs min in mm, C, C0 in kN, limiting speed with grease in r/min.
BEARINGS = (
    ("626", "ball", 6, 19, 6, 0.3, 2.34, 0.95, 50000),
    ("608", "ball", 8, 22, 7, 0.3, 3.45, 1.37, 38000),
    ("6000", "ball", 10, 26, 8, 0.3, 4.75, 1.96, 34000),
    ("6001", "ball", 12, 28, 8, 0.3, 5.4, 2.36, 32000),
    ("6002", "ball", 15, 32, 9, 0.3, 5.85, 2.85, 28000),
    ("6900", "ball", 10, 22, 6, 0.3, 2.7, 1.27, 36000),
    ("6902", "ball", 15, 28, 7, 0.3, 4.36, 2.24, 28000),
    ("6904", "ball", 20, 37, 9, 0.3, 6.37, 3.65, 22000),
    ("6004", "ball", 20, 42, 12, 0.6, 9.95, 5, 19000),
    ("6005", "ball", 25, 47, 12, 0.6, 11.9, 6.55, 16000),
    ("6006", "ball", 30, 55, 13, 1.0, 13.8, 8.3, 14000),
    ("6203", "ball", 17, 40, 12, 0.6, 9.95, 4.75, 19000),
    ("6204", "ball", 20, 47, 14, 1.0, 13.5, 6.55, 16000),
    ("6205", "ball", 25, 52, 15, 1.0, 14.8, 7.8, 14000),
    ("6206", "ball", 30, 62, 16, 1.0, 20.3, 11.2, 12000),
    ("6208", "ball", 40, 80, 18, 1.1, 32.5, 19, 9000),
    ("6303", "ball", 17, 47, 14, 1.0, 14.3, 6.55, 17000),
    ("6304", "ball", 20, 52, 15, 1.1, 16.8, 7.8, 15000),
    ("6305", "ball", 25, 62, 17, 1.1, 23.4, 11.6, 13000),
    ("6306", "ball", 30, 72, 19, 1.1, 29.6, 16, 11000),
    ("6308", "ball", 40, 90, 23, 1.5, 42.3, 24, 8500),
    ("6310", "ball", 50, 110, 27, 2.0, 65, 38, 7000),
    ("7204 B", "angular", 20, 47, 14, 1.0, 14.3, 8.15, 15000),
    ("7206 B", "angular", 30, 62, 16, 1.0, 24, 15.6, 11000),
    ("7004 C", "spindle", 20, 42, 12, 0.6, 11.1, 6.55, 30000),
    ("7006 C", "spindle", 30, 55, 13, 1.0, 15.1, 10.3, 23000),
    ("NU 206", "roller", 30, 62, 16, 1.0, 44, 36.5, 12000),
    ("NU 208", "roller", 40, 80, 18, 1.1, 62, 53, 9500),
)
#: Inch series in inches, C and C0 in kN.
INCH = (
    ("R6", "ball", 0.375, 0.875, 0.2812, 0.016, 3.3, 1.4, 38000),
    ("R8", "ball", 0.5, 1.125, 0.3125, 0.016, 5.1, 2.4, 32000),
    ("R10", "ball", 0.625, 1.375, 0.3438, 0.031, 6.0, 3.25, 26000),
    ("R12", "ball", 0.75, 1.625, 0.4375, 0.031, 9.4, 5.0, 21000),
)
STEPS = (3, 6, 10, 18, 30, 50, 80, 120)
#: Lower and upper deviation in um by size step.
SHAFT = {
    "g6": ((-8, -2), (-12, -4), (-14, -5), (-17, -6), (-20, -7), (-25, -9), (-29, -10), (-34, -12)),
    "h5": ((-4, 0), (-5, 0), (-6, 0), (-8, 0), (-9, 0), (-11, 0), (-13, 0), (-15, 0)),
    "h6": ((-6, 0), (-8, 0), (-9, 0), (-11, 0), (-13, 0), (-16, 0), (-19, 0), (-22, 0)),
    "js5": ((-2, 2), (-2.5, 2.5), (-3, 3), (-4, 4), (-4.5, 4.5), (-5.5, 5.5), (-6.5, 6.5), (-7.5, 7.5)),
    "js6": ((-3, 3), (-4, 4), (-4.5, 4.5), (-5.5, 5.5), (-6.5, 6.5), (-8, 8), (-9.5, 9.5), (-11, 11)),
    "j5": ((-2, 2), (-2, 3), (-2, 4), (-3, 5), (-4, 5), (-5, 6), (-7, 6), (-9, 6)),
    "j6": ((-2, 4), (-2, 6), (-2, 7), (-3, 8), (-4, 9), (-5, 11), (-7, 12), (-9, 13)),
    "k5": ((0, 4), (1, 6), (1, 7), (1, 9), (2, 11), (2, 13), (2, 15), (3, 18)),
    "k6": ((0, 6), (1, 9), (1, 10), (1, 12), (2, 15), (2, 18), (2, 21), (3, 25)),
    "m5": ((2, 6), (4, 9), (6, 12), (7, 15), (8, 17), (9, 20), (11, 24), (13, 28)),
    "m6": ((2, 8), (4, 12), (6, 15), (7, 18), (8, 21), (9, 25), (11, 30), (13, 35)),
}
HOUSING = {
    "G7": ((2, 12), (4, 16), (5, 20), (6, 24), (7, 28), (9, 34), (10, 40), (12, 47)),
    "H6": ((0, 6), (0, 8), (0, 9), (0, 11), (0, 13), (0, 16), (0, 19), (0, 22)),
    "H7": ((0, 10), (0, 12), (0, 15), (0, 18), (0, 21), (0, 25), (0, 30), (0, 35)),
    "J7": ((-6, 4), (-6, 6), (-7, 8), (-8, 10), (-9, 12), (-11, 14), (-12, 18), (-13, 22)),
    "JS6": ((-3, 3), (-4, 4), (-4.5, 4.5), (-5.5, 5.5), (-6.5, 6.5), (-8, 8), (-9.5, 9.5), (-11, 11)),
    "JS7": ((-5, 5), (-6, 6), (-7.5, 7.5), (-9, 9), (-10.5, 10.5), (-12.5, 12.5), (-15, 15), (-17.5, 17.5)),
    "K6": ((-6, 0), (-6, 2), (-7, 2), (-9, 2), (-11, 2), (-13, 3), (-15, 4), (-18, 4)),
    "K7": ((-10, 0), (-9, 3), (-10, 5), (-12, 6), (-15, 6), (-18, 7), (-21, 9), (-25, 10)),
    "M7": ((-12, -2), (-12, 0), (-15, 0), (-18, 0), (-21, 0), (-25, 0), (-30, 0), (-35, 0)),
}
KINDS = {
    "length": (
        "bore_diameter",
        "outside_diameter",
        "ring_width",
        "ring_chamfer",
        "bearing_span",
        "shaft_bore",
        "housing_outer_diameter",
        "shaft_shoulder_diameter",
        "housing_shoulder_diameter",
        "shaft_fillet_radius",
        "housing_fillet_radius",
    ),
    "form": (
        "shaft_seat_cylindricity",
        "housing_seat_cylindricity",
        "shaft_seat_runout",
        "housing_seat_runout",
        "shaft_shoulder_runout",
        "housing_shoulder_runout",
    ),
    "rough": ("shaft_seat_roughness", "housing_seat_roughness"),
    "load": ("radial_load", "axial_load", "preload_force"),
    "rating": ("dynamic_rating", "static_rating"),
    "speed": ("speed_max", "speed_operating", "limiting_speed"),
    "temp": (
        "operating_temperature",
        "shaft_temperature",
        "housing_temperature",
        "temperature_min",
        "temperature_max",
        "ambient_temperature",
    ),
    "hours": ("required_life", "regreasing_interval"),
    "mass": ("rotor_mass",),
    "rate": ("spring_rate",),
    "torque": ("nut_torque",),
    "angle": ("contact_angle",),
    "viscosity": ("base_oil_viscosity_40",),
    "plain": ("balance_grade",),
    "seat": ("shaft_seat_diameter", "housing_seat_diameter"),
}
KIND = {name: kind for kind, names in KINDS.items() for name in names}
#: Where a parameter stands in a table with sections.
GROUP = {
    **dict.fromkeys(
        (
            "bearing_designation",
            "bore_diameter",
            "outside_diameter",
            "ring_width",
            "ring_chamfer",
            "tolerance_class",
            "clearance_class",
            "cage",
            "closure",
            "ball_material",
            "dynamic_rating",
            "static_rating",
            "limiting_speed",
            "contact_angle",
        ),
        "bearing",
    ),
    **dict.fromkeys(
        (
            "lubrication",
            "operating_temperature",
            "regreasing_interval",
            "radial_load",
            "axial_load",
            "axial_role",
            "base_oil_viscosity_40",
        ),
        "operation",
    ),
    "nut_torque": "shaft",
    "shaft_bore": "shaft",
    "housing_outer_diameter": "housing",
}


def group_of(parameter: str) -> str:
    """Section of a parameter: shaft, housing, bearing or operation."""
    if parameter in GROUP:
        return GROUP[parameter]
    if parameter.startswith(("shaft_seat", "shaft_shoulder", "shaft_fillet")):
        return "shaft"
    return "housing" if parameter.startswith(("housing_seat", "housing_shoulder", "housing_fillet")) else "operation"


def deviations(tolerance_class: str, nominal: float) -> tuple[float, float]:
    """Lower and upper deviation in um of a class at a size in mm."""
    table = SHAFT if tolerance_class in SHAFT else HOUSING
    return table[tolerance_class][next(k for k, step in enumerate(STEPS) if nominal <= step)]


@dataclass
class Seat:
    """A seat in the table's own unit of length, deviations in mm or inch."""

    nominal: float
    lower: float
    upper: float
    cls: str


@dataclass
class Open:
    """A value that its cell leaves open: the text, whether its unit is left out, and what can be read all the same."""

    text: Any
    no_unit: bool = False
    meant: float | None = None


@dataclass
class Machine:
    """A machine with its own values and those of its positions, in the units that are shown."""

    name: str
    own: dict[str, Any] = field(default_factory=dict)
    positions: list[dict[str, Any]] = field(default_factory=list)
    implied: list[dict[str, Any]] = field(default_factory=list)


@dataclass
class Units:
    """Units of the table."""

    length: str
    form: str
    rough: str
    load: str
    rating: str
    temp: str
    mass: str


FACTOR = {
    "mm": 1.0,
    "in": 25.4,
    "um": 0.001,
    "N": 1.0,
    "kN": 1000.0,
    "kgf": 9.80665,
    "lbf": 4.4482216152605,
    "kg": 1.0,
    "lb": 0.45359237,
}


def truth(parameter: str, shown: float, units: Units) -> float:
    """A shown number in canonical units."""
    kind = KIND.get(parameter, "plain")
    if kind in ("length", "form"):
        return round(shown * FACTOR[getattr(units, kind)], 9)
    if kind == "rough":
        return round(shown * (0.0254 if units.rough == "uin" else 1.0), 9)
    if kind in ("load", "rating"):
        return round(shown * FACTOR[getattr(units, kind)], 9)
    if kind == "mass":
        return round(shown * FACTOR[units.mass], 9)
    if kind == "temp" and units.temp == "degF":
        return round((shown - 32) / 1.8, 9)
    return shown


def shoulders(d: float, big: float, chamfer: float, inch: bool) -> tuple[float, float]:
    """Diameters of shaft and housing shoulder between the rings (about makers' abutment tables)."""
    if inch:
        height = {0.016: 0.055, 0.031: 0.08}[chamfer]
        return round(d + 2 * height, 3), round(big - 2 * height, 3)
    height = {0.3: 1.0, 0.6: 1.8, 1.0: 2.5, 1.1: 3.25, 1.5: 4.5, 2.0: 5.5}[chamfer]
    return round(d + 2 * height, 1), round(big - 2 * height, 1)


def _name(rng: random.Random, row: tuple[Any, ...], language: str) -> tuple[str, dict[str, Any]]:
    """A designation with a suffix, and what follows from it."""
    base, kind, d, big, width, chamfer = row[:6]
    implied: dict[str, Any] = {
        "bore_diameter": d,
        "outside_diameter": big,
        "ring_width": width,
        "ring_chamfer": chamfer,
        "closure": "open",
        "clearance_class": "CN",
        "tolerance_class": "Normal",
        "contact_angle": 0.0,
        "bearing_type": "deep groove ball",
    }
    suffix = ""
    if kind == "ball" and isinstance(d, int):
        suffix = rng.choice(("", "-2Z", "-2Z/C3", "-2RS", "/C3", "-2RS/C3", "/P6"))
        if language == "ja" or (language in ("en", "es") and rng.random() < 0.3):
            suffix = rng.choice(("", "ZZ", "ZZC3", "C3")) if language == "ja" else rng.choice((" ZZ", " 2RS C3", " C3"))
        implied["closure"] = "shield" if "Z" in suffix else "contact seal" if "RS" in suffix else "open"
        implied["clearance_class"] = "C3" if "C3" in suffix else "CN"
        implied["tolerance_class"] = "P6" if "P6" in suffix else "Normal"
    elif kind == "spindle":
        suffix = rng.choice(("/P4", "/P5"))
        implied |= {"bearing_type": "angular contact ball", "contact_angle": 15.0, "tolerance_class": suffix[1:]}
    elif kind == "angular":
        implied |= {"bearing_type": "angular contact ball", "contact_angle": 40.0}
    elif kind == "roller":
        suffix = rng.choice(("", "/C3"))
        implied |= {"bearing_type": "cylindrical roller", "clearance_class": "C3" if suffix else "CN"}
    return base + suffix, implied


def case(
    rng: random.Random, language: str, units: Units, names: list[str], positions: int, plus_minus: bool, wanted: int
) -> list[Machine]:
    """Machines with values; ``wanted`` is about how many values of a position are stated."""
    inch = units.length == "in"
    scale = 25.4 if inch else 1.0
    mode = rng.choice(("designation", "designation", "both", "sizes"))
    head = {
        "designation": ["bearing_designation"],
        "both": ["bearing_designation", "bore_diameter", "outside_diameter", "ring_width"],
        "sizes": ["bore_diameter", "outside_diameter", "ring_width", "ring_chamfer"],
    }[mode]
    pool = [
        "shaft_seat_roughness",
        "housing_seat_roughness",
        "shaft_seat_cylindricity",
        "housing_seat_cylindricity",
        "shaft_seat_runout",
        "housing_seat_runout",
        "shaft_shoulder_diameter",
        "housing_shoulder_diameter",
        "shaft_shoulder_runout",
        "housing_shoulder_runout",
        "shaft_fillet_radius",
        "housing_fillet_radius",
    ]
    other = [
        "radial_load",
        "axial_load",
        "lubrication",
        "axial_role",
        "dynamic_rating",
        "static_rating",
        "limiting_speed",
        "cage",
        "operating_temperature",
        "regreasing_interval",
        "tolerance_class",
        "clearance_class",
        "ring_chamfer",
        "ball_material",
        "nut_torque",
        "closure",
    ]
    if mode == "designation" or mode == "both":
        other = [p for p in other if p not in ("clearance_class", "closure", "tolerance_class")]
    rest = max(2, wanted - len(head) - 2)
    taken = set(rng.sample(pool, min(len(pool), round(rest * 0.6)))) | set(
        rng.sample(other, min(9, round(rest * 0.45)))
    )
    stated = [*head, "shaft_seat_diameter", "housing_seat_diameter", *[p for p in (*pool, *other) if p in taken]]
    stated = list(dict.fromkeys(stated))
    whole = [
        "speed_max",
        *rng.sample(
            [
                "required_life",
                "rotor_mass",
                "bearing_span",
                "shaft_material",
                "housing_material",
                "temperature_max",
                "temperature_min",
                "ambient_temperature",
                "preload_method",
                "shaft_orientation",
                "speed_operating",
                "shaft_temperature",
                "housing_temperature",
                "preload_force",
                "rotating_ring",
                "balance_grade",
            ],
            rng.randint(3, 6) if len(names) == 1 else 2,
        ),
    ]
    machines = []
    for name in names:
        rows = INCH if inch else BEARINGS
        first = rng.choice([row for row in rows if row[1] != "roller"])
        limit = first[8]
        speed = rng.choice([n for n in (1450, 2900, 3600, 6000, 9000, 12000, 18000) if n < 0.8 * limit])
        preload = "preload_force" in whole or ("preload_method" in whole and rng.random() < 0.6)
        preload = preload or first[1] in ("angular", "spindle")
        own: dict[str, Any] = {
            "speed_max": speed,
            "speed_operating": round(speed * 0.8, -1),
            "required_life": rng.choice([8000, 10000, 20000, 40000]),
            "rotor_mass": rng.choice([0.85, 1.4, 3.2, 6.5]),
            "bearing_span": rng.choice([2.25, 3.5]) if inch else rng.choice([64, 88.5, 120, 156]),
            "shaft_material": rng.choice(["steel", "stainless steel"]),
            "housing_material": rng.choice(["aluminium", "cast iron", "steel"]),
            "temperature_max": 176 if inch else rng.choice([80, 95, 110]),
            "temperature_min": 14 if inch else rng.choice([-20, -10, -30]),
            "ambient_temperature": 77 if inch else rng.choice([20, 25, 40]),
            "preload_method": "spring" if preload else "none",
            "shaft_orientation": rng.choice(["horizontal", "vertical"]),
            "shaft_temperature": 158 if inch else 70,
            "housing_temperature": 140 if inch else 55,
            "preload_force": rng.choice([25, 40, 60, 90]),
            "rotating_ring": "inner",
            "balance_grade": rng.choice([2.5, 6.3]),
        }
        machine = Machine(name, {p: own[p] for p in whole})
        shaft_class = rng.choice(
            ["js5", "js6"] if plus_minus else ["h5", "h6", "j5", "j6", "k5", "k6", "m5", "m6", "g6"]
        )
        housing_class = rng.choice(["JS6", "JS7"] if plus_minus else ["H6", "H7", "J7", "K6", "K7", "G7", "M7"])
        for s in range(positions):
            near = [
                row
                for row in rows
                if row[1] in ("ball", "roller" if not preload else "ball", first[1])
                and abs(row[2] - first[2]) <= 10 / scale
            ]
            row = rng.choice(near) if s and rng.random() < 0.5 else first
            text, implied = _name(rng, row, language)
            _, _, d, big, width, chamfer, c, c0, limit = row
            per = FACTOR[units.rating] / 1000
            share = rng.choice([0.01, 0.02, 0.04])
            da, big_a = shoulders(d, big, chamfer, inch)
            form = (lambda x: round(x / 25.4, 4)) if inch else (lambda x: x * 1000 if units.form == "um" else x)
            say: dict[str, Any] = {
                "bearing_designation": text,
                "bore_diameter": d,
                "outside_diameter": big,
                "ring_width": width,
                "ring_chamfer": chamfer,
                "tolerance_class": implied["tolerance_class"],
                "clearance_class": implied["clearance_class"],
                "closure": implied["closure"],
                "cage": rng.choice(["pressed steel", "machined brass", "polyamide"]),
                "ball_material": rng.choice(["steel", "steel", "silicon nitride"]),
                "dynamic_rating": round(c / per, 2 if units.rating == "kN" else 0),
                "static_rating": round(c0 / per, 2 if units.rating == "kN" else 0),
                "limiting_speed": limit,
                "lubrication": rng.choice(["grease", "grease", "oil bath"]),
                "operating_temperature": 149 if inch else rng.choice([60, 65, 70, 75]),
                "regreasing_interval": rng.choice([2000, 4000, 8000]),
                "nut_torque": rng.choice([12, 25, 40]),
                "radial_load": max(5.0, round(c * 1000 * share / FACTOR[units.load], 0)),
                "axial_load": max(2.0, round(c * 300 * share / FACTOR[units.load], 0)),
                "axial_role": ("locating", "floating" if not preload else "spring-loaded")[s % 2],
                "shaft_shoulder_diameter": da,
                "housing_shoulder_diameter": big_a,
            }
            if not stated.count("bearing_designation"):
                say["cage"] = "pressed steel" if say["cage"] == "machined brass" else say["cage"]
            for side, nominal, cls in (("shaft", d, shaft_class), ("housing", big, housing_class)):
                low, up = deviations(cls, nominal * scale)
                if inch:
                    low, up = round(low / 25400, 4), round(up / 25400, 4)
                else:
                    low, up = low / 1000, up / 1000
                say[f"{side}_seat_diameter"] = Seat(nominal, low, up, cls)
                grade = rng.choice([0.003, 0.004]) if side == "shaft" else rng.choice([0.005, 0.006])
                say[f"{side}_seat_cylindricity"] = round(form(grade), 4)
                say[f"{side}_seat_runout"] = round(form(2 * grade), 4)
                say[f"{side}_shoulder_runout"] = round(form(grade + 0.004), 4)
                rough = rng.choice([0.4, 0.8]) if side == "shaft" else rng.choice([0.8, 1.6])
                say[f"{side}_seat_roughness"] = round(rough * 40) if units.rough == "uin" else rough
                small = {0.3: 0.2, 0.6: 0.5, 1.0: 0.8, 1.1: 1.0, 1.5: 1.2, 2.0: 1.8, 0.016: 0.012, 0.031: 0.025}[
                    chamfer
                ]
                say[f"{side}_fillet_radius"] = small
            if "regreasing_interval" in stated:
                say["lubrication"] = "grease"
            machine.positions.append({p: say[p] for p in stated})
            known = (
                {
                    k: round(v * scale, 6)
                    if k in ("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer")
                    else v
                    for k, v in implied.items()
                }
                if "bearing_designation" in stated
                else {}
            )
            if inch and known:
                known["ring_chamfer"] = {0.016: 0.4, 0.031: 0.8}[chamfer]
            machine.implied.append(known)
        machines.append(machine)
    return machines
