"""The twenty-fourth set: thirty offices, each with its words, order, units, title and file, two tables of each.

``make(number)`` draws the machines with a fixed seed and writes them as the office writes. Offices of even and of odd
numbers are others. All of it is from knowledge of the trade; no firm, product or person is a real one.
"""

import random
from dataclasses import replace

from practice.grammar import Table

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
    offices = ODD if number % 2 else EVEN
    edition, index = divmod((number - 1) // 2, len(offices))
    rng = random.Random(f"twenty-fourth {number}")
    office = replace(offices[index], rng=rng, edition=edition)
    names, bearings = office.machines.split(","), office.bearings.split(";")
    on, _, into = office.fits.partition("/")
    rotors = [
        rotor(
            rng, names[(edition * office.count + k) % len(names)].strip(), office.drawing(),
            tuple(office.positions.split(",")), bearings[(edition + k) % len(bearings)], (on, into),
        )
        for k in range(office.count)
    ]  # fmt: skip
    kind, *rest = office.file.split(" ")
    separator, encoding = ("", rest[0] if rest else "utf-8") if len(rest) < 2 else rest
    separator = {"tab": "\t"}.get(separator, separator)
    if kind == "json":
        tree = Tree(office, rotors)
        content, expected = tree.content(encoding), tree.expected()
    else:
        sheet = Sheet(office, rotors)
        content, expected = sheet.content(kind, separator, encoding), sheet.expected()
    return Table(
        seed=24000 + number,
        suffix="." + kind,
        content=content,
        machines=tuple(str(r.values["machine", -1]) for r in rotors),
        stations=tuple(r.positions for r in rotors),
        expected=expected,
        implied={(m, s, name): value for m, one in enumerate(rotors) for (s, name), value in one.implied.items()},
        kinds={
            "persona": f"{number} {office.language} {office.layout}", "language": office.language,
            "layout": office.layout, "encoding": encoding, "separator": separator,
        },
    )  # fmt: skip
