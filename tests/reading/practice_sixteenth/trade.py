"""What is known of the trade: what a code of an office stands for, usual values, sizes that go with a bearing.

Load ratings about as makers print them, inch sizes and chamfers from memory of makers' catalogues; a value is drawn
from the usual ones with a seed of its own, so that no other line changes it.
"""

import random
from dataclasses import dataclass, field
from typing import Any

from practice.bearings import basic, follows
from practice.grammar import Size, Value

from linter.mechanics.limits import deviations_or_nan

#: Dynamic and static rating in kN by the basic number.
RATINGS = {
    "608": (3.45, 1.37), "6001": (5.4, 2.36), "6002": (5.85, 2.85), "6003": (6.37, 3.25), "6004": (9.95, 5.0),
    "6005": (11.9, 6.55), "6006": (13.8, 8.3), "6007": (16.8, 10.2), "6008": (17.8, 11.0), "6201": (7.28, 3.1),
    "6202": (8.06, 3.75), "6203": (9.95, 4.75), "6204": (13.5, 6.55), "6205": (14.8, 7.8), "6206": (20.3, 11.2),
    "6207": (27.0, 15.3), "6208": (32.5, 19.0), "6209": (35.1, 21.6), "6210": (37.1, 23.2), "6304": (16.8, 7.8),
    "6305": (23.4, 11.6), "6306": (29.6, 16.0), "6307": (35.1, 19.0), "6308": (42.3, 24.0), "6309": (55.3, 31.5),
    "7205": (15.6, 10.0), "7206": (24.0, 15.6), "7207": (30.7, 20.8), "7005": (14.6, 9.15), "7006": (19.0, 12.9),
    "7008": (25.1, 18.3), "NU205": (28.6, 27.0), "NU206": (44.0, 36.5), "NU208": (62.0, 53.0), "6903": (4.6, 2.55),
    "R6": (3.3, 1.4), "R8": (5.1, 2.4), "R10": (6.0, 3.25), "R12": (10.1, 5.9), "R16": (10.1, 5.85),
}  # fmt: skip
#: d, D, B in inches and the chamfer in mm of the R series.
INCH = {
    "R6": (0.375, 0.875, 0.2812, 0.4), "R8": (0.5, 1.125, 0.3125, 0.4), "R10": (0.625, 1.375, 0.3438, 0.8),
    "R12": (0.75, 1.625, 0.4375, 0.8), "R16": (1.0, 2.0, 0.5, 0.8),
}  # fmt: skip
#: Parameter and quantity of each code; ``x.`` is ``shaft_`` or ``housing_``.
CODES = {
    "name": ("machine", ""), "dwg": ("drawing_number", ""), "rev": ("drawing_revision", ""),
    "nmax": ("speed_max", "speed"), "nop": ("speed_operating", "speed"), "life": ("required_life", "time"),
    "rel": ("required_reliability", "pct"), "orient": ("shaft_orientation", ""), "duty": ("duty", ""),
    "ring": ("rotating_ring", ""), "load": ("load_direction", ""), "smat": ("shaft_material", ""),
    "hmat": ("housing_material", ""), "tsh": ("shaft_temperature", "temp"), "tho": ("housing_temperature", "temp"),
    "tmin": ("temperature_min", "temp"), "tmax": ("temperature_max", "temp"), "tamb": ("ambient_temperature", "temp"),
    "span": ("bearing_span", "length"), "mass": ("rotor_mass", "mass"), "bal": ("balance_grade", "grade"),
    "unb": ("residual_unbalance", "unb"), "pre": ("preload_method", ""), "pforce": ("preload_force", "force"),
    "coaxh": ("coaxiality_of_bores", "small"), "coaxs": ("coaxiality_of_shaft_seats", "small"),
    "ncrit": ("first_critical_speed", "speed"), "float": ("axial_float", "small"), "station": ("station", ""),
    "role": ("axial_role", ""), "des": ("bearing_designation", ""), "type": ("bearing_type", ""),
    "alpha": ("contact_angle", "angle"), "d": ("bore_diameter", "length"), "D": ("outside_diameter", "length"),
    "B": ("ring_width", "length"), "rs": ("ring_chamfer", "length"), "tol": ("tolerance_class", ""),
    "clr": ("clearance_class", ""), "cage": ("cage", ""), "closure": ("closure", ""), "balls": ("ball_material", ""),
    "C": ("dynamic_rating", "force"), "C0": ("static_rating", "force"), "nlim": ("limiting_speed", "speed"),
    "lub": ("lubrication", ""), "nu40": ("base_oil_viscosity_40", "visc"), "T": ("operating_temperature", "temp"),
    "clean": ("cleanliness", ""), "regrease": ("regreasing_interval", "time"), "fill": ("grease_fill", "pct"),
    "Fr": ("radial_load", "force"), "Fa": ("axial_load", "force"), "nut": ("nut_torque", "torque"),
    "split": ("housing_split", ""), "s.bore": ("shaft_bore", "length"), "h.od": ("housing_outer_diameter", "length"),
    "x.seat": ("{}_seat_diameter", "length"), "x.cyl": ("{}_seat_cylindricity", "small"),
    "x.run": ("{}_seat_runout", "small"), "x.ra": ("{}_seat_roughness", "rough"),
    "x.sh": ("{}_shoulder_diameter", "length"), "x.shr": ("{}_shoulder_runout", "small"),
    "x.fil": ("{}_fillet_radius", "length"),
}  # fmt: skip
WHOLE = (
    "name", "dwg", "rev", "nmax", "nop", "life", "rel", "orient", "duty", "ring", "load", "smat", "hmat", "tsh", "tho",
    "tmin", "tmax", "tamb", "span", "mass", "bal", "unb", "pre", "pforce", "coaxh", "coaxs", "ncrit", "float",
)  # fmt: skip
#: What one of a unit is in canonical units; a temperature in °F is worked out; and the decimals that are shown.
FACTORS = {
    "mm": 1.0, "um": 0.001, "in": 25.4, "raum": 1.0, "uin": 0.0254, "rpm": 1.0, "krpm": 1000.0, "N": 1.0, "kN": 1000.0,
    "lbf": 4.4482216152605, "h": 1.0, "C": 1.0, "F": 1.0, "kg": 1.0, "g": 0.001, "lb": 0.45359237, "": 1.0,
}  # fmt: skip
PLACES = {"mm": 4, "um": 1, "in": 4, "raum": 2, "uin": 0, "kN": 3, "krpm": 1, "kg": 3, "lb": 2, "g": 0, "": 3}
#: The unit that is meant where an office's line gives none.
UNITS = {"length": "mm", "small": "mm", "rough": "raum", "speed": "rpm", "force": "N", "time": "h", "temp": "C",
         "mass": "kg"}  # fmt: skip
