"""Chapter fit: what the inner fit is in use, what it does to the ring, and the clearance that remains."""

import numpy as np

from linter.checks.shared.base import Limits, Result, View, Working, ladder, within
from linter.checks.shared.bodies import (
    RING_MATERIAL,
    diameters,
    hole_assumed,
    ring_assumed,
    ring_body,
    ring_speed,
    rotation_loss,
    roughness_assumed,
    shaft_body,
    shaft_heat,
    shaft_hole,
    shaft_thermal,
    smoothed,
    smoothing,
)
from linter.checks.shared.quantities import speed_factor
from linter.checks.shared.retention import clearance_share, retention_cap
from linter.checks.shared.seat_classes import advice_facts, recommended
from linter.checks.shared.seat_fits import (
    deviation_lines,
    fixed_radial_load,
    inner_load_rotation,
    rotation_wants,
    shaft_fit,
    unbalance_force,
)
from linter.mechanics import fit_in_use, press_fit
from linter.model.stations import Floats


def inner_hold(view: View, limits: Limits) -> Result:
    """The effective interference of an inner ring with rotating load stays positive in use (``fit.inner-hold``)."""
    s = view.stations
    fit, load = shaft_fit(view), inner_load_rotation(view, limits)
    bore, _ = diameters(view)
    width = within(s.number("ring_width"))
    share = smoothing(view, limits, "turned")
    radial = fixed_radial_load(view) + np.nan_to_num(unbalance_force(view))
    load_loss = 1000.0 * fit_in_use.load_loosening(bore, width, radial)
    by_bearing = np.isnan(s.number("shaft_temperature"))
    above = np.maximum(shaft_heat(view) - press_fit.REFERENCE_TEMPERATURE, 0.0)
    heat_loss = np.where(
        by_bearing,
        1000.0 * fit_in_use.heat_loosening(bore, above, limits["heat_share"], ring_body(view).expansion),
        0.0,
    )
    thermal = shaft_thermal(view)
    speed_loss = rotation_loss(view)
    reserve = np.where(speed_factor(view) > limits["fast_from"], float(limits["reserve"]), 0.0)
    loss = load_loss + heat_loss - thermal + speed_loss + reserve
    left = [smoothed(value, share) - loss for value in (fit.smallest, fit.mean, fit.largest)]
    loose = clearance_share(fit.smallest, fit.largest)
    creep = np.maximum(clearance_share(left[0], left[2]) - loose, 0.0)
    advice = recommended(view, limits, "shaft")
    ordinary = limits.get("published_losses")
    contained = (fit.seat_lower >= advice.lower) & (ordinary is not None)
    if ordinary is not None:
        part = np.where(contained, float(ordinary), 1.0)
        counted = part * (load_loss + heat_loss) - thermal + speed_loss + reserve
        ends = (part * smoothed(v, share) + (1.0 - part) * v - counted for v in (fit.smallest, fit.largest))
        creep = np.maximum(clearance_share(*ends) - loose, 0.0)
    measure = np.minimum(creep, retention_cap(s.choice("inner_ring_retention"), limits))
    held = measure < creep
    needed = loss / share
    enough = advice.fit_smallest > fit.smallest
    return Result(
        measure=measure,
        unit="um",
        observed=left[0],
        lower=np.zeros(view.count),
        applies=~load.is_in("stationary") & ~(fit.largest <= 0),
        reason=lambda: np.where(
            load.is_in("stationary"),
            "the load stands still relative to the inner ring, which need not be held",
            "the inner ring is loose before any loss, which fit.load-rotation judges",
        ).astype(object),
        missing={
            **rotation_wants(view, limits),
            "shaft_seat_diameter": np.isnan(fit.seat_lower) & s.known("bore_diameter"),
            "radial_load": np.isnan(fixed_radial_load(view)),
            "shaft_temperature": np.isnan(shaft_heat(view)),
        },
        variant=lambda: np.select(
            [held, contained & ~(creep > 0) & (left[0] < 0), enough], ["held", "published", ""], "near"
        ).astype(object),
        facts=lambda: {
            **advice_facts(advice),
            "lift": (np.maximum(-left[0], 0.0) / share, "um"),
            "needed": (needed, "um"),
            "finish": np.where(
                share < fit_in_use.smoothing_factor(bore, "ground"), ", grind the seat (shaft_seat_roughness)", ""
            ).astype(object),
            "creeping": (100.0 * np.minimum(creep, 1.0), "%"),
            "loose": (100.0 * np.minimum(loose, 1.0), "%"),
        },
        assumed=lambda: [ring_assumed(view), hole_assumed(view), roughness_assumed(view, "turned")],
        working=lambda: [
            Working("fit_smallest", "U_min", "smallest interference at the limits", fit.smallest, "um"),
            Working("fit_mean", "U", "mean interference", fit.mean, "um"),
            Working("fit_largest", "U_max", "largest interference at the limits", fit.largest, "um"),
            *deviation_lines(fit, ring="the bore"),
            Working("smoothing", "", "share left after smoothing", share, "1", "d/(d + 2) ground, d/(d + 3) turned"),
            Working("radial", "F_r", "radial load with unbalance", radial, "N"),
            Working("load_loss", "", "lost under load", load_loss, "um", "larger of 0.08 √(d F_r/B) and 0.02 F_r/B"),
            Working("heat_loss", "", "lost to the warmer ring", heat_loss, "um", "share · α · d · ΔT"),
            Working("thermal", "", "change by unlike expansion", thermal, "um", "d (α_shaft - α_ring)(T - 20)"),
            Working("speed_loss", "", "lost by rotation", speed_loss, "um", "growth of ring less growth of shaft"),
            Working("reserve", "", "reserve at high speed", reserve, "um"),
            Working("fit_in_use_smallest", "", "smallest interference in use", left[0], "um", "smoothed less losses"),
            Working("fit_in_use_mean", "", "mean interference in use", left[1], "um"),
            Working("fit_in_use_largest", "", "largest interference in use", left[2], "um"),
        ],
    )


