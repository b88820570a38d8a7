"""Numbered heads of tables below each other, positions named again above each part, parts of a machine as items."""

import json

import numpy as np
import pytest

from linter.reading import read_table


def write(tmp_path, text, name="table.csv"):
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    return read_table(path).stations


SECTIONS = {
    "en": (("Bearings", "Shaft", "Housing"), "Position", "Bearing designation", "Seat diameter (mm)", "Class"),
    "de": (("Lager", "Welle", "Gehäuse"), "Lagerstelle", "Lagerbezeichnung", "Sitzdurchmesser (mm)", "Toleranzklasse"),
    "fr": (("Roulements", "Arbre", "Logement"), "Palier", "Désignation du roulement", "Diamètre (mm)", "Classe"),
    "zh": (("轴承", "轴", "轴承座"), "轴承位置", "轴承型号", "配合直径(mm)", "公差带"),
}


@pytest.mark.parametrize("language", [*SECTIONS])
@pytest.mark.parametrize(
    "numbers", ["1. 2. 3.", "1) 2) 3)", "I. II. III.", "A. B. C.", "一、 二、 三、", "1 2 3", "none"]
)
def test_numbers_before_heads_of_sections_say_nothing(tmp_path, language, numbers):
    (bearing, shaft, housing), place, designation, size, fit = SECTIONS[language]
    said = ["", "", ""] if numbers == "none" else [f"{number} " for number in numbers.split()]
    text = (
        f"{said[0]}{bearing},,\n{place},{designation},\nDE,6206,\nNDE,6205,\n,,\n"
        f"{said[1]}{shaft},,\n{place},{size},{fit}\nDE,30,k5\nNDE,25,j5\n,,\n"
        f"{said[2]}{housing},,\n{place},{size},{fit}\nDE,62,H7\nNDE,52,J7\n"
    )
    stations = write(tmp_path, text)
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert stations.text("bearing_designation").tolist() == ["6206", "6205"]
    for parameter, nominal, classes in (
        ("shaft_seat_diameter", [30, 25], ["k5", "j5"]),
        ("housing_seat_diameter", [62, 52], ["H7", "J7"]),
    ):
        value = stations.size(parameter)
        assert (value.nominal.tolist(), value.tolerance_class.tolist()) == (nominal, classes)


def test_numbered_names_of_machines_stay(tmp_path):
    text = "Machine;Position;Bearing;Shaft seat diameter\n1. Spindle A;DE;6206;30 k5\n2. Spindle B;DE;6205;25 k5\n"
    assert write(tmp_path, text).text("machine").tolist() == ["1. Spindle A", "2. Spindle B"]


ROWS = {
    "en": ("Position", "Part", "Characteristic", "Nominal", "Unit", "General", "Rotor", "Maximum speed",
           "Required life", "Bearing", "Designation", "Radial load", "Shaft", "Housing", "Seat diameter",
           "Shoulder diameter"),
    "ja": ("部位", "部品", "管理項目", "規格値", "単位", "全体", "ロータ", "最高回転速度",
           "要求寿命", "軸受", "呼び番号", "ラジアル荷重", "軸", "ハウジング", "はめあい部直径", "肩径"),
    "de": ("Lagerstelle", "Bauteil", "Merkmal", "Sollwert", "Einheit", "Allgemein", "Rotor", "Höchstdrehzahl",
           "Geforderte Lebensdauer", "Lager", "Lagerbezeichnung", "Radiallast", "Welle", "Gehäuse", "Sitzdurchmesser",
           "Schulterdurchmesser"),
}  # fmt: skip


@pytest.mark.parametrize("language", [*ROWS])
@pytest.mark.parametrize("with_machine", [True, False])
def test_a_position_named_again_above_each_part_is_carried_down(tmp_path, language, with_machine):
    (place, part, name, value, unit, all_of_it, rotor, speed, life, bearing, designation, load, shaft, housing, seat,
     shoulder) = ROWS[language]  # fmt: skip
    rows = [(place, part, name, value, unit)]
    if with_machine:
        rows += [(all_of_it, rotor, speed, "5400", "rpm"), ("", "", life, "20000", "h")]
    for station, sizes in (
        ("A", ("6206", "645", "30 k5", "36", "62 H7", "56")),
        ("B", ("6205", "410", "25 j5", "31", "52 J7", "46")),
    ):
        rows += [(station, bearing, designation, sizes[0], ""), ("", "", load, sizes[1], "N")]
        rows += [(station, shaft, seat, sizes[2], "mm"), ("", "", shoulder, sizes[3], "mm")]
        rows += [(station, housing, seat, sizes[4], "mm"), ("", "", shoulder, sizes[5], "mm")]
    stations = write(tmp_path, "\n".join("\t".join(row) for row in rows), "table.tsv")
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("radial_load").tolist() == [645, 410]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [36, 31]
    assert stations.size("housing_shoulder_diameter").nominal.tolist() == [56, 46]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    if with_machine:
        assert stations.number("speed_max").tolist() == [5400, 5400]


