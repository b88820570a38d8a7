"""Chapter speed: verdicts move one way, rows do not see each other, and the numbers of the rulebook decide."""

import numpy as np
import pytest

from linter.model.findings import Cause
from linter.model.stations import stations_from_rows
from linter.review.assess import assess
from linter.review.records import assessments
from linter.rulebook.load import load
from tests.checks.support import VERSION, never_milder, ranks, review, same_alone, with_cells, with_limit

MINIATURE = {"bore_diameter": 2.7, "outside_diameter": 7.5, "lubrication": "grease", "ball_material": "steel"}
SPINDLE = {
    "bearing_type": "angular contact ball", "bore_diameter": 10, "outside_diameter": 26, "ball_count": 9,
    "ball_diameter": 4.7625, "pitch_diameter": 18, "contact_angle": 15, "axial_load": 0, "preload_force": 50,
    "ball_material": "steel", "speed_max": 60000,
}  # fmt: skip
SPEEDS = np.geomspace(1000, 500_000, 120)
ALL = [c for c in load(VERSION).clauses if c.startswith("speed.")]

SWEEPS = {
    "speed.factor": {**MINIATURE, "duty": "continuous"},
    "speed.cage": {"bore_diameter": 8, "outside_diameter": 22, "cage": "polyamide"},
    "speed.seal": {"closure": "contact seal", "seal_lip_diameter": 11},
    "speed.maker-limit": {"limiting_speed": 38000, "reference_speed": 30000},
    "speed.precision": {"bore_diameter": 8, "outside_diameter": 22, "tolerance_class": "Normal"},
    "speed.ball-inertia": SPINDLE,
    "speed.spin": SPINDLE,
}


@pytest.mark.parametrize("clause", SWEEPS)
def test_faster_is_never_milder(clause):
    found = never_milder(clause, [{**SWEEPS[clause], "speed_max": float(n)} for n in SPEEDS])
    assert found[0] == 0
    assert found[-1] >= 2


def test_warmer_cage_is_never_milder():
    row = {"cage": "phenolic"}
    found = never_milder(
        "speed.cage-temperature", [{**row, "operating_temperature": float(t)} for t in range(20, 260, 5)]
    )
    assert set(found) == {0, 2, 3}


def test_more_preload_is_never_worse_for_the_balls():
    for clause in ("speed.ball-inertia", "speed.spin"):
        never_milder(clause, [{**SPINDLE, "preload_force": float(f)} for f in np.geomspace(500, 1, 60)])


@pytest.mark.parametrize("clause", ALL)
def test_rows_do_not_see_each_other(clause):
    same_alone(clause, [{**MINIATURE, "duty": "continuous", "speed_max": 110000}, *SWEEPS.values(), SPINDLE])


