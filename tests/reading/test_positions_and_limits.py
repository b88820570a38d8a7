"""Positions over or under the headings of a row for each machine; limits beside a nominal; lists that go on."""

import pytest

from linter.reading import read_table


def read(tmp_path, text):
    path = tmp_path / "table.csv"
    path.write_text(text, "utf-8")
    return read_table(path).stations


def seats(stations, part="shaft"):
    size = stations.size(f"{part}_seat_diameter")
    return [
        (round(float(n), 4), round(float(low), 4), round(float(up), 4))
        for n, low, up in zip(size.nominal, size.lower, size.upper, strict=True)
    ]


SPANS = {
    "Spanish": (
        ";lado A;;;lado B;;",
        "Máquina;Rodamiento;Eje - Ø (mm);Eje - Ajuste;Rodamiento;Eje - Ø (mm);Eje - Ajuste",
    ),
    "German": (";A-Seite;;;B-Seite;;", "Maschine;Lager;Welle Ø [mm];Passung Welle;Lager;Welle Ø [mm];Passung Welle"),
    "English": (";DE;;;NDE;;", "Machine;Bearing;Shaft seat dia;Shaft fit;Bearing;Shaft seat dia;Shaft fit"),
}


@pytest.mark.parametrize("language", SPANS)
def test_positions_stand_over_their_headings_whatever_the_first_row_of_values_holds(tmp_path, language):
    over, heads = SPANS[language]
    stations = read(tmp_path, f"{over}\n{heads}\nP 1;6305;25;k5;6304;20;h6\nP 2;6304;20;h6;6304;20;h6\n")
    assert stations.machines == ("P 1", "P 2")
    assert [len(seats(stations)), seats(stations)[1]] == [4, (20.0, -0.013, 0.0)]


@pytest.mark.parametrize("positions", [("Palier avant", "Palier arrière"), ("DE", "NDE"), ("A", "B")])
def test_parameters_stand_over_the_same_positions(tmp_path, positions):
    one, other = positions
    text = (
        "Machine;Speed max (rpm);Bearing;;Shaft seat (mm);;Radial load (N);;Comment\n"
        f";;{one};{other};{one};{other};{one};{other};\n"
        "P 1;3000;6204;6203;20 k5;17 k5;300;200;ok\nP 2;3600;6205;6204;25 k5;20 k5;310;210;\n"
    )
    stations = read(tmp_path, text)
    assert stations.machines == ("P 1", "P 2")
    assert stations.number("radial_load").tolist() == [300.0, 200.0, 310.0, 210.0]
    assert [nominal for nominal, *_ in seats(stations)] == [20.0, 17.0, 25.0, 20.0]
    assert stations.number("speed_max").tolist() == [3000.0, 3000.0, 3600.0, 3600.0]


def test_parts_of_a_size_under_it_are_no_positions(tmp_path):
    text = "Position;Shaft seat;;Housing seat;\n;max;min;max;min\nA;20.011;20.002;47.016;47.000\n"
    assert len(seats(read(tmp_path, text))) == 1


def test_limits_of_size_beside_the_nominal_are_of_it(tmp_path):
    text = (
        "station;bearing;shaft seat [mm];Limits of size shaft seat [mm];Grenzmaße Gehäusesitz [mm]\n"
        "A;6005;25;24.993 / 24.980;47.016 / 47\n"
    )
    stations = read(tmp_path, text)
    assert seats(stations) == [(25.0, -0.02, -0.007)]
    assert seats(stations, "housing")[0][1:] == (-0.008, 0.008)


def test_limits_far_from_the_nominal_are_asked_about(tmp_path):
    stations = read(
        tmp_path, "station;bearing;shaft seat [mm];Limits of size shaft seat [mm]\nA;6005;25.0;29.993 / 29.980\n"
    )
    assert any(problem.code == "stated-twice" for problem in stations.problems)


