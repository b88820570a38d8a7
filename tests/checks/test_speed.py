"""Chapter speed: verdicts move one way, rows do not see each other, and the numbers of the rulebook decide."""

import numpy as np
import pytest

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
    """608 size at 40 000 r/min: n d = 320 000, n d_m = 600 000, ratio 1.875 = (1 + D/d)/2 (derived)."""
    row = {**MINIATURE, "bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000, "cage": "polyamide"}
    by_bore = review("speed.cage", [row]).result.observed[0]
    by_mean = review("speed.factor", [row]).result.observed[0]
    assert (by_bore, by_mean) == (pytest.approx(320_000), pytest.approx(600_000))
    assert by_mean / by_bore == pytest.approx(1.875)


def test_the_numbers_of_the_rulebook_decide():
    cage = {"bore_diameter": 10, "outside_diameter": 26, "speed_max": 24000, "cage": "polyamide"}
    assert ranks("speed.cage", [cage])[0] == 0
    assert ranks("speed.cage", [cage], with_cells("speed.cage", "cage", "low", "200000", cage="polyamide"))[0] == 1
    warm = {"cage": "peek", "operating_temperature": 180}
    assert ranks("speed.cage-temperature", [warm])[0] == 0
    colder = with_cells("speed.cage-temperature", "cage", "low", "150", cage="peek")
    assert ranks("speed.cage-temperature", [warm], colder)[0] == 2
    lip = {"closure": "contact seal", "seal_lip_diameter": 11, "speed_max": 16000}
    assert ranks("speed.seal", [lip])[0] == 0
    assert ranks("speed.seal", [lip], with_limit("speed.seal", "lip_speed_low", 8))[0] == 2
    maker = {"speed_max": 20000, "limiting_speed": 30000}
    assert ranks("speed.maker-limit", [maker])[0] == 0
    assert ranks("speed.maker-limit", [maker], with_limit("speed.maker-limit", "attention_share", 0.5))[0] == 1
    precise = {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 20000, "tolerance_class": "Normal"}
    assert ranks("speed.precision", [precise])[0] == 0
    finer = with_cells("speed.precision", "classes", "low", "200000", tolerance_class="Normal")
    assert ranks("speed.precision", [precise], finer)[0] == 1
    assert ranks("speed.ball-inertia", [SPINDLE], with_limit("speed.ball-inertia", "share_near", 1.2))[0] == 0
    assert ranks("speed.spin", [SPINDLE], with_limit("speed.spin", "friction_high", 0.1))[0] == 1
