"""Chapter preload: what temperature, external load and speed do to a preloaded pair."""

import numpy as np

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, shared
from linter.checks.shared.contacts import bearing_of, contact, under_load
from linter.checks.shared.growth import half_stated, lengthening, states
from linter.checks.shared.preload_band import band, station_band
from linter.checks.shared.preload_criteria import ball_positions, preloaded, why_not
from linter.checks.shared.quantities import speed_factor
from linter.checks.shared.two_sides import sinking
from linter.mechanics import balance, ball_bearing, preload
from linter.model.stations import Bools, Floats


@shared
def rigid_rows(view: View) -> Bools:
    """Stations of rigidly preloaded machines."""
    return view.stations.choice("preload_method").is_in("rigid")


@shared
def rigid_state(view: View) -> ball_bearing.AxialState:
    """Bearings of rigid pairs under the smallest preload."""
    return under_load(view, station_band(view).smallest, rigid_rows(view))


def _pair_known(view: View) -> Bools:
    return view.to_machines(contact(view).exact, "all")


def thermal(view: View, limits: Limits) -> Result:
    """Change of the preload with temperature, constant force against fixed position."""
    s = view.stations
    found = band(view)
    rigid = view.to_machines(rigid_rows(view))
    rate = view.to_machines(s.size("spring_rate").nominal)
    state = under_load(view, station_band(view).nominal, rigid_rows(view))
    constant = np.where(state.deflection > 0.0, station_band(view).nominal / state.deflection**1.5, np.nan)
    first, last = view.pair(constant)
    count = view.machine_count
    worst = np.full(count, np.nan)
    after, growth = worst.copy(), worst.copy()
    name = np.full(count, "", dtype=object)
    loses = np.zeros(count, dtype=bool)
    for at in states(view):
        by_spring = np.maximum(found.nominal - rate * at.growth * lengthening(view), 0.0)
        ends = (
            preload.rigid_preload_after_growth(found.nominal, first, last, at.growth),
            preload.rigid_preload_after_growth(found.nominal, first, last, -at.growth),
        )
        by_pair = np.where(np.abs(ends[0] - found.nominal) >= np.abs(ends[1] - found.nominal), *ends)
        force = np.where(rigid, by_pair, by_spring)
        change = np.divide(
            np.abs(force - found.nominal), found.nominal, out=np.full(count, np.nan), where=found.nominal > 0
        )
        leads = ~(worst >= change) & ~np.isnan(change)
        lost = np.where(rigid, ends[1] <= 0.0, force <= 0.0) | np.where(rigid, ends[0] <= 0.0, False)
        loses |= lost & ~np.isnan(change)
        worst, after, growth = (
            np.where(leads, new, old) for new, old in ((change, worst), (force, after), (at.growth, growth))
        )
        name[leads] = at.name
    measure = ladder(worst, limits["change_near"], limits["change_far"])
    measure = np.where(loses, np.fmax(measure, limits["loose_measure"]), measure)
    known = ~np.isnan(growth)
    pair = _pair_known(view)
    return Result(
        measure=measure,
        unit="%",
        observed=100.0 * worst,
        upper=np.full(count, 100.0 * limits["change_near"]),
        applies=view.to_machines(ball_positions(view) & preloaded(view), "all"),
        reason=lambda: view.to_machines(why_not(view)),
        withheld=half_stated(view),
        missing={
            **found.missing,
            **{
                parameter: ~known & ~view.to_machines(s.known(parameter))
                for parameter in ("bearing_span", "shaft_material", "housing_material")
            },
            "shaft_temperature": np.logical_and.reduce([np.isnan(at.shaft) for at in states(view)]),
            "housing_temperature": np.logical_and.reduce([np.isnan(at.housing) for at in states(view)]),
            "spring_rate": ~rigid & np.isnan(rate),
            "ball_count": rigid & ~pair & ~view.to_machines(s.known("ball_count"), "all"),
            "ball_diameter": rigid & ~pair & ~view.to_machines(s.known("ball_diameter"), "all"),
            "contact_angle": rigid & ~pair & np.isnan(view.to_machines(contact(view).free_angle, "max")),
        },
        variant=lambda: np.where(rigid, np.where(loses, "loose", "rigid"), "").astype(object),
        facts=lambda: {
            "state": name,
            "grows": np.where(
                growth < 0, "the shaft outgrows the housing by", "the housing outgrows the shaft by"
            ).astype(object),
            "growth_um": (1000.0 * np.abs(growth), "um"),
        },
        assumed=found.assumed,
        working=lambda: [
            Working("force_nominal", "F_p", "preload at assembly", found.nominal, "N"),
            *(Working(f"growth_{a.name}", "Δl", f"growth of housing over shaft, {a.name}", a.growth, "mm",
                      "l (α_h Δϑ_h - α_s Δϑ_s)") for a in states(view)),
            Working("rate", "c", "spring rate", np.where(rigid, np.nan, rate), "N/mm"),
            Working("constant_first", "K_1", "first bearing, F = K δ^1.5", first, "N/mm^1.5", "F_p/δ^1.5"),
            Working("constant_last", "K_2", "last bearing, F = K δ^1.5", last, "N/mm^1.5", "F_p/δ^1.5"),
            Working("state", "", "state that decides", name),
            Working("after", "", "preload in that state", after, "N", "spring: F_p - c Δl; rigid: both curves"),
            Working("change", "", "change against the preload at assembly", 100.0 * worst, "%"),
        ],
    )  # fmt: skip


