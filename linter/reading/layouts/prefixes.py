"""A prefix that every name of a column carries and that says nothing (``PRM_``, ``V.``: common practice of CAD)."""

import re
from collections import Counter

import numpy as np
from attrs import evolve
from numpy.typing import NDArray

from linter.reading.files.grids import Grid, TextColumn, object_column
from linter.reading.layouts.sides import side_of
from linter.reading.words.headings import Words
from linter.reading.words.parts import tells_feature

_PREFIX = re.compile(r"([^\W\d_]{1,6})[_.](?=[^\W\d_])")
_PREFIX_OF_MACHINE = re.compile(r"([^\W\d_]{3,20})[_.]")
#: Names that must carry it, and their share of the column's texts.
_LEAST, _SHARE = 4, 0.8
#: Columns and rows that are looked at.
_COLUMNS, _ROWS = 4, 2000


def without_prefix(grid: Grid, words: Words) -> Grid:
    """The grid with such a prefix cut off its names, where more of them are known then; else the grid as it is."""
    own = _without_machine(grid, words)
    return own if own is not grid else _without_shared(grid, words)


def _without_shared(grid: Grid, words: Words) -> Grid:
    for column in range(min(grid.width, _COLUMNS)):
        cells = grid.columns[column]
        if isinstance(cells, TextColumn):
            continue
        texts = [cell for cell in cells[:_ROWS].tolist() if type(cell) is str and cell]
        counts = Counter(match[1] for text in texts if (match := _PREFIX.match(text)))
        prefix, count = counts.most_common(1)[0] if counts else ("", 0)
        if count < max(_LEAST, _SHARE * (len(texts) - 1)) or _says(words, prefix):
            continue
        cut = re.compile(re.escape(prefix) + "[_.]")
        named = [text for text in texts if cut.match(text)]
        bare = [words.heading(cut.sub("", text, count=1)) for text in named]
        stations = {heading.station for heading in bare if heading is not None} - {""}
        if words.names.station(prefix) and len(stations) < 2:
            continue  # the names of one station
        if (
            sum(h is not None for h in bare) > sum(words.heading(text) is not None for text in named)
            or len(stations) > 1
        ):
            plain = [cut.sub("", c, count=1) if type(c) is str and cut.match(c) else c for c in cells.tolist()]
            columns = [*grid.columns]
            columns[column] = object_column(plain)
            return evolve(grid, columns=columns)
    return grid


def _without_machine(grid: Grid, words: Words) -> Grid:
    for cells in grid.columns[:_COLUMNS]:
        if not isinstance(cells, TextColumn) and (plain := _of_the_machine(words, cells)) is not cells:
            return evolve(grid, columns=[plain if c is cells else c for c in grid.columns])
    return grid


def _of_the_machine(words: Words, cells: NDArray[np.object_]) -> NDArray[np.object_]:
    """Names without the word for the machine that begins two values of it or more (``flywheel_max_speed_rpm``)."""
    named: dict[str, dict[str, str]] = {}
    for text in dict.fromkeys(cell for cell in cells[:_ROWS].tolist() if type(cell) is str):
        if (match := _PREFIX_OF_MACHINE.match(text)) is not None:
            named.setdefault(match[1], {})[text] = text[match.end() :]
    bare: dict[str, str] = {}
    for prefix, names in named.items():
        if not (_says(words, prefix) or words.names.station(prefix) or tells_feature(prefix)):
            bare |= _values_of_machine(words, names)
    if not bare:
        return cells
    return object_column([bare.get(cell, cell) if type(cell) is str else cell for cell in cells.tolist()])


def _values_of_machine(words: Words, names: dict[str, str]) -> dict[str, str]:
    """Names that mean nothing, with what is left of them; none where that names other things than two of a machine."""
    headings = {name: heading for name, rest in names.items() if (heading := words.heading(rest)) is not None}
    several = len({heading.parameter for heading in headings.values()}) > 1
    if not several or any(heading.entry.level != "machine" for heading in headings.values()):
        return {}
    return {name: names[name] for name in headings if words.heading(name) is None}


def _says(words: Words, prefix: str) -> bool:
    """Whether a prefix can be a part, a parameter or a word of a layout."""
    named = words.heading(prefix) if len(prefix) > 1 else None
    return bool(named or words.groups(prefix) or side_of(prefix))
