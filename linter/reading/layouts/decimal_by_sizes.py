"""The decimal mark of a table whose numbers leave it open, by sizes that belong together.

``20,011`` alone can be twenty or twenty thousand. Beside a bore of 20 it is a seat of twenty.
"""

import re

from linter.reading.cells.numbers import Decimal
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import cell_text
from linter.reading.layouts.strips import Block, Found
from linter.reading.words.designations import read_designation

_SIDES = {
    "bore_diameter": "shaft", "shaft_seat_diameter": "shaft",
    "outside_diameter": "housing", "housing_seat_diameter": "housing",
}  # fmt: skip
_OPEN = re.compile(r"\s*[Ø⌀øφΦϕ∅Ф]?\s*(\d{1,3})([.,])(\d{3})(?![\d.,]).*")
_WHOLE = re.compile(r"\s*[Ø⌀øφΦϕ∅Ф]?\s*(\d+)(?![\d.,]).*")
#: A seat is within this share of the ring it belongs to.
_NEAR = 0.05
_MOST_ROWS = 2000


def _designated(block: Block) -> dict[tuple[str, int], float]:
    """Bore and outside diameter in mm of the bearings that the rows of a block designate, by side and row."""
    found: dict[tuple[str, int], float] = {}
    for strip in (s for s in block.strips if s.parameter == "bearing_designation" and s.aspect == "value"):
        for row, cell in zip(strip.rows[:_MOST_ROWS].tolist(), strip.cells[:_MOST_ROWS].tolist(), strict=True):
            designation = read_designation(cell_text(cell))
            for side, size in (("shaft", designation.bore_diameter), ("housing", designation.outside_diameter)):
                if size is not None:
                    found[side, row] = size
    return found


def decimal_by_sizes(found: Found) -> Decimal | None:
    """The mark that makes open numbers agree with whole ones, or with the designation, of the same ring."""
    votes: set[Decimal] = set()
    for block in found.blocks:
        votes |= _votes(block)
    return votes.pop() if len(votes) == 1 else None


def _votes(block: Block) -> set[Decimal]:
    """The marks that the rows of a block speak for."""
    whole: dict[tuple[str, int, str], list[float]] = {}
    open_ones: list[tuple[tuple[str, int, str], str, str, str]] = []
    for strip in block.strips:
        side = _SIDES.get(strip.parameter)
        if side is None or strip.aspect not in ("value", "min", "max"):
            continue
        for row, cell in zip(strip.rows[:_MOST_ROWS].tolist(), strip.cells[:_MOST_ROWS].tolist(), strict=True):
            key, text = (side, row, strip.unit), cell_text(cell)
            if match := _OPEN.fullmatch(text):
                open_ones.append((key, match[1], match[2], match[3]))
            elif match := _WHOLE.fullmatch(text):
                whole.setdefault(key, []).append(float(match[1]))
    for (side, row), size in _designated(block).items() if open_ones else ():
        for unit in {key[2] for key, *_ in open_ones if known_unit(key[2] or "mm") == known_unit("mm")}:
            whole.setdefault((side, row, unit), []).append(size)
    votes: set[Decimal] = set()
    for key, before, mark, behind in open_ones:
        for size in whole.get(key, ()):
            if abs(float(f"{before}.{behind}") - size) <= _NEAR * size:
                votes.add("." if mark == "." else ",")
            elif abs(float(before + behind) - size) <= _NEAR * size:
                votes.add("," if mark == "." else ".")
    return votes
