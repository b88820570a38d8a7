"""Tables with names down a column and a part of a position at the head of each other column."""

import pytest

from linter.reading import read_table

ALONE = [
    "Feature;Shaft DE;Shaft NDE;Housing DE;Housing NDE;Unit", "Nominal diameter;20;17;47;40;mm", "Fit;k5;j5;J6;H6;-",
    "Upper deviation;+11;+5;+13;+16;µm", "Lower deviation;+2;-4;-6;0;µm", "Roughness Ra;0.4;0.4;0.8;0.8;µm",
    "Shoulder diameter;25.6;21;42;36;mm", "Bearing DE;6204-2RS;;;;", "Bearing NDE;6203-2RS;;;;",
]  # fmt: skip
GERMAN = [
    "Merkmal;Einheit;Welle DE;Welle NDE;Gehäuse DE;Gehäuse NDE", "Durchmesser;mm;20;17;47;40", "Passung;;k5;j5;J6;H6",
    "oberes Abmaß;µm;+11;+5;+13;+16", "unteres Abmaß;µm;+2;-4;-6;0", "Rauheit Ra;µm;0,4;0,4;0,8;0,8",
    "Schulter;mm;25,6;21;42;36", "Lager;;6204-2RS;6203-2RS;;",
]  # fmt: skip
PARTS_ABOVE = ["Merkmal;Einheit;Welle;;Gehäuse;", ";;DE;NDE;DE;NDE", *GERMAN[1:]]
PLACES_ABOVE = [
    "Caractéristique;DE;;NDE;;Unité", ";Arbre;Logement;Arbre;Logement;", "Diamètre;20;47;17;40;mm",
    "Ajustement;k5;J6;j5;H6;", "Écart supérieur;+11;+13;+5;+16;µm", "Écart inférieur;+2;-6;-4;0;µm",
    "Rugosité Ra;0,4;0,8;0,4;0,8;µm", "Diamètre d'épaulement;25,6;42;21;36;mm", "Roulement DE;6204-2RS;;;;",
    "Roulement NDE;6203-2RS;;;;",
]  # fmt: skip
CHINESE = [
    "项目,轴 DE,轴 NDE,座孔 DE,座孔 NDE,单位", "直径,20,17,47,40,mm", "公差带,k5,j5,J6,H6,", "上偏差,+11,+5,+13,+16,μm",
    "下偏差,+2,-4,-6,0,μm", "粗糙度Ra,0.4,0.4,0.8,0.8,μm", "台肩直径,25.6,21,42,36,mm", "轴承型号,6204-2RS,6203-2RS,,,",
]  # fmt: skip


@pytest.mark.parametrize("rows", [ALONE, GERMAN, PARTS_ABOVE, PLACES_ABOVE, CHINESE])
def test_each_column_is_one_seat(tmp_path, rows):
    path = tmp_path / "table.csv"
    path.write_text("\n".join(rows), encoding="utf-8")
    reading = read_table(path)
    stations = reading.stations
    order = stations.text("station").tolist()
    assert sorted(order) == ["DE", "NDE"]

    def of(values):
        found = dict(zip(order, values.tolist(), strict=True))
        return [found["DE"], found["NDE"]]

    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert of(shaft.nominal) == [20, 17] and of(housing.nominal) == [47, 40]
    assert of(shaft.lower) == pytest.approx([0.002, -0.004]) and of(housing.upper) == pytest.approx([0.013, 0.016])
    assert of(stations.number("shaft_seat_roughness")) == [0.4, 0.4]
    assert of(stations.number("housing_seat_roughness")) == [0.8, 0.8]
    assert of(stations.size("shaft_shoulder_diameter").nominal) == [25.6, 21]
    assert of(stations.size("housing_shoulder_diameter").nominal) == [42, 36]
    assert of(stations.text("bearing_designation")) == ["6204-2RS", "6203-2RS"]
    assert not [problem for problem in stations.problems if problem.kind == "unreadable"]


