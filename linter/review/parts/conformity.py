"""Whether a measured value proves that a part conforms: the decision rule of ISO 14253-1."""

from typing import Final

import numpy as np
from numpy.typing import ArrayLike, NDArray

CONFORMS, NOT_PROVEN, DOES_NOT_CONFORM = range(3)
VERDICTS: Final = ("conforms", "not proven", "does not conform")
_ROUNDING = 1e-9


def conformity(value: ArrayLike, lower: ArrayLike, upper: ArrayLike, uncertainty: ArrayLike = 0.0) -> NDArray[np.int8]:
    """The verdict on measured values, with a guard band of the expanded uncertainty on both sides of each limit.

    Parameters
    ----------
    value, lower, upper, uncertainty : array_like
        Measured value, limits (NaN for none) and expanded uncertainty in one unit; they are broadcast.

    Returns
    -------
    int8 array
        Index into :data:`VERDICTS`: it conforms where it lies within the limits by the uncertainty at least, it does
        not conform where it lies beyond one by more than the uncertainty, and between them neither is proven. -1 where
        there is no value, no limit or no uncertainty.

    Raises
    ------
    ValueError
        For a negative uncertainty.

    Notes
    -----
    ISO 14253-1:2013, default rules for proving conformity and nonconformity: the guard band is the whole expanded
    uncertainty, U = 2 u. The edition of 2017 takes 1.645 u by default (95 % conformance probability), 0.82 U: the
    verdict here proves less than that, never more (both from memory). A value on its limit conforms where the
    uncertainty is nothing.
    """
    m, low, high, u = np.broadcast_arrays(*(np.asarray(x, dtype=float) for x in (value, lower, upper, uncertainty)))
    if np.any(u < 0):
        raise ValueError(f"an expanded uncertainty of 0 or more is expected; read was {u[u < 0].flat[0]:g}")
    tiny = _ROUNDING * np.maximum(1.0, np.abs(m))
    below, above = np.isnan(low), np.isnan(high)
    inside = (below | (m >= low + u - tiny)) & (above | (m <= high - u + tiny))
    outside = (~below & (m < low - u - tiny)) | (~above & (m > high + u + tiny))
    found = np.where(inside, CONFORMS, np.where(outside, DOES_NOT_CONFORM, NOT_PROVEN))
    return np.where(np.isnan(m) | np.isnan(u) | (below & above), -1, found).astype(np.int8)
