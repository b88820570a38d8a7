"""A row of a table of positions that is headed as values are, with a unit, is no position."""

import pytest

from linter.reading import read_table


@pytest.mark.parametrize(
    "label", ["Mass kg", "Masse (kg)", "Masa kg", "Massa [kg]", "質量 [kg]", "质量 (kg)", "Масса, кг", "Länge mm"]
)
@pytest.mark.parametrize("places", [("A", "B"), ("Drive end", "Fan end"), ("Lagerstelle 1", "Lagerstelle 2")])
def test_row_of_masses_is_no_position(tmp_path, label, places):
    path = tmp_path / "t.csv"
    one, two = places
    path.write_text(
        "Position;Bearing;Shaft seat mm;Shaft seat Ra µm;Radial load N\n"
        f"{one};6207;35 k6;0.8;100\n{two};6206;30 k6;0.8;120\n{label};1.2;1.3;1.4;1.5\n",
        encoding="utf-8",
    )
    reading = read_table(path)
    assert reading.stations.text("station").tolist() == list(places)
    assert any(label in unused.value for unused in reading.unused) or any(
        label in problem.message for problem in reading.stations.problems
    )


@pytest.mark.parametrize("places", [("Station K", "Station N"), ("Wheel side", "Motor side"), ("Way in", "Way out")])
def test_positions_that_end_like_units_stay(tmp_path, places):
    path = tmp_path / "t.csv"
    one, two = places
    path.write_text(
        f"Position;Bearing;Shaft seat mm;Shaft seat Ra µm\n{one};6207;35 k6;0.8\n{two};6206;30 k6;0.8\n",
        encoding="utf-8",
    )
    assert read_table(path).stations.size("shaft_seat_diameter").nominal.tolist() == [35, 30]
