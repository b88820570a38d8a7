"""What a picture is made of: codes and units, the office that draws it, what a mark says and where it stands."""

import re
from dataclasses import dataclass, field

from practice.page import VOCABULARY

SIDED = {
    "d": "seat_diameter", "a": "seat_roughness", "c": "seat_cylindricity", "r": "seat_runout", "s": "shoulder_diameter",
    "w": "shoulder_runout", "f": "fillet_radius",
}  # fmt: skip
CODES = {f"{side[0]}{letter}": f"{side}_{name}" for side in ("shaft", "housing") for letter, name in SIDED.items()} | {
    "ma": "machine", "dn": "drawing_number", "rv": "drawing_revision", "nx": "speed_max", "no": "speed_operating",
    "li": "required_life", "rm": "rotor_mass", "sp": "bearing_span", "bg": "balance_grade", "ta": "ambient_temperature",
    "th": "housing_temperature", "ts": "shaft_temperature", "ms": "shaft_material", "mh": "housing_material",
    "or": "shaft_orientation", "pf": "preload_force", "cb": "coaxiality_of_bores", "cs": "coaxiality_of_shaft_seats",
    "rr": "rotating_ring", "st": "station", "ax": "axial_role", "bd": "bearing_designation", "bt": "bearing_type",
    "d": "bore_diameter", "D": "outside_diameter", "B": "ring_width", "rs": "ring_chamfer", "tc": "tolerance_class",
    "cc": "clearance_class", "ca": "contact_angle", "cl": "closure", "C": "dynamic_rating", "C0": "static_rating",
    "Cu": "fatigue_load_limit", "nl": "limiting_speed", "nr": "reference_speed", "lu": "lubrication",
    "v4": "base_oil_viscosity_40", "ot": "operating_temperature", "gi": "regreasing_interval", "gf": "grease_fill",
    "fr": "radial_load", "fa": "axial_load", "nt": "nut_torque", "ho": "housing_outer_diameter", "sb": "shaft_bore",
    "ir": "inner_ring_retention", "oo": "outer_ring_retention",
}  # fmt: skip
MARK = re.compile(r"\{(\??)(?:(\d+):)?(?:(\d+)\.)?([A-Za-z*#][\w,*]*)(?:~([^=}]*))?(?:=([^}]*))?\}")
#: What one of the unit is in mm, N or kg.
UNITS = {
    "µm": 0.001, "um": 0.001, "мкм": 0.001, "in": 25.4, "µin": 25.4e-6, "kN": 1000.0, "кН": 1000.0,
    "lbf": 4.4482216152605, "lb": 0.45359237, "g": 0.001, "cm": 10.0,
}  # fmt: skip
LENGTH = {"mm": 1.0, "um": 0.001}
PLACES = {"in": 4, "lbf": 0, "lb": 2, "kN": 2, "кН": 2}
FINISHES = (8, 16, 32, 63, 125)


@dataclass
class Office:
    """How an office writes: language, file (kind, separator, encoding), its picture and its words."""

    language: str
    layout: str
    file: str
    picture: str
    machines: str
    positions: str
    choices: str = ""
    bearing: str = "ball -2Z"
    fits: str = ""
    number: str = "00-0000"
    comma: bool = False
    count: int = 1
    left: bool = False
    sheet: str = "Tabelle1"


@dataclass(frozen=True)
class Mark:
    """One mark of a picture."""

    machine: int
    station: int
    parameter: str
    unit: str
    pattern: str
    verdict: str


@dataclass
class Told:
    """The cells that tell a value, their headings, and the marks in them."""

    own: list[str] = field(default_factory=list)
    heads: dict[str, str] = field(default_factory=dict)
    marks: list[Mark] = field(default_factory=list)


def factor_of(parameter: str, unit: str) -> float:
    """What one of the unit is in the canonical unit."""
    canonical = VOCABULARY[parameter]["unit"]
    return UNITS[unit] / LENGTH.get(canonical, 1.0) if unit in UNITS else 1.0


def snap(parameter: str, value: float, unit: str) -> float:
    """A value as it is after being rounded to what is shown."""
    factor = factor_of(parameter, unit)
    if unit == "µin":
        return min(FINISHES, key=lambda n: abs(n * factor - value)) * factor
    return round(value / factor, PLACES.get(unit, 5)) * factor
