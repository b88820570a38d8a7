"""Complete, sensible bearing arrangements of two stations, made from a seed.

``complete_design(seed)`` draws a kind of machine, a bearing of ``data/bearings.csv`` and a duty, and then chooses the
rest as makers print it for the case: fits by load and size (SKF Rolling bearings 17000, tables of recommended fits;
NSK E1102 tables 9.2 to 9.4), form and run-out as IT5/2 to IT2/2 and IT5 to IT1 by class (the same), roughness (URB v14
tables 4.5 to 4.7), abutments and fillets by JIS B 1566 and the tables of NTN type, springs at 5 to 10 N per mm of bore
(SKF, preloading with springs) or at shares of the rating (NTN-type table for miniature bearings), oil thick enough for
a viscosity ratio of 1.5 to 4. Sizes and ratings are published, each row of the table with its source; drives, loads,
masses and names are invented. The checks of the rulebook are not asked.
"""

import csv
import math
import random
from dataclasses import dataclass, field, replace
from functools import cache
from pathlib import Path
from typing import Any

from linter.mechanics.limits import it_value
from tests.designs.rows import Stations, stations_from_rows

Row = dict[str, Any]
DATA = Path(__file__).parent / "data"


@dataclass(frozen=True)
class Design:
    """One machine.

    ``rows`` are its stations as ``stations_from_rows`` takes them, ``kind`` the kind of machine, ``seed`` what it was
    made from and ``faults`` the names of what was planted in it.
    """

    kind: str
    seed: int
    rows: tuple[Row, ...]
    faults: tuple[str, ...] = field(default=())

    @property
    def stated(self) -> tuple[str, ...]:
        """Every parameter that a row states, in the order of the rows."""
        return tuple(dict.fromkeys(name for row in self.rows for name in row))

    def stations(self) -> Stations:
        """The design as the checks take it."""
        return stations_from_rows([dict(row) for row in self.rows])

    def with_rows(self, rows: list[Row], *faults: str) -> "Design":
        """The same machine with other rows and the names of what was planted in them."""
        return replace(self, rows=tuple(rows), faults=(*self.faults, *faults))


@dataclass(frozen=True)
class Bearing:
    """A row of ``data/bearings.csv`` with its lands.

    The lands are taken 0.2 D_w deep (common practice for ball bearings, within 0.5 mm of printed d_1 of series 60 and
    62); of a roller bearing with a free inner ring d_1 is the raceway itself.
    """

    designation: str
    bearing_type: str
    d: float
    D: float
    B: float
    r_min: float
    contact_angle: float
    ball_count: int
    ball_diameter: float
    pitch_diameter: float
    dynamic_rating: float
    static_rating: float
    limiting_speed_grease: float | None
    limiting_speed_oil: float | None

    @property
    def mean_diameter(self) -> float:
        return 0.5 * (self.d + self.D)

    @property
    def inner_land(self) -> float:
        depth = 1.0 if self.bearing_type == "cylindrical roller" else 0.6
        return round(self.pitch_diameter - depth * self.ball_diameter, 2)

    @property
    def outer_land(self) -> float:
        return round(self.pitch_diameter + 0.6 * self.ball_diameter, 2)

    @property
    def low_shoulder(self) -> float:
        """Least height of an abutment, mm (JIS B 1566, general column; TPI 2260 table 3.8)."""
        return SHOULDER_HEIGHTS[self.r_min]


SHOULDER_HEIGHTS = {
    0.05: 0.3, 0.08: 0.3, 0.1: 0.4, 0.15: 0.6, 0.2: 0.8, 0.3: 1.25, 0.6: 2.25, 1.0: 2.75, 1.1: 3.5, 1.5: 4.25,
    2.0: 5.0, 2.1: 6.0,
}  # fmt: skip
"""r_s min to least abutment height, mm [TPI 2260 table 3.8, JIS B 1566]."""

OILS = {
    10: 2.5, 15: 3.5, 22: 4.5, 32: 5.5, 46: 6.5, 68: 8.5, 100: 11.4, 150: 14.5, 220: 19.0,
}  # fmt: skip
"""ISO VG (viscosity at 40 degC) to a typical one at 100 degC, mm2/s [maker's table of grades]."""

