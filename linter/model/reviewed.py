"""What a result says of the table that was reviewed: machines, stations, cells, and what the gate still wants."""

from collections.abc import Mapping
from typing import Any

from attrs import field, frozen

from linter.model.places import Place


@frozen
class MachineRecord:
    """A machine that was reviewed."""

    machine: str
    drawing_number: str | None
    drawing_revision: str | None
    stations: tuple[str, ...]


@frozen
class StationRecord:
    """What was reviewed at one position, in canonical units.

    ``values`` maps a parameter to a number, a word, or for a toleranced size a dict with ``nominal``, ``lower``,
    ``upper`` (deviations, None where no tolerance is stated) and ``class``. Machine-level values are repeated; assumed
    ones are included. This is what drawings are made from and what two reviews are compared by. ``derived`` maps the
    parameters that the table does not state itself (read from a designation, say) to ``value`` and ``basis``.
    """

    machine: str
    station: str
    values: Mapping[str, Any]
    derived: Mapping[str, Mapping[str, Any]] = field(factory=dict)

    def as_dict(self) -> dict[str, Any]:
        """The keys of the result file; ``derived`` only where there is any."""
        derived = {"derived": dict(self.derived)} if self.derived else {}
        return {"machine": self.machine, "station": self.station, "values": dict(self.values), **derived}


@frozen
class InputRecord:
    """Which table was reviewed."""

    file: str
    sha256: str
    layout: str


@frozen
class Unrecognised:
    """Data in the table that was not used."""

    name: str
    value: str
    place: Place
    reason: str


@frozen
class ReadCell:
    """One cell used: as read and as understood, for the section on what was understood."""

    machine: str
    station: str | None
    parameter: str
    place: Place
    read: str
    value: str


@frozen
class ConcessionNote:
    """What became of a concession: ``applied``, ``expired``, ``unused``, ``exceeded`` or ``other revision``."""

    number: str
    state: str
    text: str


@frozen
class Failure:
    """A clause that could not be run, and why, in one sentence."""

    clause: str
    text: str


@frozen
class Needed:
    """A value that is wanted before the gate can be decided.

    Attributes
    ----------
    parameter, machine : str
        What to state, and of which machine.
    station : str or None
        None for a value of the whole machine.
    place : Place or None
        The cell to fill, where the table has a column (row, branch) for it.
    near : str
        Where else in the table: ``row 7``, ``column D``; empty where that is not known.
    clauses : tuple of str
        What waits for it.
    """

    parameter: str
    machine: str
    station: str | None
    place: Place | None
    near: str
    clauses: tuple[str, ...]

    def __str__(self) -> str:
        """Parameter, position and cell in words."""
        where = self.machine if self.station is None else f"{self.machine} {self.station}"
        cell = self.place.short() if self.place is not None else self.near
        return f"{self.parameter} of {where}" + (f" ({cell})" if cell else "")

    def as_dict(self) -> dict[str, Any]:
        """The keys of the result file."""
        return {
            "parameter": self.parameter,
            "machine": self.machine,
            "station": self.station,
            "place": None if self.place is None else self.place.as_dict(),
            "near": self.near,
            "clauses": list(self.clauses),
        }
