"""What the style of a workbook's cell says of its value: a unit or percent sign, hidden digits, struck out, a date."""

import re
from collections.abc import Sequence

from attrs import frozen

from linter.model.places import column_letters
from linter.reading.files.intake import visible
from linter.reading.files.xlsx_book import Look, is_date
from linter.reading.files.xlsx_scan import MOST_SHOWN

_LITERAL = re.compile(r'"([^"]*)"|((?:\\.)+)|\[\$([^\]-]*)[^\]]*\]')
_FIXED = re.compile(r"[#0,]*0(?:\.(0*)#*)?(,*)")


@frozen
class Style:
    """What one cell style says: ``%`` or a unit (else empty), decimals shown (-1: all), struck out, filled, a date."""

    meaning: str = ""
    decimals: int = -1
    struck: bool = False
    filled: bool = False
    date: bool = False


class Styles:
    """What a cell style says that matters, looked up once per style; remembers cells that show other digits."""

    def __init__(self, looks: Sequence[Look]) -> None:
        self._looks = looks
        self._known: dict[int, Style] = {0: Style()}
        self._rounded: list[str] = []
        self._count = 0
        self.numbers = 0
        self._filled: list[str] = []
        self._filled_count = 0

    def of(self, style: int) -> Style:
        """What a style says, by its number; nothing for one that the workbook lacks."""
        if style not in self._known:
            self._known[style] = self._look_up(style)
        return self._known[style]

    def that_matter(self) -> list[int]:
        """Numbers of the styles that say anything."""
        return [style for style in range(len(self._looks)) if self.of(style) != Style()]

    def _look_up(self, style: int) -> Style:
        if not 0 <= style < len(self._looks):
            return Style()
        look = self._looks[style]
        return Style(*_meaning_of(look.shape), look.struck, look.filled, is_date(look.shape))

    def compare(self, row: int, column: int, value: float, style: Style) -> None:
        """Remember a number whose format hides digits that are more than the noise of a float."""
        shown = round(value, style.decimals)
        if abs(shown - value) > 1e-9 * abs(value):
            self._count += 1
            if len(self._rounded) < MOST_SHOWN:
                text = f"{shown:.{style.decimals}f}"
                self._rounded.append(f"{column_letters(column)}{row} shows {text} and holds {value:.15g}")

    def fill(self, row: int, column: int) -> None:
        """Remember a number that stands on a colour."""
        self._filled_count += 1
        if len(self._filled) <= MOST_SHOWN:
            self._filled.append(f"{column_letters(column)}{row}")

    def coloured(self, sheet: str) -> list[str]:
        """Note on numbers that a colour sets apart from the others of the sheet; forgets them."""
        cells, few = self._filled, 5 * self._filled_count <= self.numbers
        self._filled, self._filled_count, self.numbers = [], 0, 0
        if not cells or not few:
            return []  # most are coloured, as in banded rows
        shown = ", ".join(cells[:MOST_SHOWN]) + (", …" if len(cells) > MOST_SHOWN else "")
        return [f"sheet {visible(sheet)}: colours are not read; these numbers stand on a colour of their own: {shown}"]

    def rounded(self, sheet: str) -> list[str]:
        """What was remembered, as one note; forgets it."""
        cells, more = self._rounded, self._count - len(self._rounded)
        self._rounded, self._count = [], 0
        if not cells:
            return []
        rest = f", and so in {more} more cell{'s' * (more > 1)}" if more else ""
        return [f"sheet {visible(sheet)}: the number in a cell is read, not the rounded one shown: "
                f"{'; '.join(cells)}{rest}"]  # fmt: skip


def _meaning_of(shape: str) -> tuple[str, int]:
    """``%`` or the unit that a number format adds behind the number, and the decimals it shows (-1: all of them)."""
    if len(shape) > 255 or is_date(shape):  # 255: the longest format that a spreadsheet writes
        return "", -1
    first = shape.split(";")[0] if '"' not in shape else re.split(r';(?=(?:[^"]*"[^"]*")*[^"]*$)', shape)[0]
    bare = _LITERAL.sub("", re.sub(r"_.|\*.", "", first))
    number = _FIXED.search(bare)
    decimals = len(number[1] or "") if number and not number[2] and not re.search(r"[E/?@%#]", bare) else -1
    if "%" in bare:
        return "%", -1
    start = re.search(r"[#0?]", first)
    for literal in _LITERAL.finditer(first, start.end() if start else len(first)):
        text = (literal[1] or literal[3] or re.sub(r"\\(.)", r"\1", literal[2] or "")).strip()
        if text and len(text) <= 12:
            return text, decimals
    return "", decimals
