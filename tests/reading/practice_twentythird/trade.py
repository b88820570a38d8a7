"""Small machines in their bearings: what the values are, before anything is written.

Rings and what follows from designations are those of practice/bearings.py, deviations those of ISO 286-1. The rest is
of a usual order for the size (common practice); machines and drawings are invented.
"""

import random
from dataclasses import dataclass, field

from practice.bearings import basic, follows
from practice.grammar import Size, Value

from linter.mechanics.limits import deviations_or_nan

SERIES = {
    "mini": ("607", "608", "609", "625", "626", "627", "629", "6000", "6001", "6900"),
    "ball": (
        "6000", "6001", "6002", "6003", "6004", "6005", "6200", "6201", "6202", "6203", "6204", "6205", "6301", "6302",
        "6303", "6304", "6902", "6903", "6904",
    ),
    "angular": ("7001", "7002", "7003", "7004", "7005", "7006", "7203", "7204", "71904", "71905", "71906", "71907"),
}  # fmt: skip
SHAFT = ("h5", "js5", "j5", "k5", "k6", "m5", "g6", "h6", "j6")
HOUSING = ("H6", "H7", "J6", "JS6", "K6", "K7", "M6", "G6", "N6", "H5")


@dataclass
class Rotor:
    """One machine: values by parameter and position (-1: of the machine), and what designations say."""

    positions: tuple[str, ...]
    values: dict[tuple[str, int], Value] = field(default_factory=dict)
    implied: dict[tuple[int, str], Value] = field(default_factory=dict)

    def value(self, name: str, s: int) -> Value:
        """The value at a position: its own, else that of all."""
        return self.values[name, s] if (name, s) in self.values else self.values[name, -1]


def rings(designation: str) -> tuple[float, float, float, float]:
    """Bore, outside diameter, width and chamfer of a bearing; ValueError where the lists do not have it."""
    known = basic(designation)
    if known is None:
        raise ValueError(designation)
    return known[2]


def seat(nominal: float, tolerance_class: str) -> Size:
    """A seat with the deviations of its class, in mm."""
    low, high = (round(float(d) / 1000, 6) for d in deviations_or_nan(tolerance_class, nominal))
    return Size(float(nominal), low, high, tolerance_class)


def rotor(
    rng: random.Random, name: str, drawing: str, positions: tuple[str, ...], bearing: str, fits: tuple[str, str]
) -> Rotor:
    """Draw a machine.

    Parameters
    ----------
    rng : random.Random
        Of the table.
    name, drawing, positions : str and tuple
        As the office calls them.
    bearing : str
        The series (``mini``, ``ball``, ``angular``), after a blank what follows the basic designation.
    fits : tuple of str
        Classes to choose from, of shafts and of housings, with blanks between; empty for the usual ones.

    Returns
    -------
    Rotor
        Its values.
    """
    kind, _, suffix = bearing.partition(" ")
    found = Rotor(positions)
    larger, smaller = sorted(rng.sample(SERIES[kind], 2), key=lambda basic: rings(basic)[0], reverse=True)
    if kind == "angular" or rng.random() < 0.35:
        smaller = larger
    on, into = (rng.choice(own.split() or usual) for own, usual in zip(fits, (SHAFT, HOUSING), strict=True))
    for s in range(len(positions)):
        designation = (larger if s == 0 else smaller) + suffix
        if s and rng.random() < 0.6:
            into = rng.choice(fits[1].split() or HOUSING)
        said = follows(designation)
        found.implied |= {(s, key): value for key, value in said.items()}
        found.values |= {(key, s): value for key, value in _position(rng, designation, s, on, into).items()}
        found.values |= {(key, s): value for key, value in said.items()}
    found.values |= {(key, -1): value for key, value in _whole(rng, name, drawing).items()}
    for key in {key for key, s in found.values if s == 0}:
        if len({str(found.values.get((key, s))) for s in range(len(positions))}) == 1:
            found.values.setdefault((key, -1), found.values[key, 0])
    return found


