"""Layouts that design offices use every day, each in several languages and orders."""

import json
from pathlib import Path

import openpyxl
import pytest

from linter.reading import Reading, read_table


def read(tmp_path: Path, text: str, suffix: str = "csv") -> Reading:
    path = tmp_path / f"table.{suffix}"
    path.write_text(text, encoding="utf-8")
    return read_table(path)


def stations(reading: Reading) -> list[str]:
    return [str(name) for name in reading.stations.text("station").tolist()]


def by_station(reading: Reading, name: str) -> dict[str, float]:
    return dict(zip(stations(reading), reading.stations.size(name).nominal.tolist(), strict=True))


SYMBOLS = {
    "en": (
        "Parameter,Symbol,Unit,Bearing 1,Bearing 2,Comment\nBearing,,,6004-2Z,6004-2Z,\nBore,d,mm,20,20,\n"
        "Limiting speed,n lim,rpm,14800,14800,catalogue\nRadial load,Fr,N,420,420,\nShaft seat,,mm,20 k6,21 m5,ground\n"
        "Shaft seat roughness,Ra,µm,0.8,0.4,\nHousing seat,,mm,42 H6,43 J7,\nMaximum speed,n,rpm,7500,,\n"
    ),
    "de": (
        "Benennung;Formelzeichen;Einheit;Lager 1;Lager 2\nLager;;;6004-2Z;6004-2Z\n"
        "Grenzdrehzahl;n lim;1/min;14800;14800\nRadiallast;Fr;N;420;420\nWellensitz;;mm;20 k6;21 m5\n"
        "Rauheit Wellensitz;Ra;µm;0,8;0,4\n"
        "Gehäusesitz;;mm;42 H6;43 J7\nHöchstdrehzahl;n;1/min;7500;\n"
    ),
    "fr": (
        "Désignation;Unité;Symbole;Palier 1;Palier 2\nRoulement;;;6004-2Z;6004-2Z\n"
        "Vitesse limite;tr/min;n lim;14800;14800\nPortée arbre;mm;;20 k6;21 m5\n"
        "Rugosité portée arbre;µm;Ra;0,8;0,4\nLogement;mm;;42 H6;43 J7\n"
    ),
    "ru": (
        "Характеристика;Обозначение;Опора 1;Опора 2\nПодшипник;;6004-2Z;6004-2Z\n"
        "Предельная частота вращения, об/мин;n lim;14800;14800\nРадиальная нагрузка, Н;Fr;420;400\n"
        "Посадка вала, мм;;20 k6;21 m5\nШероховатость вала Ra, мкм;Ra;0,8;0,4\nОтверстие корпуса, мм;;42 H6;43 J7\n"
    ),
    "zh": (
        "项目,符号,轴承A,轴承B,单位\n轴承型号,,6004-2Z,6004-2Z,\n极限转速,n lim,14800,14800,r/min\n"
        "径向载荷,Fr,420,420,N\n轴颈直径,,20 k6,21 m5,mm\n轴颈粗糙度Ra,,0.8,0.4,μm\n座孔直径,,42 H6,43 J7,mm\n"
    ),
}


@pytest.mark.parametrize("language", SYMBOLS)
def test_a_row_of_a_name_its_symbol_and_its_unit_heads_no_table(tmp_path, language):
    reading = read(tmp_path, SYMBOLS[language])
    assert len(stations(reading)) == 2
    assert list(by_station(reading, "shaft_seat_diameter").values()) == [20, 21]
    assert list(by_station(reading, "housing_seat_diameter").values()) == [42, 43]
    assert reading.stations.number("limiting_speed").tolist() == [14800, 14800]
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.8, 0.4]


