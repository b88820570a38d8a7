"""Layouts whose lines are values: blocks, parameters down the page, long lists, parameters of a model, parts lists."""

import re

from practice_eighteenth.page import NAME, Place, Sheet
from practice_eighteenth.rows import PARTS, bearings
from practice_eighteenth.trade import SIDED, Item


def blocks(sheet: Sheet, title: str = "{p}", across: bool = False, parted: bool = True, headed: bool = False) -> None:
    """A block of label and value for each position, below one another or side by side."""
    office = sheet.office
    sheet.head()
    top, c, low = sheet.row, 1, sheet.row
    for s, position in enumerate(sheet.rotors[0].positions):
        if across:
            sheet.row = top
        sheet.put(sheet.row, c, title.format(p=position, w=office.words["station"]))
        sheet.note(sheet.row, c, (0, "b", "station", s))
        sheet.row += 1
        if headed:
            for k, key in enumerate(("param", "value", *(["unit"] if office.units == "column" else []))):
                sheet.put(sheet.row, c + k, office.words[key])
            sheet.row += 1
        for scope in "bsh":
            over: list[Place] = []
            if parted:
                over = [(sheet.row, c)]
                sheet.put(sheet.row, c, office.words[PARTS[scope]])
                sheet.row += 1
            for item in office.items(scope):
                r = sheet.row
                sheet.put(r, c, office.headed(office.short(item) if parted else office.full(item), item))
                sheet.tell(r, c + 1, 0, item, s, [(r, c), *over])
                if office.units == "column":
                    sheet.put(r, c + 2, office.unit_word(item))
                sheet.row += 1
        sheet.row += 1
        low = max(low, sheet.row)
        c += 4 * across
    sheet.row = low
    sheet.foot()


def down(sheet: Sheet, part: str = "line", within: bool = False, order: str = "bsh", numbered: bool = False) -> None:
    """Parameters down, positions across; the part on a ``line``, in a ``column``, or in the ``name``."""
    office = sheet.office
    many = len(sheet.rotors) > 1
    sheet.head(block=not (many or within))
    label = 1 + numbered + (part == "column")
    unit = label + 1 if office.units == "column" else 0
    first = (unit or label) + 1
    places = [(m, s) for m, one in enumerate(sheet.rotors) for s in range(len(one.positions))]
    top = sheet.row + (many or within)
    if top > sheet.row:
        sheet.put(sheet.row, label, office.full(NAME))
        for c, (m, s) in enumerate(places, first):
            if s == 0:
                sheet.tell(sheet.row, c, m, NAME, -1, [(sheet.row, label)])
                sheet.span(sheet.row, c, sheet.row, c + len(sheet.rotors[m].positions) - 1)
    if numbered:
        sheet.put(top, 1, office.words["no"])
    if part == "column":
        sheet.put(top, label - 1, office.words["part"])
    sheet.put(top, label, office.words["param"])
    if unit:
        sheet.put(top, unit, office.words["unit"])
    for c, (m, s) in enumerate(places, first):
        sheet.station(top, c, m, s)
    sheet.row = top + 1
    body: list[int] = []
    for scope in ("m" if many or within else "") + order:
        start = sheet.row
        if part == "line":
            sheet.put(start, label, office.words[PARTS[scope]])
            sheet.row += 1
        for item in office.items(scope):
            if item == NAME:
                continue
            r = sheet.row
            body.append(r)
            if numbered:
                sheet.put(r, 1, str(len(body)))
            if part == "column":
                sheet.put(r, label - 1, office.words[PARTS[scope]])
            heads = [(r, label), *({"line": [(start, label)], "column": [(r, label - 1)]}.get(part, []))]
            sheet.put(r, label, office.headed(office.full(item) if part == "name" else office.short(item), item))
            if unit:
                sheet.put(r, unit, office.unit_word(item))
            for c, (m, s) in enumerate(places, first):
                if scope != "m":
                    sheet.tell(r, c, m, item, s, heads)
                elif s == 0:
                    sheet.tell(r, c, m, item, -1, heads)
                    sheet.span(r, c, r, c + len(sheet.rotors[m].positions) - 1)
            sheet.row += 1
    sheet.extras(top, first + len(places), body)
    sheet.foot()


