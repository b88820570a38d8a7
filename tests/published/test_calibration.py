"""How often the rulebook in the making condemns what is printed as right, and how often it lets pass what is not.

The bounds are counts, a little above what is reached; a limit that is changed later and breaks one is seen here. Every
alarm that remains has its reason:

* 61815 is printed with a ring chamfer of 1.3 mm, which no ring has, beside a fillet of 0.6 mm: a slip of the copy.
"""

import pytest

from linter.rulebook.load import load
from tests.published.calibration import measured

#: Figure to the largest share of the rows that may be hit.
MOST = {
    "speed_false": 0.10,
    "speed_false_critical": 0.0,
    "speed_false_maker_stated": 0.02,
    "speed_missed_1.3_maker_stated": 0.02,
    "speed_missed_1.5": 0.05,
    "fit_false_major": 0.03,
    "alignment_false": 0.0,
    "preload_false": 0.0,
    "shoulder_false": 0.02,
    "fillet_1.3_chamfer_missed": 0.0,
    "low_shoulder_missed": 0.0,
    "failures_missed": 0.0,
}


@pytest.fixture(scope="module")
def figures():
    return measured(load("current"))


@pytest.mark.parametrize("name", MOST)
def test_verdicts_against_print(figures, name):
    assert figures.of[name] > 10
    assert figures.share(name) <= MOST[name], [row["id"] for row in figures.rows[name]]


def test_the_alarm_that_remains_about_shoulders_is_the_one_with_a_reason(figures):
    assert [row["designation"] for row in figures.rows["shoulder_false"]] == ["61815"]
