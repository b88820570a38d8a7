"""The block above a table: drawing number, revision, machine and units as label and value, beside or in one cell."""

import re
from collections.abc import Sequence

from attrs import define, evolve, field, frozen

from linter.model.places import Place
from linter.model.stations import Unused
from linter.reading.cells.units import Unit, known_unit
from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.labels_over import labels_over
from linter.reading.layouts.lone import machine_heading, name_and_quantity, value_and_unit
from linter.reading.layouts.unit_sentences import kind_units, unit_of_all, unit_spelt
from linter.reading.words.columns import heading_of
from linter.reading.words.headings import Heading, Words
from linter.reading.words.machine_words import can_name_machine, names_machine

#: Rows that are looked at: a title block is short, and a long text without a heading is no title.
MOST_ROWS = 1000
#: Cells of a row of a title block: label, value and unit.
MOST_IN_TITLE = 3
#: A name as programs have them, and those of a row that names columns at least.
_FIELD, _FEWEST_NAMES = re.compile(r"[^\W\d_]+(?:_\w+)*"), 6
ABOVE_THE_TABLE = "above the table"
_UNITS_SENTENCE = re.compile(
    r"(?:unless\s+otherwise\s+(?:specified|stated|noted|indicated)[,:]?\s*)?"
    r"(?:all|alle|toutes\s+les|todas\s+las|tutte\s+le|все|linear|\s)*\s*"
    r"(?:dimensions?|dims?|lengths?|sizes?|units?|measures|measurements|values|uom"
    r"|ma(?:ß|ss)e|abmessungen|längen|längenma(?:ß|ss)e|einheit(?:en)?|werte"
    r"|cotes|unités?|longueurs|valeurs|cotas|dimensiones|medidas|unidad(?:es)?|misure|dimensioni|quote|unità"
    r"|размеры|единицы(?:\s+измерения)?|寸法(?:単位)?|長さ(?:の単位)?|単位|尺寸(?:单位)?|长度(?:单位)?|单位)(?![a-zß-ÿа-я])\.?\s*"
    r"(?:(?:of\s+)?(?:length|measure)s?)?\s*"
    r"(?:are|is|sind|sont|son|sono|given|stated|angegeben|exprimées|espresse|expresadas|указаны|\s)*"
    r"(?:\b(?:in|en|в)\b|は)?\s*[:：=]?\s*[\[(]?\s*(?P<unit>[^\s\[\]()][^\[\]()]{0,40}?)\s*[\])]?\s*"
    r"(?:,?\s*(?:unless\s+otherwise\s+(?:specified|stated|noted|indicated)|sofern\s+nicht\s+anders\s+angegeben"
    r"|sauf\s+indication\s+contraire|salvo\s+indicación\s+contraria|salvo\s+diversa\s+indicazione"
    r"|если\s+не\s+указано\s+иное))?\.?",
    re.IGNORECASE,
)
#: A word for dimensions anywhere in a sentence, and the words and marks that may be the one unit in it.
_DIMENSIONS = re.compile(
    r"(?<![^\W\d_])(?:dimensions?|dims?|lengths|sizes|ma(?:ß|ss)e|abmessungen|längen|cotes|dimensiones|medidas|cotas"
    r"|misure|dimensioni|quote|размер(?:ы|ов)|линейные)(?![^\W\d_])|寸法|尺寸",
    re.IGNORECASE,
)
_ONE_OF_WORDS = re.compile(r"\d[\d.,]*\s*[^\W\d_]+|[A-Za-zµμß-ÿ]+|[А-яё]+|毫米|英寸|インチ|ミリ")
_CLAUSES = re.compile(r"[;；。、，,|()（）]")
_PARTS_OF_TEXT = re.compile(
    r"\s[–—-]\s|,\s+(?=[^\W\d]{4})|[.|]\s+|[;；。、，]\s*|[()\[\]]|(?:note|hinweis|anmerkung|nota|remarque)\s*:",
    re.IGNORECASE,
)
#: A number of a drawing with its word before it, in one cell.
_LONGEST_NUMBER = 40
_COLON = re.compile("[:：]")
_LETTERS = re.compile(r"[A-Z]{1,2}|[АБВГДЕЖИКЛМН]")
_BETWEEN_UNITS = re.compile(r"\s*[,;/|+&]\s*|\s+")
# Labels of drawing frames and revision tables (common practice): such a word is never the value of another label.
_LABELS = frozenset(
    word
    for words in (
        "date, by, from, author, drawn, drawn by, checked, checked by, approved, approved by, change, changes, what",
        "description, reason, sheet, page, scale, index, prepared, prepared by, issued, issued by, reviewed",
        "reviewed by, created, created by, released, released by, revision history, remark, remarks, note, notes",
        "erstellt, erstellt von, geprüft von, freigegeben, freigegeben von, ausgestellt, bemerkung, bemerkungen",
        "hinweis, datum, bearbeiter, gezeichnet, geprüft, freigabe, änderung, beschreibung, blatt, seite, maßstab, von",
        "auteur, dessiné, vérifié, approuvé, modification, feuille, échelle, par",
        "fecha, autor, dibujado, revisado, aprobado, cambio, hoja, escala, por",
        "data, autore, disegnato, controllato, approvato, modifica, foglio, scala",
        "дата, автор, изменение, лист, масштаб",
        "descrizione, descripción, motif, motivo, objet, libellé, descrizione modifica, описание, содержание",
        "日付, 作成, 作成者, 承認, 変更, 変更内容, 日期, 作者, 设计, 审核, 批准, 更改, 内容, 改訂内容",
        "更改内容, 修改内容, 变更内容",
    )
    for word in words.split(", ")
)


