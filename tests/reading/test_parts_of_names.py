"""Seats and shoulders whose name says no part, in tables whose names hold no positions."""

import pytest

from linter.reading import read_table
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

_ES = "Denominación;Ud.;A;B\nRodamiento;;6205;6204\nDiámetro eje;mm;25 k5;20 k5\nDiámetro alojamiento;mm;52 H6;47 H6\n"
_IT = "Parametro;Unità;A;B\nCuscinetto;;6205;6204\nDiametro albero;mm;25 k5;20 k5\nDiametro sede;mm;52 H6;47 H6\n"
_FR = "Désignation;Unité;A;B\nRoulement;;6205;6204\nPortée;mm;25 k5;20 k5\nLogement;mm;52 H6;47 H6\n"
_EN = "Parameter;Unit;A;B\nBearing;;6205;6204\nShaft diameter;mm;25 k5;20 k5\nHousing bore;mm;52 H6;47 H6\n"
_DE = "Stelle;Lager;Wellensitz;Lagersitz Ø;Ra Sitz;Ra Gehäuse\nA;6205;25 k5;52 H6;0,4;0,8\nB;6204;20 k5;47 H6;0,4;0,8\n"


@pytest.mark.parametrize(
    ("table", "name", "value"),
    [
        (_ES + "Ra asiento;µm;0,4;0,4\nRa alojamiento;µm;0,8;0,8\n", "shaft_seat_roughness", 0.4),
        (_IT + "Ra albero;µm;0,4;0,4\nRa sede;µm;0,8;0,8\n", "housing_seat_roughness", 0.8),
        (_IT, "housing_seat_diameter", 52.0),  # by its class
        (_FR + "Battement portée;µm;3;3\nBattement logement;µm;5;5\n", "shaft_seat_runout", 0.003),
        (_EN + "Shoulder;mm;30;25\nHousing shoulder;mm;46;41\n", "shaft_shoulder_diameter", 30.0),
        (_DE, "housing_seat_diameter", 52.0),
        (_DE, "shaft_seat_roughness", 0.4),
    ],
)
def test_the_table_tells_the_part(tmp_path, table, name, value):
    path = tmp_path / "t.csv"
    path.write_text(table, encoding="utf-8")
    stations = read_table(path).stations
    of_name = stations.size(name).nominal if name.endswith("diameter") else stations.number(name)
    assert of_name[0] == pytest.approx(value)
    assert "part-told" in {problem.code for problem in stations.problems}


@pytest.mark.parametrize(
    "table",
    [
        _EN + "Seat Ra;µm;0.4;0.4\n",  # of either part
        _EN + "Shaft Ra;µm;0.4;0.4\nHousing Ra;µm;0.8;0.8\nSeat Ra;µm;0.4;0.4\n",
    ],
)
def test_what_nothing_tells_is_not_read(tmp_path, table):
    path = tmp_path / "t.csv"
    path.write_text(table, encoding="utf-8")
    reading = read_table(path)
    assert "part-told" not in {problem.code for problem in reading.stations.problems}
    assert any(unused.name in ("Seat Ra", "Max. fillet") for unused in reading.unused)


def test_a_name_below_the_word_for_a_part_is_of_that_part(tmp_path):
    path = tmp_path / "t.csv"
    of_housing = "Housing;;;\nHousing bore;mm;52 H6;47 H6\nSeat Ra;µm;0.8;0.8\n"
    path.write_text(_EN.replace("Housing bore;mm;52 H6;47 H6\n", of_housing), encoding="utf-8")
    reading = read_table(path)
    assert reading.stations.number("housing_seat_roughness").tolist() == pytest.approx([0.8, 0.8])
    assert "part-told" not in {problem.code for problem in reading.stations.problems}


@pytest.mark.parametrize(
    ("name", "parameter", "station"),
    [
        ("Welle Durchmesser B", "shaft_seat_diameter", "B"),
        ("Welle Rauheit Ra B", "shaft_seat_roughness", "B"),
        ("Gehäuse Schulterdurchmesser B", "housing_shoulder_diameter", "B"),
        ("Diamètre arbre B", "shaft_seat_diameter", "B"),
        ("Rugosità Ra albero B", "shaft_seat_roughness", "B"),
        ("轴 直径 B", "shaft_seat_diameter", "B"),
        ("Lagerbreite B", "ring_width", ""),
        ("Einstichbreite Welle B", "shaft_groove_width", ""),
    ],
)
def test_the_letter_of_the_second_position_is_no_symbol_of_a_seat(name, parameter, station):
    heading = Words(Names()).heading(name)
    assert heading is not None and (heading.parameter, heading.station) == (parameter, station)
