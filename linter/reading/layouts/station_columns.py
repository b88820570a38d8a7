"""Columns of a table with names down a column that say whose values its rows state."""

import re
from collections import Counter
from collections.abc import Mapping, Sequence
from itertools import groupby, pairwise

from linter.reading.files.grids import Grid
from linter.reading.layouts.lone import SHARED
from linter.reading.layouts.long_table import LongTable, counts_with_letters
from linter.reading.layouts.row_keys import machine_by_rows
from linter.reading.layouts.sides import is_use, part_or_rotor, side_of
from linter.reading.layouts.strips import Found
from linter.reading.words.designations import designation_strength
from linter.reading.words.dictionary import dictionary, word_key
from linter.reading.words.headings import Words
from linter.reading.words.machine_words import names_machine
from linter.reading.words.parts import is_bearing

_APART = re.compile(r"[\s\-_/.]+")
_BEARING = re.compile("軸受|轴承|ベアリング|lager", re.IGNORECASE)
#: The number of an item (``1``, ``B2``).
_ITEM = re.compile(r"[^\W\d_]{0,3}[ .-]?\d")
_MOST_NAMES = 2000  # rows that are looked at
_FEWEST = 4  # names of a machine
_SAMPLE, _FIRST = 300, 4  # cells that tell what a column holds; columns that may number the rows


def positions_in_machines(grid: Grid, name: int, roles: dict[int, str], start: int, words: Words) -> None:
    """A column headed as one of machines whose texts are positions and the machine itself is one of objects.

    ``Unit``: *wheel bearing*, *coupling bearing*, *pump*; what is stated of the machine stands beside that word alone,
    and what is stated of positions beside the others. Beside bearings there may be parts and the rotor instead.
    """
    column = next((c for c, role in roles.items() if role == "MACHINE"), None)
    if column is None or {"STATION", "STATION-OF"} & set(roles.values()):
        return
    levels: dict[str, set[str]] = {}
    for row in range(start, min(grid.height, start + _MOST_NAMES)):
        heading = words.heading(label) if (label := grid.text(row, name)) else None
        if (text := grid.text(row, column)) and heading is not None and not heading.station:
            levels.setdefault(text, set()).add("machine" if heading.parameter in SHARED else heading.entry.level)
    places = {text for text in levels if len(text) > 2 and words.station_said(text)}
    whole = levels.keys() - places
    apart = all(levels[text] == {"station"} for text in places) and all("machine" in levels[text] for text in whole)
    if len(places) > 1 and ((len(whole) == 1 and apart) or _are_bearings(grid, column, start, places)):
        roles[column] = "NOTE"


def _are_bearings(grid: Grid, column: int, start: int, places: set[str]) -> bool:
    """Whether places of a column are bearings by their names, and what stands there beside them parts or the rotor."""
    texts = {text for row in range(start, min(grid.height, start + _MOST_NAMES)) if (text := grid.text(row, column))}
    named = all(any(map(is_bearing, _APART.split(text))) or _BEARING.search(text) for text in places)
    return named and all(part_or_rotor(text) is not None for text in texts - places)


def stations_of_objects(grid: Grid, name: int, roles: dict[int, str], start: int, words: Words) -> dict[int, str]:
    """Stations of rows whose names come again, from a column of objects of which some are stations.

    Beside a column of machines the names come again for the stations of one machine.
    """
    if "STATION" in roles.values():
        return {}
    rows = range(start, min(grid.height, start + _MOST_NAMES))
    columns = [c for c in range(grid.width) if c != name and roles.get(c, "NOTE") in ("NOTE", "NAME", "KIND")]
    machine = next((c for c, role in roles.items() if role == "MACHINE"), None)
    whose = {row: grid.merged_text(row, machine) if machine is not None else "" for row in rows}
    for column in sorted(columns, key=lambda c: all(grid.text(row, c).isdigit() for row in rows)):  # words first
        texts = {row: text for row in rows if (text := grid.text(row, column))}
        if len({*texts.values()}) == len(texts) and all(text.strip(".)").isdigit() for text in texts.values()):
            continue  # running numbers
        said = {text: words.station_said(text) for text in set(texts.values())}
        named = {row: said[text] for row, text in texts.items() if said[text]}
        if _tell_rows_apart([(whose[row], station, grid.text(row, name)) for row, station in named.items()]):
            roles[column] = "STATION-OF"
            return named
    return {}


