"""The twentieth set: sixty tables of twenty-four offices; an office's tables have all even or all odd numbers.

``make(number)`` draws the arrangements of an office with a fixed seed and fills the office's form with them; a number
beyond the set is another drawing of the same forms. All of it is from knowledge of the trade; no firm, product or
person is a real one.
"""

import random

from practice.grammar import Table

from practice_twentieth import office_list
from practice_twentieth.form import Grid, Tree
from practice_twentieth.office import Export, Office
from practice_twentieth.trade import draw

FIRST, LAST = 1, 60
OFFICES = office_list.OFFICES


def exports() -> list[tuple[int, Office, Export]]:
    """The office and the export of each number from 1: offices by turns on the odd and the even side."""
    sides: tuple[list[tuple[int, Office, Export]], ...] = ([], [])
    for k, office in enumerate(OFFICES):
        sides[office.side].extend((k, office, one) for one in office.exports)
    return [one for both in zip(*sides, strict=True) for one in both]


def make(number: int) -> Table:
    """The table of a number.

    Parameters
    ----------
    number : int
        1 to 60 of the set.
    """
    rng = random.Random(f"twentieth {number}")
    k, office, export = exports()[(number - 1) % LAST]
    positions = tuple(export.at.split(","))
    even = ".P" in str(export.form)
    names = rng.sample(office.machines.split("|"), export.count)
    machines = [draw(rng, name, positions, office.bearings.split("|"), even) for name in names]
    kind, _, rest = export.file.partition(" ")
    separator, _, encoding = rest.partition(" ")
    encoding = encoding or "utf-8"
    separator = "\t" if separator == "tab" else separator
    made = (
        Grid(office.style, machines, export.form)
        if isinstance(export.form, str)
        else Tree(office.style, machines, export.form)
    )
    expected = made.expected()
    form = next((e.form for e in expected if e.form.startswith("seat")), "")
    if any(e.parameter.startswith("spring_") for e in expected) or "preload_method" in export.also:
        for one in machines:
            one.implied |= {(s, "preload_method"): "spring" for s in range(len(positions))}
    if "axial_role" in export.also:  # its name says what a position is
        for one in machines:
            one.implied |= {(s, "axial_role"): one.values["role", s] for s in range(len(positions))}
    kinds = {
        "persona": f"{number} office {k + 1}", "office": str(k + 1), "language": office.language,
        "layout": export.layout, "tolerance": form, "units": office.units, "encoding": encoding,
        "separator": separator, "length unit": "in" if ":in" in str(export.form) else "mm",
    }  # fmt: skip
    return Table(
        seed=20000 + number,
        suffix="." + kind,
        content=made.content(kind, separator, encoding),
        machines=tuple(one.name for one in machines),
        stations=tuple(one.positions for one in machines),
        expected=expected,
        implied={(m, s, name): value for m, one in enumerate(machines) for (s, name), value in one.implied.items()},
        kinds=kinds,
    )
