"""The machines of the set: a rotor of practice_nineteenth/trade.py with the further values that these offices state."""

import random

from practice.grammar import Value
from practice_nineteenth.trade import Rotor, bore, rotor


def machine(
    rng: random.Random, name: str, drawing: str, positions: tuple[str, ...], bearing: str, fits: tuple[str, str]
) -> Rotor:
    """Draw a machine.

    Parameters
    ----------
    rng, name, drawing, positions, bearing, fits
        As of ``rotor``.

    Returns
    -------
    Rotor
        Its values.
    """
    found = rotor(rng, name, drawing, positions, bearing, fits)
    fast = float(str(found.values["speed_max", -1]))
    further: dict[str, Value] = {
        "residual_unbalance": float(rng.choice((1.5, 4.0, 12.0, 25.0))), "first_critical_speed": round(fast * 1.6, -2),
        "required_reliability": float(rng.choice((90, 95, 98))), "shaft_temperature": float(rng.choice((62, 68, 75))),
        "coaxiality_of_shaft_seats": rng.choice((0.005, 0.006, 0.008)),
        "spring_rate": float(rng.choice((18, 42, 65))), "rotating_ring": "inner",
        "duty": rng.choice(("continuous", "intermittent")),
        "spring_installed_length": float(rng.choice((6.5, 8, 11))),
    }  # fmt: skip
    found.values |= {(key, -1): value for key, value in further.items()}
    for s in range(len(positions)):
        said = {key: value for (at, key), value in found.implied.items() if at == s}
        d = bore(str(found.values["bearing_designation", s]))
        own: dict[str, Value] = {
            "closure": said["closure"], "cage": rng.choice(("polyamide", "pressed steel", "machined brass")),
            "contact_angle": said.get("contact_angle", 15.0),
            "grease_fill": float(rng.choice((25, 30, 35))), "shaft_bore": float(round(d * 0.3)),
            "inner_ring_retention": "clamped",
            "outer_ring_retention": "none" if found.values["axial_role", s] == "floating" else "clamped",
        }  # fmt: skip
        found.values |= {(key, s): value for key, value in own.items() if (key, s) not in found.values}
    return found
