"""Layouts in which a line is a value: blocks, parameters down the page, long lists, CAD parameters, parts lists."""

import re

from practice_seventeenth.firm import Field, Firm, planned
from practice_seventeenth.page import Sheet
from practice_seventeenth.trade import SIDED, Machine

PARTS = {"b": "bearing", "s": "shaft", "h": "housing"}


def _unit(sheet: Sheet, r: int, c: int, f: Field) -> None:
    """The unit's cell of a line."""
    if sheet.firm.units == "column":
        sheet.put(r, c, sheet.firm.unit_word(f))


def blocks(
    firm: Firm, machines: list[Machine], title: str = "{p}", extra: tuple[str, ...] = (), across: bool = False,
    parted: bool = True, headed: bool = False,
) -> Sheet:  # fmt: skip
    """A block of label and value for each position, below one another or ``across``; parts as lines between."""
    sheet = Sheet(firm, machines)
    sheet.head(extra)
    sheet.whole()
    sheet.gap()
    top, c = sheet.row, 1
    for s, position in enumerate(machines[0].positions):
        if across:
            sheet.row = top
        sheet.put(sheet.row, c, title.format(p=position, w=firm.word("station")))
        sheet.note(sheet.row, c, (0, "", "station", s))
        sheet.row += 1
        if headed:
            sheet.put(sheet.row, c, firm.word("param"))
            sheet.put(sheet.row, c + 1, firm.word("value"))
            if firm.units == "column":
                sheet.put(sheet.row, c + 2, firm.word("unit"))
            sheet.row += 1
        for scope in "bsh":
            over = []
            if parted:
                over = [(sheet.row, c)]
                sheet.put(sheet.row, c, firm.word(PARTS[scope]))
                sheet.row += 1
            for f in planned(firm, scope):
                r = sheet.row
                sheet.put(r, c, firm.headed(firm.short(f) if parted else firm.full(f), f))
                sheet.tell(r, c + 1, 0, f, s, [(r, c), *over])
                _unit(sheet, r, c + 2, f)
                sheet.row += 1
        sheet.row += 1
        if across:
            c += 4
    sheet.foot(extra)
    return sheet


def transposed(
    firm: Firm, machines: list[Machine], extra: tuple[str, ...] = (), groups: str = "lines", whole: str = "above",
    numbered: bool = False, order: str = "bsh", remark: bool = False,
) -> Sheet:  # fmt: skip
    """Parameters down, positions across. ``groups``: the part on a line, in a column (``column``), in the name."""
    sheet = Sheet(firm, machines)
    sheet.head(extra)
    if whole == "above":
        sheet.whole()
    sheet.gap()
    many = len(machines) > 1
    column = groups == "column"
    label = 1 + numbered + column
    unit = label + 1 if firm.units == "column" else 0
    first = (unit or label) + 1
    places = [(m, s) for m, one in enumerate(machines) for s in range(len(one.positions))]
    if many:
        sheet.put(sheet.row, label, firm.word("name"))
        for c, (m, s) in enumerate(places, first):
            if s == 0:
                sheet.machine(sheet.row, c, m, [(sheet.row, label)])
                sheet.merge(sheet.row, c, sheet.row, c + len(machines[m].positions) - 1)
        sheet.row += 1
    r = sheet.row
    if numbered:
        sheet.put(r, 1, firm.word("no"))
    if column:
        sheet.put(r, label - 1, firm.word("part"))
    sheet.put(r, label, firm.word("param"))
    if unit:
        sheet.put(r, unit, firm.word("unit"))
    for c, (m, s) in enumerate(places, first):
        sheet.position(r, c, m, s)
    if remark:
        sheet.put(r, first + len(places), firm.word("remark"))
    sheet.row += 1
    count = 0
    for scope in order + ("m" if whole == "within" else ""):
        start = sheet.row
        fields = planned(firm, scope)
        if groups == "lines":
            sheet.put(start, label, firm.word(PARTS.get(scope, "machine")))
            sheet.row += 1
        for f in fields:
            if f.key == "name":
                continue
            r = sheet.row
            count += 1
            if numbered:
                sheet.put(r, 1, str(count))
            heads = [(r, label)] if groups == "name" else [(r, label), (start, label - column)]
            if column and r == start:
                sheet.put(r, label - 1, firm.word(PARTS.get(scope, "machine")))
                sheet.merge(r, label - 1, r + len(fields) - 1, label - 1)
            sheet.put(r, label, firm.headed(firm.full(f) if groups == "name" else firm.short(f), f))
            if unit:
                sheet.put(r, unit, firm.unit_word(f))
            for c, (m, s) in enumerate(places, first):
                if scope != "m":
                    sheet.tell(r, c, m, f, s, heads)
                elif s == 0:
                    sheet.tell(r, c, m, f, -1, heads)
                    sheet.merge(r, c, r, c + len(machines[m].positions) - 1)
            if remark and f.key in ("cyl", "ra"):
                sheet.put(r, first + len(places), "ISO 1101" if f.key == "cyl" else "ISO 21920")
            sheet.row += 1
    sheet.foot(extra)
    return sheet


