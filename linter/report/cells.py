"""Which of the cells a finding rests on is the one to change, and what to change in words."""

import re

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
