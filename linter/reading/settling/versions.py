"""Several statements of one parameter that their names tell apart: new, old, proposed.

Side by side they are statements like any other, and differing ones settle nothing. Alone, a newer one is used and
shown; an older or a proposed one is not what holds, and is asked about.
"""

import numpy as np

from linter.reading.cells.signs import shown
from linter.reading.files.grids import is_blank
from linter.reading.settling.one_value import Stated
from linter.reading.settling.values import Trouble


def judge_versions(stated: list[Stated]) -> None:
    """Add a trouble for each lone statement of another version, and take an older one out of use."""
    versioned = [one for one in stated if one.strip.version]
    if not versioned:
        return
    for one in versioned:
        others = {g for other in stated if other is not one for g in _filled(other)}
        lone = [cell for group, cell in _cells(one) if group not in others]
        for count, cell in enumerate(dict.fromkeys(lone)):
            read = str(one.strip.cells[cell])
            if one.strip.version == "older":
                _blank(one, cell)
                said = f"“{read}” stands under “{shown(one.strip.label)}”, and nothing says what holds"
                one.values.troubles.append(
                    Trouble(cell, "unreadable", "older-value", read, "the value that holds", said)
                )
            elif not count:
                more = f" (and {len(lone) - 1} more)" if len(lone) > 1 else ""
                said = f"“{read}”{more} stands under “{shown(one.strip.label)}” and is taken for what holds"
                one.values.troubles.append(
                    Trouble(cell, "assumption", "newer-value", read, "one value without a version", said)
                )


def _cells(one: Stated) -> list[tuple[int, int]]:
    """Group and cell of each cell that is filled."""
    pairs = zip(one.group.tolist(), one.cell.tolist(), strict=True)
    return [(group, cell) for group, cell in pairs if not is_blank(one.strip.cells[cell])]


def _filled(one: Stated) -> set[int]:
    return {group for group, _ in _cells(one)}


def _blank(one: Stated, cell: int) -> None:
    """Take the value of one cell out of use."""
    values = one.values
    for column in (values.number, values.lower, values.upper):
        if column is not None and len(column):
            column[cell] = np.nan
    if values.words is not None:
        values.words[cell] = ""
