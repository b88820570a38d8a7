"""JSON as scripts, firms' stores of parts and web services write it: keys in any case, objects by part and feature."""

import json

import pytest

from linter.command.tables import find_tables
from linter.reading import read_table
from linter.reading.words.headings import Words
from linter.reading.words.names import Names


def read(tmp_path, document):
    path = tmp_path / "t.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    return read_table(path).stations


@pytest.mark.parametrize(
    ("document", "found"),
    [
        ({"$schema": "https://firm.example/rotor.json", "machine": "M", "stations": []}, True),
        ({"$schema": "http://json-schema.org/draft-07/schema#", "type": "object", "required": []}, False),
        ({"$id": "x", "properties": {"bore": {"type": "number"}}}, False),
    ],
)
def test_a_document_that_names_its_schema_is_no_schema(tmp_path, document, found):
    (tmp_path / "t.json").write_text(json.dumps(document), encoding="utf-8")
    assert bool(find_tables([tmp_path]).found) is found


@pytest.mark.parametrize(
    ("key", "parameter", "unit"),
    [
        ("speedMaxRpm", "speed_max", "rpm"),
        ("tempMaxC", "temperature_max", "degC"),
        ("tAmbDegC", "ambient_temperature", "degC"),
        ("locknutTorqueNm", "nut_torque", "N.m"),
        ("preloadForceKN", "preload_force", "kN"),
        ("shaftDiaIn", "shaft_seat_diameter", "in"),
        ("requiredLifeHours", "required_life", "h"),
        ("rotor-mass-kg", "rotor_mass", "kg"),
        ("shaft-seat-mm", "shaft_seat_diameter", "mm"),
    ],
)
def test_units_at_the_end_of_keys_without_blanks(key, parameter, unit):
    heading = Words(Names()).heading(key)
    assert heading is not None and (heading.parameter, heading.unit, heading.station) == (parameter, unit, "")


@pytest.mark.parametrize("key", ["raUm", "RoughnessRaUm", "roughness_ra_um"])
def test_features_beside_the_nominal_of_a_part(tmp_path, key):
    ends = [
        {"position": name, "shaft": {"nominal": "12 k6", key: 0.4}, "housingSeat": {"nominal": "32 H7", key: 0.8}}
        for name in ("front", "rear")
    ]
    stations = read(tmp_path, {"machine": "M", "stations": ends})
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 0.8]
