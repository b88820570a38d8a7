"""Columns of objects and places beside names, numbers of bearings of other kinds, shoulders and nominal sizes."""

import pytest

from linter.reading import read_table

OBJECTS = {
    "en": (
        "Component;Parameter;Value;Unit\nRotor;Mass;4.2;kg\nHousing;Material;EN-GJL-250;\n"
        "Front bearing;Designation;6206;\nFront bearing;Shaft seat diameter;30 k5;mm\n"
        "Front bearing;Housing bore;62 H7;mm\n"
        "Rear bearing;Designation;6205;\nRear bearing;Shaft seat diameter;25 k5;mm\n"
        "Rear bearing;Housing bore;52 H7;mm\n",
        ["Front bearing", "Rear bearing"],
    ),
    "de": (
        "Bauteil;Merkmal;Wert;Einheit\nVorderes Lager;Bezeichnung;6206;\nVorderes Lager;Wellensitz;30 k5;mm\n"
        "Vorderes Lager;Gehäusesitz;62 H7;mm\nHinteres Lager;Bezeichnung;6205;\nHinteres Lager;Wellensitz;25 k5;mm\n"
        "Hinteres Lager;Gehäusesitz;52 H7;mm\nRotor;Masse;4,2;kg\nGehäuse;Werkstoff;EN-GJL-250;\n",
        ["Vorderes Lager", "Hinteres Lager"],
    ),
    "fr": (
        "Composant;Grandeur;Valeur;Unité\nRotor;Masse;4,2;kg\nCarter;Matière;fonte;\nPalier avant;Roulement;6206;\n"
        "Palier avant;Portée d'arbre;30 k5;mm\nPalier avant;Alésage logement;62 H7;mm\nPalier arrière;Roulement;6205;\n"
        "Palier arrière;Portée d'arbre;25 k5;mm\nPalier arrière;Alésage logement;52 H7;mm\n",
        ["avant", "arrière"],
    ),
    "zh": (
        "部件;参数;数值;单位\n转子;质量;4.2;kg\n前轴承;型号;6206;\n前轴承;轴颈直径;30 k5;mm\n前轴承;座孔直径;62 H7;mm\n"
        "后轴承;型号;6205;\n后轴承;轴颈直径;25 k5;mm\n后轴承;座孔直径;52 H7;mm\n",
        ["前轴承", "后轴承"],
    ),
    "ru": (
        "Деталь;Параметр;Значение;Ед.\nРотор;Масса;4,2;кг\nПередний подшипник;Обозначение;6206;\n"
        "Передний подшипник;Диаметр посадки на вал;30 k5;мм\nПередний подшипник;Диаметр посадки в корпус;62 H7;мм\n"
        "Задний подшипник;Обозначение;6205;\nЗадний подшипник;Диаметр посадки на вал;25 k5;мм\n"
        "Задний подшипник;Диаметр посадки в корпус;52 H7;мм\n",
        ["Передний", "Задний"],
    ),
}  # fmt: skip


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path).stations

    return reader


def _once(text: str) -> str:
    """The table with each object in the first of its rows only."""
    rows, last = [], ""
    for row in text.splitlines():
        first, _, rest = row.partition(";")
        rows.append(f"{'' if first == last else first};{rest}")
        last = first
    return "\n".join(rows) + "\n"


@pytest.mark.parametrize("language", OBJECTS)
@pytest.mark.parametrize("once", [False, True])
def test_a_column_of_positions_parts_and_the_rotor(read, language, once):
    text, positions = OBJECTS[language]
    stations = read(_once(text) if once else text)
    assert stations.text("station").tolist() == positions
    assert stations.text("bearing_designation").tolist() == ["6206", "6205"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 52]
    assert stations.number("rotor_mass").tolist() == [4.2, 4.2]
    if stations.choice("housing_material").known.any():
        assert stations.choice("housing_material").is_in("cast iron").all()
    else:
        assert language in ("zh", "ru")
    assert any(p.code == "filled-down" for p in stations.problems) == once


