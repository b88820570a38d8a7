"""The rulebook as text: the list, one clause in the terminal, what changed between two versions."""

import textwrap
import tomllib
from collections.abc import Iterator
from functools import cache
from typing import Any

from linter.packaged import data_folder
from linter.rulebook import Clause, Rulebook, released_versions
from linter.wording import limit_text, number_text

WIDTH = 100


def gravest(clause: Clause) -> str:
    """Gravest severity that a clause can reach."""
    return clause.steps[-1].severity


def list_text(book: Rulebook) -> str:
    """A table of the clauses: id, title, gravest severity, wanted parameters."""
    lines = [f"{book.name} {book.version}: {book.title}", ""]
    for chapter, clauses in book.by_chapter():
        lines += [f"{chapter.title}: {chapter.purpose}", ""]
        for clause in clauses:
            state = f" [switched off: {clause.off}]" if clause.off else ""
            lines.append(f"  {clause.id:<28} up to {gravest(clause):<9} {clause.title}{state}")
            wants = ", ".join(clause.needs) or "nothing in particular"
            lines += textwrap.wrap(f"wants: {wants}", WIDTH, initial_indent=" " * 6, subsequent_indent=" " * 13)
        lines.append("")
    return "\n".join(lines)


def _wrapped(label: str, text: str) -> list[str]:
    return textwrap.wrap(f"{label}: {text}", WIDTH, subsequent_indent="    ") if text else []


def steps_text(clause: Clause) -> str:
    """The severity steps in one line."""
    return "; ".join(f"above {number_text(step.above)}: {step.severity}" for step in clause.steps)


def source_text(book: Rulebook, keys: str) -> str:
    """Sources of one value in words."""
    return "; ".join(book.sources[k].title if k in book.sources else k for k in keys.split("; "))


def clause_text(book: Rulebook, name: str) -> str:
    """One clause for the terminal: question, arithmetic, limits, steps, consequence, remedy, cases, sources."""
    clause = book.clauses[name]
    lines = [f"{clause.id}: {clause.title}", f"rulebook {book.name} {book.version}, about each {clause.level}", ""]
    if clause.off:
        lines += _wrapped("Switched off", clause.off)
    if name in book.reasons:
        lines += _wrapped("Changed by a layer or version", book.reasons[name])
    lines += _wrapped("Question", clause.question) + _wrapped("Arithmetic", clause.arithmetic)
    lines += _wrapped("Measure", clause.measure) + _wrapped("Severity", steps_text(clause))
    lines += _wrapped("Wants", ", ".join(clause.needs)) + _wrapped("Also looks at", ", ".join(clause.uses))
    lines += _wrapped("Why it matters", clause.consequence) + _wrapped("What to change", clause.remedy)
    if clause.limits:
        lines += ["", "Limits"]
        for key, limit in clause.limits.items():
            text = f"{key} = {limit_text(limit.value, limit.unit)} ({limit.provenance}: {limit.source})"
            lines += textwrap.wrap(
                f"{text} {limit.note}".rstrip(), WIDTH, initial_indent="  ", subsequent_indent="      "
            )
    for key, table in clause.tables.items():
        lines += ["", f"Table {key} ({table.file})"]
        widths = [max(len(str(r[i])) for r in (table.columns, *table.rows)) for i in range(len(table.columns))]
        for row in (table.columns, *table.rows):
            lines.append("  " + "  ".join(f"{c:<{min(w, 40)}.40}" for c, w in zip(row, widths, strict=True)).rstrip())
    cases = worked_cases(book, name)
    if cases:
        lines += ["", "Worked cases"]
        for case in cases:
            verdict = case["outcome"] + (f" ({case['severity']})" if "severity" in case else "")
            lines += textwrap.wrap(
                f"{case['kind']}: {case['title']}: {verdict}. {case.get('message', '')}".rstrip(),
                WIDTH, initial_indent="  ", subsequent_indent="      ",
            )  # fmt: skip
    lines += ["", "Sources"]
    for key in clause.sources:
        source = book.sources[key]
        lines += textwrap.wrap(
            f"{key}: {source.title}, {source.edition}. {source.note}".rstrip(),
            WIDTH, initial_indent="  ", subsequent_indent="      ",
        )  # fmt: skip
    return "\n".join(lines) + "\n"


@cache
def _released_cases(version: str) -> tuple[dict[str, Any], ...]:
    folder = data_folder("ruleset") / version / "cases"
    return tuple(
        case
        for path in sorted(folder.glob("*.toml"))
        for case in tomllib.loads(path.read_text(encoding="utf-8"))["cases"]
    )


