"""The rulebook as text: the list, one clause in the terminal, what changed between two versions."""

import re
import textwrap
from typing import Any

from linter.model.vocabulary import parameter
from linter.model.wording import limit_text, words_of
from linter.review.cases import run_cases
from linter.rulebook.differences import differences, gravest, origin_text, steps_text
from linter.rulebook.gates import gate_text
from linter.rulebook.model import PLACEHOLDER, Clause, Rulebook

WIDTH = 100


def _wrapped(label: str, text: str, indent: int = 0, hang: int = 4) -> list[str]:
    if not text:
        return []
    start = " " * indent
    full = f"{label}: {text}" if label else text
    hanging = start + " " * hang
    return textwrap.wrap(full, WIDTH, initial_indent=start, subsequent_indent=hanging, break_on_hyphens=False)


def list_text(book: Rulebook) -> str:
    """A table of the clauses: id, title, gravest severity, wanted parameters; then the parameters by clauses."""
    lines = [f"{book.name} {book.version}: {book.title}", ""]
    wide = max((len(name) for name in book.clauses), default=0)
    for chapter, clauses in book.by_chapter():
        if not clauses:
            continue
        lines += [chapter.title, *_wrapped("", chapter.purpose), ""]
        for clause in clauses:
            state = f" [switched off: {clause.off}]" if clause.off else ""
            lines += textwrap.wrap(
                f"{clause.id:<{wide}}  up to {gravest(clause):<8}  {clause.title}{state}",
                WIDTH, initial_indent="  ", subsequent_indent=" " * (wide + 20), drop_whitespace=True,
            )  # fmt: skip
            lines += _wrapped("wants", ", ".join(clause.needs) or "nothing in particular", indent=6, hang=7)
            lines += _wrapped("uses", ", ".join(clause.uses), indent=6, hang=10)
        lines.append("")
    lines += ["Parameters, by the number of clauses that need them", ""]
    wanted: dict[str, list[str]] = {}
    for clause in book.clauses.values():
        for name in clause.needs if clause.off is None else ():
            wanted.setdefault(name, []).append(clause.id)
    for name, clauses_of in sorted(wanted.items(), key=lambda item: (-len(item[1]), item[0])):
        lines += _wrapped(f"{name} ({len(clauses_of)})", ", ".join(clauses_of), indent=2)
    return "\n".join([*lines, ""])


def parameter_text(name: str) -> str:
    """A parameter with its unit, for example ``speed_max [r/min]``."""
    unit = parameter(name).unit
    return f"{name} [{unit}]" if unit not in ("", "1") else name


def template_text(text: str) -> str:
    """A message or remedy with what is filled in for each row in square brackets."""

    def shown(match: re.Match[str]) -> str:
        return f"[{words_of(match[1])}]" + (f" to [{words_of(match[2])}]" if match[2] else "")

    return PLACEHOLDER.sub(shown, text)


