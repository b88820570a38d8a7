"""Columns of a list of parameters whose headings do not say what they hold: the cells below them do.

A heading row of a list has two words or more of such a row (``Parameter``, ``Unit``); a column of units holds units
that fit the names beside them, the column of values holds values of the names beside it, whatever stands above. The
names come again for every position, which tells a list from a table with the positions side by side.
"""

import re
from collections import defaultdict

from linter.reading.cells.units import conversion, known_unit
from linter.reading.files.grids import Grid, cell_text, is_blank
from linter.reading.layouts.long_table import SAMPLE, limit_said, names_below, sample
from linter.reading.layouts.lost import is_value
from linter.reading.words.column_words import KEYS
from linter.reading.words.designations import read_designation
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said, is_bearing, part_alone

_OF_LISTS = {"NAME", "VALUE", "UNIT", "EXPR", "UPPER", "LOWER", "MAX", "MIN", "CLASS", "STATION", "CHAR-ID", "KIND"}
#: Columns of deviations or machines beside which one column of values stands.
_BESIDE = {"UPPER", "LOWER", "MACHINE", "STATION"}
_STATES = {"VALUE", "EXPR", "UPPER", "LOWER", "MAX", "MIN", "RESULT"}
#: A word for a place may head the names themselves (``Location``, ``箇所``: ``front bearing seat``).
_PLACES = ("STATION", "MACHINE")
_ENOUGH_NAMES, _FEWER = 4, 3
_LONGEST = 60
_MOST_COLUMNS = 30
_SIZE = re.compile(r"[Ø⌀ø]?\s*\d*[.,]?\d")
_PLAIN = re.compile(r"[Ø⌀ø]?\s*(\d*[.,]?\d+)")
#: Limits of a seat differ by less of its size (seats of bearings: from memory of ISO 286-2).
_NEAR = 0.01
_PIECES = re.compile(r"[\s/_()\[\]-]+")


def complete(grid: Grid, header: int, roles: dict[int, str], words: Words) -> None:
    """Add the roles of columns that the words of a heading row leave open, and correct those that the cells deny."""
    _names_below_a_note(grid, header, roles, words)
    _values_below_a_name(grid, header, roles, words)
    _two_limits(grid, header, roles)
    if len(_OF_LISTS & set(roles.values())) < 2:
        return
    name = _name_column(grid, header, roles, words)
    if name is None or (name not in roles and words.heading(grid.text(header, name)) is not None):
        return  # a row of the list itself: Wave spring force | - | 120 | N
    rows = range(header + 1, min(grid.height, header + 1 + SAMPLE))
    named = {row: heading for row in rows if (heading := words.heading(grid.text(row, name))) is not None}
    _names_elsewhere(grid, header, name, roles, words)
    if roles.get(name) in _PLACES or (roles.get(name, "NOTE") == "NOTE" and "NAME" not in roles.values()):
        roles[name] = "NAME"
    _units(grid, name, roles, named)
    _stations(grid, header, name, roles, words)
    said = set(roles.values())
    if said & _BESIDE and header + 1 < grid.height and part_alone(grid.text(header + 1, name)):
        return  # the heading of a shaft and a housing, below names and values of their bearing
    if not _STATES & said - _BESIDE and (_come_again(grid, name, named) or said & _BESIDE):
        values = [c for c in range(name + 1, grid.width) if not roles.get(c) and _states_values(grid, header, c, named)]
        if len(values) == 1 and not (said & _BESIDE and words.station_said(grid.text(header, values[0]))):
            roles[values[0]] = "VALUE"


def _names_below_a_note(grid: Grid, header: int, roles: dict[int, str], words: Words) -> None:
    """A word for remarks (``Description``) heads the names where they stand below it and no other word does."""
    notes = [c for c, role in roles.items() if role == "NOTE"] if "NAME" not in roles.values() else []
    named = [c for c in notes if _names_of_features(grid, c, header, words) >= 2 * _ENOUGH_NAMES]
    if len(named) == 1 and len(notes) == 1:
        roles[named[0]] = "NAME"


