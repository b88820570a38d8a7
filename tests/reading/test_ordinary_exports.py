"""Tables as ordinary design offices export them, one kind of habit a test, in several languages."""

from pathlib import Path

import openpyxl
import pytest

from linter.reading import InputError, Reading, read_table
from linter.reading.words.names import Names


def read(tmp_path: Path, text: str, encoding: str = "utf-8") -> Reading:
    path = tmp_path / "table.csv"
    path.write_bytes(text.encode(encoding))
    return read_table(path)


def nominals(reading: Reading, name: str) -> list[float]:
    return reading.stations.size(name).nominal.tolist()


@pytest.mark.parametrize(
    "head",
    [
        "Двигатель;n, об/мин;Вал A;Корпус A;Вал B;Корпус B;Смазка",
        "Ventola;giri/min;albero A;sede A;albero B;sede B;Lubrificante",
    ],
)
def test_a_value_of_all_positions_beside_those_of_each_leaves_rows_machines(tmp_path, head):
    reading = read(tmp_path, f"{head}\nДА-71;3000;17k6;40H7;15k6;35H7;grease\nДА-80;3000;20k6;47H7;17k6;40H7;grease\n")
    assert reading.stations.machines == ("ДА-71", "ДА-80")
    assert nominals(reading, "shaft_seat_diameter") == [17, 15, 20, 17]


@pytest.mark.parametrize("word", ["箇所", "Location", "Stelle", "Место"])
def test_a_word_for_a_place_may_head_the_names(tmp_path, word):
    reading = read(
        tmp_path,
        f"No.;{word};Nominal [mm];Upper [mm];Lower [mm]\n"
        "1;shaft seat A;12;+0.008;-0.003\n2;housing bore A;28;+0.021;0\n"
        "3;shaft seat B;10;+0.007;-0.002\n4;housing bore B;26;+0.021;0\n",
    )
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert nominals(reading, "housing_seat_diameter") == [28, 26]


def test_a_page_of_code_that_is_told_is_not_the_reason_of_a_refusal(tmp_path):
    with pytest.raises(InputError) as refused:
        read(tmp_path, "寸法公差表,,\n番号,箇所,基準寸法\n1,軸全長,96\n2,キー溝幅,3\n", "cp932")
    assert refused.value.code == "nothing-recognised"


@pytest.mark.parametrize(
    ("name", "meant"),
    [
        ("dblShaftDiaFront", ("shaft_seat_diameter", "Front")), ("fltMaxSpeed", ("speed_max", None)),
        ("dbl_RotorMass", ("rotor_mass", None)), ("PRM_HousingBoreA", ("housing_seat_diameter", "A")),
    ],
)  # fmt: skip
def test_the_sort_of_a_value_before_its_name_says_nothing(name, meant):
    found = Names.built_in().find(name if name[:3] != "PRM" else name.replace("PRM", "prm"))
    assert found is not None
    assert (found.parameter, found.station) == meant


@pytest.mark.parametrize(
    "heads", [("上轴承", "下轴承"), ("Lager A", "Lager B"), ("Front", "Rear"), ("Palier avant", "Palier arrière")]
)
def test_positions_side_by_side_in_a_form_keep_their_own_values(tmp_path, heads):
    book = openpyxl.Workbook()
    for row in [
        ["最高转速", "12000 rpm", "转子质量", "6.5 kg"],
        [heads[0], None, heads[1], None],
        ["Shaft dia.", "25 k5", "Shaft dia.", "20 k5"],
        ["Housing dia.", "47 H6", "Housing dia.", "42 H6"],
        ["Radial load", "150 N", "Radial load", "80 N"],
    ]:
        book.active.append(row)
    book.save(tmp_path / "form.xlsx")
    reading = read_table(tmp_path / "form.xlsx")
    assert nominals(reading, "shaft_seat_diameter") == [25, 20]
    assert reading.stations.number("radial_load").tolist() == [150, 80]
    assert reading.stations.number("rotor_mass").tolist() == [6.5, 6.5]


