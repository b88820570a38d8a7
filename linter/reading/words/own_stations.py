"""Stations that a list of names shows by itself: the same parameters again, each time with another word at the end.

``BrgBore_R1, HsgBore_R1, ... BrgBore_R2, HsgBore_R2``: no list of words holds every name that a firm gives its bearing
positions, but the names of one table show them. Only several parameters of a seat or bearing that come again under each
word count; a word that says a part of a size, a part of the machine, a unit or one of several statements never does.
"""

import re
from collections.abc import Iterable

from attrs import evolve

from linter.reading.cells.signs import fold
from linter.reading.cells.units import known_unit
from linter.reading.words.cuts import joint_cuts
from linter.reading.words.dictionary import dictionary, group_key, word_key
from linter.reading.words.headings import Words
from linter.reading.words.measured_words import is_statement
from linter.reading.words.names import Names
from linter.reading.words.parts import names_place, part_alone

#: Parameters that must come again under each word, and one of these among them.
_ENOUGH = 3
_OF_SEATS = frozenset(
    ("bore_diameter", "outside_diameter", "ring_width", "shaft_seat_diameter", "housing_seat_diameter",
     "bearing_designation")
)  # fmt: skip
_MOST_NAMES = 2000
_BRACKETED = re.compile(r"[(\[{](.*)[)\]}]")
#: Words for one of several statements, states or trials of the same seat, not for a position (common practice).
_NO_POSITION = re.compile(
    r"(?i)(?:rev|ver|version|var|variant|variante|opt|option|alt|case|lastfall|cas|caso|step|iter|item|test|trial|run"
    r"|sample|meas|ist|soll|actual|target|nom|nominal|min|max|old|new|prev|cold|warm|hot|kalt|start|end|v|вариант"
    r"|design|spec|specified|specification|required?|requirement|drawing|measured|found|built|as[ _.-]?built|inspection"
    r"|catalogue|catalog|calc|calculated|estimate|proposal|draft|gemessen|gefordert|berechnet|katalog|entwurf|mesuré"
    r"|requis|medido|misurato|случай|案|版)[ _.]*\d*"
)


def with_stations(names: Iterable[str], words: Words) -> Words:
    """The words, with the stations that the names show added to those that are known; else the words as they are."""
    ends: dict[str, set[str]] = {}
    for name in list(dict.fromkeys(names))[:_MOST_NAMES]:
        for start, end in joint_cuts(name, 3):
            if (parameter := _of_station(name[:start], words)) and _may_be_station(name[end:], words):
                ends.setdefault(name[end:], set()).add(parameter)
    found = {
        word
        for word, named in ends.items()
        for other, theirs in ends.items()
        if word != other and len(named & theirs) >= _ENOUGH and named & theirs & _OF_SEATS
    }
    found = {word for word in found if not any(t in found or words.names.station(t) for t in _tails(word))}
    if not found or any(words.names.station(word) for word in found):
        return words
    mapping = words.names.mapping
    plain = {word: re.sub(r"[_\s]+", " ", _BRACKETED.sub(r"\1", word)).strip() for word in found}
    own = {fold(spelling): name for word, name in plain.items() for spelling in (word, name)}
    return Words(Names(evolve(mapping, stations={**own, **mapping.stations})))


def _tails(word: str) -> list[str]:
    """What stands behind each joint of a word: where that alone is a station, the rest is of the name before it."""
    return [word[end:] for _, end in joint_cuts(word, 3)]


def _of_station(text: str, words: Words) -> str:
    """The parameter of a station that a text names without naming the station; or empty."""
    heading = words.heading(text)
    known = heading is not None and not heading.station and heading.entry.level == "station"
    return heading.parameter if known and heading is not None and heading.parameter != "station" else ""


def is_no_position(text: str) -> bool:
    """Whether a word says one of several statements, states or trials, or a unit, and so no position."""
    said = word_key(text) in dictionary().versions or _NO_POSITION.fullmatch(text) is not None or is_statement(text)
    return said or known_unit(text) is not None


def _may_be_station(text: str, words: Words) -> bool:
    """Whether a word at the end of a name says nothing else that is known."""
    if is_no_position(text) or not any(map(str.isalpha, text)) or names_place(text) or part_alone(text):
        return False
    if words.groups(text) or group_key(text) in dictionary().group_words:
        return False
    heading = words.heading(text)
    return heading is None or heading.parameter == "axial_role"  # (fixed side)
