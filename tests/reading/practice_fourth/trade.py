"""Bearings, seats and machines that fit together: what a table is going to say, before it is written."""

import random
from dataclasses import dataclass, field

from practice.grammar import Size, Value

#: Designation, d, D, B, r_s min in mm (ISO 15, ISO 582), C and C0 in kN (about, from memory of makers' catalogues).
DEEP_GROOVE = (
    ("608", 8, 22, 7, 0.3, 3.45, 1.37), ("6000", 10, 26, 8, 0.3, 4.75, 1.96), ("6001", 12, 28, 8, 0.3, 5.4, 2.36),
    ("6002", 15, 32, 9, 0.3, 5.85, 2.85), ("6003", 17, 35, 10, 0.3, 6.35, 3.25), ("6004", 20, 42, 12, 0.6, 9.95, 5.0),
    ("6005", 25, 47, 12, 0.6, 11.9, 6.55), ("6006", 30, 55, 13, 1.0, 13.8, 8.3), ("6007", 35, 62, 14, 1.0, 16.8, 10.2),
    ("6008", 40, 68, 15, 1.0, 17.8, 11.0), ("6201", 12, 32, 10, 0.6, 7.28, 3.1), ("6202", 15, 35, 11, 0.6, 8.06, 3.75),
    ("6203", 17, 40, 12, 0.6, 9.95, 4.75), ("6204", 20, 47, 14, 1.0, 13.5, 6.55), ("6205", 25, 52, 15, 1.0, 14.8, 7.8),
    ("6206", 30, 62, 16, 1.0, 20.3, 11.2), ("6207", 35, 72, 17, 1.1, 27.0, 15.3), ("6208", 40, 80, 18, 1.1, 32.5, 19.0),
    ("6303", 17, 47, 14, 1.0, 14.3, 6.55), ("6304", 20, 52, 15, 1.1, 16.8, 7.8), ("6305", 25, 62, 17, 1.1, 23.4, 11.6),
    ("6306", 30, 72, 19, 1.1, 29.6, 16.0), ("61904", 20, 37, 9, 0.3, 6.35, 3.65), ("61905", 25, 42, 9, 0.3, 7.02, 4.3),
)  # fmt: skip
#: The R series with two shields, in inches, C and C0 in lbf (about, from memory of makers' catalogues).
INCH = (
    ("R4-ZZ", 0.25, 0.625, 0.196, 0.012, 330, 135), ("R6-ZZ", 0.375, 0.875, 0.2812, 0.016, 745, 315),
    ("R8-ZZ", 0.5, 1.125, 0.3125, 0.016, 1145, 540), ("R10-ZZ", 0.625, 1.375, 0.3438, 0.031, 1350, 735),
)  # fmt: skip
#: Lower and upper deviation in um for shafts over 6 to 10, to 18, to 30, to 50 mm (ISO 286-2).
SHAFT_STEPS = (10, 18, 30, 50)
SHAFT = {
    "g6": ((-14, -5), (-17, -6), (-20, -7), (-25, -9)),
    "h5": ((-6, 0), (-8, 0), (-9, 0), (-11, 0)),
    "h6": ((-9, 0), (-11, 0), (-13, 0), (-16, 0)),
    "js5": ((-3, 3), (-4, 4), (-4.5, 4.5), (-5.5, 5.5)),
    "js6": ((-4.5, 4.5), (-5.5, 5.5), (-6.5, 6.5), (-8, 8)),
    "j5": ((-2, 4), (-3, 5), (-4, 5), (-5, 6)),
    "j6": ((-2, 7), (-3, 8), (-4, 9), (-5, 11)),
    "k5": ((1, 7), (1, 9), (2, 11), (2, 13)),
    "k6": ((1, 10), (1, 12), (2, 15), (2, 18)),
    "m5": ((6, 12), (7, 15), (8, 17), (9, 20)),
}
#: The same for holes over 18 to 30, to 50, to 80 mm.
HOUSING_STEPS = (30, 50, 80)
HOUSING = {
    "G6": ((7, 20), (9, 25), (10, 29)),
    "H6": ((0, 13), (0, 16), (0, 19)),
    "H7": ((0, 21), (0, 25), (0, 30)),
    "J6": ((-5, 8), (-6, 10), (-6, 13)),
    "J7": ((-9, 12), (-11, 14), (-12, 18)),
    "JS6": ((-6.5, 6.5), (-8, 8), (-9.5, 9.5)),
    "K6": ((-11, 2), (-13, 3), (-15, 4)),
    "K7": ((-15, 6), (-18, 7), (-21, 9)),
    "M7": ((-21, 0), (-25, 0), (-30, 0)),
}
#: Twice the height of a shoulder and fillets for a chamfer, in mm (common practice).
SHOULDERS = {0.3: (2.5, (0.2, 0.3)), 0.6: (4.0, (0.4, 0.6)), 1.0: (6.0, (0.6, 1.0)), 1.1: (7.0, (0.8, 1.0))}
POUND = 4.4482216152605


