"""Chapter fit: which ring sees a rotating load, and whether its fit holds it while the other ring may slide."""

from functools import partial

import numpy as np

from linter.checks.shared.base import Limits, Result, View, Working
from linter.checks.shared.retention import clearance_share, retention_cap
from linter.checks.shared.seat_classes import advice_facts, recommended
from linter.checks.shared.seat_fits import (
    Fit,
    deviation_lines,
    direction_assumed,
    fixed_radial_load,
    held_by_preload,
    housing_fit,
    inner_load_rotation,
    load_turning,
    outer_load_rotation,
    probable_half,
    rotation_wants,
    rotor_unbalance,
    shaft_fit,
    turning_load,
    turning_on_preload,
    turning_ratio,
    unbalance_force,
    unbalance_ratio,
)
from linter.model.digits import fit_text
from linter.model.stations import Bools, Choice, Floats
from linter.model.wording import quantity_text, value_text


def _ring_measure(fit: Fit, load: Choice, limits: Limits) -> Floats:
    share = clearance_share(fit.smallest, fit.largest)
    by_load = load.map({"stationary": 0.0, "rotating": 1.0, "indeterminate": float(limits["indeterminate_factor"])})
    return np.where(load.is_in("stationary"), 0.0, share * by_load)


_VARIANTS = (
    "inner", "inner_near", "inner_held", "outer", "outer_near", "outer_held",
    "", "both", "outgrown", "outgrown_residual", "unloaded", "contradicted", "preloaded",
)  # fmt: skip


