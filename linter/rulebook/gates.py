"""Which clauses must be judged before the gate may open.

A clause that can close the gate must be judged: one that is not assessed could hide what would have closed it. So every
clause that can come to a major or critical finding, and every clause about the table itself, must be judged where it
applies. A clause may say otherwise: ``gate = "must"`` or ``"may"``, or ``must_when`` with the conditions under which it
must. A release that says nothing of it is held to the same rule.
"""

from collections.abc import Mapping
from typing import Any

import numpy as np

from linter.checks.shared.base import View
from linter.model.findings import TABLE_CHAPTER, at_least
from linter.model.stations import Bools
from linter.model.vocabulary import parameter
from linter.model.wording import words_of
from linter.rulebook.model import Clause

#: A clause that can come to this severity must be judged, whatever closes the gate.
ALWAYS = "major"
#: The condition that counts the positions of the machine.
POSITIONS = "positions"
#: The condition that a parameter is stated at all.
STATED = "stated"


def must_be_judged(clause: Clause, closes: str = ALWAYS) -> bool:
    """Whether a clause must be judged under some table at least.

    Parameters
    ----------
    clause : Clause
        Of any rulebook.
    closes : str
        Lowest severity that closes the gate.

    Returns
    -------
    bool
        For any table.
    """
    if clause.chapter == TABLE_CHAPTER or clause.must_when:
        return True
    if clause.gate:
        return clause.gate == "must"
    gravest = clause.steps[-1].severity
    return at_least(gravest, ALWAYS) or at_least(gravest, closes)


def must_rows(clause: Clause, view: View, closes: str = ALWAYS) -> Bools:
    """Rows for which a clause must be judged; where it is not assessed there, the gate must not open.

    Parameters
    ----------
    clause : Clause
        Of any rulebook; the rows are positions or machines, as its level says.
    view : View
        The stations under review.
    closes : str
        Lowest severity that closes the gate.

    Returns
    -------
    bool array
        One per position, or per machine.
    """
    machine = clause.level == "machine"
    count = view.machine_count if machine else view.count
    if not clause.must_when or clause.chapter == TABLE_CHAPTER:
        return np.full(count, must_be_judged(clause, closes))
    rows = np.zeros(view.count, bool)
    for condition in clause.must_when:
        rows |= np.logical_and.reduce([holds(view, name, wanted) for name, wanted in condition.items()])
    return view.to_machines(rows, "any") if machine else rows


def holds(view: View, name: str, wanted: Any) -> Bools:
    """Positions where one condition holds; a cell that cannot be used may state anything, so it holds there."""
    if name == POSITIONS:
        return view.to_stations(view.station_count) >= wanted
    stations = view.stations
    spoilt = np.zeros(view.count, bool)
    rows = [p.row for p in stations.problems if p.parameter == name and p.row is not None]
    spoilt[rows] = True
    if any(p.parameter == name and p.row is None for p in stations.problems):
        spoilt[:] = True
    if parameter(name).level == "machine":
        spoilt = view.to_stations(view.to_machines(spoilt, "any"))
    if wanted == STATED:
        return spoilt | stations.known(name)
    return (spoilt & ~stations.known(name)) | stations.choice(name).is_in(*wanted)


def is_milder(before: Clause, after: Clause) -> bool:
    """Whether a changed clause need not be judged where it had to be before."""
    if not must_be_judged(after):
        return must_be_judged(before)
    if not after.must_when:
        return False
    if not before.must_when:
        return must_be_judged(before)
    return any(condition not in after.must_when for condition in before.must_when)


def gate_text(clause: Clause) -> str:
    """Whether a clause must be judged, in words: ``yes``, ``no``, or the conditions."""
    if not must_be_judged(clause):
        return "no"
    if not clause.must_when or clause.chapter == TABLE_CHAPTER:
        return "yes"
    return "; or ".join(" and ".join(_condition_text(*item) for item in one.items()) for one in clause.must_when)


def _condition_text(name: str, wanted: Any) -> str:
    if name == POSITIONS:
        return f"of a machine with {wanted} or more positions"
    return f"{words_of(name)} {'stated' if wanted == STATED else ' or '.join(wanted)}"


def wrong_condition(condition: Mapping[str, Any]) -> str | None:
    """What is wrong with a condition of ``must_when``, or None."""
    for name, wanted in condition.items():
        if name == POSITIONS:
            if not isinstance(wanted, int) or isinstance(wanted, bool) or wanted < 1:
                return f"{name}: a number of positions is expected; read was {wanted!r}"
            continue
        try:
            entry = parameter(name)
        except KeyError as error:
            return str(error.args[0])
        if wanted == STATED:
            continue
        if not isinstance(wanted, list) or not entry.choices or not set(wanted) <= set(entry.choices):
            words = f" or words out of {', '.join(entry.choices)}" if entry.choices else ""
            return f'{name}: "{STATED}"{words} is expected; read was {wanted!r}'
    return None
