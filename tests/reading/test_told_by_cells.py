"""What columns are whose heading says too little: their cells, and what tells rows apart, say it."""

import pytest

from linter.reading import Reading, read_table
from linter.reading.layouts.title import units_said

SIZES = "bore_diameter,outside_diameter"


def read(tmp_path, text: str) -> Reading:
    path = tmp_path / "table.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path)


def keys(reading: Reading) -> list[tuple[str, str]]:
    return list(zip(reading.stations.text("machine"), reading.stations.text("station"), strict=True))


@pytest.mark.parametrize("label", ["Spindle", "Welle", "Albero", "軸", "Variant"])
def test_a_column_that_keeps_equal_positions_apart_names_the_machine(tmp_path, label):
    rows = "HSS,A,8,22\nHSS,B,8,22\nLSS,A,10,26\nLSS,B,10,26\n"
    reading = read(tmp_path, f"{label},Position,{SIZES}\n{rows}")
    assert keys(reading) == [("HSS", "A"), ("HSS", "B"), ("LSS", "A"), ("LSS", "B")]
    assert list(reading.stations.number("bore_diameter")) == [8, 8, 10, 10]
    assert [p.code for p in reading.stations.problems if p.kind == "assumption" and p.parameter == "machine"]


@pytest.mark.parametrize("cells", [("x1", "x2", "x3", "x4"), ("HSS", "LSS", "HSS", "LSS"), ("same",) * 4])
def test_a_column_that_does_not_keep_them_apart_names_no_machine(tmp_path, cells):
    rows = "".join(f"{c},{s},{d},22\n" for c, s, d in zip(cells, "ABAB", (8, 8, 10, 10), strict=True))
    reading = read(tmp_path, f"Batch,Position,{SIZES}\n{rows}")
    assert not {machine for machine, _ in keys(reading)} & set(cells)


def test_front_and_front_bearing_are_one_position(tmp_path):
    text = "Name,Value,Unit\nFront bearing bore,8,mm\nFront shaft seat Ra,0.4,µm\nRear bearing bore,10,mm\n"
    reading = read(tmp_path, text)
    assert [station.removesuffix(" bearing") for _, station in keys(reading)] == ["Front", "Rear"]
    assert reading.stations.known("shaft_seat_roughness").tolist() == [True, False]


@pytest.mark.parametrize(
    ("label", "cells", "parameter"),
    [
        ("Function", ("locating", "floating"), "axial_role"), ("Funktion", ("Festlager", "Loslager"), "axial_role"),
        ("Class of the bearing", ("P5", "P6"), "tolerance_class"), ("Класс точности", ("6", "5"), "tolerance_class"),
        ("Inner clearance code", ("C3", "C2"), "clearance_class"), ("Kugeln", ("Si3N4", "Stahl"), "ball_material"),
    ],
)  # fmt: skip
def test_choices_are_told_by_their_cells(tmp_path, label, cells, parameter):
    one, two = cells
    reading = read(tmp_path, f"machine,station,{SIZES},{label}\nM,A,8,22,{one}\nM,B,8,22,{two}\n")
    assert reading.stations.known(parameter).all()


@pytest.mark.parametrize("label", ["Shaft class", "Seal grade", "Weld quality of housing"])
def test_a_class_of_another_thing_is_none_of_the_bearing(tmp_path, label):
    reading = read(tmp_path, f"machine,station,{SIZES},{label}\nM,A,8,22,P5\nM,B,8,22,P6\n")
    assert label not in {u.parameter for u in reading.understood}
    stated = [u for u in reading.understood if u.parameter == "tolerance_class"]
    assert stated == [] or label == "Seal grade"


@pytest.mark.parametrize("label", ["Bearing P/N", "Brg P/N", "P/N", "Lager P"])
def test_a_letter_beside_a_designation_is_no_position(tmp_path, label):
    path = tmp_path / "table.json"
    path.write_text(f'{{"M": {{"A": {{"{label}": "608/C3"}}, "B": {{"{label}": "608/C3"}}}}}}', encoding="utf-8")
    assert [station for _, station in keys(read_table(path))] in (["A", "B"], ["P"] * (label == "Lager P"))


def test_sizes_of_the_bearing_in_rows_of_shaft_and_housing_are_the_bearing_s(tmp_path):
    rows = "".join(f"{s},25,47,{part}\n" for s in "AB" for part in ("Shaft,25 k5", "Housing,47 H6"))
    reading = read(tmp_path, f"Position,Bore d [mm],Outside diameter D [mm],Part,Seat diameter [mm]\n{rows}")
    assert list(reading.stations.number("bore_diameter")) == [25, 25]
    assert not reading.stations.known("shaft_bore").any()


def test_machines_above_the_row_that_heads_positions(tmp_path):
    text = "Product,,Drive,Drive,Fan,Fan\nProperty,Unit,Left,Right,Left,Right\n"
    text += "Bore,mm,8,8,10,10\nOutside diameter,mm,22,22,26,26\n"
    assert keys(read(tmp_path, text)) == [("Drive", "Left"), ("Drive", "Right"), ("Fan", "Left"), ("Fan", "Right")]


@pytest.mark.parametrize(
    ("sentence", "unit"),
    [
        ("All dimensions in inches unless noted", "inches"), ("Размеры и допуски формы и расположения в мм", "мм"),
        ("Quote e tolleranze in mm", "mm"), ("寸法はすべてmm", "mm"), ("Dimensions of the 6 mm pin", ""),
        ("Maße der Welle in mm, des Gehäuses in Zoll", ""),
    ],
)  # fmt: skip
def test_a_sentence_about_dimensions_states_their_one_unit(sentence, unit):
    assert units_said(sentence) == unit


