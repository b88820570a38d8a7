"""The eighteenth set: sixty tables of twenty-four offices; an office's tables have all even or all odd numbers.

``make(number)`` draws the rotors of an office with a fixed seed and writes their meaning as the office writes it; a
number beyond the set is another drawing of the same exports. All of it is from knowledge of the trade; no firm, product
or person is a real one.
"""

import random
from collections.abc import Callable
from dataclasses import fields, replace
from typing import Any

from practice.grammar import Table

from practice_eighteenth import lists, offices_cyrillic_east, offices_en_de, offices_roman, rows, trees
from practice_eighteenth.office import Export, Office
from practice_eighteenth.page import Sheet, Tree
from practice_eighteenth.trade import rotor

FIRST, LAST = 1, 60
OFFICES = (*offices_en_de.OFFICES, *offices_roman.OFFICES, *offices_cyrillic_east.OFFICES)
SHEETS: dict[str, Callable[..., None]] = {
    f.__name__: f
    for f in (
        rows.positions, rows.machines, rows.seats, rows.features, lists.blocks, lists.down, lists.crossed, lists.long,
        lists.model, lists.parts,
    )
}  # fmt: skip
TREES: dict[str, Callable[..., None]] = {f.__name__: f for f in (trees.nested, trees.attributes, trees.records)}


def exports() -> list[tuple[int, Office, Export]]:
    """The office and the export of each number from 1: offices by turns on the odd and the even side."""
    sides: tuple[list[tuple[int, Office, Export]], ...] = ([], [])
    for k, office in enumerate(OFFICES):
        sides[k % 2].extend((k, office, one) for one in office.exports)
    return [one for both in zip(*sides, strict=True) for one in both]


def make(number: int) -> Table:
    """The table of a number.

    Parameters
    ----------
    number : int
        1 to 60 of the set.
    """
    rng = random.Random(f"eighteenth {number}")
    k, plain, export = exports()[(number - 1) % LAST]
    more = dict(export.more)
    style = {f.name: more.pop(f.name) for f in fields(Office) if f.name in more}
    style["words"] = plain.words | style.get("words", {})
    count = more.pop("rotors", 1)
    office = replace(plain, rng=rng, **style)
    positions = tuple(export.at.split(","))
    names = rng.sample(office.words["names"].split("|"), count)
    choice = office.words["bearings"].split("|")
    rotors = [rotor(rng, name, positions, choice, office.form.startswith("plus minus")) for name in names]
    kind, _, rest = export.file.partition(" ")
    separator, _, encoding = rest.partition(" ")
    encoding = encoding or "utf-8"
    made: Sheet | Tree
    if export.layout in TREES:
        made = Tree(office, rotors)
        TREES[export.layout](made, **more)
    else:
        made = Sheet(office, rotors)
        SHEETS[export.layout](made, **more)
    for also in filter(None, office.words.get("also", "").split("|")):  # what a heading says beside its value
        name, _, value = also.partition(":")
        for one in rotors:
            one.implied |= {(s, name): value for s in range(len(positions))}
    kinds: dict[str, Any] = {
        "persona": f"{number} {k + 1} {export.layout}", "office": str(k + 1), "language": office.language,
        "layout": export.layout, "tolerance": office.form, "units": office.units, "encoding": encoding,
        "separator": "\t" if separator == "tab" else separator, "length unit": "in" if office.inch else "mm",
    }  # fmt: skip
    return Table(
        seed=18000 + number,
        suffix="." + kind,
        content=made.bytes(kind, kinds["separator"], encoding),
        machines=tuple(one.name for one in rotors),
        stations=tuple(one.positions for one in rotors),
        expected=made.expected(),
        implied={(m, s, name): value for m, one in enumerate(rotors) for (s, name), value in one.implied.items()},
        kinds=kinds,
    )