def worked_cases(book: Rulebook, clause: str) -> list[dict[str, Any]]:
    """Worked cases of a clause: those of the newest released layer that states any for it."""
    for layer in book.layers:
        if layer.version in released_versions():
            cases = [case for case in _released_cases(layer.version) if case["clause"] == clause]
            if cases:
                return cases
    return []


def differences(old: Rulebook, new: Rulebook) -> Iterator[tuple[str, str]]:
    """What changed from one rulebook to another: clause and one line in words and numbers."""
    for name in [*old.clauses, *(n for n in new.clauses if n not in old.clauses)]:
        if name not in new.clauses:
            yield name, "is no longer there"
        elif name not in old.clauses:
            clause = new.clauses[name]
            yield name, f"is new, up to {gravest(clause)}: {clause.question}"
        else:
            yield from ((name, line) for line in _clause_differences(old.clauses[name], new.clauses[name]))


def _clause_differences(old: Clause, new: Clause) -> Iterator[str]:
    if old.off != new.off:
        yield f"is switched off: {new.off}" if new.off else "is switched on again"
    for key in [*old.limits, *(k for k in new.limits if k not in old.limits)]:
        before, after = old.limits.get(key), new.limits.get(key)
        if before is None and after is not None:
            yield f"limit {key} is new: {limit_text(after.value, after.unit)}"
        elif after is None:
            yield f"limit {key} is gone"
        elif before is not None and (before.value, before.unit) != (after.value, after.unit):
            way = _way(before.value, after.value, before.looser)
            was, now = limit_text(before.value, before.unit), limit_text(after.value, after.unit)
            yield f"limit {key}: {was} -> {now}{way} (source: {after.source}, {after.provenance})"
        elif before is not None and (before.source, before.provenance) != (after.source, after.provenance):
            yield f"limit {key}: source {before.source} -> {after.source}, {before.provenance} -> {after.provenance}"
    for key in [*old.tables, *(k for k in new.tables if k not in old.tables)]:
        if key not in old.tables or key not in new.tables:
            yield f"table {key} is {'gone' if key in old.tables else 'new'}"
            continue
        yield from _table_differences(key, old, new)
    if old.steps != new.steps:
        yield f"severity steps: {steps_text(old)} -> {steps_text(new)}"
    for part in ("title", "question", "arithmetic", "consequence", "remedy", "needs", "uses", "check", "level"):
        if getattr(old, part) != getattr(new, part):
            yield f"{part}: {_plain(getattr(old, part))} -> {_plain(getattr(new, part))}"
    for key in sorted({*old.messages, *new.messages}):
        if old.messages.get(key) != new.messages.get(key):
            yield f"message {key}: {old.messages.get(key, '(none)')} -> {new.messages.get(key, '(none)')}"


def _table_differences(key: str, old: Clause, new: Clause) -> Iterator[str]:
    before, after = old.tables[key], new.tables[key]
    if before.columns != after.columns:
        yield f"table {key}: columns {', '.join(before.columns)} -> {', '.join(after.columns)}"
        return
    for index in range(max(len(before.rows), len(after.rows))):
        if index >= len(before.rows):
            yield f"table {key}: row {' '.join(after.rows[index][:3])} is new"
        elif index >= len(after.rows):
            yield f"table {key}: row {' '.join(before.rows[index][:3])} is gone"
        else:
            for column, was, now in zip(before.columns, before.rows[index], after.rows[index], strict=True):
                if was != now:
                    where = " ".join(before.rows[index][:2])
                    yield f"table {key}, {where}: {column} {was or '(blank)'} -> {now or '(blank)'}"


def _way(before: Any, after: Any, looser: str) -> str:
    if looser == "either" or not (isinstance(before, (int, float)) and isinstance(after, (int, float))):
        return ""
    return ", looser" if (after > before) == (looser == "higher") else ", tighter"


def _plain(value: Any) -> str:
    return ", ".join(value) if isinstance(value, tuple) else str(value)


def difference_text(old: Rulebook, new: Rulebook) -> str:
    """What changed from one rulebook to another, for the terminal."""
    lines = [f"from {old.name} {old.version} to {new.name} {new.version}", ""]
    found = list(differences(old, new))
    if not found:
        return "\n".join([*lines, "No clause, limit, step or text differs.", ""])
    for name in dict.fromkeys(name for name, _ in found):
        lines.append(name)
        for line in (line for clause, line in found if clause == name):
            lines += textwrap.wrap(line, WIDTH, initial_indent="  ", subsequent_indent="      ")
        reason = new.reasons.get(name)
        if reason and reason != old.reasons.get(name):
            lines += textwrap.wrap(f"reason: {reason}", WIDTH, initial_indent="  ", subsequent_indent="      ")
        lines.append("")
    return "\n".join(lines)