@pytest.mark.parametrize(
    "text",
    [
        "Grenzdrehzahl [1/min];n lim;14800;14800\nRadiallast [N];Fr;420;400\nWellensitz [mm];;20 k6;21 m5\n"
        "Rauheit Wellensitz Ra [µm];;0,8;0,4\nGehäusesitz [mm];;42 H6;43 J7\n",
        "Limiting speed,rpm,14800,14800\nShaft seat,mm,20 k6,21 m5\nShaft seat roughness Ra,µm,0.8,0.4\n"
        "Housing seat,mm,42 H6,43 J7\n",
    ],
)
def test_of_two_columns_that_nothing_names_and_that_differ_none_is_read_for_the_other(tmp_path, text):
    reading = read(tmp_path, text)
    assert reading.stations.number("limiting_speed").tolist() == [14800]
    differing = {problem.parameter for problem in reading.stations.problems if problem.code == "stated-twice"}
    assert {"shaft_seat_diameter", "shaft_seat_roughness", "housing_seat_diameter"} <= differing


COMPONENTS = {
    "en": (
        "Assembly,Component,Characteristic,Nominal,Tolerance,Unit\n{m},Rotor,Maximum speed,12500,,1/min\n"
        "{m},Front bearing,Bearing designation,625ZZ,,\n{m},Front bearing,Shaft seat diameter,5,±0.0025,mm\n"
        "{m},Front bearing,Housing bore diameter,16,±0.0055,mm\n{m},Rear bearing,Bearing designation,608,,\n"
        "{m},Rear bearing,Shaft seat diameter,8,±0.003,mm\n{m},Rear bearing,Housing bore diameter,22,±0.0055,mm\n"
    ),
    "de": (
        "Baugruppe;Bauteil;Merkmal;Nennwert;Toleranz;Einheit\n{m};Rotor;Höchstdrehzahl;12500;;1/min\n"
        "{m};Vorderes Lager;Lagerbezeichnung;625ZZ;;\n{m};Vorderes Lager;Durchmesser Wellensitz;5;±0,0025;mm\n"
        "{m};Vorderes Lager;Durchmesser Gehäusebohrung;16;±0,0055;mm\n{m};Hinteres Lager;Lagerbezeichnung;608;;\n"
        "{m};Hinteres Lager;Durchmesser Wellensitz;8;±0,003;mm\n"
        "{m};Hinteres Lager;Durchmesser Gehäusebohrung;22;±0,0055;mm\n"
    ),
    "fr": (
        "Ensemble;Caractéristique;Valeur;Tolérance;Unité;Composant\n{m};vitesse maximale;12500;;tr/min;rotor\n"
        "{m};désignation du roulement;625ZZ;;;palier avant\n{m};diamètre portée arbre;5;k5;mm;palier avant\n"
        "{m};diamètre logement;16;H6;mm;palier avant\n{m};désignation du roulement;608;;;palier arrière\n"
        "{m};diamètre portée arbre;8;j5;mm;palier arrière\n{m};diamètre logement;22;J6;mm;palier arrière\n"
    ),
    "ja": (
        "機械,部品,特性,公称値,許容差,単位\n{m},ロータ,最高回転数,12500,,min-1\n{m},前側軸受,軸受型番,625ZZ,,\n"
        "{m},前側軸受,軸はめあい径,5,±0.0025,mm\n{m},前側軸受,ハウジング内径,16,±0.0055,mm\n{m},後側軸受,軸受型番,608,,\n"
        "{m},後側軸受,軸はめあい径,8,±0.0025,mm\n{m},後側軸受,ハウジング内径,22,±0.0055,mm\n"
    ),
}


@pytest.mark.parametrize("language", COMPONENTS)
@pytest.mark.parametrize("count", [1, 2])
def test_components_beside_the_machine_say_the_positions(tmp_path, language, count):
    head, _, rows = COMPONENTS[language].partition("\n")
    text = "\n".join([head, *(rows.format(m=f"Blower RB-{k + 3}").rstrip("\n") for k in range(count))])
    reading = read(tmp_path, f"{text}\n")
    assert reading.stations.machines == tuple(f"Blower RB-{k + 3}" for k in range(count))
    assert sorted(reading.stations.size("shaft_seat_diameter").nominal.tolist()) == sorted([5, 8] * count)
    assert sorted(reading.stations.size("housing_seat_diameter").nominal.tolist()) == sorted([16, 22] * count)
    assert {float(speed) for speed in reading.stations.number("speed_max")} == {12500}
    assert not reading.stations.problems


