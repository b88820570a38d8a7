"""Accepted deviations: read from a file, and held against the findings of a review.

A concession covers a finding of its clause at its machine and station while four things hold: the drawing has the
revision it was granted for, its last day is not past, the finding is no graver than it accepts, and the observed value
is no worse than its limit. Otherwise the finding stays a finding, and the result says which of the four it was.
"""

import datetime
import json
import math
import tomllib
from collections.abc import Iterable, Sequence
from functools import cache
from pathlib import Path
from typing import Any

from attrs import evolve, frozen

from linter.model.findings import SEVERITIES, Assessment, ConcessionNote, MachineRecord, Quantity, ReviewResult
from linter.model.packaged import data_folder
from linter.model.wording import number_text, quantity_text, unit_text
from linter.reading.cells.units import conversion
from linter.rulebook.model import UNSTATED_CONCESSION_FACTOR

LARGEST_FILE = 4_000_000


class ConcessionError(ValueError):
    """A file of concessions that cannot be used; the text names the file, the entry, and what is expected."""


@frozen
class Concession:
    """One accepted deviation.

    ``station`` None stands for every station of the machine and the machine itself; ``limit`` is the observed value up
    to which it is accepted, ``severity`` the gravest accepted, ``expires`` the last day on which it holds.
    """

    number: str
    clause: str
    machine: str
    station: str | None
    drawing_number: str | None
    drawing_revision: str
    limit: Quantity | None
    severity: str
    approver: str
    reason: str
    expires: datetime.date

    @property
    def where(self) -> str:
        """Clause and position in words."""
        return f"{self.clause} at {self.machine}{f' {self.station}' if self.station else ''}"


@cache
def _validator() -> Any:
    from jsonschema import Draft202012Validator

    path = data_folder("schemas") / "concessions.schema.json"
    return Draft202012Validator(json.loads(path.read_text(encoding="utf-8")))


def load_concessions(path: Path) -> tuple[Concession, ...]:
    """Read a file of concessions.

    Parameters
    ----------
    path : Path
        JSON where it is named so or its first sign is a brace, else TOML; UTF-8. Its form is that of
        ``schemas/concessions.schema.json``.

    Returns
    -------
    tuple of Concession
        In the order of their numbers.

    Raises
    ------
    ConcessionError
        If it cannot be read or an entry cannot be used.
    """
    try:
        raw = path.read_bytes()
    except OSError as error:
        raise ConcessionError(f"{path}: the concessions cannot be opened ({error.strerror})") from None
    if len(raw) > LARGEST_FILE:
        raise ConcessionError(f"{path}: the concessions have {len(raw)} bytes; at most {LARGEST_FILE} are read")
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise ConcessionError(f"{path}: byte {error.start} is not UTF-8 text; save the file as UTF-8") from None
    is_json = path.suffix.lower() == ".json" or text.lstrip()[:1] == "{"
    try:
        if is_json:
            content = json.loads(text, object_pairs_hook=_no_doubles, parse_constant=_no_constant)
        else:
            content = tomllib.loads(text)
    except (ValueError, RecursionError) as error:
        raise ConcessionError(f"{path}: cannot be read as {'JSON' if is_json else 'TOML'}: {error}") from None
    if not isinstance(content, dict):
        raise ConcessionError(
            f"{path}: top level: read a JSON {type(content).__name__}; expected an object with the key 'concessions'"
        )
    return _concessions(content, str(path))


def _no_doubles(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) != len(pairs):
        twice = next(key for k, (key, _) in enumerate(pairs) if key in dict(pairs[:k]))
        raise ValueError(f"the key {twice!r} stands twice in one object")
    return found


def _no_constant(text: str) -> float:
    raise ValueError(f"{text} is not a number")


def _concessions(content: dict[str, Any], file: str) -> tuple[Concession, ...]:
    entries = content.get("concessions")
    if isinstance(entries, list):
        for entry in entries:
            expires = entry.get("expires") if isinstance(entry, dict) else None
            if type(expires) is datetime.date:
                entry["expires"] = expires.isoformat()
    errors = sorted(_validator().iter_errors(content), key=lambda e: ([str(p).zfill(6) for p in e.path], e.message))
    if errors:
        path = list(errors[0].absolute_path)
        message = errors[0].message
        raise ConcessionError(
            f"{file}: {_entry(entries, path)}: {message if len(message) < 300 else message[:300] + '…'}"
        )
    found: dict[str, Concession] = {}
    for index, entry in enumerate(content["concessions"]):
        name = _entry(entries, ["concessions", index])
        if entry["number"] in found:
            raise ConcessionError(
                f"{file}: {name}: the number {entry['number']!r} is already taken; numbers are unique"
            )
        found[entry["number"]] = _concession(entry, f"{file}: {name}")
    return tuple(found[number] for number in sorted(found))


