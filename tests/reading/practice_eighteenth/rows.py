"""Layouts whose rows are positions, machines, seats or features."""

from practice_eighteenth.page import NAME, Place, Sheet
from practice_eighteenth.trade import SIDED, Item

PARTS = {"b": "bearing", "s": "shaft", "h": "housing", "m": "machine"}


def positions(sheet: Sheet, two: bool = False, columns: bool = False, bare: bool = False,
              once: bool = False, spacer: bool = False) -> None:  # fmt: skip
    """A row for each position; the heading in one row or in two; the machine above or in ``columns``."""
    office = sheet.office
    sheet.head(block=not columns)
    top = sheet.row + two
    cells: list[tuple[int, Item, list[Place]]] = []
    if columns:
        sheet.put(top, 1, office.full(NAME))
    sheet.put(top, 1 + columns, office.words["station"])
    c = 2 + columns
    scopes = ("" if bare or not columns else "m") + "bsh" + ("m" if bare else "")
    for scope in scopes:
        start = c
        for item in office.items(scope):
            if item == NAME:
                continue
            text = office.short(item) if two and item.key in SIDED else office.full(item)
            sheet.put(top, c, office.headed(text, item))
            cells.append((c, item, [(top, c), (top - 1, start)] if two else [(top, c)]))
            c += 1
        if two and c > start:
            sheet.put(top - 1, start, office.words[PARTS[scope]])
            sheet.span(top - 1, start, top - 1, c - 1)
        c += spacer and c > start
    sheet.row = top + 1
    if office.units == "row":
        for at, item, _ in cells:
            sheet.put(sheet.row, at, office.unit_word(item))
        sheet.row += 1
    body = []
    for m, rotor in enumerate(sheet.rotors):
        for s in range(len(rotor.positions)):
            r = sheet.row
            repeat = not (once and s)
            if columns and repeat:
                sheet.tell(r, 1, m, NAME, -1, [(top, 1)])
            sheet.station(r, 1 + columns, m, s, [(top, 1 + columns)])
            for at, item, heads in cells:
                if item.scope != "m":
                    sheet.tell(r, at, m, item, s, heads)
                elif repeat:
                    sheet.tell(r, at, m, item, -1, heads)
            if columns and once and s == 0:
                for at in [1, *(at for at, item, _ in cells if item.scope == "m")]:
                    sheet.span(r, at, r + len(rotor.positions) - 1, at)
            body.append(r)
            sheet.row += 1
    sheet.extras(top, c, body)
    sheet.foot()


def machines(sheet: Sheet, levels: int = 2, name: str = "{n} {p}") -> None:
    """A row for each machine; positions stand over groups of columns (2), over parts too (3), or in names (1)."""
    office = sheet.office
    sheet.head(block=False)
    top, bottom = sheet.row, sheet.row + levels - 1
    cells: list[tuple[int, Item, int, list[Place]]] = []
    c = 1
    for item in office.items("m"):
        sheet.put(bottom, c, office.headed(office.full(item), item))
        cells.append((c, item, -1, [(bottom, c)]))
        c += 1
    for s, position in enumerate(sheet.rotors[0].positions):
        start = c
        if levels > 1:
            sheet.put(top, c, position)
        for scope in "bsh":
            group = c
            for item in office.items(scope):
                text = office.short(item) if levels == 3 and item.key in SIDED else office.full(item)
                text = text if levels > 1 else name.format(n=text, p=position)
                sheet.put(bottom, c, office.headed(text, item))
                heads = [
                    (bottom, c),
                    *([(top, start)] if levels > 1 else []),
                    *([(top + 1, group)] if levels > 2 else []),
                ]
                cells.append((c, item, s, heads))
                c += 1
            if levels == 3 and c > group:
                sheet.put(top + 1, group, office.words[PARTS[scope]])
                sheet.span(top + 1, group, top + 1, c - 1)
        if levels > 1:
            sheet.span(top, start, top, c - 1)
        for m in range(len(sheet.rotors)):
            for col, _, own, heads in cells:
                if own == s:
                    sheet.note(*(heads[1] if levels > 1 else (bottom, col)), (m, "b", "station", s))
                    if levels > 1:
                        break
    sheet.row = bottom + 1
    if office.units == "row":
        for col, item, _, _ in cells:
            sheet.put(sheet.row, col, office.unit_word(item))
        sheet.row += 1
    body = list(range(sheet.row, sheet.row + len(sheet.rotors)))
    for m, r in enumerate(body):
        for col, item, s, heads in cells:
            sheet.tell(r, col, m, item, s, heads)
    sheet.extras(bottom, c, body)
    sheet.foot()


