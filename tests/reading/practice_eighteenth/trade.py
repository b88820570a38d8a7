"""The rotors themselves: what a machine and its bearings are, before any office writes it down.

Rings and what follows from a designation are those of practice/bearings.py, deviations those of ISO 286-1. Loads,
ratings and grooves are of a usual order for the size; machines and their numbers are invented.
"""

import random
from dataclasses import dataclass, field

from practice.bearings import basic, follows
from practice.grammar import Size, Value

from linter.mechanics.limits import deviations_or_nan

#: Scope (machine, bearing, shaft, housing), parameter and quantity of a key.
OWN = {
    "name": ("m", "machine", ""), "dwg": ("m", "drawing_number", ""), "rev": ("m", "drawing_revision", ""),
    "nmax": ("m", "speed_max", "speed"), "nop": ("m", "speed_operating", "speed"),
    "life": ("m", "required_life", "life"), "rel": ("m", "required_reliability", "percent"),
    "mass": ("m", "rotor_mass", "mass"), "span": ("m", "bearing_span", "length"),
    "tamb": ("m", "ambient_temperature", "temp"), "tsh": ("m", "shaft_temperature", "temp"),
    "tho": ("m", "housing_temperature", "temp"), "tmin": ("m", "temperature_min", "temp"),
    "tmax": ("m", "temperature_max", "temp"), "smat": ("m", "shaft_material", ""),
    "hmat": ("m", "housing_material", ""), "orient": ("m", "shaft_orientation", ""),
    "bal": ("m", "balance_grade", ""), "duty": ("m", "duty", ""), "pf": ("m", "preload_force", "newton"),
    "ring": ("m", "rotating_ring", ""), "nc": ("m", "first_critical_speed", "speed"),
    "station": ("b", "station", ""), "des": ("b", "bearing_designation", ""), "type": ("b", "bearing_type", ""),
    "d": ("b", "bore_diameter", "ring"), "D": ("b", "outside_diameter", "ring"), "B": ("b", "ring_width", "ring"),
    "rs": ("b", "ring_chamfer", "ring"), "alpha": ("b", "contact_angle", "deg"), "C": ("b", "dynamic_rating", "rating"),
    "C0": ("b", "static_rating", "rating"), "Cu": ("b", "fatigue_load_limit", "rating"),
    "nlim": ("b", "limiting_speed", "speed"), "clr": ("b", "clearance_class", ""), "seal": ("b", "closure", ""),
    "lub": ("b", "lubrication", ""), "nu40": ("b", "base_oil_viscosity_40", "visc"),
    "temp": ("b", "operating_temperature", "temp"), "Fr": ("b", "radial_load", "force"),
    "Fa": ("b", "axial_load", "force"), "role": ("b", "axial_role", ""), "nut": ("b", "nut_torque", "torque"),
    "regr": ("b", "regreasing_interval", "life"), "di": ("s", "shaft_bore", "length"),
    "ho": ("h", "housing_outer_diameter", "length"),
    "ask.ra": ("b", "shaft_seat_roughness|housing_seat_roughness", "rough"),
    "ask.temp": (
        "m", "operating_temperature|shaft_temperature|housing_temperature|temperature_max", "temp",
    ),
}  # fmt: skip
#: What a shaft and a housing have both: the end of its parameter and its quantity.
SIDED = {
    "seat": ("_seat_diameter", "seat"), "ra": ("_seat_roughness", "rough"), "cyl": ("_seat_cylindricity", "fine"),
    "run": ("_seat_runout", "fine"), "sh": ("_shoulder_diameter", "length"), "shr": ("_shoulder_runout", "fine"),
    "fil": ("_fillet_radius", "length"), "gd": ("_groove_diameter", "length"), "gw": ("_groove_width", "length"),
}  # fmt: skip
SIDES = {"s": "shaft", "h": "housing"}
SHAFT_CLASSES = ("k5", "k6", "j5", "h5", "g6", "h6", "m5", "js5", "n6", "m6")
HOUSING_CLASSES = ("H7", "J7", "H6", "K7", "JS6", "G7", "M7", "K6", "J6", "N7")


@dataclass(frozen=True)
class Item:
    """What a cell holds: scope (m, b, s, h), key, and of a seat the part of it that stands in a cell of its own."""

    scope: str
    key: str
    part: str = ""

    @property
    def parameter(self) -> str:
        """Its parameter; several of which it cannot be told which."""
        return SIDES[self.scope] + SIDED[self.key][0] if self.key in SIDED else OWN[self.key][1]

    @property
    def quantity(self) -> str:
        """Length, roughness, speed, ...; empty of what has no unit."""
        if self.part:
            return {"cls": "", "up": "dev", "lo": "dev"}.get(self.part, "seat")
        return SIDED[self.key][1] if self.key in SIDED else OWN[self.key][2]


@dataclass
class Rotor:
    """A rotor in its bearings: values by scope, key, position (-1: the whole), and what its designations say."""

    name: str
    positions: tuple[str, ...]
    values: dict[tuple[str, str, int], Value] = field(default_factory=dict)
    implied: dict[tuple[int, str], Value] = field(default_factory=dict)


def seat(nominal: float, tolerance_class: str) -> Size:
    """A seat with the deviations of its class, in mm."""
    low, high = (float(d) for d in deviations_or_nan(tolerance_class, nominal))
    return Size(nominal, round(low / 1000, 6), round(high / 1000, 6), tolerance_class)


