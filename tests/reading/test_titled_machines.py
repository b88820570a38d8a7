"""Titles without labels: the machine, and the drawing with its revision in one text."""

import pytest

from linter.reading import read_table
from linter.reading.words.titled_machines import machine_in_title

TABLE = "Position;Bearing;Shaft seat;Housing seat\nA;6206;30 k5;62 H7\nB;6205;25 k5;52 H7\n"


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "seats.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


@pytest.mark.parametrize(
    ("title", "machine"),
    [
        ("Datenblatt Lagerung Wirbelgebläse WG 8", "Wirbelgebläse WG 8"),
        ("DISTINTA E SEDI – Aspiratrucioli AT 9", "Aspiratrucioli AT 9"),
        ("DISTINTA E SEDI;;Aspiratrucioli AT 9", "Aspiratrucioli AT 9"),
        ("Fiche paliers - Ventilateur VC-12", "Ventilateur VC-12"),
        ("Fiche paliers - Pompe à vide PV-3", "Pompe à vide PV-3"),
        ("Bearing sheet: Lab centrifuge LC-4", "Lab centrifuge LC-4"),
        ("WG 8 side channel blower – seats", "WG 8 side channel blower"),
        ("Hoja de rodamientos: Bomba BC-40", "Bomba BC-40"),
        ("Elettromandrino EM 7,5 kW", "Elettromandrino EM 7,5 kW"),
        ("Таблица посадок подшипников, насос центробежный НЦ-32", "насос центробежный НЦ-32"),
        ("轴承配合表 电主轴 DZ-120", "电主轴 DZ-120"),
        ("离心泵CQG-25轴承配合表", "离心泵CQG-25"),
        ("軸受はめあい表 ポンプ KP-30", "ポンプ KP-30"),
    ],
)
def test_a_title_names_the_machine_where_no_label_does(read, title, machine):
    reading = read(f"{title};;\n{TABLE}")
    assert reading.stations.machines == (machine,)
    assert any("no label names the machine" in note for note in reading.notes)


@pytest.mark.parametrize(
    "title",
    [
        "Anlage 3 zum Prüfbericht 47",
        "Fits per pump standard 4711",
        "Bearings for pump housing 12",
        "List of motor shaft seats, sheet 2",
        "Motor 400 V",
        "Motor 7,5 kW",
        "Rotor of motor running at 12000 rpm",
        "Motor DIN 42955",
        "Pump 6206",
        "Blower 12.03.2024",
        "Generator G-22 / Turbine T-3",
        "Compressor stage 2",
        "Replaces;Pump CP-2",
    ],
)
def test_other_titles_name_no_machine(read, title):
    assert read(f"{title};;\n{TABLE}").stations.machines == ("seats",)


@pytest.mark.parametrize(
    "text",
    [
        f"Fan VF-200 bearing seats;;;\n\n{TABLE}\n\nMachine: Blower B-7;;;\n",
        f"Fan VF-200 bearing seats;;;\n\nMachine;Blower B-7;;\n\n{TABLE}",
        "Fan VF-200 bearing seats;;;;\nMachine;Position;Bearing;Shaft seat\nBlower B-7;A;6206;30 k5\n",
    ],
)
def test_a_machine_with_its_label_goes_before_a_title(read, text):
    assert read(text).stations.machines == ("Blower B-7",)


@pytest.mark.parametrize(("title", "name"), [("Motor test 2024", ""), ("Ventilator Typ VT-40", "Ventilator Typ VT-40")])
def test_what_stands_between_machine_and_model(title, name):
    assert machine_in_title(title) == name


