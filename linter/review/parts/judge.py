"""Measured parts against their drawing, and against the rulebook with the measured values put in."""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence

import numpy as np
from attrs import evolve, field, frozen
from numpy.typing import NDArray

from linter.model.columns import Toleranced
from linter.model.findings import SEVERITIES
from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.reading.measured import UNITS, Measured, MeasuredList
from linter.review.assess import NOT_ASSESSED, Assessed, ClauseReview, assess
from linter.review.parts.conformity import DOES_NOT_CONFORM, VERDICTS, conformity
from linter.review.spread.shares import ABOUT_THE_DRAWING
from linter.rulebook.gates import must_rows
from linter.rulebook.model import Rulebook

#: Numbers of a drawing that are largest permissible values.
_LARGEST = re.compile(r"(cylindricity|runout|roughness|fillet_radius|coaxiality_of_\w+|undercut_(width|depth))$")
#: The parameter that the clauses name for what is measured on a part.
_BEHIND = {"ring_bore": "bore_diameter", "ring_outside": "outside_diameter", "spring_force": "spring_rate"}
_DIAMETER = {"ring_bore": "bore_diameter", "ring_outside": "outside_diameter"}


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


@frozen
class PartVerdict:
    """One part (or set of parts) of one machine with its measured values in place of tolerances."""

    machine: str
    part: str
    gate: str
    findings: tuple[Touching, ...]


@frozen
class PartsReview:
    """A list of measured values judged."""

    judged: tuple[Judged, ...]
    parts: tuple[PartVerdict, ...]
    not_on_drawing: tuple[str, ...] = field(default=())

    @property
    def status(self) -> str:
        """``does not conform``, ``not proven`` or ``conforms`` over all, function included."""
        verdicts = {item.verdict for item in self.judged}
        if VERDICTS[2] in verdicts or any(part.gate == "closed" for part in self.parts):
            return VERDICTS[2]
        if VERDICTS[1] in verdicts or self.not_on_drawing or any(part.gate == "undecided" for part in self.parts):
            return VERDICTS[1]
        return VERDICTS[0]


def judge(
    stations: Stations, rulebook: Rulebook, found: MeasuredList, *, uncertainty: float | None = None,
    gate: str = "major",
) -> PartsReview:  # fmt: skip
    """Judge every measured value of a list.

    Parameters
    ----------
    stations : Stations
        The design, with the rulebook's defaults. It is left as it is: a measured value never enters its review.
    rulebook : Rulebook
        What judges function.
    found : MeasuredList
        The list.
    uncertainty : float, optional
        Expanded uncertainty of lengths in mm where the list states none; without it the comparison is with the bare
        limits, and says so.
    gate : str
        Lowest severity that is outside function.

    Returns
    -------
    PartsReview
        Values in the order of the list.

    Raises
    ------
    WrongList
        If the list states another drawing or revision than the design.
    """
    _same_drawing(stations, found)
    judged: list[Judged] = []
    strangers: list[str] = []
    for item in found.values:
        placed = _placed(stations, item)
        if isinstance(placed, str):
            strangers.append(f"{item.place}: {placed}")
        else:
            judged.append(_against_drawing(stations, item, placed, uncertainty))
    strangers += [f"{place}: {name!r} is no characteristic that is known here" for name, place in found.unknown]
    groups: dict[tuple[str, str], list[Judged]] = {}
    for one in judged:
        groups.setdefault((one.machine, one.measured.part), []).append(one)
    results: dict[int, Judged] = {}
    parts = []
    for (of_part, in_function), (key, items) in zip(
        _functions(stations, rulebook, groups, gate), groups.items(), strict=True
    ):
        parts.append(evolve(of_part, part=key[1]))
        results |= {id(item): result for item, result in zip(items, in_function, strict=True)}
    return PartsReview(tuple(results[id(item)] for item in judged), tuple(parts), tuple(strangers))


def _same_drawing(stations: Stations, found: MeasuredList) -> None:
    for name, read in (("drawing_number", found.drawing_number), ("drawing_revision", found.drawing_revision)):
        stated = sorted({str(text) for text in stations.text(name)} - {""})
        if read and stated and read.strip().casefold() not in {text.strip().casefold() for text in stated}:
            what = name.replace("_", " ")
            raise WrongList(f"{found.file}: read the {what} {read!r}, expected {' or '.join(map(repr, stated))}")


