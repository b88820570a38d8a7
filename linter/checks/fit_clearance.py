"""Chapter fit: the radial clearance that the fits, the temperatures and the speed leave."""

from collections.abc import Callable
from typing import NamedTuple

import numpy as np
from attrs import evolve

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, within
from linter.checks.shared.bodies import (
    diameters,
    hole_assumed,
    housing_body,
    ring_assumed,
    ring_body,
    ring_speed,
    rotation_loss,
    shaft_body,
    shaft_hole,
    shaft_thermal,
    smoothed,
    smoothing,
)
from linter.checks.shared.clearance import delivered_clearance
from linter.checks.shared.quantities import ball_diameter, pitch_diameter, speed_factor
from linter.checks.shared.seat_fits import Fit, housing_fit, probable_half, row_words, shaft_fit
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


def _below_zero(value: Floats, towards: Floats) -> Floats:
    """How far a value has sunk below zero on the way from ``towards``: 0 not at all, 1 all the way."""
    room = np.maximum(towards - value, 1e-9)
    return np.clip(np.maximum(-value, 0.0) / room, 0.0, 1.0)


def miniature_play(view: View, limits: Limits) -> Result:
    """A miniature bearing keeps play on its fits (clause ``fit.miniature-play``)."""
    s = view.stations
    low, high = delivered_clearance(view)
    inner, outer = shaft_fit(view), housing_fit(view)

    def left(play: Floats, on_shaft: Floats, in_housing: Floats) -> Floats:
        return play - limits["play_share"] * (np.maximum(on_shaft, 0.0) + np.maximum(in_housing, 0.0))

    worst, mean = left(low, inner.largest, outer.largest), left(0.5 * (low + high), inner.mean, outer.mean)
    measure = ladder(np.maximum(-worst, 0.0), np.where(mean - worst > 0, mean - worst, 1e-9))
    share = limits.get("likely_share")
    if share is not None:
        middle, half = fit_in_use.clearance_statistical(
            (0.5 * (low + high), 0.5 * (high - low)),
            (inner.mean, probable_half(inner)), limits["play_share"],
            (outer.mean, probable_half(outer)), limits["play_share"], 0.0,
        )  # fmt: skip
        likely = middle - half
        measure = share * _below_zero(worst, likely) + (1.0 - share) * _below_zero(likely, middle)
        measure = measure + ladder(np.maximum(-middle, 0.0), np.where(half > 0, half, 1e-9))
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
        facts=lambda: {"lift": (np.maximum(-worst, 0.0), "um")},
        working=lambda: [
            Working("play_low", "G_r", "smallest play as delivered", low, "um"),
            Working("play_high", "G_r", "largest play as delivered", high, "um"),
            Working("shaft_largest", "", "largest interference on the shaft", inner.largest, "um"),
            Working("housing_largest", "", "largest interference in the housing", outer.largest, "um"),
            Working("play_left", "", "smallest play left", worst, "um", "play - 0.8 · interference"),
            Working("play_mean", "", "mean play left", mean, "um"),
        ],
    )


class _Seats(NamedTuple):
    """What both seats do to the clearance, arrays of shape (rows,): raceways, changes per interference, fits [mm]."""

    race_i: Floats
    race_e: Floats
    growth: Floats
    shrink: Floats
    inner: tuple[Floats, Floats, Floats]
    outer: tuple[Floats, Floats, Floats]
    inner_half: Floats
    outer_half: Floats


