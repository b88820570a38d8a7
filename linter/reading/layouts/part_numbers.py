"""Numbers of drawings and revisions that differ from position to position: of the parts there, not of the machine."""

from typing import Any

from attrs import evolve

from linter.model.stations import Unused
from linter.reading.files.grids import LONGEST_MIXED, cell_text, is_blank, object_column
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Block, Found, Strip

_OF_DRAWINGS = ("drawing_number", "drawing_revision")
_REASON = "it differs from position to position and is of the parts there"


def leave_part_numbers(found: Found, file: str) -> None:
    """List drawings and revisions as unused that differ between the positions of one machine in one row or column."""
    for block in (b for b in found.blocks if len(b.machines) <= LONGEST_MIXED):
        for name in _OF_DRAWINGS:
            labels = {strip.label for strip in block.strips if strip.parameter == name}
            for label in labels:
                strips = [s for s in block.strips if (s.parameter, s.label) == (name, label)]
                if apart := _differ(block, strips):
                    _leave(block, strips, apart, found, file)


def _differ(block: Block, strips: list[Strip]) -> set[str]:
    """The machines of which several positions state different texts."""
    said: dict[str, dict[str, str]] = {}
    for strip in strips:
        for row, cell in zip(strip.rows.tolist(), strip.cells.tolist(), strict=True):
            if block.stations[row] and not is_blank(cell):
                said.setdefault(block.machines[row], {})[block.stations[row]] = cell_text(cell)
    return {machine for machine, of in said.items() if len(set(of.values())) > 1}


def _leave(block: Block, strips: list[Strip], machines: set[str], found: Found, file: str) -> None:
    """Take the cells of some machines out of strips, and list them."""
    for strip in strips:
        left = [block.machines[row] in machines for row in strip.rows.tolist()]
        cells: list[Any] = list(strip.cells.tolist())
        for index, cell in enumerate(cells):
            if left[index] and not is_blank(cell):
                found.leave(Unused(strip.label, visible(cell_text(cell)), strip.place(file, index), _REASON))
                cells[index] = None
        at = next(k for k, one in enumerate(block.strips) if one is strip)
        block.strips[at] = evolve(strip, cells=object_column(cells))
