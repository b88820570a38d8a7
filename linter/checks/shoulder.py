"""Chapter shoulder: abutments, fillets and undercuts beside the rings."""

import numpy as np

from linter.checks.shared.base import Limits, Result, View, Working, ladder, within
from linter.checks.shared.lands import LAND, land_above, lands_between
from linter.checks.shared.quantities import preload_force, total_axial_load
from linter.checks.shared.two_sides import (
    BASIC,
    CLOSE,
    SIDES,
    Feature,
    Sides,
    abutment_wanted,
    at_or_above,
    at_or_below,
    chamfer,
    demand,
    down,
    limited,
    of_material,
    sinking,
    two_sides,
    unstated,
)
from linter.checks.shared.undercuts import undercut_of
from linter.mechanics import abutment, materials
from linter.model.stations import Bools, Floats


def _heights(view: View, limits: Limits, *ends: str) -> list[Floats]:
    """Smallest shoulder height by bearing type and ring chamfer [mm], one for each column of the table named."""
    table = limits.table("heights")
    kinds, corner = view.stations.choice("bearing_type"), chamfer(view).value
    found = []
    for end in ends:
        key = ("heights", table["rs_min"].tobytes(), table[end].tobytes())
        if key not in view.cache:
            height = np.full(view.count, np.nan)
            for kind in dict.fromkeys(table["bearing_type"]):
                rows = kinds.is_in(str(kind))
                if rows.any():
                    height[rows] = at_or_above(table, end, "rs_min", corner[rows], table["bearing_type"] == kind)
            view.cache[key] = height
        found.append(view.cache[key])
    return found


def stated(view: View, limits: Limits) -> Result:
    """Abutment diameters and fillets that the drawing leaves open."""
    s = view.stations
    wanted = abutment_wanted(view)
    (loose,) = _heights(view, limits, "loose")
    fillet = at_or_below(limits.table("fillets"), "low", "rs_min", chamfer(view).value)
    features = []
    for side in SIDES:
        shoulder, radius = f"{side}_shoulder_diameter", f"{side}_fillet_radius"
        basic, sign = s.number(BASIC[side]), 1.0 if side == "shaft" else -1.0
        advice = "at least" if side == "shaft" else "at most"
        features += [
            Feature(shoulder, wanted[side] & ~s.known(shoulder), advice, basic + sign * 2.0 * loose, "mm"),
            Feature(radius, wanted[side] & ~s.known(radius), "at most", down(fillet), "mm"),
        ]
    absent = np.sum([feature.absent for feature in features], axis=0).astype(float)
    fast = demand(view) > limits["demand_speed_factor"]
    measure = np.where(absent > 0, np.where(fast, limits["fast_measure"], limits["slow_measure"]), 0.0)
    return Result(
        measure=measure,
        observed=absent,
        upper=np.zeros(view.count),
        applies=wanted["shaft"] | wanted["housing"],
        reason="neither ring bears on a shoulder here",
        facts=lambda: {"unstated": unstated(features)},
        assumed=lambda: [chamfer(view).assumed],
        working=lambda: [
            Working("chamfer", "r_s min", "smallest ring chamfer", chamfer(view).value, "mm"),
            Working("height", "h_min", "smallest shoulder height", loose, "mm", "table by bearing type and r_s min"),
            Working("fillet", "r_as max", "largest fillet", fillet, "mm", "table by r_s min"),
            Working("absent", "", "features not stated", absent, "1"),
            Working("demand", "n·d_m", "speed factor that weighs them", demand(view), "mm.r/min"),
        ],
    )  # fmt: skip


def shaft_height(view: View, limits: Limits) -> Result:
    """Shaft abutment between d + 2 h_min and the land of the inner ring."""
    return _height(view, limits, "shaft")


def housing_height(view: View, limits: Limits) -> Result:
    """Housing abutment between the land of the outer ring and D - 2 h_min."""
    return _height(view, limits, "housing")


def shaft_height_published(view: View, limits: Limits) -> Result:
    """Shaft abutment, met from the least printed height on; the part between a spring and the ring where stated."""
    return _height(view, limits, "shaft", published=True)


def housing_height_published(view: View, limits: Limits) -> Result:
    """Housing abutment, met from the least printed height on; the part between a spring and the ring where stated."""
    return _height(view, limits, "housing", published=True)