@pytest.mark.parametrize("bore", ["Bohrungs-Ø", "Bore", "Ø foro", "Диаметр отверстия"])
def test_a_bore_larger_than_the_shaft_beside_it_is_the_housings(tmp_path, bore):
    reading = read(tmp_path, f"Pos.;Shaft dia [mm];{bore} [mm]\nA;12;32\nB;15;35\n")
    assert nominals(reading, "housing_seat_diameter") == [32, 35]
    rings = read(tmp_path, f"Pos.;Shaft dia [mm];{bore} [mm]\nA;12;12\nB;15;15\n")
    assert rings.stations.number("bore_diameter").tolist() == [12, 15]


def test_captions_of_tables_that_share_one_parameter_are_no_machines(tmp_path):
    reading = read(
        tmp_path,
        "Table 1: bearings;;;\nPosition;Type;d;D;B\nFan end;6201-2Z;12;32;10\nGear end;6202-2Z;15;35;11\n;;;\n"
        "Table 2: seats;;;\nPosition;d [mm];Shaft fit;Shaft Ra\nFan end;12;k5;0.4\nGear end;15;k5;0.4\n",
    )
    assert len(reading.stations.machines) == 1
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]


@pytest.mark.parametrize("names", [("Cuscinetto lato motore", "Cuscinetto lato uscita"), ("DE bearing", "NDE bearing")])
def test_a_parts_list_names_its_positions_in_words(tmp_path, names):
    reading = read(
        tmp_path,
        "Pos.;Description;Code;Qty;Shaft seat;Housing seat;Note\n"
        f"10;{names[0]};6004-2Z;1;Ø20 k6;Ø42 H7;fixed\n20;{names[1]};6005-2RS1;1;Ø25 k6;Ø47 H7;floating\n"
        "30;Circlip;DIN 472-47;1;;;\n40;Shaft;MR63-02;1;;;C45\n",
    )
    assert reading.stations.text("bearing_designation").tolist() == ["6004-2Z", "6005-2RS1"]
    assert reading.stations.text("station").tolist() == [*names]
    assert [*reading.stations.choice("axial_role").texts()] == ["locating", "floating"]
    assert any("DIN 472-47" in unused.value for unused in reading.unused)


@pytest.mark.parametrize(
    ("low", "high"),
    [
        ("LIE", "LSE"),
        ("USG", "OSG"),
        ("Lower spec limit", "Upper spec limit"),
        ("Lim. inf.", "Lim. sup."),
        ("規格下限", "規格上限"),
    ],
)
def test_limits_of_an_inspection_plan_by_their_abbreviations(tmp_path, low, high):
    reading = read(
        tmp_path,
        f"No.;Characteristic;Nominal;{low};{high};Unit\n1;shaft seat A;25;25.002;25.011;mm\n"
        "2;housing seat A;52;52;52.019;mm\n",
    )
    assert reading.stations.size("shaft_seat_diameter").lower.tolist() == pytest.approx([0.002])
    assert reading.stations.size("housing_seat_diameter").upper.tolist() == pytest.approx([0.019])


def test_a_word_for_a_seat_that_one_part_alone_uses_is_its(tmp_path):
    reading = read(
        tmp_path,
        "Nom;Valeur;Unité;Tolérance\nPortée d'arbre avant;25;mm;k5\nAlésage palier avant;52;mm;H6\n"
        "Rugosité portée avant;0,4;µm;\nPortée d'arbre arrière;17;mm;k5\nAlésage palier arrière;40;mm;J6\n"
        "Rugosité portée arrière;0,8;µm;\n",
    )
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]


