"""Documented defaults of a rulebook: what stands in for what a table leaves open, each an assumption."""

import numpy as np
from attrs import evolve

from linter.model.stations import Assumption, Bools, Choice, Stations
from linter.reading.words.bearing_tables import size_table
from linter.rulebook.model import Default, Rulebook

#: What a value can be computed from; without one of them nothing is.
_BASES = {"on_time", "cooling_factor", "cooling_surface"}
_SIZE = ("bore_diameter", "outside_diameter", "ring_width")


def with_defaults(stations: Stations, rulebook: Rulebook) -> Stations:
    """The stations with the rulebook's defaults where a choice is not stated, marked as assumed.

    Parameters
    ----------
    stations : Stations
        As read.
    rulebook : Rulebook
        As loaded; a released one without defaults leaves the stations as they are.

    Returns
    -------
    Stations
        What is stated or derived stays; the duty that a stated cycle comes to is derived, and a temperature that
        follows from a stated cooling is assumed.
    """
    if not (_BASES & stations.numbers.keys() or stations.known("shaft_forces").any()):
        return _with_words(stations, rulebook)
    from linter.review.computed import duty_by_cycle, load_by_rotor, temperature_by_balance

    stations = load_by_rotor(stations, rulebook)
    return temperature_by_balance(_with_words(duty_by_cycle(stations, rulebook), rulebook), rulebook)


def _with_words(stations: Stations, rulebook: Rulebook) -> Stations:
    """The stations with the words of the rulebook for open choices."""
    choices, assumed = dict(stations.choices), dict(stations.assumed)
    for default in rulebook.defaults:
        column = stations.choice(default.parameter)
        rows = ~column.known & _holds(default, stations)
        if not rows.any():
            continue
        codes = column.codes.copy()
        codes[rows] = column.words.index(default.value)
        choices[default.parameter] = Choice(column.words, codes)
        reason = f"not stated; {default.value} is taken: {default.why}"
        if (before := assumed.get(default.parameter)) is not None:
            rows, reason = rows | before.rows, f"{before.reason}; or {reason}"
        assumed[default.parameter] = Assumption(rows, reason)
    return evolve(stations, choices=choices, assumed=assumed)


def _holds(default: Default, stations: Stations) -> Bools:
    """Rows that a default may be taken for."""
    rows = np.ones(len(stations), dtype=bool)
    if default.unless:
        rows &= ~stations.known(default.unless)
    if default.by_size:
        printed: dict[tuple[float, ...], set[str]] = {}
        for size in size_table().values():
            printed.setdefault((size.bore, size.outside, size.width), set()).add(size.type)
        sizes = zip(*(stations.number(name).tolist() for name in _SIZE), strict=True)
        rows &= np.array([printed.get(size) == {default.value} for size in sizes], dtype=bool)
    return rows
