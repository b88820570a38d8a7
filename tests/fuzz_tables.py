"""Random tables through reading and assessment, one in many through changes and every writer; a seed repeats them.

``python -m tests.fuzz_tables --seconds 60 --seed 1`` or ``--tables 100000 --whole 5000 --seed 1``. The tables are made
by a grammar, so that most of them get past the reader: a complete arrangement or a choice of parameters, most of them
narrowed to some of its columns, its values moved, spoilt or replaced by odd ones, in one of eight layouts with the
titles, notes, blank rows and strange columns that tables have. A table gives an input error of one line, or a result in
which every check ran and which every writer can write. Anything else (an exception, more than five seconds of processor
time as a brisk machine counts them, more than 500 MiB) ends the run with status 1 and the table printed. So does a run
of which less than half got past the reader: it would say nothing.
"""

import argparse
import json
import math
import random
import resource
import sys
import tempfile
import time
import traceback
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from linter.model.stations import Stations
from linter.model.vocabulary import Parameter, parameter, vocabulary
from linter.reading import InputError, read_table
from linter.report.writers import WRITERS, Job
from linter.review.assess import assess
from linter.review.plan.planned import with_plan
from linter.review.records import review_reading
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook
from tests.designs.complete import complete_design
from tests.designs.spoil import Sheet, delimited, grid, heading, long_grid, nested, number, sheet, workbook

SECONDS, MEBIBYTES = 5.0, 500.0
"""Bounds for one table and for the run."""
YARDSTICK = 0.05
"""Processor time of the work in :func:`slowness` on the machine that the bound was set on [s]."""
TOGETHER = 40
"""Tables assessed at once; a fault in one of them is found again alone."""

ODD = (
    "", "-", "—", "tbd", "n/a", "NaN", "?", "0", "-1", "1e9", "1e-9", "1e308", "-1e308", "1e-320", "-0.0", "inf",
    "4 k5", "Ø4 H7/g6", "4 +0.006/+0.001", "4 -0.006/-0.001", "4 +9/-9", "max 4", "min 4", "3-8", "8-3", "4 ±0",
    "+41.2±0.05 -12±0.02 -4 0/-0.12", "+1e308 -1e308", "+4±", "4 mm", "4 in", "4 smoots", "4 K", "1,5", "1.234,5",
    "1'234.5", "40 000", "4 e7", "yes", "*", "***", "#REF!", "#DIV/0!", "=1+1", "true", "null", "\u202e", "½", "3/8",
    "⌰ 0.005 A-B", "⌭ 0.002", "42CrMo4", "608-2RS C3", "6000", "7000 C TA P4 UL", "G 2.5", "Ra 0.4", "IT5/2", "H7",
    "k5", "see drawing", "4 5", "4;5", "4 (5)", "(4)", "4*", "~4", "<4", "≥ 4", "4 [1]", "9" * 40, "x" * 300, "a\nb",
    '"', "'", "none", "spring", "Feder", "内輪", "2026-01-31", "12:30", "50 %", "0x10", "٤", "4.000.000", "1e", "e5",
    ".",    "+", "//",
)  # fmt: skip
HEADINGS = (
    "note", "remark", "Pos.", "#", "", "x", "material", "checked by", "shaft_seat_diameter (new)", "bore_diameter old",
    "proposed", "d", "D", "B", "n", "Bohrung", "diamètre", "軸", "Ø", "upper", "lower", "nominal", "unit", "value",
    "name", "speed_max", "station", "machine", "A", "1", "=A1", "Sum",
)  # fmt: skip
TITLES = ("Drawing: RB-1", "Rev. C", "Units: mm", "Units: inch", "Seats of the rotor", "page 1 of 2", "# exported", "-")
LAYOUTS = ("wide", "long", "transposed", "nested", "records", "tree", "equations", "xlsx")


