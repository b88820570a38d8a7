"""The twenty-sixth set: thirty offices, two tables of each, each with its template, words, units and file.

Machines are turbo compressors, milling spindles, canned pumps, gearboxes, dynamometers, centrifuges, alternators and
conveyor drums; offices are engineers with a sheet for each machine, exports of product data, suppliers of shafts and
housings, and keepers of fleets. All of it is from knowledge of the trade; no firm, product or person is a real one.
"""

import random
from dataclasses import replace

from practice.grammar import Table
from practice.of_offices import file_of, office_of, table_of
from practice_nineteenth.office import Office
from practice_nineteenth.sheet import Tree

from practice_twentysixth import engineering, engineering_west, fleets, product_data, suppliers
from practice_twentysixth.template import Document, Written
from practice_twentysixth.trade import fix, rotor

ROOMS = (engineering, engineering_west, product_data, suppliers, fleets)
ODD: tuple[Office, ...] = tuple(office for room in ROOMS for office in room.ODD)
EVEN: tuple[Office, ...] = tuple(office for room in ROOMS for office in room.EVEN)
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
    own, edition = office_of(number, ODD, EVEN)
    rng = random.Random(f"twentysixth {number}")
    office = replace(own, rng=rng, edition=edition)
    names, positions, bearings = office.machines.split(","), office.positions.split(";"), office.bearing.split(";")
    shaft_fits, housing_fits = office.fits.split("/")
    rotors = [
        rotor(
            rng, names[(edition * office.count + k) % len(names)], office.drawing(),
            tuple(positions[edition % len(positions)].split(",")), bearings[(edition + k) % len(bearings)],
            (shaft_fits, housing_fits),
        )
        for k in range(office.count)
    ]  # fmt: skip
    fix(rotors, office.more.get("fixed", ""))
    kind, separator, encoding = file_of(office.file)
    template = product_data.DOCUMENTS.get(office.lines)
    sheet = Written(office, rotors) if template is None else Document(office, rotors, template)
    if isinstance(sheet, Tree):
        content = sheet.bytes(encoding)
    else:
        content = sheet.workbook() if kind == "xlsx" else sheet.delimited(separator, encoding)
    kinds = {
        "persona": f"{number} {office.language} {office.layout}", "language": office.language, "layout": office.layout,
        "units": office.more.get("units", "heading"), "encoding": encoding, "separator": separator,
    }  # fmt: skip
    return table_of(26000 + number, kind, content, rotors, sheet.expected(), kinds)
