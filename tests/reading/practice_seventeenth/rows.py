"""Layouts in which a row is a position, a machine, a seat or a feature."""

from collections.abc import Sequence

from practice_seventeenth.firm import FORMS, Field, Firm, planned
from practice_seventeenth.page import Sheet, noise
from practice_seventeenth.trade import SIDED, Machine

Heads = dict[int, list[tuple[int, int]]]


def headings(sheet: Sheet, found: Sequence[Field], first: int, grouped: bool) -> Heads:
    """The heading cells of each column: in one row, or in two with the part above; a row of units below."""
    firm, r = sheet.firm, sheet.row
    heads: Heads = {}
    start = first
    for c, f in enumerate(found, first):
        heads[c] = [(r + grouped, c)]
        if grouped:
            if c == first or found[c - first - 1].scope != f.scope:
                start = c
                part = {"b": "bearing", "s": "shaft", "h": "housing", "m": "machine"}[f.scope]
                sheet.put(r, c, firm.word(part))
                last = max(k for k, other in enumerate(found) if other.scope == f.scope)
                sheet.merge(r, c, r, first + last)
            heads[c].append((r, start))
        sheet.put(r + grouped, c, firm.headed(firm.short(f) if grouped else firm.full(f), f))
    sheet.row += 1 + grouped
    return heads


def units_row(sheet: Sheet, found: Sequence[Field], first: int) -> None:
    """A row of units, where the firm writes one."""
    if sheet.firm.units == "row":
        for c, f in enumerate(found, first):
            sheet.put(sheet.row, c, sheet.firm.unit_word(f))
        sheet.row += 1


def position_rows(
    firm: Firm, machines: list[Machine], grouped: bool = False, extra: tuple[str, ...] = (), order: str = "bsh",
    noisy: tuple[int, ...] = (), inside: bool = False, once: bool = False, below: bool = False,
) -> Sheet:  # fmt: skip
    """One row for each position; the machine's values above, below, or (``inside``) in columns of their own."""
    sheet = Sheet(firm, machines)
    sheet.head(extra)
    if not inside and not below:
        sheet.whole(across=3 if "across" in extra else 1)
    sheet.gap(extra)
    top = sheet.row + grouped
    found = [f for scope in order for f in planned(firm, scope)]
    whole = planned(firm, "m")[1:] if inside else []
    lead = 1 + inside
    if inside:
        sheet.put(top, 1, firm.word("name"))
    sheet.put(top, lead, firm.word("station"))
    heads = headings(sheet, [*found, *whole], lead + 1, grouped)
    columns = [(lead + 2 + len(found) + len(whole) + k, *noise(firm, n)) for k, n in enumerate(noisy)]
    for c, name, _ in columns:
        sheet.put(top, c, name)
    units_row(sheet, [*found, *whole], lead + 1)
    line = 0
    for m, one in enumerate(machines):
        for s in range(len(one.positions)):
            r = sheet.row
            if inside and not (once and s):
                sheet.machine(r, 1, m, [(top, 1)])
                if once:
                    sheet.merge(r, 1, r + len(one.positions) - 1, 1)
            sheet.position(r, lead, m, s, [(top, lead)])
            for c, f in enumerate(found, lead + 1):
                sheet.tell(r, c, m, f, s, heads[c])
            for c, f in enumerate(whole, lead + 1 + len(found)):
                if not (once and s):
                    sheet.tell(r, c, m, f, -1, heads[c])
                    if once:
                        sheet.merge(r, c, r + len(one.positions) - 1, c)
            for c, _, texts in columns:
                sheet.put(r, c, texts[line % 8])
            sheet.row += 1
            line += 1
    if below:
        sheet.row += 1
        sheet.whole()
    sheet.foot(extra)
    return sheet


