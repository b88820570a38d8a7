"""What holds a free ring besides its fit."""

import numpy as np

from linter.checks.shared.base import Limits
from linter.model.stations import Choice, Floats


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
