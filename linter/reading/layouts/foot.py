"""Rows below a table with a heading row that state values of its machine: label and value, as in a title block."""

from collections.abc import Iterable, Sequence

import numpy as np

from linter.model.stations import Unused
from linter.reading.files.grids import Grid, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.lone import machine_heading, name_and_quantity
from linter.reading.layouts.strips import Block, Found, Strip, grid_strip
from linter.reading.layouts.title import (
    MOST_IN_TITLE,
    Title,
    TitleCell,
    names_value,
    pair_in_cell,
    read_title,
)
from linter.reading.words.designations import read_designation
from linter.reading.words.headings import Words

#: Rows at the end of a sheet that are looked at.
_MOST_ROWS = 40
#: Filled cells of a row of the table itself, at least: one more than label, value, unit and remark.
_BROAD = 5
#: The last rows of the table itself that are looked at for that: not each fills every column.
_ROWS_ABOVE = 4
#: Filled cells of a row of labels and values in turn, at most.
_MOST_IN_TURN = 8
#: Words of a speed that may be the highest or the one in use.


def foot_of(grid: Grid, words: Words, key: int = 0) -> int:
    """First row of the labels and values below a table with a heading row; the height of the grid where none stand.

    They are narrower than the table and follow a blank row or a note alone in its row, or begin with the name of a
    value of the machine. None of them names a station or a bearing. ``key`` is the column that rows of the table fill.
    """
    counts = [len(grid.texts(row)) for row in _last_rows(grid)]
    first = grid.height - len(counts)
    start = grid.height
    for row in range(grid.height - 1, first - 1, -1):
        if (count := counts[row - first]) == 0:
            continue
        apart = row > first and counts[row - first - 1] < 2
        narrow = count <= MOST_IN_TITLE or _in_turn(grid, row, words) or (apart and _figures_in_turn(grid, row))
        if _is_of_table(grid, row, words) or not narrow:
            break
        own = _states_machine(grid, row, words, apart=apart)
        if not own and _states_bearing(grid, row):
            break
        if own or (count > 1 and apart):
            start = row
    above = max([c for c in counts[: max(start - first, 0)] if c > 1][-_ROWS_ABOVE:], default=0)
    pairs = start < grid.height and len(_texts(grid, start)) > MOST_IN_TITLE and _figures_in_turn(grid, start)
    apart = pairs or _labelled_alone(grid, start, words) or _stands_inside(grid, start, key)
    return start if above >= _BROAD or apart else grid.height


def lone_foot(grid: Grid, words: Words) -> int:
    """First of the last rows that each hold one text, from one with a name and a quantity on; else the height."""
    start = grid.height
    for row in reversed(_last_rows(grid)):
        texts = _texts(grid, row)
        if len(texts) > 1:
            break
        start = row if texts and name_and_quantity(texts[0][1], words)[0] else start
    return start if start > 0 and grid.width > 1 else grid.height


def _stands_inside(grid: Grid, start: int, column: int) -> bool:
    """Whether every row from one on leaves blank a column that all rows of the table above it fill."""
    below = [row for row in range(start, grid.height) if _texts(grid, row)]
    above = [row for row in range(max(start - len(below) - 1, 0), start) if _texts(grid, row)]
    key = grid.columns[column]
    return len(above) > 1 and all(is_blank(key[r]) for r in below) and not any(is_blank(key[r]) for r in above)


def _labelled_alone(grid: Grid, start: int, words: Words) -> bool:
    """Whether each row from one on, below a blank row, is labels of the machine and their values, and no more."""
    texts = [_texts(grid, row) for row in range(start, grid.height)]
    apart = any(texts) and start > 0 and not _texts(grid, start - 1)
    return apart and all(_states_drawing(grid, start + k, words) for k, row in enumerate(texts) if row)


