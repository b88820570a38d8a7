"""Chapter fit: the radial clearance that the fits and the temperatures leave."""

from collections.abc import Callable

import numpy as np

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, within
from linter.checks.shared.bodies import (
    diameters,
    hole_assumed,
    housing_body,
    ring_assumed,
    ring_body,
    shaft_body,
    shaft_hole,
    shaft_thermal,
    smoothed,
    smoothing,
)
from linter.checks.shared.clearance import delivered_clearance
from linter.checks.shared.quantities import speed_factor
from linter.checks.shared.seat_fits import housing_fit, probable_half, shaft_fit, word_array
from linter.mechanics import fit_in_use, internal_clearance, materials, press_fit
from linter.model.stations import Bools, Floats
from linter.model.wording import quantity_text


def _wants_clearance(view: View) -> Bools:
    s = view.stations
    return ~s.known("clearance_class") & ~s.known("radial_clearance")


def _has_no_group(view: View) -> Bools:
    """Rows whose clearance group has no value in ISO 5753-1 for this bearing and bore."""
    s = view.stations
    stated = s.known("clearance_class") & ~s.known("radial_clearance")
    looked_up = s.known("bore_diameter") & s.known("bearing_type")
    return stated & looked_up & np.isnan(delivered_clearance(view)[0])


_NEXT_GROUP = {"C2": "CN", "CN": "C3", "C3": "C4", "C4": "C5"}


def _more_clearance(view: View, wanted: Floats) -> Callable[[int], str]:
    """Which cell to change for more clearance before mounting, in words by row."""
    s = view.stations
    group, stated = s.choice("clearance_class"), s.known("radial_clearance")

    def make(row: int) -> str:
        word = group.words[int(group.codes[row])] if group.codes[row] >= 0 else ""
        more = quantity_text(float(wanted[row]), "um")
        if stated[row]:
            return f"Raise radial_clearance by up to {more}"
        if word in _NEXT_GROUP:
            return f"Change clearance_class from {word} to {_NEXT_GROUP[word]} (up to {more} more would be needed)"
        return f"Order up to {more} more clearance (radial_clearance)"

    return make


def miniature_play(view: View, limits: Limits) -> Result:
    """A miniature bearing keeps play on its fits (clause ``fit.miniature-play``)."""
    s = view.stations
    low, high = delivered_clearance(view)
    inner, outer = shaft_fit(view), housing_fit(view)

    def left(play: Floats, on_shaft: Floats, in_housing: Floats) -> Floats:
        return play - limits["play_share"] * (np.maximum(on_shaft, 0.0) + np.maximum(in_housing, 0.0))

    worst, mean = left(low, inner.largest, outer.largest), left(0.5 * (low + high), inner.mean, outer.mean)
    measure = ladder(np.maximum(-worst, 0.0), np.where(mean - worst > 0, mean - worst, 1e-9))
    bore = s.number("bore_diameter")
    return Result(
        measure=measure,
        unit="um",
        observed=worst,
        lower=np.zeros(view.count),
        applies=~(bore >= limits["bore_below"]) & ~s.choice("bearing_type").is_in("angular contact ball"),
        reason="the bore is not that of a miniature bearing, or the bearing has no radial play of its own",
        missing={
            "clearance_class": _wants_clearance(view),
            "radial_clearance": _has_no_group(view),
            "shaft_seat_diameter": np.isnan(inner.seat_lower) & s.known("bore_diameter"),
            "housing_seat_diameter": np.isnan(outer.seat_lower) & s.known("outside_diameter"),
        },
        facts={"lift": (np.maximum(-worst, 0.0), "um")},
        working=[
            Working("play_low", "G_r", "smallest play as delivered", low, "um"),
            Working("play_high", "G_r", "largest play as delivered", high, "um"),
            Working("shaft_largest", "", "largest interference on the shaft", inner.largest, "um"),
            Working("housing_largest", "", "largest interference in the housing", outer.largest, "um"),
            Working("play_left", "", "smallest play left", worst, "um", "play - 0.8 · interference"),
            Working("play_mean", "", "mean play left", mean, "um"),
        ],
    )


