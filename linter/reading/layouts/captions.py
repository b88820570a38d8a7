"""Texts alone in their row above tables of one sheet: what tells tables apart that state the same of several things."""

import re
from collections.abc import Sequence

from attrs import frozen

from linter.model.stations import Problem
from linter.reading.files.grids import Grid
from linter.reading.files.intake import visible
from linter.reading.layouts.sides import side_of
from linter.reading.layouts.strips import Block, Found, grid_strip
from linter.reading.layouts.title import is_label, names_value, units_said
from linter.reading.words.headings import Words
from linter.reading.words.parts import is_bearing

_LONGEST = 80


@frozen(eq=False)
class Captioned:
    """A table and the text alone in the row above it.

    Attributes
    ----------
    block : Block
        The table as read.
    text : str
        The text.
    grid : Grid
        Where it stands.
    row, column : int
        Its cell in ``grid``.
    """

    block: Block
    text: str
    grid: Grid
    row: int
    column: int


def caption_at(grid: Grid, row: int, words: Words) -> int | None:
    """The column of the one text of a row, where it can be the name of a table: no label, heading, side or unit."""
    filled = [*grid.texts(row)]
    if len(filled) != 1:
        return None
    text = grid.text(row, filled[0])
    placed = words.station_said(text)
    named = names_value(words, text) and not placed
    known = named or words.group(text) or is_label(text) or side_of(text) or units_said(text)
    like = any(map(str.isalpha, text)) and 1 < len(text) <= _LONGEST and (placed or text[-1] not in ".:")
    return filled[0] if like and not known and words.names.station(text) is None else None


def caption_above(grid: Grid, start: int, words: Words, block: Block) -> Captioned | None:
    """The text above the first row of a table, blank rows between them or none, or None."""
    row = start - 1
    while row >= 0 and not any(grid.text(row, c) for c in range(grid.width)):
        row -= 1
    column = caption_at(grid, row, words) if row >= 0 else None
    return None if column is None else Captioned(block, grid.text(row, column), grid, row, column)


def name_by_captions(tables: Sequence[Captioned], words: Words, found: Found) -> None:
    """Tables that state the same parameters of the same stations, each below another text: the texts name them.

    A text that says a station (``Bearing position NDE``) names that, any other text the machine.
    """
    stated = [_stated(table.block) for table in tables]
    like = [t for t, keys in zip(tables, stated, strict=True) if _come_again(keys, stated)]
    machines = {machine for t in like for machine in t.block.machines}
    if len(like) < 2 or len({t.text for t in like}) < len(like) or len(machines) != 1:
        return
    stations = _stations_said(like, words, known=any(machines))
    of_stations = bool(stations)
    if any(machines) and not of_stations:
        return
    stations = stations or [""] * len(like)
    for table, station in zip(like, stations, strict=True):
        place = table.grid.place(table.row, table.column)
        level, name = ("station", station) if of_stations else ("machine", table.text)
        if of_stations:
            table.block.stations[:] = [name] * len(table.block.stations)
        else:
            table.block.machines[:] = [name] * len(table.block.machines)
            at = [(table.row, table.column)]
            table.block.strips.append(grid_strip(table.grid, "machine", at, [0], label=table.text))
        found.unused[:] = [unused for unused in found.unused if unused.place != place]
        expected = f"the {level} in a column of its own, or with its word before it"
        message = (
            f"{place}: {visible(table.text, 60)} stands alone above a table that is there {len(like)} times; "
            f"it is taken for the name of the {level}; expected {expected}."
        )
        found.problems.append(Problem("assumption", None, level, place, table.text, expected, message, "caption"))


def _come_again(keys: set[tuple[str, str, str]], stated: Sequence[set[tuple[str, str, str]]]) -> bool:
    """Whether another table states two parameters of this one or more, and half of them, of the same stations."""
    names = {name for _, name, _ in keys}
    again = [{name for _, name, _ in keys & other} for other in stated if other is not keys]
    return any(len(same) > 1 and 2 * len(same) >= len(names) for same in again)


def _stations_said(tables: Sequence[Captioned], words: Words, *, known: bool) -> list[str]:
    """The station that each text says; where the machine is known, the texts themselves if they speak of bearings."""
    if any(any(table.block.stations) for table in tables):
        return []
    said = [words.station_said(table.text) for table in tables]
    if known and all(_says_bearing(table.text) for table in tables):
        said = [station or table.text for station, table in zip(said, tables, strict=True)]
    return said if all(said) else []


def _says_bearing(text: str) -> bool:
    """Whether a word of a text says bearing."""
    return any(map(is_bearing, re.findall(r"[^\W\d_]+", text)))


def _stated(block: Block) -> set[tuple[str, str, str]]:
    """Station, parameter and aspect of everything that a table states."""
    return {
        (block.stations[row], strip.parameter, strip.aspect)
        for strip in block.strips
        if strip.parameter not in ("machine", "station")
        for row in sorted({*strip.rows.tolist()})
    }
