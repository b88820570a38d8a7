"""Verdicts that any review must reach, from a table on disk to the records of a report.

The figures are worked by hand from ISO 286-1, ISO 492 and ISO 582 as the tests say; limits without a standard are
common practice.
"""

import csv
import io
import json

import pytest

from linter.reading import read_table
from linter.review.records import review_reading
from linter.rulebook.load import load, released_versions

SEVERE = ("critical", "major")


@pytest.fixture(params=[released_versions()[-1], "current"])
def reviewed(request, tmp_path):
    """A function from rows to the records of their review by clause and station, read as CSV or as JSON."""
    book = load(request.param)

    def run(*rows, form="csv"):
        path = tmp_path / f"table.{form}"
        if form == "csv":
            names = list(dict.fromkeys(name for row in rows for name in row))
            text = io.StringIO()
            writer = csv.DictWriter(text, names, delimiter=";", lineterminator="\n")
            writer.writeheader()
            writer.writerows(rows)
            path.write_text(text.getvalue(), encoding="utf-8")
        else:
            path.write_text(
                json.dumps({"machine": rows[0]["machine"], "stations": [_own(row) for row in rows]}), encoding="utf-8"
            )
        reading = read_table(path)
        assert [p.message for p in reading.stations.problems] == []
        result = review_reading(reading, book, full=True)
        assert result.failures == ()
        return {(record.clause, record.station): record for record in result.assessments}

    return run


def _own(row):
    return {name: value for name, value in row.items() if name != "machine"}


def working(record):
    return {line.key: line.value for line in record.working}


def told(record):
    return record.message.replace("\u00a0", " ")


FAST = {
    "machine": "blower", "station": "A", "bore_diameter": "2.7", "outside_diameter": "7.5", "speed_max": "110000",
    "ball_material": "steel", "lubrication": "grease", "duty": "continuous",
}  # fmt: skip


@pytest.mark.parametrize("form", ["csv", "json"])
class TestSpeedFactor:
    """N d_m = 110 000 r/min (2.7 + 7.5)/2 mm = 561 000 mm r/min against limits of common practice."""

    def test_steel_in_plain_grease(self, reviewed, form):
        record = reviewed(FAST, form=form)["speed.factor", "A"]
        assert record.severity in SEVERE
        assert (record.observed.value, record.observed.unit) == (561_000, "mm.r/min")
        assert "561 000 mm·r/min" in told(record)

    def test_intermittent_duty_is_milder_and_says_so(self, reviewed, form):
        record = reviewed({**FAST, "duty": "intermittent"}, form=form)["speed.factor", "A"]
        assert record.severity in ("minor", "remark")
        assert "the verdict rests on intermittent duty" in told(record)

    def test_ceramic_balls_have_a_higher_limit(self, reviewed, form):
        steel = reviewed(FAST, form=form)["speed.factor", "A"]
        ceramic = reviewed({**FAST, "ball_material": "silicon nitride"}, form=form)["speed.factor", "A"]
        assert ceramic.severity not in SEVERE
        assert working(ceramic)["limit_low"] > working(steel)["limit_low"]

    def test_oil_jet(self, reviewed, form):
        assert reviewed({**FAST, "lubrication": "oil jet"}, form=form)["speed.factor", "A"].outcome == "met"

    def test_without_duty(self, reviewed, form):
        row = {name: value for name, value in FAST.items() if name != "duty"}
        record = reviewed(row, form=form)["speed.factor", "A"]
        assert (record.outcome, record.missing) == ("not assessed", ("duty",))


SEATED = {
    "machine": "pump", "station": "A", "bore_diameter": "25", "outside_diameter": "52", "ring_width": "15",
    "tolerance_class": "Normal", "shaft_seat_diameter": "25 k5", "housing_seat_diameter": "52 H7",
    "rotating_ring": "inner", "load_direction": "stationary", "speed_max": "3000",
    "bearing_type": "deep groove ball", "radial_load": "800", "dynamic_rating": "14000",
}  # fmt: skip


