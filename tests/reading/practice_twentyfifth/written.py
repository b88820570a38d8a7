"""The twenty-fifth set: thirty offices, each with its words, order, units, title and file, two tables of each.

``make(number)`` draws the machines with a fixed seed and writes their meaning as the office writes it. Offices of even
and of odd numbers are others. All of it is from knowledge of the trade; no firm, product or person is a real one.
"""

import random
from collections.abc import Callable
from dataclasses import replace

from practice.grammar import Table
from practice.of_offices import file_of, office_of, table_of
from practice_nineteenth import lists, rows, trees
from practice_nineteenth.office import Office
from practice_nineteenth.sheet import Sheet, Tree

from practice_twentyfifth import layouts, offices_cjk, offices_de, offices_en, offices_south
from practice_twentyfifth.machines import machine

ODD: tuple[Office, ...] = (*offices_en.ODD, *offices_de.ODD, *offices_south.ODD, *offices_cjk.ODD)
EVEN: tuple[Office, ...] = (*offices_cjk.EVEN, *offices_south.EVEN, *offices_de.EVEN, *offices_en.EVEN)
FIRST, LAST = 1, 60
LAYOUTS: dict[str, Callable[..., Sheet | Tree]] = {
    f.__name__: f
    for f in (
        rows.position_rows, rows.machine_rows, rows.seat_rows, lists.listing, lists.blocks, lists.transposed,
        trees.nested, trees.attributes, layouts.sections, layouts.exported, layouts.crossed, layouts.chapters,
        layouts.records,
    )
}  # fmt: skip


def make(number: int) -> Table:
    """The table of a number.

    Parameters
    ----------
    number : int
        1 to 60 of the set.

    Returns
    -------
    Table
        Bytes and meaning.
    """
    own, edition = office_of(number, ODD, EVEN)
    rng = random.Random(f"twenty-fifth {number}")
    office = replace(own, rng=rng, edition=edition)
    names = office.machines.split(",")
    bearings, shaft_fits, housing_fits = office.bearing.split(";"), *office.fits.split("/")
    rotors = [
        machine(
            rng, names[(edition * office.count + k) % len(names)], office.drawing(), tuple(office.positions.split(",")),
            bearings[edition % len(bearings)], (shaft_fits, housing_fits),
        )
        for k in range(office.count)
    ]  # fmt: skip
    sheet = LAYOUTS[office.layout](office, rotors)
    if any(name.startswith("spring_") for _, _, name in sheet.told):
        for one in rotors:
            one.implied |= {(s, "preload_method"): "spring" for s in range(len(one.positions))}
    kind, separator, encoding = file_of(office.file)
    if isinstance(sheet, Tree):
        content = sheet.bytes(encoding)
    else:
        content = sheet.workbook() if kind == "xlsx" else sheet.delimited(separator, encoding)
    kinds = {
        "persona": f"{number} {office.language} {office.layout}", "language": office.language,
        "layout": office.kind or office.layout, "units": office.more.get("units", "heading"), "encoding": encoding,
        "separator": separator,
    }  # fmt: skip
    return table_of(25000 + number, kind, content, rotors, sheet.expected(), kinds)
