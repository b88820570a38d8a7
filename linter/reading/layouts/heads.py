"""Rows among names down a column that are the headings of another table: a list, or one row per station."""

from linter.reading.files.grids import Grid
from linter.reading.layouts.title import is_label, names_value
from linter.reading.layouts.title_rows import is_title_row
from linter.reading.words.headings import Words

_FEW_TEXTS = 5  # a row of names and words has no more


def heads_another(grid: Grid, words: Words, name: int) -> bool:
    """Whether a row whose cells are names themselves heads a table of its own, below rows of the machine alone."""
    for row in range(grid.height):
        label = grid.text(row, name)
        heading = words.heading(label) if names_value(words, label) else None
        if heading is None:
            continue
        cells = [text for column in range(name + 1, grid.width) if (text := grid.text(row, column))]
        if not cells:
            continue  # a line that heads the rows below it
        known = [h for text in cells if len(text) > 1 and names_value(words, text) and (h := words.heading(text))]
        names = {h for h in known if h.entry.level == "station" and h.parameter != "station"}
        enough = len(names) > (heading.parameter != "station") and 2 * len(names) >= len(cells)
        enough |= heading.parameter == "station" and _stands_above_station(grid, words, name, row)
        if enough and len(cells) > 1 and not is_title_row(grid, row, words):
            return True
        if heading.entry.level != "machine":
            return False
    return False


def _stands_above_station(grid: Grid, words: Words, name: int, row: int) -> bool:
    """Whether the first text below a word for a station is a station."""
    below = next((text for r in range(row + 1, grid.height) if (text := grid.text(r, name))), "")
    return words.heading(below) is None and words.names.station(below) is not None


def heads_a_list(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row holds many texts, names or labels among them, and no digit: it heads a list."""
    texts = [*grid.texts(row).values()]
    if len(texts) <= _FEW_TEXTS or any(any(map(str.isdigit, text)) for text in texts):
        return False
    return any(is_label(text) or names_value(words, text) for text in texts[1:])
