"""The public way in: one table or one pandas frame reviewed, with the verdict and frames of what was found."""

import os
import tempfile
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any

from attrs import evolve, field, frozen

from linter.model.findings import Assessment, ReviewResult
from linter.model.places import shown
from linter.reading import Reading, read_bearings, read_table
from linter.reading.words.names import Names
from linter.review.defaults import with_defaults
from linter.review.plan.cells import Movable
from linter.review.records import review_reading
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook

if TYPE_CHECKING:
    import pandas as pd


@frozen(slots=False, eq=False)
class Review:
    """One reviewed table.

    Attributes
    ----------
    result : ReviewResult
        Everything the reports are written from.
    reading : Reading
        The table as understood; ``reading.stations`` are its values as columns.
    rulebook : Rulebook
        What it was reviewed under.
    """

    result: ReviewResult
    reading: Reading = field(repr=False)
    rulebook: Rulebook = field(repr=False)
    _source: "_Source" = field(repr=False)

    @property
    def verdict(self) -> str:
        """The gate: ``open``, ``closed`` or ``undecided``."""
        return self.result.gate

    @cached_property
    def assessments(self) -> "pd.DataFrame":
        """Every clause at every station or machine, in the order of the result file.

        Columns: clause, title, machine, station (None for a clause about the machine), outcome, severity, observed,
        lower, upper (NaN where there is none), unit, message, remedy.
        """
        import pandas as pd

        return pd.DataFrame([_row(a) for a in self.result.assessments], columns=list(_row_names()))

    @cached_property
    def findings(self) -> "pd.DataFrame":
        """The rows of :attr:`assessments` that are findings, the gravest first, with ``clears_with`` in words."""
        import pandas as pd

        from linter.model.findings import SEVERITIES

        found = sorted(
            (a for a in self.result.to_act_on if a.outcome == "finding"),
            key=lambda a: SEVERITIES.index(str(a.severity)),
        )
        rows = [{**_row(a), "clears_with": "; ".join(change.text for change in a.clears_with)} for a in found]
        return pd.DataFrame(rows, columns=[*_row_names(), "clears_with"])

    @cached_property
    def plan(self) -> "pd.DataFrame":
        """The changes that together open the gate, or lower what closes it; empty where nothing is to change.

        Columns: line, machine, station (None for the whole machine), parameter, cell, before, after, reason.
        """
        import pandas as pd

        names = ("line", "machine", "station", "parameter", "cell", "before", "after", "reason")
        rows = [
            (p.line, p.machine, p.station, p.parameter, p.place.short() if p.place else "", p.before, p.after, p.reason)
            for p in self.result.plan
        ]
        return pd.DataFrame(rows, columns=list(names))

    def write(self, folder: str | os.PathLike[str], kinds: Iterable[str] = ("html", "json")) -> tuple[Path, ...]:
        """Write reports, the same as those of ``ringseat review``.

        Parameters
        ----------
        folder : path
            Where they go; made if need be. Each is named after the table (``DataFrame`` for a frame).
        kinds : iterable of str
            Any of ``html``, ``json``, ``sarif``, ``junit`` and ``xlsx``.

        Returns
        -------
        tuple of Path
            The files, in the order of ``kinds``.

        Raises
        ------
        ValueError
            For a word that is no kind of report.
        OSError
            If a file cannot be written, or would take the place of the table.
        """
        from linter.report.repaired.again import fixes_of, reads_as
        from linter.report.writers import WRITERS, Job
        from linter.report.writing import write_file

        wanted = [kinds] if isinstance(kinds, str) else list(kinds)
        if unknown := [kind for kind in wanted if kind not in WRITERS]:
            raise ValueError(f"{unknown[0]!r} is no kind of report; there are {', '.join(WRITERS)}")
        source, written = self._source, []
        with source.file() as table:

            def fixes() -> Any:
                read = reads_as(self.reading, table.suffix, source.names, source.bearings, self.rulebook)
                return fixes_of(table.read_bytes(), self.reading, self.result, read)

            for kind in wanted:
                path = Path(folder) / f"{Path(self.result.input.file).stem}{WRITERS[kind].suffix}"
                job = Job(self.result, self.rulebook, table, fixes=fixes)
                write_file(path, WRITERS[kind].content(job), inputs=(table,))
                written.append(path)
        return tuple(written)

    def _repr_html_(self) -> str:
        """What a notebook shows: the verdict, the plan, the findings."""
        from html import escape

        shown = self.findings[["severity", "title", "station", "message"]]
        parts = [f"<p><b>Gate {self.verdict}</b>: {escape(self.result.input.file)}</p>"]
        if len(self.plan):
            plan = self.plan[["cell", "station", "parameter", "before", "after"]]
            parts.append(plan.to_html(index=False, na_rep="", escape=True))
        return "".join([*parts, shown.to_html(index=False, na_rep="", escape=True) if len(shown) else ""])