def test_the_unit_of_its_row_tells_a_mass_from_a_name(tmp_path):
    reading = read(
        tmp_path, "Item,Unit,Front,Rear\nShaft seat,mm,25 k5,20 k5\nHousing seat,mm,52 H6,47 H6\nRotor,kg,8.6,\n"
    )
    assert reading.stations.number("rotor_mass").tolist() == [8.6, 8.6]
    assert "8.6" not in reading.stations.machines


@pytest.mark.parametrize("head", ["Shldr Dia", "挡肩", "Schulter-Ø", "Abutment", "Заплечик"])
def test_a_shoulder_of_no_part_is_told_by_the_bearing_in_its_row(tmp_path, head):
    table = "Position;Bearing;{} [mm]\nA;6207;{}\nB;6306;{}\n"
    shaft = read(tmp_path, table.format(head, 42, 37))
    assert nominals(shaft, "shaft_shoulder_diameter") == [42, 37]
    housing = read(tmp_path, table.format(head, 65, 65))
    assert nominals(housing, "housing_shoulder_diameter") == [65, 65]
    both = read(tmp_path, table.format(head, 42, 65)).stations  # one says shaft, the other housing: asked
    assert not both.known("shaft_shoulder_diameter").any()
    assert not both.known("housing_shoulder_diameter").any()


@pytest.mark.parametrize(
    ("name", "meant"),
    [
        ("Bund an der Ankerwelle", "shaft_shoulder_diameter"), ("Gewicht des Ankers", "rotor_mass"),
        ("albero motore sede", "shaft_seat_diameter"), ("вал насоса диаметр", "shaft_seat_diameter"),
        ("电机轴直径", "shaft_seat_diameter"), ("モータ軸径", "shaft_seat_diameter"),
        ("Motor shaft seat", "shaft_seat_diameter"),
        ("Radio máx. eje", "shaft_fillet_radius"), ("Max. radius housing", "housing_fillet_radius"),
    ],
)  # fmt: skip
def test_a_shaft_is_named_by_what_it_turns(name, meant):
    found = Names.built_in().find(name)
    assert found is not None
    assert found.parameter == meant


def test_a_row_of_another_part_in_a_parts_list_is_no_position(tmp_path):
    reading = read(
        tmp_path,
        "No.;Description;Designation;Shaft;Housing\n1;Bearing motor side;6206-2Z;30 k6;62 H7\n"
        "2;Bearing gear side;6207-2Z;35 k6;72 H7\n3;Shaft seal;30x47x7;30 h11;47 H8\n",
    )
    assert nominals(reading, "shaft_seat_diameter") == [30, 35]
    assert any(unused.value == "30 h11" for unused in reading.unused)


def test_lists_side_by_side_below_words_for_parts_are_each_of_their_part(tmp_path):
    reading = read(
        tmp_path,
        "Shaft,,,,Housing,,,\nFeature,Nominal,Tol +,Tol -,Feature,Nominal,Tol +,Tol -\n"
        "Seat A,17,+0.009,+0.001,Seat A,40,+0.016,0\nSeat B,15,+0.009,+0.001,Seat B,35,+0.016,0\n"
        "Shoulder A,21,0,-0.1,Shoulder A,36,+0.1,0\nShoulder B,19,0,-0.1,Shoulder B,31,+0.1,0\n"
        "All dimensions in mm.,,,,,,,\n",
    )
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert nominals(reading, "shaft_seat_diameter") == [17, 15]
    assert nominals(reading, "housing_shoulder_diameter") == [36, 31]
    assert reading.stations.size("shaft_seat_diameter").lower.tolist() == pytest.approx([0.001, 0.001])


def test_a_column_of_classes_in_a_list_without_a_heading_is_read(tmp_path):
    reading = read(
        tmp_path,
        "shaft_top_diameter;6;mm;h5\nhousing_top_bore;13;mm;H6\nshaft_bottom_diameter;5;mm;h5\nhousing_bottom_bore;11;mm;H6\n"
        "rotor_mass;64;g;\n",
    )
    assert [*reading.stations.size("housing_seat_diameter").tolerance_class] == ["H6", "H6"]


