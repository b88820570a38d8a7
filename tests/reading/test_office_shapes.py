"""Shapes of tables from offices: bills with seats, blocks of keys and values, paths for keys, features in columns."""

import json

import pytest

from linter.reading import read_table
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

WORDS = Words(Names.built_in())


@pytest.fixture
def read(tmp_path):
    def reader(content):
        path = tmp_path / ("t.csv" if isinstance(content, str) else "t.json")
        path.write_text(content if isinstance(content, str) else json.dumps(content), encoding="utf-8")
        return read_table(path)

    return reader


def sizes(reading, name):
    size = reading.stations.size(name)
    return list(zip(size.nominal.tolist(), size.tolerance_class.tolist(), strict=True))


def limits(reading, name):
    size = reading.stations.size(name)
    return [(round(low, 6), round(up, 6)) for low, up in zip(size.lower.tolist(), size.upper.tolist(), strict=True)]


def stations(reading):
    return reading.stations.text("station").tolist()


def unread(reading):
    return [p.message for p in reading.stations.problems if p.kind in ("unreadable", "disagreement")]


def test_a_bill_of_material_gives_the_rows_of_its_bearings(read):
    reading = read(
        "Pos;Qty;Part no.;Denomination;Mating part shaft;Mating part housing;Clearance\n"
        "1;1;4402-118;Deep groove ball bearing 6203-2Z;Ø17 k5;Ø40 H6;C3\n"
        "2;1;4402-119;Deep groove ball bearing 6202-2Z;Ø15 k5;Ø35 H6;C3\n"
        "3;4;4402-300;Hex screw M5x16;;;\n"
    )
    assert stations(reading) == ["1", "2"]
    assert reading.stations.text("bearing_designation").tolist() == ["6203-2Z", "6202-2Z"]
    assert sizes(reading, "shaft_seat_diameter") == [(17, "k5"), (15, "k5")]
    assert reading.stations.text("drawing_number").tolist() == ["", ""]  # those of the items
    assert "Hex screw M5x16" in [unused.value for unused in reading.unused]
    assert not unread(reading)


def test_blocks_of_keys_and_values_begin_with_that_of_the_machine(read):
    reading = read(
        "[Machine];\nName;Centrifuge C-2\nSpeed;16000 1/min\nShaft material;42CrMo4\n;\n"
        "[Bearing position: upper];\nDesignation;6201-2Z\nSeat shaft;12 j5\n;\n"
        "[Bearing position: lower];\nDesignation;6202-2Z\nSeat shaft;15 j5\n"
    )
    assert reading.stations.machines == ("Centrifuge C-2",)
    assert stations(reading) == ["upper", "lower"]
    assert reading.stations.number("speed_max").tolist() == [16000, 16000]
    assert sizes(reading, "shaft_seat_diameter") == [(12, "j5"), (15, "j5")]
    assert not unread(reading)


def test_three_heading_rows_without_merged_cells(read):
    reading = read(
        "Macchina;Albero;;;;Sede alloggiamento;;;;Cuscinetto;\n"
        ";Ø nominale;Tolleranza;;Ra;Ø nominale;Tolleranza;;Ra;Sigla;C\n"
        ";mm;sup. µm;inf. µm;µm;mm;sup. µm;inf. µm;µm;;kN\n"
        "V1;17;+9;+1;0,8;40;+16;0;1,6;6203;9,6\n"
    )
    assert limits(reading, "shaft_seat_diameter") == [(0.001, 0.009)]
    assert limits(reading, "housing_seat_diameter") == [(0, 0.016)]
    assert reading.stations.number("housing_seat_roughness").tolist() == [1.6]
    assert reading.stations.number("dynamic_rating").tolist() == [9600]
    assert not unread(reading)


