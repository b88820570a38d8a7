"""JSON as scripts, firms' stores of parts and web services write it: keys in any case, objects by part and feature."""

import json

import pytest

from linter.command.tables import find_tables
from linter.reading import read_table
from linter.reading.words.headings import Words
from linter.reading.words.names import Names


def read(tmp_path, document):
    path = tmp_path / "t.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    return read_table(path).stations


@pytest.mark.parametrize(
    ("document", "found"),
    [
        ({"$schema": "https://firm.example/rotor.json", "machine": "M", "stations": []}, True),
        ({"$schema": "http://json-schema.org/draft-07/schema#", "type": "object", "required": []}, False),
        ({"$id": "x", "properties": {"bore": {"type": "number"}}}, False),
    ],
)
def test_a_document_that_names_its_schema_is_no_schema(tmp_path, document, found):
    (tmp_path / "t.json").write_text(json.dumps(document), encoding="utf-8")
    assert bool(find_tables([tmp_path]).found) is found


@pytest.mark.parametrize(
    ("key", "parameter", "unit"),
    [
        ("speedMaxRpm", "speed_max", "rpm"),
        ("tempMaxC", "temperature_max", "degC"),
        ("tAmbDegC", "ambient_temperature", "degC"),
        ("locknutTorqueNm", "nut_torque", "N.m"),
        ("preloadForceKN", "preload_force", "kN"),
        ("shaftDiaIn", "shaft_seat_diameter", "in"),
        ("requiredLifeHours", "required_life", "h"),
        ("rotor-mass-kg", "rotor_mass", "kg"),
        ("shaft-seat-mm", "shaft_seat_diameter", "mm"),
    ],
)
def test_units_at_the_end_of_keys_without_blanks(key, parameter, unit):
    heading = Words(Names()).heading(key)
    assert heading is not None and (heading.parameter, heading.unit, heading.station) == (parameter, unit, "")


@pytest.mark.parametrize("key", ["raUm", "RoughnessRaUm", "roughness_ra_um"])
def test_features_beside_the_nominal_of_a_part(tmp_path, key):
    ends = [
        {"position": name, "shaft": {"nominal": "12 k6", key: 0.4}, "housingSeat": {"nominal": "32 H7", key: 0.8}}
        for name in ("front", "rear")
    ]
    stations = read(tmp_path, {"machine": "M", "stations": ends})
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 0.8]


SEATS = {
    "deviations": {"journal": {"diameter": 4.0, "tolerance": {"plus": 0, "minus": -0.005}},
                   "bore": {"diameter": 13.0, "tolerance": {"plus": 0.008, "minus": 0}}},
    "limits": {"journalDia": {"min": 3.995, "max": 4.0}, "boreDia": {"min": 13.0, "max": 13.008}},
    "part": {"轴": {"公称直径": 4, "上偏差": 0, "下偏差": -0.005},
             "孔": {"公称直径": 13, "上偏差": 0.008, "下偏差": 0}},
    "class": {"shaftSeat": {"nom": 4, "fit": "h5"}, "bore": {"nom": 13, "fit": "H5"}},
}  # fmt: skip


@pytest.mark.parametrize("form", list(SEATS))
def test_the_bore_beside_the_seat_of_the_shaft_is_that_of_the_housing(tmp_path, form):
    """The bearing's sizes show the unit: 624 has a bore of 4 mm and an outside diameter of 13 mm."""
    ends = {name: {"bearing": "624-2Z", **SEATS[form]} for name in ("front", "rear")}
    stations = read(tmp_path, {"machine": "M", "bearings": ends})
    for name, low, high in (("shaft", 3.995, 4.0), ("housing", 13.0, 13.008)):
        size = stations.size(f"{name}_seat_diameter")
        assert (size.nominal + size.lower).tolist() == pytest.approx([low, low])
        assert (size.nominal + size.upper).tolist() == pytest.approx([high, high])
    assert stations.number("bore_diameter").tolist() == [4, 4]


def test_deviations_of_the_ring_itself_are_no_bore(tmp_path):
    ring = {"bore": {"nominal": 17, "upper": 0, "lower": -0.008}, "od": 40}
    ends = [{"position": p, "bearing": ring, "shaft_seat_mm": "17 k5"} for p in ("front", "rear")]
    stations = read(tmp_path, {"machine": "M", "units": "mm", "stations": ends})
    assert stations.number("bore_diameter").tolist() == [17, 17]
    assert "housing_seat_diameter" not in stations.toleranced


