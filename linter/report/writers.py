"""The kinds of report: what each is called, how its file name ends, and who writes it."""

from collections.abc import Callable, Iterable
from pathlib import Path
from typing import TYPE_CHECKING

from attrs import frozen

if TYPE_CHECKING:
    from linter.model.findings import ReviewResult
    from linter.rulebook.model import Rulebook


@frozen
class Job:
    """What a writer writes from: the result, the rulebook and the table it came from, and a date to print."""

    result: "ReviewResult"
    rulebook: "Rulebook"
    table: Path
    date: str | None = None


@frozen
class Writer:
    """One kind of report: the ending of its file, and its content."""

    suffix: str
    content: Callable[[Job], bytes | Iterable[bytes]]


def _html(job: Job) -> bytes:
    from linter.report.html import html_text

    return html_text(job.result, job.rulebook, date=job.date).encode()


def _json(job: Job) -> Iterable[bytes]:
    from linter.report.result_json import result_pieces

    return result_pieces(job.result)


def _sarif(job: Job) -> bytes:
    from linter.report.sarif import sarif_text

    return sarif_text(job.result, job.rulebook).encode()


def _junit(job: Job) -> bytes:
    from linter.report.junit import junit_text

    return junit_text(job.result).encode()


def _xlsx(job: Job) -> bytes:
    from linter.report.marked_workbook import marked_workbook

    return marked_workbook(job.result, job.table)


WRITERS = {
    "html": Writer(".html", _html),
    "json": Writer(".result.json", _json),
    "sarif": Writer(".sarif", _sarif),
    "junit": Writer(".junit.xml", _junit),
    "xlsx": Writer(".findings.xlsx", _xlsx),
}
