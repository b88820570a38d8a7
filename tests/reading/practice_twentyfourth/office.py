"""An office and how it writes a value; what is written is noted with the place where it stands.

A value stands in a template as ``{name}``, ``{name.field:unit}``; ``name`` is one of ``trade.SHORT``, ``machine`` or
``p`` (the position). ``field`` is a part of a size: ``n`` nominal, ``c`` class, ``u`` and ``l`` deviations, ``t`` the
same to both sides, ``max`` and ``min`` limits. The unit may end with the decimals at least shown (``mm.3``). A digit
before the name is a fixed position (``{0.bd}``); ``?`` before it says that the cell has to be asked about, ``+`` stands
between those that it could mean. ``{;a;b}`` are texts that say nothing of seats, in turn by position; ``{day}`` is a
day, ``{#}`` a running number.
"""

import random
import re
from collections.abc import Sequence
from dataclasses import dataclass, field

from practice.grammar import Expected, Size, Value
from practice.page import VOCABULARY

from practice_twentyfourth.trade import SHORT, Rotor

#: What one of the unit is in mm, N, kg and the other canonical units.
UNITS = {
    "µm": 0.001, "um": 0.001, "мкм": 0.001, "in": 25.4, "µin": 25.4e-6, "kN": 1000.0, "кН": 1000.0, "daN": 10.0,
    "lbf": 4.4482216152605, "lb": 0.45359237, "g": 0.001,
}  # fmt: skip
PLACES = {"in": 4, "lbf": 0, "lb": 2, "kN": 3, "кН": 3, "°F": 0}
VALUE = re.compile(r"\{([?~]?)(?:(\d)\.)?([A-Za-z0-9_+]+)(?:\.([a-z]+))?(?::([^{}]*))?\}|\{;([^{}]*)\}|\{#\}")


@dataclass(frozen=True)
class Mark:
    """What a cell tells: parameter, machine and position, part of a size, unit and decimals at least shown."""

    parameter: str
    m: int
    s: int
    field: str = "n"
    unit: str = ""
    least: int = 0
    verdict: str = "read"

    @property
    def first(self) -> str:
        """The parameter, of several the first."""
        return self.parameter.split("|")[0]


@dataclass
class Office:
    """How an office writes.

    ``file`` is the kind with separator and encoding, ``template`` what it writes, ``choices`` its words of choices,
    ``fits`` the classes that it uses, ``bearings`` those of each table, ``machines`` its machines, ``count`` how many
    stand in a table, ``comma`` the decimal sign, ``thousands`` what stands between groups of digits of large numbers,
    ``ragged`` says that rows end at their last cell, ``texts`` that numbers of JSON are texts.
    """

    language: str
    layout: str
    file: str
    machines: str
    positions: str
    bearings: str
    template: str
    choices: str = ""
    fits: str = "k5 j5 js5 m5/H6 H7 J6 K6"
    dwg: str = "0000-00"
    comma: bool = False
    thousands: str = ""
    count: int = 1
    sheet: str = "Sheet1"
    ragged: bool = False
    texts: bool = False
    rng: random.Random = field(default_factory=random.Random)
    edition: int = 0

    def drawing(self) -> str:
        """A number as its drawings have."""
        return re.sub("0", lambda _: str(self.rng.randint(1, 9)), self.dwg)

    def word(self, name: str, value: str) -> str:
        """The office's word of a choice; a text itself."""
        words = dict(part.strip().split("=") for part in self.choices.split(";") if part.strip())
        for key in (f"{name}.{value}", value):
            if key in words:
                return words[key]
        if VOCABULARY[name]["kind"] == "choice" and not value[:1].isupper():
            raise ValueError(f"{self.language}: no word of {name} {value}")
        return value


@dataclass
class Told:
    """The cells that tell a value, their headings, what of it they tell."""

    own: list[str] = field(default_factory=list)
    heads: dict[str, str] = field(default_factory=dict)
    marks: list[Mark] = field(default_factory=list)


