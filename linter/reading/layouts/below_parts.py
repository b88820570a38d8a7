"""What headings below words for parts or groups mean: ``Welle`` over ``Größtmaß``; ``Machine data`` over ``Mass``."""

import re
from collections.abc import Sequence

from attrs import evolve

from linter.reading.layouts.sides import Side, is_use, part_or_rotor, within, without_data
from linter.reading.words.column_words import KEYS
from linter.reading.words.columns import key_of
from linter.reading.words.headings import Heading, Words

#: A diameter or a size and no more, with its unit or without; sizes of a part, which one of another thing may have too.
_DIAMETER = re.compile(
    r"(?:[Ø⌀øφΦϕ∅Ф]|dia(?:m(?:eter)?)?\.?|durchm(?:esser)?\.?|直径|size|dimensions?|dim\.|maß|cotes?|misura|quota|"
    r"medida|cota|dimensión|размер|寸法|尺寸)(?:\s*[(\[/].*)?",
    re.IGNORECASE,
)
_OF_PART = re.compile("_(?:seat|shoulder|fillet|groove|undercut)_")
#: Words of parts of a size, and the aspect that each is.
JOINABLE = {"UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min", "CLASS": "tolerance", "UNIT": "unit"}


def of_others(words: Words, above: str, lower: str, joined: Heading | None, label: str) -> tuple[Heading | None, str]:
    """What a heading below another than a part's means (``Machine data``); a size there is none of a seat."""
    own = within(words, Side("", above), lower) if lower else None
    if lower and (is_use(above) or words.of_whole(above)):
        return own, lower
    thing = part_or_rotor(above) if joined is None and above and lower else None
    if thing is not None and thing.is_thing and (turning := within(words, thing, lower)) is not None:
        return turning, lower  # Rotor over n max
    head = words.heading(without_data(above)) if above else None
    of_all = head is not None and head.parameter in ("machine", "station") and not head.station
    if not of_all or own is None or _OF_PART.search(own.parameter):
        return joined, label
    return own, lower


def size_below(words: Words, seat: Heading, columns: Sequence[tuple[int, str]], headings: list[Heading | None]) -> None:
    """The seat whose heading says its part only, and below that a nominal beside its tolerance, or its two limits."""
    stated = ("value", "min", "max")
    if any((h := headings[c]) is not None and h.parameter == seat.parameter and h.aspect in stated for c, _ in columns):
        return
    groups = {c: "VALUE" if _DIAMETER.fullmatch(lower) else words.group(lower) for c, lower in columns}
    texts = dict(columns)
    nominal = [c for c, group in groups.items() if group == "VALUE" and headings[c] is None]
    if len(nominal) == 1 and {"UPPER", "LOWER", "CLASS", "MAX", "MIN"} & {*groups.values()}:
        headings[nominal[0]] = evolve(seat, unit=words.unit_of(texts[nominal[0]]))
    first = [*groups][:2]
    limits = {groups[c] for c in first} == {"MAX", "MIN"} and all(headings[c] is None for c in first)
    for c in first if limits and not nominal else ():
        headings[c] = evolve(seat, aspect=JOINABLE[groups[c]], unit=words.unit_of(texts[c]))


def below_part(words: Words, part: Side, above: str, lower: str, joined: Heading | None) -> tuple[Heading | None, str]:
    """What a heading below the word for a part means, and its label; ``joined`` is what both words say together."""
    own = words.heading(lower)
    if own is not None and own.parameter in ("machine", "station"):
        return own, lower
    if key_of(lower, words).strip(" .") in KEYS["place"]:
        return None, lower
    if (of_size := _of_size_above(above, lower, words)) is not None:
        return of_size, f"{above} {lower}"
    found = (joined or own) if part.side == "bearing" else within(words, part, lower)
    of_size_before = found is None and words.group(lower) in JOINABLE
    by_cells = found is None and part.side == "bearing"  # its cells may say what it is
    if by_cells and words.group(lower) == "CLASS":
        return found, f"{part.word} {lower}"
    return found, lower if of_size_before or by_cells else f"{part.word} {lower}"


def _of_size_above(above: str, lower: str, words: Words) -> Heading | None:
    """The part of a size that a heading below the name of the size states, or None."""
    part = "value" if _DIAMETER.fullmatch(lower) else {"VALUE": "value", **JOINABLE}.get(words.group(lower), "")
    size = words.heading(above)
    if part in ("", "unit") or size is None or size.entry.kind != "toleranced":
        return None
    return evolve(size, aspect=part, unit=words.unit_of(lower) or size.unit)
