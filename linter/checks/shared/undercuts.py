"""Undercuts beside the seats: what is stated, and how it lies to the ring chamfer, the seat and printed depths."""

from collections.abc import Mapping

import numpy as np
from attrs import frozen

from linter.checks.shared.base import Limits, View, either, ladder, within
from linter.checks.shared.two_sides import BASIC, CLOSE, abutment_wanted, at_or_below, chamfer
from linter.mechanics import abutment, tables
from linter.model.stations import Bools, Floats


@frozen(eq=False)
class Undercut:
    """Undercut of one side: what is stated [mm], what follows, the three measures, and where it is to be judged."""

    width: Floats
    depth: Floats
    radius: Floats
    cleared: Floats
    land: Floats
    deepest: Floats
    radius_allowed: Floats
    measures: Floats
    wanted: Bools
    needed: Mapping[str, Bools]


def undercut_of(view: View, limits: Limits, side: str) -> Undercut:
    """Undercut beside the seat of a side, judged against the limits of clause ``shoulder.undercut``."""
    s = view.stations
    corner, ring_width = chamfer(view).value, within(s.number("ring_width"))
    width, depth, radius = (
        within(s.number(f"{side}_undercut_{name}"), closed=True) for name in ("width", "depth", "radius")
    )
    form = s.choice(f"{side}_undercut_form")
    face = limits.table("face")
    behind = at_or_below(face, "face_depth", "depth", np.minimum(depth, face["depth"].max()))
    behind = np.where(form.is_in("F"), np.nan_to_num(behind), 0.0)
    cleared = abutment.chamfer_cleared(radius, depth, behind)
    unsure = ~form.known & (cleared > corner + CLOSE)
    land = (ring_width - width - corner) / within(ring_width - 2.0 * corner)
    sizes = limits.table("sizes")
    by_size = tables.in_ranges(sizes["over"], sizes["incl"], sizes["depth"], s.number(BASIC[side]))
    deepest = np.fmax(by_size, at_or_below(limits.table("catalogue"), "depth", "rs_min", corner))
    by_corner = np.where(unsure, np.nan, ladder(cleared, corner + CLOSE, corner + CLOSE, corner + CLOSE))
    by_land = ladder(np.maximum(1.0 - land, 0.0), 1.0 - limits["land_near"], 1.0 - limits["land_far"])
    by_depth = np.minimum(ladder(depth, deepest, limits["depth_far"] * deepest), 3.0)
    stated = {f"{side}_undercut_{name}": s.known(f"{side}_undercut_{name}") for name in ("width", "depth", "radius")}
    fillet_radius = s.number(f"{side}_fillet_radius")
    there = either(*stated.values(), form.known, fillet_radius == 0.0)
    unknown = ~there & np.isnan(fillet_radius) & abutment_wanted(view)[side]
    return Undercut(
        width, depth, radius, cleared, land, deepest,
        radius_allowed=corner + depth + behind + np.sqrt(2.0 * depth * behind),
        measures=np.array([by_corner, by_land, by_depth]),
        wanted=there | unknown,
        needed={
            f"{side}_fillet_radius": ~unknown,
            **{name: known | unknown for name, known in stated.items()},
            f"{side}_undercut_form": ~unsure,
            "ring_chamfer": ~np.isnan(corner) | unknown,
            "ring_width": s.known("ring_width") | unknown,
            BASIC[side]: ~np.isnan(deepest) | unknown,
        },
    )  # fmt: skip