def _seats(view: View, limits: Limits, race_i: Floats, race_e: Floats, lost_by_speed: Floats) -> _Seats:
    """Seats with raceways of these diameters [mm]; ``lost_by_speed`` [mm] is taken off the inner interference."""
    s = view.stations
    bore, outside = diameters(view)
    inner, outer = shaft_fit(view), housing_fit(view)
    shaft, housing, ring = shaft_body(view), housing_body(view), ring_body(view)
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
    on_shaft = np.where(np.isnan(t_i), 0.0, np.nan_to_num(shaft_thermal(view))) / 1000.0 - lost_by_speed
    in_housing = press_fit.thermal_interference_change(outside, ring.expansion, t_e, housing.expansion, t_e)
    in_housing = np.where(np.isnan(t_e), 0.0, in_housing)
    share = smoothing(view, limits, "ground")

    def used(fit: Fit, part: Floats, change: Floats) -> tuple[Floats, Floats, Floats]:
        low, middle, high = (smoothed(v, part) / 1000.0 + change for v in (fit.smallest, fit.mean, fit.largest))
        return low, middle, high

    return _Seats(
        race_i, race_e, growth, shrink, used(inner, share, on_shaft), used(outer, one, in_housing),
        share * probable_half(inner) / 1000.0, probable_half(outer) / 1000.0,
    )  # fmt: skip


class _Walk(NamedTuple):
    """Clearance in use [um]: worst and best case, mean, and the smallest likely one."""

    worst: Floats
    best: Floats
    mean: Floats
    likely: Floats


def _walk(view: View, seats: _Seats, lost: Floats) -> _Walk:
    """From the clearance as delivered to that in use; ``lost`` [mm] goes to temperature and speed.

    Of the shape of ``lost``: (rows,), or several cases of the rows.
    """
    low, high = (v / 1000.0 for v in delivered_clearance(view))
    tight, loose = fit_in_use.clearance_interval(
        (low, high),
        (seats.inner[0], seats.inner[2]),
        seats.growth,
        (seats.outer[0], seats.outer[2]),
        seats.shrink,
        lost,
    )
    middle, half = fit_in_use.clearance_statistical(
        (0.5 * (low + high), 0.5 * (high - low)),
        (seats.inner[1], seats.inner_half),
        seats.growth,
        (seats.outer[1], seats.outer_half),
        seats.shrink,
        lost,
    )
    return _Walk(*(1000.0 * v for v in (tight, loose, middle, middle - half)))


def _used_up(walk: _Walk, bore: Floats, limits: Limits) -> Floats:
    """0.5 where the likely smallest clearance reaches zero, 1 where the mean does, one more at each preload allowed."""
    marks = (limits["tight_per_mm"], limits.get("heating_per_mm"), limits["seizing_per_mm"])
    return (
        0.5 * _below_zero(walk.worst, walk.likely)
        + 0.5 * _below_zero(walk.likely, walk.mean)
        + ladder(np.maximum(-walk.mean, 0.0), *(mark * bore for mark in marks if mark is not None))
    )


def _stated_heat(view: View, race_i: Floats, race_e: Floats) -> tuple[Floats, Floats]:
    """Clearance lost to the stated temperatures, by part, and with the difference of the rings alone [mm]."""
    s = view.stations
    ring, ball_words = ring_body(view), s.choice("ball_material")
    t_i, t_e = s.number("shaft_temperature"), s.number("housing_temperature")
    ball_growth = ball_words.map(
        dict(zip(ball_words.words, materials.expansion(np.array(ball_words.words), ball=True), strict=True))
    )
    cold = press_fit.REFERENCE_TEMPERATURE
    by_part = fit_in_use.clearance_heat_loss_by_part(
        race_i, race_e, within(s.number("ball_diameter")), ring.expansion, ball_growth,
        t_i - cold, t_e - cold, 0.5 * (t_i + t_e) - cold,
    )  # fmt: skip
    return by_part, fit_in_use.clearance_heat_loss(ring.expansion, t_i - t_e, race_e)


def running_clearance(view: View, limits: Limits) -> Result:
    """Radial clearance in use stays inside its window (clause ``fit.running-clearance`` of the releases to 2026.3)."""
    s = view.stations
    bore, outside = diameters(view)
    race_i, race_e = fit_in_use.mean_raceway_diameters(bore, outside, "plain")
    known = ~np.isnan(s.number("shaft_temperature") + s.number("housing_temperature"))
    fast = speed_factor(view) > limits["fast_from"]
    assumed_rise = np.where(fast, float(limits["inner_hotter_fast"]), float(limits["inner_hotter"]))
    difference = np.where(known, s.number("shaft_temperature") - s.number("housing_temperature"), assumed_rise)
    by_part, _ = _stated_heat(view, race_i, race_e)
    plain = fit_in_use.clearance_heat_loss(ring_body(view).expansion, difference, race_e)
    heat = np.where(known & ~np.isnan(by_part), by_part, plain)
    seats = _seats(view, limits, race_i, race_e, np.zeros(view.count))
    walk = _walk(view, seats, heat)
    return _told(view, seats, _InUse(walk, _used_up(walk, bore, limits), difference, heat, known, None, 0.0))


