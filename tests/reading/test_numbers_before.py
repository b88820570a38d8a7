"""Numbers before the names of a list, a heading row or records say nothing; positions and sizes are no such numbers."""

import json

import pytest

from linter.reading import read_table

NAMES = ("Max speed", "Bearing A", "Shaft seat A", "Housing bore A", "Bearing B", "Shaft seat B", "Housing bore B")
VALUES = ("9000 rpm", "6204", "20 k5", "47 H6", "6203", "17 k5", "40 H6")


@pytest.mark.parametrize("form", ["P{0:03}_{1}", "{0}) {1}", "2.{0} {1}", "[{0}] {1}", "A-{0:02} {1}"])
def test_numbers_before_names_are_put_aside(tmp_path, form):
    names = [form.format(k + 8, name) for k, name in enumerate(NAMES)]
    rows = ["Parameter;Value", *(f"{name};{value}" for name, value in zip(names, VALUES, strict=True))]
    (tmp_path / "t.csv").write_text("\n".join(rows), encoding="utf-8")
    records = [{"name": name, "value": value} for name, value in zip(names, VALUES, strict=True)]
    (tmp_path / "t.json").write_text(json.dumps(records), encoding="utf-8")
    for file in ("t.csv", "t.json"):
        stations = read_table(tmp_path / file).stations
        assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 17]
        assert stations.size("housing_seat_diameter").tolerance_class.tolist() == ["H6", "H6"]
        assert stations.number("speed_max").tolist() == [9000, 9000]


def test_numbers_that_come_again_are_positions(tmp_path):
    rows = ["Parameter;Value", "B1_shaft_dia;20 k5", "B1_hsg_bore;47 H6", "B2_shaft_dia;17 k5", "B2_hsg_bore;40 H6"]
    (tmp_path / "t.csv").write_text("\n".join(rows), encoding="utf-8")
    assert read_table(tmp_path / "t.csv").stations.size("shaft_seat_diameter").nominal.tolist() == [20, 17]


def test_values_with_their_units_are_no_names(tmp_path):
    rows = [
        "予圧方式;ばね",
        "最高回転数;9000 rpm",
        "内径;10 mm",
        "外径;26 mm",
        "ラジアル荷重;350 N",
        "アキシアル荷重;15 N",
    ]
    (tmp_path / "t.csv").write_text("\n".join(rows), encoding="utf-8")
    assert read_table(tmp_path / "t.csv").stations.number("speed_max").tolist() == [9000]


@pytest.mark.parametrize(
    ("bearing", "preload"),
    [("Bearing A as per BOM;6204", "Preload;light"), ("Lager A lt. Stückliste;6204", "Vorspannung;leicht"),
     ("Roulement A monté;6204", "Précharge;légère"), ("轴承选用;6204", "预紧;轻")],
)  # fmt: skip
def test_where_a_bearing_is_listed_and_how_strong_a_preload_is(tmp_path, bearing, preload):
    rows = ["Parameter;Value", bearing, "Shaft seat A;20 k5", preload]
    (tmp_path / "t.csv").write_text("\n".join(rows), encoding="utf-8")
    stations = read_table(tmp_path / "t.csv").stations
    assert "6204" in stations.text("bearing_designation").tolist()
    assert {*stations.choice("rigid_preload_class").texts().tolist()} == {"light"}


def test_numbers_of_bearings_are_no_numbers_before_names(tmp_path):
    path = tmp_path / "t.csv"
    bearings = [("6202-2Z", "6201-2Z"), ("6204-2Z", "6203-2Z"), ("6205-2Z", "6206-2Z"), ("6207-2Z C3", "6208-2Z")]
    head = "Frame,rpm,DE Brg.,NDE Brg.,Shaft seat DE,Shaft seat NDE"
    rows = [f"{90 + k}L,{2850 + k},{one},{other},{20 + k} k5,{17 + k} k5" for k, (one, other) in enumerate(bearings)]
    path.write_text("\n".join([head, *rows]), encoding="utf-8")
    stations = read_table(path).stations
    assert sorted(stations.text("bearing_designation")) == sorted(name for pair in bearings for name in pair)