def _tell_rows_apart(keys: Sequence[tuple[str, str, str]]) -> bool:
    """Whether machine, station and name of rows come once, and names again for another station of a machine."""
    again = Counter((machine, label) for machine, _, label in keys)
    several = len({station for _, station, _ in keys}) > 1 and max(again.values()) > 1
    return several and len(set(keys)) == len(keys)


def numbered_stations(grid: Grid, name: int, part: int | None, roles: dict[int, str], start: int, words: Words) -> None:
    """A column of numbers names the stations where no other does and the same names come again under each number.

    Rows above or below those of all numbers may have none: they are of the machine.
    """
    if {"STATION", "MACHINE"} & set(roles.values()):
        return
    named = [r for r in range(start, min(grid.height, start + _MOST_NAMES)) if grid.text(r, name)]
    for column in [c for c, role in roles.items() if role in ("CHAR-ID", "NAME") and c != part]:
        if roles[column] == "NAME" and (part is None or not _are_items(grid, column, named, start, words)):
            continue
        stated = [at for at, r in enumerate(named) if grid.merged_text(r, column)]
        rows = named[stated[0] : stated[-1] + 1] if stated else []
        labels = [(grid.text(r, name), grid.text(r, part) if part is not None else "") for r in rows]
        numbers = [grid.merged_text(r, column) for r in rows]
        keys = list(zip(numbers, labels, strict=True))
        several = 1 < len(set(numbers)) <= len(rows) // 2 and all(numbers)
        if several and len(set(keys)) == len(keys) and 2 * len(set(labels)) <= len(keys) + 1:
            roles[column] = "STATION"
            return


def _are_items(grid: Grid, column: int, rows: Sequence[int], start: int, words: Words) -> bool:
    """Whether a column headed by a word for items too (``Item``) holds their numbers (``B1``, ``B2``) and no names."""
    texts = {text for row in rows if (text := grid.merged_text(row, column))}
    return "CHAR-ID" in words.groups(grid.text(start - 1, column)) and all(map(_ITEM.fullmatch, texts))


def stations_by_cells(grid: Grid, name: int, part: int | None, roles: dict[int, str], start: int, words: Words) -> None:
    """A column of nothing but known positions names the stations of rows that say their part, whatever heads it.

    Each of them has rows of its own, and part and name come once for each (``Side``: *A*, *B*).
    """
    if part is None or {"STATION", "MACHINE"} & set(roles.values()):
        return
    rows = [r for r in range(start, min(grid.height, start + _MOST_NAMES)) if grid.text(r, name)]
    for column in (c for c in range(grid.width) if c not in (name, part) and roles.get(c, "NOTE") == "NOTE"):
        keys = [(text, grid.merged_text(r, part), grid.text(r, name)) for r in rows if (text := grid.text(r, column))]
        said = [text for text, _, _ in keys]
        known = said and all(words.station_said(text) and not text.isdigit() for text in {*said})
        if known and len({*said}) > 1 and all(said.count(text) > 2 for text in {*said}) and len({*keys}) == len(keys):
            roles[column] = "STATION"
            return


#: A number of a row (``12``, ``2.1``), which is no machine.
_COUNTED = re.compile(r"[\d.,/ -]*")


def machines_of_rows(grid: Grid, name: int, roles: dict[int, str], start: int, words: Words) -> None:
    """A column beside the names that keeps apart what is stated of several machines names them, whatever heads it.

    Each of its texts stands in neighbouring rows, and the same names come again, for the same positions, below others.
    Right of the names it says no numbers alone, nor which of several statements its rows are.
    """
    if "MACHINE" in roles.values():
        return
    rows = [r for r in range(start, min(grid.height, start + _MOST_NAMES)) if words.heading(grid.text(r, name) or "-")]
    stations = [c for c, role in roles.items() if role == "STATION"]
    keys = [(grid.text(r, name), *(grid.text(r, c) for c in stations)) for r in rows]
    if len(rows) < 2 * _FEWEST or len(set(keys)) == len(keys):
        return
    for column in [*range(name), *range(name + 1, grid.width)]:
        texts = [grid.merged_text(r, column) for r in rows]
        right, role = column > name, roles.get(column, "NOTE")
        if role not in ("NOTE", "CHAR-ID", "NAME") or (role != "NOTE" and any(map(_COUNTED.fullmatch, texts))):
            continue
        if right and not (start and _may_be_names(grid.text(start - 1, column), texts, words)):
            continue
        if _may_be_machines(texts, words) and _apart(texts, keys):
            roles[column] = "MACHINE"
            return


