"""JSON: nested seats, attributes, objects with parents, flat records, keys with the position."""

import re
from typing import Any

from practice_fifteenth.meaning import Machine
from practice_fifteenth.pieces import Plan, planned, refs, show
from practice_fifteenth.sheet import Tree
from practice_fifteenth.style import Field, Style

#: Keys by part and feature: English, German.
KEYS = {
    "en": {
        "seat": "seat diameter", "ra": "roughness ra", "cyl": "cylindricity", "run": "total runout",
        "sh": "shoulder diameter", "shr": "shoulder axial runout", "fil": "fillet radius", "des": "designation",
        "d": "bore diameter", "D": "outside diameter", "B": "width", "Fr": "radial load", "Fa": "axial load",
        "temp": "operating temperature", "lub": "lubrication", "role": "axial function", "C": "dynamic load rating",
        "C0": "static load rating", "name": "machine", "dwg": "drawing number", "rev": "revision",
        "nmax": "max speed", "nop": "operating speed", "life": "required life", "span": "bearing span",
        "mass": "rotor mass", "smat": "shaft material", "hmat": "housing material", "bal": "balance grade",
        "cls": "tolerance class", "up": "upper deviation", "lo": "lower deviation", "max": "max", "min": "min",
        "shaft": "shaft", "housing": "housing", "bearing": "bearing", "positions": "positions", "position": "position",
        "value": "value", "unit": "unit", "tamb": "ambient temperature",
    },
    "de": {
        "seat": "sitz durchmesser", "ra": "rauheit ra", "cyl": "zylindrizität", "run": "gesamtrundlauf",
        "sh": "schulter durchmesser", "shr": "planlauf schulter", "fil": "hohlkehlradius", "des": "bezeichnung",
        "d": "bohrung", "D": "außendurchmesser", "B": "breite", "Fr": "radiallast", "Fa": "axiallast",
        "temp": "lagertemperatur", "lub": "schmierung", "role": "axialfunktion", "C": "dynamische tragzahl",
        "C0": "statische tragzahl", "name": "maschine", "dwg": "zeichnungsnummer", "rev": "revision",
        "nmax": "höchstdrehzahl", "nop": "betriebsdrehzahl", "life": "geforderte lebensdauer",
        "span": "lagerabstand", "mass": "läufermasse", "smat": "werkstoff welle", "hmat": "werkstoff gehäuse",
        "bal": "wuchtgüte", "cls": "toleranzfeld", "up": "oberes abmaß", "lo": "unteres abmaß", "max": "größtmaß",
        "min": "kleinstmaß", "shaft": "welle", "housing": "gehäuse", "bearing": "lager", "positions": "lagerstellen",
        "position": "lagerstelle", "value": "wert", "unit": "einheit", "tamb": "umgebungstemperatur",
    },
}  # fmt: skip
UNIT_KEYS = {"mm": "mm", "um": "um", "in": "in", "uin": "uin", "rpm": "rpm", "N": "N", "kN": "kN", "C": "C",
             "kg": "kg", "h": "h", "lbf": "lbf", "lb": "lb", "F": "degF", "krpm": "krpm"}  # fmt: skip


