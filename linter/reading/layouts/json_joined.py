"""Lists of a JSON document that refer to each other, as a store of data has its tables, as one tree.

``{"machines": [{"id": 1}], "positions": [{"id": 11, "machineId": 1}], "seats": [{"positionId": 11}]}``: an item that
refers to a machine or position stands in it; one that refers to something else (a bearing, a part) gets what that says.
"""

import re
from collections.abc import Iterator, Sequence
from typing import Any

from attrs import define, field

from linter.reading.files.grids import cell_text
from linter.reading.layouts.json_keys import CALLED, INNER, OF_DOCUMENT, Path, bare, local, names_place
from linter.reading.layouts.json_links import LONGEST
from linter.reading.layouts.json_things import names_seat
from linter.reading.words.designations import designation_strength
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Heading, Words

_MOST, _DEEPEST, _LONGEST_STEM = 20_000, 3, 3
#: Words of a key for the number of an object, at the end of a name or alone (common practice).
_ID = re.compile(
    r"(?:^|[ _]|(?<=[^ -~]))(?:ids?|i d|refs?|reference|key|fk|pk|no|nr|number|num|code|uid|uuid|guid|idx|index|nummer"
    r"|num[eé]ro|n[uú]mero|codice|c[oó]digo|ид|номер|код|编号|编码|标识|号|番号|コード)$"
)
#: Keys of the name of an object, as far as no word for a machine or position says it.
_CALLED = frozenset((*CALLED, "désignation", "designation", "code", "tag"))
_MACHINES = frozenset(
    ("machines", "machine_list", "assemblies", "rotors", "units", "maschinen", "máquinas", "macchine", "машины",
     "изделия", "机器", "机器列表", "设备", "機械", "機械一覧", "products", "projects", "baugruppen", "ensembles")
)  # fmt: skip
_STATIONS = frozenset(("stations", "positions", "bearing_positions", "locations", "places", "supports", "nodes"))


@define(eq=False)
class _Table:
    """One list of a document: its key, its items with their places, and what they are.

    ``refers`` holds keys that refer to items of other lists, each with that list and the key of its items.
    """

    key: str
    items: list[tuple[Path, dict[str, Any]]]
    kind: str = ""
    names: list[str] = field(factory=list)
    refers: dict[str, tuple["_Table", str]] = field(factory=dict)
    own: set[str] = field(factory=set)
    into: dict[int, dict[str, list[tuple["_Table", int]]]] = field(factory=dict)
    _known: dict[str, dict[str, int]] = field(factory=dict)

    def known(self, key: str) -> dict[str, int]:
        """Texts that stand once under a key of the items (of the keys of the items where it is empty), and where."""
        if key not in self._known:
            self._known[key] = self._numbers(key)
        return self._known[key]

    def _numbers(self, key: str) -> dict[str, int]:
        texts = self.names if not key else [_text(item.get(key)) for _, item in self.items]
        known = {text: k for k, text in enumerate(texts) if text}
        return known if len(known) == len(texts) > 0 else {}


def joined(document: Any, words: Words, origin: dict[Path, Path], left: dict[Path, str], at: Path = ()) -> Any:
    """The document with lists that refer to each other as one tree.

    Parameters
    ----------
    document : object
        The document, or a node of it.
    words : Words
        The names that are understood.
    origin, left : dict
        Get the path in the file of what is moved, and why what stands at a place is not read.
    at : path
        The place of the node.

    Returns
    -------
    object
        The tree; the document itself where nothing refers.
    """
    if not isinstance(document, dict) or len(at) > _DEEPEST:
        return document
    tables = [table for key, value in document.items() if (table := _table(key, value, (*at, key))) is not None]
    if len(tables) > 1 and _refer(tables, words):
        return _tree(document, tables, at, origin, left)
    for key, value in document.items():
        if isinstance(value, dict) and local(key) in OF_DOCUMENT:
            inner = joined(value, words, origin, left, (*at, key))
            if inner is not value:
                return {**document, key: inner}
    return document


