"""A title block whose first row begins with a caption, and sizes named by a word for a size below a seat."""

import pytest

from linter.reading import read_table

HEAD = {
    "de": ("Lagersitze Generator KG 2", "Zeichnungsnummer", "Index", "Drehzahl (1/min)", "Einbaulage", "vertikal"),
    "en": ("Seats Blower RB 4", "Drawing number", "Rev.", "Max. speed (r/min)", "Shaft orientation", "vertical"),
    "fr": ("Portées ventilateur VC 3", "Numéro de plan", "Indice", "Vitesse (tr/min)", "Position arbre", "verticale"),
}  # fmt: skip
SIZES = {
    "de": ("Lagersitz Welle", "Lagersitz Gehäuse", "Maß (mm)", "Abmaße (mm)"),
    "en": ("Shaft seat", "Housing seat", "Size (mm)", "Deviations (mm)"),
    "fr": ("Portée arbre", "Alésage logement", "Cote (mm)", "Écarts (mm)"),
}


@pytest.mark.parametrize("language", HEAD)
@pytest.mark.parametrize("gap", ["", ";"])
def test_caption_before_labels_and_values(tmp_path, language, gap):
    caption, drawing, index, speed, lies, upright = HEAD[language]
    shaft, housing, size, both = SIZES[language]
    path = tmp_path / "table.csv"
    path.write_text(
        f"{caption};;{drawing};G-961.677;{gap}{index};C;\n{speed};9500;;{lies};{upright};;\n;;;;;;\n"
        f"Pos.;Designation;{shaft};;;{housing};\n;;{size};{both};Ra (µm);{size};{both}\n"
        "D;6001;12 j5;+0,005 / -0,003;0,2;28 N6;-0,011 / -0,024\nN;6001;12 j5;+0,005 / -0,003;0,2;28 H7;+0,021 / 0\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.texts["station"].tolist() == ["D", "N"]
    assert stations.text("drawing_number").tolist() == ["G-961.677"] * 2
    assert stations.text("drawing_revision").tolist() == ["C"] * 2
    assert stations.number("speed_max").tolist() == [9500.0] * 2
    assert stations.toleranced["shaft_seat_diameter"].nominal.tolist() == [12.0, 12.0]
    assert stations.toleranced["housing_seat_diameter"].upper.tolist() == pytest.approx([-0.011, 0.021])
    assert not any(p.kind == "unreadable" for p in stations.problems)


@pytest.mark.parametrize("head", ["Mass", "Weight", "Material", "Supplier"])
def test_what_is_no_size_below_a_part_is_none(tmp_path, head):
    path = tmp_path / "table.csv"
    path.write_text(
        f"All dimensions in mm;;;;;;\nPos.;Designation;Shaft;;Housing;;\n;;{head};Tolerance;{head};Tolerance;Ra (µm)\n"
        "D;6001;12.4;j5;28.1;H7;0.4\nN;6001;12.4;j5;28.1;H7;0.4\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    for seat in ("shaft_seat_diameter", "housing_seat_diameter"):
        assert not {12.4, 28.1} & set(stations.size(seat).nominal.tolist())
