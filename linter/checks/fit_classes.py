"""Chapter fit: tolerance class and grade of both seats against the published recommendations."""

from collections.abc import Callable, Mapping
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, within
from linter.checks.shared.quantities import dynamic_rating, load_ratio
from linter.checks.shared.seat_fits import (
    Fit,
    deviation_lines,
    housing_fit,
    inner_load_rotation,
    outer_load_rotation,
    rotation_wants,
    shaft_fit,
)
from linter.mechanics import fit_in_use
from linter.mechanics import limits as iso286
from linter.model.stations import Bools, Choice, Floats
from linter.model.wording import number_text, quantity_text

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
    """
    low, high = float(limits["fixed_up_to"]), float(limits["turning_from"])
    key = ("recommended", side, low, high, _content(limits.table(side)), _content(limits.table("bands")))
    if key not in view.cache:
        view.cache[key] = _recommend(view, limits, side)
    found: Recommended = view.cache[key]
    return found


def _content(table: Mapping[str, NDArray[Any]]) -> tuple[Any, ...]:
    """What a table says, to compare two of them by."""
    return tuple(column.tobytes() if column.dtype != object else tuple(column) for column in table.values())


def _recommend(view: View, limits: Limits, side: str) -> Recommended:
    s = view.stations
    table, bands = limits.table(side), limits.table("bands")
    shaft = side == "shaft"
    diameter = s.number("bore_diameter" if shaft else "outside_diameter")
    fit = shaft_fit(view) if shaft else housing_fit(view)
    load = (inner_load_rotation if shaft else outer_load_rotation)(view, limits)
    free = is_free(view, "inner" if shaft else "outer")
    share = load_share(view)
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

    count = view.count
    lower, upper = np.full(count, np.inf), np.full(count, -np.inf)
    labels: list[str] = []
    weights: list[Floats] = []
    ends: list[tuple[Floats, Floats]] = []
    for i, name in enumerate(table["tolerance_class"]):
        rows = by_load[table["ring_load"][i]] & (diameter > table["over"][i]) & (diameter <= table["incl"][i])
        rows = rows & by_family[str(table["family"][i])] & by_class[str(table["bearing_classes"][i])]
        if not rows.any():
            continue
        if table["load_band"][i] != "any":
            rows = rows & np.logical_or.reduce([in_band[w] for w in str(table["load_band"][i]).split()])
        if not shaft and table["housing"][i] != "any":
            rows = rows & light_alloy
        slides = str(table["slides"][i])
        if slides == "no":
            rows = rows & ~(free & by_load["stationary"])
        if not rows.any():
            continue
        at = np.flatnonzero(rows)
        if name:
            low, high = iso286.deviations_or_nan(str(name), diameter[at])
            label = str(name)
        else:
            low, high = (np.full(at.size, float(table[end][i])) for end in ("lower", "upper"))
            label = f"{_signed(table['upper'][i])}/{_signed(table['lower'][i])} µm"
        lower[at] = np.fmin(lower[at], low)
        upper[at] = np.fmax(upper[at], high)
        if label not in labels:
            labels.append(label)
            weights.append(np.zeros(count))
            ends.append((np.full(count, np.nan), np.full(count, np.nan)))
        k = labels.index(label)
        # the class that most sources print comes first; a class made for the role of the ring before any other
        suits = {"yes": free, "no": ~free, "possible": np.zeros(count, bool), "any": np.zeros(count, bool)}[slides]
        votes = (1.0 + str(table["source"][i]).count("; ")) * np.where(suits, 2.0, 1.0)
        weights[k][at] += votes[at] * (1.0 if name else 0.5)
        ends[k][0][at], ends[k][1][at] = low, high
    found = upper >= lower
    lower, upper = np.where(found, lower, np.nan), np.where(found, upper, np.nan)
    if not labels:
        blank, none = Texts(lambda row: ""), Texts(lambda row: NO_CLASS)
        nothing = np.full(count, np.nan)
        return Recommended(lower, upper, blank, none, blank, nothing, nothing, nothing, nothing, unknown, share)
    # the class that most sources print; for a ring with a rotating load, of those that about as many sources print,
    # the one that holds it best
    most = np.maximum.reduce(weights)
    best = np.zeros(count, dtype=np.intp)
    best_votes, best_hold = np.zeros(count), np.full(count, -np.inf)
    first_lower, first_upper = np.full(count, np.nan), np.full(count, np.nan)
    for k, (votes, (low, high)) in enumerate(zip(weights, ends, strict=True)):
        hold = np.where(by_load["stationary"], 0.0, low if shaft else -high)
        wins = (votes >= np.where(by_load["stationary"], 1.0, 0.5) * most) & (votes > 0)
        wins &= (hold > best_hold) | ((hold == best_hold) & (votes > best_votes))
        for target, value in (
            (best, k),
            (best_votes, votes),
            (best_hold, hold),
            (first_lower, low),
            (first_upper, high),
        ):
            np.copyto(target, value, where=wins)
    first = Texts(lambda row: labels[best[row]] if found[row] else "")
    if shaft:
        smallest, largest = first_lower - fit.ring_upper, first_upper - fit.ring_lower
    else:
        smallest, largest = fit.ring_lower - first_upper, fit.ring_upper - first_lower
    return Recommended(
        lower,
        upper,
        first,
        _drawn(diameter, best, labels, first_lower, first_upper, found),
        _listed(weights, labels),
        first_lower,
        first_upper,
        smallest,
        largest,
        unknown,
        share,
    )


def _signed(value: float, unit: str = "um") -> str:
    return ("+" if value > 0 else "") + number_text(float(value), unit)


def _drawn(
    diameter: Floats, best: NDArray[np.intp], labels: list[str], lower: Floats, upper: Floats, found: Bools
) -> Texts:
    """Nominal, class and deviations in mm as they are written on a drawing, by row."""

    def make(row: int) -> str:
        if not found[row]:
            return NO_CLASS
        size, name = number_text(float(diameter[row]), "mm"), labels[best[row]]
        ends = f"{_signed(upper[row] / 1000, 'mm')}/{_signed(lower[row] / 1000, 'mm')}"
        return f"{size} {ends}" if "/" in name else f"{size} {name} ({ends})"

    return Texts(make)


def _listed(weights: list[Floats], labels: list[str]) -> Texts:
    """The accepted classes in words, by row."""
    return Texts(lambda row: ", ".join(x for x, votes in zip(labels, weights, strict=True) if votes[row] > 0))


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


def _against(view: View, limits: Limits, side: str) -> Result:
    s = view.stations
    shaft = side == "shaft"
    fit = shaft_fit(view) if shaft else housing_fit(view)
    load = (inner_load_rotation if shaft else outer_load_rotation)(view, limits)
    advice = recommended(view, limits, side)
    upper = advice.upper
    assumed: list[Assumes] = []
    working = class_working(fit, advice, load)
    if shaft:
        shift, factor, solid = _hollow_shift(view, limits, advice)
        upper = upper + shift
        working.append(Working("hollow_factor", "", "interference needed over that of a solid shaft", factor))
        assumed.append(
            Assumes(
                "shaft_bore", np.zeros(view.count), "mm", "not stated; a solid shaft stands in", solid & ~load.is_in()
            )
        )
    loose_end, tight_end = advice.lower - fit.seat_lower, fit.seat_upper - upper
    width = advice.first_upper - advice.first_lower
    over = np.maximum(np.maximum(loose_end, tight_end), 0.0)
    measure = np.divide(over, width, out=np.where(np.isnan(over), np.nan, 0.0), where=width > 0)
    low_side = loose_end >= tight_end
    # on a shaft a low deviation is a loose fit, in a housing a tight one
    loose = low_side if shaft else ~low_side
    variant = np.where(measure > 0, np.where(loose, "loose", "tight"), "").astype(object)
    name = "shaft_seat_diameter" if shaft else "housing_seat_diameter"
    unknown = advice.unknown_load
    assumed.append(
        Assumes(
            "radial_load",
            np.full(view.count, "light to normal", dtype=object),
            "",
            "loads or rating not stated; the classes for light and for normal load are both accepted",
            unknown,
        )
    )
    known = load.known & (s.number("bore_diameter" if shaft else "outside_diameter") > 0)

    def told(lead: str, end: str = "") -> Callable[[int], str]:
        def tell(row: int) -> str:
            ends = (float(fit.smallest[row]), float(fit.largest[row]))
            if np.isnan(ends).any():  # no ring tolerances in the tables, as for tapered rollers
                return ""
            return f": interference {lead}{' to '.join(quantity_text(value, 'um') for value in ends)}{end}"

        return tell

    return Result(
        measure=measure,
        unit="um",
        observed=np.where(low_side, fit.seat_lower, fit.seat_upper),
        lower=advice.lower,
        upper=upper,
        applies=~(known & np.isnan(advice.lower)),
        reason="no published table has a class for this load, size and bearing",
        missing={
            name: np.isnan(fit.seat_lower) & s.known("bore_diameter" if shaft else "outside_diameter"),
            **rotation_wants(view, limits),
        },
        variant=variant,
        facts={
            **advice_facts(advice),
            "fit_told": told(""),
            "fit_found": told("is ", " (negative: clearance)"),
            "article": np.where(load.is_in("indeterminate"), "an", "a").astype(object),
        },
        assumed=assumed,
        working=working,
    )


def _hollow_shift(view: View, limits: Limits, advice: Recommended) -> tuple[Floats, Floats, Bools]:
    """How much tighter a hollow shaft may be drawn [um], the factor of its interference, and rows taken as solid."""
    s = view.stations
    bore, outside = within(s.number("bore_diameter")), within(s.number("outside_diameter"))
    hole = s.number("shaft_bore")
    thin = (hole / bore > limits["hollow_from"]) & (hole < bore) & (outside > bore)
    factor = np.ones(view.count)
    if thin.any():
        ring = fit_in_use.inner_ring_outside_diameter(bore[thin], outside[thin], limits["ring_share"])
        factor[thin] = fit_in_use.hollow_shaft_factor(hole[thin], bore[thin], ring)
    mean = np.maximum(0.5 * (advice.fit_smallest + advice.fit_largest), 0.0)
    return np.where(thin, (factor - 1.0) * mean, 0.0), factor, np.isnan(hole)


def shaft_class(view: View, limits: Limits) -> Result:
    """Shaft seat against the published classes for its load, size, bearing and role (clause ``fit.shaft-class``)."""
    return _against(view, limits, "shaft")


def housing_class(view: View, limits: Limits) -> Result:
    """Housing seat against the published classes (clause ``fit.housing-class``)."""
    return _against(view, limits, "housing")


def grade(view: View, limits: Limits) -> Result:
    """Width of both seat tolerances against the grades that the tolerance class deserves (clause ``fit.grade``)."""
    s = view.stations
    table = limits.table("grades")
    accuracy = s.choice("tolerance_class")
    measures, marks = [], []
    for side, fit, name in (
        ("shaft", shaft_fit(view), "bore_diameter"),
        ("housing", housing_fit(view), "outside_diameter"),
    ):
        near, far = (np.full(view.count, np.nan) for _ in range(2))
        near_word = np.full(view.count, "", dtype=object)
        for i in np.flatnonzero(table["seat"] == side):
            rows = accuracy.is_in(str(table["bearing_class"][i]))
            near[rows] = iso286.it_value_or_nan(str(table["near"][i]), s.number(name)[rows])
            far[rows] = iso286.it_value_or_nan(str(table["far"][i]), s.number(name)[rows])
            near_word[rows] = str(table["near"][i])
        width = np.round(fit.seat_upper - fit.seat_lower, 6)
        measures.append(ladder(width, np.round(near, 6), np.round(far, 6)))
        marks.append((width, near, far, near_word))
    on_shaft = np.nan_to_num(measures[0]) >= np.nan_to_num(measures[1])
    worst = np.fmax(*measures)
    unknown = [np.isnan(m) & ~(worst > 1.0) for m in measures]
    width, near, far = (np.where(on_shaft, a, b) for a, b in zip(marks[0][:3], marks[1][:3], strict=True))
    return Result(
        measure=np.where(unknown[0] | unknown[1], np.nan, worst),
        unit="um",
        observed=width,
        upper=near,
        missing={
            "shaft_seat_diameter": unknown[0] & np.isnan(marks[0][0]) & s.known("bore_diameter"),
            "housing_seat_diameter": unknown[1] & np.isnan(marks[1][0]) & s.known("outside_diameter"),
        },
        variant=np.where(on_shaft, "shaft", "housing").astype(object),
        facts={"grade": np.where(on_shaft, marks[0][3], marks[1][3]), "coarsest": (far, "um")},
        working=[
            Working("shaft_width", "T", "tolerance of the shaft seat", marks[0][0], "um", "upper less lower deviation"),
            Working("shaft_near", "IT", "finer grade asked for on the shaft", marks[0][1], "um", "table, ISO 286-1"),
            Working("shaft_far", "IT", "coarsest grade on the shaft", marks[0][2], "um", "table, ISO 286-1"),
            Working("housing_width", "T", "tolerance of the housing seat", marks[1][0], "um", "upper less lower"),
            Working("housing_near", "IT", "finer grade asked for in the housing", marks[1][1], "um", "table"),
            Working("housing_far", "IT", "coarsest grade in the housing", marks[1][2], "um", "table, ISO 286-1"),
        ],
    )


def split_housing(view: View, limits: Limits) -> Result:
    """A housing split through the bore must not pinch the ring (clause ``fit.split-housing``)."""
    s = view.stations
    fit = housing_fit(view)
    diameter = s.number("outside_diameter")
    lowest, _ = iso286.deviations_or_nan(limits["tightest"], diameter)
    forbidden, _ = iso286.deviations_or_nan(limits["forbidden"], diameter)
    finest = iso286.it_value_or_nan(limits["finest"], diameter)
    lowest, forbidden, finest = (np.round(v, 6) for v in (lowest, forbidden, finest))
    pinch = lowest - fit.seat_lower
    room = np.maximum(lowest - forbidden, 1e-6)
    width = np.round(fit.seat_upper - fit.seat_lower, 6)
    tight = np.where(pinch > 0, 1.0 + pinch / room, 0.0)
    fine = np.where(width < finest, 1.0 - width / finest, 0.0)
    measure = np.where(np.isnan(pinch + width), np.nan, np.maximum(tight, fine))
    return Result(
        measure=measure,
        unit="um",
        observed=fit.seat_lower,
        lower=lowest,
        applies=~s.choice("housing_split").is_in("no"),
        reason="the housing is not split",
        missing={"housing_seat_diameter": np.isnan(fit.seat_lower) & s.known("outside_diameter")},
        variant=np.where(tight > 0, "", np.where(fine > 0, "fine", "")).astype(object),
        facts={"width": (width, "um"), "finest": (finest, "um")},
        working=[
            *deviation_lines(fit, "the housing seat", "the outer ring"),
            Working("lowest", "", f"lower deviation of {limits['tightest']}", lowest, "um", "ISO 286-1"),
            Working("forbidden_lower", "", f"lower deviation of {limits['forbidden']}", forbidden, "um", "ISO 286-1"),
        ],
    )
