"""The arrangements themselves: what a machine and its bearings are, before an office fills its form.

Rings and what follows from a designation are those of practice/bearings.py, deviations those of ISO 286-1. Loads and
ratings are of a usual order for the size. More is drawn than the forms use; machines and their numbers are invented.
"""

import random
from dataclasses import dataclass, field

from practice.bearings import basic, follows
from practice.grammar import Size, Value

from linter.mechanics.limits import deviations_or_nan

#: Of the whole machine: key, parameter and quantity.
WHOLE = {
    "name": ("machine", ""), "dwg": ("drawing_number", ""), "rev": ("drawing_revision", ""),
    "nmax": ("speed_max", "count"), "nop": ("speed_operating", "count"), "life": ("required_life", "count"),
    "rel": ("required_reliability", "number"), "mass": ("rotor_mass", "mass"), "span": ("bearing_span", "length"),
    "tamb": ("ambient_temperature", "temp"), "tsh": ("shaft_temperature", "temp"),
    "tho": ("housing_temperature", "temp"), "tmin": ("temperature_min", "temp"), "tmax": ("temperature_max", "temp"),
    "smat": ("shaft_material", ""), "hmat": ("housing_material", ""), "orient": ("shaft_orientation", ""),
    "bal": ("balance_grade", "number"), "duty": ("duty", ""), "pf": ("preload_force", "force"),
    "unb": ("residual_unbalance", "number"),
    "coh": ("coaxiality_of_bores", "length"), "cos": ("coaxiality_of_shaft_seats", "length"),
    "rate": ("spring_rate", "number"), "L0": ("spring_free_length", "length"),
    "?temp": ("operating_temperature|shaft_temperature|housing_temperature|temperature_max|ambient_temperature",
              "temp"),
}  # fmt: skip
#: Of a position.
OWN = {
    "pos": ("station", ""), "des": ("bearing_designation", ""), "rmat": ("ring_material", ""),
    "d": ("bore_diameter", "length"), "D": ("outside_diameter", "length"), "B": ("ring_width", "length"),
    "alpha": ("contact_angle", "number"), "C": ("dynamic_rating", "force"),
    "C0": ("static_rating", "force"), "nlim": ("limiting_speed", "count"),
    "clr": ("clearance_class", ""), "prec": ("tolerance_class", ""),
    "seal": ("closure", ""), "lub": ("lubrication", ""), "nu": ("base_oil_viscosity_40", "number"),
    "temp": ("operating_temperature", "temp"), "Fr": ("radial_load", "force"), "Fa": ("axial_load", "force"),
    "role": ("axial_role", ""), "nut": ("nut_torque", "number"), "regr": ("regreasing_interval", "count"),
    "fill": ("grease_fill", "number"),
    "ho": ("housing_outer_diameter", "length"), "Z": ("ball_count", "count"),
    "?ra": ("shaft_seat_roughness|housing_seat_roughness", "length"),
    "?clr": ("radial_clearance", "number"),
}  # fmt: skip
#: Of a shaft (``s.``) or a housing (``h.``): the end of the parameter.
SIDED = {
    "ra": ("_seat_roughness", "rough"), "cyl": ("_seat_cylindricity", "length"), "run": ("_seat_runout", "length"),
    "sh": ("_shoulder_diameter", "length"), "shr": ("_shoulder_runout", "length"), "fil": ("_fillet_radius", "length"),
    "gd": ("_groove_diameter", "length"), "uf": ("_undercut_form", ""),
}  # fmt: skip
SIDES = {"s": "shaft", "h": "housing"}
SHAFT = ("k5", "k6", "j6", "h6", "g6", "m6", "h5", "m5", "n6", "p6")
HOUSING = ("H7", "J7", "H6", "K7", "G7", "M7", "K6", "N7", "P7", "H8")


@dataclass
class Arrangement:
    """A rotor in its bearings: values by key and position (-1: the whole), and what its designations say."""

    name: str
    positions: tuple[str, ...]
    values: dict[tuple[str, int], Value] = field(default_factory=dict)
    implied: dict[tuple[int, str], Value] = field(default_factory=dict)


def parameter(key: str) -> str:
    """The parameter of a key."""
    if key[:2] in ("s.", "h."):
        end = "_seat_diameter" if len(key) == 3 else SIDED[key[2:]][0]
        return SIDES[key[0]] + end
    return (WHOLE | OWN)[key][0]


def quantity(key: str) -> str:
    """What kind of number a key is."""
    if key[:2] in ("s.", "h."):
        return "length" if len(key) == 3 else SIDED[key[2:]][1]
    return (WHOLE | OWN)[key][1]


def seat(nominal: float, tolerance_class: str) -> Size:
    """A seat with the deviations of its class, in mm."""
    low, high = (round(float(d) / 1000, 6) for d in deviations_or_nan(tolerance_class, nominal))
    return Size(nominal, low, high, tolerance_class)


