"""Lists of the callouts of one drawing: features of no part, kinds in a column, and no unit but that of the drawing."""

import pytest

from linter.reading import Reading, read_table

ENGLISH = """Shaft assembly 3301-22, rev. C
No.;Type;Feature;Requirement;Grid;Sheet
1;Dimension;Bearing seat DE;Ø25 k5 (+0.011/+0.002);B4;1
2;Cylindricity;Bearing seat DE;⌭ 0.003;B4;1
3;Surface;Bearing seat DE;Ra 0.4;B4;1
4;Dimension;Bearing shoulder DE;Ø31;B5;1
5;Dimension;Bearing seat NDE;Ø20 k5 (+0.011/+0.002);E4;1
6;Surface;Bearing seat NDE;Ra 0.4;E4;1
7;Dimension;Bearing shoulder NDE;Ø26;E5;1
8;Dimension;Keyway;8 P9;F4;1"""
GERMAN = """Welle 3301-22
Nr.;Art;Merkmal;Sollwert;Feld
1;Maß;Lagersitz AS;Ø25 k5 (+0,011/+0,002);B4
2;Zylinderform;Lagersitz AS;0,003;B4
3;Rauheit;Lagersitz AS;Ra 0,4;B4
4;Maß;Lagerschulter AS;Ø31;B5
5;Maß;Lagersitz BS;Ø20 k5 (+0,011/+0,002);C4
6;Rauheit;Lagersitz BS;Ra 0,4;C4
7;Maß;Lagerschulter BS;Ø26;C5"""
JAPANESE = """検査成績書,軸 SFT-21,,,
No.,検査項目,規格値,実測値,判定
1,軸 駆動側軸受部 外径,φ25 +0.011/+0.002,25.006,合
2,軸 駆動側軸受部 円筒度,0.003,0.002,合
3,軸 駆動側軸受部 粗さ,Ra0.4,0.31,合
4,軸 駆動側肩 外径,φ31,30.95,合
5,軸 反駆動側軸受部 外径,φ20 +0.011/+0.002,20.004,合
6,軸 反駆動側軸受部 粗さ,Ra0.4,0.35,合
7,軸 反駆動側肩 外径,φ26,25.97,合
8,ハウジング 駆動側軸受部 内径,φ52 +0.013/-0.006,52.003,合"""


def read(tmp_path, text: str) -> Reading:
    path = tmp_path / "table.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path)


@pytest.mark.parametrize("text", [ENGLISH, GERMAN, JAPANESE])
def test_deviations_in_the_cells_prove_the_unit_of_the_drawing(tmp_path, text):
    stations = read(tmp_path, text).stations
    shaft = stations.size("shaft_seat_diameter")
    assert sorted(zip(shaft.nominal, shaft.lower, shaft.upper, strict=True)) == [
        (20, pytest.approx(0.002), pytest.approx(0.011)),
        (25, pytest.approx(0.002), pytest.approx(0.011)),
    ]
    front = list(shaft.nominal).index(25)
    assert stations.size("shaft_shoulder_diameter").nominal[front] == 31
    assert stations.number("shaft_seat_cylindricity")[front] == pytest.approx(0.003)
    assert set(stations.number("shaft_seat_roughness")) == {0.4}
    assert [p.code for p in stations.problems if p.code == "length-unit"] == ["length-unit"]


def test_fields_of_a_drawing_are_no_classes_of_holes(tmp_path):
    text = ENGLISH.replace("B4", "H6").replace("E4", "H7").replace("B5", "C5").replace("E5", "H5")
    stations = read(tmp_path, text).stations
    assert not stations.known("housing_seat_diameter").any()
    assert not stations.known("housing_shoulder_diameter").any()


@pytest.mark.parametrize("deviations", ["+0.012/+0.001", "+0.11/+0.02"])
def test_deviations_of_no_class_prove_no_unit(tmp_path, deviations):
    stations = read(tmp_path, JAPANESE.replace("+0.011/+0.002", deviations)).stations
    assert not stations.known("shaft_seat_diameter").any()


def test_deviations_in_micrometres_in_the_cells_leave_the_unit_of_the_sizes_to_the_bearings(tmp_path):
    text = "位置,轴承型号,轴承档尺寸,轴承室尺寸,轴肩\n轴伸端,6205,φ25k5(+11/+2),φ52H6(+19/0),φ31\n"
    stations = read(tmp_path, text + "非轴伸端,6204,φ20j5(+5/-4),φ47H7(+25/0),φ26\n").stations
    assert list(stations.size("shaft_seat_diameter").upper) == [pytest.approx(0.011), pytest.approx(0.005)]
    assert list(stations.size("shaft_shoulder_diameter").nominal) == [31, 26]
