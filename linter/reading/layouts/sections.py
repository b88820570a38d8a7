"""Lines of a table that hold one text alone: what they say of the rows below them."""

import re
from itertools import pairwise

from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.placed import placed, side_placed
from linter.reading.layouts.sides import Side, side_above, side_of, side_of_sheet, within
from linter.reading.words.column_words import KEYS
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Words

_SECTION = re.compile(r"[\s\-=*#:\[\]■□●○◆◇▼▽▶►※【】「」〈〉]*(.*?)[\s\-=*#:\[\]■□●○◆◇▼▽【】「」〈〉]*")
_NUMBERING = re.compile(r"\d{1,3}(?:\.\d{1,3}){0,3}[.)]?|[IVX]{1,4}[.)]?|[A-H][.)]?")  # 3, 3.1, II, b)
_NUMBERED = re.compile(r"(?:\d{1,2}(?:\.\d{1,2}){0,2}[.)]?|[IVX]{1,4}[.)]|[A-Ha-h][.)])\s+([^\W\d].*)")  # 2. Shaft
_COUNTED = re.compile(rf"{_NUMBERING.pattern}|[A-Z]{{1,4}}[-_. ]?\d{{1,5}}")  # R6, REQ-006
_MOST_ROWS = 2000  # rows that are looked at
_LONGEST_OTHER = 40  # signs of a heading that names no part


def heads_machine(grid: Grid, row: int, name: int, words: Words) -> bool:
    """Whether a row with nothing but its label heads what is stated of the whole machine (``Divers``)."""
    section = section_label(grid, row, name)
    if section and words.of_whole(section):
        return True
    heading = words.heading(section) if section else None
    return heading is not None and heading.parameter == "machine" and not heading.station


def head_left(grid: Grid, row: int, name: int) -> str:
    """The text that heads the rows below it from a column left of the names, where no name stands; or empty.

    It is the only one there, and the row below has a name and nothing but its number in that column.
    """
    if name == 0 or row + 1 >= grid.height or grid.text(row, name) or not grid.text(row + 1, name):
        return ""
    left = [c for c in grid.texts(row) if c < name]
    below = grid.text(row + 1, left[0]) if len(left) == 1 else "more"
    text = grid.text(row, left[0]) if not below or _COUNTED.fullmatch(below) else ""
    return text if any(map(str.isalpha, text)) and not _COUNTED.fullmatch(text) else ""


def section_label(grid: Grid, row: int, name: int) -> str:
    """The words of a row with nothing but its label, without the signs around them; empty for another row."""
    left = head_left(grid, row, name)
    label = left or grid.text(row, name)
    filled = grid.filled[row]
    if len(label) >= 60 or filled > name + 1 or filled > sum(c <= name for c in grid.texts(row)):
        return ""  # something stands right of it
    before = () if left else (text for c, text in grid.texts(row).items() if c < name)
    if not all(map(_NUMBERING.fullmatch, before)):
        return ""
    inner = _SECTION.fullmatch(label)
    return _without_number(grid, name, inner.group(1)) if inner else ""


def _without_number(grid: Grid, name: int, label: str) -> str:
    """A heading of rows without the number before it (``2. Shaft``), unless the number tells headings apart."""
    numbered = _NUMBERED.fullmatch(label)
    if numbered is None:
        return label
    others = (_NUMBERED.fullmatch(text) for r in range(grid.height) if (text := grid.text(r, name)) != label)
    told = any(other is not None and other[1] == numbered[1] for other in others)
    return label if told else numbered[1]


def numbers_rows(grid: Grid, column: int, start: int) -> bool:
    """Whether a column numbers the rows (1, 1.1, 1.2, 2, ...) and holds nothing else."""
    texts = [text for row in range(start, grid.height) if (text := grid.text(row, column))]
    if len(texts) < 3 or not all(_NUMBERING.fullmatch(text) for text in texts):
        return False
    numbers = [[int(piece) for piece in re.findall(r"\d+", text)] for text in texts]
    return all(numbers) and all(a < b for a, b in pairwise(numbers))


