"""The row of units below a heading row."""

import re

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.words.dictionary import dictionary, group_key, word_key
from linter.reading.words.headings import Heading

#: Signs and words in the place of a unit that say there is none.
NO_UNIT = ("-", "--", "–", "—", "−", "/", "·", ".", "text", "Text", "TEXT", "string", "str")
_LONGEST_UNIT = 5
#: The sign of a roughness beside its unit (``µm Ra``).
_OF_ROUGHNESS = re.compile(r"^R[az][ ,]+|[ ,]+R[az]$")


def unit_text(text: str) -> str:
    """The unit in a cell of a units row: without brackets, and without the word before it (``in mm``)."""
    plain = text.strip("[]() ").removeprefix("in ")
    return _OF_ROUGHNESS.sub("", plain) if known_unit(plain) is None else plain


def unit_below(grid: Grid, row: int, column: int, heading: Heading | None = None) -> str:
    """The unit that a units row states for a column; none where a sign says that there is none.

    One that is not known is kept where the heading measures something: its values are then asked about, for they may
    be ten times what they look like.
    """
    unit = unit_text(grid.text(row, column))
    if unit in NO_UNIT or known_unit(unit) is not None:
        return "" if unit in NO_UNIT else unit
    measured = heading is not None and heading.entry.unit not in ("", "1") and heading.aspect != "tolerance"
    says_part = group_key(unit) in dictionary().group_words or word_key(unit) == "ra"
    return unit if measured and len(unit) > 1 and unit.isalpha() and not says_part else ""


def is_units_row(grid: Grid, row: int) -> bool:
    """Whether every filled cell of a row is a unit or a dash, and one at least is a unit.

    Beside twice as many that are known a short word without a digit may be one that is not (``EUR``, ``HRC``); beside
    as many, where the row begins with no text, as that of units does below the names.
    """
    units, others = 0, 0
    for cell in grid.row(row):
        if is_blank(cell):
            continue
        text = unit_text(cell_text(cell))
        if type(cell) is not str:
            return False
        if known_unit(text) is not None:
            units += 1
        elif text not in (*NO_UNIT, "1"):
            if len(text) > _LONGEST_UNIT or any(map(str.isdigit, text)):
                return False
            others += 2 if group_key(text) in dictionary().group_words else 1
    return units > 0 and units >= (2 if grid.text(row, 0) else 1) * others
