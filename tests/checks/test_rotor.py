"""Chapter rotor: severities rise as values get worse, rows do not depend on each other, limits decide verdicts."""

import numpy as np
import pytest

from linter.rulebook.load import load
from tests.checks.support import VERSION, never_milder, ranks, review, same_alone, with_cells, with_limit

ROTOR = {
    "bearing_type": "deep groove ball", "bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000,
    "balance_grade": 2.5, "rotor_mass": 0.3, "preload_method": "spring", "preload_force": [40, -4, 4],
    "dynamic_rating": 3300, "static_rating": 1370, "first_critical_speed": 60000,
}  # fmt: skip
LOOSE = {
    "rotating_ring": "inner", "bore_diameter": 10, "outside_diameter": 26, "tolerance_class": "P5",
    "shaft_seat_diameter": [10, "h5"], "shaft_seat_runout": 0.002, "balance_grade": 2.5, "speed_max": 5000,
    "balancing_method": "between centres",
}  # fmt: skip
BARE = {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000}
ALL = [c for c in load(VERSION).clauses if c.startswith("rotor.")]

SWEEPS = {
    "unbalance by grade": ("rotor.unbalance", "balance_grade", np.geomspace(0.4, 400, 40)),
    "unbalance by residual unbalance": ("rotor.unbalance", "residual_unbalance", np.geomspace(0.01, 100, 40)),
    "unbalance by speed": ("rotor.unbalance", "speed_max", np.geomspace(3000, 3e6, 40)),
    "grade": ("rotor.balance-grade", "balance_grade", np.geomspace(0.4, 40, 40)),
    "grade by speed": ("rotor.balance-grade", "speed_max", np.geomspace(3000, 2e5, 40)),
    "seat by speed": ("rotor.seat-eccentricity", "speed_max", np.geomspace(500, 1e5, 40)),
    "seat by grade": ("rotor.seat-eccentricity", "balance_grade", np.geomspace(40, 0.4, 40)),
    "seat by run-out": ("rotor.seat-eccentricity", "shaft_seat_runout", np.geomspace(1e-4, 0.05, 40)),
    "critical speed from above": ("rotor.critical-speed", "first_critical_speed", np.linspace(80000, 40100, 40)),
    "critical speed from below": ("rotor.critical-speed", "first_critical_speed", np.linspace(10000, 39900, 40)),
}


@pytest.mark.parametrize(("clause", "name", "values"), SWEEPS.values(), ids=SWEEPS)
def test_severity_never_drops_as_the_value_gets_worse(clause, name, values):
    row = LOOSE if clause == "rotor.seat-eccentricity" else ROTOR
    if name == "shaft_seat_runout":
        row = {**row, "speed_max": 2000}
    found = never_milder(clause, [{**row, name: float(x)} for x in values])
    assert 0 <= found[0] < found[-1]


@pytest.mark.parametrize("clause", ALL)
def test_a_row_does_not_depend_on_the_rows_beside_it(clause):
    same_alone(clause, [ROTOR, BARE, {**ROTOR, "tolerance_class": "P4", "residual_unbalance": 3}])


@pytest.mark.parametrize("clause", [name for name in ALL if name not in ("rotor.bearing-loads", "rotor.orders")])
def test_a_bare_row_says_what_it_wants(clause):
    found = review(clause, [BARE])
    assert found.failure is None
    assert found.outcome[0] == 2
    assert any(rows[0] for rows in found.missing.values())


def test_a_looser_seat_loses_more_balance_and_a_tight_one_none():
    seats = [[10, float(lower) / 1000, float(lower + 6) / 1000] for lower in range(4, -30, -1)]
    found = ranks("rotor.seat-eccentricity", [{**LOOSE, "shaft_seat_diameter": s, "machine": str(s)} for s in seats])
    tight = [seat[1] >= 0 for seat in seats]  # the bore of class P5 ends at its nominal
    assert (found[tight] == -2).all()
    assert (np.diff(found[np.logical_not(tight)]) >= 0).all()
    assert set(found) == {-2, 0, 2, 3}


def test_the_grade_permits_what_the_residual_unbalance_over_the_mass_does():
    """e_per of G2.5 at 5000 r/min is 4.775 µm, so 4.775 g·mm for 1 kg (ISO 21940-11: U_per = e_per m)."""
    stated = {
        **LOOSE,
        "balance_grade": None,
        "rotor_mass": 2,
        "residual_unbalance": 2 * 1000 * 2.5 / (5000 * np.pi / 30),
    }
    rows = [LOOSE, {k: v for k, v in stated.items() if v is not None}]
    upper = [review("rotor.seat-eccentricity", [row]).result.upper[0] for row in rows]
    assert upper == pytest.approx([2.387, 2.387], abs=5e-4)


