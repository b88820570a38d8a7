"""Chapter preload, with one voice: the preload against the window of its bearing, and whether that window is open."""

import numpy as np

from linter.checks.preload import force_lines, lines
from linter.checks.shared.base import Limits, Result, View, Working, ladder
from linter.checks.shared.contacts import contact, stress_at, stress_wants, under_load
from linter.checks.shared.preload_band import station_band
from linter.checks.shared.preload_criteria import (
    LEAST,
    Window,
    ball_positions,
    governing,
    preloaded,
    why_not,
    window_of,
)
from linter.checks.shared.quantities import dynamic_rating, static_load_rating
from linter.checks.shared.two_sides import sinking


def _window_lines(found: Window) -> list[Working]:
    """Every criterion of the window, whichever clause asks."""
    low, high = found.minima, found.maxima
    return [
        *lines(low.firm, low.advice, high.advice, high.firm, low.told, high.told),
        Working("window_low", "", "lower end of the window", found.low, "N"),
        Working("window_high", "", "upper end of the window", found.high, "N"),
    ]


def minimum(view: View, limits: Limits) -> Result:
    """Smallest preload against the lower end of the window."""
    s = view.stations
    band, found = station_band(view), window_of(view, limits)
    below = band.smallest < found.low
    floor = np.maximum(np.nan_to_num(found.low), LEAST)
    goal = np.fmax(np.fmin(found.wish, np.fmax(found.high, floor)), floor)
    measure = sinking(band.smallest, goal, floor, limits["bare_share"] * floor)
    # a rule as round as 0.01 C is not broken by the spread of a spring whose nominal force keeps it
    measure = np.where(band.nominal >= floor * (1 - 1e-9), np.minimum(measure, 2.0), measure)
    spring = s.choice("preload_method").is_in("spring") & ~np.isnan(s.size("spring_rate").nominal)
    wanted = np.where(below, found.low, np.where(np.isnan(found.wish), np.nan, goal))
    length = s.size("spring_installed_length").nominal - (wanted - band.smallest) / s.size("spring_rate").nominal
    met = ~(measure > 1.0 + 1e-9)
    return Result(
        measure=measure,
        unit="N",
        observed=band.smallest,
        lower=wanted,
        applies=ball_positions(view) & preloaded(view),
        reason=lambda: why_not(view),
        missing={
            "bearing_type": ~s.choice("bearing_type").known,
            **band.missing,
            "dynamic_rating": np.isnan(dynamic_rating(view).value),
        },
        variant=lambda: np.select(
            [np.isnan(found.wish), met, spring & (length > 0) & below, spring & (length > 0)],
            ["free", "", "spring", "spring_advice"],
            np.where(below, "", "advice"),
        ).astype(object),
        facts=lambda: {
            "criterion": np.where(below, found.low_by, found.wish_by),
            "length_wanted": (length, "mm"),
            "firm": (found.low, "N"),
        },
        assumed=lambda: [*band.assumed, *contact(view).assumed],
        working=lambda: [
            *force_lines(view),
            *_window_lines(found),
            Working(
                "slip_low_friction", "", "gyroscopic slip with the lower friction",
                found.minima.advice["min_gyroscopic"][2] * limits["friction_high"] / limits["friction_low"], "N",
            ),
        ],
    )  # fmt: skip


def maximum(view: View, limits: Limits) -> Result:
    """Largest preload against the upper end of the window."""
    band, found = station_band(view), window_of(view, limits)
    cap = found.maxima.firm["max_static"][2]
    state = under_load(view, band.largest, preloaded(view))
    over_cap = band.largest > cap * (1 + 1e-9)
    measure = ladder(band.largest, np.fmin(found.high, found.firm), found.firm)
    measure = np.where(over_cap, np.fmax(measure, 2.0 + band.largest / cap), measure)
    beyond = measure > 2.0 + 1e-9
    exact = contact(view).exact
    static = static_load_rating(view).value
    return Result(
        measure=measure,
        unit="N",
        observed=band.largest,
        upper=np.where(over_cap, cap, np.where(beyond, found.firm, found.high)),
        applies=ball_positions(view) & preloaded(view),
        reason=lambda: why_not(view),
        missing={
            "bearing_type": ~view.stations.choice("bearing_type").known,
            **band.missing,
            **stress_wants(view),
            "static_rating": ~exact & np.isnan(static),
        },
        variant=lambda: np.where(over_cap, "cap", np.where(exact, "", "estimate")).astype(object),
        facts=lambda: {
            "criterion": np.where(beyond, found.firm_by, found.high_by),
            "cap_share": (cap / static, "1"),
            "usual": (found.high, "N"),
        },
        assumed=lambda: [*band.assumed, *contact(view).assumed],
        working=lambda: [
            *force_lines(view),
            Working("angle", "α", "contact angle under the largest preload", state.contact_angle, "deg"),
            Working("ball_load", "Q", "load of one ball", state.ball_load, "N", "F_p/(Z sin α)"),
            Working(
                "stress", "p_m", "mean contact pressure under the largest preload",
                stress_at(view, band.largest, state), "MPa",
                "2/3 of the Hertz peak; without geometry 2/3 · 4200 (F/(5 C_0 sin α))^⅓",
            ),
            Working("method", "", "how the stress was found", np.where(exact, "Hertz", "from C_0").astype(object)),
            Working("static", "C_0", "static rating", static, "N"),
            *_window_lines(found),
        ],
    )  # fmt: skip


def window(view: View, limits: Limits) -> Result:
    """Lower end of the window against its upper end."""
    s = view.stations
    band, found = station_band(view), window_of(view, limits)
    known = ~np.isnan(dynamic_rating(view).value) & ~np.isnan(found.maxima.firm["max_stiff"][2])
    usual, usual_by = governing({**found.maxima.firm, **found.maxima.advice}, largest=False)
    by_firm = np.where(np.isnan(found.low), 0.0, found.low / found.firm)
    by_wish = np.where(np.isnan(found.wish), 0.0, found.wish / usual)
    closed = by_firm > 1.0 + 1e-9
    measure = np.where(closed, 1.0 + by_firm, np.minimum(by_wish, 2.0))
    narrow = ~closed & (by_wish > 1.0 + 1e-9)
    return Result(
        measure=np.where(known, measure, np.nan),
        unit="N",
        observed=np.where(narrow, found.wish, found.low),
        upper=np.where(closed, found.firm, np.where(narrow, usual, found.high)),
        applies=ball_positions(view) & preloaded(view),
        reason=lambda: why_not(view),
        missing={
            "bearing_type": ~s.choice("bearing_type").known,
            "preload_method": ~s.choice("preload_method").known & np.isnan(band.nominal),
            "dynamic_rating": np.isnan(dynamic_rating(view).value),
            **stress_wants(view),
            "static_rating": ~contact(view).exact & np.isnan(static_load_rating(view).value),
        },
        variant=lambda: np.select([closed, narrow, np.isnan(found.low)], ["", "narrow", "free"], "").astype(object),
        facts=lambda: {
            "lighter": np.where(
                s.choice("ball_material").is_in("silicon nitride"),
                "smaller balls or angle against slip; ",
                "silicon nitride balls (ball_material), smaller balls or angle against slip; ",
            ).astype(object),
            "minimum_by": np.where(narrow, found.wish_by, found.low_by),
            "maximum_by": np.where(closed, found.firm_by, np.where(narrow, usual_by, found.high_by)),
            "firm_minimum": (found.low, "N"),
            "firm_maximum": (found.firm, "N"),
        },
        assumed=contact(view).assumed,
        working=lambda: [*force_lines(view), *_window_lines(found)],
    )
