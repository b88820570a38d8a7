"""Sums, means, load cases, spares and the words of a change name no machine and no position; what they hold is told."""

import json

import pytest

from linter.reading import read_table

SHEETS = (
    ("Position;Bearing type;Shaft seat diameter [mm];Housing seat diameter [mm]", ("DE", "NDE")),
    ("Lagerstelle;Lagertyp;Wellensitz-Ø [mm];Gehäusebohrung Ø [mm]", ("AS", "BS")),
    ("Palier;Type de roulement;Diamètre de portée d'arbre [mm];Diamètre d'alésage du logement [mm]", ("A", "B")),
    ("軸受位置;軸受型番;軸径 [mm];ハウジング内径 [mm]", ("駆動側", "反駆動側")),
)


@pytest.mark.parametrize("sheet", range(4))
@pytest.mark.parametrize(
    "word",
    ["Mean", "Total", "Mittelwert", "Summe", "Moyenne", "Promedio", "合計", "平均值", "Итого", "Maximum", "Spare"],
)
def test_row_of_figures_worked_out_is_no_position(tmp_path, sheet, word):
    head, (one, two) = SHEETS[sheet]
    path = tmp_path / "t.csv"
    path.write_text(f"{head}\n{one};6205;25 k6;52 H7\n{two};6206;30 k6;62 H7\n{word};;27.5;57\n", encoding="utf-8")
    reading = read_table(path)
    assert reading.stations.text("station").tolist() == [one, two]
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [25, 30]
    told = [*(u.place.cell for u in reading.unused), *(p.place.cell for p in reading.stations.problems if p.place)]
    assert {"C4", "D4"} <= set(told)


@pytest.mark.parametrize(
    ("head", "cases"),
    [
        ("Load case,n [rpm],Fr A [N],Fa A [N],Fr B [N],Fa B [N]", ("Maximum", "Minimum", "Start-up")),
        ("Lastfall,n [1/min],Fr A [N],Fa A [N],Fr B [N],Fa B [N]", ("Nennbetrieb", "Maximum", "Anlauf")),
        ("荷重ケース,n [min-1],Fr A [N],Fa A [N],Fr B [N],Fa B [N]", ("最大", "試運転", "起動")),
        ("Случай нагружения,n [об/мин],Fr A [N],Fa A [N],Fr B [N],Fa B [N]", ("Пуск", "Номинальный", "Максимум")),
    ],
)
def test_load_cases_are_no_machines(tmp_path, head, cases):
    path = tmp_path / "t.csv"
    rows = [f"{case},{3000 * k},{100 * k},{10 * k},{50 * k},{5 * k}" for k, case in enumerate(cases, 1)]
    path.write_text("\n".join([head, *rows, ",,,,,", "Position,Bearing type", "A,6205", "B,6206"]), encoding="utf-8")
    reading = read_table(path)
    assert not set(reading.stations.machines) & set(cases)
    assert reading.stations.text("station").tolist() == ["A", "B"]
    known = [n for n in ("radial_load", "axial_load", "speed_max") if reading.stations.known(n).any()]
    assert known == []


@pytest.mark.parametrize(
    "words",
    [("Before", "After"), ("Vorher", "Künftig"), ("Avant", "Après"), ("Antes", "Después"), ("Prima", "Dopo"),
     ("До", "После"), ("変更前", "変更後"), ("改前", "改后"), ("Rev. A", "Rev. B"), ("After", "Before")],
)  # fmt: skip
def test_old_values_are_not_used(tmp_path, words):
    path = tmp_path / "t.csv"
    sizes = {True: ("20 k6", "25 k6"), False: ("25 k6", "20 k6")}[words[0] != "After"]
    path.write_text(
        f"Position;Part;Characteristic;{words[0]};{words[1]};Unit\n"
        + "".join(
            f"{p};Shaft;Diameter;{sizes[0]};{sizes[1]};mm\n{p};Shaft;Roughness Ra;0.4;0.4;µm\n"
            f"{p};Housing;Diameter;52 H7;52 H7;mm\n"
            for p in ("DE", "NDE")
        ),
        encoding="utf-8",
    )
    reading = read_table(path)
    assert reading.stations.text("station").tolist() == ["DE", "NDE"]
    assert 20 not in reading.stations.size("shaft_seat_diameter").nominal.tolist()