def rotor(rng: random.Random, name: str, positions: tuple[str, ...], choice: list[str], symmetrical: bool) -> Rotor:
    """Draw a rotor.

    Parameters
    ----------
    rng : random.Random
        Of the table.
    name, positions : str and tuple
        As the office calls them.
    choice : list of str
        Designations that the office uses.
    symmetrical : bool
        Whether the office tolerances by plus and minus.
    """
    one = Rotor(name, positions)
    first = rng.randrange(len(choice))
    fits = ("js5", "js6") if symmetrical else SHAFT_CLASSES
    holes = ("JS6", "JS7") if symmetrical else HOUSING_CLASSES
    fit, hole = rng.choice(fits), rng.choice(holes)
    for s in range(len(positions)):
        if s and rng.random() < 0.5:
            hole = rng.choice(holes)
        if s and rng.random() < 0.3:
            fit = rng.choice(fits)
        des = choice[first if s == 0 or rng.random() < 0.4 else rng.randrange(len(choice))]
        one.values |= {(scope, key, s): value for (scope, key), value in _position(rng, des, fit, hole, s).items()}
        known = follows(des)
        one.implied |= {(s, key): value for key, value in known.items()}
        one.values |= {
            ("b", "type", s): known["bearing_type"], ("b", "clr", s): known["clearance_class"],
            ("b", "seal", s): known["closure"],
        }  # fmt: skip
        if "contact_angle" in known:
            one.values["b", "alpha", s] = known["contact_angle"]
    one.values |= {("m", key, -1): value for key, value in _whole(rng, name).items()}
    return one


def _position(rng: random.Random, des: str, fit: str, hole: str, s: int) -> dict[tuple[str, str], Value]:
    """The values of a position."""
    found = basic(des)
    if found is None:
        raise ValueError(des)
    d, outside, width, rs = (float(v) for v in found[2])
    high = min(max(1.0, 2.0 * rs), 0.25 * (outside - d))
    rating = round(2.4 * (outside - d) ** 1.2 * width**0.4) * 50.0
    static = round(rating * 0.0108) * 50.0
    grade = rng.choice((0.002, 0.003, 0.004, 0.005))
    put: dict[tuple[str, str], Value] = {
        ("b", "des"): des, ("b", "d"): d, ("b", "D"): outside, ("b", "B"): width, ("b", "rs"): rs,
        ("b", "C"): rating, ("b", "C0"): static, ("b", "Cu"): round(static / 210) * 10.0,
        ("b", "nlim"): round(9200 / (d + outside)) * 100.0, ("b", "nu40"): float(rng.choice((25, 46, 70, 110))),
        ("b", "lub"): "grease", ("b", "temp"): float(rng.choice((58, 62, 68, 75, 82))),
        ("b", "Fr"): max(20.0, round(rating * rng.choice((0.015, 0.025, 0.04)) / 5) * 5.0),
        ("b", "Fa"): max(10.0, round(rating * rng.choice((0.006, 0.01, 0.014)) / 5) * 5.0),
        ("b", "role"): "floating" if s else "locating", ("b", "nut"): float(rng.choice((14, 22, 35, 48))),
        ("b", "regr"): float(rng.choice((1200, 2500, 4000, 6000))), ("b", "ask.ra"): rng.choice((0.4, 0.8)),
        ("s", "di"): max(2.0, round(d * 0.35)), ("h", "ho"): outside + float(rng.choice((14, 18, 24, 30))),
    }  # fmt: skip
    for scope, at, cls, sign in (("s", d, fit, 1), ("h", outside, hole, -1)):
        more = 0.001 if scope == "h" else 0.0
        put |= {
            (scope, "seat"): seat(at, cls), (scope, "ra"): rng.choice((0.4, 0.8) if sign > 0 else (0.8, 1.6)),
            (scope, "cyl"): round(grade + more, 4), (scope, "run"): round(2 * grade + 2 * more, 4),
            (scope, "shr"): round(grade + 0.002 + more, 4), (scope, "fil"): rs if rs < 1 else round(rs - 0.2, 2),
            (scope, "sh"): round((at + sign * 2 * high) * 2) / 2, (scope, "gd"): round(at - sign * 0.055 * at, 1),
            (scope, "gw"): 1.3 if at < 25 else 1.6 if at < 40 else 1.85,
        }  # fmt: skip
    return put


def _whole(rng: random.Random, name: str) -> dict[str, Value]:
    """The values of the whole rotor."""
    fast = float(rng.choice((3600, 5200, 8000, 11500, 16000, 24000)))
    return {
        "name": name, "dwg": f"{rng.choice(('RL', 'W', 'M', 'GT'))}{rng.choice(('-', ' ', '.'))}{rng.randint(20, 99)}"
        f"{rng.choice('-.')}{rng.randint(100, 999)}", "rev": rng.choice("BCDFG"), "nmax": fast,
        "nop": round(fast * 0.75, -2), "life": float(rng.choice((8000, 20000, 25000, 40000))),
        "rel": float(rng.choice((90, 95, 98))), "mass": rng.choice((0.62, 1.25, 2.8, 4.4, 7.5)),
        "span": float(rng.choice((54, 88, 116, 142.5, 175))), "tamb": float(rng.choice((15, 25, 32, 40))),
        "tsh": float(rng.choice((64, 72, 88))), "tho": float(rng.choice((46, 50, 56))),
        "tmin": float(rng.choice((-25, -20, -10))), "tmax": float(rng.choice((85, 95, 110))), "smat": "steel",
        "hmat": rng.choice(("cast iron", "aluminium")), "orient": rng.choice(("horizontal", "vertical")),
        "bal": rng.choice((1.0, 2.5, 6.3)), "duty": rng.choice(("continuous", "intermittent")),
        "pf": float(rng.choice((40, 75, 110, 150))), "ring": "inner", "nc": round(fast * 1.45, -2), "ask.temp": 70.0,
    }  # fmt: skip
