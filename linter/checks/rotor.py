"""Chapter rotor: unbalance and bending of the rotor that the seats carry."""

from collections.abc import Callable

import numpy as np

from linter.checks.shared.base import Limits, Result, View, Working, ladder, within
from linter.checks.shared.preload_band import station_band
from linter.checks.shared.quantities import dynamic_rating, speed_factor, static_load_rating
from linter.checks.shared.seat_fits import (
    Fit,
    deviation_lines,
    fixed_radial_load,
    housing_fit,
    rotor_unbalance,
    shaft_fit,
    unbalance_force,
    unbalance_ratio,
)
from linter.checks.shared.two_sides import sinking
from linter.mechanics import balance
from linter.model.stations import Bools, Floats
from linter.model.wording import quantity_text


def unbalance(view: View, limits: Limits) -> Result:
    """Force of the residual unbalance on each bearing against its preload and rating."""
    s = view.stations
    force = unbalance_force(view)
    preload = np.where(station_band(view).nominal > 0, station_band(view).smallest, np.nan)
    rating = within(dynamic_rating(view).value)
    by_preload = ladder(force, limits["preload_near"] * preload, limits["preload_far"] * preload, preload)
    by_rating = ladder(force, limits["rating_near"] * rating, limits["rating_far"] * rating)
    measure = np.fmax(by_preload, by_rating)
    leads = ~(by_rating > by_preload) & ~np.isnan(by_preload)
    upper = np.where(leads, limits["preload_near"] * preload, limits["rating_near"] * rating)
    grade_known = ~np.isnan(s.number("balance_grade"))
    unknown = np.isnan(force)
    grade = 1e-3 * rotor_unbalance(view) / within(s.number("rotor_mass")) * within(s.number("speed_max")) * np.pi / 30.0
    return Result(
        measure=measure,
        unit="N",
        observed=force,
        upper=upper,
        missing={
            "residual_unbalance": unknown & ~grade_known,
            "balance_grade": unknown & ~grade_known,
            "rotor_mass": unknown & np.isnan(s.number("rotor_mass")),
            "dynamic_rating": np.isnan(measure) & ~unknown,
        },
        variant=lambda: np.where(leads, "", "rating").astype(object),
        facts=lambda: {
            "finer": _finer(rotor_unbalance(view) * upper / force, grade * upper / force),
            "preload_wanted": (force / limits["preload_near"], "N"),
        },
        assumed=station_band(view).assumed,
        working=lambda: [
            Working("speed", "n", "highest speed", s.number("speed_max"), "r/min"),
            Working("mass", "m", "rotor mass", s.number("rotor_mass"), "kg"),
            Working("grade", "G", "balance grade that the unbalance amounts to", grade, "mm/s", "U ω/m"),
            Working("residual", "U", "residual unbalance of the rotor", rotor_unbalance(view), "g.mm",
                    "as stated, else 1000 G m/ω"),
            Working("force", "F_U", "unbalance force on the bearing", force, "N", "U ω²/number of bearings"),
            Working("preload", "F_p min", "smallest preload", preload, "N"),
            Working("by_preload", "F_U/F_p", "share of the preload", force / preload, "1", "F_U/F_p"),
            Working("rating", "C", "dynamic rating", rating, "N"),
            Working("by_rating", "F_U/C", "share of the dynamic rating", force / rating, "1", "F_U/C"),
            Working("static", "C_0", "static rating", static_load_rating(view).value, "N"),
            Working("fixed", "F_r", "load of fixed direction", fixed_radial_load(view), "N"),
            Working("to_fixed", "F_U/F_r", "unbalance over fixed load", force / fixed_radial_load(view)),
        ],
    )  # fmt: skip


def _finer(residual: Floats, grade: Floats) -> Callable[[int], str]:
    """What to put on the drawing, in words by row: the residual unbalance, and the grade where it is known."""

    def make(row: int) -> str:
        text = f"residual_unbalance {quantity_text(float(residual[row]), 'g.mm')}"
        if not np.isnan(grade[row]):
            text += f" (balance_grade {quantity_text(float(grade[row]), 'mm/s')})"
        return text

    return make


