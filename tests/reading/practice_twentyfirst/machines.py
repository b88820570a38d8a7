"""Machines on rolling bearings: what is true of them before a table shows it.

Ring sizes and what a designation says come from practice/bearings.py, deviations of classes from ISO 286-1. Loads,
ratings and forms are of the order that is usual for the size; all machines are invented.
"""

import random
from dataclasses import dataclass, field

from practice.bearings import basic, follows
from practice.grammar import Size, Value

from linter.mechanics.limits import deviations_or_nan

SERIES = {
    "small": "607 608 609 625 626 627 629 698 6000 6001 6002 6900 6901",
    "ball": "6003 6004 6005 6006 6007 6009 6010 6202 6203 6204 6205 6206 6207 6208 6209 6303 6304 6305 6306 6307 6308",
    "thin": "6901 6902 6903 6904 6905",
    "angular": "7003 7004 7005 7006 7007 7009 7203 7204 7205 7206 7207 71905 71906 71907 71908 71910",
    "roller": "NU206 NU207 NU208 NU209 NU210 NU305 NU306 NU307 NU308",
}  # fmt: skip
ON_SHAFTS = "g5 h5 h6 js5 js6 j5 j6 k5 k6 m5 m6 n6"
IN_HOUSINGS = "G6 G7 H6 H7 JS6 JS7 J6 J7 K6 K7 M6 M7 N7"


@dataclass
class Machine:
    """Its positions, and each value by parameter and position; -1 is the whole machine."""

    positions: tuple[str, ...]
    values: dict[tuple[str, int], Value] = field(default_factory=dict)


def seat(nominal: float, tolerance_class: str) -> Size:
    """A seat with the deviations of its class, in mm."""
    low, high = (round(float(d) / 1000, 6) for d in deviations_or_nan(tolerance_class, nominal))
    return Size(nominal, low, high, tolerance_class)


def machine(
    rng: random.Random, name: str, drawing: str, positions: tuple[str, ...], bearing: str, fits: str
) -> Machine:
    """Draw a machine.

    ``bearing`` is a key of ``SERIES`` and what follows the basic designation; beside a roller bearing the others are
    ball bearings. ``fits`` are the office's classes, ``k5 m5/H6 J6``; all of the usual ones where absent.
    """
    kind, _, suffix = bearing.partition(" ")
    shafts, housings = (part.split() for part in (fits or f"{ON_SHAFTS}/{IN_HOUSINGS}").split("/"))
    first = rng.choice(SERIES[kind].split())
    others = SERIES["small" if kind == "small" else "ball"].split()
    near = [name for name in others if abs(_rings(name)[0] - _rings(first)[0]) < 6]
    found = Machine(positions)
    for s in range(len(positions)):
        other = kind == "roller" or (kind in ("ball", "small") and rng.random() < 0.4)
        base = rng.choice(near) if s and other else first
        designation = base + ("" if base[0] == "N" else suffix)
        on, into = seat(_rings(base)[0], rng.choice(shafts)), seat(_rings(base)[1], rng.choice(housings))
        own = _position(rng, designation, (s > 0) != (kind == "roller"), on, into)
        found.values |= {(key, s): value for key, value in own.items()}
        found.values["lubrication", s] = found.values["lubrication", 0]
    found.values |= {(key, -1): value for key, value in _whole(rng, name, drawing).items()}
    for key in ("lubrication", "base_oil_viscosity_40", "regreasing_interval", "clearance_class"):
        found.values[key, -1] = found.values[key, 0]
    return found


def _rings(designation: str) -> tuple[float, float, float, float]:
    """Bore, outside diameter, width and chamfer."""
    known = basic(designation)
    assert known is not None, designation
    d, outside, width, chamfer = (float(v) for v in known[2])
    return d, outside, width, chamfer


