"""Measured values against the drawing: where each belongs, its limits, and whether it conforms."""

import re

import numpy as np
from attrs import frozen

from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.reading.measured import Measured, MeasuredList
from linter.reading.words.measured_words import UNITS
from linter.review.parts.conformity import DOES_NOT_CONFORM, VERDICTS, conformity

#: Numbers of a drawing that are largest permissible values.
LARGEST = re.compile(r"(cylindricity|runout|roughness|fillet_radius|coaxiality_of_\w+|undercut_(width|depth))$")
#: The parameter that the clauses name for what is measured on a part.
BEHIND = {"ring_bore": "bore_diameter", "ring_outside": "outside_diameter", "spring_force": "spring_rate"}
DIAMETER = {"ring_bore": "bore_diameter", "ring_outside": "outside_diameter"}


class WrongList(ValueError):
    """A list of measured values that belongs to something else."""


@frozen
class Touching:
    """A clause that looks at a characteristic, as it stands with the measured part."""

    clause: str
    title: str
    outcome: str
    severity: str
    observed: float | None
    lower: float | None
    upper: float | None
    unit: str


@frozen
class Judged:
    """One measured characteristic.

    Attributes
    ----------
    measured : Measured
        What was measured.
    machine, station : str
        Where it belongs; the station is empty for the whole machine.
    unit : str
        Unit of all figures.
    lower, upper : float or None
        Limits of the drawing; of a ring and a spring those of its class and of the maker's tolerance.
    uncertainty : float
        Expanded uncertainty.
    verdict : str
        One of :data:`~linter.review.parts.conformity.VERDICTS`, or ``no limits``.
    function : str
        ``inside``, ``outside`` or ``not judged``.
    touching : tuple of Touching
        Clauses that look at it, the gravest first.
    note : str
        What has to be known of it.
    """

    measured: Measured
    machine: str
    station: str
    unit: str
    lower: float | None
    upper: float | None
    uncertainty: float
    verdict: str
    function: str = "not judged"
    touching: tuple[Touching, ...] = ()
    note: str = ""

    @property
    def request(self) -> bool:
        """Whether a concession may be asked for: outside the drawing, inside function."""
        return self.verdict == VERDICTS[DOES_NOT_CONFORM] and self.function == "inside"


def same_drawing(stations: Stations, found: MeasuredList) -> None:
    """Raise :class:`WrongList` where a list states another drawing or revision than the table."""
    for name, read in (("drawing_number", found.drawing_number), ("drawing_revision", found.drawing_revision)):
        stated = sorted({str(text) for text in stations.text(name)} - {""})
        if read and stated and read.strip().casefold() not in {text.strip().casefold() for text in stated}:
            what = name.replace("_", " ")
            raise WrongList(f"{found.file}: read the {what} {read!r}, expected {' or '.join(map(repr, stated))}")


def placed(stations: Stations, item: Measured) -> int | str:
    """The row of the design that a value belongs to, or why there is none."""
    machines = [m for m in stations.machines if not item.machine or m.casefold() == item.machine.casefold()]
    if not machines:
        return f"read the machine {item.machine!r}, the table has {', '.join(map(repr, stations.machines))}"
    if len(machines) > 1:
        return f"the list names no machine, and the table has {len(stations.machines)}"
    rows = np.flatnonzero(stations.machine_row == stations.machines.index(machines[0]))
    of_machine = item.parameter == "spring_force" or (
        item.parameter not in UNITS and parameter(item.parameter).level == "machine"
    )
    if of_machine:
        return int(rows[0])
    names = [str(stations.text("station")[row]) for row in rows]
    if not item.station and len(rows) > 1:
        return f"{item.parameter.replace('_', ' ')} without a station; the table has {', '.join(names)}"
    hit = [row for row, name in zip(rows, names, strict=True) if name.casefold() == item.station.casefold()]
    if item.station and not hit and len(rows) > 1:
        return f"read the station {item.station!r}, the table has {', '.join(map(repr, names))}"
    return int((hit or list(rows))[0])


def _limits(stations: Stations, item: Measured, row: int) -> tuple[float, float]:
    """Limits of the drawing in the unit of the value; NaN where there are none."""
    name = item.parameter
    if name in DIAMETER:
        from linter.checks.shared.base import View
        from linter.checks.shared.seat_fits import housing_fit, shaft_fit

        machine = np.flatnonzero(stations.machine_row == stations.machine_row[row])
        fit = (shaft_fit if name == "ring_bore" else housing_fit)(View(stations.take(machine)))
        at = int(np.searchsorted(machine, row))
        nominal = float(stations.number(DIAMETER[name])[row])
        return nominal + float(fit.ring_lower[at]) / 1000, nominal + float(fit.ring_upper[at]) / 1000
    if name == "spring_force":
        middle, share = nominal_force(stations, row), float(stations.number("spring_load_tolerance")[row]) / 100
        return middle * (1 - share), middle * (1 + share)
    if parameter(name).kind == "toleranced":
        size = stations.size(name)
        return float(size.smallest[row]), float(size.largest[row])
    most = float(stations.number(name)[row]) if LARGEST.search(name) else np.nan
    return np.nan, most


def nominal_force(stations: Stations, row: int) -> float:
    """Force of the spring at its installed length by its nominal rate [N]; NaN where a part of it is not stated."""
    rate, free, length = (
        float(stations.size(f"spring_{name}").nominal[row]) for name in ("rate", "free_length", "installed_length")
    )
    return rate * (free - length)


def against_drawing(stations: Stations, item: Measured, row: int, given: float | None) -> Judged:
    """One measured value against the drawing; ``given`` is the uncertainty of lengths [mm] where the list has none."""
    name = item.parameter
    whole = name == "spring_force" or (name not in UNITS and parameter(name).level == "machine")
    unit = UNITS.get(name) or parameter(name).unit
    lower, upper = _limits(stations, item, row)
    in_unit = {"mm": 1.0, "um": 1000.0}.get(unit)
    u, note = 0.0, ""
    if item.uncertainty is not None:
        u = item.uncertainty
    elif given is not None and in_unit is not None:
        u = given * in_unit
    else:
        note = "no uncertainty is stated: held against the bare limits"
    width = upper - lower
    verdict = int(conformity(item.value, lower, upper, u))
    if width > 0 and 2 * u > width:
        note = f"the uncertainty {u:g} {unit} is larger than half the tolerance of {width:.4g}: no value can conform"
    elif np.isnan(width) and not np.isnan(upper) and u > upper > 0:
        note = f"the uncertainty {u:g} {unit} is larger than the permissible {upper:.4g}: no value can conform"
    return Judged(
        item, stations.machines[int(stations.machine_row[row])], "" if whole else str(stations.text("station")[row]),
        unit, None if np.isnan(lower) else round(lower, 9), None if np.isnan(upper) else round(upper, 9), u,
        VERDICTS[verdict] if verdict >= 0 else "no limits", note=note,
    )  # fmt: skip
