"""Which of the cells a finding rests on is the one to change, and what to change in words."""

import re
from collections.abc import Iterable

from linter.model.findings import Assessment, Change, Used
from linter.model.vocabulary import vocabulary
from linter.model.wording import words_of

_NAME = re.compile(r"[a-z][a-z0-9_]*")


def cells_to_change(item: Assessment) -> tuple[Used, ...]:
    """Cells that a finding asks to change; the others it rests on are only looked at.

    Parameters
    ----------
    item : Assessment
        Any assessment.

    Returns
    -------
    tuple of Used
        Cells of the parameters that a change clears; where no change is known those that the remedy names, and none
        where the table does not state what the remedy names; where it names no parameter, all cells. In the order of
        ``item.places``.
    """
    cleared = {change.parameter for change in item.clears_with}
    found = tuple(used for used in item.places if used.parameter in cleared)
    if found:
        return found
    named = {word for word in _NAME.findall(item.remedy) if word in vocabulary()}
    return tuple(used for used in item.places if used.parameter in named) if named else item.places


def same_change(items: Iterable[Assessment]) -> tuple[tuple[Assessment, ...], ...]:
    """Findings by what clears them: together where their changes, or without any the remedy, are the same."""
    groups: dict[object, list[Assessment]] = {}
    for item in items:
        key = tuple((change.parameter, change.text) for change in item.clears_with)
        groups.setdefault(key or item.remedy, []).append(item)
    return tuple(map(tuple, groups.values()))


def cells_of(items: Iterable[Assessment], parameter: str) -> tuple[str, ...]:
    """The cells of one parameter that findings rest on, each once."""
    first = (next((used.place.short() for used in item.places if used.parameter == parameter), "") for item in items)
    return tuple(filter(None, dict.fromkeys(first)))


def what_to_change(item: Assessment) -> str:
    """The lines of the plan that serve a finding and its remedy, in one line of plain text; empty without either."""
    parts = []
    if item.clears_with:
        lines = "; ".join(f"line {change.line}, {change_in_words(change)}" for change in item.clears_with)
        parts.append(sentence(f"In the plan: {lines}"))
    if item.remedy:
        parts.append(sentence(item.remedy))
    return " ".join(parts)


def change_in_words(change: Change) -> str:
    """A change with the words of its parameter."""
    words = words_of(change.parameter)
    return change.text if words in change.text or change.parameter in change.text else f"{words}: {change.text}"


def sentence(text: str) -> str:
    """A text that ends like a sentence."""
    return text if not text or text.rstrip()[-1:] in (".", "!", "?", ":", "") else f"{text.rstrip()}."
