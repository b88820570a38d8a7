"""The twentyfirst set: thirty offices, two tables of each; offices of even and of odd numbers are others.

``make(number)`` draws machines with a fixed seed and fills the picture of the office with them. All of it is from
knowledge of the trade; no firm, product or person is a real one.
"""

import random
import re

from practice.bearings import follows
from practice.grammar import Table

from practice_twentyfirst import offices_de, offices_east, offices_en, offices_fr, offices_it_es, offices_ja
from practice_twentyfirst.machines import machine
from practice_twentyfirst.marks import Office
from practice_twentyfirst.pictures import Grid, Tree

ROOMS = (offices_en, offices_de, offices_fr, offices_it_es, offices_ja, offices_east)
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
    offices = ODD if number % 2 else EVEN
    edition, index = divmod((number - 1) // 2, len(offices))
    office = offices[index]
    rng = random.Random(f"twentyfirst {number}")
    names, bearings = office.machines.split(","), office.bearing.split(";")
    machines = [
        machine(
            rng, names[(edition * office.count + k) % len(names)].strip(),
            re.sub("0", lambda _: str(rng.randint(1, 9)), office.number), tuple(office.positions.split(",")),
            bearings[edition % len(bearings)], office.fits,
        )
        for k in range(office.count)
    ]  # fmt: skip
    picture = (Tree if office.file.startswith("json") else Grid)(office, machines, rng, edition)
    picture.fill()
    kind, *rest = office.file.split(" ")
    expected = picture.expected()
    implied = {
        (e.machine, s, name): value
        for e in expected
        if e.parameter == "bearing_designation"
        for s in ([e.station] if e.station >= 0 else range(len(machines[e.machine].positions)))
        for name, value in follows(str(e.value)).items()
    }
    roles = {"Festlager": "locating", "Loslager": "floating"}
    implied |= {
        (m, s, "axial_role"): roles[name]
        for m, one in enumerate(machines)
        for s, name in enumerate(one.positions)
        if name in roles
    }
    return Table(
        seed=21000 + number,
        suffix="." + kind,
        content=picture.content(),
        machines=tuple(str(one.values["machine", -1]) for one in machines),
        stations=tuple(one.positions for one in machines),
        expected=expected,
        implied=implied,
        kinds={
            "persona": f"{number} {office.language} {office.layout}", "language": office.language,
            "layout": office.layout, "encoding": rest[-1] if rest else "utf-8",
            "separator": {"tab": "\t"}.get(rest[0], rest[0]) if len(rest) == 2 else "",
        },
    )  # fmt: skip
