"""Columns of a list that say the same in every row: the machine, its drawing and the revision of that.

An export writes them beside each of its values (``品番 | 品名 | 部位 | 属性名 | 属性値``): what all rows say is of the
one machine that the list is about.
"""

from collections.abc import Iterator, Sequence

from linter.reading.files.grids import Grid
from linter.reading.layouts.foot import strips_for_all
from linter.reading.layouts.json_head import is_item_number
from linter.reading.layouts.strips import Found
from linter.reading.layouts.title import TitleCell
from linter.reading.words.headings import Heading, Told, Words
from linter.reading.words.machine_words import can_name_machine, says_machine

#: Rows that may head a list, cells of such a one, and rows below it, at least.
_ROWS, _FEWEST_HEADS, _FEWEST = 40, 4, 3
#: Rows of a list of one machine, at most.
_MOST_ROWS = 2000
_DRAWING, _REVISION, _LONGEST_REVISION = "drawing_number", "drawing_revision", 4


def with_machine_of_column(grid: Grid, words: Words) -> Words:
    """The words, with the head of a column that names the machine in every row where no other one does."""
    for row, _, label, value in _constant(grid):
        heads = grid.texts(row).values()
        if any((h := words.heading(text)) is not None and h.parameter == "machine" for text in heads):
            continue
        unknown = words.heading(label) is None and not {"NAME", "VALUE"} & {*words.groups(label)}
        if unknown and can_name_machine(label, value, words) and says_machine(value) and any(map(str.isdigit, value)):
            told = {label: Told("machine", "", by_comment=True)}
            return Words(words.names, {**words.told, **told}, words.deviations)
    return words


def take_constant_columns(grids: Sequence[Grid], found: Found, words: Words) -> None:
    """Add the drawing and its revision that every row of a list states, where nothing else does."""
    blocks = [block for block in found.blocks if block.strips]
    machines = {machine for block in blocks for machine in block.machines}
    if len(machines) != 1 or not machines.pop():
        return
    stated = {strip.parameter for block in blocks for strip in block.strips}
    used = {(s.sheet, s.at(k)) for b in blocks for s in b.strips if s.lines is not None for k in range(len(s.cells))}
    taken = dict[str, list[TitleCell]]()
    for grid in grids:
        for row, column, label, value in _constant(grid):
            name = _named(label, value, words)
            if name and name not in stated and (grid.sheet, grid.place(row + 1, column).cell) not in used:
                taken.setdefault(name, []).append(TitleCell(Heading(name), label, grid, row + 1, column))
    for cells in taken.values():
        if len({cell.grid.text(cell.row, cell.column) for cell in cells}) > 1:
            continue
        place = cells[0].grid.place(cells[0].row, cells[0].column)
        blocks[-1].strips += strips_for_all(cells[:1], blocks[-1], found)
        found.unused[:] = [one for one in found.unused if one.place != place]


def _named(label: str, value: str, words: Words) -> str:
    """What a column states of the drawing: its number, or that of the item, or its revision; empty for neither."""
    heading = words.heading(label)
    number = is_item_number(label, value) if heading is None else heading == Heading(_DRAWING)
    if number:
        return _DRAWING if any(map(str.isdigit, value)) else ""
    return _REVISION if heading == Heading(_REVISION) and len(value) <= _LONGEST_REVISION else ""


def _constant(grid: Grid) -> Iterator[tuple[int, int, str, str]]:
    """Row, column and text of heads of a list over columns that hold one text in each row, and that text."""
    if grid.height > _MOST_ROWS or grid.whole_lines:
        return
    for row in range(min(grid.height - _FEWEST, _ROWS)):
        if grid.filled[row] < _FEWEST_HEADS or grid.filled[row + 1] < _FEWEST:
            continue
        heads = [(c, label, value) for c, label in grid.texts(row).items() if (value := grid.text(row + 1, c)) != label]
        end = next((r for r in range(row + 1, grid.height) if grid.filled[r] < _FEWEST), grid.height)
        for column, label, value in heads if end - row > _FEWEST else ():
            if value and all(grid.text(r, column) == value for r in range(row + 2, end)):
                yield row, column, label, value