class _Writer:
    """Keys and values as the office writes them."""

    def __init__(self, style: Style, case: str) -> None:
        self.style, self.case = style, case
        self.words = KEYS["de" if style.language == "de" else "en"]

    def key(self, *names: str) -> str:
        parts = " ".join(n[1:] if n[0] == "=" else self.words.get(n, n) for n in names).split()
        if self.case == "snake":
            return "_".join(parts)
        if self.case == "plain":
            return " ".join(parts).capitalize()
        text = "".join(p[:1].upper() + p[1:] for p in parts)
        return text[:1].lower() + text[1:] if self.case == "camel" else text

    def value(self, machine: Machine, f: Field, s: int) -> Any:
        text = show(self.style, machine, f, s)
        if f.key == "des":
            return text
        number = text.lstrip("+")
        if re.fullmatch(r"-?\d+", number):
            return int(number)
        return float(number) if re.fullmatch(r"-?\d+\.\d+", number) else text

    def with_unit(self, f: Field, *names: str) -> str:
        unit = UNIT_KEYS.get(self.style.unit(f), "")
        text = self.key(*names)
        return f"{text}_{unit}" if unit and self.style.units == "heading" else text

    def leaf(self, tree: Tree, into: dict[str, Any], path: list[Any], m: int, machine: Machine, f: Field, s: int,
             *names: str) -> None:  # fmt: skip
        """A value under its key: alone, or with its unit."""
        key = self.with_unit(f, *names)
        value = self.value(machine, f, s)
        unit = self.style.unit_word(f)
        if self.style.units == "column" and unit:
            into[key] = {self.key("value"): value, self.key("unit"): unit}
            tree.note(refs(f, m, s), [*path, key, self.key("value")], key)
        else:
            into[key] = value
            tree.note(refs(f, m, s), [*path, key], key)


def _part_names(f: Field) -> list[str]:
    return [f.key, f.part] if f.part in ("max", "min", "up", "lo") else [f.part or f.key]


def nested(style: Style, machines: list[Machine], plan: Plan, case: str = "camel", keyed: bool = False) -> Tree:
    """Machine, positions in a list (or under their names), parts, features."""
    tree, w = Tree(), _Writer(style, case)
    whole = []
    many = len(machines) > 1
    for m, machine in enumerate(machines):
        own: dict[str, Any] = {}
        path: list[Any] = [m] if many else []
        for f in [*([Field("machine", "name")]), *planned(style, plan, "machine")]:
            w.leaf(tree, own, path, m, machine, f, -1, f.key)
        positions: Any = {} if keyed else []
        for s, position in enumerate(machine.positions):
            at: list[Any] = [*path, w.key("positions"), position if keyed else s]
            one: dict[str, Any] = {}
            if not keyed:
                one[w.key("position")] = position
                tree.note([(m, "", "station", s)], [*at, w.key("position")], w.key("position"))
            for scope in ("bearing", "shaft", "housing"):
                inside: dict[str, Any] = {}
                for f in planned(style, plan, scope):
                    w.leaf(tree, inside, [*at, w.key(scope)], m, machine, f, s, *_part_names(f))
                one[w.key(scope)] = inside
            if keyed:
                positions[position] = one
            else:
                positions.append(one)
        own[w.key("positions")] = positions
        whole.append(own)
    tree.document = whole if many else whole[0]
    return tree


def attributes(style: Style, machines: list[Machine], plan: Plan, keys: str = "name,value,unit",
               list_key: str = "attributes", where: str = "item") -> Tree:  # fmt: skip
    """Lists of name, value and unit: of each position (``item``), or one list with the position beside (``beside``)."""
    tree, machine = Tree(), machines[0]
    name, value, unit = keys.split(",")
    w = _Writer(style, "camel")

    def entry(f: Field, s: int, at: list[Any]) -> dict[str, Any]:
        one: dict[str, Any] = {name: style.full(f), value: w.value(machine, f, s)}
        if style.unit_word(f):
            one[unit] = style.unit_word(f)
        tree.note(refs(f, 0, s), [*at, value], style.full(f))
        return one

    every = [f for scope in ("bearing", "shaft", "housing") for f in planned(style, plan, scope)]
    whole = planned(style, plan, "machine")
    station = w.key("position")
    if where == "item":
        items = []
        own: dict[str, Any] = {w.key("name"): machine.name}
        tree.note([(0, "machine", "name", -1)], [w.key("name")], w.key("name"))
        own |= {list_key: [entry(f, -1, [list_key, k]) for k, f in enumerate(whole)]}
        for s, position in enumerate(machine.positions):
            at: list[Any] = [w.key("positions"), s]
            tree.note([(0, "", "station", s)], [*at, station], station)
            items.append({station: position, list_key: [entry(f, s, [*at, list_key, k]) for k, f in enumerate(every)]})
        tree.document = own | {w.key("positions"): items}
        return tree
    lines: list[dict[str, Any]] = []
    for f in whole:
        lines.append(entry(f, -1, [list_key, len(lines)]))
    for s, position in enumerate(machine.positions):
        for f in every:
            one = {station: position} | entry(f, s, [list_key, len(lines)])
            tree.note([(0, "", "station", s)], [list_key, len(lines), station], station)
            lines.append(one)
    tree.document = {w.key("name"): machine.name, list_key: lines}
    tree.note([(0, "machine", "name", -1)], [w.key("name")], w.key("name"))
    return tree


