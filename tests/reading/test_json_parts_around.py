"""JSON documents by parts: the part stands around the values, the position in their names or in keys around them."""

import json

import pytest

from linter.reading import read_table


def read(tmp_path, document):
    path = tmp_path / "table.json"
    path.write_text(json.dumps(document, ensure_ascii=False), encoding="utf-8")
    return read_table(path).stations


def seats(stations, name):
    return stations.size(f"{name}_seat_diameter").nominal.tolist()


BEARINGS = {"lado_polea": "6205", "lado_ventilador": "6204"}


@pytest.mark.parametrize("shield", ["tapa", "escudo"])
def test_positions_in_keys_of_the_parts_and_in_names_below_them(tmp_path, shield):
    shaft = {
        "asiento_rodamiento_lado_polea": {"diam": "25 mm", "tol": "k6", "Ra": "0.8 µm"},
        "asiento_rodamiento_lado_ventilador": {"diam": "20 mm", "tol": "k6", "Ra": "0.4 µm"},
    }
    bores = {"lado_polea": "52 mm", "lado_ventilador": "47 mm"}
    shields = {f"{shield}_{side}": {"alojamiento_rodamiento": {"diam": size}} for side, size in bores.items()}
    stations = read(tmp_path, {"ensamblaje": "Motor M", "eje": shaft, **shields, "rodamientos": BEARINGS})
    assert stations.machines == ("Motor M",)
    assert stations.text("bearing_designation").tolist() == ["6205", "6204"]
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([25, 20], [52, 47])
    assert stations.number("shaft_seat_roughness").tolist() == [0.8, 0.4]


def part(name, *rows):
    return {"part": name, "attributes": [{"attr": attr, "val": value, "uom": unit} for attr, value, unit in rows]}


def test_lists_of_parts_with_attributes_and_what_is_of_another_part(tmp_path):
    parts = [
        part("shaft", ("front bearing seat dia", 6, "mm"), ("back bearing seat dia", 5, "mm")),
        part("housing", ("front bearing bore dia", 19, "mm"), ("back bearing bore dia", 16, "mm")),
        part("impeller", ("bore dia", 4, "mm"), ("front bearing seat dia", 9, "mm")),
        part("front bearing", ("designation", "626-2Z", "")),
        part("back bearing", ("designation", "625-2Z", "")),
    ]
    stations = read(tmp_path, {"assembly": "Pump", "parts": parts})
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([6, 5], [19, 16])
    assert stations.text("bearing_designation").tolist() == ["626-2Z", "625-2Z"]
    assert stations.number("bore_diameter").tolist() == [6, 5]  # of the bearings, by their designations


def test_a_seat_that_is_no_bearings_is_none(tmp_path):
    shaft = {
        "前轴承位": {"直径": "20 mm", "公差带": "k6"}, "后轴承位": {"直径": "17 mm", "公差带": "k6"},
        "叶轮位": {"直径": "16 mm", "公差带": "h6"},
    }  # fmt: skip
    housing = {"前轴承孔": {"直径": "47 mm"}, "后轴承孔": {"直径": "40 mm"}}
    document = {
        "产品": {"名称": "离心泵 P2"},
        "零件": {"转轴": shaft, "轴承座": housing, "前轴承": {"型号": "6204"}, "后轴承": {"型号": "6203"}},
    }
    stations = read(tmp_path, document)
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([20, 17], [47, 40])
    assert stations.machines == ("离心泵 P2",)


def test_machines_own_ends_as_the_ends_of_names(tmp_path):
    fields = {
        f"quill{end}{what}": {"v": value, "u": unit}
        for end, size, bore in (("Nose", 50, 80), ("Tail", 40, 68))
        for what, value, unit in (("Journal", size, "mm"), ("HousingBore", bore, "mm"), ("JournalRa", 0.4, "um"))
    }
    stations = read(tmp_path, {"document": {"id": "D-8", "issue": "4"}, "params": fields})
    assert stations.text("station").tolist() == ["quillNose", "quillTail"]
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([50, 40], [80, 68])
    assert (stations.text("drawing_number")[0], stations.text("drawing_revision")[0]) == ("D-8", "4")


