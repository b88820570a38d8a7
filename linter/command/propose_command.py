"""One call of ``ringseat propose``: blanks become start values, marked, never mixed with what is stated."""

from pathlib import Path

import click
import numpy as np
from attrs import evolve

from linter.command.console import complain, safe
from linter.command.one_table import OneTable, one_table
from linter.command.review_command import NOT_DONE, Options
from linter.report.proposal_writers import Proposal, as_json, html_of, lines_of, proposed_table, text_of
from linter.report.writing import write_file
from linter.review.propose.proposal import propose, with_proposals
from linter.review.records import review_reading


def proposal_of(known: OneTable, options: Options) -> Proposal:
    """Start values for one table that was read, with the review of the table that has them.

    Parameters
    ----------
    known : OneTable
        The table.
    options : Options
        What the call asks for.

    Returns
    -------
    Proposal

    Raises
    ------
    ValueError
        If the table names no bearing: neither a designation that is known nor bore and outside diameter.
    """
    stations = known.reading.stations
    named = stations.known("bore_diameter") & stations.known("outside_diameter")
    if not named.any():
        wanted = "expected a designation that is known, or bore and outside diameter"
        raise ValueError(f"{known.result.input.file}: names no bearing, so that nothing can be proposed; {wanted}")
    machines = np.unique(stations.machine_row[named]).tolist()
    found = [(machine, propose(stations, machine, known.book)) for machine in machines]
    made = with_proposals(stations, known.book, found)
    result = review_reading(
        evolve(known.reading, stations=made), known.book, gate=options.gate, complete=options.complete
    )
    return Proposal(lines_of(stations, known.book, found), made, result, known.result)


def write_proposal(table: Path, out: Path, options: Options) -> int:
    """Write the start values of one table: the table with them, a document and a page.

    Parameters
    ----------
    table : Path
        The table; it is never changed.
    out : Path
        Folder to write to.
    options : Options
        What the call asks for.

    Returns
    -------
    int
        Exit status.
    """
    known = one_table(table, options)
    try:
        made = proposal_of(known, options)
        for suffix, content in (
            (".proposed.xlsx", proposed_table(made)),
            (".proposal.json", as_json(made).encode()),
            (".proposal.html", html_of(made, known.book).encode()),
        ):
            write_file(out / f"{table.stem}{suffix}", content, inputs=(table,))
    except (ValueError, OSError) as error:
        complain(str(error))
        return NOT_DONE
    click.echo(safe(text_of(made)), nl=False)
    click.echo(f"written: {safe(str(out))}")
    return 0
