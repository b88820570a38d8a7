"""Sweeps over many designs: ``python -m tests.designs.sweep --pairs N --seed S --what WHAT``.

``complete``     complete designs: how many gates are open, and which clauses close the others.
``faults``       one planted fault each: how many are found by one of their clauses.
``blank``        a faulty design with one value taken away in memory: does the gate open?
``spoil``        the same through the reader, the value spoiled in the table in one of many ways.
``station``      a faulty design that loses a station on its way into the table.
``metamorphic``  one value moved the way that ``schemas/worsening.csv`` calls worse: does a clause of its turn milder?

Prints counts and the first offenders. Everything follows from the seed.
"""

import argparse
import random
import sys
import tempfile
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import islice
from pathlib import Path
from typing import Any

import numpy as np
from attrs import evolve

from linter.model.findings import TABLE_CHAPTER, ReviewResult
from linter.model.vocabulary import parameter
from linter.reading import InputError, Reading, read_table
from linter.review.assess import NOT_ASSESSED, assess
from linter.review.defaults import with_defaults
from linter.review.records import review_reading
from linter.rulebook.gates import must_rows
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook
from tests.designs.complete import Design, Row, complete_design
from tests.designs.directions import Worsening, worsened, worsenings
from tests.designs.faults import FAULTS, Fault, faults_for
from tests.designs.rows import Stations, stations_from_rows
from tests.designs.spoil import STATION_WAYS, VALUE_WAYS, sheet_text, spoiled_value, without_station

BATCH = 400
REFUSED = "refused"
"""The gate of a table that the reader does not take at all: nothing is released by it."""


# ------------------------------------------------------------------------------------------------ verdicts


def gate_of(result: ReviewResult) -> str:
    """The gate of one review, as the command decides it."""
    return result.gate


@dataclass(frozen=True)
class Verdicts:
    """Verdicts of one batch.

    The gate by machine, and how many assessments of it wanted a value; grades by clause and machine, 4 critical to -2
    not applicable, the graver of its stations; -1 where one of them was not assessed and none has a finding.
    """

    machines: tuple[str, ...]
    gates: tuple[str, ...]
    unassessed: tuple[int, ...]
    clauses: tuple[str, ...]
    grades: np.ndarray

    def closing(self, machine: int) -> list[str]:
        """Clauses with a finding of major or critical."""
        return [self.clauses[k] for k in np.flatnonzero(self.grades[:, machine] >= 3)]

    def grade(self, clause: str, machine: int) -> int:
        return int(self.grades[self.clauses.index(clause), machine])


def verdicts(stations: Stations, book: Rulebook) -> Verdicts:
    """Verdicts on every machine of some stations, each as if it stood in a table of its own.

    The gate is found from the arrays, as :attr:`linter.model.findings.ReviewResult.gate` finds it from the records.
    """
    assessed = assess(stations, book, keep="verdicts")
    view = assessed.view
    by_station = assessed.grades()
    # of a machine the gravest of its stations; one that was not judged counts for more than one that is met
    ordered = np.where(by_station == -1, 0.5, by_station)
    gravest = np.maximum.reduceat(ordered, view.starts, axis=1)
    grades = np.where(gravest == 0.5, -1, gravest).astype(np.int8)
    wanting = np.zeros(view.machine_count, bool)
    unassessed = np.zeros(view.machine_count, int)
    about_seats = np.array([not name.startswith(f"{TABLE_CHAPTER}.") for name in assessed.reviews])
    judged = (by_station[about_seats] >= 0).any(axis=0)
    for review in assessed.reviews.values():
        absent = review.outcome == NOT_ASSESSED
        must = absent & must_rows(review.clause, view)
        if review.clause.level == "station":
            unassessed += view.to_machines(absent, "count")
            must = view.to_machines(must, "any")
        else:
            unassessed += absent
        wanting |= must
    failed = any(review.failure for review in assessed.reviews.values())
    closed = (grades >= 3).any(axis=0) | ~view.to_machines(judged, "any") | failed
    return Verdicts(
        machines=stations.machines,
        gates=tuple(np.select([closed, wanting], ["closed", "undecided"], "open").tolist()),
        unassessed=tuple(unassessed.tolist()),
        clauses=tuple(assessed.reviews),
        grades=grades,
    )


def result_of(rows: Sequence[Row], book: Rulebook) -> ReviewResult:
    """A review of rows that stand in no file, with what the rulebook assumes."""
    stations = with_defaults(stations_from_rows(list(rows)), book)
    return review_reading(Reading("", "", "", stations, (), (), understand=list), book)


