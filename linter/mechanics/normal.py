"""The normal distribution function, without paying for a library that few rows do not need."""

import math

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]

#: Up to so many values the standard library is called value by value.
FEW = 300
#: Rational approximations by falling powers, numerator and denominator: of erf(y)/y in y² to 0.46875, of
#: exp(y²) erfc(y) in y to 4, and of what it lacks to 1/(y √π) in 1/y² beyond (W. J. Cody, Rational Chebyshev
#: approximations for the error function, Math. Comp. 23, 1969, from memory; within 2e-15 of the standard library).
_NEAR = (
    (1.85777706184603153e-1, 3.16112374387056560e0, 1.13864154151050156e2, 3.77485237685302021e2,
     3.20937758913846947e3),
    (1.0, 2.36012909523441209e1, 2.44024637934444173e2, 1.28261652607737228e3, 2.84423683343917062e3),
)  # fmt: skip
_MIDDLE = (
    (2.15311535474403846e-8, 5.64188496988670089e-1, 8.88314979438837594e0, 6.61191906371416295e1,
     2.98635138197400131e2, 8.81952221241769090e2, 1.71204761263407058e3, 2.05107837782607147e3,
     1.23033935479799725e3),
    (1.0, 1.57449261107098347e1, 1.17693950891312499e2, 5.37181101862009858e2, 1.62138957456669019e3,
     3.29079923573345963e3, 4.36261909014324716e3, 3.43936767414372164e3, 1.23033935480374942e3),
)  # fmt: skip
_FAR = (
    (1.63153871373020978e-2, 3.05326634961232344e-1, 3.60344899949804439e-1, 1.25781726111229246e-1,
     1.60837851487422766e-2, 6.58749161529837803e-4),
    (1.0, 2.56852019228982242e0, 1.87295284992346725e0, 5.27905102951428412e-1, 6.05183413124413191e-2,
     2.33520497626869185e-3),
)  # fmt: skip

_few = np.frompyfunc(lambda x: 0.5 * math.erfc(-x / math.sqrt(2.0)), 1, 1)


def normal_cdf(x: ArrayLike) -> Array:
    """Share of a standard normal variable that lies below x; any shape, NaN passes, ±inf give 1 and 0.

    Φ(x) = erfc(−x/√2)/2, by the standard library for few values and by rational approximations for many.
    """
    values = np.asarray(x, dtype=np.float64)
    if values.size <= FEW:
        return np.asarray(_few(values), dtype=np.float64)
    y = np.minimum(np.abs(values) / math.sqrt(2.0), 40.0)
    tail = np.full(y.shape, np.nan)
    near, far = y <= 0.46875, y > 4.0
    middle = ~(near | far) & (y > 0.0)
    tail[near] = 1.0 - y[near] * _ratio(_NEAR, y[near] ** 2)
    tail[middle] = _bell(y[middle]) * _ratio(_MIDDLE, y[middle])
    square = y[far] ** -2
    tail[far] = _bell(y[far]) * (1.0 / math.sqrt(math.pi) - square * _ratio(_FAR, square)) / y[far]
    return np.where(values > 0.0, 1.0 - 0.5 * tail, 0.5 * tail)


def _ratio(powers: tuple[tuple[float, ...], tuple[float, ...]], y: Array) -> Array:
    above, below = np.full(y.shape, powers[0][0]), np.full(y.shape, powers[1][0])
    for part, constants in ((above, powers[0]), (below, powers[1])):
        for constant in constants[1:]:
            part *= y
            part += constant
    return above / below


def _bell(y: Array) -> Array:
    """exp(−y²), its square taken apart so that a large one keeps its last digits."""
    whole = np.trunc(16.0 * y) / 16.0
    return np.asarray(np.exp(-whole * whole) * np.exp((whole - y) * (whole + y)))
