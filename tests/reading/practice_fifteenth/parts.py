"""Layouts by parts: blocks for shaft, housing and bearing, small tables, a row for each seat, parts lists."""

from practice_fifteenth.meaning import Machine
from practice_fifteenth.pieces import Plan, data_lines, foot, head, planned, refs, show, title_of, unit_text
from practice_fifteenth.sheet import Sheet
from practice_fifteenth.style import Field, Style

#: What a parts list calls its lines and columns.
BILL = {
    "en": "Item|Qty|Part no.|Description|Type / size|Fit|Material|Position|Deep groove ball bearing|Rotor shaft|"
    "Bearing housing|Retaining ring|Radial shaft seal|Hexagon screw",
    "de": "Pos.|Menge|Sachnummer|Benennung|Typ / Maß|Passung|Werkstoff|Lagerstelle|Rillenkugellager|Läuferwelle|"
    "Lagergehäuse|Sicherungsring|Wellendichtring|Sechskantschraube",
    "it": "Pos.|Q.tà|Codice|Descrizione|Tipo / misura|Tolleranza|Materiale|Supporto|Cuscinetto a sfere|Albero rotore|"
    "Alloggiamento|Anello elastico|Paraolio|Vite",
}
OTHERS = ("DIN 471 - 25x1.2", "35x47x7", "M6x20")


def blocks(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    top: str = "name dwg rev",
    way: str = "lines",
    extra: tuple[str, ...] = (),
    order: str = "shaft housing bearing",
    repeat: bool = True,
    beside: bool = False,
) -> Sheet:
    """A block for each part: its name, the positions, features with units and values; below or beside each other."""
    sheet = Sheet(style)
    head(sheet, machines, top, way, extra)
    machine = machines[0]
    unit = 2 if style.units == "column" else 0
    start, column, deepest = sheet.row, 1, sheet.row
    for number, scope in enumerate(order.split()):
        if beside:
            sheet.row = start
        group = sheet.row
        sheet.put(group, column, style.word(scope))
        first = column + (2 if unit else 1)
        named = repeat or number == 0
        if named and not beside:
            sheet.row += 1
        if unit and named:
            sheet.put(sheet.row, column + 1, style.word("unit"))
        for s, position in enumerate(machine.positions):
            if named:
                sheet.put(sheet.row, first + s, position, [(0, "", "station", s)])
        sheet.row += 1
        for f in planned(style, plan, scope):
            sheet.put(sheet.row, column, title_of(f, style, short=True))
            if unit:
                sheet.put(sheet.row, column + 1, unit_text(f, style))
            for s in range(len(machine.positions)):
                heads = [(sheet.row, column), (group, column)]
                sheet.put(sheet.row, first + s, show(style, machine, f, s), refs(f, 0, s), heads)
            sheet.row += 1
        deepest = max(deepest, sheet.row)
        if beside:
            column = first + len(machine.positions) + 1
        elif repeat:
            sheet.row += 1
    sheet.row = max(deepest, sheet.row) + beside
    whole = planned(style, plan, "machine")
    if whole:
        sheet.line(style.word("machine"))
        data_lines(sheet, machines, whole, "units" if unit else "lines")
    foot(sheet, extra)
    return sheet


def station_blocks(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    top: str = "name dwg rev",
    way: str = "lines",
    extra: tuple[str, ...] = (),
    order: str = "bearing shaft housing",
    beside: bool = False,
    label: str = "{w}",
) -> Sheet:
    """A block for each position: its name, then features with their values; below or beside each other."""
    sheet = Sheet(style)
    head(sheet, machines, top, way, extra)
    machine = machines[0]
    unit = style.units == "column"
    start, column, deepest = sheet.row, 1, sheet.row
    for s, position in enumerate(machine.positions):
        if beside:
            sheet.row = start
        if label == "{w}":
            sheet.put(sheet.row, column, style.word("station"))
            sheet.put(sheet.row, column + 1, position, [(0, "", "station", s)], [(sheet.row, column)])
        else:
            sheet.put(sheet.row, column, position, [(0, "", "station", s)])
        sheet.row += 1
        for f in (f for scope in order.split() for f in planned(style, plan, scope)):
            r = sheet.row
            name = style.full(f) if unit else title_of(f, style)
            sheet.put(r, column, name)
            sheet.put(r, column + 1, show(style, machine, f, s), refs(f, 0, s), [(r, column)])
            if unit:
                sheet.put(r, column + 2, unit_text(f, style))
            sheet.row += 1
        deepest = max(deepest, sheet.row)
        if beside:
            column += 3 + unit
        else:
            sheet.row += 1
    sheet.row = max(deepest, sheet.row) + beside
    whole = planned(style, plan, "machine")
    if whole:
        data_lines(sheet, machines, whole, "units" if unit else "lines")
    foot(sheet, extra)
    return sheet


