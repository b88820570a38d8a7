"""Names down a column below a word that is none for names, beside positions side by side."""

import pytest

from linter.reading import read_table

_TITLE = "Max. speed [rpm];3000;;;;;\n;;;;;;\n"
TABLES = {
    "a word for values, numbers and parts left of it, a source right": "Blatt 1;;Bearb.: Lo;;;;\n"
    "max. Drehzahl in U/min;3000;;;;;\n;;;;;;\n"
    "Nr.;Bereich;Angabe;Einh.;Lager A;Lager B;Quelle\n1;Lager;Lagertyp;;6210;6209;Zchn.\n"
    "2;Welle;Sitzdurchmesser;mm;50 k5 (+0,013 / +0,002);45 k5 (+0,013 / +0,002);Zchn.\n"
    "3;Welle;Rauheit Ra;µm;0,8;0,4;Kat.\n4;Welle;Zylindrizität;mm;0,004;0,003;Vers.\n"
    "5;Gehäuse;Sitzdurchmesser;mm;90 H6 (+0,022 / 0);85 H6 (+0,022 / 0);Zchn.\n6;Gehäuse;Rauheit Ra;µm;1,6;1,6;Kat.\n",
    "a word for values, parts over groups": "Vel. max [giri/min];3000;;\n;;;\n"
    "Dato;Lato comando;Lato libero;Fonte\nCuscinetto;;;\nSigla;6210;6209;Dis.\nAlbero;;;\n"
    "Diametro della sede in mm;50 k5;45 k5;Dis.\nRugosità Ra in µm;0,8;0,4;Cat.\nCilindricità in mm;0,004;0,003;Dis.\n"
    "Alloggiamento;;;\nDiametro della sede in mm;90 H6;85 H6;Dis.\nRugosità Ra in µm;1,6;1,6;Cat.\n",
    "a word for names, positions that a word for a position heads": "Изделие;Вентилятор;;"
    "Частота вращения макс., об/мин;3000;\n;;;;;\n№ п/п;Деталь;Показатель;Ед. изм.;Опора А;Опора Б\n"
    "1;Подшипник;Обозначение подшипника;;6210;6209\n"
    "2;Шейка вала;Диаметр;мм;50 k5;45 k5\n3;Шейка вала;Шероховатость Ra;мкм;0,8;0,4\n"
    "4;Шейка вала;Допуск цилиндричности;мм;0,004;0,003\n5;Отверстие корпуса;Диаметр;мм;90 H6;85 H6\n"
    "6;Отверстие корпуса;Шероховатость Ra;мкм;1,6;1,6\n",
    "any word, title pairs above": f"{_TITLE}Pos;Component;Thing looked at;Unit;Drive end;Fan end;Page\n"
    "1;Bearing;Bearing designation;-;6210;6209;4\n2;Shaft;Seat diameter;mm;50 k5;45 k5;4\n"
    "3;Shaft;Roughness Ra;µm;0.8;0.4;5\n4;Shaft;Cylindricity;mm;0.004;0.003;5\n"
    "5;Housing;Seat diameter;mm;90 H6;85 H6;6\n6;Housing;Roughness Ra;µm;1.6;1.6;6\n",
    "positions that are words of a machine alone": ";Modelo;;Bomba BM 7;;;\n"
    "Parte;Concepto;Unidad;Acoplamiento;Libre;Proveedor;Obs.\n"
    "Datos de servicio;Velocidad máx.;rpm;3000;;PR-1;\nRodamiento;Designación;;6210;6209;PR-2;\n"
    "Eje;Ø nominal;mm;50;45;PR-3;\nEje;Ajuste ISO;;k5;k5;PR-4;\nEje;Rugosidad Ra;µm;0.8;0.4;PR-5;\n"
    "Alojamiento;Ø nominal;mm;90;85;PR-6;\nAlojamiento;Ajuste ISO;;H6;H6;PR-7;\n"
    "Alojamiento;Rugosidad Ra;µm;1.6;1.6;PR-8;\n",
    "a word for values, Japanese": "最高回転速度[min-1];3000;;\n;;;\nデータ;単位;駆動側;反駆動側\n"
    "軸受;;;\n呼び番号;;6210;6209\n"
    "軸;;;\nはめあい部径;mm;50 k5;45 k5\n表面粗さRa;µm;0.8;0.4\n"
    "ハウジング;;;\n内径;mm;90 H6;85 H6\n表面粗さRa;µm;1.6;1.6\n",
    "symbols that may be units, a first row that may head a list": "Höchstdrehzahl;3000;1/min;;;\n;;;;;\n"
    "Bauteil;Kenngröße;Zeichen;Einheit;Lagerstelle 1;Lagerstelle 2\nLager;Bezeichnung;-;-;6210;6209\n"
    "Lager;Radiallast;Fr;N;90;70\nWelle;Nennmaß;d;mm;50;45\nWelle;Toleranzklasse;-;-;k5;k5\n"
    "Welle;Rauheit;Ra;µm;0,8;0,4\nGehäuse;Nennmaß;D;mm;90;85\nGehäuse;Toleranzklasse;-;-;H6;H6\n"
    "Gehäuse;Rauheit;Ra;µm;1,6;1,6\n",
    "a word that is not known, pages right": "装置名,攪拌機 KH-3,,図番,KH3-05\n最高回転数,3000,min-1,改訂,1\n,,,,\n"
    "考慮点,単位,上部軸受,下部軸受,頁\n軸受,,,,\n呼び番号,,6210,6209,3\n軸,,,,\nはめあい径,mm,50k5,45k5,4\n"
    "表面粗さRa,μm,0.8,0.4,4\n円筒度,mm,0.004,0.004,4\nハウジング,,,,\nはめあい径,mm,90H6,85H6,5\n"
    "表面粗さRa,μm,1.6,1.6,5\n",
}  # fmt: skip