def test_positions_named_like_one_word_of_a_change_stay(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Palier;Désignation du roulement;Diamètre de portée d'arbre [mm]\navant;6205;25 k6\narrière;6206;30 k6\n",
        encoding="utf-8",
    )
    assert read_table(path).stations.text("station").tolist() == ["avant", "arrière"]


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("Durée de vie calculée L10h [h]", "41200"), ("計算寿命 L10h [h]", "41200"), ("计算寿命 L10h [h]", "41200"),
        ("モータ回転数 [min-1]", "2950"), ("电机转速 [r/min]", "2950"), ("Velocidad mínima [rpm]", "600"),
        ("Essai de survitesse [tr/min]", "23000"), ("1.ª velocidad crítica (rpm)", "27500"),
        ("Velocità di prova [giri/min]", "23000"), ("Температура среды [°C]", "120"), ("保守間隔 [h]", "4000"),
        ("Материал крышки", "алюминий"),
    ],
)  # fmt: skip
def test_what_is_not_of_the_machine_as_reviewed_is_asked_about(tmp_path, name, value):
    path = tmp_path / "t.csv"
    path.write_text(
        f"Machine;P-1\n{name};{value}\n;\nPosition;Bearing designation;Shaft seat diameter [mm]\n"
        "A;6205;25 k6\nB;6206;30 k6\n",
        encoding="utf-8",
    )
    reading = read_table(path)
    wanted = ("required_life", "speed_max", "ambient_temperature", "regreasing_interval", "housing_material")
    assert [n for n in wanted if reading.stations.known(n).any()] == []
    assert any(u.value == value for u in reading.unused)


def test_load_cases_in_json_are_no_machines(tmp_path):
    path = tmp_path / "t.json"
    rows = [{"station": s, "bearing_designation": "6205", "shaft_seat_diameter": "25 k6"} for s in ("A", "B", "Mean")]
    path.write_text(json.dumps(rows), encoding="utf-8")
    assert read_table(path).stations.text("station").tolist() == ["A", "B"]


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("Calculated life L10h", "51200 h"), ("Berechnete Lebensdauer L10h", "51200 h"),
        ("Vida calculada L10h", "51200 h"), ("Durata calcolata L10h", "51200 h"), ("Расчётный ресурс L10h", "51200 ч"),
        ("Erreichte Lebensdauer", "51200 h"), ("残り寿命", "51200 時間"),
    ],
)  # fmt: skip
def test_life_that_is_worked_out_is_not_asked_for(tmp_path, name, value):
    path = tmp_path / "t.csv"
    path.write_text(f"Machine;P-1\n{name};{value}\n;\nPosition;Bearing designation\nA;6205\nB;6206\n", encoding="utf-8")
    reading = read_table(path)
    assert not reading.stations.known("required_life").any()
    assert any(unused.value == value for unused in reading.unused)


@pytest.mark.parametrize(
    ("shaft", "housing", "diameter", "roughness"),
    [
        ("Вал", "Посадка корпуса", "Диаметр [мм]", "Шероховатость Ra [мкм]"),
        ("Welle", "Gehäusepassung", "Durchmesser [mm]", "Rauheit Ra [µm]"),
        ("Shaft", "Housing fit", "Diameter [mm]", "Roughness Ra [µm]"),
    ],
)
def test_fit_of_the_housing_alone_ends_the_rows_of_the_shaft(tmp_path, shaft, housing, diameter, roughness):
    path = tmp_path / "t.csv"
    of = "Подшипник" if shaft == "Вал" else "Lager" if shaft == "Welle" else "Bearing"
    blocks = [f"{of} {p};\n{shaft};\n{diameter};30 j5\n{housing};\n{roughness};0.8\n{diameter};62 H7\n" for p in "12"]
    path.write_text("\n".join(blocks), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 62]
    assert not stations.known("shaft_seat_roughness").any()


