"""Chapter fit: tolerance class and grade of both seats against the published recommendations."""

from collections.abc import Callable

import numpy as np

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, within
from linter.checks.shared.retention import retention_cap
from linter.checks.shared.seat_classes import Recommended, advice_facts, class_working, recommended
from linter.checks.shared.seat_fits import (
    deviation_lines,
    housing_fit,
    inner_load_rotation,
    outer_load_rotation,
    rotation_wants,
    shaft_fit,
)
from linter.mechanics import fit_in_use
from linter.mechanics import limits as iso286
from linter.model.digits import fit_text
from linter.model.stations import Bools, Floats
from linter.model.wording import quantity_text


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
    retention = s.choice("inner_ring_retention" if shaft else "outer_ring_retention")
    measure = np.where(loose, np.minimum(measure, retention_cap(retention, limits)), measure)
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

    def fit_words(row: int) -> str:
        ends = (float(fit.smallest[row]), float(fit.largest[row]))
        return "" if np.isnan(ends).any() else f": {fit_text(*ends, 'um')}"

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
        facts=lambda: {
            **advice_facts(advice),
            "fit_told": told(""),
            "fit_words": fit_words,
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
        withheld={
            "shaft_seat_diameter": np.isnan(measures[0]) & (worst > 1.0),
            "housing_seat_diameter": np.isnan(measures[1]) & (worst > 1.0),
        },
        variant=lambda: np.where(on_shaft, "shaft", "housing").astype(object),
        facts=lambda: {"grade": np.where(on_shaft, marks[0][3], marks[1][3]), "coarsest": (far, "um")},
        working=lambda: [
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
        variant=lambda: np.where(tight > 0, "", np.where(fine > 0, "fine", "")).astype(object),
        facts=lambda: {"width": (width, "um"), "finest": (finest, "um")},
        working=lambda: [
            *deviation_lines(fit, "the housing seat", "the outer ring"),
            Working("lowest", "", f"lower deviation of {limits['tightest']}", lowest, "um", "ISO 286-1"),
            Working("forbidden_lower", "", f"lower deviation of {limits['forbidden']}", forbidden, "um", "ISO 286-1"),
        ],
    )
