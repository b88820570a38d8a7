"""Rotors in their bearings: what a machine's values are, before anything is written.

Rings and what follows from designations are those of practice/bearings.py, deviations those of ISO 286-1. Loads,
ratings and the rest are of a usual order for the size; machines and drawings are invented.
"""

import random
from dataclasses import dataclass, field

from practice.bearings import basic, follows
from practice.grammar import Size, Value

from linter.mechanics.limits import deviations_or_nan

BALL = (
    "608", "609", "6000", "6001", "6002", "6003", "6004", "6005", "6006", "6007", "6008", "6201", "6202", "6203",
    "6204", "6205", "6206", "6207", "6208", "6301", "6302", "6303", "6304", "6305", "6306", "6901", "6902", "6903",
    "6904",
)  # fmt: skip
ANGULAR = ("7002", "7004", "7005", "7006", "7007", "7008", "7202", "7205", "7206", "71904", "71906", "71907", "71908")
ROLLER = ("NU205", "NU206", "NU207", "NU208", "NU209", "NU304", "NU305", "NU306")
SHAFT = ("h5", "js5", "j5", "k5", "k6", "m5", "m6", "g6", "n5", "h6", "j6")
HOUSING = ("H6", "H7", "J6", "JS6", "K6", "K7", "M6", "G6", "N6", "J7", "H5")


@dataclass
class Rotor:
    """A rotor in its bearings: values by parameter and position (-1: the machine), and what designations say."""

    positions: tuple[str, ...]
    values: dict[tuple[str, int], Value] = field(default_factory=dict)
    implied: dict[tuple[int, str], Value] = field(default_factory=dict)


def bore(designation: str) -> float:
    """Bore of a bearing."""
    known = basic(designation)
    if known is None:
        raise ValueError(designation)
    return float(known[2][0])


def size(nominal: float, tolerance_class: str) -> Size:
    """A seat with the deviations of its class, in mm."""
    low, high = (float(d) for d in deviations_or_nan(tolerance_class, nominal))
    return Size(nominal, round(low / 1000, 6), round(high / 1000, 6), tolerance_class)


def rotor(
    rng: random.Random, name: str, drawing: str, positions: tuple[str, ...], bearing: str, fits: tuple[str, str]
) -> Rotor:
    """Draw a rotor.

    Parameters
    ----------
    rng : random.Random
        Of the table.
    name, drawing, positions : str and tuple
        As the office calls them.
    bearing : str
        ``ball``, ``angular`` or ``roller`` (its second position takes a ball bearing), and after a blank what follows
        the basic designation.
    fits : tuple of str
        The classes to choose from, of shafts and of housings, with blanks between; empty for the usual ones.

    Returns
    -------
    Rotor
        Its values.
    """
    found = Rotor(positions)
    kind, _, suffix = bearing.partition(" ")
    first = rng.choice({"ball": BALL, "angular": ANGULAR, "roller": ROLLER}[kind])
    other = "62" + first[-2:] if kind == "roller" else first
    if kind == "ball" and rng.random() < 0.5:
        other = rng.choice([name for name in BALL if abs(bore(name) - bore(first)) <= 5])
    on, into = (rng.choice(own.split() or usual) for own, usual in zip(fits, (SHAFT, HOUSING), strict=True))
    for s in range(len(positions)):
        designation = (first if s == 0 else other) + (suffix if kind != "roller" or s else "")
        if s and rng.random() < 0.5:
            into = rng.choice(fits[1].split() or HOUSING)
        found.implied |= {(s, key): value for key, value in follows(designation).items()}
        found.values |= {(key, s): value for key, value in position(rng, designation, kind, s, on, into).items()}
    found.values |= {(key, -1): value for key, value in whole(rng, name, drawing).items()}
    found.values["lubrication", -1] = found.values["lubrication", 0]
    return found