def inner_stress(view: View, limits: Limits) -> Result:
    """Hoop stress of the inner ring and interference ratio (clause ``fit.inner-stress``)."""
    s = view.stations
    fit = shaft_fit(view)
    bore, outside = diameters(view)
    raceway, _ = fit_in_use.mean_raceway_diameters(bore, outside, "groove")
    shaft, ring = shaft_body(view), ring_body(view)
    share = smoothing(view, limits, "ground")
    standing = smoothed(fit.largest, share)
    warm = np.where(np.isnan(shaft_thermal(view)), 0.0, np.maximum(shaft_thermal(view), 0.0))
    speed = ring_speed(view)

    def hoop(interference: Floats) -> tuple[Floats, Floats]:
        state = press_fit.press_fit(
            interference / 1000.0, bore, shaft_hole(view), raceway,
            shaft.modulus, shaft.poisson, ring.modulus, ring.poisson,
        )  # fmt: skip
        return state.outer_body_interface_hoop, state.pressure

    at_rest, pressure = hoop(standing + warm)
    turning, _ = hoop(smoothed(fit.mean, share) + warm - rotation_loss(view))
    spin, _ = press_fit.stress_by_rotation(bore, bore, raceway, speed, ring.density, ring.poisson)
    at_speed = turning + spin
    table = limits.table("hoop")
    kind = s.choice("ring_material")
    low, high = np.full(view.count, np.nan), np.full(view.count, np.nan)
    for word, near, far in zip(table["ring_material"], table["low"], table["high"], strict=True):
        rows = kind.is_in(str(word)) | (~kind.known & (word == RING_MATERIAL))
        low[rows], high[rows] = near, far
    ratio = fit.largest / (1000.0 * bore)
    by_ratio = ladder(np.maximum(ratio, 0.0), limits["largest_ratio"], limits["largest_ratio"])
    by_rest = ladder(np.maximum(at_rest, 0.0), low, high)
    by_speed = ladder(np.maximum(at_speed, 0.0), low, high)
    by_fit = np.maximum(by_rest, by_ratio)
    advice = recommended(view, limits, "shaft")
    miniature = (bore < limits["bore_below"]) & (fit.largest <= limits["miniature_press"] * (1 + 1e-9))
    published = ((fit.seat_upper <= advice.upper) | miniature) & (by_fit > 1.0)
    fit_measure = np.where(by_fit > 1.0, by_fit + 1.0, by_fit)  # the first step above the limit is kept for these:
    fit_measure = np.where(published, np.minimum(fit_measure, limits["published"]), fit_measure)
    speed_measure = np.where(by_speed > 1.0, by_speed + 1.0, by_speed)
    fast = speed_measure > fit_measure
    stress = np.where(fast, at_speed, at_rest)
    return Result(
        measure=np.maximum(fit_measure, speed_measure),
        unit="MPa",
        observed=stress,
        upper=low,
        missing={"shaft_seat_diameter": np.isnan(fit.seat_lower) & s.known("bore_diameter")},
        variant=lambda: np.where(
            fast, "speed", np.where(published, "published", np.where(by_ratio > by_rest, "ratio", ""))
        ).astype(object),
        facts=lambda: {
            **advice_facts(advice),
            "not_assessed": np.where(
                kind.known & np.isnan(low), "the rulebook has no hoop stress limit for this ring material", ""
            ).astype(object),
            "far": (high, "MPa"),
            "allowed": (1000.0 * limits["largest_ratio"] * bore, "um"),
        },
        assumed=lambda: [ring_assumed(view), hole_assumed(view), roughness_assumed(view, "ground")],
        working=lambda: [
            Working("largest", "U_max", "largest interference at the limits", fit.largest, "um"),
            Working("ratio", "U_max/d", "interference over bore", 1000.0 * ratio, "1", "in thousandths"),
            Working("effective", "U_eff", "after smoothing, with unlike expansion", standing + warm, "um"),
            Working("raceway", "D_i", "mean raceway diameter of the inner ring", raceway, "mm", "1.05 (4 d + D)/5"),
            Working("pressure", "p", "seat pressure at standstill", pressure, "MPa", "Lamé, two materials"),
            Working("at_rest", "σ_t", "hoop stress at standstill", at_rest, "MPa", "p (1 + (d/D_i)²)/(1 - (d/D_i)²)"),
            Working(
                "turning", "", "hoop stress of the fit at speed", turning, "MPa", "with the interference left at speed"
            ),
            Working("spin", "", "hoop stress of rotation at the bore", spin, "MPa", "rotating ring"),
        ],
    )


