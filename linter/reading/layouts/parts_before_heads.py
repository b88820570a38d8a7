"""Values below heads, part after part, each part before its heads: ``Shaft | Diameter | Roughness`` over values."""

from attrs import evolve

from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.layouts.sides import side_of, within
from linter.reading.words.headings import Words

_MOST_COLUMNS, _LONGEST = 16, 40


def with_parts_above(grid: Grid, words: Words) -> Grid:
    """A grid where such parts stand in a row of their own above their heads; as it is where fewer than two do.

    Nothing stands below the part, which may be merged with what is below it, and values below the heads.
    """
    if grid.height > LONGEST_MIXED or not 3 <= grid.width <= _MOST_COLUMNS:
        return grid
    found = {row: at for row in range(grid.height - 1) if (at := _part_before(grid, row, words)) is not None}
    if len(found) < 2:
        return grid
    rows: list[tuple[int, dict[int, object] | None]] = []
    for row in range(grid.height):
        if row not in found:
            rows.append((row, None))
            continue
        cells = {c: cell for c, cell in enumerate(grid.row(row)) if not is_blank(cell)}
        part = found[row]
        rows += [(row, {part: cells[part]}), (row, {c: cell for c, cell in cells.items() if c != part})]
    merged = tuple(area for area in grid.merged if not (area[0] in found and area[1] == found[area[0]]))
    return of_rows(evolve(grid, merged=merged), rows)


def _part_before(grid: Grid, row: int, words: Words) -> int | None:
    """The column of a part that stands before heads over values; None where the row is none of that sort."""
    cells = {c: cell for c, cell in enumerate(grid.row(row)) if not is_blank(cell)}
    if len(cells) < 3 or any(type(cell) is not str for cell in cells.values()):
        return None
    part, *heads = cells
    label = grid.text(row, part)
    side = side_of(label) if len(label) <= _LONGEST else None
    below = {c for c, cell in enumerate(grid.row(row + 1)) if not is_blank(cell)}
    if side is None or not below or part in below or not below <= {*heads} or 2 * len(below) <= len(heads):
        return None
    named = [words.heading(text) or within(words, side, text) for c in heads if (text := grid.text(row, c))]
    values = sum(any(map(str.isdigit, grid.text(row + 1, c))) for c in below)
    return part if 2 * sum(map(bool, named)) > len(heads) and 2 * values > len(below) else None
