"""How much of the eighth set is read: fifty tables of fifty offices, written by hand, judged as the first set is.

PYTHONPATH=. python tests/reading/practice_eighth/measure.py     # the figures
... --losses          # every value that is not right
... --keep FOLDER     # leave tables and result files in this folder
... --write FOLDER    # write the tables alone, without reading them
"""

import argparse
import sys
import tempfile
from pathlib import Path

if not __package__:
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from practice.grammar import Table
from practice.measure import entry_point, report, run

from practice_eighth import asian, english, english_inch, german, romance


def tables() -> list[Table]:
    """The fifty tables."""
    return [table for part in (english_inch, english, german, asian, romance) for table in part.tables()]


def main() -> None:
    parser = argparse.ArgumentParser(description="How much of the eighth set is read.")
    parser.add_argument("--losses", action="store_true", help="list every value that is not right")
    parser.add_argument("--keep", type=Path, help="leave tables and result files in this folder")
    parser.add_argument("--write", type=Path, help="write the tables to this folder and end")
    options = parser.parse_args()
    if options.write:
        options.write.mkdir(parents=True, exist_ok=True)
        for table in tables():
            (options.write / (table.name + table.suffix)).write_bytes(table.content)
        return
    with tempfile.TemporaryDirectory() as scratch:
        outcomes = list(run(tables(), options.keep or Path(scratch), entry_point(Path.cwd())))
        text = report(outcomes, options.losses)
        print(text if options.losses else text.split("\n\n")[0])


if __name__ == "__main__":
    main()