def is_label(text: str) -> bool:
    """Whether a text is a label of a drawing frame or of a revision table."""
    return text.strip(" .:：").casefold() in _LABELS


def label_and_value(text: str) -> tuple[str, str]:
    """A text before and behind its first colon; nothing behind it where it has none."""
    label, *value = _COLON.split(text, maxsplit=1)
    return label.strip(), "".join(value).strip()


def pair_in_cell(text: str, words: Words) -> tuple[str, str]:
    """Label and value of one cell: a colon between them, or what stands right behind its word (``Rev 1``)."""
    label, value = label_and_value(text)
    if value or len(text) > _LONGEST_NUMBER:
        return label, value
    pieces = text.split()
    for count in range(1, len(pieces)):
        label, value = " ".join(pieces[:count]), " ".join(pieces[count:])
        heading = words.heading(label)
        known = heading is not None and not heading.station and not any(map(str.isdigit, label))
        if heading is None or not known or heading.parameter not in ("drawing_number", "drawing_revision"):
            continue
        whole = words.heading(text)
        code = len(pieces) - count == 1 and (any(map(str.isdigit, value)) or (len(value) == 1 and value.isalpha()))
        if code and (whole is None or whole.station or whole.parameter == heading.parameter):
            return label, value
    named = name_and_quantity(text, words)
    return named if named[0] else (text, "")


def begins_with_label(text: str) -> bool:
    """Whether a text begins with a label of several words (``Released by K. M.``): a line of a drawing frame."""
    words = text.casefold().split()
    return any(" ".join(words[:count]) in _LABELS for count in range(2, min(len(words), 4)))


def one_length(text: str) -> str:
    """The unit of length among units in a text (``mm, N, °C``); empty where none or several stand there."""
    units = [(piece, _unit(piece)) for piece in _BETWEEN_UNITS.split(text.strip(" []()")) if piece]
    lengths = [piece for piece, unit in units if unit is not None and unit.dimension == "length"]
    return lengths[0] if len(lengths) == 1 and all(unit is not None for _, unit in units) else ""


def _unit(text: str) -> Unit | None:
    """A unit, its word in small letters too (``INCHES`` is one of the table, ``Inches`` is not)."""
    return known_unit(unit_spelt(text))


def units_said(text: str) -> str:
    """The unit of lengths that a sentence states for a table (``All dimensions in mm``, ``UNITS: INCH``), or empty."""
    if not 4 <= len(text) <= 200:
        return ""
    found = set()
    for part in (text.strip(" *()[]"), *_PARTS_OF_TEXT.split(text)):
        if sentence := _UNITS_SENTENCE.fullmatch(part.strip(" *:,.")):
            found.add(one_length(sentence["unit"]))
    if not any(found) and not {"mm", "in"} <= _lengths_named(text):
        parts = (text, *_PARTS_OF_TEXT.split(text), *_CLAUSES.split(text))
        found = {_only_unit(part) for part in parts if _DIMENSIONS.search(part)}
    found.discard("")
    found = found or {kind_units(text).get("size", "") or unit_of_all(text)}
    return found.pop() if len(found) == 1 else ""


def _only_unit(text: str) -> str:
    """The one unit of length that a sentence about dimensions holds; *in* is one at its end alone, ``6 mm`` none."""
    units = _lengths_in(text)
    return units[0][0] if len({name for _, name in units}) == 1 else ""


def _lengths_in(text: str) -> list[tuple[str, str]]:
    """Words of a text that are units of length, and those units."""
    words = _ONE_OF_WORDS.findall(text)
    able = [word for k, word in enumerate(words) if len(word) > 1 and (word != "in" or k == len(words) - 1)]
    return [(word, unit.name) for word in able if (unit := _unit(word)) is not None and unit.dimension == "length"]


def _lengths_named(text: str) -> set[str]:
    return {name for _, name in _lengths_in(text)}


