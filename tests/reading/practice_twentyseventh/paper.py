"""Sheets drawn as they look: cells divided by ``|``, a value where it stands, its meaning noted while it is written.

A value is written ``{parameter.field:unit,decimals}``, with the names of ``SHORT`` for the parameters:

- the field, of a toleranced size only: ``n`` nominal, ``c`` class, ``u`` and ``l`` deviations with sign, ``t`` the same
  to both sides, ``max`` and ``min`` limits; without one it is the number, the text, the word of a choice;
- the unit is ``mm`` or whatever ``UNITS`` knows (``u`` for µm of lengths); the decimals are those at least shown;
- ``2.`` before the parameter names the position, in a block of positions it is that of the block; ``?a,b`` are
  parameters between which the sheet does not tell: it has to be asked about;
- ``{#}`` counts, ``{day}`` and ``{pick a/b}`` draw a text that says nothing of seats.

A line that begins with ``# `` is one of headings; ``<`` there continues the cell to its left, ``^`` the one above it.
``@02 `` keeps a line to these tables of the office. Between ``[positions]`` or ``[machines]`` and ``[end]`` lines come
again for each.
"""

import random
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from practice.grammar import Expected, Size, Value
from practice.page import VOCABULARY

from practice_twentyseventh.machines import Machine

SHORT = {
    "m": "machine", "dwg": "drawing_number", "rev": "drawing_revision", "st": "station", "brg": "bearing_designation",
    "d": "bore_diameter", "D": "outside_diameter", "B": "ring_width", "r": "ring_chamfer", "C": "dynamic_rating",
    "C0": "static_rating", "Cu": "fatigue_load_limit", "type": "bearing_type", "clr": "clearance_class",
    "acc": "tolerance_class", "nlim": "limiting_speed", "nref": "reference_speed", "lub": "lubrication",
    "nu40": "base_oil_viscosity_40", "temp": "operating_temperature", "Fr": "radial_load", "Fa": "axial_load",
    "role": "axial_role", "nmax": "speed_max", "nop": "speed_operating", "life": "required_life",
    "span": "bearing_span", "mass": "rotor_mass", "G": "balance_grade", "pre": "preload_force",
    "coax": "coaxiality_of_bores", "smat": "shaft_material", "hmat": "housing_material", "axis": "shaft_orientation",
    "tamb": "ambient_temperature", "tsh": "shaft_temperature", "thg": "housing_temperature",
    **{
        short[0] + key: long.format(short)
        for short in ("shaft", "housing")
        for key, long in {
            "s": "{}_seat_diameter", "ra": "{}_seat_roughness", "cyl": "{}_seat_cylindricity", "run": "{}_seat_runout",
            "da": "{}_shoulder_diameter", "ax": "{}_shoulder_runout", "fil": "{}_fillet_radius",
        }.items()
    },
}  # fmt: skip
#: What one of the unit is in mm, µm of roughness, N, kg ... as the vocabulary has them.
UNITS = {"": 1.0, "mm": 1.0, "u": 0.001, "in": 25.4, "uin": 0.0254, "kN": 1000.0, "lbf": 4.4482216152605, "g": 0.001}
UNITS |= {"lb": 0.45359237, "k": 1000.0, "uin": 0.0254}
PLACES = {"in": 4, "lbf": 0, "lb": 2, "uin": 0}


@dataclass
class Office:
    """A firm's way of writing one kind of sheet.

    ``machines`` are names with the bearings of their positions (``Blower: 6206-2Z/C3 + NU206``), ``count`` how many
    stand in a table; ``page`` is the sheet, ``tree`` the JSON document; ``fits`` the classes to choose from, ``words``
    those of choices, ``fixed`` values of the machine that all of its tables have.
    """

    language: str
    kind: str
    file: str
    machines: tuple[str, ...]
    positions: str
    page: str = ""
    tree: object = None
    words: str = ""
    fits: tuple[str, str] = ("h5 js5 k5 k6 m5", "H6 H7 J7 K6 M7")
    drawing: str = "0000-00"
    comma: bool = False
    count: int = 1
    units: str = "heading"
    sheet: str = "Sheet1"
    label: str = ""
    fixed: dict[str, str] = field(default_factory=dict)


