"""An office: how it writes its tables, and what a place in its template says.

A template holds the text of a table with places in braces: ``{ss.n:mm:3}`` is the nominal of the shaft seat in mm with
at least three decimals. The short names stand in :data:`SHORT`; other names are those of the vocabulary. Of a size
``n`` is the nominal, ``c`` the class, ``u`` and ``l`` the deviations, ``t`` the same to both sides, ``max`` and ``min``
the limits. ``{2/ss.n}`` is of the second position, ``{0/lub}`` of all. ``?`` before a name: a reader has to ask, and
``+`` stands between the parameters that could be meant. ``{#}`` counts, ``{day}`` is a day, ``{~a;b}`` one of texts.
"""

import random
import re
from dataclasses import dataclass, field

from practice.grammar import Size, Value
from practice.page import VOCABULARY

from practice_twentythird.trade import Rotor

SHORT = {
    "m": "machine", "p": "station", "dwg": "drawing_number", "rev": "drawing_revision", "n": "speed_max",
    "nop": "speed_operating", "life": "required_life", "mass": "rotor_mass", "span": "bearing_span",
    "G": "balance_grade", "amb": "ambient_temperature", "smat": "shaft_material", "hmat": "housing_material",
    "ori": "shaft_orientation", "prel": "preload_force", "coax": "coaxiality_of_bores", "brg": "bearing_designation",
    "d": "bore_diameter", "D": "outside_diameter", "B": "ring_width", "C": "dynamic_rating", "C0": "static_rating",
    "typ": "bearing_type", "clr": "clearance_class", "tol": "tolerance_class", "lub": "lubrication",
    "visc": "base_oil_viscosity_40", "fr": "radial_load", "fa": "axial_load", "role": "axial_role",
    "ss": "shaft_seat_diameter", "hs": "housing_seat_diameter", "sra": "shaft_seat_roughness",
    "hra": "housing_seat_roughness", "scy": "shaft_seat_cylindricity", "hcy": "housing_seat_cylindricity",
    "sro": "shaft_seat_runout", "hro": "housing_seat_runout", "ssh": "shaft_shoulder_diameter",
    "hsh": "housing_shoulder_diameter", "ssr": "shaft_shoulder_runout", "hsr": "housing_shoulder_runout",
    "sfi": "shaft_fillet_radius", "hfi": "housing_fillet_radius", "od": "housing_outer_diameter",
}  # fmt: skip
PLACE = re.compile(r"\{(\??)(?:(\d)/)?([\w+]+)(?:\.(\w+))?(?::([^}:]*))?(?::(\d))?\}")
#: What one of the unit is in mm, N, kg; of canonical units too.
UNITS = {
    "mm": 1.0, "um": 0.001, "in": 25.4, "uin": 25.4e-6, "N": 1.0, "kN": 1000.0, "daN": 10.0, "lbf": 4.4482216152605,
    "kg": 1.0, "g": 0.001, "lb": 0.45359237,
}  # fmt: skip
PLACES = {"in": 4, "lbf": 1, "lb": 2}


@dataclass(frozen=True)
class Place:
    """What a place in a template says."""

    parameter: str
    part: str
    unit: str
    least: int
    verdict: str

    @property
    def first(self) -> str:
        """The parameter whose value is written."""
        return self.parameter.split("+")[0]

    @property
    def factor(self) -> float:
        """What one of the unit is in the canonical unit."""
        return UNITS[self.unit] / UNITS[VOCABULARY[self.first]["unit"]] if self.unit else 1.0

    def snapped(self, value: float) -> float:
        """A value as it is after being rounded to what is shown."""
        if self.unit == "uin":
            return min((8, 16, 32, 63), key=lambda n: abs(n * self.factor - value)) * self.factor
        return round(value / self.factor, PLACES.get(self.unit, 6)) * self.factor


def place(found: re.Match[str]) -> Place:
    """The place that a match in a template is."""
    ask, _, name, part, unit, least = found.groups()
    names = "+".join(SHORT.get(one, one) for one in name.split("+"))
    return Place(names, part or "", unit or "", int(least or 0), "ask" if ask else "read")


