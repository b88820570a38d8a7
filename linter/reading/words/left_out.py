"""A name without a run of its pieces: every way to leave one out, and what is left then, as it may be looked up.

Names are cut into pieces at blanks, signs, capitals and changes of script. Where a part or a thing stands before the
run, what is left of the name is looked at without it too.
"""

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from attrs import evolve, frozen

from linter.reading.cells.han import simplified
from linter.reading.cells.signs import EASTERN
from linter.reading.words.cuts import LETTER_STATION
from linter.reading.words.dictionary import LARGE, SMALL
from linter.reading.words.objects import Objects, part_of_object
from linter.reading.words.part_evidence import PARTS
from linter.reading.words.parts import concepts_said, is_bearing_seat, names_place, part_alone, words_of_signs
from linter.reading.words.places import uninflected

_SIGNS = "\u3040-\u30ff\u3400-\u9fff"
APART = re.compile(r"(?:[^\w⌀°%±²³]|_)+")
#: Where a piece ends inside a word: at a capital, a figure before a word, another script.
_INSIDE = re.compile(
    rf"(?<=[{SMALL}])(?=[{LARGE}])|(?<=[{LARGE}])(?=[{LARGE}][{SMALL}])|(?<=[a-z]{{3}})(?=[0-9])"
    rf"|(?<=[0-9])(?=[{LARGE}][{SMALL}])|(?<=[{_SIGNS}])(?=[^{_SIGNS}])|(?<=[^{_SIGNS}])(?=[{_SIGNS}])"
)
#: Pieces of a name, pieces of a position in letters and in signs.
_MOST_PIECES, _LONGEST, _MOST_SIGNS = 14, 3, 6
#: Words for a side or an end, and for the shield there, beside the letter that names it (common practice).
SIDES = frozenset(
    ("seite", "ende", "schild", "lagerschild", "side", "end", "shield", "lato", "scudo", "lado", "extremo", "escudo",
     "côté", "flasque", "сторона", "стороны", "щит")
)  # fmt: skip

Frame = tuple[str, str]


@frozen
class Cut:
    """A name without a run of its pieces."""

    run: str
    rests: tuple[str, ...]
    seat: bool = False
    #: The part that stands before the run where a rest leaves it out: what that rest says has to be the part's, or of
    #: some part where it is a thing (``?``) of which nothing tells which it is.
    part: str = ""
    apart: str = ""


def cuts_of(name: str, objects: Objects) -> Iterator[tuple[Frame, Cut]]:
    """Every run of pieces that can be left out of a name, with what stands before and behind it."""
    pieces = list(_pieces(name))
    count = len(pieces)
    if not 1 < count <= _MOST_PIECES:
        return
    said = [name[a:b].casefold() for a, b in pieces]
    for first in range(count):
        signs = True
        for last in range(first, min(first + _MOST_SIGNS, count)):
            a, b = pieces[first][0], pieces[last][1]
            signs = signs and EASTERN.match(name[b - 1]) is not None
            if (last - first >= _LONGEST and not signs) or last - first == count - 1:
                break
            frame = (" ".join(said[:first]), " ".join(said[last + 1 :]))
            run = uninflected(name[a:b]) if first == last else name[a:b]
            cut = Cut(run, *_rests(name, pieces, first, last))
            yield frame, cut if cut.part else _of_object(cut, [name[a:b] for a, b in pieces], first, last, objects)


def _of_object(cut: Cut, pieces: Sequence[str], first: int, last: int, objects: Objects) -> Cut:
    """A cut with what is left without the thing that its name begins with, before the run or right behind it."""
    start = 0 if first else last + 1
    end = first or len(pieces) - 1
    key = tuple(map(str.casefold, pieces))
    stop = next((stop for stop in range(end, start, -1) if key[start:stop] in objects), 0)
    apart = " ".join((*pieces[stop:first], *pieces[max(stop, last + 1) :])) if stop else ""
    if not apart:
        return cut
    part = objects[key[start:stop]]
    rests = (*cut.rests, *((f"{part} {apart}",) if part else ()), apart)
    return evolve(cut, rests=tuple(dict.fromkeys(rests)), part=part or "?", apart=apart)