def figure(rng: random.Random, entry: Parameter) -> float:
    """A number of any size that such a parameter can have, seldom one beyond."""
    low, high = entry.least, entry.most
    if rng.random() < 0.05:
        return rng.choice((low, high, -high, 0.0, 2.0 * high))
    if low <= 0.0:
        return rng.uniform(low, high) if rng.random() < 0.5 else rng.uniform(0.0, min(high, 300.0))
    return 10.0 ** rng.uniform(math.log10(low), math.log10(high))


def text_of(rng: random.Random, entry: Parameter) -> str:
    """A value that such a parameter may have."""
    if entry.kind == "choice":
        return rng.choice(entry.choices)
    if entry.kind == "text":
        return rng.choice(("A", "B", "RB-1", "C", "+20±0.3 -12", "608", "7204 C"))
    value = float(f"{figure(rng, entry):.5g}")
    if entry.kind == "number":
        return number(value)
    size = abs(value) * 10.0 ** rng.uniform(-5, 1)
    tolerances = ("", "", " k5", " H7", " js6", f" ±{size:.3g}", f" +{size:.3g}/-{size:.2g}", f" 0/-{size:.3g}")
    return number(value) + rng.choice(tolerances)


def design_cells(rng: random.Random) -> list[dict[str, str]]:
    """Cells of a complete arrangement, or of several."""
    rows: list[dict[str, str]] = []
    for _ in range(rng.choice((1, 1, 1, 2))):
        rows += sheet(complete_design(rng.randrange(10**6))).rows
    if rng.random() < 0.1:
        rows.append({**rng.choice(rows), "station": "C"})
    return rows


def drawn_cells(rng: random.Random) -> list[dict[str, str]]:
    """Cells of a random choice of parameters."""
    entries = [entry for entry in vocabulary().values() if entry.name not in ("machine", "station")]
    chosen = rng.sample(entries, rng.randint(1, len(entries)))
    rows = []
    for place in range(rng.randint(1, 5)):
        row = {"machine": f"M{place // 2}", "station": "AB"[place % 2]}
        rows.append(row | {entry.name: text_of(rng, entry) for entry in chosen if rng.random() < 0.95})
    return rows


def narrowed(rng: random.Random, rows: list[dict[str, str]]) -> list[dict[str, str]]:
    """One time in ten the rows as they are, else some of their columns: as many tables of few columns as of many."""
    if rng.random() < 0.1:
        return rows
    names = sorted({name for row in rows for name in row} - {"machine", "station"})
    count = min(len(names), round(math.exp(rng.uniform(math.log(2), math.log(16)))))
    kept = {"machine", "station", *rng.sample(names, count)}
    return [{name: text for name, text in row.items() if name in kept} for row in rows]


def spoil(rng: random.Random, rows: list[dict[str, str]]) -> None:
    """Some cells moved by a factor, made odd, exchanged, or gone."""
    for _ in range(rng.choice((0, 1, 1, 2, 3, 10, 60))):
        row = rng.choice(rows)
        name = rng.choice(list(row))
        way = rng.randrange(5)
        if way == 0:
            row[name] = rng.choice(ODD)
        elif way == 1:
            row[name] = text_of(rng, parameter(name))
        elif way == 2 and len(row) > 1:
            row.pop(name)
        elif way == 3:
            row[name] = row[rng.choice(list(row))]
        else:
            row[name] = f"{row[name]}{rng.choice(ODD)}"


def with_noise(rng: random.Random, rows: list[list[str]]) -> list[list[str]]:
    """Titles above, blank and comment rows between, notes below, columns of other things."""
    rows = [list(row) for row in rows]
    for _ in range(rng.choice((0, 0, 1, 2))):
        place = rng.randint(0, len(rows[0]))
        for k, row in enumerate(rows):
            row.insert(place, rng.choice(HEADINGS) if k == 0 else rng.choice(ODD))
    for _ in range(rng.choice((0, 0, 1, 3))):
        last = list(rows[-1])
        what = rng.choice(([], [""] * len(rows[0]), [rng.choice(TITLES)], ["#", *last], last))
        rows.insert(rng.randint(0, len(rows)), what)
    for _ in range(rng.choice((0, 0, 1, 2))):
        rows.insert(0, [rng.choice(TITLES), rng.choice((*TITLES, *ODD))])
    if rng.random() < 0.05:
        rows = [row[: rng.randint(0, len(row))] for row in rows]
    return rows


