"""Radial clearance as the bearing is delivered."""

import numpy as np

from linter.checks.shared.base import View, shared
from linter.checks.shared.seat_fits import row_words
from linter.mechanics import internal_clearance
from linter.model.stations import Floats


@shared
def delivered_clearance(view: View) -> tuple[Floats, Floats]:
    """Radial clearance before mounting [um], smallest and largest: as stated, else by its group (ISO 5753-1)."""
    s = view.stations
    stated = s.size("radial_clearance")
    kind, group = row_words(s.choice("bearing_type")), row_words(s.choice("clearance_class"))
    low, high = internal_clearance.radial_clearance_or_nan(group, s.number("bore_diameter"), kind)
    given = ~np.isnan(stated.nominal)
    spread = ~np.isnan(stated.lower)
    low = np.where(given, np.where(spread, stated.smallest, stated.nominal), low)
    high = np.where(given, np.where(spread, stated.largest, stated.nominal), high)
    sound = (high >= low) & np.isfinite(high - low)
    return np.where(sound, low, np.nan), np.where(sound, high, np.nan)
