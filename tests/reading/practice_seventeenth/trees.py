"""Layouts of JSON: positions with their parts, lists of attributes, flat records."""

import re
from typing import Any

from practice_seventeenth.firm import Field, Firm, planned
from practice_seventeenth.lists import CODES, PARTS
from practice_seventeenth.page import Tree
from practice_seventeenth.trade import SIDED, Machine

UNIT_KEYS = {"mm": "mm", "µm": "um", "rpm": "rpm", "N": "N", "kN": "kN", "h": "h", "kg": "kg", "°C": "degC", "Nm": "Nm",
             "mm²/s": "mm2s"}  # fmt: skip

#: Names of features inside the object of their seat, where they differ from the end of a code.
INSIDE = {"DIA": "DIAMETER", "TOL_CLASS": "TOLERANCE_CLASS", "RA": "ROUGHNESS_RA", "UPPER_DEV": "UPPER_DEVIATION",
          "LOWER_DEV": "LOWER_DEVIATION"}  # fmt: skip


def _key(text: str, case: str) -> str:
    parts = text.lower().split("_")
    if case == "snake":
        return "_".join(parts)
    if case == "pascal":
        return "".join(p[:1].upper() + p[1:] for p in parts)
    return parts[0] + "".join(p[:1].upper() + p[1:] for p in parts[1:])


def _leaf(tree: Tree, into: dict[str, Any], path: list[Any], m: int, f: Field, s: int, name: str, case: str) -> None:
    """A value under its key: with the unit in the key, or as an object of value and unit."""
    firm = tree.firm
    unit = UNIT_KEYS.get(firm.unit(f), "")
    key = _key(name, case)
    if firm.units == "heading" and unit:
        key += ("_" if case == "snake" else "") + (unit if case == "snake" else unit[:1].upper() + unit[1:])
    path = [*path, key]
    if firm.units == "column" and unit:
        into[key] = {"value": tree.value(m, f, s), "unit": firm.unit_word(f)}
        path = [*path, "value"]
    else:
        into[key] = tree.value(m, f, s)
    tree.note((m, f.scope, f.key, s), path, key)


def nested(firm: Firm, machines: list[Machine], case: str = "camel", keyed: bool = False, list_key: str = "bearings",
           name_key: str = "position", wrap: str = "") -> Tree:  # fmt: skip
    """The machine, its positions in a list or under their names, parts, features."""
    tree = Tree(firm, machines)
    whole: list[Any] = []
    for m, one in enumerate(machines):
        path: list[Any] = ([wrap] if wrap else []) + ([m] if len(machines) > 1 else [])
        own: dict[str, Any] = {}
        for f in planned(firm, "m"):
            _leaf(tree, own, path, m, f, -1, CODES[f.key], case)
        positions: Any = {} if keyed else []
        for s, position in enumerate(one.positions):
            at = [*path, list_key, position if keyed else s]
            entry: dict[str, Any] = {} if keyed else {name_key: position}
            if not keyed:
                tree.note((m, "", "station", s), [*at, name_key], name_key)
            for f in planned(firm, "b"):
                _leaf(tree, entry, at, m, f, s, {"des": "designation"}.get(f.key, CODES[f.key]), case)
            for scope in "sh":
                part = _key(PARTS[scope] + "_seat", case)
                entry[part] = {}
                for f in planned(firm, scope):
                    feature = CODES[f.part or f.key].removeprefix("SEAT_")
                    feature = INSIDE.get(feature, feature)
                    _leaf(tree, entry[part], [*at, part], m, f, s, feature, case)
            if keyed:
                positions[position] = entry
            else:
                positions.append(entry)
        own[list_key] = positions
        whole.append(own)
    document = whole if len(machines) > 1 else whole[0]
    tree.document = {wrap: document} if wrap else document
    return tree


def attributes(firm: Firm, machines: list[Machine], keys: str = "name,value,unit", list_key: str = "attributes",
               items: str = "components") -> Tree:  # fmt: skip
    """The machine's attributes as a list, and a list of attributes at each position."""
    tree = Tree(firm, machines)
    name, value, unit = keys.split(",")

    def entry(f: Field, s: int, at: list[Any]) -> dict[str, Any]:
        one: dict[str, Any] = {name: firm.full(f), value: tree.value(0, f, s)}
        if firm.unit_word(f):
            one[unit] = firm.unit_word(f)
        tree.note((0, f.scope, f.key, s), [*at, value], firm.full(f))
        return one

    machine = machines[0]
    document: dict[str, Any] = {
        list_key: [entry(f, -1, [list_key, k]) for k, f in enumerate(planned(firm, "m"))], items: [],
    }  # fmt: skip
    for s, position in enumerate(machine.positions):
        at: list[Any] = [items, s]
        tree.note((0, "", "station", s), [*at, "position"], "position")
        every = [f for scope in "bsh" for f in planned(firm, scope)]
        document[items].append(
            {"position": position, list_key: [entry(f, s, [*at, list_key, k]) for k, f in enumerate(every)]}
        )
    tree.document = document
    return tree


def records(firm: Firm, machines: list[Machine], case: str = "snake", words: bool = False) -> Tree:
    """A list of flat records, one for each position; keys are codes or (``words``) the firm's own headings."""
    tree = Tree(firm, machines)
    lines: list[dict[str, Any]] = []
    for m, one in enumerate(machines):
        for s, position in enumerate(one.positions):
            at: list[Any] = [len(lines)]
            station = firm.word("station") if words else _key("bearing_position", case)
            own: dict[str, Any] = {}
            for f in planned(firm, "m"):
                _record(tree, own, at, m, f, -1, case, words)
            own[station] = position
            tree.note((m, "", "station", s), [*at, station], station)
            for scope in "bsh":
                for f in planned(firm, scope):
                    _record(tree, own, at, m, f, s, case, words)
            lines.append(own)
    tree.document = lines
    return tree


def _record(tree: Tree, own: dict[str, Any], at: list[Any], m: int, f: Field, s: int, case: str, words: bool) -> None:
    if not words:
        side = re.sub("^s$", "SHAFT_", re.sub("^h$", "HOUSING_", f.scope)) if f.key in SIDED else ""
        _leaf(tree, own, at, m, f, s, side + CODES[f.part or f.key], case)
        return
    key = tree.firm.headed(tree.firm.full(f), f)
    own[key] = tree.value(m, f, s)
    tree.note((m, f.scope, f.key, s), [*at, key], key)
