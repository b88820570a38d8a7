"""Words that say another feature of a seat beside its name: a column ``Ra`` behind a row ``Shaft seat``."""

from linter.reading.words.headings import Heading, Words


def feature_beside(words: Words, name: str, label: str) -> Heading | None:
    """What a heading or key says beside the name of a seat or another part: another parameter of it, or None."""
    own = words.heading(name)
    found = words.heading(f"{name} {label}") if own is not None and own.entry.level == "station" else None
    if found is None or own is None or found.parameter == own.parameter or found.entry.level != "station":
        return None
    return found if found.parameter.split("_")[0] == own.parameter.split("_")[0] else None