def thin_ring(view: View, limits: Limits) -> Result:
    """A ring with a very thin wall is not pressed on (clause ``fit.thin-ring``)."""
    s = view.stations
    fit = shaft_fit(view)
    bore, outside = diameters(view)
    by_rule, _ = fit_in_use.mean_raceway_diameters(bore, outside, "groove")
    by_balls = s.number("pitch_diameter") - s.number("ball_diameter")
    raceway = np.where(np.isnan(by_balls), by_rule, by_balls)
    wall = 0.5 * (raceway - bore)
    measure = ladder(np.maximum(fit.largest, 0.0), limits["transition"], limits["light_press"])
    return Result(
        measure=measure,
        unit="um",
        observed=fit.largest,
        upper=np.full(view.count, float(limits["transition"])),
        applies=~(wall >= limits["wall_below"]),
        reason="the wall of the inner ring is thick enough for a press fit",
        missing={"shaft_seat_diameter": np.isnan(fit.seat_lower) & s.known("bore_diameter")},
        facts=lambda: {"lift": (np.maximum(fit.largest - limits["transition"], 0.0), "um")},
        working=lambda: [
            Working(
                "raceway",
                "",
                "diameter at the bottom of the inner raceway",
                raceway,
                "mm",
                "D_pw - D_w, else by d and D",
            ),
            Working("wall", "", "wall of the inner ring under the raceway", wall, "mm", "(raceway - d)/2"),
            Working("fit_smallest", "", "smallest interference", fit.smallest, "um"),
            Working("fit_largest", "", "largest interference", fit.largest, "um"),
        ],
    )