def draw(rng: random.Random, name: str, positions: tuple[str, ...], designations: list[str], even: bool) -> Arrangement:
    """An arrangement.

    Parameters
    ----------
    rng : random.Random
        Of the table.
    name, positions : str and tuple
        As the office calls them.
    designations : list of str
        Bearings that the office uses.
    even : bool
        Whether its tolerances lie alike on both sides of the nominal.
    """
    one = Arrangement(name, positions)
    fits, holes = (("js5", "js6"), ("JS6", "JS7")) if even else (SHAFT, HOUSING)
    fit, hole = rng.choice(fits), rng.choice(holes)
    for s in range(len(positions)):
        fit, hole = rng.choice((fit, rng.choice(fits))), rng.choice((hole, rng.choice(holes)))
        des = rng.choice(designations)
        known = follows(des)
        one.implied |= {(s, key): value for key, value in known.items()}
        one.values |= {(key, s): value for key, value in _position(rng, des, fit, hole, s).items()}
        told = {"clr": "clearance_class", "seal": "closure", "prec": "tolerance_class"}
        one.values |= {(key, s): known[of] for key, of in told.items()}
        one.values["alpha", s] = known.get("contact_angle", 0.0)
    one.values |= {(key, -1): value for key, value in _whole(rng, name).items()}
    return one


def _position(rng: random.Random, des: str, fit: str, hole: str, s: int) -> dict[str, Value]:
    found = basic(des)
    if found is None:
        raise ValueError(des)
    d, outside, width, rs = (float(v) for v in found[2])
    rating = round(2.2 * (outside - d) ** 1.25 * width**0.4) * 50.0
    static = round(rating * 0.0106) * 50.0
    shoulder = round(min(1.0 + 2.5 * rs, 0.2 * (outside - d)) * 2) / 2 * 2
    grade = rng.choice((0.002, 0.0025, 0.003, 0.004))
    put: dict[str, Value] = {
        "des": des, "rmat": "bearing steel", "d": d, "D": outside, "B": width, "C": rating, "C0": static,
        "nlim": round(9500 / (d + outside)) * 100.0,
        "lub": "grease", "nu": float(rng.choice((22, 32, 68, 100, 150))),
        "temp": float(rng.choice((55, 60, 65, 70, 78))), "Fr": round(rating * rng.uniform(0.012, 0.05) / 10) * 10.0,
        "Fa": round(rating * rng.uniform(0.005, 0.015) / 5) * 5.0 + 5.0, "role": "floating" if s else "locating",
        "nut": float(rng.choice((12, 18, 25, 40, 55))), "regr": float(rng.choice((1500, 2000, 3500, 8000))),
        "fill": float(rng.choice((25, 30, 35))), "ho": outside + float(rng.choice((12, 16, 20, 28))),
        "Z": float(rng.choice((7, 8, 9, 11))),
        "?ra": rng.choice((0.4, 0.8)), "?clr": float(rng.choice((12, 15))),
        "s.seat": seat(d, fit), "h.seat": seat(outside, hole),
    }  # fmt: skip
    for side, at, sign in (("s", d, 1), ("h", outside, -1)):
        more = 0.001 * (side == "h")
        put |= {
            f"{side}.ra": rng.choice((0.4, 0.8) if sign > 0 else (0.8, 1.6)), f"{side}.cyl": round(grade + more, 4),
            f"{side}.run": round(2 * grade + 3 * more, 4), f"{side}.shr": round(grade + 0.003 + more, 4),
            f"{side}.fil": rs if rs < 0.6 else round(rs - 0.1, 2), f"{side}.sh": at + sign * shoulder,
            f"{side}.gd": round(at - sign * 0.05 * at, 1),
            f"{side}.uf": "F" if sign > 0 else "E",
        }  # fmt: skip
    return put


def _whole(rng: random.Random, name: str) -> dict[str, Value]:
    fast = float(rng.choice((3000, 4500, 7200, 9600, 12500, 18000)))
    free = rng.choice((9.5, 12.0, 14.5))
    return {
        "name": name, "dwg": f"{rng.choice(('BA', 'K', 'Z', 'HQ'))}{rng.choice('-. ')}{rng.randint(1100, 8999)}"
        f"{rng.choice('-./')}{rng.randint(10, 99)}", "rev": rng.choice("ABCDEH"), "nmax": fast,
        "nop": round(fast * 0.8, -2), "life": float(rng.choice((10000, 16000, 20000, 30000, 50000))),
        "rel": float(rng.choice((90, 95, 97))), "mass": rng.choice((0.48, 0.95, 1.8, 3.6, 6.2, 11.5)),
        "span": float(rng.choice((48, 72, 96.5, 128, 164, 210))), "tamb": float(rng.choice((20, 30, 35, 45))),
        "tsh": float(rng.choice((66, 74, 82))), "tho": float(rng.choice((48, 52, 58))),
        "tmin": float(rng.choice((-30, -15, -5))), "tmax": float(rng.choice((80, 90, 105))), "smat": "steel",
        "hmat": rng.choice(("cast iron", "aluminium")), "orient": rng.choice(("horizontal", "vertical")),
        "bal": rng.choice((1.0, 2.5, 6.3)), "duty": rng.choice(("continuous", "intermittent")),
        "pf": float(rng.choice((35, 60, 90, 140))),
        "unb": rng.choice((0.5, 1.2, 2.4)), "coh": rng.choice((0.01, 0.015, 0.02)), "cos": rng.choice((0.005, 0.008)),
        "rate": rng.choice((12.5, 18.0, 24.0)), "L0": free, "?temp": 70.0,
    }  # fmt: skip
