"""What a remark says in passing: how the bearing at a position is located, which ring may move, the kind of a spring.

``pulley end floats in the bore``; ``bague extérieure coulissante côté moteur``; ``Loslager, Außenring verschiebbar``. A
position that the remark names goes before that of its row. One that denies, doubts or tells of before says nothing.
"""

import re
from collections.abc import Collection, Iterator
from functools import cache, lru_cache

from linter.reading.cells.choices import choice_texts
from linter.reading.cells.several import free_ring_said, without_free_ring
from linter.reading.cells.signs import EASTERN, LONGEST_TEXT, caseless
from linter.reading.cells.units import MOST_REMEMBERED
from linter.reading.words.headings import Words

#: Words beside which a remark states nothing (common practice).
NOT_SAID = re.compile(
    r"(?<!\w)(?:not?|never|nicht|kein\w*|nie|ne|pas|sans|sin|senza|non|не|нет|was|were|previously|formerly|old|instead"
    r"|früher|vorher|bisher|statt|war|ehemals|avant|ancien|antes|anterior|prima|era|раньше|был\w*|or|oder|ou|или|if|wenn"
    r"|falls|si|se|если|other|opposite|andere\w*|gegen\w*|autre|otro|otra|altro|altra|opposta|друг\w*)(?!\w)|[?？]|不|未|无|無|原|旧|前は|または|或|ない|反対|另|对侧"
)
#: A bearing that moves in its seat (common practice).
_FLOATS = re.compile(
    r"(?<!\w)(?:floats|slides in|gleitet in|schwimmt|flotte dans|coulisse dans|desliza en|scorre in|плавает"
    r"|скользит в)(?!\w)"
)
_BARE = re.compile(
    r"(?<![\w-])(?:springs?|federn?|ressorts?|muelles?|resortes?|moll[ae]|пружин\w*)(?![\w-])|^(?:弹簧|ばね|バネ)$"
)
_APART = re.compile(r"[^\w-]+")
#: A spring that acts on a bearing (common practice).
_ACTS = re.compile(
    r"(?<!\w)(?:acts?|acting|push(?:es|ing)?|press(?:es|ing)?|loads?|loading|wirkt|drückt|belastet|agit|appuie|pousse|actúa"
    r"|empuja|agisce|spinge|preme|действует|прижимает|нажимает)(?!\w)|作用|压|押"
)
_RING = re.compile(
    r"(?<!\w)(?:outer|inner|außen|innen|aussen|ext\w*|int\w*|esterno|interno|наруж\w*|внутр\w*)(?!\w)|[内外]"
)
_SHORTEST, _SHORTEST_OF_SIGNS = 6, 2
_NAMES = ("axial_role", "spring_kind")


@cache
def _texts(name: str) -> tuple[tuple[str, str], ...]:
    """Spellings of a choice that mean one thing and are no everyday words, the longest first, each with its meaning."""
    found = {caseless(text): words[0] for text, words in choice_texts(name).items() if len(words) == 1}
    long = {text: word for text, word in found.items()
            if len(text) >= (_SHORTEST_OF_SIGNS if EASTERN.search(text) else _SHORTEST)}  # fmt: skip
    return tuple(sorted(long.items(), key=lambda pair: -len(pair[0])))


@cache
def _of_others(name: str) -> tuple[str, ...]:
    """Spellings of a way of preloading that hold one of a choice and are none of it: ``定位置予圧`` and ``定位``."""
    own = dict(_texts(name))
    eastern = [spelling for spelling in own if EASTERN.search(spelling)]
    others = (text for text, _ in _texts("preload_method") if text not in own and EASTERN.search(text))
    return tuple(text for text in others if any(spelling in text for spelling in eastern))


@lru_cache(maxsize=MOST_REMEMBERED)
def inside(name: str, text: str) -> frozenset[str]:
    """The choices whose words stand inside a text.

    Returns
    -------
    frozenset of str
        Words of the vocabulary; a longer spelling hides the shorter ones in it.
    """
    rest, said = caseless(text) if len(text) <= LONGEST_TEXT else "", set()
    for longer in _of_others(name):
        rest = rest.replace(longer, " ; ")
    for spelling, word in _texts(name):
        if spelling not in rest:
            continue
        pattern = re.escape(spelling) if EASTERN.search(spelling) else rf"(?<!\w){re.escape(spelling)}(?!\w)"
        rest, count = re.subn(pattern, " ; ", rest)
        said |= {word} if count else set()
    return frozenset(said)


def said_in_passing(text: str, *, of_spring: bool) -> dict[str, str]:
    """What a remark says of the bearing at one position and of the spring, by parameter; empty where it may not.

    The word for a spring alone says beside values of the spring (``of_spring``) that the bearing it acts on is loaded.

    Returns
    -------
    dict of str to str
        Words of the vocabulary.
    """
    if NOT_SAID.search(_without_choices(text)):
        return {}
    plain = without_free_ring(text)
    said = {name: next(iter(found)) for name in _NAMES if len(found := inside(name, plain)) == 1}
    acts = of_spring and _ACTS.search(caseless(text))
    if said.get("axial_role") == "spring-loaded" and not acts and not may_say(plain):
        del said["axial_role"]
    if "axial_role" not in said and not inside("axial_role", plain) and _FLOATS.search(caseless(text)):
        said["axial_role"] = "floating"
    if (ring := free_ring_said(text)) and said.get("axial_role") != "locating":
        said["free_ring"] = ring
    return said


def _without_choices(text: str) -> str:
    """A text without the words of a choice in it, whose own parts deny (``non-locating``)."""
    rest = caseless(text)
    for spelling, _ in _texts("axial_role"):
        rest = rest.replace(spelling, " ") if len(spelling) > _SHORTEST or EASTERN.search(spelling) else rest
    return rest


def may_say(text: str) -> bool:
    """Whether a remark holds words of what is read from remarks, said clearly or not."""
    text = _BARE.sub(" ; ", caseless(text))
    return bool(free_ring_said(text) or _FLOATS.search(text) or any(inside(name, text) for name in _NAMES))


def without(text: str, positions: Collection[str]) -> str:
    """A text without the names of positions in it."""
    rest = caseless(text)
    for position in positions:
        rest = rest.replace(caseless(position), " ; ")
    return rest


def names_position(text: str, words: Words) -> bool:
    """Whether words of a text are a usual name of a position, which no position of the table carries."""
    pieces = _APART.split(text)
    windows = {" ".join(pieces[k : k + count]) for count in (1, 2, 3) for k in range(len(pieces) - count + 1)}
    return any(
        len(window) > 2
        and words.names.station(window)
        and not inside("axial_role", window)
        and not _RING.search(window)
        for window in windows
    )


def positions_in(text: str, positions: Collection[str]) -> Iterator[str]:
    """Positions of a table whose names stand in a text, the longest names first; a letter alone is none."""
    rest = caseless(text)
    for position in sorted(positions, key=lambda name: -len(name)):
        name = caseless(position)
        pattern = re.escape(name) if EASTERN.search(name) else rf"(?<![\w]){re.escape(name)}(?![\w])"
        if len(name) > 1 and re.search(pattern, rest):
            rest = re.sub(pattern, " ; ", rest)
            yield position