def crossed(sheet: Sheet) -> None:
    """Features down; across the positions, under each its shaft and its housing; the bearings in a table above."""
    office = sheet.office
    sheet.head()
    bearings(sheet)
    top = sheet.row
    unit = 2 if office.units == "column" else 0
    first = 2 + bool(unit)
    sheet.put(top + 1, 1, office.words["param"])
    if unit:
        sheet.put(top + 1, unit, office.words["unit"])
    places = [(s, scope) for s in range(len(sheet.rotors[0].positions)) for scope in "sh"]
    for c, (s, scope) in enumerate(places, first):
        part, position = office.words[PARTS[scope]], sheet.rotors[0].positions[s]
        if scope == "s":
            sheet.put(top, c, position)
            sheet.note(top, c, (0, "b", "station", s))
            sheet.span(top, c, top, c + 1)
        sheet.put(top + 1, c, part)
    sheet.row = top + 2
    for item in office.items("s"):
        if item.key not in SIDED:
            continue
        sheet.put(sheet.row, 1, office.headed(office.short(item), item))
        if unit:
            sheet.put(sheet.row, unit, office.unit_word(item))
        for c, (s, scope) in enumerate(places, first):
            sheet.tell(sheet.row, c, 0, Item(scope, item.key, item.part), s, [(sheet.row, 1)])
        sheet.row += 1
    sheet.foot()


def long(sheet: Sheet, columns: str = "station part param value unit", joined: str = "") -> None:
    """One line for each value; its place in columns, or ``joined`` before the name."""
    office = sheet.office
    sheet.head(block=False)
    top = sheet.row
    at = {name: c for c, name in enumerate(columns.split(), 1)}
    for name, c in at.items():
        sheet.put(top, c, office.words[name])
    body = []
    for m, rotor in enumerate(sheet.rotors):
        lines = [(item, -1) for item in office.items("m") if not ("name" in at and item == NAME)]
        lines += [(i, s) for s in range(len(rotor.positions)) for scope in "bsh" for i in office.items(scope)]
        for item, s in lines:
            sheet.row += 1
            r = sheet.row
            body.append(r)
            if "no" in at:
                sheet.put(r, at["no"], f"{len(body):03}")
            if "name" in at:
                sheet.tell(r, at["name"], m, NAME, -1, [(top, at["name"])])
            if s >= 0 and "station" in at:
                sheet.station(r, at["station"], m, s, [(top, at["station"])])
            heads = [(r, at["param"])]
            if "part" in at:
                sheet.put(r, at["part"], office.words[PARTS[item.scope]])
                heads.append((r, at["part"]))
            text = office.headed(office.short(item) if "part" in at or joined else office.full(item), item)
            if joined and s >= 0:
                text = joined.format(p=rotor.positions[s], n=office.words[PARTS[item.scope]], f=text)
            sheet.put(r, at["param"], text)
            if joined and s >= 0:
                sheet.note(r, at["param"], (m, "b", "station", s))
            sheet.tell(r, at["value"], m, item, s, heads)
            if "unit" in at:
                sheet.put(r, at["unit"], office.unit_word(item))
    sheet.extras(top, len(at) + 1, body)
    sheet.foot()


#: English stems of parameters of a model.
CODES = {
    "name": "machine_type", "dwg": "drawing_number", "rev": "revision", "nmax": "speed_max", "nop": "speed_operating",
    "life": "life_required", "rel": "reliability", "mass": "rotor_mass", "span": "bearing_spacing",
    "tamb": "temp_ambient", "tsh": "temp_shaft", "tho": "temp_housing", "tmin": "assembly_temp_min",
    "tmax": "assembly_temp_max",
    "smat": "shaft_material", "hmat": "housing_material", "orient": "shaft_orientation", "bal": "balance_quality",
    "duty": "duty", "pf": "preload_force", "ring": "rotating_ring", "nc": "critical_speed_1",
    "des": "bearing_type_code",
    "type": "bearing_kind", "d": "bearing_d", "D": "bearing_D_outer", "B": "bearing_B", "rs": "bearing_rs_min",
    "alpha": "contact_angle", "C": "dyn_load_rating", "C0": "stat_load_rating", "Cu": "fatigue_load_limit",
    "nlim": "bearing_limiting_speed", "clr": "clearance_class", "seal": "bearing_closure", "lub": "lubrication",
    "nu40": "base_oil_visc_40", "temp": "temp_bearing", "Fr": "load_radial", "Fa": "load_axial", "role": "axial_role",
    "nut": "locknut_torque", "regr": "relube_interval", "di": "shaft_bore_dia", "ho": "housing_outer_dia",
    "seat": "seat_d_nom", "cls": "seat_tol_class", "up": "seat_dev_upper", "lo": "seat_dev_lower",
    "max": "seat_d_max", "min": "seat_d_min", "tol": "seat_dev", "ra": "seat_roughness_ra", "cyl": "seat_cylindricity",
    "run": "seat_total_runout", "sh": "abutment_dia", "shr": "abutment_axial_runout", "fil": "fillet_radius_max",
    "gd": "snap_ring_groove_dia", "gw": "snap_ring_groove_width",
}  # fmt: skip


