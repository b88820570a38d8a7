"""Texts of one name and its value in each line, and stations that only their names show."""

import pytest

from linter.reading import InputError, read_table
from linter.reading.words.headings import Words
from linter.reading.words.names import Names
from linter.reading.words.own_stations import with_stations

_LINES = [
    ("Machine", "Reel 4"),
    ("Brg_No_S1", "6005"), ("Shaft_Seat_Dia_S1", "25 k5"), ("Hsg_Bore_Dia_S1", "47 H7"), ("Shaft_Seat_Ra_S1", "0.4 µm"),
    ("Brg_No_S2", "6004"), ("Shaft_Seat_Dia_S2", "20 k5"), ("Hsg_Bore_Dia_S2", "42 H7"), ("Shaft_Seat_Ra_S2", "0.8 µm"),
    ("Speed_max", "4000 rpm"),
]  # fmt: skip


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "list.txt"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


@pytest.mark.parametrize("sign", [" := ", "=", " = ", ": "])
def test_every_line_is_read_at_its_own_position(read, sign):
    reading = read("".join(f"{name}{sign}{value}\n" for name, value in _LINES))
    stations = reading.stations
    assert stations.machines == ("Reel 4",)
    assert stations.text("station").tolist() == ["S1", "S2"]
    assert stations.number("bore_diameter").tolist() == [25, 20]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
    assert stations.place("shaft_seat_diameter", 1).cell == "A7"
    assert not [p for p in stations.problems if p.kind != "assumption"]


def test_a_line_that_is_not_known_is_told_with_its_line(read):
    reading = read("".join(f"{name} := {value}\n" for name, value in [*_LINES, ("Seat_Blend_S1", "25 j5")]))
    assert [(u.name, u.place.cell) for u in reading.unused] == [("Seat_Blend_S1", "A11")]


def test_sections_of_a_list_name_the_positions(read):
    reading = read(
        "Machine = Reel 4\n[Position A]\nBearing = 6005\nShaft seat diameter = 25 k5\n"
        "[Position B]\nBearing = 6004\nShaft seat diameter = 20 k5\n"
    )
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]


def test_a_sentence_or_a_row_of_cells_is_no_list(read):
    for text in ("note: a, b, c\nnote: d, e, f\nnote: g, h, i\nnote: j, k, l\n", "key:\n  - a: 1\n  - b: 2\n"):
        with pytest.raises(InputError):
            read(text)


@pytest.mark.parametrize("pair", [("nom", "meas"), ("V1", "V2"), ("upper", "lower"), ("old", "new"), ("mm", "um")])
def test_words_that_are_no_positions_name_none(pair):
    words = Words(Names.built_in())
    names = [f"{stem}_{end}" for end in pair for stem in ("Brg_No", "Shaft_Seat_Dia", "Hsg_Bore_Dia", "Shaft_Seat_Ra")]
    assert with_stations(names, words) is words


def test_too_few_names_in_common_show_no_position():
    words = Words(Names.built_in())
    assert with_stations(["Radial_Load_X1", "Axial_Load_X1", "Radial_Load_X2", "Axial_Load_X2"], words) is words


@pytest.mark.parametrize(
    ("header", "names"),
    [
        ("Item;Unit;Drawing;Measured", ("DE bearing", "DE bearing seat on shaft", "DE housing bore")),
        ("Merkmal;Einheit;Zeichnung;Ist", ("Lager A", "Lagersitz Welle A", "Gehäusebohrung A")),
        ("Caractéristique;Unité;Plan;Mesuré", ("Roulement avant", "Portée arbre avant", "Alésage logement avant")),
        ("项目;单位;图纸;实测", ("前轴承型号", "前轴承轴径", "前轴承座孔径")),
    ],
)
def test_what_the_drawing_states_stands_beside_what_was_measured(tmp_path, header, names):
    path = tmp_path / "t.csv"
    values = (";6204-2Z;", "mm;20 k5;20.004", "mm;47 H6;47.01")
    path.write_text("\n".join([header, *map(";".join, zip(names, values, strict=True))]), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("bearing_designation").tolist() == ["6204-2Z"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20.0]
    assert stations.size("housing_seat_diameter").tolerance_class.tolist() == ["H6"]
