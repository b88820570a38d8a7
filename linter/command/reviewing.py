"""The review of one table of a call: read, judged, written, and what is kept of it."""

import datetime
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

from attrs import define, evolve, field, frozen

from linter.command.console import Progress, did_you_mean
from linter.model.findings import ReviewResult
from linter.model.many import RECORD_ROWS
from linter.model.places import shown
from linter.model.stations import Problem, Stations
from linter.reading.files.bounds import within_bounds
from linter.report.verdict import summary_line
from linter.report.writers import WRITERS, Job
from linter.report.writing import write_file
from linter.rulebook.model import Rulebook

if TYPE_CHECKING:
    from linter.report.index import Listed

OPEN, CLOSED, NOT_DONE, UNDECIDED = 0, 1, 2, 3
#: Memory that reading, columns and records take for one assessment, in bytes (measured: 200 MiB for 64 000).
BYTES_PER_ASSESSMENT = 3200
#: Kinds of report that go through a large table part by part, and what they and its columns take for a station of it
#: (measured: 740 MiB for 20 000 of 45 values).
IN_PARTS = frozenset({"html", "json"})
BYTES_PER_STATION = 30_000
#: Stations whose reports have the time of a table; more of them have more.
STATIONS_IN_TIME = 5000


#: Machines with a closed gate whose plans have the time of a table; more of them have more.
MACHINES_IN_TIME = 60
#: Problems of a reading that a name mapping answers.
ANSWERED_BY_NAMES = ("unused-data", "unit-missing", "ambiguous-number", "half-or-full-band")


@frozen
class Options:
    """What a call of ``ringseat review`` asks for; see the command's options.

    Attributes
    ----------
    rulebook, names, bearings, encoding, unit, decimal, concessions, out, write, gate, complete, date, full, today
        As the options of those names; ``today`` is the day that concessions are held against (the system's where
        absent).
    brief : bool
        Whether the HTML report ends after what is not known.
    language : str
        Language of the HTML report.
    only : str
        Chapters or clauses to hold the tables against, with commas; all where empty.
    undecided_passes : bool
        Whether an undecided gate ends with 0.
    keep, free : tuple of str
        Parameters that the plan leaves alone, or may change.
    what_matters : bool
        Whether the reports say what one step of each parameter moves.
    stations : int or None
        How many stations each machine must have.
    seconds : float
        Processor time for one table.
    memory : int
        Memory for one table, MiB.
    workers : int or None
        Processes for several tables; None for as many as there are processors.
    """

    rulebook: str | None = None
    names: Path | None = None
    bearings: Path | None = None
    encoding: str | None = None
    unit: str | None = None
    decimal: str | None = None
    concessions: Path | None = None
    out: Path = Path("reports")
    write: Sequence[str] = ("html", "json")
    gate: str = "major"
    complete: bool = False
    undecided_passes: bool = False
    stations: int | None = None
    seconds: float = 120.0
    memory: int = 2048
    workers: int | None = 1
    date: str | None = None
    full: bool = False
    brief: bool = False
    language: str = "en"
    only: str = ""
    today: datetime.date | None = None
    keep: Sequence[str] = ()
    free: Sequence[str] = ()
    what_matters: bool = False

    def movable(self) -> Any:
        """What the plan leaves alone and may change, of type :class:`linter.review.plan.cells.Movable`.

        Raises
        ------
        ValueError
            For a name that is no parameter.
        """
        from linter.review.plan.cells import Movable

        return Movable.of(self.keep, self.free)


@define
class Done:
    """What is kept of a table when its reports are written; small, so that a folder of any size fits into memory.

    Attributes
    ----------
    statuses : list of int
        Exit statuses that it stands for.
    complaints : list of str
        Lines for standard error.
    summary : str
        The line for the terminal, empty where it could not be reviewed.
    listed : Listed or None
        Its line of the page over all tables.
    unread : tuple of (str, str) or None
        Its name and the reason why it could not be reviewed.
    unnamed : bool
        Whether a name mapping would answer what it leaves open.
    """

    statuses: list[int] = field(factory=lambda: [OPEN])
    complaints: list[str] = field(factory=list)
    summary: str = ""
    listed: "Listed | None" = None
    unread: tuple[str, str] | None = None
    unnamed: bool = False

    def fail(self, text: str) -> None:
        """Something could not be carried out."""
        self.complaints.append(text)
        self.statuses.append(NOT_DONE)


