"""An office of a machine builder: its form with places for values, and the short names of those places.

A place is ``{Sd.n:mm}``: what it holds, of a size which part (``n`` nominal, ``c`` class, ``u`` and ``l`` deviations,
``t`` the same to both sides, ``max`` and ``min`` limits), the unit and after a colon the decimals shown at least.
``{2.Fr:N}`` is of the second position, ``?`` before the name: has to be asked about, ``+`` between those that it could
be. ``{#}`` is a running number, ``{day}`` a day, ``{=a;b}`` one text for each position.
"""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from practice.grammar import Size, Value
from practice_nineteenth.office import Line, Office
from practice_nineteenth.trade import Rotor

SHORT = {
    "P": "station", "mach": "machine", "dwg": "drawing_number", "rev": "drawing_revision", "nmax": "speed_max",
    "nop": "speed_operating", "life": "required_life", "mass": "rotor_mass", "span": "bearing_span",
    "G": "balance_grade", "tamb": "ambient_temperature", "thou": "housing_temperature", "tmax": "temperature_max",
    "mats": "shaft_material", "math": "housing_material", "ori": "shaft_orientation", "Fv": "preload_force",
    "coax": "coaxiality_of_bores", "coaxs": "coaxiality_of_shaft_seats", "ncrit": "first_critical_speed",
    "bd": "bearing_designation", "type": "bearing_type", "d": "bore_diameter", "D": "outside_diameter",
    "B": "ring_width", "rs": "ring_chamfer", "cl": "clearance_class", "tol": "tolerance_class", "C": "dynamic_rating",
    "C0": "static_rating", "Cu": "fatigue_load_limit", "nlim": "limiting_speed", "nref": "reference_speed",
    "lub": "lubrication", "visc": "base_oil_viscosity_40", "top": "operating_temperature",
    "regr": "regreasing_interval", "Fr": "radial_load", "Fa": "axial_load", "role": "axial_role", "torq": "nut_torque",
    "sbore": "shaft_bore", "fill": "grease_fill", "Ho": "housing_outer_diameter",
    **{
        f"{letter}{sign}": f"{side}_{what}"
        for letter, side in (("S", "shaft"), ("H", "housing"))
        for sign, what in (
            ("d", "seat_diameter"), ("r", "seat_roughness"), ("c", "seat_cylindricity"), ("t", "seat_runout"),
            ("a", "shoulder_diameter"), ("b", "shoulder_runout"), ("f", "fillet_radius"),
        )
    },
}  # fmt: skip
PLACE = re.compile(r"\{(?:=([^}]*)|([?~]?)(?:(\d)\.)?([\w#+]+)(?:\.(\w+))?(?::([^}]*))?)\}")


@dataclass
class Firm(Office):
    """An office with its form: ``lines`` for cells, ``tree`` for a JSON document."""

    tree: Any = None

    def stated(self, rotor: Rotor, told: Iterable[Line], s: int) -> Value:
        """What is stated; a class that stands alone is that of a seat as large as the ring."""
        told = list(told)
        value = rotor.values[told[0].parameter.split("+")[0], s]
        if isinstance(value, Size) and {name for line in told for name in line.fields} == {"c"}:
            return Size(value.nominal, tolerance_class=value.tolerance_class)
        return super().stated(rotor, told, s)


@dataclass(frozen=True)
class Filled:
    """The text of a cell or leaf, and what its places tell: line and position."""

    text: str
    told: list[tuple[Line, int]]
    plain: bool


def line_of(name: str, field: str, unit: str, verdict: str) -> Line:
    """The line of a place."""
    parameter = "+".join(SHORT[part] for part in name.split("+"))
    if field in ("u", "l", "t"):
        unit = f"mm/{unit}"
    return Line((), name, parameter, unit, "{" + (field or "n") + "}", {"?": "ask", "~": "either"}.get(verdict, "read"))


def fill(firm: Firm, rotor: Rotor, text: str, s: int, number: int) -> Filled:
    """A text with its places filled for a position; -1 for the machine, and for all positions alike."""
    told: list[tuple[Line, int]] = []
    names = []

    def one(found: re.Match[str]) -> str:
        several, verdict, position, name, field, unit = (part or "" for part in found.groups())
        names.append(name)
        if not name:
            parts = several.split(";")
            return parts[max(s, 0) % len(parts)]
        if name in ("#", "day"):
            return str(number) if name == "#" else f"{firm.rng.randint(10, 28)}"
        line = line_of(name, field, unit, verdict)
        own = int(position) - 1 if position else s
        own = -1 if line.whole else own
        told.append((line, own))
        return rotor.positions[own] if name == "P" else firm.text(rotor, line, own)

    return Filled(PLACE.sub(one, text), told, not names)


def of_edition(text: str, edition: int) -> str | None:
    """A text that begins with ``@`` and digits belongs to these tables of the office only; None for another's."""
    only = re.match(r"@(\d+) ?", text)
    if not only:
        return text
    return text[only.end() :] if str(edition) in only[1] else None
