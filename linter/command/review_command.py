"""One call of ``ringseat review``: which tables, in which order, which reports, which exit status."""

import datetime
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

from attrs import define, evolve, field, frozen

from linter.command.console import Progress, complain, did_you_mean, say
from linter.command.tables import Tables, find_tables, passed_lines, report_names, shown
from linter.model.findings import ReviewResult
from linter.model.stations import Problem, Stations
from linter.reading.files.bounds import within_bounds
from linter.report.verdict import summary_line
from linter.report.writers import WRITERS, Job
from linter.report.writing import write_file
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook, RulebookError

OPEN, CLOSED, NOT_DONE, UNDECIDED = 0, 1, 2, 3
#: Exit statuses by how much they count where several tables have several.
GRAVITY = (OPEN, UNDECIDED, CLOSED, NOT_DONE)
#: Memory that reading, columns and records take for one assessment, in bytes (measured: 300 to 450 MiB for 64 000).
BYTES_PER_ASSESSMENT = 5500


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
    only : str
        Chapters or clauses to hold the tables against, with commas; all where empty.
    undecided_passes : bool
        Whether an undecided gate ends with 0.
    keep, free : tuple of str
        Parameters that the plan leaves alone, or may change.
    stations : int or None
        How many stations each machine must have.
    seconds : float
        Processor time for one table.
    memory : int
        Memory for one table, MiB.
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
    date: str | None = None
    full: bool = False
    brief: bool = False
    only: str = ""
    today: datetime.date | None = None
    keep: Sequence[str] = ()
    free: Sequence[str] = ()

    def movable(self) -> Any:
        """What the plan leaves alone and may change, of type :class:`linter.review.plan.cells.Movable`.

        Raises
        ------
        ValueError
            For a name that is no parameter.
        """
        from linter.review.plan.cells import Movable

        return Movable.of(self.keep, self.free)


def review_tables(tables: Sequence[Path], options: Options) -> int:
    """Review every table and write its reports.

    Parameters
    ----------
    tables : sequence of Path
        Files and folders.
    options : Options
        What the call asks for.

    Returns
    -------
    int
        Exit status: 0 every gate is open, 1 one is closed, 3 one is undecided and none closed, 2 something could not be
        carried out (the reason is on standard error; every readable table was reviewed all the same).
    """
    found = find_tables(tables)
    try:
        if options.keep or options.free:
            options.movable()
        book, mapping = load(options.rulebook), names_of(options)
        accepted = _concessions(options.concessions, options.today, book)
        _asked(book, options.only)
        call = _Call(found, options, book, mapping, accepted, bearings_of(options.bearings, mapping))
    except (RulebookError, ValueError, OSError) as error:
        complain(str(error))
        return NOT_DONE
    call.run()
    return call.status