def position(rng: random.Random, designation: str, kind: str, s: int, on: str, into: str) -> dict[str, Value]:
    """The values of one position; ``on`` and ``into`` are the classes of shaft and housing."""
    known = basic(designation)
    if known is None:
        raise ValueError(designation)
    d, outside, width, chamfer = (float(v) for v in known[2])
    said = follows(designation)
    rating = round(2.2 * (outside - d) ** 1.25 * width**0.35) * 50.0
    grade = rng.choice((0.002, 0.003, 0.004))
    step = max(1.0, min(2.2 * chamfer, 0.28 * (outside - d)))
    fillet = chamfer if chamfer < 1 else round(chamfer - 0.2, 2)
    values: dict[str, Value] = {
        "bearing_designation": designation, "bore_diameter": d, "outside_diameter": outside, "ring_width": width,
        "ring_chamfer": chamfer, "clearance_class": said["clearance_class"], "bearing_type": said["bearing_type"],
        "tolerance_class": said["tolerance_class"], "dynamic_rating": rating,
        "static_rating": round(rating * 0.011) * 50.0, "fatigue_load_limit": float(round(rating * 0.022)),
        "limiting_speed": round(9800 / (d + outside)) * 100.0, "reference_speed": round(11200 / (d + outside)) * 100.0,
        "lubrication": "oil bath" if kind == "roller" else "grease",
        "base_oil_viscosity_40": float(rng.choice((22, 46, 68, 100))),
        "operating_temperature": float(rng.choice((52, 58, 65, 72, 78))),
        "regreasing_interval": float(rng.choice((2000, 2500, 4000, 8000))),
        "radial_load": max(15.0, round(rating * rng.choice((0.018, 0.027, 0.044)) / 5) * 5.0),
        "axial_load": max(10.0, round(rating * rng.choice((0.007, 0.011)) / 5) * 5.0) * (designation[:1] != "N"),
        "axial_role": ("locating", "floating")[s != (kind == "roller")],
        "nut_torque": float(rng.choice((8, 15, 22, 35))),
        "shaft_seat_diameter": size(d, on), "housing_seat_diameter": size(outside, into),
        "shaft_seat_roughness": rng.choice((0.2, 0.4, 0.8)), "housing_seat_roughness": rng.choice((0.8, 1.6)),
        "shaft_shoulder_diameter": round((d + 2 * step) * 2) / 2,
        "housing_shoulder_diameter": round((outside - 2 * step) * 2) / 2,
        "housing_outer_diameter": round(outside * rng.choice((1.3, 1.5))),
    }  # fmt: skip
    for side, more in (("shaft", 0.0), ("housing", 0.001)):
        values |= {
            f"{side}_seat_cylindricity": round(grade + more, 4), f"{side}_seat_runout": round(2 * grade + more, 4),
            f"{side}_shoulder_runout": round(2 * grade + 2 * more, 4), f"{side}_fillet_radius": fillet,
        }  # fmt: skip
    return {key: value if isinstance(value, str | Size) else float(value) for key, value in values.items()}


def whole(rng: random.Random, name: str, drawing: str) -> dict[str, Value]:
    """The values of the whole machine."""
    fast = float(rng.choice((3600, 5400, 8200, 11500, 16000)))
    return {
        "machine": name, "drawing_number": drawing, "drawing_revision": rng.choice("ABCDEF"), "speed_max": fast,
        "speed_operating": round(fast * 0.75, -2), "required_life": float(rng.choice((8000, 12000, 20000, 40000))),
        "rotor_mass": rng.choice((0.74, 1.35, 2.8, 6.4, 11.5)), "bearing_span": float(rng.choice((74, 88, 112, 146.5))),
        "balance_grade": rng.choice((1.0, 2.5, 6.3)), "ambient_temperature": float(rng.choice((20, 25, 40))),
        "housing_temperature": float(rng.choice((45, 50, 55))),
        "shaft_material": "steel", "housing_material": rng.choice(("cast iron", "aluminium")),
        "shaft_orientation": rng.choice(("horizontal", "vertical")),
        "preload_force": float(rng.choice((40, 75, 110, 160))), "coaxiality_of_bores": rng.choice((0.008, 0.01, 0.012)),
    }  # fmt: skip
