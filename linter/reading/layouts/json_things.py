"""Lists whose items are the parts of a machine, or features of a part: a key of each says which.

``parts: [{"part": "shaft", "attributes": [...]}, {"part": "front bearing", ...}]``: what stands in an item is stated of
what its text names, as if that were a key around it.
"""

import re
from collections.abc import Container, Mapping, Sequence
from typing import Any

from linter.reading.layouts.json_keys import OF_DOCUMENT, local, names_place
from linter.reading.layouts.sides import is_use, side_of
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said, is_bearing, tells_feature

#: Parts and features that hold or carry a bearing, and the bearing itself.
_THINGS = frozenset(
    ("shaft", "housing", "seat", "bore", "shoulder", "fillet", "abutment", "bearing", "rotor", "spring")
)
#: Those that no position of a bearing is called after.
_NO_POSITIONS = _THINGS - {"seat", "bearing", "rotor", "spring"}
_LONGEST = 60
#: Keys of the sizes of a ring beside its inside diameter.
_OF_RINGS = frozenset(("od", "o.d.", "o.d", "w", "width", "b", "outer diameter", "outside diameter", "outer_diameter"))
#: Things on a shaft or in a housing beside the bearing.
_OTHERS = frozenset(("closure", "rotor", "spring", "nut", "washer", "cord", "sleeve"))
#: Ends of words for a seat (common practice).
_SEATS = ("sitz", "seat", "位", "座", "部", "嵌合")


#: Words for what carries an outer ring at one end of a machine (common practice).
_SHIELD = re.compile(
    r"(?<![^\W_])(?:end[ _-]?(?:shield|bell|plate|cap|cover|bracket)s?|bearing[ _-]?(?:bracket|cover|cap)s?"
    r"|(?:lager|end)(?:schild|deckel|flansch)|flasque|flasques|flangia|scudo|scudi|tapas?|escudos?"
    r"|(?:подшипниковый[ _])?(?:щит|крышка)|端盖|轴承盖|エンドカバー|軸受カバー|エンドブラケット)"
    r"(?![^\W_\u3400-\u9fff])",
    re.IGNORECASE,
)


#: A shaft by what it is for, in the languages that set no blanks.
_SHAFT_OF = re.compile("[\u3040-\u30ff\u3400-\u9fff]{1,4}[轴軸]")
#: Keys over several shafts, each with its own positions.
SHAFTS = frozenset(("shafts", "wellen", "arbres", "ejes", "árboles", "arboles", "alberi", "валы", "轴系", "軸系"))


def part_said(word: str) -> str:
    """A key over parts of a machine as it counts in the names of what stands below it; empty where it says nothing.

    The shaft of a rotor is the shaft, a shield that carries a bearing its housing.
    """
    if local(word) in OF_DOCUMENT:
        return ""
    if _SHAFT_OF.fullmatch(word):
        return word[-1]  # 主动轴
    said = concepts_said(word) if side_of(word) is None else frozenset()
    if said == {"rotor", "shaft"}:
        return "shaft"
    return _SHIELD.sub("housing", word)


def names_thing(text: str) -> bool:
    """Whether a text names a part, a feature of one or a bearing, whatever else it says of it."""
    return names_seat(text) or bool(concepts_said(text) & _THINGS)


def is_of_rotor(word: str) -> bool:
    """Whether a key is over what is stated of the rotor."""
    return "rotor" in concepts_said(word)


def names_seat(text: str) -> bool:
    """Whether a text names a part that carries a bearing, a feature of one or a bearing: no rotor, which may be all."""
    of_part = side_of(text) is not None or _SHAFT_OF.fullmatch(text) is not None
    return of_part or bool(concepts_said(text) & _THINGS - {"rotor", "spring"})


def thing_key(nodes: Sequence[Any], trail: Sequence[str], words: Words, called: Container[str]) -> str:
    """The key whose text says of each item of a list which part or feature it is; empty where none does.

    Half of the texts at least name one, and one of them a part or feature that no position is called after; below a key
    of a part, its seats are features. Below a key that says position alike texts are positions, as names of positions
    are below any (``Supporto lato motore``). So does a key of the names of records elsewhere (``called``).
    """
    objects = [node for node in nodes if isinstance(node, dict)]
    if len(objects) < 2 or len(objects) < len(nodes):
        return ""
    below = any(side is not None and side.side in ("shaft", "housing") for side in map(side_of, trail))
    for key in objects[0] if objects else ():
        texts = [text.strip() for node in objects if isinstance(text := node.get(key), str)]
        whole = len(texts) == len(objects) and all(0 < len(text) <= _LONGEST for text in texts) and local(key) != "unit"
        if not whole or all(names_place(text, words) for text in texts):
            continue
        if _name_things(texts, below, words.heading(key) == Heading("station"), key in called):
            return key
    return ""


def _name_things(texts: Sequence[str], below: bool, place: bool, called: bool) -> bool:
    """Whether texts, one of each item, name parts or features; ``below`` a part, below a key of a ``place``."""
    named = [text for text in texts if names_thing(text)]
    if len({*texts}) < 2 or 2 * len(named) < len(texts):
        return False
    said = frozenset().union(*map(concepts_said, named))
    alike = len({concepts_said(text) & _NO_POSITIONS for text in texts}) == 1 and not below  # palier avant, arrière
    return called or (not (alike and place) and bool(said & _NO_POSITIONS or (below and "seat" in said)))


def states_both(node: Mapping[str, Any], words: Words) -> bool:
    """Whether the keys of an object name values of the shaft and of the housing."""
    names = [heading.parameter for key in node if (heading := words.heading(key)) is not None]
    return all(any(name.startswith(part) for name in names) for part in ("shaft_", "housing_"))


def marks_of(node: Mapping[str, Any], trail: Sequence[str]) -> frozenset[str]:
    """Keys of an object for its number in a store: an ``id`` is no inside diameter without an outside one beside it."""
    said = {local(key) for key in node}
    of_ring = bool(said & _OF_RINGS) or any(side is not None and side.side == "bearing" for side in map(side_of, trail))
    return frozenset() if of_ring else frozenset(key for key in node if local(key) == "id")


def is_other_thing(text: str, words: Words) -> bool:
    """Whether a text beside those of parts names another part, of which nothing is a seat's (``impeller``)."""
    return not (names_thing(text) or is_use(text) or words.of_whole(text) or words.names.station(text))


def is_of_other(word: str, placed: bool) -> bool:
    """Whether a key over what is stated of a part says a seat or thing that is no bearing's (``impeller seat``).

    A word of which nothing is known may be one, where no position is known (``placed``).
    """
    said = concepts_said(word)
    if "bearing" in said:
        return False
    known = tells_feature(word) or all(map(tells_feature, filter(None, re.split(r"[\W_]+", word_key(word)))))
    return bool(said & _OTHERS) or (not known and ("seat" in said or word.endswith(_SEATS) or not (placed or said)))


def as_told(station: str, words: Words) -> str:
    """A position as the names of the document show it, where a key says it with its bearing (``前轴承``)."""
    for told in {told.station for told in words.told.values()} if words.told else ():
        if told != station and told in station and is_bearing(station.replace(told, "", 1).strip(" _-")):
            return told
    return station
