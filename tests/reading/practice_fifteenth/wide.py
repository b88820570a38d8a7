"""Layouts in which a row is a position or a machine, or a column is a position."""

from collections.abc import Sequence

from practice_fifteenth.meaning import Machine
from practice_fifteenth.pieces import Plan, data_lines, foot, head, noise, planned, refs, show, title_of, unit_text
from practice_fifteenth.sheet import Sheet
from practice_fifteenth.style import PARTS, Field, Style


def _headings(sheet: Sheet, found: Sequence[Field], first: int, grouped: bool) -> dict[int, list[tuple[int, int]]]:
    """One heading row, or two with the part over its features; a row of units; the heading cells of each column."""
    style = sheet.style
    r = sheet.row
    heads: dict[int, list[tuple[int, int]]] = {}
    start, scope = first, ""
    for c, f in enumerate(found, first):
        heads[c] = []
        if grouped:
            if f.scope != scope:
                if scope:
                    sheet.merge(r, start, r, c - 1)
                sheet.put(r, c, style.word(f.scope))
                start, scope = c, f.scope
            heads[c].append((r, start))
        sheet.put(r + grouped, c, title_of(f, style, short=grouped))
        heads[c].insert(0, (r + grouped, c))
    if grouped:
        sheet.merge(r, start, r, first + len(found) - 1)
    sheet.row += 1 + grouped
    if style.units == "row":
        for c, f in enumerate(found, first):
            sheet.put(sheet.row, c, unit_text(f, style))
        sheet.row += 1
    return heads


def row_station(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    top: str = "name dwg rev",
    way: str = "lines",
    grouped: bool = False,
    extra: tuple[str, ...] = (),
    once: bool = False,
    order: str = "bearing shaft housing",
    below: str = "",
    noisy: tuple[int, ...] = (),
) -> Sheet:
    """One row for each position; machine data above, below or in columns."""
    sheet = Sheet(style)
    many = len(machines) > 1
    head(sheet, machines[:1], "" if many else top, way, extra)
    found = [f for scope in order.split() for f in planned(style, plan, scope)]
    whole = planned(style, plan, "machine") if not below else []
    lead = int(many) + 1
    top_row = sheet.row
    if many:
        sheet.put(top_row + grouped, 1, style.word("name"))
    sheet.put(top_row + grouped, lead, style.word("station"))
    heads = _headings(sheet, [*found, *whole], lead + 1, grouped)
    columns = [(lead + 1 + len(found) + len(whole) + k, *noise(style, number)) for k, number in enumerate(noisy)]
    for c, name, _ in columns:
        sheet.put(top_row + grouped, c, name)
    line = 0
    for m, machine in enumerate(machines):
        for s, position in enumerate(machine.positions):
            r = sheet.row
            if many and not (once and s):
                sheet.put(r, 1, machine.name, [(m, "machine", "name", -1)], [(top_row + grouped, 1)])
                if once:
                    sheet.merge(r, 1, r + len(machine.positions) - 1, 1)
            sheet.put(r, lead, position, [(m, "", "station", s)], [(top_row + grouped, lead)])
            for c, f in enumerate(found, lead + 1):
                sheet.put(r, c, show(style, machine, f, s), refs(f, m, s), heads[c])
            for c, f in enumerate(whole, lead + 1 + len(found)):
                if not (once and s):
                    sheet.put(r, c, show(style, machine, f, -1), refs(f, m, -1), heads[c])
            for c, _, texts in columns:
                sheet.put(r, c, texts[line % 6])
            sheet.row += 1
            line += 1
        if "gap" in extra:
            sheet.row += 1
    if below:
        sheet.row += 1
        data_lines(sheet, machines, planned(style, plan, "machine"), below)
    foot(sheet, extra)
    return sheet


def transposed(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    top: str = "name dwg rev",
    way: str = "lines",
    grouped: bool = True,
    extra: tuple[str, ...] = (),
    whole: str = "lines",
    order: str = "bearing shaft housing",
    remarks: bool = False,
    numbered: bool = False,
) -> Sheet:
    """Parameters down, positions across, under a title block; ``whole``: how the machine's values stand."""
    sheet = Sheet(style)
    many = len(machines) > 1
    head(sheet, machines[:1], "" if many else top, way, extra)
    label = 1 + numbered
    unit = label + 1 if style.units == "column" else 0
    first = (unit or label) + 1
    places = [(m, s) for m, machine in enumerate(machines) for s in range(len(machine.positions))]
    if many:
        sheet.put(sheet.row, label, style.word("name"))
        c = first
        for m, machine in enumerate(machines):
            sheet.put(sheet.row, c, machine.name, [(m, "machine", "name", -1)], [(sheet.row, label)])
            sheet.merge(sheet.row, c, sheet.row, c + len(machine.positions) - 1)
            c += len(machine.positions)
        sheet.row += 1
    r = sheet.row
    if numbered:
        sheet.put(r, 1, style.word("no"))
    sheet.put(r, label, style.word("param"))
    if unit:
        sheet.put(r, unit, style.word("unit"))
    for c, (m, s) in enumerate(places, first):
        sheet.put(r, c, machines[m].positions[s], [(m, "", "station", s)])
    if remarks:
        sheet.put(r, first + len(places), style.word("remark"))
    sheet.row += 1
    count = 0
    scopes = order.split() + (["machine"] if whole in ("both", "merged") else [])
    for scope in scopes:
        group = 0
        if grouped:
            group = sheet.row
            sheet.line(style.word(scope), skip=label - 1)
        for f in planned(style, plan, scope):
            r = sheet.row
            count += 1
            if numbered:
                sheet.put(r, 1, str(count))
            sheet.put(r, label, title_of(f, style, short=grouped))
            if unit:
                sheet.put(r, unit, unit_text(f, style))
            heads = [(r, label), (group, label)] if group else [(r, label)]
            for c, (m, s) in enumerate(places, first):
                if scope != "machine":
                    sheet.put(r, c, show(style, machines[m], f, s), refs(f, m, s), heads)
                elif s == 0 or whole == "both":
                    sheet.put(r, c, show(style, machines[m], f, -1), refs(f, m, -1), heads)
                    if whole == "merged":
                        sheet.merge(r, c, r, c + len(machines[m].positions) - 1)
            if remarks and f.key == "fil":
                sheet.put(r, first + len(places), "max.")
            sheet.row += 1
    if whole not in ("both", "merged"):
        sheet.row += 1
        if grouped:
            sheet.line(style.word("machine"))
        data_lines(sheet, machines, planned(style, plan, "machine"), whole)
    foot(sheet, extra)
    return sheet


