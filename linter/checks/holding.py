"""Chapter parts: what holds a ring: retaining rings in their grooves, nuts, O-rings, the wall and its sleeve."""

from collections.abc import Callable
from typing import NamedTuple

import numpy as np

from linter.checks.shared.base import Limits, Result, View, Working, ladder, within
from linter.checks.shared.quantities import preload_force
from linter.checks.shared.seat_fits import of_material
from linter.checks.shared.two_sides import BASIC, SIDES, sinking
from linter.mechanics import attached_parts as parts
from linter.mechanics import limits as tolerances
from linter.mechanics import materials
from linter.model.stations import Floats
from linter.model.wording import quantity_text


def groove(view: View, limits: Limits) -> Result:
    """Axial force against what the groove of a retaining ring carries, and its distance to the edge."""
    s = view.stations
    force = np.abs(s.number("axial_load")) + preload_force(view)
    measures, loads, edges, wants = {}, {}, {}, {}
    for side in SIDES:
        seat, bottom = within(s.number(BASIC[side])), within(s.number(f"{side}_groove_diameter"))
        fits = bottom < seat if side == "shaft" else bottom > seat
        yields = of_material(s.choice(f"{side}_material"), materials.yield_strength)
        if "plastic" in s.choice(f"{side}_material").words:
            yields = np.where(s.choice(f"{side}_material").is_in("plastic"), limits["plastic_strength"], yields)
        load = parts.groove_load(seat, bottom, within(yields), float(limits["groove_factor"]))
        load = np.where(fits, load, 0.0)
        load = np.where(np.isnan(seat + bottom + yields), np.nan, load)
        edge, wanted = s.number(f"{side}_groove_edge"), limits["edge_depths"] * 0.5 * np.abs(seat - bottom)
        by_load = ladder(force, limits["share_near"] * load, load)
        near = edge < wanted - 1e-9
        by_edge = np.where(near, limits["edge_measure"], 0.0)
        stated = s.known(f"{side}_groove_diameter")
        measures[side] = np.where(stated, np.where(np.isnan(by_load), np.nan, np.fmax(by_load, by_edge)), -1.0)
        loads[side], edges[side] = load, np.where(stated & near, edge - wanted, np.nan)
        wants[side] = stated
    worse = measures["housing"] > measures["shaft"]
    measure = np.maximum(measures["shaft"], measures["housing"])
    near_edge = np.where(worse, ~np.isnan(edges["housing"]), ~np.isnan(edges["shaft"])) & (
        measure == limits["edge_measure"]
    )
    load = np.where(worse, loads["housing"], loads["shaft"])
    return Result(
        measure=measure,
        unit="N",
        observed=np.where(near_edge, np.nan, force),
        upper=np.where(near_edge, np.nan, limits["share_near"] * load),
        applies=wants["shaft"] | wants["housing"],
        reason="no groove of a retaining ring is stated",
        missing={
            "axial_load": np.isnan(s.number("axial_load")),
            "preload_force": np.isnan(preload_force(view)),
            **{f"{side}_material": wants[side] & ~s.choice(f"{side}_material").known for side in SIDES},
            **{BASIC[side]: wants[side] & np.isnan(s.number(BASIC[side])) for side in SIDES},
        },
        variant=lambda: np.where(near_edge, "edge", "").astype(object),
        facts=lambda: {"side": np.where(worse, "housing", "shaft").astype(object), "carries": (load, "N")},
        working=lambda: [
            Working("force", "F_a + F_p", "axial load and preload", force, "N"),
            Working("shaft_carries", "F_N", "load of the groove on the shaft", loads["shaft"], "N", "R_e A_N/(S q)"),
            Working("housing_carries", "F_N", "load of the groove, housing", loads["housing"], "N", "R_e A_N/(S q)"),
        ],
    )


