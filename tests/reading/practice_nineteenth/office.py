"""An office: what it calls things, in which unit it writes them, and how a value's text looks.

What a column, a row or a key holds is written as ``Group > Name | parameter | unit | pattern``:

- the parameter is one of the vocabulary, with ``*`` for ``shaft`` or ``housing`` where the row says which; ``station``;
  ``part`` (the word of a seat), ``#`` (a running number) or ``-`` (says nothing of seats; the texts stand where the
  unit does, with ``;`` between); ``?`` before it: has to be asked about, and ``+`` between those that it could be;
- the unit is the word that the office uses, of sizes also that of deviations (``mm/µm``), with the decimals at least
  shown (``mm:2``);
- the pattern holds ``{n}`` number, nominal or text, ``{c}`` class, ``{u}`` and ``{l}`` deviations, ``{t}`` the same to
  both sides, ``{max}`` and ``{min}`` limits.

A line that begins with ``@`` and digits is one of these tables of the office only.
"""

import random
import re
from collections.abc import Iterable
from dataclasses import dataclass, field

from practice.grammar import Size, Value
from practice.page import VOCABULARY

from practice_nineteenth.trade import Rotor

#: What one of the unit is in mm, N, kg; of canonical units too.
UNITS = {
    "mm": 1.0, "мм": 1.0, "毫米": 1.0, "µm": 0.001, "um": 0.001, "мкм": 0.001, "in": 25.4, "µin": 25.4e-6, "N": 1.0,
    "Н": 1.0, "kN": 1000.0, "кН": 1000.0, "lbf": 4.4482216152605, "kg": 1.0, "кг": 1.0, "lb": 0.45359237, "g": 0.001,
}  # fmt: skip
PLACES = {"in": 4, "lbf": 0, "lb": 2}


@dataclass(frozen=True)
class Line:
    """What a column, a row or a key holds."""

    group: tuple[str, ...]
    name: str
    parameter: str = "-"
    unit: str = ""
    pattern: str = "{n}"
    verdict: str = "read"

    @property
    def units(self) -> tuple[str, str]:
        """Unit of the value and of its deviations, without decimals."""
        first, _, second = self.unit.partition("/") if "/" in self.unit and self.size else (self.unit, "", "")
        first = first.partition(":")[0]
        return first, second or first

    @property
    def size(self) -> bool:
        """Whether it holds a toleranced size."""
        return self.parameter.endswith("_seat_diameter")

    @property
    def least(self) -> int:
        """Decimals that are shown at least."""
        return int(self.unit.partition(":")[2].partition("/")[0] or 0)

    @property
    def whole(self) -> bool:
        """Whether it is of the machine, not of a position."""
        known = VOCABULARY.get(self.parameter.split("+")[0])
        return known is not None and known["level"] == "machine"

    @property
    def fields(self) -> list[str]:
        """What of a value the pattern shows."""
        return re.findall(r"\{(\w+)\}", self.pattern)


def lines(text: str, edition: int = 0) -> list[Line]:
    """The lines of an office's text that belong to one of its tables."""
    found = []
    for row in text.strip().splitlines():
        only = re.match(r"@(\d+) ", row.strip())
        if only and str(edition) not in only[1]:
            continue
        name, parameter, unit, pattern = ([p.strip() for p in row.split("|")] + ["", "", ""])[:4]
        if only:
            name = name.split(" ", 1)[1].strip()
        *group, name = (part.strip() for part in name.split(" > "))
        verdict = {"?": "ask", "~": "either"}.get(parameter[:1], "read")
        found.append(Line(tuple(group), name, parameter.lstrip("?~") or "-", unit, pattern or "{n}", verdict))
    return found