def test_upper_and_lower_are_positions_only_where_more_than_sizes_comes_again(tmp_path):
    of_ends = {
        f"{end} bearing {what}": value for end, size in (("upper", 17), ("lower", 15))
        for what, value in (("seat on shaft", f"{size} mm"), ("radial load", "60 N"), ("shaft roughness", "0.4 µm"))
    }  # fmt: skip
    assert seats(read(tmp_path, of_ends), "shaft") == [17, 15]
    limits = {"shaft": {"upper": "17.009 mm", "lower": "17.001 mm"}, "bearing": "6203", "station": "A"}
    stations = read(tmp_path, limits)
    assert stations.text("station").tolist() == ["A"]


def test_one_position_in_any_gender(tmp_path):
    shaft = {f"шейка подшипника {side}": size for side, size in (("левая", "20 мм"), ("правая", "25 мм"))}
    bores = {f"отверстие под подшипник {side}": size for side, size in (("левое", "47 мм"), ("правое", "52 мм"))}
    bearings = {f"подшипник {side}": {"тип": number} for side, number in (("левый", "6204"), ("правый", "6205"))}
    stations = read(tmp_path, {"вал": shaft, "корпус": bores, **bearings})
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([20, 25], [47, 52])
    assert stations.text("bearing_designation").tolist() == ["6204", "6205"]


def test_a_header_states_the_unit_of_deviations(tmp_path):
    seat = {"nominal": 10, "upper": 4, "lower": -2}
    document = {"units": {"length": "mm", "deviation": "um"}, "positions": {"A": {"shaft seat": seat}}}
    size = read(tmp_path, document).size("shaft_seat_diameter")
    assert (size.lower[0], size.upper[0]) == pytest.approx((-0.002, 0.004))
    assert read(tmp_path, {**document, "units": "mm"}).size("shaft_seat_diameter").lower[0] != -2


def test_items_whose_names_hold_several_positions_are_machines(tmp_path):
    items = [
        {"model": model, "de_brg": "6204", "de_shaft": f"{d} mm", "nde_brg": "6203", "nde_shaft": "17 mm"}
        for model, d in (("F-10", 20.01), ("F-20", 20.02))
    ]  # fmt: skip
    stations = read(tmp_path, items)
    assert stations.machines == ("F-10", "F-20")
    assert seats(stations, "shaft") == [20.01, 17, 20.02, 17]


def test_an_id_and_a_reference_of_a_store_are_no_data(tmp_path):
    bearing = {"nom": "côté pompe", "roulement": "6306", "portée arbre": "30 k6 mm", "alésage corps": "72 H7"}
    other = {**bearing, "nom": "côté moteur", "portée arbre": "31 k6 mm"}
    items = [{"type": "palier", "id": str(k), "attributes": of} for k, of in enumerate((bearing, other))]
    refs = [{"type": "palier", "id": "0"}, {"type": "palier", "id": "1"}]
    stations = read(
        tmp_path, {"data": {"type": "pompe", "id": "id-9177", "paliers": {"data": refs}}, "included": items}
    )
    assert stations.text("station").tolist() == ["côté pompe", "côté moteur"]
    assert not any("id-9177" in problem.message for problem in stations.problems)


def test_a_class_in_the_remark_of_a_size(tmp_path):
    rows = (("bore A", 52, "H6"), ("bore B", 47, "H6"), ("shaft seat A", 25, "k5"), ("shaft seat B", 20, "k5"))
    sizes = [{"name": name, "value": value, "unit": "mm", "comment": note} for name, value, note in rows]
    stations = read(tmp_path, {"parameters": sizes})
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([25, 20], [52, 47])
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", "k5"]


