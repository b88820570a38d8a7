"""Values that follow from others and stand in where a table leaves them open: duty, temperature, radial load."""

import numpy as np
from attrs import evolve

from linter.checks import heat
from linter.checks.shared.base import View
from linter.checks.shared.heat_balance import balance, friction_of, surroundings
from linter.checks.shared.line_loads import load_by_line
from linter.model.columns import Assumption, Derivation
from linter.model.stations import Choice, Stations
from linter.model.wording import quantity_text
from linter.rulebook.model import Limits, Rulebook

CYCLE, BALANCE, LOADS = "heat.cycle", "heat.balance", "rotor.bearing-loads"
_TEMPERATURE = "operating_temperature"


def duty_by_cycle(stations: Stations, rulebook: Rulebook) -> Stations:
    """The stations with the word for the duty where a cycle is stated and no word is, marked as derived.

    Parameters
    ----------
    stations : Stations
        As read.
    rulebook : Rulebook
        One without the clause ``heat.cycle`` leaves the stations as they are.

    Returns
    -------
    Stations
        What is stated stays.
    """
    clause = rulebook.clauses.get(CYCLE)
    duty = stations.choice("duty")
    if clause is None or not (stations.known("on_time") & ~duty.known).any():
        return stations
    view = View(stations)
    derived = view.to_stations(heat.duty_of_cycle(view, Limits(clause)))
    rows = ~duty.known & (derived >= 0)
    codes = duty.codes.copy()
    codes[rows] = [duty.words.index(heat.DUTIES[k]) for k in derived[rows]]
    basis = np.full(len(stations), "", dtype=object)
    basis[rows] = "the stated cycle of on_time and off_time with heat_capacity (clause heat.cycle)"
    return evolve(
        stations,
        choices={**stations.choices, "duty": Choice(duty.words, codes)},
        derived={**stations.derived, "duty": Derivation(rows, basis)},
    )


def temperature_by_balance(stations: Stations, rulebook: Rulebook) -> Stations:
    """The stations with the hottest computed temperature where none is stated and the cooling is, as an assumption.

    Parameters
    ----------
    stations : Stations
        With the defaults of the rulebook.
    rulebook : Rulebook
        One without the clause ``heat.balance`` leaves the stations as they are.

    Returns
    -------
    Stations
        What is stated stays; so do rows whose friction no temperature gives off.
    """
    clause = rulebook.clauses.get(BALANCE)
    cooled = stations.known("cooling_factor") | stations.known("cooling_surface")
    open_rows = cooled & ~stations.known(_TEMPERATURE)
    if clause is None or not open_rows.any():
        return stations
    view, limits = View(stations), Limits(clause)
    speed = stations.number("speed_operating")
    speed = np.where(speed >= 0.0, speed, np.nan)
    with np.errstate(all="ignore"):
        _, hottest = balance(view, limits, speed, friction_of(view, limits), surroundings(view, limits))
    rows = open_rows & np.isfinite(hottest)
    before = stations.assumed.get(_TEMPERATURE)
    reason = (
        "not stated; the hottest that friction and stated cooling come to (clause heat.balance) is taken, up to "
        f"{quantity_text(float(np.max(hottest[rows], initial=0.0)), 'degC')}: the safe side"
    )
    if before is not None:
        rows_told, reason = rows | before.rows, f"{before.reason}; or {reason}"
    else:
        rows_told = rows
    if not rows.any():
        return stations
    return evolve(
        stations,
        numbers={**stations.numbers, _TEMPERATURE: np.where(rows, hottest, stations.number(_TEMPERATURE))},
        assumed={**stations.assumed, _TEMPERATURE: Assumption(rows_told, reason)},
    )


def load_by_rotor(stations: Stations, rulebook: Rulebook) -> Stations:
    """The stations with the radial load that the described rotor and its stated shaft_forces come to, as an assumption.

    Parameters
    ----------
    stations : Stations
        As read.
    rulebook : Rulebook
        One without the clause ``rotor.bearing-loads`` leaves the stations as they are.

    Returns
    -------
    Stations
        What is stated stays; so do rows whose load does not follow.
    """
    if rulebook.clauses.get(LOADS) is None:
        return stations
    view = View(stations)
    load, reason = load_by_line(view)
    rows = ~np.isnan(load)
    if not rows.any():
        return stations
    return evolve(
        stations,
        numbers={**stations.numbers, "radial_load": np.where(rows, load, stations.number("radial_load"))},
        assumed={**stations.assumed, "radial_load": Assumption(rows, reason)},
    )
