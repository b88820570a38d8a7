"""Reading large tables: ``python -m benchmarks.large_tables [--pairs N]``; a few minutes.

Delimited text of 100 000 rows and 60 columns is read in turn with ``pandas.read_csv(dtype=str)`` of the same file, each
pair in the same minute, so that a busy machine stretches both alike; the processor time of both and their ratio are
printed (median and least of the pairs). A workbook of 20 000 rows is read in a process of its own, with its peak of
memory.
"""

import argparse
import re
import statistics
import tempfile
from collections.abc import Callable
from multiprocessing import get_context
from pathlib import Path
from time import process_time

from benchmarks.tables import write_wide_text, write_wide_workbook
from linter.reading import read_table


def spent(work: Callable[[], object]) -> float:
    """Processor time of this process alone."""
    before = process_time()
    work()
    return process_time() - before


def text(path: Path, pairs: int) -> None:
    """Delimited text beside pandas; a first pair that does not count warms both up."""
    import pandas as pd

    def ours() -> object:
        return read_table(path)

    def theirs() -> object:
        return pd.read_csv(path, dtype=str)

    ours(), theirs()
    times = [(spent(ours), spent(theirs)) for _ in range(pairs)]
    ratios = [one / other for one, other in times]
    print(f"delimited text, 100 000 rows x 60 columns, {pairs} pairs:")
    for name, found in zip(("read_table", "pandas"), zip(*times, strict=True), strict=True):
        print(f"  {name}: median {statistics.median(found):.2f} s, least {min(found):.2f} s")
    print(f"  ratio: median {statistics.median(ratios):.2f}, least {min(ratios):.2f}")


def workbook(path: Path) -> tuple[float, int, int]:
    """Processor time of reading a workbook, peak of memory in MiB and what of it stood before (Linux)."""

    def peak() -> int:  # the system counts that of a process from its parent's on in any other place
        found = re.search(r"VmHWM:\s+(\d+)", Path("/proc/self/status").read_text(encoding="utf-8"))
        return int(found[1]) // 1024 if found else 0

    read_table(write_wide_workbook(path.with_name("small.xlsx"), 2))
    before = peak()
    return spent(lambda: read_table(path)), peak(), before


def main() -> None:
    """Measure and print."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--pairs", type=int, default=7, help="pairs of readings of the text")
    asked = options.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        book = write_wide_workbook(Path(folder) / "wide.xlsx", 20_000)
        with get_context("spawn").Pool(1) as alone:
            seconds, most, before = alone.apply(workbook, (book,))
        print(
            f"workbook, 20 000 rows x 60 columns: {seconds:.2f} s, {most} MiB at most, {before} MiB before it is read"
        )
        text(write_wide_text(Path(folder) / "wide.csv", 100_000), asked.pairs)


if __name__ == "__main__":
    main()