@frozen(eq=False)
class _Source:
    """Where a review came from: a path, or the text that a frame was read as; how it was read."""

    table: Path | bytes
    names: Any
    bearings: Any

    @contextmanager
    def file(self) -> Iterator[Path]:
        """The table as a file, for as long as it is looked at."""
        if isinstance(self.table, Path):
            yield self.table
            return
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder) / "frame.csv"
            path.write_bytes(self.table)
            yield path


def _row_names() -> tuple[str, ...]:
    return (
        "clause", "title", "machine", "station", "outcome", "severity", "observed", "lower", "upper", "unit", "message",
        "remedy",
    )  # fmt: skip


def _row(item: Assessment) -> dict[str, Any]:
    row: dict[str, Any] = {name: getattr(item, name) for name in _row_names() if name != "unit"}
    quantities = [item.observed, item.lower, item.upper]
    for name, quantity in zip(("observed", "lower", "upper"), quantities, strict=True):
        row[name] = float("nan") if quantity is None else quantity.value
    row["unit"] = next((q.unit for q in quantities if q is not None), "")
    return row


def review_table(
    table: "str | os.PathLike[str] | pd.DataFrame",
    rulebook: str | os.PathLike[str] | Rulebook | None = None,
    names: str | os.PathLike[str] | Names | None = None,
    *,
    bearings: str | os.PathLike[str] | None = None,
    concessions: str | os.PathLike[str] | None = None,
    gate: str = "major",
    complete: bool = False,
    changes: bool = True,
    keep: Sequence[str] = (),
    free: Sequence[str] = (),
) -> Review:
    """Review one table of parameters.

    Parameters
    ----------
    table : path or pandas.DataFrame
        A file of any layout that is read, or a frame with the headings such a file would have (``bore_diameter``,
        ``Bore [mm]``); a frame is read like a text table with a decimal point, one row per station.
    rulebook : str, path or Rulebook, optional
        A released version, a folder, or one that is loaded; the newest release where absent.
    names : path or Names, optional
        Name mapping.
    bearings : path, optional
        A firm's list of bearings.
    concessions : path, optional
        Accepted deviations, held against today.
    gate : {"critical", "major", "minor", "remark"}
        Lowest severity that closes the gate.
    complete : bool
        Whether anything that is not assessed closes it too.
    changes : bool
        Whether a plan is looked for where a finding closes the gate, which runs the rulebook over many trials.
    keep, free : sequence of str
        Parameters that the plan leaves alone; decisions that it may change.

    Returns
    -------
    Review
        Verdict, findings and assessments.

    Raises
    ------
    InputError
        If the table cannot be reviewed; the text names file, sheet and cell.
    RulebookError
        If the rulebook cannot be used.
    ValueError
        For a name to keep or free that is no parameter; for a list of concessions that cannot be used.

    Examples
    --------
    >>> import pandas as pd
    >>> from linter import review_table
    >>> frame = pd.DataFrame({
    ...     "machine": ["fan", "fan"], "station": ["A", "B"], "bore_diameter": [4, 4], "outside_diameter": [13, 13],
    ...     "shaft_seat_diameter": ["4.5 k5", "4 k5"], "housing_seat_diameter": ["13 H6", "13 H6"],
    ... })
    >>> fan = review_table(frame, rulebook="2026.3")
    >>> fan.verdict
    'closed'
    >>> fan.findings[["clause", "station", "severity"]].to_string(index=False, header=False).splitlines()[0].split()
    ['table.nominals-agree', 'A', 'critical']
    """
    book = rulebook if isinstance(rulebook, Rulebook) else load(None if rulebook is None else str(rulebook))
    known = _names(names)
    listed = None if bearings is None else read_bearings(bearings, known)
    if isinstance(table, (str, os.PathLike)):
        source = _Source(Path(table), known, listed)
    else:
        # a frame is read as the text table that it would be saved as
        known = known or Names.built_in()
        known = Names(evolve(known.mapping, decimal="."))
        source = _Source(table.to_csv(index=False).encode(), known, listed)
    with source.file() as path:
        name = shown(path) if path is source.table else "DataFrame"
        reading = read_table(path, known, shown_as=name, bearings=listed)
    reading = evolve(reading, stations=with_defaults(reading.stations, book))
    result = review_reading(reading, book, gate=gate, complete=complete)
    if concessions is not None:
        from linter.review.concessions import apply, load_concessions

        result = apply(result, load_concessions(Path(concessions)), factor=book.concessions_up_to)
    if changes and result.closing:
        from linter.review.likely import likely
        from linter.review.plan.planned import with_plan

        result = with_plan(result, reading.stations, book, Movable.of(keep, free))
        result = evolve(result, likely=likely(result, reading.stations, book))
    return Review(result, reading, book, source)


def _names(names: str | os.PathLike[str] | Names | None) -> Names | None:
    return Names.load(Path(names)) if isinstance(names, (str, os.PathLike)) else names