@pytest.mark.parametrize("over", ["speed", "Drehzahl", "vitesse"])
def test_a_limit_inside_an_object_names_its_value_with_the_key_around_it(tmp_path, over):
    document = {
        "machine": "M", over: {"max": 3600, "unit": "rpm"}, "temperature": {"min": -10, "max": 90, "unit": "degC"},
        "stations": [{"station": "A", "bearing": "6203-2Z"}],
    }  # fmt: skip
    stations = read(tmp_path, document)
    assert stations.number("speed_max").tolist() == [3600]
    assert stations.number("temperature_min").tolist() == [-10]
    assert stations.number("temperature_max").tolist() == [90]


@pytest.mark.parametrize("ends", [("oben", "unten"), ("upper", "lower"), ("上", "下")])
def test_positions_whose_keys_may_say_a_part_of_a_size(tmp_path, ends):
    about = {"Lager": "6203-2Z", "Passung Innenring": "17 k5", "Radiallast": "2 kN"}
    stations = read(tmp_path, {"Maschine": "M", "Lagerstellen": dict.fromkeys(ends, about)})
    assert stations.text("station").tolist() == list(ends)
    assert stations.number("radial_load").tolist() == [2000, 2000]


@pytest.mark.parametrize(("one", "other"), [("frDE_N", "frNDE_N"), ("Fr_A", "Fr_B"), ("FrFront", "FrRear")])
def test_positions_right_behind_a_symbol(tmp_path, one, other):
    stations = read(tmp_path, {"machine": "M", one: 800, other: 520})
    assert sorted(stations.number("radial_load").tolist()) == [520, 800]


@pytest.mark.parametrize(
    ("fit", "unit", "expected"),
    [(17, "", 17.0), (0.6693, "", 0.6693 * 25.4), (19.0, "", None), (17, "mm", 17.0)],
)
def test_sizes_without_a_unit_by_the_bearing_beside_them(tmp_path, fit, unit, expected):
    about = {"bearing": "6203-2Z", "shaft seat" + (f" [{unit}]" if unit else ""): fit}
    stations = read(tmp_path, {"machine": "M", "stations": [{"station": "A", **about}]})
    size = stations.toleranced.get("shaft_seat_diameter")
    stated = None if size is None or size.nominal[0] != size.nominal[0] else float(size.nominal[0])
    assert stated == pytest.approx(expected) if expected else stated is None


def test_what_all_items_of_a_list_hold_under_a_key_says_what_it_means(tmp_path):
    """A running number is no bore, and a mark of the store no position."""
    rows = [
        {"id": k, "fields": {"location": name, "type": number, "Bore Fit": f"{size} H6", "od": size, "function": role}}
        for k, (name, number, size, role) in enumerate(
            [("fan end", "6203", 40, "locating"), ("pump end", "6202", 35, "floating")], 1
        )
    ]
    stations = read(tmp_path, {"machine": "M", "units": "mm", "records": rows})
    assert stations.text("station").tolist() == ["fan end", "pump end"]
    assert stations.text("bearing_designation").tolist() == ["6203", "6202"]
    assert stations.number("bore_diameter").tolist() == [17, 15]  # of the bearing
    assert stations.choice("axial_role").is_in("locating").tolist() == [True, False]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [40, 35]


@pytest.mark.parametrize("key", ["Assieme", "unidad", "set"])
def test_what_keeps_equal_positions_apart_is_the_machine(tmp_path, key):
    rows = [
        {key: machine, "position": end, "shaft seat [mm]": f"{size} k5", "load [N]": size}
        for machine, size in (("Pump one", 20), ("Pump two", 25))
        for end in ("DE", "NDE")
    ]
    stations = read(tmp_path, rows)
    assert stations.machines == ("Pump one", "Pump two")
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 20, 25, 25]


@pytest.mark.parametrize(
    "seat",
    [
        {"shaftFit": {"nominalMm": 40, "upperDevUm": 2, "lowerDevUm": -5}},
        {"shaft": {"d": 40, "tol": [0.002, -0.005], "unit": "mm"}},
        {"Welle": {"Nennmaß": 40, "oberes Abmaß": 0.002, "unteres Abmaß": -0.005, "Ra": 0.4}},
        {"arbre": {"diamètre [mm]": 40, "tolérance": {"max": 40.002, "min": 39.995}}},
    ],
)
def test_sizes_with_their_parts_in_an_object(tmp_path, seat):
    ends = {name: {"designation": "6008-2Z", **seat} for name in ("front", "rear")}
    size = read(tmp_path, {"machine": "M", "bearings": ends}).size("shaft_seat_diameter")
    assert (size.nominal + size.lower).tolist() == pytest.approx([39.995] * 2)
    assert (size.nominal + size.upper).tolist() == pytest.approx([40.002] * 2)


