"""Columns of lists that say what is limited: kinds of characteristics beside features, or whole requirements in cells.

``front journal | roughness Ra | 0.4`` below *Feature | Characteristic | Max*; ``journal | 40 m5 | cylindricity 0.005``
where a column of form tolerances stands behind the one of sizes.
"""

from collections.abc import Iterator

from attrs import evolve

from linter.reading.cells.requirements import SIZES, Requirement, characteristic_of, parameter_of, read_requirement
from linter.reading.files.grids import Grid
from linter.reading.layouts.long_table import SAMPLE, LongTable
from linter.reading.words.headings import Heading

_OPEN = ("", "NAME", "NOTE", "CHAR-ID")
_ENOUGH = 2


def kinds_below(grid: Grid, name: int, roles: dict[int, str], start: int) -> None:
    """A column beside the names whose cells say a kind of characteristic each, not sizes alone, says the kinds."""
    if "KIND" in roles.values():
        return
    for column in range(grid.width):
        if column == name or roles.get(column, "") not in _OPEN:
            continue
        texts = [text for row in _rows(grid, start) if (text := grid.text(row, column)) and grid.text(row, name)]
        kinds = [kind for text in texts if (kind := characteristic_of(text))]
        if len(kinds) > _ENOUGH and 4 * len(kinds) >= 3 * len(texts) and {*kinds} - {*SIZES}:
            roles[column] = "KIND"
            return


def requirements_below(grid: Grid, name: int, roles: dict[int, str], start: int) -> None:
    """A column behind the names that holds geometrical tolerances and roughness in words beside values of its own."""
    if not {"VALUE", "EXPR", "MAX"} & {*roles.values()}:
        return
    for column in range(name + 1, grid.width):
        if roles.get(column, "") not in ("", "NOTE"):
            continue
        texts = [text for row in _rows(grid, start) if (text := grid.text(row, column)) and grid.text(row, name)]
        stated = [text for text in texts if isinstance(read_requirement(text), Requirement)]
        if len(stated) >= _ENOUGH and 2 * len(stated) > len(texts):
            roles[column] = "REQUIREMENT"


def requirements_beside(table: LongTable, row: int, named: Heading) -> Iterator[tuple[Heading, int, str]]:
    """What the columns of requirements state of the feature that a row names, with the column and the part of it."""
    for column in [c for c, role in table.roles.items() if role == "REQUIREMENT"]:
        stated = read_requirement(table.grid.text(row, column))
        if not isinstance(stated, Requirement):
            continue
        parameter, _ = parameter_of(named.parameter, stated.characteristic)
        if parameter and parameter != named.parameter:
            unit = stated.unit or ("µm" if stated.characteristic == "roughness Ra" else "")
            yield evolve(named, parameter=parameter, aspect="value", unit=unit, own_unit=False), column, stated.number


def _rows(grid: Grid, start: int) -> range:
    return range(start, min(grid.height, start + SAMPLE))
