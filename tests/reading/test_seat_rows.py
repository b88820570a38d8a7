"""Tables with one row per seat, whose rows say part, position or feature in one cell, in two, or above them."""

import pytest

from linter.reading import Reading, read_table
from linter.reading.layouts.seat_rows import row_said
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

WORDS = Words(Names.built_in())
HEAD = "Nominal mm;Class;ES/es µm;EI/ei µm;Ra µm;Cylindricity µm;Shoulder dia. mm;Fillet max mm"
SHAFTS = ("20;k5;+11;+2;0.4;3;26;0.6", "17;j5;+5;-3;0.4;3;21.5;0.3")
HOUSINGS = ("47;H6;+16;0;0.8;4;41;", "40;H7;+25;0;0.8;4;35.5;")
BEARINGS = ("6204 C3;;;;;;;", "6203;;;;;;;")

#: Ways to say part and position of each row: columns that name it, and the rows.
WAYS = {
    "position and part": ("Position;Feature", [
        f"DE;shaft;{SHAFTS[0]}", f"DE;housing;{HOUSINGS[0]}", f"DE;bearing;{BEARINGS[0]}",
        f"NDE;shaft;{SHAFTS[1]}", f"NDE;housing;{HOUSINGS[1]}", f"NDE;bearing;{BEARINGS[1]}",
    ]),
    "part and position": ("Part;End", [
        f"Welle;AS;{SHAFTS[0]}", f"Welle;BS;{SHAFTS[1]}", f"Gehäuse;AS;{HOUSINGS[0]}", f"Gehäuse;BS;{HOUSINGS[1]}",
        f"Lager;AS;{BEARINGS[0]}", f"Lager;BS;{BEARINGS[1]}",
    ]),
    "one cell, German": ("Lagerstelle", [
        f"Lagersitz Welle AS;{SHAFTS[0]}", f"Gehäusebohrung AS;{HOUSINGS[0]}", f"Lager AS;{BEARINGS[0]}",
        f"Lagersitz Welle BS;{SHAFTS[1]}", f"Gehäusebohrung BS;{HOUSINGS[1]}", f"Lager BS;{BEARINGS[1]}",
    ]),
    "one cell, Russian": ("Посадочное место", [
        f"посадка на валу, опора А;{SHAFTS[0]}", f"посадка на валу, опора Б;{SHAFTS[1]}",
        f"посадка в корпусе, опора А;{HOUSINGS[0]}", f"посадка в корпусе, опора Б;{HOUSINGS[1]}",
        f"подшипник, опора А;{BEARINGS[0]}", f"подшипник, опора Б;{BEARINGS[1]}",
    ]),
    "one cell, Chinese": ("部位", [
        f"轴伸端轴承档;{SHAFTS[0]}", f"轴伸端轴承室;{HOUSINGS[0]}", f"轴伸端轴承;{BEARINGS[0]}",
        f"非轴伸端轴承档;{SHAFTS[1]}", f"非轴伸端轴承室;{HOUSINGS[1]}", f"非轴伸端轴承;{BEARINGS[1]}",
    ]),
    "a part above positions": ("Position", [
        "Shaft;;;;;;;;", f"DE;{SHAFTS[0]}", f"NDE;{SHAFTS[1]}", "Housing;;;;;;;;", f"DE;{HOUSINGS[0]}",
        f"NDE;{HOUSINGS[1]}", "Bearing;;;;;;;;", f"DE;{BEARINGS[0]}", f"NDE;{BEARINGS[1]}",
    ]),
    "a position above parts": ("Bauteil", [
        "Antriebsseite;;;;;;;;", f"Welle;{SHAFTS[0]}", f"Gehäuse;{HOUSINGS[0]}", f"Lager;{BEARINGS[0]}",
        "Gegenseite;;;;;;;;", f"Welle;{SHAFTS[1]}", f"Gehäuse;{HOUSINGS[1]}", f"Lager;{BEARINGS[1]}",
    ]),
    "locating and floating": ("Lagerstelle;Sitz", [
        f"Festlager;Wellensitz;{SHAFTS[0]}", f"Festlager;Gehäusesitz;{HOUSINGS[0]}", f"Festlager;Lager;{BEARINGS[0]}",
        f"Loslager;Wellensitz;{SHAFTS[1]}", f"Loslager;Gehäusesitz;{HOUSINGS[1]}", f"Loslager;Lager;{BEARINGS[1]}",
    ]),
}  # fmt: skip


def read(tmp_path, rows: list[str]) -> Reading:
    path = tmp_path / "table.csv"
    path.write_text("\n".join(rows), encoding="utf-8")
    return read_table(path)


