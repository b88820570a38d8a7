"""How much of the seventh set is read: tables of sixty firms; the options are those of practice/figures.py."""

import sys
from pathlib import Path

if not __package__:
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from practice.figures import measure

from practice_seventh import shapes

if __name__ == "__main__":
    measure("seventh", shapes.make)
