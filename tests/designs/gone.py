"""What a value that is gone does to the verdicts: ``python -m tests.designs.gone --what WHAT --seed S``.

``milder``  every value of many designs and of the demo tables taken away, one at a time: does a clause that must be
            judged turn milder, although nothing that must be judged is left open and nothing tells what stands in?
``tables``  a demo table whose gate is open, one or two values moved until it closes, each of them then taken away or
            spoilt in the file: does the gate open?

The second asks of every chapter that a demo table states something for (retention, washers, springs, a described rotor,
heat); the first finds what no planted fault is at. Everything follows from the seed.
"""

import argparse
import csv
import random
import sys
import tempfile
from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Sequence
from itertools import islice
from pathlib import Path

import numpy as np

from linter.model.findings import TABLE_CHAPTER, ReviewResult
from linter.model.vocabulary import Parameter, parameter
from linter.reading import read_table
from linter.review.assess import FINDING, MET, NOT_ASSESSED, Assessed, ClauseReview, assess
from linter.review.defaults import with_defaults
from linter.rulebook.gates import must_rows
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook
from tests.designs.complete import Row, complete_design
from tests.designs.faults import faults_for
from tests.designs.rows import Stations, stations_from_rows
from tests.designs.spoil import VALUE_WAYS, Sheet, delimited, grid, number, sheet_text
from tests.designs.sweep import IDENTITY, Outcome, read_result, verdicts

ROOT = Path(__file__).parents[2]
TABLES = ("sample_exports/coolant-pump.csv", "tests/golden/described_rotor.csv", "tests/golden/small_fast.csv")
TOGETHER = 300

SECOND = {
    "residual_unbalance": "the balance grade says a figure too",
    "spring_load_tolerance": "the tolerances of rate and free length say it too",
    "preload_force": "the spring says it too",
    "spring_installed_length": "the chain of dimensions says it too",
    "spacer_stack": "the installed length and its tolerance say it too",
    "reference_speed": "beyond it is minor at most; the limiting speed must be stated",
    "free_ring": "a roller bearing that moves inside itself needs no free ring",
    "inner_ring_retention": "a ring that is not bonded is judged by its interference",
}
"""Parameters that say what another value says too, or that what is judged does without, and why."""
STANDS_FOR = {"radial_clearance": "clearance_class"}
"""The parameter that is told as assumed where one is gone."""


# ---------------------------------------------------------------------------------------------------------- milder


class Seen:
    """The verdicts on many machines, the first of them whole, the others without one value each."""

    def __init__(self, stations: Stations, book: Rulebook) -> None:
        self.assessed: Assessed = assess(with_defaults(stations, book), book)
        view = self.assessed.view
        self.starts, self.counts = view.starts, view.station_count.astype(int)
        self.machine = np.repeat(np.arange(view.machine_count), self.counts)
        self.must = {name: must_rows(r.clause, view) for name, r in self.assessed.reviews.items()}
        self.unjudged = np.zeros(view.machine_count, int)
        self.told: dict[int, set[str]] = defaultdict(set)
        for name, review in self.assessed.reviews.items():
            absent = (review.outcome == NOT_ASSESSED) & self.must[name]
            self.unjudged += view.to_machines(absent, "count") if review.clause.level == "station" else absent
            self._told(review, self.must[name] & np.isin(review.outcome, (MET, FINDING)))

    def _told(self, review: ClauseReview, judged: np.ndarray) -> None:
        by_station = review.clause.level == "station"
        told = [(a.parameter, np.asarray(a.rows)) for a in review.result.assumed]
        if by_station:
            stated = self.assessed.stations.assumed
            told += [(n, stated[n].rows) for n in (*review.clause.needs, *review.clause.uses) if n in stated]
        for name, rows in told:
            for row in np.flatnonzero(rows & judged).tolist():
                self.told[int(self.machine[row]) if by_station else row].add(name)

    def rows(self, machine: int, review: ClauseReview) -> range:
        if review.clause.level != "station":
            return range(machine, machine + 1)
        return range(int(self.starts[machine]), int(self.starts[machine] + self.counts[machine]))

    def milder(self, whole: int, machine: int, name: str) -> Iterator[str]:
        """Clauses that a machine without a value passes more easily than the whole one, untold."""
        if self.unjudged[machine] > self.unjudged[whole] or self.counts[machine] != self.counts[whole]:
            return
        if name in SECOND or {name, STANDS_FOR.get(name, name)} & self.told[machine]:
            return
        for clause, review in self.assessed.reviews.items():
            if not clause.startswith(f"{TABLE_CHAPTER}."):
                pairs = zip(self.rows(whole, review), self.rows(machine, review), strict=True)
                if any(self.must[clause][old] and self._milder(review, old, new) for old, new in pairs):
                    yield clause

    @staticmethod
    def _milder(review: ClauseReview, old: int, new: int) -> bool:
        before, after = int(review.outcome[old]), int(review.outcome[new])
        if before == FINDING and after not in (MET, FINDING):
            return True
        if before not in (MET, FINDING) or after not in (MET, FINDING):
            return False
        was, now = float(review.result.measure[old]), float(review.result.measure[new])
        return now < was * (1 - 1e-6) - 1e-9


