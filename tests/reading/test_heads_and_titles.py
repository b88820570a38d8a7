"""Rows above a table that are its title, its position or its heading, and blocks below them."""

import pytest

from linter.reading import read_table
from linter.reading.layouts.sides import side_of

_SEATS = "Inner ring seat;\nSeat size;{0} +0.011/+0.002 mm\nSurface texture Ra;0.8 µm\n"
_BORES = "Outer ring seat;\nSeat size;{1} +0.016/0.000 mm\nSurface texture Ra;1.6 µm\n"
TABLES = {
    "parts beside the names": "Bearing seat schedule;;;;;;\nModel;Fan F-1;;;;;\nDrg. No.;K.3740-85;;;;;\n"
    "Max. speed [rpm];3000;;;;;\nMaterial of shaft;Steel;;;;;\n;;;;;;\nNo.;Component;Parameter;Units;A;B;Notes\n"
    "1;Rolling bearing;Rolling bearing;;6204;6203;\n2;Shaft;Seat Ø;mm;20 k5;17 k5;\n3;;Ra;µm;0.8;0.4;ISO 21920\n"
    "4;Housing;Seat Ø;mm;47 H6;40 H6;\n5;;Ra;µm;1.6;0.8;\n",
    "rings say the parts": "Top speed;3000 rpm\n;\nA;\nBearing;\nBearing code;6204\n"
    + (_SEATS + _BORES).format(20, 47)
    + ";\nB;\nBearing;\nBearing code;6203\n"
    + (_SEATS + _BORES).format(17, 40),
    "blocks of another script": "図面番号;T.9131;;;;;\n最高回転速度 [min-1];3000;;;;;\n;;;;;;\n前部;;;;後部;;\n"
    "項目;値;単位;;項目;値;単位\n"
    "軸受呼び番号;6204;;;軸受呼び番号;6203;\n軸はめあい部;;;;軸はめあい部;;\n呼び径;20 k5;mm;;呼び径;17 k5;mm\n"
    "ハウジングはめあい部;;;;ハウジングはめあい部;;\n呼び径;47 H6;mm;;呼び径;40 H6;mm\n",
    "positions with the word for a support": "Максимальная частота вращения [об/мин];3000;\n;;\n"
    "Передняя опора;;\nНаименование параметра;Значение;Ед. изм.\nОбозначение подшипника;6204;\n"
    "Посадочное место вала;;\nНоминальный диаметр;20;мм\nВерхнее отклонение;+0,011;мм\nНижнее отклонение;+0,002;мм\n"
    "Посадочное место корпуса;;\nНоминальный диаметр;47;мм\nВерхнее отклонение;+0,016;мм\nНижнее отклонение;0;мм\n;;\n"
    "Задняя опора;;\nНаименование параметра;Значение;Ед. изм.\nОбозначение подшипника;6203;\n"
    "Посадочное место вала;;\nНоминальный диаметр;17;мм\nВерхнее отклонение;+0,011;мм\nНижнее отклонение;+0,002;мм\n"
    "Посадочное место корпуса;;\nНоминальный диаметр;40;мм\nВерхнее отклонение;+0,016;мм\n"
    "Нижнее отклонение;0;мм\n",
    "a title of one label and its value": "Unit name,Chopper OC-1,\n"
    "Part drawing,WZ-6873-39,\nSpeed max.,3000 rpm,\n,,\n"
    'Bearing A,,\nBearing no.,6204,\nShaft seat Ø,20 k5,checked\nHousing seat Ø,"47 H6",\n,,\nBearing B,,\n'
    'Bearing no.,6203,\nShaft seat Ø,17 k5,\nHousing seat Ø,"40 H6",\n',
    "a foot below the column of parts": "Repère;Pièce;Cote;Valeur;Écart sup.;Écart inf.;Unité\n"
    "gauche;Arbre;Diamètre de portée;20;+0,011;+0,002;mm\ngauche;Arbre;Rugosité Ra de portée;0,8;;;µm\n"
    "gauche;Logement;Diamètre d'alésage;47;+0,016;0;mm\ngauche;Roulement;Référence du roulement;6204;;;\n"
    "droite;Arbre;Diamètre de portée;17;+0,011;+0,002;mm\ndroite;Arbre;Rugosité Ra de portée;0,8;;;µm\n"
    "droite;Logement;Diamètre d'alésage;40;+0,016;0;mm\ndroite;Roulement;Référence du roulement;6203;;;\n\n"
    "Vitesse de rotation maximale;3000;tr/min;;;;\n",
}


@pytest.mark.parametrize("kind", TABLES)
def test_each_value_belongs_to_its_seat(tmp_path, kind):
    path = tmp_path / "table.csv"
    path.write_text(TABLES[kind], "utf-8")
    stations = read_table(path).stations
    shaft, housing = (stations.size(f"{part}_seat_diameter").nominal.tolist() for part in ("shaft", "housing"))
    read = zip(stations.text("bearing_designation"), shaft, housing, stations.number("speed_max").tolist(), strict=True)
    assert sorted(read) == [("6203", 17.0, 40.0, 3000.0), ("6204", 20.0, 47.0, 3000.0)]


def test_a_revision_below_a_table_is_no_row_of_it(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "Apoyo;Designación del rodamiento;Diámetro del asiento en el eje [mm];Rugosidad Ra del eje [µm];"
        "Carga radial [N]\n"
        "Lado motor;6204;20 k5;0,4;150\nLado opuesto;6203;17 k5;0,4;150\n;;;;\nMáquina;Soplador S-1;;;\n"
        "N.º de plano;T-8496-23;;;\nRevisión;B;;;\nVelocidad máxima [r/min];9500;;;\n",
        "utf-8",
    )
    stations = read_table(path).stations
    assert stations.machines == ("Soplador S-1",)
    assert set(stations.text("drawing_number")) == {"T-8496-23"}
    assert sorted(stations.text("bearing_designation")) == ["6203", "6204"]


@pytest.mark.parametrize(("text", "side"), [("Inner ring seat", "shaft"), ("Outer ring seat", "housing")])
def test_the_seat_of_a_ring_says_the_part(text, side):
    found = side_of(text)
    assert found is not None and found.side == side


@pytest.mark.parametrize("text", ["Bearing seats", "Ring seat", "Inner ring"])
def test_other_words_for_seats_and_rings_say_no_part(text):
    assert side_of(text) is None
