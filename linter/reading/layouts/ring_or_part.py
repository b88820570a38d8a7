"""Whether a bore or a shoulder in a row is the ring's or that of the part: a ring's has no tolerance of a seat.

A ring has no class of a hole, the upper deviation of its bore is zero (ISO 492, from memory), and its bore is as large
as the shaft.
"""

import re
from collections.abc import Callable

from attrs import evolve

from linter.reading.cells.fit_classes import HOLE
from linter.reading.cells.signs import fold
from linter.reading.layouts.long_table import ASPECTS, LongTable
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said

_NUMBER = re.compile(r"[Ø⌀φø]?\s*(?P<sign>[+-]?)\s*(?P<number>\d*[.,]?\d+)")
#: Limits of a seat differ by less of its size.
_NEAR = 1.02
#: A ring has the size of the shaft that it sits on: a bore larger than that by more is another one.
_LARGER = 1.15
_OF_RING = frozenset(("inner", "ring", "inner_ring"))
#: The shoulder of a ring to that of the part it lies at.
_AT_RING = {
    "inner_ring_shoulder_diameter": "shaft_shoulder_diameter",
    "outer_ring_shoulder_diameter": "housing_shoulder_diameter",
}


def of_part(
    table: LongTable, row: int, label: str, heading: Heading, words: Words, label_at: Callable[[int], str]
) -> Heading:
    """What a row names: that of the part where the cells of the row, or the deviations below it, say what no ring has.

    Returns
    -------
    Heading
        The heading itself where nothing does, where words say the ring, or where it is no bore and no shoulder.
    """
    if heading.own_unit:
        return heading
    if (shoulder := _AT_RING.get(heading.parameter, "")) and any(_texts(table, row, *ASPECTS)):
        return evolve(heading, parameter=shoulder)
    if heading.parameter != "bore_diameter" or heading.aspect != "value" or concepts_said(label) & _OF_RING:
        return heading
    told = _has_class(table, row) or _is_above(table, row) or _heads_deviations(table, row, label, words, label_at)
    if told or _is_larger(table, row, heading, words, label_at):
        return evolve(heading, parameter="housing_seat_diameter")
    return heading


def _has_class(table: LongTable, row: int) -> bool:
    """Whether a column of classes says that of a hole; one in the value's cell may be of a hub, and is asked about."""
    return any(map(HOLE.fullmatch, _texts(table, row, "CLASS")))


def _is_above(table: LongTable, row: int) -> bool:
    """Whether the upper deviation of a row is positive, or its largest size lies a little above the nominal one."""
    upper, largest, nominal = (_numbers(table, row, role) for role in ("UPPER", "MAX", "VALUE"))
    near = len(nominal) == 1 and any(nominal[0] < number < _NEAR * nominal[0] for number in largest)
    return near or any(number > 0 for number in upper)


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
    pairs = [(_number(grid.text(row, c)), _number(grid.text(shaft, c))) for c in columns]
    return all(bore is not None and size is not None and bore > _LARGER * size for bore, size in pairs)


def _texts(table: LongTable, row: int, *roles: str) -> list[str]:
    """The filled cells of a row in the columns of some roles."""
    return [text for c, own in table.roles.items() if own in roles and (text := table.grid.text(row, c))]


def _numbers(table: LongTable, row: int, role: str) -> list[float]:
    return [number for text in _texts(table, row, role) if (number := _number(text)) is not None]


def _number(text: str) -> float | None:
    """The number that a text begins with."""
    found = _NUMBER.match(fold(text).replace("−", "-"))
    return float(found["sign"] + found["number"].replace(",", ".")) if found else None
