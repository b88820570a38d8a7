"""The normal distribution function, without paying for a library that few rows do not need."""

import math

import numpy as np
from numpy.typing import ArrayLike, NDArray

#: Up to so many values the standard library is called value by value; importing scipy would take longer.
FEW = 20_000

_few = np.frompyfunc(lambda x: 0.5 * math.erfc(-x / math.sqrt(2.0)), 1, 1)


def normal_cdf(x: ArrayLike) -> NDArray[np.float64]:
    """Share of a standard normal variable that lies below x; any shape, NaN passes, ±inf give 1 and 0.

    Φ(x) = erfc(−x/√2)/2, by the standard library for few values and by scipy for many.
    """
    values = np.asarray(x, dtype=np.float64)
    if values.size <= FEW:
        return np.asarray(_few(values), dtype=np.float64)
    from scipy.special import ndtr

    return np.asarray(ndtr(values), dtype=np.float64)
