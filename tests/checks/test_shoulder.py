"""Chapter shoulder: verdicts move one way, rows do not see each other, and the numbers of the rulebook decide."""

import numpy as np
import pytest

from linter.mechanics import abutment
from linter.rulebook.load import load
from tests.checks.support import VERSION, never_milder, ranks, review, same_alone, with_cells, with_limit

SIZE = {
    "bore_diameter": 20, "outside_diameter": 47, "ring_width": 14, "ring_chamfer": 1,
    "bearing_type": "deep groove ball",
    "inner_ring_shoulder_diameter": 28.8, "outer_ring_shoulder_diameter": 38.5, "speed_max": 12000,
}  # fmt: skip
FULL = {
    **SIZE, "shaft_shoulder_diameter": [26, -0.1, 0], "shaft_fillet_radius": 1, "housing_fillet_radius": 0.6,
    "housing_shoulder_diameter": [41, 0, 0.1], "shaft_material": "steel", "housing_material": "aluminium",
    "axial_load": 100, "preload_force": 50, "shaft_undercut_form": "F", "shaft_undercut_width": 2,
    "shaft_undercut_depth": 0.2, "shaft_undercut_radius": 1.3,
}  # fmt: skip
ALL = [c for c in load(VERSION).clauses if c.startswith("shoulder.")]


@pytest.mark.parametrize("clause", ALL)
def test_a_sound_position_meets_the_chapter(clause):
    assert ranks(clause, [FULL])[0] == 0


@pytest.mark.parametrize("clause", ALL)
def test_rows_do_not_see_each_other(clause):
    rows = [FULL, SIZE, {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 4000}]
    rows += [
        {**FULL, "shaft_fillet_radius": r, "shaft_shoulder_diameter": [20 + 2 * r, 0, 0.1]} for r in (0.5, 1.5, 3.0)
    ]
    rows += [{**FULL, "axial_role": "floating", "free_ring": "outer", "housing_shoulder_diameter": None}]
    same_alone(clause, rows)