def _names_elsewhere(grid: Grid, header: int, name: int, roles: dict[int, str], words: Words) -> None:
    """``Description | Dimension``: the words for names head the values where the names stand in another column."""
    others = [c for c, role in roles.items() if role == "NAME" and c > name]
    if roles.get(name) != "NOTE" or len(others) != 1:
        return
    if _FEWER * names_below(grid, others[0], header + 1, words) > names_below(grid, name, header + 1, words):
        return
    roles[name] = "NAME"
    del roles[others[0]]


def _values_below_a_name(grid: Grid, header: int, roles: dict[int, str], words: Words) -> None:
    """A word that may head names (``Maß``, ``Cote``, ``Размер``) heads the values where names stand left of it."""
    columns = [c for c, role in roles.items() if role == "NAME"]
    if len(columns) < 2 or {"VALUE", "EXPR"} & set(roles.values()):
        return
    rows = range(header + 1, min(grid.height, header + 1 + SAMPLE))
    values = []
    for column in columns[1:]:
        texts = [text for row in rows if (text := grid.text(row, column))]
        numbers = sum(_SIZE.match(text) is not None for text in texts)
        if texts and 3 * numbers >= 2 * len(texts):
            values.append(column)
    if len(values) == 1 and names_below(grid, columns[0], header + 1, words):
        roles[values[0]] = "VALUE"


def _two_limits(grid: Grid, header: int, roles: dict[int, str]) -> None:
    """Columns headed *low* and *high* over pairs of sizes that are as near as limits are, beside a column of names."""
    if "NAME" not in roles.values() or {"VALUE", "EXPR"} & set(roles.values()):
        return
    said = {limit_said(grid.text(header, c)): c for c in range(grid.width) if c not in roles}
    if not {"MIN", "MAX"} <= said.keys():
        return
    pairs = 0
    for row in range(header + 1, min(grid.height, header + 1 + SAMPLE)):
        numbers = [_PLAIN.fullmatch(grid.text(row, said[limit]).strip()) for limit in ("MIN", "MAX")]
        if all(numbers):
            low, high = (float(n[1].replace(",", ".")) for n in numbers if n is not None)
            if not 0 < low <= high:
                return
            pairs += high - low <= _NEAR * low
    if pairs > 1:
        roles.update({said["MIN"]: "MIN", said["MAX"]: "MAX"})


def _name_column(grid: Grid, header: int, roles: dict[int, str], words: Words) -> int | None:
    """The column of the names: a headed one with most of them."""
    said = set(roles.values())
    states = "VALUE" in said or {"MAX", "MIN"} <= said or {"UPPER", "LOWER"} <= said
    allowed = ("NOTE", "NAME", "CHAR-ID", "KIND", *(_PLACES if states else ()))
    open_ = [
        c for c in range(min(grid.width, _MOST_COLUMNS)) if grid.text(header, c) and roles.get(c, "NOTE") in allowed
    ]
    counts = {
        c: _names_of_sizes(grid, c, header, words)
        if roles.get(c) in _PLACES
        else names_below(grid, c, header + 1, words)
        for c in open_
    }
    best = max(counts, key=lambda c: counts[c], default=-1)
    few = best >= 0 and counts[best] < _ENOUGH_NAMES and "NAME" not in said and states
    notes = [c for c, count in counts.items() if few and count > 1 and roles.get(c) == "NOTE"]
    if len(notes) == 1:  # Description
        best = notes[0]
        counts[best] = _names_of_features(grid, best, header, words)
    return best if best >= 0 and counts[best] >= _ENOUGH_NAMES else None


def _names_of_features(grid: Grid, column: int, header: int, words: Words) -> int:
    """Number of distinct names of a column, those of features too whose part stands elsewhere; none of remarks."""
    texts = {cell.strip() for cell in sample(grid, column, header + 1) if type(cell) is str and len(cell) < _LONGEST}
    named = sum(words.heading(text) is not None or bool(concepts_said(text)) for text in texts)
    return named if 4 * named >= 3 * len(texts) else 0


