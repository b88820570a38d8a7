"""One call of ``ringseat review``: which tables, in which order, which reports, which exit status."""

import datetime
import os
import sys
from collections.abc import Callable, Iterable, Sequence
from pathlib import Path
from typing import Any

import click

from linter.model.findings import ReviewResult
from linter.reading.files.bounds import within_bounds
from linter.report.writing import write_file
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook, RulebookError

TABLE_SUFFIXES = (".xlsx", ".xlsm", ".csv", ".tsv", ".txt", ".json", ".qif", ".xml")
#: What the program itself writes is no table, where it stands in a folder to review.
OWN_SUFFIXES = (".result.json", ".schema.json", ".junit.xml", ".findings.xlsx", "comparison.json")
OPEN, CLOSED, NOT_DONE = 0, 1, 2


def find_tables(paths: Iterable[Path]) -> tuple[list[Path], list[str]]:
    """Tables named, and those in folders named, each once and in a stable order; and complaints about the rest.

    In folders hidden files, lock files and what the program itself wrote are left out.
    """
    found: dict[Path, None] = {}
    complaints = []
    for path in paths:
        if path.is_dir():
            inside = sorted(
                p for p in path.rglob("*")
                if p.suffix.lower() in TABLE_SUFFIXES and p.is_file() and not p.name.startswith((".", "~$"))
                and not p.name.endswith(OWN_SUFFIXES)
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
    """Report name of each table, no two the same on any file system.

    It is the table's stem; where two tables share one, the path below the folder they share, in one word; and with a
    number behind it where even that is taken. ``index`` stays free for the page over all tables.
    """
    stems: dict[str, list[Path]] = {}
    for table in sorted(tables):
        stems.setdefault(table.stem.casefold(), []).append(table)
    wanted = {}
    for stem, group in stems.items():
        whole = {table: Path(os.path.abspath(table)) for table in group}
        shared = Path(os.path.commonpath([path.parent for path in whole.values()]))
        for table, path in whole.items():
            alone = len(group) == 1 and stem != "index"
            wanted[table] = table.stem if alone else "-".join(path.relative_to(shared).parts)
    names: dict[Path, str] = {}
    taken = {"index"}
    for table in sorted(wanted):
        name, number = wanted[table], 1
        while name.casefold() in taken:
            number += 1
            name = f"{wanted[table]}-{number}"
        taken.add(name.casefold())
        names[table] = name
    return names


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
    full: bool = False,
    today: datetime.date | None = None,
) -> int:
    """Review every table and write its reports; see the command's options.

    ``today`` is the day that concessions are held against; the system's where absent.

    Returns
    -------
    int
        Exit status: 0 every gate is open, 1 one is closed, 2 something could not be carried out (the reason is on
        standard error; every readable table was reviewed all the same).
    """
    from linter.reading import InputError, read_table
    from linter.report.index import Listed, Unread, index_text
    from linter.review.changes import with_changes
    from linter.review.records import review_reading

    status = OPEN
    found, complaints = find_tables(tables)
    for line in complaints:
        _complain(line)
        status = NOT_DONE
    try:
        book = load(rulebook)
        mapping = _mapping(names)
        accepted = _concessions(concessions, today)
    except (RulebookError, ValueError, OSError) as error:
        _complain(str(error))
        return NOT_DONE
    results: list[tuple[str, ReviewResult]] = []
    unread: list[tuple[str, str]] = []
    report_name = report_names(found)
    progress = sys.stderr.isatty() and len(found) > 1
    for number, table in enumerate(found, 1):
        if progress:
            click.echo(f"\r{number}/{len(found)} {_safe(table.name):.60}\x1b[K", nl=False, err=True)
        try:
            with within_bounds(shown(table)):
                reading = read_table(table, mapping, shown_as=shown(table))
            result = review_reading(reading, book, gate=gate, complete=complete, full=full)
            if accepted is not None:
                result = accepted(result)
            result = with_changes(result, reading.stations, book)
        except InputError as error:
            reason = str(error)
        except Exception as error:
            reason = f"{shown(table)}: could not be reviewed, a fault of the program ({type(error).__name__}: {error})"
        else:
            reason = ""
        if reason:
            _complain(reason)
            unread.append((shown(table), reason))
            status = NOT_DONE
            continue
        for kind in write:
            try:
                path, content = _written(kind, result, book, out / report_name[table], date, table)
                write_file(path, content, inputs=found)
            except OSError as error:
                _complain(f"{shown(table)}: the report could not be written: {error}")
                status = NOT_DONE
            except Exception as error:
                _complain(f"{shown(table)}: no {kind} report, a fault of the program ({type(error).__name__}: {error})")
                status = NOT_DONE
        results.append((report_name[table], result))
        if result.gate == "closed":
            status = max(status, CLOSED)
        for failure in result.failures:
            _complain(f"{shown(table)}: {failure}")
            status = NOT_DONE
    if progress:
        click.echo("\r\x1b[K", nl=False, err=True)
    for _, result in results:
        click.echo(_safe(summary_line(result)))
    if len(found) > 1 and "html" in write:
        listed = [Listed(result, f"{name}.html") for name, result in results]
        try:
            page = index_text(listed, [Unread(*entry) for entry in unread], date=date)
            write_file(out / "index.html", page.encode(), inputs=found)
        except OSError as error:
            _complain(f"the index page could not be written: {error}")
            status = NOT_DONE
    if results:
        click.echo(f"reports: {_safe(str(out))}")
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
    from linter.reading.words.names import Names

    return Names.load(path)


def _concessions(path: Path | None, today: datetime.date | None) -> Callable[[ReviewResult], ReviewResult] | None:
    if path is None:
        return None
    from linter.review.concessions import apply, load_concessions

    accepted = load_concessions(path)
    return lambda result: apply(result, accepted, today)


def _safe(text: str) -> str:
    """Text for a terminal: control and direction signs are shown, not obeyed."""
    return "".join(c if c.isprintable() or c in "\n\u00a0" else f"\\x{ord(c):02x}" for c in text)


def _complain(text: str) -> None:
    click.echo(_safe(f"ringseat: {text}"), err=True)


def propose_names(table: Path, names: Path | None) -> str:
    """The text of a proposed name mapping for one table."""
    from linter.reading import InputError, read_names
    from linter.reading.words.names import Names
    from linter.reading.words.propose import proposal_toml, propose

    try:
        known = Names.built_in() if names is None else Names.load(names)
        with within_bounds(shown(table)):
            words = read_names(table, known, shown_as=shown(table))
    except (InputError, ValueError) as error:
        _complain(str(error))
        raise SystemExit(NOT_DONE) from None
    return proposal_toml(propose((word.text for word in words), known), shown(table))