def batched(trials: Iterable[tuple[Any, Sequence[Row]]], book: Rulebook) -> Iterator[tuple[Any, Verdicts, int]]:
    """Verdicts on many designs, a batch of them assessed at once: what was given with it, verdicts, machine."""
    waiting = iter(trials)
    while part := list(islice(waiting, BATCH)):
        rows = [{**row, "machine": f"{k:04d}"} for k, (_, own) in enumerate(part) for row in own]
        found = verdicts(with_defaults(stations_from_rows(rows), book), book)
        for k, (key, _) in enumerate(part):
            yield key, found, k


HEALED: dict[tuple[str, str], str] = {
    ("stated preload is not that of the spring", "preload_force"): "one of two statements that contradict each other",
    (
        "unbalance outweighs the load on a loose outer ring",
        "residual_unbalance",
    ): "the balance grade says another figure",
    ("balls that do not fit in the bearing", "ball_diameter"): "the impossible size was the fault; ratings are stated",
}
"""Faults that are gone with the value: what is left states a sound design. Fault, parameter, and why."""


def carried(result: ReviewResult, name: str) -> bool:
    """Whether a documented assumption stands in for a parameter and is counted among those the verdict rests on."""
    return result.carried > 0 and any(
        assumed.parameter == name
        for item in result.assessments
        if item.must and item.outcome in ("met", "finding")
        for assumed in item.assumed
    )


def why_open(result: ReviewResult, fault: Fault, name: str) -> str:
    """Why a gate may open after a value is gone: the fault is gone with it, or a counted assumption; else empty."""
    if (fault.name, name) in HEALED:
        return "sound without the value"
    return "carried by a counted assumption" if carried(result, name) else ""


def read_result(suffix: str, content: bytes, book: Rulebook, folder: Path) -> ReviewResult | None:
    """The review of a file; None where the reader does not take it."""
    path = folder / f"table{suffix}"
    path.write_bytes(content)
    try:
        reading = read_table(path, shown_as=path.name)
    except InputError:
        return None
    return review_reading(evolve(reading, stations=with_defaults(reading.stations, book)), book)


def read_gate(suffix: str, content: bytes, book: Rulebook, folder: Path) -> str:
    """The gate of a file, as the command decides it."""
    result = read_result(suffix, content, book, folder)
    return REFUSED if result is None else gate_of(result)


# ------------------------------------------------------------------------------------------------ trials


def faulty_designs(count: int, seed: int, book: Rulebook) -> list[tuple[Design, Fault]]:
    """Designs with one fault that its own clauses find, each made from a design whose gate is open."""
    found: list[tuple[Design, Fault]] = []
    number = seed * 1_000_000
    while len(found) < count:
        step = min(BATCH, max(count - len(found), 8))
        seeds = range(number, number + step)
        number += step
        designs = [(design, design.rows) for design in map(complete_design, seeds)]
        good = [design for design, v, k in batched(designs, book) if v.gates[k] == "open"]
        trials = []
        for design in good:
            rng = random.Random(f"{seed} {design.seed}")
            for fault in rng.sample(faults_for(design), 2):
                faulty = fault.plant(design, rng)
                trials.append(((faulty, fault), faulty.rows))
        found += [
            key
            for key, v, k in batched(trials, book)
            if v.gates[k] == "closed" and any(v.grade(clause, k) >= 3 for clause in key[1].clauses)
        ]
    return found[:count]


IDENTITY = ("machine", "station", "drawing_number", "drawing_revision", "bearing_designation")


def blanked(design: Design, name: str, station: int | None) -> list[Row]:
    """Rows without one value, at one station or (None, and every value of the machine) at all of them."""
    rows = [dict(row) for row in design.rows]
    every = station is None or parameter(name).level == "machine"
    for row in rows if every else [rows[station or 0]]:
        row.pop(name, None)
    return rows


