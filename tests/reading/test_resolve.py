"""From cells to stations: one value each, nothing guessed, nothing lost, every trouble with its cell."""

import numpy as np
import pytest

from linter.reading import read_table
from linter.reading.words.mapping import Mapping
from linter.reading.words.names import Names


@pytest.fixture
def read(tmp_path):
    def reader(text: str, names: Names | None = None):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path, names)

    return reader


def problems(reading):
    return {(p.code, p.place.cell if p.place else None) for p in reading.stations.problems}


def one(read, heading, cell, names=None):
    """Read one cell beside a bore that settles the decimal point."""
    return read(f'machine,station,ring_width,{heading}\nM,A,2.5,"{cell}"\n', names)


def test_same_value_twice_is_fine_and_two_values_are_a_disagreement(read):
    text = "Name,Value,Unit,Station\nbore_diameter,4,mm,A\nbore_diameter,{},{},A\nring_width,4,mm,A\n"
    assert read(text.format("4.0", "mm")).stations.problems == ()
    assert read(text.format("0.15748", "in")).stations.problems == ()
    reading = read(text.format("4.1", "mm"))
    (problem,) = reading.stations.problems
    assert (problem.kind, problem.code, problem.place.cell, problem.row) == ("disagreement", "stated-twice", "B3", 0)
    assert "4.1" in problem.message
    assert "B2" in problem.message
    assert np.isnan(reading.stations.number("bore_diameter")[0])


def test_machine_value_that_differs_between_rows(read):
    reading = read("machine,station,speed_max,duty\nM,A,1000,continuous\nM,B,2000,\nN,A,500,\n")
    assert problems(reading) == {("stated-twice", "C3")}
    assert np.isnan(reading.stations.number("speed_max")[:2]).all()
    assert reading.stations.number("speed_max")[2] == 500
    assert reading.stations.choice("duty").texts().tolist() == ["continuous", "continuous", ""]


def test_ambiguous_number_is_not_used(read):
    reading = read("machine;station;bore_diameter\nM;A;1.234\nM;B;7.125\n")
    assert problems(reading) == {("ambiguous-number", "C2"), ("ambiguous-number", "C3")}
    assert np.isnan(reading.stations.number("bore_diameter")).all()
    settled = read("machine;station;bore_diameter;radial_load;outside_diameter\nM;A;1.234;1.234;11,5\nM;B;7;7;11\n")
    assert np.isnan(settled.stations.number("bore_diameter")[0])  # rather a slip of the mark than a metre of bore
    assert settled.stations.number("radial_load")[0] == 1234.0
    declared = read("machine;station;bore_diameter\nM;A;1.234\n", Names(Mapping(decimal=".")))
    assert declared.stations.number("bore_diameter")[0] == 1.234


def test_unknown_and_wrong_units(read):
    reading = read("Name,Value,Unit,Station\nbore_diameter,4,blorps,A\noutside_diameter,11,N,A\nring_width,3,mm,A\n")
    assert problems(reading) == {("unknown-unit", "B2"), ("wrong-unit", "B3")}
    assert reading.stations.number("ring_width")[0] == 3


def test_length_without_unit_and_other_quantity_without_unit(read):
    reading = read(
        "Name,Value,Unit,Station\nBore,4,,A\nRadial load,20,,A\nBall count,7,,A\nring_width,3,,A\nShaft seat,4 k5,,A\n"
    )
    assert ("unit-missing", "B2") in problems(reading)
    assert ("unit-assumed", "B3") in problems(reading)
    assert reading.stations.number("radial_load")[0] == 20
    assert reading.stations.number("ball_count")[0] == 7
    assert reading.stations.number("ring_width")[0] == 3  # the vocabulary's own name has its canonical unit
    assert np.isnan(reading.stations.number("bore_diameter")[0])


def test_class_gives_deviations_and_both_are_kept_where_both_are_stated(read):
    size = one(read, "shaft_seat_diameter", "4 k5").stations.size("shaft_seat_diameter")
    assert (size.lower[0], size.upper[0], size.tolerance_class[0]) == (pytest.approx(0.001), pytest.approx(0.006), "k5")
    both = one(read, "shaft_seat_diameter", "4 h5 (+0.006/+0.001)").stations.size("shaft_seat_diameter")
    assert (both.lower[0], both.upper[0], both.tolerance_class[0]) == (pytest.approx(0.001), pytest.approx(0.006), "h5")


