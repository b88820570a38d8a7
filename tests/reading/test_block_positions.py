"""Headings of blocks that are alike and stand above the same names: the positions of a machine."""

import json

import pytest

from linter.reading import read_table

NAMES = {
    "en": ("Bearing", "Shaft seat", "Housing bore", "Shaft shoulder diameter", "Max. speed"),
    "de": ("Lager", "Wellensitz", "Gehäusebohrung", "Wellenschulter Durchmesser", "Drehzahl max."),
    "fr": ("Roulement", "Portée arbre", "Alésage logement", "Épaulement arbre", "Vitesse maxi"),
    "it": ("Cuscinetto", "Sede albero", "Sede alloggiamento", "Diametro spallamento albero", "Velocità massima"),
    "es": ("Rodamiento", "Asiento del eje", "Asiento del alojamiento", "Diámetro resalte eje", "Velocidad máxima"),
    "ja": ("軸受型番", "軸はめあい径", "ハウジングはめあい径", "軸肩径", "最高回転数"),
    "zh": ("轴承型号", "轴颈直径", "座孔直径", "轴肩直径", "最高转速"),
    "ru": ("Подшипник", "Посадочное место вала", "Отверстие корпуса", "Диаметр заплечика вала", "Частота вращения"),
}  # fmt: skip
HEADS = [
    ("fr", "Palier supérieur", "Palier inférieur"),
    ("fr", "Palier côté roue", "Palier côté moteur"),
    ("fr", "PALIER HAUT", "PALIER BAS"),
    ("en", "Bearing, impeller side", "Bearing, motor side"),
    ("en", "Bearing at the rope drum", "Bearing at the gearbox"),
    ("en", "Bearing unit 1 - wheel side", "Bearing unit 2 - coupling side"),
    ("en", "Bearing position No. 1", "Bearing position No. 2"),
    ("de", "Lagerstelle 1 (Antrieb)", "Lagerstelle 2 (Abtrieb)"),
    ("de", "Lager oben", "Lager unten"),
    ("de", "Lagerung Laufradseite", "Lagerung Motorseite"),
    ("it", "Supporto lato ventola", "Supporto lato cinghia"),
    ("it", "Cuscinetto superiore", "Cuscinetto inferiore"),
    ("es", "Apoyo del lado de la rueda", "Apoyo del lado del motor"),
    ("es", "Rodamiento superior", "Rodamiento inferior"),
    ("ja", "軸受部 1", "軸受部 2"),
    ("ja", "軸受部(羽根車側)", "軸受部(モータ側)"),
    ("zh", "轴承座一", "轴承座二"),
    ("zh", "轴承单元1(叶轮侧)", "轴承单元2(电机侧)"),
    ("ru", "УЗЕЛ 1 (со стороны колеса)", "УЗЕЛ 2 (со стороны муфты)"),
    ("ru", "УЗЕЛ 1", "УЗЕЛ 2"),
    ("ru", "Опора со стороны барабана", "Опора со стороны редуктора"),
]


def read(tmp_path, text: str):
    path = tmp_path / "table.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path).stations


@pytest.mark.parametrize("numbered", [False, True])
@pytest.mark.parametrize(("language", "one", "two"), HEADS)
def test_headings_that_are_alike_are_positions(tmp_path, language, one, two, numbered):
    bearing, shaft, housing, shoulder, speed = NAMES[language]
    rows, names = [("1", speed, "9500")], (bearing, shaft, housing, shoulder)
    cells = ("6003", "17 j5", "35 H6", "20.5"), ("7203", "17 k5", "40 J6", "21")
    for k, (head, values) in enumerate(zip((one, two), cells, strict=True)):
        rows.append((f"{k + 2}", head, ""))
        rows += [(f"{k + 2}.{n + 1}", name, value) for n, (name, value) in enumerate(zip(names, values, strict=True))]
    text = "\n".join(";".join(row if numbered else row[1:]) for row in rows)
    stations = read(tmp_path, text + "\n")
    assert len(stations) == 2
    assert stations.text("bearing_designation").tolist() == ["6003", "7203"]
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["j5", "k5"]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [35, 40]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [20.5, 21]
    assert stations.number("speed_max").tolist() == [9500, 9500]


@pytest.mark.parametrize(
    ("one", "two"),
    [
        ("Pump 1", "Pump 2"),
        ("Bearing seat shaft", "Bearing seat housing"),
        ("Bearing variant 1", "Bearing variant 2"),
        ("Lager, Welle", "Lager, Gehäuse"),
        ("Bearing inner ring", "Bearing outer ring"),
    ],
)
def test_headings_of_machines_parts_or_variants_are_none(tmp_path, one, two):
    block = "{}\nBearing;{}\nShaft seat;17 k5\nHousing bore;40 J6\n"
    stations = read(tmp_path, block.format(one, "7203") + block.format(two, "6003"))
    assert not {one, two} & set(stations.text("station").tolist())


def test_headings_above_other_names_are_no_positions(tmp_path):
    text = "Bearing catalogue\nBearing;6003\nDynamic load rating;6 kN\nBearing mounting\n"
    assert len(read(tmp_path, text + "Shaft seat;17 k5\nHousing bore;35 H6\n")) == 1


@pytest.mark.parametrize(
    ("one", "two", "rest", "lubrication"),
    [
        ("Palier supérieur", "Palier inférieur", "Divers", "Graissage;à vie, graisse"),
        ("Lager oben", "Lager unten", "Sonstiges", "Schmierung;Fett"),
        ("УЗЕЛ 1", "УЗЕЛ 2", "ПРОЧЕЕ", "Смазка;пластичная"),
        ("軸受部 1", "軸受部 2", "その他", "潤滑;グリース"),
        ("Bearing, fan side", "Bearing, motor side", "Miscellaneous", "Lubrication;grease"),
    ],
)
def test_a_heading_of_what_is_left_ends_the_last_position(tmp_path, one, two, rest, lubrication):
    bearing, shaft, housing, *_ = NAMES[{"P": "fr", "L": "de", "У": "ru", "軸": "ja", "B": "en"}[one[0]]]
    block = f"{{}}\n{bearing};6003\n{shaft};17 j5\n{housing};35 H6\n"
    stations = read(tmp_path, f"{block.format(one)}{block.format(two)}{rest}\n{lubrication}\n")
    assert stations.choice("lubrication").texts().tolist() == ["grease", "grease"]


@pytest.mark.parametrize(
    ("key", "places"),
    [
        ("apoyo", ("Lado acople", "Lado libre")),
        ("supporto", ("lato giunto", "lato libero")),
        ("опора", ("приводная сторона", "свободная сторона")),
    ],
)
def test_a_side_named_by_what_its_bearing_does_is_the_position(tmp_path, key, places):
    bearings = [{key: place, "bearing": number} for place, number in zip(places, ("6003", "6004"), strict=True)]
    path = tmp_path / "table.json"
    path.write_text(json.dumps({"bearings": bearings}), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == [*places]
    assert stations.text("bearing_designation").tolist() == ["6003", "6004"]
