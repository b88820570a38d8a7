"""Chapter alignment: which way of making the seats holds what the drawing asks of them."""

from collections.abc import Callable
from typing import Any

import numpy as np
from numpy.typing import NDArray

from linter.checks.shared.base import Limits, Result, View, Working
from linter.checks.shared.seat_forms import UM, form_limits, grades
from linter.checks.shared.two_sides import BASIC, SIDES, Columns, down
from linter.model.stations import Choice, Floats
from linter.model.wording import quantity_text

ELEMENT = {"shaft": "shaft", "housing": "bore"}
"""Word of the process table for each side."""
FROM_COARSE = ("Normal", "P6", "P5", "P4", "P2")


def asked(view: View, side: str) -> tuple[Floats, Floats]:
    """Standard grades that size tolerance and cylindricity of a seat ask for, NaN where not stated, -1 below IT0.

    A cylindricity t_1 counts as the grade with IT/2 = t_1, as the makers' tables of seats do.
    """
    s = view.stations
    size = s.size(f"{side}_seat_diameter")
    table = grades(view)[side]
    inside = ~np.isnan(table).all(axis=0)
    found = []
    for width in (size.upper - size.lower, 2.0 * s.number(f"{side}_seat_cylindricity")):
        held = np.sum(table <= width * (1.0 + 1e-9), axis=0) - 1.0
        found.append(np.where((width > 0.0) & inside, held, np.nan))
    return found[0], found[1]


def _ways(table: Columns, side: str, grade: Floats) -> Callable[[int], str]:
    """Processes that hold a grade, the coarsest of them first, in words by row."""
    names = [
        (float(finest), str(process))
        for process, element, finest in zip(table["process"], table["element"], table["it_from"], strict=True)
        if element in (ELEMENT[side], "both") and process != "moulding, as moulded"
    ]
    names.sort(key=lambda entry: -entry[0])

    def make(row: int) -> str:
        if np.isnan(grade[row]):
            return "not known"
        able = [name for finest, name in names if finest <= grade[row]]
        return ", ".join(able[:3]) if able else "no process of the table"

    return make


def _coarser(view: View, table: Columns, kind: Choice) -> Callable[[int], str]:
    """The next coarser tolerance class and what it asks of the housing seat, in words by row."""
    words = kind.texts()
    limits = {}
    for fine, coarse in zip(FROM_COARSE[1:], FROM_COARSE, strict=False):
        codes = np.full(view.count, kind.words.index(coarse), dtype=np.int8)
        limits[fine] = coarse, down(form_limits(view, table, "housing", "cylindricity", Choice(kind.words, codes))[1])

    def make(row: int) -> str:
        if words[row] not in limits:
            return ""
        coarse, value = limits[words[row]]
        return f"; class {coarse} would ask for a cylindricity of {quantity_text(UM * float(value[row]), 'um')}"

    return make


def process(view: View, limits: Limits) -> Result:
    """Grade that the seats ask for against what the way of making them holds: a remark, never more."""
    s = view.stations
    table = limits.table("process")
    by_size, by_form = ({side: asked(view, side)[index] for side in SIDES} for index in (0, 1))
    grade = {side: np.fmin(by_size[side], by_form[side]) for side in SIDES}
    moulded = s.choice("housing_material").is_in("plastic")
    as_moulded = float(table["it_from"][table["process"] == "moulding, as moulded"][0])
    finest = {side: _finest(table, side) for side in SIDES}
    form = {side: UM * s.number(f"{side}_seat_cylindricity") for side in SIDES}
    beyond = {side: (by_size[side] < limits["finest_size"]) | (form[side] < limits["finest_form"]) for side in SIDES}
    by_mould = moulded & (grade["housing"] < as_moulded)
    found = by_mould | beyond["shaft"] | beyond["housing"]
    known = {side: ~np.isnan(grade[side]) for side in SIDES}
    side = np.where(by_mould | beyond["housing"], "housing", "shaft").astype(object)
    value = np.where(side == "housing", grade["housing"], grade["shaft"])
    rough = np.where(by_mould, as_moulded, limits["finest_size"])
    return Result(
        measure=np.where(found, limits["measure"], np.where(known["shaft"] & known["housing"], 0.0, np.nan)),
        observed=value,
        lower=rough,
        missing={f"{name}_seat_diameter": ~known[name] & ~found for name in SIDES},
        variant=lambda: np.where(found & ~by_mould, "finer", "").astype(object),
        facts=lambda: {
            "side": side,
            "finest_form": (np.full(view.count, float(limits["finest_form"])), "um"),
            "shaft_ways": _ways(table, "shaft", np.fmax(grade["shaft"], finest["shaft"])),
            "housing_ways": _ways(table, "housing", np.fmax(grade["housing"], finest["housing"])),
            "coarser": _coarser(view, limits.table("form"), s.choice("tolerance_class")),
        },
        working=lambda: [
            Working("shaft_seat", "d", "nominal of the shaft seat", s.number(BASIC["shaft"]), "mm"),
            Working("shaft_grade", "IT", "grade that the shaft seat asks for", grade["shaft"], "1",
                    "T = IT, t_1 = IT/2"),
            Working("housing_seat", "D", "nominal of the housing seat", s.number(BASIC["housing"]), "mm"),
            Working("housing_grade", "IT", "grade that the housing seat asks for", grade["housing"], "1",
                    "T = IT, t_1 = IT/2"),
        ],
    )  # fmt: skip


def _finest(table: Columns, side: str) -> float:
    rows: NDArray[Any] = np.isin(table["element"], (ELEMENT[side], "both"))
    return float(np.min(table["it_from"][rows]))
