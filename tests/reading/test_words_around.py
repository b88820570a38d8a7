"""Words around values and values in one text below a table; see :mod:`linter.reading.cells.words_around`."""

import pytest

from linter.reading import read_table
from linter.reading.cells.words_around import without_words

_TEXTS = {
    "approx. 300 N": ("300 N", "about"),
    "ca. 0,95": ("0,95", "about"),
    "etwa 30": ("30", "about"),
    "約30 N": ("30 N", "about"),
    "0.008 or better": ("0.008", "most"),
    "höchstens 0,003 mm": ("0,003 mm", "most"),
    "не более 0,02": ("0,02", "most"),
    "0.4 以下": ("0.4", "most"),
    "≥ 12000": ("12000", "least"),
    "mindestens 95 %": ("95 %", "least"),
    "20000 h ou plus": ("20000 h", "least"),
    "300 N": ("", ""),
    "about": ("", ""),
    "minus 5": ("", ""),
}


@pytest.mark.parametrize("text", _TEXTS)
def test_words_around_a_number_are_told_from_it(text):
    assert without_words(text) == _TEXTS[text]


def _read(tmp_path, text):
    path = tmp_path / "table.csv"
    path.write_text(text, "utf-8")
    return read_table(path)


def test_about_how_much_is_read_and_said(tmp_path):
    reading = _read(tmp_path, "Parameter,A,B,Unit\nShaft seat,25 k5,20 k5,mm\nRadial load,approx. 300,150,N\n")
    assert reading.stations.number("radial_load").tolist() == [300.0, 150.0]
    assert [p.code for p in reading.stations.problems if p.place is not None and p.place.cell == "B3"] == ["about"]


def test_a_limit_is_read_where_the_parameter_is_one_of_its_sort(tmp_path):
    text = "Parameter,A,B,Unit\nShaft seat,25 k5,20 k5,mm\nShaft seat cylindricity,0.004 or better,≥ 0.003,mm\n"
    stations = _read(tmp_path, text).stations
    assert stations.known("shaft_seat_cylindricity").tolist() == [True, False]
    stations = _read(tmp_path, f"{text}Required life,≥ 12000,at most 12000,h\n").stations
    assert set(stations.number("required_life").tolist()) == {12000.0}
    assert any(p.place is not None and p.place.cell == "C4" for p in stations.problems)


FEET = {
    "a symbol": ("n_max = 12000 rpm", "m_rotor = 2.3 kg"),
    "words": ("Drehzahl max. 12000 1/min", "Masse Läufer 2,3 kg"),
    "about": ("Vitesse maxi : 12000 tr/min", "Masse du rotor env. 2,3 kg"),
    "two words for it": ("n max 12000 min-1", "Rotor mass = 2.3 kg"),
}


@pytest.mark.parametrize("kind", FEET)
@pytest.mark.parametrize(
    "table",
    [
        "Parameter;A;B;Unit\nBearing;6205;6204;\nShaft seat;25 k5;20 k5;mm\n",
        "Position;Bearing;Shaft seat [mm];Shaft seat Ra [µm]\nA;6205;25 k5;0.4\nB;6204;20 k5;0.4\n",
    ],
)
def test_a_value_of_the_machine_in_one_text_below_a_table_is_read(tmp_path, kind, table):
    speed, mass = FEET[kind]
    stations = _read(tmp_path, f"{table};;;\n{speed};;;\n{mass};;;\n").stations
    assert stations.number("speed_max").tolist() == [12000.0, 12000.0]
    assert stations.number("rotor_mass").tolist() == [2.3, 2.3]
    assert len(stations) == 2


@pytest.mark.parametrize(
    "text", ["Tested up to 12000 rpm", "n = 12000 mm", "Noise 58 dB(A)", "l = 150 mm", "12000 rpm"]
)
def test_a_text_that_names_no_value_of_the_machine_is_left(tmp_path, text):
    reading = _read(tmp_path, f"Parameter;A;B;Unit\nBearing;6205;6204;\nShaft seat;25 k5;20 k5;mm\n{text};;;\n")
    assert not reading.stations.known("speed_max").any()
    assert not reading.stations.known("bearing_span").any()


@pytest.mark.parametrize("name", ["dynamic_rating [N]", "static_rating [N]", "base_oil_viscosity_40 [mm²/s]"])
def test_an_upper_limit_of_what_must_be_large_is_no_value(tmp_path, name):
    """A rating of at most 9000 N may be a smaller one: the life would be taken for longer than it is."""
    path = tmp_path / "table.csv"
    path.write_text(f"machine,station,bearing_designation,{name}\nM,A,6204,at most 90\nM,B,6203,90\n", "utf-8")
    stations = read_table(path).stations
    parameter = name.partition(" ")[0]
    assert stations.known(parameter).tolist() == [False, True]
    assert any("at most 90" in problem.message for problem in stations.problems)
