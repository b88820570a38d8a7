"""Quantities that several chapters ask for, computed once per view."""

import numpy as np

from linter.checks.base import View, shared
from linter.stations import Floats


@shared
def mean_diameter(view: View) -> Floats:
    """Mean diameter d_m = (d + D)/2 [mm], shape (rows,)."""
    return 0.5 * (view.stations.number("bore_diameter") + view.stations.number("outside_diameter"))


@shared
def speed_factor(view: View) -> Floats:
    """Speed factor n d_m [mm r/min] at the highest speed, shape (rows,)."""
    return view.stations.number("speed_max") * mean_diameter(view)


@shared
def load_ratio(view: View) -> Floats:
    """Load ratio C/P of the dynamic rating to the equivalent load, shape (rows,); NaN where either is not known."""
    return np.full(view.count, np.nan)
