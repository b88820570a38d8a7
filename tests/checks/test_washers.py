"""Faults planted beside a ring, one at a time, are found; the sound part is not."""

import pytest

from tests.checks.support import ranks

SOUND = {
    "bearing_type": "deep groove ball", "bore_diameter": 10, "outside_diameter": 26, "ring_width": 8,
    "ring_chamfer": 0.3,
    "inner_ring_shoulder_diameter": 14.8, "outer_ring_shoulder_diameter": 22.6, "closure": "shield",
    "tolerance_class": "P5", "washer_side": "outer ring", "washer_inside_diameter": 22.8,
    "washer_outside_diameter": 25.8, "washer_parallelism": 0.003, "washer_flatness": 0.003,
}  # fmt: skip
CLAUSES = ("parts.washer-clear", "parts.washer-face", "parts.washer-form")
FAULTS = {
    "reaches the inner ring": ({"washer_inside_diameter": 14.6}, "parts.washer-clear"),
    "reaches the outer ring": (
        {"washer_side": "inner ring", "washer_inside_diameter": 10.1, "washer_outside_diameter": 22.7},
        "parts.washer-clear",
    ),
    "rubs the shield": ({"washer_inside_diameter": 19.5}, "parts.washer-clear"),
    "does not fit the bore": ({"washer_outside_diameter": 26.1}, "parts.washer-clear"),
    "presses on an edge": ({"washer_inside_diameter": 24.4}, "parts.washer-face"),
    "is out of parallel": ({"washer_parallelism": 0.015}, "parts.washer-form"),
}


def test_the_sound_washer_raises_nothing():
    assert [ranks(clause, [SOUND])[0] for clause in CLAUSES] == [0, 0, 0]


@pytest.mark.parametrize("fault", FAULTS)
def test_a_planted_fault_is_found(fault):
    change, clause = FAULTS[fault]
    assert ranks(clause, [{**SOUND, **change}])[0] >= 3


@pytest.mark.parametrize("side", ["inner ring", "outer ring"])
def test_a_washer_that_grows_towards_the_other_ring_is_never_milder(side):
    grown = [10.0 + 0.25 * k for k in range(52)]
    rows = [
        {
            **SOUND, "machine": str(k), "washer_side": side,
            "washer_inside_diameter": 10.0 if side == "inner ring" else 25.0 - (size - 10.0),
            "washer_outside_diameter": size + 0.5 if side == "inner ring" else 25.8,
        }
        for k, size in enumerate(grown)
    ]  # fmt: skip
    found = ranks("parts.washer-clear", rows)
    assert (found[1:] >= found[:-1]).all() and found[0] == 0 and found[-1] == 4