def ring_play(view: View, limits: Limits) -> Result:
    """Width of the groove against the least one for the ring, and the axial play that it leaves the ring."""
    s = view.stations
    found = {}
    for side in SIDES:
        width = within(s.number(f"{side}_groove_width"))
        ring = parts.retaining_ring(within(s.number(BASIC[side])), side)
        step = 1e-3 * tolerances.it_value_or_nan(f"IT{int(limits['width_grade'])}", ring.groove_width)
        narrow = sinking(width, ring.groove_width, ring.thickness)
        wide = np.minimum(ladder(np.maximum(width - ring.groove_width, 0.0), step), float(limits["wide_most"]))
        tight = width < ring.groove_width
        stated = s.known(f"{side}_groove_width") & ~(np.isnan(ring.thickness) & s.known(BASIC[side]))
        found[side] = (
            np.where(stated, np.where(tight, narrow, wide), -1.0), stated, width, ring.groove_width,
            ring.groove_width + step, width - ring.thickness, tight, ring.thickness,
        )  # fmt: skip
    measures = {side: values[0] for side, values in found.items()}
    worse = np.isnan(measures["housing"]) | (measures["housing"] > measures["shaft"])
    measure, stated, width, least, most, play, tight, thickness = (
        np.where(worse, *both) for both in zip(found["housing"], found["shaft"], strict=True)
    )
    return Result(
        measure=measure,
        unit="mm",
        observed=width,
        lower=least,
        upper=most,
        applies=found["shaft"][1] | found["housing"][1],
        reason="no width of a groove is stated, or no retaining ring of this size is printed",
        missing={BASIC[side]: found[side][1] & ~s.known(BASIC[side]) for side in SIDES},
        variant=lambda: np.select([tight & (width < thickness), tight], ["shut", "narrow"], "").astype(object),
        facts=lambda: {
            "side": np.where(worse, "housing", "shaft").astype(object),
            "play": (play, "mm"),
            "thickness": (thickness, "mm"),
        },
        working=lambda: [
            Working("width", "m", "width of the groove", width, "mm"),
            Working("thickness", "s", "thickness of the ring", thickness, "mm", "DIN 471 or 472, table by diameter"),
            Working("least", "m", "least width of the groove", least, "mm", "the same table"),
            Working("most", "", "largest width of the groove", most, "mm", "m H13"),
            Working("play", "", "axial play of a ring of nominal thickness", play, "mm", "m - s"),
        ],
    )


def ring_lift(view: View, limits: Limits) -> Result:
    """Highest speed against the one at which the retaining ring of a turning shaft lifts off its groove."""
    s = view.stations
    ring = parts.retaining_ring(within(s.number("bore_diameter")), "shaft")
    speed = within(s.number("speed_max"))
    return Result(
        measure=ladder(speed, limits["share_near"] * ring.lift_off, ring.lift_off),
        unit="r/min",
        observed=speed,
        upper=limits["share_near"] * ring.lift_off,
        applies=s.known("shaft_groove_diameter") & ~s.choice("rotating_ring").is_in("outer")
        & ~(np.isnan(ring.lift_off) & s.known("bore_diameter")),
        reason="no retaining ring of a printed size turns with the shaft",
        missing={"bore_diameter": ~s.known("bore_diameter")},
        facts=lambda: {"lifts": (ring.lift_off, "r/min")},
        working=lambda: [
            Working("speed", "n", "highest speed", speed, "r/min"),
            Working("lift_off", "", "lift-off speed of the ring", ring.lift_off, "r/min", "DIN 471, table by diameter"),
        ],
    )  # fmt: skip