def clearance_in_use(view: View, limits: Limits) -> Result:
    """Radial clearance in use stays inside its window (clause ``fit.running-clearance``).

    Raceways lie D_w inside and outside the pitch circle where the balls are stated, so that an evenly warm bearing of
    steel keeps its clearance; the inner raceway grows by rotation. Where temperatures are not stated the seats are
    judged evenly warm; a difference assumed by the speed factor counts from ``assumed_from`` to ``assumed_measure``.
    """
    s = view.stations
    bore, outside = diameters(view)
    by_rule = fit_in_use.mean_raceway_diameters(bore, outside, "plain")
    ball, pitch, ring = ball_diameter(view), pitch_diameter(view), ring_body(view)
    inside = np.isfinite(ball) & (pitch - ball > bore) & (pitch + ball < outside)
    race_i, race_e = np.where(inside, pitch - ball, by_rule[0]), np.where(inside, pitch + ball, by_rule[1])
    speed = ring_speed(view)
    spin = press_fit.diameter_change_by_rotation(race_i, bore, race_i, speed, ring.density, ring.modulus, ring.poisson)
    spin = np.nan_to_num(spin)
    lost_by_speed = np.where(speed > 0, np.nan_to_num(rotation_loss(view)), 0.0) / 1000.0
    seats = _seats(view, limits, race_i, race_e, lost_by_speed)

    known = ~np.isnan(s.number("shaft_temperature") + s.number("housing_temperature"))
    place = np.searchsorted(np.asarray(limits["hotter_from"]), np.nan_to_num(speed_factor(view)), side="left")
    assumed_rise = np.asarray(limits["hotter_by"], dtype=float)[place]
    difference = np.where(known, s.number("shaft_temperature") - s.number("housing_temperature"), assumed_rise)
    by_part, plain = _stated_heat(view, race_i, race_e)
    stated = np.where(np.isnan(by_part), plain, by_part)
    hotter = fit_in_use.clearance_heat_loss(ring.expansion, assumed_rise, race_e)
    heat = np.where(known, stated, hotter)
    walks = _walk(view, seats, np.array([spin, heat + spin]))
    even, measure = (_used_up(_Walk(*walk), bore, limits) for walk in zip(*walks, strict=True))
    walk = _Walk(*(part[1] for part in walks))
    slight = np.where(measure > limits["assumed_from"], limits["assumed_measure"], 1.0)
    measure = np.where(known, measure, np.maximum(even, np.minimum(measure, slight)))
    found = _told(view, seats, _InUse(walk, measure, difference, heat, known, 1000.0 * spin, 1.0))
    ruled = Assumes(
        "ball_diameter", 0.5 * (race_e - race_i), "mm",
        "not stated, or not that of this bearing; raceways by the rule for its kind stand in", ~inside,
    )  # fmt: skip
    return evolve(found, assumed=lambda: [*found.assumed, ruled])


class _InUse(NamedTuple):
    """The clearance in use as it is judged, arrays of shape (rows,).

    ``difference`` [K] and ``heat`` [mm] between the rings, stated where ``known``; ``spin`` [um] lost to rotation. A
    loosest case of the largest C3 counts as ``loose``.
    """

    walk: _Walk
    measure: Floats
    difference: Floats
    heat: Floats
    known: Bools
    spin: Floats | None
    loose: float