@pytest.mark.parametrize("other", ["seal", "seal seat", "coupling seat", "damper"])
def test_what_else_sits_on_a_shaft_is_no_seat_of_a_bearing(tmp_path, other):
    ends = (("runner", 40, "6308"), ("exciter", 35, "6307"))
    shaft = {f"{end} bearing": {"seat": {"dia": d, "upper": 0.018, "lower": 0.002}, "ra": 0.8} for end, d, _ in ends}
    housing = {f"{end} bearing": {"bore": {"dia": 2 * d, "upper": 0.03, "lower": 0}} for end, d, _ in ends}
    shaft[other] = {"dia": 45, "upper": 0, "lower": -0.039}
    bearings = {f"{end} bearing": {"type": number} for end, _, number in ends}
    stations = read(tmp_path, {"units": "mm", "shaft": shaft, "housing": housing, "bearings": bearings})
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([40, 35], [80, 70])
    assert not stations.known("shaft_fillet_radius").any()  # ra may be a roughness


def test_sides_that_parts_lend_their_names_to(tmp_path):
    rows = [("Lagersitz Riemenseite Ø", "50 k5"), ("Lagersitz Rotorseite Ø", "60 k5"),
            ("Lagersitz Riemenseite Rauheit", "0,8 µm"), ("Lagersitz Rotorseite Rauheit", "0,4 µm")]  # fmt: skip
    shaft = {"benennung": "Welle", "merkmale": [{"nr": 1, "merkmal": name, "sollwert": value} for name, value in rows]}
    pulley = {"benennung": "Keilriemenscheibe", "merkmale": [{"nr": 1, "merkmal": "Bohrung Ø", "sollwert": "45 H7"}]}
    sides = (("Riemenseite", "6210"), ("Rotorseite", "6212"))
    bearings = [{"benennung": f"Wälzlager {side}", "bezeichnung": number} for side, number in sides]
    stations = read(tmp_path, {"Projekt": "P", "Maschine": "Mühle", "teile": [shaft, pulley, *bearings]})
    assert (stations.machines, seats(stations, "shaft")) == (("Mühle",), [50, 60])
    assert stations.text("bearing_designation").tolist() == ["6210", "6212"]
    assert not stations.known("housing_seat_diameter").any()


def test_expressions_of_a_model_are_values_where_nothing_else_is(tmp_path):
    names = ("brg_a_shaft_dia", "brg_a_hsg_dia", "brg_b_shaft_dia", "brg_b_hsg_dia")
    variables = [{"id": name, "expr": f"{size} mm"} for name, size in zip(names, (35, 72, 30, 62), strict=True)]
    stations = read(tmp_path, {"variables": [*variables, {"id": "keyway_w", "expr": "8 mm"}]})
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([35, 30], [72, 62])


def test_shafts_each_with_its_bearings_and_a_shaft_by_what_it_drives(tmp_path):
    ends = [{"end": "left", "designation": "6206", "seat": "30 k5", "bore": "62 H7"},
            {"end": "right", "designation": "6305", "seat": "25 k5", "bore": "62 H7"}]  # fmt: skip
    stations = read(tmp_path, {"machine": "Gear", "shafts": [{"shaft": "input", "bearings": ends}]})
    assert not stations.known("shaft_bore").any()  # a bore with the class of a hole beside a bearing is the housing's
    assert seats(stations, "housing") == [62, 62]
    seats_of = [{"名称": f"{end}轴承位", "尺寸": size, "公差": "k6"} for end, size in (("前", "20"), ("后", "17"))]
    bores = [{"名称": f"{end}轴承孔", "尺寸": size, "公差": "H7"} for end, size in (("前", "47"), ("后", "40"))]
    bearings = [{"名称": f"{end}轴承", "规格": number} for end, number in (("前", "6204"), ("后", "6203"))]
    parts = [{"名称": "主动轴", "要素": seats_of}, {"名称": "泵体", "要素": bores}, *bearings]
    stations = read(tmp_path, {"产品": "齿轮泵 CP-3", "零部件": parts})
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([20, 17], [47, 40])


