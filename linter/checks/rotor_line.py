"""Chapter rotor: what follows from the rotor that the table describes by sections and discs."""

from collections.abc import Callable

import numpy as np
from attrs import frozen

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, within
from linter.checks.shared.line_loads import line_loads
from linter.checks.shared.shaft_line import Stiffness, bearing_stiffness, line_assumed, shaft_line
from linter.checks.shared.two_sides import sinking
from linter.mechanics.rotor_beam import critical_speeds
from linter.model.stations import Bools, Floats
from linter.model.wording import quantity_text


@frozen(eq=False)
class Criticals:
    """Critical speeds [r/min] of each machine on its softest and its stiffest bearings, shape (machines, 2)."""

    low: Floats
    high: Floats
    backward: Floats
    soft_a: Floats
    soft_b: Floats
    stiff_a: Floats
    stiff_b: Floats


def _criticals(view: View, limits: Limits, asked: Bools, found: Stiffness) -> Criticals:
    """First two forward and the first backward critical speeds of the described rotors that are asked for."""
    line = shaft_line(view)
    share = np.where(found.computed, limits["seat_share"], 1.0)
    soft, stiff = view.pair(share * found.least), view.pair(found.largest)
    low, high = (np.full((view.machine_count, 2), np.nan) for _ in range(2))
    backward = np.full(view.machine_count, np.nan)
    chosen = asked[line.rows]
    rows = line.rows[chosen]
    if rows.size:
        discs = type(line.discs)(*(v[chosen] for v in line.discs))

        def on(a: Floats, b: Floats, spin: float) -> Floats:
            whole = line.on(np.where(chosen, a[line.rows], np.nan), np.where(chosen, b[line.rows], np.nan))
            part = type(whole)(*(v[chosen] for v in whole))
            return critical_speeds(part, line.density[chosen], discs, spin)

        low[rows], high[rows] = on(*soft, 1.0), on(*stiff, 1.0)
        backward[rows] = on(*soft, -1.0)[:, 0]
    return Criticals(low, high, backward, *soft, *stiff)


