"""JSON as PLM systems and own scripts of firms write it."""

import json
import re
import unicodedata
from collections.abc import Callable
from typing import Any

from practice.grammar import Table

from .firm import Column, Field, Firm
from .pen import Pen
from .style import Cell, Num, Owner

SUFFIX = {
    "mm": "mm", "µm": "um", "um": "um", "μm": "um", "rpm": "rpm", "1/min": "rpm", "r/min": "rpm", "min-1": "rpm",
    "U/min": "rpm", "tr/min": "tr_min", "giri/min": "giri_min", "RPM": "rpm", "°C": "degC", "℃": "degC", "N": "N",
    "kN": "kN", "kg": "kg", "g": "g", "h": "h", "小时": "h", "°": "deg", "deg": "deg", "%": "pct", "Nm": "Nm",
    "N·m": "Nm", "mm²/s": "mm2_s", "cSt": "cSt", "in": "in", "µin": "uin", "mil": "mil", "lbf": "lbf", "°F": "degF",
    "lb": "lb",
}  # fmt: skip


def plain_key(word: str, camel: bool) -> str:
    """A heading as the key of an object: snake_case or camelCase; Chinese stays as it is."""
    for old, new in (("Ø", " dia "), ("±", " pm "), ("α", " alpha "), ("ν", " nu "), ("ä", "ae"), ("ö", "oe"),
                     ("ü", "ue"), ("Ä", "Ae"), ("ß", "ss"), ("°", " ")):  # fmt: skip
        word = word.replace(old, new)
    word = "".join(c for c in unicodedata.normalize("NFKD", word) if not unicodedata.combining(c))
    tokens = re.findall(r"[^\W_]+", word)
    if len(tokens) == 1 and len(tokens[0]) <= 2:
        return tokens[0]
    tokens = [t if len(t) < 3 or t in ("L10h", "ERP") or not t.isascii() else t.lower() for t in tokens]
    if camel:
        return (tokens[0].lower() if len(tokens) > 1 else tokens[0]) + "".join(
            t[:1].upper() + t[1:] for t in tokens[1:]
        )
    return "_".join(tokens)


class Tree:
    """A document that is filled with its truth."""

    def __init__(self, firm: Firm) -> None:
        self.firm, self.pen = firm, Pen(firm)
        self.camel = "camel" in firm.plan.notes
        self.units_in_keys = "objects" not in firm.plan.notes

    def key(self, column: Column, short: bool = False) -> str:
        name = plain_key(column.short if short else column.word, self.camel)
        if column.unit and self.units_in_keys and any(isinstance(c, Num) for c in column.cells.values()):
            unit = SUFFIX[column.unit]
            if not (self.pen.obvious(column) and self.firm.plan.place == "none"):
                name += unit[:1].upper() + unit[1:] if self.camel and len(name) > 2 else "_" + unit
        return name

    def leaf(self, cell: Cell) -> Any:
        if isinstance(cell, Num):
            return int(cell.value) if cell.value == int(cell.value) else round(cell.value, 6)
        return cell

    def fill(
        self, target: dict[str, Any], pointer: str, fields: list[Field], owner: Owner, short: bool = False
    ) -> None:
        """Write the fields of an owner into an object."""
        for field in fields:
            for column in field.columns:
                cell = column.cell(*owner)
                if cell == "":
                    continue
                name = self.key(column, short and field.group in ("shaft", "housing"))
                assert name not in target, (self.firm.number, name)
                own = f"{pointer}/{name}"
                if not self.units_in_keys and isinstance(cell, Num) and column.unit:
                    target[name] = {"value": self.leaf(cell), "unit": column.unit}
                    own += "/value"
                else:
                    target[name] = self.leaf(cell)
                self.pen.truth.add(field, owner, own, [(own, name)])

    def group(self, name: str) -> str:
        return plain_key(self.firm.word("g_" + name), self.camel)


def make(firm: Firm, parts: Callable[[Firm], tuple[Field, Field, list[Field]]]) -> Table:
    """The document of a firm in the form that its plan names."""
    tree = Tree(firm)
    machine, station, fields = parts(firm)
    form = next(n for n in firm.plan.notes.split() if n in FORMS)
    general = [f for f in fields if not f.of_station()]
    own = [f for f in fields if f.of_station()]
    document = FORMS[form](tree, machine, station, general, own)
    text = json.dumps(document, ensure_ascii="escaped" in firm.plan.notes, indent=firm.rng.choice((None, 2, 4)))
    return tree.pen.table(text.encode(firm.plan.encoding))


