"""An archive whose workers are killed at random times: its tables against those of an undisturbed run by one worker.

``python -m benchmarks.killed_workers [--files 1000] [--batch 50] [--workers 4] [--kills 20] [--seed 1]``; ends with 1
where they differ. Linux only: the workers are found in ``/proc``.
"""

import argparse
import hashlib
import os
import random
import signal
import sys
import tempfile
import threading
import time
from contextlib import suppress
from pathlib import Path

from benchmarks.tables import write_drawings
from linter.review.archive import run
from linter.review.archive.compare import portfolio
from linter.review.archive.stages import write_whole
from linter.review.archive.workers import Processes
from linter.rulebook.load import load

VERSIONS = ("2026.5", "2026.6")


def children(process: int) -> list[int]:
    """Worker processes of a process."""
    found = []
    for task in Path(f"/proc/{process}/task").iterdir():
        with suppress(OSError):
            found += [int(child) for child in (task / "children").read_text().split()]
    return [child for child in found if "spawn_main" in _line(child)]


def _line(process: int) -> str:
    try:
        return Path(f"/proc/{process}/cmdline").read_text(errors="replace")
    except OSError:
        return ""


class Killer(threading.Thread):
    """Kills a worker now and then."""

    def __init__(self, kills: int, pause: float, seed: int) -> None:
        super().__init__(daemon=True)
        self.kills, self.pause, self.rng, self.done, self.ended = kills, pause, random.Random(seed), 0, False

    def run(self) -> None:
        """Until so many are dead, or the work is done."""
        while self.done < self.kills and not self.ended:
            time.sleep(self.rng.uniform(0.0, 2 * self.pause))
            if workers := children(os.getpid()):
                with suppress(OSError):
                    os.kill(self.rng.choice(workers), signal.SIGKILL)
                    self.done += 1


def tables(folder: Path, paths: list[Path], out: Path, workers: int) -> dict[str, str]:
    """Hashes of the tables of a comparison of two rulebooks."""
    archive = run.Archive(folder, out, Processes(workers))
    drawings = archive.read(paths)
    verdicts = [archive.judge(drawings, load(version), version, "major") for version in VERSIONS]
    found = portfolio(drawings, verdicts, VERSIONS, "major")
    hashes = {}
    for name in ("machines", "gates", "clauses", "kinds", "unread"):
        write_whole(out / f"{name}.parquet", getattr(found, name))
        hashes[name] = hashlib.sha256((out / f"{name}.parquet").read_bytes()).hexdigest()[:16]
    return hashes


def main() -> int:
    """Run, compare, tell."""
    options = argparse.ArgumentParser(description=__doc__)
    for name, value in (("files", 1000), ("batch", 50), ("workers", 4), ("kills", 20), ("seed", 1)):
        options.add_argument(f"--{name}", type=int, default=value)
    asked = options.parse_args()
    run.BATCH = asked.batch
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name) / "drawings"
        folder.mkdir()
        paths = write_drawings(folder, asked.files)
        start = time.perf_counter()
        alone = tables(folder, paths, Path(name) / "alone", 1)
        seconds = time.perf_counter() - start
        several = tables(folder, paths, Path(name) / "several", asked.workers)
        killer = Killer(asked.kills, seconds / asked.kills, asked.seed)
        killer.start()
        disturbed = tables(folder, paths, Path(name) / "disturbed", asked.workers)
        killer.ended = True
    for table, digest in alone.items():
        print(f"{table}: 1 worker {digest}, {asked.workers} {several[table]}, killed {disturbed[table]}")
    print(f"{killer.done} workers killed; {'equal' if alone == several == disturbed else 'DIFFERENT'}")
    return 0 if alone == several == disturbed else 1


if __name__ == "__main__":
    sys.exit(main())
