"""Makeable values of a cell, nearest first: classes of ISO 286 at the drawn grade, drawing steps, preferred numbers.

A value is offered only where a drawing would state it: seats as tolerance classes, diameters and lengths to 0.05 mm,
tolerances of form, springs and balance grades as preferred numbers. A tolerance keeps its width: deviations of a length
stay as drawn, those of a spring's rate and force stay the same share.
"""

import math
import re
from collections.abc import Iterator, Sequence
from functools import lru_cache
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.mechanics.limits import classes_for, deviations_or_nan, it_value_or_nan
from linter.model.possible import outside
from linter.model.stations import Stations
from linter.model.vocabulary import Parameter, parameter
from linter.review.plan.cells import Cell
from linter.review.plan.trials import value_at
from linter.rulebook.model import Rulebook

#: Rounded preferred numbers, series R''10 (from memory of ISO 497:1973): tolerances of form, fillets, undercuts.
ROUNDED = (1.0, 1.2, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0)
#: Preferred numbers, series R20 (from memory of ISO 3:1973): spring rates and forces, unbalance.
PREFERRED = (1.0, 1.12, 1.25, 1.4, 1.6, 1.8, 2.0, 2.24, 2.5, 2.8, 3.15, 3.55, 4.0, 4.5, 5.0, 5.6, 6.3, 7.1, 8.0, 9.0)
#: Values of Ra in um (from memory of ISO 1302:2002) and balance grades in mm/s (ISO 21940-11:2016, from memory).
ROUGHNESS = (0.05, 0.1, 0.2, 0.4, 0.8, 1.6, 3.2, 6.3, 12.5)
BALANCE = (0.16, 0.4, 1.0, 2.5, 6.3, 16.0, 40.0, 100.0)
LETTERS = {
    "shaft": ("f", "g", "h", "js", "j", "k", "m", "n", "p", "r"),
    "hole": ("F", "G", "H", "JS", "J", "K", "M", "N", "P", "R"),
}
#: Preferred tolerance classes (from memory of ISO 286-1:2010, figure of preferred classes), without their grade.
PREFERRED_LETTERS = frozenset(["f", "g", "h", "js", "k", "n", "p", "r", "F", "G", "H", "JS", "K", "N", "P", "R"])
#: Step of a diameter or length, mm, and how far it is moved at most, as a share of it (common practice).
STEP = 0.05
FARTHEST = 0.5
#: Finest tolerance of form offered, mm; a finer one that is drawn stays (common practice: below it measuring ends).
FINEST_FORM = 0.0005
#: Finest grade where the rulebook has no table of processes (grinding and fine boring: IT5, common practice).
FINEST_GRADE = 5
_GRADE = re.compile(r"([A-Za-z]{1,2})(\d+)$")


@frozen(eq=False)
class Option:
    """One value that a cell can take.

    Attributes
    ----------
    value : float, int or tuple
        As :func:`linter.review.plan.trials.put` takes it.
    cost : float
        What it costs to go there: the whole part counts what is dear (a finer grade, a class that is not among the
        preferred ones), the rest is the distance from the present value, from 0 to below 1.
    text : str
        The value as text, by which ties fall.
    """

    value: Any
    cost: float
    text: str = field(init=False)

    @text.default
    def _text(self) -> str:
        return str(self.value)


def domain(stations: Stations, block: NDArray[np.intp], cell: Cell, rulebook: Rulebook) -> tuple[Option, ...]:
    """The values that a cell of a machine can take besides its present one, the nearest first.

    Parameters
    ----------
    stations : Stations
        The table.
    block : int array
        Rows of the machine.
    cell : Cell
        A number, size or choice; a blank cell has a domain too where its parameter says what is usual.
    rulebook : Rulebook
        Its table of processes bounds the grade.

    Returns
    -------
    tuple of Option
        Ordered by cost, then by value: the same for the same machine.
    """
    row = int(block[cell.row])
    entry = parameter(cell.name)
    now = value_at(stations, cell.name, row)
    if entry.kind == "choice":
        found = [Option(k, 1 + abs(k - now) / 100) for k in range(len(entry.choices)) if k != now]
    elif entry.change == "class":
        found = list(_classes(stations, row, cell.name, now, finest_grade(rulebook, cell.name)))
    elif entry.kind == "toleranced":
        found = list(_sizes(stations, row, entry, now))
    else:
        found = list(_numbers(entry, now))
    found += _as_beside(stations, block, cell, now)
    cannot = impossible(cell.name, [option.value for option in found])
    found = [option for option, no in zip(found, cannot, strict=True) if not no]
    return tuple(sorted(found, key=lambda o: (o.cost, o.text)))


def impossible(name: str, values: Sequence[Any]) -> NDArray[np.bool_]:
    """Which values a parameter cannot have, each as :func:`linter.review.plan.trials.put` takes it."""
    entry = parameter(name)
    if entry.kind not in ("number", "toleranced") or not values:
        return np.zeros(len(values), dtype=bool)
    if entry.kind == "number":
        return outside(entry, np.array(values, dtype=float))
    nominal, lower, upper = np.array([value[:3] for value in values], dtype=float).T
    return outside(entry, nominal) | outside(entry, nominal + lower) | outside(entry, nominal + upper)