BLOCKS = {
    "it": ("Supporto {}", "valore;u.m.", "Sigla cuscinetto", "Diametro sede albero", "Diametro sede alloggiamento"),
    "es": ("Soporte {}", "valor;unidad", "Designación del rodamiento", "Diámetro asiento eje", "Diámetro alojamiento"),
    "de": ("Lagerstelle {}", "Wert;Einheit", "Lagerbezeichnung", "Durchmesser Wellensitz", "Durchmesser Gehäusesitz"),
    "en": ("Support {}", "value;unit", "Bearing designation", "Shaft seat diameter", "Housing seat diameter"),
}


@pytest.mark.parametrize("language", BLOCKS)
@pytest.mark.parametrize("blank", ["", ";;\n"])
def test_a_word_for_a_place_that_may_be_a_housing_heads_the_block_of_a_position(tmp_path, language, blank):
    head, columns, bearing, shaft, housing = BLOCKS[language]
    blocks = [
        f"{head.format(at)};{columns}\n{bearing};{number};\n{shaft};{d} k5;mm\n{housing};{bore} H7;mm\n"
        for at, number, d, bore in (("A", "6308", 40, 90), ("B", "6307", 35, 80))
    ]
    reading = read(tmp_path, blank.join(blocks))
    assert by_station(reading, "shaft_seat_diameter") == {"A": 40, "B": 35}
    assert by_station(reading, "housing_seat_diameter") == {"A": 90, "B": 80}
    assert reading.stations.text("bearing_designation").tolist() == ["6308", "6307"]


NUMBERED = [
    (["Bearing", "Shaft", "Housing"], ["No.", "Type", "Diameter (mm)", "Diameter (mm)"], ["1", "2"]),
    (["Lager", "Welle", "Gehäuse"], ["Nr.", "Typ", "Durchmesser [mm]", "Durchmesser [mm]"], ["Lager 1", "Lager 2"]),
    (["轴承", "轴", "座孔"], ["编号", "型号", "直径 (mm)", "直径 (mm)"], ["轴承1", "轴承2"]),
    (
        ["Roulement", "Arbre", "Logement"],
        ["N°", "Référence", "Diamètre (mm)", "Diamètre (mm)"],
        ["Palier 1", "Palier 2"],
    ),
    (["軸受", "軸側", "ハウジング側"], ["No.", "型番", "直径 (mm)", "直径 (mm)"], ["軸受1", "軸受2"]),
    (["Rodamiento", "Eje", "Alojamiento"], ["Nº", "Tipo", "Diámetro (mm)", "Diámetro (mm)"], ["R1", "R2"]),
]


@pytest.mark.parametrize(("groups", "heads", "names"), NUMBERED)
@pytest.mark.parametrize("first", [True, False])
def test_a_number_below_the_word_for_a_bearing_names_the_position_beside_the_designation(
    tmp_path, groups, heads, names, first
):
    order = [0, 1, 2, 3] if first else [1, 0, 2, 3]
    book = openpyxl.Workbook()
    book.active.append([groups[0], None, *groups[1:]])
    book.active.append([heads[k] for k in order])
    for name, values in zip(names, (("6204", "20 k5", "47 H6"), ("6203", "17 k5", "40 H6")), strict=True):
        book.active.append([[name, *values][k] for k in order])
    book.active.merge_cells("A1:B1")
    book.save(tmp_path / "table.xlsx")
    reading = read_table(tmp_path / "table.xlsx")
    assert stations(reading) == names
    assert reading.stations.text("bearing_designation").tolist() == ["6204", "6203"]
    assert list(by_station(reading, "housing_seat_diameter").values()) == [47, 40]


