"""Names of positions without the word for the bearing: ``Front bearing`` is ``Front`` wherever it stands.

Headings, rows and titles say a position with that word or without it, so that one table's ``Lager 1`` is another's
``1``. The word is left out of a name where what is left still keeps the positions of the file apart.
"""

import re
from collections import Counter
from collections.abc import Collection
from itertools import chain

from linter.reading.cells.signs import fold
from linter.reading.layouts.strips import Found
from linter.reading.words.cuts import ARTICLES
from linter.reading.words.designations import designation_strength
from linter.reading.words.dictionary import dictionary, word_key
from linter.reading.words.eastern import is_position
from linter.reading.words.other_cells import is_role
from linter.reading.words.parts import is_bearing
from linter.reading.words.places import place_said

_MOST_NAMES, _LONGEST = 200, 60
#: Words for the place of a bearing, which are no parts.
_PLACES = frozenset((
    "lagerstelle", "lager", "palier", "paliers", "supporto", "appoggio", "apoyo", "soporte", "опора", "brg", "brg.",
    "roulement",
))  # fmt: skip
#: What stands between the word and a number (``Bearing No. 1``).
_NUMBER = re.compile(r"(?:no|nr|n°|nº|n|№|num|#)\.?", re.IGNORECASE)
#: The same in scripts that do not part words.
_EASTERN = re.compile(r"(?:軸受|轴承|支承|ベアリング)(?:部|位)? ?|の?(?:軸受|轴承|支承|ベアリング)部?$")
_CODE = re.compile(r"[^\W\d_]{0,3}\d{0,2}")
_MARKS = " _.-–—:：/"


def shorten_names(found: Found, kept: Collection[str]) -> None:
    """Leave the word for the bearing out of the names of stations; ``kept`` are names that a mapping gives."""
    names = dict.fromkeys(filter(None, chain.from_iterable(block.stations for block in found.blocks)))
    if not 1 < len(names) <= _MOST_NAMES:
        return
    short = {name: name if name in kept else _short(name) for name in names}
    counts = Counter(map(_key, short.values()))
    if any(not other or counts[_key(other)] > 1 for other in short.values()):
        return
    for block in found.blocks if any(name != other for name, other in short.items()) else ():
        block.stations[:] = [short.get(station, station) for station in block.stations]


def _key(name: str) -> str:
    return fold(name).casefold()


def _short(name: str) -> str:
    """A name without the word for the bearing; empty where nothing that names a position by itself would be left."""
    if len(name) > _LONGEST:
        return name
    words = name.split()
    if len(words) > 1:
        first, last = _says_bearing(words[0]), _says_bearing(words[-1])
        if first == last:
            return name
        left = words[1:] if first else words[:-1]
        if first and len(left) > 1 and _NUMBER.fullmatch(left[0]):
            left = left[1:]
        rest = " ".join(left).strip(_MARKS)
    else:
        rest = _EASTERN.sub("", name, count=1).strip(_MARKS)
        if len(rest) == 1 and not rest.isascii():
            return name  # ``前`` is half a word
    usable = bool(rest) and not is_role(rest) and designation_strength(rest) != "certain" and not is_bearing(rest)
    return rest if usable and _is_position(rest) else "" if rest != name else name


def _is_position(text: str) -> bool:
    """Whether a text names a position by itself: a letter, a number, a short code, or a known word."""
    if _CODE.fullmatch(text):
        return True
    known = word_key(fold(text)) in dictionary().stations and fold(text).casefold() not in ARTICLES
    return known or is_position(text) or bool(place_said(text))


def _says_bearing(word: str) -> bool:
    plain = word.strip(_MARKS + "()[]")
    return (is_bearing(plain) and not is_role(plain)) or plain.casefold() in _PLACES
