"""Names that are paths from the machine down (``Pump P-12 / DE / shaft / seat diameter``): the machine becomes a row.

A first piece that many names share, that says nothing itself and stands before positions is the name of a machine, as
common practice of exports has it. Without it the names are read like any others.
"""

import re
from collections import defaultdict
from collections.abc import Iterable

from attrs import frozen

from linter.reading.files.grids import LONGEST_MIXED, Grid, TextColumn
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.layouts.sides import side_of
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said

#: What parts the pieces of a path, the surest first.
_SEPARATORS = tuple(
    re.compile(sign) for sign in (r"\s*(?:/|>|»|\||\\|→|::)\s*", r"\s+[-–—]\s+", r"\.(?=[^\W\d])", r"_")
)
#: Names with the same first piece, columns that are looked at, and the longest name.
_LEAST, _SHARE, _COLUMNS, _LONGEST = 4, 0.8, 4, 120
#: Names that show whether a sign parts them.
_SAMPLE = 100


@frozen
class MachinePath:
    """A name without its machine: the machine, and the rest of the path with its own signs."""

    machine: str
    rest: str


def machine_paths(names: Iterable[str], words: Words) -> dict[str, MachinePath]:
    """The machine of each name and what is left of it, where names are paths that begin with one.

    Parameters
    ----------
    names : iterable of str
        The names of one table.
    words : Words
        The names that are understood.

    Returns
    -------
    dict of str to MachinePath
        By name; empty where the names are no such paths.
    """
    texts = [text for text in dict.fromkeys(names) if len(text) <= _LONGEST]
    for separator in _SEPARATORS:
        if 2 * sum(separator.search(text) is not None for text in texts[:_SAMPLE]) < len(texts[:_SAMPLE]):
            continue
        found: dict[str, list[tuple[str, str, list[str]]]] = defaultdict(list)
        for text in texts:
            first, *pieces = separator.split(text)
            if pieces and first and all(pieces):
                cut = separator.search(text)
                found[first].append((text, text[cut.end() :] if cut else "", pieces))
        count = sum(map(len, found.values()))
        enough = count >= max(_LEAST, _SHARE * (len(texts) - _LEAST))
        if enough and all(_names_machine(first, rests, words) for first, rests in found.items()):
            return {text: MachinePath(first, rest) for first, rests in found.items() for text, rest, _ in rests}
    return {}


def _names_machine(first: str, rests: list[tuple[str, str, list[str]]], words: Words) -> bool:
    """Whether the first piece of paths is a machine: a name with a figure, before two positions or more."""
    if len(rests) < _LEAST or not any(map(str.isdigit, first)) or not any(map(str.isalpha, first)):
        return False
    if words.station_said(first) or words.heading(first) or words.groups(first) or side_of(first):
        return False
    if concepts_said(first) & {"shaft", "housing", "bearing", "seat", "shoulder", "ring"}:
        return False
    stations: set[str] = set()
    for *_, pieces in rests:
        placed = {said for piece in pieces[:-1] if (said := words.station_said(piece))}
        heading = words.heading(pieces[0]) if len(pieces) == 1 else None
        if not placed and (heading is None or heading.entry.level != "machine"):
            return False
        stations |= placed
    return len(stations) > 1


def with_machines_of_paths(grid: Grid, words: Words) -> Grid:
    """The grid with a row for the machine before the names that begin with it, and those without it."""
    if grid.height > LONGEST_MIXED or grid.merged:
        return grid
    for column in range(min(grid.width, _COLUMNS)):
        cells = grid.columns[column]
        if isinstance(cells, TextColumn) or sum(type(cell) is str for cell in cells.tolist()) < _LEAST:
            continue
        paths = machine_paths([cell for cell in cells.tolist() if type(cell) is str and cell.strip()], words)
        if paths:
            return _apart(grid, column, paths)
    return grid


def _apart(grid: Grid, column: int, paths: dict[str, MachinePath]) -> Grid:
    rows: list[tuple[int, dict[int, object] | None]] = []
    several = len({path.machine for path in paths.values()}) > 1
    current = ""
    for row in range(grid.height):
        cell = grid.columns[column][row]
        path = paths.get(cell) if type(cell) is str else None
        if path is None:
            rows.append((row, None))
            continue
        if path.machine != current:
            current = path.machine
            label: dict[int, object] = {column: ": ".join(("machine", current))}  # as a label of a title has it
            rows.insert(len(rows) if several else 0, (row, label))
        rows.append((row, {c: path.rest if c == column else grid.columns[c][row] for c in range(grid.width)}))
    return of_rows(grid, rows)