@define
class Reviewer:
    """What reviews the tables of a call, one at a time."""

    options: Options
    book: Rulebook
    mapping: Any
    accepted: Callable[[ReviewResult], ReviewResult] | None
    bearings: Any
    inputs: frozenset[tuple[int, int]]
    progress: Progress = field(factory=lambda: Progress(0))
    done: Done = field(factory=Done)
    fixes: Any = None

    def review(self, table: Path, name: str) -> Done:
        """Review one table and write its reports, within the bounds for one table."""
        from linter.reading import InputError

        self.done = done = Done()
        try:
            with within_bounds(shown(table), self.options.seconds, self.options.memory * 2**20):
                result = self.assessed(table)
                stations = sum(len(machine.stations) for machine in result.machines)
                seconds = self.options.seconds * max(1.0, stations / STATIONS_IN_TIME)
                with within_bounds(shown(table), seconds, self.options.memory * 2**20):
                    self.write(result, table, name)
        except InputError as error:
            reason = str(error)
            if error.code == "encoding" and self.options.encoding is None:
                reason += f"; ringseat names {table} shows what each encoding reads, --encoding NAME takes one"
        except Exception as error:
            reason = f"{shown(table)}: could not be reviewed, a fault of the program ({type(error).__name__}: {error})"
        else:
            from linter.report.index import Listed

            done.statuses.append(self.verdict(result))
            for failure in result.failures:
                done.fail(f"{shown(table)}: {failure.text}")
            done.summary = summary_line(result)
            done.listed = Listed.of(result, f"{name}.html")
            return done
        done.fail(reason)
        done.unread = (shown(table), reason)
        return done

    def assessed(self, table: Path) -> ReviewResult:
        """One table read and reviewed, with concessions and plan."""
        from linter.reading import read_table
        from linter.review.defaults import with_defaults
        from linter.review.records import review_reading

        options = self.options
        reading = read_table(table, self.mapping, shown_as=shown(table), bearings=self.bearings)
        if any(problem.code in ANSWERED_BY_NAMES for problem in reading.stations.problems):
            self.done.unnamed = True
        self.refuse_what_does_not_fit(table, reading.stations)
        if options.stations is not None:
            reading = evolve(reading, stations=held_against(reading.stations, options.stations))
        self.progress.step("judging")
        reading = evolve(reading, stations=with_defaults(reading.stations, self.book))
        result = review_reading(
            reading, self.book, gate=options.gate, complete=options.complete, full=options.full,
            undecided_passes=options.undecided_passes,
            told=lambda machine: self.progress.step(f"judging {machine}"),
        )  # fmt: skip
        if self.accepted is not None:
            result = self.accepted(result)
        if options.what_matters:
            from linter.review.matters import what_matters

            self.progress.step("moving each value one step")
            result = evolve(result, what_matters=what_matters(reading.stations, self.book, options.gate))
        only = asked(self.book, options.only)
        self.fixes = None
        if limited(result, only).closing:
            # only a closed gate pays for the search
            from linter.review.likely import likely
            from linter.review.plan.planned import with_plan

            self.progress.step("looking for a plan that opens the gate")
            # the search has a time of its own, so that a long table is not cut off by its many machines
            seconds = options.seconds * max(1.0, len({a.machine for a in result.closing}) / MACHINES_IN_TIME)
            with within_bounds(shown(table), seconds, options.memory * 2**20):
                result = with_plan(result, reading.stations, self.book, options.movable())
            result = evolve(result, likely=likely(result, reading.stations, self.book))
            if "sarif" in options.write:
                self.fixes = partial(self.fixes_of, table, reading, result)
        return evolve(limited(result, only), language=options.language)

    def fixes_of(self, table: Path, reading: Any, result: ReviewResult) -> Any:
        """The pieces of a text table that each line of the plan replaces."""
        from linter.report.repaired.again import fixes_of, reads_as

        read = reads_as(reading, table.suffix, self.mapping, self.bearings, self.book)
        return fixes_of(table.read_bytes(), reading, result, read)

    def refuse_what_does_not_fit(self, table: Path, stations: Stations) -> None:
        """Refuse a table whose records will not fit into the memory allowed, before they are made."""
        from linter.reading import InputError

        clauses = sum(clause.off is None for clause in self.book.clauses.values())
        each = BYTES_PER_ASSESSMENT + max(WRITERS[kind].memory for kind in self.options.write)
        held = min(len(stations), RECORD_ROWS) if set(self.options.write) <= IN_PARTS else len(stations)
        wanted = (held * clauses * each + (len(stations) - held) * BYTES_PER_STATION) / 2**20
        if wanted > self.options.memory:
            read = f"{len(stations)} stations under {clauses} clauses, about {wanted:.0f} MiB with their reports"
            allowed = f"at most {self.options.memory} MiB; divide the table by machine, or allow more with --memory"
            raise InputError("too-large", shown(table), read, allowed)

    def write(self, result: ReviewResult, table: Path, name: str) -> None:
        """Write the reports of one table."""
        options = self.options
        for kind in options.write:
            self.progress.step(f"writing {kind}")
            writer = WRITERS[kind]
            try:
                job = Job(result, self.book, table, options.date, options.full, options.brief, self.fixes)
                content = writer.content(job)
                write_file(options.out / f"{name}{writer.suffix}", content, inputs=self.inputs)
            except OSError as error:
                self.done.fail(f"{shown(table)}: the report could not be written: {error}")
            except MemoryError:
                raise
            except Exception as error:
                self.done.fail(
                    f"{shown(table)}: no {kind} report, a fault of the program ({type(error).__name__}: {error})"
                )

    def verdict(self, result: ReviewResult) -> int:
        """Exit status of one result."""
        if result.gate == "undecided":
            return OPEN if self.options.undecided_passes else UNDECIDED
        return CLOSED if result.gate == "closed" else OPEN


