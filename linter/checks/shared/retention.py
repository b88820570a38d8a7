"""What holds a free ring besides its fit."""

import numpy as np

from linter.checks.shared.base import Assumes, Limits, View
from linter.model.stations import Bools, Choice, Floats


def clearance_share(smallest: Floats, largest: Floats) -> Floats:
    """Share of the band of fits that is clearance: 0 none, 1 all of it, more the further the whole band is loose."""
    band = largest - smallest
    loose = np.where(smallest < 0, np.inf, 0.0)
    share = np.divide(-smallest, band, out=np.where(np.isnan(band), np.nan, loose), where=band > 0)
    return np.maximum(share, 0.0)


def retention_cap(kind: Choice, limits: Limits) -> Floats:
    """Largest measure that a loose ring takes with its retention; infinite without one."""
    words = {"adhesive": "adhesive", "pin": "pin", "o-ring": "o_ring", "clamped": "clamped"}
    stated = {word: limits.get(f"cap_{name}") for word, name in words.items() if word in kind.words}
    caps = {word: float(cap) for word, cap in stated.items() if cap is not None}
    return kind.map(caps, default=np.inf)


def unheld_assumed(view: View, moves: Bools, inner: Bools) -> list[Assumes]:
    """The assumption that nothing holds a ring which has to move, where its retention is not stated.

    Parameters
    ----------
    view : View
        Stations.
    moves, inner : bool array, shape (rows,)
        Where a ring has to move, and where that is the inner one.

    Returns
    -------
    list of Assumes
        One for each ring.
    """
    words = np.full(view.count, "none", dtype=object)
    reason = "not stated; a ring that has to move is taken as held by nothing"
    return [
        Assumes(name, words, "", reason, moves & of_ring & ~view.stations.choice(name).known)
        for name, of_ring in (("inner_ring_retention", inner), ("outer_ring_retention", ~inner))
    ]
