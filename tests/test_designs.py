"""The designs that other tests are made from: the same again, whole, found faulty where they are, read as written."""

import random

import numpy as np
import pytest

from linter.model.vocabulary import parameter, vocabulary
from linter.reading import read_table
from linter.review.records import review_reading
from linter.rulebook.load import load
from tests.designs.complete import KINDS, bearings, complete_design
from tests.designs.directions import worsened, worsenings
from tests.designs.faults import FAULTS, faults_for, faulty_design
from tests.designs.spoil import (
    LAYOUTS,
    STATION_WAYS,
    VALUE_WAYS,
    sheet_text,
    spoiled_value,
    table_text,
    without_station,
)
from tests.designs.sweep import REFUSED, SWEEPS, batched, blanked, gate_of, read_gate, verdicts

#: A seed of each kind of machine and a few more, with every option drawn somewhere.
SEEDS = range(40)


@pytest.fixture(scope="module")
def book():
    return load()


def same_values(one, other):
    """Parameters whose values differ between two stations, the machine's name left out."""
    different = []
    for name, entry in vocabulary().items():
        if not one.known(name).all():  # the reading knows more where a designation says it
            continue
        if entry.kind == "text":
            alike = list(one.text(name)) == list(other.text(name))
        elif entry.kind == "choice":
            alike = list(one.choice(name).texts()) == list(other.choice(name).texts())
        elif entry.kind == "number":
            alike = np.allclose(one.number(name), other.number(name), rtol=1e-12, atol=1e-12, equal_nan=True)
        else:
            a, b = one.size(name), other.size(name)
            alike = list(a.tolerance_class) == list(b.tolerance_class) and all(
                np.allclose(getattr(a, part), getattr(b, part), rtol=1e-12, atol=1e-12, equal_nan=True)
                for part in ("nominal", "lower", "upper")
            )
        if not alike:
            different.append(name)
    return different


def test_the_same_seed_gives_the_same_design():
    for seed in SEEDS:
        assert complete_design(seed) == complete_design(seed)
        assert faulty_design(seed) == faulty_design(seed)
    designs = [complete_design(seed) for seed in SEEDS]
    assert len({repr(design.rows) for design in designs}) == len(designs)
    assert {design.kind for design in designs} == set(KINDS)


def test_kinds_can_be_asked_for():
    for kind in KINDS:
        design = complete_design(7, kind)
        assert design.kind == kind and len(design.rows) == 2
        assert {row["machine"] for row in design.rows} == {design.rows[0]["machine"]}


def test_every_design_states_what_the_clauses_want(book):
    designs = [complete_design(seed) for seed in SEEDS]
    for design, v, k in batched([(design, design.rows) for design in designs], book):
        assert v.unassessed[k] == 0, (design.kind, design.seed)


def test_bearings_can_be_bought():
    for bearing in bearings():
        section = 0.5 * (bearing.D - bearing.d)
        assert 0.3 * section < bearing.ball_diameter < 0.75 * section, bearing
        assert bearing.d < bearing.inner_land < bearing.outer_land < bearing.D
        room = np.pi / np.arcsin(bearing.ball_diameter / bearing.pitch_diameter)
        assert 3 <= bearing.ball_count <= room, bearing


@pytest.mark.parametrize("layout", LAYOUTS)
def test_a_table_reads_back_to_the_design(layout, tmp_path):
    faulty = [fault.plant(complete_design(3), random.Random(1)) for fault in faults_for(complete_design(3))]
    for design in (*map(complete_design, SEEDS[:12]), *faulty[::3]):
        suffix, content = table_text(design, layout)
        path = tmp_path / f"table{suffix}"
        path.write_bytes(content)
        reading = read_table(path)
        assert [problem.message for problem in reading.stations.problems] == []
        assert reading.unused == ()
        assert same_values(design.stations(), reading.stations) == [], design.faults


def test_every_fault_is_found_by_one_of_its_clauses(book):
    trials = []
    for seed in range(60):
        design = complete_design(seed)
        for fault in faults_for(design):
            if seed < 8 or not any(key[1] is fault for key, _ in trials):
                faulty = fault.plant(design, random.Random(seed))
                trials.append(((faulty, fault), faulty.rows))
    assert {fault.name for (_, fault), _ in trials} == set(FAULTS)
    for (design, fault), v, k in batched(trials, book):
        assert any(v.grade(clause, k) >= 3 for clause in fault.clauses), (design.kind, design.seed, fault.name)
        assert v.gates[k] == "closed"


