"""What is stated and cannot be used is told, never taken for an empty cell: dashes, TBD, versions, unused data."""

import json
from pathlib import Path

import pytest

from linter.model.stations import Problem
from linter.reading import Reading, read_table
from linter.reading.words.mapping import parse_mapping
from linter.reading.words.names import Names


def read(tmp_path: Path, text: str, name: str = "t.csv", names: Names | None = None) -> Reading:
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    return read_table(path, names)


def told(reading: Reading, *codes: str) -> list[Problem]:
    return [problem for problem in reading.stations.problems if problem.code in codes]


@pytest.mark.parametrize("text", ["-", "tbd", "n/a", "NaN", "?", "see above", "as per customer", "8 zorks"])
@pytest.mark.parametrize("name", ["bore_diameter", "shaft_seat_diameter", "speed_max", "cage", "radial_load"])
def test_text_that_is_no_value_is_stated_and_not_usable(tmp_path, text, name):
    other = "outside_diameter" if name != "outside_diameter" else "bore_diameter"
    reading = read(tmp_path, f"machine,station,{other},{name}\nM,A,22,{text}\nM,B,22,\n")
    problems = [p for p in reading.stations.problems if p.kind == "unreadable"]
    assert [(p.parameter, p.place.cell, p.row) for p in problems] == [(name, "D2", 0)]
    assert not reading.stations.known(name).any()


@pytest.mark.parametrize(
    ("unit", "text"),
    [("mm", "1e31"), ("in", "1e308"), ("in", "8 ±1e308"), ("mm", "8 +1e300/-1e300"), ("mm", "-1e300 … 1e300")],
)
@pytest.mark.parametrize("name", ["bore_diameter", "shaft_seat_diameter"])
def test_number_beyond_all_reckoning_is_stated_and_not_usable(tmp_path, unit, text, name):
    """An inch of 1e308 is infinite in millimetres, and two of them differ by no number."""
    reading = read(tmp_path, f"machine,station,{name} [{unit}],{name} [{unit}]\nM,A,{text},{text}\nM,B,8,8\n")
    found = [(p.kind, p.place.cell) for p in reading.stations.problems if p.parameter == name and p.row == 0]
    assert ("unreadable", "C2") in found
    assert {kind for kind, _ in found} == {"unreadable"}
    assert reading.stations.known(name).tolist() == [False, True]


def test_number_of_json_beyond_all_reckoning_is_stated_and_not_usable(tmp_path):
    record = {"machine": "M", "station": "A", "speed_max": 1e300, "bore_diameter": 8.0}
    reading = read(tmp_path, json.dumps([record]), "t.json")
    (problem,) = told(reading, "number-out-of-range")
    assert (problem.parameter, problem.read) == ("speed_max", "1e+300")
    assert not reading.stations.known("speed_max").any()


def test_empty_text_is_blank(tmp_path):
    reading = read(tmp_path, "machine,station,bore_diameter,outside_diameter\nM,A,,22\nM,B, ,22\n")
    assert reading.stations.problems == ()


@pytest.mark.parametrize(
    ("head", "row", "usable"),
    [
        ("shaft_undercut_form,shaft_undercut_width,shaft_undercut_depth", "-,-,-", True),
        ("shaft_undercut_form,shaft_undercut_width,shaft_undercut_depth", "F,2.2,-", False),
        ("axial_role,free_ring", "locating,-", True),
        ("axial_role,free_ring", "floating,-", False),
        ("bearing_type,contact_angle", "deep groove ball,-", True),
        ("bearing_type,contact_angle", "angular contact ball,-", False),
        ("spring_rate,spring_free_length", "-,-", True),
        ("spring_rate,spring_free_length", "12.5,-", False),
        ("clearance_class,radial_clearance", "C3,-", True),
        ("clearance_class,radial_clearance", ",-", False),
        ("shaft_bore,fatigue_load_limit", "-,-", True),
    ],
)
def test_dash_is_an_empty_cell_only_where_a_design_may_lack_the_parameter(tmp_path, head, row, usable):
    reading = read(tmp_path, f"machine,station,bore_diameter,{head}\nM,A,8,{row}\n")
    assert (told(reading, "not-applicable") == []) == usable
    assert len(reading.unused) == (row.count("-") if usable else 0)


def test_dash_of_a_machine_that_another_row_states_is_empty(tmp_path):
    reading = read(tmp_path, "machine,station,speed_max,bore_diameter\nM,A,12000,8\nM,B,-,8\n")
    assert reading.stations.number("speed_max").tolist() == [12000, 12000]
    assert told(reading, "not-applicable") == []