@dataclass
class Office:
    """How an office writes.

    ``file`` is the kind with separator and encoding, ``page`` its template, ``choices`` its words of choices, ``fits``
    the classes that it uses, ``bearing`` series and suffix of each table, ``count`` how many machines stand in a
    table. ``bare_point`` leaves out a zero before the point, ``texts`` writes cells of workbooks and leaves of JSON as
    texts, ``named`` are the keys of JSON that hold names.
    """

    language: str
    layout: str
    file: str
    page: str
    machines: str
    positions: str
    choices: str = ""
    fits: str = "/"
    bearing: str = "ball -2Z"
    dwg: str = "0000-00"
    comma: bool = False
    bare_point: bool = False
    texts: bool = False
    count: int = 1
    sheet: str = "Sheet1"
    named: str = ""
    rng: random.Random = field(default_factory=random.Random)
    edition: int = 0

    def drawing(self) -> str:
        """A number as its drawings have."""
        return re.sub("0", lambda _: str(self.rng.randint(1, 9)), self.dwg)

    def lines(self) -> list[str]:
        """The lines of the template that this table has; ``@1`` before one: only the second table."""
        found = []
        for row in self.page.strip("\n").splitlines():
            only = re.match(r"@(\d) ", row)
            if not only or int(only[1]) == self.edition:
                found.append(row[only.end() :] if only else row)
        return found

    def number(self, at: Place, value: float, least: int = 0) -> str:
        """A number in its unit, with the decimals and the decimal sign of the office."""
        least = max(least, at.least)
        shown = f"{at.snapped(value) / at.factor:.{max(least, 5)}f}"
        while len(shown.partition(".")[2]) > least and shown.endswith("0"):
            shown = shown[:-1]
        shown = shown.rstrip(".")
        if self.bare_point:
            shown = re.sub(r"^(-?)0\.", r"\1.", shown)
        return shown.replace(".", ",") if self.comma else shown

    def text(self, rotor: Rotor, at: Place, s: int) -> str:
        """The text of a place."""
        if at.first == "station":
            return rotor.positions[s]
        value = rotor.value(at.first, s)
        if isinstance(value, str):
            return self.word(at.first, value)
        if not isinstance(value, Size):
            return self.number(at, value)
        low, high = value.lower or 0.0, value.upper or 0.0
        if at.part in ("u", "l", "t"):
            own = low if at.part == "l" else high
            shown = self.number(at, abs(own), 3 if at.unit == "mm" else 0)
            sign = "" if at.part == "t" else "-" if own < 0 else "+"
            return "0" if own == 0 else sign + shown
        if at.part in ("max", "min"):
            return self.number(at, value.nominal + (high if at.part == "max" else low), 4 if at.unit == "in" else 3)
        return value.tolerance_class if at.part == "c" else self.number(at, value.nominal)

    def word(self, name: str, value: str) -> str:
        """The office's word of a choice; a text itself."""
        words = dict(part.strip().split("=") for part in self.choices.split(";") if part.strip())
        for key in (f"{name}.{value}", value):
            if key in words:
                return words[key]
        if VOCABULARY[name]["kind"] == "choice" and name not in ("clearance_class", "tolerance_class"):
            raise ValueError(f"no word of {name} {value}")
        return value

    @staticmethod
    def stated(rotor: Rotor, told: list[Place], s: int) -> Value:
        """What the table states of a value that these places tell, in canonical units."""
        if told[0].first == "station":
            return rotor.positions[s]
        value = rotor.value(told[0].first, s)
        if isinstance(value, str):
            return value
        if not isinstance(value, Size):
            return told[0].snapped(value)
        shown = {at.part for at in told}
        low, high = value.lower, value.upper
        if "n" not in shown:
            end = next(at for at in told if at.part == "max")
            least, most = (end.snapped(value.nominal + (d or 0.0)) for d in (low, high))
            return Size(least, 0.0, most - least, bare=True)
        if not shown & {"u", "t", "max"}:
            low = high = None
        nominal = next(at for at in told if at.part == "n").snapped(value.nominal)
        return Size(nominal, low, high, value.tolerance_class if "c" in shown else "")
