"""Positions that a text says with more around them: the word for a bearing, a count, where they lie."""

import re

from linter.reading.cells.signs import fold
from linter.reading.words.cuts import BRACKET
from linter.reading.words.names import Names
from linter.reading.words.parts import is_bearing

#: A position and which of several there (``anteriore 1``, ``front II``, ``前側2``).
_COUNTED = re.compile(r"(?P<place>.*[^\W\d_])(?P<blank>[ _-]?)(?P<count>[1-9]|I{1,3}|[A-D])")
#: Between the words of a position, and words that join it with the one for a bearing.
_BETWEEN, _LONGEST_PLACE = re.compile(r"[\s()\[\]:–—]+|(?<!\S)-(?!\S)"), 60
_SMALL_WORDS = frozenset(
    ("at", "the", "on", "of", "no", "no.", "nr.", "am", "an", "der", "auf", "du", "de", "la", "del", "della", "da",
     "di", "thrust", "radial", "axial", "guide", "main", "support", "ball", "roller", "на", "со", "с", "№", "n°", "#")
)  # fmt: skip

#: What is wanted of a value, before the position whose it is (common practice).
_WANTED = re.compile(
    r"(?:soll(?:wert|maß)?|nenn(?:wert|maß)|nominal(?:e|es)?|required|target|specified"
    r"|(?:valeur|valore|valor) nominale?|teórico|teorico|номинал(?:ьное)?|требование"
    r"|規格値|設計値|公称値|设计值|规定值|公称值"
    r"|标准值)[\s:：/_.-]*",
    re.IGNORECASE,
)


def without_wanted(text: str) -> str:
    """A text without words for what is wanted before it (``Soll Lüfterseite``).

    Returns
    -------
    str
        Empty where none stand before it, or nothing behind them.
    """
    return text[match.end() :] if (match := _WANTED.match(text)) else ""


def is_bearing_there(text: str, names: Names) -> bool:
    """Whether a text is a position and the word for a bearing in any order (``Drive end bearing``, ``DE Brg.``).

    Returns
    -------
    bool
        False for a text that says no bearing or no position.
    """
    pieces = _BETWEEN.split(text.strip()) if len(text) <= _LONGEST_PLACE else []
    rest = [piece for piece in pieces if piece and not is_bearing(piece.rstrip("."))]
    if not rest or len(rest) == len([piece for piece in pieces if piece]):
        return False
    while len(rest) > 1 and rest[0].casefold() in _SMALL_WORDS:
        rest = rest[1:]
    if len(rest) > 1 and names.station(" ".join(rest[1:])) and names.station(rest[0]):
        return True  # Bearing no. 1 (fan side)
    place = " ".join(rest)
    return bool(names.station(place)) and (len(place) > 1 or place.isdigit() or place.isupper())


def is_counted(text: str, names: Names) -> bool:
    """Whether a text is a position and which of several there (``anteriore 1``).

    Returns
    -------
    bool
        False for a text without a count.
    """
    found = _COUNTED.fullmatch(text)
    if found is None or not (found["blank"] or found["count"].isdigit()):
        return False
    place = found["place"]
    return bool((len(place) > 2 or not place.isascii()) and names.station(place))


def station_with_more(text: str, names: Names) -> str:
    """The station of a text that says in brackets where it lies, or has the word for the bearing behind it.

    Returns
    -------
    str
        Empty where it says none so.
    """
    bracket = BRACKET.fullmatch(fold(text))
    if bracket is not None and names.station(bracket[2]) and (own := names.station(bracket[1])):
        return own  # Lagerstelle A (Pumpenseite)
    before, _, last = text.rpartition(" ")
    if before and is_bearing(last) and len(before) > 1 and (own := names.station(before)):
        return own  # DE bearing
    return ""
