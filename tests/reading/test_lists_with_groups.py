"""Lists of parameters: columns of groups, positions above a row of designations, choices that headings only hint at."""

import json

import pytest

from linter.reading import read_table


@pytest.fixture
def read(tmp_path):
    def reader(text):
        path = tmp_path / "t.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path).stations

    return reader


@pytest.mark.parametrize(
    "groups",
    [
        ("Anagrafica", "Cuscinetti", "Cuscinetti", "Cuscinetti"),
        ("General", "Bearings", "Fits", "Loads"),
        ("Allgemein", "Lager", "Sitze", "Lasten"),
        ("总体", "轴承", "轴", "载荷"),
    ],
)
def test_a_column_of_groups_names_no_machines(read, groups):
    rows = ("Max speed;3550;rpm", "Bearing DE;6205;", "Shaft seat DE;25 k5;mm", "Radial load DE;240;N")
    stations = read("Attributo;Valore;U.M.;Gruppo\n" + "".join(f"{r};{g}\n" for r, g in zip(rows, groups, strict=True)))
    assert stations.text("machine").tolist() == ["t"]
    assert stations.number("speed_max").tolist() == [3550]
    assert stations.number("radial_load").tolist() == [240]


def test_two_machines_under_the_same_heading_stay_two(read):
    rows = "Max speed;{0};rpm;{1}\nBearing DE;6205;;{1}\nShaft seat DE;25 k5;mm;{1}\n"
    stations = read("Attributo;Valore;U.M.;Gruppo\n" + rows.format(3550, "M1") + rows.format(4500, "M2"))
    assert stations.text("machine").tolist() == ["M1", "M2"]


@pytest.mark.parametrize(
    ("heads", "bearing"),
    [(";Halslager;Fußlager;Bemerkung", "Kugellager"), (";Palier de tête;Palier de pied;Note", "Roulement"),
     (";Footstep;Neck;Remark", "Ball bearing"), (";足部;颈部;备注", "轴承")],
)  # fmt: skip
def test_positions_stand_above_a_row_of_designations(read, heads, bearing):
    stations = read(f"{heads}\n{bearing};6205-2Z;6204-2Z;\nShaft seat mm;25 k5;20 k5;ground\nRadial load N;22;9;\n")
    assert stations.text("station").tolist() == heads.split(";")[1:3]
    assert stations.text("bearing_designation").tolist() == ["6205-2Z", "6204-2Z"]


@pytest.mark.parametrize(
    ("row", "name", "choice"),
    [
        ("Fett;KP2K-30;KP2K-30", "lubrication", "grease"), ("Grease;KPHC 1 N-40;K2K", "lubrication", "grease"),
        ("Freistich Welle;F;F", "shaft_undercut_form", "F"), ("Housing undercut;E;E", "housing_undercut_form", "E"),
        ("Aufgabe;fest;fest", "axial_role", "locating"), ("Ruolo;fisso;fisso", "axial_role", "locating"),
    ],
)  # fmt: skip
def test_a_choice_under_a_word_that_hints_at_it(read, row, name, choice):
    stations = read(f"Parameter;A;B\nBearing;6205;6204\nShaft seat mm;25 k5;20 k5\n{row}\n")
    assert set(stations.choice(name).texts()) == {choice}


@pytest.mark.parametrize("row", ["Balls;ceramic", "Kugeln;Keramik", "Sfere;ceramica", "球;陶瓷", "Шарики;керамика"])
def test_balls_of_some_ceramic_are_asked_about_and_not_taken_for_steel(read, row):
    stations = read(f"Parameter;A;B\nBearing;6205;6204\nShaft seat mm;25 k5;20 k5\n{row};{row.split(';')[1]}\n")
    assert set(stations.choice("ball_material").texts()) == {""}
    assert "ambiguous-choice" in {problem.code for problem in stations.problems}


@pytest.mark.parametrize("name", ["Подшипник", "Подшипник ГОСТ 8338", "Lager", "轴承"])
def test_a_number_of_another_system_is_the_designation_and_asked_about(read, name):
    stations = read(f"Parameter;A;B\n{name};80306;80307\nBore mm;30;35\nShaft seat mm;30 k5;35 k5\n")
    assert stations.text("bearing_designation").tolist() == ["80306", "80307"]
    assert not stations.known("outside_diameter").any()


