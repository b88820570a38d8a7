"""Rows of lists: whose they are by columns and lines, what kind of characteristic they limit, rings and parts."""

import pytest

from linter.reading import read_table


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "list.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


_OF_ONE = (
    "{m},1,Bearing designation,6204,\n{m},1,Shaft diameter,20,mm\n{m},1,Fit shaft,k5,\n{m},1,Shaft cylindricity,3,µm\n"
    "{m},2,Bearing designation,6203,\n{m},2,Shaft diameter,17,mm\n{m},2,Fit shaft,{fit},\n"
)


@pytest.mark.parametrize("head", ["Set", "Sort", "Gruppe"])
def test_a_column_that_keeps_apart_what_comes_again_names_the_machines(read, head):
    one, two = (_OF_ONE.format(m=machine, fit=fit) for machine, fit in (("Pump LB-30", "k5"), ("Motor RV-70", "j5")))
    stations = read(f"{head},Bearing position,Characteristic,Nominal,Units\n{one}{two}").stations
    assert stations.machines == ("Pump LB-30", "Motor RV-70")
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 17, 20, 17]
    assert "machine-by-rows" in {problem.code for problem in stations.problems}


def test_a_column_of_parts_names_no_machines(read):
    one = _OF_ONE.format(m="Shaft", fit="k5")
    stations = read(f"Part,Bearing position,Characteristic,Nominal,Units\n{one}").stations
    assert stations.machines == ("list",)


_KINDS = (
    "No.,Feature,Characteristic,Max,Min,Unit\n1,front bearing journal,{diameter},20.009,20.002,mm\n"
    "2,front bearing journal,{roughness},0.4,,µm\n3,front bearing journal,{form},0.004,,mm\n"
    "4,rear bearing journal,{diameter},17.008,17.000,mm\n5,rear bearing journal,{roughness},0.8,,µm\n"
    "6,front housing bore,{diameter},47.016,47.000,mm\n7,rear housing bore,{diameter},40.016,40.000,mm\n"
)


@pytest.mark.parametrize(
    ("diameter", "roughness", "form"),
    [("diameter", "roughness Ra", "cylindricity"), ("Durchmesser", "Rauheit Ra", "Zylindrizität"),
     ("diamètre", "rugosité Ra", "cylindricité"), ("直径", "粗糙度Ra", "圆柱度")],
)  # fmt: skip
def test_a_column_of_characteristics_says_what_each_row_limits(read, diameter, roughness, form):
    stations = read(_KINDS.format(diameter=diameter, roughness=roughness, form=form)).stations
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
    assert stations.number("shaft_seat_cylindricity")[0] == 0.004
    assert stations.known("housing_seat_diameter").all()
    assert not [p for p in stations.problems if p.kind != "assumption"]


def test_a_kind_that_is_not_known_is_no_size(read):
    text = _KINDS.format(diameter="diameter", roughness="roughness number of the face", form="cylindricity")
    reading = read(text)
    assert not reading.stations.known("shaft_seat_roughness").any()
    assert {"0.4", "0.8"} <= {unused.value for unused in reading.unused}


_LINES = (
    "Parameter;Value;Unit\n{one};;\nBearing;6003;\nShaft seat;17 j5;mm\nHousing bore;35 H6;mm\n"
    "{two};;\nBearing;6004;\nShaft seat;20 k5;mm\nHousing bore;42 J6;mm\n"
)


@pytest.mark.parametrize(
    ("one", "two"),
    [("Palier supérieur", "Palier inférieur"), ("Cuscinetto superiore", "Cuscinetto inferiore"),
     ("Rodamiento superior", "Rodamiento inferior"), ("Upper bearing", "Lower bearing")],
)  # fmt: skip
def test_lines_of_the_bearing_above_and_below_begin_positions(read, one, two):
    stations = read(_LINES.format(one=one, two=two)).stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [17, 20]


def test_lines_of_what_is_said_of_the_bearing_begin_none(read):
    stations = read(_LINES.format(one="Bearing data", two="Bearing loads")).stations
    assert len(stations.text("station")) == 1


@pytest.mark.parametrize(
    ("columns", "cells", "housing"),
    [("Nominal;Upper;Lower", "52;+0.019;0", True), ("Nominal;Upper;Lower", "20;0;-0.010", False),
     ("Nominal;Min;Max", "52;52.002;52.008", True), ("Nominal;Min;Max", "20;19.990;20.000", False)],
)  # fmt: skip
def test_a_bore_with_a_limit_above_its_size_is_the_housings(read, columns, cells, housing):
    text = f"Characteristic;Pos.;{columns};Unit\nBearing bore Ø;front;{cells};mm\nBearing bore Ø;rear;{cells};mm\n"
    stations = read(f"{text}Shaft seat Ø;front;20;;;mm\nShaft seat Ø;rear;20;;;mm\n").stations
    assert stations.known("housing_seat_diameter").all() == housing
    assert stations.known("bore_diameter").any() != housing


def test_a_far_larger_number_beside_a_bore_does_not_say_the_housing(read):
    bearings = "Bearing DE;6204;;\nBearing NDE;6203;;\n"
    stations = read(f"Item;Nominal;Max;Unit\nBearing bore DE;20;25;mm\nBearing bore NDE;17;22;mm\n{bearings}").stations
    assert not stations.known("housing_seat_diameter").any()
    assert stations.number("bore_diameter").tolist() == [20, 17]


def test_a_column_of_parts_says_more_than_the_sizes_do(read):
    rows = (
        "1;Lagersitz oben Durchmesser;Welle;17;+0,008;-0,003;mm\n2;Lagersitz oben Zylindrizität;Welle;0,003;;;mm\n"
        "3;Schulter oben Durchmesser;Welle;22;0;-0,1;mm\n4;Lagersitz unten Durchmesser;Welle;20;+0,009;-0,004;mm\n"
        "5;Lagersitz oben Durchmesser;Gehäuse;40;+0,016;0;mm\n6;Lagersitz unten Durchmesser;Gehäuse;47;+0,016;0;mm\n"
        "7;Lagersitz unten Zylindrizität;Gehäuse;0,005;;;mm\n8;Lagersitz oben Rauheit Ra;Welle;0,4;;;µm\n"
        "9;Lagersitz unten Rauheit Ra;Welle;0,4;;;µm\n10;Schulter oben Planlauf;Welle;0,005;;;mm\n"
    )
    stations = read(f"Nr.;Prüfmerkmal;Teil;Nennmaß;OT;UT;Einheit\n{rows}").stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [17, 20]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [40, 47]
    assert stations.number("shaft_seat_cylindricity")[0] == 0.003
    assert stations.size("shaft_shoulder_diameter").nominal[0] == 22