def _states_drawing(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row states the drawing, its revision or more of the machine, in one cell or in labels and values."""
    texts = [text for _, text in _texts(grid, row)]
    alone = [pair_in_cell(text, words) for text in texts]
    pairs = alone if all(value for _, value in alone) else list(zip(texts[::2], texts[1::2], strict=False))
    found = [machine_heading(label, value, "", words) for label, value in pairs]
    return bool(pairs) and len(pairs) * 2 >= len(texts) and all(heading is not None for heading in found)


def _states_bearing(grid: Grid, row: int) -> bool:
    """Whether the second text of a row is the number of a bearing of known sizes."""
    return any(len(text) > 2 and read_designation(text).bore_diameter for _, text in _texts(grid, row)[1:2])


def _last_rows(grid: Grid) -> range:
    return range(max(grid.height - _MOST_ROWS, 0), grid.height)


def _texts(grid: Grid, row: int) -> list[tuple[int, str]]:
    return [*grid.texts(row).items()]


def _is_of_table(grid: Grid, row: int, words: Words) -> bool:
    """Whether a narrow row is of a table: it begins with a station, or all its cells are names, no letters."""
    texts = [text for _, text in _texts(grid, row)]
    names = all(len(text) > 1 and names_value(words, text) for text in texts)
    return bool(words.station_said(texts[0])) or (len(texts) > 1 and names)


def _states_machine(grid: Grid, row: int, words: Words, *, apart: bool = False) -> bool:
    """Whether a row holds the name of a value of the machine and its value, in one cell or two.

    It may be the machine alone in one cell of a row that stands ``apart``.
    """
    texts = [text for _, text in _texts(grid, row)]
    if apart and len(texts) == 1 and _states_drawing(grid, row, words):
        return True
    alone = [pair_in_cell(text, words) for text in texts] if len(texts) == 1 else []
    pairs = alone or list(zip(texts[::2], texts[1::2], strict=False))
    unit = texts[2] if len(texts) == MOST_IN_TITLE else ""
    found = [machine_heading(label, value, unit, words) for label, value in pairs if value]
    return any(heading is not None and heading.parameter != "machine" for heading in found)


def _in_turn(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row is label and value in turn, one of them at least of the machine and no value a name itself."""
    texts = [text for _, text in _texts(grid, row)]
    values = [text for text in texts[1::2] if len(text) > 1 and names_value(words, text)]
    return len(texts) % 2 == 0 and len(texts) <= _MOST_IN_TURN and not values and _states_machine(grid, row, words)


def _figures_in_turn(grid: Grid, row: int) -> bool:
    """Whether a row is a word and a figure in turn (``Coolant | 6 L/min | Clamping force | 3.5 kN``)."""
    texts = [text for _, text in _texts(grid, row)]
    words, figures = texts[::2], texts[1::2]
    return len(words) == len(figures) <= _MOST_IN_TURN // 2 and not any(
        word[0].isdigit() or not figure[0].isdigit() for word, figure in zip(words, figures, strict=True)
    )


def take_foot(foot: Grid, block: Block, words: Words, found: Found) -> None:
    """Add to a block of one machine what stands below its table; what is not understood goes to the unused cells."""
    left: list[Unused] = []
    title = read_title(foot, words, left)
    if len({*block.machines}) > 1:
        _do_not_take(title, title.cells[:], "the table above is of several machines", found)
    _leave(foot, left, words, found)
    if title.machine and not any(block.machines):
        block.machines[:] = [title.machine] * len(block.machines)
    found.say("labels and values below the table are of its machine")
    block.strips.extend(strips_for_all(title.cells, block, found))


def take_below(below: Grid, blocks: Sequence[Block], words: Words, found: Found) -> None:
    """Add what stands below all tables of a sheet, apart from them, to the last of them where they are of one machine.

    What no label names is told already.
    """
    told = {unused.place for unused in found.unused}
    own, foot = Found(), blocks[-1]
    if len({machine for block in blocks for machine in block.machines}) > 1:
        title = read_title(below, words, [])
        _do_not_take(title, title.cells[:], "the tables above are of several machines", own)
    else:
        take_foot(below, foot, words, own)
    found.unused.extend(unused for unused in own.unused if unused.place not in told)
    found.problems.extend(own.problems)


def _do_not_take(title: Title, cells: Sequence[TitleCell], reason: str, found: Found) -> None:
    """List values of a foot as unused."""
    for cell in cells:
        read, place = cell.grid.text(cell.row, cell.column), cell.grid.place(cell.row, cell.column)
        found.leave(Unused(cell.label, visible(read), place, reason))
        title.cells.remove(cell)


def _leave(foot: Grid, left: list[Unused], words: Words, found: Found) -> None:
    """List what is not understood: a value under its label."""
    places = {one.place for one in left}
    for row in range(foot.height):
        cells = [(c, text) for c, text in _texts(foot, row) if foot.place(row, c) in places]
        for column, text in cells[:1] if len(cells) > 1 else ():
            values = visible(", ".join(text for _, text in cells[1:]))
            found.leave(Unused(text, values, foot.place(row, column), words.why(text)))
        if len(cells) == 1:
            found.leave(Unused("below the table", cells[0][1], foot.place(row, cells[0][0]), "not a row of values"))


def strips_for_all(cells: Iterable[TitleCell], block: Block, found: Found) -> list[Strip]:
    """What labels and values around a table state of each of its machines, or of all stations of those."""
    first: dict[str, int] = {}
    for row, machine in enumerate(block.machines):
        first.setdefault(machine, row)
    whole: dict[str, int] = {}
    stated = {strip.parameter for strip in block.strips}
    strips = []
    for cell in cells:
        rows = list(first.values())
        if cell.heading.entry.level != "machine":
            if cell.heading.parameter in stated:
                read, reason = cell.grid.text(cell.row, cell.column), "the table states it of each station itself"
                found.leave(Unused(cell.label, visible(read), cell.grid.place(cell.row, cell.column), reason))
                continue
            for machine in first:
                if machine not in whole:
                    whole[machine] = len(block.machines)
                    block.machines.append(machine)
                    block.stations.append("")
            rows = list(whole.values())
        if rows:
            at = np.full((len(rows), 2), (cell.row, cell.column))
            strips.append(grid_strip(cell.grid, cell.heading.parameter, at, rows, **cell.heading.traits(cell.label)))
    return strips
