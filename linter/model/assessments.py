"""One clause against one station or machine, as a plain record."""

from attrs import frozen

from linter.model.places import Place

OUTCOMES = ("met", "finding", "not assessed", "not applicable", "conceded")
#: Outcomes that somebody acts on.
TO_ACT_ON = ("finding", "conceded", "not assessed")
SEVERITIES = ("critical", "major", "minor", "remark")


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
