"""Rows that head a block of a part and say beside its word what it is made of (``EJE;;;acero inoxidable 1.4021``)."""

import re

from linter.reading.cells.choices import read_choice
from linter.reading.files.grids import is_blank
from linter.reading.layouts.long_table import LongTable
from linter.reading.layouts.sections import head_left
from linter.reading.layouts.sides import Side, side_of
from linter.reading.words.parts import concepts_said

_NO_REMARKS = ("VALUE", "EXPR", "UPPER", "LOWER", "MAX", "MIN", "CLASS", "UNIT", "COLUMN")
_APART = re.compile(r"[:：=]?\s+|[:：=]")
_AMBIGUOUS = "ambiguous-choice"


def part_with_material(table: LongTable, row: int) -> tuple[Side, int, str] | None:
    """The part that a row heads, with the column and the words of its material in the only other cell.

    Returns
    -------
    tuple of (Side, int, str) or None
        None for a row that states a value, that names no shaft or housing, or whose other cell is no material.
    """
    grid = table.grid
    label = grid.text(row, table.name) or head_left(grid, row, table.name)
    side = side_of(label.strip(" :【】[]"))
    if side is None or side.side not in ("shaft", "housing"):
        return None
    filled = [c for c in range(table.name + 1, grid.width) if not is_blank(grid.columns[c][row])]
    if len(filled) != 1 or table.roles.get(filled[0], "NOTE") in _NO_REMARKS:
        return None
    text = _without_its_word(grid.text(row, filled[0]))
    said = read_choice(f"{side.side}_material", text)
    named = isinstance(said, str) or said.code == _AMBIGUOUS
    return (side, filled[0], text) if named else None


def _without_its_word(text: str) -> str:
    """A material without the word for one before it (``材料 2Cr13``)."""
    word, *rest = _APART.split(text.strip(), maxsplit=1)
    return rest[0] if rest and concepts_said(word) == {"material"} else text.strip()
