"""Reading and reviewing the one table that a command works on, with one clear line and status 2 where that fails."""

import datetime
from pathlib import Path
from typing import Any

from attrs import evolve, frozen

from linter.command.console import complain
from linter.command.review_command import NOT_DONE, Options, bearings_of, names_of
from linter.command.tables import find_tables
from linter.model.findings import ReviewResult
from linter.model.places import shown
from linter.reading.files.bounds import within_bounds
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook, RulebookError


@frozen(eq=False)
class OneTable:
    """A table with its reading, its rulebook and its review."""

    path: Path
    reading: Any
    book: Rulebook
    result: ReviewResult

    @property
    def date(self) -> str:
        """Day on which the file was last changed, universal time."""
        changed = datetime.datetime.fromtimestamp(self.path.stat().st_mtime, datetime.UTC)
        return f"{changed:%Y-%m-%d} (file)"


def one_table(path: Path, options: Options) -> OneTable:
    """Read and review one table.

    Parameters
    ----------
    path : Path
        The table.
    options : Options
        What the call asks for, as for ``ringseat review``.

    Returns
    -------
    OneTable

    Raises
    ------
    SystemExit
        With status 2, after one line on standard error, where the table or the rulebook cannot be used.
    """
    from linter.reading import InputError, read_table
    from linter.review.defaults import with_defaults
    from linter.review.records import review_reading

    try:
        if path.is_dir():
            raise ValueError(f"{shown(path)}: is a folder; name one table")
        found = find_tables([path])
        if not found.found:
            told = [*found.complaints, *(f"{shown(entry.path)}: {entry.reason}" for entry in found.passed)]
            raise ValueError(told[0] if told else f"{shown(path)}: is not a table")
        book, names = load(options.rulebook), names_of(options)
        bearings = bearings_of(options.bearings, names)
        with within_bounds(shown(path), options.seconds, options.memory * 2**20):
            reading = read_table(path, names, shown_as=shown(path), bearings=bearings)
            reading = evolve(reading, stations=with_defaults(reading.stations, book))
            result = review_reading(reading, book, gate=options.gate, complete=options.complete)
    except (RulebookError, InputError, ValueError, OSError) as error:
        complain(" ".join(str(error).split()))
        raise SystemExit(NOT_DONE) from None
    return OneTable(path, reading, book, result)
