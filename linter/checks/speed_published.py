"""Chapter speed: the speed against what makers print, in general and for the very bearing; what lubrication reaches."""

from collections.abc import Callable

import numpy as np

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder
from linter.checks.shared.quantities import (
    attitude_assumed,
    ball_diameter,
    contact_angle,
    mean_diameter,
    pitch_diameter,
    speed_factor,
)
from linter.checks.shared.speed_corrections import (
    HYBRID,
    arrangement_corrections,
    by_bore,
    design_corrections,
    factors_told,
    maker_speed,
    product,
    unstated_assumed,
)
from linter.model.stations import Bools, Choice, Floats
from linter.model.wording import quantity_text

PLAIN, SPECIAL = "grease", "grease for high speed"


def _published(view: View, limits: Limits, lubrication: Choice) -> tuple[Floats, Floats]:
    """Recommended and highest printed speed factor of the kind of bearing in a lubrication [mm r/min]."""
    s = view.stations
    keys = {
        "bearing_type": s.choice("bearing_type"),
        "tolerance_class": s.choice("tolerance_class"),
        "lubrication": lubrication,
    }
    return by_bore(limits.table("limits"), keys, s.number("bore_diameter"))


def _cage_far_end(view: View, limits: Limits) -> Floats:
    """Highest printed speed factor of the cage [mm r/min]; infinite where its kind is not known."""
    s = view.stations
    _, high = by_bore(limits.table("cage"), {"cage": s.choice("cage")}, s.number("bore_diameter"))
    return np.where(np.isnan(high), np.inf, high)


def _kind_told(view: View) -> Callable[[int], str]:
    s = view.stations

    def tell(row: int) -> str:
        kind, balls = str(s.choice("bearing_type").texts()[row]), str(s.choice("ball_material").texts()[row])
        what = kind if kind.endswith("roller") else f"{kind or 'ball'} bearing with {balls} balls"
        return f"a {what} of {quantity_text(float(s.number('bore_diameter')[row]), 'mm')} bore".replace(
            "a angular", "an angular"
        )

    return tell


