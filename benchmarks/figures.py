"""One table of figures: ``python -m benchmarks.figures [--large] [--write]``; minutes, with ``--large`` half an hour.

Everything is processor time (user and system, of all processes), which a busy machine stretches less than the clock;
the least of several rounds where a round is short, the median of a pair where two things are compared. The program runs
from its compiled modules, as it does where it is installed. ``--write`` puts the table into ``docs/performance.md``.
"""

import argparse
import json
import os
import platform
import resource
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

import numpy as np

from benchmarks import spreadsheet
from benchmarks.conftest import make_stations
from benchmarks.tables import DESIGNS, write_drawings, write_spoiled, write_table
from linter.review.assess import assess
from linter.rulebook.load import load

ROOT = Path(__file__).resolve().parents[1]
PAGE = ROOT / "docs" / "performance.md"
BEGIN, END = "<!-- figures: written by python -m benchmarks.figures --write -->", "<!-- end of figures -->"
#: Rulebooks of the archive.
VERSIONS = ("2026.5", "2026.6")
Row = tuple[str, float, str, float | None, float | None, float | None]


def processor_time() -> float:
    """Seconds of this process and of those it waited for."""
    return sum(sum(resource.getrusage(who)[:2]) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))


def spent(work: Callable[[], object], rounds: int = 1) -> float:
    """Least processor time of some rounds."""
    found = []
    for _ in range(rounds):
        before = processor_time()
        work()
        found.append(processor_time() - before)
    return min(found)


def python(*arguments: str) -> subprocess.CompletedProcess[bytes]:
    """A fresh process of this Python."""
    return subprocess.run([sys.executable, *arguments], cwd=ROOT, capture_output=True, check=False)


def paired(one: Callable[[], object], other: Callable[[], object], rounds: int) -> tuple[float, float]:
    """Medians of the processor time of two things done in turn."""
    one(), other()
    first, second = zip(*((spent(one), spent(other)) for _ in range(rounds)), strict=True)
    return statistics.median(first), statistics.median(second)


#: The command, with its own peak of memory as its last line; the system counts that of a child from its parent's on.
COMMAND = """
import atexit, pathlib, re, sys
status = pathlib.Path("/proc/self/status")
atexit.register(lambda: print("peak", re.search(r"VmHWM:\\s+(\\d+)", status.read_text())[1], file=sys.stderr))
from linter.command.cli import main
main()
"""


def review(table: Path, out: Path, *options: str) -> str:
    """The whole command; gives the peak of memory in MiB, empty where the system does not tell it."""
    linux = Path("/proc/self/status").exists()
    how = ("-c", COMMAND) if linux else ("-m", "linter.command.cli")
    done = python(*how, "review", str(table), "--out", str(out), *options)
    if done.returncode not in (0, 1, 3):
        raise RuntimeError(done.stderr.decode())
    return f"{int(done.stderr.split()[-1]) // 1024} MiB" if linux else ""