@pytest.mark.parametrize("once", [False, True])
def test_rows_below_another_thing_are_of_no_position(read, once):
    text = (
        "Component;Parameter;Value;Unit\nFront bearing;Designation;6206;\nFront bearing;Shaft seat diameter;30 k5;mm\n"
        "Impeller;Material;bronze;\nImpeller;Bore;28;mm\nRear bearing;Designation;6205;\n"
        "Rear bearing;Shaft seat diameter;25 k5;mm\n"
    )
    stations = read(_once(text) if once else text)
    assert stations.text("bearing_designation").tolist() == ["6206", "6205"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.place("bore_diameter", 0) is None or 28 not in stations.number("bore_diameter").tolist()


@pytest.mark.parametrize("place", ["Part;Location", "Teil;Stelle", "零件;部位", "部品;部位", ";部位"])
def test_a_place_heads_names_beside_positions(read, place):
    stations = read(
        f"{place};A;B\n轴;直径;30 k5;25 k5\n轴;挡肩直径;36;31\n"
        "轴承座;孔径;62 H7;52 H7\n轴承座;挡肩直径;56;46\n轴承;型号;6206;6205\n"
    )
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [36, 31]
    assert stations.size("housing_shoulder_diameter").nominal.tolist() == [56, 46]


def test_shoulders_between_classed_seats_are_in_millimetres(read):
    stations = read(
        "零件;位置;直径;公差带;挡肩直径\n轴;前端;30;k5;36\n轴;后端;25;k5;31\n座;前端;62;H7;56\n座;后端;52;H7;46\n"
    )
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [36, 31]
    assert stations.size("housing_shoulder_diameter").nominal.tolist() == [56, 46]


@pytest.mark.parametrize("nominal", ["呼び寸法", "基準寸法", "公称尺寸", "名义尺寸"])
@pytest.mark.parametrize("bore", ["穴", "ハウジング", "座孔", "孔"])
def test_a_nominal_size_beside_its_limits(read, nominal, bore):
    if (bore, nominal) in {("穴", "公称尺寸"), ("穴", "名义尺寸"), ("孔", "呼び寸法"), ("孔", "基準寸法")}:
        pytest.skip("two languages")
    stations = read(
        f"位置;軸受;軸 {nominal};軸 最大;軸 最小;{bore} {nominal};{bore} 最大;{bore} 最小\n"
        "A;6206;30;30.011;30.002;62;62.030;62.000\nB;6205;25;25.011;25.002;52;52.030;52.000\n"
    )
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 52]
    assert stations.size("housing_seat_diameter").upper.tolist() == pytest.approx([0.030, 0.030])
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]


@pytest.mark.parametrize("heading", ["Designation", "Type", "Bearing", "型号", "Kurzzeichen", "Sigla"])
@pytest.mark.parametrize("number", ["2208 K", "22210 E", "1207 K", "22208 E1-K", "2206 K TV", "1207 K/C3", "2208"])
def test_numbers_of_bearings_without_a_table_of_sizes(read, heading, number):
    stations = read(f"Position;{heading};Shaft seat\nA;{number};40 k5\nB;6205;25 k5\n")
    assert stations.text("bearing_designation").tolist() == [number, "6205"]


@pytest.mark.parametrize("heading", ["Type", "Designation"])
def test_numbers_alone_are_no_bearings(read, heading):
    stations = read(f"Position;Bearing;{heading};Shaft seat\nA;6206;2208;30 k5\nB;6205;1207;25 k5\n")
    assert stations.text("bearing_designation").tolist() == ["6206", "6205"]


@pytest.mark.parametrize(
    ("nominal", "largest", "smallest"),
    [
        ("Вал номинал", "Вал макс", "Вал мин"),
        ("軸 図示サイズ", "軸 最大", "軸 最小"),
        ("Wellensitz X", "Wellensitz max", "Wellensitz min"),
    ],
)
@pytest.mark.parametrize("order", [(0, 1, 2), (1, 2, 0), (1, 0, 2)])
def test_a_size_beside_its_limits_is_the_nominal_one(read, nominal, largest, smallest, order):
    columns = [(nominal, "30", "25"), (largest, "30.011", "25.011"), (smallest, "30.002", "25.002")]
    head, first, second = (";".join(row) for row in zip(*(columns[k] for k in order), strict=True))
    stations = read(f"Position;Bearing;{head}\nA;6206;{first}\nB;6205;{second}\n")
    seat = stations.size("shaft_seat_diameter")
    assert seat.nominal.tolist() == [30, 25]
    assert seat.upper.tolist() == pytest.approx([0.011, 0.011])


def test_what_was_measured_beside_limits_is_no_nominal_size(read):
    stations = read(
        "Position;Bearing;Welle max;Welle min;Welle X\nA;6206;30.011;30.002;30.007\nB;6205;25.011;25.002;25.005\n"
    )
    assert 30.007 not in stations.size("shaft_seat_diameter").nominal.tolist()
