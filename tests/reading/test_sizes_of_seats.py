"""Sizes of seats that stand where others are stated: limits below words for deviations, a seat's diameter as a bore."""

from pathlib import Path

import numpy as np
import pytest

from linter.reading import Reading, read_table


def _read(folder: Path, text: str) -> Reading:
    path = folder / "table.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path)


@pytest.mark.parametrize(
    "text",
    [
        "Item;Unit;front;rear\nBearing;;608-2Z;608-2Z\nShaft dia low;mm;7.996;7.9960\nShaft dia high;mm;8.0;8.0000\n",
        "Stelle;Lager;Welle Ø unten [mm];Welle Ø oben [mm]\nvorn;608-2Z;7,9960;8,0000\nhinten;608-2Z;7,9960;8,0000\n",
        "pos,bearing,shaft dia upper (mm),shaft dia lower (mm)\nA,608-2Z,8.0000,7.9960\nB,608-2Z,8.0000,7.9960\n",
    ],
)
def test_limits_of_size_below_words_for_deviations_are_limits(tmp_path: Path, text: str) -> None:
    reading = _read(tmp_path, text)
    size = reading.stations.size("shaft_seat_diameter")
    assert np.allclose(size.nominal + size.upper, 8.0) and np.allclose(size.nominal + size.lower, 7.996)
    assert [p.code for p in reading.stations.problems].count("limits-of-size") == 2


def test_deviations_below_such_words_stay_deviations(tmp_path: Path) -> None:
    text = "station,bearing,shaft diameter (mm),shaft dia low (µm),shaft dia high (µm)\nA,608,8,-5,0\nB,608,8,1,6\n"
    size = _read(tmp_path, text).stations.size("shaft_seat_diameter")
    assert np.allclose(size.lower, [-0.005, 0.001]) and np.allclose(size.upper, [0.0, 0.006])


def test_a_bore_that_is_the_outside_diameter_of_its_bearing_is_no_bore(tmp_path: Path) -> None:
    text = "station,bearing,bore_diameter,outside_diameter\nA,6309,100,\nB,6307,,35\nC,6307,40,80\n"
    reading = _read(tmp_path, text)
    assert reading.stations.number("bore_diameter").tolist() == [45, 35, 40]
    assert reading.stations.number("outside_diameter").tolist() == [100, 80, 80]
    assert [p.code for p in reading.stations.problems].count("diameter-of-seat") == 2


def test_a_bore_beside_its_own_column_of_hole_classes_is_that_of_the_housing(tmp_path: Path) -> None:
    text = "Position,P/N,Shaft dia,Shaft tol,Bore dia,Bore tol\n,,mm,,mm,\nA,6309,45,m5,100,H6\nB,6307,35,m5,80,H6\n"
    stations = _read(tmp_path, text).stations
    size = stations.size("housing_seat_diameter")
    assert size.nominal.tolist() == [100, 80] and list(size.tolerance_class) == ["H6", "H6"]


def test_an_upper_deviation_beside_a_lower_one_is_never_the_value(tmp_path: Path) -> None:
    text = (
        "Feature,Bogus,Upper tol,Lower tol,Unit\nHousing outer diameter,30,0,-0.004,mm\n"
        "Shaft seat A diameter,20,0,-0.004,mm\nShaft seat B diameter,17,0,-0.004,mm\n"
    )
    reading = _read(tmp_path, text)
    assert not reading.stations.known("housing_outer_diameter").any()


@pytest.mark.parametrize(
    "names",
    [
        ("主軸 前側軸受部 外径", "主軸 後側軸受部 外径", "主軸 前側軸受部 円筒度", "主軸 後側軸受部 円筒度"),
        ("心軸 前端軸承座外徑", "心軸 後端軸承座外徑", "心軸 前端軸承座圓柱度", "心軸 後端軸承座圓柱度"),
    ],
)
def test_the_part_before_a_position_is_not_dropped(tmp_path: Path, names: tuple[str, ...]) -> None:
    rows = "\n".join(f"{name},{value},mm" for name, value in zip(names, (30, 25, 0.002, 0.002), strict=True))
    stations = _read(tmp_path, f"項目,値,単位\n{rows}\n").stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert not stations.known("outside_diameter").any() and not stations.known("housing_outer_diameter").any()


@pytest.mark.parametrize("yes", ["Y", "ja", "x"])
def test_a_yes_below_a_heading_that_is_a_choice_states_it(tmp_path: Path, yes: str) -> None:
    text = f"station,bearing,shaft seat diameter (mm),C3?\nA,6309,45,{yes}\nB,6307,35,no\n"
    stations = _read(tmp_path, text).stations
    assert stations.choice("clearance_class").texts()[0] == "C3"


@pytest.mark.parametrize(
    ("header", "part"),
    [
        ("Lato,Cuscinetto,Ø albero,Toll.,Ø sede,Toll.,Ø spallam.", "shaft"),
        ("Pos,Bearing no.,Shaft dia,Tol,Seat dia,Tol,Shoulder dia", "shaft"),
        ("Stelle,Lager,Ø Welle,Tol.,Ø Sitz,Tol.,Ø Schulter", "housing"),
    ],
)
def test_a_shoulder_of_no_part_is_told_by_the_seats_beside_it(tmp_path, header, part):
    sizes = ((21.5, 19.0), (36.0, 31.0))[part == "housing"]
    path = tmp_path / "table.csv"
    rows = f"A,6203,17,k6,40,J7,{sizes[0]}\nB,6202,15,j6,35,H7,{sizes[1]}\n"
    path.write_text(f"all dimensions in mm\n{header}\n{rows}", encoding="utf-8")
    stations = read_table(path).stations
    assert stations.size(f"{part}_shoulder_diameter").nominal.tolist() == list(sizes)
