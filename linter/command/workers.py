"""The tables of one call by several processes; what is kept of each is handed on in the order of the tables."""

import multiprocessing
import signal
import sys
from collections.abc import Iterator, Sequence
from contextlib import suppress
from multiprocessing.connection import Connection, wait
from multiprocessing.process import BaseProcess
from pathlib import Path
from typing import Any

from attrs import define

from linter.command.console import Progress
from linter.command.reviewing import Done, Reviewer
from linter.model.places import shown

Job = tuple[Path, str]
TERMINATED = 143


def reviewed(reviewer: Reviewer, jobs: Sequence[Job], workers: int, progress: Progress) -> Iterator[Done]:
    """Review tables and write their reports, in several processes.

    Parameters
    ----------
    reviewer : Reviewer
        What reviews one.
    jobs : sequence of (Path, str)
        Each table with the name of its reports.
    workers : int
        Processes.
    progress : Progress
        What is shown meanwhile.

    Yields
    ------
    Done
        What is kept of each table, in the order of the jobs. A process that ends before its table is finished costs
        that table alone, which is reported.
    """
    yield from _Pool(reviewer, jobs, progress).run(min(workers, len(jobs)))


@define(eq=False)
class _Worker:
    """A process, the pipe to it, and the number of the job that it has."""

    process: BaseProcess
    pipe: Connection
    job: int


class _Pool:
    """Processes that take one job after the other."""

    def __init__(self, reviewer: Reviewer, jobs: Sequence[Job], progress: Progress) -> None:
        self.reviewer, self.jobs, self.progress = reviewer, jobs, progress
        # a forked process has the rulebook and the modules already
        self.context = multiprocessing.get_context("fork" if sys.platform == "linux" else "spawn")
        self.waiting = iter(range(len(jobs)))
        self.busy: list[_Worker] = []
        self.finished: dict[int, Done] = {}

    def run(self, count: int) -> Iterator[Done]:
        """Start so many processes and hand on what they finish."""
        _import_what_all_need()
        try:
            for _ in range(count):
                self.start()
            for number in range(len(self.jobs)):
                while number not in self.finished:
                    self.look()
                yield self.finished.pop(number)
        finally:
            for worker in self.busy:
                worker.process.terminate()
                worker.pipe.close()
            for worker in self.busy:
                worker.process.join()

    def start(self) -> None:
        """One more process, with the next job; nothing where none waits."""
        job = next(self.waiting, None)
        if job is None:
            return
        own, its = self.context.Pipe()
        process = self.context.Process(target=_work, args=(self.reviewer, self.jobs, its), daemon=True)  # type: ignore[attr-defined]
        process.start()
        its.close()
        worker = _Worker(process, own, job)
        self.busy.append(worker)
        self.give(worker, job)

    def give(self, worker: _Worker, job: int) -> None:
        """A process its job; one that is gone is noticed by :meth:`look`."""
        worker.job = job
        with suppress(OSError):
            worker.pipe.send(job)

    def look(self) -> None:
        """Wait until a process has finished its job, or is gone."""
        ready = wait([end for worker in self.busy for end in (worker.pipe, worker.process.sentinel)])
        for worker in list(self.busy):
            if worker.pipe not in ready and worker.process.sentinel not in ready:
                continue
            try:
                done = worker.pipe.recv() if worker.pipe.poll() else None
            except (EOFError, OSError):
                done = None
            self.finished[worker.job] = self.lost(worker) if done is None else done
            self.progress.finish(self.jobs[worker.job][0].name)
            job = None if done is None else next(self.waiting, None)
            if job is not None:
                self.give(worker, job)
                continue
            self.busy.remove(worker)
            with suppress(OSError):
                worker.pipe.send(None)  # a closed pipe alone is not seen: processes forked later hold its end too
            worker.pipe.close()
            worker.process.join()
            if done is None:
                self.start()

    def lost(self, worker: _Worker) -> Done:
        """What is told of a table whose process ended."""
        worker.process.join()
        code = worker.process.exitcode or 0
        how = f"by signal {-code}" if code < 0 else f"with status {code}"
        file = shown(self.jobs[worker.job][0])
        done = Done()
        done.fail(f"{file}: could not be reviewed: the process that worked on it ended {how}")
        done.unread = (file, done.complaints[0])
        return done


def _import_what_all_need() -> None:
    import linter.reading.table
    import linter.report.html
    import linter.review.records  # noqa: F401


def _work(reviewer: Reviewer, jobs: Sequence[Job], pipe: Connection) -> None:
    """Review tables as long as there are any and the process that asks for them is there."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # the process that asks ends the others
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(TERMINATED))  # a report half written is taken away
    reviewer.progress = Progress(0)
    reviewer.progress.shown = False
    parent = multiprocessing.parent_process()
    ends: list[Any] = [pipe] if parent is None else [pipe, parent.sentinel]
    try:
        while pipe in wait(ends) and (job := pipe.recv()) is not None:
            pipe.send(reviewer.review(*jobs[job]))
    except (EOFError, OSError):
        return
