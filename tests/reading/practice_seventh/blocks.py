"""Forms in sections, and workbooks with a sheet for each position."""

from practice.grammar import Table

from .firm import Field, Firm
from .pen import Grid, Pen
from .start import start
from .style import Owner


def block(pen: Pen, fields: list[Field], owner: Owner, at: tuple[int, int], title: str, short: bool) -> int:
    """A section: its title and lines of key, value (and unit); the row after it."""
    firm, grid = pen.firm, pen.grid
    row, column_at = at
    heads = []
    if title:
        heads = [(grid.put(row, column_at, title), title)]
        row += 1
    for field in fields:
        for column in field.columns:
            text = pen.heading(column, short and field.key not in ("smat", "hmat"))
            name = grid.put(row, column_at, text)
            own = grid.put(row, column_at + 1, pen.cell(column, owner))
            if firm.plan.place == "row":
                grid.put(row, column_at + 2, column.unit)
            pen.truth.add(field, owner, own, [*heads, (name, text)])
            row += 1
    return row


def position(pen: Pen, station: Field, fields: list[Field], s: int, titled: bool, left: int = 0) -> None:
    """All of a position, in sections, from column ``left`` on."""
    firm, grid = pen.firm, pen.grid
    row = grid.rows
    if titled:
        word = station.columns[0].word
        at = grid.put(row, left, word)
        pen.truth.add(station, (0, s), grid.put(row, left + 1, firm.labels[s]), [(at, word)])
        row += 1
    groups = {g: [f for f in fields if f.group == g and f.of_station()] for g in ("brg", "op", "shaft", "housing")}
    row = block(pen, groups["brg"], (0, s), (row, left), firm.word("g_brg"), False)
    row = block(pen, groups["op"], (0, s), (row, left), firm.word("g_op") if groups["op"] else "", False)
    end = block(pen, groups["shaft"], (0, s), (row, left), firm.word("g_sh"), True)
    if "beside" in firm.plan.notes:
        block(pen, groups["housing"], (0, s), (row, left + 4), firm.word("g_ho"), True)
    else:
        block(pen, groups["housing"], (0, s), (end, left), firm.word("g_ho"), True)


def form(firm: Firm) -> Table:
    """A form: the machine, then each position in sections."""
    pen, machine, station, fields = start(firm)
    general = [f for f in fields if not f.of_station()]
    top = [*([] if pen.machine_named else [machine]), *general]
    row = block(pen, top, (0, -1), (pen.grid.rows, 0), firm.word("g_mach") if top else "", False)
    for s in range(2):
        if pen.grid.rows == row:
            pen.grid.skip()
        position(pen, station, fields, s, True)
        pen.grid.skip()
    pen.foot()
    return pen.table()


def sheets(firm: Firm) -> Table:
    """A workbook with a sheet for the machine and one for each position, named as the position."""
    pen, machine, station, fields = start(firm)
    pen.grid.name = firm.word("g_mach")
    general = [f for f in fields if not f.of_station()]
    block(pen, [*([] if pen.machine_named else [machine]), *general], (0, -1), (pen.grid.rows, 0), "", False)
    pen.foot()
    titled = firm.rng.random() < 0.6
    for s in range(2):
        pen.grids.append(Grid(firm.labels[s]))
        # behind a margin: an address without its sheet then means one cell of the machine or one of the positions
        position(pen, station, fields, s, titled, left=2)
    return pen.table()
