"""Parts lists with the features of the parts as rows: seats, shoulders and bores below or between the items.

``1 | Shaft | 42CrMo4``, ``1.1 | Bearing seat DE | Ø30 | k5``, ``3 | 6206-2Z/C3 | Ball bearing DE | 30x62x16``: the
names stand in the column of descriptions and sizes in another one, whatever heads it. A part that is an item of its own
says of the features below it whose they are. What the rows of bearings, springs and parts state besides is read by
:mod:`linter.reading.layouts.item_rows`.
"""

import re
from collections.abc import Mapping, Sequence
from itertools import pairwise

from linter.reading.cells.fit_classes import CLASS
from linter.reading.cells.signs import caseless
from linter.reading.files.grids import Grid
from linter.reading.layouts.beside import feature_beside
from linter.reading.layouts.header_roles import header_roles
from linter.reading.layouts.long_table import SAMPLE, LongTable, are_symbols
from linter.reading.layouts.placed import Placed, bearing_named, part_said
from linter.reading.layouts.requirement_columns import requirements_below
from linter.reading.layouts.sides import Side, side_of, within
from linter.reading.words.bearing_words import designation_behind, names_bearing
from linter.reading.words.boundary import dimensions_of
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said

#: Words that head the columns which only a list of parts has (common practice): numbers and counts of items, parts.
_OF_ITEMS = (
    "qty, qty., quantity, pcs, pcs., no. off, part no., part no, part number, item no., item number, p/n, stock no., "
    "menge, stk., stück, stückzahl, anzahl, sachnummer, sach-nr., teilenummer, teile-nr., artikelnummer, "
    "artikel-nr., materialnummer, qté, qte, quantité, nb, nbre, nombre, référence, réf., code article, cant., "
    "cantidad, código, referencia, q.tà, q.ta, qtà, quantità, codice, кол., кол-во, количество, 個数, 数量, 員数, "
    "部番, 品番, 部品番号, 件数, 件号, 代号, 零件号, 物料号"
)
_MATERIAL = "material, mat., mat'l, werkstoff, matière, matériau, materiale, материал, 材質, 材料, 材质"
_ITEM_WORDS, _MATERIAL_WORDS = (frozenset(map(caseless, words.split(", "))) for words in (_OF_ITEMS, _MATERIAL))
_NUMBERS = re.compile(r"\d+(?:[.\-]\d+)*[.)]?")
_SIGN = "[Ø⌀øφΦϕ∅Ф]"
_SIZE = re.compile(rf"(?:{_SIGN}\s*)?\d+(?:[.,]\d+)?\s*(?:mm)?\s*(?:{CLASS.pattern})?(?:\s*mm)?(?:\s*[(±+\-−].*)?")
_SIZE_OF_SEAT = re.compile(rf"{_SIGN} ?\d.*|\d[\d.,]* ?(?:mm )?{CLASS.pattern}(?: .*)?|{CLASS.pattern}")
#: A size with its class, as a column of fits may state it.
_WITH_CLASS = re.compile(rf"(?:{_SIGN}\s*)?\d+(?:[.,]\d+)?\s*(?:mm)?\s*{CLASS.pattern}.*")
#: What sets a position apart from the item before it (``Bearing housing, drive end``).
_SET_APART = re.compile(r"[,;:(（、，]|\s[–—-]\s")
#: The length of a part, in the column of sizes.
_LENGTH = re.compile(
    r"(?:L|length|lg\.?|länge|longueur|longitud|lunghezza|длина|全長|长|总长)\s*[=:]?\s*\d.*|\d+\s*lg", re.IGNORECASE
)
_READ = ("CLASS", "UPPER", "LOWER", "UNIT", "MAX", "MIN", "STATION", "MACHINE")
_FEWEST, _MOST_COLUMNS, _LONGEST = 3, 30, 60


def find_parts_list(grid: Grid, header: int, words: Words) -> LongTable | None:
    """The parts list below a heading row, or None."""
    heads = grid.texts(header)
    if len(heads) < _FEWEST or any(map(str.isdigit, "".join(heads.values()))):
        return None
    rows = range(header + 1, min(grid.height, header + 1 + SAMPLE))
    name = _names(grid, heads, rows, words)
    if name < 0:
        return None
    roles = _roles(grid, header, name, words)
    items = _parts(grid, name, roles, header + 1, words)
    parts = {row: item.side for row, item in items.items()}
    featured = {row: h for row in rows if (h := _feature(grid, row, name, parts.get(row), words)) is not None}
    open_ = [column for column in heads if column != name and roles.get(column, "NOTE") == "NOTE"]
    beside = [column for column in open_ if _is_beside(grid, name, heads[column], parts, featured, words)]
    roles |= dict.fromkeys(beside, "BESIDE")
    values = _values(grid, header, name, roles, featured)
    if values is None or not _lists_items(grid, heads, name, values, rows, words):
        return None
    roles[values] = "VALUE"
    of_material = [c for c, text in heads.items() if _heads_material(text) and c not in (name, values)]
    roles |= dict.fromkeys(of_material, "MATERIAL")
    requirements_below(grid, name, roles, header + 1)
    return LongTable(
        grid, header, name, roles, len(featured), header + 1, parts, _places(grid, name, items, words), items=True
    )


