"""What sort of position a run of pieces of a name can be, by its form."""

import re
from functools import lru_cache

from linter.reading.cells.signs import EASTERN
from linter.reading.words.cuts import LETTER_STATION
from linter.reading.words.dictionary import MOST_REMEMBERED
from linter.reading.words.parts import names_place

_NUMBERED = re.compile(r"([^\W\d_]{1,8}?)[ _-]?([1-9][0-9]?|[A-H])")
_ROMAN = re.compile(r"I{1,3}|IV|VI?|[Ⅰ-Ⅵ]")
_SMALL_LETTER = re.compile(r"[a-h]")


@lru_cache(maxsize=MOST_REMEMBERED)
def sort_of_run(run: str) -> str:
    """What sort of position a run of pieces can be: two of one table are of one sort; empty where it is none."""
    if _ROMAN.fullmatch(run):
        return "roman"
    if LETTER_STATION.fullmatch(run):
        return "number" if run.isdigit() else "letter"
    if _SMALL_LETTER.fullmatch(run):
        return "small letter"
    if len(run) < 2 and not EASTERN.match(run):
        return ""
    numbered = _NUMBERED.fullmatch(run)
    short = numbered is not None and numbered[2].isdigit() and len(run) < 4
    if numbered is not None and (short or (len(numbered[1]) > 2 and names_place(numbered[1]))):
        return f"{numbered[1].casefold()} {'number' if numbered[2].isdigit() else 'letter'}"
    return "" if any(map(str.isdigit, run)) else "words"
