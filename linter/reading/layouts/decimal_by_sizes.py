"""The decimal mark of a table whose numbers leave it open, by sizes that belong together.

``20,011`` alone can be twenty or twenty thousand. Beside a bore of 20 it is a seat of twenty; as a speed in 1/min it is
twenty thousand.
"""

import re

from linter.reading.cells.numbers import Decimal
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import cell_text
from linter.reading.layouts.strips import Block, Found
from linter.reading.layouts.unit_by_sizes import RINGS_LIKE, designated

_OPEN = re.compile(r"\s*[Ø⌀øφΦϕ∅Ф]?\s*(\d{1,3})([.,])(\d{3})(?![\d.,]).*")
_WHOLE = re.compile(r"\s*[Ø⌀øφΦϕ∅Ф]?\s*(\d+)(?![\d.,]).*")
#: Limits behind their nominal (``40 [40.002-40.013]``).
_OPEN_INSIDE = re.compile(r"(?<![\d.,+−±-])(\d{1,3})([.,])(\d{3})(?![\d.,])")
#: Speeds in 1/min and lives in hours: whole numbers, of which thousands are grouped (common practice).
_WHOLE_NUMBERS = ("speed_max", "speed_operating", "limiting_speed", "reference_speed", "required_life")
_OPEN_ALONE = re.compile(r"[1-9]\d{0,2}([.,])\d{3}(?: ?(?:rpm|r/min|min-1|1/min|min⁻¹|h))?")
#: A seat is within this share of the ring it belongs to.
_NEAR = 0.05
_MOST_ROWS = 2000


def decimal_by_sizes(found: Found) -> Decimal | None:
    """The mark that makes open numbers agree with whole ones, or with the designation, of the same ring."""
    votes: set[Decimal] = set()
    for block in found.blocks:
        votes |= _votes(block) | _grouped(block)
    return votes.pop() if len(votes) == 1 else None


def _grouped(block: Block) -> set[Decimal]:
    """The marks that group the thousands of speeds and lives: no such number has three decimals."""
    votes: set[Decimal] = set()
    for strip in block.strips:
        unit = known_unit(strip.unit) if strip.unit else None
        if strip.parameter not in _WHOLE_NUMBERS or (unit is not None and unit.name not in ("r/min", "h")):
            continue
        for cell in strip.cells[:_MOST_ROWS].tolist():
            if match := _OPEN_ALONE.fullmatch(cell_text(cell)):
                votes.add("," if match[1] == "." else ".")
    return votes


def _votes(block: Block) -> set[Decimal]:
    """The marks that the rows of a block speak for."""
    whole: dict[tuple[str, int, str], list[float]] = {}
    open_ones: list[tuple[tuple[str, int, str], str, str, str]] = []
    for strip in block.strips:
        ring = RINGS_LIKE.get(strip.parameter)
        if ring is None or strip.aspect not in ("value", "min", "max"):
            continue
        for row, cell in zip(strip.rows[:_MOST_ROWS].tolist(), strip.cells[:_MOST_ROWS].tolist(), strict=True):
            key, text = (ring, row, strip.unit), cell_text(cell)
            if match := _OPEN.fullmatch(text):
                open_ones.append((key, match[1], match[2], match[3]))
            elif match := _WHOLE.fullmatch(text):
                whole.setdefault(key, []).append(float(match[1]))
                inside = _OPEN_INSIDE.finditer(text, match.end(1))
                open_ones += [(key, limit[1], limit[2], limit[3]) for limit in inside]
    for row, ring, size in designated(block) if open_ones else ():
        for unit in {key[2] for key, *_ in open_ones if known_unit(key[2] or "mm") == known_unit("mm")}:
            whole.setdefault((ring, row, unit), []).append(size)
    votes: set[Decimal] = set()
    for key, before, mark, behind in open_ones:
        for size in whole.get(key, ()):
            if abs(float(f"{before}.{behind}") - size) <= _NEAR * size:
                votes.add("." if mark == "." else ",")
            elif abs(float(before + behind) - size) <= _NEAR * size:
                votes.add("," if mark == "." else ".")
    return votes
