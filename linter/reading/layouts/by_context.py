"""What a sheet says by the words above, beside and over its values, beside what the layouts read of it.

Where both agree on every cell that both read, what only the words tell is taken too: a second position, a column.
"""

from collections import Counter
from collections.abc import Iterator, Set

import numpy as np
from attrs import evolve

from linter.model.places import Place
from linter.model.stations import Problem
from linter.model.vocabulary import parameter
from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.layouts.context_tree import Tree, tree_of
from linter.reading.layouts.row_keys import machine_by_rows
from linter.reading.layouts.row_names import name_rows, row_names, without_row_names
from linter.reading.layouts.strips import Block, Found, Strip, filled_down
from linter.reading.words.designations import looks_like_designation
from linter.reading.words.headings import Words
from linter.reading.words.measured_words import FOUND_REASON

#: Cells of sheets that are read this way; larger ones are plain lists.
_MOST_CELLS = 20_000
#: So many cells more make another reading; so many, of this share of all, stand for a sheet that no layout reads.
_GAIN, _ALONE, _SHARE = 4, 8, 0.8
#: So many cells make a position of its own.
_FEW = 3
#: Why layouts leave a cell of which words around it may say more.
_FOR_WANT_OF_WORDS = {
    "no heading says whose values these are", "not a row of values", "no name stands beside it", "above the table",
    "below the table", "the row names no station", "no unit stands beside it",
    "no label of the table's head is known here", "a title block is not as long",
    "a column that says nothing about the values", "the value beside it is of the whole machine",
}  # fmt: skip
#: Parameter, machine and station that a cell states, by its place.
_Stated = dict[str, list[tuple[str, tuple[str, str]]]]


def complete_by_context(grid: Grid, words: Words, found: Found, tables: int) -> None:
    """Add what the words of a sheet say to what the layouts read of it, where both agree on all that both read.

    Parameters
    ----------
    grid : Grid
        The sheet.
    words : Words
        The words that are known.
    found : Found
        What was found; its blocks from ``tables`` on are those of this sheet.
    tables : int
        Number of blocks of other sheets.
    """
    if grid.height < 2 or grid.height * grid.width > _MOST_CELLS:
        return
    own = found.blocks[tables:]
    before = without_row_names(_stated(own), grid)
    if (read := _by_words(grid, words, before)) is None:
        return
    tree, blocks = read
    after = _stated(blocks)
    before = _stated(own) if name_rows(grid, own, after, found) else before
    all_before, before = before.keys(), _of_none(before, after)
    if (names := _names_agreed(before, after)) is None or not _says_more(before, after, tree):
        return
    _take(found, own, blocks, before, after, names, _told(grid, words, found))
    gain = _stated(blocks).keys()
    if gain:
        _tell(grid, tree, gain, found)
        _take_back(grid, found, gain, gain | all_before)


def _tell(grid: Grid, tree: Tree, gain: Set[str], found: Found) -> None:
    """What is assumed of the cells that the words tell, and how many they are."""
    rows = {row for row, column in tree.where.values() if grid.place(row, column).cell in gain}
    if below := [at for at in tree.below if at[0] in rows]:
        found.problems.append(filled_down(grid.place(*below[0]), len(below), "row", "station"))
    told = {(p.code, p.place) for p in found.problems}
    named = [machine_by_rows(grid, label, row, column) for row, column, label in tree.by_rows if rows]
    found.problems.extend(p for p in named if (p.code, p.place) not in told)
    found.layouts.extend([] if found.layouts else ["words above and beside values"])
    first = min((grid.place(*at) for at in tree.where.values() if grid.place(*at).cell in gain), key=_reading_order)
    found.say(f"{first.short()}: {len(gain)} cells, this the first, are read by the words above and beside them alone")


def _reading_order(place: Place) -> tuple[int, int, str]:
    letters = (place.cell or "").rstrip("0123456789")
    return int((place.cell or "0")[len(letters) :] or 0), len(letters), letters


def _by_words(grid: Grid, words: Words, before: _Stated) -> tuple[Tree, list[Block]] | None:
    """What the words of a sheet say of it; None where that can say no more than the layouts, or not without doubt."""
    of = [key for said in before.values() for _, key in said]
    machines, stations = ({key[level] for key in of} - {""} for level in (0, 1))
    unnamed = bool(stations & row_names(grid))
    if len(stations) > 1 and not unnamed and _values_left(grid, before) < _GAIN:
        return None
    tree = tree_of(grid, words)
    cells = {grid.place(*where).cell or "" for where in tree.where.values()}
    apart = unnamed or len(tree.positions) > len(stations) or len(tree.machines) > max(len(machines), 1)
    if len(cells - before.keys()) < _GAIN and not apart:
        return None
    from linter.reading.layouts.json_tree import lay_out_json

    found = Found()
    lay_out_json(grid.file, tree.document, words, found)
    if any(p.place is None or p.place.pointer not in tree.where for p in found.problems):
        return None  # an assumption about more than a value
    for problem in found.problems:  # what is not certain is left to the layouts
        tree.where.pop(problem.place.pointer if problem.place and problem.place.pointer else "", None)
    for block in found.blocks:
        block.strips[:] = [t for strip in block.strips if (t := _placed(strip, tree, grid)) is not None]
    return tree, found.blocks


