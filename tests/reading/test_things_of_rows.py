"""What rows are of: things that keep names apart, a bore beside the shaft, a type of bearings beside both parts."""

import pytest

from linter.reading import read_table


def read(tmp_path, text):
    path = tmp_path / "table.csv"
    path.write_text(text, "utf-8")
    return read_table(path)


@pytest.mark.parametrize("head", ["Item", "Object", "Gegenstand", "Assembly"])
def test_a_column_left_of_the_names_that_keeps_them_apart_names_the_machines(tmp_path, head):
    text = f"{head};Position;Attribute;Value;UoM\n"
    for machine, sizes in (("Blower DB-9", (20, 17)), ("Blower DB-14", (35, 30))):
        text += f"{machine};(all);Speed, maximum;8200;1/min\n"
        for position, size in zip(("A-side", "B-side"), sizes, strict=True):
            text += f"{machine};{position};Rolling bearing;6{2 * (size == 17)}0{size // 5}-2Z;\n"
            text += f"{machine};{position};Diameter, shaft seat;{size} m5;mm\n"
            text += f"{machine};{position};Radial load;{10 * size};N\n"
    stations = read(tmp_path, text).stations
    assert stations.machines == ("Blower DB-9", "Blower DB-14")
    assert stations.number("radial_load").tolist() == [200.0, 170.0, 350.0, 300.0]


def test_numbers_of_rows_left_of_the_names_are_no_machines(tmp_path):
    text = "Item;Position;Attribute;Value;UoM\n" + "".join(
        f"{n};{position};{name};{value};{unit}\n"
        for n, (position, name, value, unit) in enumerate(
            (p, name, value, unit)
            for p in ("A-side", "B-side")
            for name, value, unit in (("Rolling bearing", "6204", ""), ("Diameter, shaft seat", "20 m5", "mm"))
        )
    )
    assert len(read(tmp_path, text).stations.machines) == 1


PARTS = {
    "French": ("Palier;Roulement;Portée;Ø nominal (mm);Classe de tolérance;Ra (µm)", "arbre", "alésage"),
    "German": ("Lagerstelle;Wälzlager;Teil;Nennmaß (mm);Toleranzklasse;Ra (µm)", "Welle", "Bohrung"),
    "English": ("Position;Bearing;Part;Nominal (mm);Tolerance class;Ra (µm)", "Shaft", "Bore"),
}


@pytest.mark.parametrize("language", PARTS)
def test_a_bore_beside_the_shaft_is_the_housings(tmp_path, language):
    heads, shaft, bore = PARTS[language]
    rows = "".join(f"{p};6902;{shaft};15;h6;0,4\n{p};6902;{bore};28;JS6;1,6\n" for p in ("A", "B"))
    stations = read(tmp_path, f"{heads}\n{rows}").stations
    assert stations.size("housing_seat_diameter").nominal.tolist() == [28.0, 28.0]
    assert stations.number("housing_seat_roughness").tolist() == [1.6, 1.6]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]


@pytest.mark.parametrize("bearing", ["Cuscinetto a sfere", "Cuscinetto", "Rillenkugellager"])
def test_rows_of_bearings_beside_those_of_both_parts_are_read(tmp_path, bearing):
    text = "Denominazione;Lato;Sigla;Carico radiale [N];Diametro sede [mm];Rugosità Ra [µm]\n"
    for side in ("lato motore", "lato girante"):
        text += f"Albero - sede cuscinetto;{side};;;12 j5;0,8\n{bearing};{side};6001-2Z/C3;320;;\n"
        text += f"Carcassa - sede cuscinetto;{side};;;28 H6;1,6\n"
    stations = read(tmp_path, text).stations
    assert stations.text("bearing_designation").tolist() == ["6001-2Z/C3"] * 2
    assert stations.number("radial_load").tolist() == [320.0, 320.0]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [28.0, 28.0]
