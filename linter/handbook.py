"""The rulebook as text: the list, one clause in the terminal, what changed between two versions."""

import re
import textwrap
import tomllib
from collections.abc import Iterator, Mapping
from difflib import SequenceMatcher
from functools import cache
from typing import Any

from attrs import evolve, frozen

from linter.findings import Assessment, Used
from linter.packaged import data_folder
from linter.places import Place
from linter.rulebook import Clause, Limit, Rulebook, Table, load, released_versions
from linter.rulebook_layers import ORIGIN, is_looser
from linter.stations import Problem, Stations, stations_from_rows
from linter.vocabulary import parameter
from linter.wording import limit_text, number_text, value_text, words_of

WIDTH = 100
_PLACEHOLDER = re.compile(r"\{([A-Za-z_0-9]+)\}")
PARTS = ("title", "level", "question", "check", "arithmetic", "measure", "needs", "uses", "consequence", "remedy")


@frozen
class WorkedCase:
    """A worked case of a clause, and what the rulebook says of it.

    Attributes
    ----------
    title, kind : str
        What it shows; ``clear``, ``limit``, ``beyond``, ``not assessed`` or ``not applicable``.
    stations : tuple of dict
        The stated values as a report shows them, one dict by parameter per position.
    problems : tuple of str
        What stood in the table and could not be used as it stands.
    record : Assessment
        The verdict under the rulebook that the case is shown with; its places hold the stated values.
    """

    title: str
    kind: str
    stations: tuple[Mapping[str, str], ...]
    problems: tuple[str, ...]
    record: Assessment


def gravest(clause: Clause) -> str:
    """Gravest severity that a clause can reach."""
    return clause.steps[-1].severity


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
            lines += _wrapped("looks at", ", ".join(clause.uses), indent=6, hang=10)
        lines.append("")
    lines += ["Parameters, by how many clauses want them", ""]
    wanted: dict[str, list[str]] = {}
    for clause in book.clauses.values():
        for name in clause.needs if clause.off is None else ():
            wanted.setdefault(name, []).append(clause.id)
    for name, clauses_of in sorted(wanted.items(), key=lambda item: (-len(item[1]), item[0])):
        lines += _wrapped(f"{name} ({len(clauses_of)})", ", ".join(clauses_of), indent=2)
    return "\n".join([*lines, ""])


def steps_text(clause: Clause) -> str:
    """The severity steps in one line."""
    return "; ".join(f"above {number_text(step.above)}: {step.severity}" for step in clause.steps)


def origin_text(limit: Limit) -> str:
    """Where a limit comes from: its sources, and how it was obtained where the source does not say so already."""
    return limit.source if limit.source == limit.provenance else f"{limit.source}, {limit.provenance}"


def parameter_text(name: str) -> str:
    """A parameter with its unit, for example ``speed_max [r/min]``."""
    unit = parameter(name).unit
    return f"{name} [{unit}]" if unit not in ("", "1") else name


def template_text(text: str) -> str:
    """A message or remedy with what is filled in for each row in square brackets."""
    return _PLACEHOLDER.sub(lambda match: f"[{words_of(match[1])}]", text)


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
    lines += _wrapped("Wants", ", ".join(map(parameter_text, clause.needs)) or "nothing in particular")
    lines += _wrapped("Also looks at", ", ".join(map(parameter_text, clause.uses)))
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


def _titled(source: Any) -> str:
    return f"{source.title}, {source.edition}" if source.edition else source.title


def sources_of(clause: Clause) -> tuple[str, ...]:
    """Every source that a clause names: its own, then those of its limits and tables, each once."""
    named = [*clause.sources, *(limit.source for limit in clause.limits.values())]
    for table in clause.tables.values():
        column = table.columns.index("source")
        named += [row[column] for row in table.rows]
    return tuple(dict.fromkeys(key for names in named for key in names.split("; ")))


@cache
def _shipped_cases(version: str) -> tuple[dict[str, Any], ...]:
    folder = data_folder("ruleset") / version / "cases"
    return tuple(
        case
        for path in sorted(folder.glob("*.toml"))
        for case in tomllib.loads(path.read_text(encoding="utf-8"))["cases"]
    )