def _of_none(before: _Stated, after: _Stated) -> _Stated:
    """What the layouts read, of no station where all of theirs is of one and the words tell two apart in it."""
    said = {station for one in before.values() for _, (_, station) in one if station}
    counts = Counter(station for at in before.keys() & after.keys() for _, (_, station) in after[at] if station)
    if len(said) != 1 or sum(count >= _FEW for count in counts.values()) < 2:
        return before
    return {at: [(name, (machine, "")) for name, (machine, _) in one] for at, one in before.items()}


def _take_back(grid: Grid, found: Found, gain: Set[str], read: Set[str]) -> None:
    """Take back what is told of cells that are read now, a finding where all figures of its row and column are."""

    def is_read(place: Place | None) -> bool:
        return place is not None and place.sheet == grid.sheet and place.cell in gain

    left = [where for where in _figures(grid) if grid.place(*where).cell not in read]
    rows, columns = ({where[i] for where in left} for i in (0, 1))
    at = {grid.place(row, column).cell: (row, column) for row in range(grid.height) for column in range(grid.width)}

    def is_settled(problem: Problem) -> bool:
        if problem.kind != "unreadable" or problem.place is None or not is_read(problem.place):
            return False
        row, column = at[problem.place.cell]
        return row not in rows and column not in columns

    found.unused[:] = [unused for unused in found.unused if not is_read(unused.place)]
    found.problems[:] = [problem for problem in found.problems if not is_settled(problem)]


def _figures(grid: Grid) -> Iterator[tuple[int, int]]:
    """Rows and columns of cells that hold figures."""
    filled = ((row, column) for row in range(grid.height) for column in range(grid.width))
    return ((row, column) for row, column in filled if any(map(str.isdigit, grid.text(row, column))))


def _values_left(grid: Grid, before: _Stated) -> int:
    """Cells with figures that the layouts do not use."""
    return sum(grid.place(*where).cell not in before for where in _figures(grid))


def _says_more(before: _Stated, after: _Stated, tree: Tree) -> bool:
    """Whether the words say so much more that it is worth a second reading."""
    anew = _placed_anew(before, after)
    places = {key for at in anew for _, key in after[at]}
    if len(after.keys() - before.keys()) + (len(anew) if len(places) > 1 else 0) < _GAIN:
        return False
    alone = len(after) >= max(_SHARE * len(tree.where), _ALONE) and len(tree.positions) > 1
    return alone or bool(before)


def _take(
    found: Found,
    own: list[Block],
    other: list[Block],
    before: _Stated,
    after: _Stated,
    names: tuple[dict[str, str], dict[str, str]],
    told: set[str],
) -> None:
    """Add what only the words say, under the names that the layouts have for machines and stations."""
    stations, machines = names
    left_out = _said_elsewhere(before, after, stations) | told
    if len({s for block in own for s in block.stations if s}) > 1:
        fitted = {*stations, *_with_bearing(other)}
        left_out |= {at for at, said in after.items() if any(s and s not in fitted for _, (_, s) in said)}
    anew = _placed_anew(before, after) - left_out
    for block in own:
        block.strips[:] = [s for strip in block.strips if (s := _without(strip, anew)) is not None]
    known = (before.keys() - anew) | left_out
    unit = next((block.length_unit for block in own if block.length_unit), "")
    of_own = {machine for block in own for machine in block.machines}
    alone = next(iter(of_own)) if len(of_own) == 1 else ""
    for block in other:
        block.strips[:] = [s for strip in block.strips if (s := _without(strip, known)) is not None]
        block.machines[:] = [machines.get(machine, machine or alone) for machine in block.machines]
        block.stations[:] = [stations.get(station, station) for station in block.stations]
        block.length_unit = unit
        _drop_empty_rows(block)
    found.blocks.extend(block for block in other if block.strips)


def _with_bearing(blocks: list[Block]) -> set[str]:
    """Stations that name their bearing by a designation."""
    return {
        block.stations[row]
        for block in blocks
        for strip in block.strips
        if strip.parameter == "bearing_designation"
        for row, cell in zip(strip.rows.tolist(), strip.cells.tolist(), strict=True)
        if looks_like_designation(cell_text(cell))
    }