def joined(name: str) -> list[tuple[str, str]]:
    """The pieces of a name, each with the signs behind it."""
    edges = list(_pieces(name))
    starts = [start for start, _ in edges[1:]]
    return [(name[a:b], name[b:after]) for (a, b), after in zip(edges, [*starts, len(name)], strict=True)]


def _pieces(name: str) -> Iterator[tuple[int, int]]:
    start = 0
    for apart in APART.finditer(name):
        yield from _within(name, start, apart.start())
        start = apart.end()
    yield from _within(name, start, len(name))


def _within(name: str, start: int, end: int) -> Iterator[tuple[int, int]]:
    edges = [start, *(found.start() for found in _INSIDE.finditer(name, start, end)), end]
    for a, b in pairwise(edges):
        if a < b and EASTERN.match(name[a]):
            for word in words_of_signs(name[a:b]):
                yield a, a + len(word)
                a += len(word)
        elif a < b:
            yield a, b


def _rests(
    name: str, pieces: Sequence[tuple[int, int]], first: int, last: int
) -> tuple[tuple[str, ...], bool, str, str]:
    """What is left of a name: as it is written, its pieces with blanks between them, what stands behind a place alone.

    Whether that place is the seat of a bearing of no known part; a part that is left out, and the rest without it.
    """
    before, behind = name[: pieces[first][0]], name[pieces[last][1] :]
    if first == 0:
        before, behind = before.strip("([ "), name[pieces[last + 1][0] :]
    elif last == len(pieces) - 1:
        before, behind = name[: pieces[first - 1][1]], behind.strip(")] ")
    plain = re.sub(r"[(（\[【]\s*[)）\]】]", " ", f"{before}{behind}")
    plain = re.sub(r"([\s_.\-–—/]){2,}", r"\1", plain).strip(" _.-–—:,/")
    plain = re.sub(r" (?=[,;:])", "", plain)
    own = [name[a:b] for a, b in pieces]
    apart = " ".join((*own[:first], *own[last + 1 :]))
    before, behind = " ".join(own[:first]), name[pieces[last + 1][0] :] if last + 1 < len(pieces) else ""
    first_words = simplified(before) or before
    part, seat = part_alone(first_words), is_bearing_seat(before)
    placed = (behind,) if before and behind and (names_place(first_words) or seat or part) else ()
    if placed and seat and not part and (told := _told_by_diameter(behind)):
        placed = (f"{told} {behind}",)
    of_part = (f"{part} {behind}",) if placed and part else ()
    beside = _without_side(own, first, last)
    rests = tuple(dict.fromkeys(rest for rest in (plain, beside, apart, *of_part, *placed) if rest))
    return rests, seat and not part, part, behind if of_part else ""


def _told_by_diameter(text: str) -> str:
    """The part whose seat has an outside diameter (``軸受部 外径``) or a bore, where it is one of them; or empty."""
    said = concepts_said(text)
    shaft, housing = "outside" in said, not said.isdisjoint(("inside", "bore"))
    return "" if shaft == housing else PARTS[0] if shaft else PARTS[1]


def _without_side(pieces: Sequence[str], first: int, last: int) -> str:
    """What is left where a letter has a word for a side beside it (``Lagersitz A-Seite Ra``); or empty.

    A word for the shield there says the housing too (``Lagerbohrung Schild A``).
    """
    if first != last or not LETTER_STATION.fullmatch(pieces[first]):
        return ""
    if last + 1 < len(pieces) and pieces[last + 1].casefold() in SIDES:
        side, last = pieces[last + 1], last + 1
    elif first and pieces[first - 1].casefold() in SIDES:
        side, first = pieces[first - 1], first - 1
    else:
        return ""
    rest = (*pieces[:first], *pieces[last + 1 :])
    return " ".join(("housing", *rest) if part_of_object(side) == "housing" and rest else rest)
