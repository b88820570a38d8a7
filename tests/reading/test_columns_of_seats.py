"""One column per seat: part and position in the heading, what is stated of the seat down the first column."""

import pytest

from linter.reading import read_table


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
