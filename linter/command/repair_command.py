"""One call of ``ringseat repair``: the table with its plan applied, the plan, the report of the repaired table."""

import json
from pathlib import Path
from typing import Any

import click
from attrs import evolve

from linter.command.console import complain, safe
from linter.command.one_table import OneTable, one_table
from linter.command.review_command import NOT_DONE, Options, bearings_of, names_of
from linter.model.findings import ReviewResult
from linter.reading import InputError, read_table
from linter.report.repaired.again import reads_as
from linter.report.repaired.table import Repaired, repaired_table
from linter.report.writers import WRITERS, Job
from linter.report.writing import write_file
from linter.review.defaults import with_defaults
from linter.review.plan.planned import with_plan
from linter.review.records import review_reading


def repair(table: Path, out: Path, options: Options) -> int:
    """Write the repaired table, its plan and its report.

    Parameters
    ----------
    table : Path
        The table; it is left as it is.
    out : Path
        Folder to write to.
    options : Options
        What the call asks for.

    Returns
    -------
    int
        0 where the gate of the repaired table is open, 1 closed, 3 undecided, 2 where something could not be done.
    """
    try:
        movable = options.movable()
    except ValueError as error:
        complain(str(error))
        return NOT_DONE
    known = one_table(table, options)
    result = (
        with_plan(known.result, known.reading.stations, known.book, movable, most=None)
        if known.result.closing
        else known.result
    )
    names, bearings = names_of(options), bearings_of(options.bearings, names_of(options))
    read = reads_as(known.reading, table.suffix, names, bearings, known.book)
    made = repaired_table(table.read_bytes(), known.reading.stations, known.reading.understood, result, read)
    name = f"{table.stem}.repaired"
    target = out / f"{name}{'.csv' if made.template else table.suffix}"
    try:
        write_file(out / f"{table.stem}.plan.json", plan_text(result, made).encode(), inputs=(table,))
        write_file(target, made.content, inputs=(table,))
        again = _reviewed(target, known, options)
        for kind in ("html", "json"):
            writer = WRITERS[kind]
            content = writer.content(Job(again, known.book, target, options.date, False))
            write_file(out / f"{name}{writer.suffix}", content, inputs=(table, target))
    except (OSError, InputError) as error:
        complain(f"the repaired table could not be written: {error}")
        return NOT_DONE
    return _told(result, again, made, target)


def _reviewed(target: Path, known: OneTable, options: Options) -> ReviewResult:
    """The repaired table, read and reviewed like any other."""
    names = names_of(options)
    reading = read_table(target, names, shown_as=target.name, bearings=bearings_of(options.bearings, names))
    reading = evolve(reading, stations=with_defaults(reading.stations, known.book))
    result = review_reading(reading, known.book, gate=options.gate, complete=options.complete)
    return with_plan(result, reading.stations, known.book, options.movable(), most=None) if result.closing else result


def plan_text(result: ReviewResult, made: Repaired) -> str:
    """The plan as JSON: its lines, what it comes to, decisions, the cells that were changed."""
    content: dict[str, Any] = {key: result.as_dict()[key] for key in ("plan", "plan_result", "decisions")}
    content["layout"] = "template" if made.template else "own"
    content["not_written"] = list(made.reasons)
    content["cells"] = [
        {"place": edit.place.as_dict(), "from": edit.before, "to": edit.after, "note": edit.note} for edit in made.edits
    ]
    return json.dumps(content, ensure_ascii=False, indent=1, sort_keys=True) + "\n"


def _told(result: ReviewResult, again: ReviewResult, made: Repaired, target: Path) -> int:
    count = len(result.plan)
    click.echo(safe(f"{count} change{'s' * (count != 1)}; gate {result.gate} -> {again.gate}"))
    for line in result.plan:
        where = f"{line.machine}{f' {line.station}' if line.station else ''}"
        click.echo(safe(f"  {line.line}. {where}: {line.parameter} {line.before} -> {line.after} ({line.reason})"))
    for machine in result.plan_result.machines if result.plan_result else ():
        for conflict in machine.conflicts:
            click.echo(safe(f"  {machine.machine}: {conflict.text}"))
    if made.template:
        click.echo(safe(f"written in the layout of the template, because {'; '.join(made.reasons)}"))
    click.echo(f"written: {safe(str(target))}")
    promised = result.plan_result
    if promised is not None and (promised.gate, dict(promised.severities)) != (again.gate, again.severities):
        complain("the repaired table is not judged as the plan says: check its report before it is used")
        return NOT_DONE
    return {"open": 0, "closed": 1, "undecided": 3}[again.gate]
