"""Parts lists with the seats of the parts as rows, and what the rows of bearings, springs and parts state besides."""

import numpy as np
import pytest

from linter.reading import read_table


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "list.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


_ENGLISH = (
    "Item,Part no.,Qty,Description,Material,Dimension,Fit,Ra\n"
    "1,22-10,1,Rotor shaft,42CrMo4,,,\n"
    "1.1,,,Bearing seat drive side,,30,k5,0.4\n1.2,,,Shoulder drive side,,36,,1.6\n"
    "1.3,,,Bearing seat fan side,,25,k5,0.4\n1.4,,,Shoulder fan side,,31,,1.6\n1.5,,,Keyway,,8,P9,\n"
    "2,22-20,1,Housing,EN-GJL-200,,,\n2.1,,,Bearing bore drive side,,62,H6,0.8\n2.2,,,Bearing bore fan side,,52,H6,\n"
    "3,6206-2Z/C3,1,Ball bearing drive side,,30x62x16,,\n4,6205-2Z/C3,1,Ball bearing fan side,,25x52x15,,\n"
    "5,22-30,1,Wave spring,1.4310,,,\n6,22-40,1,Fan,AlSi10Mg,Ø220,,\n"
)
_GERMAN = (
    "Pos.;Benennung;Lagerstelle;Sachnummer;Funktionsmaß;Werkstoff\n"
    "10;Welle;;47-10;;42CrMo4\n11;Lagersitz;AS;;Ø30 k5;\n12;Wellenschulter;AS;;Ø36;\n13;Lagersitz;BS;;Ø25 k5;\n"
    "14;Wellenschulter;BS;;Ø31;\n20;Gehäuse;;47-20;;EN-GJL-200\n21;Lagerbohrung;AS;;Ø62 H6;\n"
    "22;Lagerbohrung;BS;;Ø52 H6;\n30;Rillenkugellager;AS;6206-2Z/C3;30x62x16;\n"
    "31;Rillenkugellager;BS;6205-2Z/C3;25x52x15;\n40;Wellfeder;;47-30;;1.4310\n50;Lüfterrad;;47-50;Ø220;AlSi10Mg\n"
)
_JAPANESE = (
    "品番,部番,名称,材質,寸法,公差,個数\n1,CB-101,主軸,S45C,,,1\n,,負荷側軸受部径,,φ30,k5,\n,,反負荷側軸受部径,,φ25,k5,\n"
    "2,CB-102,軸受箱,FC250,,,1\n,,負荷側軸受穴径,,φ62,H6,\n,,反負荷側軸受穴径,,φ52,H6,\n"
    "3,6206ZZC3,負荷側軸受,,30x62x16,,1\n4,6205ZZC3,反負荷側軸受,,25x52x15,,1\n5,CB-111,波形座金,SUS304,,,1\n"
)
_CHINESE = (
    "零件,部位,基本尺寸,公差带,上偏差,下偏差,形位公差\n主轴,驱动端轴承档,φ30,k5,+0.011,+0.002,圆柱度0.005\n"
    "主轴,风扇端轴承档,φ25,k5,+0.011,+0.002,\n机座,驱动端轴承孔,φ62,H6,+0.019,0,\n"
    "机座,风扇端轴承孔,φ52,H6,+0.019,0,圆柱度0.010\n驱动端轴承,6206-2Z/C3,,,,,\n风扇端轴承,6205-2Z/C3,,,,,\n"
)


@pytest.mark.parametrize("text", [_ENGLISH, _GERMAN, _JAPANESE, _CHINESE])
def test_seats_and_bearings_are_read_from_the_rows_of_a_parts_list(read, text):
    stations = read(text).stations
    order = np.argsort(-stations.number("bore_diameter"))
    assert stations.number("bore_diameter")[order].tolist() == [30, 25]
    assert stations.number("outside_diameter")[order].tolist() == [62, 52]
    assert all(name.startswith(("6206", "6205")) for name in stations.text("bearing_designation"))
    assert stations.size("shaft_seat_diameter").nominal[order].tolist() == [30, 25]
    assert stations.size("shaft_seat_diameter").upper[order].tolist() == [0.011, 0.011]
    assert stations.size("housing_seat_diameter").nominal[order].tolist() == [62, 52]
    assert not [p for p in stations.problems if p.kind not in ("assumption", "unused")]


@pytest.mark.parametrize("text", [_ENGLISH, _GERMAN, _JAPANESE])
def test_parts_tell_their_material_and_springs_their_kind(read, text):
    stations = read(text).stations
    assert set(stations.choice("shaft_material").texts()) == {"steel"}
    assert set(stations.choice("housing_material").texts()) == {"cast iron"}
    assert set(stations.choice("spring_kind").texts()) == {"wave"}


@pytest.mark.parametrize("text", [_ENGLISH, _GERMAN])
def test_shoulders_are_read_and_other_parts_are_not(read, text):
    reading = read(text)
    order = np.argsort(-reading.stations.number("bore_diameter"))
    assert reading.stations.size("shaft_shoulder_diameter").nominal[order].tolist() == [36, 31]
    assert {"220", "Ø220"} & {unused.value for unused in reading.unused}


def test_the_roughness_of_a_shoulder_is_none_of_its_seat(read):
    stations = read(_ENGLISH).stations
    assert set(stations.number("shaft_seat_roughness").tolist()) == {0.4}


def test_a_column_of_form_tolerances_states_them_of_the_seats_beside_it(read):
    stations = read(_CHINESE).stations
    order = np.argsort(-stations.number("bore_diameter"))
    assert stations.number("shaft_seat_cylindricity")[order][0] == 0.005
    assert stations.number("housing_seat_cylindricity")[order][1] == 0.010


def test_an_item_behind_the_shaft_is_not_of_the_shaft(read):
    text = _GERMAN.replace("20;Gehäuse;;47-20;;EN-GJL-200", "20;Nabe;;47-20;;EN-GJL-200")
    assert not read(text).stations.known("housing_seat_diameter").any()
