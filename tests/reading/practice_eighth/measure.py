"""How much of the eighth set is read: fifty tables of fifty offices, by hand; the options of practice/figures.py."""

import sys
from pathlib import Path

if not __package__:
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from practice.figures import measure
from practice.grammar import Table
from practice.page import page

from practice_eighth import asian, english, english_inch, german, romance
from practice_eighth.bearings import follows


def tables() -> list[Table]:
    """The fifty tables."""
    return [page(text, follows) for part in (english_inch, english, german, asian, romance) for text in part.PAGES]


if __name__ == "__main__":
    made = tables()
    measure("eighth", lambda number: made[number - 1], "1-50")
