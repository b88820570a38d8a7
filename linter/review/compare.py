"""Two result files compared: what appeared, cleared and changed, and whether the table or the rulebook did it.

Assessments are matched by clause, machine and station; values by machine, station and parameter. Neither the tables nor
the rulebooks are read again, but where both rulebooks are released ones their clauses are compared too.
"""

import math
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from typing import Any

from linter.model.comparison import KINDS, Comparison, Difference, Side, State, ValueChange
from linter.model.findings import SEVERITIES
from linter.model.visible import visible
from linter.model.vocabulary import vocabulary
from linter.model.wording import number_text, quantity_text, unit_text
from linter.review.result_files import NOTHING, read_result
from linter.rulebook.load import load, released_versions
from linter.rulebook.model import Rulebook, RulebookError

MOST_LINES = 8

Key = tuple[str, str, str | None, int]


def compare_files(old: Path, new: Path) -> Comparison:
    """Compare two result files.

    Parameters
    ----------
    old, new : Path
        Result files as ``ringseat review`` writes them, of any two tables and rulebooks.

    Returns
    -------
    Comparison
        Differences by kind, gravest first; the same for the same files.

    Raises
    ------
    ComparisonError
        If one of them cannot be read or is no result file.
    """
    return _Comparer(_Result(old), _Result(new)).run()


class _Result:
    """One result file, with its parts by key."""

    def __init__(self, path: Path) -> None:
        self.content = content = read_result(path)
        self.path = path
        self.assessments: dict[Key, dict[str, Any]] = {}
        for entry in content["assessments"]:
            key = (entry["clause"], entry["machine"], entry["station"], 0)
            while key in self.assessments:
                key = (*key[:3], key[3] + 1)
            self.assessments[key] = {**NOTHING, **entry}
        self.parameters = {entry["clause"]: entry["parameters"] for entry in content["clauses"]}
        self.values: dict[tuple[str, str], dict[str, Any]] = {}
        for station in content["stations"]:
            self.values.setdefault((station["machine"], station["station"]), station["values"])
        self.machines = {m["machine"]: m for m in content["machines"]}
        self.clauses = {entry["clause"] for entry in content["assessments"]}
        self.book = _released(content["rulebook"])

    def side(self) -> Side:
        content = self.content
        return Side(
            file=self.path.name,
            table=content["input"]["file"],
            table_sha256=content["input"]["sha256"],
            rulebook=f"{content['rulebook']['name']} {content['rulebook']['version']}",
            rulebook_sha256=content["rulebook"]["sha256"],
            tool=f"{content['tool']['name']} {content['tool']['version']}",
            gate=content["summary"]["gate"],
            gate_severity=content["summary"]["gate_severity"],
            outcomes=content["summary"]["outcomes"],
            severities=content["summary"]["severities"],
        )

    def has(self, machine: str, station: str | None) -> bool:
        return machine in self.machines and (station is None or station in self.machines[machine]["stations"])


def _released(record: Mapping[str, Any]) -> Rulebook | None:
    """The released rulebook that a result was made with, where it is one and is still the same."""
    if record["version"] not in released_versions():
        return None
    try:
        book = load(record["version"])
    except RulebookError:
        return None
    return book if book.sha256 == record["sha256"] else None


