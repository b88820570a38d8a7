"""The result file: what other programs read.

An assessment that somebody acts on has its working and the cells of its inputs with it. Those of what is met or does
not apply stand once: parameters with the clause, the cell of each value with its station or machine.
"""

import json
import re
from collections.abc import Callable, Iterator, Sequence
from itertools import chain, islice
from typing import Any

from attrs import asdict, field, frozen

from linter.model.findings import OUTCOMES, TO_ACT_ON, Assessment, Assumed, Quantity, ReviewResult
from linter.model.many import Anew, ClauseColumns, ManyAssessments, Placed
from linter.model.reviewed import MachineRecord, ReadCell, StationRecord
from linter.model.wording import rounded

_SURROGATE = re.compile("[\ud800-\udfff]")
_encode = json.JSONEncoder(sort_keys=True, ensure_ascii=False, allow_nan=False, separators=(",", ":")).encode
_quoted = json.encoder.encode_basestring
#: Entries of a list that are handed on at once, and machines of a large table whose lines are made at once.
_AT_ONCE, _MACHINES_AT_ONCE = 500, 50


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
        "assessments": shared.assessments(result.assessments),
        "clauses": map(_encode, shared.clauses()),  # known when the assessments are written, which come first
        "machines": map(_encode, map(shared.machine, result.machines)),
        "stations": map(_encode, map(shared.station, result.stations)),
    }
    for number, key in enumerate(sorted(content)):
        value = content[key]
        yield f'{"," if number else "{"}\n "{key}":'.encode()
        if isinstance(value, (str, int, dict)) or value is None:
            yield _bytes(_encode(value))
            continue
        entries, start = map(_encode, value) if isinstance(value, list) else value, "[\n  "
        while chunk := list(islice(entries, _AT_ONCE)):
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
    """What the assessments of one clause share: title, sources and parameters."""

    title: str
    sources: tuple[str, ...]
    parameters: dict[str, None] = field(factory=dict)