def held_against(stations: Stations, count: int) -> Stations:
    """The stations with a problem for each machine that has not as many as the call says.

    Parameters
    ----------
    stations : Stations
        As read.
    count : int
        Stations that each machine must have.

    Returns
    -------
    Stations
        A machine with another number has an unreadable part: the table lost stations, or has too many.
    """
    found = []
    for machine, row in zip(stations.machines, stations.first_rows, strict=True):
        has = int((stations.machine_row == stations.machine_row[row]).sum())
        if has != count:
            read = f"{has} {'station' if has == 1 else 'stations'}"
            message = f"machine {machine} has {read}, the call says {count}: the table lost some, or has too many."
            found.append(
                Problem("unreadable", int(row), None, None, read, f"{count} stations", message, "station-count")
            )
    return evolve(stations, problems=(*stations.problems, *found))


def asked(book: Rulebook, text: str) -> frozenset[str] | None:
    """The clauses that a call asks for; None for all of them.

    Raises
    ------
    ValueError
        For a word that is neither a chapter nor a clause.
    """
    found: set[str] = set()
    words = [word.strip() for word in text.split(",") if word.strip()]
    chapters = {chapter.key: chapter for chapter in book.chapters}
    for word in words:
        if word not in chapters and word not in book.clauses:
            hint = did_you_mean(word, (*chapters, *book.clauses)) or f"; chapters are {', '.join(chapters)}"
            raise ValueError(f"--only: {word!r} is neither a chapter nor a clause of the rulebook{hint}")
        found.update(name for name, clause in book.clauses.items() if word in (name, clause.chapter))
    return frozenset(found) if words else None


def limited(result: ReviewResult, only: frozenset[str] | None) -> ReviewResult:
    """The result with the assessments of these clauses alone; its gate does not open. All of it for None.

    Changes stay verified against the whole rulebook.
    """
    if only is None:
        return result
    left_out: dict[str, None] = {}
    kept = []
    for item in result.assessments:
        if item.clause in only:
            kept.append(item)
        else:
            left_out[item.clause] = None
    wanted = [evolve(entry, clauses=tuple(c for c in entry.clauses if c in only)) for entry in result.needed]
    return evolve(
        result,
        assessments=tuple(kept),
        needed=tuple(entry for entry in wanted if entry.clauses),
        left_out=tuple(left_out),
        notes=(*result.notes, f"Only {', '.join(sorted(only))} were asked for; {len(left_out)} clauses were left out."),
    )
