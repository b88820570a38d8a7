"""The twenty-seventh set: twenty-four offices that draw their sheets by hand, export them or send them to customers.

``make(number)`` draws the machines with a fixed seed and writes their meaning as the office writes it. Offices of even
and of odd numbers are others. All of it is from knowledge of the trade; no firm, product or person is a real one.
"""

import random
import re

from practice.grammar import Table
from practice.of_offices import file_of, office_of, table_of

from practice_twentyseventh import offices_en, offices_fr_it_es, offices_german, offices_ja_zh, offices_ru
from practice_twentyseventh.files import Document, Grid
from practice_twentyseventh.machines import machine
from practice_twentyseventh.paper import Office

_ALL = (offices_ru, offices_ja_zh, offices_fr_it_es, offices_german, offices_en)
ODD: tuple[Office, ...] = tuple(office for module in _ALL for office in module.ODD)
EVEN: tuple[Office, ...] = tuple(office for module in _ALL for office in module.EVEN)
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
    office, edition = office_of(number, ODD, EVEN)
    rng = random.Random(f"twenty-seventh {number}")
    machines = []
    for k in range(office.count):
        name, _, bearings = office.machines[(edition * office.count + k) % len(office.machines)].partition(": ")
        drawing = re.sub("0", lambda _: str(rng.randint(1, 9)), office.drawing)
        positions = tuple(office.positions.split(","))
        one = machine(rng, name, drawing, positions, bearings.split(" + "), office.fits)
        one.values |= {(key, -1): value for key, value in office.fixed.items()}
        machines.append(one)
    kind, separator, encoding = file_of(office.file)
    if kind == "json":
        tree = Document(office, machines, rng, edition)
        content, expected = tree.bytes(encoding), tree.expected()
    else:
        grid = Grid(office, machines, rng, edition)
        content = grid.workbook() if kind == "xlsx" else grid.delimited(separator, encoding)
        expected = grid.expected()
    kinds = {
        "persona": f"{number} {office.language} {office.kind}", "language": office.language, "layout": office.kind,
        "units": office.units, "encoding": encoding, "separator": separator,
    }  # fmt: skip
    return table_of(27000 + number, kind, content, machines, expected, kinds)
