"""One call of ``ringseat parts``: measured parts against a drawing and against function."""

import hashlib
from pathlib import Path

import click

from linter.command.console import complain, safe
from linter.command.one_table import OneTable, one_table
from linter.command.review_command import CLOSED, NOT_DONE, OPEN, UNDECIDED, Options, names_of
from linter.command.tables import report_names
from linter.model.places import shown
from linter.reading import InputError
from linter.reading.files.bounds import within_bounds
from linter.reading.measured import MeasuredList, read_measured
from linter.report.parts_writers import PartsReport, parts_html, parts_json, parts_text
from linter.report.writing import write_file
from linter.review.parts.conformity import VERDICTS
from linter.review.parts.drawing import WrongList
from linter.review.parts.judge import judge
from linter.review.parts.match import matched

_STATUS = dict(zip(VERDICTS, (OPEN, UNDECIDED, CLOSED), strict=True))


def judge_parts(
    table: Path, measured: Path, out: Path | None, options: Options, *, uncertainty: float | None, match: bool
) -> int:
    """Judge a list of measured values, tell what it says, write the reports asked for.

    Parameters
    ----------
    table, measured : Path
        The design and the list.
    out : Path or None
        Folder to write to; None for the terminal alone.
    options : Options
        How the tables are read and by which rulebook.
    uncertainty : float or None
        Expanded uncertainty of lengths [mm], where the list states none.
    match : bool
        Whether parts that go together are looked for.

    Returns
    -------
    int
        0 every value conforms and every part functions; 1 one does not conform, or a part does not function; 3 one is
        not proven; 2 the call could not be carried out.
    """
    known = one_table(table, options)
    try:
        with within_bounds(shown(measured), options.seconds, options.memory * 2**20):
            found = read_measured(measured, names_of(options), shown_as=shown(measured))
        report = _judged(known, table, found, options, uncertainty, match)
        click.echo(safe(parts_text(report)), nl=False)
        if out is not None:
            name = report_names([table])[table]
            for kind, content in (("html", parts_html(report)), ("json", parts_json(report))):
                write_file(out / f"{name}.parts.{kind}", content.encode(), inputs=[table, measured])
            click.echo(safe(f"written: {out}"))
    except (InputError, WrongList, ValueError, OSError) as error:
        complain(" ".join(str(error).split()))
        return NOT_DONE
    status = _STATUS[report.review.status]
    return UNDECIDED if status == OPEN and report.problems else status


def _judged(
    known: OneTable, table: Path, found: MeasuredList, options: Options, uncertainty: float | None, match: bool
) -> PartsReport:
    stations = known.reading.stations
    review = judge(stations, known.book, found, uncertainty=uncertainty, gate=options.gate)
    numbers = [
        f"{what} {' / '.join(sorted({str(text) for text in stations.text(name)} - {''})) or 'not stated'}"
        for what, name in (("drawing", "drawing_number"), ("revision", "drawing_revision"))
    ]
    matchings = matched(stations, review.judged, known.book, options.gate) if match else []
    digest = hashlib.sha256(table.read_bytes()).hexdigest()
    return PartsReport(
        shown(table), digest, found.file, found.sha256, ", ".join(numbers), options.gate, review, matchings,
        tuple(problem.message for problem in found.problems), known.book,
    )  # fmt: skip
