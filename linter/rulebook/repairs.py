"""Which parameters repair a clause: as it says itself, else as ``ruleset/repairs.toml`` says, else by what it needs."""

import tomllib
from collections.abc import Iterable
from functools import cache
from typing import Literal

from attrs import frozen

from linter.model.packaged import data_folder
from linter.model.vocabulary import parameter
from linter.rulebook.model import Clause, RulebookError
from linter.rulebook.parts import parameters_of

Way = Literal["", "tighter", "looser"]
WAYS: tuple[Way, ...] = ("tighter", "looser")


@frozen
class Repair:
    """A parameter that repairs a clause; ``way`` says which way a seat has to move, empty for either."""

    name: str
    way: Way = ""


@cache
def _packaged() -> dict[str, list[str]]:
    """``ruleset/repairs.toml``: by clause, for rulebooks that do not say it themselves."""
    return dict(tomllib.loads((data_folder("ruleset") / "repairs.toml").read_text(encoding="utf-8")))


def repairs(clause: Clause) -> tuple[Repair, ...]:
    """The parameters that repair a clause, in the order an engineer would try them.

    Parameters
    ----------
    clause : Clause
        Of any rulebook, releases that do not say it among them.

    Returns
    -------
    tuple of Repair
        Empty where nothing on the drawing repairs it: only facts of the machine or decisions do.
    """
    stated: Iterable[str] | None = clause.repairs or _packaged().get(clause.id)
    if stated is None:
        named = dict.fromkeys((*clause.needs, *clause.uses))
        stated = [name for name in named if parameter(name).change not in ("", "words")]
    return tuple(_repair(text) for text in stated)


def _repair(text: str) -> Repair:
    first, _, rest = text.partition(" ")
    for way in WAYS:
        if first == way:
            return Repair(rest, way)
    return Repair(text)


def repairs_of(file: str, clause: str, stated: Iterable[str]) -> tuple[str, ...]:
    """What a rulebook states as repairs of a clause: parameters of the vocabulary, each once; a way only for a seat."""
    found = tuple(stated)
    entries = [_repair(text) for text in found]
    parameters_of(file, clause, [entry.name for entry in entries])
    for entry in entries:
        if entry.way and parameter(entry.name).change != "class":
            raise RulebookError(file, clause, f"repairs: {entry.way} is said of a seat; {entry.name} is none")
        if parameter(entry.name).kind == "text":
            raise RulebookError(file, clause, f"repairs: {entry.name} is a text, which nothing can be tried for")
    if len({entry.name for entry in entries}) < len(entries):
        raise RulebookError(file, clause, "repairs: a parameter stands twice")
    return found
