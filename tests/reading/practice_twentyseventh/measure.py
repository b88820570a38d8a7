"""How much of the twenty-seventh set is read, table by table; the options are those of practice/figures.py."""

import sys
from pathlib import Path

if not __package__:
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from practice.figures import measure

from practice_twentyseventh import written

if __name__ == "__main__":
    measure("twenty-seventh", written.make, f"{written.FIRST}-{written.LAST}")
