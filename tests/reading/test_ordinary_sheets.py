"""Sheets as offices write them every day, in several languages: each value belongs to its seat and position."""

import pytest

from linter.reading import read_table

_OVER_PARTS = (
    "Position,Bearing,Shoulder diameter,,Roughness Ra,,Fit,,Seat diameter,\n"
    ",,Shaft,Housing,Shaft,Housing,Shaft,Housing,"
    "Shaft,Housing\nA,6206,36,56,0.8,1.6,k5,H7,30,62\n"
    "B,6205,31,46,0.8,1.6,k5,H7,25,52\n"
)
_HOUSING_FIRST = (
    "Lagerstelle;Lager;Passung;;Rauheit Ra;;Schulter-Ø;\n;;Gehäuse;Welle;Gehäuse;Welle;Gehäuse;Welle\n"
    "A;6206;62 H7;30 k5;1,6;0,8;56;36\nB;6205;52 H7;25 k5;1,6;0,8;46;31\n"
)
_BESIDE_GROUPS = (
    "Palier;Roulement;Portée d'arbre;;;Alésage du logement;;;Épaulement;\n"
    ";;Ø nom.;Tolérance;Ra (µm);Ø nom.;Tolérance;Ra (µm);arbre;logement\n"
    "A;6206;30;k5;0,8;62;H7;1,6;36;56\nB;6205;25;k5;0,8;52;H7;1,6;31;46\n"
)
_OTHER_GROUPS = (
    "Machine type:;;Oil separator OS-8;;\nGroup;Parameter;Bearing A;Bearing B;Remark\nDrive;Max speed;8400 rpm;;\n"
    ";Rotor mass;21 kg;;\nBearings;Type designation;6206;6205;pair back to back\nShaft;Diameter;30 k5;25 k5;mm\n"
    ";Roughness Ra;0.8;0.8;µm\n;Shoulder diameter;36;31;mm\nHousing;Diameter;62 H7;52 H7;mm\n"
    ";Roughness Ra;1.6;1.6;µm\n"
    ";Shoulder diameter;56;46;mm\nLubrication;Method;oil mist;oil mist;\n"
)
_GERMAN_GROUPS = (
    "Bereich;Merkmal;Einheit;A;B\nAntrieb;Höchstdrehzahl;1/min;8400;\nWelle;Durchmesser;mm;30 k5;25 k5\n"
    ";Rauheit Ra;µm;0,8;0,8\n;Schulterdurchmesser;mm;36;31\nGehäuse;Durchmesser;mm;62 H7;52 H7\n"
    ";Rauheit Ra;µm;1,6;1,6\n"
    ";Schulterdurchmesser;mm;56;46\nLager;Bezeichnung;;6206;6205\nSchmierung;Schmierstoff;;Fett;Fett\n"
)
_POSITION_BETWEEN = (
    "Elemento;Caratteristica;Lato;Valore;Unità;Note\nCuscinetto;Sigla;A;6206;;\nCuscinetto;Sigla;B;6205;;\n"
    "Albero;Diametro sede;A;30 k5;mm;rettificato\nAlbero;Diametro sede;B;25 k5;mm;rettificato\n"
    "Albero;Rugosità Ra;A;0,8;µm;\nAlbero;Rugosità Ra;B;0,8;µm;\nAlbero;Diametro spallamento;A;36;mm;\n"
    "Albero;Diametro spallamento;B;31;mm;\nAlloggiamento;Diametro sede;A;62 H7;mm;\n"
    "Alloggiamento;Diametro sede;B;52 H7;mm;\n"
    "Alloggiamento;Rugosità Ra;A;1,6;µm;\nAlloggiamento;Rugosità Ra;B;1,6;µm;\n"
    "Alloggiamento;Diametro spallamento;A;56;mm;\n"
    "Alloggiamento;Diametro spallamento;B;46;mm;\n"
)
_IN_ENGLISH = (
    "Part;Feature;Side;Value;Unit\nBearing;Designation;A;6206;\nBearing;Designation;B;6205;\n"
    "Shaft;Seat diameter;A;30 k5;mm\n"
    "Shaft;Seat diameter;B;25 k5;mm\nShaft;Ra;A;0.8;µm\nShaft;Ra;B;0.8;µm\nShaft;Shoulder diameter;A;36;mm\n"
    "Shaft;Shoulder diameter;B;31;mm\nHousing;Seat diameter;A;62 H7;mm\nHousing;Seat diameter;B;52 H7;mm\n"
    "Housing;Ra;A;1.6;µm\nHousing;Ra;B;1.6;µm\nHousing;Shoulder diameter;A;56;mm\n"
    "Housing;Shoulder diameter;B;46;mm\n"
)
TABLES = {
    "features over shaft and housing": _OVER_PARTS,
    "features over housing and shaft": _HOUSING_FIRST,
    "a feature beside groups": _BESIDE_GROUPS,
    "groups of other things beside parts": _OTHER_GROUPS,
    "groups of other things in German": _GERMAN_GROUPS,
    "the position between name and value": _POSITION_BETWEEN,
    "the position between name and value in English": _IN_ENGLISH,
}


