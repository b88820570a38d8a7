"""The command line: thin, no logic of its own. Rooms are imported only by the command that needs them.

One module because what a call can say stands in one place: options that several commands share are stated once.
"""

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import click

from linter.command.console import Commands, Console, OneOf, did_you_mean
from linter.command.design_commands import COMMANDS, FREE_OPTION, KEEP_OPTION, table_options
from linter.model.findings import SEVERITIES
from linter.model.version import __version__
from linter.report.writers import LANGUAGES, WRITERS


class CannotBeDone(click.ClickException):
    """The call could not be carried out; exit status 2."""

    exit_code = 2


@click.group(cls=Console, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(__version__, prog_name="ringseat")
def main() -> None:
    """Review parameter tables of rolling-bearing seats against a versioned rulebook."""


def _writers(_context: click.Context, _option: click.Parameter, text: str) -> tuple[str, ...]:
    kinds = tuple(dict.fromkeys(word.strip() for word in text.split(",") if word.strip()))
    for kind in kinds:
        if kind not in WRITERS:
            hint = did_you_mean(kind, WRITERS)
            raise click.BadParameter(f"{kind!r} is not a kind of report; known are {', '.join(WRITERS)}{hint}")
    if not kinds:
        raise click.BadParameter(f"name at least one of {', '.join(WRITERS)}")
    return kinds


@main.command()
@click.argument("tables", nargs=-1, required=True, type=click.Path(path_type=Path))
@click.option("--rulebook", default=None, help="Released version or a rulebook folder; the newest version by default.")
@click.option("--names", type=click.Path(path_type=Path), help="Name mapping: the table's words to our parameters.")
@click.option("--bearings", type=click.Path(path_type=Path), help="The firm's list of bearings (xlsx, CSV, JSON).")
@click.option("--encoding", default=None, help="Encoding of text tables, where a table leaves it open.")
@click.option("--unit", default=None, help="Unit of lengths where a table states none, such as mm or inch.")
@click.option("--decimal", type=click.Choice([".", ","]), help="Decimal mark, where a table leaves it open.")
@click.option("--concessions", type=click.Path(path_type=Path), help="Accepted deviations (JSON or TOML).")
@click.option(
    "--out", default="reports", type=click.Path(path_type=Path), show_default=True, help="Folder for reports."
)
@click.option("--write", default="html,json", callback=_writers, show_default=True, help=f"Kinds: {','.join(WRITERS)}.")
@click.option(
    "--gate",
    default="major",
    show_default=True,
    type=OneOf(SEVERITIES),
    help="Lowest severity that closes the gate.",
)
@click.option("--complete", is_flag=True, help="The gate also closes on a clause that could not be assessed.")
@KEEP_OPTION
@FREE_OPTION
@click.option(
    "--undecided-passes",
    is_flag=True,
    help="End with 0 where something that must be judged was not and nothing closes the gate; every report says so.",
)
@click.option(
    "--stations", type=click.IntRange(min=1), help="Stations that each machine must have; another number is a finding."
)
@click.option(
    "--seconds", type=click.FloatRange(min=0.1), default=120.0, show_default=True, help="Processor time for one table."
)
@click.option(
    "--memory", type=click.IntRange(min=64), default=2048, show_default=True, help="Memory for one table, in MiB."
)
@click.option(
    "--workers", type=click.IntRange(min=1), help="Processes for several tables; as many as processors by default."
)
@click.option(
    "--full", is_flag=True, help="Working of what is met in the result file; SARIF and JUnit list what is met."
)
@click.option("--brief", is_flag=True, help="HTML with verdict, changes and what is not known; nothing behind them.")
@click.option(
    "--what-matters",
    is_flag=True,
    help="Tell what one step of each value moves.",
)
@click.option(
    "--language",
    default="en",
    show_default=True,
    type=OneOf(LANGUAGES),
    help="Language of the HTML report; ids, figures and the result file stay as they are.",
)
@click.option(
    "--only", default="", help="Chapters or clauses, such as fit,preload.window; nothing is released by such a review."
)
@click.option("--date", default=None, help="Date to print on the HTML report, as it should stand there.")
@click.option(
    "--today",
    type=click.DateTime(["%Y-%m-%d"]),
    help="Day that concessions are held against, YYYY-MM-DD; the system's by default.",
)
def review(tables: Sequence[Path], today: Any, **options: Any) -> None:
    """Review tables (files or folders) and write findings reports.

    Exit status: 0 the gate is open, 1 it is closed, 3 undecided (nothing closes it, but something that must be judged
    was not), 2 the call could not be carried out, 130 interrupted.
    """
    from linter.command.review_command import Options, review_tables

    sys.exit(review_tables(tables, Options(today=None if today is None else today.date(), **options)))


@main.group(name="rulebook", cls=Commands)
def rulebook_group() -> None:
    """Show the rulebook itself."""


_BOOK_OPTION = click.option("--rulebook", "book", default=None, help="Released version or a rulebook folder.")


def _load(name: str | None) -> Any:
    from linter.rulebook.load import load
    from linter.rulebook.model import RulebookError

    try:
        return load(name)
    except RulebookError as error:
        raise CannotBeDone(str(error)) from None


@rulebook_group.command(name="list")
@_BOOK_OPTION
def rulebook_list(book: str | None) -> None:
    """List the clauses: id, title, highest severity, parameters needed."""
    from linter.report.handbook_text import list_text

    click.echo(list_text(_load(book)), nl=False)


@rulebook_group.command(name="show")
@click.argument("clause")
@_BOOK_OPTION
@click.option("--full", is_flag=True, help="With every limit, table row, text and worked case.")
def rulebook_show(clause: str, book: str | None, full: bool) -> None:
    """Show one clause: what it asks, its limits, what it uses; with --full all of it."""
    from linter.report.handbook_text import clause_text, short_text

    rulebook = _load(book)
    if clause not in rulebook.clauses:
        inside = [name for name, known in rulebook.clauses.items() if known.chapter == clause]
        if inside:
            raise CannotBeDone(f"{clause!r} is a chapter; its clauses are {', '.join(inside)}")
        hint = did_you_mean(clause, rulebook.clauses) or "; `ringseat rulebook list` shows them all"
        raise CannotBeDone(f"the rulebook has no clause {clause!r}{hint}")
    click.echo((clause_text if full else short_text)(rulebook, clause), nl=False)


@rulebook_group.command(name="compare")
@click.argument("old")
@click.argument("new")
def rulebook_compare(old: str, new: str) -> None:
    """Say what changed from one rulebook to another, in words and numbers."""
    from linter.report.handbook_text import difference_text

    click.echo(difference_text(_load(old), _load(new)), nl=False)


@rulebook_group.command(name="handbook")
@_BOOK_OPTION
@click.option(
    "--out", default="reports", type=click.Path(path_type=Path), show_default=True, help="Folder to write to."
)
def rulebook_handbook(book: str | None, out: Path) -> None:
    """Write the rulebook as one readable HTML document."""
    from linter.report.handbook_html import handbook_html
    from linter.report.writing import write_file

    rulebook = _load(book)
    path = out / f"rulebook-{rulebook.version}.html"
    write_file(path, handbook_html(rulebook).encode())
    click.echo(f"written: {path}")


@main.command()
@click.argument("table", type=click.Path(path_type=Path))
@click.option("--names", type=click.Path(path_type=Path), help="A mapping to start from.")
@click.option("--out", type=click.Path(path_type=Path), help="Write the proposal to this file; else it is printed.")
def names(table: Path, names: Path | None, out: Path | None) -> None:
    """Propose a name mapping for a table. Nothing is applied: save it, check it, pass it with --names."""
    from linter.command.review_command import propose_names

    text = propose_names(table, names)
    if out is None:
        click.echo(text, nl=False)
    else:
        from linter.report.writing import write_file

        write_file(out, text.encode(), inputs=(table,))
        click.echo(f"written: {out}")


@main.command()
@click.option("--out", default="ringseat-template.xlsx", type=click.Path(path_type=Path), show_default=True)
@click.option("--json", "as_json", is_flag=True, help="Write an empty JSON table and its schema instead.")
@click.option("--bearings", is_flag=True, help="Write an empty list of bearings (CSV) for review --bearings instead.")
def template(out: Path, as_json: bool, bearings: bool) -> None:
    """Write an empty workbook to fill in."""
    from linter.report.blank_table import empty_json, input_schema_text, workbook
    from linter.report.writing import write_file

    if bearings:
        from linter.report.blank_list import empty_bearing_list

        path = out.with_suffix(".csv")
        write_file(path, empty_bearing_list().encode("utf-8-sig"))
        click.echo(f"written: {path}")
    elif as_json:
        path = out.with_suffix(".json")
        write_file(path, empty_json().encode())
        write_file(path.with_suffix(".schema.json"), input_schema_text().encode())
        click.echo(f"written: {path} and {path.with_suffix('.schema.json')}")
    else:
        write_file(out, workbook())
        click.echo(f"written: {out}")


@main.command()
@click.argument("old", type=click.Path(path_type=Path))
@click.argument("new", type=click.Path(path_type=Path))
@table_options
@click.option(
    "--gate",
    type=OneOf(["new"]),
    help="new: end with 1 where NEW has a finding, at or above its gate, that OLD has not.",
)
@click.option(
    "--severity",
    default="major",
    show_default=True,
    type=OneOf(SEVERITIES),
    help="The gate of two tables; a result file has its own.",
)
@click.option("--out", type=click.Path(path_type=Path), help="Folder for comparison.html and comparison.json.")
def compare(old: Path, new: Path, out: Path | None, gate: str | None, severity: str, **options: Any) -> None:
    """Compare two results or two tables: what appeared, cleared, changed.

    Exit status: 0; with --gate new 1 where a finding at or above the gate is new or more severe than it was, 3 where
    something that was assessed no longer is; 2 the call could not be carried out.
    """
    from linter.command.compare_command import compare_two
    from linter.command.review_command import Options

    sys.exit(compare_two(old, new, out, Options(gate=severity, **options), gate == "new"))


@main.command()
@click.argument("folder", type=click.Path(path_type=Path))
@click.option(
    "--rulebook", "rulebooks", multiple=True, required=True, help="The rulebook; twice for the old and the new."
)
@click.option(
    "--out", default="archive", type=click.Path(path_type=Path), show_default=True, help="Folder to write to."
)
@click.option("--workers", type=click.IntRange(min=1), help="Processes; one for each processor by default.")
@click.option("--scheduler", default=None, help="Address of a dask scheduler, in the place of processes.")
@click.option(
    "--gate",
    default="major",
    show_default=True,
    type=click.Choice(["critical", "major", "minor", "remark"]),
    help="Lowest severity that closes the gate.",
)
@click.option("--report", "reports", multiple=True, help="A drawing to review in full, by its name below the folder.")
def archive(folder: Path, rulebooks: Sequence[str], out: Path, reports: Sequence[str], **options: Any) -> None:
    """Say what a rulebook, or the change from one to another, does to a folder of drawings.

    Needs pip install 'ringseat[archive]'. A second call takes up what the first has left in --out.
    """
    from linter.command.archive_command import run_archive

    sys.exit(run_archive(folder, rulebooks, out, reports=reports, **options))


@main.command()
@click.option("--port", default=0, show_default=True, type=click.IntRange(0, 65535), help="Port; 0 for a free one.")
@click.option("--show", is_flag=True, help="Open the browser.")
def desk(port: int, show: bool) -> None:
    """Serve a page on this machine for reviews without a terminal. Needs pip install 'ringseat[desk]'."""
    try:
        from linter.command.desk.serve import serve
    except ImportError as error:
        raise CannotBeDone(f"the desk needs more packages ({error.name}): pip install 'ringseat[desk]'") from None
    also = [("propose", "Propose values for blank cells"), ("repair", "Apply the plan to the table")]
    known = [(name, words) for name, words in also if name in main.commands]
    sys.exit(serve(port, show=show, also=known))


for command in COMMANDS:
    main.add_command(command)


if __name__ == "__main__":
    main()
