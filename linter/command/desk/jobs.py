"""Reviews that the desk has started: a folder and a process each, a few at a time, nothing left when the desk ends."""

import json
import os
import re
import secrets
import shutil
import subprocess
import sys
import tempfile
import threading
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any, Literal

from attrs import define, field

State = Literal["waiting", "running", "done", "failed", "stopped"]
PREFIX = "ringseat-desk-"
#: Reviews that are kept; the oldest is removed for the next.
MOST_JOBS = 60
#: Memory for one review, MiB.
MEMORY = 700
#: Seconds of processor time for one table, and of the clock for one call.
SECONDS, LONGEST = 60, 300
#: This program; of one that is frozen into a file, that file.
_PROGRAM = [sys.executable] if getattr(sys, "frozen", False) else [sys.executable, "-m", "linter.command.cli"]
_NAME = re.compile(r"[^\w.()+ -]", re.UNICODE)
_DEVICES = re.compile(r"(?i)(con|prn|aux|nul|com\d|lpt\d)(\.|$)")


def safe_name(name: str) -> str:
    """A file name that stays in its folder on every system."""
    last = re.split(r"[/\\]", name)[-1]
    clean = _NAME.sub("_", last).strip(" .")[-100:].lstrip("-. ")
    return f"_{clean}" if _DEVICES.match(clean) else clean or "table"


@define(eq=False)
class Job:
    """One review of one or more tables.

    Attributes
    ----------
    id : str
        Random; part of its address.
    folder : Path
        Its own folder: ``in`` holds the tables, ``out`` what was written.
    tables : list of str
        Names of the tables.
    options : dict of str to str
        What was chosen: rulebook, gate.
    state : str
        ``waiting``, ``running``, ``done``, ``failed`` (the call could not be carried out) or ``stopped``.
    said : str
        What the command said.
    status : int or None
        Its exit status.
    """

    id: str
    folder: Path
    tables: list[str]
    options: dict[str, str]
    state: State = "waiting"
    said: str = ""
    status: int | None = None
    process: subprocess.Popen[str] | None = field(default=None, repr=False)

    @property
    def out(self) -> Path:
        """Folder of what was written."""
        return self.folder / "out"

    @property
    def over(self) -> bool:
        """Whether nothing more will come."""
        return self.state in ("done", "failed", "stopped")

    def results(self) -> Iterator[tuple[str, dict[str, Any]]]:
        """Name of the reports and content of each result file."""
        for path in sorted(self.out.glob("*.result.json")) if self.over else ():
            try:
                yield path.name.removesuffix(".result.json"), json.loads(path.read_text(encoding="utf-8"))
            except (OSError, ValueError):
                continue

    def files(self) -> list[str]:
        """Names of what was written."""
        return sorted(p.name for p in self.out.rglob("*") if p.is_file()) if self.out.exists() else []


