"""Sixty tables of sixty firms: the plan of each, and how each layout is filled."""

from practice.grammar import Table

from . import json_forms
from .blocks import form, sheets
from .firm import Column, Field, Firm
from .pen import Pen
from .start import parts, start
from .style import Owner, Plan

#: language, layout, file, encoding, tolerance, place of units, machines, notes.
PLANS = tuple(
    Plan(a, b, c, d, e, f, int(count), notes)
    for a, b, c, d, e, f, count, notes in (line.split("|") for line in """
en|wide|csv,|utf-8|class column|heading|1|
en|wide|xlsx|utf-8|deviation columns|row|2|
en|wide|csv,|utf-8-sig|limit columns|title|1|inch
en|wide|csv,|cp1252|class in cell|heading|2|thousands
en|wide|tab|utf-8|plus-minus|heading|1|inch
en|machine rows|csv,|utf-8|class in cell|heading|2|upper
en|machine rows|xlsx|utf-8|class only|heading|2|few
en|two heads|xlsx|utf-8|deviation columns|title|1|inch
en|transposed|csv,|utf-8|class column|row|1|
en|transposed|xlsx|utf-8|limits in cell|heading|1|inch
en|transposed|csv,|utf-8-sig|class and deviations|title|2|sections
en|long list|csv,|utf-8|class column|row|1|
en|long list|tab|utf-16|limits in cell|row|1|inch
en|seat rows|csv,|utf-8|deviation columns um|heading|1|
en|form|xlsx|utf-8|class in cell|row|1|beside
en|sheets|xlsx|utf-8|class column|row|1|
en|json|json|utf-8|class in cell|heading|1|nested camel
en|json|json|utf-8|limit columns|heading|1|records snake inch
de|wide|csv;|cp1252|class column|heading|1|
de|wide|csv;|utf-8-sig|class in cell|heading|2|thousands
de|wide|xlsx|utf-8|class and deviations|row|1|
de|machine rows|csv;|cp1252|class only|heading|2|few
de|two heads|csv;|utf-8-sig|deviation columns um|row|1|
de|transposed|csv;|cp1252|class in cell|row|1|
de|transposed|xlsx|utf-8|class column|heading|1|sections
de|long list|csv;|utf-8|class column|row|1|
de|seat rows|xlsx|utf-8|class and deviations|title|1|
de|form|csv;|cp1252|class in cell|cell|1|
de|json|json|utf-8|class column|none|2|nested snake
zh|wide|csv,|gb18030|class column|heading|1|
zh|long list|xlsx|utf-8|class column|row|1|
zh|machine rows|csv,|utf-8-sig|class only|heading|2|few
zh|transposed|xlsx|utf-8|class in cell|row|1|
zh|long list|csv,|gb18030|class in cell|row|1|
zh|sheets|xlsx|utf-8|deviations in cell|row|1|
zh|json|json|utf-8|class column|heading|1|keyed objects
ja|wide|csv,|cp932|class in cell|heading|1|
ja|wide|csv,|shift_jis|class column|heading|2|
ja|two heads|xlsx|utf-8|deviation columns um|heading|1|
ja|transposed|csv,|cp932|class column|row|1|
ja|long list|xlsx|utf-8|class column|row|1|
ja|form|xlsx|utf-8|class and deviations|cell|1|
fr|wide|csv;|cp1252|class in cell|heading|2|
fr|wide|xlsx|utf-8|class column|row|1|
fr|transposed|csv;|utf-8-sig|deviations in cell|row|1|thousands
fr|seat rows|csv;|cp1252|class column|heading|1|
fr|json|json|utf-8|class in cell|heading|1|attributes
it|wide|csv;|cp1252|deviation columns|heading|1|
it|machine rows|xlsx|utf-8|class in cell|heading|2|few
it|seat rows|csv;|utf-8|class column|title|1|
it|long list|csv;|utf-8|class in cell|row|1|
it|json|json|utf-8|class column|heading|2|columns escaped
es|wide|csv;|utf-8-sig|class in cell|title|1|
es|two heads|csv;|cp1252|class column|row|1|
es|seat rows|xlsx|utf-8|limit columns|title|1|
es|sheets|xlsx|utf-8|class in cell|cell|1|
ru|wide|csv;|cp1251|class column|heading|1|
ru|machine rows|csv;|utf-8-sig|class in cell|heading|2|few
ru|two heads|xlsx|utf-8|deviation columns|title|1|
ru|form|csv;|cp1251|class in cell|row|1|
""".strip().splitlines())
)  # fmt: skip


