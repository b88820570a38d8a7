"""JSON shapes of exports: seats that say position and part, attributes of machine and parts in one list, values of both
positions side by side or in one text."""

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


SIDE_BY_SIDE = [
    (("Part", "Name", "Unit", "DE", "NDE"), ("Shaft", "Housing"), ("Diameter", "Roughness Ra")),
    (("Bauteil", "Merkmal", "Einheit", "AS", "BS"), ("Welle", "Gehäuse"), ("Durchmesser", "Rauheit Ra")),
    (("Pièce", "Attribut", "Unité", "avant", "arrière"), ("Arbre", "Logement"), ("Diamètre", "Rugosité Ra")),
    (("零件", "参数", "单位", "驱动端", "非驱动端"), ("轴", "轴承座"), ("直径", "粗糙度Ra")),
]
BESIDE = (("25 k5", "20 j5"), ("0.4", "0.5"), ("52 H6", "47 J6"), ("0.8", "1.0"))


def beside_each_other(head, parts, names):
    """Part, name, unit and the values of both positions of four rows."""
    of_rows = [(part, name) for part in parts for name in names]
    return [(*row, unit, *both) for row, unit, both in zip(of_rows, ("mm", "µm") * 2, BESIDE, strict=True)]


@pytest.mark.parametrize(("head", "parts", "names"), SIDE_BY_SIDE)
@pytest.mark.parametrize("form", ["lists", "records", "values in an object", "sections"])
def test_parts_and_names_with_the_positions_side_by_side(tmp_path, form, head, parts, names):
    rows = beside_each_other(head, parts, names)
    records = [dict(zip(head, row, strict=True)) for row in rows]
    if form == "lists":
        document = [list(head), *map(list, rows)]
    elif form == "records":
        document = {"machine": "M 4", "rows": records}
    elif form == "values in an object":
        document = {"machine": "M 4", "rows": [
            {key: r[key] for key in head[:3]} | {"values": {key: r[key] for key in head[3:]}} for r in records
        ]}  # fmt: skip
    else:
        document = {"machine": "M 4", "groups": [
            {"name": part, "items": [{key: r[key] for key in head[1:]} for r in records if r[head[0]] == part]}
            for part in parts
        ]}  # fmt: skip
    stations = read(tmp_path, document)
    assert len(stations) == 2
    assert sizes(stations) == SIZES
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.5]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.0]


@pytest.mark.parametrize(
    ("places", "names"),
    [
        (("DE", "NDE"), ("Bearing designation", "Shaft seat diameter", "Housing bore diameter", "Housing seat Ra")),
        (("A", "B"), ("Bearings", "Shaft seat", "Housing seat", "Housing seat roughness Ra")),
        (("lato motore", "lato ventola"), ("Sigla cuscinetto", "Diametro sede albero", "Diametro sede alloggiamento",
                                           "Rugosità Ra sede alloggiamento")),
        (("驱动端", "非驱动端"), ("轴承型号", "轴颈直径", "轴承座孔直径", "轴承座孔粗糙度Ra")),
    ],
)  # fmt: skip
@pytest.mark.parametrize("form", ["in the key", "in brackets", "in the name", "position of both", "with its unit"])
def test_values_of_two_positions_in_one_text(tmp_path, form, places, names):
    texts = ("6205-2Z / 6204-2Z", "25 k5 / 20 j5", "52 H6 / 47 J6", "0.8 / 1.0")
    units = ("", "mm", "mm", "µm")
    both = " / ".join(places) if form == "position of both" else "/".join(places)
    document = {"machine": "M 4", "unit": "mm"}
    if form == "in the name":
        document["attributes"] = [
            {"name": f"{n} ({both})", "value": t, "unit": u} for n, t, u in zip(names, texts, units, strict=True)
        ]
    elif form == "position of both":
        document |= {"position": both} | dict(zip(names, texts, strict=True))
    elif form == "with its unit":
        document |= {f"{n} {both}": {"value": t, "unit": u} for n, t, u in zip(names, texts, units, strict=True)}
    else:
        brackets = form == "in brackets"
        document |= {f"{n} ({both})" if brackets else f"{n} {both}": t for n, t in zip(names, texts, strict=True)}
    stations = read(tmp_path, document)
    assert stations.text("station").tolist() == list(places)
    assert stations.text("bearing_designation").tolist() == ["6205-2Z", "6204-2Z"]
    assert sizes(stations) == SIZES
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.0]


@pytest.mark.parametrize("text", ["25 +0.011/+0.002", "fit k5/H6", "12 / 9 kW"])
def test_other_strokes_set_nothing_apart(tmp_path, text):
    document = {"machine": "M 4", "unit": "mm", "positions": [{"name": "DE", "shaft seat": "25 k5", "note": text}]}
    stations = read(tmp_path, document)
    assert stations.text("station").tolist() == ["DE"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25]


