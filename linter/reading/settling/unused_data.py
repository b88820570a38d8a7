"""Columns, rows and keys that were not used and look like data of a seat: nothing that matters is left out in silence.

Data is told by its cells (tolerance classes, deviations, sizes of the bearing) or by a heading close to a parameter.
"""

import re
from collections.abc import Iterable

import numpy as np

from linter.model.stations import Problem, ProblemKind, Stations, Unused
from linter.model.vocabulary import parameter
from linter.reading.cells.numbers import Number, read_number
from linter.reading.cells.signs import fold
from linter.reading.cells.units import known_unit, split_quantity
from linter.reading.files.intake import visible
from linter.reading.words.match import OPEN
from linter.reading.words.names import Names

#: Parameters without which a seat or its bearing cannot be judged: unused data near one of them that is missing closes
#: the gate.
NEEDED = (
    "bore_diameter", "outside_diameter", "ring_width", "ring_chamfer", "shaft_seat_diameter", "housing_seat_diameter",
    "shaft_shoulder_diameter", "housing_shoulder_diameter", "shaft_fillet_radius", "housing_fillet_radius",
    "axial_role", "speed_max", "shaft_seat_cylindricity", "shaft_seat_runout", "shaft_seat_roughness",
    "housing_seat_cylindricity", "housing_seat_runout", "housing_seat_roughness",
)  # fmt: skip
#: Likeness of a heading to a word of a parameter from which it may be meant.
CLOSE = 0.85
#: A number this near a diameter of the bearing may be the seat's (part of the diameter).
NEAR = 0.02
_MOST_NAMES = 200
#: Letters that a name needs to be close to a word by its likeness.
_LEAST_LETTERS = 5
_SEATS = ("shaft_seat_diameter", "housing_seat_diameter")
_DIAMETERS = ("bore_diameter", "outside_diameter")
_CLASS = re.compile(r"(?:[\d.,]+ ?)?(?:[efghjkmnpr]|js|[EFGHJKMNPR]|JS)(?:[3-9]|1[0-1])(?:\W.*)?")
#: A date is no size with deviations (``2025-03-21``).
_DEVIATION = re.compile(r"(?!\d{4}-\d\d?-\d\d?(?!\d)|\d\d?-\d\d?-\d{4}(?!\d))(?:[\d.,]+ ?)?(?:±|[+-] ?\d).*")
_RUNNING = re.compile(r"(?i)\W*(?:id|nos?|nr|num|item|index|idx|line|row|pos|#|qty|quantity|count|anzahl|menge|seq)\W*")
#: Why a name is not used that the name mapping knows.
_LEFT_OUT = "the name mapping says to leave it out"
_EXPECTED = "a heading that names its parameter, or a name mapping"


def tell_unused(unused: Iterable[Unused], stations: Stations) -> list[Problem]:
    """A problem for each unused column or row that looks like data of a seat.

    Of kind ``unreadable`` where a parameter of :data:`NEEDED` that it may state is missing, else of kind ``unused``.
    """
    names = Names.built_in()
    words = [one for one in unused if one.name and one.reason in (_LEFT_OUT, OPEN, names.why(one.name))]
    words = [one for one in words if not names.groups(one.name) and not _RUNNING.fullmatch(one.name)][:_MOST_NAMES]
    problems = []
    for one in words:
        meant, why = _meant(one, names, stations)
        if meant is None:
            continue
        missing = any(_lacks(stations, name) for name in meant)
        said = visible(one.value, 60)
        code = "left-out" if one.reason == _LEFT_OUT else "unused-data"
        where = f"{one.place}: {said} under {visible(one.name, 60)}"
        message = f"{where} is not used ({one.reason}), and {why}; expected {_EXPECTED}."
        kind: ProblemKind = "unreadable" if missing else "unused"
        problems.append(Problem(kind, None, next(iter(meant), None), one.place, said, _EXPECTED, message, code))
    return problems


def _lacks(stations: Stations, name: str) -> bool:
    """Whether a needed parameter (of a seat, its tolerance too) is missing at some station."""
    if name not in NEEDED:
        return False
    if not bool(stations.known(name).all()):
        return True
    return name in _SEATS and bool(np.isnan(stations.size(name).upper).any())


def _of_other_kind(cell: str) -> bool:
    """Whether a unit that is none of lengths stands behind a number (``-10 °C``)."""
    unit = known_unit(split_quantity(cell)[1])
    return unit is not None and unit.dimension not in ("length", "ratio")


def _meant(one: Unused, names: Names, stations: Stations) -> tuple[tuple[str, ...] | None, str]:
    """Parameters that an unused word may state and why that is thought; None for no data of a seat."""
    if (match := names.find(one.name)) is not None:
        return (match.parameter,), f"its name says {match.parameter}"
    cells = [fold(cell) for cell in one.value.split(", ") if not cell.startswith("…")]
    if not any(cells):
        return None, ""
    if any(_CLASS.fullmatch(cell) for cell in cells):
        return _SEATS, "its cells look like tolerance classes"
    if any(_DEVIATION.fullmatch(cell) and not _of_other_kind(cell) for cell in cells):
        return _SEATS, "its cells look like deviations"
    from linter.reading.words.propose import propose  # only for a table with words that are not used

    short = len(re.findall(r"[^\W\d_]", one.name)) < _LEAST_LETTERS and one.name.isascii()
    for candidate in () if short else (c for proposal in propose([one.name], names) for c in proposal.candidates[:1]):
        if candidate.confidence >= CLOSE:
            return (candidate.parameter,), f"its name is close to {candidate.parameter}"
    for seat, diameter in zip(_SEATS, _DIAMETERS, strict=True):
        sizes = stations.number(diameter)
        if all(_near(cell, sizes) for cell in cells):
            return (diameter, seat), f"its cells are as large as the {parameter(diameter).meaning}"
    return None, ""


def _near(cell: str, sizes: np.ndarray) -> bool:
    number = read_number(cell.split(" ")[0], ".")
    if not isinstance(number, Number) or number.value < 1:
        return False
    with np.errstate(invalid="ignore"):
        return bool((np.abs(sizes - number.value) <= NEAR * sizes).any())