def in_columns(pen: Pen, listed: list[tuple[Field, Column]], owners: list[Owner], short: bool = False) -> None:
    """Headings (in one or two rows), units and a row for each owner."""
    firm, grid = pen.firm, pen.grid
    heads: list[list[tuple[str, str]]] = [[] for _ in listed]
    row = grid.rows
    if short:
        groups = {"brg": "brg", "shaft": "sh", "housing": "ho", "op": "op", "mach": "mach"}
        repeat = firm.plan.file != "xlsx" and firm.rng.random() < 0.5
        last, first = "", 0
        for k, (field, _) in enumerate(listed):
            name = "" if field.key in ("mach", "stn", "noise") else groups[field.group]
            word = firm.word("g_" + name) if name else ""
            if name != last or repeat:
                first = k if name != last else first
                grid.put(row, k, word)
            if name == last and name and firm.plan.file == "xlsx":
                grid.merged = [x for x in grid.merged if x[:2] != (row, first)] + [(row, first, row, k)]
            if word:
                heads[k].append((grid.put(row, k if repeat else first, ""), word))
            last = name
        row += 1
    for k, (field, column) in enumerate(listed):
        text = pen.heading(column, short and field.group in ("shaft", "housing") and field.key not in ("smat", "hmat"))
        heads[k].append((grid.put(row, k, text), text))
    if firm.plan.place == "row":
        row += 1
        for k, (_, column) in enumerate(listed):
            grid.put(row, k, column.unit)
    once = firm.plan.layout == "wide" and firm.rng.random() < 0.35
    for m, s in owners:
        row += 1
        for k, (field, column) in enumerate(listed):
            if once and s == 1 and not field.of_station():
                continue
            cell = pen.cell(column, (m, s))
            own = grid.put(row, k, cell)
            if cell != "":
                pen.truth.add(field, (m, s), own, heads[k])
    pen.foot()


def wide(firm: Firm) -> Table:
    """A row for each position."""
    pen, machine, station, fields = start(firm)
    named = not pen.machine_named and (firm.plan.machines > 1 or firm.rng.random() < 0.6)
    listed = [(f, c) for f in [*([machine] if named else []), station, *fields] for c in f.columns]
    in_columns(pen, listed, firm.owners)
    return pen.table()


def two_heads(firm: Firm) -> Table:
    """A row for each position under headings of two rows."""
    pen, machine, station, fields = start(firm)
    listed = [(f, c) for f in [*([] if pen.machine_named else [machine]), station, *fields] for c in f.columns]
    in_columns(pen, listed, firm.owners, short=True)
    return pen.table()


def machine_rows(firm: Firm) -> Table:
    """A row for each machine, the columns of both positions side by side."""
    pen, machine, _, fields = start(firm)
    style = firm.rng.choice(("{p} {w}", "{w} {p}", "{w} ({p})", "{p}: {w}", "{p} - {w}"))
    general = [machine, *(f for f in fields if not f.of_station())]
    own = [f for f in fields if f.of_station()]
    listed: list[tuple[Field, Column, int]] = [(f, c, -1) for f in general for c in f.columns]
    by_position = firm.rng.random() < 0.6
    both = [(f, c, s) for s in range(2) for f in own for c in f.columns]
    if not by_position:
        both = sorted(both, key=lambda x: own.index(x[0]))
    listed += [x for x in both if x[0].key != "noise"]
    grid, row = pen.grid, pen.grid.rows
    for k, (field, column, s) in enumerate(listed):
        word = column.word if s < 0 else style.format(p=firm.labels[s], w=column.word)
        text = pen.heading(Column(word, word, column.unit, {}, column.quantity))
        head = grid.put(row, k, text)
        for m in range(firm.plan.machines):
            own_cell = grid.put(row + 1 + m, k, pen.cell(column, (m, s)))
            pen.truth.add(field, (m, s), own_cell, [(head, text)])
    pen.foot()
    return pen.table()


def transposed(firm: Firm) -> Table:
    """A row for each parameter, a column for each position."""
    pen, machine, station, fields = start(firm)
    grid, first = pen.grid, 2 if firm.plan.place == "row" else 1
    row = grid.rows
    if firm.plan.machines > 1 or (not pen.machine_named and firm.rng.random() < 0.5):
        word = machine.columns[0].word
        at = grid.put(row, 0, word)
        for m, name in enumerate(firm.names):
            for s in range(2):
                pen.truth.add(machine, (m, -1), grid.put(row, first + 2 * m + s, name), [(at, word)])
        row += 1
    word = firm.word("c_par") if row == grid.rows else station.columns[0].word
    corner = grid.put(row, 0, word)
    if first == 2:
        grid.put(row, 1, firm.word("c_unit"))
    for k, (m, s) in enumerate(firm.owners):
        pen.truth.add(station, (m, s), grid.put(row, first + k, firm.labels[s]), [(corner, word)])
    once = firm.rng.random() < 0.5
    sections, last, heads = "sections" in firm.plan.notes, "", []
    for field in fields:
        side = field.group in ("shaft", "housing")
        if sections and field.group != last and field.key != "noise":
            names = {"shaft": "sh", "housing": "ho"}
            title = firm.word("g_" + names.get(field.group, field.group))
            heads, last = [(grid.put(grid.rows, 0, title), title)], field.group
        for column in field.columns:
            row = grid.rows
            text = pen.heading(column, sections and side and field.key not in ("smat", "hmat"))
            at = grid.put(row, 0, text)
            if first == 2:
                grid.put(row, 1, column.unit)
            for k, (m, s) in enumerate(firm.owners):
                if once and s == 1 and not field.of_station():
                    continue
                own = grid.put(row, first + k, pen.cell(column, (m, s)))
                pen.truth.add(field, (m, s), own, [*(heads if side else []), (at, text)])
    pen.foot()
    return pen.table()


