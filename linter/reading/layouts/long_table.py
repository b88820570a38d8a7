"""A table with its names down a column: what its columns are, and how its cells are looked at."""

import re
from collections.abc import Sequence
from itertools import islice, pairwise
from typing import Any

from attrs import define, field

from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.layouts.sides import Side
from linter.reading.words.headings import Words

ASPECTS = {"UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min", "CLASS": "tolerance"}
_MOST_NAMES = 2000  # rows whose names are counted
#: Words for the two limits of a size that head columns of sizes (common practice).
_LIMITS = {
    "low": "MIN", "high": "MAX", "lo": "MIN", "hi": "MAX", "smallest": "MIN", "largest": "MAX", "small": "MIN",
    "large": "MAX", "low limit": "MIN", "high limit": "MAX", "kleinst": "MIN", "größt": "MAX", "klein": "MIN",
    "groß": "MAX", "petit": "MIN", "grand": "MAX", "menor": "MIN", "mayor": "MAX", "minore": "MIN", "maggiore": "MAX",
    "меньший": "MIN", "больший": "MAX", "наим": "MIN", "наиб": "MAX", "小": "MIN", "大": "MAX",
}  # fmt: skip
_SYMBOL = re.compile(r"[Ø⌀øφ]|[A-Za-zØΔαβν][A-Za-z]?\d{0,2}(?:max|min|[ _,.](?:max|min|[a-z0-9]{1,3}))?\.?")
_CODE = re.compile(r"([A-Za-z]{1,8}[-_. ]?)(\d{1,4})")  # BR-01, REQ 12
SAMPLE = 300  # cells that tell what a column holds


@define(eq=False)
class LongTable:
    """A table whose parameter names stand in one column.

    Attributes
    ----------
    grid : Grid
        The region.
    header : int
        Header row, or -1 for none.
    name : int
        Column of the names.
    roles : dict of int to str
        What the other columns hold: ``VALUE``, ``UNIT``, ``EXPR``, ``UPPER``, ``LOWER``, ``MAX``, ``MIN``, ``CLASS``,
        ``STATION``, ``MACHINE``, ``KIND`` (of a characteristic), ``RESULT`` (measured values and verdicts), ``NOTE``,
        ``PART`` (says of each row which part of a size it states: Max, Min), ``SIDE`` (shaft, housing or bearing),
        ``MATERIAL`` (of parts), ``UNNAMED`` (values that no heading names), or ``COLUMN`` for a station of a
        transposed table.
    score : int
        Number of names that are recognised.
    start : int
        First row below the header or the title.
    parts : dict of int to Side
        Shaft, housing or bearing of each row, where a column (``SIDE``) says it.
    objects : dict of int to str
        Station of each row, where a column of objects (``Rotor``, ``Bearing A``, ``Bearing B``) says it.
    machines : int
        Row that names the machines above stations side by side, or the positions of ``spans``; -1 for none.
    heads : dict of int to str
        Position of each column of a transposed table whose head says more (``As designed DE``).
    spans : list of (str, dict of int to str)
        Positions that stand over heads of their own, each with the roles of its columns.
    items : bool
        Whether it is a parts list, whose rows may be items too.
    filled : dict of int to int
        Column of objects of each row below the object that it is of.
    """

    grid: Grid
    header: int
    name: int
    roles: dict[int, str]
    score: int
    start: int = 0
    parts: dict[int, Side] = field(factory=dict)
    objects: dict[int, str] = field(factory=dict)
    machines: int = -1
    heads: dict[int, str] = field(factory=dict)
    spans: list[tuple[str, dict[int, str]]] = field(factory=list)
    items: bool = False
    filled: dict[int, int] = field(factory=dict)

    @property
    def transposed(self) -> bool:
        """Whether stations stand side by side."""
        return "COLUMN" in self.roles.values()


def names_below(grid: Grid, column: int, start: int, words: Words) -> int:
    """Number of distinct names that a column states."""
    cells = grid.columns[column][start : start + _MOST_NAMES].tolist()
    texts = {cell for cell in cells if type(cell) is str}
    named = {words.heading(text) for text in texts if len(text.strip()) > 1 or words.mapped(text)}
    if len(texts) < 4:  # a lone letter among other words is rather a station than a symbol
        letters = {words.heading(text) for text in texts if len(text.strip()) == 1} - {None}
        named |= letters if len(letters) > 1 or named - {None} or len(texts) == 1 else set()
    # numbers are names only where the name mapping says so: of the characteristics on a drawing
    named |= {words.heading(text) for cell in cells if type(cell) is not str and words.mapped(text := cell_text(cell))}
    return len(named - {None})


def are_symbols(grid: Grid, column: int, start: int) -> bool:
    """Whether cells of a column are symbols of the standards (``d``, ``Ra``, ``ra max``), each beside a longer name."""
    texts = [cell for cell in sample(grid, column, start) if type(cell) is str]
    short = sum(_SYMBOL.fullmatch(text.strip()) is not None for text in texts)
    return len({*texts}) > 2 and short >= 0.9 * len(texts)


def limit_said(text: str) -> str:
    """``MIN`` or ``MAX`` for a word that heads one of two limits of sizes where both stand (``Low``, ``High``)."""
    return _LIMITS.get(text.lower().strip(" ."), "")


def sample(grid: Grid, column: int, start: int) -> list[Any]:
    """Filled cells that tell what a column holds."""
    return list(islice((cell for cell in grid.columns[column][start:].tolist() if not is_blank(cell)), SAMPLE))


def says_parts_of_size(cells: Sequence[Any], words: Words) -> bool:
    """Whether the cells of a column say which part of a size each row states (``Max``, ``Min``)."""
    parts = sum(1 for cell in cells if type(cell) is str and words.group(cell) in ASPECTS)
    return parts >= 2 and parts >= 0.5 * len(cells)


def counts_with_letters(texts: Sequence[str]) -> bool:
    """Whether texts are running numbers with the same letters before them (``BR-01``, ``BR-02``)."""
    found = [_CODE.fullmatch(text) for text in texts]
    codes = [(code[1], int(code[2])) for code in found if code is not None]
    alike = len({letters for letters, _ in codes}) == 1 and len(codes) == len(found) > 2
    return alike and all(a < b for (_, a), (_, b) in pairwise(codes))
