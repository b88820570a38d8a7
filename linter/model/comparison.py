"""What two reviews differ by, as plain records: what every writer of a comparison reads."""

from collections.abc import Mapping
from typing import Any

from attrs import frozen

KINDS = (
    "appeared",
    "changed",
    "newly not assessed",
    "no longer reviewed",
    "cleared",
    "no longer not assessed",
)
CAUSES = ("table", "rulebook", "table and rulebook", "concession", "program", "not told")


@frozen
class Side:
    """One of the two results."""

    file: str
    table: str
    table_sha256: str
    rulebook: str
    rulebook_sha256: str
    tool: str
    gate: str
    gate_severity: str
    outcomes: Mapping[str, int]
    severities: Mapping[str, int]


@frozen
class State:
    """An assessment as one side has it; quantities as in the result file."""

    outcome: str
    severity: str | None
    observed: Mapping[str, Any] | None
    lower: Mapping[str, Any] | None
    upper: Mapping[str, Any] | None
    message: str
    concession: str | None


@frozen
class ValueChange:
    """A value of the table that differs, in words; ``not stated`` where a side has none."""

    machine: str
    station: str
    parameter: str
    old: str
    new: str


@frozen
class Difference:
    """One assessment that differs.

    Attributes
    ----------
    kind : str
        One of :data:`KINDS`.
    cause : str
        One of :data:`CAUSES`.
    because : tuple of str
        The cause in words, one sentence or change each.
    values : tuple of ValueChange
        Values that the clause uses and that differ.
    """

    kind: str
    clause: str
    title: str
    machine: str
    station: str | None
    old: State | None
    new: State | None
    cause: str
    because: tuple[str, ...] = ()
    values: tuple[ValueChange, ...] = ()

    @property
    def severity(self) -> str | None:
        """Severity now, or before where there is none now."""
        states = [s for s in (self.new, self.old) if s is not None and s.severity is not None]
        return states[0].severity if states else None

    @property
    def where(self) -> str:
        """Machine and station in words."""
        return self.machine if self.station is None else f"{self.machine} {self.station}"


@frozen
class Comparison:
    """Everything that differs between two results."""

    old: Side
    new: Side
    differences: tuple[Difference, ...]
    values: tuple[ValueChange, ...]
    notes: tuple[str, ...]
    unchanged: int

    @property
    def counts(self) -> dict[str, int]:
        """Differences of each kind."""
        return {kind: sum(d.kind == kind for d in self.differences) for kind in KINDS}

    def of(self, kind: str) -> list[Difference]:
        """Differences of one kind."""
        return [d for d in self.differences if d.kind == kind]
