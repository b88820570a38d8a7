"""The twenty-fourth set: thirty offices, each with its words, order, units, title and file, two tables of each.

``make(number)`` draws the machines with a fixed seed and writes them as the office writes. Offices of even and of odd
numbers are others. All of it is from knowledge of the trade; no firm, product or person is a real one.
"""

import random
from dataclasses import replace

from practice.grammar import Table
from practice.of_offices import file_of, office_of, table_of

from practice_twentyfourth import offices_de, offices_en, offices_es, offices_fr, offices_it, offices_ja_ru, offices_zh
from practice_twentyfourth.office import Office
from practice_twentyfourth.sheet import Sheet
from practice_twentyfourth.trade import rotor
from practice_twentyfourth.tree import Tree

_ROOMS = (offices_en, offices_de, offices_fr, offices_it, offices_es, offices_ja_ru, offices_zh)
ODD: tuple[Office, ...] = tuple(office for room in _ROOMS for office in room.ODD)
EVEN: tuple[Office, ...] = tuple(office for room in _ROOMS for office in room.EVEN)
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
    rng = random.Random(f"twenty-fourth {number}")
    office = replace(plain, rng=rng, edition=edition)
    names, bearings = office.machines.split(","), office.bearings.split(";")
    on, _, into = office.fits.partition("/")
    rotors = [
        rotor(
            rng, names[(edition * office.count + k) % len(names)].strip(), office.drawing(),
            tuple(office.positions.split(",")), bearings[(edition + k) % len(bearings)], (on, into),
        )
        for k in range(office.count)
    ]  # fmt: skip
    kind, separator, encoding = file_of(office.file)
    if kind == "json":
        tree = Tree(office, rotors)
        content, expected = tree.content(encoding), tree.expected()
    else:
        sheet = Sheet(office, rotors)
        content, expected = sheet.content(kind, separator, encoding), sheet.expected()
    kinds = {
        "persona": f"{number} {office.language} {office.layout}", "language": office.language,
        "layout": office.layout, "encoding": encoding, "separator": separator,
    }  # fmt: skip
    return table_of(24000 + number, kind, content, rotors, expected, kinds)