def two_tables(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    top: str = "name dwg rev",
    way: str = "lines",
    extra: tuple[str, ...] = (),
    beside: bool = False,
    order: str = "bearing shaft housing",
    titled: bool = True,
    whole: str = "lines",
) -> Sheet:
    """A small table for each part with a row for each position, below or beside each other."""
    sheet = Sheet(style)
    head(sheet, machines, top, way, extra)
    machine = machines[0]
    start, column, deepest = sheet.row, 1, sheet.row
    for scope in order.split():
        if beside:
            sheet.row = start
        group = sheet.row
        if titled:
            sheet.put(group, column, style.word(scope))
            sheet.row += 1
        r = sheet.row
        sheet.put(r, column, style.word("station"))
        found = planned(style, plan, scope)
        heads = {c: [(r, c), (group, column)] if titled else [(r, c)] for c in range(column, column + len(found) + 1)}
        for c, f in enumerate(found, column + 1):
            sheet.put(r, c, title_of(f, style, short=titled))
        sheet.row += 1
        if style.units == "row":
            for c, f in enumerate(found, column + 1):
                sheet.put(sheet.row, c, unit_text(f, style))
            sheet.row += 1
        for s, position in enumerate(machine.positions):
            sheet.put(sheet.row, column, position, [(0, "", "station", s)], [(r, column)])
            for c, f in enumerate(found, column + 1):
                sheet.put(sheet.row, c, show(style, machine, f, s), refs(f, 0, s), heads[c])
            sheet.row += 1
        deepest = max(deepest, sheet.row)
        if beside:
            column += len(found) + 2
        else:
            sheet.row += 1
    sheet.row = max(deepest, sheet.row) + beside
    data_lines(sheet, machines, planned(style, plan, "machine"), whole)
    foot(sheet, extra)
    return sheet


def seat_rows(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    top: str = "name dwg rev",
    way: str = "lines",
    extra: tuple[str, ...] = (),
    seat: str = "columns",
    by: str = "position",
    bearings: bool = True,
    whole: str = "lines",
) -> Sheet:
    """A row for each seat, of shaft and housing; the bearings in a small table above, or in a column.

    ``seat``: position and part in two columns, or both in one text of this form.
    """
    sheet = Sheet(style)
    head(sheet, machines, top, way, extra)
    machine = machines[0]
    own = planned(style, plan, "bearing")
    if bearings and own:
        r = sheet.row
        sheet.put(r, 1, style.word("station"))
        for c, f in enumerate(own, 2):
            sheet.put(r, c, title_of(f, style))
        if style.units == "row":
            sheet.row += 1
            for c, f in enumerate(own, 2):
                sheet.put(sheet.row, c, unit_text(f, style))
        for s, position in enumerate(machine.positions):
            sheet.row += 1
            sheet.put(sheet.row, 1, position, [(0, "", "station", s)], [(r, 1)])
            for c, f in enumerate(own, 2):
                sheet.put(sheet.row, c, show(style, machine, f, s), refs(f, 0, s), [(r, c)])
        sheet.row += 2
    top_row = sheet.row
    found = planned(style, plan, "shaft")
    columns = seat == "columns"
    sheet.put(top_row, 1, style.word("station") if columns else style.word("feature"))
    if columns:
        sheet.put(top_row, 2, style.word("part"))
    first = 2 + columns
    inside = own if not bearings else []
    for c, f in enumerate([*inside, *found], first):
        sheet.put(top_row, c, title_of(f, style, short=True))
    sheet.row += 1
    if style.units == "row":
        for c, f in enumerate([*inside, *found], first):
            sheet.put(sheet.row, c, unit_text(f, style))
        sheet.row += 1
    sides = ("shaft", "housing")
    places = range(len(machine.positions))
    lines = [(s, side) for s in places for side in sides]
    if by == "part":
        lines = [(s, side) for side in sides for s in places]
    for s, side in lines:
        r, position = sheet.row, machine.positions[s]
        heads = [(r, 1)]
        if columns:
            told = [(0, "", "station", s)]
            sheet.put(r, 1, position, told, [(top_row, 1)])
            sheet.put(r, 2, style.word(side))
            heads.append((r, 2))
        else:
            sheet.put(r, 1, seat.format(n=style.word(side), p=position))
        for c, f in enumerate(inside, first):
            if side == "shaft" or f.key == "des":
                sheet.put(r, c, show(style, machine, f, s), refs(f, 0, s), [(top_row, c), *heads])
        for c, f in enumerate(found, first + len(inside)):
            real = Field(side, f.key, f.part, f.quantity)
            sheet.put(r, c, show(style, machine, real, s), refs(real, 0, s), [(top_row, c), *heads])
        sheet.row += 1
    sheet.row += 1
    data_lines(sheet, machines, planned(style, plan, "machine"), whole)
    foot(sheet, extra)
    return sheet


