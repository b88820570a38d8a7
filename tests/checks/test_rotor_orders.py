"""Orders of the bearing for the test bench."""

import pytest

from linter.checks.rotor_orders import orders
from linter.checks.shared.base import View
from linter.model.stations import stations_from_rows

# 6205 of a rig with seeded faults: multiples of the shaft speed for the bearing at the drive end as they are
# commonly printed (from memory)
RIG = {"bearing_type": "angular contact ball", "contact_angle": 0, "ball_count": 9, "ball_diameter": 7.94,
       "pitch_diameter": 39.04}  # fmt: skip


def lines(**more):
    view = View(stations_from_rows([{"machine": "m", "station": "A", **RIG, **more}]))
    found = orders(view, {"near": 0.02})
    return found, {line.key: float(line.values[0]) for line in found.working}


def test_orders_as_printed():
    _, found = lines()
    assert found["over_inner"] == pytest.approx(5.4152, rel=2e-4)
    assert found["over_outer"] == pytest.approx(3.5848, rel=2e-4)
    assert found["cage"] == pytest.approx(0.39828, rel=2e-4)
    assert found["defect"] == pytest.approx(4.7135, rel=2e-4)


def test_both_rings_share_the_balls_and_a_turning_outer_ring_swaps_nothing_but_the_cage():
    _, inner = lines()
    _, outer = lines(rotating_ring="outer")
    assert inner["over_inner"] + inner["over_outer"] == pytest.approx(9)
    for name in ("over_inner", "over_outer", "defect"):
        assert outer[name] == pytest.approx(inner[name])
    assert inner["cage"] + outer["cage"] == pytest.approx(1)


def test_frequencies_and_blades():
    result, found = lines(speed_max=6000, blade_count=11)
    assert found["hz_blades"] == pytest.approx(1100)
    assert found["hz_inner"] == pytest.approx(100 * found["over_inner"])
    # the balls pass the inner ring 5.415 times a turn, far from 11
    assert result.measure[0] < 1
    close, _ = lines(blade_count=5.0, pitch_diameter=71.46)  # 4.5 (1 + 1/9) = 5
    assert close.measure[0] > 1 and close.variant[0] == "whole"
    assert lines()[0].measure[0] == 0
