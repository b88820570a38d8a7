"""Labels and values of the machine below a list, beside its column of names; words for limits in remarks of a list."""

import pytest

from linter.reading import read_table


@pytest.fixture
def read(tmp_path):
    def reader(rows):
        path = tmp_path / "t.csv"
        path.write_text("\n".join(";".join(map(str, row)) for row in rows) + "\n", encoding="utf-8")
        return read_table(path)

    return reader


def parts_list(heads, shaft, housing, places, names):
    rows = [heads]
    for item, (part, (size, fillet)) in enumerate(((shaft, names[:2]), (housing, names[2:])), 1):
        rows.append((10 * item, 1, 4711 + item, part))
        for place, d in zip(places, (20, 25), strict=True):
            diameter = d if part == shaft else d + 27
            rows.append(("", "", "", size, diameter, "k5" if part == shaft else "H6", place))
            rows.append(("", "", "", fillet, 0.6, "", place))
    return rows


_LISTS = {
    "en": (
        ("Item", "Qty", "Part no.", "Description", "Size", "Fit", "Position"), "Rotor shaft", "Bearing housing",
        ("Drive end", "Non-drive end"),
        ("Shaft seat dia. [mm]", "Shaft fillet R [mm]", "Hsg. bore dia. [mm]", "Hsg. fillet R [mm]"),
    ),
    "de": (
        ("Pos.", "Menge", "Sachnummer", "Benennung", "Abmessung", "Passung", "Lagerstelle"), "Rotorwelle",
        "Lagergehäuse", ("Lager A", "Lager B"),
        ("Wellensitz [mm]", "Ausrundung Welle [mm]", "Gehäusebohrung [mm]", "Ausrundung Gehäuse [mm]"),
    ),
}  # fmt: skip


@pytest.mark.parametrize(
    ("language", "foot"),
    [
        ("en", [("n max [rpm]", 6000), ("Rotor wt. [kg]", 1.2)]),
        ("en", [("Rotor wt.", 1.2, "kg"), ("n max", 6000, "rpm")]),
        ("en", [("n max [rpm]", "", 6000), ("Rotor wt. [kg]", "", 1.2)]),
        ("de", [("Höchstdrehzahl [1/min]", 6000), ("Rotormasse [kg]", 1.2)]),
        ("de", [("Rotormasse", 1.2, "kg"), ("Höchstdrehzahl", 6000, "1/min")]),
    ],
)
def test_values_of_the_machine_below_a_parts_list_are_read(read, language, foot):
    stations = read([*parts_list(*_LISTS[language]), (), *foot]).stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 25]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [47, 52]
    assert stations.number("speed_max").tolist() == [6000, 6000]
    assert stations.number("rotor_mass").tolist() == [1.2, 1.2]


def test_what_is_not_known_below_a_parts_list_is_told(read):
    reading = read([*parts_list(*_LISTS["en"]), (), ("n max [rpm]", 6000), ("Greasing interval", 2000)])
    assert ("Greasing interval", "2000") in {(unused.name, unused.value) for unused in reading.unused}


_RADII = {
    "de": (("Position", "Teil", "Kenngröße", "Wert", "Einheit", "Kommentar"), ("Lager A", "Lager B"),
           ("Wellensitz", "Gehäusebohrung"), ("Durchmesser", "Ausrundungsradius"), "max."),
    "en": (("Position", "Part", "Characteristic", "Value", "Unit", "Comment"), ("Drive end", "Non-drive end"),
           ("Shaft seat", "Housing bore"), ("Diameter", "Fillet radius"), "maximum"),
    "fr": (("Position", "Pièce", "Caractéristique", "Valeur", "Unité", "Remarque"), ("Palier A", "Palier B"),
           ("Arbre", "Logement"), ("Diamètre", "Rayon de raccordement"), "maxi"),
}  # fmt: skip


def radii(language, word, other=""):
    heads, places, parts, (diameter, radius), _ = _RADII[language]
    rows = [heads]
    for place, d in zip(places, (20, 25), strict=True):
        for part, size in zip(parts, (f"{d} k5", f"{d + 27} H6"), strict=True):
            rows += [(place, part, diameter, size, "mm", other), (place, part, radius, d / 25, "mm", word)]
    return rows


@pytest.mark.parametrize("language", _RADII)
def test_a_largest_value_says_so_in_its_remark(read, language):
    stations = read(radii(language, _RADII[language][3])).stations
    assert stations.number("shaft_fillet_radius").tolist() == [0.8, 1]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 25]


def test_another_remark_beside_those_leaves_its_value(read):
    stations = read(radii("de", "max.", "geprüft")).stations
    assert stations.number("shaft_fillet_radius").tolist() == [0.8, 1]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 25]


def test_the_smallest_of_what_is_stated_as_a_largest_is_not_read(read):
    reading = read(radii("de", "min."))
    assert "shaft_fillet_radius" not in {*reading.stations.numbers}
    assert {unused.value for unused in reading.unused} >= {"0.8", "1.0"}
