"""Cells that no layout took and none told of: each is listed, so that no value is lost in silence.

A layout reads what it understands and tells what it does not. What stands outside every layout (a line beside a title,
a block below an unknown head, a value of a machine that has no station) is found here from the file itself: a cell
that holds a number, a tolerance class or what stands beside a known name, and that is neither used nor told.
"""

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from itertools import islice, pairwise

from linter.model.stations import Problem, Unused
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Bad, Grid, cell_text, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.lost import ENOUGH, is_value
from linter.reading.layouts.strips import Found
from linter.reading.words.headings import Words
from linter.reading.words.match import OPEN
from linter.reading.words.parts import concepts_said

#: Why a cell that is listed here is not used.
LEFT = "nothing that is read tells whose value it is"
#: A cell of a sheet, or a JSON Pointer of none.
Cell = tuple[str | None, str]
_Where = tuple[int, int]
_VALUE = re.compile(
    r"\s*[Ø⌀øφΦϕ∅Ф(]?\s*[+\-−±~≤<≥>]?\s*[.,]?\d|\s*(?:[efghjkmnpr]|js|[EFGHJKMNPR]|JS)(?:[3-9]|1[01])(?:\W.*)?$"
)
_COUNTED = re.compile(r"\d+(?:\.\d+)*[.)]?")
#: Filled cells of a row that may be names and texts beside them: two of each.
_FEW = 4
#: The longest text of a value beside its name.
_LONGEST = 40
#: Entries that are listed, cells of a sheet that is looked at, cells in it that are looked at for themselves, and how
#: far above one its name may stand: beyond these a table is no sheet of a firm's (a hostile one costs no more time).
_AT_MOST, _MOST_CELLS, _MOST_LOOKED, _FARTHEST = 200, 60_000, 2_000, 100


def left_over(file: str, grids: Sequence[Grid], found: Found, used: Iterable[Cell], words: Words) -> list[Unused]:
    """The cells of a file that hold a value and are neither used nor told.

    Parameters
    ----------
    file : str
        Its name.
    grids : sequence of Grid
        The sheets as they were read.
    found : Found
        What the layouts made of the file: its problems and what it lists as unused are told.
    used : iterable of (sheet, cell)
        Where the values that are used stand; a JSON Pointer is the cell of no sheet.
    words : Words
        The words that are known.

    Returns
    -------
    list of Unused
        Those cells, a row or column of them as one.
    """
    without = {id(grid) for grid in found.without_table}
    sheets = [grid for grid in grids if grid.height * grid.width <= _MOST_CELLS and id(grid) not in without]
    if grids and not sheets:
        return []
    taken = set(used)
    places = [u.place for u in found.unused] + [p.place for p in found.problems if p.place is not None]
    told = {(place.sheet, place.cell or place.pointer or "") for place in places}
    laid, left = _laid(file, found, taken | told)
    keys = {key for block in found.blocks for key in (*block.machines, *block.stations)}
    for grid in sheets:
        left += islice(_Sheet(grid, words, (taken, told, laid), keys).left_over(), _AT_MOST)
    return left[:_AT_MOST]


def _laid(file: str, found: Found, known: set[Cell]) -> tuple[dict[Cell, str], list[Unused]]:
    """The names of cells that layouts took and that were lost again, and those of them that stand in no sheet."""
    laid: dict[Cell, str] = {}
    left: list[Unused] = []
    for strip in (strip for block in found.blocks for strip in block.strips if len(strip.cells) <= LONGEST_MIXED):
        for index, cell in enumerate(strip.cells.tolist()):
            at = (strip.sheet, strip.at(index))
            if is_blank(cell) or at in known:
                continue
            laid[at] = strip.label
            if strip.pointers is not None:
                shown = visible(strip.whole.get(index) or cell_text(cell), 40)
                left.append(Unused(visible(strip.label, 60), shown, strip.place(file, index), LEFT))
    return laid, left


def tell_unreviewed(unused: Iterable[Unused], words: Words) -> list[Problem]:
    """The finding about values below known names of a seat or a bearing that are not used: whose they are is not said.

    Parameters
    ----------
    unused : iterable of Unused
        All that is not used, the cells that are left over among it.
    words : Words
        The words that are known.

    Returns
    -------
    list of Problem
        One, where :data:`~linter.reading.layouts.lost.ENOUGH` parameters stand so: a position may be left unreviewed.
    """
    told: dict[str, Unused] = {}
    for one in unused:
        heading = words.heading(one.name) if one.name and one.reason in (LEFT, OPEN) else None
        if heading is None or heading.entry.level != "station" or heading.parameter == "station":
            continue
        if is_value(one.value.split(" | ")[0].split(", ")[0], heading.entry):
            told.setdefault(heading.parameter, one)
    if len(told) < ENOUGH:
        return []
    first = next(iter(told.values()))
    names = ", ".join(visible(one.name, 40) for one in [*told.values()][:5])
    expected = "the position above or beside them, as above or beside the other values"
    message = (
        f"{first.place}: {len(told)} values under names that are known ({names}) are not used, as nothing says of "
        f"which position they are; expected {expected}; a position may be left unreviewed."
    )
    return [Problem("unreadable", None, "station", first.place, names, expected, message, "values-not-read")]