def _told(view: View, seats: _Seats, found: _InUse) -> Result:
    walk, measure, difference, heat, known, spin, loose = found
    s = view.stations
    inner, outer = shaft_fit(view), housing_fit(view)
    low, high = delivered_clearance(view)
    kind = s.choice("bearing_type")
    words = row_words(kind)
    _, ordinary = internal_clearance.radial_clearance_or_nan("C3", s.number("bore_diameter"), words)
    _, larger = internal_clearance.radial_clearance_or_nan("C4", s.number("bore_diameter"), words)
    rattles = s.choice("preload_method").is_in("none") & ~np.isnan(ordinary)
    rattle = ladder(np.maximum(walk.best, 0.0), ordinary, larger) - 1.0 + loose
    too_loose = np.where(rattles, np.maximum(rattle, 0.0), 0.0)
    is_loose = (too_loose > measure) & (too_loose > loose)
    radial = kind.is_in("deep groove ball", "cylindrical roller") | ~kind.known
    loss_i = [1000.0 * seats.growth * np.maximum(v, 0.0) for v in (seats.inner[0], seats.inner[2])]
    loss_e = [1000.0 * seats.shrink * np.maximum(v, 0.0) for v in (seats.outer[0], seats.outer[2])]
    by_speed = [] if spin is None else [Working("loss_speed", "", "loss by growth of the inner raceway at speed", spin,
                                                "um", "turning ring, plane stress")]  # fmt: skip
    if spin is not None:
        by_speed.append(
            Working("raceway_inner", "D_i", "inner raceway", seats.race_i, "mm", "D_pw - D_w, else by rule")
        )
        by_speed.append(
            Working("raceway_outer", "D_e", "outer raceway", seats.race_e, "mm", "D_pw + D_w, else by rule")
        )
    return Result(
        measure=np.maximum(measure, too_loose),
        unit="um",
        observed=np.where(is_loose, walk.best, walk.worst),
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
        variant=lambda: np.where(
            is_loose, "loose", np.where(walk.mean < 0, np.where(known | (measure > 1.0), "mean", "assumed"), "")
        ).astype(object),
        facts=lambda: {"more": _more_clearance(view, np.maximum(-walk.worst, 0.0)), "ordinary": (ordinary, "um")},
        assumed=lambda: [
            ring_assumed(view),
            hole_assumed(view),
            Assumes(
                "shaft_temperature", difference, "K",
                "temperatures of shaft and housing not both stated; an inner ring hotter by this stands in", ~known,
            ),
            Assumes(
                "housing_outer_diameter", np.full(view.count, "thick wall", dtype=object), "",
                "not stated; a thick wall stands in", np.isnan(s.number("housing_outer_diameter")),
            ),
        ],
        working=lambda: [
            Working("clearance_delivered_min", "G_r", "smallest clearance as delivered", low, "um"),
            Working("clearance_delivered_max", "G_r", "largest clearance as delivered", high, "um"),
            Working("growth", "", "raceway growth per interference, inner ring", seats.growth, "1",
                    "Lamé, ring on shaft"),
            Working("shrink", "", "raceway shrink per interference, outer ring", seats.shrink, "1",
                    "Lamé, ring in housing"),
            Working("loss_inner_min", "", "least loss by the inner fit", loss_i[0], "um", "growth · effective fit"),
            Working("loss_inner_max", "", "largest loss by the inner fit", loss_i[1], "um", "growth · effective fit"),
            Working("loss_outer_min", "", "least loss by the outer fit", loss_e[0], "um", "shrink · fit"),
            Working("loss_outer_max", "", "largest loss by the outer fit", loss_e[1], "um", "shrink · fit"),
            Working("hotter", "ΔT", "inner ring hotter than the outer one by", difference, "K"),
            Working("loss_temperature", "", "loss by temperature", 1000.0 * heat, "um", "α ΔT D_e, or by part"),
            *by_speed,
            Working("clearance_running_min", "", "smallest clearance in use", walk.worst, "um", "worst case"),
            Working("clearance_likely", "", "smallest likely clearance in use", walk.likely, "um", "root sum square"),
            Working("clearance_running_mean", "", "mean clearance in use", walk.mean, "um"),
            Working("clearance_running_max", "", "largest clearance in use", walk.best, "um", "worst case"),
        ],
    )  # fmt: skip
