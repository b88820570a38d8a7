"""Chapter alignment: form, run-out and roughness of the seats, and the tilt of the rings they add up to."""

from collections.abc import Mapping

import numpy as np
from attrs import evolve

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, within
from linter.checks.shared.quantities import mean_diameter
from linter.checks.shared.seat_axes import bending_slope, coaxial, line_slope, two_stations
from linter.checks.shared.seat_forms import FORMS, UM, form_limits, form_parameter, graded, to_put
from linter.checks.shared.two_sides import (
    BASIC,
    SIDES,
    Feature,
    TwoSides,
    abutment_wanted,
    by_choice,
    demand,
    down,
    in_range_by_choice,
    two_sides,
    unstated,
)
from linter.model.stations import Bools, Choice, Floats
from linter.model.wording import quantity_text, words_of

ARCMIN = 60.0 * 180.0 / np.pi


def stated(view: View, limits: Limits) -> Result:
    """Form, run-out and roughness that the drawing leaves open."""
    s = view.stations
    kind = s.choice("tolerance_class")
    assumed_class = ~kind.known
    kind = Choice(kind.words, np.where(assumed_class, kind.words.index("Normal"), kind.codes).astype(np.int8))
    wanted = abutment_wanted(view)
    features: list[Feature] = []
    rough = np.zeros(view.count, dtype=bool)
    for side in SIDES:
        for feature in FORMS:
            name = form_parameter(side, feature)
            _, loose = form_limits(view, limits.table("form"), side, feature, kind)
            absent = ~s.known(name)
            if feature == "shoulder_runout":
                absent &= wanted[side]
            features.append(Feature(name, absent, "at most", down(loose), "mm"))
    form = np.logical_or.reduce([feature.absent for feature in features])
    for side in SIDES:
        name = f"{side}_seat_roughness"
        limit = in_range_by_choice(
            limits.table("roughness"), "low", s.number(BASIC[side]), "tolerance_class", kind, side
        )
        features.append(Feature(name, ~s.known(name), "Ra at most", limit, "um"))
        rough |= ~s.known(name)
    precise = ~kind.is_in("Normal", "P6")
    raised = (demand(view) > limits["demand_speed_factor"]) | precise
    base = np.where(form, limits["form_measure"], np.where(rough, limits["roughness_measure"], 0.0))
    measure = np.where(base > 0, base + raised, 0.0)
    absent_count = np.sum([feature.absent for feature in features], axis=0).astype(float)
    return Result(
        measure=measure,
        observed=absent_count,
        upper=np.zeros(view.count),
        facts=lambda: {"unstated": unstated(features)},
        assumed=lambda: [
            Assumes(
                "tolerance_class", np.full(view.count, "Normal", dtype=object), "",
                "not stated; class Normal stands in for the values to put", assumed_class & (absent_count > 0),
            )
        ],
        working=lambda: [
            Working("absent", "", "features not stated", absent_count, "1"),
            Working("demand", "n·d_m", "speed factor that weighs them", demand(view), "mm.r/min"),
            Working("class_used", "", "tolerance class that weighs them", kind.texts(), ""),
        ],
    )  # fmt: skip


def _judged(
    observed: Mapping[str, Floats],
    bounds: Mapping[str, tuple[Floats, Floats]],
    names: Mapping[str, str],
    wanted: Mapping[str, Bools],
    end: int = 1,
    *,
    published: bool = False,
) -> TwoSides:
    """Both sides against their limits; shown is the looser one, with a remark between the two, or (0) the stricter.

    With ``published`` a side is met up to the looser limit, which counts 1.
    """
    if published:
        return two_sides(
            measure={side: ladder(observed[side], bounds[side][1]) for side in SIDES},
            observed=observed,
            upper={side: bounds[side][1] for side in SIDES},
            wanted=wanted,
            needed={side: {names[side]: ~np.isnan(observed[side])} for side in SIDES},
        )
    sides = two_sides(
        measure={side: ladder(observed[side], *bounds[side]) for side in SIDES},
        observed=observed,
        upper={side: bounds[side][end] for side in SIDES},
        wanted=wanted,
        needed={side: {names[side]: ~np.isnan(observed[side])} for side in SIDES},
        grave=2.0,
    )
    remark = (end == 1) & (sides.measure > 1.0) & (sides.measure <= 2.0)
    words = sides.variant
    return evolve(sides, variant=lambda: np.where(remark, words() + "_remark", words()))