@pytest.mark.parametrize("text", ["libre, ressort", "floating, spring", "Loslager, Feder"])
def test_a_floating_bearing_under_a_spring_is_spring_loaded(tmp_path, text):
    reading = read(tmp_path, f'Position;Shaft seat [mm];Function\nA;17 k5;fixed\nB;15 k5;"{text}"\n')
    assert [*reading.stations.choice("axial_role").texts()] == ["locating", "spring-loaded"]


def test_deviations_behind_a_bore_keep_their_own_unit(tmp_path):
    reading = read(
        tmp_path,
        "Palier;Ø arbre mm;tol. sup. µm;tol. inf. µm;Ø alésage mm;tol. sup. µm;tol. inf. µm\n"
        "CA;40;+18;+2;90;+22;-13\nCOA;40;+18;+2;80;+30;0\n",
    )
    assert reading.stations.size("housing_seat_diameter").lower.tolist() == pytest.approx([-0.013, 0])


@pytest.mark.parametrize(("one", "other"), [("Del", "Tras"), ("Delantero", "Trasero")])
def test_a_position_cut_short_at_the_end_of_names_is_no_article(tmp_path, one, other):
    rows = "".join(
        f"diamEje{p};{d};mm;k5\ndiamAlojamiento{p};{D};mm;H6\ncargaRadial{p};9;N;\n"
        for p, d, D in ((one, 17, 40), (other, 15, 35))
    )
    reading = read(tmp_path, f"nombre;valor;unidad;clase\n{rows}")
    assert reading.stations.text("station").tolist() == [one, other]
    assert nominals(reading, "housing_seat_diameter") == [40, 35]


def test_words_for_deviations_are_positions_above_a_second_table(tmp_path):
    reading = read(
        tmp_path,
        "Größe;Wert;Einheit\nMax. Drehzahl;600;1/min\n;;\nLagerstellen;;\nMerkmal;oben;unten\nLager;7208 B;6208\n"
        "Welle Ø (mm);40 k5;40 j5\nGehäuse Ø (mm);80 J6;80 H6\n",
    )
    assert reading.stations.text("station").tolist() == ["oben", "unten"]
    assert reading.stations.number("speed_max").tolist() == [600, 600]
    assert nominals(reading, "shaft_seat_diameter") == [40, 40]


def test_a_deviation_named_upper_at_a_position_named_lower(tmp_path):
    rows = "".join(
        f"brg_{p}_part_no\t{b}\nshaft_{p}_seat_dia_mm\t17\nshaft_{p}_seat_tol_upper_um\t+3\n"
        f"shaft_{p}_seat_tol_lower_um\t-2\n"
        for p, b in (("upper", "7203 B"), ("lower", "6203"))
    )
    reading = read(tmp_path, rows + "flywheel_max_speed_rpm\t30000\nflywheel_rotor_mass_kg\t8.5\n")
    assert reading.stations.text("station").tolist() == ["upper", "lower"]
    assert reading.stations.size("shaft_seat_diameter").lower.tolist() == pytest.approx([-0.002, -0.002])
    assert reading.stations.number("rotor_mass").tolist() == [8.5, 8.5]


def test_fixed_and_floating_bearings_may_head_columns_of_machines(tmp_path):
    reading = read(
        tmp_path,
        "Typ;Drehzahl;Festlager;;;Loslager;;\n;max.;Lager;Welle;Last radial;Lager;Welle;Last radial\n"
        ";1/min;;mm;N;;mm;N\nRV 250;2900;6204;20 k6;150;6204;20 k6;90\nRV 315;2900;6205;25 k6;240;6205;25 k6;130\n",
    )
    assert reading.stations.machines == ("RV 250", "RV 315")
    assert [*reading.stations.choice("axial_role").texts()] == ["locating", "floating"] * 2
    assert nominals(reading, "shaft_seat_diameter") == [20, 20, 25, 25]


