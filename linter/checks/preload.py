"""Chapter preload: whether there is one, what it must exceed, what it must stay below, and the window between."""

from collections.abc import Mapping

import numpy as np

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder
from linter.checks.shared.contacts import (
    clearance_losses,
    contact,
    stress_at,
    stress_wants,
    under_load,
)
from linter.checks.shared.preload_band import station_band
from linter.checks.shared.preload_criteria import (
    LEAST,
    ball_positions,
    governing,
    maxima,
    minima,
    preloaded,
    why_not,
)
from linter.checks.shared.quantities import (
    dynamic_rating,
    equivalent_load,
    speed_factor,
    static_load_rating,
)
from linter.checks.shared.two_sides import sinking
from linter.model.stations import Floats


def present(view: View, limits: Limits) -> Result:
    """A fast ball bearing without preload must be loaded enough by the machine itself."""
    s = view.stations
    band = station_band(view)
    none = ~preloaded(view)
    axial, radial = np.abs(s.number("axial_load")), s.number("radial_load")
    load = equivalent_load(view, axial)
    rating = dynamic_rating(view).value
    least = limits["least_share"] * rating
    by_maker = s.number("speed_max") / s.number("limiting_speed")
    by_factor = speed_factor(view) / limits["fast_speed_factor"]
    relative = np.where(np.isnan(by_maker), by_factor, by_maker / limits["fast_share"])
    fast = relative > 1.0
    short = np.maximum(1.0 - load / least, 0.0)
    measure = np.where(short > 0.0, np.where(fast, 2.0, 1.0) + short, np.minimum(least / np.maximum(load, LEAST), 1.0))
    measure = np.where(np.isnan(load + least + relative), np.nan, measure)
    unstated = np.zeros(view.count, dtype=bool)
    if (nothing := limits.get("unstated_load")) is not None:  # what it comes to without any load, unless that closes
        unstated = none & np.isnan(axial) & np.isnan(radial) & ~np.isnan(least) & (relative <= 1.0)
        load = np.where(unstated, float(nothing), load)
        measure = np.where(unstated, 2.0, measure)
    return Result(
        measure=np.where(none, measure, np.where(np.isnan(band.nominal), np.nan, 0.0)),
        unit="N",
        observed=np.where(none, load, band.nominal),
        lower=np.where(none, least, np.nan),
        applies=ball_positions(view),
        reason="rollers are not preloaded by axial force",
        missing={
            "bearing_type": ~s.choice("bearing_type").known,
            **{name: rows & ~none for name, rows in band.missing.items()},
            "radial_load": none & np.isnan(radial) & ~unstated,
            "axial_load": none & np.isnan(axial) & ~unstated,
            "dynamic_rating": none & np.isnan(rating),
            "static_rating": none & np.isnan(static_load_rating(view).value),
            "contact_angle": none & np.isnan(contact(view).free_angle),
            "speed_max": none & np.isnan(relative),
        },
        variant=lambda: np.select([unstated, ~none, fast], ["unstated", "preloaded", "fast"], "").astype(object),
        facts=lambda: {
            "wanted": (least, "N"),
            "speed_limit": (limits["fast_share"] * s.number("limiting_speed"), "r/min"),
        },
        assumed=lambda: [
            Assumes(name, np.zeros(view.count), "N", "not stated; none is taken, the safe side here", unstated)
            for name in ("radial_load", "axial_load")
        ],
        working=lambda: [
            Working("rating", "C", "dynamic rating", rating, "N"),
            Working("least", "F_min", "least load", least, "N", "share · C"),
            Working("load", "P", "equivalent load without preload", np.where(none, load, np.nan), "N", "X F_r + Y F_a"),
            Working("speed_factor", "n·d_m", "speed factor", speed_factor(view), "mm.r/min", "n (d + D)/2"),
            Working("relative", "", "speed over that from which a bearing counts as fast", relative),
            Working("force", "F_p", "preload", band.nominal, "N"),
        ],
    )  # fmt: skip


