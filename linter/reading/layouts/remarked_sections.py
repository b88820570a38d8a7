"""Lines over rows that say their part, with a remark in a column behind the values (``Housing | | | | fine bored``)."""

from linter.reading.cells.choices import read_choice
from linter.reading.cells.fit_classes import CLASS_ONLY, SIZE_AND_CLASS
from linter.reading.cells.signs import ReadError, is_figure
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Grid, is_blank
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.layouts.sides import side_of
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Words

_MOST_COLUMNS, _LONGEST = 16, 40


def with_remarks_apart(grid: Grid, words: Words) -> Grid:
    """The grid with such remarks below all its tables, each at its own place; as it is where there is none."""
    if grid.height > LONGEST_MIXED or not 3 <= grid.width <= _MOST_COLUMNS:
        return grid
    found = {row: at for row in range(grid.height - 1) if (at := _remark(grid, row, words)) is not None}
    if not found:
        return grid
    own = [(r, {found[r][0]: grid.columns[found[r][0]][r]} if r in found else None) for r in range(grid.height)]
    apart = [(r, {c: grid.columns[c][r]}) for r, (_, c) in found.items()]
    return of_rows(grid, [*own, (apart[0][0], {}), *apart])


def _remark(grid: Grid, row: int, words: Words) -> tuple[int, int] | None:
    """The columns of a part and of a remark that stand alone in a row, the remark behind values of the row below."""
    if grid.filled[row] < 2:
        return None
    filled = [*grid.texts(row)]
    if len(filled) != 2 or any(type(grid.columns[c][row]) is not str for c in filled):
        return None
    part, at = filled
    label, text = grid.text(row, part), grid.text(row, at)
    below = [c for c in range(part + 1, at) if not is_blank(grid.columns[c][row + 1])]
    if not below or is_blank(grid.columns[part][row + 1]) or len(label) > _LONGEST or (side := side_of(label)) is None:
        return None
    strength = designation_strength(text)
    designated = strength == "certain" or (side.side == "bearing" and strength != "no")
    return (part, at) if not designated and _says_nothing(text, words) else None


def _says_nothing(text: str, words: Words) -> bool:
    """Whether a text behind a part is no value, no unit, no name and no position."""
    value = is_figure(text) or CLASS_ONLY.fullmatch(text) or SIZE_AND_CLASS.fullmatch(text)
    stated = bool(value) or known_unit(text) is not None
    pieces = (text, text.partition(":")[2], text.partition("：")[2], text.partition(" ")[2])
    material = any(map(_is_material, filter(None, pieces)))
    named = words.heading(text) is not None or bool(words.groups(text)) or bool(words.station_said(text))
    return not (stated or material or named) and side_of(text) is None


def _is_material(text: str) -> bool:
    """Whether a text names a material of a shaft or a housing, and be it one that has to be asked about."""
    read = [read_choice(name, text) for name in ("shaft_material", "housing_material")]
    return any(not isinstance(word, ReadError) or word.code == "ambiguous-choice" for word in read)