def cylindricity(view: View, limits: Limits) -> Result:
    """Cylindricity of the seats against a fraction of the IT grade of the seat diameter."""
    return form(view, limits, "cylindricity")


def seat_runout(view: View, limits: Limits) -> Result:
    """Total radial run-out of the seats against a fraction of the IT grade of the seat diameter."""
    return form(view, limits, "runout")


def shoulder_runout(view: View, limits: Limits) -> Result:
    """Axial run-out of the abutments against the IT grade of the seat diameter."""
    return form(view, limits, "shoulder_runout")


def form(view: View, limits: Limits, feature: str, *, published: bool = False) -> Result:
    """One form or run-out tolerance of both sides; ``published``: met up to the loosest published value."""
    s = view.stations
    table = limits.table("form")
    kind = s.choice("tolerance_class")
    observed = {side: UM * within(s.number(form_parameter(side, feature)), closed=True) for side in SIDES}
    put = {side: form_limits(view, table, side, feature, kind) for side in SIDES}
    bounds = {side: (UM * put[side][0], UM * put[side][1]) for side in SIDES}
    wanted: Mapping[str, Bools] = dict.fromkeys(SIDES, np.ones(view.count, dtype=bool))
    if feature == "shoulder_runout":
        stated_too = {side: ~np.isnan(observed[side]) & (not published) for side in SIDES}
        wanted = {side: abutment_wanted(view)[side] | stated_too[side] for side in SIDES}
    names = {side: form_parameter(side, feature) for side in SIDES}
    sides = _judged(observed, bounds, names, wanted, published=published)
    return Result(
        measure=sides.measure,
        unit="um",
        observed=sides.observed,
        upper=sides.upper,
        applies=sides.applies,
        reason="neither ring bears on a shoulder here",
        missing=sides.missing, withheld=sides.withheld,
        variant=sides.variant,
        facts=lambda: to_put(put),
        working=lambda: [
            Working("shaft_seat", "d", "nominal of the shaft seat", s.number("bore_diameter"), "mm"),
            Working("housing_seat", "D", "nominal of the housing seat", s.number("outside_diameter"), "mm"),
            Working("shaft_value", "t", "tolerance at the shaft", observed["shaft"], "um"),
            Working("housing_value", "t", "tolerance at the housing", observed["housing"], "um"),
            Working("shaft_limit", "", "limit at the shaft", bounds["shaft"][1], "um", "fraction of IT at d"),
            Working("shaft_strict", "", "tightest, shaft", bounds["shaft"][0], "um", "fraction of IT at d"),
            Working("housing_limit", "", "limit at the housing", bounds["housing"][1], "um", "fraction of IT at D"),
            Working("housing_strict", "", "tightest, housing", bounds["housing"][0], "um", "fraction of IT at D"),
        ],
    )  # fmt: skip


