"""The command of the sets that came after the first: figures, a line for each table, the tables themselves.

PYTHONPATH=. python tests/reading/practice_third/measure.py    # the figures and a line for each table
... --numbers 7,11-13   # these tables only, or others of the same grammar
... --losses            # every value that is not right
... --keep FOLDER       # leave tables and result files there
... --write FOLDER      # write the tables only

Judged as the first set is, one thing finer: a cell that can only be asked about, is asked about, and whose parameter
the result states by an assumption that it marks is right. The assumption is no reading of the cell.
"""

import argparse
import json
import tempfile
from collections import Counter
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from practice.grammar import Table
from practice.measure import OUTCOMES, Outcome, Result, entry_point, report, run, seeds


def with_assumptions(outcome: Outcome, results: Path) -> Outcome:
    """The outcome of a table, where a marked assumption beside a question does not count as a reading."""
    path = results / f"{outcome.table.name}.result.json"
    if not any(j.outcome == "wrong" and j.expected.verdict == "ask" for j in outcome.judged) or not path.exists():
        return outcome
    seen = Result(json.loads(path.read_text(encoding="utf-8")))
    assumed = {(machine, parameter) for machine, _, parameter in seen.assumed}
    judged = []
    for j in outcome.judged:
        e = j.expected
        names = {row["machine"] for row in seen.stations}
        own = outcome.table.machines[e.machine] if len(outcome.table.machines) > 1 else next(iter(names), "")
        if j.outcome == "wrong" and e.verdict == "ask" and (own, e.parameter) in assumed and seen.names(e):
            j = replace(j, outcome="right", got=None)
        judged.append(j)
    return Outcome(outcome.table, judged, outcome.invented)


def lines(outcomes: list[Outcome]) -> str:
    """One line for each table: what became of its values."""
    found = []
    for outcome in outcomes:
        count = Counter(j.outcome for j in outcome.judged)
        kinds = outcome.table.kinds
        told = "  ".join(f"{name} {count[name]}" for name in OUTCOMES if count[name])
        what = ", ".join(kinds.get(k, "") for k in ("layout", "language", "tolerance", "units", "encoding"))
        found.append(f"{outcome.table.name}  {told}  invented {len(outcome.invented)}  ({what})")
    return "\n".join(found)


def measure(which: str, make: Callable[[int], Table], numbers: str = "1-60") -> None:
    """Measure a set, or write its tables; ``make`` gives the table of a number."""
    parser = argparse.ArgumentParser(description=f"How much of the {which} set is read.")
    parser.add_argument("--numbers", default=numbers, help="which tables; the set where absent")
    parser.add_argument("--losses", action="store_true", help="list every value that is not right")
    parser.add_argument("--keep", type=Path, help="leave tables and result files in this folder")
    parser.add_argument("--write", type=Path, help="write the tables to this folder and stop")
    options = parser.parse_args()
    tables = [make(number) for number in seeds(options.numbers)]
    if options.write:
        options.write.mkdir(parents=True, exist_ok=True)
        for table in tables:
            (options.write / (table.name + table.suffix)).write_bytes(table.content)
        return
    with tempfile.TemporaryDirectory() as scratch:
        folder = options.keep or Path(scratch)
        outcomes = [with_assumptions(o, folder / "results") for o in run(tables, folder, entry_point(Path.cwd()))]
    print(report(outcomes, options.losses))
    print(lines(outcomes))