def nut(view: View, limits: Limits) -> Result:
    """Clamping force of a nut against the published range by bore."""
    s = view.stations
    table = limits.table("forces")
    bore, torque = within(s.number("bore_diameter")), within(s.number("nut_torque"))
    force = parts.nut_force(torque, bore, float(limits["nut_factor"]))
    sizes = table["bore"]
    low, high = (np.interp(bore, sizes, table[name]) for name in ("low", "high"))
    inside = (bore >= sizes[0]) & (bore <= sizes[-1])
    preload = preload_force(view)
    measure = np.maximum(
        ladder(np.maximum(force - high, 0.0), limits["over"] * high),
        sinking(force, low, limits["under"] * low),
    )
    return Result(
        measure=np.where(inside, measure, np.nan),
        unit="N",
        observed=force,
        lower=low,
        upper=high,
        applies=s.known("nut_torque") & (inside | np.isnan(bore)),
        reason="no torque of a nut is stated, or no force is published for this bore",
        missing={"bore_diameter": np.isnan(bore)},
        variant=lambda: np.where(force < low, "loose", "").astype(object),
        facts=lambda: {
            "least_torque": (1e-3 * limits["nut_factor"] * low * bore, "N.m"),
            "most_torque": (1e-3 * limits["nut_factor"] * high * bore, "N.m"),
        },
        working=lambda: [
            Working("torque", "T", "torque of the nut", torque, "N.m"),
            Working("force", "F", "clamping force, dry threads", force, "N", "T/(K d)"),
            Working("preload", "F_p", "preload", preload, "N"),
            Working("low", "", "least published", low, "N", "table by bore"),
            Working("high", "", "largest published", high, "N", "table by bore"),
        ],
    )


def o_ring(view: View, limits: Limits) -> Result:
    """Squeeze and fill of the O-ring under an outer ring against the usual window, tighter where the ring slides."""
    s = view.stations
    cord, depth, width = (within(s.number(f"seal_ring_{name}")) for name in ("cord", "groove_depth", "groove_width"))
    # outside of the groove the ring stands proud into a seat of the size of the outer ring: the gland is the depth
    found = parts.o_ring(cord, depth, width, np.ones(view.count), np.ones(view.count))
    slides = s.choice("axial_role").is_in("floating", "spring-loaded") & ~s.choice("free_ring").is_in("inner")
    most = np.where(slides, float(limits["squeeze_sliding"]), float(limits["squeeze_most"]))
    low = float(limits["squeeze_least"])
    loose, tight = np.maximum(low - found.squeeze, 0.0), np.maximum(found.squeeze - most, 0.0)
    over = np.maximum(found.fill - limits["fill_most"], 0.0)
    by_fill = ladder(over, 100.0 - limits["fill_most"])
    by_squeeze = np.maximum(ladder(loose, low), ladder(tight, limits["beyond"] * most))
    by_fill = np.where(over > 0.0, np.maximum(by_fill, limits["outside_measure"]), by_fill)
    by_squeeze = np.where(loose + tight > 0.0, np.maximum(by_squeeze, limits["outside_measure"]), by_squeeze)
    filled = by_fill > by_squeeze
    size = _around(view, limits, cord, depth)
    by_size = np.fmax(size.by_stretch, size.by_girth)
    fits = np.nan_to_num(by_size) > np.maximum(by_squeeze, by_fill)
    stretched = fits & (np.nan_to_num(size.by_stretch) >= np.nan_to_num(size.by_girth))
    return Result(
        measure=np.fmax(np.maximum(by_squeeze, by_fill), np.where(fits, by_size, np.nan)),
        unit="%",
        observed=np.select([stretched, fits, filled], [size.stretch, size.girth, found.fill], found.squeeze),
        lower=np.where(filled | fits, np.nan, low),
        upper=np.select([stretched, fits, filled], [size.most, size.girth_most, float(limits["fill_most"])], most),
        applies=s.known("seal_ring_cord"),
        reason="no O-ring is stated",
        missing={
            "seal_ring_groove_depth": np.isnan(depth),
            "seal_ring_groove_width": np.isnan(width),
        },
        variant=lambda: np.select(
            [stretched, fits, filled, loose > 0.0, slides], ["stretched", "girth", "full", "loose", "sliding"], ""
        ).astype(object),
        facts=lambda: {
            "squeeze": (found.squeeze, "%"),
            "fill": (found.fill, "%"),
            "shallowest": (cord * (1.0 - most / 100.0), "mm"),
            "deepest": (cord * (1.0 - low / 100.0), "mm"),
            "smallest": (size.smallest, "mm"),
            "largest": (size.largest, "mm"),
        },
        working=lambda: [
            Working("cord", "d_2", "diameter of the cord", cord, "mm"),
            Working("depth", "t", "depth of the groove", depth, "mm"),
            Working("width", "b", "width of the groove", width, "mm"),
            Working("squeeze", "", "squeeze of the cord", found.squeeze, "%", "(d_2 - t)/d_2"),
            Working("fill", "", "fill of the groove", found.fill, "%", "π d_2²/(4 t b)"),
            Working("stretch", "", "stretch over the outer ring", size.stretch, "%", "D/d_1 - 1"),
            Working("girth", "", "how much larger than its groove", size.girth, "%", "1 - (D + 2 t)/(d_1 + 2 d_2)"),
        ],
    )