@pytest.mark.parametrize("clause", ALL)
def test_a_bare_row_says_what_it_wants(clause):
    found = review(clause, [{"bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000}])
    assert found.failure is None
    assert found.outcome[0] == 1 or any(rows[0] for rows in found.missing.values())


def test_a_lower_shoulder_is_never_milder():
    lower = never_milder(
        "shoulder.shaft-height", [{**FULL, "shaft_shoulder_diameter": [d, 0, 0]} for d in np.arange(28, 20, -0.05)]
    )
    assert set(lower) == {0, 2, 3, 4}
    wider = never_milder(
        "shoulder.housing-height", [{**FULL, "housing_shoulder_diameter": [d, 0, 0]} for d in np.arange(39, 47, 0.05)]
    )
    assert set(wider) == {0, 2, 3, 4}


def test_a_shoulder_beyond_the_land_is_never_milder():
    found = never_milder(
        "shoulder.shaft-height", [{**FULL, "shaft_shoulder_diameter": [d, 0, 0]} for d in np.arange(26, 47, 0.1)]
    )
    assert set(found) == {0, 3}


def test_a_larger_fillet_is_never_milder():
    found = never_milder(
        "shoulder.fillet", [{**FULL, "ring_chamfer": 2.5, "shaft_fillet_radius": r} for r in np.arange(0, 4, 0.05)]
    )
    assert set(found) == {0, 3, 4}


def test_closer_to_the_other_ring_is_never_milder():
    found = never_milder(
        "shoulder.other-ring", [{**FULL, "shaft_shoulder_diameter": [d, 0, 0]} for d in np.arange(25, 40, 0.1)]
    )
    assert set(found) == {0, 2, 4}


def test_more_axial_load_is_never_milder():
    found = never_milder("shoulder.pressure", [{**FULL, "axial_load": f} for f in np.geomspace(1, 1e6, 80)])
    assert set(found) == {0, 2, 3, 4}


def test_an_undercut_gets_worse_with_its_radius_width_and_depth():
    def undercut(**changed):
        return {**FULL, **{f"shaft_undercut_{name}": value for name, value in changed.items()}}

    radius = never_milder("shoulder.undercut", [undercut(radius=float(r)) for r in np.arange(0.2, 4, 0.05)])
    assert set(radius) == {0, 4}
    width = never_milder("shoulder.undercut", [undercut(width=float(b)) for b in np.arange(1, 13, 0.1)])
    assert set(width) == {0, 1, 2, 4}
    depth = never_milder("shoulder.undercut", [undercut(depth=float(h)) for h in np.arange(0.2, 2, 0.02)])
    assert set(depth) == {0, 1, 2}
    chamfer = never_milder(
        "shoulder.undercut", [{**undercut(form="E"), "ring_chamfer": float(r)} for r in np.arange(1.5, 0.9, -0.02)]
    )
    assert set(chamfer) == {0, 4}


def test_undercuts_of_the_makers_tables_suit_the_rings_they_are_printed_for():
    """TPI CAT 2260/TE tables 3.7 and 3.8, SKF Spherical plain bearings table 5; width 3 and more of r_s min 1 rings."""
    rings = [(1, 13, 30), (1.1, 15, 20), (1.5, 21, 35), (2, 27, 50), (2.1, 33, 65), (3, 41, 95)]
    for rs_min, width, bore in rings:
        cut = abutment.undercut(rs_min)
        row = {
            **SIZE, "ring_chamfer": rs_min, "ring_width": width, "bore_diameter": bore, "outside_diameter": 2.2 * bore,
            "shaft_fillet_radius": 0, "housing_fillet_radius": rs_min, "shaft_undercut_form": "F",
            "shaft_undercut_width": float(cut.width), "shaft_undercut_depth": float(cut.depth),
            "shaft_undercut_radius": float(cut.radius),
        }  # fmt: skip
        assert ranks("shoulder.undercut", [row])[0] == 0, rs_min


def test_the_side_that_stands_worse_is_told_and_an_unknown_side_hides_no_finding():
    housing = {"housing_undercut_width": 9.0, "housing_undercut_depth": 0.2, "housing_undercut_radius": 0.4}
    found = review("shoulder.undercut", [{**FULL, **housing}]).result
    assert (found.facts["side"][0], found.observed[0]) == ("housing", 9.0)
    alone = {key: value for key, value in {**FULL, **housing}.items() if key != "shaft_undercut_depth"}
    assert ranks("shoulder.undercut", [alone])[0] == 2
    assert ranks("shoulder.undercut", [{**alone, "housing_undercut_width": 2.0}])[0] == -1


def test_chamfer_06_with_fillet_08_stops_the_release_whatever_else_is_unknown():
    assert ranks("shoulder.fillet", [{"ring_chamfer": 0.6, "shaft_fillet_radius": 0.8}])[0] == 4
    assert (
        ranks("shoulder.fillet", [{"ring_chamfer": 0.6, "shaft_fillet_radius": 0, "housing_fillet_radius": 0}])[0] == 0
    )


def test_tables_of_the_rulebook_agree_with_the_makers_tables():
    """NTN CAT. 2202-IX/E table 14.3, NSK E1102 table 11.2, TPI CAT 2260/TE table 3.7, JIS B 1566."""
    fillets = load(VERSION).clauses["shoulder.fillet"].tables["fillets"].arrays
    strict, loose = abutment.fillet_range(fillets["rs_min"])
    np.testing.assert_allclose(fillets["low"], strict)
    np.testing.assert_allclose(fillets["high"], loose)
    heights = load(VERSION).clauses["shoulder.shaft-height"].tables["heights"].arrays
    strict, loose = abutment.shoulder_height_range(heights["rs_min"], heights["bearing_type"])
    np.testing.assert_allclose(heights["strict"], strict)
    np.testing.assert_allclose(heights["loose"], loose)


def test_general_tolerance_stands_in_and_is_reported():
    found = review("shoulder.shaft-height", [{**FULL, "shaft_shoulder_diameter": 26}]).result
    assert found.observed[0] == pytest.approx(25.8)
    assert any(a.parameter == "shaft_shoulder_diameter" and a.rows[0] for a in found.assumed)


def test_values_to_put_for_what_is_not_stated():
    found = review("shoulder.stated", [SIZE]).result
    assert found.facts["unstated"](0).replace("\u00a0", " ") == (
        "shaft_shoulder_diameter (at least 25 mm), shaft_fillet_radius (at most 1 mm), "
        "housing_shoulder_diameter (at most 42 mm) and housing_fillet_radius (at most 1 mm)"
    )


def test_the_numbers_of_the_rulebook_decide():
    book = with_cells("shoulder.fillet", "fillets", "high", "0.8", rs_min="1")
    assert ranks("shoulder.fillet", [FULL], book)[0] == 3
    low = with_cells("shoulder.shaft-height", "heights", "least", "3.2", rs_min="1", bearing_type="deep groove ball")
    assert ranks("shoulder.shaft-height", [FULL], low)[0] == 2
    high = with_cells("shoulder.housing-height", "heights", "least", "3.2", rs_min="1", bearing_type="deep groove ball")
    assert ranks("shoulder.housing-height", [FULL], high)[0] == 2
    assert ranks("shoulder.other-ring", [FULL], with_limit("shoulder.other-ring", "gap_wanted", 1.5))[0] == 2
    assert ranks("shoulder.pressure", [FULL], with_limit("shoulder.pressure", "share_near", 0.001))[0] == 2
    assert ranks("shoulder.undercut", [FULL], with_limit("shoulder.undercut", "land_near", 0.95))[0] == 1
    behind = with_cells("shoulder.undercut", "face", "face_depth", "0", depth="0.2")
    assert ranks("shoulder.undercut", [FULL], behind)[0] == 4
    slow = with_limit("shoulder.stated", "demand_speed_factor", 1_000_000)
    assert (ranks("shoulder.stated", [SIZE])[0], ranks("shoulder.stated", [SIZE], slow)[0]) == (3, 2)


@pytest.mark.parametrize("clause", ["shoulder.shaft-height", "shoulder.housing-height", "shoulder.fillet"])
@pytest.mark.parametrize("corner", [0, -1, 1e9])
def test_a_chamfer_that_no_ring_has_is_not_judged(clause, corner):
    assert review(clause, [{**FULL, "ring_chamfer": corner}]).outcome[0] not in (0, 1)


def test_a_size_beyond_the_general_tolerances_is_not_judged():
    huge = {**FULL, "shaft_shoulder_diameter": 13500}
    for clause in ("shoulder.other-ring", "shoulder.pressure", "shoulder.shaft-height"):
        assert review(clause, [huge]).outcome[0] not in (0, 1)


def test_a_larger_chamfer_is_never_milder():
    rows = [{**FULL, "axial_load": 100, "ring_chamfer": r} for r in (0.3, 0.6, 1, 1.5, 3, 10, 25, 1e9)]
    assert never_milder("shoulder.pressure", rows)[-1] == 4


@pytest.mark.parametrize("part", ["shoulder_diameter", "fillet_radius", "shoulder_runout"])
def test_what_is_stated_of_a_shoulder_beside_a_free_ring_asks_for_the_whole_of_it(part):
    free = {**FULL, "axial_role": "floating", "free_ring": "outer", "housing_shoulder_runout": 0.01}
    names = [f"housing_{name}" for name in ("shoulder_diameter", "fillet_radius", "shoulder_runout")]
    alone = {k: v for k, v in free.items() if k not in names or k == f"housing_{part}"}
    none = {k: v for k, v in free.items() if k not in names}
    for clause, wanted in (("shoulder.fillet", "fillet_radius"), ("shoulder.other-ring", "shoulder_diameter")):
        assert ranks(clause, [free, alone, none]).tolist() == [0, 0 if wanted == part else -1, 0], clause


def test_the_part_behind_a_spring_is_asked_where_it_is_stated():
    spring = {**FULL, "axial_role": "spring-loaded", "free_ring": "outer"}
    low = {**spring, "housing_shoulder_diameter": [46, 0, 0]}
    bare = {k: v for k, v in spring.items() if k != "housing_shoulder_diameter"}
    found = review("shoulder.housing-height", [spring, low, bare])
    assert found.outcome.tolist() == [review("shoulder.housing-height", [FULL]).outcome[0], 1, 3]
    assert ranks("shoulder.housing-height", [low])[0] == 2