def parents(style: Style, machines: list[Machine], plan: Plan, keys: str = "id,parent,type,name,attributes") -> Tree:
    """Objects with the number of their parent and their attributes, as a product structure is exported."""
    tree, machine = Tree(), machines[0]
    number, parent, kind, name, attrs = keys.split(",")
    w = _Writer(style, "plain")
    objects: list[dict[str, Any]] = []

    def add(over: int | None, what: str, called: str, found: list[Field], s: int) -> int:
        at = len(objects)
        own: dict[str, Any] = {}
        for f in found:
            key = style.heading(style.short(f), f)
            own[key] = w.value(machine, f, s)
            tree.note(refs(f, 0, s), ["objects", at, attrs, key], key)
        objects.append({number: at + 1, parent: over, kind: what, name: called, attrs: own})
        return at + 1

    root = add(None, "Assembly", machine.name, planned(style, plan, "machine"), -1)
    tree.note([(0, "machine", "name", -1)], ["objects", 0, name], name)
    for s, position in enumerate(machine.positions):
        tree.note([(0, "", "station", s)], ["objects", len(objects), name], name)
        own = add(root, "Bearing position", position, [], s)
        for scope, what in (("bearing", "Bearing"), ("shaft", "Shaft seat"), ("housing", "Housing seat")):
            found = planned(style, plan, scope)
            add(own, what, what, found, s)
    tree.document = {"objects": objects}
    return tree


def records(style: Style, machines: list[Machine], plan: Plan, case: str = "snake") -> Tree:
    """A list of flat records, one for each position."""
    tree, w = Tree(), _Writer(style, case)
    lines: list[dict[str, Any]] = []
    for m, machine in enumerate(machines):
        for s, position in enumerate(machine.positions):
            at: list[Any] = [len(lines)]
            one: dict[str, Any] = {w.key("name"): machine.name, w.key("position"): position}
            tree.note([(m, "machine", "name", -1)], [*at, w.key("name")], w.key("name"))
            tree.note([(m, "", "station", s)], [*at, w.key("position")], w.key("position"))
            for f in planned(style, plan, "machine"):
                w.leaf(tree, one, at, m, machine, f, -1, f.key)
            for scope in ("bearing", "shaft", "housing"):
                for f in planned(style, plan, scope):
                    w.leaf(
                        tree,
                        one,
                        at,
                        m,
                        machine,
                        f,
                        s,
                        *([scope] if f.scope != "bearing" or f.key in ("des", "d", "D", "B") else []),
                        f.key,
                        *([f.part] if f.part else []),
                    )
            lines.append(one)
    tree.document = lines
    return tree


def keyed(style: Style, machines: list[Machine], plan: Plan, case: str = "snake", before: bool = False) -> Tree:
    """One flat object; each key ends (or begins) with its position."""
    tree, w, machine = Tree(), _Writer(style, case), machines[0]
    own: dict[str, Any] = {}
    for f in [Field("machine", "name"), *planned(style, plan, "machine")]:
        w.leaf(tree, own, [], 0, machine, f, -1, f.key)
    for s, position in enumerate(machine.positions):
        for scope in ("bearing", "shaft", "housing"):
            for f in planned(style, plan, scope):
                names = [scope] if scope != "bearing" or f.key in ("des", "d", "D", "B") else []
                names += [f.key, *([f.part] if f.part else [])]
                w.leaf(
                    tree, own, [], 0, machine, f, s, *(["=" + position, *names] if before else [*names, "=" + position])
                )
    tree.document = own
    return tree
