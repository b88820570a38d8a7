"""Stations named by the designation of their bearing: what it says fills gaps, what is stated wins and is compared."""

import json
from pathlib import Path

import numpy as np
import pytest

from linter.model.stations import Problem, Stations
from linter.reading import Reading, read_table


def read(tmp_path: Path, text: str) -> Reading:
    path = tmp_path / "t.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path)


def told(reading: Reading, *codes: str) -> list[Problem]:
    return [problem for problem in reading.stations.problems if problem.code in codes]


def word(stations: Stations, name: str, row: int = 0) -> str:
    return str(stations.choice(name).texts()[row])


def test_designation_gives_what_the_table_does_not_state(tmp_path):
    reading = read(tmp_path, "machine,station,bearing_designation,speed_max\nM,A,608-2Z/C3,1000\nM,B,7002 C P4,\n")
    s = reading.stations
    assert [s.number(n).tolist() for n in ("bore_diameter", "outside_diameter", "ring_width", "contact_angle")] == [
        [8, 15], [22, 32], [7, 9], [0, 15],
    ]  # fmt: skip
    assert [word(s, n) for n in ("bearing_type", "closure", "clearance_class")] == ["deep groove ball", "shield", "C3"]
    assert [word(s, n, 1) for n in ("bearing_type", "tolerance_class")] == ["angular contact ball", "P4"]
    for name in ("bore_diameter", "bearing_type", "clearance_class"):
        assert "608-2Z/C3" in s.derived[name].basis[0]
    assert s.problems == ()


def test_absent_signs_are_assumptions(tmp_path):
    s = read(tmp_path, "machine,station,bearing_designation,speed_max\nM,A,6203,1000\n").stations
    assert [word(s, n) for n in ("tolerance_class", "clearance_class", "closure")] == ["Normal", "CN", "open"]
    for name in ("tolerance_class", "clearance_class", "closure"):
        assert s.assumed[name].rows.tolist() == [True]
        assert "complete designation" in s.assumed[name].reason
    assert "bore_diameter" not in s.assumed


def test_printed_balls_are_assumptions_with_their_source(tmp_path):
    s = read(tmp_path, "machine,station,bearing_designation,ball_count\nM,A,6205,\nM,B,6205,9\n").stations
    if "ball_count" in s.derived:
        assert s.derived["ball_count"].rows.tolist() == [True, False]
        assert s.assumed["ball_count"].rows.tolist() == [True, False]
        assert "printed" in s.derived["ball_count"].basis[0]
    assert s.number("ball_count")[1] == 9


@pytest.mark.parametrize(
    ("head", "cells", "parameter"),
    [
        ("bore_diameter,outside_diameter,ring_width", "10,26,8", "bore_diameter"),
        ("bore_diameter,outside_diameter,ring_width", "8,24,7", "outside_diameter"),
        ("bore_diameter,outside_diameter,ring_width", "8,22,9", "ring_width"),
        ("closure", "open", "closure"),
        ("clearance_class", "CN", "clearance_class"),
        ("bearing_type", "angular contact ball", "bearing_type"),
    ],
)
def test_stated_value_wins_and_a_contradiction_is_told(tmp_path, head, cells, parameter):
    reading = read(tmp_path, f"machine,station,bearing_designation,{head}\nM,A,608-2Z/C3,{cells}\n")
    problems = told(reading, "designation-contradicts")
    assert parameter in [p.parameter for p in problems]
    assert {p.kind for p in problems} == {"disagreement"}
    assert all(p.place.cell == "C2" for p in problems)
    for name, cell in zip(head.split(","), cells.split(","), strict=True):
        known = reading.stations
        assert (word(known, name) if name in known.choices else f"{known.number(name)[0]:g}") == cell
        assert name not in known.derived


def test_same_values_agree(tmp_path):
    head = "machine,station,bearing_designation,bore_diameter,outside_diameter,ring_width,ring_chamfer"
    assert read(tmp_path, f"{head}\nM,A,608-2Z,8,22,7,0.35\n").stations.problems == ()
    assert read(tmp_path, f"{head}\nM,A,R8,12.7,28.575,7.938,0.4\n").stations.problems == ()


@pytest.mark.parametrize("designation", ["6299", "6205C9", "628/2", "60O8", "B-4711"])
def test_impossible_designation_is_told(tmp_path, designation):
    reading = read(tmp_path, f"machine,station,bearing_designation,speed_max\nM,A,{designation},1000\n")
    assert [(p.kind, p.row, p.read) for p in told(reading, "designation-not-read")] == [("unreadable", 0, designation)]


def test_number_of_another_kind_does_no_harm_where_the_sizes_are_stated(tmp_path):
    head = "machine,station,bearing_designation,bore_diameter,outside_diameter,ring_width"
    reading = read(tmp_path, f"{head}\nM,A,B-4711,8,22,7\nM,B,6205C9,25,52,15\n")
    assert [p.kind for p in told(reading, "designation-not-read")] == ["assumption", "unreadable"]


def test_signs_that_are_not_read_stand_in_a_note(tmp_path):
    reading = read(tmp_path, "machine,station,bearing_designation,speed_max\nM,A,6203 ZZ QX9,1000\n")
    assert any("6203 ZZ QX9" in note and "QX9" in note for note in reading.notes)


