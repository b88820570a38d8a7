"""Tables in the habits of different offices, each with its own mixture of title block, words, units and tolerances."""

from pathlib import Path

import openpyxl
import pytest

from linter.reading import Reading, read_table
from linter.reading.words.mapping import Mapping
from linter.reading.words.names import Names


def left(reading: Reading) -> set[str]:
    return {unused.value for unused in reading.unused}


def test_german_supplier_list_with_title_block_and_deviations(tmp_path: Path) -> None:
    path = tmp_path / "Lieferliste.csv"
    text = (
        "Zulieferer-Stückliste;;;;;;;\n"
        "Zeichnungs-Nr.;RB-4711-02;;Änderungsstand;C;;;\n"
        "Baugruppe;Pumpenläufer P12;;Alle Maße in mm;;;;\n"
        "Allgemeintoleranzen;ISO 2768-mK;;Datum;12.03.2024;;;\n"
        ";;;;;;;\n"
        "Pos.;Merkmal;Lagerstelle;Nennmaß;ob. Abm.;unt. Abm.;Passung;Bemerkung\n"
        "1;Wellensitz-Ø;A;8,000;+0,007;+0,001;;geschliffen\n"
        "2;Wellensitz-Ø;B;8,000;;;k5;\n"
        "3;Gehäusebohrung;A;22,000;0,013;0;H6;\n"
        "4;Gehäusebohrung;B;22,000;+0,013;0,000;;\n"
        "5;Bohrungsdurchmesser Lager;A;8;;;;\n"
        "6;Lageraußendurchmesser;A;22;;;;\n"
        "7;Rauheit Wellensitz Ra [µm];A;0,4;;;;\n"
        "8;Höchstdrehzahl [1/min];;24.000;;;;\n"
        "9;Schmierung;A;Fett;;;;\n"
        "Ende der Liste;;;;;;;\n"
    )
    path.write_bytes(text.encode("cp1252"))
    reading = read_table(path, Names(Mapping(encoding="cp1252")))
    stations = reading.stations
    assert [problem.message for problem in stations.problems] == []
    assert stations.machines == ("Pumpenläufer P12",)
    assert list(stations.text("station")) == ["A", "B"]
    assert list(stations.text("drawing_number")) == ["RB-4711-02"] * 2
    assert list(stations.text("drawing_revision")) == ["C"] * 2
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert shaft.nominal.tolist() == [8, 8]
    assert (shaft.lower[0], shaft.upper[0]) == pytest.approx((0.001, 0.007))
    assert shaft.tolerance_class.tolist() == ["", "k5"]
    assert housing.upper.tolist() == pytest.approx([0.013, 0.013])
    assert stations.number("speed_max").tolist() == [24000, 24000]
    assert stations.number("shaft_seat_roughness")[0] == 0.4
    assert stations.choice("lubrication").texts()[0] == "grease"
    assert {"ISO 2768-mK", "12.03.2024", "geschliffen"} <= left(reading)


def test_french_table_of_configurations(tmp_path: Path) -> None:
    path = tmp_path / "config.csv"
    text = (
        "sep=;\n"
        "Configuration;Repère palier;Alésage (mm);Diamètre extérieur (mm);Portée d'arbre (mm);Alésage du logement (mm);"
        "Charge radiale (N);Vitesse maxi (tr/min);Lubrification;Commentaire\n"
        "Ventilateur V1;côté entraînement;6;19;6 j5;19 (0/-0,009);38,5;18\u202f000;graisse;\n"
        "Ventilateur V1;côté opposé;6;19;6 ±0,004;19 H6;21,0;18\u202f000;graisse;voir note\n"
        "Ventilateur V2;côté entraînement;8;22;8 +0,007/+0,001;22 H6;55;12\u202f500;bain d'huile;\n"
        "Ventilateur V2;côté opposé;8;22;8 k5;22 J6;31,5;12\u202f500;bain d'huile;\n"
    )
    path.write_text(text, encoding="utf-8-sig")
    reading = read_table(path)
    stations = reading.stations
    assert stations.problems == ()
    assert stations.machines == ("Ventilateur V1", "Ventilateur V2")
    assert list(stations.text("station")) == ["côté entraînement", "côté opposé"] * 2
    assert stations.number("speed_max").tolist() == [18000, 18000, 12500, 12500]
    assert stations.number("bore_diameter").tolist() == [6, 6, 8, 8]
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["j5", "", "", "k5"]
    assert stations.size("housing_seat_diameter").lower[0] == pytest.approx(-0.009)
    assert stations.choice("lubrication").texts().tolist() == ["grease", "grease", "oil bath", "oil bath"]
    assert left(reading) == {"voir note"}


