"""What the reading of one file gives."""

from collections.abc import Callable, Iterable, Iterator

from attrs import field, frozen

from linter.model.stations import Bools, Stations, Understood, Unused


@frozen
class Taken:
    """What one word of a table (heading, row label, key) is taken for.

    Attributes
    ----------
    label : str
        The word as it stands.
    parameter, aspect : str
        What it states.
    unit : str
        Unit that stands with it, empty for none.
    """

    label: str
    parameter: str
    aspect: str
    unit: str


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
    taken : tuple of Taken
        Words of the table that are used, each once, with what they are taken for.
    placed : callable
        Gives of every cell that was used parameter, row, sheet, cell or JSON Pointer, and whether it is a JSON Pointer.
    """

    file: str
    sha256: str
    layout: str
    stations: Stations
    unused: tuple[Unused, ...]
    notes: tuple[str, ...]
    _understand: Callable[..., Iterable[Understood]] = field(alias="understand", repr=False)
    taken: tuple[Taken, ...] = field(default=(), repr=False)
    placed: Callable[[], Iterable[tuple[str, int, str | None, str, bool]]] = field(default=tuple, repr=False)

    @property
    def understood(self) -> list[Understood]:
        """Every cell that was used, as read and as understood; worked out when asked for."""
        return list(self.cells())

    def cells(self, rows: Bools | None = None) -> Iterator[Understood]:
        """The same one after the other, of some rows where a mask of them is given."""
        return iter(self._understand() if rows is None else self._understand(rows))

    @property
    def unused_columns(self) -> dict[str, list[Unused]]:
        """What was not used by the words that stand with it (a heading, a row label, a key), in the order of the table.

        A column whose heading is not known is one entry; of a table with names down a column, and of a JSON document,
        every cell is one. Cells without words of their own (titles, comments, feet) stand under what they are.
        """
        found: dict[str, list[Unused]] = {}
        for unused in self.unused:
            found.setdefault(unused.name, []).append(unused)
        return found