@pytest.mark.parametrize(
    ("above", "below"),
    [("верх", "низ"), ("oben", "unten"), ("上", "下"), ("haut", "bas"), ("hi", "lo"), ("sup", "inf")],
)
@pytest.mark.parametrize("shaft", ["вал", "Welle", "shaft"])
def test_above_and_below_beside_a_size_are_its_deviations(tmp_path, above, below, shaft):
    ends = {"front": (40, 0, -0.007, 46.5), "rear": (35, 0.008, -0.005, 41)}
    document = {
        "machine": "M",
        shaft: {e: {"diameter": d, above: u, below: w, "shoulder": s} for e, (d, u, w, s) in ends.items()},
        "bearings": {"front": "7008 C", "rear": "7007 C"},
    }
    stations = read(tmp_path, document)
    seat = stations.size("shaft_seat_diameter")
    assert seat.nominal.tolist() == [40, 35]
    assert (1000 * seat.upper).round(6).tolist() == [0, 8] and (1000 * seat.lower).round(6).tolist() == [-7, -5]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [46.5, 41]


def test_above_and_below_are_positions_where_they_hold_sizes_or_large_numbers(tmp_path):
    document = {"machine": "M", "Sitz": {"oben": {"Lager": "6200-2Z"}, "unten": {"Lager": "6001-2RSR"}}}
    stations = read(tmp_path, document)
    assert stations.text("bearing_designation").tolist() == ["6200-2Z", "6001-2RSR"]
    document = {"machine": "M", "stations": [{"station": "A", "shaft_seat_diameter_mm": 8, "oben": 20, "unten": 17}]}
    assert read(tmp_path, document).size("shaft_seat_diameter").upper.tolist() != [20]


@pytest.mark.parametrize("over", ["Lager", "подшипники", "bearings", "軸受"])
def test_what_is_a_position_in_one_object_is_one_in_all(tmp_path, over):
    seats = {"pulley": {"diameter": "30 k6", "roughness": 0.4}, "impeller end": {"diameter": "25 k6", "roughness": 0.4}}
    bearings = {"pulley": "6206-2RS", "impeller end": "6205-2RS"}
    document = {"machine": "M", "shaft": {"seats": seats}, over: bearings}
    document["limits"] = {end: {"shaft shoulder [mm]": 36, "shaft seat roughness [um]": 0.4} for end in seats}
    stations = read(tmp_path, document)
    assert stations.text("bearing_designation").tolist() == ["6206-2RS", "6205-2RS"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]


def test_the_last_step_of_a_path_may_be_its_unit(tmp_path):
    document = {"machine.name": "M", "spindle.n_max.rpm": 40000, "spindle.rotor.mass.kg": 1.5}
    for end, d in (("front", 30), ("rear", 25)):
        document[f"bearing.{end}.designation"] = f"70{d // 5:02d} C"
        document |= {f"shaft.{end}.seat.{key}": v for key, v in (("diameter.mm", d), ("upper.um", 0), ("lower.um", -6))}
    stations = read(tmp_path, document)
    seat = stations.size("shaft_seat_diameter")
    assert (seat.nominal.tolist(), (1000 * seat.lower).round(6).tolist()) == ([30, 25], [-6, -6])
    assert stations.number("rotor_mass").tolist() == [1.5, 1.5]


@pytest.mark.parametrize("mass", [{"v": 1.04, "u": "kg"}, {"value": 1.04, "unit": "kg"}, "1.04 kg"])
def test_the_mass_of_a_rotor_is_no_size(tmp_path, mass):
    speed = {"v": 52000, "u": "rpm"} if isinstance(mass, dict) and "v" in mass else "52000 rpm"
    document = {"machine": "M", "rotor": {"mass": mass, "maxSpeed": speed}, "bearings": {"A": "7002 C", "B": "7001 C"}}
    assert read(tmp_path, document).number("rotor_mass").tolist() == [1.04, 1.04]