def test_parts_of_a_table_keep_what_is_derived(tmp_path):
    s = read(tmp_path, "machine,station,bearing_designation,speed_max\nM,A,608,1\nN,A,6203,1\n").stations
    part = Stations.concat([s.take(slice(1, 2)), s.take(slice(0, 1))])
    assert part.number("bore_diameter").tolist() == [17, 8]
    assert [basis.split(":")[0] for basis in part.derived["bore_diameter"].basis] == [
        "bearing_designation 6203",
        "bearing_designation 608",
    ]


def test_result_file_marks_what_is_derived(tmp_path):
    from linter.command.cli import main

    path = tmp_path / "t.csv"
    path.write_text("machine,station,bearing_designation,speed_max\nM,A,608-2Z,1000\n", encoding="utf-8")
    with pytest.raises(SystemExit):
        main(["review", str(path), "--out", str(tmp_path / "out"), "--write", "json"])
    (result,) = (tmp_path / "out").glob("*.result.json")
    station = json.loads(result.read_text(encoding="utf-8"))["stations"][0]
    assert station["values"]["bore_diameter"] == 8
    assert station["derived"]["bore_diameter"]["value"] == 8
    assert "608-2Z" in station["derived"]["bore_diameter"]["basis"]


@pytest.mark.parametrize(
    ("names", "roles"),
    [
        (("A (Festlager)", "B (Loslager)"), ["locating", "floating"]),
        (("DE locating", "NDE floating"), ["locating", "floating"]),
        (("locating floating", "A"), ["", ""]),
    ],
)
def test_role_inside_the_name_of_a_station_is_derived(tmp_path, names, roles):
    reading = read(tmp_path, "machine,station,bore_diameter,cage\nM,{},8,peek\nM,{},8,peek\n".format(*names))
    assert reading.stations.choice("axial_role").texts().tolist() == roles
    if any(roles):
        assert reading.stations.derived["axial_role"].rows.all()


def test_role_that_is_stated_stays(tmp_path):
    reading = read(tmp_path, "machine,station,bore_diameter,axial_role\nM,A (Festlager),8,floating\n")
    assert reading.stations.choice("axial_role").texts().tolist() == ["floating"]


@pytest.mark.parametrize(
    ("text", "word"),
    [
        ("Lithium grease NLGI 2", "grease"),
        ("Fett KP2K-30", "grease"),
        ("oil bath with grease seal", ""),
        ("NLGI 2", ""),
    ],
)
def test_name_of_a_grease_is_a_grease(tmp_path, text, word):
    reading = read(tmp_path, f"machine,station,bore_diameter,lubrication\nM,A,8,{text}\n")
    assert reading.stations.choice("lubrication").texts().tolist() == [word]


def test_balls_solved_from_printed_ratings_back_an_assumption_where_the_ratings_agree(tmp_path):
    head = "machine,station,bearing_designation,dynamic_rating,static_rating\n"
    s = read(tmp_path, f"{head}M,A,6204,,\nM,B,6204,13500,6550\nM,C,6204,9000,4000\n").stations
    assert s.number("ball_count").tolist()[:2] == [8, 8]
    assert s.number("ball_diameter")[0] == pytest.approx(7.9375)
    assert s.number("ball_count")[2] != s.number("ball_count")[2]  # ratings of another inside
    assert s.assumed["ball_diameter"].rows.tolist() == [True, True, False]
    assert "solved" in s.assumed["ball_diameter"].reason


def test_where_makers_print_different_balls_the_weakest_are_assumed_and_the_others_named(tmp_path):
    s = read(tmp_path, "machine,station,bearing_designation,speed_max\nM,A,6203,1000\n").stations
    assert (s.number("ball_count")[0], s.number("ball_diameter")[0]) == (8, 6.746)
    assert "29.05" in s.derived["ball_diameter"].basis[0]
    assert "different balls" in s.assumed["ball_diameter"].reason


def test_a_pair_behind_a_designation_is_told_at_its_cell(tmp_path):
    reading = read(tmp_path, "machine,station,bearing_designation,speed_max\nM,A,7002 C P4 DB,1000\nM,B,7002 C P4,\n")
    pairs = told(reading, "pair")
    assert [(p.row, p.kind, p.place.short()) for p in pairs] == [(0, "assumption", "C2")]
    assert "back to back" in pairs[0].message


@pytest.mark.parametrize(
    ("names", "roles"),
    [
        (("Impeller end", "Free end"), ("", "")),
        (("lado_carga", "lado_libre"), ("", "")),
        (("Fixed end", "Free end"), ("locating", "floating")),
        (("A (Festlager)", "B (Loslager)"), ("locating", "floating")),
    ],
)
def test_a_free_end_floats_only_beside_a_fixed_one(tmp_path, names, roles):
    rows = "".join(f"M,{name},6203\n" for name in names)
    s = read(tmp_path, f"machine,station,bearing_designation\n{rows}").stations
    assert (word(s, "axial_role", 0), word(s, "axial_role", 1)) == roles


def test_many_texts_that_are_no_designations_are_told_so_often_and_hide_no_other():
    from linter.model.stations import stations_from_rows
    from linter.reading.settling.derive import derive

    texts = ["text 7", "608-2Z"] * 300
    found = derive(stations_from_rows([{"station": f"S{k}", "bearing_designation": t} for k, t in enumerate(texts)]))
    assert len(found.problems) == 200
    assert found.stations.number("bore_diameter")[1::2].tolist() == [8.0] * 300
    assert np.isnan(found.stations.number("bore_diameter")[::2]).all()
