"""Headings of blocks that say more than one word for their part, and what stands below them."""

import pytest

from linter.reading import read_table
from linter.reading.layouts.sides import side_of


@pytest.mark.parametrize(
    ("text", "side"),
    [
        ("Shaft (inner ring)", "shaft"),
        ("Welle (Innenring)", "shaft"),
        ("軸(内輪側)", "shaft"),
        ("轴(内圈)", "shaft"),
        ("Вал (внутреннее кольцо)", "shaft"),
        ("Arbre / bague intérieure", "shaft"),
        ("Housing bore", "housing"),
        ("Alésage du carter", "housing"),
        ("Отверстие корпуса", "housing"),
        ("ハウジング(外輪側)", "housing"),
        ("Rodamiento (catálogo)", "bearing"),
        ("軸受仕様", "bearing"),
        ("Данные подшипника", "bearing"),
        ("軸受取付部諸元", ""),
        ("Shaft (left)", ""),
        ("Housing bore diameter", ""),
        ("Inner ring", ""),
    ],
)
def test_a_heading_says_its_part_with_its_seat_its_ring_or_where_its_data_are_from(text, side):
    found = side_of(text)
    assert (found.side if found is not None else "") == side


def read(tmp_path, text: str):
    path = tmp_path / "table.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path).stations


@pytest.mark.parametrize(
    ("bearing", "label", "cell"), [("軸受", "等級", "6級"), ("Lager", "Klasse", "P6"), ("Bearing", "Class", "P6")]
)
def test_a_class_below_the_bearing_is_that_of_the_bearing(tmp_path, bearing, label, cell):
    rows = f"{bearing},\n内径 d,20 mm\n外径 D,42 mm\n{label},{cell}\n"
    assert list(read(tmp_path, rows).choice("tolerance_class").texts()) == ["P6"]


def test_the_class_of_the_bearing_is_none_of_a_seat(tmp_path):
    text = (
        "Position,Bore d mm,Bearing tolerance class,Seat of,Nominal mm,Fit\n"
        "A,20,P6,Shaft,20,k6\nA,20,P6,Housing bore,42,H7\n"
    )
    stations = read(tmp_path, text)
    assert list(stations.choice("tolerance_class").texts()) == ["P6"]
    assert list(stations.size("shaft_seat_diameter").tolerance_class) == ["k6"]


@pytest.mark.parametrize("label", ["Operating mode", "Operation", "Betriebsart", "運転方式"])
def test_a_choice_above_a_table_is_told_by_its_cell(tmp_path, label):
    stations = read(tmp_path, f"{label},S3 intermittent\n\nstation,bore_diameter,outside_diameter\nA,8,22\n")
    assert list(stations.choice("duty").texts()) == ["intermittent"]


TWO_ROWS = [
    ("Machine data,,Shaft,,,Housing,,", "Position,n max rpm,Nominal,es µm,ei µm,Nominal,ES µm,EI µm"),
    (",Lagerung,Welle,,,Gehäuse,,", "Lagerstelle,n max rpm,Nennmaß,ob. Abmaß µm,unt. Abmaß µm,Ø,+ µm,- µm"),
    (",,Arbre,,,Logement,,", "Position,Vitesse max tr/min,Ø mm,es µm,ei µm,Ø mm,ES µm,EI µm"),
    (",,Shaft (inner ring),,,Housing bore,,", "Position,n max rpm,Nom.,es µm,ei µm,Nominal,ES µm,EI µm"),
    (",,軸(内輪側),,,ハウジング(外輪側),,", "位置,最高回転数 rpm,基準寸法,es µm,ei µm,基準寸法,ES µm,EI µm"),
    (",Общие данные,Вал,,,Отверстие корпуса,,", "Опора,n max rpm,Номинал,es µm,ei µm,Номинал,ES µm,EI µm"),
]  # fmt: skip


@pytest.mark.parametrize(("above", "heading"), TWO_ROWS)
@pytest.mark.parametrize("repeated", [False, True])
def test_nominal_and_deviations_below_the_word_for_a_part(tmp_path, above, heading, repeated):
    cells = above.split(",")
    for k in range(2, len(cells)) if repeated else ():
        cells[k] = cells[k] or cells[k - 1]
    stations = read(
        tmp_path,
        f"all dimensions in mm\n{','.join(cells)}\n{heading}\nA,9000,20,+15,+2,42,+25,0\nB,9000,25,+15,+2,52,+30,0\n",
    )
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert [*shaft.nominal, *housing.nominal] == [20, 25, 42, 52]
    assert [*shaft.upper, *shaft.lower, *housing.upper] == pytest.approx([0.015, 0.015, 0.002, 0.002, 0.025, 0.030])
    assert list(stations.number("speed_max")) == [9000, 9000]


@pytest.mark.parametrize("words", ["Max mm,Min mm", "Maximum mm,Minimum mm", "Größtmaß mm,Kleinstmaß mm"])
def test_two_limits_below_the_word_for_a_part(tmp_path, words):
    text = f"Position,Shaft,,Housing,\n,{words},{words}\nA,20.015,20.002,42.025,42\nB,25.015,25.002,52.030,52\n"
    stations = read(tmp_path, text)
    assert list(stations.size("shaft_seat_diameter").largest) == pytest.approx([20.015, 25.015])
    assert list(stations.size("housing_seat_diameter").smallest) == pytest.approx([42, 52])


def test_the_size_of_another_thing_is_none_of_the_seat(tmp_path):
    text = "Position,Coupling,,Shaft,,Housing,\n,Shaft diameter,Fit,Nominal,Fit,Nominal,Fit\nA,19,k6,20,k5,42,H7\n"
    stations = read(tmp_path, text)
    assert list(stations.size("shaft_seat_diameter").tolerance_class) == ["k5"]


