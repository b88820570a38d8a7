"""Words of practice that stand around a name: positions in it, tolerances beside it, objects around its value."""

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


@pytest.mark.parametrize(
    ("name", "station"),
    [("BRG1_SHAFT_SEAT_DIA", "1"), ("SHAFT_SEAT_DIA_BRG2", "2"), ("Brg1.Shaft_Seat_Dia", "1"),
     ("shaft_seat_dia_2", "2"), ("SHAFT_SEAT_DIA_A", "A")],
)  # fmt: skip
def test_an_instance_in_a_name_is_the_station(name, station):
    heading = WORDS.heading(name)
    assert heading is not None
    assert (heading.parameter, heading.station) == ("shaft_seat_diameter", station)


@pytest.mark.parametrize("name", ["HOUSING_FILLET_R", "housing_fillet_r", "Housing fillet R"])
def test_an_r_behind_a_fillet_is_its_radius_and_no_station(name):
    heading = WORDS.heading(name)
    assert heading is not None
    assert (heading.parameter, heading.station) == ("housing_fillet_radius", "")


@pytest.mark.parametrize(
    ("text", "group"),
    [("desv. superior", "UPPER"), ("Abw. untere", "LOWER"), ("écart limite inférieur", "LOWER"), ("superior", ""),
     ("上の寸法許容差", "UPPER"), ("shoulder", ""), ("upper shoulder", "")],
)  # fmt: skip
def test_words_for_an_upper_or_lower_deviation_are_known_by_their_parts(text, group):
    assert WORDS.group(text) == group


@pytest.mark.parametrize("tail", [" w/ tol.", ", with tolerance", " (incl. tol.)", " mit Toleranz", ""])
def test_a_word_that_the_tolerance_stands_with_the_size_adds_nothing(tail):
    heading = WORDS.heading(f"shaft seat{tail}")
    assert heading is not None
    assert (heading.parameter, heading.aspect) == ("shaft_seat_diameter", "value")


def test_a_place_whose_cells_say_how_the_bearing_is_located_is_its_role(read):
    table = "Feature;Unit;FRONT BEARING;REAR BEARING\nShaft seat;mm;15 j5;12 j5\nHousing seat;mm;32 JS5;28 JS5\n"
    reading = read(table + "Location;;locating;floating\n")
    assert reading.stations.text("station").tolist() == ["FRONT BEARING", "REAR BEARING"]
    role = reading.stations.choice("axial_role")
    assert [role.words[code] for code in role.codes.tolist()] == ["locating", "floating"]


@pytest.mark.parametrize("micro", ["µm", "um"])
def test_micrometres_that_are_those_of_the_class_leave_the_size_in_millimetres(read, micro):
    reading = read(f"Station;Shaft seat;Housing seat\nA;17.00 k5 +9/+1 {micro};40.00 H6 +16/0 {micro}\n")
    shaft = reading.stations.size("shaft_seat_diameter")
    assert shaft.nominal.tolist() == [17]
    assert shaft.upper.tolist() == pytest.approx([0.009])
    other = read(f"Station;Shaft seat;Housing seat\nA;17.00 k5 +7/+1 {micro};40.00 H6 +16/0 {micro}\n")
    assert [p.code for p in other.stations.problems if p.kind == "unreadable"] == ["ambiguous-unit"]


def test_a_tolerance_of_a_bore_with_classes_of_holes_is_that_of_the_housing(read):
    table = "項目;単位;前側;後側\n軸はめあい部直径;mm;15;12\n軸公差;;k5;k5\nハウジング穴径;mm;32;28\n"
    reading = read(table + "穴公差;;H6;H7\n")
    assert reading.stations.size("housing_seat_diameter").tolerance_class.tolist() == ["H6", "H7"]


def test_deviations_stand_in_rows_of_their_own_beside_the_nominal(read):
    table = ";;Ud.;A;B\nAsiento del eje;nominal;mm;20;17\n;desv. superior;µm;+11;+9\n;desv. inferior;µm;+2;+1\n"
    reading = read(table + "Velocidad máxima;;min-1;9000;9000\n")
    shaft = reading.stations.size("shaft_seat_diameter")
    assert shaft.nominal.tolist() == [20, 17]
    assert (shaft.upper.tolist(), shaft.lower.tolist()) == (
        pytest.approx([0.011, 0.009]),
        pytest.approx([0.002, 0.001]),
    )