def test_a_value_of_the_machine_below_such_heads_is_the_machines(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text("\n".join([*ALONE, "Maximum speed;4500;;;;1/min"]), encoding="utf-8")
    assert read_table(path).stations.number("speed_max").tolist() == [4500, 4500]


def test_a_name_that_means_nothing_of_a_part_is_asked_about(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text("\n".join([*ALONE, "Coating;0.02;0.02;;;mm"]), encoding="utf-8")
    reading = read_table(path)
    assert [one.name for one in reading.unused if one.name == "Coating"]


def read(folder, text, name="t.csv"):
    (folder / name).write_text(text, encoding="utf-8")
    return read_table(folder / name)


TABLES = {
    "en": "Seat dimensions of a pump\nFeature;Shaft DE;Shaft NDE;Housing DE;Housing NDE;Unit\n"
    "Nominal diameter;35;30;72;62;mm\nFit;k5;k5;J6;H6;-\nUpper deviation;+13;+11;+13;+19;µm\n"
    "Lower deviation;+2;+2;-6;0;µm\nRoughness Ra;0.4;0.4;0.8;0.8;µm\nCylindricity;4;4;5;5;µm\n"
    "Shoulder diameter;44;37;65;56;mm\n;;;;;\nBearing DE;6207;;;;\nBearing NDE;6206;;;;\nMaximum speed;4500;;;;1/min\n",
    "de": "Merkmal;Einheit;Welle AS;Welle BS;Gehäuse AS;Gehäuse BS;Hinweis\nDurchmesser;mm;35;30;72;62;\n"
    "Passung;;k5;k5;J6;H6;\nob. Abmaß;µm;13;11;13;19;\nunt. Abmaß;µm;2;2;-6;0;\nRauheit Ra;µm;0,4;0,4;0,8;0,8;\n"
    "Zylinderform;µm;4;4;5;5;\nSchulter;mm;44;37;65;56;\nLager;;6207;6206;;;\nDrehzahl max.;1/min;4500;;;;\n",
    "part above": ";Shaft;;Housing;;\nFeature;DE;NDE;DE;NDE;Unit\nDiameter;35;30;72;62;mm\nClass;k5;k5;J6;H6;\n"
    "Upper deviation;0.013;0.011;0.013;0.019;mm\nLower deviation;0.002;0.002;-0.006;0;mm\nRa;0.4;0.4;0.8;0.8;µm\n"
    "Cylindricity;0.004;0.004;0.005;0.005;mm\nShoulder diameter;44;37;65;56;mm\nMaximum speed;4500;;;;1/min\n",
    "fr": "Grandeur;Arbre côté moteur;Arbre côté pompe;Logement côté moteur;Logement côté pompe;Unité\n"
    "Diamètre nominal;35;30;72;62;mm\nAjustement;k5;k5;J6;H6;\nÉcart supérieur;13;11;13;19;µm\n"
    "Écart inférieur;2;2;-6;0;µm\nRugosité Ra;0,4;0,4;0,8;0,8;µm\nCylindricité;4;4;5;5;µm\n"
    "Diamètre épaulement;44;37;65;56;mm\nVitesse maxi;4500;;;;tr/min\n",
}


@pytest.mark.parametrize("table", TABLES)
def test_a_column_is_of_its_seat(tmp_path, table):
    s = read(tmp_path, TABLES[table]).stations
    assert len(s) == 2
    for part, sizes, classes, uppers in (
        ("shaft", [35, 30], ["k5", "k5"], [0.013, 0.011]),
        ("housing", [72, 62], ["J6", "H6"], [0.013, 0.019]),
    ):
        size = s.size(f"{part}_seat_diameter")
        order = sorted(range(2), key=lambda k: -size.nominal[k])
        assert size.nominal[order].tolist() == sizes
        assert size.tolerance_class[order].tolist() == classes
        assert size.upper[order].tolist() == pytest.approx(uppers)
        assert s.number(f"{part}_seat_cylindricity").tolist() == pytest.approx([{"shaft": 0.004}.get(part, 0.005)] * 2)
        assert s.number(f"{part}_seat_roughness").tolist() == [{"shaft": 0.4}.get(part, 0.8)] * 2
        assert (s.size(f"{part}_shoulder_diameter").nominal > 0).all()
    assert s.number("speed_max").tolist() == [4500, 4500]
    if table in ("en", "de"):
        assert sorted(s.text("bearing_designation").tolist()) == ["6206", "6207"]


def test_what_is_not_understood_is_listed_with_its_cell(tmp_path):
    reading = read(tmp_path, TABLES["en"].replace("Fit;", "Coating;;x;;;\nFit;"))
    assert any(u.name == "Coating" and u.place.cell == "C4" for u in reading.unused)


def test_parts_alone_are_no_columns_of_seats(tmp_path):
    s = read(
        tmp_path, "station;Shaft seat;Shaft Ra [µm];Housing seat;Housing Ra [µm]\nA;30 k5;0.4;62 H6;0.8\n"
    ).stations
    assert s.size("shaft_seat_diameter").nominal.tolist() == [30]
    assert s.number("housing_seat_roughness").tolist() == [0.8]


_ROWS = ["Diameter;mm;20;17;47;40", "Fit;;k5;j5;J6;H6", "Roughness Ra;µm;0.4;0.4;0.8;0.8"]
_OTHERS = {
    "behind the seats": (["Feature;Unit;Shaft DE;Shaft NDE;Housing DE;Housing NDE;Date"], ";2026-03-01"),
    "a sheet's number": (["Merkmal;Einheit;Welle DE;Welle NDE;Gehäuse DE;Gehäuse NDE;Blatt"], ";3"),
    "parts above": (["Feature;Unit;Shaft;;Housing;;", ";;DE;NDE;DE;NDE;Sheet"], ";3"),
    "places above": (["Feature;Unit;DE;NDE;DE;NDE;Sheet", ";;Shaft;Shaft;Housing;Housing;"], ";3"),
}


@pytest.mark.parametrize("kind", _OTHERS)
def test_a_column_of_something_else_is_no_position(tmp_path, kind):
    heads, other = _OTHERS[kind]
    s = read(tmp_path, "\n".join([*heads, *(row + other for row in _ROWS), ""])).stations
    assert sorted(s.text("station").tolist()) == ["DE", "NDE"]
    assert sorted(s.size("shaft_seat_diameter").nominal.tolist()) == [17, 20]
    assert sorted(s.size("housing_seat_diameter").nominal.tolist()) == [40, 47]
    assert sorted(s.number("shaft_seat_roughness").tolist()) == [0.4, 0.4]


def test_columns_of_bearings_stand_beside_those_of_their_seats(tmp_path):
    rows = ["Feature;Shaft DE;Shaft NDE;Housing DE;Housing NDE;Bearing DE;Bearing NDE",
            "Diameter;20 k5;17 j5;47 J6;40 H6;;", "Designation;;;;;6204;6203",
            "Roughness Ra [µm];0.4;0.4;0.8;0.8;;"]  # fmt: skip
    s = read(tmp_path, "\n".join([*rows, ""])).stations
    held = zip(s.text("bearing_designation").tolist(), s.size("shaft_seat_diameter").nominal.tolist(), strict=True)
    assert sorted(held) == [("6203", 17), ("6204", 20)]


def test_names_below_the_parts_head_rows_of_machines(tmp_path):
    rows = [";;DE;;NDE;", ";;Shaft;Housing;Shaft;Housing", "Machine;Max. speed [rpm]" + 4 * ";Diameter [mm]",
            "LW-64;6000;20 k5;47 H6;17 k5;40 H6", "DR-25;9000;25 k5;52 H6;20 k5;47 H6"]  # fmt: skip
    s = read(tmp_path, "\n".join([*rows, ""])).stations
    assert sorted(set(s.machines)) == ["DR-25", "LW-64"]
    assert sorted(s.size("shaft_seat_diameter").nominal.tolist()) == [17, 20, 20, 25]


def test_seats_beside_as_many_other_headings_are_columns_of_one_row_a_machine(tmp_path):
    each = ["диаметр отверстия подшипника", "радиальная нагрузка", "шейка вала", "отверстие корпуса", "смазка"]
    heads = ["Наименование оборудования", "№ чертежа", *(f"{name}@{side}" for side in "AB" for name in each)]
    rows = [
        ["xBb4A", "x9qcD4Cgq", "50", "400", "50 k5", "90 H6", "", "45", "300", "45 k5", "85 H6", ""],
        ["xY7RYU", "xg5eYa", "30", "500", "30 k5", "62 H6", "", "25", "200", "25 k5", "52 H6", ""],
        ["xY7CCWa", "xdEMW", "20", "90", "20 k5", "47 H6", "", "17", "70", "17 k5", "40 H6", ""],
    ]
    units = ["", "", *("mm", "N", "mm", "mm", "") * 2]
    path = tmp_path / "table.csv"
    path.write_text("\n".join(map(";".join, [heads, units, *rows])), "utf-8")
    stations = read_table(path).stations
    assert sorted(stations.machines) == ["xBb4A", "xY7CCWa", "xY7RYU"]
    assert sorted(stations.size("shaft_seat_diameter").nominal.tolist()) == [17.0, 20.0, 25.0, 30.0, 45.0, 50.0]
