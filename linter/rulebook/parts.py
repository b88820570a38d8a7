"""The parts of a clause as they are stated: parameters, limits, severity steps, whether it must be judged."""

import math
from collections.abc import Mapping
from difflib import get_close_matches
from itertools import pairwise
from typing import Any

from attrs import evolve

from linter.model.findings import SEVERITIES, TABLE_CHAPTER
from linter.model.vocabulary import vocabulary
from linter.rulebook.gates import wrong_condition
from linter.rulebook.model import Limit, RulebookError, Step


def gate_of(file: str, clause: str, raw: Mapping[str, Any]) -> dict[str, Any]:
    """What is stated of whether a clause must be judged; one of the two statements takes the place of both."""
    if "gate" not in raw and "must_when" not in raw:
        return {}
    conditions = tuple(raw.get("must_when", ()))
    if conditions and raw.get("gate") == "may":
        raise RulebookError(file, clause, 'gate "may" and must_when contradict each other')
    for condition in conditions:
        wrong = wrong_condition(condition)
        if wrong:
            raise RulebookError(file, clause, f"must_when: {wrong}")
    if clause.split(".")[0] == TABLE_CHAPTER and (conditions or raw["gate"] == "may"):
        raise RulebookError(file, clause, "a clause about the table itself must always be judged")
    return {"gate": "" if conditions else raw["gate"], "must_when": conditions}


def parameters_of(file: str, clause: str, names: Any) -> tuple[str, ...]:
    """Names of parameters, each one of the vocabulary."""
    for name in names:
        if name not in vocabulary():
            close = get_close_matches(name, vocabulary(), 1)
            hint = f"; is {close[0]} meant?" if close else ""
            raise RulebookError(file, clause, f"{name!r} is not a parameter of the vocabulary{hint}")
    return tuple(names)


def new_limit(file: str, clause: str, key: str, raw: Mapping[str, Any]) -> Limit:
    """A limit as it is stated."""
    _finite(file, clause, f"limit {key}", raw["value"])
    return Limit(
        value=raw["value"],
        unit=raw.get("unit", "1"),
        source=raw["source"],
        provenance=raw["provenance"],
        note=raw.get("note", ""),
        looser=raw.get("looser", "either"),
    )


def changed_limit(file: str, clause: str, key: str, old: Limit, raw: Mapping[str, Any]) -> Limit:
    """A limit with another value, of the same unit and kind, and a source of its own."""
    _finite(file, clause, f"limit {key}", raw["value"])
    if raw.get("unit", old.unit) != old.unit:
        raise RulebookError(file, clause, f"limit {key} is in {old.unit}, not in {raw['unit']}")
    if _kind(raw["value"]) != _kind(old.value):
        raise RulebookError(file, clause, f"limit {key}: {raw['value']!r} is not like {old.value!r}")
    return evolve(
        old,
        value=raw["value"],
        source=raw["source"],
        provenance=raw["provenance"],
        note=raw.get("note", ""),
    )


def _finite(file: str, clause: str, where: str, value: Any) -> None:
    for number in value if isinstance(value, list) else [value]:
        if isinstance(number, float) and not math.isfinite(number):
            raise RulebookError(file, clause, f"{where}: {number} is not a number to compare with")


def _kind(value: Any) -> Any:
    if isinstance(value, list):
        return [_kind(part) for part in value]
    return "text" if isinstance(value, str) else "number"


def steps_of(file: str, clause: str, raw: list[Mapping[str, Any]]) -> tuple[Step, ...]:
    """Severity steps that rise, each graver than the one before."""
    steps = tuple(Step(float(s["above"]), s["severity"]) for s in raw)
    for step in steps:
        _finite(file, clause, "steps", step.above)
    for before, after in pairwise(steps):
        graver = SEVERITIES.index(after.severity) < SEVERITIES.index(before.severity)
        if after.above <= before.above or not graver:
            raise RulebookError(file, clause, "the steps must rise, each graver than the one before")
    return steps
