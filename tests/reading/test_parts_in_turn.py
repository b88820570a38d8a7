"""Values below heads, part after part of each position; rows that name no position of their own."""

import pytest

from linter.reading import read_table

HEADS = {
    "en": ("Bearing {}", "Bearing", "Shaft", "Housing", "Designation;Axial function;Radial load [N]",
           "Diameter [mm];Roughness Ra [µm];Cylindricity [µm]", "locating", "floating"),
    "de": ("Lagerstelle {}", "Lager", "Welle", "Gehäuse", "Lagerbezeichnung;Axiale Funktion;Radiallast [N]",
           "Durchmesser [mm];Rauheit Ra [µm];Zylinderform [µm]", "Festlager", "Loslager"),
    "fr": ("Palier {}", "Roulement", "Arbre", "Logement", "Désignation du roulement;Fonction;Charge radiale [N]",
           "Diamètre [mm];Rugosité Ra [µm];Cylindricité [µm]", "fixe", "libre"),
    "ja": ("軸受{}", "軸受", "軸", "ハウジング", "呼び番号;軸方向の機能;ラジアル荷重 [N]",
           "直径 [mm];粗さ Ra [µm];円筒度 [µm]", "固定側", "自由側"),
}  # fmt: skip


def read(tmp_path, text):
    path = tmp_path / "sheet.csv"
    path.write_text(text, "utf-8")
    return read_table(path)


def in_turn(language, bearings=("6205/C3", "6206"), *, beside=False):
    position, bearing, shaft, housing, of_bearing, of_seat, fixed, free = HEADS[language]
    blocks = (
        (position.format("A"), bearings[0], fixed, "340", "25 j5;0.8;4", "52 H6;1.6;7"),
        (position.format("B"), bearings[1], free, "410", "30 j5;0.4;3", "62 H6;0.8;6"),
    )
    lines = []
    apart = ";" if beside else "\n"  # each part before its heads, or above them
    below = ";" if beside else ""
    for name, number, role, load, on_shaft, in_housing in blocks:
        lines += [name, f"{bearing}{apart}{of_bearing}", f"{below}{number};{role};{load}"]
        lines += [
            f"{shaft}{apart}{of_seat}",
            f"{below}{on_shaft}",
            f"{housing}{apart}{of_seat}",
            f"{below}{in_housing}",
            "",
        ]
    return "\n".join(lines)


@pytest.mark.parametrize("bearings", [("6205/C3", "6206"), ("6205", "6206-2Z"), ("6205", "6206")])
@pytest.mark.parametrize("language", [*HEADS])
@pytest.mark.parametrize("beside", [False, True])
def test_values_below_heads_part_after_part_are_of_the_position_above_them(tmp_path, language, bearings, beside):
    reading = read(tmp_path, in_turn(language, bearings, beside=beside))
    stations = reading.stations
    assert len(stations.text("station")) == 2 and not any("row" in name for name in stations.text("station").tolist())
    assert stations.text("bearing_designation").tolist() == [*bearings]
    assert [*stations.choice("axial_role").texts()] == ["locating", "floating"]
    assert stations.number("radial_load").tolist() == [340, 410]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 30]
    assert stations.number("shaft_seat_roughness").tolist() == [0.8, 0.4]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [52, 62]
    assert stations.number("housing_seat_roughness").tolist() == [1.6, 0.8]
    assert not any("no station is named" in note for note in reading.notes)


def test_rows_that_no_word_names_stay_positions_of_their_own(tmp_path):
    reading = read(tmp_path, "Designation;Shaft seat [mm];Housing seat [mm]\n6205;25 k5;52 H7\n6206;30 k5;62 H7\n")
    assert reading.stations.text("station").tolist() == ["row 2", "row 3"]
    assert any("no station is named" in note for note in reading.notes)


@pytest.mark.parametrize("order", [("6004", "6306/C3"), ("6306-2Z", "6004")])
def test_a_bare_number_beside_a_designation_is_a_bearing_too(tmp_path, order):
    seats = {"6004": "20 j5;42 H6", "6306/C3": "30 j5;72 H6", "6306-2Z": "30 j5;72 H6"}
    lines = [f"{side};{number};{seats[number]}" for side, number in zip(("vorn", "hinten"), order, strict=True)]
    reading = read(tmp_path, "Lager;Kurzzeichen Lager;Wellensitz [mm];Gehäusesitz [mm]\n" + "\n".join(lines) + "\n")
    assert reading.stations.text("station").tolist() == ["vorn", "hinten"]
    assert reading.stations.text("bearing_designation").tolist() == [*order]


@pytest.mark.parametrize(
    ("head", "title"),
    [
        ("Descripción;Pieza;Posición del rodamiento;Valor;Unidad", "Conjunto:;Husillo HU-22;Revisión:;B"),
        ("Descripción;Pieza;Apoyo;Valor;Unidad", "Conjunto:;Bomba BC-7;Revisión:;C"),
    ],
)
def test_a_column_of_remarks_holds_the_names_where_no_other_does(tmp_path, head, title):
    rows = [
        f"{name};{part};{side};{value};{unit}"
        for side, size, bore, rough in (("delantero", "30 k5", "72 H7", "0,4"), ("trasero", "25 k5", "52 H7", "0,8"))
        for name, part, value, unit in (
            ("Diámetro de asiento", "Eje", size, "mm"), ("Rugosidad Ra", "Eje", rough, "µm"),
            ("Diámetro de asiento", "Asiento del alojamiento", bore, "mm"),
            ("Rugosidad Ra", "Asiento del alojamiento", rough, "µm"),
        )
    ]  # fmt: skip
    reading = read(tmp_path, "\n".join([title, "", head, *rows]) + "\n")
    assert sorted(reading.stations.text("station").tolist()) == ["delantero", "trasero"]
    assert sorted(reading.stations.size("shaft_seat_diameter").nominal.tolist()) == [25, 30]
    assert sorted(reading.stations.number("housing_seat_roughness").tolist()) == [0.4, 0.8]