@pytest.mark.parametrize(("one", "other"), [("inner end", "outer end"), ("drive end", "free end"), ("front", "rear")])
def test_a_place_with_the_word_for_the_bearing_behind_a_comma(tmp_path, one, other):
    rows = "".join(
        f"Journal, {p} bearing;{d};+0.018;+0.002;k6\nShoulder, {p} bearing;{s};0;-0.2;\n"
        f"Casing bore, {p} bearing;{D};+0.035;0;H7\n"
        for p, d, s, D in ((one, 45, 54, 85), (other, 40, 48, 80))
    )
    reading = read(tmp_path, f"Feature;Nominal [mm];Upper [mm];Lower [mm];Class\n{rows}")
    assert nominals(reading, "shaft_seat_diameter") == [45, 40]
    assert nominals(reading, "shaft_shoulder_diameter") == [54, 48]
    assert nominals(reading, "housing_seat_diameter") == [85, 80]


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("Lagerstelle A (Pumpenseite)", "Lagerstelle B (Motorseite)"),
        ("Bearing A (pump end)", "Bearing B (motor end)"),
    ],
)
def test_a_block_of_a_position_may_say_where_it_lies_in_brackets(tmp_path, one, other):
    block = "{}\t\nBearing\t{}\nShaft seat\t{}\nRadial load\t{} N\n"
    reading = read(tmp_path, block.format(one, "6305-2Z", "25 k5", 380) + block.format(other, "6204-2Z", "20 k5", 150))
    assert nominals(reading, "shaft_seat_diameter") == [25, 20]
    assert reading.stations.number("radial_load").tolist() == [380, 150]


def test_limits_below_a_word_for_a_fit_are_those_of_the_size(tmp_path):
    reading = read(
        tmp_path,
        "Location,Brg P/N,Shaft fit limits (in),Housing fit limits (in)\n"
        "Drive end,6311 C3,2.1655-2.1660,4.7244-4.7258\nFree end,6309 C3,1.7718-1.7723,3.9370-3.9384\n",
    )
    assert nominals(reading, "shaft_seat_diameter") == pytest.approx([55.0037, 45.00372], abs=0.02)
    assert reading.stations.known("housing_seat_diameter").all()


@pytest.mark.parametrize("words", [("Größtmaß", "Kleinstmaß"), ("max", "min"), ("maxi", "mini")])
def test_limits_of_a_bore_beside_those_of_the_shaft(tmp_path, words):
    high, low = words
    reading = read(
        tmp_path,
        f"Pos.;Welle {high} [mm];Welle {low} [mm];Bohrungs-Ø {high} [mm];Bohrungs-Ø {low} [mm]\n"
        "A;25.0155;25.002;52.030;52.000\nB;20.0155;20.002;47.025;47.000\n",
    )
    assert reading.stations.known("housing_seat_diameter").all()


def test_labels_with_a_colon_in_a_form_of_three_pairs(tmp_path):
    book = openpyxl.Workbook()
    for row in [
        ["Motor:", "MTR-90", "Plano:", "M90-301", "Rev.:", "2"],
        ["Rodamiento A:", "6205-2Z", "Asiento eje A:", "25 k6", "Alojamiento A:", "52 H7"],
        ["Rodamiento B:", "6203-2Z", "Asiento eje B:", "17 k6", "Alojamiento B:", "40 H7"],
        ["Carga radial A:", "210 N", "Carga radial B:", "95 N", "Peso rotor:", "5,4 kg"],
    ]:
        book.active.append(row)
    book.save(tmp_path / "form.xlsx")
    reading = read_table(tmp_path / "form.xlsx")
    assert nominals(reading, "shaft_seat_diameter") == [25, 17]
    assert nominals(reading, "housing_seat_diameter") == [52, 40]
    assert reading.stations.number("radial_load").tolist() == [210, 95]
