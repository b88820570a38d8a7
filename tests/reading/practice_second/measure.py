"""How much of the second set is read: written tables and those of the second grammar, judged as the first set is.

PYTHONPATH=. python tests/reading/practice_second/measure.py            # both halves
... open | unseen     # one half
... open --losses     # every value of the open half that is not right
"""

import argparse
import sys
import tempfile
from pathlib import Path

if not __package__:
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from practice.grammar import Table
from practice.measure import entry_point, report, run

from practice_second import shapes, written


def half(which: str) -> list[Table]:
    """The tables of one half, or all of them."""
    everything = [*enumerate(written.tables(), 1), *((seed, shapes.make(seed)) for seed in range(1, 37))]
    return [table for k, table in everything if which == "all" or (k % 2 == 1) == (which == "open")]


def main() -> None:
    parser = argparse.ArgumentParser(description="How much of the second set is read.")
    parser.add_argument("which", nargs="?", default="all", choices=["all", "open", "unseen"])
    parser.add_argument("--losses", action="store_true", help="list every value that is not right")
    parser.add_argument("--keep", type=Path, help="leave tables and result files in this folder")
    options = parser.parse_args()
    if options.losses and options.which != "open":
        parser.error("the unseen half is not looked at value by value")
    with tempfile.TemporaryDirectory() as scratch:
        outcomes = list(run(half(options.which), options.keep or Path(scratch), entry_point(Path.cwd())))
        text = report(outcomes, options.losses)
        print(text if options.which == "open" else text.split("\n\n")[0])


if __name__ == "__main__":
    main()
