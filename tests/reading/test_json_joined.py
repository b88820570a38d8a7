"""JSON whose lists refer to each other, tables that stand in it as lists, and positions below a part."""

import json

import pytest

from linter.reading import read_table

ENDS = (("Front end", "6205-2Z", 25, 52), ("Rear end", "6204-2Z", 20, 47))


def read(tmp_path, document):
    path = tmp_path / "t.json"
    path.write_text(json.dumps(document, ensure_ascii=False), encoding="utf-8")
    reading = read_table(path)
    for used in reading.understood:
        _value(document, used.place.pointer)  # stands in the file
    return reading.stations


def _value(node, pointer):
    for step in pointer.split("/")[1:]:
        step = step.replace("~1", "/").replace("~0", "~")
        node = node[int(step)] if isinstance(node, list) else node[step]
    return node


def judge(stations, names=("Front end", "Rear end")):
    assert tuple(stations.text("station")) == names
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [52, 47]


WORDS = {
    "en": ("machines", "machineId", "positions", "positionId", "seats", "part", "shaft", "housing", "nominal", "fit"),
    "de": ("Maschinen", "Maschine", "Lagerstellen", "Lagerstelle", "Sitze", "Bauteil", "Welle", "Gehäuse", "Nennmaß",
           "Passung"),
    "it": ("macchine", "id_macchina", "supporti", "supporto_id", "sedi", "pezzo", "albero", "alloggiamento", "nominale",
           "accoppiamento"),
    "ru": ("машины", "машина_ид", "опоры", "опора_ид", "посадки", "деталь", "вал", "корпус", "номинал", "посадка"),
    "zh": ("机器", "机器编号", "轴承位", "轴承位编号", "配合面", "零件", "轴", "轴承座", "公称尺寸", "配合"),
}  # fmt: skip


@pytest.mark.parametrize("language", WORDS)
@pytest.mark.parametrize("number", [lambda k: k, "P-{}".format])
def test_lists_that_refer_to_each_other_are_one_tree(tmp_path, language, number):
    machines, of_machine, positions, of_position, seats, part, shaft, housing, nominal, fit = WORDS[language]
    document = {
        machines: [{"id": number(1), "name": "Fan F-2"}],
        positions: [{"id": number(11 + k), of_machine: number(1), "name": end[0]} for k, end in enumerate(ENDS)],
        seats: [
            {"id": number(100 + 2 * k + n), of_position: number(11 + k), part: said,
             nominal: end[2 + n], fit: ("k5", "H6")[n]}
            for k, end in enumerate(ENDS)
            for n, said in enumerate((shaft, housing))
        ],
    }  # fmt: skip
    stations = read(tmp_path, document)
    judge(stations)
    assert stations.machines == ("Fan F-2",)
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", "k5"]


def test_a_position_gets_the_bearing_that_it_refers_to(tmp_path):
    document = {
        "machines": {"M1": {"name": "Fan F-2"}, "M2": {"name": "Fan F-3"}},
        "bearings": [{"bearing_id": "B1", "designation": "6205-2Z"}, {"bearing_id": "B2", "designation": "6204-2Z"}],
        "positions": [
            {"position_id": f"{m}{end[0]}", "machine": m, "label": end[0], "bearing_id": f"B{k}"}
            for m in ("M1", "M2") for k, end in enumerate(ENDS, 1)
        ],
        "shaft_seats": [{"position_id": f"{m}{e[0]}", "nominal_mm": e[2]} for m in ("M1", "M2") for e in ENDS],
    }  # fmt: skip
    stations = read(tmp_path, document)
    assert stations.machines == ("Fan F-2", "Fan F-3")
    assert stations.text("bearing_designation").tolist() == ["6205-2Z", "6204-2Z"] * 2
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20] * 2


def test_what_refers_to_nothing_is_told(tmp_path):
    path = tmp_path / "t.json"
    rows = [{"positionId": k, "part": "shaft", "nominal": d, "fit": "k5"} for k, d in ((11, 25), (12, 20), (14, 30))]
    document = {"positions": [{"id": 11, "name": "DE"}, {"id": 12, "name": "NDE"}], "seats": rows}
    path.write_text(json.dumps(document), encoding="utf-8")
    reading = read_table(path)
    assert reading.stations.text("station").tolist() == ["DE", "NDE"]
    told = [u for u in reading.unused if u.place.pointer.startswith("/seats/2")]
    told += [p for p in reading.stations.problems if p.place and p.place.pointer.startswith("/seats/2")]
    assert told