def _placed(stations: Stations, item: Measured) -> int | str:
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
    if name in _DIAMETER:
        from linter.checks.shared.base import View
        from linter.checks.shared.seat_fits import housing_fit, shaft_fit

        machine = np.flatnonzero(stations.machine_row == stations.machine_row[row])
        fit = (shaft_fit if name == "ring_bore" else housing_fit)(View(stations.take(machine)))
        at = int(np.searchsorted(machine, row))
        nominal = float(stations.number(_DIAMETER[name])[row])
        return nominal + float(fit.ring_lower[at]) / 1000, nominal + float(fit.ring_upper[at]) / 1000
    if name == "spring_force":
        middle, share = _spring(stations, row), float(stations.number("spring_load_tolerance")[row]) / 100
        return middle * (1 - share), middle * (1 + share)
    if parameter(name).kind == "toleranced":
        size = stations.size(name)
        return float(size.smallest[row]), float(size.largest[row])
    most = float(stations.number(name)[row]) if _LARGEST.search(name) else np.nan
    return np.nan, most


def _spring(stations: Stations, row: int) -> float:
    rate, free, length = (
        float(stations.size(f"spring_{name}").nominal[row]) for name in ("rate", "free_length", "installed_length")
    )
    return rate * (free - length)


def _against_drawing(stations: Stations, item: Measured, row: int, given: float | None) -> Judged:
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


def measured_machine(machine: Stations, items: Iterable[Judged]) -> tuple[Stations, list[str]]:
    """A machine with measured values, widened by their uncertainty, in the place of its tolerances.

    Returns
    -------
    Stations
        A copy.
    list of str
        What could not be put in, and why.
    """
    sizes = {name: Toleranced(*(np.array(v) for v in (s.nominal, s.lower, s.upper, s.tolerance_class)))
             for name, s in machine.toleranced.items()}  # fmt: skip
    numbers = {name: values.copy() for name, values in machine.numbers.items()}
    measured: dict[str, tuple[np.ndarray, np.ndarray]] = {}
    told = []
    names = [str(name) for name in machine.text("station")]
    for item in items:
        name, value, u = item.measured.parameter, item.measured.value, item.uncertainty
        at = slice(None) if not item.station else names.index(item.station)
        if name in _DIAMETER:
            band = measured.setdefault(name, (np.full(len(machine), np.nan), np.full(len(machine), np.nan)))
            middle = 1000.0 * (value - machine.number(_DIAMETER[name])[at])
            band[0][at], band[1][at] = middle - 1000.0 * u, middle + 1000.0 * u
        elif name == "spring_force":
            nominal = _spring(machine, 0)
            if not nominal > 0 or not value > 0:
                told.append("spring force: rate, free and installed length are needed to put it in")
                continue
            sizes["spring_rate"].nominal[:] *= value / nominal
            sizes["spring_rate"].lower[:] = sizes["spring_rate"].upper[:] = 0.0
            numbers["spring_load_tolerance"] = np.full(len(machine), 100.0 * u / value)
        elif parameter(name).kind == "toleranced":
            size = sizes.setdefault(name, machine.size(name))
            if parameter(name).change == "class":
                size.lower[at] = value - u - size.nominal[at]
                size.upper[at] = value + u - size.nominal[at]
            else:
                size.nominal[at], size.lower[at], size.upper[at] = value, -u, u
        else:
            numbers.setdefault(name, machine.number(name))[at] = value + (u if _LARGEST.search(name) else 0.0)
    return evolve(machine, toleranced=sizes, numbers=numbers, measured=measured, problems=()), told


def _functions(
    stations: Stations, rulebook: Rulebook, groups: Mapping[tuple[str, str], Sequence[Judged]], gate: str
) -> Iterator[tuple[PartVerdict, list[Judged]]]:
    """Every part in function; all of them are assessed as one table."""
    designs = {
        name: stations.take(np.flatnonzero(stations.machine_row == k)) for k, name in enumerate(stations.machines)
    }
    drawn = {name: assess(designs[name], rulebook, keep="figures") for name in {machine for machine, _ in groups}}
    made = [measured_machine(designs[machine], items) for (machine, _), items in groups.items()]
    if not made:
        return
    now = assess(_together([copy for copy, _ in made]), rulebook, keep="figures")
    start = 0
    for index, (((machine, _), items), (copy, told)) in enumerate(zip(groups.items(), made, strict=True)):
        yield _function(_Part(drawn[machine], now, start, index, len(copy)), items, told, gate)
        start += len(copy)


