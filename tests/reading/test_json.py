"""JSON: nested machines, records, flat keys, value and unit pairs; every value with its pointer."""

import json

import pytest

from linter.reading import InputError, read_table


def read(tmp_path, document):
    path = tmp_path / "t.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    return read_table(path)


def test_machine_with_stations(tmp_path):
    reading = read(
        tmp_path,
        {
            "machine": "M", "drawing_number": "D-1", "speed_max": 5000,
            "stations": [
                {"station": "A", "bore_diameter": 4, "shaft_seat_diameter": "4 k5"},
                {
                    "station": "B", "bore_diameter": 4,
                    "shaft_seat_diameter": {"nominal": 4, "upper": 0.006, "lower": 0.001},
                },
            ],
        },
    )  # fmt: skip
    stations = reading.stations
    assert stations.machines == ("M",)
    assert stations.number("speed_max").tolist() == [5000, 5000]
    assert stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.006, 0.006])
    assert stations.place("bore_diameter", 1).pointer == "/stations/1/bore_diameter"
    assert stations.place("speed_max", 1).pointer == "/speed_max"
    assert "JSON" in reading.layout


def test_several_machines_by_list_and_by_name(tmp_path):
    by_list = {
        "machines": [{"machine": m, "stations": {"A": {"bore_diameter": 4}, "B": {"bore_diameter": 5}}} for m in "PQ"]
    }
    by_name = {"machines": {m: {"stations": {"A": {"bore_diameter": 4}, "B": {"bore_diameter": 5}}} for m in "PQ"}}
    for document in (by_list, by_name):
        stations = read(tmp_path, document).stations
        assert stations.machines == ("P", "Q")
        assert stations.text("station").tolist() == ["A", "B", "A", "B"]
        assert stations.number("bore_diameter").tolist() == [4, 5, 4, 5]


def test_stations_without_a_name_are_counted_and_said(tmp_path):
    reading = read(tmp_path, {"machine": "M", "stations": [{"bore_diameter": 4}, {"bore_diameter": 5}]})
    assert reading.stations.text("station").tolist() == ["1", "2"]
    assert any("names no station" in note for note in reading.notes)


def test_records_with_units(tmp_path):
    records = [
        {"name": "Bore diameter", "value": 0.1575, "unit": "in", "machine": "M", "station": "A"},
        {"name": "speed_max", "value": "120000", "unit": "rpm", "machine": "M"},
        {
            "name": "Shaft seat diameter",
            "nominal": 4,
            "upper": 6,
            "lower": 1,
            "unit": "mm",
            "machine": "M",
            "station": "A",
        },
        {"name": "what is this", "value": 3, "machine": "M"},
    ]
    reading = read(tmp_path, records)
    assert reading.stations.number("bore_diameter").tolist() == pytest.approx([4.0005])
    assert reading.stations.number("speed_max").tolist() == [120000]
    assert [(u.name, u.place.pointer) for u in reading.unused] == [("what is this", "/3")]


def test_flat_keys_with_stations_in_them(tmp_path):
    document = {"machine": "M", "bore_diameter_A": 4, "bore_diameter_B": 5, "units": "mm"}
    stations = read(tmp_path, document).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("bore_diameter").tolist() == [4, 5]


def test_value_and_unit_pairs(tmp_path):
    document = {"machine": "M", "stations": [{"station": "A", "Bore": {"value": "0.4", "unit": "cm"}}]}
    assert read(tmp_path, document).stations.number("bore_diameter").tolist() == [4.0]


def test_file_level_units_and_results(tmp_path):
    document = {
        "units": {"length": "in"},
        "machine": "M",
        "stations": [{"station": "A", "Bore": 0.1575}],
        "results": {"bore_diameter": 99},
    }
    reading = read(tmp_path, document)
    assert reading.stations.number("bore_diameter").tolist() == pytest.approx([4.0005])
    assert [u.name for u in reading.unused] == ["results"]


def test_foreign_length_without_any_unit_is_not_used(tmp_path):
    reading = read(tmp_path, {"machine": "M", "stations": [{"station": "A", "Bore": 4.0}]})
    assert [p.code for p in reading.stations.problems] == ["unit-missing"]
    assert reading.stations.number("bore_diameter")[0] != reading.stations.number("bore_diameter")[0]