class _Sheet:
    """The cells of one sheet: what is used, what is told, what is laid out and lost again, what is left."""

    def __init__(
        self, grid: Grid, words: Words, known: tuple[set[Cell], set[Cell], dict[Cell, str]], keys: set[str]
    ) -> None:
        self.grid, self.words, self.keys = grid, words, keys
        taken, told, laid = known
        shape = [(row, column) for row in range(grid.height) for column in range(grid.width)]
        filled = [where for where in shape if not is_blank(grid.columns[where[1]][where[0]])]
        self.at: dict[_Where, Cell] = {where: (grid.sheet, grid.place(*where).cell or "") for where in filled}
        self.count = Counter(row for row, _ in filled)
        self.used = {where for where, cell in self.at.items() if cell in taken}
        self.told = {where for where, cell in self.at.items() if cell in told}
        heads = ((column, grid.text(row, column)) for row, column in filled if row < _FARTHEST)
        self._remarks = {column for column, text in heads if set(words.groups(text)) & {"NOTE", "KIND"}}
        self.laid = {where: laid[cell] for where, cell in self.at.items() if cell in laid}

    def left_over(self) -> Iterator[Unused]:
        """What is left, a column of it as one where nothing of the column is used, else a row of it."""
        apart = islice((where for where in self.at if where not in self.used and where not in self.told), _MOST_LOOKED)
        left = self._without_counts([where for where in apart if self._is_left(*where)])
        used_rows, used_columns = ({where[i] for where in self.used} for i in (0, 1))
        told = [where for where in self.told if known_unit(self.grid.text(*where)) is None]
        told_rows, told_columns = ({where[i] for where in told} for i in (0, 1))
        columns: dict[int, list[_Where]] = {}
        rows: dict[int, list[_Where]] = {}
        for row, column in left:
            if (row, column) in self.laid:
                rows.setdefault(row, []).append((row, column))
            elif column not in used_columns and (column in told_columns or row in used_rows):
                columns.setdefault(column, []).append((row, column))
            elif row in used_rows or row not in told_rows:
                rows.setdefault(row, []).append((row, column))
        for column, cells in columns.items():
            if column not in told_columns:
                yield self._unused(self._above(*cells[0]), cells)
        for cells in rows.values():
            yield self._unused(self._name_of(*cells[0]), cells)

    def _is_left(self, row: int, column: int) -> bool:
        cell, text = self.grid.columns[column][row], self.grid.text(row, column)
        if isinstance(cell, Bad) or text in self.keys or known_unit(text) is not None:
            return False
        if (row, column) in self.laid:
            return True
        if self.words.heading(text) is not None or self.words.groups(text):
            return False
        return _VALUE.match(text) is not None or self._is_named(row, column)

    def _is_named(self, row: int, column: int) -> bool:
        """Whether a cell is what stands beside a known name, in a row of few cells: a line of a title, of a list.

        A text below a word for remarks, or one longer than a value is, says something about the name.
        """
        text = self.grid.text(row, column)
        if self.count[row] > _FEW or len(text) > _LONGEST or concepts_said(text) or column in self._remarks:
            return False
        return bool(before := self._before(row, column)) and self.words.heading(before) is not None

    def _name_of(self, row: int, column: int) -> str:
        """The known name beside a cell; else that by which a layout took it, or what stands beside or above it."""
        before = self._before(row, column)
        known = before if before and self.words.heading(before) is not None else ""
        return known or self.laid.get((row, column)) or before or self._above(row, column)

    def _before(self, row: int, column: int) -> str:
        """The nearest text to the left that is no value and no unit."""
        return self._first_name(self.grid.text(row, at) for at in range(column - 1, max(column - _FARTHEST, -1), -1))

    def _above(self, row: int, column: int) -> str:
        """The nearest text above that is no value and no unit."""
        return self._first_name(self.grid.text(at, column) for at in range(row - 1, max(row - _FARTHEST, -1), -1))

    @staticmethod
    def _first_name(texts: Iterable[str]) -> str:
        return next((text for text in texts if text and not _VALUE.match(text) and known_unit(text) is None), "")

    def _without_counts(self, left: list[_Where]) -> list[_Where]:
        """What is left without columns of it that count their rows."""
        columns: dict[int, list[_Where]] = {}
        for where in left:
            columns.setdefault(where[1], []).append(where)
        counting = {column for column, cells in columns.items() if self._counts(cells)}
        return [where for where in left if where[1] not in counting or where in self.laid]

    def _counts(self, cells: list[_Where]) -> bool:
        """Whether cells count their rows: each number is larger than the one before it, or begins again."""
        texts = [self.grid.text(*where) for where in cells]
        if len(texts) < 2 or not all(map(_COUNTED.fullmatch, texts)):
            return False
        numbers = [[int(n) for n in re.findall(r"\d+", text)] for text in texts]
        return all(after > before or after[-1] == 1 for before, after in pairwise(numbers))

    def _unused(self, name: str, cells: list[_Where]) -> Unused:
        shown = " | ".join(visible(self.grid.text(*where), 40) for where in cells[:6])
        more = f" (and {len(cells) - 6} more)" if len(cells) > 6 else ""
        return Unused(visible(name, 60), f"{shown}{more}", self.grid.place(*cells[0]), LEFT)
