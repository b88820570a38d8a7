"""Things that the names of a table begin with: a shaft, a housing, or a thing of which other names tell that it is one.

``Rotor shaft - DE brg seat dia``, ``Ritzelwelle - Lagersitz links``, ``Вал ротора: передняя шейка``: a word for a part
with words for whose it is says that part. ``Body outboard bore``, ``Armature front journal``: a word that is not known
and begins several names is a shaft where they speak of journals, and a housing where they speak of bores.
"""

import re
from collections import Counter, defaultdict
from collections.abc import Mapping, Sequence
from functools import cache, lru_cache

from linter.model.packaged import columns_of
from linter.reading.cells.han import simplified
from linter.reading.cells.signs import EASTERN
from linter.reading.words.dictionary import MOST_REMEMBERED, dictionary, word_key
from linter.reading.words.parts import PARTS, concepts_said, part_alone, words_of_signs

#: What a word may say beside the part whose owner it is.
_OWNERS = frozenset(("rotor", "machine", "bearing"))
_APART = re.compile(r"[^\w]+|_")
#: Languages that set a word for whose it is behind the word for a part, and before it; German makes one word of both.
_BEHIND, _BEFORE = frozenset(("fr", "es", "it", "ru")), frozenset(("en",))
_JOINING = frozenset(
    ("de", "del", "du", "di", "d", "des", "la", "le", "il", "el", "of", "the", "der", "des", "do", "da")
)
_LONGEST, _SHORTEST_TAIL, _SHORTEST_HEAD = 4, 5, 3
#: Names that begin with a word that is not known, so that it may be a thing.
_ENOUGH = 3
#: Signs between the words of one thing.
_WITHIN = frozenset(("", " ", "_"))
#: Concepts of a name that speak of a shaft and of a housing.
_SHAFT, _HOUSING = frozenset(("shaft",)), frozenset(("housing", "bore"))
_SHAFT_ONLY = frozenset(("rotor",))

#: Pieces that names begin with, and the part that they are; empty where sizes have to tell it.
Objects = Mapping[tuple[str, ...], str]


@cache
def _behind_words() -> frozenset[str]:
    """Words for a shaft or a housing of the languages that set behind them whose it is."""
    return _words_of(_BEHIND)


@cache
def _before_words() -> frozenset[str]:
    """Words for a shaft or a housing of the languages that set before them, as words of their own, whose it is."""
    return _words_of(_BEFORE)


def _words_of(languages: frozenset[str]) -> frozenset[str]:
    rows = columns_of(PARTS, "word", "concepts", "language")
    said = (w for w, concepts, language in rows if language in languages and concepts in ("shaft", "housing"))
    return frozenset(word_key(word) for word in said if " " not in word)


@lru_cache(maxsize=MOST_REMEMBERED)
def part_of_object(text: str) -> str:
    """``shaft`` or ``housing`` where a text is a word for that part, maybe with words for whose it is; or empty."""
    text = simplified(text) or text
    if part := part_alone(text):
        return part
    words = [word for word in _APART.split(text) if word]
    if not 1 <= len(words) <= _LONGEST:
        return ""
    if len(words) == 1:
        return _part_word(words[0]) or _of_compound(words[0])
    at = 0 if word_key(words[0]) in _behind_words() else len(words) - 1
    if at and word_key(words[at]) not in _before_words():
        return ""
    part = _part_word(words[at]) or _of_compound(words[at])
    others = [word for k, word in enumerate(words) if k != at]
    return part if part and all(map(_says_whose, others)) else ""


def _part_word(word: str) -> str:
    said = concepts_said(word) - {"seat"} - _OWNERS
    if "housing" in said:
        said -= {"closure"}  # flasque
    return next((part for part in ("shaft", "housing") if said == {part}), "") if _is_word(word) else ""


def _of_compound(word: str) -> str:
    """The part that a compound ends in: ``Ritzelwelle``, ``电机轴``."""
    if EASTERN.search(word):
        pieces = words_of_signs(word)
        owners = all(concepts_said(piece) <= _OWNERS for piece in pieces[:-1])
        return part_alone(pieces[-1]) if owners else ""
    if concepts_said(word):
        return ""
    cuts = range(_SHORTEST_HEAD, len(word) - _SHORTEST_TAIL + 1)
    tails = (word[cut:] for cut in cuts if not concepts_said(word[:cut]) or concepts_said(word[:cut]) <= _OWNERS)
    return next((part for tail in tails if (part := _part_word(tail))), "")


def _says_whose(word: str) -> bool:
    """Whether a word beside a part may say whose it is: no other word of the trade, no place, no figure."""
    if word_key(word) in _JOINING:
        return True
    return _is_word(word) and word_key(word) not in dictionary().stations and concepts_said(word) <= _OWNERS


def _is_word(word: str) -> bool:
    return len(word) > 1 and not any(map(str.isdigit, word))


def objects_of(names: Sequence[Sequence[tuple[str, str]]]) -> Objects:
    """The things that names begin with, by their pieces.

    Parameters
    ----------
    names : sequence of sequence of (str, str)
        The names of one table, each cut into pieces with the signs behind each of them.

    Returns
    -------
    mapping of tuple of str to str
        Pieces, small letters, and ``shaft``, ``housing`` or empty.
    """
    found: dict[tuple[str, ...], str] = {}
    begun: dict[tuple[str, ...], list[str]] = defaultdict(list)
    counts: Counter[tuple[str, ...]] = Counter()
    for name in names:
        pieces, joints = [piece for piece, _ in name], [joint for _, joint in name]
        key = tuple(map(str.casefold, pieces))
        for count in range(min(_LONGEST, len(pieces) - 1), 0, -1):
            text = _text(pieces[:count]) if set(joints[: count - 1]) <= _WITHIN else ""
            if part := found.get(key[:count]) or (part_of_object(text) if text else ""):
                found[key[:count]] = part
                counts[key[:count]] += 1
                break
        else:
            begun[key[:1]].append(_text(pieces[1:]))
    for head, count in counts.items():
        if len(head) > 1 and count < _ENOUGH and not part_alone(_text(head)):
            del found[head]
    for head, rests in begun.items():
        said = concepts_said(head[0]) if len(rests) >= _ENOUGH and _is_word(head[0]) else frozenset("?")
        if (not said or said == _SHAFT_ONLY) and word_key(head[0]) not in dictionary().stations:
            found[head] = _part_spoken_of(rests, "shaft" if said else "")
    return found


def _text(pieces: Sequence[str]) -> str:
    return "".join(pieces) if all(map(EASTERN.search, pieces)) else " ".join(pieces)


def _part_spoken_of(rests: Sequence[str], part: str) -> str:
    """The part that names speak of behind a thing: its journals or its bores."""
    said = [concepts_said(rest) for rest in rests]
    shaft = part == "shaft" or any(one & _SHAFT for one in said)
    housing = any(one & _HOUSING for one in said)
    return "" if shaft == housing else "shaft" if shaft else "housing"
