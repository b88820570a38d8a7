"""How often the rulebook in the making condemns what is printed as right, and how often it lets pass what is not.

The bounds are what is reached; a limit that is changed later and breaks one is seen here. Every alarm that remains has
its reason:

* 61815 is printed with a ring chamfer of 1.3 mm, which no ring has, beside a fillet of 0.6 mm: a slip of the copy.
* 607, 695, MR 74 and 626 pass unseen at 1.5 times a slow maker's speed, because another maker prints as much.
* 6305 in JS7, 6308 and 6310 in K7 are the tightest of the printed motor fits: with the temperatures not stated their
  clearance is used up, a minor finding.
"""

import pytest

from linter.rulebook.load import load
from tests.published.calibration import measured

#: Figure to the most rows that may be hit.
MOST = {
    "speed_false": 0,
    "speed_false_critical": 0,
    "speed_false_maker_stated": 0,
    "speed_false_maker_stated_critical": 0,
    "speed_missed_1.3_maker_stated": 0,
    "speed_missed_1.5": 4,
    "speed_missed_1.5_maker_stated": 0,
    "speed_missed_2": 0,
    "fit_false_major": 0,
    "fit_false": 3,
    "fit_false_critical": 0,
    "arrangement_speed_false": 0,
    "alignment_false": 0,
    "preload_false": 0,
    "shoulder_false": 1,
    "fillet_1.3_chamfer_missed": 0,
    "low_shoulder_missed": 0,
    "failures_missed": 0,
}


@pytest.fixture(scope="module")
def figures():
    return measured(load("current"))


def test_every_figure_has_its_bound(figures):
    assert set(figures.hit) == set(MOST)


@pytest.mark.parametrize("name", MOST)
def test_verdicts_against_print(figures, name):
    assert figures.of[name] > 10
    assert figures.hit[name] <= MOST[name], [row["id"] for row in figures.rows[name]]


def test_the_alarm_that_remains_about_shoulders_is_the_one_with_a_reason(figures):
    assert [row["designation"] for row in figures.rows["shoulder_false"]] == ["61815"]
