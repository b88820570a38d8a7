"""Values that their parameter cannot have: a wrong sign, or a size that no such machine has.

Every number of the vocabulary has its range there (``sign``, ``least``, ``most``). A value outside it is a slip of unit
or decimal point; arithmetic on it gives verdicts that look sound and are not, so that no clause may use it.
"""

import re
from typing import Final

import numpy as np
from attrs import evolve
from numpy.typing import NDArray

from linter.model.columns import Assumption, Bools, Toleranced
from linter.model.stations import Problem, Stations
from linter.model.vocabulary import Parameter, parameter, vocabulary
from linter.model.wording import number_text, quantity_text, value_text, words_of

IMPOSSIBLE: Final = "impossible"
"""Kind of the problems that :func:`only_possible` leaves in the place of a value."""


def outside(entry: Parameter, values: NDArray[np.float64]) -> Bools:
    """Values that the parameter cannot have; NaN is none.

    Parameters
    ----------
    entry : Parameter
        A number or a size.
    values : float array
        Any shape, in the unit of the parameter.

    Returns
    -------
    bool array
        Of the shape of the values; not True where nothing is stated.
    """
    found = (values < entry.least) | (values >= entry.most)
    if entry.sign == "positive":
        found |= values <= 0
    return np.asarray(found | np.isinf(values), dtype=bool)


def range_text(entry: Parameter) -> str:
    """What is expected of a value, in words."""
    low, high = _exact_text(entry.least, entry.unit), _exact_text(entry.most, entry.unit)
    return f"a value from {low} to below {high}"


def _exact_text(value: float, unit: str) -> str:
    """A value with its unit; one too small for the usual decimals by its power of ten."""
    text = quantity_text(value, unit)
    if value != 0 and abs(value) < 1e-3 and abs(value) != round(abs(value), 5):
        return text.replace(number_text(value, unit), f"{value:.4g}", 1)
    return text


def only_possible(stations: Stations) -> Stations:
    """Stations without the values that cannot be.

    Parameters
    ----------
    stations : Stations
        As read.

    Returns
    -------
    Stations
        The same object where every value can be. Else each value outside the range of its parameter (of a size: its
        nominal or one of its limits) is absent, a problem of the kind ``impossible`` stands for it, and what was
        assumed from it is absent too. A documented default does not take its place.
    """
    wrong = {name: rows for name in (*stations.numbers, *stations.toleranced) if (rows := _wrong(stations, name)).any()}
    if not wrong:
        return stations
    numbers, sizes, assumed = dict(stations.numbers), dict(stations.toleranced), dict(stations.assumed)
    problems = [*stations.problems]
    for name, rows in wrong.items():
        problems += _problems(stations, name, rows)
        if name in sizes:
            sizes[name] = _without(sizes[name], rows)
        else:
            numbers[name] = np.where(rows, np.nan, numbers[name])
    for name, assumption in stations.assumed.items():
        sources = [wrong[word] for word in re.findall(r"\w+", parameter(name).default) if word in wrong]
        if sources:
            rows = np.logical_or.reduce(sources) & assumption.rows
            numbers[name] = np.where(rows, np.nan, numbers[name])
            assumed[name] = Assumption(assumption.rows & ~rows, assumption.reason)
    return evolve(stations, numbers=numbers, toleranced=sizes, assumed=assumed, problems=tuple(problems))


def set_aside(stations: Stations) -> dict[str, Bools]:
    """Rows whose value of a parameter was set aside, so that nothing else may take its place."""
    found: dict[str, Bools] = {}
    for problem in stations.problems:
        if problem.kind == IMPOSSIBLE and problem.parameter is not None and problem.row is not None:
            if problem.parameter not in found:
                found[problem.parameter] = np.zeros(len(stations), bool)
            rows = found[problem.parameter]
            if parameter(problem.parameter).level == "machine":
                rows |= stations.machine_row == stations.machine_row[problem.row]
            else:
                rows[problem.row] = True
    return found


def _wrong(stations: Stations, name: str) -> Bools:
    entry = parameter(name)
    if name in stations.numbers:
        rows = outside(entry, stations.numbers[name])
        return rows & ~stations.assumed[name].rows if name in stations.assumed else rows
    size = stations.toleranced[name]
    return outside(entry, size.nominal) | outside(entry, size.smallest) | outside(entry, size.largest)


def _without(size: Toleranced, rows: Bools) -> Toleranced:
    nominal, lower, upper = (np.where(rows, np.nan, part) for part in (size.nominal, size.lower, size.upper))
    return Toleranced(nominal, lower, upper, np.where(rows, "", size.tolerance_class))


def _problems(stations: Stations, name: str, rows: Bools) -> list[Problem]:
    entry = vocabulary()[name]
    found = []
    if entry.level == "machine":  # told once, at the first of its rows
        _, firsts = np.unique(np.where(rows, stations.machine_row, -1), return_index=True)
        rows = rows & np.isin(np.arange(len(rows)), firsts)
    for row in np.flatnonzero(rows):
        place, read = stations.place(name, int(row)), value_text(stations, name, int(row))
        if entry.kind == "number":
            read = _exact_text(float(stations.numbers[name][row]), entry.unit)
        expected = range_text(entry)
        where = f"{place}: " if place is not None else ""
        found.append(
            Problem(
                kind=IMPOSSIBLE,
                row=int(row),
                parameter=name,
                place=place,
                read=read,
                expected=expected,
                message=f"{where}{words_of(name)} cannot be {read}; expected is {expected}. No clause uses it.",
                code="impossible-value",
            )
        )
    return found