def long_list(firm: Firm) -> Table:
    """A row for each value: position, parameter, value, unit, and the tolerance by itself where the firm has it so."""
    pen, machine, station, fields = start(firm)
    grid = pen.grid
    split = "column" in firm.plan.tolerance
    keys = ["c_par", "c_val", *(["c_tol"] if split else []), "c_unit"]
    words = [firm.word(k) for k in keys]
    at_station = firm.rng.random() < 0.5
    row = grid.line(station.columns[0].word, *words)
    stn_head = (grid.put(row, 0, station.columns[0].word), station.columns[0].word)
    fields = [*([] if pen.machine_named else [machine]), *fields]
    general = [f for f in fields if not f.of_station()]
    own = [f for f in fields if f.of_station() and f.key != "noise"]
    lines = [(f, (0, -1)) for f in general] + (
        [(f, (0, s)) for f in own for s in range(2)] if at_station else [(f, (0, s)) for s in range(2) for f in own]
    )
    everything = firm.rng.choice((firm.word("c_all"), "", ""))
    for field, owner in lines:
        column, row = field.columns[0], grid.rows
        label = firm.labels[owner[1]] if owner[1] >= 0 else everything
        where = grid.put(row, 0, label)
        if owner[1] >= 0:
            pen.truth.add(station, owner, where, [stn_head])
        name = grid.put(row, 1, column.word)
        value = grid.put(row, 2, column.cell(*owner))
        pen.truth.add(field, owner, value, [(name, column.word)])
        if split and field.tolerance:
            pen.truth.add(field, owner, grid.put(row, 3, field.tolerance[owner]), [(name, column.word)])
        grid.put(row, 2 + len(words) - 1, column.unit)
    pen.foot()
    return pen.table()


def seat_rows(firm: Firm) -> Table:
    """A row for each seat; what is of the machine stands in the title block."""
    pen, _, station, fields = start(firm, every=True)
    grid = pen.grid
    bearing = [f for f in fields if f.key in ("des", "d", "D", "clr", "tol")]
    sides = [[f for f in fields if f.group == g and f.key not in ("smat", "hmat")] for g in ("shaft", "housing")]
    noise = [f for f in fields if f.key == "noise"]
    lead = [station, *bearing]
    listed = [c for f in lead for c in f.columns]
    row = grid.rows
    heads = []
    for k, column in enumerate(listed):
        text = pen.heading(column)
        heads.append((grid.put(row, k, text), text))
    seat = firm.word("c_seat")
    heads.append((grid.put(row, len(listed), seat), seat))
    shorts = [c for f in sides[0] for c in f.columns]
    for k, column in enumerate([*shorts, *(c for f in noise for c in f.columns)]):
        text = pen.heading(column, short=True)
        heads.append((grid.put(row, len(listed) + 1 + k, text), text))
    for m, s in firm.owners:
        for side, group in enumerate(("sh", "ho")):
            row, k = row + 1, 0
            for field in lead:
                for column in field.columns:
                    pen.truth.add(field, (m, s), grid.put(row, k, pen.cell(column, (m, s))), [heads[k]])
                    k += 1
            word = firm.word("g_" + group)
            seat_at = (grid.put(row, k, word), word)
            for field in [*sides[side], *noise]:
                for column in field.columns:
                    k += 1
                    own = grid.put(row, k, pen.cell(column, (m, s)))
                    pen.truth.add(field, (m, s), own, [heads[k], seat_at])
    pen.foot()
    return pen.table()


LAYOUTS = {
    "wide": wide, "two heads": two_heads, "machine rows": machine_rows, "transposed": transposed,
    "long list": long_list, "seat rows": seat_rows, "form": form, "sheets": sheets,
    "json": lambda firm: json_forms.make(firm, parts),
}  # fmt: skip


def make(number: int) -> Table:
    """Table ``number`` of 1 to 60."""
    firm = Firm(number, PLANS[number - 1])
    return LAYOUTS[firm.plan.layout](firm)
