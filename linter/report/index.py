"""One page over several reviewed tables."""

from collections.abc import Iterable, Sequence
from urllib.parse import quote

from attrs import frozen

from linter.model.findings import SEVERITIES, ReviewResult
from linter.report.html import environment


@frozen
class Listed:
    """A table that was reviewed, and the file name of its report beside the index (empty where none was written)."""

    result: ReviewResult
    report: str

    @property
    def link(self) -> str:
        """Address of the report, relative to the index."""
        return f"./{quote(self.report, safe='', errors='replace')}"

    @property
    def drawings(self) -> tuple[str, ...]:
        """Drawings with their revisions, each once."""
        named = (
            f"{m.drawing_number or 'not stated'}, {m.drawing_revision or 'not stated'}" for m in self.result.machines
        )
        return tuple(dict.fromkeys(named))


@frozen
class Unread:
    """A table that could not be read, and why."""

    file: str
    reason: str


@frozen
class Frequent:
    """A clause with its findings over all tables."""

    clause: str
    title: str
    severity: str
    count: int
    tables: int


def _frequent(listed: Iterable[Listed]) -> tuple[Frequent, ...]:
    counts: dict[str, list[tuple[str, str, int]]] = {}
    for number, entry in enumerate(listed):
        for item in entry.result.assessments:
            if item.outcome == "finding" and item.severity is not None:
                counts.setdefault(item.clause, []).append((item.title, item.severity, number))
    rows = [
        Frequent(
            clause,
            found[0][0],
            min((severity for _, severity, _ in found), key=SEVERITIES.index),
            len(found),
            len({table for _, _, table in found}),
        )
        for clause, found in counts.items()
    ]
    return tuple(sorted(rows, key=lambda r: (SEVERITIES.index(r.severity), -r.count, r.clause)))


def index_text(
    listed: Sequence[Listed], unread: Sequence[Unread] = (), passed: Sequence[Unread] = (), *, date: str | None = None
) -> str:
    """The page that stands over the reports of one call.

    Parameters
    ----------
    listed : sequence of Listed
        Reviewed tables in any order; the page has them by file name.
    unread : sequence of Unread
        Tables that could not be read.
    passed : sequence of Unread
        What was found in a folder and passed over.
    date : str, optional
        A date to print.

    Returns
    -------
    str
        HTML that can be encoded as UTF-8, the same for the same tables in any order.
    """
    tables = sorted(listed, key=lambda entry: (entry.result.input.file, entry.report))
    template = environment().get_template("index.html.j2")
    return template.render(
        listed=tables,
        unread=sorted(unread, key=lambda entry: (entry.file, entry.reason)),
        frequent=_frequent(tables),
        passed=sorted(passed, key=lambda entry: (entry.file, entry.reason)),
        closed=sum(entry.result.gate == "closed" for entry in tables),
        undecided=sum(entry.result.gate == "undecided" for entry in tables),
        date=date,
    )