class _Around(NamedTuple):
    """How an O-ring in the bore lies around the outer ring: shares in %, measures, inside diameters that suit [mm]."""

    stretch: Floats
    girth: Floats
    by_stretch: Floats
    by_girth: Floats
    most: Floats
    girth_most: Floats
    smallest: Floats
    largest: Floats


def _around(view: View, limits: Limits, cord: Floats, depth: Floats) -> _Around:
    """Stretch of the O-ring over the outer ring and its excess over the groove; NaN where nothing is asked."""
    inside, outer = (within(view.stations.number(n)) for n in ("seal_ring_inside_diameter", "outside_diameter"))
    most, girth_most = (np.full(view.count, limits.get(name, np.nan)) for name in ("stretch_most", "girth_most"))
    stretch, girth = 100.0 * (outer / inside - 1.0), 100.0 * (1.0 - (outer + 2.0 * depth) / (inside + 2.0 * cord))
    over = (np.maximum(stretch - most, 0.0), np.maximum(girth - girth_most, 0.0))
    least = limits["outside_measure"]
    by_stretch, by_girth = (
        np.where(beyond > 1e-9, np.maximum(ladder(beyond, mark), least), 0.0 * beyond)
        for beyond, mark in zip(over, (most, girth_most), strict=True)
    )
    largest = (outer + 2.0 * depth) / (1.0 - girth_most / 100.0) - 2.0 * cord
    return _Around(
        stretch, girth, by_stretch, by_girth, most, girth_most, outer / (1.0 + most / 100.0), largest
    )  # fmt: skip


def _computed_wall(view: View) -> Callable[[int], str]:
    """The wall that the fits are computed with, in words by row."""
    outside = within(view.stations.number("housing_outer_diameter"))

    def make(row: int) -> str:
        if np.isnan(outside[row]):
            return "thick, for no outside diameter is stated"
        return f"{quantity_text(float(outside[row]), 'mm')} outside"

    return make


def housing_wall(view: View, limits: Limits) -> Result:
    """A soft, ribbed or moulded wall around the seat: whether it holds it as the fits assume, by itself or a sleeve."""
    s = view.stations
    soft = s.choice("housing_material").is_in("plastic", "magnesium", "zinc alloy")
    plastic = s.choice("housing_material").is_in("plastic")
    wall = s.choice("housing_wall")
    ribbed, insert = wall.is_in("ribbed"), wall.is_in("moulded with insert")
    sleeve = within(s.number("sleeve_wall"))
    held = insert | ~np.isnan(sleeve)
    thin = within(s.number("outside_diameter")) * limits["sleeve_share"]
    weak = held & (sleeve < thin)
    measure = np.select(
        [plastic & ~held, weak & soft, ribbed & ~held],
        [limits["bare_measure"], limits["thin_measure"], limits["ribbed_measure"]],
        0.0,
    )
    variant = np.select(
        [plastic & ~held, weak & soft, ribbed & ~held, held, soft], ["", "thin", "ribbed", "held", "soft"], "solid"
    )
    return Result(
        measure=measure,
        unit="mm",
        observed=np.where(weak & soft, sleeve, np.nan),
        lower=np.where(weak & soft, thin, np.nan),
        applies=wall.known | ~np.isnan(sleeve),
        reason="the table says nothing of the wall of the housing",
        variant=lambda: variant.astype(object),
        facts=lambda: {
            "material": s.choice("housing_material").texts().astype(object),
            "computed": _computed_wall(view),
        },
        working=lambda: [
            Working("sleeve", "", "wall of the sleeve or insert", sleeve, "mm"),
            Working("thin", "", "wall that holds the seat round", thin, "mm", "share of D"),
        ],
    )
