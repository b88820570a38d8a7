"""Roots of many rows at once."""

from collections.abc import Callable, Sequence

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
#: How closely a root is found, of itself and 1.
_ROOM = 1e-10


def falling_root(function: Callable[..., Array], low: Array, high: Array, given: Sequence[Array]) -> Array:
    """Where a function of x and of the given arrays falls through zero between two bounds.

    NaN where the function is not known, infinite where it is above zero at the upper bound still. Bounds and given
    arrays are of shape (rows,).

    Regula falsi that halves the value of an end that stays twice (Illinois), with a halving of the interval now and
    then; a guess stands off the ends by the room, so that the interval closes from both sides. Rows that are found
    leave, so that the function sees those alone that are sought.
    """
    at_low, at_high = function(low, *given), function(high, *given)
    root = np.where(at_high > 0.0, np.inf, np.nan)
    rows, sought = np.arange(len(low)), (at_high <= 0.0) & ~np.isnan(at_low)
    held = [low, high, at_low, at_high, 0.5 * (low + high), np.zeros(low.shape), *given]
    for step in range(200):
        if not sought.all():
            rows, held = rows[sought], [part[sought] for part in held]
        low, high, at_low, at_high, middle, stayed, *given = held
        if not rows.size:
            break
        off = _ROOM * (1.0 + np.abs(middle))
        with np.errstate(divide="ignore", invalid="ignore"):
            share = at_low / (at_low - at_high)
        share = np.where((share > 0.0) & (share < 1.0), share, 0.5) if step % 8 != 7 else np.full(low.shape, 0.5)
        width = high - low
        guess = np.maximum(low + share * width, low + np.minimum(off, 0.5 * width))
        middle = np.minimum(guess, high - off)
        value = function(middle, *given)
        above = value > 0.0
        at_low = np.where(above, value, np.where(stayed < 0.0, 0.5 * at_low, at_low))
        at_high = np.where(above, np.where(stayed > 0.0, 0.5 * at_high, at_high), value)
        stayed = np.where(above, 1.0, -1.0)
        low, high = np.where(above, middle, low), np.where(above, high, middle)
        held = [low, high, at_low, at_high, middle, stayed, *given]
        root[rows], sought = middle, high - low > 2.0 * off
    return root
