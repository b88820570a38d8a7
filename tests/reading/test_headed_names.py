"""Names of columns and rows of headed tables: shoulders of seats, units of one letter, positions, machines, springs."""

import re

import pytest

from linter.reading import read_table
from linter.reading.layouts.placed import placed
from linter.reading.words.headings import Words
from linter.reading.words.machine_words import can_name_machine
from linter.reading.words.names import Names

WORDS = Words(Names.built_in())


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("Shaft seat shoulder axial run-out", "shaft"), ("Housing seat shoulder axial run-out", "housing"),
        ("Planlauf Schulter Lagersitz Welle", "shaft"), ("Planlauf Anlagefläche Lagersitz Welle", "shaft"),
        ("Lagersitz Gehäuse Schulter Planlauf (mm)", "housing"), ("Battement axial épaulement portée arbre", "shaft"),
        ("Oscilación axial resalte asiento eje", "shaft"), ("Perpendicolarità spallamento sede albero", "shaft"),
        ("Шейка вала, торцевое биение заплечика", "shaft"), ("轴颈挡肩端面跳动", "shaft"),
    ],
)  # fmt: skip
def test_the_shoulder_of_a_seat_runs_out(text, part):
    heading = WORDS.heading(text)
    assert heading is not None and (heading.parameter, heading.station) == (f"{part}_shoulder_runout", "")


@pytest.mark.parametrize(
    "text", ["Rotor mass, g", "Masse rotor, g", "Peso del rotor, g", "转子质量, g", "Масса ротора, г"]
)
def test_a_mass_in_grams_behind_a_comma(text):
    heading = WORDS.heading(text)
    assert heading is not None and heading.parameter == "rotor_mass" and heading.unit in ("g", "г")


def test_a_letter_behind_a_comma_that_is_no_unit_of_the_name_is_none():
    assert WORDS.heading("Balance grade, g") is None or WORDS.heading("Balance grade, g").unit != "g"
    assert WORDS.heading("Shaft seat diameter, g") is None


@pytest.mark.parametrize(
    ("text", "station"),
    [
        ("Axialkraft (Lager 1)", "1"), ("Axial load (Bearing 2)", "2"), ("Осевая нагрузка (Опора 1)", "1"),
        ("Шейка вала, диаметр заплечика (Опора 2)", "2"),
    ],
)  # fmt: skip
def test_a_position_in_a_name(text, station):
    heading = WORDS.heading(text)
    assert heading is not None and heading.station == station


def test_a_bearing_in_brackets_is_no_position():
    assert WORDS.heading("Brg journal OD (17 mm brg)").station == ""
    assert WORDS.heading("Wellensitz Ø (Lager 6206-2Z)").station == ""


@pytest.mark.parametrize(
    ("label", "value", "named"),
    [
        ("Benennung", "Motorspindel SP-34", True), ("Désignation", "Soufflante MV-17", True),
        ("Denominazione", "Pompa LV-92", True), ("品名", "遠心機 SP-57", True),
        ("Наименование", "Воздуходувка KH-81", True),
        ("Benennung", "Pumpenwelle P12", False), ("Designation", "6204-2Z", False), ("Name", "Miller 2", False),
    ],
)  # fmt: skip
def test_a_word_for_any_name_beside_a_machine(label, value, named):
    assert can_name_machine(label, value, WORDS) is named


@pytest.mark.parametrize(
    "row",
    [
        "Preload;wave washer 40 N", "Axial preload by;coil springs 25 N", "Vorspannung;Wellfeder 12 N",
        "Federkraft;65 N", "Spring preload force;40 N", "Fuerza del muelle;65 N", "弹簧预紧力;40 N",
    ],
)  # fmt: skip
def test_a_spring_and_its_force_say_how_bearings_are_preloaded(tmp_path, row):
    path = tmp_path / "list.csv"
    path.write_text(f"Parameter;A\nBearing;6204-2Z\nShaft seat;20 k5\nHousing seat;47 H6\n{row}\n", "utf-8")
    stations = read_table(path).stations
    method = stations.choice("preload_method")
    assert [method.words[code] for code in method.codes] == ["spring"]
    assert stations.size("preload_force").nominal.tolist() == [float(re.findall(r"\d+", row)[0])]


@pytest.mark.parametrize(
    ("head", "shaft", "housing"),
    [
        ("Component,Dimension,Nominal,Unit", "Journal {}", "Housing seat {}"),
        ("Part,Feature,Value,Unit", "Shaft seat {}", "Housing bore {}"),
        ("Part,Feature,Value,Unit", "{} shaft seat", "{} housing seat"),
    ],
)
def test_part_and_position_in_the_first_column_are_one_position_with_both_parts(tmp_path, head, shaft, housing):
    rows = [head]
    for place, bearing, bore, outside in (("Brg 1", "6204", 20, 47), ("Brg 2", "6202", 15, 35)):
        rows += [f"Bearing {place},Bearing,{bearing},", f"{shaft.format(place)},Diameter,Ø{bore} k5,mm"]
        rows += [f"{shaft.format(place)},Radial run-out,0.005,mm", f"{housing.format(place)},Diameter,Ø{outside} H7,mm"]
        rows += [f"{housing.format(place)},Radial run-out,0.004,mm"]
    path = tmp_path / "list.csv"
    path.write_text("\n".join(rows), "utf-8")
    stations = read_table(path).stations
    assert len(stations.text("station")) == 2
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 15]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [47, 35]
    assert placed("Housing seat Brg 1", WORDS).station == "1"


