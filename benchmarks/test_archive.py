"""How long the stages of an archive take: stations under two rulebooks from Parquet, and files read and judged."""

import os
import resource
import time

import pytest

pytest.importorskip("pyarrow")
pytest.importorskip("duckdb")

from benchmarks.conftest import make_stations
from benchmarks.tables import write_drawings
from linter.review.archive.columns import to_table
from linter.review.archive.compare import portfolio
from linter.review.archive.run import Archive
from linter.review.archive.stages import write_whole
from linter.review.archive.workers import Processes
from linter.rulebook.load import load

WORKERS = os.cpu_count() or 1
PARTITION = 16_000


def _cpu() -> float:
    return sum(sum(resource.getrusage(who)[:2]) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))


@pytest.mark.parametrize("count", [100_000])
def test_stations_from_parquet_under_two_rulebooks(benchmark, tmp_path, count):
    """Seconds for all clauses of two rulebooks and the comparison, with the peak of one process."""
    import pyarrow as pa

    count = 2_000 if benchmark.disabled else count  # only to see that it runs
    archive = Archive(tmp_path, tmp_path / "out", Processes(WORKERS))
    archive.stations.mkdir(parents=True)
    rows = []
    for number, start in enumerate(range(0, count, PARTITION)):
        stations = make_stations(min(PARTITION, count - start))
        batch = f"{number:024x}"
        write_whole(archive.stations / f"{batch}.parquet", to_table([(0, stations)]))
        rows.append((f"{batch}.csv", batch, batch, 0, "", len(stations)))
    names = ("name", "sha256", "batch", "file", "reason", "stations")
    drawings = pa.table({n: list(c) for n, c in zip(names, zip(*rows, strict=True), strict=True)})

    def run():
        folders = [archive.judge(drawings, load(v), v, "major") for v in ("2026.3", "2026.4")]
        return portfolio(drawings, folders, ("2026.3", "2026.4"), "major")

    begin = time.perf_counter()
    found = benchmark.pedantic(run, rounds=1)
    seconds = time.perf_counter() - begin
    assert found.stations == count
    clauses = sum(sum(c.off is None for c in load(v).clauses.values()) for v in ("2026.3", "2026.4"))
    benchmark.extra_info["stations_times_clauses_per_second"] = count * clauses / seconds
    benchmark.extra_info["peak_mib"] = max(
        resource.getrusage(who).ru_maxrss / 1024 for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
    )


@pytest.mark.parametrize("count", [int(os.environ.get("RINGSEAT_BENCH_FILES", "300"))])
def test_files_read_and_judged(benchmark, tmp_path, count):
    """Processor time of one file, read and judged under one rulebook."""
    count = 12 if benchmark.disabled else count
    folder = tmp_path / "drawings"
    folder.mkdir()
    paths = write_drawings(folder, count)
    archive = Archive(folder, tmp_path / "out", Processes(WORKERS))
    book = load("2026.4")

    def run():
        before = _cpu()
        read = archive.read(paths)
        archive.judge(read, book, "2026.4", "major")
        return read, _cpu() - before

    read, seconds = benchmark.pedantic(run, rounds=1)
    assert not any(read["reason"].to_pylist())
    benchmark.extra_info["milliseconds_per_file"] = 1000 * seconds / count
