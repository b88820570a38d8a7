"""The result of a review as plain records: what every writer and every other program reads."""

from collections.abc import Iterable
from typing import Any

from attrs import asdict, frozen

from linter.model.matters import Matters
from linter.model.places import Place
from linter.model.plan import Decision, PlanLine, PlanResult
from linter.model.reviewed import (
    ConcessionNote,
    Failure,
    InputRecord,
    MachineRecord,
    Needed,
    ReadCell,
    StationRecord,
    Unrecognised,
)
from linter.model.vocabulary import vocabulary

OUTCOMES = ("met", "finding", "not assessed", "not applicable", "conceded")
SEVERITIES = ("critical", "major", "minor", "remark")
GATES = ("open", "closed", "undecided")
FORMAT_VERSION = 2
#: Chapter of the clauses about the table itself; meeting them says nothing about a seat.
TABLE_CHAPTER = "table"


def at_least(severity: str | None, limit: str) -> bool:
    """Whether a severity is the limit or graver."""
    return severity is not None and SEVERITIES.index(severity) <= SEVERITIES.index(limit)


@frozen
class Quantity:
    """A value with its unit."""

    value: float
    unit: str


@frozen
class WorkingLine:
    """One step from the inputs to the result; ``value`` is a number, a word, or None where it is not known."""

    key: str
    symbol: str
    meaning: str
    value: float | str | None
    unit: str
    formula: str


@frozen
class Assumed:
    """A documented default that was used."""

    parameter: str
    value: float | str
    unit: str
    reason: str


@frozen
class Used:
    """An input and where it stands; ``text`` is the value as reviewed."""

    parameter: str
    place: Place
    text: str


@frozen
class Change:
    """A change of the plan that clears a finding or makes it milder.

    Attributes
    ----------
    parameter, value, unit : str, float or str or None, str
        What to change, and to what.
    text : str
        The change in words, for example ``k5 -> m5``.
    verified : bool
        True where the whole rulebook was run again with the plan that it is part of, and nothing got worse.
    line : int
        Line of the plan that makes it.
    """

    parameter: str
    value: float | str | None
    unit: str
    text: str
    verified: bool
    line: int = 0


@frozen
class Cause:
    """The assessment that a finding follows from: clause, and station (None for a clause about the machine)."""

    clause: str
    station: str | None


@frozen
class Assessment:
    """One clause against one station or machine.

    ``must``: the gate does not open while it is not assessed. ``quantity`` says what was observed, where the rulebook
    has a name for it.
    """

    clause: str
    title: str
    machine: str
    station: str | None
    outcome: str
    severity: str | None
    observed: Quantity | None
    lower: Quantity | None
    upper: Quantity | None
    message: str
    working: tuple[WorkingLine, ...] = ()
    missing: tuple[str, ...] = ()
    assumed: tuple[Assumed, ...] = ()
    places: tuple[Used, ...] = ()
    clears_with: tuple[Change, ...] = ()
    sources: tuple[str, ...] = ()
    concession: str | None = None
    remedy: str = ""
    follows: Cause | None = None
    must: bool = False
    quantity: str = ""


@frozen
class Layer:
    """One layer of the rulebook; outermost first in :attr:`RulebookRecord.layers`."""

    name: str
    version: str


@frozen
class Loosened:
    """A clause that a layer loosened or switched off."""

    clause: str
    layer: str
    what: str
    reason: str


@frozen
class RulebookRecord:
    """Which rulebook was used."""

    name: str
    version: str
    sha256: str
    layers: tuple[Layer, ...]
    loosened: tuple[Loosened, ...]


@frozen
class Likely:
    """A machine whose gate is closed at the ends of its tolerances more than in their middle.

    Attributes
    ----------
    machine : str
        Its name.
    closing : int
        Findings that close the gate.
    milder : tuple of (str, str or None)
        Clause and position of those that would not, with every dimension in the middle of its tolerance.
    """

    machine: str
    closing: int
    milder: tuple[tuple[str, str | None], ...]

    def as_dict(self) -> dict[str, Any]:
        """The keys of the result file."""
        milder = [{"clause": clause, "station": station} for clause, station in self.milder]
        return {"machine": self.machine, "closing": self.closing, "milder": milder}


