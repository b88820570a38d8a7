"""Nominal and class beside the limits of a size under keys that no list knows; upper limits of what has no nominal."""

import json

import pytest

from linter.reading import read_table


def seats(**words):
    """A document of two positions, the keys of its seats in the words of one language."""
    limits = {"front": ((30, "k5", 30.011, 30.002), (62, "H6", 62.019, 62.0))}
    limits["rear"] = ((25, "k5", 25.011, 25.002), (52, "JS7", 52.015, 51.985))
    keys = [words[name] for name in ("nominal", "tolerance", "largest", "smallest")]
    stations = [
        {
            "position": place, "bearing": bearing, "shaft seat": dict(zip(keys, shaft, strict=True)),
            "housing seat": dict(zip(keys, housing, strict=True)),
        } for (place, (shaft, housing)), bearing in zip(limits.items(), ("6206", "6205"), strict=True)
    ]  # fmt: skip
    return {"machine": "Gear spindle", "units": "mm", "positions": stations}


WORDS = [
    {"nominal": "Fit dia. [mm]", "tolerance": "ISO tol.", "largest": "Max. [mm]", "smallest": "Min. [mm]"},
    {"nominal": "Passgröße", "tolerance": "Feld", "largest": "Größtmaß", "smallest": "Kleinstmaß"},
    {"tolerance": "ISO", "smallest": "min", "largest": "max", "nominal": "ajuste"},
]


@pytest.mark.parametrize("words", WORDS)
def test_the_nominal_of_two_limits_is_no_middle_of_them(tmp_path, words):
    path = tmp_path / "seats.json"
    path.write_text(json.dumps(seats(**words)), encoding="utf-8")
    stations = read_table(path).stations
    shaft, housing = (stations.size(f"{part}_seat_diameter") for part in ("shaft", "housing"))
    assert shaft.nominal.tolist() == [30, 25]
    assert housing.nominal.tolist() == [62, 52]
    assert [str(sort) for sort in housing.tolerance_class] == ["H6", "JS7"]
    assert housing.upper == pytest.approx([0.019, 0.015])
    assert housing.lower == pytest.approx([0, -0.015])


@pytest.mark.parametrize("key", ["surface", "grade", "x", "precision"])
def test_a_grade_of_a_surface_or_a_bearing_is_no_class_of_a_size(tmp_path, key):
    document = seats(**WORDS[0])
    for station in document["positions"]:
        station["housing seat"] = {"nominal": 62, "upper": 0.019, "lower": 0, key: "N6"}
    path = tmp_path / "seats.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    classes = read_table(path).stations.size("housing_seat_diameter").tolerance_class
    assert not any(str(sort) for sort in classes)


PLANS = {
    "English": (
        "Op.,Bearing position,Characteristic,Nominal,Tol. class,Upper tol.,Lower tol.,Unit\n"
        "1,A,Shaft seat diameter,20,k5,+0.011,+0.002,mm\n2,B,Shaft seat diameter,17,k5,+0.009,+0.001,mm\n"
        "3,A,Shaft seat cylindricity,,,0.003,0,mm\n4,B,Shaft seat cylindricity,,,0.004,0,mm\n"
        "5,A,Shaft seat total runout,0,,0.006,0,mm\n6,B,Shaft seat total runout,0,,0.007,0,mm\n"
        "7,A,Shaft seat roughness Ra,,,0.4,0,µm\n8,B,Shaft seat roughness Ra,,,0.8,0,µm\n"
    ),
    "German, the lower one first": (
        "Nr.,Lagerstelle,Merkmal,Nennmaß,Toleranz,Unteres Abmaß,Oberes Abmaß,Einheit\n"
        "1,A,Wellensitz Durchmesser,20,k5,0.002,0.011,mm\n2,B,Wellensitz Durchmesser,17,k5,0.001,0.009,mm\n"
        "3,A,Wellensitz Zylinderform,,,0,0.003,mm\n4,B,Wellensitz Zylinderform,,,0,0.004,mm\n"
        "5,A,Wellensitz Gesamtlauf,,,0,0.006,mm\n6,B,Wellensitz Gesamtlauf,,,0,0.007,mm\n"
        "7,A,Wellensitz Rauheit Ra,,,0,0.4,µm\n8,B,Wellensitz Rauheit Ra,,,0,0.8,µm\n"
    ),
    "French, a dash below": (
        "Repère,Palier,Élément,Caractéristique,Nominal,Écart sup.,Écart inf.,Unité\n"
        "1,A,Portée d'arbre,Diamètre,20,+0.011,+0.002,mm\n2,B,Portée d'arbre,Diamètre,17,+0.009,+0.001,mm\n"
        "3,A,Portée d'arbre,Cylindricité,,0.003,-,mm\n4,B,Portée d'arbre,Cylindricité,,0.004,-,mm\n"
        "9,A,Logement,Diamètre,47,+0.016,0,mm\n10,B,Logement,Diamètre,40,+0.016,0,mm\n"
        "5,A,Portée d'arbre,Battement total,,0.006,-,mm\n6,B,Portée d'arbre,Battement total,,0.007,-,mm\n"
        "7,A,Portée d'arbre,Rugosité Ra,,0.4,-,µm\n8,B,Portée d'arbre,Rugosité Ra,,0.8,-,µm\n"
    ),
}


@pytest.mark.parametrize("text", PLANS.values(), ids=PLANS)
def test_what_has_no_nominal_stands_below_the_word_for_upper_ones(tmp_path, text):
    path = tmp_path / "plan.csv"
    path.write_text(text, encoding="utf-8")
    stations = read_table(path).stations
    assert stations.size("shaft_seat_diameter").upper == pytest.approx([0.011, 0.009])
    assert stations.size("shaft_seat_diameter").lower == pytest.approx([0.002, 0.001])
    assert stations.number("shaft_seat_cylindricity") * 1000 == pytest.approx([3, 4])
    assert stations.number("shaft_seat_runout") * 1000 == pytest.approx([6, 7])
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]


def test_two_limits_of_a_roughness_are_asked(tmp_path):
    path = tmp_path / "plan.csv"
    text = "Position,Characteristic,Nominal,Upper tol.,Lower tol.,Unit\nA,Shaft seat diameter,20,+0.011,+0.002,mm\n"
    path.write_text(f"{text}A,Shaft seat roughness Ra,,0.8,0.2,µm\n", encoding="utf-8")
    assert not read_table(path).stations.known("shaft_seat_roughness").any()
