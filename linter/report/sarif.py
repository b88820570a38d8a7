"""The result as SARIF 2.1.0 (OASIS Standard, errata 01 of 2023), for gates and viewers that read it.

Section numbers are those of that standard. A clause is a rule, a finding or what could not be
assessed a result; a cell of a workbook is a
logical location of kind ``cell`` below its ``sheet``, since a workbook has no lines; a value that was reviewed is one
of kind ``parameter`` below its ``station`` and ``machine``. The message says what was found; what to change stands in
``properties.remedy``, and as a fix (3.55) where the plan has lines for the finding and the table is text. A replacement
(3.57) deletes a region of an artifact, and a cell of a workbook is no region of its bytes: there the cells of the plan
stand in ``properties.clearsWith`` alone.
"""

import hashlib
import json
from collections.abc import Iterable, Mapping, Sequence
from types import MappingProxyType
from typing import Any
from urllib.parse import quote

from attrs import asdict

from linter.model.findings import Assessment, Loosened, ReviewResult, Used
from linter.model.places import Place
from linter.model.visible import visible
from linter.report.cells import cells_to_change, change_in_words, sentence, what_to_change
from linter.report.repaired.files import Replaced
from linter.rulebook.model import Clause, Rulebook

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
BASE = "TABLES"
#: Section 3.27.10: how grave a result is.
LEVEL = {"critical": "error", "major": "error", "minor": "warning", "remark": "note"}
#: Section 3.27.9: what a result says.
KIND = {
    "met": "pass",
    "finding": "fail",
    "conceded": "fail",
    "not assessed": "open",
    "not applicable": "notApplicable",
}


def sarif_text(
    result: ReviewResult,
    rulebook: Rulebook,
    *,
    passes: bool = False,
    fixes: Mapping[int, Sequence[Replaced]] = MappingProxyType({}),
) -> str:
    """The result as a SARIF log with one run.

    Parameters
    ----------
    result : ReviewResult
        As reviewed.
    rulebook : Rulebook
        The one it was reviewed with.
    passes : bool
        Whether what is met and what is not applicable are results too; they are counted in the properties anyway.
    fixes : mapping of int to sequence of Replaced
        The pieces of the file that each line of the plan replaces, where the file is text.

    Returns
    -------
    str
        JSON with sorted keys, the same for the same inputs; it can be encoded as UTF-8.
    """
    run = _Run(result, rulebook, fixes)
    results = ",\n   ".join(_json(run.entry(item)) for item in result.assessments if passes or not _passes(item))
    content = {**run.content(), "results": []}
    parts = [
        f"{_json(key)}: " + (f"[\n   {results}\n  ]" if key == "results" and results else _json(content[key]))
        for key in sorted(content)
    ]
    joined = ",\n  ".join(parts)
    return f'{{\n "$schema": {_json(SCHEMA)},\n "runs": [{{\n  {joined}\n }}],\n "version": "2.1.0"\n}}\n'


def _passes(item: Assessment) -> bool:
    return item.outcome in ("met", "not applicable")


def _json(value: Any) -> str:
    """One line of JSON: a large log never stands in memory as records and text at once."""
    return json.dumps(value, sort_keys=True, ensure_ascii=False, allow_nan=False)


def _plain(text: str) -> str:
    """Text of a message: braces are doubled (3.11.5), and nothing in it reads as a link (3.11.6)."""
    return visible(text).replace("{", "{{").replace("}", "}}").replace("](", "] (")


def _message(text: str) -> dict[str, str]:
    return {"text": _plain(text) or "(nothing)"}


def _part(text: str) -> str:
    """One part of a qualified name: the sign between parts is escaped as in a JSON Pointer (RFC 6901)."""
    return visible(text).replace("~", "~0").replace("/", "~1")


