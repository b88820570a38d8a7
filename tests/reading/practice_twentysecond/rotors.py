"""Pumps, motors, gear spindles and blowers: what a machine's values are, before anything is written.

What depends on the bearing alone is worked out as in the nineteenth set; sizes, fits, speeds and the form of the seats
are those of middle-sized machines. Machines and drawings are invented.
"""

import random

from practice.bearings import follows
from practice_nineteenth.trade import Rotor, position, whole

BALL = (
    "6206", "6207", "6208", "6209", "6210", "6211", "6212", "6213", "6214", "6305", "6306", "6307", "6308", "6309",
    "6310", "6311", "6312", "6313", "6314", "6008", "6009", "6010", "6011", "6012", "6014",
)  # fmt: skip
ANGULAR = ("7206", "7207", "7208", "7209", "7210", "7305", "7306", "7307", "7308", "7309", "7310", "7312")
SPINDLE = ("7006", "7007", "7008", "7009", "7010", "7011", "7012", "71906", "71907", "71908", "71910")
ROLLER = ("NU207", "NU208", "NU209", "NU210", "NU212", "NU305", "NU306", "NU308", "NU309", "NU310", "NU312", "NU314")
SHAFT = ("j5", "k5", "k6", "m5", "m6", "js5", "h6", "n6", "j6", "js6")
HOUSING = ("H6", "H7", "J7", "JS7", "K7", "J6", "G7", "K6", "M7")


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
        ``ball``, ``angular``, ``spindle`` or ``roller`` (a ball bearing of the same size locates), and after a blank
        what follows the basic designation.
    fits : tuple of str
        The classes to choose from, of shafts and of housings; empty for the usual ones.

    Returns
    -------
    Rotor
        Its values.
    """
    found = Rotor(positions)
    kind, _, suffix = bearing.partition(" ")
    first = rng.choice({"ball": BALL, "angular": ANGULAR, "spindle": SPINDLE, "roller": ROLLER}[kind])
    other = "6" + first[2:] if kind == "roller" else first
    if kind == "ball" and rng.random() < 0.6:
        near = BALL.index(first)
        other = rng.choice(BALL[max(0, near - 2) : near + 2])
    shafts, housings = (own.split() or usual for own, usual in zip(fits, (SHAFT, HOUSING), strict=True))
    grade = rng.choice((0.004, 0.005, 0.006))
    lubricant = rng.choice(("grease", "grease", "oil bath"))
    for s in range(len(positions)):
        designation = (first if s == 0 else other) + suffix
        values = position(rng, designation, kind, s, rng.choice(shafts), rng.choice(housings))
        found.implied |= {(s, key): value for key, value in follows(designation).items()}
        values |= {"lubrication": lubricant, "grease_fill": rng.choice((25.0, 30.0, 40.0)), "shaft_bore": 0.0}
        values["nut_torque"] = rng.choice((45.0, 60.0, 85.0, 120.0))
        for side, more in (("shaft", 0.0), ("housing", 0.002)):
            values[f"{side}_seat_cylindricity"] = round(grade + more, 4)
            values[f"{side}_seat_runout"] = round(2 * grade + more, 4)
            values[f"{side}_shoulder_runout"] = round(2 * grade + 2 * more + 0.001, 4)
        values["shaft_seat_roughness"] = rng.choice((0.4, 0.8))
        if kind == "roller" and s == 0:
            values["axial_load"] = 0.0
        found.values |= {(key, s): value for key, value in values.items()}
    found.values |= {(key, -1): value for key, value in whole(rng, name, drawing).items()}
    fast = rng.choice((1450.0, 1480.0, 2900.0, 2960.0, 3550.0, 4500.0)) * (1 + 2 * (kind == "spindle"))
    whole_machine: dict[str, float] = {
        "speed_max": fast, "speed_operating": round(fast * rng.choice((0.8, 0.9)), -1),
        "rotor_mass": rng.choice((12.5, 24.0, 38.0, 66.0, 118.0)),
        "bearing_span": rng.choice((185.0, 240.0, 312.5, 420.0)),
        "required_life": rng.choice((20000.0, 25000.0, 40000.0, 50000.0)),
        "preload_force": rng.choice((180.0, 240.0, 320.0)),
        "coaxiality_of_bores": rng.choice((0.015, 0.02, 0.025)), "coaxiality_of_shaft_seats": rng.choice((0.01, 0.012)),
        "first_critical_speed": round(fast * rng.choice((1.4, 1.65)), -1),
        "temperature_max": rng.choice((85.0, 95.0, 105.0)),
    }  # fmt: skip
    found.values |= {(key, -1): value for key, value in whole_machine.items()}
    for key in ("lubrication", "operating_temperature", "base_oil_viscosity_40", "regreasing_interval", "grease_fill"):
        found.values[key, -1] = found.values[key, 0]
    return found
