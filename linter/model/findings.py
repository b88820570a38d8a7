"""The result of a review as plain records: what every writer and every other program reads."""

from collections.abc import Callable, Collection, Iterable, Iterator
from typing import Any

from attrs import asdict, evolve, frozen

from linter.model.assessments import (  # noqa: F401 - the records of a result are imported from here
    OUTCOMES,
    SEVERITIES,
    TO_ACT_ON,
    Assessment,
    Assumed,
    Cause,
    Change,
    Quantity,
    Used,
    WorkingLine,
    at_least,
)
from linter.model.many import Anew, AssumedAt, ManyAssessments
from linter.model.matters import Matters
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

GATES = ("open", "closed", "undecided")
FORMAT_VERSION = 2
#: Chapter of the clauses about the table itself; meeting them says nothing about a seat.
TABLE_CHAPTER = "table"


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
    the one that the report is written in. Of a large table ``assessments``, ``understood`` and
    ``stations`` are made while they are gone through; :attr:`to_act_on` is at hand for any table.
    """

    tool: str
    tool_version: str
    rulebook: RulebookRecord
    input: InputRecord
    machines: tuple[MachineRecord, ...]
    assessments: tuple[Assessment, ...] | ManyAssessments
    unrecognised: tuple[Unrecognised, ...]
    gate_severity: str
    complete_wanted: bool = False
    notes: tuple[str, ...] = ()
    understood: tuple[ReadCell, ...] | Anew[ReadCell] = ()
    concessions: tuple[ConcessionNote, ...] = ()
    failures: tuple[Failure, ...] = ()
    stations: tuple[StationRecord, ...] | Anew[StationRecord] = ()
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
    def to_act_on(self) -> tuple[Assessment, ...]:
        """Findings, concessions and what is not assessed, in order."""
        if isinstance(self.assessments, ManyAssessments):
            return self.assessments.to_act_on
        return tuple(a for a in self.assessments if a.outcome in TO_ACT_ON)

    def of_machines(self, names: Collection[str]) -> Iterator[Assessment]:
        """The assessments of some machines, in order."""
        if isinstance(self.assessments, ManyAssessments):
            return self.assessments.of_machines(names)
        return (a for a in self.assessments if a.machine in names)

    @property
    def sources(self) -> Collection[str]:
        """Keys into the bibliography, of every assessment."""
        if isinstance(self.assessments, ManyAssessments):
            return self.assessments.sources
        return dict.fromkeys(source for a in self.assessments for source in a.sources)

    def changed(self, change: Callable[[Assessment], Assessment]) -> "ReviewResult":
        """The result with what somebody acts on as ``change`` gives it."""
        held = self.assessments
        if isinstance(held, ManyAssessments):
            return evolve(self, assessments=evolve(held, to_act_on=tuple(map(change, held.to_act_on))))
        return evolve(self, assessments=tuple(change(a) if a.outcome in TO_ACT_ON else a for a in held))

    @property
    def closing(self) -> tuple[Assessment, ...]:
        """Findings at or above the severity that closes the gate."""
        return tuple(a for a in self.to_act_on if a.outcome == "finding" and at_least(a.severity, self.gate_severity))

    @property
    def outcomes(self) -> dict[str, int]:
        """How many assessments had each outcome."""
        if not isinstance(self.assessments, ManyAssessments):
            return _count(OUTCOMES, (a.outcome for a in self.assessments))
        counts = _count(OUTCOMES, (a.outcome for a in self.to_act_on))
        for number, outcome in enumerate(("met", "not applicable")):
            counts[outcome] += sum(passed[number] for passed in self.assessments.passed.values())
        return counts

    @property
    def severities(self) -> dict[str, int]:
        """How many findings had each severity."""
        return _count(SEVERITIES, (a.severity for a in self.to_act_on if a.outcome == "finding"))

    @property
    def nothing_assessed(self) -> bool:
        """Whether no clause about a seat or machine could be assessed; clauses about the table itself do not count."""
        if isinstance(self.assessments, ManyAssessments) and self.assessments.judged:
            return False
        many = isinstance(self.assessments, ManyAssessments)
        return not any(
            a.outcome in ("met", "finding", "conceded") and not a.clause.startswith(f"{TABLE_CHAPTER}.")
            for a in (self.to_act_on if many else self.assessments)
        )

    @property
    def unjudged(self) -> tuple[Assessment, ...]:
        """What must be judged before the gate may open, and was not assessed."""
        return tuple(a for a in self.to_act_on if a.must and a.outcome == "not assessed")

    @property
    def assumed(self) -> Iterator[AssumedAt]:
        """What was assumed and where; of a large table what is met or does not apply comes first."""
        many = isinstance(self.assessments, ManyAssessments)
        if isinstance(self.assessments, ManyAssessments):
            yield from self.assessments.assumed
        for item in self.to_act_on if many else self.assessments:
            carries = item.must and item.outcome in ("met", "finding", "conceded")
            for assumed in item.assumed:
                yield AssumedAt(assumed, item.machine, item.station, carries)

    @property
    def carried(self) -> int:
        """How many assumed values the verdict rests on: those of clauses that must be judged, each counted once."""
        found = set()
        for entry in self.assumed:
            if entry.carries:
                named = vocabulary().get(entry.assumed.parameter)
                whole = named is not None and named.level == "machine"
                found.add((entry.machine, None if whole else entry.station, entry.assumed.parameter))
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
            or bool(self.closing)
            or (self.complete_wanted and any(a.outcome == "not assessed" for a in self.to_act_on))
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
