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


def seats(stations, name):
    return stations.size(f"{name}_seat_diameter").nominal.tolist()


def test_positions_named_by_keys_that_stand_over_the_same_values(tmp_path):
    position = {"bearing": {"designation": "608", "C": "3.45 kN"}, "shaft": {"seat": "8 k5", "runout": "5 µm"}}
    reading = read(tmp_path, {"machine": "M", "revision": "C", "bearingArrangement": {"P1": position, "P2": position}})
    assert reading.stations.text("station").tolist() == ["P1", "P2"]
    assert reading.stations.number("dynamic_rating").tolist() == [3450, 3450]
    assert seats(reading.stations, "shaft") == [8, 8]
    assert [p.code for p in reading.stations.problems].count("station-key") == 2
    drives = {"speed_max": 9000, "rotor_mass": 2}
    other = read(tmp_path, {"station": "A", "bore_diameter": 8, "drives": {"motor": drives, "gearbox": drives}})
    assert "gearbox" not in other.stations.text("station").tolist()  # no values of a bearing


def test_records_with_a_key_for_each_station(tmp_path):
    values = (("Bearing bore", 8, 7), ("Bearing OD", 22, 19), ("Shaft seat", "8 k5", "7 k5"))
    items = [{"name": name, "unit": "mm", "A": a, "B": b} for name, a, b in values]
    stations = read(tmp_path, {"machine": "M", "items": items}).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("outside_diameter").tolist() == [22, 19]
    lone = read(tmp_path, [{"station": "X", "bore_diameter": 8, "notes": {"A": 17, "B": 15}}])
    assert not lone.stations.known("ring_width").any()  # B beside A is no width


def test_attributes_of_parts_with_a_key_for_part_and_position(tmp_path):
    attributes = [
        {"pos": pos, "part": part, "attr": attr, "val": value, "u": unit}
        for pos in "AB"
        for part, attr, value, unit in (
            ("Shaft", "Seat diameter", 8, "mm"), ("Shaft", "Fit", "k5", None), ("Shaft", "Cylindricity", 3, "µm"),
            ("Housing", "Bore diameter", 22, "mm"), ("Housing", "Cylindricity", 4, "µm"),
        )
    ]  # fmt: skip
    stations = read(tmp_path, {"attributes": attributes}).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([8, 8], [22, 22])
    assert stations.number("housing_seat_cylindricity").tolist() == pytest.approx([0.004, 0.004])
    assert not stations.known("ring_width").any()


def test_one_object_for_each_seat(tmp_path):
    rows = [
        {"part": part, "position": pos, "diameter_mm": d, "tolerance": fit, "Ra_um": 0.4}
        for pos in "AB"
        for part, d, fit in (("Shaft", 8, "k5"), ("Housing", 22, "H6"))
    ]
    flat = read(tmp_path, rows).stations
    assert (seats(flat, "shaft"), seats(flat, "housing")) == ([8, 8], [22, 22])
    assert flat.number("housing_seat_roughness").tolist() == [0.4, 0.4]
    nested = read(tmp_path, {"stations": [{"station": pos, "seats": rows[:2]} for pos in "AB"]}).stations
    assert nested.text("station").tolist() == ["A", "B"]


def test_lists_of_values_beside_a_list_of_positions(tmp_path):
    values = {"bore_mm": [8, 7], "shaft_seat": ["8 k5", "7 k5"], "width_mm": [7, 6]}
    stations = read(tmp_path, {"machine": "M", "positions": ["A", "B"], **values}).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("ring_width").tolist() == [7, 6]
    assert stations.place("ring_width", 1).pointer == "/width_mm/1"


def test_a_unit_with_a_slash_is_no_step_of_a_path(tmp_path):
    document = {"A.Bearing.Bearing": "180205", "A.Bearing.Limiting speed, 1/min": 9000, "A.Shaft.Seat diameter, mm": 25,
                "B.Bearing.Bearing": "6205", "B.Bearing.Limiting speed, 1/min": 8000}  # fmt: skip
    stations = read(tmp_path, document).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("limiting_speed").tolist() == [9000, 8000]


def seat(n, es, ei):
    return {"diameter": {"nominal": n, "es": es, "ei": ei}}


