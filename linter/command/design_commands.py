"""Commands over one design: what to change, what is free, what goes on the drawing, and how its parts come out."""

import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import click

from linter.command.console import OneOf
from linter.model.findings import SEVERITIES

KEEP_OPTION = click.option("--keep", multiple=True, metavar="NAME", help="Parameter that the plan leaves alone.")
FREE_OPTION = click.option("--free", multiple=True, metavar="NAME", help="Decision that the plan may change.")


def table_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """The options of a command that reads one table and reviews it."""
    for option in (
        click.option("--rulebook", default=None, help="Released version or a rulebook folder; the newest by default."),
        click.option("--names", type=click.Path(path_type=Path), help="Name mapping: the table's words to ours."),
        click.option("--bearings", type=click.Path(path_type=Path), help="The firm's list of bearings."),
        click.option("--encoding", default=None, help="Encoding of text tables, where a table leaves it open."),
        click.option("--unit", default=None, help="Unit of lengths where a table states none, such as mm or inch."),
        click.option("--decimal", type=click.Choice([".", ","]), help="Decimal mark, where a table leaves it open."),
    ):
        command = option(command)
    return command


GATE_OPTION = click.option(
    "--gate",
    default="major",
    show_default=True,
    type=OneOf(SEVERITIES),
    help="Lowest severity that closes the gate.",
)


@click.command()
@click.argument("table", type=click.Path(path_type=Path))
@table_options
@GATE_OPTION
@click.option(
    "--out", default="reports", type=click.Path(path_type=Path), show_default=True, help="Folder to write to."
)
@click.option(
    "--size", type=click.Choice(["envelope", "independency"]),
    help="How sizes of seats are meant (ISO 14405-1), where the table does not say it.",
)  # fmt: skip
@click.option("--date", default=None, help="Date of the table as it should stand there; that of the file by default.")
@click.option("--assembly", is_flag=True, help="Write the order of assembly with forces and temperatures as well.")
@click.option("--proposed", is_flag=True, help="Start values too where nothing is stated, each marked as proposed.")
def sheet(table: Path, out: Path, size: str | None, assembly: bool, proposed: bool, **options: Any) -> None:
    """Write the seat specification for the drawing: a page for each position, a text to paste, an inspection list."""
    from linter.command.review_command import Options
    from linter.command.sheet_command import write_sheet

    sys.exit(write_sheet(table, out, Options(**options), size=size, proposed=proposed, assembly=assembly))


@click.command()
@click.argument("table", type=click.Path(path_type=Path))
@table_options
@GATE_OPTION
@click.option(
    "--draws",
    default=20_000,
    show_default=True,
    type=click.IntRange(100, 1_000_000),
    help="Number of assemblies drawn.",
)
@click.option(
    "--seed", default=1, show_default=True, type=click.IntRange(0, 2**32 - 1), help="Seed of the random numbers."
)
@click.option("--shape", default="normal", show_default=True, type=click.Choice(["normal", "rectangular"]))
@click.option(
    "--cp",
    default=1.333,
    show_default=True,
    type=click.FloatRange(0.1, 10.0),
    help="Capability C_p of the normal distribution.",
)
@click.option("--measured", type=click.Path(path_type=Path), help="CSV of measured values: dimension, station, value.")
@click.option("--out", type=click.Path(path_type=Path), help="Folder for NAME.spread.html and NAME.spread.json.")
def spread(
    table: Path, out: Path | None, draws: int, seed: int, shape: Any, cp: float, measured: Path | None, **options: Any
) -> None:
    """Draw random assemblies within every tolerance: how many lie beyond a limit, and which tolerances make it."""
    from linter.command.review_command import Options
    from linter.command.spread_command import spread_table
    from linter.review.spread.shares import Settings

    settings = Settings(draws, seed, shape, cp, {}, options["gate"])
    sys.exit(spread_table(table, out, Options(**options), settings, measured))


@click.command()
@click.argument("table", type=click.Path(path_type=Path))
@click.argument("measured", type=click.Path(path_type=Path))
@table_options
@click.option(
    "--uncertainty", type=click.FloatRange(min=0.0), help="Expanded uncertainty of lengths in mm, where none is listed."
)
@click.option("--match", is_flag=True, help="Say which shafts, bearings and housings go together.")
@click.option("--out", type=click.Path(path_type=Path), help="Folder for NAME.parts.html and NAME.parts.json.")
def parts(
    table: Path, measured: Path, out: Path | None, uncertainty: float | None, match: bool, **options: Any
) -> None:
    """Judge measured parts against the drawing and against function.

    Exit status: 0 every value conforms and every part functions, 1 one does not, 3 one is not proven, 2 the call could
    not be carried out.
    """
    from linter.command.parts_command import judge_parts
    from linter.command.review_command import Options

    sys.exit(judge_parts(table, measured, out, Options(**options), uncertainty=uncertainty, match=match))


@click.command()
@click.argument("table", type=click.Path(path_type=Path))
@table_options
@click.option(
    "--severity", default="minor", show_default=True, type=click.Choice(["critical", "major", "minor", "remark"]),
    help="Highest severity that a value may lead to.",
)  # fmt: skip
@click.option(
    "--parameter", "parameters", multiple=True, help="A parameter wanted, blank ones too; all stated ones else."
)
@click.option("--map", "pair", default=None, help="Map of two parameters: NAME,NAME or NAME@STATION,NAME@STATION.")
@click.option("--speed", is_flag=True, help="Highest speed and largest bearing by balls and lubrication.")
@click.option("--out", type=click.Path(path_type=Path), help="Folder for a page and a JSON document.")
def room(
    table: Path, severity: str, parameters: tuple[str, ...], pair: str | None, speed: bool, out: Path | None,
    **options: Any,
) -> None:  # fmt: skip
    """Say for each value what it may be with all else fixed, and what bounds it."""
    from linter.command.review_command import Options
    from linter.command.room_command import write_room

    given = Options(**options)
    sys.exit(write_room(table, given, severity=severity, names=parameters, pair=pair, speed=speed, out=out))


@click.command()
@click.argument("table", type=click.Path(path_type=Path))
@table_options
@KEEP_OPTION
@FREE_OPTION
@click.option(
    "--out", default="repaired", type=click.Path(path_type=Path), show_default=True, help="Folder to write to."
)
@click.option("--date", default=None, help="Date to print on the HTML report, as it should stand there.")
def repair(table: Path, out: Path, **options: Any) -> None:
    """Write a table with its plan applied, the plan as JSON, and the report of the repaired table.

    The table itself is left as it is. Exit status: that of a review of the repaired table; 2 where that was not made.
    """
    from linter.command.repair_command import repair as write_repaired
    from linter.command.review_command import Options

    sys.exit(write_repaired(table, out, Options(**options)))


@click.command()
@click.argument("table", type=click.Path(path_type=Path))
@table_options
@GATE_OPTION
@click.option(
    "--out", default="reports", type=click.Path(path_type=Path), show_default=True, help="Folder to write to."
)
def propose(table: Path, out: Path, **options: Any) -> None:
    """Propose start values for what a table leaves blank, each with clause, source and reason."""
    from linter.command.propose_command import write_proposal
    from linter.command.review_command import Options

    sys.exit(write_proposal(table, out, Options(**options)))


COMMANDS = (sheet, spread, parts, room, repair, propose)
