"""An office as it is written down: how its export is laid out, what each of its cells shows.

The files ``*.txt`` hold one office after another. Its first line is number, language, layout, file (``csv , utf-8``,
``txt tab cp1251``, ``xlsx``, ``json``). Then come its habits, one a line (``machines at brg fits comma ...``), and the
sections ``top``, ``body`` and ``foot``. A cell with a code in pointed brackets shows a value: ``<s.run@um>`` the
run-out of the shaft seat in µm, ``<s.seat "{n} {c}">`` its diameter and class, ``<nmax>`` the highest speed. Of codes:

- ``@um`` the unit, ``@mm.3`` with three decimals always; ``"..."`` how it is written, with ``{v}`` for a number and
  ``{n} {c} {u} {l} {t} {x} {m}`` for nominal, class, upper, lower and equal deviations, largest and smallest size;
- ``!1`` is not stated at the second position; ``1:`` before the code is the second position alone;
- `` = grease|Fett; oil bath|Ölbad`` are its values, each with its word, position by position; a
  word that says more than one thing is ``spring, spring_kind wave|Wellfeder``;
- ``?a|b = 65`` is a cell that can be meant in more than one way: it has to be asked about;
- ``~ = text; text`` is text of no meaning here.
"""

import re
from dataclasses import dataclass, field

CODE = re.compile(
    r'(?:(?P<at>\d+):)?(?P<name>[~?]?[\w.|]*)(?:@(?P<unit>[a-zA-Z]+)(?:\.(?P<places>\d))?)?'
    r'(?: "(?P<template>[^"]*)")?(?: !(?P<hole>\d))?(?: = (?P<values>.*))?'
)  # fmt: skip


@dataclass(frozen=True)
class Code:
    """What a cell shows."""

    name: str
    at: int = -1
    unit: str = ""
    places: int = -1
    template: str = ""
    hole: int = -1
    values: tuple[str, ...] = ()

    def of(self, side: str) -> "Code":
        """The same of a shaft or housing seat."""
        name = side + self.name[1:] if self.name.startswith("x.") else self.name
        return Code(name, self.at, self.unit, self.places, self.template, self.hole, self.values)


def code(text: str) -> Code:
    """Read a code.

    Raises
    ------
    ValueError
        If it is none.
    """
    found = CODE.fullmatch(text.strip())
    if found is None:
        raise ValueError(f"no code: {text}")
    return Code(
        found["name"],
        int(found["at"] or -1),
        found["unit"] or "",
        int(found["places"] or -1),
        found["template"] or "",
        int(found["hole"] or -1),
        tuple(v.strip() for v in (found["values"] or "").split(";") if v.strip()),
    )


@dataclass
class Office:
    """One export."""

    number: int
    language: str
    layout: str
    file: list[str]
    habits: dict[str, str] = field(default_factory=dict)
    sections: dict[str, list[str]] = field(default_factory=dict)

    def habit(self, name: str, absent: str = "") -> str:
        return self.habits.get(name, absent)


def office(text: str) -> Office:
    """An office from its lines."""
    first, *lines = text.rstrip().splitlines()
    number, language, layout, *file = first.split()
    found = Office(int(number), language, layout, file)
    section = ""
    for line in lines:
        if line.rstrip() in ("top:", "body:", "foot:"):
            section = line.strip()[:-1]
            found.sections[section] = []
        elif section:
            found.sections[section].append(line)
        elif line.strip():
            name, _, value = line.partition(":")
            found.habits[name.strip()] = value.strip()
    return found