def test_a_rotor_on_outer_rings_shifts_in_its_hub():
    hub = {**LOOSE, "rotating_ring": "outer", "housing_seat_diameter": [26, "H6"], "housing_seat_runout": 0.002}
    found = review("rotor.seat-eccentricity", [hub]).result
    assert found.observed[0] == pytest.approx(
        0.5 * (9.5 + 0.5 * np.hypot(13, 6)) + 1
    )  # H6 is +13/0, the ring of P5 0/-6


def test_how_the_rotor_is_balanced_is_asked_only_where_it_matters():
    unsaid = {k: v for k, v in LOOSE.items() if k != "balancing_method"}
    assert ranks("rotor.seat-eccentricity", [{**unsaid, "speed_max": 500}, {**unsaid, "speed_max": 9000}]).tolist() == [
        0,
        -1,
    ]
    assert ranks("rotor.seat-eccentricity", [{**LOOSE, "balancing_method": "as assembled"}])[0] == -2


def test_two_bearings_share_the_unbalance():
    one = review("rotor.unbalance", [{**ROTOR, "machine": "1"}]).result.observed
    two = review("rotor.unbalance", [{**ROTOR, "machine": "1"}] * 2).result.observed
    assert two == pytest.approx([one[0] / 2] * 2)


def test_a_stated_unbalance_counts_before_the_grade():
    row = {**ROTOR, "residual_unbalance": 0.001}
    assert review("rotor.balance-grade", [row]).result.observed[0] < 0.1


def test_a_stated_unbalance_without_a_mass_is_not_passed_over_for_the_grade():
    """A coarse unbalance beside a fine grade: nothing is met for want of the mass."""
    row = {**ROTOR, "residual_unbalance": 50.0}
    bare = {k: v for k, v in row.items() if k != "rotor_mass"}
    plain = {k: v for k, v in ROTOR.items() if k != "rotor_mass"}
    assert ranks("rotor.balance-grade", [row])[0] == 4
    assert ranks("rotor.balance-grade", [bare])[0] == -1
    assert ranks("rotor.balance-grade", [plain])[0] == 0
    assert list(review("rotor.balance-grade", [bare]).result.missing["rotor_mass"]) == [True]
    loose = {**LOOSE, "residual_unbalance": 0.01}
    assert ranks("rotor.seat-eccentricity", [{**loose, "rotor_mass": 2.0}])[0] >= 1
    assert ranks("rotor.seat-eccentricity", [loose])[0] == -1


def test_changed_numbers_change_the_verdict():
    assert ranks("rotor.unbalance", [ROTOR])[0] == 0
    assert ranks("rotor.unbalance", [ROTOR], with_limit("rotor.unbalance", "preload_near", 0.05))[0] == 1
    assert ranks("rotor.balance-grade", [ROTOR])[0] == 0
    finer = with_cells("rotor.balance-grade", "grades", "near", "1", above="500000", tolerance_class="other")
    assert ranks("rotor.balance-grade", [ROTOR], finer)[0] == 1
    assert ranks("rotor.seat-eccentricity", [LOOSE])[0] == 2
    assert ranks("rotor.seat-eccentricity", [LOOSE], with_limit("rotor.seat-eccentricity", "share", 0.9))[0] == 0
    assert ranks("rotor.critical-speed", [ROTOR])[0] == 0
    assert ranks("rotor.critical-speed", [ROTOR], with_limit("rotor.critical-speed", "near", 0.6))[0] == 2


def test_run_out_counts_only_between_centres():
    rows = [
        {**LOOSE, "machine": w, "balancing_method": w, "shaft_seat_runout": 0.02}
        for w in ("separately", "between centres")
    ]
    assert ranks("rotor.seat-eccentricity", rows).tolist() == [0, 3]


def test_a_shift_is_minor_while_its_force_is_small():
    """45 000 r/min and G2.5 permit 0.53 um, less than any published run-out of a seat."""
    row = {
        **LOOSE, "speed_max": 45000, "rotor_mass": 0.02, "bearing_type": "deep groove ball", "dynamic_rating": 4750,
        "preload_method": "spring", "preload_force": 60,
    }  # fmt: skip
    rows = [{**row, "machine": str(mass), "rotor_mass": mass} for mass in (0.02, 0.2, 2, 20)]
    found = ranks("rotor.seat-eccentricity", rows)
    assert found[0] == 2
    assert found[-1] == 3
    assert (np.diff(found) >= 0).all()
