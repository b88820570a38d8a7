"""Names of two sides (``Bearings (DE/FE)``, ``A | B``, ``Welle / Gehäuse``) and cells with one part for each of them.

What stands between the parts is a stroke, a bar or a semicolon, with blanks around it or without: common practice.
"""

import re
from collections.abc import Iterator

from attrs import frozen

from linter.reading.cells.signs import caseless, missing_state
from linter.reading.cells.units import known_unit
from linter.reading.words.boundary import fits_of
from linter.reading.words.designations import read_designation
from linter.reading.words.headings import Words
from linter.reading.words.parts import part_alone

_LONGEST_NAME, _LONGEST_CELL, _LONGEST_SIDE = 80, 80, 30
#: What may be a name of two sides: a look that costs little.
_MAY = re.compile(r"[/／|｜・;；&]|\b(?:and|und|et|y|e|и)\b|[,、，]")
_STROKE = re.compile(r"\s*[/／|｜]\s*")
_IN_BRACKETS = re.compile(
    r"(?P<head>[^()（）]*?)\s*[(（](?P<one>[^()（）]+?)\s*(?:[/／|｜・;；&,、，+]|\s(?:and|und|et|y|e|и)\s)\s*"
    r"(?P<two>[^()（）]+?)\s*[)）](?P<tail>[^()（）]*)"
)
#: Letters that are positions beside each other; others are directions (X/Y), symbols or units.
_LETTERS = frozenset(("ab", "12", "аб", "lr"))
#: Words for the bore beside that for the shaft (common practice).
_BORES = frozenset(caseless("bore|bohrung|alésage|agujero|foro|отверстие|穴|孔|内孔").split("|"))
_EDGES = " ,:：;–—-"
#: Signs between the two parts of a cell: with blanks around them before those without.
_BETWEEN = (re.compile(r"\s*\n\s*"), re.compile(r"\s+[/／|｜;；]\s+"), re.compile(r"\s*[/／|｜;；]\s*"))
_NUMBER = re.compile(r"[Ø⌀φ∅ø]?\s*(?:[≤≥<>±]\s*)?(?P<sign>[+\-−])?[\d.,]*\d")
#: A unit behind the second of two numbers, and a sign or symbol before the first: both may hold for both.
_UNIT_BEHIND = re.compile(r"[^A-Za-zµμ°%]*\d\s*(?P<unit>[^\d\s.,()±+−-][^\d()±+]*)")
#: A size with a deviation behind it: a stroke behind that stands before the other deviation.
_DEVIATED = re.compile(r"\d\S*[\s(]+[+\-−±]?\s?\d[\d.,]*$")
_BARE = re.compile(r"[Ø⌀φ∅ø≤≥<>±\s]*[+\-−]?\d+(?:[.,]\d+)?")
_BEFORE = re.compile(r"(?P<sign>R[az]\s*|[≤≥<>]\s*|max\.?\s+|R\s*|[Ø⌀φ∅ø]\s*)(?=\d)")


@frozen
class Sides:
    """What a name says without its two sides, and these; ``parts`` where they are shaft and housing, not positions."""

    rest: str
    one: str
    two: str
    parts: bool = False

    @property
    def both(self) -> tuple[str, str]:
        """The two sides in the order of the name."""
        return self.one, self.two


def sides_said(text: str, words: Words) -> Sides | None:
    """The two sides that a name says, or None.

    Parameters
    ----------
    text : str
        A name or a heading.
    words : Words
        The names that are understood.

    Returns
    -------
    Sides or None
        Positions of a machine, or shaft and housing, in the order of the name.
    """
    if not 2 < len(text) <= _LONGEST_NAME or not _MAY.search(text):
        return None
    for rest, one, two in _ways(text):
        if not 0 < len(one) <= _LONGEST_SIDE or not 0 < len(two) <= _LONGEST_SIDE:
            continue
        parts = {part_of(one), part_of(two)} == {"shaft", "housing"}
        if parts or _are_positions(one, two, words):
            return Sides(rest.strip(_EDGES), one, two, parts)
    return None