@pytest.mark.parametrize("kind", TABLES)
def test_each_value_belongs_to_its_position(tmp_path, kind):
    path = tmp_path / "table.csv"
    path.write_text(TABLES[kind], "utf-8")
    stations = read_table(path).stations
    shaft, housing = (stations.size(f"{part}_seat_diameter") for part in ("shaft", "housing"))
    read = zip(
        stations.text("bearing_designation"),
        shaft.nominal.tolist(),
        shaft.lower.round(4).tolist(),
        housing.upper.round(4).tolist(),
        stations.number("shaft_seat_roughness").tolist(),
        stations.number("housing_seat_roughness").tolist(),
        stations.number("speed_max").tolist(),
        strict=True,
    )
    expected = [("6209", 45.0, 0.002, 0.022, 0.4, 1.6, 3000.0), ("6210", 50.0, 0.002, 0.022, 0.8, 1.6, 3000.0)]
    assert sorted(read) == expected


def test_a_word_for_values_over_values_heads_no_names(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "Position;Merkmal;Angabe\nLager A;Lagertyp;6210\nLager A;Wellensitz;50 k5 mm\nLager B;Lagertyp;6209\n"
    )
    assert sorted(read_table(path).stations.text("bearing_designation")) == ["6209", "6210"]


@pytest.mark.parametrize(
    "heads, stations",
    [
        (";;DE bearing;NDE bearing;;\nItem;Symbol;6210 C3;6209-2Z;Unit;Source\n", ["DE bearing", "NDE bearing"]),
        (";;A-Seite;B-Seite;;\nMerkmal;Zeichen;6210 C3;6209-2Z;Einheit;Quelle\n", ["A-Seite", "B-Seite"]),
        ("Parametro;Simbolo;6210 C3;6209-2Z;Unità;Fonte\n", ["6210 C3", "6209-2Z"]),
    ],
)
def test_bearings_head_the_columns_of_their_positions(tmp_path, heads, stations):
    path = tmp_path / "table.csv"
    rows = "Shaft seat diameter;d;50 k5;45 k5;mm;dwg\nShaft seat roughness;Ra;0,8;0,4;µm;dwg\n"
    rows += "Housing seat diameter;D;90 H6;85 H6;mm;dwg\nRadial load;Fr;500;380;N;calc\n"
    path.write_text(f"Machine;Booster fan BF-9;;;;\n;;;;;\n{heads}{rows}", "utf-8")
    read = read_table(path).stations
    assert read.text("bearing_designation").tolist() == ["6210 C3", "6209-2Z"]
    assert read.text("station").tolist() == stations
    assert read.size("shaft_seat_diameter").nominal.tolist() == [50.0, 45.0]


@pytest.mark.parametrize(
    "place, heads, bore, outside",
    [
        ("Supporto", "Parametro;Valore", "Diametro interno", "Diametro esterno"),
        ("Supporto", "Voce;Valore", "Diametro interno", "Diametro esterno"),
    ],
)
def test_a_word_for_a_place_over_a_list_is_no_housing(tmp_path, place, heads, bore, outside):
    path = tmp_path / "table.csv"
    one = f"{place} {{}};\n{heads}\n{bore} [mm];{{}}\n{outside} [mm];40\n"
    path.write_text(one.format("A", 17) + "\n" + one.format("B", 15), "utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("bore_diameter").tolist() == [17.0, 15.0]
    assert not stations.known("housing_seat_diameter").any()


@pytest.mark.parametrize(
    "head, date", [("Date", "2025-01-02"), ("Datum der Angabe", "02.01.2025"), ("Date", "1/2/25"), ("Sheet", "12")]
)
def test_dates_and_pages_beside_positions_are_of_no_position(tmp_path, head, date):
    path = tmp_path / "table.csv"
    rows = ["Shaft seat diameter;35 js4;30 js4", "Shaft seat roughness Ra in µm;0.2;0.2", "Radial load in N;500;350"]
    rows += ["Housing seat diameter;62 JS5;55 JS5", "Housing seat roughness Ra in µm;0.4;0.4"]
    text = "\n".join([f"Question;Front bearing;Rear bearing;Answered by;{head}", *(f"{row};AB;{date}" for row in rows)])
    path.write_text(f"Machine;Grinder head GH-2;;;\n;;;;\n{text}\n", "utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["Front bearing", "Rear bearing"]
    assert stations.number("radial_load").tolist() == [500.0, 350.0]


def test_a_row_of_machines_over_the_positions_keeps_them_apart(tmp_path):
    path = tmp_path / "seats.csv"
    path.write_text(
        "Maschine;Lüfter 1;Lüfter 1;Lüfter 2;Lüfter 2\nLagerstelle;A;B;A;B\nLagerbezeichnung;6204;6203;6204;6203\n"
        "Wellensitz;20 k5;17 j5;20 j5;17 k5\nGehäusesitz;47 H6;40 J7;47 J6;40 H7\n",
        "utf-8",
    )
    reading = read_table(path)
    assert len(reading.stations.machines) == 2
    assert len(reading.stations) == 4
    assert reading.unused == ()