def test_null_lists_and_truth_values(tmp_path):
    document = {
        "machine": "M",
        "stations": [{"station": "A", "bore_diameter": None, "housing_split": False, "ball_count": [7]}],
    }
    reading = read(tmp_path, document)
    assert reading.stations.choice("housing_split").texts().tolist() == ["no"]
    assert reading.stations.problems == ()
    assert [u.name for u in reading.unused] == ["ball_count"]


def test_scalar_and_empty_documents(tmp_path):
    for document in ([], {}, [[]], [1, 2], {"a": []}):
        with pytest.raises(InputError, match="nothing-recognised"):
            read(tmp_path, document)


def test_records_that_name_machine_and_station_hold_for_those_behind(tmp_path):
    records = [
        {"name": "machine", "value": "M"},
        {"name": "speed_max", "value": 1000},
        {"name": "station", "value": "A"},
        {"name": "bore_diameter", "value": 4},
        {"name": "station", "value": "B"},
        {"name": "bore_diameter", "value": 5},
        {"name": "outside_diameter", "value": 11, "station": "A"},
    ]
    stations = read(tmp_path, records).stations
    assert stations.machines == ("M",)
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("bore_diameter").tolist() == [4, 5]
    assert stations.number("outside_diameter")[0] == 11
    assert stations.problems == ()


def test_keys_of_nothing_are_no_names(tmp_path):
    path = tmp_path / "t.json"
    path.write_text('{"machine": "M", "stations": {"A": {"bore_diameter": 4}}, "x": [[{"": "a", "v": 1}]]}', "utf-8")
    assert read_table(path).stations.number("bore_diameter").tolist() == [4]


def test_value_and_unit_under_keys_that_nobody_knows(tmp_path):
    document = [
        {"position": name, "bore diameter": {"q": 17, "eu": "mm"}, "widthB": {"q": 7.0, "eu": "mm"},
         "cylindricityShaftSeat": {"q": 3, "eu": "µm"}, "lubrication": {"q": "grease", "eu": ""},
         "temp_bearing_C": 60}
        for name in ("front", "rear")
    ]  # fmt: skip
    stations = read(tmp_path, document).stations
    assert stations.text("station").tolist() == ["front", "rear"]  # the B of widthB is its symbol there
    assert stations.number("bore_diameter").tolist() == [17, 17]
    assert stations.number("ring_width").tolist() == [7, 7]
    assert stations.number("shaft_seat_cylindricity").tolist() == [0.003, 0.003]
    assert stations.choice("lubrication").texts().tolist() == ["grease", "grease"]
    assert stations.number("operating_temperature").tolist() == [60, 60]


@pytest.mark.parametrize(
    "inner",
    [{"q": 17, "eu": "mm", "r": 18}, {"q": 17, "eu": "steel"}, {"q": 17, "eu": "mm", "s": "in"}],
    ids=["two values", "no unit", "two units"],
)
def test_an_object_that_may_hold_more_than_value_and_unit_is_not_read(tmp_path, inner):
    document = [
        {"position": p, "bore diameter": inner, "outside diameter": inner, "lubrication": "oil"} for p in ("A", "B")
    ]
    reading = read(tmp_path, document)
    assert not reading.stations.known("bore_diameter").any()
    assert {u.place.pointer for u in reading.unused} >= {"/0/bore diameter/q", "/1/outside diameter/q"}


def test_lists_by_part_with_foreign_names_in_camel_case(tmp_path):
    document = {
        "kopf": {"maschine": "M", "wellentemperatur_C": "40"},
        "подшипник": [{"местоУстановки": p, "наружныйДиаметрПодшипника_мм": "24"} for p in "АБ"],
        "вал": [{"местоУстановки": p, "диаметр_мм": "12h5", "шероховатостьRa_мкм": "0.4"} for p in "АБ"],
    }
    stations = read(tmp_path, document).stations
    assert stations.number("outside_diameter").tolist() == [24, 24]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [12, 12]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]
    assert stations.number("shaft_temperature").tolist() == [40, 40]
