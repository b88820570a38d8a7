"""Quantities that several chapters ask for, computed once per view.

All are float arrays of shape (rows,), NaN where the table does not state enough or a value lies outside the domain of
the formula.
"""

import numpy as np
from attrs import frozen

from linter.checks.shared.base import Assumes, View, shared, within
from linter.mechanics import modified_life, preload, rating_life, static_rating
from linter.model.stations import Bools, Floats

#: Ball diameter over section height D - d of common ball bearings, used only to read f_0 off its table where the
#: geometry is not stated (common practice; f_0 changes by less than 5 % for 0.27 to 0.33).
BALL_TO_SECTION = 0.30


@frozen(eq=False)
class Rating:
    """A rating [N] and the rows where it was computed from the internal geometry."""

    value: Floats
    computed: Bools


@shared
def is_ball(view: View) -> Bools:
    """Rows that state a ball bearing type."""
    return view.stations.choice("bearing_type").is_in("deep groove ball", "angular contact ball")


@shared
def mean_diameter(view: View) -> Floats:
    """Mean diameter d_m = (d + D)/2 [mm]."""
    return 0.5 * (view.stations.number("bore_diameter") + view.stations.number("outside_diameter"))


@shared
def speed_factor(view: View) -> Floats:
    """Speed factor n d_m [mm r/min] at the highest speed."""
    return view.stations.number("speed_max") * mean_diameter(view)


@shared
def contact_angle(view: View) -> Floats:
    """Nominal contact angle [deg]; 0 for a deep groove bearing, 0 to 45."""
    stated = view.stations.number("contact_angle")
    deep = view.stations.choice("bearing_type").is_in("deep groove ball")
    return within(np.where(deep, 0.0, stated), 0.0, 45.0, closed=True)


@shared
def ball_diameter(view: View) -> Floats:
    """Ball diameter D_w [mm] where it fits the bearing: D_w cos(alpha)/D_pw up to 0.40."""
    stated = within(view.stations.number("ball_diameter"))
    share = stated * np.cos(np.deg2rad(contact_angle(view))) / pitch_diameter(view)
    return np.where((share > 0.0) & (share <= 0.40), stated, np.nan)


@shared
def pitch_diameter(view: View) -> Floats:
    """Pitch diameter D_pw of the rolling element set [mm], stated or (d + D)/2."""
    return within(view.stations.number("pitch_diameter"))


@shared
def ball_count(view: View) -> Floats:
    """Number of rolling elements Z in one row."""
    return within(view.stations.number("ball_count"), 1.0, closed=True)


def _rating(view: View, name: str, computed: Floats) -> Rating:
    stated = within(view.stations.number(name))
    use = np.isnan(stated) & is_ball(view) & ~np.isnan(computed)
    return Rating(np.where(use, computed, stated), use)


@shared
def dynamic_rating(view: View) -> Rating:
    """Dynamic rating C: as stated, else by ISO 281:2007, 5.1 from Z, D_w, alpha and D_pw (ball bearings)."""
    by_geometry = rating_life.dynamic_rating(
        ball_count(view), ball_diameter(view), pitch_diameter(view), contact_angle(view)
    )
    return _rating(view, "dynamic_rating", by_geometry)


@shared
def static_load_rating(view: View) -> Rating:
    """Static rating C_0: as stated, else by ISO 76:2006, 5.1 from Z, D_w, alpha and D_pw (ball bearings)."""
    by_geometry = static_rating.static_rating(
        ball_count(view), ball_diameter(view), pitch_diameter(view), contact_angle(view)
    )
    return _rating(view, "static_rating", by_geometry)


@shared
def fatigue_load_limit(view: View) -> Rating:
    """Fatigue load limit C_u: as stated, else by the simplified method of ISO 281:2007, Annex B, from C_0."""
    by_rating = modified_life.fatigue_load_limit(static_load_rating(view).value, pitch_diameter(view))
    return _rating(view, "fatigue_load_limit", by_rating)


def attitude_assumed(view: View, rows: Bools) -> Assumes:
    """The assumption of a horizontal shaft in some rows, where the attitude is not stated."""
    words = np.full(view.count, "horizontal", dtype=object)
    known = view.stations.choice("shaft_orientation").known
    return Assumes("shaft_orientation", words, "", "not stated; a horizontal shaft stands in", rows & ~known)


def computed_assumed(view: View, *names: str) -> list[Assumes]:
    """Ratings that stand in, computed from the internal geometry, where the table states none."""
    ways = {
        "dynamic_rating": (dynamic_rating, "not stated; that of ISO 281 for the stated balls stands in"),
        "static_rating": (static_load_rating, "not stated; that of ISO 76 for the stated balls stands in"),
        "fatigue_load_limit": (fatigue_load_limit, "not stated; that of ISO 281 for the static rating stands in"),
    }
    found = []
    for name in names:
        make, reason = ways[name]
        rating = make(view)
        found.append(Assumes(name, rating.value, "N", reason, rating.computed))
    return found


@shared
def static_factor(view: View) -> Floats:
    """Factor f_0 of ISO 76:2006, Table 1, at the stated geometry, else at the usual share of the section."""
    section = view.stations.number("outside_diameter") - view.stations.number("bore_diameter")
    ball = np.where(np.isnan(ball_diameter(view)), within(BALL_TO_SECTION * section), ball_diameter(view))
    share = ball * np.cos(np.deg2rad(contact_angle(view))) / pitch_diameter(view)
    return static_rating.tabulated_geometry_factor(within(share, 0.0, 0.40, closed=True))


@shared
def preload_force(view: View) -> Floats:
    """Nominal axial preload F_p [N]: stated, else rate times the deflection of the spring; 0 where there is none."""
    s = view.stations
    stated = s.size("preload_force").nominal
    spring = preload.linear_spring_force(
        within(s.size("spring_installed_length").nominal),
        within(s.size("spring_rate").nominal),
        within(s.size("spring_free_length").nominal),
    )
    force = np.where(np.isnan(stated), spring, stated)
    return np.where(np.isnan(force) & s.choice("preload_method").is_in("none"), 0.0, force)


@shared
def total_axial_load(view: View) -> Floats:
    """External axial load plus preload on the position [N]; NaN where either is not known."""
    axial = np.abs(view.stations.number("axial_load"))
    return axial + preload_force(view)


def equivalent_load(view: View, axial_load: Floats) -> Floats:
    """Dynamic equivalent load P [N] of a single-row ball bearing under the stated radial and a given axial load.

    X, Y and e by ISO 281:2007, Table 3, at f_0 F_a/C_0.
    """
    radial = within(view.stations.number("radial_load"), closed=True)
    axial = within(axial_load, closed=True)
    relative = static_factor(view) * axial / static_load_rating(view).value
    factors = rating_life.load_factors(contact_angle(view), relative)
    load = rating_life.equivalent_load(radial, axial, factors)
    return np.where(is_ball(view), load, np.nan)


@shared
def load_ratio(view: View) -> Floats:
    """Load ratio C/P with the preload as axial load."""
    load = equivalent_load(view, total_axial_load(view))
    return np.divide(dynamic_rating(view).value, load, out=np.full(view.count, np.nan), where=load > 0)
