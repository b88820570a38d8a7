"""Words that say another feature of a seat beside its name: a column ``Ra`` behind a row ``Shaft seat``."""

from linter.reading.layouts.sides import Side, within
from linter.reading.words.headings import Heading, Words


def feature_beside(words: Words, name: str, label: str, side: Side | None = None) -> Heading | None:
    """What a heading or key says beside the name of a seat or another part: another parameter of it, or None.

    ``side`` is the part that the row is of, where something else than its name says it.
    """
    own = within(words, side, name)
    found = None
    if own is not None and own.entry.level == "station":
        found = words.heading(f"{name} {label}") or (within(words, side, label) if side is not None else None)
    if found is None or own is None or found.parameter == own.parameter or found.entry.level != "station":
        return None
    return found if found.parameter.split("_")[0] == own.parameter.split("_")[0] else None
