"""Titles of forms: a caption before labels and values, unknown labels among known ones, a letter behind a drawing."""

import pytest

from linter.reading import read_table

#: Caption, drawing, revision, machine, its name, drawn by, on; speed, life, material of the housing, a name; then the
#: position and its names: bearing, radial and axial load, seats with the roughness of each.
LANGUAGES = {
    "fr": ("FICHE PALIERS", "N° plan", "Indice", "Machine", "Pompe centrifuge PC 65-160", "Établi par", "le",
           "Vitesse maxi", "tr/min", "Matière corps", "fonte GL", "Palier", ("côté roue", "côté moteur"),
           ("Roulement", "Charge radiale (N)", "Charge axiale (N)", "Ø portée arbre (mm)", "Ø alésage logement (mm)")),
    "de": ("LAGERBLATT", "Zeichnung", "Index", "Maschine", "Kreiselpumpe KP 80-200", "Bearbeiter", "am",
           "Drehzahl max.", "1/min", "Gehäusewerkstoff", "Grauguss", "Lagerstelle", ("Laufradseite", "Motorseite"),
           ("Lager", "Radialkraft (N)", "Axialkraft (N)", "Wellensitz Ø (mm)", "Gehäusebohrung Ø (mm)")),
    "en": ("BEARING SHEET", "Drawing no.", "Rev.", "Machine", "Centrifugal pump CP 65", "Prepared by", "on",
           "Max. speed", "1/min", "Housing material", "cast iron", "Position", ("impeller side", "motor side"),
           ("Bearing", "Radial load (N)", "Axial load (N)", "Shaft seat diameter (mm)", "Housing bore diameter (mm)")),
    "it": ("SCHEDA SUPPORTI", "Disegno n.", "Revisione", "Macchina", "Pompa centrifuga PC 65", "Redatto da", "il",
           "Velocità massima", "giri/min", "Materiale alloggiamento", "ghisa", "Supporto",
           ("lato girante", "lato motore"),
           ("Cuscinetto", "Carico radiale (N)", "Carico assiale (N)", "Diametro sede albero (mm)",
            "Diametro sede alloggiamento (mm)")),
}  # fmt: skip
VALUES = (("6308", "1185", "305", "40 k5", "90 J7"), ("6306", "985", "480", "30 k5", "72 H7"))


@pytest.fixture
def read(tmp_path):
    def reader(rows):
        path = tmp_path / "table.csv"
        path.write_text("\n".join(";".join(row) for row in rows) + "\n", encoding="utf-8")
        return read_table(path).stations

    return reader


def _judge(stations, language):
    assert set(stations.text("machine").tolist()) == {LANGUAGES[language][4]}
    assert set(stations.text("drawing_number").tolist()) == {"PC 76 1243"}
    assert set(stations.text("drawing_revision").tolist()) == {"B"}
    assert set(stations.number("speed_max").tolist()) == {1450}
    assert set(stations.choice("housing_material").texts().tolist()) == {"cast iron"}
    assert len(stations.text("station")) == 2
    assert stations.number("axial_load").tolist() == [305, 480]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [90, 72]
    assert stations.text("bearing_designation").tolist() == ["6308", "6306"]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("colon", ["", " :"])
def test_a_caption_stands_before_the_labels_of_a_form(read, language, colon):
    caption, drawing, revision, machine, name, by, on, speed, unit, housing, iron, position, places, names = LANGUAGES[
        language
    ]
    labels = [f"{one}{colon}" for one in (drawing, revision, machine, by, on, f"{speed} ({unit})", housing, position)]
    rows = [
        (caption, "", "", labels[0], "PC 76 1243", labels[1], "B"),
        (labels[2], name, "", labels[3], "M. L.", labels[4], "12/03/2025"),
        (labels[5], "1450", "", labels[6], iron),
    ]
    for place, values in zip(places, VALUES, strict=True):
        pairs = [(f"{one}{colon}", value) for one, value in zip(names, values, strict=True)]
        rows += [(), (labels[7], place, "", *pairs[0]), (*pairs[1], "", *pairs[2]), (*pairs[3], "", *pairs[4])]
    _judge(read([(*row, *[""] * (7 - len(row))) for row in rows]), language)


@pytest.mark.parametrize("language", LANGUAGES)
def test_unknown_labels_stand_among_those_of_the_machine(read, language):
    caption, drawing, _, machine, name, by, _, speed, unit, housing, iron, _, places, names = LANGUAGES[language]
    rows = [
        (caption, "", "", "", "1/1"),
        (machine, name, "", "", drawing, "PC 76 1243", "B"),
        (speed, "1450", unit, "", housing, iron),
        ("Oil seal", "2", "", "", by, "M. L."),
        (),
        (places[0], "", "", "", places[1]),
        *((one, own, "", "", one, other) for one, own, other in zip(names, *VALUES, strict=True)),
    ]
    _judge(read([(*row, *[""] * (7 - len(row))) for row in rows]), language)