@pytest.fixture
def stations_of(tmp_path):
    def read(text: str | bytes):
        path = tmp_path / "table.csv"
        path.write_bytes(text if isinstance(text, bytes) else text.encode("utf-8"))
        return read_table(path)

    return read


@pytest.mark.parametrize("kind", TABLES)
def test_each_value_is_of_its_seat(stations_of, kind):
    stations = stations_of(TABLES[kind]).stations
    read = {
        designation: values
        for designation, *values in zip(
            stations.text("bearing_designation"),
            *(stations.size(f"{part}_seat_diameter").nominal.tolist() for part in ("shaft", "housing")),
            *(stations.size(f"{part}_shoulder_diameter").nominal.tolist() for part in ("shaft", "housing")),
            *(stations.number(f"{part}_seat_roughness").tolist() for part in ("shaft", "housing")),
            strict=True,
        )
    }
    assert read == {"6206": [30, 62, 36, 56, 0.8, 1.6], "6205": [25, 52, 31, 46, 0.8, 1.6]}


def test_limits_below_each_part_are_of_its_seat(stations_of):
    table = (
        "Merkmal;Einheit;Lager A;Lager B\nLagerdaten;;;\nKurzzeichen;;7006 C;7005 C\nWelle;;;\n"
        "Größtmaß;mm;30,002;25,002\n"
        "Kleinstmaß;mm;29,998;24,998\nSchulter-Ø;mm;36;31\nGehäuse;;;\nGrößtmaß;mm;55,008;47,012\n"
        "Kleinstmaß;mm;54,998;47,002\nSchulter-Ø;mm;49;41\n"
    )
    size = stations_of(table).stations.size("housing_seat_diameter")
    largest = (size.nominal + size.upper).round(4).tolist()
    assert sorted(largest) == [47.012, 55.008]


@pytest.mark.parametrize("remark", ["wave spring", "por resortes"])
def test_units_and_deviations_share_a_column_without_a_heading(stations_of, remark):
    table = (
        f"Fan FX-2;;;\nPreload;120;N;{remark}\nMax. speed;9000;rpm;\nFront bearing;;;\nDesignation;7006 C;;\n"
        "Shaft seat;30;+0.002/-0.004;mm\nHousing seat;55;+0.010/-0.003;mm\nShaft shoulder;36;;mm\nRear bearing;;;\n"
        "Designation;7005 C;;\nShaft seat;25;+0.002/-0.004;mm\nHousing seat;47;+0.010/-0.003;mm\n"
        "Shaft shoulder;31;;mm\n"
    )
    stations = stations_of(table).stations
    assert set(stations.size("preload_force").nominal.tolist()) == {120}
    assert sorted(stations.size("shaft_seat_diameter").nominal.tolist()) == [25, 30]
    assert set(stations.size("housing_seat_diameter").upper.round(4).tolist()) == {0.01}


def test_a_rating_has_the_unit_that_is_remarked(stations_of):
    table = (
        "Item;Drive side;Idle side;Note\nBearing;6208;6207;greased for life\nBore;40;35;mm\n"
        "Dynamic rating;30.7;25.5;kN\nRadial load;820;410;N\n"
    )
    stations = stations_of(table).stations
    assert sorted(stations.number("dynamic_rating").tolist()) == [25500, 30700]
    assert sorted(stations.number("radial_load").tolist()) == [410, 820]


def test_no_page_mixes_scripts_in_a_word(stations_of):
    reading = stations_of(_POSITION_BETWEEN.encode("cp1252"))
    (taken,) = [p for p in reading.stations.problems if p.code == "code-page"]
    assert taken.read == "cp1252"
    assert sorted(reading.stations.number("housing_seat_roughness").tolist()) == [1.6, 1.6]


