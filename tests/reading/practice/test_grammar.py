"""The grammar itself: deviations are those of ISO 286, tables are the same again, every value has its cell."""

import hashlib
import io

import numpy as np
import openpyxl
import pytest

from linter.mechanics.limits import deviations_or_nan
from practice import grammar
from practice.measure import _apart, judge

#: SHA-256 over the meaning of the tables of the measuring set.
SET = "6a4057277d7551b708215c1d8be57e2a4461c564be022e086bcb67763ce4a19d"
SEEDS = [*range(1, 61)]


@pytest.mark.parametrize("tolerance_class", [*grammar.SHAFT, *grammar.HOUSING])
def test_deviations_are_those_of_iso_286(tolerance_class: str) -> None:
    for step in grammar.SHAFT_STEPS if tolerance_class in grammar.SHAFT else grammar.HOUSING_STEPS:
        lower, upper = deviations_or_nan(np.array([tolerance_class]), np.array([float(step)]))
        assert grammar.deviations(tolerance_class, step) == pytest.approx((lower[0] / 1000, upper[0] / 1000))


@pytest.mark.parametrize("seed", SEEDS)
def test_a_seed_gives_the_same_bytes_again(seed: int) -> None:
    assert grammar.make(seed) == grammar.make(seed)


@pytest.mark.parametrize("seed", SEEDS)
def test_every_value_stands_in_a_cell(seed: int) -> None:
    table = grammar.make(seed)
    for expected in table.expected:
        assert expected.own and set(expected.own) <= set(expected.cells), expected
    if table.suffix == ".xlsx":
        sheet = openpyxl.load_workbook(io.BytesIO(table.content))["Data"]
        for expected in table.expected:
            assert all(sheet[address].value is not None for address in expected.own), expected


@pytest.mark.parametrize("seed", SEEDS)
def test_seats_have_the_sizes_of_their_bearing(seed: int) -> None:
    table = grammar.make(seed)
    values = {(e.machine, e.station, e.parameter): e.value for e in table.expected}
    for (m, s, name), size in values.items():
        ring = {"shaft_seat_diameter": "bore_diameter", "housing_seat_diameter": "outside_diameter"}.get(name)
        if ring and (m, s, ring) in values:
            assert isinstance(size, grammar.Size)
            assert size.nominal == pytest.approx(values[m, s, ring])


def test_a_result_is_judged_value_by_value() -> None:
    table, first = next(
        (table, e)
        for table in map(grammar.make, range(1001, 1201))
        if table.kinds["layout"] == "json seats"
        for e in table.expected
        if e.parameter == "bore_diameter" and e.verdict == "read"
    )
    names = {"machine": table.machines[0], "station": table.stations[0][first.station]}
    right = {**names, "values": {"bore_diameter": first.value}}
    wrong = {**right, "values": {"bore_diameter": 99.0, "ball_count": 7.0}}
    for row, outcome, invented in ((right, "right", 0), (wrong, "wrong", 1)):
        judged = judge(table, {"stations": [row], "unrecognised": [], "notes": [], "assessments": []})
        assert next(j.outcome for j in judged.judged if j.expected == first) == outcome
        assert len(judged.invented) == invented
    assert {j.outcome for j in judge(table, None).judged} == {"refused"}
    entry = {"name": "x", "value": "", "place": {"file": "", "pointer": first.own[0]}}
    named = judge(table, {"stations": [], "unrecognised": [entry], "notes": [], "assessments": []})
    assert next(j.outcome for j in named.judged if j.expected == first) == "asked"
    silent = judge(table, {"stations": [], "unrecognised": [], "notes": [], "assessments": []})
    assert next(j.outcome for j in silent.judged if j.expected == first) == "lost"


def test_the_measuring_set_is_the_one_that_was_measured_first() -> None:
    """Figures of different days can be compared only while the set is the same: a change of it is made knowingly."""
    told = repr([(table.name, table.suffix, table.kinds, table.expected) for table in map(grammar.make, range(1, 61))])
    assert hashlib.sha256(told.encode()).hexdigest() == SET


@pytest.mark.parametrize("seed", SEEDS)
def test_a_reader_that_reads_all_of_it_gets_all_of_it_right(seed: int) -> None:
    table = grammar.make(seed)
    rows = []
    for m, names in enumerate(table.stations):
        for s, station in enumerate(names):
            own = [e for e in table.expected if e.machine == m and e.station in (s, -1) and e.verdict != "ask"]
            values = {e.parameter: as_stated(e.value) for e in own if e.parameter not in ("machine", "station")}
            rows.append({"machine": table.machines[m], "station": station, "values": values})
    asked = [
        {"name": "", "value": "", "place": {"cell" if "/" not in e.own[0] else "pointer": e.own[0]}}
        for e in table.expected
        if e.verdict == "ask"
    ]
    judged = judge(table, {"stations": rows[::-1], "unrecognised": asked, "notes": [], "assessments": []})
    assert {j.outcome for j in judged.judged} <= {"right"}
    assert judged.invented == []


def as_stated(value: grammar.Value) -> object:
    """A value as a result file has it: deviations are filled in from the class, the nominal of bare limits is free."""
    if not isinstance(value, grammar.Size):
        return value
    if value.bare:
        assert value.lower is not None and value.upper is not None
        return {"nominal": value.nominal + value.lower, "lower": 0.0, "upper": value.upper - value.lower, "class": None}
    lower, upper = value.lower, value.upper
    if lower is None:
        lower, upper = grammar.deviations(value.tolerance_class, value.nominal)
    return {"nominal": value.nominal, "lower": lower, "upper": upper, "class": value.tolerance_class or None}


@pytest.mark.parametrize(
    ("meant", "read", "alike"),
    [
        ("前側", "前側軸受", True),
        ("Bearing 1", "1", True),
        ("Palier A", "a", True),
        ("Festlager", "Fest", True),
        ("опора А", "A", True),
        ("Опора Б", "Б", True),
        ("Bearing 1", "Bearing 2", False),
        ("DE", "NDE", False),
        ("Lager", "Palier", False),
    ],
)
def test_a_name_is_the_same_with_or_without_the_word_for_the_bearing(meant: str, read: str, alike: bool) -> None:
    assert (_apart(meant) == _apart(read)) is alike
    assert _apart(meant)
