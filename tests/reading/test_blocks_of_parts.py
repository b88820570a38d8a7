"""Forms: a nominal with a class below the word for a part is its seat; titles above positions side by side."""

import pytest

from linter.reading import read_table

_WORDS = [
    ("Position", "Bearing", "Journal", "Housing seat", "Nominal", "Run-out"),
    ("Lagerstelle", "Lager", "Lagerzapfen", "Gehäusebohrung", "Nennmaß", "Rundlauf"),
    ("Palier", "Roulement", "Arbre", "Logement", "Nominal", "Battement"),
    ("Posizione", "Cuscinetto", "Albero", "Alloggiamento", "Valore nominale", "Oscillazione"),
    ("位置", "轴承", "轴", "轴承座", "公称尺寸", "跳动"),
]


@pytest.fixture
def read(tmp_path):
    def reader(text):
        path = tmp_path / "t.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path).stations

    return reader


def _are_right(stations):
    assert stations.text("station").tolist() == ["A", "B"]
    for name, nominal, tolerance in (("shaft", 25, "m6"), ("housing", 52, "J7")):
        size = stations.size(f"{name}_seat_diameter")
        assert (size.nominal.tolist(), size.tolerance_class.tolist()) == ([nominal] * 2, [tolerance] * 2)
        assert stations.number(f"{name}_seat_runout").tolist() == pytest.approx([0.008, 0.01])


@pytest.mark.parametrize("words", _WORDS)
def test_forms_with_parts_side_by_side(read, words):
    place, bearing, shaft, housing, nominal, runout = words
    block = (
        f"{place};{{0}};;;;;\n{bearing};6205;;;;;\n{shaft};;;;{housing};;\n"
        f"{nominal};25m6;mm;;{nominal};52J7;mm\n{runout};{{1}};µm;;{runout};{{1}};µm\n;;;;;;\n"
    )
    _are_right(read(block.format("A", 8) + block.format("B", 10)))


@pytest.mark.parametrize("words", _WORDS)
def test_blocks_one_below_the_other(read, words):
    place, bearing, shaft, housing, nominal, runout = words
    block = (
        f"{place};{{0}};\n{bearing};6205;\n{shaft};;\n{nominal};25m6;mm\n{runout};{{1}};µm\n"
        f"{housing};;\n{nominal};52J7;mm\n{runout};{{1}};µm\n"
    )
    _are_right(read(block.format("A", 8) + block.format("B", 10)))


def test_a_nominal_without_a_class_or_of_the_other_sort_is_not_read(read):
    stations = read("Position;A;\nBearing;6205;\nShaft;;\nNominal;25;mm\nNominal;52J7;mm\nRun-out;8;µm\n")
    assert not stations.known("shaft_seat_diameter").any()


@pytest.mark.parametrize(
    ("title", "heads", "rows"),
    [
        ("Machine;Fan 3;;;\nDrawing number;Z-51;Rev;B;", ("DE", "NDE"), ("Bearing", "Shaft seat")),
        ("Maschine;Lüfter 3;;;\nZeichnungsnummer;Z-51;Änderung;B;", ("Seite A", "Seite B"), ("Lager", "Wellensitz")),
        ("機種;送風機 3;;;\n図面番号;Z-51;改番;B;", ("A側", "B側"), ("軸受", "軸径")),
        ("机型;风机 3;;;\n图号;Z-51;版本;B;", ("前端", "后端"), ("轴承", "轴径")),
        ("Machine;Ventilateur 3;;;\nN° plan;Z-51;Indice;B;", ("Avant", "Arrière"), ("Roulement", "Portée d'arbre")),
    ],
)
def test_a_title_of_other_columns_stands_above_positions_side_by_side(read, title, heads, rows):
    text = f"{title}\n;;;;\n{heads[0]};;;{heads[1]};\n"
    values = (("6303-2Z", "6004-2Z"), ("17 k5", "20 k5"))
    text += "".join(f"{row};{one};;{row};{two}\n" for row, (one, two) in zip(rows, values, strict=True))
    stations = read(text + "Fr;12 N;;Fr;14 N\n")
    assert stations.text("station").tolist() == [*heads]
    assert stations.text("bearing_designation").tolist() == ["6303-2Z", "6004-2Z"]
    assert stations.number("radial_load").tolist() == [12, 14]
    assert set(stations.text("drawing_revision")) == {"B"}
