"""The twenty-third set: thirty offices, each with its words, order, units, title and file, two tables of each.

``make(number)`` draws the machines with a fixed seed and writes their meaning as the office writes it. Offices of even
and of odd numbers are others. All of it is from knowledge of the trade; no firm, product or person is a real one.
"""

import random
from dataclasses import replace

from practice.grammar import Table
from practice.of_offices import file_of, office_of, table_of

from practice_twentythird import offices_east, offices_en, offices_fr_it_es, offices_german
from practice_twentythird.office import Office
from practice_twentythird.sheet import Sheet, Tree
from practice_twentythird.trade import rotor

MODULES = (offices_en, offices_german, offices_fr_it_es, offices_east)
ODD: tuple[Office, ...] = tuple(office for module in MODULES for office in module.ODD)
EVEN: tuple[Office, ...] = tuple(office for module in MODULES for office in module.EVEN)
FIRST, LAST = 1, 60


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
    plain, edition = office_of(number, ODD, EVEN)
    office = replace(plain, rng=random.Random(f"twenty-third {number}"), edition=edition)
    names = office.machines.split(",")
    bearings, (shaft_fits, housing_fits) = office.bearing.split(";"), office.fits.split("/")
    rotors = [
        rotor(
            office.rng, names[(edition * office.count + k) % len(names)], office.drawing(),
            tuple(office.positions.split(",")), bearings[edition % len(bearings)], (shaft_fits, housing_fits),
        )
        for k in range(office.count)
    ]  # fmt: skip
    kind, separator, encoding = file_of(office.file)
    made: Sheet | Tree = Tree(office, rotors) if kind == "json" else Sheet(office, rotors)
    if isinstance(made, Tree):
        content = made.bytes(encoding)
    else:
        content = made.workbook() if kind == "xlsx" else made.delimited(separator, encoding)
    kinds = {
        "persona": f"{number} {office.language} {office.layout}", "language": office.language,
        "layout": office.layout, "encoding": encoding, "separator": separator,
    }  # fmt: skip
    return table_of(23000 + number, kind, content, rotors, made.expected(), kinds)
