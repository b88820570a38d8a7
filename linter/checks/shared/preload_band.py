"""Shared quantities of the preload of a machine: where its force comes from, and between which limits it lies.

Forces in N, lengths in mm; machine-level arrays of shape (machines,), NaN where not known.
"""

import math
import re
from collections.abc import Mapping
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, View, shared, within
from linter.checks.shared.contacts import contact
from linter.checks.shared.quantities import ball_count
from linter.mechanics import preload, tolerance_chain
from linter.model.stations import Bools, Floats


@frozen(eq=False)
class Length:
    """Installed length of the spring.

    Attributes
    ----------
    stated : float array
        Nominal as stated.
    nominal : float array
        As stated, else that of the chain.
    mean, half : float array
        Middle of its tolerance and half of it by root sum square; NaN where no tolerance is known.
    shortest, longest : float array
        Worst case.
    closing : float array
        Nominal closing dimension of the chain.
    problem : object array of str
        Why a chain could not be read.
    by_chain : bool array
        Rows with a chain that was read.
    """

    stated: Floats
    nominal: Floats
    mean: Floats
    half: Floats
    shortest: Floats
    longest: Floats
    closing: Floats
    problem: NDArray[Any]
    by_chain: Bools


@frozen(eq=False)
class Spring:
    """Force of the preload spring: nominal, worst case and root-sum-square limits, and the maker's tolerance (share).

    ``exact`` marks machines whose force tolerance and installed length tolerance are both known.
    """

    nominal: Floats
    smallest: Floats
    largest: Floats
    likely_smallest: Floats
    likely_largest: Floats
    tolerance: Floats
    exact: Bools


@frozen(eq=False)
class Band:
    """Preload of a machine: nominal and the limits it is known to lie in, with what stood in and what is wanted."""

    smallest: Floats
    nominal: Floats
    largest: Floats
    origin: NDArray[Any]
    missing: Mapping[str, Bools]
    assumed: tuple[Assumes, ...]


_NUMBER = r"(\d+(?:\.\d+)?)"
_PLAIN_MEMBER = re.compile(rf"([+-]){_NUMBER}(?:±{_NUMBER})?(?:\s+|$)")
_PLAIN_CHAIN = re.compile(rf"(?:{_PLAIN_MEMBER.pattern})+", re.ASCII)


def closing(text: str) -> tuple[float, float, float, float, float]:
    """Shortest, longest, mean, root-sum-square half width and nominal of what a chain of dimensions closes on [mm].

    Raises ValueError with position, what was read and what was expected. Chains of symmetric members with decimal
    points, by far the most, are read without arrays; the rest by
    :func:`linter.mechanics.tolerance_chain.parse_chain`.
    """
    if _PLAIN_CHAIN.fullmatch(text):
        nominal = worst = square = 0.0
        for sign, size, tolerance in _PLAIN_MEMBER.findall(text):
            nominal += float(sign + size)
            half = float(tolerance or 0.0)
            worst += half
            square += half * half
        return nominal - worst, nominal + worst, nominal, math.sqrt(square), nominal
    members = tolerance_chain.parse_chain(text)
    shortest, longest = tolerance_chain.worst_case(members)
    mean, half_width = tolerance_chain.root_sum_square(members)
    return (
        float(shortest),
        float(longest),
        float(mean),
        float(half_width),
        float((members.sign * members.nominal).sum()),
    )


@shared
def installed_length(view: View) -> Length:
    """Installed length of the spring from the chain of dimensions, else as stated."""
    s = view.stations
    size = s.size("spring_installed_length")
    stated = view.to_machines(within(size.nominal))
    lower, upper = view.to_machines(size.lower), view.to_machines(size.upper)
    texts = view.to_machines(s.text("spacer_stack"))
    count = view.machine_count
    shortest, longest, mean, half, nominal = (np.full(count, np.nan) for _ in range(5))
    problem = np.full(count, "", dtype=object)
    rows_of: dict[str, list[int]] = {}
    for row in np.flatnonzero(texts != ""):
        rows_of.setdefault(str(texts[row]), []).append(int(row))
    for text, rows in rows_of.items():
        try:
            found = closing(text)
        except ValueError as error:
            problem[rows] = str(error)
            continue
        for column, value in zip((shortest, longest, mean, half, nominal), found, strict=True):
            column[rows] = value
    by_chain = ~np.isnan(mean)
    own = ~by_chain & (texts == "") & (upper >= lower)
    mean = np.where(own, stated + 0.5 * (lower + upper), mean)
    half = np.where(own, 0.5 * (upper - lower), half)
    return Length(
        stated=stated,
        nominal=np.where(np.isnan(stated), nominal, stated),
        mean=mean,
        half=half,
        shortest=np.where(own, stated + lower, shortest),
        longest=np.where(own, stated + upper, longest),
        closing=nominal,
        problem=problem,
        by_chain=by_chain,
    )


