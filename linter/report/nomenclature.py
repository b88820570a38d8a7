"""The page of symbols: every symbol of the workings, what it means, its unit, and the clauses that show it."""

from collections.abc import Iterator

from attrs import evolve

from linter.checks.shared.base import Working
from linter.model.wording import unit_text
from linter.review.assess import assess
from linter.review.cases import case_stations, worked_cases
from linter.rulebook.model import Rulebook

_HEAD = """# Nomenclature

Symbols of the workings that a report shows, gathered from the worked cases of rulebook {name} {version}. Symbols are
those of ISO 76, ISO 281, ISO 286-1, ISO 492 and ISO 5753-1 where these have one. A symbol may mean different things in
different clauses; each meaning has a line of its own. This page is generated: `python -m linter.refresh`.

| symbol | meaning | unit | formula | clauses |
| --- | --- | --- | --- | --- |
"""


def _workings(book: Rulebook, clause: str) -> Iterator[Working]:
    """Lines of the working of a clause in its worked cases."""
    alone = evolve(book, clauses={clause: book.clauses[clause]})
    for case in worked_cases(book, clause):
        result = assess(case_stations(case), alone).reviews[clause].result
        yield from () if result is None else result.working


def nomenclature_text(book: Rulebook) -> str:
    """The page as Markdown, sorted by symbol."""
    found: dict[tuple[str, str, str, str], dict[str, None]] = {}
    for clause in book.clauses:
        for line in _workings(book, clause):
            if line.symbol:
                entry = (line.symbol, line.meaning, unit_text(line.unit), line.formula)
                found.setdefault(entry, {})[clause] = None
    lines = [
        f"| {' | '.join(_cell(text) for text in entry)} | {', '.join(f'`{clause}`' for clause in clauses)} |\n"
        for entry, clauses in sorted(found.items(), key=lambda item: (item[0][0].casefold(), item[0]))
    ]
    return _HEAD.format(name=book.name, version=book.version) + "".join(lines)


def _cell(text: str) -> str:
    return text.replace("|", "\\|").replace("*", "\\*")