def _names_of_sizes(grid: Grid, column: int, header: int, words: Words) -> int:
    """Number of distinct names below a word for a place that say more than a place, a machine or a bearing."""
    texts = {cell for cell in grid.columns[column][header + 1 : header + 1 + SAMPLE].tolist() if type(cell) is str}
    named = {heading for text in texts if (heading := words.heading(text)) is not None}
    return sum(heading.parameter not in ("machine", "station", "bearing_designation") for heading in named)


def _units(grid: Grid, name: int, roles: dict[int, str], named: dict[int, Heading]) -> None:
    """The column of units: the one whose cells fit the names, where none below the word for units does."""
    fit = {c: _fitting_units(grid, c, named) for c in range(grid.width) if c != name}
    said = [c for c, role in roles.items() if role == "UNIT"]
    found = [c for c, fits in fit.items() if fits and roles.get(c, "NOTE") in ("NOTE", "NAME", "KIND")]
    if any(fit.get(c) for c in said) or len(found) != 1:
        return
    for column in said:
        if all(is_blank(grid.columns[column][row]) for row in named):
            del roles[column]
    if "UNIT" not in roles.values():
        roles[found[0]] = "UNIT"


def _fitting_units(grid: Grid, column: int, named: dict[int, Heading]) -> bool:
    """Whether the cells of a column are units of the parameters beside them, but for a few."""
    filled, fits = 0, 0
    for row, heading in named.items():
        cell = grid.columns[column][row]
        if is_blank(cell) or cell_text(cell).strip() in ("-", "–", "1"):
            continue
        filled += 1
        text = cell.strip("[]() ") if type(cell) is str else ""
        own = heading.entry.unit
        fits += known_unit(text) is not None and (own in ("", "1") or conversion(text, own) is not None)
    return fits >= 3 and fits >= 0.8 * filled


def _stations(grid: Grid, header: int, name: int, roles: dict[int, str], words: Words) -> None:
    """A column headed by words for a place alone (``Pos. of bearing``, abbreviated or not), where no other says it."""
    if {"STATION", "MACHINE"} & set(roles.values()):
        return
    columns = [
        c for c in range(grid.width) if c != name and c not in roles and _says_place(grid.text(header, c), words)
    ]
    if len(columns) == 1:
        roles[columns[0]] = "STATION"


def _says_place(text: str, words: Words) -> bool:
    pieces = [piece for piece in _PIECES.split(text) if piece]
    places = [word_key(piece.strip(" .")) in KEYS["place"] or "STATION" in words.groups(piece) for piece in pieces]
    rest = [piece for piece, place in zip(pieces, places, strict=True) if not place]
    if words.heading(text) is not None or any("drawing" in concepts_said(piece) for piece in rest):
        return False  # Drg Ref, Zeichn.-Pos.: where on a drawing
    return any(places) and all(is_bearing(piece) or len(piece) <= 3 for piece in rest)


def _come_again(grid: Grid, name: int, named: dict[int, Heading]) -> bool:
    """Whether the names of a position come again, as they do where every position has its own rows."""
    rows: defaultdict[str, int] = defaultdict(int)
    for row, heading in named.items():
        if heading.entry.level == "station":
            rows[grid.text(row, name)] += 1
    again = sum(1 for count in rows.values() if count > 1)
    return again > 2 and 2 * again >= len(rows)


def _states_values(grid: Grid, header: int, column: int, named: dict[int, Heading]) -> bool:
    """Whether a headed column holds values of the names beside it."""
    judged = [row for row, heading in named.items() if heading.entry.kind in ("number", "toleranced")]
    like = sum(is_value(grid.columns[column][row], named[row].entry) for row in judged)
    head = grid.text(header, column)
    if not head or _PLAIN.fullmatch(head) or read_designation(head).derived:
        return False  # a row of the list itself: Designation | 6002
    return len(judged) > 2 and like >= 0.75 * len(judged)
