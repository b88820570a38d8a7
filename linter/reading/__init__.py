"""Reading tables: files to raw cells, raw cells to stations."""

import os
from typing import TYPE_CHECKING

from linter.reading.files.intake import InputError
from linter.reading.record import Reading

if TYPE_CHECKING:
    from linter.reading.layouts.strips import TableWord
    from linter.reading.settling.bearing_list import BearingList
    from linter.reading.words.names import Names

__all__ = ["InputError", "Reading", "read_bearings", "read_names", "read_table"]


def read_table(
    path: str | os.PathLike[str],
    names: "Names | None" = None,
    *,
    shown_as: str | None = None,
    bearings: "BearingList | None" = None,
) -> Reading:
    """Read a table of parameters: workbook, delimited text, equation text, JSON or QIF.

    Parameters
    ----------
    path : path
        The file. Its kind is told by its content, never by its name.
    names : Names, optional
        Name mapping; the built-in words where absent.
    shown_as : str, optional
        Name of the file in every message and place; ``path`` where absent.
    bearings : BearingList, optional
        A firm's list of bearings, from :func:`read_bearings`: its values fill what the table leaves open.

    Returns
    -------
    Reading
        Stations with what could not be understood among ``stations.problems``.

    Raises
    ------
    InputError
        If the file as a whole cannot be reviewed.
    """
    from linter.reading.table import read

    return read(path, names, shown_as, bearings)


def read_bearings(
    path: str | os.PathLike[str], names: "Names | None" = None, *, shown_as: str | None = None
) -> "BearingList":
    """Read a firm's list of bearings: designation, balls, ratings, speeds and lands of each (workbook, CSV or JSON).

    Parameters
    ----------
    path, names, shown_as
        As for :func:`read_table`.

    Returns
    -------
    BearingList

    Raises
    ------
    InputError
        If the list cannot be read whole: a cell that is not understood, a bearing without a designation or listed twice
        with other values.
    """
    from linter.reading.table import bearings

    return bearings(path, names, shown_as)


def read_names(
    path: str | os.PathLike[str], names: "Names | None" = None, *, shown_as: str | None = None
) -> "list[TableWord]":
    """Words of a table (headings, row labels, keys) that name no parameter that is known, for a mapping proposal.

    Parameters
    ----------
    path, names, shown_as
        As for :func:`read_table`.

    Returns
    -------
    list of TableWord
        Each word once, with sample values, its place and the reason.

    Raises
    ------
    InputError
        If the file cannot be opened or parsed. A table without one known name is no error here.
    """
    from linter.reading.table import words_of

    return words_of(path, names, shown_as)