def _position(rng: random.Random, designation: str, s: int, on: str, into: str) -> dict[str, Value]:
    """The values of one position; ``on`` and ``into`` are the classes of shaft and housing."""
    d, outside, width, chamfer = rings(designation)
    rating = round(2.1 * (outside - d) ** 1.2 * width**0.4) * 50.0
    grade = rng.choice((0.0025, 0.003, 0.004, 0.005))
    step = max(1.0, min(2.4 * chamfer, 0.25 * (outside - d)))
    fillet = chamfer if chamfer < 0.6 else round(chamfer - 0.1, 2)
    values: dict[str, Value] = {
        "bearing_designation": designation, "dynamic_rating": rating, "static_rating": round(rating * 0.0104) * 50.0,
        "limiting_speed": round(9000 / (d + outside)) * 100.0, "lubrication": "grease",
        "operating_temperature": float(rng.choice((48, 55, 60, 68, 75))),
        "radial_load": max(12.0, round(rating * rng.choice((0.015, 0.023, 0.035)))),
        "axial_load": 0.0 if s and designation[0] == "6" else max(6.0, round(rating * rng.choice((0.006, 0.009)))),
        "axial_role": "floating" if s else "locating", "nut_torque": float(rng.choice((4, 6, 9, 12))),
        "shaft_seat_diameter": seat(d, on), "housing_seat_diameter": seat(outside, into),
        "shaft_seat_roughness": rng.choice((0.2, 0.3, 0.4, 0.8)), "housing_seat_roughness": rng.choice((0.4, 0.8, 1.6)),
        "shaft_shoulder_diameter": round((d + 2 * step) * 5) / 5,
        "housing_shoulder_diameter": round((outside - 2 * step) * 5) / 5,
        "shaft_fillet_radius": fillet, "housing_fillet_radius": fillet,
        "housing_outer_diameter": float(round(outside * rng.choice((1.25, 1.4)))),
        "shaft_groove_width": rng.choice((1.1, 1.3)), "shaft_groove_diameter": round(d * 0.95, 1),
    }  # fmt: skip
    for side, more in (("shaft", 0.0), ("housing", 0.0015)):
        values |= {
            f"{side}_seat_cylindricity": round(grade + more, 4), f"{side}_seat_runout": round(2 * grade + more, 4),
            f"{side}_shoulder_runout": round(2 * grade + 2 * more, 4),
        }  # fmt: skip
    return values


def _whole(rng: random.Random, name: str, drawing: str) -> dict[str, Value]:
    """The values of the whole machine; what is of all its positions too."""
    fast = float(rng.choice((1500, 3000, 6000, 9500, 12000, 18000, 24000)))
    return {
        "machine": name, "drawing_number": drawing, "drawing_revision": rng.choice("ABCDEF"), "speed_max": fast,
        "speed_operating": round(fast * 0.8, -2), "required_life": float(rng.choice((6000, 10000, 15000, 25000))),
        "required_reliability": 95.0, "rotor_mass": rng.choice((0.18, 0.42, 0.86, 1.9, 3.6)),
        "bearing_span": float(rng.choice((46, 58.5, 72, 95, 118))), "balance_grade": rng.choice((1.0, 2.5, 6.3)),
        "residual_unbalance": rng.choice((0.4, 0.9, 1.5, 2.2)), "ambient_temperature": float(rng.choice((25, 35, 40))),
        "housing_temperature": float(rng.choice((45, 50, 55))), "shaft_temperature": float(rng.choice((60, 65, 70))),
        "temperature_min": float(rng.choice((-20, -10, 0))), "temperature_max": float(rng.choice((80, 90, 100))),
        "shaft_material": rng.choice(("steel", "stainless steel")),
        "housing_material": rng.choice(("cast iron", "aluminium", "steel")), "rotating_ring": "inner",
        "shaft_orientation": rng.choice(("horizontal", "vertical")), "preload_method": "spring",
        "preload_force": float(rng.choice((18, 30, 45, 60, 85))),
        "coaxiality_of_bores": rng.choice((0.01, 0.012, 0.015)),
        "duty": rng.choice(("continuous", "intermittent")), "load_direction": "stationary",
        "axial_float": rng.choice((0.3, 0.4, 0.5)), "base_oil_viscosity_40": float(rng.choice((25, 32, 46, 100))),
        "grease_fill": float(rng.choice((25, 30, 35))), "regreasing_interval": float(rng.choice((2000, 3000, 6000))),
    }  # fmt: skip
