"""The set: thirty tables written by hand, numbers 11001 to 11030, in the text files of ``tables``.

A table begins with ``%%``, its number, language and form, and who would have made it with what habit; its lines are
told in :mod:`practice_ninth.page`. Machines are invented. Fits are of ISO 286-1, bearing sizes of ISO 15, ratings about
those of makers' catalogues, all from memory.
"""

import re
from functools import cache
from pathlib import Path

from practice.grammar import Table
from practice_ninth.page import page
from practice_tenth.bearings import follows

FIRST, LAST = 1, 30


@cache
def texts() -> dict[int, str]:
    """The written text of each table by its number in the set."""
    found: dict[int, str] = {}
    for path in sorted((Path(__file__).parent / "tables").glob("*.txt")):
        for text in re.split(r"^%% ", path.read_text(encoding="utf-8"), flags=re.MULTILINE)[1:]:
            number = int(text.split(" ", 1)[0]) - 11000
            if number in found:
                raise ValueError(f"{path.name}: table {number} is written twice")
            found[number] = text
    return found


def make(number: int) -> Table:
    """The table of a number, 1 to 30."""
    return page(texts()[number], follows)