def load_rotation(view: View, limits: Limits) -> Result:
    """A ring that sees a rotating load has no possible clearance (clause ``fit.load-rotation``)."""
    s = view.stations
    inner_fit, outer_fit = shaft_fit(view), housing_fit(view)
    inner, outer = inner_load_rotation(view, limits), outer_load_rotation(view, limits)
    inner_loose, outer_loose = _ring_measure(inner_fit, inner, limits), _ring_measure(outer_fit, outer, limits)
    shaft, housing = recommended(view, limits, "shaft"), recommended(view, limits, "housing")
    inner_printed, outer_printed = inner_fit.seat_lower >= shaft.lower, outer_fit.seat_upper <= housing.upper
    inner_measure = np.minimum(inner_loose, retention_cap(s.choice("inner_ring_retention"), limits))
    outer_measure = np.minimum(outer_loose, retention_cap(s.choice("outer_ring_retention"), limits))
    held_inner, held_outer = inner_measure < inner_loose, outer_measure < outer_loose
    low = limits.get("published_met", limits["published"])
    light = (shaft.share <= limits.get("light_up_to", 0.0)) | np.isnan(shaft.share)

    def printed_cap(fit: Fit, other: Bools) -> Floats:
        return np.where(other | (fit.mean - probable_half(fit) >= 0), low, limits["published"])

    inner_cap, outer_cap = printed_cap(inner_fit, light), printed_cap(outer_fit, np.zeros(view.count, dtype=bool))
    inner_measure = np.where(inner_printed, np.minimum(inner_measure, inner_cap), inner_measure)
    outer_measure = np.where(outer_printed, np.minimum(outer_measure, outer_cap), outer_measure)
    ratio = unbalance_ratio(view)
    direction, rests = s.choice("load_direction"), held_by_preload(view, limits)
    outgrown = direction.is_in("stationary") & (ratio > limits["fixed_up_to"] * (1 + 1e-9)) & ~rests
    by_figures = limits.get("held_share") is not None
    contradicted = by_figures & direction.is_in("rotating") & (turning_ratio(view) <= limits["fixed_up_to"])
    worst = np.fmax(inner_measure, outer_measure)
    wants_inner = ~inner.is_in("stationary") & inner.known & np.isnan(inner_measure)
    wants_outer = ~outer.is_in("stationary") & outer.known & np.isnan(outer_measure)
    open_end = (wants_inner | wants_outer) & ~(worst > 0)
    worst = np.where(outgrown | contradicted, np.fmax(worst, limits["outgrown"]), worst)
    known = inner.known & outer.known
    on_inner = np.nan_to_num(inner_measure) >= np.nan_to_num(outer_measure)
    fit = Fit(*(np.where(on_inner, a, b) for a, b in zip(inner_fit, outer_fit, strict=True)))
    both = (inner_measure > 0) & (outer_measure > 0)
    first = np.where(inner_measure > 0, 1, np.where(outer_measure > 0, 2, 0))
    held = np.where(on_inner, held_inner, held_outer)
    near = np.where(on_inner, inner_printed, outer_printed)
    how = np.where(held, 2, np.where(near, 1, 0))
    plain = np.where(both, _VARIANTS.index("both"), np.where(first > 0, 3 * first - 3 + how, _VARIANTS.index("")))
    by_residual = np.where(
        s.known("residual_unbalance"), _VARIANTS.index("outgrown_residual"), _VARIANTS.index("outgrown")
    )
    variant = np.where(outgrown, np.where(np.isinf(ratio), _VARIANTS.index("unloaded"), by_residual), plain)
    variant = np.where(contradicted & ~both, _VARIANTS.index("contradicted"), variant)
    loaded = rests & ~load_turning(view, limits).is_in("stationary")
    variant = np.where(loaded & (variant == _VARIANTS.index("")), _VARIANTS.index("preloaded"), variant)
    wanted_share = np.divide(limits["fixed_up_to"], ratio, out=np.full(view.count, np.nan), where=ratio > 0)

    clear = 100 * np.minimum(clearance_share(fit.smallest, fit.largest), 1.0)

    def unknown_seat(wants: Bools, seat: Floats) -> Bools:
        return open_end & wants & np.isnan(seat)

    def change_both(row: int, in_words: bool = False) -> str:
        parts = []
        for name, advice, lift in (
            ("shaft_seat_diameter", shaft, "raise"), ("housing_seat_diameter", housing, "lower"),
        ):  # fmt: skip
            size = s.size(name)
            fit = inner_fit if lift == "raise" else outer_fit
            if str(size.tolerance_class[row]) == str(advice.first[row]):
                by = quantity_text(max(-float(fit.smallest[row]), 0.0), "um")
                parts.append(f"{lift} both deviations of {name} by {by}")
            else:
                ends = (float(advice.fit_smallest[row]), float(advice.fit_largest[row]))
                told = " to ".join(quantity_text(end, "um") for end in ends)
                told = fit_text(*ends, "um") if in_words else f"interference {told}"
                parts.append(f"change {name} from {value_text(s, name, row)} to {advice.draw[row]} ({told})")
        return " and ".join(parts)

    return Result(
        measure=np.where(known & ~open_end, worst, np.nan),
        unit="um",
        observed=fit.smallest,
        lower=np.zeros(view.count),
        missing={
            **rotation_wants(view, limits),
            "tolerance_class": open_end & ~s.choice("tolerance_class").known,
            "bore_diameter": open_end & wants_inner & ~s.known("bore_diameter"),
            "outside_diameter": open_end & wants_outer & ~s.known("outside_diameter"),
            "shaft_seat_diameter": unknown_seat(wants_inner, inner_fit.seat_lower) & s.known("bore_diameter"),
            "housing_seat_diameter": unknown_seat(wants_outer, outer_fit.seat_lower) & s.known("outside_diameter"),
        },
        variant=lambda: np.array(_VARIANTS, dtype=object)[variant],
        facts=lambda: {
            **advice_facts(shaft, "shaft_draw"),
            **advice_facts(housing, "housing_draw"),
            "inner_lift": (np.maximum(-inner_fit.smallest, 0.0), "um"),
            "outer_lift": (np.maximum(-outer_fit.smallest, 0.0), "um"),
            "change_both": change_both,
            "change_both_fits": partial(change_both, in_words=True),
            "grade_wanted": (s.number("balance_grade") * wanted_share, "mm/s"),
            "unbalance_wanted": (rotor_unbalance(view) * wanted_share, "g.mm"),
        },
        assumed=lambda: [direction_assumed(view, limits)],
        working=lambda: [
            Working("fixed_load", "F", "radial load of fixed direction", fixed_radial_load(view), "N"),
            Working("unbalance", "U", "unbalance force at the highest speed", unbalance_force(view), "N", "U_res · ω²"),
            Working("ratio", "U/F", "unbalance force over fixed load", ratio),
            *(
                [
                    Working("turning", "", "part of the radial load that turns", turning_load(view), "N"),
                    Working("on_preload", "", "turning part over preload", turning_on_preload(view)),
                ]
                if by_figures
                else []
            ),
            Working("load_turns", "", "the load in space", load_turning(view, limits).texts(), "1", "U/F, or stated"),
            Working("inner_sees", "", "load seen by the inner ring", inner.texts()),
            Working("outer_sees", "", "load seen by the outer ring", outer.texts()),
            Working("inner_smallest", "", "smallest interference of the inner ring", inner_fit.smallest, "um"),
            Working("inner_largest", "", "largest interference of the inner ring", inner_fit.largest, "um"),
            Working("outer_smallest", "", "smallest interference of the outer ring", outer_fit.smallest, "um"),
            Working("outer_largest", "", "largest interference of the outer ring", outer_fit.largest, "um"),
            Working("clear", "", "share of the band that is clearance", clear, "%", "clearance/band of the fit"),
            *deviation_lines(fit, "the seat that stands worse", "its ring"),
            Working("fit_smallest", "", "its smallest interference", fit.smallest, "um"),
            Working("fit_mean", "", "its mean interference", fit.mean, "um"),
            Working("fit_largest", "", "its largest interference", fit.largest, "um"),
        ],
    )  # fmt: skip


