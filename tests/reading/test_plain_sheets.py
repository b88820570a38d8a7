"""Sheets of one machine as an office lays them out: parts among the numbers of the rows, blocks, positions again."""

import json

import pytest

from linter.reading import read_table
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

_HEAD = "Lfd.;Merkmal;Einh.;Antriebsseite;Lüfterseite\n1;Lagerbezeichnung;;6210;6209\n"
TABLES = {
    "parts among numbers": f"{_HEAD}Welle;;;;\n2;Nennmaß;mm;50;45\n3;Toleranzklasse;;k5;k5\n4;Rauheit Ra;µm;0,8;0,4\n"
    "Gehäuse;;;;\n5;Nennmaß;mm;90;85\n6;Toleranzklasse;;H6;H6\n;;;;\nDrehzahl max.;;1/min;3000;\n",
    "deviations below a nominal": "项目;单位;前轴承;后轴承\n轴承代号;;6210;6209\n轴;;;\n公称尺寸;mm;50;45\n"
    "上偏差;μm;13;13\n下偏差;μm;2;2\n表面粗糙度Ra;μm;0.8;0.4\n轴承座孔;;;\n公称尺寸;mm;90;85\n上偏差;μm;22;22\n"
    "下偏差;μm;0;0\n最高转速;r/min;3000;\n",
    "positions again": "Fan F-1;;;\n;;;\nSHAFT SEATS;;Drive end;Fan end\nDiameter;mm;50 k5;45 k5\n"
    "Roughness Ra;µm;0.8;0.4\n;;;\nHOUSING SEATS;;Drive end;Fan end\nDiameter;mm;90 H6;85 H6\n;;;\n"
    "BEARINGS;;Drive end;Fan end\n"
    "Designation;;6210;6209\nMax. speed;rpm;3000;\n",
    "blocks side by side": "Machine;F-1;;;\nMax. speed;3000;rpm;;\n;;;;\nFront bearing;;;Rear bearing;\n"
    "Bearing;6210;;Bearing;6209\nShaft seat;50 k5 mm;;Shaft seat;45 k5 mm\nRa shaft seat;0.8 µm;;Ra shaft seat;0.4 µm\n"
    "Housing seat;90 H6 mm;;Housing seat;85 H6 mm\n",
    "blocks with limits": "Vitesse maximale : 3000 tr/min;\n;\nRoulement côté poulie;\nDésignation;6210\n"
    "Diamètre portée d'arbre mini - maxi [mm];50,002 - 50,013\nRugosité Ra portée d'arbre [µm];0,8\n"
    "Diamètre logement mini - maxi [mm];90,000 - 90,022\n;\nRoulement côté libre;\nDésignation;6209\n"
    "Diamètre portée d'arbre mini - maxi [mm];45,002 - 45,013\nRugosité Ra portée d'arbre [µm];0,4\n"
    "Diamètre logement mini - maxi [mm];85,000 - 85,022\n",
}


@pytest.mark.parametrize("kind", TABLES)
def test_each_value_belongs_to_its_seat(tmp_path, kind):
    path = tmp_path / "table.csv"
    path.write_text(TABLES[kind], "utf-8")
    stations = read_table(path).stations
    shaft, housing = (stations.size(f"{part}_seat_diameter") for part in ("shaft", "housing"))
    read = zip(
        stations.text("bearing_designation"),
        (shaft.nominal + shaft.lower).round(4).tolist(),
        (housing.nominal + housing.upper).round(4).tolist(),
        stations.number("shaft_seat_roughness").tolist(),
        stations.number("speed_max").tolist(),
        strict=True,
    )
    assert sorted(read) == [("6209", 45.002, 85.022, 0.4, 3000.0), ("6210", 50.002, 90.022, 0.8, 3000.0)]


