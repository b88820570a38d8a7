"""What the reading of one file gives."""

from collections.abc import Callable

from attrs import field, frozen

from linter.model.stations import Stations, Understood, Unused


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