def _lists_items(
    grid: Grid, heads: Mapping[int, str], name: int, values: int, rows: Sequence[int], words: Words
) -> bool:
    """Whether headings or bearings with their designations show a list of parts."""
    if any(caseless(text) in _ITEM_WORDS and _may_count(grid, column, rows) for column, text in heads.items()):
        return True
    of_material = any(map(_heads_material, heads.values()))
    if of_material and _designates(grid, name, values, rows, words):
        return True
    return any(_is_bearing(grid, row, name, values, words) for row in rows)


def _may_count(grid: Grid, column: int, rows: Sequence[int]) -> bool:
    """Whether cells below a word for items may be their counts or numbers, and no sources of values (``Référence``)."""
    texts = [text for row in rows if (text := grid.text(row, column))]
    counts = all(map(_NUMBERS.fullmatch, texts))
    return counts or (2 * len({*texts}) > len(texts) and 2 * sum(any(map(str.isdigit, t)) for t in texts) >= len(texts))


def _places(grid: Grid, name: int, items: Mapping[int, Placed], words: Words) -> dict[int, str]:
    """The position of each row below an item that says one, where the row says none itself."""
    own = {row for row in items if (heading := words.heading(grid.text(row, name))) is not None and heading.station}
    return {row: item.station for row, item in items.items() if item.station and row not in own}


def states_length(text: str) -> bool:
    """Whether a cell states the length of a part (``L = 410``)."""
    return _LENGTH.fullmatch(text.strip()) is not None


def _heads_material(text: str) -> bool:
    """Whether a heading says the material, alone or with other words beside a stroke (``Werkstoff / Norm``)."""
    return any(caseless(piece.strip()) in _MATERIAL_WORDS for piece in text.split("/"))


def _names(grid: Grid, heads: Mapping[int, str], rows: range, words: Words) -> int:
    """The column that names most features, parts and bearings; -1 for too few, and below names and values."""
    counts = {c: _told(grid, c, rows, words) for c in heads if c < _MOST_COLUMNS}
    counts = {c: count for c, count in counts.items() if count and not are_symbols(grid, c, rows.start)}
    name = max(counts, key=lambda c: counts[c], default=-1)
    if name < 0 or counts[name] < _FEWEST:
        return -1
    own = words.heading(heads[name])
    return name if own is None or own.parameter in ("machine", "station") else -1


def _is_bearing(grid: Grid, row: int, name: int, values: int, words: Words) -> bool:
    """Whether a row names a bearing with its designation in a cell that is no value of a name."""
    texts = grid.texts(row)
    dimensions = values not in texts or dimensions_of(texts[values]) is not None
    named = any(bearing_named(text, words) is not None for text in texts.values())
    if not dimensions or not named:
        return False
    strengths = [designation_strength(text) for column, text in texts.items() if column not in (name, values)]
    certain = "certain" in (*strengths, designation_strength(texts.get(name, "")))
    return certain or (values in texts and "possible" in strengths) or designation_behind(texts.get(name, "")) != ""


def _designates(grid: Grid, name: int, values: int, rows: Sequence[int], words: Words) -> bool:
    """Whether a row that names a bearing has its designation in the column of sizes, as a list of parts may."""
    named = (row for row in rows if bearing_named(grid.text(row, name), words) is not None)
    return any(designation_strength(grid.text(row, values)) in ("certain", "possible") for row in named)


def _told(grid: Grid, column: int, rows: Sequence[int], words: Words) -> int:
    """Number of distinct names of features, parts and bearings in a column."""
    texts = {text for row in rows if 0 < len(text := grid.text(row, column)) <= _LONGEST}
    return sum(1 for text in texts if any(map(str.isalpha, text)) and _is_told(text, words))


def _is_told(text: str, words: Words) -> bool:
    heading = words.heading(text)
    if heading is not None and heading.parameter != "station":
        return heading.entry.level == "station"
    return (
        side_of(text) is not None
        or names_bearing(text)
        or designation_behind(text) != ""
        or "seat" in concepts_said(text)
    )