FORM_GRADES = {"Normal": (5, 5), "P6": (4, 4), "P5": (3, 3), "P4": (2, 1)}
"""Grade n of form and run-out ITn/2, and of shoulders ITn [SKF 17000, geometrical precision]."""

ROUGHNESS = {"Normal": (0.8, 0.8), "P6": (0.8, 0.8), "P5": (0.4, 0.8), "P4": (0.2, 0.4)}
"""Ra of shaft and housing seats to 80 mm, um [URB v14 tables 4.5 to 4.7; P4 one step finer, TPI 2260]."""


@cache
def bearings() -> tuple[Bearing, ...]:
    """Bearings whose lands leave room for an abutment of the least height."""
    found = []
    with (DATA / "bearings.csv").open(encoding="utf-8", newline="") as stream:
        for row in csv.DictReader(stream):
            d, outside = float(row["d"]), float(row["D"])
            bearing = Bearing(
                designation=row["designation"],
                bearing_type=row["bearing_type"],
                d=d,
                D=outside,
                B=float(row["B"]),
                r_min=float(row["r_min"]),
                contact_angle=float(row["contact_angle"]),
                ball_count=int(row["ball_count"]),
                ball_diameter=float(row["ball_diameter"]),
                pitch_diameter=float(row["pitch_diameter"] or 0.5 * (d + outside)),
                dynamic_rating=float(row["dynamic_rating"]),
                static_rating=float(row["static_rating"]),
                limiting_speed_grease=float(row["limiting_speed_grease"] or 0) or None,
                limiting_speed_oil=float(row["limiting_speed_oil"] or 0) or None,
            )
            room = 2 * bearing.low_shoulder + 0.2
            if d + room <= bearing.inner_land and outside - room >= bearing.outer_land:
                found.append(bearing)
    return tuple(found)


def figures(value: float, digits: int = 2) -> float:
    """A value as a drawing states it, with so many significant digits."""
    return float(f"{value:.{digits}g}")


def step_down(value: float, step: float) -> float:
    """The next multiple of a step at or below a value."""
    return round(math.floor(value / step + 1e-9) * step, 6)


def viscosity(grade: int, temperature: float) -> float:
    """Viscosity of an oil by its ISO VG at a temperature, mm2/s, on the line of Ubbelohde and Walther."""

    def line(v: float) -> float:
        return math.log10(math.log10(v + 0.8))

    def kelvin(t: float) -> float:
        return math.log10(t + 273.15)

    low, high = line(grade), line(OILS[grade])
    slope = (low - high) / (kelvin(100) - kelvin(40))
    return 10**10 ** (low - slope * (kelvin(temperature) - kelvin(40))) - 0.8


def oil_for(speed: float, pitch_diameter: float, temperature: float) -> int:
    """The thinnest ISO VG with a viscosity ratio of 2 at least, else the thickest (reference viscosity of ISO 281)."""
    needed = (45_000 * speed**-0.83 if speed < 1000 else 4500 * speed**-0.5) / math.sqrt(pitch_diameter)
    return next((grade for grade in OILS if viscosity(grade, temperature) >= 2.0 * needed), max(OILS))


def grease_hours(speed: float, limit: float, temperature: float) -> float:
    """Life of a filling of general-purpose grease, h [NSK E1102 section 12, sealed ball bearings]."""
    ratio = min(max(speed / limit, 0.25), 1.0)
    t = max(temperature, 70.0)
    return 10 ** (6.54 - 2.6 * ratio - (0.025 - 0.012 * ratio) * t)


@dataclass(frozen=True)
class Kind:
    """What a kind of machine is drawn from.

    ``factor`` is the range of n d_m in mm r/min and ``share`` the largest part of the printed limiting speed;
    ``loads`` the range of the drive's radial load and ``weights`` of half the rotor's weight, as parts of C;
    ``preload`` the range of the spring force in N per mm of bore, or, below 1, as part of C.
    """

    types: tuple[str, ...]
    bores: tuple[float, float]
    classes: tuple[str, ...]
    factor: tuple[float, float]
    share: float
    lubrications: tuple[str, ...]
    balls: tuple[str, ...]
    cages: tuple[str, ...]
    closures: tuple[str, ...]
    housings: tuple[str, ...]
    loads: tuple[float, float]
    weights: tuple[float, float]
    axial: float
    grade: float
    method: str
    preload: tuple[float, float]
    life: float
    rotating: str = "inner"


