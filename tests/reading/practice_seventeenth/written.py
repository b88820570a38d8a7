"""The seventeenth set: sixty firms, each with its layout, language, units, form of tolerances, title, encoding.

``make(number)`` draws the machines of a firm with a fixed seed and writes their meaning as the firm writes it; a number
beyond the set is another drawing of the same firms. All of it is from knowledge of the trade; no firm, product or
person is a real one.
"""

import random
from collections.abc import Callable
from dataclasses import replace

from practice.grammar import Table

from practice_seventeenth import firms_east, firms_en_de, firms_roman, lists, rows, trees
from practice_seventeenth.page import Sheet, Tree
from practice_seventeenth.trade import MACHINES, POSITIONS, machine

FIRMS = (*firms_en_de.OFFICES, *firms_roman.OFFICES, *firms_east.OFFICES)
FIRST, LAST = 1, len(FIRMS)
LAYOUTS: dict[str, Callable[..., Sheet | Tree]] = {
    f.__name__: f
    for f in (
        rows.position_rows, rows.machine_rows, rows.seat_rows, rows.feature_rows, rows.stacked, lists.blocks,
        lists.transposed, lists.long_rows, lists.cad, lists.parts_list, trees.nested, trees.attributes, trees.records,
    )
}  # fmt: skip


def make(number: int) -> Table:
    """The table of a firm.

    Parameters
    ----------
    number : int
        1 to 60 of the set.
    """
    rng = random.Random(f"seventeenth {number}")
    firm = replace(FIRMS[(number - 1) % LAST], rng=rng)
    pairs = POSITIONS[firm.language].split("|")
    positions = tuple((firm.positions or pairs[firm.pair % len(pairs)]).split(","))
    names = rng.sample(MACHINES[firm.language].split("|"), firm.machines)
    machines = [machine(rng, name, positions, firm.kind, firm.form) for name in names]
    sheet = LAYOUTS[firm.layout](firm, machines, **firm.more)
    kind, *rest = firm.file.split(" ")
    encoding, separator = "utf-8", ""
    if isinstance(sheet, Tree):
        content = sheet.bytes(encoding)
    elif kind == "xlsx":
        content = sheet.workbook("merge" in rest)
    else:
        separator, encoding = rest
        content = sheet.delimited(separator, encoding)
    return Table(
        seed=17000 + number,
        suffix="." + kind,
        content=content,
        machines=tuple(m.name for m in machines),
        stations=tuple(m.positions for m in machines),
        expected=sheet.truth.expected(firm, machines),
        implied={(m, s, name): value for m, one in enumerate(machines) for (s, name), value in one.implied.items()},
        kinds={
            "persona": f"{number} {firm.language} {firm.layout}", "language": firm.language, "layout": firm.layout,
            "tolerance": firm.form, "units": firm.units, "encoding": encoding, "separator": separator,
            "length unit": "in" if firm.inch else "mm",
        },
    )  # fmt: skip
