"""How long a review takes: the assessment alone by number of stations, and a whole cold call."""

import subprocess
import sys
import time
from pathlib import Path

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


def test_cold_review_against_bare_import(benchmark, tmp_path):
    """The ratio of one cold review of a two-station workbook to ``import pandas, openpyxl``."""
    table = SAMPLES / "respirator-blower.xlsx"
    review = [sys.executable, "-m", "linter.command.cli", "review", str(table), "--out", str(tmp_path)]
    bare = [sys.executable, "-c", "import pandas, openpyxl"]

    def run(command):
        start = time.perf_counter()
        subprocess.run(command, check=False, capture_output=True)
        return time.perf_counter() - start

    run(review), run(bare)
    benchmark.pedantic(lambda: run(review), rounds=5)
    if benchmark.stats is not None:
        imports = min(run(bare) for _ in range(5))
        benchmark.extra_info["ratio_to_bare_import"] = benchmark.stats.stats.min / imports