class _Comparer:
    def __init__(self, old: _Result, new: _Result) -> None:
        self.old, self.new = old, new
        self.same_book = old.content["rulebook"]["sha256"] == new.content["rulebook"]["sha256"]
        self.same_tool = old.content["tool"] == new.content["tool"]
        self.titles: dict[str, str] = {}
        for book in (old.book, new.book):
            if book is not None:
                self.titles.update({c.id: c.title for c in book.clauses.values()})
        self.book_lines: dict[str, list[str]] | None = None
        if not self.same_book and old.book is not None and new.book is not None:
            from linter.rulebook.differences import differences

            self.book_lines = {}
            for clause, line in differences(old.book, new.book):
                self.book_lines.setdefault(clause, []).append(line)
        self.changed: dict[tuple[str, str], dict[str, ValueChange]] = {}
        for where in sorted({*old.values, *new.values}):
            before, after = old.values.get(where), new.values.get(where)
            if before is not None and after is not None:
                self.changed[where] = _value_changes(where, before, after)

    def run(self) -> Comparison:
        found = []
        unchanged = 0
        for key in {**self.old.assessments, **self.new.assessments}:
            before, after = self.old.assessments.get(key), self.new.assessments.get(key)
            kind = _kind(before, after)
            if kind == "unchanged":
                unchanged += 1
            elif kind:
                found.append(self.difference(kind, key, before, after))
        found.sort(key=_order)
        values = [change for where in sorted(self.changed) for change in self.changed[where].values()]
        return Comparison(self.old.side(), self.new.side(), tuple(found), _once(values), tuple(self.notes()), unchanged)

    def notes(self) -> Iterable[str]:
        """What else differs: machines, stations, drawings, clauses, settings."""
        old, new = self.old, self.new
        if old.content["input"]["sha256"] == new.content["input"]["sha256"]:
            yield "Both results are of the very same table."
        if not self.same_book:
            yield f"The rulebooks differ: {old.side().rulebook}, now {new.side().rulebook}."
        if not self.same_tool:
            yield f"The program versions differ: {old.side().tool}, now {new.side().tool}."
        if old.side().gate_severity != new.side().gate_severity:
            yield f"The gate closed on {old.side().gate_severity} and above, now on {new.side().gate_severity}."
        if old.machines and new.machines and not set(old.machines) & set(new.machines):
            yield "No machine is in both results; machines are matched by name."
        for machine in sorted({*old.machines, *new.machines}):
            before, after = old.machines.get(machine), new.machines.get(machine)
            if before is None or after is None:
                yield f"Machine {machine} is {'new' if before is None else 'no longer there'}."
                continue
            for key, word in (("drawing_number", "drawing"), ("drawing_revision", "revision")):
                if before[key] != after[key]:
                    was, now = before[key] or "not stated", after[key] or "not stated"
                    yield f"Machine {machine}: {word} {was} -> {now}."
            for word, names in (
                ("new", sorted(set(after["stations"]) - set(before["stations"]))),
                ("no longer there", sorted(set(before["stations"]) - set(after["stations"]))),
            ):
                if names:
                    yield f"Machine {machine}: {word}: {', '.join(names)}."
        for word, clauses in (("new", new.clauses - old.clauses), ("old", old.clauses - new.clauses)):
            if clauses:
                yield f"Clauses only in the {word} result: {', '.join(sorted(clauses))}."

    def difference(
        self, kind: str, key: Key, before: dict[str, Any] | None, after: dict[str, Any] | None
    ) -> Difference:
        clause, machine, station, _ = key
        values = self.values_used(machine, station, before, after)
        cause, because = self.cause(key, before, after, values)
        return Difference(
            kind=kind,
            clause=clause,
            title=self.titles.get(clause, ""),
            machine=machine,
            station=station,
            old=_state(before),
            new=_state(after),
            cause=cause,
            because=tuple(because),
            values=values,
        )

    def values_used(
        self, machine: str, station: str | None, before: Mapping[str, Any] | None, after: Mapping[str, Any] | None
    ) -> tuple[ValueChange, ...]:
        used: set[str] = set()
        for result, entry in ((self.old, before), (self.new, after)):
            if entry is not None:
                used.update(result.parameters.get(entry["clause"], ()))
                used.update(place["parameter"] for place in entry["places"])
                used.update(assumed["parameter"] for assumed in entry["assumed"])
                used.update(entry["missing"])
        here = [self.changed[w] for w in sorted(self.changed) if w[0] == machine and station in (None, w[1])]
        named = [change for changes in here for name, change in changes.items() if name in used]
        if not named and self.same_book and self.same_tool:
            named = [change for changes in here for change in changes.values()]
        return _once(named)

    def cause(
        self,
        key: Key,
        before: Mapping[str, Any] | None,
        after: Mapping[str, Any] | None,
        values: Sequence[ValueChange],
    ) -> tuple[str, list[str]]:
        clause, machine, station, _ = key
        if before is not None and after is not None and _conceded_only(before, after):
            number = after["concession"] or before["concession"]
            covers = after["outcome"] == "conceded"
            return "concession", [f"Concession {number} {'covers it now' if covers else 'no longer covers it'}."]
        because = [f"{change.parameter}: {change.old} -> {change.new}" for change in values]
        table = bool(values)
        for result, word in ((self.old, "new"), (self.new, "no longer there")):
            if not result.has(machine, station):
                table = True
                because.append(f"{machine}{'' if station is None else f' {station}'} is {word} in the table.")
        book, lines = self.rulebook_did(clause)
        because += lines
        if table and book:
            return "table and rulebook", because
        if table or book:
            return ("table" if table else "rulebook"), because
        if not self.same_tool:
            return "program", [f"{self.old.side().tool} -> {self.new.side().tool}"]
        if self.same_book and self.old.content["input"]["sha256"] != self.new.content["input"]["sha256"]:
            return "table", ["The tables differ, but none of the values reviewed does."]
        return "not told", ["Neither the values, the rulebook nor the program differs between the two files."]

    def rulebook_did(self, clause: str) -> tuple[bool, list[str]]:
        """Whether the rulebook may have caused a difference of this clause, and how."""
        if self.same_book:
            return False, []
        if self.book_lines is not None:
            lines = self.book_lines.get(clause, [])
            return bool(lines), _few([f"Rulebook: {line}" for line in lines])
        for result, word in ((self.old, "is new in the rulebook"), (self.new, "is no longer in the rulebook")):
            if clause not in result.clauses and (result.book is None or clause not in result.book.clauses):
                return True, [f"The clause {word}."]
        return True, ["The rulebooks differ; the two files do not show which of the clauses changed."]


