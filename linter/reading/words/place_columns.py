"""Columns that name the stations without a word for them in their heading, told by their cells."""

import re
from collections.abc import Callable, Sequence
from itertools import pairwise

from linter.reading.words.column_words import KEYS
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Heading, Words

Column = Heading | None
Cells = Callable[[int], Sequence[str]]

#: A number of a position, alone or behind letters (``1``, ``R2``, ``Brg 1``).
_COUNT = re.compile(r"(?:(?P<letters>[^\W\d_]{1,4})[ .-]?)?0?(?P<count>\d)")


def number_as_station(headings: Sequence[Column], result: list[Column], cells: Cells, words: Words) -> list[Column]:
    """What the headings mean by themselves, one that numbers the positions taken for a station, here and in the result.

    ``Bearing | No.`` heads positions (*1*, *Bearing 2*) where another column holds the designations.
    """
    if any(h is not None and (h.parameter == "station" or h.station) for h in result):
        return list(headings)
    designated = [c for c, h in enumerate(result) if h is not None and h.parameter == "bearing_designation"]
    numbers = [c for c in designated if _are_counts(cells(c), words)]
    others = [c for c in designated if c not in numbers and all(designation_strength(t) != "no" for t in cells(c))]
    if len(numbers) != 1 or not others:
        return list(headings)
    result[numbers[0]] = Heading("station")
    return [result[c] if c in numbers else h for c, h in enumerate(headings)]


def _are_counts(cells: Sequence[str], words: Words) -> bool:
    """Whether cells, two or more, are positions or count them from one on, again for each machine."""
    texts = [text.strip() for text in cells]
    if len({*texts}) > 1 and all(designation_strength(t) == "no" and words.station_said(t) for t in texts):
        return True
    found = [_COUNT.fullmatch(text) for text in texts]
    counts = [(said["letters"], int(said["count"])) for said in found if said is not None]
    if len(counts) < max(len(texts), 2) or len({letters for letters, _ in counts}) > 1:
        return False
    return counts[0][1] == 1 and all(b in (1, a + 1) for (_, a), (_, b) in pairwise(counts))


def place_as_station(
    labels: Sequence[str], keys: Sequence[str], result: list[Column], cells: Cells, words: Words
) -> None:
    """Where no column names the stations, one headed by a word for a place does, if its cells tell the rows apart.

    Numbers below the word for a bearing name none beside a column of positions (``Подшипник``: *4-36106*).
    """
    named = [c for c, h in enumerate(result) if h is not None and (h.parameter == "station" or h.station)]
    said = [c for c, h in enumerate(result) if h in (None, Heading("machine")) and _are_positions(cells(c), words)]
    _numbers_beside(keys, result, cells, words, named, said)
    if named or not any(h is not None and h.entry.level == "station" for h in result):
        return
    if len(said) == 1 and not {"VALUE", "UNIT"} & {*words.groups(labels[said[0]])}:
        result[said[0]] = Heading("station")
        return
    found = (c for c, h in enumerate(result) if h is None and keys[c] in KEYS["place"] and _tell_apart(cells(c)))
    if (place := next(found, None)) is not None:
        result[place] = Heading("station")


def _numbers_beside(
    keys: Sequence[str],
    result: list[Column],
    cells: Cells,
    words: Words,
    named: Sequence[int],
    said: Sequence[int],
) -> None:
    """A column of numbers headed by the word for a bearing states designations beside the one column of positions."""
    numbers = [c for c in named if keys[c] in KEYS["bearing"] and _are_numbers(cells(c), words)]
    places = said if named == numbers else [c for c in named if c not in numbers and result[c] == Heading("station")]
    if len(numbers) == len(places) == 1 and result[numbers[0]] == Heading("station"):
        result[numbers[0]], result[places[0]] = Heading("bearing_designation"), Heading("station")


def _tell_apart(texts: Sequence[str]) -> bool:
    return len(texts) > 1 and len(set(texts)) == len(texts) and all(len(text) <= 40 for text in texts)


def _are_positions(cells: Sequence[str], words: Words) -> bool:
    """Whether cells, all of them different, say positions in words: numbers may count the rows."""
    words_only = all(len(cell) > 1 and any(map(str.isalpha, cell)) and len(cell) <= 40 for cell in cells)
    return len(cells) > 1 and words_only and len(set(cells)) == len(cells) and all(map(words.station_said, cells))


def _are_numbers(cells: Sequence[str], words: Words) -> bool:
    """Whether cells are rather numbers of bearings than positions (``4-36106``)."""
    return any(map(str.isdigit, "".join(cells))) and not any(map(words.station_said, cells))