BALL = ("deep groove ball",)
ANGULAR = ("angular contact ball",)
KINDS = {
    "miniature rotor": Kind(
        BALL, (3, 8), ("P5",), (1.2e5, 3.0e5), 0.65, ("grease", "grease for high speed"),
        ("steel", "steel", "silicon nitride"),
        ("pressed steel",), ("shield",), ("steel", "aluminium"), (0.004, 0.012), (0.0005, 0.001), 0.0, 1.0, "spring",
        (0.010, 0.020), 8000,
    ),
    "motor": Kind(
        BALL, (8, 35), ("P6", "Normal"), (0.6e5, 2.0e5), 0.55, ("grease",), ("steel",), ("pressed steel",),
        ("shield", "non-contact seal"), ("cast iron", "aluminium", "steel"), (0.01, 0.04), (0.004, 0.01), 0.002, 2.5,
        "spring", (6, 9), 20_000,
    ),
    "spindle, spring": Kind(
        ANGULAR, (10, 40), ("P4",), (4.0e5, 8.0e5), 0.6, ("oil-air",), ("silicon nitride", "steel"), ("phenolic",),
        ("open",), ("steel",), (0.006, 0.015), (0.002, 0.004), 0.004, 0.4, "spring", (0.018, 0.024), 8000,
    ),
    "spindle, rigid": Kind(
        ANGULAR, (10, 40), ("P4",), (1.5e5, 3.0e5), 0.45, ("grease for high speed", "oil-air"),
        ("steel", "silicon nitride"), ("phenolic",), ("open",), ("steel",), (0.006, 0.015), (0.002, 0.004),
        0.002, 0.4, "rigid", (0.010, 0.014), 8000,
    ),
    "pump": Kind(
        BALL, (12, 45), ("Normal",), (0.5e5, 1.5e5), 0.5, ("oil bath", "grease"), ("steel",), ("pressed steel",),
        ("open",), ("cast iron", "steel"), (0.03, 0.055), (0.003, 0.008), 0.006, 2.5, "none", (0, 0), 16_000,
    ),
    "pump, roller": Kind(
        BALL, (20, 45), ("Normal",), (0.5e5, 1.5e5), 0.5, ("oil bath", "grease"), ("steel",), ("pressed steel",),
        ("open",), ("cast iron",), (0.03, 0.055), (0.003, 0.008), 0.006, 2.5, "none", (0, 0), 16_000,
    ),
    "fan": Kind(
        BALL, (10, 40), ("P6", "Normal"), (0.5e5, 1.2e5), 0.45, ("grease",), ("steel",), ("pressed steel",),
        ("shield", "non-contact seal"), ("cast iron", "aluminium", "steel", "plastic"), (0.012, 0.03), (0.008, 0.015),
        0.004, 2.5, "none", (0, 0), 16_000,
    ),
    "blower": Kind(
        BALL, (4, 12), ("P5",), (3.0e5, 5.0e5), 0.8, ("grease for high speed",), ("silicon nitride",),
        ("peek", "polyamide"), ("shield",), ("steel", "aluminium"), (0.004, 0.008), (0.0008, 0.0015), 0.001, 1.0,
        "spring", (0.012, 0.020), 5000,
    ),
    "wheel": Kind(
        BALL, (8, 30), ("Normal",), (0.15e5, 0.6e5), 0.3, ("grease",), ("steel",), ("pressed steel", "polyamide"),
        ("contact seal", "shield"), ("steel", "cast iron"), (0.04, 0.07), (0.001, 0.003), 0.002, 6.3, "none", (0, 0),
        8000, "outer",
    ),
}  # fmt: skip


