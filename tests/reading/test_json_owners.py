"""JSON records of which each says whose its value is: the machine, or one of its positions, under any key."""

import json

import pytest

from linter.reading import read_table

MACHINE = [("Name", "Strip winder SW-2", ""), ("Drawing number", "7122-613", ""), ("Maximum speed", 4800, "rpm")]
SEATS = {
    "A": [("Designation", "7205C", ""), ("Radial load", 230, "N"), ("Shaft seat diameter", "25 js5", "mm"),
          ("Housing bore diameter", "52 K6", "mm")],
    "B": [("Designation", "7204C", ""), ("Radial load", 370, "N"), ("Shaft seat diameter", "20 js5", "mm"),
          ("Housing bore diameter", "47 K6", "mm")],
}  # fmt: skip
GERMAN = {
    "Name": "Name", "Drawing number": "Zeichnungsnummer", "Maximum speed": "Maximale Drehzahl",
    "Designation": "Bezeichnung", "Radial load": "Radiallast", "Shaft seat diameter": "Wellensitz Durchmesser",
    "Housing bore diameter": "Gehäusebohrung Durchmesser",
}  # fmt: skip
#: What stands for the machine, and for its positions.
OWNERS = [
    ("Machine", "A", "B"), ("Machine", "Bearing A", "Bearing B"),
    ("Assembly", "Bearing position A", "Bearing position B"), ("Winder", "DE", "NDE"),
    ("Rotor", "DE bearing", "NDE bearing"), ("General", "Front bearing", "Rear bearing"),
]  # fmt: skip
KEYS = [
    ("object", "attribute", "value", "uom"), ("location", "characteristic", "value", "unit"),
    ("owner", "name", "value", "unit"), ("component", "parameter", "value", "unit"),
    ("element", "property", "val", "units"), ("scope", "name", "value", "unit"),
]  # fmt: skip


def rows_of(owners):
    machine, *places = owners
    rows = [(machine, *row) for row in MACHINE]
    return rows + [(place, *row) for place, own in zip(places, SEATS.values(), strict=True) for row in own]


def judge(tmp_path, document, *, machine=True):
    path = tmp_path / "table.json"
    path.write_text(json.dumps(document, ensure_ascii=False), "utf-8")
    stations = read_table(path).stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [52, 47]
    assert stations.number("radial_load").tolist() == [230, 370]
    assert stations.text("bearing_designation").tolist() == ["7205C", "7204C"]
    assert stations.number("speed_max").tolist() == [4800, 4800]
    assert stations.text("drawing_number").tolist() == ["7122-613"] * 2
    assert not machine or stations.machines == ("Strip winder SW-2",)
    return stations


@pytest.mark.parametrize("keys", KEYS)
@pytest.mark.parametrize("owners", OWNERS)
def test_records_that_say_whose_they_are(tmp_path, keys, owners):
    records = [dict(zip(keys, row, strict=True)) for row in rows_of(owners)]
    judge(tmp_path, {"documentType": "parameter set", "parameters": records})


@pytest.mark.parametrize("key", ["Objekt", "Ort", "Bauteil", "Zuordnung"])
@pytest.mark.parametrize("owners", [("Maschine", "Lager A", "Lager B"), ("Rotor", "Festlager", "Loslager")])
def test_records_in_german(tmp_path, key, owners):
    keys = (key, "Merkmal", "Wert", "Einheit")
    records = [dict(zip(keys, (of, GERMAN[name], *rest), strict=True)) for of, name, *rest in rows_of(owners)]
    judge(tmp_path, {"Parameter": records})


@pytest.mark.parametrize("owners", OWNERS)
def test_rows_that_say_whose_they_are(tmp_path, owners):
    heads = ["object", "attribute", "value", "unit"]
    judge(tmp_path, [heads, *map(list, rows_of(owners))])
    judge(tmp_path, {"columns": heads, "rows": [*map(list, rows_of(owners))]})


@pytest.mark.parametrize("places", [("A", "B"), ("DE", "NDE"), ("Front bearing", "Rear bearing")])
def test_lists_of_name_value_and_unit_below_each_position(tmp_path, places):
    of_places = {place: [*map(list, own)] for place, own in zip(places, SEATS.values(), strict=True)}
    judge(tmp_path, {"machine": "Strip winder SW-2", "data": {"general": [*map(list, MACHINE[1:])], **of_places}})


def test_the_place_of_a_bearing_is_called_by_its_position(tmp_path):
    keys = ("object", "attribute", "value", "uom")
    records = [dict(zip(keys, row, strict=True)) for row in rows_of(("Machine", "Bearing A", "Bearing B"))]
    assert judge(tmp_path, {"parameters": records}).text("station").tolist() == ["A", "B"]


def test_a_thing_beside_the_positions_is_none_of_them(tmp_path):
    rows = [*rows_of(("Machine", "A", "B")), ("Impeller", "Bore diameter", 12, "mm")]
    records = [dict(zip(("object", "attribute", "value", "uom"), row, strict=True)) for row in rows]
    path = tmp_path / "table.json"
    path.write_text(json.dumps({"parameters": records}), "utf-8")
    reading = read_table(path)
    assert not [u for u in reading.understood if u.place.pointer and u.place.pointer.startswith("/parameters/11/")]


def test_a_name_in_french_is_no_nominal_value(tmp_path):
    def records(rows):
        return [{"nom": name, "valeur": value, "unite": unit} for name, value, unit in rows]

    machine = [("Machine", "Pompe PR 20", ""), ("N° de plan", "7122-613", ""), ("Vitesse max", 4800, "tr/min")]
    seats = [("Charge radiale", "N"), ("Diamètre de la portée d'arbre", "mm"), ("Diamètre du logement", "mm")]
    places = [
        {"position": place, "attributs": records([("Roulement", own[0][1], ""), *((n, v[1], u) for (n, u), v in of)])}
        for place, own in SEATS.items()
        for of in [zip(seats, own[1:], strict=True)]
    ]
    stations = judge(tmp_path, {"attributs": records(machine), "composants": places}, machine=False)
    assert stations.machines == ("Pompe PR 20",)
