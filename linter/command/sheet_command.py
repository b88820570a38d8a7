"""One call of ``ringseat sheet``: the seat specification of a table and its inspection list."""

from pathlib import Path

import click

from linter.command.console import complain, safe
from linter.command.one_table import one_table
from linter.command.review_command import NOT_DONE, Options
from linter.report.sheet.page import specification
from linter.report.sheet.symbols import ENVELOPE
from linter.report.writing import write_file


def write_sheet(
    table: Path, out: Path, options: Options, *, size: str | None, proposed: bool = False, assembly: bool = False
) -> int:
    """Write the pages, the text and the inspection list of one table.

    Parameters
    ----------
    table : Path
        The table.
    out : Path
        Folder to write to.
    options : Options
        What the call asks for.
    size : {"envelope", "independency"} or None
        How the sizes of the seats are meant; None for what the table says itself: an envelope behind a size.
    assembly : bool
        Whether to write how the machines are put together as well.
    proposed : bool
        Whether start values stand in where nothing is stated, each marked.

    Returns
    -------
    int
        Exit status.
    """
    known = one_table(table, options)
    envelope: set[tuple[str, int]] | bool = size == "envelope"
    if size is None:
        envelope = {
            (cell.parameter, cell.row)
            for cell in known.reading.understood
            if cell.parameter.endswith("seat_diameter") and (ENVELOPE in cell.read or "(E)" in cell.read)
        }
    stations, result, marks = known.reading.stations, known.result, set[tuple[str, int]]()
    if proposed:
        from linter.command.propose_command import proposal_of

        try:
            proposal = proposal_of(known, options)
        except ValueError as error:
            complain(str(error))
            return NOT_DONE
        stations, result = proposal.stations, proposal.result
        marks = {(line.item.cell.name, line.row) for line in proposal.lines}
    made = specification(stations, result, options.date or known.date, envelope=envelope, proposed=marks)
    name = table.stem
    written = [
        (".sheet.html", made.html().encode()),
        (".sheet.txt", made.text().encode()),
        (".inspection.xlsx", made.workbook()),
    ]
    if assembly:
        from linter.report.sheet.assembly import assembly_html, assembly_text
        from linter.review.assembly import assemblies

        ways = assemblies(known.reading.stations, known.book)
        written += [
            (".assembly.html", assembly_html(ways, made.about).encode()),
            (".assembly.txt", assembly_text(ways, made.about).encode()),
        ]
    try:
        for suffix, content in written:
            write_file(out / f"{name}{suffix}", content, inputs=(table,))
    except OSError as error:
        complain(f"the specification could not be written: {error}")
        return NOT_DONE
    pages = len(made.pages)
    click.echo(
        safe(f"{name}: {pages} page{'s' * (pages > 1)}, {len(made.listed)} characteristics; gate {made.about.gate}")
    )
    click.echo(f"written: {safe(str(out))}")
    return 0