@shared
def spring(view: View) -> Spring:
    """Force of the preload spring over its installed length and the maker's tolerance.

    The stated tolerance of the force at the installed length counts in full. Without one, the tolerances of rate and
    free length take its place; in the root sum square they add to that of the length.
    """
    s = view.stations
    length = installed_length(view)
    rate_size, free_size = s.size("spring_rate"), s.size("spring_free_length")
    rate, free = (within(view.to_machines(size.nominal)) for size in (rate_size, free_size))
    stated_share = view.to_machines(s.number("spring_load_tolerance")) / 100.0
    refused = (stated_share < 0.0) | (stated_share >= 1.0)
    share = np.where(refused, np.nan, stated_share)
    rate_low, rate_high = (within(view.to_machines(x)) for x in (rate_size.smallest, rate_size.largest))
    free_low, free_high = (within(view.to_machines(x)) for x in (free_size.smallest, free_size.largest))
    force = preload.linear_spring_force
    nominal = force(length.nominal, rate, free)
    by_share = ~np.isnan(stated_share)  # one that cannot be is refused, not replaced
    shortest = np.where(np.isnan(length.shortest), length.nominal, length.shortest)
    longest = np.where(np.isnan(length.longest), length.nominal, length.longest)
    mean = np.where(np.isnan(length.mean), length.nominal, length.mean)
    half = np.nan_to_num(length.half)
    small = np.where(by_share, force(longest, rate, free) * (1.0 - share), force(longest, rate_low, free_low))
    large = np.where(by_share, force(shortest, rate, free) * (1.0 + share), force(shortest, rate_high, free_high))
    middle = force(mean, rate, free)
    spread = np.sqrt(
        (rate * half) ** 2
        + (rate * 0.5 * (free_high - free_low)) ** 2
        + (0.5 * (rate_high - rate_low) * (free - mean)) ** 2
    )
    likely_small = np.where(by_share, force(mean + half, rate, free) * (1.0 - share), np.maximum(middle - spread, 0.0))
    likely_large = np.where(by_share, force(mean - half, rate, free) * (1.0 + share), middle + spread)
    known = (by_share | ~np.isnan(rate_low + rate_high + free_low + free_high)) & ~np.isnan(length.half)
    known &= ~refused
    tolerance = np.where(by_share, share, np.divide(spread, middle, out=np.full_like(middle, np.nan), where=middle > 0))
    return Spring(nominal, small, large, likely_small, likely_large, tolerance, known & ~np.isnan(nominal))


def axial_constants(view: View) -> tuple[Floats, Floats]:
    """K of F = K δ^1.5 of the first and the last bearing of each machine at their free angle [N/mm^1.5].

    Z K_n (sin α)^2.5 with the contact angle held (derived).
    """
    at = contact(view)
    constant = ball_count(view) * at.constant * np.sin(np.deg2rad(at.free_angle)) ** 2.5
    first, last = view.pair(within(constant))
    return first, last


@shared
def band(view: View) -> Band:
    """Preload of each machine: as stated, else from the spring, else from the offset of a rigid pair; 0 for none.

    A stated force without tolerance takes the spread of its spring where that is known.
    """
    s = view.stations
    method = s.choice("preload_method")
    by_spring, rigid, none = (view.to_machines(method.is_in(word)) for word in ("spring", "rigid", "none"))
    known = view.to_machines(method.known)
    size = s.size("preload_force")
    stated = within(view.to_machines(size.nominal), closed=True)
    low, high = (
        np.where(np.isnan(stated), np.nan, np.maximum(view.to_machines(x), 0.0))  # bearings are pushed, never pulled
        for x in (size.smallest, size.largest)
    )
    of_spring = spring(view)
    offset = s.size("rigid_preload_offset")
    first, last = axial_constants(view)
    by_offset, offset_low, offset_high = (
        np.where(rigid, preload.rigid_preload_after_growth(0.0, first, last, view.to_machines(x) / 1000.0), np.nan)
        for x in (offset.nominal, offset.smallest, offset.largest)
    )
    usable = ~rigid
    from_spring = np.where(usable, of_spring.nominal, np.nan)
    nominal = np.select([~np.isnan(stated), ~np.isnan(from_spring)], [stated, from_spring], by_offset)
    origin = np.select(
        [~np.isnan(stated), ~np.isnan(from_spring), ~np.isnan(by_offset)], ["stated", "spring", "offset"], ""
    ).astype(object)
    ratio_low, ratio_high = of_spring.smallest / of_spring.nominal, of_spring.largest / of_spring.nominal
    spread_known = usable & of_spring.exact
    smallest = np.select([~np.isnan(low), spread_known], [low, nominal * ratio_low], offset_low)
    largest = np.select([~np.isnan(high), spread_known], [high, nominal * ratio_high], offset_high)
    none = none & ~(stated > 0.0)
    nominal, smallest, largest = (np.where(none, 0.0, x) for x in (nominal, smallest, largest))
    wide = ~np.isnan(nominal) & (np.isnan(smallest) | np.isnan(largest))
    smallest, largest = (np.where(wide, nominal, x) for x in (smallest, largest))
    wanted = np.isnan(nominal)
    parts = {name: np.isnan(view.to_machines(s.size(name).nominal)) for name in ("spring_rate", "spring_free_length")}
    parts["spring_installed_length"] = np.isnan(installed_length(view).nominal)
    begun = by_spring & ~np.logical_and.reduce(list(parts.values()))
    missing = {
        "preload_method": wanted & ~known,
        "preload_force": wanted & known & ~begun,
        **{name: wanted & begun & absent for name, absent in parts.items()},
    }
    reason = "preload stated or computed without tolerance; the nominal force stands in for its smallest and largest"
    return Band(
        smallest, nominal, largest, origin, missing, (Assumes("preload_force", nominal, "N", reason, wide & ~none),)
    )


@frozen(eq=False)
class StationBand:
    """The same as :class:`Band` for each station."""

    smallest: Floats
    nominal: Floats
    largest: Floats
    missing: Mapping[str, Bools]
    assumed: tuple[Assumes, ...]


@shared
def station_band(view: View) -> StationBand:
    """Preload of the machine that each station belongs to."""
    found = band(view)
    return StationBand(
        smallest=view.to_stations(found.smallest),
        nominal=view.to_stations(found.nominal),
        largest=view.to_stations(found.largest),
        missing={name: view.to_stations(rows) for name, rows in found.missing.items()},
        assumed=tuple(
            Assumes(a.parameter, view.to_stations(a.values), a.unit, a.reason, view.to_stations(a.rows))
            for a in found.assumed
        ),
    )
