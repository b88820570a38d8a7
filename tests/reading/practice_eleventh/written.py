"""The set: thirty tables written by hand, numbers 11001 to 11030, in the text files of ``tables``.

A table begins with ``%%``, its number, language and form, and who would have made it with what habit; its lines are
told in :mod:`practice.page`. Machines are invented. Fits are of ISO 286-1, bearing sizes of ISO 15, ratings about
those of makers' catalogues, all from memory.
"""

from pathlib import Path

from practice.bearings import follows
from practice.by_hand import texts
from practice.grammar import Table
from practice.page import page

FIRST, LAST = 1, 30
TABLES = Path(__file__).parent / "tables"


def make(number: int) -> Table:
    """The table of a number, 1 to 30."""
    return page(texts(TABLES, 11000)[number], follows)