@pytest.mark.parametrize("frame", ["table", "payload"])
def test_a_table_as_lists_of_headings_units_and_rows_below_other_keys(tmp_path, frame):
    table = {"columns": ["pos", "dShaft", "fitShaft"], "units": [None, "mm", "-"],
             "rows": [["A", "40", "k5"], ["B", "35", "k5"]]}  # fmt: skip
    reading = read(tmp_path, {frame: table, "machine": "M", "max_rpm": 6500})
    assert reading.size("shaft_seat_diameter").nominal.tolist() == [40, 35]
    assert reading.place("shaft_seat_diameter", 1).pointer == f"/{frame}/rows/1/1"


@pytest.mark.parametrize("frame", ["ends", "attr", "bearing_positions", "main"])
def test_a_word_around_positions_says_nothing_of_their_values(tmp_path, frame):
    """A fillet of neither part is asked for, whatever the list is called, and ``end`` may name a position."""
    ends = [
        {"end": name, "shaft_od": {"nom": 20, "tol": {"plus": 0.01, "minus": 0}}, "fillet_radius_max": 0.5}
        for name in ("coupling end", "free end")
    ]
    stations = read(tmp_path, {"machine": "M", "units": "mm", frame: ends})
    assert stations.text("station").tolist() == ["coupling end", "free end"]
    assert stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.01, 0.01])
    assert not {"shaft_fillet_radius", "housing_fillet_radius"} & stations.numbers.keys()


def test_objects_of_a_store_with_kind_and_mark_around_them(tmp_path):
    about = [{"POSITION": name, "BEARING": "6203-2Z", "SHAFT_SEAT_DIA_MM": 17, "SHAFT_SEAT_TOL": "k5"} for name in "AB"]
    rotor = {"NAME": "Blower", "MAX_SPEED_RPM": 7200}
    kinds = [{"class": "ROTOR", "attrs": rotor}, *({"class": "BEARING_POSITION", "attrs": item} for item in about)]
    ends = [{"type": "bearing", "id": str(k), "attributes": item} for k, item in enumerate(about)]
    for document in (
        {"objects": kinds},
        {"machine": "M", "max-speed-rpm": 7200, "bearings": {"data": ends}},
        {"machine": "M", "max-speed-rpm": 7200, "bearings": {"A": "6203-2Z", "B": "6203-2Z"}, "seats": about},
    ):
        stations = read(tmp_path, document)
        assert stations.text("station").tolist() == ["A", "B"]
        assert stations.size("shaft_seat_diameter").nominal.tolist() == [17, 17]
        assert stations.number("speed_max").tolist() == [7200, 7200]
        assert all(stations.text("bearing_designation").tolist())


@pytest.mark.parametrize("over", ["spindle", "shaft", "Welle"])
def test_a_value_of_the_machine_inside_a_part_stays_its_own(tmp_path, over):
    document = {"machine": "M", over: {"n_max": {"val": 9000, "uom": "rpm"}},
                "stations": [{"station": "A", "bearing": "6203-2Z"}]}  # fmt: skip
    stations = read(tmp_path, document)
    assert stations.number("speed_max").tolist() == [9000]
    assert "shaft_seat_diameter" not in stations.toleranced


@pytest.mark.parametrize("around", ["Lagerung", "positions", "Lagerstellen"])
def test_a_word_for_positions_is_no_part_of_the_names_below_it(tmp_path, around):
    ends = [
        {"Ort": name, "Kugellager": "6306", "Sitz_Welle": {"Maß": 30, "Passung": "k6"}, "Rauheit": {"Welle": 0.8}}
        for name in ("Antrieb", "Abtrieb")
    ]
    stations = read(tmp_path, {"Maschine": "M", around: ends})
    assert stations.text("bearing_designation").tolist() == ["6306", "6306"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 30]
    assert stations.number("shaft_seat_roughness").tolist() == [0.8, 0.8]


@pytest.mark.parametrize("key", ["arrangement", "function", "Anordnung"])
def test_how_a_bearing_is_located_is_no_machine(tmp_path, key):
    roles = {"compressor end": "locating", "turbine end": "floating"}
    ends = [{"position": end, "designation": "7204AC P5", key: role} for end, role in roles.items()]
    stations = read(tmp_path, {"machine": "M", "bearings": ends})
    assert stations.machines == ("M",)
    assert stations.choice("axial_role").is_in("locating").tolist() == [True, False]
