"""Headings alone in their row that are alike and stand above the same names: the positions of a machine.

``Palier supérieur`` ... ``Palier inférieur``, ``2 | Bearing, impeller side``: no list of
words holds every place of a machine, but headings with the same first word, above rows with the same names, show them.
"""

import re
from collections.abc import Mapping, Sequence

from attrs import evolve, frozen

from linter.reading.cells.signs import fold
from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank
from linter.reading.layouts.sections import section_label
from linter.reading.layouts.sides import side_of
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Words
from linter.reading.words.names import Names
from linter.reading.words.own_stations import is_no_position
from linter.reading.words.parts import concepts_said, is_bearing

#: Columns that may hold the headings, headings of one sort, and names that come again below each of them.
_COLUMNS, _FEWEST, _MOST, _ENOUGH = 4, 2, 12, 2
#: Signs of a number or letter of a position at most; a unit may be as short.
_LONGEST_NUMBER = 2
_WORDS = re.compile(r"[^\W\d_]+")
_EASTERN = re.compile(r"(?:軸受|轴承|ベアリング|支承)(?:部|座|位置|单元|ユニット)?")
_APART = re.compile(r"\s*[,;:–—]\s*|\s+-\s+")
_BRACKET = re.compile(r"(?P<before>[^()（）]+?)\s*[(（](?P<inner>[^()（）]+)[)）]")
_COMPOUND = re.compile(r"([^\W\d_]{3,}?)-?lager", re.IGNORECASE)
#: What holds a bearing, beside the words for a bearing and for a position itself.
_UNITS = frozenset(
    map(word_key, ("узел", "подшипниковый", "journal", "support", "apoyo", "supporto", "portée", "stelle"))
)
#: What a heading says that is of one part of a position.
_PARTS = frozenset(
    ("shaft", "housing", "ring", "seat", "shoulder", "fillet", "bore", "spring", "seal", "nut", "sleeve")
)


@frozen
class _Head:
    """A heading: its row and text, and the names in the rows below it up to the next row of one text."""

    row: int
    text: str
    names: frozenset[str]


def with_block_heads(grid: Grid, words: Words) -> Words:
    """The words, with the positions that headings of blocks of a grid show; as they are where none do."""
    if grid.height > LONGEST_MIXED:
        return words
    found: dict[str, str] = {}
    for column in range(min(_COLUMNS, grid.width)):
        heads = _heads(grid, column, words)
        for first in dict.fromkeys(_first(head.text) for head in heads):
            alike = [head for head in heads if _first(head.text) == first]
            if first and _are_positions(first, alike, words):
                found.update(_called([head.text for head in alike], words))
        ending = {turned: head for head in heads if (turned := _turned(head.text))}
        alike = [evolve(head, text=turned) for turned, head in ending.items()]
        if alike and len({*map(_first, ending)}) == 1 and _are_positions(_first(alike[0].text), alike, words):
            found.update({head.text: head.text for head in ending.values()})
    found = {text: name for text, name in found.items() if not words.station_said(text)}
    if not found:
        return words
    mapping = words.names.mapping
    own = {fold(text): name for text, name in found.items()}
    return Words(Names(evolve(mapping, stations={**own, **mapping.stations})), words.told, words.deviations)


def _first(text: str) -> str:
    """The first word of a heading, as it is compared; of signs without blanks the word for a bearing."""
    eastern = _EASTERN.match(text)
    word = eastern or _WORDS.match(text)
    return word_key(word[0]) if word else ""


def _turned(text: str) -> str:
    """A heading with its last word first where that says bearing (``Tail bearing``, ``Kollektorlager``); or empty."""
    before, _, last = text.strip().rpartition(" ")
    if before and is_bearing(last):
        return f"{last} {before}"
    compound = _COMPOUND.fullmatch(text.strip())
    return " ".join(("Lager", compound[1])) if compound else ""


def _heads(grid: Grid, column: int, words: Words) -> list[_Head]:
    """The rows of a column that hold one text alone above rows of names and values."""
    texts = {row: label for row in range(grid.height) if (label := section_label(grid, row, column))}
    heads = {row: text for row, text in texts.items() if side_of(text) is None}
    ends = [*heads, grid.height]
    result = []
    for at, (row, text) in enumerate(heads.items()):
        below = range(row + 1, ends[at + 1])
        names = [grid.text(r, column) for r in below if r not in texts and _has_value(grid, r, column)]
        result.append(_Head(row, text, frozenset(name for name in names if name)))
    return result


def _has_value(grid: Grid, row: int, column: int) -> bool:
    return any(not is_blank(grid.columns[c][row]) for c in range(column + 1, grid.width))


def _are_positions(first: str, heads: Sequence[_Head], words: Words) -> bool:
    """Whether headings with the same first word are positions: they differ, and the same names stand below each."""
    texts = {word_key(head.text) for head in heads}
    if not _FEWEST <= len(heads) <= _MOST or len(texts) < len(heads):
        return False
    if any(is_no_position(text) for h in heads for text in (h.text, _rest(h.text)) if len(text) > _LONGEST_NUMBER):
        return False
    again = frozenset.intersection(*(head.names for head in heads))
    of_seats = [name for name in again if _of_station(name, words)]
    if len(of_seats) < _ENOUGH or 2 * len(again) < min(len(head.names) for head in heads):
        return False
    if any(concepts_said(_rest(head.text)) & _PARTS for head in heads):
        return False
    return _says_position(heads[0].text, first, words) or all(words.station_said(_place(h.text)) for h in heads)


def _rest(text: str) -> str:
    """A heading without its first word."""
    word = _EASTERN.match(text) or _WORDS.match(text)
    return text[word.end() :].strip() if word else text


def _says_position(text: str, first: str, words: Words) -> bool:
    """Whether the first word of a heading is one for a bearing, for its position, or for what holds it."""
    word = _EASTERN.match(text) or _WORDS.match(text)
    if word is None:
        return False
    heading = words.heading(word[0])
    place = heading is not None and heading.parameter == "station" and not heading.station
    return _EASTERN.match(text) is not None or is_bearing(word[0]) or place or first in _UNITS


def _of_station(name: str, words: Words) -> bool:
    heading = words.heading(name)
    return heading is not None and heading.entry.level == "station"


def _place(text: str) -> str:
    """What a heading says behind a comma or in brackets; or empty."""
    if bracket := _BRACKET.fullmatch(text):
        return bracket["inner"].strip()
    pieces = _APART.split(text, maxsplit=1)
    return pieces[1].strip() if len(pieces) == 2 else ""


def _called(texts: Sequence[str], words: Words) -> Mapping[str, str]:
    """The name of the position that each heading says: its place where all say a known one, else the whole heading."""
    places = [_place(text) for text in texts]
    said = all(place and words.station_said(place) for place in places) and len(set(places)) == len(places)
    return dict(zip(texts, places if said else texts, strict=True))