@frozen(eq=False)
class TitleCell:
    """One value of a title block: what it is, the words that say so, and where it stands in a grid."""

    heading: Heading
    label: str
    grid: Grid
    row: int
    column: int


@define(eq=False)
class Title:
    """What stands above a table and holds for all of it.

    Attributes
    ----------
    machine : str
        Machine, empty where not stated.
    station : str
        Station that a text alone in its row names, or a label and its value; empty where none does.
    own : bool
        True for a table that names no station itself: labels and values above it may state its station and more.
    units : list of (str, Place)
        Units of lengths, each with its place.
    cells : list of TitleCell
        Values of machine parameters.
    kinds : list of TitleCell
        Names of the machine below words for its sort (``Model``, ``Pump type``), which count where no other is there.
    """

    machine: str = ""
    station: str = ""
    own: bool = False
    units: list[tuple[str, Place]] = field(factory=list)
    cells: list[TitleCell] = field(factory=list)
    kinds: list[TitleCell] = field(factory=list)


def read_title(grid: Grid, words: Words, unused: list[Unused], *, own: bool = False) -> Title:
    """Read label and value pairs of a title block; what is not understood goes to ``unused``."""
    title, whole = Title(own=own), grid
    grid = whole.cut(slice(0, MOST_ROWS))
    for row in range(grid.height):
        filled = [*grid.texts(row)]
        taken: set[int] = {cell.column for cell in title.cells if cell.row == row}  # below their labels
        if (
            len(filled) == 1
            and (station := words.station_said(text := grid.text(row, filled[0])))
            and (len(text) > 3 or (len(text) > 1 and not text.isascii()))
        ):
            title.station = station
            continue
        named_again = _names_columns([*grid.texts(row).values()])
        for column, heading in ({} if named_again else labels_over(grid, row, words)).items():
            title.cells.append(TitleCell(heading, grid.text(row, column), grid, row + 1, column))
            title.machine = grid.text(row + 1, column) if heading.parameter == "machine" else title.machine
            taken.add(column)
        for index, column in enumerate(filled):
            if column in taken:
                continue
            text = grid.text(row, column)
            if named_again:
                unused.append(_not_known(text, grid.place(row, column)))
                continue
            right, behind = value_and_unit(grid, row, *[*filled[index + 1 : index + 3], None, None][:2])
            unit = "" if behind is None else grid.text(row, behind)
            if _take(title, grid, words, row, column, text, right, unit):
                taken.add(column)
                if right is not None and not _inline(text, words):
                    taken.add(right)
                    if behind is not None and (
                        _take_unit(title, unit, row, right) or _take_revision(title, unit, row, right, behind)
                    ):
                        taken.add(behind)
                continue
            unused.append(_not_known(text, grid.place(row, column)))
            taken.add(column)
    _name_by_kind(title, unused)
    if whole.height > MOST_ROWS:
        more = f"{whole.height - MOST_ROWS} more rows"
        unused.append(Unused(ABOVE_THE_TABLE, more, whole.place(MOST_ROWS, 0), "a title block is not as long"))
    return title


def _names_columns(texts: Sequence[str]) -> bool:
    """Whether a row holds nothing but names as programs have them (``COD_DIS``, ``REV``, ``POS_CUSC``): no pairs."""
    joined = sum("_" in text for text in texts)
    return len(texts) >= _FEWEST_NAMES and 2 * joined >= len(texts) and all(map(_FIELD.fullmatch, texts))


def _not_known(text: str, place: Place) -> Unused:
    return Unused(ABOVE_THE_TABLE, text, place, "no label of the table's head is known here")


def _name_by_kind(title: Title, unused: list[Unused]) -> None:
    """Take the name of the machine by the word for its sort that says most, where no other word states it."""
    ranks = ("both", "kind", "machine", "")
    ranked = sorted(title.kinds, key=lambda cell: ranks.index(names_machine(cell.label)))
    for cell in ranked:
        place, text = cell.grid.place(cell.row, cell.column), cell.grid.text(cell.row, cell.column)
        if title.machine:
            unused.append(_not_known(text, place))
            continue
        title.machine = text
        title.cells.append(cell)


def cells_of_machine(cells: list[TitleCell]) -> list[TitleCell]:
    """Values that a title block states of the machine it names: those from its name on, up to a blank row."""
    named = next((cell for cell in cells if cell.heading.parameter == "machine"), None)
    if named is None:
        return []
    grid, end = named.grid, named.row
    while end < grid.height and any(not is_blank(column[end]) for column in grid.columns):
        end += 1
    return [cell for cell in cells if named.row <= cell.row < end]


def _inline(text: str, words: Words) -> bool:
    """Whether a cell holds label and value both."""
    return bool(pair_in_cell(text, words)[1]) or bool(units_said(text))