class _Shared:
    """What stands once in the file, gathered while the assessments are written."""

    def __init__(self, result: ReviewResult) -> None:
        self._clauses: dict[str, _Clause] = {}
        self._texts: dict[Assumed, str] = {}
        # names and cells in turn, by position and by file and sheet: a large table has millions of them
        self._cells: dict[tuple[str, str | None], dict[tuple[str, str | None, str], list[str]]] = {}
        for machine, station, parameter, file, sheet, at, pointer in _placed(result.understood):
            groups = self._cells.setdefault((machine, station), {})
            groups.setdefault((file, sheet, "pointers" if pointer else "cells"), []).extend((parameter, at))

    def assessments(self, items: tuple[Assessment, ...] | ManyAssessments) -> Iterator[str]:
        """Every assessment as its line; those of a large table column by column."""
        if not isinstance(items, ManyAssessments) or items.parts is None:
            yield from (_encode(self.entry(item)) for item in items)
            return
        held = iter(items.to_act_on)
        for part in items.parts():
            for start in range(0, len(part.machines), _MACHINES_AT_ONCE):
                machines = part.machines[start : start + _MACHINES_AT_ONCE]
                whole = [(name, row, None) for name, row, _ in machines]
                single = [(name, row, station) for name, _, stations in machines for station, row in stations]
                of_machine = zip(*(self._column(clause, whole) for clause in part.of_machine), strict=True)
                of_station = zip(*(self._column(clause, single) for clause in part.of_station), strict=True)
                for _, _, stations in machines:
                    lines = chain(next(of_machine, ()), *islice(of_station, len(stations)))
                    yield from (line or _encode(self.entry(next(held))) for line in lines)

    def _column(self, of: ClauseColumns, rows: Sequence[tuple[str, int, str | None]]) -> Iterator[str]:
        """The lines of one clause at some rows with the names of machine and station; empty where somebody acts."""
        self._clause(of.clause, of.title, of.sources).parameters.update(dict.fromkeys(of.parameters))
        clause, sources = _encode(of.clause), _encode(of.sources)
        observed, lower, upper = (_quantities(of, name) for name in ("observed", "lower", "upper"))
        for machine, row, station in rows:
            outcome = OUTCOMES[of.outcome[row]]
            if outcome in TO_ACT_ON:
                yield ""
                continue
            assumed = ",".join(map(self._assumed, of.assumed.get(row, ())))
            yield (
                f'{{"assumed":[{assumed}],"clause":{clause},"clears_with":[],"concession":null,"follows":null,'
                f'"lower":{lower(row)},"machine":{_quoted(machine)},"message":{_quoted(of.message[row])},"missing":[],'
                f'"observed":{observed(row)},"outcome":"{outcome}","places":[],"severity":null,"sources":{sources},'
                f'"station":{"null" if station is None else _quoted(station)},"upper":{upper(row)},"working":[]}}'
            )

    def entry(self, item: Assessment) -> dict[str, Any]:
        """One assessment with every key; cells of what is met or does not apply only where its working is told too."""
        clause = self._clause(item.clause, item.title, item.sources)
        clause.parameters.update(dict.fromkeys(used.parameter for used in item.places))
        told = item.places if item.outcome in TO_ACT_ON or item.working else ()
        follows = item.follows
        return {
            "clause": item.clause,
            "machine": item.machine,
            "station": item.station,
            "outcome": item.outcome,
            "severity": item.severity,
            "observed": _quantity(item.observed),
            "lower": _quantity(item.lower),
            "upper": _quantity(item.upper),
            "message": item.message,
            "follows": None if follows is None else {"clause": follows.clause, "station": follows.station},
            "working": [
                {"symbol": w.symbol, "meaning": w.meaning, "value": w.value, "unit": w.unit, "formula": w.formula}
                for w in item.working
            ],
            "missing": list(item.missing),
            "assumed": list(map(_assumed, item.assumed)),
            "places": [{"parameter": used.parameter, **used.place.as_dict()} for used in told],
            "clears_with": [asdict(change) for change in item.clears_with],
            "sources": list(item.sources),
            "concession": item.concession,
            **({"remedy": item.remedy} if item.remedy or item.outcome in TO_ACT_ON else {}),
        }

    def _clause(self, name: str, title: str, sources: tuple[str, ...]) -> "_Clause":
        if name not in self._clauses:
            self._clauses[name] = _Clause(title, sources)
        return self._clauses[name]

    def _assumed(self, one: Assumed) -> str:
        """An assumed value as text, made once."""
        if one not in self._texts:
            self._texts[one] = _encode(_assumed(one))
        return self._texts[one]

    def clauses(self) -> Iterator[dict[str, Any]]:
        """What the assessments of each clause share."""
        for name in sorted(self._clauses):
            clause = self._clauses[name]
            yield {
                "clause": name,
                "title": clause.title,
                "sources": list(clause.sources),
                "parameters": sorted(clause.parameters),
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
        found = []
        for (file, sheet, kind), told in self._cells.get((machine, station), {}).items():
            cells: dict[str, list[str]] = {}
            for name, at in zip(told[::2], told[1::2], strict=True):
                cells.setdefault(name, []).append(at)
            found.append({"file": file, kind: cells, **({"sheet": sheet} if kind == "cells" else {})})
        return found


def _quantity(quantity: Quantity | None) -> dict[str, Any] | None:
    return None if quantity is None else {"value": quantity.value, "unit": quantity.unit}


def _quantities(of: ClauseColumns, name: str) -> Callable[[int], str]:
    """A figure of a clause as text, by row."""
    if name not in of.figures:
        return lambda row: "null"
    values, before = of.figures[name], f'{{"unit":{_encode(of.unit)},"value":'

    def text(row: int) -> str:
        value = values[row]
        return f"{before}{rounded(value)!r}}}" if value == value else "null"

    return text


def _assumed(one: Assumed) -> dict[str, Any]:
    return {"parameter": one.parameter, "value": one.value, "unit": one.unit, "reason": one.reason}


def _placed(understood: tuple[ReadCell, ...] | Anew[ReadCell]) -> Iterator[Placed]:
    """The place of every cell that was used."""
    if isinstance(understood, Anew) and understood.placed is not None:
        yield from understood.placed()
        return
    for cell in understood:
        place, pointer = cell.place, cell.place.pointer is not None
        at = place.pointer if pointer else place.cell
        yield cell.machine, cell.station, cell.parameter, place.file, place.sheet, at or "", pointer