def unload(view: View, limits: Limits) -> Result:
    """External axial load against the one at which the other bearing of the pair is unloaded."""
    s = view.stations
    found = band(view)
    rigid = view.to_machines(rigid_rows(view))
    axial = np.abs(s.number("axial_load"))
    stated = view.to_machines(axial, "max", known=True)
    weight = balance.STANDARD_GRAVITY * view.to_machines(s.number("rotor_mass"))
    vertical = view.to_machines(s.choice("shaft_orientation").is_in("vertical"))
    pull = np.where(np.isnan(stated) & vertical, weight, stated)
    pair = _pair_known(view) & rigid
    limit = np.where(rigid, limits["equal_pair_factor"] * found.smallest, found.smallest)
    rows = np.flatnonzero(pair & (found.smallest > 0))
    if rows.size:
        state = rigid_state(view)
        ends = (view.starts[rows], view.starts[rows] + view.station_count[rows] - 1)
        together = state.deflection[ends[0]] + state.deflection[ends[1]]
        lift_off = [ball_bearing.axial_force(together, bearing_of(view, end))[0] for end in ends]
        limit = limit.copy()
        limit[rows] = np.minimum(*lift_off)
    near = limit / limits["disturbance_factor"]
    stands_in = rigid & ~pair
    measure = ladder(pull, near, limit)
    measure = np.where((pull > 0) & (limit == 0), np.inf, measure)
    return Result(
        measure=measure,
        unit="N",
        observed=pull,
        upper=np.where(pull > limit, limit, near),
        applies=view.to_machines(ball_positions(view) & preloaded(view), "all"),
        reason=lambda: view.to_machines(why_not(view)),
        missing={
            **found.missing,
            "axial_load": np.isnan(stated) & ~vertical,
            "rotor_mass": np.isnan(stated) & vertical & np.isnan(weight),
        },
        variant=lambda: np.where(
            pull > limit, np.where(rigid, "rigid", ""), np.where(rigid, "rigid_near", "near")
        ).astype(object),
        facts=lambda: {
            "preload_wanted": (found.smallest * pull / np.where(near > 0, near, np.nan), "N"),
            "limit": (limit, "N"),
        },
        assumed=lambda: [
            *found.assumed,
            Assumes(
                "ball_count",
                np.full(view.machine_count, "two equal bearings", dtype=object),
                "",
                f"internal geometry not stated; lift-off at {limits['equal_pair_factor']} times the preload stands in",
                stands_in,
            ),
        ],
        working=lambda: [
            Working("axial", "F_a", "largest axial load", pull, "N", "stated, else the weight of a vertical rotor"),
            Working("force_smallest", "F_p min", "smallest preload", found.smallest, "N"),
            Working("lift_off", "", "load that unloads the other bearing", limit, "N",
                    "spring: F_p; rigid: F_1(δ_1 + δ_2) from the load-deflection curves"),
            Working("near", "", "with the factor for disturbances", near, "N", "lift-off / factor"),
        ],
    )  # fmt: skip