def _entry(entries: Any, path: Sequence[Any]) -> str:
    """The entry that an error is about, by its place and number, and the key in it."""
    if len(path) < 2:
        return "top level"
    entry = entries[path[1]]
    number = entry.get("number") if isinstance(entry, dict) else None
    name = f"concession {int(path[1]) + 1}" + (f" (number {number!r})" if isinstance(number, str) else "")
    return name + (f", {'.'.join(map(str, path[2:]))}" if len(path) > 2 else "")


def _concession(entry: dict[str, Any], name: str) -> Concession:
    try:
        expires = datetime.date.fromisoformat(entry["expires"])
    except ValueError:
        raise ConcessionError(f"{name}, expires: read {entry['expires']!r}; expected a day as YYYY-MM-DD") from None
    limit = None
    if "limit" in entry:
        value = entry["limit"]["value"]
        if (isinstance(value, float) and not math.isfinite(value)) or abs(value) > 1e300:
            raise ConcessionError(f"{name}, limit.value: read {str(value)[:40]}; expected a finite number")
        limit = Quantity(float(value), entry["limit"]["unit"])
    return Concession(
        number=entry["number"],
        clause=entry["clause"],
        machine=entry["machine"],
        station=entry.get("station"),
        drawing_number=entry.get("drawing_number"),
        drawing_revision=entry["drawing_revision"],
        limit=limit,
        severity=entry["severity"],
        approver=entry["approver"],
        reason=entry["reason"],
        expires=expires,
    )


def apply(
    result: ReviewResult,
    accepted: Iterable[Concession],
    today: datetime.date | None = None,
    factor: float = UNSTATED_CONCESSION_FACTOR,
) -> ReviewResult:
    """Hold concessions against the findings of a review.

    Parameters
    ----------
    result : ReviewResult
        As reviewed.
    accepted : iterable of Concession
        From :func:`load_concessions`.
    today : date, optional
        The day they are held against; the system's where absent.
    factor : float
        How many times the limit of a clause they reach at most, as the rulebook says (``concessions_up_to``).

    Returns
    -------
    ReviewResult
        Covered findings have the outcome ``conceded`` and the concession's number, and keep their severity. What became
        of each concession stands in ``concessions``: one note for each of the states it met.
    """
    day = datetime.date.today() if today is None else today
    accepted = sorted(accepted, key=lambda c: c.number)
    reviewed = list(result.of_machines({concession.machine for concession in accepted}))
    items = list(reviewed)
    machines = {record.machine: record for record in result.machines}
    notes: list[ConcessionNote] = []
    for concession in accepted:
        states: dict[str, list[str]] = {}
        matching = [k for k, item in enumerate(items) if _is_about(concession, item)]
        open_ones = [k for k in matching if items[k].outcome == "finding"]
        for k in open_ones:
            state, text = _verdict(concession, items[k], machines[items[k].machine], day, factor)
            states.setdefault(state, []).append(text)
            if state == "applied":
                items[k] = evolve(items[k], outcome="conceded", concession=concession.number)
        if not open_ones:
            states = dict([_idle(concession, [items[k] for k in matching], result, day)])
        notes += [ConcessionNote(concession.number, state, _told(concession, texts)) for state, texts in states.items()]
    now = {id(before): after for before, after in zip(reviewed, items, strict=True)}
    result = result.changed(lambda item: now.get(id(item), item))
    return evolve(result, concessions=(*result.concessions, *notes))


def _is_about(concession: Concession, item: Assessment) -> bool:
    return (
        (item.clause, item.machine) == (concession.clause, concession.machine)
        and concession.station in (None, item.station)
    )  # fmt: skip


def _told(concession: Concession, texts: Sequence[str]) -> str:
    granted = f"Granted by {concession.approver} until {concession.expires.isoformat()}: {concession.reason}"
    return f"{' '.join(texts)} {granted}{'' if granted.endswith('.') else '.'}"


