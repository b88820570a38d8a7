"""The kinds of report: what each is called, how its file name ends, and who writes it."""

from collections.abc import Callable, Iterable, Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from attrs import frozen

if TYPE_CHECKING:
    from linter.model.findings import ReviewResult
    from linter.report.repaired.files import Replaced
    from linter.rulebook.model import Rulebook


#: Languages that a report can be written in; :mod:`linter.report.language` speaks them.
LANGUAGES = ("en", "de", "ja", "zh")


@frozen
class Job:
    """What a writer writes from: the result, the rulebook and the table it came from, and a date to print.

    ``passes``: SARIF and JUnit have what is met and not applicable too. ``brief``: HTML ends after what is not known.
    ``fixes``: gives the pieces of the file that each line of the plan replaces, for SARIF.
    """

    result: "ReviewResult"
    rulebook: "Rulebook"
    table: Path
    date: str | None = None
    passes: bool = False
    brief: bool = False
    fixes: "Callable[[], Mapping[int, tuple[Replaced, ...]]] | None" = None


@frozen
class Writer:
    """One kind of report: the ending of its file, its content, and the bytes of memory that an assessment takes in it.

    The memory was measured on tables of 200 to 1 000 stations; it is there to refuse a table before it is begun.
    """

    suffix: str
    content: Callable[[Job], bytes | Iterable[bytes]]
    memory: int


def _html(job: Job) -> bytes:
    from linter.report.html import html_text

    return html_text(job.result, job.rulebook, date=job.date, brief=job.brief).encode()


def _json(job: Job) -> Iterable[bytes]:
    from linter.report.result_json import result_pieces

    return result_pieces(job.result)


def _sarif(job: Job) -> bytes:
    from linter.report.sarif import sarif_text

    fixes = job.fixes() if job.fixes is not None and job.result.plan else {}
    return sarif_text(job.result, job.rulebook, passes=job.passes, fixes=fixes).encode()


def _junit(job: Job) -> bytes:
    from linter.report.junit import junit_text

    return junit_text(job.result, passes=job.passes).encode()


def _xlsx(job: Job) -> bytes:
    from linter.report.marked_workbook import marked_workbook

    return marked_workbook(job.result, job.table)


WRITERS = {
    "html": Writer(".html", _html, 1000),
    "json": Writer(".result.json", _json, 500),
    "sarif": Writer(".sarif", _sarif, 14_000),
    "junit": Writer(".junit.xml", _junit, 1000),
    "xlsx": Writer(".findings.xlsx", _xlsx, 1000),
}
