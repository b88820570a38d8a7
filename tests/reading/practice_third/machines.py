"""Invented machines with the seats of their bearings: what the tables of this set state."""

import random
from dataclasses import dataclass, field

import numpy as np
from practice.grammar import Value

from linter.mechanics.limits import deviations_or_nan

from . import words

#: Basic designation: d, D, B, r_s min in mm (ISO 15, ISO 582), C, C_0 in N, balls and their diameter in mm (about, from
#: memory of makers' catalogues).
BEARINGS = {
    "625": (5, 16, 5, 0.3, 1730, 670, 6, 3.175), "626": (6, 19, 6, 0.3, 2340, 885, 6, 3.5),
    "607": (7, 19, 6, 0.3, 2240, 910, 7, 3.5), "608": (8, 22, 7, 0.3, 3300, 1370, 7, 3.969),
    "6000": (10, 26, 8, 0.3, 4620, 1960, 7, 4.762), "6001": (12, 28, 8, 0.3, 5100, 2370, 8, 4.762),
    "6002": (15, 32, 9, 0.3, 5600, 2850, 9, 4.762), "6003": (17, 35, 10, 0.3, 6000, 3250, 10, 4.762),
    "6004": (20, 42, 12, 0.6, 9400, 5050, 9, 6.35), "6005": (25, 47, 12, 0.6, 10100, 5850, 10, 6.35),
    "6200": (10, 30, 9, 0.6, 5100, 2390, 7, 5.556), "6201": (12, 32, 10, 0.6, 6800, 3050, 7, 5.953),
    "6202": (15, 35, 11, 0.6, 7650, 3750, 8, 5.953), "6203": (17, 40, 12, 0.6, 9550, 4800, 8, 6.747),
    "6204": (20, 47, 14, 1.0, 12800, 6600, 8, 7.938), "61901": (12, 24, 6, 0.3, 2890, 1460, 11, 3.175),
    "61903": (17, 30, 7, 0.3, 4600, 2550, 13, 3.572), "61904": (20, 37, 9, 0.3, 6380, 3680, 11, 4.762),
    "7001C": (12, 28, 8, 0.3, 5400, 2600, 10, 4.762), "7002C": (15, 32, 9, 0.3, 6200, 3400, 11, 4.762),
}  # fmt: skip
#: The R series in mm (from memory of makers' catalogues).
INCH = {"R6": (9.525, 22.225, 7.142, 0.4, 3330, 1410, 7, 3.969), "R8": (12.7, 28.575, 7.938, 0.4, 5110, 2390, 8, 4.762)}
SUFFIXES = (
    ("", "open"), ("-2Z", "shield"), (" ZZ", "shield"), ("-2RS", "contact seal"), ("-2RS1", "contact seal"),
)  # fmt: skip
#: What is stated of a seat of each part, its diameter first.
SEATS_OF = {
    "shaft": (
        "shaft_seat_diameter", "shaft_seat_roughness", "shaft_seat_cylindricity", "shaft_seat_runout",
        "shaft_shoulder_diameter", "shaft_shoulder_runout", "shaft_fillet_radius",
    ),
    "housing": (
        "housing_seat_diameter", "housing_seat_roughness", "housing_seat_cylindricity", "housing_seat_runout",
        "housing_shoulder_diameter", "housing_fillet_radius",
    ),
}  # fmt: skip
SHAFT_CLASSES = ("g6", "h5", "h6", "j5", "js5", "k5", "k6", "m5")
HOUSING_CLASSES = ("G6", "G7", "H6", "H7", "J6", "JS6", "K6")


@dataclass
class Seat:
    """A seat: nominal size in mm, class, lower and upper deviation in um."""

    nominal: float
    tolerance_class: str
    lower: float
    upper: float


@dataclass
class Machine:
    """One machine: values of the whole and of each position, in the units of the vocabulary."""

    name: str
    stations: tuple[str, ...]
    values: dict[str, float | str]
    positions: list[dict[str, float | str | Seat]]
    implied: list[dict[str, Value]] = field(default_factory=list)


def _seat(nominal: float, tolerance_class: str) -> Seat:
    low, up = deviations_or_nan(np.array([tolerance_class]), np.array([float(nominal)]))
    return Seat(nominal, tolerance_class, round(float(low[0]), 1), round(float(up[0]), 1))