def test_unknown_tolerance_of_a_stated_size_is_told(tmp_path):
    head = "machine,station,shaft_seat_diameter,shaft_seat_diameter upper,shaft_seat_diameter lower"
    reading = read(tmp_path, f"{head}\nM,A,8,tbd,tbd\nM,B,8,-,-\n")
    assert [p.place.cell for p in told(reading, "not-known")] == ["D2", "E2"]
    assert [u.place.cell for u in reading.unused] == ["D3", "E3"]


@pytest.mark.parametrize("word", ["(new)", "(old)", "new", "proposed", "(neu)", "[nuevo]", "(旧)", "old"])
def test_two_versions_that_differ_disagree(tmp_path, word):
    head = f"machine,station,shaft_seat_diameter,shaft_seat_diameter {word}"
    reading = read(tmp_path, f"{head}\nM,A,8 h5,8 k5\nM,B,8 h5,8 h5\n")
    assert [(p.kind, p.row) for p in told(reading, "stated-twice")] == [("disagreement", 0)]
    assert reading.stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["", "h5"]
    assert reading.unused == ()


def test_lone_newer_value_is_used_and_shown_and_lone_older_one_is_asked_about(tmp_path):
    reading = read(tmp_path, "machine,station,bore_diameter (new),outside_diameter (old)\nM,A,8,22\nM,B,8,22\n")
    assert reading.stations.number("bore_diameter").tolist() == [8, 8]
    assert [(p.kind, p.place.cell) for p in told(reading, "newer-value")] == [("assumption", "C2")]
    assert not reading.stations.known("outside_diameter").any()
    assert [(p.kind, p.place.cell) for p in told(reading, "older-value")] == [
        ("unreadable", "D2"),
        ("unreadable", "D3"),
    ]


def test_override_beside_a_value_is_a_second_statement(tmp_path):
    station = {"station": "A", "shaft_seat_diameter": {"value": 8, "unit": "mm", "override": 8.5}}
    reading = read(tmp_path, json.dumps({"machine": "M", "stations": [station]}), "t.json")
    assert [p.kind for p in told(reading, "stated-twice")] == ["disagreement"]
    assert not reading.stations.known("shaft_seat_diameter")[0]


def test_strip_that_speaks_for_no_station_does_not_stop_the_reading(tmp_path):
    document = (
        '[{"name":"machine","value":"G"},{"machine":"+41.2±0.05 -12±0.02 -4 0/-0.12"},'
        '{"spring_rate":"cleanliness","station":"B"},{"name":"axial_role","value":"floating","station":"B"}]'
    )
    reading = read(tmp_path, document, "t.json")
    assert reading.stations.text("station").tolist() == ["B"]
    assert {p.code for p in reading.stations.problems} == {"no-machine", "no-station", "not-a-size"}


@pytest.mark.parametrize("cells", [("h5", "k5"), ("+0.005", "-0.002"), ("8 h5", "8 k5"), ("8.004", "7.995")])
def test_unused_column_with_data_of_a_missing_seat_is_told(tmp_path, cells):
    reading = read(
        tmp_path, "machine,station,bore_diameter,outside_diameter,Zzx\nM,A,8,22,{}\nM,B,8,22,{}\n".format(*cells)
    )
    assert [(p.kind, p.place.cell) for p in told(reading, "unused-data")] == [("unreadable", "E1")]


def test_unused_column_whose_name_is_close_to_a_parameter_is_told(tmp_path):
    text = "machine,station,bore_diameter,outside_diameter,{}\nM,A,8,22,3\nM,B,8,22,3\n"
    assert [p.kind for p in told(read(tmp_path, text.format("shaft filet radus")), "unused-data")] == ["unreadable"]
    assert [p.kind for p in told(read(tmp_path, text.format("bal diamtr")), "unused-data")] == ["unused"]


@pytest.mark.parametrize(
    ("head", "cells"), [("Supplier", "North,South"), ("Qty", "8,22"), ("Batch", "8,12"), ("Remarks", "h5,h5")]
)
def test_unused_column_of_other_things_is_only_listed(tmp_path, head, cells):
    one, two = cells.split(",")
    reading = read(tmp_path, f"machine,station,bore_diameter,outside_diameter,{head}\nM,A,8,22,{one}\nM,B,8,22,{two}\n")
    assert told(reading, "unused-data") == []
    assert [u.name for u in reading.unused] == [head]


def test_mapping_that_leaves_out_a_column_with_data_is_told(tmp_path):
    names = Names(parse_mapping({"names": {"shaft_seat_diameter": "", "Supplier": ""}}, "m.toml"))
    text = "machine,station,bore_diameter,outside_diameter,shaft_seat_diameter,Supplier\nM,A,8,22,8 h5,North\n"
    reading = read(tmp_path, text, names=names)
    assert [(p.kind, p.parameter) for p in told(reading, "left-out")] == [("unreadable", "shaft_seat_diameter")]
