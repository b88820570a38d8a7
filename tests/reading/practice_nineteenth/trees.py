"""JSON documents: positions as objects within objects, and lists of attributes."""

from collections.abc import Sequence
from itertools import pairwise
from typing import Any

from practice_nineteenth.office import Line, Office, lines
from practice_nineteenth.sheet import Tree
from practice_nineteenth.trade import Rotor


def _set(document: Any, path: Sequence[str | int], value: Any) -> None:
    """Put a value at a path, and the objects on the way."""
    for here, after in pairwise(path):
        if isinstance(document, list):
            if len(document) <= int(here):
                document.append([] if isinstance(after, int) else {})
            document = document[int(here)]
        else:
            document = document.setdefault(here, [] if isinstance(after, int) else {})
    document[path[-1]] = value


def nested(office: Office, rotors: Sequence[Rotor]) -> Tree:
    """Keys as the lines say; those of positions below ``at``, in a list or (``keyed``) by their names.

    With ``boxed`` a value with a unit is an object of the keys named there: value and unit.
    """
    tree = Tree(office, rotors)
    boxed = office.more.get("boxed", "").split()
    at = office.more["at"].split(" > ")
    for m, rotor in enumerate(rotors):
        for line in lines(office.lines, office.edition):
            own = line.whole or line.parameter == "-"
            for s in (-1,) if own else range(len(rotor.positions)):
                path: list[str | int] = []
                if not own:
                    path += [*at, rotor.positions[s] if "keyed" in office.more else s]
                    if "keyed" in office.more:
                        tree.note("".join(f"/{p}" for p in path[:-1]), Line((), "", "station"), m, s, {})
                path += [*line.group, line.name]
                value = tree.value(line, m, s)
                if boxed and line.units[0] and line.parameter != "-":
                    _set(tree.document, [*path, boxed[0]], value)
                    _set(tree.document, [*path, boxed[1]], line.units[0])
                    tree.leaf([*path, boxed[0]], line, m, s, line.name)
                else:
                    _set(tree.document, path, value)
                    tree.leaf(path, line, m, s)
    return tree


def attributes(office: Office, rotors: Sequence[Rotor]) -> Tree:
    """Items with a list of attributes each; ``keys`` are those of an attribute: name, value, unit.

    ``head`` is written as a key of the document, ``items`` names the list of items, ``item`` the keys of an item: its
    kind, its position, its attributes. Lines of a group are of an item of that kind; those of no group are of the
    machine, whose item is the first one.
    """
    tree = Tree(office, rotors)
    name, value, *unit = office.more["keys"].split()
    kind, where, listed = office.more["item"].split()
    found = lines(office.lines, office.edition)
    items: list[dict[str, Any]] = []
    order: list[tuple[str, int]] = [(office.more["whole"], -1)]
    groups = list(dict.fromkeys(line.group[0] for line in found if line.group))
    order += [(group, s) for s in range(len(rotors[0].positions)) for group in groups]
    for group, s in order:
        n = len(items)
        item: dict[str, Any] = {kind: group}
        if s >= 0:
            item[where] = rotors[0].positions[s]
            tree.note(f"/{office.more['items']}/{n}/{where}", Line((), "", "station"), 0, s, {})
        own: list[dict[str, Any]] = []
        for line in found:
            if line.group == ((group,) if s >= 0 else ()):
                entry = {name: line.name, value: tree.value(line, 0, s)}
                if unit:
                    entry[unit[0]] = line.units[0]
                tree.leaf([office.more["items"], n, listed, len(own), value], line, 0, s)
                own.append(entry)
        item[listed] = own
        items.append(item)
    tree.document = {
        **dict(part.split("=") for part in office.more.get("head", "").split(";") if part), office.more["items"]: items,
    }  # fmt: skip
    return tree
