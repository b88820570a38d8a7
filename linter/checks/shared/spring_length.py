"""Over which lengths the preload spring of a machine works, and how often its force then lies outside limits."""

from collections.abc import Callable
from typing import Any

import numpy as np
from attrs import frozen

from linter.checks.shared.base import Limits, View, shared, within
from linter.checks.shared.growth import growth_range
from linter.checks.shared.preload_band import installed_length, spring
from linter.mechanics import preload
from linter.mechanics.tolerance_chain import Chain, parse_chain
from linter.model.stations import Floats


class PerRow:
    """A number per row, computed only for the rows that a report shows (an array-like by row).

    Parameters
    ----------
    make : callable
        Row index to number.
    """

    def __init__(self, make: Callable[[int], float]) -> None:
        self._make = make

    def __getitem__(self, row: int) -> float:
        """The number of one row."""
        return self._make(row)


def share_outside(view: View, low: Floats, high: Floats, limits: Limits) -> Any:
    """Share of simulated assemblies outside the wanted force [%], an array-like by machine (fixed seed)."""
    s = view.stations
    rate, free = (view.to_machines(s.size(n).nominal) for n in ("spring_rate", "spring_free_length"))
    found, length = spring(view), installed_length(view)
    texts = view.to_machines(s.text("spacer_stack"))
    draws, seed = int(limits["draws"]), int(limits["seed"])

    def make(row: int) -> float:
        needed = (low, high, found.nominal, length.half, found.tolerance)
        if any(np.isnan(values[row]) for values in needed):
            return float("nan")
        if length.by_chain[row]:
            members = parse_chain(str(texts[row]))
        else:
            half = float(length.half[row])
            members = Chain(*(np.array([x]) for x in (1.0, float(length.mean[row]), -half, half)))
        share = preload.spring_share_outside(
            rate[row], free[row], members, found.tolerance[row], low[row], high[row], draws, seed
        )
        return 100.0 * float(share)

    return PerRow(make)


@frozen(eq=False)
class Ends:
    """Ends of the installed length [mm], thermal growth included where it is known; free length and its limits."""

    shortest: Floats
    longest: Floats
    shorter: Floats
    longer: Floats
    free: Floats
    free_low: Floats
    free_high: Floats


def stated_or(limit: Floats, nominal: Floats) -> Floats:
    """The limit of a size, its nominal where no limit is stated."""
    return np.where(np.isnan(limit), nominal, limit)


@shared
def ends(view: View) -> Ends:
    """Shortest and longest installed length of the spring and its free length, by machine."""
    length = installed_length(view)
    size = view.stations.size("spring_free_length")
    free = within(view.to_machines(size.nominal))
    shorter, longer = growth_range(view)
    return Ends(
        shortest=stated_or(length.shortest, length.nominal) + np.nan_to_num(shorter),
        longest=stated_or(length.longest, length.nominal) + np.nan_to_num(longer),
        shorter=shorter,
        longer=longer,
        free=free,
        free_low=stated_or(view.to_machines(size.smallest), free),
        free_high=stated_or(view.to_machines(size.largest), free),
    )
