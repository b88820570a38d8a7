"""What the preload of a ball bearing must exceed and what it must stay below, by criterion."""

from collections.abc import Mapping
from typing import Any

import numpy as np
from attrs import frozen
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
    key = ("preload minima", *(float(limits[name]) for name in names))
    return _kept(view, key, lambda: _minima(view, limits))


def _minima(view: View, limits: Limits) -> Criteria:
    s = view.stations
    deep = s.choice("bearing_type").is_in("deep groove ball")
    radial = np.nan_to_num(s.number("radial_load"))
    speed = within(s.number("speed_max"))
    by_rating = preload_bounds.minimum_by_rating(dynamic_rating(view).value, limits["least_share"])
    by_formula = preload_bounds.minimum_radial_load(
        limits["load_factor"], viscosity(view), speed, within(mean_diameter(view))
    )
    by_formula = np.where(deep, by_formula, np.nan)
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
    by_bore = np.where(
        motor, preload_bounds.minimum_by_bore(within(s.number("bore_diameter")), limits["bore_low"]), np.nan
    )
    return Criteria(
        firm={
            "min_rating": ("least load that keeps the balls rolling", "share · C", by_rating),
            "min_formula": ("least load by speed and viscosity", "1000 k_r (ν n/1000)^⅔ (d_m/100)²", by_formula),
            "min_disturbance": (
                "reserve over axial pull and unbalance force", "factor · max(F_a, F_U)", disturbed,
            ),
        },
        advice={
            "min_gyroscopic": ("gyroscopic slip of the balls", "Z sin α M_g/(μ D_w)", by_slip),
            "min_centrifugal": ("centrifugal force of the balls", "Z F_c sin α", by_lift),
            "min_bore": ("usual spring force of small motors", "N per mm of bore · d", by_bore),
        },
    )  # fmt: skip


def maxima(view: View, limits: Limits) -> Criteria:
    """What the preload must stay below.

    Firm: static cap and the contact stress of stiff designs. Advice: that of quiet and of general designs.
    """
    key = (
        "preload maxima",
        *(float(limits[n]) for n in ("stress_quiet", "stress_usual", "stress_stiff", "cap", "cap_light", "small_bore")),
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


def light_design(view: View, limits: Limits) -> Bools:
    """Rows held to the smaller static cap: small bores, light diameter series 8, 9, 0 and 1, stainless rings."""
    s = view.stations
    series = boundary.dimension_series(s.number("bore_diameter"), s.number("outside_diameter"), s.number("ring_width"))
    last = np.array([text[-1:] for text in np.unique(series)])[np.unique(series, return_inverse=True)[1]]
    return either(
        s.number("bore_diameter") <= limits["small_bore"],
        np.isin(last, ("8", "9", "0", "1")),
        s.choice("ring_material").is_in("stainless bearing steel"),
    )
