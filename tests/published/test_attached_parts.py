"""Retaining rings, locknuts, O-rings, faces and bonded rings against print. "memory" means remembered."""

import numpy as np
import pytest

from linter.mechanics import attached_parts as parts
from linter.mechanics import springs


def test_groove_loads_of_din_471(case):
    """Table read (capitalbolts.in), formula from memory."""
    c = case("A16-DIN471-GROOVE")
    load = parts.groove_load(c["d1"], c["d2"], c["R_eL"], c["Sq"]) / 1e3
    c.agree(**{f"F_N_d{d}": value for d, value in zip(c["d1"], load, strict=True)})
    assert parts.retaining_ring(c["d1"], "shaft").groove_diameter.tolist() == c["d2"]


def test_lift_off_speeds_of_din_471(case):
    """Table read, formula from memory; b is printed as approximate."""
    c = case("A16-DIN471-LIFTOFF")
    speed = parts.lift_off_speed(c["d2"], c["d3"], c["b"])
    sizes = [5, 8, 10, 12, 15, 17]
    c.agree(**{f"n_liftoff_d{d}": value for d, value in zip(sizes, speed, strict=True)})
    assert parts.retaining_ring(10.0, "shaft").lift_off == 84_000


@pytest.mark.parametrize(
    ("side", "size", "thickness", "width"),
    [("shaft", 10.0, 1.0, 1.1), ("shaft", 6.0, 0.7, 0.8), ("shaft", 3.0, 0.4, 0.5), ("housing", 8.0, 0.8, 0.9),
     ("housing", 16.0, 1.0, 1.1)],
)  # fmt: skip
def test_thickness_and_groove_width_of_retaining_rings(side, size, thickness, width):
    """DIN 471 (capitalbolts.in) and DIN 472 (dongbofastener.com), s and m as printed; m exceeds s."""
    ring = parts.retaining_ring(size, side)
    assert (float(ring.thickness), float(ring.groove_width)) == (thickness, width)
    every = parts.retaining_ring(np.arange(3.0, 111.0), side)
    known = ~np.isnan(every.thickness)
    assert known.sum() > 50 and (every.groove_width[known] > every.thickness[known]).all()


def test_disc_springs_for_bearings_are_guided_as_published():
    """EN 16983 as vinscospring.com/support prints it; sizes of makers for bearings (memory) leave 0.2 to 0.5 mm."""
    from linter.checks.lookup import check_function
    from linter.checks.shared.base import View
    from linter.model.stations import stations_from_rows
    from linter.rulebook.load import load
    from linter.rulebook.model import Limits

    sizes = [(16, 15.8), (19, 18.8), (22, 21.8), (26, 25.7), (35, 34.6), (47, 46.5), (62, 61.5), (72, 71.5)]
    row = {"axial_role": "spring-loaded", "spring_kind": "disc", "free_ring": "outer"}
    rows = [row | {"machine": str(d), "outside_diameter": d, "spring_outside_diameter": s} for d, s in sizes]
    clause = load("current").clauses["parts.spring-guide"]
    found = check_function(clause.check)(View(stations_from_rows(rows)), Limits(clause))
    assert found.upper.tolist() == [0.2, 0.3, 0.4, 0.4, 0.6, 0.6, 0.8, 0.8]
    assert (found.measure <= 1.0 + 1e-9).all()


def test_o_ring_around_a_bearing():
    """Stretch of 1 to 5 % (Apple Rubber, Seal design guide) and 0 to 2 % over a bore's groove (Chamberlain's notes)."""
    from linter.review.assess import assess
    from linter.review.cases import case_stations
    from linter.rulebook.load import load

    station = {
        "seal_ring_cord": 1,
        "seal_ring_groove_depth": 0.8,
        "seal_ring_groove_width": 1.4,
        "outside_diameter": 26,
    }
    cases = {24.5: "remark", 25.0: "met", 25.7: "met", 26.1: "met", 26.5: "minor"}
    for inside, wanted in cases.items():
        review = assess(
            case_stations({"stations": [station | {"seal_ring_inside_diameter": inside}]}), load("current")
        ).reviews["parts.o-ring"]
        severity = int(review.severity[0])
        assert ("met" if severity < 0 else ("critical", "major", "minor", "remark")[severity]) == wanted, inside


def test_locknut_forces(case):
    """Timken, super precision catalogue, after MIL-B-17931."""
    c = case("A16-LOCKNUT")
    figures = {}
    for end in ("low", "high"):
        force = parts.nut_force(c[f"torque_{end}"], c["bore"], c["K"]) / 1e3
        figures |= {f"F_{end}_d{d}": value for d, value in zip(c["bore"], force, strict=True)}
    c.agree(**figures)


def test_tilt_by_a_face_out_of_parallel(case):
    c = case("A16-TILT-2UM")
    angle = parts.face_tilt(c["parallelism"], c["D"])
    c.agree(angle=angle, angle_min=np.degrees(1e-3 * angle) * 60.0, shift_over_span=angle * c["span"])


def test_o_ring(case):
    """Squeeze, fill and stretch by their definitions."""
    c = case("A16-ORING-22")
    found = parts.o_ring(c["cord"], c["gland_depth"], c["groove_width"], c["ring_id"], c["groove_floor"])
    c.agree(squeeze=found.squeeze, fill=found.fill, stretch=found.stretch)


def test_bonded_ring(case):
    c = case("A16-BOND-22")
    force = parts.bonded_force(c["d"], c["l"], c["tau"], c["reduction"])
    gap = c["gap"] + 1e-6 * c["alpha_difference"] * c["d"] * c["dT"]
    c.agree(force=force / 1e3, torque=1e-6 * force * c["d"] / 2 * 1e3, gap_hot=gap)


def test_housing_growth(case):
    c = case("A16-ALU-22")
    change = 1e-3 * c["D"] * (c["alpha_housing"] - c["alpha_bearing"]) * c["dT"]
    c.agree(change=change, clearance_hot=c["clearance_cold"] + change)


def test_disc_spring_of_a_6000(case):
    """EN 16984 without flats; dimensions from memory of makers' tables."""
    c = case("A16-DISC-26")
    h_0 = c["l0"] - c["t"]
    size = (c["De"], c["Di"], c["t"], h_0)
    force = {n: springs.disc_force(0.01 * n * h_0, *size, c["E"], c["mu"]) for n in (25, 50, 75)}
    rate = springs.disc_rate(0.5 * h_0, *size, c["E"], c["mu"])
    c.agree(h0=h_0, h0_over_t=h_0 / c["t"], F_25=force[25], F_50=force[50], F_75=force[75], rate_50=rate)


@pytest.mark.parametrize("side", ["shaft", "housing"])
def test_rows_of_retaining_rings_are_in_order(side):
    """Grooves lie below the shaft and outside the bore, deeper for larger rings; loads agree with the formula."""
    sizes = np.arange(3.0, 101.0)
    ring = parts.retaining_ring(sizes, side)
    known = ~np.isnan(ring.groove_diameter)
    assert known.sum() > 30
    depth = 0.5 * np.abs(ring.groove_diameter - sizes)[known]
    assert depth == pytest.approx(ring.groove_depth[known], abs=1e-6)
    assert (np.diff(depth) >= -1e-9).all()
    assert ((ring.groove_diameter < sizes) == (side == "shaft"))[known].all()


def test_sizes_that_the_table_lacks_are_unknown_and_other_sides_are_refused():
    assert np.isnan(parts.retaining_ring([10.5, np.nan, 5000.0], "shaft").groove_diameter).all()
    with pytest.raises(ValueError, match="side must be"):
        parts.retaining_ring(10.0, "rotor")
