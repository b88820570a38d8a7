"""What changed from one rulebook to another, in words and numbers."""

from collections.abc import Iterable, Iterator
from difflib import SequenceMatcher
from typing import Any

from attrs import asdict

from linter.model.wording import limit_text, number_text, words_of
from linter.rulebook.gates import gate_text
from linter.rulebook.looser import is_looser
from linter.rulebook.model import ORIGIN, Clause, Limit, Rulebook, Table

PARTS = (
    "title", "level", "question", "check", "arithmetic", "measure", "needs", "uses", "consequence", "remedy", "picture",
    "follows",
)  # fmt: skip


def gravest(clause: Clause) -> str:
    """Gravest severity that a clause can reach."""
    return clause.steps[-1].severity


def differences(old: Rulebook, new: Rulebook) -> Iterator[tuple[str, str]]:
    """What changed from one rulebook to another: clause and one line in words and numbers."""
    for name in _both(old.clauses, new.clauses):
        if name not in new.clauses:
            yield name, "is no longer there"
        elif name not in old.clauses:
            clause = new.clauses[name]
            yield name, f"is new, up to {gravest(clause)}: {clause.question}"
        else:
            yield from ((name, line) for line in _clause_differences(old.clauses[name], new.clauses[name]))


def changed_clauses(old: Rulebook, new: Rulebook) -> list[str]:
    """Ids of the clauses that are new, gone, or changed in anything but what repairs them."""
    names = _both(old.clauses, new.clauses)
    return [name for name in names if _whole(old.clauses.get(name)) != _whole(new.clauses.get(name))]


def _whole(clause: Clause | None) -> Any:
    return {**asdict(clause), "repairs": ()} if clause else None


def _clause_differences(old: Clause, new: Clause) -> Iterator[str]:
    if old.off != new.off:
        yield f"is switched off: {new.off}" if new.off else "is switched on again"
    for key in _both(old.limits, new.limits):
        yield from _limit_differences(key, old.limits.get(key), new.limits.get(key))
    for key in _both(old.tables, new.tables):
        if key not in old.tables or key not in new.tables:
            yield f"table {key} is {'gone' if key in old.tables else 'new'}"
        else:
            yield from _table_differences(key, old.tables[key], new.tables[key])
    yield from _gate_differences(old, new)
    if old.steps != new.steps:
        yield f"severity steps: {steps_text(old)} -> {steps_text(new)}"
    for part in PARTS:
        if getattr(old, part) != getattr(new, part):
            yield f"{words_of(part)}: {_plain(getattr(old, part))} -> {_plain(getattr(new, part))}"
    for key in sorted({*old.messages, *new.messages}):
        if old.messages.get(key) != new.messages.get(key):
            yield f"message {key}: {old.messages.get(key, '(none)')} -> {new.messages.get(key, '(none)')}"
    for key in _both(old.sources, new.sources):
        if (key in old.sources) != (key in new.sources):
            yield f"source {key} is {'gone' if key in old.sources else 'new'}"


def _both(old: Iterable[str], new: Iterable[str]) -> list[str]:
    """Names of the one, then those that only the other has."""
    return list(dict.fromkeys((*old, *new)))


def _gate_differences(old: Clause, new: Clause) -> Iterator[str]:
    if gate_text(old) != gate_text(new):
        yield f"must be judged: {gate_text(old)} -> {gate_text(new)}"
    elif (old.gate, old.must_when) != (new.gate, new.must_when):
        yield f"must be judged: {gate_text(new)}, now {'stated' if new.gate or new.must_when else 'not stated'}"


def _limit_differences(key: str, before: Limit | None, after: Limit | None) -> Iterator[str]:
    if after is None:
        yield f"limit {key} is gone"
        return
    if before is None:
        yield f"limit {key} is new: {limit_text(after.value, after.unit)} ({origin_text(after)})"
        return
    if (before.value, before.unit) != (after.value, after.unit):
        was, now = limit_text(before.value, before.unit), limit_text(after.value, after.unit)
        yield f"limit {key}: {was} -> {now}{_way(before.value, after.value, before.looser)}"
    if origin_text(before) != origin_text(after):
        yield f"limit {key} rests on: {origin_text(before)} -> {origin_text(after)}"
    if before.note != after.note:
        yield f"limit {key}, note: {before.note or '(none)'} -> {after.note or '(none)'}"
    if before.looser != after.looser:
        yield f"limit {key}, way that lets more pass: {before.looser} -> {after.looser}"


def _table_differences(key: str, old: Table, new: Table) -> Iterator[str]:
    for column in _both(old.looser, new.looser):
        was, now = old.looser.get(column, "either"), new.looser.get(column, "either")
        if was != now:
            yield f"table {key}, {column}, way that lets more pass: {was} -> {now}"
    if old.columns != new.columns:
        yield f"table {key}: columns {', '.join(old.columns)} -> {', '.join(new.columns)}"
        return
    for kind, i, i_end, j, j_end in SequenceMatcher(None, old.rows, new.rows, autojunk=False).get_opcodes():
        if kind == "equal":
            continue
        both = min(i_end - i, j_end - j)
        for before, after in zip(old.rows[i : i + both], new.rows[j : j + both], strict=True):
            yield from _row_differences(f"table {key}, {_row_name(old, before)}", old, before, after)
        for row in old.rows[i + both : i_end]:
            yield f"table {key}: row {_row_name(old, row)} is gone"
        for row in new.rows[j + both : j_end]:
            values = (f"{c} {v}" for c, v in zip(new.columns, row, strict=True) if v and c not in ORIGIN)
            yield f"table {key}: row is new: {', '.join(values)}"


def _row_differences(where: str, table: Table, before: tuple[str, ...], after: tuple[str, ...]) -> Iterator[str]:
    for column, was, now in zip(table.columns, before, after, strict=True):
        if was != now:
            yield f"{where}: {column} {was or '(blank)'} -> {now or '(blank)'}"


def _row_name(table: Table, row: tuple[str, ...]) -> str:
    """The words of a row, or its first cell where it has none."""
    arrays = table.arrays
    words = [
        cell for column, cell in zip(table.columns, row, strict=True)
        if cell and column not in ORIGIN and arrays[column].dtype == object
    ]  # fmt: skip
    return " ".join(words) or f"{table.columns[0]} {row[0]}"


def _way(before: Any, after: Any, looser: str) -> str:
    if looser == "either" or isinstance(before, str) or isinstance(after, str):
        return ""
    return ", looser" if is_looser(looser, before, after) else ", tighter"


def _plain(value: Any) -> str:
    return (", ".join(value) if isinstance(value, tuple) else str(value)) or "(none)"


def steps_text(clause: Clause) -> str:
    """The severity steps in one line."""
    return "; ".join(f"above {number_text(step.above)}: {step.severity}" for step in clause.steps)


def origin_text(limit: Limit) -> str:
    """Where a limit comes from: its sources, and how it was obtained where the source does not say so already."""
    return limit.source if limit.source == limit.provenance else f"{limit.source}, {limit.provenance}"