def table(key_of_heads, key_of_rows, heads, rows):
    return {"machine": "Fan F-2", "units": "mm", key_of_heads: heads, key_of_rows: rows}


HEADS = ("Position", "Bearing", "Shaft seat", "Housing seat")
ROWS = [[name, bearing, f"{d} k5", f"{big} H6"] for name, bearing, d, big in ENDS]


@pytest.mark.parametrize("document", [
    table("columns", "rows", [*HEADS], ROWS),
    table("Spalten", "Zeilen", [*HEADS], ROWS),
    table("columns", "rows", [{"name": head, "type": "text"} for head in HEADS], ROWS),
    table("cols", "data", [{"key": f"c{k}", "title": head} for k, head in enumerate(HEADS)],
          [{f"c{k}": cell for k, cell in enumerate(row)} for row in ROWS]),
    table("columns", "rows", [*HEADS], [{"no": k, "cells": row} for k, row in enumerate(ROWS)]),
    table("cols", "rows", [{"label": head} for head in HEADS], [{"c": [{"v": cell} for cell in row]} for row in ROWS]),
    {"machine": "Fan F-2", "tables": [{"id": "t1", "columns": [*HEADS], "rows": ROWS}]},
    {"machine": "Fan F-2", "sheet": [[*HEADS], *ROWS]},
    {"columns": [{"name": h, "values": [*cells]} for h, cells in zip(HEADS, zip(*ROWS, strict=True), strict=True)]},
    {"type": "FeatureCollection", "features": [
        {"type": "Feature", "id": k, "geometry": None, "properties": dict(zip(HEADS, row, strict=True))}
        for k, row in enumerate(ROWS, 1)
    ]},
])  # fmt: skip
def test_tables_that_stand_as_lists_are_rows(tmp_path, document):
    stations = read(tmp_path, document)
    judge(stations)
    assert stations.text("bearing_designation").tolist() == ["6205-2Z", "6204-2Z"]


@pytest.mark.parametrize("ends", [
    ("Front end", "Rear end"), ("gear_side", "turbine_side"), ("Palier avant", "Palier arrière"), ("前轴承", "后轴承"),
])  # fmt: skip
@pytest.mark.parametrize("words", [("nominal", "fit", "es", "ei"), ("Nennmaß", "Passung", "ob. Abmaß", "unt. Abmaß"),
                                   ("nominal size", "class", "upper dev.", "lower dev.")])  # fmt: skip
def test_positions_below_a_part_have_the_size_of_their_seat(tmp_path, ends, words):
    def sizes(*numbers):
        return {end: dict(zip(words, values, strict=True)) for end, values in zip(ends, numbers, strict=True)}

    stations = read(tmp_path, {
        "machine": "Fan F-2", "units": "mm",
        "shaft": sizes((25, "k5", 0.011, 0.002), (20, "k5", 0.011, 0.002)),
        "housing": sizes((52, "H6", 0.019, 0), (47, "J6", 0.01, -0.006)),
    })  # fmt: skip
    judge(stations, ends)
    assert stations.size("housing_seat_diameter").lower.tolist() == [0, -0.006]


def test_features_below_a_part_are_no_positions(tmp_path):
    shaft = {"seat": {"nominal": 25, "fit": "k5"}, "shoulder": {"nominal": 31, "fit": "h11"}}
    stations = read(tmp_path, {"machine": "F", "station": "A", "units": "mm", "shaft": shaft})
    assert stations.text("station").tolist() == ["A"]


@pytest.mark.parametrize("tolerance", ["tolerance", "Toleranz", "tolérance", "допуск"])
def test_a_tolerance_as_an_object_beside_records_without_one(tmp_path, tolerance):
    records = []
    for name, _, d, big in ENDS:
        records += [
            {"part": part, "position": name, "feature": "seat diameter", "nominal": size, "unit": "mm",
             tolerance: {"upper": 0.01, "lower": 0.0}}
            for part, size in (("shaft", d), ("housing", big))
        ]  # fmt: skip
        records.append({"part": "shaft", "position": name, "feature": "shoulder diameter", "nominal": d + 5,
                        "unit": "mm", tolerance: None})  # fmt: skip
    stations = read(tmp_path, {"machine": "Fan F-2", "features": records})
    judge(stations)
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [30, 25]
    assert stations.size("shaft_seat_diameter").upper.tolist() == [0.01, 0.01]