def test_designations_with_a_position_in_their_heading_are_of_that_position(read):
    table = "Name,Value,Unit\ndesignation_1,61903-2Z/C3,\nshaft_seat_dia_1,17 k5,mm\ndesignation_2,61901-2Z/C3,\n"
    reading = read(table + "shaft_seat_dia_2,12 k5,mm\n")
    assert reading.stations.text("station").tolist() == ["1", "2"]
    assert reading.stations.text("bearing_designation").tolist() == ["61903-2Z/C3", "61901-2Z/C3"]


def test_an_object_around_value_and_unit_is_opened(read):
    def attribute(name, amount, measure):
        return {"attributeName": name, "sort": "string", "content": {"amount": amount, "measure": measure}}

    positions = [
        {"label": label, "list": [attribute("Shaft seat diameter", seat, "mm"), attribute("Radial load", load, "N")]}
        for label, seat, load in (("Front", "4 h5", 4.5), ("Rear", "5 h5", 3.0))
    ]
    reading = read({"positions": positions})
    assert reading.stations.text("station").tolist() == ["Front", "Rear"]
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [4, 5]
    assert reading.stations.number("radial_load").tolist() == [4.5, 3.0]
    assert reading.understood[0].place.pointer is not None
    assert {u.place.pointer for u in reading.understood if u.parameter == "radial_load"} == {
        "/positions/0/list/1/content/amount", "/positions/1/list/1/content/amount",
    }  # fmt: skip


@pytest.mark.parametrize("key", ["Geh.-Bohrung", "Gehäusebohrung"])
def test_the_keys_around_a_name_do_not_take_a_part_of_it_for_another_thing(read, key):
    seat = {"name": key, "value": "16 (+0.018/0)", "unit": "mm"}
    bore = {"name": "Lagerbohrung d", "value": 5, "unit": "mm"}
    reading = read({"assembly": "P", "children": [{"position": "links", "attributes": [seat, bore]}]})
    assert reading.stations.size("housing_seat_diameter").nominal.tolist() == [16]
    assert reading.stations.number("bore_diameter").tolist() == [5]
    assert reading.stations.problems == ()


def values(reading, name):
    stations = reading.stations
    return dict(zip(stations.text("station").tolist(), stations.size(name).nominal.tolist(), strict=True))


@pytest.mark.parametrize(
    "table",
    [
        "Name,Value,Unit\nshaft_seat_dia_01,17,mm\nRa_shaft_01,0.4,µm\nshaft_seat_dia_02,15,mm\nRa_shaft_02,0.4,µm\n",
        "Name,Value,Unit\nShaft seat dia #1,17,mm\nShaft Ra #1,0.4,µm\nShaft seat dia #2,15,mm\nShaft Ra #2,0.4,µm\n",
        "Position: 1;\nBearing;6203\nShaft seat [mm];17\nPosition: 2;\nBearing;6202\nShaft seat [mm];15\n",
        "Object,Attribute,Value,UoM\nRotor,Speed max,9000,1/min\nBearing 1,Shaft seat diameter,17,mm\n"
        "Bearing 1,Radial load,5,N\nBearing 2,Shaft seat diameter,15,mm\nBearing 2,Radial load,5,N\n",
        "Measuring sheet,,,,,\nPosition 1,,,,,\nNo,Feature,Nominal,Upper,Lower,Unit\n1,Shaft seat,17,0.009,0.001,mm\n"
        "2,Housing seat,40,0.016,0,mm\nPosition 2,,,,,\nNo,Feature,Nominal,Upper,Lower,Unit\n"
        "3,Shaft seat,15,0.009,0.001,mm\n4,Housing seat,35,0.013,0,mm\n",
    ],
    ids=["padded number", "number sign", "lines with a colon", "column of objects", "blocks with their heads"],
)
def test_positions_are_told_apart_by_numbers_lines_objects_and_blocks(read, table):
    assert values(read(table), "shaft_seat_diameter") == {"1": 17, "2": 15}