@dataclass(frozen=True)
class Said:
    """A value as a cell says it: parameters, field, unit, decimals."""

    position: int | None
    names: tuple[str, ...]
    field: str
    unit: str
    least: int
    ask: bool

    @property
    def whole(self) -> bool:
        """Whether it is of the machine, not of a position."""
        return self.names[0] != "station" and VOCABULARY[self.names[0]]["level"] == "machine"


_VALUE = re.compile(r"\{(?:(\d)\.)?(\??)([\w,]+?)(?:\.(n|c|u|l|t|max|min))?(?::(\w*)(?:,(\d))?)?\}")


@dataclass
class Notes:
    """The cells that say a value, what they say of it, and the words around them."""

    own: list[str] = field(default_factory=list)
    heads: dict[str, str] = field(default_factory=dict)
    said: list[Said] = field(default_factory=list)


class Writer:
    """Texts of an office's values, and the meaning of what has been written."""

    def __init__(self, office: Office, machines: list[Machine], rng: random.Random) -> None:
        self.office, self.machines, self.rng = office, machines, rng
        self.notes: dict[tuple[int, int, tuple[str, ...]], Notes] = {}
        self.words = dict(part.strip().split("=") for part in office.words.split(";") if part.strip())
        self.counted = 0

    def fill(self, text: str, m: int, s: int) -> tuple[str, list[tuple[int, Said]]]:
        """A cell's text with its values written, and what of which position it says."""
        told: list[tuple[int, Said]] = []

        def drawn(found: re.Match[str]) -> str:
            self.counted += found[0] == "{#}"
            if found[0] == "{#}":
                return str(self.counted)
            return str(self.rng.randint(10, 28)) if found[0] == "{day}" else self.rng.choice(found[1].split("/"))

        def written(found: re.Match[str]) -> str:
            names = tuple(SHORT.get(name, name) for name in found[3].split(","))
            said = Said(None, names, found[4] or "", found[5] or "", int(found[6] or 0), bool(found[2]))
            where = -1 if said.whole else int(found[1]) - 1 if found[1] else s
            told.append((where, said))
            return self.text(self.value(m, where, names[0]), said)

        text = re.sub(r"\{(?:#|day|pick ([^}]*))\}", drawn, text)
        return _VALUE.sub(written, text), told

    def value(self, m: int, s: int, name: str) -> Value:
        """A value of a machine or of a position."""
        return self.machines[m].positions[s] if name == "station" else self.machines[m].values[name, s]

    def number(self, value: float, unit: str, least: int = 0) -> str:
        """A number in the unit, with the decimals and the decimal sign of the office."""
        shown = f"{self.snapped(value, unit) / UNITS[unit]:.{max(least, PLACES.get(unit, 4))}f}"
        while len(shown.partition(".")[2]) > least and shown.endswith("0"):
            shown = shown[:-1]
        return shown.rstrip(".").replace(".", "," if self.office.comma else ".")

    def snapped(self, value: float, unit: str) -> float:
        """A value as its cell shows it."""
        if unit == "uin":
            return min((8, 16, 32, 63, 125), key=lambda n: abs(n * UNITS[unit] - value)) * UNITS[unit]
        return round(value / UNITS[unit], PLACES.get(unit, 6)) * UNITS[unit]

    def text(self, value: Value, said: Said) -> str:
        """The text of a value."""
        name = said.names[0]
        if isinstance(value, str):
            for key in (f"{name}.{value}", value):
                if key in self.words:
                    return self.words[key]
            if name != "station" and VOCABULARY[name]["kind"] == "choice" and not name.endswith("_class"):
                raise ValueError(f"no word of {name} {value}")
            return value
        if not isinstance(value, Size):
            return self.number(value, said.unit, said.least)
        low, high = value.lower or 0.0, value.upper or 0.0
        three = {"in": 4, "u": 0}.get(said.unit, 3)
        if said.field in ("u", "l"):
            one = high if said.field == "u" else low
            return ("+" if one > 0 else "-" if one < 0 else "") + (
                self.number(abs(one), said.unit, three) if one else "0"
            )
        if said.field in ("max", "min"):
            return self.number(value.nominal + (high if said.field == "max" else low), said.unit, three)
        if said.field == "t":
            return self.number(high, said.unit, three)
        return value.tolerance_class if said.field == "c" else self.number(value.nominal, said.unit, said.least)

    def note(self, m: int, where: int, said: Said, address: str, heads: dict[str, str]) -> None:
        """A cell says a value."""
        own = self.notes.setdefault((m, where, said.names), Notes())
        if address not in own.own:
            own.own.append(address)
        own.said.append(said)
        own.heads.update(heads)

    def expected(self) -> tuple[Expected, ...]:
        """What a reader is expected to find."""
        return tuple(self._expected(*key, notes) for key, notes in self.notes.items())

    def _expected(self, m: int, s: int, names: tuple[str, ...], notes: Notes) -> Expected:
        value = self._stated(self.value(m, s, names[0]), notes.said)
        form = "text" if isinstance(value, str) else "number"
        if isinstance(value, Size):
            form = " ".join(sorted({said.field for said in notes.said}))
        verdict = "ask" if notes.said[0].ask else "read"
        cells = (*notes.own, *(a for a in notes.heads if a not in notes.own))
        words = tuple(dict.fromkeys(notes.heads.values()))
        return Expected(m, s, "|".join(names), value, verdict, form, cells, words, tuple(notes.own))

    def _stated(self, value: Value, several: list[Said]) -> Value:
        """What these cells state of a value, in canonical units."""
        if isinstance(value, str):
            return value
        if not isinstance(value, Size):
            return self.snapped(value, several[0].unit)
        fields = {said.field for said in several}
        unit = next(said.unit for said in several if said.field in ("n", "max"))
        low, high = (value.lower or 0.0, value.upper or 0.0)
        if "n" not in fields:
            ends = [self.snapped(value.nominal + one, unit) for one in (low, high)]
            return Size(ends[0], 0.0, ends[1] - ends[0], bare=True)
        nominal = self.snapped(value.nominal, unit)
        limited = bool(fields & {"u", "t", "max"})
        tolerance_class = value.tolerance_class if "c" in fields else ""
        return Size(nominal, low, high, tolerance_class) if limited else Size(nominal, None, None, tolerance_class)


def drawn_lines(text: str, edition: int, machines: list[Machine]) -> Iterator[tuple[str, int, int]]:
    """The lines of a page for one table, with the machine and the position that each is of."""
    rows = []
    for row in text.strip("\n").splitlines():
        only = re.match(r"@(\d+) ", row)
        if not only or str(edition) in only[1]:
            rows.append(row[only.end() :] if only else row)
    yield from _again(rows, [(0, 0)], machines)


def _again(rows: list[str], at: Iterable[tuple[int, int]], machines: list[Machine]) -> Iterator[tuple[str, int, int]]:
    for m, s in at:
        k = 0
        while k < len(rows):
            block = re.fullmatch(r"\[(positions|machines)\]", rows[k].strip())
            if not block:
                yield rows[k], m, s
                k += 1
                continue
            depth, end = 1, k
            while depth:
                end += 1
                depth += {"[positions]": 1, "[machines]": 1, "[end]": -1}.get(rows[end].strip(), 0)
            several = [(m, p) for p in range(len(machines[m].positions))]
            if block[1] == "machines":
                several = [(other, 0) for other in range(len(machines))]
            yield from _again(rows[k + 1 : end], several, machines)
            k = end + 1