def form_within_size(view: View, limits: Limits) -> Result:
    """Cylindricity of the seats against the size tolerance that it has to live in."""
    s = view.stations
    observed = {side: UM * s.number(f"{side}_seat_cylindricity") for side in SIDES}
    sizes = {side: s.size(f"{side}_seat_diameter") for side in SIDES}
    width = {side: UM * (sizes[side].upper - sizes[side].lower) for side in SIDES}
    sides = two_sides(
        measure={
            side: ladder(observed[side], limits["share_near"] * width[side], limits["share_far"] * width[side])
            for side in SIDES
        },
        observed=observed,
        upper={side: limits["share_near"] * width[side] for side in SIDES},
        wanted=dict.fromkeys(SIDES, np.ones(view.count, dtype=bool)),
        needed={
            side: {
                f"{side}_seat_cylindricity": ~np.isnan(observed[side]),
                f"{side}_seat_diameter": ~np.isnan(width[side]),
            }
            for side in SIDES
        },
    )
    return Result(
        measure=sides.measure,
        unit="um",
        observed=sides.observed,
        upper=sides.upper,
        missing=sides.missing, withheld=sides.withheld,
        variant=sides.variant,
        facts=lambda: {
            "shaft_put": (down(limits["share_near"] * width["shaft"] / UM), "mm"),
            "housing_put": (down(limits["share_near"] * width["housing"] / UM), "mm"),
        },
        working=lambda: [
            Working("shaft_value", "t_1", "cylindricity of the shaft seat", observed["shaft"], "um"),
            Working("shaft_width", "T", "size tolerance, shaft seat", width["shaft"], "um", "upper - lower"),
            Working("housing_value", "t_1", "cylindricity of the housing seat", observed["housing"], "um"),
            Working("housing_width", "T", "size tolerance, housing seat", width["housing"], "um", "upper - lower"),
        ],
    )  # fmt: skip


def _at_machines(view: View, entry: Assumes) -> Assumes:
    """A stand-in by station brought to machines."""
    first = view.starts
    return Assumes(entry.parameter, entry.values[first], entry.unit, entry.reason, entry.rows[first])


def coaxiality(view: View, limits: Limits) -> Result:
    """Coaxiality of the shaft seats and of the bores against the IT grade of the smaller seat."""
    return coaxiality_of(view, limits)


def coaxiality_of(view: View, limits: Limits, *, published: bool = False) -> Result:
    """Coaxiality of seats and bores; ``published``: met up to the loosest published value."""
    s = view.stations
    table = limits.table("coaxiality")
    kind = s.choice("tolerance_class")
    two = view.station_count >= 2
    observed: dict[str, Floats] = {}
    bounds: dict[str, tuple[Floats, Floats]] = {}
    assumed = []
    names = {"shaft": "coaxiality_of_shaft_seats", "housing": "coaxiality_of_bores"}
    for side in SIDES:
        value, stands_in = coaxial(view, side)
        value = within(value)
        observed[side] = UM * view.to_machines(value)
        assumed.append(_at_machines(view, stands_in))
        strict, loose = (graded(view, table, end, side, kind) for end in ("strict", "loose"))
        bounds[side] = UM * view.to_machines(strict, "min"), UM * view.to_machines(loose, "min")
    sides = _judged(observed, bounds, names, dict.fromkeys(SIDES, two), published=published)
    return Result(
        measure=sides.measure,
        unit="um",
        observed=sides.observed,
        upper=sides.upper,
        applies=two,
        reason="the machine has one position",
        missing=sides.missing, withheld=sides.withheld,
        variant=sides.variant,
        facts=lambda: to_put({side: (bounds[side][0] / UM, bounds[side][1] / UM) for side in SIDES}),
        assumed=assumed,
        working=lambda: [
            Working("shaft_value", "t", "coaxiality of the shaft seats", observed["shaft"], "um"),
            Working("housing_value", "t", "coaxiality of the bores", observed["housing"], "um"),
            Working("shaft_limit", "", "limit, shaft seats", bounds["shaft"][1], "um", "IT at the smaller d"),
            Working("shaft_strict", "", "tightest, shaft seats", bounds["shaft"][0], "um", "IT at the smaller d"),
            Working("housing_limit", "", "limit, bores", bounds["housing"][1], "um", "IT at the smaller D"),
            Working("housing_strict", "", "tightest, bores", bounds["housing"][0], "um", "IT at the smaller D"),
        ],
    )  # fmt: skip


def tilt(view: View, limits: Limits) -> Result:
    """Angle between the axes of the two rings, from every stated tolerance and the bending of the shaft."""
    return tilt_of(view, limits)