@pytest.mark.parametrize(
    "table",
    [
        "Pos.;Benennung;Menge;Werkstoff / Norm;Passung;Ra;Bemerkung\n10;Antriebswelle;1;42CrMo4;;;\n"
        "10.1;Lagersitz A;;;Ø30 k5;0,8;geschliffen\n10.2;Lagersitz B;;;Ø25 k5;0,8;geschliffen\n"
        "20;Pumpengehäuse;1;EN-GJL-250;;;\n20.1;Lagerbohrung A;;;Ø62 H7;1,6;\n20.2;Lagerbohrung B;;;Ø52 H7;1,6;\n"
        "30;Rillenkugellager A;1;6206;;;Festlager\n31;Rillenkugellager B;1;6205;;;Loslager\n",
        "Item;Description;Qty;Material;Fit;Ra;Notes\n1;Drive shaft;1;42CrMo4;;;\n"
        "1.1;Bearing seat A;;;Ø30 k5;0.8;ground\n"
        "1.2;Bearing seat B;;;Ø25 k5;0.8;ground\n2;Pump housing;1;EN-GJL-250;;;\n2.1;Bearing bore A;;;Ø62 H7;1.6;\n"
        "2.2;Bearing bore B;;;Ø52 H7;1.6;\n3;Ball bearing A;1;6206;;;fixed\n4;Ball bearing B;1;6205;;;floating\n",
    ],
)
def test_sizes_of_a_parts_list_stand_below_its_word_for_fits(stations_of, table):
    stations = stations_of(table).stations
    assert sorted(stations.size("shaft_seat_diameter").nominal.tolist()) == [25, 30]
    assert set(stations.number("shaft_seat_roughness").tolist()) == {0.8}
    assert set(stations.number("housing_seat_roughness").tolist()) == {1.6}
    assert stations.choice("shaft_material").is_in("steel").all()
    assert stations.choice("housing_material").is_in("cast iron").all()


def test_values_of_the_machine_stand_below_a_list_of_seats(stations_of):
    table = (
        "#,Feature,Location,Nominal,Upper dev,Lower dev,Ra,Bearing\n"
        "1,Shaft seat,Front,17,+0.008,-0.001,0.4,6203 C3\n"
        "2,Shaft seat,Rear,15,+0.008,-0.001,0.4,6202 C3\n3,Housing bore,Front,40,+0.010,-0.006,0.8,\n"
        "4,Housing bore,Rear,35,+0.025,0,0.8,\n5,Impeller seat,-,14,0,-0.011,0.8,\nMax speed,22000 rpm,,,,,,\n"
        "Preload,wave spring 45 N,,,,,,\n"
    )
    stations = stations_of(table).stations
    assert set(stations.number("speed_max").tolist()) == {22000}
    assert set(stations.size("preload_force").nominal.tolist()) == {45}


@pytest.mark.parametrize(
    ("heads", "places"),
    [
        ("№;Поверхность;Размер;Поле допуска;Верхн. откл.;Нижн. откл.;Ra, мкм;Подшипник", "Вал, опора;Корпус, опора"),
        ("Nr.;Fläche;Maß;Toleranz;ob. Abmaß;unt. Abmaß;Ra µm;Lager", "Welle, Lagerstelle;Gehäuse, Lagerstelle"),
        ("No.;Surface;Size;Tolerance;Upper dev.;Lower dev.;Ra µm;Bearing", "Shaft, bearing;Housing, bearing"),
    ],
)
def test_a_word_for_names_heads_the_sizes_of_seats(stations_of, heads, places):
    shaft, housing = places.split(";")
    table = (
        f"{heads}\n1;{shaft} A;30;k5;+0,011;+0,002;0,8;6206\n2;{housing} A;62;H7;+0,030;0;1,6;\n"
        f"3;{shaft} B;25;k5;+0,011;+0,002;0,8;6205\n4;{housing} B;52;H7;+0,030;0;1,6;\n"
    )
    stations = stations_of(table).stations
    assert sorted(stations.size("shaft_seat_diameter").nominal.tolist()) == [25, 30]
    assert sorted(stations.size("housing_seat_diameter").nominal.tolist()) == [52, 62]
    assert set(stations.number("housing_seat_roughness").tolist()) == {1.6}


