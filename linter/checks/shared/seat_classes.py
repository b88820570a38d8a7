"""Tolerance classes that the published tables recommend for a seat, and how they are told."""

from collections.abc import Callable, Mapping
from typing import Any

import numpy as np
from attrs import define, field, frozen
from numpy.typing import NDArray

from linter.checks.shared.base import Limits, View, Working, within
from linter.checks.shared.quantities import dynamic_rating, load_ratio
from linter.checks.shared.seat_fits import (
    Fit,
    deviation_lines,
    housing_fit,
    inner_load_rotation,
    outer_load_rotation,
    shaft_fit,
)
from linter.checks.shared.two_sides import BASIC
from linter.mechanics import limits as iso286
from linter.model.stations import Bools, Choice, Floats
from linter.model.wording import number_text

RING = {"shaft": "inner", "housing": "outer"}
NO_CLASS = "a class agreed with the bearing's maker (published tables print none here)"


class Texts:
    """A text per row, composed only for the rows that a report shows (an array-like by row).

    Parameters
    ----------
    make : callable
        Row index to text.
    """

    def __init__(self, make: Callable[[int], str]) -> None:
        self._make = make

    def __getitem__(self, row: int) -> str:
        """The text of one row."""
        return self._make(row)


@frozen(eq=False)
class Recommended:
    """What the published tables recommend for one seat, arrays of shape (rows,).

    Attributes
    ----------
    lower, upper : float array
        Deviations [um] that all accepted classes together span; NaN where no row of the table fits.
    first, draw, accepted : text by row
        The class that most sources print; the same with nominal and deviations as it is drawn; every accepted class.
    first_lower, first_upper : float array
        Deviations of that class [um].
    fit_smallest, fit_largest : float array
        Interference with that class [um].
    unknown_load : bool array
        Rows whose load band is not known: light and normal load are both accepted.
    share : float array
        P/C, NaN where not known.
    votes : dict of str to float array
        How many sources print each class for a station.
    """

    lower: Floats
    upper: Floats
    first: Texts
    draw: Texts
    accepted: Any
    first_lower: Floats
    first_upper: Floats
    fit_smallest: Floats
    fit_largest: Floats
    unknown_load: Bools
    share: Floats
    votes: Mapping[str, Floats] = field(factory=dict)


def load_share(view: View) -> Floats:
    """P/C: the inverse of the load ratio; for cylindrical and needle roller bearings F_r/C; NaN where not known."""
    s = view.stations
    share = np.divide(1.0, load_ratio(view), out=np.full(view.count, np.nan), where=load_ratio(view) > 0)
    radial = s.choice("bearing_type").is_in("cylindrical roller", "needle roller")
    by_radial = within(s.number("radial_load"), closed=True) / within(dynamic_rating(view).value)
    return np.where(np.isnan(share) & radial, by_radial, share)


def is_free(view: View, ring: str) -> Bools:
    """Rows where this ring must be able to move axially on its seat."""
    s = view.stations
    return s.choice("axial_role").is_in("floating", "spring-loaded") & s.choice("free_ring").is_in(ring)


def _words_mask(cells: NDArray[Any], choice: Choice, default: str) -> dict[str, Bools]:
    """Rows that each cell (words joined by blanks) is about."""
    found = {}
    for cell in dict.fromkeys(map(str, cells)):
        words = cell.split()
        rows = choice.is_in(*(word for word in words if word in choice.words))
        found[cell] = rows | ~choice.known if default in words else rows
    return found


def _family(view: View, word: str) -> Bools:
    """Rows of a bearing family of the tables; a bearing that states no type counts as a ball bearing."""
    kind = view.stations.choice("bearing_type")
    if word == "any":
        return np.ones(view.count, dtype=bool)
    if word == "ball":
        return kind.is_in("deep groove ball", "angular contact ball") | ~kind.known
    return kind.is_in(word) if word in kind.words else np.zeros(view.count, dtype=bool)


def recommended(view: View, limits: Limits, side: str) -> Recommended:
    """Published classes for one seat by load rotation, load band, bearing family, size, tolerance class and role.

    Parameters
    ----------
    view : View
        Stations.
    limits : Limits
        With the table of the seat under the name of its side, the load bands as ``bands``, and the limits of
        :func:`linter.checks.shared.seat_fits.load_turning`.
    side : {"shaft", "housing"}
        Which seat.

    Returns
    -------
    Recommended
        Computed once for the same limits.
    """
    low, high = float(limits["fixed_up_to"]), float(limits["turning_from"])
    key = (
        "recommended",
        side,
        low,
        high,
        limits.get("held_share"),
        _content(limits.table(side)),
        _content(limits.table("bands")),
    )
    if key not in view.cache:
        view.cache[key] = _recommend(view, limits, side)
    found: Recommended = view.cache[key]
    return found