def long_rows(
    firm: Firm, machines: list[Machine], extra: tuple[str, ...] = (), columns: str = "station part param value unit",
    machine: bool = False,
) -> Sheet:  # fmt: skip
    """One line for each value, its place in columns; without ``part`` in them the name says the part itself."""
    sheet = Sheet(firm, machines)
    sheet.head(extra)
    sheet.gap()
    top = sheet.row
    names = (["name"] if machine else []) + columns.split()
    at = {name: c for c, name in enumerate(names, 1)}
    for name, c in at.items():
        sheet.put(top, c, firm.word(name))
    sheet.row += 1
    for m, one in enumerate(machines):
        lines = [(f, -1) for f in planned(firm, "m") if not (machine and f.key == "name")]
        lines += [(f, s) for s in range(len(one.positions)) for scope in "bsh" for f in planned(firm, scope)]
        for f, s in lines:
            r = sheet.row
            if machine:
                sheet.machine(r, 1, m, [(top, 1)])
            if s >= 0:
                sheet.position(r, at["station"], m, s, [(top, at["station"])])
            heads = [(r, at["param"])]
            if "part" in at:
                sheet.put(r, at["part"], firm.word(PARTS.get(f.scope, "machine")))
                heads.append((r, at["part"]))
            sheet.put(r, at["param"], firm.headed(firm.short(f) if "part" in at else firm.full(f), f))
            sheet.tell(r, at["value"], m, f, s, heads)
            if "unit" in at:
                sheet.put(r, at["unit"], firm.unit_word(f))
            sheet.row += 1
    sheet.foot(extra)
    return sheet


#: English stems of parameter codes.
CODES = {
    "name": "MODEL", "dwg": "DRAWING_NO", "rev": "REVISION", "nmax": "SPEED_MAX", "nop": "SPEED_OPERATING",
    "life": "REQUIRED_LIFE", "mass": "ROTOR_MASS", "span": "BEARING_SPAN", "tamb": "AMBIENT_TEMP", "tsh": "SHAFT_TEMP",
    "tho": "HOUSING_TEMP", "pf": "PRELOAD_FORCE", "smat": "SHAFT_MATERIAL", "hmat": "HOUSING_MATERIAL",
    "orient": "SHAFT_ORIENTATION", "bal": "BALANCE_GRADE", "des": "BEARING", "d": "BEARING_BORE", "D": "BEARING_OD",
    "B": "BEARING_WIDTH", "Fr": "RADIAL_LOAD", "Fa": "AXIAL_LOAD", "temp": "BEARING_TEMP", "nut": "LOCKNUT_TORQUE",
    "seat": "SEAT_DIA", "cls": "SEAT_TOL_CLASS", "up": "SEAT_UPPER_DEV", "lo": "SEAT_LOWER_DEV", "max": "SEAT_DIA_MAX",
    "min": "SEAT_DIA_MIN", "ra": "SEAT_RA", "cyl": "SEAT_CYLINDRICITY", "run": "SEAT_TOTAL_RUNOUT",
    "sh": "SHOULDER_DIA", "shr": "SHOULDER_RUNOUT", "fil": "FILLET_RADIUS", "tol": "SEAT_TOLERANCE",
}  # fmt: skip


