"""One label for drawing and revision before a cell of each, above positions side by side."""

import pytest

from linter.reading import read_table
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

TABLE = (
    "Ventilator;Radialventilator RV 630;;;\n{drawing}\nmax. Drehzahl [1/min];1450;;;\n;;;;\n"
    ";Laufradseite;Kupplungsseite;Einheit;Quelle\nLager;;;;\nLagerbezeichnung;NU208/C3;6208/C3;;Katalog\n"
    "Äußere Radialkraft;820;1340;N;Berechnung\nWelle;;;;\nSitzdurchmesser;40 k5;40 h5;mm;\nGehäuse;;;;\n"
    "Sitzdurchmesser;80 H6;80 J6;mm;\nRa Sitz;0.8;1.6;µm;\n"
)


@pytest.mark.parametrize(
    ("drawing", "number", "revision"),
    [
        ("Zeichnungsnummer / Änderungsstand;RV-69789;B;;", "RV-69789", "B"),
        ("Drawing / Rev.;RV-69789;03;;", "RV-69789", "03"),
        ("Indice / plan;C;RV-69789;;", "RV-69789", "C"),
        ("图号/版次;RV-69789;A;;", "RV-69789", "A"),
    ],
)
def test_two_cells_behind_the_label_for_both_are_the_drawing_and_its_revision(tmp_path, drawing, number, revision):
    path = tmp_path / "fan.csv"
    path.write_text(TABLE.format(drawing=drawing), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["Laufradseite", "Kupplungsseite"]
    assert set(stations.text("drawing_number")) == {number}
    assert set(stations.text("drawing_revision")) == {revision}
    assert stations.number("radial_load").tolist() == [820, 1340]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.6]


def test_a_word_behind_the_number_of_a_drawing_is_no_revision(tmp_path):
    path = tmp_path / "fan.csv"
    path.write_text(TABLE.format(drawing="Zeichnungsnummer / Änderungsstand;RV-69789;gültig;;"), encoding="utf-8")
    assert not read_table(path).stations.known("drawing_revision").any()


@pytest.mark.parametrize(
    "name", ["1. biegekritische Drehzahl", "1st critical speed", "1-я критическая частота вращения"]
)
def test_the_number_of_a_critical_speed_is_no_position(name):
    heading = Words(Names.built_in()).heading(f"{name} [1/min]")
    assert heading is not None
    assert (heading.parameter, heading.station) == ("first_critical_speed", "")