def test_japanese_first_article_list(tmp_path: Path) -> None:
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "初品検査"
    for row in (
        ["初品検査成績書"],
        ["図面番号", "SP-300-11", None, "機種", "主軸 S30"],
        ["単位: mm"],
        [],
        ["番号", "寸法名", "位置", "図示サイズ", "上の許容差", "下の許容差", "公差域クラス", "実測値1", "判定", "備考"],
        [1, "軸はめあい径", "前側", 30, 0.008, -0.003, None, 30.002, "合"],
        [2, "軸はめあい径", "後側", 30, 0.0045, -0.0045, "js5", 30.001, "合"],
        [3, "ハウジング内径", "前側", 55, "＋０．０１９", "０", "H6", 55.01, "合"],
        [4, "軸受内径", "前側", 30],
        [5, "軸の表面粗さ Ra(μm)", "前側", 0.4, None, None, None, 0.31, "合"],
        [6, "最高回転数 (min⁻¹)", None, 20000],
    ):
        sheet.append(row)
    path = tmp_path / "shohin.xlsx"
    book.save(path)
    reading = read_table(path)
    stations = reading.stations
    assert [problem.message for problem in stations.problems] == []
    assert stations.machines == ("主軸 S30",)
    assert list(stations.text("station")) == ["前側", "後側"]
    assert list(stations.text("drawing_number")) == ["SP-300-11"] * 2
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert shaft.upper.tolist() == pytest.approx([0.008, 0.0045])
    assert shaft.tolerance_class.tolist() == ["", "js5"]
    assert housing.upper[0] == pytest.approx(0.019)
    assert stations.number("speed_max").tolist() == [20000, 20000]
    assert stations.number("shaft_seat_roughness")[0] == 0.4
    measured = next(unused for unused in reading.unused if unused.name == "実測値1")
    assert "30.002" in measured.value


def test_russian_equation_file(tmp_path: Path) -> None:
    path = tmp_path / "equations.txt"
    text = (
        "'параметры узла насоса\n"
        '"машина"= Насос Н-40\n'
        '"номер чертежа"= НК-40.02.001\n'
        '"диаметр отверстия подшипника@А"= 17 мм\n'
        '"диаметр отверстия подшипника@Б"= 17 мм\n'
        '"диаметр посадки вала@А"= 17 k5 \'шлифовать\n'
        '"диаметр посадки вала@Б"= 17 +0,009/+0,001 мм\n'
        '"D1@Эскиз1"= "диаметр посадки вала@А"\n'
        '"радиальная нагрузка@А"= 0,25 кН\n'
        '"максимальная частота вращения"= 9\u00a0000 об/мин\n'
        '"масса ротора"= 3,2 кг\n'
        '"смазка@А"= пластичная смазка\n'
    )
    path.write_bytes(text.replace("\n", "\r\r\n").encode("utf-16"))
    reading = read_table(path)
    stations = reading.stations
    assert [problem.message for problem in stations.problems] == []
    assert stations.machines == ("Насос Н-40",)
    assert list(stations.text("station")) == ["A", "Б"]
    assert stations.number("bore_diameter").tolist() == [17, 17]
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", ""]
    assert stations.size("shaft_seat_diameter").upper[1] == pytest.approx(0.009)
    assert stations.number("radial_load")[0] == 250
    assert stations.number("speed_max").tolist() == [9000, 9000]
    assert stations.choice("lubrication").texts()[0] == "grease"
    assert {unused.name for unused in reading.unused} >= {"D1@Эскиз1"}


def test_american_table_in_inches(tmp_path: Path) -> None:
    path = tmp_path / "blower.csv"
    path.write_text(
        "PART NO:,X-1182,REV:,B,,\n"
        "ALL DIMENSIONS IN INCHES,,,,,\n"
        ",,,,,\n"
        "Assembly,Brg Pos,Brg Bore,Brg OD,Shaft Seat Dia,Housing Bore Dia,Max Speed (RPM),Radial Load (lbf),Lube\n"
        'BLOWER 9,DE,.2362,.7480,.2362 +.0002/-.0000,.7480 +.0005/-.0000,"22,000",8.5,Grease\n'
        'BLOWER 9,NDE,.2362,.7480,.2362 +.0000/-.0002,.7480/.7485,"22,000",4,Grease\n',
        encoding="ascii",
    )
    reading = read_table(path)
    stations = reading.stations
    assert stations.problems == ()
    assert stations.machines == ("BLOWER 9",)
    assert stations.number("bore_diameter").tolist() == pytest.approx([5.99948, 5.99948])
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert shaft.upper.tolist() == pytest.approx([0.00508, 0.0])
    assert shaft.lower.tolist() == pytest.approx([0.0, -0.00508])
    assert housing.nominal.tolist() == pytest.approx([18.9992, 18.9992])
    assert housing.upper.tolist() == pytest.approx([0.0127, 0.0127])
    assert stations.number("speed_max").tolist() == [22000, 22000]
    assert stations.number("radial_load").tolist() == pytest.approx([37.80988, 17.79289], abs=1e-5)
    assert reading.unused == ()