def balance_grade(view: View, limits: Limits) -> Result:
    """Balance grade against the one usual at this speed factor and tolerance class."""
    return _balance_grade(view, limits)


def balance_by_residual(view: View, limits: Limits) -> Result:
    """The same; no stated grade stands in for a stated residual unbalance whose mass is not known."""
    return _balance_grade(view, limits, residual_first=True)


def _balance_grade(view: View, limits: Limits, *, residual_first: bool = False) -> Result:
    s = view.stations
    table = limits.table("grades")
    speed = within(view.to_machines(s.number("speed_max")))
    mass = within(view.to_machines(s.number("rotor_mass")))
    stated = within(view.to_machines(s.number("balance_grade")))
    residual = within(view.to_machines(s.number("residual_unbalance")))
    computed = within(1e-3 * residual / mass * speed * np.pi / 30.0)
    by_grade = np.isnan(residual) if residual_first else np.isnan(computed)
    observed = np.where(by_grade, stated, computed)
    factor = view.to_machines(speed_factor(view), "max", known=True)
    precise = view.to_machines(s.choice("tolerance_class").is_in("P4", "P2"), "any")
    word = np.where(precise, "P4 P2", "other").astype(object)
    near, far = (np.full(view.machine_count, np.nan) for _ in range(2))
    for index, above in enumerate(table["above"]):
        rows = (factor > above) & (word == table["tolerance_class"][index])
        near[rows], far[rows] = table["near"][index], table["far"][index]
    machines = np.full(view.machine_count, "", dtype=object)
    for value, kinds in zip(limits.table("kinds")["grade"], limits.table("kinds")["machines"], strict=True):
        machines[near == value] = kinds
    shaken = view.to_machines(unbalance_ratio(view), "max")
    harmless = (shaken <= limits["small_effect"]) & (factor <= limits["slow_up_to"])
    measure = ladder(observed, near, far, limits["grade_step"] * far)
    return Result(
        measure=np.where(harmless, np.minimum(measure, 2.0), measure),
        unit="mm/s",
        observed=observed,
        upper=near,
        missing={
            "balance_grade": np.isnan(observed) & np.isnan(residual),
            "rotor_mass": np.isnan(observed) & ~np.isnan(residual) & np.isnan(mass),
            "bore_diameter": np.isnan(factor) & ~view.to_machines(s.known("bore_diameter"), "all"),
            "outside_diameter": np.isnan(factor) & ~view.to_machines(s.known("outside_diameter"), "all"),
        },
        variant=lambda: np.where(by_grade, "", "computed").astype(object),
        facts=lambda: {
            "machines": machines,
            "far_end": (far, "mm/s"),
            "eccentricity": (balance.permissible_eccentricity(near, speed), "um"),
            "unbalance_wanted": (balance.permissible_unbalance(near, mass, speed), "g.mm"),
        },
        working=lambda: [
            Working("speed", "n", "highest speed", speed, "r/min"),
            Working("speed_factor", "n·d_m", "largest speed factor of the machine", factor, "mm.r/min", "n (d + D)/2"),
            Working("precise", "", "tolerance class", np.where(precise, "P4 or P2", "").astype(object)),
            Working("residual", "U", "residual unbalance", residual, "g.mm"),
            Working("mass", "m", "rotor mass", mass, "kg"),
            Working("grade", "G", "balance grade", observed, "mm/s", "as stated, or U ω/m"),
            Working("permitted", "e_per", "eccentricity that the grade permits",
                    balance.permissible_eccentricity(observed, speed), "um", "1000 G/ω"),
            Working("limit_near", "", "usual grade, near end", near, "mm/s", "table by speed factor"),
            Working("limit_far", "", "usual grade, far end", far, "mm/s", "table by speed factor"),
        ],
    )  # fmt: skip


def seat_eccentricity(view: View, limits: Limits) -> Result:
    """Shift of the rotor in a loose seat between balancing and assembly, against the eccentricity its balance permits.

    Half the clearance of the seat of the ring that turns, and half its total run-out, against U/m or 1000 G/ω.
    """
    return _seat_eccentricity(view, limits)


