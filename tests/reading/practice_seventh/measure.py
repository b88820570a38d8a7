"""How much of the seventh set is read: tables of sixty firms, judged as the first set is.

PYTHONPATH=. python tests/reading/practice_seventh/measure.py             # the figures and a line for each table
... --losses        # every value that is not right
... --keep FOLDER   # leave tables and result files there
... --write FOLDER  # write the tables only
"""

import argparse
import sys
import tempfile
from collections import Counter
from pathlib import Path

if not __package__:
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from practice.grammar import Table
from practice.measure import OUTCOMES, Outcome, entry_point, report, run

from practice_seventh import shapes


def tables() -> list[Table]:
    """The sixty tables."""
    return [shapes.make(number) for number in range(1, 61)]


def lines(outcomes: list[Outcome]) -> str:
    """One line for each table: what became of its values."""
    found = []
    for outcome in outcomes:
        count = Counter(j.outcome for j in outcome.judged)
        kinds = outcome.table.kinds
        told = "  ".join(f"{name} {count[name]}" for name in OUTCOMES if count[name])
        what = ", ".join(kinds[k] for k in ("layout", "language", "tolerance", "units", "length unit", "encoding"))
        found.append(f"{outcome.table.name}  {told}  invented {len(outcome.invented)}  ({what})")
    return "\n".join(found)


def main() -> None:
    parser = argparse.ArgumentParser(description="How much of the seventh set is read.")
    parser.add_argument("--losses", action="store_true", help="list every value that is not right")
    parser.add_argument("--keep", type=Path, help="leave tables and result files in this folder")
    parser.add_argument("--write", type=Path, help="write the tables to this folder and stop")
    options = parser.parse_args()
    if options.write:
        options.write.mkdir(parents=True, exist_ok=True)
        for table in tables():
            (options.write / (table.name + table.suffix)).write_bytes(table.content)
        return
    with tempfile.TemporaryDirectory() as scratch:
        outcomes = list(run(tables(), options.keep or Path(scratch), entry_point(Path.cwd())))
    print(report(outcomes, options.losses))
    print(lines(outcomes))


if __name__ == "__main__":
    main()
