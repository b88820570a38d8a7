"""Layouts of JSON: a machine with its positions and parts, lists of attributes, flat records."""

from typing import Any

from practice_eighteenth.lists import CODES
from practice_eighteenth.page import NAME, Tree
from practice_eighteenth.rows import PARTS
from practice_eighteenth.trade import Item

UNITS = {"mm": "mm", "µm": "um", "rpm": "rpm", "N": "N", "kN": "kN", "h": "h", "kg": "kg", "°C": "degC", "N·m": "Nm",
         "mm²/s": "mm2_s",
         "%": "pct", "°": "deg", "in": "in", "µin": "uin", "lbf": "lbf", "lb": "lb", "°F": "degF"}  # fmt: skip
#: Names inside the object of a seat.
INSIDE = {"seat": "nominal_diameter", "cls": "tolerance_class", "up": "upper_deviation", "lo": "lower_deviation",
          "max": "max_diameter", "min": "min_diameter", "ra": "roughness_ra", "cyl": "cylindricity",
          "run": "total_runout", "d": "bore", "D": "outside_diameter", "B": "width", "rs": "chamfer_min",
          "des": "designation", "type": "type"}  # fmt: skip


def cased(text: str, case: str) -> str:
    """A name in the case of the system: ``snake`` or ``camel``."""
    words = text.lower().split("_")
    if case == "snake":
        return "_".join(words)
    return words[0] + "".join(w[:1].upper() + w[1:] for w in words[1:])


def _put(tree: Tree, into: dict[str, Any], path: list[Any], m: int, item: Item, s: int, name: str, case: str) -> None:
    """A value under its key: the unit in the key, as an object of value and unit, or in the text."""
    office = tree.office
    unit = UNITS.get(office.unit(item), "")
    key = cased(f"{name}_{unit}" if office.units == "head" and unit else name, case)
    path = [*path, key]
    into[key] = tree.value(m, item, s)
    if office.units == "column" and unit:
        into[key] = {"value": into[key], "unit": office.unit_word(item)}
        path = [*path, "value"]
    tree.leaf((m, item.scope, item.key, s), path, key)


def nested(tree: Tree, case: str = "camel", top: str = "", holds: str = "bearing_positions", label: str = "position",
           keyed: bool = False, apart: bool = False) -> None:  # fmt: skip
    """The machine, its positions in a list or under their names, in each the bearing and the two seats."""
    office = tree.office
    whole: list[Any] = []
    for m, rotor in enumerate(tree.rotors):
        path: list[Any] = ([cased(top, case)] if top else []) + ([m] if len(tree.rotors) > 1 else [])
        own: dict[str, Any] = {}
        values, at = own, path
        for item in office.items("m"):
            if apart and item.key not in ("name", "dwg", "rev") and values is own:
                values, at = own.setdefault(cased("operating_data", case), {}), [*path, cased("operating_data", case)]
            _put(tree, values, at, m, item, -1, CODES[item.key], case)
        several: Any = {} if keyed else []
        for s, position in enumerate(rotor.positions):
            here = [*path, cased(holds, case), position if keyed else s]
            entry: dict[str, Any] = {}
            if not keyed:
                entry[cased(label, case)] = position
                tree.leaf((m, "b", "station", s), [*here, cased(label, case)], label)
            for scope in "bsh":
                part = cased({"b": "bearing", "s": "shaft_seat", "h": "housing_seat"}[scope], case)
                entry[part] = {}
                for item in office.items(scope):
                    name = INSIDE.get(item.part or item.key, CODES[item.part or item.key])
                    _put(tree, entry[part], [*here, part], m, item, s, name, case)
            if keyed:
                several[position] = entry
            else:
                several.append(entry)
        own[cased(holds, case)] = several
        whole.append(own)
    document = whole if len(tree.rotors) > 1 else whole[0]
    tree.document = {cased(top, case): document} if top else document


def attributes(tree: Tree, keys: str = "name,value,unit", holds: str = "attributes", children: str = "items",
               parted: bool = False) -> None:  # fmt: skip
    """A list of attributes of the machine and of each position, or (``parted``) of each part of a position."""
    office = tree.office
    name, value, unit = keys.split(",")

    def entries(items: list[Item], s: int, path: list[Any], short: bool) -> list[dict[str, Any]]:
        found = []
        for k, item in enumerate(items):
            word = office.short(item) if short else office.full(item)
            one: dict[str, Any] = {name: word, value: tree.value(0, item, s)}
            if office.unit_word(item):
                one[unit] = office.unit_word(item)
            tree.leaf((0, item.scope, item.key, s), [*path, k, value], word)
            found.append(one)
        return found

    rotor = tree.rotors[0]
    document: dict[str, Any] = {holds: entries(office.items("m"), -1, [holds], False), children: []}
    for s, position in enumerate(rotor.positions):
        path: list[Any] = [children, s]
        key = office.words["station"]
        tree.leaf((0, "b", "station", s), [*path, key], key)
        child: dict[str, Any] = {key: position}
        if parted:
            child[children] = [
                {office.words["part"]: office.words[PARTS[scope]],
                 holds: entries(office.items(scope), s, [*path, children, k, holds], True)}
                for k, scope in enumerate("bsh")
            ]  # fmt: skip
        else:
            every = [item for scope in "bsh" for item in office.items(scope)]
            child[holds] = entries(every, s, [*path, holds], False)
        document[children].append(child)
    tree.document = document


def records(tree: Tree) -> None:
    """A list of flat records, one for each position; keys are the office's own headings."""
    office = tree.office
    lines: list[dict[str, Any]] = []
    for m, rotor in enumerate(tree.rotors):
        for s, position in enumerate(rotor.positions):
            path: list[Any] = [len(lines)]
            own: dict[str, Any] = {}
            every = [(NAME, -1), *((i, -1) for i in office.items("m") if i != NAME)]
            every += [(item, s) for scope in "bsh" for item in office.items(scope)]
            for k, (item, place) in enumerate(every):
                if k == 1:
                    key = office.words["station"]
                    own[key] = position
                    tree.leaf((m, "b", "station", s), [*path, key], key)
                key = office.headed(office.full(item), item)
                own[key] = tree.value(m, item, place)
                tree.leaf((m, item.scope, item.key, place), [*path, key], key)
            lines.append(own)
    tree.document = lines