def worked_cases(book: Rulebook, clause: str) -> list[dict[str, Any]]:
    """Worked cases of a clause as they are written: those of the newest version in the book that states any for it."""
    for layer in book.layers:
        if layer.version in released_versions() and load(layer.version).layers[0] == layer:
            cases = [case for case in _shipped_cases(layer.version) if case["clause"] == clause]
            if cases:
                return cases
    return []


def case_stations(case: Mapping[str, Any]) -> Stations:
    """The stations of a worked case, with the cells that it states as not usable (``problems``)."""
    problems = tuple(
        Problem(
            kind=p["kind"],
            row=p["row"],
            parameter=p["parameter"],
            place=Place(p["file"], None, p["cell"]),
            read=p["read"],
            expected=p["expected"],
            message=p["message"],
            code=p["code"],
        )
        for p in case.get("problems", ())
    )
    return evolve(stations_from_rows(case["stations"]), problems=problems)


def run_cases(book: Rulebook, clause: str) -> list[WorkedCase]:
    """Worked cases of a clause with the verdicts that this rulebook gives them; none for a clause switched off.

    Parameters
    ----------
    book : Rulebook
        Its own verdicts are shown, so that a layer that changes a limit shows what comes of it.
    clause : str
        Id of the clause.
    """
    from linter.review import assess, assessments

    alone = evolve(book, clauses={clause: book.clauses[clause]})
    found = []
    for case in worked_cases(book, clause) if book.clauses[clause].off is None else ():
        stations = case_stations(case)
        stated = tuple(
            {name: value_text(stations, name, row) for name in values if name not in ("machine", "station")}
            for row, values in enumerate(case["stations"])
        )
        record = next(r for r in assessments(assess(stations, alone)) if r.station in (None, case.get("station", "A")))
        place = Place("worked case", None, None)
        used = tuple(Used(name, place, text) for values in stated for name, text in values.items())
        problems = tuple(problem.message for problem in stations.problems)
        found.append(WorkedCase(case["title"], case["kind"], stated, problems, evolve(record, places=used)))
    return found


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
            yield f"limit {key} is new: {limit_text(after.value, after.unit)} ({origin_text(after)})"
        elif after is None:
            yield f"limit {key} is gone"
        elif before is not None and before != after:
            yield from _limit_differences(key, before, after)
    for key in [*old.tables, *(k for k in new.tables if k not in old.tables)]:
        if key not in old.tables or key not in new.tables:
            yield f"table {key} is {'gone' if key in old.tables else 'new'}"
            continue
        yield from _table_differences(key, old.tables[key], new.tables[key])
    if old.steps != new.steps:
        yield f"severity steps: {steps_text(old)} -> {steps_text(new)}"
    for part in (
        "title",
        "level",
        "question",
        "check",
        "arithmetic",
        "measure",
        "needs",
        "uses",
        "consequence",
        "remedy",
    ):
        if getattr(old, part) != getattr(new, part):
            yield f"{words_of(part)}: {_plain(getattr(old, part))} -> {_plain(getattr(new, part))}"
    for key in sorted({*old.messages, *new.messages}):
        if old.messages.get(key) != new.messages.get(key):
            yield f"message {key}: {old.messages.get(key, '(none)')} -> {new.messages.get(key, '(none)')}"
    for key in dict.fromkeys((*old.sources, *new.sources)):
        if (key in old.sources) != (key in new.sources):
            yield f"source {key} is {'gone' if key in old.sources else 'new'}"


def _limit_differences(key: str, before: Limit, after: Limit) -> Iterator[str]:
    if (before.value, before.unit) != (after.value, after.unit):
        was, now = limit_text(before.value, before.unit), limit_text(after.value, after.unit)
        yield f"limit {key}: {was} -> {now}{_way(before.value, after.value, before.looser)}"
    if origin_text(before) != origin_text(after):
        yield f"limit {key} rests on: {origin_text(before)} -> {origin_text(after)}"
    if before.note != after.note:
        yield f"limit {key}, note: {before.note or '(none)'} -> {after.note or '(none)'}"


def _table_differences(key: str, old: Table, new: Table) -> Iterator[str]:
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
    return ", ".join(value) if isinstance(value, tuple) else str(value)


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