@dataclass
class Position:
    """One bearing position: values by parameter, canonical units; seats with class and deviations."""

    name: str
    values: dict[str, Value] = field(default_factory=dict)
    implied: dict[str, Value] = field(default_factory=dict)


@dataclass
class Machine:
    """A machine: values of the whole and its positions."""

    name: str
    values: dict[str, Value]
    positions: list[Position]


def seat(part: str, nominal: float, rng: random.Random, symmetric: bool) -> Size:
    """A seat with class and deviations in mm."""
    steps, table = (SHAFT_STEPS, SHAFT) if part == "shaft" else (HOUSING_STEPS, HOUSING)
    names = [n for n in table if n.lower().startswith("js") or not symmetric]
    name = rng.choice(names)
    lower, upper = table[name][next(k for k, step in enumerate(steps) if nominal <= step)]
    return Size(float(nominal), lower / 1000, upper / 1000, name)


def _metric(rng: random.Random, symmetric: bool, russian: bool) -> dict[str, Value]:
    name, d, outside, width, chamfer, c, c0 = rng.choice(DEEP_GROOVE)
    rise, fillets = SHOULDERS[chamfer]
    closure = rng.choice(("open", "shield", "contact seal"))
    clearance = rng.choice(("CN", "C3", "CN", "C2"))
    if russian and name.startswith("62"):
        designation = {"open": "", "shield": "80", "contact seal": "180"}[closure] + name[1:]
        clearance = "CN"
    else:
        closed = {"open": "", "shield": rng.choice(("-2Z", "ZZ")), "contact seal": rng.choice(("-2RS", " 2RS"))}
        designation = name + closed[closure] + ("" if clearance == "CN" else f"/{clearance}")
    limit = round(480000 / ((d + outside) / 2) / 1000) * 1000.0
    load = round(c * 1000 * rng.choice((0.02, 0.03, 0.05, 0.08)) / 10) * 10.0
    return {
        "bearing_designation": designation,
        "bore_diameter": float(d), "outside_diameter": float(outside), "ring_width": float(width),
        "ring_chamfer": chamfer,
        "tolerance_class": rng.choice(("P6", "P5")), "clearance_class": clearance, "closure": closure,
        "dynamic_rating": c * 1000, "static_rating": c0 * 1000, "fatigue_load_limit": float(round(c0 * 1000 / 24)),
        "limiting_speed": limit, "radial_load": load, "axial_load": round(load * rng.choice((0.1, 0.2)) / 5) * 5.0 + 5,
        "shaft_seat_diameter": seat("shaft", d, rng, symmetric),
        "housing_seat_diameter": seat("housing", outside, rng, symmetric),
        "shaft_shoulder_diameter": d + rise, "housing_shoulder_diameter": outside - rise,
        "shaft_fillet_radius": rng.choice(fillets), "housing_fillet_radius": rng.choice(fillets),
        "shaft_seat_cylindricity": rng.choice((0.002, 0.0025, 0.003, 0.004)),
        "housing_seat_cylindricity": rng.choice((0.003, 0.004, 0.005, 0.006)),
        "shaft_seat_runout": rng.choice((0.004, 0.005, 0.006)),
        "housing_seat_runout": rng.choice((0.006, 0.008, 0.01)),
        "shaft_shoulder_runout": rng.choice((0.005, 0.006, 0.008)),
        "housing_shoulder_runout": rng.choice((0.008, 0.01, 0.013)),
        "shaft_seat_roughness": rng.choice((0.4, 0.8)), "housing_seat_roughness": rng.choice((0.8, 1.6)),
        "housing_outer_diameter": float(outside + rng.choice((12, 16, 20))),
    }  # fmt: skip


