"""Title blocks: drawing and revision behind one label, the name of a machine above sections of positions."""

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


SECTIONS = (
    "{head}\n{name};{machine};\n{speed};10650;{unit}\n;;\n{bearing} {first};;\n{designation};7009C/P5;\n{load};900;N\n"
    "{shaft};;\n{diameter};45 ±0,005;mm\n;;\n{bearing} {second};;\n{designation};7009C/P5;\n{load};365;N\n"
    "{shaft};;\n{diameter};45 ±0,008;mm\n"
)


@pytest.mark.parametrize(
    "words",
    [
        {"head": "Scheda cuscinetti;;", "name": "Denominazione", "machine": "Mandrino ingranaggi MI 90",
         "speed": "Velocità max", "unit": "giri/min", "bearing": "CUSCINETTO", "first": "anteriore",
         "second": "posteriore", "designation": "Sigla", "load": "Carico radiale", "shaft": "ALBERO",
         "diameter": "Diametro"},
        {"head": "Lagerblatt;;", "name": "Benennung", "machine": "Motorspindel MS 90", "speed": "Höchstdrehzahl",
         "unit": "1/min", "bearing": "LAGER", "first": "vorn", "second": "hinten", "designation": "Kurzzeichen",
         "load": "Radiallast", "shaft": "WELLE", "diameter": "Durchmesser"},
    ],
)  # fmt: skip
def test_the_name_of_a_machine_above_sections_is_no_position(tmp_path, words):
    path = tmp_path / "sheet.csv"
    path.write_text(SECTIONS.format(**words), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == [f"{words['bearing']} {words[end]}" for end in ("first", "second")]
    assert set(stations.machines) == {words["machine"]}
    assert stations.number("radial_load").tolist() == [900, 365]
    assert stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.005, 0.008])