@pytest.mark.parametrize(
    ("bearing", "named", "key", "shaft", "diameter"),
    [
        ("Bearing", "Designation", "number", "Shaft", "Diameter"),
        ("Lager", "Bezeichnung", "Nummer", "Welle", "Durchmesser"),
        ("轴承", "型号", "编号", "轴", "直径"),
    ],
)
def test_the_number_of_an_entry_is_no_designation(tmp_path, bearing, named, key, shaft, diameter):
    seats = [{"name": f"{diameter} {place}", "value": f"{d} k5", "unit": "mm"} for place, d in (("A", 25), ("B", 20))]
    entries = [
        {key: number, "name": f"{bearing} {place}", "parameters": [{"name": named, "value": d, "unit": ""}]}
        for number, place, d in (("10030", "A", "6205-2Z"), ("10031", "B", "6204-2Z"))
    ]
    shaft_entry = {key: "10021", "name": shaft, "parameters": seats}
    stations = read(tmp_path, {"name": "M 4", "children": [shaft_entry, *entries]})
    assert stations.text("bearing_designation").tolist() == ["6205-2Z", "6204-2Z"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]


@pytest.mark.parametrize(
    ("name", "value", "names"),
    [
        ("attribut", "valeur", ("Diamètre", "Rugosité Ra")),
        ("caracteristica", "valor", ("Diámetro", "Rugosidad Ra")),
        ("Параметр", "Значение", ("Диаметр", "Шероховатость Ra")),
    ],
)
def test_the_name_of_a_record_beside_its_number_and_its_feature(tmp_path, name, value, names):
    rows = beside_each_other(None, ("shaft", "housing"), names)
    dimensions = [
        {"id": f"D{number}", "position": place, "feature": part, name: label, value: both[k], "unit": unit}
        for k, place in enumerate(("A", "B"))
        for number, (part, label, unit, *both) in enumerate(rows, 1)
    ]
    stations = read(tmp_path, {"machine": "M 4", "dimensions": dimensions})
    assert sizes(stations) == SIZES
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.0]


@pytest.mark.parametrize(
    ("texts", "parameter"),
    [(("6205-2Z", "6204-2Z"), "bearing_designation"), (("deep groove ball", "deep groove ball"), "bearing_type")],
)
def test_designations_under_the_name_of_the_type(tmp_path, texts, parameter):
    positions = [
        {"position": place, "bearing_type": text, "shaft_seat": "25 k5"}
        for place, text in zip(("A", "B"), texts, strict=True)
    ]
    stations = read(tmp_path, {"machine": "M 4", "unit": "mm", "positions": positions})
    assert stations.known(parameter).tolist() == [True, True]
    assert not any(problem.parameter == "bearing_type" for problem in stations.problems)


def of_position(designation, size):
    return [{"name": "Bearing", "value": designation, "unit": ""}, {"name": "Shaft seat", "value": size, "unit": "mm"}]


@pytest.mark.parametrize("word", ["Machine", "Maschine", "機械", "General", "Общие данные"])
@pytest.mark.parametrize("form", ["sections", "titles", "key of each"])
def test_a_section_of_the_machine_names_none(tmp_path, form, word):
    speed = {"name": "Max speed", "value": 3000, "unit": "rpm"}
    held = {
        word: [{"name": "Machine", "value": "Blower RB-40", "unit": ""}, speed],
        "DE": of_position("6205", "25 k5"),
        "NDE": of_position("6204", "20 k5"),
    }
    document = [{"group": key, "attributes": records} for key, records in held.items()]
    if form == "titles":
        document = {"sections": [{"title": key, "values": records} for key, records in held.items()]}
    elif form == "key of each":
        document = [{"group": key, **record} for key, records in held.items() for record in records]
    stations = read(tmp_path, document)
    assert stations.text("machine").tolist() == ["Blower RB-40", "Blower RB-40"]
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]
    assert stations.number("speed_max").tolist() == [3000, 3000]


@pytest.mark.parametrize("name", ["Spindle S12", "Motorspindel MS 40", "Broche BR-2", "Elettromandrino E7", "主軸 S12"])
def test_a_spindle_may_be_the_machine(tmp_path, name):
    positions = [{"position": place, "shaft seat": "25 k5", "bearing": "6205"} for place in ("A", "B")]
    stations = read(tmp_path, {"title": name, "unit": "mm", "positions": positions})
    assert stations.text("machine").tolist() == [name, name]


@pytest.mark.parametrize(
    ("unit", "side", "other"),
    [
        ("measuringUnit", "Coupling side", "Impeller side"),
        ("Ud.", "lado motor", "lado ventilador"),
        ("Messeinheit", "AS", "BS"),
        ("測定単位", "駆動側", "反駆動側"),
    ],
)
def test_keys_of_units_beside_both_positions(tmp_path, unit, side, other):
    rows = [
        {"name": name, unit: u, side: one, other: two}
        for name, u, one, two in (
            ("Shaft seat diameter", "mm", "25 k5", "20 k5"),
            ("Shaft seat roughness", "µm", 0.4, 0.5),
            ("Housing bore diameter", "mm", "52 H6", "47 J6"),
        )
    ]
    stations = read(tmp_path, {"machine": "M 4", "rows": rows})
    assert sizes(stations) == SIZES
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.5]


def test_a_part_under_a_word_for_an_assembly_is_no_machine(tmp_path):
    records = [
        {"位置": place, "部件": part, "名称": "直径", "数值": f"{size} {fit}", "单位": "mm"}
        for place, k in (("驱动端", 0), ("非驱动端", 1))
        for part, size, fit in (("轴", SIZES["shaft"][k], "k5"), ("壳体", SIZES["housing"][k], "H6"))
    ]
    stations = read(tmp_path, {"设备": "泵 P-3", "参数": records})
    assert set(stations.text("machine").tolist()) == {"泵 P-3"}
    assert sizes(stations) == SIZES