def code(item: Item, station: str, form: str = "{p}_{n}") -> str:
    """The name of a parameter of a model."""
    name = CODES[item.part or item.key]
    if item.key in SIDED:
        name = PARTS[item.scope] + "_" + name
    return form.format(p=re.sub(r"\W+", "_", station).lower(), n=name) if station else name


def model(sheet: Sheet, pattern: str = "{p}_{n}", upper: bool = False, text: bool = False) -> None:
    """The parameters of a model by their codes, with what they are in words where the office comments on them."""
    office = sheet.office
    sheet.head(block=False)
    top = sheet.row
    at = {name: c for c, name in enumerate(["param", "value", "unit", *(["text"] if text else [])], 1)}
    for name, c in at.items():
        sheet.put(top, c, office.words[name])
    rotor = sheet.rotors[0]
    lines = [(item, -1) for item in office.items("m")]
    lines += [(i, s) for s in range(len(rotor.positions)) for scope in "bsh" for i in office.items(scope)]
    for item, s in lines:
        sheet.row += 1
        r = sheet.row
        station = rotor.positions[s] if s >= 0 else ""
        name = code(item, station, pattern)
        sheet.put(r, at["param"], name.upper() if upper else name)
        if text:
            sheet.put(r, at["text"], office.full(item) + (f", {station}" if station else ""))
        sheet.tell(r, at["value"], 0, item, s, [(r, at["param"]), *([(r, at["text"])] if text else [])])
        if s >= 0:
            sheet.note(r, at["text"] if text else at["param"], (0, "b", "station", s))
        sheet.put(r, at["unit"], office.unit_word(item))
    sheet.foot()


def parts(sheet: Sheet, located: bool = True) -> None:
    """Items of a rotor: bearings, and the seats of shaft and housing as items below them."""
    office = sheet.office
    sheet.head()
    top = sheet.row
    own = [item for item in office.items("s") if item.key in SIDED]
    bearing = office.items("b")
    names = ["no", "text", "qty", *(["station"] if located else [])]
    for c, key in enumerate(names, 1):
        sheet.put(top, c, office.words[key])
    lead = len(names)
    for c, item in enumerate([*bearing, *own], lead + 1):
        sheet.put(top, c, office.headed(office.short(item), item))
    body = []
    for s, position in enumerate(sheet.rotors[0].positions):
        for k, scope in enumerate("bsh"):
            sheet.row += 1
            r = sheet.row
            body.append(r)
            number = f"{s + 1}" if k == 0 else f"{s + 1}.{k}"
            sheet.put(r, 1, number)
            sheet.put(r, 3, "1")
            name = office.words[PARTS[scope]]
            sheet.put(r, 2, name if located else f"{name} {position}")
            if located:
                sheet.station(r, 4, 0, s, [(top, 4)])
            else:
                sheet.note(r, 2, (0, "b", "station", s))
            told = bearing if scope == "b" else [Item(scope, i.key, i.part) for i in own]
            for c, item in enumerate(told, lead + 1 + (len(bearing) if scope != "b" else 0)):
                sheet.tell(r, c, 0, item, s, [(top, c), *([] if scope == "b" else [(r, 2)])])
    sheet.extras(top, lead + 1 + len(bearing) + len(own), body)
    sheet.foot()