COMPONENTS = {
    "en": ("components", "type", "position", "characteristics", "name", "value", "unit", "Machine", "Machine name",
           "Bearing", "Designation", "Shaft seat", "Housing seat", "Diameter", "Cylindricity", "Shoulder diameter"),
    "es": ("componentes", "tipo", "apoyo", "caracteristicas", "denominacion", "valor", "unidad", "Máquina",
           "Nombre de la máquina", "Rodamiento", "Designación", "Asiento del eje", "Asiento del alojamiento",
           "Diámetro", "Cilindricidad", "Diámetro del resalte"),
    "de": ("komponenten", "bauteil", "lagerstelle", "merkmale", "bezeichnung", "wert", "einheit", "Maschine",
           "Maschinenbezeichnung", "Lager", "Lagerbezeichnung", "Wellensitz", "Gehäusesitz", "Durchmesser",
           "Zylindrizität", "Schulterdurchmesser"),
}  # fmt: skip


@pytest.mark.parametrize("language", [*COMPONENTS])
@pytest.mark.parametrize("by_part", [True, False])
def test_parts_of_positions_are_items_beside_the_machine(tmp_path, language, by_part):
    (outer, kind, place, inner, name, value, unit, machine, called, bearing, designation, shaft, housing, diameter,
     form, shoulder) = COMPONENTS[language]  # fmt: skip

    def records(*stated):
        return [dict(zip((name, value, unit), one, strict=True)) for one in stated]

    items = [{kind: machine, inner: records((called, "Fan F 56", ""))}]
    parts = []
    for station, (number, bore, outside) in {"1": ("6306", 30, 72), "2": ("6305", 25, 62)}.items():
        parts.append({kind: bearing, place: station, inner: records((designation, number, ""))})
        for part, size, fit, edge in ((shaft, bore, "m5", bore + 5), (housing, outside, "N6", outside - 5)):
            stated = records((diameter, f"{size} {fit}", "mm"), (form, 0.003, "mm"), (shoulder, edge, "mm"))
            parts.append({kind: part, place: station, inner: stated})
    items += sorted(parts, key=lambda item: item[kind] != bearing) if by_part else parts
    stations = write(tmp_path, json.dumps({outer: items}), "table.json")
    assert stations.text("machine").tolist() == ["Fan F 56"] * 2
    assert stations.text("bearing_designation").tolist() == ["6306", "6305"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.size("housing_seat_diameter").tolerance_class.tolist() == ["N6", "N6"]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [35, 30]
    assert np.allclose(stations.number("housing_seat_cylindricity"), 0.003)


@pytest.mark.parametrize(
    ("wanted", "measured"), [("Soll {}", "Ist {}"), ("Nominal {}", "Actual {}"), ("規格値 {}", "測定値 {}")]
)
def test_what_is_wanted_is_no_part_of_a_position(tmp_path, wanted, measured):
    heads = [wanted.format(side) for side in ("DE", "NDE")]
    text = (
        f"Characteristic;Unit;{heads[0]};{heads[1]}\nShaft seat diameter;mm;30 k5;25 k5\n"
        "Shaft shoulder diameter;mm;36;31\n"
    )
    stations = write(tmp_path, text)
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [36, 31]
    both = f"Characteristic;Unit;{heads[0]};{measured.format('DE')}\nShaft seat diameter;mm;30 k5;30.005\n"
    assert 30.005 not in write(tmp_path, both).size("shaft_seat_diameter").nominal[:1]


REQUIREMENTS = {
    "es": ("Requisito", "Valor", "Unidad", "Apoyo {}", "Velocidad máxima", "Designación del rodamiento",
           "Diámetro del asiento del eje", "Diámetro del resalte del eje"),
    "en": ("Requirement", "Value", "Unit", "Bearing {}", "Maximum speed", "Bearing designation",
           "Shaft seat diameter", "Shaft shoulder diameter"),
    "de": ("Anforderung", "Wert", "Einheit", "Lager {}", "Höchstdrehzahl", "Lagerbezeichnung",
           "Durchmesser Wellensitz", "Durchmesser Wellenschulter"),
}  # fmt: skip


@pytest.mark.parametrize("language", [*REQUIREMENTS])
@pytest.mark.parametrize("number", ["ID|R{}", "Nr.|{}", "Ref.|REQ-{:03}"])
def test_positions_stand_over_their_rows_in_the_column_of_numbers(tmp_path, language, number):
    name, value, unit, place, speed, bearing, seat, shoulder = REQUIREMENTS[language]
    head, code = number.split("|")
    rows, count = [(head, name, value, unit)], 1
    of_machine = [(speed, "11000", "rpm")]
    positions = {place.format(side): (size, fit) for side, size, fit in (("A", 25, "k6"), ("B", 20, "js5"))}
    for title, (size, fit) in {"": (0, ""), **positions}.items():
        if title:
            rows.append((title, "", "", ""))
        stated = [(bearing, f"62{size // 5:02}", ""), (seat, f"{size} {fit}", "mm"), (shoulder, f"{size + 6}", "mm")]
        for row in stated if title else of_machine:
            rows.append((code.format(count), *row))
            count += 1
    stations = write(tmp_path, "\n".join(";".join(row) for row in rows))
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.text("bearing_designation").tolist() == ["6205", "6204"]
    size = stations.size("shaft_seat_diameter")
    assert (size.nominal.tolist(), size.tolerance_class.tolist()) == ([25, 20], ["k6", "js5"])
    assert stations.number("speed_max").tolist() == [11000, 11000]


@pytest.mark.parametrize(
    ("heading", "cell", "duty"),
    [("Régimen de trabajo", "intermitente", "intermittent"), ("Régime de service", "S1", "continuous"),
     ("Regime di lavoro", "continuo", "continuous")],
)  # fmt: skip
def test_a_regime_is_a_duty_where_its_cells_say_one(tmp_path, heading, cell, duty):
    text = f"Machine;Position;{heading};Bearing;Shaft seat diameter\nP;A;{cell};6205;25 k5\nP;B;{cell};6205;25 k5\n"
    assert write(tmp_path, text).choice("duty").texts().tolist() == [duty, duty]
    text = text.replace(f";{cell};", ";3000 rpm;")
    assert write(tmp_path, text).number("speed_operating").tolist() == [3000, 3000]


def test_names_of_fields_above_the_heading_are_no_title(tmp_path):
    text = (
        "DWG_NO;REV;MACH_DES;BRG_POS;BRG_NO;SH_DIA;SH_TOL;SPD_MAX;SUPP\n"
        "Drawing;Revision;Machine;Position;Bearing;Shaft seat (mm);Shaft tolerance;Maximum speed (rpm);Supplier\n"
        "D-17;G;Fan F 3;DE;6205;25;k5;6500;F1\nD-17;G;Fan F 3;NDE;6204;20;k5;6500;F1\n"
    )
    stations = write(tmp_path, text)
    assert stations.text("drawing_revision").tolist() == ["G", "G"]
    assert stations.number("speed_max").tolist() == [6500, 6500]
    assert not [p for p in stations.problems if "DES" in p.message]


@pytest.mark.parametrize(
    ("whole", "bearing", "shaft"),
    [
        ("Machine parameters", "Bearing parameters", "Shaft seat"),
        ("整机参数", "轴承参数", "轴颈参数"),
        ("Paramètres généraux", "Paramètres du roulement", "Portée d'arbre"),
    ],
)
def test_a_group_of_the_whole_machine_stands_beside_those_of_positions(tmp_path, whole, bearing, shaft):
    def group(name, where, *stated):
        of = {"location": where} if where else {}
        return {"group": name, **of, "attributes": [{"attribute": a, "value": b, "unit": c} for a, b, c in stated]}

    groups = [group(whole, "", ("Maximum speed", 5400, "r/min"), ("Rotor mass", 2.8, "kg"))]
    for where, number, size in (("DE", "6005", 25), ("NDE", "6004", 20)):
        groups.append(group(bearing, where, ("Bearing designation", number, ""), ("Radial load", 340, "N")))
        groups.append(group(shaft, where, ("Seat diameter", f"{size} k5", "mm"), ("Roughness Ra", 0.2, "µm")))
    stations = write(tmp_path, json.dumps({"drawing": "D-1", "groups": groups}), "table.json")
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert stations.number("speed_max").tolist() == [5400, 5400]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]