def test_faults_name_clauses_of_the_rulebook(book):
    assert len(FAULTS) >= 40
    for fault in FAULTS.values():
        assert fault.clauses and set(fault.clauses) <= set(book.clauses), fault.name


def test_a_design_in_a_batch_has_the_gate_of_its_own_table(book, tmp_path):
    for seed in SEEDS[:6]:
        for design in (complete_design(seed), faulty_design(seed)[0]):
            suffix, content = table_text(design)
            path = tmp_path / f"table{suffix}"
            path.write_bytes(content)
            review = review_reading(read_table(path), book)
            assert verdicts(design.stations(), book).gates == (gate_of(review),)


def test_a_blanked_value_is_gone():
    design = complete_design(3)
    for name in design.stated[2:]:
        for station in (0, 1, None):
            rows = blanked(design, name, station)
            gone = [k for k in range(2) if name not in rows[k] and name in design.rows[k]]
            everywhere = station is None or parameter(name).level == "machine"
            assert gone == [k for k in range(2) if name in design.rows[k] and (everywhere or k == station)]


@pytest.mark.parametrize("way", VALUE_WAYS)
def test_a_spoiled_value_is_not_read(way, tmp_path):
    design = complete_design(5)
    for name in ("radial_load", "speed_max", "shaft_fillet_radius", "shaft_seat_diameter", "ball_material"):
        suffix, content = sheet_text(spoiled_value(design, name, 1, way))
        path = tmp_path / f"table{suffix}"
        path.write_bytes(content)
        reading = read_table(path)
        row = list(reading.stations.text("station")).index("B")
        lost = not reading.stations.known(name)[row]
        if name == "ball_material" and way == "heading nearly right":
            continue  # the cells below a word for balls say it
        told = any(problem.parameter == name for problem in reading.stations.problems)
        assert lost or told, (name, way)


@pytest.mark.parametrize("way", STATION_WAYS)
def test_a_lost_station_is_missing_told_or_read_all_the_same(way, tmp_path, book):
    design = complete_design(5)
    for row in range(2):
        suffix, content = without_station(design, row, way)
        assert content != table_text(design)[1]
        if read_gate(suffix, content, book, tmp_path) == REFUSED:
            continue
        reading = read_table(tmp_path / f"table{suffix}")
        known = reading.stations.known("bore_diameter")
        missing = known.sum() < 2 or len(reading.stations.machines) > 1
        told = reading.stations.problems or reading.unused
        assert missing or told or same_values(design.stations(), reading.stations) == [], way


def test_the_directions_name_parameters_and_clauses(book):
    for entry in worsenings():
        assert parameter(entry.parameter).kind in ("number", "toleranced")
        assert entry.clauses and set(entry.clauses) <= set(book.clauses), entry
        assert entry.direction in ("higher", "lower") or entry.direction.removeprefix("toward ") in vocabulary()
        assert entry.reason and {*entry.eases, *entry.passes} <= set(load("current").clauses)
        rng = random.Random(1)
        assert any(worsened(complete_design(seed), entry, rng) for seed in range(200)), entry


def test_a_worsened_value_lies_on_the_worse_side():
    rng = random.Random(2)
    for entry in worsenings():
        for seed in range(30):
            design = complete_design(seed)
            if (moved := worsened(design, entry, rng)) is None:
                continue
            for old, new in zip(design.rows, moved[0], strict=True):
                a, b = (row.get(entry.parameter) for row in (old, new))
                a, b = (x[0] if isinstance(x, list) else x for x in (a, b))
                if a != b and a and not entry.direction.startswith("toward"):
                    assert (b > a) == (entry.direction == "higher"), (entry, moved[1])


@pytest.mark.parametrize("what", SWEEPS)
def test_a_sweep_counts_every_pair(what, book):
    count = 16
    found = SWEEPS[what](count, 3, book)
    if what == "metamorphic":
        assert sum(found.counts.values()) >= count
    elif what == "faults":
        assert found.counts["found"] + found.counts["not found"] == count
    else:
        assert sum(found.counts.values()) == count
    assert SWEEPS[what](count, 3, book).counts == found.counts