def critical_speed(view: View, limits: Limits) -> Result:
    """Running range against the bending critical speeds: of a stated analysis, else of the described rotor."""
    s = view.stations
    speed = within(view.to_machines(s.number("speed_max")))
    stated = within(view.to_machines(s.number("first_critical_speed")))
    line, found = shaft_line(view), bearing_stiffness(view)
    computed = np.isnan(stated) & line.described
    mass = np.full(view.machine_count, np.nan)
    mass[line.rows] = line.mass
    rotor = within(view.to_machines(s.number("rotor_mass")))
    no_discs = view.to_machines(s.text("rotor_discs")) == ""
    legible = line.problem == ""
    light = computed & legible & ((mass < limits["mass_share"] * rotor) | (no_discs & np.isnan(rotor)))
    at = _criticals(view, limits, line.described & ~light, found)
    low = np.where(computed[:, np.newaxis], at.low, np.stack([stated, np.full_like(stated, np.inf)], axis=-1))
    high = np.where(computed[:, np.newaxis], at.high, np.stack([stated, np.full_like(stated, np.inf)], axis=-1))
    slow = np.where(computed, np.fmin(within(view.to_machines(s.number("speed_operating"))), speed), speed)

    below, above = low > speed[:, np.newaxis], high < slow[:, np.newaxis]
    with np.errstate(invalid="ignore"):
        apart = np.where(
            below, low / speed[:, np.newaxis] - 1.0, np.where(above, 1.0 - high / slow[:, np.newaxis], 0.0)
        )
    apart = np.where(np.isnan(low + high), np.nan, apart)
    nearest = np.argmin(np.where(np.isnan(apart), np.inf, apart), axis=-1)[:, np.newaxis]

    def of_nearest(values: Floats | Bools) -> Floats:
        return np.asarray(np.take_along_axis(values, nearest, axis=-1)[:, 0], dtype=np.float64)

    margin, is_above, is_below = of_nearest(apart), of_nearest(above) > 0, of_nearest(below) > 0
    one_low, one_high = of_nearest(low), of_nearest(high)
    critical = np.where(is_below, one_low, np.where(is_above, one_high, np.clip(speed, one_low, one_high)))
    near, far, least = (np.full(view.machine_count, float(limits[n])) for n in ("near", "far", "least"))
    sunk = sinking(margin, near, far, least)
    passed = above[:, 0]
    clear = margin >= near * (1 - 1e-9)
    measure = np.where(clear, np.where(passed, limits["supercritical_measure"], sunk), sunk + 0.5)
    guessed = computed & view.to_machines(found.computed, "any")
    measure = np.where(guessed, np.minimum(measure, limits["guessed_most"]), measure)
    variant = np.select(
        [clear & passed, clear, is_above, ~is_below & computed], ["_supercritical", "", "_above", "_inside"], ""
    ).astype(object)
    variant = np.where(computed, "computed" + variant, [str(word).lstrip("_") for word in variant])
    unknown = computed & np.isnan(one_low + one_high) & legible & ~light
    no_stiffness = view.to_machines(np.isnan(found.least + found.largest), "any")
    span = view.to_machines(s.size("bearing_span").nominal)
    first = view.to_machines(s.number("first_bearing_position"))
    return Result(
        measure=measure,
        unit="r/min",
        observed=critical,
        lower=np.where(is_above, np.nan, speed * (1.0 + near)),
        upper=np.where(is_above, slow * (1.0 - near), np.nan),
        missing={
            "first_critical_speed": np.isnan(stated) & (~line.described | _not_computed(view)),
            "shaft_sections": computed & line.faulty["shaft_sections"] & ~_not_computed(view),
            "first_bearing_position": computed & legible & np.isnan(first),
            "bearing_span": computed & legible & np.isnan(span),
            "rotor_discs": light | (computed & line.faulty["rotor_discs"]),
            "radial_stiffness": unknown & no_stiffness,
        },
        variant=lambda: variant.astype(object),
        facts=lambda: {
            "not_assessed": np.where(computed & ~light, line.problem, np.where(
                light & ~np.isnan(mass / rotor), "the sections and discs do not make up the rotor_mass", ""
            )).astype(object),
            "margin": (100.0 * margin, "%"),
            "speed_below": (np.where(is_above, np.nan, critical / (1.0 + near)), "r/min"),
            "far_margin": (100.0 * far, "%"),
            "near_margin": (100.0 * near, "%"),
            "which": np.where(nearest[:, 0] == 0, "first", "second").astype(object),
            "band": _band(one_low, one_high),
            "range": _band(slow, speed),
        },
        assumed=lambda: (*line_assumed(view, computed), _stiffness_assumed(view, found, computed, limits)),
        working=lambda: [
            Working("speed", "n", "highest speed", speed, "r/min"),
            Working("critical", "n_c", "critical speed nearest to it", critical, "r/min"),
            Working("stated", "", "first bending critical speed, as stated", stated, "r/min"),
            Working("mass", "m", "mass of the described rotor", mass, "kg", "sections and discs"),
            Working("soft_a", "k", "stiffness of the first bearing, least", at.soft_a, "N/mm"),
            Working("soft_b", "k", "stiffness of the last bearing, least", at.soft_b, "N/mm"),
            Working("stiff_a", "k", "stiffness of the first bearing, largest", at.stiff_a, "N/mm"),
            Working("stiff_b", "k", "stiffness of the last bearing, largest", at.stiff_b, "N/mm"),
            *(
                Working(f"{end}_{mode}", "n_c", f"{which} forward critical speed, {bearings} bearings",
                        _finite(values[:, number]), "r/min", "beam elements, spin = whirl")
                for number, (mode, which) in enumerate((("first", "first"), ("second", "second")))
                for end, values, bearings in (("soft", at.low, "softest"), ("stiff", at.high, "stiffest"))
            ),
            Working("backward", "n_c", "first backward critical speed, softest bearings", _finite(at.backward), "r/min",
                    "unbalance does not excite it"),
            Working("ratio", "n_c/n", "critical over running speed", critical / speed, "1", "n_c/n"),
            Working("apart", "", "margin, basis running speed", 100.0 * margin, "%", "|n_c - n|/n"),
        ],
    )  # fmt: skip


