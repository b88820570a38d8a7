"""What the preload of a ball bearing must exceed and what it must stay below, by criterion."""

from collections.abc import Mapping
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.checks.shared.base import Limits, View, either, within
from linter.checks.shared.contacts import contact, force_at_stress
from linter.checks.shared.lubrication import viscosity
from linter.checks.shared.preload_band import station_band
from linter.checks.shared.quantities import (
    ball_count,
    ball_diameter,
    dynamic_rating,
    is_ball,
    mean_diameter,
    pitch_diameter,
    speed_factor,
    static_load_rating,
)
from linter.checks.shared.seat_fits import of_material, unbalance_force
from linter.mechanics import balance, boundary, kinematics, materials, preload_bounds
from linter.model.stations import Bools, Floats

LEAST = 1e-9
"""N; stands for a minimum where no criterion binds, so that a ratio to it can be taken."""


def ball_positions(view: View) -> Bools:
    """Rows that are ball bearings, or do not state their type."""
    return is_ball(view) | ~view.stations.choice("bearing_type").known


def preloaded(view: View) -> Bools:
    """Rows of machines that are preloaded, or of which it is not known."""
    band = station_band(view)
    return ~((band.nominal == 0.0) & view.stations.choice("preload_method").is_in("none"))


def why_not(view: View) -> NDArray[Any]:
    """Why a clause about the preload of ball bearings does not apply."""
    return np.where(
        ball_positions(view), "the bearings are not preloaded", "preload of roller bearings has other rules"
    ).astype(object)


@frozen(eq=False)
class Criteria:
    """Criteria of one side of the window: key to (words, symbol and formula, force [N])."""

    firm: Mapping[str, tuple[str, str, Floats]]
    advice: Mapping[str, tuple[str, str, Floats]]
    told: Mapping[str, tuple[str, str, Floats]] = field(factory=dict)


def _kept(view: View, key: Any, make: Any) -> Any:
    """Something that depends on the view and on limits, computed once for the same limits."""
    if key not in view.cache:
        view.cache[key] = make()
    return view.cache[key]


def _axial_pull(view: View) -> Floats:
    """Axial force that may pull a spring-loaded ring off [N].

    The largest one stated at the machine, else the weight of a vertical rotor, 0 for a horizontal one.
    """
    s = view.stations
    stated = np.maximum.reduceat(np.nan_to_num(np.abs(s.number("axial_load")), nan=-1.0), view.starts)
    stated = view.to_stations(stated)
    weight = balance.STANDARD_GRAVITY * within(s.number("rotor_mass"))
    orientation = s.choice("shaft_orientation")
    by_weight = np.where(orientation.is_in("vertical"), weight, np.where(orientation.is_in("horizontal"), 0.0, np.nan))
    return np.where(stated < 0.0, by_weight, stated)


def minima(view: View, limits: Limits) -> Criteria:
    """What the preload must exceed.

    Firm: published minimum loads and lift-off. Advice: slip of the balls and usual practice. A minimum load that the
    radial load already gives does not bind.
    """
    names = (
        "least_share", "load_factor", "disturbance_factor", "friction_high", "bore_low",
    )  # fmt: skip
    told = ("spindle_share", "bore_from", "formula_up_to")
    key = ("preload minima", *(float(limits[n]) for n in names), *(float(limits.get(n, np.nan)) for n in told))
    return _kept(view, key, lambda: _minima(view, limits))