def bill(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    top: str = "name dwg rev",
    way: str = "lines",
    extra: tuple[str, ...] = (),
    fit_column: bool = True,
) -> Sheet:
    """A parts list: bearings, the seats of shaft and housing under their parts, other parts."""
    sheet = Sheet(style)
    head(sheet, machines, top, way, extra)
    machine, rng = machines[0], style.rng
    words = BILL[style.language].split("|")
    item, qty, art, name, size, fit, material, place = range(1, 9)
    ra = 9
    r0 = sheet.row
    for c, text in enumerate(words[:8], 1):
        if c != fit or fit_column:
            sheet.put(r0, c, text)
    if "ra" in plan["shaft"].split():
        sheet.put(r0, ra, "Ra [µm]" if style.units != "cell" else "Ra")
    sheet.row += 1
    count = 0

    def line(text: str, kind: str = "", quantity: str = "1") -> int:
        nonlocal count
        count += 10
        r = sheet.row
        sheet.put(r, item, str(count))
        sheet.put(r, qty, quantity)
        sheet.put(r, art, f"{rng.randint(100000, 999999)}" if quantity else "")
        sheet.put(r, name, text)
        sheet.put(r, size, kind)
        sheet.row += 1
        return r

    for s, position in enumerate(machine.positions):
        r = line(words[8])
        sheet.put(r, size, machine_text(machine, s), [(0, "bearing", "des", s)], [(r0, size), (r, name)])
        sheet.put(r, place, position, [(0, "", "station", s)], [(r0, place)])
    for side, part, key in (("shaft", words[9], "smat"), ("housing", words[10], "hmat")):
        r = line(part)
        f = Field("machine", key)
        sheet.put(r, material, show(style, machine, f, -1), refs(f, 0, -1), [(r0, material), (r, name)])
        for s, position in enumerate(machine.positions):
            for f in planned(style, plan, side):
                if f.part or f.key == "ra":
                    continue
                r = sheet.row
                sheet.put(r, name, title_of(f, style))
                heads = [(r0, size), (r, name)]
                sheet.put(r, size, show(style, machine, f, s), refs(f, 0, s), heads)
                sheet.put(r, place, position)
                if f.key == "seat":
                    if fit_column:
                        own = Field(side, "seat", "cls")
                        sheet.put(r, fit, show(style, machine, own, s), refs(own, 0, s), [(r0, fit), (r, name)])
                    if "ra" in plan[side].split():
                        rough = Field(side, "ra", "", "rough")
                        sheet.put(r, ra, show(style, machine, rough, s), refs(rough, 0, s), [(r0, ra), (r, name)])
                sheet.row += 1
    for text, kind in zip(words[11:14], OTHERS, strict=True):
        line(text, kind, "2")
    whole = planned(style, plan, "machine")
    if whole:
        sheet.row += 1
        data_lines(sheet, machines, whole)
    foot(sheet, extra)
    return sheet


def machine_text(machine: Machine, s: int) -> str:
    return str(machine.values["bearing", "des", s])
