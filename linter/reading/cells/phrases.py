"""Cells of choices that say more than the choice: ``steel, stamped``, ``Messing-Massivkäfig``, ``2 flasques``.

A phrase is cut into words that stand for a choice by themselves and details, which are data
(``data/choice_details.csv``, common practice): a detail says nothing of the choice, or goes with some choices only
(``machined`` with brass, not with sheet steel). A phrase is understood where every piece of it is, and all agree.
"""

import re
from collections.abc import Callable
from functools import cache
from itertools import islice
from pathlib import Path
from unicodedata import combining, normalize

from linter.model.packaged import columns_of
from linter.reading.cells.signs import EASTERN, UMLAUTS, caseless

_DATA = Path(__file__).resolve().parent / "data" / "choice_details.csv"
_APART = re.compile(r"[\s_\-+/,;:()\[\].'’、・（），；]+")
_ANY = "*"
_LONGEST, _MOST_PIECES, _SHORTEST_IN_COMPOUND = 80, 10, 4

#: Two choices of which one is a sort of the other: a bearing under a spring floats.
_NARROWER = {("axial_role", frozenset({"floating", "spring-loaded"})): "spring-loaded"}

Meaning = Callable[[str], tuple[str, ...]]


def plain_letters(key: str) -> tuple[str, ...]:
    """A key without its accents or umlauts; none where it has none."""
    if key.isascii():
        return ()
    bare = "".join(sign for sign in normalize("NFD", key) if not combining(sign))
    return tuple(dict.fromkeys(spelled for spelled in (key.translate(UMLAUTS), bare) if spelled != key))


def _key(text: str) -> str:
    return " ".join(piece for piece in _APART.split(caseless(text)) if piece)


@cache
def _details(name: str) -> dict[str, tuple[str, ...]]:
    """Details of a parameter: the choices that each goes with; an empty tuple for all of them."""
    found: dict[str, tuple[str, ...]] = {}
    for names, words, text in columns_of(_DATA, "parameter", "word", "text"):
        if name in names.split("|"):
            key = _key(text)
            meant = () if words == _ANY else tuple(words.split("|"))
            for spelled in (key, *plain_letters(key)):
                found.setdefault(spelled, meant)
    return found


def phrase_of(name: str, text: str, known: Meaning) -> tuple[str, ...]:
    """Choices that all pieces of a phrase agree on.

    Parameters
    ----------
    name : str
        A choice parameter.
    text : str
        The cell.
    known : callable
        The choices that a key stands for by itself; empty for none.

    Returns
    -------
    tuple of str
        One choice, or several that the phrase leaves open; empty where a piece is not understood, where pieces
        contradict each other, or where none of them stands for a choice.
    """
    pieces = _key(text).split() if len(text) <= _LONGEST else []
    details = _details(name)
    if not details or not 0 < len(pieces) <= _MOST_PIECES:
        return ()
    at, agreed, stated = 0, None, False
    while at < len(pieces):
        for end in range(len(pieces), at, -1):
            run = " ".join(pieces[at:end])
            meant = known(run) or (_of_compound(run, known, details) if end == at + 1 else ())
            meant = meant or (_of_signs(run, known, details) if end == at + 1 else ())
            if meant or run in details:
                stated |= bool(meant)
                limits = meant or details[run]
                if limits:
                    both = frozenset((*(agreed or limits), *limits))
                    narrower = _NARROWER.get((name, both))
                    agreed = [narrower] if narrower else [word for word in agreed or limits if word in limits]
                    if not agreed:
                        return ()
                at = end
                break
        else:
            return ()
    return tuple(agreed) if stated and agreed else ()


def _of_signs(word: str, known: Meaning, details: dict[str, tuple[str, ...]]) -> tuple[str, ...]:
    """Choices that a Chinese or Japanese word states that is cut into choices and details (``冲压钢板保持架``)."""
    pieces = _cut(word, known, details, _MOST_PIECES) if EASTERN.search(word) else None
    if pieces is None or not any(known(piece) for piece in pieces):
        return ()
    agreed: tuple[str, ...] = ()
    for limits in filter(None, (known(piece) or details[piece] for piece in pieces)):
        agreed = tuple(choice for choice in agreed or limits if choice in limits)
        if not agreed:
            return ()
    return agreed


def _cut(word: str, known: Meaning, details: dict[str, tuple[str, ...]], most: int) -> tuple[str, ...] | None:
    """A word as choices of two signs and more and details, the longest first; None where it is no such word."""
    if not word or not most:
        return None if word else ()
    for end in range(len(word), 0, -1):
        if word[:end] in details or (end > 1 and known(word[:end])):
            rest = _cut(word[end:], known, details, most - 1)
            if rest is not None:
                return (word[:end], *rest)
    return None


def _of_compound(word: str, known: Meaning, details: dict[str, tuple[str, ...]]) -> tuple[str, ...]:
    """A German compound of a choice and a word that says nothing of it: ``Polyamidkäfig``."""
    cuts = range(_SHORTEST_IN_COMPOUND, len(word) - _SHORTEST_IN_COMPOUND + 1)
    found = (known(word[:cut]) for cut in cuts if word[cut:] in details and not details[word[cut:]])
    return next(islice(filter(None, found), 1), ())
