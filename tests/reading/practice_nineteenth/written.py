"""The nineteenth set: thirty offices, each with its words, order, units, title and file, two tables of each.

``make(number)`` draws the machines with a fixed seed and writes their meaning as the office writes it. Offices of even
and of odd numbers are others. All of it is from knowledge of the trade; no firm, product or person is a real one.
"""

import random
from collections.abc import Callable
from dataclasses import replace

from practice.grammar import Table

from practice_nineteenth import lists, offices_east, offices_en, offices_fr_it_es, offices_german, rows, trees
from practice_nineteenth.office import Office
from practice_nineteenth.sheet import Sheet, Tree
from practice_nineteenth.trade import rotor

ODD: tuple[Office, ...] = (*offices_en.ODD, *offices_german.ODD, *offices_fr_it_es.ODD, *offices_east.ODD)
EVEN: tuple[Office, ...] = (*offices_en.EVEN, *offices_german.EVEN, *offices_fr_it_es.EVEN, *offices_east.EVEN)
FIRST, LAST = 1, 60
LAYOUTS: dict[str, Callable[..., Sheet | Tree]] = {
    f.__name__: f
    for f in (
        rows.position_rows, rows.machine_rows, rows.seat_rows, lists.listing, lists.blocks, lists.transposed,
        trees.nested, trees.attributes,
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
    offices = ODD if number % 2 else EVEN
    edition, index = divmod((number - 1) // 2, len(offices))
    rng = random.Random(f"nineteenth {number}")
    office = replace(offices[index], rng=rng, edition=edition)
    names = office.machines.split(",")
    first = edition * office.count
    bearings, shaft_fits, housing_fits = office.bearing.split(";"), *office.fits.split("/")
    rotors = [
        rotor(
            rng, names[(first + k) % len(names)], office.drawing(), tuple(office.positions.split(",")),
            bearings[edition % len(bearings)], (shaft_fits, housing_fits),
        )
        for k in range(office.count)
    ]  # fmt: skip
    sheet = LAYOUTS[office.layout](office, rotors)
    kind, *rest = office.file.split(" ")
    separator, encoding = rest if len(rest) == 2 else ("", "utf-8")
    if isinstance(sheet, Tree):
        content = sheet.bytes(encoding)
    else:
        separator = {"tab": "\t"}.get(separator, separator)
        content = sheet.workbook() if kind == "xlsx" else sheet.delimited(separator, encoding)
    return Table(
        seed=19000 + number,
        suffix="." + kind,
        content=content,
        machines=tuple(str(r.values["machine", -1]) for r in rotors),
        stations=tuple(r.positions for r in rotors),
        expected=sheet.expected(),
        implied={(m, s, name): value for m, one in enumerate(rotors) for (s, name), value in one.implied.items()},
        kinds={
            "persona": f"{number} {office.language} {office.layout}", "language": office.language,
            "layout": office.kind or office.layout, "units": office.more.get("units", "heading"), "encoding": encoding,
            "separator": separator,
        },
    )  # fmt: skip
