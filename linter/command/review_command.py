"""One call of ``ringseat review``: which tables, in which order, which reports, which exit status."""

import datetime
import os
from collections.abc import Callable, Iterator, Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

from attrs import define, evolve, field

from linter.command.console import Progress, complain, say
from linter.command.reviewing import CLOSED, NOT_DONE, OPEN, UNDECIDED, Done, Options, Reviewer, asked
from linter.command.tables import Tables, find_tables, passed_lines, report_names
from linter.model.findings import ReviewResult
from linter.model.places import shown
from linter.reading.files.bounds import within_bounds
from linter.report.writing import file_ids, write_file
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook, RulebookError

if TYPE_CHECKING:
    from linter.report.index import Listed

#: Exit statuses by how much they count where several tables have several.
GRAVITY = (OPEN, UNDECIDED, CLOSED, NOT_DONE)


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
        asked(book, options.only)
        bearings = bearings_of(options.bearings, mapping)
    except (RulebookError, ValueError, OSError) as error:
        complain(str(error))
        return NOT_DONE
    call = _Call(found, options)
    call.run(Reviewer(options, book, mapping, accepted, bearings, file_ids(found.found)))
    return call.status


@define(slots=False)
class _Call:
    """The work of one call; what becomes of it is kept here."""

    tables: Tables
    options: Options
    listed: list["Listed"] = field(factory=list)
    unread: list[tuple[str, str]] = field(factory=list)
    statuses: list[int] = field(factory=lambda: [OPEN])
    lines: list[str] = field(factory=list)

    @property
    def status(self) -> int:
        """The gravest exit status so far."""
        return max(self.statuses, key=GRAVITY.index)

    def fail(self, text: str) -> None:
        """Something could not be carried out."""
        complain(text)
        self.statuses.append(NOT_DONE)

    def run(self, reviewer: Reviewer) -> None:
        """Review the tables, then the page over them and the lines for the terminal, in the order of the tables."""
        for line in self.tables.complaints:
            self.fail(line)
        for line in passed_lines(self.tables.passed):
            complain(line)
        names = report_names(self.tables.found)
        jobs = [(table, names[table]) for table in self.tables.found]
        progress = Progress(len(jobs))
        unnamed = []
        for (table, _), done in zip(jobs, self.reviewed(reviewer, jobs, progress), strict=True):
            if done.complaints:
                progress.end()
            for line in done.complaints:
                complain(line)
            self.statuses += done.statuses
            self.lines += [done.summary] if done.summary else []
            self.listed += [done.listed] if done.listed is not None else []
            self.unread += [done.unread] if done.unread is not None else []
            unnamed += [table] if done.unnamed else []
        progress.end()
        for line in self.lines:
            say(line)
        for table in unnamed:
            say(f"{shown(table)}: a mapping of its names is proposed by: ringseat names {table}")
        if (len(jobs) > 1 or self.tables.passed) and "html" in self.options.write:
            self.write_index()
        if self.lines:
            say(f"reports: {self.options.out}")

    def reviewed(self, reviewer: Reviewer, jobs: Sequence[tuple[Path, str]], progress: Progress) -> Iterator[Done]:
        """What is kept of each table, in their order."""
        workers = (self.options.workers or cores()) if len(jobs) > 1 else 1
        if workers > 1:
            from linter.command.workers import reviewed  # one table needs no other process

            yield from reviewed(reviewer, jobs, workers, progress)
            return
        reviewer.progress = progress
        for table, name in jobs:
            progress.begin(table.name)
            yield reviewer.review(table, name)

    def write_index(self) -> None:
        """Write the page over all tables."""
        from linter.report.index import Unread, index_text

        passed = [Unread(shown(entry.path), entry.reason) for entry in self.tables.passed]
        complaints = [Unread(*text.partition(": ")[::2]) for text in self.tables.complaints]
        unread = [*(Unread(*entry) for entry in self.unread), *complaints]
        try:
            page = index_text(self.listed, unread, passed, date=self.options.date, language=self.options.language)
            write_file(self.options.out / "index.html", page.encode(), inputs=file_ids(self.tables.found))
        except OSError as error:
            self.fail(f"the index page could not be written: {error}")


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
    return partial(apply, accepted=accepted, today=today, factor=book.concessions_up_to)


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


def cores() -> int:
    """Processors that this process may use."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1
