"""Forms and lists as offices fill them in: what stands beside a name, in which cell, and whose it is."""

import pytest

from linter.reading import read_table


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


_BLOCK = (
    "\nPosition;{0};;\nBearing;{1};Radial load [N];{2}\n"
    "Shaft seat diameter [mm];{3} k5;Housing bore diameter [mm];{4} H7\n"
    "Shaft shoulder diameter [mm];{5};Axial role;{6}\n"
)
_FORM = _BLOCK.format("front", "6005", 300, 25, 47, 30, "locating") + _BLOCK.format(
    "rear", "6004", 120, 20, 42, 24, "floating"
)


def test_units_beside_the_values_of_the_head_belong_to_them(read):
    reading = read(f"Machine;Reel 4;;\nMax. speed;90;1/s;\nRotor mass;1200;g;\nBearing span;11;cm;\n{_FORM}")
    stations = reading.stations
    assert stations.text("station").tolist() == ["front", "rear"]
    assert stations.number("speed_max").tolist() == pytest.approx([5400, 5400])
    assert stations.number("rotor_mass").tolist() == pytest.approx([1.2, 1.2])
    assert stations.number("radial_load").tolist() == [300, 120]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [47, 42]
    assert stations.choice("axial_role").texts().tolist() == ["locating", "floating"]


def test_names_and_values_in_one_cell_each_above_a_form(read):
    stations = read(f"Bearing seat data;;;\nMachine: Reel 4;;;\nHousing temperature: 70 °C;;;\n{_FORM}").stations
    assert set(stations.text("machine").tolist()) == {"Reel 4"}
    assert stations.number("housing_temperature").tolist() == [70, 70]


def test_a_plus_minus_in_a_row_of_its_own(read):
    stations = read(
        "Machine;Reel 4\nPosition;A\nShaft seat diameter;20 mm\nShaft seat diameter tolerance ±;0.0045 mm\n"
        "Housing seat diameter;42 mm\nHousing seat diameter tolerance;0.008 mm\n"
    ).stations
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert (shaft.lower[0], shaft.upper[0]) == (-0.0045, 0.0045)
    assert housing.upper[0] != housing.upper[0]  # half or the whole of the band: that is asked
    assert "half-or-full-band" in {p.code for p in stations.problems}


def test_a_place_names_the_position_where_its_values_are_words_for_one(read):
    form = _FORM.replace("Position", "Einbauort")
    assert read(f"Machine;Reel 4;;\n{form}").stations.text("station").tolist() == ["front", "rear"]
    lying = read("Machine;Reel 4\nPosition;horizontal\nBearing position;A\nShaft seat diameter;20 k5 mm\n").stations
    assert lying.text("station").tolist() == ["A"]
    assert lying.choice("shaft_orientation").texts().tolist() == ["horizontal"]


def test_one_seat_a_row_with_the_position_under_an_unknown_heading(read):
    head = "No;Part;Zone;Bearing;Seat diameter [mm];Roughness Ra [µm]\n"
    rows = "1;Shaft;{0};6005;25 k5;0.4\n2;Shaft;{1};6004;20 k5;0.4\n3;Housing;{0};6005;47 H7;0.8\n"
    stations = read(head + rows.format("S1", "S2") + "4;Housing;S2;6004;42 H7;0.8\n").stations
    assert stations.text("station").tolist() == ["S1", "S2"]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [47, 42]


@pytest.mark.parametrize("name", ["Cylindricité de la portée d'arbre", "Battement total de la portée d'arbre"])
def test_an_article_is_no_position(read, name):
    reading = read(f"Machine;Bobineuse\nPalier;A\nPortée d'arbre;20 k5 mm\n{name};4 µm\nPalier;B\n{name};3 µm\n")
    assert reading.stations.text("station").tolist() == ["A", "B"]


def test_a_number_of_a_national_system_names_the_bearing(read):
    stations = read("Машина;Насос\nПоложение;левая\nПодшипник;80206\nДиаметр отверстия подшипника d (мм);30\n").stations
    assert stations.text("station").tolist() == ["левая"]
    assert stations.text("bearing_designation").tolist() == ["80206"]