def _pairs(count: int, seed: int, book: Rulebook) -> Iterator[tuple[Design, Fault, str, random.Random]]:
    """Faulty designs with a parameter to lose: each fault once with a parameter that its clauses look at."""
    rng = random.Random(f"pairs {seed}")
    designs = faulty_designs(max(8, count // 4), seed, book)
    for number in range(count):
        design, fault = designs[number % len(designs)]
        stated = [name for name in design.stated if name not in IDENTITY]
        near = [
            name
            for name in stated
            if any(
                name in (*clause.needs, *clause.uses)
                for clause in map(book.clauses.get, fault.clauses)
                if clause is not None
            )
        ]
        yield design, fault, rng.choice(near if near and rng.random() < 0.5 else stated), rng


# ------------------------------------------------------------------------------------------------ sweeps


@dataclass
class Outcome:
    """Counts of a sweep and its offenders, in words."""

    counts: Counter[str]
    by: Counter[str]
    offenders: list[str]

    def text(self, shown: int = 12) -> str:
        lines = [", ".join(f"{word} {number}" for word, number in sorted(self.counts.items()))]
        lines += [f"  {number:5d}  {word}" for word, number in self.by.most_common(40)]
        lines += [f"  first: {line}" for line in self.offenders[:shown]]
        return "\n".join(lines)


def _outcome() -> Outcome:
    return Outcome(Counter(), Counter(), [])


def sweep_complete(count: int, seed: int, book: Rulebook) -> Outcome:
    """Gates of complete designs; by clause, what closes them."""
    found = _outcome()
    designs = [complete_design(seed * 1_000_000 + k) for k in range(count)]
    for design, v, k in batched([(design, design.rows) for design in designs], book):
        found.counts[v.gates[k]] += 1
        if v.gates[k] != "open":
            closing = v.closing(k)
            found.by.update(f"{clause} ({design.kind})" for clause in closing)
            found.offenders.append(f"{design.kind} {design.seed}: {', '.join(closing)}")
    return found


def sweep_faults(count: int, seed: int, book: Rulebook) -> Outcome:
    """Planted faults found by one of their clauses, each kind in turn."""
    found = _outcome()
    trials = []
    number = seed * 1_000_000
    kinds = list(FAULTS.values())
    while len(trials) < count:
        design = complete_design(number)
        rng = random.Random(f"fault {number}")
        number += 1
        fault = kinds[len(trials) % len(kinds)]
        if fault.needed(design):
            faulty = fault.plant(design, rng)
            trials.append(((faulty, fault), faulty.rows))
    for (design, fault), v, k in batched(trials, book):
        hit = any(v.grade(clause, k) >= 3 for clause in fault.clauses)
        found.counts["found" if hit else "not found"] += 1
        found.counts[f"gate {v.gates[k]}"] += 1
        if not hit:
            found.by[fault.name] += 1
            found.offenders.append(f"{design.kind} {design.seed}: {fault.name}")
    return found


def _blanks(count: int, seed: int, book: Rulebook) -> Iterator[tuple[Any, Sequence[Row]]]:
    """Faulty designs without one value, with what was taken away and where."""
    for design, fault, name, rng in _pairs(count, seed, book):
        station = rng.choice((0, 1, None))
        rows = blanked(design, name, station)
        yield (design, fault, name, station, rows), rows


def sweep_blank(count: int, seed: int, book: Rulebook) -> Outcome:
    """Gates of faulty designs after one value is gone; by fault and parameter, what opens them."""
    found = _outcome()
    for (design, fault, name, station, rows), v, k in batched(_blanks(count, seed, book), book):
        gate = v.gates[k]
        if gate == "open":
            why = why_open(result_of(rows, book), fault, name)
            gate = f"open, {why}" if why else gate
        found.counts[gate] += 1
        if gate.startswith("open,"):
            found.by[f"{gate}: {fault.name} <- {name}"] += 1
        if gate == "open":
            silent = "" if v.unassessed[k] else " (and nothing says that a value is missing)"
            found.by["open, something not assessed" if v.unassessed[k] else "open, everything assessed"] += 1
            found.by[f"{fault.name} <- {name}{silent}"] += 1
            where = "both" if station is None else "AB"[station]
            found.offenders.append(f"{design.kind} {design.seed}: {fault.name}, without {name} at {where}{silent}")
    return found


def sweep_spoil(count: int, seed: int, book: Rulebook) -> Outcome:
    """The same through the reader, the value spoiled as tables spoil them."""
    found = _outcome()
    with tempfile.TemporaryDirectory() as folder:
        for number, (design, fault, name, rng) in enumerate(_pairs(count, seed, book)):
            way = list(VALUE_WAYS)[number % len(VALUE_WAYS)]
            station = rng.randrange(2)
            layout = rng.choice(("wide", "long", "transposed", "json"))
            given = spoiled_value(design, name, station, way)
            result = read_result(*sheet_text(given, layout), book, Path(folder))
            gate = REFUSED if result is None else gate_of(result)
            if result is not None and gate == "open" and (why := why_open(result, fault, name)):
                gate = f"open, {why}"
            found.counts[gate] += 1
            if gate.startswith("open,"):
                found.by[f"{gate}: {fault.name} <- {name} ({way})"] += 1
            if gate == "open":
                found.by[way] += 1
                found.offenders.append(f"{design.kind} {design.seed}: {fault.name}, {name} {way} ({layout})")
    return found


def sweep_station(count: int, seed: int, book: Rulebook) -> Outcome:
    """Gates of tables that lost a station, the faulty one where the fault stands at one."""
    found = _outcome()
    designs = faulty_designs(count // len(STATION_WAYS) + 1, seed, book)
    with tempfile.TemporaryDirectory() as folder:
        for number in range(count):
            way = list(STATION_WAYS)[number % len(STATION_WAYS)]
            design, fault = designs[(number // len(STATION_WAYS)) % len(designs)]
            good = complete_design(design.seed)
            differing = [k for k, row in enumerate(design.rows) if row != good.rows[k]]
            row = differing[number % len(differing)]
            gate = read_gate(*without_station(design, row, way), book, Path(folder))
            found.counts[gate] += 1
            if gate == "open":
                found.by[way] += 1
                found.offenders.append(f"{design.kind} {design.seed}: {fault.name}, station {'AB'[row]} {way}")
    return found


def _moves(count: int, seed: int, found: Outcome) -> Iterator[tuple[tuple[Design, Worsening, str, int], Sequence[Row]]]:
    """Designs before a value is moved for the worse and after it, the directions in turn."""
    rng = random.Random(f"worse {seed}")
    table = worsenings()
    for pair in range(count):
        entry = table[pair % len(table)]
        for attempt in range(200):
            design = complete_design(seed * 1_000_000 + pair + attempt * count)
            if pair % 2:  # faulty ones too: they have more to lose
                design = rng.choice(faults_for(design)).plant(design, rng)
            if (moved := worsened(design, entry, rng)) is not None:
                yield (design, entry, "before", pair), design.rows
                yield (design, entry, moved[1], pair), moved[0]
                break
        else:
            found.counts["no design"] += 1
            found.by[f"no design for {entry.parameter} {entry.direction}"] += 1


def sweep_metamorphic(count: int, seed: int, book: Rulebook) -> Outcome:
    """A value moved for the worse: clauses that turn milder for it."""
    found = _outcome()
    before: dict[int, tuple[str, set[str], dict[str, int]]] = {}
    for (design, entry, what, pair), v, k in batched(_moves(count, seed, found), book):
        grades = {name: v.grade(name, k) for name in (*entry.clauses, *entry.passes) if name in v.clauses}
        if what == "before":
            before[pair] = v.gates[k], set(v.closing(k)), grades
            continue
        gate, closing, olds = before.pop(pair)
        if v.gates[k] == "open" and gate == "closed" and closing <= set(entry.eases):
            found.counts["gate opened as the list says"] += 1
        elif v.gates[k] == "open" and gate != "open":
            found.counts["gate opened"] += 1
            found.by[f"gate <- {entry.parameter} {entry.direction}"] += 1
            found.offenders.append(
                f"{design.kind} {design.seed} {design.faults}: {gate} by {sorted(closing)} -> open, {what}"
            )
        passed_on = any(grades[name] > olds[name] for name in entry.passes if name in grades)
        for clause in entry.clauses:
            if clause in grades:
                word = _moved(olds[clause], grades[clause], passed_on)
                found.counts[word] += 1
                if word == "milder":
                    found.by[f"{clause} <- {entry.parameter} {entry.direction}"] += 1
                    found.offenders.append(
                        f"{design.kind} {design.seed} {design.faults}: "
                        f"{clause} {olds[clause]} -> {grades[clause]}, {what}"
                    )
    return found


def _moved(old: int, new: int, passed_on: bool) -> str:
    """What became of the grade of a clause that a value was moved against."""
    if min(old, new) < 0:
        return "not judged"
    if new < old:
        return "milder, taken over as the list says" if passed_on else "milder"
    return "worse" if new > old else "same"


SWEEPS = {
    "complete": sweep_complete,
    "faults": sweep_faults,
    "blank": sweep_blank,
    "spoil": sweep_spoil,
    "station": sweep_station,
    "metamorphic": sweep_metamorphic,
}


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one sweep and print its counts."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--pairs", type=int, default=300)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--what", choices=sorted(SWEEPS), default="blank")
    parser.add_argument("--rulebook", default=None, help="version; the newest where absent")
    parser.add_argument("--shown", type=int, default=12, help="offenders shown")
    given = parser.parse_args(arguments)
    found = SWEEPS[given.what](given.pairs, given.seed, load(given.rulebook))
    print(f"{given.what}: {given.pairs} pairs, seed {given.seed}")
    print(found.text(given.shown))
    return 0


if __name__ == "__main__":
    sys.exit(main())
