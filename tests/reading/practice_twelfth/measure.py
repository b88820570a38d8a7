"""How much of the twelfth set is read: tables drawn from a grammar; the options are those of practice/figures.py."""

import sys
from pathlib import Path

if not __package__:
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from practice.figures import measure

from practice_twelfth import written

if __name__ == "__main__":
    measure("twelfth", written.make, "1-60")
