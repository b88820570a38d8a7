"""First and total Sobol indices from a radial design: how much of a variance each input and its interactions make.

Saltelli et al., "Variance based sensitivity analysis of model output", Computer Physics Communications 181 (2010)
259-270: table 2, estimators (b) for the first order and (f), by Jansen, for the total (from memory of that table).
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray


def indices(base: ArrayLike, other: ArrayLike, mixed: ArrayLike) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """First and total indices of every input.

    Parameters
    ----------
    base, other : array_like, shape (draws, ...)
        The output on two independent samples A and B of the inputs.
    mixed : array_like, shape (inputs, draws, ...)
        The output on A with one input taken from B, for each input.

    Returns
    -------
    first, total : float array, shape (inputs, ...)
        Between 0 and 1 but for sampling; NaN where the output does not vary or is not known.

    Notes
    -----
    The output is centred first: the estimator of the first order loses digits on a large mean.
    """
    a, b, ab = np.asarray(base, dtype=float), np.asarray(other, dtype=float), np.asarray(mixed, dtype=float)
    both = np.concatenate([a, b])
    centre = both.mean(axis=0)
    variance = both.var(axis=0)
    scale = np.max(np.abs(both), axis=0, initial=0.0)
    varies = variance > (1e-9 * scale) ** 2
    variance = np.where(varies, variance, np.nan)
    first = np.mean((b - centre) * (ab - a), axis=1) / variance
    total = 0.5 * np.mean((a - ab) ** 2, axis=1) / variance
    return first, total
