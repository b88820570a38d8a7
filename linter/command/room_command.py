"""One call of ``ringseat room``: for each value of a table the room it has."""

from difflib import get_close_matches
from pathlib import Path

import click
import numpy as np

from linter.command.console import complain, safe
from linter.command.one_table import one_table
from linter.command.review_command import NOT_DONE, Options
from linter.model.stations import Stations
from linter.model.vocabulary import parameter, vocabulary
from linter.report.room_writers import Rooms, as_json, html_of, text_of
from linter.report.writing import write_file
from linter.review.matters import of_machine
from linter.review.room.domains import Cell
from linter.review.room.maps import map_of, reaches
from linter.review.room.room import rooms


def write_room(
    table: Path, options: Options, *, severity: str, names: tuple[str, ...], pair: str | None, speed: bool,
    out: Path | None,
) -> int:  # fmt: skip
    """Print the room of every value of one table, and write it where a folder is named.

    Parameters
    ----------
    table : Path
        The table.
    options : Options
        What the call asks for.
    severity : str
        The gravest severity that a value may lead to.
    names : tuple of str
        Parameters wanted; all that are stated where there are none.
    pair : str or None
        Two parameters for a map, with a comma between them; each may name its position as ``NAME@STATION``.
    speed : bool
        Whether highest speed and largest bearing are asked for.
    out : Path or None
        Folder for the page and the document.

    Returns
    -------
    int
        Exit status.
    """
    try:
        for name in names:
            _known(name)
        two = None if pair is None else _two(pair)
    except ValueError as error:
        complain(str(error))
        return NOT_DONE
    known = one_table(table, options)
    stations = known.reading.stations
    found = []
    try:
        for machine, name in enumerate(stations.machines):
            places = _places(stations, machine)
            shown = None
            if two is not None:
                first, second = (_cell(places, *named) for named in two)
                shown = map_of(stations, machine, known.book, first, second)
            own = () if two is not None and not names else names
            wanted = rooms(stations, machine, known.book, severity=severity, names=own) if two is None or names else []
            matters = None if names or two else of_machine(stations, machine, known.book)
            fast = reaches(stations, machine, known.book, severity) if speed else []
            found.append(Rooms(name, places, tuple(wanted), shown, tuple(fast), matters))
    except ValueError as error:
        complain(f"{known.result.input.file}: {error}")
        return NOT_DONE
    click.echo(safe(text_of(found, severity)), nl=False)
    if out is not None:
        try:
            page, document = html_of(found, known.result, severity), as_json(found, known.result, severity)
            write_file(out / f"{table.stem}.room.html", page.encode(), inputs=(table,))
            write_file(out / f"{table.stem}.room.json", document.encode(), inputs=(table,))
        except OSError as error:
            complain(f"the room could not be written: {error}")
            return NOT_DONE
        click.echo(f"written: {safe(str(out))}")
    return 0


def _known(name: str) -> str:
    """The name of a parameter that has values to choose from."""
    if name not in vocabulary():
        close = get_close_matches(name, vocabulary(), 1)
        raise ValueError(f"{name}: no parameter of that name{f'; did you mean {close[0]}?' if close else ''}")
    if parameter(name).kind == "text":
        raise ValueError(f"{name}: is a text; a number, size, class or choice has room")
    return name


def _two(pair: str) -> list[tuple[str, str]]:
    """The two parameters of a map, each with the position that is named with it."""
    parts = [part.strip() for part in pair.split(",") if part.strip()]
    if len(parts) != 2:
        raise ValueError(f"--map {pair}: names {len(parts)} parameters, expected two with a comma between them")
    found = []
    for part in parts:
        name, _, station = part.partition("@")
        found.append((_known(name.strip()), station.strip()))
    return found


def _places(stations: Stations, machine: int) -> tuple[str, ...]:
    rows = np.flatnonzero(stations.machine_row == machine)
    return tuple(str(stations.text("station")[row]) for row in rows)


def _cell(places: tuple[str, ...], name: str, station: str) -> Cell:
    if not station:
        return Cell(name, 0)
    if station not in places:
        raise ValueError(f"{name}@{station}: no position of that name; there are {', '.join(places)}")
    return Cell(name, places.index(station))
