"""Loads of a position with its preload, and what modifies its rating life."""

from typing import Any

import numpy as np
from numpy.typing import NDArray

from linter.checks.shared.base import Limits, View, shared, within
from linter.checks.shared.lubrication import viscosity_ratio
from linter.checks.shared.preload_band import station_band
from linter.checks.shared.quantities import (
    equivalent_load,
    fatigue_load_limit,
    is_ball,
    pitch_diameter,
    static_load_rating,
)
from linter.mechanics import modified_life
from linter.model.stations import Bools, Floats

#: Rollers whose equivalent load is their radial load as long as no axial load acts.
RADIAL_ROLLERS = ("cylindrical roller", "needle roller")
_FILTERED = ("oil jet", "under-race oil", "oil mist", "oil-air")


def radial_roller(view: View) -> Bools:
    """Rows with rollers that carry radial load only."""
    return view.stations.choice("bearing_type").is_in(*RADIAL_ROLLERS)


@shared
def loads(view: View) -> tuple[Floats, Floats]:
    """Radial load, and axial load with the nominal preload, on each position [N]; NaN where not known."""
    s = view.stations
    radial = within(s.number("radial_load"), closed=True)
    axial = np.abs(s.number("axial_load"))
    preload = np.where(radial_roller(view), 0.0, station_band(view).nominal)
    axial = np.where(radial_roller(view) & np.isnan(axial), 0.0, axial)
    return radial, axial + preload


@shared
def dynamic_load(view: View) -> Floats:
    """Equivalent load P [N] of ball bearings with preload, and of radial rollers without axial load."""
    radial, axial = loads(view)
    by_roller = np.where(radial_roller(view) & (axial == 0.0), radial, np.nan)
    return np.where(is_ball(view), equivalent_load(view, axial), by_roller)


def _medium(view: View) -> NDArray[Any]:
    """Words of the lubricant for the contamination factor."""
    words = view.stations.choice("lubrication")
    greased = words.is_in("grease", "grease for high speed")
    return np.select([greased, words.is_in(*_FILTERED)], ["grease", "filtered oil"], "oil")


def life_factor(view: View, limits: Limits) -> tuple[Floats, Floats, Floats]:
    """Contamination factor e_C, life modification factor a_ISO, and a_ISO at the other end where e_C has a range.

    NaN where lubricant or cleanliness is not known. Below the smallest pitch diameter that the curves cover e_C is held
    there, and the largest value printed for the cleanliness is the other end. EP additives let κ below 1 count as 1.
    """
    s = view.stations
    kappa, load = viscosity_ratio(view), within(dynamic_load(view))
    smallest = limits.get("smallest_pitch", 0.0)
    pitch = np.fmax(pitch_diameter(view), np.where(np.isnan(pitch_diameter(view)), np.nan, smallest))
    words = s.choice("cleanliness").texts()
    stated = words != ""
    clean = modified_life.contamination_factor(
        np.where(stated, words, "normal").astype(str), kappa, pitch, _medium(view)
    )
    clean = np.where(stated & s.choice("lubrication").known, clean, np.nan)
    most = dict(zip(modified_life.CLEANLINESS, limits.get("cleanliness_most", ()), strict=False))
    far = np.where(pitch_diameter(view) < smallest, np.fmax(clean, s.choice("cleanliness").map(most)), clean)
    far = np.where(np.isnan(clean), np.nan, far)
    limit = fatigue_limit(view, limits)
    found = [_factor(view, e_c, kappa, limit, load, limits) for e_c in (clean, far)]
    return clean, found[0], found[1]


def fatigue_limit(view: View, limits: Limits) -> Floats:
    """Fatigue load limit C_u [N]; where it comes from computed ratings, less for ceramic balls."""
    computed = fatigue_load_limit(view).computed & static_load_rating(view).computed
    return fatigue_load_limit(view).value * ceramic(view, computed, limits)


def ceramic(view: View, computed: Bools, limits: Limits) -> Floats:
    """Factor on a rating computed for steel balls."""
    ceramic = view.stations.choice("ball_material").is_in("silicon nitride")
    return np.where(ceramic & computed, limits.get("hybrid_share", 1.0), 1.0)


def _factor(view: View, clean: Floats, kappa: Floats, limit: Floats, load: Floats, limits: Limits) -> Floats:
    """Life modification factor; EP additives count where κ is below 1 and the lubricant clean enough."""
    helped = (
        view.stations.choice("ep_additives").is_in("yes") & (kappa < 1.0) & (clean >= limits.get("ep_clean", np.inf))
    )
    used = np.where(helped, 1.0, kappa)
    ball = modified_life.life_modification_factor(used, clean, limit, load)
    roller = modified_life.life_modification_factor(used, clean, limit, load, "roller")
    found = np.where(is_ball(view), ball, roller)
    return np.where(helped, np.minimum(found, limits.get("ep_factor", np.inf)), found)