def _drop_empty_rows(block: Block) -> None:
    """Leave out rows of which nothing is taken."""
    used = np.unique(np.concatenate([strip.rows for strip in block.strips] or [np.empty(0, np.intp)]))
    block.machines[:] = [block.machines[row] for row in used]
    block.stations[:] = [block.stations[row] for row in used]
    block.strips[:] = [evolve(strip, rows=np.searchsorted(used, strip.rows)) for strip in block.strips]


def _stated(blocks: list[Block]) -> _Stated:
    """What each cell states: parameter, machine and station."""
    result: _Stated = {}
    for block in blocks:
        for strip in block.strips:
            for index, row in enumerate(strip.rows.tolist()):
                if not is_blank(strip.cells[index]):
                    key = (block.machines[row], block.stations[row])
                    result.setdefault(strip.at(index), []).append((strip.parameter, key))
    return result


def _told(grid: Grid, words: Words, found: Found) -> set[str]:
    """Cells and columns of which it is told why they are not used, and that is not for want of words for them."""
    result = set()
    for unused in found.unused:
        open_to_words = unused.reason in _FOR_WANT_OF_WORDS or unused.reason == words.why(unused.name) != FOUND_REASON
        if unused.place.sheet != grid.sheet or unused.place.cell is None or open_to_words:
            continue
        result.add(unused.place.cell)
        if ", " in unused.value:
            letters = unused.place.cell.rstrip("0123456789")
            result |= {f"{letters}{line}" for line in grid.lines.tolist()}
    return result


def _said_elsewhere(before: _Stated, after: _Stated, stations: dict[str, str]) -> set[str]:
    """Cells that state again what another cell states by the layouts; a size may be stated in several."""
    stated = {(name, station) for said in before.values() for name, (_, station) in said}
    names = {name for name, _ in stated}
    result = set()
    for at in after.keys() - before.keys():
        for name, (_, station) in after[at]:
            of = "" if parameter(name).level == "machine" else stations.get(station, station)
            of_size = parameter(name).kind == "toleranced" and of
            if not of_size and ((name, of) in stated or (not of and name in names)):
                result.add(at)
    return result


def _placed_anew(before: _Stated, after: _Stated) -> set[str]:
    """Cells of which only the words say the position, or which of several machines."""
    several = len({machine for said in after.values() for _, (machine, _) in said if machine}) > 1
    result = set()
    for at in before.keys() & after.keys():
        for name, (machine, station) in after[at]:
            own = dict(before[at]).get(name, (machine, station))
            of_station = station and parameter(name).level != "machine"
            if (of_station and not own[1]) or (several and machine and not own[0]):
                result.add(at)
    return result


def _names_agreed(before: _Stated, after: _Stated) -> tuple[dict[str, str], dict[str, str]] | None:
    """What the layouts call the stations and machines of the words; None where the two readings disagree."""
    stations: dict[str, str] = {}
    machines: dict[str, str] = {}
    for at in before.keys() & after.keys():
        one, two = dict(before[at]), dict(after[at])
        if not one.keys() & two.keys():
            return None
        for name in one.keys() & two.keys():
            if parameter(name).level == "machine":
                continue
            (machine, station), (m, s) = one[name], two[name]
            if station and not s:
                return None
            if station and stations.setdefault(s, station) != station:
                return None
            if machine and machines.setdefault(m, machine) != machine:
                return None
    if len({*stations.values()}) < len(stations) or len({*machines.values()}) < len(machines):
        return None
    return stations, machines


def _without(strip: Strip, cells: set[str]) -> Strip | None:
    """A strip without some of its cells."""
    keep = [i for i in range(len(strip.cells)) if strip.at(i) not in cells]
    if len(keep) == len(strip.cells):
        return strip
    if not keep or strip.lines is None or strip.columns is None:
        return None
    at = np.array(keep)
    whole = {keep.index(k): t for k, t in strip.whole.items() if k in keep}
    return evolve(
        strip, cells=strip.cells[at], rows=strip.rows[at], lines=strip.lines[at], columns=strip.columns[at], whole=whole
    )


def _placed(strip: Strip, tree: Tree, grid: Grid) -> Strip | None:
    """A strip of the tree with the cells of the sheet for its places."""
    assert strip.pointers is not None
    keep = [index for index, pointer in enumerate(strip.pointers) if pointer in tree.where]
    if not keep:
        return None
    where = np.array([tree.where[strip.pointers[index]] for index in keep])
    return evolve(
        strip,
        cells=strip.cells[np.array(keep)],
        rows=strip.rows[np.array(keep)],
        pointers=None,
        sheet=grid.sheet,
        lines=grid.lines[where[:, 0]],
        columns=(where[:, 1] + grid.first_column).astype(np.int32),
        whole={new: strip.whole[index] for new, index in enumerate(keep) if index in strip.whole},
    )
