"""Single values in tables with two columns of limits: they stand in the first of them, or in that of upper ones.

Below positions a value of the whole machine stands in the columns of the first of them, and so does a lubricant.
"""

import re
from collections.abc import Callable

from linter.reading.files.grids import is_blank
from linter.reading.layouts.long_table import LongTable
from linter.reading.words.headings import Heading, Words
from linter.reading.words.limits import IS_LARGEST

ZERO = re.compile(r"[+\-−±]?0+(?:[.,]0*)?|[.,]0+")
#: What stands for no lower limit.
_NONE = re.compile(f"{ZERO.pattern}|[-–—/]")


def single_values(table: LongTable, words: Words, label: Callable[[int], str]) -> dict[int, int]:
    """Rows whose only value stands in the first of two columns of limits, with that column.

    Below ``Max | Min`` stand a load or a designation too, which have no limits: where one does, and every other
    single value stands in the same column, a size alone there has no limits either.
    """
    limits = [c for c, role in sorted(table.roles.items()) if role in ("MAX", "MIN")]
    if len(limits) != 2 or {"UPPER", "LOWER", "VALUE"} & set(table.roles.values()):
        return {}
    columns = [table.grid.columns[c] for c in limits]
    rows = range(table.start, table.grid.height)
    alone = [row for row in rows if is_blank(columns[0][row]) != is_blank(columns[1][row])]
    in_first = all(not is_blank(columns[0][row]) for row in alone)
    return dict.fromkeys(alone, limits[0]) if in_first and any(_no_size(words, label(r)) for r in alone) else {}


def upper_limits(table: LongTable, row: int, named: Heading) -> list[int]:
    """Columns of a row whose cell may be its only value; none beside a lower deviation, which goes with a size.

    Zero is the lower limit of whatever is a largest value itself (``Cylindricity | | 0.003 | 0``).
    """
    text, roles = table.grid.text, table.roles
    lower = [said for c, role in roles.items() if role == "LOWER" and (said := text(row, c))]
    of_size = not named.parameter.endswith(IS_LARGEST) or not all(map(_NONE.fullmatch, lower))
    wanted = ("MAX",) if lower and of_size else ("UPPER", "MAX")
    stated = [(c, role) for one in wanted for c, role in roles.items() if role == one and text(row, c)]
    return [c for c, role in stated if not (lower and role == "UPPER" and ZERO.fullmatch(text(row, c)))]


def of_all_positions(table: LongTable, row: int, words: Words, label: Callable[[int], str]) -> bool:
    """Whether a row states something below the first of several positions alone, as rows of the machine do."""
    others = [column for _, own in table.spans[1:] for column in own]
    first = table.spans[0][1] if table.spans else {}
    if not others or any(table.roles.get(column) != role for column, role in first.items()):
        return False
    rows = range(table.start, table.grid.height)
    alone = [r for r in rows if all(is_blank(table.grid.columns[c][r]) for c in others)]
    alone = [r for r in alone if any(not is_blank(table.grid.columns[c][r]) for c in first)]
    of_machine = [h for r in alone if r != row and (h := words.heading(label(r))) is not None]
    return row in alone and any(heading.entry.level == "machine" for heading in of_machine)


def _no_size(words: Words, label: str) -> bool:
    """Whether a name is of what is no size of a part: a load, a designation, a material."""
    heading = words.heading(label)
    return heading is not None and heading.entry.kind != "toleranced" and not heading.parameter.endswith(IS_LARGEST)
