"""Machines side by side over positions that come again below each: their row names them, whatever it is called.

``Spindel | W 12 | | F 63 |`` over ``Lagerstelle | A | B | A | B``: rows of the machines alone may stand between. Heads
may say both at once (``W 12 A | W 12 B | F 63 A | F 63 B``): they are taken apart.
"""

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import Any

from linter.reading.cells.fit_classes import CLASS_ONLY
from linter.reading.files.grids import LONGEST_MIXED, Grid
from linter.reading.layouts.heads_above import LIKE_VALUE
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.layouts.row_keys import machine_by_rows
from linter.reading.layouts.sides import side_of
from linter.reading.layouts.strips import Found
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Words
from linter.reading.words.machine_words import PARTS, names_machine, says_machine
from linter.reading.words.own_stations import is_no_position
from linter.reading.words.parts import concepts_said

#: Rows that may name positions, and rows above one that may name its machines.
_ROWS, _ABOVE = 30, 8
#: Columns of positions, at least: two below each of two machines.
_FEWEST = 4
_LONGEST = 60
#: What the label of the row of machines is read as.
_MACHINE = "machine"
#: Where a head may be cut into machine and position.
_CUTS = re.compile(r"\s*[\n/|,;:]\s*|\s+[–—-]\s+|\s*[(\[（]|\s+|_")
_CLOSED = " )]）_"


def with_machines_over(grid: Grid, words: Words, found: Found) -> Grid:
    """The grid with the label of each row of machines as one; as it is where none stands over positions.

    Parameters
    ----------
    grid : Grid
        The sheet.
    words : Words
        The words that are known.
    found : Found
        What was found; what is assumed is added.

    Returns
    -------
    Grid
        The grid.
    """
    if grid.height > LONGEST_MIXED or grid.width <= _FEWEST:
        return grid
    rows: dict[int, list[dict[int, Any]]] = {}
    for row in range(min(grid.height, _ROWS)):
        if (both := _joined_heads(grid, row, words)) is not None:
            rows[row] = both
        elif (places := _positions(grid, row, words)) and (above := _row_of_machines(grid, row, places, words)) >= 0:
            first = places.start
            label = next((c for c in range(first) if grid.text(above, c)), _names(grid, row, first))
            if not names_machine(said := grid.text(above, label)):
                found.problems.append(machine_by_rows(grid, said, above, first, of_row=True))
            rows[above] = [dict(enumerate(grid.row(above))) | {label: _MACHINE}]
    if not rows:
        return grid
    return of_rows(grid, [(r, cells) for r in range(grid.height) for cells in rows.get(r, [None])])


def _positions(grid: Grid, row: int, words: Words) -> range:
    """The columns of a row that names positions side by side, some of them again; none where it is no such row."""
    texts = [grid.text(row, column) for column in range(grid.width)]
    said = [bool(text and words.station_said(text)) for text in texts]
    first = next((c for c, is_place in enumerate(said) if c and is_place), 0)
    end = next((c for c in range(first, len(said)) if not said[c]), len(said))
    again = end - first >= _FEWEST and len({*texts[first:end]}) < end - first
    return range(first, end) if first and again and not any(said[end:]) else range(0)


def _row_of_machines(grid: Grid, row: int, places: range, words: Words) -> int:
    """The row above positions that names a machine over each run of them, by its label or as the first; or -1.

    Nothing where a label says machine itself.
    """
    above = [r for r in range(row - 1, max(row - 1 - _ABOVE, -1), -1) if grid.filled[r] > 1]
    labels = {r: next((text for c in range(places.start) if (text := grid.text(r, c))), "") for r in above}
    headings = {r: words.heading(label) for r, label in labels.items()}
    if any(heading is not None and heading.parameter == "machine" for heading in headings.values()):
        return -1
    rows = [r for r in above if headings[r] is None and _are_machines(grid, r, row, places, labels[r], words)]
    return next((r for r in rows if names_machine(labels[r])), rows[-1] if rows else -1)


def _names(grid: Grid, row: int, first: int) -> int:
    """The column left of the positions that names most rows below them."""
    return max(range(first), key=lambda c: sum(bool(grid.text(r, c)) for r in range(row + 1, grid.height)))


