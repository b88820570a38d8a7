"""The trade as the firms of this set know it: bearings, tolerance classes, parameters, units, and their words."""

import re
from pathlib import Path
from typing import Any

#: Short name, parameter of the vocabulary, group, quantity (``choice`` and ``text`` are words), how often it is listed.
PARAMETERS = {
    "mach": ("machine", "mach", "text", 0), "dwg": ("drawing_number", "mach", "text", 0.3),
    "rev": ("drawing_revision", "mach", "text", 0.2), "stn": ("station", "brg", "text", 0),
    "des": ("bearing_designation", "brg", "text", 0.85), "type": ("bearing_type", "brg", "choice", 0.25),
    "ang": ("contact_angle", "brg", "angle", 0.9), "d": ("bore_diameter", "brg", "length", 0.75),
    "D": ("outside_diameter", "brg", "length", 0.75), "B": ("ring_width", "brg", "length", 0.75),
    "r": ("ring_chamfer", "brg", "length", 0.3), "clr": ("clearance_class", "brg", "choice", 0.55),
    "tol": ("tolerance_class", "brg", "choice", 0.4), "clo": ("closure", "brg", "choice", 0.15),
    "cage": ("cage", "brg", "choice", 0.2), "C": ("dynamic_rating", "brg", "rating", 0.25),
    "C0": ("static_rating", "brg", "rating", 0.2), "nlim": ("limiting_speed", "brg", "speed", 0.15),
    "role": ("axial_role", "brg", "choice", 0.5), "dia": ("seat_diameter", "side", "length", 1),
    "Ra": ("seat_roughness", "side", "rough", 0.8), "cyl": ("seat_cylindricity", "side", "form", 0.55),
    "run": ("seat_runout", "side", "form", 0.55), "sho": ("shoulder_diameter", "side", "length", 0.55),
    "shr": ("shoulder_runout", "side", "form", 0.45), "fil": ("fillet_radius", "side", "length", 0.5),
    "smat": ("shaft_material", "shaft", "choice", 0.6), "hmat": ("housing_material", "housing", "choice", 0.6),
    "torq": ("nut_torque", "brg", "torque", 0.1), "Fr": ("radial_load", "op", "force", 0.75),
    "Fa": ("axial_load", "op", "force", 0.65), "lub": ("lubrication", "op", "choice", 0.65),
    "top": ("operating_temperature", "op", "temperature", 0.3),
    "nu": ("base_oil_viscosity_40", "op", "viscosity", 0.15), "relub": ("regreasing_interval", "op", "time", 0.12),
    "fill": ("grease_fill", "op", "share", 0.12), "nmax": ("speed_max", "mach", "speed", 0.85),
    "nop": ("speed_operating", "mach", "speed", 0.35), "life": ("required_life", "mach", "time", 0.5),
    "rot": ("rotating_ring", "mach", "choice", 0.45), "ldir": ("load_direction", "mach", "choice", 0.25),
    "duty": ("duty", "mach", "choice", 0.25), "ori": ("shaft_orientation", "mach", "choice", 0.25),
    "ts": ("shaft_temperature", "mach", "temperature", 0.3), "th": ("housing_temperature", "mach", "temperature", 0.3),
    "tmin": ("temperature_min", "mach", "temperature", 0.15), "tmax": ("temperature_max", "mach", "temperature", 0.15),
    "tamb": ("ambient_temperature", "mach", "temperature", 0.2), "span": ("bearing_span", "mach", "length", 0.4),
    "mass": ("rotor_mass", "mach", "mass", 0.35), "bal": ("balance_grade", "mach", "grade", 0.35),
    "pmeth": ("preload_method", "mach", "choice", 0.35), "pf": ("preload_force", "mach", "force", 0.4),
    "cob": ("coaxiality_of_bores", "mach", "form", 0.2), "cos": ("coaxiality_of_shaft_seats", "mach", "form", 0.2),
}  # fmt: skip
#: Parameters of a position; all others are of the machine.
OF_STATION = {k for k, v in PARAMETERS.items() if v[1] in ("brg", "side", "op")}
CHOICES = {
    "role": ("locating", "floating", "spring-loaded"), "cage": ("polyamide", "pressed steel", "machined brass"),
    "smat": ("steel", "steel", "steel", "stainless steel"), "hmat": ("aluminium", "cast iron", "steel"),
    "lub": ("grease", "grease", "grease", "oil bath", "oil mist", "oil-air"), "rot": ("inner", "inner", "outer"),
    "ldir": ("stationary", "rotating"), "duty": ("continuous", "intermittent"), "ori": ("horizontal", "vertical"),
    "pmeth": ("spring", "spring", "rigid"), "clr": ("CN", "C3", "C3"), "tol": ("Normal", "P6", "P5"),
}  # fmt: skip
SPEED = (
    "*: 1/min; en: rpm r/min RPM; de: 1/min min-1 U/min; fr: tr/min; it: giri/min; es: rpm r/min; "
    "ru: об/мин мин-1; zh: r/min rpm; ja: min-1 rpm"
)
#: Unit words of each quantity: ``language: word word``, the first language ``*`` for all others; value of one in
#: canonical units beside it.
UNITS: dict[str, tuple[tuple[str, float], ...]] = {
    "length": (("*: mm; ru: мм", 1),),
    "rough": (("*: µm; en: µm um; ru: мкм; ja: μm; zh: μm um", 1),),
    "form": (("*: mm; ru: мм", 1), ("*: µm; ru: мкм; ja: μm; zh: μm um", 0.001)),
    "deviation": (("*: mm; ru: мм", 1), ("*: µm; ru: мкм; ja: μm; zh: μm", 0.001)),
    "speed": ((SPEED, 1),),
    "time": (("*: h; ru: ч; zh: h 小时; ja: h 時間", 1),),
    "force": (("*: N; ru: Н", 1), ("*: N; ru: Н", 1), ("*: kN; ru: кН", 1000)),
    "rating": (("*: kN; ru: кН", 1000), ("*: N; ru: Н", 1)),
    "mass": (("*: kg; ru: кг", 1), ("*: g; ru: г", 0.001)),
    "temperature": (("*: °C; zh: ℃ °C; ja: ℃", 1),),
    "torque": (("*: Nm N·m; ru: Н·м", 1),),
    "viscosity": (("*: mm²/s cSt; ru: сСт; ja: cSt; zh: mm²/s cSt", 1),),
    "angle": (("*: °; en: deg °", 1),),
    "share": (("*: %", 1),),
    "grade": (("*:", 1),),
}
INCH_UNITS: dict[str, tuple[tuple[str, float], ...]] = {
    "length": (("*: in", 25.4),), "rough": (("*: µin", 0.0254),),
    "form": (("*: in", 25.4), ("*: mil", 0.0254)), "deviation": (("*: in", 25.4), ("*: mil", 0.0254)),
    "force": (("*: lbf", 4.4482216152605),), "rating": (("*: lbf", 4.4482216152605),),
    "mass": (("*: lb", 0.45359237),), "temperature": (("*: °F", 1),), "torque": (("*: lbf·in", 0.1129848290276167),),
}  # fmt: skip
#: Designation, type, contact angle, d, D, B, r_s min in mm (ISO 15, ISO 582), C, C0 in kN (about, from memory).
METRIC: tuple[tuple[Any, ...], ...] = tuple(
    (row[0], {"a": "angular contact ball", "b": "deep groove ball"}[row[1]], *(float(x) for x in row[2:]))
    for row in (line.split() for line in """
608 b 0 8 22 7 .3 3.3 1.37|6000 b 0 10 26 8 .3 4.6 1.96|6001 b 0 12 28 8 .3 5.1 2.37|6002 b 0 15 32 9 .3 5.6 2.84
6003 b 0 17 35 10 .3 6 3.25|6004 b 0 20 42 12 .6 9.4 5.05|6005 b 0 25 47 12 .6 10.1 5.85|6006 b 0 30 55 13 1 13.2 8.3
6201 b 0 12 32 10 .6 6.8 3.05|6202 b 0 15 35 11 .6 7.7 3.75|6203 b 0 17 40 12 .6 9.6 4.8|6204 b 0 20 47 14 1 12.8 6.6
6205 b 0 25 52 15 1 14 7.85|6206 b 0 30 62 16 1 19.5 11.2|6207 b 0 35 72 17 1.1 25.5 15.3|6208 b 0 40 80 18 1.1 30.7 19
6303 b 0 17 47 14 1 13.5 6.6|6304 b 0 20 52 15 1.1 15.9 7.8|6305 b 0 25 62 17 1.1 22.5 11.6
6306 b 0 30 72 19 1.1 28.1 16|6308 b 0 40 90 23 1.5 41 24|6210 b 0 50 90 20 1.1 35.1 23.2|6310 b 0 50 110 27 2 61.8 38
7202C a 15 15 35 11 .6 9 4.3|7005C a 15 25 47 12 .6 13 8.3|7204B a 40 20 47 14 1 14 8.3|7206B a 40 30 62 16 1 23.8 15.6
""".replace("|", "\n").strip().splitlines())
)  # fmt: skip
#: R series: d, D, B, r in inches, C and C0 in lbf (about, from memory of makers' catalogues).
INCH: tuple[tuple[Any, ...], ...] = tuple(
    (row[0], "deep groove ball", 0.0, *(float(x) for x in row[1:]))
    for row in (line.split() for line in """
R4 .25 .625 .196 .012 330 130|R6 .375 .875 .2812 .016 750 310|R8 .5 1.125 .3125 .016 1150 530
R10 .625 1.375 .3438 .031 1340 730|R12 .75 1.625 .4375 .031 2100 1120|R16 1 2 .5 .031 2260 1320
""".replace("|", "\n").strip().splitlines())
)  # fmt: skip
#: Lower and upper deviation in um, shafts to 6, 10, 18, 30, 50, 80, holes 18 to 180 mm (from memory of ISO 286-2).
STEPS = ((6, 10, 18, 30, 50, 80), (18, 30, 50, 80, 120, 180))
CLASSES = (
    {"g6": "-12 -4 -14 -5 -17 -6 -20 -7 -25 -9 -29 -10", "h5": "-5 0 -6 0 -8 0 -9 0 -11 0 -13 0",
     "h6": "-8 0 -9 0 -11 0 -13 0 -16 0 -19 0", "j5": "-2 3 -2 4 -3 5 -4 5 -5 6 -7 6",
     "j6": "-2 6 -2 7 -3 8 -4 9 -5 11 -7 12", "k5": "1 6 1 7 1 9 2 11 2 13 2 15",
     "k6": "1 9 1 10 1 12 2 15 2 18 2 21", "m5": "4 9 6 12 7 15 8 17 9 20 11 24",
     "m6": "4 12 6 15 7 18 8 21 9 25 11 30", "js5": "-2.5 2.5 -3 3 -4 4 -4.5 4.5 -5.5 5.5 -6.5 6.5"},
    {"G7": "6 24 7 28 9 34 10 40 12 47 14 54", "H6": "0 11 0 13 0 16 0 19 0 22 0 25",
     "H7": "0 18 0 21 0 25 0 30 0 35 0 40", "J6": "-5 6 -5 8 -6 10 -6 13 -6 16 -7 18",
     "J7": "-8 10 -9 12 -11 14 -12 18 -13 22 -14 26", "K6": "-9 2 -11 2 -13 3 -15 4 -18 4 -21 4",
     "K7": "-12 6 -15 6 -18 7 -21 9 -25 10 -28 12", "M7": "-18 0 -21 0 -25 0 -30 0 -35 0 -40 0",
     "JS6": "-5.5 5.5 -6.5 6.5 -8 8 -9.5 9.5 -11 11 -12.5 12.5"},
)  # fmt: skip
LANGUAGES = ("en", "de", "zh", "ja", "fr", "it", "es", "ru")


def deviations(side: int, tolerance_class: str, nominal: float) -> tuple[float, float]:
    """Lower and upper deviation in mm of a class at a size."""
    numbers = [float(x) for x in CLASSES[side][tolerance_class].split()]
    k = next(k for k, step in enumerate(STEPS[side]) if nominal <= step)
    return numbers[2 * k] / 1000, numbers[2 * k + 1] / 1000


def words(language: str) -> dict[str, list[str]]:
    """The terms of a language; choices are divided by semicolons."""
    found = {}
    for line in (Path(__file__).parent / "words" / f"{language}.txt").read_text(encoding="utf-8").splitlines():
        key, _, rest = line.partition(": ")
        found[key] = [w.strip() for w in rest.split("|" if " | " in rest else ";")]
    return found


def both_sides(word: str) -> tuple[str, str]:
    """The wordings for shaft and housing of ``{shaft/housing}``."""

    def side(k: int) -> str:
        text = re.sub(r"\{([^/}]*)/([^}]*)\}", lambda m: m.group(k), word)
        lower = "{" not in word or re.match(r"(da|es|ei)\b", text)
        return text if lower else text[:1].upper() + text[1:]

    return side(1), side(2)
