"""Machines in numbers: what a rotor and its bearing positions are, before a sheet says any of it.

Rings are those of practice/bearings.py, deviations those of ISO 286-1. Loads, speeds and the rest are of a usual order
for the size; machines, drawings and people are invented.
"""

import math
import random
from dataclasses import dataclass, field

from practice.bearings import basic, follows
from practice.grammar import Size, Value

from linter.mechanics.limits import deviations_or_nan


@dataclass
class Machine:
    """Values by parameter and position (-1: the machine), and what follows from the designations."""

    positions: tuple[str, ...]
    values: dict[tuple[str, int], Value] = field(default_factory=dict)
    implied: dict[tuple[int, str], Value] = field(default_factory=dict)


def seat(nominal: float, tolerance_class: str) -> Size:
    """A seat with the deviations of its class, in mm."""
    low, high = (round(float(d) / 1000, 6) for d in deviations_or_nan(tolerance_class, nominal))
    if math.isnan(low) or math.isnan(high):
        raise ValueError(f"{nominal} {tolerance_class}")
    return Size(nominal, low, high, tolerance_class)


def machine(
    rng: random.Random, name: str, drawing: str, positions: tuple[str, ...], bearings: list[str], fits: tuple[str, str]
) -> Machine:
    """Draw the numbers of a machine.

    Parameters
    ----------
    rng : random.Random
        Of the table.
    name, drawing, positions : str and tuple
        As the sheet calls them.
    bearings : list of str
        The designation at each position; one that stands alone is that of all.
    fits : tuple of str
        Classes of shaft and of housing seats to choose from, with blanks between.

    Returns
    -------
    Machine
        Its values.
    """
    found = Machine(positions)
    bearings = bearings * len(positions) if len(bearings) == 1 else bearings
    spring = rng.random() < 0.5 and not any(name.startswith("N") for name in bearings)
    for s, designation in enumerate(bearings):
        own = _position(rng, designation, *(rng.choice(classes.split()) for classes in fits))
        own["axial_role"] = "locating" if s == 0 else "spring-loaded" if spring else "floating"
        found.values |= {(key, s): value for key, value in own.items()}
        found.implied |= {(s, key): value for key, value in follows(designation).items()}
    known = basic(bearings[0])
    assert known is not None
    whole = _whole(rng, float(known[2][0]), float(known[2][1]))
    whole |= {"machine": name, "drawing_number": drawing, "preload_method": "spring" if spring else "none"}
    found.values |= {(key, -1): value for key, value in whole.items()}
    return found


def _position(rng: random.Random, designation: str, on: str, into: str) -> dict[str, Value]:
    """The numbers of one position; ``on`` and ``into`` are the classes of shaft and housing."""
    known = basic(designation)
    if known is None:
        raise ValueError(designation)
    d, outside, width, chamfer = (float(n) for n in known[2])
    implied = follows(designation)
    step = round(2 * max(0.8, 2.2 * chamfer)) / 2
    rating = 50.0 * round(0.5 * (outside - d) ** 1.4 * width**0.6)
    fine = rng.choice((0.0015, 0.002, 0.003)) if d < 20 else rng.choice((0.003, 0.004, 0.005))
    roller = "roller" in str(implied["bearing_type"])
    values: dict[str, Value] = {
        "bearing_designation": designation, "bore_diameter": d, "outside_diameter": outside, "ring_width": width,
        "ring_chamfer": chamfer, "dynamic_rating": rating, "static_rating": 50.0 * round(rating * 0.0104),
        "fatigue_load_limit": float(max(5, round(rating * 0.021))), "bearing_type": implied["bearing_type"],
        "clearance_class": implied["clearance_class"], "tolerance_class": implied["tolerance_class"],
        "closure": implied["closure"], "contact_angle": implied.get("contact_angle", 0.0),
        "limiting_speed": 500.0 * round(2800 / (d + outside)), "lubrication": "oil bath" if roller else "grease",
        "ball_material": "steel", "cage": implied.get("cage", "pressed steel"),
        "reference_speed": 500.0 * round(2400 / (d + outside)), "grease_fill": float(rng.choice((25, 30, 35))),
        "base_oil_viscosity_40": float(rng.choice((25, 32, 68, 110))),
        "operating_temperature": float(rng.choice((55, 62, 70, 75))),
        "radial_load": 5.0 * max(2, round(rating * rng.choice((0.004, 0.007, 0.011)))),
        "axial_load": 5.0 * max(1, round(rating * rng.choice((0.001, 0.002)))) * (designation[:1] != "N"),
        "regreasing_interval": float(rng.choice((1500, 3000, 6000))), "nut_torque": float(rng.choice((6, 12, 18, 40))),
        "shaft_seat_diameter": seat(d, on), "housing_seat_diameter": seat(outside, into),
        "shaft_seat_roughness": rng.choice((0.2, 0.4, 0.8)), "housing_seat_roughness": rng.choice((0.8, 1.6)),
        "shaft_shoulder_diameter": d + 2 * step, "housing_shoulder_diameter": outside - 2 * step,
        "housing_outer_diameter": float(2 * round(0.68 * outside)),
        "power_loss": rng.choice((1.8, 3.4, 6.5)), "radial_stiffness": 1000.0 * rng.choice((38, 54, 85)),
    }  # fmt: skip
    for side, more in (("shaft", 0.0), ("housing", 0.001)):
        values |= {
            f"{side}_seat_cylindricity": round(fine + more, 4), f"{side}_seat_runout": round(2 * fine + more, 4),
            f"{side}_shoulder_runout": round(2 * fine + 2 * more, 4),
            f"{side}_fillet_radius": math.floor(chamfer * 8) / 10,
        }  # fmt: skip
    return values


def _whole(rng: random.Random, bore: float, outside: float) -> dict[str, Value]:
    """The numbers of the whole machine."""
    fast = 500.0 * round(1900 * rng.choice((0.6, 0.8, 1.0)) / (bore + outside))
    span = float(round(outside * rng.choice((2.2, 2.9, 3.6))))
    return {
        "drawing_revision": rng.choice("ABCDEFG"), "speed_max": fast, "speed_operating": 100.0 * round(fast * 0.0082),
        "required_life": float(rng.choice((6000, 10000, 16000, 25000, 50000))), "bearing_span": span,
        "required_reliability": float(rng.choice((95, 97))), "rotor_mass": round(0.0006 * bore**2 * span**0.5, 2),
        "balance_grade": rng.choice((1.0, 2.5, 6.3)), "ambient_temperature": float(rng.choice((22, 30, 45))),
        "shaft_temperature": float(rng.choice((65, 72, 80))), "housing_temperature": float(rng.choice((48, 54, 60))),
        "temperature_min": float(rng.choice((-30, -20, -10))), "temperature_max": float(rng.choice((90, 105, 120))),
        "shaft_material": "steel", "housing_material": rng.choice(("cast iron", "aluminium")),
        "shaft_orientation": rng.choice(("horizontal", "vertical")), "spring_rate": rng.choice((12.5, 18.0, 32.0)),
        "preload_force": float(rng.choice((25, 60, 90, 140))), "coaxiality_of_bores": rng.choice((0.008, 0.01, 0.015)),
        "first_critical_speed": 1000.0 * round(fast * 0.0017), "duty": rng.choice(("continuous", "intermittent")),
        "axial_float": rng.choice((0.3, 0.5)), "load_direction": "stationary", "rotating_ring": "inner",
        "residual_unbalance": rng.choice((0.8, 1.5, 4.0)),
    }  # fmt: skip