def _are_machines(grid: Grid, row: int, below: int, places: range, label: str, words: Words) -> bool:
    """Whether the texts of a row are names over runs of positions, each position once below each name."""
    if sum(bool(grid.text(row, column)) for column in range(places.start)) > 1 or not grid.text(row, places.start):
        return False
    names: dict[str, list[str]] = {}
    for text, start, end in _runs([grid.text(row, c) for c in places]):
        own = [grid.text(below, places[k]) for k in range(start, end)]
        if text in names or len({*own}) < len(own):
            return False
        names[text] = own
    several = any(len(own) > 1 for own in names.values())
    return several and _name_machines([*names], words, told=bool(names_machine(label)))


def _runs(texts: Sequence[str]) -> Iterator[tuple[str, int, int]]:
    """Each text with where it begins and ends: blank cells behind it and the same text again are of it."""
    before = ""
    starts = []
    for k, text in enumerate(texts):
        if text and text != before:
            starts.append(k)
        before = text or before
    for start, end in pairwise([*starts, len(texts)]):
        yield texts[start], start, end


def _name_machines(names: Sequence[str], words: Words, *, told: bool) -> bool:
    """Whether texts may be the names of several machines: ``told`` by the word beside them, or by what they say.

    A number behind one word (``Messung 1``) is a name where the word says a machine or is a code.
    """
    if len({*map(str.casefold, names)}) < max(len(names), 2) or any(_is_no_name(name, words) for name in names):
        return False
    if told or all(map(says_machine, names)):
        return True
    stems = {re.sub(r"[\W\d_]+", "", name) for name in names}
    coded = len(stems) > 1 or all(stem.isascii() and stem.isupper() for stem in stems)
    return coded and all(any(map(str.isdigit, name)) for name in names)


def _is_no_name(text: str, words: Words) -> bool:
    """Whether a text is a value, a word that is known, a part or a bearing, and so no name of a machine."""
    if len(text) > _LONGEST or not any(map(str.isalpha, text)) or LIKE_VALUE.match(text) or is_no_position(text):
        return True
    if CLASS_ONLY.fullmatch(text):
        return True
    known = words.heading(text) is not None or bool(words.groups(text)) or bool(words.station_said(text))
    of_part = side_of(text) is not None or (bool(concepts_said(text) & PARTS) and not says_machine(text))
    return known or of_part or designation_strength(text) == "certain"


def _is_place(text: str, words: Words) -> bool:
    """Whether a text in a head is a position: no number (``25 k5``)."""
    return any(map(str.isalpha, text)) and bool(words.station_said(text))


def _joined_heads(grid: Grid, row: int, words: Words) -> list[dict[int, Any]] | None:
    """The two rows that a row of heads makes that each say machine and position; None where they do not."""
    texts = [grid.text(row, column) for column in range(grid.width)]
    ways = [{*_ways(text, words)} if c and 2 < len(text) <= _LONGEST else set() for c, text in enumerate(texts)]
    first = next((c for c, own in enumerate(ways) if own), 0)
    end = next((c for c in range(first, len(ways)) if not ways[c]), len(ways))
    above = sum(bool(grid.text(r, c)) for r in range(row) for c in range(first, end))
    if not first or end - first < _FEWEST or any(ways[end:]) or above > 1:
        return None
    pairs = _chosen(ways[first:end])
    if not pairs or not _name_machines([*dict.fromkeys(name for name, _ in pairs)], words, told=False):
        return None
    head: dict[int, Any] = dict(enumerate(grid.row(row)))
    label = _names(grid, row, first)
    machines = {label: _MACHINE} | {first + k: name for k, (name, _) in enumerate(pairs)}
    return [machines, head | {first + k: place for k, (_, place) in enumerate(pairs)}]


def _chosen(ways: Sequence[set[tuple[str, str]]]) -> list[tuple[str, str]]:
    """Machine and position of each head: the longest name that stands before two positions; none where one has none."""
    below: dict[str, set[str]] = {}
    for name, place in set().union(*ways):
        below.setdefault(name, set()).add(place)
    fitting = [[(len(name), name, place) for name, place in own if len(below[name]) > 1] for own in ways]
    pairs = [max(own)[1:] for own in fitting if own]
    return pairs if len({*pairs}) == len(ways) else []


def _ways(text: str, words: Words) -> Iterator[tuple[str, str]]:
    """The ways to cut a head into a machine and a position, in any order."""
    for cut in _CUTS.finditer(text):
        one, two = text[: cut.start()].strip(_CLOSED), text[cut.end() :].strip(_CLOSED)
        for name, place in ((one, two), (two, one)):
            if len(name) > 1 and _is_place(place, words) and not words.station_said(name):
                yield name, place