def machine_rows(
    firm: Firm, machines: list[Machine], name: str = "{p} {n}", levels: int = 1, extra: tuple[str, ...] = (),
    order: str = "bsh", noisy: tuple[int, ...] = (),
) -> Sheet:  # fmt: skip
    """One row for each machine; the position in a column's name or in a heading above."""
    sheet = Sheet(firm, machines)
    sheet.head(extra)
    sheet.gap(extra)
    top, bottom = sheet.row, sheet.row + levels - 1
    whole = planned(firm, "m")
    told: list[tuple[int, Field, int, list[tuple[int, int]]]] = []
    c = 1
    for f in whole:
        sheet.put(bottom, c, firm.headed(firm.full(f), f))
        told.append((c, f, -1, [(bottom, c)]))
        c += 1
    for s, position in enumerate(machines[0].positions):
        start = c
        if levels > 1:
            sheet.put(top, c, position)
            for m in range(len(machines)):
                sheet.note(top, c, (m, "", "station", s))
        for scope in order:
            inside = c
            for f in planned(firm, scope):
                own = firm.short(f) if levels == 3 else firm.full(f)
                text = firm.headed(own if levels > 1 else name.format(p=position, n=own), f)
                heads = [(bottom, c)]
                sheet.put(bottom, c, text)
                if levels == 3:
                    if c == inside:
                        sheet.put(top + 1, c, firm.word({"b": "bearing", "s": "shaft", "h": "housing"}[scope]))
                    heads.append((top + 1, inside))
                if levels > 1:
                    heads.append((top, start))
                told.append((c, f, s, heads))
                c += 1
            if levels == 3 and c > inside:
                sheet.merge(top + 1, inside, top + 1, c - 1)
        if levels > 1:
            sheet.merge(top, start, top, c - 1)
    columns = [(c + k, *noise(firm, n)) for k, n in enumerate(noisy)]
    for at, text, _ in columns:
        sheet.put(bottom, at, text)
    sheet.row = bottom + 1
    for m in range(len(machines)):
        for at, f, s, heads in told:
            sheet.tell(sheet.row, at, m, f, s, heads)
        for at, _, texts in columns:
            sheet.put(sheet.row, at, texts[m])
        sheet.row += 1
    sheet.foot(extra)
    return sheet


def seat_rows(
    firm: Firm, machines: list[Machine], extra: tuple[str, ...] = (), noisy: tuple[int, ...] = (),
    joined: str = "", once: bool = False,
) -> Sheet:  # fmt: skip
    """One row for each seat: position and part in two columns, or ``joined`` in one; the bearing beside."""
    sheet = Sheet(firm, machines)
    sheet.head(extra)
    sheet.whole()
    sheet.gap()
    seats = planned(firm, "s")
    bearing = planned(firm, "b")
    lead = 1 if joined else 2
    top = sheet.row
    sheet.put(top, 1, firm.word("part" if joined else "station"))
    if not joined:
        sheet.put(top, 2, firm.word("part"))
    for c, f in enumerate([*bearing, *seats], lead + 1):
        sheet.put(top, c, firm.headed(firm.short(f), f))
    columns = [(lead + 1 + len(bearing) + len(seats) + k, *noise(firm, n)) for k, n in enumerate(noisy)]
    for c, name, _ in columns:
        sheet.put(top, c, name)
    sheet.row += 1
    units_row(sheet, [*bearing, *seats], lead + 1)
    line = 0
    for s, position in enumerate(machines[0].positions):
        for scope in "sh":
            r = sheet.row
            part = firm.word("shaft" if scope == "s" else "housing")
            if joined:
                sheet.put(r, 1, joined.format(p=position, n=part))
                sheet.note(r, 1, (0, "", "station", s))
            elif not (once and scope == "h"):
                sheet.position(r, 1, 0, s, [(top, 1)])
                if once:
                    sheet.merge(r, 1, r + 1, 1)
            if not joined:
                sheet.put(r, 2, part)
            for c, f in enumerate(bearing, lead + 1):
                if not (once and scope == "h"):
                    sheet.tell(r, c, 0, f, s, [(top, c)])
            for c, f in enumerate(seats, lead + 1 + len(bearing)):
                sheet.tell(r, c, 0, Field(scope, f.key, f.part), s, [(top, c), (r, min(lead, 2))])
            for c, _, texts in columns:
                sheet.put(r, c, texts[line % 8])
            line += 1
            sheet.row += 1
    sheet.foot(extra)
    return sheet