def _content(table: Mapping[str, NDArray[Any]]) -> tuple[Any, ...]:
    """What a table says, to compare two of them by."""
    return tuple(column.tobytes() if column.dtype != object else tuple(column) for column in table.values())


@define
class _Tally:
    """Votes of the sources for each class, arrays of shape (rows,) by label, and the deviations that all span.

    ``order`` tells the place in the table where a class comes first for a station, infinite where it does not: what one
    station is told must not depend on the others of a table.
    """

    lower: Floats
    upper: Floats
    votes: dict[str, Floats]
    ends: dict[str, tuple[Floats, Floats]]
    order: dict[str, Floats]

    def add(self, place: int, label: str, at: NDArray[np.intp], votes: Floats, low: Floats, high: Floats) -> None:
        """Count one row of a table for the stations ``at``, with the deviations [um] that it prints there."""
        self.lower[at] = np.fmin(self.lower[at], low)
        self.upper[at] = np.fmax(self.upper[at], high)
        count = len(self.lower)
        counted = self.votes.setdefault(label, np.zeros(count))
        ends = self.ends.setdefault(label, (np.full(count, np.nan), np.full(count, np.nan)))
        counted[at] += votes
        ends[0][at], ends[1][at] = low, high
        order = self.order.setdefault(label, np.full(count, np.inf))
        order[at] = np.fmin(order[at], place)


def _rows_of_table(view: View, limits: Limits, side: str, load: Choice, share: Floats) -> list[Bools]:
    """The stations that each row of the table of a seat is about."""
    s = view.stations
    table, bands = limits.table(side), limits.table("bands")
    shaft = side == "shaft"
    diameter = s.number(BASIC[side])
    unknown = np.isnan(share)
    in_band = {
        str(word): np.where(unknown, word in ("light", "normal"), (share >= low) & (share <= high))
        for word, low, high in zip(bands["band"], bands["from"], bands["to"], strict=True)
    }
    by_load = {word: load.is_in(word) for word in load.words}
    if shaft:  # the published rows for an indeterminate load are those for a rotating one
        by_load["rotating"] = load.is_in("rotating", "indeterminate")
    by_family = {str(word): _family(view, str(word)) for word in set(table["family"])}
    by_class = _words_mask(table["bearing_classes"], s.choice("tolerance_class"), "Normal")
    light_alloy = s.choice("housing_material").is_in("aluminium", "magnesium", "zinc alloy", "plastic")
    slides_on_point_load = is_free(view, RING[side]) & by_load["stationary"]
    found = []
    for i, ring_load in enumerate(table["ring_load"]):
        rows = by_load[ring_load] & (diameter > table["over"][i]) & (diameter <= table["incl"][i])
        rows = rows & by_family[str(table["family"][i])] & by_class[str(table["bearing_classes"][i])]
        if table["load_band"][i] != "any" and rows.any():
            rows = rows & np.logical_or.reduce([in_band[w] for w in str(table["load_band"][i]).split()])
        if not shaft and table["housing"][i] != "any":
            rows = rows & light_alloy
        if table["slides"][i] == "no":
            rows = rows & ~slides_on_point_load
        found.append(rows)
    return found


def _tally(view: View, limits: Limits, side: str, rows_of: list[Bools]) -> _Tally:
    """Every row of the table of a seat counted for the stations that it is about."""
    table = limits.table(side)
    diameter, free = view.stations.number(BASIC[side]), is_free(view, RING[side])
    suits = {"yes": free, "no": ~free}
    tally = _Tally(np.full(view.count, np.inf), np.full(view.count, -np.inf), {}, {}, {})
    for i, name in enumerate(table["tolerance_class"]):
        at = np.flatnonzero(rows_of[i])
        if not at.size:
            continue
        if name:
            low, high = iso286.deviations_or_nan(str(name), diameter[at])
            label = str(name)
        else:
            low, high = (np.full(at.size, float(table[end][i])) for end in ("lower", "upper"))
            label = f"{signed_text(table['upper'][i])}/{signed_text(table['lower'][i])} µm"
        # the class that most sources print comes first; a class made for the role of the ring before any other
        votes = np.full(at.size, (1.0 + str(table["source"][i]).count("; ")) * (1.0 if name else 0.5))
        if table["slides"][i] in suits:
            votes[suits[table["slides"][i]][at]] *= 2.0
        tally.add(i, label, at, votes, low, high)
    return tally