def _height(view: View, limits: Limits, side: str, *, published: bool = False) -> Result:
    s = view.stations
    wanted = abutment_wanted(view)[side]
    name, land_name = f"{side}_shoulder_diameter", LAND[side]
    sign = 1.0 if side == "shaft" else -1.0
    basic = s.number(BASIC[side])
    size = limited(view, name, limits.table("general"))
    least, most = (size.smallest, size.largest) if side == "shaft" else (size.largest, size.smallest)
    land, land_assumed = land_above(view, limits, side, most)
    height = 0.5 * sign * (least - basic)
    strict, loose = _heights(view, limits, "strict", "least" if published else "loose")
    edge = np.nan_to_num(abutment.chamfer_max(chamfer(view).value, s.number("bore_diameter"))[0], nan=0.0)
    edge = np.minimum(edge, loose)
    by_low = sinking(height, *(() if published else (strict,)), loose, edge)
    lowest = 1.0 if published else 2.0
    beyond = sign * (most - land)
    section = 0.5 * (s.number("outside_diameter") - s.number("bore_diameter"))
    share = np.clip(beyond / section, 0.0, 1.0)
    by_high = np.where(np.isnan(beyond), np.nan, np.where(beyond > CLOSE, 2.6 + 0.4 * share - published, 0.0))
    measure = np.fmax(by_low, by_high)
    at_spring = ~wanted & s.choice("axial_role").is_in("spring-loaded") & s.known(name) & published
    measure = np.where(at_spring, np.minimum(measure, limits["spring_end"] if published else np.inf), measure)
    found = measure > 1.0 + 1e-9
    low_leads = by_low >= np.nan_to_num(by_high, nan=-1.0)
    told = np.where(by_low > lowest + 1.0, "edge", np.where((by_low > lowest) | published, "", "remark"))
    variant = np.where(low_leads, np.where(at_spring, "spring", told), np.where(at_spring, "spring_high", "high"))
    floor = np.where((by_low > lowest) | published, loose, strict)
    bound = basic + sign * 2.0 * floor
    return Result(
        measure=measure,
        unit="mm",
        observed=np.where(low_leads, least, most),
        lower=bound if side == "shaft" else land,
        upper=land if side == "shaft" else bound,
        applies=wanted | at_spring,
        reason="the free ring slides here and bears on no shoulder",
        missing={
            "ring_chamfer": np.isnan(loose) & s.known("bearing_type") & ~found,
            land_name: np.isnan(land) & ~found,
            name: np.isnan(height) & ~found,
        },
        withheld={land_name: np.isnan(land) & found, name: np.isnan(height) & found},
        variant=lambda: variant.astype(object),
        facts=lambda: {
            "height": (height, "mm"),
            "height_least": (loose, "mm"),
            "height_strict": (strict, "mm"),
            "bound": (bound, "mm"),
            "bound_strict": (basic + sign * 2.0 * strict, "mm"),
            "land": (land, "mm"),
        },
        assumed=lambda: [chamfer(view).assumed, size.assumed, land_assumed],
        working=lambda: [
            Working("basic", "d" if side == "shaft" else "D", "ring diameter at the seat", basic, "mm"),
            Working("chamfer", "r_s min", "smallest ring chamfer", chamfer(view).value, "mm"),
            Working("smallest", "", "smallest abutment diameter", size.smallest, "mm", "nominal + lower deviation"),
            Working("largest", "", "largest abutment diameter", size.largest, "mm", "nominal + upper deviation"),
            Working("low_height", "h", "lowest shoulder", height, "mm", "half the step at its smallest"),
            Working("h_strict", "h_min", "smallest height, stricter source", strict, "mm", "table by type and r_s min"),
            Working("h_loose", "h_min", "smallest height, looser source", loose, "mm", "table by type and r_s min"),
            Working("edge", "r_s max", "largest radial ring chamfer", edge, "mm", "ISO 582"),
            Working("own_land", "", "land of the ring beside the raceway", land, "mm"),
        ],
    )  # fmt: skip


def fillet(view: View, limits: Limits) -> Result:
    """Fillet radii against the largest fillet for the ring chamfer; 0 stands for an undercut."""
    return fillet_of(view, limits)


def fillet_published(view: View, limits: Limits) -> Result:
    """Fillet radii, met up to the largest one that is printed for the ring chamfer; 0 stands for an undercut."""
    return fillet_of(view, limits, published=True)