@pytest.mark.parametrize(("text", "speed"), [("11,500", 11500.0), ("11.500", 11500.0)])
def test_a_speed_in_whole_turns_shows_how_thousands_are_grouped(tmp_path, text, speed):
    stations = read(tmp_path, f"station;bearing;max speed (rpm)\nA;6005;{text}\nB;6004;{text}\n")
    assert stations.number("speed_max").tolist() == [speed, speed]


def test_a_speed_in_thousands_of_turns_shows_nothing(tmp_path):
    stations = read(tmp_path, "station;bearing;max speed (krpm)\nA;6005;11,500\nB;6004;11,500\n")
    assert any(problem.code == "ambiguous-number" for problem in stations.problems)


def test_two_capitals_at_the_end_of_names_are_positions_though_they_are_articles(tmp_path):
    text = (
        "Máquina;Rodamiento LA;Ø eje LA (mm);Ra eje LA (µm);Rodamiento LO;Ø eje LO (mm);Ra eje LO (µm)\n"
        "S 2;6902;15 k5;0,2;6904;20 k5;0,4\n"
    )
    stations = read(tmp_path, text)
    assert stations.text("station").tolist() == ["LA", "LO"]
    assert stations.number("shaft_seat_roughness").tolist() == [0.2, 0.4]


def test_a_position_named_again_above_each_part_heads_the_rows_below_it(tmp_path):
    text = (
        "N°;Palier;Élément;Caractéristique;Valeur;Tolérance;Unité\n"
        "1;P1;Roulement;Désignation;6002;;\n2;;;Charge radiale;150;;N\n"
        "3;P1;Arbre;Diamètre de portée;15;k5;mm\n4;;;Rugosité Ra;0,2;;µm\n"
        "5;P2;Roulement;Désignation;6003;;\n6;;;Charge radiale;360;;N\n"
        "7;P2;Arbre;Diamètre de portée;17;k5;mm\n8;;;Rugosité Ra;0,4;;µm\n"
    )
    stations = read(tmp_path, text)
    assert stations.text("station").tolist() == ["P1", "P2"]
    assert stations.number("radial_load").tolist() == [150.0, 360.0]
    assert stations.number("shaft_seat_roughness").tolist() == [0.2, 0.4]


def test_a_line_with_its_unit_and_a_comment_heads_no_further_table(tmp_path):
    names = ("BEARING_D", "SHAFT_SEAT_D_NOM", "SHAFT_SEAT_ROUGHNESS_RA", "HOUSING_SEAT_D_NOM")
    notes = ("Bearing bore", "Shaft seat nominal diameter", "Shaft seat surface roughness Ra", "Housing seat diameter")
    text = "Parameter name\tExpression\tType/Unit\tDesigner note\n"
    for end in ("DE", "NDE"):
        for name, note, value, unit in zip(
            names, notes, ("15", "15", "0.8", "35"), ("mm", "mm", "µm", "mm"), strict=True
        ):
            text += f"{name}_{end}\t{value}\t{unit}\t{note}, {end}\n"
    stations = read(tmp_path, text)
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert stations.number("shaft_seat_roughness").tolist() == [0.8, 0.8]


def test_limits_below_parts_are_read_of_every_position(tmp_path):
    heads = "Lager Kurzzeichen;Größtmaß /mm;Kleinstmaß /mm;Ra /µm;Größtmaß /mm;Kleinstmaß /mm;Ra /µm"
    text = (
        ";AS;;;;;;;BS;;;;;;\n;Lager;Welle;;;Gehäuse;;;Lager;Welle;;;Gehäuse;;\n"
        f"Maschine;{heads};{heads}\n"
        "W 12;6304;19,993;19,980;0,8;51,991;51,961;1,6;6304;20,017;20,008;0,8;52,000;51,970;1,6\n"
    )
    stations = read(tmp_path, text)
    assert len(seats(stations)) == 2
    assert [round(n + up, 3) for n, _, up in seats(stations, "housing")] == [51.991, 52.0]