def _inches(rng: random.Random, symmetric: bool) -> dict[str, Value]:
    name, d, outside, width, chamfer, c, c0 = rng.choice(INCH)
    low, high = (-0.0002, 0.0002) if symmetric else rng.choice(((-0.0002, 0.0001), (-0.0003, 0.0), (0.0, 0.0003)))
    below, above = (-0.0003, 0.0003) if symmetric else rng.choice(((0.0, 0.0005), (-0.0001, 0.0004)))
    rise = 0.1 if d < 0.5 else 0.14
    load = float(rng.choice((5, 8, 12, 20)))
    inch = 25.4
    return {
        "bearing_designation": name,
        "bore_diameter": d * inch, "outside_diameter": outside * inch, "ring_width": width * inch,
        "ring_chamfer": chamfer * inch,
        "tolerance_class": "P5", "clearance_class": "C3", "closure": "shield",
        "dynamic_rating": c * POUND, "static_rating": c0 * POUND, "fatigue_load_limit": round(c0 / 24, 1) * POUND,
        "limiting_speed": round(700000 / (d + outside) / 25.4 / 1000) * 1000.0 + 10000,
        "radial_load": load * POUND, "axial_load": load / 4 * POUND,
        "shaft_seat_diameter": Size(d * inch, low * inch, high * inch),
        "housing_seat_diameter": Size(outside * inch, below * inch, above * inch),
        "shaft_shoulder_diameter": round(d + rise, 3) * inch,
        "housing_shoulder_diameter": round(outside - rise, 3) * inch,
        "shaft_fillet_radius": round(chamfer - 0.002, 3) * inch,
        "housing_fillet_radius": round(chamfer - 0.002, 3) * inch,
        "shaft_seat_cylindricity": 0.0001 * inch, "housing_seat_cylindricity": 0.0002 * inch,
        "shaft_seat_runout": 0.0002 * inch, "housing_seat_runout": 0.0003 * inch,
        "shaft_shoulder_runout": 0.0002 * inch, "housing_shoulder_runout": 0.0004 * inch,
        "shaft_seat_roughness": 16 * 0.0254, "housing_seat_roughness": 32 * 0.0254,
        "housing_outer_diameter": (outside + 0.5) * inch,
    }  # fmt: skip


def machine(
    name: str, stations: tuple[str, ...], rng: random.Random, inches: bool, symmetric: bool, russian: bool
) -> Machine:
    """A machine with everything that may be stated of it; the table picks from it."""
    roles = ["locating", rng.choice(("floating", "spring-loaded"))]
    if rng.random() < 0.3:
        roles.reverse()
    positions = []
    kept: dict[str, Value] = {}
    for station, role in zip(stations, roles, strict=False):
        own = _inches(rng, symmetric) if inches else _metric(rng, symmetric, russian)
        if kept and rng.random() < 0.35:
            own = dict(kept)
        kept = dict(own)
        own["axial_role"] = role
        own["cage"] = rng.choice(("pressed steel", "polyamide", "machined brass"))
        own["lubrication"] = rng.choice(("grease", "grease", "oil bath", "oil mist"))
        own["base_oil_viscosity_40"] = float(rng.choice((22, 32, 46, 68, 100)))
        implied = {k: own[k] for k in ("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer", "closure")}
        implied |= {"bearing_type": "deep groove ball", "contact_angle": 0.0, "clearance_class": own["clearance_class"]}
        positions.append(Position(station, own, implied))
    limit = min(float(str(p.values["limiting_speed"])) for p in positions)
    fast = round(limit * rng.choice((0.3, 0.4, 0.6)) / 500) * 500.0
    warm = float(rng.choice((55, 60, 65, 70, 80)))
    sprung = "spring-loaded" in roles
    if inches:
        warm = (rng.choice((140, 149, 158)) - 32) / 1.8
    values: dict[str, Value] = {
        "machine": name, "drawing_number": f"{rng.choice('ABKLMRST')}{rng.choice('CDGKP')}-{rng.randint(1000, 9899)}",
        "drawing_revision": rng.choice("ABCDEF"),
        "speed_max": fast, "speed_operating": round(fast * 0.8 / 100) * 100.0,
        "required_life": float(rng.choice((8000, 10000, 15000, 20000, 30000))),
        "shaft_temperature": warm, "housing_temperature": warm - 10,
        "ambient_temperature": 25.0,
        "shaft_material": rng.choice(("steel", "steel", "stainless steel")),
        "housing_material": rng.choice(("aluminium", "cast iron")),
        "bearing_span": 25.4 * rng.choice((3, 4.5, 6)) if inches else float(rng.choice((64, 85, 110, 150, 184))),
        "rotor_mass": rng.choice((0.4, 0.65, 1.2, 2.8, 4.5)) * (0.45359237 if inches else 1.0),
        "balance_grade": rng.choice((1.0, 2.5, 6.3)),
        "preload_method": "spring" if sprung else "none",
        "shaft_orientation": rng.choice(("horizontal", "vertical")),
    }  # fmt: skip
    if sprung and not inches:
        values |= {"preload_force": float(rng.choice((40, 60, 90, 120))), "spring_rate": rng.choice((12.5, 18.0, 35.0))}
    return Machine(name, values, positions)
