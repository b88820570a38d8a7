"""Chapter rotor: severities rise as values get worse, rows do not depend on each other, limits decide verdicts."""

import numpy as np
import pytest

from linter.rulebook import load
from tests.checks.support import VERSION, never_milder, ranks, review, same_alone, with_cells, with_limit

ROTOR = {
    "bearing_type": "deep groove ball", "bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000,
    "balance_grade": 2.5, "rotor_mass": 0.3, "preload_method": "spring", "preload_force": [40, -4, 4],
    "dynamic_rating": 3300, "static_rating": 1370, "first_critical_speed": 60000,
}  # fmt: skip
BARE = {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000}
ALL = [c for c in load(VERSION).clauses if c.startswith("rotor.")]

SWEEPS = {
    "unbalance by grade": ("rotor.unbalance", "balance_grade", np.geomspace(0.4, 400, 40)),
    "unbalance by residual unbalance": ("rotor.unbalance", "residual_unbalance", np.geomspace(0.01, 100, 40)),
    "unbalance by speed": ("rotor.unbalance", "speed_max", np.geomspace(3000, 3e6, 40)),
    "grade": ("rotor.balance-grade", "balance_grade", np.geomspace(0.4, 40, 40)),
    "grade by speed": ("rotor.balance-grade", "speed_max", np.geomspace(3000, 2e5, 40)),
    "critical speed from above": ("rotor.critical-speed", "first_critical_speed", np.linspace(80000, 40100, 40)),
    "critical speed from below": ("rotor.critical-speed", "first_critical_speed", np.linspace(10000, 39900, 40)),
}


@pytest.mark.parametrize(("clause", "name", "values"), SWEEPS.values(), ids=SWEEPS)
def test_severity_never_drops_as_the_value_gets_worse(clause, name, values):
    found = never_milder(clause, [{**ROTOR, name: float(x)} for x in values])
    assert 0 <= found[0] < found[-1]


@pytest.mark.parametrize("clause", ALL)
def test_a_row_does_not_depend_on_the_rows_beside_it(clause):
    same_alone(clause, [ROTOR, BARE, {**ROTOR, "tolerance_class": "P4", "residual_unbalance": 3}])


@pytest.mark.parametrize("clause", ALL)
def test_a_bare_row_says_what_it_wants(clause):
    found = review(clause, [BARE])
    assert found.failure is None
    assert found.outcome[0] == 2
    assert any(rows[0] for rows in found.missing.values())


def test_two_bearings_share_the_unbalance():
    one = review("rotor.unbalance", [{**ROTOR, "machine": "1"}]).result.observed
    two = review("rotor.unbalance", [{**ROTOR, "machine": "1"}] * 2).result.observed
    assert two == pytest.approx([one[0] / 2] * 2)


def test_a_stated_unbalance_counts_before_the_grade():
    row = {**ROTOR, "residual_unbalance": 0.001}
    assert review("rotor.balance-grade", [row]).result.observed[0] < 0.1


def test_changed_numbers_change_the_verdict():
    assert ranks("rotor.unbalance", [ROTOR])[0] == 0
    assert ranks("rotor.unbalance", [ROTOR], with_limit("rotor.unbalance", "preload_near", 0.05))[0] == 1
    assert ranks("rotor.balance-grade", [ROTOR])[0] == 0
    finer = with_cells("rotor.balance-grade", "grades", "near", "1", above="500000", tolerance_class="other")
    assert ranks("rotor.balance-grade", [ROTOR], finer)[0] == 1
    assert ranks("rotor.critical-speed", [ROTOR])[0] == 0
    assert ranks("rotor.critical-speed", [ROTOR], with_limit("rotor.critical-speed", "near", 0.6))[0] == 2