@pytest.mark.parametrize(
    "name", ["Nombre par palier", "Number per bearing", "Anzahl je Lager", "Numero per cuscinetto"]
)
def test_how_many_bearings_is_no_designation(read, name):
    stations = read(f"Parameter;A;B\nBearing;6205;6204\n{name};2;2\nShaft seat mm;25 k5;20 k5\n")
    assert stations.text("bearing_designation").tolist() == ["6205", "6204"]


@pytest.mark.parametrize(("one", "other"), [("前轴承位", "前轴承"), ("front", "front bearing")])
def test_a_unit_by_the_bearing_of_a_position_of_two_names(tmp_path, one, other):
    path = tmp_path / "t.json"
    seat = {"diameter": 20, "tolerance": "k6", "shoulder": 26}
    path.write_text(json.dumps({"shaft": {one: seat}, other: {"designation": "6204"}}), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [26]


@pytest.mark.parametrize("order", ["units behind", "units before"])
@pytest.mark.parametrize(
    ("head", "parts", "names"),
    [
        ("Part;Name", ("Shaft", "Housing"), ("Diameter", "Roughness Ra", "Shoulder diameter")),
        ("Group;Characteristic", ("Shaft", "Housing"), ("Diameter", "Surface roughness Ra", "Abutment diameter")),
        ("Bauteil;Merkmal", ("Welle", "Gehäuse"), ("Durchmesser", "Rauheit Ra", "Schulterdurchmesser")),
        ("Pièce;Attribut", ("Arbre", "Logement"), ("Diamètre", "Rugosité Ra", "Diamètre d'épaulement")),
        ("Деталь;Параметр", ("Вал", "Корпус"), ("Диаметр", "Шероховатость Ra", "Диаметр заплечика")),
        ("零件;参数", ("轴", "轴承座"), ("直径", "粗糙度Ra", "挡肩直径")),
    ],
)
def test_a_column_of_parts_left_of_names_with_the_positions_side_by_side(read, order, head, parts, names):
    values = {
        parts[0]: ("25 k5;20 j5", "0.4;0.5", "31;25.5"),
        parts[1]: ("52 H6;47 J6", "0.8;1.0", "46;41"),
    }
    behind = order == "units behind"
    lines = [f"{head};DE;NDE;Unit" if behind else f"{head};Unit;DE;NDE"]
    for part, cells in values.items():
        for name, unit, both in zip(names, ("mm", "µm", "mm"), cells, strict=True):
            lines.append(f"{part};{name};{both};{unit}" if behind else f"{part};{name};{unit};{both}")
    stations = read("\n".join(lines) + "\n")
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [52, 47]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.0]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [31, 25.5]


_MACHINE_ROWS = "Bearing DE;6205;;{0}\nShaft seat DE;25 k5;mm;{0}\nBearing NDE;6204;;{0}\nShaft seat NDE;20 k5;mm;{0}\n"


@pytest.mark.parametrize("head", ["Object", "Model", "Assembly", "Baureihe", "Modèle", "機種"])
def test_a_column_right_of_the_names_keeps_machines_apart(read, head):
    rows = _MACHINE_ROWS.format("RB-40") + _MACHINE_ROWS.format("RB-50").replace("20 k5", "30 k5")
    stations = read(f"Name;Value;Unit;{head}\n" + rows)
    assert stations.text("machine").tolist() == ["RB-40", "RB-40", "RB-50", "RB-50"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20, 25, 30]


@pytest.mark.parametrize(
    ("head", "one", "other"),
    [
        ("State", "old", "new"),
        ("Status", "measured", "nominal"),
        ("Revision", "Rev A", "Rev B"),
        ("Source", "P 1", "P 2"),
    ],
)
def test_statements_of_the_same_machine_are_asked_about(read, head, one, other):
    rows = _MACHINE_ROWS.format(one) + _MACHINE_ROWS.format(other).replace("20 k5", "30 k5")
    stations = read(f"Name;Value;Unit;{head}\n" + rows)
    assert len(set(stations.text("machine").tolist())) == 1
    assert any(problem.kind == "disagreement" for problem in stations.problems)
