"""Machines one below the other on one sheet, each with a title block of its own: nothing of one goes to another."""

import math

import pytest

from linter.reading import read_table

_HEADING = "Position;Designation;Shaft seat diameter [mm];Housing seat diameter [mm];Radial load [N]\n"
_FIRST = "front;6005;25 k5;47 H7;120\nrear;6004;20 k5;42 H7;80\n"
_SECOND = "front;6205;25 k6;52 J7;300\nrear;6305;25 k6;62 J7;310\n"


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


def _blocks(between: str, above: str = "") -> str:
    one = f"{above}Machine;Reel 4\nMax. speed;9000 rpm\nRotor mass;2 kg\nMade by;Workshop\n\n{_HEADING}{_FIRST}"
    return f"{one}{between}Machine;Fan 7\nMax. speed;3000 rpm\nMade by;Workshop\n\n{_HEADING}{_SECOND}"


@pytest.mark.parametrize("between", ["\n", "\n\n", ";;;;\n", "All dimensions in mm\n\n", ""])
def test_each_machine_has_its_own_values(read, between):
    stations = read(_blocks(between)).stations
    assert stations.text("machine").tolist() == ["Reel 4"] * 2 + ["Fan 7"] * 2
    assert stations.text("station").tolist() == ["front", "rear"] * 2
    assert stations.number("speed_max").tolist() == [9000, 9000, 3000, 3000]
    assert stations.number("radial_load").tolist() == [120, 80, 300, 310]
    mass = stations.number("rotor_mass").tolist()
    assert mass[:2] == [2, 2]
    assert all(math.isnan(value) for value in mass[2:])


def test_what_stands_above_the_name_of_the_first_machine_is_of_all(read):
    stations = read(_blocks("\n", above="Drawing number;ZX-17\n")).stations
    assert stations.text("drawing_number").tolist() == ["ZX-17"] * 4


def test_rows_of_a_table_are_no_title_of_the_next(read):
    stations = read(f"Machine;Reel 4\n\n{_HEADING}{_FIRST}\nmiddle;6202\nthird;6203\n\n{_HEADING}{_SECOND}").stations
    assert set(stations.text("machine").tolist()) == {"Reel 4"}
    assert {"middle", "third"} <= set(stations.text("station").tolist())


def test_a_value_of_the_machine_below_a_table_is_no_station(read):
    reading = read(f"Machine;Reel 4\n\n{_HEADING}{_FIRST}Rotor mass;2 kg\n")
    assert reading.stations.text("station").tolist() == ["front", "rear"]
    assert reading.stations.number("rotor_mass").tolist() == [2, 2]
