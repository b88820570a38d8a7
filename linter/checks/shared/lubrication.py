"""Shared quantities of the lubricant: viscosity in use and viscosity ratio."""

import numpy as np

from linter.checks.shared.base import View, shared, within
from linter.checks.shared.quantities import pitch_diameter
from linter.mechanics import lubricant
from linter.model.stations import Bools, Floats

_ABSOLUTE_ZERO = -273.15


@shared
def viscosity(view: View) -> Floats:
    """Kinematic viscosity of the (base) oil at the operating temperature [mm2/s], ASTM D341 through 40 and 100 degC."""
    s = view.stations
    warm, hot = (within(s.number(f"base_oil_viscosity_{t}"), 0.3) for t in (40, 100))
    hot = np.where(hot < warm, hot, np.nan)
    temperature = within(s.number("operating_temperature"), _ABSOLUTE_ZERO, 400.0)
    return within(lubricant.viscosity_at(temperature, warm, 40.0, hot, 100.0))


@shared
def viscosity_ratio(view: View) -> Floats:
    """Viscosity ratio κ = ν/ν_1 at the operating speed (ISO 281:2007, 9.3.3)."""
    speed = within(view.stations.number("speed_operating"))
    return lubricant.viscosity_ratio(viscosity(view), speed, pitch_diameter(view))


@shared
def thinner(view: View) -> Bools:
    """Rows whose oil is thinner than the viscosity line can tell, or hotter: stated, and no film to be had."""
    s = view.stations
    warm, hot, temperature = (
        s.number(n) for n in ("base_oil_viscosity_40", "base_oil_viscosity_100", "operating_temperature")
    )
    known = ~np.isnan(warm + hot + temperature)
    return known & np.isnan(viscosity(view)) & (temperature > 0.0) & (warm > 0.0) & (hot > 0.0) & ~(hot > warm)


@shared
def unusable(view: View) -> dict[str, Bools]:
    """Viscosities and temperatures that are stated and still give no viscosity in use."""
    s = view.stations
    names = ("base_oil_viscosity_40", "base_oil_viscosity_100", "operating_temperature")
    every = np.logical_and.reduce([s.known(name) for name in names])
    spoilt = every & np.isnan(viscosity(view))
    wrong = {name: s.known(name) & ~(s.number(name) > 0.0) for name in names[:2]}
    return {name: wrong.get(name, spoilt) | spoilt for name in names}


def viscosity_wants(view: View) -> dict[str, Bools]:
    """Rows that do not state what the viscosity in use follows from."""
    s = view.stations
    names = ("base_oil_viscosity_40", "base_oil_viscosity_100", "operating_temperature")
    return {name: np.isnan(s.number(name)) for name in names}
