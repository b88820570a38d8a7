"""Shared quantities of a machine that grows with temperature between its two bearings, in mm, shape (machines,)."""

import numpy as np
from attrs import frozen

from linter.checks.shared.base import Assumes, View, shared, within
from linter.checks.shared.seat_fits import of_material
from linter.mechanics import materials, preload
from linter.mechanics.press_fit import REFERENCE_TEMPERATURE
from linter.model.stations import Bools, Floats


@frozen(eq=False)
class State:
    """A state of temperature: its name, the two temperatures [degC] and the growth of housing over shaft [mm]."""

    name: str
    shaft: Floats
    housing: Floats
    growth: Floats


@shared
def states(view: View) -> tuple[State, ...]:
    """Running, cold and soaked state with the growth of the housing over the shaft between the bearings.

    Grown from the reference temperature of 20 degC; NaN where span, materials or temperatures are not known.
    """
    s = view.stations
    shaft_material = view.to_machines(of_material(s.choice("shaft_material"), materials.expansion))
    housing_material = view.to_machines(of_material(s.choice("housing_material"), materials.expansion))
    span = within(view.to_machines(s.size("bearing_span").nominal))
    shaft, housing, cold, soaked = (
        view.to_machines(s.number(name))
        for name in ("shaft_temperature", "housing_temperature", "temperature_min", "temperature_max")
    )

    def state(name: str, of_shaft: Floats, of_housing: Floats) -> State:
        growth = preload.relative_growth(
            span,
            housing_material,
            of_housing - REFERENCE_TEMPERATURE,
            shaft_material,
            of_shaft - REFERENCE_TEMPERATURE,
        )
        return State(name, of_shaft, of_housing, growth)

    return (state("running", shaft, housing), state("cold", cold, cold), state("soaked", soaked, soaked))


def half_stated(view: View) -> dict[str, Bools]:
    """Machines that state one of the two running temperatures only, so that the running state drops out unseen."""
    shaft, housing = (view.to_machines(view.stations.known(f"{name}_temperature")) for name in ("shaft", "housing"))
    return {"shaft_temperature": housing & ~shaft, "housing_temperature": shaft & ~housing}


def in_use_alone(view: View) -> list[Assumes]:
    """The assumption that a machine becomes neither colder nor warmer than in use, where its ends are not stated."""
    words = np.full(view.count, "as in use", dtype=object)
    return [
        Assumes(name, words, "", reason, ~view.stations.known(name))
        for name, reason in (
            ("temperature_min", "not stated; no state colder than in use is looked at"),
            ("temperature_max", "not stated; no state warmer than in use is looked at"),
        )
    ]


def in_use_alone_by_machine(view: View) -> list[Assumes]:
    """The same by machine."""
    return [
        Assumes(a.parameter, view.to_machines(a.values), a.unit, a.reason, view.to_machines(a.rows, "any"))
        for a in in_use_alone(view)
    ]


@shared
def lengthening(view: View) -> Floats:
    """Sign that the growth of the housing has on the spring's length.

    1 where the spring stands in the housing and moves the outer ring, -1 where the inner ring is the free one.
    """
    inner = view.to_machines(view.stations.choice("free_ring").is_in("inner"), "any")
    return np.where(inner, -1.0, 1.0)


def growth_range(view: View) -> tuple[Floats, Floats]:
    """Least and largest change of the spring's length over all known states, 0 at assembly included; NaN for none."""
    changes = np.stack([state.growth * lengthening(view) for state in states(view)])
    none = np.isnan(changes).all(axis=0)
    low = np.where(none, np.nan, np.minimum(np.fmin.reduce(changes), 0.0))
    high = np.where(none, np.nan, np.maximum(np.fmax.reduce(changes), 0.0))
    return low, high
