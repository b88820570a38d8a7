"""Columns of remarks: what stands there and nowhere else is read with the values of its row, in every layout."""

import json

import pytest

from linter.reading import read_table
from linter.review.defaults import with_defaults
from linter.rulebook.load import load


def read(folder, text, name="t.csv"):
    (folder / name).write_text(text, encoding="utf-8")
    return read_table(folder / name)


LISTS = {
    "en": ("Parameter;Value;Unit;Notes", "Bearing A;6204;;fixed end", "Shaft seat A;20;mm;k5, ground",
           "Housing seat A;47;mm;fit H6", "Bearing B;6203;;floating, wave spring", "Shaft seat B;17;mm;k5"),
    "de": ("Merkmal;Wert;Einheit;Bemerkungen", "Lager A;6204;;Festlager", "Wellensitz A;20;mm;Passung k5",
           "Gehäusesitz A;47;mm;H6", "Lager B;6203;;Loslager, mit Wellfeder", "Wellensitz B;17;mm;k5"),
    "fr": ("Désignation;Valeur;Unité;Remarques", "Roulement A;6204;;palier fixe", "Portée arbre A;20;mm;k5, rectifiée",
           "Logement A;47;mm;Ajust. H6", "Roulement B;6203;;libre avec rondelle ondulée", "Portée arbre B;17;mm;k5"),
    "ru": ("Параметр;Значение;Ед. изм.;Примечание", "Подшипник A;6204;;фиксирующая опора", "Диаметр вала A;20;мм;k5",
           "Диаметр корпуса A;47;мм;H6", "Подшипник B;6203;;плавающая, волнистая пружина", "Диаметр вала B;17;мм;k5"),
    "zh": ("参数;数值;单位;备注", "A端轴承型号;6204;;固定端", "A端轴径;20;mm;公差带k5",
           "A端座孔直径;47;mm;H6", "B端轴承型号;6203;;游动端，波形弹簧预紧", "B端轴径;17;mm;k5"),
    "ja": ("項目;値;単位;備考", "A側軸受型番;6204;;固定側", "A側軸径;20;mm;公差 k5",
           "A側ハウジング内径;47;mm;H6", "B側軸受型番;6203;;自由側、波ばね予圧", "B側軸径;17;mm;k5"),
}  # fmt: skip


@pytest.mark.parametrize("language", LISTS)
def test_class_role_and_spring_stand_in_remarks(tmp_path, language):
    reading = read(tmp_path, "\n".join(LISTS[language]) + "\n")
    s = reading.stations
    assert s.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", "k5"]
    assert s.size("housing_seat_diameter").tolerance_class.tolist() == ["H6", ""]
    assert s.choice("axial_role").texts().tolist() == ["locating", "spring-loaded"]
    assert s.choice("spring_kind").texts().tolist() == ["wave", "wave"]
    assert s.choice("preload_method").texts().tolist() == ["spring", "spring"]
    assert not [u for u in reading.unused if "k5" in u.value or "H6" in u.value]


@pytest.mark.parametrize("remark", ["M6 thread beside it", "was k5, now m5", "see sheet 5", "k5 or m5", "left k5"])
def test_no_class_is_taken_from_other_remarks(tmp_path, remark):
    lines = (
        "Parameter;Value;Unit;Notes",
        "Bearing A;6204;;",
        f"Shaft seat A;20;mm;{remark}",
        f"Housing A;47;mm;{remark}",
    )
    reading = read(tmp_path, "\n".join(lines) + "\n")
    assert reading.stations.size("shaft_seat_diameter").tolerance_class.tolist() == [""]
    assert any(remark in u.value for u in reading.unused)


def test_a_row_of_a_station_and_an_object_have_remarks_too(tmp_path):
    rows = read(
        tmp_path, "Pos;Bearing;Shaft dia (mm);Remarks\nDE;6204;20 k5;fixed\nNDE;6203;17 k5;floating, disc springs\n"
    )
    assert rows.stations.choice("axial_role").texts().tolist() == ["locating", "spring-loaded"]
    assert rows.stations.choice("spring_kind").texts().tolist() == ["disc", "disc"]
    bearings = [{"position": "DE", "bearing": "6204", "note": "fixed"}, {"position": "NDE", "bearing": "6203"}]
    document = read(tmp_path, json.dumps({"bearings": bearings}), "t.json")
    assert document.stations.choice("axial_role").texts().tolist() == ["locating", ""]


def test_what_is_stated_goes_before_its_remark(tmp_path):
    rows = read(
        tmp_path,
        "Pos;Bearing;Axial role;Shaft dia (mm);Remarks\nDE;6204;floating;20 k5;fixed\nNDE;6203;floating;17 k5;black\n",
    )
    assert rows.stations.choice("axial_role").texts().tolist() == ["floating", "floating"]


def test_no_default_stands_in_for_words_that_are_not_understood(tmp_path):
    rows = read(tmp_path, "Pos;Bearing;Shaft dia (mm);Remarks\nDE;6204;20 k5;ceramic balls\nNDE;6203;17 k5;\n")
    assert "ambiguous-choice" in {p.code for p in rows.stations.problems}
    found = with_defaults(rows.stations, load("ruleset/current"))
    assert found.choice("ball_material").texts().tolist() == ["", "steel"]


@pytest.mark.parametrize(
    ("shaft", "housing", "known"),
    [
        ("shaft seat bearing 1, k5", "housing seat bearing 1, J6", True),
        ("Sitz, geschliffen, k5", "Sitz, gehont, J6", True),
        ("portée rectifiée, k5", "alésage, J6", True),
        ("軸受部、研削, k5", "内径, J6", True),
        ("was k6, k5", "H7 before, J6", False),
        ("mates with part, M10", "thread, M8", False),
        ("for hub, J6", "for shaft, k5", False),
    ],
)
def test_a_class_that_ends_a_remark_is_that_of_the_seat(tmp_path, shaft, housing, known):
    text = f"Name;Value;Unit;Comment\nShaft seat A;25;mm;{shaft}\nHousing seat A;52;mm;{housing}\nBearing A;6205;;\n"
    stations = read(tmp_path, text + "Shaft shoulder A;31;mm;\n").stations
    assert list(stations.size("shaft_seat_diameter").tolerance_class) == (["k5"] if known else [""])
    assert list(stations.size("housing_seat_diameter").tolerance_class) == (["J6"] if known else [""])
