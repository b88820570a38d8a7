"""One page over several reviewed tables."""

from collections.abc import Iterable, Mapping, Sequence
from urllib.parse import quote

from attrs import frozen

from linter.model.findings import SEVERITIES, ReviewResult
from linter.report.html import environment
from linter.report.language import speaking


@frozen
class Listed:
    """What the page tells of a table that was reviewed.

    ``report`` is the file name of its report beside the index (empty where none was written), ``drawings`` its drawings
    with their revisions, ``found`` the title and gravest severity of each clause with findings, and how many.
    """

    file: str
    report: str
    gate: str
    severities: Mapping[str, int]
    outcomes: Mapping[str, int]
    rulebook: str
    drawings: tuple[str, ...]
    found: Mapping[str, tuple[str, str, int]]

    @classmethod
    def of(cls, result: ReviewResult, report: str) -> "Listed":
        """What the page tells of a result; nothing of it is kept besides."""
        named = (f"{m.drawing_number or 'not stated'}, {m.drawing_revision or 'not stated'}" for m in result.machines)
        found: dict[str, tuple[str, str, int]] = {}
        for item in result.to_act_on:
            if item.outcome == "finding" and item.severity is not None:
                title, severity, count = found.get(item.clause, (item.title, item.severity, 0))
                found[item.clause] = title, min(severity, item.severity, key=SEVERITIES.index), count + 1
        return cls(
            file=result.input.file,
            report=report,
            gate=result.gate,
            severities=result.severities,
            outcomes=result.outcomes,
            rulebook=f"{result.rulebook.name} {result.rulebook.version}",
            drawings=tuple(dict.fromkeys(named)),
            found=found,
        )

    @property
    def link(self) -> str:
        """Address of the report, relative to the index."""
        return f"./{quote(self.report, safe='', errors='replace')}"


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
    for entry in listed:
        for clause, told in entry.found.items():
            counts.setdefault(clause, []).append(told)
    rows = [
        Frequent(
            clause,
            found[0][0],
            min((severity for _, severity, _ in found), key=SEVERITIES.index),
            sum(count for _, _, count in found),
            len(found),
        )
        for clause, found in counts.items()
    ]
    return tuple(sorted(rows, key=lambda r: (SEVERITIES.index(r.severity), -r.count, r.clause)))


def index_text(
    listed: Sequence[Listed], unread: Sequence[Unread] = (), passed: Sequence[Unread] = (), *, date: str | None = None,
    language: str = "en",
) -> str:  # fmt: skip
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
    language : str
        A key of :data:`linter.report.language.LANGUAGES`.

    Returns
    -------
    str
        HTML that can be encoded as UTF-8, the same for the same tables in any order.
    """
    tables = sorted(listed, key=lambda entry: (entry.file, entry.report))
    page = environment().get_template("index.html.j2")
    content = {
        "listed": tables,
        "unread": sorted(unread, key=lambda entry: (entry.file, entry.reason)),
        "frequent": _frequent(tables),
        "passed": sorted(passed, key=lambda entry: (entry.file, entry.reason)),
        "closed": sum(entry.gate == "closed" for entry in tables),
        "undecided": sum(entry.gate == "undecided" for entry in tables),
        "date": date,
    }
    own = {*(entry.file for entry in tables), *(entry.file for entry in (*unread, *passed))}
    with speaking(language, own):
        return page.render(content)
