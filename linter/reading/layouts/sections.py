"""Lines of a table that hold one text alone: what they say of the rows below them."""

import re

from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.sides import Side, side_of, side_of_sheet, within
from linter.reading.words.headings import Words

_SECTION = re.compile(r"[\s\-=*#:\[\]■□●○◆◇▼▽▶►※【】「」〈〉]*(.*?)[\s\-=*#:\[\]■□●○◆◇▼▽【】「」〈〉]*")
_MOST_ROWS = 2000  # rows that are looked at


def heads_machine(grid: Grid, row: int, name: int, words: Words) -> bool:
    """Whether a row with nothing but its label heads what is stated of the whole machine (``[Machine]``)."""
    section = section_label(grid, row, name)
    heading = words.heading(section) if section else None
    return heading is not None and heading.parameter == "machine" and not heading.station


def section_label(grid: Grid, row: int, name: int) -> str:
    """The words of a row with nothing but its label, without the signs around them; empty for another row."""
    label = grid.text(row, name)
    if len(label) >= 60 or any(c != name and not is_blank(grid.columns[c][row]) for c in range(grid.width)):
        return ""
    inner = _SECTION.fullmatch(label)
    return inner.group(1) if inner else ""


def sections(grid: Grid, column: int, start: int) -> dict[int, Side]:
    """The part of each row below lines that say shaft or housing alone, or in a sheet that does."""
    result: dict[int, Side] = {}
    current = side_of_sheet(grid)
    for row in range(start, min(grid.height, start + _MOST_ROWS)):
        if (side := side_of(section_label(grid, row, column))) is not None:
            current = side
        elif current is not None:
            result[row] = current
    return result


def named_by_part(grid: Grid, column: int, parts: dict[int, Side], words: Words) -> int:
    """Number of names that a column states together with the part of each row, and not by itself."""
    pairs = {(side.side, side.word, grid.text(row, column)) for row, side in parts.items()}
    joined = (within(words, Side(s, word), text) for s, word, text in pairs if text and words.heading(text) is None)
    return len(set(joined) - {None})