def _best(tally: _Tally, stationary: Bools, *, shaft: bool) -> tuple[NDArray[np.intp], Floats, Floats]:
    """Number of the class that most sources print and its deviations [um].

    For a ring with a rotating load, of those that about as many sources print, the one that holds it best.
    """
    most = np.maximum.reduce(list(tally.votes.values()))
    best = np.zeros(len(most), dtype=np.intp)
    best_votes, best_hold, first = np.zeros(len(most)), np.full(len(most), -np.inf), np.full(len(most), np.inf)
    lower, upper = np.full(len(most), np.nan), np.full(len(most), np.nan)
    for k, (label, votes) in enumerate(tally.votes.items()):
        low, high = tally.ends[label]
        hold = np.where(stationary, 0.0, low if shaft else -high)
        wins = (votes >= np.where(stationary, 1.0, 0.5) * most) & (votes > 0)
        place = tally.order[label]
        more = (votes > best_votes) | ((votes == best_votes) & (place < first))
        wins &= (hold > best_hold) | ((hold == best_hold) & more)
        held = ((best, k), (best_votes, votes), (best_hold, hold), (first, place), (lower, low), (upper, high))
        for target, value in held:
            np.copyto(target, value, where=wins)
    return best, lower, upper


def _recommend(view: View, limits: Limits, side: str) -> Recommended:
    shaft = side == "shaft"
    fit = shaft_fit(view) if shaft else housing_fit(view)
    load = (inner_load_rotation if shaft else outer_load_rotation)(view, limits)
    share = load_share(view)
    unknown = np.isnan(share)
    tally = _tally(view, limits, side, _rows_of_table(view, limits, side, load, share))
    found = tally.upper >= tally.lower
    lower, upper = np.where(found, tally.lower, np.nan), np.where(found, tally.upper, np.nan)
    if not tally.votes:
        blank, none = Texts(lambda row: ""), Texts(lambda row: NO_CLASS)
        nothing = np.full(view.count, np.nan)
        return Recommended(lower, upper, blank, none, blank, nothing, nothing, nothing, nothing, unknown, share)
    best, first_lower, first_upper = _best(tally, load.is_in("stationary"), shaft=shaft)
    labels, weights = list(tally.votes), list(tally.votes.values())
    if shaft:
        smallest, largest = first_lower - fit.ring_upper, first_upper - fit.ring_lower
    else:
        smallest, largest = fit.ring_lower - first_upper, fit.ring_upper - first_lower
    return Recommended(
        lower=lower,
        upper=upper,
        first=Texts(lambda row: labels[best[row]] if found[row] else ""),
        draw=_drawn(view.stations.number(BASIC[side]), best, labels, first_lower, first_upper, found),
        accepted=_listed(weights, labels, list(tally.order.values())),
        first_lower=first_lower,
        first_upper=first_upper,
        fit_smallest=smallest,
        fit_largest=largest,
        unknown_load=unknown,
        share=share,
        votes=tally.votes,
    )


def signed_text(value: float, unit: str = "um") -> str:
    """A deviation with its sign, as it is written on a drawing."""
    return ("+" if value > 0 else "") + number_text(float(value), unit)


def _drawn(
    diameter: Floats, best: NDArray[np.intp], labels: list[str], lower: Floats, upper: Floats, found: Bools
) -> Texts:
    """Nominal, class and deviations in mm as they are written on a drawing, by row."""

    def make(row: int) -> str:
        if not found[row]:
            return NO_CLASS
        size, name = number_text(float(diameter[row]), "mm"), labels[best[row]]
        ends = f"{signed_text(upper[row] / 1000, 'mm')}/{signed_text(lower[row] / 1000, 'mm')}"
        return f"{size} {ends}" if "/" in name else f"{size} {name} ({ends})"

    return Texts(make)


def _listed(weights: list[Floats], labels: list[str], order: list[Floats]) -> Texts:
    """The accepted classes in words, by row, in the order of the table."""

    def told(row: int) -> str:
        found = zip(order, labels, weights, strict=True)
        return ", ".join(label for _, label in sorted((o[row], x) for o, x, votes in found if votes[row] > 0))

    return Texts(told)


def class_working(fit: Fit, advice: Recommended, load: Choice) -> list[Working]:
    """Working lines that every clause about the class of a seat shows."""
    return [
        Working("ring_load", "", "load seen by the ring", load.texts()),
        Working("load_share", "P/C", "equivalent load over dynamic rating", advice.share),
        *deviation_lines(fit),
        Working("fit_smallest", "", "smallest interference", fit.smallest, "um", "shaft minus hole at the limits"),
        Working("fit_mean", "", "mean interference", fit.mean, "um"),
        Working("fit_largest", "", "largest interference", fit.largest, "um", "shaft minus hole at the limits"),
        Working("window_lower", "", "lowest deviation of the accepted classes", advice.lower, "um", "table"),
        Working("window_upper", "", "highest deviation of the accepted classes", advice.upper, "um", "table"),
        Working("accepted", "", "classes that published tables accept here", advice.accepted),
    ]


def advice_facts(advice: Recommended, prefix: str = "draw") -> dict[str, Any]:
    """Facts for a remedy that names the class to draw."""
    return {
        prefix: advice.draw,
        f"{prefix}_smallest": (advice.fit_smallest, "um"),
        f"{prefix}_largest": (advice.fit_largest, "um"),
    }