def _few(lines: list[str]) -> list[str]:
    return lines if len(lines) <= MOST_LINES else [*lines[: MOST_LINES - 1], f"and {len(lines) - MOST_LINES + 1} more"]


def _once(changes: Iterable[ValueChange]) -> tuple[ValueChange, ...]:
    """Changes with those of the whole machine, which every station repeats, once."""
    kept: dict[tuple[str, str, str], ValueChange] = {}
    for change in changes:
        entry = vocabulary().get(change.parameter)
        whole = entry is not None and entry.level == "machine"
        change = ValueChange(change.machine, "" if whole else change.station, change.parameter, change.old, change.new)
        kept.setdefault((change.machine, change.station, change.parameter), change)
    return tuple(kept.values())


def _value_changes(
    where: tuple[str, str], before: Mapping[str, Any], after: Mapping[str, Any]
) -> dict[str, ValueChange]:
    order = {name: k for k, name in enumerate(vocabulary())}
    names = sorted({*before, *after}, key=lambda n: (order.get(n, len(order)), n))
    return {
        name: ValueChange(*where, name, _value_text(name, before.get(name)), _value_text(name, after.get(name)))
        for name in names
        if before.get(name) != after.get(name)
    }


def _value_text(name: str, value: Any) -> str:
    """A value of ``stations`` in words."""
    entry = vocabulary().get(name)
    unit = entry.unit if entry is not None else "1"
    if value is None:
        return "not stated"
    if isinstance(value, str):
        return visible(value)
    if isinstance(value, Mapping):
        text = number_text(value["nominal"], unit)
        if value["class"]:
            text += f" {visible(value['class'])}"
        if value["lower"] is not None and value["upper"] is not None:
            upper, lower = (f"{'+' if d > 0 else ''}{number_text(d, unit)}" for d in (value["upper"], value["lower"]))
            text += f" ({upper}/{lower})"
        return f"{text} {unit_text(unit)}".rstrip()
    return quantity_text(value, unit)


def _state(entry: Mapping[str, Any] | None) -> State | None:
    if entry is None:
        return None
    names = ("outcome", "severity", "observed", "lower", "upper", "message", "concession")
    return State(**{name: entry[name] for name in names})


def _conceded_only(before: Mapping[str, Any], after: Mapping[str, Any]) -> bool:
    same = before["severity"] == after["severity"] and _same_quantities(before, after)
    told = [(entry["outcome"] == "conceded", entry["concession"]) for entry in (before, after)]
    return same and before["severity"] is not None and told[0] != told[1]


def _same_quantities(before: Mapping[str, Any], after: Mapping[str, Any]) -> bool:
    """Whether observed value and limits are the same but for the last of the ten digits that a result file keeps."""
    for key in ("observed", "lower", "upper"):
        was, now = before[key], after[key]
        if was is None or now is None:
            if was is not now:
                return False
        elif was["unit"] != now["unit"] or not math.isclose(was["value"], now["value"], rel_tol=1e-9):
            return False
    return True


def _kind(before: Mapping[str, Any] | None, after: Mapping[str, Any] | None) -> str:
    """Kind of a difference, ``unchanged`` for a finding that stands as it did, empty where nothing is to be told."""
    was = None if before is None else before["outcome"]
    now = None if after is None else after["outcome"]
    stood, stands = was in ("finding", "conceded"), now in ("finding", "conceded")
    if stood and stands:
        assert before is not None and after is not None
        same = all(before[k] == after[k] for k in ("outcome", "severity", "concession"))
        return "unchanged" if same and _same_quantities(before, after) else "changed"
    if stands:
        return "appeared"
    if now == "not assessed":
        return "" if was == "not assessed" else "newly not assessed"
    if now is None:
        return "no longer reviewed" if stood or was == "not assessed" else ""
    if stood:
        return "cleared"
    return "no longer not assessed" if was == "not assessed" else ""


def _order(difference: Difference) -> tuple[int, int, str, str, str]:
    severity = difference.severity
    grade = len(SEVERITIES) if severity is None else SEVERITIES.index(severity)
    return KINDS.index(difference.kind), grade, difference.machine, difference.station or "", difference.clause
