"""Machines and their bearings: every value there is before an office writes some of them down.

Rings are those of practice/bearings.py, deviations those of ISO 286-1; loads and ratings are of a usual order for the
size. Machines and drawings are invented.
"""

import random
from dataclasses import dataclass, field

from practice.bearings import basic, follows
from practice.grammar import Size, Value

from linter.mechanics.limits import deviations_or_nan

#: Short names of parameters, as templates use them.
SHORT = {
    "bd": "bearing_designation", "d": "bore_diameter", "D": "outside_diameter", "B": "ring_width", "rs": "ring_chamfer",
    "bt": "bearing_type", "pc": "tolerance_class", "cc": "clearance_class", "gr": "radial_clearance",
    "C": "dynamic_rating", "C0": "static_rating", "Cu": "fatigue_load_limit", "nlim": "limiting_speed",
    "nref": "reference_speed", "lub": "lubrication", "v40": "base_oil_viscosity_40", "top": "operating_temperature",
    "regr": "regreasing_interval", "fill": "grease_fill", "fr": "radial_load", "fa": "axial_load", "role": "axial_role",
    "nut": "nut_torque", "sd": "shaft_seat_diameter", "hd": "housing_seat_diameter", "sra": "shaft_seat_roughness",
    "hra": "housing_seat_roughness", "scy": "shaft_seat_cylindricity", "hcy": "housing_seat_cylindricity",
    "sru": "shaft_seat_runout", "hru": "housing_seat_runout", "ssh": "shaft_shoulder_diameter",
    "hsh": "housing_shoulder_diameter", "ssr": "shaft_shoulder_runout", "hsr": "housing_shoulder_runout",
    "sfi": "shaft_fillet_radius", "hfi": "housing_fillet_radius", "hod": "housing_outer_diameter",
    "loss": "power_loss", "clo": "closure", "ca": "contact_angle",
    "dwg": "drawing_number", "rev": "drawing_revision", "nmax": "speed_max", "nop": "speed_operating",
    "life": "required_life", "ori": "shaft_orientation", "rot": "rotating_ring", "smat": "shaft_material",
    "hmat": "housing_material", "amb": "ambient_temperature", "tmin": "temperature_min", "tmax": "temperature_max",
    "ht": "housing_temperature", "st": "shaft_temperature", "span": "bearing_span", "mass": "rotor_mass",
    "G": "balance_grade", "ures": "residual_unbalance", "pre": "preload_method", "pf": "preload_force",
    "cob": "coaxiality_of_bores", "cos": "coaxiality_of_shaft_seats", "ncr": "first_critical_speed", "duty": "duty",
    "blades": "blade_count",
}  # fmt: skip
#: Radial clearance in um by group up to a bore in mm (ISO 5753-1, from memory).
CLEARANCE = {
    "CN": ((10, 2, 13), (18, 3, 18), (24, 5, 20), (30, 5, 20), (40, 6, 20), (50, 6, 23), (65, 8, 28)),
    "C3": ((10, 8, 23), (18, 11, 25), (24, 13, 28), (30, 13, 28), (40, 15, 33), (50, 18, 36), (65, 23, 43)),
}


@dataclass
class Rotor:
    """A rotor in its bearings: values by parameter and position (-1: the machine), and what designations say."""

    positions: tuple[str, ...]
    values: dict[tuple[str, int], Value] = field(default_factory=dict)
    implied: dict[tuple[int, str], Value] = field(default_factory=dict)


def size(nominal: float, tolerance_class: str) -> Size:
    """A size with the deviations of its class, in mm."""
    low, high = (float(d) for d in deviations_or_nan(tolerance_class, nominal))
    return Size(nominal, round(low / 1000, 6), round(high / 1000, 6), tolerance_class)


def rotor(
    rng: random.Random, name: str, drawing: str, positions: tuple[str, ...], bearings: str, fits: tuple[str, str]
) -> Rotor:
    """Draw a rotor.

    Parameters
    ----------
    rng : random.Random
        Of the table.
    name, drawing, positions : str and tuple
        As the office calls them.
    bearings : str
        Designations of the positions with ``+`` between; the last one stands for those that follow.
    fits : tuple of str
        The classes of shafts and of housings that the office uses, with blanks between.

    Returns
    -------
    Rotor
        Its values.
    """
    found = Rotor(positions)
    designations = [part.strip() for part in bearings.split("+")]
    rollers = {s for s, one in enumerate(designations) if one.startswith("NU")}
    loose = rollers or set(range(1, len(positions)))
    for s in range(len(positions)):
        designation = designations[min(s, len(designations) - 1)]
        on, into = (rng.choice(several.split()) for several in fits)
        found.implied |= {(s, key): value for key, value in follows(designation).items()}
        found.values |= {(key, s): value for key, value in _position(rng, designation, on, into).items()}
        if s in loose and not designation.startswith("7"):
            found.values["axial_role", s] = "floating"
    largest = max(float(str(found.implied[s, "outside_diameter"])) for s in range(len(positions)))
    found.values |= {(key, -1): value for key, value in _whole(rng, name, drawing, largest).items()}
    return found