def seat_shift(view: View, limits: Limits) -> Result:
    """The same for the likely clearance; run-out counts only where the rotor is balanced between centres.

    At most ``harmless_most`` while the force of the shifted rotor stays within what ``rotor.unbalance`` allows.
    """
    return _seat_eccentricity(view, limits, likely=True)


def seat_shift_by_residual(view: View, limits: Limits) -> Result:
    """The same; no stated grade stands in for a stated residual unbalance whose mass is not known."""
    return _seat_eccentricity(view, limits, likely=True, residual_first=True)


def _harmless(view: View, limits: Limits, eccentricity: Floats) -> Bools:
    """Rows where the force of such an eccentricity [um] stays small against preload and rating."""
    s = view.stations
    speed = within(s.number("speed_max"))
    force = balance.unbalance_force(within(s.number("rotor_mass")) * eccentricity, speed) / view.to_stations(
        view.station_count
    )
    preload = np.where(station_band(view).nominal > 0, station_band(view).smallest, np.nan)
    allowed = np.fmin(limits["preload_near"] * preload, limits["rating_near"] * within(dynamic_rating(view).value))
    return np.asarray(force <= allowed)


def _seat_eccentricity(view: View, limits: Limits, *, likely: bool = False, residual_first: bool = False) -> Result:
    s = view.stations
    ring, method = s.choice("rotating_ring"), s.choice("balancing_method")
    inner, outer = ring.is_in("inner"), ring.is_in("outer")
    fits = shaft_fit(view), housing_fit(view)
    fit = Fit(*(np.where(inner, a, np.where(outer, b, np.nan)) for a, b in zip(*fits, strict=True)))
    runout = 1000.0 * np.where(inner, s.number("shaft_seat_runout"), s.number("housing_seat_runout"))
    runout = np.where(ring.known, within(runout, closed=True), np.nan)
    asked = method.is_in("between centres") if likely else np.full(view.count, fill_value=True)
    by_runout = np.where(asked, 0.5 * np.nan_to_num(runout), 0.0)
    half: Floats = 0.5 * np.sqrt((fit.seat_upper - fit.seat_lower) ** 2 + (fit.ring_upper - fit.ring_lower) ** 2)
    tightest: Floats = fit.mean - half if likely else fit.smallest
    clearance = np.round(np.maximum(-tightest, 0.0), 6)
    shift: Floats = np.asarray(0.5 * clearance + by_runout, dtype=np.float64)
    usual_shift = 0.5 * np.maximum(-fit.mean, 0.0) + by_runout
    mass, residual = within(s.number("rotor_mass")), within(s.number("residual_unbalance"))
    grade, speed = within(s.number("balance_grade")), within(s.number("speed_max"))
    by_grade = np.isnan(residual if residual_first else residual / mass)
    permitted = np.where(by_grade, balance.permissible_eccentricity(grade, speed), residual / mass)
    upper = limits["share"] * permitted
    measure = ladder(shift, upper, permitted)
    measure = np.where(usual_shift <= upper, np.minimum(measure, 2.0), measure)
    if likely:
        harmless = _harmless(view, limits, shift + permitted)
        measure = np.where(harmless, np.minimum(measure, limits["harmless_most"]), measure)
    found = measure > 1.0 + 1e-9
    tight, assembled = fit.smallest >= 0.0, method.is_in("as assembled")
    room = np.maximum(2.0 * (upper - by_runout), 0.0)
    seat_unknown = np.isnan(fit.seat_lower)

    def edge(row: int) -> str:
        if inner[row]:
            return f"lower deviation at least {quantity_text(float(fit.ring_upper[row] - room[row]), 'um')}"
        return f"upper deviation at most {quantity_text(float(fit.ring_lower[row] + room[row]), 'um')}"

    return Result(
        measure=measure,
        unit="um",
        observed=shift,
        upper=upper,
        applies=~(tight | assembled),
        reason=lambda: np.where(
            tight, "the ring that turns is tight on its seat", "the rotor is balanced in its own bearings"
        ).astype(object),
        missing={
            "rotating_ring": ~ring.known,
            "bore_diameter": inner & ~s.known("bore_diameter"),
            "outside_diameter": outer & ~s.known("outside_diameter"),
            "shaft_seat_diameter": inner & seat_unknown & s.known("bore_diameter"),
            "housing_seat_diameter": outer & seat_unknown & s.known("outside_diameter"),
            "tolerance_class": ring.known & ~s.known("tolerance_class"),
            "balance_grade": np.isnan(permitted) & np.isnan(grade) & np.isnan(residual),
            "rotor_mass": np.isnan(permitted) & ~np.isnan(residual) & np.isnan(mass),
            "speed_max": np.isnan(permitted) & np.isnan(speed) & ~np.isnan(grade),
            "shaft_seat_runout": asked & inner & np.isnan(runout) & ~found,
            "housing_seat_runout": asked & outer & np.isnan(runout) & ~found,
            "balancing_method": ~method.known & found,
        },
        withheld={
            "shaft_seat_runout": asked & inner & np.isnan(runout) & found,
            "housing_seat_runout": asked & outer & np.isnan(runout) & found,
        },
        variant=lambda: np.select(
            [~asked, np.isnan(runout), by_runout > upper], ["seats", "bare", "runout"], ""
        ).astype(object),
        facts=lambda: {
            "part": np.where(inner, "shaft", "housing").astype(object),
            "edge": edge,
            "room": (room, "um"),
            "runout_allowed": (2.0 * upper / 1000.0, "mm"),
            "share": (np.full(view.count, 100.0 * limits["share"]), "%"),
        },
        working=lambda: [
            Working("ring", "", "ring that turns", ring.texts()),
            *deviation_lines(fit, "its seat"),
            Working("clearance", "s", "likely largest clearance" if likely else "largest clearance", clearance, "um",
                    "mean less √(T_1² + T_2²)/2" if likely else "smallest interference, reversed"),
            Working("runout", "t_3", "total run-out of the seat", runout, "um"),
            Working("shift", "e", "shift of the rotor, loosest pair", shift, "um", "s/2 + t_3/2"),
            Working("usual_shift", "", "shift at the mean fit", usual_shift, "um", "mean s/2 + t_3/2"),
            Working("speed", "n", "highest speed", speed, "r/min"),
            Working("permitted", "e_per", "eccentricity that the balance permits", permitted, "um", "U/m, or 1000 G/ω"),
            Working("allowed", "", "share of it for the seat", upper, "um", "share · e_per"),
        ],
    )  # fmt: skip


