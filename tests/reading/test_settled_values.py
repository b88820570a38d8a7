"""What becomes of values whose unit a title states once, and which of two values a message calls the one here."""

import pytest

from linter.reading import read_table


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


HEADINGS = "machine;station;Bore diameter;Shaft seat cylindricity;Shaft seat roughness{0};Radial clearance{0}\n"
ROWS = "M;A;0.5;0.002;0.4;10\nM;B;0.5;0.003;0.8;12\n"


@pytest.mark.parametrize(("unit", "millimetres"), [("mm", 1.0), ("in", 25.4)])
def test_the_unit_of_a_title_is_that_of_sizes_only(read, unit, millimetres):
    """Ra and clearances stand in µm on drawings in mm (ISO 21920-1, ISO 5753-1): Ra is taken so, as an assumption."""
    stations = read(f"Units: {unit}\n\n" + HEADINGS.format("") + ROWS).stations
    assert stations.number("bore_diameter") == pytest.approx([0.5 * millimetres] * 2)
    assert stations.number("shaft_seat_cylindricity") == pytest.approx([0.002 * millimetres, 0.003 * millimetres])
    assert not stations.known("radial_clearance").any()
    told = {(p.code, p.parameter, p.place.cell) for p in stations.problems}
    asked = {("unit-missing", "radial_clearance", f"F{row}") for row in (4, 5)}
    if unit == "mm":
        assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
        assert told == {*asked, ("roughness-unit", "shaft_seat_roughness", "E4")}
    else:
        assert not stations.known("shaft_seat_roughness").any()
        assert told == {*asked, *(("unit-missing", "shaft_seat_roughness", f"E{row}") for row in (4, 5))}


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_a_unit_of_its_own_goes_before_the_title(read, unit):
    stations = read(f"Units: {unit}\n\n" + HEADINGS.format(" [µm]") + ROWS).stations
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
    assert stations.size("radial_clearance").nominal.tolist() == [10.0, 12.0]
    assert stations.problems == ()


@pytest.mark.parametrize(
    ("text", "here", "there"),
    [
        ("machine;station;bore_diameter;bore_diameter\nM;A;25;26\n", "D2", "C2"),
        ("machine;station;name;value\nM;A;bore_diameter;25\nM;A;ring_width;9\nM;A;bore_diameter;26\n", "D4", "D2"),
    ],
)
def test_each_of_two_values_is_named_at_its_own_cell(read, text, here, there):
    (problem,) = (p for p in read(text).stations.problems if p.code == "stated-twice")
    assert problem.place.cell == here
    assert problem.read == "25 and 26"
    assert f"bore_diameter of M A is 26 here and 25 at {there}" in problem.message


def test_a_class_does_not_make_a_size_of_an_inch_table_millimetres(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "machine;station;Shaft seat;Bearing OD;Shaft fillet\nM;A;0.625 k5;1.375 inch;0.023 inch\n", encoding="utf-8"
    )
    stations = read_table(path).stations
    assert not stations.known("shaft_seat_diameter").any()
    assert [p.code for p in stations.problems if p.parameter == "shaft_seat_diameter"] == ["unit-missing"]
    path.write_text("machine;station;Shaft seat;Bearing OD\nM;A;16 k5;35 mm\n", encoding="utf-8")
    assert read_table(path).stations.size("shaft_seat_diameter").nominal.tolist() == [16.0]


LOADS = "machine;station;bearing;Radial load;Axial load;Rotor mass\nM;A;{0};{1};{3};{4}\nM;B;{0};{2};{3};{4}\n"


@pytest.mark.parametrize(
    ("bearing", "loads", "mass", "doubted"),
    [
        ("6208", ("0.28", "0.34"), "12", {"radial_load"}),  # in kN a usual load, in N none
        ("6208", ("0.28", "2.4"), "12", {"radial_load"}),  # one column has one unit
        ("6208", ("0.28", "450"), "12", set()),  # which is no kN: 450 kN would crush it
        ("608", ("20", "0.5"), "0.15", set()),
        ("6208", ("450", "120"), "650", {"rotor_mass"}),  # 650 g
        ("608", ("0.2 kN", "0.3 kN"), "150 g", set()),
        ("61904", ("0", "0"), "2", set()),
    ],
)
def test_a_figure_without_a_unit_that_the_usual_one_makes_absurd_is_asked_for(read, bearing, loads, mass, doubted):
    """A tenth of the least load of a ball bearing, C/100 (common practice), is hardly the load stated for it."""
    stations = read(LOADS.format(bearing, *loads, "0", mass)).stations
    asked = {p.parameter for p in stations.problems if p.code == "unit-doubtful"}
    assert asked == doubted
    assert {name for name in ("radial_load", "rotor_mass") if not stations.known(name).any()} == doubted
    taken = {p.parameter for p in stations.problems if p.code == "unit-assumed"}
    assert not taken & doubted
    assert stations.number("axial_load").tolist() == [0, 0]