def _position(rng: random.Random, designation: str, free: bool, on: Size, into: Size) -> dict[str, Value]:
    """The values of one position."""
    d, outside, width, chamfer = _rings(designation)
    roller = designation[0] == "N"
    rating = round(1.9 * (outside - d) ** 1.3 * width**0.3 * (1.5 if roller else 1.0)) * 50.0
    height = max(0.9, min(2.5 * chamfer, 0.27 * (outside - d)))
    fillet = chamfer if chamfer <= 0.3 else round(chamfer - rng.choice((0.1, 0.2)), 2)
    form = rng.choice((0.002, 0.0025, 0.003, 0.004))
    radial = max(12.0, round(rating * rng.choice((0.015, 0.024, 0.038)) / 10) * 10.0)
    values: dict[str, Value] = {
        **{k: v for k, v in follows(designation).items() if k != "cage"}, "bearing_designation": designation,
        "dynamic_rating": rating, "static_rating": round(rating * 0.0105) * 50.0,
        "fatigue_load_limit": round(rating * 0.022), "limiting_speed": round(9200 / (d + outside)) * 100,
        "reference_speed": round(10800 / (d + outside)) * 100, "lubrication": "oil bath" if roller else "grease",
        "base_oil_viscosity_40": rng.choice((15, 32, 68, 110)),
        "operating_temperature": rng.choice((48, 55, 62, 70, 85)),
        "regreasing_interval": rng.choice((1500, 3000, 5000, 6000)), "grease_fill": rng.choice((25, 30, 35)),
        "radial_load": radial,
        "axial_load": 0 if roller else max(5.0, round(radial * rng.choice((0.2, 0.35)) / 5) * 5.0),
        "axial_role": ("locating", "floating")[free], "nut_torque": rng.choice((6, 12, 18, 30, 45)),
        "inner_ring_retention": "clamped", "outer_ring_retention": ("clamped", "none")[free],
        "shaft_seat_diameter": on, "housing_seat_diameter": into,
        "shaft_seat_roughness": rng.choice((0.2, 0.32, 0.4, 0.63, 0.8)),
        "housing_seat_roughness": rng.choice((0.8, 1.25, 1.6)),
        "shaft_shoulder_diameter": round((d + 2 * height) * 2) / 2,
        "housing_shoulder_diameter": round((outside - 2 * height) * 2) / 2,
        "housing_outer_diameter": round(outside * rng.choice((1.25, 1.4, 1.6))),
        "shaft_bore": rng.choice((0, round(d * 0.35))), "housing_fillet_radius": fillet, "shaft_fillet_radius": fillet,
        "shaft_seat_cylindricity": form, "housing_seat_cylindricity": round(form + 0.001, 4),
        "shaft_seat_runout": round(2 * form, 4), "housing_seat_runout": round(2 * form + 0.002, 4),
        "shaft_shoulder_runout": round(form + 0.001, 4), "housing_shoulder_runout": round(2 * form + 0.001, 4),
    }  # fmt: skip
    return {key: value if isinstance(value, str | Size) else float(value) for key, value in values.items()}


def _whole(rng: random.Random, name: str, drawing: str) -> dict[str, Value]:
    """The values of the whole machine."""
    fast = rng.choice((2950, 4800, 7500, 9600, 12500, 18000))
    values: dict[str, Value] = {
        "machine": name, "drawing_number": drawing, "drawing_revision": rng.choice("ABCDEG"),
        "speed_max": fast, "speed_operating": round(fast * rng.choice((0.7, 0.8)), -1),
        "required_life": rng.choice((10000, 15000, 20000, 25000, 30000)),
        "rotor_mass": rng.choice((0.95, 1.8, 3.4, 7.2, 14.5)),
        "bearing_span": rng.choice((68, 95, 124, 158.5, 190)), "balance_grade": rng.choice((1, 2.5, 6.3)),
        "ambient_temperature": rng.choice((20, 30, 35, 40)), "housing_temperature": rng.choice((45, 50, 60)),
        "shaft_temperature": rng.choice((62, 65, 75)), "shaft_material": "steel",
        "housing_material": rng.choice(("cast iron", "aluminium")), "rotating_ring": "inner",
        "shaft_orientation": rng.choice(("horizontal", "vertical")), "preload_force": rng.choice((35, 60, 90, 140)),
        "coaxiality_of_bores": rng.choice((0.008, 0.01, 0.015)),
        "coaxiality_of_shaft_seats": rng.choice((0.004, 0.005, 0.006)),
    }  # fmt: skip
    return {key: value if isinstance(value, str | Size) else float(value) for key, value in values.items()}