def critical_speed(view: View, limits: Limits) -> Result:
    """Running speed against the first bending critical speed that is stated."""
    s = view.stations
    speed = within(view.to_machines(s.number("speed_max")))
    critical = within(view.to_machines(s.number("first_critical_speed")))
    ratio = critical / speed
    apart = np.abs(ratio - 1.0)
    near, far, least = (np.full(view.machine_count, float(limits[n])) for n in ("near", "far", "least"))
    margin = sinking(apart, near, far, least)
    above = ratio < 1.0
    clear = apart >= near * (1 - 1e-9)
    measure = np.where(clear, np.where(above, limits["supercritical_measure"], margin), margin + 0.5)
    low, high = speed * (1.0 - near), speed * (1.0 + near)
    return Result(
        measure=measure,
        unit="r/min",
        observed=critical,
        lower=np.where(above, np.nan, high),
        upper=np.where(above, low, np.nan),
        variant=lambda: np.select([clear & above, above], ["supercritical", "above"], "").astype(object),
        facts=lambda: {
            "margin": (100.0 * apart, "%"),
            "speed_below": (critical / (1.0 + near), "r/min"),
            "far_margin": (100.0 * far, "%"),
            "near_margin": (100.0 * near, "%"),
        },
        working=lambda: [
            Working("speed", "n", "highest speed", speed, "r/min"),
            Working("critical", "n_c", "first bending critical speed, as stated", critical, "r/min"),
            Working("ratio", "n_c/n", "critical over running speed", ratio, "1", "n_c/n"),
            Working("apart", "", "margin, basis running speed", 100.0 * apart, "%", "|n_c - n|/n"),
        ],
    )  # fmt: skip