def _table(key: str, value: Any, at: Path) -> _Table | None:
    children = [*value.values()] if isinstance(value, dict) else value if isinstance(value, list) else []
    if not 0 < len(children) <= _MOST or not all(isinstance(child, dict) for child in children):
        return None
    steps = [*value] if isinstance(value, dict) else range(len(value))
    items = [((*at, step), item) for step, item in zip(steps, children, strict=True)]
    return _Table(key, items, names=[*value] if isinstance(value, dict) else [])


def _text(value: Any) -> str:
    plain = isinstance(value, (str, int)) and not isinstance(value, bool)
    text = cell_text(value).strip() if plain else ""
    return text if len(text) <= LONGEST else ""


def _stem(key: str) -> str:
    """What a key that refers to an object says of it (``machineId``, ``fk_machine``: machine)."""
    return _ID.sub("", word_key(bare(key)).removeprefix("fk ")).strip()


def _is_of(stem: str, table: _Table, words: Words) -> bool:
    """Whether the word of a key is that of a list (``position``: positions)."""
    own = _stem(table.key)
    least = len(stem) if not stem.isascii() and len(stem) < _LONGEST_STEM else max(len(stem) - 1, _LONGEST_STEM)
    alike = next(
        (k for k, (one, two) in enumerate(zip(stem, own, strict=False)) if one != two), min(map(len, (stem, own)))
    )
    if stem and alike >= least:
        return True
    heading = words.heading(stem) if stem else None
    return heading is not None and table.kind == heading.parameter and not heading.station


def _refer(tables: Sequence[_Table], words: Words) -> bool:
    """Find the keys that refer to items of other lists; whether a machine or position is referred to."""
    for table in tables:
        table.kind = _kind(table, words)
    _tell_bearings(tables)
    for table in tables:
        for key in dict.fromkeys(key for _, item in table.items for key in item):
            texts = {text for _, item in table.items if (text := _text(item.get(key)))}
            if texts and (found := _target(key, texts, table, tables, words)) is not None:
                table.refers[key] = found
                found[0].own.add(found[1])
    return any(other.kind for table in tables for other, _ in table.refers.values())


def _kind(table: _Table, words: Words) -> str:
    """Whether the items of a list are machines or positions, by its word or by their names; or empty."""
    word, heading = local(table.key), words.heading(table.key)
    if word in _MACHINES or (heading is not None and heading.parameter == "machine"):
        return "machine"
    if word in _STATIONS or heading == Heading("station"):
        return "station"
    names = [[text for key in item if local(key) in _CALLED and (text := _text(item[key]))] for _, item in table.items]
    return "station" if all(any(names_place(text, words) for text in texts) for texts in names) else ""


def _tell_bearings(tables: Sequence[_Table]) -> None:
    """A list of designations beside that of the positions is one of bearings."""
    stations = [table for table in tables if table.kind == "station"]
    for table in stations if len(stations) > 1 else ():
        texts = [_text(value) for _, item in table.items for value in item.values()]
        if sum(designation_strength(text) == "certain" for text in texts) >= len(table.items):
            table.kind = ""


def _target(
    key: str, texts: set[str], table: _Table, tables: Sequence[_Table], words: Words
) -> tuple[_Table, str] | None:
    """The list that a key refers to, and the key of its items that it refers by; None where none or several may be."""
    stem = _stem(key)
    found = []
    for other in tables:
        for own in ("", *dict.fromkeys(k for _, item in other.items for k in item)) if other is not table else ():
            known = other.known(own).keys() & texts if not own or _is_id(own, other) else set()
            if known == texts or (2 * len(known) > len(texts) and _is_of(stem, other, words)):
                found.append((other, own))
                break
    named = [(other, own) for other, own in found if _is_of(stem, other, words)]
    if named:
        return named[0]
    told = _ID.search(word_key(bare(key))) is not None and stem != "" and not _is_of(stem, table, words)
    sure = len(texts) > 1 or not next(iter(texts)).isdigit()
    return found[0] if told and sure and len(found) == 1 else None


def _is_id(key: str, table: _Table) -> bool:
    """Whether a key may hold the numbers by which the items of a list are referred to."""
    return _ID.search(word_key(bare(key))) is not None or local(key) in _CALLED


