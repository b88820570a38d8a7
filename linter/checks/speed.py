"""Chapter speed: the speed factor and what carries it."""

import numpy as np

from linter.checks.base import Assumes, Limits, Result, View, Working, ladder, shared
from linter.checks.quantities import load_ratio, mean_diameter, speed_factor
from linter.stations import Bools, Floats

HYBRID = ("silicon nitride", "zirconia")


@shared
def ball_family(view: View) -> Bools:
    """Rows whose rolling elements are balls; a position that states a ball material but no type counts as one."""
    kind = view.stations.choice("bearing_type")
    return kind.is_in("deep groove ball", "angular contact ball") | ~kind.known


def factor(view: View, limits: Limits) -> Result:
    """Speed factor n d_m against the limit of its lubrication, times the factors of the design.

    See the clause ``speed.factor`` for the arithmetic and the sources.
    """
    s = view.stations
    table = limits.table("limits")
    lubrication = s.choice("lubrication")
    words = lubrication.texts()
    ball = ball_family(view)
    low, high, remark = (np.full(view.count, np.nan) for _ in range(3))
    for index, word in enumerate(table["lubrication"]):
        rows = (words == word) & (ball == (table["family"][index] == "ball"))
        low[rows], high[rows] = table["low"][index], table["high"][index]
        remark[rows] = table["remark_from"][index]

    ratio = load_ratio(view)
    loaded = np.interp(ratio, limits["load_ratios"], limits["load_factors"])
    greased = lubrication.is_in("grease", "grease for high speed")
    by_load = np.where(greased & ~np.isnan(ratio), loaded, 1.0)
    unknown_load = greased & np.isnan(ratio)

    by_balls = s.choice("ball_material").map(dict.fromkeys(HYBRID, limits["hybrid_factor"]), default=1.0)
    by_balls = np.where(ball, by_balls, 1.0)
    rigid = s.choice("preload_method").is_in("rigid")
    by_preload = np.where(
        rigid,
        s.choice("rigid_preload_class").map(
            {"light": limits["rigid_light"], "medium": limits["rigid_medium"], "heavy": limits["rigid_heavy"]},
            default=1.0,
        ),
        1.0,
    )
    by_ring = np.where(s.choice("rotating_ring").is_in("outer"), limits["outer_ring_factor"], 1.0)
    by_seal = np.where(s.choice("closure").is_in("contact seal"), limits["contact_seal_factor"], 1.0)
    angle = s.number("contact_angle")
    by_angle = np.where(angle >= limits["steep_angle"], limits["steep_angle_factor"], 1.0)
    design = by_load * by_balls * by_preload * by_ring * by_seal * by_angle
    duty = s.choice("duty")
    by_duty = duty.map(
        {"continuous": 1.0, "intermittent": limits["intermittent_factor"], "short-time": limits["short_time_factor"]}
    )

    cage = limits.table("cage")
    by_cage = dict(zip(cage["cage"], cage["high"], strict=True))
    cage_cap = s.choice("cage").map(by_cage, default=np.inf) * mean_diameter(view) / s.number("bore_diameter")
    coarse = s.choice("tolerance_class").is_in("Normal", "P6")
    class_cap = np.where(coarse, limits["coarse_class_cap"], np.inf)

    def in_duty(limit: Floats) -> Floats:
        steady = np.minimum(limit * design, class_cap)
        return np.maximum(steady, np.minimum(steady * by_duty, np.minimum(cage_cap, class_cap)))

    steady_low = np.minimum(low * design, class_cap)
    limit_low, limit_high = in_duty(low), in_duty(high)
    observed = speed_factor(view)
    measure = ladder(observed, np.minimum(remark, limit_low), limit_low, limit_high)
    rests = ~duty.is_in("continuous") & (observed > steady_low)
    return Result(
        measure=np.where(np.isnan(by_duty), np.nan, measure),
        unit="mm.r/min",
        observed=observed,
        upper=limit_low,
        variant=np.where(rests, "duty", np.where(measure <= 2.0, "remark", "")).astype(object),
        facts={"steady": (steady_low, "mm.r/min"), "far_end": (limit_high, "mm.r/min")},
        assumed=[
            Assumes(
                "radial_load", np.full(view.count, limits["load_ratios"][-1]), "C/P",
                "loads or rating not stated; the limit for light load (C/P of 15 and more) stands in", unknown_load,
            )
        ],
        working=[
            Working("speed", "n", "highest speed", s.number("speed_max"), "r/min"),
            Working("mean_diameter", "d_m", "mean diameter", mean_diameter(view), "mm", "(d + D)/2"),
            Working("speed_factor", "n·d_m", "speed factor", observed, "mm.r/min", "n · d_m"),
            Working("table_low", "", "published limit, near end", low, "mm.r/min", "table by lubrication"),
            Working("table_high", "", "published limit, far end", high, "mm.r/min", "table by lubrication"),
            Working("by_load", "f_load", "factor for the load ratio C/P", by_load, "1", "table over C/P, grease only"),
            Working("by_balls", "f_ball", "factor for the ball material", by_balls),
            Working("by_preload", "f_pre", "factor for rigid preload", by_preload),
            Working("by_ring", "f_ring", "factor for a rotating outer ring", by_ring),
            Working("by_seal", "f_seal", "factor for a contact seal", by_seal),
            Working("by_angle", "f_α", "factor for the contact angle", by_angle),
            Working("by_duty", "f_duty", "factor for the duty, up to the cage's own limit", by_duty),
            Working("remark_from", "", "from here on the choice of grease and fill matters", remark, "mm.r/min"),
            Working("limit_low", "", "limit, near end", limit_low, "mm.r/min", "table · all factors"),
            Working("limit_high", "", "limit, far end", limit_high, "mm.r/min", "table · all factors"),
        ],
    )  # fmt: skip