def limits(reading: Reading, name: str) -> list[tuple[float, float, float]]:
    size = reading.stations.size(name)
    return [tuple(map(float, one)) for one in zip(size.nominal, size.lower, size.upper, strict=True)]


@pytest.mark.parametrize("way", WAYS)
def test_each_row_is_of_its_part_and_position(tmp_path, way):
    named, rows = WAYS[way]
    reading = read(tmp_path, [f"{named};{HEAD}", *rows])
    assert len(reading.stations.text("station")) == 2
    assert list(reading.stations.text("bearing_designation")) == ["6204 C3", "6203"]
    for name, expected in (
        ("shaft_seat_diameter", [(20, 0.002, 0.011), (17, -0.003, 0.005)]),
        ("housing_seat_diameter", [(47, 0, 0.016), (40, 0, 0.025)]),
    ):
        assert limits(reading, name) == [pytest.approx(one) for one in expected]
    assert list(reading.stations.size("shaft_shoulder_diameter").nominal) == [26, 21.5]
    assert list(reading.stations.size("housing_shoulder_diameter").nominal) == [41, 35.5]
    assert list(reading.stations.number("shaft_seat_roughness")) == [0.4, 0.4]
    assert list(reading.stations.number("housing_seat_roughness")) == [0.8, 0.8]
    assert list(reading.stations.number("housing_seat_cylindricity")) == pytest.approx([0.004, 0.004])
    assert list(reading.stations.number("shaft_fillet_radius")) == [0.6, 0.3]
    assert not reading.stations.known("housing_fillet_radius").any()


def test_a_row_of_a_shoulder_states_the_shoulder_of_its_part(tmp_path):
    rows = [
        "Palier;Élément;Diamètre mm;Tolérance;Ra µm;Battement µm",
        "côté commande;Arbre;25;k5;0,4;3", ";Épaulement arbre;31;;;2", ";Logement;52;H6;0,8;5",
        "côté opposé;Arbre;20;j5;0,4;3", ";Épaulement arbre;26;;;2", ";Logement;47;H7;0,8;5",
    ]  # fmt: skip
    stations = read(tmp_path, rows).stations
    assert list(stations.size("shaft_seat_diameter").nominal) == [25, 20]
    assert list(stations.size("shaft_shoulder_diameter").nominal) == [31, 26]
    assert list(stations.number("shaft_shoulder_runout")) == pytest.approx([0.002, 0.002])
    assert list(stations.number("shaft_seat_runout")) == pytest.approx([0.003, 0.003])
    assert not stations.known("housing_shoulder_diameter").any()


def test_a_row_that_is_not_understood_moves_no_value(tmp_path):
    named, rows = WAYS["one cell, German"]
    other = "Passfederverbindung Q;12;P9;0;-43;3.2;;;"
    plain, reading = (read(tmp_path, [f"{named};{HEAD}", *some]) for some in (rows, [rows[0], other, *rows[1:]]))
    for name in ("shaft_seat_diameter", "housing_seat_diameter"):
        assert limits(reading, name) == limits(plain, name)
    assert any(one.value == "12" for one in reading.unused)


def test_values_of_the_machine_right_below_the_seats_are_read(tmp_path):
    named, rows = WAYS["one cell, German"]
    below = ["Rotormasse;2,4 kg;;;;;;;", "Höchstdrehzahl;9000 1/min;;;;;;;"]
    stations = read(tmp_path, [f"{named};{HEAD}", *rows, *below]).stations
    assert list(stations.number("rotor_mass")) == [2.4, 2.4]
    assert list(stations.number("speed_max")) == [9000, 9000]


@pytest.mark.parametrize(
    ("text", "part", "feature", "station"),
    [
        ("Shaft seat DE", "shaft", "seat", "DE"), ("Schulter Welle AS", "shaft", "shoulder", "AS"),
        ("Housing shoulder", "housing", "shoulder", ""), ("End shield bore DE", "housing", "seat", "DE"),
        ("заплечик вала", "shaft", "shoulder", ""), ("Fillet shaft DE", "shaft", "fillet", "DE"),
        ("Shaft seat diameter A", "", "", ""), ("Radial load", "", "", ""), ("Bore", "", "", ""),
    ],
)  # fmt: skip
def test_what_a_row_is_of(text, part, feature, station):
    said = row_said(text, WORDS)
    assert ((*said.key, said.station) if said else ("", "", "")) == (part, feature, station)