@frozen
class ReviewResult:
    """Everything a writer may say about one reviewed table.

    ``complete_wanted``: anything not assessed closes the gate. ``undecided_passes``: the caller goes on with an
    undecided gate. ``needed``: values that would decide it. ``plan``: the changes that open the gate, or lower what
    closes it; ``plan_result``: what a review of the table with all of them says, None where nothing closes the gate;
    ``decisions``: alternatives outside the plan; ``what_matters``: by machine what a step of each parameter moves,
    empty where nobody asked; ``likely``: machines that the middle of the tolerances would treat better; ``language``:
    the one that the report is written in.
    """

    tool: str
    tool_version: str
    rulebook: RulebookRecord
    input: InputRecord
    machines: tuple[MachineRecord, ...]
    assessments: tuple[Assessment, ...]
    unrecognised: tuple[Unrecognised, ...]
    gate_severity: str
    complete_wanted: bool = False
    notes: tuple[str, ...] = ()
    understood: tuple[ReadCell, ...] = ()
    concessions: tuple[ConcessionNote, ...] = ()
    failures: tuple[Failure, ...] = ()
    stations: tuple[StationRecord, ...] = ()
    undecided_passes: bool = False
    needed: tuple[Needed, ...] = ()
    left_out: tuple[str, ...] = ()
    plan: tuple[PlanLine, ...] = ()
    plan_result: PlanResult | None = None
    decisions: tuple[Decision, ...] = ()
    what_matters: tuple[Matters, ...] = ()
    language: str = "en"
    likely: tuple[Likely, ...] = ()

    @property
    def closing(self) -> tuple[Assessment, ...]:
        """Findings at or above the severity that closes the gate."""
        return tuple(a for a in self.assessments if a.outcome == "finding" and at_least(a.severity, self.gate_severity))

    @property
    def outcomes(self) -> dict[str, int]:
        """How many assessments had each outcome."""
        return _count(OUTCOMES, (a.outcome for a in self.assessments))

    @property
    def severities(self) -> dict[str, int]:
        """How many findings had each severity."""
        return _count(SEVERITIES, (a.severity for a in self.assessments if a.outcome == "finding"))

    @property
    def nothing_assessed(self) -> bool:
        """Whether no clause about a seat or machine could be assessed; clauses about the table itself do not count."""
        return not any(
            a.outcome in ("met", "finding", "conceded") and not a.clause.startswith(f"{TABLE_CHAPTER}.")
            for a in self.assessments
        )

    @property
    def unjudged(self) -> tuple[Assessment, ...]:
        """What must be judged before the gate may open, and was not assessed."""
        return tuple(a for a in self.assessments if a.must and a.outcome == "not assessed")

    @property
    def carried(self) -> int:
        """How many assumed values the verdict rests on: those of clauses that must be judged, each counted once."""
        found = set()
        for item in self.assessments:
            if item.must and item.outcome in ("met", "finding", "conceded"):
                for assumed in item.assumed:
                    entry = vocabulary().get(assumed.parameter)
                    whole = entry is not None and entry.level == "machine"
                    found.add((item.machine, None if whole else item.station, assumed.parameter))
        return len(found)

    @property
    def gate(self) -> str:
        """``open``, ``closed`` or ``undecided``.

        Closed by a finding at or above ``gate_severity``, by a clause that failed to run, by an expired or exceeded
        concession's finding (which counts as a finding), where ``complete_wanted`` by anything not assessed, and always
        where nothing at all was assessed (see :attr:`nothing_assessed`). Undecided where nothing closes it but
        something that must be judged was not (:attr:`unjudged`), whether the caller goes on with that or not, or
        where the call left clauses out (``left_out``).
        """
        closed = (
            bool(self.failures)
            or any(a.outcome == "finding" and at_least(a.severity, self.gate_severity) for a in self.assessments)
            or (self.complete_wanted and any(a.outcome == "not assessed" for a in self.assessments))
            or self.nothing_assessed
        )
        if closed:
            return "closed"
        return "undecided" if self.unjudged or self.left_out else "open"

    def as_dict(self) -> dict[str, Any]:
        """The content of the result file but for its assessments, machines and stations."""
        asked = {"what_matters": [matters.as_dict() for matters in self.what_matters]} if self.what_matters else {}
        if self.likely:
            asked["likely"] = [machine.as_dict() for machine in self.likely]
        return {
            **asked,
            "format": "ringseat-result",
            "format_version": FORMAT_VERSION,
            "tool": {"name": self.tool, "version": self.tool_version},
            "rulebook": {
                "name": self.rulebook.name,
                "version": self.rulebook.version,
                "sha256": self.rulebook.sha256,
                "layers": [asdict(layer) for layer in self.rulebook.layers],
                "loosened": [asdict(entry) for entry in self.rulebook.loosened],
            },
            "input": asdict(self.input),
            "unrecognised": [{"name": u.name, "value": u.value, "place": u.place.as_dict()} for u in self.unrecognised],
            "summary": {
                "outcomes": self.outcomes,
                "severities": self.severities,
                "gate": self.gate,
                "gate_severity": self.gate_severity,
                "complete": self.complete_wanted,
                "undecided_passes": self.undecided_passes,
                "undecided": [
                    {"clause": a.clause, "machine": a.machine, "station": a.station, "missing": list(a.missing)}
                    for a in self.unjudged
                ],
                "assumed": self.carried,
                "loosened": len(self.rulebook.loosened),
            },
            "needed": [entry.as_dict() for entry in self.needed],
            "plan": [line.as_dict() for line in self.plan],
            "plan_result": None if self.plan_result is None else self.plan_result.as_dict(),
            "decisions": [decision.as_dict() for decision in self.decisions],
            "notes": list(self.notes),
            "concessions": [asdict(note) for note in self.concessions],
            "failures": [failure.text for failure in self.failures],
            **({} if self.language == "en" else {"language": self.language}),
        }


def _count(words: tuple[str, ...], seen: Iterable[str | None]) -> dict[str, int]:
    counts = dict.fromkeys(words, 0)
    for word in seen:
        if word is not None:
            counts[word] += 1
    return counts
