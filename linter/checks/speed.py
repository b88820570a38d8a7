"""Chapter speed: the speed factor and what carries it."""

from collections.abc import Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, shared
from linter.checks.shared.growth import in_use_alone
from linter.checks.shared.quantities import (
    ball_diameter,
    contact_angle,
    load_ratio,
    mean_diameter,
    pitch_diameter,
    speed_factor,
)
from linter.checks.shared.two_sides import by_choice
from linter.model.stations import Bools, Choice, Floats

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

    def ways(row: int) -> str:
        other = [
            str(word)
            for word, family, carries in zip(table["lubrication"], table["family"], table["low"], strict=True)
            if (family == "ball") == ball[row] and carries > low[row]
        ]
        found = ["choose a smaller bearing"]
        if by_balls[row] == 1.0 and ball[row]:
            found.append("silicon nitride balls (ball_material)")
        if by_preload[row] < 1.0:
            found.append("a spring or a lighter class of preload (preload_method, rigid_preload_class)")
        if by_seal[row] < 1.0:
            found.append("a shield or a seal that does not rub (closure)")
        if other:
            found.append(f"a lubrication that carries more: {', '.join(other)}")
        return found[0] if len(found) == 1 else ", ".join(found[:-1]) + " or " + found[-1]

    return Result(
        measure=np.where(np.isnan(by_duty), np.nan, measure),
        unit="mm.r/min",
        observed=observed,
        upper=limit_low,
        variant=lambda: np.where(rests, "duty", np.where(measure <= 2.0, "remark", "")).astype(object),
        facts=lambda: {
            "steady": (steady_low, "mm.r/min"),
            "far_end": (limit_high, "mm.r/min"),
            "speed_allowed": (limit_low / mean_diameter(view), "r/min"),
            "ways": ways,
        },
        assumed=lambda: [
            Assumes(
                "radial_load", np.full(view.count, limits["load_ratios"][-1]), "C/P",
                "loads or rating not stated; the limit for light load (C/P of 15 and more) stands in", unknown_load,
            )
        ],
        working=lambda: [
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


def cage(view: View, limits: Limits) -> Result:
    """Speed of the cage by n·d against what its kind and material are published for.

    With the outer ring turning the cage runs faster by (1 + γ)/(1 - γ) at the same speed; n·d is raised by that.
    """
    s = view.stations
    table = limits.table("cage")
    low, high = (by_choice(table, column, "cage", s.choice("cage")) for column in ("low", "high"))
    bore_factor = s.number("speed_max") * s.number("bore_diameter")
    outer = s.choice("rotating_ring").is_in("outer")
    gamma = ball_diameter(view) * np.cos(np.deg2rad(contact_angle(view))) / pitch_diameter(view)
    faster = np.where(outer, (1 + gamma) / (1 - gamma), 1.0)
    observed = bore_factor * faster
    unknown = outer & np.isnan(gamma)
    measure = ladder(observed, low, high)
    vouched = s.number("speed_max") <= s.number("limiting_speed")
    return Result(
        measure=np.where(vouched, np.minimum(measure, limits["vouched"]), measure),
        unit="mm.r/min",
        observed=observed,
        upper=low,
        missing={
            "ball_diameter": unknown & np.isnan(ball_diameter(view)),
            "contact_angle": unknown & np.isnan(contact_angle(view)),
        },
        variant=lambda: np.where(outer, "outer", "").astype(object),
        facts=lambda: {"far_end": (high, "mm.r/min")},
        working=lambda: [
            Working("speed", "n", "highest speed", s.number("speed_max"), "r/min"),
            Working("bore", "d", "bore", s.number("bore_diameter"), "mm"),
            Working("gamma", "γ", "ball over pitch diameter", np.where(outer, gamma, np.nan), "1", "D_w cos α/D_pw"),
            Working("faster", "", "cage speed against inner ring rotation", faster, "1", "(1 + γ)/(1 - γ), outer ring"),
            Working("bore_factor", "n·d", "speed factor on the bore", observed, "mm.r/min", "n · d · ratio"),
            Working("limit_low", "", "published limit of the cage, near end", low, "mm.r/min", "table by cage"),
            Working("limit_high", "", "published limit of the cage, far end", high, "mm.r/min", "table by cage"),
        ],
    )  # fmt: skip


def _beyond_usual(table: Mapping[str, NDArray[Any]], hottest: Floats, coldest: Floats) -> Bools:
    """Rows hotter or colder than some kind of cage withstands, so that the kind has to be stated."""
    warm, cold = (table[name].astype(float) for name in ("low", "coldest"))
    return (hottest > np.nanmin(warm)) | (coldest < np.nanmax(cold))


def cage_temperature(view: View, limits: Limits) -> Result:
    """Temperature of the cage in use, when soaked and at cold start against what its material holds."""
    s = view.stations
    table = limits.table("cage")
    kind = s.choice("cage")
    warm_low, warm_high, cold = (by_choice(table, name, "cage", kind) for name in ("low", "high", "coldest"))
    bound = ~np.isnan(warm_low)
    hottest = np.fmax(s.number("operating_temperature"), s.number("temperature_max"))
    coldest = s.number("temperature_min")
    by_heat = ladder(np.maximum(hottest, 0.0), warm_low, warm_high)
    chill = coldest < cold
    measure = np.where(chill, np.fmax(by_heat, limits["cold_measure"]), by_heat)
    cold_leads = chill & ~(by_heat > limits["cold_measure"])
    taken = s.assumed.get("cage")
    open_kind = taken.rows & _beyond_usual(table, hottest, coldest) if taken is not None else np.zeros_like(chill)
    return Result(
        measure=measure,
        unit="degC",
        observed=np.where(cold_leads, coldest, hottest),
        lower=np.where(cold_leads, cold, np.nan),
        upper=np.where(cold_leads, np.nan, warm_low),
        applies=bound | ~kind.known | open_kind,
        reason="a metal cage holds any temperature that the rings hold",
        missing={"cage": open_kind},
        variant=lambda: np.where(cold_leads, "cold", "").astype(object),
        assumed=lambda: in_use_alone(view),
        working=lambda: [
            Working("operating", "ϑ", "bearing in use", s.number("operating_temperature"), "degC"),
            Working("soaked", "ϑ_max", "highest temperature of the assembly", s.number("temperature_max"), "degC"),
            Working("hottest", "", "warmest the cage becomes", hottest, "degC", "larger of the two"),
            Working("coldest", "ϑ_min", "lowest temperature of the assembly", coldest, "degC"),
            Working("warm_limit", "", "published limit, near end", warm_low, "degC", "table by cage"),
            Working("warm_far", "", "published limit, far end", warm_high, "degC", "table by cage"),
            Working("cold_limit", "", "published lower limit", cold, "degC", "table by cage"),
        ],
    )  # fmt: skip


def seal(view: View, limits: Limits) -> Result:
    """Rubbing speed of a contact seal lip, π n d_lip."""
    s = view.stations
    contact = s.choice("closure").is_in("contact seal")
    stated, land = s.number("seal_lip_diameter"), s.number("inner_ring_shoulder_diameter")
    stands_in = contact & np.isnan(stated) & ~np.isnan(land)
    lip = np.where(np.isnan(stated), land, stated)
    observed = np.pi * s.number("speed_max") * lip / 60_000.0
    low = np.full(view.count, float(limits["lip_speed_low"]))
    high = np.full(view.count, float(limits["lip_speed_high"]))
    return Result(
        measure=ladder(observed, low, high),
        unit="m/s",
        observed=observed,
        upper=low,
        applies=contact | ~s.choice("closure").known,
        reason="no seal lip rubs",
        missing={"seal_lip_diameter": contact & np.isnan(lip)},
        facts=lambda: {"far_end": (high, "m/s"), "speed_at_limit": (60_000.0 * low / (np.pi * lip), "r/min")},
        assumed=lambda: [
            Assumes(
                "seal_lip_diameter", lip, "mm",
                "not stated; the land of the inner ring (inner_ring_shoulder_diameter) stands in", stands_in,
            )
        ],
        working=lambda: [
            Working("speed", "n", "highest speed", s.number("speed_max"), "r/min"),
            Working("lip", "d_lip", "diameter on which the lip rubs", lip, "mm"),
            Working("lip_speed", "v", "rubbing speed", observed, "m/s", "π · d_lip · n/60 000"),
            Working("limit_low", "", "limit, near end", low, "m/s"),
            Working("limit_high", "", "limit, far end", high, "m/s"),
        ],
    )  # fmt: skip


def maker_limit(view: View, limits: Limits) -> Result:
    """Highest speed against the maker's own limiting speed and thermal reference speed."""
    s = view.stations
    speed, limit, reference = s.number("speed_max"), s.number("limiting_speed"), s.number("reference_speed")
    by_limit = ladder(speed, limits["attention_share"] * limit, limit, limits["agreement_share"] * limit)
    by_limit = by_limit + (by_limit > 2.0)
    thermal = ladder(speed, reference)
    by_reference = np.minimum(thermal + (thermal > 1.0), 3.0)
    measure = np.fmax(by_limit, by_reference)
    leads = by_reference > np.nan_to_num(by_limit, nan=-1.0)
    plain = np.where(measure <= 2.0, "attention", "")
    return Result(
        measure=measure,
        unit="r/min",
        observed=speed,
        upper=np.where(leads, reference, limit),
        applies=~(np.isnan(limit) & np.isnan(reference)),
        reason="the table states neither a limiting_speed nor a reference_speed of the maker",
        variant=lambda: np.where(leads, "thermal", plain).astype(object),
        facts=lambda: {
            "attention": (limits["attention_share"] * limit, "r/min"),
            "agreement": (limits["agreement_share"] * limit, "r/min"),
        },
        working=lambda: [
            Working("speed", "n", "highest speed", speed, "r/min"),
            Working("limit", "n_lim", "maker's limiting speed", limit, "r/min"),
            Working("reference", "n_ref", "maker's thermal reference speed", reference, "r/min"),
            Working("share", "n/n_lim", "share of the limiting speed", speed / limit, "1", "n/n_lim"),
            Working("reference_share", "n/n_ref", "share of the reference speed", speed / reference, "1", "n/n_ref"),
        ],
    )  # fmt: skip


def precision(view: View, limits: Limits) -> Result:
    """Speed factor against the range that a tolerance class is used in."""
    table = limits.table("classes")
    kind = view.stations.choice("tolerance_class")
    low, high, far = (by_choice(table, name, "tolerance_class", kind) for name in ("low", "high", "far"))
    observed = speed_factor(view)
    return Result(
        measure=ladder(observed, low, high, far),
        unit="mm.r/min",
        observed=observed,
        upper=high,
        applies=~np.isnan(high) | ~kind.known,
        reason="this class is made for the highest speeds",
        variant=lambda: np.where(observed <= high, "remark", "").astype(object),
        facts=lambda: {"near": (low, "mm.r/min"), "better": _better_class(table, kind)},
        working=lambda: [
            Working("speed_factor", "n·d_m", "speed factor", observed, "mm.r/min", "n (d + D)/2"),
            Working("near", "", "from here on one source asks for a finer class", low, "mm.r/min", "table by class"),
            Working("limit", "", "from here on a finer class is asked for", high, "mm.r/min", "table by class"),
        ],
    )  # fmt: skip


def _better_class(table: Mapping[str, NDArray[Any]], kind: Choice) -> NDArray[Any]:
    better = dict(zip(table["tolerance_class"], table["better"], strict=True))
    return np.array([*(better.get(word, "") for word in kind.words), ""], dtype=object)[kind.codes]