def without_each(rows: Sequence[Row]) -> Iterator[tuple[str, list[Row]]]:
    """The rows without one value each, at every station and, of a station's value, at each of them."""
    for name in dict.fromkeys(name for row in rows for name in row if name not in IDENTITY):
        places: list[tuple[int, ...]] = [tuple(range(len(rows)))]
        if parameter(name).level == "station":
            places += [(k,) for k in range(len(rows)) if name in rows[k] and len(rows) > 1]
        for at in places:
            yield name, [{n: v for n, v in row.items() if n != name or k not in at} for k, row in enumerate(rows)]


def _milder_of(found: Outcome, title: str, seen: Seen, names: Sequence[str]) -> None:
    for k, name in enumerate(names, 1):
        clauses = list(seen.milder(0, k, name))
        found.counts["milder and untold" if clauses else "told, undecided, or no milder"] += 1
        if clauses:
            found.by.update(f"{clause} without {name}" for clause in clauses)
            found.offenders.append(f"{title}: without {name} milder {', '.join(clauses)}")


def sweep_milder(count: int, seed: int, book: Rulebook, tables: Sequence[str] = TABLES) -> Outcome:
    """Designs, every second one with a fault, and the demo tables without one value each."""
    found = Outcome(Counter(), Counter(), [])
    for place in range(count):
        design = complete_design(seed * 1_000_000 + place)
        rng = random.Random(f"gone {design.seed}")
        if place % 2:
            design = rng.choice(faults_for(design)).plant(design, rng)
        trials = [("", [dict(row) for row in design.rows]), *without_each(design.rows)]
        rows = [{**row, "machine": f"{k:05d}"} for k, (_, own) in enumerate(trials) for row in own]
        title = f"{design.kind} {design.seed} {design.faults}"
        _milder_of(found, title, Seen(stations_from_rows(rows), book), [name for name, _ in trials[1:]])
    with tempfile.TemporaryDirectory() as folder:
        for table in tables:
            for machine, given in sheets(ROOT / table):
                trials = [("", given.rows), *without_each(given.rows)]
                stations = _read([own for _, own in trials], Path(folder))
                _milder_of(found, machine, Seen(stations, book), [name for name, _ in trials[1:]])
    return found


# ---------------------------------------------------------------------------------------------------------- tables


def sheets(path: Path) -> Iterator[tuple[str, Sheet]]:
    """The machines of a table that has a row a station under canonical names."""
    with path.open(encoding="utf-8-sig", newline="") as stream:
        head, *rows = csv.reader(stream)
    names = [word.split(" [")[0] for word in head]
    machines: dict[str, list[dict[str, str]]] = defaultdict(list)
    for row in rows:
        cells = {name: text for name, text in zip(names, row, strict=True) if text}
        machines[cells["machine"]].append(cells)
    for machine, own in machines.items():
        yield machine, Sheet(own)


def _read(every: Iterable[Sequence[Row]], folder: Path) -> Stations:
    """Several versions of one machine, read from one table; version k is machine k."""
    rows = [{**row, "machine": f"{k:05d}"} for k, own in enumerate(every) for row in own]
    path = folder / "many.csv"
    path.write_bytes(delimited(grid(Sheet(rows))))
    return read_table(path).stations


Move = tuple[str, tuple[int, ...], str]
"""A parameter, the rows that it is moved in, and its new text."""


def _texts(entry: Parameter, text: str) -> list[str]:
    """Other values of a cell, far and near."""
    if entry.kind == "choice":
        return [word for word in entry.choices if word != text]
    head, _, tail = text.partition(" ")
    try:
        value = float(head)
    except ValueError:
        return []
    found = [number(float(f"{value * factor:.6g}")) for factor in (0.01, 0.2, 0.6, 0.9, 1.1, 1.6, 5, 100) if value]
    found = [f"{word} {tail}".strip() for word in found or ("0.5", "5", "50", "500")]
    if entry.change == "class":
        words = "f7 g6 h9 k6 n6 s6" if entry.name.startswith("shaft") else "F7 G7 H9 K6 N6 S6"
        found += [f"{head} {word}" for word in words.split()]
    if "temperature" in entry.name:
        found += ["-60", "150", "220"]
    return found


