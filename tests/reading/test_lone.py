"""Values of the machine among positions side by side, columns of symbols, and the names of positions as written."""

import pytest

from linter.reading import read_table


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


def _sheet(one: str, other: str, *rows: str) -> str:
    head = f"Grandeur;Symbole;{one};{other};Unité\nRoulement;;6209;7308 B;-\nAlésage;d;45;40;mm\n"
    return (
        head + "Diamètre extérieur;D;85;90;mm\nLargeur;B;19;23;mm\nCharge radiale;Fr;1,85;0,72;kN\n" + "\n".join(rows)
    )


@pytest.mark.parametrize(
    "names",
    [("Top (neck)", "Bottom (foot)"), ("Palier avant", "Palier arrière"), ("Palier côté roue", "Palier côté moteur")],
)
def test_symbols_are_no_station_and_a_position_keeps_its_name(read, names):
    stations = read(_sheet(*names, "Vitesse;n;4750;;tr/min")).stations
    assert stations.text("station").tolist() == list(names)
    assert stations.number("bore_diameter").tolist() == [45, 40]
    assert stations.number("radial_load").tolist() == [1850, 720]
    assert stations.number("speed_max").tolist() == [4750, 4750]


def test_a_letter_behind_the_word_for_a_position_is_its_name(read):
    assert read(_sheet("Palier A", "Palier : gauche")).stations.text("station").tolist() == ["A", "gauche"]


def test_a_lubrication_beside_the_speed_in_the_first_column_is_of_all_positions(read):
    rows = ("Vitesse;n;4750;;tr/min", "Lubrification;;graisse;;")
    shared = read(_sheet("avant", "arrière", *rows)).stations
    assert shared.choice("lubrication").texts().tolist() == ["grease", "grease"]
    alone = read(_sheet("avant", "arrière", rows[1])).stations
    assert alone.choice("lubrication").texts().tolist() == ["grease", ""]


@pytest.mark.parametrize(
    ("name", "speed"),
    [("Bowl speed", 4750), ("Spindeldrehzahl", 4750), ("Vitesse broche", 4750), ("Motor speed", None),
     ("Limiting speed", None), ("Vitesse critique", None), ("Cage speed", None)],
)  # fmt: skip
def test_a_speed_of_what_turns_is_that_of_the_machine(read, name, speed):
    stations = read(_sheet("avant", "arrière", f"{name};n;4750;;tr/min")).stations
    assert [number if number == number else None for number in stations.number("speed_max").tolist()] == [speed] * 2
