"""A prefix that every name of a column carries and that says nothing (``PRM_``, ``V.``: common practice of CAD)."""

import re
from collections import Counter

from attrs import evolve

from linter.reading.files.grids import Grid, TextColumn, object_column
from linter.reading.layouts.sides import side_of
from linter.reading.words.headings import Words

_PREFIX = re.compile(r"([^\W\d_]{1,6})[_.](?=[^\W\d_])")
#: Names that must carry it, and their share of the column's texts.
_LEAST, _SHARE = 4, 0.8
#: Columns and rows that are looked at.
_COLUMNS, _ROWS = 4, 2000


def without_prefix(grid: Grid, words: Words) -> Grid:
    """The grid with such a prefix cut off its names, where more of them are known then; else the grid as it is."""
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


def _says(words: Words, prefix: str) -> bool:
    """Whether a prefix can be a part, a parameter or a word of a layout."""
    named = words.heading(prefix) if len(prefix) > 1 else None
    return bool(named or words.groups(prefix) or side_of(prefix))
