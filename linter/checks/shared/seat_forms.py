"""Limits of form and run-out of the seats, as fractions of IT grades by tolerance class."""

from collections.abc import Mapping

import numpy as np

from linter.checks.shared.base import View, shared
from linter.checks.shared.two_sides import BASIC, SIDES, Columns, down
from linter.mechanics.limits import it_value_or_nan
from linter.model.stations import Choice, Floats

FORMS = ("cylindricity", "runout", "shoulder_runout")
"""Form and run-out tolerances of a seat and its abutment."""
UM = 1000.0
"""um per mm."""


def form_parameter(side: str, feature: str) -> str:
    """Parameter of one form or run-out tolerance of a side."""
    return f"{side}_{feature}" if feature == "shoulder_runout" else f"{side}_seat_{feature}"


@shared
def grades(view: View) -> Mapping[str, Floats]:
    """Standard tolerances IT0 to IT18 of the ring diameter of each side [mm], shape (19, rows)."""
    names = np.array([[str(grade)] for grade in range(19)])
    return {side: it_value_or_nan(names, view.stations.number(BASIC[side])) / 1000.0 for side in SIDES}


def graded(view: View, table: Columns, end: str, side: str, kind: Choice, feature: str | None = None) -> Floats:
    """Factor times IT grade of a table at the ring diameter of a side [mm]; NaN for a class that is in no row."""
    grade, factor = np.zeros(len(kind.words) + 1, dtype=np.intp), np.full(len(kind.words) + 1, np.nan)
    for index, word in enumerate(table["tolerance_class"]):
        if table["element"][index] == side and (feature is None or table["feature"][index] == feature):
            grade[kind.words.index(word)] = int(table[f"{end}_grade"][index])
            factor[kind.words.index(word)] = table[f"{end}_factor"][index]
    return grades(view)[side][grade[kind.codes], np.arange(view.count)] * factor[kind.codes]


def form_limits(view: View, table: Columns, side: str, feature: str, kind: Choice) -> tuple[Floats, Floats]:
    """Stricter and looser limit of one form or run-out tolerance [mm]."""
    return graded(view, table, "strict", side, kind, feature), graded(view, table, "loose", side, kind, feature)


def to_put(bounds: Mapping[str, tuple[Floats, Floats]]) -> dict[str, tuple[Floats, str]]:
    """The stricter and the looser limit of each side [mm] as values to put on the drawing."""
    ends = {"best": 0, "put": 1}
    return {f"{side}_{word}": (down(bounds[side][end]), "mm") for side in SIDES for word, end in ends.items()}
