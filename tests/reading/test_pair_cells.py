"""Cells that state one value for each of two sides; see :mod:`linter.reading.layouts.pair_cells`."""

import pytest

from linter.reading import read_table

_ENGLISH = "Bearing,6305 / 6304,\nShaft seat,25 k6 / 20 k5,mm\nShaft seat Ra,0.4 / 0.8,µm\nMax. speed,3000,rpm\n"
TABLES = {
    "in each name": "Fan F-1,,\nBearings (DE/NDE),6305 / 6304,\nShaft seats (DE/NDE),25 k6 / 20 k5,mm\n"
    "Shaft seat Ra (DE/NDE),0.4 / 0.8,µm\nMax. speed,3000,rpm\n",
    "a code beside a known one": "Fan F-1,,\nBearings (DE/FE),6305 | 6304,\nShaft seats (DE/FE),25 k6 | 20 k5,mm\n"
    "Shaft seat Ra (DE/FE),0.4 | 0.8,µm\nMax. speed,3000,rpm\n",
    "behind each name": "Fan F-1,\nFront bearing / Rear bearing,6305 / 6304\nShaft seat front / rear,25 k6 / 20 k5 mm\n"
    "Shaft seat Ra front/rear,0.4/0.8 µm\nMax. speed,3000 rpm\n",
    "over the values": f"Parameter,Front / Rear,Unit\n{_ENGLISH}",
    "over the names": f"Parameter (front / rear),Value,Unit\n{_ENGLISH}",
    "in the title": f"Fan F-1 (drive end / free end),,\n{_ENGLISH}",
    "letters over the values": "Merkmal;Wert (A | B);Einheit\nLager;6305 | 6304;\nWellensitz;25 k6 | 20 k5;mm\n"
    "Rauheit Wellensitz Ra;0,4 | 0,8;µm\nDrehzahl max.;3000;1/min\n",
    "eastern signs": "項目(前/後),値,単位\n軸受型番,6305/6304,\n軸径,25k6/20k5,mm\n"
    "軸面粗さRa,0.4/0.8,μm\n最高回転数,3000,min-1\n",
    "opora": "Показатель (опора А / опора Б);Значение;Ед.\nПодшипник;6305 / 6304;\nПосадка на вал;25k6 / 20k5;мм\n"
    "Шероховатость Ra вала;0,4 / 0,8;мкм\nЧастота вращения, макс.;3000;об/мин\n",
    "one machine in a row": "Machine;Bearings (A/B);Shaft seat (A/B);Shaft seat Ra (A/B) [µm];Max. speed rpm\n"
    "M1;6305 / 6304;25 k6 / 20 k5;0.4 / 0.8;3000\n",
}


@pytest.mark.parametrize("kind", TABLES)
def test_each_part_belongs_to_its_side(tmp_path, kind):
    path = tmp_path / "table.csv"
    path.write_text(TABLES[kind], "utf-8")
    stations = read_table(path).stations
    read = zip(
        stations.text("bearing_designation"),
        stations.number("shaft_seat_roughness").tolist(),
        stations.size("shaft_seat_diameter").nominal.tolist(),
        stations.number("speed_max").tolist(),
        strict=True,
    )
    assert sorted(read) == [("6304", 0.8, 20.0, 3000.0), ("6305", 0.4, 25.0, 3000.0)]


PARTS = {
    "over the names": "Merkmal (Welle/Gehäuse);Lager A;Lager B;Einheit\nLagerbezeichnung;6204;6205;\n"
    "Sitz;20 k5 / 47 H6;25 k5 / 52 J6;mm\nRauheit Ra;0,4 / 0,8;0,4 / 0,8;µm\n",
    "wholly the name": "Grandeur;Palier AV;Palier AR;Unité\nRoulement;6204;6205;\n"
    "Arbre / alésage;20 k5 / 47 H6;25 k5 / 52 J6;mm\nRa arbre / alésage;0,4 / 0,8;0,4 / 0,8;µm\n",
    "eastern signs": "項目(軸/ハウジング),A側,B側,単位\n軸受型番,6204,6205,\nはめあい径,20k5/47H6,25k5/52J6,mm\n"
    "面粗さRa,0.4/0.8,0.4/0.8,μm\n",
}


@pytest.mark.parametrize("kind", PARTS)
def test_each_part_belongs_to_shaft_or_housing(tmp_path, kind):
    path = tmp_path / "table.csv"
    path.write_text(PARTS[kind], "utf-8")
    stations = read_table(path).stations
    assert sorted(stations.size("shaft_seat_diameter").nominal.tolist()) == [20.0, 25.0]
    assert sorted(stations.size("housing_seat_diameter").nominal.tolist()) == [47.0, 52.0]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 0.8]


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("Shaft seats", "25 k6 / 20 k6"),  # nothing says of which sides
        ("Shaft seat (X/Y)", "25 k6 / 20 k6"),  # directions
        ("Shaft seats (DE/NDE)", "25 k6 / 20 k6 / 17 k6"),
        ("Shaft seats (DE/NDE)", "+0.009/-0.004"),  # two deviations of one size
        ("Shaft seats (DE/NDE)", "k6/H7"),  # the fits of shaft and housing
    ],
)
def test_what_names_no_two_sides_is_asked(tmp_path, name, value):
    path = tmp_path / "table.csv"
    path.write_text(
        f"Name,Value,Unit\nHousing seat DE,62 H7,mm\nHousing seat NDE,52 H7,mm\n{name},{value},mm\n", "utf-8"
    )
    reading = read_table(path)
    assert not reading.stations.known("shaft_seat_diameter").any()
    places = [problem.place for problem in reading.stations.problems] + [left.place for left in reading.unused]
    assert "B4" in {place.cell for place in places if place is not None}


def test_one_designation_with_a_stroke_is_not_two(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text("Name,Value\nBearings (DE/NDE),6305/C3\nShaft seats (DE/NDE),25 k6 / 25 k6\n", "utf-8")
    assert "C3" not in read_table(path).stations.text("bearing_designation")
