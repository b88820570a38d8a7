"""One call of ``ringseat spread``: random assemblies of one table, in words and as a page."""

import csv
import hashlib
import math
from pathlib import Path

import click
import numpy as np
from attrs import evolve
from numpy.typing import NDArray

from linter.command.console import complain, safe
from linter.command.one_table import one_table
from linter.command.review_command import NOT_DONE, OPEN, Options
from linter.command.tables import report_names
from linter.model.places import shown
from linter.model.stations import Stations
from linter.report.spread_writers import SpreadReport, spread_html, spread_json, spread_text
from linter.report.writing import write_file
from linter.review.spread.dimensions import Dimension, dimensions
from linter.review.spread.shares import Settings, spread

#: Processor time for one table, seconds: a million draws of two stations take some minutes.
SECONDS = 900.0
#: Fewest measured values that stand for a distribution.
FEWEST_VALUES = 5


def spread_table(table: Path, out: Path | None, options: Options, settings: Settings, measured: Path | None) -> int:
    """Draw the assemblies of a table's machines, tell what they say, write the reports asked for.

    Parameters
    ----------
    table : Path
        The table.
    out : Path or None
        Folder to write to; None for the terminal alone.
    options : Options
        How the table is read and by which rulebook.
    settings : Settings
        How to draw; measured values are filled in from their list.
    measured : Path or None
        List of measured values.

    Returns
    -------
    int
        0, or 2 where the call could not be carried out; the reason is on standard error then.
    """
    known = one_table(table, evolve(options, seconds=SECONDS))
    stations = known.reading.stations
    try:
        if measured is not None:
            settings = evolve(settings, samples=measured_values(measured, _dimensions(stations)))
        machines = spread(stations, known.book, settings)
        digest = hashlib.sha256(table.read_bytes()).hexdigest()
        report = SpreadReport(shown(table), digest, settings, machines, known.book)
        click.echo(safe(spread_text(report)), nl=False)
        if out is not None:
            inputs = [path for path in (table, measured, options.bearings, options.names) if path is not None]
            name = report_names([table])[table]
            write_file(out / f"{name}.spread.html", spread_html(report).encode(), inputs=inputs)
            write_file(out / f"{name}.spread.json", spread_json(report).encode(), inputs=inputs)
            click.echo(safe(f"written: {out}"))
    except (ValueError, OSError) as error:
        complain(str(error))
        return NOT_DONE
    return OPEN


def _dimensions(stations: Stations) -> list[Dimension]:
    machines = (np.flatnonzero(stations.machine_row == index) for index in range(len(stations.machines)))
    return [dim for rows in machines for dim in dimensions(stations.take(rows))]


def measured_values(path: Path, dims: list[Dimension]) -> dict[str, NDArray[np.float64]]:
    """Measured values of dimensions, as deviations from each nominal.

    Parameters
    ----------
    path : Path
        CSV (comma or semicolon) with the columns ``dimension``, ``station`` (empty for a dimension of the machine) and
        ``value``: the actual size in the unit of its parameter, a ring's in mm.
    dims : list of Dimension
        Dimensions of the table.

    Returns
    -------
    dict of str to float array
        By :attr:`~linter.review.spread.dimensions.Dimension.key`.

    Raises
    ------
    ValueError
        Names file, line and column, what was read and what was expected.
    """
    text = path.read_text(encoding="utf-8-sig")
    head, _, _ = text.partition("\n")
    rows = csv.DictReader(text.splitlines(), delimiter=";" if ";" in head else ",")
    wanted = ("dimension", "station", "value")
    if any(name not in (rows.fieldnames or ()) for name in wanted):
        raise ValueError(f"{shown(path)}: line 1: read {head.strip()!r}, expected the columns {', '.join(wanted)}")
    by_key = {dim.key: dim for dim in dims}
    found: dict[str, list[float]] = {}
    for row in rows:
        name, station = (row["dimension"] or "").strip(), (row["station"] or "").strip()
        key = f"{name}@{station}" if station else name
        where = f"{shown(path)}: line {rows.line_num}"
        if key not in by_key:
            known = ", ".join(sorted(by_key)) or "none"
            raise ValueError(f"{where}: read the dimension {key!r}; those with a tolerance are: {known}")
        dim, value = by_key[key], _number(row["value"], where)
        ring = dim.name.startswith("ring_")
        deviation = 1000.0 * (value - dim.nominal) if ring else value - dim.nominal
        width = dim.upper - dim.lower
        if not dim.lower - 10 * width <= deviation <= dim.upper + 10 * width:
            raise ValueError(
                f"{where}: read {value:g}, expected a value near {dim.nominal:g} "
                f"(in {'mm' if ring else dim.unit}): it lies beyond ten times the tolerance"
            )
        found.setdefault(key, []).append(deviation)
    for key, values in found.items():
        if len(values) < FEWEST_VALUES:
            raise ValueError(f"{shown(path)}: {key}: read {len(values)} values, expected at least {FEWEST_VALUES}")
    return {key: np.array(values) for key, values in found.items()}


def _number(text: str | None, where: str) -> float:
    try:
        value = float((text or "").strip().replace(",", "."))
    except ValueError:
        value = math.nan
    if not math.isfinite(value):
        raise ValueError(f"{where}: read the value {text!r}, expected a number")
    return value
