"""Complete elliptic integrals by the arithmetic-geometric mean, exact to the last digits from circle to line."""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray


class Complete(NamedTuple):
    """Complete elliptic integrals, each of the argument's shape.

    ``first`` is K, ``second`` E, ``minor`` D = (K − E)/m and ``major`` B = (E − (1 − m) K)/m, with the parameter m; D
    and B stay exact where the differences of K and E would lose their digits.
    """

    first: NDArray[np.float64]
    second: NDArray[np.float64]
    major: NDArray[np.float64]
    minor: NDArray[np.float64]


def complete(complement: ArrayLike) -> Complete:
    """K, E, B and D from the complementary parameter q = 1 − m = k'².

    Parameters
    ----------
    complement : array_like
        q, 0 < q <= 1; any shape. For an ellipse of contact it is (b/a)².

    Returns
    -------
    Complete

    Raises
    ------
    ValueError
        q out of range.

    Notes
    -----
    a_0 = 1, b_0 = √q, c_0² = m; the mean of a and b, their geometric mean, and c_(n+1) = c_n²/(4 a_(n+1)) without a
    difference; K = π/(2 a), (K − E)/K = Σ 2^(n−1) c_n². Source: Abramowitz and Stegun, Handbook of mathematical
    functions, 17.6 (from memory); checked against mpmath and scipy.

    """
    q = np.asarray(complement, dtype=np.float64)
    if np.any((q <= 0.0) | (q > 1.0)):
        raise ValueError(f"the complementary parameter must lie above 0 and up to 1, got {float(np.nanmin(q))!r}")
    m = 1.0 - q
    a, b = np.ones_like(q), np.sqrt(q)
    # c_1 = m/(2 (1 + √q)), so that c_1²/m needs no division by m
    c, share = m / (2.0 * (1.0 + b)), m / (4.0 * (1.0 + b) ** 2)
    a, b = 0.5 * (a + b), np.sqrt(b)
    total, weight = 0.5 + share, 2.0
    for _ in range(12):
        if not np.any(c > 1e-9 * a):
            break
        a, b = 0.5 * (a + b), np.sqrt(a * b)
        ratio = c / (4.0 * a)
        share = share * ratio**2  # c_(n+1)²/m = c_n²/m · (c_n/(4 a_(n+1)))²
        c = c * ratio
        total = total + weight * share
        weight *= 2.0
    first = 0.5 * np.pi / a
    minor = first * total
    return Complete(first, first - m * minor, first - minor, minor)