def _may_be_names(label: str, texts: Sequence[str], words: Words) -> bool:
    """Whether texts below a heading may be names of machines: with letters and figures, or below a word for one.

    Remarks are none, nor what is old and new or the bearing.
    """
    said = {*texts}
    lettered = all(len(text) > 2 and any(map(str.isalpha, text)) for text in said)
    named = names_machine(label) != "" or all(any(map(str.isdigit, text)) for text in said)
    versions = dictionary().versions.keys() & {word_key(text) for text in (label, *said)}
    other = words.heading(label) is not None or words.group(label) in ("NOTE", "RESULT", "KIND")
    return lettered and named and not (versions or other or any(designation_strength(t) == "certain" for t in said))


def _may_be_machines(texts: Sequence[str], words: Words) -> bool:
    """Whether texts of rows come in runs, two different ones at least, and say no part, no position and no use."""
    said = set(texts)
    runs = 1 + sum(a != b for a, b in pairwise(texts))
    if len(said) < 2 or runs > len(said) or not all(said):
        return False
    return not any(side_of(t) or words.station_said(t) or words.of_whole(t) or is_use(t) for t in said)


def _apart(texts: Sequence[str], keys: Sequence[tuple[str, ...]]) -> bool:
    """Whether texts keep apart rows of the same names, most of which stand below each of them."""
    of_text = [{key for key, own in zip(keys, texts, strict=True) if own == text} for text in dict.fromkeys(texts)]
    once = len({*zip(texts, keys, strict=True)}) == len(keys)
    return once and all(2 * len(of_text[0] & other) >= len(other) >= _FEWEST for other in of_text)


def tell_machines(table: LongTable, words: Words, found: Found) -> None:
    """The assumption that a column names the machines, where its heading does not say so."""
    grid = table.grid
    for column in [c for c, role in table.roles.items() if role == "MACHINE"]:
        label = grid.text(table.header, column) if table.header >= 0 else ""
        if (heading := words.heading(label)) is not None and heading.parameter == "machine":
            continue
        found.problems.append(machine_by_rows(grid, label, table.start, column))


def judge_numbers(grid: Grid, roles: dict[int, str], start: int) -> None:
    """Columns of stations and of numbers of characteristics by their cells.

    Numbers that count the rows, with letters (``R6``) or not, name no stations, and words that come again and again
    number no rows: where no column names the stations, they do.
    """
    rows = [r for r in range(start, grid.height) if grid.filled[r] > 1][:_SAMPLE]
    for column in [c for c, role in roles.items() if role == "STATION"]:
        texts = [text for row in rows if (text := grid.text(row, column))]
        counted = [int(text) for text in texts if text.isdigit()]
        if len(counted) == len(texts) > 2 and all(a < b for a, b in pairwise(counted)):
            roles[column] = "CHAR-ID"
    roles |= _codes_of_rows(grid, roles, rows)
    if "STATION" in roles.values():
        return
    named = []
    for column in [c for c, role in roles.items() if role == "CHAR-ID"]:
        texts = [text for row in rows if (text := grid.text(row, column))]
        if len(texts) >= 2 * len(set(texts)) > 0 and not any(any(map(str.isdigit, text)) for text in texts):
            named.append(column)
    if len(named) == 1:
        roles[named[0]] = "STATION"


def _codes_of_rows(grid: Grid, roles: Mapping[int, str], rows: Sequence[int]) -> dict[int, str]:
    """The first columns without a role whose cells are running numbers with letters."""
    columns = [c for c in range(min(grid.width, _FIRST)) if c not in roles]
    texts = {c: [text for row in rows if (text := grid.text(row, c))] for c in columns}
    return {c: "CHAR-ID" for c in columns if counts_with_letters(texts[c])}


