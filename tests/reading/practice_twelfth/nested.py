"""JSON as PLM systems and scripts write it: attribute arrays, nested objects, items with children, records."""

import json
from typing import Any

from .sheets import Draft
from .shown import Item, Text

Tree = dict[str, Any] | list[Any]


def pointer(*steps: str | int) -> str:
    return "".join("/" + str(s).replace("~", "~0").replace("/", "~1") for s in steps)


def _set(node: dict[str, Any], path: tuple[str | int, ...], key: str, item: Item) -> None:
    """A leaf under its key."""
    assert key not in node, (key, node)
    node[key] = item.text
    item.own.append(pointer(*path, key))
    item.words.append(key)


def _attribute(
    d: Draft, item: Item, name: str, path: tuple[str | int, ...], keys: tuple[str, str, str]
) -> dict[str, Any]:
    """An entry of an attribute array: name, value, unit."""
    entry: dict[str, Text | None] = {keys[0]: name, keys[1]: item.text}
    item.own.append(pointer(*path, keys[1]))
    item.heads.append(pointer(*path, keys[0]))
    item.words.append(name)
    if d.office.place == "column":
        entry[keys[2]] = item.unit or None
        if item.unit:
            item.heads.append(pointer(*path, keys[2]))
    return entry


def _header(d: Draft, root: dict[str, Any], keys: tuple[str, str, str], path: tuple[str | int, ...] = ()) -> None:
    for key, name in zip(keys, ("machine", "drawing_number", "drawing_revision"), strict=True):
        _set(root, path, key, d.items(0, -1, name)[0])
        if key in ("title", "name", "itemId"):
            d.facts[-1].verdict = "either"


def attributes(d: Draft, form: int) -> Tree:
    """One array of attributes; ``form`` 0: positions in the names, 1: in a key, 2: an array for each position."""
    keys = [("name", "value", "unit"), ("attributeName", "attributeValue", "uom"), ("label", "val", "unit")][form]
    root: dict[str, Any] = {}
    title = [
        ("machine", "drawingNumber", "revision"),
        ("title", "itemId", "revisionId"),
        ("machine", "drawing_no", "rev"),
    ][form]
    _header(d, root, title)
    where = ["attributes", "characteristics", "parameters"][form]
    entries: list[Any] = []
    root[where] = entries
    column = d.office.place == "column"
    for p in d.whole:
        for item in d.items(0, -1, p):
            entries.append(_attribute(d, item, d.head(item, units=not column), (where, len(entries)), keys))
    if form == 2:
        root["bearings"] = []
    stated = d.with_noise(d.parts, 2)
    for s, station in enumerate(d.stations):
        inner: list[Any] = []
        for p in stated:
            for item in d.items(0, s, p):
                at: tuple[str | int, ...] = ("bearings", s, where, len(inner)) if form == 2 else (where, len(entries))
                entry = _attribute(d, item, d.head(item, station if form == 0 else "", units=not column), at, keys)
                if form == 1:
                    entry = {"position": station, **entry}
                    item.heads.append(pointer(*at, "position"))
                (inner if form == 2 else entries).append(entry)
        if form == 2:
            root["bearings"].append({"position": station, where: inner})
    return root


def _seat(d: Draft, node: dict[str, Any], path: tuple[str | int, ...], items: list[Item]) -> None:
    """A seat: one leaf, or an object of nominal, class, deviations."""
    if len(items) == 1:
        _set(node, path, d.head(items[0]), items[0])
        return
    seat: dict[str, Any] = {}
    key = d.office.with_unit(d.office.name(items[0].parameter), items[0].unit)
    node[key] = seat
    for item in items:
        name = d.office.cased(d.words(f"aspect.{item.aspect}"))
        if item.unit != items[0].unit and item.unit:
            name = d.office.with_unit(name, item.unit)
        _set(seat, (*path, key), name, item)
        item.words.append(key)