def _roles(grid: Grid, header: int, name: int, words: Words) -> dict[int, str]:
    """Roles of the columns beside names and values, by their headings."""
    said = header_roles(grid, header, words)
    roles = {column: role for column, role in said.items() if column != name and role in (*_READ, "NOTE")}
    others = [c for c in range(grid.width) if c != name and c not in roles]
    return roles | {c: "CHAR-ID" for c in others if _counts(grid, c, header) or _numbers(grid, c, header + 1)}


def _counts(grid: Grid, column: int, header: int) -> bool:
    """Whether a column below a word for items holds their numbers and counts."""
    return caseless(grid.text(header, column)) in _ITEM_WORDS and all(
        _NUMBERS.fullmatch(text) for row in range(header + 1, grid.height) if (text := grid.text(row, column))
    )


def _feature(grid: Grid, row: int, name: int, side: Side | None, words: Words) -> Heading | None:
    """The toleranced size of a seat or shoulder that a row names, or None."""
    label = grid.text(row, name)
    heading = within(words, side, label) if label else None
    toleranced = heading is not None and heading.entry.kind == "toleranced" and heading.entry.level == "station"
    return heading if toleranced else None


def _is_beside(
    grid: Grid, name: int, head: str, parts: dict[int, Side], featured: dict[int, Heading], words: Words
) -> bool:
    """Whether a heading says another feature of what rows name (``Ra``)."""
    return any(feature_beside(words, grid.text(row, name), head, parts.get(row)) is not None for row in featured)


def _values(grid: Grid, header: int, name: int, roles: dict[int, str], featured: dict[int, Heading]) -> int | None:
    """The column of sizes: the one that holds a size beside most names of sizes, and beside two of them at least.

    Of several that do it is the one that writes a diameter or a class there.
    """
    counts: dict[int, tuple[int, int]] = {}
    for column in range(grid.width):
        role = roles.get(column, "NOTE")
        if column == name or role not in ("NOTE", "CLASS") or _numbers(grid, column, header + 1):
            continue
        texts = [text for row in featured if _SIZE.fullmatch(text := grid.text(row, column))]
        if role == "CLASS" and not all(map(_WITH_CLASS.fullmatch, texts)):
            continue  # classes beside the sizes of another column
        if len(texts) > 1 and 2 * len(texts) > len(featured):
            counts[column] = (
                len(texts),
                sum(1 for text in texts if not text.replace(".", "").replace(",", "").isdigit()),
            )
    most = [column for column, count in counts.items() if count == max(counts.values())]
    return most[0] if len(most) == 1 else None


def _numbers(grid: Grid, column: int, start: int) -> bool:
    """Whether a column holds one number in all its rows, or numbers that count them."""
    texts = [text for row in range(start, grid.height) if (text := grid.text(row, column))]
    if not all(_NUMBERS.fullmatch(text) for text in texts):
        return False
    numbers = [[int(piece) for piece in re.findall(r"\d+", text)] for text in texts]
    return len({*texts}) == 1 or all(a < b for a, b in pairwise(numbers))


def _parts(grid: Grid, name: int, roles: dict[int, str], start: int, words: Words) -> dict[int, Placed]:
    """The part of each row: of the item above it that is a shaft or a housing and states no size of its own.

    An item may say its position too (``Bearing housing, drive end``): features below it are of that.
    """
    rows = [row for row in range(start, grid.height) if grid.text(row, name)]
    heads = {row: item for row in rows if (item := _item(grid, row, name, words))}
    own = [column for column in range(grid.width) if column != name and roles.get(column) not in _READ]
    own = [c for c in own if heads and all(grid.text(row, c) for row in heads)]
    own = [c for c in own if any(not grid.text(row, c) for row in rows)]
    result: dict[int, Placed] = {}
    current: Placed | None = None
    for row in rows:
        label = grid.text(row, name)
        if row in heads:
            current = heads[row]
        elif current is not None and (
            all(grid.text(row, c) for c in own) if own else within(words, current.side, label) is None
        ):
            current = None  # another item begins
        if current is not None and row not in heads:
            result[row] = current
    return result


def _item(grid: Grid, row: int, name: int, words: Words) -> Placed | None:
    """The shaft or the housing that a row names as an item, or None; where a diameter stands, it is a feature's."""
    item = part_said(text := grid.text(row, name), words)
    if item is not None and item.station and not _SET_APART.search(text):
        return None  # a position behind a sign, and no word that joins others
    if any(_SIZE_OF_SEAT.fullmatch(grid.text(row, column)) for column in range(grid.width) if column != name):
        return None
    return item if item is not None and item.side.side in ("shaft", "housing") else None