def lines(*sides: Mapping[str, tuple[str, str, Floats]]) -> list[Working]:
    """Criteria as lines of the working."""
    return [
        Working(key, "", words, force, "N", formula) for side in sides for key, (words, formula, force) in side.items()
    ]


def force_lines(view: View) -> list[Working]:
    """The preload and what its angle comes from, as lines of the working."""
    band = station_band(view)
    at = contact(view)
    return [
        Working("force_smallest", "F_p min", "smallest preload", band.smallest, "N"),
        Working("force_nominal", "F_p", "nominal preload", band.nominal, "N"),
        Working("force_largest", "F_p max", "largest preload", band.largest, "N"),
        Working("clearance", "G_r", "radial clearance in use", 1000.0 * at.clearance, "um", "before mounting - losses"),
        Working("fit_loss", "", "clearance lost by the fits", 1000.0 * clearance_losses(view).fits, "um"),
        Working("free_angle", "α_0", "contact angle without load", at.free_angle, "deg", "cos α_0 = 1 - G_r/(2 A)"),
    ]  # fmt: skip


def minimum(view: View, limits: Limits) -> Result:
    """Smallest preload against the largest minimum."""
    s = view.stations
    band = station_band(view)
    criteria = minima(view, limits)
    firm, firm_words = governing(criteria.firm, largest=True)
    wish, wish_words = governing({**criteria.firm, **criteria.advice}, largest=True)
    below_firm = band.smallest < firm
    rating_known = ~np.isnan(dynamic_rating(view).value)
    floor = np.maximum(np.nan_to_num(firm), LEAST)
    goal = np.fmax(wish, floor)
    measure = sinking(band.smallest, goal, floor, limits["bare_share"] * floor)
    # a rule as round as 0.01 C is not broken by the spread of a spring whose nominal force keeps it
    measure = np.where(band.nominal >= floor * (1 - 1e-9), np.minimum(measure, 2.0), measure)
    spring = s.choice("preload_method").is_in("spring") & ~np.isnan(s.size("spring_rate").nominal)
    wanted = np.where(below_firm, firm, wish)
    length = s.size("spring_installed_length").nominal - (wanted - band.smallest) / s.size("spring_rate").nominal
    return Result(
        measure=measure,
        unit="N",
        observed=band.smallest,
        lower=np.where(np.isnan(wish), np.nan, wanted),
        applies=ball_positions(view) & preloaded(view),
        reason=lambda: why_not(view),
        missing={
            "bearing_type": ~s.choice("bearing_type").known,
            **band.missing,
            "dynamic_rating": ~rating_known,
        },
        variant=lambda: np.select(
            [np.isnan(wish), spring & (length > 0) & below_firm, spring & (length > 0)],
            ["free", "spring", "spring_advice"],
            np.where(below_firm, "", "advice"),
        ).astype(object),
        facts=lambda: {
            "criterion": np.where(below_firm, firm_words, wish_words),
            "length_wanted": (length, "mm"),
            "firm": (firm, "N"),
        },
        assumed=lambda: [*band.assumed, *contact(view).assumed],
        working=lambda: [
            *force_lines(view),
            *lines(criteria.firm, criteria.advice),
            Working(
                "slip_low_friction", "", "gyroscopic slip with the lower friction",
                criteria.advice["min_gyroscopic"][2] * limits["friction_high"] / limits["friction_low"], "N",
            ),
        ],
    )  # fmt: skip