def test_part_and_name_before_one_number_head_no_table(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Pièce;Caractéristique;côté commande;côté opposé\nRoulement;Désignation du roulement;6008;6208\n"
        "Roulement;Charge radiale Fr [N];;340\nRoulement;Largeur B [mm];;18\nRoulement;Diamètre extérieur D [mm];;80\n"
        "Arbre;Diamètre [mm];40 k5;40 k5\nArbre;Rugosité Ra [µm];0,8;0,4\nLogement;Rugosité Ra [µm];1,6;0,8\n"
        "Logement;Diamètre [mm];68 H6;80 H6\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["côté commande", "côté opposé"]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [68, 80]
    assert stations.number("housing_seat_roughness").tolist() == [1.6, 0.8]


@pytest.mark.parametrize(("head", "read"), [("轴承座直径 [mm]", False), ("轴承室直径 [mm]", True)])
def test_material_of_a_cover_is_the_housing_s_where_no_other_is_named(tmp_path, head, read):
    path = tmp_path / "t.csv"
    path.write_text(
        f"轴承位置,轴承型号,轴颈直径 [mm],{head},端盖材料\n"
        "前端,6205,25 k6,52 H7,铝合金\n后端,6206,30 k6,62 H7,铝合金\n",
        encoding="utf-8",
    )
    reading = read_table(path)
    assert reading.stations.known("housing_material").any() == read
    assert read or {"E2", "E3"} <= {unused.place.cell for unused in reading.unused}


@pytest.mark.parametrize("at", [0, 1, 2])
@pytest.mark.parametrize(
    ("name", "largest", "smallest", "measured"),
    [
        ("Journal diameter [mm]", "Upper limit", "Lower limit", "Measured"),
        ("Durchmesser Wellensitz [mm]", "Größtmaß", "Kleinstmaß", "Istmaß"),
        ("Diamètre de portée d'arbre [mm]", "Cote maxi", "Cote mini", "Cote réelle"),
        ("Diametro sede albero [mm]", "Quota max.", "Quota min.", "Quota effettiva"),
        ("軸径 [mm]", "最大", "最小", "実測値"),
    ],
)
def test_measured_beside_limits_below_positions_is_not_the_size(tmp_path, name, largest, smallest, measured, at):
    path = tmp_path / "t.csv"
    heads = [largest, smallest]
    heads.insert(at, measured)
    rows = [f"Parameter;A;;;B;;\n;{';'.join(heads * 2)}"]
    for label, sizes in ((name, ("25", "30")), ("Housing bore diameter [mm]", ("52", "62"))):
        cells = [[f"{size}.0110", f"{size}.0020"] for size in sizes]
        for own, size in zip(cells, sizes, strict=True):
            own.insert(at, f"{size}.0070")
        rows.append(";".join([label, *cells[0], *cells[1]]))
    path.write_text("\n".join(rows), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["A", "B"]
    size = stations.size("shaft_seat_diameter")
    assert (size.nominal + size.lower).round(4).tolist() == [25.002, 30.002]
    assert (size.nominal + size.upper).round(4).tolist() == [25.011, 30.011]


@pytest.mark.parametrize("name", ["Spare", "Ersatzlager", "Mean", "Maximum", "Start-up", "予備"])
def test_a_seat_with_a_fit_of_its_own_is_told_whatever_its_row_is_called(tmp_path, name):
    path = tmp_path / "table.csv"
    rows = f"P;A;6205;25 k5;52 H7\nP;B;6204;20 k5;47 H7\nP;{name};6203;17 d9;40 H7\n"
    path.write_text("machine;station;bearing_designation;shaft_seat_diameter;housing_seat_diameter\n" + rows, "utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["A", "B"]
    told = [p for p in stations.problems if p.code == "values-not-read"]
    assert [(p.place.cell, p.read) for p in told] == [("D4", "17 d9")]
    path.write_text(path.read_text("utf-8").replace("6203;17 d9;40 H7", "6205;;"), "utf-8")
    assert not [p for p in read_table(path).stations.problems if p.code == "values-not-read"]


@pytest.mark.parametrize(
    ("row", "told"),
    [
        ("Maximum;6203;17 -0.1/-0.2;40 H7", "17 -0.1/-0.2"),
        ("Spare;6203;17 -0.1/-0.2;", "17 -0.1/-0.2"),
        ("Start-up;6203;;", "6203"),
        ("Mean;;22.5;49.5", ""),
        ("Start-up;6205;25 k5;52 H7", ""),
        ("Spare;6203;;", ""),
    ],
)
def test_what_no_position_states_is_told_where_it_may_be_one(tmp_path, row, told):
    path = tmp_path / "table.csv"
    text = "machine;station;bearing_designation;shaft_seat_diameter;housing_seat_diameter\n"
    path.write_text(f"{text}P;A;6205;25 k5;52 H7\nP;B;6204;20 k5;47 H7\nP;{row}\n", "utf-8")
    problems = [p.read for p in read_table(path).stations.problems if p.code == "values-not-read"]
    assert problems == ([told] if told else [])