@pytest.mark.parametrize("frame", [None, "payload", "results"])
def test_positions_by_what_is_stated_of_them_under_any_key(tmp_path, frame):
    own = {
        "Motorseite": {"bearing": {"code": "608"}, "shaft": seat(8, 0.007, 0.001), "housing": seat(22, 0.013, 0)},
        "Messerseite": {"bearing": {"code": "626"}, "shaft": seat(6, 0.006, 0.001), "housing": seat(19, 0.013, 0)},
    }
    document = {"meta": {"author": "x", "units": {"length": "mm", "load": "kN"}}, "machine": "M", **own}
    stations = read(tmp_path, document if frame is None else {frame: document}).stations
    assert stations.text("station").tolist() == ["Motorseite", "Messerseite"]
    assert seats(stations, "shaft") == [8, 6]
    assert stations.size("housing_seat_diameter").upper.tolist() == pytest.approx([0.013, 0.013])
    by_list = read(tmp_path, {"units": "mm", "x": [{"etikett": k, **v} for k, v in own.items()]})
    assert by_list.stations.text("station").tolist() == ["Motorseite", "Messerseite"]
    assert "station-key" in [p.code for p in by_list.stations.problems]


@pytest.mark.parametrize(
    "keys", [("design", "measured"), ("rev A", "rev B"), ("cold", "hot"), ("inner ring", "outer ring"), ("min", "max")]
)
def test_statements_of_one_position_are_no_positions(tmp_path, keys):
    values = {"bore_diameter": 8, "ring_width": 7, "shaft_seat_diameter": "8 k5"}
    for document in (dict.fromkeys(keys, values), [{"variant": key, **values} for key in keys]):
        stations = read(tmp_path, {"machine": "M", "x": document}).stations
        assert len(stations.text("station")) == 1


def test_machines_by_their_own_keys(tmp_path):
    ends = {end: {"bearing": "608", "shaft seat diameter": "8 k5", "radial load": "30 N"} for end in ("left", "right")}
    two = read(tmp_path, {"Reel 4": {"speed_max": 900, **ends}, "Reel 5": {"speed_max": 800, **ends}}).stations
    assert two.text("machine").tolist() == ["Reel 4", "Reel 4", "Reel 5", "Reel 5"]
    assert two.number("speed_max").tolist() == [900, 900, 800, 800]
    assert read(tmp_path, {"rotor": {"name": "R2", "ends": ends}}).stations.text("machine").tolist() == ["R2", "R2"]


@pytest.mark.parametrize(
    "stated",
    [
        [7.995, 8.001],
        [8, 0.001, -0.005],
        [8, -0.005, 0.001, "mm"],
        {"Nennmass": 8, "Abmasse": {"oberes Abmass": 0.001, "unteres Abmass": -0.005}},
        {"size": {"value": 8, "unit": "mm"}, "tolerance": {"type": "ISO", "upper": 1, "lower": -5, "unit": "µm"}},
        {"limits": {"max": 8.001, "min": 7.995}},
        {"nominale": 8, "scostamento superiore": 0.001, "scostamento inferiore": -0.005, "unità": "mm"},
        {"nominal": 8, "tolerance": [-0.005, 0.001]},
    ],
)
def test_a_size_with_its_deviations_as_an_object_or_a_list(tmp_path, stated):
    stations = read(tmp_path, {"length_unit": "mm", "station": "A", "shaft seat": stated, "bore": "8 mm"}).stations
    size = stations.size("shaft_seat_diameter")
    assert size.nominal[0] + size.upper[0] == pytest.approx(8.001)
    assert size.nominal[0] + size.lower[0] == pytest.approx(7.995)


def test_lists_that_are_no_size_are_told(tmp_path):
    for values in ([8, 22], [8.0, 8.001, 8.002, 8.003], [True, 8], [8, 0.001, 7.9]):
        reading = read(tmp_path, {"length_unit": "mm", "station": "A", "shaft seat": values, "bore": "8 mm"})
        assert not reading.stations.known("shaft_seat_diameter").any()
        assert "/shaft seat" in [u.place.pointer for u in reading.unused]


def test_units_of_quantities_beside_a_document(tmp_path):
    values = {"bore": 8, "radial load": 0.2, "dynamic rating": 3.3, "shaft seat roughness": 0.4, "radial clearance": 8}
    said = {"length": "mm", "load": "kN", "roughness": "µm"}
    stations = read(tmp_path, {"units": said, "A": values, "B": values}).stations
    assert stations.number("radial_load").tolist() == [200, 200]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]
    assert not stations.known("radial_clearance").any()  # its unit is not that of sizes
    two = read(tmp_path, {"units": said | {"life load": "N"}, "A": values, "B": values})
    assert not two.stations.known("radial_load").any()
    assert "/A/radial load" in [p.place.pointer for p in two.stations.problems if p.place]
    bare = read(tmp_path, {"unit": "mm", "station": "A", "bore": 8, "shaft seat roughness": 0.4}).stations
    assert bare.number("shaft_seat_roughness").tolist() == [0.4]  # µm by custom, never 400