class Figures:
    """Gathers the rows of the table."""

    def __init__(self, folder: Path, large: bool) -> None:
        self.folder, self.large, self.rows = folder, large, list[Row]()
        self.bare = 1.0

    def add(self, what: str, seconds: float, each: str, table: Path | None = None) -> None:
        """One row; with the file that it is about, the ratios to the parse of pandas."""
        text = default = None
        if table is not None:
            import pandas as pd

            pd.read_csv(table, sep=";", dtype=str)
            text = seconds / spent(lambda: pd.read_csv(table, sep=";", dtype=str), 5)
            default = seconds / spent(lambda: pd.read_csv(table, sep=";"), 5)
        self.rows.append((what, seconds, each, seconds / self.bare, text, default))
        print(f"{what}: {seconds:.3f} s; {each}", file=sys.stderr, flush=True)

    def run(self) -> None:
        """All of it, small things first."""
        self.cold()
        self.columns()
        checks = self.whole()
        self.drawings()
        self.archive()
        self.sheet(checks)

    def cold(self) -> None:
        """One small table, from the start of a process to its end, each in turn with the bare import."""

        def bare() -> object:
            return python("-c", "import pandas, openpyxl")

        found = []
        out = self.folder / "cold"
        for kind, table in (
            ("CSV", ROOT / "sample_exports" / "coolant-pump.csv"),
            ("xlsx", write_spoiled(self.folder / "spoiled.xlsx")),
        ):
            call = ("-m", "linter.command.cli", "review", str(table), "--out", str(out))
            seconds, import_alone = paired(lambda c=call: python(*c), bare, 9)
            findings = sum(summary_of(out / f"{table.stem}.result.json")["severities"].values())
            what = f"cold review of two positions, {kind}, {findings} findings" + " and their plan" * (findings > 0)
            found.append((what, seconds, import_alone))
        self.bare = statistics.median(import_alone for _, _, import_alone in found)
        self.add("`import pandas, openpyxl`", self.bare, "")
        for what, seconds, import_alone in found:
            self.add(what, seconds * self.bare / import_alone, "")

    def columns(self) -> None:
        """The assessment alone."""
        book = load()
        clauses = sum(clause.off is None for clause in book.clauses.values())
        for count in (1, 1000, 100_000, 1_000_000):
            stations = make_stations(count)
            assess(stations.take(slice(0, min(count, 1000))), book, keep="figures")
            seconds = spent(lambda table=stations: assess(table, book, keep="figures"), 3 if count <= 1000 else 1)
            rate = count * clauses / seconds / 1e6
            self.add(f"assessment as columns, {count:,} stations", seconds, f"{rate:.2f} million assessments/s")

    def whole(self) -> float:
        """Reading and whole command; gives the seconds of one check at 2 000 stations."""
        from linter.reading import read_table

        each = 0.0
        sizes = [(2, 0.0, DESIGNS), (1000, 0.0, DESIGNS), (1000, 0.4, DESIGNS), (1000, 0.4, 1000), (2000, 0.0, 1000)]
        for count, faulty, designs in (*sizes, *(((20_000, 0.0, DESIGNS),) if self.large else ())):
            table = write_table(self.folder / f"t{count}-{faulty}-{designs}.csv", count, faulty, designs)
            if not faulty:
                read_table(table)
                self.add(f"reading, {count:,} stations, CSV", spent(lambda t=table: read_table(t), 3), "", table)
            out = self.folder / "whole"
            before = processor_time()
            peak = review(table, out)
            seconds = processor_time() - before
            size = (out / f"{table.stem}.result.json").stat().st_size / 1000 / count
            with_faults = f", {100 * faulty:.0f} % of the machines faulty" if faulty else ""
            with_faults += f", {designs} designs" if faulty or designs != DESIGNS else ""
            note = f"{1000 * seconds / count:.1f} ms and {size:.0f} kB of JSON a station, {peak}"
            self.add(f"whole command, html and json, {count:,} stations{with_faults}", seconds, note, table)
            if count == 2000:
                each = seconds / sum(summary_of(out / f"{table.stem}.result.json")["outcomes"].values())
        return each

    def drawings(self) -> None:
        """A folder of drawings by one process and by several."""
        count = 1000
        folder = self.folder / "drawings"
        folder.mkdir()
        write_drawings(folder, count)
        for workers in (1, os.cpu_count() or 1):
            seconds = spent(lambda w=workers: review(folder, self.folder / f"by{w}", "--workers", str(w)))
            self.add(
                f"folder of {count:,} drawings, {workers} processes",
                seconds,
                f"{1000 * seconds / count:.0f} ms a drawing",
            )

    def archive(self) -> None:
        """The archive: files read and judged, and stations from Parquet under two rulebooks."""
        try:
            from linter.review.archive.columns import to_table
            from linter.review.archive.run import Archive
            from linter.review.archive.stages import judge_batch, write_whole
            from linter.review.archive.workers import Processes
        except ImportError:
            return
        count = 10_000 if self.large else 1000
        folder = self.folder / "archive"
        folder.mkdir()
        paths = write_drawings(folder, count)
        archive = Archive(folder, self.folder / "out", Processes(os.cpu_count() or 1))
        book = load(VERSIONS[1])
        seconds = spent(lambda: archive.judge(archive.read(paths), book, VERSIONS[1], "major"))
        self.add(f"archive, {count:,} files read and judged", seconds, f"{1000 * seconds / count:.1f} ms a file")
        parts = []
        for start in range(0, 100_000, 16_000):
            part = self.folder / f"part{start}.parquet"
            write_whole(part, to_table([(0, make_stations(min(16_000, 100_000 - start)))]))
            parts.append(str(part))
        seconds, clauses = 0.0, 0
        for version in VERSIONS:
            book = load(version)
            clauses += sum(clause.off is None for clause in book.clauses.values())
            out = self.folder / version
            out.mkdir()
            seconds += spent(lambda b=book, o=out: [judge_batch(part, b, str(o)) for part in parts])
        self.per_check = seconds / (100_000 * clauses)
        note = f"{1e6 * self.per_check:.2f} µs a check"
        self.add("archive, 100,000 stations under two rulebooks, Parquet to Parquet", seconds, note)

    def sheet(self, whole: float) -> None:
        """The spreadsheet at 2 000 stations."""
        if spreadsheet.office() is None:
            return
        recalculated, everything, checks = spreadsheet.recalculation(2000)
        one, all_of_it = recalculated / checks, everything / checks
        note = f"{1e6 * one:.1f} µs a check; the archive {one / self.per_check:.0f} times as fast a check"
        self.add("spreadsheet, 2,000 rows of 20 checks, recalculation alone", recalculated, note)
        note = (
            f"{1e6 * all_of_it:.0f} µs a check; the archive {all_of_it / self.per_check:.0f} times as fast a check, "
            f"the whole command ({1e6 * whole:.0f} µs) {all_of_it / whole:.1f} times"
        )
        self.add("spreadsheet, the same loaded, worked out and saved", everything, note)

    def text(self) -> str:
        """The table as Markdown."""
        lines = [
            f"Python {platform.python_version()}, numpy {np.__version__}, {platform.machine()}, "
            f"{os.cpu_count()} processors ({model()}), {time.strftime('%Y-%m-%d')}.",
            "",
            "| what | processor time, s | each | to bare import | to pandas, text | to pandas, default |",
            "| --- | ---: | --- | ---: | ---: | ---: |",
        ]
        for what, seconds, each, *ratios in self.rows:
            shown = ["" if ratio is None else f"{ratio:.2f}" if ratio < 10 else f"{ratio:.0f}" for ratio in ratios]
            lines.append(f"| {what} | {seconds:.3g} | {each} | {' | '.join(shown)} |")
        return "\n".join(lines) + "\n"


def summary_of(result: Path) -> dict[str, dict[str, int]]:
    """The counts of a result file."""
    found: dict[str, dict[str, int]] = json.loads(result.read_text(encoding="utf-8"))["summary"]
    return found


def model() -> str:
    """The processor, where the system tells it."""
    try:
        lines = Path("/proc/cpuinfo").read_text(encoding="utf-8").splitlines()
    except OSError:
        return platform.processor()
    return next((line.split(":", 1)[1].strip() for line in lines if line.startswith("model name")), "unknown")


def main() -> None:
    """Measure, print, and write where asked."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--large", action="store_true", help="20 000 stations and 10 000 files too")
    options.add_argument("--write", action="store_true", help="put the table into docs/performance.md")
    asked = options.parse_args()
    os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
    with tempfile.TemporaryDirectory() as folder:
        figures = Figures(Path(folder), asked.large)
        figures.run()
    print(figures.text())
    if asked.write:
        before, rest = PAGE.read_text(encoding="utf-8").split(BEGIN)
        PAGE.write_text(f"{before}{BEGIN}\n{figures.text()}{END}{rest.split(END)[1]}", encoding="utf-8")


if __name__ == "__main__":
    main()