def _tree(
    document: dict[str, Any], tables: Sequence[_Table], at: Path, origin: dict[Path, Path], left: dict[Path, str]
) -> dict[str, Any]:
    """The object with each item in the one that it refers to."""
    held = {id(table): _owner(table) for table in tables}
    result = dict(document)
    for table in tables:
        owner = held[id(table)]
        if owner is None:
            continue
        key, (other, own) = owner
        result.pop(table.key, None)
        known = other.known(own)
        for k, (path, item) in enumerate(table.items):
            said = _text(item.get(key))
            if said in known:
                other.into.setdefault(known[said], {}).setdefault(_key(table), []).append((table, k))
            else:
                lost = f"{path[-1]}{INNER}{table.key}"
                result[lost] = item
                origin[(*at, lost)] = path
                left[(*at, lost)] = f"{key} refers to no object beside it"
    for table in tables:
        if held[id(table)] is None:
            used = {id(other) for t in tables for other, _ in t.refers.values() if not other.kind}
            if id(table) in used and not _states_more(table):
                result.pop(table.key, None)
                continue
            result.pop(table.key, None)
            result[_key(table)] = [_item(table, k, (*at, _key(table), k), origin) for k in range(len(table.items))]
    return result


def _states_more(table: _Table) -> bool:
    """Whether the items of a list that others refer to name parts, of which they may state more."""
    return all(any(names_seat(text) for text in map(_text, item.values())) for _, item in table.items)


def _owner(table: _Table) -> tuple[str, tuple[_Table, str]] | None:
    """The key that refers to the position, else the machine, that the items of a list are in."""
    for kind in ("station", "machine"):
        for key, (other, own) in table.refers.items():
            if other.kind == kind and table.kind not in ("machine", kind):
                return key, (other, own)
    return None


def _item(table: _Table, number: int, at: Path, origin: dict[Path, Path]) -> dict[str, Any]:
    """One item with those that refer to it, and with what it refers to; ``at`` is its new place.

    Its own number in the store, to which nothing refers, goes where it names neither a machine nor a position.
    """
    path, item = table.items[number]
    origin[at] = path
    called = _called(table, item)
    result: dict[str, Any] = {}
    if table.kind and (called or table.names):
        result[table.kind] = item[called] if called else table.names[number]
        origin[(*at, table.kind)] = (*path, called) if called else path
    for key, value in item.items():
        if key in table.refers and not table.refers[key][0].kind:
            result |= dict(_stated(table, key, value, at, origin))
        elif key not in table.refers and key != called and not _is_number(table, key):
            result[key] = value
    for key, inner in table.into.get(number, {}).items():
        if not inner[0][0].kind and all(len(rows.get(key, [0])) == 1 for rows in table.into.values()):
            result[key] = _item(*inner[0], (*at, key), origin)
        else:
            result[key] = [_item(*entry, (*at, key, k), origin) for k, entry in enumerate(inner)]
    return result


def _is_number(table: _Table, key: str) -> bool:
    """Whether a key holds the number of an item, by which others refer to it or which is its own in the store."""
    return key in table.own or (not table.kind and _stem(key) == "" and _ID.search(word_key(bare(key))) is not None)


def _key(table: _Table) -> str:
    """The key under which the items of a list stand in the tree."""
    return f"{INNER}{table.kind}s" if table.kind else table.key


def _called(table: _Table, item: dict[str, Any]) -> str:
    """The key of the name of a machine or position; of its number where nothing else names it."""
    texts = [key for key, value in item.items() if table.kind and key not in table.refers and _text(value)]
    names = [key for key in texts if local(key) in _CALLED]
    own = [key for key in texts if key in table.own]
    return next(iter([key for key in names if key not in own] + names + own), "")


def _stated(table: _Table, key: str, value: Any, at: Path, origin: dict[Path, Path]) -> Iterator[tuple[str, Any]]:
    """What an item gets of another one that it refers to: the name of a part, else all that it states."""
    other, own = table.refers[key]
    number = other.known(own).get(_text(value))
    if number is None:
        yield key, value
        return
    path, item = other.items[number]
    stem = _stem(key) or other.key
    part = next((k for k, text in item.items() if names_seat(_text(text))), "")
    if part:
        origin[(*at, stem)] = (*path, part)
        yield stem, item[part]
    else:
        origin[(*at, stem)] = path
        yield stem, {k: v for k, v in item.items() if k not in other.own}