def running_clearance(view: View, limits: Limits) -> Result:
    """Radial clearance in use stays inside its window (clause ``fit.running-clearance``)."""
    s = view.stations
    bore, outside = diameters(view)
    inner, outer = shaft_fit(view), housing_fit(view)
    low, high = delivered_clearance(view)
    shaft, housing, ring = shaft_body(view), housing_body(view), ring_body(view)
    race_i, race_e = fit_in_use.mean_raceway_diameters(bore, outside, "plain")
    one = np.ones(view.count)
    growth = press_fit.press_fit(
        one, bore, shaft_hole(view), race_i, shaft.modulus, shaft.poisson, ring.modulus, ring.poisson
    ).outer_body_outside_change
    wall = s.number("housing_outer_diameter")
    wall = np.where(np.isnan(wall), np.inf, np.where(wall > outside, wall, np.nan))
    shrink = -press_fit.press_fit(
        one, outside, race_e, wall, ring.modulus, ring.poisson, housing.modulus, housing.poisson
    ).inner_body_bore_change

    t_i, t_e = s.number("shaft_temperature"), s.number("housing_temperature")
    known = ~np.isnan(t_i + t_e)
    fast = speed_factor(view) > limits["fast_from"]
    assumed_rise = np.where(fast, float(limits["inner_hotter_fast"]), float(limits["inner_hotter"]))
    ball = within(s.number("ball_diameter"))
    ball_words = s.choice("ball_material")
    ball_growth = ball_words.map(
        dict(zip(ball_words.words, materials.expansion(np.array(ball_words.words), ball=True), strict=True))
    )
    cold = press_fit.REFERENCE_TEMPERATURE
    by_part = fit_in_use.clearance_heat_loss_by_part(
        race_i, race_e, ball, ring.expansion, ball_growth, t_i - cold, t_e - cold, 0.5 * (t_i + t_e) - cold
    )
    difference = np.where(known, t_i - t_e, assumed_rise)
    plain = fit_in_use.clearance_heat_loss(ring.expansion, difference, race_e)
    heat = np.where(known & ~np.isnan(by_part), by_part, plain)
    on_shaft = np.where(np.isnan(t_i), 0.0, np.nan_to_num(shaft_thermal(view))) / 1000.0
    in_housing = press_fit.thermal_interference_change(outside, ring.expansion, t_e, housing.expansion, t_e)
    in_housing = np.where(np.isnan(t_e), 0.0, in_housing)

    share = smoothing(view, limits, "ground")
    pairs_i = [smoothed(v, share) / 1000.0 + on_shaft for v in (inner.smallest, inner.mean, inner.largest)]
    pairs_e = [v / 1000.0 + in_housing for v in (outer.smallest, outer.mean, outer.largest)]
    start = (low / 1000.0, high / 1000.0)
    tight, loose = fit_in_use.clearance_interval(
        start, (pairs_i[0], pairs_i[2]), growth, (pairs_e[0], pairs_e[2]), shrink, heat
    )
    middle, half = fit_in_use.clearance_statistical(
        (0.5 * (start[0] + start[1]), 0.5 * (start[1] - start[0])),
        (pairs_i[1], share * probable_half(inner) / 1000.0),
        growth,
        (pairs_e[1], probable_half(outer) / 1000.0),
        shrink,
        heat,
    )
    worst, best, mean, likely = (1000.0 * v for v in (tight, loose, middle, middle - half))

    def below_zero(value: Floats, towards: Floats) -> Floats:
        room = np.maximum(towards - value, 1e-9)
        return np.clip(np.maximum(-value, 0.0) / room, 0.0, 1.0)

    allowed = limits["tight_per_mm"] * bore
    seizing = limits["seizing_per_mm"] * bore
    measure = (
        0.5 * below_zero(worst, likely)
        + 0.5 * below_zero(likely, mean)
        + ladder(np.maximum(-mean, 0.0), allowed, seizing)
    )
    kind = s.choice("bearing_type")
    words = word_array(kind)
    _, ordinary = internal_clearance.radial_clearance_or_nan("C3", s.number("bore_diameter"), words)
    _, larger = internal_clearance.radial_clearance_or_nan("C4", s.number("bore_diameter"), words)
    rattles = s.choice("preload_method").is_in("none") & ~np.isnan(ordinary)
    too_loose = np.where(rattles, np.maximum(ladder(np.maximum(best, 0.0), ordinary, larger) - 1.0, 0.0), 0.0)
    is_loose = too_loose > measure
    radial = kind.is_in("deep groove ball", "cylindrical roller") | ~kind.known
    loss_i = [1000.0 * growth * np.maximum(v, 0.0) for v in (pairs_i[0], pairs_i[2])]
    loss_e = [1000.0 * shrink * np.maximum(v, 0.0) for v in (pairs_e[0], pairs_e[2])]
    return Result(
        measure=np.maximum(measure, too_loose),
        unit="um",
        observed=np.where(is_loose, best, worst),
        lower=np.zeros(view.count),
        upper=np.where(rattles, ordinary, np.nan),
        applies=radial,
        reason="the clearance of this bearing type is set by adjusting or preloading it",
        missing={
            "bearing_type": ~kind.known,
            "clearance_class": _wants_clearance(view),
            "radial_clearance": _has_no_group(view),
            "shaft_seat_diameter": np.isnan(inner.seat_lower) & s.known("bore_diameter"),
            "housing_seat_diameter": np.isnan(outer.seat_lower) & s.known("outside_diameter"),
        },
        variant=np.where(is_loose, "loose", np.where(mean < 0, "mean", "")).astype(object),
        facts={"more": _more_clearance(view, np.maximum(-worst, 0.0)), "ordinary": (ordinary, "um")},
        assumed=[
            ring_assumed(view),
            hole_assumed(view),
            Assumes(
                "shaft_temperature", assumed_rise, "K",
                "temperatures of shaft and housing not both stated; an inner ring hotter by this stands in", ~known,
            ),
            Assumes(
                "housing_outer_diameter", np.full(view.count, "thick wall", dtype=object), "",
                "not stated; a thick wall stands in", np.isnan(s.number("housing_outer_diameter")),
            ),
        ],
        working=[
            Working("clearance_delivered_min", "G_r", "smallest clearance as delivered", low, "um"),
            Working("clearance_delivered_max", "G_r", "largest clearance as delivered", high, "um"),
            Working("growth", "", "raceway growth per interference, inner ring", growth, "1", "Lamé, ring on shaft"),
            Working("shrink", "", "raceway shrink per interference, outer ring", shrink, "1", "Lamé, ring in housing"),
            Working("loss_inner_min", "", "least loss by the inner fit", loss_i[0], "um", "growth · effective fit"),
            Working("loss_inner_max", "", "largest loss by the inner fit", loss_i[1], "um", "growth · effective fit"),
            Working("loss_outer_min", "", "least loss by the outer fit", loss_e[0], "um", "shrink · fit"),
            Working("loss_outer_max", "", "largest loss by the outer fit", loss_e[1], "um", "shrink · fit"),
            Working("hotter", "ΔT", "inner ring hotter than the outer one by", difference, "K"),
            Working("loss_temperature", "", "loss by temperature", 1000.0 * heat, "um", "α ΔT D_e, or by part"),
            Working("clearance_running_min", "", "smallest clearance in use", worst, "um", "worst case"),
            Working("clearance_likely", "", "smallest likely clearance in use", likely, "um", "root sum square"),
            Working("clearance_running_mean", "", "mean clearance in use", mean, "um"),
            Working("clearance_running_max", "", "largest clearance in use", best, "um", "worst case"),
        ],
    )  # fmt: skip
