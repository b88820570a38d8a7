"""Lists with one row per seat, with running numbers, other seats and lines of the machine among or below them."""

import pytest

from linter.reading import read_table

ENGLISH = [
    "Seat;Part;Location;Nominal dia. mm;Fit;Upper dev. µm;Lower dev. µm;Ra µm;Abutment dia. mm",
    "S1;Shaft;drive side;20;k5;11;2;0.4;25.6", "S2;Shaft;rear side;17;j5;5;-4;0.4;21",
    "H1;Housing;drive side;47;J6;13;-6;0.8;42", "H2;Housing;rear side;40;H6;16;0;0.8;36",
]  # fmt: skip
GERMAN = [
    "Lfd.;Teil;Lagerstelle;Ø mm;Passung;es/ES µm;ei/EI µm;Ra µm;Schulter-Ø mm",
    "1;Welle;antriebsseitig;20;k5;11;2;0,4;25,6",
    "2;Welle;abtriebsseitig;17;j5;5;-4;0,4;21", "3;Gehäuse;antriebsseitig;47;J6;13;-6;0,8;42",
    "4;Gehäuse;abtriebsseitig;40;H6;16;0;0,8;36",
]  # fmt: skip
CHINESE = [
    "序号,零件,位置,公称直径 mm,公差带,上偏差 μm,下偏差 μm,粗糙度Ra,肩径 mm", "1,轴,驱动端,20,k5,+11,+2,0.4,25.6",
    "2,轴,非驱动端,17,j5,+5,-4,0.4,21", "3,端盖,驱动端,47,J6,+13,-6,0.8,42", "4,端盖,非驱动端,40,H6,+16,0,0.8,36",
]  # fmt: skip
BELOW = {
    "nothing": [],
    "the machine": ["", "Max. speed;9000;rpm;;;;;;", "Rotor mass;2.1;kg;;;;;;"],
    "another seat": ["W1;Shaft;wheel seat;15;h5;0;-8;0.4;"],
}


def read(tmp_path, rows):
    path = tmp_path / "seats.csv"
    path.write_text("\n".join(rows), encoding="utf-8")
    return read_table(path)


@pytest.mark.parametrize("rows", [ENGLISH, GERMAN, CHINESE])
def test_each_row_is_one_seat(tmp_path, rows):
    stations = read(tmp_path, rows).stations
    assert len(stations.text("station")) == 2
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert sorted(shaft.nominal) == [17, 20] and sorted(housing.nominal) == [40, 47]
    assert sorted(shaft.lower) == pytest.approx([-0.004, 0.002])
    assert sorted(stations.size("shaft_shoulder_diameter").nominal) == [21, 25.6]
    assert sorted(stations.size("housing_shoulder_diameter").nominal) == [36, 42]
    assert sorted(stations.number("housing_seat_roughness")) == [0.8, 0.8]


@pytest.mark.parametrize("below", BELOW)
def test_what_else_stands_in_a_list_of_seats_changes_none_of_them(tmp_path, below):
    reading = read(tmp_path, [*ENGLISH, *BELOW[below]])
    stations = reading.stations
    assert sorted(stations.text("station").tolist()) == ["drive side", "rear side"]
    assert sorted(stations.size("shaft_seat_diameter").nominal) == [17, 20]
    if below == "the machine":
        assert stations.number("speed_max").tolist() == [9000, 9000]
    if below == "another seat":
        assert any(one.value == "15" for one in reading.unused)


def test_bearings_below_a_list_of_seats_are_of_its_places(tmp_path):
    below = ["", "Lager antriebsseitig;6204;;;;;;;", "Lager abtriebsseitig;6203 C3;;;;;;;", "nmax;4500 1/min;;;;;;;"]
    stations = read(tmp_path, [*GERMAN, *below]).stations
    found = dict(
        zip(stations.size("shaft_seat_diameter").nominal, stations.text("bearing_designation").tolist(), strict=True)
    )
    assert found == {20: "6204", 17: "6203 C3"}


@pytest.mark.parametrize("unit", ["mm", ""])
def test_shoulders_without_a_unit_lie_between_the_seats_of_their_place(tmp_path, unit):
    rows = [GERMAN[0].replace("Schulter-Ø mm", "Schulter-Ø").replace("Ø mm", f"Ø {unit}".strip()), *GERMAN[1:]]
    stations = read(tmp_path, rows).stations
    assert sorted(stations.size("shaft_shoulder_diameter").nominal) == [21, 25.6]
    beyond = read(tmp_path, [row.replace(";25,6", ";2,56") for row in rows]).stations
    assert not (beyond.size("shaft_shoulder_diameter").nominal == 2.56).any() or unit == ""


def test_words_and_values_in_turn_below_a_table_are_no_position(tmp_path):
    rows = [
        "位置,轴承型号,轴承档尺寸,轴承室尺寸,轴肩(mm),轴承室挡肩(mm),轴圆角(mm),轴档粗糙度",
        "轴伸端,6205-2RZ/C3,φ25k5,φ52H6,31,46,0.6,Ra0.8", "非轴伸端,6204-2RZ/C3,φ20j5,φ47H7,26,41,0.6,Ra0.8",
        "绕组,星接,,线径,0.71,,槽数,24",
    ]  # fmt: skip
    stations = read(tmp_path, rows).stations
    assert stations.text("station").tolist() == ["轴伸端", "非轴伸端"]
    assert stations.text("bearing_designation").tolist() == ["6205-2RZ/C3", "6204-2RZ/C3"]
