"""A file that was changed is read again as it was read before, and the lines of a plan become pieces of its text."""

import hashlib
import tempfile
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any

from linter.model.findings import ReviewResult
from linter.model.stations import Stations
from linter.report.repaired.files import NotWritten, Replaced, replaced
from linter.report.repaired.table import Reads, line_edits
from linter.rulebook.model import Rulebook

if TYPE_CHECKING:
    from linter.reading import Reading

#: How often a table is read again, at most, for the fixes of a log.
MOST_READINGS = 24


def reads_as(reading: "Reading", suffix: str, names: Any, bearings: Any, book: Rulebook) -> Reads:
    """What reads the content of a file as one was read.

    Parameters
    ----------
    reading : Reading
        How it was read before.
    suffix : str
        Ending of the name of the file.
    names, bearings
        Name mapping and list of bearings, as for :func:`linter.reading.read_table`.
    book : Rulebook
        Its defaults stand in for what is not stated.

    Returns
    -------
    callable
        From bytes to stations; None where they are not read.
    """
    from linter.reading import InputError, read_table
    from linter.review.defaults import with_defaults

    def read(content: bytes) -> Stations | None:
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder) / f"table{suffix}"
            path.write_bytes(content)
            try:
                stations = read_table(path, names, shown_as=reading.file, bearings=bearings).stations
            except InputError:
                return None
            return with_defaults(stations, book)

    return read


def fixes_of(
    content: bytes, reading: "Reading", result: ReviewResult, read: Reads
) -> Mapping[int, tuple[Replaced, ...]]:
    """The pieces of a text file that each line of a plan replaces.

    Parameters
    ----------
    content : bytes
        The file.
    reading : Reading
        What was read from it, with the defaults of the rulebook.
    result : ReviewResult
        With its plan.
    read : callable
        Reads such a file again.

    Returns
    -------
    mapping of int to tuple of Replaced
        By number of the line: only lines that are read back as planned. None for a workbook, which has no text, and
        where the file is no longer the one that was reviewed.
    """
    if not result.plan or content[:2] == b"PK" or hashlib.sha256(content).hexdigest() != result.input.sha256:
        return {}
    lines, _ = line_edits(content, reading.stations, reading.understood, result, read, MOST_READINGS)
    try:
        return {number: replaced(content, edits) for number, edits in lines.items()}
    except NotWritten:
        return {}
