"""Where the axes of the two seats of a machine lie to one another: coaxiality, and the slope of the bent shaft."""

import numpy as np

from linter.checks.shared.base import Assumes, View, within
from linter.checks.shared.line_loads import line_loads
from linter.checks.shared.two_sides import of_material
from linter.mechanics import materials
from linter.mechanics import shaft as beam
from linter.model.stations import Bools, Floats


def coaxial(view: View, side: str) -> tuple[Floats, Assumes]:
    """Diametral coaxiality of the two seats of a side [mm], by station, and the run-out that stands in for it."""
    s = view.stations
    name = "coaxiality_of_shaft_seats" if side == "shaft" else "coaxiality_of_bores"
    stated_value = s.number(name)
    runout = view.to_stations(view.to_machines(s.number(f"{side}_seat_runout"), "max"))
    stands_in = np.isnan(stated_value) & ~np.isnan(runout) & two_stations(view)
    value = np.where(stands_in, runout, stated_value)
    reason = f"not stated; the larger {side}_seat_runout (to the common axis) stands in"
    return value, Assumes(name, value, "mm", reason, stands_in)


def two_stations(view: View) -> Bools:
    """Rows of machines with two or more positions."""
    return np.asarray(view.to_stations(view.station_count) >= 2)


def bending_slope(view: View) -> tuple[Floats, Assumes]:
    """Slope of the shaft at a bearing [rad] under all radial loads at mid-span, and where it is left out.

    An upper estimate: the shaft is taken as thin as its thinner seat all along, the load as far from the bearings as it
    can be. Where the outer rings turn the load reaches the bearings through the hub, not through the shaft.
    """
    s = view.stations
    force = view.to_machines(np.abs(s.number("radial_load")), "sum")
    seat = view.to_machines(within(s.number("bore_diameter")), "min")
    hollow = view.to_machines(np.nan_to_num(s.number("shaft_bore"), nan=0.0), "max")
    span = within(view.to_machines(s.size("bearing_span").nominal))
    modulus = view.to_machines(of_material(s.choice("shaft_material"), materials.elastic_modulus))
    slope = np.full(view.machine_count, np.nan)
    turning = ~view.to_machines(s.choice("rotating_ring").is_in("outer"))
    ready = ~np.isnan(force + seat + span + modulus) & (hollow >= 0) & (hollow < seat) & (view.station_count == 2)
    ready &= turning
    if ready.any():
        uniform = beam.uniform_shaft(span[ready], seat[ready], modulus[ready], hollow[ready])
        state = beam.loaded_shaft(uniform, 0.5 * span[ready][:, None], force[ready][:, None])
        slope[ready] = np.abs(state.slope_a)
    out = view.to_stations(np.isnan(slope) & turning)
    reason = "bending of the shaft is left out: it needs radial_load of both positions and shaft_material"
    value = np.zeros(view.count)
    return view.to_stations(np.nan_to_num(slope, nan=0.0)), Assumes("radial_load", value, "N", reason, out)


def line_slope(view: View) -> Floats:
    """Slope of the described shaft at each bearing [rad] under weight and shaft_forces; NaN where either is open."""
    found = line_loads(view)
    return np.where(found.stated, found.slope, np.nan)
