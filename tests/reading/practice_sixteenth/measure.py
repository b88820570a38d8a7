"""How much of the sixteenth set is read, office by office; the options are those of practice/figures.py."""

import sys
from pathlib import Path

if not __package__:
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from practice.figures import measure

from practice_sixteenth import written

if __name__ == "__main__":
    measure("sixteenth", written.make, "1-60")