def _together(copies: Sequence[Stations]) -> Stations:
    whole = Stations.concat(copies)
    measured = {}
    for name in dict.fromkeys(name for copy in copies for name in copy.measured):
        absent = [np.full(len(copy), np.nan) for copy in copies]
        bands = [copy.measured.get(name, (none, none)) for copy, none in zip(copies, absent, strict=True)]
        measured[name] = (np.concatenate([low for low, _ in bands]), np.concatenate([high for _, high in bands]))
    return evolve(whole, measured=measured)


@frozen(eq=False)
class _Part:
    """One part among all that were assessed: its design, and where its rows and its machine stand."""

    drawn: Assessed
    now: Assessed
    start: int
    machine: int
    rows: int

    def at(self, review: ClauseReview, row: int) -> int:
        """Where a clause tells of a row of this part."""
        return self.machine if review.clause.level == "machine" else self.start + row

    def of(self, review: ClauseReview) -> NDArray[np.int8]:
        """Outcomes of a clause for this part."""
        return review.outcome[self.at(review, 0) :][: self.count(review)]

    def count(self, review: ClauseReview) -> int:
        """How many rows a clause has of this part."""
        return 1 if review.clause.level == "machine" else self.rows


def _function(part: _Part, items: Sequence[Judged], told: Sequence[str], gate: str) -> tuple[PartVerdict, list[Judged]]:
    names = [str(name) for name in part.drawn.stations.text("station")]
    worst = SEVERITIES.index(gate)
    reviews = [r for r in part.now.reviews.values() if not r.clause.id.startswith(ABOUT_THE_DRAWING)]
    judged = []
    for item in items:
        name = _BEHIND.get(item.measured.parameter, item.measured.parameter)
        row = names.index(item.station) if item.station else 0
        touching, lost = [], False
        for review in reviews:
            if name not in (*review.clause.needs, *review.clause.uses):
                continue
            for at in range(part.count(review)) if not item.station else [min(row, part.count(review) - 1)]:
                found = _touching(review, part.at(review, at))
                before = part.drawn.reviews[review.clause.id]
                touching.append(found)
                lost |= found.outcome == "not assessed" and before.outcome[at] != NOT_ASSESSED
        grave = [t for t in touching if t.severity and SEVERITIES.index(t.severity) <= worst]
        judged_any = any(t.outcome in ("met", "finding") for t in touching)
        function = "outside" if grave else "inside" if judged_any and not lost else "not judged"
        order = sorted(touching, key=lambda t: (SEVERITIES.index(t.severity) if t.severity else 9, t.outcome != "met"))
        note = item.note
        if item.measured.parameter == "spring_force":
            note = "; ".join(n for n in (item.note, *told) if n)
        judged.append(evolve(item, function=function, touching=tuple(order), note=note))
    every = [_touching(review, part.at(review, at)) for review in reviews for at in range(part.count(review))]
    grave = [t for t in every if t.severity and SEVERITIES.index(t.severity) <= worst]
    open_must = any(
        (
            must_rows(r.clause, part.drawn.view, gate) & (r.outcome[part.at(r, 0) :][: part.count(r)] == NOT_ASSESSED)
        ).any()
        for r in reviews
    )
    state = "closed" if grave else "undecided" if open_must else "open"
    machine = part.drawn.stations.machines[0]
    return PartVerdict(machine, "", state, tuple(sorted(grave, key=lambda t: SEVERITIES.index(t.severity)))), judged


def _touching(review: ClauseReview, at: int) -> Touching:
    words = ("met", "finding", "not assessed", "not applicable")
    figures = [float(review.figures[n][at]) if n in review.figures else np.nan for n in ("observed", "lower", "upper")]
    observed, lower, upper = (None if np.isnan(v) else v for v in figures)
    outcome = words[int(review.outcome[at])]
    severity = SEVERITIES[int(review.severity[at])] if outcome == "finding" else ""
    return Touching(review.clause.id, review.clause.title, outcome, severity, observed, lower, upper, review.unit)
