"""What a firm puts before its names or behind them and what says nothing of what they name.

Numbers before them (``P011_軸径``, ``4.2 Wellensitz``, ``[17] Bore``): every name of a column, of a heading row or
under a key of records has one, no two the same, and more names are known without them. So have heads of sections that
count from one (``1. Bearings``, ``II. Shaft``, ``三、轴``), each alone in its row. Behind the name of a bearing
where it is listed, or that it is the one that is built in (``Kugellager vorn lt. Stückliste``, ``Roulement monté``).
"""

import re
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from attrs import evolve

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import LONGEST_MIXED, Grid, TextColumn, object_column
from linter.reading.layouts.sides import side_of
from linter.reading.words.designations import read_designation
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said

_NUMBERED = re.compile(
    r"[\[(#]?(?P<code>[^\W\d_]{0,4}[-_. ]?\d{1,5}(?:[.-]\d{1,3}){0,3})"
    r"(?:[\])]|[.:、．）)](?!\d))?(?P<joint>[_ .:、\-–—\])]*)(?=[^\W\d])"
)
#: Words before and for a list that names the bearings, words for what is built in (common practice).
_BY = (
    r"lt\.?|laut|gem(?:äß|\.)|nach|aus|as per|per|acc\. to|according to|from|selon|suivant|voir|según|ver|come da"
    r"|secondo|da|по|согласно"
)
_LISTS = (
    "stückliste|katalog|zeichnung|bom|parts list|bill of materials?|drawing|catalogue?|nomenclature|plan|catálogo"
    "|lista de piezas|lista de materiales|plano|distinta(?: base)?|disegno|catalogo|спецификации|чертежу|каталогу"
)
_BUILT_IN = (
    "monté|utilisé|retenu|choisi|fitted|mounted|installed|used|selected|chosen|eingebaut|verbaut|verwendet|gewählt"
    "|montado|utilizado|elegido|montato|utilizzato|impiegato|scelto|установленный|применяемый|выбранный"
)
_OF_SIGNS = "部品表による|部品表より|カタログより|使用|採用|按明细表|见明细表|按样本|选用|选型"
_LISTED = re.compile(
    rf"[ ,]+\(?(?:(?:{_BY}) (?:the |la |le |el |il )?(?:{_LISTS})|{_BUILT_IN})\)?$"
    rf"|(?<=[受承])[ (（]*(?:{_OF_SIGNS})[)）]?$",
    re.IGNORECASE,
)
#: Numbers of sections; Roman and Chinese ones up to ten.
_SECTION = re.compile(
    r"[(（第]?(?P<number>\d{1,2}|[IVX]{1,4}|[A-H]|[一二三四五六七八九十])(?:[)）.．、:：]|部分|章|節|节|(?=\s))[\s:：、.]*(?P<name>[^\W\d].*)"
)
_COUNTS = (
    tuple(map(str, range(1, 11))),
    ("I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X"),
    tuple("ABCDEFGH"),
    tuple("一二三四五六七八九十"),
)
#: Names that must have a number, and their share of those beside them.
_LEAST, _SHARE = 4, 0.8
#: Columns and rows that may hold names, rows of a column that are looked at.
_COLUMNS, _ROWS, _LONGEST = 4, 30, 2000
_LONGEST_NAME = 80


def without_numbers(grid: Grid, words: Words) -> Grid:
    """The grid with such numbers cut off its names; the grid as it is where none has one."""
    if grid.height > LONGEST_MIXED:
        return grid
    cut: dict[str, str] = {}
    for texts in _runs(grid):
        cut.update(cut_off(texts, words))
        cut.update(_without_source(texts, words))
    grid = _with_sections_named(grid)
    if not cut:
        return grid
    columns = [
        column if isinstance(column, TextColumn) else object_column([_cut(cell, cut) for cell in column.tolist()])
        for column in grid.columns
    ]
    return evolve(grid, columns=columns)


