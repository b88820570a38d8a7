"""Lists whose parts are headed by a word left of the names, and whose deviations or units stand right of the values."""

import pytest

from linter.reading import Reading, read_table

GERMAN = """Bohrkopf BK-4|||
|Höchstdrehzahl|12000|U/min
Spindel|||
|Lagersitz vorn|30|+0,002/-0,004
|Lagersitz hinten|25|+0,002/-0,004
|Bund vorn|36|
|Bund hinten|31|
Gehäuse|||
|Bohrung vorn|55|+0,008/-0,005
|Bohrung hinten|47|+0,013/+0,002
|Bund vorn|49|
Lager|||
|vorn|7006 C P4|
|hinten|6005 P5|"""
ENGLISH = """Drill head|||
|max. speed|12000|rpm
Shaft|||
|Bearing seat front|30|+0.002/-0.004
|Bearing seat rear|25|+0.002/-0.004
|Shoulder front|36|
|Shoulder rear|31|
Housing|||
|Bore front|55|+0.008/-0.005
|Bore rear|47|+0.013/+0.002
|Shoulder front|49|
Bearings|||
|front|7006 C P4|
|rear|6005 P5|"""
FRENCH = """Broche BK-4|||
|Vitesse maxi|12000|tr/min
Roulements|||
|avant|7006 C P4|
|arrière|6005 P5|
Arbre|||
|Portée avant|30|+0,002/-0,004
|Portée arrière|25|+0,002/-0,004
|Épaulement avant|36|
|Épaulement arrière|31|
Carter|||
|Alésage avant|55|+0,008/-0,005
|Alésage arrière|47|+0,013/+0,002
|Épaulement avant|49|"""


def read(tmp_path, text: str) -> Reading:
    path = tmp_path / "table.csv"
    path.write_text(text.replace("|", ";"), encoding="utf-8")
    return read_table(path)


@pytest.mark.parametrize("text", [GERMAN, ENGLISH, FRENCH])
def test_a_word_left_of_the_names_heads_the_part_below_it(tmp_path, text):
    stations = read(tmp_path, text).stations
    shaft, housing = (stations.size(f"{part}_seat_diameter") for part in ("shaft", "housing"))
    assert sorted(zip(shaft.nominal, shaft.lower, shaft.upper, strict=True)) == [
        (25, pytest.approx(-0.004), pytest.approx(0.002)),
        (30, pytest.approx(-0.004), pytest.approx(0.002)),
    ]
    assert sorted(zip(housing.nominal, housing.lower, strict=True)) == [
        (47, pytest.approx(0.002)),
        (55, pytest.approx(-0.005)),
    ]
    front = list(stations.text("bearing_designation")).index("7006 C P4")
    assert stations.size("shaft_shoulder_diameter").nominal[front] == 36
    assert stations.size("housing_shoulder_diameter").nominal[front] == 49
    assert shaft.nominal[front] == 30
    assert set(stations.number("speed_max")) == {12000}


def test_numbers_left_of_the_names_head_nothing(tmp_path):
    text = "1|Shaft seat front|30 k5|mm\n2|Shaft seat rear|25 k5|mm\n3|||\n|Shaft shoulder front|36|mm"
    stations = read(tmp_path, text).stations
    assert sorted(stations.size("shaft_seat_diameter").nominal) == [25, 30]
    assert 36 in list(stations.size("shaft_shoulder_diameter").nominal)
