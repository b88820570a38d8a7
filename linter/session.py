"""One call of ``ringseat review``: which tables, in which order, which reports, which exit status."""

import sys
from collections.abc import Callable, Iterable, Sequence
from pathlib import Path
from typing import Any

import click

from linter.findings import ReviewResult
from linter.report.writing import write_file
from linter.rulebook import Rulebook, RulebookError, load

TABLE_SUFFIXES = (".xlsx", ".xlsm", ".csv", ".tsv", ".txt", ".json", ".qif", ".xml")
OPEN, CLOSED, NOT_DONE = 0, 1, 2


def find_tables(paths: Iterable[Path]) -> tuple[list[Path], list[str]]:
    """Tables named, and those in folders named, each once and in a stable order; and complaints about the rest."""
    found: dict[Path, None] = {}
    complaints = []
    for path in paths:
        if path.is_dir():
            inside = sorted(
                p for p in path.rglob("*")
                if p.suffix.lower() in TABLE_SUFFIXES and p.is_file() and not p.name.startswith((".", "~$"))
                and not p.name.endswith((".result.json", ".schema.json"))
            )  # fmt: skip
            if not inside:
                complaints.append(f"{shown(path)}: the folder has no table ({', '.join(TABLE_SUFFIXES)})")
            found.update(dict.fromkeys(inside))
        elif path.exists():
            found[path] = None
        else:
            complaints.append(f"{shown(path)}: there is no such file or folder")
    return sorted(found), complaints


def shown(path: Path) -> str:
    """A file as reports name it: as given, but only its name where an absolute path was given."""
    return path.name if path.is_absolute() else path.as_posix()


def report_names(tables: Sequence[Path]) -> dict[Path, str]:
    """Report name of each table: its stem, or its whole path in one word where two tables share a stem."""
    stems: dict[str, list[Path]] = {}
    for table in tables:
        stems.setdefault(table.stem, []).append(table)
    return {
        table: stem if len(group) == 1 else "-".join(part for part in table.parts if part not in ("/", "..", "."))
        for stem, group in stems.items()
        for table in group
    }


def summary_line(result: ReviewResult) -> str:
    """One line for the terminal: verdict, counts of findings, what was not assessed."""
    counts = [f"{number} {severity}" for severity, number in result.severities.items() if number]
    words = ", ".join(counts) if counts else "no findings"
    outcomes = result.outcomes
    extra = "".join(f", {outcomes[o]} {o}" for o in ("conceded", "not assessed") if outcomes[o])
    return f"{result.input.file}: gate {result.gate} at {result.gate_severity}: {words}, {outcomes['met']} met{extra}"


def review_tables(
    *,
    tables: Sequence[Path],
    rulebook: str | None,
    names: Path | None,
    concessions: Path | None,
    out: Path,
    write: Sequence[str],
    gate: str,
    complete: bool,
    date: str | None,
) -> int:
    """Review every table and write its reports; see the command's options.

    Returns
    -------
    int
        Exit status: 0 every gate is open, 1 one is closed, 2 something could not be carried out (the reason is on
        standard error; every readable table was reviewed all the same).
    """
    from linter.reading import InputError, read_table
    from linter.review import review_reading

    status = OPEN
    found, complaints = find_tables(tables)
    for line in complaints:
        _complain(line)
        status = NOT_DONE
    try:
        book = load(rulebook)
        mapping = _mapping(names)
        accepted = _concessions(concessions)
    except (RulebookError, ValueError, OSError) as error:
        _complain(str(error))
        return NOT_DONE
    results: list[tuple[str, ReviewResult]] = []
    report_name = report_names(found)
    for number, table in enumerate(found, 1):
        if sys.stderr.isatty() and len(found) > 1:
            click.echo(f"\r{number}/{len(found)} {table.name:.60}\x1b[K", nl=False, err=True)
        try:
            reading = read_table(table, mapping, shown_as=shown(table))
        except InputError as error:
            _complain(str(error))
            status = NOT_DONE
            continue
        result = review_reading(reading, book, gate=gate, complete=complete)
        if accepted is not None:
            result = accepted(result)
        if "html" in write or "json" in write or "xlsx" in write:
            from linter.clearing import with_changes

            result = with_changes(result, reading.stations, book)
        try:
            for kind in write:
                path, content = _written(kind, result, book, out / report_name[table], date, table)
                write_file(path, content, inputs=(table,))
        except OSError as error:
            _complain(f"{shown(table)}: the report could not be written: {error}")
            status = NOT_DONE
        results.append((report_name[table], result))
        if result.gate == "closed":
            status = max(status, CLOSED)
        if result.failures:
            status = NOT_DONE
            for failure in result.failures:
                _complain(f"{shown(table)}: {failure}")
    if sys.stderr.isatty() and len(found) > 1:
        click.echo("\r\x1b[K", nl=False, err=True)
    for _, result in results:
        click.echo(_safe(summary_line(result)))
    if len(results) > 1 and "html" in write:
        from linter.report.index import index_text

        write_file(out / "index.html", index_text(results, date=date).encode(), inputs=found)
    if results:
        click.echo(f"reports: {out}")
    return status


def _written(
    kind: str, result: ReviewResult, book: Rulebook, stem: Path, date: str | None, table: Path
) -> tuple[Path, bytes]:
    suffix: str
    if kind == "json":
        from linter.report.result_json import result_text

        suffix, content = ".result.json", result_text(result).encode()
    elif kind == "html":
        from linter.report.html import html_text

        suffix, content = ".html", html_text(result, book, date=date).encode()
    elif kind == "sarif":
        from linter.report.sarif import sarif_text

        suffix, content = ".sarif", sarif_text(result, book).encode()
    elif kind == "junit":
        from linter.report.junit import junit_text

        suffix, content = ".junit.xml", junit_text(result).encode()
    else:
        from linter.report.marked_workbook import marked_workbook

        suffix, content = ".findings.xlsx", marked_workbook(result, table)
    return stem.parent / (stem.name + suffix), content


def _mapping(path: Path | None) -> Any:
    if path is None:
        return None
    from linter.reading.names import Names

    return Names.load(path)


def _concessions(path: Path | None) -> Callable[[ReviewResult], ReviewResult] | None:
    if path is None:
        return None
    from linter.concessions import apply, load_concessions

    accepted = load_concessions(path)
    return lambda result: apply(result, accepted)


def _safe(text: str) -> str:
    """Text for a terminal: control and direction signs are shown, not obeyed."""
    return "".join(c if c.isprintable() or c in "\n\u00a0" else f"\\x{ord(c):02x}" for c in text)


def _complain(text: str) -> None:
    click.echo(_safe(f"ringseat: {text}"), err=True)


def propose_names(table: Path, names: Path | None) -> str:
    """The text of a proposed name mapping for one table."""
    from linter.reading import InputError, read_names
    from linter.reading.names import Names
    from linter.reading.propose import proposal_toml, propose

    known = Names.built_in() if names is None else Names.load(names)
    try:
        words = read_names(table)
    except InputError as error:
        _complain(str(error))
        raise SystemExit(NOT_DONE) from None
    return proposal_toml(propose(words, known))
