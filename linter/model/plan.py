"""The plan of a review as plain records: what to change, what that comes to, what stands outside it."""

from collections.abc import Mapping
from typing import Any

from attrs import asdict, frozen

from linter.model.places import Place


@frozen
class SizeValue:
    """A toleranced size; deviations in the unit of its parameter, None where none are stated."""

    nominal: float
    lower: float | None
    upper: float | None
    tolerance_class: str


@frozen
class PlanLine:
    """One change of a plan.

    Attributes
    ----------
    line : int
        Its number; a finding that it serves names it.
    machine : str
        Machine.
    station : str or None
        None for a value of the whole machine.
    parameter : str
        What to change.
    place : Place or None
        The cell, where the table has one.
    before, after : str
        The values as a report shows them.
    value : float, str or SizeValue
        The new value, in ``unit``.
    unit : str
        Canonical unit; empty for a word.
    clears, lowers : tuple of str
        Clauses whose finding is gone, or milder, by this change (alone or together with others of the plan).
    reason : str
        What it is for, in words.
    """

    line: int
    machine: str
    station: str | None
    parameter: str
    place: Place | None
    before: str
    after: str
    value: float | str | SizeValue
    unit: str
    clears: tuple[str, ...]
    lowers: tuple[str, ...]
    reason: str

    def as_dict(self) -> dict[str, Any]:
        """The keys of the result file."""
        return {
            "line": self.line,
            "machine": self.machine,
            "station": self.station,
            "parameter": self.parameter,
            "place": None if self.place is None else self.place.as_dict(),
            "from": self.before,
            "to": self.after,
            "value": asdict(self.value) if isinstance(self.value, SizeValue) else self.value,
            "unit": self.unit,
            "clears": list(self.clears),
            "lowers": list(self.lowers),
            "reason": self.reason,
        }


@frozen
class Left:
    """A finding that the plan leaves and that closes the gate."""

    clause: str
    station: str | None
    severity: str


@frozen
class Fact:
    """A value that is not the plan's to change; ``station`` None for one of the machine."""

    parameter: str
    station: str | None
    value: str


@frozen
class Conflict:
    """Clauses that cannot be met together by anything the plan may move, and the facts and decisions that forbid it."""

    clauses: tuple[str, ...]
    facts: tuple[Fact, ...]
    text: str


@frozen
class MachinePlan:
    """What the plan comes to on one machine."""

    machine: str
    gate: str
    severities: Mapping[str, int]
    left: tuple[Left, ...]
    conflicts: tuple[Conflict, ...]

    def as_dict(self) -> dict[str, Any]:
        """The keys of the result file."""
        return {
            "machine": self.machine,
            "gate": self.gate,
            "severities": dict(self.severities),
            "left": [asdict(entry) for entry in self.left],
            "conflicts": [asdict(entry) for entry in self.conflicts],
        }


@frozen
class PlanResult:
    """What a review of the table with the whole plan applied says; ``machines``: those with a closed gate now."""

    gate: str
    severities: Mapping[str, int]
    machines: tuple[MachinePlan, ...]

    def as_dict(self) -> dict[str, Any]:
        """The keys of the result file."""
        return {
            "gate": self.gate,
            "severities": dict(self.severities),
            "machines": [machine.as_dict() for machine in self.machines],
        }


@frozen
class Alternative:
    """One word of a decision in place of another."""

    station: str | None
    parameter: str
    before: str
    after: str


@frozen
class Decision:
    """A named alternative outside the plan, with its reviewed consequence.

    Attributes
    ----------
    machine : str
        Machine.
    changes : tuple of Alternative
        The decisions to take otherwise; two where none helps alone.
    with_plan : bool
        Whether the plan is applied besides.
    further : tuple of str
        What else would then be changed, in words.
    clears, lowers, worsens : tuple of str
        Clauses, against the table as it is.
    gate : str
        The gate of the machine with all of it.
    severities : dict of str to int
        Its findings with all of it.
    """

    machine: str
    changes: tuple[Alternative, ...]
    with_plan: bool
    further: tuple[str, ...]
    clears: tuple[str, ...]
    lowers: tuple[str, ...]
    worsens: tuple[str, ...]
    gate: str
    severities: Mapping[str, int]

    def as_dict(self) -> dict[str, Any]:
        """The keys of the result file."""
        return {
            "machine": self.machine,
            "changes": [
                {"station": c.station, "parameter": c.parameter, "from": c.before, "to": c.after} for c in self.changes
            ],
            "with_plan": self.with_plan,
            "further": list(self.further),
            "clears": list(self.clears),
            "lowers": list(self.lowers),
            "worsens": list(self.worsens),
            "gate": self.gate,
            "severities": dict(self.severities),
        }
