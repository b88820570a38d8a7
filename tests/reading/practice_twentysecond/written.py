"""The twenty-second set: thirty offices, each with its form, words, order, units and file, two tables of each.

``make(number)`` draws the machines with a fixed seed and fills the office's form. Offices of even and of odd numbers
are others. All of it is from knowledge of the trade; no firm, product or person is a real one.
"""

import random
from dataclasses import replace

from practice.grammar import Table
from practice.of_offices import file_of, office_of, table_of
from practice_nineteenth.sheet import Tree

from practice_twentysecond import offices_en, offices_es_ru, offices_fr_it, offices_german, offices_ja_zh
from practice_twentysecond.firm import Firm
from practice_twentysecond.forms import Form, grown
from practice_twentysecond.rotors import rotor

MODULES = (offices_en, offices_german, offices_fr_it, offices_es_ru, offices_ja_zh)
ODD: tuple[Firm, ...] = tuple(firm for module in MODULES for firm in module.ODD)
EVEN: tuple[Firm, ...] = tuple(firm for module in MODULES for firm in module.EVEN)
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
    firm = replace(plain, rng=random.Random(f"twentysecond {number}"), edition=edition)
    names, fits = firm.machines.split(","), firm.fits.partition("/")
    bearings, positions = firm.bearing.split(";"), firm.positions.split(";")
    rotors = [
        rotor(
            firm.rng, names[(edition * firm.count + k) % len(names)], firm.drawing(),
            tuple(positions[edition % len(positions)].split(",")), bearings[edition % len(bearings)],
            (fits[0], fits[2]),
        )
        for k in range(firm.count)
    ]  # fmt: skip
    kind, separator, encoding = file_of(firm.file)
    sheet = grown(firm, rotors) if kind == "json" else Form(firm, rotors).write()
    if isinstance(sheet, Tree):
        content = sheet.bytes(encoding)
    else:
        content = sheet.workbook() if kind == "xlsx" else sheet.delimited(separator, encoding)
    kinds = {
        "persona": f"{number} {firm.language} {firm.layout}", "language": firm.language, "layout": firm.layout,
        "units": firm.more.get("units", "heading"), "encoding": encoding, "separator": separator,
    }  # fmt: skip
    return table_of(22000 + number, kind, content, rotors, sheet.expected(), kinds)