def test_a_nominal_of_nothing_that_is_named_is_not_taken(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text("Item;Unit;Drive end;Fan end\nBearing;;6210;6209\nNominal size;mm;50;45\nClass;;k5;k5\n", "utf-8")
    reading = read_table(path)
    assert not reading.stations.known("shaft_seat_diameter").any()
    assert {unused.name for unused in reading.unused} >= {"Nominal size"}


def test_keys_that_say_something_together_with_their_seat_are_no_positions(tmp_path):
    def seats(shaft: str, housing: str) -> dict[str, dict[str, object]]:
        return {
            "shaft_seat": {"diameter_mm": shaft, "cylindricity_mm": 0.003},
            "housing_seat": {"diameter_mm": housing, "cylindricity_mm": 0.005},
        }

    path = tmp_path / "table.json"
    path.write_text(json.dumps({"bearings": {"front": seats("50 k5", "90 H6"), "rear": seats("45 k5", "85 H6")}}))
    stations = read_table(path).stations
    assert sorted(stations.text("station")) == ["front", "rear"]
    assert stations.number("shaft_seat_cylindricity").tolist() == [0.003, 0.003]
    assert stations.number("housing_seat_cylindricity").tolist() == [0.005, 0.005]


@pytest.mark.parametrize(
    "name",
    [
        "Shaft seat diameter min/max [mm]",
        "Wellensitz Ø min – max",
        "軸径 最小～最大",
        "Диаметр шейки вала мин - макс, мм",
    ],
)
def test_a_size_may_be_headed_by_both_of_its_limits(name):
    heading = Words(Names.built_in()).heading(name)
    assert (heading.parameter, heading.aspect) == ("shaft_seat_diameter", "value")


@pytest.mark.parametrize("name", ["min - max", "Ra min/max", "Speed min - max [rpm]"])
def test_limits_of_no_size_head_none(name):
    assert Words(Names.built_in()).heading(name) is None


def test_labels_below_a_list_may_begin_in_the_column_of_its_numbers(tmp_path):
    rows = "".join(
        f"{2 * k + 1}\tлевая\t{name}\t{upper}\t{lower}\t{unit}\n{2 * k + 2}\tправая\t{name}\t{upper}\t{lower}\t{unit}\n"
        for k, (name, upper, lower, unit) in enumerate(
            [("Диаметр шейки вала", "50,020", "50,009", "мм"), ("Шероховатость Ra шейки вала", "0,8", "", "мкм"),
             ("Обозначение подшипника", "6210", "", "")]
        )
    )  # fmt: skip
    path = tmp_path / "table.txt"
    head = "№\tОпора\tПараметр\tНаибольший\tНаименьший\tЕд.\n"
    path.write_text(f"{head}{rows}\nЧастота вращения наибольшая\t7200\tоб/мин\nМасса ротора\t9,6\tкг\n", "utf-8")
    stations = read_table(path).stations
    assert stations.number("speed_max").tolist() == [7200.0, 7200.0]
    assert stations.number("rotor_mass").tolist() == [9.6, 9.6]
    assert stations.text("bearing_designation").tolist() == ["6210", "6210"]


def test_a_material_says_itself_of_which_part_it_is(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "Item;Unit;Drive end;Fan end\nBearing;;6210;6209\nShaft\nSeat diameter;mm;50 k5;45 k5\nHousing\n"
        "Seat diameter;mm;90 H6;85 H6\n\nShaft material;;42CrMo4;42CrMo4\n",
        "utf-8",
    )
    stations = read_table(path).stations
    assert stations.choice("shaft_material").is_in("steel").all()


def test_a_comment_beside_a_code_says_of_which_part_it_is(tmp_path):
    """25.6 mm beside a bore of 20 mm and an outside diameter of 47 mm could be either shoulder by its size."""
    rows = [
        "Variabile,Valore,Unità,Descrizione", "cusc_LA,6204-2Z/C3,,cuscinetto lato accoppiamento",
        "d_albero_LA,20,mm,sede cuscinetto", "d_albero_LA_sup,0.011,mm,", "d_albero_LA_inf,0.002,mm,",
        "d_spall_LA,25.6,mm,spallamento albero", "D_sede_LA,47,mm,sede nella flangia", "D_sede_LA_sup,0.010,mm,",
        "D_sede_LA_inf,-0.006,mm,", "cusc_LOA,6202-2Z/C3,,cuscinetto lato opposto",
        "d_albero_LOA,15,mm,sede cuscinetto",
        "d_albero_LOA_sup,0.009,mm,", "d_albero_LOA_inf,0.001,mm,", "d_spall_LOA,19,mm,spallamento albero",
        "D_sede_LOA,35,mm,sede nello scudo", "D_sede_LOA_sup,0.025,mm,", "D_sede_LOA_inf,0.009,mm,",
    ]  # fmt: skip
    path = tmp_path / "table.csv"
    path.write_text("\n".join(rows), "utf-8")
    stations = read_table(path).stations
    assert sorted(stations.size("shaft_shoulder_diameter").nominal.tolist()) == [19.0, 25.6]
    assert not stations.known("housing_shoulder_diameter").any()


def test_the_unit_may_stand_behind_the_value_below_a_list_that_states_it_before(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "Machine;Blower B-7;;\n;;;\nParameter;Unit;DE;NDE\nBearing;;6204;6203\nShaft seat;mm;20 k5;17 k5\n"
        "Housing seat;mm;47 H6;40 H6\n;;;\nMax. speed;3000;rpm;\nShaft material;42CrMo4;;\n",
        "utf-8",
    )
    stations = read_table(path).stations
    assert stations.number("speed_max").tolist() == [3000.0, 3000.0]
    assert stations.choice("shaft_material").is_in("steel").all()


def test_limits_alone_are_those_of_the_seat_of_their_part_and_position(tmp_path):
    """A limit behind a shoulder of the shaft is none of that where another part or position stands in its row."""
    rows = ["Teil;Lagerposition;Benennung;Sollwert;Einh.", "Maschine;;Baureihe;Hobelspindel HS 28;"]
    for station in "AB":
        rows += [
            f"Wälzlager;{station};Lagerbezeichnung;6004;", f"Welle;{station};Größtmaß;20,0065;mm",
            f"Welle;{station};Kleinstmaß;19,9935;mm", f"Welle;{station};Ra;0,8;µm",
            f"Welle;{station};Anlageschulter Ø;22,5;mm", f"Gehäuse;{station};Größtmaß;42,007;mm",
            f"Gehäuse;{station};Kleinstmaß;41,982;mm", f"Gehäuse;{station};Ra;0,8;µm",
        ]  # fmt: skip
    path = tmp_path / "table.csv"
    path.write_text("\n".join(rows), "utf-8")
    stations = read_table(path).stations
    shoulder = stations.size("shaft_shoulder_diameter")
    assert shoulder.nominal.tolist() == [22.5, 22.5]
    assert (shoulder.nominal + shoulder.upper).round(4).tolist() != [42.007, 42.007]
    shaft = stations.size("shaft_seat_diameter")
    assert (shaft.nominal + shaft.upper).round(4).tolist() == [20.0065, 20.0065]


def test_a_size_with_its_deviations_is_no_pair(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "Paramètre;Unité;Palier A;Palier B\nRoulement;;6302;6002\nDiamètre arbre;mm;15 +0,008/-0,003;15 +0,008/-0,003\n"
        "Diamètre alésage carter;mm;42 +0,003/-0,013;32 +0,025/0,000\n",
        "utf-8",
    )
    housing = read_table(path).stations.size("housing_seat_diameter")
    assert sorted(housing.nominal.tolist()) == [32.0, 42.0]
    assert sorted((housing.nominal + housing.upper).round(4).tolist()) == [32.025, 42.003]


def test_limits_of_a_bore_keep_their_position(tmp_path):
    each = ["Bearing", "Shaft dia max (in)", "Shaft dia min (in)", "Bore dia max (in)", "Bore dia min (in)"]
    heads = ["Product", *(f"{side} {name}" for side in ("DE", "NDE") for name in each)]
    row = "Winder;6904;0.7881;0.7877;1.4582;1.4567;6904;0.7881;0.7877;1.4568;1.4562"
    path = tmp_path / "table.csv"
    path.write_text(f"{';'.join(heads)}\n{row}\n", "utf-8")
    stations = read_table(path).stations
    housing = stations.size("housing_seat_diameter")
    largest = dict(zip(stations.text("station"), ((housing.nominal + housing.upper) / 25.4).round(4), strict=True))
    assert largest == {"DE": 1.4582, "NDE": 1.4568}