def _minima(view: View, limits: Limits) -> Criteria:
    s = view.stations
    deep = s.choice("bearing_type").is_in("deep groove ball")
    radial = np.nan_to_num(s.number("radial_load"))
    speed = within(s.number("speed_max"))
    one_voice = limits.get("bore_from") is not None
    spindle = s.choice("bearing_type").is_in("angular contact ball") & s.choice("tolerance_class").is_in(
        "P5", "P4", "P2"
    )
    share = np.where(spindle, limits.get("spindle_share", limits["least_share"]), limits["least_share"])
    by_rating = preload_bounds.minimum_by_rating(dynamic_rating(view).value, share)
    by_formula = preload_bounds.minimum_radial_load(
        limits["load_factor"], viscosity(view), speed, within(mean_diameter(view))
    )
    inside = ~(speed_factor(view) > limits.get("formula_up_to", np.inf))
    by_formula = np.where(deep & inside, by_formula, np.nan)
    by_rating, by_formula = (np.where(radial >= force, np.nan, force) for force in (by_rating, by_formula))
    by_spring = ~s.choice("preload_method").is_in("rigid")
    pull = np.where(by_spring, _axial_pull(view), np.nan)
    shake = unbalance_force(view)
    disturbed = limits["disturbance_factor"] * np.fmax(pull, shake)
    d_w, d_pw, z = ball_diameter(view), pitch_diameter(view), ball_count(view)
    angle = within(contact(view).free_angle, 0.0, 89.0, closed=True)
    outer = s.choice("rotating_ring").is_in("outer")
    turning = kinematics.speeds(np.where(outer, 0.0, speed), z, d_w, d_pw, angle, np.where(outer, speed, 0.0))
    density = of_material(s.choice("ball_material"), materials.density, ball=True)
    centrifugal = kinematics.centrifugal_force(d_w, d_pw, turning.cage, density)
    moment = kinematics.gyroscopic_moment(d_w, turning.ball_spin, turning.cage, angle, density)
    by_slip = kinematics.preload_against_gyroscopic_slip(moment, z, d_w, angle, limits["friction_high"])
    by_lift = kinematics.preload_against_skidding(centrifugal, z, angle)
    motor = deep & s.choice("preload_method").is_in("spring")
    motor &= ~(s.number("bore_diameter") < limits.get("bore_from", 0.0))
    by_bore = np.where(
        motor, preload_bounds.minimum_by_bore(within(s.number("bore_diameter")), limits["bore_low"]), np.nan
    )
    formula = ("least load by speed and viscosity", "1000 k_r (ν n/1000)^⅔ (d_m/100)²", by_formula)
    usual = ("usual spring force of small motors", "N per mm of bore · d", by_bore)
    slip = {
        "min_gyroscopic": ("gyroscopic slip of the balls", "Z sin α M_g/(μ D_w)", by_slip),
        "min_centrifugal": ("centrifugal force of the balls", "Z F_c sin α", by_lift),
    }
    rolling = ("least load that keeps the balls rolling", "share · C", by_rating)
    reserve = ("reserve over axial pull and unbalance force", "factor · max(F_a, F_U)", disturbed)
    if one_voice:
        told = {"told_formula": formula, "told_bore": usual}
        return Criteria(firm={"min_rating": rolling, "min_disturbance": reserve}, advice=slip, told=told)
    return Criteria(
        firm={"min_rating": rolling, "min_formula": formula, "min_disturbance": reserve},
        advice={**slip, "min_bore": usual},
    )


def maxima(view: View, limits: Limits) -> Criteria:
    """What the preload must stay below.

    Firm: static cap and the contact stress of stiff designs. Advice: that of quiet and of general designs.
    """
    told = ("bore_from", "bore_quiet", "bore_still", "stress_angular", "rigid_share", "small_share")
    key = (
        "preload maxima",
        *(float(limits[n]) for n in ("stress_quiet", "stress_usual", "stress_stiff", "cap", "cap_light", "small_bore")),
        *(float(limits.get(n, np.nan)) for n in told),
    )
    return _kept(view, key, lambda: _maxima(view, limits))


def _maxima(view: View, limits: Limits) -> Criteria:
    s = view.stations
    by_cap = preload_bounds.maximum_by_static_rating(static_load_rating(view).value, 1.0) * np.where(
        light_design(view, limits), limits["cap_light"], limits["cap"]
    )
    quiet, usual, stiff = (force_at_stress(view, float(limits[f"stress_{n}"])) for n in ("quiet", "usual", "stiff"))
    by_cap = np.where(is_ball(view) | ~s.choice("bearing_type").known, by_cap, np.nan)
    formula = "Hertz at the inner race, or C_0"
    if limits.get("bore_from") is not None:
        return _maxima_one_voice(view, limits, by_cap, quiet, stiff)
    return Criteria(
        firm={
            "max_stiff": ("contact stress where stiffness comes first", formula, stiff),
            "max_static": ("share of the static rating", "share · C_0", by_cap),
        },
        advice={
            "max_quiet": ("contact stress of quiet, long-lived bearings", formula, quiet),
            "max_usual": ("contact stress in general use", formula, usual),
        },
    )


def _maxima_one_voice(view: View, limits: Limits, by_cap: Floats, quiet: Floats, stiff: Floats) -> Criteria:
    """The wanted end by purpose and by what is printed for the kind of machine, the firm ends beyond it."""
    s = view.stations
    kind, method = s.choice("bearing_type"), s.choice("preload_method")
    bore = within(s.number("bore_diameter"))
    motor = kind.is_in("deep groove ball") & method.is_in("spring") & (bore >= limits["bore_from"])
    angular = kind.is_in("angular contact ball")
    usual = np.where(
        angular,
        force_at_stress(view, float(limits["stress_angular"])),
        force_at_stress(view, float(limits["stress_usual"])),
    )
    usual = np.where(motor, np.fmax(usual, limits["bore_still"] * bore), usual)
    if limits.get("small_share") is not None:
        small = kind.is_in("deep groove ball") & method.is_in("spring") & (bore < limits["bore_from"])
        usual = np.where(small, np.fmax(usual, limits["small_share"] * dynamic_rating(view).value), usual)
    quiet = np.where(motor, np.fmax(quiet, limits["bore_quiet"] * bore), quiet)
    heavy = np.where(angular & method.is_in("rigid"), limits["rigid_share"] * dynamic_rating(view).value, np.nan)
    formula = "Hertz at the inner race, or C_0; spring of a motor N per mm of bore · d where that is more"
    return Criteria(
        firm={
            "max_stiff": ("contact stress where stiffness comes first", "Hertz at the inner race, or C_0", stiff),
            "max_static": ("share of the static rating", "share · C_0", by_cap),
            "max_rigid": ("heavy preload class of rigid pairs", "share · C", heavy),
        },
        advice={"max_usual": ("contact stress or spring force in general use", formula, usual)},
        told={"told_quiet": ("contact stress or spring force of quiet running", formula, quiet)},
    )