def word_for_all(grid: Grid, column: int | None, name: int, start: int, words: Words) -> str:
    """The one word of a column of stations that says the whole machine: its rows state nothing of a position.

    It is no usual name of a position, and the rows of other words are of positions (``beide``, ``each``, ``все``); a
    lubricant is mostly that of all of them.
    """
    if column is None:
        return ""
    levels: dict[str, set[str]] = {}
    rows: dict[str, int] = {}
    for row in range(start, min(grid.height, start + _MOST_NAMES)):
        text, heading = grid.text(row, column), words.heading(grid.text(row, name))
        if text and heading is not None:
            levels.setdefault(text, set()).add("machine" if heading.parameter in SHARED else heading.entry.level)
            rows[text] = rows.get(text, 0) + 1
    whole = [text for text, said in levels.items() if said == {"machine"} and rows[text] > 1]
    others = sum("station" in said for said in levels.values())
    return whole[0] if len(whole) == 1 and others > 1 and not words.names.station(whole[0]) else ""


def are_groups(grid: Grid, column: int | None, name: int, start: int, words: Words) -> bool:
    """Whether a column names each station once, above the rows of its group, or again above each part of them.

    So it does where parts stand beside it in the same rows and the stations come in turn below each part.
    Rows of the whole machine, with those below them that name nothing, and rows without a known name do not count.
    """
    if column is None:
        return False
    rows = [row for row in range(start, grid.height) if grid.text(row, name)]
    first = next((at for at, row in enumerate(rows) if grid.text(row, column)), 0)
    if sum(not may_be_of_station(grid.text(row, name), words) for row in rows[:first]) > first // 2:
        del rows[:first]  # the whole machine stands above its positions
    texts, of_station = list[str](), True
    for row in rows:
        if text := grid.text(row, column):
            of_station = may_be_of_station(grid.text(row, name), words)
        if of_station:
            texts.append(text)
    named = [text for text in texts if words.station(text)]
    runs = [station for station, _ in groupby(named)]
    fewest = 3 if len(runs) == len(set(runs)) else 2 if _stands_beside_parts(grid, column, rows) else 0
    return fewest > 0 and len(runs) > 1 and fewest * len(runs) <= len(texts) and bool(texts and texts[0])


def _stands_beside_parts(grid: Grid, column: int, rows: Sequence[int]) -> bool:
    """Whether each text of a column stands beside a word for a part, each pair once, both above the rows of a group."""
    heads = [row for row in rows if grid.text(row, column)]
    for beside in (c for c in range(grid.width) if c != column):
        parts = {row: text for row in rows if (text := grid.text(row, beside))}
        if list(parts) == heads and all(side_of(text) for text in parts.values()):
            return len({(text, grid.text(row, column)) for row, text in parts.items()}) == len(heads)
    return False


def may_be_of_station(label: str, words: Words) -> bool:
    """Whether the name of a row is one of a station, or not known as one of the machine."""
    heading = words.heading(label) if label else None
    return bool(label) and (heading is None or heading.entry.level == "station")


def drop_groups(grid: Grid, name: int, roles: dict[int, str], start: int, words: Words) -> None:
    """A column of groups (``Gruppo``: *Anagrafica*, *Cuscinetti*) names no machines.

    Machines have parameters of positions each; a table that groups its names puts them all under one word and those of
    the machine under others, or its words are shaft, housing, bearing and loads.
    """
    for column in [c for c, role in roles.items() if role == "MACHINE"]:
        levels: dict[str, set[str]] = {}
        for row in range(start, min(grid.height, start + _MOST_NAMES)):
            heading = words.heading(label) if (label := grid.text(row, name)) else None
            if heading is not None and heading.parameter not in ("machine", "station"):
                levels.setdefault(grid.merged_text(row, column), set()).add(heading.entry.level)
        of_positions = [text for text, said in levels.items() if "station" in said]
        others = [text for text, said in levels.items() if said == {"machine"}]
        of_trade = any(text and (side_of(text) or is_use(text)) for text in levels)
        if of_trade or (len(of_positions) == 1 and others and "" not in levels):
            roles[column] = "NOTE"
