"""The room of a value: points inside and outside of each end, words and classes, conflicts, maps, bad input."""

import json
import random

import numpy as np
import pandas as pd
import pytest
from click.testing import CliRunner

from linter.command.cli import main
from linter.model.findings import SEVERITIES
from linter.model.packaged import data_folder
from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.review.assess import assess
from linter.review.defaults import with_defaults
from linter.review.room.domains import Cell, between, cells_of, classes_of, kind_of, samples
from linter.review.room.judged import Judge
from linter.review.room.maps import map_of, reaches
from linter.review.room.room import Room, rooms
from linter.rulebook.gates import must_rows
from linter.rulebook.load import load
from tests.designs.complete import complete_design
from tests.designs.rows import stations_from_rows

BOOK = load()
MINOR = len(SEVERITIES) - SEVERITIES.index("minor")
SAMPLES = data_folder("ruleset").parent / "sample_exports"


def stations_of(seed: int) -> Stations:
    return with_defaults(complete_design(seed).stations(), BOOK)


def judged(stations: Stations, values: list[tuple[Cell, float]]) -> np.ndarray:
    """Grades with each value in its cell, by way of a frame of many machines; (clauses, values, rows)."""
    frame, parts = stations.to_frame(), []
    for k, (cell, value) in enumerate(values):
        copy = frame.copy()
        copy["machine"] = f"m{k:05d}"
        at = copy.index if cell.whole else copy.index[cell.row]
        if f"{cell.name}_class" in copy:
            copy.loc[at, f"{cell.name}_class"] = None
        copy[cell.name] = copy[cell.name].astype(float)
        copy.loc[at, cell.name] = value
        parts.append(copy)
    found = assess(with_defaults(Stations.from_frame(pd.concat(parts, ignore_index=True)), BOOK), BOOK, keep="verdicts")
    return found.grades().reshape(-1, len(values), len(frame))


def forbidden(stations: Stations, values: list[tuple[Room, float]]) -> np.ndarray:
    """Whether each value of a room is forbidden by a clause that does not stand whatever the value."""
    first = assess(stations, BOOK)
    must = [must_rows(r.clause, first.view) for r in first.reviews.values()]
    must = [first.view.to_stations(m) if len(m) != len(stations) else m for m in must]
    grades = judged(stations, [(room.cell, value) for room, value in values])
    lost = (grades == -1) & (first.grades()[:, None, :] >= 0) & np.array(must)[:, None, :]
    counted = np.array([~np.isin(list(first.reviews), room.standing) for room, _ in values]).T
    return (((grades > MINOR) | lost).any(axis=2) & counted).any(axis=0)


def points(rng: random.Random, room: Room) -> tuple[list[float], list[float]]:
    """Values inside every stretch and beyond every end of a room."""
    inside, outside = [], []
    entry = parameter(room.cell.name)
    for k, (low, high) in enumerate(room.stretches):
        inside += [float(between(low.value, high.value, np.array(rng.random()))) for _ in range(3)]
        inside += [low.value, high.value]
        if high.beyond is not None:
            rest = room.stretches[k + 1 :]
            far = rest[0][0].beyond if rest else min(3 * abs(high.beyond) + 1e-3, entry.most * (1 - 1e-9))
            outside += [float(between(high.beyond, far, np.array(rng.random() ** 2))) for _ in range(3)]
        if low.beyond is not None and k == 0:
            far = max(entry.least, low.beyond / 3 if low.beyond > 0 else 3 * low.beyond)
            outside += [float(between(far, low.beyond, np.array(rng.random() ** 0.5))) for _ in range(3)]
    return inside, outside


def contradictions(seed: int, count: int) -> tuple[int, list[tuple[str, float]]]:
    """How many points were tried, and those that a room tells otherwise than the rulebook."""
    rng, stations = random.Random(seed), stations_of(seed)
    cells = cells_of(stations, np.arange(len(stations)))
    names = sorted({cell.name for cell in cells if kind_of(cell) == "number"})
    found = rooms(stations, 0, BOOK, names=tuple(rng.sample(names, count)))
    tried: list[tuple[Room, float]] = []
    expected: list[bool] = []
    for room in [room for room in found if room.stretches]:
        inside, outside = points(rng, room)
        tried += [(room, value) for value in (*inside, *outside)]
        expected += [False] * len(inside) + [True] * len(outside)
    bad = forbidden(stations, tried)
    return len(tried), [
        (room.cell.name, value)
        for (room, value), is_bad, want in zip(tried, bad, expected, strict=True)
        if is_bad != want
    ]


def test_points_inside_and_outside():
    tried, wrong = contradictions(7001, 4)
    assert tried > 20 and wrong == []


@pytest.mark.slow
def test_a_thousand_points_inside_and_outside():
    found = [contradictions(seed, 10) for seed in range(7100, 7120)]
    assert sum(tried for tried, _ in found) > 2000
    assert [entry for _, wrong in found for entry in wrong] == []


def test_words_and_classes_are_told_with_what_forbids_them():
    stations = stations_of(7003)
    judge = Judge(stations, np.arange(len(stations)), BOOK, "minor")
    told = 0
    for room in rooms(stations, 0, BOOK, names=("shaft_seat_diameter", "lubrication", "closure")):
        words = parameter(room.cell.name).choices
        values = {word: k for k, word in enumerate(words)}
        if room.kind == "class":
            values = classes_of(stations, room.cell.name, room.cell.row)
        assert sorted([*room.allowed, *room.forbidden]) == sorted(values)
        tried = judge.blocked([{room.cell: value} for value in values.values()])
        for word, blocked in zip(values, tried, strict=True):
            found = {c for c, b in zip(judge.clauses, blocked, strict=True) if b} - set(room.standing)
            assert found == set(room.forbidden.get(word, ()))
            told += bool(found)
    assert told > 20