def factor(view: View, limits: Limits) -> Result:
    """Speed factor n d_m against the range of printed speeds, times the factors of the design (``speed.factor``).

    Up to the recommended figure it is met; up to the highest printed one the maker's own figure decides.
    """
    s = view.stations
    lubrication, duty = s.choice("lubrication"), s.choice("duty")
    low, high = _published(view, limits, lubrication)
    special = Choice((SPECIAL,), np.zeros(view.count, dtype=np.int8))
    carried_by_special, _ = _published(view, limits, special)
    corrections = [*arrangement_corrections(view, limits), *design_corrections(view, limits)]
    design = product(corrections)
    by_duty = duty.map(
        {"continuous": 1.0, "intermittent": limits["intermittent_factor"], "short-time": limits["short_time_factor"]}
    )
    cage_end = _cage_far_end(view, limits)

    def in_duty(limit: Floats) -> Floats:
        steady = limit * design
        return np.maximum(steady, np.minimum(steady * by_duty, cage_end))

    observed = speed_factor(view)
    limit_low, limit_high, steady_high = in_duty(low), in_duty(high), high * design
    measure = ladder(observed, limit_low, limit_high, limits["minor_to"] * limit_high, limits["major_to"] * limit_high)
    pauses = ~duty.is_in("continuous")
    wording = lubrication.is_in(PLAIN) & (observed > limit_high) & (observed <= carried_by_special * design)
    measure = np.where(wording, np.minimum(measure, np.where(pauses, 2.0, 4.0)), measure)
    rests = pauses & (observed > steady_high) & ~(measure > 2.0)
    measure = np.where(rests, np.maximum(measure, 1.5), measure)
    allowed = maker_speed(view, limits)
    stated = s.number("speed_max") <= allowed
    vouched = stated & (observed <= limits["major_to"] * limit_high)
    measure = np.where(vouched, np.minimum(measure, np.where(observed > limit_high, 2.0, 1.0)), measure)
    judged = (s.number("speed_max") > allowed) & (measure <= 2.0)
    measure = np.where(judged, np.minimum(measure, 1.0), measure)
    beyond = measure > 2.0
    grease = lubrication.is_in(PLAIN) & (observed > limits["grease_matters_from"])
    variant = np.select(
        [vouched, stated & ~vouched, judged, rests & wording, rests, wording & beyond, beyond, measure > 1.0, grease],
        ["maker", "doubted", "judged", "duty_wording", "duty", "wording", "", "remark", "grease"],
        "",
    )

    def ways(row: int) -> str:
        found = ["choose a smaller bearing"]
        words = [word for word in lubrication.words if word != lubrication.words[int(lubrication.codes[row])]]
        carrying = []
        for word in words:
            other, _ = _published(view, limits, Choice((word,), np.zeros(view.count, dtype=np.int8)))
            if other[row] * design[row] >= observed[row]:
                carrying.append(word)
        if s.choice("ball_material").is_in("steel")[row] and not str(s.choice("bearing_type").texts()[row]).endswith(
            "roller"
        ):
            found.append(f"{HYBRID[0]} balls (ball_material)")
        factors = {c.key: float(c.values[row]) for c in corrections}
        if factors["by_preload"] < 1.0:
            found.append("a spring or a lighter class of preload (preload_method, rigid_preload_class)")
        if factors["by_seal"] < 1.0:
            found.append("a shield or a seal that does not rub (closure)")
        if carrying:
            found.append(f"a lubrication that carries {quantity_text(float(observed[row]), 'mm.r/min')}: "
                         f"{', '.join(carrying)}")  # fmt: skip
        return found[0] if len(found) == 1 else ", ".join(found[:-1]) + " or " + found[-1]

    return Result(
        measure=np.where(np.isnan(by_duty), np.nan, measure),
        unit="mm.r/min",
        observed=observed,
        upper=np.where(beyond | (rests & wording), limit_high, limit_low),
        variant=lambda: variant.astype(object),
        facts=lambda: {
            "kind": _kind_told(view),
            "factors": factors_told(corrections),
            "published_low": (low, "mm.r/min"),
            "published_high": (high, "mm.r/min"),
            "steady": (steady_high, "mm.r/min"),
            "special": (carried_by_special * design, "mm.r/min"),
            "speed_allowed": (limit_high / mean_diameter(view), "r/min"),
            "maker": (allowed, "r/min"),
            "matters": (np.full(view.count, float(limits["grease_matters_from"])), "mm.r/min"),
            "ways": ways,
        },
        assumed=lambda: unstated_assumed(view, limits),
        working=lambda: [
            Working("speed", "n", "highest speed", s.number("speed_max"), "r/min"),
            Working("mean_diameter", "d_m", "mean diameter", mean_diameter(view), "mm", "(d + D)/2"),
            Working("speed_factor", "n·d_m", "speed factor", observed, "mm.r/min", "n · d_m"),
            Working("table_low", "", "recommended, as published", low, "mm.r/min", "table by kind, lubrication, bore"),
            Working("table_high", "", "highest limiting speed printed", high, "mm.r/min", "the same table"),
            *(correction.working() for correction in corrections),
            Working("by_duty", "f_duty", "factor for the duty, up to the cage's own limit", by_duty),
            Working("limit_low", "", "recommended for this design", limit_low, "mm.r/min", "table · all factors"),
            Working("limit_high", "", "highest for this design", limit_high, "mm.r/min", "table · all factors"),
            Working("maker_speed", "", "maker's limiting speed as it holds here", allowed, "r/min",
                    "n_lim · factors for load, axial share, preload, ring"),
        ],
    )  # fmt: skip