def objects(d: Draft, form: int) -> Tree:
    """Nested objects: machine, bearings, each with shaft and housing; ``form`` 1: positions are keys, 2: flat."""
    root: dict[str, Any] = {}
    _header(
        d,
        root,
        (("machine", "drawing", "revision"), ("name", "drawingNumber", "rev"), ("machine", "drawing_no", "revision"))[
            form
        ],
    )
    for p in d.whole:
        for item in d.items(0, -1, p):
            _set(root, (), d.head(item), item)
    places: Any = {} if form == 1 else []
    where = ("bearings", "positions", "stations")[form]
    root[where] = places
    inner = d.with_noise(d.parts, 2)
    for s, station in enumerate(d.stations):
        node: dict[str, Any] = {}
        step: str | int = station if form == 1 else s
        path: tuple[str | int, ...] = (where, step)
        if form != 1:
            (item,) = d.items(0, s, "station")
            _set(node, path, ("position", "", "id")[form], item)
        parts: dict[str, dict[str, Any]] = {}
        for p in inner:
            part = p.split("_")[0]
            if form != 2 and part in ("shaft", "housing"):
                name = d.office.cased(d.words(f"part.{part}"))
                if part not in parts:
                    parts[part] = node[name] = {}
                _seat(d, parts[part], (*path, name), d.items(0, s, p))
            else:
                _seat(d, node, path, d.items(0, s, p))
        if form == 1:
            places[station] = node
        else:
            places.append(node)
    return root


def item_tree(d: Draft) -> Tree:
    """A PLM item with its parts as children, each with its attributes as an object."""
    root: dict[str, Any] = {"type": "Assembly"}
    _header(d, root, ("name", "itemId", "revision"))
    props: dict[str, Any] = {}
    root["properties"] = props
    for p in d.whole:
        for item in d.items(0, -1, p):
            _set(props, ("properties",), d.head(item), item)
    children: list[Any] = []
    root["children"] = children
    inner = d.with_noise(d.parts, 1)
    for s, station in enumerate(d.stations):
        node: dict[str, Any] = {"type": "BearingPosition", "name": station, "properties": {}}
        for p in inner:
            _seat(d, node["properties"], ("children", s, "properties"), d.items(0, s, p))
        children.append(node)
    return root


def records(d: Draft, melted: bool) -> Tree:
    """A list of records: one for each position, or one for each value."""
    rows: list[Any] = []
    column = d.office.place == "column"
    (machine,) = d.items(0, -1, "machine")
    if melted:
        keys = [d.words(k) for k in ("machine", "col.position", "col.name", "col.value", "col.unit")]
        stated = d.with_noise(d.parts, 1)
        for s in (-1, *range(len(d.stations))):
            for p in d.whole if s < 0 else stated:
                for item in d.items(0, s, p):
                    path = (len(rows), keys[3])
                    row = {
                        keys[0]: machine.text,
                        keys[1]: d.stations[s] if s >= 0 else None,
                        keys[2]: d.head(item, units=not column),
                        keys[3]: item.text,
                    }
                    machine.own.append(pointer(len(rows), keys[0]))
                    item.own.append(pointer(*path))
                    item.heads.append(pointer(len(rows), keys[2]))
                    item.words.append(str(row[keys[2]]))
                    if column:
                        row[keys[4]] = item.unit or None
                        if item.unit:
                            item.heads.append(pointer(len(rows), keys[4]))
                    rows.append(row)
        return rows
    whole = [machine, *(i for p in d.whole for i in d.items(0, -1, p))]
    inner = d.with_noise(d.parts, 2)
    for s in range(len(d.stations)):
        row = {}
        (station,) = d.items(0, s, "station")
        for item in [whole[0], station, *whole[1:], *(i for p in inner for i in d.items(0, s, p))]:
            _set(row, (s,), d.head(item), item)
        rows.append(row)
    return rows


def written(tree: Tree, indent: int | None) -> str:
    return json.dumps(tree, ensure_ascii=False, indent=indent)
