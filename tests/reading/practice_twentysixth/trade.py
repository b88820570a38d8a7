"""Rotors of the twenty-sixth set: the values of a machine before anything is written.

Positions and machines are drawn as those of the nineteenth set; the bearings are of larger machines too, and there is
more that tables may state of them.
"""

import random

from practice.bearings import follows
from practice_nineteenth.trade import Rotor, bore, position, whole

POOLS = {
    "small": ("6000", "6001", "6002", "6200", "6201", "6202", "6203", "608", "6901", "6902", "6300", "6301"),
    "ball": ("6204", "6205", "6206", "6207", "6304", "6305", "6306", "6005", "6006", "6007", "6203", "6303"),
    "large": ("6208", "6209", "6210", "6211", "6212", "6010", "6011", "6012", "6308", "6309", "6310", "6207"),
    "angular": ("7004", "7005", "7006", "7007", "7008", "7010", "7205", "7206", "71906", "71907", "71908", "71910"),
    "roller": ("NU205", "NU206", "NU207", "NU208", "NU209", "NU210", "NU305", "NU306", "NU308"),
}
SHAFT = ("h5", "js5", "j5", "k5", "k6", "m5", "m6", "g6", "h6", "j6", "js6", "n6")
HOUSING = ("H6", "H7", "J6", "JS6", "K6", "K7", "M6", "G6", "N7", "J7", "M7", "G7")


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
        One of the pools, and after a blank what follows the basic designation; of ``roller`` the other positions take
        a deep groove ball bearing of the same bore.
    fits : tuple of str
        The classes to choose from, of shafts and of housings, with blanks between; empty for the usual ones.

    Returns
    -------
    Rotor
        Its values.
    """
    found = Rotor(positions)
    pool, _, suffix = bearing.partition(" ")
    kind = pool if pool in ("angular", "roller") else "ball"
    first = rng.choice(POOLS[pool])
    near = [one for one in POOLS[pool] if abs(bore(one) - bore(first)) <= 10]
    other = {"roller": "62" + first[-2:], "angular": first}.get(kind) or rng.choice(near)
    on, into = (rng.choice(own.split() or usual) for own, usual in zip(fits, (SHAFT, HOUSING), strict=True))
    for s in range(len(positions)):
        designation = (other if s else first) + ("" if kind == "roller" and not s else suffix)
        if s and rng.random() < 0.4:
            into = rng.choice(fits[1].split() or HOUSING)
        said = follows(designation)
        found.implied |= {(s, key): value for key, value in said.items()}
        own = position(rng, designation, kind, s, on, into) | {
            "closure": said["closure"], "cage": said.get("cage", "pressed steel"),
            "grease_fill": rng.choice((25.0, 30.0, 35.0)), "cleanliness": "normal",
            "ball_count": float(rng.choice((8, 9, 10, 11))), "inner_ring_retention": rng.choice(("clamped", "none")),
            "contact_angle": said.get("contact_angle", 0.0), "housing_split": "no", "ep_additives": "no",
        }  # fmt: skip
        found.values |= {(key, s): value for key, value in own.items()}
    top = rng.choice((60.0, 80.0, 90.0))
    more = whole(rng, name, drawing) | {
        "duty": rng.choice(("continuous", "intermittent")), "rotating_ring": "inner", "load_direction": "stationary",
        "temperature_min": rng.choice((-20.0, -10.0, 5.0)), "temperature_max": top,
        "shaft_temperature": top - 10.0, "required_reliability": 90.0,
        "residual_unbalance": rng.choice((2.5, 6.0, 12.0)),
        "coaxiality_of_shaft_seats": rng.choice((0.005, 0.006, 0.008)), "first_critical_speed": 36000.0,
    }  # fmt: skip
    found.values |= {(key, -1): value for key, value in more.items()}
    found.values["lubrication", -1] = found.values["lubrication", 0]
    return found


def fix(rotors: list[Rotor], values: str) -> None:
    """Give all machines of an office the same choices: ``shaft_material=steel;housing_material=cast iron``."""
    for name, _, value in (part.partition("=") for part in values.split(";") if part):
        for one in rotors:
            one.values[name, -1] = value
