"""The result file: what other programs read.

What many assessments share stands once: sources, parameters and the lines of the working with the clause, the cell of a
value with its station or machine. An assessment says what is its own.
"""

import json
import re
from collections.abc import Iterator
from itertools import islice
from typing import Any

from attrs import asdict, field, frozen

from linter.model.findings import TABLE_CHAPTER, Assessment, Quantity, ReviewResult, Used, WorkingLine
from linter.model.places import Place
from linter.model.reviewed import MachineRecord, StationRecord

_SURROGATE = re.compile("[\ud800-\udfff]")
_encode = json.JSONEncoder(sort_keys=True, ensure_ascii=False, allow_nan=False, separators=(",", ":")).encode
#: Outcomes that somebody acts on: these entries have every key, the others only those that say something.
TO_ACT_ON = ("finding", "conceded", "not assessed")
#: Entries of a list that are handed on at once.
_AT_ONCE = 500


def result_text(result: ReviewResult) -> str:
    """The content of ``NAME.result.json``; see :func:`result_pieces`."""
    return b"".join(result_pieces(result)).decode()


def result_pieces(result: ReviewResult) -> Iterator[bytes]:
    """The content of ``NAME.result.json``, piece by piece, so that a large one never stands in memory as a whole.

    Parameters
    ----------
    result : ReviewResult
        As reviewed.

    Yields
    ------
    bytes
        JSON with sorted keys in UTF-8, one line for each entry of a list, with a line end; the same for the same
        result. Half a surrogate pair from the table is written as its JSON escape.

    Raises
    ------
    ValueError
        If a value is not a finite number, which JSON cannot hold.
    """
    shared = _Shared(result)
    content: dict[str, Any] = {
        **result.as_dict(),
        "assessments": map(shared.entry, result.assessments),
        "clauses": shared.clauses(),  # known when the assessments are written, which come first
        "machines": map(shared.machine, result.machines),
        "stations": map(shared.station, result.stations),
    }
    for number, key in enumerate(sorted(content)):
        value = content[key]
        yield f'{"," if number else "{"}\n "{key}":'.encode()
        if isinstance(value, (str, int, dict)) or value is None:
            yield _bytes(_encode(value))
            continue
        entries, start = iter(value), "[\n  "
        while chunk := [_encode(entry) for entry in islice(entries, _AT_ONCE)]:
            yield _bytes(start + ",\n  ".join(chunk))
            start = ",\n  "
        yield b"[]" if start[0] == "[" else b"\n ]"
    yield b"\n}\n"


def _bytes(text: str) -> bytes:
    try:
        return text.encode()
    except UnicodeEncodeError:
        return _SURROGATE.sub(lambda half: f"\\u{ord(half[0]):04x}", text).encode()


@frozen
class _Clause:
    """What the assessments of one clause share: its sources, parameters, and lines of working by their names."""

    title: str
    sources: tuple[str, ...]
    parameters: dict[str, None] = field(factory=dict)
    working: dict[tuple[str, str, str, str, str], str] = field(factory=dict)