def tree(rng: random.Random, given: Sheet) -> bytes:
    """JSON of any nesting: by machine and station, values as texts, numbers, lists or objects."""

    def value(text: str) -> Any:
        way = rng.randrange(8)
        if way == 0:
            return {"value": text, "override": rng.choice(ODD)}
        if way == 1:
            return [text, rng.choice(ODD)]
        if way == 2:
            return {
                "nominal": text,
                "upper": rng.choice(ODD),
                "lower": rng.choice(ODD),
                "unit": rng.choice(("mm", "um", "x")),
            }
        try:
            return float(text) if way > 4 and math.isfinite(float(text)) else text
        except ValueError:
            return text

    found: dict[str, Any] = {}
    for row in given.rows:
        own = {given.label(n, unit=False): value(text) for n, text in row.items() if n not in ("machine", "station")}
        found.setdefault(row.get("machine", ""), {})[row.get("station", "")] = own
    return json.dumps(found if rng.random() < 0.7 else {"a": [found, {"units": {"length": "mm"}}]}).encode()


def equations(rng: random.Random, given: Sheet) -> bytes:
    """Lines of an equation file."""
    lines = []
    for row in given.rows:
        for name, text in row.items():
            unit = parameter(name).unit if rng.random() < 0.5 else ""
            lines.append(f'"{name}@{row.get("station", "")}"= {text}{unit.replace("1", "")}')
    return "\n".join(lines).encode("utf-8", "replace")


def table(rng: random.Random) -> tuple[str, bytes]:
    """Suffix and content of a table."""
    rows = narrowed(rng, design_cells(rng) if rng.random() < 0.6 else drawn_cells(rng))
    spoil(rng, rows)
    for row in rows:
        row.setdefault("machine", "M")
        row.setdefault("station", "A")
    given = Sheet(rows)
    for name in rng.sample(given.names, min(len(given.names), rng.choice((0, 0, 0, 1, 3)))):
        given.labels[name] = rng.choice(
            (name.replace("_", " "), name.upper(), heading(name)[:-1], rng.choice(HEADINGS))
        )
    layout = rng.choice(LAYOUTS)
    if layout == "nested":
        return ".json", nested(given)
    if layout == "tree":
        return ".json", tree(rng, given)
    if layout == "equations":
        return ".txt", equations(rng, given)
    cells = long_grid(given) if layout in ("long", "records") else grid(given)
    if layout == "transposed":
        cells = [list(row) for row in zip(*cells, strict=True)]
    if layout == "records":
        head, *body = cells
        return ".json", json.dumps([dict(zip(head, row, strict=True)) for row in body]).encode()
    cells = with_noise(rng, cells)
    if layout == "xlsx":
        return ".xlsx", workbook([[_legal(text) for text in row] for row in cells])
    return ".csv", delimited(cells, rng.choice(",;\t|"), rng.choice(("\n", "\r\n")))


def _legal(text: str) -> str:
    return "".join(sign for sign in text if sign >= " " or sign in "\n\t")