def maximum(view: View, limits: Limits) -> Result:
    """Largest preload against contact stress and the static cap."""
    s = view.stations
    band = station_band(view)
    criteria = maxima(view, limits)
    quiet, usual = criteria.advice["max_quiet"][2], criteria.advice["max_usual"][2]
    stiff, cap = criteria.firm["max_stiff"][2], criteria.firm["max_static"][2]
    state = under_load(view, band.largest, preloaded(view))
    stress = stress_at(view, band.largest, state)
    over_cap = band.largest > cap * (1 + 1e-9)
    measure = ladder(band.largest, quiet, usual, stiff)
    measure = np.where(over_cap, np.fmax(measure, 3.0 + band.largest / cap), measure)
    step = np.minimum(np.floor(np.nan_to_num(measure)), 3.0)
    limit = np.select([over_cap, step <= 1, step == 2], [cap, quiet, usual], stiff)
    stress_limit = np.select(
        [step <= 1, step == 2], [limits["stress_quiet"], limits["stress_usual"]], limits["stress_stiff"]
    )
    exact = contact(view).exact
    static = static_load_rating(view).value
    return Result(
        measure=measure,
        unit="N",
        observed=band.largest,
        upper=limit,
        applies=ball_positions(view) & preloaded(view),
        reason=lambda: why_not(view),
        missing={
            "bearing_type": ~s.choice("bearing_type").known,
            **band.missing,
            **stress_wants(view),
            "static_rating": ~exact & np.isnan(static),
        },
        variant=lambda: np.where(over_cap, "cap", np.where(exact, "", "estimate")).astype(object),
        facts=lambda: {
            "stress_limit": (stress_limit, "MPa"),
            "cap_share": (cap / static, "1"),
            "usual": (usual, "N"),
        },
        assumed=lambda: [*band.assumed, *contact(view).assumed],
        working=lambda: [
            *force_lines(view),
            Working("angle", "α", "contact angle under the largest preload", state.contact_angle, "deg"),
            Working("ball_load", "Q", "load of one ball", state.ball_load, "N", "F_p/(Z sin α)"),
            Working(
                "stress", "p_m", "mean contact pressure under the largest preload", stress, "MPa",
                "2/3 of the Hertz peak; without geometry 2/3 · 4200 (F/(5 C_0 sin α))^⅓",
            ),
            Working("method", "", "how the stress was found", np.where(exact, "Hertz", "from C_0").astype(object)),
            Working("static", "C_0", "static rating", static, "N"),
            *lines(criteria.advice, criteria.firm),
        ],
    )  # fmt: skip


def window(view: View, limits: Limits) -> Result:
    """Largest minimum against the smallest maximum."""
    s = view.stations
    band = station_band(view)
    low, high = minima(view, limits), maxima(view, limits)
    general = {"max_usual": high.advice["max_usual"]}
    low_firm, low_words = governing(low.firm, largest=True)
    high_firm, high_words = governing(high.firm, largest=False)
    low_wish, low_wish_words = governing({**low.firm, **low.advice}, largest=True)
    high_wish, high_wish_words = governing({**high.firm, **general}, largest=False)
    known = ~np.isnan(dynamic_rating(view).value) & ~np.isnan(high.firm["max_stiff"][2])
    by_firm = np.where(np.isnan(low_firm), 0.0, low_firm / high_firm)
    by_wish = np.where(np.isnan(low_wish), 0.0, low_wish / high_wish)
    closed = by_firm > 1.0 + 1e-9
    measure = np.where(closed, 1.0 + by_firm, np.minimum(by_wish, 2.0))
    return Result(
        measure=np.where(known, measure, np.nan),
        unit="N",
        observed=np.where(closed, low_firm, low_wish),
        upper=np.where(closed, high_firm, high_wish),
        applies=ball_positions(view) & preloaded(view),
        reason=lambda: why_not(view),
        missing={
            "bearing_type": ~s.choice("bearing_type").known,
            "preload_method": ~s.choice("preload_method").known & np.isnan(band.nominal),
            "dynamic_rating": np.isnan(dynamic_rating(view).value),
            **stress_wants(view),
            "static_rating": ~contact(view).exact & np.isnan(static_load_rating(view).value),
        },
        variant=lambda: np.where(closed, "", "narrow").astype(object),
        facts=lambda: {
            "minimum_by": np.where(closed, low_words, low_wish_words),
            "maximum_by": np.where(closed, high_words, high_wish_words),
            "firm_minimum": (low_firm, "N"),
            "firm_maximum": (high_firm, "N"),
        },
        assumed=contact(view).assumed,
        working=lambda: [*force_lines(view), *lines(low.firm, low.advice, high.advice, high.firm)],
    )  # fmt: skip
