"""Chapter rotor: the orders to look for on the test bench, and whether the bearings can be told from the blades."""

from collections.abc import Callable

import numpy as np

from linter.checks.shared.base import Limits, Result, View, Working, within
from linter.checks.shared.contacts import contact
from linter.checks.shared.quantities import ball_count, ball_diameter, is_ball, pitch_diameter
from linter.checks.shared.two_sides import sinking
from linter.mechanics import kinematics
from linter.model.stations import Floats
from linter.model.wording import quantity_text


def orders(view: View, limits: Limits) -> Result:
    """Orders of cage, balls and blades, and how far the ball pass orders lie from multiples of the blade order."""
    s = view.stations
    balls, size, pitch = (within(values(view)) for values in (ball_count, ball_diameter, pitch_diameter))
    angle, speed = contact(view).free_angle, within(s.number("speed_max"))
    blades = within(s.number("blade_count"))
    blades = np.where(blades == np.floor(blades), blades, np.nan)
    outer = s.choice("rotating_ring").is_in("outer")
    ready = is_ball(view) & (size < pitch) & ~np.isnan(balls + angle)
    cage, spin, over_outer, over_inner = (np.full(view.count, np.nan) for _ in range(4))
    if ready.any():
        found = kinematics.speeds(
            np.where(outer, 0.0, 1.0)[ready], balls[ready], size[ready], pitch[ready], angle[ready],
            np.where(outer, 1.0, 0.0)[ready],
        )  # fmt: skip
        cage[ready], spin[ready], over_outer[ready], over_inner[ready] = found
    apart = np.fmin(*(_apart(order, blades) for order in (over_outer, over_inner)))
    worse = np.where(_apart(over_inner, blades) < _apart(over_outer, blades), over_inner, over_outer)
    alone = np.isnan(blades)
    near = np.full(view.count, float(limits["near"]))
    measure = np.where(alone, 0.0 * over_outer, sinking(apart * (1 + 1e-9), near, 0.0 * near))
    to_whole = np.fmin(*(_apart(order, np.ones(view.count)) for order in (over_outer, over_inner)))
    hertz = speed / 60.0
    return Result(
        measure=measure,
        unit="%",
        observed=100.0 * apart,
        lower=np.where(alone, np.nan, 100.0 * near),
        applies=is_ball(view),
        reason="the orders are those of ball bearings",
        missing={
            "ball_count": np.isnan(balls),
            "ball_diameter": np.isnan(size),
            "pitch_diameter": np.isnan(pitch),
            "contact_angle": np.isnan(angle),
        },
        variant=lambda: np.select([~alone & (to_whole >= near), to_whole < near], ["", "whole"], "").astype(object),
        facts=lambda: {
            "told": _told(cage, spin, over_outer, over_inner, blades),
            "which": np.where(worse == over_inner, "inner", "outer").astype(object),
            "order": (worse, "1"),
            "near_whole": (100.0 * to_whole, "%"),
            "multiple": (np.round(worse / blades) * blades, "1"),
            "whole": (np.where(
                _apart(over_inner, np.ones(view.count)) < _apart(over_outer, np.ones(view.count)),
                np.round(over_inner), np.round(over_outer),
            ), "1"),
        },
        working=lambda: [
            Working("cage", "", "order of the cage", cage, "1", "(1 - γ)/2, fixed outer ring"),
            Working("spin", "", "order of the spin of a ball", spin, "1", "D_pw (1 - γ²)/(2 D_w)"),
            Working("defect", "", "order of a defect on a ball", 2.0 * spin, "1", "it meets a ring twice a turn"),
            Working("over_outer", "", "order of the balls over the outer ring", over_outer, "1", "Z (1 - γ)/2"),
            Working("over_inner", "", "order of the balls over the inner ring", over_inner, "1", "Z (1 + γ)/2"),
            Working("blades", "", "order of the blades", blades, "1"),
            Working("rate", "n/60", "turns per second at the highest speed", hertz, "Hz"),
            Working("hz_cage", "", "frequency of the cage", cage * hertz, "Hz"),
            Working("hz_outer", "", "frequency of the balls over the outer ring", over_outer * hertz, "Hz"),
            Working("hz_inner", "", "frequency of the balls over the inner ring", over_inner * hertz, "Hz"),
            Working("hz_blades", "", "frequency of the blades", blades * hertz, "Hz"),
        ],
    )  # fmt: skip


def _apart(order: Floats, base: Floats) -> Floats:
    """Distance of an order from the nearest whole multiple of another, over the order."""
    multiple = np.maximum(np.round(order / base), 1.0) * base
    return np.asarray(np.abs(order - multiple) / order, dtype=np.float64)


def _told(cage: Floats, spin: Floats, outer: Floats, inner: Floats, blades: Floats) -> Callable[[int], str]:
    """The orders in words by row."""

    def make(row: int) -> str:
        parts = [
            (cage, "cage"), (spin, "spin of a ball"), (outer, "balls over the outer ring"),
            (inner, "balls over the inner ring"), (blades, "blades"),
        ]  # fmt: skip
        known = [(values[row], name) for values, name in parts if not np.isnan(values[row])]
        return ", ".join(f"{name} {quantity_text(float(value), '1')}" for value, name in known)

    return make
