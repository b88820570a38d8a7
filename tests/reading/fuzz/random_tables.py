"""Random tables through reading, assessment, changes and every text writer, bounded in time; a seed repeats them.

Usage: ``python tests/reading/fuzz/random_tables.py SECONDS SEED``. Every table gives an input error or a result without
a failed check that every writer can write; anything else ends the run with the table printed. Exit status 1 then, and
where fewer than a tenth of the tables could be read (the run would say nothing).
"""

import csv
import io
import json
import random
import sys
import tempfile
import time
import traceback
from pathlib import Path
from typing import Any

from linter.model.vocabulary import Parameter, vocabulary
from linter.reading import InputError, read_table
from linter.report.html import html_text
from linter.report.junit import junit_text
from linter.report.result_json import result_text
from linter.report.sarif import sarif_text
from linter.review.changes import with_changes
from linter.review.records import review_reading
from linter.rulebook.load import load

ODD = (
    "", "-", "tbd", "n/a", "NaN", "?", "0", "-1", "1e9", "1e-9", "1e308", "-0.0", "4 k5", "Ø4 H7/g6", "4 +0.006/+0.001",
    "max 4", "3-8", "+41.2±0.05 -12±0.02 -4 0/-0.12", "4 mm", "4 in", "1,5", "1.234,5", "yes", "*", "#REF!", "=1+1",
    "\u202e",
)  # fmt: skip
EVERY = 20
"""Changes and writers are run for one table in this many; they take most of the time."""


def plausible(rng: random.Random, entry: Parameter) -> str:
    """A value that such a parameter may have, of any size that machines have."""
    if entry.kind == "choice":
        return rng.choice(entry.choices)
    if entry.kind == "text":
        return rng.choice(("A", "B", "RB-1", "+20±0.3 -12"))
    figure = f"{10 ** rng.uniform(-3, 5):.4g}"
    tolerance = rng.choice((" k5", " H7", " ±0.01", " +0.006/+0.001", "", "", ""))
    return figure + tolerance if entry.kind == "toleranced" else figure


def table(rng: random.Random) -> tuple[str, str]:
    """Suffix and text of a table: a few stations, some parameters, some odd cells, wide, long or JSON."""
    entries = list(vocabulary().values())
    chosen = rng.sample(entries, rng.randint(1, len(entries)))
    spoilt = rng.choice((0.0, 0.02, 0.3))
    rows: list[dict[str, str]] = []
    for number in range(rng.randint(1, 4)):
        row = {"machine": f"M{number // 2}", "station": "AB"[number % 2]}
        for entry in chosen:
            row.setdefault(entry.name, rng.choice(ODD) if rng.random() < spoilt else plausible(rng, entry))
        rows.append(row)
    form = rng.choice(("wide", "long", "json"))
    if form == "json":
        return ".json", json.dumps(rows)
    stream = io.StringIO()
    writer = csv.writer(stream, delimiter=rng.choice(",;\t"))
    if form == "wide":
        writer.writerow(rows[0])
        writer.writerows(row.values() for row in rows)
    else:
        writer.writerow(("machine", "station", "name", "value"))
        writer.writerows((row["machine"], row["station"], k, v) for row in rows for k, v in row.items())
    return ".csv", stream.getvalue()


def pass_through(path: Path, book: Any, whole: bool) -> None:
    """Review a table; the writers too where ``whole``."""
    reading = read_table(path)
    result = review_reading(reading, book)
    assert result.failures == (), result.failures
    result_text(result)
    if whole:
        result = with_changes(result, reading.stations, book)
        assert result_text(result) and html_text(result, book) and sarif_text(result, book) and junit_text(result)


def main() -> int:
    """Run for as long as the command line says."""
    seconds, seed = float(sys.argv[1]), int(sys.argv[2])
    rng, book, end = random.Random(seed), load(), time.monotonic() + seconds
    tried = refused = 0
    with tempfile.TemporaryDirectory() as folder:
        while time.monotonic() < end:
            suffix, text = table(rng)
            path = Path(folder) / f"table{suffix}"
            path.write_text(text, encoding="utf-8")
            tried += 1
            try:
                pass_through(path, book, tried % EVERY == 0)
            except InputError:
                refused += 1
            except Exception:
                traceback.print_exc()
                print(f"table {tried} of seed {seed}:\n{text}", file=sys.stderr)
                return 1
    print(f"{tried} tables of seed {seed}, {refused} refused, no fault")
    return 0 if refused < 0.9 * tried else 1


if __name__ == "__main__":
    raise SystemExit(main())
