"""Reading tables: files to raw cells, raw cells to stations."""

import os
from collections.abc import Callable
from typing import TYPE_CHECKING

from attrs import field, frozen

from linter.reading.intake import InputError
from linter.stations import Stations, Understood, Unused

if TYPE_CHECKING:
    from linter.reading.blocks import TableWord
    from linter.reading.names import Names

__all__ = ["InputError", "Reading", "read_names", "read_table"]


@frozen(eq=False)
class Reading:
    """One file as understood.

    Attributes
    ----------
    file : str
        File as given by the caller.
    sha256 : str
        SHA-256 of its bytes, hexadecimal.
    layout : str
        Its layout in words, for example ``one row per station``.
    stations : Stations
        The stations, with documented defaults applied.
    unused : tuple of Unused
        Cells (or whole columns) that were not used.
    notes : tuple of str
        What was chosen on the way: encoding, delimiter, decimal sign, sheets not read, hidden rows.
    """

    file: str
    sha256: str
    layout: str
    stations: Stations
    unused: tuple[Unused, ...]
    notes: tuple[str, ...]
    _understand: Callable[[], list[Understood]] = field(alias="understand", repr=False)

    @property
    def understood(self) -> list[Understood]:
        """Every cell that was used, as read and as understood; worked out when asked for."""
        return self._understand()


def read_table(path: str | os.PathLike[str], names: "Names | None" = None, *, shown_as: str | None = None) -> Reading:
    """Read a table of parameters: workbook, delimited text, equation text, JSON or QIF.

    Parameters
    ----------
    path : path
        The file. Its kind is told by its content, never by its name.
    names : Names, optional
        Name mapping; the built-in words where absent.
    shown_as : str, optional
        Name of the file in every message and place; ``path`` where absent.

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

    return read(path, names, shown_as)


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