@pytest.mark.parametrize(
    ("bearing", "material"),
    [("Roulement à billes", "Matière"), ("Cuscinetti a sfere", "Materiale"), ("Rodamiento de bolas", "Material"),
     ("Шариковый подшипник", "Материал"), ("Ball bearing", "Material")],
)  # fmt: skip
def test_the_material_of_a_ball_bearing_is_not_that_of_its_balls(tmp_path, bearing, material):
    text = f"Machine;Position;{bearing} {material};Shaft seat diameter\nP;A;100Cr6;25 k5\nP;B;100Cr6;25 k5\n"
    assert write(tmp_path, text).place("ball_material", 0) is None


@pytest.mark.parametrize("grade", ["1", "2.5", "6.3"])
def test_a_unit_stands_before_its_value_in_a_title(tmp_path, grade):
    text = (
        f"Drawing;;;L-8764\nMax. speed;;1/min;22000\nBalance grade;;mm/s;{grade}\nRequired life;;h;6000\n;;;\n"
        "Quantity;Symbol;Unit;DE\nBearing;;-;6902\nShaft seat diameter;;mm;15 k5\nRadial load;;N;300\n"
    )
    stations = write(tmp_path, text)
    assert stations.number("balance_grade").tolist() == [float(grade)]
    assert stations.number("speed_max").tolist() == [22000]