def _speed(rng: random.Random, kind: Kind, bearing: Bearing, limit: float | None) -> float:
    """A speed in the range of the kind, within the share of the printed limiting speed."""
    speed = rng.uniform(*kind.factor) / bearing.mean_diameter
    if limit is not None:
        speed = min(speed, kind.share * limit)
    return step_down(speed, 10.0 ** math.floor(math.log10(speed) - 1))


def _limit(bearing: Bearing, lubrication: str) -> float | None:
    return bearing.limiting_speed_grease if lubrication.startswith("grease") else bearing.limiting_speed_oil


def complete_design(seed: int, kind: str | None = None) -> Design:
    """A complete machine that a careful engineer could release; the same for the same seed."""
    rng = random.Random(seed)
    drawn = rng.choice(tuple(KINDS))
    kind = kind or drawn
    rows = _rows(rng, kind, KINDS[kind])
    name = f"{kind.partition(',')[0]} {seed}"
    for row, station in zip(rows, ("A", "B"), strict=True):
        row |= {"machine": name, "station": station, "drawing_number": f"RS-{1000 + seed}", "drawing_revision": "A"}
    order = ("machine", "station", "drawing_number", "drawing_revision")
    return Design(kind, seed, tuple({n: row[n] for n in (*order, *(n for n in row if n not in order))} for row in rows))


