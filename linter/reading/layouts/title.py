"""The block above a table: drawing number, revision, machine and units as label and value, beside or in one cell."""

import re

from attrs import define, field

from linter.model.stations import Unused
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid, is_blank, object_column
from linter.reading.words.headings import Heading, Words

#: Rows that are looked at: a title block is short, and a long text without a heading is no title.
MOST_ROWS = 1000
_UNITS_SENTENCE = re.compile(
    r"(?:all\s+)?(?:dimensions|lengths|sizes|units|ma(?:ß|ss)e|alle\s+ma(?:ß|ss)e|cotes|cotas|quote|размеры|単位|单位)\s*"
    r"(?:are\s+)?(?:in|en|в|:|：|\[|\()?\s*[:：]?\s*(mm|cm|m|inch|inches|in|µm|um|\")[\])]?\.?",
    re.IGNORECASE,
)
# Labels of drawing frames and revision tables (common practice): such a word is never the value of another label.
_LABELS = frozenset(
    word
    for words in (
        "date, by, from, author, drawn, drawn by, checked, checked by, approved, approved by, change, changes, what",
        "description, reason, sheet, page, scale, index",
        "datum, bearbeiter, gezeichnet, geprüft, freigabe, änderung, beschreibung, blatt, seite, maßstab, von",
        "auteur, dessiné, vérifié, approuvé, modification, feuille, échelle, par",
        "fecha, autor, dibujado, revisado, aprobado, cambio, hoja, escala, por",
        "data, autore, disegnato, controllato, approvato, modifica, foglio, scala",
        "дата, автор, изменение, лист, масштаб",
        "日付, 作成, 作成者, 承認, 変更, 変更内容, 日期, 作者, 设计, 审核, 批准, 更改",
    )
    for word in words.split(", ")
)


def is_label(text: str) -> bool:
    """Whether a text is a label of a drawing frame or of a revision table."""
    return text.strip(" .:").casefold() in _LABELS


@define(eq=False)
class Title:
    """What stands above a table and holds for all of it.

    Attributes
    ----------
    machine, length_unit : str
        Machine and unit of lengths, empty where not stated.
    cells : list of (Heading, label, row, column)
        Values of machine parameters in the grid.
    """

    machine: str = ""
    length_unit: str = ""
    cells: list[tuple[Heading, str, Grid, int, int]] = field(factory=list)


def read_title(grid: Grid, words: Words, unused: list[Unused]) -> Title:
    """Read label and value pairs of a title block; what is not understood goes to ``unused``."""
    title, whole = Title(), grid
    grid = whole.cut(slice(0, MOST_ROWS))
    for row in range(grid.height):
        filled = [c for c in range(grid.width) if not is_blank(grid.columns[c][row])]
        taken: set[int] = set()
        for index, column in enumerate(filled):
            if column in taken:
                continue
            text = grid.text(row, column)
            right = filled[index + 1] if index + 1 < len(filled) else None
            if _take(title, grid, words, row, column, text, right):
                taken.add(column)
                if right is not None and not _inline(text):
                    taken.add(right)
                continue
            unused.append(
                Unused("above the table", text, grid.place(row, column), "no label of the table's head is known here")
            )
            taken.add(column)
    if whole.height > MOST_ROWS:
        more = f"{whole.height - MOST_ROWS} more rows"
        unused.append(Unused("above the table", more, whole.place(MOST_ROWS, 0), "a title block is not as long"))
    return title


def _inline(text: str) -> bool:
    """Whether a cell holds label and value both."""
    _, colon, value = text.partition(":")
    return bool(colon and value.strip()) or _UNITS_SENTENCE.fullmatch(text) is not None


def _take(title: Title, grid: Grid, words: Words, row: int, column: int, text: str, right: int | None) -> bool:
    """Take one label with its value; false where it is none."""
    if sentence := _UNITS_SENTENCE.fullmatch(text):
        title.length_unit = sentence.group(1)
        return True
    label, colon, value = (part.strip() for part in text.partition(":"))
    inline = bool(colon and value)
    value_text = value if inline else grid.text(row, right) if right is not None else ""
    if words.group(label) == "UNIT":
        unit = known_unit(value_text)
        if unit is None or unit.dimension != "length":
            return False
        title.length_unit = value_text
        return True
    heading = words.heading(label)
    if heading is None or heading.entry.level != "machine" or heading.station or not value_text:
        return False
    if not inline and is_label(value_text):
        return False
    if not inline and right is not None and words.heading(value_text) is not None and len(value_text) > 2:
        return False
    if heading.parameter == "machine":
        title.machine = value_text
    if inline:
        # the cell is kept as it stands; its label is cut off where it is read
        cells = object_column(grid.columns[column].tolist())
        cells[row] = value
        grid.columns[column] = cells
        title.cells.append((heading, label, grid, row, column))
    elif right is not None:
        title.cells.append((heading, label, grid, row, right))
    return True