class _Shared:
    """What stands once in the file, gathered while the assessments are written."""

    def __init__(self, result: ReviewResult) -> None:
        self._clauses: dict[str, _Clause] = {}
        self._cells: dict[tuple[str, str | None], dict[str, list[Place]]] = {}
        self._of_machine: dict[str, set[tuple[str, Place]]] = {}
        self._told: dict[int, bool] = {}  # a record of a value is shared by all that use it
        for cell in result.understood:
            self._cells.setdefault((cell.machine, cell.station), {}).setdefault(cell.parameter, []).append(cell.place)
            self._of_machine.setdefault(cell.machine, set()).add((cell.parameter, cell.place))

    def entry(self, item: Assessment) -> dict[str, Any]:
        """One assessment, without what its clause, station or machine tells for it."""
        clause = self._clauses.get(item.clause)
        if clause is None:
            clause = self._clauses[item.clause] = _Clause(item.title, item.sources)
        told, names, others = self._told, clause.parameters, []
        # a finding on the table itself is about these very cells
        of_table = item.outcome in TO_ACT_ON and item.clause.startswith(f"{TABLE_CHAPTER}.")
        for used in item.places:
            known = False if of_table else told.get(id(used))
            if known is None:
                known = told[id(used)] = self._is_own(used, item)
            if known:
                names[used.parameter] = None
            else:
                others.append({"parameter": used.parameter, **used.place.as_dict()})
        entry: dict[str, Any] = {
            "clause": item.clause,
            "machine": item.machine,
            "station": item.station,
            "outcome": item.outcome,
            "severity": item.severity,
            "observed": _quantity(item.observed),
            "lower": _quantity(item.lower),
            "upper": _quantity(item.upper),
            "message": item.message,
        }
        more: dict[str, Any] = {
            "missing": list(item.missing),
            "assumed": [
                {"parameter": a.parameter, "value": a.value, "unit": a.unit, "reason": a.reason} for a in item.assumed
            ],
            "clears_with": [asdict(change) for change in item.clears_with],
            "concession": item.concession,
            "remedy": item.remedy,
            "follows": None
            if item.follows is None
            else {"clause": item.follows.clause, "station": item.follows.station},
        }
        entry.update(more if item.outcome in TO_ACT_ON else {key: value for key, value in more.items() if value})
        if item.working:
            entry["working"] = {_line(clause, line): line.value for line in item.working}
        if others:
            entry["places"] = others
        if item.sources != clause.sources:
            entry["sources"] = list(item.sources)
        return entry

    def _is_own(self, used: Used, item: Assessment) -> bool:
        """Whether a value is told with the machine or station that an assessment is about."""
        if item.station is None:
            return (used.parameter, used.place) in self._of_machine.get(item.machine, ())
        own = ((item.machine, item.station), (item.machine, None))
        return any(used.place in self._cells.get(key, {}).get(used.parameter, ()) for key in own)

    def clauses(self) -> Iterator[dict[str, Any]]:
        """What the assessments of each clause share."""
        for name in sorted(self._clauses):
            clause = self._clauses[name]
            yield {
                "clause": name,
                "title": clause.title,
                "sources": list(clause.sources),
                "parameters": sorted(clause.parameters),
                "working": [
                    {"line": line, "symbol": symbol, "meaning": meaning, "unit": unit, "formula": formula}
                    for (_, symbol, meaning, unit, formula), line in clause.working.items()
                ],
            }

    def machine(self, record: MachineRecord) -> dict[str, Any]:
        """A machine, with the cells of what is stated of it as a whole."""
        return {
            "machine": record.machine,
            "drawing_number": record.drawing_number,
            "drawing_revision": record.drawing_revision,
            "stations": list(record.stations),
            "places": self._places(record.machine, None),
        }

    def station(self, record: StationRecord) -> dict[str, Any]:
        """A position, with the cells of what is stated of it."""
        return {**record.as_dict(), "places": self._places(record.machine, record.station)}

    def _places(self, machine: str, station: str | None) -> list[dict[str, Any]]:
        """Cells by parameter, for each file and sheet that they are in."""
        groups: dict[tuple[str, str | None, str], dict[str, Any]] = {}
        for name, places in self._cells.get((machine, station), {}).items():
            for place in places:
                kind, at = ("cells", place.cell) if place.pointer is None else ("pointers", place.pointer)
                key = (place.file, place.sheet, kind)
                if key not in groups:
                    groups[key] = {"file": place.file, kind: {}}
                    if kind == "cells":
                        groups[key]["sheet"] = place.sheet
                groups[key][kind].setdefault(name, []).append(at)
        return list(groups.values())


def _line(clause: _Clause, line: WorkingLine) -> str:
    """The name of a line of working: its key, with a number where another line of the clause has the same."""
    whole = (line.key, line.symbol, line.meaning, line.unit, line.formula)
    name = clause.working.get(whole)
    if name is None:
        same = sum(other[0] == line.key for other in clause.working)
        name = clause.working[whole] = f"{line.key}-{same + 1}" if same else line.key
    return name


def _quantity(quantity: Quantity | None) -> dict[str, Any] | None:
    return None if quantity is None else {"value": quantity.value, "unit": quantity.unit}
