"""Where the worst case closes the gate and the likely case does not: a machine with every dimension in the middle.

A fit is judged at the ends of its tolerances. How often parts meet there is what ``ringseat spread`` counts; here one
assembly of each machine is judged, the one in the middle of every tolerance, to say where that count is worth having.
"""

import numpy as np
from attrs import evolve

from linter.model.findings import SEVERITIES, Assessment, Likely, ReviewResult
from linter.model.stations import Stations
from linter.review.assess import FINDING, MET, POSSIBLE, Assessed, assess
from linter.review.spread.dimensions import assemblies, dimensions
from linter.review.spread.shares import ABOUT_THE_DRAWING
from linter.rulebook.model import Rulebook

#: Machines of one table that are looked at, in its order.
MOST_MACHINES = 16


def likely(result: ReviewResult, stations: Stations, rulebook: Rulebook) -> tuple[Likely, ...]:
    """Machines with a finding that closes the gate at worst and would not in the middle of the tolerances.

    Parameters
    ----------
    result : ReviewResult
        With its concessions.
    stations : Stations
        What was reviewed.
    rulebook : Rulebook
        What it was reviewed under.

    Returns
    -------
    tuple of Likely
        In the order of the table, of the first ``MOST_MACHINES`` machines whose gate is closed. Clauses about what the
        drawing states are judged on the drawing alone and never counted.
    """
    closing: dict[str, list[Assessment]] = {}
    for item in result.closing:
        closing.setdefault(item.machine, []).append(item)
    names = [name for name in stations.machines if name in closing][:MOST_MACHINES]
    found = []
    for name in names:
        machine = stations.take(np.flatnonzero(stations.machine_row == stations.machines.index(name)))
        dims = dimensions(machine)
        if not dims:
            continue
        middle = np.array([[0.5 * (dim.lower + dim.upper)] for dim in dims])
        asked = {a.clause for a in closing[name]} | {POSSIBLE}
        book = evolve(rulebook, clauses={k: clause for k, clause in rulebook.clauses.items() if k in asked})
        judged = assess(assemblies(machine, dims, middle), book, keep="verdicts")
        rows = {str(station): row for row, station in enumerate(machine.text("station"))}
        milder = tuple(a for a in closing[name] if _milder(a, judged, rows, result.gate_severity))
        if milder:
            found.append(Likely(name, len(closing[name]), tuple((a.clause, a.station) for a in milder)))
    return tuple(found)


def _milder(item: Assessment, judged: Assessed, rows: dict[str, int], gate: str) -> bool:
    """Whether a finding does not close the gate in the middle of the tolerances."""
    if item.clause.startswith(ABOUT_THE_DRAWING):
        return False
    review, row = judged.reviews[item.clause], 0 if item.station is None else rows[item.station]
    return bool(review.outcome[row] == MET) or bool(
        review.outcome[row] == FINDING and review.severity[row] > SEVERITIES.index(gate)
    )