@dataclass
class Run:
    """One run: the rulebook, the folder that tables are written to, and what was counted."""

    book: Rulebook
    folder: Path
    counts: Counter[str] = field(default_factory=Counter)
    slowest: float = 0.0
    waiting: list[tuple[bytes, Stations]] = field(default_factory=list)

    def one(self, suffix: str, content: bytes, whole: bool) -> None:
        """Take one table through; AssertionError where it is not as it should be."""
        path = self.folder / f"table{suffix}"
        path.write_bytes(content)
        begin = time.process_time()
        try:
            reading = read_table(path)
        except InputError as error:
            assert "\n" not in str(error), str(error)
            self.counts["refused"] += 1
            return
        finally:
            self._timed(begin)
        self.counts["read"] += 1
        self.waiting.append((content, reading.stations))
        if whole:
            self.counts["whole"] += 1
            begin = time.process_time()
            result = with_plan(review_reading(reading, self.book), reading.stations, self.book)
            assert result.failures == (), result.failures
            for kind, writer in WRITERS.items():
                made = writer.content(Job(result, self.book, path))
                assert made if isinstance(made, bytes) else b"".join(made), kind
            self._timed(begin)
        if len(self.waiting) >= TOGETHER:
            self.assess()

    def assess(self) -> None:
        """Assess what waits; where a check fails, the table that it fails on is told."""
        together = [stations for _, stations in self.waiting]
        if together and self._failures(Stations.concat(together)):
            for content, stations in self.waiting:
                assert not (found := self._failures(stations)), f"{found}\n{content.decode(errors='replace')}"
            raise AssertionError(f"only together: {self._failures(Stations.concat(together))}")
        self.waiting.clear()

    def _failures(self, stations: Stations) -> list[str]:
        reviews = assess(stations, self.book, keep="figures").reviews.values()
        return [str(review.failure) for review in reviews if review.failure]

    def _timed(self, begin: float) -> None:
        taken = time.process_time() - begin
        self.slowest = max(self.slowest, taken)
        assert taken < SECONDS or taken < SECONDS * slowness(), f"{taken:.1f} s of processor time"


def slowness() -> float:
    """How many times longer than on a brisk machine a piece of work takes here and now; 1 at least."""
    begin = time.process_time()
    for turn in range(40):
        words = [f"{turn}_{place}" for place in range(5000)]
        assert len({word: len(word) for word in sorted(words)}) == len(words)
    return max(1.0, (time.process_time() - begin) / YARDSTICK)


def peak() -> float:
    """Largest memory of this process so far [MiB]."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024.0


def main(arguments: list[str] | None = None) -> int:
    """Run as the command line says."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--seconds", type=float, default=math.inf)
    parser.add_argument("--tables", type=int, default=10**9)
    parser.add_argument("--whole", type=int, help="how many of the tables go through changes and writers; 1 in 20")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--start", type=int, default=0, help="number of the first table")
    parser.add_argument("--go-on", action="store_true", help="count faults instead of ending at the first")
    parser.add_argument("--rulebook", default="current")
    given = parser.parse_args(arguments)
    every = 20 if given.whole is None else max(1, given.tables // max(1, given.whole))
    end = time.monotonic() + given.seconds
    with tempfile.TemporaryDirectory() as folder:
        run = Run(load(given.rulebook), Path(folder))
        tried, faults = 0, 0
        while tried < given.tables and time.monotonic() < end:
            suffix, content = table(random.Random(f"{given.seed} {given.start + tried}"))
            tried += 1
            try:
                run.one(suffix, content, tried % every == 0)
                if tried == given.tables:
                    run.assess()
            except Exception:
                faults += 1
                traceback.print_exc()
                shown = content.decode(errors="replace") if content[:2] != b"PK" else "a workbook"
                print(f"table {given.start + tried - 1} of seed {given.seed}:\n{shown}", file=sys.stderr)
                run.waiting.clear()
                if not given.go_on:
                    return 1
    told = ", ".join(f"{count} {word}" for word, count in sorted(run.counts.items()))
    print(
        f"{tried} tables of seed {given.seed}: {told}; slowest {run.slowest:.2f} s, "
        f"peak {peak():.0f} MiB, {faults} faults"
    )
    return 0 if not faults and run.counts["read"] >= 0.5 * tried and peak() < MEBIBYTES else 1


if __name__ == "__main__":
    sys.exit(main())