USUAL: dict[str, list[Any]] = {
    "nmax": [2950, 4500, 7200, 10500, 15000], "life": [16000, 20000, 30000, 40000, 50000], "rel": [90, 95],
    "tsh": [62, 68, 74], "tho": [48, 52, 56], "tmin": [-30, -25, -20, -10], "tmax": [85, 95, 110],
    "tamb": [20, 30, 35, 40], "span": [76, 94.5, 128, 152, 210], "mass": [0.85, 1.7, 3.2, 5.45, 9.6],
    "bal": [1, 2.5, 6.3], "unb": [1.5, 4, 12], "pforce": [60, 90, 140, 220], "coaxh": [0.01, 0.015, 0.02],
    "coaxs": [0.006, 0.008, 0.012], "float": [0.3, 0.4, 0.6], "T": [52, 58, 63, 67, 72], "nu40": [32, 46, 68, 100],
    "regrease": [1500, 2500, 3000, 5000], "fill": [25, 30, 35], "nut": [18, 25, 40, 55], "rev": list("ABCDEF"),
    "s.bore": [0, 6, 8], "s.ra": [0.4, 0.63, 0.8], "h.ra": [0.8, 1.25, 1.6], "s.cyl": [0.0025, 0.003, 0.004],
    "h.cyl": [0.004, 0.005, 0.006], "s.run": [0.005, 0.006, 0.008], "h.run": [0.008, 0.01, 0.012],
    "s.shr": [0.004, 0.005, 0.006], "h.shr": [0.006, 0.008, 0.01],
}  # fmt: skip
SHAFT_FITS = ["k5", "k6", "js5", "js6", "h5", "h6", "g6", "j5", "j6", "m5", "m6"]
HOUSING_FITS = ["H6", "H7", "J6", "J7", "JS6", "JS7", "K6", "K7", "G6", "G7", "M7"]


