"""The bearing that a name says in brackets: ``Lagersitz A-Seite Ø (Lager 6206-2Z)``, ``Brg journal OD (17 mm brg)``."""

import re
from functools import lru_cache

from attrs import frozen

from linter.reading.words.bearing_tables import without_words
from linter.reading.words.designations import read_designation
from linter.reading.words.dictionary import MOST_REMEMBERED
from linter.reading.words.parts import concepts_said, is_bearing

_BRACKET = re.compile(r"\s*[(\[（]\s*(?P<inner>[^()\[\]（）]{2,40}?)\s*[)\]）]\s*")
_FOR = re.compile(r"(?:for|für|pour|para|per|zu|of|von|de|для)\s+", re.IGNORECASE)
_WORD = r"[^\W\d_Øø]+\.?(?: [^\W\d_Øø]+)?"
_SIZE = re.compile(rf"(?:(?P<before>{_WORD}) ?)?[Øø⌀]? ?(?P<size>\d+(?:[.,]\d+)?) ?(?:mm)?(?: ?(?P<behind>{_WORD}))?")
#: Which bearing of several it is (``Lager 1``), and no size of one.
_NUMBERED = re.compile(r"[^\W\d_]+\.? ?[1-9]")
#: Concepts of which a name says one where a plain number in brackets is that of a bearing.
_OF_SEATS = frozenset(("bearing", "seat", "shaft", "housing", "shoulder", "bore"))


@frozen
class Said:
    """A name without its bracket, and what stands in it: a designation, or a size of the bearing in mm."""

    name: str
    designation: str = ""
    size: str = ""


@lru_cache(maxsize=MOST_REMEMBERED)
def bearing_said(text: str) -> Said | None:
    """The bearing that a name says in brackets, or None."""
    found = _BRACKET.search(text) if len(text) <= 120 and any(map(str.isdigit, text)) else None
    if found is None or not (name := f"{text[: found.start()]} {text[found.end() :]}".strip()):
        return None
    inner = _FOR.sub("", found["inner"], count=1)
    sized = _SIZE.fullmatch(inner)
    words = [word.strip(" .") for word in (sized["before"], sized["behind"]) if word] if sized is not None else []
    if sized is not None and any(map(is_bearing, words)) and len(sized["size"]) < 4:
        return None if _NUMBERED.fullmatch(inner) else Said(name, size=sized["size"])
    read = read_designation(inner)
    if read.basic is None or read.reported:
        return None
    plain = read.strength == "certain" or any(map(is_bearing, re.findall(r"[^\W\d_]+", inner)))
    return Said(name, without_words(inner)) if plain or concepts_said(name) & _OF_SEATS else None


def without_bearing(text: str) -> str:
    """A name without the bearing that it says in brackets."""
    return said.name if (said := bearing_said(text)) is not None else text
