"""Writes anew what follows from the rulebook and the vocabulary: ``python -m linter.refresh``, in a checkout.

With ``--check`` nothing is written; the status is 1 where a file is stale, and each is named.
"""

import csv
import io
import sys
from collections.abc import Callable, Iterable, Mapping
from pathlib import Path
from typing import Any

from attrs import evolve

from linter.model.findings import Assessment
from linter.model.packaged import data_folder
from linter.reading import read_table
from linter.report.blank_table import input_schema_text
from linter.report.glossary import glossary_text
from linter.report.nomenclature import nomenclature_text
from linter.review.assess import assess
from linter.review.cases import case_stations
from linter.review.records import assessments
from linter.rulebook.differences import gravest
from linter.rulebook.gates import gate_text
from linter.rulebook.load import CURRENT, load, stated_cases
from linter.rulebook.model import Rulebook, RulebookError

#: Columns of a golden table: what is compared, and nothing else.
COLUMNS = ("clause", "machine", "station", "outcome", "severity", "observed")
#: What the machine of a worked case is called in a golden table, before its title.
CASE = "worked case: "
BEGIN, END = "<!-- clauses: written by python -m linter.refresh -->\n", "<!-- end of clauses -->"


def root() -> Path:
    """The top of the checkout."""
    return data_folder("ruleset").parent


def golden_rows(book: Rulebook, tables: list[Path]) -> list[dict[str, str]]:
    """What a rulebook says of tables, one row for each clause and position or machine.

    Parameters
    ----------
    book : Rulebook
        As loaded.
    tables : list of Path
        Tables with machines of their own names.

    Returns
    -------
    list of dict
        Rows of :data:`COLUMNS`; ``observed`` with nine digits and its unit.
    """
    return [_row(record) for path in tables for record in assessments(assess(read_table(path).stations, book))]


def case_rows(book: Rulebook, cases: Iterable[Mapping[str, Any]]) -> list[dict[str, str]]:
    """What a rulebook says of worked cases, for the clause of each; the machine has the title of the case."""
    rows = []
    for case in cases:
        alone = evolve(book, clauses={case["clause"]: book.clauses[case["clause"]]})
        found = assessments(assess(case_stations(case), alone))
        rows += [{**_row(record), "machine": f"{CASE}{case['title']}"} for record in found]
    return rows


def _row(record: Assessment) -> dict[str, str]:
    seen = record.observed
    observed = "" if seen is None else f"{seen.value:.9g} {seen.unit}".removesuffix(" 1")
    cells = (record.clause, record.machine, record.station, record.outcome, record.severity, observed)
    return dict(zip(COLUMNS, (cell or "" for cell in cells), strict=True))


def golden_text() -> str:
    """The golden table of the rulebook in the making, over every table of ``tests/golden``.

    A clause that none of them gives a verdict is judged on its own worked cases.
    """
    book = load(CURRENT)
    rows = golden_rows(book, sorted((root() / "tests" / "golden").glob("*.csv")))
    judged = {row["clause"] for row in rows if row["outcome"] in ("met", "finding")}
    rows += case_rows(book, (case for case in stated_cases(CURRENT) if case["clause"] not in judged))
    stream = io.StringIO()
    writer = csv.DictWriter(stream, COLUMNS, lineterminator="\n")
    writer.writeheader()
    writer.writerows(rows)
    return stream.getvalue()


def clause_table() -> str:
    """The table of clauses of the README: those of the newest release."""
    book = load()
    lines = [
        f"Rulebook {book.version}: {len(book.clauses)} clauses. `ringseat rulebook handbook` has them in full.",
        "",
        "| chapter | clause | asks | up to | must be judged |",
        "| --- | --- | --- | --- | --- |",
    ]
    for chapter, clauses in book.by_chapter():
        for clause in clauses:
            cells = (chapter.title, f"`{clause.id}`", clause.question, gravest(clause), gate_text(clause))
            lines.append(f"| {' | '.join(cells)} |")
    return "\n".join(lines) + "\n"


def readme_text() -> str:
    """The README with its table of clauses as it has to be."""
    head, rest = (root() / "README.md").read_text(encoding="utf-8").split(BEGIN)
    return head + BEGIN + clause_table() + END + rest.split(END)[1]


#: File, from the top of the checkout, and what it has to hold.
WRITTEN: dict[str, Callable[[], str]] = {
    "schemas/input-table.schema.json": input_schema_text,
    "ruleset/current/golden.csv": golden_text,
    "README.md": readme_text,
    "docs/glossary.md": glossary_text,
    "docs/nomenclature.md": lambda: nomenclature_text(load()),
}


def stale() -> dict[str, str]:
    """The files that do not hold what they have to, each with its text."""
    found = {}
    for name, text in WRITTEN.items():
        path, wanted = root() / name, text()
        if not path.is_file() or path.read_text(encoding="utf-8") != wanted:
            found[name] = wanted
    return found


def main(words: list[str]) -> int:
    """Write what is stale, or only name it; the exit status."""
    if not (root() / "README.md").is_file():
        print("run this in a checkout: an installed package has nothing to write", file=sys.stderr)
        return 2
    check = "--check" in words
    try:
        found = stale()
    except RulebookError as error:
        print(f"ruleset/current/ cannot be used: {error}", file=sys.stderr)
        return 2
    for name, text in found.items():
        if not check:
            (root() / name).write_text(text, encoding="utf-8", newline="\n")
        print(f"{'stale' if check else 'written'}: {name}")
    return 1 if check and found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