def governing(criteria: Mapping[str, tuple[str, str, Floats]], *, largest: bool) -> tuple[Floats, NDArray[Any]]:
    """Force and words of the criterion that governs; NaN and empty where there is none."""
    words = np.array([*(c[0] for c in criteria.values()), ""], dtype=object)
    table = np.stack([c[2] for c in criteria.values()])
    none = np.isnan(table).all(axis=0)
    filled = np.where(np.isnan(table), -np.inf if largest else np.inf, table)
    index = filled.argmax(axis=0) if largest else filled.argmin(axis=0)
    value = np.take_along_axis(filled, index[np.newaxis], axis=0)[0]
    return np.where(none, np.nan, value), words[np.where(none, len(words) - 1, index)]


@frozen(eq=False)
class Window:
    """The one preload window of a bearing, by row, with what bounds each end.

    Attributes
    ----------
    low, low_by : float array, object array of str
        Firm minimum [N]; NaN where none binds.
    wish, wish_by : float array, object array of str
        The same with what the balls want against slip.
    high, high_by : float array, object array of str
        Upper end that is wanted; the firm one where no preload would be left below it.
    firm, firm_by : float array, object array of str
        Firm maximum.
    minima, maxima : Criteria
        What they come from.
    """

    low: Floats
    low_by: NDArray[Any]
    wish: Floats
    wish_by: NDArray[Any]
    high: Floats
    high_by: NDArray[Any]
    firm: Floats
    firm_by: NDArray[Any]
    minima: Criteria
    maxima: Criteria


def window_of(view: View, limits: Limits) -> Window:
    """The one window that minimum, maximum, window, force and picture share."""
    least, most = minima(view, limits), maxima(view, limits)
    low, low_by = governing(least.firm, largest=True)
    wish, wish_by = governing({**least.firm, **least.advice}, largest=True)
    firm, firm_by = governing(most.firm, largest=False)
    high, high_by = governing({**most.firm, **most.advice}, largest=False)
    shut = low > high
    return Window(
        low,
        low_by,
        wish,
        wish_by,
        np.where(shut, firm, high),
        np.where(shut, firm_by, high_by),
        firm,
        firm_by,
        least,
        most,
    )


def spring_target(view: View, limits: Limits) -> tuple[Floats, Floats, Bools]:
    """What the force has to stay between [N], and the machines whose stated force carries no tolerance.

    The stated force with its tolerance; with the usual one where it has none; without a stated force the window between
    the firm criteria of both bearings.
    """
    size = view.stations.size("preload_force")
    nominal = within(view.to_machines(size.nominal))
    low, high = (within(view.to_machines(x), closed=True) for x in (size.smallest, size.largest))
    bare = ~np.isnan(nominal) & (np.isnan(low) | np.isnan(high))
    low = np.where(bare, nominal * (1.0 - limits["usual_tolerance"]), low)
    high = np.where(bare, nominal * (1.0 + limits["usual_tolerance"]), high)
    if limits.get("bore_from") is None:
        lowest = np.fmax.reduce([c[2] for c in minima(view, limits).firm.values()])
        highest = np.fmin.reduce([c[2] for c in maxima(view, limits).firm.values()])
    else:
        found = window_of(view, limits)
        lowest, highest = np.where(np.isnan(found.low) & ~np.isnan(found.high), 0.0, found.low), found.high
    least, most = view.to_machines(lowest, "max", known=True), view.to_machines(highest, "min", known=True)
    taken = np.isnan(nominal) & (least < most)
    if limits.get("closed_measure") is not None:
        taken = np.isnan(nominal) & ~np.isnan(least + most)
    return np.where(taken, least, low), np.where(taken, most, high), bare


def light_design(view: View, limits: Limits) -> Bools:
    """Rows held to the smaller static cap: small bores, light diameter series 8, 9, 0 and 1, stainless rings."""
    s = view.stations
    series = boundary.coded_series(s.number("bore_diameter"), s.number("outside_diameter"), s.number("ring_width"))
    light = np.array([text[-1:] in ("8", "9", "0", "1") for text in series.known])[series.code]
    return either(
        s.number("bore_diameter") <= limits["small_bore"],
        light,
        s.choice("ring_material").is_in("stainless bearing steel"),
    )
