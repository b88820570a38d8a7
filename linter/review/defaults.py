"""Documented defaults of a rulebook: what stands in for what a table leaves open, each an assumption."""

from collections.abc import Mapping
from typing import Any

import numpy as np
from attrs import evolve

from linter.checks.shared.base import View
from linter.model.stations import Assumption, Bools, Choice, Stations
from linter.model.vocabulary import parameter
from linter.reading.words.bearing_tables import size_table
from linter.rulebook.gates import holds
from linter.rulebook.model import Default, Rulebook

#: What a value can be computed from; without one of them nothing is.
_BASES = {"on_time", "cooling_factor", "cooling_surface"}
#: The code of what is told of a designation that is a pair of bearings.
PAIR = "pair"
_MISREAD = ("unreadable", "disagreement")
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
        rows = ~column.known & ~_misread(default.parameter, stations) & _holds(default, stations)
        if default.by_designation:
            rows &= _read_whole(stations)
        if rows.any() and (default.when or default.not_when):
            rows &= _under(default, View(evolve(stations, choices=choices)))
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


def _misread(name: str, stations: Stations) -> Bools:
    """Rows for which the table states a parameter in words that are not understood: they do not leave it open."""
    rows = np.zeros(len(stations), dtype=bool)
    told = [p for p in stations.problems if p.parameter == name and p.kind in _MISREAD]
    rows[[p.row for p in told if p.row is not None]] = True
    if parameter(name).level == "machine" and rows.any():
        rows = np.isin(stations.machine_row, stations.machine_row[rows])
    return rows


def _holds(default: Default, stations: Stations) -> Bools:
    """Rows that a default may be taken for by the sizes and what says the same."""
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


def _read_whole(stations: Stations) -> Bools:
    """Rows whose designation is read with every sign behind it."""
    from linter.reading.words.designations import read_designation

    texts = stations.text("bearing_designation").tolist()
    read = {text: read_designation(text) for text in dict.fromkeys(texts) if text}
    whole = {text: bool(one.derived) and not one.reported and one.refusal is None for text, one in read.items()}
    return np.array([whole.get(text, False) for text in texts], dtype=bool)


def _under(default: Default, view: View) -> Bools:
    """Rows whose positions meet the conditions of a default."""

    def met(condition: Mapping[str, Any]) -> Bools:
        return np.logical_and.reduce([holds(view, name, wanted) for name, wanted in condition.items()])

    rows = met(default.when) if default.when else np.ones(view.count, dtype=bool)
    if parameter(default.parameter).level == "machine":
        rows = view.to_stations(view.to_machines(rows, "all"))
    if not default.not_when:
        return rows
    against = np.zeros(view.count, dtype=bool)
    against[[p.row for p in view.stations.problems if p.code == PAIR and p.row is not None]] = True
    against = np.logical_or.reduce([against, *map(met, default.not_when)])
    return rows & ~view.to_stations(view.to_machines(against, "any"))