def tilt_of(
    view: View, limits: Limits, *, published: bool = False, every_face: bool = True, by_line: bool = False
) -> Result:
    """The same; ``published``: met up to the far end of what is printed for the type.

    ``every_face``: the stated run-out of a face that no ring bears on counts too. ``by_line``: the slope of a described
    rotor is a tilt like the others, in full.
    """
    s = view.stations
    table, kind = limits.table("tilt"), s.choice("bearing_type")
    low, high = (by_choice(table, column, "bearing_type", kind) for column in ("low", "high"))
    span = within(s.size("bearing_span").nominal)
    width = within(s.number("ring_width"))
    wanted = abutment_wanted(view)
    missing: dict[str, Bools] = {}
    parts: dict[str, Floats] = {}
    assumed: list[Assumes] = []
    for side in SIDES:
        offset, stands_in = coaxial(view, side)
        offset = within(offset, closed=True)
        assumed.append(stands_in)
        parts[f"{side}_coaxiality"] = 0.5 * offset / span
        missing["coaxiality_of_shaft_seats" if side == "shaft" else "coaxiality_of_bores"] = np.isnan(offset)
        form = s.number(f"{side}_seat_cylindricity")
        parts[f"{side}_form"] = form / width
        missing[f"{side}_seat_cylindricity"] = np.isnan(form)
        face, size = s.number(f"{side}_shoulder_runout"), s.size(f"{side}_shoulder_diameter").nominal
        size = np.where(np.isnan(size), s.number(BASIC[side]), size)
        used = wanted[side] | (every_face & ~np.isnan(face))
        parts[f"{side}_face"] = np.where(used, face / size, 0.0)
        missing[f"{side}_shoulder_runout"] = used & np.isnan(face)
    bending, left_out = bending_slope(view)
    real = line_slope(view) if by_line else np.full(view.count, np.nan)
    is_real = ~np.isnan(real)
    assumed.append(evolve(left_out, rows=left_out.rows & ~is_real))
    parts["bending"] = np.where(is_real, real, bending)
    angles = {name: ARCMIN * value for name, value in parts.items()}
    tolerances = [angle for name, angle in angles.items() if name != "bending"]
    bow = np.where(is_real, angles["bending"], 0.0)
    worst = np.sum(tolerances, axis=0) + bow
    likely = np.sqrt(np.sum(np.square(tolerances), axis=0)) + bow
    bent = np.where(is_real, worst, worst + angles["bending"])
    passed = np.zeros(view.count)
    for value, bound in ((worst, low), (worst, high), (likely, high)):
        passed = passed + np.where(np.isnan(value) | np.isnan(bound), np.nan, value > bound * (1 + 1e-9))
    near = high if published else low
    if published:
        passed = np.where(passed < 2, 0.0 * passed, passed)
    by_bending = (passed < 2) & ((bent > high * (1 + 1e-9)) | ((passed < 1) & (bent > near * (1 + 1e-9))))
    passed = np.where(by_bending, np.maximum(passed, 1.0), passed)
    largest = np.argmax(np.nan_to_num(np.array([*tolerances, bow]), nan=-1.0), axis=0)
    words = np.array(
        [
            "coaxiality_of_shaft_seats", "shaft_seat_cylindricity", "shaft_shoulder_runout", "coaxiality_of_bores",
            "housing_seat_cylindricity", "housing_shoulder_runout", "shaft_sections",
        ],
        dtype=object,
    )  # fmt: skip
    plain = np.array([*(words_of(word) for word in words[:-1]), "the slope of the shaft"], dtype=object)

    bent_by = "F l²/(16 E I), mid-span" + (", or the described shaft" if by_line else "")

    def takes(row: int) -> str:
        near, far = quantity_text(float(low[row]), "arcmin"), quantity_text(float(high[row]), "arcmin")
        return f"at most {near}" if near == far else f"{near} to {far} by clearance and load"

    return Result(
        measure=passed,
        unit="arcmin",
        observed=worst,
        upper=low,
        applies=two_stations(view),
        reason="the machine has one position",
        missing=missing,
        variant=lambda: np.where(by_bending, "bending", np.where(passed == 1.0, "remark", "")).astype(object),
        facts=lambda: {"takes": takes, "largest": words[largest], "largest_words": plain[largest]},
        assumed=assumed,
        working=lambda: [
            Working("span", "l", "bearing span", span, "mm"),
            Working("from_shaft", "", "coaxiality of the shaft seats", angles["shaft_coaxiality"], "arcmin", "t/(2 l)"),
            Working("from_bores", "", "coaxiality of the bores", angles["housing_coaxiality"], "arcmin", "t/(2 l)"),
            Working("from_shaft_form", "", "cylindricity, shaft seat", angles["shaft_form"], "arcmin", "t_1/B"),
            Working("from_bore_form", "", "cylindricity, housing seat", angles["housing_form"], "arcmin", "t_1/B"),
            Working("from_shaft_face", "", "run-out, shaft abutment", angles["shaft_face"], "arcmin", "t_4/d_a"),
            Working("from_bore_face", "", "run-out, housing abutment", angles["housing_face"], "arcmin", "t_4/D_a"),
            Working("from_bending", "", "slope of the shaft", angles["bending"], "arcmin", bent_by),
            Working("worst", "", "worst case of the tolerances", worst, "arcmin", "sum without bending"),
            Working("bent", "", "with the bending of the shaft", bent, "arcmin", "worst case + slope"),
            Working("likely", "", "statistical", likely, "arcmin", "root of the sum of squares"),
            Working("limit_low", "", "permissible, near end", low, "arcmin", "table by bearing type"),
            Working("limit_high", "", "permissible, far end", high, "arcmin", "table by bearing type"),
        ],
    )  # fmt: skip