class TestFits:
    """Interference is the shaft less the hole at the limits of ISO 286-1 and ISO 492."""

    def test_shaft_of_a_6205(self, reviewed):
        # 25 k5 is +11/+2, the bore of class Normal 0/-10
        found = working(reviewed(SEATED)["fit.shaft-class", "A"])
        assert (found["fit_smallest"], found["fit_largest"]) == (2, 21)
        assert (found["seat_lower"], found["seat_upper"]) == (2, 11)
        assert (found["ring_lower"], found["ring_upper"]) == (-10, 0)

    def test_housing_of_a_6205(self, reviewed):
        # 52 H7 is +30/0, the outside diameter of class Normal 0/-13: clearance 0 to 43
        found = working(reviewed(SEATED)["fit.housing-class", "A"])
        assert (found["fit_smallest"], found["fit_largest"]) == (-43, 0)

    def test_miniature_shaft(self, reviewed):
        # 4 h5 is 0/-5, the bore of class P5 0/-5
        row = {
            **SEATED, "bore_diameter": "4", "outside_diameter": "13", "ring_width": "5", "tolerance_class": "P5",
            "shaft_seat_diameter": "4 h5", "housing_seat_diameter": "13 H5",
        }  # fmt: skip
        found = working(reviewed(row)["fit.shaft-class", "A"])
        assert (found["fit_smallest"], found["fit_largest"]) == (-5, 5)

    @pytest.mark.parametrize("stated", ["25 +0.011/+0.002", "25.0020-25.0110", "25 k5 (+0.011/+0.002)", "25k5"])
    def test_other_ways_to_state_the_same_seat(self, reviewed, stated):
        found = working(reviewed({**SEATED, "shaft_seat_diameter": stated})["fit.shaft-class", "A"])
        assert (found["fit_smallest"], found["fit_largest"]) == (2, 21)

    def test_case_is_meaning(self, reviewed):
        record = reviewed({**SEATED, "shaft_seat_diameter": "25 K5"})["table.class-agrees", "A"]
        assert record.outcome == "finding"


class TestLoadRotation:
    """The ring that turns relative to the load sees a rotating load."""

    def test_inner_ring_turns_under_a_load_fixed_in_space(self, reviewed):
        found = working(reviewed(SEATED)["fit.load-rotation", "A"])
        assert (found["inner_sees"], found["outer_sees"]) == ("rotating", "stationary")

    def test_load_turns_with_the_rotor(self, reviewed):
        found = working(reviewed({**SEATED, "load_direction": "rotating"})["fit.load-rotation", "A"])
        assert (found["inner_sees"], found["outer_sees"]) == ("stationary", "rotating")

    def test_outer_ring_turns(self, reviewed):
        found = working(reviewed({**SEATED, "rotating_ring": "outer"})["fit.load-rotation", "A"])
        assert (found["inner_sees"], found["outer_sees"]) == ("stationary", "rotating")

    def test_unbalance_outgrows_the_fixed_load(self, reviewed):
        # 100 g mm at 60 000 r/min is 0.0001 kg m (6283 rad/s)^2 = 3948 N on one position, five times the 800 N
        row = {**SEATED, "speed_max": "60000", "residual_unbalance": "100"}
        record = reviewed(row)["fit.load-rotation", "A"]
        found = working(record)
        assert found["unbalance"] == pytest.approx(3948, rel=1e-3)
        assert (found["inner_sees"], found["outer_sees"]) == ("stationary", "rotating")
        assert record.outcome == "finding"
        assert "4.93 times the fixed load" in told(record)

    def test_unbalance_about_as_large_as_the_fixed_load(self, reviewed):
        row = {**SEATED, "speed_max": "60000", "residual_unbalance": "20"}
        found = working(reviewed(row)["fit.load-rotation", "A"])
        assert (found["inner_sees"], found["outer_sees"]) == ("indeterminate", "indeterminate")


class TestDrawing:
    def test_fillet_larger_than_the_chamfer(self, reviewed):
        # ISO 582: the fillet must not exceed r_s min
        row = {**SEATED, "ring_chamfer": "0.6", "shaft_fillet_radius": "0.8", "housing_fillet_radius": "0.3"}
        record = reviewed(row)["shoulder.fillet", "A"]
        assert record.severity == "critical"
        assert "0.8 mm" in told(record)
        assert "shaft_fillet_radius" in record.remedy and "0.6" in record.remedy
        gentle = reviewed({**row, "shaft_fillet_radius": "0.6"})["shoulder.fillet", "A"]
        assert gentle.outcome == "met"

    def test_missing_run_out_is_a_finding_with_the_value_to_put_there(self, reviewed):
        row = {
            **SEATED, "shaft_seat_cylindricity": "0.004", "shaft_shoulder_runout": "0.006",
            "shaft_seat_roughness": "0.8", "housing_seat_cylindricity": "0.006", "housing_seat_runout": "0.006",
            "housing_shoulder_runout": "0.01", "housing_seat_roughness": "0.8",
        }  # fmt: skip
        record = reviewed(row)["alignment.stated", "A"]
        assert record.outcome == "finding"
        # half of IT5 of 25 mm, 9 um
        assert "shaft_seat_runout (at most 0.0045 mm)" in told(record)
        assert "housing" not in record.message
        complete = reviewed({**row, "shaft_seat_runout": "0.004"})["alignment.stated", "A"]
        assert complete.outcome == "met"

    def test_gate_is_closed_by_a_critical_finding(self, tmp_path):
        path = tmp_path / "table.csv"
        row = {**SEATED, "ring_chamfer": "0.6", "shaft_fillet_radius": "0.8"}
        path.write_text(",".join(row) + "\n" + ",".join(row.values()) + "\n", encoding="utf-8")
        result = review_reading(read_table(path), load(), gate="critical")
        assert result.gate == "closed"