def maker_limit(view: View, limits: Limits) -> Result:
    """Highest speed against the maker's limiting speed as it holds for this design, and his thermal reference speed."""
    s = view.stations
    speed, limit, reference = s.number("speed_max"), s.number("limiting_speed"), s.number("reference_speed")
    corrections = arrangement_corrections(view, limits)
    allowed = maker_speed(view, limits)
    least, unstated = np.full(view.count, np.nan), np.zeros(view.count, dtype=bool)
    if limits.has_table("limits"):  # up to the lowest that makers print every one of them agrees
        low, _ = _published(view, limits, s.choice("lubrication"))
        rubs = np.where(s.choice("closure").is_in("contact seal"), limits["contact_seal_factor"], 1.0)
        least = rubs * low / mean_diameter(view)
        unstated = np.isnan(limit) & (speed <= least * product(corrections))
        limit = np.where(unstated, least, limit)
        allowed = np.where(unstated, least * product(corrections), allowed)
    by_limit = ladder(speed, allowed, limits["minor_share"] * allowed, limits["agreement_share"] * allowed)
    by_reference = np.minimum(ladder(speed, reference), 2.0)
    measure = np.fmax(by_limit, by_reference)
    leads = by_reference > np.nan_to_num(by_limit, nan=-1.0)
    plain = s.choice("lubrication").is_in(PLAIN) & (speed > limits["attention_share"] * allowed)
    corrected = allowed < limit
    return Result(
        measure=measure,
        unit="r/min",
        observed=speed,
        upper=np.where(leads, reference, allowed),
        missing={"limiting_speed": np.isnan(limit)},
        variant=lambda: np.select(
            [leads, (measure > 1.0) & corrected, (measure > 1.0), unstated, plain],
            ["thermal", "corrected", "", "unstated", "attention"],
            "",
        ).astype(object),
        facts=lambda: {
            "attention": (limits["attention_share"] * allowed, "r/min"),
            "factors": factors_told(corrections),
        },
        assumed=lambda: [
            *unstated_assumed(view, limits),
            Assumes(
                "limiting_speed", least, "r/min",
                "not stated; the lowest that makers print for the kind, bore and lubrication stands in", unstated,
            ),
        ],
        working=lambda: [
            Working("speed", "n", "highest speed", speed, "r/min"),
            Working("limit", "n_lim", "maker's limiting speed", limit, "r/min"),
            *(correction.working() for correction in corrections),
            Working("allowed", "", "limiting speed as it holds for this design", allowed, "r/min", "n_lim · factors"),
            Working("reference", "n_ref", "maker's thermal reference speed", reference, "r/min"),
            Working("share", "", "share of the limiting speed", speed / allowed, "1", "n/(n_lim · factors)"),
            Working("reference_share", "n/n_ref", "share of the reference speed", speed / reference, "1", "n/n_ref"),
        ],
    )  # fmt: skip


def cage(view: View, limits: Limits) -> Result:
    """Speed of the cage by n·d_m against what its kind is printed for at this bore (clause ``speed.cage``).

    With the outer ring turning the cage runs faster by (1 + γ)/(1 - γ) at the same speed; n·d_m is raised by that.
    """
    s = view.stations
    low, high = by_bore(limits.table("cage"), {"cage": s.choice("cage")}, s.number("bore_diameter"))
    outer = s.choice("rotating_ring").is_in("outer")
    gamma = ball_diameter(view) * np.cos(np.deg2rad(contact_angle(view))) / pitch_diameter(view)
    faster = np.where(outer, (1 + gamma) / (1 - gamma), 1.0)
    observed = speed_factor(view) * faster
    unknown = outer & np.isnan(gamma)
    vouched = s.number("speed_max") <= maker_speed(view, limits)
    measure = ladder(observed, low, high)

    def better(row: int) -> str:
        bore = s.number("bore_diameter")[row : row + 1]
        carrying = []
        for word in s.choice("cage").words:
            _, end = by_bore(limits.table("cage"), {"cage": Choice((word,), np.zeros(1, dtype=np.int8))}, bore)
            if end[0] >= observed[row] and not s.choice("cage").is_in(word)[row]:
                carrying.append(word)
        return f"a cage that carries it (cage: {', '.join(carrying)})" if carrying else "a smaller bearing"

    return Result(
        measure=np.where(vouched, np.minimum(measure, 1.0), measure),
        unit="mm.r/min",
        observed=observed,
        upper=low,
        missing={
            "ball_diameter": unknown & np.isnan(ball_diameter(view)),
            "contact_angle": unknown & np.isnan(contact_angle(view)),
        },
        variant=lambda: np.where(vouched & (measure > 1.0), "vouched", np.where(outer, "outer", "")).astype(object),
        facts=lambda: {"far_end": (high, "mm.r/min"), "better": better},
        working=lambda: [
            Working("speed", "n", "highest speed", s.number("speed_max"), "r/min"),
            Working("mean_diameter", "d_m", "mean diameter", mean_diameter(view), "mm", "(d + D)/2"),
            Working("gamma", "γ", "ball over pitch diameter", np.where(outer, gamma, np.nan), "1", "D_w cos α/D_pw"),
            Working("faster", "", "cage speed against inner ring rotation", faster, "1", "(1 + γ)/(1 - γ), outer ring"),
            Working("cage_factor", "n·d_m", "speed factor of the cage", observed, "mm.r/min", "n · d_m · ratio"),
            Working("limit_low", "", "published limit of the cage, near end", low, "mm.r/min", "table by cage, bore"),
            Working("limit_high", "", "published limit of the cage, far end", high, "mm.r/min", "table by cage, bore"),
        ],
    )  # fmt: skip