@dataclass
class Machine:
    """A rotor in its bearings; values are drawn when they are first asked for."""

    number: int
    index: int
    name: str
    positions: tuple[str, ...]
    bearings: tuple[str, ...]
    known_as: tuple[str, ...]
    fits: str = ""
    inch: bool = False
    symmetric: bool = False
    drawn: dict[tuple[str, int], Value] = field(default_factory=dict)

    def value(self, code: str, s: int) -> Value:
        """The value of a code at a position; -1 for the machine."""
        if (code, s) not in self.drawn:
            rng = random.Random(f"sixteenth {self.number} {self.index} {code} {s}")
            self.drawn[code, s] = self._draw(code, s, rng)
        return self.drawn[code, s]

    def base(self, s: int) -> str:
        """The basic number, NU206 of NU206-E."""
        known = self.known_as[s].upper().replace(" ", "")
        return max((sign for sign in RATINGS if known.startswith(sign)), key=len)

    def rings(self, s: int) -> tuple[float, float, float, float]:
        """d, D, B and chamfer in mm."""
        if self.base(s) in INCH:
            d, big, width, chamfer = INCH[self.base(s)]
            return d * 25.4, big * 25.4, width * 25.4, chamfer
        known = basic(self.known_as[s])
        if known is None:
            raise ValueError(f"{self.known_as[s]} is not in the lists")
        d, big, width, chamfer = known[2]
        return float(d), float(big), float(width), chamfer

    def implied(self, s: int) -> dict[str, Value]:
        """What the designation says beside itself."""
        if self.base(s) not in INCH:
            return follows(self.known_as[s])
        d, big, width, chamfer = self.rings(s)
        closure = {"Z": "shield", "R": "contact seal"}.get(self.known_as[s][-2:-1], "open")
        return {
            "bearing_type": "deep groove ball", "contact_angle": 0.0, "closure": closure, "clearance_class": "CN",
            "tolerance_class": "Normal", "bore_diameter": d, "outside_diameter": big, "ring_width": width,
            "ring_chamfer": chamfer,
        }  # fmt: skip

    def _draw(self, code: str, s: int, rng: random.Random) -> Value:
        if code == "s.ra" and self.inch:
            return float(rng.choice([16, 32])) * 0.0254
        if code == "h.ra" and self.inch:
            return float(rng.choice([32, 63])) * 0.0254
        if code in USUAL:
            found = rng.choice(USUAL[code])
            return found if isinstance(found, str) else float(found)
        if s < 0:
            return self._of_the_machine(code, rng)
        d, big, width, chamfer = self.rings(s)
        ratings = RATINGS[self.base(s)]
        of_the_rings = {"d": d, "D": big, "B": width, "rs": chamfer, "C": ratings[0] * 1000, "C0": ratings[1] * 1000,
                        "h.od": round(big * 1.3)}  # fmt: skip
        if code in of_the_rings:
            return of_the_rings[code]
        if code in ("Fr", "Fa"):
            share = rng.choice([0.02, 0.03, 0.045] if code == "Fr" else [0.006, 0.01, 0.015])
            return float(round(ratings[0] * 1000 * share, -1))
        if code == "nlim":
            return float(round(500000 / (0.5 * (d + big)) / 500) * 500)
        side = code[0]
        at = d if side == "s" else big
        if code[2:] == "seat":
            return self._seat(side, at, s)
        if code[2:] == "sh":
            height = min(2 * chamfer + 0.05 * (big - d), 0.3 * (big - d))
            step = 0.254 if self.inch else 0.5
            return round((at + 2 * height if side == "s" else at - 2 * height) / step) * step
        if code[2:] == "fil":
            return round(chamfer * (0.8 if chamfer >= 1 else 1.0), 1) if not self.inch else 0.015 * 25.4
        own = self.implied(s).get(CODES[code][0])
        if code == "des":
            return self.bearings[s]
        if own is None:
            raise ValueError(f"nothing is drawn for {code}")
        return own

    def _of_the_machine(self, code: str, rng: random.Random) -> Value:
        if code == "name":
            return self.name
        if code == "dwg":
            return f"{rng.choice(['R', 'SP', 'T4', 'WZ', 'G'])}-{rng.randint(1000, 9999)}-{rng.randint(10, 99)}"
        top = float(str(self.value("nmax", -1)))
        if code == "nop":
            return float(round(top * rng.choice([0.6, 0.75, 0.8]), -1))
        if code == "ncrit":
            return float(round(top * rng.choice([1.5, 1.8, 2.1]), -2))
        raise ValueError(f"nothing is drawn for {code}")

    def _seat(self, side: str, nominal: float, s: int) -> Size:
        """A seat with its class and deviations; in inches they are rounded as a drawing does."""
        rng = random.Random(f"sixteenth {self.number} {self.index} {side} fit")
        pairs = [pair.split() for pair in self.fits.split(",") if pair.strip()]
        if pairs:
            own = pairs[min(s, len(pairs) - 1)][side == "h"]
        elif self.symmetric:
            own = rng.choice(["js5", "js6"] if side == "s" else ["JS6", "JS7"])
        else:
            own = rng.choice(SHAFT_FITS if side == "s" else HOUSING_FITS)
        low, high = (round(float(v), 2) / 1000 for v in deviations_or_nan(own, nominal))
        if self.inch:
            low, high = (round(v / 25.4, 4) * 25.4 for v in (low, high))
        return Size(nominal, low, high, own)
