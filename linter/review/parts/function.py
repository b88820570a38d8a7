"""Measured parts in function: the rulebook with measured values in the place of tolerances."""

from collections.abc import Iterable, Iterator, Mapping, Sequence

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from linter.model.columns import Floats, Toleranced
from linter.model.findings import SEVERITIES
from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.review.assess import NOT_ASSESSED, Assessed, ClauseReview, assess
from linter.review.parts.drawing import BEHIND, DIAMETER, LARGEST, Judged, Touching, nominal_force
from linter.review.spread.shares import ABOUT_THE_DRAWING
from linter.rulebook.gates import must_rows
from linter.rulebook.model import Rulebook


@frozen
class PartVerdict:
    """One part (or set of parts) of one machine with its measured values in place of tolerances."""

    machine: str
    part: str
    gate: str
    findings: tuple[Touching, ...]


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
    measured: dict[str, tuple[Floats, Floats]] = {}
    told = []
    names = [str(name) for name in machine.text("station")]
    for item in items:
        name, value, u = item.measured.parameter, item.measured.value, item.uncertainty
        at = slice(None) if not item.station else names.index(item.station)
        if name in DIAMETER:
            band = measured.setdefault(name, (np.full(len(machine), np.nan), np.full(len(machine), np.nan)))
            middle = 1000.0 * (value - machine.number(DIAMETER[name])[at])
            band[0][at], band[1][at] = middle - 1000.0 * u, middle + 1000.0 * u
        elif name == "spring_force":
            nominal = nominal_force(machine, 0)
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
            numbers.setdefault(name, machine.number(name))[at] = value + (u if LARGEST.search(name) else 0.0)
    return evolve(machine, toleranced=sizes, numbers=numbers, measured=measured, problems=()), told


def functions(
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
    reviews = [r for r in part.now.reviews.values() if not r.clause.id.startswith(ABOUT_THE_DRAWING)]
    every = [_touching(review, part.at(review, at)) for review in reviews for at in range(part.count(review))]
    grave = sorted((t for t in every if _at_the_gate(t, gate)), key=_gravity)
    open_must = any(
        (must_rows(review.clause, part.drawn.view, gate) & (part.of(review) == NOT_ASSESSED)).any()
        for review in reviews
    )
    state = "closed" if grave else "undecided" if open_must else "open"
    verdict = PartVerdict(part.drawn.stations.machines[0], "", state, tuple(grave))
    return verdict, [_item(part, item, reviews, told, gate) for item in items]


def _item(part: _Part, item: Judged, reviews: Sequence[ClauseReview], told: Sequence[str], gate: str) -> Judged:
    """One measured value with the clauses that look at it."""
    names = [str(name) for name in part.drawn.stations.text("station")]
    name = BEHIND.get(item.measured.parameter, item.measured.parameter)
    row = names.index(item.station) if item.station else 0
    touching, lost = [], False
    for review in reviews:
        if name not in (*review.clause.needs, *review.clause.uses):
            continue
        for at in [min(row, part.count(review) - 1)] if item.station else range(part.count(review)):
            found = _touching(review, part.at(review, at))
            touching.append(found)
            lost |= found.outcome == "not assessed" and part.drawn.reviews[review.clause.id].outcome[at] != NOT_ASSESSED
    judged_any = any(t.outcome in ("met", "finding") for t in touching)
    function = "inside" if judged_any and not lost else "not judged"
    if any(_at_the_gate(t, gate) for t in touching):
        function = "outside"
    notes = (item.note, *(told if item.measured.parameter == "spring_force" else ()))
    return evolve(
        item, function=function, touching=tuple(sorted(touching, key=_gravity)), note="; ".join(filter(None, notes))
    )


def _at_the_gate(found: Touching, gate: str) -> bool:
    return bool(found.severity) and SEVERITIES.index(found.severity) <= SEVERITIES.index(gate)


def _gravity(found: Touching) -> tuple[int, bool]:
    return (SEVERITIES.index(found.severity) if found.severity else len(SEVERITIES), found.outcome != "met")


def _touching(review: ClauseReview, at: int) -> Touching:
    words = ("met", "finding", "not assessed", "not applicable")
    figures = [float(review.figures[n][at]) if n in review.figures else np.nan for n in ("observed", "lower", "upper")]
    observed, lower, upper = (None if np.isnan(v) else v for v in figures)
    outcome = words[int(review.outcome[at])]
    severity = SEVERITIES[int(review.severity[at])] if outcome == "finding" else ""
    return Touching(review.clause.id, review.clause.title, outcome, severity, observed, lower, upper, review.unit)
