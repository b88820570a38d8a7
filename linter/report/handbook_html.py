"""The rulebook as one HTML document to read: every clause with its arithmetic, limits, drawing, cases and sources."""

import re
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Any

from attrs import frozen
from markupsafe import Markup

from linter.model.vocabulary import Parameter, vocabulary
from linter.model.wording import limit_text, number_text
from linter.report.handbook_text import sources_of, template_text
from linter.report.html import environment, policy, style
from linter.report.pictures import picture
from linter.review.cases import WorkedCase, run_cases
from linter.rulebook.differences import gravest
from linter.rulebook.gates import gate_text
from linter.rulebook.model import Clause, Rulebook, Table

_HERE = Path(__file__).resolve().parent
PROVENANCE = {
    "read": "the value was read in the source named",
    "from memory": "quoted from memory of the source named; confirm it before relying on it alone",
    "common practice": "customary in the trade; no published source was found",
    "derived": "worked out from figures of the sources named",
}
KINDS = {"clear": "clear of the limit", "limit": "at the limit", "beyond": "beyond the limit"}


@frozen(eq=False)
class ShownTable:
    """A limit table under a clause: in full where it is met first, later only where to find it."""

    key: str
    table: Table
    anchor: str
    first: str | None


@frozen(eq=False)
class ShownClause:
    """A clause with what the handbook adds to it."""

    clause: Clause
    anchor: str
    gravest: str
    tables: tuple[ShownTable, ...]
    cases: tuple[WorkedCase, ...]
    drawing: Markup | None
    drawn: WorkedCase | None
    sources: tuple[str, ...]
    reason: str
    loosened: tuple[str, ...]


@frozen(eq=False)
class ShownParameter:
    """A parameter with the clauses that want it and those that also look at it."""

    parameter: Parameter
    wanted: tuple[str, ...]
    used: tuple[str, ...]


def anchor_of(kind: str, name: str) -> str:
    """Anchor of a clause, chapter or parameter."""
    return f"{kind}-{re.sub('[^a-z0-9]+', '-', name.lower())}"


def cell_text(cell: str) -> str:
    """A cell of a limit table as it is written, with thousands apart."""
    return number_text(float(cell)) if cell.isdigit() and len(cell) > 4 else cell


def _drawing(clause: Clause, cases: tuple[WorkedCase, ...], book: Rulebook) -> tuple[Markup | None, WorkedCase | None]:
    """The drawing that the clause asks for, from its gravest finding, or else from the first case that gives one."""
    order = sorted(cases, key=lambda c: (c.record.outcome != "finding", c.kind != "beyond"))
    for case in order if clause.picture else ():
        if case.record.outcome in ("finding", "met"):
            drawn = picture(case.record, book)
            if drawn:
                return drawn, case
    return None, None


def _shown(book: Rulebook) -> dict[str, ShownClause]:
    shown: dict[str, ShownClause] = {}
    first: dict[tuple[Any, ...], tuple[str, str]] = {}
    for _, clauses in book.by_chapter():
        for clause in clauses:
            tables = []
            for key, table in clause.tables.items():
                known = first.get((table.file, table.rows))
                anchor = known[0] if known else f"t{len(first) + 1}"
                first.setdefault((table.file, table.rows), (anchor, clause.id))
                tables.append(ShownTable(key, table, anchor, known[1] if known else None))
            cases = tuple(run_cases(book, clause.id))
            drawing, drawn = _drawing(clause, cases, book)
            shown[clause.id] = ShownClause(
                clause=clause,
                anchor=anchor_of("c", clause.id),
                gravest=gravest(clause),
                tables=tuple(tables),
                cases=cases,
                drawing=drawing,
                drawn=drawn,
                sources=sources_of(clause),
                reason=book.reasons.get(clause.id, ""),
                loosened=tuple(f"{e.layer}: {e.what}" for e in book.loosened if e.clause == clause.id),
            )
    return shown


def _cited(shown: Mapping[str, ShownClause], key: str) -> list[str]:
    return [name for name, entry in shown.items() if key in entry.sources]


@cache
def sheet() -> Markup:
    """The style sheet of the reports with the handbook's own rules."""
    return style() + Markup((_HERE / "handbook.css").read_text(encoding="utf-8"))


def handbook_html(book: Rulebook) -> str:
    """The whole rulebook as one HTML document without script and without anything from outside.

    Parameters
    ----------
    book : Rulebook
        With every layer applied; worked cases show its own verdicts.

    Returns
    -------
    str
        HTML that can be encoded as UTF-8; the same rulebook gives the same text.
    """
    shown = _shown(book)
    sources = {key: f"s{number}" for number, key in enumerate(book.sources, 1)}
    clauses = [entry.clause for entry in shown.values() if entry.clause.off is None]
    parameters = [
        ShownParameter(
            entry,
            tuple(c.id for c in clauses if entry.name in c.needs),
            tuple(c.id for c in clauses if entry.name in c.uses and entry.name not in c.needs),
        )
        for entry in vocabulary().values()
    ]
    return environment().get_template("handbook.html.j2").render(
        book=book,
        chapters=[(chapter, [shown[c.id] for c in found]) for chapter, found in book.by_chapter() if found],
        shown=shown,
        sources=sources,
        cited={key: _cited(shown, key) for key in sources},
        parameters=parameters,
        provenance=PROVENANCE,
        kinds=KINDS,
        anchor_of=anchor_of,
        cell_text=cell_text,
        gate_text=gate_text,
        limit_text=limit_text,
        number_text=number_text,
        template_text=template_text,
        style=sheet,
        policy=lambda: policy(sheet()),
    )  # fmt: skip