TITLES = [
    (
        "Motor|EM 90|||Auftrag|24-118\nZeichn.-Nr.|4.117||| Rev.|B\nNenndrehzahl|2860|min-1||Bauform|B3\n"
        "Läufergewicht|4,9|kg||geford. Lebensdauer|20000 h",
        "Antriebsseite (AS)|||Gegenseite (BS)||",
        ("Wälzlager", "Wellensitz", "Wellenschulter Ø"),
    ),
    (
        "Motor|EM 90|||Order|24-118\nDrawing no.|4.117|||Rev.|B\nRated speed|2860|rpm||Mounting|B3\n"
        "Rotor mass|4.9|kg||Required life|20000 h",
        "Drive end (DE)|||Non-drive end (NDE)||",
        ("Bearing", "Shaft seat", "Shaft shoulder dia."),
    ),
    (
        "Moteur|EM 90|||Commande|24-118\nN° de plan|4.117|||Indice|B\nVitesse nominale|2860|tr/min||Montage|B3\n"
        "Masse du rotor|4,9|kg||Durée de vie exigée|20000 h",
        "Côté accouplement|||Côté ventilateur||",
        ("Roulement", "Portée d'arbre", "Épaulement arbre Ø"),
    ),
]


@pytest.mark.parametrize(("title", "places", "names"), TITLES)
def test_positions_side_by_side_below_a_title_with_its_names_elsewhere(tmp_path, title, places, names):
    rows = [("6205-2Z/C3", "6204-2Z/C3", ""), ("25 k5", "20 k5", ""), ("31,5", "26", "mm")]
    lines = [f"{n}|{a}|{unit}|{n}|{b}|{unit}" for n, (a, b, unit) in zip(names, rows, strict=True)]
    path = tmp_path / "card.tsv"
    path.write_text("\n".join(["Card", title, "", places, *lines]).replace("|", "\t"), encoding="utf-8")
    stations = read_table(path).stations
    assert list(stations.text("bearing_designation")) == ["6205-2Z/C3", "6204-2Z/C3"]
    assert list(stations.size("shaft_seat_diameter").nominal) == [25, 20]
    assert list(stations.size("shaft_shoulder_diameter").nominal) == [31.5, 26]
    assert set(stations.text("drawing_revision")) == {"B"}
    assert set(stations.number("rotor_mass")) == {4.9} and set(stations.number("required_life")) == {20000}


@pytest.mark.parametrize("between", ["", "Datos generales|||\n", "General|||\n", "Allgemein|||\n"])
def test_pairs_below_positions_side_by_side_are_of_the_whole_machine(tmp_path, between):
    blocks = "Lado libre||Lado fijo|\nRodamiento|NU 312|Rodamiento|7312\nEje|60 m6|Eje|60 k6\n"
    blocks += "Alojamiento|130 H7|Alojamiento|130 J7\n"
    below = "Velocidad máxima|1490 rpm|Lubricación|baño de aceite VG 68\nMasa del rotor|74 kg|Caudal|320"
    lines = blocks + (between or "|||\n") + below
    path = tmp_path / "card.tsv"
    path.write_text(lines.replace("|", "\t"), encoding="utf-8")
    stations = read_table(path).stations
    assert len(stations.text("station")) == 2
    assert set(stations.choice("lubrication").texts()) == {"oil bath"}
    assert set(stations.number("base_oil_viscosity_40")) == {68}
    assert set(stations.number("rotor_mass")) == {74} and set(stations.number("speed_max")) == {1490}


def test_a_label_alone_inside_a_block_does_not_end_it(tmp_path):
    lines = (
        "Drive end||Non-drive end|\nBearing|6205|Bearing|6204\nRemark|||\nShaft seat|25 k5|Shaft seat|20 k5\n"
        "Lubrication|grease|Lubrication|oil bath\nRadial load [N]|300|Radial load [N]|120"
    )
    path = tmp_path / "card.tsv"
    path.write_text(lines.replace("|", "\t"), encoding="utf-8")
    stations = read_table(path).stations
    assert list(stations.choice("lubrication").texts()) == ["grease", "oil bath"]
    assert list(stations.number("radial_load")) == [300, 120]