def _rows(rng: random.Random, name: str, kind: Kind) -> list[Row]:
    lubrication = rng.choice(kind.lubrications)
    fitting = [b for b in bearings() if b.bearing_type in kind.types and kind.bores[0] <= b.d <= kind.bores[1]]
    if name not in ("miniature rotor", "blower"):
        thinnest = 1.6 if name in ("motor", "wheel") else 1.4 if kind.types == BALL else 1.0
        fitting = [b for b in fitting if _limit(b, lubrication) is not None and thinnest < b.D / b.d < 2.8]
    if name == "pump, roller":
        rollers = {b.d: b for b in bearings() if b.bearing_type == "cylindrical roller"}
        fitting = [b for b in fitting if b.d in rollers and b.D == rollers[b.d].D]
    bearing = rng.choice(fitting)
    second = rollers[bearing.d] if name == "pump, roller" else bearing
    limit = _limit(bearing, lubrication)
    speed = _speed(rng, kind, bearing, limit)
    balls = rng.choice(kind.balls)
    housing = rng.choice(kind.housings)
    quality = rng.choice(kind.classes)
    outer = kind.rotating == "outer"

    # loads: the drive's pull and half the weight of the rotor
    rating = bearing.dynamic_rating
    half_weight = rng.uniform(*kind.weights) * rating
    mass = figures(2 * half_weight / 9.81)
    omega = speed * math.pi / 30
    # a grade that keeps the unbalance force of a bearing below a fifth of its fixed load
    pull = rng.uniform(*kind.loads) * rating
    vertical = name in ("motor", "pump", "fan") and rng.random() < 0.25
    fixed = pull if vertical else pull + half_weight
    grades = [g for g in (6.3, 2.5, 1.0, 0.4) if g <= kind.grade]
    grade = next((g for g in grades if mass * g / 1000 * omega / 2 < 0.2 * fixed), grades[-1])
    radial = figures(fixed)
    axial = figures(kind.axial * rating + (2 * half_weight if vertical else 0.0))

    # preload
    low, high = kind.preload
    force = rng.uniform(low, high) * (rating if high < 1 else bearing.d)
    if kind.method == "spring":
        force = max(force, 2.5 * axial)
    force = figures(force)

    # temperatures
    warm = rng.choice((45, 50, 55)) if speed * bearing.mean_diameter > 2e5 else rng.choice((35, 40, 45))
    difference = 3 if kind.method == "rigid" else 8 if speed * bearing.mean_diameter > 2.5e5 else 5
    shaft_temperature, housing_temperature = float(warm + difference), float(warm)
    temperature = warm + difference / 2
    equivalent = max(radial, 0.56 * radial + 1.6 * (axial + force))
    hours = (rating / equivalent) ** 3 * 1e6 / 60 / speed
    if lubrication.startswith("grease"):
        grease = 750_000 if lubrication == "grease for high speed" else 500_000
        hours = min(hours, grease_hours(speed, limit or grease / bearing.mean_diameter, temperature))
    life = figures(min(kind.life, 0.5 * hours), 1)

    # a rigid pair stands close together, or its preload runs away with temperature
    span = figures(rng.uniform(1.2, 2.0) * bearing.D if kind.method == "rigid" else rng.uniform(2.5, 4.0) * bearing.D)
    machine: Row = {
        "speed_max": speed,
        "duty": "continuous",
        "required_life": life,
        "required_reliability": 90.0,
        "shaft_orientation": "vertical" if vertical else "horizontal",
        "rotating_ring": kind.rotating,
        "load_direction": "stationary",
        "shaft_material": "steel",
        "housing_material": housing,
        "shaft_temperature": shaft_temperature,
        "housing_temperature": housing_temperature,
        "temperature_min": 10.0,
        "temperature_max": float(warm + 15),
        "bearing_span": [span, -0.05, 0.05],
        "rotor_mass": mass,
        "balance_grade": grade,
        "balancing_method": "as assembled" if 1000 * grade / omega < 8.0 else "separately",
        "preload_method": kind.method,
        "axial_demand": "stiffness" if kind.method == "rigid" else "none",
        "first_critical_speed": figures(rng.uniform(1.6, 2.6) * speed),
    }
    if kind.method == "spring":
        machine |= _spring(rng, name, bearing, force)
    elif kind.method == "rigid":
        machine |= {
            "preload_force": [force, figures(-0.1 * force), figures(0.1 * force)],
            "rigid_preload_class": "light",
            "axial_float": [0.5, -0.1, 0.1],
        }
    else:
        machine["axial_float"] = [1.0, -0.2, 0.2] if bearing.d > 15 else [0.6, -0.1, 0.1]

    hollow = name.startswith(("spindle", "motor")) and rng.random() < 0.3
    split = name.startswith("pump") and bearing.D >= 47 and not vertical and rng.random() < 0.4
    undercut = bearing.r_min >= 1.0 and rng.random() < 0.4
    rows = []
    for number, own in enumerate((bearing, second)):
        role = {"spring": ("locating", "spring-loaded"), "rigid": ("cross-located",) * 2}.get(
            kind.method, ("locating", "floating")
        )[number]
        rows.append(
            {
                **machine,
                **_bearing(rng, own, quality, balls, lubrication, name, kind, speed, limit),
                "axial_role": role,
                **({"free_ring": "inner" if outer else "outer"} if role in ("floating", "spring-loaded") else {}),
                **_oil(own, speed, temperature, lubrication),
                "operating_temperature": temperature,
                "cleanliness": "high" if quality in ("P4", "P5") else "normal",
                "radial_load": radial,
                "axial_load": axial if role in ("locating", "cross-located") else 0.0,
                **_seats(own, quality, role, split, hollow, housing, radial / rating, outer),
                **_abutments(own, quality, undercut),
                "inner_ring_retention": "clamped" if kind.method == "rigid" or name == "pump, roller" else "none",
                "outer_ring_retention": "clamped"
                if kind.method == "rigid"
                else "o-ring"
                if housing == "plastic"
                else "none",
            }
        )
    grade_number = FORM_GRADES[quality][0]
    coaxiality = {5: 0.008, 4: 0.006, 3: 0.004, 2: 0.002}[grade_number]
    for row in rows:  # the common axis of two seats is held about twice as wide as the seats to it
        row["coaxiality_of_shaft_seats"] = min(coaxiality, 2 * rows[0]["shaft_seat_runout"])
        row["coaxiality_of_bores"] = min(2 * coaxiality, 2 * rows[0]["housing_seat_runout"])
    shared = dict(rng.sample(sorted(SHARED.items()), 3))
    for extra, make in shared.items():
        if (value := make(rows[0])) is not None:
            for row in rows:
                row[extra] = value
    return rows


