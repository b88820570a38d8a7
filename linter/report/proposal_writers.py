"""Start values as text, document, page and table: what is proposed stands apart from what is stated."""

import datetime
import json
from collections.abc import Mapping, Sequence
from io import BytesIO
from typing import Any

import numpy as np
from attrs import field, frozen

from linter.model.findings import Assessment, ReviewResult, at_least
from linter.model.stations import Stations
from linter.model.vocabulary import parameter, vocabulary
from linter.model.wording import unit_text, words_of
from linter.report.html import environment
from linter.report.sheet.characteristics import stated_rows
from linter.report.sheet.inspection import value_cells, write_lines
from linter.review.propose.proposal import Proposed
from linter.rulebook.model import Rulebook

CREATED = datetime.datetime(2000, 1, 1)
HEADS = (
    ("Machine", 24), ("Station", 12), ("Parameter", 30), ("Value", 18), ("Class", 8), ("Upper deviation", 12),
    ("Lower deviation", 12), ("Unit", 8),
)  # fmt: skip


@frozen
class Line:
    """A start value with where it goes and what it rests on."""

    machine: str
    station: str
    row: int
    item: Proposed
    sources: tuple[str, ...]

    @property
    def unit(self) -> str:
        """Unit as it is shown."""
        return unit_text(parameter(self.item.cell.name).unit)


@frozen(eq=False)
class Proposal:
    """What is proposed for a table, and its review.

    Attributes
    ----------
    lines : tuple of Line
        Start values in the order in which a designer works, machine by machine.
    stations : Stations
        The table with them put in.
    result : ReviewResult
        Review of that.
    before : ReviewResult
        Review of the table as it is.
    """

    lines: tuple[Line, ...]
    stations: Stations
    result: ReviewResult
    before: ReviewResult
    asked: tuple[tuple[str, tuple[str, ...]], ...] = field(init=False)
    forbidding: tuple[Assessment, ...] = field(init=False)

    @asked.default
    def _asked(self) -> tuple[tuple[str, tuple[str, ...]], ...]:
        """Facts that something that must be judged still wants, each with the clauses that want it."""
        found: dict[str, dict[str, None]] = {}
        for item in self.result.unjudged:
            for name in item.missing:
                found.setdefault(name, {})[item.clause] = None
        order = {name: k for k, name in enumerate(vocabulary())}
        return tuple((n, tuple(found[n])) for n in sorted(found, key=lambda n: order.get(n, len(order))))

    @forbidding.default
    def _forbidding(self) -> tuple[Assessment, ...]:
        """Findings above minor that no start value clears: each names the facts that it rests on."""
        found = (a for a in self.result.to_act_on if a.outcome == "finding" and at_least(a.severity, "major"))
        return tuple(found)

    def facts_of(self, item: Assessment) -> str:
        """The stated values that a finding rests on."""
        proposed = {(line.machine, line.station, line.item.cell.name) for line in self.lines}
        used = [
            f"{words_of(used.parameter)} {used.text}"
            for used in item.places
            if not {(item.machine, s, used.parameter) for s in (item.station or "", "")} & proposed
        ]
        return ", ".join(dict.fromkeys(used))


def lines_of(
    stations: Stations, rulebook: Rulebook, found: Sequence[tuple[int, Sequence[Proposed]]]
) -> tuple[Line, ...]:
    """The start values of the machines of a table, each with the sources of its clause."""
    lines = []
    for machine, proposals in found:
        block = np.flatnonzero(stations.machine_row == machine)
        for item in proposals:
            row = int(block[item.cell.row])
            station = "" if item.cell.whole else str(stations.text("station")[row])
            lines.append(Line(stations.machines[machine], station, row, item, _sources(rulebook, item.clause)))
    return tuple(lines)


def _sources(rulebook: Rulebook, name: str) -> tuple[str, ...]:
    clause = rulebook.clauses.get(name)
    if clause is None:
        return ()
    limits = [key for limit in clause.limits.values() for key in limit.source.split("; ")]
    return tuple(dict.fromkeys([*clause.sources, *limits]))[:3]


def text_of(made: Proposal) -> str:
    """The proposal as lines for a terminal."""
    lines = []
    for machine in dict.fromkeys(line.machine for line in made.lines):
        lines.append(f"{machine}: start values, none of them stated by the table")
        for line in (x for x in made.lines if x.machine == machine):
            where = f"{line.station}, " if line.station else ""
            others = f"; else {' or '.join(line.item.others)}" if line.item.others else ""
            unit = f" {line.unit}" if line.unit else ""
            lines.append(
                f"  {where}{words_of(line.item.cell.name)}: {line.item.shown}{unit} ({line.item.clause}){others}"
            )
    if not made.lines:
        lines.append("nothing is proposed: every value that a drawing states is stated")
    if made.asked:
        lines.append("to be stated, never invented:")
        lines += [f"  {words_of(name)}, needed by {', '.join(clauses)}" for name, clauses in made.asked]
    if made.forbidding:
        lines.append("what no start value clears:")
        for item in made.forbidding:
            where = f"{item.machine}{f', {item.station}' if item.station else ''}"
            lines.append(f"  {item.severity}, {where}: {item.message} ({item.clause}; rests on {made.facts_of(item)})")
    lines.append(f"gate {made.before.gate} as it is, {made.result.gate} with the start values")
    return "\n".join(lines) + "\n"