def records_without_numbers(document: Any, words: Words) -> Any:
    """A document with such numbers cut off the texts under one key of its lists of records; as it is without any."""
    cuts: dict[int, dict[str, dict[str, str]]] = {}
    level = [document]
    while level:
        for node in level:
            if isinstance(node, list) and len(node) >= _LEAST and all(isinstance(record, dict) for record in node):
                keys = dict.fromkeys(key for record in node for key in record)
                texts = {
                    key: [t for record in node[:_LONGEST] if isinstance(t := record.get(key), str)] for key in keys
                }
                cut = {key: cut_off(of_key, words) | _without_source(of_key, words) for key, of_key in texts.items()}
                if of_list := {key: of_key for key, of_key in cut.items() if of_key}:
                    cuts[id(node)] = of_list
        inner = [child for node in level for child in (node.values() if isinstance(node, dict) else node)]
        level = [child for child in inner if isinstance(child, dict | list)]
    return _with_cuts(document, cuts) if cuts else document


def _with_cuts(node: Any, cuts: Mapping[int, Mapping[str, dict[str, str]]]) -> Any:
    """A document whose records in some lists have other texts."""
    if isinstance(node, dict):
        return {key: _with_cuts(value, cuts) for key, value in node.items()}
    if not isinstance(node, list):
        return node
    of_list = cuts.get(id(node), {})
    return [
        {key: _cut(value, of_list[key]) if key in of_list else _with_cuts(value, cuts) for key, value in record.items()}
        if isinstance(record, dict)
        else _with_cuts(record, cuts)
        for record in node
    ]


def cut_off(texts: Sequence[str], words: Words) -> dict[str, str]:
    """Names without their numbers, by the names as they are written; empty where these are none."""
    named = [text for text in dict.fromkeys(text.strip() for text in texts) if text]
    found = {text: match for text in named if (match := _NUMBERED.match(text)) and not words.mapped(text)}
    if len(found) < max(_LEAST, _SHARE * (len(named) - 2)) or len({m["code"] for m in found.values()}) < len(found):
        return {}
    plain = {text: text[match.end() :] for text, match in found.items()}
    if any(known_unit(text) is not None for text in plain.values()):
        return {}  # 5400 rpm
    if any(read_designation(text).derived for text in plain):
        return {}  # 6202-2Z
    known = sum(words.heading(text) is not None for text in plain)
    bare = sum(words.heading(text) is not None for text in plain.values())
    return plain if bare > max(known, 2) and 2 * bare >= len(plain) else {}


def _with_sections_named(grid: Grid) -> Grid:
    """The grid without the numbers of texts alone in their rows that count from one, two of them parts or bearings."""
    found = []
    for row in (row for row in range(grid.height) if grid.filled[row] == 1):
        column, text = next(iter(grid.texts(row).items()), (0, ""))
        if len(text) <= _LONGEST_NAME and (match := _SECTION.fullmatch(text)):
            found.append((row, column, match["number"], match["name"]))
    for counts in _COUNTS:
        own = [head for head in found if head[2] in counts]
        counted = tuple(number for _, _, number, _ in own) == counts[: len(own)]
        if counted and sum(side_of(name) is not None for *_, name in own) > 1:
            return grid.with_cells({(row, column): name for row, column, _, name in own})
    return grid


def _without_source(texts: Sequence[str], words: Words) -> dict[str, str]:
    """Names of bearings without what says where they are listed or that they are built in."""
    cut = {
        text: text[: match.start()] for text in texts if len(text) <= _LONGEST_NAME and (match := _LISTED.search(text))
    }
    return {
        text: rest for text, rest in cut.items() if words.heading(text) is None and "bearing" in concepts_said(rest)
    }


def _cut(cell: Any, cut: dict[str, str]) -> Any:
    return cut.get(cell.strip(), cell) if type(cell) is str else cell


def _runs(grid: Grid) -> Iterator[list[str]]:
    """The texts of the first columns, and those of the first rows that hold nothing else."""
    for column in grid.columns[:_COLUMNS]:
        if not isinstance(column, TextColumn):
            yield [cell for cell in column[:_LONGEST].tolist() if type(cell) is str]
    for row in range(min(grid.height, _ROWS)):
        cells = [cell for cell in grid.row(row) if cell not in (None, "")]
        if len(cells) >= _LEAST and all(type(cell) is str for cell in cells):
            yield cells
