"""The built-in words of a table: headings of parameters in eight languages, words of layouts, words for stations.

They are data (``data/headings.csv``): terms of the trade's standards and of common practice.
"""

import re
from functools import cache, lru_cache
from pathlib import Path
from typing import Literal
from unicodedata import combining, normalize

from attrs import frozen

from linter.model.packaged import columns_of
from linter.model.vocabulary import vocabulary
from linter.reading.cells.signs import UMLAUTS, caseless, fold

#: Groups of heading words of a layout, in the order in which a word of several groups is understood.
GROUPS = (
    "NAME", "VALUE", "UNIT", "EXPR", "UPPER", "LOWER", "MAX", "MIN", "CLASS", "CHAR-ID", "DATUM", "KIND", "RESULT",
    "NOTE", "STATION", "MACHINE",
)  # fmt: skip

#: Which of several statements of one parameter a name says it is; ``older`` does not hold, yet or any more.
Version = Literal["", "newer", "older"]
_VERSIONS: dict[str, Version] = {"@NEWER": "newer", "@OLDER": "older"}
#: Targets of the data file that are no parameters.
NO_PARAMETER = (*GROUPS, "@STATION", "@SPEED", *_VERSIONS)

#: Texts whose key, and words whose meaning, is remembered.
MOST_REMEMBERED = 16_384
_DATA = Path(__file__).resolve().parent / "data" / "headings.csv"
JOINT = re.compile(r"[\s_.\-]+")
SMALL, LARGE = "a-zß-öø-ÿа-яё", "A-ZÀ-ÖØ-ÞА-ЯЁ"
#: Where a word ends in a name without blanks (``shaftSeatDia``, ``alésageRoulement``, ``sitzØ``, ``ODBearing``).
CAMEL = re.compile(
    rf"(?<=[{SMALL}])(?=[{LARGE}])|(?<=[a-z]{{3}})(?=[0-9])"
    rf"|(?<=[{SMALL}][{LARGE}])(?=[{LARGE}])(?!(?<=N)DE(?![{SMALL}]))|(?<=[A-Z]{{2}})(?=[A-Z][a-z]{{2}})|(?<=Ø)(?=[A-ZÀ-Þ](?![A-ZÀ-Þ]))"
)


_ACCENTED = re.compile("[à-öø-ÿ]")


def plain_spellings(key: str) -> tuple[str, ...]:
    """A word key written without its accents or umlauts (``gehaeuse``, ``diametre``); none where it has none."""
    if not _ACCENTED.search(key):
        return ()
    bare = "".join(sign for sign in normalize("NFD", key) if not combining(sign))
    return tuple(dict.fromkeys((key.translate(UMLAUTS), bare)))


#: Small words that names in Romance languages leave out.
_LINK = re.compile(r" (?:de|du|des|di|del|della|dei|delle|d) ")


def without_links(key: str) -> tuple[str, ...]:
    """A word key of three words or more without the small words in it (``velocità rotazione``), with its spellings."""
    short = _LINK.sub(" ", key) if key.count(" ") > 1 else key
    return (short, *plain_spellings(short)) if short != key else ()


_CYRILLIC = "абвгдеёжзийклмнопрстуфхцчшщъыьэюя"
#: Four usual ways to write Russian in Latin letters (after ISO 9 and GOST 7.79, from memory; common practice).
_LATIN = tuple(
    dict(zip(_CYRILLIC, letters.split(" "), strict=True))
    for letters in (
        "a b v g d e e zh z i y k l m n o p r s t u f kh ts ch sh shch  y  e yu ya",
        "a b v g d e e zh z i j k l m n o p r s t u f h c ch sh sch  y  e ju ja",
        "a b v g d e e zh z i y k l m n o p r s t u f h c ch sh sh  y  e yu ya",
        "a b v g d e e zh z i i k l m n o p r s t u f kh ts ch sh shch  y  e iu ia",
    )
)
_SHORTEST_IN_LATIN = 4


def latin_spellings(word: str) -> tuple[str, ...]:
    """A Russian word as names write it in Latin letters (``dopusk vala``); none for a short or a Latin one."""
    small = word.casefold().replace("-", " ")
    if len(small) < _SHORTEST_IN_LATIN or not any(sign in _LATIN[0] for sign in small):
        return ()
    return tuple(dict.fromkeys("".join(letters.get(sign, sign) for sign in small) for letters in _LATIN))


@lru_cache(maxsize=MOST_REMEMBERED)
def word_key(text: str) -> str:
    """A word of a language for comparing: folded, without case, joints (blank, ``_``, ``-``, ``.``) made one."""
    return JOINT.sub(" ", caseless(CAMEL.sub(" ", fold(text)))).strip()


@frozen
class Dictionary:
    """The built-in words, ready for look-up."""

    exact: dict[str, tuple[str, ...]]
    words: dict[str, tuple[str, ...]]
    groups: dict[str, tuple[str, ...]]
    group_words: dict[str, tuple[str, ...]]
    stations: frozenset[str]
    speeds: frozenset[str]
    versions: dict[str, Version]


@cache
def heading_words() -> list[tuple[str, ...]]:
    """Target (parameter, group, ``@STATION`` or a version), word and language of every row of the data file."""
    return columns_of(_DATA, "target", "word", "language")


@cache
def dictionary() -> Dictionary:
    """The built-in words, read once."""
    exact: dict[str, tuple[str, ...]] = {}
    words: dict[str, tuple[str, ...]] = {}
    groups: dict[str, tuple[str, ...]] = {}
    group_words: dict[str, tuple[str, ...]] = {}
    stations, speeds = set(), set()
    versions: dict[str, Version] = {}

    def put(table: dict[str, tuple[str, ...]], key: str, target: str) -> None:
        known = table.get(key, ())
        if target not in known:
            table[key] = (*known, target)

    for name in vocabulary():
        put(exact, name, name)
        put(words, word_key(name), name)
    for target, word, language in heading_words():
        if target == "@STATION":
            stations.add(word_key(word))
        elif target == "@SPEED":
            speeds.add(word_key(word))
        elif target in _VERSIONS:
            versions[word_key(word)] = _VERSIONS[target]
        elif target in GROUPS:
            put(groups, fold(word), target)
            put(group_words, group_key(word), target)
        else:
            put(exact, fold(word), target)
            if language != "symbol":
                put(words, word_key(word), target)
    for _, word, language in heading_words():
        for latin in latin_spellings(word) if language == "ru" else ():
            if (key := word_key(word)) in words:
                words.setdefault(word_key(latin), words[key])
    for table in (words, group_words):
        for key, targets in list(table.items()):
            for plain in plain_spellings(key):
                table.setdefault(plain, targets)
    for plain in [plain for key in stations for plain in plain_spellings(key)]:
        stations.add(plain)
    return Dictionary(exact, words, groups, group_words, frozenset(stations), frozenset(speeds), versions)


@lru_cache(maxsize=MOST_REMEMBERED)
def group_key(text: str) -> str:
    """A heading word of a group for comparing; plus and minus keep their meaning."""
    return re.sub(r"[\s_.]+", " ", caseless(text)).strip()