def rigid_speed(view: View, limits: Limits) -> Result:
    """A rigid pair at a high speed factor, where its preload grows with speed and temperature."""
    s = view.stations
    observed = speed_factor(view)
    method = s.choice("preload_method")
    hybrid = s.choice("ball_material").is_in("silicon nitride")
    factor = np.where(hybrid, limits["hybrid_factor"], 1.0)
    near, far = limits["near"] * factor, limits["far"] * factor
    return Result(
        measure=ladder(observed, near, far),
        unit="mm.r/min",
        observed=observed,
        upper=near,
        applies=ball_positions(view) & (method.is_in("rigid") | ~method.known),
        reason=lambda: np.where(
            ball_positions(view), "the pair is not preloaded rigidly", "preload of roller bearings has other rules"
        ).astype(object),
        facts=lambda: {"speed_at_limit": (s.number("speed_max") * near / observed, "r/min")},
        working=lambda: [
            Working("speed_factor", "n·d_m", "speed factor", observed, "mm.r/min", "n (d + D)/2"),
            Working("limit_low", "", "from here on a spring is the rule", near, "mm.r/min", "limit · factor"),
            Working("limit_high", "", "from here on a rigid pair is not run", far, "mm.r/min", "limit · factor"),
        ],
    )  # fmt: skip


def clearance_angle(view: View, limits: Limits) -> Floats:
    """Free contact angle of deep groove bearings [deg], NaN where clearance or geometry is not known."""
    at = contact(view)
    return np.where(at.exact & ~at.assumed[0].rows, at.free_angle, np.nan)


def angle(view: View, limits: Limits) -> Result:
    """Contact angle that the clearance in use leaves to an axially preloaded deep groove bearing."""
    s = view.stations
    at = contact(view)
    deep = s.choice("bearing_type").is_in("deep groove ball")
    found = clearance_angle(view, limits)
    near, far = float(limits["angle_near"]), float(limits["angle_far"])
    count = view.count
    needed = 1000.0 * ball_bearing.clearance_of_angle(np.full(count, near), at.distance)
    return Result(
        measure=sinking(found, np.full(count, near), np.full(count, far)),
        unit="deg",
        observed=found,
        lower=np.full(count, near),
        applies=(deep | ~s.choice("bearing_type").known) & preloaded(view),
        reason=lambda: np.where(
            deep, "the bearings are not preloaded", "the contact angle is built into the bearing"
        ).astype(object),
        missing={
            "bearing_type": ~s.choice("bearing_type").known,
            "preload_method": ~s.choice("preload_method").known & np.isnan(station_band(view).nominal),
            "clearance_class": deep & np.isnan(at.clearance),
            "ball_count": deep & ~s.known("ball_count"),
            "ball_diameter": deep & np.isnan(at.distance),
        },
        variant=lambda: np.where(at.clearance <= 0.0, "none", "").astype(object),
        facts=lambda: {"clearance_wanted": (needed, "um")},
        assumed=lambda: at.assumed[1:2],
        working=lambda: [
            Working("clearance", "G_r", "radial clearance in use", 1000.0 * at.clearance, "um", "less losses"),
            Working("distance", "A", "distance of the groove centres", at.distance, "mm", "(f_i + f_e - 1) D_w"),
            Working("free_angle", "α_0", "contact angle without load", found, "deg", "cos α_0 = 1 - G_r/(2 A)"),
            Working("wanted", "", "clearance in use for the wanted angle", needed, "um", "2 A (1 - cos α)"),
        ],
    )  # fmt: skip
