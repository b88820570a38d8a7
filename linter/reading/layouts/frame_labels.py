"""Labels of a drawing's frame: those that say what they head there only (``Stand: C``), and values below their labels.

``Stand`` may be a date and ``Ed.`` many a thing; behind such a word, beside the number of a drawing that no other word
gives a revision, a letter or a short number is the revision. A table that names one itself keeps it.
"""

import re
from collections.abc import Mapping

from linter.reading.files.grids import LONGEST_MIXED, Grid
from linter.reading.layouts.labels_in_cell import of_rows
from linter.reading.layouts.labels_over import labels_over
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Told, Words

#: Rows that may be of a frame, and filled cells of one.
_ROWS, _MOST_CELLS = 40, 8
#: The longest such word.
_LONGEST = 12
#: Rows of a sheet with a frame and a table, at least.
_FEWEST_ROWS = 5
#: Words for an edition, a state, a version (common practice).
_EDITIONS = frozenset(
    word_key(word)
    for word in (
        "edition", "ed", "ed.", "issue", "version", "vers.", "stand", "ausg.", "fassung", "édition", "éd", "éd.",
        "mod.",
        "edición", "versión", "edizione", "ediz.", "versione", "издание", "изд.", "вып.", "訂", "訂番", "訂符", "訂記",
        "更改", "修改", "改",
    )
)  # fmt: skip
_CODE = re.compile(r"[A-Z]{1,2}|\d{1,2}|[A-Z]\d{1,2}|[А-Я]")


def with_frame_labels(grid: Grid, words: Words) -> Words:
    """The words, with those that head the revision of the drawing in the frame of a grid; or as they are."""
    if grid.height > LONGEST_MIXED or grid.whole_lines:
        return words
    rows = [row for row in range(min(grid.height, _ROWS)) if 1 < grid.filled[row] <= _MOST_CELLS]
    soft = [
        (row, c) for row in rows for c, text in grid.texts(row).items()
        if len(text) <= _LONGEST and word_key(text.rstrip(" :：")) in _EDITIONS
    ]  # fmt: skip
    if not soft:
        return words
    named = {(row, c): _named(text, words) for row in rows for c, text in grid.texts(row).items()}
    if "drawing_revision" in named.values():
        return words
    drawings = [where for where, name in named.items() if name == "drawing_number"]
    told = {
        grid.text(*at)
        for at in soft
        if any(_near(where, at) for where in drawings) and _CODE.fullmatch(_value(grid, *at, drawings))
    }
    if len(told) != 1:
        return words
    text = told.pop()
    said = {one: Told("drawing revision", "", by_comment=True) for one in (text, text.rstrip(" :："))}
    return Words(words.names, {**words.told, **said}, words.deviations)


def with_values_labelled(grid: Grid, words: Words) -> Grid:
    """The grid with each value of a frame behind its label from the row above, where a blank row ends the two rows.

    Two rows alike would be a table of machines, so what stands below more than one row of values stays as it is.
    """
    if grid.height > LONGEST_MIXED or grid.whole_lines or grid.height < _FEWEST_ROWS:
        return grid
    spanned = {row for top, _, bottom, _ in grid.merged if bottom > top for row in range(top, bottom + 1)}
    rows: list[tuple[int, dict[int, str] | None]] = []
    row = 0
    while row < grid.height:
        able = row < min(_ROWS, grid.height - 2) and not {row, row + 1} & spanned
        labels: Mapping[int, str] = {}
        if able and not grid.filled[row + 2]:
            labels = _of_frame(grid, row, words)
        rows += [(row + 1, {c: f"{label.rstrip(' :：')}: {grid.text(row + 1, c)}"}) for c, label in labels.items()]
        rows += [] if labels else [(row, None)]
        row += 2 if labels else 1
    return grid if all(new is None for _, new in rows) else of_rows(grid, rows)


def _of_frame(grid: Grid, row: int, words: Words) -> Mapping[int, str]:
    """The labels of a row of a frame over their values, by columns: the drawing or the machine is one of them."""
    known = labels_over(grid, row, words)
    named = {heading.parameter for heading in known.values()}
    if not named & {"machine", "drawing_number"} or any(h.entry.level != "machine" for h in known.values()):
        return {}
    values = grid.texts(row + 1).values()
    plain = len(values) <= _MOST_CELLS and not any(":" in text or "：" in text for text in values)
    return grid.texts(row) if plain else {}


def _named(text: str, words: Words) -> str:
    """What a text of a frame names of the drawing; empty for none."""
    heading = words.heading(text.rstrip(" :：")) if len(text) > 1 else None
    drawing = heading is not None and heading.parameter in ("drawing_number", "drawing_revision")
    return heading.parameter if drawing and heading is not None and not heading.station else ""


def _near(one: tuple[int, int], other: tuple[int, int]) -> bool:
    """Whether two cells stand in one row, or in rows right below each other."""
    return abs(one[0] - other[0]) < 2


def _value(grid: Grid, row: int, column: int, drawings: list[tuple[int, int]]) -> str:
    """The text that a label heads: the next one in its row, or that below where the drawing's stands below its own."""
    right = [text for at, text in grid.texts(row).items() if at > column]
    over = any(
        at == row and any(map(str.isdigit, grid.text(row + 1, c))) for at, c in drawings if row + 1 < grid.height
    )
    below = grid.text(row + 1, column) if over else ""
    return right[0] if right and _CODE.fullmatch(right[0]) else below
