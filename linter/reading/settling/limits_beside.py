"""Two limits of a size in one cell beside its nominal in another (``25 | 24.993 / 24.980``): they are of that nominal.

The middle of two limits stands in for a nominal only where none is stated; beside one it is no second size.
"""

import numpy as np
from attrs import evolve

from linter.reading.settling.one_value import Stated

#: Farthest that limits of a size lie from its nominal (part of it): other sizes are asked about (common practice).
NEAR = 0.02


def of_their_nominal(stated: list[Stated]) -> list[Stated]:
    """Cells of one size, those with two limits counted from the nominal that another cell of their group states.

    Parameters
    ----------
    stated : list of Stated
        All cells that state the size or a part of it.

    Returns
    -------
    list of Stated
        The same cells.
    """
    values = [one for one in stated if one.strip.aspect in ("value", "tolerance")]
    if len(values) < 2 or all(one.values.limits is None or not one.values.limits.any() for one in values):
        return stated
    nominal: dict[int, set[float]] = {}
    for one in values:
        limits = one.values.limits
        for group, cell in zip(one.group.tolist(), one.cell.tolist(), strict=True):
            number = float(one.values.number[cell])
            if not np.isnan(number) and not (limits is not None and limits[cell]):
                nominal.setdefault(group, set()).add(number)
    return [_counted(one, nominal) for one in stated]


def _counted(one: Stated, nominal: dict[int, set[float]]) -> Stated:
    """The cells with two limits as deviations from the one nominal of their group."""
    values = one.values
    if values.limits is None or values.lower is None or values.upper is None:
        return one
    number, lower, upper = values.number.copy(), values.lower.copy(), values.upper.copy()
    limits = values.limits.copy()
    cells, counts = np.unique(one.cell, return_counts=True)
    alone = set(cells[counts == 1].tolist())
    for group, cell in zip(one.group.tolist(), one.cell.tolist(), strict=True):
        sizes = nominal.get(group, set())
        if not limits[cell] or cell not in alone or len(sizes) != 1:
            continue
        shift = float(number[cell]) - next(iter(sizes))
        if abs(shift) <= NEAR * abs(float(number[cell])):
            number[cell], limits[cell] = np.nan, False
            lower[cell], upper[cell] = round(lower[cell] + shift, 9), round(upper[cell] + shift, 9)
    return evolve(one, values=evolve(values, number=number, lower=lower, upper=upper, limits=limits))