@pytest.mark.parametrize(
    ("heads", "collet"), [("Size / No.;Material;Tolerance", "Journal, "), ("Size;Material;Fit", "Shaft seat, ")]
)
def test_an_item_says_the_position_of_what_stands_below_it(stations_of, heads, collet):
    table = (
        f"Item;Description;{heads};Finish Ra;Remarks\n1;Rotor shaft;L = 410;AISI 4140;;;\n"
        f"1.1;{collet}drive end;Ø30;;k6;0.8;ground\n1.2;{collet}fan end;Ø25;;k6;0.8;ground\n"
        "2;Bearing housing, drive end;;ASTM A48;;;\n2.1;Bore;Ø62;;H7;1.6;\n"
        "3;Bearing housing, fan end;;ASTM A48;;;\n"
        "3.1;Bore;Ø52;;H7;1.6;\n4;Ball bearing, drive end;6206;;;;fixed\n5;Ball bearing, fan end;6205;;;;floating\n"
    )
    stations = stations_of(table).stations
    sizes = (stations.size(f"{part}_seat_diameter").nominal.tolist() for part in ("shaft", "housing"))
    read = zip(stations.text("station"), stations.text("bearing_designation"), *sizes, strict=True)
    assert sorted(read) == [("drive end", "6206", 30, 62), ("fan end", "6205", 25, 52)]
    assert stations.choice("shaft_material").is_in("steel").all()
    assert stations.choice("housing_material").is_in("cast iron").all()


@pytest.mark.parametrize(
    ("cell", "number"),
    [
        ("KP80-02.100 Blatt 1 von 2", "KP80-02.100"),
        ("KP80-02.100, sheet 2/3", "KP80-02.100"),
        ("КП80.100 лист 2 из 3", "КП80.100"),
        ("SF18-2200 / sheet 1", "SF18-2200 / sheet 1"),
        ("KP-80 (feuille 2 de 3)", "KP-80"),
        ("PAGE-12", "PAGE-12"),
    ],
)
def test_the_sheet_of_a_drawing_is_not_of_its_number(stations_of, cell, number):
    table = f"Drawing no.;{cell};\nItem;A;B\nBearing;6206;6205\nShaft seat [mm];30 k5;25 k5\n"
    assert set(stations_of(table).stations.text("drawing_number")) == {number}


def test_a_row_of_sides_heads_columns_without_a_word_for_names(stations_of):
    table = (
        ",,Collet end,Pulley end\nBEARING,,,\nPart no.,,7206 BE,6205-2RS\nSHAFT,,,\n"
        "Seat dia,mm,30.011/30.002,25.011/25.002\n"
        "HOUSING,,,\nBore dia,mm,62.019/62.000,52.030/52.000\n"
    )
    stations = stations_of(table).stations
    assert sorted(stations.text("station")) == ["Collet end", "Pulley end"]
    size = stations.size("housing_seat_diameter")
    assert sorted((size.nominal + size.lower).round(4).tolist()) == [52, 62]


@pytest.mark.parametrize("head", ["unit", "Unit"])
def test_a_word_for_units_heads_machines_where_none_of_its_cells_is_a_unit(stations_of, head):
    table = (
        f"{head},position,bearing,n_max,shaft_d,hsg_D\n-,-,-,rpm,mm,mm\nFCC-5,wheel,7000 C,90000,10,26\n"
        "FCC-5,cover,7000 C,90000,10,26\nFCC-12,wheel,7001 C,75000,12,28\nFCC-12,cover,7001 C,75000,12,28\n"
    )
    stations = stations_of(table).stations
    assert sorted(stations.machines) == ["FCC-12", "FCC-5"]
    assert sorted(set(stations.number("speed_max").tolist())) == [75000, 90000]


@pytest.mark.parametrize(
    ("heads", "parts"),
    [
        ("Lagerstelle;Lager;Teil;Ø;Passung;Abmaße in µm;Ra in µm;Schulter-Ø", "Welle;Gehäuse"),
        ("Position;Bearing;Part;Ø;Fit;Deviations in µm;Ra in µm;Shoulder", "shaft;housing"),
    ],
)
def test_deviations_beside_classes_have_their_own_unit(stations_of, heads, parts):
    shaft, housing = parts.split(";")
    table = (
        f"{heads}\nA;6210 C3;{shaft};50;k6;+18/+2;0,8;57\n;;{housing};90;H7;+35/0;1,6;83\n"
        f"B;6210 C3;{shaft};50;k6;+18/+2;0,8;57\n;;{housing};90;J7;+22/-13;1,6;83\n"
    )
    stations = stations_of(table).stations
    assert stations.size("shaft_seat_diameter").upper.round(4).tolist() == [0.018, 0.018]
    assert sorted(stations.size("housing_seat_diameter").lower.round(4).tolist()) == [-0.013, 0]


def test_the_form_of_a_seat_is_not_its_size(stations_of):
    table = (
        "Position;Bearing;Part;Diameter [mm];Fit;Form [mm]\nA;6208 C3;shaft;40;k6;0.007\n;;housing;80;H7;0.01\n"
        "B;6208 C3;shaft;40;k6;0.005\n;;housing;80;J7;0.01\n"
    )
    stations = stations_of(table).stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [40, 40]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [80, 80]