def _is_blank(value: Any) -> bool:
    first = value[0] if isinstance(value, tuple) else value
    return bool(first != first or first == -1)


def _as_beside(stations: Stations, block: NDArray[np.intp], cell: Cell, now: Any) -> list[Option]:
    """What another position of the machine with a bearing of the same size states, for a blank cell."""
    entry = parameter(cell.name)
    if not _is_blank(now) or entry.level == "machine":
        return []
    sizes = stations.number("bore_diameter"), stations.number("outside_diameter")
    row = int(block[cell.row])
    for other in block.tolist():
        if all(size[other] == size[row] for size in sizes):
            value = value_at(stations, cell.name, other)
            if not _is_blank(value):
                return [Option(value, 0.5)]
    return []


def nearer(stations: Stations, block: NDArray[np.intp], cell: Cell, value: Any) -> tuple[Option, ...]:
    """For a length: every step between the present value and another one, the nearest first; empty for other cells.

    The domain widens its steps with the distance; this is what lies between the last value that fails and the first
    that serves.
    """
    entry = parameter(cell.name)
    if entry.change != "size" and not (entry.kind == "toleranced" and entry.unit == "mm" and entry.change == ""):
        return ()
    now = value_at(stations, cell.name, int(block[cell.row]))
    if not math.isfinite(now[0]):
        return ()
    reach = value[0] - now[0]
    count = min(round(abs(reach) / STEP), 400)
    steps = (math.copysign(round(k * STEP, 4), reach) for k in range(1, count))
    return tuple(_moved(now, now[0] + step, abs(step)) for step in steps)


# --- seats ------------------------------------------------------------------------------------------------------------


@lru_cache(maxsize=16)
def finest_grade(rulebook: Rulebook, name: str) -> int:
    """The finest grade that at least two processes of the rulebook's table hold on a shaft or in a bore."""
    element = "bore" if name.startswith("housing") else "shaft"
    for clause in rulebook.clauses.values():
        for table in clause.tables.values():
            if {"process", "element", "it_from"} <= set(table.columns):
                rows = zip(table.arrays["element"], table.arrays["it_from"], strict=True)
                grades = sorted(float(grade) for kind, grade in rows if kind in (element, "both"))
                if len(grades) > 1:
                    return int(grades[1])
    return FINEST_GRADE


def drawn_grade(nominal: float, lower: float, upper: float, tolerance_class: str) -> int:
    """Grade of a seat: that of its class, else the grade whose tolerance is next to the drawn one; 6 without any."""
    stated = _GRADE.match(tolerance_class)
    if stated:
        return int(stated[2])
    if not math.isfinite(lower) or not math.isfinite(upper) or upper <= lower:
        return 6
    grades = np.arange(2, 13)
    widths = it_value_or_nan(grades, nominal)
    if np.isnan(widths).all():
        return 6
    return int(grades[np.nanargmin(np.abs(np.log(widths / (1000.0 * (upper - lower)))))])


def _classes(
    stations: Stations, row: int, name: str, now: tuple[float, float, float, str], finest: int
) -> Iterator[Option]:
    kind = "hole" if name.startswith("housing") else "shaft"
    ring = "outside_diameter" if kind == "hole" else "bore_diameter"
    nominal, lower, upper, present = now
    basic = float(stations.number(ring)[row])
    if not math.isfinite(nominal):
        nominal = basic
    if not nominal > 0:
        return
    drawn = drawn_grade(nominal, lower, upper, present)
    grades = [*range(drawn, min(finest, drawn) - 1, -1), drawn + 1, drawn + 2]
    seats = frozenset(classes_for(kind))
    off = math.isfinite(basic) and abs(basic - nominal) > 1e-6
    for at, moved in ((nominal, 0), (basic, 1)) if off else ((nominal, 0),):
        for tolerance_class, shift, a, b in _limits_of(kind, at, tuple(grades), drawn):
            if tolerance_class == present and not moved and _same(a, lower) and _same(b, upper):
                continue
            grade = int(_GRADE.match(tolerance_class)[2])  # type: ignore[index]
            dear = 2 * (drawn - grade) if grade < drawn else grade - drawn
            dear += moved + (0 if tolerance_class in seats else 1)
            middle = 0.5 * (lower + upper) if math.isfinite(lower) and math.isfinite(upper) else 0.0
            distance = 0.0 if tolerance_class == present else min(abs(0.5 * (a + b) - middle) / shift, 80.0)
            liked = 0.0 if tolerance_class[: -len(str(grade))] in PREFERRED_LETTERS else 0.001
            yield Option((at, a, b, tolerance_class), dear + min(0.01 + distance / 100 + liked, 0.999) * (distance > 0))


def _same(a: float, b: float) -> bool:
    return abs(a - b) < 5e-7


