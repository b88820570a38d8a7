"""How long a review takes: the assessment alone by number of stations, and a whole cold call."""

import subprocess
import sys
import time
from pathlib import Path

import pytest

from linter.review.assess import assess
from linter.rulebook.load import load

SAMPLES = Path(__file__).parents[1] / "sample_exports"


def test_assess(benchmark, stations):
    book = load()
    assess(stations, book)
    assessed = benchmark.pedantic(lambda: assess(stations, book), rounds=3)
    if benchmark.stats is not None:  # None where benchmarks only run to see that they run
        benchmark.extra_info["stations_per_second"] = len(stations) / benchmark.stats.stats.min
    assert len(assessed.reviews) == sum(clause.off is None for clause in book.clauses.values())


@pytest.mark.parametrize("keep", ["figures", "verdicts"])
@pytest.mark.parametrize("count", [100_000, 1_000_000])
def test_columns_in_a_fresh_process(benchmark, sized, count, keep):
    """Clause-assessments per second of processor time, and the peak of memory, of one large table."""
    pytest.importorskip("resource")
    count = sized(count)  # 20 000 at least once: more than are assessed at a time

    def run():
        call = [sys.executable, "-c", _COLUMNS, str(count), keep]
        done = subprocess.run(call, cwd=Path(__file__).parent, capture_output=True, text=True, check=True)
        return done.stdout.split()

    assessments, seconds, before, peak = map(float, benchmark.pedantic(run, rounds=1))
    assert assessments > count
    benchmark.extra_info["assessments_per_second"] = assessments / seconds
    benchmark.extra_info["peak_mib"] = peak / 1024
    benchmark.extra_info["stations_mib"] = before / 1024


_COLUMNS = """
import resource, sys, time
from conftest import make_stations
from linter import assess, load_rulebook
count, keep = int(sys.argv[1]), sys.argv[2]
stations, book = make_stations(count), load_rulebook()
assess(stations.take(slice(0, 100)), book)
before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
start = time.process_time()
found = assess(stations, book, keep=keep)
seconds = time.process_time() - start
print(sum(len(r.outcome) for r in found.reviews.values()), seconds, before,
      resource.getrusage(resource.RUSAGE_SELF).ru_maxrss)
"""


def test_cold_review_against_bare_import(benchmark, tmp_path):
    """The ratio of one cold review of a two-station workbook to ``import pandas, openpyxl``."""
    table = SAMPLES / "respirator-blower.xlsx"
    review = [sys.executable, "-m", "linter.command.cli", "review", str(table), "--out", str(tmp_path)]
    bare = [sys.executable, "-c", "import pandas, openpyxl"]

    def run(command):
        start = time.perf_counter()
        subprocess.run(command, check=False, capture_output=True)
        return time.perf_counter() - start

    if benchmark.enabled:
        run(review), run(bare)
    benchmark.pedantic(lambda: run(review), rounds=5)
    if benchmark.stats is not None:
        imports = min(run(bare) for _ in range(5))
        benchmark.extra_info["ratio_to_bare_import"] = benchmark.stats.stats.min / imports


@pytest.mark.parametrize("count", [2, 1000])
def test_whole_command(benchmark, sized, tmp_path, count):
    """Processor time, peak of memory and bytes of JSON of one call that writes html and json."""
    resource = pytest.importorskip("resource")
    head, *rows = (Path(__file__).parents[1] / "tests" / "golden" / "seats.csv").read_text("utf-8-sig").splitlines()
    table, count = tmp_path / "table.csv", sized(count)
    lines = [f"{number} {row}" for number in range(count // 2) for row in rows[:2]]
    table.write_text("\n".join([head, *lines]) + "\n", encoding="utf-8")
    call = [sys.executable, "-m", "linter.command.cli", "review", str(table), "--out", str(tmp_path / "out")]

    def run():
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        done = subprocess.run([*call, "--memory", "8000"], cwd=Path(__file__).parents[1], capture_output=True)
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        assert done.returncode in (0, 1, 3), done.stderr
        return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime, after.ru_maxrss

    seconds, peak = benchmark.pedantic(run, rounds=1)
    benchmark.extra_info["processor_seconds"] = seconds
    benchmark.extra_info["peak_mib"] = peak / 1024
    result = tmp_path / "out" / "table.result.json"
    benchmark.extra_info["json_kb_a_station"] = result.stat().st_size / 1000 / count