def _position(rng: random.Random, designation: str, on: str, into: str) -> dict[str, Value]:
    """The values of one position; ``on`` and ``into`` are the classes of shaft and housing."""
    known = basic(designation)
    if known is None:
        raise ValueError(designation)
    kind = known[0]
    d, outside, width, chamfer = (float(v) for v in known[2])
    said = follows(designation)
    free = "roller" in kind
    rating = round(2.4 * (outside - d) ** 1.2 * width**0.4) * 50.0 * (1.6 if free else 1.0)
    clearance = str(said["clearance_class"])
    ends = next((low, high) for most, low, high in CLEARANCE[clearance] if d <= most)
    form = rng.choice((0.0025, 0.003, 0.004, 0.005))
    step = max(1.5, 0.24 * (outside - d))
    fillet = 0.3 if chamfer < 0.5 else round(chamfer * rng.choice((0.6, 0.8, 1.0)), 1)
    values: dict[str, Value] = {
        "bearing_designation": designation, "bore_diameter": d, "outside_diameter": outside, "ring_width": width,
        "ring_chamfer": chamfer, "clearance_class": clearance, "bearing_type": kind, "closure": said["closure"],
        "tolerance_class": said["tolerance_class"],
        "radial_clearance": Size(ends[0], 0.0, ends[1] - ends[0], bare=True),
        "contact_angle": said.get("contact_angle", 15.0),
        "dynamic_rating": rating, "static_rating": round(rating * 0.012) * 50.0,
        "fatigue_load_limit": round(rating * 0.0024) * 10.0,
        "limiting_speed": round(5300 / (d + outside)) * 200.0, "reference_speed": round(6100 / (d + outside)) * 200.0,
        "lubrication": "oil bath" if free else "grease", "base_oil_viscosity_40": rng.choice((32.0, 46.0, 68.0, 110.0)),
        "operating_temperature": rng.choice((48.0, 55.0, 62.0, 70.0, 75.0)),
        "regreasing_interval": rng.choice((1500.0, 3000.0, 5000.0, 6000.0)),
        "grease_fill": rng.choice((25.0, 30.0, 35.0)),
        "radial_load": max(20.0, round(rating * rng.choice((0.021, 0.033, 0.052)) / 10) * 10.0),
        "axial_load": 0.0 if free else max(15.0, round(rating * rng.choice((0.006, 0.013)) / 5) * 5.0),
        "axial_role": "locating",
        "nut_torque": rng.choice((12.0, 18.0, 25.0, 40.0)), "power_loss": rng.choice((4.5, 8.2, 14.0, 21.0)),
        "shaft_seat_diameter": size(d, on), "housing_seat_diameter": size(outside, into),
        "shaft_seat_roughness": rng.choice((0.2, 0.32, 0.4, 0.63, 0.8)),
        "housing_seat_roughness": rng.choice((0.63, 0.8, 1.25, 1.6)),
        "shaft_shoulder_diameter": size(round(d + step), "h11"),
        "housing_shoulder_diameter": size(round(outside - step), "H11"),
        "housing_outer_diameter": float(round(outside * rng.choice((1.35, 1.45)))),
    }  # fmt: skip
    for side, more in (("shaft", 0.0), ("housing", 0.0015)):
        values |= {
            f"{side}_seat_cylindricity": round(form + more, 4), f"{side}_seat_runout": round(2 * form + more, 4),
            f"{side}_shoulder_runout": round(2.4 * form + more, 4), f"{side}_fillet_radius": fillet,
        }  # fmt: skip
    return values


def _whole(rng: random.Random, name: str, drawing: str, largest: float) -> dict[str, Value]:
    """The values of the whole machine; ``largest`` is its largest bearing's outside diameter."""
    fast = rng.choice([n for n in (2950.0, 4200.0, 6000.0, 9500.0, 12600.0, 18000.0) if n * largest < 950000])
    return {
        "machine": name, "drawing_number": drawing, "drawing_revision": rng.choice(("A", "B", "C", "D", "E")),
        "speed_max": fast, "speed_operating": round(fast * 0.8, -2), "first_critical_speed": round(fast * 1.7, -2),
        "required_life": rng.choice((10000.0, 16000.0, 25000.0, 30000.0, 50000.0)),
        "rotor_mass": rng.choice((0.92, 1.6, 3.45, 5.8, 9.7, 14.2)),
        "bearing_span": rng.choice((68.0, 95.5, 124.0, 160.0)),
        "balance_grade": rng.choice((1.0, 2.5, 6.3)), "residual_unbalance": rng.choice((1.2, 3.5, 8.0)),
        "ambient_temperature": rng.choice((20.0, 30.0, 35.0)), "housing_temperature": rng.choice((42.0, 48.0, 56.0)),
        "shaft_temperature": rng.choice((58.0, 64.0, 71.0)), "temperature_min": rng.choice((-20.0, -10.0, 5.0)),
        "temperature_max": rng.choice((80.0, 90.0, 110.0)), "shaft_material": rng.choice(("steel", "stainless steel")),
        "housing_material": rng.choice(("cast iron", "aluminium", "steel")), "rotating_ring": "inner",
        "shaft_orientation": rng.choice(("horizontal", "vertical")), "preload_method": rng.choice(("spring", "none")),
        "preload_force": rng.choice((55.0, 90.0, 130.0, 180.0)),
        "coaxiality_of_bores": rng.choice((0.008, 0.012, 0.015)),
        "coaxiality_of_shaft_seats": rng.choice((0.005, 0.006, 0.01)),
        "duty": rng.choice(("continuous", "intermittent")),
        "blade_count": rng.choice((6.0, 8.0, 12.0)),
    }  # fmt: skip