def seats(sheet: Sheet, one: str = "", once: bool = False) -> None:
    """A row for each seat: position and part in columns, or both in ``one`` cell; the bearing beside."""
    office = sheet.office
    sheet.head()
    top, lead = sheet.row, 1 if one else 2
    sheet.put(top, 1, office.words["where" if one else "station"])
    if not one:
        sheet.put(top, 2, office.words["part"])
    bearing = office.items("b")
    own = [item for item in office.items("s") if item.key in SIDED]
    for c, item in enumerate([*bearing, *own], lead + 1):
        sheet.put(top, c, office.headed(office.short(item), item))
    sheet.row += 1
    if office.units == "row":
        for c, item in enumerate([*bearing, *own], lead + 1):
            sheet.put(sheet.row, c, office.unit_word(item))
        sheet.row += 1
    body = []
    for s, position in enumerate(sheet.rotors[0].positions):
        for scope in "sh":
            r, part = sheet.row, office.words[PARTS[scope]]
            if one:
                sheet.put(r, 1, one.format(p=position, n=part))
                sheet.note(r, 1, (0, "b", "station", s))
            else:
                if not (once and scope == "h"):
                    sheet.station(r, 1, 0, s, [(top, 1)])
                sheet.put(r, 2, part)
            for c, item in enumerate(bearing, lead + 1):
                if scope == "s" or not once:
                    sheet.tell(r, c, 0, item, s, [(top, c)])
            for c, item in enumerate(own, lead + 1 + len(bearing)):
                sheet.tell(r, c, 0, Item(scope, item.key, item.part), s, [(top, c), (r, lead)])
            if once and scope == "h":
                for c in (1, *range(lead + 1, lead + 1 + len(bearing))):
                    sheet.span(r - 1, c, r, c)
            body.append(r)
            sheet.row += 1
    sheet.extras(top, lead + 1 + len(bearing) + len(own), body)
    sheet.foot()


def bearings(sheet: Sheet) -> None:
    """A small table of the bearings alone."""
    office, top = sheet.office, sheet.row
    sheet.put(top, 1, office.words["station"])
    for c, item in enumerate(office.items("b"), 2):
        sheet.put(top, c, office.headed(office.full(item), item))
    for s in range(len(sheet.rotors[0].positions)):
        sheet.row += 1
        sheet.station(sheet.row, 1, 0, s, [(top, 1)])
        for c, item in enumerate(office.items("b"), 2):
            sheet.tell(sheet.row, c, 0, item, s, [(top, c)])
    sheet.row += 2


def features(sheet: Sheet, numbered: bool = False, once: bool = False, part_first: bool = False) -> None:
    """A row for each feature: position, part, what it is, its nominal, its tolerance in one column, its unit."""
    office = sheet.office
    sheet.head()
    top, c0 = sheet.row, 1 + numbered
    station, part = (c0 + 1, c0) if part_first else (c0, c0 + 1)
    parts = [item.part for item in office.items("s") if item.key == "seat" and item.part]
    at = {"": c0 + 3} | {p: c0 + 4 + k for k, p in enumerate(parts)}
    unit = c0 + 4 + len(parts)
    if numbered:
        sheet.put(top, 1, office.words["no"])
    for c, key in ((station, "station"), (part, "part"), (c0 + 2, "param"), (at[""], "value"), (unit, "unit")):
        sheet.put(top, c, office.words[key])
    for p in parts:
        sheet.put(top, at[p], office.headed(office.words[p], Item("s", "seat", p), always=True))
    body: list[int] = []
    for s in range(len(sheet.rotors[0].positions)):
        first = True
        for scope in "bsh":
            for item in office.items(scope):
                if item.part:
                    r = sheet.row
                    sheet.tell(r, at[item.part], 0, item, s, [(r, c0 + 2), (top, at[item.part]), (r, part)])
                    continue
                sheet.row += 1
                r = sheet.row
                body.append(r)
                if numbered:
                    sheet.put(r, 1, str(len(body)))
                if first or not once:
                    sheet.station(r, station, 0, s, [(top, station)])
                first = False
                sheet.put(r, part, office.words[PARTS[scope]])
                sheet.put(r, c0 + 2, office.short(item))
                sheet.tell(r, at[""], 0, item, s, [(r, c0 + 2), (top, at[""]), (r, part)])
                sheet.put(r, unit, office.unit_word(item))
    sheet.extras(top, unit + 1, body)
    sheet.foot()
