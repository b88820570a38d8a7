"""Whether a size that a row names is the ring's or that of the part it sits in: a row of a ring states no tolerance."""

import re

from attrs import evolve

from linter.reading.cells.fit_classes import HOLE
from linter.reading.layouts.long_table import ASPECTS, LongTable
from linter.reading.words.headings import Heading
from linter.reading.words.parts import concepts_said

_SIZE, _LIMITED = re.compile(r"\d+(?:[.,]\d+)?"), ("VALUE", "MAX")
#: Limits of a seat differ by less of its size.
_NEAR = 1.02
_POSITIVE = re.compile(r"\+?\s*(\d*[.,]?\d+).*")
#: The shoulder of a ring to that of the part it lies at.
_AT_RING = {
    "inner_ring_shoulder_diameter": "shaft_shoulder_diameter",
    "outer_ring_shoulder_diameter": "housing_shoulder_diameter",
}


def of_part_toleranced(table: LongTable, row: int, label: str, heading: Heading) -> Heading:
    """What a row names, that of the part where its row states a tolerance as only the part's size has one."""
    return _shoulder(table, row, _hole(table, row, label, heading))


def _hole(table: LongTable, row: int, label: str, heading: Heading) -> Heading:
    """A bore whose row states the class of a hole, or a limit above its nominal size, is that of the housing.

    A ring has no such class, and the upper deviation of its bore is zero (ISO 492, from memory).
    """
    if heading.parameter != "bore_diameter" or heading.aspect != "value" or heading.own_unit:
        return heading
    classed = any(HOLE.fullmatch(text) for role in ("CLASS", "VALUE", "EXPR") for text in _texts(table, row, role))
    numbers = [found[1] for text in _texts(table, row, "UPPER") if (found := _POSITIVE.fullmatch(text))]
    above = any(float(number.replace(",", ".")) > 0 for number in numbers) or _above_nominal(table, row)
    of_ring = concepts_said(label) & {"inner", "ring", "inner_ring"}
    return evolve(heading, parameter="housing_seat_diameter") if (classed or above) and not of_ring else heading


def _above_nominal(table: LongTable, row: int) -> bool:
    """Whether the largest size of a row lies above its nominal size."""
    stated = [[found[0] for text in _texts(table, row, role) if (found := _SIZE.match(text))] for role in _LIMITED]
    if not all(stated):
        return False
    nominal, largest = (float(numbers[0].replace(",", ".")) for numbers in stated)
    return nominal < largest < _NEAR * nominal


def _shoulder(table: LongTable, row: int, heading: Heading) -> Heading:
    """A shoulder at a ring whose row states deviations or a class is that of the part beside: a ring's has none."""
    part = _AT_RING.get(heading.parameter, "")
    if not part or heading.own_unit or not any(_texts(table, row, role) for role in ASPECTS):
        return heading
    return evolve(heading, parameter=part)


def _texts(table: LongTable, row: int, role: str) -> list[str]:
    """The filled cells of a row in the columns of a role."""
    columns = [column for column, own in table.roles.items() if own == role]
    return [text for column in columns if (text := table.grid.text(row, column))]