#: A machine, a list of its bearings, the keys in each and what a shaft and a housing are called in it.
SPINDLES = [
    ("spindle", "bearings", ("position", "designation", "bore", "outsideDiameter"), ("shaftSeat", "housingSeat")),
    ("Spindel", "Lager", ("Lagerstelle", "Typ", "Bohrung", "Außendurchmesser"), ("Welle", "Gehäuse")),
    ("шпиндель", "подшипники", ("опора", "обозначение", "внутренний диаметр", "наружный диаметр"), ("вал", "корпус")),
    ("主轴", "轴承", ("位置", "型号", "内径", "外径"), ("轴颈", "座孔")),
    ("shaft", "bearings", ("location", "designation", "bore", "outside_diameter"), ("shaft_seat", "housing_seat")),
]
SIZE = {"nominal": 0, "upper": 0.01, "lower": 0.002, "unit": "mm"}


@pytest.mark.parametrize(("machine", "bearings", "keys", "parts"), SPINDLES)
def test_a_spindle_around_bearings_and_both_their_seats_is_the_machine(tmp_path, machine, bearings, keys, parts):
    rows = [
        dict(zip(keys, (name, number, {"value": bore, "unit": "mm"}, {"value": outside, "unit": "mm"}), strict=True))
        | {part: {"diameter": SIZE | {"nominal": size}} for part, size in zip(parts, (bore, outside), strict=True)}
        for name, number, bore, outside in (("A", "7205", 25, 52), ("B", "7204", 20, 47))
    ]
    stations = read(tmp_path, {machine: {"name": "SP-1", bearings: rows}})
    assert stations.machines == ("SP-1",)
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([25, 20], [52, 47])
    assert stations.number("bore_diameter").tolist() == [25, 20]
    assert stations.number("outside_diameter").tolist() == [52, 47]
    assert not stations.known("shaft_bore").any()
    assert not stations.problems


@pytest.mark.parametrize("of_list", [True, False])
def test_the_bore_of_a_bearing_is_none_of_the_spindle_around_it(tmp_path, of_list):
    rows = [
        {
            "position": name,
            "designation": number,
            "bore": f"{bore} mm",
            "seat": {"diameter": f"{bore} mm", "tol": "js5"},
        }
        for name, number, bore in (("front", "7005", 25), ("rear", "7004", 20))
    ]
    bearings = rows if of_list else {row.pop("position"): row for row in rows}
    stations = read(tmp_path, {"machine": "S", "spindle": {"bore": "12 mm", "bearings": bearings}})
    assert seats(stations, "shaft") == [25, 20]
    assert stations.number("bore_diameter").tolist() == [25, 20]
    assert stations.number("shaft_bore").tolist() == [12, 12]


def test_what_a_part_alone_has_at_its_positions_stays_the_parts(tmp_path):
    both = {
        "albero": {"A": {"sede": "20 k5 mm", "Ra": "0.4 µm"}, "B": {"sede": "17 k5 mm", "Ra": "0.4 µm"}},
        "housing": {"seats": {"A": {"diameter": "47 mm", "ra": "0.8 µm"}, "B": {"diameter": "40 mm", "ra": "0.8 µm"}}},
    }
    stations = read(tmp_path, {"machine": "S"} | both)
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([20, 17], [47, 40])
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 0.8]


@pytest.mark.parametrize("names", [("小形モータ KM-56", "主軸モータ SM-30"), ("Shaft drive W 1", "Housing fan W 2")])
def test_machines_whose_names_hold_the_word_for_a_part_are_machines(tmp_path, names):
    def machine(name, key):
        rows = [
            {"位置": side, "軸受型番": number, "軸径_mm": bore, "ハウジング穴径_mm": outside}
            for side, number, bore, outside in (("負荷側", "6204", 20, 47), ("反負荷側", "6203", 17, 40))
        ]
        return {key: name, "軸受部": rows}

    stations = read(tmp_path, [machine(name, "装置名") for name in names])
    assert stations.machines == names
    assert (seats(stations, "shaft"), seats(stations, "housing")) == ([20, 17] * 2, [47, 40] * 2)
