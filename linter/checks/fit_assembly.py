"""Chapter fit: how the rings get onto their seats and what holds them besides the fit."""

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
)
from linter.checks.shared.seat_fits import Fit, deviation_lines, housing_fit, shaft_fit
from linter.mechanics import fit_in_use, press_fit
from linter.model.stations import Floats


def mounting(view: View, limits: Limits) -> Result:
    """Temperature that slips the ring over its seat, or the force that presses it on (clause ``fit.mounting``)."""
    s = view.stations
    bore, outside = diameters(view)
    inner, outer = shaft_fit(view), housing_fit(view)
    room = press_fit.REFERENCE_TEMPERATURE

    def needed(fit: Fit, diameter: Floats, expansion: Floats) -> Floats:
        gap = limits["gap"] + limits["gap_per_mm"] * diameter
        hot = fit_in_use.mounting_temperature(fit.largest / 1000.0, gap / 1000.0, diameter, expansion, room)
        return np.where(fit.largest > 0, hot, np.where(np.isnan(fit.largest), np.nan, room))

    ring_hot = needed(inner, bore, ring_body(view).expansion)
    housing_hot = needed(outer, outside, housing_body(view).expansion)
    table = limits.table("temperatures")
    closure = s.choice("closure")
    limit = closure.map(
        {str(w): float(t) for w, t in zip(table["closure"], table["limit"], strict=True) if w},
        default=float(limits["open_limit"]),
    )
    by_press = bore <= limits["cold_up_to"]
    ring_measure = np.where(by_press, 0.0, ladder(ring_hot - room, limit - room))
    housing_limit = np.full(view.count, float(limits["housing_limit"]))
    cold_ring = outside <= limits["cold_up_to"]
    housing_measure = np.where(cold_ring | ~(outer.largest > 0), 0.0, ladder(housing_hot - room, housing_limit - room))
    raceway, _ = fit_in_use.mean_raceway_diameters(bore, outside, "groove")
    shaft, ring = shaft_body(view), ring_body(view)
    pressure = press_fit.contact_pressure(
        inner.largest / 1000.0,
        bore,
        shaft_hole(view),
        raceway,
        shaft.modulus,
        shaft.poisson,
        ring.modulus,
        ring.poisson,
    )
    force = press_fit.pressing_force(pressure, bore, within(s.number("ring_width")), limits["friction"])
    on_ring = ring_measure >= housing_measure
    return Result(
        measure=np.where(np.isnan(ring_hot), np.nan, np.fmax(ring_measure, housing_measure)),
        unit="degC",
        observed=np.where(on_ring, ring_hot, housing_hot),
        upper=np.where(on_ring, limit, housing_limit),
        missing={
            "shaft_seat_diameter": np.isnan(inner.seat_lower) & s.known("bore_diameter"),
            "housing_material": (outer.largest > 0) & ~cold_ring & ~s.known("housing_material"),
        },
        withheld={
            name: by_press & (inner.largest > 0) & np.isnan(force) & ~np.isnan(outer.largest) & ~s.known(name)
            for name in ("ring_width", "shaft_material")
        },
        variant=lambda: np.where(
            on_ring, np.where(by_press & (inner.largest > 0), "press", "ring"), "housing"
        ).astype(object),
        assumed=lambda: [
            ring_assumed(view),
            hole_assumed(view),
            Assumes("closure", np.full(view.count, "open", dtype=object), "",
                    "not stated; the limit of an open bearing stands in", ~closure.known & ~by_press),
        ],
        working=lambda: [
            Working("fit_largest", "", "largest interference on the shaft", inner.largest, "um"),
            Working("ring_hot", "t", "temperature at which it slips on", ring_hot, "degC", "20 + (U_max + gap)/(α d)"),
            Working("ring_limit", "", "highest temperature for this bearing", limit, "degC"),
            Working("housing_largest", "", "largest interference in the housing", outer.largest, "um"),
            Working("housing_hot", "t", "temperature at which the housing slips over", housing_hot, "degC"),
            Working("pressure", "p", "seat pressure, largest interference", pressure, "MPa", "Lamé"),
            Working("force", "F", "force to press the ring on", force, "N", "µ π d B p"),
        ],
    )  # fmt: skip


def adhesive_gap(view: View, limits: Limits) -> Result:
    """The bond of a ring held by adhesive has a gap to fill (clause ``fit.adhesive-gap``)."""
    s = view.stations
    inner, outer = shaft_fit(view), housing_fit(view)
    on_shaft = s.choice("inner_ring_retention").is_in("adhesive")
    in_housing = s.choice("outer_ring_retention").is_in("adhesive")

    def stands(fit: Fit) -> Floats:
        narrow = (limits["least_gap"] + fit.largest) / limits["least_gap"]
        wide = ladder(np.maximum(-fit.smallest, 0.0), limits["usual_gap"], limits["widest_gap"]) - 1.0
        return np.maximum(np.maximum(narrow, wide), 0.0)

    measures = np.where(on_shaft, stands(inner), 0.0), np.where(in_housing, stands(outer), 0.0)
    first = np.nan_to_num(measures[0]) >= np.nan_to_num(measures[1])
    first = np.where(on_shaft & in_housing, first, on_shaft)
    fit = Fit(*(np.where(first, a, b) for a, b in zip(inner, outer, strict=True)))
    wide = -fit.smallest > limits["usual_gap"]
    wide = wide & (-fit.largest >= limits["least_gap"])
    return Result(
        measure=np.maximum(*measures),
        unit="um",
        observed=np.where(wide, 0.0 - fit.smallest, 0.0 - fit.largest),
        lower=np.full(view.count, float(limits["least_gap"])),
        upper=np.full(view.count, float(limits["usual_gap"])),
        applies=on_shaft | in_housing,
        reason="no ring is held by adhesive",
        missing={
            "shaft_seat_diameter": on_shaft & np.isnan(inner.seat_lower) & s.known("bore_diameter"),
            "housing_seat_diameter": in_housing & np.isnan(outer.seat_lower) & s.known("outside_diameter"),
        },
        variant=lambda: np.char.add(np.where(first, "shaft", "housing"), np.where(wide, "_wide", "")).astype(object),
        facts=lambda: {"more": (np.maximum(limits["least_gap"] + fit.largest, 0.0), "um")},
        working=lambda: [
            *deviation_lines(fit),
            Working("fit_smallest", "", "smallest interference", fit.smallest, "um"),
            Working("fit_largest", "", "largest interference", fit.largest, "um"),
            Working("gap_narrow", "", "narrowest gap", 0.0 - fit.largest, "um"),
            Working("gap_wide", "", "widest gap", 0.0 - fit.smallest, "um"),
        ],
    )