def part_over(grid: Grid, header: int, name: int) -> Side | None:
    """The part of the first rows below a heading row: its word stands over that row, and another part's further down.

    Without those the word may be the title of all that is below it.
    """
    side = side_above(grid, header) if header > 0 else None
    heads = _beside(grid, header, name)

    def part_of(row: int) -> Side | None:
        again = len(heads) > 1 and _beside(grid, row, name) == heads
        return side_of(grid.text(row, name) if again else section_label(grid, row, name))

    said = (part_of(row) for row in range(header + 1, grid.height)) if side is not None else ()
    others = side is not None and any(one is not None and one.side != side.side for one in said)
    return side if others else side_of_sheet(grid)


def _beside(grid: Grid, row: int, name: int) -> set[str]:
    """The texts of a row that stand right of its name."""
    return {text for column in range(name + 1, grid.width) if (text := grid.text(row, column))}


def section_below(grid: Grid, row: int, name: int, current: Side | None, words: Words) -> Side | None:
    """The part that holds below a row: a text alone above values that means nothing ends a shaft or a housing.

    A bore alone behind the shaft (``Arbre``, ``Alésage``) is the housing's, and so is what names its seat or fit
    (``Посадка корпуса``). Below such a heading (``Operation``) a name counts that says by itself what it is of.
    """
    if current is None or current.side == "bearing":
        return current
    if current.side == "shaft" and word_key(label := section_label(grid, row, name)) in KEYS["bore"]:
        return Side("housing", label)
    return _seat_section(grid, row, name, current, words) or _other_section(grid, row, name, words) or current


def _seat_section(grid: Grid, row: int, name: int, current: Side, words: Words) -> Side | None:
    """The other part by its seat or fit that stands alone above values, without one of its own; or None."""
    other = {"shaft": "housing", "housing": "shaft"}.get(current.side, "")
    label = section_label(grid, row, name) if other else ""
    heading = words.heading(label) if label else None
    if heading is None or heading.parameter != f"{other}_seat_diameter" or not _stands_over(grid, row, name):
        return None
    return Side(other, label)


def _stands_over(grid: Grid, row: int, name: int) -> bool:
    """Whether the next row has a name and a value."""
    if row + 1 >= grid.height or not grid.text(row + 1, name):
        return False
    return any(not is_blank(grid.columns[c][row + 1]) for c in range(name + 1, grid.width))


def _other_section(grid: Grid, row: int, name: int, words: Words) -> Side | None:
    """A heading of rows that names no part, or None."""
    label = section_label(grid, row, name)
    if not 2 < len(label) <= _LONGEST_OTHER or not label[0].isalpha() or re.search(r"[\d:：;；,，。\[\]()]", label):
        return None
    if words.heading(label) is not None or words.groups(label):
        return None
    return Side("", label) if _stands_over(grid, row, name) else None


def sections(grid: Grid, column: int, start: int, words: Words) -> dict[int, Side]:
    """The part of each row below lines that say shaft or housing alone, or in a sheet that does."""
    result: dict[int, Side] = {}
    current = side_of_sheet(grid)
    for row in range(start, min(grid.height, start + _MOST_ROWS)):
        label = section_label(grid, row, column)
        if (side := side_of(label)) is not None or (label and (side := side_placed(label, words)) is not None):
            current = side
        elif (other := section_below(grid, row, column, current, words)) is not current:
            current = other
        elif current is not None:
            result[row] = current
    return result


def part_stations(grid: Grid, column: int, start: int, words: Words) -> set[str]:
    """The stations that lines of a column say together with shaft or housing (``Rotor shaft DE``)."""
    labels = (section_label(grid, row, column) for row in range(start, min(grid.height, start + _MOST_ROWS)))
    said = (placed(label, words) for label in labels if label)
    return {both.station for both in said if both is not None and both.side.side != "bearing"}


def named_by_part(grid: Grid, column: int, parts: dict[int, Side], words: Words) -> int:
    """Number of names that a column states together with the part of each row, and not by itself."""
    pairs = {(side.side, side.word, grid.text(row, column)) for row, side in parts.items()}
    joined = (within(words, Side(s, word), text) for s, word, text in pairs if text and words.heading(text) is None)
    return len(set(joined) - {None})
