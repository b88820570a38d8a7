"""What lets more pass: whether a changed limit, cell or severity step is looser than the one before."""

from typing import Any

import numpy as np

from linter.model.findings import SEVERITIES
from linter.rulebook.model import Step


def number_or_text(cell: str) -> float | str:
    """The number that a cell holds, or its text."""
    try:
        return float(cell)
    except ValueError:
        return cell


def is_looser(looser: str, before: Any, after: Any) -> bool:
    """Whether a value lets more pass; where that cannot be told, any change counts."""
    if before == after:
        return False
    if isinstance(before, list) and isinstance(after, list):
        return any(is_looser(looser, b, a) for b, a in zip(before, after, strict=True))
    if looser == "either" or not (isinstance(before, (int, float)) and isinstance(after, (int, float))):
        return True
    return after > before if looser == "higher" else after < before


def _gravity(steps: tuple[Step, ...], measure: float) -> int:
    return max((len(SEVERITIES) - SEVERITIES.index(s.severity) for s in steps if measure > s.above), default=0)


def are_milder(before: tuple[Step, ...], after: tuple[Step, ...]) -> bool:
    """Whether severity steps give some measure a milder severity than before."""
    points = {s.above for s in (*before, *after)}
    probes = [*points, *(float(np.nextafter(p, np.inf)) for p in points)]
    return any(_gravity(after, p) < _gravity(before, p) for p in probes)