def code(f: Field, position: str, form: str) -> str:
    """The name of a CAD parameter: ``{p}`` the position, ``{n}`` part and feature."""
    name = CODES[f.part or f.key]
    if f.key in SIDED:
        name = ("SHAFT_" if f.scope == "s" else "HOUSING_") + name
    if not position:
        return name
    return form.format(p=re.sub(r"\W+", "_", position).upper(), n=name)


def cad(firm: Firm, machines: list[Machine], coded: str = "{n}_{p}", extra: tuple[str, ...] = (),
        columns: str = "param value unit") -> Sheet:  # fmt: skip
    """Parameters of a model by their codes, with what they are in words where a column ``text`` is asked for."""
    sheet = Sheet(firm, machines)
    sheet.head(extra)
    sheet.gap()
    top = sheet.row
    at = {name: c for c, name in enumerate(columns.split(), 1)}
    for name, c in at.items():
        sheet.put(top, c, firm.word(name))
    sheet.row += 1
    one = machines[0]
    lines = [(f, -1) for f in planned(firm, "m")]
    lines += [(f, s) for s in range(len(one.positions)) for scope in "bsh" for f in planned(firm, scope)]
    for f, s in lines:
        r = sheet.row
        position = one.positions[s] if s >= 0 else ""
        sheet.put(r, at["param"], code(f, position, coded))
        heads = [(r, at["param"])]
        if "text" in at:
            sheet.put(r, at["text"], firm.full(f) + (f" ({position})" if position else ""))
            heads.append((r, at["text"]))
        sheet.tell(r, at["value"], 0, f, s, heads)
        if s >= 0:
            sheet.note(r, at["param"], (0, "", "station", s))
        if "unit" in at:
            sheet.put(r, at["unit"], firm.unit_word(f))
        sheet.row += 1
    sheet.foot(extra)
    return sheet


def parts_list(firm: Firm, machines: list[Machine], extra: tuple[str, ...] = (), located: bool = True) -> Sheet:
    """Items of a rotor: its bearings and, as items of their own, the seats of shaft and housing."""
    sheet = Sheet(firm, machines)
    sheet.head(extra)
    sheet.whole(across=2)
    sheet.gap()
    top = sheet.row
    seats, bearing = planned(firm, "s"), planned(firm, "b")
    for c, key in enumerate(("no", "qty", "text"), 1):
        sheet.put(top, c, firm.word(key))
    lead = 3
    if located:
        lead = 4
        sheet.put(top, 4, firm.word("station"))
    for c, f in enumerate([*bearing, *seats], lead + 1):
        sheet.put(top, c, firm.headed(firm.short(f), f))
    sheet.row += 1
    line = 0
    for s, position in enumerate(machines[0].positions):
        for scope in "bsh":
            r = sheet.row
            line += 1
            sheet.put(r, 1, str(line * 10))
            sheet.put(r, 2, "1")
            item = firm.word(PARTS[scope])
            if located:
                sheet.put(r, 3, item)
                sheet.position(r, 4, 0, s, [(top, 4)])
            else:
                sheet.put(r, 3, f"{item} {position}")
                sheet.note(r, 3, (0, "", "station", s))
            if scope == "b":
                for c, f in enumerate(bearing, lead + 1):
                    sheet.tell(r, c, 0, f, s, [(top, c)])
            else:
                for c, f in enumerate(seats, lead + 1 + len(bearing)):
                    sheet.tell(r, c, 0, Field(scope, f.key, f.part), s, [(top, c), (r, 3)])
            sheet.row += 1
    sheet.foot(extra)
    return sheet