@define(slots=False)
class _Call:
    """The work of one call; what becomes of it is kept here."""

    tables: Tables
    options: Options
    book: Rulebook
    mapping: Any
    accepted: Callable[[ReviewResult], ReviewResult] | None
    bearings: Any = None
    results: list[tuple[str, ReviewResult]] = field(factory=list)
    unread: list[tuple[str, str]] = field(factory=list)
    statuses: list[int] = field(factory=lambda: [OPEN])
    unnamed: list[Path] = field(factory=list)
    progress: Progress = field(factory=lambda: Progress(0))

    @property
    def status(self) -> int:
        """The gravest exit status so far."""
        return max(self.statuses, key=GRAVITY.index)

    def fail(self, text: str) -> None:
        """Something could not be carried out."""
        complain(text)
        self.statuses.append(NOT_DONE)

    def run(self) -> None:
        """Review the tables one after the other, then the page over them and the lines for the terminal."""
        for line in self.tables.complaints:
            self.fail(line)
        for line in passed_lines(self.tables.passed):
            complain(line)
        names = report_names(self.tables.found)
        self.progress = Progress(len(names))
        for table in self.tables.found:
            self.progress.begin(table.name)
            self.review(table, names[table])
        self.progress.end()
        for _, result in self.results:
            say(summary_line(result))
        for table in self.unnamed:
            say(f"{shown(table)}: a mapping of its names is proposed by: ringseat names {table}")
        if (len(names) > 1 or self.tables.passed) and "html" in self.options.write:
            self.write_index()
        if self.results:
            say(f"reports: {self.options.out}")

    def review(self, table: Path, name: str) -> None:
        """Review one table and write its reports, within the bounds for one table."""
        from linter.reading import InputError

        try:
            with within_bounds(shown(table), self.options.seconds, self.options.memory * 2**20):
                result = self.assessed(table)
                self.write(result, table, name)
        except InputError as error:
            reason = str(error)
            if error.code == "encoding" and self.options.encoding is None:
                reason += f"; ringseat names {table} shows what each encoding reads, --encoding NAME takes one"
        except Exception as error:
            reason = f"{shown(table)}: could not be reviewed, a fault of the program ({type(error).__name__}: {error})"
        else:
            self.results.append((name, result))
            self.statuses.append(self.verdict(result))
            for failure in result.failures:
                self.fail(f"{shown(table)}: {failure.text}")
            return
        self.fail(reason)
        self.unread.append((shown(table), reason))

    def assessed(self, table: Path) -> ReviewResult:
        """One table read and reviewed, with concessions and plan."""
        from linter.reading import read_table
        from linter.review.defaults import with_defaults
        from linter.review.records import review_reading

        options = self.options
        reading = read_table(table, self.mapping, shown_as=shown(table), bearings=self.bearings)
        if any(problem.code in ANSWERED_BY_NAMES for problem in reading.stations.problems):
            self.unnamed.append(table)
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
        only = _asked(self.book, options.only)
        if limited(result, only).closing:
            # only a closed gate pays for the search
            from linter.review.plan.planned import with_plan

            self.progress.step("looking for a plan that opens the gate")
            result = with_plan(result, reading.stations, self.book, options.movable())
        return limited(result, only)

    def refuse_what_does_not_fit(self, table: Path, stations: Stations) -> None:
        """Refuse a table whose records will not fit into the memory allowed, before they are made."""
        from linter.reading import InputError

        clauses = sum(clause.off is None for clause in self.book.clauses.values())
        each = BYTES_PER_ASSESSMENT + max(WRITERS[kind].memory for kind in self.options.write)
        wanted = len(stations) * clauses * each / 2**20
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
                content = writer.content(Job(result, self.book, table, options.date, options.full, options.brief))
                write_file(options.out / f"{name}{writer.suffix}", content, inputs=self.tables.found)
            except OSError as error:
                self.fail(f"{shown(table)}: the report could not be written: {error}")
            except MemoryError:
                raise
            except Exception as error:
                self.fail(f"{shown(table)}: no {kind} report, a fault of the program ({type(error).__name__}: {error})")

    def verdict(self, result: ReviewResult) -> int:
        """Exit status of one result."""
        if result.gate == "undecided":
            return OPEN if self.options.undecided_passes else UNDECIDED
        return CLOSED if result.gate == "closed" else OPEN

    def write_index(self) -> None:
        """Write the page over all tables."""
        from linter.report.index import Listed, Unread, index_text

        listed = [Listed(result, f"{name}.html") for name, result in self.results]
        passed = [Unread(shown(entry.path), entry.reason) for entry in self.tables.passed]
        complaints = [Unread(*text.partition(": ")[::2]) for text in self.tables.complaints]
        unread = [*(Unread(*entry) for entry in self.unread), *complaints]
        try:
            page = index_text(listed, unread, passed, date=self.options.date)
            write_file(self.options.out / "index.html", page.encode(), inputs=self.tables.found)
        except OSError as error:
            self.fail(f"the index page could not be written: {error}")


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


def _asked(book: Rulebook, text: str) -> frozenset[str] | None:
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
    left_out = dict.fromkeys(item.clause for item in result.assessments if item.clause not in only)
    wanted = [evolve(entry, clauses=tuple(c for c in entry.clauses if c in only)) for entry in result.needed]
    return evolve(
        result,
        assessments=tuple(item for item in result.assessments if item.clause in only),
        needed=tuple(entry for entry in wanted if entry.clauses),
        left_out=tuple(left_out),
        notes=(*result.notes, f"Only {', '.join(sorted(only))} were asked for; {len(left_out)} clauses were left out."),
    )


def names_of(options: Options) -> Any:
    """The names of a call: those of its mapping, with what the call itself says of every table."""
    said = {"encoding": options.encoding, "default_unit": options.unit, "decimal": options.decimal}
    said = {key: value for key, value in said.items() if value is not None}
    if options.names is None and not said:
        return None
    from linter.reading.words.mapping import check_file
    from linter.reading.words.names import Names

    names = Names.built_in() if options.names is None else Names.load(options.names)
    return Names(evolve(names.mapping, **check_file(said, "the call"))) if said else names


def bearings_of(path: Path | None, names: Any) -> Any:
    """The firm's list of bearings of a call; None without one."""
    if path is None:
        return None
    from linter.reading import InputError, read_bearings

    try:
        return read_bearings(path, names, shown_as=shown(path))
    except InputError as error:
        raise ValueError(str(error)) from None


def _concessions(
    path: Path | None, today: datetime.date | None, book: Rulebook
) -> Callable[[ReviewResult], ReviewResult] | None:
    if path is None:
        return None
    from linter.review.concessions import apply, load_concessions

    accepted = load_concessions(path)
    return lambda result: apply(result, accepted, today, book.concessions_up_to)


def propose_names(table: Path, names: Path | None) -> str:
    """The text of a proposed name mapping for one table."""
    from linter.reading import InputError
    from linter.reading.proposal import proposal_text
    from linter.reading.words.names import Names

    try:
        known = Names.built_in() if names is None else Names.load(names)
        with within_bounds(shown(table)):
            return proposal_text(table, known, shown(table))
    except (InputError, ValueError) as error:
        complain(str(error))
        raise SystemExit(NOT_DONE) from None