def test_case_is_meaning_and_a_fit_pair_gives_the_part_its_half(read):
    assert one(read, "housing_seat_diameter", "22 H6").stations.size("housing_seat_diameter").lower[0] == 0
    assert one(read, "housing_seat_diameter", "22 h6").stations.size("housing_seat_diameter").upper[0] == 0
    pair = "22 H7/k6"
    assert one(read, "housing_seat_diameter", pair).stations.size("housing_seat_diameter").tolerance_class[0] == "H7"
    assert one(read, "shaft_seat_diameter", pair).stations.size("shaft_seat_diameter").tolerance_class[0] == "k6"


@pytest.mark.parametrize(
    ("cell", "code"),
    [
        ("3-8", "range-of-sizes"),
        ("4 +0.006", "one-sided"),
        ("4 +12/+4", "unlikely-deviations"),
        ("4 k99", "not-a-size"),
        ("M8x1", "thread"),
        ("4 apples", "not-a-size"),
        ("R4", "wrong-feature"),
        ("4 t3", "unknown-class"),
    ],
)
def test_sizes_that_are_not_certain(read, cell, code):
    reading = one(read, "shaft_seat_diameter", cell)
    assert [p.code for p in reading.stations.problems] == [code]
    assert np.isnan(reading.stations.size("shaft_seat_diameter").upper[0])


def test_reversed_deviations_are_said(read):
    reading = one(read, "shaft_seat_diameter", "4 +0.001/+0.006")
    assert [(p.kind, p.code) for p in reading.stations.problems] == [("assumption", "reversed-deviations")]
    columns = read(
        "machine,station,shaft_seat_diameter,shaft_seat_diameter upper,shaft_seat_diameter lower\n"
        "M,A,4.5,0.001,0.0065\n"
    )
    assert problems(columns) == {("reversed-deviations", "D2")}
    assert np.isnan(columns.stations.size("shaft_seat_diameter").upper[0])
    assert columns.stations.size("shaft_seat_diameter").nominal[0] == 4.5


def test_cell_and_columns_that_state_different_tolerances(read):
    reading = read(
        "machine,station,shaft_seat_diameter,shaft_seat_diameter upper,shaft_seat_diameter lower\n"
        "M,A,4 ±0.01,0.02,-0.02\n"
    )
    (problem,) = reading.stations.problems
    assert (problem.kind, problem.code) == ("disagreement", "stated-twice")
    assert np.isnan(reading.stations.size("shaft_seat_diameter").upper[0])


def test_limits_count_from_the_bearing_where_it_is_near(read):
    reading = read("machine,station,bore_diameter,shaft_seat_diameter\nM,A,4.0,4.001-4.006\nM,B,,4.001-4.006\n")
    size = reading.stations.size("shaft_seat_diameter")
    assert (size.nominal[0], size.lower[0], size.upper[0]) == pytest.approx((4.0, 0.001, 0.006))
    assert (size.nominal[1], size.upper[1]) == pytest.approx((4.0035, 0.0025))
    assert size.largest.tolist() == pytest.approx([4.006, 4.006])


def test_number_parameter_with_a_prefix_or_a_tolerance(read):
    assert one(read, "bore_diameter", "Ø4").stations.number("bore_diameter")[0] == 4
    assert one(read, "shaft_seat_runout", "max 0.005").stations.number("shaft_seat_runout")[0] == 0.005
    dropped = one(read, "bore_diameter", "4 0/-0.005")
    assert dropped.stations.number("bore_diameter")[0] == 4
    assert [(p.kind, p.code) for p in dropped.stations.problems] == [("assumption", "tolerance-dropped")]


def test_units_behind_the_number(read):
    assert one(read, "bore_diameter", "0.4 cm").stations.number("bore_diameter")[0] == 4
    assert one(read, "shaft_seat_diameter", "4 mm +12/+4 µm").stations.size("shaft_seat_diameter").upper[
        0
    ] == pytest.approx(0.012)
    assert one(read, "speed_max", "2000 1/s").stations.number("speed_max")[0] == pytest.approx(120000)
    assert one(read, "shaft_temperature", "350 K").stations.number("shaft_temperature")[0] == pytest.approx(76.85)


