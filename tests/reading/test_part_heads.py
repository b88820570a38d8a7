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