@lru_cache(maxsize=4096)
def _limits_of(
    kind: str, nominal: float, grades: tuple[int, ...], drawn: int
) -> tuple[tuple[str, float, float, float], ...]:
    """Classes with the tolerance of the drawn grade and their deviations, mm."""
    classes = [f"{letter}{grade}" for grade in grades for letter in LETTERS[kind]]
    low, high = deviations_or_nan(np.array(classes), nominal)
    width = float(it_value_or_nan(drawn, nominal)) / 1000.0
    width = width if width > 0 else 0.01
    return tuple(
        (word, width, float(a) / 1000.0, float(b) / 1000.0)
        for word, a, b in zip(classes, low, high, strict=True)
        if not np.isnan(a)
    )


# --- lengths, numbers -------------------------------------------------------------------------------------------------


def _moved(now: tuple[float, float, float, str], value: float, distance: float) -> Option:
    """A length at another nominal, its deviations as drawn; a class does not go with it."""
    return Option((round(value, 4), now[1], now[2], ""), min(distance / (1.0 + distance), 0.999))


def _sizes(stations: Stations, row: int, entry: Parameter, now: tuple[float, float, float, str]) -> Iterator[Option]:
    nominal, lower, upper, word = now
    if not math.isfinite(nominal):
        yield from _blank_size(stations, row, entry.name)
        return
    if entry.change == "series" and entry.unit != "mm":
        for option in _series(PREFERRED, nominal, decades=3) if nominal > 0 else ():
            scale = option.value / nominal
            yield Option((option.value, lower * scale, upper * scale, ""), option.cost)
        return
    if word and entry.unit == "mm":
        low, high = (float(v) / 1000.0 for v in deviations_or_nan(np.array(word), nominal))
        if math.isfinite(low) and not (_same(low, lower) and _same(high, upper)):
            yield Option((nominal, low, high, word), 0.0)
    section = float(stations.number("outside_diameter")[row] - stations.number("bore_diameter")[row])
    farthest = max(FARTHEST * abs(nominal), section if entry.name.endswith("shoulder_diameter") else 0.0, 1.0)
    step, reach = STEP, 0.0
    while True:
        reach = round(reach + step, 4)
        if reach > farthest:
            return
        for value in (nominal - reach, nominal + reach):
            if value > 0:
                yield _moved(now, value, reach)
        step = max(STEP, math.floor(reach * 0.12 / STEP) * STEP)


def _blank_size(stations: Stations, row: int, name: str) -> Iterator[Option]:
    """An abutment that is not stated: from the ring's face inwards, to 0.1 mm, with a tenth of tolerance."""
    inner, outer = float(stations.number("bore_diameter")[row]), float(stations.number("outside_diameter")[row])
    if not name.endswith("shoulder_diameter") or not inner < outer:
        return
    shaft = name.startswith("shaft")
    usual = inner + 0.15 * (outer - inner) if shaft else outer - 0.15 * (outer - inner)
    for share in np.linspace(0.02, 0.6, 40):
        value = round(inner + share * (outer - inner) if shaft else outer - share * (outer - inner), 1)
        distance = abs(value - usual) / (outer - inner)
        yield Option((value, -0.1 if shaft else 0.0, 0.0 if shaft else 0.1, ""), 1 + min(distance, 0.99))


def _numbers(entry: Parameter, now: float) -> Iterator[Option]:
    name = entry.name
    if name == "balance_grade":
        yield from _listed(BALANCE, now)
    elif name.endswith("_roughness"):
        yield from _listed(ROUGHNESS, now)
    elif math.isfinite(now) and now > 0:
        form = entry.unit == "mm" and entry.change == "series"
        series = ROUNDED if form else PREFERRED
        for option in _series(series, now, decades=2):
            if not form or option.value >= min(FINEST_FORM, now):
                yield option
    elif entry.unit == "mm" and entry.change == "series":
        for option in _series(ROUNDED, 0.5, decades=3):
            if FINEST_FORM <= option.value <= 0.5:
                yield Option(option.value, 1 + option.cost)


def _listed(values: tuple[float, ...], now: float) -> Iterator[Option]:
    """Values of a list; a blank one begins with the coarsest."""
    known = math.isfinite(now) and now > 0
    for value in values:
        if not known:
            yield Option(value, 1 + 0.05 * (len(values) - values.index(value)))
        elif abs(value - now) > 1e-9:
            yield Option(value, min(abs(math.log(value / now)) / 12.0, 0.999))


def _series(series: tuple[float, ...], now: float, decades: int) -> Iterator[Option]:
    """Preferred numbers within some decades of a value."""
    first = math.floor(math.log10(now))
    for decade in range(first - decades, first + decades + 1):
        for number in series:
            value = float(f"{number * 10.0**decade:.3g}")
            if abs(value - now) > 1e-9 * now and 10.0**-decades <= value / now <= 10.0**decades:
                yield Option(value, min(abs(math.log(value / now)) / 12.0, 0.999))
