"""Two values in one cell below a name that says both, and headings whose cells leave one meaning."""

import pytest

from linter.reading import read_table

PAIRS = {
    "English": ("Ra shaft / bore", "0.4 / 0.8 µm"),
    "German": ("Ra Welle/Gehäuse [µm]", "0,4/0,8"),
    "French": ("Rugosité Ra arbre / alésage (µm)", "0,4 / 0,8"),
    "Japanese": ("表面粗さRa 軸/ハウジング [µm]", "0.4/0.8"),
    "a part by the other": ("Ra seat / Ra bore", "0.4 / 0.8 µm"),
}
LAYOUTS = {
    "list": "Name;Value\nBearing;6204-2Z\nShaft seat;20 k5\nHousing bore;47 H6\n{name};{cell}\nFr / Fa;350 / 120 N\n",
    "row": "Position;Bearing;Shaft seat;Housing bore;{name};Fr/Fa [N]\nA;6204-2Z;20 k5;47 H6;{cell};350/120\n",
    "column": ";A;B\nBearing;6204-2Z;6203-2Z\nShaft seat;20 k5;17 k5\nHousing bore;47 H6;40 H6\n"
    "{name};{cell};{cell}\nFr/Fa [N];350/120;350/120\n",
}


@pytest.mark.parametrize("layout", LAYOUTS)
@pytest.mark.parametrize("kind", PAIRS)
def test_two_values_in_one_cell_are_both_read(tmp_path, kind, layout):
    name, cell = PAIRS[kind]
    path = tmp_path / "table.csv"
    path.write_text(LAYOUTS[layout].format(name=name, cell=cell), encoding="utf-8")
    stations = read_table(path).stations
    found = [stations.number(name)[0] for name in ("shaft_seat_roughness", "housing_seat_roughness")]
    assert found == [0.4, 0.8]
    assert [stations.number(name)[0] for name in ("radial_load", "axial_load")] == [350, 120]


def test_one_value_below_a_name_of_two_is_asked_for(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text("Name;Value\nBearing;6204-2Z\nShaft seat;20 k5\nRa shaft / bore;0.8 µm\n", encoding="utf-8")
    reading = read_table(path)
    assert not reading.stations.known("shaft_seat_roughness").any()
    assert any(problem.code == "not-two" for problem in reading.stations.problems)


TOLD = {
    "required_life": [
        ("Life", "40000 h"),
        ("Gebrauchsdauer", "10'000 h"),
        ("寿命", "20000 小时"),
        ("Vida", "8000 horas"),
    ],
    "balance_grade": [("Balance", "G 2.5"), ("Wuchtung", "G6.3"), ("équilibrage", "G 1")],
}


@pytest.mark.parametrize(("parameter", "name", "cell"), [(p, *row) for p, rows in TOLD.items() for row in rows])
def test_a_heading_means_what_its_cells_leave_it(tmp_path, parameter, name, cell):
    path = tmp_path / "table.csv"
    path.write_text(f"Name;Value\nBearing;6204-2Z\nShaft seat;20 k5\n{name};{cell}\n", encoding="utf-8")
    assert read_table(path).stations.known(parameter).all()


@pytest.mark.parametrize(
    ("name", "cell", "parameter", "word"),
    [
        ("Gehäuse", "EN AC-AlSi10Mg", "housing_material", "aluminium"),
        ("Shaft", "42CrMo4", "shaft_material", "steel"),
        ("Axis", "vertical", "shaft_orientation", "vertical"),
        ("Feder", "Tellerfedern", "spring_kind", "disc"),
    ],
)
def test_a_part_over_a_material_and_a_thing_over_its_kind(tmp_path, name, cell, parameter, word):
    path = tmp_path / "table.csv"
    path.write_text(f"Name;Value\nBearing;6204-2Z\nShaft seat;20 k5\n{name};{cell}\n", encoding="utf-8")
    choice = read_table(path).stations.choice(parameter)
    assert [choice.words[code] for code in choice.codes] == [word]


def test_a_remark_that_is_a_part_says_whose_a_shoulder_is(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "Name;Value;Unit;Remark\nBearing;6204-2Z;;list 7\nShaft seat;20 k5;mm;\nShoulder;25;mm;shaft\n"
        "Shoulder;41.5;mm;housing\nRa;0.8;µm;shaft\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [25]
    assert stations.size("housing_shoulder_diameter").nominal.tolist() == [41.5]
    assert stations.number("shaft_seat_roughness").tolist() == [0.8]
