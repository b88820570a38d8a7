"""One call of ``ringseat archive``: a folder of drawings under one rulebook or two."""

import os
import sys
import time
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import click

from linter.command.console import complain, safe
from linter.command.review_command import NOT_DONE, OPEN, Options, review_tables
from linter.command.tables import find_tables
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook, RulebookError

if TYPE_CHECKING:
    import pyarrow as pa

    from linter.review.archive.compare import Portfolio
    from linter.review.archive.run import Archive
    from linter.review.archive.workers import Workers

_TABLES = ("machines", "gates", "clauses", "kinds", "unread")


def run_archive(
    folder: Path, rulebooks: Sequence[str], out: Path, *, workers: int | None, scheduler: str | None, gate: str,
    reports: Sequence[str],
) -> int:  # fmt: skip
    """Read, judge and compare an archive; write its page and tables.

    Parameters
    ----------
    folder : Path
        The drawings.
    rulebooks : sequence of str
        One, or the old and the new.
    out : Path
        Where everything goes; what an earlier run left there is taken up.
    workers : int or None
        Processes; the number of processors by default.
    scheduler : str or None
        Address of a dask scheduler, in the place of processes.
    gate : str
        Lowest severity that closes the gate.
    reports : sequence of str
        Drawings to review in full under each rulebook, by their name below the folder.

    Returns
    -------
    int
        0, or 2 where the call could not be carried out.
    """
    try:
        from linter.review.archive.run import Archive
        from linter.review.archive.workers import Cluster, NoScheduler, Processes
    except ImportError as error:
        complain(f"the archive needs more packages ({error.name}): pip install 'ringseat[archive]'")
        return NOT_DONE
    crew: Workers | None = None
    try:
        books = _books(rulebooks)
        names = _drawings(folder)
        _known_reports(folder, reports)
        crew = Cluster(scheduler) if scheduler else Processes(workers or os.cpu_count() or 1)
        archive = Archive(folder, out, crew, _progress())
        drawings = archive.read(names)
        found = _judged(archive, drawings, books, gate)
        _write(found, out, gate)
    except (RulebookError, ValueError, OSError, RuntimeError, NoScheduler) as error:
        complain(" ".join(str(error).split()))
        return NOT_DONE
    finally:
        if isinstance(crew, Cluster):
            crew.close()
    _in_full(folder, out, books, reports, gate)
    return OPEN


def _books(rulebooks: Sequence[str]) -> list[tuple[str, Rulebook]]:
    if not 1 <= len(rulebooks) <= 2:
        expected = "expected one, or the old and the new: --rulebook OLD --rulebook NEW"
        raise ValueError(f"read {len(rulebooks)} rulebooks, {expected}")
    found = [(name, load(name)) for name in rulebooks]
    if len(found) == 2 and found[0][1].sha256 == found[1][1].sha256:
        raise ValueError(f"{rulebooks[0]} and {rulebooks[1]} are the same rulebook; there is nothing to compare")
    return found


def _drawings(folder: Path) -> list[Path]:
    if not folder.is_dir():
        raise ValueError(f"{folder}: no folder; expected the folder of the drawings' tables")
    tables = find_tables([folder])
    if not tables.found:
        raise ValueError(tables.complaints[0] if tables.complaints else f"{folder}: the folder has no table")
    for line in tables.complaints:
        complain(line)
    return tables.found


def _known_reports(folder: Path, reports: Sequence[str]) -> None:
    for name in reports:
        if not (folder / name).is_file():
            raise ValueError(f"--report {name}: {folder} has no such drawing")


def _progress() -> Callable[[str, int, int], None]:
    shown = sys.stderr.isatty()
    began: dict[str, float] = {}

    def tell(stage: str, done: int, of: int) -> None:
        start = began.setdefault(stage, time.monotonic())
        if shown and of:
            each = (time.monotonic() - start) / max(done - 1, 1)
            left = f", about {each * (of - done):.0f} s left" if done > 1 else ""
            click.echo(f"\r{stage}: {done}/{of}{left}\x1b[K", nl=done == of, err=True)

    return tell


def _judged(archive: "Archive", drawings: "pa.Table", books: list[tuple[str, Rulebook]], gate: str) -> "Portfolio":
    from linter.review.archive.compare import portfolio

    if not any(drawings["stations"].to_pylist()):
        reason = next(filter(None, drawings["reason"].to_pylist()), "no station in any of them")
        raise ValueError(f"{archive.folder}: no drawing could be read; the first: {reason}")
    folders = [archive.judge(drawings, book, name, gate) for name, book in books]
    versions = [book.version for _, book in books]
    if len(set(versions)) < len(versions):
        versions = [name for name, _ in books]
    return portfolio(drawings, folders, versions, gate)


def _write(found: "Portfolio", out: Path, gate: str) -> None:
    import pyarrow.csv as arrow_csv

    from linter.report.archive_writers import portfolio_html, portfolio_text
    from linter.report.writing import write_file
    from linter.review.archive.stages import write_whole

    out.mkdir(parents=True, exist_ok=True)
    for name in _TABLES:
        table = getattr(found, name)
        write_whole(out / f"{name}.parquet", table)
        arrow_csv.write_csv(table, out / f"{name}.csv")
    write_file(out / "archive.html", portfolio_html(found, gate).encode())
    click.echo(safe(portfolio_text(found)), nl=False)
    click.echo(safe(f"written: {out}"))


def _in_full(folder: Path, out: Path, books: list[tuple[str, Rulebook]], reports: Sequence[str], gate: str) -> None:
    for name, book in books if reports else ():
        target = out / "reports" / book.version
        review_tables([folder / report for report in reports], Options(rulebook=name, out=target, gate=gate))