#: Values that some designs state besides; each follows from the rest.
SHARED = {
    "speed_operating": lambda row: row["speed_max"],
    "residual_unbalance": lambda row: step_down(
        row["rotor_mass"] * row["balance_grade"] * 1e3 / (row["speed_max"] * math.pi / 30), 1e-4
    ),
    "spacer_stack": lambda row: _stack(row),
    "reference_speed": lambda row: round(0.9 * row["limiting_speed"], -2) if "limiting_speed" in row else None,
}


def _stack(row: Row) -> str | None:
    if "spring_installed_length" not in row:
        return None
    length = row["spring_installed_length"][0]
    inner, outer = row["ring_width"], round(length + row["ring_width"] + 12.0, 3)
    return f"+{outer:g}±0.05 -{inner:g}±0.02 -12±0.02"


def _spring(rng: random.Random, name: str, bearing: Bearing, force: float) -> Row:
    """A soft spring: a stroke of a millimetre or more, and as much again to solid length."""
    small = bearing.d <= 8
    stroke = rng.choice((1.2, 1.5, 2.0)) if small else rng.choice((2.0, 2.5, 3.0))
    rate = figures(force / stroke)
    force = round(rate * stroke, 6)
    installed = 6.0 if small else rng.choice((10.0, 12.0))
    kind = "helical" if name.startswith("spindle") or rng.random() < 0.4 else "wave"
    return {
        "spring_kind": kind,
        "preload_force": [figures(force), -figures(0.15 * force), figures(0.15 * force)],
        "spring_rate": [rate, -figures(0.05 * rate), figures(0.05 * rate)],
        "spring_free_length": [round(installed + stroke, 3), -0.05, 0.05],
        "spring_installed_length": [installed, -0.1, 0.1],
        "spring_solid_length": [round(installed - 0.6 * stroke, 3), -0.05, 0.05],
        "spring_load_tolerance": 10.0,
        "axial_float": [0.5, -0.1, 0.1],
    }


def _bearing(
    rng: random.Random,
    own: Bearing,
    quality: str,
    balls: str,
    lubrication: str,
    name: str,
    kind: Kind,
    speed: float,
    limit: float | None,
) -> Row:
    roller = own.bearing_type == "cylindrical roller"
    row: Row = {
        "bearing_designation": own.designation,
        "bearing_type": own.bearing_type,
        "contact_angle": own.contact_angle,
        "bore_diameter": own.d,
        "outside_diameter": own.D,
        "ring_width": own.B,
        "ring_chamfer": own.r_min,
        "inner_ring_shoulder_diameter": own.inner_land,
        "outer_ring_shoulder_diameter": own.outer_land,
        "tolerance_class": quality,
        "ball_count": float(own.ball_count),
        "ball_diameter": own.ball_diameter,
        "pitch_diameter": own.pitch_diameter,
        "ball_material": "steel" if roller else balls,
        "ring_material": "bearing steel",
        "cage": "polyamide" if roller else kind.cages[int(speed) % len(kind.cages)],
        "closure": "open"
        if roller or lubrication.startswith("oil")
        else kind.closures[int(speed / 10) % len(kind.closures)],
        "dynamic_rating": own.dynamic_rating,
        "static_rating": own.static_rating,
        "fatigue_load_limit": figures(own.static_rating / (8.2 if roller else 22.0), 3),
        "lubrication": lubrication,
    }
    if (own_limit := _limit(own, lubrication)) is not None:
        row["limiting_speed"] = own_limit
    if row["closure"] == "contact seal":
        row["seal_lip_diameter"] = round(own.inner_land, 1)
    if own.bearing_type == "angular contact ball":
        return row
    if own.d < 10:  # miniature groups 4 (8 to 13 um) and 5 (13 to 20 um), from memory of makers' tables
        row["radial_clearance"] = [16.5, -3.5, 3.5] if kind.rotating == "outer" else [10.5, -2.5, 2.5]
    else:  # a tight outer ring or a fast rotor takes C3 (NSK E1102 section 9.2.3)
        large = kind.rotating == "outer" or name == "blower" or speed * own.mean_diameter > 1.5e5
        row["clearance_class"] = "C3" if large else "CN"
    return row