def _ways(text: str) -> Iterator[tuple[str, str, str]]:
    """What may be the rest of a name and its sides."""
    if (found := _IN_BRACKETS.fullmatch(text)) is not None:
        yield f"{found['head']} {found['tail'].strip(_EDGES)}", found["one"].strip(), found["two"].strip()
        return
    halves = _STROKE.split(text.strip())
    if len(halves) != 2:
        return
    before, after = halves
    one, two = before.split(), after.split()
    same = next((k for k, pair in enumerate(zip(one, two, strict=False)) if pair[0] != pair[1]), 0)
    if 0 < same < min(len(one), len(two)):
        yield " ".join(one[:same]), " ".join(one[same:]), " ".join(two[same:])  # Shaft seat A / Shaft seat B
    if len(one) == len(two):
        yield "", before, after
    if 1 < len(two) < len(one):
        yield " ".join(one[: -len(two)]), " ".join(one[-len(two) :]), after  # Sede lato motore / lato ventola
    if one[-1:] == two[-1:]:
        yield one[-1], " ".join(one[:-1]), " ".join(two[:-1])  # Front seat / Rear seat
    head, _, last = before.rpartition(" ")
    first, _, tail = after.partition(" ")
    if head:
        yield head, last, after
    if tail:
        yield tail, before, first
    if head and tail:
        yield f"{head} {tail}", last, first


def part_of(side: str) -> str:
    """``shaft`` or ``housing`` by one of two sides: a bore beside a shaft is that of the housing."""
    return part_alone(side) or ("housing" if caseless(side) in _BORES else "")


def _are_positions(one: str, two: str, words: Words) -> bool:
    """Whether two texts are two positions; a code that is not known may stand beside one that is (``DE/FE``)."""
    if one.casefold() == two.casefold() or (known_unit(one) is not None and len(one) > 1):
        return False
    if len(one) == len(two) == 1 and (one + two).isascii():
        return (one + two).casefold() in _LETTERS and one.isupper() == two.isupper()
    if one.isdigit() != two.isdigit():
        return False  # Spindel WS 12 / A
    said = [bool(words.station_said(side)) for side in (one, two)]
    if all(said):
        return True
    codes = len(one) == len(two) in (2, 3) and one.isupper() and two.isupper() and (one + two).isalpha()
    return any(said) and codes and (one[0] == two[0] or one[-1] == two[-1])


def two_parts(text: str, *, in_words: bool = False) -> tuple[str, str] | None:
    """The two parts of a cell that states one value for each of two sides, or None.

    Parameters
    ----------
    text : str
        A cell below or behind a name of two sides.
    in_words : bool
        Whether the parts may be words (``fixed / floating``).

    Returns
    -------
    tuple of str or None
        Each part as it stands alone, with the unit or the sign that stands once for both.
    """
    if not 2 < len(text) <= _LONGEST_CELL:
        return None
    pieces = next((p for sign in _BETWEEN if len(p := sign.split(text.strip())) > 1), [])
    if len(pieces) != 2 or not all(pieces) or not _are_alike(*pieces, in_words=in_words) or fits_of(text):
        return None
    one, two = pieces
    if _DEVIATED.search(one) is not None and _DEVIATED.search(two) is None:
        return None  # 32 +0.025/0
    behind = _UNIT_BEHIND.fullmatch(two)
    if behind is not None and _BARE.fullmatch(one) and known_unit(behind["unit"].strip()) is not None:
        one = f"{one} {behind['unit']}"
    before = _BEFORE.match(one)
    if before is not None and two[:1].isdigit():
        two = f"{before['sign']}{two}"
    return one, two


def _are_alike(one: str, two: str, *, in_words: bool) -> bool:
    """Whether two parts can be values of the same sort: numbers, designations, codes, or words where they may stand."""
    missing = [missing_state(part) is not None for part in (one, two)]
    if any(missing):
        return not all(missing)
    designated = [bool(read_designation(part).derived) for part in (one, two)]
    if any(designated):
        return all(designated)
    numbers = [_NUMBER.match(part) for part in (one, two)]
    if numbers[0] is not None and numbers[1] is not None:
        return not any(number["sign"] for number in numbers if number is not None)
    if any(numbers):
        return _BEFORE.match(one) is not None and numbers[1] is not None
    digits = [any(map(str.isdigit, part)) for part in (one, two)]
    if any(digits):
        return all(digits) and one[0].isupper() == two[0].isupper()
    return in_words
