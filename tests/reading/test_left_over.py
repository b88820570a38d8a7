"""No cell that holds a value is lost in silence: what no layout takes is listed with its name and its place."""

import json
from pathlib import Path

import pytest

from linter.reading import read_table
from linter.reading.layouts.left_over import LEFT
from linter.reading.settling.said_again import AGAIN
from linter.reading.words.match import OPEN

TABLE = "Position;Bearing;Shaft seat;Housing seat\nA;6204;20 k5;47 H6\nB;6203;17 k5;40 H6\n"


def listed(tmp_path, text, reason=LEFT, name="seats.csv"):
    path = tmp_path / name
    path.write_text(text, "utf-8")
    return [(u.name, u.value, u.place.cell or u.place.pointer) for u in read_table(path).unused if u.reason == reason]


def test_a_table_read_whole_leaves_nothing(tmp_path):
    assert listed(tmp_path, TABLE) == []


def test_numbers_of_rows_and_units_are_nothing_left(tmp_path):
    text = "No;Name;Unit;A;B\n1;Bearing;;6204;6203\n2;Shaft seat;mm;20 k5;17 k5\n3;Housing seat;mm;47 H6;40 H6\n"
    assert listed(tmp_path, text) == []


def test_a_machine_without_stations_beside_others_loses_no_value(tmp_path):
    text = "machine,station,bearing_designation,speed_max\nPump,A,6204,3000\nPump,B,6203,3000\nRotor unit,,,4500\n"
    places = [place for _, _, place in listed(tmp_path, text)]
    assert places == ["D4"]


def test_a_station_told_twice_as_one_lists_what_is_alike(tmp_path):
    text = (
        "station;bearing_designation;shaft_seat_diameter;shaft_shoulder_diameter;bore_diameter\n"
        "A;6204;20 k5;26;20\nA;6204;20 j5;27;20\n"
    )
    assert [name for name, _, _ in listed(tmp_path, text, AGAIN)] == [
        "bearing_designation",
        "bore_diameter",
    ]


def test_values_of_objects_without_a_station_are_listed(tmp_path):
    document = {
        "machines": [
            {"name": "Pump", "stations": [{"name": "A", "bearing_designation": "6204"}], "speed_max": "3000 rpm"},
            {"name": "Fan", "speed_max": "4500 rpm"},
        ]
    }
    found = listed(tmp_path, json.dumps(document), name="seats.json")
    assert [place for _, _, place in found] == ["/machines/1/speed_max"]


FULL = Path("sample_exports/coolant-pump.csv").read_text("utf-8")
THIRD = "Third support bearing\nShaft seat,20 d9\nHousing seat,47 H12\nShaft fillet radius,5\n"


def unreviewed(tmp_path, text):
    path = tmp_path / "seats.csv"
    path.write_text(text, "utf-8")
    return [p for p in read_table(path).stations.problems if p.code == "values-not-read" and "unreviewed" in p.message]


@pytest.mark.parametrize("third", [THIRD, "\n" + THIRD, THIRD.replace("Shaft fillet radius", "Hohlkehle Welle")])
def test_a_position_below_a_full_table_is_told_as_not_reviewed(tmp_path, third):
    (problem,) = unreviewed(tmp_path, FULL + third)
    assert problem.kind == "unreadable"
    assert "3 values" in problem.message
    assert "Shaft seat, Housing seat" in problem.message


def test_two_values_below_a_full_table_are_only_listed(tmp_path):
    text = FULL + "\n".join(THIRD.splitlines()[:3])
    assert unreviewed(tmp_path, text) == []
    assert [(name, value) for name, value, _ in listed(tmp_path, text, OPEN)] == [
        ("Shaft seat", "20 d9"),
        ("Housing seat", "47 H12"),
    ]


def test_texts_below_a_full_table_are_no_values(tmp_path):
    text = FULL + "Bearing,as delivered\nShaft seat,ground\nHousing seat,honed\nShaft fillet radius,see drawing\n"
    assert unreviewed(tmp_path, text) == []