def _oil(own: Bearing, speed: float, temperature: float, lubrication: str) -> Row:
    grade = oil_for(speed, own.pitch_diameter, temperature)
    if lubrication == "grease":
        grade = max(grade, 22)
    return {"base_oil_viscosity_40": float(grade), "base_oil_viscosity_100": OILS[grade]}


def _shaft_class(own: Bearing, quality: str, role: str, share: float, outer: bool) -> str:
    """Shaft seats by load, size and class [SKF 17000 shaft fits; NSK E1102 table 9.2; spindles: NSK-SP]."""
    if outer:
        return "g6" if role == "floating" else "h6"
    if quality == "P4":
        return "js4"
    if own.bearing_type == "cylindrical roller":
        return "k5" if own.d <= 40 else "m5"
    if quality == "P5":
        return "js5"
    if own.d <= 17:
        return "j5" if share <= 0.05 or own.d <= 10 else "k5"
    return "k5"


def _housing_class(own: Bearing, quality: str, role: str, split: bool, housing: str, outer: bool) -> str:
    """Housing bores by role, load and class [NSK E1102 table 9.4; SKF 17000 table of housing fits]."""
    if split:
        return "H7"
    if outer:
        return "N7" if own.D > 40 else "M7"
    if quality == "P4":
        return "JS5" if role in ("locating", "cross-located") else "H5"
    if own.bearing_type == "cylindrical roller":
        return "K6"
    if role == "locating":
        return "JS5" if quality == "P5" else "J6"
    if quality == "P5":
        return "H6" if housing == "steel" else "G6"
    return "H6" if own.D <= 80 and housing != "plastic" else "H7"


def _seats(
    own: Bearing, quality: str, role: str, split: bool, hollow: bool, housing: str, share: float, outer: bool
) -> Row:
    # line contact asks for the closer grade that the same table prints for special demands
    grade = FORM_GRADES["P6" if own.bearing_type == "cylindrical roller" else quality][0]
    shaft_ra, housing_ra = ROUGHNESS[quality]
    half = {
        side: step_down(float(it_value(grade, size)) / 2000, 1e-4)
        for side, size in (("shaft", own.d), ("housing", own.D))
    }
    return {
        "shaft_seat_diameter": [own.d, _shaft_class(own, quality, role, share, outer)],
        "shaft_seat_cylindricity": half["shaft"],
        "shaft_seat_runout": half["shaft"],
        "shaft_seat_roughness": shaft_ra,
        "shaft_bore": step_down(0.35 * own.d, 0.5) if hollow else 0.0,
        "housing_seat_diameter": [own.D, _housing_class(own, quality, role, split, housing, outer)],
        "housing_seat_cylindricity": half["housing"],
        "housing_seat_runout": half["housing"],
        "housing_seat_roughness": housing_ra,
        "housing_outer_diameter": round(1.8 * own.D),
        "housing_split": "yes" if split else "no",
    }


def _abutments(own: Bearing, quality: str, undercut: bool) -> Row:
    grade = FORM_GRADES[quality][1]
    band = 0.05 if own.d < 10 else 0.1
    lowest = own.d + 2 * own.low_shoulder
    highest = own.D - 2 * own.low_shoulder
    fillet = step_down(0.8 * own.r_min, 0.05 if own.r_min >= 0.2 else 0.01)
    row: Row = {
        "shaft_shoulder_diameter": [round(lowest + band, 2), -band, 0.0],
        "housing_shoulder_diameter": [round(highest - band, 2), 0.0, band],
    }
    for side, size in (("shaft", own.d), ("housing", own.D)):
        row[f"{side}_shoulder_runout"] = step_down(float(it_value(grade, size)) / 1000, 1e-4)
        row[f"{side}_fillet_radius"] = fillet
    if undercut:  # F 0.6 x 0.2 to 18 mm, F 0.6 x 0.3 above, from memory of DIN 509
        row |= {
            "shaft_fillet_radius": 0.0,
            "shaft_undercut_form": "F",
            "shaft_undercut_width": 2.0 if own.d <= 18 else 2.5,
            "shaft_undercut_depth": 0.2 if own.d <= 18 else 0.3,
            "shaft_undercut_radius": 0.6,
        }
    return row