GROUPS = [
    "Group;Parameter;Front;Back;Unit", "General;Rotor mass;1.1;;kg", "Bearing;Type;7004 CTA P4;7003 CTA P4;",
    "{shaft};Diameter;20;17;mm", "{s};Upper limit;+0.002;+0.002;mm", "{s};Lower limit;-0.004;-0.003;mm",
    "{s};Shoulder diameter;24.5;20.8;mm", "{s};Roughness Ra;0.2;0.2;µm", "{housing};Diameter;42;35;mm",
    "{h};Upper limit;+0.005;+0.013;mm", "{h};Lower limit;-0.004;+0.004;mm", "{h};Shoulder diameter;37.5;31.5;mm",
    "{other};Collet;ER20;;-",
]  # fmt: skip


@pytest.mark.parametrize(
    "said",
    [
        {"shaft": "Shaft", "s": "Shaft", "housing": "Housing", "h": "Housing", "other": "Other"},
        {"shaft": "Shaft", "s": "", "housing": "Housing", "h": "", "other": "Other"},
        {"shaft": "Welle", "s": "Welle", "housing": "Gehäuse", "h": "Gehäuse", "other": "Sonstiges"},
        {"shaft": "Albero", "s": "Albero", "housing": "Alloggiamento", "h": "Alloggiamento", "other": "Varie"},
    ],
)
def test_a_column_of_groups_says_the_part_of_names_that_say_none(tmp_path, said):
    path = tmp_path / "table.csv"
    path.write_text("\n".join(GROUPS).format(**said), "utf-8")
    stations = read_table(path).stations
    order = stations.text("station").tolist()
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    front = order.index("Front")
    assert shaft.nominal[front] == 20 and shaft.upper[front] == pytest.approx(0.002)
    assert shaft.lower[front] == pytest.approx(-0.004) and housing.nominal[front] == 42
    assert stations.size("shaft_shoulder_diameter").nominal[front] == 24.5
    assert stations.size("housing_shoulder_diameter").nominal[front] == 37.5
    assert stations.number("shaft_seat_roughness")[front] == 0.2


def test_positions_that_no_list_knows_head_columns_below_a_title(tmp_path):
    rows = [
        "Gearless GL-240;;;", "Dwg;240-1100;;letter", ";traction sheave side;brake side;", "bearing;22216 E;6214;",
        "shaft Ø at bearing;Ø80 (k6);Ø70 (k6);", "shaft shoulder Ø;Ø91 mm;Ø79 mm;", "radial load;28 500 N;6 200 N;rope",
    ]  # fmt: skip
    path = tmp_path / "table.csv"
    path.write_text("\n".join(rows), "utf-8")
    stations = read_table(path).stations
    found = dict(zip(stations.text("station").tolist(), stations.size("shaft_seat_diameter").nominal, strict=True))
    assert found == {"traction sheave side": 80, "brake side": 70}
    assert sorted(stations.text("bearing_designation").tolist()) == ["22216 E", "6214"]


def test_a_single_value_below_the_word_for_a_support_names_no_station(tmp_path):
    rows = [
        "Disegno;VC500-12;;", ";Lato ventola;Lato trasmissione;Note", "Cuscinetto;NU 311 C3;6311 C3;",
        "Diametro albero (mm);55 m5;55 k6;", "Diametro battuta albero (mm);66;66;", "Supporto;ghisa, diviso;;",
    ]  # fmt: skip
    path = tmp_path / "table.csv"
    path.write_text("\n".join(rows), "utf-8")
    stations = read_table(path).stations
    assert sorted(stations.text("station").tolist()) == ["Lato trasmissione", "Lato ventola"]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [66, 66]


@pytest.mark.parametrize(
    ("designed", "found"),
    [
        ("As designed {}", "As found {}"), ("{} nominal", "{} measured"), ("Soll {}", "Ist {}"), ("{}", "{} as found"),
        ("{} prévu", "{} mesuré"), ("設計 {}", "実測 {}"), ("{}", "Measured {}"),
    ],
)  # fmt: skip
def test_what_was_found_beside_what_was_designed_is_no_position(tmp_path, designed, found):
    heads = [form.format(place) for form in (designed, found) for place in ("DE", "NDE")]
    rows = [
        ";".join(["Parameter", "Units", *heads, "Disposition"]), "Bearing;-;6313 C3;6311 C3;worn;spalled;replace",
        "Shaft seat;mm;65 k5;55 k5;65.011;54.998;", "Housing bore;mm;140 H7;120 H7;140.07;120.02;sleeve",
        "Shaft shoulder diameter;mm;77;66;76.9;65.8;", "Radial load;N;640;310;;;",
    ]  # fmt: skip
    path = tmp_path / "table.csv"
    path.write_text("\n".join(rows), "utf-8")
    stations = read_table(path).stations
    assert sorted(stations.text("station").tolist()) == ["DE", "NDE"]
    assert sorted(stations.size("shaft_seat_diameter").nominal) == [55, 65]
    assert sorted(stations.size("shaft_shoulder_diameter").nominal) == [66, 77]
    assert sorted(stations.text("bearing_designation").tolist()) == ["6311 C3", "6313 C3"]