def clause_text(book: Rulebook, name: str) -> str:
    """One clause for the terminal, with everything that the handbook says of it but its drawing."""
    clause = book.clauses[name]
    chapter = next(c.title for c in book.chapters if c.key == clause.chapter)
    lines = [
        f"{clause.id}: {clause.title}",
        f"rulebook {book.name} {book.version}, {chapter}; about each {clause.level}",
    ]
    lines.append("")
    if clause.off:
        lines += _wrapped("Switched off", clause.off)
    for entry in book.loosened:
        if entry.clause == name and entry.what != "switched off":
            lines += _wrapped(f"Loosened by {entry.layer}", f"{entry.what} ({entry.reason})")
    if name in book.reasons and not clause.off:
        lines += _wrapped("Changed or added, because", book.reasons[name])
    lines += _wrapped("Question", clause.question) + _wrapped("Arithmetic", clause.arithmetic)
    lines += _wrapped("Measure", clause.measure) + _wrapped("Severity", steps_text(clause))
    lines += _wrapped("Must be judged", gate_text(clause))
    lines += _wrapped("Needs", ", ".join(map(parameter_text, clause.needs)) or "nothing in particular")
    lines += _wrapped("Also uses", ", ".join(map(parameter_text, clause.uses)))
    lines += _wrapped("Why it matters", clause.consequence) + _wrapped("What to change", template_text(clause.remedy))
    if clause.limits:
        lines += ["", "Limits"]
        for key, limit in clause.limits.items():
            text = f"{key} = {limit_text(limit.value, limit.unit)} ({origin_text(limit)}) {limit.note}"
            lines += _wrapped("", text.rstrip(), indent=2)
    for key, table in clause.tables.items():
        lines += ["", f"Table {key} ({table.file})"]
        widths = [max(len(str(r[i])) for r in (table.columns, *table.rows)) for i in range(len(table.columns))]
        for row in (table.columns, *table.rows):
            lines.append("  " + "  ".join(f"{c:<{min(w, 40)}.40}" for c, w in zip(row, widths, strict=True)).rstrip())
    cases = run_cases(book, name)
    if cases:
        lines += ["", "Worked cases"]
        for case in cases:
            verdict = {"met": "met. ", "finding": f"finding ({case.record.severity}). "}.get(case.record.outcome, "")
            lines += _wrapped(case.kind, f"{case.title}: {verdict}{case.record.message}", indent=2)
            for values in case.stations:
                stated = ", ".join(f"{key} {text}" for key, text in values.items())
                lines += _wrapped("", stated, indent=8, hang=2)
            for problem in case.problems:
                lines += _wrapped("", problem, indent=8, hang=2)
    lines += ["", "Sources"] if sources_of(clause) else []
    for key in sources_of(clause):
        if key in book.sources:
            source = book.sources[key]
            lines += _wrapped("", ". ".join(filter(None, (f"{key}: {_titled(source)}", source.note))), indent=2)
        else:
            lines += _wrapped("", key, indent=2)
    return "\n".join(lines) + "\n"


def short_text(book: Rulebook, name: str) -> str:
    """One clause in a dozen lines: what it asks, from where on, what it wants, why, what to change."""
    clause = book.clauses[name]
    lines = [f"{clause.id}: {clause.title}", ""]
    if clause.off:
        lines += _wrapped("Switched off", clause.off)
    lines += _wrapped("Question", clause.question) + _wrapped("Measure", clause.measure)
    lines += _wrapped("Severity", steps_text(clause)) + _wrapped("Must be judged", gate_text(clause))
    lines += _wrapped("Needs", ", ".join(map(parameter_text, clause.needs)) or "nothing in particular")
    lines += _wrapped("Why it matters", clause.consequence) + _wrapped("What to change", template_text(clause.remedy))
    lines += _wrapped("Sources", "; ".join(sources_of(clause)))
    held = f"{len(clause.limits)} limits, {len(clause.tables)} tables and the worked cases"
    return "\n".join([*lines, "", f"{held}: ringseat rulebook show {name} --full", ""])


def _titled(source: Any) -> str:
    return f"{source.title}, {source.edition}" if source.edition else source.title


def sources_of(clause: Clause) -> tuple[str, ...]:
    """Every source that a clause names: its own, then those of its limits and tables, each once."""
    named = [*clause.sources, *(limit.source for limit in clause.limits.values())]
    for table in clause.tables.values():
        column = table.columns.index("source")
        named += [row[column] for row in table.rows]
    return tuple(dict.fromkeys(key for names in named for key in names.split("; ")))


def difference_text(old: Rulebook, new: Rulebook) -> str:
    """What changed from one rulebook to another, for the terminal."""
    lines = [f"from {old.name} {old.version} to {new.name} {new.version}"]
    if new.reason and new.reason != old.reason:
        lines += _wrapped("reason", new.reason)
    lines.append("")
    found = list(differences(old, new))
    if not found:
        return "\n".join([*lines, "No clause, limit, step or text differs.", ""])
    for name in dict.fromkeys(name for name, _ in found):
        lines.append(name)
        for line in (line for clause, line in found if clause == name):
            lines += _wrapped("", line, indent=2)
        reason = new.reasons.get(name)
        if reason and reason != old.reasons.get(name):
            lines += _wrapped("reason", reason, indent=2)
        lines.append("")
    return "\n".join(lines)