def test_parameters_over_positions_and_rows_by_number(tmp_path):
    by_name = {"machine": "M", "shaft seat": {"vorne": "8 k5", "hinten": "7 k5"}, "bore": {"vorne": 8, "hinten": 7}}
    stations = read(tmp_path, {"unit": "mm", **by_name}).stations
    assert stations.text("station").tolist() == ["vorne", "hinten"]
    assert seats(stations, "shaft") == [8, 7]
    assert stations.place("bore_diameter", 1).pointer == "/bore/hinten"
    columns = {"pos": {"0": "A", "1": "B"}, "bore_mm": {"0": 8, "1": 7}, "shaft_seat": {"0": "8 k5", "1": "7 k5"}}
    stations = read(tmp_path, columns).stations
    assert (stations.text("station").tolist(), seats(stations, "shaft")) == (["A", "B"], [8, 7])
    assert stations.place("bore_diameter", 1).pointer == "/bore_mm/1"


def test_items_in_one_more_object_and_rows_without_keys(tmp_path):
    nodes = [{"node": {"positionLabel": p, "bearing": {"code": "608"}, "shaftSeat": "8 k5"}} for p in ("I", "II")]
    stations = read(tmp_path, {"data": {"rotor": {"name": "R2", "ends": {"edges": nodes}}}}).stations
    assert (stations.text("station").tolist(), stations.text("machine").tolist()) == (["I", "II"], ["R2", "R2"])
    rows = [
        [f"{p} {name}", value, unit]
        for p in "AB"
        for name, value, unit in (("bore", 8, "mm"), ("radial load", 30, "N"))
    ]
    stations = read(tmp_path, {"params": rows}).stations
    assert stations.number("bore_diameter").tolist() == [8, 8]
    assert stations.place("radial_load", 1).pointer == "/params/3/1"


@pytest.mark.parametrize("ends", [("fixed side", "free side"), ("Drive end (DE)", "Non-drive end (NDE)"), ("L1", "L2")])
def test_names_with_the_position_in_brackets(tmp_path, ends):
    values = (("Bearing designation", "608", None), ("Shaft seat diameter", "8 k5", "mm"), ("Axial load", 5, "N"))
    items = [{"n": f"{n} ({end})", "v": value, "u": unit} for end in ends for n, value, unit in values]
    stations = read(tmp_path, {"part": "X", "props": items}).stations
    assert stations.text("station").tolist() == list(ends)
    assert seats(stations, "shaft") == [8, 8]


def test_parts_of_unknown_names_by_the_size_of_their_bearing(tmp_path):
    def end(shaft, housing):
        shaft, housing = ({"dia": d, "tol": fit, "ra": 0.4} for d, fit in ((shaft, "k5"), (housing, "H6")))
        return {"brg": {"desig": "608", "clr": "C3"}, "wl": shaft, "gh": housing}

    reading = read(tmp_path, {"unit": "mm", "A": end(8, 22), "B": end(8, 22)})
    assert (seats(reading.stations, "shaft"), seats(reading.stations, "housing")) == ([8, 8], [22, 22])
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]
    assert reading.stations.choice("clearance_class").texts().tolist() == ["C3", "C3"]
    assert [p.code for p in reading.stations.problems].count("part-by-size") == 4
    other = read(tmp_path, {"unit": "mm", "A": end(9, 23), "B": end(9, 23)})  # of no ring of a 608
    assert not other.stations.known("shaft_seat_diameter").any()
    assert not other.stations.known("shaft_fillet_radius").any()  # ra may be Ra or r_a
    assert {"/A/wl/dia", "/A/wl/ra"} <= {u.place.pointer for u in other.unused}


def test_an_unknown_name_of_a_value_with_its_unit_is_told_by_that_name(tmp_path):
    values = {"bore": {"v": 8, "u": "mm"}, "Welldings": {"v": "8 k5", "u": "mm"}, "bearing": {"v": "608"}}
    reading = read(tmp_path, {"A": values, "B": values})
    assert ("Welldings", "/A/Welldings/v") in [(u.name, u.place.pointer) for u in reading.unused]
    assert reading.stations.text("bearing_designation").tolist() == ["608", "608"]


def test_half_a_tolerance_units_in_small_letters_and_the_thing_that_a_document_is_of(tmp_path):
    end = {
        "shaft seat": {"nominal": 8, "plus_minus": 0.003, "unit": "mm"},
        "dynamic_rating_kn": 3.3,
        "radial_load_n": 30,
    }
    ends = {"A": end, "B": end}
    stations = read(tmp_path, {"item": {"name": "Reel 4"}, "author": {"name": "Somebody"}, **ends}).stations
    assert stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.003, 0.003])
    assert stations.size("shaft_seat_diameter").lower.tolist() == pytest.approx([-0.003, -0.003])
    assert stations.number("dynamic_rating").tolist() == [3300, 3300]
    assert stations.text("machine").tolist() == ["Reel 4", "Reel 4"]