def bearing_loads(view: View, limits: Limits) -> Result:
    """Stated radial load of a position against what the described rotor puts on it at rest."""
    s, line, found = view.stations, shaft_line(view), line_loads(view)
    taken = s.assumed.get("radial_load")
    stated = within(s.number("radial_load"), closed=True)
    if taken is not None:
        stated = np.where(taken.rows, np.nan, stated)
    computed = found.weight + found.forces
    short = np.maximum(computed - stated, 0.0) / np.where(computed > 0.0, computed, 1.0)
    measure = np.where(np.isnan(stated), 0.0 * computed, ladder(short, limits["near"], limits["far"]))
    described = view.to_stations(line.described)
    legible = view.to_stations(line.problem == "") & (found.problem == "")
    lacking = described & legible
    out = described & view.to_stations(_not_computed(view))
    names = {
        "first_bearing_position": s.number("first_bearing_position"),
        "bearing_span": s.size("bearing_span").nominal,
    }
    return Result(
        measure=measure,
        unit="N",
        observed=np.where(np.isnan(stated), computed, stated),
        lower=computed * (1.0 - limits["near"]),
        applies=described & ~out,
        reason=lambda: np.where(described, view.to_stations(line.problem), "the table does not describe the rotor"),
        missing={
            **{name: lacking & np.isnan(values) for name, values in names.items()},
            "shaft_orientation": lacking & ~s.choice("shaft_orientation").known,
            **{name: described & view.to_stations(rows) for name, rows in line.faulty.items()},
            "shaft_forces": described & (found.problem != ""),
        },
        variant=lambda: np.select(
            [np.isnan(stated) & ~found.stated, np.isnan(stated)], ["weight", "derived"], ""
        ).astype(object),
        facts=lambda: {
            "not_assessed": np.where(found.problem != "", found.problem, view.to_stations(line.problem)).astype(object),
            "computed": (computed, "N"),
            "short": (100.0 * short, "%"),
        },
        assumed=lambda: [
            Assumes(a.parameter, view.to_stations(a.values), a.unit, a.reason, view.to_stations(a.rows))
            for a in line_assumed(view, line.described) if a.parameter == "shaft_material"
        ],
        working=lambda: [
            Working("weight", "F_G", "reaction to the weight", found.weight, "N", "sections and discs"),
            Working("outside", "F", "reaction to shaft_forces", found.forces, "N", "magnitudes added"),
            Working("computed_load", "F_r", "static load, computed", computed, "N", "F_G + F"),
            Working("stated", "F_r", "radial load, as stated", stated, "N"),
            Working("turning", "F_U", "force that turns with the unbalance", found.unbalance, "N",
                    "U ω² at the centre of mass"),
            Working("slope", "", "slope of the shaft", 60.0 * np.rad2deg(found.slope), "arcmin"),
        ],
    )  # fmt: skip


def _not_computed(view: View) -> Bools:
    """Machines whose rotor is not computed, however it is described: not two bearings, or a shaft that stands still."""
    outer = view.to_machines(view.stations.choice("rotating_ring").is_in("outer"))
    return np.asarray((view.station_count != 2) | outer)


def _finite(values: Floats) -> Floats:
    return np.where(np.isinf(values), np.nan, values)


def _band(low: Floats, high: Floats) -> Callable[[int], str]:
    """Both ends in words by row; one figure where they show as the same."""

    def make(row: int) -> str:
        return " to ".join(dict.fromkeys(quantity_text(float(end[row]), "r/min") for end in (low, high)))

    return make


def _stiffness_assumed(view: View, found: Stiffness, computed: Bools, limits: Limits) -> Assumes:
    share = f"{100.0 * limits['seat_share']:.0f} %"
    reason = f"not stated; that of the bearing under its preload stands in, from {share} (the seats yield) to all of it"
    values = limits["seat_share"] * view.to_machines(found.least, "min", known=True)
    return Assumes("radial_stiffness", values, "N/mm", reason, computed & view.to_machines(found.computed, "any"))