def test_unknown_choice_and_choice_of_the_mapping(read):
    reading = one(read, "cage", "unobtainium")
    (problem,) = reading.stations.problems
    assert problem.code == "unknown-choice"
    assert "pressed steel" in problem.expected
    names = Names(Mapping(choices={"cage": {"unobtainium": "peek"}}))
    assert one(read, "cage", "unobtainium", names).stations.choice("cage").texts().tolist() == ["peek"]


def test_station_value_without_station_is_taken_for_all_and_said(read):
    reading = read(
        "Name,Value,Unit,Station\nmachine,M,,\nbore_diameter,4,mm,A\nbore_diameter,4,mm,B\nlubrication,grease,,\n"
    )
    assert reading.stations.choice("lubrication").texts().tolist() == ["grease", "grease"]
    assert problems(reading) == {("every-station", "B5")}


def test_machine_without_a_station_is_said(read):
    reading = read("machine,speed_max,drawing_number\nM1,1000,D\nM2,2000,D\n\nmachine,station,bore_diameter\nM1,A,4\n")
    assert reading.stations.machines == ("M1",)
    assert [(p.code, p.read) for p in reading.stations.problems] == [("no-station", "machine M2")]
    assert reading.stations.number("speed_max").tolist() == [1000]


def test_very_many_alike_problems_are_counted(read):
    rows = "".join(f"M{i},A,odd {i % 7}\n" for i in range(500))
    stations = read("machine,station,bore_diameter\n" + rows).stations
    assert len(stations.problems) == 51
    assert any("450 more cells" in p.read for p in stations.problems)


def test_rows_of_one_machine_stand_together(read):
    stations = read("machine,station,bore_diameter\nM,A,4\nN,A,6\nM,B,5\nN,B,7\n").stations
    assert stations.machines == ("M", "N")
    assert stations.machine_row.tolist() == [0, 0, 1, 1]
    assert stations.number("bore_diameter").tolist() == [4, 5, 6, 7]
    assert [stations.place("bore_diameter", r).cell for r in range(4)] == ["C2", "C4", "C3", "C5"]


def test_defaults_are_applied_and_marked(read):
    stations = read("machine,station,bore_diameter,outside_diameter\nM,A,4,11\n").stations
    assert stations.number("pitch_diameter").tolist() == [7.5]
    assert stations.assumed["pitch_diameter"].rows.tolist() == [True]


def test_names_that_differ_only_in_case_stay_different(read):
    reading = read("machine,station,d [mm],D [mm],B [mm]\nM,A,4,11,4\n")
    assert reading.stations.number("bore_diameter").tolist() == [4]
    assert reading.stations.number("outside_diameter").tolist() == [11]


def test_understood_lists_each_cell_once_with_its_value(read):
    reading = read("machine,station,bore_diameter,shaft_seat_diameter\nM,A,0.4 cm,4 k5\n")
    told = {(u.place.cell, u.read): u.value for u in reading.understood}
    assert told == {
        ("A2", "M"): "M", ("B2", "A"): "A", ("C2", "0.4 cm"): "4 mm", ("D2", "4 k5"): "4 mm k5",
    }  # fmt: skip


def test_wide_ranges_of_clearance_force_and_float(read):
    assert one(read, "radial_clearance", "2-13").stations.size("radial_clearance").largest[0] == 13
    assert one(read, "axial_float", "0.15 ±0.05").stations.size("axial_float").upper[0] == pytest.approx(0.05)


def test_thousands_are_not_believed_in_a_length(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text("station;bore_diameter [mm];speed_max [r/min]\nA;1,234;60,000\nB;0.5;\n", encoding="utf-8")
    reading = read_table(path)
    assert np.isnan(reading.stations.number("bore_diameter")[0])
    assert [p.read for p in reading.stations.problems] == ["1,234"]
    assert reading.stations.number("speed_max")[0] == 60000


def test_dash_in_a_text_or_station_cell_says_that_there_is_none(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Name;Value;Unit;station;machine\nspeed_max;1000;r/min;-;M\ndrawing_number;-;;-;M\nbore_diameter;4;mm;A;M\n"
        "bearing_designation;TBD;;A;M\n",
        encoding="utf-8",
    )
    reading = read_table(path)
    assert reading.stations.text("station").tolist() == ["A"]
    assert not reading.stations.known("drawing_number")[0]
    assert {(u.name, u.value) for u in reading.unused} == {("drawing_number", "-")}
    assert [(p.parameter, p.read) for p in reading.stations.problems if p.code == "not-known"] == [
        ("bearing_designation", "TBD")
    ]