class Truth:
    """What each cell tells, gathered while it is written."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        self.office = office
        self.rotors = rotors
        self.told: dict[tuple[int, int, str], Told] = {}
        self.running = 0

    def value(self, mark: Mark) -> Value:
        """The whole value that a cell tells of."""
        rotor = self.rotors[mark.m]
        return rotor.positions[mark.s] if mark.parameter == "station" else rotor.values[mark.first, mark.s]

    def factor(self, mark: Mark) -> float:
        """What one of the unit is in the canonical unit."""
        canonical = VOCABULARY[mark.first]["unit"]
        return UNITS.get(mark.unit, 1.0) / UNITS.get(canonical, 1.0) if mark.unit else 1.0

    def rounded(self, value: float, mark: Mark) -> float:
        """A number in the unit of the cell, with the decimals that it is written with."""
        if mark.unit == "µin":
            return min((8, 16, 32, 63, 125), key=lambda n: abs(n * self.factor(mark) - value))
        if mark.unit == "°F":
            return round(value * 1.8 + 32)
        return round(value / self.factor(mark), PLACES.get(mark.unit, 6))

    def back(self, value: float, mark: Mark) -> float:
        """What such a number says in the canonical unit."""
        shown = self.rounded(value, mark)
        return (shown - 32) / 1.8 if mark.unit == "°F" else shown * self.factor(mark)

    def digits(self, value: float, mark: Mark, least: int = 0) -> str:
        """The text of a number."""
        text = f"{self.rounded(value, mark):.6f}"
        least = max(least, mark.least)
        while text.endswith("0") and len(text.partition(".")[2]) > least:
            text = text[:-1]
        whole, _, rest = text.rstrip(".").partition(".")
        if self.office.thousands and len(whole) > 4:
            whole = f"{whole[:-3]}{self.office.thousands}{whole[-3:]}"
        return whole + ("," if self.office.comma else ".") * bool(rest) + rest

    def text(self, mark: Mark) -> str:
        """The text of what a cell tells."""
        value = self.value(mark)
        if mark.parameter == "station":
            return str(value)
        if isinstance(value, str):
            return self.office.word(mark.first, value)
        if not isinstance(value, Size):
            return self.digits(value, mark)
        fine = 4 if mark.unit == "in" else 0 if UNITS.get(mark.unit) == 0.001 else 3
        low, high = value.lower or 0.0, value.upper or 0.0
        if mark.field in ("max", "min"):
            end = high if mark.field == "max" else low
            return self.digits(value.nominal + end, mark, fine if mark.parameter != "radial_clearance" else 0)
        if mark.field in "ult":
            own = low if mark.field == "l" else high
            shown = self.digits(abs(own), mark, fine)
            sign = "" if mark.field == "t" else "-" if own < 0 else "+"
            return "0" if own == 0 else sign + shown
        return value.tolerance_class if mark.field == "c" else self.digits(value.nominal, mark)

    def fill(self, cell: str, m: int, s: int) -> tuple[str, list[Mark]]:
        """The text of a cell of a template, and what it tells."""
        marks: list[Mark] = []

        def one(found: re.Match[str]) -> str:
            flag, at, names, part, unit, texts = found.groups()
            if texts is not None:
                several = texts.split(";")
                return several[s % len(several)].strip()
            if names is None:
                self.running += 1
                return str(self.running)
            if names == "day":
                return str(self.office.rng.randint(10, 28))
            parameter = "station" if names == "p" else "|".join(SHORT.get(name, name) for name in names.split("+"))
            level = VOCABULARY[parameter.split("|")[0]]["level"]
            where = int(at) if at else s
            name, _, least = (unit or "").partition(".")
            mark = Mark(
                parameter, m, -1 if level == "machine" else where, part or "n", name, int(least or 0),
                {"?": "ask", "~": "either"}.get(flag, "read"),
            )  # fmt: skip
            marks.append(mark)
            return self.text(mark)

        return VALUE.sub(one, cell), marks

    def note(self, address: str, mark: Mark, heads: dict[str, str]) -> None:
        """A cell tells a value."""
        told = self.told.setdefault((mark.m, mark.s, mark.parameter), Told())
        if address not in told.own:
            told.own.append(address)
        told.marks.append(mark)
        told.heads.update(heads)

    def stated(self, marks: Sequence[Mark]) -> Value:
        """What cells state of a value, in canonical units."""
        value, first = self.value(marks[0]), marks[0]
        if isinstance(value, str):
            return value
        if not isinstance(value, Size):
            return self.back(value, first)
        by = {mark.field: mark for mark in marks}
        if "n" not in by:
            ends = [self.back(value.nominal + (d or 0.0), by["min"]) for d in (value.lower, value.upper)]
            return Size(ends[0], 0.0, ends[1] - ends[0], bare=True)
        if set(by) == {"n"}:
            return self.back(value.nominal, by["n"])
        nominal, deviation = self.back(value.nominal, by["n"]), by.get("u") or by.get("t")
        low: float | None = None
        high: float | None = None
        if deviation:
            low, high = (self.back(d or 0.0, deviation) for d in (value.lower, value.upper))
        elif "min" in by:
            ends = [self.back(value.nominal + (d or 0.0), by["min"]) for d in (value.lower, value.upper)]
            low, high = (round(end - nominal, 9) for end in ends)
        return Size(nominal, low, high, value.tolerance_class if "c" in by else "")

    def expected(self) -> tuple[Expected, ...]:
        """What a reader is expected to find."""
        told_by: dict[str, set[str]] = {}
        for (_, _, name), told in self.told.items():
            for address in told.own:
                told_by.setdefault(address, set()).add(name)
        found = []
        for (m, s, name), told in self.told.items():
            value = self.stated(told.marks)
            form = "text" if isinstance(value, str) else "number"
            beside = set().union(*(told_by[address] for address in told.own))
            if isinstance(value, Size):
                form = " ".join(sorted({mark.field for mark in told.marks}))
            if beside >= {"shaft_seat_diameter", "housing_seat_diameter"}:
                form = "fit pair column"
            if beside >= {"bore_diameter", "outside_diameter"}:
                form = "d x D x B in one cell"
            found.append(
                Expected(
                    m, s, name, value, told.marks[0].verdict, form,
                    (*told.own, *(a for a in told.heads if a not in told.own)),
                    tuple(dict.fromkeys(told.heads.values())), tuple(told.own),
                )
            )  # fmt: skip
        return tuple(found)
