"""Lengths without a unit: the bearings beside them, and deviations beside their classes, tell it."""

import math

import pytest

from linter.reading import read_table
from linter.reading.words.names import Names

NAMES = Names.built_in()
HEAD = "Merkmal;Stelle;Nennmaß;oberes Abmaß;unteres Abmaß;Passung\n"


def read(tmp_path, rows):
    path = tmp_path / "t.csv"
    path.write_text(HEAD + rows, encoding="utf-8")
    return read_table(path, NAMES).stations


def test_deviations_of_their_class_tell_mm(tmp_path):
    """k5 of 30 mm is +11/+2 µm, H7 of 62 mm +30/0 µm (ISO 286-2)."""
    stations = read(
        tmp_path, "Wellensitz;A;30;+0,011;+0,002;k5\nLagerbohrung;A;62;+0,030;0;H7\nWellenschulter;A;37;0;-0,1;\n"
    )
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [37.0]
    told = [p for p in stations.problems if p.code == "length-unit"]
    assert len(told) == 1 and "deviations are those of their classes" in told[0].message


@pytest.mark.parametrize("upper", ["+0,013", "+11"])
def test_deviations_that_are_not_those_of_their_class_tell_nothing(tmp_path, upper):
    stations = read(tmp_path, f"Wellensitz;A;30;{upper};+0,002;k5\nWellenschulter;A;37;0;-0,1;\n")
    assert not any(p.code == "length-unit" for p in stations.problems)
    assert math.isnan(stations.size("shaft_shoulder_diameter").nominal[0])


@pytest.mark.parametrize(("name", "read_as"), [("Lagerbohrung", 62.0), ("Innenring Bohrung", math.nan)])
def test_a_bore_with_the_class_of_a_hole_is_the_housings_in_a_list_too(tmp_path, name, read_as):
    stations = read(tmp_path, f"Wellensitz;A;30;+0,011;+0,002;k5\n{name};A;62;+0,030;0;H7\n")
    assert stations.size("housing_seat_diameter").nominal.tolist() == pytest.approx([read_as], nan_ok=True)