def as_json(made: Proposal) -> str:
    """The proposal as a document, keys sorted, the same bytes for the same inputs."""
    content = {
        "format": "ringseat-proposal",
        "format_version": 1,
        "rulebook": {"name": made.result.rulebook.name, "version": made.result.rulebook.version},
        "input": {"file": made.result.input.file, "sha256": made.result.input.sha256},
        "proposed": [
            {
                "machine": line.machine,
                "station": line.station or None,
                "parameter": line.item.cell.name,
                "text": line.item.text,
                "value": _plain(line.item),
                "unit": parameter(line.item.cell.name).unit,
                "clause": line.item.clause,
                "sources": list(line.sources),
                "reason": line.item.reason,
                "bounded_by": list(line.item.bounded_by),
                "others": list(line.item.others),
            }
            for line in made.lines
        ],
        "asked": [{"parameter": name, "clauses": list(clauses)} for name, clauses in made.asked],
        "forbidding": [
            {
                "clause": a.clause, "machine": a.machine, "station": a.station, "severity": a.severity,
                "message": a.message, "facts": made.facts_of(a),
            }
            for a in made.forbidding
        ],
        "gate": {"before": made.before.gate, "proposed": made.result.gate},
        "severities": {"before": made.before.severities, "proposed": made.result.severities},
    }  # fmt: skip
    return json.dumps(content, ensure_ascii=False, indent=1, sort_keys=True) + "\n"


def _plain(item: Proposed) -> Any:
    """A value as JSON has it."""
    entry = parameter(item.cell.name)
    if entry.kind == "choice":
        return entry.choices[item.value]
    if entry.kind == "toleranced":
        return dict(zip(("nominal", "lower", "upper", "class"), item.value, strict=True))
    return item.value


def html_of(made: Proposal, rulebook: Rulebook) -> str:
    """The proposal as one page without script."""
    return (
        environment().get_template("proposal.html.j2").render(made=made, titles=_titles(rulebook), result=made.result)
    )


def _titles(rulebook: Rulebook) -> Mapping[str, str]:
    return {key: source.title for key, source in rulebook.sources.items()}


def proposed_table(made: Proposal) -> bytes:
    """The table with the start values: what is stated on one sheet, what is proposed on another; it reads back whole.

    Returns
    -------
    bytes
        An xlsx file, the same bytes for the same inputs.
    """
    import xlsxwriter

    stream = BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
    with xlsxwriter.Workbook(stream, options) as book:
        book.set_properties({"title": "Bearing seats with start values", "created": CREATED})
        looks = {
            "head": book.add_format({"bold": True, "bottom": 1, "text_wrap": True, "valign": "top"}),
            "plain": book.add_format({"valign": "top"}),
            "wrap": book.add_format({"valign": "top", "text_wrap": True}),
        }
        marked = {
            **looks,
            "plain": book.add_format({"valign": "top", "bg_color": "#F6E7C8", "italic": True}),
            "wrap": book.add_format({"valign": "top", "bg_color": "#F6E7C8", "italic": True, "text_wrap": True}),
        }
        taken = {(line.item.cell.name, line.row) for line in made.lines}
        write_lines(book.add_worksheet("Stated"), looks, HEADS, _stated(made.stations, taken))
        sheet = book.add_worksheet("Proposed")
        heads = (*HEADS, ("Remarks", 90))
        write_lines(sheet, marked, heads, [_proposed(made.stations, line) for line in made.lines])
    return stream.getvalue()


def _stated(stations: Stations, taken: set[tuple[str, int]]) -> list[list[Any]]:
    lines = []
    for entry in vocabulary().values():
        if entry.name in ("machine", "station"):
            continue
        whole = entry.level == "machine"
        for row in np.flatnonzero(stated_rows(stations, entry.name)).tolist():
            machine = int(stations.machine_row[row])
            first = int(stations.first_rows[machine])
            if (entry.name, first if whole else row) in taken or (whole and row != first):
                continue
            station = "" if whole else str(stations.text("station")[row])
            lines.append(
                [stations.machines[machine], station, words_of(entry.name), *value_cells(stations, entry, row)]
            )
    return lines


def _proposed(stations: Stations, line: Line) -> list[Any]:
    entry = parameter(line.item.cell.name)
    bounds = f"; the next value is judged worse by {', '.join(line.item.bounded_by)}" if line.item.bounded_by else ""
    remark = f"proposed, not stated: {line.item.clause}: {line.item.reason}{bounds}"
    return [line.machine, line.station, words_of(entry.name), *value_cells(stations, entry, line.row), remark]