def _verdict(
    concession: Concession, item: Assessment, machine: MachineRecord, day: datetime.date, factor: float
) -> tuple[str, str]:
    """State of a concession at one finding of its clause, and one sentence."""
    where = f"{item.clause} at {item.machine}{f' {item.station}' if item.station else ''}"
    if day > concession.expires:
        return "expired", f"Ended on {concession.expires.isoformat()}; the finding {where} counts."
    other = _other_drawing(concession, machine)
    if other:
        return "other revision", f"{other}; the finding {where} counts."
    if SEVERITIES.index(str(item.severity)) < SEVERITIES.index(concession.severity):
        return "exceeded", f"Accepts {concession.severity} at most; {where} is {item.severity} and counts."
    covers, why = _covers(concession.limit, item, factor)
    if not covers:
        return "exceeded", f"{why}; the finding {where} counts."
    return "applied", f"Covers {where}{f': {why}' if why else ''}."


def _other_drawing(concession: Concession, machine: MachineRecord) -> str:
    for word, granted, stated in (
        ("drawing", concession.drawing_number, machine.drawing_number),
        ("revision", concession.drawing_revision, machine.drawing_revision),
    ):
        if granted is not None and granted != stated:
            return f"Granted for {word} {granted}, the table states {stated or 'none'}"
    return ""


def _covers(limit: Quantity | None, item: Assessment, reach: float) -> tuple[bool, str]:
    """Whether an observed value is no worse than the limit, which reaches no further than it may; and why."""
    observed = item.observed
    if observed is None:
        return True, "" if limit is None else "the finding has no observed value to hold against the limit"
    shown = quantity_text(observed.value, observed.unit)
    if limit is None:
        return False, f"No limit is stated, and the finding has the value {shown}"
    factor = 1.0 if limit.unit == observed.unit else conversion(limit.unit, observed.unit)
    if factor is None:
        wanted = unit_text(observed.unit) or "a pure number (unit 1)"
        return False, f"The limit is in {limit.unit}, which cannot be held against {wanted}"
    accepted = limit.value * factor
    accepted_shown = quantity_text(accepted, observed.unit)
    slack = 1e-9 * max(abs(accepted), abs(observed.value))
    way = _worse(item)
    if way == 0:
        if abs(observed.value - accepted) <= slack:
            return True, f"the observed value is {shown}, as accepted"
        return False, f"Observed {shown} is not the accepted {accepted_shown}, and it is not known which way is worse"
    broken = item.upper if way > 0 else item.lower
    if broken is not None and broken.value > 0:  # nothing is a multiple of a limit of zero or below
        furthest = broken.value * (reach if way > 0 else 1.0 / reach)
        if way * (accepted - furthest) > slack:
            words = f"{number_text(reach)} times" if way > 0 else f"one part in {number_text(reach)} of"
            bound = quantity_text(broken.value, broken.unit)
            return False, f"The accepted {accepted_shown} lies beyond {words} the limit {bound} of the clause"
    if way * (observed.value - accepted) > slack:
        return False, f"Observed {shown} is worse than the accepted {accepted_shown}"
    return True, f"observed {shown}, accepted {'up' if way > 0 else 'down'} to {accepted_shown}"


def _worse(item: Assessment) -> int:
    """Which way an observed value gets worse: 1 upwards, -1 downwards, 0 where its limits do not tell."""
    assert item.observed is not None
    value = item.observed.value
    above = item.upper is not None and value > item.upper.value
    below = item.lower is not None and value < item.lower.value
    if above != below:
        return 1 if above else -1
    if (item.upper is None) != (item.lower is None):
        return 1 if item.upper is not None else -1
    return 0


def _idle(
    concession: Concession, matching: Sequence[Assessment], result: ReviewResult, day: datetime.date
) -> tuple[str, list[str]]:
    """State of a concession that no finding needs, and why none does."""
    machines = {record.machine: record for record in result.machines}
    machine = machines.get(concession.machine)
    if day > concession.expires:
        return "expired", [f"Ended on {concession.expires.isoformat()}; no finding of {concession.where} needs it."]
    if machine is None:
        why = "the table has no such machine"
    elif concession.station is not None and concession.station not in machine.stations:
        why = f"the machine has no such station; it has {', '.join(machine.stations) or 'none'}"
    elif not matching:
        why = "the review has no such clause there"
    else:
        covered = sorted({str(item.concession) for item in matching if item.outcome == "conceded"})
        outcomes = sorted({item.outcome for item in matching if item.outcome != "conceded"})
        words = [*(f"already covered by {number}" for number in covered), *outcomes]
        why = f"the clause is {' and '.join(words)}"
    return "unused", [f"No finding of {concession.where} needs it: {why}."]