def test_numbers_of_bearings_alone_stay_designations(tmp_path):
    reading = read(tmp_path, "Bearing No.,Type,Shaft dia. (mm)\n6204,deep groove,20 k5\n6203,deep groove,17 k5\n")
    assert reading.stations.text("bearing_designation").tolist() == ["6204", "6203"]


SEATS = [
    ("轴承位", ("前端", "后端"), "轴", "轴承座", "直径_mm", "孔径_mm", "公差带"),
    ("bearing_seats", ("front", "rear"), "shaft", "bearing_housing", "diameter_mm", "bore_mm", "fit"),
    ("Lagersitze", ("A", "B"), "Welle", "Lagergehäuse", "Durchmesser_mm", "Bohrung_mm", "Toleranzklasse"),
    ("軸受部", ("前側", "後側"), "軸", "軸受箱", "直径_mm", "内径_mm", "公差"),
    ("portées", ("avant", "arrière"), "arbre", "logement", "diamètre_mm", "alésage_mm", "tolérance"),
    ("supporti", ("A", "B"), "albero", "alloggiamento", "diametro_mm", "foro_mm", "tolleranza"),
]


@pytest.mark.parametrize(("around", "places", "shaft", "housing", "diameter", "bore", "fit"), SEATS)
def test_a_housing_among_bearing_seats_is_the_housing(tmp_path, around, places, shaft, housing, diameter, bore, fit):
    of_place = {
        place: {shaft: {diameter: 17 + 3 * k, fit: "m5"}, housing: {bore: 40 + 2 * k, fit: "JS6"}}
        for k, place in enumerate(places)
    }
    reading = read(tmp_path, json.dumps({"product": {"name": "Fan F-6"}, around: of_place}), "json")
    assert by_station(reading, "shaft_seat_diameter") == {places[0]: 17, places[1]: 20}
    assert by_station(reading, "housing_seat_diameter") == {places[0]: 40, places[1]: 42}


HEADS = [
    ("article", ("nom", "plan", "indice"), "paliers", ("roulement", "arbre", "diametre_mm", "tolerance")),
    ("Artikel", ("Name", "Zeichnung", "Index"), "Lagerstellen", ("Lager", "Welle", "Durchmesser_mm", "Toleranz")),
    ("artículo", ("nombre", "plano", "índice"), "apoyos", ("rodamiento", "eje", "diámetro_mm", "tolerancia")),
    ("产品", ("名称", "图号", "版本"), "轴承位", ("轴承型号", "轴", "直径_mm", "公差带")),
    ("item", ("name", "dwg", "rev"), "bearings", ("bearing", "shaft", "diameter_mm", "fit")),
]


@pytest.mark.parametrize(("item", "keys", "positions", "words"), HEADS)
@pytest.mark.parametrize("turned", [False, True])
def test_an_item_with_its_drawing_in_a_header_is_no_value(tmp_path, item, keys, positions, words, turned):
    said = dict(zip(keys, ("Fan EF-4", "EF-762-267", "E"), strict=True))
    said = dict(reversed(said.items())) if turned else said
    listed = [
        {"position": at, words[0]: number, words[1]: {words[2]: d, words[3]: "k5"}}
        for at, number, d in (("A", "6204", 20), ("B", "6203", 17))
    ]
    reading = read(tmp_path, json.dumps({item: said, positions: listed}), "json")
    assert reading.stations.machines == ("Fan EF-4",)
    assert reading.stations.text("drawing_number").tolist() == ["EF-762-267"] * 2
    assert reading.stations.text("drawing_revision").tolist() == ["E"] * 2
    assert by_station(reading, "shaft_seat_diameter") == {"A": 20, "B": 17}