def fillet_of(view: View, limits: Limits, *, published: bool = False, wanted: Sides | None = None) -> Result:
    """The same; ``wanted``: where a fillet must be known, else where a ring bears on the shoulder."""
    s = view.stations
    corner = chamfer(view).value
    table = limits.table("fillets")
    low, high = (at_or_below(table, column, "rs_min", corner) for column in ("low", "high"))
    last = np.fmax(high, corner)
    marks = (high, last) if published else (low, high, last)
    observed = {side: within(s.number(f"{side}_fillet_radius"), closed=True) for side in SIDES}
    wanted = wanted or {side: abutment_wanted(view)[side] | ~np.isnan(observed[side]) for side in SIDES}
    sides = two_sides(
        measure={side: ladder(observed[side], *marks) for side in SIDES},
        observed=observed,
        upper=dict.fromkeys(SIDES, marks[0]),
        wanted=wanted,
        needed={
            side: {f"{side}_fillet_radius": ~np.isnan(observed[side]), "ring_chamfer": ~np.isnan(low)} for side in SIDES
        },
    )
    return Result(
        measure=sides.measure,
        unit="mm",
        observed=sides.observed,
        upper=sides.upper,
        applies=sides.applies,
        reason="neither ring bears on a shoulder here",
        missing=sides.missing, withheld=sides.withheld,
        variant=sides.variant,
        assumed=lambda: [chamfer(view).assumed],
        working=lambda: [
            Working("chamfer", "r_s min", "smallest ring chamfer", corner, "mm"),
            Working("shaft_fillet", "r_a", "fillet at the shaft shoulder", observed["shaft"], "mm"),
            Working("housing_fillet", "r_b", "fillet at the housing shoulder", observed["housing"], "mm"),
            Working("limit_low", "r_as max", "largest fillet, stricter source", low, "mm", "table by r_s min"),
            Working("limit_high", "r_as max", "largest fillet, looser source", high, "mm", "table by r_s min"),
        ],
    )  # fmt: skip


def undercut(view: View, limits: Limits) -> Result:
    """Undercuts: clear of the ring chamfer, not so wide that the seat is lost, not deeper than printed ones."""
    cuts = {side: undercut_of(view, limits, side) for side in SIDES}
    corner, ring_width = chamfer(view).value, within(view.stations.number("ring_width"))
    reach = ring_width - corner - limits["land_near"] * (ring_width - 2.0 * corner)
    worst = {}
    for side in SIDES:
        judged = np.fmax.reduce(cuts[side].measures)
        unknown = np.isnan(cuts[side].measures).any(axis=0) & ~(judged > 1.0 + CLOSE)
        worst[side] = np.where(unknown, np.nan, judged)
    kind = {side: np.nan_to_num(cuts[side].measures, nan=-1.0).argmax(axis=0) for side in SIDES}
    sides = two_sides(
        measure=worst,
        observed={side: np.choose(kind[side], [c.cleared, c.width, c.depth]) for side, c in cuts.items()},
        upper={side: np.choose(kind[side], [corner, reach, c.deepest]) for side, c in cuts.items()},
        wanted={side: cuts[side].wanted for side in SIDES},
        needed={side: cuts[side].needed for side in SIDES},
    )
    shaft, housing = (np.where(cuts[side].wanted, worst[side], np.nan) for side in SIDES)
    on_housing = np.isnan(shaft) | (housing > shaft)

    def of_side(name: str) -> Floats:
        return np.where(on_housing, getattr(cuts["housing"], name), getattr(cuts["shaft"], name))

    lead = np.where(on_housing, kind["housing"], kind["shaft"])
    forms = [view.stations.choice(f"{side}_undercut_form").is_in("F") for side in SIDES]
    by_face = (lead == 0) & np.where(on_housing, forms[1], forms[0])
    told = np.array(["", "width", "depth"], dtype=object)[lead]
    return Result(
        measure=sides.measure,
        unit="mm",
        observed=sides.observed,
        upper=sides.upper,
        applies=sides.applies,
        reason="no undercut is stated beside either ring",
        missing=sides.missing, withheld=sides.withheld,
        variant=lambda: np.where(by_face, "face", told).astype(object),
        facts=lambda: {"side": np.where(on_housing, "housing", "shaft").astype(object)},
        assumed=lambda: [chamfer(view).assumed],
        working=lambda: [
            Working("chamfer", "r_s min", "smallest ring chamfer", corner, "mm"),
            Working("ring_width", "B", "ring width", ring_width, "mm"),
            Working("width", "b", "width of the undercut that stands worse", of_side("width"), "mm"),
            Working("depth", "h", "its depth", of_side("depth"), "mm"),
            Working("radius", "r", "its corner radius", of_side("radius"), "mm"),
            Working("cleared", "", "chamfer that it clears", of_side("cleared"), "mm", "r - h - t - √(2 h t)"),
            Working("radius_allowed", "", "radius that clears r_s min", of_side("radius_allowed"), "mm",
                    "r_s min + h + t + √(2 h t)"),
            Working("land", "", "share of the seat that is left", 100.0 * of_side("land"), "%",
                    "(B - b - r_s min)/(B - 2 r_s min)"),
            Working("width_allowed", "", "width that leaves enough", reach, "mm"),
            Working("deepest", "", "deepest that is printed for it", of_side("deepest"), "mm", "by d or r_s min"),
        ],
    )  # fmt: skip


