"""What a designer asks of a machine first, each question with what the clauses say of it, met or not."""

from collections.abc import Sequence

from attrs import frozen

from linter.report.language import say
from linter.report.pages import MachinePart


def questions() -> dict[str, tuple[str, ...]]:
    """The questions in the order of a designer, each with the clauses that answer it."""
    return {
        say("Is the speed acceptable for this duty?"): (
            "speed.factor", "speed.maker-limit", "speed.ball-inertia", "rotor.critical-speed", "heat.cycle",
        ),
        say("What temperature?"): ("heat.balance", "heat.reference-speed", "life.grease"),
        say("Which fits?"): (
            "fit.shaft-class", "fit.housing-class", "fit.inner-hold", "fit.outer-slides", "fit.running-clearance",
        ),
        say("Which run-out?"): ("alignment.seat-runout", "alignment.shoulder-runout", "alignment.coaxiality"),
        say("Which preload?"): ("preload.force", "preload.window", "preload.minimum", "preload.maximum"),
    }  # fmt: skip


@frozen
class Answer:
    """What one clause says at the positions where it says the same; the number of its finding, None where it is met."""

    title: str
    text: str
    places: tuple[str, ...]
    number: int | None
    severity: str


def answers(part: MachinePart) -> tuple[tuple[str, tuple[Answer, ...]], ...]:
    """Questions with their answers, those left out that no clause was assessed for.

    Parameters
    ----------
    part : MachinePart
        A machine of the report.

    Returns
    -------
    tuple of (str, tuple of Answer)
        In the order of :func:`questions`.
    """
    told: dict[str, dict[tuple[str, str, int | None, str], list[str]]] = {}
    for section in part.sections:
        judged = [(number, item) for number, item in section.here] + [(None, item) for item in section.met]
        for number, item in judged:
            severity = "" if number is None else item.severity or ""
            key = (item.title, item.message, number, severity)
            told.setdefault(item.clause, {}).setdefault(key, []).append(section.station or "")
    found = []
    for question, clauses in questions().items():
        lines = [
            Answer(title, text, _places(stations), number, severity)
            for clause in clauses
            for (title, text, number, severity), stations in told.get(clause, {}).items()
        ]
        if lines:
            found.append((question, tuple(lines)))
    return tuple(found)


def _places(stations: Sequence[str]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(name for name in stations if name))