@pytest.mark.parametrize(
    ("heads", "label", "roles"),
    [
        (("BEARING NO. 1 (PUMP END)", "BEARING NO. 2 (DRIVE END)"), "Location", ("fixed", "free")),
        (("Lager A", "Lager B"), "Position", ("Festlager", "Loslager")),
        (("Supporto anteriore", "Supporto posteriore"), "Posizione", ("fisso", "libero")),
        (("前轴承", "后轴承"), "位置", ("固定端", "游动端")),
    ],
)
def test_how_a_bearing_is_located_begins_no_other_position(tmp_path, heads, label, roles):
    rows = zip(heads, ("6310 C3", "6309 C3"), roles, ("50 k6", "45 k6"), ("110 J7", "100 H7"), strict=True)
    text = "\n".join(
        f"{head},,\nType,{bearing},\n{label},{role},\nShaft seat,{seat},mm\nHousing bore,{bore},mm"
        for head, bearing, role, seat, bore in rows
    )
    stations = read(tmp_path, text + "\n")
    assert len(stations) == 2
    assert stations.choice("axial_role").texts().tolist() == ["locating", "floating"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [50, 45]


@pytest.mark.parametrize(
    "text",
    [
        "Test spindle,front,rear\nBearing,front,rear\nType,7003,7002\nShaft,front,rear\nSeat in mm,17 js5,15 js5\n"
        "Roughness Ra in µm,0.2,0.2\nUndercut,F,F\nHousing,front,rear\nSeat in mm,35 JS5,32 H5\n"
        "Roughness Ra in µm,0.8,0.8\n",
        "Donnée,Palier A,Palier B\nRoulement,Palier A,Palier B\nDésignation,7003,7002\nArbre,Palier A,Palier B\n"
        "Diamètre (mm),17 js5,15 js5\nRugosité Ra (µm),0.2,0.2\nAlésage,Palier A,Palier B\nDiamètre (mm),35 JS5,32 H5\n"
        "Rugosité Ra (µm),0.8,0.8\n",
        "項目,前側,後側\n軸受,前側,後側\n型番,7003,7002\n軸,前側,後側\nはめあい径 mm,17 js5,15 js5\n"
        "表面粗さ Ra µm,0.2,0.2\n"
        "ハウジング,前側,後側\nはめあい径 mm,35 JS5,32 H5\n表面粗さ Ra µm,0.8,0.8\n",
        "Voce,lato motore,lato pompa\nCuscinetto,lato motore,lato pompa\nSigla,7003,7002\n"
        "Albero,lato motore,lato pompa\nSede [mm],17 js5,15 js5\nRugosità Ra [µm],0.2,0.2\n"
        "Supporto,lato motore,lato pompa\nSede [mm],35 JS5,32 H5\n"
        "Rugosità Ra [µm],0.8,0.8\n",
    ],
)
def test_positions_said_again_beside_each_part_head_its_rows(tmp_path, text):
    path = tmp_path / "list.csv"
    path.write_text(text, encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("bearing_designation").tolist() == ["7003", "7002"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [17, 15]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [35, 32]
    assert stations.number("shaft_seat_roughness").tolist() == [0.2, 0.2]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 0.8]


@pytest.mark.parametrize(
    ("bearings", "shafts", "housings", "places"),
    [
        ("Bearing;Designation;Lubrication", "Shaft;Dia. mm;Ra µm", "Housing;Dia. mm;Ra µm", ("front", "rear")),
        ("Lager;Typ;Schmierung", "Welle;Sitz Ø mm;Ra µm", "Gehäuse;Bohrung Ø mm;Ra µm", ("vorn", "hinten")),
        ("轴承;型号;润滑", "轴颈;直径 mm;粗糙度Ra μm", "座孔;直径 mm;粗糙度Ra μm", ("前", "后")),
        ("軸受;型番;潤滑", "軸;径 mm;粗さ Ra μm", "ハウジング;内径 mm;粗さ Ra μm", ("前側", "後側")),
    ],
)
def test_small_tables_of_one_part_each_below_one_another(tmp_path, bearings, shafts, housings, places):
    one, two = places
    text = f"{bearings}\n{one};7006C;\n{two};7005C;\n\n{shafts}\n{one};30 js5;0.2\n{two};25 js5;0.2\n\n"
    text += f"{housings}\n{one};55 H6;0.4\n{two};47 H6;0.4\n\nXyz;6 L/min;Abc;3.5 kN\n"
    path = tmp_path / "list.csv"
    path.write_text(text, encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == [*places]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [55, 47]
    assert stations.number("shaft_seat_roughness").tolist() == [0.2, 0.2]
    assert stations.number("housing_seat_roughness").tolist() == [0.4, 0.4]


def test_a_position_named_by_its_role_begins_in_a_row_like_the_one_before(tmp_path):
    block = "Position;{}\nType;6204-2Z\nShaft seat;20 k5\nHousing bore;47 H6\n"
    stations = read(tmp_path, block.format("Drive") + block.format("Free"))
    assert stations.text("station").tolist() == ["Drive", "Free"]


def test_a_tool_beside_its_name_below_a_table_is_no_bearing(tmp_path):
    rows = "front,6204-2Z,20 k5,47 H6,0.8,1.6\nrear,6203-2Z,17 k5,40 H6,0.8,1.6\n"
    head = "Position,Bearing,Shaft seat mm,Housing bore mm,Ra shaft,Ra housing\n"
    stations = read(tmp_path, head + rows + "\nspeed max,18000 rpm\ncollet,ER25\npower,3 kW\n")
    assert stations.text("station").tolist() == ["front", "rear"]
    assert set(stations.numbers["speed_max"].tolist()) == {18000.0}
