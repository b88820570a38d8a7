"""Names of positions are the same with the word for the bearing and without it."""

import pytest

from linter.reading import read_table
from linter.reading.words.mapping import load_mapping
from linter.reading.words.names import Names


def names_of(tmp_path, *names, mapping=None):
    path = tmp_path / "table.csv"
    rows = "".join(f"{name};620{k + 2};{15 + 2 * k} k5\n" for k, name in enumerate(names))
    path.write_text(f"Position;Designation;Shaft seat mm\n{rows}", encoding="utf-8")
    return read_table(path, mapping).stations.text("station").tolist()


@pytest.mark.parametrize(
    ("names", "short"),
    [
        (("Front bearing", "Rear bearing"), ["Front", "Rear"]),
        (("Bearing No. 1", "Bearing No. 2"), ["1", "2"]),
        (("DE bearing", "NDE bearing"), ["DE", "NDE"]),
        (("Lager vorn", "Lager hinten"), ["vorn", "hinten"]),
        (("Palier avant", "Palier arrière"), ["avant", "arrière"]),
        (("Rodamiento delantero", "Rodamiento trasero"), ["delantero", "trasero"]),
        (("Cuscinetto 1", "Cuscinetto 2"), ["1", "2"]),
        (("Опора передняя", "Опора задняя"), ["передняя", "задняя"]),
        (("前部軸受", "後部軸受"), ["前部", "後部"]),
        (("驱动端轴承", "非驱动端轴承"), ["驱动端", "非驱动端"]),
        (("前支承", "后支承"), ["前支承", "后支承"]),  # half a word would be left
        (("Wheel bearing", "Rear bearing"), ["Wheel bearing", "Rear bearing"]),  # a wheel is no position
        (("Locating bearing", "Floating bearing"), ["Locating bearing", "Floating bearing"]),
        (("A (Festlager)", "B (Loslager)"), ["A (Festlager)", "B (Loslager)"]),
    ],
)
def test_the_word_for_the_bearing_is_left_out(tmp_path, names, short):
    assert names_of(tmp_path, *names) == short


def test_a_name_that_a_mapping_gives_stays(tmp_path):
    mapping = tmp_path / "names.toml"
    mapping.write_text('[stations]\n"Front bearing" = "Front bearing"\n', encoding="utf-8")
    found = names_of(tmp_path, "Front bearing", "Rear bearing", mapping=Names(load_mapping(mapping)))
    assert found == ["Front bearing", "Rear"]


def test_blocks_with_and_without_the_word_speak_of_one_position(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "Position;Designation;Radial load N\nBearing 1;6203;120\nBearing 2;6204;90\n\n"
        "Position;Shaft seat mm;Housing seat mm\n1;17 k5;40 H6\n2;20 k5;47 H6\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["1", "2"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [17, 20]