def other_ring(view: View, limits: Limits) -> Result:
    """Radial gap between each abutment and the land of the other ring."""
    known = {side: view.stations.known(f"{side}_shoulder_diameter") for side in SIDES}
    return other_ring_of(view, limits, {side: abutment_wanted(view)[side] | known[side] for side in SIDES})


def other_ring_of(view: View, limits: Limits, wanted: Sides) -> Result:
    """The same; ``wanted``: where there is a shoulder."""
    shaft, housing = (limited(view, f"{side}_shoulder_diameter", limits.table("general")) for side in SIDES)
    between = lands_between(view, limits, shaft.largest, housing.smallest, wanted)
    inner, outer, room = between.inner, between.outer, between.room
    gap = {"shaft": 0.5 * (outer - shaft.largest), "housing": 0.5 * (housing.smallest - inner)}
    wanted_gap, least_gap = limits["gap_wanted"] * room, limits["gap_least"] * room
    lands = {"inner_ring_shoulder_diameter": ~np.isnan(inner), "outer_ring_shoulder_diameter": ~np.isnan(outer)}
    known = {"shaft": ~np.isnan(shaft.largest), "housing": ~np.isnan(housing.smallest)}
    sides = two_sides(
        measure={side: sinking(gap[side], wanted_gap, least_gap) for side in SIDES},
        observed=gap,
        upper={side: np.full(view.count, np.nan) for side in SIDES},
        wanted=wanted,
        needed={side: {f"{side}_shoulder_diameter": known[side], **lands} for side in SIDES},
    )
    return Result(
        measure=sides.measure,
        unit="mm",
        observed=sides.observed,
        lower=wanted_gap,
        applies=sides.applies,
        reason="neither ring bears on a shoulder here",
        missing=sides.missing, withheld=sides.withheld, variant=sides.variant,
        facts=lambda: {"shaft_most": (outer - 2.0 * wanted_gap, "mm"),
                       "housing_least": (inner + 2.0 * wanted_gap, "mm")},
        assumed=lambda: [shaft.assumed, housing.assumed, *between.assumed],
        working=lambda: [
            Working("inner_land", "d_1", "land of the inner ring", inner, "mm"),
            Working("outer_land", "D_1", "land of the outer ring", outer, "mm"),
            Working("room", "", "radial room between the lands", room, "mm", "(D_1 - d_1)/2"),
            Working("shaft_largest", "d_a", "largest shaft abutment", shaft.largest, "mm"),
            Working("housing_smallest", "D_a", "smallest housing abutment", housing.smallest, "mm"),
            Working("shaft_gap", "", "shaft abutment to outer ring", gap["shaft"], "mm", "(D_1 - d_a)/2"),
            Working("housing_gap", "", "housing abutment to inner ring", gap["housing"], "mm", "(D_a - d_1)/2"),
            Working("gap_wanted", "", "gap wanted", wanted_gap, "mm", "share of the room"),
            Working("gap_least", "", "below this the parts count as touching", least_gap, "mm", "share of the room"),
        ],
    )  # fmt: skip