def feature_rows(
    firm: Firm, machines: list[Machine], extra: tuple[str, ...] = (), once: bool = False, numbered: bool = False
) -> Sheet:
    """One row for each feature: position, part, feature, its value, its tolerance where it has one, its unit."""
    sheet = Sheet(firm, machines)
    sheet.head(extra)
    sheet.whole(across=2)
    sheet.gap()
    top = sheet.row
    parts = [p for p in FORMS[firm.form] if p]
    c0 = 1 + numbered
    at = {"": c0 + 3} | {p: c0 + 4 + k for k, p in enumerate(parts)}
    unit = c0 + 4 + len(parts)
    if numbered:
        sheet.put(top, 1, firm.word("no"))
    for c, key in ((c0, "station"), (c0 + 1, "part"), (c0 + 2, "param"), (at[""], "value"), (unit, "unit")):
        sheet.put(top, c, firm.word(key))
    for p in parts:
        f = Field("s", "seat", p)
        sheet.put(top, at[p], firm.word(p) + (firm.brackets.format(firm.unit_word(f)) if firm.unit_word(f) else ""))
    sheet.row += 1
    line = 0
    for s in range(len(machines[0].positions)):
        for k, scope in enumerate("bsh"):
            fields = planned(firm, scope)
            for n, f in enumerate(fields):
                r = sheet.row
                heads = [(r, c0 + 2), (top, at[f.part]), (r, c0 + 1)]
                if f.part:
                    sheet.tell(r - 1, at[f.part], 0, f, s, [(r - 1, c0 + 2), (top, at[f.part]), (r - 1, c0 + 1)])
                    continue
                line += 1
                if numbered:
                    sheet.put(r, 1, str(line))
                if not once or (k == 0 and n == 0):
                    sheet.position(r, c0, 0, s, [(top, c0)])
                sheet.put(r, c0 + 1, firm.word({"b": "bearing", "s": "shaft", "h": "housing"}[scope]))
                sheet.put(r, c0 + 2, firm.short(f) if f.key in SIDED else firm.full(f))
                sheet.tell(r, at[""], 0, f, s, heads)
                sheet.put(r, unit, firm.unit_word(f))
                sheet.row += 1
    sheet.foot(extra)
    return sheet


def stacked(
    firm: Firm, machines: list[Machine], extra: tuple[str, ...] = (), beside: bool = False, order: str = "bsh",
    repeat: bool = True,
) -> Sheet:  # fmt: skip
    """A table for each of bearing, shaft, housing, one below another or beside."""
    sheet = Sheet(firm, machines)
    sheet.head(extra)
    sheet.whole()
    sheet.gap()
    top, first = sheet.row, 1
    for scope in order:
        fields = planned(firm, scope)
        if beside:
            sheet.row = top
        title = (sheet.row, first)
        sheet.put(*title, firm.word({"b": "bearing", "s": "shaft", "h": "housing"}[scope]))
        r = sheet.row + 1
        sheet.put(r, first, firm.word("station"))
        for c, f in enumerate(fields, first + 1):
            sheet.put(r, c, firm.headed(firm.short(f) if repeat else firm.full(f), f))
        sheet.row = r + 1
        units_row(sheet, fields, first + 1)
        for s in range(len(machines[0].positions)):
            sheet.position(sheet.row, first, 0, s, [(r, first)])
            for c, f in enumerate(fields, first + 1):
                sheet.tell(sheet.row, c, 0, f, s, [(r, c), title])
            sheet.row += 1
        sheet.row += 1
        if beside:
            first += len(fields) + 2
    sheet.foot(extra)
    return sheet
