"""Grades of roughness, and limits headed by the words for the lesser and the greater of them."""

import pytest

from linter.reading import read_table
from linter.reading.cells.requirements import roughness_of_grade


def read(tmp_path, rows):
    path = tmp_path / "table.csv"
    path.write_text("\n".join(rows), encoding="utf-8")
    return read_table(path).stations


@pytest.mark.parametrize(
    ("grade", "ra"), [("N1", 0.025), ("N5", 0.4), ("N6", 0.8), ("n 7", 1.6), ("N9", 6.3), ("N12", 50)]
)
def test_a_grade_of_roughness_is_its_ra(grade, ra):
    assert roughness_of_grade(grade) == ra


@pytest.mark.parametrize("text", ["N13", "N", "6205", "NU5", ""])
def test_what_is_no_grade_of_roughness(text):
    assert roughness_of_grade(text) is None


def test_a_grade_in_the_cell_of_a_roughness_is_marked_as_interpreted(tmp_path):
    rows = ["Position;Bearing;Shaft seat;Roughness shaft seat;Housing seat;Ra housing seat"]
    stations = read(tmp_path, [*rows, "DE;6204;20 k5;N5;47 H6;N6", "NDE;6203;17 k5;N6;40 H6;N7"])
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.6]
    assert sum(problem.code == "roughness-grade" for problem in stations.problems) == 4


@pytest.mark.parametrize(
    "heads",
    [
        "Welle Ø von [mm];Welle Ø bis [mm];Gehäuse Ø von [mm];Gehäuse Ø bis [mm]",
        "Shaft seat from [mm];to;Housing bore from [mm];to",
        "Shaft dia from, mm;Shaft dia to, mm;Housing bore from, mm;to",
        "Eje Ø desde [mm];hasta;Alojamiento Ø desde [mm];hasta", "Вал Ø от [мм];до [мм];Корпус Ø от [мм];до [мм]",
    ],
)  # fmt: skip
def test_from_and_to_are_the_limits_of_a_size(tmp_path, heads):
    rows = [f"Position;Bearing;{heads}", "A;6204;20.002;20.011;47.000;47.016", "B;6203;17.001;17.009;40.000;40.016"]
    stations = read(tmp_path, rows)
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert shaft.nominal + shaft.lower == pytest.approx([20.002, 17.001])
    assert shaft.nominal + shaft.upper == pytest.approx([20.011, 17.009])
    assert housing.nominal + housing.upper == pytest.approx([47.016, 40.016])