def records(tree: Tree, machine: Field, station: Field, general: list[Field], own: list[Field]) -> Any:
    """One flat object for each position, the machine's values repeated."""
    rows: list[Any] = []
    name = plain_key(tree.firm.word("g_brg"), tree.camel)
    for m, s in tree.firm.owners:
        rows.append({})
        pointer = f"/{name}/{len(rows) - 1}"
        tree.fill(rows[-1], pointer, [machine, station, *own], (m, s))
        tree.fill(rows[-1], pointer, general, (m, s))
    return {"exportedAt": "2024-05-17T10:21:00", name: rows}


def nested(tree: Tree, machine: Field, station: Field, general: list[Field], own: list[Field]) -> Any:
    """Machines with positions, their values in groups."""
    machines: list[Any] = []
    for m in range(len(tree.firm.names)):
        body: dict[str, Any] = {}
        pointer = f"/items/{m}"
        tree.fill(body, pointer, [machine, *general], (m, -1))
        places: list[Any] = []
        listed = plain_key(tree.firm.word("stn"), tree.camel) + ("List" if tree.camel else "_list")
        for s in range(2):
            place: dict[str, Any] = {}
            tree.fill(place, f"{pointer}/{listed}/{s}", [station], (m, s))
            for group, name in (("brg", "brg"), ("shaft", "sh"), ("housing", "ho"), ("op", "op")):
                inner: dict[str, Any] = {}
                key = tree.group(name)
                chosen = [f for f in own if f.group == group]
                tree.fill(inner, f"{pointer}/{listed}/{s}/{key}", chosen, (m, s), short=True)
                if inner:
                    place[key] = inner
            places.append(place)
        body[listed] = places
        machines.append(body)
    return {"schema": "bearing-export/2", "items": machines}


def keyed(tree: Tree, machine: Field, station: Field, general: list[Field], own: list[Field]) -> Any:
    """Positions as keys of an object."""
    data: dict[str, Any] = {}
    tree.fill(data, f"/{tree.group('mach')}", [machine, *general], (0, -1))
    places: dict[str, Any] = {}
    holder = plain_key(tree.firm.word("g_brg"), tree.camel)
    for s, label in enumerate(tree.firm.labels):
        places[label] = {}
        tree.fill(places[label], f"/{holder}/{label}", own, (0, s))
    return {tree.group("mach"): data, holder: places}


def attributes(tree: Tree, machine: Field, station: Field, general: list[Field], own: list[Field]) -> Any:
    """Lists of name, value and unit, as attributes of a PLM system."""
    firm = tree.firm

    def listed(fields: list[Field], owner: Owner, pointer: str) -> list[Any]:
        found: list[Any] = []
        for field in fields:
            for column in field.columns:
                cell = column.cell(*owner)
                at = f"{pointer}/{len(found)}"
                entry = {"name": column.word, "value": tree.leaf(cell)}
                if column.unit and isinstance(cell, Num):
                    entry["unit"] = column.unit
                found.append(entry)
                tree.pen.truth.add(field, owner, at + "/value", [(at + "/name", column.word)])
        return found

    document: dict[str, Any] = {"type": "assembly", "attributes": listed([machine, *general], (0, -1), "/attributes")}
    document["children"] = []
    for s, label in enumerate(firm.labels):
        at = f"/children/{s}"
        tree.pen.truth.add(station, (0, s), at + "/name", [(at + "/name", "name")])
        document["children"].append({"type": "bearing position", "name": label,
                                     "attributes": listed(own, (0, s), at + "/attributes")})  # fmt: skip
    return document


def columns(tree: Tree, machine: Field, station: Field, general: list[Field], own: list[Field]) -> Any:
    """A table as headings and rows."""
    listed = [(f, c) for f in (machine, station, *general, *own) for c in f.columns]
    heads = [tree.pen.heading(c, place="heading") for _, c in listed]
    rows = []
    for r, owner in enumerate(tree.firm.owners):
        rows.append([tree.leaf(c.cell(*owner)) for _, c in listed])
        for k, (f, _) in enumerate(listed):
            tree.pen.truth.add(f, owner, f"/rows/{r}/{k}", [(f"/columns/{k}", heads[k])])
    return {"columns": heads, "rows": rows}


FORMS = {"records": records, "nested": nested, "keyed": keyed, "attributes": attributes, "columns": columns}