def seal(view: View, limits: Limits) -> Result:
    """Rubbing speed of a contact seal lip, π n d_lip; the maker's limiting speed of a sealed bearing holds its lip."""
    s = view.stations
    contact = s.choice("closure").is_in("contact seal")
    stated, land = s.number("seal_lip_diameter"), s.number("inner_ring_shoulder_diameter")
    lip = np.where(np.isnan(stated), land, stated)
    observed = np.pi * s.number("speed_max") * lip / 60_000.0
    low = np.full(view.count, float(limits["lip_speed_low"]))
    high = np.full(view.count, float(limits["lip_speed_high"]))
    vouched = s.number("speed_max") <= s.number("limiting_speed")
    sealed = np.full(view.count, np.inf)
    if limits.get("sealed_share") is not None:
        _, open_speed = _published(view, limits, s.choice("lubrication"))
        sealed = limits["sealed_share"] * open_speed / mean_diameter(view)
    doubted = vouched & (s.number("limiting_speed") > sealed)
    vouched &= ~doubted
    measure = np.where(vouched, 0.0, ladder(observed, low, high))
    return Result(
        measure=measure,
        unit="m/s",
        observed=observed,
        upper=low,
        applies=contact | ~s.choice("closure").known,
        reason="no seal lip rubs",
        missing={"seal_lip_diameter": contact & np.isnan(lip) & ~vouched},
        variant=lambda: np.select([vouched, doubted & (measure > 1.0)], ["vouched", "doubted"], "").astype(object),
        assumed=lambda: [
            Assumes(
                "seal_lip_diameter", lip, "mm",
                "not stated; the land of the inner ring (inner_ring_shoulder_diameter) stands in",
                contact & ~vouched & np.isnan(stated) & ~np.isnan(land),
            )
        ],
        facts=lambda: {
            "far_end": (high, "m/s"),
            "sealed_speed": (sealed, "r/min"),
            "speed_at_limit": (60_000.0 * low / (np.pi * lip), "r/min"),
        },
        working=lambda: [
            Working("speed", "n", "highest speed", s.number("speed_max"), "r/min"),
            Working("lip", "d_lip", "diameter on which the lip rubs", lip, "mm", "stated, else the inner ring's land"),
            Working("lip_speed", "v", "rubbing speed", observed, "m/s", "π · d_lip · n/60 000"),
            Working("limit_low", "", "limit, near end", low, "m/s"),
            Working("limit_high", "", "limit, far end", high, "m/s"),
        ],
    )  # fmt: skip


def lubricant_reaches(view: View, limits: Limits) -> Result:
    """The lubrication can reach the balls past the closure and in this attitude (``speed.lubricant-reaches``)."""
    s = view.stations
    table = limits.table("reach")
    columns = {name: s.choice(name) for name in ("lubrication", "closure", "shaft_orientation")}
    measure, open_end = np.zeros(view.count), np.zeros(view.count)
    why = np.full(view.count, "", dtype=object)
    for index, weight in enumerate(table["measure"].astype(float)):
        rows = {name: _is(choice, word) for name, choice in columns.items() if (word := str(table[name][index]))}
        if (attitude := rows.get("shaft_orientation")) is not None:
            rows["shaft_orientation"] = attitude | ~columns["shaft_orientation"].known
        every = np.logical_and.reduce([np.ones(view.count, dtype=bool), *rows.values()])
        open_end = np.fmax(open_end, np.where(every, weight, 0.0))
        worse = every & (attitude if attitude is not None else True) & (weight > measure)
        measure[worse], why[worse] = weight, str(table["why"][index])
    return Result(
        measure=measure,
        facts=lambda: {"why": why},
        variant=lambda: np.where(columns["closure"].is_in("open"), "open", "").astype(object),
        assumed=lambda: [attitude_assumed(view, open_end > measure)],
    )


def _is(choice: Choice, words: str) -> Bools:
    return choice.is_in(*(word for word in words.split("; ") if word in choice.words))
