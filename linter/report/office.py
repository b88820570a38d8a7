"""What an office program wants of a sheet: rows as high as their texts, a page as wide as the sheet."""

import math
from collections.abc import Iterable
from typing import Any

#: Height of a line and of a row [points]; office programs other than the one a workbook was made in keep what is set.
LINE, MOST = 14.5, 409.0
#: What is still read on a page, side by side.
CHARACTERS = 260


def row_height(cells: Iterable[tuple[str, float]]) -> float:
    """The height of a row whose texts wrap, in points.

    Parameters
    ----------
    cells : iterable of (str, float)
        Each text with the width of its column in characters.

    Returns
    -------
    float
        At least one line, at most what a sheet can hold. Widths differ with the font, so a line is taken as a tenth
        shorter than its column.
    """
    most = 1
    for text, width in cells:
        room = max(0.9 * width, 1.0)
        most = max(most, sum(max(1, math.ceil(len(line) / room)) for line in text.split("\n")))
    return min(LINE * most + 1.0, MOST)


def fit_page(sheet: Any, repeat: int | None = None, width: float = 0.0) -> None:
    """Landscape A4, as many pages wide as columns of that width [characters] need; ``repeat`` heads every page."""
    sheet.set_landscape()
    sheet.set_paper(9)
    sheet.set_margins(0.4, 0.4, 0.5, 0.5)
    sheet.fit_to_pages(max(1, math.ceil(width / CHARACTERS)), 0)
    if repeat is not None:
        sheet.repeat_rows(repeat)