def row_machine(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    name: str = "{p} {n}",
    levels: int = 1,
    extra: tuple[str, ...] = (),
    noisy: tuple[int, ...] = (),
    order: str = "bearing shaft housing",
) -> Sheet:
    """One machine for each row; a column's position in its name, or in headings of two or three rows."""
    sheet = Sheet(style)
    head(sheet, machines, "", "", extra)
    top = sheet.row
    bottom = top + levels - 1
    sheet.put(bottom, 1, style.word("name"))
    whole = planned(style, plan, "machine")
    c = 2
    told: list[tuple[int, Field, int, list[tuple[int, int]]]] = []
    for f in whole:
        sheet.put(bottom, c, title_of(f, style))
        told.append((c, f, -1, [(bottom, c)]))
        c += 1
    for s, position in enumerate(machines[0].positions):
        start = c
        if levels > 1:
            refs_of = [(m, "", "station", s) for m in range(len(machines))]
            sheet.put(top, c, position, refs_of)
        for scope in order.split():
            inside = c
            if levels == 3:
                sheet.put(top + 1, c, style.word(scope))
            for f in planned(style, plan, scope):
                if levels == 1:
                    text = style.heading(name.format(p=position, n=style.full(f)), f)
                else:
                    text = title_of(f, style, short=levels == 3)
                sheet.put(bottom, c, text)
                heads = [(bottom, c)]
                if levels > 1:
                    heads.append((top, start))
                if levels == 3:
                    heads.append((top + 1, inside))
                told.append((c, f, s, heads))
                c += 1
            if levels == 3:
                sheet.merge(top + 1, inside, top + 1, c - 1)
        if levels > 1:
            sheet.merge(top, start, top, c - 1)
    columns = [(c + k, *noise(style, number)) for k, number in enumerate(noisy)]
    for c, text, _ in columns:
        sheet.put(bottom, c, text)
    sheet.row = bottom + 1
    if style.units == "row":
        for c, f, _, _ in told:
            sheet.put(sheet.row, c, unit_text(f, style))
        sheet.row += 1
    for m, machine in enumerate(machines):
        sheet.put(sheet.row, 1, machine.name, [(m, "machine", "name", -1)], [(bottom, 1)])
        for c, f, s, heads in told:
            sheet.put(sheet.row, c, show(style, machine, f, s), refs(f, m, s), heads)
        for c, _, texts in columns:
            sheet.put(sheet.row, c, texts[m % 6])
        sheet.row += 1
    foot(sheet, extra)
    return sheet


def spread(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    top: str = "name dwg rev",
    way: str = "lines",
    extra: tuple[str, ...] = (),
    order: str = "bearing shaft housing",
) -> Sheet:
    """Parameters down; each position has columns for the nominal and its deviations or limits."""
    sheet = Sheet(style)
    head(sheet, machines, top, way, extra)
    machine = machines[0]
    parts = [p for p in ("up", "lo", "max", "min") if p in PARTS[style.form]]
    unit, first, width = 2, 3, 1 + len(parts)
    r = sheet.row
    sheet.put(r + 1, 1, style.word("param"))
    sheet.put(r + 1, unit, style.word("unit"))
    for s, position in enumerate(machine.positions):
        c = first + s * width
        sheet.put(r, c, position, [(0, "", "station", s)])
        sheet.merge(r, c, r, c + width - 1)
        sheet.put(r + 1, c, style.word("value"))
        for k, part in enumerate(parts, 1):
            sheet.put(
                r + 1, c + k, style.heading(style.word(part), Field("", "seat", part, "fine"), part in ("up", "lo"))
            )
    sheet.row += 2
    for scope in order.split():
        group = sheet.row
        sheet.line(style.word(scope))
        for f in planned(style, plan, scope):
            if f.part:
                continue
            row = sheet.row
            sheet.put(row, 1, style.short(f))
            sheet.put(row, unit, unit_text(f, style))
            heads = [(row, 1), (group, 1)]
            for s in range(len(machine.positions)):
                c = first + s * width
                sheet.put(row, c, show(style, machine, f, s), refs(f, 0, s), heads)
                for k, part in enumerate(parts if f.key == "seat" else [], 1):
                    own = Field(f.scope, "seat", part, "length" if part in ("max", "min") else "fine")
                    sheet.put(row, c + k, show(style, machine, own, s), refs(own, 0, s), [*heads, (r + 1, c + k)])
            sheet.row += 1
    sheet.row += 1
    data_lines(sheet, machines, planned(style, plan, "machine"), "units")
    foot(sheet, extra)
    return sheet
