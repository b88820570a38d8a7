"""A bore in a row of its own: that of the housing where its row, or those below it, say what no ring of a bearing has.

A ring has no class of a hole, its bore is never above its nominal size (ISO 492, from memory), and it is that of the
shaft.
"""

import re
from collections.abc import Callable

from attrs import evolve

from linter.reading.cells.fit_classes import HOLE
from linter.reading.cells.signs import fold
from linter.reading.layouts.long_table import ASPECTS, LongTable
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said

_NUMBER = re.compile(r"[Ø⌀φø]?\s*(?P<number>[+-]?\d*[.,]?\d+)(?![.,]?\d)(?:\s*[^\W\d_]{1,4})?")
_BEGINS = re.compile(r"[Ø⌀φø]?\s*(?P<number>\d*[.,]?\d+)")
#: A ring has the size of the shaft that it sits on: a bore larger than that by more is another one.
_LARGER = 1.15
_OF_RING = frozenset(("inner", "ring", "inner_ring"))


def with_its_part(
    table: LongTable, row: int, label: str, heading: Heading, words: Words, label_at: Callable[[int], str]
) -> Heading:
    """The heading of a bore, of the housing where the cells of its row or the deviations below it say so.

    Returns
    -------
    Heading
        The heading itself where nothing does, where words say the ring, or where it is none of a bore.
    """
    if heading.parameter != "bore_diameter" or heading.aspect != "value" or heading.own_unit:
        return heading
    if concepts_said(label) & _OF_RING:
        return heading
    told = _has_class(table, row) or _is_above(table, row) or _heads_deviations(table, row, label, words, label_at)
    if told or _is_larger(table, row, heading, words, label_at):
        return evolve(heading, parameter="housing_seat_diameter")
    return heading


def _has_class(table: LongTable, row: int) -> bool:
    return any(HOLE.fullmatch(text) for text in _texts(table, row, "CLASS"))


def _is_above(table: LongTable, row: int) -> bool:
    """Whether the upper deviation of a row lies above its size, or its largest size above the nominal one."""
    upper = [number for text in _texts(table, row, "UPPER") if (number := _number(text)) is not None]
    largest = [number for text in _texts(table, row, "MAX") if (number := _number(text)) is not None]
    nominal = [number for text in _texts(table, row, "VALUE") if (number := _number(text)) is not None]
    return any(number > 0 for number in upper) or (len(nominal) == 1 and any(n > nominal[0] for n in largest))


def _heads_deviations(table: LongTable, row: int, label: str, words: Words, label_at: Callable[[int], str]) -> bool:
    """Whether a bore of no part is followed by a row that states its deviations or its class."""
    below = words.group(label_at(row + 1)) if row + 1 < table.grid.height else ""
    return below in ("UPPER", "LOWER", "CLASS") and "bearing" not in concepts_said(label)


def _is_larger(table: LongTable, row: int, heading: Heading, words: Words, label_at: Callable[[int], str]) -> bool:
    """Whether a bore is larger at every position than the shaft there, and no other row states one of the housing."""
    grid, shaft = table.grid, -1
    for other in range(table.start, grid.height):
        found = words.heading(label_at(other))
        if found is None or found.aspect != "value" or found.station != heading.station:
            continue
        if found.parameter == "housing_seat_diameter":
            return False
        shaft = other if found.parameter == "shaft_seat_diameter" else shaft
    columns = [c for c, role in table.roles.items() if role in ("VALUE", "COLUMN") and grid.text(row, c)]
    if shaft < 0 or not columns:
        return False
    pairs = [(_size(grid.text(row, c)), _size(grid.text(shaft, c))) for c in columns]
    return all(bore is not None and size is not None and bore > _LARGER * size for bore, size in pairs)


def _texts(table: LongTable, row: int, role: str) -> list[str]:
    assert role == "VALUE" or role in ASPECTS
    return [text for c, own in table.roles.items() if own == role and (text := table.grid.text(row, c))]


def _size(text: str) -> float | None:
    found = _BEGINS.match(fold(text))
    return float(found["number"].replace(",", ".")) if found else None


def _number(text: str) -> float | None:
    found = _NUMBER.fullmatch(fold(text).replace("−", "-"))
    return float(found["number"].replace(",", ".")) if found else None