DRAWINGS = [
    ("Zeichnung E 6536.58, Index A", "E 6536.58", "A"),
    ("plan 12 721 237 indice D", "12 721 237", "D"),
    ("Dwg 4711-02 Rev. C sheet 1 of 2", "4711-02", "C"),
    ("черт. АБВ.123 изм. 2", "АБВ.123", "2"),
    ("図番 K-1234 改訂 B", "K-1234", "B"),
    ("図面番号:K-1234 Rev.B", "K-1234", "B"),
    ("Zchg.-Nr. 4711-02, Änd. b", "4711-02", "b"),
    ("Zeichnung mit Index;4711-02 / C", "4711-02", "C"),
    ("図番・改訂;K-1234 B", "K-1234", "B"),
    ("图号及版本;CQG-25 版本 B", "CQG-25", "B"),
    ("Drawing;4711-02;Rev.;C", "4711-02", "C"),
]


@pytest.mark.parametrize(("line", "number", "revision"), DRAWINGS)
@pytest.mark.parametrize("above", [True, False])
def test_drawing_and_revision_of_one_line(read, line, number, revision, above):
    stations = read(f"{line};\n{TABLE}" if above else f"{TABLE}\n{line};\n").stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert {*stations.text("drawing_number").tolist()} == {number}
    assert {*stations.text("drawing_revision").tolist()} == {revision}
    assert stations.text("bearing_designation").tolist() == ["6206", "6205"]


def test_a_machine_before_its_drawing(read):
    stations = read(f"Vacuum pump VP-25 - dwg 4711-02 rev C;;\n{TABLE}").stations
    assert stations.machines == ("Vacuum pump VP-25",)
    assert stations.text("drawing_number").tolist() == ["4711-02"] * 2
    assert stations.text("drawing_revision").tolist() == ["C"] * 2


def test_the_drawing_of_another_part_is_none_of_the_table(read):
    stations = read(f"Housing, drawing 4711-02 rev. B;;\n{TABLE}").stations
    assert stations.text("drawing_number").tolist() == ["", ""]


@pytest.mark.parametrize(
    ("title", "machine"),
    [
        ("Design parameters of rotor Ozone blower OB-5", "Ozone blower OB-5"),
        ("Stückliste mit Lagersitzen;Umluftgebläse UG 315", "Umluftgebläse UG 315"),
        ("Listado de parámetros;Bomba BC-40", "Bomba BC-40"),
    ],
)
def test_words_for_a_list_of_parameters_say_no_machine(read, title, machine):
    assert read(f"{title};;\n{TABLE}").stations.machines == (machine,)


@pytest.mark.parametrize(
    ("label", "machine"),
    [
        ("Teil:", "Axialventilator AV 630"), ("Denominazione", "Levigatrice LV-8"), ("Pieza", "Amoladora AM-4"),
        ("名称", "搅拌机 JB-90"), ("Désignation", "Ponceuse PB-12"), ("Деталь", "Вентилятор ВР-80"),
    ],
)  # fmt: skip
def test_what_a_title_calls_its_part_is_the_machine_where_it_says_one(read, label, machine):
    assert read(f"{label};{machine};\n\n{TABLE}").stations.machines == (machine,)


@pytest.mark.parametrize("part", ["Motorwelle MW-8", "Lagergehäuse LG-4", "Nutmutter KM 8"])
def test_what_a_title_calls_a_part_of_one_is_no_machine(read, part):
    assert read(f"Teil:;{part};\n{TABLE}").stations.machines == ("seats",)


def test_a_date_that_is_not_used_is_no_deviation(read):
    reading = read("Station;Bearing;Shaft seat;Export day\nA;6204;20 k5;2025-03-21\nB;6203;17 k5;2025-03-21\n")
    assert not [p for p in reading.stations.problems if p.code == "unused-data"]


@pytest.mark.parametrize("cells", ["Drehzahl max.;1/min;3000", "Max. speed;rpm;3000", "Drehzahl max. 1/min;3000;"])
def test_a_unit_beside_a_label_of_the_title_is_no_value(tmp_path, cells):
    path = tmp_path / "seats.csv"
    path.write_text(f"Maschine;Lüfter 7;\n{cells}\n\nLager;Welle;Gehäuse\nA;20 k5;47 H6\nB;17 j5;40 J7\n", "utf-8")
    assert read_table(path).stations.number("speed_max").tolist() == [3000, 3000]
