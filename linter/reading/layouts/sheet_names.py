"""Names of sheets that tell tables apart: one sheet for each position, or for each machine, that states the same."""

import re
from collections import Counter
from collections.abc import Sequence

from attrs import frozen

from linter.model.stations import Problem
from linter.model.vocabulary import parameter
from linter.reading.files.grids import Grid
from linter.reading.files.intake import visible
from linter.reading.layouts.sides import side_of_sheet
from linter.reading.layouts.strips import Block, Found
from linter.reading.words.headings import Words

#: What programs name a sheet by themselves, and copies of one: such a name says nothing.
_NO_NAME = re.compile(
    r"(?:sheet|tabelle|blatt|feuil(?:le)?|hoja|foglio|лист|シート|工作表|page|data|daten|table)[ _-]*\d*|.*\(\d+\)|\d+",
    re.IGNORECASE,
)
_FEWEST = 2  # names that two sheets state both


@frozen(eq=False)
class OfSheet:
    """The tables of one sheet."""

    grid: Grid
    blocks: Sequence[Block]


def name_by_sheets(sheets: Sequence[OfSheet], words: Words, found: Found) -> None:
    """Sheets that state the same parameters and name no position: each is of the position, or machine, of its name.

    A name that says a position is one. Where the workbook names one machine, any name of a sheet without positions is
    a position; sheets that name the same positions, and no machine, are each of a machine.
    """
    like = _alike(sheets)
    names = [(sheet.grid.sheet or "").strip() for sheet in like]
    blocks = [block for sheet in like for block in sheet.blocks]
    machines = {machine for sheet in sheets for block in sheet.blocks for machine in block.machines if machine}
    stations = [words.station_said(name) for name in names]
    if not any(station for block in blocks for station in block.stations):
        known = all(stations) and len({*stations}) == len(stations)
        if known or len(machines) == 1:
            _name(like, stations if known else names, "station", found)
    elif not machines and not any(stations):
        _name(like, names, "machine", found)


def _alike(sheets: Sequence[OfSheet]) -> list[OfSheet]:
    """Sheets with names of their own, none a part's, that state the same; none where one of the names says nothing."""
    stated = [_stated(sheet.blocks) for sheet in sheets]
    again = Counter(key for keys in stated for key in keys)
    like = [s for s, keys in zip(sheets, stated, strict=True) if sum(again[key] > 1 for key in keys) >= _FEWEST]
    names = {(sheet.grid.sheet or "").strip() for sheet in like}
    told = len(names) == len(like) and not any(map(_NO_NAME.fullmatch, names))
    return like if told and all(side_of_sheet(sheet.grid) is None for sheet in like) else []


def _name(sheets: Sequence[OfSheet], names: Sequence[str], level: str, found: Found) -> None:
    """Give every table of each sheet its name, and tell it."""
    for sheet, name in zip(sheets, names, strict=True):
        for block in sheet.blocks:
            keys = block.stations if level == "station" else block.machines
            keys[:] = [name] * len(keys)
        place, read = sheet.grid.place(0, 0), visible(sheet.grid.sheet or "", 60)
        expected = f"the {level} in a column of its own, or with its word before it"
        message = (
            f"{place}: sheet {read} names no {level}, and {len(sheets)} sheets state the same; the name of the sheet "
            f"is taken for that of the {level}; expected {expected}."
        )
        found.problems.append(Problem("assumption", None, level, place, read, expected, message, "sheet-name"))


def _stated(blocks: Sequence[Block]) -> set[tuple[str, str, str]]:
    """Station, parameter and aspect of everything that tables state of positions."""
    return {
        (block.stations[row], strip.parameter, strip.aspect)
        for block in blocks
        for strip in block.strips
        if parameter(strip.parameter).level == "station" and strip.parameter != "station"
        for row in {*strip.rows.tolist()}
    }