def _faces(view: View, limits: Limits) -> dict[str, Floats]:
    """Ring face that is left on each abutment [mm2]."""
    s = view.stations
    corner = abutment.chamfer_max(chamfer(view).value, s.number("bore_diameter"))[0]
    corner = np.fmax(corner, chamfer(view).value)  # beyond the table no less than the smallest chamfer
    shaft, housing = (limited(view, f"{side}_shoulder_diameter", limits.table("general")) for side in SIDES)
    rim = np.fmin(shaft.smallest, s.number(LAND["shaft"]))
    root = s.number("bore_diameter") + 2.0 * corner
    outer_rim = s.number("outside_diameter") - 2.0 * corner
    outer_root = np.fmax(housing.largest, s.number(LAND["housing"]))
    rim = np.where(np.isnan(shaft.smallest), np.nan, rim)
    outer_root = np.where(np.isnan(housing.largest), np.nan, outer_root)
    return {
        "shaft": 0.25 * np.pi * np.maximum(rim, root) ** 2 - 0.25 * np.pi * root**2,
        "housing": 0.25 * np.pi * outer_rim**2 - 0.25 * np.pi * np.minimum(outer_root, outer_rim) ** 2,
    }


def pressure(view: View, limits: Limits) -> Result:
    """Face pressure of external axial load and preload on the ring face that is left, against the yield stress."""
    s = view.stations
    force = np.abs(total_axial_load(view))
    area = _faces(view, limits)
    corner = chamfer(view)
    material = {side: s.choice(f"{side}_material") for side in SIDES}
    capacity: dict[str, Floats] = {}
    face: dict[str, Floats] = {}
    needed: dict[str, dict[str, Bools]] = {}
    for side in SIDES:
        capacity[side] = of_material(material[side], materials.yield_strength)
        if "plastic" in material[side].words:
            capacity[side] = np.where(material[side].is_in("plastic"), limits["plastic_pressure"], capacity[side])
        face[side] = np.where(np.isnan(area[side]), np.nan, np.where(force == 0, 0.0, force / area[side]))
        needed[side] = {
            "axial_load": ~np.isnan(s.number("axial_load")),
            "preload_force": ~np.isnan(preload_force(view)),
            f"{side}_material": material[side].known,
            f"{side}_shoulder_diameter": ~np.isnan(area[side]) | np.isnan(corner.value),
            "ring_chamfer": ~np.isnan(corner.value),
        }
    sides = two_sides(
        measure={
            side: ladder(face[side], limits["share_near"] * capacity[side], limits["share_far"] * capacity[side])
            for side in SIDES
        },
        observed=face,
        upper={side: limits["share_near"] * capacity[side] for side in SIDES},
        wanted=abutment_wanted(view),
        needed=needed,
    )
    general = (limited(view, f"{side}_shoulder_diameter", limits.table("general")).assumed for side in SIDES)
    bare = {side: np.isinf(face[side]) & abutment_wanted(view)[side] for side in SIDES}
    no_face = np.select(
        [bare["shaft"] & bare["housing"], *bare.values()], ["both_bare", "shaft_bare", "housing_bare"], ""
    )
    return Result(
        measure=sides.measure,
        unit="MPa",
        observed=np.where(no_face == "", sides.observed, np.nan),
        upper=sides.upper,
        applies=sides.applies,
        reason="neither ring bears on a shoulder here",
        missing=sides.missing, withheld=sides.withheld,
        variant=lambda: np.where(no_face == "", sides.variant(), no_face).astype(object),
        assumed=lambda: [corner.assumed, *general],
        working=lambda: [
            Working("force", "F_a + F_p", "axial load and preload", force, "N"),
            Working("shaft_area", "A", "face on the shaft", area["shaft"], "mm2", "π/4 (d_a² - (d + 2 r_s max)²)"),
            Working("housing_area", "A", "face, housing", area["housing"], "mm2", "π/4 ((D - 2 r_s max)² - D_a²)"),
            Working("shaft_pressure", "p", "pressure at the shaft", face["shaft"], "MPa", "(F_a + F_p)/A"),
            Working("housing_pressure", "p", "pressure at the housing", face["housing"], "MPa", "(F_a + F_p)/A"),
            Working("shaft_yield", "R_e", "yield stress of the shaft", capacity["shaft"], "MPa", "material table"),
            Working("housing_yield", "R_e", "yield stress, housing", capacity["housing"], "MPa", "material table"),
            Working("shaft_limit", "", "limit at the shaft", limits["share_near"] * capacity["shaft"], "MPa"),
            Working("housing_limit", "", "limit at the housing", limits["share_near"] * capacity["housing"], "MPa"),
        ],
    )  # fmt: skip
