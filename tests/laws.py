"""What the tests over the whole rulebook share: its clauses, complete stations, and rows that differ in one value."""

import importlib.util
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
from attrs import evolve

from linter.mechanics.limits import deviations
from linter.model.stations import Choice, Stations, apply_defaults
from linter.model.vocabulary import parameter, vocabulary
from linter.review.assess import ClauseReview
from linter.review.cases import worked_cases
from linter.rulebook.load import load
from linter.rulebook.model import Clause

#: The rulebook that the laws are held against; released ones are held by their golden tables.
BOOK = load("current")
EVERY = list(BOOK.clauses)


@cache
def complete(count: int) -> Stations:
    """Complete stations of many sizes, as the benchmarks take them."""
    path = Path(__file__).parents[1] / "benchmarks" / "conftest.py"
    spec = importlib.util.spec_from_file_location("stations_of_the_benchmarks", path)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module.make_stations(count)


def arrange(stations: Stations, machines: list[int]) -> Stations:
    """These machines in this order, a machine as often as it is named; each under a name of its own."""
    rows, machine_row = [], []
    for place, machine in enumerate(machines):
        found = np.flatnonzero(stations.machine_row == machine)
        rows.extend(found)
        machine_row.extend([place] * len(found))
    index = np.array(rows, dtype=np.intp)
    return Stations(
        machines=tuple(f"{place}: {stations.machines[machine]}" for place, machine in enumerate(machines)),
        machine_row=np.array(machine_row, dtype=np.intp),
        numbers={name: column[index] for name, column in stations.numbers.items()},
        toleranced={name: column.take(index) for name, column in stations.toleranced.items()},
        choices={name: Choice(c.words, c.codes[index]) for name, c in stations.choices.items()},
        texts={name: column[index] for name, column in stations.texts.items()},
    )


def with_value(stations: Stations, name: str, rows: np.ndarray, value: float, part: str = "nominal") -> None:
    """Set a value in these rows of stations made by :func:`arrange`; NaN takes the parameter away."""
    kind = parameter(name).kind
    if kind == "number":
        stations.numbers[name] = np.where(rows, value, stations.number(name))
    elif kind == "toleranced":
        size = stations.size(name)
        stations.toleranced[name] = evolve(size, **{part: np.where(rows, value, getattr(size, part))})
    elif kind == "choice":
        choice = stations.choice(name)
        stations.choices[name] = Choice(choice.words, np.where(rows, -1, choice.codes).astype(np.int8))
    else:
        stations.texts[name] = np.where(rows, "", stations.text(name))


def varied(machine: int, changes: list[tuple[str, float, str]]) -> Stations:
    """One complete machine per change, each with one value of all its stations changed (see :func:`with_value`)."""
    stations = arrange(complete(40), [machine] * len(changes))
    for place, (name, value, part) in enumerate(changes):
        with_value(stations, name, stations.machine_row == place, value, part)
    return apply_defaults(stations)


REMOVALS = [(name, np.nan, "nominal") for name in vocabulary() if name not in ("machine", "station")]
ABSURD = [
    (entry.name, value, part)
    for entry in vocabulary().values()
    if entry.kind in ("number", "toleranced")
    for value in (0.0, -1.0, 1e-12, 1e12, -1e12)
    for part in (("nominal",) if entry.kind == "number" else ("nominal", "lower", "upper"))
]


def ranks(review: ClauseReview) -> np.ndarray:
    """Severity by row: 0 met to 4 critical; -1 not assessed, -2 not applicable."""
    found = np.where(review.outcome == 1, 4 - review.severity, 0)
    return np.where(review.outcome == 2, -1, np.where(review.outcome == 3, -2, found))


def sweeps(clause: str, name: str, stated: Any) -> dict[str, list[Any]]:
    """Sixty values of a parameter about a stated one, by the way they are moved (format of ``stations_from_rows``)."""
    factors = np.geomspace(0.2, 5.0, 60)
    if parameter(name).kind == "number":
        value = float(stated)
        if parameter(name).unit == "degC":
            return {"shifted": list(value + np.linspace(-80.0, 80.0, 60))}
        if name == "ball_count":
            return {"counted": list(range(3, 41))}
        return {"scaled": list(value * factors) if value else list(np.linspace(0.0, 1.0, 60))}
    parts = stated if isinstance(stated, list) else [stated]
    nominal = float(parts[0])
    if len(parts) == 1:
        return {"scaled": list(nominal * factors)}
    word = [parts[3]] if len(parts) > 3 else []
    if isinstance(parts[1], str):
        lower, upper = (float(x) / 1000.0 for x in deviations(parts[1], nominal))
    else:
        lower, upper = (float(x) for x in parts[1:3])
    middle, half = 0.5 * (lower + upper), 0.5 * (upper - lower)
    widened = [[nominal, middle - half * f, middle + half * f, *word] for f in factors]
    if "seat" in name:
        shifts = np.linspace(-0.06, 0.06, 60)
        shifted = [[nominal, round(lower + x, 7), round(upper + x, 7), *word] for x in shifts]
        # a fit is better or worse by where it lies; a wider band holds better and worse pairs at once
        return {"shifted": shifted, "widened": widened} if clause in ABOUT_WIDTH else {"shifted": shifted}
    found = {
        "scaled": [[nominal * f, lower, upper, *word] for f in factors],
        "scaled closely": [[nominal * f, lower, upper, *word] for f in np.linspace(0.9, 1.1, 60)],
    }
    return {**found, "widened": widened} if half else found


#: Clauses that judge how wide the tolerance of a seat is.
ABOUT_WIDTH = ("fit.grade", "alignment.form-within-size")

#: Sizes by which a bearing is looked up in a table: another one is another bearing, not a worse one.
IDENTITY = ("bore_diameter", "outside_diameter")


def moving(clause: Clause) -> list[tuple[dict[str, Any], int, str, str, list[Any]]]:
    """Worked cases of a clause with a value to move: case, index of its station, parameter, way and values."""
    found = []
    for case in worked_cases(BOOK, clause.id):
        for name in dict.fromkeys((*clause.needs, *clause.uses)):
            if case.get("problems") or name in IDENTITY or parameter(name).kind not in ("number", "toleranced"):
                continue
            stations = case["stations"]
            stated = [k for k, row in enumerate(stations) if row.get(name) is not None]
            if stated:
                own = [k for k in stated if stations[k].get("station", chr(65 + k)) == case.get("station", "A")]
                index = (own or stated)[0]
                ways = sweeps(clause.id, name, stations[index][name])
                found += [(case, index, name, way, values) for way, values in ways.items()]
    return found


def moved_rows(case: dict[str, Any], index: int, name: str, values: list[Any]) -> list[dict[str, Any]]:
    """One machine per value; a value of the machine moves in every station that states it."""
    rows = []
    for place, value in enumerate(values):
        for k, row in enumerate(case["stations"]):
            own = {**row, "machine": f"M{place}", "station": row.get("station", chr(65 + k))}
            if k == index or (parameter(name).level == "machine" and row.get(name) is not None):
                own[name] = value
            rows.append(own)
    return rows