def one_ring_free(view: View, limits: Limits) -> Result:
    """Not both rings of a non-separable bearing are tight (clause ``fit.one-ring-free``)."""
    s = view.stations
    inner_fit, outer_fit = shaft_fit(view), housing_fit(view)
    inner, outer = inner_load_rotation(view, limits), outer_load_rotation(view, limits)
    free_inner = inner.is_in("stationary")
    free = Fit(*(np.where(free_inner, a, b) for a, b in zip(inner_fit, outer_fit, strict=True)))
    held = Fit(*(np.where(free_inner, b, a) for a, b in zip(inner_fit, outer_fit, strict=True)))
    tight = clearance_share(-free.largest, -free.smallest)
    holds = held.mean > 0
    definite = inner.is_in("stationary") ^ outer.is_in("stationary")
    kind = s.choice("bearing_type")
    whole = kind.is_in("deep groove ball", "angular contact ball", "spherical roller") | ~kind.known
    unknown = np.isnan(free.mean) | np.isnan(held.mean)
    return Result(
        measure=np.where(unknown, np.nan, np.where(holds, tight, 0.0)),
        unit="um",
        observed=free.mean,
        upper=np.zeros(view.count),
        applies=whole & ~(inner.known & outer.known & ~definite),
        reason=lambda: np.where(
            whole, "no ring sees a stationary load", "the bearing is separable: both rings may be tight"
        ).astype(object),
        missing={
            **rotation_wants(view, limits),
            "bearing_type": ~kind.known,
            "shaft_seat_diameter": np.isnan(inner_fit.seat_lower) & s.known("bore_diameter"),
            "housing_seat_diameter": np.isnan(outer_fit.seat_lower) & s.known("outside_diameter"),
        },
        variant=lambda: np.where(free_inner, "inner", "outer").astype(object),
        assumed=lambda: [direction_assumed(view, limits)],
        facts=lambda: {
            **advice_facts(recommended(view, limits, "shaft"), "shaft_draw"),
            **advice_facts(recommended(view, limits, "housing"), "housing_draw"),
        },
        working=lambda: [
            Working("inner_sees", "", "load seen by the inner ring", inner.texts()),
            Working("outer_sees", "", "load seen by the outer ring", outer.texts()),
            Working("held_mean", "", "mean interference of the ring with the rotating load", held.mean, "um"),
            *deviation_lines(free, "the other seat", "its ring"),
            Working("fit_smallest", "", "its smallest interference", free.smallest, "um"),
            Working("fit_mean", "", "its mean interference", free.mean, "um"),
            Working("fit_largest", "", "its largest interference", free.largest, "um"),
            Working("tight", "", "share of its band that is interference", 100 * np.minimum(tight, 1.0), "%"),
        ],
    )
