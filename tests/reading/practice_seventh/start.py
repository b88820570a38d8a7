"""How every table begins: all its fields, what is doubtful or foreign, and the title block."""

from .firm import Column, Field, Firm
from .pen import Pen
from .style import Num


def parts(firm: Firm) -> tuple[Field, Field, list[Field]]:
    """The names of machines and positions, and all other fields with the doubtful and the foreign ones."""
    names = {(m, -1): name for m, name in enumerate(firm.names)}
    labels = {(m, s): firm.labels[s] for m, s in firm.owners}
    mach, stn = firm.word("mach"), firm.word("stn")
    machine = Field("mach", "machine", "mach", [Column(mach, mach, "", dict(names))], dict(names), "text")
    station = Field("stn", "station", "brg", [Column(stn, stn, "", dict(labels))], dict(labels), "text")
    fields = firm.fields()
    doubt(firm, fields)
    noise = firm.noise(firm.rng.choice((1, 2, 2, 3, 4)))
    if firm.rng.random() < 0.5:
        return machine, station, [noise[0], *fields, *noise[1:]]
    return machine, station, [*fields, *noise]


def doubt(firm: Firm, fields: list[Field]) -> None:
    """In some tables something has to be asked: a heading without its side, a cell that leaves it open."""
    rng = firm.rng
    draw = rng.random()
    if draw < 0.22 and firm.plan.layout in ("wide", "machine rows", "transposed", "long list"):
        key = rng.choice(("Ra", "run", "fil"))
        pair = [f for f in fields if f.key == key]
        if len(pair) == 2:
            column = pair[0].columns[0]
            column.word = firm.word("x_" + key)
            pair[0].group = "op"
            pair[0].parameter += "|" + pair[1].parameter
            pair[0].verdicts = dict.fromkeys(pair[0].values, "ask")
            pair[0].form = "side not told"
            # after the columns of both sides: its neighbours do not tell the side either
            last = max(k for k, f in enumerate(fields) if f.group in ("shaft", "housing"))
            fields.insert(last + 1, pair[0])
            fields[:] = [f for k, f in enumerate(fields) if f is not pair[1] and (f is not pair[0] or k == last + 1)]
    elif draw < 0.45:
        chosen = rng.choice([f for f in fields if f.key in ("Ra", "Fr", "cyl", "sho", "dia", "Fa")])
        if chosen.key == "dia":
            return
        column = chosen.columns[0]
        owner = rng.choice(sorted(column.cells))
        cell = column.cells[owner]
        if not isinstance(cell, Num):
            return
        twice = Num(cell.value * 2, cell.quantity)
        if chosen.key in ("Fr", "Fa"):
            column.cells[owner], verdict = rng.choice(
                ((f"{firm.show(cell)} - {firm.show(twice)}", "ask"), (f"~{firm.show(cell)}", "either"))
            )
        else:
            column.cells[owner], verdict = rng.choice(
                (("?", "ask"), (f"{firm.show(cell)} / {firm.show(twice)}", "ask"), (f"({firm.show(cell)})", "either"))
            )
        if verdict == "ask" and column.cells[owner] == "?":
            chosen.form = "left open"
        chosen.verdicts[owner] = verdict


def start(firm: Firm, every: bool = False) -> tuple[Pen, Field, Field, list[Field]]:
    """Begin a sheet with its title block; the fields that are left for the table."""
    pen = Pen(firm)
    machine, station, fields = parts(firm)
    general = [f for f in fields if not f.of_station()]
    if firm.plan.machines == 1:
        chosen = general if every else [f for f in general if f.key in ("dwg", "rev") or firm.rng.random() < 0.15]
        named = every or firm.rng.random() < 0.6
        pen.machine_named = named
        pen.head([machine, *chosen] if named else chosen)
        fields = [f for f in fields if f not in chosen]
    else:
        pen.head([])
    return pen, machine, station, fields