def _take_unit(title: Title, text: str, row: int, column: int) -> bool:
    """Take the unit behind a value of a title block."""
    if not title.cells or known_unit(text.strip("[]() ")) is None:
        return False
    last, unit = title.cells[-1], text.strip("[]() ")
    if (last.row, last.column, last.heading.unit) == (row, column, unit):
        return True
    if (last.row, last.column) != (row, column) or last.heading.unit or last.heading.entry.unit in ("", "1"):
        return False
    title.cells[-1] = evolve(last, heading=evolve(last.heading, unit=unit))
    return True


def _take_revision(title: Title, text: str, row: int, column: int, behind: int) -> bool:
    """Take a letter behind the number of a drawing as its revision (``Drawing | KP 27.893-5 | D``)."""
    last = title.cells[-1] if title.cells else None
    if last is None or (last.row, last.column, last.heading) != (row, column, Heading("drawing_number")):
        return False
    stated = any(cell.heading.parameter == "drawing_revision" for cell in title.cells)
    if stated or not _LETTERS.fullmatch(text):
        return False
    title.cells.append(TitleCell(Heading("drawing_revision"), last.label, last.grid, row, behind))
    return True


def _take(
    title: Title, grid: Grid, words: Words, row: int, column: int, text: str, right: int | None, unit: str
) -> bool:
    """Take one label with its value; false where it is none."""
    if unit_text := units_said(text):
        title.units.append((unit_text, grid.place(row, column)))
        return True
    label, value = pair_in_cell(text, words)
    inline = bool(value)
    value_text = value if inline else grid.text(row, right) if right is not None else ""
    if words.group(label) == "UNIT":
        unit_text = one_length(value_text)
        if unit_text:
            title.units.append((unit_text, grid.place(row, column)))
        return bool(unit_text)
    heading = _meant(title, label, value_text, "" if inline else unit, words) if value_text else None
    kind = heading is None and not title.own and can_name_machine(label, value_text, words)
    heading = Heading("machine") if kind else heading
    if heading is None:
        return False
    if heading.parameter == "station":
        title.station = words.station(value_text) if title.own else title.station
        return title.own and bool(title.station)
    if not inline and right is not None and _is_no_value(grid, words, row, column, right):
        return False
    if not inline and _is_label_beside(heading, value_text, len(grid.texts(row))):
        return False
    if heading.parameter == "machine" and not kind:
        title.machine = value_text
    cells_of = title.kinds if kind else title.cells
    if inline:
        # the cell is kept as it stands; its label is cut off where it is read
        grid.put(row, column, value)
        cells_of.append(TitleCell(heading, label, grid, row, column))
    elif right is not None:
        cells_of.append(TitleCell(heading, label, grid, row, right))
    return True


def _is_label_beside(heading: Heading, value: str, cells: int) -> bool:
    """Whether what stands behind a label for the drawing among others in its row is one itself, and no number."""
    return heading.parameter == "drawing_number" and cells > 2 and not any(map(str.isdigit, value))


def _meant(title: Title, label: str, value: str, unit: str, words: Words) -> Heading | None:
    """What a label of a title block names: of the machine, of all its stations, or of the one station of the table."""
    heading = words.heading(label)
    if title.own and title.station:
        heading = heading_of(label, heading, (value,), words)
    elif heading is None:
        heading = machine_heading(label, value, unit, words)
    if heading is None or heading.station:
        return None
    if heading.entry.level == "machine" or heading.parameter == "station":
        return heading
    if not title.own:
        return machine_heading(label, value, unit, words)
    return evolve(heading, station=title.station) if title.station and heading.aspect == "value" else None


def _is_no_value(grid: Grid, words: Words, row: int, column: int, right: int) -> bool:
    """Whether the text beside a label is a label or a name itself, or heads rows of another table."""
    text = grid.text(row, right)
    named = len(text) > 2 and names_value(words, text)
    return is_label(text) or named or heads_rows(grid, words, row, column, right)


def heads_rows(grid: Grid, words: Words, row: int, column: int, right: int) -> bool:
    """Whether a label without a colon and the text beside it head rows of their own (``Rev. | Checked on``)."""
    label, value = grid.text(row, column), grid.text(row, right)
    if row + 1 >= grid.height or not value or _COLON.search(label) or any(map(str.isdigit, value)):
        return False
    below, beside = grid.text(row + 1, column), grid.text(row + 1, right)
    long = len(below) > 2 or not below.isascii()
    named = not below or _COLON.search(below) or is_label(below) or (long and names_value(words, below))
    named = named or (below.isalpha() and len(below) > 2)  # Type
    return not named and beside[:1].isdigit() and len(below) <= 4


def names_value(words: Words, text: str) -> bool:
    """Whether a text names something that has a value; ``Rotor 5`` is a machine, not the word for one."""
    heading = words.heading(text)
    return heading is not None and not (heading.parameter in ("machine", "station") and heading.station)
