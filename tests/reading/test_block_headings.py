"""Headings of blocks that say more than one word for their part, and what stands below them."""

import pytest

from linter.reading import read_table
from linter.reading.layouts.sides import side_of


@pytest.mark.parametrize(
    ("text", "side"),
    [
        ("Shaft (inner ring)", "shaft"),
        ("Welle (Innenring)", "shaft"),
        ("軸(内輪側)", "shaft"),
        ("轴(内圈)", "shaft"),
        ("Вал (внутреннее кольцо)", "shaft"),
        ("Arbre / bague intérieure", "shaft"),
        ("Housing bore", "housing"),
        ("Alésage du carter", "housing"),
        ("Отверстие корпуса", "housing"),
        ("ハウジング(外輪側)", "housing"),
        ("Rodamiento (catálogo)", "bearing"),
        ("軸受仕様", "bearing"),
        ("Данные подшипника", "bearing"),
        ("軸受取付部諸元", ""),
        ("Shaft (left)", ""),
        ("Housing bore diameter", ""),
        ("Inner ring", ""),
    ],
)
def test_a_heading_says_its_part_with_its_seat_its_ring_or_where_its_data_are_from(text, side):
    found = side_of(text)
    assert (found.side if found is not None else "") == side


def read(tmp_path, text: str):
    path = tmp_path / "table.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path).stations


@pytest.mark.parametrize(
    ("bearing", "label", "cell"), [("軸受", "等級", "6級"), ("Lager", "Klasse", "P6"), ("Bearing", "Class", "P6")]
)
def test_a_class_below_the_bearing_is_that_of_the_bearing(tmp_path, bearing, label, cell):
    rows = f"{bearing},\n内径 d,20 mm\n外径 D,42 mm\n{label},{cell}\n"
    assert list(read(tmp_path, rows).choice("tolerance_class").texts()) == ["P6"]


def test_the_class_of_the_bearing_is_none_of_a_seat(tmp_path):
    text = (
        "Position,Bore d mm,Bearing tolerance class,Seat of,Nominal mm,Fit\n"
        "A,20,P6,Shaft,20,k6\nA,20,P6,Housing bore,42,H7\n"
    )
    stations = read(tmp_path, text)
    assert list(stations.choice("tolerance_class").texts()) == ["P6"]
    assert list(stations.size("shaft_seat_diameter").tolerance_class) == ["k6"]


@pytest.mark.parametrize("label", ["Operating mode", "Operation", "Betriebsart", "運転方式"])
def test_a_choice_above_a_table_is_told_by_its_cell(tmp_path, label):
    stations = read(tmp_path, f"{label},S3 intermittent\n\nstation,bore_diameter,outside_diameter\nA,8,22\n")
    assert list(stations.choice("duty").texts()) == ["intermittent"]