def test_words_that_stand_below_shaft_and_housing_are_positions(tmp_path):
    rows = [
        "Положение;Подшипник;Размер, мм;Поле;Откл. верх., мкм;Откл. нижн., мкм;Ra, мкм;Буртик, мм",
        "ВАЛ;;;;;;;", "привод;6206;30;k5;+11;+2;0,4;37", "вентилятор;6205;25;j5;+5;-4;0,4;31",
        "КОРПУС;;;;;;;", "привод;6206;62;H6;+19;0;0,8;55", "вентилятор;6205;52;H7;+30;0;0,8;46",
    ]  # fmt: skip
    reading = read(tmp_path, rows)
    assert list(reading.stations.text("station")) == ["привод", "вентилятор"]
    assert limits(reading, "shaft_seat_diameter")[1] == pytest.approx((25, -0.004, 0.005))
    assert limits(reading, "housing_seat_diameter")[1] == pytest.approx((52, 0, 0.03))
    assert list(reading.stations.size("housing_shoulder_diameter").nominal) == [55, 46]


@pytest.mark.parametrize("heads", ["Machine;Pos.;Part;Nominal mm", "Maschine;Lagerstelle;Teil;Maß mm"])
def test_seats_of_several_machines(tmp_path, heads):
    rows = [
        f"{heads};Class;ES/es µm;EI/ei µm;Ra µm", "M-10;DE;shaft;20;k5;11;2;0.4", ";;housing;47;H6;16;0;0.8",
        ";NDE;shaft;17;j5;5;-3;0.4", ";;housing;40;H7;25;0;0.8", "M-20;DE;shaft;30;k5;11;2;0.4",
        ";;housing;62;H6;19;0;0.8", ";NDE;shaft;25;j5;5;-4;0.4", ";;housing;52;H7;30;0;0.8",
    ]  # fmt: skip
    reading = read(tmp_path, rows)
    assert list(reading.stations.text("machine")) == ["M-10", "M-10", "M-20", "M-20"]
    assert list(reading.stations.text("station")) == ["DE", "NDE", "DE", "NDE"]
    assert [one[0] for one in limits(reading, "shaft_seat_diameter")] == [20, 17, 30, 25]
    assert [one[2] for one in limits(reading, "housing_seat_diameter")] == pytest.approx([0.016, 0.025, 0.019, 0.03])


@pytest.mark.parametrize("blank", [[], [";;;;;"]])
@pytest.mark.parametrize(
    ("shaft", "housing", "bearing", "heads"),
    [
        ("Arbre", "Logement", "Roulement", "Repère;Ø nominal;Ajustement;Ra µm;Cylindricité µm;Ø épaulement"),
        ("Shaft", "Housing", "Bearing", "Position;Seat dia.;Class;Ra µm;Cylindricity µm;Shoulder dia."),
    ],
)
def test_small_tables_each_below_the_word_for_its_part(tmp_path, blank, shaft, housing, bearing, heads):
    rows = [
        f"{shaft};;;;;", heads, "DE;25;k5;0,4;3;31", "NDE;20;j5;0,4;3;26", *blank,
        f"{housing};;;;;", heads, "DE;52;H6;0,8;5;46", "NDE;47;H7;0,8;5;41", *blank,
        f"{bearing};;;;;", f"{heads.split(';')[0]};Designation;Clearance;;;", "DE;6205;C3;;;", "NDE;6204;C3;;;",
    ]  # fmt: skip
    stations = read(tmp_path, rows).stations
    assert list(stations.text("station")) == ["DE", "NDE"]
    assert list(stations.size("shaft_seat_diameter").nominal) == [25, 20]
    assert list(stations.size("housing_seat_diameter").nominal) == [52, 47]
    assert list(stations.size("housing_shoulder_diameter").nominal) == [46, 41]
    assert list(stations.number("housing_seat_roughness")) == [0.8, 0.8]
    assert list(stations.text("bearing_designation")) == ["6205", "6204"]


def test_what_was_found_beside_a_position_with_a_word_before_it_is_no_position(tmp_path):
    rows = [
        "Merkmal;Einheit;Lager A;Lager B;Ist A;Ist B", "Lagerbezeichnung;;6204;6203;ok;ok",
        "Wellensitz Ø;mm;20 k5;17 k5;20,004;17,003", "Gehäusebohrung Ø;mm;47 H6;40 H6;47,008;40,005",
    ]  # fmt: skip
    stations = read(tmp_path, rows).stations
    assert list(stations.text("station")) == ["A", "B"]
    assert list(stations.size("shaft_seat_diameter").nominal) == [20, 17]