def test_a_list_of_texts_alone_is_no_size_and_is_told(tmp_path):
    path = tmp_path / "table.json"
    seat = '["0.05", "Feder"]'
    rows = f'{{"bore_diameter": 8, "outside_diameter": 22, "shaft_seat_diameter": {seat}}}'
    path.write_text(f'{{"M": {{"A": {rows}, "B": {rows}}}}}', encoding="utf-8")
    reading = read_table(path)
    assert not reading.stations.known("shaft_seat_diameter").any()
    assert any("shaft_seat_diameter" in unused.place.pointer for unused in reading.unused)


@pytest.mark.parametrize(
    ("head", "places"),
    [
        ("Position;Bearing;Shaft;Housing", ("front 1", "front 2")),
        ("Posiz.;Cuscinetto;Albero;Alloggiamento", ("anteriore 1", "anteriore 2")),
        ("Stelle;Lager;Welle;Gehäuse", ("vorn 1", "vorn 2")),
        ("位置;軸受;軸;ハウジング", ("前側1", "前側2")),
    ],
)
def test_a_heading_of_parts_alone_is_one_by_the_cells_below_it(tmp_path, head, places):
    rows = f"{places[0]};6203;17 k5;40 H6\n{places[1]};6202;15 k5;35 H6\n"
    reading = read(tmp_path, f"Max. speed;24000 rpm\nBalance;G 2.5\n\n{head}\n{rows}")
    assert [station for _, station in keys(reading)] == [*places]
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [17, 15]
    assert reading.stations.size("housing_seat_diameter").nominal.tolist() == [40, 35]
    assert reading.stations.number("balance_grade").tolist() == [2.5, 2.5]


def test_units_below_a_heading_are_read_or_asked_about(tmp_path):
    head = "Position;Bearing;Bore;Radial load;Axial load\n;;mm;daN;daX\n"
    reading = read(tmp_path, f"{head}A;6203;17;32;12\nB;6202;15;21;4\n")
    assert reading.stations.number("radial_load").tolist() == [320, 210]
    assert not reading.stations.known("axial_load").any()
    assert any("daX" in problem.message for problem in reading.stations.problems)


@pytest.mark.parametrize(
    "title",
    ["Seats (dimensions mm, finish microinch)", "Maße in mm, Oberflächen in µin", "cotes en mm, finition en µin"],
)
def test_the_unit_of_the_finish_in_a_title_is_that_of_roughness(tmp_path, title):
    rows = "DE;17 k5;40 H6;8\nNDE;15 k5;35 H6;16\n"
    reading = read(tmp_path, f"{title}\nPosition;Shaft seat;Housing seat;Shaft seat Ra\n{rows}")
    assert reading.stations.number("shaft_seat_roughness").tolist() == pytest.approx([0.2032, 0.4064])


@pytest.mark.parametrize(
    "text",
    [
        "Series SK;;;;;;;;;\n;;Bearing A (fixed);;;Bearing B (floating);;;\nSize;n max rpm;Bearing;Shaft;Housing;"
        "Bearing;Shaft;Housing;Rotor kg\nSK 1;6000;6203-2Z;17 k5;40 J6;6202-2Z;15 k5;35 H6;1.6\n"
        "SK 2;6000;6204-2Z;20 k5;47 J6;6203-2Z;17 k5;40 H6;2.7\nDimensions in mm;;;;;;;;\n",
        ";Lato motore;;;Lato opposto;;\nTaglia;Cuscinetto;Albero;Sede;Cuscinetto;Albero;Sede\n"
        "40;6203-2Z;17 k5;40 J6;6202-2Z;15 k5;35 H6\n63;6204-2Z;20 k5;47 J6;6203-2Z;17 k5;40 H6\n",
        ";;前側;;;後側;;\n機種;質量 kg;軸受;軸;ハウジング;軸受;軸;ハウジング\n"
        "GS-1;2;6203ZZ;17 k5;40 J6;6202ZZ;15 k5;35 H6\n"
        "GS-2;3;6204ZZ;20 k5;47 J6;6203ZZ;17 k5;40 H6\n",
    ],
)
def test_words_for_parts_again_below_each_position_are_those_of_its_machine_in_each_row(tmp_path, text):
    reading = read(tmp_path, text)
    assert len({machine for machine, _ in keys(reading)}) == 2
    assert len({station for _, station in keys(reading)}) == 2
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [17, 15, 20, 17]
    assert reading.stations.size("housing_seat_diameter").nominal.tolist() == [40, 35, 47, 40]
    assert reading.stations.text("bearing_designation").tolist()[1][:4] == "6202"


@pytest.mark.parametrize(
    ("head", "rows"),
    [
        ("Bearing;Shaft [mm];Housing [mm]", ("6205;25;52", "6204;20;47")),
        ("Lager;Welle [mm];Gehäuse [mm];Bund [mm]", ("6205;25;52;31", "6204;20;47;26")),
        ("轴承;轴 [mm];壳体 [mm];挡肩 [mm]", ("6205;25;52;31", "6204;20;47;26")),
        ("Item;Brg;Shaft;Fit;Housing;Fit", ("1;6205;25 mm;k5;52 mm;H6", "2;6204;20 mm;k5;47 mm;H6")),
    ],
)
def test_a_heading_of_parts_alone_is_one_by_what_stands_beside_its_columns(tmp_path, head, rows):
    reading = read(tmp_path, "\n".join((head, *rows)))
    assert list(reading.stations.text("bearing_designation")) == ["6205", "6204"]
    assert list(reading.stations.size("shaft_seat_diameter").nominal) == [25, 20]
    assert list(reading.stations.size("housing_seat_diameter").nominal) == [52, 47]
