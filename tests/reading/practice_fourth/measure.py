"""How much of the fourth set is read: tables by a grammar of its own; the options are those of practice/figures.py."""

import sys
from pathlib import Path

if not __package__:
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from practice.figures import measure

from practice_fourth import shapes

if __name__ == "__main__":
    measure("fourth", shapes.make)