@dataclass
class Office:
    """How an office writes.

    ``file`` is the kind with separator and encoding, ``title`` and ``foot`` are lines of cells, ``choices`` its words
    of choices, ``fits`` the classes that it uses, ``bearing`` kind and suffix of each table, ``machines`` its machines,
    ``count`` how many stand in a table, ``more`` what its layout wants to know.
    """

    language: str
    layout: str
    file: str
    lines: str
    machines: str
    positions: str
    title: str = ""
    foot: str = ""
    choices: str = ""
    fits: str = "/"
    bearing: str = "ball -2Z"
    dwg: str = "0000-00"
    comma: bool = False
    count: int = 1
    kind: str = ""
    more: dict[str, str] = field(default_factory=dict)
    rng: random.Random = field(default_factory=random.Random)
    edition: int = 0

    def drawing(self) -> str:
        """A number as its drawings have."""
        return re.sub("0", lambda _: str(self.rng.randint(1, 9)), self.dwg)

    def factor(self, line: Line, unit: str) -> float:
        """What one of the unit is in the canonical unit of the line."""
        canonical = VOCABULARY[line.parameter.split("+")[0].replace("*", "shaft")]["unit"]
        return UNITS.get(unit, 1.0) / UNITS.get(canonical, 1.0)

    def snap(self, line: Line, value: float, unit: str) -> float:
        """A value as it is after being rounded to what is shown."""
        factor = self.factor(line, unit)
        if unit == "µin":
            return min((8, 16, 32, 63, 125), key=lambda n: abs(n * factor - value)) * factor
        return round(value / factor, PLACES.get(unit, 6)) * factor

    def number(self, line: Line, value: float, unit: str, least: int = 0) -> str:
        """A number in the unit, with the decimals and the decimal sign of the office."""
        shown = f"{self.snap(line, value, unit) / self.factor(line, unit):.{max(least, 5)}f}"
        while len(shown.partition(".")[2]) > least and shown.endswith("0"):
            shown = shown[:-1]
        shown = shown.rstrip(".")
        return shown.replace(".", ",") if self.comma else shown

    def signed(self, line: Line, value: float) -> str:
        """A deviation with its sign; of a zero none."""
        unit = line.units[1]
        text = self.number(line, abs(value), unit, 3 if UNITS.get(unit) == 1.0 else 0)
        return "0" if value == 0 else ("-" if value < 0 else "+") + text

    def text(self, rotor: Rotor, line: Line, s: int) -> str:
        """The text of a value."""
        name = line.parameter.split("+")[0]
        value = rotor.values[name, s]
        if isinstance(value, Size):
            unit = line.units[0]
            low, high = value.lower or 0.0, value.upper or 0.0
            three = 4 if unit == "in" else 3
            return line.pattern.format(
                n=self.number(line, value.nominal, unit, line.least), c=value.tolerance_class,
                u=self.signed(line, high), l=self.signed(line, low), t=self.signed(line, high).lstrip("+"),
                max=self.number(line, value.nominal + high, unit, three),
                min=self.number(line, value.nominal + low, unit, three),
            )  # fmt: skip
        if isinstance(value, str):
            return line.pattern.format(n=self.word(name, value))
        return line.pattern.format(n=self.number(line, value, line.units[0], line.least))

    def word(self, name: str, value: str) -> str:
        """The office's word of a choice; a text itself."""
        words = dict(part.strip().split("=") for part in self.choices.split(";") if part.strip())
        for key in (f"{name}.{value}", value):
            if key in words:
                return words[key]
        if VOCABULARY[name]["kind"] == "choice" and not value[:1].isupper():
            raise ValueError(f"no word of {name} {value}")
        return value

    def stated(self, rotor: Rotor, told: Iterable[Line], s: int) -> Value:
        """What the table states of a value that these lines tell, in canonical units."""
        told = list(told)
        value = rotor.values[told[0].parameter.split("+")[0], s]
        if isinstance(value, str):
            return value
        if not isinstance(value, Size):
            return self.snap(told[0], value, told[0].units[0])
        shown = {name for line in told for name in line.fields}
        low, high = value.lower, value.upper
        if not shown & {"u", "t", "max"}:
            low = high = None
        unit = next(line for line in told if set(line.fields) & {"n", "max"}).units[0]
        if "n" not in shown:
            ends = [self.snap(told[0], value.nominal + (d or 0.0), unit) for d in (value.lower, value.upper)]
            return Size(ends[0], 0.0, ends[1] - ends[0], bare=True)
        return Size(self.snap(told[0], value.nominal, unit), low, high, value.tolerance_class if "c" in shown else "")
