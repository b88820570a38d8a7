"""JSON shapes of exports: seats that say position and part, attributes of machine and parts in one list, lists of values
for each position."""

import json

import pytest

from linter.reading import read_table

SIZES = {"shaft": (25, 20), "housing": (52, 47)}


def read(tmp_path, document):
    path = tmp_path / "t.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    return read_table(path).stations


def sizes(stations):
    return {part: tuple(stations.size(f"{part}_seat_diameter").nominal.tolist()) for part in ("shaft", "housing")}


@pytest.mark.parametrize(
    ("position", "part", "parts", "diameter", "roughness", "places"),
    [
        ("position", "part", ("shaft", "housing"), "diameter", "roughnessRa", ("DE", "NDE")),
        ("location", "component", ("Shaft", "Housing"), "nominalDiameter", "surfaceRoughnessRa", ("front", "rear")),
        ("Lagerstelle", "Bauteil", ("Welle", "Gehäuse"), "Durchmesser", "Rauheit Ra", ("AS", "BS")),
        ("位置", "零件", ("轴", "轴承座"), "直径", "粗糙度Ra", ("驱动端", "非驱动端")),
    ],
)
@pytest.mark.parametrize("key", ["seats", "bearing_positions"])
def test_seats_that_say_position_and_part(tmp_path, key, position, part, parts, diameter, roughness, places):
    bearings = [{position: place, "designation": d} for place, d in zip(places, ("6205-2Z", "6204-2Z"), strict=True)]
    seats = [
        {position: place, part: name, diameter: {"nominal": own[k], "fit": fit}, roughness: "0.8 µm"}
        for k, place in enumerate(places)
        for name, own, fit in zip(parts, SIZES.values(), ("k5", "H6"), strict=True)
    ]
    stations = read(tmp_path, {"machine": "M 4", "bearings": bearings, key: seats})
    assert len(stations) == 2
    assert sizes(stations) == SIZES
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 0.8]


@pytest.mark.parametrize(
    ("name", "value", "unit", "part", "position", "machine"),
    [
        ("name", "value", "unit", "part", "position", "Machine"),
        ("attribut", "valeur", "unité", "pièce", "palier", "Machine"),
        ("nombre", "valor", "unidad", "pieza", "apoyo", "Máquina"),
        ("Merkmal", "Wert", "Einheit", "Bauteil", "Lagerstelle", "Maschine"),
    ],
)
def test_attributes_of_machine_and_parts_in_one_list(tmp_path, name, value, unit, part, position, machine):
    words = {"en": ("Shaft", "Housing", "Diameter"), "fr": ("Arbre", "Logement", "Diamètre")}
    words |= {"es": ("Eje", "Alojamiento", "Diámetro"), "de": ("Welle", "Gehäuse", "Durchmesser")}
    shaft, housing, diameter = words[{"name": "en", "attribut": "fr", "nombre": "es", "Merkmal": "de"}[name]]
    records = [{name: machine, value: "M 4", unit: ""}]
    records += [
        {name: diameter, value: f"{own[k]} {fit}", unit: "mm", part: said, position: place}
        for k, place in enumerate(("A", "B"))
        for said, own, fit in zip((shaft, housing), SIZES.values(), ("k5", "H6"), strict=True)
    ]
    stations = read(tmp_path, records)
    assert stations.text("machine").tolist() == ["M 4", "M 4"]
    assert sizes(stations) == SIZES


def test_limits_beside_nominals_without_a_unit(tmp_path):
    document = {
        "machine": "M 4",
        "positions": [
            {"name": place, "shaft": {"diameter": {"nominal": d, "min": d + 0.002, "max": d + 0.011}},
             "housing": {"diameter": {"nominal": o, "min": o, "max": o + width}}}
            for place, d, o, width in zip(("DE", "NDE"), *SIZES.values(), (0.019, 0.016), strict=True)
        ],
    }  # fmt: skip
    stations = read(tmp_path, document)
    assert sizes(stations) == SIZES
    assert stations.size("shaft_seat_diameter").lower.round(4).tolist() == [0.002, 0.002]


@pytest.mark.parametrize(
    ("position", "places", "shaft", "housing"),
    [
        ("Lagerstelle", ("AS", "BS"), "Durchmesser Wellensitz", "Durchmesser Gehäusebohrung"),
        ("paliers", ("avant", "arrière"), "diametre_portee_arbre", "diametre_alesage_logement"),
        ("Supporto", ("lato motore", "lato ventola"), "Diametro sede albero", "Diametro sede alloggiamento"),
        ("Опора", ("передняя", "задняя"), "Диаметр шейки вала", "Диаметр отверстия корпуса"),
        ("位置", ("駆動側", "反駆動側"), "軸径", "ハウジング内径"),
        ("names", ("drive end", "non-drive end"), "shaftSeatDiameter", "housingBoreDiameter"),
    ],
)
@pytest.mark.parametrize("inside", [False, True])
def test_a_list_of_positions_beside_lists_of_their_values(tmp_path, position, places, shaft, housing, inside):
    columns = {position: list(places), shaft: ["25 k5", "20 j5"], housing: ["52 H6", "47 J6"]}
    document = {"machine": "M 4", "unit": "mm"} | ({"data": columns} if inside else columns)
    stations = read(tmp_path, document)
    assert stations.text("machine").tolist() == ["M 4", "M 4"]
    assert sizes(stations) == SIZES
    assert len(set(stations.text("station").tolist())) == 2