def moves(given: Sheet) -> list[Move]:
    """Every value of a sheet that can be moved, and where to."""
    found = []
    for name in given.names:
        if name not in IDENTITY:
            entry = parameter(name)
            every = tuple(range(len(given.rows)))
            places = [every] if entry.level == "machine" else [*((k,) for k in every), every]
            found += [(name, at, text) for at in places for text in _texts(entry, given.rows[at[0]].get(name, ""))]
    return found


def moved(given: Sheet, change: Iterable[Move]) -> Sheet:
    """The sheet with some values moved; an empty text takes one away."""
    rows = [dict(row) for row in given.rows]
    for name, at, text in change:
        for k in at:
            rows[k][name] = text
    return Sheet([{n: t for n, t in row.items() if t} for row in rows])


def _gates(every: Sequence[Sheet], book: Rulebook, folder: Path) -> Iterator[tuple[str, list[str]]]:
    waiting = iter(every)
    while part := list(islice(waiting, TOGETHER)):
        found = verdicts(with_defaults(_read([s.rows for s in part], folder), book), book)
        for k in range(len(part)):
            yield found.gates[k], found.closing(k)


def why_open(result: ReviewResult, closing: Sequence[str], names: Sequence[str]) -> str:
    """Why a gate may open after values are gone; empty where nothing says why."""
    if all(clause.startswith(f"{TABLE_CHAPTER}.") for clause in closing):
        return "what was gone was impossible or contradicted"
    told = {a.parameter for item in result.assessments if item.must for a in item.assumed}
    derived = {name for station in result.stations for name in station.derived}
    for name in names:
        if name in told or STANDS_FOR.get(name) in told:
            return "carried by a counted assumption"
        if name in derived:
            return "the designation says it"
        if name in SECOND:
            return SECOND[name]
    return ""


def sweep_tables(count: int, seed: int, book: Rulebook) -> Outcome:
    """Demo tables made faulty by one or two values, each of which is then taken away or spoilt."""
    found = Outcome(Counter(), Counter(), [])
    rng = random.Random(f"tables {seed}")
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        whole = [one for table in TABLES for one in sheets(ROOT / table)]
        gates = [next(_gates([given], book, folder))[0] for _, given in whole]
        opened = [one for one, gate in zip(whole, gates, strict=True) if gate == "open"]
        for machine, given in opened:
            every = moves(given)
            changes = [tuple(rng.sample(every, 1 + k % 2)) for k in range(count // len(opened))]
            faulty = [moved(given, change) for change in changes]
            for change, one, (gate, closing) in zip(changes, faulty, _gates(faulty, book, folder), strict=True):
                found.counts[f"made {gate}"] += 1
                if gate == "closed":
                    _lost(found, rng, (machine, change, one, closing), book, folder)
    return found


def _lost(
    found: Outcome,
    rng: random.Random,
    case: tuple[str, tuple[Move, ...], Sheet, list[str]],
    book: Rulebook,
    folder: Path,
) -> None:
    """One faulty table after each of its moved values is lost in some way."""
    machine, change, faulty, closing = case
    for name, at, _ in change:
        way = rng.choice(list(VALUE_WAYS))
        spoilt = Sheet([dict(row) for row in faulty.rows])
        for k in at:
            VALUE_WAYS[way](spoilt, name, k)
        result = read_result(*sheet_text(spoilt, rng.choice(("wide", "long", "transposed", "json"))), book, folder)
        gate = "refused" if result is None else result.gate
        why = why_open(result, closing, [name]) if result is not None and gate == "open" else ""
        found.counts[f"open: {why}" if why else gate] += 1
        if gate == "open" and not why:
            found.by[f"{', '.join(closing[:3])} without {name}"] += 1
            found.offenders.append(f"{machine}: {change}, {name} {way}")


SWEEPS = {"milder": sweep_milder, "tables": sweep_tables}


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one sweep and print its counts."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--pairs", type=int, default=100, help="designs, or tables")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--what", choices=sorted(SWEEPS), default="milder")
    parser.add_argument("--rulebook", default=None, help="version; the newest where absent")
    given = parser.parse_args(arguments)
    found = SWEEPS[given.what](given.pairs, given.seed, load(given.rulebook))
    print(f"{given.what}: {given.pairs}, seed {given.seed}")
    print(found.text())
    return 0


if __name__ == "__main__":
    sys.exit(main())