def test_paths_for_keys_make_a_tree_and_keep_their_places(read):
    reading = read(
        {
            "Welle.Lagersitz_A.Durchmesser": 10.0, "Welle.Lagersitz_A.Abmass_oben": 0.007,
            "Welle.Lagersitz_A.Abmass_unten": 0.001, "Welle.Lagersitz_B.Durchmesser": 8.0,
            "Gehaeuse.Lagersitz_A.Durchmesser": 26.0, "Einheit_Laenge": "mm", "Welle.Lagersitz_B.Rauheit_Ra": 0.4,
        }
    )  # fmt: skip
    assert stations(reading) == ["A", "B"]
    assert limits(reading, "shaft_seat_diameter")[0] == (0.001, 0.007)
    assert reading.stations.number("shaft_seat_roughness").tolist()[1] == 0.4  # in µm by custom
    assert {u.place.pointer for u in reading.understood} >= {"/Welle.Lagersitz_A.Abmass_oben"}
    assert not unread(reading)


def test_numbers_in_paths_count_the_entries_of_a_list(read):
    reading = read(
        {
            "units.length": "mm", "bearings[0].position": "front", "bearings[0].shaft_seat": "12 k5",
            "bearings[1].position": "rear", "bearings[1].shaft_seat": "10 k5",
        }
    )  # fmt: skip
    assert stations(reading) == ["front", "rear"]
    assert sizes(reading, "shaft_seat_diameter") == [(12, "k5"), (10, "k5")]
    assert [u.place.pointer for u in reading.understood][-1] == "/bearings[1].shaft_seat"


def test_other_features_of_a_seat_stand_in_columns_of_their_own(read):
    reading = read(
        "Merkmal;Nennmaß;o. Abm.;u. Abm.;Einheit;Ra;Zylinderform\n"
        "Lagersitz Welle;15;+0,009;+0,001;mm;0,8;0,002\nLagersitz Gehäuse;32;+0,016;0;mm;1,6;\n"
    )
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.8]
    assert reading.stations.number("housing_seat_roughness").tolist() == [1.6]
    assert reading.stations.number("shaft_seat_cylindricity").tolist() == [0.002]
    assert not unread(reading)


def test_attributes_of_objects_in_rows(read):
    reading = read(
        "Level;Item;Description;Qty;Attribute;Attribute value;UoM\n1;10;Rotor assembly;1;Speed max;18000;1/min\n"
        "2;20;Bearing A;1;Shaft seat diameter;12 k5;mm\n2;30;Bearing B;1;Shaft seat diameter;10 k5;mm\n"
        "2;20;Bearing A;1;Designation;6001;\n2;30;Bearing B;1;Designation;6000;\n"
    )
    assert stations(reading) == ["A", "B"]
    assert sizes(reading, "shaft_seat_diameter") == [(12, "k5"), (10, "k5")]
    assert not unread(reading)


@pytest.mark.parametrize(
    ("name", "parameter", "station", "aspect"),
    [
        ("Gehaeuse.Lagersitz_B.Durchmesser", "housing_seat_diameter", "B", "value"),
        ("Welle Lagersitz_A Abmass_oben", "shaft_seat_diameter", "A", "upper"),
        ("shaft/DE/seat_diameter", "shaft_seat_diameter", "DE", "value"),
        ("assembly.bearings.front.shaft_seat.diameter", "shaft_seat_diameter", "front", "value"),
        ("Rugosite Ra portee arbre A", "shaft_seat_roughness", "A", "value"),
        ("DIÁMETRO DE ASIENTO DEL EJE", "shaft_seat_diameter", "", "value"),
        ("Shaft seat tol plus [µm]", "shaft_seat_diameter", "", "upper"),
    ],
)
def test_stations_and_parts_inside_a_name(name, parameter, station, aspect):
    heading = WORDS.heading(name)
    assert heading is not None
    assert (heading.parameter, heading.station, heading.aspect) == (parameter, station, aspect)


@pytest.mark.parametrize(
    ("text", "station"),
    [("lato motore", "lato motore"), ("Bearing position: upper", "upper"), ("Palier gauche", "gauche")],
)
def test_what_a_line_says_of_a_station(text, station):
    assert WORDS.station_said(text) == station