def test_the_ends_of_a_known_clause_are_its_limits():
    """Fillet below the ring chamfer (0.3 mm: radius of 0.3 mm at most, ISO 582), form below its limit."""
    rows = [dict(row) for row in complete_design(7004).rows]
    stations = with_defaults(stations_from_rows(rows), BOOK)
    (fillet, _) = rooms(stations, 0, BOOK, names=("shaft_fillet_radius",))
    ((low, high),) = fillet.stretches
    assert low.value == 0.0 and high.clauses == ("shoulder.fillet",)
    assert high.value <= rows[0]["ring_chamfer"] * (1 + 1e-6)
    assert fillet.distances[1] == pytest.approx(high.value - rows[0]["shaft_fillet_radius"])


def test_an_empty_room_names_what_stands_and_what_is_in_conflict():
    rows = [dict(row) for row in complete_design(7005).rows]
    rows[0]["speed_max"] = rows[1]["speed_max"] = 2.9e6
    stations = with_defaults(stations_from_rows(rows), BOOK)
    found = {room.cell.name: room for room in rooms(stations, 0, BOOK, names=("shaft_seat_roughness", "speed_max"))}
    assert found["shaft_seat_roughness"].empty and "speed.factor" in found["shaft_seat_roughness"].standing
    assert found["speed_max"].inside is False
    down, up = found["speed_max"].distances
    assert up is None and down < 0  # it must be smaller
    for room in rooms(stations, 0, BOOK, names=("rotating_ring", "housing_seat_diameter", "axial_role", "cage")):
        assert bool(room.conflict) == (not room.stretches and not room.allowed)


def test_samples_stay_within_what_the_parameter_can_be():
    for entry in (parameter(n) for n in ("axial_load", "shaft_bore", "temperature_min", "shaft_seat_runout")):
        for present in (np.nan, 0.0, entry.least, 0.5):
            values = samples(entry, present, np.array([0.3, 1e9]))
            assert (np.diff(values) > 0).all() and values[0] >= entry.least and values[-1] < entry.most
            assert entry.least < 0 or values[0] == entry.least


def test_a_map_is_what_the_rulebook_says_at_each_place():
    stations = stations_of(7006)
    found = map_of(stations, 0, BOOK, Cell("shaft_seat_diameter", 0), Cell("housing_seat_diameter", 1))
    judge = Judge(stations, np.arange(len(stations)), BOOK, "remark")
    rng = random.Random(1)
    for _ in range(25):
        k, j = rng.randrange(len(found.down.words)), rng.randrange(len(found.across.words))
        change = {found.down.cell: found.down.values[k], found.across.cell: found.across.values[j]}
        worst = max(0, int(judge.grades([change]).max()))
        assert found.grades[k, j] in (worst, -1)
    now = found.grades[found.down.present, found.across.present]
    assert now == max(0, int(judge.grades([{}]).max()))


def test_the_highest_speed_grows_with_better_balls_and_lubrication():
    found = {(r.balls, r.lubrication): r for r in reaches(stations_of(7007), 0, BOOK)}
    assert sum(r.present for r in found.values()) == 1

    def top(balls: str, oil: str) -> float:
        ends = found[(balls, oil)].speed.stretches
        return ends[-1][1].value if ends else 0.0

    assert top("steel", "grease") <= top("steel", "grease for high speed") * (1 + 1e-6)
    assert top("steel", "grease") <= top("silicon nitride", "grease") * (1 + 1e-6)
    assert any(r.largest for r in found.values() if r.present or r.lubrication == "oil-air")


def test_the_command_writes_page_and_document(tmp_path):
    call = ["room", str(SAMPLES / "coolant-pump.csv"), "--parameter", "shaft_fillet_radius", "--parameter", "cage"]
    pair = ["--map", "shaft_seat_diameter@B,housing_seat_diameter@B"]
    result = CliRunner().invoke(main, [*call, *pair, "--out", str(tmp_path)])
    assert result.exit_code == 0, result.output
    assert "shaft fillet radius" in result.output and "m minor, M major, C critical" in result.output
    document = json.loads((tmp_path / "coolant-pump.room.json").read_text(encoding="utf-8"))
    names = [room["parameter"] for room in document["machines"][0]["rooms"]]
    assert names == ["cage", "cage", "shaft_fillet_radius", "shaft_fillet_radius"]
    page = (tmp_path / "coolant-pump.room.html").read_text(encoding="utf-8")
    assert "<script" not in page and "[" in page
    again = CliRunner().invoke(main, [*call, *pair, "--out", str(tmp_path)])
    assert again.output == result.output
    assert page == (tmp_path / "coolant-pump.room.html").read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("options", "said"),
    [
        (["--parameter", "shaft_filet_radius"], "did you mean shaft_fillet_radius"),
        (["--parameter", "bearing_designation"], "is a text"),
        (["--map", "cage"], "expected two"),
        (["--map", "cage@X,closure"], "no position of that name"),
        (["--map", "cage,cage"], "two different values"),
        (["--map", "cage,seal_lip_diameter"], "is not stated"),
    ],
)
def test_bad_calls_are_one_line(tmp_path, options, said):
    call = ["room", str(SAMPLES / "coolant-pump.csv"), *options, "--out", str(tmp_path / "out")]
    result = CliRunner().invoke(main, call)
    assert result.exit_code == 2
    assert len(result.stderr.strip().splitlines()) == 1 and said in result.stderr
    assert not (tmp_path / "out").exists()