def roughness(view: View, limits: Limits) -> Result:
    """Roughness Ra of the seats against the table by size and tolerance class."""
    return roughness_of(view, limits)


def roughness_of(view: View, limits: Limits, *, published: bool = False) -> Result:
    """Roughness of both seats; ``published``: met up to the roughest published value."""
    s = view.stations
    table = limits.table("roughness")
    kind = s.choice("tolerance_class")
    observed = {side: within(s.number(f"{side}_seat_roughness")) for side in SIDES}
    bounds: dict[str, tuple[Floats, Floats]] = {}
    for side in SIDES:
        size = s.number(BASIC[side])
        low, high = (in_range_by_choice(table, end, size, "tolerance_class", kind, side) for end in ("low", "high"))
        bounds[side] = low, high
    names = {side: f"{side}_seat_roughness" for side in SIDES}
    every = dict.fromkeys(SIDES, np.ones(view.count, dtype=bool))
    sides = _judged(observed, bounds, names, every, end=0, published=published)
    return Result(
        measure=sides.measure,
        unit="um",
        observed=sides.observed,
        upper=sides.upper,
        missing=sides.missing, withheld=sides.withheld,
        variant=sides.variant,
        working=lambda: [
            Working("shaft_seat", "d", "nominal of the shaft seat", s.number("bore_diameter"), "mm"),
            Working("housing_seat", "D", "nominal of the housing seat", s.number("outside_diameter"), "mm"),
            Working("mean", "d_m", "mean diameter", mean_diameter(view), "mm", "(d + D)/2"),
            Working("shaft_value", "Ra", "roughness of the shaft seat", observed["shaft"], "um"),
            Working("shaft_limit", "", "limit, shaft seat", bounds["shaft"][0], "um", "table by size and class"),
            Working("housing_value", "Ra", "roughness of the housing seat", observed["housing"], "um"),
            Working("housing_limit", "", "limit, ground bore", bounds["housing"][0], "um", "table by size and class"),
            Working("housing_turned", "", "limit, turned bore", bounds["housing"][1], "um", "one step rougher"),
            *([Working("shaft_rough", "", "limit, turned seat", bounds["shaft"][1], "um")] if published else []),
        ],
    )  # fmt: skip