def draw(rng: random.Random, language: str, count: int, *, inch: bool = False, symmetric: bool = False) -> Machine:
    """A machine with that many positions; ``symmetric`` for classes that lie on both sides of the nominal alike."""
    names = {
        1: (rng.choice(words.STATIONS[language])[0],),
        2: rng.choice(words.STATIONS[language]),
        4: words.FOUR[language],
    }
    station_names = names[count]
    small = rng.random() < 0.4
    known = INCH if inch else {k: v for k, v in BEARINGS.items() if (v[0] <= 10) == small and not k.startswith("70")}
    if not inch and not small and rng.random() < 0.2:
        known = {k: v for k, v in BEARINGS.items() if k.startswith("70")}
    keys = list(known)
    first = rng.choice(keys)
    second = first if rng.random() < 0.4 else rng.choice(keys)
    positions: list[dict[str, float | str | Seat]] = []
    implied: list[dict[str, Value]] = []
    shaft_class = "js5" if symmetric else rng.choice(SHAFT_CLASSES)
    housing_class = "JS6" if symmetric else rng.choice(HOUSING_CLASSES)
    suffix, closure = rng.choice(SUFFIXES if not first.startswith("70") else SUFFIXES[:1])
    clearance = rng.choice(["", "/C3", " C3"])
    precision = rng.choice(["Normal", "P6", "P5"])
    for k in range(count):
        basic = first if k % 2 == 0 else second
        d, outer, width, chamfer, dynamic, static, balls, ball = known[basic]
        angular = basic.startswith("70")
        group = clearance if not angular else ""
        position: dict[str, float | str | Seat] = {
            "bearing_designation": basic + suffix + group,
            "bore_diameter": float(d), "outside_diameter": float(outer), "ring_width": float(width),
            "ring_chamfer": chamfer, "tolerance_class": precision, "clearance_class": "C3" if group else "CN",
            "dynamic_rating": float(dynamic), "static_rating": float(static), "ball_count": float(balls),
            "ball_diameter": ball, "axial_role": ("locating", "floating")[k % 2],
            "cage": "polyamide" if angular else rng.choice(["pressed steel", "polyamide"]), "closure": closure,
            "lubrication": rng.choice(["oil mist", "oil bath"]) if closure == "open" else "grease",
            "base_oil_viscosity_40": rng.choice([22.0, 46.0, 68.0, 100.0]),
            "radial_load": float(rng.randrange(12, 180)), "axial_load": float(rng.randrange(8, 90)),
            "operating_temperature": float(rng.randrange(45, 85, 5)),
            "shaft_seat_diameter": _seat(float(d), shaft_class),
            "shaft_seat_roughness": rng.choice([0.2, 0.4, 0.8]),
            "shaft_seat_cylindricity": rng.choice([0.0015, 0.002, 0.0025, 0.003, 0.004]),
            "shaft_seat_runout": rng.choice([0.003, 0.004, 0.005, 0.006]),
            "shaft_shoulder_diameter": round(d + 2 * chamfer + rng.choice([1.5, 2.0, 2.5]), 1),
            "shaft_shoulder_runout": rng.choice([0.003, 0.004, 0.005]),
            "shaft_fillet_radius": rng.choice([0.15, 0.2]) if chamfer < 0.6 else rng.choice([0.3, 0.4]),
            "housing_seat_diameter": _seat(float(outer), housing_class),
            "housing_seat_roughness": rng.choice([0.8, 1.6]),
            "housing_seat_cylindricity": rng.choice([0.003, 0.004, 0.005, 0.006]),
            "housing_seat_runout": rng.choice([0.006, 0.008, 0.01]),
            "housing_shoulder_diameter": round(outer - 2 * chamfer - rng.choice([1.5, 2.0, 2.5]), 1),
            "housing_fillet_radius": rng.choice([0.15, 0.2, 0.25]) if chamfer < 0.6 else rng.choice([0.3, 0.5]),
        }  # fmt: skip
        positions.append(position)
        implied.append({
            "bore_diameter": float(d), "outside_diameter": float(outer), "ring_width": float(width),
            "ring_chamfer": float(chamfer), "bearing_type": "angular contact ball" if angular else "deep groove ball",
            "contact_angle": 15.0 if angular else 0.0, "closure": closure, "clearance_class": "C3" if group else "CN",
            "tolerance_class": "Normal",
        })  # fmt: skip
    low, high = (40.0, 35.0) if rng.random() < 0.5 else (65.0, 50.0)
    values: dict[str, float | str] = {
        "machine": rng.choice(words.MACHINES[language]),
        "drawing_number": rng.choice(["WZ-{}", "{}-03", "TK {}", "R{}.200"]).format(rng.randrange(1200, 9800)),
        "drawing_revision": rng.choice("ABCD") if rng.random() < 0.7 else f"0{rng.randrange(1, 8)}",
        "speed_max": float(rng.choice([9000, 12000, 14500, 18000, 24000, 30000])),
        "required_life": float(rng.choice([3000, 5000, 8000, 12000, 20000])),
        "rotor_mass": rng.choice([0.18, 0.24, 0.42, 0.65, 1.2]),
        "bearing_span": float(rng.choice([42, 56, 64, 88, 120])), "balance_grade": rng.choice([2.5, 6.3, 1.0]),
        "shaft_material": rng.choice(["steel", "steel", "stainless steel"]),
        "housing_material": rng.choice(["aluminium", "cast iron"]),
        "preload_force": float(rng.choice([18, 25, 40, 60])),
        "shaft_temperature": low, "housing_temperature": high, "temperature_min": float(rng.choice([-20, -10, 5])),
        "temperature_max": float(rng.choice([70, 80, 90])),
    }  # fmt: skip
    return Machine(str(values["machine"]), station_names, values, positions, implied)
