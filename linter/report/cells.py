"""Which of the cells a finding rests on is the one to change, and what to change in words."""

import re
from collections.abc import Iterable

from linter.model.findings import Assessment, Change, Used
from linter.model.vocabulary import vocabulary
from linter.model.wording import words_of

#: Said of a finding without changes; pairs are not tried for a remark.
NONE_FOUND = "Among the changes tried, no single one and no pair clears this without making something else worse."
NONE_ALONE = "Among the changes tried, no single one clears this without making something else worse."

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


def none_found(item: Assessment) -> str:
    """What is said of a finding without changes; empty for any other, and where all it asks is to state something."""
    if item.outcome != "finding" or item.clears_with or not (cells_to_change(item) or not item.places):
        return ""
    return NONE_ALONE if item.severity == "remark" else NONE_FOUND


def first_ways(item: Assessment, most: int = 2) -> tuple[tuple[Change, ...], ...]:
    """The first ways to clear a finding, each one change or several that belong together; checked ones before others.

    Parameters
    ----------
    item : Assessment
        Any assessment.
    most : int
        How many ways are wanted.

    Returns
    -------
    tuple of tuple of Change
        At most ``most``; those at a cost only where there is no other.
    """
    for verified in (True, False):
        ways: dict[tuple[int, int], list[Change]] = {}
        for k, change in enumerate(item.clears_with):
            if change.verified is verified:
                ways.setdefault((change.together, 0 if change.together else k), []).append(change)
        if ways:
            return tuple(map(tuple, list(ways.values())[:most]))
    return ()


def same_change(items: Iterable[Assessment]) -> tuple[tuple[Assessment, ...], ...]:
    """Findings by what clears them: together where :func:`first_ways`, or without any the remedy, are the same."""
    groups: dict[object, list[Assessment]] = {}
    for item in items:
        groups.setdefault(first_ways(item) or item.remedy, []).append(item)
    return tuple(map(tuple, groups.values()))


def what_to_change(item: Assessment) -> str:
    """The changes that clear a finding and its remedy, in one line of plain text; empty where there is nothing."""
    parts = []
    for verified, lead in (
        (True, "Clears it, and nothing else gets worse"),
        (False, "Clears it, at a cost"),
    ):
        changes = [change for change in item.clears_with if change.verified is verified]
        sets: dict[int, list[str]] = {}
        for change in changes:
            if change.together:
                sets.setdefault(change.together, []).append(_in_words(change))
        ways = [_in_words(change) for change in changes if not change.together]
        ways += [" together with ".join(group) for group in sets.values()]
        if ways:
            parts.append(sentence(f"{lead}: {'; or '.join(ways)}"))
    if said := none_found(item):
        parts.append(said)
    if item.remedy:
        parts.append(sentence(item.remedy))
    return " ".join(parts)


def _in_words(change: Change) -> str:
    words = words_of(change.parameter)
    return change.text if words in change.text or change.parameter in change.text else f"{words}: {change.text}"


def sentence(text: str) -> str:
    """A text that ends like a sentence."""
    return text if not text or text.rstrip()[-1:] in (".", "!", "?", ":", "") else f"{text.rstrip()}."