def test_a_diameter_and_a_class_in_the_object_of_a_seat_are_its_own(read):
    seat = {"shaft": {"seat": {"diameter": 10, "class": "k5"}}}
    reading = read({"units": "mm", "NDE": seat, "DE": seat})
    assert values(reading, "shaft_seat_diameter") == {"NDE": 10, "DE": 10}
    assert reading.stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", "k5"]


def test_sizes_with_their_class_below_a_word_for_a_fit_are_sizes(read):
    reading = read("station,Shaft fit,Housing fit\nA,Ø17 k5,Ø40 H6\nB,Ø15 k5,Ø35 H6\n")
    assert values(reading, "shaft_seat_diameter") == {"A": 17, "B": 15}
    assert values(reading, "housing_seat_diameter") == {"A": 40, "B": 35}


def test_half_the_band_beside_a_size_is_of_that_size(read):
    reading = read(
        "Station,Ø seat shaft [mm],± tol,Ø seat housing [mm],± tol\nA,10,0.003,26,0.0065\nB,12,0.003,28,0.0065\n"
    )
    assert reading.stations.size("housing_seat_diameter").upper.tolist() == pytest.approx([0.0065, 0.0065])


@pytest.mark.parametrize("prefix", ["PRM_", "V.", ""])
def test_a_prefix_that_every_name_carries_says_nothing(read, prefix):
    names = ("NDE_ShaftSeatDia", "NDE_HousingSeatDia", "DE_ShaftSeatDia", "DE_HousingSeatDia")
    rows = "".join(f"{prefix}{name},{size},mm\n" for name, size in zip(names, (17, 40, 15, 35), strict=True))
    reading = read(f"Name,Value,Unit\n{rows}")
    assert values(reading, "shaft_seat_diameter") == {"NDE": 17, "DE": 15}
    assert values(reading, "housing_seat_diameter") == {"NDE": 40, "DE": 35}


def test_a_prefix_that_says_a_station_is_kept(read):
    rows = "".join(f"NDE_{name},{size},mm\n" for name, size in (("ShaftSeatDia", 17), ("HousingSeatDia", 40)))
    assert values(
        read(f"Name,Value,Unit\n{rows}NDE_RingWidth,12,mm\nNDE_ShaftFilletR,0.5,mm\n"), "shaft_seat_diameter"
    ) == {"NDE": 17}


def test_a_d_behind_a_seat_is_its_diameter(read):
    reading = read("Parameter;Value;Unit\nP_BRG_1_SHAFT_SEAT_D;17;mm\nP_BRG_1_SHAFT_SEAT_D_UPPER;0.009;mm\n"
                   "P_BRG_1_SHAFT_SEAT_D_LOWER;0.001;mm\nP_BRG_2_SHAFT_SEAT_D;15;mm\n")  # fmt: skip
    assert values(reading, "shaft_seat_diameter") == {"1": 17, "2": 15}


def test_a_part_alone_over_sizes_with_classes_of_its_sort_is_its_seat(read):
    reading = read("Palier,Roulement,Arbre,Logement\nA,6203,Ø17 k5,Ø40 H6\nB,6202,Ø15 k5,Ø35 H6\n")
    assert values(reading, "shaft_seat_diameter") == {"A": 17, "B": 15}
    other = read("Palier,Roulement,Arbre,Logement\nA,6203,acier,Ø40 H6\nB,6202,acier,Ø35 H6\n")
    assert not other.stations.known("shaft_seat_diameter").any()


def test_two_signed_numbers_in_a_column_that_is_not_read_are_told(read):
    table = "Nr;Merkmal;Nennmaß;Zusatz 1;Zusatz 2;Einheit\n1;Lagersitz Welle;15;+0,009;+0,001;mm\n"
    reading = read(f"{table}2;Lagersitz Gehäuse;32;+0,016;+0,002;mm\n3;Wellenschulter;18;;;mm\n")
    assert [p.code for p in reading.stations.problems] == ["values-not-read", "values-not-read"]
