"""Tolerance classes that the published tables recommend for a seat, and how they are told."""

from collections.abc import Callable, Sequence
from typing import Any

import numpy as np
from attrs import frozen
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
from linter.checks.shared.seat_tables import Asked, Itself, Tally, content_of, seat_table, signed_text, tally_of
from linter.checks.shared.two_sides import BASIC
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
    votes : function
        From a row to how many sources print each class for it.
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
    votes: Callable[[int], dict[str, float]]


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
    says = (content_of(Itself(limits.table(name))) for name in (side, "bands"))
    key = ("recommended", side, low, high, limits.get("held_share"), *says)
    if key not in view.cache:
        view.cache[key] = _recommend(view, limits, side)
    found: Recommended = view.cache[key]
    return found


def _asked(view: View, limits: Limits, side: str, load: Choice, share: Floats) -> Asked:
    s, bands, unknown = view.stations, limits.table("bands"), np.isnan(share)
    in_band = {
        str(word): np.where(unknown, word in ("light", "normal"), (share >= low) & (share <= high))
        for word, low, high in zip(bands["band"], bands["from"], bands["to"], strict=True)
    }
    light_alloy = s.choice("housing_material").is_in("aluminium", "magnesium", "zinc alloy", "plastic")
    return Asked(
        s.number(BASIC[side]), load, in_band, s.choice("bearing_type"), s.choice("tolerance_class"), light_alloy,
        is_free(view, RING[side]),
    )  # fmt: skip


def _recommend(view: View, limits: Limits, side: str) -> Recommended:
    shaft = side == "shaft"
    fit = shaft_fit(view) if shaft else housing_fit(view)
    load = (inner_load_rotation if shaft else outer_load_rotation)(view, limits)
    share = load_share(view)
    unknown = np.isnan(share)
    table, asked = seat_table(Itself(limits.table(side))), _asked(view, limits, side, load, share)
    rows, like = asked.different(table)
    tally = tally_of(table, asked.take(rows), side)
    lower, upper, best = tally.lower[like], tally.upper[like], tally.best[like]
    first_lower, first_upper = tally.first_lower[like], tally.first_upper[like]
    found = upper >= lower
    lower, upper = np.where(found, lower, np.nan), np.where(found, upper, np.nan)
    labels = table.labels
    if shaft:
        smallest, largest = first_lower - fit.ring_upper, first_upper - fit.ring_lower
    else:
        smallest, largest = fit.ring_lower - first_upper, fit.ring_upper - first_lower
    return Recommended(
        lower=lower,
        upper=upper,
        first=Texts(lambda row: labels[best[row]] if found[row] else ""),
        draw=_drawn(view.stations.number(BASIC[side]), best, labels, first_lower, first_upper, found),
        accepted=_listed(tally, labels, like),
        first_lower=first_lower,
        first_upper=first_upper,
        fit_smallest=smallest,
        fit_largest=largest,
        unknown_load=unknown,
        share=share,
        votes=lambda row: dict(zip(labels, tally.votes[:, like[row]].tolist(), strict=True)),
    )


def _drawn(
    diameter: Floats, best: NDArray[np.intp], labels: Sequence[str], lower: Floats, upper: Floats, found: Bools
) -> Texts:
    """Nominal, class and deviations in mm as they are written on a drawing, by row."""

    def make(row: int) -> str:
        if not found[row]:
            return NO_CLASS
        size, name = number_text(float(diameter[row]), "mm"), labels[best[row]]
        ends = f"{signed_text(upper[row] / 1000, 'mm')}/{signed_text(lower[row] / 1000, 'mm')}"
        return f"{size} {ends}" if "/" in name else f"{size} {name} ({ends})"

    return Texts(make)


def _listed(tally: Tally, labels: Sequence[str], like: NDArray[np.intp]) -> Texts:
    """The accepted classes in words, by row, in the order of the table."""

    def told(row: int) -> str:
        votes, place = tally.votes[:, like[row]], tally.place[:, like[row]]
        found = [k for k in range(len(labels)) if votes[k] > 0]
        return ", ".join(labels[k] for k in sorted(found, key=lambda k: (place[k], labels[k])))

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