class Jobs:
    """All reviews of one desk.

    Parameters
    ----------
    together : int
        Reviews that run at once.
    """

    def __init__(self, together: int) -> None:
        remove_left()
        self.root = Path(tempfile.mkdtemp(prefix=f"{PREFIX}{os.getpid()}-"))
        self.known: dict[str, Job] = {}
        self._lock = threading.Lock()
        self._room = threading.Semaphore(together)
        self._closed = False

    def start(self, tables: Sequence[tuple[str, Path]], options: dict[str, str], mapping: str = "") -> Job:
        """Start a review of uploaded files, which are moved into its folder.

        Parameters
        ----------
        tables : sequence of (str, Path)
            Name as given, and where the content lies.
        options : dict of str to str
            ``rulebook`` and ``gate``.
        mapping : str
            A name mapping (TOML), empty for none.

        Returns
        -------
        Job
            Waiting for its turn.
        """
        job = self._new([], options)
        for name, path in tables:
            job.tables.append(self._free(job, safe_name(name)))
            shutil.move(path, job.folder / "in" / job.tables[-1])
        if mapping:
            (job.folder / "names.toml").write_text(mapping, encoding="utf-8")
        self._run(job, self._review(job))
        return job

    def again(self, old: Job, mapping: str) -> Job:
        """The same tables with the same choices and another name mapping."""
        copies = []
        for name in old.tables:
            handle, path = tempfile.mkstemp(dir=self.root)
            os.close(handle)
            shutil.copy(old.folder / "in" / name, path)
            copies.append((name, Path(path)))
        return self.start(copies, old.options, mapping)

    def also(self, job: Job, command: str, table: str) -> None:
        """Run another command over a table of a finished review; what it writes is added to the same folder."""
        call = [command, str(job.folder / "in" / table), "--out", str(job.out), *self._chosen(job)]
        self._run(job, call)

    def _new(self, tables: list[str], options: dict[str, str]) -> Job:
        with self._lock:
            if self._closed:
                raise RuntimeError("the desk is being closed")
            job = Job(secrets.token_hex(8), Path(tempfile.mkdtemp(dir=self.root)), tables, options)
            (job.folder / "in").mkdir()
            self.known[job.id] = job
            for old in [j for j in self.known.values() if j.over][: max(0, len(self.known) - MOST_JOBS)]:
                del self.known[old.id]
                shutil.rmtree(old.folder, ignore_errors=True)
        return job

    @staticmethod
    def _free(job: Job, name: str) -> str:
        stem, dot, suffix = name.rpartition(".")
        taken, count, free = {t.casefold() for t in job.tables}, 1, name
        while free.casefold() in taken:
            count += 1
            free = f"{stem} ({count}).{suffix}" if dot else f"{name} ({count})"
        return free

    @staticmethod
    def _chosen(job: Job) -> list[str]:
        call = ["--gate", job.options["gate"]]
        if job.options.get("rulebook"):
            call += ["--rulebook", job.options["rulebook"]]
        if (job.folder / "names.toml").exists():
            call += ["--names", str(job.folder / "names.toml")]
        return call

    def _review(self, job: Job) -> list[str]:
        tables = [str(job.folder / "in" / name) for name in job.tables]
        bounds = ["--memory", str(MEMORY), "--seconds", str(SECONDS)]
        return [
            "review",
            *self._chosen(job),
            *bounds,
            "--write",
            "html,json,xlsx",
            "--out",
            str(job.out),
            "--",
            *tables,
        ]

    def _run(self, job: Job, call: list[str]) -> None:
        job.state, job.status = "waiting", None
        threading.Thread(target=self._work, args=(job, call), daemon=True).start()

    def _work(self, job: Job, call: list[str]) -> None:
        with self._room:
            with self._lock:
                if self._closed or job.state != "waiting":
                    return
                job.state = "running"
                job.process = subprocess.Popen(
                    [*_PROGRAM, *call], stdin=subprocess.DEVNULL,
                    stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, encoding="utf-8", errors="replace",
                    cwd=job.folder, env=_environment(), start_new_session=os.name == "posix",
                )  # fmt: skip
            try:
                said, _ = job.process.communicate(timeout=LONGEST)
            except subprocess.TimeoutExpired:
                job.process.kill()
                said, _ = job.process.communicate()
                said += f"\nended after {LONGEST} s"
            job.said = said.replace(str(job.folder / "in") + os.sep, "").replace(str(job.out), "the list below")
            job.status = job.process.returncode
            if job.state == "running":
                job.state = "failed" if job.status not in (0, 1, 3) else "done"

    def stop(self, job: Job) -> None:
        """End a review that waits or runs."""
        with self._lock:
            if not job.over:
                job.state = "stopped"
                if job.process is not None and job.process.poll() is None:
                    job.process.kill()

    def close(self) -> None:
        """End every review and remove every file."""
        with self._lock:
            self._closed = True
        for job in list(self.known.values()):
            self.stop(job)
            if job.process is not None:
                job.process.wait()
        shutil.rmtree(self.root, ignore_errors=True)


def _environment() -> dict[str, str]:
    """What a review is given of the environment: nothing that the desk does not need."""
    kept = ("PATH", "PYTHONPATH", "HOME", "LANG", "LC_ALL", "SYSTEMROOT", "TEMP", "TMP", "TMPDIR", "XDG_CACHE_HOME")
    return {key: os.environ[key] for key in kept if key in os.environ} | {"PYTHONUTF8": "1", "NO_COLOR": "1"}


def remove_left() -> None:
    """Remove the folders of desks that ended without removing them themselves."""
    for path in Path(tempfile.gettempdir()).glob(f"{PREFIX}*"):
        owner = re.fullmatch(rf"{PREFIX}(\d+)-.*", path.name)
        if owner and not path.is_symlink() and path.stat().st_uid == _uid() and not _alive(int(owner[1])):
            shutil.rmtree(path, ignore_errors=True)


def _uid() -> int:
    return os.getuid() if hasattr(os, "getuid") else 0


def _alive(process: int) -> bool:
    if os.name != "posix":
        return True
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    except PermissionError:
        return True
    return True


@contextmanager
def desk_jobs(together: int) -> Iterator[Jobs]:
    """The reviews of one desk, with nothing left behind."""
    jobs = Jobs(together)
    try:
        yield jobs
    finally:
        jobs.close()
