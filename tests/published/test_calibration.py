"""How often the rulebook in the making condemns what is printed as right, and how often it lets pass what is not.

The bounds are what is reached; a limit that is changed later and breaks one is seen here. Every alarm that remains has
its reason:

* 61815 is printed with a ring chamfer of 1.3 mm, which no ring has, beside a fillet of 0.6 mm: a slip of the copy.
* 607, 695, MR 74 and 626 pass unseen at 1.5 times a slow maker's speed, because another maker prints as much.
* 6305 in JS7, 6308 and 6310 in K7 are the tightest of the printed motor fits: with the temperatures not stated their
  clearance is used up, a minor finding.

The rows of further makers were measured before a limit was touched (under 2026.4: 33 of 129 printed speeds and 3 of 31
preloads condemned); what remains of them:

* 6000 with a contact seal of low torque is printed at 25 000 r/min, 0.86 of the open bearing; contact seals of other
  designs are held to 0.7.
* Bearings with filling slots (6204, 6206, 6210, 6213, 6217, 6220) are printed at 400 000 mm r/min; that a bearing is of
  this kind cannot be stated, and others of the same size are printed 1.5 times as fast. So is MR 106.
* 6310 in k6 and K7 with clearance group CN, which the table of classes does not tell: minor, as above.
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


#: The same of the further makers; seat geometry is not printed in these.
MOST_FURTHER = dict.fromkeys(MOST, 0) | {"speed_false": 1, "speed_missed_1.5": 7, "fit_false": 1}


@pytest.fixture(scope="module")
def figures():
    return measured(load("current"))


@pytest.fixture(scope="module")
def further():
    return measured(load("current"), "calibration_further")


def test_every_figure_has_its_bound(figures, further):
    assert set(figures.hit) == set(further.hit) == set(MOST)


@pytest.mark.parametrize("name", sorted(set(MOST_FURTHER) - {"alignment_false"}))
def test_verdicts_against_further_makers(further, name):
    assert further.of[name] >= 8
    assert further.hit[name] <= MOST_FURTHER[name], [row["id"] for row in further.rows[name]]


@pytest.mark.parametrize("name", MOST)
def test_verdicts_against_print(figures, name):
    assert figures.of[name] > 10
    assert figures.hit[name] <= MOST[name], [row["id"] for row in figures.rows[name]]


def test_the_alarm_that_remains_about_shoulders_is_the_one_with_a_reason(figures):
    assert [row["designation"] for row in figures.rows["shoulder_false"]] == ["61815"]