@pytest.mark.parametrize("clause", ALL)
def test_a_bare_row_says_what_it_wants(clause):
    found = review(clause, [{"bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000}])
    assert found.failure is None
    if found.outcome[0] == 2:
        assert any(rows[0] for rows in found.missing.values())


def test_check_values_of_the_miniature_size():
    """d 2.7, D 7.5, 110 000 r/min: n d_m = 561 000 mm r/min (common practice)."""
    row = {**MINIATURE, "speed_max": 110000, "duty": "continuous"}
    found = review("speed.factor", [row])
    assert found.result.observed[0] == pytest.approx(561000)
    assert ranks("speed.factor", [row])[0] >= 3
    assert ranks("speed.factor", [{**row, "duty": "intermittent"}])[0] < 3
    assert ranks("speed.factor", [{**row, "lubrication": "oil jet"}])[0] == 0
    hybrid = review("speed.factor", [{**row, "ball_material": "silicon nitride"}])
    assert hybrid.result.upper[0] > found.result.upper[0]


def test_spindle_size_against_hand_calculation():
    """F_c = 21.7 N (steel) and 8.99 N (silicon nitride), M_g = 6.72 N mm at 15 degrees; density 7800 and 3230 kg/m3.

    Derived by hand at the nominal angle; under preload the angle opens by less than 2 degrees.
    """
    steel = review("speed.ball-inertia", [SPINDLE]).result
    force = next(line.values[0] for line in steel.working if line.key == "centrifugal")
    assert force == pytest.approx(21.7, rel=0.01)
    ceramic = review("speed.ball-inertia", [{**SPINDLE, "ball_material": "silicon nitride"}]).result
    assert next(line.values[0] for line in ceramic.working if line.key == "centrifugal") == pytest.approx(
        8.99, rel=0.015
    )
    moment = review("speed.spin", [SPINDLE]).result.observed[0]
    angle = next(line.values[0] for line in steel.working if line.key == "angle")
    assert moment * np.sin(np.deg2rad(15)) / np.sin(np.deg2rad(angle)) == pytest.approx(6.72, rel=0.01)


def test_bore_basis_and_mean_diameter_basis_are_kept_apart():
    """608 size at 40 000 r/min: n d = 320 000 in a release, n d_m = 600 000 now; ratio (1 + D/d)/2 (derived)."""
    row = {**MINIATURE, "bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000, "cage": "polyamide"}
    by_bore = review("speed.cage", [row], load("2026.3")).result.observed[0]
    by_mean = review("speed.cage", [row]).result.observed[0]
    assert (by_bore, by_mean) == (pytest.approx(320_000), pytest.approx(600_000))
    assert by_mean / by_bore == pytest.approx(1.875)


@pytest.mark.parametrize(
    ("row", "rank"),
    [
        ({"bore_diameter": 3, "outside_diameter": 10, "speed_max": 60000, "closure": "shield"}, 1),
        ({"bore_diameter": 30, "outside_diameter": 62, "speed_max": 7500, "closure": "contact seal"}, 0),
        ({"bore_diameter": 30, "outside_diameter": 62, "speed_max": 16000, "closure": "contact seal"}, 4),
        ({"bore_diameter": 30, "outside_diameter": 62, "speed_max": 7500, "rotating_ring": "outer"}, 1),
    ],
)
def test_printed_speeds_of_common_sizes(row, rank):
    """623 with shields at 60 000 r/min (SKF), 6206 with contact seals at 7500 (NSK), the outer ring at 0.6 of it."""
    row = {"lubrication": "grease", "ball_material": "steel", "duty": "continuous", **row}
    assert ranks("speed.factor", [row])[0] == rank


def test_the_makers_speed_goes_before_general_figures_and_takes_the_factors_of_the_arrangement():
    row = {
        "bore_diameter": 8, "outside_diameter": 22, "lubrication": "grease", "ball_material": "steel",
        "duty": "continuous", "limiting_speed": 60000, "speed_max": 50000,
    }  # fmt: skip
    assert ranks("speed.factor", [row])[0] == 1
    assert ranks("speed.maker-limit", [row])[0] == 0
    stiff = {**row, "preload_method": "rigid", "rigid_preload_class": "heavy"}
    limit = review("speed.maker-limit", [stiff])
    assert limit.result.upper[0] == pytest.approx(30000)
    assert ranks("speed.maker-limit", [stiff])[0] == 4
    loaded = {**row, "bearing_type": "deep groove ball", "dynamic_rating": 3450, "axial_load": 0, "preload_force": 0}
    shares = [{**loaded, "radial_load": 3450 / ratio} for ratio in (20, 12.5, 8, 5)]
    assert review("speed.maker-limit", shares).result.upper == pytest.approx([60000, 60000, 54600, 46200], rel=1e-6)


def test_remedies_do_not_propose_what_is_there():
    row = {
        "bore_diameter": 8, "outside_diameter": 22, "speed_max": 130000, "lubrication": "oil bath",
        "ball_material": "silicon nitride", "duty": "continuous", "closure": "shield", "cage": "polyamide",
    }  # fmt: skip
    factor, cage = review("speed.factor", [row]), review("speed.cage", [row])
    ways, better = factor.result.facts["ways"](0), cage.result.facts["better"](0)
    assert "silicon nitride" not in ways and "oil bath" not in ways and "seal" not in ways
    assert "polyamide" not in better and "phenolic" in better


def test_a_finding_names_the_finding_that_explains_it():
    row = {
        "machine": "M", "station": "A", "bore_diameter": 8, "outside_diameter": 22, "speed_max": 90000,
        "lubrication": "oil bath", "ball_material": "steel", "duty": "continuous", "limiting_speed": 40000,
        "cage": "pressed steel",
    }  # fmt: skip
    found = {r.clause: r for r in assessments(assess(stations_from_rows([row]), load(VERSION)))}
    assert found["speed.maker-limit"].follows is None
    for clause in ("speed.factor", "speed.cage"):
        assert found[clause].outcome == "finding" and found[clause].follows == Cause("speed.maker-limit", "A")
    slower = {**row, "limiting_speed": 82000}
    found = {r.clause: r for r in assessments(assess(stations_from_rows([slower]), load(VERSION)))}
    assert found["speed.maker-limit"].severity == "minor"
    assert found["speed.cage"].severity != "minor" and found["speed.cage"].follows == Cause("speed.factor", "A")


def test_a_clause_follows_clauses_that_there_are():
    book = load(VERSION)
    for clause in book.clauses.values():
        assert clause.id not in clause.follows
        assert [name for name in clause.follows if name not in book.clauses] == []


def test_no_finding_follows_from_itself_by_way_of_others():
    book = load(VERSION)

    def causes(name, seen):
        assert name not in seen, seen
        for cause in book.clauses[name].follows:
            causes(cause, (*seen, name))

    for name in book.clauses:
        causes(name, ())


def test_the_numbers_of_the_rulebook_decide():
    cage = {"bore_diameter": 10, "outside_diameter": 26, "speed_max": 24000, "cage": "polyamide"}
    assert ranks("speed.cage", [cage])[0] == 0
    assert ranks("speed.cage", [cage], with_cells("speed.cage", "cage", "low", "200000", cage="polyamide"))[0] == 1
    oiled = {"closure": "shield", "lubrication": "oil-air"}
    assert ranks("speed.lubricant-reaches", [oiled])[0] == 3
    warm = {"cage": "peek", "operating_temperature": 180}
    assert ranks("speed.cage-temperature", [warm])[0] == 0
    colder = with_cells("speed.cage-temperature", "cage", "low", "150", cage="peek")
    assert ranks("speed.cage-temperature", [warm], colder)[0] == 2
    lip = {"closure": "contact seal", "seal_lip_diameter": 11, "speed_max": 16000}
    assert ranks("speed.seal", [lip])[0] == 0
    assert ranks("speed.seal", [lip], with_limit("speed.seal", "lip_speed_low", 8))[0] == 2
    maker = {"speed_max": 20000, "limiting_speed": 30000}
    assert ranks("speed.maker-limit", [maker])[0] == 0
    assert ranks("speed.maker-limit", [maker], with_limit("speed.maker-limit", "outer_ring_factor", 0.5))[0] == 0
    maker = {**maker, "rotating_ring": "outer"}
    assert ranks("speed.maker-limit", [maker], with_limit("speed.maker-limit", "outer_ring_factor", 0.9))[0] == 0
    assert ranks("speed.maker-limit", [maker], with_limit("speed.maker-limit", "outer_ring_factor", 0.65))[0] == 2
    precise = {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 20000, "tolerance_class": "Normal"}
    assert ranks("speed.precision", [precise])[0] == 0
    finer = with_cells("speed.precision", "classes", "high", "200000", tolerance_class="Normal")
    assert ranks("speed.precision", [precise], finer)[0] == 2
    assert ranks("speed.ball-inertia", [SPINDLE], with_limit("speed.ball-inertia", "share_near", 1.2))[0] == 0
    assert ranks("speed.spin", [SPINDLE], with_limit("speed.spin", "friction_high", 0.1))[0] == 1