class _Run:
    def __init__(
        self, result: ReviewResult, rulebook: Rulebook, fixes: Mapping[int, Sequence[Replaced]] = MappingProxyType({})
    ) -> None:
        self.result, self.rulebook, self.fixes = result, rulebook, fixes
        self.rules = {name: index for index, name in enumerate(rulebook.clauses)}
        self.logical: list[dict[str, Any]] = []
        self.logical_index: dict[tuple[str, str], int] = {}
        self.artifacts: dict[str, int] = {result.input.file: 0}
        self.notes = {note.number: note.text for note in result.concessions if note.state == "applied"}
        # section 3.27.23: where one result states its suppressions, every result does
        self.suppresses = bool(result.concessions) or bool(result.outcomes["conceded"])

    def content(self) -> dict[str, Any]:
        """The run without its results; the entries are made before, since they name the places listed here."""
        result = self.result
        return {
            "tool": {"driver": self.driver()},
            "automationDetails": {"id": f"{result.tool}/{quote(visible(result.input.file))}"},
            "columnKind": "unicodeCodePoints",
            "originalUriBaseIds": {BASE: {"description": {"text": "The folder the review was called in."}}},
            "invocations": [self.invocation()],
            "artifacts": [self.artifact(file) for file in self.artifacts],
            "logicalLocations": self.logical,
            "properties": {
                "gate": result.gate,
                "gateSeverity": result.gate_severity,
                "undecidedPasses": result.undecided_passes,
                "undecided": len(result.unjudged),
                "assumed": result.carried,
                "outcomes": result.outcomes,
                "severities": result.severities,
                "layout": visible(result.input.layout),
                "machines": [
                    {
                        "machine": visible(m.machine),
                        "drawingNumber": None if m.drawing_number is None else visible(m.drawing_number),
                        "drawingRevision": None if m.drawing_revision is None else visible(m.drawing_revision),
                        "stations": [visible(s) for s in m.stations],
                    }
                    for m in result.machines
                ],
            },
        }

    def driver(self) -> dict[str, Any]:
        record = self.result.rulebook
        return {
            "name": self.result.tool,
            "version": self.result.tool_version,
            "rules": [self.rule(clause) for clause in self.rulebook.clauses.values()],
            "properties": {
                "rulebook": {
                    "name": record.name,
                    "version": record.version,
                    "sha256": record.sha256,
                    "layers": [f"{layer.name} {layer.version}" for layer in record.layers],
                }
            },
        }

    def rule(self, clause: Clause) -> dict[str, Any]:
        titles = [self.source(key) for key in clause.sources]
        parts = [
            ("Question", clause.question),
            ("Arithmetic", clause.arithmetic),
            ("Why it matters", clause.consequence),
            ("What to change", clause.remedy),
            ("Sources", "; ".join(titles)),
        ]
        kept = [(head, " ".join(text.split())) for head, text in parts if text.strip()]
        return {
            "id": clause.id,
            "shortDescription": {"text": clause.title},
            "fullDescription": {"text": clause.question or clause.title},
            "help": {
                "text": "\n".join(f"{head}: {text}" for head, text in kept),
                "markdown": "\n\n".join(f"**{head}**: {text}" for head, text in kept),
            },
            "defaultConfiguration": {"enabled": clause.off is None, "level": LEVEL[clause.steps[-1].severity]},
            "properties": {"chapter": clause.chapter, "about": clause.level, "needs": list(clause.needs)},
        }

    def source(self, key: str) -> str:
        source = self.rulebook.sources.get(key)
        if source is None:
            return key
        return f"{source.title} ({source.edition})" if source.edition else source.title

    def invocation(self) -> dict[str, Any]:
        result = self.result
        return {
            "executionSuccessful": not result.failures,
            "toolExecutionNotifications": [
                *(self.notification("error", failure.text, failure.clause) for failure in result.failures),
                *self.undecided(),
                *(self.notification("note", text) for text in result.notes),
                *(
                    self.notification("note", f"{u.place}: {u.name} ({u.value}) was not used: {u.reason}")
                    for u in result.unrecognised
                ),
            ],
            "toolConfigurationNotifications": [
                *(
                    self.notification("note" if note.state == "applied" else "warning", f"{note.state}: {note.text}")
                    for note in result.concessions
                ),
                *(self.loosened(entry) for entry in result.rulebook.loosened),
            ],
        }  # fmt: skip

    def loosened(self, entry: Loosened) -> dict[str, Any]:
        text = f"{entry.clause} was loosened by {entry.layer}: {entry.what} ({entry.reason})"
        return self.notification("note", text, entry.clause)

    def undecided(self) -> Iterable[dict[str, Any]]:
        """What keeps an undecided gate from being decided, and whether the caller goes on with that."""
        result = self.result
        if result.gate == "undecided":
            passes = " By option an undecided gate passes." if result.undecided_passes else ""
            text = f"The gate is undecided: {len(result.unjudged)} assessments that must be judged were not.{passes}"
            yield self.notification("warning", text)
            yield from (self.notification("warning", f"{value} is needed") for value in result.needed)

    def notification(self, level: str, text: str, clause: str = "") -> dict[str, Any]:
        made: dict[str, Any] = {"level": level, "message": _message(text)}
        if clause in self.rules:
            made["associatedRule"] = {"id": clause, "index": self.rules[clause]}
        return made

    def artifact(self, file: str) -> dict[str, Any]:
        made: dict[str, Any] = {"location": self.artifact_location(file), "roles": ["analysisTarget"]}
        if file == self.result.input.file:
            made["hashes"] = {"sha-256": self.result.input.sha256}
        return made

    def artifact_location(self, file: str) -> dict[str, Any]:
        index = self.artifacts.setdefault(file, len(self.artifacts))
        return {"uri": quote(visible(file), safe="/"), "uriBaseId": BASE, "index": index}

    def entry(self, item: Assessment) -> dict[str, Any]:
        change = what_to_change(item) if item.outcome in ("finding", "conceded", "not assessed") else ""
        fails = KIND[item.outcome] == "fail"
        identity = json.dumps([item.clause, item.machine, item.station])
        made: dict[str, Any] = {
            "ruleId": item.clause,
            "kind": KIND[item.outcome],
            "level": LEVEL[item.severity] if fails and item.severity is not None else "none",
            "message": _message(sentence(item.message)),
            "partialFingerprints": {"clauseMachineStation/v1": hashlib.sha256(identity.encode()).hexdigest()},
            "locations": [],
            "properties": {
                "outcome": item.outcome,
                "mustBeJudged": item.must,
                "severity": item.severity,
                "machine": visible(item.machine),
                "station": None if item.station is None else visible(item.station),
            },
        }
        if item.clause in self.rules:
            made["ruleIndex"] = self.rules[item.clause]
        first = cells_to_change(item)[:1]
        made["locations"] = [self.location(item, first[0] if first else None)]
        if fails:
            made["relatedLocations"] = [
                {"id": number, "message": _message(f"{used.parameter}: {used.text}"), **self.location(item, used)}
                for number, used in enumerate(item.places, 1)
            ]
        for name in ("observed", "lower", "upper"):
            quantity = getattr(item, name)
            if quantity is not None:
                made["properties"][name] = {"value": quantity.value, "unit": quantity.unit}
        if change:
            made["properties"]["remedy"] = visible(change)
        if fix := self.fix(item):
            made["fixes"] = [fix]
        if item.missing:
            made["properties"]["missing"] = [visible(name) for name in item.missing]
        if item.clears_with:
            made["properties"]["clearsWith"] = [
                {k: visible(v) if isinstance(v, str) else v for k, v in asdict(c).items()} for c in item.clears_with
            ]
        if self.suppresses:
            made["suppressions"] = self.suppressions(item)
        return made

    def fix(self, item: Assessment) -> dict[str, Any] | None:
        """The lines of the plan that clear a finding, as one change of the file; None unless all of them are known."""
        lines = sorted({change.line for change in item.clears_with})
        if not lines or any(line not in self.fixes for line in lines):
            return None
        pieces = sorted((piece for line in lines for piece in self.fixes[line]), key=lambda p: (p.line, p.column))
        told = "; ".join(f"line {change.line} of the plan, {change_in_words(change)}" for change in item.clears_with)
        return {
            "description": _message(sentence(told[:1].upper() + told[1:])),
            "artifactChanges": [
                {
                    "artifactLocation": self.artifact_location(self.result.input.file),
                    "replacements": [
                        {
                            "deletedRegion": {
                                "startLine": piece.line,
                                "startColumn": piece.column,
                                "endLine": piece.end_line,
                                "endColumn": piece.end_column,
                            },
                            "insertedContent": {"text": piece.text},
                        }
                        for piece in pieces
                    ],
                }
            ],
        }

    def suppressions(self, item: Assessment) -> list[dict[str, Any]]:
        if item.outcome != "conceded" or item.concession is None:
            return []
        reason = self.notes.get(item.concession, f"Concession {item.concession}.")
        return [
            {
                "kind": "external",
                "status": "accepted",
                "justification": visible(reason),
                "properties": {"concession": visible(item.concession)},
            }
        ]

    def location(self, item: Assessment, used: Used | None) -> dict[str, Any]:
        parts = [("machine", item.machine)]
        if item.station is not None:
            parts.append(("station", item.station))
        if used is not None:
            parts.append(("parameter", used.parameter))
        places = [self.named(parts)]
        physical: dict[str, Any] = {
            "artifactLocation": self.artifact_location(self.result.input.file if used is None else used.place.file)
        }
        if used is not None:
            cell = self.cell(used.place)
            if cell is not None:
                places.append(cell)
            line = _line(used.place)
            if line is not None:
                physical["region"] = {"startLine": line}
        return {"physicalLocation": physical, "logicalLocations": [self.reference(index) for index in places]}

    def named(self, parts: Iterable[tuple[str, str]]) -> int:
        parent, name, index = -1, "", -1
        for kind, text in parts:
            name = f"{name}/{_part(text)}" if name else _part(text)
            index = self.keep(kind, visible(text), name, parent)
            parent = index
        return index

    def cell(self, place: Place) -> int | None:
        if place.pointer is not None:
            last = place.pointer.rsplit("/", 1)[-1].replace("~1", "/").replace("~0", "~")
            return self.keep("value" if last.isdigit() else "property", visible(last), visible(place.pointer), -1)
        if place.cell is None:
            return None
        if place.sheet is None:
            return self.keep("cell", place.cell, place.cell, -1)
        sheet = self.keep("sheet", visible(place.sheet), visible(place.sheet), -1)
        return self.keep("cell", visible(place.cell), visible(f"{place.sheet}!{place.cell}"), sheet)

    def keep(self, kind: str, name: str, full_name: str, parent: int) -> int:
        key = (kind, full_name)
        if key not in self.logical_index:
            self.logical_index[key] = len(self.logical)
            made: dict[str, Any] = {"kind": kind, "name": name, "fullyQualifiedName": full_name}
            if parent >= 0:
                made["parentIndex"] = parent
            self.logical.append(made)
        return self.logical_index[key]

    def reference(self, index: int) -> dict[str, Any]:
        return {"index": index, **self.logical[index]}


def _line(place: Place) -> int | None:
    """Line of a cell of a text table, which is its number; None elsewhere: a workbook has no lines."""
    if place.sheet is not None or place.cell is None:
        return None
    digits = place.cell.lstrip("ABCDEFGHIJKLMNOPQRSTUVWXYZ")
    return int(digits) if digits.isascii() and digits.isdigit() and int(digits) > 0 else None
